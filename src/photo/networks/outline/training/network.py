"""The garment parser: an encoder-decoder of inverted residuals with two whole-photo heads."""

import torch
from torch import nn
from torch.nn import functional as F

CLASSES = ["background", "top", "outer", "bottom", "full", "legwear", "shoes", "accessory", "skin", "hair"]
PHOTO_KINDS = ["worn", "single", "scene"]
GARMENT_KINDS = ["dress", "hat", "longsleeve", "outwear", "pants", "shirt", "shoes", "shorts", "skirt", "t-shirt"]

# Widths at 1/2, 1/4, 1/8, 1/16, 1/32 and blocks at 1/4 .. 1/32. The deep half is wide, because there it costs little time.
SIZES = {
    "student": {"widths": (24, 40, 96, 208, 384), "blocks": (2, 3, 5, 3), "expand": 4, "decoder": (160, 96, 64, 40)},
    "teacher": {"widths": (40, 64, 128, 256, 480), "blocks": (3, 4, 6, 4), "expand": 5, "decoder": (192, 128, 80, 56)},
}


def conv(cin, cout, kernel=1, stride=1, groups=1, dilation=1, act=True):
    layers = [
        nn.Conv2d(cin, cout, kernel, stride, dilation * (kernel // 2), dilation, groups, bias=False),
        nn.BatchNorm2d(cout),
    ]
    return nn.Sequential(*layers, nn.Hardswish(inplace=True)) if act else nn.Sequential(*layers)


class Inverted(nn.Module):
    """Widen by 1x1, look around depth by depth, narrow by 1x1; skipped where shape allows."""

    def __init__(self, cin, cout, kernel, stride, expand, drop):
        super().__init__()
        mid = cin * expand
        self.body = nn.Sequential(
            conv(cin, mid), conv(mid, mid, kernel, stride, groups=mid), conv(mid, cout, act=False)
        )
        self.skip = stride == 1 and cin == cout
        self.drop = drop

    def forward(self, x):
        y = self.body(x)
        if not self.skip:
            return y
        if self.training and self.drop > 0:
            keep = (torch.rand(x.shape[0], 1, 1, 1, device=x.device) >= self.drop).to(y.dtype)
            y = y * keep / (1 - self.drop)
        return x + y


class Up(nn.Module):
    """Doubles the resolution and joins what the encoder saw there."""

    def __init__(self, cin, cskip, cout):
        super().__init__()
        self.inward = conv(cin, cout)
        self.across = conv(cskip, cout)
        self.mix = nn.Sequential(conv(cout, cout, 3, groups=cout), conv(cout, cout))

    def forward(self, x, skip):
        x = F.interpolate(self.inward(x), scale_factor=2.0, mode="bilinear", align_corners=False)
        return self.mix(x + self.across(skip))


class Parser(nn.Module):
    def __init__(self, size="student", drop=0.0):
        super().__init__()
        spec = SIZES[size]
        widths, expand = spec["widths"], spec["expand"]
        self.stem = nn.Sequential(conv(3, widths[0], 3, 2), conv(widths[0], widths[0], 3, groups=widths[0]))
        self.stages = nn.ModuleList()
        for level, count in enumerate(spec["blocks"]):
            kernel = 3 if level == 0 else 5
            blocks = [Inverted(widths[level], widths[level + 1], kernel, 2, expand, 0.0)]
            blocks += [Inverted(widths[level + 1], widths[level + 1], kernel, 1, expand, drop) for _ in range(count - 1)]
            self.stages.append(nn.Sequential(*blocks))
        deep, dec = widths[4], spec["decoder"]
        self.context = nn.Sequential(
            conv(deep, deep, 3, groups=deep, dilation=2), conv(deep, deep), conv(deep, deep, 3, groups=deep, dilation=3), conv(deep, deep)
        )
        self.whole = nn.Sequential(nn.AdaptiveAvgPool2d(1), nn.Conv2d(deep, deep, 1), nn.Hardswish())
        self.ups = nn.ModuleList(
            [Up(deep, widths[3], dec[0]), Up(dec[0], widths[2], dec[1]), Up(dec[1], widths[1], dec[2]), Up(dec[2], widths[0], dec[3])]
        )
        self.logits = nn.Conv2d(dec[3], len(CLASSES), 1)
        self.head = nn.Sequential(nn.Linear(deep, 128), nn.Hardswish(), nn.Dropout(0.2))
        self.photo_kind = nn.Linear(128, len(PHOTO_KINDS))
        self.garment_kind = nn.Linear(128, len(GARMENT_KINDS))

    def forward(self, image):
        x = self.stem(image)
        skips = [x]
        for stage in self.stages:
            x = stage(x)
            skips.append(x)
        x = x + self.context(x)
        whole = self.whole(x)
        pooled = self.head(whole.flatten(1))
        x = x + whole
        for up, skip in zip(self.ups, reversed(skips[:-1])):
            x = up(x, skip)
        return self.logits(x), self.photo_kind(pooled), self.garment_kind(pooled)


class Several(nn.Module):
    """The mean answer of several networks, as logits."""

    def __init__(self, networks):
        super().__init__()
        self.networks = nn.ModuleList(networks)

    def forward(self, image):
        answers = zip(*(network(image) for network in self.networks))
        return tuple(torch.stack([one.float().softmax(1) for one in answer]).mean(0).clamp_min(1e-6).log() for answer in answers)


def load_weights(path):
    """A trained network; its size is told by the width of its first layer."""
    state = torch.load(path, map_location="cpu", weights_only=True)
    width = state["stem.0.0.weight"].shape[0]
    size = next(name for name, spec in SIZES.items() if spec["widths"][0] == width)
    network = Parser(size)
    network.load_state_dict(state)
    return network
