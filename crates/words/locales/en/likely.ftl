### What is most likely wrong, beside the verdict: on the app's sheet and on paper.

## What a tip most likely is, in a word or two under its cup

tip_likely-sound = sound
tip_likely-worn = worn
tip_likely-partly_plugged = partly plugged
tip_likely-plugged = plugged
tip_likely-other_size = other size
tip_likely-at_place = body or hose
tip_likely-doubtful_cup = doubtful cup

## Heads

likely-head = What is most likely wrong
likely-next = The next best check
likely-or = Or else
likely-stop = Nothing more is worth checking: the next check would take longer than what it settles is worth.
likely-key = rings: each tip seen from below, as it most likely is
likely-next_line = Look at next: { $what } { $minutes }

## Sections

likely-section = Section { $section }
likely-section_shut = Section { $section }: most likely shut
likely-section_loses = Section { $section }: most likely { $loss } less
likely-with_chance = { $is }, most likely { $chance }

## Checks

likely-minutes = About { $minutes } min.
likely-how_catch_again = Same cup, same time, same pressure. Clean water; gloves and eye protection on.
likely-how_look_at_tip = Pump off and pressure off first, gloves on. Hold its number and colour beside its neighbor’s.
likely-how_read_pressure = Pump off and pressure off while the gauge is fitted, gloves on. Then clean water, and nobody by the shaft.
likely-how_open_strainer = Keep what runs out away from wells and drains.
likely-how_swap_tips = Pump off and pressure off first, gloves on; never a tip to the mouth. Same cup, same time, same pressure.
likely-how_second_pressure = Clean water, gloves and eye protection on; nobody by the shaft.
likely-how_new_tip = Pump off and pressure off first, gloves on; never a tip to the mouth. Same cup, same time, same pressure.

## What was done, to be held against the old reading

likely-cleaned = { $count ->
        [one] cleaned: catch tip { $tips } again
       *[other] cleaned: catch tips { $tips } again
    }
likely-new_tips = { $count ->
        [one] new tip fitted: catch tip { $tips } again
       *[other] new tips fitted: catch tips { $tips } again
    }
likely-was = before
likely-now = now { $reading }
likely-swapped = swapped: catch tips { $tips }
likely-other_pressure = { $count ->
        [one] at another pressure: catch tip { $tips }
       *[other] at another pressure: catch tips { $tips }
    }
likely-pressure_at = write down the pressure at tip { $tip }
likely-beside = Read or seen beside the cups
