"""Streets, a quay and a garden that people stand in; all invented, all procedural."""

import math

import bpy
import numpy as np

from colour import lamp_colour, linear_from_lab
from fabric import plain_material
from noise import layered
from places import _grid, _painted_plane, tube, world_light


def box(low, high, lab, roughness=0.8, name="box", specular=0.15):
    """A block between two corners."""
    bpy.ops.mesh.primitive_cube_add(size=1)
    thing = bpy.context.object
    thing.name = name
    thing.location = [(a + b) / 2 for a, b in zip(low, high)]
    thing.scale = [b - a for a, b in zip(low, high)]
    thing.data.materials.append(plain_material(name, linear_from_lab(lab), roughness, specular))
    return thing


def sun_and_sky(sun_kelvin=5200, sun=2.2, sky=0.75, from_left=True, soft=0.2):
    """Hazy daylight. Returns the linear sRGB of the light on the figure."""
    world_light(lamp_colour(7500), sky)
    data = bpy.data.lights.new("sun", "SUN")
    data.energy, data.angle, data.color = sun, soft, lamp_colour(sun_kelvin)
    thing = bpy.data.objects.new("sun", data)
    thing.rotation_euler = (math.radians(48), 0, math.radians(-35 if from_left else 35))
    bpy.context.collection.objects.link(thing)
    return tuple(0.5 * a + 0.5 * b for a, b in zip(lamp_colour(7500), lamp_colour(sun_kelvin)))


def pavement(seed, lab=(66, 1, 5), slab=(0.4, 0.4), size=14):
    """Paving slabs, each a little different."""
    x, y = _grid(1024, size)
    row = np.floor(y / slab[1])
    column = np.floor((x + (row % 2) * slab[0] / 2) / slab[0])
    rng = np.random.default_rng(seed)
    tone = 0.88 + 0.24 * rng.random((97, 89))[row.astype(int) % 97, column.astype(int) % 89]
    tone = tone * (1 + 0.08 * layered(x * 5, y * 5, seed, 3))
    albedo = linear_from_lab(lab) * tone[..., None]
    joint = ((x + (row % 2) * slab[0] / 2) % slab[0] < 0.018) | (y % slab[1] < 0.018)
    albedo[joint] *= 0.6
    return _painted_plane("pavement", albedo, size, 0.8, 0.2)


def facade(albedo, size, distance):
    plane = _painted_plane("facade", albedo, size, 0.9, 0.1)
    plane.rotation_euler = (math.pi / 2, 0, 0)
    plane.location = (0, distance, size / 2)
    return plane


def plaster_wall(lab, distance, seed):
    x, y = _grid(1024, 9)
    tone = 1 + 0.06 * layered(x * 0.8, y * 0.8, seed, 5) - 0.12 * np.exp(-y / 0.35) * (1 + layered(x * 2, y, seed + 1, 2))
    return facade(linear_from_lab(lab) * tone[..., None], 9, distance)


def brick_wall(lab, mortar, distance, seed):
    x, y = _grid(2048, 9)
    row = np.floor(y / 0.075)
    column = np.floor((x + (row % 2) * 0.11) / 0.22)
    rng = np.random.default_rng(seed)
    tone = 0.75 + 0.5 * rng.random((131, 61))[row.astype(int) % 131, column.astype(int) % 61]
    albedo = linear_from_lab(lab) * (tone * (1 + 0.1 * layered(x * 9, y * 9, seed, 2)))[..., None]
    joint = ((x + (row % 2) * 0.11) % 0.22 < 0.012) | (y % 0.075 < 0.011)
    albedo[joint] = linear_from_lab(mortar)
    return facade(albedo, 9, distance)


def window(x, z, width, height, distance, frame=(90, 0, 4), shutters=None):
    """A window with its frame, dark panes and, if wanted, shutters."""
    y = distance
    box((x - width / 2 - 0.07, y - 0.05, z - 0.08), (x + width / 2 + 0.07, y + 0.02, z + height + 0.07), frame, name="frame")
    box((x - width / 2, y - 0.06, z), (x + width / 2, y, z + height), (28, -2, -5), 0.15, "pane", 0.5)
    box((x - 0.025, y - 0.075, z), (x + 0.025, y, z + height), frame, name="bar")
    box((x - width / 2, y - 0.075, z + height * 0.58), (x + width / 2, y, z + height * 0.58 + 0.04), frame, name="bar")
    box((x - width / 2 - 0.12, y - 0.14, z - 0.12), (x + width / 2 + 0.12, y, z - 0.06), (78, 0, 6), name="sill")
    if shutters:
        for side in (-1, 1):
            left = x + side * (width / 2 + 0.07) - (width * 0.5 if side < 0 else 0)
            box((left, y - 0.06, z - 0.05), (left + width * 0.5, y, z + height + 0.05), shutters, name="shutter")
            for k in range(9):
                box((left + 0.04, y - 0.075, z + 0.06 + k * height / 10), (left + width * 0.5 - 0.04, y - 0.05, z + 0.1 + k * height / 10), shutters, name="slat")


def door(x, distance, lab, width=0.95, height=2.1):
    y = distance
    box((x - width / 2 - 0.1, y - 0.06, 0), (x + width / 2 + 0.1, y + 0.02, height + 0.12), (82, 1, 8), name="door frame")
    box((x - width / 2, y - 0.09, 0.06), (x + width / 2, y, height), lab, 0.5, "door", 0.3)
    for k in (0.25, 1.15):
        for side in (-0.24, 0.24):
            box((x + side - 0.17, y - 0.1, k), (x + side + 0.17, y - 0.08, k + 0.72), [lab[0] - 5, lab[1], lab[2]], 0.5, "panel", 0.3)
    box((x - width / 2 - 0.2, y - 0.4, 0), (x + width / 2 + 0.2, y, 0.09), (70, 0, 4), name="step")


def plant(x, y, lab=(40, -22, 24), pot=(64, 0, 3), height=0.75, seed=1):
    """A pot with a round bush."""
    bpy.ops.mesh.primitive_cone_add(radius1=0.15, radius2=0.2, depth=0.36, location=(x, y, 0.18), vertices=40)
    bpy.context.object.data.materials.append(plain_material("pot", linear_from_lab(pot), 0.8, 0.2))
    bush((x, y, 0.36 + height * 0.4), height * 0.42, lab, seed)


def bush(centre, radius, lab, seed=1, stretch=(1, 1, 1)):
    """A leafy ball."""
    bpy.ops.mesh.primitive_ico_sphere_add(subdivisions=6, radius=radius, location=centre)
    thing = bpy.context.object
    count = len(thing.data.vertices)
    points = np.empty(count * 3, dtype=np.float32)
    thing.data.vertices.foreach_get("co", points)
    points = points.reshape(-1, 3)
    rough = layered(points[:, 0] / radius * 5 + points[:, 2] / radius * 2, points[:, 1] / radius * 5 + points[:, 2] / radius * 5, seed, 4)
    points = points * (1 + 0.3 * rough)[:, None] * np.array(stretch)
    thing.data.vertices.foreach_set("co", points.astype(np.float32).ravel())
    thing.data.update()
    thing.data.materials.append(plain_material("leaves", linear_from_lab(lab), 0.9, 0.1))
    return thing


def sandstone_street(seed):
    """A plaster house with shuttered windows and a door."""
    pavement(seed)
    plaster_wall((83, 3, 17), 2.0, seed)
    window(-1.35, 0.95, 0.8, 1.25, 2.0, shutters=(52, -12, 10))
    door(1.75, 2.0, (38, -8, -14))
    plant(0.98, 1.7, seed=seed)
    plant(2.15, 1.6, height=0.9, seed=seed + 1)


def pale_street(seed):
    """A pale blue-grey house with tall windows."""
    pavement(seed, (58, 0, 3), (0.3, 0.6))
    plaster_wall((80, -2, -4), 2.4, seed)
    for x in (-1.5, 0.35, 2.1):
        window(x, 0.8, 0.75, 1.5, 2.4, (93, 0, 3))
    box((-6, 2.25, 0), (6, 2.4, 0.45), (60, 0, 3), name="base")
    plant(-0.95, 2.0, (44, -16, 22), seed=seed)


def brick_street(seed):
    """A workshop of old brick with an iron window."""
    pavement(seed, (54, 1, 4), (0.2, 0.12))
    brick_wall((50, 20, 20), (72, 2, 8), 2.2, seed)
    window(1.25, 1.0, 1.2, 1.4, 2.2, (40, -2, 0))
    door(-1.5, 2.2, (45, -3, -9), 1.1)


def school_yard(seed):
    """Grey stone with a notice board and a lamp."""
    pavement(seed, (62, 0, 2), (0.6, 0.6))
    plaster_wall((70, 0, 4), 2.3, seed)
    box((-6, 2.15, 0), (6, 2.3, 0.7), (55, 0, 2), name="base")
    box((0.75, 2.2, 1.05), (1.75, 2.3, 1.85), (62, 6, 18), name="board")
    for x, z, lab in ((0.85, 1.45, (92, 0, 4)), (1.2, 1.2, (88, 2, 20)), (1.4, 1.5, (90, -4, 0))):
        box((x, 2.18, z), (x + 0.22, 2.21, z + 0.3), lab, name="paper")
    window(-1.3, 1.0, 1.0, 1.4, 2.3)


def water(level, near, far, lab=(52, -6, -8)):
    x, y = _grid(1024, 60)
    ripple = 1 + 0.18 * layered(x * 0.8, y * 6, 3, 3)
    plane = _painted_plane("water", linear_from_lab(lab) * ripple[..., None], 60, 0.12, 0.6)
    plane.location = (0, near + 30, level)
    return plane


def far_bank(distance, seed):
    """Houses and trees across the river."""
    rng = np.random.default_rng(seed)
    box((-40, distance, -0.6), (40, distance + 10, 0.25), (46, -8, 16), name="bank")
    walls = [(84, 3, 14), (74, 8, 18), (82, 0, 4), (66, 12, 20), (78, -3, 6)]
    x = -16.0
    while x < 16:
        wide, high = rng.uniform(2.2, 3.6), rng.uniform(2.6, 4.4)
        box((x, distance + 3, 0), (x + wide, distance + 5, high), walls[rng.integers(len(walls))], name="house")
        bpy.ops.mesh.primitive_cone_add(
            vertices=4, radius1=wide * 0.78, radius2=0, depth=1.5, location=(x + wide / 2, distance + 4, high + 0.75), rotation=(0, 0, math.pi / 4)
        )
        bpy.context.object.data.materials.append(plain_material("roof", linear_from_lab((44, 1, -3)), 0.9, 0.1))
        for k in range(2):
            box(
                (x + wide * (0.25 + 0.35 * k), distance + 2.95, high * 0.45),
                (x + wide * (0.25 + 0.35 * k) + 0.5, distance + 3, high * 0.45 + 0.8),
                (35, -2, -4),
                name="pane",
            )
        if rng.random() < 0.6:
            bush((x - 0.3, distance + 1.6, 1.2), rng.uniform(0.8, 1.4), (44, -14, 26), int(rng.integers(99)))
        x += wide + rng.uniform(0.1, 1.6)


def quay(seed):
    """A railing by the river, houses across."""
    pavement(seed, (64, 1, 6), (0.5, 0.35))
    iron = plain_material("iron", linear_from_lab((34, -3, -2)), 0.5, 0.4)
    for z in (0.35, 0.7, 1.05):
        tube("bar", [(-8, 1.5, z), (8, 1.5, z)], 0.018 if z < 1 else 0.028, iron)
    for x in np.arange(-7.6, 8, 0.95):
        tube("post", [(x, 1.5, 0), (x, 1.5, 1.1)], 0.024, iron)
    box((-20, 1.7, -1), (20, 1.9, 0.03), (58, 1, 6), name="kerb")
    for thing in bpy.data.objects:
        if thing.name == "pavement":
            thing.location.y = 1.8 - 7
    water(-0.7, 1.9, 60)
    far_bank(17, seed)


def garden(seed):
    """A meadow with hives before a hedge."""
    x, y = _grid(1024, 14)
    share = np.clip(0.5 + 0.4 * layered(x * 7, y * 7, seed, 4), 0, 1)[..., None]
    albedo = linear_from_lab((56, -20, 36)) * share + linear_from_lab((40, -18, 28)) * (1 - share)
    _painted_plane("meadow", albedo, 14, 0.95, 0.05, lambda gx, gy: -0.02 + 0.02 * layered(gx * 6, gy * 6, seed, 3))
    for k in range(9):
        bush((-4 + k * 1.0, 3.4 + 0.2 * (k % 2), 0.75), 0.95, (38 + 2 * (k % 3), -17, 24), seed + k, (0.8, 0.6, 1.15))
    for x0, lab in ((-1.55, (86, 1, 10)), (1.05, (66, -6, -12)), (1.95, (76, 12, 40))):
        box((x0 - 0.05, 1.75, 0.0), (x0 + 0.55, 2.25, 0.22), (48, 10, 20), name="stand")
        box((x0, 1.8, 0.22), (x0 + 0.5, 2.2, 0.55), lab, name="hive")
        box((x0, 1.8, 0.56), (x0 + 0.5, 2.2, 0.85), lab, name="hive")
        box((x0 - 0.04, 1.76, 0.85), (x0 + 0.54, 2.24, 0.93), (62, 0, 2), name="lid")
        box((x0 + 0.12, 1.79, 0.24), (x0 + 0.38, 1.81, 0.27), (20, 2, 4), name="slit")


STREETS = {"sandstone street": sandstone_street, "pale street": pale_street, "brick street": brick_street, "school yard": school_yard, "quay": quay, "garden": garden}
