"""The pattern network: the first layers of the garment parser as they are, what they say of the cloth, and a small head trained on that."""

import numpy as np
import onnx
import torch
from onnx import numpy_helper
from torch import nn
from torch.nn import functional as F

PATTERNS = ["plain", "striped", "checked", "printed", "mottled"]
# As the parser was trained: RGB, 0..1.
MEAN, DEVIATION = (0.485, 0.456, 0.406), (0.229, 0.224, 0.225)
# The parser's layers in order, by the names of their outputs: stride, groups of one channel, what follows, and whether the head hears of them.
STEM, STAGES = "/stem/stem.{}/stem.{}.0/Conv_output_0", "/stages.{}/stages.{}.{}/body/body.{}/body.{}.0/Conv_output_0"
LAYERS = [STEM.format(0, 0), STEM.format(1, 1)] + [
    STAGES.format(stage, stage, block, part, part) for stage, block in ((0, 0), (0, 1), (1, 0), (1, 1)) for part in (0, 1, 2)
][:-1]
STRIDE_TWO = {LAYERS[0], LAYERS[3], LAYERS[9]}
HEARD = {LAYERS[1]: 2, LAYERS[3]: 4, LAYERS[6]: 4, LAYERS[9]: 8, LAYERS[12]: 8}
HIDDEN = 48


def parser_layers(path):
    """(name, weight, bias) of the parser's first convolutions; its weights in 8 bits a channel are turned back."""
    graph = onnx.load(path).graph
    values = {one.name: numpy_helper.to_array(one) for one in graph.initializer}
    for node in graph.node:
        if node.op_type == "Cast" and node.input[0] in values:
            values[node.output[0]] = values[node.input[0]].astype(np.float32)
        if node.op_type == "Mul" and all(name in values for name in node.input):
            values[node.output[0]] = values[node.input[0]] * values[node.input[1]]
    found = {node.output[0]: [values[name] for name in node.input[1:]] for node in graph.node if node.op_type == "Conv"}
    return [(name, *(torch.from_numpy(value.copy()) for value in found[name])) for name in LAYERS]


class Trunk(nn.Module):
    """N x 4 x H x W (red, green, blue 0..1, cloth 0 or 1; outside the cloth its mean colour), sides multiples of 16, to N x 2475 figures."""

    def __init__(self, parser_path):
        super().__init__()
        self.convs = nn.ModuleList()
        for name, weight, bias in parser_layers(parser_path):
            out, each, kernel, _ = weight.shape
            groups = out if each == 1 else 1
            conv = nn.Conv2d(each * groups, out, kernel, 2 if name in STRIDE_TWO else 1, kernel // 2, groups=groups)
            conv.weight.data, conv.bias.data = weight, bias
            self.convs.append(conv)
        self.register_buffer("mean", torch.tensor(MEAN).view(1, 3, 1, 1))
        self.register_buffer("deviation", torch.tensor(DEVIATION).view(1, 3, 1, 1))

    def forward(self, picture):
        rgb, cloth = picture[:, :3], picture[:, 3:]
        figures = [(rgb * cloth).sum((2, 3)) / cloth.sum((2, 3))]
        x = (rgb - self.mean) / self.deviation
        block = None
        for place, (name, conv) in enumerate(zip(LAYERS, self.convs)):
            x = conv(x)
            # A block narrows without a bend, and is added to what came in where nothing changed its shape.
            if place >= 2 and (place - 2) % 3 == 2:
                x = x + block if block is not None and block.shape == x.shape else x
                block = x
            else:
                x = F.hardswish(x)
            if name in HEARD:
                inside = (F.avg_pool2d(cloth, HEARD[name]) > 0.6).float()
                count = inside.sum((2, 3)) + 1e-6
                mean = (x * inside).sum((2, 3)) / count
                spread = (((x - mean[:, :, None, None]) ** 2 * inside).sum((2, 3)) / count).sqrt()
                figures += [mean, spread, (x * inside).amax((2, 3))]
        return torch.cat(figures, 1)


class PatternNetwork(nn.Module):
    """The trunk's figures, evened, and a head: scores in the order of PATTERNS."""

    def __init__(self, trunk, even, hidden=HIDDEN):
        super().__init__()
        self.trunk = trunk
        self.register_buffer("centre", even[0])
        self.register_buffer("width", even[1])
        self.head = nn.Sequential(nn.Linear(len(even[0]), hidden), nn.ReLU(), nn.Linear(hidden, len(PATTERNS)))

    def forward(self, picture):
        return self.head(evened(self.trunk(picture), self.centre, self.width))


def evened(figures, centre, width):
    """Figures whose ratios count brought to about -4 .. 4."""
    return ((figures.sign() * torch.log1p(4 * figures.abs()) - centre) / width).clamp(-4, 4)
