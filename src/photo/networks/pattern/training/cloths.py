"""Cut-out cloths (bench/pattern/cut-out.ts) as the network takes them, and other plain cloth laid over them."""

import csv
import os

import numpy as np
from PIL import Image
from scipy import ndimage

from drawn_cloth import _across, _smooth, badge

CANVAS = 256
PATTERNS = ["plain", "striped", "checked", "printed", "mottled"]


def table(path):
    with open(path) as file:
        return [(name, pattern, also.split()) for name, pattern, also in list(csv.reader(file))[2:]]


def cut_out(folder, file):
    """H x W x 4 bytes, nothing but 0 outside the cloth, cut to the cloth's bounds."""
    cloth = np.array(Image.open(os.path.join(folder, os.path.splitext(file)[0] + ".png")).convert("RGBA"))
    return bounded(cloth * (cloth[..., 3:] > 0))


def bounded(cloth):
    rows, columns = np.where(cloth[..., 3] > 0)
    return cloth[rows.min() : rows.max() + 1, columns.min() : columns.max() + 1]


def network_input(cloth):
    """1 x 4 x H x W floats as ../../pattern-network.ts makes it: sides filled up to multiples of 16, outside the cloth its mean colour."""
    inside = cloth[..., 3] > 0
    h, w = inside.shape
    out = np.zeros((-(-h // 16) * 16, -(-w // 16) * 16, 4), np.float32)
    out[..., :3] = cloth[..., :3][inside].mean(0) / 255
    top, left = (out.shape[0] - h) // 2, (out.shape[1] - w) // 2
    out[top : top + h, left : left + w][inside] = np.concatenate([cloth[..., :3][inside] / 255, np.ones((inside.sum(), 1))], 1)
    return np.ascontiguousarray(out.transpose(2, 0, 1)[None])


def on_canvas(cloth):
    """4 x CANVAS x CANVAS bytes, the cloth in the middle, outside it its mean colour."""
    inside = cloth[..., 3] > 0
    h, w = inside.shape
    out = np.zeros((CANVAS, CANVAS, 4), "uint8")
    out[..., :3] = cloth[..., :3][inside].mean(0).round()
    top, left = (CANVAS - h) // 2, (CANVAS - w) // 2
    out[top : top + h, left : left + w][inside] = cloth[inside]
    return out.transpose(2, 0, 1)


def other_plain(rng, cloth):
    """Another plain cloth over the garment: other colour, deeper or flatter folds, a weave or ribs, uneven light, now and then a badge."""
    rgb, inside = cloth[..., :3] / 255, cloth[..., 3] > 0
    mean = rgb[inside].mean(0)
    colour = mean if rng.uniform() < 0.4 else rng.uniform(0.05, 0.95, 3)
    colour = colour.mean() + (colour - colour.mean()) * rng.uniform(0.2, 1)
    light = (rgb.mean(-1) + 0.04) / (mean.mean() + 0.04)
    spread = light[inside].std() + 1e-6
    light = np.maximum(0.1, 1 + (light - 1) * min(2.5, max(0.4, rng.uniform(0.05, 0.22) / spread)))
    if rng.uniform() < 0.5:
        light = light * (1 + _smooth(rng, inside.shape, rng.uniform(0.4, 1.0)) * rng.uniform(0.005, 0.03))
    if rng.uniform() < 0.2:
        across = _across(rng, inside.shape, rng.choice([0, 90]) + rng.normal(0, 6))
        light = light * (1 + np.sin(across * 2 * np.pi / rng.uniform(2.5, 6)) * rng.uniform(0.01, 0.04))
    if rng.uniform() < 0.5:
        light = np.maximum(0.1, light * (1 + _smooth(rng, inside.shape, rng.uniform(12, 50)) * rng.uniform(0.02, 0.12)))
    albedo = np.broadcast_to(colour, rgb.shape)
    if rng.uniform() < 0.3:
        mark = badge(rng, inside.shape)[..., None]
        albedo = albedo * (1 - mark) + rng.uniform(0.03, 0.97, 3) * mark
    out = np.clip(albedo * light[..., None] * (1 + (light[..., None] - 1) * rng.normal(0, 0.06, 3)), 0, 1)
    soft = rng.uniform(0.25, 0.8)
    out = ndimage.gaussian_filter(out, (soft, soft, 0)) + rng.normal(0, rng.uniform(0.002, 0.014), out.shape)
    return np.concatenate([(np.clip(out, 0, 1) * 255).round() * inside[..., None], cloth[..., 3:]], -1).astype("uint8")
