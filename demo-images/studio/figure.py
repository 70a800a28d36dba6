"""A stylised person: joints in a pose, rings and limbs about them, skin, face and hair."""

import math

import numpy as np

from colour import linear_from_lab
from fabric import plain_material
from melt import ball, limb, loft, melted
from noise import layered

SKIN, HAIR = 8, 9
"""Object index of skin and hair in masks; the slots have 1 to 7."""


def pose(stride=0.1, arms=(0.045, 0.055), bend=(0.15, 0.25), lean=0.0):
    """Joints in metres, facing -y. `stride` = feet apart in depth, `arms` = how far they stand off, `bend` = elbows forward."""
    joints = {"pelvis": (0, 0, 0.93), "chest": (lean, 0, 1.28), "neck": (lean, 0.012, 1.45), "head": (lean, -0.008, 1.615)}
    for side, name in ((-1, "left"), (1, "right")):
        forward = -stride * side
        joints[f"{name} hip"] = (0.088 * side, 0, 0.9)
        joints[f"{name} knee"] = (0.098 * side, forward * 0.55 - 0.012, 0.5)
        joints[f"{name} ankle"] = (0.105 * side, forward, 0.085)
        off, fold = arms[(side + 1) // 2], bend[(side + 1) // 2]
        joints[f"{name} shoulder"] = (0.158 * side + lean, 0.01, 1.372)
        joints[f"{name} elbow"] = ((0.188 + off) * side + lean, 0.035, 1.12)
        joints[f"{name} wrist"] = ((0.2 + off - fold * 0.22) * side + lean, 0.035 - 0.24 * math.sin(fold * 1.6), 1.12 - 0.235 * math.cos(fold * 1.6))
    return joints


def torso(j, grow, low, drop_width=0.0, depth=1.0):
    """Rings from `low` (z) up to the neck; `drop_width` widens what hangs below the hips."""
    lean = j["chest"][0]
    keys = [
        (0.80, 0.158, 0.112),
        (0.92, 0.166, 0.118),
        (1.02, 0.145, 0.102),
        (1.10, 0.130, 0.094),
        (1.20, 0.142, 0.104),
        (1.30, 0.158, 0.112),
        (1.37, 0.160, 0.100),
        (1.41, 0.132, 0.084),
        (1.44, 0.086, 0.068),
        (1.465, 0.056, 0.056),
    ]
    heights = [k[0] for k in keys]
    levels = sorted({low, *[z for z in heights if z > low + 0.03], 1.465})
    rings = []
    for z in levels:
        rx, ry = np.interp(z, heights, [k[1] for k in keys]), np.interp(z, heights, [k[2] for k in keys])
        below = max(0.0, 0.92 - z)
        taper = grow * float(np.interp(z, [1.3, 1.465], [1.0, 0.25]))
        rings.append(((lean * np.clip((z - 0.95) / 0.4, 0, 1), 0.0, z), rx + taper + drop_width * below, (ry + taper + drop_width * below) * depth))
    return loft(rings)


def arms(j, grow, until=1.0, cuff=None):
    """Sleeves: `until` = share of the arm they cover (0.5 = to the elbow)."""
    parts = []
    for side in ("left", "right"):
        shoulder, elbow, wrist = (np.array(j[f"{side} {p}"]) for p in ("shoulder", "elbow", "wrist"))
        upper = min(1.0, until * 2)
        parts.append(limb(shoulder, shoulder + (elbow - shoulder) * upper, 0.048 + grow * 0.7, 0.041 + grow))
        if until > 0.5:
            lower = (until - 0.5) * 2
            parts.append(limb(elbow, elbow + (wrist - elbow) * lower, 0.04 + grow, (0.03 if cuff is None else cuff) + grow))
    return parts


def legs(j, grow, until=1.0, foot_width=None):
    parts = []
    for side in ("left", "right"):
        hip, knee, ankle = (np.array(j[f"{side} {p}"]) for p in ("hip", "knee", "ankle"))
        parts.append(limb(hip, knee, 0.083 + grow, 0.055 + grow * 1.15))
        if until > 0.5:
            parts.append(limb(knee, knee + (ankle - knee) * (until - 0.5) * 2, 0.054 + grow * 1.15, (0.04 if foot_width is None else foot_width) + grow))
    return parts


def body(j, skin_lab, hair_lab, hair="bun", seed=1):
    """Skin and hair."""
    skin = plain_material("skin", linear_from_lab(skin_lab), 0.55, 0.25)
    hair_colour = plain_material("hair", linear_from_lab(hair_lab), 0.6, 0.3)
    head = np.array(j["head"])
    parts = [torso(j, -0.004, 0.8), *arms(j, 0.0), *legs(j, 0.0), limb(np.array(j["neck"]) - (0, 0, 0.03), head - (0, 0, 0.05), 0.05, 0.047)]
    parts += [
        ball(head + (0, -0.004, 0.02), 0.079, 0.092, 0.1),
        ball(head + (0, -0.022, -0.045), 0.06, 0.064, 0.068),
        ball(head + (0, -0.096, -0.01), 0.011, 0.014, 0.022),
    ]
    for side, name in ((-1, "left"), (1, "right")):
        wrist, elbow = np.array(j[f"{name} wrist"]), np.array(j[f"{name} elbow"])
        along = (wrist - elbow) / np.linalg.norm(wrist - elbow)
        parts += [
            limb(wrist, wrist + along * 0.085, 0.026, 0.03, 0.6),
            limb(wrist + along * 0.08, wrist + along * 0.145, 0.027, 0.014, 0.6),
            limb(wrist + along * 0.03, wrist + along * 0.085 + (-0.02 * side, -0.02, 0), 0.013, 0.01),
        ]
    melted("skin", parts, skin, 0.007, 4, index=SKIN)
    eye = plain_material("eye", linear_from_lab((18, 3, 3)), 0.3, 0.4)
    for side in (-1, 1):
        melted("eye", [ball(head + (0.028 * side, -0.0835, 0.008), 0.0105, 0.006, 0.0055)], eye, 0.003, 1, index=SKIN)
        melted("brow", [ball(head + (0.029 * side, -0.0855, 0.03), 0.016, 0.006, 0.004)], hair_colour, 0.003, 1, index=HAIR)
    melted(
        "mouth",
        [ball(head + (0, -0.084, -0.055), 0.02, 0.007, 0.006)],
        plain_material("mouth", linear_from_lab((skin_lab[0] - 14, skin_lab[1] + 14, skin_lab[2] - 2)), 0.5, 0.3),
        0.003,
        1,
        index=SKIN,
    )
    cap = [ball(head + (0, 0.018, 0.037), 0.091, 0.096, 0.099)]
    if hair == "bun":
        cap.append(ball(head + (0, 0.06, 0.13), 0.045, 0.045, 0.042))
    elif hair == "long":
        cap += [limb(head + (0.055 * s, 0.045, 0.0), head + (0.075 * s, 0.05, -0.2), 0.05, 0.035, 0.8) for s in (-1, 1)] + [
            limb(head + (0, 0.06, 0), head + (0, 0.075, -0.24), 0.07, 0.06, 0.6)
        ]
    elif hair == "bob":
        cap += [limb(head + (0.062 * s, 0.012, 0.02), head + (0.068 * s, 0.02, -0.075), 0.036, 0.032) for s in (-1, 1)] + [
            ball(head + (0, 0.05, -0.03), 0.078, 0.06, 0.08)
        ]
    strands = lambda p: 0.004 * layered(np.arctan2(p[:, 0] - head[0], p[:, 1] - head[1] + 0.02) * 9, p[:, 2] * 4, seed, 2)

    def free_face(points):
        """What hangs before the face is pushed back to the brow's plane; only the fringe above the brow stays in front."""
        hides = (points[:, 1] < head[1] - 0.035) & (points[:, 2] < head[2] + 0.058)
        behind = points.copy()
        up = (head[2] + 0.058 - points[:, 2]) < (head[1] - 0.035 - points[:, 1])
        behind[up, 2] = head[2] + 0.058
        behind[~up, 1] = head[1] - 0.035
        return ~hides, behind

    melted("hair", cap, hair_colour, 0.007, 4, strands, free_face, 0.004, HAIR)
