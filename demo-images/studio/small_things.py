"""Socks, caps, scarves and bags, laid flat. Metres, y upwards."""

import numpy as np

from sheet import Piece, rounded


def socks_pieces(seed=1):
    """A pair, one half over the other, ribbed cuffs."""
    pieces = []
    sock = [
        (0, 0, "corner"),
        (0.085, 0.0, "corner"),
        (0.083, -0.12),
        (0.09, -0.21),
        (0.15, -0.245),
        (0.205, -0.262),
        (0.225, -0.3),
        (0.19, -0.335),
        (0.1, -0.325),
        (0.02, -0.315),
        (-0.012, -0.28),
        (0.002, -0.21),
        (0.002, -0.1),
    ]
    for k, (dx, dy, degrees) in enumerate([(-0.12, 0.02, 4), (0.02, -0.03, -9)]):
        t = np.radians(degrees)
        place = lambda p: (p[0] * np.cos(t) - p[1] * np.sin(t) + dx, p[0] * np.sin(t) + p[1] * np.cos(t) + dy, *p[2:])
        foot = Piece(
            rounded([place(p) for p in sock]),
            lift=0.002 + 0.009 * k,
            puff=0.008,
            rim=0.012,
            fold=0.004,
            scale=0.05,
            along=60,
            grain=degrees,
            seed=seed + k,
            spacing=0.004,
        )
        cuff = [place(p) for p in [(-0.003, 0.004), (0.088, 0.004), (0.087, -0.05), (-0.002, -0.05)]]
        pieces += [foot, Piece(rounded(cuff, times=1), lift=0.002, on=foot, puff=0.004, rim=0.006, fold=0.001, grain=degrees, seed=seed + 5, spacing=0.004)]
    return pieces


def beanie_pieces(seed=1):
    """A knitted cap with a turned-up brim."""
    dome = rounded([(-0.12, 0.0, "corner"), (-0.128, 0.07), (-0.105, 0.15), (-0.045, 0.195), (0.03, 0.198), (0.1, 0.15), (0.126, 0.07), (0.12, 0.0, "corner")])
    body = Piece(dome, lift=0.002, puff=0.022, rim=0.03, fold=0.006, scale=0.06, seed=seed, spacing=0.004)
    brim = rounded([(-0.13, 0.04, "corner"), (0, 0.03), (0.13, 0.045, "corner"), (0.128, -0.03, "corner"), (0, -0.045), (-0.128, -0.03, "corner")], times=3)
    return [body, Piece(brim, lift=0.02, puff=0.012, rim=0.014, fold=0.003, scale=0.04, seed=seed + 1, spacing=0.004)]


def scarf_pieces(seed=1, fringe=True):
    """A long scarf folded once across itself, with fringes."""
    first = rounded(
        [(-0.30, 0.32, "corner"), (-0.12, 0.36, "corner"), (-0.03, 0.12), (0.02, -0.2), (0.03, -0.5, "corner"), (-0.15, -0.52, "corner"), (-0.16, -0.2), (-0.2, 0.08)]
    )
    second = rounded(
        [
            (-0.27, 0.345, "corner"),
            (-0.1, 0.2),
            (0.1, 0.0),
            (0.15, -0.24),
            (0.12, -0.45, "corner"),
            (0.30, -0.48, "corner"),
            (0.34, -0.2),
            (0.28, 0.1),
            (0.08, 0.3),
            (-0.06, 0.41),
            (-0.2, 0.42, "corner"),
        ]
    )
    pieces = [
        Piece(first, lift=0.002, puff=0.012, fold=0.012, scale=0.07, along=95, seed=seed, grain=-4),
        Piece(second, lift=0.02, puff=0.014, fold=0.014, scale=0.08, along=115, seed=seed + 1, grain=10),
    ]
    if fringe:
        for x0, x1, y, base in ((-0.15, 0.03, -0.5, 0.004), (0.12, 0.30, -0.455, 0.018)):
            for k in range(15):
                x = x0 + (x1 - x0) * (k + 0.5) / 15
                sway = 0.006 * np.sin(k * 2.3 + seed)
                pieces.append(
                    Piece(
                        [(x - 0.003, y), (x + 0.003, y), (x + 0.002 + sway, y - 0.07), (x - 0.002 + sway, y - 0.07)],
                        lift=base,
                        puff=0.003,
                        rim=0.002,
                        fold=0,
                        seed=seed,
                        spacing=0.004,
                    )
                )
    return pieces


def bag_pieces(seed=1, width=0.19, height=0.26):
    """A shoulder bag with a flap, lying on its back, its strap in a loop."""
    turns = np.linspace(0, np.pi, 28)
    outer = [(-(width - 0.01) * np.cos(t) * (1 + 0.1 * np.sin(t)), 0.0 + 0.36 * np.sin(t)) for t in turns]
    inner = [(-(width - 0.035) * np.cos(t) * (1 + 0.1 * np.sin(t)), 0.0 + 0.333 * np.sin(t)) for t in turns]
    strap = Piece(outer + inner[::-1], lift=0.002, puff=0.006, rim=0.006, fold=0.002, seed=seed, spacing=0.006)
    sack = rounded(
        [(-width, 0, "corner"), (width, 0, "corner"), (width * 1.04, -height * 0.7), (width * 0.96, -height), (-width * 0.96, -height), (-width * 1.04, -height * 0.7)]
    )
    body = Piece(sack, lift=0.02, puff=0.045, rim=0.05, fold=0.005, scale=0.12, seed=seed + 1, thickness=0.006)
    flap = rounded(
        [
            (-width * 1.01, 0.012, "corner"),
            (width * 1.01, 0.012, "corner"),
            (width * 0.99, -height * 0.5),
            (width * 0.55, -height * 0.68),
            (-width * 0.55, -height * 0.68),
            (-width * 0.99, -height * 0.5),
        ]
    )
    over = Piece(flap, lift=0.006, on=body, puff=0.005, rim=0.012, fold=0.003, scale=0.1, seed=seed + 2)
    clasp = [(-0.016, -height * 0.6), (0.016, -height * 0.6), (0.016, -height * 0.74), (-0.016, -height * 0.74)]
    return [strap, body, over, Piece(clasp, lift=0.004, on=over, puff=0.003, rim=0.003, fold=0, part="trim", seed=seed, spacing=0.004)]
