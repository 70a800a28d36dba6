"""Trains what tells the kind of a worn piece. One GPU, about eight minutes.

    python train_kinds.py OUTFITS-KINDS.tar OUTLINE-unseen.npz DETECTOR.tflite --out kinds

First three teachers side by side, each without a third of the photos; then the network that ships, which learns from the labels and from the teachers
that did not see the photo. OUTLINE-unseen.npz comes from the outline's training. Writes OUT.pt and OUT-teacherN.pt (weight averages), OUT.onnx and OUT.json
(options, figures, those of the file among them), and stops where the file does not answer as the network does. Seeds are fixed.
"""

import argparse
import copy
import math
import time

import torch

import beside  # noqa: F401
from crops import disturbed_crops, disturbed_frames
from export_kinds import export_checked
from figures import all_figures
from kinds_file_figures import figures_of_file
from kind_network import Kinds, logs_of
from learn import Average, Lots, features_of, wrongness
from outfits import Outfits
from pieces import Pieces, outlined
from reported import differing, write_report
from steps import begun

FOLDS = 3
WARM = 100


def arguments():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("outfits")
    parser.add_argument("unseen")
    parser.add_argument("detector")
    parser.add_argument("--teacher-steps", type=int, default=361)
    parser.add_argument("--teacher-seconds", type=float, default=1e9, help="a phase ends sooner where its steps would take longer than this")
    parser.add_argument("--steps", type=int, default=2425)
    parser.add_argument("--seconds", type=float, default=1e9)
    parser.add_argument("--batch", type=int, default=100)
    parser.add_argument("--rate", type=float, default=5e-4)
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--teachers", help="OUT of an earlier run whose teachers to take")
    parser.add_argument("--trust", type=float, default=0.4, help="share of the teachers in what is asked where the kind is known")
    parser.add_argument("--few", type=int, help="only so many photos of each sort, to try the code")
    parser.add_argument("--out", required=True)
    return parser.parse_args()


class Learner:
    """A network, its average, its optimiser, and which photos it may not learn from."""

    def __init__(self, kind_count, options, device, unseen=None):
        self.network = Kinds(options.detector, kind_count).to(device, memory_format=torch.channels_last)
        self.kept = copy.deepcopy(self.network).eval().requires_grad_(False)
        self.average = Average(self.network, self.kept)
        self.unseen = unseen
        self.network.train()
        layers = {id(one) for one in self.network.trunk.parameters()}
        rest = [one for one in self.network.parameters() if id(one) not in layers]
        groups = [{"params": [*self.network.trunk.parameters()], "full": options.rate}, {"params": rest, "full": 3 * options.rate}]
        self.optimiser = torch.optim.AdamW(groups, lr=options.rate, weight_decay=0.05, fused=device == "cuda")

    def step(self, given, pieces, pick, slot_of, done, warm, taught=None, trust=0.0):
        for group in self.optimiser.param_groups:
            group["lr"] = group["full"] * warm * (0.5 + 0.5 * math.cos(math.pi * done)) + 1e-7
        with torch.autocast(pick.device.type, torch.bfloat16, enabled=pick.is_cuda):
            scores = self.network(*given)
        allowed = 1 if self.unseen is None else (~self.unseen[pieces.photo[pick]]).float()
        loss = (wrongness(scores, pieces, pick, slot_of, taught, trust) * allowed).mean()
        self.optimiser.zero_grad(set_to_none=True)
        loss.backward()
        torch.nn.utils.clip_grad_norm_(self.network.parameters(), 2.0)
        self.optimiser.step()
        self.average.take()
        return loss.detach()


def batch_of(photos, pieces, pick):
    """What the network is given of some pieces, disturbed; crop and whole photo are mirrored together, lit each otherwise."""
    some, masks = photos[pieces.photo[pick]], pieces.mask_of(pick)
    mirror = torch.where(torch.rand(len(pick), device=pick.device) < 0.5, -1.0, 1.0)
    crops = disturbed_crops(some, masks, pieces.box[pick], mirror)
    frames, frame_masks = disturbed_frames(some, masks, mirror)
    fast = lambda x: x.contiguous(memory_format=torch.channels_last)
    return fast(crops), fast(frames), frame_masks, *features_of(pieces, pick, mirror)


@torch.no_grad()
def taught_by(teachers, given, pieces, pick, slot_of):
    """Probabilities of kinds within their slots and of slots, by the teachers that did not see the photo, or by all where all or none did."""
    with torch.autocast(pick.device.type, torch.bfloat16, enabled=pick.is_cuda):
        answers = [logs_of(one.kept(*given), slot_of) for one in teachers]
    unseen = torch.stack([one.unseen[pieces.photo[pick]] for one in teachers]).float()
    weight = torch.where(unseen.sum(0) > 0, unseen, torch.ones_like(unseen))
    weight = (weight / weight.sum(0))[..., None]
    return tuple((torch.stack(logs).exp() * weight).sum(0) for logs in zip(*answers))


def run(learners, lots, photos, pieces, slot_of, options, steps, seconds, teachers=None):
    since, step = time.time(), 0
    while (done := max(step / steps, (time.time() - since) / seconds)) < 1:
        with torch.no_grad():
            pick = lots.draw(options.batch)
            given = batch_of(photos, pieces, pick)
            taught = taught_by(teachers, given, pieces, pick, slot_of) if teachers else None
        losses = [one.step(given, pieces, pick, slot_of, done, min(1, (step + 1) / WARM), taught, options.trust) for one in learners]
        step += 1
        if step % 100 == 0 or step < 3:
            print(step, [round(loss.item(), 3) for loss in losses], f"{time.time() - since:.0f} s", flush=True)
    return step


def stored(network):
    return {key: value.half() if value.dtype.is_floating_point else value for key, value in network.state_dict().items()}


def main():
    options = arguments()
    start = time.time()
    device = begun(options.seed)
    outfits = Outfits(options.outfits, options.few)
    pieces = Pieces(outfits, outlined(options.unseen, len(outfits.photos))).to(device)
    photos = outfits.photos.to(device)
    slot_of = torch.tensor(outfits.slot_of, device=device)
    lots = Lots(pieces, [*outfits.train, *outfits.tag_train])
    kind_count = len(outfits.kinds)
    fold = torch.arange(len(photos), device=device) % FOLDS
    print(f"{len(pieces.photo)} pieces, {time.time() - start:.0f} s to load", flush=True)
    teachers = [Learner(kind_count, options, device, fold == at) for at in range(FOLDS)]
    if options.teachers:
        for at, one in enumerate(teachers):
            weights = torch.load(f"{options.teachers}-teacher{at}.pt", map_location=device, weights_only=True)
            one.kept.load_state_dict({key: value.float() if value.dtype.is_floating_point else value for key, value in weights.items()})
        teacher_steps = None
    else:
        teacher_steps = run(teachers, lots, photos, pieces, slot_of, options, options.teacher_steps, options.teacher_seconds)
    learner = Learner(kind_count, options, device)
    steps = run([learner], lots, photos, pieces, slot_of, options, options.steps, options.seconds, teachers)
    torch.save({"weights": stored(learner.kept), "frequency": lots.frequency.cpu(), "kinds": outfits.kinds, "slot_of": outfits.slot_of}, f"{options.out}.pt")
    for at, one in enumerate(teachers):
        torch.save(stored(one.kept), f"{options.out}-teacher{at}.pt")
    networks = {"student": learner.kept, "first teacher": teachers[0].kept}
    figures = {name: all_figures(network, outfits, photos, pieces, slot_of, lots.frequency) for name, network in networks.items()}
    for name, ways in figures.items():
        for way, one in ways.items():
            print(name, way, {key: round(value, 3) if isinstance(value, float) else value for key, value in one.items()}, flush=True)
    path = f"{options.out}.onnx"
    export_checked(learner.kept.cpu().to(memory_format=torch.contiguous_format), lots.frequency.cpu(), slot_of.cpu(), path)
    figures["file"] = figures_of_file(path, outfits, photos, pieces, slot_of)
    write_report(f"{options.out}.json", path, options, figures, teacher_steps=teacher_steps, steps=steps, seconds=round(time.time() - start), kinds=outfits.kinds)
    print("file", {key: round(value, 3) if isinstance(value, float) else value for key, value in figures["file"].items()}, flush=True)
    if wrong := differing(figures["file"], figures["student"]["prior"]):
        raise SystemExit(f"Expected the file to answer as the network does; these figures differ: {wrong}")


if __name__ == "__main__":
    main()
