"""The same cloths seen otherwise, many at once: turned, mirrored, nearer or farther, in part, in other light, through another camera."""

import math

import torch
from torch.nn import functional as F


def seen_otherwise(cloths, some):
    """
    N x 4 x S x S, 0..1 (fourth: cloth), to as many other views; `some` is a torch.Generator on the same device.
    Outside the cloth the view holds the cloth's mean colour.
    """
    n, side, device = len(cloths), cloths.shape[-1], cloths.device

    def uniform(low, high, *shape):
        return low + (high - low) * torch.rand(n, *shape, generator=some, device=device)

    def normal(spread, *shape):
        return spread * torch.randn(n, *shape, generator=some, device=device)

    def sometimes(share):
        return uniform(0, 1) < share

    # Placed anew: quarter turns and mirror images keep the pixels, the rest draws them again.
    again = sometimes(0.75)
    turn = torch.where(sometimes(0.3), torch.randint(1, 4, (n,), generator=some, device=device).float(), 0) * (math.pi / 2)
    turn = turn + torch.where(again & sometimes(0.5), uniform(-0.17, 0.17), 0)
    zoom = torch.where(again, torch.exp(uniform(math.log(0.62), math.log(1.15))), 1)
    narrow = torch.where(again, torch.exp(uniform(-0.07, 0.07)), 1)
    mirror = torch.where(sometimes(0.5), -1.0, 1.0)
    cos, sin = turn.cos(), turn.sin()
    place = torch.stack([mirror * cos / zoom / narrow, -sin / zoom, torch.zeros_like(cos), mirror * sin / zoom / narrow, cos / zoom, torch.zeros_like(cos)], 1)
    grid = F.affine_grid(place.view(n, 2, 3), cloths.shape, align_corners=False)
    rgb = F.grid_sample(cloths[:, :3], grid, padding_mode="border", align_corners=False)
    cloth = (F.grid_sample(cloths[:, 3:], grid, align_corners=False) > 0.97).float()

    # In part: what lies in a box, where that leaves enough of the cloth.
    axis = torch.linspace(0, 1, side, device=device)
    low, size = uniform(0.1, 0.45, 2), uniform(0.35, 0.6, 2)
    across, down = ((axis > low[:, k : k + 1]) & (axis < (low + size)[:, k : k + 1]) for k in (0, 1))
    part = cloth * (across[:, None, None, :] & down[:, None, :, None])
    area = cloth.sum((1, 2, 3))
    enough = (part.sum((1, 2, 3)) > 0.4 * area) & (area > 8000) & sometimes(0.4)
    cloth = torch.where(enough[:, None, None, None], part, cloth)

    rgb = _softened(rgb, torch.where(sometimes(0.35), uniform(0, 0.2), 0))
    rgb = rgb.clamp(1e-4, 1) ** torch.exp(normal(0.18))[:, None, None, None]
    rgb = rgb * torch.exp(normal(0.07, 3) + normal(0.12, 1))[:, :, None, None]
    grey = rgb.mean(1, keepdim=True)
    rgb = grey + (rgb - grey) * uniform(0.6, 1.3)[:, None, None, None]
    order = torch.where(sometimes(0.15)[:, None], torch.rand(n, 3, generator=some, device=device), axis.new_tensor([0.0, 1.0, 2.0])).argsort(1)
    rgb = rgb.gather(1, order[:, :, None, None].expand_as(rgb))
    rgb = rgb + normal(1, 3, side, side) * (uniform(0, 1) ** 2 * 0.02)[:, None, None, None]
    rgb = _stored(rgb.clamp(0, 1), torch.where(sometimes(0.4), uniform(0.004, 0.03), 0))
    mean = (rgb * cloth).sum((2, 3), keepdim=True) / (cloth.sum((2, 3), keepdim=True) + 1e-6)
    return torch.cat([torch.where(cloth > 0, rgb.clamp(0, 1), mean), cloth], 1)


def _softened(rgb, beside):
    """Each pixel mixed with its four neighbours, by `beside` each."""
    n, _, h, w = rgb.shape
    wide = F.pad(rgb, (1, 1, 1, 1), mode="replicate")
    around = wide[:, :, :-2, 1:-1] + wide[:, :, 2:, 1:-1] + wide[:, :, 1:-1, :-2] + wide[:, :, 1:-1, 2:]
    beside = beside[:, None, None, None]
    return (1 - 4 * beside) * rgb + beside * around


def _stored(rgb, step):
    """As after JPEG: the cosine amplitudes of 8 x 8 pixels in steps of about `step` and more for the finer ones; 0 leaves the picture."""
    k = torch.arange(8, device=rgb.device, dtype=torch.float32)
    waves = torch.cos((2 * k[None] + 1) * k[:, None] * math.pi / 16) / 2
    waves[0] /= math.sqrt(2)
    n, c, h, w = rgb.shape
    blocks = rgb.view(n, c, h // 8, 8, w // 8, 8).permute(0, 1, 2, 4, 3, 5)
    amplitudes = waves @ blocks @ waves.T
    steps = (step[:, None, None, None, None, None] * (1 + k[:, None] + k[None])).clamp_min(1e-6)
    amplitudes = (amplitudes / steps).round() * steps
    return (waves.T @ amplitudes @ waves).permute(0, 1, 2, 4, 3, 5).reshape(n, c, h, w)
