"""Trains the outline network from a detector's layers. One GPU, about fourteen minutes.

    python train.py OUTFITS-KINDS.tar GARMENTS.tar GARMENTS-MORE.tar OUTLINES.tar DETECTOR.tflite --out outline

First three teachers, each without a third of the labelled outfits; then the network that ships, which begins as the first of them: by the labels, by the teacher
that did not see the photo, on tagged photos by all of them within what the tags allow, on single garments by the outlines in OUTLINES.tar. Writes OUT.onnx,
OUT.json (options, figures, those of the file among them), OUT-teacherN.pt, and OUT-unseen.npz: the classes of all outfits by a teacher that did not see them, for the network of kinds.
Seeds are fixed.
"""

import argparse
import pathlib
import time

import numpy as np
import torch
from torch.nn import functional as F

import beside  # noqa: F401
from augment import Grounds, colour_jitter, cutouts_batch, outfits_batch, shown
from by_tags import allowed_answers, tagged_batch, taught_loss
from evaluate import outfit_figures, untagged_share
from outline_file_figures import FileNetwork, all_figures
from garments import Garments
from laid_out import laid_out_batch
from losses import at_half, class_weights, cloth_loss, clothes_probability, parse_loss
from network import CLASSES, Parser
from onnx_file import export, farthest
from outfit_photos import FOLDS, OutfitPhotos
from photos import HEIGHT, WIDTH
from reported import report_run
from singles import motifs, pasted_batch, singles_batch, without_edge
from steps import SCENE, WeightAverage, begun, photo_kinds, take_step
from teachers import all_answers, load, parser_groups, progress, set_rates, stored, train_teachers, unseen_answer, unseen_classes

OUTPUTS = ["logits", "photo_kind", "garment_kind"]


def arguments():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("outfits")
    parser.add_argument("garments")
    parser.add_argument("garments_more")
    parser.add_argument("outlines")
    parser.add_argument("detector")
    parser.add_argument("--decisions", default=pathlib.Path(__file__).with_name("outline_decisions.json"))
    parser.add_argument("--teacher-steps", type=int, default=1300)
    parser.add_argument("--teacher-seconds", type=float, default=1e9, help="a phase ends sooner where its steps would take longer than this")
    parser.add_argument("--steps", type=int, default=3500)
    parser.add_argument("--seconds", type=float, default=1e9)
    parser.add_argument("--teacher-rate", type=float, default=6e-4)
    parser.add_argument("--rate", type=float, default=4e-4)
    parser.add_argument("--batch", type=int, default=48, help="labelled outfits a step")
    parser.add_argument("--teachers", help="OUT of an earlier run whose teachers to take")
    parser.add_argument("--scene-shift", type=float, default=0.0, help="added to the score of a scene")
    # Tags and labels together make it shy of dresses; how this was chosen: MODEL-CARD.md.
    parser.add_argument("--full-shift", type=float, default=1.0, help="added to the scores of dresses and one-pieces")
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--few", type=int, help="only so many photos of each sort, to try the code")
    parser.add_argument("--out", required=True)
    return parser.parse_args()


def batch_of(photos, garments, grounds, n, device):
    """Images, and by the name of each lot its place among them and what is known of it."""
    scenes = max(2, n // 8)
    outfits = outfits_batch(photos.train, photos.train_labels, grounds, n, near_share=0.85)
    tagged = tagged_batch(photos.tagged, photos.worn, n // 2)
    cut = cutouts_batch(photos.train, photos.train_labels, grounds, n // 8)
    laid = laid_out_batch(garments.photos, garments.labels, garments.outlined, grounds, n // 4)
    pasted = pasted_batch(garments.photos, garments.labels, garments.outlined.float(), grounds, n // 4)
    image, label, kind = singles_batch(garments.photos, garments.labels, garments.kinds, garments.weights, n * 3 // 4)
    bare = torch.cat([grounds.take(scenes // 2, HEIGHT, WIDTH), motifs(scenes - scenes // 2, HEIGHT, WIDTH, device)])
    lots = {"outfits": outfits[0], "tagged": tagged[0], "cloth": torch.cat([cut[0], laid[0], pasted[0]]), "singles": image, "scenes": bare}
    ends = np.cumsum([len(one) for one in lots.values()]).tolist()
    place = {name: slice(start, end) for name, start, end in zip(lots, [0, *ends], ends)}
    cloth = torch.cat([cut[1], laid[1], pasted[1]])
    return shown(colour_jitter(torch.cat([*lots.values()]))), place, outfits[1:], tagged[1], cloth, (without_edge(label), kind)


def asked_of(answers, place, outfit_label, lesson, by_tags, cloth, label, kind, weights):
    """How wrong the answers are."""
    logits, photo_kind, garment_kind = answers
    logits = logits.float()
    loss = parse_loss(logits[place["outfits"]], at_half(outfit_label), weights) + taught_loss(logits[place["outfits"]], lesson)
    loss = loss + taught_loss(logits[place["tagged"]], by_tags)
    loss = loss + 0.7 * cloth_loss(logits[place["cloth"]], at_half(cloth)) + cloth_loss(logits[place["singles"]], at_half(label))
    loss = loss - 0.3 * torch.log1p(-clothes_probability(logits[place["scenes"]]).clamp(1e-4, 1 - 1e-4)).mean()
    shows = photo_kinds(outfit_label, len(logits), place["scenes"].start)
    # Tagged photos are moved about: whether the person is still seen is left open.
    shows[place["tagged"]] = -1
    loss = loss + 0.3 * F.cross_entropy(photo_kind.float(), shows, ignore_index=-1)
    return loss + 0.5 * F.cross_entropy(garment_kind[place["singles"]].float(), kind, label_smoothing=0.05)


def train_network(options, photos, garments, grounds, teachers, weights, device):
    network = Parser(options.detector).to(device, memory_format=torch.channels_last)
    network.load_state_dict({**network.state_dict(), **{key: value for key, value in teachers[0].state_dict().items() if not key.startswith(("head", "photo_kind", "garment_kind"))}})
    average = WeightAverage(network, decay=0.998)
    network.train()
    optimiser = torch.optim.AdamW(parser_groups(network, options.rate), lr=options.rate, weight_decay=0.05)
    since, step = time.time(), 0
    while (done := progress(step, options.steps, since, options.seconds)) < 1:
        set_rates(optimiser, done, step)
        with torch.no_grad():
            image, place, (outfit_label, pick), worn, cloth, (label, kind) = batch_of(photos, garments, grounds, options.batch, device)
            with torch.autocast(device, torch.bfloat16, enabled=device == "cuda"):
                lesson = unseen_answer(teachers, image[place["outfits"]], photos.fold[pick])
                by_tags = allowed_answers(all_answers(teachers, image[place["tagged"]]), worn)
        with torch.autocast(device, torch.bfloat16, enabled=device == "cuda"):
            answers = network(image)
        loss = asked_of(answers, place, outfit_label, lesson, by_tags, cloth, label, kind, weights)
        take_step(network, optimiser, loss, average)
        step += 1
        if step % 100 == 0 or step == 2:
            print(step, round(loss.item(), 4), f"{time.time() - since:.0f} s", flush=True)
    average.network.photo_kind.bias.data[SCENE] += options.scene_shift
    average.network.logits.bias.data[CLASSES.index("full")] += options.full_shift
    return average.network, step


def main():
    options = arguments()
    start = time.time()
    device = begun(options.seed)
    photos = OutfitPhotos(options.outfits, options.few, device)
    garments = Garments(options.garments, options.garments_more, options.outlines, options.decisions, options.few, device)
    grounds = Grounds(photos.train, photos.train_labels)
    weights = class_weights(photos.train_labels, len(CLASSES)).to(device)
    print(f"loaded in {time.time() - start:.0f} s; {int(garments.outlined.sum())} of {len(garments.outlined)} garments outlined", flush=True)
    if options.teachers:
        teachers, teacher_steps = [load(Parser(options.detector), f"{options.teachers}-teacher{at}.pt", device) for at in range(FOLDS)], None
    else:
        teachers, teacher_steps = train_teachers(options, photos, grounds, weights, device)
        for at, one in enumerate(teachers):
            torch.save(stored(one), f"{options.out}-teacher{at}.pt")
    np.savez_compressed(f"{options.out}-unseen.npz", classes=unseen_classes(teachers, photos))
    network, steps = train_network(options, photos, garments, grounds, teachers, weights, device)
    torch.save(stored(network), f"{options.out}.pt")
    told = {"first teacher": teachers[0], "all teachers": lambda image: (all_answers(teachers, image).clamp_min(1e-6).log(),)}
    figures = {name: outfit_figures(one, photos.val, photos.val_labels) | {"untagged": untagged_share(one, photos)} for name, one in told.items()}
    figures["this"] = all_figures(network, photos, garments, grounds)
    path = f"{options.out}.onnx"
    network = network.float().cpu().to(memory_format=torch.contiguous_format)
    export(network, torch.zeros(1, 3, HEIGHT, WIDTH), path, ["image"], OUTPUTS)
    print("file and network differ by %.3f at most, of %.1f" % farthest(network, path, ["image"], [photos.val[:1].cpu().float() / 255]))
    figures["file"] = all_figures(FileNetwork(path), photos, garments, grounds)
    report_run(options.out, options, figures, teacher_steps=teacher_steps, steps=steps, seconds=round(time.time() - start))


if __name__ == "__main__":
    main()
