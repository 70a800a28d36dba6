"""Collars, neck bands, hoods and buttons of tops laid flat."""

import numpy as np

from sheet import Piece, mirrored, rounded


def disc(x, y, radius, on, seed):
    """A button on another piece."""
    ring = [(x + radius * np.cos(a), y + radius * np.sin(a)) for a in np.linspace(0, 2 * np.pi, 18, endpoint=False)]
    return Piece(ring, lift=0.005, on=on, puff=0.0012, rim=0.002, fold=0.0, part="trim", seed=seed, spacing=0.003)


def collar_pieces(kind, neck, depth, body, seed, hood):
    """The collar, neck band or hood of a top whose neck is `neck` wide (half) and `depth` deep; lies on `body`."""
    lay = dict(puff=0.004, rim=0.008, fold=0.001, seed=seed + 17, spacing=0.006)
    if hood:
        shape = rounded(mirrored([(0, 0.30), (0.10, 0.285), (0.145, 0.2), (0.135, 0.09), (neck + 0.035, 0.0, "corner"), (neck * 0.5, -0.045), (0, -depth + 0.01)]))
        opening = rounded(mirrored([(0, 0.225), (0.068, 0.205), (0.078, 0.11), (0.05, 0.02), (0, -depth + 0.03, "corner")]))
        outer = Piece(shape, lift=0.006, puff=0.02, rim=0.03, fold=0.007, scale=0.1, seed=seed + 19)
        return [outer, Piece(opening, lift=0.004, on=outer, puff=-0.012, rim=0.02, fold=0.003, seed=seed + 21, part="inside")]
    if kind == "shirt":
        leaf = rounded(
            [
                (0.003, -depth + 0.006, "corner"),
                (neck * 0.55, -depth * 0.5),
                (neck * 1.0, 0.004),
                (neck * 0.92, 0.032, "corner"),
                (neck * 1.2, 0.012),
                (neck * 1.06, -depth * 0.85),
                (0.055, -depth - 0.052, "corner"),
            ],
            times=2,
        )
        stand = rounded(mirrored([(0, 0.034), (neck * 0.6, 0.044), (neck * 0.96, 0.034), (neck * 1.0, 0.002), (neck * 0.55, 0.0), (0, -0.012)]))
        return [Piece(stand, lift=0.005, puff=0.006, rim=0.012, fold=0.001, seed=seed + 16)] + [
            Piece([(x * side, y) for x, y in leaf], lift=0.006, on=body, grain=25 * side, **lay) for side in (1, -1)
        ]
    if kind == "lapel":
        leaf = rounded(
            [
                (0.004, -depth * 0.98, "corner"),
                (neck * 0.9, 0.02, "corner"),
                (neck * 1.25, 0.0),
                (neck * 1.45, -0.075, "corner"),
                (neck * 1.05, -0.085, "corner"),
                (neck * 1.55, -0.12, "corner"),
                (neck * 0.75, -depth * 0.72),
            ],
            times=2,
        )
        stand = rounded(mirrored([(0, 0.04), (neck * 0.7, 0.048), (neck * 1.1, 0.03), (neck * 1.02, -0.004), (neck * 0.5, 0.0), (0, -0.01)]))
        return [Piece(stand, lift=0.006, puff=0.008, rim=0.012, fold=0.001, seed=seed + 16)] + [
            Piece([(x * side, y) for x, y in leaf], lift=0.008, on=body, grain=20 * side, **lay) for side in (1, -1)
        ]
    if kind == "v":
        band = [(0.0, -depth - 0.016), (neck * 1.02, 0.01), (neck * 0.82, 0.018), (0.0, -depth + 0.006)]
        return [Piece([(x * side, y) for x, y in band], lift=0.003, on=body, **lay) for side in (1, -1)]
    if kind == "crew":
        inner = depth - 0.02
        ring = rounded(
            mirrored(
                [
                    (0, -inner, "corner"),
                    (neck * 0.62, -inner * 0.8),
                    (neck * 0.86, -inner * 0.2),
                    (neck * 0.84, 0.02, "corner"),
                    (neck * 1.04, 0.012, "corner"),
                    (neck * 1.06, -depth * 0.25),
                    (neck * 0.72, -depth * 0.92),
                    (0, -depth - 0.012, "corner"),
                ]
            )
        )
        return [Piece(ring, lift=0.005, puff=0.006, rim=0.008, fold=0.001, seed=seed + 17, spacing=0.005, grain=0)]
    if kind in ("roll", "stand"):
        rise = 0.05 if kind == "roll" else 0.03
        band = rounded(
            mirrored(
                [
                    (0, rise - 0.008),
                    (neck * 0.6, rise),
                    (neck * 0.98, rise - 0.004, "corner"),
                    (neck * 1.04, 0.0),
                    (neck * 0.9, -depth * 0.55),
                    (neck * 0.5, -depth * 0.9),
                    (0, -depth - 0.012),
                ]
            )
        )
        return [Piece(band, lift=0.008, puff=0.014 if kind == "roll" else 0.006, rim=0.014, fold=0.004, scale=0.05, seed=seed + 17, spacing=0.005)]
    raise ValueError(f"Expected a known collar, got {kind}")
