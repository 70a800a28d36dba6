"""The network that tells garments apart that touch or overlap: the layers of a detector, and our own from 1/16 up to 1/4."""

from torch import nn

import beside  # noqa: F401
from detector import STAGES, Detector
from network import Up, conv

# The last of the detector's layers at 1/16; those whose maps go up with it.
LAYERS = 39
SKIPS = STAGES[1:3]
# Channels on the way up, at 1/16, 1/8 and 1/4.
WIDTHS = (128, 96, 64)
# Cells of the answer are so many pixels wide; a way of 1 is so many cells long.
CELL, WAY = 4, 16
OUTPUTS = ("middle", "across", "down")


class Around(nn.Module):
    """What is seen in a wide ring around each cell joins what is seen there."""

    def __init__(self, width, spread):
        super().__init__()
        self.look = nn.Sequential(conv(width, width, 5, width, spread), conv(width, width))

    def forward(self, x):
        return x + self.look(x)


class ApartNetwork(nn.Module):
    """
    N x 4 x H x W (red, green, blue and mark of cloth, 0..1; sides multiples of 16) to N x 3 x H/4 x W/4: score of each cell for being the middle of a
    garment, and the way from the cell to the middle of the garment that it belongs to, across and down.
    """

    def __init__(self, detector_path):
        super().__init__()
        self.trunk = Detector(detector_path, LAYERS, channels=4)
        *skips, deep = self.trunk.channels((*SKIPS, LAYERS - 1))
        self.inward = conv(deep, WIDTHS[0])
        self.whole = nn.Sequential(nn.AdaptiveAvgPool2d(1), nn.Conv2d(WIDTHS[0], WIDTHS[0], 1), nn.Hardswish(), nn.Conv2d(WIDTHS[0], WIDTHS[0], 1))
        self.around = nn.Sequential(Around(WIDTHS[0], 1), Around(WIDTHS[0], 2), Around(WIDTHS[0], 3))
        self.ups = nn.ModuleList(Up(cin, skip, out) for cin, skip, out in zip(WIDTHS, reversed(skips), WIDTHS[1:]))
        self.told = nn.Conv2d(WIDTHS[-1], len(OUTPUTS), 1)
        nn.init.zeros_(self.told.bias)

    def forward(self, picture):
        *skips, deep = self.trunk.maps(picture, (*SKIPS, LAYERS - 1))
        x = self.inward(deep)
        x = self.around(x + self.whole(x))
        for up, skip in zip(self.ups, reversed(skips)):
            x = up(x, skip)
        return self.told(x)
