"""Pictures made of photos of single garments with their outlines."""

import torch
from torch.nn import functional as F

from augment import affine_grid, rand, warp
from photos import IGNORED


def without_edge(labels, radius=1):
    """Labels with a band around the outline ignored: a pixel more or less is nobody's fault."""
    cloth = (labels == 1).float()[:, None]
    side = 2 * radius + 1
    spread, shrunk = F.max_pool2d(cloth, side, 1, radius), -F.max_pool2d(-cloth, side, 1, radius)
    return torch.where((spread != shrunk)[:, 0], torch.full_like(labels, IGNORED), labels)


def singles_batch(photos, labels, kinds, weights, n):
    """Single garments as they are (a third), or turned, nearer and aside."""
    device, (height, width) = photos.device, photos.shape[2:]
    pick = torch.multinomial(weights, n, replacement=True)
    plain = torch.rand(n, device=device) < 0.34
    turn = torch.where(plain, 0.0, torch.where(torch.rand(n, device=device) < 0.15, 90.0, 12.0))
    scale = torch.where(plain, 1.0, rand(n, 0.8, 1.35, device))
    shift = torch.where(plain, 0.0, rand(n, -0.2, 0.2, device))
    grid = affine_grid(n, height, width, device, scale, turn, shift, shift.roll(1))
    image = F.grid_sample(photos[pick].float(), grid, padding_mode="border", align_corners=False)
    label = F.grid_sample(labels[pick][:, None].float() - IGNORED, grid, mode="nearest", padding_mode="zeros", align_corners=False)
    return image, label[:, 0].round().long() + IGNORED, kinds[pick]


def motifs(n, height, width, device):
    """Printed grounds: blots of three colours on a fourth, as on bedspreads and carpets; stripes and checks come from `Grounds`."""
    out = rand(n * 3, 30, 240, device).view(n, 3, 1, 1).expand(n, 3, height, width).clone()
    for _ in range(3):
        cells = int(torch.randint(8, 40, (1,)).item())
        noise = F.interpolate(torch.randn(n, 1, cells * 3 // 2, cells, device=device), (height, width), mode="bicubic", align_corners=False)
        blot = torch.sigmoid((noise - rand(n, 0.2, 1.0, device).view(n, 1, 1, 1)) * 12)
        colour = (out.mean((2, 3), keepdim=True) + torch.randn(n, 3, 1, 1, device=device) * 60).clamp(0, 255)
        out = out * (1 - blot) + colour * blot
    return out


def pasted_batch(photos, labels, weights, grounds, n):
    """A garment cut out along its outline, with a soft shadow, on a printed ground, one of nearly its own colour, a street or a texture."""
    device, (height, width) = photos.device, photos.shape[2:]
    pick = torch.multinomial(weights, n, replacement=True)
    grid = affine_grid(n, height, width, device, rand(n, 0.6, 1.05, device), 20, rand(n, -0.15, 0.15, device), rand(n, -0.15, 0.15, device))
    image, _, _ = warp(photos[pick].float(), labels[pick], grid)
    cloth = F.grid_sample((labels[pick] == 1).float()[:, None], grid, padding_mode="zeros", align_corners=False)
    alpha = ((cloth - 0.5) * 3 + 0.3).clamp(0, 1)
    own = (image * alpha).sum((2, 3), keepdim=True) / alpha.sum((2, 3), keepdim=True).clamp_min(1)
    own = own + torch.randn(n, 3, 1, 1, device=device) * 9 + torch.randn(n, 1, 1, 1, device=device) * 16
    rough = F.interpolate(torch.randn(n, 1, 36, 24, device=device), (height, width), mode="bilinear", align_corners=False)
    own = (own + rough * rand(n, 2, 12, device).view(n, 1, 1, 1)).clamp(0, 255)
    which = torch.rand(n, device=device).view(n, 1, 1, 1)
    ground = torch.where(which < 0.7, own, grounds.take(n, height, width))
    ground = torch.where(which < 0.4, motifs(n, height, width, device), ground)
    shadow = F.avg_pool2d(torch.roll(alpha, (4, 3), (2, 3)), 9, 1, 4) * rand(n, 0, 0.5, device).view(n, 1, 1, 1)
    return image * alpha + ground * (1 - shadow) * (1 - alpha), without_edge((cloth[:, 0] > 0.5).long())
