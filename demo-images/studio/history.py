"""When each garment was worn: an invented year in which every day has one outfit."""

import calendar

import numpy as np

FIRST_MONTH = (2025, 12)


def worn_days(garments, seed=5):
    """
    ISO dates by file name, from `wears` (days a month over twelve months). Tops meet bottoms and shoes on the same days, so
    that what was worn together can be told from the dates.
    """
    rng = np.random.default_rng(seed)
    days = {garment["file"]: [] for garment in garments}
    for k in range(12):
        year, month = FIRST_MONTH[0] + (FIRST_MONTH[1] - 1 + k) // 12, (FIRST_MONTH[1] - 1 + k) % 12 + 1
        length = calendar.monthrange(year, month)[1]
        wanted = {garment["file"]: garment["wears"][k] for garment in garments}
        dressed = _spread([g["file"] for g in garments if g["slot"] == "full"], wanted, length, rng, list(range(1, length + 1)))
        dress_days = {day for on in dressed.values() for day in on}
        other = [day for day in range(1, length + 1) if day not in dress_days]
        by_slot = [dressed]
        for slots in (("top",), ("bottom",)):
            by_slot.append(_spread([g["file"] for g in garments if g["slot"] in slots], wanted, length, rng, other))
        for slots in (("outer",), ("legwear",), ("shoes",), ("accessory",)):
            by_slot.append(_spread([g["file"] for g in garments if g["slot"] in slots], wanted, length, rng, list(range(1, length + 1))))
        for part in by_slot:
            for file, on in part.items():
                days[file] += [f"{year}-{month:02d}-{day:02d}" for day in sorted(on)]
    return days


def _spread(files, wanted, length, rng, free):
    """Gives each file its number of days, no two files of a slot on one day, as far as the month allows."""
    pool = [file for file in files for _ in range(wanted[file])]
    rng.shuffle(pool)
    chosen = sorted(rng.permutation(free)[: len(pool)].tolist()) if free else []
    result = {}
    for file, day in zip(pool, chosen):
        result.setdefault(file, []).append(int(day))
    return result
