"""Garments out of the network's answer, as src/reading/kinds/told-apart.ts groups them."""

import numpy as np
from scipy import ndimage

from apart_network import WAY

# A middle is the highest within so many cells each way, and at least so sure.
WITHIN, SURE_FROM = 4, 0.3
# A garment of fewer cells of its picture, or of less of the largest one, is a part of its neighbour.
LEAST_CELLS, LEAST_OF_LARGEST = 60, 0.08


def middles(chances):
    highest = ndimage.maximum_filter(chances, 2 * WITHIN + 1) == chances
    return np.argwhere(highest & (chances >= SURE_FROM))


def garments_in(told, cloth):
    """h x w whole numbers: the garment of each cell of cloth, 0 none. `told` 3 x h x w, `cloth` h x w."""
    chances = 1 / (1 + np.exp(-told[0]))
    found = middles(np.where(ndimage.binary_dilation(cloth, iterations=2), chances, 0))
    h, w = cloth.shape
    if len(found) == 0:
        return cloth.astype(int)
    down, across = np.mgrid[:h, :w]
    to = np.stack([down + told[2] * WAY, across + told[1] * WAY], -1)
    keep = list(range(len(found)))
    while True:
        far = ((to[:, :, None] - found[keep][None, None]) ** 2).sum(-1)
        ids = np.where(cloth, far.argmin(-1) + 1, 0)
        areas = np.bincount(ids.ravel(), minlength=len(keep) + 1)[1:]
        small = areas.argmin()
        if len(keep) == 1 or areas[small] >= max(LEAST_CELLS, LEAST_OF_LARGEST * areas.max()):
            return ids
        keep.pop(small)
