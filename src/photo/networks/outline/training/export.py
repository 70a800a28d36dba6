"""A trained network as ONNX: weights stored in few bits, computed in single precision."""

import pathlib
import sys

import onnx
import torch

from data import HEIGHT, WIDTH

sys.path.append(str(pathlib.Path(__file__).parents[2] / "training"))
from packed_weights import in_few_bits  # noqa: E402


def export(network, path):
    """Writes `image` 1 x 3 x HEIGHT x WIDTH to `logits`, `photo_kind`, `garment_kind`."""
    torch.onnx.export(
        network.eval().float().cpu(),
        torch.zeros(1, 3, HEIGHT, WIDTH),
        path,
        input_names=["image"],
        output_names=["logits", "photo_kind", "garment_kind"],
        opset_version=17,
        dynamo=False,
    )
    model = onnx.load(path)
    in_few_bits(model.graph)
    onnx.checker.check_model(model)
    onnx.save(model, path)
