"""
Figures of the written file itself, piece by piece as the program asks it, and whether they are those that a report gives.

    python kinds_file_figures.py OUTFITS-KINDS.tar OUTLINE-unseen.npz ../kinds.onnx ../training-report.json
"""

import json
import pathlib
import sys

import onnxruntime
import torch
from torch.nn import functional as F

import beside  # noqa: F401
from crops import plain_crops, plain_frames
from figures import figures_of, picks_of
from kind_network import SLOT_COUNT
from outfits import Outfits
from pieces import Pieces, outlined
from reported import checked_figures


def file_scores(path, photos, pieces, pick):
    session = onnxruntime.InferenceSession(path, providers=["CPUExecutionProvider"])
    out = torch.zeros(len(pick), session.get_outputs()[0].shape[1] or 0)
    for photo in pieces.photo[pick].unique().tolist():
        mine = (pieces.photo[pick] == photo).nonzero()[:, 0]
        part = pick[mine]
        frames, masks = plain_frames(photos, pieces, part)
        slots = F.one_hot(pieces.slot[part], SLOT_COUNT).float()
        given = {"crops": plain_crops(photos, pieces, part), "frame": frames[:1], "masks": masks, "slots": slots, "numbers": pieces.numbers[part, 0]}
        out[mine.cpu()] = torch.from_numpy(session.run(None, {name: one.cpu().numpy() for name, one in given.items()})[0])
    return out.to(photos.device)


def figures_of_file(path, outfits, photos, pieces, slot_of):
    picks = picks_of(outfits, pieces)
    return figures_of(outfits, pieces, picks, {name: file_scores(path, photos, pieces, pick) for name, pick in picks.items()}, slot_of)


def main():
    archive, unseen, path, report = sys.argv[1:]
    outfits = Outfits(archive)
    pieces = Pieces(outfits, outlined(unseen, len(outfits.photos)))
    mine = figures_of_file(path, outfits, outfits.photos, pieces, torch.tensor(outfits.slot_of))
    checked_figures(path, mine, json.loads(pathlib.Path(report).read_text()))


if __name__ == "__main__":
    main()
