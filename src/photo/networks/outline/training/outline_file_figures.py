"""
Figures of the written file itself, and whether they are those that a report gives.

    python outline_file_figures.py OUTFITS-KINDS.tar GARMENTS.tar GARMENTS-MORE.tar OUTLINES.tar ../outline.onnx ../training-report.json
"""

import json
import pathlib
import sys

import onnxruntime
import torch

import beside  # noqa: F401
from augment import Grounds
from evaluate import garment_figures, outfit_figures, untagged_share
from garments import Garments
from outfit_photos import OutfitPhotos
from reported import checked_figures
from steps import begun

DECISIONS = pathlib.Path(__file__).with_name("outline_decisions.json")
# Bare grounds are drawn: always the same ones.
GROUND_SEED = 9


class FileNetwork:
    """The file in a network's place: pictures in, its three answers out."""

    def __init__(self, path):
        self.session = onnxruntime.InferenceSession(path, providers=["CPUExecutionProvider"])

    def __call__(self, images):
        rows = [self.session.run(None, {"image": one[None]}) for one in images.contiguous().cpu().numpy()]
        return tuple(torch.cat([torch.from_numpy(part) for part in parts]).to(images.device) for parts in zip(*rows))


def all_figures(network, photos, garments, grounds):
    out = outfit_figures(network, photos.val, photos.val_labels) | {"untagged": untagged_share(network, photos)}
    torch.manual_seed(GROUND_SEED)
    return out | garment_figures(network, garments, grounds)


def main():
    *archives, path, report = sys.argv[1:]
    begun(1)
    photos, garments = OutfitPhotos(archives[0], None, "cpu"), Garments(*archives[1:], DECISIONS, None, "cpu")
    mine = all_figures(FileNetwork(path), photos, garments, Grounds(photos.train, photos.train_labels))
    checked_figures(path, mine, json.loads(pathlib.Path(report).read_text()))


if __name__ == "__main__":
    main()
