"""Photos of single garments in both archives, by kind, split into those to learn from and those kept out."""

import csv
import io
import pathlib
import random

from photos import members

GARMENT_KINDS = ["dress", "hat", "longsleeve", "outwear", "pants", "shirt", "shoes", "shorts", "skirt", "t-shirt", "blazer", "hoodie", "polo", "top"]
# Kinds of the first archive: its folders.
FIRST_KINDS = GARMENT_KINDS[:10]
# Words of the second archive's senders. An undershirt is worn as a top; of blouses, eleven, most are shirts to everybody.
BY_WORD = {
    "Dress": "dress", "Hat": "hat", "Longsleeve": "longsleeve", "Outwear": "outwear", "Pants": "pants", "Shirt": "shirt", "Blouse": "shirt", "Shoes": "shoes",
    "Shorts": "shorts", "Skirt": "skirt", "T-Shirt": "t-shirt", "Blazer": "blazer", "Hoodie": "hoodie", "Polo": "polo", "Undershirt": "top", "Top": "top",
}  # fmt: skip
# Share kept out of training: of each kind of the first archive; of the second's senders, all photos of one together: one sender is one home.
KEPT_OUT, SENDERS_KEPT_OUT = 0.15, 0.22


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
