"""Trains the pattern network's head: python train.py PARSER.onnx CUT-OUTS LABELS.csv RENDERS TRUTH.json OUT.onnx

CUT-OUTS and RENDERS are what bench/pattern/cut-out.ts wrote for the photos of LABELS.csv and for fixtures/renders (TRUTH.json is theirs).
"""

import csv
import json
import sys

import numpy as np
import torch
from torch import nn
from torch.nn import functional as F

from cloths import cut_out, network_input, other_plain, otherwise
from drawn_cloth import DRAW, drawn_over
from network import HIDDEN, PATTERNS, PatternNetwork, Trunk, evened
from onnx_file import export

SEEN_OTHERWISE, DRAWN, OTHER_PLAIN = 3, 1600, 700
# Shares of a batch against one of the photos as they are.
SHARES = {"drawn": 0.3, "plain": 0.15, "renders": 0.12}
ALSO_SHARE, LEAST_CLOTH = 0.25, 3000
PASSES, BATCH, RATE, DECAY, SEED = 8, 256, 2.5e-3, 0.3, 1
# Rare patterns are shown oftener, by this power of how rare they are.
BALANCE = 0.4


def chances(pattern, also=(), doubt=0.0):
    out = torch.full((len(PATTERNS),), doubt / len(PATTERNS))
    out[PATTERNS.index(pattern)] += 1 - doubt - ALSO_SHARE * bool(also)
    for one in also:
        out[PATTERNS.index(one)] += ALSO_SHARE / len(also)
    return out


def main():
    parser_path, folder, labels, renders, truth, path = sys.argv[1:]
    torch.manual_seed(SEED)
    rng = np.random.default_rng(SEED)
    trunk = Trunk(parser_path).eval()

    @torch.no_grad()
    def figures(cloths):
        return torch.cat([trunk(network_input(cloth)) for cloth in cloths])

    with open(labels) as table:
        rows = [(file, pattern, also.split()) for file, pattern, also in list(csv.reader(table))[2:]]
    photos = [cut_out(folder, file) for file, _, _ in rows]
    seen = torch.stack([chances(pattern, also) for _, pattern, also in rows])
    as_they_are = figures(photos)
    logs = as_they_are.sign() * torch.log1p(4 * as_they_are.abs())
    even = logs.mean(0), logs.std(0) + 1e-4

    common = torch.bincount(seen.argmax(1), minlength=len(PATTERNS)).float()
    weight = (common**-BALANCE)[seen.argmax(1)]
    weight = weight / weight.sum()
    parts = [(as_they_are, seen, weight)]
    for _ in range(SEEN_OTHERWISE):
        parts.append((figures([otherwise(rng, cloth) for cloth in photos]), seen, weight))
    plain = [c for c, (_, pattern, also) in zip(photos, rows) if pattern == "plain" and not also and (c[..., 3] > 0).sum() >= LEAST_CLOTH]

    def part(cloths, said, share):
        return figures(cloths), torch.stack(said), torch.full((len(said),), share * (1 + SEEN_OTHERWISE) / len(said))

    kinds = [list(DRAW)[i % len(DRAW)] for i in range(DRAWN)]
    parts.append(part([drawn_over(rng, plain[rng.integers(len(plain))], kind) for kind in kinds], [chances(kind, doubt=0.04) for kind in kinds], SHARES["drawn"]))
    parts.append(part([other_plain(rng, plain[rng.integers(len(plain))]) for _ in range(OTHER_PLAIN)], [chances("plain", doubt=0.05)] * OTHER_PLAIN, SHARES["plain"]))
    with open(truth) as file:
        rendered = json.load(file)["pictures"]
    parts.append(part([cut_out(renders, one["file"]) for one in rendered], [chances(one["pattern"], doubt=0.04) for one in rendered], SHARES["renders"]))

    x, y, w = (torch.cat(one) for one in zip(*parts))
    x = evened(x, *even)
    head = nn.Sequential(nn.Dropout(0.25), nn.Linear(x.shape[1], HIDDEN), nn.ReLU(), nn.Dropout(0.4), nn.Linear(HIDDEN, len(PATTERNS)))
    optimiser = torch.optim.AdamW(head.parameters(), lr=RATE, weight_decay=DECAY)
    steps = PASSES * len(x) // BATCH
    for step in range(steps):
        optimiser.param_groups[0]["lr"] = RATE * 0.5 * (1 + np.cos(np.pi * step / steps))
        batch = torch.multinomial(w, BATCH, replacement=True)
        loss = -(y[batch] * F.log_softmax(head(x[batch]), 1)).sum(1).mean()
        optimiser.zero_grad()
        loss.backward()
        optimiser.step()
    network = PatternNetwork(trunk, even)
    network.head = nn.Sequential(head[1], head[2], head[4])
    export(network, path)


if __name__ == "__main__":
    main()
