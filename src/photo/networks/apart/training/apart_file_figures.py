"""
Figures of the written file itself, and whether they are those that a report gives.

    python apart_file_figures.py GARMENTS.tar GARMENTS-MORE.tar OUTLINES.tar ../apart.onnx ../training-report.json

On the pictures that a processor draws, which are others than a GPU draws.
"""

import json
import pathlib
import sys

import onnxruntime
import torch

import beside
from figures import figures_of
from garments import Garments
from home_grounds import HomeGrounds
from reported import checked_figures

DECISIONS = beside.NETWORKS / "outline" / "training" / "outline_decisions.json"


class FileNetwork:
    """The file in the network's place."""

    def __init__(self, path):
        self.session = onnxruntime.InferenceSession(path, providers=["CPUExecutionProvider"])

    def __call__(self, pictures):
        return torch.cat([torch.from_numpy(self.session.run(None, {"picture": one[None]})[0]) for one in pictures.cpu().numpy()])


def main():
    *archives, path, report = sys.argv[1:]
    garments = Garments(*archives, DECISIONS, None, "cpu")
    mine = figures_of(FileNetwork(path), garments.kept(), HomeGrounds(garments.photos, garments.labels))
    checked_figures(path, mine, json.loads(pathlib.Path(report).read_text()))


if __name__ == "__main__":
    main()
