"""The pattern network: the first layers of the garment parser, what they say of the cloth, and a small head; trained on together."""

import numpy as np
import onnx
import torch
from onnx import numpy_helper
from torch import nn
from torch.nn import functional as F

PATTERNS = ["plain", "striped", "checked", "printed", "mottled"]
# As the parser was trained: RGB, 0..1.
MEAN, DEVIATION = (0.485, 0.456, 0.406), (0.229, 0.224, 0.225)
# The parser's layers in order, by the names of their outputs: three a block (widen, look around, narrow).
STEM, STAGES = "/stem/stem.{}/stem.{}.0/Conv_output_0", "/stages.{}/stages.{}.{}/body/body.{}/body.{}.0/Conv_output_0"
BLOCKS = (2, 3, 5, 3)
LAYERS = [STEM.format(0, 0), STEM.format(1, 1)] + [
    STAGES.format(stage, stage, block, part, part) for stage, count in enumerate(BLOCKS) for block in range(count) for part in (0, 1, 2)
]
# The first block of each stage halves the resolution where it looks around.
STRIDE_TWO = {0} | {LAYERS.index(STAGES.format(stage, stage, 0, 1, 1)) for stage in range(len(BLOCKS))}
# How many layers are taken, which of them the head hears, and how wide the head is: for the network that ships, and for a larger one to teach it.
SHAPES = {
    "shipped": {"layers": 13, "heard": (1, 3, 6, 9, 12), "hidden": 48},
    "teacher": {"layers": 41, "heard": (1, 3, 6, 9, 12, 15, 19, 25, 31, 37), "hidden": 64},
}


def parser_layers(path, count):
    """(weight, bias) of the parser's first convolutions; its weights in 8 bits a channel are turned back."""
    graph = onnx.load(path).graph
    values = {one.name: numpy_helper.to_array(one) for one in graph.initializer}
    for node in graph.node:
        if node.op_type == "Cast" and node.input[0] in values:
            values[node.output[0]] = values[node.input[0]].astype(np.float32)
        if node.op_type == "Mul" and all(name in values for name in node.input):
            values[node.output[0]] = values[node.input[0]] * values[node.input[1]]
    found = {node.output[0]: [values[name] for name in node.input[1:]] for node in graph.node if node.op_type == "Conv"}
    return [tuple(torch.from_numpy(value.copy()) for value in found[name]) for name in LAYERS[:count]]


def _figures(x, inside):
    """Mean, spread and largest value of each channel of x, N x C x H x W, where `inside`, N x 1 x H x W, is 1."""
    with torch.autocast(x.device.type, enabled=False):
        # The first two sizes as plain numbers, so that the ONNX file holds them and no computation of them.
        x, inside = (one.float().reshape(int(one.shape[0]), int(one.shape[1]), -1) for one in (x, inside))
        share = (inside / (inside.sum(2, keepdim=True) + 1e-6)).transpose(1, 2)
        mean, square = (x @ share).squeeze(2), (x * x @ share).squeeze(2)
        return [mean, ((square - mean * mean).clamp_min(0) + 1e-6).sqrt(), (x * inside).amax(2)]


class Trunk(nn.Module):
    """
    N x 4 x H x W (red, green, blue 0..1, cloth 0 or 1; outside the cloth its mean colour), sides multiples of 16, to figures of the cloth:
    its mean colour; mean, spread and largest value of each channel of the layers that the head hears.
    """

    def __init__(self, parser_path, layers, heard):
        super().__init__()
        self.heard = heard
        self.convs = nn.ModuleList()
        for place, (weight, bias) in enumerate(parser_layers(parser_path, layers)):
            out, each, kernel, _ = weight.shape
            groups = out if each == 1 else 1
            conv = nn.Conv2d(each * groups, out, kernel, 2 if place in STRIDE_TWO else 1, kernel // 2, groups=groups)
            conv.weight.data, conv.bias.data = weight, bias
            self.convs.append(conv)
        self.register_buffer("mean", torch.tensor(MEAN).view(1, 3, 1, 1))
        self.register_buffer("deviation", torch.tensor(DEVIATION).view(1, 3, 1, 1))

    def forward(self, picture):
        rgb, cloth = picture[:, :3], picture[:, 3:]
        figures = [(rgb * cloth).sum((2, 3)) / cloth.sum((2, 3))]
        x = (rgb - self.mean) / self.deviation
        block, scale = None, 1
        for place, conv in enumerate(self.convs):
            x = conv(x)
            scale *= 2 if place in STRIDE_TWO else 1
            # A block narrows without a bend, and is added to what came in where nothing changed its shape.
            if place >= 2 and (place - 2) % 3 == 2:
                x = x + block if block is not None and block.shape == x.shape else x
                block = x
            else:
                x = F.hardswish(x)
            if place in self.heard:
                figures += _figures(x, (F.avg_pool2d(cloth, scale) > 0.6).float())
        return torch.cat(figures, 1)


class PatternNetwork(nn.Module):
    """The trunk's figures, evened, and a head: scores in the order of PATTERNS."""

    def __init__(self, parser_path, shape):
        super().__init__()
        spec = SHAPES[shape]
        self.trunk = Trunk(parser_path, spec["layers"], spec["heard"])
        figures = len(MEAN) + 3 * sum(self.trunk.convs[place].out_channels for place in spec["heard"])
        self.register_buffer("centre", torch.zeros(figures))
        self.register_buffer("width", torch.ones(figures))
        self.drop_figures, self.drop_hidden = nn.Dropout(0.25), nn.Dropout(0.4)
        self.hidden, self.scores = nn.Linear(figures, spec["hidden"]), nn.Linear(spec["hidden"], len(PATTERNS))

    def even(self, figures):
        """Takes from these figures, N x F, what is ordinary: most then lie within -4 .. 4."""
        logs = self._logs(figures)
        self.centre, self.width = logs.mean(0), logs.std(0) + 1e-4

    @staticmethod
    def _logs(figures):
        return figures.sign() * torch.log1p(4 * figures.abs())

    def forward(self, picture):
        evened = ((self._logs(self.trunk(picture)) - self.centre) / self.width).clamp(-4, 4)
        return self.scores(self.drop_hidden(F.relu(self.hidden(self.drop_figures(evened)))))
