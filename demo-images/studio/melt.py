"""Rounded parts melted into one skin: bodies, and clothes as wider skins with creases."""

import math

import bpy
import numpy as np

from fabric import TILE
from noise import creases, layered


def loft(rings):
    """A closed surface through rings of (centre, rx, ry) level in z."""
    turns = np.linspace(0, 2 * np.pi, 24, endpoint=False)
    points = [[(cx + rx * np.cos(t), cy + ry * np.sin(t), z) for t in turns] for (cx, cy, z), rx, ry in rings]
    count, around = len(points), 24
    faces = [(i * around + k, i * around + (k + 1) % around, (i + 1) * around + (k + 1) % around, (i + 1) * around + k) for i in range(count - 1) for k in range(around)]
    faces += [tuple(range(around))[::-1], tuple((count - 1) * around + k for k in range(around))]
    return [p for ring in points for p in ring], faces


def limb(a, b, ra, rb, flat=1.0):
    """A round-ended tapering tube from a to b."""
    a, b = np.array(a, dtype=float), np.array(b, dtype=float)
    axis = (b - a) / np.linalg.norm(b - a)
    helper = np.array([0, 1, 0]) if abs(axis[1]) < 0.9 else np.array([1, 0, 0])
    u = np.cross(axis, helper)
    u /= np.linalg.norm(u)
    v = np.cross(axis, u)
    stops = [(a - axis * ra * math.sin(t), ra * math.cos(t)) for t in np.linspace(1.45, 0, 5)] + [
        (b + axis * rb * math.sin(t), rb * math.cos(t)) for t in np.linspace(0, 1.45, 5)
    ]
    turns = np.linspace(0, 2 * np.pi, 20, endpoint=False)
    points = [[c + r * (np.cos(t) * u + flat * np.sin(t) * v) for t in turns] for c, r in stops]
    count, around = len(points), 20
    faces = [(i * around + k, i * around + (k + 1) % around, (i + 1) * around + (k + 1) % around, (i + 1) * around + k) for i in range(count - 1) for k in range(around)]
    faces += [tuple(range(around))[::-1], tuple((count - 1) * around + k for k in range(around))]
    return [tuple(p) for ring in points for p in ring], faces


def ball(centre, rx, ry, rz):
    stops = np.linspace(-1.5, 1.5, 13)
    return loft([((centre[0], centre[1], centre[2] + rz * math.sin(t)), rx * math.cos(t), ry * math.cos(t)) for t in stops])


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
