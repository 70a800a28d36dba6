"""A trained network as an ONNX file: large weights in 8 bits a channel, others in half precision, turned back when it is loaded; computed in single precision."""

import numpy as np
import onnx
import onnxruntime
import torch

from detector import Detector
from packed_weights import in_few_bits, with_short_names

# Below this many numbers not even halves pay for their node.
SMALLEST_HALVED = 64


def export(network, example, path, inputs, outputs, dynamic=None):
    """Writes the network's answers to the example's inputs, by these names. `dynamic`: sizes that may change, as torch.onnx.export takes them."""
    halving = [conv for one in network.modules() if isinstance(one, Detector) for conv in one.convs if conv.stride == (2, 2)]
    for conv in halving:
        # The file pads after the picture inside the convolution, which PyTorch can't say; set below.
        conv.padding = (1, 1)
    torch.onnx.export(network.eval(), example, path, input_names=inputs, output_names=outputs, dynamic_axes=dynamic, opset_version=17, dynamo=False)
    for conv in halving:
        conv.padding = (0, 0)
    model = onnx.load(path)
    for node in model.graph.node:
        attributes = {one.name: one for one in node.attribute}
        if halving and node.op_type == "Conv" and list(attributes["strides"].ints) == [2, 2]:
            attributes["pads"].ints[:] = [0, 0, 1, 1]
    with_short_names(model.graph)
    in_few_bits(model.graph, SMALLEST_HALVED)
    del model.graph.value_info[:]
    onnx.checker.check_model(model)
    onnx.save(model, path)


def farthest(network, path, inputs, example):
    """How far the file's first answer is from the network's at most, and the largest number in it."""
    session = onnxruntime.InferenceSession(path, providers=["CPUExecutionProvider"])
    told = session.run(None, {name: one.numpy() for name, one in zip(inputs, example)})[0]
    with torch.no_grad():
        wanted = network.eval()(*example)
    wanted = (wanted[0] if isinstance(wanted, tuple) else wanted).numpy()
    return float(np.abs(told - wanted).max()), float(np.abs(wanted).max())
