"""From the scene to a picture: Cycles passes, cleaned of noise, through a phone-like camera."""

import tempfile
from pathlib import Path

import bpy
import numpy as np
from PIL import Image

from colour import encoded

PASSES = ("Image", "DiffCol", "Normal", "Depth", "IndexOB", "GlossCol", "Env")


def prepare(width, height, samples):
    """Cycles on the processor, few bounces: cloth needs no more."""
    scene = bpy.context.scene
    scene.render.engine = "CYCLES"
    scene.cycles.device = "CPU"
    scene.cycles.samples = samples
    scene.cycles.use_denoising = False
    scene.cycles.use_adaptive_sampling = False
    scene.cycles.max_bounces, scene.cycles.diffuse_bounces, scene.cycles.glossy_bounces = 3, 2, 1
    scene.cycles.caustics_reflective = scene.cycles.caustics_refractive = False
    scene.cycles.sample_clamp_indirect = 2
    scene.cycles.sample_clamp_direct = 20
    scene.render.resolution_x, scene.render.resolution_y, scene.render.resolution_percentage = width, height, 100
    scene.view_settings.view_transform = "Standard"
    layer = bpy.context.view_layer
    layer.use_pass_diffuse_color = layer.use_pass_normal = layer.use_pass_z = layer.use_pass_object_index = True
    layer.use_pass_glossy_color = layer.use_pass_environment = True


def rendered_passes():
    """The passes as arrays (height x width x channels, row 0 on top)."""
    scene = bpy.context.scene
    scene.use_nodes = True
    tree = scene.node_tree
    tree.nodes.clear()
    source = tree.nodes.new("CompositorNodeRLayers")
    with tempfile.TemporaryDirectory() as folder:
        for name in PASSES:
            out = tree.nodes.new("CompositorNodeOutputFile")
            out.base_path = folder
            out.format.file_format = "OPEN_EXR"
            out.format.color_depth = "32"
            out.format.color_mode = "RGB"
            out.file_slots[0].path = f"{name}_"
            tree.links.new(source.outputs[name], out.inputs[0])
        bpy.ops.render.render()
        result = {}
        for name in PASSES:
            path = next(Path(folder).glob(f"{name}_*.exr"))
            image = bpy.data.images.load(str(path))
            image.colorspace_settings.name = "Non-Color"
            width, height = image.size
            pixels = np.empty(width * height * 4, dtype=np.float32)
            image.pixels.foreach_get(pixels)
            result[name] = pixels.reshape(height, width, 4)[::-1, :, :3].copy()
            bpy.data.images.remove(image)
    return result


def _shifted(array, dy, dx):
    return np.roll(np.roll(array, dy, axis=0), dx, axis=1)


def light_without_noise(light, normal, depth, levels=4):
    """
    The light that falls on each pixel, smoothed where the surface is one (edge-avoiding wavelets after Dammertz et al. 2010):
    neighbours count by how alike normal, depth and light are. Texture is not in here, so none is lost.
    """
    smooth = light
    depth = depth[..., :1]
    for level in range(levels):
        step = 2**level
        total = smooth * 0.25
        weights = np.full(smooth.shape[:2] + (1,), 0.25, dtype=np.float32)
        brightness = smooth.mean(axis=2, keepdims=True)
        tolerance = 0.5 / 2**level
        for dy in (-step, 0, step):
            for dx in (-step, 0, step):
                if dy == dx == 0:
                    continue
                kernel = 0.125 if dy == 0 or dx == 0 else 0.0625
                toward = ((_shifted(normal, dy, dx) - normal) ** 2).sum(axis=2, keepdims=True)
                nearer = np.abs(_shifted(depth, dy, dx) - depth) / (0.01 * depth + 1e-4) / step
                brighter = np.abs(_shifted(brightness, dy, dx) - brightness) / (brightness + 0.02)
                weight = kernel * np.exp(-toward / 0.05 - nearer - brighter / tolerance)
                total = total + weight * _shifted(smooth, dy, dx)
                weights = weights + weight
        smooth = total / weights
    return smooth


def clean_picture(passes):
    """
    (picture, light): the scene's linear colours without noise, and the light on each pixel. Surfaces are albedo times light;
    what shows the sky directly is added as it is.
    """
    albedo = np.maximum(passes["DiffCol"] + 0.04 * passes["GlossCol"], 0.006)
    light = np.clip((passes["Image"] - passes["Env"]) / albedo, 0, 30)
    light = light_without_noise(light, passes["Normal"], np.minimum(passes["Depth"], 1e4))
    return albedo * light + passes["Env"], light


def photographed(linear, settings, lamp, brightness, seed):
    """
    8-bit sRGB as a phone would write it. `lamp`: linear sRGB of the light, whose cast automatic white balance takes out by
    `balance` (1 = all); `brightness` of that light where the subject lies; `exposure_stops` against a white sheet at 0.8 there;
    then contrast, saturation, noise.
    """
    lamp = np.asarray(lamp, dtype=float)
    tint = np.array([2 ** settings.get("red_stops", 0.0), 1.0, 2 ** settings.get("blue_stops", 0.0)])
    gains = (lamp / lamp.mean()) ** -settings.get("balance", 1.0) * tint
    strongest = (lamp / lamp.mean() * gains).max()
    picture = linear * gains * (0.8 * 2 ** settings.get("exposure_stops", 0.0) / (brightness * strongest))
    grey = picture @ np.array([0.2126, 0.7152, 0.0722])
    picture = grey[..., None] + settings.get("saturation", 1.0) * (picture - grey[..., None])
    value = encoded(np.clip(picture, 0, 1))
    value = value + settings.get("contrast", 0.0) * (value * value * (3 - 2 * value) - value)
    rng = np.random.default_rng(seed)
    noise = rng.normal(0, settings.get("noise", 1.0) / 255, value.shape)
    return (np.clip(value + noise, 0, 1) * 255 + 0.5).astype(np.uint8)


def photograph(path, settings, lamp, quality=87, seed=1):
    """
    Renders the scene to a JPEG, exposed for what carries an object index (the subject). Returns the map of object indices,
    0 = not the subject.
    """
    passes = rendered_passes()
    linear, light = clean_picture(passes)
    index = np.rint(passes["IndexOB"][..., 0]).astype(int)
    bright = light[index > 0].mean(axis=1)
    picture = photographed(linear, settings, lamp, float(np.percentile(bright, 75)), seed)
    Image.fromarray(picture).save(path, quality=quality, subsampling=0 if quality >= 90 else 2, optimize=True)
    return index
