"""
Renders cloth to train the pattern network on, by other seeds and freer looks than fixtures/renders, which stay unseen: from the root,
blender -b --factory-startup -P src/photo/networks/pattern/training/rendered_cloth.py -- FIRST COUNT FOLDER
writes pictures, named for their pattern, and masks. Needs what fixtures/renders/make_renders.py needs; about 10 s a picture.
"""

import sys
from pathlib import Path

sys.path.insert(0, str(Path.cwd() / "fixtures" / "renders"))
sys.dont_write_bytecode = True

import make_renders  # noqa: E402  (brings the studio's folder onto the path)
import numpy as np  # noqa: E402
from plan import FLOORS, LAMPS, PATTERNS, SHAPES, apart, camera, colour  # noqa: E402

# The fixtures' seeds are below 10,000.
SEED = 50_000
WEAVES = ("woven", "felt", "smooth", "knit")


def between(rng, low, high):
    """Even in the logarithm: as many small ones as large ones."""
    return float(np.exp(rng.uniform(np.log(low), np.log(high))))


def chosen(rng, things):
    return things[rng.integers(len(things))]


def look(pattern, rng):
    one = colour(rng, (0, 12)) if rng.uniform() < 0.3 else colour(rng)
    if pattern == "plain":
        return {"pattern": pattern, "labs": [one], "weave": chosen(rng, (*WEAVES, "cord"))}
    if pattern == "mottled":
        lighter = [min(92, one[0] + rng.uniform(8, 16)), round(one[1] * 0.8), round(one[2] * 0.8)]
        fleck = {"size": between(rng, 0.0035, 0.011), "stretch": chosen(rng, (1.0, 1.0, 7.0, 4.0)), "strength": rng.uniform(0.9, 1.3)}
        return {"pattern": pattern, "labs": [one, lighter], "weave": chosen(rng, ("felt", "woven")), **fleck}
    two = apart(rng, one)
    three = apart(rng, one, two)
    labs = [one, two, three] if rng.uniform() < 0.4 else [one, two]
    if pattern == "printed":
        size = between(rng, 0.012, 0.04)
        # So many that each finds its place apart from the others (fabric.py).
        count = int(rng.uniform(0.4, 0.9) * 0.173 / size**2)
        return {"pattern": pattern, "labs": labs, "count": count, "size": size, "motif": chosen(rng, ("flower", "dot", "leaf")), "weave": chosen(rng, WEAVES)}
    shares = rng.uniform(0.3, 1, len(labs))
    bands = {"period": between(rng, *((0.02, 0.12) if pattern == "striped" else (0.035, 0.14))), "shares": [float(v) for v in shares / shares.sum()]}
    return {"pattern": pattern, "labs": labs, "turned": bool(rng.uniform() < 0.5), "weave": chosen(rng, WEAVES), **bands}


def plan(number):
    rng = np.random.default_rng(SEED + number)
    pattern = PATTERNS[number % len(PATTERNS)]
    shape, pieces = chosen(rng, SHAPES)
    lamp = chosen(rng, LAMPS)
    return {
        "name": f"{pattern}-{number:04d}",
        "seed": SEED + number,
        "shape": shape,
        "pieces": pieces,
        "look": look(pattern, rng),
        "floor": chosen(rng, FLOORS),
        "lamp": lamp,
        "side": chosen(rng, (-1, 1)),
        "reach": rng.uniform(1.4, 2.0),
        "lift": rng.uniform(1.3, 2.2),
        "turn": rng.uniform(-18, 18),
        "neutral": None,
        "camera": camera(rng, lamp),
    }


def main():
    first, count, folder = sys.argv[sys.argv.index("--") + 1 :]
    folder = Path(folder).resolve()
    folder.mkdir(parents=True, exist_ok=True)
    for number in range(int(first), int(first) + int(count)):
        make_renders.render(plan(number), folder)


main()
