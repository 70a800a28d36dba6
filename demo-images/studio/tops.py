"""Shirts, jumpers, dresses, coats: everything with sleeves or shoulders, laid flat. Metres, front up, y upwards, hem below."""

import numpy as np

from collars import collar_pieces, disc
from sheet import Piece, mirrored, rounded


def _body(length, shoulder, chest, waist, hem, neck, depth, curved):
    """Front outline: neck, shoulder, armhole, side, hem."""
    top = 0.0
    side = length * 0.52
    half = [
        (0, top - depth, "corner"),
        (neck * 0.62, top - depth * 0.82),
        (neck * 0.95, top - depth * 0.25),
        (neck, top + 0.012, "corner"),
        (shoulder, top - 0.045),
        (shoulder - 0.022, top - 0.13),
        (shoulder - 0.008, top - 0.19),
        (chest, top - 0.245, "corner"),
        (waist, top - side),
        (hem, top - length + (0.07 if curved else 0.0), "corner"),
    ]
    if curved:
        half += [(hem * 0.8, top - length + 0.02), (hem * 0.5, top - length)]
    half.append((0, top - length - (0.0 if curved else 0.006), "corner"))
    return rounded(mirrored(half))


def _sleeve(side, shoulder, chest, length, cuff, angle, kind):
    """One sleeve hanging from the armhole at `angle` degrees from straight down, and its direction."""
    turn = np.radians(angle) * side
    down = np.array([np.sin(turn), -np.cos(turn)])
    across = np.array([np.cos(turn), np.sin(turn)]) * side
    start = np.array([side * (shoulder - 0.004), -0.038])
    under = np.array([side * (chest - 0.012), -0.255])
    end = start + down * length
    width = cuff * 2
    outer, inner = end + across * 0.012, end - across * width
    bulge = start + down * length * 0.5 + across * 0.02
    # The elbow side falls a little softer than the other.
    inner_mid = (under + inner) / 2 + across * (-0.008 if kind == "wide" else 0.014)
    points = [
        (*start, "corner"),
        tuple(start + down * 0.06 + across * 0.022),
        tuple(bulge),
        (*outer, "corner"),
        (*inner, "corner"),
        tuple(inner_mid),
        (*under, "corner"),
        (side * (shoulder - 0.07), -0.22),
        (side * (shoulder - 0.085), -0.12),
    ]
    return rounded(points), down, across, end, width


def _cuff(end, down, across, width, depth, grow=0.004):
    a, b = end + across * (0.012 + grow), end - across * (width + grow)
    lower = down * depth
    return [(*a, "corner"), (*(a + lower), "corner"), (*(b + lower), "corner"), (*b, "corner")]


def top_pieces(
    length=0.68,
    shoulder=0.21,
    chest=0.26,
    waist=0.25,
    hem=0.26,
    neck=0.085,
    depth=0.09,
    sleeve=0.56,
    cuff=0.055,
    angle=(14, 17),
    collar="crew",
    opening="none",
    curved=False,
    rib=False,
    pockets=None,
    fold=0.013,
    puff=0.013,
    seed=1,
    sleeve_kind="slim",
    belt=False,
    hood=False,
    gather=False,
    split=False,
):
    """Pieces of one garment by part: cloth (its fabric), trim (buttons, zips) and lining (the dark inside at the neck)."""
    pieces = []
    knit = rib
    body_outline = _body(length, shoulder, chest, waist, hem, neck, depth, curved)
    long = length > 0.85
    body = Piece(
        body_outline,
        lift=0.007,
        puff=puff,
        rim=0.022,
        fold=fold,
        scale=0.15 if knit else (0.13 if long else 0.11),
        along=88 if gather or long else 68,
        grain=0,
        seed=seed,
        thickness=0.005 if knit else 0.003,
    )
    # The inside of the back, seen through the neck.
    back = rounded(mirrored([(0, 0.012), (neck * 0.6, 0.018), (neck * 1.02, 0.016, "corner"), (neck * 1.0, -depth - 0.02), (0, -depth - 0.05)]))
    pieces.append(Piece(back, lift=0.002, puff=0.003, fold=0.001, seed=seed + 2, part="inside"))
    if sleeve > 0:
        for side, degrees in zip((-1, 1), angle):
            outline, down, across, end, width = _sleeve(side, shoulder, chest, sleeve, cuff, degrees, sleeve_kind)
            arm = Piece(
                outline,
                lift=0.001,
                puff=puff * 1.05,
                rim=0.02,
                fold=fold * 1.1,
                scale=0.09,
                along=90 - degrees * side + 35 * side,
                grain=float(np.degrees(np.arctan2(down[0], -down[1]))),
                seed=seed + 20 + side,
                thickness=body.thickness,
            )
            pieces.append(arm)
            if sleeve > 0.35 and (knit or collar in ("shirt", "stand")):
                pieces.append(
                    Piece(
                        rounded(_cuff(end - down * 0.012, down, across, width - (0.012 if knit else 0), 0.055 if knit else 0.05, -0.006 if knit else 0.004), times=2),
                        lift=0.005,
                        puff=puff * 0.9,
                        rim=0.012,
                        fold=fold * 0.4,
                        scale=0.05,
                        grain=arm.grain + (0 if knit else 90),
                        seed=seed + 31 + side,
                    )
                )
    pieces.append(body)
    on = body
    if rib:
        band = rounded(
            [
                (-hem + 0.008, -length + 0.01, "corner"),
                (hem - 0.008, -length + 0.01, "corner"),
                (hem - 0.02, -length - 0.055, "corner"),
                (-hem + 0.02, -length - 0.055, "corner"),
            ],
            times=2,
        )
        pieces.append(Piece(band, lift=0.006, puff=puff * 0.8, rim=0.012, fold=fold * 0.5, scale=0.06, along=90, seed=seed + 4))
    if opening != "none":
        strip = 0.017 if opening == "buttons" else 0.011
        start = -depth - 0.002 if collar != "v" else -depth
        foot = -length + (0.004 if not rib else -0.05)
        pieces.append(
            Piece(
                [(-strip, start), (strip, start), (strip, foot), (-strip, foot)],
                lift=0.0022,
                on=on,
                puff=0.001,
                rim=0.006,
                fold=0.0,
                grain=90 if collar == "shirt" else 0,
                seed=seed + 6,
                spacing=0.006,
            )
        )
        count = max(4, int((start - foot) / (0.085 if opening == "buttons" else 9)))
        if opening == "buttons":
            for k in range(count):
                y = start - 0.02 - k * (start - foot - 0.05) / (count - 1)
                pieces.append(disc(0.0, y, 0.0062, on, seed))
        else:
            pieces.append(
                Piece(
                    [(-0.003, start), (0.003, start), (0.003, foot), (-0.003, foot)],
                    lift=0.0045,
                    on=on,
                    puff=0.001,
                    rim=0.003,
                    fold=0.0,
                    part="trim",
                    seed=seed + 8,
                    spacing=0.006,
                )
            )
    pieces += collar_pieces(collar, neck, depth, body, seed, hood)
    for x, y, w, h in pockets or []:
        pieces.append(
            Piece(
                rounded([(x - w, y + h, "corner"), (x + w, y + h, "corner"), (x + w * 0.97, y - h), (x - w * 0.97, y - h)], times=2),
                lift=0.0025,
                on=on,
                puff=0.0015,
                rim=0.008,
                fold=0.0005,
                seed=seed + 11,
                spacing=0.006,
            )
        )
    if belt:
        y = -length * 0.47
        pieces.append(
            Piece(
                rounded([(-waist - 0.012, y + 0.022), (waist + 0.012, y + 0.016), (waist + 0.012, y - 0.026), (-waist - 0.012, y - 0.02)], times=1),
                lift=0.006,
                on=on,
                puff=0.003,
                rim=0.008,
                fold=0.001,
                grain=90,
                seed=seed + 13,
            )
        )
        pieces.append(
            Piece(
                rounded([(0.01, y + 0.024, "corner"), (0.075, y - 0.2, "corner"), (0.04, y - 0.21, "corner"), (-0.025, y - 0.01, "corner")], times=1),
                lift=0.009,
                on=on,
                puff=0.003,
                rim=0.008,
                fold=0.001,
                grain=15,
                seed=seed + 14,
            )
        )
    return pieces


def skirted(top_length, skirt_length, hem, seed, **rest):
    """A dress: a top whose lower part widens into a skirt with falling folds."""
    waist = rest.pop("waist", 0.2)
    pieces = top_pieces(length=top_length, waist=waist + 0.01, hem=waist, seed=seed, **rest)
    skirt = rounded(
        mirrored(
            [
                (0, -top_length + 0.012),
                (waist + 0.004, -top_length + 0.012, "corner"),
                (waist + (hem - waist) * 0.6, -top_length - skirt_length * 0.4),
                (hem, -top_length - skirt_length + 0.03, "corner"),
                (hem * 0.5, -top_length - skirt_length - 0.004),
                (0, -top_length - skirt_length - 0.012),
            ]
        )
    )
    low = Piece(skirt, lift=0.005, puff=0.012, fold=0.014, scale=0.085, along=90, seed=seed + 40)
    band = rounded(
        [(-waist - 0.004, -top_length + 0.02), (waist + 0.004, -top_length + 0.02), (waist + 0.006, -top_length - 0.014), (-waist - 0.006, -top_length - 0.014)], times=1
    )
    return [low] + pieces + [Piece(band, lift=0.012, puff=0.006, rim=0.01, fold=0.002, grain=90, seed=seed + 41)]
