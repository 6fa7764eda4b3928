"""Makes `crates/sprayer/tests/vectors/plumbing.jsonl`: random booms and the flow of every tip by EPANET 2.2, a boom a line.

    python tools/vectors/boom_flows.py           writes the file
    python tools/vectors/boom_flows.py --check   makes it again in memory and exits 1 where it differs
"""

import argparse
import json
import logging
import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT / "tools"))

from plumbing.booms import COUNT, booms  # noqa: E402
from plumbing.epanet import VALVES, Engine  # noqa: E402

OUTPUT = ROOT / "crates" / "sprayer" / "tests" / "vectors" / "plumbing.jsonl"

# Less than this, in L/min, and the boom is drawn again: a tip that hardly runs may have its check valve shut, which EPANET's
# emitters do not know.
LEAST = 0.02
# How near the same booms with pressure breaker valves are, L/min: what their rounding leaves; and how many booms are compared.
VALVES_AGREE, COMPARED = 2e-3, 25


def runs(boom, flows):
    """Whether every tip that is not plugged runs."""
    tips = [tip for section in boom["sections"] for tip in section["tips"]]
    flat = [flow for section in flows for flow in section]
    return any(tips) and all(flow >= LEAST for flow, tip in zip(flat, tips, strict=True) if tip > 0)


def compare_with_valves(engine, boom, flows):
    """Whether EPANET could take the boom with valves; exits where it says otherwise with them."""
    from wntr.epanet.exceptions import EpanetException

    try:
        other = engine.flows(boom, VALVES)
    except EpanetException:
        return False
    off = max(abs(a - b) for one, two in zip(flows, other, strict=True) for a, b in zip(one, two, strict=True))
    if off > VALVES_AGREE:
        sys.exit(f"a boom with check valves as valves is {off} L/min off")
    return True


def make():
    """All booms with their flows."""
    logging.getLogger("wntr").setLevel(logging.CRITICAL)
    engine, made, compared = Engine(), [], 0
    for boom in booms():
        flows = engine.flows(boom)
        if not runs(boom, flows):
            continue
        if boom["opens_at"] > 0 and compared < COMPARED:
            compared += compare_with_valves(engine, boom, flows)
        made.append({**boom, "flows": [[round(flow, 6) for flow in section] for section in flows]})
        if len(made) == COUNT:
            break
    if compared < COMPARED:
        sys.exit(f"only {compared} booms were compared with valves")
    return made


def main():
    """Write the file, or check it."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--check", action="store_true")
    made = make()
    if not parser.parse_args().check:
        OUTPUT.parent.mkdir(parents=True, exist_ok=True)
        lines = (json.dumps(boom, separators=(",", ":")) + "\n" for boom in made)
        OUTPUT.write_text("".join(lines), encoding="utf-8")
        return
    kept = [json.loads(line) for line in OUTPUT.read_text(encoding="utf-8").splitlines()]
    for number, (ours, theirs) in enumerate(zip(made, kept, strict=True), start=1):
        pairs = zip(sum(ours.pop("flows"), []), sum(theirs.pop("flows"), []), strict=True)
        if ours != theirs or any(abs(a - b) > 2e-6 for a, b in pairs):
            sys.exit(f"boom {number}: made otherwise than kept; run tools/vectors/boom_flows.py and look at what changed")


if __name__ == "__main__":
    main()
