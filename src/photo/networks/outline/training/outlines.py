"""Outlines of the single garments to train on: the program's own, looked through one by one.

    python outlines.py PHOTOS OUTLINES OUTLINES.tar

PHOTOS holds KIND/NAME.jpg as the archive does; OUTLINES what bench/parser/outlines.ts made of them. `outline_decisions.json` says what was seen:
"wrong" ones are left out, "ground" ones lose the colours that lie mostly outside the outline, "red" ones every strong red (a bed's sheet
between the sleeves; the number is the CIELAB chroma from which on). All mended ones were looked at again. Needs SciPy.
"""

import io
import json
import pathlib
import sys
import tarfile

import numpy as np
from PIL import Image, ImageFilter
from scipy import ndimage

DECISIONS = pathlib.Path(__file__).with_name("outline_decisions.json")
CLUSTERS = 12
# Lightness counts about half: folds and shadow keep a cloth's hue.
LIGHTNESS_WEIGHT = 0.55


def lab(rgb):
    """CIELAB (D65) of 8-bit sRGB."""
    c = rgb.astype(float) / 255
    c = np.where(c > 0.04045, ((c + 0.055) / 1.055) ** 2.4, c / 12.92)
    xyz = c @ np.array([[0.4124564, 0.3575761, 0.1804375], [0.2126729, 0.7151522, 0.0721750], [0.0193339, 0.1191920, 0.9503041]]).T
    f = xyz / np.array([0.95047, 1, 1.08883])
    f = np.where(f > 0.008856, np.cbrt(f), 7.787 * f + 16 / 116)
    return np.stack([116 * f[..., 1] - 16, 500 * (f[..., 0] - f[..., 1]), 200 * (f[..., 1] - f[..., 2])], -1)


def clusters(colours, rounds=12, sample=6000):
    """Index of the nearest of `CLUSTERS` means a colour; the draw is fixed."""
    rng = np.random.default_rng(0)
    some = colours[rng.choice(len(colours), min(len(colours), sample), replace=False)]
    means = some[rng.choice(len(some), CLUSTERS, replace=False)]
    for _ in range(rounds):
        nearest = ((some[:, None] - means) ** 2).sum(-1).argmin(1)
        means = np.stack([some[nearest == j].mean(0) if (nearest == j).any() else means[j] for j in range(CLUSTERS)])
    return ((colours[:, None] - means) ** 2).sum(-1).argmin(1)


def without_ground(rgb, mask):
    weighted = lab(rgb) * np.array([LIGHTNESS_WEIGHT, 1, 1])
    cluster = clusters(weighted.reshape(-1, 3)).reshape(mask.shape)
    outside = ~ndimage.binary_dilation(mask, iterations=2)
    ground = [j for j in range(CLUSTERS) if (outside & (cluster == j)).sum() > 0.9 * (mask & (cluster == j)).sum()]
    kept = ndimage.median_filter((mask & ~np.isin(cluster, ground)).astype("uint8"), 5) > 0
    return whole(ndimage.binary_opening(kept), least=0.12)


def without_red(rgb, mask, from_chroma):
    smooth = np.array(Image.fromarray(rgb).filter(ImageFilter.GaussianBlur(1)))
    _, a, b = np.moveaxis(lab(smooth), -1, 0)
    hue = np.degrees(np.arctan2(b, a))
    red = (np.hypot(a, b) > from_chroma) & (hue > -5) & (hue < 65)
    return whole(ndimage.binary_opening(mask & ~red, iterations=2), least=0.15)


def whole(mask, least):
    """The pieces of at least `least` of the largest one's size, their small gaps and holes closed."""
    pieces, count = ndimage.label(mask)
    sizes = ndimage.sum(mask, pieces, range(1, count + 1))
    kept = np.isin(pieces, [i + 1 for i in range(count) if sizes[i] > least * sizes.max()])
    kept = ndimage.binary_closing(kept, iterations=2) | kept
    holes, count = ndimage.label(ndimage.binary_fill_holes(kept) & ~kept)
    sizes = ndimage.sum(holes > 0, holes, range(1, count + 1))
    return kept | np.isin(holes, [i + 1 for i in range(count) if sizes[i] < 0.004 * mask.size])


def main():
    photos, outlines, out = sys.argv[1:]
    decisions = json.loads(DECISIONS.read_text())
    with tarfile.open(out, "w") as archive:
        for path in sorted(pathlib.Path(photos).rglob("*")):
            if path.suffix.lower() not in (".jpg", ".jpeg", ".png"):
                continue
            name = f"{path.parent.name}/{path.stem}"
            if name in decisions["wrong"]:
                continue
            rgb = np.array(Image.open(path).convert("RGB"))
            mask = np.array(Image.open(pathlib.Path(outlines, name.replace("/", "_") + ".png")).convert("L")) > 127
            if name in decisions["ground"]:
                mask = without_ground(rgb, mask)
            elif name in decisions["red"]:
                mask = without_red(rgb, mask, decisions["red"][name])
            data = io.BytesIO()
            Image.fromarray((mask * 255).astype("uint8")).save(data, "PNG")
            entry = tarfile.TarInfo(name.replace("/", "_") + ".png")
            entry.size = data.tell()
            data.seek(0)
            archive.addfile(entry, data)


if __name__ == "__main__":
    main()
