### The checker checked: what a controller shows against cups, drive and boom.

controller_flow_doubtful = The controller shows { $shown }, but the tips together give { $real }. Was it read in the right unit, with all tips on?
controller_flow_right = The controller shows { $shown }, the tips together give { $real }: { $error } off, near enough.
controller_flow_off = The controller shows { $shown }, but the tips together give { $real }: { $error } off.
    .do = Multiply its flow meter's number (counts for a volume) by { $factor }: 100 become { $hundred }. Then check again; clean the meter first if it never was.
controller_flow_open = The controller shows { $shown }, the tips together give { $real }: { $error } off ({ $low } to { $high }). These cups do not tell whether that is too much.
    .do = Catch more tips, for longer, in a finer cup, and read the controller again meanwhile.
controller_flow_scaled = { $uncaught } of { $tips } tips were not caught. They are taken to give what the others give, so the sum beside the controller is the less sure.
controller_speed_doubtful = The controller shows { $shown }, but { $real } were driven. Was it read in the right unit?
controller_speed_right = The controller shows { $shown }, { $real } were driven: { $error } off, near enough.
controller_speed_off = The controller shows { $shown }, but { $real } were driven: { $error } off.
    .do = Multiply its speed sensor's number (counts for a distance) by { $factor }: 100 become { $hundred }. Then drive again.
controller_speed_open = The controller shows { $shown }, { $real } were driven: { $error } off ({ $low } to { $high }). These runs do not tell whether that is too much.
    .do = Drive a longer course, or more runs.
controller_rate = The controller shows { $shown }; measured it is { $real }: { $error } off.
controller_widths_count = { $entered } widths are entered, but the boom has { $sections } sections.
controller_widths_right = The section widths entered in the controller agree with tips times spacing.
controller_width_off = Section { $section } is entered as { $entered }, but its tips cover { $real }: it gets { $error } against what it should.
    .do = Enter { $real }: tips times spacing.
controller_swath_off = All widths entered make { $entered }, but the boom covers { $real }: the whole rate and the acres counted are { $error } off.
    .do = Put the widths right, then check the rate again.
controller_closing_right = Closing sections one at a time raises the pressure of the others by { $limit } at most, as it may.
controller_closing_high = With section { $section } closed the pressure goes from { $before } to { $now }: { $rise }, more than { $limit }.
    .do = Have the return of that section's valve set, or the regulator, so that the others keep their pressure.
controller_closing_open = With section { $section } closed the pressure goes from { $before } to { $now }: { $rise }. This gauge does not tell whether that is more than { $limit }.
    .do = Read it on a gauge with finer marks.
controller_closing_nothing = Closing section { $section } changes nothing on the gauge: it may be set just right, or its valve does not close.
    .do = Look whether its tips stop within five seconds, from out of the spray.
controller_closing_stays = With section { $section } open again the pressure is { $now } instead of { $before }: { $rise } off, more than { $limit }.
    .do = Look at the regulator and its valve: they stick, or the controller does not come back.
controller_pulsing = The valves pulsed at { $duty } while cups were caught: a cup then holds a part of the time only, so no rate is worked out from these cups.
    .do = Set the valves to stay fully open (100 %) and catch again.
controller_pulsing_unknown = The valves at the tips pulse, and nobody wrote down how they stood while cups were caught: no rate is worked out from these cups.
    .do = Set the valves to stay fully open (100 %) and catch again.
controller_hold = A parked sprayer has no speed, so a controller left in automatic shuts its valve or hunts: cups then say nothing.
    .do = Put it in manual, switch boom and all sections on, set the pressure of the field with its switch, and leave it alone until the last cup. Where it will not spray standing still, its manual says how to give it a fixed speed; take that out again afterwards.
tip_set_apart = Tip set { $set } stands by itself: { $mean } a tip on average, of { $tips } tips. All else told here is of tip set { $used }.
word-tip_set_unnamed = without a name

working-shown_flow = The flow shown
working-shown_speed = The speed shown
working-section_closed = A section closed
formula-error_100_shown_flow_flow_of_all_tips_1 = error = 100 × (shown flow ÷ flow of all tips − 1)
formula-error_100_shown_speed_speed_driven_1 = error = 100 × (shown speed ÷ speed driven − 1)
formula-rise_100_pressure_then_pressure_before_1 = rise = 100 × (pressure then ÷ pressure before − 1)
figure-shown_flow = shown flow
figure-flow_of_all_tips = flow of all tips
figure-shown_speed = shown speed
figure-speed_driven = speed driven
figure-pressure_before = pressure before
figure-pressure_then = pressure then
source-our_own_limit_widths_are_counted_not_measured = our own limit: widths are counted, not measured
