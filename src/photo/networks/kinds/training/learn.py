"""What one step learns from: which pieces are drawn, and how wrong the answers are."""

import torch
from torch.nn import functional as F

from kind_network import SLOT_COUNT, logs_of
from pieces import COUNTED, MISTAKEN, OUTLINED, TRUE_KIND, TRUE_SLOT

SMOOTHING = 0.06
TAGGED_WEIGHT = 0.6
RARE = 0.3
# Share of each lot in a batch; the rest is tagged.
SHARES = {TRUE_KIND: 0.3, TRUE_SLOT: 0.1, OUTLINED: 0.3, MISTAKEN: 0.05}
# Weight of the slot's own loss beside the kind's.
SLOT_WEIGHT = 0.7
# Columns of the numbers that mirror: left and right edge within the person's box.
LEFT, RIGHT = 0, 2


class Lots:
    """Pieces to draw from, with how often: rare kinds more, small pieces at half weight, tagged ones in a lot of their own."""

    def __init__(self, pieces, photos):
        among = torch.zeros(int(pieces.photo.max()) + 1, dtype=torch.bool, device=pieces.photo.device)
        among[torch.tensor(list(photos), device=among.device)] = True
        mine = among[pieces.photo]
        self.frequency = pieces.target[mine & (pieces.marked == TRUE_KIND) & (pieces.area >= 0.003)].sum(0)
        rarity = self.frequency.clamp_min(1) ** -RARE
        # "None" is not rare: it is drawn as the commonest kinds are.
        rarity[-1] = rarity[:-1].min()
        weight = (pieces.target * rarity).sum(1) * torch.where(pieces.area >= COUNTED, 1.0, 0.5) * mine
        self.lots = [(share, weight * (pieces.marked == marked)) for marked, share in SHARES.items()]
        allowed = (pieces.allowed.float() * rarity).sum(1) / pieces.allowed.sum(1).clamp_min(1)
        self.tagged = allowed * (mine & pieces.allowed.any(1))

    def draw(self, n):
        """Indices of n pieces, in an order without meaning."""
        picks = [torch.multinomial(lot, int(n * share), replacement=True) for share, lot in self.lots]
        picks.append(torch.multinomial(self.tagged, n - sum(map(len, picks)), replacement=True))
        pick = torch.cat(picks)
        return pick[torch.randperm(n, device=pick.device)]


def features_of(pieces, pick, mirror):
    """Slots as one-hot and numbers, the latter shaken a little; by the labels or by the outline, whichever falls."""
    n, device = len(pick), pick.device
    numbers = pieces.numbers[pick, torch.randint(2, (n,), device=device)]
    turned = numbers.clone()
    turned[:, LEFT], turned[:, RIGHT] = 1 - numbers[:, RIGHT], 1 - numbers[:, LEFT]
    numbers = torch.where(mirror.view(n, 1) < 0, turned, numbers)
    shaken = numbers * (1 + 0.08 * torch.randn_like(numbers)) + 0.02 * torch.randn_like(numbers)
    shaken[:, 8:] = shaken[:, 8:] * (torch.rand(n, 1, device=device) > 0.15)
    return F.one_hot(pieces.slot[pick], SLOT_COUNT).float(), shaken


def wrongness(scores, pieces, pick, slot_of, taught=None, trust=0.0):
    """
    Loss of each piece. Where the kind is known: soft cross-entropy among the kinds of its slots, and of the slot where the outline network was or might
    be wrong about it. Where only tags are: -log of the allowed sum. `taught` = teachers' probabilities (kinds within their slots, slots).
    """
    within, slots = logs_of(scores, slot_of)
    target, allowed = pieces.target[pick], pieces.allowed[pick].float()
    one_hot = F.one_hot(slot_of, SLOT_COUNT).float()
    of_slots = torch.cat([target[:, :-1] @ one_hot, target[:, -1:]], 1)
    kinds_in = one_hot.sum(0)
    # Smoothed within each slot that the target has.
    wanted = (1 - SMOOTHING) * target[:, :-1] + SMOOTHING * (of_slots[:, :-1] / kinds_in)[:, slot_of]
    known = target.sum(1) > 0
    doubtful = (pieces.marked[pick] == OUTLINED) | (pieces.marked[pick] == MISTAKEN)
    wanted_slots = of_slots
    joint = within + slots[:, slot_of]
    tag_loss = -(joint.exp() * allowed[:, :-1]).sum(1).clamp_min(1e-4).log()
    if taught is not None:
        teach_within, teach_slots = taught
        wanted = (1 - trust) * wanted + trust * teach_within * of_slots[:, slot_of]
        wanted_slots = (1 - trust) * of_slots + trust * teach_slots
        by_tags = teach_within * teach_slots[:, slot_of] * allowed[:, :-1]
        sure = by_tags.sum(1)
        taught_loss = -(by_tags / sure.clamp_min(1e-4)[:, None] * joint.clamp_min(-30)).sum(1)
        tag_loss = torch.where(sure > 0.15, taught_loss, tag_loss)
    kind_loss = -(wanted * within.clamp_min(-30)).sum(1)
    slot_loss = -(wanted_slots * slots).sum(1) * doubtful
    weight = torch.where(pieces.marked[pick] == TRUE_KIND, 1.0, 0.6)
    return torch.where(known, (kind_loss + SLOT_WEIGHT * slot_loss) * weight, TAGGED_WEIGHT * tag_loss * allowed.any(1))


class Average:
    """Exponential average of a network's weights and statistics; what is kept is the average, not the last step."""

    def __init__(self, network, kept, decay=0.998):
        self.kept, self.decay, self.steps = kept, decay, 0
        pairs = [(a, b) for a, b in zip(kept.state_dict().values(), network.state_dict().values()) if a.dtype.is_floating_point]
        self.old, self.new = [a for a, _ in pairs], [b for _, b in pairs]

    @torch.no_grad()
    def take(self):
        self.steps += 1
        torch._foreach_lerp_(self.old, self.new, 1 - min(self.decay, (1 + self.steps) / (10 + self.steps)))
