"""Clothes on the figure: each cut is a function that dresses it; `wear` looks the cut up."""

import math
from dataclasses import dataclass, field

import bpy
import numpy as np

import shoes
from colour import linear_from_lab
from fabric import cloth_material, plain_material
from figure import arms, legs, torso
from melt import ball, cloth_mesh, cloth_wrinkles, limb, loft, melted
from places import tube

SLOT_INDEX = {"top": 1, "outer": 2, "bottom": 3, "full": 4, "legwear": 5, "shoes": 6, "accessory": 7}
"""Object index of each slot's cloth in masks."""


@dataclass
class Dressing:
    """What a cut needs to know: joints, cut, cloth and its inside, object index, seed, and the cut's own options."""

    joints: dict
    cut: str
    cloth: bpy.types.Material
    inside: bpy.types.Material
    index: int
    seed: int
    options: dict = field(default_factory=dict)

    def joint(self, name):
        return np.array(self.joints[name], dtype=float)

    @property
    def elbows(self):
        return [self.joints["left elbow"], self.joints["right elbow"]]

    def melt(self, name, parts, voxel=0.009, smooth=5, **more):
        return melted(name, parts, more.pop("material", self.cloth), voxel, smooth, index=self.index, **more)


def _top(d):
    """Shirt, jumper or tee: body and sleeves, then collar or neck band."""
    ease, sleeve, until = {"shirt": (0.02, 0.011, 0.97), "jumper": (0.026, 0.015, 0.97), "tee": (0.017, 0.012, 0.36)}[d.cut]
    parts = [torso(d.joints, ease, d.options.get("hem", 0.86)), *arms(d.joints, sleeve, until, 0.03)]
    waist = (d.joints["chest"][0], -0.1, 1.05)
    d.melt(d.cut, parts, wrinkle=cloth_wrinkles(d.seed, 0.007, [*d.elbows, waist]))
    neck = d.joint("neck")
    if d.cut == "shirt":
        leaves = [limb(neck + (0.045 * s, -0.02, 0.02), neck + (0.02 * s, -0.085, -0.035), 0.02, 0.012, 0.4) for s in (-1, 1)]
        d.melt("collar", [*leaves, ball(neck + (0, 0.015, 0.01), 0.068, 0.062, 0.022)], 0.005, 2)
        _buttons(d)
    elif d.cut == "jumper":
        roll = d.options.get("roll", 0.0)
        d.melt("neck band", [ball(neck + (0, 0.0, 0.01 + roll), 0.07, 0.07, 0.028 + roll)], 0.005, 2)


def _buttons(d):
    trim = plain_material("buttons", linear_from_lab((85, 1, 8)), 0.4, 0.4)
    for z in np.arange(1.34, 0.92, -0.085):
        lean = d.joints["chest"][0] * (z - 0.95) / 0.4
        front = -np.interp(z, [0.92, 1.1, 1.3, 1.36], [0.14, 0.116, 0.135, 0.128])
        d.melt("button", [ball((lean, front, z), 0.007, 0.006, 0.007)], 0.003, 1, material=trim)


def _open_coat(d):
    """Jacket or coat, parted at the front by twice `gap`, with lapels."""
    coat = d.cut == "coat"
    low, gap, lean = d.options.get("hem", 0.52) if coat else 0.8, d.options.get("gap", 0.05), d.joints["chest"][0]

    def open_front(points):
        """Parts the front: what is nearer to the middle than the gap moves to the gap's edge."""
        middle = lean * np.clip((points[:, 2] - 0.95) / 0.4, 0, 1)
        half = gap * (1 + 0.3 * np.clip((points[:, 2] - 1.1) / 0.3, -0.4, 1))
        off = points[:, 0] - middle
        hides = (points[:, 1] < -0.02) & (np.abs(off) < half)
        moved = points.copy()
        moved[:, 0] = middle + np.where(off < 0, -half, half)
        return ~hides, moved

    parts = [torso(d.joints, 0.042 if coat else 0.038, low, 0.19 if coat else 0.12), *arms(d.joints, 0.027, 0.97, 0.034)]
    d.melt(d.cut, parts, 0.01, wrinkle=cloth_wrinkles(d.seed, 0.009, d.elbows), cut=open_front, thickness=0.006)
    neck = d.joint("neck")
    leaves = [limb(neck + (0.058 * s, 0.0, 0.02), neck + ((gap + 0.045) * s, -0.115, -0.12), 0.026, 0.026, 0.35) for s in (-1, 1)]
    d.melt("lapels", [*leaves, ball(neck + (0, 0.03, 0.008), 0.082, 0.06, 0.03)], 0.006, 3)


def _trousers(d):
    ease = d.options.get("ease", 0.015)
    rings = ((0.80, 0.15, 0.105), (0.92, 0.166, 0.118), (0.99, 0.147, 0.103))
    seat = loft([((0, 0, z), rx + ease * 0.5 * (z < 0.95), ry + ease * 0.5 * (z < 0.95)) for z, rx, ry in rings])
    bends = [d.joints[f"{side} {place}"] for place in ("knee", "ankle") for side in ("left", "right")] + [(0, -0.1, 0.85)]
    parts = [seat, *legs(d.joints, ease, d.options.get("until", 0.97), d.options.get("foot", 0.054))]
    d.melt("trousers", parts, smooth=4, wrinkle=cloth_wrinkles(d.seed, 0.006, bends))


def _tights(d):
    d.melt("tights", legs(d.joints, 0.004, 1.0), 0.008, 3)


def _skirt(d):
    """From the waist down: rings that widen, in folds that deepen towards the hem."""
    hem, flare = d.options.get("hem", 0.5), d.options.get("flare", 0.2)
    phases = np.random.default_rng(d.seed).uniform(0, 6.28, 3)
    around, levels = 160, 40
    points = []
    for level in np.linspace(0, 1, levels):
        z = 1.05 + (hem - 1.05) * level
        wider = flare * max(0, 0.95 - z) ** 0.9
        rx = np.interp(z, [0.5, 0.92, 1.02, 1.05], [0.17, 0.178, 0.152, 0.146]) + wider
        ry = np.interp(z, [0.5, 0.92, 1.02, 1.05], [0.135, 0.13, 0.11, 0.106]) + wider
        for t in np.linspace(0, 2 * np.pi, around, endpoint=False):
            waves = 0.55 * math.sin(9 * t + phases[0] + 0.6 * level) + 0.35 * math.sin(14 * t + phases[1]) + 0.3 * math.sin(5 * t + phases[2])
            fold = waves * 0.019 * level**0.8
            points.append(((rx + fold) * math.cos(t), (ry + fold) * math.sin(t), z + 0.008 * math.sin(3 * t + phases[2]) * level))
    faces = [(i * around + k, (i + 1) * around + k, (i + 1) * around + (k + 1) % around, i * around + (k + 1) % around) for i in range(levels - 1) for k in range(around)]
    cloth_mesh("skirt", points, faces, d.cloth, d.index, 0.004)


def _dress(d):
    _skirt(d)
    parts = [torso(d.joints, 0.014, 0.98), *arms(d.joints, 0.009, d.options.get("sleeve", 0.97), 0.03)]
    d.melt("bodice", parts, wrinkle=cloth_wrinkles(d.seed, 0.008, d.elbows))


def _shoes(d):
    sole = plain_material("sole", linear_from_lab(d.options.get("sole", (30, 2, 5))), 0.7, 0.2)
    lace = plain_material("lace", linear_from_lab((80, 2, 12)), 0.9, 0.05)
    for side, sign in (("left", -1), ("right", 1)):
        x, y, _ = d.joints[f"{side} ankle"]
        for part in shoes.shoe(d.cut, d.cloth, sole, d.inside, lace, side, d.options.get("calf", 1.0)):
            part.rotation_euler = (0, 0, math.pi + 0.16 * sign)
            part.location = (x + 0.01 * sign, y - 0.056, 0)
            part.pass_index = d.index


def _cap(d):
    head = d.joint("head")
    parts = [ball(head + (0, 0.014, 0.068), 0.093, 0.102, 0.088), ball(head + (0, 0.01, 0.052), 0.1, 0.108, 0.026)]
    d.melt("cap", parts, 0.006, 3, wrinkle=cloth_wrinkles(d.seed, 0.004))


def _bag(d):
    """A bag at the right hip, its strap over the shoulder."""
    shoulder = d.joint("right shoulder")
    sack = d.joint("right wrist") + (0.05, 0.06, -0.08)
    levels = ((-0.13, 0.13, 0.05), (-0.1, 0.15, 0.062), (0.06, 0.14, 0.06), (0.11, 0.13, 0.03))
    body = loft([((sack[0], sack[1], sack[2] + z), rx, ry) for z, rx, ry in levels])
    d.melt("bag", [body], 0.008, 3, wrinkle=cloth_wrinkles(d.seed, 0.004))
    strap = [shoulder + (0.02, 0.05, 0.062), shoulder + (0.055, 0.0, 0.03), shoulder + (0.1, -0.01, -0.2), sack + (0.02, -0.02, 0.09)]
    tube("strap", [tuple(map(float, p)) for p in strap], 0.009, d.cloth).pass_index = d.index


CUTS = {
    "shirt": _top,
    "jumper": _top,
    "tee": _top,
    "jacket": _open_coat,
    "coat": _open_coat,
    "trousers": _trousers,
    "tights": _tights,
    "skirt": _skirt,
    "dress": _dress,
    "low": _shoes,
    "ankle": _shoes,
    "tall": _shoes,
    "cap": _cap,
    "bag": _bag,
}


def wear(joints, slot, cut, look, seed=1, **options):
    """Dresses the figure in one garment. Returns its true colours [{lab, share}]."""
    cloth, truth = cloth_material(f"{slot} {cut}", look, seed)
    inside = plain_material("inside", np.clip(linear_from_lab(look["labs"][0]), 0, 1) * 0.5, 0.95, 0.05)
    CUTS[cut](Dressing(joints, cut, cloth, inside, SLOT_INDEX[slot], seed, options))
    return truth
