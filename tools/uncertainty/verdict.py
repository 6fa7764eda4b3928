"""The verdict model in numpy and scipy: a second implementation of a specification, not a port of the Rust code.

Tips of one group have flows q = m (1 + d): with probability 1 - f the deviation d is normal with spread s, with
probability f it is a fault, broad over -95 % to +60 %. Middle m, spread s and faulty share f are unknown. A cup read
to marks `step` apart says that its volume q T lies within half a step of the reading, the edges softened by timing
(0.2 s at start and at stop), handling (0.5 %) and a tenth of a step; one cup in 500 is misread, by anything. Everything is summed over grids.
"""

import numpy as np
from scipy.special import ndtr

SPREADS = np.array([0.003, 0.0045, 0.0068, 0.0102, 0.0153, 0.023, 0.0346, 0.052, 0.079, 0.12])
SPREAD_WEIGHT = np.array([0.15, 0.25, 0.5, 1.0, 1.3, 0.9, 0.2, 0.08, 0.05, 0.03])
FAULTY = np.array([0.12, 0.2, 0.28, 0.4])
FAULTY_WEIGHT = np.array([0.25, 0.4, 0.2, 0.15])
TIMER, HANDLING, SOFT_EDGE, MISREAD = 0.2, 0.005, 0.1, 0.002
LOW, HIGH, NEAR, BEYOND = -0.95, 0.60, 0.3, 0.001


def fault_density(deviation):
    """Falling off as 1 / (1 + |d| / 30 %)^2 over its range."""
    near = 1.0 + np.abs(deviation) / NEAR
    total = sum(NEAR * (1.0 - 1.0 / (1.0 + end / NEAR)) for end in (-LOW, HIGH))
    density = np.where(deviation > HIGH, BEYOND, 1.0 / (total * near * near))
    return np.where(deviation >= LOW, density, 0.0)


def likelihood(flows, cups):
    """The probability of one tip's cups at each flow."""
    value = np.ones_like(flows)
    for reading, step, seconds in cups:
        volume = flows * seconds
        smear = np.sqrt(2.0 * (flows * TIMER) ** 2 + (HANDLING * volume) ** 2 + (SOFT_EDGE * step) ** 2)
        read = ndtr((reading + step / 2 - volume) / smear) - ndtr((reading - step / 2 - volume) / smear)
        value = value * ((1.0 - MISREAD) * read + MISREAD * step / (2.0 * reading))
    return value


def probabilities(tips, limit=0.10, flow_step=0.001, middles=241, reach=0.3):
    """The probability that each tip is within `limit` of the mean of all, for a list of tips' cups."""
    rates = np.array([sum(cup[0] for cup in cups) / sum(cup[2] for cup in cups) for cups in tips])
    about = np.median(rates)
    flows = about * np.arange(flow_step / 2, 2.2, flow_step)
    cups = np.array([likelihood(flows, tip) for tip in tips])
    middle = about * (1.0 + np.linspace(-reach, reach, middles))
    width = flows[1] - flows[0]
    broken_law = fault_density(flows[:, None] / middle - 1.0) / middle * width
    broken = cups @ broken_law
    logs, sound_laws = [], []
    for spread in SPREADS:
        wide = middle * spread
        # The exact weight of each step, so that a narrow spread is not missed between nodes.
        law = ndtr((flows[:, None] + width / 2 - middle) / wide) - ndtr((flows[:, None] - width / 2 - middle) / wide)
        sound = cups @ law
        mixed = (1.0 - FAULTY)[:, None, None] * sound + FAULTY[:, None, None] * broken
        logs.append(np.log(np.maximum(mixed, 1e-300)).sum(axis=1) + np.log(FAULTY_WEIGHT)[:, None])
        sound_laws.append(law)
    logs = np.array(logs) + np.log(SPREAD_WEIGHT)[:, None, None]
    weights = np.exp(logs - logs.max())
    weights /= weights.sum()
    within = np.zeros(len(tips))
    for at_spread, at_faulty, at_middle in np.argwhere(weights > 1e-4 * weights.max()):
        share = FAULTY[at_faulty]
        law = (1.0 - share) * sound_laws[at_spread][:, at_middle] + share * broken_law[:, at_middle]
        tip = cups * law
        tip /= tip.sum(axis=1, keepdims=True)
        within += weights[at_spread, at_faulty, at_middle] * within_on_one_boom(tip, flows, limit)
    return within / weights[weights > 1e-4 * weights.max()].sum()


def within_on_one_boom(tip, flows, limit):
    """On one boom the tips are independent; the sum of the others is taken as normal."""
    mean = tip @ flows
    variance = tip @ flows**2 - mean**2
    count = len(mean)
    others, spread = mean.sum() - mean, np.sqrt(np.maximum(variance.sum() - variance, 0.0))
    # own * n / (own + others) - 1 <= limit where others >= own * (n - 1 - limit) / (1 + limit).
    least = flows * (count - 1 - limit) / (1 + limit)
    most = flows * (count - 1 + limit) / (1 - limit)
    spread = np.maximum(spread, 1e-12)[:, None]
    inside = ndtr((most - others[:, None]) / spread) - ndtr((least - others[:, None]) / spread)
    return (tip * inside).sum(axis=1)
