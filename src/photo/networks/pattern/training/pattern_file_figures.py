"""
Figures of the written file itself, and whether they are those that a report gives. No PyTorch needed.

    python pattern_file_figures.py HUNDRED LABELS.csv ../pattern.onnx ../training-report.json

HUNDRED holds the cut-outs of the photos of LABELS.csv (bench/pattern/cut-out.ts), which no network is trained on.
"""

import json
import pathlib
import sys

import numpy as np
import onnxruntime

import beside  # noqa: F401
from cloths import PATTERNS, cut_out, network_input, table
from reported import checked_figures


def figures_of(path, folder, labels):
    """How often the file's first word is the first of a telling, or one of its words, and how sure it says to be."""
    session = onnxruntime.InferenceSession(str(path), providers=["CPUExecutionProvider"])
    first = either = sure = 0
    rows = table(labels)
    for file, pattern, also in rows:
        scores = session.run(None, {"picture": network_input(cut_out(folder, file))})[0][0]
        chances = np.exp(scores - scores.max())
        told = PATTERNS[scores.argmax()]
        first += told == pattern
        either += told in (pattern, *also)
        sure += chances.max() / chances.sum()
    return {"hundred": {"first": first / len(rows), "either": either / len(rows), "sure": float(sure / len(rows))}}


def main():
    hundred, labels, path, report = sys.argv[1:]
    checked_figures(path, figures_of(path, hundred, labels), json.loads(pathlib.Path(report).read_text()))


if __name__ == "__main__":
    main()
