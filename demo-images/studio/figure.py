"""A stylised person and clothes that fit: rounded parts melted into one skin, clothes as wider skins with creases."""

import math

import bpy
import numpy as np

import shoes
from colour import linear_from_lab
from fabric import TILE, cloth_material, plain_material
from noise import creases, layered

SLOT_INDEX = {"top": 1, "outer": 2, "bottom": 3, "full": 4, "legwear": 5, "shoes": 6, "accessory": 7}
"""Object index of each slot's cloth in masks; skin is 8, hair 9."""
SKIN, HAIR = 8, 9


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


def _loft(rings):
    """A closed surface through rings of (centre, rx, ry) level in z."""
    turns = np.linspace(0, 2 * np.pi, 24, endpoint=False)
    points = [[(cx + rx * np.cos(t), cy + ry * np.sin(t), z) for t in turns] for (cx, cy, z), rx, ry in rings]
    count, around = len(points), 24
    faces = [(i * around + k, i * around + (k + 1) % around, (i + 1) * around + (k + 1) % around, (i + 1) * around + k) for i in range(count - 1) for k in range(around)]
    faces += [tuple(range(around))[::-1], tuple((count - 1) * around + k for k in range(around))]
    return [p for ring in points for p in ring], faces


def _limb(a, b, ra, rb, flat=1.0):
    """A round-ended tapering tube from a to b."""
    a, b = np.array(a, dtype=float), np.array(b, dtype=float)
    axis = (b - a) / np.linalg.norm(b - a)
    helper = np.array([0, 1, 0]) if abs(axis[1]) < 0.9 else np.array([1, 0, 0])
    u = np.cross(axis, helper)
    u /= np.linalg.norm(u)
    v = np.cross(axis, u)
    stops = [(a - axis * ra * math.sin(t), ra * math.cos(t)) for t in np.linspace(1.45, 0, 5)] + [(b + axis * rb * math.sin(t), rb * math.cos(t)) for t in np.linspace(0, 1.45, 5)]
    turns = np.linspace(0, 2 * np.pi, 20, endpoint=False)
    points = [[c + r * (np.cos(t) * u + flat * np.sin(t) * v) for t in turns] for c, r in stops]
    count, around = len(points), 20
    faces = [(i * around + k, i * around + (k + 1) % around, (i + 1) * around + (k + 1) % around, (i + 1) * around + k) for i in range(count - 1) for k in range(around)]
    faces += [tuple(range(around))[::-1], tuple((count - 1) * around + k for k in range(around))]
    return [tuple(p) for ring in points for p in ring], faces


def _ball(centre, rx, ry, rz):
    stops = np.linspace(-1.5, 1.5, 13)
    return _loft([((centre[0], centre[1], centre[2] + rz * math.sin(t)), rx * math.cos(t), ry * math.cos(t)) for t in stops])


def melted(name, parts, material, voxel=0.009, smooth=6, wrinkle=None, cut=None, thickness=0.0, index=0):
    """
    Parts (vertices, faces) melted into one smooth skin. `wrinkle(points) -> metres` moves it along its normals; `cut(points)` gives
    which of it stays (an open coat) and where the rest of a face on the edge moves to; `thickness` gives the edge its cloth.
    """
    vertices, faces = [], []
    for some, polygons in parts:
        offset = len(vertices)
        vertices += some
        faces += [tuple(offset + i for i in polygon) for polygon in polygons]
    rough = bpy.data.meshes.new("rough")
    rough.from_pydata([tuple(map(float, p)) for p in vertices], [], faces)
    holder = bpy.data.objects.new("rough", rough)
    bpy.context.collection.objects.link(holder)
    remesh = holder.modifiers.new("melt", "REMESH")
    remesh.mode, remesh.voxel_size = "VOXEL", voxel
    soften = holder.modifiers.new("soften", "SMOOTH")
    soften.factor, soften.iterations = 0.5, smooth
    mesh = bpy.data.meshes.new_from_object(holder.evaluated_get(bpy.context.evaluated_depsgraph_get()))
    bpy.data.objects.remove(holder)
    count = len(mesh.vertices)
    points = np.empty(count * 3, dtype=np.float32)
    normals = np.empty(count * 3, dtype=np.float32)
    mesh.vertices.foreach_get("co", points)
    mesh.vertices.foreach_get("normal", normals)
    points, normals = points.reshape(-1, 3), normals.reshape(-1, 3)
    polygons = [tuple(p.vertices) for p in mesh.polygons]
    if wrinkle is not None:
        points = points + normals * wrinkle(points)[:, None]
    if cut is not None:
        stays, moved = cut(points)
        polygons = [p for p in polygons if any(stays[i] for i in p)]
        points = np.where(stays[:, None], points, moved)
    return cloth_mesh(name, points, polygons, material, index, thickness)


def cloth_mesh(name, points, polygons, material, index, thickness=0.0):
    """A smooth object with its texture laid on from the front (x, z) and the sides (y)."""
    mesh = bpy.data.meshes.new(name)
    mesh.from_pydata([tuple(map(float, p)) for p in points], [], polygons)
    loops = np.array([loop.vertex_index for loop in mesh.loops])
    points = np.asarray(points)
    flat = np.stack([points[:, 0] + 0.6 * points[:, 1], points[:, 2]], 1) / TILE
    mesh.uv_layers.new(name="cloth").data.foreach_set("uv", flat[loops].astype(np.float32).ravel())
    mesh.polygons.foreach_set("use_smooth", [True] * len(mesh.polygons))
    mesh.materials.append(material)
    thing = bpy.data.objects.new(name, mesh)
    thing.pass_index = index
    bpy.context.collection.objects.link(thing)
    if thickness:
        shell = thing.modifiers.new("thickness", "SOLIDIFY")
        shell.thickness, shell.offset = thickness, -1
    return thing


def cloth_wrinkles(seed, amount, joints=()):
    """Creases that fall with the cloth, and bunch across at the given joints (places in metres)."""

    def wrinkle(points):
        around = points[:, 0] + 0.8 * points[:, 1]
        down = points[:, 2]
        fall = layered((around + 0.3 * down) / 0.07, down / 0.22, seed, 2) * 0.6 + 0.5 * creases((around - 0.35 * down) / 0.13, down / 0.3, seed + 1)
        total = amount * fall
        for place in joints:
            distance = np.linalg.norm(points - np.array(place), axis=1)
            across = creases(down / 0.045 + around / 0.16, around / 0.12, seed + 2)
            total = total + 0.9 * amount * across * np.exp(-((distance / 0.13) ** 2))
        return total

    return wrinkle


def _torso(j, grow, low, drop_width=0.0, depth=1.0):
    """Rings from `low` (z) up to the neck; `drop_width` widens what hangs below the hips."""
    lean = j["chest"][0]
    keys = [(0.80, 0.158, 0.112), (0.92, 0.166, 0.118), (1.02, 0.145, 0.102), (1.10, 0.130, 0.094), (1.20, 0.142, 0.104), (1.30, 0.158, 0.112), (1.37, 0.160, 0.100), (1.41, 0.132, 0.084), (1.44, 0.086, 0.068), (1.465, 0.056, 0.056)]
    heights = [k[0] for k in keys]
    levels = sorted({low, *[z for z in heights if z > low + 0.03], 1.465})
    rings = []
    for z in levels:
        rx, ry = np.interp(z, heights, [k[1] for k in keys]), np.interp(z, heights, [k[2] for k in keys])
        below = max(0.0, 0.92 - z)
        taper = grow * float(np.interp(z, [1.3, 1.465], [1.0, 0.25]))
        rings.append(((lean * np.clip((z - 0.95) / 0.4, 0, 1), 0.0, z), rx + taper + drop_width * below, (ry + taper + drop_width * below) * depth))
    return _loft(rings)


def _arms(j, grow, until=1.0, cuff=None):
    """Sleeves: `until` = share of the arm they cover (0.5 = to the elbow)."""
    parts = []
    for side in ("left", "right"):
        shoulder, elbow, wrist = (np.array(j[f"{side} {p}"]) for p in ("shoulder", "elbow", "wrist"))
        upper = min(1.0, until * 2)
        parts.append(_limb(shoulder, shoulder + (elbow - shoulder) * upper, 0.048 + grow * 0.7, 0.041 + grow))
        if until > 0.5:
            lower = (until - 0.5) * 2
            parts.append(_limb(elbow, elbow + (wrist - elbow) * lower, 0.04 + grow, (0.03 if cuff is None else cuff) + grow))
    return parts


def _legs(j, grow, until=1.0, foot_width=None):
    parts = []
    for side in ("left", "right"):
        hip, knee, ankle = (np.array(j[f"{side} {p}"]) for p in ("hip", "knee", "ankle"))
        parts.append(_limb(hip, knee, 0.083 + grow, 0.055 + grow * 1.15))
        if until > 0.5:
            parts.append(_limb(knee, knee + (ankle - knee) * (until - 0.5) * 2, 0.054 + grow * 1.15, (0.04 if foot_width is None else foot_width) + grow))
    return parts


def body(j, skin_lab, hair_lab, hair="bun", seed=1):
    """Skin and hair."""
    skin = plain_material("skin", linear_from_lab(skin_lab), 0.55, 0.25)
    hair_colour = plain_material("hair", linear_from_lab(hair_lab), 0.6, 0.3)
    head = np.array(j["head"])
    parts = [_torso(j, -0.004, 0.8), *_arms(j, 0.0), *_legs(j, 0.0), _limb(np.array(j["neck"]) - (0, 0, 0.03), head - (0, 0, 0.05), 0.05, 0.047)]
    parts += [_ball(head + (0, -0.004, 0.02), 0.079, 0.092, 0.1), _ball(head + (0, -0.022, -0.045), 0.06, 0.064, 0.068), _ball(head + (0, -0.096, -0.01), 0.011, 0.014, 0.022)]
    for side, name in ((-1, "left"), (1, "right")):
        wrist, elbow = np.array(j[f"{name} wrist"]), np.array(j[f"{name} elbow"])
        along = (wrist - elbow) / np.linalg.norm(wrist - elbow)
        parts += [_limb(wrist, wrist + along * 0.085, 0.026, 0.03, 0.6), _limb(wrist + along * 0.08, wrist + along * 0.145, 0.027, 0.014, 0.6), _limb(wrist + along * 0.03, wrist + along * 0.085 + (-0.02 * side, -0.02, 0), 0.013, 0.01)]
    melted("skin", parts, skin, 0.007, 4, index=SKIN)
    eye = plain_material("eye", linear_from_lab((18, 3, 3)), 0.3, 0.4)
    for side in (-1, 1):
        melted("eye", [_ball(head + (0.028 * side, -0.0835, 0.008), 0.0105, 0.006, 0.0055)], eye, 0.003, 1, index=SKIN)
        melted("brow", [_ball(head + (0.029 * side, -0.0855, 0.03), 0.016, 0.006, 0.004)], hair_colour, 0.003, 1, index=HAIR)
    melted("mouth", [_ball(head + (0, -0.084, -0.055), 0.02, 0.007, 0.006)], plain_material("mouth", linear_from_lab((skin_lab[0] - 14, skin_lab[1] + 14, skin_lab[2] - 2)), 0.5, 0.3), 0.003, 1, index=SKIN)
    cap = [_ball(head + (0, 0.018, 0.037), 0.091, 0.096, 0.099)]
    if hair == "bun":
        cap.append(_ball(head + (0, 0.06, 0.13), 0.045, 0.045, 0.042))
    elif hair == "long":
        cap += [_limb(head + (0.055 * s, 0.045, 0.0), head + (0.075 * s, 0.05, -0.2), 0.05, 0.035, 0.8) for s in (-1, 1)] + [_limb(head + (0, 0.06, 0), head + (0, 0.075, -0.24), 0.07, 0.06, 0.6)]
    elif hair == "bob":
        cap += [_limb(head + (0.062 * s, 0.012, 0.02), head + (0.068 * s, 0.02, -0.075), 0.036, 0.032) for s in (-1, 1)] + [_ball(head + (0, 0.05, -0.03), 0.078, 0.06, 0.08)]
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


def wear(j, slot, cut, look, seed=1, **more):
    """Dresses the figure in one garment. Returns its true colours."""
    cloth, truth = cloth_material(f"{slot} {cut}", look, seed)
    index = SLOT_INDEX[slot]
    elbows = [j["left elbow"], j["right elbow"]]
    knees = [j["left knee"], j["right knee"]]
    dark = plain_material("inside", np.clip(linear_from_lab(look["labs"][0]), 0, 1) * 0.5, 0.95, 0.05)
    if cut in ("shirt", "jumper", "tee"):
        grow = {"shirt": 0.02, "jumper": 0.026, "tee": 0.017}[cut]
        parts = [_torso(j, grow, more.get("hem", 0.86)), *_arms(j, {"shirt": 0.011, "jumper": 0.015, "tee": 0.012}[cut], {"tee": 0.36}.get(cut, 0.97), 0.03)]
        waist = [(j["chest"][0], -0.1, 1.05)]
        melted(cut, parts, cloth, 0.009, 5, cloth_wrinkles(seed, 0.007, elbows + waist), index=index)
        if cut == "shirt":
            trim = plain_material("buttons", linear_from_lab((85, 1, 8)), 0.4, 0.4)
            neck = np.array(j["neck"])
            melted("collar", [_limb(neck + (0.045 * s, -0.02, 0.02), neck + (0.02 * s, -0.085, -0.035), 0.02, 0.012, 0.4) for s in (-1, 1)] + [_ball(neck + (0, 0.015, 0.01), 0.068, 0.062, 0.022)], cloth, 0.005, 2, index=index)
            for z in np.arange(1.34, 0.92, -0.085):
                melted("button", [_ball((j["chest"][0] * (z - 0.95) / 0.4, -np.interp(z, [0.92, 1.1, 1.3, 1.36], [0.14, 0.116, 0.135, 0.128]), z), 0.007, 0.006, 0.007)], trim, 0.003, 1, index=index)
        if cut == "jumper":
            neck = np.array(j["neck"])
            melted("neck band", [_ball(neck + (0, 0.0, 0.01 + more.get("roll", 0.0)), 0.07, 0.07, 0.028 + more.get("roll", 0.0))], cloth, 0.005, 2, index=index)
    elif cut in ("jacket", "coat"):
        grow = 0.038 if cut == "jacket" else 0.042
        low = 0.8 if cut == "jacket" else more.get("hem", 0.52)
        gap = more.get("gap", 0.05)
        parts = [_torso(j, grow, low, 0.12 if cut == "jacket" else 0.19), *_arms(j, 0.027, 0.97, 0.034)]
        lean = j["chest"][0]

        def open_front(points):
            """Parts the front: what is nearer to the middle than the gap moves to the gap's edge."""
            middle = lean * np.clip((points[:, 2] - 0.95) / 0.4, 0, 1)
            half = gap * (1 + 0.3 * np.clip((points[:, 2] - 1.1) / 0.3, -0.4, 1))
            off = points[:, 0] - middle
            hides = (points[:, 1] < -0.02) & (np.abs(off) < half)
            moved = points.copy()
            moved[:, 0] = middle + np.where(off < 0, -half, half)
            return ~hides, moved

        melted(cut, parts, cloth, 0.01, 5, cloth_wrinkles(seed, 0.009, elbows), open_front if gap > 0 else None, 0.006, index)
        neck = np.array(j["neck"])
        leaves = [_limb(neck + (0.058 * s, 0.0, 0.02), neck + ((gap + 0.045) * s, -0.115, -0.12), 0.026, 0.026, 0.35) for s in (-1, 1)]
        melted("lapels", leaves + [_ball(neck + (0, 0.03, 0.008), 0.082, 0.06, 0.03)], cloth, 0.006, 3, index=index)
    elif cut == "trousers":
        grow = more.get("ease", 0.015)
        parts = [_loft([((0, 0, z), rx + grow * 0.5 * (z < 0.95), ry + grow * 0.5 * (z < 0.95)) for z, rx, ry in ((0.80, 0.15, 0.105), (0.92, 0.166, 0.118), (0.99, 0.147, 0.103))]), *_legs(j, grow, more.get("until", 0.97), more.get("foot", 0.054))]
        melted(cut, parts, cloth, 0.009, 4, cloth_wrinkles(seed, 0.006, knees + [(0, -0.1, 0.85), j["left ankle"], j["right ankle"]]), index=index)
    elif cut == "tights":
        melted(cut, _legs(j, 0.004, 1.0), cloth, 0.008, 3, index=index)
    elif cut in ("skirt", "dress"):
        _falling(j, cut, cloth, more.get("hem", 0.5), more.get("flare", 0.2), seed, index)
        if cut == "dress":
            parts = [_torso(j, 0.014, 0.98), *_arms(j, 0.009, more.get("sleeve", 0.97), 0.03)]
            melted("bodice", parts, cloth, 0.009, 5, cloth_wrinkles(seed, 0.008, elbows), index=index)
    elif cut in ("low", "ankle", "tall"):
        sole, lace = plain_material("sole", linear_from_lab(more.get("sole", (30, 2, 5))), 0.7, 0.2), plain_material("lace", linear_from_lab((80, 2, 12)), 0.9, 0.05)
        for side in ("left", "right"):
            x, y, _ = j[f"{side} ankle"]
            sign = -1 if side == "left" else 1
            for part in shoes.shoe(cut, cloth, sole, dark, lace, side, 1.3 if cut == "tall" else 1.1):
                part.rotation_euler = (0, 0, math.pi + 0.16 * sign)
                part.location = (x + 0.01 * sign, y - 0.056, 0)
                part.pass_index = index
    elif cut == "scarf":
        neck = np.array(j["neck"])
        ring = [_limb(neck + (0.085 * math.cos(t), -0.02 + 0.085 * math.sin(t), 0.0 - 0.02 * math.sin(t)), neck + (0.085 * math.cos(t + 0.5), -0.02 + 0.085 * math.sin(t + 0.5), -0.02 * math.sin(t + 0.5)), 0.038, 0.038) for t in np.arange(0, 6.3, 0.5)]
        tails = [_limb(neck + (0.02 * s + 0.02, -0.11, -0.03), neck + (0.055 * s + 0.03, -0.15, -0.36 - 0.06 * s), 0.045, 0.055, 0.35) for s in (-1, 1)]
        melted(cut, ring + tails, cloth, 0.007, 4, cloth_wrinkles(seed, 0.013), index=index)
    elif cut == "cap":
        head = np.array(j["head"])
        melted(cut, [_ball(head + (0, 0.014, 0.068), 0.093, 0.102, 0.088), _ball(head + (0, 0.01, 0.052), 0.1, 0.108, 0.026)], cloth, 0.006, 3, cloth_wrinkles(seed, 0.004), index=index)
    elif cut == "bag":
        wrist = np.array(j["right wrist"])
        shoulder = np.array(j["right shoulder"])
        sack = wrist + (0.05, 0.06, -0.08)
        box = [((sack[0], sack[1], sack[2] + z), rx, ry) for z, rx, ry in ((-0.13, 0.13, 0.05), (-0.1, 0.15, 0.062), (0.06, 0.14, 0.06), (0.11, 0.13, 0.03))]
        melted(cut, [_loft(box)], cloth, 0.008, 3, cloth_wrinkles(seed, 0.004), index=index)
        from places import tube

        strap = [shoulder + (0.02, 0.05, 0.062), shoulder + (0.055, 0.0, 0.03), shoulder + (0.1, -0.01, -0.2), sack + (0.02, -0.02, 0.09)]
        tube("strap", [tuple(map(float, p)) for p in strap], 0.009, cloth).pass_index = index
    else:
        raise ValueError(f"Expected a known cut, got {cut}")
    return truth


def _falling(j, name, cloth, hem, flare, seed, index):
    """A skirt from the waist down: rings that widen, in folds that deepen towards the hem."""
    rng = np.random.default_rng(seed)
    phases = rng.uniform(0, 6.28, 3)
    around, levels = 160, 40
    points = []
    for level in np.linspace(0, 1, levels):
        z = 1.05 + (hem - 1.05) * level
        base_x = np.interp(z, [0.5, 0.92, 1.02, 1.05], [0.17, 0.178, 0.152, 0.146]) + flare * max(0, (0.95 - z)) ** 0.9
        base_y = np.interp(z, [0.5, 0.92, 1.02, 1.05], [0.135, 0.13, 0.11, 0.106]) + flare * max(0, (0.95 - z)) ** 0.9
        for t in np.linspace(0, 2 * np.pi, around, endpoint=False):
            fold = (0.55 * math.sin(9 * t + phases[0] + 0.6 * level) + 0.35 * math.sin(14 * t + phases[1]) + 0.3 * math.sin(5 * t + phases[2])) * 0.019 * level**0.8
            points.append(((base_x + fold) * math.cos(t), (base_y + fold) * math.sin(t), z + 0.008 * math.sin(3 * t + phases[2]) * level))
    faces = [(i * around + k, i * around + (k + 1) % around, (i + 1) * around + (k + 1) % around, (i + 1) * around + k) for i in range(levels - 1) for k in range(around)]
    cloth_mesh(name, points, [f[::-1] for f in faces], cloth, index, 0.004)
