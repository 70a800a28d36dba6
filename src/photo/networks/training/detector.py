"""The layers of a published detector of things in photos as a network to go on from: a MobileNetV2 that has seen far more photos than ours."""

import torch
from torch import nn
from torch.nn import functional as F

from detector_file import detector_layers

# The detector's layers that halve the resolution. After its first layer each block has three, widen, look around, narrow; the first block does not widen.
STRIDE_TWO = (0, 4, 10, 19, 40)
LAST_BLOCK = 50
# The last layer at 1/2, 1/4, 1/8, 1/16, and the last block's at 1/32.
STAGES = (2, 8, 17, 38, 50)


class Detector(nn.Module):
    """Maps of its first `layers` layers from pictures N x 3 x H x W, 0..1, sides multiples of what it halves them by. `channels` beyond three start unheard."""

    def __init__(self, path, layers, channels=3):
        super().__init__()
        self.convs = nn.ModuleList()
        for place, (weight, bias) in enumerate(detector_layers(path, layers)):
            out, each, kernel, _ = weight.shape
            groups = out if each == 1 else 1
            if place == 0 and channels > each:
                weight = torch.cat([weight, torch.zeros(out, channels - each, kernel, kernel)], 1)
                each = channels
            # Padding of the halving steps is after the picture only, as the detector was trained: in `maps`.
            conv = nn.Conv2d(each * groups, out, kernel, 2 if place in STRIDE_TWO else 1, 0 if place in STRIDE_TWO else kernel // 2, groups=groups)
            conv.weight.data, conv.bias.data = weight, bias
            self.convs.append(conv)

    def channels(self, places):
        return [self.convs[place].out_channels for place in places]

    def maps(self, picture, places):
        """The answers of the layers at these places, in their order."""
        x, block, heard = picture * 2 - 1, None, {}
        for place, conv in enumerate(self.convs):
            if place in STRIDE_TWO:
                x = F.pad(x, (0, 1, 0, 1)) if conv.padding == (0, 0) else x
            x = conv(x)
            # A block narrows without a bend, and is added to what came in where nothing changed its shape.
            if 2 <= place <= LAST_BLOCK and (place - 2) % 3 == 0:
                x = x + block if block is not None and block.shape == x.shape else x
                block = x
            else:
                x = F.relu6(x)
            if place in places:
                heard[place] = x
        return [heard[place] for place in places]
