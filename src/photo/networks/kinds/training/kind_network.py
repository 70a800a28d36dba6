"""The two halves that tell the kind of a worn piece: a network on its crop, and a head on the outline network's own maps."""

import copy

import torch
from torch import nn
from torch.nn import functional as F

import beside  # noqa: F401
from augment import MEAN, STD
from folded import load_onnx

SLOT_COUNT, NUMBER_COUNT = 7, 15
# Maps of the outline network that the head looks at, with their channels: what it saw at 1/8 and 1/16, the deepest at 1/32, and the way back up.
MAPS = {"seen8": 96, "seen16": 208, "deep": 384, "up16": 160, "up8": 96, "up4": 64}
POOLED = 128


class Outline(nn.Module):
    """The outline network as it ships, never trained here: its answer and its maps."""

    def __init__(self, path):
        super().__init__()
        self.network = load_onnx(path).eval().requires_grad_(False)

    def forward(self, image):
        n = self.network
        x = n.stem(image)
        skips = [x]
        for stage in n.stages:
            x = stage(x)
            skips.append(x)
        x = x + n.context(x)
        whole = n.whole(x)
        pooled = n.head(whole.flatten(1))
        x = x + whole
        ups = [x]
        for up, skip in zip(n.ups, reversed(skips[:-1])):
            ups.append(up(ups[-1], skip))
        maps = {"seen8": skips[2], "seen16": skips[3], "deep": x, "up16": ups[1], "up8": ups[2], "up4": ups[3]}
        return n.logits(ups[-1]), maps, pooled


def pooled_over(mask, values):
    """Mean of a map (one a piece, or one for all) over soft masks, N x C."""
    weight = mask.flatten(2)
    # Products rather than a batched matrix product where each piece has its own map: the file only knows one photo's.
    total = weight.sum(2).clamp_min(1e-4)
    if values.shape[0] == 1:
        return weight[:, 0] @ values.flatten(2)[0].T / total
    return torch.einsum("np,ncp->nc", weight[:, 0], values.flatten(2)) / total


class Head(nn.Module):
    """Kind scores from the outline network's maps, pooled over a piece's mask (N x 1 at half the network's resolution)."""

    def __init__(self, answers):
        super().__init__()
        width = sum(MAPS.values()) + MAPS["deep"] + POOLED
        self.scale = nn.BatchNorm1d(width)
        self.hidden = nn.Sequential(
            nn.Dropout(0.2), nn.Linear(width + SLOT_COUNT + NUMBER_COUNT, 256), nn.Hardswish(), nn.Dropout(0.4), nn.Linear(256, 192), nn.Hardswish(), nn.Dropout(0.25)
        )
        self.scores = nn.Linear(192, answers)

    def pooled(self, masks, maps, whole):
        at = {4: F.avg_pool2d(masks, 2)}
        for step in (8, 16, 32):
            at[step] = F.avg_pool2d(at[step // 2], 2)
        steps = {"seen8": 8, "seen16": 16, "deep": 32, "up16": 16, "up8": 8, "up4": 4}
        parts = [pooled_over(at[steps[name]], maps[name].float()) for name in MAPS]
        deep = at[32]
        there = deep >= 0.25 * deep.amax((2, 3), keepdim=True)
        parts.append(torch.where(there, maps["deep"].float(), torch.full_like(maps["deep"][:1, :1, :1, :1].float(), -1e4)).amax((2, 3)))
        parts.append(whole.float().expand(masks.shape[0], -1))
        return torch.cat(parts, 1)

    def forward(self, masks, maps, whole, slots, numbers):
        return self.scores(self.hidden(torch.cat([self.scale(self.pooled(masks, maps, whole)), slots, numbers], 1)))


class Crop(nn.Module):
    """Kind scores from the crop around a piece: red, green, blue and the mask, 0..1. Starts from the outline network's layers down to 1/16."""

    def __init__(self, outline, answers):
        super().__init__()
        self.register_buffer("mean", torch.tensor([*MEAN, 0.5]).view(1, 4, 1, 1))
        self.register_buffer("deviation", torch.tensor([*STD, 0.5]).view(1, 4, 1, 1))
        self.stem = copy.deepcopy(outline.network.stem)
        first = self.stem[0][0]
        widened = nn.Conv2d(4, first.out_channels, 3, 2, 1, bias=True)
        with torch.no_grad():
            widened.weight.zero_()
            widened.weight[:, :3] = first.weight
            widened.bias.copy_(first.bias)
        self.stem[0][0] = widened
        self.stages = copy.deepcopy(outline.network.stages[:3])
        self.requires_grad_(True)
        width = MAPS["seen8"] + 3 * MAPS["seen16"]
        self.scale = nn.LayerNorm(width)
        self.hidden = nn.Sequential(
            nn.Linear(width + SLOT_COUNT + NUMBER_COUNT, 256), nn.Hardswish(), nn.Dropout(0.4), nn.Linear(256, 192), nn.Hardswish(), nn.Dropout(0.25)
        )
        self.scores = nn.Linear(192, answers)

    def seen(self, crops):
        x = self.stem((crops - self.mean) / self.deviation)
        x = self.stages[1](self.stages[0](x))
        return x, self.stages[2](x)

    def forward(self, crops, slots, numbers):
        eighth, sixteenth = self.seen(crops)
        mask8 = F.avg_pool2d(crops[:, 3:], 8)
        mask16 = F.avg_pool2d(mask8, 2)
        eighth, sixteenth = eighth.float(), sixteenth.float()
        mean = lambda mask, x: (mask * x).sum((2, 3)) / mask.sum((2, 3)).clamp_min(1e-4)
        parts = [mean(mask8, eighth), mean(mask16, sixteenth), sixteenth.mean((2, 3)), sixteenth.amax((2, 3))]
        return self.scores(self.hidden(torch.cat([self.scale(torch.cat(parts, 1)), slots, numbers], 1)))


def answer_count(kind_count):
    """Scores a piece: one a kind (without NONE), then one a slot that the piece may really be of, then one for NONE."""
    return kind_count - 1 + SLOT_COUNT + 1


def logs_of(scores, slot_of):
    """(log-probability of each kind within its slot, N x K; of each slot and NONE, N x 8)."""
    kinds, slots = scores.float().split([len(slot_of), SLOT_COUNT + 1], 1)
    within = torch.zeros_like(kinds)
    for slot in range(SLOT_COUNT):
        mine = slot_of == slot
        within[:, mine] = kinds[:, mine].log_softmax(1)
    return within, slots.log_softmax(1)


def joint_logs(scores, slot_of):
    """Log-probability of each kind and of NONE: whatever slot the piece was taken for, its kind may be of another."""
    within, slots = logs_of(scores, slot_of)
    return torch.cat([within + slots[:, slot_of], slots[:, -1:]], 1)


class Kinds(nn.Module):
    """Both halves; the answer is their mean. `outline` is not part of it."""

    def __init__(self, outline, kind_count):
        super().__init__()
        self.crop = Crop(outline, answer_count(kind_count))
        self.head = Head(answer_count(kind_count))

    def forward(self, crops, masks, maps, whole, slots, numbers):
        return self.crop(crops, slots, numbers), self.head(masks, maps, whole, slots, numbers)
