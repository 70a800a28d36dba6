"""Pictures in which no piece is to be told, made by lot from photos that have clothes: heads, crowds, rails, furniture, grounds. Each H x W x 3 bytes."""

import numpy as np
from PIL import Image, ImageDraw

from no_pieces_drawings import colour

SKIN, HAIR = 8, 9


def is_cloth(labels):
    return (labels >= 1) & (labels <= 7)


def cropped(picture, left, top, right, bottom):
    """A part of the picture, whose outermost pixels go on past its ends."""
    height, width = picture.shape[:2]
    rows = np.arange(int(top), int(bottom)).clip(0, height - 1)
    columns = np.arange(int(left), int(right)).clip(0, width - 1)
    return picture[rows][:, columns]


def head_box(photo, labels, rng, sides):
    """A part of the photo around somebody's head, its side so many heads, and the share of cloth in it; None where no head is marked."""
    rows = np.where((labels > 0).any(1))[0]
    if len(rows) < 60:
        return None
    # A head is about a seventh of a person (common practice, no source).
    size = (rows[-1] - rows[0]) / 7
    band = np.isin(labels[rows[0] : int(rows[0] + size)], (SKIN, HAIR))
    if band.sum() < 0.15 * size * size:
        return None
    side = size * rng.uniform(*sides)
    tall = side * rng.uniform(0.9, 1.5)
    x = np.median(np.where(band)[1]) + size * rng.uniform(-0.1, 0.1)
    top = max(0, rows[0] + size * rng.uniform(0.42, 0.62) - min(tall, 1.6 * size) / 2)
    box = (max(0, x - side / 2), top, min(photo.shape[1], x + side / 2), min(photo.shape[0], top + tall))
    return cropped(photo, *box), float(is_cloth(cropped(labels, *box)).mean())


def cut_out(photo, mask):
    """H x W x 4 of what is marked, cut to its bounds."""
    rows, columns = np.where(mask)
    box = slice(rows.min(), rows.max() + 1), slice(columns.min(), columns.max() + 1)
    return np.concatenate([photo[box], 255 * mask[box][..., None].astype("uint8")], -1)


def pasted(sheet, piece, left, top, width, height):
    one = Image.fromarray(piece).resize((max(1, int(width)), max(1, int(height))), Image.BILINEAR)
    sheet.paste(one.convert("RGB"), (int(left), int(top)), one.getchannel("A"))


def crowd(rng, people, ground, width, height):
    """Many people in a street: those farther back are smaller and higher."""
    sheet = Image.fromarray(ground).resize((width, height))
    count = int(np.exp(rng.uniform(np.log(7), np.log(45))))
    depths = np.sort(rng.uniform(0, 1, count))
    for depth in depths:
        piece = people[rng.integers(len(people))]
        tall = height * (0.16 + 0.42 * depth * rng.uniform(0.6, 1)) * (1.3 if count < 14 else 1)
        wide = tall * piece.shape[1] / piece.shape[0]
        pasted(sheet, piece, rng.uniform(-wide / 2, width - wide / 2), height * (0.12 + 0.5 * depth), wide, tall)
    return np.array(sheet)


def tiled(rng, photos, width, height):
    """Six or more whole photos of people side by side."""
    columns = int(rng.integers(3, 9))
    rows = int(rng.integers(2, 6))
    sheet = Image.new("RGB", (width, height), colour(rng, 0.8, 1))
    wide, tall = width / columns, height / rows
    for row in range(rows):
        for column in range(columns):
            one = Image.fromarray(photos[rng.integers(len(photos))]).resize((int(wide), int(tall)))
            sheet.paste(one, (int(column * wide), int(row * tall)))
    return np.array(sheet)


def rail(rng, garments, ground, width, height):
    """Many garments on a rail, seen from the side: of each only a strip."""
    sheet = Image.fromarray(ground).resize((width, height))
    top = height * rng.uniform(0.04, 0.3)
    pen = ImageDraw.Draw(sheet)
    count = int(rng.integers(9, 30))
    step = width * rng.uniform(0.8, 1.1) / count
    for at in range(count):
        piece = garments[rng.integers(len(garments))]
        middle, wide = piece.shape[1] // 2, max(4, int(piece.shape[1] * rng.uniform(0.12, 0.4)))
        strip = piece[:, max(0, middle - wide // 2) : middle + wide // 2]
        tall = height * rng.uniform(0.45, 0.8)
        pasted(sheet, strip, at * step + rng.uniform(-0.1, 0.1) * step, top, step * rng.uniform(1.1, 2), tall)
    pen.line((0, top, width, top), fill=colour(rng, 0, 0.6), width=int(rng.integers(2, 9)))
    return np.array(sheet)


def shelf(rng, photos, width, height):
    """Nine or more whole photos of garments side by side, in one row or several."""
    rows = int(rng.choice([1, 1, 2, 3, 4]))
    columns = max(int(rng.integers(8, 16)) // rows + 1, 3)
    sheet = Image.new("RGB", (width, height), colour(rng, 0.8, 1))
    wide, tall = width / columns, height / rows
    for row in range(rows):
        for column in range(columns):
            one = Image.fromarray(photos[rng.integers(len(photos))]).resize((int(wide) + 1, int(tall) + 1))
            sheet.paste(one, (int(column * wide), int(row * tall)))
    return np.array(sheet)


def tile_of(cloth, width, height):
    """A patch of cloth, mirrored until it fills so much."""
    both = np.concatenate([cloth, cloth[:, ::-1]], 1)
    both = np.concatenate([both, both[::-1]], 0)
    rows, columns = -(-int(height) // both.shape[0]), -(-int(width) // both.shape[1])
    return np.tile(both, (rows, columns, 1))[: int(height), : int(width)]


def _cushion(rng, sheet, cloth, box):
    """A padded part with round corners and a shaded rim."""
    left, top, right, bottom = (int(one) for one in box)
    width, height = max(8, right - left), max(8, bottom - top)
    shape = Image.new("L", (width, height))
    ImageDraw.Draw(shape).rounded_rectangle((0, 0, width - 1, height - 1), radius=min(width, height) * rng.uniform(0.05, 0.35), fill=255)
    v, u = np.mgrid[:height, :width]
    rim = np.minimum.reduce([u, v, width - 1 - u, height - 1 - v]) / (0.18 * min(width, height))
    shade = (0.62 + 0.38 * np.clip(rim, 0, 1)) * rng.uniform(0.8, 1.1) * (1 - 0.25 * v / height)
    sheet.paste(Image.fromarray(np.clip(tile_of(cloth, width, height) * shade[..., None], 0, 255).astype("uint8")), (left, top), shape)


def sofa(rng, cloths, wall, floor, width, height):
    """A sofa or a bed in some cloth, patterned or not, before a wall."""
    horizon = height * rng.uniform(0.55, 0.85)
    sheet = Image.fromarray(tile_of(wall, width, height))
    sheet.paste(Image.fromarray(tile_of(floor, width, height - horizon)), (0, int(horizon)))
    cloth = cloths[rng.integers(len(cloths))]
    left, right = width * rng.uniform(-0.1, 0.15), width * rng.uniform(0.85, 1.1)
    seat = height * rng.uniform(0.5, 0.65)
    back, low = seat - height * rng.uniform(0.15, 0.35), seat + height * rng.uniform(0.15, 0.35)
    seats = int(rng.integers(1, 4))
    for at in range(seats):
        part = (left + (right - left) * at / seats, left + (right - left) * (at + 1) / seats)
        _cushion(rng, sheet, cloth, (part[0], back, part[1], seat + 0.1 * height))
        _cushion(rng, sheet, cloth, (part[0], seat, part[1], low))
    if rng.uniform() < 0.7:
        arm = (right - left) * rng.uniform(0.05, 0.15)
        for x in (left - arm / 2, right - arm / 2):
            _cushion(rng, sheet, cloth, (x, (back + seat) / 2, x + arm, low + 0.03 * height))
    for _ in range(rng.integers(0, 4)):
        size = (right - left) * rng.uniform(0.12, 0.28)
        x = rng.uniform(left, right - size)
        _cushion(rng, sheet, cloths[rng.integers(len(cloths))], (x, seat - size * rng.uniform(0.5, 1), x + size, seat + size * 0.3))
    return np.array(sheet)


def free_part(rng, photo, cloth, least=0.18):
    """The largest of some boxes drawn by lot that show no cloth; None where all are small."""
    height, width = photo.shape[:2]
    sums = np.pad(cloth.astype(np.int64), ((1, 0), (1, 0))).cumsum(0).cumsum(1)
    best, area = None, least * least
    for _ in range(60):
        w, h = rng.uniform(least, 0.9, 2)
        x, y = rng.uniform(0, 1 - w), rng.uniform(0, 1 - h)
        l, t, r, b = int(x * width), int(y * height), int((x + w) * width), int((y + h) * height)
        if w * h > area and sums[b, r] - sums[t, r] - sums[b, l] + sums[t, l] == 0:
            best, area = photo[t:b, l:r], w * h
    return best
