"""One boom as a network for EPANET 2.2 (the library that comes with wntr), and its tip flows.

EPANET's own factors between units are rounded (1699.0 for L/min in ft³/s, 0.4333 for psi in a foot of water), so the network is
written in feet, inches and ft³/s, and what a coefficient needs of them is put in with the same figures. It takes 32.2 ft/s² in
friction, 0.02517 for 8/(π² 32.2) in losses of fittings, and 1.1e-5 ft²/s for water.
"""

import ctypes
import tempfile
import warnings
from math import sqrt
from pathlib import Path

with warnings.catch_warnings():
    warnings.simplefilter("ignore")
    from wntr.epanet.toolkit import ENepanet
    from wntr.epanet.util import EN

FOOT = 0.3048
METRES_IN_A_BAR = 10.19716
LITRES_A_MINUTE_IN_A_CUBIC_FOOT_A_SECOND = FOOT**3 * 60_000.0
PSI_IN_A_FOOT = 0.4333  # EPANET 2.2, src/types.h
ITERATIONS, RELATIVE_ERROR = 0, 1  # EPANET 2.2, include/epanet2_enums.h, EN_AnalysisStatistic
MOST_TRIALS = 500
ACCURACY = 1e-5  # the finest that EPANET takes; HEADERROR and FLOWCHANGE go further
# How a check valve that is pushed open stands in the network. By `VALVES`, pressure breaker valves, EPANET holds each drop by a
# factor of 1e8, whose rounding keeps the flows through them from ever coming to rest: the heads do, after some trials. An
# outlet that stands higher by the head that opens the valve is the same to the last digit, and comes to rest.
RAISED, VALVES = "raised", "valves"
ENOUGH_TRIALS = 60


class Unbalanced(Exception):
    """EPANET did not come to rest, or found that the network cannot be."""


def _feet(metres):
    return f"{metres / FOOT:.14g}"


class _Network:
    """The lines of an input file."""

    def __init__(self, boom, trials):
        self.boom, self.trials = boom, trials
        self.nodes, self.pipes, self.valves, self.emitters = [], [], [], []

    def node(self, height):
        name = f"N{len(self.nodes) + 1}"
        self.nodes.append(f"{name} {_feet(height)} 0")
        return name

    def pipe(self, one, other, length, bore_mm, minor_loss):
        inches = f"{bore_mm / 25.4:.14g}"
        # D-W takes the roughness in thousandths of a foot.
        rough = f"{self.boom['roughness_mm'] / FOOT:.14g}"
        self.pipes.append(
            f"P{len(self.pipes) + 1} {one} {other} {_feet(length)} {inches} {rough} {minor_loss:.14g} Open"
        )

    def valve(self, one, other, bar):
        psi = bar * METRES_IN_A_BAR / FOOT * PSI_IN_A_FOOT
        self.valves.append(f"V{len(self.valves) + 1} {one} {other} 4 PBV {psi:.14g} 0")

    def tip(self, node, litres_at_3_bar):
        # L/min at 3 bar to ft³/s at a psi.
        at_a_foot = litres_at_3_bar / LITRES_A_MINUTE_IN_A_CUBIC_FOOT_A_SECOND / sqrt(3 * METRES_IN_A_BAR / FOOT)
        self.emitters.append(f"{node} {at_a_foot / sqrt(PSI_IN_A_FOOT):.14g}")

    def text(self):
        boom = self.boom
        options = [
            "UNITS CFS",
            "HEADLOSS D-W",
            f"VISCOSITY {boom['viscosity']:.14g}",
            f"TRIALS {self.trials}",
            f"ACCURACY {ACCURACY:f}",
            "HEADERROR 0.000001",
            "FLOWCHANGE 0.000000001",
            "UNBALANCED STOP",
            "EMITTER EXPONENT 0.5",
        ]
        parts = {
            "JUNCTIONS": self.nodes,
            "RESERVOIRS": [f"R {_feet(boom['bar'] * METRES_IN_A_BAR)}"],
            "PIPES": self.pipes,
            "VALVES": self.valves,
            "EMITTERS": self.emitters,
            "TIMES": ["DURATION 0"],
            "OPTIONS": options,
            "REPORT": ["STATUS NO", "SUMMARY NO"],
        }
        return "".join(f"[{name}]\n" + "".join(f"{line}\n" for line in lines) for name, lines in parts.items()) + "[END]\n"


def height_at(section, tip):
    """How much higher than the gauge a tip's place stands; `tip` may lie between two."""
    left, right = section["heights"]
    last = len(section["tips"]) - 1
    return left if last == 0 else left + (right - left) * tip / last


def network(boom, check_valves=RAISED):
    """The input file, and for each section the node of each tip, or none where it is plugged."""
    made = _Network(boom, MOST_TRIALS if check_valves is RAISED else ENOUGH_TRIALS)
    length, bore, minor_loss = boom["supply"]
    manifold = made.node(0.0)
    made.pipe("R", manifold, length, bore, minor_loss)
    tips = []
    for section in boom["sections"]:
        length, bore, minor_loss = section["feed"]
        enters = section["enters"] - 1  # from 0; a half lies midway between two tips
        entry = made.node(height_at(section, enters))
        made.pipe(manifold, entry, length, bore, minor_loss)
        places = {}
        for direction in (-1, 1):
            before, at = entry, enters
            whole = [tip for tip in range(len(section["tips"])) if (tip - enters) * direction > 0][::direction]
            for tip in whole:
                place = made.node(height_at(section, tip))
                made.pipe(before, place, abs(tip - at) * section["spacing"], section["hose"], 0.0)
                places[tip] = before = place
                at = tip
        if enters == int(enters):
            places[int(enters)] = entry
        found = []
        for tip, litres in enumerate(section["tips"]):
            height, opens_at = height_at(section, tip), boom["opens_at"]
            raised = opens_at * METRES_IN_A_BAR if check_valves is RAISED else 0.0
            end = made.node(height + raised)
            made.pipe(places[tip], end, *section["body"])
            if litres > 0 and opens_at > 0 and check_valves is VALVES:
                behind = made.node(height)
                made.valve(end, behind, opens_at)
                end = behind
            if litres > 0:
                made.tip(end, litres)
            found.append(end if litres > 0 else None)
        tips.append(found)
    return made.text(), tips


class Engine:
    """EPANET, with a folder for its files."""

    def __init__(self):
        self.folder = tempfile.TemporaryDirectory()

    def opened(self, text):
        """EPANET with a network opened and its arrays made; `close` it."""
        folder = Path(self.folder.name)
        (folder / "boom.inp").write_text(text, encoding="ascii")
        engine = ENepanet(version=2.2)
        with warnings.catch_warnings():
            warnings.simplefilter("ignore")
            engine.ENopen(str(folder / "boom.inp"), str(folder / "boom.rpt"), str(folder / "boom.bin"))
            engine.ENopenH()
        return engine

    def flows(self, boom, check_valves=RAISED):
        """Flow of each tip, L/min, by section."""
        text, tips = network(boom, check_valves)
        engine = self.opened(text)
        try:
            engine.ENinitH(0)
            with warnings.catch_warnings():
                warnings.simplefilter("ignore")
                engine.ENrunH()
            trials, error = _statistic(engine, ITERATIONS), _statistic(engine, RELATIVE_ERROR)
            if check_valves is RAISED and (engine.errcode or trials >= MOST_TRIALS or error > ACCURACY):
                raise Unbalanced(f"code {engine.errcode}, {trials} trials, {error}")

            def flow(node):
                if node is None:
                    return 0.0
                return engine.ENgetnodevalue(engine.ENgetnodeindex(node), EN.DEMAND) * LITRES_A_MINUTE_IN_A_CUBIC_FOOT_A_SECOND

            return [[flow(node) for node in section] for section in tips]
        finally:
            engine.ENclose()


def _statistic(engine, which):
    """What wntr's layer does not pass on: how the last analysis went."""
    value = ctypes.c_double()
    engine.ENlib.EN_getstatistic(engine._project, which, ctypes.byref(value))
    return value.value
