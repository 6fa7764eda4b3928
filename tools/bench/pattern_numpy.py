"""Times the pattern of a boom of sixty tips over five shapes in numpy, to set beside the Rust `pattern_60_tips`.

    python tools/bench/pattern_numpy.py

All tips and edges of grooves are worked out at once; the boom is that of `crates/cli/benches/pattern.rs`.
"""

import time
from statistics import median

import numpy as np
from scipy.special import erf

# Chosen: a median over so many goes is steady.
GOES = 300

SHAPES = (
    lambda u: np.where(u < 0, (1 + u) ** 2 / 2, 1 - (1 - u) ** 2 / 2),
    lambda u: 0.5 + 0.75 * (u - u**3 / 3),
    lambda u: 0.5 + u / 2 + np.sin(np.pi * u) / (2 * np.pi),
    lambda u: 0.5 + 0.9375 * (u - 2 * u**3 / 3 + u**5 / 5),
    lambda u: 0.5 + erf(u / (0.42 * np.sqrt(2))) / (2 * erf(1 / (0.42 * np.sqrt(2)))),
)


def band(places, flows, tilts):
    """What each groove gets, its band, and the spread of each shape."""
    middle = (places[0] + places[-1]) / 2
    half, reach = np.tan(np.radians(55)), 0.5 * np.tan(np.radians(55 + 4))
    count = int(np.ceil((middle - places[0] + reach) / 0.1))
    edges = middle + np.arange(-count, count + 1) * 0.1
    u = np.clip(np.tan(np.arctan((edges[None, :] - places[:, None]) / 0.5) - tilts[:, None]) / half, -1, 1)
    doses = np.array([(flows[:, None] * np.diff(shape(u), axis=1)).sum(axis=0) / 0.1 for shape in SHAPES])
    inside = (edges[:-1] > places[0] + 0.22) & (edges[1:] < places[-1] - 0.22)
    doses /= doses[:, inside].mean(axis=1, keepdims=True)
    judged = doses[:, inside]
    return doses.min(axis=0), doses.max(axis=0), judged.std(axis=1, ddof=1), judged.argmin(axis=1), judged.argmax(axis=1)


def main():
    """Print the median."""
    number = np.arange(60)
    off = number * 7 % 5 - 2.0
    places, flows, tilts = 0.5 * number + 0.01 * off, 1 + 0.03 * off, np.radians(2.0 * off)
    times = []
    for _ in range(GOES):
        start = time.perf_counter_ns()
        band(places, flows, tilts)
        times.append(time.perf_counter_ns() - start)
    print(f"pattern_60_tips_numpy\t{median(times)}")


if __name__ == "__main__":
    main()
