"""Cut-out cloths (bench/pattern/cut-out.ts), seen as they are and otherwise, and other plain cloth laid over them."""

import os

import numpy as np
import torch
from PIL import Image
from scipy import ndimage

from drawn_cloth import _across, _smooth


def cut_out(folder, file):
    """H x W x 4 bytes, nothing but 0 outside the cloth, cut to the cloth's bounds."""
    cloth = np.array(Image.open(os.path.join(folder, os.path.splitext(file)[0] + ".png")))
    return bounded(cloth * (cloth[..., 3:] > 0))


def bounded(cloth):
    rows, columns = np.where(cloth[..., 3] > 0)
    return cloth[rows.min() : rows.max() + 1, columns.min() : columns.max() + 1]


def network_input(cloth):
    """1 x 4 x H x W as ../../pattern-network.ts makes it: sides filled up to multiples of 16, outside the cloth its mean colour."""
    inside = cloth[..., 3] > 0
    h, w = inside.shape
    out = np.zeros((-(-h // 16) * 16, -(-w // 16) * 16, 4), np.float32)
    out[..., :3] = cloth[..., :3][inside].mean(0) / 255
    top, left = (out.shape[0] - h) // 2, (out.shape[1] - w) // 2
    out[top : top + h, left : left + w][inside] = np.concatenate([cloth[..., :3][inside] / 255, np.ones((inside.sum(), 1))], 1)
    return torch.from_numpy(out.transpose(2, 0, 1)[None].copy())


def otherwise(rng, cloth):
    """The same cloth turned, mirrored, farther away, in part, in another light and through another camera."""
    if rng.uniform() < 0.5:
        cloth = cloth[:, ::-1]
    if rng.uniform() < 0.3:
        cloth = np.rot90(cloth, rng.integers(1, 4))
    rgb, inside = cloth[..., :3], cloth[..., 3] > 0
    if rng.uniform() < 0.8:
        zoom = rng.uniform(0.68, 1.0)
        size = max(24, round(cloth.shape[1] * zoom)), max(24, round(cloth.shape[0] * zoom * rng.uniform(0.93, 1.07)))
        picture = Image.fromarray(np.ascontiguousarray(cloth))
        rgb = np.array(picture.convert("RGB").resize(size, Image.BOX if rng.uniform() < 0.5 else Image.BILINEAR))
        inside = np.array(picture.split()[3].resize(size, Image.BOX)) >= 250
    if rng.uniform() < 0.35:
        h, w = inside.shape
        top, left, low, right = (rng.integers(0, int(side * 0.3) + 1) for side in (h, w, h, w))
        part = slice(top, h - low), slice(left, w - right)
        if inside[part].sum() > 0.5 * inside.sum():
            rgb, inside = rgb[part], inside[part]
    x = (rgb / 255) ** np.exp(rng.normal(0, 0.18)) * np.exp(rng.normal(0, 0.07, 3)) * np.exp(rng.normal(0, 0.1))
    grey = x.mean(-1, keepdims=True)
    x = grey + (x - grey) * rng.uniform(0.65, 1.25)
    if rng.uniform() < 0.1:
        x = x[..., rng.permutation(3)]
    x = x + rng.normal(0, rng.uniform(0, 1) ** 2 * 0.02, x.shape)
    return np.concatenate([(np.clip(x, 0, 1) * 255).round(), inside[..., None] * 255], -1).astype("uint8")


def other_plain(rng, cloth):
    """Another plain cloth over the garment: other colour, deeper or flatter folds, a weave or ribs, uneven light."""
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
    out = np.clip(colour * light[..., None] * (1 + (light[..., None] - 1) * rng.normal(0, 0.06, 3)), 0, 1)
    soft = rng.uniform(0.25, 0.8)
    out = ndimage.gaussian_filter(out, (soft, soft, 0)) + rng.normal(0, rng.uniform(0.002, 0.014), out.shape)
    return np.concatenate([(np.clip(out, 0, 1) * 255).round() * inside[..., None], cloth[..., 3:]], -1).astype("uint8")
