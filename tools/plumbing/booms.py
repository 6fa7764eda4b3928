"""Booms drawn from a seed: four to 120 tips in one to thirteen sections, from roomy to starved, level and on slopes."""

import random

SEED = 20270414
COUNT = 320


def _draw(chance, low, high, places):
    return round(chance.uniform(low, high), places)


def _pipe(chance, lengths, bores, losses):
    return [_draw(chance, *lengths, 2), chance.choice(bores), round(chance.choice(losses), 2)]


def boom(chance):
    """One boom, in metres, millimetres, bar, and L/min at 3 bar; 0 is a plugged tip."""
    tips = chance.randint(4, 120)
    count = chance.randint(max(1, tips // 24), min(13, tips))
    cuts = sorted(chance.sample(range(1, tips), count - 1))
    sizes = [end - start for start, end in zip([0, *cuts], [*cuts, tips])]
    # Which hoses go with so many tips, so that most booms spray; some are starved on purpose.
    wide = [bore for bore in (19, 25, 32, 38, 50) if bore >= 8 + tips / 5] or [50]
    rated = chance.choice([0.4, 0.6, 0.8, 1.0, 1.2, 1.6, 2.0, 2.4, 3.2])
    opens_at = chance.choice([0, 0, 0, 0.3, 0.5, 0.7])
    sloping = chance.random() < 0.3
    sections = []
    for size in sizes:
        section = {
            "feed": _pipe(chance, (0.5, 9.0), [13, 16, 19, 25, 32] if size > 3 else [8, 10, 13, 19], [0, 2, 5, 20, chance.uniform(0, 400)]),
            "hose": chance.choice([13, 16, 19, 25] if size > 6 else [8, 10, 13, 19, 25]),
            "spacing": chance.choice([0.25, 0.38, 0.5, 0.508, 0.762]),
            "enters": chance.choice([chance.randint(1, size), chance.randint(1, size - 1) + 0.5]) if size > 1 else 1,
            "body": [0.03, chance.choice([6, 8, 10]), chance.choice([0, 3, 6, 15])],
            "heights": [_draw(chance, -1, 1, 2), _draw(chance, -1, 1, 2)] if sloping else [0, 0],
            "tips": [],
        }
        for _ in range(size):
            wear = chance.choice([1, 1, 1, chance.uniform(0.5, 1.3)])
            section["tips"].append(0 if chance.random() < 0.04 else round(rated * wear, 3))
        sections.append(section)
    return {
        "bar": _draw(chance, 1.5, 8, 2),
        "viscosity": chance.choice([1, 1, 1, 0.78, 1.5, 2.0]),
        "roughness_mm": chance.choice([0.0015, 0.0015, 0.0015, 0.01, 0.1]),
        "opens_at": opens_at,
        "supply": _pipe(chance, (0.5, 6.0), wide, [0, 2, 2, 10, 40]),
        "sections": sections,
    }


def booms():
    """An endless row of booms, the same every time."""
    chance = random.Random(SEED)
    while True:
        yield boom(chance)


def bench_boom():
    """Sixty tips in five sections, as a boom of 30 m has them."""
    tips = [1.6] * 12
    section = {"hose": 19, "spacing": 0.5, "enters": 6.5, "body": [0.03, 8, 6], "heights": [0, 0], "tips": tips}
    feeds = [[7, 19, 2], [4, 19, 2], [2, 19, 2], [4, 19, 2], [7, 19, 2]]
    return {
        "bar": 3,
        "viscosity": 1,
        "roughness_mm": 0.0015,
        "opens_at": 0,
        "supply": [2, 38, 2],
        "sections": [{"feed": feed, **section} for feed in feeds],
    }
