"""Labels for the real single garments, made by a network and kept only where it is sure."""

import torch
from torch.nn import functional as F

from augment import normalised
from losses import clothes_probability

SURE_CLOTHES, SURE_NOT = 0.7, 0.3


@torch.no_grad()
def clothes_maps(network, photos, batch=64):
    """Probability of clothes a pixel, averaged over the photo, its mirror image and a smaller copy."""
    maps = []
    for part in photos.split(batch):
        height, width = part.shape[2:]
        image = normalised(part)
        with torch.autocast(image.device.type, torch.bfloat16, enabled=image.is_cuda):
            small = F.interpolate(image, scale_factor=0.75, mode="bilinear", align_corners=False)
            small = F.pad(small, ((width - small.shape[3]) // 2,) * 2 + ((height - small.shape[2]) // 2,) * 2, mode="replicate")
            straight = clothes_probability(network(image)[0])
            mirrored = clothes_probability(network(image.flip(3))[0]).flip(2)
            shrunk = clothes_probability(network(small)[0])
        full = lambda x: F.interpolate(x[:, None], (height, width), mode="bilinear", align_corners=False)[:, 0]
        h, w = round(height * 0.75), round(width * 0.75)
        top, left = (height - h) // 2, (width - w) // 2
        inner = full(shrunk)[:, None, top : top + h, left : left + w]
        inner = F.interpolate(inner, (height, width), mode="bilinear", align_corners=False)[:, 0]
        maps.append((full(straight) + full(mirrored) + inner) / 3)
    return torch.cat(maps)


@torch.no_grad()
def sharpened(maps, photos, bins=12):
    """Joins the map with a colour model of each photo: colours that lie mostly in the sure garment count for it, and the other way round."""
    n = photos.shape[0]
    out = maps.clone()
    cells = (photos.long() * bins // 256).clamp(0, bins - 1)
    index = (cells[:, 0] * bins + cells[:, 1]) * bins + cells[:, 2]
    for i in range(n):
        at = index[i].flatten()
        prob = maps[i].flatten()
        inside = torch.bincount(at, (prob > SURE_CLOTHES).float(), minlength=bins**3)
        outside = torch.bincount(at, (prob < SURE_NOT).float(), minlength=bins**3)
        inside, outside = inside / inside.sum().clamp_min(1), outside / outside.sum().clamp_min(1)
        odds = ((inside + 1e-5) / (inside + outside + 2e-5))[at].view_as(maps[i])
        out[i] = 0.75 * maps[i] + 0.25 * F.avg_pool2d(odds[None, None], 5, 1, 2)[0, 0]
    return out


@torch.no_grad()
def self_labels(network, photos, inside):
    """(labels N x H x W: 0 not, 1 clothes, 2 ignored; which photos are kept)."""
    maps = sharpened(clothes_maps(network, photos), photos)
    labels = torch.full_like(inside, 2)
    labels[maps > SURE_CLOTHES] = 1
    labels[maps < SURE_NOT] = 0
    labels[inside == 0] = 2
    clothes = (labels == 1).float()
    area = clothes.flatten(1).sum(1) / inside.flatten(1).sum(1).clamp_min(1)
    edge = torch.cat([clothes[:, :3].flatten(1), clothes[:, -3:].flatten(1), clothes[:, :, :3].flatten(1), clothes[:, :, -3:].flatten(1)], 1).mean(1)
    unsure = ((labels == 2) & (inside == 1)).float().flatten(1).sum(1) / inside.flatten(1).sum(1).clamp_min(1)
    return labels, (area > 0.04) & (area < 0.85) & (edge < 0.25) & (unsure < 0.3)
