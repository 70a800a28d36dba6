"""Augmentation on the GPU: places, lights and company that the street photos do not show."""

import math

import torch
from torch.nn import functional as F

def rand(n, low, high, device):
    return torch.rand(n, device=device) * (high - low) + low


def shown(images):
    """0..255 to what the network takes, 0..1, channels last in memory."""
    return (images.float() / 255).contiguous(memory_format=torch.channels_last)


def affine_grid(n, height, width, device, scale, degrees, shift_x, shift_y, flip=True):
    """Sampling grids: scale > 1 enlarges; shifts in half-widths of the frame."""
    angle = rand(n, -1, 1, device) * math.radians(1) * degrees
    cos, sin = torch.cos(angle) / scale, torch.sin(angle) / scale
    mirror = torch.where(torch.rand(n, device=device) < 0.5, -1.0, 1.0) if flip else torch.ones(n, device=device)
    ratio = height / width
    theta = torch.zeros(n, 2, 3, device=device)
    theta[:, 0, 0], theta[:, 0, 1], theta[:, 0, 2] = cos * mirror, -sin * ratio, -shift_x / scale
    theta[:, 1, 0], theta[:, 1, 1], theta[:, 1, 2] = sin / ratio * mirror, cos, -shift_y / scale
    return F.affine_grid(theta, (n, 1, height, width), align_corners=False)


def warp(images, labels, grid):
    """Images, labels and what lies inside the source frame, resampled."""
    ones = torch.ones_like(images[:, :1])
    moved = F.grid_sample(torch.cat([images, ones], 1), grid, mode="bilinear", padding_mode="zeros", align_corners=False)
    lab = F.grid_sample(labels[:, None].float(), grid, mode="nearest", padding_mode="zeros", align_corners=False)[:, 0]
    return moved[:, :3], lab.round().long(), moved[:, 3:]


def soft(mask, radius=1):
    kernel = 2 * radius + 1
    return F.avg_pool2d(mask, kernel, 1, radius)


def colour_jitter(images):
    """Lamps, exposure, contrast, saturation, blur and noise of bedroom photos; 0..255 floats."""
    n, device = images.shape[0], images.device
    x = (images / 255).clamp(0, 1)
    warm = rand(n, -0.35, 0.35, device)
    gains = torch.stack([1 + warm * 0.6, 1 + rand(n, -0.06, 0.06, device), 1 - warm], 1)
    x = x.clamp_min(1e-4) ** 2.2 * gains.view(n, 3, 1, 1) * (2 ** rand(n, -0.9, 0.7, device)).view(n, 1, 1, 1)
    x = x.clamp(0, 1).clamp_min(1e-5) ** (1 / (2.2 * rand(n, 0.8, 1.25, device))).view(n, 1, 1, 1)
    grey = x.mean(1, keepdim=True)
    x = grey + (x - grey) * rand(n, 0.5, 1.5, device).view(n, 1, 1, 1)
    middle = x.mean((1, 2, 3), keepdim=True)
    x = middle + (x - middle) * rand(n, 0.75, 1.3, device).view(n, 1, 1, 1)
    blurred = F.avg_pool2d(x, 5, 1, 2)
    some = (torch.rand(n, device=device) < 0.2).view(n, 1, 1, 1)
    x = torch.where(some, blurred, x)
    x = x + torch.randn_like(x) * rand(n, 0, 0.035, device).view(n, 1, 1, 1)
    return x.clamp(0, 1) * 255


class Grounds:
    """Backgrounds without people: strips beside the person in street photos, and textures (floors, beds, checks, plain walls)."""

    def __init__(self, photos, labels):
        width = photos.shape[3]
        strips = []
        for left, right in ((0, width // 4), (width - width // 4, width)):
            clean = (labels[:, :, left:right] == 0).flatten(1).float().mean(1) > 0.985
            strip = photos[clean][:, :, :, left:right]
            strips.append(torch.cat([strip, strip.flip(3), strip, strip.flip(3)], 3))
        self.strips = torch.cat(strips)

    def take(self, n, height, width):
        device = self.strips.device
        pick = torch.randint(len(self.strips), (n,), device=device)
        grid = affine_grid(n, height, width, device, rand(n, 1.0, 3.0, device), 20, rand(n, -0.4, 0.4, device), rand(n, -0.6, 0.6, device))
        street = F.grid_sample(self.strips[pick].float(), grid, padding_mode="reflection", align_corners=False)
        texture = self.textures(n, height, width, device)
        return torch.where((torch.rand(n, device=device) < 0.5).view(n, 1, 1, 1), street, texture)

    def textures(self, n, height, width, device):
        base = rand(n * 3, 20, 245, device).view(n, 3, 1, 1)
        grey = base.mean(1, keepdim=True)
        base = grey + (base - grey) * rand(n, 0, 0.8, device).view(n, 1, 1, 1)
        out = base.expand(n, 3, height, width).clone()
        for cells, strength in ((3, 30), (12, 22), (48, 16), (128, 10)):
            noise = torch.randn(n, 3, cells * 3 // 2, cells, device=device)
            mono = torch.rand(n, 1, 1, 1, device=device) < 0.7
            noise = torch.where(mono, noise[:, :1].expand_as(noise), noise)
            amount = rand(n, 0, strength, device).view(n, 1, 1, 1)
            out += F.interpolate(noise, (height, width), mode="bilinear", align_corners=False) * amount
        y = torch.linspace(0, 1, height, device=device).view(1, 1, height, 1)
        x = torch.linspace(0, 1, width, device=device).view(1, 1, 1, width)
        angle = rand(n, 0, math.pi, device).view(n, 1, 1, 1)
        along = x * torch.cos(angle) + y * torch.sin(angle) * 1.5
        across = -x * torch.sin(angle) + y * torch.cos(angle) * 1.5
        rate = rand(n, 3, 30, device).view(n, 1, 1, 1)
        stripes = torch.sign(torch.sin(along * rate * 6.28))
        checks = stripes * torch.sign(torch.sin(across * rate * 6.28))
        which = torch.randint(5, (n,), device=device).view(n, 1, 1, 1)
        other = torch.randn(n, 3, 1, 1, device=device) * 40
        out = torch.where(which == 0, out + stripes * other, torch.where(which == 1, out + checks * other, out))
        light = 1 + rand(n, -0.35, 0.35, device).view(n, 1, 1, 1) * (along - 0.5)
        return (out * light).clamp(0, 255)


def outfits_batch(photos, labels, grounds, n, near_share=0.6, company_share=0.15):
    """
    Street outfits, off centre, small, cut by the frame, sometimes two in one picture, sometimes on another ground, and which photos they are.
    near_share of them stay about where they were.
    """
    device, (height, width) = photos.device, photos.shape[2:]
    pick = torch.randint(len(photos), (n,), device=device)
    near = torch.rand(n, device=device) < near_share
    scale = torch.where(near, rand(n, 0.9, 1.3, device), torch.exp(rand(n, math.log(0.4), math.log(2.4), device)))
    shift = torch.where(near, rand(n, -0.15, 0.15, device), rand(n, -0.75, 0.75, device))
    lift = torch.where(near, rand(n, -0.1, 0.1, device), rand(n, -0.6, 0.6, device))
    grid = affine_grid(n, height, width, device, scale, 12, shift, lift)
    image, label, inside = warp(photos[pick].float(), labels[pick], grid)
    ground = grounds.take(n, height, width)
    person = soft((label > 0).float()[:, None])
    new_ground = (torch.rand(n, device=device) < 0.3).view(n, 1, 1, 1)
    # Outside the source frame there is nothing to see: a ground takes its place.
    keep = torch.where(new_ground, torch.minimum(person, inside), inside)
    image = image * keep + ground * (1 - keep)
    company = torch.rand(n, device=device) < company_share
    other = torch.randperm(n, device=device)
    grid2 = affine_grid(n, height, width, device, rand(n, 0.7, 1.1, device), 8, rand(n, 0.35, 0.8, device) * torch.sign(torch.randn(n, device=device)), rand(n, -0.1, 0.1, device))
    guest, guest_label, _ = warp(photos[pick][other].float(), labels[pick][other], grid2)
    alpha = soft((guest_label > 0).float()[:, None]) * company.view(n, 1, 1, 1)
    image = guest * alpha + image * (1 - alpha)
    label = torch.where((guest_label > 0) & company.view(n, 1, 1), guest_label, label)
    return image, label, pick


def cutouts_batch(photos, labels, grounds, n):
    """One garment cut out of an outfit, turned, enlarged, with a soft shadow, on a ground. Label: 1 = clothes, 0 = not."""
    device, (height, width) = photos.device, photos.shape[2:]
    pick = torch.randint(len(photos), (n,), device=device)
    lab = labels[pick]
    areas = torch.stack([(lab == c).flatten(1).float().mean(1) for c in range(1, 8)], 1)
    slot = torch.multinomial((areas > 0.02).float() + 1e-6, 1)[:, 0] + 1
    one = (lab == slot.view(n, 1, 1)).float()
    ys = torch.arange(height, device=device).view(1, height, 1)
    xs = torch.arange(width, device=device).view(1, 1, width)
    total = one.flatten(1).sum(1).clamp_min(1)
    cy = (one * ys).flatten(1).sum(1) / total / height * 2 - 1
    cx = (one * xs).flatten(1).sum(1) / total / width * 2 - 1
    size = torch.sqrt(total / (height * width))
    scale = (rand(n, 0.4, 0.75, device) / size.clamp_min(0.05)).clamp(0.6, 5)
    grid = affine_grid(n, height, width, device, scale, 180, rand(n, -0.2, 0.2, device), rand(n, -0.2, 0.2, device))
    grid = grid + torch.stack([cx, cy], 1).view(n, 1, 1, 2)
    moved, label, _ = warp(photos[pick].float(), one, grid)
    alpha = soft(label.float()[:, None])
    ground = grounds.take(n, height, width)
    shadow = F.avg_pool2d(torch.roll(alpha, (4, 3), (2, 3)), 9, 1, 4) * rand(n, 0, 0.6, device).view(n, 1, 1, 1)
    image = moved * alpha + ground * (1 - shadow) * (1 - alpha)
    return image, label
