"""Times the verdict model in numpy for 60 tips with three cups each, to set beside the Rust `judge_60_tips`.

    python tools/bench/verdict_numpy.py

The grids are those of the Rust code: flows every 0.3 %, 26 middle flows for each of ten spreads.
"""

import sys
import time
from pathlib import Path
from statistics import median

import numpy as np

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT / "tools"))

from uncertainty.verdict import probabilities  # noqa: E402


def main():
    """Print the median of five goes."""
    random = np.random.default_rng(1)
    tips = [[(round(430 * (1 + random.normal(0, 0.02)) / 10) * 10.0, 10.0, 30.0) for _ in range(3)] for _ in range(60)]
    times = []
    for _ in range(5):
        start = time.perf_counter_ns()
        probabilities(tips, flow_step=0.003, middles=26, reach=0.05)
        times.append(time.perf_counter_ns() - start)
    print(f"judge_60_tips_numpy\t{median(times)}")


if __name__ == "__main__":
    main()
