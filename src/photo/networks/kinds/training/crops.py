"""Crops around pieces as the program makes them, and the disturbed ones that training sees."""

import math

import torch
from torch.nn import functional as F

import beside  # noqa: F401
from augment import rand
from kind_network import FRAME_HEIGHT, FRAME_WIDTH, MASK_HEIGHT, MASK_WIDTH
from outfits import HEIGHT, WIDTH

# Side of a crop, pixels; it is sampled at twice that and averaged. Its side in the photo is WIDER times the box's longer edge.
SIDE = 160
WIDER = 1.3


def grids_of(box, wider=None, degrees=None, stretch=None, shift=None, mirror=None, side=SIDE):
    """Sampling grids, n x 2 side x 2 side x 2, of squares around boxes (n x 4, pixels of the photo)."""
    n, device = len(box), box.device
    zero, one = torch.zeros(n, device=device), torch.ones(n, device=device)
    left, top, right, bottom = box.T
    half = torch.maximum(right - left, bottom - top) * (WIDER * one if wider is None else wider) / 2
    cx, cy = (left + right) / 2, (top + bottom) / 2
    if shift is not None:
        cx, cy = cx + shift[:, 0] * half * 2, cy + shift[:, 1] * half * 2
    angle = zero if degrees is None else degrees * math.pi / 180
    sx, sy = (one, one) if stretch is None else (stretch, 1 / stretch)
    sx = sx if mirror is None else sx * mirror
    cos, sin = torch.cos(angle) * half, torch.sin(angle) * half
    theta = torch.stack(
        [
            torch.stack([cos * sx * 2 / WIDTH, -sin * sy * 2 / WIDTH, cx * 2 / WIDTH - 1], 1),
            torch.stack([sin * sx * 2 / HEIGHT, cos * sy * 2 / HEIGHT, cy * 2 / HEIGHT - 1], 1),
        ],
        1,
    )
    return F.affine_grid(theta, (n, 1, 2 * side, 2 * side), align_corners=False)


def sampled(photos, masks, grid):
    """n x 4 x side x side, 0..1: the photo's edge goes on around it, the mask ends with it."""
    rgb = F.grid_sample(photos.float(), grid, padding_mode="border", align_corners=False) / 255
    mask = F.grid_sample(masks, grid, padding_mode="zeros", align_corners=False)
    return F.avg_pool2d(torch.cat([rgb, mask], 1), 2)


def plain_crops(photos, pieces, pick, side=SIDE):
    """Crops as the program makes them, in single precision."""
    return sampled(photos[pieces.photo[pick]], pieces.mask_of(pick), grids_of(pieces.box[pick], side=side))


def disturbed_mask(mask, kernel):
    """Masks n x 1 x h x w grown, shrunk, shifted, bitten; half of them as they are."""
    n, device = len(mask), mask.device
    at = lambda x: x.view(n, 1, 1, 1)
    changed = mask
    for _ in range(2):
        changed = F.avg_pool2d(changed, kernel, 1, kernel // 2)
    cut = at(rand(n, 0.12, 0.88, device))
    changed = ((changed - cut) * 6 + 0.5).clamp(0, 1)
    moves = torch.randint(-(kernel // 2), kernel // 2 + 1, (4, 2))
    for part, (dy, dx) in enumerate(moves.tolist()):
        changed[part::4] = torch.roll(changed[part::4], (dy, dx), (2, 3))
    ys = torch.linspace(0, 1, mask.shape[2], device=device).view(1, 1, -1, 1)
    xs = torch.linspace(0, 1, mask.shape[3], device=device).view(1, 1, 1, -1)
    bite = ((ys - at(rand(n, 0.1, 0.9, device))) / at(rand(n, 0.05, 0.25, device))) ** 2 + ((xs - at(rand(n, 0.1, 0.9, device))) / at(rand(n, 0.05, 0.25, device))) ** 2 < 1
    bite = bite & at(torch.rand(n, device=device) < 0.3)
    changed = torch.where(bite, torch.zeros_like(changed), changed)
    # Nothing left says nothing.
    some = changed.sum((1, 2, 3)) > 0.3 * mask.sum((1, 2, 3))
    return torch.where(at((torch.rand(n, device=device) < 0.5) & some), changed, mask)


def other_light(rgb):
    """Mild lamps, exposure, contrast, saturation, blur and noise, 0..1: the hue of denim must stay denim's."""
    n, device = len(rgb), rgb.device
    at = lambda x: x.view(n, 1, 1, 1)
    warm = rand(n, -0.1, 0.1, device)
    gains = torch.stack([1 + warm * 0.6, 1 + rand(n, -0.03, 0.03, device), 1 - warm], 1)
    x = rgb.clamp_min(1e-4) ** 2.2 * gains.view(n, 3, 1, 1) * at(2 ** rand(n, -0.5, 0.4, device))
    x = x.clamp(1e-5, 1) ** at(1 / (2.2 * rand(n, 0.87, 1.15, device)))
    grey = x.mean(1, keepdim=True)
    x = grey + (x - grey) * at(rand(n, 0.7, 1.3, device))
    middle = x.mean((1, 2, 3), keepdim=True)
    x = middle + (x - middle) * at(rand(n, 0.8, 1.2, device))
    x = torch.where(at(torch.rand(n, device=device) < 0.2), F.avg_pool2d(x, 3, 1, 1), x)
    x = torch.where(at(torch.rand(n, device=device) < 0.1), F.avg_pool2d(x, 5, 1, 2), x)
    return (x + torch.randn_like(x) * at(rand(n, 0, 0.03, device))).clamp(0, 1)


def plain_frames(photos, pieces, pick):
    """Whole photos and masks as the program shows them to the network."""
    frames = F.interpolate(photos[pieces.photo[pick]].float(), (FRAME_HEIGHT, FRAME_WIDTH), mode="bilinear", antialias=True, align_corners=False)
    return frames / 255, F.interpolate(pieces.mask_of(pick), (MASK_HEIGHT, MASK_WIDTH), mode="area")


def disturbed_crops(photos, masks, box, mirror, side=SIDE):
    """Crops from nearer and farther, turned, stretched, in other light, now and then with something erased or another ground; mirrored where `mirror` is -1."""
    n, device = len(box), box.device
    at = lambda x: x.view(n, 1, 1, 1)
    grid = grids_of(
        box,
        wider=rand(n, 1.0, 1.75, device),
        degrees=rand(n, -8, 8, device),
        stretch=torch.exp(rand(n, -0.06, 0.06, device)),
        shift=torch.stack([rand(n, -0.1, 0.1, device), rand(n, -0.1, 0.1, device)], 1),
        mirror=mirror,
        side=side,
    )
    crops = sampled(photos, masks, grid)
    rgb, mask = crops[:, :3], crops[:, 3:]
    swapped = at(torch.rand(n, device=device) < 0.15)
    cloth = F.avg_pool2d(mask, 5, 1, 2)
    rgb = torch.where(swapped, rgb * cloth + rgb.roll(1, 0) * (1 - cloth), rgb)
    rgb = other_light(rgb)
    ys = torch.linspace(0, 1, side, device=device).view(1, 1, side, 1)
    xs = torch.linspace(0, 1, side, device=device).view(1, 1, 1, side)
    hole = ((ys - at(rand(n, 0, 1, device))).abs() < at(rand(n, 0.03, 0.15, device))) & ((xs - at(rand(n, 0, 1, device))).abs() < at(rand(n, 0.03, 0.15, device)))
    rgb = torch.where(hole & at(torch.rand(n, device=device) < 0.25), rgb.mean((2, 3), keepdim=True), rgb)
    return torch.cat([rgb, disturbed_mask(mask, 9)], 1)


def disturbed_frames(photos, masks, mirror):
    """Whole photos at the outline network's size, placed and lit a little otherwise, n x 3 x 384 x 256 of 0..1, the masks as the network takes them; mirrored where `mirror` is -1."""
    n, device = len(photos), photos.device
    scale = rand(n, 0.85, 1.2, device)
    theta = torch.zeros(n, 2, 3, device=device)
    theta[:, 0, 0], theta[:, 1, 1] = mirror / scale, 1 / scale
    theta[:, 0, 2], theta[:, 1, 2] = rand(n, -0.1, 0.1, device), rand(n, -0.1, 0.1, device)
    grid = F.affine_grid(theta, (n, 1, FRAME_HEIGHT, FRAME_WIDTH), align_corners=False)
    rgb = F.grid_sample(photos.float(), grid, padding_mode="border", align_corners=False) / 255
    mask = F.interpolate(F.grid_sample(masks, grid, padding_mode="zeros", align_corners=False), (MASK_HEIGHT, MASK_WIDTH), mode="area")
    return other_light(rgb), disturbed_mask(mask, 3)
