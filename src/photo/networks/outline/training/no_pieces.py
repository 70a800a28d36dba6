"""
Gives the outline's file one more answer, `no_pieces`: how likely a picture shows nothing that can be told piece by piece (a face, a crowd, a rail, a drawing, a sofa).
No GPU, no PyTorch (NumPy, SciPy, Pillow, onnx, onnxruntime); about ten minutes.

    python no_pieces.py OUTFITS-KINDS.tar GARMENTS.tar GARMENTS-MORE.tar OUTLINES.tar outline.onnx training-report.json

One line of weights over what the network's heads hear (mean and maximum of the deep map), which itself stays as it is: all other answers stay the same. Learnt from pictures
made by lot (no_pieces_lots.py), figures on pictures made of photos that are kept out. Writes the file and its report anew.
"""

import argparse
import json
import pathlib

import numpy as np
import onnx

import beside  # noqa: F401
from linear_answer import Hearing, fit, with_answer, without_answer
from no_pieces_lots import LOTS, Sources
from reported import hash_of

OUTPUT = "no_pieces"
# The share of each lot that figures are measured on.
KEPT_SHARE = 0.3
# From this probability on the program calls a picture a scene (src/reading/outline/outline.ts).
SAID_FROM = 0.7


def seen_otherwise(rng, photo):
    """Mirrored or not, in some other light."""
    photo = (photo[:, ::-1] if rng.uniform() < 0.5 else photo) / 255
    if rng.uniform() < 0.7:
        photo = photo ** np.exp(rng.normal(0, 0.18)) * np.exp(rng.normal(0, 0.06, 3) + rng.normal(0, 0.08))
    return (photo.clip(0, 1) * 255).astype("uint8")


def lot(hearing, sources, make, count, seed, is_learnt):
    """What is heard of so many pictures of one sort, N x F."""
    rng, heard = np.random.default_rng(seed), []
    while len(heard) < count:
        photo = make(rng, sources)
        if photo is not None:
            heard.append(hearing(seen_otherwise(rng, photo) if is_learnt else photo))
    return np.stack(heard)


def lots(hearing, sources, is_learnt):
    share = 1 if is_learnt else KEPT_SHARE
    return {name: lot(hearing, sources, make, round(count * share), [at, int(is_learnt)], is_learnt) for at, (name, (_, count, make)) in enumerate(LOTS.items())}


def figures(heard, weights, bias):
    """Of each lot: pictures, and the share of them that is called a scene."""
    weights = weights.astype("float16").astype("float32")
    chances = {name: 1 / (1 + np.exp(-(one @ weights + bias))) for name, one in heard.items()}
    return {name: {"pictures": len(one), "said": float((one > SAID_FROM).mean())} for name, one in chances.items()}


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    for name in ("outfits", "garments", "garments_more", "outlines", "network", "report"):
        parser.add_argument(name)
    options = parser.parse_args()
    archives = (options.outfits, options.garments, options.garments_more, options.outlines)
    model = without_answer(onnx.load(options.network), OUTPUT)
    hearing = Hearing(model)
    learnt = lots(hearing, Sources(*archives, kept=False), True)
    wanted = np.concatenate([np.full(len(one), not LOTS[name][0]) for name, one in learnt.items()])
    weights, bias = fit(np.concatenate([*learnt.values()]), wanted)
    told = figures(lots(hearing, Sources(*archives, kept=True), False), weights, bias)
    for name, one in told.items():
        print(f"{name}: {one}")
    onnx.save(with_answer(model, OUTPUT, weights, bias), options.network)
    report = pathlib.Path(options.report)
    said = json.loads(report.read_text())
    said |= {"sha256": hash_of(options.network), OUTPUT: {"learnt": {name: len(one) for name, one in learnt.items()}, "said from": SAID_FROM, "kept out": told}}
    report.write_text(json.dumps(said, indent="\t") + "\n")


if __name__ == "__main__":
    main()
