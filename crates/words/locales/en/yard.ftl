### The app: the first screen, the sheet of a visit, what is asked for, what is spoken, where it is kept.

## The steps of a visit, and what each is for

step-machine = The sprayer
step-machine-purpose = its name, its tips, its tank
step-safe = Make it safe
step-safe-purpose = before anything turns
step-look = Look it over
step-look-purpose = two minutes around it while it sprays clean water
step-spacing = Where the tips stand
step-spacing-purpose = one tape along the boom
step-drive = Drive it, timed
step-drive-purpose = a measured course, there and back
step-catch = Catch the cups
step-catch-purpose = as found, before you clean anything
step-rate = What it puts out
step-rate-purpose = and what you want it to
step-tank = In the tank
step-tank-purpose = how much ground a tank does, how much product
step-change = What to do
step-change-purpose = what to mend or change, in order
step-repeat = The same again
step-repeat-purpose = gear, engine, pressure: how to get this rate another day
step-hand_over = Hand it over
step-hand_over-purpose = sheets to print, four lines to send

## What to see to before anything turns

safe-still = PTO guarded, brake on, out of gear, chocks under the wheels.
safe-shaft = Nobody by the shaft or where the boom folds.
safe-above = Looked up: no power lines near the boom.
safe-water = Rinsed, and only clean water in the tank; it stays away from wells and drains.
safe-gloves = Gloves and eye protection on. Never a tip to the mouth.
safe-signals = Driver and helper agree on signals; the driver never holds the watch.

## What is asked for

field-visit_sprayer = What do you call it?
field-visit_farm = farm
field-visit_date = day
field-visit_operator = who drives it
field-visit_with = who helps
field-visit_notes = anything else
field-sprayer_kind = What kind is it?
field-sprayer_tips = how many tips or outlets
field-sprayer_sections = tips in each section, from the driver's left (as 4, 4, 4)
field-sprayer_spacing = how far the tips stand apart
field-sprayer_mounting = Where is the boom?
field-sprayer_tip_size = ISO size printed on the tip (as 03)
field-sprayer_rated = the maker's flow with water, and at what pressure (as 0.30 gal/min @ 40 psi)
field-sprayer_fan_angle = angle of the fans, at the job's pressure
field-sprayer_tank = the tank holds
field-sprayer_held_by = What holds the pressure?
field-sprayer_band_width = how wide a band is
field-sprayer_row_spacing = how far the rows are apart
field-sprayer_tips_per_row = tips to a row
field-sprayer_effective_swath = from pass to pass
field-sprayer_wetted_width = how wide it wets the ground
field-sprayer_overlap = how much of that the next pass covers again
field-sprayer_spray_width = how wide you spray while walking
field-setting_gear = gear
field-setting_engine_speed = engine speed (as 1700 rpm)
field-setting_pto_speed = PTO speed (as 540 rpm)
field-setting_pressure = pressure while all tips spray
field-setting_pressure_read_at = Where was it read?
field-setting_gauge_marks = the gauge is marked every
field-setting_agitation = agitation
field-setting_sections_on = sections on
field-setting_controller = rate controller
field-setting_water_in_tank = water in the tank
field-setting_boom_height = height of the tips over what is sprayed
field-look_tips_alike = Are all tips of one kind, size and angle?
field-look_all_spraying = Does every tip spray?
field-look_fans_straight = Are the fans straight and clear of one another?
field-look_no_leaks = Is it free of leaks?
field-look_no_drip_after_5_s = Has all dripping stopped five seconds after shutting off?
field-look_gauge_back_to_zero = Does the gauge go back to zero?
field-look_strainers_clean = Are the strainers in and clean? Shut the tank valve before you open one.
field-look_boom_level = Is the boom level and at its height?
field-look_streaky_tips = tips with a streaky fan
field-look_dripping_tips = tips that drip after shutting off
field-look_odd_tips = tips of another size or colour
field-look_foam = Do the cups foam?
field-look_gauge_rests_at = what the gauge shows at rest
field-controller_shown_flow = What flow does the controller show?
field-controller_shown_speed = What speed does the controller show?
field-controller_shown_rate = What rate does the controller show?
field-controller_widths = Section widths as entered in the controller
field-controller_valves_pulse = Do valves at the tips pulse?
field-controller_duty = How much of the time were they open? 100 % is fully open.
field-controller_closed_section = Section closed
field-controller_closed_before = Pressure with all sections open
field-controller_closed_closed = Pressure with this section closed
field-controller_closed_after = Pressure once it is open again
field-symptoms_seen = What do you see?
field-symptoms_absent = What is not there?
field-symptoms_drive = What drives the pump?
field-symptoms_air_chamber = Does the pump have an air chamber?
field-symptoms_yes = Checks answered with yes
field-symptoms_no = Checks answered with no
field-symptoms_skipped = Checks left out
field-spacing_marks = what the tape shows at each tip, from the driver's left (as 0, 20, 40 1/4)
field-spacing_gaps = each gap by itself
field-spacing_tape_marks = the tape is read to
field-spacing_cannot_move = tips that cannot be moved (as 4, 5)
field-spacing_limit = how far a gap may be off
field-drive_course = how long the course is
field-drive_runs = a timed run
field-drive_dash = what the dash showed
field-catch_time = how long each cup is held
field-catch_cup_marks = the cup is marked every
field-catch_cup_holds = the cup holds
field-catch_limit = how far a tip may be off the mean
field-catch_new_limit = how far a tip may be over a new one
field-catch_timer = how sharply the watch is stopped
field-catch_weighed_density = how heavy the liquid is that was weighed
field-catch_new_tip = what a new tip gave
field-catch_doubtful = What of readings that cannot well be?
field-catch_round_after = what was done before
field-catch_round_tip_set = tip set turned in
field-catch_round_readings = what was read off the cups
field-catch_round_tips = which tips were caught
field-catch_round_time = how long the cups of this round were held
field-catch_round_pressure = what the gauge showed in this round
field-catch_round_swapped = which two tips changed places
field-catch_tip_pressure_tip = the tip at which pressure was read
field-catch_tip_pressure_pressure = what that gauge showed
field-catch_tip_pressure_marks = how far its marks are apart
field-refill_used = how much it took to fill up again
field-refill_distance = over which distance
field-refill_area = over which area
field-target_rate = the rate you want
field-target_within = how far off it may be
field-target_mixed_for = the rate the tank is mixed for already
field-target_carrier_density = how heavy the carrier is, where it is not water
field-product_name = product
field-product_rate = its rate by the label (as 2 pt/ac)
field-product_label_least = the least the label allows
field-product_label_most = the most the label allows
field-product_label_least_carrier = the least water the label allows
field-product_price = its price (as $40/gal)
field-job_area = ground to spray
field-job_area_a_year = ground sprayed in a year

choice-yes = yes
choice-no = no
choice-sprayer_kind-boom = boom
choice-sprayer_kind-band = bands
choice-sprayer_kind-directed = several tips to a row
choice-sprayer_kind-boomless = boomless
choice-sprayer_kind-hand = hand or backpack
choice-sprayer_mounting-rear = behind
choice-sprayer_mounting-front = in front
choice-sprayer_held_by-constant_pressure = a plain regulator
choice-sprayer_held_by-rate_controller = a rate controller
choice-sprayer_held_by-ground_driven_pump = a ground-driven pump
choice-symptoms_drive-shaft = a shaft (PTO, engine)
choice-symptoms_drive-12_volt = a 12 V motor
choice-setting_pressure_read_at-pump = at the pump
choice-setting_pressure_read_at-manifold = at the manifold
choice-setting_pressure_read_at-boom = at the boom
choice-setting_pressure_read_at-tip = at a tip
choice-setting_pressure_read_at-cab = in the cab
choice-catch_doubtful-refuse = ask again
choice-catch_doubtful-keep = keep them
choice-as_driven = as long as the drive

## What a step found, in a line

yard-puts_out = It puts out { $rate } ({ $range }).
yard-puts_out_plain = It puts out { $rate }.
yard-tank_does = A full tank of { $tank } does { $area }.
yard-in_the_tank = In it: { $products }.
yard-in_it = { $amount } of { $name }
yard-tips_count = { $count ->
        [one] one tip
       *[other] { $count } tips
    }
yard-tank_of = tank of { $tank }
yard-seen_to = { $seen } of { $all } seen to
yard-look_in_order = all in order
yard-look_found = { $count ->
        [one] one thing to mend
       *[other] { $count } things to mend
    }
yard-lower_by = { $by } lower
yard-higher_by = { $by } higher
yard-ground = at { $height } the ground { $verdict-code ->
        [within] gets it evenly
        [outside] gets it unevenly
       *[cannot_tell] may get it evenly
    }
yard-spacing_in_order = every gap in order
yard-drove = { $runs ->
        [one] { $speed }, one run
       *[other] { $speed }, { $runs } runs
    }
yard-caught = { $caught ->
        [one] one tip caught
       *[other] { $caught } tips caught
    }: { $within } in order{ $off ->
        [0] {""}
       *[other] , { $off } off
    }{ $open ->
        [0] {""}
       *[other] , { $open } cannot be told yet
    }
yard-nothing_to_do = Nothing to do: what was measured is in order.
yard-to_do = { $count ->
        [one] { $first }
       *[other] { $count } things. First: { $first }
    }
yard-two_settings = drive and catch were made at different settings
yard-still_needed = still needed: { $what }

## How a step stands, and moving about

yard-mark_open = not yet
yard-mark_begun = begun
yard-mark_in_order = in order
yard-mark_act = put right
yard-mark_cannot_tell = cannot tell yet
yard-with_more_time = with more time
yard-back = back
yard-why = why?
yard-why_rate = how the rate came about
yard-why_speed = how the speed came about
yard-why_cups = the cups, tip by tip
yard-why_tank = how the load came about
yard-next_step = next: { $step }
yard-steps = The visit, step by step
yard-answer = What it comes to
yard-two_values = Two devices wrote different values. Which one holds?
yard-this_holds = { $value } holds
yard-unit_of = unit
yard-at_hand = usual values

## The first screen

yard-how_much_today = How many minutes and hands?
yard-minutes = minutes
yard-minutes_10 = 10
yard-minutes_30 = 30
yard-minutes_60 = 60 or more
yard-people = people
yard-people_1 = 1
yard-people_2 = 2
yard-people_3 = 3 or more
yard-plan_short = Ten minutes: the drive, and one tip of each section. That gives the rate; whether the tips are alike is not checked.
yard-plan_whole = Time for everything: look, spacing, drive, every tip.
yard-plan_1 = One alone: park, brake on, and let the phone call the tips.
yard-plan_2 = Two: one holds the cup, the other writes.
yard-plan_3 = Three or more: several cups in one run, one of you writes.
yard-begin = Begin a visit
yard-new_sprayer = a new sprayer
yard-just_looking = just looking
yard-just_looking_keeps = nothing is kept
yard-go_on = Go on with a visit
yard-last_visit = last visit { $date }
yard-no_name = A sprayer without a name
yard-lines = { $lines ->
        [one] one line
       *[other] { $lines } lines
    }
yard-settings = settings
yard-keeping = where it is kept
yard-copy = make a copy
yard-opening = The notebook is being opened.

## Where it is kept

yard-only_here = { $lines ->
        [0] Kept on this device, and nothing is only here.
        [one] Kept on this device. One line is nowhere else.
       *[other] Kept on this device. { $lines } lines are nowhere else.
    }
yard-kept_empty = Kept on this device as you write. Nothing is written yet.
yard-kept_nowhere = This device keeps nothing. All you write is gone when this page is closed: print the sheet or hand over the visit file before that.
yard-kept_nowhere_why = It says: { $why }
yard-looking_head = Just looking: nothing of this is kept.
yard-keeping_title = Where this notebook is kept
yard-promise_unknown = This browser has not said whether it keeps what is written.
yard-promise_may_clear = This browser may clear what is written when room is short.
yard-promise_keeps = This browser has promised not to clear what is written by itself.
yard-ask_to_keep = ask it to keep it
yard-clears_after_a_week = This kind of browser clears what was not opened for seven days. Put the app on the home screen, or make a copy each time.
yard-installed = The app stands on the home screen.
yard-opens_offline = The app is on this device: it opens here with no signal.
yard-opens_with_signal = This browser does not keep the app: it opens here only with a signal. Over HTTPS, outside private windows, it is kept.
yard-not_installed = The app is not on the home screen yet.
yard-install = put it on the home screen
yard-copy_title = A copy as a file
yard-copy_how = All of the notebook in one file. Send it to yourself or save it where you keep papers.
yard-last_copy = Last copy or exchange: { $date }.
yard-no_copy = No copy was made yet.
yard-copy_file_choose = keep a second copy in a file
yard-copy_file_how = Choose a file once, best where it is carried elsewhere by itself. From then on it is written again whenever something new is kept.
yard-copy_file_asks = A second copy was kept in a file, and this browser wants to be asked again before it writes there.
yard-copy_file_kept = A second copy keeps itself in the file you chose.
yard-take_in_title = Take a file in
yard-take_in_how = A copy of this notebook adds what is not here yet; nothing is written over. A visit file becomes a visit.
yard-take_in = choose a file
yard-server_title = The server at this address
yard-server_none = None answers now. Everything works without one.
yard-server_same = It keeps this notebook too, up to the last exchange.
yard-server_other = It keeps another notebook; nothing is exchanged with it.
yard-exchange = exchange now
yard-move_title = To another phone or address
yard-move_how = Make a copy here. Open the app there, and take the copy in before anything is written there. From then on both are the same notebook, each with its own lines.

## Settings

yard-settings_title = Settings
yard-settings_how = Each is set by itself; none follows from another.
yard-language = language
yard-numbers = numbers
yard-numbers_point = 14.6
yard-numbers_comma = 14,6
yard-paper = paper
yard-paper_letter = Letter
yard-paper_a4 = A4
yard-units = units
yard-units_us = gallons, acres, feet
yard-units_metric = liters, hectares, meters

## What is said at the top

yard-seen = seen
yard-newer_version = A new version is ready. What is written stays.
yard-take_newer = change to it
yard-copied_text = Copied. Paste it into a message.
yard-text_as_file = Saved as a text file.
yard-not_kept = The last lines are not kept yet. They stay here and are tried again with the next one.
yard-no_words = The words of that language are not on this device yet. They come with the next signal; then choose it again.
yard-withdrawn = The visit is withdrawn; its readings are removed.
yard-file_taken_in = What was new in this file is here now.
yard-file_taken_in_damaged = This file is damaged. All that could be read of it is here now.
yard-file_moved_in = The notebook of this file is kept here from now on.
yard-file_moved_in_damaged = This file is damaged. All that could be read of it is kept here from now on.
yard-file_other_notebook = This file is of another notebook, so nothing was taken in. Open it on a device where nothing was written yet.
yard-file_visit_taken_in = This visit file is a visit here now.
yard-file_is_none = This is neither a copy of a notebook nor a visit file. Nothing was changed.

## The drive and the cups on the sheet

yard-time_it = time it
yard-runs = Runs so far
yard-no_runs = None yet. There and back, so that a slope or the wind evens out.
yard-run = run { $number }, { $way ->
        [there] there
        [back] back
       *[none] one way
    }: { $time }
yard-strike = strike out
yard-strike_what = strike out { $what }
yard-type_run = or type the time of a run, in seconds
yard-add_run = add this run
yard-run_nothing = A run takes more than no time at all.
yard-catch_cups = catch cups
yard-catch_row = a row from paper
yard-catch_voice = by voice
yard-catch_again = catch { $count ->
        [one] tip { $tips }
       *[other] tips { $tips }
    } again
yard-catch_again_for = catch { $count ->
        [one] tip { $tips }
       *[other] tips { $tips }
    } again for { $time }
yard-new_round = Something was done since? Begin a new round; rounds never mix.

## The tank and what to hand over

yard-product = Product { $number }
yard-add_product = add a product
yard-label_is_law = The label is the law.
yard-sheets = Sheets
yard-sheet_visit = the whole visit
yard-sheet_cab = card for the cab
yard-sheet_cups = the row of cups, large
yard-sheet_tags = tags for tips
yard-sheet_paper = sheet to fill in by hand
yard-sheet_before = what to bring, before the day
yard-no_sheet = There is nothing to put on this sheet yet.
yard-print = print
yard-share = hand over as a file
yard-four_lines = Four lines to send
yard-send = send these lines
yard-visit_file = hand over the visit file
yard-visit_file_how = Every reading as written. The command line and other phones read it.
yard-withdraw = withdraw this visit
yard-withdraw_ask = Withdraw the whole visit? Its readings are removed for good. That there were some stays to be seen.
yard-withdraw_reason = why, where you wish to say so
yard-withdraw_yes = withdraw it for good
yard-withdraw_no = keep it

## How a number came about

yard-why_title = How it came about
yard-why_gone = This number is not there any more.

## Earlier visits

yard-last_time = earlier visits beside this one
yard-last_time_title = This sprayer, visit by visit
yard-last_time_none = This is its first visit here.
yard-last_rate = puts out
yard-last_mean = a tip gives, on the mean
yard-last_off = tips off
yard-last_wear = against the first visit
yard-last_pressure = pressure
yard-last_today = { $date } (this one)
yard-last_more = { $percent } more
yard-last_less = { $percent } less
yard-last_same = the same
yard-last_other_pressure = another pressure
yard-last_pressure_unsaid = pressure not written down
yard-last_how = How much the whole set gives is set against the first visit only where the pressure was the same. Tips that give more than they did are worn.

## One cup at a time

yard-catch_title = Catch · { $round }
yard-place = { $place } of { $all }
yard-marks = marks every { $step }
yard-so_far_high = about { $off } over the others. Keep going.
yard-so_far_low = about { $off } under the others. Keep going.
yard-so_far_alike = { $off } from the others.
yard-map = The cups so far, as the driver sits. Tip { $tip } is next.
yard-row_length = { $given ->
        [one] One reading stands here
       *[other] { $given } readings stand here
    }, and { $tips ->
        [one] one tip is to be caught
       *[other] { $tips } tips are to be caught
    }. Write one for each tip, a dash where no cup was held.
yard-row_place = Reading { $place }, tip { $tip }: { $what }

## What is spoken

yard-say_tip = { $count ->
        [one] Tip { $tips }. Ready.
       *[other] Tips { $tips }. Ready.
    }
yard-say_catch = Catch.
yard-say_stop = Stop.
yard-say_ended_away = Held too long. Empty it and catch again.

## The cup's screens

yard-to_sheet = sheet
yard-go_to_tip = go to a tip
yard-tip = tip
yard-high_so_far = high, so far
yard-low_so_far = low, so far
yard-alike_so_far = like the others
yard-cup_before = here: { $read }
yard-one_more_cup = one more cup
yard-ask_head = { $read } at tip { $tip }?
yard-keep_it = keep it
yard-put_it_right = put it right
yard-back_a_tip = back
yard-next_tip = next: tip { $tip }
yard-last_cup = keep and finish
yard-skip_tip = skip
yard-rub_out = rub out
yard-other_side = other side of the cup
yard-row_title = A row from paper
yard-row_how = One reading for each tip, in this order: tips { $tips }. A dash where no cup was held. Bare numbers are { $unit }.
yard-row_so_far = { $given } of { $tips }
yard-row_keep = keep the row
yard-voice_title = By voice
yard-voice_tips = It calls tips { $tips }, one after the other, and counts for you. Sound on, screen toward you.
yard-voice_held = each cup is held
yard-voice_at_once = cups at once
yard-voice_pause = pause to read and empty
yard-voice_enter = When are readings entered?
yard-voice_enter_after = all at the end
yard-voice_enter_each = after each
yard-voice_start = call the first tip
yard-voice_ready = ready
yard-voice_catch = catch
yard-voice_between = stop: read and empty
yard-voice_stop = stop it all
yard-voice_ended_away = The screen slept, and this cup was held about { $over } too long. Empty it; it is called again when you say so.
yard-voice_again = call it again
yard-voice_done = All are caught
yard-voice_once_more = once more from the first
yard-less = less
yard-more = more
yard-watch_start = tap to start
yard-watch_stop = tap to stop
yard-watch_next = kept; tap for the next run
yard-watch_how = anywhere on this screen
yard-watch_no_good = that run was no good
yard-sensor_ask = speed by this phone's position
yard-sensor_waits = waiting for the position
yard-sensor = { $speed } by position
yard-sensor_range = { $speed } by position ({ $range })

## What is seen beside the readings

yard-symptoms = Find the cause
yard-symptoms_to = Something is wrong: pressure, foam, drips
yard-symptoms_gate = find the cause; nothing has to be caught, nothing is kept
yard-symptoms_kept = What you tap is kept with this visit.
yard-symptoms_what = What do you see?
yard-symptoms_done = That is all I see
yard-symptoms_change = change
yard-symptoms_rest = These chances come from a table of common practice. Nobody has counted.
yard-symptom_next = Check this next
yard-symptom_takes = about { $minutes } min
yard-symptom_end = Do this
yard-symptom_skip = I cannot check this
yard-symptom_skipped = left out
yard-symptom_causes = Most likely
yard-symptom_chance = { $how } ({ $chance })
yard-symptom_answered = Checked so far
yard-symptom_take_back = take back
yard-controller = The controller checked
yard-controller_closing = Close one section at a time from the seat, read the pressure, and open it again. Clean water only; nobody in the spray or near a turning shaft.
yard-add_closed = one more section closed
yard-section_closed = Section { $number } closed
