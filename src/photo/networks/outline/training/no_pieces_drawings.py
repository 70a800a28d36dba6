"""Drawings by lot: stick figures, cartoons with flat fills, things, lines drawn after a photo. Each H x W x 3 bytes."""

import numpy as np
from PIL import Image, ImageDraw
from scipy import ndimage


def colour(rng, low=0.0, high=1.0):
    one = rng.uniform(low, high, 3)
    return tuple(int(255 * c) for c in one.mean() + (one - one.mean()) * rng.uniform(0, 1))


def paper(rng, width, height):
    sheet = Image.new("RGB", (width, height), colour(rng, 0.82, 1.0) if rng.uniform() < 0.75 else colour(rng))
    return sheet, ImageDraw.Draw(sheet)


def ink(rng):
    return colour(rng, 0, 0.25) if rng.uniform() < 0.7 else colour(rng)


def stick_figure(rng, pen, x, y, size, line, fill):
    """A person of strokes, `size` high from (x, y), the head's top."""
    head, hip = size * rng.uniform(0.09, 0.16), y + size * rng.uniform(0.5, 0.66)
    width = max(1, int(size * rng.uniform(0.008, 0.04)))
    neck = y + 2 * head
    pen.ellipse((x - head, y, x + head, neck), outline=line, width=width, fill=fill)
    pen.line((x, neck, x, hip), fill=line, width=width)
    shoulder = neck + size * rng.uniform(0.02, 0.09)
    for side in (-1, 1):
        reach = size * rng.uniform(0.12, 0.28)
        pen.line((x, shoulder, x + side * reach, shoulder + size * rng.uniform(-0.2, 0.3)), fill=line, width=width)
        pen.line((x, hip, x + side * size * rng.uniform(0.04, 0.22), y + size), fill=line, width=width)
    if rng.uniform() < 0.4:
        wide = size * rng.uniform(0.08, 0.2)
        pen.polygon([(x, shoulder), (x + wide, hip + size * 0.1), (x - wide, hip + size * 0.1)], outline=line, fill=fill if rng.uniform() < 0.6 else None)
    if rng.uniform() < 0.4:
        for side in (-1, 1):
            pen.ellipse((x + side * head * 0.4 - width, y + head * 0.8 - width, x + side * head * 0.4 + width, y + head * 0.8 + width), fill=line)
        pen.arc((x - head * 0.5, y + head * 0.7, x + head * 0.5, y + head * 1.6), 20, 160, fill=line, width=width)


def stick_figures(rng, width, height):
    sheet, pen = paper(rng, width, height)
    count = rng.choice([1, 1, 1, 2, 3, 6])
    line = ink(rng)
    for at in range(count):
        size = height * rng.uniform(0.45, 0.92) * (1 if count < 3 else 0.6)
        x = width * (at + 0.5 + rng.uniform(-0.15, 0.15)) / count
        stick_figure(rng, pen, x, (height - size) * rng.uniform(0.2, 0.8), size, line if rng.uniform() < 0.8 else ink(rng), colour(rng) if rng.uniform() < 0.4 else None)
    return np.array(sheet)


def _flat_person(rng, pen, x, y, size, line, width):
    """A person of flat shapes: round head, hair, a body of one colour, limbs."""
    skin, hair = colour(rng, 0.4, 0.95), colour(rng, 0, 0.6)
    head = size * rng.uniform(0.1, 0.2)
    neck = y + 2 * head
    hip = neck + (size - 2 * head) * rng.uniform(0.4, 0.7)
    wide = head * rng.uniform(0.7, 1.4)
    outline = {"outline": line, "width": width} if width else {}
    for side in (-1, 1):
        pen.line((x + side * wide * 0.4, hip, x + side * wide * 0.6, y + size), fill=colour(rng, 0, 0.6), width=max(2, int(wide * 0.5)))
        pen.line((x + side * wide * 0.8, neck + head * 0.3, x + side * wide * rng.uniform(1.2, 2.4), hip - head * rng.uniform(-0.5, 1.5)), fill=skin, width=max(2, int(wide * 0.35)))
    if rng.uniform() < 0.5:
        pen.polygon([(x - wide * 0.6, neck), (x + wide * 0.6, neck), (x + wide * 1.5, hip + head), (x - wide * 1.5, hip + head)], fill=colour(rng), **outline)
    else:
        pen.rounded_rectangle((x - wide, neck, x + wide, hip), radius=wide * 0.4, fill=colour(rng), **outline)
    pen.ellipse((x - head, y, x + head, neck), fill=skin, **outline)
    pen.pieslice((x - head * 1.05, y - head * 0.1, x + head * 1.05, neck), 180, 360, fill=hair)
    for side in (-1, 1):
        pen.ellipse((x + side * head * 0.4 - 2, y + head * 1.05 - 2, x + side * head * 0.4 + 3, y + head * 1.05 + 3), fill=line)
    pen.arc((x - head * 0.45, y + head * 1.0, x + head * 0.45, y + head * 1.6), 10, 170, fill=line, width=max(1, width))


def face(rng, width, height):
    """A drawn head that fills the sheet: hair, eyes, nose, mouth, now and then a neck."""
    sheet, pen = paper(rng, width, height)
    skin, hair, line = colour(rng, 0.4, 0.95), colour(rng, 0, 0.6), colour(rng, 0, 0.25)
    tall = min(height, 1.4 * width) * rng.uniform(0.28, 0.42)
    wide = tall * rng.uniform(0.65, 0.95)
    x, y = width * rng.uniform(0.42, 0.58), height * rng.uniform(0.45, 0.58)
    outline = {"outline": line, "width": int(rng.integers(1, 6))} if rng.uniform() < 0.5 else {}
    if rng.uniform() < 0.5:
        pen.ellipse((x - wide * 1.25, y - tall * 1.2, x + wide * 1.25, y + tall * rng.uniform(0.2, 1.3)), fill=hair)
    if rng.uniform() < 0.5:
        pen.rectangle((x - wide * 0.4, y + tall * 0.6, x + wide * 0.4, height), fill=skin)
    pen.ellipse((x - wide, y - tall, x + wide, y + tall), fill=skin, **outline)
    if rng.uniform() < 0.8:
        pen.chord((x - wide * 1.05, y - tall * 1.08, x + wide * 1.05, y + tall * rng.uniform(0.3, 1)), 180 + rng.uniform(-10, 20), 360 + rng.uniform(-20, 10), fill=hair)
    for side in (-1, 1):
        left, top, size = x + side * wide * 0.4, y - tall * rng.uniform(0.05, 0.2), wide * rng.uniform(0.06, 0.16)
        pen.ellipse((left - size, top - size * 0.7, left + size, top + size * 0.7), fill=(250, 250, 250) if rng.uniform() < 0.4 else line)
        pen.ellipse((left - size * 0.4, top - size * 0.4, left + size * 0.4, top + size * 0.4), fill=line)
        pen.line((left - size * 1.3, top - size * 2, left + size * 1.3, top - size * 2), fill=hair, width=3)
    pen.line((x, y, x - wide * 0.1, y + tall * 0.25), fill=line, width=2)
    pen.arc((x - wide * 0.4, y + tall * 0.3, x + wide * 0.4, y + tall * 0.7), 10, 170, fill=colour(rng, 0.1, 0.6), width=int(rng.integers(2, 10)))
    return np.array(sheet)


def _thing(rng, pen, width, height, line):
    """A house, a tree, a sun, a hill: somewhere."""
    x, y, size = rng.uniform(0, width), rng.uniform(0.2, 0.9) * height, rng.uniform(0.1, 0.4) * min(width, height)
    kind = rng.integers(4)
    if kind == 0:
        pen.rectangle((x - size / 2, y - size, x + size / 2, y), fill=colour(rng), outline=line)
        pen.polygon([(x - size * 0.6, y - size), (x + size * 0.6, y - size), (x, y - size * 1.6)], fill=colour(rng), outline=line)
    elif kind == 1:
        pen.rectangle((x - size * 0.08, y - size, x + size * 0.08, y), fill=colour(rng, 0.1, 0.5))
        pen.ellipse((x - size * 0.4, y - size * 1.5, x + size * 0.4, y - size * 0.6), fill=colour(rng), outline=line)
    elif kind == 2:
        pen.ellipse((x - size / 3, y - height * 0.2 - size / 3, x + size / 3, y - height * 0.2 + size / 3), fill=colour(rng, 0.5, 1))
    else:
        pen.pieslice((x - 2 * size, y, x + 2 * size, y + 2 * size), 180, 360, fill=colour(rng), outline=line)


def cartoon(rng, width, height):
    sheet, pen = paper(rng, width, height)
    line = colour(rng, 0, 0.2)
    if rng.uniform() < 0.5:
        pen.rectangle((0, height * rng.uniform(0.5, 0.85), width, height), fill=colour(rng))
    for _ in range(rng.integers(0, 5)):
        _thing(rng, pen, width, height, line)
    count = rng.choice([0, 1, 1, 2, 3])
    for at in range(count):
        size = height * rng.uniform(0.5, 0.95) * (1 if count < 3 else 0.7)
        _flat_person(rng, pen, width * (at + 0.5) / count, (height - size) * rng.uniform(0.3, 0.9), size, line, int(rng.choice([0, 2, 4])))
    if count == 0:
        for _ in range(3):
            _thing(rng, pen, width, height, line)
    return np.array(sheet)


def _lines_of(rng, grey):
    """Edges as dark strokes on white, 0..1."""
    soft = ndimage.gaussian_filter(grey.astype(float), rng.uniform(1.0, 2.5))
    edge = np.hypot(ndimage.sobel(soft, 0), ndimage.sobel(soft, 1))
    strokes = np.clip(edge / np.percentile(edge, rng.uniform(93, 98)), 0, 1) ** rng.uniform(1, 3)
    return 1 - ndimage.gaussian_filter(strokes, rng.uniform(0.3, 1))


def line_drawing(rng, photo, cloth):
    """A photo as a pencil would draw it: its edges on paper, or only the outline of its cloth."""
    grey = photo.mean(-1) if rng.uniform() < 0.6 else 255.0 * ndimage.gaussian_filter(cloth.astype(float), 1)
    lines = _lines_of(rng, grey)[..., None]
    sheet, stroke = np.array(colour(rng, 0.85, 1.0)), np.array(ink(rng))
    return np.clip(lines * sheet + (1 - lines) * stroke, 0, 255).astype("uint8")


def flat_fills(rng, labels):
    """An outfit's label map in flat colours, with or without dark contours: a drawing of somebody."""
    labels = ndimage.median_filter(labels, 7)
    table = np.array([colour(rng) for _ in range(int(labels.max()) + 1)], "uint8")
    table[0] = colour(rng, 0.7, 1.0)
    out = table[labels]
    if rng.uniform() < 0.6:
        width = int(rng.integers(1, 4))
        edge = ndimage.grey_dilation(labels, (width + 1,) * 2) != ndimage.grey_erosion(labels, (width + 1,) * 2)
        out[edge] = colour(rng, 0, 0.2)
    return out
