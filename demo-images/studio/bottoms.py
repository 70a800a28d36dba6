"""Trousers, skirts and tights, laid flat. Metres, y upwards, waist at y = 0."""

from sheet import Piece, mirrored, rounded
from collars import disc


def trouser_pieces(
    length=1.0,
    waist=0.195,
    hip=0.25,
    rise=0.27,
    knee=0.115,
    ankle=0.1,
    apart=0.03,
    belt_loops=True,
    fly=True,
    pockets=True,
    elastic=False,
    fold=0.013,
    seed=1,
    turn_up=False,
    below=0.0,
):
    """Two legs, waistband, fly, pocket lines; `below` moves them down, for the legs of a one-piece."""
    pieces = []
    crotch = -rise
    for side in (-1, 1):
        foot = apart + ankle
        hem = [(side * (foot + ankle), -length, "corner"), (side * (foot - ankle), -length - 0.004, "corner")]
        seat = [(0.0, 0.0, "corner"), (side * waist, 0.004, "corner"), (side * hip, -rise * 0.72)]
        if length < 2 * rise:  # shorts: no knee to shape
            leg = [*seat, *hem, (side * 0.006, crotch - 0.02), (side * -0.002, crotch - 0.01, "corner")]
        else:
            leg = [
                *seat,
                (side * (hip + 0.006), -rise * 1.25),
                (side * (foot - ankle + 2 * knee * 0.98), -length * 0.56),
                *hem,
                (side * (apart * 0.8 + 0.012), -length * 0.56),
                (side * 0.012, crotch - 0.08),
                (side * -0.002, crotch - 0.01, "corner"),
            ]
        legs = Piece(rounded(leg), lift=0.003 if side < 0 else 0.0045, puff=0.011, fold=fold, scale=0.1, along=90 - side * 22, seed=seed + side, rim=0.024)
        pieces.append(legs)
        if turn_up:
            cuff = [
                (side * (foot + ankle + 0.004), -length + 0.045),
                (side * (foot + ankle + 0.004), -length - 0.004),
                (side * (foot - ankle - 0.004), -length - 0.008),
                (side * (foot - ankle - 0.004), -length + 0.042),
            ]
            pieces.append(Piece(rounded(cuff, times=1), lift=0.004, on=legs, puff=0.003, rim=0.008, fold=0.001, seed=seed + 3))
        if pockets:
            line = [(side * waist * 0.62, -0.03), (side * (waist + 0.014), -0.125), (side * (waist + 0.014), -0.137), (side * waist * 0.58, -0.03)]
            pieces.append(Piece(line, lift=0.002, on=legs, puff=0.001, rim=0.003, fold=0.0, seed=seed + 6, spacing=0.005))
    right = next(p for p in pieces[1:] if p.puff > 0.01)
    height = 0.042
    band = rounded(
        [
            (-waist - 0.003, 0.008, "corner"),
            (0, -0.004),
            (waist + 0.003, 0.008, "corner"),
            (waist + 0.006, -height, "corner"),
            (0, -height - 0.012),
            (-waist - 0.006, -height, "corner"),
        ],
        times=2,
    )
    top = Piece(band, lift=0.012, puff=0.005, rim=0.009, fold=0.006 if elastic else 0.001, scale=0.02 if elastic else 0.1, along=90, grain=90, seed=seed + 8)
    if not elastic:
        opening = rounded(mirrored([(0, 0.012), (waist * 0.8, 0.016), (waist * 0.98, 0.006, "corner"), (waist * 0.9, -0.02), (0, -0.03)]))
        pieces.append(Piece(opening, lift=0.004, puff=0.004, fold=0.0, part="inside", seed=seed))
    pieces.append(top)
    if belt_loops and not elastic:
        for x in (-waist * 0.62, waist * 0.62):
            pieces.append(
                Piece(
                    [(x - 0.006, 0.0), (x + 0.006, 0.0), (x + 0.006, -height - 0.012), (x - 0.006, -height - 0.012)],
                    lift=0.002,
                    on=top,
                    puff=0.003,
                    rim=0.004,
                    fold=0,
                    seed=seed,
                    spacing=0.004,
                )
            )
    if fly:
        strip = rounded(
            [(0.004, -height - 0.008, "corner"), (0.034, -height - 0.008, "corner"), (0.034, -rise * 0.55), (0.016, -rise * 0.74), (0.004, -rise * 0.78)], times=2
        )
        pieces.append(Piece(strip, lift=0.0012, on=right, puff=0.001, rim=0.005, fold=0, seed=seed, spacing=0.005))
        pieces.append(disc(0.008, -height * 0.55, 0.0085, top, seed))
    if elastic:
        for x in (-0.012, 0.014):
            pieces.append(
                Piece(
                    rounded([(x, -0.03), (x + 0.006, -0.03), (x * 2.2 + 0.008, -0.17), (x * 2.2, -0.17)], times=1),
                    lift=0.02,
                    puff=0.003,
                    rim=0.003,
                    fold=0,
                    part="trim",
                    seed=seed,
                    spacing=0.004,
                )
            )
    for piece in pieces:
        piece.move(0.0, -below)
    return pieces


def skirt_pieces(length=0.66, waist=0.175, hem=0.36, fold=0.016, scale=0.075, buttons=False, seed=1, yoke=0.045, curve=0.02):
    """One falling piece and a waistband."""
    outline = rounded(
        mirrored(
            [
                (0, -0.004),
                (waist, 0, "corner"),
                (waist + (hem - waist) * 0.42, -length * 0.3),
                (hem, -length + curve, "corner"),
                (hem * 0.55, -length - curve * 0.2),
                (0, -length - curve * 0.4),
            ]
        )
    )
    body = Piece(outline, lift=0.003, puff=0.012, fold=fold, scale=scale, along=90, seed=seed, rim=0.02)
    band = rounded(
        [
            (-waist - 0.003, 0.008, "corner"),
            (0, 0.0),
            (waist + 0.003, 0.008, "corner"),
            (waist + 0.008, -yoke, "corner"),
            (0, -yoke - 0.01),
            (-waist - 0.008, -yoke, "corner"),
        ],
        times=2,
    )
    top = Piece(band, lift=0.014, puff=0.005, rim=0.009, fold=0.001, grain=90, seed=seed + 1)
    pieces = [body, top]
    if buttons:
        pieces.append(
            Piece(
                [(-0.018, -yoke), (0.018, -yoke), (0.022, -length - 0.006), (-0.022, -length - 0.006)],
                lift=0.002,
                on=body,
                puff=0.001,
                rim=0.005,
                fold=0,
                grain=0,
                seed=seed,
                spacing=0.006,
            )
        )
        pieces += [disc(0, -0.02, 0.008, top, seed)] + [disc(0, -yoke - 0.05 - k * 0.085, 0.008, body, seed) for k in range(int((length - 0.12) / 0.085))]
    return pieces


def tights_pieces(seed=1):
    """Long narrow legs with feet, and a broad soft waistband."""
    pieces = []
    for side in (-1, 1):
        leg = [
            (0, 0, "corner"),
            (side * 0.145, 0.002, "corner"),
            (side * 0.165, -0.13),
            (side * 0.15, -0.3),
            (side * 0.128, -0.55),
            (side * 0.13, -0.68),
            (side * 0.098, -0.88),
            (side * 0.104, -0.93),
            (side * 0.16, -1.0),
            (side * 0.15, -1.03),
            (side * 0.06, -1.0),
            (side * 0.032, -0.93),
            (side * 0.03, -0.85),
            (side * 0.016, -0.6),
            (side * 0.004, -0.28),
            (side * -0.002, -0.22, "corner"),
        ]
        pieces.append(Piece(rounded(leg), lift=0.002 + 0.001 * side, puff=0.005, fold=0.006, scale=0.06, along=90 - 40 * side, seed=seed + side, rim=0.012))
    band = rounded([(-0.148, 0.006, "corner"), (0.148, 0.006, "corner"), (0.152, -0.05, "corner"), (-0.152, -0.05, "corner")], times=2)
    pieces.append(Piece(band, lift=0.006, puff=0.004, rim=0.008, fold=0.003, scale=0.025, along=90, seed=seed + 4))
    return pieces
