"""Pictures without person or garment: the river in the morning, glazed bowls on a shelf."""

import math

import bpy
import numpy as np

import camera
import places
import street
from colour import linear_from_lab
from colours import CREAM, HONEY, INK, MOSS, OAT, RIVER, RUST, SAGE, SLATE
from fabric import plain_material
from melt import cloth_mesh


def _shares(index, labs):
    """Shares of the frame by object index: [{slot: null, lab, share}], heaviest first."""
    total = index.size
    rows = [{"slot": None, "lab": list(lab), "share": round(float((index == number).sum()) / total, 4)} for number, lab in labs.items()]
    return sorted((row for row in rows if row["share"] > 0.004), key=lambda row: -row["share"])


def river(path, seed, size):
    """Water, a boat, reeds, the far bank. The sky is the lamp's colour."""
    places.clear()
    labs = {1: (56, -8, -10), 2: (46, -8, 16), 3: MOSS, 4: RIVER, 5: CREAM, 6: OAT, 7: RUST}
    water = street.water(0, -6, 60, labs[1])
    water.pass_index = 1
    street.far_bank(20, seed)
    for thing in bpy.data.objects:
        if thing.name.startswith("bank"):
            thing.pass_index = 2
        elif thing.name.startswith("Icosphere"):
            thing.pass_index = 3
    rng = np.random.default_rng(seed)
    reed = plain_material("reed", linear_from_lab(labs[3]), 0.9, 0.05)
    for _ in range(260):
        x, y = rng.uniform(-2.6, 2.6), rng.uniform(-4.6, -3.2)
        high, bend = rng.uniform(0.35, 0.95), rng.uniform(-0.25, 0.25)
        places.tube("reed", [(x, y, -0.1), (x + bend * 0.3, y, high * 0.6), (x + bend, y, high)], 0.007, reed).pass_index = 3
    hull = plain_material("hull", linear_from_lab(labs[4]), 0.5, 0.3)
    turns = np.linspace(-1, 1, 25)
    points, faces = [], []
    for i, s in enumerate(turns):
        wide = 0.62 * math.sqrt(max(0.0, 1 - abs(s) ** 2.4)) + 0.005
        rise = 0.12 * s * s
        for k in np.linspace(-1, 1, 13):
            points.append((s * 1.9, wide * k, 0.42 * abs(k) ** 1.6 + rise - 0.05))
    for i in range(24):
        for k in range(12):
            faces.append((i * 13 + k, (i + 1) * 13 + k, (i + 1) * 13 + k + 1, i * 13 + k + 1))
    boat = cloth_mesh("boat", points, faces, hull, 4, 0.04)
    boat.rotation_euler = (0.03, 0, 0.5)
    boat.location = (0.35, 0.8, 0.02)
    for x in (-0.6, 0.5):
        seat = street.box((x - 0.12, -0.5, 0.22), (x + 0.12, 0.5, 0.27), labs[6], name="seat")
        seat.pass_index = 6
        seat.parent = boat
    light = street.sun_and_sky(4600, 2.0, 0.8)
    places.camera_at((0, -8.2, 1.9), (0, 4, 0.75), 42)
    camera.prepare(*size, 34)
    index = camera.photograph(path, {"balance": 0.8, "noise": 1.0, "contrast": 0.1, "exposure_stops": -0.1}, light, 86, seed)
    return _shares(index, labs)


def bowls(path, seed, size):
    """Shelves with thrown bowls, jugs and plates in the season's glazes."""
    places.clear()
    labs = {1: (88, 1, 9), 2: (66, 8, 24), 3: OAT, 4: SLATE, 5: RIVER, 6: HONEY, 7: MOSS, 8: CREAM, 9: RUST, 10: INK, 11: SAGE}
    places.wall(labs[1], seed, 0.32).pass_index = 1
    for z in (-0.62, -0.12, 0.38):
        street.box((-1.2, -0.02, z - 0.035), (1.2, 0.32, z), labs[2], 0.6, "shelf").pass_index = 2
    rng = np.random.default_rng(seed)
    glazes = [3, 5, 8, 4, 6, 3, 7, 5, 9, 8, 10, 11]
    number = 0
    for z in (-0.62, -0.12, 0.38):
        x = -0.5
        while x < 0.5:
            shape = ("bowl", "jug", "plate", "cup")[(number * 5 + 1) % 4] if z < 0.3 else ("jug", "bowl")[number % 2]
            wide = {"bowl": 0.1, "jug": 0.075, "plate": 0.12, "cup": 0.055}[shape] * rng.uniform(0.9, 1.15)
            glaze = glazes[number % len(glazes)]
            _pot((x + wide, 0.13 + rng.uniform(-0.02, 0.02), z), shape, wide, labs[glaze], glaze, seed + number)
            x += 2 * wide + rng.uniform(0.015, 0.05)
            number += 1
    _, light = places.light_room("daylight", -1, upright=True)
    places.camera_at((0.1, -2.05, 0.0), (0, 0.1, -0.06), 48)
    camera.prepare(*size, 34)
    index = camera.photograph(path, {"balance": 0.95, "noise": 1.0, "contrast": 0.1}, light, 86, seed)
    return _shares(index, labs)


PROFILES = {
    "bowl": [(0.0, 0.02), (0.45, 0.0), (0.5, 0.03), (0.8, 0.28), (0.97, 0.65), (1.0, 0.95), (0.95, 0.95), (0.9, 0.65), (0.7, 0.32), (0.0, 0.12)],
    "jug": [(0.0, 0.0), (0.75, 0.0), (1.0, 0.7), (0.95, 1.3), (0.6, 1.9), (0.55, 2.3), (0.68, 2.6), (0.62, 2.6), (0.48, 2.3), (0.5, 1.9), (0.0, 0.5)],
    "plate": [(0.0, 0.0), (0.6, 0.0), (0.98, 0.14), (1.0, 0.18), (0.6, 0.06), (0.0, 0.05)],
    "cup": [(0.0, 0.0), (0.8, 0.0), (0.95, 0.3), (1.0, 1.7), (0.94, 1.7), (0.88, 0.3), (0.0, 0.15)],
}


def _pot(place, shape, radius, lab, index, seed):
    """A thrown pot: its profile spun round, with the potter's rings."""
    profile = np.array(PROFILES[shape])
    fine = np.linspace(0, len(profile) - 1, 60)
    radii, heights = np.interp(fine, range(len(profile)), profile[:, 0]), np.interp(fine, range(len(profile)), profile[:, 1])
    kernel = np.ones(5) / 5
    radii[2:-2], heights[2:-2] = np.convolve(radii, kernel, "valid"), np.convolve(heights, kernel, "valid")
    around = 64
    points = [
        (radius * r * (1 + 0.006 * math.sin(h * 30 + seed)) * math.cos(t), radius * r * (1 + 0.006 * math.sin(h * 30 + seed)) * math.sin(t), radius * h)
        for r, h in zip(radii, heights)
        for t in np.linspace(0, 2 * np.pi, around, endpoint=False)
    ]
    faces = [(i * around + k, i * around + (k + 1) % around, (i + 1) * around + (k + 1) % around, (i + 1) * around + k) for i in range(59) for k in range(around)]
    material = plain_material("glaze", linear_from_lab(lab), 0.3, 0.4)
    thing = cloth_mesh("pot", points, faces, material, index)
    thing.location = place
    if shape == "plate":
        thing.rotation_euler = (math.radians(76), 0, 0)
        thing.location = (place[0], place[1] + 0.12, place[2] + radius)
    if shape in ("jug", "cup"):
        handle = [
            (
                place[0] + radius * (0.9 + 0.55 * math.sin(t)),
                place[1],
                place[2] + radius * ((1.5 if shape == "jug" else 0.9) + (0.65 if shape == "jug" else 0.45) * math.cos(t)),
            )
            for t in np.linspace(0.25, math.pi - 0.25, 14)
        ]
        places.tube("handle", handle, radius * 0.12, material).pass_index = index


SCENES = {"river": river, "bowls": bowls}
"""Pictures by name: (path, seed, size) -> [{slot: null, lab, share}]."""
