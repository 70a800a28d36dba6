"""Where a garment is photographed: floors, beds, walls with a rail, and the light there."""

import math

import bpy
import numpy as np
from mathutils import Matrix, Vector

from colour import lamp_colour, linear_from_lab
from fabric import cloth_material, plain_material
from noise import layered, perlin


def clear():
    """An empty scene."""
    bpy.ops.wm.read_factory_settings(use_empty=True)
    scene = bpy.context.scene
    scene.world = bpy.data.worlds.new("world")
    scene.world.use_nodes = True


def world_light(colour, strength):
    """Even light from all around."""
    node = bpy.context.scene.world.node_tree.nodes["Background"]
    node.inputs["Color"].default_value = (*colour, 1)
    node.inputs["Strength"].default_value = strength


def area_light(place, toward, size, power, colour=(1, 1, 1)):
    """A square lamp or window at `place` that faces `toward`; size (width, height) in metres, power in watts."""
    data = bpy.data.lights.new("area", "AREA")
    data.shape = "RECTANGLE"
    data.size, data.size_y = size
    data.energy = power
    data.color = colour
    thing = bpy.data.objects.new("area", data)
    thing.location = place
    direction = np.array(toward) - np.array(place)
    yaw = math.atan2(direction[1], direction[0])
    pitch = math.atan2(direction[2], math.hypot(direction[0], direction[1]))
    thing.rotation_euler = (math.pi / 2 + pitch, 0, yaw - math.pi / 2)
    bpy.context.collection.objects.link(thing)
    return thing


LAMPS = ("daylight", "overcast", "warm lamp", "mixed")


def light_room(lamp, side=-1, upright=False, reach=1.0, lift=1.0):
    """
    Lights a subject about the origin that lies flat, or hangs `upright` and is seen from -y. `reach` moves lamps away at the
    same brightness (evener light), `lift` raises them (flatter folds).
    Returns (kelvin, light): the colour temperature and the linear sRGB of the light that falls on it.
    """

    def shine(x, y, z, size, power, colour=(1, 1, 1)):
        place = (x * reach, -z * reach * lift, y * reach) if upright else (x * reach, y * reach, z * reach * lift)
        near, far = np.linalg.norm((x, y, z)), np.linalg.norm(place)
        area_light(place, (0, 0, 0), (size[0] * reach, size[1] * reach), power * (far / near) ** 2, colour)

    if lamp == "daylight":
        world_light((1, 1, 1), 0.3)
        shine(2.0 * side, 1.1, 1.15, (1.0, 1.4), 120)
        return 6500, (1, 1, 1)
    if lamp == "overcast":
        world_light(lamp_colour(7500), 0.4)
        shine(1.6 * side, 1.0, 1.6, (1.8, 1.8), 90, lamp_colour(7500))
        return 7500, lamp_colour(7500)
    if lamp == "warm lamp":
        world_light(lamp_colour(2900), 0.14)
        shine(1.2 * side, 0.8, 1.3, (0.4, 0.4), 55, lamp_colour(2700))
        return 2700, lamp_colour(2700)
    if lamp == "mixed":
        world_light(lamp_colour(5000), 0.2)
        shine(2.0 * side, 0.6, 1.2, (1.0, 1.5), 90)
        shine(-1.2 * side, 0.4, 1.5, (0.3, 0.3), 30, lamp_colour(2900))
        return 4300, tuple(0.5 + 0.5 * v for v in lamp_colour(2900))
    raise ValueError(f"Expected one of {LAMPS}, got {lamp}")


def _painted_plane(name, albedo, size, roughness=0.6, specular=0.25, relief=None):
    """A square ground with a picture of its albedo (rows from the bottom) and, if given, a relief that the light shows."""
    rows, columns, _ = albedo.shape
    image = bpy.data.images.new(name, columns, rows, float_buffer=True)
    image.colorspace_settings.name = "Linear"
    pixels = np.ones((rows, columns, 4), dtype=np.float32)
    pixels[..., :3] = np.clip(albedo, 0, 1)
    image.pixels.foreach_set(pixels.ravel())
    image.pack()
    material = plain_material(name, (0.5, 0.5, 0.5), roughness, specular)
    tree = material.node_tree
    texture = tree.nodes.new("ShaderNodeTexImage")
    texture.image = image
    coordinate = tree.nodes.new("ShaderNodeUVMap")
    tree.links.new(coordinate.outputs[0], texture.inputs["Vector"])
    tree.links.new(texture.outputs["Color"], tree.nodes["Principled BSDF"].inputs["Base Color"])
    bpy.ops.mesh.primitive_plane_add(size=size)
    plane = bpy.context.object
    plane.name = name
    plane.data.materials.append(material)
    if relief is not None:
        _relief(plane, relief, size)
    return plane


def _relief(plane, height, size, cells=220):
    """Replaces the plane's mesh by a grid whose height is `height(x, y)` in metres."""
    axis = np.linspace(-size / 2, size / 2, cells + 1)
    x, y = np.meshgrid(axis, axis)
    z = height(x, y)
    index = np.arange((cells + 1) ** 2).reshape(cells + 1, cells + 1)
    faces = np.stack([index[:-1, :-1], index[:-1, 1:], index[1:, 1:], index[1:, :-1]], -1).reshape(-1, 4)
    materials = list(plane.data.materials)
    mesh = bpy.data.meshes.new(plane.name)
    mesh.from_pydata(np.stack([x, y, z], -1).reshape(-1, 3).tolist(), [], faces.tolist())
    uv = mesh.uv_layers.new(name="cloth")
    loops = np.array([loop.vertex_index for loop in mesh.loops])
    flat = np.stack([x.ravel() / size + 0.5, y.ravel() / size + 0.5], 1)
    uv.data.foreach_set("uv", flat[loops].astype(np.float32).ravel())
    mesh.polygons.foreach_set("use_smooth", [True] * len(mesh.polygons))
    for material in materials:
        mesh.materials.append(material)
    plane.data = mesh


def _grid(pixels, size):
    axis = (np.arange(pixels) + 0.5) / pixels * size
    return np.meshgrid(axis, axis)


def planks(seed, light=(72, 6, 20), dark=(58, 9, 24), width=0.13, turned=False):
    """Floorboards with grain and dark joints."""
    size = 3.2
    x, y = _grid(1024, size)
    if turned:
        x, y = y, x
    board = np.floor(x / width)
    rng = np.random.default_rng(seed)
    tone = rng.uniform(0, 1, 64)[board.astype(int) % 64]
    start = rng.uniform(0, 2, 64)[board.astype(int) % 64]
    grain = layered(x * 26 + board * 7, y * 1.6 + start * 9, seed, 3)
    rings = np.sin(40 * perlin(x * 5 + board * 3, y * 0.9 + start, seed + 1) + x * 20) * 0.12
    share = np.clip(0.45 * tone + 0.3 + 0.35 * grain + rings, 0, 1)[..., None]
    albedo = linear_from_lab(light) * (1 - share) + linear_from_lab(dark) * share
    joint = (x % width < 0.004) | (((y + start * 1.3) % 1.4) < 0.004)
    albedo[joint] *= 0.35
    return _painted_plane("planks", albedo, size, 0.5, 0.3)


def concrete(seed, lab=(62, 0, 3)):
    """A plain screed or plaster ground."""
    x, y = _grid(768, 3.2)
    tone = 1 + 0.1 * layered(x * 2.2, y * 2.2, seed, 5) + 0.04 * layered(x * 40, y * 40, seed + 2, 2)
    return _painted_plane("concrete", linear_from_lab(lab) * tone[..., None], 3.2, 0.8, 0.15)


def tiles(seed, labs=((78, 0, 4), (40, -8, -8)), side=0.2):
    """A checkerboard of tiles with light joints."""
    x, y = _grid(1024, 3.2)
    which = ((np.floor(x / side) + np.floor(y / side)) % 2).astype(int)
    albedo = np.array([linear_from_lab(lab) for lab in labs])[which] * (1 + 0.05 * layered(x * 3, y * 3, seed, 3))[..., None]
    albedo[(x % side < 0.006) | (y % side < 0.006)] = linear_from_lab((70, 0, 4))
    return _painted_plane("tiles", albedo, 3.2, 0.35, 0.4)


def bed(seed, look):
    """A made bed from above: a soft sheet in shallow folds. `look` as for cloth."""
    material, _ = cloth_material("bedding", look, seed)
    bpy.ops.mesh.primitive_plane_add(size=2.4)
    plane = bpy.context.object
    plane.name = "bed"
    plane.data.materials.append(material)

    def height(x, y):
        broad = 0.02 * layered(x * 1.3, y * 1.3, seed, 2)
        folds = 0.012 * np.maximum(layered((x + 0.4 * y) * 4.5, (y - 0.4 * x) * 1.2, seed + 4, 3), -0.1)
        keep_flat = np.clip((np.maximum(np.abs(x) / 0.62, np.abs(y) / 0.75)) ** 2, 0.12, 1)
        return (broad + folds) * keep_flat - 0.016

    _relief(plane, height, 2.4)
    uv = plane.data.uv_layers[0].data
    flat = np.empty(len(uv) * 2, dtype=np.float32)
    uv.foreach_get("uv", flat)
    uv.foreach_set("uv", flat * 2)
    return plane


def rug(seed, labs=((55, 14, 14), (70, 3, 14))):
    """A woven rug in soft bands."""
    x, y = _grid(1024, 3.2)
    band = layered(np.zeros_like(y), y * 4, seed, 3) > 0.02
    albedo = np.where(band[..., None], linear_from_lab(labs[0]), linear_from_lab(labs[1]))
    albedo = albedo * (1 + 0.12 * layered(x * 90, y * 160, seed + 3, 2))[..., None]
    return _painted_plane("rug", albedo, 3.2, 0.95, 0.05, lambda gx, gy: -0.004 + 0.003 * layered(gx * 20, gy * 20, seed, 2))


def grass(seed):
    """A lawn seen from above."""
    x, y = _grid(1024, 3.2)
    share = np.clip(0.5 + 0.5 * layered(x * 30, y * 60, seed, 4) + 0.2 * layered(x * 3, y * 3, seed + 1, 2), 0, 1)[..., None]
    albedo = linear_from_lab((52, -26, 38)) * share + linear_from_lab((28, -16, 22)) * (1 - share)
    return _painted_plane("grass", albedo, 3.2, 0.9, 0.05, lambda gx, gy: -0.01 + 0.01 * layered(gx * 35, gy * 35, seed, 2))


FLOORS = {
    "oak planks": lambda seed: planks(seed),
    "pale planks": lambda seed: planks(seed, (82, 3, 14), (72, 5, 18), 0.11),
    "dark planks": lambda seed: planks(seed, (38, 9, 14), (27, 8, 11), 0.1, True),
    "grey screed": lambda seed: concrete(seed),
    "red tiles": lambda seed: tiles(seed, ((46, 26, 24), (50, 24, 26)), 0.16),
    "check tiles": lambda seed: tiles(seed),
    "white bed": lambda seed: bed(seed, {"pattern": "plain", "labs": [[93, 0, 3]]}),
    "blue bed": lambda seed: bed(seed, {"pattern": "plain", "labs": [[62, -6, -20]]}),
    "striped bed": lambda seed: bed(seed, {"pattern": "striped", "labs": [[90, 0, 5], [72, -3, -9]], "period": 0.06, "shares": [0.6, 0.4], "turned": True}),
    "green bed": lambda seed: bed(seed, {"pattern": "plain", "labs": [[50, -28, 30]]}),
    "flowered bed": lambda seed: bed(seed, {"pattern": "printed", "labs": [[88, 2, 8], [70, 22, 12], [60, -18, 14]], "count": 60, "size": 0.035, "motif": "flower"}),
    "wool rug": lambda seed: rug(seed),
    "lawn": lambda seed: grass(seed),
}


def wall(lab, seed, distance=0.02):
    """An upright plaster wall behind y = 0."""
    x, y = _grid(768, 3.2)
    tone = 1 + 0.05 * layered(x * 2, y * 2, seed, 4) + 0.02 * layered(x * 50, y * 50, seed + 1, 2)
    plane = _painted_plane("wall", linear_from_lab(lab) * tone[..., None], 3.2, 0.9, 0.1)
    plane.rotation_euler = (math.pi / 2, 0, 0)
    plane.location = (0, distance, 0.2)
    return plane


def tube(name, points, radius, material, closed=False):
    """A round rod along points."""
    curve = bpy.data.curves.new(name, "CURVE")
    curve.dimensions = "3D"
    curve.bevel_depth = radius
    curve.bevel_resolution = 4
    line = curve.splines.new("POLY")
    line.points.add(len(points) - 1)
    for point, place in zip(line.points, points):
        point.co = (*place, 1)
    line.use_cyclic_u = closed
    thing = bpy.data.objects.new(name, curve)
    curve.materials.append(material)
    bpy.context.collection.objects.link(thing)
    return thing


def camera_at(place, toward, lens=32, focus=None, f_stop=None, roll=0.0):
    """The scene's camera; `lens` in mm for a 36 mm wide frame."""
    data = bpy.data.cameras.new("camera")
    data.sensor_fit = "VERTICAL"
    data.sensor_height = 36
    data.lens = lens
    if f_stop:
        data.dof.use_dof = True
        data.dof.focus_distance = focus
        data.dof.aperture_fstop = f_stop
    thing = bpy.data.objects.new("camera", data)
    bpy.context.collection.objects.link(thing)
    thing.location = place
    direction = Vector(toward) - Vector(place)
    thing.rotation_euler = (direction.to_track_quat("-Z", "Y").to_matrix() @ Matrix.Rotation(roll, 3, "Z")).to_euler()
    bpy.context.scene.camera = thing
    return thing
