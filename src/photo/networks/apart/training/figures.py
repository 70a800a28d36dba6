"""How well garments are told apart, on pictures made of photos that nothing learnt from."""

import numpy as np
import torch
from scipy import ndimage

from asked import cells_of
from grouped import garments_in
from heaps import heaps_batch, marked

SEED, PICTURES, FOUND_FROM, LEAST_SEEN = 7, 300, 0.7, 60


def overlap(one, other):
    return (one & other).sum() / max(1, (one | other).sum())


def share_found(truth, told):
    """(garments seen, of these found, told)."""
    seen = [one for one in range(1, truth.max() + 1) if (truth == one).sum() >= LEAST_SEEN]
    mine = [told == at for at in range(1, told.max() + 1)]
    found = sum(any(overlap(truth == one, other) >= FOUND_FROM for other in mine) for one in seen)
    return len(seen), found, len(mine)


@torch.no_grad()
def figures_of(network, garments, grounds, batch=50):
    """Of pictures of several garments: share found by the network and as regions; of those of one: share told as several."""
    torch.manual_seed(SEED)
    device = garments.photos.device
    sums = {"garments": 0, "found": 0, "as regions": 0, "told": 0}
    touching = {"garments": 0, "found": 0, "as regions": 0}
    ones = several = 0
    for _ in range(PICTURES // batch):
        image, ids = heaps_batch(garments, grounds, batch)
        marks = marked(ids)
        told = network(torch.cat([(image / 255).clamp(0, 1), marks], 1).contiguous()).float().cpu().numpy()
        truths, cloths = cells_of(ids).cpu().numpy(), cells_of(marks[:, 0]).cpu().numpy() > 0.5
        for truth, one, cloth in zip(truths, told, cloths):
            mine = garments_in(one, cloth)
            seen, found, count = share_found(truth, mine)
            if seen < 2:
                ones += 1
                several += count > 1
                continue
            _, regions, _ = share_found(truth, ndimage.label(cloth)[0])
            for name, more in zip(sums, (seen, found, regions, count)):
                sums[name] += more
            if regions < seen:
                for name, more in zip(touching, (seen, found, regions)):
                    touching[name] += more
    part = lambda some: {"found": some["found"] / max(1, some["garments"]), "as regions": some["as regions"] / max(1, some["garments"]), "garments": some["garments"]}
    return {"several": part(sums) | {"told": sums["told"]}, "touching": part(touching), "one": {"pictures": ones, "told as several": several / max(1, ones)}}
