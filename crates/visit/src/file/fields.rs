//! The table of sections and fields of a visit file. All that reads or describes the file follows from it.

use units::Dimension;

/// One section of the file.
#[derive(Clone, Copy, Debug)]
pub struct Section {
    /// Its name, as `drive` or `catch.round`.
    pub name: &'static str,
    /// What it is for.
    pub english: &'static str,
    /// Its fields; none where the names are the user's own.
    pub fields: &'static [Field],
    /// Whether there may be several of it.
    pub several: Several,
}

/// Whether a section may stand more than once.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Several {
    /// Once.
    No,
    /// As often as needed, each under `[[name]]`.
    Yes,
}

/// One field.
#[derive(Clone, Copy, Debug)]
pub struct Field {
    /// Its name.
    pub name: &'static str,
    /// What may stand in it.
    pub shape: Shape,
    /// A value as it may stand in the file.
    pub example: &'static str,
    /// What it is.
    pub english: &'static str,
}

/// What may stand in a field.
#[derive(Clone, Copy, Debug)]
pub enum Shape {
    /// Any text.
    Text,
    /// A day.
    Day,
    /// A quantity with its unit.
    Quantity(Dimension),
    /// A list of them.
    Quantities(Dimension),
    /// A whole number from 1.
    Count,
    /// A list of them.
    Counts,
    /// A percentage.
    Percent,
    /// One of a few words.
    Word(&'static [&'static str]),
    /// Several of a few words.
    Words(&'static [&'static str]),
    /// A flow at a pressure.
    FlowAtPressure,
    /// A product's rate.
    ProductRate,
    /// A price.
    Price,
    /// Timed runs: times, or `{ time, way }`.
    Runs,
    /// A time, or `"as driven"`.
    CatchTime,
    /// Readings, one for each tip: a reading, a list of them, `{ reading, time, marks, run }`, or `"-"`.
    Readings,
    /// A catch step: a volume, or a weight for a scale.
    Marks,
    /// A percentage of the user's own, or a named limit.
    Limit,
}

const fn once(name: &'static str, english: &'static str, fields: &'static [Field]) -> Section {
    Section { name, english, fields, several: Several::No }
}

const fn many(name: &'static str, english: &'static str, fields: &'static [Field]) -> Section {
    Section { name, english, fields, several: Several::Yes }
}

const fn field(name: &'static str, shape: Shape, example: &'static str, english: &'static str) -> Field {
    Field { name, shape, example, english }
}

use Dimension::{Angle, Area, Density, Flow, Length, Pressure, Speed, Time, Volume, VolumePerArea};
use Shape::{
    CatchTime, Count, Counts, Day, FlowAtPressure, Limit, Marks, Percent, Price, ProductRate, Quantities,
    Quantity, Readings, Runs, Text, Word, Words,
};

use calibration::symptoms::{AirChamber, Check, Drive, Symptom};

/// Words of [`Field`]s that answer yes or no.
const YES_NO: Shape = Word(&["yes", "no"]);

/// The setting's fields, which the drive and the catch may have of their own.
const SETTING: &[Field] = &[
    field("gear", Text, "\"3rd low\"", "the gear"),
    field("engine_speed", Text, "\"1700 rpm\"", "the engine's speed; the PTO and pump go with it"),
    field("pto_speed", Text, "\"540 rpm\"", "the PTO's speed"),
    field("pressure", Quantity(Pressure), "\"30 psi\"", "the pressure while all tips spray"),
    field(
        "pressure_read_at",
        Word(&["pump", "manifold", "boom", "tip", "cab"]),
        "\"boom\"",
        "where the pressure was read",
    ),
    field("gauge_marks", Quantity(Pressure), "\"2 psi\"", "how far the marks of the gauge are apart"),
    field("agitation", Text, "\"on\"", "agitation on or off"),
    field("sections_on", Text, "\"all\"", "which sections sprayed"),
    field(
        "controller",
        Text,
        "\"manual\"",
        "a rate controller on or in manual; for a catch it must be in manual",
    ),
    field("water_in_tank", Text, "\"half full\"", "how full the tank was"),
    field("boom_height", Quantity(Length), "\"20 in\"", "how high the tips are over what is sprayed"),
];

/// Every section, in yard order.
pub const SECTIONS: &[Section] = &[
    once(
        "visit",
        "whose sprayer, which, when",
        &[
            field("sprayer", Text, "\"Blue mounted boom\"", "what the sprayer is called"),
            field("farm", Text, "\"Willow Bend Farm\"", "the farm"),
            field("date", Day, "\"2027-04-14\"", "the day, as year-month-day"),
            field("operator", Text, "\"\"", "who drives it"),
            field("with", Text, "\"\"", "who helped"),
            field("notes", Text, "\"\"", "anything else"),
        ],
    ),
    once(
        "sprayer",
        "what the machine is",
        &[
            field(
                "kind",
                Word(&["boom", "band", "directed", "boomless", "hand"]),
                "\"boom\"",
                "boom (sprays the whole width), band, directed (several tips to a row), boomless (a cluster), hand",
            ),
            field("tips", Count, "12", "how many tips, or outlets of a cluster"),
            field(
                "sections",
                Counts,
                "[4, 4, 4]",
                "tips in each section from the left as the driver sits; or give tips",
            ),
            field("spacing", Quantity(Length), "\"20 in\"", "how far the tips are meant to stand apart"),
            field(
                "mounting",
                Word(&["rear", "front"]),
                "\"rear\"",
                "where the boom is; tips are numbered from the left as the driver sits",
            ),
            field("tip_size", Text, "\"03\"", "the ISO size printed on the tip; or give rated"),
            field("rated", FlowAtPressure, "\"0.30 gal/min @ 40 psi\"", "the maker's flow with water"),
            field(
                "fan_angle",
                Quantity(Angle),
                "\"110 deg\"",
                "for kind boom: how wide the fans spray at the job's pressure; it falls with the pressure",
            ),
            field("tank", Quantity(Volume), "\"200 gal\"", "what the tank holds"),
            field(
                "held_by",
                Word(&["constant_pressure", "rate_controller", "ground_driven_pump"]),
                "\"constant_pressure\"",
                "what holds the pressure; it decides what a change of speed does",
            ),
            field(
                "band_width",
                Quantity(Length),
                "\"12 in\"",
                "for kind band: the width of a band; spacing is then the row spacing",
            ),
            field("row_spacing", Quantity(Length), "\"30 in\"", "for kind directed"),
            field("tips_per_row", Count, "3", "for kind directed"),
            field(
                "effective_swath",
                Quantity(Length),
                "\"30 ft\"",
                "for kind boomless: from pass to pass, less than the wetted width",
            ),
            field(
                "wetted_width",
                Quantity(Length),
                "\"36 ft\"",
                "for kind boomless, with overlap: what is wetted",
            ),
            field(
                "overlap",
                Percent,
                "\"15 %\"",
                "the share of the wetted width that the next pass covers again",
            ),
            field(
                "spray_width",
                Quantity(Length),
                "\"6 ft\"",
                "for kind hand: the width sprayed while walking",
            ),
        ],
    ),
    once(
        "sprayer.groups",
        "tips that are meant to differ, by a name of your own: \"end tips\" = [1, 12]",
        &[],
    ),
    once("setting", "how it was set; this is what to repeat", SETTING),
    once(
        "look",
        "two minutes around it while it sprays clean water",
        &[
            field("tips_alike", YES_NO, "\"yes\"", "all tips of one kind, size and angle"),
            field("all_spraying", YES_NO, "\"yes\"", "every tip sprays"),
            field("fans_straight", YES_NO, "\"yes\"", "fans straight and clear of one another"),
            field("no_leaks", YES_NO, "\"yes\"", "nothing leaks"),
            field("no_drip_after_5_s", YES_NO, "\"yes\"", "nothing drips five seconds after shutting off"),
            field("gauge_back_to_zero", YES_NO, "\"yes\"", "the gauge goes back to zero"),
            field(
                "strainers_clean",
                YES_NO,
                "\"yes\"",
                "strainers in and clean; shut the tank valve before opening one",
            ),
            field("boom_level", YES_NO, "\"yes\"", "boom level and at its height"),
            field("streaky_tips", Counts, "[4]", "tips whose fan is streaky or to one side"),
            field("dripping_tips", Counts, "[9]", "tips that still drip five seconds after shutting off"),
            field("odd_tips", Counts, "[2]", "tips of another size, kind or colour than the rest"),
            field("foam", YES_NO, "\"no\"", "the cups foam"),
            field(
                "gauge_rests_at",
                Quantity(Pressure),
                "\"0 psi\"",
                "what the gauge shows when nothing runs",
            ),
        ],
    ),
    once(
        "symptoms",
        "what is seen beside the readings, and how checks were answered; evenswath symptom tells the words",
        &[
            field("seen", Words(Symptom::WORDS), "[\"needle_jumps\", \"foam\"]", "what is seen"),
            field("absent", Words(Symptom::WORDS), "[\"knocks\"]", "what was looked for and is not there"),
            field(
                "drive",
                Word(Drive::WORDS),
                "\"shaft\"",
                "what drives the pump: shaft (PTO, engine, belt) or 12_volt",
            ),
            field("air_chamber", Word(AirChamber::WORDS), "\"yes\"", "whether the pump has an air chamber"),
            field("yes", Words(Check::WORDS), "[\"milky_water\"]", "checks answered with yes"),
            field("no", Words(Check::WORDS), "[\"tank_low\"]", "checks answered with no"),
            field("skipped", Words(Check::WORDS), "[\"hose_flat\"]", "checks left out"),
        ],
    ),
    once(
        "spacing",
        "where the tips stand; marks off one stretched tape are better than gaps",
        &[
            field(
                "marks",
                Quantities(Length),
                "[\"0 in\", \"20 in\", \"40 in\"]",
                "what the tape shows at each tip",
            ),
            field("gaps", Quantities(Length), "[\"20 in\", \"20 1/4 in\"]", "or each gap measured by itself"),
            field("tape_marks", Quantity(Length), "\"1/4 in\"", "to which mark the tape was read"),
            field("cannot_move", Counts, "[1]", "tips that cannot be moved"),
            field("limit", Percent, "\"5 %\"", "how far a gap may be off, where not 5 %"),
        ],
    ),
    once(
        "drive",
        "the timed drive, tank half full, on ground like the job's, at speed before the first flag",
        &[
            field("course", Quantity(Length), "\"204 ft\"", "the measured course"),
            field(
                "runs",
                Runs,
                "[{ time = \"27.8 s\", way = \"there\" }, { time = \"28.3 s\", way = \"back\" }]",
                "each run's time; the driver never holds the watch",
            ),
            field("dash", Quantity(Speed), "\"5 mph\"", "what the dash showed"),
        ],
    ),
    once("drive.setting", "where the drive was set otherwise than above", SETTING),
    once(
        "catch",
        "the catch test, parked, all tips spraying",
        &[
            field("time", CatchTime, "\"30 s\"", "how long each cup was held, or \"as driven\""),
            field(
                "cup_marks",
                Marks,
                "\"1 fl oz\"",
                "how far the marks of the cup are apart; the unit of bare numbers",
            ),
            field("cup_holds", Quantity(Volume), "\"32 fl oz\"", "how much the cup holds"),
            field(
                "limit",
                Limit,
                "\"10 %\"",
                "how far a tip may be off the mean, or a named limit as mean-5",
            ),
            field("new_limit", Limit, "\"new-10\"", "how far a tip may be over a new one"),
            field(
                "timer",
                Quantity(Time),
                "\"0.2 s\"",
                "how sharply the watch is started and stopped, where not by hand",
            ),
            field(
                "weighed_density",
                Quantity(Density),
                "\"8.33 lb/gal\"",
                "the liquid's density where cups were weighed",
            ),
            field(
                "new_tip",
                Readings,
                "[\"19\"]",
                "one new tip of the same size, fitted and caught for the purpose",
            ),
            field(
                "doubtful",
                Word(&["refuse", "keep"]),
                "\"refuse\"",
                "readings that cannot be: refuse or keep",
            ),
        ],
    ),
    once("catch.setting", "where the catch was set otherwise than above", SETTING),
    many(
        "catch.round",
        "one go along the boom; rounds never mix",
        &[
            field(
                "after",
                Text,
                "\"as found\"",
                "as found, after cleaning, new tips, pressure changed, swapped, or your own words",
            ),
            field(
                "readings",
                Readings,
                "[14.5, 14.5, [15, 14.5], \"-\"]",
                "one for each tip from the left; a list where it was caught again; \"-\" where not caught",
            ),
            field("tips", Counts, "[7]", "which tips the readings belong to, where not all were caught"),
            field("time", CatchTime, "\"60 s\"", "where it differs from the time above"),
            field(
                "tip_set",
                Text,
                "\"blue\"",
                "where bodies hold several sets of tips: the one turned in; sets are kept apart, the last one counts",
            ),
            field(
                "pressure",
                Quantity(Pressure),
                "\"60 psi\"",
                "after pressure changed: what the gauge showed",
            ),
            field(
                "swapped",
                Counts,
                "[7, 8]",
                "after swapped: the two tips that changed places; readings go by place",
            ),
        ],
    ),
    many(
        "catch.tip_pressure",
        "a pressure read at a tip with a gauge you trust, while all spray as for the cups",
        &[
            field("tip", Count, "5", "at which tip"),
            field("pressure", Quantity(Pressure), "\"38 psi\"", "what that gauge showed"),
            field("marks", Quantity(Pressure), "\"1 psi\"", "how far its marks are apart"),
        ],
    ),
    once(
        "controller",
        "a rate controller: what it shows and what is entered in it",
        &[
            field(
                "shown_flow",
                Quantity(Flow),
                "\"3.4 gal/min\"",
                "the flow it shows while cups are caught, in manual, all sections on",
            ),
            field("shown_speed", Quantity(Speed), "\"5.1 mph\"", "the speed it shows on the timed drive"),
            field("shown_rate", Quantity(VolumePerArea), "\"15 gal/ac\"", "the rate it shows at that speed"),
            field(
                "widths",
                Quantities(Length),
                "[\"80 in\", \"80 in\", \"80 in\"]",
                "the width entered for each section, from the left",
            ),
            field("valves_pulse", YES_NO, "\"no\"", "whether valves at the tips pulse"),
            field(
                "duty",
                Percent,
                "\"100 %\"",
                "the share of the time pulsing valves were open while cups were caught; 100 % is fully open",
            ),
        ],
    ),
    many(
        "controller.closed",
        "one section closed while the others spray, and opened again",
        &[
            field("section", Count, "1", "which, from the left as the driver sits"),
            field("before", Quantity(Pressure), "\"40 psi\"", "the pressure with all sections open"),
            field("closed", Quantity(Pressure), "\"42 psi\"", "the pressure with this one closed"),
            field("after", Quantity(Pressure), "\"40 psi\"", "the pressure once it is open again"),
        ],
    ),
    once(
        "refill",
        "what was used over a measured distance or a known area, to check the rate",
        &[
            field(
                "used",
                Quantity(Volume),
                "\"6.5 gal\"",
                "what it took to fill up again, or the whole tank",
            ),
            field("distance", Quantity(Length), "\"660 ft\"", "over which distance"),
            field("area", Quantity(Area), "\"13.5 ac\"", "or over which area"),
        ],
    ),
    once(
        "target",
        "what is wanted",
        &[
            field("rate", Quantity(VolumePerArea), "\"15 gal/ac\"", "the intended rate"),
            field("within", Percent, "\"5 %\"", "how far off it may be, where not 5 %"),
            field(
                "mixed_for",
                Quantity(VolumePerArea),
                "\"15 gal/ac\"",
                "where the tank is mixed already: for which rate",
            ),
            field("carrier_density", Quantity(Density), "\"10.65 lb/gal\"", "where the carrier is not water"),
        ],
    ),
    many(
        "product",
        "what goes in the tank; the label is the law",
        &[
            field("name", Text, "\"Product A\"", "its name"),
            field(
                "rate",
                ProductRate,
                "\"2 pt/ac\"",
                "its rate: 2 pt/ac, 2 lb/100 gal, 0.25 % v/v, 1.5 lb ai/ac at 4 lb ai/gal",
            ),
            field("label_least", ProductRate, "\"1 pt/ac\"", "the least the label allows"),
            field("label_most", ProductRate, "\"2 pt/ac\"", "the most the label allows"),
            field(
                "label_least_carrier",
                Quantity(VolumePerArea),
                "\"10 gal/ac\"",
                "the least carrier the label allows",
            ),
            field("price", Price, "\"$40/gal\"", "its price, for what the error costs"),
        ],
    ),
    once(
        "job",
        "the work ahead",
        &[
            field("area", Quantity(Area), "\"40 ac\"", "the area to spray"),
            field(
                "area_a_year",
                Quantity(Area),
                "\"300 ac\"",
                "the area sprayed in a year, for what the error costs",
            ),
        ],
    ),
];
