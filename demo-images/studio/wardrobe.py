"""What Ilse owns and what she found for sale: each garment's cut, cloth, place and history. Invented from end to end."""

# fmt: off
from bottoms import skirt_pieces, tights_pieces, trouser_pieces
from colours import BARK, CHARCOAL, CREAM, FUCHSIA, HONEY, INK, MOSS, OAT, ORANGE, RUST, SAGE, SLATE, STONE, TAN
from small_things import bag_pieces, beanie_pieces, scarf_pieces, socks_pieces
from tops import skirted, top_pieces

GOOD = {"balance": 0.95, "noise": 1.0, "contrast": 0.08}
PHONE = {"balance": 0.9, "noise": 1.3, "contrast": 0.15, "saturation": 1.06}
EVENING = {"balance": 0.6, "noise": 2.2, "contrast": 0.12, "exposure_stops": -0.25}

WALL = (88, 0, 6)
SPRING_ON = ["spring", "summer", "autumn"]


def plain(lab, weave="woven", **more):
    return {"pattern": "plain", "labs": [lab], "weave": weave, **more}


def mottled(one, two, weave="felt", **more):
    return {"pattern": "mottled", "labs": [one, two], "weave": weave, **more}


def striped(labs, period, shares, weave="woven", turned=False):
    return {"pattern": "striped", "labs": labs, "period": period, "shares": shares, "weave": weave, "turned": turned}


def checked(labs, period, shares, weave="woven"):
    return {"pattern": "checked", "labs": labs, "period": period, "shares": shares, "weave": weave}


def printed(labs, count, size, motif, weave="woven"):
    return {"pattern": "printed", "labs": labs, "count": count, "size": size, "motif": motif, "weave": weave}


LEATHER = {"weave": "smooth", "roughness": 0.5, "specular": 0.35}
RUBBER = {"weave": "smooth", "roughness": 0.35, "specular": 0.4}
SHIRT = dict(collar="shirt", opening="buttons", curved=True)
JUMPER = dict(collar="crew", rib=True, depth=0.07, hem=0.235, waist=0.24, chest=0.255, puff=0.02, fold=0.016)


def garment(file, name, kind, slot, look, photo, price, bought_on, wears, place="rail", year_parts=(), basic=False, loved=None, condition="good", way_out=None, notes="", care=""):
    """One line of the wardrobe. `wears` = days worn a month in each of the last twelve months, the oldest first."""
    return {"file": file, "name": name, "kind": kind, "slot": slot, "look": look, "photo": photo, "price": price, "boughtOn": bought_on, "wears": wears, "place": place,
            "yearParts": list(year_parts), "basic": basic, "loved": loved, "condition": condition, "wayOut": way_out, "notes": notes, "care": care}


def flat(pieces, floor, lamp="daylight", camera=GOOD, **more):
    return {"pieces": pieces, "floor": floor, "lamp": lamp, "camera": camera, **more}


def hung(pieces, lamp="daylight", camera=GOOD, wall=WALL, **more):
    return {"pieces": pieces, "wall": wall, "lamp": lamp, "camera": camera, **more}


def standing(shoes, floor, lamp="daylight", camera=GOOD, **more):
    return {"shoes": shoes, "floor": floor, "lamp": lamp, "camera": camera, **more}


EVEN = [1, 2, 2, 3, 3, 2, 2, 2, 3, 3, 2, 2]
SELDOM = [0, 0, 1, 0, 0, 0, 0, 0, 1, 0, 0, 0]
NEVER = [0] * 12
COLD = [5, 5, 3, 1, 0, 0, 0, 0, 0, 2, 4, 5]
WARM = [0, 0, 0, 1, 3, 5, 6, 6, 3, 1, 0, 0]
OFTEN = [5, 6, 6, 6, 5, 4, 3, 3, 5, 6, 6, 6]

GARMENTS = [
    garment("g01-cream-linen-shirt.jpg", "Cream linen shirt", "shirt", "top", plain(CREAM), flat(top_pieces(**SHIRT, seed=3, fold=0.016), "oak planks", roll=4), 38, "2024-04-12", EVEN, loved=3, year_parts=SPRING_ON),
    garment("g02-striped-long-sleeve.jpg", "Striped long-sleeve", "long-sleeve", "top", striped([CREAM, SLATE], 0.04, [0.62, 0.38]), flat(top_pieces(collar="crew", depth=0.06, seed=7, cuff=0.05), "white bed", roll=-5), 24, "2023-09-30", OFTEN, loved=3),
    garment("g03-moss-jumper.jpg", "Moss jumper", "jumper", "top", plain(MOSS, "knit"), flat(top_pieces(**JUMPER, seed=5), "pale planks", roll=3), 52, "2022-11-05", COLD, loved=2, notes="Pilling at the elbows."),
    garment("g04-honey-cardigan.jpg", "Honey cardigan", "cardigan", "top", plain(HONEY, "knit"), hung(top_pieces(**{**JUMPER, "collar": "v", "depth": 0.2}, opening="buttons", seed=11)), 45, "2025-02-20", EVEN, loved=3),
    garment("g05-blue-grey-shirt.jpg", "Blue-grey shirt", "shirt", "top", plain(SLATE), hung(top_pieces(**SHIRT, seed=13, pockets=[(0.12, -0.25, 0.055, 0.06)])), 29, "2023-03-11", EVEN, loved=2),
    garment("g06-other-blue-grey-shirt.jpg", "Blue-grey shirt, the other one", "shirt", "top", plain([47, -3, -10]), flat(top_pieces(**SHIRT, seed=17, angle=(18, 13)), "oak planks", roll=-6), 31, "2024-10-02", SELDOM, loved=1, notes="Bought because the first one was in the wash."),
    garment("g07-checked-shirt.jpg", "Checked flannel shirt", "shirt", "top", checked([RUST, OAT, INK], 0.1, [0.5, 0.36, 0.14], "felt"), flat(top_pieces(**SHIRT, seed=19, fold=0.015), "grey screed", roll=5), 33, "2021-10-16", COLD, loved=2, year_parts=["autumn", "winter", "spring"]),
    garment("g08-fuchsia-blouse.jpg", "Fuchsia blouse", "shirt", "top", plain(FUCHSIA, "smooth", specular=0.2, roughness=0.6), flat(top_pieces(collar="v", depth=0.15, opening="buttons", sleeve=0.5, cuff=0.06, seed=23, fold=0.016, length=0.64), "white bed", roll=4), 49, "2025-06-21", NEVER, loved=1, notes="For my sister's party. Never found what to wear with it."),
    garment("g09-charcoal-t-shirt.jpg", "Charcoal T-shirt", "t-shirt", "top", plain(CHARCOAL), flat(top_pieces(collar="crew", depth=0.075, sleeve=0.2, cuff=0.075, angle=(36, 40), seed=29), "pale planks", roll=-3), 15, "2024-01-09", OFTEN, basic=True, loved=2),
    garment("g10-oat-melange-jumper.jpg", "Oat melange jumper", "jumper", "top", mottled(OAT, STONE, "knit", size=0.007, strength=1.1), flat(top_pieces(**{**JUMPER, "collar": "roll"}, seed=31), "dark planks", "overcast", roll=3), 64, "2023-12-02", COLD, loved=3),
    garment("g11-ink-raincoat.jpg", "Ink raincoat", "raincoat", "outer", plain(INK, "smooth", specular=0.25, roughness=0.55), hung(top_pieces(length=0.92, hem=0.29, waist=0.265, chest=0.275, depth=0.07, opening="zip", hood=True, collar="crew", sleeve=0.58, cuff=0.065, angle=(15, 17), seed=37, pockets=[(-0.15, -0.6, 0.07, 0.075), (0.15, -0.6, 0.07, 0.075)]), "overcast"), 110, "2022-03-05", [3, 4, 6, 5, 4, 2, 1, 2, 4, 6, 5, 4], loved=3, notes="Hives must be looked at in rain too."),
    garment("g12-rust-jacket.jpg", "Rust wool jacket", "jacket", "outer", plain(RUST, "felt"), hung(top_pieces(length=0.66, collar="shirt", opening="buttons", depth=0.08, hem=0.255, seed=41, pockets=[(-0.12, -0.26, 0.055, 0.06), (0.12, -0.26, 0.055, 0.06)], cuff=0.065), wall=(80, -2, 2)), 78, "2024-09-14", [3, 2, 4, 4, 1, 0, 0, 0, 3, 5, 4, 3], loved=2),
    garment("g13-oat-trench-coat.jpg", "Oat trench coat", "coat", "outer", plain([72, 4, 20]), hung(top_pieces(length=1.04, shoulder=0.22, chest=0.27, waist=0.255, hem=0.305, collar="lapel", depth=0.2, opening="buttons", belt=True, sleeve=0.6, cuff=0.065, angle=(17, 18), seed=43, fold=0.016)), 130, "2023-02-25", [1, 2, 6, 7, 4, 1, 0, 0, 3, 5, 2, 1], loved=3, year_parts=["spring", "autumn"]),
    garment("g14-winter-coat.jpg", "Charcoal winter coat", "coat", "outer", mottled([28, 0, -3], [38, 0, -2], size=0.005), flat(top_pieces(length=1.02, shoulder=0.22, chest=0.28, waist=0.27, hem=0.3, collar="lapel", depth=0.17, opening="buttons", sleeve=0.58, cuff=0.07, angle=(17, 16), seed=47, puff=0.02), "wool rug", "warm lamp", EVENING), 160, "2020-11-28", [9, 9, 5, 0, 0, 0, 0, 0, 0, 1, 6, 9], place="stored", year_parts=["winter"], loved=2),
    garment("g15-ink-trousers.jpg", "Ink trousers", "trousers", "bottom", plain(INK), flat(trouser_pieces(seed=53, ankle=0.085, knee=0.1), "pale planks", roll=-4), 40, "2024-02-17", OFTEN, basic=True, loved=2),
    garment("g16-jeans.jpg", "Mid-blue jeans", "jeans", "bottom", mottled([40, -2, -20], [54, -3, -16], "woven", size=0.004, stretch=7.0), flat(trouser_pieces(seed=59, knee=0.11, ankle=0.095, turn_up=True), "oak planks", roll=5, trim=(50, 14, 30)), 35, "2022-06-18", OFTEN, loved=2),
    garment("g17-moss-corduroys.jpg", "Moss corduroys", "trousers", "bottom", plain([42, -10, 24], "cord"), flat(trouser_pieces(seed=61, knee=0.12, ankle=0.11), "white bed", "warm lamp", PHONE, roll=3), 44, "2023-10-21", COLD, loved=2, year_parts=["autumn", "winter", "spring"]),
    garment("g18-linen-trousers.jpg", "Oat linen trousers", "trousers", "bottom", plain([78, 3, 17]), flat(trouser_pieces(seed=67, elastic=True, fly=False, pockets=False, belt_loops=False, knee=0.13, ankle=0.125, fold=0.018, length=0.98), "blue bed", roll=-3), 32, "2024-05-25", WARM, loved=2, year_parts=["spring", "summer"]),
    garment("g19-slate-skirt.jpg", "Slate wrap skirt", "skirt", "bottom", plain([43, -2, -9], "felt"), hung(skirt_pieces(length=0.72, hem=0.3, seed=71, buttons=True), wall=(86, 2, 10)), 36, "2023-04-29", EVEN, loved=2),
    garment("g20-checked-wool-skirt.jpg", "Checked wool skirt", "skirt", "bottom", checked([SAGE, CREAM, BARK], 0.06, [0.55, 0.3, 0.15], "felt"), flat(skirt_pieces(length=0.62, hem=0.31, seed=73, fold=0.012), "grey screed", "overcast", roll=4), 41, "2021-01-23", SELDOM, place="stored", year_parts=["winter"], loved=1),
    garment("g21-tan-shorts.jpg", "Tan shorts", "shorts", "bottom", plain(TAN), flat(trouser_pieces(length=0.42, ankle=0.13, hip=0.245, rise=0.25, apart=0.016, seed=79), "striped bed", roll=-4), 22, "2022-07-02", [0, 0, 0, 0, 1, 4, 7, 6, 1, 0, 0, 0], place="stored", year_parts=["summer"], loved=2),
    garment("g22-flowered-dress.jpg", "Flowered dress", "dress", "full", printed([INK, HONEY, CREAM], 240, 0.017, "flower"), flat(skirted(0.42, 0.68, 0.33, 83, sleeve=0.24, cuff=0.075, collar="crew", depth=0.1, angle=(24, 26)), "pale planks", roll=3), 55, "2024-05-04", [0, 0, 2, 3, 3, 3, 2, 3, 2, 1, 0, 0], loved=3, year_parts=SPRING_ON),
    garment("g23-rust-jersey-dress.jpg", "Rust jersey dress", "dress", "full", plain([44, 32, 34]), hung(skirted(0.43, 0.62, 0.3, 89, sleeve=0.55, cuff=0.05, collar="v", depth=0.15, angle=(13, 15))), 48, "2023-11-11", EVEN, loved=2),
    garment("g24-bee-suit.jpg", "White work one-piece", "one-piece", "full", plain([90, 0, 4]), flat(top_pieces(length=0.56, collar="stand", depth=0.07, opening="zip", hem=0.235, waist=0.235, chest=0.255, seed=97, fold=0.018, pockets=[(-0.12, -0.25, 0.05, 0.055)])
            + trouser_pieces(length=0.96, waist=0.23, hip=0.255, knee=0.12, ankle=0.105, seed=98, elastic=True, fly=False, pockets=False, belt_loops=False, fold=0.018, below=0.54), "lawn", "overcast"), 70, "2021-04-10", [0, 0, 2, 6, 8, 8, 7, 5, 3, 1, 0, 0], place="stored", year_parts=["spring", "summer"], loved=2, notes="Work only: lives in the shed."),
    garment("g25-charcoal-tights.jpg", "Charcoal tights", "tights", "legwear", plain([30, 0, -1], "smooth"), flat(tights_pieces(seed=101), "white bed"), 12, "2025-01-15", COLD, basic=True),
    garment("g26-moss-socks.jpg", "Moss wool socks", "socks", "legwear", mottled([42, -10, 22], [52, -10, 22], "rib", size=0.005), flat(socks_pieces(seed=103), "oak planks", margin=1.4), 9, "2024-12-24", COLD, loved=2),
    garment("g27-brown-ankle-boots.jpg", "Brown ankle boots", "boots", "shoes", plain(BARK, **LEATHER), standing("ankle", "pale planks", shoe_colours={"sole": (25, 2, 4), "lace": (80, 2, 14)}), 95, "2022-09-10", OFTEN, loved=3, care="Wax in October."),
    garment("g28-ink-rain-boots.jpg", "Ink rain boots", "boots", "shoes", plain([25, 1, -14], **RUBBER), standing("tall", "grey screed", "overcast", shoe_colours={"sole": (60, 2, 12), "lace": (30, 0, 0)}), 48, "2023-03-18", [4, 4, 6, 5, 3, 2, 1, 1, 3, 5, 5, 4], loved=2),
    garment("g29-oat-canvas-shoes.jpg", "Oat canvas shoes", "shoes", "shoes", plain([78, 2, 13]), standing("low", "red tiles", shoe_colours={"sole": (90, 0, 5), "lace": (92, 0, 5)}), 42, "2024-04-20", [0, 0, 3, 5, 7, 8, 7, 7, 5, 2, 0, 0], loved=2, year_parts=SPRING_ON),
    garment("g30-tan-sandals.jpg", "Tan sandals", "sandals", "shoes", plain([52, 16, 30], **LEATHER), standing("sandal", "oak planks", shoe_colours={"sole": (32, 6, 10), "lace": (66, 10, 26)}), 39, "2022-06-04", [0, 0, 0, 0, 2, 6, 8, 7, 2, 0, 0, 0], place="stored", year_parts=["summer"], loved=2),
    garment("g31-honey-scarf.jpg", "Honey scarf", "scarf", "accessory", striped([HONEY, OAT], 0.15, [0.82, 0.18], "felt"), flat(scarf_pieces(seed=107), "dark planks", "mixed", PHONE, margin=1.2), 26, "2023-01-07", COLD, loved=3),
    garment("g32-brown-bag.jpg", "Brown shoulder bag", "bag", "accessory", plain([38, 15, 22], **LEATHER), flat(bag_pieces(seed=109), "white bed", trim=(70, 5, 35), margin=1.25), 68, "2021-08-14", OFTEN, basic=True, loved=3),
    garment("g33-moss-cap.jpg", "Moss knitted cap", "hat", "accessory", plain([44, -11, 24], "rib"), flat(beanie_pieces(seed=113), "wool rug", "overcast", margin=1.45), 14, "2022-12-10", COLD, loved=2),
    garment("g34-lilac-cardigan.jpg", "Faded lilac cardigan", "cardigan", "top", mottled([72, 10, -9], [78, 7, -6], "knit", size=0.01), flat(top_pieces(**{**JUMPER, "collar": "v", "depth": 0.18}, opening="buttons", seed=127), "check tiles", "warm lamp", EVENING, roll=-7), 30, "2018-03-24", SELDOM, place="leaving", condition="worn-out", way_out="recycle", loved=0, notes="Elbows through, colour gone."),
]

CANDIDATES = [
    {"file": "c1-river-green-jumper.jpg", "name": "River-green jumper", "kind": "jumper", "price": 28, "used": True, "source": "Saturday market by the lock", "look": plain([51, -23, -8], "knit"), "photo": flat(top_pieces(**JUMPER, seed=131), "grey screed", "overcast", PHONE, roll=4)},
    {"file": "c2-orange-raincoat.jpg", "name": "Orange raincoat", "kind": "raincoat", "price": 59, "used": True, "source": "neighbour's notice board", "look": plain(ORANGE, "smooth", specular=0.25, roughness=0.5), "photo": hung(top_pieces(length=0.86, hem=0.29, depth=0.07, opening="zip", hood=True, sleeve=0.58, cuff=0.065, angle=(15, 17), seed=137), "overcast", PHONE, wall=(82, 0, 2))},
    {"file": "c3-blue-grey-oxford.jpg", "name": "Blue-grey weekend shirt", "kind": "shirt", "price": 19, "used": True, "source": "second-hand shop in Mill Lane", "look": plain([45, -3, -12]), "photo": flat(top_pieces(**SHIRT, seed=139, pockets=[(0.12, -0.25, 0.055, 0.06)]), "flowered bed", "daylight", PHONE, roll=-3)},
]
