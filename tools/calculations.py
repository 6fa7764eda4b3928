"""The calculations behind `check-values/check-values.tsv`, done once more in exact fractions.

Each function takes the row's givens and returns (value in SI, kind of quantity). They are written from
the definition of each quantity, not from the customary constants (5940, 340, 43.56), which come out of
the unit factors. Only square roots and the tangent leave the fractions.
"""

import math
from fractions import Fraction

from quantities import ACRE, GALLON, POUND, parse_quantity

CALCULATIONS = {}


def calculation(function):
    """Register `function` under its own name."""
    CALCULATIONS[function.__name__] = function
    return function


class Givens:
    """The givens of one row, by name; `unused` names those that no calculation has asked for."""

    def __init__(self, text):
        parts = [part.strip() for part in text.split(";") if part.strip()]
        self.texts = dict(part.split("=", 1) for part in parts)
        self.unused = set(self.texts)

    def text(self, name):
        """Return the given as written."""
        self.unused.discard(name)
        return self.texts[name]

    def quantity(self, name):
        """Return the given as a quantity of any kind."""
        return parse_quantity(self.text(name))

    def __call__(self, name, kind):
        """Return the given in SI, refusing another kind of quantity."""
        quantity = self.quantity(name)
        if quantity.kind != kind:
            raise ValueError(f"{name} is {quantity.kind}, wanted {kind}")
        return quantity.si


def length(g, name):
    """Return a given length in metres."""
    return g(name, "length")


def rate(g):
    """Return the given application rate in m3/m2."""
    return g("rate", "volume/area")


def density_ratio(g):
    """Return the liquid's density over water's, with the water density the source takes."""
    return g("density", "mass/volume") / g("water", "mass/volume")


# Courses, strips and areas.


@calculation
def course_length(g):
    """Length of a 1/128-acre course: 128 fl oz make a gallon, so fl oz caught there are gal/ac."""
    return ACRE / 128 / length(g, "width"), "length"


@calculation
def strip_length_for_area(g):
    """Length of a strip of a given width that covers a given area."""
    return g("area", "area") / length(g, "width"), "length"


@calculation
def area_of_rectangle(g):
    """Area of a plot."""
    return length(g, "length") * length(g, "width"), "area"


@calculation
def swath(g):
    """Swath of a broadcast boom: tips times spacing."""
    return int(g.text("tips")) * length(g, "spacing"), "length"


@calculation
def height_for_overlap(g):
    """Height at which a flat fan is (1 + overlap) spacings wide, by geometry alone."""
    half_angle = math.radians(float(g("angle", "angle in degrees")) / 2)
    width = (1 + g("overlap", "ratio")) * length(g, "spacing")
    return float(width) / (2 * math.tan(half_angle)), "length"


# Driving.


@calculation
def speed(g):
    """Speed over a timed course."""
    return length(g, "distance") / g("time", "time"), "length/time"


@calculation
def course_time(g):
    """Time for a course at a speed."""
    return length(g, "distance") / g("speed", "length/time"), "time"


# Application rate and the flow for it.


@calculation
def rate_flow_speed_width(g):
    """Rate from flow, speed and the width that flow serves."""
    covered = g("speed", "length/time") * length(g, "width")
    return g("flow", "volume/time") / covered, "volume/area"


@calculation
def flow_for_rate(g):
    """Flow that gives a rate at a speed over a width."""
    return rate(g) * g("speed", "length/time") * length(g, "width"), "volume/time"


@calculation
def rate_catch_over_course(g):
    """Rate from what one tip gave while the course was driven."""
    return g("catch", "volume") / (length(g, "course") * length(g, "width")), "volume/area"


@calculation
def rate_used_over_distance(g):
    """Rate from the volume used over a distance by a swath."""
    return g("used", "volume") / (length(g, "distance") * length(g, "swath")), "volume/area"


@calculation
def rate_used_over_area(g):
    """Rate from the volume used over an area."""
    return g("used", "volume") / g("area", "area"), "volume/area"


@calculation
def rate_per_1000_sqft(g):
    """The same rate; the answer's unit does the work."""
    return rate(g), "volume/area"


@calculation
def rate_at_new_speed(g):
    """Rate at another speed, flow unchanged."""
    return rate(g) * g("speed", "length/time") / g("new_speed", "length/time"), "volume/area"


@calculation
def speed_error_effect(g):
    """Change of rate from an error of speed, flow unchanged."""
    return 1 / (1 + g("speed_error", "ratio")) - 1, "ratio"


# Tips: pressure, size, density, limits.


@calculation
def flow_at_pressure(g):
    """Flow at another pressure by the square-root law."""
    flow, pressure = (parse_quantity(part) for part in g.text("rated").split("@"))
    return float(flow.si) * math.sqrt(g("pressure", "pressure") / pressure.si), "volume/time"


@calculation
def pressure_for_speed(g):
    """Pressure that holds the rate at another speed: flow goes with the root, so pressure with the square."""
    ratio = g("new_speed", "length/time") / g("speed", "length/time")
    return g("pressure", "pressure") * ratio**2, "pressure"


@calculation
def iso_size_flow(g):
    """Nominal flow of an ISO 10625 size: 0.4 L/min at 3 bar for each 0.1 in the size (015 is 0.15). From memory."""
    size = g.text("size")
    at_3_bar = Fraction(int(size), 10 ** (len(size) - 1)) * 4 * Fraction(1, 60000)
    return float(at_3_bar) * math.sqrt(g("pressure", "pressure") / 300000), "volume/time"


@calculation
def density_factor(g):
    """Square root of the specific gravity."""
    return math.sqrt(density_ratio(g)), "ratio"


@calculation
def water_equivalent_rate(g):
    """Water rate to look up in a table for a liquid's rate."""
    return float(rate(g)) * math.sqrt(density_ratio(g)), "volume/area"


@calculation
def solution_rate(g):
    """Liquid's rate at a setting that gives a water rate."""
    return float(rate(g)) / math.sqrt(density_ratio(g)), "volume/area"


@calculation
def threshold_density(g):
    """Density whose flow factor is one plus the limit."""
    return g("water", "mass/volume") * (1 + g("limit", "ratio")) ** 2, "mass/volume"


@calculation
def mean_limits(g):
    """Upper or lower limit a share above or below the mean."""
    share = g("limit", "ratio") * {"upper": 1, "lower": -1}[g.text("side")]
    return g("mean", "volume/time") * (1 + share), "volume/time"


@calculation
def catch_mean(g):
    """Mean of the catches."""
    readings = [parse_quantity(part) for part in g.text("readings").split(",")]
    return sum(reading.si for reading in readings) / len(readings), "volume"


# Tank and product.


@calculation
def acres_per_tank(g):
    """Area that a tank does."""
    return g("tank", "volume") / rate(g), "area"


@calculation
def area_per_volume(g):
    """Area that a volume does."""
    return g("volume", "volume") / rate(g), "area"


@calculation
def tank_count(g):
    """Tanks needed for an area, the last one perhaps part full."""
    return Fraction(math.ceil(rate(g) * g("area", "area") / g("tank", "volume"))), "ratio"


@calculation
def total_mix(g):
    """Mix for a plot."""
    return rate(g) * length(g, "length") * length(g, "width"), "volume"


@calculation
def product_per_volume(g):
    """Product in each volume of mix."""
    product = g.quantity("product")
    return product.si / rate(g), product.kind.removesuffix("/area") + "/volume"


@calculation
def product_per_tank(g):
    """Product in a tank."""
    product = g.quantity("product")
    return product.si * g("tank", "volume") / rate(g), product.kind.removesuffix("/area")


@calculation
def product_total(g):
    """Product for an area."""
    product = g.quantity("product")
    return product.si * g("area", "area"), product.kind.removesuffix("/area")


@calculation
def product_for_volume(g):
    """Product for a volume of mix, from a rate such as 2 lb/100 gal."""
    product = g.quantity("product")
    return product.si * g("volume", "volume"), product.kind.removesuffix("/volume")


@calculation
def product_rate_from_active_ingredient(g):
    """Product rate from the active ingredient's: by volume for a liquid's strength, by weight for a dry one's."""
    strength = g.quantity("strength")
    kind = {"mass/volume": "volume/area", "ratio": "mass/area"}[strength.kind]
    return g("active", "mass/area") / strength.si, kind


@calculation
def product_per_tank_from_active_ingredient(g):
    """Product in a tank, from the active ingredient's rate."""
    product, kind = product_rate_from_active_ingredient(g)
    return product * g("tank", "volume") / rate(g), kind.removesuffix("/area")


@calculation
def percent_solution(g):
    """Product volume in a volume of mix, volume by volume."""
    return g("volume", "volume") * g("strength", "ratio"), "volume"


@calculation
def percent_solution_by_weight(g):
    """Product weight in a volume of mix, weight by weight."""
    return g("volume", "volume") * g("density", "mass/volume") * g("strength", "ratio"), "mass"


@calculation
def nutrient_per_gallon(g):
    """Nutrient in each volume of a liquid fertiliser."""
    return g("density", "mass/volume") * g("share", "ratio"), "mass/volume"


@calculation
def carrier_for_nutrient(g):
    """Liquid fertiliser rate for a nutrient rate."""
    return g("nutrient", "mass/area") / nutrient_per_gallon(g)[0], "volume/area"


@calculation
def scale_label_rate(g):
    """Amount for another area than the label's."""
    amount = g.quantity("amount")
    return amount.si * g("area", "area") / g("label_area", "area"), amount.kind


@calculation
def water_conditioning_ams(g):
    """Ammonium sulfate to neutralise hard water, lb/100 gal (North Dakota State Univ., Crop & Pest Report, 2015-07-02)."""
    coefficients = {
        "potassium": Fraction("0.002"),
        "sodium": Fraction("0.005"),
        "calcium": Fraction("0.009"),
        "magnesium": Fraction("0.014"),
        "iron": Fraction("0.042"),
    }
    pounds = sum(share * g(name, "parts per million") for name, share in coefficients.items())
    return pounds * POUND / (100 * GALLON), "mass/volume"


# Money and conversion.


@calculation
def overlap_cost(g):
    """Cost of a share of overlap, per area or, where an area is given, in all."""
    cost = g("cost", "money/area") * g("overlap", "ratio")
    if "area" in g.texts:
        return cost * g("area", "area"), "money"
    return cost, "money/area"


@calculation
def convert(g):
    """The same quantity; the answer's unit does the work."""
    quantity = g.quantity("quantity")
    return quantity.si, quantity.kind
