"""The two archives as tensors: street outfits with label maps, and single garments by kind."""

import io
import json
import random
import tarfile
from concurrent.futures import ThreadPoolExecutor

import numpy as np
import torch
from PIL import Image

from network import GARMENT_KINDS

HEIGHT, WIDTH = 384, 256
# Share of the single garments that is kept out of training, to judge the kind by.
KEPT_OUT = 0.15


def members(path):
    with tarfile.open(path) as archive:
        return {m.name: archive.extractfile(m).read() for m in archive if m.isfile()}


def photo_of(data):
    return np.array(Image.open(io.BytesIO(data)).convert("RGB"))


def _label(data):
    return np.array(Image.open(io.BytesIO(data)))


def fit(photo):
    """Height and width of the photo, H x W x 3, fitted into the network's picture, and where it lies there: top, left."""
    h, w = photo.shape[:2]
    scale = min(HEIGHT / h, WIDTH / w)
    nh, nw = max(1, round(h * scale)), max(1, round(w * scale))
    return nh, nw, (HEIGHT - nh) // 2, (WIDTH - nw) // 2


def letterbox(photo):
    """The photo fitted into the network's picture with its mean colour around it, and where it lies (1 = photo)."""
    nh, nw, top, left = fit(photo)
    small = np.array(Image.fromarray(photo).resize((nw, nh), Image.BILINEAR))
    out = np.empty((HEIGHT, WIDTH, 3), np.uint8)
    out[:] = small.reshape(-1, 3).mean(0).round()
    out[top : top + nh, left : left + nw] = small
    inside = np.zeros((HEIGHT, WIDTH), np.uint8)
    inside[top : top + nh, left : left + nw] = 1
    return out, inside


def _stack(arrays):
    return torch.from_numpy(np.stack(arrays))


def load_outfits(path):
    """{train, val}: (photos N x 3 x H x W uint8, labels N x H x W uint8)."""
    files = members(path)
    index = json.loads(next(data for name, data in files.items() if name.endswith("index.json")))
    by_stem = {}
    for name, data in files.items():
        stem = name.rsplit("/", 1)[-1].rsplit(".", 1)[0]
        if "/photo/" in name:
            by_stem.setdefault(stem, {})["photo"] = data
        elif "/label/" in name:
            by_stem.setdefault(stem, {})["label"] = data
    out = {}
    for split in ("train", "val"):
        stems = [str(one).rsplit("/", 1)[-1].rsplit(".", 1)[0] for one in index[split]]
        with ThreadPoolExecutor(8) as pool:
            photos = list(pool.map(lambda s: photo_of(by_stem[s]["photo"]), stems))
            labels = list(pool.map(lambda s: _label(by_stem[s]["label"]), stems))
        out[split] = (_stack(photos).permute(0, 3, 1, 2).contiguous(), _stack(labels))
    return out


def garments_of(path, seed=1):
    """{train, kept}: (name in the archive, bytes, kind index) of each photo, split by a fixed draw within each kind."""
    files = sorted((name, data) for name, data in members(path).items() if name.lower().endswith((".jpg", ".jpeg", ".png")))
    rng = random.Random(seed)
    picked = {"train": [], "kept": []}
    for at, kind in enumerate(GARMENT_KINDS):
        items = [(name, data, at) for name, data in files if name.split("/")[-2] == kind]
        rng.shuffle(items)
        kept = round(len(items) * KEPT_OUT)
        picked["kept"] += items[:kept]
        picked["train"] += items[kept:]
    return picked


def load_garments(path, seed=1):
    """{train, kept}: (photos, inside, kind index)."""
    out = {}
    for split, items in garments_of(path, seed).items():
        with ThreadPoolExecutor(8) as pool:
            boxed = list(pool.map(lambda item: letterbox(photo_of(item[1])), items))
        photos = _stack([b[0] for b in boxed]).permute(0, 3, 1, 2).contiguous()
        out[split] = (photos, _stack([b[1] for b in boxed]), torch.tensor([kind for _, _, kind in items]))
    return out
