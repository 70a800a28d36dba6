"""Trains the garment parser. One GPU, about ten minutes.

    python train.py OUTFITS.tar GARMENTS.tar --size teacher --seconds 550 --out teacher
    python train.py OUTFITS.tar GARMENTS.tar --teacher one.pt other.pt --resume one.pt --rate 1e-3 --seconds 350 --out parser

Writes OUT.pt (weight average), OUT.onnx and OUT.json (figures). Seeds are fixed; what a GPU adds in another order may still differ in the last digits.
"""

import argparse
import json
import time

import torch

from augment import Grounds, colour_jitter, cutouts_batch, garments_batch, normalised, outfits_batch
from data import load_garments, load_outfits
from evaluate import kind_figures, outfit_figures
from export import export
from losses import at_half, class_weights, cloth_loss, distil_loss, parse_loss
from network import CLASSES, Parser, Several, load_weights
from selflabel import self_labels
from steps import WeightAverage, begun, photo_kinds, set_rate, take_step


def arguments():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("outfits")
    parser.add_argument("garments")
    parser.add_argument("--size", choices=["student", "teacher"], default="student")
    parser.add_argument("--teacher", nargs="+", help="weights of trained networks: their mean answer becomes part of the loss, and labels the garments")
    parser.add_argument("--resume", help="weights of a trained network of the same size to start from, in place of random ones")
    parser.add_argument("--calm", action="store_true", help="outfits placed and lit more as in street photos, as the last round before shipping")
    parser.add_argument("--seconds", type=float, default=550)
    parser.add_argument("--batch", type=int, default=96, help="pictures a step, half of them outfits")
    parser.add_argument("--rate", type=float, default=2.5e-3)
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--out", required=True)
    return parser.parse_args()


def main():
    options = arguments()
    start = time.time()
    device = begun(options.seed)
    outfits = load_outfits(options.outfits)
    garments = load_garments(options.garments)
    photos, labels = (t.to(device) for t in outfits["train"])
    val_photos, val_labels = (t.to(device) for t in outfits["val"])
    g_photos, g_inside, g_kinds = (t.to(device) for t in garments["train"])
    kept_photos, _, kept_kinds = (t.to(device) for t in garments["kept"])
    grounds = Grounds(photos, labels)
    weights = class_weights(labels, len(CLASSES)).to(device)
    network = Parser(options.size, drop=0.1 if options.size == "teacher" else 0.0)
    if options.resume:
        network.load_state_dict(load_weights(options.resume).state_dict())
    network = network.to(device, memory_format=torch.channels_last)
    average = WeightAverage(network)
    teacher = None
    if options.teacher:
        teacher = Several([load_weights(path) for path in options.teacher]).to(device, memory_format=torch.channels_last).eval()
    optimiser = torch.optim.AdamW(network.parameters(), lr=options.rate, weight_decay=0.02)
    g_labels = torch.full_like(g_inside, 2)
    g_kept = torch.zeros(len(g_photos), dtype=torch.bool, device=device)
    # A teacher labels at once; without one the network itself does, after a third and after two thirds of the run.
    rounds = [0.0, 0.55] if teacher else [0.33, 0.66]
    log = []
    step = 0
    loading = time.time() - start
    print(f"{options.size}: {sum(p.numel() for p in network.parameters()) / 1e6:.2f} M parameters, loaded in {loading:.0f} s", flush=True)
    since = time.time()

    while (done := (time.time() - since) / options.seconds) < 1:
        if rounds and done >= rounds[0]:
            rounds.pop(0)
            labeller = teacher if teacher and done < 0.3 else average.network
            g_labels, g_kept = self_labels(labeller, g_photos, g_inside)
            print(f"self-labelled {int(g_kept.sum())} of {len(g_photos)} garments at {done:.2f}", flush=True)
        set_rate(optimiser, options.rate, min(1.0, step / 200), done)

        n = options.batch
        n_out, n_cut, n_gar, n_scene = n // 2, n // 8, n // 4, n // 8
        with torch.no_grad():
            o_image, o_label = outfits_batch(photos, labels, grounds, n_out, near_share=0.85 if options.calm else 0.6)
            c_image, c_label = cutouts_batch(photos, labels, grounds, n_cut)
            r_image, r_label, r_kind = garments_batch(g_photos, g_inside, torch.where(g_kept.view(-1, 1, 1), g_labels, torch.full_like(g_labels, 2)), g_kinds, n_gar)
            s_image = grounds.take(n_scene, *photos.shape[2:])
            image = normalised(colour_jitter(torch.cat([o_image, c_image, r_image, s_image])))
            image = image.contiguous(memory_format=torch.channels_last)
        with torch.autocast(device, torch.bfloat16, enabled=device == "cuda"):
            logits, photo_kind, garment_kind = network(image)
            with torch.no_grad():
                lesson = teacher(image)[0] if teacher else None
        logits = logits.float()
        at_c, at_r, at_s = n_out, n_out + n_cut, n_out + n_cut + n_gar
        loss = parse_loss(logits[:at_c], at_half(o_label), weights)
        loss = loss + 0.5 * cloth_loss(logits[at_c:at_r], at_half(c_label))
        if g_kept.any():
            loss = loss + 0.7 * cloth_loss(logits[at_r:at_s], at_half(r_label))
        loss = loss + 0.3 * cloth_loss(logits[at_s:], torch.zeros_like(at_half(o_label[:1])).expand(n_scene, -1, -1))
        # A lone garment cut out of an outfit looks like one laid flat; a bare ground is a scene.
        loss = loss + 0.3 * torch.nn.functional.cross_entropy(photo_kind.float(), photo_kinds(o_label, n, at_s), ignore_index=-1)
        loss = loss + 0.4 * torch.nn.functional.cross_entropy(garment_kind[at_r:at_s].float(), r_kind, label_smoothing=0.05)
        if lesson is not None:
            loss = loss + 1.5 * distil_loss(logits[:at_s], lesson[:at_s])
        take_step(network, optimiser, loss, average)
        step += 1
        if step % 500 == 0:
            figures = outfit_figures(average.network, val_photos, val_labels)
            log.append({"step": step, "done": round(done, 3), "loss": round(loss.item(), 4), "clothes": figures["clothes"], "slots": figures["slots"]})
            print(json.dumps(log[-1]), flush=True)

    figures = {
        **outfit_figures(average.network, val_photos, val_labels),
        **kind_figures(average.network, kept_photos, kept_kinds),
    }
    print(json.dumps(figures, indent=1), flush=True)
    torch.save({key: value.half() if value.dtype.is_floating_point else value for key, value in average.network.state_dict().items()}, f"{options.out}.pt")
    with open(f"{options.out}.json", "w") as report:
        json.dump({"options": vars(options), "steps": step, "figures": figures, "log": log}, report, indent=1)
    export(average.network, f"{options.out}.onnx")
    print(f"{step} steps, {time.time() - start:.0f} s in all", flush=True)


if __name__ == "__main__":
    main()
