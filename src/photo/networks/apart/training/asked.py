"""What the network is asked to say of a picture whose garments are known, and how wrong its answer is."""

import torch
from torch.nn import functional as F

from apart_network import CELL, WAY

# A garment of which less is seen (cells) has no middle of its own.
LEAST_SEEN = 24
# How wide the hill around a middle is, in cells.
HILL = 2.0
# The hills are few: they weigh so much more.
HILL_WEIGHT = 12.0


def cells_of(ids):
    """N x h x w: the garment that the middle of each cell shows."""
    return ids[:, CELL // 2 :: CELL, CELL // 2 :: CELL]


def asked_of(ids, most):
    """Of N x H x W garments: hills around their middles, N x h x w; ways to them, N x 2 x h x w; how much each cell's way counts, N x h x w."""
    cells = cells_of(ids)
    n, h, w = cells.shape
    device = cells.device
    down, across = torch.meshgrid(torch.arange(h, device=device).float(), torch.arange(w, device=device).float(), indexing="ij")
    hills, ways, counts = torch.zeros(n, h, w, device=device), torch.zeros(n, 2, h, w, device=device), torch.zeros(n, h, w, device=device)
    for one in range(1, most + 1):
        mine = (cells == one).float()
        area = mine.flatten(1).sum(1)
        seen = (area >= LEAST_SEEN).float().view(n, 1, 1)
        middle_x, middle_y = ((mine * along).flatten(1).sum(1) / area.clamp_min(1) for along in (across, down))
        far_x, far_y = middle_x.view(n, 1, 1) - across, middle_y.view(n, 1, 1) - down
        hills = torch.maximum(hills, torch.exp(-(far_x**2 + far_y**2) / (2 * HILL**2)) * seen)
        ways += torch.stack([far_x, far_y], 1) / WAY * (mine * seen)[:, None]
        # Small garments count as much as a quarter of their root size would have them.
        counts += mine * seen / area.clamp_min(1).sqrt().view(n, 1, 1)
    return hills, ways, counts


def wrong(told, hills, ways, counts):
    told = told.float()
    middle = F.binary_cross_entropy_with_logits(told[:, 0], hills, weight=1 + HILL_WEIGHT * hills)
    far = F.smooth_l1_loss(told[:, 1:], ways, beta=0.1, reduction="none").sum(1)
    return 8 * middle + (far * counts).sum() / counts.sum().clamp_min(1e-6)
