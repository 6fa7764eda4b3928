"""Three worked budgets beside the catch tests: one flow, its conformity, and what an ounce cup can decide.

JCGM 100:2008 (GUM) for the budgets, JCGM 106:2012 for the decisions. Each result is also held to figures that were
worked out apart from this script and rounded; they stand here as `WORKED…`.
"""

from math import sqrt

from scipy.stats import norm

# One-sided 95 %: the guard that leaves at most 5 % risk at the edge (JCGM 106:2012, 8.3.2).
GUARD = float(norm.ppf(0.95))

# One catch. Half widths a of rectangular distributions have u = a / sqrt(3) (GUM 4.3.7).
FLOW = {
    "volume_ml": 830.0,
    "volume_half_width_ml": 10.0,
    "time_s": 30.0,
    "start_half_width_s": 0.5,
    "stop_half_width_s": 0.5,
    "pressure_bar": 3.0,
    "pressure_u_bar": 0.05,
    "reference_pressure_bar": 3.0,
    "repeatability_relative_u": 0.005,
}
# Worked with a third library and with two million Monte Carlo draws: value, u without and with the pressure.
WORKED_FLOW = {"flow_l_per_min": 1.66, "u_as_caught": 0.02669, "u_at_reference": 0.030065}
WORKED_CONTRIBUTIONS = {"time": 0.02259, "pressure": 0.01383, "volume": 0.01155, "repeatability": 0.0083}

# Conformity of flows near a limit of 10 % about 1.6 L/min, with the u of the flow above.
CONFORMITY_LIMITS = (1.44, 1.76)
WORKED_CONFORMITY = {1.62: 1.0, 1.66: 0.9996, 1.70: 0.977, 1.74: 0.747, 1.76: 0.5, 1.78: 0.253, 1.82: 0.023}
WORKED_GUARDED = (1.4895, 1.7105)

# Nearest ounce, 30 s by hand, 20 tips, limit 10 %: u(d) %, U95 %, pass up to %, fail from %, p at 8, 10 and 12 %.
# DIFFERENCE at 0.15 gal/min: the first working had 5.0 and 15.0 there; 1.645 * 3.0716 is 5.052, so 4.9 and 15.1.
WORKED_OUNCE_CUP = {
    0.10: (4.49, 9.0, 2.6, 17.4, 0.67, 0.50, 0.33),
    0.15: (3.07, 6.1, 4.9, 15.1, 0.74, 0.50, 0.26),
    0.20: (2.38, 4.8, 6.1, 13.9, 0.80, 0.50, 0.20),
    0.30: (1.73, 3.5, 7.2, 12.8, 0.88, 0.50, 0.12),
    0.40: (1.43, 2.9, 7.6, 12.4, 0.92, 0.50, 0.08),
    0.50: (1.27, 2.5, 7.9, 12.1, 0.94, 0.50, 0.06),
    0.80: (1.07, 2.1, 8.2, 11.8, 0.97, 0.50, 0.03),
}
OUNCE_CUP = {"tips": 20, "step_fl_oz": 1.0, "time_s": 30.0, "timer_u_s": 0.2, "limit_percent": 10.0}


def hold(what, value, worked, decimals):
    """Refuse a value that does not round to the figure worked out apart from it."""
    if abs(value - worked) > 0.5000001 * 10.0**-decimals:
        raise AssertionError(f"{what}: {value!r} does not round to {worked}")


def flow_model(algebra):
    """Return the uncertain flow in L/min as caught, at the reference pressure, and its inputs by name."""
    root3 = sqrt(3.0)
    volume = algebra.input(FLOW["volume_ml"], FLOW["volume_half_width_ml"] / root3)
    start = algebra.input(0.0, FLOW["start_half_width_s"] / root3)
    stop = algebra.input(0.0, FLOW["stop_half_width_s"] / root3)
    pressure = algebra.input(FLOW["pressure_bar"], FLOW["pressure_u_bar"])
    repeatability = algebra.input(1.0, FLOW["repeatability_relative_u"])
    as_caught = 60.0 * volume / (FLOW["time_s"] + start + stop) / 1000.0 * repeatability
    at_reference = as_caught * algebra.sqrt(FLOW["reference_pressure_bar"] / pressure)
    inputs = {"time": (start, stop), "pressure": (pressure,), "volume": (volume,), "repeatability": (repeatability,)}
    return as_caught, at_reference, inputs


def flow_expected(algebra, component):
    """Return the budget of one flow; `component(y, x)` is the part of u(y) that the input x brings."""
    as_caught, at_reference, inputs = flow_model(algebra)
    value, u_as_caught = algebra.pair(as_caught)
    u_at_reference = algebra.pair(at_reference)[1]
    contributions = {
        name: sqrt(sum(component(at_reference, part) ** 2 for part in parts)) for name, parts in inputs.items()
    }
    return {
        "flow_l_per_min": value,
        "u_as_caught": u_as_caught,
        "u_at_reference": u_at_reference,
        "contributions_at_reference": contributions,
    }


def flow_budget(expected):
    """Return the flow budget as written, held to the worked figures."""
    hold("flow", expected["flow_l_per_min"], WORKED_FLOW["flow_l_per_min"], 4)
    hold("u as caught", expected["u_as_caught"], WORKED_FLOW["u_as_caught"], 5)
    hold("u at reference", expected["u_at_reference"], WORKED_FLOW["u_at_reference"], 6)
    for name, worked in WORKED_CONTRIBUTIONS.items():
        hold(name, expected["contributions_at_reference"][name], worked, 4 if name == "repeatability" else 5)
    return {"inputs": FLOW, "expected": expected}


def conform(value, u, low, high):
    """Return the probability that the true value lies within the limits (JCGM 106:2012, 7.2)."""
    return float(norm.cdf((high - value) / u) - norm.cdf((low - value) / u))


def conformity(u):
    """Return the conformity of several flows, and the acceptance limits with their guard."""
    low, high = CONFORMITY_LIMITS
    rows = []
    for flow, worked in WORKED_CONFORMITY.items():
        probability = conform(flow, u, low, high)
        hold(f"conformity at {flow}", probability, worked, 4)
        rows.append({"flow_l_per_min": flow, "probability_within": probability})
    accept = (low + GUARD * u, high - GUARD * u)
    for limit, worked in zip(accept, WORKED_GUARDED):
        hold("guarded limit", limit, worked, 4)
    inputs = {"low": low, "high": high, "u": u, "guard_in_u": GUARD}
    return {"inputs": inputs, "expected": {"accept_from": accept[0], "accept_to": accept[1], "rows": rows}}


def ounce_cup_row(gallons_per_minute):
    """Return what an ounce cup can decide about a tip of this flow, by the plain linear budget."""
    limit, time, timer_u = OUNCE_CUP["limit_percent"], OUNCE_CUP["time_s"], OUNCE_CUP["timer_u_s"]
    catch = gallons_per_minute * 128.0 * time / 60.0
    u_volume = 100.0 * OUNCE_CUP["step_fl_oz"] / sqrt(12.0) / catch
    u_time = 100.0 * sqrt(2.0) * timer_u / time
    u_deviation = sqrt((u_volume**2 + u_time**2) * (1.0 - 1.0 / OUNCE_CUP["tips"]))
    return {
        "flow_gal_per_min": gallons_per_minute,
        "catch_fl_oz": catch,
        "u_volume_percent": u_volume,
        "u_time_percent": u_time,
        "u_deviation_percent": u_deviation,
        "expanded_percent": 2.0 * u_deviation,
        "pass_up_to_percent": limit - GUARD * u_deviation,
        "fail_from_percent": limit + GUARD * u_deviation,
        "probability_within_at_8_10_12_percent": [
            conform(deviation, u_deviation, -limit, limit) for deviation in (8.0, 10.0, 12.0)
        ],
    }


def ounce_cup():
    """Return the ounce-cup table, held to the worked figures."""
    rows = [ounce_cup_row(flow) for flow in WORKED_OUNCE_CUP]
    for row, worked in zip(rows, WORKED_OUNCE_CUP.values()):
        names = ("u_deviation_percent", "expanded_percent", "pass_up_to_percent", "fail_from_percent")
        values = [row[name] for name in names] + row["probability_within_at_8_10_12_percent"]
        for value, figure, decimals in zip(values, worked, (2, 1, 1, 1, 2, 2, 2)):
            hold(f"{row['flow_gal_per_min']} gal/min", value, figure, decimals)
    return {"inputs": {**OUNCE_CUP, "coverage_factor": 2.0, "guard_in_u": GUARD}, "expected": {"rows": rows}}
