"""Reports of a training run, and whether the file that it wrote gives the figures that they give."""

import hashlib
import json
import pathlib

# By so much a figure may differ: weights in 8 bits and other machines round otherwise, and some of what is counted comes in thirties (a garment of 31 is 0.032).
SLACK = 0.035


def name_of(value):
    """An option as a report tells it: of a path only the name, since it lay somewhere else on every machine."""
    return pathlib.PurePath(str(value)).name if "/" in str(value) else str(value)


def hash_of(path):
    return hashlib.sha256(pathlib.Path(path).read_bytes()).hexdigest()


def write_report(path, onnx, options, figures, **more):
    """`figures` by what they are of; those of "file" are measured on the written file."""
    report = {"options": {key: name_of(value) for key, value in vars(options).items()}, **more, "sha256": hash_of(onnx), "figures": figures}
    pathlib.Path(path).write_text(json.dumps(report, indent="\t") + "\n")


def flat(figures, before=""):
    out = {}
    for name, value in figures.items():
        out |= flat(value, f"{before}{name}, ") if isinstance(value, dict) else {before + name: value}
    return out


def differing(mine, others):
    """Shares, by name, that are not about the same in both."""
    mine, others = flat(mine), flat(others)
    shares = {name for name, value in mine.items() if isinstance(value, float)}
    return {name: (mine[name], others.get(name)) for name in shares if abs(mine[name] - others.get(name, 9)) > SLACK}


def report_run(out, options, figures, **more):
    """Says the figures of a run that wrote OUT.onnx, writes OUT.json, and stops where the file ("file") does not answer as the network does ("this")."""
    for name, one in figures.items():
        print(name, json.dumps(one), flush=True)
    write_report(f"{out}.json", f"{out}.onnx", options, figures, **more)
    if wrong := differing(figures["file"], figures["this"]):
        raise SystemExit(f"Expected the file to answer as the network does; these figures differ: {wrong}")


def figures_wanted(report):
    """What the file must give: its own figures where the run measured it, else the network's, as it was before it was written."""
    figures = report["figures"]
    return figures.get("file") or figures.get("this") or figures["student"]["prior"]


def checked_figures(path, mine, report):
    """Says the figures of a file, and stops where it is not the report's file or they are not the report's."""
    for name, value in flat(mine).items():
        print(f"{name}: {value:.4f}" if isinstance(value, float) else f"{name}: {value}")
    if hash_of(path) != report["sha256"]:
        raise SystemExit(f"Expected the file that the report is of, {report['sha256']}; found {hash_of(path)}.")
    if wrong := differing(mine, figures_wanted(report)):
        raise SystemExit(f"Expected the figures of the report; these differ by more than {SLACK} (measured, reported): {wrong}")
    print("These are the figures of the report.")
