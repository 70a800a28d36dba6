"""The garment parser: a detector's layers on the way down, our own on the way up, and two whole-photo heads."""

import torch
from torch import nn
from torch.nn import functional as F

import beside  # noqa: F401
from detector import STAGES, Detector
from garment_archives import GARMENT_KINDS

CLASSES = ["background", "top", "outer", "bottom", "full", "legwear", "shoes", "accessory", "skin", "hair"]
PHOTO_KINDS = ["worn", "single", "scene"]
LAYERS = 52
# Channels on the way up, at 1/16, 1/8, 1/4 and 1/2; of the whole photo; of the heads.
WIDTHS = (192, 128, 80, 56)
WHOLE, HEAD = 192, 128
SKIPS = STAGES[:4]


def conv(cin, cout, kernel=1, groups=1, spread=1):
    return nn.Sequential(nn.Conv2d(cin, cout, kernel, 1, spread * (kernel // 2), spread, groups, bias=False), nn.BatchNorm2d(cout), nn.Hardswish(inplace=True))


class Up(nn.Module):
    """Doubles the resolution and joins what the way down saw there."""

    def __init__(self, cin, cskip, cout):
        super().__init__()
        self.inward = conv(cin, cout)
        self.across = conv(cskip, cout)
        self.mix = nn.Sequential(conv(cout, cout, 3, groups=cout), conv(cout, cout))

    def forward(self, x, skip):
        x = F.interpolate(self.inward(x), scale_factor=2.0, mode="bilinear", align_corners=False)
        return self.mix(x + self.across(skip))


class Parser(nn.Module):
    """N x 3 x H x W, 0..1, sides multiples of 32, to class scores at half of that, scores of PHOTO_KINDS and of GARMENT_KINDS."""

    def __init__(self, detector_path):
        super().__init__()
        self.trunk = Detector(detector_path, LAYERS)
        *skips, deep = self.trunk.channels((*SKIPS, LAYERS - 1))
        self.ups = nn.ModuleList(Up(cin, skip, out) for cin, skip, out in zip((deep, *WIDTHS[:3]), reversed(skips), WIDTHS))
        self.whole = nn.Sequential(nn.AdaptiveAvgPool2d(1), nn.Conv2d(deep, WHOLE, 1), nn.Hardswish(), nn.Conv2d(WHOLE, deep, 1))
        self.drop = nn.Dropout2d(0.1)
        self.logits = nn.Conv2d(WIDTHS[3], len(CLASSES), 1)
        self.head = nn.Sequential(nn.Dropout(0.2), nn.Linear(2 * deep, HEAD), nn.Hardswish(), nn.Dropout(0.3))
        self.photo_kind = nn.Linear(HEAD, len(PHOTO_KINDS))
        self.garment_kind = nn.Linear(HEAD, len(GARMENT_KINDS))

    def forward(self, image):
        *skips, deep = self.trunk.maps(image, (*SKIPS, LAYERS - 1))
        pooled = self.head(torch.cat([deep.mean((2, 3)), deep.amax((2, 3))], 1))
        x = self.drop(deep + self.whole(deep))
        for up, skip in zip(self.ups, reversed(skips)):
            x = up(x, skip)
        return self.logits(x), self.photo_kind(pooled), self.garment_kind(pooled)
