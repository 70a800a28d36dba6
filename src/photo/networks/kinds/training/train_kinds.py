"""Trains what tells the kind of a worn piece. One GPU, about nine minutes.

    python train_kinds.py OUTFITS-KINDS.tar --out kinds

First five teachers side by side, each without a fifth of the photos; then the network that ships, which learns from the labels and from the teachers
that did not see the photo. Writes OUT.pt and OUT-teacherN.pt (weight averages) and OUT.json (options, figures). Seeds are fixed.
"""

import argparse
import copy
import json
import math
import pathlib
import time

import torch

import beside  # noqa: F401
from augment import normalised
from crops import disturbed_crops, disturbed_frames
from figures import all_figures
from kind_network import Kinds, Outline, logs_of
from learn import Average, Lots, features_of, wrongness
from outfits import Outfits
from pieces import Pieces, outlined
from steps import begun

FOLDS = 5
WARM = 100


def arguments():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("outfits")
    parser.add_argument("--outline", default=str(pathlib.Path(__file__).parents[2] / "outline" / "outline.onnx"))
    parser.add_argument("--teacher-steps", type=int, default=767)
    parser.add_argument("--teacher-seconds", type=float, default=1e9, help="a phase ends sooner where its steps would take longer than this")
    parser.add_argument("--steps", type=int, default=2568)
    parser.add_argument("--seconds", type=float, default=1e9)
    parser.add_argument("--batch", type=int, default=160)
    parser.add_argument("--rate", type=float, default=5e-4)
    parser.add_argument("--side", type=int, default=160, help="side of the crop, pixels")
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--teachers", help="OUT of an earlier run whose teachers to take")
    parser.add_argument("--trust", type=float, default=0.4, help="share of the teachers in what is asked where the kind is known")
    parser.add_argument("--few", type=int, help="only so many photos of each sort, to try the code")
    parser.add_argument("--out", required=True)
    return parser.parse_args()


class Learner:
    """A network, its average, its optimiser, and which photos it may learn from."""

    def __init__(self, outline, kind_count, options, unseen=None):
        self.network = Kinds(outline, kind_count).to(next(outline.parameters()).device, memory_format=torch.channels_last)
        self.network.side = options.side
        self.kept = copy.deepcopy(self.network).eval().requires_grad_(False)
        self.average = Average(self.network, self.kept)
        self.unseen = unseen
        self.network.train()
        crop = self.network.crop
        groups = [
            ([*crop.stem.parameters(), *crop.stages.parameters()], options.rate),
            ([*crop.scale.parameters(), *crop.hidden.parameters(), *crop.scores.parameters()], 3 * options.rate),
            ([*self.network.head.parameters()], 2e-3),
        ]
        fused = next(outline.parameters()).is_cuda
        self.optimiser = torch.optim.AdamW([{"params": params, "full": full} for params, full in groups], lr=1e-3, weight_decay=0.05, fused=fused)

    def step(self, given, pieces, pick, half, slot_of, done, warm, taught=None, trust=0.0):
        for group in self.optimiser.param_groups:
            group["lr"] = group["full"] * warm * (0.5 + 0.5 * math.cos(math.pi * done)) + 1e-7
        crops, frame_masks, maps, whole, slots, numbers, head_slots, head_numbers = given
        with torch.autocast(crops.device.type, torch.bfloat16, enabled=crops.is_cuda):
            crop_scores = self.network.crop(crops, slots, numbers)
            head_scores = self.network.head(frame_masks, maps, whole, head_slots, head_numbers)
        allowed = 1 if self.unseen is None else (~self.unseen[pieces.photo[pick]]).float()
        loss = (wrongness(crop_scores, pieces, pick, slot_of, taught, trust) * allowed).mean()
        head_taught = None if taught is None else tuple(part[:half] for part in taught)
        head_loss = wrongness(head_scores, pieces, pick[:half], slot_of, head_taught, trust)
        loss = loss + (head_loss * (1 if self.unseen is None else allowed[:half])).mean()
        self.optimiser.zero_grad(set_to_none=True)
        loss.backward()
        torch.nn.utils.clip_grad_norm_(self.network.parameters(), 2.0)
        self.optimiser.step()
        self.average.take()
        return loss.detach()


def batch_of(outline, photos, pieces, pick, half, side):
    """Disturbed crops of all pieces; for the first half of them also whole photos, as the outline network sees them."""
    some, masks = photos[pieces.photo[pick]], pieces.mask_of(pick)
    crops, mirror = disturbed_crops(some, masks, pieces.box[pick], side=side)
    slots, numbers = features_of(pieces, pick, mirror)
    frames, frame_masks, frame_mirror = disturbed_frames(some[:half], masks[:half])
    head_slots, head_numbers = features_of(pieces, pick[:half], frame_mirror)
    with torch.autocast(crops.device.type, torch.bfloat16, enabled=crops.is_cuda):
        _, maps, whole = outline(normalised(frames * 255).contiguous(memory_format=torch.channels_last))
    return crops.contiguous(memory_format=torch.channels_last), frame_masks, maps, whole, slots, numbers, head_slots, head_numbers


@torch.no_grad()
def taught_by(teachers, given, pieces, pick, slot_of):
    """Probabilities of kinds within their slots and of slots, by the teachers that did not see the photo, or by all where all or none did."""
    crops, slots, numbers = given[0], given[4], given[5]
    with torch.autocast(crops.device.type, torch.bfloat16, enabled=crops.is_cuda):
        answers = [logs_of(one.kept.crop(crops, slots, numbers), slot_of) for one in teachers]
    unseen = torch.stack([one.unseen[pieces.photo[pick]] for one in teachers]).float()
    weight = torch.where(unseen.sum(0) > 0, unseen, torch.ones_like(unseen))
    weight = (weight / weight.sum(0))[..., None]
    return tuple((torch.stack(logs).exp() * weight).sum(0) for logs in zip(*answers))


def run(learners, lots, outline, photos, pieces, slot_of, options, steps, seconds, teachers=None):
    since, step, half = time.time(), 0, options.batch // 2
    while (done := max(step / steps, (time.time() - since) / seconds)) < 1:
        with torch.no_grad():
            pick = lots.draw(options.batch)
            given = batch_of(outline, photos, pieces, pick, half, options.side)
            taught = taught_by(teachers, given, pieces, pick, slot_of) if teachers else None
        losses = [one.step(given, pieces, pick, half, slot_of, done, min(1, (step + 1) / WARM), taught, options.trust) for one in learners]
        step += 1
        if step % 200 == 0 or step < 3:
            print(step, [round(loss.item(), 3) for loss in losses], f"{time.time() - since:.0f} s", flush=True)
    return step


def stored(network):
    return {key: value.half() if value.dtype.is_floating_point else value for key, value in network.state_dict().items()}


def main():
    options = arguments()
    start = time.time()
    device = begun(options.seed)
    outfits = Outfits(options.outfits, options.few)
    outline = Outline(options.outline).to(device, memory_format=torch.channels_last)
    photos = outfits.photos.to(device)
    pieces = Pieces(outfits, outlined(outline, photos)).to(device)
    slot_of = torch.tensor(outfits.slot_of, device=device)
    lots = Lots(pieces, [*outfits.train, *outfits.tag_train])
    kind_count = len(outfits.kinds)
    fold = torch.arange(len(photos), device=device) % FOLDS
    print(f"{len(pieces.photo)} pieces, {time.time() - start:.0f} s to load", flush=True)
    teachers = [Learner(outline, kind_count, options, fold == at) for at in range(FOLDS)]
    if options.teachers:
        for at, one in enumerate(teachers):
            weights = torch.load(f"{options.teachers}-teacher{at}.pt", map_location=device, weights_only=True)
            one.kept.load_state_dict({key: value.float() if value.dtype.is_floating_point else value for key, value in weights.items()})
        teacher_steps = None
    else:
        teacher_steps = run(teachers, lots, outline, photos, pieces, slot_of, options, options.teacher_steps, options.teacher_seconds)
    learner = Learner(outline, kind_count, options)
    steps = run([learner], lots, outline, photos, pieces, slot_of, options, options.steps, options.seconds, teachers)
    networks = {"student": learner.kept, "first teacher": teachers[0].kept}
    figures = {name: all_figures(outline, network, outfits, photos, pieces, slot_of, lots.frequency) for name, network in networks.items()}
    for name, ways in figures.items():
        for way, one in ways.items():
            print(name, way, {key: round(value, 3) if isinstance(value, float) else value for key, value in one.items()}, flush=True)
    torch.save({"weights": stored(learner.kept), "frequency": lots.frequency.cpu(), "kinds": outfits.kinds, "slot_of": outfits.slot_of, "side": options.side}, f"{options.out}.pt")
    for at, one in enumerate(teachers):
        torch.save(stored(one.kept), f"{options.out}-teacher{at}.pt")
    report = {"options": vars(options), "teacher_steps": teacher_steps, "steps": steps, "seconds": round(time.time() - start), "kinds": outfits.kinds, "figures": figures}
    pathlib.Path(f"{options.out}.json").write_text(json.dumps(report, indent=1))


if __name__ == "__main__":
    main()
