"""Fine-tunes the parser on outlines of single garments that were looked through. One GPU, about seven minutes.

    python finetune.py OUTFITS.tar GARMENTS.tar OUTLINES.tar --start ../outline.onnx --out outline

OUTLINES.tar comes from outlines.py. What the network knows of outfits is kept by their label maps and by its own answers from before.
Writes OUT.onnx and OUT.json (figures).
"""

import argparse
import copy
import json
import pathlib
import time

import torch
from torch.nn import functional as F

from augment import Grounds, colour_jitter, cutouts_batch, normalised, outfits_batch
from data import HEIGHT, WIDTH, load_outfits
from evaluate import kind_figures, outfit_figures
from export import export
from folded import load_onnx
from losses import at_half, class_weights, cloth_loss, clothes_probability, distil_loss, parse_loss
from network import CLASSES
from singles import load_singles, motifs, pasted_batch, singles_batch, without_edge
from steps import SCENE, WeightAverage, begun, photo_kinds, set_rate, take_step


def arguments():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("outfits")
    parser.add_argument("garments")
    parser.add_argument("outlines")
    parser.add_argument("--start", required=True, help="ONNX file of the network to start from, as export.py wrote it")
    parser.add_argument("--decisions", default=pathlib.Path(__file__).with_name("outline_decisions.json"))
    parser.add_argument("--seconds", type=float, default=430)
    parser.add_argument("--batch", type=int, default=128, help="pictures a step, half of them outfits")
    parser.add_argument("--rate", type=float, default=3e-4)
    parser.add_argument("--seed", type=int, default=1)
    # Street without people called a scene: 683 of 704 instead of 612; training garments called one: 1 of 1,644 with or without; outfits: none.
    parser.add_argument("--scene-shift", type=float, default=4.5, help="added to the score of a scene: the few in a batch leave the head shy of saying so")
    parser.add_argument("--out", required=True)
    return parser.parse_args()


def main():
    options = arguments()
    device = begun(options.seed)
    outfits = load_outfits(options.outfits)
    singles = load_singles(options.garments, options.outlines, options.decisions)
    photos, labels = (t.to(device) for t in outfits["train"])
    val = [t.to(device) for t in outfits["val"]]
    s_photos, s_labels, s_kinds, s_weights = (t.to(device) for t in singles["train"])
    kept_photos, _, kept_kinds, _ = (t.to(device) for t in singles["kept"])
    s_inner = torch.cat([without_edge(part.long()) for part in s_labels.split(256)]).to(torch.uint8)
    grounds = Grounds(photos, labels)
    weights = class_weights(labels, len(CLASSES)).to(device)
    network = load_onnx(options.start).to(device, memory_format=torch.channels_last)
    before = copy.deepcopy(network).eval()
    average = WeightAverage(network, decay=0.998)
    network.train()
    optimiser = torch.optim.AdamW(network.parameters(), lr=options.rate, weight_decay=0.01)
    since, step = time.time(), 0
    while (done := (time.time() - since) / options.seconds) < 1:
        set_rate(optimiser, options.rate, min(1.0, (step + 1) / 100), done)
        n = options.batch
        n_out, n_cut, n_paste, n_single, n_scene = n // 2, n // 16, n // 8, n // 4, n // 16
        with torch.no_grad():
            o_image, o_label = outfits_batch(photos, labels, grounds, n_out, near_share=0.85)
            c_image, c_label = cutouts_batch(photos, labels, grounds, n_cut)
            p_image, p_label = pasted_batch(s_photos, s_labels, s_weights, grounds, n_paste)
            g_image, g_label, g_kind = singles_batch(s_photos, s_inner, s_kinds, s_weights, n_single)
            s_image = torch.cat([grounds.take(n_scene // 2, HEIGHT, WIDTH), motifs(n_scene // 2, HEIGHT, WIDTH, device)])
            image = normalised(colour_jitter(torch.cat([o_image, c_image, p_image, g_image, s_image])))
            image = image.contiguous(memory_format=torch.channels_last)
        with torch.autocast(device, torch.bfloat16, enabled=device == "cuda"):
            logits, photo_kind, garment_kind = network(image)
            with torch.no_grad():
                lesson = before(image)[0]
        logits = logits.float()
        at_cloth, at_single, at_scene = n_out, n_out + n_cut + n_paste, n_out + n_cut + n_paste + n_single
        loss = parse_loss(logits[:at_cloth], at_half(o_label), weights) + 1.5 * distil_loss(logits[:at_cloth], lesson[:at_cloth])
        loss = loss + 0.7 * cloth_loss(logits[at_cloth:at_single], at_half(torch.cat([c_label, p_label])))
        loss = loss + cloth_loss(logits[at_single:at_scene], at_half(g_label))
        loss = loss - 0.3 * torch.log1p(-clothes_probability(logits[at_scene:]).clamp(1e-4, 1 - 1e-4)).mean()
        loss = loss + 0.3 * F.cross_entropy(photo_kind.float(), photo_kinds(o_label, len(image), at_scene), ignore_index=-1)
        loss = loss + 0.4 * F.cross_entropy(garment_kind[at_single:at_scene].float(), g_kind, label_smoothing=0.05)
        take_step(network, optimiser, loss, average)
        step += 1
        if step % 400 == 0:
            print(step, round(loss.item(), 4), flush=True)
    average.network.photo_kind.bias.data[SCENE] += options.scene_shift
    figures = {**outfit_figures(average.network, *val), **kind_figures(average.network, kept_photos, kept_kinds)}
    print(json.dumps(figures, indent=1), flush=True)
    pathlib.Path(f"{options.out}.json").write_text(json.dumps({"options": {k: str(v) for k, v in vars(options).items()}, "steps": step, "figures": figures}, indent=1))
    export(average.network, f"{options.out}.onnx")


if __name__ == "__main__":
    main()
