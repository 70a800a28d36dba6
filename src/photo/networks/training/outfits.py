"""The archive of outfits with finer labels, as tensors: photos, the kind of every pixel, and the kinds that photos without labels are tagged with."""

import io
import json
import tarfile
from concurrent.futures import ThreadPoolExecutor

import numpy as np
import torch
from PIL import Image

HEIGHT, WIDTH = 600, 400
SLOTS = ["top", "outer", "bottom", "full", "legwear", "shoes", "accessory"]
# The archive's words where ours differ.
OURS = {"sweater": "jumper", "vest": "waistcoat", "sneakers": "trainers"}
# What the network may answer beside a kind: the marked pixels are no piece of that slot.
NONE = "none"
# Labels of the archive that are no kind: a shoe of which nobody said more.
ANY_SHOE = "shoes-any"


class Outfits:
    """
    `photos` N x 3 x HEIGHT x WIDTH uint8, labelled ones first; `labels` L x HEIGHT x WIDTH uint8 by the archive's list; `kinds` what the network tells
    with `slot_of` each, NONE last (in every slot); `tags` a set of kinds a photo from L on; `train`, `val`, `tag_train`, `tag_val` indices of photos.
    """

    def __init__(self, path, few=None):
        with tarfile.open(path) as archive:
            files = {m.name.split("/", 1)[1]: archive.extractfile(m).read() for m in archive if m.isfile()}
        index = json.loads(files["index.json"])
        self.archive_kinds = [(OURS.get(kind, kind), slot) for kind, slot in index["kinds"]]
        told = [(kind, slot) for kind, slot in self.archive_kinds if slot in SLOTS and kind != ANY_SHOE]
        self.kinds = [kind for kind, _ in told] + [NONE]
        self.slot_of = [SLOTS.index(slot) for _, slot in told]
        labelled = index["train"][:few] + index["val"][:few]
        kept = set(index["tag_val"])
        tagged = [name for name in index["tags"] if name not in kept][:few] + [name for name in index["tags"] if name in kept][:few]
        self.names = labelled + tagged
        with ThreadPoolExecutor(16) as pool:
            photos = list(pool.map(lambda n: _photo(files, n), self.names))
            labels = list(pool.map(lambda n: np.array(Image.open(io.BytesIO(files[f"label/{n}.png"]))), labelled))
        self.photos = torch.from_numpy(np.stack(photos)).permute(0, 3, 1, 2).contiguous()
        self.labels = torch.from_numpy(np.stack(labels))
        self.tags = [None] * len(labelled) + [{OURS.get(tag, tag) for tag in index["tags"][name]} for name in tagged]
        first_val, first_tag = len(index["train"][:few]), len(labelled)
        first_tag_val = first_tag + sum(name not in kept for name in tagged)
        self.train, self.val = range(first_val), range(first_val, first_tag)
        self.tag_train, self.tag_val = range(first_tag, first_tag_val), range(first_tag_val, len(self.names))

    def slot_lookup(self):
        """Slot index + 1 of each of the archive's labels, in the order of the outline network's classes (8 skin, 9 hair, 0 background)."""
        others = {"background": 0, "skin": 8, "hair": 9}
        return np.array([others[slot] if slot in others else SLOTS.index(slot) + 1 for _, slot in self.archive_kinds], np.uint8)


def _photo(files, name):
    data = files.get(f"photo/{name}.webp") or files[f"tagged/{name}.webp"]
    picture = Image.open(io.BytesIO(data)).convert("RGB")
    return np.array(picture if picture.size == (WIDTH, HEIGHT) else picture.resize((WIDTH, HEIGHT), Image.BICUBIC))
