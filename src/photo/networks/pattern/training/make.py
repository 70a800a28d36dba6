"""Trains three teachers and then, by them, the pattern network that ships. One GPU, about six minutes.

    python make.py DETECTOR.tflite CUT-OUTS FITTED-LABELS.csv RENDERS

What these are: MODEL-CARD.md and train.py. Writes a.pt, b.pt, c.pt, pattern.pt and pattern.onnx here, and says how far the file's answers are from the network's.
"""

import pathlib
import subprocess
import sys

RUNS = {
    "a": ["--shape", "teacher", "--passes", "40", "--seed", "2"],
    "b": ["--shape", "near-teacher", "--passes", "36", "--seed", "3"],
    "c": ["--shape", "teacher", "--passes", "40", "--seed", "4"],
    "pattern": ["--passes", "75", "--seed", "5", "--teachers", "a.pt", "b.pt", "c.pt"],
}


def main():
    detector, cut_outs, labels, renders = sys.argv[1:]
    train = pathlib.Path(__file__).with_name("train.py")
    for out, options in RUNS.items():
        subprocess.run([sys.executable, str(train), detector, cut_outs, labels, renders, out, *options], check=True)


if __name__ == "__main__":
    main()
