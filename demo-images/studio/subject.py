"""One garment put somewhere and photographed: on a floor or bed from above, on a hanger before a wall, shoes from the front."""

import math

import numpy as np

import camera
import places
import shoes
from colour import linear_from_lab
from fabric import cloth_material, plain_material

CLOTH = 1
"""Object index of the garment in masks."""


def _materials(look, trim, seed):
    cloth, truth = cloth_material("cloth", look, seed)
    first = np.clip(linear_from_lab(look["labs"][0]), 0, 1)
    inside = plain_material("inside", first * 0.45, 0.95, 0.05)
    return {"cloth": cloth, "inside": inside, "trim": plain_material("trim", linear_from_lab(trim), 0.4, 0.4)}, truth


def lay_pieces(pieces, look, seed=1, trim=(80, 2, 12), turn=0.0, at=(0, 0)):
    """Builds flat pieces about `at`, turned by `turn` degrees. Returns (objects, true colours, (width, height))."""
    materials, truth = _materials(look, trim, seed)
    points = np.array([p for piece in pieces for p in piece.outline])
    low, high = points.min(axis=0), points.max(axis=0)
    middle = (low + high) / 2
    objects = []
    angle = math.radians(turn)
    for i, piece in enumerate(pieces):
        thing = piece.build(f"piece {i}", materials[piece.part])
        thing.pass_index = CLOTH
        thing.rotation_euler = (0, 0, angle)
        dx, dy = -middle
        thing.location = (at[0] + dx * math.cos(angle) - dy * math.sin(angle), at[1] + dx * math.sin(angle) + dy * math.cos(angle), 0)
        objects.append(thing)
    return objects, truth, tuple(high - low)


def stand_shoes(kind, look, seed=1, sole=(30, 2, 4), lace=(85, 1, 8), at=(0, 0), turn=180.0):
    """A pair of shoes on the floor, toes towards the camera. Returns (objects, true colours)."""
    materials, truth = _materials(look, (80, 2, 12), seed)
    made = shoes.pair(
        kind, materials["cloth"], plain_material("sole", linear_from_lab(sole), 0.7, 0.2), materials["inside"], plain_material("lace", linear_from_lab(lace), 0.9, 0.05)
    )
    angle = math.radians(turn)
    for thing in made:
        thing.pass_index = CLOTH
        x, y, z = thing.location
        thing.location = (at[0] + x * math.cos(angle) - y * math.sin(angle), at[1] + x * math.sin(angle) + y * math.cos(angle), z)
        thing.rotation_euler = (0, 0, thing.rotation_euler[2] + angle)
    return made, truth


def hang(objects, height):
    """Turns laid pieces upright before a wall and puts a wooden hanger in them. `height` of the garment in metres."""
    for thing in objects:
        x, y, _ = thing.location
        thing.rotation_euler = (math.pi / 2, 0, 0)
        thing.location = (x, -0.035, y)
    wood = plain_material("wood", linear_from_lab((58, 14, 30)), 0.5, 0.3)
    steel = plain_material("steel", (0.5, 0.5, 0.5), 0.3, 0.5, 0.9)
    top = height / 2
    bar = [(x, -0.045, top - 0.012 - 0.33 * abs(x) ** 1.5) for x in np.linspace(-0.15, 0.15, 15)]
    places.tube("hanger", bar, 0.008, wood)
    hook = [(0, -0.045, top - 0.012), (0, -0.045, top + 0.045)] + [
        (0.022 - 0.022 * math.cos(t), -0.045, top + 0.045 + 0.024 * math.sin(t)) for t in np.linspace(0, math.pi * 1.15, 12)
    ]
    places.tube("hook", hook, 0.0022, steel)
    rail = plain_material("rail", linear_from_lab((35, 4, 6)), 0.5, 0.3)
    places.tube("rail", [(-2, -0.05, top + 0.06), (2, -0.05, top + 0.06)], 0.011, rail)


def frame_flat(width, height, aspect=4 / 3, margin=1.12, tilt=0.16, lens=30, roll=0.0):
    """Camera above the origin that takes in width x height metres."""
    need = max(height * margin, width * margin * aspect)
    distance = need * lens / 36
    places.camera_at((0, -tilt * distance, distance), (0, 0, 0), lens, roll=roll)


def frame_upright(width, height, aspect=4 / 3, margin=1.14, lens=34, side=0.1):
    """Camera before a hanging garment."""
    distance = max(height * margin, width * margin * aspect) * lens / 36
    places.camera_at((side * distance, -distance, 0.02), (0, 0, 0.02), lens)


def photograph_garment(path, spec, size=(600, 800), samples=40, quality=86):
    """
    One garment's photo from its spec: `pieces` (flat) or `shoes` (kind), `look`, `lamp`, `floor` or `wall`, `camera` settings,
    `seed`, `turn`. Returns {truth, kelvin, light, index}.
    """
    places.clear()
    seed = spec["seed"]
    upright = "wall" in spec
    if upright:
        places.wall(spec["wall"], seed)
    else:
        places.FLOORS[spec["floor"]](seed)
    if "shoes" in spec:
        _, truth = stand_shoes(spec["shoes"], spec["look"], seed, **spec.get("shoe_colours", {}))
        tall = spec["shoes"] in ("tall", "ankle")
        distance = 0.46 if not tall else 0.56 if spec["shoes"] == "ankle" else 0.74
        places.camera_at((0.16, -distance * 0.72, distance * 0.9), (0, 0.0, 0.12 if spec["shoes"] == "tall" else 0.04), 36)
    else:
        objects, truth, (width, height) = lay_pieces(spec["pieces"], spec["look"], seed, spec.get("trim", (80, 2, 12)), 0 if upright else spec.get("turn", 0))
        if upright:
            hang(objects, height)
            frame_upright(width, height)
        else:
            frame_flat(width, height, size[1] / size[0], spec.get("margin", 1.12), roll=math.radians(spec.get("roll", 0)))
    kelvin, lamp = places.light_room(spec["lamp"], spec.get("side", -1), upright)
    camera.prepare(*size, samples)
    index = camera.photograph(path, spec["camera"], lamp, quality, seed)
    return {"truth": truth, "kelvin": kelvin, "light": lamp, "index": index}
