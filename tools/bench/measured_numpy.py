"""Times the propagation of a 60-tip catch test, to set beside the Rust benchmark `measured_60_tips`.

    python tools/bench/measured_numpy.py

Prints `name<TAB>nanoseconds` per evaluation: from 60 tips' readings as numbers (64 catches, 30 shared runs; the case
`sixty_tips` of `measured.json`) to each tip's deviation and range. Reading the texts is not timed.
Before timing, numpy (a closed form of its own, not the model of the vectors) and the two libraries
are held to the committed vectors.
"""

import json
import sys
import time
from pathlib import Path
from statistics import median

import numpy as np

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT / "tools"))

from uncertainty.model import COVERAGE, STEPS_PER_U, Gtc, Runs, Uncertainties, percent_range, tip_flows  # noqa: E402
from quantities import si  # noqa: E402

VECTORS = ROOT / "crates" / "calibration" / "tests" / "vectors" / "measured.json"
CASE = "sixty_tips"
RELATIVE = 1e-10


def arrays(case):
    """Return the case as arrays: one entry for each catch, its tip and its run as indices."""
    runs, rows = {}, []
    for tip_index, tip in enumerate(case["tips"]):
        for catch_index, catch in enumerate(tip["catches"]):
            run = catch.get("run", (tip_index, catch_index))
            run_index = runs.setdefault(run, len(runs))
            volume, step = si(catch["reading"], "volume"), si(catch["step"], "volume")
            rows.append((tip_index, run_index, volume, step, si(catch["time"], "time")))
    tip, run, volume, step, seconds = zip(*rows)
    return {
        "tips": len(case["tips"]),
        "runs": len(runs),
        "tip": np.array(tip),
        "run": np.array(run),
        "volume": np.array(volume),
        "step": np.array(step),
        "seconds": np.array(seconds),
        "timer_u": si(case["assumed"]["timer"], "time"),
        "handling_u": case["assumed"]["handling"],
    }


def by_numpy(test):
    """Return the deviations with their ranges, from the derivatives of each flow written out by hand.

    d_i = q_i / m - 1 moves with any input x as (dq_i/dx - (q_i / m) dm/dx) / m, and m is the mean of the flows.
    """
    tip, count = test["tip"], test["tips"]
    volume = np.bincount(tip, test["volume"], count)
    seconds = np.bincount(tip, test["seconds"], count)
    flow = volume / seconds
    mean = flow.mean()
    # Inputs that belong to one tip only: its rounding and the handling of its catches.
    rounding = np.bincount(tip, test["step"], count) / STEPS_PER_U / seconds
    handling = test["handling_u"] * np.sqrt(np.bincount(tip, test["volume"] ** 2, count)) / seconds
    own = rounding**2 + handling**2
    share = flow / mean
    # Own part (1 - share/n)^2 for the tip itself, (share/n)^2 for each of the others.
    own_part = own * (1 - share / count) ** 2 + (own.sum() - own) * (share / count) ** 2
    # The timing of each run moves the flow of every tip caught under it, twice: on and off.
    moved = np.zeros((count, test["runs"]))
    np.add.at(moved, (tip, test["run"]), -flow[tip] / seconds[tip])
    timing = moved - share[:, None] * moved.mean(axis=0)
    timing_part = 2 * test["timer_u"] ** 2 * (timing**2).sum(axis=1)
    u = 100 * np.sqrt(own_part + timing_part) / mean
    deviation = 100 * (share - 1)
    return deviation, deviation - COVERAGE * u, deviation + COVERAGE * u


def by_library(algebra, case):
    """Return the deviations with their ranges, by a library's uncertain numbers."""
    runs = Runs(algebra, si(case["assumed"]["timer"], "time"))
    flow_of = tip_flows(algebra, case, runs, 1.0)
    mean = sum(flow_of.values()) / len(flow_of)
    ranges = [percent_range(algebra, flow / mean) for flow in flow_of.values()]
    return tuple([found[name] for found in ranges] for name in ("deviation_percent", "low", "high"))


def hold(name, result, case):
    """Refuse a result that is not the committed one."""
    kept = [tip["measured"] for tip in case["expected"]["tips"]]
    for values, key in zip(result, ("deviation_percent", "low", "high")):
        wanted = [tip[key] for tip in kept]
        if not np.allclose(values, wanted, rtol=RELATIVE, atol=RELATIVE):
            raise AssertionError(f"{name}: {key} is not as in {VECTORS.name}")


def nanoseconds(evaluate, seconds=1.0):
    """Return the median time of an evaluation over about `seconds`, after one to warm up."""
    evaluate()
    times, end = [], time.perf_counter() + seconds
    while time.perf_counter() < end or len(times) < 5:
        begin = time.perf_counter_ns()
        evaluate()
        times.append(time.perf_counter_ns() - begin)
    return int(median(times))


def main():
    """Check and time each way."""
    cases = json.loads(VECTORS.read_text(encoding="utf-8"))["cases"]
    for each in cases:
        if all(tip["runs"] for tip in each["expected"]["tips"]):
            hold(f"numpy, {each['name']}", by_numpy(arrays(each)), each)
    case = next(each for each in cases if each["name"] == CASE)
    test = arrays(case)
    ways = {
        "measured_60_tips_numpy": lambda: by_numpy(test),
        "measured_60_tips_gtc": lambda: by_library(Gtc(), case),
        "measured_60_tips_uncertainties": lambda: by_library(Uncertainties(), case),
    }
    for name, evaluate in ways.items():
        hold(name, evaluate(), case)
        print(f"{name}\t{nanoseconds(evaluate)}", flush=True)


if __name__ == "__main__":
    main()
