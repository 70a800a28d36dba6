"""Shoes, boots and sandals as solid shapes standing on the floor: x to the right, toes towards +y, metres."""

import bpy
import numpy as np

from fabric import TILE
from places import tube

STATIONS = np.linspace(0, 1, 30)


def _width(s):
    """Half width of a sole from heel (0) to toe (1)."""
    heel = 0.031 * np.sqrt(np.clip(1 - ((s - 0.13) / 0.135) ** 2, 0, 1)) * (s < 0.13)
    return np.where(
        s < 0.13, np.maximum(heel, 0.004), np.interp(s, [0.13, 0.35, 0.5, 0.7, 0.82, 0.92, 0.97, 1.0], [0.031, 0.03, 0.034, 0.044, 0.043, 0.034, 0.022, 0.003])
    )


def _mesh(name, rings, material, closed_ends=True):
    """A surface through rings of equally many points."""
    rings = np.asarray(rings)
    count, around = rings.shape[:2]
    vertices = rings.reshape(-1, 3)
    faces = [(i * around + k, i * around + (k + 1) % around, (i + 1) * around + (k + 1) % around, (i + 1) * around + k) for i in range(count - 1) for k in range(around)]
    if closed_ends:
        faces += [tuple(range(around))[::-1], tuple((count - 1) * around + k for k in range(around))]
    mesh = bpy.data.meshes.new(name)
    mesh.from_pydata(vertices.tolist(), [], faces)
    uv = mesh.uv_layers.new(name="cloth")
    loops = np.array([loop.vertex_index for loop in mesh.loops])
    flat = vertices[:, :2] + vertices[:, 2:3]
    uv.data.foreach_set("uv", (flat[loops] / TILE + 0.5).astype(np.float32).ravel())
    mesh.polygons.foreach_set("use_smooth", [True] * len(mesh.polygons))
    mesh.materials.append(material)
    thing = bpy.data.objects.new(name, mesh)
    bpy.context.collection.objects.link(thing)
    return thing


def _upper(length, heights, material, base, name):
    """The part over the foot: half-round sections whose height follows `heights` from heel to toe."""
    turns = np.linspace(-0.12, np.pi + 0.12, 21)
    rings = []
    for s in STATIONS:
        w, h = _width(s) * 1.02, np.interp(s, [0, 0.05, 0.3, 0.45, 0.6, 0.8, 0.93, 1.0], heights)
        rings.append([(w * np.cos(t) * (1 - 0.12 * max(np.sin(t), 0)), (s - 0.5) * length, base + h * np.sign(np.sin(t)) * abs(np.sin(t)) ** 0.75) for t in turns])
    return _mesh(name, rings, material)


def _sole(length, height, material, name):
    outline = []
    for s in STATIONS:
        outline.append((_width(s) * 1.1 + 0.001, (s - 0.5) * (length + 0.008)))
    ring = outline + [(-x, y) for x, y in outline[::-1]]
    return _mesh(name, [[(x * k, y * (0.99 if k < 1 else 1), z) for x, y in ring] for z, k in ((0.001, 0.98), (height * 0.5, 1.0), (height, 0.98))], material)


def _shaft(material, base, top, name, radius=(0.042, 0.052), lean=0.01):
    turns = np.linspace(0, 2 * np.pi, 28, endpoint=False)
    rings = []
    for k in np.linspace(0, 1, 12):
        rx = radius[0] * (0.86 + 0.14 * abs(2 * k - 0.7))
        ry = radius[1] * (0.86 + 0.2 * abs(2 * k - 0.8))
        bend = 0.0016 * np.sin(k * 19)
        rings.append([((rx + bend) * np.cos(t), -0.052 - lean * k + (ry + bend) * np.sin(t), base + (top - base) * k) for t in turns])
    return _mesh(name, rings, material, closed_ends=False)


def _opening(rx, ry, y, z, dark, rim, name, cloth):
    """The dark inside and the padded rim round it."""
    turns = np.linspace(0, 2 * np.pi, 28, endpoint=False)
    ring = [(rx * np.cos(t), y + ry * np.sin(t), z + 0.006 * np.sin(t) ** 2) for t in turns]
    hole = _mesh(f"{name} inside", [[(x * k, y + (yy - y) * k, zz - 0.001 - 0.012 * i) for x, yy, zz in ring] for i, k in enumerate((0.98, 0.9, 0.02))], dark)
    return [hole, tube(f"{name} rim", ring, rim, cloth, closed=True)]


def shoe(kind, cloth, sole, dark, lace, name, calf=1.0):
    """The objects of one shoe. kind: low, ankle, tall, sandal; `calf` widens a shaft that a leg stands in."""
    length = 0.27
    parts = [_sole(length, 0.02 if kind != "tall" else 0.026, sole, f"{name} sole")]
    if kind == "sandal":
        parts.append(_sole(length * 0.97, 0.024, lace, f"{name} bed"))
        for s, high, wide in ((0.72, 0.055, 0.046), (0.6, 0.062, 0.043), (0.3, 0.075, 0.034)):
            for offset in np.linspace(-0.011, 0.011, 6):
                arc = [(wide * np.cos(t), (s - 0.5) * length + offset + 0.008 * np.sin(t), 0.016 + (high - 0.016) * np.sin(t)) for t in np.linspace(0, np.pi, 16)]
                parts.append(tube(f"{name} strap", arc, 0.0026, cloth))
        return parts
    heights = {
        "low": [0.052, 0.06, 0.064, 0.06, 0.056, 0.042, 0.03, 0.008],
        "ankle": [0.07, 0.08, 0.085, 0.085, 0.072, 0.046, 0.034, 0.008],
        "tall": [0.08, 0.09, 0.1, 0.095, 0.076, 0.05, 0.038, 0.01],
    }[kind]
    parts.append(_upper(length, heights, cloth, 0.016, f"{name} upper"))
    if kind == "low":
        parts += _opening(0.025, 0.052, -0.062, 0.07, dark, 0.0055, name, cloth)
    else:
        top = 0.16 if kind == "ankle" else 0.31
        parts.append(_shaft(cloth, 0.05, top, f"{name} shaft", (0.042 * calf, 0.052 * calf), 0.004 if kind == "ankle" else 0.012))
        parts += _opening(0.043 * calf, 0.055 * calf, -0.057 if kind == "ankle" else -0.064, top, dark, 0.0045, name, cloth)
    if kind in ("low", "ankle"):
        for k in range(5):
            y = -0.004 + k * 0.014
            z = 0.016 + np.interp((y / length) + 0.5, [0, 0.05, 0.3, 0.45, 0.6, 0.8, 0.93, 1.0], heights)
            parts.append(
                tube(f"{name} lace", [(0.016 * np.cos(t), y + 0.003 * np.cos(t), z - 0.004 + 0.0045 * np.sin(t)) for t in np.linspace(0, np.pi, 8)], 0.0022, lace)
            )
    return parts


def pair(kind, cloth, sole, dark, lace):
    """Two shoes side by side, one a little turned. All their objects."""
    objects = []
    for side, turn, shift in ((-1, 0.08, 0.0), (1, -0.16, -0.02)):
        parts = shoe(kind, cloth, sole, dark, lace, "left" if side < 0 else "right")
        for part in parts:
            part.rotation_euler = (0, 0, turn)
            part.location = (side * 0.072, shift, 0)
        objects += parts
    return objects
