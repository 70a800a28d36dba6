"""The parser that ships as a PyTorch network again: its batch normalisation is folded into the convolutions."""

import pathlib
import sys

import numpy as np
import onnx
import torch
from torch import nn

from data import HEIGHT, WIDTH
from network import Parser

sys.path.append(str(pathlib.Path(__file__).parents[2] / "training"))
from packed_weights import in_floats  # noqa: E402


def folded_parser(size="student"):
    """A parser whose convolutions have biases in place of batch normalisation: what it learns further cannot shift with the batch."""
    network = Parser(size)
    for module in network.modules():
        if isinstance(module, nn.Sequential) and len(module) > 1 and isinstance(module[0], nn.Conv2d) and isinstance(module[1], nn.BatchNorm2d):
            old = module[0]
            module[0] = nn.Conv2d(old.in_channels, old.out_channels, old.kernel_size, old.stride, old.padding, old.dilation, old.groups, bias=True)
            module[1] = nn.Identity()
    return network


def load_onnx(path, size="student"):
    """The network of an ONNX file written by export.py. Its layers come in the order in which the network uses them."""
    graph = onnx.load(path).graph
    values = in_floats(graph)
    stored = [node for node in graph.node if node.op_type in ("Conv", "Gemm")]
    network = folded_parser(size).eval()
    used = []
    hooks = [m.register_forward_hook(lambda module, *_: used.append(module)) for m in network.modules() if isinstance(m, (nn.Conv2d, nn.Linear))]
    with torch.no_grad():
        network(torch.zeros(1, 3, HEIGHT, WIDTH))
    for hook in hooks:
        hook.remove()
    if len(used) != len(stored):
        raise ValueError(f"expected {len(used)} layers with weights in {path}, found {len(stored)}")
    for module, node in zip(used, stored):
        weight, bias = values[node.input[1]], values[node.input[2]]
        module.weight.data.copy_(torch.from_numpy(np.array(weight)))
        module.bias.data.copy_(torch.from_numpy(np.array(bias)))
    return network
