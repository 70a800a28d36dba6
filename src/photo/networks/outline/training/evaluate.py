"""Figures on photos that were never fitted on."""

import torch
from torch.nn import functional as F

from augment import normalised
from network import CLASSES


@torch.no_grad()
def outfit_figures(network, photos, labels, batch=50):
    """IoU a class, clothes against the rest (cloth decided before which cloth), its precision and recall."""
    count = len(CLASSES)
    confusion = torch.zeros(count, count, device=photos.device)
    hit = wrong = missed = 0.0
    for image, truth in zip(photos.split(batch), labels.split(batch)):
        logits = network(normalised(image))[0].float()
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
def kind_figures(network, photos, kinds, batch=64):
    """Share of single garments whose kind is the first guess, or among the first two; and taken for single at all."""
    first = second = single = 0
    for image, kind in zip(photos.split(batch), kinds.split(batch)):
        _, photo, garment = network(normalised(image))
        top = garment.topk(2, 1).indices
        first += (top[:, 0] == kind).sum().item()
        second += (top == kind[:, None]).any(1).sum().item()
        single += (photo.argmax(1) == 1).sum().item()
    n = len(photos)
    return {"kind_first": first / n, "kind_first_two": second / n, "taken_for_single": single / n}
