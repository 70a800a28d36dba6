"""Weights of an ONNX graph in few bits, turned back into single precision when the file is loaded: a smaller file, the same arithmetic."""

import numpy as np
from onnx import TensorProto, helper, numpy_helper

# Smaller tensors (biases, depthwise kernels) gain little from 8 bits and lose most by them.
SMALLEST_PACKED, SHORTEST_CHANNEL = 2048, 16


def _packed(tensor):
    """
    The initializers that stand for one tensor in 8 bits a channel, and the nodes that turn them back: Cast and Mul, not DequantizeLinear, since
    the runtime folds these two when it loads the file and computes plain floats from then on.
    """
    values, name = numpy_helper.to_array(tensor), tensor.name
    scale = np.abs(values).max(tuple(range(1, values.ndim)), keepdims=True).clip(1e-8) / 127
    whole = np.round(values / scale).clip(-127, 127).astype("int8")
    return (
        [numpy_helper.from_array(whole, name + "w"), numpy_helper.from_array(scale.astype("float32"), name + "s")],
        [helper.make_node("Cast", [name + "w"], [name + "c"], to=TensorProto.FLOAT), helper.make_node("Mul", [name + "c", name + "s"], [name])],
    )


def _halved(tensor):
    """Likewise in half precision."""
    halves = numpy_helper.to_array(tensor).astype("float16")
    return [numpy_helper.from_array(halves, tensor.name + "h")], [helper.make_node("Cast", [tensor.name + "h"], [tensor.name], to=TensorProto.FLOAT)]


def _kept(tensor, smallest_halved):
    shape = list(tensor.dims)
    if tensor.data_type != TensorProto.FLOAT or np.prod(shape) < smallest_halved:
        return [tensor], []
    is_packed = len(shape) >= 2 and np.prod(shape) >= SMALLEST_PACKED and np.prod(shape[1:]) >= SHORTEST_CHANNEL
    return _packed(tensor) if is_packed else _halved(tensor)


def in_few_bits(graph, smallest_halved=SMALLEST_PACKED):
    """Stores large weights of the graph in 8 bits a channel, other tensors of `smallest_halved` numbers and more in half precision."""
    kept, nodes = [], []
    for tensor in graph.initializer:
        values, turned = _kept(tensor, smallest_halved)
        kept += values
        nodes += turned
    nodes += graph.node
    del graph.initializer[:], graph.node[:]
    graph.initializer.extend(kept)
    graph.node.extend(nodes)


def with_short_names(graph):
    """Names of tensors are a tenth of a small file, and nobody asks for them."""
    outside = {one.name for one in (*graph.input, *graph.output)}
    names = {}

    def short(name):
        return name if name in outside or not name else names.setdefault(name, f"t{len(names)}")

    for tensor in graph.initializer:
        tensor.name = short(tensor.name)
    for node in graph.node:
        node.name = ""
        node.input[:], node.output[:] = [short(one) for one in node.input], [short(one) for one in node.output]


def in_floats(graph):
    """The graph's weights by name, as arrays in single precision, whatever they are stored in."""
    values = {tensor.name: numpy_helper.to_array(tensor) for tensor in graph.initializer}
    for node in graph.node:
        if node.op_type == "Cast" and node.input[0] in values:
            values[node.output[0]] = values[node.input[0]].astype("float32")
        elif node.op_type == "Mul" and all(name in values for name in node.input):
            values[node.output[0]] = values[node.input[0]] * values[node.input[1]]
    return values
