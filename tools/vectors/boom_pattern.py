"""Makes `crates/sprayer/tests/vectors/pattern.jsonl`: what each groove gets under random booms, and how even set-ups are.

    python tools/vectors/boom_pattern.py           writes the file
    python tools/vectors/boom_pattern.py --check   makes it again in memory and exits 1 where it differs

Every groove is the sum of numerical integrals (scipy's quad) of the dose along the ground, with the Jacobian of each tilted fan
written out; nothing is taken from the shapes' integrals that the program has.
"""

import argparse
import json
import math
import sys
from pathlib import Path

import numpy as np
from scipy import integrate, special

OUTPUT = Path(__file__).resolve().parents[2] / "crates" / "sprayer" / "tests" / "vectors" / "pattern.jsonl"
# Chosen: how many random booms, and the seed they are drawn from.
BOOMS, SEED = 40, 20260
# How near two makings must be: what quad leaves.
AGREE = 2e-9

SHAPES = {
    "triangle": lambda u: 1 - abs(u),
    "parabola": lambda u: 0.75 * (1 - u * u),
    "raised-cosine": lambda u: math.cos(math.pi * u / 2) ** 2,
    "beta": lambda u: 15 / 16 * (1 - u * u) ** 2,
    # Normal of 0.42 half widths, cut off at the edges.
    "truncated-normal": lambda u: math.exp(-u * u / (2 * 0.42**2))
    / (0.42 * math.sqrt(2 * math.pi) * special.erf(1 / (0.42 * math.sqrt(2)))),
    "even": lambda u: 0.5,
}


def fan_of(boom, tip):
    """The density over the tangent within the fan, and the tangents at which it is broken."""
    fan = boom["fan"]
    if isinstance(fan, str):
        half = math.tan(math.radians(tip["angle"]) / 2)
        shape = SHAPES[fan]
        return (lambda t: shape(t / half) / half if abs(t) <= half else 0.0), [-half, 0.0, half]
    amounts = np.array(fan["collected"], dtype=float)
    edges = (np.arange(len(amounts) + 1) * fan["groove"] - fan["tip_at"]) / fan["height"]
    density = amounts / amounts.sum() / np.diff(edges)

    def of(tangent):
        place = int(np.searchsorted(edges, tangent, side="right")) - 1
        return float(density[place]) if 0 <= place < len(density) else 0.0

    return of, list(edges)


def groove_doses(boom, edges):
    """What falls between edges, over their distance."""
    doses = np.zeros(len(edges) - 1)
    for tip in boom["tips"]:
        density, broken = fan_of(boom, tip)
        axis, tilt = tip["place"] + tip["offset"], math.radians(tip["tilt"])
        reach = tip["height"] * math.cos(math.radians(tip["twist"]))

        def dose(x):
            landing = math.atan((x - axis) / reach)  # noqa: B023
            within = landing - tilt  # noqa: B023
            jacobian = 1 / (reach * math.cos(within) ** 2 * (1 + ((x - axis) / reach) ** 2))  # noqa: B023
            return tip["flow"] * density(math.tan(within)) * jacobian  # noqa: B023

        cuts = sorted(axis + reach * math.tan(math.atan(t) + tilt) for t in broken)
        for place, (left, right) in enumerate(zip(edges, edges[1:])):
            left, right = max(left, cuts[0]), min(right, cuts[-1])
            if left >= right:
                continue
            pieces = [left, *[cut for cut in cuts if left < cut < right], right]
            doses[place] += sum(
                integrate.quad(dose, a, b, epsabs=1e-13, epsrel=1e-12)[0] for a, b in zip(pieces, pieces[1:])
            )
    return doses / np.diff(edges)


def judged(boom, half, groove):
    """The spread of the whole grooves within `half` of the boom's middle, and the thinnest and thickest over the mean."""
    middle = (boom["tips"][0]["place"] + boom["tips"][-1]["place"]) / 2
    grooves = int(half / groove + 1e-9)
    edges = middle + np.arange(-grooves, grooves + 1) * groove
    doses = groove_doses(boom, edges)
    mean = doses.mean()
    return {
        "left": edges[0],
        "doses": [round(float(dose), 10) for dose in doses],
        "spread": round(float(doses.std(ddof=1) / mean), 10),
        "lowest": round(float(doses.min() / mean), 10),
        "highest": round(float(doses.max() / mean), 10),
    }


def even(shape, angle, height, tips=13, **changed):
    """A boom 0.5 m apart; `changed` is of its middle tip."""
    tip = {"offset": 0.0, "flow": 1.0, "height": height, "angle": angle, "tilt": 0.0, "twist": 0.0}
    boom = {"spacing": 0.5, "fan": shape, "tips": [{"place": 0.5 * place, **tip} for place in range(tips)]}
    boom["tips"][tips // 2].update(changed)
    return boom


def set_ups():
    """Named set-ups, judged over the middle four spacings in grooves of 100 mm."""
    heights = (0.3, 0.35, 0.4, 0.5, 0.6, 0.75, 0.9, 1.0)
    for shape in SHAPES:
        for angle in (80, 110):
            for height in heights:
                yield f"{shape} {angle} at {height}", even(shape, angle, height)
    for shape in ("triangle", "raised-cosine"):
        for angle, height in ((110, 0.5), (80, 0.5), (110, 0.75)):
            for name, changed in (
                ("plugged", {"flow": 0.0}),
                ("worn by a fifth", {"flow": 1.2}),
                ("5 cm off", {"offset": 0.05}),
                ("tilted by 10", {"tilt": 10.0}),
            ):
                yield f"{shape} {angle} at {height}, {name}", even(shape, angle, height, **changed)


def random_booms():
    """Booms with everything wrong at once."""
    draw = np.random.default_rng(SEED)
    names = list(SHAPES)
    for number in range(BOOMS):
        spacing = round(float(draw.uniform(0.3, 0.8)), 4)
        tips, place = [], 0.0
        for _ in range(int(draw.integers(8, 20))):
            place += spacing * float(draw.uniform(0.85, 1.15))
            tips.append(
                {
                    "place": round(place, 4),
                    "offset": round(float(draw.uniform(-0.05, 0.05)), 4),
                    "flow": 0.0 if draw.random() < 0.1 else round(float(draw.uniform(0.7, 1.3)), 4),
                    "height": round(float(draw.uniform(0.35, 0.7)), 4),
                    "angle": round(float(draw.uniform(65, 120)), 2),
                    "tilt": round(float(draw.uniform(-15, 15)), 2),
                    "twist": round(float(draw.uniform(0, 20)), 2),
                }
            )
        fan = names[number % (len(names) + 1)] if number % (len(names) + 1) < len(names) else None
        if fan is None:
            # A fan caught in grooves of 50 mm, a little to one side.
            collected = [round(float(x), 2) for x in draw.uniform(0.2, 1, 24) * np.hanning(26)[1:-1] * 100]
            fan = {"collected": collected, "groove": 0.05, "height": 0.5, "tip_at": 0.63}
        groove = 0.1 if number % 2 == 0 else 0.05
        yield {"spacing": spacing, "fan": fan, "tips": tips, "groove": groove}


def make():
    """Every line."""
    lines = []
    for name, boom in set_ups():
        lines.append({"name": name, "groove": 0.1, "middle": 2.0, **boom, "found": judged(boom, 1.0, 0.1)})
    for number, boom in enumerate(random_booms(), start=1):
        middle = 2 * boom["spacing"]
        found = judged(boom, middle / 2, boom["groove"])
        lines.append({"name": f"boom {number}", "middle": middle, **boom, "found": found})
    return lines


def flat(found):
    """Its numbers."""
    return [found["left"], found["spread"], found["lowest"], found["highest"], *found["doses"]]


def main():
    """Write the file, or check it."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--check", action="store_true")
    made = make()
    if not parser.parse_args().check:
        text = "".join(json.dumps(line, separators=(",", ":")) + "\n" for line in made)
        OUTPUT.write_text(text, encoding="utf-8")
        return
    kept = [json.loads(line) for line in OUTPUT.read_text(encoding="utf-8").splitlines()]
    for ours, theirs in zip(made, kept, strict=True):
        pairs = zip(flat(ours.pop("found")), flat(theirs.pop("found")), strict=True)
        if ours != theirs or any(abs(a - b) > AGREE for a, b in pairs):
            sys.exit(f"{ours['name']}: made otherwise than kept; run tools/vectors/boom_pattern.py and look at what changed")


if __name__ == "__main__":
    main()
