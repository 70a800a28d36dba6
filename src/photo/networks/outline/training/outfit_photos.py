"""Street outfits at the network's size: labelled ones, and tagged ones with the slots that they may show."""

import torch
from torch.nn import functional as F

import beside  # noqa: F401
from by_tags import slots_worn
from outfits import Outfits
from photos import HEIGHT, WIDTH

# The k-th teacher learns from no labelled photo of fold k.
FOLDS = 3


def small(photos):
    parts = [F.interpolate(part.float(), (HEIGHT, WIDTH), mode="bilinear", antialias=True, align_corners=False).round().clamp(0, 255) for part in photos.split(64)]
    return torch.cat([part.to(torch.uint8) for part in parts])


class OutfitPhotos:
    """`all`: every photo in the archive's order; of these `train`, `val` with labels and `tagged`, `tagged_val` with `worn` (how far each slot may be there)."""

    def __init__(self, path, few, device):
        outfits = Outfits(path, few)
        self.all = small(outfits.photos.to(device))
        labels = torch.from_numpy(outfits.slot_lookup())[outfits.labels.long()][:, None].float()
        labels = F.interpolate(labels, (HEIGHT, WIDTH), mode="nearest")[:, 0].to(torch.uint8).to(device)
        part = lambda span: slice(span.start, span.stop)
        self.train, self.train_labels = self.all[part(outfits.train)], labels[part(outfits.train)]
        self.val, self.val_labels = self.all[part(outfits.val)], labels[part(outfits.val)]
        slot_of_kind = dict(outfits.archive_kinds)
        worn = lambda span: torch.stack([slots_worn(outfits.tags[at], slot_of_kind) for at in span]).to(device)
        self.tagged, self.worn = self.all[part(outfits.tag_train)], worn(outfits.tag_train)
        self.tagged_val, self.worn_val = self.all[part(outfits.tag_val)], worn(outfits.tag_val)
        self.fold = torch.arange(len(self.train), device=device) % FOLDS
