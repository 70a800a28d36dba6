"""Flat pieces of cloth: an outline becomes a fine mesh whose height is a function of where one is on it."""

import bpy
import numpy as np
from mathutils import Vector, geometry

from noise import creases, layered


def rounded(points, closed=True, times=3):
    """A polygon with its corners cut round (Chaikin); a point given as (x, y, 'corner') stays sharp. Not closed: ends stay."""
    marked = [(p[0], p[1], len(p) > 2) for p in points]
    for _ in range(times):
        result = []
        count = len(marked)
        for i in range(count if closed else count - 1):
            a, b = marked[i], marked[(i + 1) % count]
            if a[2] or (not closed and i == 0):
                result.append(a)
            else:
                result.append((0.75 * a[0] + 0.25 * b[0], 0.75 * a[1] + 0.25 * b[1], False))
            if not b[2] and not (not closed and i == count - 2):
                result.append((0.25 * a[0] + 0.75 * b[0], 0.25 * a[1] + 0.75 * b[1], False))
        if not closed:
            result.append(marked[-1])
        marked = result
    return [(x, y) for x, y, _ in marked]


def mirrored(right_half):
    """A whole outline from its right half, which runs from the top middle to the bottom middle."""
    left = [(-p[0], *p[1:]) for p in reversed(right_half) if abs(p[0]) > 1e-6]
    return list(right_half) + left


def inside(outline, points):
    """Which points lie in the polygon."""
    poly = np.asarray(outline)
    x, y = points[:, 0], points[:, 1]
    result = np.zeros(len(points), dtype=bool)
    for (x1, y1), (x2, y2) in zip(poly, np.roll(poly, -1, axis=0)):
        if y1 != y2:
            crosses = (y1 > y) != (y2 > y)
            result ^= crosses & (x < (x2 - x1) * (y - y1) / (y2 - y1) + x1)
    return result


def edge_distance(outline, points):
    """Distance of each point to the polygon's edge."""
    poly = np.asarray(outline)
    best = np.full(len(points), np.inf)
    for a, b in zip(poly, np.roll(poly, -1, axis=0)):
        ab = b - a
        length = max(ab @ ab, 1e-12)
        t = np.clip(((points - a) @ ab) / length, 0, 1)
        best = np.minimum(best, np.hypot(*(points - a - t[:, None] * ab).T))
    return best


class Piece:
    """One flat piece: outline in metres, how high it lies, how it puffs and creases, and how its cloth's grain runs."""

    def __init__(
        self, outline, lift=0.0, on=None, puff=0.008, rim=0.02, fold=0.006, scale=0.11, along=90.0, grain=0.0, seed=1, spacing=0.008, thickness=0.003, part="cloth"
    ):
        self.outline, self.lift, self.on = outline, lift, on
        self.puff, self.rim, self.fold, self.scale = puff, rim, fold, scale
        self.along, self.grain, self.seed = along, grain, seed
        self.spacing, self.thickness, self.part = spacing, thickness, part

    def move(self, dx, dy):
        """Shifts the outline; the creases stay where they are on the ground."""
        self.outline = [(p[0] + dx, p[1] + dy, *p[2:]) for p in self.outline]

    def height(self, points):
        """Height in metres above the ground at points (x, y)."""
        edge = edge_distance(self.outline, points) * inside(self.outline, points)
        bulge = 1 - np.exp(-edge / self.rim)
        angle = np.radians(self.along)
        u = points[:, 0] * np.cos(angle) + points[:, 1] * np.sin(angle)
        v = -points[:, 0] * np.sin(angle) + points[:, 1] * np.cos(angle)
        bent = v + 0.25 * self.scale * layered(u / (2 * self.scale), v / (2 * self.scale), self.seed + 5, 2)
        waves = 0.5 * layered(u / (self.scale * 3.2), bent / (self.scale * 1.3), self.seed, 2)
        sharp = creases(u / (self.scale * 2.6), bent / self.scale, self.seed + 9) * (0.5 + layered(u / 0.22, v / 0.22, self.seed + 3, 1))
        below = self.on.height(points) if self.on else 0
        return below + self.lift + bulge * (self.puff + self.fold * (waves + np.maximum(sharp, 0))) + 0.0005

    def build(self, name, material, fabric_size=1.2):
        """A mesh object of this piece, its texture coordinates in shares of the fabric tile."""
        outline = np.asarray(self.outline)
        low, high = outline.min(axis=0), outline.max(axis=0)
        step = self.spacing
        rows = np.arange(low[1], high[1], step * 0.87)
        grid = np.array([(x + (step / 2 if i % 2 else 0), y) for i, y in enumerate(rows) for x in np.arange(low[0], high[0], step)])
        grid = grid[inside(self.outline, grid)]
        grid = grid[edge_distance(self.outline, grid) > step * 0.45]
        border = []
        for a, b in zip(outline, np.roll(outline, -1, axis=0)):
            parts = max(1, int(np.hypot(*(b - a)) / step))
            border.extend(a + (b - a) * k / parts for k in range(parts))
        points = [Vector(p) for p in border] + [Vector(p) for p in grid]
        edges = [(i, (i + 1) % len(border)) for i in range(len(border))]
        flat, _, faces, *_ = geometry.delaunay_2d_cdt(points, edges, [list(range(len(border)))], 1, 1e-5)
        xy = np.array([(p.x, p.y) for p in flat])
        mesh = bpy.data.meshes.new(name)
        mesh.from_pydata([(x, y, z) for (x, y), z in zip(xy, self.height(xy))], [], faces)
        turn = np.radians(self.grain)
        uv = np.stack([xy[:, 0] * np.cos(turn) + xy[:, 1] * np.sin(turn), -xy[:, 0] * np.sin(turn) + xy[:, 1] * np.cos(turn)], 1) / fabric_size
        loops = np.array([loop.vertex_index for loop in mesh.loops])
        layer = mesh.uv_layers.new(name="cloth")
        layer.data.foreach_set("uv", (uv[loops] + 0.5).astype(np.float32).ravel())
        mesh.polygons.foreach_set("use_smooth", [True] * len(mesh.polygons))
        mesh.materials.append(material)
        thing = bpy.data.objects.new(name, mesh)
        bpy.context.collection.objects.link(thing)
        shell = thing.modifiers.new("thickness", "SOLIDIFY")
        shell.thickness, shell.offset = self.thickness, -1
        return thing
