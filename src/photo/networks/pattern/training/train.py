"""
Trains the pattern network:

    python train.py DETECTOR.tflite CUT-OUTS LABELS.csv RENDERS OUT [--shape shipped|teacher|near-teacher] [--passes N] [--fold K] [--seed N]
        [--teachers A.pt B.pt ...]

DETECTOR.tflite is the published network with whose first layers ours begins (../MODEL-CARD.md). CUT-OUTS holds what bench/pattern/cut-out.ts
wrote for the photos of LABELS.csv, RENDERS what it wrote for the pictures of rendered_cloth.py. Writes OUT.pt; of the shape that ships also
OUT.onnx, or, with --fold, OUT.csv: one fifth of the photos, drawn by lot, is then left out, and what the network says of these is told.
--teachers: half of the truth is then the teachers' mean answer to the same view.
"""

import argparse
import csv
import os
from concurrent.futures import ProcessPoolExecutor

import numpy as np
import torch
from torch.nn import functional as F

from cloths import PATTERNS, cut_out, network_input, on_canvas, other_plain, table
from drawn_cloth import DRAW, drawn_over
from network import SHAPES, PatternNetwork
import beside  # noqa: F401
from onnx_file import export, farthest
from views import seen_otherwise

DRAWN, OTHER_PLAIN, LEAST_CLOTH = 3000, 1000, 3000
# Shares of a batch.
SHARES = {"photos": 0.62, "drawn": 0.16, "plain": 0.06, "renders": 0.16}
ALSO_SHARE, DOUBT, FOLDS = 0.25, 0.04, 5
BATCH, HEAD_RATE, DECAY, KEPT = 128, 2e-3, 0.1, 0.998
# Second words and doubt in the truth leave the network too careful: so many times its scores, it is as sure as it is right on a fifth held out.
SHARPER = 1.25
# Rare patterns are shown oftener, by this power of how rare they are.
BALANCE = 0.25


def chances(pattern, also=(), doubt=0.0):
    out = torch.full((len(PATTERNS),), doubt / len(PATTERNS))
    out[PATTERNS.index(pattern)] += 1 - doubt - ALSO_SHARE * bool(also)
    for one in also:
        out[PATTERNS.index(one)] += ALSO_SHARE / len(also)
    return out


def drawn(task):
    """A drawn cloth over `cloth` (kind None: other plain cloth), on its canvas."""
    seed, cloth, kind = task
    rng = np.random.default_rng(seed)
    return on_canvas(other_plain(rng, cloth) if kind is None else drawn_over(rng, cloth, kind))


class Source:
    """Cloths on canvases, what each is, and how often to show it."""

    def __init__(self, canvases, said, weight, device):
        self.canvases = torch.from_numpy(np.stack(canvases)).to(device)
        self.said = torch.stack(said).to(device)
        self.weight = (weight / weight.sum()).to(device)

    def some(self, count):
        at = torch.multinomial(self.weight, count, replacement=True)
        return self.canvases[at], self.said[at]


def sources(args, photos, rows, learnt, device):
    said = [chances(rows[at][1], rows[at][2]) for at in learnt]
    plain = [photos[at] for at in learnt if rows[at][1] == "plain" and not rows[at][2] and (photos[at][..., 3] > 0).sum() >= LEAST_CLOTH]
    rng = np.random.default_rng(args.seed)
    tasks = [(args.seed * 100_000 + k, plain[rng.integers(len(plain))], list(DRAW)[k % len(DRAW)] if k < DRAWN else None) for k in range(DRAWN + OTHER_PLAIN)]
    with ProcessPoolExecutor() as workers:
        canvases = list(workers.map(drawn, tasks, chunksize=20))
    names = sorted(os.listdir(args.renders))
    rendered = [on_canvas(cut_out(args.renders, name)) for name in names]

    kinds = torch.stack(said).argmax(1)
    weight = (torch.bincount(kinds, minlength=len(PATTERNS)).float().clamp_min(1) ** -BALANCE)[kinds]
    return {
        "photos": Source([on_canvas(photos[at]) for at in learnt], said, weight, device),
        "drawn": Source(canvases[:DRAWN], [chances(kind, doubt=DOUBT) for _, _, kind in tasks[:DRAWN]], torch.ones(DRAWN), device),
        "plain": Source(canvases[DRAWN:], [chances("plain", doubt=DOUBT)] * OTHER_PLAIN, torch.ones(OTHER_PLAIN), device),
        "renders": Source(rendered, [chances(name.split("-")[0], doubt=DOUBT) for name in names], torch.ones(len(names)), device),
    }


def batch(parts):
    taken = [parts[name].some(round(BATCH * share)) for name, share in SHARES.items()]
    return torch.cat([canvases for canvases, _ in taken]).float() / 255, torch.cat([said for _, said in taken])


def trained(network, parts, args, device):
    """The network after all passes: the running mean of its weights."""
    some = torch.Generator(device).manual_seed(args.seed)
    with torch.no_grad():
        network.even(torch.cat([network.trunk(batch(parts)[0]) for _ in range(12)]))
    teachers = [read(path, args, device) for path in args.teachers]
    network = network.to(memory_format=torch.channels_last)
    layers = list(network.trunk.detector.convs.parameters())
    new = [one for name, one in network.named_parameters() if not name.startswith("trunk.detector.convs")]
    groups = [{"params": layers, "lr": SHAPES[args.shape]["rate"]}, {"params": new, "lr": HEAD_RATE}]
    optimiser = torch.optim.AdamW(groups, weight_decay=DECAY)
    steps = args.passes * len(parts["photos"].said) // round(BATCH * SHARES["photos"])
    rate = torch.optim.lr_scheduler.LambdaLR(optimiser, lambda step: min(1, (step + 1) / 100) * 0.5 * (1 + np.cos(np.pi * step / steps)))
    mean = {name: value.clone() for name, value in network.state_dict().items()}
    network.train()
    torch.backends.cudnn.benchmark = True
    for step in range(steps):
        cloths, said = batch(parts)
        with torch.no_grad():
            seen = seen_otherwise(cloths, some).contiguous(memory_format=torch.channels_last)
        with torch.autocast(device.type, torch.bfloat16, enabled=device.type == "cuda"):
            if teachers:
                with torch.no_grad():
                    said = (said + torch.stack([one(seen).float().softmax(1) for one in teachers]).mean(0)) / 2
            loss = -(said * F.log_softmax(network(seen).float(), 1)).sum(1).mean()
        optimiser.zero_grad()
        loss.backward()
        torch.nn.utils.clip_grad_norm_(network.parameters(), 1.0)
        optimiser.step()
        rate.step()
        kept = min(KEPT, (step + 1) / (step + 10))
        for name, value in network.state_dict().items():
            mean[name].lerp_(value, 1 - kept)
        if step % 200 == 0:
            print(f"step {step} of {steps}, loss {loss.item():.3f}", flush=True)
    torch.backends.cudnn.benchmark = False
    network.load_state_dict(mean)
    return network.eval()


def read(path, args, device):
    state = torch.load(path, map_location=device, weights_only=True)
    network = PatternNetwork(args.detector, state.pop("shape")).to(device)
    network.load_state_dict(state)
    return network.eval().to(memory_format=torch.channels_last)


@torch.no_grad()
def told(network, cloths, device):
    """Chances of each pattern, cloth by cloth, as the program asks."""
    return torch.cat([network(torch.from_numpy(network_input(cloth)).to(device)).softmax(1) for cloth in cloths]).cpu()


def main():
    options = argparse.ArgumentParser()
    for name in ("detector", "cut_outs", "labels", "renders", "out"):
        options.add_argument(name)
    options.add_argument("--shape", default="shipped", choices=SHAPES)
    options.add_argument("--passes", type=int, default=100)
    options.add_argument("--fold", type=int)
    options.add_argument("--seed", type=int, default=1)
    options.add_argument("--teachers", nargs="*", default=[])
    args = options.parse_args()
    torch.manual_seed(args.seed)
    device = torch.device("cuda" if torch.cuda.is_available() else "cpu")

    rows = table(args.labels)
    photos = [cut_out(args.cut_outs, file) for file, _, _ in rows]
    lot = np.random.default_rng(0).permutation(len(rows)) % FOLDS
    learnt = [at for at in range(len(rows)) if lot[at] != args.fold]
    parts = sources(args, photos, rows, learnt, device)
    network = trained(PatternNetwork(args.detector, args.shape).to(device), parts, args, device)
    torch.save({**network.state_dict(), "shape": args.shape}, args.out + ".pt")
    if args.shape != "shipped":
        return
    with torch.no_grad():
        network.scores.weight *= SHARPER
        network.scores.bias *= SHARPER
    if args.fold is None:
        path, picture = args.out + ".onnx", torch.rand(1, 4, 64, 96)
        export(network.cpu(), picture, path, ["picture"], ["scores"], {"picture": {2: "height", 3: "width"}})
        print("file and network differ by %.3f at most, of %.1f" % farthest(network, path, ["picture"], [picture]))
        return
    left = [at for at in range(len(rows)) if lot[at] == args.fold]
    said = told(network, [photos[at] for at in left], device)
    right = [PATTERNS[one] == rows[at][1] for at, one in zip(left, said.argmax(1))]
    either = [PATTERNS[one] in (rows[at][1], *rows[at][2]) for at, one in zip(left, said.argmax(1))]
    print(f"{args.out}: right {np.mean(right):.3f}, either {np.mean(either):.3f}, sure {said.amax(1).mean():.3f}, of {len(left)}")
    with open(args.out + ".csv", "w") as file:
        csv.writer(file).writerows([rows[at][0], rows[at][1], *(f"{chance:.4f}" for chance in one)] for at, one in zip(left, said.tolist()))


if __name__ == "__main__":
    main()
