"""
Trains three teachers side by side and then, by them, the pattern network that ships. One GPU, about six minutes.

    python make.py DETECTOR.tflite CUT-OUTS FITTED-LABELS.csv RENDERS HUNDRED LABELS.csv --out FOLDER

What the first four are: MODEL-CARD.md and train.py. HUNDRED holds the cut-outs of the photos of LABELS.csv, which no network is trained on. Writes the teachers,
pattern.pt, pattern.onnx and pattern.json (options, figures of the file on the hundred) to FOLDER, and says how far the file's answers are from the network's.
"""

import argparse
import pathlib
import subprocess
import sys
import time

import beside  # noqa: F401
from pattern_file_figures import figures_of
from reported import write_report

TEACHERS = {
    "a": ["--shape", "teacher", "--passes", "28", "--seed", "2"],
    "b": ["--shape", "near-teacher", "--passes", "25", "--seed", "3"],
    "c": ["--shape", "teacher", "--passes", "28", "--seed", "4"],
}
SHIPPED = ["--passes", "55", "--seed", "5"]


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    for name in ("detector", "cut_outs", "labels", "renders", "hundred", "hundred_labels"):
        parser.add_argument(name)
    parser.add_argument("--out", required=True)
    options = parser.parse_args()
    start, out = time.time(), pathlib.Path(options.out)
    path = out / "pattern.onnx"
    out.mkdir(parents=True, exist_ok=True)
    given = [sys.executable, str(pathlib.Path(__file__).with_name("train.py")), options.detector, options.cut_outs, options.labels, options.renders]
    running = [subprocess.Popen([*given, str(out / name), *more]) for name, more in TEACHERS.items()]
    if any([one.wait() for one in running]):
        raise SystemExit("Expected three teachers; the training of one ended with an error.")
    subprocess.run([*given, str(out / "pattern"), *SHIPPED, "--teachers", *(str(out / f"{name}.pt") for name in TEACHERS)], check=True)
    figures = {"file": figures_of(path, options.hundred, options.hundred_labels)}
    print(figures)
    write_report(out / "pattern.json", path, options, figures, runs={**TEACHERS, "pattern": SHIPPED}, seconds=round(time.time() - start))


if __name__ == "__main__":
    main()
