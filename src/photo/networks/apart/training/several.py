"""
Gives the outline's file one more answer, `several`: how likely a picture without a person shows more than one garment, so that only then it is looked where they part.
Two cores, about five minutes, no GPU.

    python several.py GARMENTS.tar GARMENTS-MORE.tar OUTLINES.tar ../../outline/outline.onnx ../../outline/training-report.json

One line of weights (../../outline/training/linear_answer.py), learnt from photos of single garments and from pictures made of them (heaps.py); figures on those that are kept out. Writes
the file and its report anew.
"""

import argparse
import json
import pathlib

import numpy as np
import onnx
import torch

import beside  # noqa: F401
from apart_file_figures import DECISIONS
from asked import cells_of
from augment import colour_jitter
from figures import LEAST_SEEN
from garments import Garments
from heaps import MOST, heaps_batch
from home_grounds import HomeGrounds
from linear_answer import Hearing, fit, with_answer, without_answer
from reported import hash_of

OUTPUT = "several"
# Pictures made to learn from and for figures; how many at once.
LEARNT, KEPT, BATCH = 2400, 600, 24
# From this probability on the program looks where garments part (src/photo/laid-out-pieces.ts).
LOOKED_FROM = 0.05


def seen_in(ids):
    """How many garments each picture shows enough of."""
    cells = cells_of(ids).flatten(1)
    return sum(((cells == one).sum(1) >= LEAST_SEEN).long() for one in range(1, MOST + 1))


def made(hearing, garments, grounds, count, seed):
    """What is heard of pictures made by lot, and how many garments each shows."""
    torch.manual_seed(seed)
    heard, shown = [], []
    while len(heard) < count:
        image, ids = heaps_batch(garments, grounds, BATCH)
        image = colour_jitter(image).clamp(0, 255).round().byte().permute(0, 2, 3, 1).numpy()
        heard += [hearing(one) for one in image]
        shown += seen_in(ids).tolist()
    return np.stack(heard), np.array(shown)


def as_they_are(hearing, photos):
    return np.stack([hearing(photo) for photo in photos.permute(0, 2, 3, 1).numpy()])


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    for name in ("garments", "garments_more", "outlines", "network", "report"):
        parser.add_argument(name)
    options = parser.parse_args()
    garments = Garments(options.garments, options.garments_more, options.outlines, DECISIONS, None, "cpu")
    kept, grounds = garments.kept(), HomeGrounds(garments.photos, garments.labels)
    model = without_answer(onnx.load(options.network), OUTPUT)
    hearing = Hearing(model)
    heard, shown = made(hearing, garments, grounds, LEARNT, 1)
    single = as_they_are(hearing, garments.photos[garments.outlined])
    heard, wanted = np.concatenate([heard[shown > 0], single]), np.concatenate([shown[shown > 0] > 1, np.zeros(len(single), bool)])
    weights, bias = fit(heard, wanted)
    chance = lambda one: 1 / (1 + np.exp(-(one @ weights.astype("float16").astype("float32") + bias)))
    made_of_kept, shown = made(hearing, kept, grounds, KEPT, 2)
    lots = {"several made": chance(made_of_kept[shown > 1]), "one made": chance(made_of_kept[shown == 1]), "one as photographed": chance(as_they_are(hearing, kept.photos))}
    told = {name: {"pictures": len(one), "said": float((one > LOOKED_FROM).mean())} for name, one in lots.items()}
    for name, one in lots.items():
        print(name, len(one), {at: round(float((one > at).mean()), 4) for at in (0.02, 0.05, 0.1, 0.2, 0.3, 0.5)})
    onnx.save(with_answer(model, OUTPUT, weights, bias), options.network)
    report = pathlib.Path(options.report)
    said = json.loads(report.read_text())
    said |= {"sha256": hash_of(options.network), OUTPUT: {"learnt": {"several": int(wanted.sum()), "one": int((~wanted).sum())}, "said from": LOOKED_FROM, "kept out": told}}
    report.write_text(json.dumps(said, indent="\t") + "\n")


if __name__ == "__main__":
    main()
