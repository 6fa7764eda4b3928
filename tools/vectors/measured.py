"""Makes `crates/calibration/tests/vectors/measured.json`: ranges of a catch test by general-purpose libraries.

    python tools/vectors/measured.py           writes the file
    python tools/vectors/measured.py --check   makes it again in memory and exits 1 where it differs

GTC makes the numbers; `uncertainties` must agree with it. The model and the booms stand in `tools/uncertainty`.
"""

import argparse
import json
import sys
from math import sqrt
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT / "tools"))

from uncertainty.budget import conformity, flow_budget, flow_expected, ounce_cup  # noqa: E402
from uncertainty.cases import all_cases  # noqa: E402
from uncertainty.model import COVERAGE, PLUGGED_BELOW, Gtc, Uncertainties, propagate  # noqa: E402

OUTPUT = ROOT / "crates" / "calibration" / "tests" / "vectors" / "measured.json"
RELATIVE = 1e-12
# Deviations in percent come from a difference near zero: below one, the tolerance is absolute.
FLOOR = 1.0
LARGEST_BYTES = 150_000


def differences(path, made, kept):
    """Yield a sentence for each place where two JSON values differ by more than the tolerance."""
    if isinstance(made, float) and isinstance(kept, (int, float)) and not isinstance(kept, bool):
        if not abs(made - kept) <= RELATIVE * max(abs(made), abs(kept), FLOOR):
            yield f"{path}: made {made!r}, kept {kept!r}"
    elif isinstance(made, dict) and isinstance(kept, dict):
        if list(made) != list(kept):
            yield f"{path}: made the keys {list(made)}, kept {list(kept)}"
            return
        for key in made:
            yield from differences(f"{path}.{key}", made[key], kept[key])
    elif isinstance(made, list) and isinstance(kept, list):
        if len(made) != len(kept):
            yield f"{path}: made {len(made)} items, kept {len(kept)}"
            return
        for index, (one, other) in enumerate(zip(made, kept)):
            yield from differences(f"{path}[{index}]", one, other)
    elif made != kept or type(made) is not type(kept):
        yield f"{path}: made {made!r}, kept {kept!r}"


def agreed(what, by_gtc, by_uncertainties):
    """Return GTC's result, refusing one that `uncertainties` does not confirm."""
    found = list(differences(what, by_gtc, by_uncertainties))
    if found:
        raise AssertionError("GTC and uncertainties disagree at " + "; ".join(found[:3]))
    return by_gtc


def check_closed_form(case):
    """Refuse a case of tips all alike whose u is not u(q)/q * sqrt(1 - 1/n)."""
    count = len(case["tips"])
    relative = sqrt((1 / sqrt(12) / 12.8) ** 2 + 2 * (0.2 / 30) ** 2)
    closed = 100 * relative * sqrt(1 - 1 / count)
    for tip in case["expected"]["tips"]:
        if abs(tip["measured"]["u_percent"] - closed) > RELATIVE * closed:
            raise AssertionError(f"tip {tip['number']}: {tip['measured']['u_percent']!r}, not {closed!r}")


def made_cases():
    """Return every case with what is expected of it."""
    made = []
    for case in all_cases():
        expected = agreed(case["name"], propagate(Gtc(), case), propagate(Uncertainties(), case))
        made.append({**case, "expected": expected})
    check_closed_form(next(case for case in made if case["name"] == "twenty_tips_alike_no_handling"))
    return made


def made_flow_budget():
    """Return the budget of one flow, agreed by both libraries."""
    gtc, other = Gtc(), Uncertainties()
    by_gtc = flow_expected(gtc, lambda y, x: gtc.library.component(y, x))
    by_other = flow_expected(other, lambda y, x: y.error_components()[x])
    return flow_budget(agreed("flow budget", by_gtc, by_other))


def make():
    """Return the whole document."""
    flow = made_flow_budget()
    return {
        "made_by": "tools/vectors/measured.py (GTC, confirmed by uncertainties; scipy for normal probabilities)",
        "model": "tools/uncertainty/model.py",
        "coverage_factor": COVERAGE,
        "plugged_below_share_of_median": PLUGGED_BELOW,
        "flow_budget": flow,
        "conformity": conformity(flow["expected"]["u_at_reference"]),
        "ounce_cup": ounce_cup(),
        "cases": made_cases(),
    }


def written(value, indent=0):
    """Return JSON with one line for each flat object, so that a change reads as one line."""
    flat = json.dumps(value, ensure_ascii=False, allow_nan=False)
    tip = isinstance(value, dict) and "number" in value
    if tip or not isinstance(value, (dict, list)) or len(flat) + indent <= 110:
        return flat
    pad = " " * (indent + 1)
    if isinstance(value, dict):
        items = [f"{pad}{json.dumps(key)}: {written(item, indent + 1)}" for key, item in value.items()]
        return "{\n" + ",\n".join(items) + "\n" + " " * indent + "}"
    items = [pad + written(item, indent + 1) for item in value]
    return "[\n" + ",\n".join(items) + "\n" + " " * indent + "]"


def check(document):
    """Compare the document with the committed file; return the exit status."""
    kept = json.loads(OUTPUT.read_text(encoding="utf-8"))
    found = list(differences("$", document, kept))
    for sentence in found[:20]:
        print(sentence, file=sys.stderr)
    if len(found) > 20:
        print(f"and {len(found) - 20} more", file=sys.stderr)
    print(f"{OUTPUT.name}: {len(found)} differences", file=sys.stderr)
    return 1 if found else 0


def main():
    """Write the file, or check it; return the exit status."""
    parser = argparse.ArgumentParser(description="make the measured vectors")
    parser.add_argument("--check", action="store_true", help="compare with the committed file")
    arguments = parser.parse_args()
    # Through JSON and back, so that what is compared is what would be written.
    text = written(make()) + "\n"
    if len(text.encode()) > LARGEST_BYTES:
        raise AssertionError(f"{len(text.encode())} bytes, more than {LARGEST_BYTES}")
    if arguments.check:
        return check(json.loads(text))
    OUTPUT.parent.mkdir(parents=True, exist_ok=True)
    OUTPUT.write_text(text, encoding="utf-8")
    print(f"wrote {OUTPUT.relative_to(ROOT)}, {len(text.encode())} bytes", file=sys.stderr)
    return 0


if __name__ == "__main__":
    sys.exit(main())
