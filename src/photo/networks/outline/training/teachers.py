"""Three parsers side by side, each without a third of the labelled photos: what they say of photos that they did not see teaches the one that ships."""

import math
import time

import numpy as np
import torch

from augment import colour_jitter, outfits_batch, shown
from by_tags import allowed_answers, tagged_batch, taught_loss
from losses import at_half, parse_loss
from network import Parser
from outfit_photos import FOLDS
from steps import WeightAverage, take_step

WARM = 100
# From this share of the run on a teacher is heard on tagged photos itself.
OWN_WORD_FROM = 0.3


def parser_groups(network, rate):
    """The detector's layers learn at a quarter of the rate of what is new."""
    layers = {id(one) for one in network.trunk.parameters()}
    return [{"params": [*network.trunk.parameters()], "full": rate}, {"params": [one for one in network.parameters() if id(one) not in layers], "full": 4 * rate}]


def set_rates(optimiser, done, step):
    for group in optimiser.param_groups:
        group["lr"] = group["full"] * min(1, (step + 1) / WARM) * (0.5 + 0.5 * math.cos(math.pi * done)) + 1e-7


def progress(step, steps, since, seconds):
    return max(step / steps, (time.time() - since) / seconds)


class OneTeacher:
    def __init__(self, options, device):
        self.network = Parser(options.detector).to(device, memory_format=torch.channels_last)
        self.average = WeightAverage(self.network, decay=0.997)
        self.optimiser = torch.optim.AdamW(parser_groups(self.network, options.teacher_rate), lr=options.teacher_rate, weight_decay=0.05)


def train_teachers(options, photos, grounds, weights, device):
    """The averaged networks, and how many steps they took."""
    teachers = [OneTeacher(options, device) for _ in range(FOLDS)]
    since, step, n = time.time(), 0, options.batch
    while (done := progress(step, options.teacher_steps, since, options.teacher_seconds)) < 1:
        with torch.no_grad():
            o_image, o_label, pick = outfits_batch(photos.train, photos.train_labels, grounds, n, near_share=0.8, company_share=0)
            t_image, worn = tagged_batch(photos.tagged, photos.worn, n // 2)
            image = shown(colour_jitter(torch.cat([o_image, t_image])))
        for at, one in enumerate(teachers):
            set_rates(one.optimiser, done, step)
            seen = (photos.fold[pick] != at).nonzero()[:, 0]
            # Always as many: another size would be tuned for anew.
            seen = seen[torch.arange(n * 5 // 8, device=seen.device) % len(seen)]
            mine = torch.cat([seen, torch.arange(n, len(image), device=seen.device)])
            with torch.autocast(device, torch.bfloat16, enabled=device == "cuda"):
                logits = one.network(image[mine])[0].float()
                own = answer(one.average.network, image[n:])
            loss = parse_loss(logits[: len(seen)], at_half(o_label[seen]), weights)
            if done > OWN_WORD_FROM:
                loss = loss + 0.5 * taught_loss(logits[len(seen) :], allowed_answers(own, worn))
            take_step(one.network, one.optimiser, loss, one.average)
        step += 1
        if step % 100 == 0 or step == 2:
            print(step, round(loss.item(), 4), f"{time.time() - since:.0f} s", flush=True)
    return [one.average.network for one in teachers], step


def stored(network):
    return {key: value.half() if value.dtype.is_floating_point else value for key, value in network.state_dict().items()}


def load(network, path, device):
    weights = torch.load(path, map_location=device, weights_only=True)
    network.load_state_dict({key: value.float() if value.dtype.is_floating_point else value for key, value in weights.items()}, strict=False)
    return network.to(device, memory_format=torch.channels_last).eval()


@torch.no_grad()
def answer(network, image):
    """Class probabilities."""
    return network(image)[0].float().softmax(1)


def unseen_answer(teachers, image, fold):
    """Class probabilities by the teacher that did not see each photo; `fold` -1 = none did, so the first."""
    out = answer(teachers[0], image)
    for at, teacher in enumerate(teachers[1:], 1):
        out = torch.where((fold == at).view(-1, 1, 1, 1), answer(teacher, image), out)
    return out


def all_answers(teachers, image):
    return torch.stack([answer(teacher, image) for teacher in teachers]).mean(0)


def unseen_classes(teachers, photos, batch=64):
    """Class of each pixel of every photo, N x 192 x 128 uint8, by a teacher that did not see it; whether cloth is decided before which cloth."""
    folds = torch.cat([photos.fold, torch.full((len(photos.all) - len(photos.fold),), -1, device=photos.fold.device)])
    out = []
    for image, fold in zip(photos.all.split(batch), folds.split(batch)):
        probs = unseen_answer(teachers, shown(image), fold)
        other = probs[:, [0, 8, 9]].argmax(1)
        best = torch.where(probs[:, 1:8].sum(1) > 0.5, probs[:, 1:8].argmax(1) + 1, torch.where(other == 0, 0, other + 7))
        out.append(best.to(torch.uint8).cpu().numpy())
    return np.concatenate(out)
