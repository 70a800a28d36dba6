"""The trained network as an ONNX file, and a check that the file answers as the network did.

    python export_kinds.py KINDS.pt ../kinds.onnx
"""

import sys

import numpy as np
import onnx
import onnxruntime
import torch
from torch import nn

import beside  # noqa: F401
from kind_network import MAPS, NUMBER_COUNT, POOLED, SLOT_COUNT, Kinds, Outline
from packed_weights import in_few_bits, with_short_names

STEPS = {"seen8": 8, "seen16": 16, "deep": 32, "up16": 16, "up8": 8, "up4": 4}
# The outline is wrong about the slot of a fifth of the pieces on photos that it did not learn from, far more often than on those that it did: the scores
# of slots are divided by this. Of 1, 1.25, 1.5, 1.75 and 2 the one that loses least (log loss of the kinds under 326 outlined validation pieces).
SLOT_CAUTION = 1.5
# Below this many numbers not even halves pay for their node.
SMALLEST_HALVED = 64


class OneAnswer(nn.Module):
    """The mean of both halves' scores."""

    def __init__(self, network):
        super().__init__()
        self.network = network

    def forward(self, crops, masks, slots, numbers, whole, *maps):
        crop, head = self.network(crops, masks, dict(zip(MAPS, maps)), whole, slots, numbers)
        return (crop + head) / 2


def example(count, side, seed=1):
    """Inputs of `count` pieces of one photo, in the file's order."""
    draw = torch.Generator().manual_seed(seed)
    maps = [torch.randn(1, MAPS[name], 384 // STEPS[name], 256 // STEPS[name], generator=draw) for name in MAPS]
    masks = torch.zeros(count, 1, 192, 128)
    for at in range(count):
        masks[at, :, 20 + 8 * at : 90 + 8 * at, 30:70] = 1
    slots = torch.eye(SLOT_COUNT)[torch.arange(count) % SLOT_COUNT]
    return (
        torch.rand(count, 4, side, side, generator=draw), masks, slots, torch.rand(count, NUMBER_COUNT, generator=draw), torch.randn(1, POOLED, generator=draw), *maps,
    )  # fmt: skip


def load(path, outline):
    stored = torch.load(path, map_location="cpu", weights_only=True)
    network = Kinds(outline, len(stored["kinds"]))
    network.load_state_dict({key: value.float() if value.dtype.is_floating_point else value for key, value in stored["weights"].items()})
    network.side = stored["side"]
    return network.eval(), stored


@torch.no_grad()
def cautious(network, kind_count):
    """The network with the scores of slots divided by `SLOT_CAUTION`."""
    for half in (network.crop, network.head):
        half.scores.weight[kind_count - 1 :] /= SLOT_CAUTION
        half.scores.bias[kind_count - 1 :] /= SLOT_CAUTION
    return network


def export(network, path):
    """Writes `crops` N x 4 x side x side, `masks` N x 1 x 192 x 128, `slots` N x 7, `numbers` N x 15, the outline network's `whole` and maps to `scores`."""
    names = ["crops", "masks", "slots", "numbers", "whole", *MAPS]
    torch.onnx.export(
        OneAnswer(network).eval(),
        example(3, network.side),
        path,
        input_names=names,
        output_names=["scores"],
        dynamic_axes={name: {0: "pieces"} for name in [*names[:4], "scores"]},
        opset_version=17,
        dynamo=False,
    )
    model = onnx.load(path)
    with_short_names(model.graph)
    in_few_bits(model.graph, SMALLEST_HALVED)
    del model.graph.value_info[:]
    onnx.checker.check_model(model)
    onnx.save(model, path)
    return names


def main():
    stored, path = sys.argv[1:]
    outline = Outline("../../outline/outline.onnx")
    network, told = load(stored, outline)
    cautious(network, len(told["kinds"]))
    names = export(network, path)
    session = onnxruntime.InferenceSession(path, providers=["CPUExecutionProvider"])
    for count in (1, 4):
        given = example(count, network.side, seed=count)
        with torch.no_grad():
            wanted = OneAnswer(network)(*given).numpy()
        (scores,) = session.run(None, {name: one.numpy() for name, one in zip(names, given)})
        print(f"{count} pieces: scores differ by {np.abs(scores - wanted).max():.3f} at most, of {np.abs(wanted).max():.1f}")


if __name__ == "__main__":
    main()
