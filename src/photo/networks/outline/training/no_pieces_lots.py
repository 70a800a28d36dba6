"""
What the score of "nothing to tell piece by piece" learns from: pictures with clothes, near and far, sharp and blurred, and pictures without a piece, each sort a lot.
"""

import io
import json
import pathlib

import numpy as np
from PIL import Image
from scipy import ndimage

import no_pieces_drawings as drawings
import no_pieces_pictures as made
from garment_archives import first_archive, second_archive
from photos import members, photo_of

CLASSES = ["background", "top", "outer", "bottom", "full", "legwear", "shoes", "accessory", "skin", "hair"]
# Outlines of less or more of the picture are of something else; a bust or a part of an outfit shows at least so much cloth, a face at most so much.
OUTLINED = (0.04, 0.85)
LEAST_CLOTH, MOST_BESIDE_FACE = 0.2, 0.25
# Share of a photo from which a bag or shoe is cut out.
LEAST_THING = 0.012


def worn_things(labels):
    """Marks of bags, scarves and hats, shoes and legwear: what hardly any photo of the archives shows by itself."""
    for slot in ("legwear", "shoes", "accessory"):
        regions, count = ndimage.label(labels == CLASSES.index(slot))
        for area, at in zip(ndimage.sum_labels(labels > 0, regions, range(1, count + 1)), range(1, count + 1)):
            if area > LEAST_THING * labels.size:
                yield regions == at


class Sources:
    """Photos by lot: `outfits` (photo, classes), `tagged` photos, `garments` (photo, cloth), and what is cut out of these."""

    def __init__(self, outfits, garments, garments_more, outlines, kept):
        part = "kept" if kept else "train"
        files = {name.split("/", 1)[1]: data for name, data in members(outfits).items()}
        index = json.loads(files["index.json"])
        class_of = np.array([CLASSES.index(slot) for _, slot in index["kinds"]], "uint8")
        labels = lambda name: class_of[np.array(Image.open(io.BytesIO(files[f"label/{name}.png"])))]
        self.outfits = [(photo_of(files[f"photo/{name}.webp"]), labels(name)) for name in index["val" if kept else "train"]]
        names = index["tag_val"] if kept else [name for name in index["tags"] if name not in set(index["tag_val"])]
        self.tagged = [photo_of(files[f"tagged/{name}.webp"]) for name in names]
        drawn = {pathlib.PurePath(name).stem: data for name, data in members(outlines).items()}
        rows = [row for archive in (first_archive(garments), second_archive(garments_more)) for row in archive[part]]
        shown = [(photo_of(data), np.array(Image.open(io.BytesIO(drawn[name])).convert("L")) > 127) for name, data, _ in rows]
        self.garments = [(photo, cloth) for photo, cloth in shown if OUTLINED[0] < cloth.mean() < OUTLINED[1]]
        rng = np.random.default_rng(1)
        self.people = [made.cut_out(photo, labels > 0) for photo, labels in self.outfits if (labels > 0).mean() > 0.05]
        self.worn_things = [made.cut_out(photo, region) for photo, labels in self.outfits for region in worn_things(labels)]
        self.cut_out = [made.cut_out(photo, cloth) for photo, cloth in self.garments]
        around = [made.free_part(rng, photo, ndimage.binary_dilation(cloth, iterations=6), 0.13) for photo, cloth in self.garments]
        self.homes = [one for one in around if one is not None]
        self.streets = [one for one in (made.free_part(rng, photo, labels > 0) for photo, labels in self.outfits) if one is not None]
        self.cloths = [one for one in (made.free_part(rng, photo, ~cloth, 0.15) for photo, cloth in self.garments) if one is not None]


def any_of(rng, things):
    return things[rng.integers(len(things))]


def size(rng):
    return tuple(int(one) for one in rng.integers(360, 640, 2))


def blurred(rng, photo):
    """As a small part of a photo looks when it is enlarged."""
    height, width = photo.shape[:2]
    scale = rng.uniform(0.12, 0.5)
    small = Image.fromarray(photo).resize((max(8, int(width * scale)), max(8, int(height * scale))), Image.BILINEAR)
    return np.array(small.resize((width, height), Image.BICUBIC))


def _sometimes_blurred(rng, photo, share=0.35):
    return blurred(rng, photo) if rng.uniform() < share else photo


def outfit_part(rng, of):
    """A part of a street photo with enough cloth in it; None where the part drawn has less."""
    photo, labels = any_of(rng, of.outfits)
    height, width = labels.shape
    wide, tall = width * rng.uniform(0.3, 0.95), height * rng.uniform(0.3, 0.95)
    left, top = rng.uniform(0, width - wide), rng.uniform(0, height - tall)
    box = (left, top, left + wide, top + tall)
    return _sometimes_blurred(rng, made.cropped(photo, *box)) if made.is_cloth(made.cropped(labels, *box)).mean() > LEAST_CLOTH else None


def bust(rng, of):
    """Head and shoulders, or down to the hips."""
    found = made.head_box(*any_of(rng, of.outfits), rng, (2.2, 4.5))
    if found is None or found[1] < LEAST_CLOTH:
        return None
    return _sometimes_blurred(rng, found[0])


def face(rng, of):
    found = made.head_box(*any_of(rng, of.outfits), rng, (0.6, 1.7))
    return found[0] if found is not None and found[1] < MOST_BESIDE_FACE else None


def garment_near(rng, of):
    """A garment that fills the frame or is cut by it."""
    photo, cloth = any_of(rng, of.garments)
    rows, columns = (np.where(cloth.any(axis))[0][[0, -1]] for axis in (1, 0))
    wide, tall = (columns[1] - columns[0]) * rng.uniform(0.5, 1.1), (rows[1] - rows[0]) * rng.uniform(0.5, 1.1)
    left, top = rng.uniform(columns[0], max(columns[0] + 1, columns[1] - wide)), rng.uniform(rows[0], max(rows[0] + 1, rows[1] - tall))
    box = (max(0, left), max(0, top), min(cloth.shape[1], left + wide), min(cloth.shape[0], top + tall))
    part = made.cropped(cloth, *box)
    return _sometimes_blurred(rng, made.cropped(photo, *box)) if min(part.shape) > 20 and 0.3 < part.mean() < 0.88 else None


def _sheet(rng, of, width, height):
    """A plain ground, or one of somebody's home."""
    if rng.uniform() < 0.5:
        return Image.fromarray(made.tile_of(any_of(rng, of.homes), width, height))
    return Image.new("RGB", (width, height), (255, 255, 255) if rng.uniform() < 0.5 else drawings.colour(rng, 0.5, 1))


def side_by_side(rng, of, pieces, count):
    """So many cut-outs, each whole in its cell, on one ground."""
    width, height = size(rng)
    sheet = _sheet(rng, of, width, height)
    columns = 1 if count == 1 or (count == 2 and rng.uniform() < 0.5) else 2 if count < 5 else 3
    wide, tall = width / columns, height / -(-count // columns)
    for at in range(count):
        piece = any_of(rng, pieces)
        scale = min(wide / piece.shape[1], tall / piece.shape[0]) * rng.uniform(0.6, 1)
        w, h = piece.shape[1] * scale, piece.shape[0] * scale
        made.pasted(sheet, piece, (at % columns + 0.5) * wide - w / 2, (at // columns + 0.5) * tall - h / 2, w, h)
    return np.array(sheet)


def few_people(rng, of):
    width, height = size(rng)
    sheet = Image.fromarray(any_of(rng, of.streets)).resize((width, height))
    count = int(rng.integers(2, 4))
    for at in range(count):
        piece = any_of(rng, of.people)
        tall = height * rng.uniform(0.7, 0.95)
        wide = tall * piece.shape[1] / piece.shape[0]
        made.pasted(sheet, piece, (at + 0.5) * width / count - wide / 2, height - tall - rng.uniform(0, 0.05) * height, wide, tall)
    return np.array(sheet)


def line_drawing(rng, of):
    photo, what = any_of(rng, of.outfits if rng.uniform() < 0.5 else of.garments)
    return drawings.line_drawing(rng, photo, what > 0)


def _photos(things):
    return [thing[0] for thing in things]


# Sorts of pictures: whether their pieces may be told, how many to learn from, and how one is made. Each draws by its place in the list.
LOTS = {
    "outfits": (True, 240, lambda rng, of: any_of(rng, of.outfits)[0]),
    "tagged outfits": (True, 210, lambda rng, of: any_of(rng, of.tagged)),
    "garments": (True, 900, lambda rng, of: any_of(rng, of.garments)[0]),
    "parts of outfits": (True, 300, outfit_part),
    "busts": (True, 220, bust),
    "garments near": (True, 450, garment_near),
    "garments blurred": (True, 90, lambda rng, of: blurred(rng, any_of(rng, of.garments)[0])),
    "outfits blurred": (True, 60, lambda rng, of: blurred(rng, any_of(rng, of.outfits)[0])),
    "one cut out": (True, 220, lambda rng, of: side_by_side(rng, of, of.cut_out if rng.uniform() < 0.6 else of.people, 1)),
    "flat-lays": (True, 350, lambda rng, of: side_by_side(rng, of, of.cut_out, int(rng.integers(2, 8)))),
    "two or three people": (True, 60, few_people),
    "faces": (False, 330, face),
    "crowds": (False, 120, lambda rng, of: made.crowd(rng, of.people, any_of(rng, of.streets), *size(rng))),
    "photos of people side by side": (False, 50, lambda rng, of: made.tiled(rng, _photos(of.outfits), *size(rng))),
    "rails": (False, 120, lambda rng, of: made.rail(rng, of.cut_out, any_of(rng, of.homes if rng.uniform() < 0.7 else of.streets), *size(rng))),
    "photos of garments side by side": (False, 70, lambda rng, of: made.shelf(rng, _photos(of.garments), *size(rng))),
    "stick figures": (False, 120, lambda rng, of: drawings.stick_figures(rng, *size(rng))),
    "cartoons": (False, 130, lambda rng, of: drawings.cartoon(rng, *size(rng))),
    "line drawings": (False, 130, line_drawing),
    "drawings in flat colours": (False, 90, lambda rng, of: drawings.flat_fills(rng, any_of(rng, of.outfits)[1])),
    "sofas and beds": (False, 190, lambda rng, of: made.sofa(rng, of.cloths if rng.uniform() < 0.75 else of.homes, any_of(rng, of.homes), any_of(rng, of.homes + of.streets), *size(rng))),
    "grounds of homes": (False, 180, lambda rng, of: any_of(rng, of.homes)),
    "streets": (False, 130, lambda rng, of: any_of(rng, of.streets)),
    "drawn faces": (False, 120, lambda rng, of: drawings.face(rng, *size(rng))),
    "worn things cut out": (True, 300, lambda rng, of: side_by_side(rng, of, of.worn_things, 1)),
}
