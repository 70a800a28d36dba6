"""The trained network as an ONNX file: large weights in 8 bits a channel, the others in half precision, turned back when it is loaded."""

import numpy as np
import onnx
import torch
from onnx import TensorProto, helper, numpy_helper

# Smaller tensors (biases, depthwise kernels) gain little from 8 bits and lose most by them; below SMALLEST_HALVED not even 16 pay for their node.
SMALLEST_PACKED, SMALLEST_HALVED = 2048, 64


def _packed(tensor):
    """The initializers that stand for one large tensor, and the nodes that turn them back."""
    values, name = numpy_helper.to_array(tensor), tensor.name
    axes = tuple(range(1, values.ndim))
    scale = np.abs(values).max(axes, keepdims=True).clip(1e-8) / 127
    whole = np.round(values / scale).clip(-127, 127).astype("int8")
    return (
        [numpy_helper.from_array(whole, name + "w"), numpy_helper.from_array(scale.astype("float32"), name + "s")],
        [helper.make_node("Cast", [name + "w"], [name + "c"], to=TensorProto.FLOAT), helper.make_node("Mul", [name + "c", name + "s"], [name])],
    )


def _halved(tensor):
    """Likewise for one middling tensor, as halves."""
    halves = numpy_helper.to_array(tensor).astype("float16")
    return [numpy_helper.from_array(halves, tensor.name + "h")], [helper.make_node("Cast", [tensor.name + "h"], [tensor.name], to=TensorProto.FLOAT)]


def _kept(tensor):
    shape = list(tensor.dims)
    if tensor.data_type != TensorProto.FLOAT or np.prod(shape) < SMALLEST_HALVED:
        return [tensor], []
    return _packed(tensor) if len(shape) >= 2 and np.prod(shape) >= SMALLEST_PACKED and np.prod(shape[1:]) >= 16 else _halved(tensor)


def _short_names(graph):
    """Names of tensors are a tenth of the file, and nobody asks for them."""
    outside = {one.name for one in (*graph.input, *graph.output)}
    names = {}

    def short(name):
        return name if name in outside or not name else names.setdefault(name, f"t{len(names)}")

    for tensor in graph.initializer:
        tensor.name = short(tensor.name)
    for node in graph.node:
        node.name = ""
        node.input[:], node.output[:] = [short(one) for one in node.input], [short(one) for one in node.output]


def export(network, path):
    """Writes `picture` 1 x 4 x height x width (any multiples of 16) to `scores` 1 x 5."""
    halving = [conv for conv in network.trunk.convs if conv.stride == (2, 2)]
    for conv in halving:
        # The file pads after the picture inside the convolution, which PyTorch can't say; set below.
        conv.padding = (1, 1)
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
    for conv in halving:
        conv.padding = (0, 0)
    model = onnx.load(path)
    graph = model.graph
    for node in graph.node:
        attributes = {one.name: one for one in node.attribute}
        if node.op_type == "Conv" and list(attributes["strides"].ints) == [2, 2]:
            attributes["pads"].ints[:] = [0, 0, 1, 1]
    _short_names(graph)
    kept, nodes = [], []
    for tensor in graph.initializer:
        values, turned = _kept(tensor)
        kept += values
        nodes += turned
    nodes += graph.node
    del graph.initializer[:], graph.node[:], graph.value_info[:]
    graph.initializer.extend(kept)
    graph.node.extend(nodes)
    onnx.checker.check_model(model)
    onnx.save(model, path)
