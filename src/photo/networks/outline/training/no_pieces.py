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
import onnxruntime
from onnx import TensorProto, helper, numpy_helper
from scipy import optimize

import beside  # noqa: F401
from no_pieces_lots import LOTS, Sources
from photos import fitted
from reported import hash_of

OUTPUT = "no_pieces"
# Weights are held back by this much (30 and 300 give about the same, more finds fewer faces and drawings); the share of each lot that figures are measured on.
HELD_BACK = 100.0
KEPT_SHARE = 0.3
# From this probability on the program calls a picture a scene (src/reading/outline/outline.ts).
SAID_FROM = 0.7


def heard_by_heads(graph):
    """Name of what the heads' first layer takes in: the node before the bend before `photo_kind`."""
    by_output = {node.output[0]: node for node in graph.node}
    bend = by_output[by_output["photo_kind"].input[0]]
    return by_output[bend.input[0]].input[0]


def without_answer(model):
    """The file without the answer that an earlier run gave it."""
    graph = model.graph
    mine = [node for node in graph.node if any(name.startswith(OUTPUT) for name in node.output)]
    for things, gone in ((graph.node, mine), (graph.output, [one for one in graph.output if one.name == OUTPUT]), (graph.initializer, [one for one in graph.initializer if one.name.startswith(OUTPUT)])):
        for one in gone:
            things.remove(one)
    return model


def with_answer(model, weights, bias):
    """The file with the answer: weights in half precision, turned back when it is loaded, as its others are."""
    graph = model.graph
    graph.initializer.extend([numpy_helper.from_array(weights[:, None].astype("float16"), OUTPUT + "_h"), numpy_helper.from_array(np.array([bias], "float32"), OUTPUT + "_b")])
    graph.node.extend([
        helper.make_node("Cast", [OUTPUT + "_h"], [OUTPUT + "_w"], to=TensorProto.FLOAT),
        helper.make_node("Gemm", [heard_by_heads(graph), OUTPUT + "_w", OUTPUT + "_b"], [OUTPUT]),
    ])  # fmt: skip
    graph.output.append(helper.make_tensor_value_info(OUTPUT, TensorProto.FLOAT, [1, 1]))
    onnx.checker.check_model(model)
    return model


class Hearing:
    """What the heads hear of a picture."""

    def __init__(self, model):
        copy = onnx.ModelProto()
        copy.CopyFrom(model)
        self.name = heard_by_heads(copy.graph)
        copy.graph.output.append(helper.make_tensor_value_info(self.name, TensorProto.FLOAT, None))
        self.session = onnxruntime.InferenceSession(copy.SerializeToString(), providers=["CPUExecutionProvider"])

    def __call__(self, photo):
        image = fitted(photo, None)[0].transpose(2, 0, 1)[None].astype("float32") / 255
        return self.session.run([self.name], {"image": image})[0][0]


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


def fit(heard, wanted):
    """Weights and bias of a logistic regression on evened numbers, as they apply to the numbers themselves."""
    centre, width = heard.mean(0), heard.std(0) + 1e-3
    evened = ((heard - centre) / width).astype("float64")
    sign = np.where(wanted, 1.0, -1.0)

    def loss(values):
        weights, bias = values[:-1], values[-1]
        odds = sign * (evened @ weights + bias)
        slope = -sign / (1 + np.exp(odds))
        return np.logaddexp(0, -odds).sum() + HELD_BACK / 2 * weights @ weights, np.append(evened.T @ slope + HELD_BACK * weights, slope.sum())

    values = optimize.minimize(loss, np.zeros(heard.shape[1] + 1), jac=True, method="L-BFGS-B", options={"maxiter": 500}).x
    weights = values[:-1] / width
    return weights, float(values[-1] - weights @ centre)


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
    model = without_answer(onnx.load(options.network))
    hearing = Hearing(model)
    learnt = lots(hearing, Sources(*archives, kept=False), True)
    wanted = np.concatenate([np.full(len(one), not LOTS[name][0]) for name, one in learnt.items()])
    weights, bias = fit(np.concatenate([*learnt.values()]), wanted)
    told = figures(lots(hearing, Sources(*archives, kept=True), False), weights, bias)
    for name, one in told.items():
        print(f"{name}: {one}")
    onnx.save(with_answer(model, weights, bias), options.network)
    report = pathlib.Path(options.report)
    said = json.loads(report.read_text())
    said |= {"sha256": hash_of(options.network), OUTPUT: {"learnt": {name: len(one) for name, one in learnt.items()}, "said from": SAID_FROM, "kept out": told}}
    report.write_text(json.dumps(said, indent="\t") + "\n")


if __name__ == "__main__":
    main()
