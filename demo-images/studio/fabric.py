"""Cloth: what colour lies where (exactly, as linear albedo), and the weave that catches the light."""

import bpy
import numpy as np

from colour import lab_from_linear, linear_from_lab
from noise import layered, perlin

TILE = 1.2
"""Side of the repeating piece of cloth, in metres."""
PIXELS = 1024


def _grid():
    axis = (np.arange(PIXELS) + 0.5) / PIXELS * TILE
    return np.meshgrid(axis, axis)  # x to the right, y upwards


def _band(position, period, shares):
    """Which of the shares each position falls in, repeating every period."""
    phase = (position / period) % 1
    return np.searchsorted(np.cumsum(shares)[:-1], phase, side="right")


def _motifs(x, y, colours, count, size, shape, seed):
    """Index map of scattered motifs over ground 0; they wrap round the tile's edges and keep off each other."""
    rng = np.random.default_rng(seed)
    index = np.zeros(x.shape, dtype=int)
    placed = []
    for _ in range(count * 30):
        if len(placed) == count:
            break
        centre = rng.uniform(0, TILE, 2)
        gaps = [np.hypot(*np.minimum(np.abs(centre - p), TILE - np.abs(centre - p))) for p in placed]
        if not gaps or min(gaps) > size * 2.3:
            placed.append(centre)
    for i, (cx, cy) in enumerate(placed):
        dx = (x - cx + TILE / 2) % TILE - TILE / 2
        dy = (y - cy + TILE / 2) % TILE - TILE / 2
        turn = rng.uniform(0, 2 * np.pi)
        r, angle = np.hypot(dx, dy), np.arctan2(dy, dx) + turn
        colour = 1 + i % (colours - 1)
        if shape == "dot":
            index[r < size] = colour
        elif shape == "leaf":
            u, v = r * np.cos(angle) / size, r * np.sin(angle) / size
            index[(np.abs(v) < 0.42 * (1 - u * u)) & (np.abs(u) < 1)] = colour
        else:  # flower with a heart of the next colour
            index[r < size * (0.72 + 0.28 * np.cos(5 * angle))] = colour
            index[r < size * 0.3] = 1 + (i + 1) % (colours - 1)
    return index


def cloth_colours(look, seed=1):
    """
    The cloth's albedo (PIXELS x PIXELS x 3, linear sRGB, row 0 at the bottom) and its true colours [{lab, share}].
    `look`: pattern, labs, and what the pattern needs (period in m, shares, motif, count, size, turned).
    """
    x, y = _grid()
    labs = look["labs"]
    linear = np.array([linear_from_lab(lab) for lab in labs])
    if linear.min() < -0.004 or linear.max() > 1.004:
        raise ValueError(f"Expected colours that sRGB can show, got {labs}")
    linear = np.clip(linear, 0, 1)
    pattern = look["pattern"]
    if pattern == "plain":
        return np.broadcast_to(linear[0], (*x.shape, 3)).copy(), [{"lab": labs[0], "share": 1.0}]
    if pattern == "mottled":
        fleck = look.get("size", 0.004)
        cells = int(TILE / fleck)
        noise = (
            layered(x / fleck, y / (fleck * look.get("stretch", 1.0)), seed, 2, cells)
            if look.get("stretch", 1.0) == 1.0
            else (perlin(x / fleck, (y / TILE) * max(1, int(cells / look["stretch"])), seed, cells))
        )
        share = np.clip(0.5 + look.get("strength", 1.0) * noise, 0, 1)[..., None]
        albedo = linear[0] * share + linear[1] * (1 - share)
        mean = lab_from_linear(albedo.reshape(-1, 3).mean(axis=0))
        return albedo, [{"lab": [round(float(v), 2) for v in mean], "share": 1.0}]
    if pattern == "striped":
        across = x if look.get("turned") else y
        index = _band(across, look["period"], look["shares"])
    elif pattern == "checked":
        warp, weft = _band(x, look["period"], look["shares"]), _band(y, look["period"], look["shares"])
        # Where a warp and a weft thread of different colours cross, the eye sees half of each.
        pairs = sorted({(min(a, b), max(a, b)) for a, b in zip(warp.ravel()[::7], weft.ravel()[::7])} | {(i, i) for i in range(len(labs))})
        mixes = np.array([(linear[a] + linear[b]) / 2 for a, b in pairs])
        lookup = {pair: i for i, pair in enumerate(pairs)}
        table = np.array([[lookup.get((min(a, b), max(a, b)), 0) for b in range(len(labs))] for a in range(len(labs))])
        index = table[warp, weft]
        linear, labs = mixes, [[round(float(v), 2) for v in lab_from_linear(mix)] for mix in mixes]
    elif pattern == "printed":
        index = _motifs(x, y, len(labs), look["count"], look["size"], look["motif"], seed)
    else:
        raise ValueError(f"Expected a known pattern, got {pattern}")
    counts = np.bincount(index.ravel(), minlength=len(labs)) / index.size
    truth = [{"lab": list(lab), "share": round(float(share), 4)} for lab, share in zip(labs, counts) if share > 0]
    return linear[index], sorted(truth, key=lambda colour: -colour["share"])


def _bump_nodes(tree, weave, coordinate):
    """The height of the weave as a node output, and how strongly it shows."""
    nodes, links = tree.nodes, tree.links
    scale = nodes.new("ShaderNodeVectorMath")
    scale.operation = "SCALE"
    scale.inputs["Scale"].default_value = TILE
    links.new(coordinate, scale.inputs[0])
    if weave in ("knit", "cord", "rib"):
        wave = nodes.new("ShaderNodeTexWave")
        wave.bands_direction = "X"
        wave.inputs["Scale"].default_value = {"knit": 34, "cord": 40, "rib": 24}[weave]
        wave.inputs["Distortion"].default_value = 1.5 if weave == "knit" else 0.2
        wave.inputs["Detail Scale"].default_value = 6
        links.new(scale.outputs[0], wave.inputs["Vector"])
        return wave.outputs["Fac"], {"knit": 0.35, "cord": 0.35, "rib": 0.5}[weave], 0.0025
    texture = nodes.new("ShaderNodeTexNoise")
    texture.inputs["Scale"].default_value = {"woven": 320, "felt": 130, "smooth": 40}[weave]
    texture.inputs["Detail"].default_value = 3
    links.new(scale.outputs[0], texture.inputs["Vector"])
    return texture.outputs["Fac"], {"woven": 0.25, "felt": 0.45, "smooth": 0.05}[weave], 0.0015


def cloth_material(name, look, seed=1):
    """A Blender material of this cloth and its true colours [{lab, share}]."""
    albedo, truth = cloth_colours(look, seed)
    image = bpy.data.images.new(name, PIXELS, PIXELS, float_buffer=True)
    image.colorspace_settings.name = "Linear"
    pixels = np.ones((PIXELS, PIXELS, 4), dtype=np.float32)
    pixels[..., :3] = albedo
    image.pixels.foreach_set(pixels.ravel())
    image.pack()
    material = bpy.data.materials.new(name)
    material.use_nodes = True
    tree = material.node_tree
    shader = tree.nodes["Principled BSDF"]
    shader.inputs["Roughness"].default_value = look.get("roughness", 0.9)
    shader.inputs["Specular"].default_value = look.get("specular", 0.08)
    coordinate = tree.nodes.new("ShaderNodeUVMap")
    texture = tree.nodes.new("ShaderNodeTexImage")
    texture.image = image
    texture.interpolation = "Linear"
    tree.links.new(coordinate.outputs[0], texture.inputs["Vector"])
    tree.links.new(texture.outputs["Color"], shader.inputs["Base Color"])
    height, strength, distance = _bump_nodes(tree, look.get("weave", "woven"), coordinate.outputs[0])
    bump = tree.nodes.new("ShaderNodeBump")
    bump.inputs["Strength"].default_value = strength
    bump.inputs["Distance"].default_value = distance
    tree.links.new(height, bump.inputs["Height"])
    tree.links.new(bump.outputs["Normal"], shader.inputs["Normal"])
    return material, truth


def plain_material(name, rgb, roughness=0.8, specular=0.2, metallic=0.0):
    """A material of one linear sRGB colour, for what is not cloth."""
    material = bpy.data.materials.new(name)
    material.use_nodes = True
    shader = material.node_tree.nodes["Principled BSDF"]
    shader.inputs["Base Color"].default_value = (*[float(v) for v in rgb], 1)
    shader.inputs["Roughness"].default_value = roughness
    shader.inputs["Specular"].default_value = specular
    shader.inputs["Metallic"].default_value = metallic
    return material
