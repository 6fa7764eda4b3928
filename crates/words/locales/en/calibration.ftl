### Courses, the timed drive, the rate by every method, and how far off a figure may be.

## Courses: what to do with the cup

course_one_tip = Drive { $length }. Catch one tip for as long: its fluid ounces are gallons per acre.
course_whole_boom = Drive { $length }. Catch every tip for as long: all fluid ounces together are gallons per acre.
course_boomless = Drive { $length }. Catch the whole cluster for as long: a tenth of its fluid ounces is gallons per acre.
course_pints = Drive { $length }. Catch all that serves this width for as long: its pints are gallons per acre.
course_metric = Drive { $length }. Catch for as long: millilitres times { $factor } are litres per hectare.

course_short-tenths = A course of { $length } is over before it can be timed well.
    .do = Drive { $instead } and divide the fluid ounces by ten.
course_short-pints = A course of { $length } is over before it can be timed well.
    .do = Drive { $instead } and read pints: they are gallons per acre.
course_short-by_clock = A course of { $length } is over before it can be timed well.
    .do = Catch for 30 s by the clock and work the rate from flow, speed and width.
course_long = A course of { $length } is longer than most yards allow.
    .do = Drive { $instead } and take the catch { $times } times.

course_width = the width must be { $least } to { $most }, got { $given }
    .do = give the width that the catch serves: tip spacing for one tip, as 20 in; swath for all

## The timed drive

drive_course_short-several = { $course } are over in { $time }: timed by hand, one run may be { $either_way } off.
    .do = Drive { $courses } courses in one go, { $length }, and divide the catch by { $courses }; or catch for 30 s by the clock and work the rate from flow, speed and width.
drive_course_short-longer = { $course } are over in { $time }: timed by hand, one run may be { $either_way } off.
    .do = Tape a longer course; or catch for 30 s by the clock and work the rate from flow, speed and width.

drive_dash_doubtful = The dash showed { $shown }, but { $driven } were driven. Was it read in the right unit?
drive_dash_high = The dash showed { $shown }, but only { $driven } were driven: it shows { $percent } too much.
    .do = Have it set right; until then multiply what it shows by { $correction }.
drive_dash_low = The dash showed { $shown }, but { $driven } were driven: it shows { $percent } too little.
    .do = Have it set right; until then multiply what it shows by { $correction }.
drive_dash_open = The dash is { $error } off; whether that is too much, these runs do not tell.
    .do = Drive a longer course, or more runs, to settle it.
drive_dash_right = The dash is { $error } off; that is near enough.

drive_runs_disagree = Runs { $runs } differ by { $percent }.
    .do = Drive again, both ways, in the same gear at the same engine speed.
drive_outlier = Run { $run } took { $time }, the others about { $others }. Without it the speed is { $without }.
    .do = Drive that one again.
drive_one_run = One run is not enough to trust.
    .do = Drive the course once more, the other way.
drive_one_direction = All runs went the same way, so slope and wind are in the speed.
    .do = Drive the other way too.
drive_directions_differ = It went { $there } there and { $back } back: slope or wind.
    .do = The speed here is for spraying both ways by turns; the rate is heavier where the sprayer goes slower.

speed_doubtful_fast = { $speed } is faster than any sprayer drives. Are length, time and their units right?
speed_doubtful_slow = { $speed } is slower than anybody sprays. Are length, time and their units right?
speed_doubt_large = The speed may be { $either_way } off either way, mostly through { $cause }: this says next to nothing.
    .do = To narrow it: { $smaller }.

drive_course = the course must be longer than nothing, got { $given }
    .do = measure the course with a tape, as 204 ft or 100 m
drive_no_runs = no run was timed; at least 1 is needed
    .do = give the time of each run over the course, as 45 s
drive_too_many_runs = { $runs } runs are more than anybody drives (at most { $most })
    .do = give the runs of one drive
drive_run_time = run { $run } must take longer than nothing, got { $given }
    .do = leave out a run that was not timed
drive_dash = the speed on the dash must be more than nothing, got { $given }
    .do = leave the dash out when it was not read
drive_speed = the speed must be more than nothing, got { $given }
    .do = give a speed as 5 mph or 8 km/h
drive_timer = a time may be { $either_way } off either way, but the runs take only { $runs }
    .do = start and stop the watch more sharply, as 0.2 s, or drive a longer course
drive_doubt = the doubt of { $of } must be a number from nothing upwards, got { $given }
    .do = leave it out to take the usual one

## The rate

rate_doubtful_high = { $rate } is more than is ever sprayed on a field. Do the amount and the width belong together?
rate_doubtful_low = { $rate } is less than is ever sprayed on a field. Do the amount and the width belong together?
rate_width_doubtful-narrow = Hardly any tip covers only { $width }. Is the unit right?
rate_width_doubtful-wide = Hardly any boom is { $width } wide. Is the unit right?
rate_spacing_like_swath = Tips hardly stand { $width } apart. Is that the swath? One tip's amount goes with the tip spacing.
rate_swath_like_spacing = A boom is hardly { $width } wide. Is that the tip spacing? The whole boom's amount goes with tips times spacing.
rate_boom_length_for_swath = { $given } is the boom from the first tip to the last. The swath is { $tips } tips times { $spacing }: { $swath }.
    .do = Work with { $swath }.
rate_swath_not_tips_times_spacing =
    { $tips ->
        [one] { $given } is not { $tips } tip times { $spacing }, which is { $swath }.
       *[other] { $given } is not { $tips } tips times { $spacing }, which is { $swath }.
    }
    .do = Count the tips that spray and measure their spacing.
rate_band_wider_than_rows = Bands of { $band } overlap on rows of { $rows }. Are the two mixed up?
rate_overlap_large = With { $overlap } overlap some ground is wetted three times. Is it really the strip that one next pass shares?
rate_overlap_none = Without overlap the edges of a boomless swath get too little.
    .do = Spray dry ground and see how far in from the edge it is wetted as well as in the middle.
rate_effective_swath = Of { $wetted } wetted, each pass moves on by { $swath }.
rate_doubt_large = The rate may be { $either_way } off either way, mostly through { $cause }: this says next to nothing.
    .do = To narrow it: { $smaller }.

rate_not_positive = { $input } must be more than nothing, got { $given }
    .do = measure it, or take a method that does not need it
rate_width = { $input } must be 1/4 in to 500 ft, got { $given }
    .do = look at the number and its unit, as 20 in for one tip or 60 ft for the whole boom
rate_doubt = the doubt of { $of } must be a number from nothing upwards, got { $given }
    .do = leave it out to take the usual one
rate_tips = the number of tips must be 1 to 1000, got { $given }
    .do = count the tips that spray
rate_overlap = the overlap must be from 0 % to less than 100 % of the wetted width, got { $given }
    .do = give the strip that the next pass wets again as a part of what one pass wets: 5 ft of 30 ft is 17 %
rate_nothing_used = what was left in the tank must be less than the tank, { $tank }, got { $left }
    .do = give what the tank held at the start and what was left at the end

# What was given, in "the speed must be more than nothing".
word-input_flow = the flow
word-input_speed = the speed
word-input_tip_spacing = the tip spacing
word-input_swath = the swath
word-input_width = the width
word-input_catch = the catch
word-input_course = the course
word-input_catch_time = the time of the catch
word-input_used = the volume used
word-input_distance = the distance driven
word-input_area = the area
word-input_tank = the tank
word-input_left = what was left in the tank
word-input_wetted = the wetted width
word-input_overlap = the overlap
word-input_band = the band
word-input_rows = the row spacing
word-input_plot = the plot
word-input_rate = the rate
word-input_volume = the volume

# Which width a rate was worked with, and why that one.
word-width_tip_spacing = tip spacing: one tip was collected, and it serves the ground up to half way to its neighbours
word-width_swath = tips times spacing: the whole boom was collected, and its end tips spray half a spacing beyond
word-width_as_given = the width that one tip (tip spacing) or the whole boom (tips × spacing) covers, as given
word-width_effective_swath = the effective swath: what is wetted less what the next pass wets again
word-width_band = the band: only that ground is treated
word-width_rows = row spacing: all that sprays one row was collected, and it serves the ground from row to row
word-width_band_share = the band divided by its tips: one tip was collected, and it does its share of the band
word-width_row_share = row spacing divided by the tips of a row: one tip was collected, and it does its share
word-width_hand_width = the width sprayed in one pass by hand
word-width_ground = none: the ground that was sprayed is known itself

## How far off a figure may be

doubt_mostly_from = This figure may be { $either_way } off either way, mostly through { $cause }.
    .do = To narrow it: { $smaller }.

# The causes, in "mostly through cup marks".
word-doubt_timing_the_drive = timing the drive by hand
word-doubt_timing_the_catch = timing the catch by hand
word-doubt_runs_differ = runs that differ
word-doubt_watch = the watch
word-doubt_cup_marks = cup marks
word-doubt_cup_scale = the cup's scale
word-doubt_handling = foam and tilt of the cup
word-doubt_course = the tape over the course
word-doubt_spacing = tip spacing
word-doubt_swath = swath
word-doubt_swath_by_sight = swath judged by eye
word-doubt_band = band width
word-doubt_rows = row spacing
word-doubt_flow_as_given = the flow as given
word-doubt_speed_as_given = the speed as given
word-doubt_refill = what was filled up
word-doubt_tank = tank marks
word-doubt_field_area = the field's area
word-doubt_plot_area = the plot's area
word-doubt_gauge_marks = gauge marks
word-doubt_tips_not_caught = tips not caught
word-doubt_given = the doubt given

# What makes each smaller, in "To narrow it: catch for longer."
word-smaller_timing_the_drive = drive a longer course, or drive it more often
word-smaller_timing_the_catch = catch for longer
word-smaller_runs_differ = drive again in the same gear at the same engine speed
word-smaller_watch = check the watch against another one over ten minutes
word-smaller_cup_marks = read finer marks (the millilitre side), or catch for longer
word-smaller_cup_scale = check the cup with a kitchen scale: a pint of water weighs 1.04 lb, a litre 1 kg
word-smaller_handling = let the foam settle and read the cup on a level place
word-smaller_course = tape the course once more, on the ground
word-smaller_spacing = measure across several gaps and divide
word-smaller_swath = count the tips and measure their spacing
word-smaller_swath_by_sight = spray dry ground or paper and tape what is wetted
word-smaller_band = spray dry ground and tape the band
word-smaller_rows = measure across several rows and divide
word-smaller_flow_as_given = catch it, timed, in a cup with fine marks
word-smaller_speed_as_given = time a drive over a taped course, both ways
word-smaller_refill = use up more before filling again, on the same level place
word-smaller_tank = fill through a meter
word-smaller_field_area = measure the ground that was really sprayed
word-smaller_plot_area = use a larger plot
word-smaller_gauge_marks = read a gauge with finer marks at the tips
word-smaller_tips_not_caught = catch the tips that were left out
word-smaller_given = measure that figure more closely

## Workings

working-course = The course
working-speed_over_course = The speed over the course
working-flow_speed_width = The rate from flow, speed and width
working-catch_over_course = The rate from a catch over a course
working-distance_refill = The rate from what was filled up again
working-known_area = The rate from what was used on an area
working-whole_tank = The rate from a whole tank
working-boomless = The rate of a boomless cluster
working-band = The rate of bands
working-directed = The rate of tips directed at a row
working-hand_plot = The rate on a plot, by hand
working-hand_walking = The rate walking, by hand
working-hand_timed = The rate from the time a plot takes, by hand
working-effective_swath = The effective swath
working-doubt = How far off this may be

formula-length_area_width = length = area ÷ width
formula-speed_course_mean_time_of_the_runs = speed = course ÷ mean time of the runs
formula-rate_flow_speed_width = rate = flow ÷ (speed × width)
formula-rate_catch_course_width = rate = catch ÷ (course × width)
formula-rate_used_distance_width = rate = used ÷ (distance × width)
formula-rate_used_area = rate = used ÷ area
formula-rate_used_plot = rate = used ÷ plot
formula-rate_catch_plot = rate = catch ÷ plot
formula-rate_tank_left_area = rate = (tank − left) ÷ area
formula-effective_swath_wetted_width_1_part_of_it_that_the_next_pass = effective swath = wetted width × (1 − part of it that the next pass wets again)
formula-how_far_off_95_1_96_sum_of_the_squares_of_what_each_doubt_ad = how far off, 95 % = 1.96 × √(sum of the squares of what each doubt adds)

figure-area = area
figure-width = width
figure-course = course
figure-runs = runs
figure-mean_time_of_the_runs = mean time of the runs
figure-flow = flow
figure-catch = catch
figure-used = used
figure-distance = distance
figure-plot = plot
figure-left = left
figure-band = band
figure-which_width = which width
figure-wetted_width = wetted width
figure-part_of_it_that_the_next_pass_wets_again = part of it that the next pass wets again
figure-most_of_it_comes_from = most of it comes from
figure-its_part = its part
figure-to_make_it_smaller = to make it smaller

# The causes of doubt as the names of what each adds.
figure-timing_the_drive_by_hand = { word-doubt_timing_the_drive }
figure-timing_the_catch_by_hand = { word-doubt_timing_the_catch }
figure-runs_that_differ = { word-doubt_runs_differ }
figure-the_watch = { word-doubt_watch }
figure-cup_marks = { word-doubt_cup_marks }
figure-the_cup_s_scale = { word-doubt_cup_scale }
figure-foam_and_tilt_of_the_cup = { word-doubt_handling }
figure-the_tape_over_the_course = { word-doubt_course }
figure-tip_spacing = { word-doubt_spacing }
figure-swath = { word-doubt_swath }
figure-swath_judged_by_eye = { word-doubt_swath_by_sight }
figure-band_width = { word-doubt_band }
figure-row_spacing = { word-doubt_rows }
figure-the_flow_as_given = { word-doubt_flow_as_given }
figure-the_speed_as_given = { word-doubt_speed_as_given }
figure-what_was_filled_up = { word-doubt_refill }
figure-tank_marks = { word-doubt_tank }
figure-the_field_s_area = { word-doubt_field_area }
figure-the_plot_s_area = { word-doubt_plot_area }
figure-gauge_marks = { word-doubt_gauge_marks }
figure-tips_not_caught = { word-doubt_tips_not_caught }
figure-the_doubt_given = { word-doubt_given }

source-the_definition_of_the_rate = the definition of the rate
source-the_definition_of_the_rate_the_area_is_our_choice = the definition of the rate; the area is our choice
source-the_definition_of_the_rate_univ_of_missouri_extension_g1272 = the definition of the rate; Univ. of Missouri Extension, G1272
source-the_definition_of_speed_ground_covered_and_time_spent_add_up = the definition of speed; ground covered and time spent add up over the runs
source-by_geometry = by geometry
source-cornell_univ_boom_sprayer_calibration_the_definition_of_the = Cornell Univ., Boom Sprayer Calibration: the definition of the rate
source-univ_of_missouri_extension_g1270a_ndsu_extension_ae_1042_tre = Univ. of Missouri Extension, G1270a; NDSU Extension, AE-1042: treated acre and crop acre
source-lsu_agcenter_calibrating_a_cluster_nozzle_boomless_sprayer_t = LSU AgCenter, Calibrating a cluster nozzle/Boomless sprayer (there rounded to 3,400 sq ft)
source-french_order_of_18_dec_2008_nor_agrp0828914a_annex_iv_b_5_5 = French order of 18 Dec 2008 (NOR AGRP0828914A), annex IV B, 5.5.1.2: more than 5 % from true speed
