"""Times EPANET 2.2 on a boom of sixty tips in five sections, to set beside the Rust `plumbing_60_tips`.

    python tools/bench/plumbing_epanet.py

`plumbing_60_tips_epanet` is from a network that was read already to its flows: arrays and order of elimination are made, and it
is solved, as our figure has it. `plumbing_60_tips_again_epanet` leaves out the first of these; `plumbing_60_tips_file_epanet` is
from the input file on, as a program pays that hands EPANET one boom after the other.
"""

import sys
import time
from pathlib import Path
from statistics import median

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT / "tools"))

from plumbing.booms import bench_boom  # noqa: E402
from plumbing.epanet import Engine, network  # noqa: E402

# Chosen: a median over so many goes is steady.
GOES = 300


def main():
    """Print the medians."""
    boom = bench_boom()
    engine = Engine()
    opened = engine.opened(network(boom)[0])
    ready, solving = [], []
    for _ in range(GOES):
        opened.ENcloseH()
        start = time.perf_counter_ns()
        opened.ENopenH()
        # 10: flows begin anew each time, nothing is saved to a file.
        opened.ENinitH(10)
        opened.ENrunH()
        ready.append(time.perf_counter_ns() - start)
        start = time.perf_counter_ns()
        opened.ENinitH(10)
        opened.ENrunH()
        solving.append(time.perf_counter_ns() - start)
    opened.ENclose()
    whole = []
    for _ in range(GOES // 10):
        start = time.perf_counter_ns()
        engine.flows(boom)
        whole.append(time.perf_counter_ns() - start)
    print(f"plumbing_60_tips_epanet\t{median(ready)}")
    print(f"plumbing_60_tips_again_epanet\t{median(solving)}")
    print(f"plumbing_60_tips_file_epanet\t{median(whole)}")


if __name__ == "__main__":
    main()
