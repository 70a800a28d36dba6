"""What photos teach of which somebody said only what is worn: wherever cloth is, it is of a slot that is tagged."""

import torch
from torch.nn import functional as F

import beside  # noqa: F401
from augment import affine_grid, rand
from outfits import SLOTS

# Answers are raised to this power before they are taught: the learner is to be as sure as the teacher, or a little more.
SHARPER = 1.4
# A slot that is not tagged may still be there: tags leave out shoes and small things most.
OFTEN_UNTAGGED = {"shoes": 1.0, "accessory": 1.0, "legwear": 0.1}
UNTAGGED = 0.003


def slots_worn(tags, slot_of_kind):
    """How far each slot may be in a photo by its tags, 7 numbers, 0..1."""
    tagged = {slot_of_kind[tag] for tag in tags if tag in slot_of_kind}
    return torch.tensor([1.0 if slot in tagged else OFTEN_UNTAGGED.get(slot, UNTAGGED) for slot in SLOTS])


def allowed_answers(probs, worn):
    """Class probabilities N x 10 x H x W with those of slots that are not worn given to those that are; how likely cloth is stays. `worn` N x 7."""
    cloth = probs[:, 1:8]
    kept = cloth * worn[:, :, None, None]
    kept = kept * (cloth.sum(1, keepdim=True) / kept.sum(1, keepdim=True).clamp_min(1e-6))
    return torch.cat([probs[:, :1], kept, probs[:, 8:]], 1)


def taught_loss(logits, probs):
    """Kullback-Leibler divergence from sharpened class probabilities; the hardest third of the pixels counts as much as all together."""
    wanted = probs.clamp_min(1e-6) ** SHARPER
    wanted = wanted / wanted.sum(1, keepdim=True)
    losses = F.kl_div(logits.float().log_softmax(1), wanted, reduction="none").sum(1).flatten(1)
    return losses.mean() + losses.topk(losses.shape[1] // 3, 1).values.mean()


def tagged_batch(photos, worn, n, plain=0.7):
    """Tagged photos about where they are, mirrored, turned and enlarged a little, with which slots may be worn."""
    device, (height, width) = photos.device, photos.shape[2:]
    pick = torch.randint(len(photos), (n,), device=device)
    near = torch.rand(n, device=device) < plain
    scale = torch.where(near, rand(n, 0.95, 1.2, device), rand(n, 0.6, 1.6, device))
    shift, lift = (torch.where(near, rand(n, -0.1, 0.1, device), rand(n, -0.35, 0.35, device)) for _ in range(2))
    grid = affine_grid(n, height, width, device, scale, 10, shift, lift)
    return F.grid_sample(photos[pick].float(), grid, padding_mode="border", align_corners=False), worn[pick]
