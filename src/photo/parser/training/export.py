"""A trained network as ONNX: weights stored in few bits, computed in single precision."""

import numpy as np
import onnx
import torch
from onnx import TensorProto, helper, numpy_helper

from data import HEIGHT, WIDTH

# Smaller tensors (biases, depthwise kernels) gain little from fewer bits and lose most by them.
SMALLEST_PACKED = 2048


def pack_weights(path, bits):
    """Stores large weights in 8 bits a channel, or as float16, turned back into single precision when the file is loaded: a smaller file, the same arithmetic."""
    model = onnx.load(path)
    graph = model.graph
    kept, unpack = [], []
    for tensor in graph.initializer:
        values = numpy_helper.to_array(tensor)
        if tensor.data_type != TensorProto.FLOAT or values.size < SMALLEST_PACKED or values.ndim < 2:
            kept.append(tensor)
        elif bits == 16 or values[0].size < 16:
            kept.append(numpy_helper.from_array(values.astype("float16"), tensor.name + "_half"))
            unpack.append(helper.make_node("Cast", [tensor.name + "_half"], [tensor.name], to=TensorProto.FLOAT))
        else:
            shape = (-1,) + (1,) * (values.ndim - 1)
            scale = (np.abs(values).reshape(len(values), -1).max(1).clip(1e-8) / 127).reshape(shape)
            whole = np.round(values / scale).clip(-127, 127).astype("int8")
            kept.append(numpy_helper.from_array(whole, tensor.name + "_whole"))
            kept.append(numpy_helper.from_array(scale.astype("float32"), tensor.name + "_scale"))
            # Cast and Mul, not DequantizeLinear: the runtime folds these two when it loads the file and computes plain floats from then on.
            unpack.append(helper.make_node("Cast", [tensor.name + "_whole"], [tensor.name + "_cast"], to=TensorProto.FLOAT))
            unpack.append(helper.make_node("Mul", [tensor.name + "_cast", tensor.name + "_scale"], [tensor.name]))
    del graph.initializer[:]
    graph.initializer.extend(kept)
    nodes = list(graph.node)
    del graph.node[:]
    graph.node.extend(unpack + nodes)
    onnx.checker.check_model(model)
    onnx.save(model, path)


def export(network, path, bits=8):
    network = network.eval().float().cpu()
    torch.onnx.export(
        network,
        torch.zeros(1, 3, HEIGHT, WIDTH),
        path,
        input_names=["image"],
        output_names=["logits", "photo_kind", "garment_kind"],
        opset_version=17,
        dynamo=False,
    )
    pack_weights(path, bits)
