"""Several garments side by side on one ground, as on a bed or in a collage of cut-outs."""

import math

import torch
from torch.nn import functional as F

from augment import affine_grid, rand, warp
from singles import motifs, without_edge

# Where garments may lie: middles of the cells of some lay-outs, shares of the half picture (x, y), and the size of a cell.
LAYOUTS = [
    ([(-0.5, 0.0), (0.5, 0.0)], 0.5),
    ([(0.0, -0.5), (0.0, 0.5)], 0.55),
    ([(-0.5, -0.45), (0.5, -0.45), (0.0, 0.5)], 0.47),
    ([(-0.5, -0.5), (0.5, -0.5), (-0.5, 0.5), (0.5, 0.5)], 0.47),
    ([(-0.5, -0.6), (0.5, -0.6), (-0.5, 0.1), (0.5, 0.1), (0.0, 0.65)], 0.38),
]


def laid_out_batch(photos, labels, kept, grounds, n):
    """n pictures of 2 to 5 garments cut out by their labels, and where cloth is (1), is not (0), is open (2)."""
    device, (height, width) = photos.device, photos.shape[2:]
    ground = torch.where((torch.rand(n, device=device) < 0.3).view(n, 1, 1, 1), motifs(n, height, width, device), grounds.take(n, height, width))
    # A third lies on one light colour, as in a shop's picture.
    plain = rand(n, 190, 255, device).view(n, 1, 1, 1) + torch.randn(n, 3, 1, 1, device=device) * 5
    image = torch.where((torch.rand(n, device=device) < 0.33).view(n, 1, 1, 1), plain.expand_as(ground).clamp(0, 255), ground)
    label = torch.zeros(n, height, width, dtype=torch.long, device=device)
    layout = torch.randint(len(LAYOUTS), (n,)).tolist()
    for place in range(max(len(cells) for cells, _ in LAYOUTS)):
        rows = [at for at, one in enumerate(layout) if place < len(LAYOUTS[one][0])]
        if not rows:
            continue
        at = torch.tensor(rows, device=device)
        cells = torch.tensor([LAYOUTS[layout[row]][0][place] for row in rows], device=device)
        sizes = torch.tensor([LAYOUTS[layout[row]][1] for row in rows], device=device)
        pick = torch.multinomial(kept.float(), len(rows), replacement=True)
        scale = sizes * torch.exp(rand(len(rows), math.log(0.8), math.log(1.12), device))
        x, y = cells[:, 0] + rand(len(rows), -0.08, 0.08, device), cells[:, 1] + rand(len(rows), -0.08, 0.08, device)
        grid = affine_grid(len(rows), height, width, device, scale, 15, x, y)
        moved, _, _ = warp(photos[pick].float(), labels[pick], grid)
        cloth = F.grid_sample((labels[pick] == 1).float()[:, None], grid, padding_mode="zeros", align_corners=False)
        alpha = ((cloth - 0.5) * 3 + 0.3).clamp(0, 1)
        shadow = F.avg_pool2d(torch.roll(alpha, (3, 2), (2, 3)), 7, 1, 3) * rand(len(rows), 0, 0.45, device).view(-1, 1, 1, 1)
        image[at] = moved * alpha + image[at] * (1 - shadow) * (1 - alpha)
        label[at] = torch.where(cloth[:, 0] > 0.5, torch.ones_like(label[at]), label[at])
    return image, without_edge(label)
