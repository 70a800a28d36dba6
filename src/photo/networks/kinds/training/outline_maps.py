"""Lets the outline network's file also give the maps that the kinds' head looks at. Weights and answers stay as they are, bit for bit.

    python outline_maps.py ../../outline/outline.onnx

The maps are found by their values: each is computed here with PyTorch and compared with everything that the file computes.
"""

import sys

import numpy as np
import onnx
import onnxruntime
import torch
from onnx import helper

from kind_network import MAPS, Outline

WHOLE = "whole"


def all_values(model, image):
    """Every value that the file computes for an image, by its name."""
    bare = onnx.ModelProto()
    bare.CopyFrom(model)
    del bare.graph.output[:]
    names = [name for node in model.graph.node for name in node.output]
    bare.graph.output.extend(helper.ValueInfoProto(name=name) for name in names)
    session = onnxruntime.InferenceSession(bare.SerializeToString(), providers=["CPUExecutionProvider"])
    return dict(zip(names, session.run(None, {"image": image})))


def renamed(graph, old, new):
    for node in graph.node:
        node.input[:] = [new if name == old else name for name in node.input]
        node.output[:] = [new if name == old else name for name in node.output]


def with_maps(path):
    """The model with an output a map, and one for the whole photo's features."""
    model = onnx.load(path)
    if any(out.name == WHOLE for out in model.graph.output):
        raise SystemExit(f"Expected a file without maps; {path} has them.")
    image = torch.randn(1, 3, 384, 256, generator=torch.Generator().manual_seed(1))
    with torch.no_grad():
        _, maps, whole = Outline(path)(image)
    values = all_values(model, image.numpy())
    for name, wanted in {**maps, WHOLE: whole}.items():
        same = [n for n, v in values.items() if v.shape == tuple(wanted.shape) and np.allclose(v, wanted.numpy(), rtol=1e-3, atol=1e-3)]
        if len(same) != 1:
            raise SystemExit(f"Expected one value of the file to be {name}; found {len(same)}.")
        renamed(model.graph, same[0], name)
        model.graph.output.append(helper.make_tensor_value_info(name, onnx.TensorProto.FLOAT, list(wanted.shape)))
    onnx.checker.check_model(model)
    return model


def main():
    (path,) = sys.argv[1:]
    model = with_maps(path)
    image = np.random.default_rng(2).normal(size=(1, 3, 384, 256)).astype(np.float32)
    before = onnxruntime.InferenceSession(path, providers=["CPUExecutionProvider"]).run(None, {"image": image})
    after = onnxruntime.InferenceSession(model.SerializeToString(), providers=["CPUExecutionProvider"]).run(None, {"image": image})
    if not all(np.array_equal(a, b) for a, b in zip(before, after)):
        raise SystemExit("Expected the same answers with and without the maps.")
    onnx.save(model, path)
    print({out.name: [d.dim_value for d in out.type.tensor_type.shape.dim] for out in model.graph.output}, sorted(MAPS))


if __name__ == "__main__":
    main()
