"""Photos of single garments of both archives, by kind and with the outlines that the program drew of them."""

import csv
import io
import json
import pathlib
import random

import numpy as np
import torch
from PIL import Image

from network import GARMENT_KINDS
from photos import fitted, members, photo_of

# Kinds of the first archive: its folders.
FIRST_KINDS = GARMENT_KINDS[:10]
# Words of the second archive's senders. An undershirt is worn as a top; of blouses, eleven, most are shirts to everybody.
BY_WORD = {
    "Dress": "dress", "Hat": "hat", "Longsleeve": "longsleeve", "Outwear": "outwear", "Pants": "pants", "Shirt": "shirt", "Blouse": "shirt", "Shoes": "shoes",
    "Shorts": "shorts", "Skirt": "skirt", "T-Shirt": "t-shirt", "Blazer": "blazer", "Hoodie": "hoodie", "Polo": "polo", "Undershirt": "top", "Top": "top",
}  # fmt: skip
# Share kept out of training: of each kind of the first archive; of the second's senders, all photos of one together: one sender is one home.
KEPT_OUT, SENDERS_KEPT_OUT = 0.15, 0.22
# An outline that covers less or more of the picture than this is of something else.
LEAST_AREA, LARGEST_AREA = 0.04, 0.85


def first_archive(path, seed=1):
    """{train, kept}: (name, bytes, kind index), split by a fixed draw within each kind."""
    files = sorted((name, data) for name, data in members(path).items() if name.lower().endswith(".jpg"))
    rng = random.Random(seed)
    picked = {"train": [], "kept": []}
    for at, kind in enumerate(FIRST_KINDS):
        named = [("_".join(pathlib.PurePath(name).with_suffix("").parts[-2:]), data, at) for name, data in files if name.split("/")[-2] == kind]
        rng.shuffle(named)
        kept = round(len(named) * KEPT_OUT)
        picked["kept"] += named[:kept]
        picked["train"] += named[kept:]
    return picked


def second_archive(path, seed=1):
    """The same, split by sender."""
    files = {name.rsplit("/", 1)[-1]: data for name, data in members(path).items()}
    rows = [row for row in csv.DictReader(io.StringIO(files["index.csv"].decode())) if row["file"] != "garments.tar"]
    senders = sorted({row["sender"] for row in rows})
    random.Random(seed).shuffle(senders)
    kept = set(senders[: round(len(senders) * SENDERS_KEPT_OUT)])
    picked = {"train": [], "kept": []}
    for row in rows:
        name = row["file"].rsplit("/", 1)[-1]
        item = (name.removesuffix(".webp"), files[name], GARMENT_KINDS.index(BY_WORD[row["label"]]))
        picked["kept" if row["sender"] in kept else "train"].append(item)
    return picked


class Garments:
    """
    To learn from: `photos`, `labels` (1 = clothes, 0 = not, 2 = nobody knows), `kinds`, `weights` (how often each is drawn), `outlined` (which have an
    outline to trust). For figures: `kept_photos`, `kept_kinds`, those of the first archive before those of the second (from `first_new` on).
    """

    def __init__(self, first, second, outlines, decisions, few, device):
        old, new = first_archive(first), second_archive(second)
        drawn = {pathlib.PurePath(name).stem: data for name, data in members(outlines).items()}
        wrong = {name.replace("/", "_") for name in json.loads(pathlib.Path(decisions).read_text())["wrong"]}
        drawn = {name: data for name, data in drawn.items() if name not in wrong}
        self.photos, self.labels, self.kinds = self._loaded(old["train"][:few] + new["train"][:few], drawn, device)
        self.kept_photos, _, self.kept_kinds = self._loaded(old["kept"][:few] + new["kept"][:few], {}, device)
        self.first_new = len(old["kept"][:few])
        # Half way from photo by photo to kind by kind.
        self.weights = (1 / torch.bincount(self.kinds, minlength=len(GARMENT_KINDS)).clamp_min(1).float().sqrt())[self.kinds]
        area = (self.labels == 1).flatten(1).float().mean(1)
        self.outlined = (area > LEAST_AREA) & (area < LARGEST_AREA)

    @staticmethod
    def _loaded(items, drawn, device):
        rows = [fitted(photo_of(data), Image.open(io.BytesIO(drawn[name])).convert("L") if name in drawn else None) for name, data, _ in items]
        photos = torch.from_numpy(np.stack([image for image, _ in rows])).permute(0, 3, 1, 2).contiguous()
        return photos.to(device), torch.from_numpy(np.stack([label for _, label in rows])).to(device), torch.tensor([kind for *_, kind in items], device=device)
