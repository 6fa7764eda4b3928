"""The catch tests that `measured.json` propagates: invented booms, rebuilt digit for digit from a seed.

Readings, steps, times and pressures are texts ("14.5 fl oz"), as a person would write them, so that a test in
another language starts from the same decimal digits. Tips that a case does not name a fault for
scatter by 2 %. Nothing here is a measurement of a real sprayer.
"""

import random
from decimal import Decimal

from quantities import parse_quantity, split_quantity

# Planning values where the user states none. They are assumptions, not published figures; GUM 4.3 (JCGM 100:2008)
# allows them as type B evaluations. All are standard uncertainties.
ASSUMED = {
    "timer": "0.2 s",  # starting, and again stopping, a watch by hand
    "handling": 0.005,  # foam, tilt, a wet cup: relative, each catch
    "cup_scale": 0.01,  # the cup's marks as a whole: relative, shared by all catches
    "watch": 0.001,  # the watch's pace: relative, shared by all times
}


def scatter(rng):
    """Return a draw near the standard normal: twelve uniforms less six (only `random()` keeps its sequence for ever)."""
    return sum(rng.random() for _ in range(12)) - 6


def rounded_reading(volume_m3, step):
    """Return the volume as read in whole steps, as text in the step's unit."""
    number, unit = split_quantity(step)
    steps = round(volume_m3 / float(parse_quantity(step).si))
    value = Decimal(number.numerator) / Decimal(number.denominator) * steps
    return f"{value:f} {unit}"


def flows(rng, count, flow, faults, spread=0.02):
    """Return each tip's true flow in m3/s; `faults` maps a tip's number to its share of the nominal flow."""
    nominal = float(parse_quantity(flow).si)
    drawn = [1 + spread * scatter(rng) for _ in range(count)]
    return [nominal * faults.get(number, drawn[number - 1]) for number in range(1, count + 1)]


def caught(rng, flow, time, step, run=None):
    """Return one catch of a tip of the given flow."""
    duration = float(parse_quantity(time).si) + 0.28 * scatter(rng)
    catch = {"reading": rounded_reading(flow * duration, step), "step": step, "time": time}
    if run is not None:
        catch["run"] = run
    return catch


def boom(seed, count, flow, plan, faults=None):
    """Return the tips of a boom; `plan(number)` lists the (time, step, run) of each of a tip's catches."""
    rng = random.Random(seed)
    true_flows = flows(rng, count, flow, faults or {})
    return [
        {"number": number, "catches": [caught(rng, true_flow, *how) for how in plan(number)]}
        for number, true_flow in enumerate(true_flows, start=1)
    ]


def alike(time, step, repeats=(), cups_per_run=1):
    """Return a plan: every tip once, some again, and `cups_per_run` neighbours under one timed run."""

    def plan(number):
        run = f"run {(number - 1) // cups_per_run + 1}" if cups_per_run > 1 else None
        again = [(time, step, None)] * repeats.count(number)
        return [(time, step, run), *again]

    return plan


def mixed_plan(number):
    """A plan of mixed times and cups: the ends in millilitres for a minute, the middle tip with both cups."""
    if number in (1, 7):
        return [("60 s", "10 mL", None)]
    if number == 4:
        return [("30 s", "1 fl oz", None), ("60.4 s", "10 mL", None), ("30 s", "0.5 fl oz", None)]
    return [("30 s", "1 fl oz", None)]


def shared_repeats_plan(number):
    """A plan of three cups to a run, and tips 2, 5 and 8 caught again together under one more run."""
    catches = alike("30 s", "0.5 fl oz", cups_per_run=3)(number)
    if number in (2, 5, 8):
        catches.append(("45.2 s", "0.5 fl oz", "again"))
    return catches


def case(name, about, tips, against_new=None, drive=None, **assumed):
    """Return a case with the assumptions written out in full."""
    made = {"name": name, "about": about, "assumed": {**ASSUMED, **assumed}}
    if against_new:
        made["against_new"] = dict(zip(("rated", "pressure", "pressure_u"), against_new))
    if drive:
        length, times, spacing, unit = drive
        made["drive"] = {"length": length, "length_u": 0.002, "times": times}
        made["drive"] |= {"spacing": spacing, "spacing_u": 0.002, "rate_unit": unit}
    return {**made, "tips": tips}


US_DRIVE = ("200 ft", ["34.1 s", "33.7 s", "34.4 s"], "20 in", "gal/ac")
METRIC_DRIVE = ("100 m", ["45.2 s", "44.6 s"], "50 cm", "L/ha")
SIZE_02 = ("0.20 gal/min @ 40 psi", "40 psi", "2 psi")
SIZE_03 = ("0.30 gal/min @ 40 psi", "38 psi", "1 psi")
SIZE_03_METRIC = ("1.2 L/min @ 3 bar", "2.8 bar", "0.05 bar")


def small_cases():
    """Return the cases of 2 to 7 tips."""
    ounce, half, millilitres = "1 fl oz", "0.5 fl oz", "10 mL"
    return [
        case("two_tips", "the fewest tips that can be compared", boom(1, 2, "0.2 gal/min", alike("30 s", ounce))),
        case(
            "three_cups_one_run",
            "three cups under one timed run: timing cancels in the deviations",
            boom(2, 3, "0.3 gal/min", alike("30 s", half, cups_per_run=3)),
            SIZE_03,
            US_DRIVE,
        ),
        case(
            "three_tips_15_s_repeats",
            "short catches, tip 2 caught three times with one cup",
            boom(3, 3, "0.3 gal/min", alike("15 s", half, repeats=(2, 2))),
        ),
        case(
            "seven_tips_ounce_cup",
            "the common test: ounce cup, half a minute, each tip once",
            boom(4, 7, "0.2 gal/min", alike("30 s", ounce), {4: 1.15}),
            SIZE_02,
            US_DRIVE,
        ),
        case(
            "seven_tips_metric",
            "millilitre cup, a minute, pressure in bar",
            boom(5, 7, "1.16 L/min", alike("60 s", millilitres), {6: 0.88}),
            SIZE_03_METRIC,
            METRIC_DRIVE,
        ),
        case(
            "seven_tips_mixed",
            "two cups and two times, tip 4 read with three different steps",
            boom(6, 7, "0.3 gal/min", mixed_plan, {2: 1.12}),
            SIZE_03,
            US_DRIVE,
        ),
    ]


def larger_cases():
    """Return the cases of 12 to 60 tips."""
    ounce, half, millilitres = "1 fl oz", "0.5 fl oz", "10 mL"
    closed = [{"reading": "12.8 fl oz", "step": ounce, "time": "30 s"}]
    return [
        case(
            "twelve_tips_shared_repeats",
            "three cups to a run; tips 2, 5 and 8 again under one run of their own",
            boom(7, 12, "0.4 gal/min", shared_repeats_plan, {8: 1.09}),
            ("0.40 gal/min @ 40 psi", "40 psi", "1.5 psi"),
            US_DRIVE,
        ),
        case(
            "twelve_tips_one_plugged",
            "tip 9 gives nothing: set aside, not in the mean",
            boom(8, 12, "0.2 gal/min", alike("30 s", ounce), {9: 0.0}),
            SIZE_02,
        ),
        case(
            "twenty_tips_alike_no_handling",
            "all alike, no handling error: u = u(q)/q * sqrt(1 - 1/n) in closed form",
            [{"number": number, "catches": closed} for number in range(1, 21)],
            handling=0.0,
        ),
        case(
            "twenty_tips_repeats",
            "ounce cup, three tips caught twice and one three times",
            boom(9, 20, "0.2 gal/min", alike("30 s", ounce, repeats=(4, 9, 17, 17)), {4: 1.12, 17: 0.9}),
            SIZE_02,
            US_DRIVE,
        ),
        case(
            "twenty_tips_other_assumptions",
            "every planning value stated otherwise, short catches",
            boom(10, 20, "1.2 L/min", alike("15 s", millilitres)),
            SIZE_03_METRIC,
            METRIC_DRIVE,
            timer="0.35 s",
            handling=0.01,
            cup_scale=0.02,
            watch=0.004,
        ),
        case(
            "sixty_tips",
            "a wide boom, two cups to a run, some tips again",
            boom(11, 60, "0.4 gal/min", alike("30 s", half, (7, 31, 31, 58), 2), {7: 1.14, 31: 0.86}),
            ("0.40 gal/min @ 40 psi", "42 psi", "1 psi"),
            US_DRIVE,
        ),
        case(
            "sixty_tips_metric",
            "a wide boom, each tip once for a minute",
            boom(12, 60, "1.6 L/min", alike("60 s", millilitres), {12: 1.08}),
        ),
    ]


def all_cases():
    """Return every case, in the order they are written."""
    return small_cases() + larger_cases()
