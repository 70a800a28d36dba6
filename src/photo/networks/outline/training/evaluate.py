"""Figures on photos that were never fitted on."""

import torch
from torch.nn import functional as F

from augment import shown
from garment_archives import FIRST_KINDS, GARMENT_KINDS
from network import CLASSES
from steps import SCENE, SINGLE


@torch.no_grad()
def outfit_figures(network, photos, labels, batch=50):
    """IoU a class, clothes against the rest (cloth decided before which cloth), its precision and recall."""
    count = len(CLASSES)
    confusion = torch.zeros(count, count, device=photos.device)
    hit = wrong = missed = 0.0
    for image, truth in zip(photos.split(batch), labels.split(batch)):
        logits = network(shown(image))[0].float()
        probs = F.interpolate(logits.softmax(1), truth.shape[1:], mode="bilinear", align_corners=False)
        cloth = probs[:, 1:8].sum(1) > 0.5
        best = torch.where(cloth, probs[:, 1:8].argmax(1) + 1, torch.where(probs[:, [0, 8, 9]].argmax(1) == 0, 0, probs[:, [0, 8, 9]].argmax(1) + 7))
        confusion += torch.bincount((truth.long() * count + best).flatten(), minlength=count * count).view(count, count).float()
        real = (truth >= 1) & (truth <= 7)
        hit += (cloth & real).sum().item()
        wrong += (cloth & ~real).sum().item()
        missed += (~cloth & real).sum().item()
    inter = confusion.diag()
    iou = inter / (confusion.sum(0) + confusion.sum(1) - inter).clamp_min(1)
    return {
        "clothes": hit / (hit + wrong + missed),
        "precision": hit / max(1, hit + wrong),
        "recall": hit / max(1, hit + missed),
        "slots": iou[1:8].mean().item(),
        **{name: iou[i].item() for i, name in enumerate(CLASSES)},
    }


@torch.no_grad()
def untagged_share(network, photos, batch=50):
    """Share of the cloth of tagged photos kept for figures that is called a slot which cannot be there by its tags (shoes and accessories always can)."""
    wrong = cloth = 0.0
    for image, worn in zip(photos.tagged_val.split(batch), photos.worn_val.split(batch)):
        probs = network(shown(image))[0].float().softmax(1)
        told = probs[:, 1:8].argmax(1)
        is_cloth = probs[:, 1:8].sum(1) > 0.5
        may = worn.gather(1, told.flatten(1)).view_as(told)
        wrong += (is_cloth & (may < 0.05)).sum().item()
        cloth += is_cloth.sum().item()
    return wrong / max(1.0, cloth)


@torch.no_grad()
def garment_figures(network, garments, grounds, batch=64, scenes=512):
    """
    Kinds of kept-out single garments right at the first guess and within two: those of the first archive, of the second by old and by new kinds. Which
    of them are surely taken for single and for a scene; how many of `scenes` bare grounds are surely taken for a scene.
    """
    answers = [network(shown(image)) for image in garments.kept_photos.split(batch)]
    best = torch.cat([garment.topk(2, 1).indices for _, _, garment in answers])
    shows = torch.cat([photo.softmax(1) for _, photo, _ in answers])
    right = best == garments.kept_kinds[:, None]
    late = torch.arange(len(best), device=best.device) >= garments.first_new
    of_new = garments.kept_kinds >= len(FIRST_KINDS)
    out = {}
    for name, which in {"old": ~late, "more, old kinds": late & ~of_new, "more, new kinds": late & of_new}.items():
        out[name] = {"first": right[which][:, 0].float().mean().item(), "two": right[which].any(1).float().mean().item(), "count": int(which.sum())}
    mine = lambda at: garments.kept_kinds == at
    out["kinds"] = {kind: f"{int(right[mine(at)][:, 0].sum())} of {int(mine(at).sum())}" for at, kind in enumerate(GARMENT_KINDS)}
    bare = torch.cat([network(shown(grounds.take(batch, *garments.photos.shape[2:])))[1].softmax(1) for _ in range(scenes // batch)])
    sure = lambda probs, kind: (probs[:, kind] > 0.8).float().mean().item()
    return {**out, "single": (shows.argmax(1) == SINGLE).float().mean().item(), "single as scene": sure(shows, SCENE), "ground as scene": sure(bare, SCENE)}
