### The cups and the spacing: what they tell, what cannot be, how it was reached; and the machine they are about.

## What was done before a round of cups

round-as_found = as found
round-after_cleaning = after cleaning
round-new_tips = new tips
round-pressure_changed = pressure changed
round-swapped = swapped

## What a round of cups tells

tip_high = Tip { $tip } puts out { $off } more than the mean of the tips ({ $low } to { $high } more).
    .do = Replace tip { $tip } with one of the same kind and size, and catch it again.
tip_low = Tip { $tip } puts out { $off } less than the mean of the tips ({ $low } to { $high } less).
    .do = Clean tip { $tip } and its strainer with a soft brush or air, never the mouth, and catch it again; replace it if it stays low.
tips_plugged = { $tips-count ->
        [one] Tip { $tips } is plugged. It is left out of the mean.
       *[other] Tips { $tips } are plugged. They are left out of the mean.
    }
    .do = { $tips-count ->
        [one] Pressure off. Clean the tip and its strainer with a soft brush or air, never the mouth, and catch it again.
       *[other] Pressure off. Clean each of them and its strainer with a soft brush or air, never the mouth, and catch them again.
    }
tips_cannot_tell-longer = { $tips-count ->
        [one] Tip { $tips } cannot be told yet: most likely { $off } off the mean, but it may be { $low } to { $high }.
       *[other] Tips { $tips } cannot be told yet: the marks are too coarse for them, or the time too short.
    }
    .do = { $again-count ->
        [one] Catch it again for { $time }; about { $spent }.
       *[other] Catch tips { $again } again for { $time }; about { $spent }.
    }
tips_cannot_tell-finer = { $tips-count ->
        [one] Tip { $tips } cannot be told yet: most likely { $off } off the mean, but it may be { $low } to { $high }.
       *[other] Tips { $tips } cannot be told yet: the marks are too coarse for them, or the time too short.
    }
    .do = { $again-count ->
        [one] Catch it again for { $time } and read it to { $step }, on the finer side of the cup; about { $spent }.
       *[other] Catch tips { $again } again for { $time } and read them to { $step }, on the finer side of the cup; about { $spent }.
    }
tips_cannot_tell-enough = { $tips-count ->
        [one] Tip { $tips } cannot be told yet: most likely { $off } off the mean, but it may be { $low } to { $high }.
       *[other] Tips { $tips } cannot be told yet: the marks are too coarse for them, or the time too short.
    }
    .do = One more such cup costs more time than it settles. If in doubt, change the tip.
tips_cannot_tell-some_enough = { $tips-count ->
        [one] Tip { $tips } cannot be told yet: most likely { $off } off the mean, but it may be { $low } to { $high }.
       *[other] Tips { $tips } cannot be told yet: the marks are too coarse for them, or the time too short.
    }
    .do = For those not named below, one more cup costs more time than it settles.
tips_cannot_tell-named_below = { $tips-count ->
        [one] Tip { $tips } cannot be told yet: most likely { $off } off the mean, but it may be { $low } to { $high }.
       *[other] Tips { $tips } cannot be told yet: the marks are too coarse for them, or the time too short.
    }
tips_catch_next-longer = { $again-count ->
        [one] Catch tip { $again } for { $time }.
       *[other] Catch tips { $again } for { $time }.
    }
    .do = About { $spent }.
tips_catch_next-finer = { $again-count ->
        [one] Catch tip { $again } for { $time } and read it to { $step }, on the finer side of the cup.
       *[other] Catch tips { $again } for { $time } and read them to { $step }, on the finer side of the cup.
    }
    .do = About { $spent }.
tips_not_caught = { $tips-count ->
        [one] Tip { $tips } was not caught; whether it agrees is open.
       *[other] { $caught } of { $all } tips were caught; whether the rest ({ $tips }) agree is open.
    }
tips_agree_without = { $still-count ->
        [0] Without tip { $tip } the others agree with each other: mean { $without } instead of { $with }.
        [one] Tip { $tip } moves the mean from { $without } to { $with }; without it tip { $still } is still off.
       *[other] Tip { $tip } moves the mean from { $without } to { $with }; without it tips { $still } are still off.
    }
tips_within-all = { $count ->
        [2] Both tips are within the limit: neither is likely to be more than { $most } off the mean.
       *[other] All { $count } tips are within the limit: none is likely to be more than { $most } off the mean.
    }
tips_within-all_likely = { $count ->
        [2] Both tips are most likely within the limit.
       *[other] All { $count } tips are most likely within the limit.
    }
tips_within-some = { $count } tips are within the limit: none of them is likely to be more than { $most } off the mean.
tips_within-some_likely = { $count } tips are most likely within the limit.
tips_within-one = One tip is within the limit.

## Against new tips

tips_replace_set-worn = { $good-count ->
        [0] { $off } of { $of } tips put out more than the limit over a new tip. The set is worn.
        [one] { $off } of { $of } tips put out more than the limit over a new tip; tip { $good } does not. The set is worn.
       *[other] { $off } of { $of } tips put out more than the limit over a new tip; tips { $good } do not. The set is worn.
    }
    .do = Replace the whole set, not tip by tip, and catch again: new tips can be off too.
tips_replace_set-off = { $good-count ->
        [0] { $off } of { $of } tips are off.
        [one] { $off } of { $of } tips are off; tip { $good } is in order.
       *[other] { $off } of { $of } tips are off; tips { $good } are in order.
    }
    .do = Replace the whole set, not tip by tip, and catch again: new tips can be off too.
tips_worn = { $tips-count ->
        [one] Tip { $tips } agrees with the others but puts out { $most } against a new tip.
       *[other] Tips { $tips } agree with the others but put out up to { $most } against a new tip.
    }
    .do = Worn out: replace, with the same kind and size.
boom_under_new-tip = The tip puts out { $under } less than new. No tip wears small: the tip's size, the pressure at it or the gauge does not agree with the rated flow.
    .do = Look at the size printed on the tips, read the pressure at a tip, and try another gauge; clean the strainers.
boom_under_new-boom = The whole boom puts out { $under } less than new tips would. No tip wears small: the tips' size, the pressure at them or the gauge does not agree with the rated flow.
    .do = Look at the size printed on the tips, read the pressure at a tip, and try another gauge; clean the strainers.
tips_under_new = { $tips-count ->
        [one] Tip { $tips } agrees with the others but puts out { $under } less than a new one: partly blocked, or another size.
       *[other] Tips { $tips } agree with the others but put out up to { $under } less than new ones: partly blocked, or another size.
    }
    .do = Clean tip and strainer with a soft brush or air, never the mouth; look at the size printed on it.

## What to do with a tip, in a word or two

change-unplug = unplug it
change-replace = replace it
change-clean = clean it
change-worn = worn, replace it
change-catch_again = catch it again
change-catch = catch it

## Readings that cannot be

catch_doubtful_kept = Tip { $tip }: { $reading } was kept though { $why }.
catch_marks_coarser = Tip { $tip }: { $reading } was read on marks { $step } apart, which is more than was caught.
    .do = Use a cup with finer marks, or catch longer.
phrase-absurd_runs_over = the cup holds { $holds } and would have run over
phrase-absurd_times_new = that is { $flow }, { $times } times what a new tip gives ({ $new })
phrase-absurd_more_than_any = that is { $flow }, more than { $outlet } gives
word-outlet_boom_tip = any tip on a boom
word-outlet_cluster = any cluster or boomless tip
word-outlet_hand_gun = any hand gun

## What is wrong with the cups

catch_no_time = a catch over { $given } cannot be; the time must be more than nothing
    .do = write how long each cup was held under its tip, as 30 s
catch_nothing = no tip was caught
    .do = write a reading for each tip, 0 for one that gives nothing
catch_too_many_tips = { $tips } tips are more than any boom has (at most 1000)
    .do = give the tips of one boom
catch_absurd = tip { $tip }: { $reading } in { $time } cannot be: { $why }
    .do = look at the reading, its unit and the time; if it is right, say that doubtful readings are to be kept
catch_share-limit = a limit of { $given } cannot be
    .do = more than 0 % and at most 100 %, as 10 %
catch_share-risk = a risk of { $given } cannot be
    .do = more than 0 and less than 0.5, as 0.05
limit_unknown = "{ $given }" is not a limit known here
    .do = give a percentage as 10 %, or one of { $known }

## The limits

limit-mean-10 = no tip more than 10 % from the mean of the tips
limit-mean-5 = every tip within 5 % of the mean of the tips
limit-new-10 = a tip that gives 10 % or more over a new one is worn out
limit-new-over-10 = a tip that gives more than 10 % over a new one is worn out
limit-inspection-10-15 = within 15 % of nominal, 10 % for tips below 1 L/min; of the mean where nominal is not known

source-the_user_s_own_limit = the user's own limit
source-ohio_state_univ_extension_output_errors_of_more_than_10_coun = Ohio State Univ. Extension: output errors of more than 10 % count
source-alberta_agriculture_agdex_606_1_p_11_within_5_of_the_boom_s = Alberta Agriculture, Agdex 606-1, p. 11: within 5 % of the boom's average
source-univ_of_wyoming_extension_2021_10_percent_or_more_over_a_new = Univ. of Wyoming Extension, 2021: 10 percent or more over a new tip
source-usga_2016_differs_by_more_than_10_from_a_new_tip = USGA, 2016: differs by more than 10 % from a new tip
source-uses_limits_from_the_french_order_of_18_dec_2008_nor_agrp082 = uses limits from the French order of 18 Dec 2008 (NOR AGRP0828914A), annex IV B, 9.2.2
source-french_order_of_18_dec_2008_nor_agrp0828914a_annex_iv_b_9_2 = French order of 18 Dec 2008 (NOR AGRP0828914A), annex IV B, 9.2.2: more than 33 % of the tips
source-french_order_of_18_dec_2008_nor_agrp0828914a_annex_iv_b_8_3 = French order of 18 Dec 2008 (NOR AGRP0828914A), annex IV B, 8.3.1.2: more than 5 %
source-jcgm_100_2008_gum_4_3_7_5_1_2_f_2_2_1_marks_hand_and_handlin = JCGM 100:2008 (GUM) 4.3.7, 5.1.2, F.2.2.1; marks, hand and handling each as a share of the catch
source-jcgm_106_2012_the_chance_takes_each_reading_as_an_interval_a = JCGM 106:2012; the chance takes each reading as an interval and counts how alike the other tips are

# The same, where a limit's source stands among the figures of a working.
word-source_own_limit = { source-the_user_s_own_limit }
word-source_mean_10 = { source-ohio_state_univ_extension_output_errors_of_more_than_10_coun }
word-source_mean_5 = { source-alberta_agriculture_agdex_606_1_p_11_within_5_of_the_boom_s }
word-source_new_10 = { source-univ_of_wyoming_extension_2021_10_percent_or_more_over_a_new }
word-source_new_over_10 = { source-usga_2016_differs_by_more_than_10_from_a_new_tip }
word-source_inspection_10_15 = { source-uses_limits_from_the_french_order_of_18_dec_2008_nor_agrp082 }

## How the numbers of the cups were reached

working-catch_mean = The mean of the tips
formula-mean_what_the_tips_that_run_gave_how_many_they_are = mean = what the tips that run gave ÷ how many they are
figure-tips_that_run = tips that run
figure-plugged_left_out = plugged, left out
figure-not_caught = not caught
working-catch_deviation = How far off a tip is
formula-off_catch_mean_1_give_or_take_1_96_marks_12_2_hand_on_the_wa = off = catch ÷ mean − 1, give or take 1.96 × √((marks ÷ √12)² + (√2 × hand on the watch)² + handling²)
figure-tip = tip
figure-hand_on_the_watch = hand on the watch
figure-handling = handling
figure-lowest = lowest
figure-highest = highest
word-no_catch = none
working-catch_verdict = Within or outside the limit
formula-within_where_the_chance_of_being_within_the_limit_is_at_leas = within where the chance of being within the limit is at least 1 − risk, outside where it is at most the risk
figure-limit = limit
figure-who_sets_it = who sets it
figure-risk = risk
word-verdict_open = open

## What the spacing tells

spacing_gap_outside = Gap { $gaps } is { $size } instead of { $intended }, more than { $limit } off.
spacing_gap_outside-left = Gap { $gaps } is { $size } instead of { $intended }, more than { $limit } off.
    .do = Move tip { $tips } to the left by { $distance }, as you sit.
spacing_gap_outside-right = Gap { $gaps } is { $size } instead of { $intended }, more than { $limit } off.
    .do = Move tip { $tips } to the right by { $distance }, as you sit.
spacing_gaps_outside = Gaps { $gaps } are more than { $limit } off { $intended }. The worst is gap { $worst }: { $size }.
spacing_gaps_outside-left = Gaps { $gaps } are more than { $limit } off { $intended }. The worst is gap { $worst }: { $size }.
    .do = Move tip { $tips } to the left by { $distance }, as you sit.
spacing_gaps_outside-right = Gaps { $gaps } are more than { $limit } off { $intended }. The worst is gap { $worst }: { $size }.
    .do = Move tip { $tips } to the right by { $distance }, as you sit.
spacing_move_left = Move tip { $tip } to the left by { $distance }.
spacing_move_right = Move tip { $tip } to the right by { $distance }.
spacing_unmendable = Moving tips cannot mend gap { $gap }: tips { $left } and { $right } cannot move, so it stays at { $size }.
    .do = See whether tip { $left } or { $right } can be moved after all.
spacing_step_too_coarse = Marks every { $step } are too coarse to judge a spacing of { $intended } to { $limit }.
    .do = Read the tape again, to { $finer } or finer.
spacing_gap_open = Gap { $first } is so near the limit that marks every { $step } do not settle it.
    .do = Read the tape again, to { $finer } or finer.
spacing_gaps_open = Gaps { $gaps } are so near the limit that marks every { $step } do not settle them.
    .do = Read the tape again, to { $finer } or finer.
spacing_intended_doubtful = Most gaps are nearer { $middle } than { $intended }. Is { $intended } right?
    .do = If the boom is meant to have { $middle }, give that as the spacing before you move anything.
spacing_move_too_small = By the letter these tips should move too, but by less than { $smallest }, so leave them: { $tips }.
spacing_even-as_meant = Every gap is { $size }.
spacing_even-alike = Every gap is { $size }, within { $limit } of { $intended }.
spacing_even-within = Every gap is within { $limit } of { $intended }; the worst, gap { $worst }, is { $size }.
spacing_gaps_add_up = Small errors of gaps measured one by one add up along the boom.
    .do = Next time stretch one tape along the boom and read the mark of every tip.

## What is wrong with the spacing

spacing_intended = the intended spacing must be more than nothing, got { $given }
    .do = give the spacing the boom is meant to have, as 20 in or 50 cm
spacing_too_few_tips = { $tips ->
        [one] one tip has no gap; at least 2 tips are needed
       *[other] { $tips } tips have no gap; at least 2 tips are needed
    }
    .do = give the mark of every tip off one stretched tape, or every gap
spacing_too_many_tips = { $tips } tips are more than any boom has (at most 1000)
    .do = give the tips of one boom
spacing_gap = gap { $number } must be more than nothing, got { $given }
    .do = measure from the middle of one tip to the middle of the next, as 19 3/4 in
spacing_mark_order = the mark of tip { $tip }, { $given }, is not beyond the mark before it, { $before }
    .do = hook the tape at the leftmost tip as the driver sits and read every tip towards the right
spacing_step = the step of the tape must be more than nothing, got { $given }
    .do = give the distance between two marks of the tape, as 1/8 in
spacing_limit = the limit must be more than 0 % and less than 50 % of the spacing, got { $given }
    .do = 5 % is the usual limit
spacing_no_such_tip = tip { $tip } cannot be a fixed one; the boom has tips 1 to { $tips }
    .do = number the tips from the left as the driver sits, beginning with 1

## How the spacing was reached

working-spacing_of_gaps = How far off the gaps are
formula-error_gap_intended = error = gap − intended
working-spacing_of_marks = How far off the gaps are, off one tape
formula-error_mark_mark_before_it_intended_marks_off_one_tape_do_not = error = mark − mark before it − intended; marks off one tape do not let errors add up
figure-intended = intended
figure-limit_as_a_length = limit as a length
figure-the_marks_leave_open_either_way = the marks leave open, either way
figure-the_worst_gap = the worst gap
figure-its_size = its size

## The machine

# The tips of a boom that are in no group of their own.
group-boom = boom
mounting-rear = behind the driver
mounting-front = in front of the driver

fan_no_length = a height or spacing of { $length } cannot be; it must be more than nothing
fan_angle = no fan is { $angle } wide; 10 to 170 deg would do
fan_overlap = an overlap of { $overlap } cannot be; 0 to 300 % of the spacing would do
boom_empty_section = a boom needs at least one tip in every section
boom_no_spacing = a spacing of { $spacing } cannot be; it must be more than nothing
boom_too_many_tips = { $tips } tips are more than any boom has (at most 1000)
boom_no_such_tip = there is no tip { $number }; the boom has { $tips }, numbered from the left from 1
flow_none = a flow of { $flow } cannot be; it must be more than nothing
    .do = the tip's table gives a flow at a pressure, as 0.30 gal/min @ 40 psi
flow_no_pressure = a pressure of { $pressure } cannot be; it must be more than nothing
    .do = read the gauge while all tips spray
carrier_density = no carrier weighs { $density }; 4.2 to 21 lb/gal (0.5 to 2.5 kg/L) would do
    .do = the fertilizer dealer or the label gives the weight of a gallon; water weighs 8.34 lb/gal
tip_size_unknown = "{ $given }" is not a tip size of ISO 10625
    .do = sizes that would do: { $known }; or give the flow, as 0.30 gal/min @ 40 psi
