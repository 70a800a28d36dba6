"""The trained network as an ONNX file: large weights in 8 bits a channel, the others in half precision, turned back when it is loaded."""

import pathlib
import sys

import onnx
import torch

sys.path.append(str(pathlib.Path(__file__).parents[2] / "training"))
from packed_weights import in_few_bits, with_short_names  # noqa: E402

# Below this many numbers not even halves pay for their node.
SMALLEST_HALVED = 64


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
    with_short_names(graph)
    in_few_bits(graph, SMALLEST_HALVED)
    del graph.value_info[:]
    onnx.checker.check_model(model)
    onnx.save(model, path)
