"""Figures on outfits that nobody learnt from."""

import torch
from torch.nn import functional as F

import beside  # noqa: F401
from crops import plain_crops, plain_frames
from kind_network import SLOT_COUNT, joint_logs
from outfits import SLOTS
from pieces import COUNTED, OUTLINED, TRUE_KIND

# Kinds that many people would not tell apart either.
MERGED = [{"blazer", "jacket", "coat", "cardigan"}, {"top", "t-shirt"}]
SHOES = SLOTS.index("shoes")
PRIOR = 0.3


@torch.no_grad()
def scores_of(network, photos, pieces, pick, batch=64):
    out = []
    for part in pick.split(batch):
        slots = F.one_hot(pieces.slot[part], SLOT_COUNT).float()
        with torch.autocast(part.device.type, torch.bfloat16, enabled=part.is_cuda):
            out.append(network(plain_crops(photos, pieces, part), *plain_frames(photos, pieces, part), slots, pieces.numbers[part, 0]).float())
    return torch.cat(out)


def among(pieces, photos):
    first, last = photos.start, photos.stop
    return (pieces.photo >= first) & (pieces.photo < last)


def in_own_slot(logs, slots, slot_of):
    """Probabilities among the kinds of each piece's slot, where that is known to be right."""
    own = slot_of[None] == slots[:, None]
    return torch.cat([logs[:, :-1].masked_fill(~own, -1e4), torch.full_like(logs[:, -1:], -1e4)], 1).softmax(1)


def merged_index(kinds):
    index = list(range(len(kinds)))
    for group in MERGED:
        members = [i for i, kind in enumerate(kinds) if kind in group]
        for member in members:
            index[member] = members[0]
    return torch.tensor(index)


def right_figures(probs, truth, kinds):
    """Right at the first guess, within two; the same with merged kinds; how right the surest half is, and from which probability 93 % are."""
    top = probs.topk(2, 1).indices
    first = top[:, 0] == truth
    merged = merged_index(kinds).to(probs.device)
    joined = torch.zeros_like(probs).index_add_(1, merged, probs).topk(2, 1).indices
    truth_merged = merged[truth]
    sure = probs.amax(1)
    order = sure.argsort(descending=True)
    so_far = first[order].float().cumsum(0) / torch.arange(1, len(order) + 1, device=order.device)
    half = len(order) // 2
    best = {}
    for wanted in (0.9, 0.93):
        enough = (so_far >= wanted).nonzero()
        last = int(enough.max()) if len(enough) else 0
        best[f"share_at_{wanted}"] = (last + 1) / len(order)
        best[f"from_at_{wanted}"] = float(sure[order[last]])
    return {
        "pieces": len(truth),
        "first": first.float().mean().item(),
        "two": (top == truth[:, None]).any(1).float().mean().item(),
        "merged_first": (joined[:, 0] == truth_merged).float().mean().item(),
        "merged_two": (joined == truth_merged[:, None]).any(1).float().mean().item(),
        "surest_half": so_far[half - 1].item(),
        **best,
    }


def set_figures(probs, pieces, pick, photos, outfits):
    """Precision and recall of the set of kinds told, an outfit at a time, for pieces of 1 % of the frame or more as the outline network marks them."""
    told_right = told = wanted = found = 0
    best = probs[:, :-1].argmax(1)
    nothing = probs[:, -1] > 0.5
    for photo in photos:
        true = (pieces.photo == photo) & (pieces.marked == TRUE_KIND) & (pieces.area >= COUNTED)
        truth = {int(k) for k in pieces.target[true].argmax(1)}
        # A shoe whose kind nobody told can be judged by nobody.
        any_shoe = bool((outfits.labels[photo] == len(outfits.archive_kinds) - 1).any())
        mine = (pieces.photo[pick] == photo).nonzero()[:, 0]
        said = {int(best[i]) for i in mine if not nothing[i]}
        if any_shoe:
            said = {k for k in said if outfits.slot_of[k] != SHOES or k in truth}
        told += len(said)
        told_right += len(said & truth)
        wanted += len(truth)
        found += len(said & truth)
    return {"precision": told_right / max(1, told), "recall": found / max(1, wanted), "told": told, "wanted": wanted}


def log_shares(frequency, slot_of):
    """Log of each kind's share of its slot in what was learnt from, as an addition to the scores."""
    counts = frequency[:-1].clamp_min(1)
    of_slot = torch.zeros(SLOT_COUNT, device=counts.device).index_add_(0, slot_of, counts)
    return torch.cat([(counts / of_slot[slot_of]).log(), torch.zeros(SLOT_COUNT + 1, device=counts.device)])


def picks_of(outfits, pieces):
    """The pieces that figures are measured on: with true masks, as the outline network marks them, and tagged shoes."""
    counted = pieces.area >= COUNTED
    val = among(pieces, outfits.val)
    tagged_shoes = among(pieces, outfits.tag_val) & (pieces.slot == SHOES) & pieces.allowed.any(1)
    wanted = {"true": val & counted & (pieces.marked == TRUE_KIND), "marked": val & counted & (pieces.marked == OUTLINED), "shoes": tagged_shoes}
    return {name: which.nonzero()[:, 0] for name, which in wanted.items()}


def figures_of(outfits, pieces, picks, scores, slot_of):
    """All figures of scores by the names of `picks`."""
    logs = {name: joint_logs(scores[name], slot_of) for name in picks}
    own = {name: in_own_slot(logs[name], pieces.slot[pick], slot_of) for name, pick in picks.items()}
    out = right_figures(own["true"], pieces.target[picks["true"]].argmax(1), outfits.kinds)
    out |= set_figures(logs["marked"].exp(), pieces, picks["marked"], outfits.val, outfits)
    out["slot_as_marked"] = set_figures(own["marked"], pieces, picks["marked"], outfits.val, outfits)
    best = own["shoes"].topk(2, 1).indices
    allowed = pieces.allowed[picks["shoes"]].float()
    out["shoes"] = len(allowed)
    out["shoes_first"] = allowed.gather(1, best[:, :1]).mean().item()
    out["shoes_two"] = allowed.gather(1, best).amax(1).mean().item()
    return out


def all_figures(network, outfits, photos, pieces, slot_of, frequency):
    """Figures of the network, and with common kinds preferred."""
    picks = picks_of(outfits, pieces)
    scores = {name: scores_of(network, photos, pieces, pick) for name, pick in picks.items()}
    shares = PRIOR * log_shares(frequency, slot_of)
    ways = {"as it is": scores, "prior": {name: one + shares for name, one in scores.items()}}
    return {way: figures_of(outfits, pieces, picks, one, slot_of) for way, one in ways.items()}
