"""The trained network as an ONNX file: large weights in 8 bits a channel, turned back when it is loaded and computed in single precision."""

import numpy as np
import onnx
import torch
from onnx import TensorProto, helper, numpy_helper

# Smaller tensors (biases, depthwise kernels) gain little from fewer bits and lose most by them.
SMALLEST_PACKED = 2048


def _packed(tensor):
    """The initializers that stand for one large tensor, and the nodes that turn them back."""
    values, name = numpy_helper.to_array(tensor), tensor.name
    axes = tuple(range(1, values.ndim))
    scale = np.abs(values).max(axes, keepdims=True).clip(1e-8) / 127
    whole = np.round(values / scale).clip(-127, 127).astype("int8")
    return (
        [numpy_helper.from_array(whole, name + "_whole"), numpy_helper.from_array(scale.astype("float32"), name + "_scale")],
        [
            helper.make_node("Cast", [name + "_whole"], [name + "_cast"], to=TensorProto.FLOAT),
            helper.make_node("Mul", [name + "_cast", name + "_scale"], [name]),
        ],
    )


def export(network, path):
    """Writes `picture` 1 x 4 x height x width (any multiples of 16) to `scores` 1 x 5."""
    torch.onnx.export(
        network.eval(),
        torch.rand(1, 4, 64, 96),
        path,
        input_names=["picture"],
        output_names=["scores"],
        dynamic_axes={"picture": {2: "height", 3: "width"}},
        opset_version=17,
        dynamo=False,
    )
    model = onnx.load(path)
    graph = model.graph
    kept, nodes = [], []
    for tensor in graph.initializer:
        shape = list(tensor.dims)
        if tensor.data_type == TensorProto.FLOAT and len(shape) >= 2 and np.prod(shape) >= SMALLEST_PACKED and np.prod(shape[1:]) >= 16:
            values, turned = _packed(tensor)
            kept += values
            nodes += turned
        else:
            kept.append(tensor)
    for node in graph.node:
        # Names of layers are a tenth of the file, and nobody asks for them.
        node.name = ""
        nodes.append(node)
    del graph.initializer[:], graph.node[:]
    graph.initializer.extend(kept)
    graph.node.extend(nodes)
    onnx.checker.check_model(model)
    onnx.save(model, path)
