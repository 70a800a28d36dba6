"""Pictures of garments that lie apart, touch or cover each other, as on a bed, with the garment that each pixel belongs to."""

import math

import torch
from torch.nn import functional as F

import beside  # noqa: F401
from augment import affine_grid, rand, soft, warp
from singles import motifs

MOST = 5
# How the garments of a picture may lie: middles of places (x, y, in halves of the picture) and the size of a place; the last two are a top over trousers or a skirt, with shoes or without.
LAYOUTS = [
    ([(-0.45, 0.0), (0.45, 0.0)], 0.55),
    ([(0.0, -0.45), (0.0, 0.45)], 0.62),
    ([(-0.45, -0.42), (0.45, -0.42), (0.0, 0.45)], 0.55),
    ([(-0.45, -0.45), (0.45, -0.45), (-0.45, 0.45), (0.45, 0.45)], 0.52),
    ([(-0.48, -0.58), (0.48, -0.58), (-0.48, 0.08), (0.48, 0.08), (0.0, 0.62)], 0.44),
    ([(-0.6, 0.0), (0.0, 0.0), (0.6, 0.0)], 0.45),
    ([(0.0, 0.4), (0.0, -0.38)], 0.6),
    ([(0.0, 0.25), (0.0, -0.42), (0.45, 0.75)], 0.5),
]
# How far places move (halves of the picture) and how much larger garments are: apart, touching, one over the other, in a heap.
LOOSE = [(0.06, 0.85), (0.1, 1.1), (0.16, 1.3), (0.4, 1.15)]
# Shares of a batch: one garment as photographed, one cut out, several.
AS_IT_IS, ALONE = 0.24, 0.08


def _grounds(garments, grounds, n, height, width):
    device = garments.photos.device
    plain = rand(n, 150, 255, device).view(n, 1, 1, 1) + torch.randn(n, 3, 1, 1, device=device) * 6
    which = torch.rand(n, device=device).view(n, 1, 1, 1)
    ground = torch.where(which < 0.2, motifs(n, height, width, device), grounds.take(n, height, width))
    return torch.where(which > 0.8, plain.expand_as(ground).clamp(0, 255), ground)


def _like_in_colour(moved, alpha, wanted):
    """Cloth brought to about another mean colour, its shading kept."""
    mean = (moved * alpha).sum((2, 3), keepdim=True) / alpha.sum((2, 3), keepdim=True).clamp_min(1)
    return (moved * ((wanted + 8) / (mean + 8)).clamp(0.25, 4)).clamp(0, 255)


def _mirrored(grid):
    """Half of what is sampled comes mirrored, in its place."""
    grid[torch.rand(len(grid), device=grid.device) < 0.5, ..., 0] *= -1
    return grid


def _laid(garments, grounds, n):
    """n pictures of 1 to MOST garments, and N x H x W which garment each pixel shows, 0 none."""
    photos, labels = garments.photos, garments.labels
    device, (height, width) = photos.device, photos.shape[2:]
    image = _grounds(garments, grounds, n, height, width)
    ids = torch.zeros(n, height, width, dtype=torch.long, device=device)
    layout = torch.randint(len(LAYOUTS), (n,)).tolist()
    loose = torch.tensor([LOOSE[at] for at in torch.multinomial(torch.tensor([0.2, 0.3, 0.3, 0.2]), n, replacement=True).tolist()], device=device)
    count = [len(LAYOUTS[one][0]) for one in layout]
    alone = round(n * ALONE / (1 - AS_IT_IS))
    count[:alone] = [1] * alone
    # In a third all are of about one colour.
    shared = torch.rand(n, device=device) < 0.35
    colour = rand(n * 3, 15, 225, device).view(n, 3)
    colour = colour.mean(1, keepdim=True) + (colour - colour.mean(1, keepdim=True)) * rand(n, 0, 1, device).view(n, 1)
    for place in range(MOST):
        rows = [at for at in range(n) if place < count[at]]
        if not rows:
            break
        at, m = torch.tensor(rows, device=device), len(rows)
        cells = torch.tensor([(0.0, 0.0) if count[row] == 1 else LAYOUTS[layout[row]][0][place] for row in rows], device=device)
        sizes = torch.tensor([0.7 if count[row] == 1 else LAYOUTS[layout[row]][1] for row in rows], device=device)
        pick = torch.multinomial(garments.weights * garments.outlined, m, replacement=True)
        apart = loose[at, 0]
        x, y = (cells[:, k] + apart * rand(m, -1, 1, device) for k in (0, 1))
        scale = sizes * loose[at, 1] * torch.exp(rand(m, math.log(0.78), math.log(1.15), device))
        turn = torch.where(torch.rand(m, device=device) < 0.12, 180.0, 22.0)
        grid = _mirrored(affine_grid(m, height, width, device, scale, turn, x, y, flip=False))
        moved, _, _ = warp(photos[pick].float(), labels[pick], grid)
        cloth = F.grid_sample((labels[pick] == 1).float()[:, None], grid, padding_mode="zeros", align_corners=False)
        alpha = ((cloth - 0.5) * 3 + 0.4).clamp(0, 1)
        wanted = (colour[at] + torch.randn(m, 3, device=device) * 9).clamp(5, 250).view(m, 3, 1, 1)
        moved = torch.where(shared[at].view(m, 1, 1, 1), _like_in_colour(moved, alpha, wanted), moved)
        shadow = F.avg_pool2d(torch.roll(alpha, (3, 2), (2, 3)), 7, 1, 3) * rand(m, 0, 0.5, device).view(-1, 1, 1, 1)
        image[at] = moved * alpha + image[at] * (1 - shadow) * (1 - alpha)
        ids[at] = torch.where(cloth[:, 0] > 0.5, place + 1, ids[at])
    return image, ids


def _lying(image, ids):
    """Photos taken across: turned by a quarter, fitted in, the outermost pixels drawn out around them, as the program does."""
    height, width = ids.shape[1:]
    low = round(width * width / height)
    turned = F.interpolate(image.transpose(2, 3).flip(3), (low, width), mode="bilinear", antialias=True, align_corners=False)
    marks = F.interpolate(ids.transpose(1, 2).flip(2)[:, None].float(), (low, width), mode="nearest")
    above = (height - low) // 2
    margin = (0, 0, above, height - low - above)
    return F.pad(turned, margin, mode="replicate"), F.pad(marks, margin)[:, 0].long()


def heaps_batch(garments, grounds, n):
    """n pictures, 0..255, and N x H x W which garment each pixel shows: 0 none, 1 and up."""
    device = garments.photos.device
    plain = round(n * AS_IT_IS)
    image, ids = _laid(garments, grounds, n - plain)
    pick = torch.multinomial(garments.weights * garments.outlined, plain, replacement=True)
    height, width = image.shape[2:]
    grid = affine_grid(plain, height, width, device, rand(plain, 0.9, 1.3, device), 12, rand(plain, -0.15, 0.15, device), rand(plain, -0.15, 0.15, device))
    one = F.grid_sample(garments.photos[pick].float(), grid, padding_mode="border", align_corners=False)
    cloth = F.grid_sample((garments.labels[pick] == 1).float()[:, None], grid, padding_mode="zeros", align_corners=False)
    image, ids = torch.cat([image, one]), torch.cat([ids, (cloth[:, 0] > 0.5).long()])
    lying = torch.rand(n, device=device) < 0.25
    if lying.any():
        image[lying], ids[lying] = _lying(image[lying], ids[lying])
    return image, ids


def marked(ids):
    """N x 1 x H x W marks of cloth as an outline gives them: a little too wide or too narrow, softly uneven."""
    n, (height, width) = len(ids), ids.shape[1:]
    device = ids.device
    cloth = soft((ids > 0).float()[:, None], 3)
    uneven = F.interpolate(torch.randn(n, 1, 24, 16, device=device), (height, width), mode="bilinear", align_corners=False) * 0.12
    return (cloth + uneven + torch.randn(n, 1, 1, 1, device=device) * 0.1 > 0.5).float()
