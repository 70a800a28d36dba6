"""Drawn cloth: stripes, checks, prints and melange laid over photos of plain garments, so that folds, light and noise stay real."""

import numpy as np
from PIL import Image, ImageDraw, ImageFont
from scipy import ndimage


def _smooth(rng, shape, size):
    """Even noise of about `size` pixels, mean 0, deviation 1."""
    sizes = size if np.ndim(size) else (size, size)
    noise = ndimage.gaussian_filter(rng.standard_normal(shape), sizes, mode="wrap")
    return noise / (noise.std() + 1e-9)


def _across(rng, shape, degrees=None, bend=4.0):
    """Distance in pixels across a direction, bent a little as cloth lies."""
    v, u = np.mgrid[: shape[0], : shape[1]]
    angle = np.deg2rad(rng.uniform(0, 180) if degrees is None else degrees)
    return u * np.cos(angle) + v * np.sin(angle) + _smooth(rng, shape, rng.uniform(18, 40)) * rng.uniform(0, bend)


def _bands(rng, across, period, count):
    """Index of the band, 0 .. count - 1, at each pixel: bands of random widths that repeat."""
    widths = rng.uniform(0.35, 1.0, count)
    edges = np.cumsum(widths / widths.sum())
    place = (across / period + rng.uniform()) % 1
    return np.minimum(np.searchsorted(edges, place), count - 1)


def _upright(rng):
    return (0 if rng.uniform() < 0.5 else 90) + rng.normal(0, 8)


def striped(rng, shape):
    """Which of 2 to 4 colours each pixel has, softly; now and then pinstripes, or a yoke or hem without stripes."""
    if rng.uniform() < 0.25:
        period = np.exp(rng.uniform(np.log(3.5), np.log(18)))
        place = (_across(rng, shape, rng.choice([0, 90]) + rng.normal(0, 6)) / period + rng.uniform()) % 1
        line = max(rng.uniform(0.12, 0.3), 0.8 / period)
        stripe = np.clip((line / 2 - np.abs(place - 0.5)) * period + 0.5, 0, 1)
        return np.stack([1 - stripe, stripe], -1)
    count = rng.choice([2, 2, 2, 3, 4])
    band = _bands(rng, _across(rng, shape, _upright(rng)), np.exp(rng.uniform(np.log(4), np.log(60))), count)
    if rng.uniform() < 0.25:
        height = shape[0] * rng.uniform(0.1, 0.45)
        rows = np.arange(shape[0])[:, None]
        band = np.where(rows < height if rng.uniform() < 0.5 else rows > shape[0] - height, 0, band)
    return np.stack([band == k for k in range(count)], -1).astype(float)


def checked(rng, shape):
    """Two sets of bands woven into each other: the mean of both at each pixel."""
    first = _upright(rng) if rng.uniform() < 0.8 else 45 + rng.normal(0, 8)
    period = np.exp(rng.uniform(np.log(5), np.log(60)))
    count = rng.choice([2, 2, 3])
    one = _bands(rng, _across(rng, shape, first), period, count)
    other = _bands(rng, _across(rng, shape, first + 90 + rng.normal(0, 3)), period * rng.uniform(0.85, 1.2), count)
    weight = rng.uniform(0.4, 0.6)
    return sum(w * np.stack([band == k for k in range(count)], -1) for w, band in ((weight, one), (1 - weight, other)))


def _stamps(rng, shape, size, share):
    """Motifs of one kind strewn over the cloth: dots, flowers, leaves or blots; 1 inside."""
    out = np.zeros(shape)
    petals, depth = rng.integers(0, 7), rng.uniform(0, 0.5)
    stretch = rng.uniform(0.45, 1)
    grid = rng.uniform() < 0.35
    step = size * np.sqrt(1 / share) * 1.5
    spots = [(y, x + (step / 2 if round(y / step) % 2 else 0)) for y in np.arange(0, shape[0], step) for x in np.arange(0, shape[1], step)]
    for y, x in spots:
        if not grid:
            y, x = y + rng.normal(0, step * 0.35), x + rng.normal(0, step * 0.35)
        r = size * rng.uniform(0.7, 1.3)
        turn = rng.uniform(0, 2 * np.pi) if not grid else 0.0
        t, b, l, rr = int(max(0, y - 2 * r)), int(min(shape[0], y + 2 * r + 1)), int(max(0, x - 2 * r)), int(min(shape[1], x + 2 * r + 1))
        if t >= b or l >= rr:
            continue
        v, u = np.mgrid[t:b, l:rr]
        c, s = np.cos(turn), np.sin(turn)
        p, q = (u - x) * c + (v - y) * s, ((v - y) * c - (u - x) * s) / stretch
        reach = r * (1 + depth * np.cos(petals * np.arctan2(q, p)))
        out[t:b, l:rr] = np.maximum(out[t:b, l:rr], np.clip(reach - np.hypot(p, q) + 0.5, 0, 1))
    return out


def lettering(rng, shape, y, x, height, width):
    """Some rows of letters in a box around (y, x), 1 where there is ink."""
    rows = rng.integers(1, 4)
    page = Image.new("L", (shape[1], shape[0]))
    pen = ImageDraw.Draw(page)
    for row in range(rows):
        text = "".join(chr(rng.integers(65, 91) + (32 if rng.uniform() < 0.3 else 0)) for _ in range(rng.integers(3, 10)))
        font = ImageFont.load_default(size=max(5, height / rows))
        run = pen.textlength(text, font)
        font = ImageFont.load_default(size=max(5, height / rows * min(1, width / run)))
        pen.text((x, y + (row - (rows - 1) / 2) * height / rows), text, 255, font, anchor="mm", stroke_width=int(rng.uniform() < 0.3))
    return np.array(page.rotate(rng.normal(0, 4), Image.BILINEAR)) / 255


def _on_chest(rng, shape):
    """One picture, or lettering, or both, on more than about a twentieth of the garment."""
    v, u = np.mgrid[: shape[0], : shape[1]]
    y, x = shape[0] * rng.uniform(0.28, 0.6), shape[1] * rng.uniform(0.35, 0.65)
    h, w = shape[0] * rng.uniform(0.08, 0.22), shape[1] * rng.uniform(0.12, 0.28)
    if rng.uniform() < 0.45:
        return [lettering(rng, shape, y, x, h * rng.uniform(0.8, 2), w * 2)]
    field = (np.abs(v - y) < h) & (np.abs(u - x) < w) if rng.uniform() < 0.4 else np.hypot((v - y) / h, (u - x) / w) < 1
    layers = []
    for _ in range(rng.choice([1, 2, 3])):
        noise = _smooth(rng, shape, np.exp(rng.uniform(np.log(1.2), np.log(8))))
        layers.append(field * np.clip(noise * 5 + rng.uniform(-2, 2), 0, 1))
    if rng.uniform() < 0.3:
        layers.insert(0, lettering(rng, shape, y + h * 1.3, x, h * 0.5, w * 2))
    return layers


def badge(rng, shape):
    """A mark on less than a twentieth of the garment, 1 inside: the cloth stays plain."""
    y, x = shape[0] * rng.uniform(0.2, 0.8), shape[1] * rng.uniform(0.25, 0.75)
    size = np.sqrt(shape[0] * shape[1]) * rng.uniform(0.02, 0.06)
    if rng.uniform() < 0.5:
        return lettering(rng, shape, y, x, size, size * 2.5)
    v, u = np.mgrid[: shape[0], : shape[1]]
    return np.clip(size * (1 + 0.3 * np.cos(rng.integers(0, 6) * np.arctan2(v - y, u - x))) - np.hypot(v - y, u - x) + 0.5, 0, 1)


def printed(rng, shape):
    kind = rng.uniform()
    if kind < 0.5:
        size = np.exp(rng.uniform(np.log(1.6), np.log(22)))
        layers = [_stamps(rng, shape, size * rng.uniform(0.5, 1), rng.uniform(0.15, 0.8)) for _ in range(rng.choice([1, 1, 2, 3]))]
    elif kind < 0.7:
        size = np.exp(rng.uniform(np.log(2), np.log(16)))
        noise = _smooth(rng, shape, (size, size * rng.choice([1, 1, 2, 0.5])))
        layers = [np.clip((noise - rng.uniform(-0.3, 0.8)) * 6, 0, 1)]
        if rng.uniform() < 0.5:
            layers.append(np.clip((_smooth(rng, shape, size) - rng.uniform(0.2, 0.9)) * 6, 0, 1))
    else:
        layers = _on_chest(rng, shape)
    parts, left = [], np.ones(shape)
    for layer in layers:
        parts.append(left * layer)
        left = left * (1 - layer)
    return np.stack([left, *parts], -1)


def mottled(rng, shape):
    size = np.exp(rng.uniform(np.log(0.5), np.log(2.2)))
    long = size * rng.choice([1, 1, 2, 4, 8])
    noise = _smooth(rng, shape, (size, long) if rng.uniform() < 0.5 else (long, size))
    if rng.uniform() < 0.4:
        noise = (noise + _smooth(rng, shape, rng.uniform(4, 30)) * rng.uniform(0.3, 1.2)) / 1.3
    part = np.clip(0.5 + noise * rng.uniform(0.15, 0.6), 0, 1)
    return np.stack([1 - part, part], -1)


DRAW = {"striped": striped, "checked": checked, "printed": printed, "mottled": mottled}


def _colours(rng, pattern, count, first):
    """Colours, 0..1 RGB: the garment's own first, the others clearly apart (or, for melange, near)."""
    out = [first]
    while len(out) < count:
        if pattern == "mottled":
            shift = rng.uniform(0.07, 0.28) * rng.choice([-1, 1])
            one = np.clip(first * (1 - abs(shift)) + (shift > 0) * abs(shift) + rng.normal(0, 0.02, 3), 0.02, 0.98)
        else:
            one = rng.uniform(0.03, 0.97, 3)
            if rng.uniform() < 0.4:
                one = np.full(3, one[0]) + rng.normal(0, 0.02, 3)
            if rng.uniform() < 0.3:
                one = np.clip(first + rng.normal(0, 0.13, 3), 0.02, 0.98)
        if pattern == "mottled" or min(np.abs(one - c).max() for c in out) > 0.1:
            out.append(np.clip(one, 0.02, 0.98))
    return np.array(out)


def drawn_over(rng, crop, pattern):
    """`crop` H x W x 4 bytes of a plain garment (fourth: cloth); the same garment in another cloth."""
    rgb, cloth = crop[..., :3] / 255, crop[..., 3] > 0
    shape = cloth.shape
    mean = rgb[cloth].mean(0)
    shares = DRAW[pattern](rng, shape)
    if rng.uniform() < 0.5:
        first = mean
    else:
        first = rng.uniform(0.05, 0.95, 3)
        first = first.mean() + (first - first.mean()) * rng.uniform(0.2, 1)
    colours = _colours(rng, pattern, shares.shape[-1], first)
    albedo = shares @ colours
    light = (rgb.mean(-1) + 0.04) / (mean.mean() + 0.04)
    # A dark or bright garment shows its folds differently: bring the light's spread to that of ordinary cloth.
    spread = light[cloth].std() + 1e-6
    light = np.maximum(0.1, 1 + (light - 1) * min(1.6, max(0.4, rng.uniform(0.06, 0.16) / spread)))
    out = np.clip(albedo * light[..., None] ** rng.uniform(0.8, 1.2), 0, 1)
    soft = rng.uniform(0.25, 0.8)
    out = ndimage.gaussian_filter(out, (soft, soft, 0)) + rng.normal(0, rng.uniform(0.002, 0.012), out.shape)
    out = np.where(cloth[..., None], np.clip(out, 0, 1), rgb)
    return np.concatenate([(out * 255).round(), crop[..., 3:]], -1).astype("uint8")
