"""Crops of a made picture by PyTorch's grid_sample, for the program's own resampling to be held to.

    python crop_fixture.py ../../../../../fixtures/reference/piece-crops.json

Picture (400 x 600): red = (7 x + 3 y) mod 256, green = (x y) mod 251, blue = (x x + y) mod 253; the mask is an ellipse.
"""

import json
import pathlib
import sys

import numpy as np
import torch

from crops import SIDE, grids_of, sampled
from outfits import HEIGHT, WIDTH
from pieces import box_of, numbers_of

# Middle and half axes of the ellipses, pixels: one amid the picture, one small, one at the edge, one larger than what is around it.
ELLIPSES = [(200, 250, 80, 120), (130, 560, 14, 9), (395, 300, 60, 90), (200, 300, 190, 295)]
EVERY = 23


def main():
    x, y = torch.meshgrid(torch.arange(WIDTH), torch.arange(HEIGHT), indexing="xy")
    photo = torch.stack([(7 * x + 3 * y) % 256, (x * y) % 251, (x * x + y) % 253]).float()[None]
    out = []
    for cx, cy, a, b in ELLIPSES:
        mask = ((x + 0.5 - cx) / a) ** 2 + ((y + 0.5 - cy) / b) ** 2 < 1
        box = box_of(mask.numpy())
        # All of the ellipse is a top; a band of skin above the picture's middle is the only other thing seen.
        classes = np.where(mask.numpy(), 1, np.where((y.numpy() >= 100) & (y.numpy() < 120), 8, 0)).astype(np.uint8)
        crop = sampled(photo, mask.float()[None, None], grids_of(torch.tensor([box], dtype=torch.float32)))[0]
        out.append(
            {
                "ellipse": [cx, cy, a, b],
                "box": list(box),
                "numbers": [round(float(v), 5) for v in numbers_of(mask.numpy(), box, classes)],
                "crop": [round(float(v), 5) for v in crop.reshape(-1)[::EVERY * EVERY]],
            }
        )
    text = {"source": "PyTorch grid_sample (bilinear) and 2 x 2 means", "side": SIDE, "every": EVERY * EVERY, "cases": out}
    pathlib.Path(sys.argv[1]).write_text(json.dumps(text) + "\n")


if __name__ == "__main__":
    main()
