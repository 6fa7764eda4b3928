"""Makes `crates/calibration/tests/vectors/verdict.json`: verdict probabilities by the second implementation in numpy.

    python tools/vectors/verdict.py           writes the file
    python tools/vectors/verdict.py --check   makes it again in memory and exits 1 where it differs
"""

import argparse
import json
import sys
from pathlib import Path

import numpy as np

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT / "tools"))

from uncertainty.verdict import probabilities  # noqa: E402

OUTPUT = ROOT / "crates" / "calibration" / "tests" / "vectors" / "verdict.json"


def made_up(seed, tips, step, seconds, repeats, flow):
    """A boom with a spread of 2 %, every seventh tip off, read to its marks."""
    random = np.random.default_rng(seed)
    deviations = random.normal(0.0, 0.02, tips)
    deviations[3::7] = random.uniform(-0.3, 0.3, len(deviations[3::7]))
    read = lambda true: float(np.round(true * (1 + random.normal(0, 0.011)) / step) * step)  # noqa: E731
    return [[(read(flow * (1 + deviation) * seconds), step, seconds) for _ in range(repeats)] for deviation in deviations]


CASES = [
    # name, seed, tips, step in fl oz, seconds, repeats, fl oz a second
    ("ounce_cup_7_tips", 1, 7, 1.0, 30.0, 1, 0.48),
    ("ounce_cup_20_tips", 2, 20, 1.0, 30.0, 1, 0.43),
    ("half_ounce_12_tips", 3, 12, 0.5, 30.0, 1, 0.5),
    ("fine_cup_20_tips", 4, 20, 0.25, 60.0, 1, 0.6),
    ("ounce_cup_12_tips_twice", 5, 12, 1.0, 30.0, 2, 0.45),
    ("short_catch_15_tips", 6, 15, 0.5, 15.0, 1, 0.7),
]


def make():
    """All cases with their readings and the probability of each tip."""
    cases = []
    for name, seed, tips, step, seconds, repeats, flow in CASES:
        boom = made_up(seed, tips, step, seconds, repeats, flow)
        within = [round(float(value), 9) for value in probabilities(boom)]
        readings = [[cup[0] for cup in tip] for tip in boom]
        cases.append({"name": name, "step": step, "seconds": seconds, "readings": readings, "probability_within": within})
    return {"made_by": "tools/vectors/verdict.py (numpy, scipy)", "limit": 0.10, "unit": "fl oz", "cases": cases}


def main():
    """Write the file, or check it."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--check", action="store_true")
    made = make()
    if not parser.parse_args().check:
        OUTPUT.write_text(json.dumps(made, indent=1) + "\n", encoding="utf-8")
        return
    kept = json.loads(OUTPUT.read_text(encoding="utf-8"))
    for ours, theirs in zip(made["cases"], kept["cases"], strict=True):
        same = ours["readings"] == theirs["readings"] and ours["name"] == theirs["name"]
        if not same or not np.allclose(ours["probability_within"], theirs["probability_within"], rtol=0, atol=1e-7):
            sys.exit(f"{ours['name']}: made otherwise than kept; run tools/vectors/verdict.py and look at what changed")


if __name__ == "__main__":
    main()
