"""What tells the kind of a worn piece: a detector's layers on the crop around it, and on the whole photo for what is worn beside it."""

import torch
from torch import nn
from torch.nn import functional as F

import beside  # noqa: F401
from detector import STAGES, Detector

SLOT_COUNT, NUMBER_COUNT = 7, 15
LAYERS = 51
EIGHTH, SIXTEENTH, DEEP = STAGES[2:]
# The outline network's picture is looked at at this share of its size: 288 x 192 pixels; a piece's mask there has half of that.
FRAME_HEIGHT, FRAME_WIDTH, FRAME_SCALE = 384, 256, 0.75
MASK_HEIGHT, MASK_WIDTH = 144, 96


def mean_over(mask, values):
    """Mean of maps over soft masks, N x C; the maps one a mask, or one for all."""
    weight = mask.flatten(2)
    total = weight.sum(2).clamp_min(1e-4)
    # Products rather than a batched matrix product where each piece has its own map: the file only knows one photo's.
    if values.shape[0] == 1:
        return weight[:, 0] @ values.flatten(2)[0].T / total
    return torch.einsum("np,ncp->nc", weight[:, 0], values.flatten(2)) / total


class Kinds(nn.Module):
    """
    Scores from crops (N x 4 x side x side, red, green, blue and mask, 0..1), the outline network's picture (1 or N x 3 x 384 x 256, 0..1), masks there
    (N x 1 x 144 x 96), slots (N x 7) and numbers (N x 15): one a kind (without NONE), then one a slot that the piece may really be of, then one for NONE.
    """

    def __init__(self, detector_path, kind_count):
        super().__init__()
        self.trunk = Detector(detector_path, LAYERS, channels=4)
        eighth, sixteenth, deep = self.trunk.channels((EIGHTH, SIXTEENTH, DEEP))
        self.near = nn.LayerNorm(eighth + 3 * sixteenth + 2 * deep)
        self.around = nn.LayerNorm(sixteenth + 2 * deep)
        width = self.near.normalized_shape[0] + self.around.normalized_shape[0]
        self.hidden = nn.Sequential(
            nn.Dropout(0.2), nn.Linear(width + SLOT_COUNT + NUMBER_COUNT, 256), nn.Hardswish(), nn.Dropout(0.4), nn.Linear(256, 192), nn.Hardswish(), nn.Dropout(0.25)
        )
        self.scores = nn.Linear(192, kind_count - 1 + SLOT_COUNT + 1)

    def of_crops(self, crops):
        eighth, sixteenth, deep = (one.float() for one in self.trunk.maps(crops, (EIGHTH, SIXTEENTH, DEEP)))
        mask8 = F.avg_pool2d(crops[:, 3:], 8)
        mask16 = F.avg_pool2d(mask8, 2)
        mask32 = F.avg_pool2d(mask16, 2)
        own = lambda mask, x: (mask * x).sum((2, 3)) / mask.sum((2, 3)).clamp_min(1e-4)
        parts = [own(mask8, eighth), own(mask16, sixteenth), sixteenth.mean((2, 3)), sixteenth.amax((2, 3)), own(mask32, deep), deep.mean((2, 3))]
        return self.near(torch.cat(parts, 1))

    def of_frame(self, frame, masks):
        small = F.interpolate(frame, scale_factor=FRAME_SCALE, mode="bilinear", align_corners=False)
        # Nothing is marked in the frame itself: half, which the first layer hears as nothing.
        blank = torch.full_like(small[:, :1], 0.5)
        sixteenth, deep = (one.float() for one in self.trunk.maps(torch.cat([small, blank], 1), (SIXTEENTH, DEEP)))
        mask16 = F.avg_pool2d(masks, 8)
        parts = [mean_over(mask16, sixteenth), mean_over(F.avg_pool2d(mask16, 2), deep), deep.mean((2, 3)) + 0 * masks[:, :1, 0, 0]]
        return self.around(torch.cat(parts, 1))

    def forward(self, crops, frame, masks, slots, numbers):
        return self.scores(self.hidden(torch.cat([self.of_crops(crops), self.of_frame(frame, masks), slots, numbers], 1)))


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
