"""Pieces to learn from and to measure on: marked pixels of one slot, with the kinds they may be."""

import multiprocessing

import numpy as np
import torch
from scipy import ndimage

import beside  # noqa: F401
from outfits import HEIGHT, SLOTS, WIDTH

ACCESSORY = SLOTS.index("accessory")
FRAME = HEIGHT * WIDTH
# A piece of this share of the frame counts; smaller ones are only learnt from.
COUNTED = 0.01
LEAST = 0.001
# The box leaves out this share of a mask's pixels on each side: stray ones.
OUTSIDE = 0.006
# How a piece was marked: by its kind in the label map, by its whole slot there, by the outline network, by its kind but taken for another slot.
TRUE_KIND, TRUE_SLOT, OUTLINED, MISTAKEN = 0, 1, 2, 3
# What an outline network takes for what most often: a dress's skirt for a skirt, a shirt for a jacket. Some are made on purpose beside those that it makes.
# The part is from where to where of the box's height.
MISTAKES = [
    ("full", "bottom", "lower"), ("full", "top", "upper"), ("full", "bottom", "whole"), ("full", "outer", "whole"), ("top", "outer", "whole"),
    ("outer", "top", "whole"), ("outer", "full", "whole"), ("bottom", "full", "whole"), ("bottom", "legwear", "whole"), ("legwear", "bottom", "whole"),
    ("outer", "bottom", "lower"), ("top", "full", "whole"),
]  # fmt: skip


def box_of(mask):
    """left, top, right, bottom in pixels around a mask without its stray pixels; None where it is empty."""
    area = mask.sum()
    if area == 0:
        return None
    ends = []
    for axis in (0, 1):
        so_far = np.cumsum(mask.sum(axis))
        ends.append((int(np.argmax(so_far > OUTSIDE * area)), int(np.argmax(so_far >= (1 - OUTSIDE) * area)) + 1))
    (left, right), (top, bottom) = ends
    return left, top, right, bottom


def numbers_of(mask, box, classes):
    """Fifteen numbers: the box within the person's, its shape, areas, how full it is, and the share of each slot in the clothes."""
    person = classes > 0
    pl, pt, pr, pb = box_of(person) or (0, 0, classes.shape[1], classes.shape[0])
    left, top, right, bottom = box
    pw, ph = pr - pl, pb - pt
    area = float(mask.sum())
    areas = np.bincount(classes.reshape(-1), minlength=10)[1:8].astype(float)
    return np.array(
        [
            (left - pl) / pw, (top - pt) / ph, (right - pl) / pw, (bottom - pt) / ph,
            np.log((right - left) / (bottom - top)),
            np.sqrt(area / mask.size), np.sqrt(area / max(1.0, person.sum())),
            area / ((right - left) * (bottom - top)),
            *(areas / max(1.0, areas.sum())),
        ],
        np.float32,
    ).clip(-2, 3)


def outlined(path, count):
    """Classes N x HEIGHT x WIDTH uint8 of the outfits by a network that did not see them, as the outline's training writes them, smaller, to OUT-unseen.npz."""
    stored = np.load(path)["classes"]
    if len(stored) != count:
        raise ValueError(f"Expected the classes of {count} photos in {path}; found {len(stored)}.")
    rows = (np.arange(HEIGHT) + 0.5) * stored.shape[1] // HEIGHT
    columns = (np.arange(WIDTH) + 0.5) * stored.shape[2] // WIDTH
    return stored[:, rows.astype(int)][:, :, columns.astype(int)]


def parts_of(mask, slot):
    """One answer a slot; of accessories each connected region."""
    if slot != ACCESSORY:
        return [mask]
    regions, count = ndimage.label(mask)
    sizes = np.bincount(regions.reshape(-1))[1:]
    return [regions == i + 1 for i in np.argsort(-sizes, kind="stable")[:4] if sizes[i] >= LEAST * FRAME] if count else []


_rows = None


def _rows_of(photo):
    return _rows(photo)


class Pieces:
    """Rows: photo, slot, marked (0..2), mask as packed bits, box, numbers by the labels and by the outline, target a kind (sums to 1, or 0), tag-allowed kinds."""

    def __init__(self, outfits, outlines):
        self.kind_count = len(outfits.kinds)
        self.none = self.kind_count - 1
        self.by_archive = np.array([outfits.kinds.index(kind) if kind in outfits.kinds else -1 for kind, _ in outfits.archive_kinds])
        self.kinds, self.slot_of = outfits.kinds, np.array(outfits.slot_of)
        lookup = outfits.slot_lookup()
        labels = outfits.labels.numpy()
        labelled = len(labels)

        def rows(photo):
            if photo < labelled:
                return self._labelled(photo, labels[photo], lookup[labels[photo]], outlines[photo])
            return self._tagged(photo, outlines[photo], outfits.tags[photo])

        global _rows
        _rows = rows
        # Processes that are forked see the arrays without a copy.
        with multiprocessing.get_context("fork").Pool() as pool:
            found = [row for some in pool.map(_rows_of, range(len(outfits.names)), chunksize=8) for row in some]
        take = lambda name: [row[name] for row in found]
        self.photo, self.slot, self.marked = (torch.tensor(take(name)) for name in ("photo", "slot", "marked"))
        self.masks = torch.from_numpy(np.stack(take("mask")))
        self.box = torch.tensor(take("box"), dtype=torch.float32)
        self.numbers = torch.from_numpy(np.stack(take("numbers")))
        self.target = torch.from_numpy(np.stack(take("target")))
        self.allowed = torch.from_numpy(np.stack(take("allowed")))
        self.area = torch.tensor(take("area"))

    def to(self, device):
        for name in ("photo", "slot", "marked", "masks", "box", "numbers", "target", "allowed", "area"):
            setattr(self, name, getattr(self, name).to(device))
        return self

    def _row(self, photo, slot, marked, mask, classes, other, target=None, allowed=None):
        box = box_of(mask)
        return {
            "photo": photo, "slot": slot, "marked": marked, "mask": np.packbits(mask), "box": box, "area": float(mask.sum()) / FRAME,
            "numbers": np.stack([numbers_of(mask, box, classes), numbers_of(mask, box, other)]),
            "target": np.zeros(self.kind_count, np.float32) if target is None else target,
            "allowed": np.zeros(self.kind_count, bool) if allowed is None else allowed,
        }

    def _labelled(self, photo, label, classes, outline):
        out = []
        for slot in range(len(SLOTS)):
            kinds = [k for k in range(self.kind_count - 1) if self.slot_of[k] == slot]
            mine = np.where(classes == slot + 1, self.by_archive[label], -1)
            for kind in kinds:
                mask = mine == kind
                if mask.sum() < LEAST * FRAME:
                    continue
                out.append(self._row(photo, slot, TRUE_KIND, mask, classes, outline, self._shares([kind])))
                if mask.sum() >= COUNTED * FRAME:
                    out += self._mistaken(photo, slot, mask, classes, kind)
            whole = classes == slot + 1
            if slot != ACCESSORY and (mine >= 0).sum() >= LEAST * FRAME:
                out.append(self._row(photo, slot, TRUE_SLOT, whole, classes, outline, self._shares(mine[mine >= 0])))
            for part in parts_of(outline == slot + 1, slot):
                if part.sum() >= LEAST * FRAME:
                    out.append(self._row(photo, slot, OUTLINED, part, outline, outline, self._under(part, label, classes)))
        return out

    def _under(self, part, label, classes):
        """What lies under an outlined part: the kinds of its commonest slot; nothing where that is no cloth; None where nobody can tell."""
        slot = int(np.bincount(classes[part], minlength=10).argmax())
        if not 1 <= slot <= len(SLOTS):
            return self._shares([self.none])
        inside = self.by_archive[label[part & (classes == slot)]]
        told = inside[inside >= 0]
        return self._shares(told) if len(told) >= 0.5 * len(inside) else None

    def _mistaken(self, photo, slot, mask, classes, kind):
        out = []
        draw = np.random.default_rng(photo * 100 + kind)
        _, top, _, bottom = box_of(mask)
        for true, taken, part in MISTAKES:
            if true != SLOTS[slot] or draw.random() < 0.4:
                continue
            cut = int(top + (bottom - top) * draw.uniform(0.25, 0.6))
            some = mask.copy()
            if part == "lower":
                some[:cut] = False
            elif part == "upper":
                some[cut:] = False
            if some.sum() < COUNTED * FRAME:
                continue
            mistaken = SLOTS.index(taken)
            altered = classes.copy()
            altered[some] = mistaken + 1
            out.append(self._row(photo, mistaken, MISTAKEN, some, altered, altered, self._shares([kind])))
        return out

    def _tagged(self, photo, outline, tags):
        """Outlined pieces with the kinds that the tags allow: those of the slot, else of the slots it may be taken for; accessories only where one tag is there."""
        out = []
        of_slot = lambda slot: [k for k in range(self.kind_count - 1) if self.slot_of[k] == slot and self.kinds[k] in tags]
        for slot, name in enumerate(SLOTS):
            tagged = of_slot(slot)
            if name == "accessory":
                tagged = tagged if len(tagged) == 1 else []
            elif name == "shoes":
                tagged = [] if "shoes-any" in tags else tagged
            elif not tagged:
                tagged = [k for other in sorted({SLOTS.index(true) for true, taken, _ in MISTAKES if taken == name}) for k in of_slot(other)]
            allowed = np.zeros(self.kind_count, bool)
            allowed[tagged] = True
            for part in parts_of(outline == slot + 1, slot):
                if allowed.any() and part.sum() >= (LEAST if name in ("shoes", "accessory") else COUNTED / 2) * FRAME:
                    out.append(self._row(photo, slot, OUTLINED, part, outline, outline, None, allowed))
        return out

    def _shares(self, kinds):
        return np.bincount(np.asarray(kinds), minlength=self.kind_count).astype(np.float32) / len(kinds)

    def mask_of(self, pick):
        """Masks of some pieces, n x 1 x HEIGHT x WIDTH, 0 or 1."""
        bits = self.masks[pick]
        shifts = torch.arange(7, -1, -1, device=bits.device, dtype=torch.uint8)
        return ((bits[..., None] >> shifts) & 1).view(len(bits), 1, HEIGHT, WIDTH).float()
