"""Seeded, repeatable noise over numpy arrays."""

import numpy as np


def perlin(x, y, seed, wrap=None):
    """Gradient noise about -0.7..0.7 at x, y (any shape). With `wrap` it repeats every `wrap` cells in both directions."""
    rng = np.random.default_rng(seed)
    size = wrap or 256
    angles = rng.uniform(0, 2 * np.pi, (size, size))
    xi, yi = np.floor(x).astype(int), np.floor(y).astype(int)
    xf, yf = x - xi, y - yi

    def corner(dx, dy):
        angle = angles[(xi + dx) % size, (yi + dy) % size]
        return np.cos(angle) * (xf - dx) + np.sin(angle) * (yf - dy)

    u, v = xf**3 * (xf * (6 * xf - 15) + 10), yf**3 * (yf * (6 * yf - 15) + 10)
    top = corner(0, 0) * (1 - u) + corner(1, 0) * u
    bottom = corner(0, 1) * (1 - u) + corner(1, 1) * u
    return top * (1 - v) + bottom * v


def layered(x, y, seed, octaves=3, wrap=None):
    """Sum of octaves of {@link perlin}, each half as strong and twice as fine."""
    total = np.zeros_like(np.asarray(x, dtype=float))
    for i in range(octaves):
        total = total + perlin(x * 2**i, y * 2**i, seed + 17 * i, wrap * 2**i if wrap else None) / 2**i
    return total


def creases(x, y, seed):
    """0..1: sharp ridges on smooth valleys, as cloth that was worn and laid down shows them."""
    ridge = 1 - np.minimum(np.abs(layered(x, y, seed, 2)) * 2.6, 1)
    return ridge**2 * (3 - 2 * ridge)
