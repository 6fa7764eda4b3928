### A whole visit: the look, the setting, what was done since, what a boom with plugged tips gives, the visit's file.

## The look: what is looked at, as a statement to tick

look-tips_alike = all tips alike
look-all_spraying = every tip sprays
look-fans_straight = fans straight and clear of one another
look-no_leaks = no leaks
look-no_drip_after_5_s = no drip five seconds after shutting off
look-gauge_back_to_zero = gauge goes back to zero
look-strainers_clean = strainers in and clean
look-boom_level = boom level and at its height

look_tips_differ = The tips are not all of one kind, size and angle.
    .do = Fit one kind, size and angle all along before you catch; tips meant to differ go in a group of their own.
look_not_all_spraying = Not every tip sprays.
    .do = Pressure off. Clean that tip and its strainer with a soft brush or air, never the mouth; look at its valve.
look_fans_crooked = Some fans are crooked, streaky or hit one another.
    .do = Turn the tips straight in their bodies, a few degrees off the boom's line; clean or replace streaky ones.
look_leaks = Something leaks.
    .do = Pressure off, then tighten or replace it before product goes in the tank.
look_drips = Tips still drip five seconds after shutting off.
    .do = Clean or replace the check valves of those bodies.
look_gauge_off_zero = The gauge does not go back to zero.
    .do = Replace the gauge; pressures read on it are doubtful.
look_strainers = Strainers are missing or dirty.
    .do = Shut the tank valve and let the pressure off, then open, clean or replace them; wear gloves and eye protection.
look_boom_not_level = The boom is not level, or not at its height.
    .do = Set it level at the height the tips are made for; keep everybody out of the fold zone.

## The part of the visit an action belongs to

place-look = look
place-symptoms = symptoms
place-controller = controller
place-spacing = spacing
place-tips = tips
place-pattern = pattern across the boom
place-drive = drive
place-setting = setting
place-rate = rate
place-change = change
place-tank = tank
place-cost = cost
place-these_tips =
    { $tips-count ->
        [one] tip { $tips }
       *[other] tips { $tips }
    }

## The setting

# Where the pressure is read.
read_at-pump = at the pump
read_at-manifold = at the manifold
read_at-boom = at the boom
read_at-tip = at the tip
read_at-cab = in the cab

# The few usual answers; where several things may be on, $of-code says which: agitation or controller.
setting-on = on
setting-off = off
setting-all = all
setting-none = none
setting-manual = manual
setting-in_manual = in manual
setting-auto = auto
setting-automatic = automatic
setting-in_automatic = in automatic
setting-full = full
setting-half_full = half full
setting-a_quarter_full = a quarter full
setting-empty = empty

word-agitation_on = on
word-agitation_off = off
word-sections_on_all = all
word-sections_on_none = none
word-controller_on = on
word-controller_off = off
word-controller_manual = manual
word-controller_in_manual = in manual
word-controller_auto = auto
word-controller_automatic = automatic
word-controller_in_automatic = in automatic
word-water_full = full
word-water_half_full = half full
word-water_quarter_full = a quarter full
word-water_empty = empty

settings_differ = Drive and catch were made at different settings: { $differences }.
    .do = Do one of them again at the other's setting.
phrase-pressure_differs = pressure { $drive } on the drive and { $catch } at the catch
phrase-engine_speed_differs = engine speed { $drive } on the drive and { $catch } at the catch
phrase-pto_speed_differs = PTO speed { $drive } on the drive and { $catch } at the catch
phrase-agitation_differs = agitation { $drive } on the drive and { $catch } at the catch
phrase-sections_on_differ = sections on { $drive } on the drive and { $catch } at the catch

catch_in_automatic = The controller was "{ $controller }" at the catch. Parked and in automatic it holds no rate, so the cups may say nothing.
    .do = Put it in manual at the job's pressure, and catch again.

## Tips that were caught again

# What was done before a round of cups.
word-round_as_found = as found
word-round_after_cleaning = after cleaning
word-round_new_tips = new tips
word-round_pressure_changed = pressure changed
word-round_swapped = tips swapped

tip_still_off = Tip { $tip }, { $after }: { $now } in { $time }, still { $off } off the mean of { $mean }. Before it gave { $old }.
    .do = Replace it with a new one of the same kind and size, and catch it again.
tip_caught_again = Tip { $tip }, { $after }: { $now } in { $time }. Before it gave { $old }; the mean was { $mean }.
tip_high-since = Tip { $tip } put out { $off } more than the mean of the tips ({ $low } to { $high } more) when the whole boom was caught.
tip_low-since = Tip { $tip } put out { $off } less than the mean of the tips ({ $low } to { $high } less) when the whole boom was caught.
tips_plugged-since = Plugged when the whole boom was caught, and caught again since: { $tips }.
tips_worn-since = Worn when the whole boom was caught, and caught again since: { $tips }.
tips_cannot_tell-since = Not settled when the whole boom was caught, and caught again since: { $tips }.

weighed_as_water = The weighed cups are taken as clean water. Where they held something else, give weighed_density.
spacing_other_count = The spacing was measured for { $measured } tips, but the boom has { $boom }.

## What the boom puts out

rate_with_plugged =
    { $tips-count ->
        [one] The rate is as found, with tip { $tips } plugged. Once it runs as the others do, it will be about { $cleaned }.
       *[other] The rate is as found, with tips { $tips } plugged. Once they run as the others do, it will be about { $cleaned }.
    }
rate_with_uncaught =
    { $tips-count ->
        [one] For the rate tip { $tips } is taken to give what the others do.
       *[other] For the rate the tips that were not caught are taken to give what the others do.
    }
tank_with_plugged =
    { $tips-count ->
        [one] What a tank does and takes is worked out with tip { $tips } plugged.
       *[other] What a tank does and takes is worked out with tips { $tips } plugged.
    }
    .do = Clean first, then catch again before you mix.
rate_methods_disagree = The catch says { $catch } and the refill { $refill }; they do not agree.
    .do = Look at the speed, the swath and the gallons filled up; one of them is wrong. Drive and fill again.
rate_on_bands = This is the rate on the bands, which are { $share } of the ground; over the whole field it is { $crop }. The acres of a tank are treated acres.
rate_of_two_settings = This rate puts together a drive and a catch that were made at different settings.
rate_before_repair = The rate is from the cups { $round }; single tips were caught again since.
    .do = Catch the whole boom again to know what it puts out now.
rate_of_carrier = With water it puts out { $water }; of this carrier, { $density }, it will put out { $rate }.
product_mixed_for_other_rate = The tank is mixed for { $mixed_for }, so { $name } goes on at { $rate }; { $meant } was meant.

## What is told of the wanted rate and the label, with other things to do: tips are plugged, or the rate is from a refill

rate_outside-plugged = { rate_outside }
    .do = Do not mix for a boom with plugged tips: clean them first, then catch again.
rate_cannot_tell-plugged = { rate_cannot_tell }
    .do = Do not mix for a boom with plugged tips: clean them first, then catch again.
product_under_least-plugged = { product_under_least }
    .do = Do not mix for a boom with plugged tips: clean them first, then catch again.
product_may_be_under_least-plugged = { product_may_be_under_least }
    .do = Do not mix for a boom with plugged tips: clean them first, then catch again.
product_may_be_over_label-plugged = { product_may_be_over_label-by_ground }
    .do = Do not mix for a boom with plugged tips: clean them first, then catch again.
carrier_under_label-plugged = { carrier_under_label }
    .do = Do not mix for a boom with plugged tips: clean them first, then catch again.
carrier_may_be_under_label-plugged = { carrier_may_be_under_label }
    .do = Do not mix for a boom with plugged tips: clean them first, then catch again.

rate_cannot_tell-refilled = { rate_cannot_tell }
    .do = Mix the tank for { $rate }; use up more before filling again to know better.
product_may_be_over_label-refilled = { product_may_be_over_label-by_ground }
    .do = To be sure, work the load out for { $mix_for }; or use up more before filling again to know better.
product_may_be_over_label-refilled_weaker = { product_may_be_over_label-by_ground }
    .do = To be sure, make it a little weaker; or use up more before filling again to know better.
product_may_be_under_least-refilled = { product_may_be_under_least }
    .do = Mix the tank for the rate the sprayer really puts out; use up more before filling again to know better.
carrier_may_be_under_label-refilled = { carrier_may_be_under_label }
    .do = Use up more before filling again to know the rate better, or put out a little more.

## Facts that are needed and not there

catch_as_driven_without_drive = "as driven" needs a timed drive
    .do = give [drive] with its runs, or the time of the catch
catch_no_such_tip = there is no tip { $tip }; the boom has { $tips }
    .do = give one reading for each tip of the boom, "-" where it was not caught
refill_without_swath = the swath is not known
    .do = give [sprayer] with tips and spacing, or the area instead of the distance
spacing_without_boom = the intended spacing is not known
    .do = give [sprayer] with tips and spacing

## Mistakes in a visit's file. Names of parts and fields are those of the file, in every language.

file_place = line { $line }, column { $column }
file_too_large = the file has more than { $largest } bytes, which is more than a visit can need
    .do = is this the right file? `evenswath visit new` writes one to fill in
file_not_text = the file is not UTF-8 text
    .do = save it as plain text in UTF-8; a spreadsheet or word processor file will not do
file_not_toml = this cannot be read as TOML: { $detail }
    .do = a line is name = "value"; put quantities in quotes, as spacing = "20 in"
file_not_toml-twice = this name stands a second time
    .do = write each field and each [part] once; rounds and products begin with [[ ]]
file_unknown_field-part = there is no part of this name
    .do = parts that would do: { $known }
file_unknown_field-field = there is no field of this name
    .do = fields that would do: { $known }
file_unknown_field-run = a run has no "{ $name }"
    .do = a run has time and way
file_unknown_field-reading = a reading has no "{ $name }"
    .do = it has { $known }
file_wrong_kind-part = a part of its own is needed, but { $found } stands here
    .do = begin it with a line { $header }
file_wrong_kind-parts = a list of parts is needed, but { $found } stands here
    .do = begin each with a line { $header }
file_wrong_kind-text = a text in quotes is needed, but { $found } stands here
    .do = write it as { $name } = "value"
file_wrong_kind-list = a list is needed, but { $found } stands here
    .do = write it as { $name } = ["first", "second"]
file_wrong_kind-run = a time in each run is needed, but { $found } stands here
    .do = write it as { "{" } time = "27.8 s", way = "there" { "}" }
file_wrong_kind-reading = a reading is needed, but { $found } stands here
    .do = write it as { "{" } reading = "30 fl oz", time = "60 s" { "}" }
word-found_text = a text
word-found_number = a number
word-found_true_or_false = true or false
word-found_day = a day or a time of day
word-found_list = a list
word-found_fields = a { "{" } { "}" } with fields of its own
file_not_a_day = "{ $given }" is not a day
    .do = write it as 2027-04-14
file_not_positive = "{ $given }" must be more than nothing
    .do = { $kind } above nothing is needed
word-dimension_length = a length
word-dimension_area = an area
word-dimension_volume = a volume
word-dimension_mass = a weight
word-dimension_time = a time
word-dimension_speed = a speed
word-dimension_flow = a flow
word-dimension_pressure = a pressure
word-dimension_density = a density
word-dimension_volume_per_area = a volume on an area
word-dimension_mass_per_area = a weight on an area
word-dimension_work_rate = an area in a time
word-dimension_angle = an angle
word-dimension_ratio = a share
file_not_a_count = "{ $given }" is not a count
    .do = write a whole number from 1
file_share = "{ $given }" must be more than 0 % and at most 100 %
    .do = write it as "5 %"
file_word = "{ $given }" is not one of the words here
    .do = words that would do: { $words }
file_word-way = this is not a way of driving
    .do = write "there" or "back"
file_missing_field = this field is missing
    .do = { $wanted }
file_value-empty = nothing was given
    .do = { $wanted }
phrase-wanted_round = the readings, under a line [[catch.round]]
phrase-wanted_closed_section = which section, as section = 1
phrase-wanted_pressure_before = the pressure with all sections open, as before = "40 psi"
phrase-wanted_pressure_closed = the pressure with that section closed, as closed = "42 psi"
phrase-wanted_catch_time = how long each cup was held, as time = "30 s", or time = "as driven"
phrase-wanted_tip_pressure = which tip and what was read there, as tip = 5 and pressure = "38 psi"
phrase-wanted_readings = a reading for each tip, as readings = [14.5, 14, "-"]
phrase-wanted_marks = what the tape shows at each tip, as marks = ["0 in", "20 in"]
phrase-wanted_gaps = each gap, as gaps = ["20 in", "20 1/4 in"]
phrase-wanted_course = the measured course, as course = "204 ft"
phrase-wanted_runs = each run's time, as runs = ["27.8 s", "28.3 s"]
phrase-wanted_used = what it took to fill up again, as used = "6.5 gal"
phrase-wanted_used_over = over which distance or area, as distance = "660 ft" or area = "13.5 ac"
phrase-wanted_spacing = how far the tips stand apart, as spacing = "20 in"
phrase-wanted_row_spacing = how far the rows stand apart, as row_spacing = "30 in"
phrase-wanted_tips = how many tips there are, as tips = 12, or sections = [4, 4, 4]
phrase-wanted_sections = how many tips each section has, as sections = [4, 4, 4]
phrase-wanted_band_width = the width of a band, as band_width = "12 in"
phrase-wanted_tips_per_row = how many tips are directed at a row, as tips_per_row = 3
phrase-wanted_overlap = the share of the wetted width covered again by the next pass, as overlap = "15 %"
phrase-wanted_effective_swath = the width from pass to pass, as effective_swath = "30 ft"; it is less than what is wetted
phrase-wanted_target_rate = the intended rate, as rate = "15 gal/ac"
phrase-wanted_product_name = what it is called, as name = "Product A"
phrase-wanted_product_rate = its rate, as rate = "2 pt/ac"
file_value-marks_and_gaps = both marks and gaps are given
    .do = give the marks of one stretched tape, or the gaps
file_value-distance_and_area = both distance and area are given
    .do = give one of them
file_value-tip_size_and_rated = both tip_size and rated are given
    .do = give one of them
file_value-tips_and_sections = { $tips } tips, but the sections hold { $total }
    .do = give tips or sections, or make them agree
file_value-too_many_rounds = { $rounds } rounds are more than a day has
    .do = at most { $most } rounds; a visit is one sprayer on one day
file_value-no_readings = there are no readings
    .do = give a reading for each tip, "-" where not caught
file_value-tips_and_readings = { $named } named, but { $given } readings given
    .do = give one reading for each tip named
file_value-swapped_tips = a swap has two tips
    .do = name the two tips that changed places, as [7, 8]; one round for each swap
file_value-tip_twice = tip { $tip } is named twice
    .do = name each tip once; give its readings as a list
file_other_kind = this belongs to { $theirs }; { $this }
    .do = take it out, or write kind = "{ $kind }"
phrase-of_kind = kind { $kind }
phrase-of_kinds = kinds { $before } and { $last }
phrase-this_kind = this sprayer is kind = "{ $kind }"
phrase-no_kind = without a kind a sprayer is a boom

## Mistakes in a boom's file

file_viscosity = "{ $given }" is no kinematic viscosity that these sums are for
    .do = write it as "1.3 cSt"; from 0.1 to 100 cSt will do, and water has about 1
file_minor_loss = "{ $given }" is no loss coefficient K
    .do = write a number without a unit from 0 up, as { $name } = 2
file_value-too_many_tips = { $tips } tips are more than a boom has
    .do = at most { $most } tips
file_value-bore = "{ $given }" is no bore of a hose
    .do = give its inner diameter, from 1 mm to 300 mm
file_value-height = no part of a boom is "{ $given }" above or below its gauge
    .do = give how much higher it is, as "0.5 m", or lower, as "-0.5 m"
file_value-supply_twice = the boom is fed in several ways: { $ways }
    .do = give one of them
file_value-pump_rises = the pump's pressure does not fall as it gives more
    .do = the pressure of curve_point must be below pressure_at_no_flow
file_value-pressure = no sprayer reaches "{ $given }"
    .do = at most 1000 psi (about 69 bar) is taken
file_value-fed_twice = both enters_between and feeds_at are given
    .do = give one of them
file_value-enters_between = the feed cannot meet the hose there: the section's last tip is number { $tips }
    .do = give two neighbours among its tips, as enters_between = [3, 4], or feeds_at = 1
file_value-feeds_at = there is no tip { $tip } in this section of { $tips }
    .do = give one of its tips, counted from the left of the section
file_value-heights_twice = both { $first } and { $second } are given
    .do = give one of them
file_value-heights_and_tips = the heights ({ $heights }) and the tips ({ $tips }) differ in number
    .do = give a height for each tip, or left_height and right_height
phrase-wanted_supply_part = what feeds the boom, under a line [supply]
phrase-wanted_section_part = the boom's sections, each under a line [[section]]
phrase-wanted_supply = what holds the flow, as gauge_pressure = "40 psi", total_flow = "6 gal/min", or a part [supply.pump]
phrase-wanted_hose_bore = the hose's inner diameter, as hose_bore = "1 in"
phrase-wanted_at_no_flow = the pump's pressure with nothing flowing, as pressure_at_no_flow = "100 psi"
phrase-wanted_curve_point = another point of the pump's curve, as curve_point = "15 gal/min @ 60 psi"
phrase-wanted_feed_bore = the inner diameter of the feed hose, as feed_bore = "3/4 in"
phrase-wanted_feed_length = how long the feed hose is, as feed_length = "10 ft"
phrase-wanted_boom_hose = the inner diameter of the hose along the boom, as hose_bore = "3/4 in"
phrase-wanted_tip_spacing = how far the tips stand apart, as tip_spacing = "20 in"
phrase-wanted_enters = where the feed meets the boom's hose, as enters_between = [3, 4], or feeds_at = 1 for a tip
phrase-wanted_boom_tips = the tips from left to right, as tips = ["0.30 gal/min @ 40 psi", "plugged"]
phrase-wanted_body_bore = the inner diameter of the drop and body, as body_bore = "5/16 in"
phrase-wanted_both_ends = the height of the other end, as left_height = "0 ft", right_height = "2 ft"

## Remarks in the file to fill in. Names and values of the file stay as they are.

section-opening =
    A visit: one sprayer on one day. Take away the # before a line and put your own value in.
    Leave out what was not done. Quantities carry their unit and stand in quotes; the decimal mark is a point.
    Clean water only. Brake on, out of gear, nobody near the shaft; never a tip to the mouth.
section-visit = whose sprayer, which, when
field-visit-sprayer = what the sprayer is called
field-visit-farm = the farm
field-visit-date = the day, as year-month-day
field-visit-operator = who drives it
field-visit-with = who helped
field-visit-notes = anything else
section-sprayer = what the machine is
field-sprayer-kind = boom (sprays the whole width), band, directed (several tips to a row), boomless (a cluster), hand
field-sprayer-tips = how many tips, or outlets of a cluster
field-sprayer-sections = tips in each section from the left as the driver sits; or give tips
field-sprayer-spacing = how far the tips are meant to stand apart
field-sprayer-mounting = where the boom is; tips are numbered from the left as the driver sits
field-sprayer-tip_size = the ISO size printed on the tip; or give rated
field-sprayer-rated = the maker's flow with water
field-sprayer-fan_angle = for kind boom: how wide the fans spray at the job's pressure; it falls with the pressure
field-sprayer-tank = what the tank holds
field-sprayer-held_by = what holds the pressure; it decides what a change of speed does
field-sprayer-band_width = for kind band: the width of a band; spacing is then the row spacing
field-sprayer-row_spacing = for kind directed
field-sprayer-tips_per_row = for kind directed
field-sprayer-effective_swath = for kind boomless: from pass to pass, less than the wetted width
field-sprayer-wetted_width = for kind boomless, with overlap: what is wetted
field-sprayer-overlap = the share of the wetted width that the next pass covers again
field-sprayer-spray_width = for kind hand: the width sprayed while walking
section-sprayer_groups = tips that are meant to differ, by a name of your own: "end tips" = [1, 12]
section-setting = how it was set; this is what to repeat
field-setting-gear = the gear
field-setting-engine_speed = the engine's speed; the PTO and pump go with it
field-setting-pto_speed = the PTO's speed
field-setting-pressure = the pressure while all tips spray
field-setting-pressure_read_at = where the pressure was read
field-setting-gauge_marks = how far the marks of the gauge are apart
field-setting-agitation = agitation on or off
field-setting-sections_on = which sections sprayed
field-setting-controller = a rate controller on or in manual; for a catch it must be in manual
field-setting-water_in_tank = how full the tank was
field-setting-boom_height = how high the tips are over what is sprayed
section-look = two minutes around it while it sprays clean water
field-look-tips_alike = all tips of one kind, size and angle
field-look-all_spraying = every tip sprays
field-look-fans_straight = fans straight and clear of one another
field-look-no_leaks = nothing leaks
field-look-no_drip_after_5_s = nothing drips five seconds after shutting off
field-look-gauge_back_to_zero = the gauge goes back to zero
field-look-strainers_clean = strainers in and clean; shut the tank valve before opening one
field-look-boom_level = boom level and at its height
field-look-streaky_tips = tips whose fan is streaky or to one side
field-look-dripping_tips = tips that still drip five seconds after shutting off
field-look-odd_tips = tips of another size, kind or colour than the rest
field-look-foam = the cups foam
field-look-gauge_rests_at = what the gauge shows when nothing runs
section-symptoms = what is seen beside the readings, and how checks were answered; evenswath symptom tells the words
field-symptoms-seen = what is seen
field-symptoms-absent = what was looked for and is not there
field-symptoms-drive = what drives the pump: shaft (PTO, engine, belt) or 12_volt
field-symptoms-air_chamber = whether the pump has an air chamber
field-symptoms-yes = checks answered with yes
field-symptoms-no = checks answered with no
field-symptoms-skipped = checks left out
section-spacing = where the tips stand; marks off one stretched tape are better than gaps
field-spacing-marks = what the tape shows at each tip
field-spacing-gaps = or each gap measured by itself
field-spacing-tape_marks = to which mark the tape was read
field-spacing-cannot_move = tips that cannot be moved
field-spacing-limit = how far a gap may be off, where not 5 %
section-drive = the timed drive, tank half full, on ground like the job's, at speed before the first flag
field-drive-course = the measured course
field-drive-runs = each run's time; the driver never holds the watch
field-drive-dash = what the dash showed
section-drive_setting = where the drive was set otherwise than above
section-catch = the catch test, parked, all tips spraying
field-catch-time = how long each cup was held, or "as driven"
field-catch-cup_marks = how far the marks of the cup are apart; the unit of bare numbers
field-catch-cup_holds = how much the cup holds
field-catch-limit = how far a tip may be off the mean, or a named limit as mean-5
field-catch-new_limit = how far a tip may be over a new one
field-catch-timer = how sharply the watch is started and stopped, where not by hand
field-catch-weighed_density = the liquid's density where cups were weighed
field-catch-new_tip = one new tip of the same size, fitted and caught for the purpose
field-catch-doubtful = readings that cannot be: refuse or keep
section-catch_setting = where the catch was set otherwise than above
section-catch_round = one go along the boom; rounds never mix
field-catch_round-after = as found, after cleaning, new tips, pressure changed, swapped, or your own words
field-catch_round-readings = one for each tip from the left; a list where it was caught again; "-" where not caught
field-catch_round-tips = which tips the readings belong to, where not all were caught
field-catch_round-time = where it differs from the time above
field-catch_round-tip_set = where bodies hold several sets of tips: the one turned in; sets are kept apart, the last one counts
field-catch_round-pressure = after pressure changed: what the gauge showed
field-catch_round-swapped = after swapped: the two tips that changed places; readings go by place
section-catch_tip_pressure = a pressure read at a tip with a gauge you trust, while all spray as for the cups
field-catch_tip_pressure-tip = at which tip
field-catch_tip_pressure-pressure = what that gauge showed
field-catch_tip_pressure-marks = how far its marks are apart
section-controller = a rate controller: what it shows and what is entered in it
field-controller-shown_flow = the flow it shows while cups are caught, in manual, all sections on
field-controller-shown_speed = the speed it shows on the timed drive
field-controller-shown_rate = the rate it shows at that speed
field-controller-widths = the width entered for each section, from the left
field-controller-valves_pulse = whether valves at the tips pulse
field-controller-duty = the share of the time pulsing valves were open while cups were caught; 100 % is fully open
section-controller_closed = one section closed while the others spray, and opened again
field-controller_closed-section = which, from the left as the driver sits
field-controller_closed-before = the pressure with all sections open
field-controller_closed-closed = the pressure with this one closed
field-controller_closed-after = the pressure once it is open again
section-refill = what was used over a measured distance or a known area, to check the rate
field-refill-used = what it took to fill up again, or the whole tank
field-refill-distance = over which distance
field-refill-area = or over which area
section-target = what is wanted
field-target-rate = the intended rate
field-target-within = how far off it may be, where not 5 %
field-target-mixed_for = where the tank is mixed already: for which rate
field-target-carrier_density = where the carrier is not water
section-product = what goes in the tank; the label is the law
field-product-name = its name
field-product-rate = its rate: 2 pt/ac, 2 lb/100 gal, 0.25 % v/v, 1.5 lb ai/ac at 4 lb ai/gal
field-product-label_least = the least the label allows
field-product-label_most = the most the label allows
field-product-label_least_carrier = the least carrier the label allows
field-product-price = its price, for what the error costs
section-job = the work ahead
field-job-area = the area to spray
field-job-area_a_year = the area sprayed in a year, for what the error costs
