"""Photos of single garments of both archives, by kind and with the outlines that the program drew of them."""

import io
import json
import pathlib
import types

import numpy as np
import torch
from PIL import Image

from garment_archives import GARMENT_KINDS, first_archive, second_archive
from photos import fitted, members, photo_of

# An outline that covers less or more of the picture than this is of something else.
LEAST_AREA, LARGEST_AREA = 0.04, 0.85


class Garments:
    """
    To learn from: `photos`, `labels` (1 = clothes, 0 = not, 2 = nobody knows), `kinds`, `weights` (how often each is drawn), `outlined` (which have an
    outline to trust). For figures: `kept_photos`, `kept_labels`, `kept_kinds`, those of the first archive before those of the second (from `first_new` on).
    """

    def __init__(self, first, second, outlines, decisions, few, device):
        old, new = first_archive(first), second_archive(second)
        drawn = {pathlib.PurePath(name).stem: data for name, data in members(outlines).items()}
        wrong = {name.replace("/", "_") for name in json.loads(pathlib.Path(decisions).read_text())["wrong"]}
        drawn = {name: data for name, data in drawn.items() if name not in wrong}
        self.photos, self.labels, self.kinds = self._loaded(old["train"][:few] + new["train"][:few], drawn, device)
        self.kept_photos, self.kept_labels, self.kept_kinds = self._loaded(old["kept"][:few] + new["kept"][:few], drawn, device)
        self.first_new = len(old["kept"][:few])
        # Half way from photo by photo to kind by kind.
        self.weights = (1 / torch.bincount(self.kinds, minlength=len(GARMENT_KINDS)).clamp_min(1).float().sqrt())[self.kinds]
        self.outlined = self._are_outlined(self.labels)

    def kept(self):
        """The kept-out ones in the place of those to learn from, each drawn as often."""
        weights = torch.ones(len(self.kept_photos), device=self.kept_photos.device)
        return types.SimpleNamespace(photos=self.kept_photos, labels=self.kept_labels, weights=weights, outlined=self._are_outlined(self.kept_labels))

    @staticmethod
    def _are_outlined(labels):
        area = (labels == 1).flatten(1).float().mean(1)
        return (area > LEAST_AREA) & (area < LARGEST_AREA)

    @staticmethod
    def _loaded(items, drawn, device):
        rows = [fitted(photo_of(data), Image.open(io.BytesIO(drawn[name])).convert("L") if name in drawn else None) for name, data, _ in items]
        photos = torch.from_numpy(np.stack([image for image, _ in rows])).permute(0, 3, 1, 2).contiguous()
        return photos.to(device), torch.from_numpy(np.stack([label for _, label in rows])).to(device), torch.tensor([kind for *_, kind in items], device=device)
