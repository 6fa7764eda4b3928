### Sheets to hand over: the visit, the cab card, the paper to fill in, the card before the day, tags.

## The visit's sheet.

sheet-visit_title = What this sprayer puts out
sheet-found_title = What was found on this sprayer
sheet-working_title = How it was reached
sheet-boom = { $tips ->
        [one] one tip
       *[other] { $tips } tips at { $spacing }
    }
sheet-boom_bands = { $boom }, bands of { $band }
sheet-boom_directed = { $tips } tips, { $row } to a row
sheet-boomless = { $outlets ->
        [one] boomless, one outlet
       *[other] boomless, { $outlets } outlets
    }
sheet-hand = hand sprayer
sheet-driven_by = driven by { $name }
sheet-checked_with = checked with { $name }
sheet-foot_of_visit = { $program } { $version } · clean water, readings as written; how each number was reached stands behind the first page
sheet-foot = { $program } { $version } · the label is the law
sheet-care_lead = Take care.
sheet-care = The label is the law: it sets the most product per acre, the least water, the wind, gloves and eye protection. Clean water only for a check; treat water from a used sprayer as spray and keep it from wells and drains. Brake on, nobody near the shaft. Never put a tip to your mouth. Where this sheet and the label or a local rule differ, they and licensed people decide.

sheet-puts_out = it puts out
sheet-most_likely = most likely { $range }
sheet-wanted = { $side ->
        [none] { $wanted } wanted: that is it
        [under] { $wanted } wanted; it is { $off } under: { $verdict ->
            [within] close enough
            [outside] too far off
           *[cannot_tell] perhaps too far off
        }
       *[over] { $wanted } wanted; it is { $off } over: { $verdict ->
            [within] close enough
            [outside] too far off
           *[cannot_tell] perhaps too far off
        }
    }
sheet-with_plugged = { $tips-count ->
        [one] as found, with tip { $tips } plugged
       *[other] as found, with tips { $tips } plugged
    }
sheet-two_settings = drive and catch were made at different settings
sheet-full_tank_does = a full tank of { $tank } does
sheet-acres = acres
sheet-treated_acres = treated acres
sheet-treated_hectares = treated ha
sheet-product_in_tank = { $name } in a full tank, at { $rate }
sheet-rounded_down = { $exact } by the sum, rounded down to what a jug shows
sheet-too_little_to_measure = too little to measure
sheet-the_cups = the cups
sheet-nothing_comes = Nothing comes out
sheet-drives = it drives
sheet-needs_cups = What it puts out needs the cups too.
sheet-of_tips_in_order = { $within } of { $all } in order
sheet-needs_drive = What it puts out needs a timed drive too.
sheet-the_spacing = the spacing of the tips
sheet-gaps = { $verdict ->
        [within] { $all ->
            [one] The gap is in order
           *[other] All { $all } gaps are in order
        }
        [outside] { $off } of { $all } gaps off
       *[cannot_tell] Cannot tell yet
    }
sheet-needs_drive_and_cups = What it puts out needs a timed drive and the cups.
sheet-so_far = so far
sheet-nothing_measured = Nothing measured yet
sheet-measure_next = Next, in any order: the spacing, a timed drive, the cups. Drive and cups together tell what it puts out.
sheet-fill_in = Fill in what was measured: the spacing, a timed drive, the cups. Each part tells by itself.

sheet-what_to_do = What to do
sheet-what_to_do_on = What to do, continued
sheet-more_steps = { $more ->
        [one] One more stands on the next page.
       *[other] { $more } more stand on the next page.
    }
sheet-tips_high = Tips { $tips } put out { $off } more than the mean of the tips.
sheet-tips_high_do = Replace them with ones of the same kind and size, and catch them again.
sheet-tips_low = Tips { $tips } put out { $off } less than the mean of the tips.
sheet-tips_low_do = Clean them and their strainers with a soft brush or air, never the mouth, and catch them again; replace those that stay low.
sheet-nothing_to_do = Nothing. What was measured is in order.

sheet-same_again = To get the same again
sheet-gear_engine = gear, engine
sheet-pto = (PTO { $speed })
sheet-pressure = pressure
sheet-speed = speed
sheet-speed_over = { $runs ->
        [one] { $speed } ({ $time } over the course, one run)
       *[other] { $speed } ({ $time } over the course, { $runs } runs)
    }
sheet-tips = tips
sheet-tip_size = size { $size } ({ $colour }), ISO 10625
sheet-tip_rated = { $flow } at { $pressure }
sheet-boom_height = height of the tips
sheet-agitation = agitation
sheet-sections_on = sections on
sheet-controller = controller
sheet-tank = tank
sheet-catch_again = catch again
sheet-catch_again_when = when tips, speed, pressure or product change, and next spring

sheet-good_to_know = Good to know
sheet-how_reached = The sums
sheet-how_sure = "Most likely" is the range in which the true value lies 95 times in 100, by the marks of the cup, the hand on the watch, the tape and the boom.
sheet-cups_of = The cups, { $round }: { $time }, { $unit }
sheet-tip = tip
sheet-cup = cup
sheet-off_the_mean = how far off, %
sheet-off_with_range = { $off } ({ $low } to { $high })
sheet-verdict = verdict
sheet-mean_of = { $several ->
        [yes] Tips { $tips }: mean { $mean }{ $spread ->
            [none] .
           *[other] , spread (CV) { $spread } %.
        }
       *[no] Mean { $mean }{ $spread ->
            [none] .
           *[other] , spread (CV) { $spread } %.
        }
    }
sheet-in_the_tank = In the tank
sheet-product = product
sheet-label_rate = at
sheet-full_load = full tank: { $volume }, { $area }
sheet-last_load = last load: { $volume }, { $area }
sheet-job_loads = { $full ->
        [one] The job of { $area }: one full load{ $last ->
            [0] .
           *[other] {" "}and the last one.
        }
       *[other] The job of { $area }: { $full } full loads{ $last ->
            [0] .
           *[other] {" "}and the last one.
        }
    }

tip_is-in_order = in order
tip_is-high = too much
tip_is-low = too little
tip_is-worn = worn
tip_is-plugged = plugged
tip_is-not_caught = not caught
tip_is-cannot_tell = cannot tell

tip_colour-pink = pink
tip_colour-light_green = light green
tip_colour-orange = orange
tip_colour-green = green
tip_colour-yellow = yellow
tip_colour-lilac = lilac
tip_colour-violet = violet
tip_colour-blue = blue
tip_colour-dark_red = dark red
tip_colour-red = red
tip_colour-brown = brown
tip_colour-grey = grey
tip_colour-gray = gray
tip_colour-white = white
tip_colour-light_blue = light blue
tip_colour-black = black

## The row of cups and the other drawings.

cups-title = The row of cups
cups-caption = The cups { $round }: { $time }, { $unit }. { $mean }
cups-mean = Mean { $mean }.
cups-left = driver's left
cups-right = driver's right
cups-limit = limit
cups-tip_says = { $reading ->
        [none] Tip { $tip }: { $word }
       *[other] Tip { $tip }: { $reading }, { $word }
    }
cups-describe = { $all ->
        [one] One tip.
       *[other] { $all } tips from the left as the driver sits.
    } { $outside ->
        [0] None is off the limit.
        [one] One is off the limit.
       *[other] { $outside } are off the limit.
    }{ $open ->
        [0] {""}
        [one] {" "}One cannot be told from its cup.
       *[other] {" "}{ $open } cannot be told from their cups.
    }
cups-sign_high = too much
cups-sign_low = too little
cups-sign_plugged = plugged
cups-sign_cannot_tell = cannot be told from this cup
cups-sign_not_caught = not caught
cups-key = ▲ too much · ▼ too little · × plugged · ? cannot be told from this cup · – not caught
cups-stand_behind = The row of cups stands behind this page.
cups-since = Since then: { $found }
drive-title = The timed drive
drive-describe = { $runs ->
        [one] One run over { $course }: { $speed }.
       *[other] { $runs } runs over { $course }: { $speed }.
    }
drive-there = there
drive-back = back
drive-run = run { $number }
drive-mean = together: { $time } a run
rate-title = What it puts out against what is wanted
rate-describe = It puts out { $rate }{ $wanted ->
        [none] .
       *[other] ; { $wanted } is wanted.
    }
rate-puts_out = puts out { $rate }
rate-wanted = wanted { $rate }
rate-within = within { $percent } %
rate-label_least = label's least { $rate }
spacing-title = The tips on the tape
spacing-describe = { $off ->
        [0] All { $all } gaps are in order.
        [one] One of { $all } gaps is off.
       *[other] { $off } of { $all } gaps are off.
    }
spacing-move = move { $distance }
spacing-heading = The tips on the tape: meant to stand { $spacing } apart

## The card for the cab.

cab-title = For the cab
cab-cut = cut here: one for the cab, one for the shop
cab-puts_out = puts out
cab-acres_a_tank = a full tank does
cab-product_a_tank = in a full tank: { $name }
cab-nothing = Nothing to repeat is known yet: write down gear, engine speed, pressure and where it was read.
cab-until = Holds until tips, speed, pressure or product change; catch again then, and next spring. The label is the law.

## The sheet to fill in by hand.

paper-title = Calibration sheet
paper-sprayer = sprayer
paper-farm = farm
paper-date = date
paper-driver = driver
paper-with = with
paper-tank = tank holds
paper-safe_lead = First:
paper-safe = rinsed, and half full of clean water. Brake on, out of gear, chocks, PTO guarded, nobody near the shaft or where the boom folds. Look up for power lines. Gloves and eye protection. Signals agreed; the driver never holds the watch. Keep the water from wells and drains.
paper-look = Look (tick what is so)
paper-setting = Set it as you spray
paper-gear = gear
paper-engine = engine
paper-pto = PTO
paper-pressure = pressure
paper-read_at = read at
paper-tip = tips fitted
paper-drive = Drive it, timed, at spraying speed
paper-spacing = tip spacing
paper-course = course
paper-there = there
paper-back = back
paper-dash = dash shows
paper-catch = Spacing and cups, tip by tip
paper-catch_time = caught for
paper-cup_marks = cup marked every
paper-catch_how = Number the tips from the left as the driver sits. Stretch one tape along the boom and write where each tip stands. Catch all as found before anything is cleaned. Write what you read, to half a mark; a dash where no cup was held.
paper-tip_number = tip
paper-tip_of_section = { $tip } (section { $section })
paper-on_tape = on the tape
paper-as_found = as found
paper-again = again
paper-after = after
paper-sums = The sums by hand
paper-sums_under = The example is an invented sprayer of twelve tips. Round at the end, not on the way.
paper-sum = reckon
paper-example = example
paper-yours = yours
paper-what_to_change = What to change
paper-change_low = One tip low: pressure off, clean the tip and its strainer with a soft brush or air, never the mouth; catch again; replace it if it stays low.
paper-change_high = One tip high: replace it with one of the same kind and size, and catch again.
paper-change_all = Many tips over a new one's flow at this pressure: they are worn; replace the whole set.
paper-change_rate = Rate off: a little by pressure (four times the pressure doubles the flow), more by speed, much by another tip size. Or leave it and mix the tank for what it really puts out, within the label.

sum-total = Add up all cups.
sum-total_example = { $total } { $cup }
sum-mean = Sum ÷ cups = mean
sum-mean_example = { $total } ÷ { $tips } = { $mean } { $cup }
sum-limits = Mean × 0.9 and mean × 1.1. Mark every cup outside.
sum-limits_example = { $low } and { $high } { $cup }
sum-speed_us = Course in feet × 0.682 ÷ mean time in seconds = mph
sum-speed_us_example = { $course } × 0.682 ÷ { $time } = { $speed } mph
sum-speed_metric = Course in metres × 3.6 ÷ mean time in seconds = km/h
sum-speed_metric_example = { $course } × 3.6 ÷ { $time } = { $speed } km/h
sum-course_us = If the course was 4084 ÷ spacing in inches (feet), and each cup was held as long as the drive: mean in fl oz = gal/ac
sum-course_us_example = 4084 ÷ { $spacing } = { $course } ft; { $mean } fl oz: { $rate } gal/ac
sum-course_metric = If the course was 5000 ÷ spacing in cm (metres), and each cup was held as long as the drive: mean in mL × 0.2 = L/ha
sum-course_metric_example = 5000 ÷ { $spacing } = { $course } m; { $mean } × 0.2 = { $rate } L/ha
sum-rate_us = Otherwise: mean in fl oz × 0.469 ÷ seconds caught = gal/min; then gal/min × 5940 ÷ mph ÷ spacing in inches = gal/ac
sum-rate_us_example = { $mean } × 0.469 ÷ { $time } = { $flow }; { $flow } × 5940 ÷ { $speed } ÷ { $spacing } = { $rate }
sum-rate_metric = Otherwise: mean in mL × 0.06 ÷ seconds caught = L/min; then L/min × 60000 ÷ km/h ÷ spacing in cm = L/ha
sum-rate_metric_example = { $mean } × 0.06 ÷ { $time } = { $flow }; { $flow } × 60000 ÷ { $speed } ÷ { $spacing } = { $rate }
sum-tank = Tank ÷ rate = what a full tank does
sum-tank_example = { $tank } ÷ { $rate } = { $area } { $area_unit }
sum-product = That area × the label's rate = product in a full tank. Round down, never over the label.
sum-product_example = { $area } × { $on_area } = { $amount }: { $measure }

## The card before the day, and the kit list.

before-title = Before the calibration day
before-why = An hour with your sprayer and clean water: what it really puts out, what to mend, what goes in the tank.
before-day = day
before-hour = hour
before-place = place
before-call = call
before-the_sprayer = Bring the sprayer like this
before-rinsed = Rinsed, tank, pump, hoses and boom, so that only clean water comes out. Rinse it where the label lets you.
before-half_full = Half full of clean water.
before-own_tractor = On its own tractor, the one you spray with; its gear and engine speed are half of the calibration.
before-strainers = Strainers taken out, cleaned and put back, with the tank valve shut.
before-spray_at_home = Sprayed for a minute at home: no leaks, every tip runs, the gauge moves.
before-lights = Fit for the road: lights, slow-vehicle sign, boom tied up, hitch pin locked.
before-bring = Bring along
before-bring_label = The label of what you mean to spray.
before-bring_rate = The gallons per acre you want, and the acres.
before-bring_tips = Spare tips of the same kind and size: three or more; a whole new set if yours are old.
before-bring_parts = Spare strainers, gaskets, check valves; a wrench for them.
before-bring_last = The sheet of the last time, if there is one.
before-bring_field = Field speed: gear and rpm you really use, on ground like yours.
before-bring_gloves = Gloves that keep out water, and eye protection. Boots.
before-bring_driver = The one who drives it.
before-takes_heading = How long it takes
before-takes = About a minute a tip with two people, and twenty minutes for looking, the drive and the sums. You drive off with a sheet of what it puts out and a card for the cab.
before-care = Do not bring a sprayer with product in it. The label is the law, also for rinse water. Nobody stands by a turning shaft or under a folding boom; children and dogs stay at home.

kit-title = What the one who checks brings
kit-under = For ten sprayers a day and two helpers.
kit-measure = To measure
kit-cups = 24 cups of one kind, marked every half ounce or finer, with millilitres on the other side
kit-jug = a jug to check the cups against, and a funnel
kit-watches = 3 stopwatches or phones in bags
kit-tape = a 300 ft tape and a 30 ft tape
kit-flags = 6 flags or cones
kit-gauge = a gauge known to be right, with a piece that fits it in place of a tip
kit-scale = a kitchen scale, for cups whose marks are doubted
kit-mend = To mend
kit-tips = new tips of the usual sizes, one of each to catch beside the old ones
kit-brushes = soft brushes and a can or bulb of air; no wire, no knives
kit-valves = check valves, gaskets, strainers
kit-wrenches = wrenches, pliers, thread tape
kit-ties = zip ties and wire
kit-bucket = a bucket for dirty parts, and towels
kit-safe = To keep safe
kit-chocks = chocks
kit-gloves = gloves for everybody, in three sizes
kit-eyes = eye protection for everybody
kit-water = clean water to wash in, soap, drinking water apart from it
kit-first_aid = first aid kit and eyewash
kit-shade = shade, sun cream
kit-spill = a mat or tray under the tips where the ground must stay dry; absorbent
kit-write = To write
kit-sheets = calibration sheets, one for each sprayer and ten more
kit-pencils = pencils and boards; ink runs
kit-tags = tags and string
kit-phone = phone or laptop, charged, with a spare battery
kit-labels = labels of the usual products, to look things up

## Tags.

tags-title = Tags for tips
tags-side = { $all ->
        [0] from the driver's left
       *[other] of { $all }, from the driver's left
    }
tags-out_of_place = Out of place
tags-catch_again = Catch again
tags-read = { $reading } { $unit } in { $time }
tags-none = There is nothing to mend or to catch again on this boom, so there are no tags.

## A picture for the head.

picture-told = The sign of whoever hands out this sheet
picture_not_a_picture = this is no picture that can be printed: it is neither PNG nor JPEG
    .do = save the sign as PNG or JPEG and give that file
picture_not_whole = this picture is not whole: it begins as { $format } and breaks off
    .do = copy or save the picture again
picture_too_large = this picture has { $bytes } bytes, more than the { $most } a sheet takes
    .do = save it smaller: 600 by 200 dots are enough for a head
picture_size = this picture is { $wide } by { $high } dots; a sheet takes 1 to { $most } either way
    .do = save it smaller: 600 by 200 dots are enough for a head

## Printing from the command line.

print-written = Written: { $file }
print_ending = { $file } does not say what to write
    .do = give a name that ends in .html, or in .pdf
print_no_cups = no cup was caught in this visit, so there is no row of cups
    .do = catch the cups and write them under [[catch.round]]
print_sections = { $tips } tips were given, but the sections have { $sections } together
    .do = give --tips or --sections so that they agree; one of them is enough
print_too_many_tips = { $tips } tips are more than the { $most } a sheet is made for
    .do = print one sheet for each part of the boom
cannot_read-not_written = { $file } cannot be written: { $detail }
    .do = look whether the folder is there and may be written to; nothing was left half written
pdf_not_built = this program was built without the part that makes PDF files
    .do = build it with `cargo xtask dist`, or make the HTML page and print that
pdf_failed = the sheet could not be set as PDF: { $why }
    .do = make the HTML page and print that

## Help of what is printed.

help-visit_check-sheet = Write the visit's sheet as well: a page (.html) or a PDF (.pdf)
help-visit_check-beside = A second language beside the first on the sheet
help-visit_check-beside-en = English
help-visit_check-beside-es = Spanish
help-visit_check-picture = A sign for the head of the sheet, PNG or JPEG
help-print = Sheets to hand over: cups, cab card, tags, paper to fill in, card before the day
help-print-after =
    Examples:
      evenswath print cab my-visit.toml --to cab.html
      evenswath print paper --tips 20 --sections 7,6,7 --to sheet.html
      evenswath print before --lang es --beside en > before.html
help-print_cups = The row of cups, large
help-print_cups-file = The visit file; - for standard input
help-print_cups-to = The file to write, ending in .html or .pdf; the page goes to standard output where none is named
help-print_cups-beside = A second language beside the first
help-print_cups-beside-en = English
help-print_cups-beside-es = Spanish
help-print_cups-picture = A sign for the head of the sheet, PNG or JPEG
help-print_cab = The card for the cab: the setting to repeat, twice on a sheet
help-print_cab-file = The visit file; - for standard input
help-print_cab-to = The file to write, ending in .html or .pdf; the page goes to standard output where none is named
help-print_cab-beside = A second language beside the first
help-print_cab-beside-en = English
help-print_cab-beside-es = Spanish
help-print_cab-picture = A sign for the head of the sheet, PNG or JPEG
help-print_tags = Tags to tie to tips that are to be mended, moved or caught again
help-print_tags-file = The visit file; - for standard input
help-print_tags-to = The file to write, ending in .html or .pdf; the page goes to standard output where none is named
help-print_tags-beside = A second language beside the first
help-print_tags-beside-en = English
help-print_tags-beside-es = Spanish
help-print_tags-picture = A sign for the head of the sheet, PNG or JPEG
help-print_paper = The sheet to fill in by hand, with the sums
help-print_paper-file = A visit file that says how many tips there are; - for standard input
help-print_paper-tips = How many tips there are, 1 to 1000 [12 where nothing else says it]
help-print_paper-sections = Tips of each section from the left: 7,6,7
help-print_paper-to = The file to write, ending in .html or .pdf; the page goes to standard output where none is named
help-print_paper-beside = A second language beside the first
help-print_paper-beside-en = English
help-print_paper-beside-es = Spanish
help-print_paper-picture = A sign for the head of the sheet, PNG or JPEG
help-print_before = The card to send before the day, and the kit list
help-print_before-to = The file to write, ending in .html or .pdf; the page goes to standard output where none is named
help-print_before-beside = A second language beside the first
help-print_before-beside-en = English
help-print_before-beside-es = Spanish
help-print_before-picture = A sign for the head of the sheet, PNG or JPEG
help-print_cups-after =
    Example:
      evenswath print cups my-visit.toml --to cups.html
help-print_cab-after =
    Example:
      evenswath print cab my-visit.toml --to cab.html
help-print_tags-after =
    Example:
      evenswath print tags my-visit.toml --beside es --to tags.html
help-print_paper-after =
    Example:
      evenswath print paper --tips 20 --sections 7,6,7 --to sheet.html
help-print_before-after =
    Example:
      evenswath print before --lang es --beside en > before.html
value-NUMBER = NUMBER
value-LIST = LIST
