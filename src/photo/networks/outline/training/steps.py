"""What every training run of the parser does alike: its start, its rate, one step, and the weights that are kept."""

import copy

import torch

# What a photo shows, in the order of the network's answer.
WORN, SINGLE, SCENE = 0, 1, 2
# A worn outfit has a person on more than this share of the picture; less leaves the question open.
LEAST_PERSON = 0.03


def begun(seed):
    """Seeds, and the device to train on."""
    torch.manual_seed(seed)
    torch.backends.cudnn.benchmark = False
    torch.set_float32_matmul_precision("high")
    return "cuda" if torch.cuda.is_available() else "cpu"


def photo_kinds(outfit_labels, count, scenes_from):
    """What each of `count` pictures shows: outfits first (their label maps N x H x W), then single garments, scenes at last; -1 where it is open."""
    kinds = torch.full((count,), SINGLE, device=outfit_labels.device)
    person = (outfit_labels > 0).flatten(1).float().mean(1) > LEAST_PERSON
    kinds[: len(outfit_labels)] = torch.where(person, WORN, -1)
    kinds[scenes_from:] = SCENE
    return kinds


def take_step(network, optimiser, loss, average):
    """One step down the loss, which the average then hears of."""
    optimiser.zero_grad(set_to_none=True)
    loss.backward()
    torch.nn.utils.clip_grad_norm_(network.parameters(), 2.0)
    optimiser.step()
    average.take(network)


class WeightAverage:
    """Exponential average of weights and statistics; what is kept is the average, not the last step."""

    def __init__(self, network, decay=0.999):
        self.network = copy.deepcopy(network).eval()
        self.decay = decay
        self.steps = 0

    @torch.no_grad()
    def take(self, network):
        self.steps += 1
        decay = min(self.decay, (1 + self.steps) / (10 + self.steps))
        pairs = list(zip(self.network.state_dict().values(), network.state_dict().values()))
        floats = [(kept, new) for kept, new in pairs if kept.dtype.is_floating_point]
        torch._foreach_lerp_([kept for kept, _ in floats], [new for _, new in floats], 1 - decay)
        for kept, new in pairs:
            if not kept.dtype.is_floating_point:
                kept.copy_(new)
