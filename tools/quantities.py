"""Quantities as people write them ("14.5 fl oz"), turned into exact SI fractions.

A second, independent unit table: it shares nothing with the Rust `units` crate, so that a wrong factor
in either one shows. Every factor is exact by definition; the sources stand beside the numbers.
"""

from dataclasses import dataclass
from fractions import Fraction
from functools import lru_cache

# International yard and pound agreement, 1 July 1959 (NIST SP 811:2008, appendix B.6): exact.
FOOT = Fraction("0.3048")  # m
INCH = FOOT / 12
MILE = FOOT * 5280
POUND = Fraction("0.45359237")  # kg
# Acre of 43,560 square international feet (NIST Handbook 44, appendix C).
ACRE = FOOT**2 * 43560  # m2
# US gallon of 231 cubic inches; 128 fluid ounces in it (NIST Handbook 44, appendix C).
GALLON = INCH**3 * 231  # m3
# Imperial gallon (Weights and Measures Act 1985, UK, schedule 1): exact.
IMPERIAL_GALLON = Fraction("0.00454609")  # m3
LITRE = Fraction(1, 1000)  # m3
# Standard gravity (3rd CGPM, 1901): exact. A psi is the weight of a pound on a square inch.
GRAVITY = Fraction("9.80665")  # m/s2
PSI = POUND * GRAVITY / INCH**2  # Pa

# unit text -> (kind, factor to SI). Compound units are made of these with "/".
UNITS = {
    "": ("ratio", Fraction(1)),
    "%": ("ratio", Fraction(1, 100)),
    "ppm": ("parts per million", Fraction(1)),
    "deg": ("angle in degrees", Fraction(1)),
    "$": ("money", Fraction(1)),
    "in": ("length", INCH),
    "ft": ("length", FOOT),
    "yd": ("length", FOOT * 3),
    "mi": ("length", MILE),
    "mm": ("length", Fraction(1, 1000)),
    "cm": ("length", Fraction(1, 100)),
    "m": ("length", Fraction(1)),
    "km": ("length", Fraction(1000)),
    "sq ft": ("area", FOOT**2),
    "ac": ("area", ACRE),
    "sq m": ("area", Fraction(1)),
    "ha": ("area", Fraction(10000)),
    "fl oz": ("volume", GALLON / 128),
    "pt": ("volume", GALLON / 8),
    "qt": ("volume", GALLON / 4),
    "gal": ("volume", GALLON),
    "imp gal": ("volume", IMPERIAL_GALLON),
    "mL": ("volume", LITRE / 1000),
    "L": ("volume", LITRE),
    "oz wt": ("mass", POUND / 16),
    "lb": ("mass", POUND),
    "lb ai": ("mass", POUND),  # active ingredient: a pound all the same
    "g": ("mass", Fraction(1, 1000)),
    "kg": ("mass", Fraction(1)),
    "psi": ("pressure", PSI),
    "kPa": ("pressure", Fraction(1000)),
    "bar": ("pressure", Fraction(100000)),
    "s": ("time", Fraction(1)),
    "min": ("time", Fraction(60)),
    "h": ("time", Fraction(3600)),
    "mph": ("length/time", MILE / 3600),
    "km/h": ("length/time", Fraction(1000, 3600)),
}


@dataclass(frozen=True)
class Quantity:
    """A value in SI units and what kind of quantity it is, such as `volume/area`."""

    si: Fraction | float
    kind: str


def parse_unit(text):
    """Return (kind, factor to SI) of a unit such as `gal/ac`, `pt/100 gal` or `mL/1000 sq ft`."""
    if text in UNITS:
        return UNITS[text]
    top, slash, bottom = text.partition("/")
    if not slash:
        raise ValueError(f"unknown unit {text!r}")
    count, _, per = bottom.partition(" ")
    if not count.isdigit():
        count, per = "1", bottom
    top_kind, top_factor = parse_unit(top)
    bottom_kind, bottom_factor = parse_unit(per)
    return f"{top_kind}/{bottom_kind}", top_factor / (bottom_factor * int(count))


def split_quantity(text):
    """Return (number, unit text) of `14.5 fl oz`: the unit is what follows the first space."""
    number, _, unit = text.strip().partition(" ")
    return Fraction(number), unit.strip()


def parse_quantity(text):
    """Return the `Quantity` that `14.5 fl oz` stands for."""
    number, unit = split_quantity(text)
    kind, factor = parse_unit(unit)
    return Quantity(number * factor, kind)


@lru_cache(maxsize=None)
def si(text, kind):
    """Return the SI value of `text` as the nearest float, refusing another kind of quantity.

    Kept once read: the same few texts come again and again, and a benchmark is not to time their reading.
    """
    quantity = parse_quantity(text)
    if quantity.kind != kind:
        raise ValueError(f"{text!r} is {quantity.kind}, not {kind}")
    return float(quantity.si)
