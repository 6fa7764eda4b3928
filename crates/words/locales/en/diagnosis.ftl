### What is most likely wrong, and what to look at next.

## What may explain a tip's cups

word-cause_worn = a worn tip
word-cause_partly_plugged = a partly plugged tip
word-cause_plugged = a plugged tip
word-cause_smaller_tip = a smaller tip fitted
word-cause_larger_tip = a larger tip fitted
word-cause_misread = a cup misread or mistimed
word-cause_chance = a sound tip, off by chance

## What is told

boom_is_off = Nothing comes out anywhere: most likely the pump or the boom valve is off ({ $chance }).
    .do = Look at the pump, the tank valve and the boom valve, then catch again.
section_shut = Nothing comes out of section { $section } (tips { $tips }): most likely its valve is shut or its strainer blocked ({ $chance }).
    .do = Pressure off, tank valve shut, gloves on: then open the section's strainer and clean it with a soft brush or air, never the mouth. Look at its valve and hose too.
section_restricted = Section { $section } (tips { $tips }) most likely gives { $loss } less than the best-fed section ({ $low } to { $high }). Chance that it is restricted: { $chance }.
    .do = Pressure off, tank valve shut, gloves on: then open the section's strainer and clean it with a soft brush or air, never the mouth. Look at its valve and hose too.
boom_all_high = All tips give more than new ones would at this pressure, by { $off } ({ $low } to { $high }): the gauge reads low, the set is worn alike, or larger tips are fitted. Cups alone cannot tell which.
    .do = Read the pressure at a tip with a gauge you trust, and look at the size printed on the tips.
boom_all_low = All tips give less than new ones would at this pressure, by { $off } ({ $low } to { $high }): the gauge reads high, pressure is lost on the way to the boom, or smaller tips are fitted. Cups alone cannot tell which.
    .do = Read the pressure at a tip with a gauge you trust, and look at the size printed on the tips.
boom_one_side-left = The left half gives { $by } less than the right half.
    .do = Look for a kinked hose, a half-shut valve and a dirty strainer on that side; read the pressure at a tip on each side.
boom_one_side-right = The right half gives { $by } less than the left half.
    .do = Look for a kinked hose, a half-shut valve and a dirty strainer on that side; read the pressure at a tip on each side.
boom_tapers = Both ends of the boom give less than its middle, by { $by }.
    .do = The boom hose is small for this flow, or its lining has come loose: read the pressure at an end tip and at a middle one.
flow_drifts-fell = The flow most likely fell by { $by } from the first cup to the last: in the order of the cups, not along the boom.
    .do = Look at what holds the pressure: a battery running down, a demand switch that cuts in and out, a regulator that is not steady, a strainer filling up. Then catch the first tips again.
flow_drifts-rose = The flow most likely rose by { $by } from the first cup to the last: in the order of the cups, not along the boom.
    .do = Let it run until the pressure is steady; look at the regulator and the engine speed. Then catch the first tips again.
cups_all_alike = All { $count } cups read just the same. Tips are hardly ever so alike.
    .do = Catch two or three of them again and read them one by one.
nothing_found = These cups show nothing wrong: every tip is sound with a chance of at least { $chance }.
tip_most_likely-nothing = Tip { $tip } gives next to nothing: most likely { $first } ({ $first_chance }), or { $second } ({ $second_chance }).
    .do = Pressure off. Clean the tip and its strainer with a soft brush or air, gloves on, never the mouth, and catch it again.
tip_most_likely-nothing_sure = Tip { $tip } gives next to nothing: most likely { $first } ({ $first_chance }).
    .do = Pressure off. Clean the tip and its strainer with a soft brush or air, gloves on, never the mouth, and catch it again.
tip_most_likely-low = Tip { $tip } is low: most likely { $first } ({ $first_chance }), or { $second } ({ $second_chance }).
    .do = Swap tips { $tip } and { $other } and catch both: if the low one moves with the tip, it is the tip.
tip_most_likely-low_sure = Tip { $tip } is low: most likely { $first } ({ $first_chance }).
    .do = Swap tips { $tip } and { $other } and catch both: if the low one moves with the tip, it is the tip.
tip_most_likely-low_alone = Tip { $tip } is low: most likely { $first } ({ $first_chance }), or { $second } ({ $second_chance }).
    .do = Catch it again, then clean it.
tip_most_likely-low_alone_sure = Tip { $tip } is low: most likely { $first } ({ $first_chance }).
    .do = Catch it again, then clean it.
tip_most_likely-high = Tip { $tip } is high: most likely { $first } ({ $first_chance }), or { $second } ({ $second_chance }).
    .do = Look at the size and colour of the tip, then catch it again.
tip_most_likely-high_sure = Tip { $tip } is high: most likely { $first } ({ $first_chance }).
    .do = Look at the size and colour of the tip, then catch it again.
tip_most_likely-low_once = Tip { $tip } is low: most likely { $first } ({ $first_chance }), or { $second } ({ $second_chance }).
    .do = Catch it again.
tip_most_likely-low_once_sure = Tip { $tip } is low: most likely { $first } ({ $first_chance }).
    .do = Catch it again.
tip_most_likely-high_once = Tip { $tip } is high: most likely { $first } ({ $first_chance }), or { $second } ({ $second_chance }).
    .do = Catch it again.
tip_most_likely-high_once_sure = Tip { $tip } is high: most likely { $first } ({ $first_chance }).
    .do = Catch it again.
cup_misread = A cup of tip { $tip } was most likely misread or mistimed ({ $chance }). By its other cups the tip is in order; the odd one hardly counts.
tip_most_likely-odd = Tip { $tip } is odd: most likely { $first } ({ $first_chance }), or { $second } ({ $second_chance }).
    .do = Catch it again.
tip_most_likely-odd_sure = Tip { $tip } is odd: most likely { $first } ({ $first_chance }).
    .do = Catch it again.

## What was read beside the cups

tips_get_pressure-less = The tips most likely get { $off } less pressure than was read ({ $low } to { $high }): the gauge reads high, or pressure is lost on the way.
    .do = Hold the gauge against one you trust; look at strainers, valves and hoses between gauge and boom.
tips_get_pressure-more = The tips most likely get { $off } more pressure than was read ({ $low } to { $high }): the gauge reads low.
    .do = Hold the gauge against one you trust, and replace it if it is off.
pressure_zero-lost = About { $lost } of what the gauge shows does not reach the tips at any pressure ({ $low } to { $high }): the gauge starts too high, or check valves and strainers take it.
pressure_zero-shown = At any pressure the tips get about { $lost } more than the gauge shows ({ $low } to { $high }): it starts too low.
set_is_off-high = At the pressure they get, the tips most likely give { $off } more than new ones ({ $low } to { $high }): the set is worn alike, or larger tips are fitted.
    .do = Look at the size printed on the tips. If it is right, replace the whole set.
set_is_off-low = At the pressure they get, the tips most likely give { $off } less than new ones ({ $low } to { $high }): smaller tips are fitted, or all of them are coated.
    .do = Look at the size printed on the tips. If it is right, clean them all with a soft brush, gloves on, never the mouth, and catch again.
boom_parts_in_order = Beside the cups: the set of tips gives what new ones would, and the gauge shows what the tips get, as far as this tells.
stop_boom_off = Nothing until it is switched on: then catch the cups again.
stop_settled = Nothing: these cups leave nothing open that is worth a minute.
stop_costs_more = Nothing: the next check would take longer than what it settles is worth. What is open stays open.
check_valves_leak = Check valves leak: tips drip five seconds after shutting off. While it sprays that changes nothing, so the cups do not show it.
    .do = Pressure off, gloves on: clean the check valve of each such body with a soft brush or air, never the mouth; replace what is worn.
check_valves_leak-tip = A check valve leaks: tip { $tips } drips five seconds after shutting off. While it sprays that changes nothing, so the cups do not show it.
    .do = Pressure off, gloves on: clean the check valve of each such body with a soft brush or air, never the mouth; replace what is worn.
check_valves_leak-tips = Check valves leak: tips { $tips } drip five seconds after shutting off. While it sprays that changes nothing, so the cups do not show it.
    .do = Pressure off, gloves on: clean the check valve of each such body with a soft brush or air, never the mouth; replace what is worn.
cups_foam = The cups foam: they are taken as read less well.
    .do = Let the foam settle and read the line of the water, or weigh the cups.
tip_swapped-stayed = Place { $tip } stays low with another tip in it: most likely the body, the hose to it or its check valve ({ $chance }).
    .do = Pressure off, tank valve shut, gloves on: open that body; clean its strainer, check valve and hose with a soft brush or air, never the mouth. Catch it again.
tip_swapped-moved = What was low went along with tip { $tip }: most likely it is the tip ({ $chance }).
    .do = Pressure off, gloves on: clean the tip and its strainer with a soft brush or air, never the mouth. If it stays low, replace it.
few_tips = So few tips were caught that a tip's own fault looks like the whole boom's.
    .do = Catch at least three tips, better all of them.
pressure_far_from_rated = The pressure, { $pressure }, is far from { $rated }, at which the tip is rated: what is told of the whole boom rests on it.
    .do = Look at the pressure and its unit again.
second_pressure_near = The second pressure ({ $second }) is next to the first ({ $first }): it tells nothing of gauge and wear.
    .do = Catch a few tips again at about twice the pressure, or half of it, within what the tips are made for.
pressures_without_rated = Pressures were read, but it is not known what a new tip gives, so they tell nothing here.
    .do = Give the size on the tips, or their rated flow, and the pressure of the catch.
tip_pressure_no_such_tip = A pressure was read at tip { $tip }, but no such tip was caught.

## On the command line

line-most_likely_wrong = Most likely
line-look_next = Look at next
check-catch_again = { $tips-count ->
        [one] Catch tip { $tips } once more.
       *[other] Catch tips { $tips } once more.
    }
check-look_at_tip = { $tips-count ->
        [one] Look at the size and colour of tip { $tips }.
       *[other] Look at the size and colour of tips { $tips }.
    }
check-read_pressure = { $section ->
        [0] Read the pressure at a tip with a gauge you trust.
       *[other] Read the pressure at a tip of section { $section } and at one of the best-fed section.
    }
check-open_strainer = Open the strainer of section { $section }: pressure off, tank valve shut, gloves on; a soft brush or air, never the mouth.
check-swap_tips = Swap tips { $tips } (pressure off, gloves on) and catch both: if the low one moves with the tip, it is the tip; if it stays, it is the body, its hose or its check valve.
check-second_pressure = Catch tips { $tips } at another pressure, about half or twice this one and within what the tips are made for, all else unchanged. It tells whether the gauge or lost pressure is why the whole boom is off.
check-new_tip = Fit one new tip of the same kind and size (pressure off, gloves on) and catch it here: if it is off as much as the others, it is the pressure; if not, the set is worn.
check-worth = { $much ->
        [much] Takes about { $minutes } min and settles a good deal.
        [some] Takes about { $minutes } min and may settle it.
       *[little] Takes about { $minutes } min and settles little.
    }

## Mistakes

no_sections = sections: a list of lists is needed
    .do = write "sections": [["19 fl oz", "18 fl oz"], ["15 fl oz", null]]
wrong_kind-sections = { $given } will not do
    .do = write the readings of each section in a list of its own, as [["19 fl oz"], ["15 fl oz"]]
needs_rated = { $field } needs the rated flow of a new tip
    .do = give "rated": "0.30 gal/min @ 40 psi", and "pressure" where it was another
second_other_tips = the second pressure has { $given } readings, the boom { $tips } tips
    .do = give the same sections again, null for each tip that was not caught at that pressure
wrong_kind-second = { $given } will not do
    .do = write it as { "{" } "pressure": "20 psi", "sections": [["13 fl oz", null]] { "}" }
wrong_kind-tip_pressure = { $given } will not do
    .do = write it as [{ "{" } "tip": 5, "pressure": "38 psi", "marks": "1 psi" { "}" }]
wrong_kind-tip_of_boom = { $given } is no tip of this boom
    .do = give the number of a tip, counted from 1 on the left as the driver sits
wrong_kind-groups = { $given } will not do
    .do = write the tips that are meant to differ as lists of numbers, as [[1, 12]]
wrong_kind-run = { $given } will not do
    .do = give the same whole number to all cups of one timed run, as 1
wrong_kind-swapped = { $given } will not do
    .do = write it as { "{" } "tips": [7, 8], "readings": ["19 fl oz", "10 fl oz"] { "}" }: two tips, and what was caught after at the place of each
wrong_kind-seen = { $given } will not do
    .do = write it as { "{" } "tip": 4, "what": "streaky_fan" { "}" }; also even_fan, right_size, wrong_size, drips
wrong_kind-looked = { $given } will not do
    .do = answer yes or no, as { "{" } "strainers_clean": "no", "foam": "yes" { "}" }
wrong_kind-counts = { $given } will not do
    .do = count with whole numbers, as [tips] and under it sound = 220 and worn = 9
no_cups = no cup was caught, so there is nothing to go by
    .do = add [catch] with its readings

## Help

help-diagnose = What is most likely wrong, and what to look at next
help-diagnose-after =
    Examples:
      evenswath diagnose my-visit.toml
      evenswath diagnose --batch sprayers.jsonl --json
      evenswath diagnose my-visit.toml --records season.toml
    The file is a visit file, or one test. A line of a batch:
    { "  {" }"rated": "0.30 gal/min @ 40 psi", "pressure": "40 psi", "time": "30 s", "step": "1 fl oz",
       "sections": [["19 fl oz", "18 fl oz"], ["15 fl oz", null]]{ "}" }
    Sections go from the left as the driver sits; null where a tip was not caught, a list where it was
    caught again. One test in a file of its own has the same fields as TOML.
    Beside the cups a line may tell:
      "second": { "{" }"pressure": "80 psi", "sections": [["27 fl oz", null], [null, null]]{ "}" }
      "tip_pressure": [{ "{" }"tip": 2, "pressure": "36 psi", "marks": "1 psi"{ "}" }], "gauge_marks": "2 psi",
      "gauge_rests_at": "3 psi", "new_tip": ["19 fl oz"], "groups": [[1, 12]],
      "swapped": [{ "{" }"tips": [2, 3], "readings": ["19 fl oz", "15 fl oz"]{ "}" }],
      "seen": [{ "{" }"tip": 2, "what": "streaky_fan"{ "}" }], "looked": { "{" }"strainers_clean": "no", "foam": "yes"{ "}" }
    Cups under one timed run carry its number: { "{" }"reading": "19 fl oz", "run": 1{ "}" }.
    A file of records counts what is certain, of a sprayer all tips or none:
    { "  [" }tips]      sound = 220, worn = 9, partly_plugged = 6, plugged = 2, wrong_tip = 3, a line each
    { "  [" }cups]      right = 236, misread = 4
    { "  [" }sections]  free = 28, restricted = 2, shut = 0
    { "  [" }swaps]     tip = 6, place = 1
help-diagnose-file = The visit file, or a file of one test; - for standard input
help-diagnose-batch = A file of JSON lines, one test each; - for standard input
help-diagnose-records = What turned out before, added to what is believed: a file of counts, or a visit file with what was done after; may stand several times
