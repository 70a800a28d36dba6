"""
Trains the network that tells garments apart that touch or overlap. One GPU, about five minutes.

    python train.py GARMENTS.tar GARMENTS-MORE.tar OUTLINES.tar DETECTOR.tflite --out apart

The archives and OUTLINES.tar as for the outline network (../../outline/MODEL-CARD.md). Pictures are made anew for each step (heaps.py). Writes OUT.onnx, OUT.json (options,
figures of the network and of the file) and OUT.pt, and stops where the file's figures are not the network's.
"""

import argparse
import pathlib
import time

import torch

import beside  # noqa: F401
from apart_file_figures import DECISIONS, FileNetwork
from apart_network import OUTPUTS, ApartNetwork
from asked import asked_of, wrong
from augment import colour_jitter
from figures import figures_of
from garments import Garments
from heaps import MOST, heaps_batch, marked
from home_grounds import HomeGrounds
from onnx_file import export, farthest
from reported import report_run
from steps import WeightAverage, begun, take_step
from teachers import progress, set_rates, stored


def arguments():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    for name in ("garments", "garments_more", "outlines", "detector"):
        parser.add_argument(name)
    parser.add_argument("--decisions", default=DECISIONS)
    parser.add_argument("--steps", type=int, default=4200)
    parser.add_argument("--seconds", type=float, default=1e9, help="the run ends sooner where its steps would take longer than this")
    parser.add_argument("--rate", type=float, default=1e-3)
    parser.add_argument("--batch", type=int, default=64)
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--few", type=int, help="only so many photos of each sort, to try the code")
    parser.add_argument("--out", required=True)
    return parser.parse_args()


def parameter_groups(network, rate):
    """The detector's layers learn at half the rate of what is new."""
    layers = {id(one) for one in network.trunk.parameters()}
    return [{"params": [*network.trunk.parameters()], "full": rate / 2}, {"params": [one for one in network.parameters() if id(one) not in layers], "full": 2 * rate}]


def trained(options, garments, grounds, device):
    network = ApartNetwork(options.detector).to(device, memory_format=torch.channels_last)
    average = WeightAverage(network, decay=0.998)
    network.train()
    optimiser = torch.optim.AdamW(parameter_groups(network, options.rate), lr=options.rate, weight_decay=0.05)
    since, step = time.time(), 0
    while (done := progress(step, options.steps, since, options.seconds)) < 1:
        set_rates(optimiser, done, step)
        with torch.no_grad():
            image, ids = heaps_batch(garments, grounds, options.batch)
            seen = torch.cat([colour_jitter(image) / 255, marked(ids)], 1).contiguous(memory_format=torch.channels_last)
            asked = asked_of(ids, MOST)
        with torch.autocast(device, torch.bfloat16, enabled=device == "cuda"):
            told = network(seen)
        loss = wrong(told, *asked)
        take_step(network, optimiser, loss, average)
        step += 1
        if step % 100 == 0 or step == 2:
            print(step, round(loss.item(), 4), f"{time.time() - since:.0f} s", flush=True)
    return average.network, step


def main():
    options = arguments()
    start = time.time()
    device = begun(options.seed)
    garments = Garments(options.garments, options.garments_more, options.outlines, options.decisions, options.few, device)
    grounds = HomeGrounds(garments.photos, garments.labels)
    print(f"loaded in {time.time() - start:.0f} s; {int(garments.outlined.sum())} of {len(garments.outlined)} garments outlined, {len(grounds.strips)} grounds", flush=True)
    network, steps = trained(options, garments, grounds, device)
    torch.save(stored(network), f"{options.out}.pt")
    kept = garments.kept()
    figures = {"this": figures_of(network, kept, grounds)}
    path = f"{options.out}.onnx"
    network = network.float().cpu().to(memory_format=torch.contiguous_format)
    image, ids = (one[:1] for one in heaps_batch(kept, grounds, 8))
    example = torch.cat([image / 255, marked(ids)], 1).cpu().contiguous()
    export(network, example, path, ["picture"], ["told"])
    print("file and network differ by %.3f at most, of %.1f" % farthest(network, path, ["picture"], [example]))
    figures["file"] = figures_of(FileNetwork(path), kept, grounds)
    report_run(options.out, options, figures, outputs=OUTPUTS, steps=steps, seconds=round(time.time() - start))


if __name__ == "__main__":
    main()
