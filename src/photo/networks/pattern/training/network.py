"""The pattern network: the first layers of a detector of things, what they say of the cloth, and a small head; trained on together."""

import torch
from torch import nn
from torch.nn import functional as F

import beside  # noqa: F401
from cloths import PATTERNS
from detector import STRIDE_TWO, Detector

# Into so many mixtures the channels are brought before it is looked how far they go together.
MIXTURES = 16
# Layers taken; those the head hears, and those of whose channels it hears how far they go together; the head's width; the picture enlarged so
# many times; the rate at which the layers learn. For the network that ships, and for two larger ones to teach it.
ALL_STAGES = (1, 2, 5, 8, 11, 17, 20, 29, 32, 38, 51)
SHAPES = {
    "shipped": {"layers": 24, "heard": (1, 2, 5, 8, 11, 17, 20, 23), "together": (8, 17, 23), "hidden": 40, "enlarged": 1, "rate": 1e-3},
    "teacher": {"layers": 52, "heard": ALL_STAGES, "together": (8, 17, 29, 38), "hidden": 64, "enlarged": 1, "rate": 6e-4},
    "near-teacher": {"layers": 52, "heard": ALL_STAGES, "together": (8, 17, 29, 38), "hidden": 64, "enlarged": 1.5, "rate": 6e-4},
}


def _flat(x):
    """N x C x H x W to N x C x HW, the first two sizes as plain numbers, so that the ONNX file holds them and no computation of them."""
    return x.float().reshape(int(x.shape[0]), int(x.shape[1]), -1)


def _figures(x, share, inside):
    """Mean, spread and largest value of each channel of x, N x C x P, where `inside`, N x 1 x P, is 1; `share` is that over its sum."""
    share = share.transpose(1, 2)
    mean, square = (x @ share)[..., 0], (x * x @ share)[..., 0]
    return [mean, ((square - mean * mean).clamp_min(0) + 1e-6).sqrt(), (x * inside).amax(2)]


class Trunk(nn.Module):
    """
    N x 4 x H x W (red, green, blue 0..1, cloth 0 or 1; outside the cloth its mean colour), sides multiples of 16 (of 32 for the larger ones),
    to figures of the cloth: its mean colour; mean, spread and largest value of each channel of the layers that the head hears; covariances,
    as signed roots, of mixtures of some of these.
    """

    def __init__(self, detector_path, layers, heard, together, enlarged):
        super().__init__()
        self.heard, self.enlarged = heard, enlarged
        self.detector = Detector(detector_path, layers)
        self.mixes = nn.ModuleDict({str(place): nn.Conv2d(self.detector.convs[place].out_channels, MIXTURES, 1, bias=False) for place in together})
        for mix in self.mixes.values():
            nn.init.orthogonal_(mix.weight)
        self.register_buffer("pairs", torch.triu_indices(MIXTURES, MIXTURES), persistent=False)
        self.figures = 3 + 3 * sum(self.detector.convs[place].out_channels for place in heard) + len(together) * self.pairs.shape[1]

    def forward(self, picture):
        rgb, cloth = picture[:, :3], picture[:, 3:]
        figures = [(rgb * cloth).sum((2, 3)) / cloth.sum((2, 3)).clamp_min(1)]
        if self.enlarged != 1:
            rgb, cloth = (F.interpolate(one, scale_factor=self.enlarged, mode="bilinear", align_corners=False) for one in (rgb, cloth))
            cloth = (cloth > 0.9).float()
        for place, x in zip(self.heard, self.detector.maps(rgb, self.heard)):
            scale = 2 ** sum(halving <= place for halving in STRIDE_TWO)
            figures += self._told(place, x, (F.avg_pool2d(cloth, scale) > 0.6).float())
        return torch.cat(figures, 1)

    def _told(self, place, x, inside):
        with torch.autocast(x.device.type, enabled=False):
            inside = _flat(inside)
            share = inside / (inside.sum(2, keepdim=True) + 1e-6)
            out = _figures(_flat(x), share, inside)
            if str(place) in self.mixes:
                mixed = _flat(self.mixes[str(place)](x.float()))
                mixed = mixed - (mixed * share).sum(2, keepdim=True)
                both = (mixed * share) @ mixed.transpose(1, 2)
                both = both.sign() * (both.abs() + 1e-4).sqrt()
                out.append(both[:, self.pairs[0], self.pairs[1]])
            return out


class PatternNetwork(nn.Module):
    """The trunk's figures, evened, and a head: scores in the order of PATTERNS."""

    def __init__(self, detector_path, shape):
        super().__init__()
        spec = SHAPES[shape]
        self.trunk = Trunk(detector_path, *(spec[name] for name in ("layers", "heard", "together", "enlarged")))
        self.register_buffer("centre", torch.zeros(self.trunk.figures))
        self.register_buffer("width", torch.ones(self.trunk.figures))
        self.drop_figures, self.drop_hidden = nn.Dropout(0.25), nn.Dropout(0.4)
        self.hidden, self.scores = nn.Linear(self.trunk.figures, spec["hidden"]), nn.Linear(spec["hidden"], len(PATTERNS))

    def even(self, figures):
        """Takes from these figures, N x F, what is ordinary: most then lie within -4 .. 4."""
        logs = self._logs(figures)
        self.centre, self.width = logs.mean(0), logs.std(0) + 1e-4

    @staticmethod
    def _logs(figures):
        return figures.sign() * torch.log1p(4 * figures.abs())

    def forward(self, picture):
        evened = ((self._logs(self.trunk(picture)) - self.centre) / self.width).clamp(-4, 4)
        return self.scores(self.drop_hidden(F.relu(self.hidden(self.drop_figures(evened)))))
