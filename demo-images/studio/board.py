"""The season's inspirations: who wears what where, what lies together, what the river looks like. Invented."""


import camera
import figure
import places
import street
from bottoms import skirt_pieces, trouser_pieces
from colours import BARK, CHARCOAL, CREAM, HONEY, INK, MOSS, OAT, RIVER, RUST, SLATE, STONE, TAN
from scenes import SCENES
from subject import lay_pieces, stand_shoes
from small_things import scarf_pieces
from tops import top_pieces
from worn import SLOT_INDEX, wear
from wardrobe import JUMPER, LEATHER, RUBBER, plain, printed, striped

SKINS = {"light": (72, 13, 18), "olive": (62, 14, 22), "brown": (44, 15, 22), "dark": (33, 11, 15)}
HAIRS = {"blond": (62, 8, 28), "brown": (30, 8, 12), "black": (14, 1, 1), "grey": (64, 0, 3), "red": (40, 24, 28)}


def worn(file, title, place, person, clothes, **pose):
    """`person` = (skin, hair, hair cut); `clothes` = [(slot, cut, cloth, options)]."""
    return {"file": file, "title": title, "kind": "worn", "place": place, "person": person, "clothes": clothes, "pose": pose}


def laid(file, title, floor, lamp, things):
    """`things` = [(slot, 'pieces' or shoe kind, pieces or colours, cloth, (x, y), turn)]."""
    return {"file": file, "title": title, "kind": "flat", "floor": floor, "lamp": lamp, "things": things}


BARK_LEATHER = plain(BARK, **LEATHER)
BOARD = [
    worn(
        "i01-quay-river-jumper.jpg",
        "By the lock, first mild day",
        "quay",
        ("light", "brown", "bun"),
        [("bottom", "trousers", plain(INK), {}), ("top", "jumper", plain(RIVER, "knit"), {}), ("shoes", "ankle", BARK_LEATHER, {})],
        stride=0.07,
    ),
    worn(
        "i02-oat-coat.jpg",
        "Oat coat, everything quiet under it",
        "pale street",
        ("olive", "black", "bob"),
        [
            ("bottom", "trousers", plain(SLATE), {"ease": 0.024}),
            ("top", "shirt", plain(CREAM), {}),
            ("outer", "coat", plain([73, 4, 20]), {"gap": 0.06}),
            ("shoes", "low", plain(OAT), {"sole": (90, 0, 5)}),
        ],
        stride=0.1,
    ),
    worn(
        "i03-moss-and-oat-skirt.jpg",
        "Moss on top, oat below",
        "brick street",
        ("brown", "black", "bun"),
        [
            ("legwear", "tights", plain(CHARCOAL, "smooth"), {}),
            ("bottom", "skirt", plain([77, 3, 17]), {"hem": 0.5}),
            ("top", "jumper", plain(MOSS, "knit"), {"hem": 0.93}),
            ("shoes", "ankle", BARK_LEATHER, {}),
        ],
        stride=0.05,
    ),
    worn(
        "i04-garden-work.jpg",
        "Among the hives after rain",
        "garden",
        ("light", "grey", "bob"),
        [
            ("bottom", "trousers", plain([43, -10, 24], "cord"), {"until": 0.92}),
            ("top", "shirt", plain(CREAM), {}),
            ("shoes", "tall", plain(INK, **RUBBER), {}),
            ("accessory", "cap", plain(HONEY, "knit"), {}),
        ],
        stride=0.08,
    ),
    worn(
        "i05-evening-class.jpg",
        "Dressed for an evening class",
        "school yard",
        ("dark", "black", "bun"),
        [
            ("bottom", "trousers", plain(INK), {}),
            ("top", "tee", striped([CREAM, SLATE], 0.04, [0.6, 0.4]), {}),
            ("outer", "jacket", plain(SLATE, "felt"), {"gap": 0.055}),
            ("shoes", "low", BARK_LEATHER, {}),
            ("accessory", "bag", plain(RIVER, **LEATHER), {}),
        ],
        stride=0.06,
    ),
    worn(
        "i06-rust-dress.jpg",
        "Rust under an ink coat",
        "pale street",
        ("light", "red", "long"),
        [
            ("legwear", "tights", plain(CHARCOAL, "smooth"), {}),
            ("full", "dress", plain(RUST), {"hem": 0.48, "flare": 0.06, "sleeve": 0.9}),
            ("outer", "coat", plain(INK, "felt"), {"gap": 0.085, "hem": 0.58}),
            ("shoes", "ankle", BARK_LEATHER, {}),
        ],
        stride=0.07,
    ),
    worn(
        "i07-river-skirt.jpg",
        "River-green skirt, oat jumper",
        "sandstone street",
        ("brown", "brown", "long"),
        [
            ("bottom", "skirt", plain(RIVER), {"hem": 0.42, "flare": 0.24}),
            ("top", "jumper", plain(OAT, "knit"), {"hem": 0.92, "roll": 0.02}),
            ("shoes", "ankle", BARK_LEATHER, {}),
        ],
        stride=0.04,
        bend=(0.1, 0.6),
    ),
    worn(
        "i08-honey-under-ink.jpg",
        "One warm layer under the dark",
        "quay",
        ("olive", "brown", "bob"),
        [
            ("bottom", "trousers", plain(STONE), {"ease": 0.02, "foot": 0.06}),
            ("top", "jumper", plain(HONEY, "knit"), {}),
            ("outer", "jacket", plain(INK, "felt"), {"gap": 0.07}),
            ("shoes", "low", plain(OAT), {"sole": (90, 0, 5)}),
        ],
        stride=0.09,
    ),
    worn(
        "i09-flowers-after-rain.jpg",
        "Small flowers, dark ground",
        "brick street",
        ("light", "blond", "bun"),
        [
            ("full", "dress", printed([INK, HONEY, CREAM], 240, 0.018, "flower"), {"hem": 0.42, "flare": 0.2}),
            ("shoes", "tall", plain([44, -12, 24], **RUBBER), {"calf": 1.3}),
        ],
        stride=0.0,
        arms=(0.09, 0.07),
    ),
    laid(
        "i10-flat-stripes.jpg",
        "Laid out for Tuesday",
        "pale planks",
        "daylight",
        [
            ("top", "pieces", lambda: top_pieces(collar="crew", depth=0.06, seed=307, cuff=0.05), striped([CREAM, INK], 0.04, [0.7, 0.3]), (-0.24, 0.34), 6),
            ("bottom", "pieces", lambda: trouser_pieces(seed=308, ankle=0.09, knee=0.105), plain([44, -11, 25]), (0.3, -0.2), -5),
            ("shoes", "low", {"sole": (90, 0, 5)}, plain(TAN, **LEATHER), (-0.28, -0.42), 170),
        ],
    ),
    laid(
        "i11-flat-river-scarf.jpg",
        "Blue-green against oat",
        "white bed",
        "overcast",
        [
            ("top", "pieces", lambda: top_pieces(**JUMPER, seed=311), plain(OAT, "knit"), (-0.2, 0.3), 4),
            ("bottom", "pieces", lambda: skirt_pieces(length=0.66, hem=0.3, seed=312), plain(SLATE, "felt"), (0.2, -0.45), -6),
            ("accessory", "pieces", lambda: scarf_pieces(seed=313), plain(RIVER, "felt"), (-0.33, -0.4), 8),
        ],
    ),
    {"file": "i12-river-morning.jpg", "title": "The river at seven", "kind": "scene", "scene": "river"},
    {"file": "i13-glazed-bowls.jpg", "title": "Bowls on the classroom shelf", "kind": "scene", "scene": "bowls"},
]


def _shares(index, truths):
    """[{slot, lab, share}] of what is seen: pixels of each slot, split by its cloth's true shares."""
    pixels = {slot: int((index == SLOT_INDEX[slot]).sum()) for slot in truths}
    total = sum(pixels.values())
    rows = [{"slot": slot, "lab": colour["lab"], "share": round(pixels[slot] / total * colour["share"], 4)} for slot, colours in truths.items() for colour in colours]
    return sorted((row for row in rows if row["share"] > 0), key=lambda row: -row["share"])


def _worn(path, entry, seed, size):
    places.clear()
    street.STREETS[entry["place"]](seed)
    joints = figure.pose(**entry["pose"])
    skin, hair, cut = entry["person"]
    figure.body(joints, SKINS[skin], HAIRS[hair], cut, seed)
    truths = {slot: wear(joints, slot, cut, look, seed + k, **more) for k, (slot, cut, look, more) in enumerate(entry["clothes"])}
    light = street.sun_and_sky(from_left=seed % 2 == 0)
    places.camera_at((0.25 if seed % 2 else -0.3, -4.1, 1.3), (0.02, 0, 0.88), 70, focus=4.1, f_stop=2.2)
    camera.prepare(*size, 34)
    index = camera.photograph(path, {"balance": 0.9, "noise": 1.0, "contrast": 0.12, "exposure_stops": 0.05}, light, 86, seed)
    return _shares(index, truths)


def _laid(path, entry, seed, size):
    places.clear()
    places.FLOORS[entry["floor"]](seed)
    truths = {}
    for k, (slot, how, what, look, at, turn) in enumerate(entry["things"]):
        if how == "pieces":
            objects, truth, _ = lay_pieces(what(), look, seed + k, turn=turn, at=at)
        else:
            objects, truth = stand_shoes(how, look, seed + k, **what, at=at, turn=turn)
        for thing in objects:
            thing.pass_index = SLOT_INDEX[slot]
        truths[slot] = truth
    _, light = places.light_room(entry["lamp"])
    places.camera_at((0, -0.25, 1.72), (0, -0.03, 0), 30)
    camera.prepare(*size, 32)
    return _shares(camera.photograph(path, {"balance": 0.92, "noise": 1.0, "contrast": 0.1}, light, 86, seed), truths)


def photograph_inspiration(path, entry, seed, size=(640, 960)):
    """One inspiration; returns its true colours [{slot, lab, share}], slot null for a scene."""
    if entry["kind"] == "worn":
        return _worn(path, entry, seed, size)
    if entry["kind"] == "flat":
        return _laid(path, entry, seed, size)
    return SCENES[entry["scene"]](path, seed, size)
