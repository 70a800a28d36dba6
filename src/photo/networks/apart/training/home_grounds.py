"""The beds, floors and walls around garments, each drawn out to a whole picture."""

import torch

import beside  # noqa: F401
from augment import Grounds

# How much of the picture's side a strip is, and how much of it must be ground.
PARTS, CLEAN = 5, 0.985
# Rows above and below that the photo's outermost pixels fill in most pictures.
DRAWN_OUT = 32


def _drawn_out(strips, along):
    """Strips and their mirror images in turn, as long as the whole picture along that side."""
    return torch.cat([strips if at % 2 == 0 else strips.flip(along) for at in range(PARTS + 1)], along)


class HomeGrounds(Grounds):
    """As `Grounds`, with the strips beside, above and below garments that show nothing of them (labels 1 = garment, 0 = ground)."""

    def __init__(self, photos, labels):
        rows = photos.shape[2] - 2 * DRAWN_OUT
        photos, labels, found = photos.narrow(2, DRAWN_OUT, rows), labels.narrow(1, DRAWN_OUT, rows), []
        for along, whole in ((3, photos.shape[3]), (2, photos.shape[2])):
            size = whole // PARTS
            for start in (0, whole - size):
                clean = (labels.narrow(along - 1, start, size) == 0).flatten(1).float().mean(1) > CLEAN
                found.append(_drawn_out(photos[clean].narrow(along, start, size), along).narrow(along, 0, whole))
        self.strips = torch.cat(found)
