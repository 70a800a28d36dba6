"""What the network is asked to get right."""

import torch
from torch.nn import functional as F


def at_half(labels):
    """Labels at the resolution of the logits."""
    return labels[:, ::2, ::2]


def class_weights(labels, count):
    """Softened inverse frequency, mean 1: rare classes count more, but not as much more as they are rarer."""
    share = torch.bincount(labels.flatten().long(), minlength=count).float() / labels.numel()
    weights = (share + 0.002) ** -0.35
    return weights / weights.mean()


def parse_loss(logits, labels, weights, hardest=0.5):
    """Cross-entropy over the hardest half of the pixels, and soft Dice over the classes seen."""
    losses = F.cross_entropy(logits, labels, weights, reduction="none").flatten(1)
    count = int(losses.shape[1] * hardest)
    cross = losses.topk(count, 1).values.mean()
    probs = logits.softmax(1)
    truth = F.one_hot(labels, logits.shape[1]).permute(0, 3, 1, 2).to(probs.dtype)
    inter = (probs * truth).sum((0, 2, 3))
    total = probs.sum((0, 2, 3)) + truth.sum((0, 2, 3))
    seen = truth.sum((0, 2, 3)) > 0
    dice = 1 - (2 * inter + 1) / (total + 1)
    return cross + dice[seen].mean()


def clothes_probability(logits):
    return logits.float().softmax(1)[:, 1:8].sum(1)


def cloth_loss(logits, labels):
    """Clothes against the rest, where the label is sure (0 or 1; 2 = ignored)."""
    prob = clothes_probability(logits).clamp(1e-4, 1 - 1e-4)
    sure = labels < 2
    truth = (labels == 1).float()
    losses = F.binary_cross_entropy(prob, truth, reduction="none")
    inter = (prob * truth * sure).sum((1, 2))
    dice = 1 - (2 * inter + 1) / ((prob * sure).sum((1, 2)) + (truth * sure).sum((1, 2)) + 1)
    return (losses * sure).sum() / sure.sum().clamp_min(1) + dice.mean()
