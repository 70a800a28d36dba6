"""Photos as the network takes them."""

import io
import tarfile

import numpy as np
from PIL import Image

HEIGHT, WIDTH = 384, 256
# Label of what nobody said anything about, where 1 = clothes and 0 = not.
IGNORED = 2


def members(path):
    with tarfile.open(path) as archive:
        return {m.name: archive.extractfile(m).read() for m in archive if m.isfile()}


def photo_of(data):
    return np.array(Image.open(io.BytesIO(data)).convert("RGB"))


def fitted(photo, outline):
    """Photo and outline as the program fits them in: the photo's outermost pixels go on around it; labels 1 = clothes, 0 = not, ignored around the photo."""
    h, w = photo.shape[:2]
    scale = min(HEIGHT / h, WIDTH / w)
    nh, nw = max(1, round(h * scale)), max(1, round(w * scale))
    top, left = (HEIGHT - nh) // 2, (WIDTH - nw) // 2
    margin = ((top, HEIGHT - nh - top), (left, WIDTH - nw - left))
    image = np.pad(np.array(Image.fromarray(photo).resize((nw, nh), Image.BILINEAR)), margin + ((0, 0),), mode="edge")
    label = np.full((HEIGHT, WIDTH), IGNORED, np.uint8)
    if outline is not None:
        label[top : top + nh, left : left + nw] = np.array(outline.resize((nw, nh), Image.NEAREST)) > 127
    return image, label
