"""The trained network as an ONNX file, and a check that the file answers as the network did.

    python export_kinds.py KINDS.pt DETECTOR.tflite ../kinds.onnx
"""

import sys

import torch

import beside  # noqa: F401
from crops import SIDE
from figures import PRIOR, log_shares
from kind_network import FRAME_HEIGHT, FRAME_WIDTH, MASK_HEIGHT, MASK_WIDTH, NUMBER_COUNT, SLOT_COUNT, Kinds
from onnx_file import export, farthest

INPUTS = ["crops", "frame", "masks", "slots", "numbers"]


def example(count, seed=1):
    """Inputs of `count` pieces of one photo, in the file's order."""
    draw = torch.Generator().manual_seed(seed)
    masks = torch.zeros(count, 1, MASK_HEIGHT, MASK_WIDTH)
    for at in range(count):
        masks[at, :, 15 + 6 * at : 68 + 6 * at, 22:52] = 1
    slots = torch.eye(SLOT_COUNT)[torch.arange(count) % SLOT_COUNT]
    return torch.rand(count, 4, SIDE, SIDE, generator=draw), torch.rand(1, 3, FRAME_HEIGHT, FRAME_WIDTH, generator=draw), masks, slots, torch.rand(count, NUMBER_COUNT, generator=draw)


@torch.no_grad()
def export_checked(network, frequency, slot_of, path):
    """Writes the network with common kinds preferred: it learnt from batches in which rare ones were drawn more often."""
    network.scores.bias += PRIOR * log_shares(frequency, slot_of)
    export(network, example(3), path, INPUTS, ["scores"], {name: {0: "pieces"} for name in ["crops", *INPUTS[2:], "scores"]})
    for count in (1, 4):
        print("%d pieces: scores differ by %.3f at most, of %.1f" % (count, *farthest(network, path, INPUTS, example(count, seed=count))))


def main():
    weights, detector, path = sys.argv[1:]
    stored = torch.load(weights, map_location="cpu", weights_only=True)
    network = Kinds(detector, len(stored["kinds"]))
    network.load_state_dict({key: value.float() if value.dtype.is_floating_point else value for key, value in stored["weights"].items()})
    export_checked(network.eval(), stored["frequency"], torch.tensor(stored["slot_of"]), path)


if __name__ == "__main__":
    main()
