"""What a catch test's readings alone say: first-order propagation (JCGM 100:2008, 5.1 and 5.2).

The model, written once and run in two libraries (GTC and `uncertainties`). With standard uncertainties:

* Reading r made to a step s: V = (r + s / sqrt(12) * z) * (1 + h). One z (mean 0, u 1) for all catches of a tip,
  whatever their steps: rounding does not average out. A handling error h for each catch.
* Time T of a timed run: tau = T + e_on + e_off; each e has the timer's u; shared by all cups under the run.
* Flow of a tip: q = sum(V) * (1 + c) / (sum(tau) * (1 + w)); cup scale c and watch w shared by the whole test.
* Deviation: d = q / mean(q of the tips that run) - 1. Here c and w cancel.
* Against new: a = q / (q_rated * sqrt(p / p_rated)) - 1, with an uncertain pressure p.
* Rate: R = sum(q) / (v * n * spacing), v = length / mean(drive times), each drive timed as a run is. With the same watch
  for both, w cancels; with separate watches each has its own.
"""

from statistics import median

from quantities import parse_unit, si

# Half step over root three: a reading is anywhere within half a step (JCGM 100:2008, 4.3.7 and F.2.2.1).
STEPS_PER_U = 12**0.5
# Two-sided 95 % of the normal distribution.
COVERAGE = 1.959963984540054
# A tip that gives less than this share of the median is plugged: set aside (common practice).
PLUGGED_BELOW = 0.05
LITRES_PER_MINUTE = 60000.0


class Gtc:
    """Uncertain numbers by GTC."""

    def __init__(self):
        import GTC

        self.library = GTC

    def input(self, value, u):
        """Return an independent input quantity."""
        return self.library.ureal(value, u) if u else value

    def sqrt(self, quantity):
        """Return the square root."""
        return self.library.sqrt(quantity)

    def pair(self, quantity):
        """Return (value, standard uncertainty)."""
        return float(self.library.value(quantity)), float(self.library.uncertainty(quantity))


class Uncertainties:
    """Uncertain numbers by `uncertainties`."""

    def __init__(self):
        import uncertainties
        from uncertainties import umath

        self.library, self.umath = uncertainties, umath

    def input(self, value, u):
        """Return an independent input quantity."""
        return self.library.ufloat(value, u) if u else value

    def sqrt(self, quantity):
        """Return the square root."""
        return self.umath.sqrt(quantity)

    def pair(self, quantity):
        """Return (value, standard uncertainty)."""
        return float(quantity.nominal_value), float(quantity.std_dev)


class Runs:
    """The timed runs of a test: one time, with its two errors, for all cups that share a run."""

    def __init__(self, algebra, timer_u):
        self.algebra, self.timer_u, self.shared = algebra, timer_u, {}

    def timed(self, text):
        """Return the uncertain time of a run of its own."""
        seconds, u = si(text, "time"), self.timer_u
        return seconds + self.algebra.input(0.0, u) + self.algebra.input(0.0, u)

    def time(self, catch):
        """Return the uncertain time of a catch's run."""
        name = catch.get("run")
        if name is None:
            return self.timed(catch["time"])
        if name not in self.shared:
            self.shared[name] = (catch["time"], self.timed(catch["time"]))
        text, time = self.shared[name]
        if text != catch["time"]:
            raise ValueError(f"run {name!r} has two times")
        return time


def tip_flow(algebra, catches, runs, handling_u):
    """Return a tip's uncertain flow in m3/s, the cup's scale and the watch left out."""
    rounding = algebra.input(0.0, 1.0)
    volume = time = 0.0
    for catch in catches:
        step_u = si(catch["step"], "volume") / STEPS_PER_U
        reading = si(catch["reading"], "volume") + step_u * rounding
        volume = volume + reading * (1.0 + algebra.input(0.0, handling_u))
        time = time + runs.time(catch)
    return volume / time


def running(tips):
    """Return the numbers of the tips that run, by their flows as read."""
    as_read = {}
    for tip in tips:
        volume = sum(si(catch["reading"], "volume") for catch in tip["catches"])
        as_read[tip["number"]] = volume / sum(si(catch["time"], "time") for catch in tip["catches"])
    least = PLUGGED_BELOW * median(as_read.values())
    return [number for number, flow in as_read.items() if flow >= least]


def new_flow(algebra, against_new):
    """Return the uncertain flow of a new tip at the pressure of the test, m3/s."""
    flow, rated_pressure = against_new["rated"].split(" @ ")
    pressure = si(against_new["pressure"], "pressure")
    pressure_u = si(against_new["pressure_u"], "pressure")
    ratio = algebra.input(pressure, pressure_u) / si(rated_pressure, "pressure")
    return si(flow, "volume/time") * algebra.sqrt(ratio)


def percent_range(algebra, ratio):
    """Return the deviation that a ratio to the reference means, with its range, in percent."""
    value, u = algebra.pair((ratio - 1.0) * 100.0)
    low, high = value - COVERAGE * u, value + COVERAGE * u
    return {"deviation_percent": value, "u_percent": u, "low": low, "high": high}


def rate(algebra, case, total_flow, runs, drive_watch):
    """Return the uncertain application rate with its range, in the drive's rate unit."""
    drive = case["drive"]
    times = [runs.timed(text) * drive_watch for text in drive["times"]]
    length = si(drive["length"], "length") * algebra.input(1.0, drive["length_u"])
    spacing = si(drive["spacing"], "length") * algebra.input(1.0, drive["spacing_u"])
    speed = length / (sum(times) / len(times))
    value, u = algebra.pair(total_flow / (speed * (len(case["tips"]) * spacing)))
    kind, factor = parse_unit(drive["rate_unit"])
    if kind != "volume/area":
        raise ValueError(f"{drive['rate_unit']} is no rate")
    value, u = value / float(factor), u / float(factor)
    return {"value": value, "u": u, "low": value - COVERAGE * u, "high": value + COVERAGE * u}


def tip_flows(algebra, case, runs, scale):
    """Return the uncertain flow of each tip that runs, m3/s, times the shared `scale`."""
    numbers = set(running(case["tips"]))
    return {
        tip["number"]: tip_flow(algebra, tip["catches"], runs, case["assumed"]["handling"]) * scale
        for tip in case["tips"]
        if tip["number"] in numbers
    }


def propagate(algebra, case):
    """Return the `expected` of a case."""
    assumed = case["assumed"]
    runs = Runs(algebra, si(assumed["timer"], "time"))
    cup_scale, watch = (algebra.input(1.0, assumed[name]) for name in ("cup_scale", "watch"))
    flow_of = tip_flows(algebra, case, runs, cup_scale / watch)
    mean = sum(flow_of.values()) / len(flow_of)
    new = new_flow(algebra, case["against_new"]) if "against_new" in case else None
    expected = {"mean_flow_l_per_min": algebra.pair(mean)[0] * LITRES_PER_MINUTE}
    if "drive" in case:
        total, other_watch = sum(flow_of.values()), algebra.input(1.0, assumed["watch"])
        expected["rate_same_watch"] = rate(algebra, case, total, runs, watch)
        expected["rate_separate_watches"] = rate(algebra, case, total, runs, other_watch)
    expected["tips"] = [tip_expected(algebra, tip["number"], flow_of, mean, new) for tip in case["tips"]]
    return expected


def tip_expected(algebra, number, flow_of, mean, new):
    """Return what is expected for one tip; a plugged one has no range."""
    if number not in flow_of:
        return {"number": number, "runs": False}
    flow = flow_of[number]
    found = {"number": number, "runs": True, "flow_l_per_min": algebra.pair(flow)[0] * LITRES_PER_MINUTE}
    found["measured"] = percent_range(algebra, flow / mean)
    if new is not None:
        found["against_new"] = percent_range(algebra, flow / new)
    return found
