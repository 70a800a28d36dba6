"""Colours of cloth and lamps as linear sRGB (Rec. 709 primaries, D65), which is what Blender's base colour means."""

import csv
import math
from functools import lru_cache
from pathlib import Path

import numpy as np

WHITE_XYZ = np.array([0.3127 / 0.329, 1.0, (1 - 0.3127 - 0.329) / 0.329])
"""D65 from its chromaticity x 0.3127, y 0.3290, as sRGB (IEC 61966-2-1) states it."""

SRGB_FROM_XYZ = np.linalg.inv(np.array([[0.4124564, 0.3575761, 0.1804375], [0.2126729, 0.7151522, 0.0721750], [0.0193339, 0.1191920, 0.9503041]]))
EPSILON, KAPPA = 216 / 24389, 24389 / 27  # ISO/CIE 11664-4

OBSERVER = Path(__file__).resolve().parents[2] / "fixtures" / "reference" / "cie1931-cmf.csv"


def linear_from_lab(lab):
    """Linear sRGB of a CIELAB (D65, 2 degrees) colour; outside 0..1 where sRGB cannot show it."""
    L, a, b = lab
    fy = (L + 16) / 116
    f = np.array([fy + a / 500, fy, fy - b / 200])
    relative = np.where(f**3 > EPSILON, f**3, (116 * f - 16) / KAPPA)
    return SRGB_FROM_XYZ @ (relative * WHITE_XYZ)


def lab_from_linear(rgb):
    """CIELAB (D65, 2 degrees) of a linear sRGB colour."""
    relative = np.linalg.solve(SRGB_FROM_XYZ, np.asarray(rgb, dtype=float)) / WHITE_XYZ
    f = np.where(relative > EPSILON, np.cbrt(relative), (KAPPA * relative + 16) / 116)
    return [116 * f[1] - 16, 500 * (f[0] - f[1]), 200 * (f[1] - f[2])]


@lru_cache(maxsize=None)
def lamp_colour(kelvin):
    """Linear sRGB of a black body (Planck's law over the CIE 1931 observer), luminance 1; 6500 stands for D65: 1, 1, 1."""
    if kelvin == 6500:
        return (1.0, 1.0, 1.0)
    with open(OBSERVER, newline="") as file:
        rows = [list(map(float, row)) for row in list(csv.reader(file))[2:]]
    xyz = np.zeros(3)
    for nm, *observer in rows:
        power = nm**-5 / (math.exp(1.438777e7 / (nm * kelvin)) - 1)
        xyz += power * np.array(observer)
    rgb = np.maximum(SRGB_FROM_XYZ @ (xyz / xyz[1]), 0.01)
    return tuple(float(v) for v in rgb)


def encoded(linear):
    """sRGB-encoded values of linear ones in 0..1 (IEC 61966-2-1)."""
    return np.where(linear <= 0.0031308, 12.92 * linear, 1.055 * np.power(np.maximum(linear, 0.0031308), 1 / 2.4) - 0.055)
