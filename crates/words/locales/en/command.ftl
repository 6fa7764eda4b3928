### The command line: its answers, the page of a visit, what is wrong with what was typed, and its help.

## What stands before a line

line-error = error:
line-note = note:
line-of_batch = line { $number }: { $message }
line-quoted = "{ $text }"
at-tip = tip { $number }
at-gap = gap { $number }
at-mark = mark { $number }
at-standard_input = standard input
at-line_and_column = line { $line }, column { $column }
word-standard_input = standard input

## The answers of single steps

line-amount_and_range = { $amount }, most likely { $range }
line-course = { $length } for { $width }
line-takes = takes { $time } at { $speed }
line-runs_apart = { $runs } runs, { $apart } apart
line-gallon_covers = { $rate }; a gallon covers { $area }
line-litre_covers = { $rate }; a litre covers { $area }
line-width = width: { $why }
line-most_of_doubt = most of the doubt: { $of } (± { $doubt }); to make it smaller, { $smaller }
line-flow = { $flow } at { $pressure }
line-of_this_carrier = of this carrier; water would be { $water } (factor { $factor })
line-differs_from_water = The flow differs from water's by more than 5 %: a calibration with water must be corrected for it (ASTM E549-87, 4.2).
line-gaps_within =
    { $gaps ->
        [one] the gap is within the limit
       *[other] all { $gaps } gaps are within the limit
    }
line-gaps_off =
    { $off ->
        [one] 1 of { $gaps } gaps is off
       *[other] { $off } of { $gaps } gaps are off
    }
line-gaps_open = the tape's marks do not settle it
line-gap = gap { $gap } (tips { $gap } and { $next }): { $size }, { $off } off: { $verdict }
line-loads = { $loads }; a full tank does { $area }
line-no_load = no load
line-one_load = 1 load of { $last }
line-full_loads =
    { $full ->
        [one] 1 full load
       *[other] { $full } full loads
    }
line-full_loads_and_last =
    { $full ->
        [one] 1 full load and a last one of { $last }
       *[other] { $full } full loads and a last one of { $last }
    }
line-the_load = the load: { $volume } of mix for { $area }
line-the_full_load = the full load: { $volume } of mix for { $area }
line-each_full_load = each full load: { $volume } of mix for { $area }
line-last_load = the last load: { $volume } of mix for { $area }
line-measured = { $measure } ({ $sum } by the sum)
line-too_little = { $amount }, too little to measure
line-mean = mean { $mean } over { $time }
line-mean_spread = mean { $mean } over { $time }, spread { $spread }
line-no_tip_runs = no tip runs
line-tip = tip
line-off_the_mean = off the mean
line-most_likely = most likely
line-verdict = verdict
line-plugged = plugged
line-not_caught = not caught
why-makes_surer =
    { $tips ->
        [one] makes 1 tip surer in about { $minutes } min
       *[other] makes { $tips } tips surer in about { $minutes } min
    }
why-settles_open_tips =
    { $tips ->
        [one] { $open } of 1 tip open; the most this settles in about { $minutes } min
       *[other] { $open } of { $tips } tips open; the most this settles in about { $minutes } min
    }
pressure_doubtful-low = At { $pressure } hardly any tip makes a whole fan. Are the numbers and their units right?
pressure_doubtful-high = Hardly any boom sprays at { $pressure }. Are the numbers and their units right?
working-flow_at_pressure = Flow at pressure
formula-flow_rated_flow_pressure_rated_pressure_density_factor = flow = rated flow × √(pressure ÷ rated pressure) ÷ density factor
figure-rated_flow = rated flow
figure-rated_pressure = rated pressure
figure-pressure = pressure
figure-density_factor = density factor
source-orifice_equation_density_factor_density_water_s_univ_of_nebr = orifice equation; density factor √(density ÷ water's), Univ. of Nebraska-Lincoln CropWatch, 2016

## The flows of a boom

line-boom_total = { $flow } in all, with { $gauge } at the gauge
line-boom_pump = { $flow } in all through the tips; the pump gives { $pump } at { $gauge }
line-boom_bypass = back to the tank through the bypass: { $flow }
line-boom_agitation = to agitation: { $flow }
line-boom_to_manifold = { $manifold } at the manifold; { $lost } is lost on the way there
line-boom_section = Section { $number }: { $flow }, { $entry } where the feed meets the hose
line-boom_flow = flow
line-boom_pressure = pressure
line-boom_shut = check valve stays shut
line-boom_lost = lost from the manifold to tip { $tip }, which gets the least: { $parts }
line-boom_lost_feed = { $lost } in the feed with valve and strainer
line-boom_lost_hose = { $lost } in the hose along the boom
line-boom_lost_body = { $lost } in the tip's drop and body
line-boom_lost_check_valve = { $lost } on the check valve
line-boom_lost_height = { $lost } to height
line-boom_gained_height = { $lost } gained downhill
working-boom_flows = Pressure at the tip that gets the least
formula-pressure_at_a_tip_pressure_at_the_manifold_lost_in_feed_hose = pressure at a tip = pressure at the manifold − lost in feed, hose, body, check valve and height
figure-pressure_at_the_manifold = pressure at the manifold
figure-lost_in_the_feed = lost in the feed
figure-lost_in_the_hose = lost in the hose
figure-lost_in_the_body = lost in the body
figure-lost_on_the_check_valve = lost on the check valve
figure-lost_to_height = lost to height

## The page of a visit

page-driven_by_with = driven by { $operator }, with { $with }
page-driven_by = driven by { $operator }
page-with = with { $with }
page-nothing_yet = There is nothing in this visit yet.
page-nothing_yet_do = Fill in what was measured: the drive, the cups, the spacing. Each part tells by itself. `evenswath visit new` writes a file with every field and a word about it.
page-sprayer_known = The sprayer is known; nothing was measured yet.
page-next_by_hand = Next, in any order: time the drive over a measured course ([drive]), catch what comes out ([catch]). The two together tell what it puts out.
page-next_with_boom = Next, in any order: measure the spacing ([spacing]), time the drive over a measured course ([drive]), catch under every tip ([catch]). Drive and cups together tell what it puts out.
page-puts_out = It puts out { $rate }
page-most_likely = most likely { $range }
page-as_found =
    { $tips-count ->
        [one] as found, with tip { $tips } plugged; about { $rate } once it runs as the others do
       *[other] as found, with tips { $tips } plugged; about { $rate } once they run as the others do
    }
page-two_settings = put together from a drive and a catch at different settings
page-wanted = { $wanted } is wanted; it is { $off }: { $close } (the limit is { $limit })
page-just_that = just that
page-under = { $off } under
page-over = { $off } over
page-close_enough = close enough
page-too_far_off = too far off
page-perhaps_close_enough = cannot tell yet whether that is close enough
page-nothing_comes =
    { $tips ->
        [one] Nothing comes out of the tip
       *[other] Nothing comes out of any tip caught
    }
page-drives = It drives { $speed }
page-needs_cups = what it puts out needs the cups too
page-needs_drive = The cups are caught; what it puts out needs a timed drive too.
page-gaps_within =
    { $gaps ->
        [one] The gap is in order
       *[other] All { $gaps } gaps are in order
    }
page-gaps_off =
    { $off ->
        [one] One of { $gaps } gaps is off
       *[other] { $off } of { $gaps } gaps are off
    }
page-gaps_open = Whether every gap is in order cannot be told yet
page-full_tank = A full tank of { $volume } does { $area }
page-full_tank_range = A full tank of { $volume } does { $area } (most likely { $range })
page-treated_acres = { $number } treated acres
page-treated_hectares = { $number } treated hectares
page-in_it = in it: { $amount } of { $product }
page-in_it_too_little = in it: { $amount } of { $product }, too little to measure
page-job_ahead = the job ahead: { $loads }
page-last_with = { $volume } with { $products }
page-product = { $measure } { $product }
page-product_too_little = { $product } too little to measure
page-what_to_do = What to do
page-the_cups = The cups
page-from_the_left = from the left as you sit
page-tip = tip
page-cup = cup
page-signs = ^ too much   v too little   x plugged   ? cannot be told from this cup   - not caught
page-of_tips = tips { $tips }
page-mean = mean { $mean }
page-mean_spread = mean { $mean }, spread { $spread }
page-same_again = To get the same again
page-gear = gear { $as }
page-engine = engine { $as }
page-pto = PTO { $as }
page-boom_height = tips { $as } over what is sprayed
page-agitation = agitation { $as }
page-sections_on = sections on: { $as }
page-controller = controller { $as }
page-tank = tank { $as }
page-speed =
    { $runs ->
        [one] { $speed } ({ $time } over the course, 1 run)
       *[other] { $speed } ({ $time } over the course, { $runs } runs)
    }
page-catch_again = Catch again when tips, speed, pressure or product change, and next spring.
page-good_to_know = Good to know
page-take_care = Take care: the label is the law. Clean water only for a check; gloves and eye protection; brake on, nobody near the shaft; never a tip to the mouth. Local rules and licensed people decide.

## What is wrong with an input

not_positive = "{ $given }" must be more than nothing
    .do = { $kind } above nothing is needed: { $would_do }
no_runs = no run is timed
    .do = give --time "27.8 s" for each run, or --there and --back
no_pressure = no pressure is given
    .do = give --pressure or --flow
no_tip = no tip is given
    .do = give --rated or --size
pressure_beyond-flow = "{ $given }" takes { $takes } through this tip; at most { $most } can be
    .do = look at the number and its unit; 0.30 gal/min and 40 psi are usual for a tip
pressure_beyond-pressure = "{ $given }" is more than any sprayer has; at most { $most } can be
    .do = look at the number and its unit; 0.30 gal/min and 40 psi are usual for a tip
boom_nothing_flows = no tip of this boom runs: each is plugged, or its check valve stays shut
    .do = give at least one tip its flow, as "0.30 gal/min @ 40 psi", and a pressure that opens its check valve
boom_impossible = the hoses, tips and supply of this boom cannot be together
    .do = look at lengths, bores and flows again; one of them is far from what a boom has
boom_no_rest = the pressures of this boom did not come to rest
    .do = please send us the file; this should not happen
hand_needs_flow = a hand sprayer's rate needs --flow and --speed
    .do = or give --used and --area for a sprayed plot
two_widths-width = --width is not used for this kind of rate
    .do = give --row alone: a row's tips serve the row spacing
two_widths-row = --row is not used for this kind of rate
    .do = for a band add --kind band; for several tips to a row leave --width out
used_over_what = --used needs the ground it was used on
    .do = give --area, or --distance with --swath
missing_option = { $option } is missing
    .do = see evenswath rate --help for what goes together
order_count = tip { $tip } is named { $named } times, but was caught { $caught } times
    .do = name each tip once for each of its readings, in the order they were caught, as 1,2,3,1
order_no_such_tip = there is no tip { $tip }; there are { $tips }
    .do = tips are numbered from the left from 1
doubt_too_large = "{ $given }" is more than a reading can bear
    .do = give a standard uncertainty below 50 %, as 1 %
step_of_scale = "{ $given }" cannot be read on marks of "{ $marks }"
    .do = give the step of the scale, as 2 g
keep_doubtful-option = look at the reading, its unit and the time; if it is right, add --keep-doubtful
keep_doubtful-field = look at the reading, its unit and the time; if it is right, write doubtful = "keep" under [catch]
not_json = this line is not JSON: { $detail }
    .do = write one object on each line
not_an_object = this line is not an object
    .do = write one object on each line
unknown_field = there is no field "{ $field }"
    .do = fields that would do: { $known }
no_readings = readings: a list is needed
    .do = write "readings": ["14 fl oz", null]
missing_field = { $field } is missing
    .do = write "{ $field }": "{ $example }"
wrong_kind-risk = { $given } will not do
    .do = a number is needed, as 0.05
wrong_kind-reading_field = { $given } will not do
    .do = a reading has reading, time and step
wrong_kind-reading = { $given } will not do
    .do = write a reading as "14 fl oz", or null where it was not caught
wrong_kind-text = { $given } will not do
    .do = write it in quotes with its unit
wrong_kind-order = { $given } will not do
    .do = write the tips in the order they were caught, as [1, 2, 3, 1]
more_mistakes = and { $more } more
cannot_read-missing = { $file } cannot be read: { $detail }
    .do = there is no such file; look at the name and the folder
cannot_read-forbidden = { $file } cannot be read: { $detail }
    .do = this file may not be read by you
cannot_read-other = { $file } cannot be read: { $detail }
    .do = is it a file that can be read?
cannot_read-first_line = line { $line } of { $file } cannot be read: { $detail }
    .do = is it a file that can be read?
cannot_read-line = line { $line } of { $file } cannot be read: { $detail }
    .do = the lines before this were answered
cannot_read-unwritten = the answer cannot be written: { $detail }
    .do = is there room where it goes?
schema = the schema is not JSON: { $detail }
fault_of_ours = this is a fault of ours: { $what }
fault_of_ours_do = nothing was worked out; please report it with what you typed

## What was typed and cannot be read

mistyped-unknown_option = there is no option { $option } here
mistyped-no_value = { $option } needs a value
mistyped-value = "{ $value }" will not do for { $option }
mistyped-missing = missing: { $option }
mistyped-no_command = a command is missing
mistyped-unknown_command = there is no command "{ $command }"
mistyped-twice = { $option } can be given only once
mistyped-not_together = { $option } does not go together with { $before }
mistyped-too_few = { $option } needs more values
mistyped-takes_no_value = { $option } takes no value
mistyped-other = what was typed cannot be read
mistyped-would_do = words that would do: { $text }
mistyped-meant = perhaps { $text } was meant
mistyped-more = For more, add --help.
mistyped_value-risk = more than 0 and less than 0.5 is needed, as 0.05
mistyped_value-tips_per_row = a whole number from 1 to 1000 is needed
mistyped_value-fixed = tips by number are needed, as 1,12
mistyped_value-order = tips by number are needed, as 1,2,3,1

## The frame of help

frame-usage = Usage:
frame-options_heading = Options:
frame-commands_heading = Commands:
frame-arguments_heading = Arguments:
frame-options = [OPTIONS]
frame-command_or_none = [COMMAND]
frame-command = <COMMAND>
frame-values = Possible values:
frame-values_in_line = [possible values:
frame-default = [default:
frame-print_short = Print help (see a summary with '-h')
frame-print_long = Print help (see more with '--help')
frame-print_help = Print help
frame-print_version = Print version
frame-help_on_help = Print this message or the help of the given subcommand(s)

## What each command and option is

help-evenswath = Calibrate a boom sprayer: readings in, what it puts out, what to fix and what goes in the tank out
help-evenswath-after =
    Examples:
      evenswath course --width "20 in"
      evenswath rate --catch "15 fl oz" --course "204 ft" --width "20 in"
      evenswath visit new > my-visit.toml
      evenswath visit check my-visit.toml

    Quantities carry their unit: "20 in", "50.8 cm", "16 ft 8 in", "0.30 gal/min @ 40 psi", "14 fl oz",
    "1:05". gal, qt, pt and fl oz are US; imperial ones are "imp gal". The decimal mark is a point.

    Exit status: 0 computed, 1 with --strict when a verdict is outside, 2 the input is at fault,
    3 something could not be read or kept, 70 a fault of ours.

    The label is the law. Where this and the label or a local rule differ, they decide.
help-evenswath-json = Print one JSON object (one for each line with --batch) and nothing else on standard output
help-for_every_command = For every command
help-evenswath-units = Units of the answer; inputs may be in any unit and must carry it
help-evenswath-units-us = gal/ac, mph, psi
help-evenswath-units-metric = L/ha, km/h, bar
value-UNITS = UNITS
help-evenswath-lang = Language of the words; names, codes and JSON keys are the same in every language
help-evenswath-lang-en = English
help-evenswath-lang-es = Spanish
value-LANG = LANG
help-evenswath-numbers = How decimals are written for people; what is typed, and JSON, has a point
help-evenswath-numbers-point = 14.6
help-evenswath-numbers-comma = 14,6
value-NUMBERS = NUMBERS
help-evenswath-paper = Paper that sheets are made for
help-evenswath-paper-letter = 8.5 by 11 in
help-evenswath-paper-a4 = 210 by 297 mm
value-PAPER = PAPER
help-evenswath-strict = Exit with status 1 when a verdict is "outside"
help-evenswath-why = Show how each number was reached: the formula, the figures put in, the source
help-course = The length to drive so that a cup shows the rate
help-course-after =
    Examples:
      evenswath course --width "20 in"                    204 ft: fl oz from one tip = gal/ac
      evenswath course --width "50 cm" --units metric     100 m: mL from one tip / 5 = L/ha
      evenswath course --width "30 ft" --boomless         for a cluster's whole catch
help-course-width = Width one catch stands for: tip spacing, row spacing, band, or the whole swath
value-LENGTH = LENGTH
help-course-boomless = A boomless or cluster tip, caught whole over its effective swath
help-course-speed = Speed to be driven, to see how long the course takes
value-SPEED = SPEED
help-speed = Speed from timed runs over a measured course
help-speed-after =
    Examples:
      evenswath speed --distance "204 ft" --time "27.8 s" --time "28.3 s" --dash "5.2 mph"
      evenswath speed --distance "204 ft" --there "27.8 s" --back "28.9 s"
help-speed-distance = Length of the measured course
help-speed-time = Time of a run; give one for each run
value-TIME = TIME
help-speed-there = Time of a run one way
help-speed-back = Time of a run the other way
help-speed-dash = What the dash showed
help-speed-timer = How sharply the watch is started, and again stopped
help-rate = Application rate from what was measured
help-rate-after =
    Examples:
      evenswath rate --flow "0.30 gal/min" --speed "5 mph" --width "20 in"
      evenswath rate --flow "0.30 gal/min +- 2 %" --speed "5 mph +- 0.1 mph" --width "20 in"
      evenswath rate --catch "15 fl oz" --course "204 ft" --width "20 in"
      evenswath rate --used "6.5 gal" --distance "660 ft" --swath "21 ft 8 in"
      evenswath rate --used "200 gal" --area "13.5 ac"
      evenswath rate --flow "0.9 gal/min" --speed "4 mph" --row "30 in" --tips-per-row 3
      evenswath rate --kind band --flow "0.30 gal/min" --speed "5 mph" --width "10 in" --row "30 in"
help-rate-flow = Flow of one tip, of a row's tips, of a cluster or of the whole boom
value-FLOW = FLOW
help-rate-speed = Speed over the ground
help-rate-width = Width the flow or catch stands for
help-rate-kind = What that width is
help-rate-kind-broadcast = One tip's flow over the tip spacing, or the whole boom's over its swath
help-rate-kind-band = One tip's flow over the width of its band
help-rate-kind-directed = Several tips to a row: the row's flow over the row spacing
help-rate-kind-boomless = The whole cluster's flow over its effective swath
help-rate-kind-hand = A hand wand or backpack: its flow over the width sprayed while walking
value-KIND = KIND
help-rate-row = Row spacing, for directed tips
help-rate-tips_per_row = Tips directed at a row, where the flow is one tip's
value-COUNT = COUNT
help-rate-catch = What one tip gave over the time of driving the course
value-VOLUME = VOLUME
help-rate-course = Length of the course
help-rate-used = What it took to fill up again
help-rate-distance = Distance over which it was used
help-rate-swath = Swath: tips times spacing, not the boom's length
help-rate-area = Area over which it was used
value-AREA = AREA
help-flow = Flow of a tip at a pressure, with water or a heavier carrier
help-flow-after =
    Examples:
      evenswath flow --size 03 --pressure "30 psi"
      evenswath flow --rated "0.30 gal/min @ 40 psi" --pressure "30 psi" --density "10.65 lb/gal"
      evenswath flow --size 03 --flow "0.26 gal/min"       the pressure that gives a flow
help-flow-rated = Rated flow of water at a pressure
value-FLOW_PRESSURE = FLOW @ PRESSURE
help-flow-size = ISO 10625 size printed on the tip
value-SIZE = SIZE
help-flow-pressure = Pressure at the tip
value-PRESSURE = PRESSURE
help-flow-flow = A flow of the liquid, to get the pressure that gives it
help-flow-density = Density of the carrier, where it is not water
value-DENSITY = DENSITY
help-spacing = Whether the tips stand evenly, and the fewest to move
help-spacing-after =
    Examples:
      evenswath spacing --intended "20 in" --marks "0 in" "20 in" "41.5 in" "60 in" "80 in"
      evenswath spacing --intended "20 in" "20 in" "21.5 in" "18.5 in"
    Marks read off one stretched tape are better than gaps: their errors do not add up.
help-spacing-intended = How far apart the tips are meant to stand
help-spacing-gaps = Gaps between neighbours, from the left as the driver sits
value-GAP = GAP
help-spacing-marks = What one stretched tape shows at each tip, from the left
value-MARK = MARK
help-spacing-step = How far the marks of the tape are apart
help-spacing-limit = How far a gap may be off
value-PERCENT = PERCENT
help-spacing-fixed = Tips that cannot be moved, as 1,12
value-TIPS = TIPS
help-catch = Catch test: how evenly the tips put out, and which to mend
help-catch-after =
    Examples:
      evenswath catch --time "30 s" --step "1 fl oz" 14 14.5 15 13 14.5 - 17
      evenswath catch --time "30 s" --step "10 mL" --limit mean-5 \
          --rated "0.30 gal/min @ 40 psi" --pressure "30 psi" 490 500 480
      evenswath catch --batch readings.jsonl --json
    Readings go from the left as the driver sits: 14+14.5 where a tip was caught again, - where it
    was not caught. A line of a batch:
    { "  {" }"time": "30 s", "step": "1 fl oz", "limit": "10 %", "readings": ["14 fl oz", null]{ "}" }
help-catch-readings = Readings, one for each tip from the left; a bare number takes the unit of --step
value-READING = READING
help-catch-time = How long each cup was held
help-catch-step = How far the marks of the cup are apart
help-catch-limit = How far a tip may be off: a percentage of the mean, or a named limit (mean-5, mean-10, new-10, new-over-10, inspection-10-15); 10 % where left out
value-LIMIT = LIMIT
help-catch-rated = Flow of a new tip at a pressure, to hold each tip against
help-catch-pressure = Pressure at the tips, where it is not the rated one
help-catch-cup_holds = How much the cup holds
help-catch-timer = How sharply the watch is started, and again stopped (standard uncertainty); 0.2 s where left out
help-catch-cup_scale = How well the cup's scale is known (standard uncertainty); 1 % where left out
help-catch-watch = How well the watch runs (standard uncertainty); 0.1 % where left out
help-catch-handling = How well one cup is handled: foam, tilt, a wet cup (standard uncertainty); 0.5 % where left out
help-catch-risk = Risk of a wrong verdict that is taken; 0.05 where left out
value-RISK = RISK
help-catch-order = Tips in the order they were caught, as 1,2,3,1 where tip 1 was caught again at the end; shows a drift
help-catch-density = Density of the liquid where cups were weighed; water where left out
help-catch-keep_doubtful = Keep readings that cannot be, with a word about each
help-catch-batch = A file of JSON lines, one catch test each; - for standard input
value-FILE = FILE
help-load = Loads and product for an area
help-load-after =
    Examples:
      evenswath load --area "25 ac" --rate "20 gal/ac" --tank "500 gal" --product "Product A: 3 pt/ac"
      evenswath load --area "40 ac" --rate "14.6 gal/ac" --tank "200 gal" \
          --product "Product A: 2 pt/ac" --product "Adjuvant: 0.25 % v/v"
    Use the rate the sprayer was measured at: mix for what it puts out.
help-load-area = Area to spray
help-load-rate = Application rate
value-RATE = RATE
help-load-tank = What the tank holds
help-load-product = NAME: RATE, as "Product A: 3 pt/ac", "2 pt/100 gal", "0.25 % v/v", "1.5 lb ai/ac at 4 lb ai/gal"
value-NAME_RATE = NAME: RATE
help-boom = Pressure and flow at every tip, from the boom's hoses, valves and bodies
help-boom-after =
    Examples:
      evenswath boom my-boom.toml
      evenswath boom my-boom.toml --json --units metric
help-boom-file = The file of the boom's hoses, bodies and tips; - for standard input
help-visit = A whole visit from a file
help-visit-after =
    Examples:
      evenswath visit new > my-visit.toml
      evenswath visit check my-visit.toml
help-visit_check = Work out everything that the file has readings for
help-visit_check-after =
    Examples:
      evenswath visit check my-visit.toml
      evenswath visit check my-visit.toml --json --units metric
      evenswath visit check my-visit.toml --sheet my-visit.html
help-visit_check-file = The visit file; - for standard input
help-visit_new = Print a commented visit file to fill in
help-visit_new-after =
    Example:
      evenswath visit new > my-visit.toml
help-visit_schema = Print the JSON Schema of the visit file
help-visit_schema-after =
    Example:
      evenswath visit schema > visit.schema.json
help-completions = Print completions for a shell
help-completions-after =
    Example:
      evenswath completions bash > evenswath.bash
help-completions-shell = The shell
value-SHELL = SHELL

## Symptoms

line-symptoms = What is seen
line-symptoms_how = Give the words of what is seen, as in `evenswath symptom needle_jumps foam`. With --json the whole table: causes, checks, and where each row is from.
line-symptoms_seen = Seen: { $seen }.
line-symptom_cause = { $cause }: { $how } ({ $chance })
line-symptom_next = Look at next ({ $minutes } min)
line-symptom_answer = Answer by adding `--yes { $check }` or `--no { $check }`; `--skip { $check }` leaves it out.
line-symptom_remedy = What puts it right
line-symptom_stop = No further
symptom_word = "{ $given }" is not one of the words here
    .do = words that would do: { $words }
help-symptom = What is seen beside the readings: what brings it, and the next check
help-symptom-after =
    Examples:
      evenswath symptom                                        the symptoms and their words
      evenswath symptom needle_jumps foam --drive shaft        causes, the likeliest first, and the next check
      evenswath symptom needle_jumps foam --drive shaft --no tank_low --yes milky_water
      evenswath symptom --json                                 the whole table as data
help-symptom-seen = What is seen, by its word; none lists the words
value-SYMPTOM = SYMPTOM
help-symptom-absent = A symptom that was looked for and is not there; give it once for each
help-symptom-drive = What drives the pump: shaft (PTO, engine, belt) or 12_volt
value-DRIVE = DRIVE
help-symptom-control = What holds the pressure: by_hand (a regulator) or controller
value-CONTROL = CONTROL
help-symptom-air_chamber = Whether the pump has an air chamber: yes or no
value-YES_NO = YES_NO
help-symptom-pressure = The pressure that is sprayed at, which decides how far the needle may swing
help-symptom-yes = A check whose question is answered with yes; give it once for each
value-CHECK = CHECK
help-symptom-no = A check whose question is answered with no
help-symptom-skip = A check that is not wanted
