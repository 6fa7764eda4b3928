### What people see beside the readings, what brings it, and the check that tells the causes apart.

## What is seen

phrase-symptom_no_pressure = will not build pressure
phrase-symptom_needle_jumps = needle of the gauge jumps
phrase-symptom_foam = foam or milky water in the tank
phrase-symptom_section_weak = one section weak, all along it
phrase-symptom_drips = tips still drip { $seconds } s after shutting off
phrase-symptom_falls_warm = pressure falls as it warms: over { $percent } in { $minutes } min
phrase-symptom_falls_fast = pressure falls when the pump turns faster
phrase-symptom_too_high = pressure will not come down
phrase-symptom_knocks = pump knocks or hoses shake
phrase-symptom_weak_engine_off = 12 V pump weak with the engine off

## What is the matter, and what puts it right

phrase-trouble_suction_air = air gets in on the suction side
phrase-remedy_suction_air = Pressure off, tank valve shut: tighten the clamps from tank to pump, clean and grease the seal of the strainer's lid, replace cracked hose.
phrase-trouble_low_water = so little water that the pump draws air
phrase-remedy_low_water = Fill the tank at least half with clean water and try again.
phrase-trouble_suction_strainer = suction strainer plugged, or tank valve half shut
phrase-remedy_suction_strainer = Engine off, pressure off, tank valve shut, gloves on: clean the strainer with a soft brush or air, never the mouth. Then open the tank valve all the way.
phrase-trouble_suction_hose = suction hose kinked, soft, or its lining loose
phrase-remedy_suction_hose = Engine off, pressure off, tank valve shut: fit new suction hose that does not go flat, as wide as the pump's inlet, without kinks.
phrase-trouble_tank_vent = vent of the tank's lid plugged
phrase-remedy_tank_vent = Engine off, gloves on: take the lid off and clean its vent. Do not spray with the lid loose.
phrase-trouble_agitation = agitation takes too much of the flow
phrase-remedy_agitation = Shut the agitation valve until the surface just moves, or fit a smaller agitation jet. Some products need strong agitation: the label says so.
phrase-trouble_worn_pump = pump worn
phrase-remedy_worn_pump = Have the pump rebuilt or replaced; until then shut agitation as far as the label lets you, and spray at a lower rate.
phrase-trouble_pump_valves = valve or diaphragm of the pump broken or stuck
phrase-remedy_pump_valves = Stop using the pump; let someone who knows pumps open it and renew valves and diaphragms.
phrase-trouble_slow_pump = pump turns too slowly, or its belt slips
phrase-remedy_slow_pump = Run the shaft at the speed the pump is made for, never faster. Engine off and key out before you tighten a belt.
phrase-trouble_regulator_open = regulator or relief valve stays open
phrase-remedy_regulator_open = Engine off, pressure off, tank valve shut: clean the valve's seat, look at spring and seal, replace what is worn.
phrase-trouble_regulator_shut = regulator stuck shut, or turned in too far
phrase-remedy_regulator_shut = Turn it out. If the pressure stays up: engine off, let the pressure off, then free and clean the valve.
phrase-trouble_return_line = regulator's return line kinked or plugged
phrase-remedy_return_line = Engine off, pressure off: clear the return line, lay it without kinks, never put a valve in it.
phrase-trouble_controller = controller hunts
phrase-remedy_controller = Look up in its manual how fast it may move its valve, and slow it down; look at plugs, flow meter and speed sensor.
phrase-trouble_air_chamber = air chamber has lost its charge, or has too much
phrase-remedy_air_chamber = Engine off, pressure off: charge it with air to between { $low } and { $high } of the pressure you spray at. If it does not hold, its diaphragm is broken.
phrase-trouble_gauge = gauge, or the line to it, at fault
phrase-remedy_gauge = Pressure off: clean the line to the gauge, or fit a new gauge.
phrase-trouble_pressure_strainer = strainer on the pressure side plugged
phrase-remedy_pressure_strainer = Engine off, pressure off, tank valve shut, gloves on: clean it with a soft brush or air, never the mouth.
phrase-trouble_large_tips = tips take more than the pump gives: worn or too large
phrase-remedy_large_tips = Fit new tips of a size the pump can feed.
phrase-trouble_section_valve = section valve does not open or shut all the way
phrase-remedy_section_valve = Engine off, pressure off, gloves on: look at its plug, clean or replace the valve.
phrase-trouble_section_strainer = section's strainer or hose plugged or kinked
phrase-remedy_section_strainer = Engine off, pressure off, tank valve shut, gloves on: clean the strainer with a soft brush or air, never the mouth; lay the hose straight.
phrase-trouble_check_valves = check valves at the tips dirty or worn
phrase-remedy_check_valves = Pressure off, gloves on: clean or replace the check valves of the bodies that drip.
phrase-trouble_boom_air = air trapped in the ends of the boom
phrase-remedy_boom_air = Pressure off, gloves on: open the ends of the boom until water comes without air; have the ends shortened or fitted with a bleed.
phrase-trouble_splashing = return or agitation splashes from above
phrase-remedy_splashing = Engine off: lead the line down to the bottom of the tank, with a small hole above the water so that it cannot draw the tank empty.
phrase-trouble_foaming = what is in the tank foams
phrase-remedy_foaming = Less agitation, return line under water; a defoamer only where the label allows it. Calibrate with clean water.
phrase-trouble_voltage = too little voltage at the pump
phrase-remedy_voltage = Lead off the battery first: clean its posts, the ground and the plugs, fit thicker wire; then charge or replace the battery.
phrase-trouble_pressure_switch = pump's pressure switch cuts in and out
phrase-remedy_pressure_switch = Let some flow back to the tank, or fit larger tips or more of them, so that the pump never has to stop; have the switch set or replaced.
phrase-trouble_hot_motor = pump's motor gets hot and cuts out
phrase-remedy_hot_motor = Let it cool, with the switch off. Lower pressure, fewer or smaller tips, shade and air around the motor.
phrase-trouble_other = something else, or more than one thing
phrase-remedy_other = Let a sprayer mechanic or your dealer look at it.

## Before a check

phrase-before_running = Parked, brake on, out of gear, clean water only; nobody near a turning shaft.
phrase-before_engine_off = Engine and pump off, key out.
phrase-before_pressure_off = Let the pressure off until the gauge is at zero.
phrase-before_tank_valve_shut = Shut the tank valve.
phrase-before_gloves = Gloves and eye protection on.

## The checks: what is done, what is asked

phrase-check_tank_low = Look into the tank from beside.
phrase-asks_tank_low = Is it less than a quarter full?
phrase-check_line_above_water = Look in through the lid; do not reach in.
phrase-asks_line_above_water = Does a return or agitation line end above the water?
phrase-check_not_water = Think what was in the tank, and look.
phrase-asks_not_water = Is there anything in it but clean water: product, soap, tank cleaner?
phrase-check_milky_water = Look into the tank from beside while it runs, then stop it and wait two minutes.
phrase-asks_milky_water = Does the water turn milky while it runs, and clear up when it stands?
phrase-check_shaft_slow = Read the speed of the PTO or engine from the seat.
phrase-asks_shaft_slow = Is it slower than the pump is made for?
phrase-check_agitation_shut = Shut the agitation.
phrase-asks_agitation_shut = Does it get clearly better at once?
phrase-check_controller_manual = Put the controller in manual.
phrase-asks_controller_manual = Does it get clearly better, the needle at rest?
phrase-check_turned_faster = From the seat, turn the pump a little faster, never over the speed it is made for.
phrase-asks_turned_faster = Does the pressure fall, or stop rising?
phrase-check_hose_flat = While it sprays, look at the suction hose from where you are away from the shaft.
phrase-asks_hose_flat = Is it sucked flat or kinked?
phrase-check_sections_shut = Shut all sections from the seat, for a moment only.
phrase-asks_sections_shut = Does the pressure come up well?
phrase-check_return_flow = While it sprays, look at the regulator's return where it runs into the tank, from beside.
phrase-asks_return_flow = Does much water come back through it?
phrase-check_in_time = Watch the needle while all tips spray. More than { $swing } of swing is a defect.
phrase-asks_in_time = Does it jump fast and evenly, in time with the pump?
phrase-check_engine_on = Start the engine, brake on, and let it run a minute.
phrase-asks_engine_on = Does the pump come back?
phrase-check_starts_and_stops = Listen to the pump for a minute while it sprays.
phrase-asks_starts_and_stops = Does it start and stop by itself, again and again?
phrase-check_single_tips_drip = Shut the boom off and walk along behind it after { $seconds } s.
phrase-asks_single_tips_drip = Do only single tips drip, their neighbors not?
phrase-check_drip_stops = Shut the boom off and wait a minute.
phrase-asks_drip_stops = Does the dripping stop by itself?
phrase-check_tips_over_new = Catch three tips for 30 s at the pressure you have.
phrase-asks_tips_over_new = Do they give over { $percent } more than new ones at that pressure?
phrase-check_not_to_zero = Open a section, so that all pressure goes, and look at the gauge.
phrase-asks_not_to_zero = Does its needle stay above zero?
phrase-check_lid_loose = Loosen the tank's lid. Then run it so, clean water only and nobody near the shaft, and watch the pressure from the seat.
phrase-asks_lid_loose = Does the pressure come back?
phrase-check_motor_cooled = Do not touch the hot motor. Wait 20 min, then run it again.
phrase-asks_motor_cooled = Does it run as before?
phrase-check_pump_weeps = Look at the pump all around, and at its oil where it has a glass.
phrase-asks_pump_weeps = Does it drip or weep, or is its oil milky?
phrase-check_return_kinked = Feel along the regulator's return line to its end.
phrase-asks_return_kinked = Is it kinked, flattened or plugged?
phrase-check_valve_sticks = Switch the section on and off from the seat; a helper watches its valve from out of the spray.
phrase-asks_valve_sticks = Does the valve stop halfway, or not move?
phrase-check_volts_low = With a voltmeter at the pump's own plug while it sprays; keep the probes apart, and rings and tools off the battery.
phrase-asks_volts_low = Does it read less than { $volts } V?
phrase-check_chamber_charge = Read the air chamber's charge with a tire gauge. It belongs between { $low } and { $high } of the pressure you spray at.
phrase-asks_chamber_charge = Is it outside that?
phrase-check_suction_strainer_dirty = Open the suction strainer; catch what runs out.
phrase-asks_suction_strainer_dirty = Is it so dirty that water hardly gets through?
phrase-check_suction_tightened = Tighten every clamp from tank to pump, clean and grease the seal of the strainer's lid. Open the tank valve again and run it with nobody near the shaft.
phrase-asks_suction_tightened = Does it run clearly steadier?
phrase-check_section_strainer_dirty = Open the section's strainer and follow its hose.
phrase-asks_section_strainer_dirty = Is it dirty, or the hose kinked?
phrase-check_check_valve_swapped = Swap the check valve of a body that drips with that of one that does not, then spray and shut off again.
phrase-asks_check_valve_swapped = Does the drip move along with it?
phrase-check_pressure_strainer_dirty = Open the strainer between pump and boom.
phrase-asks_pressure_strainer_dirty = Is it so dirty that water hardly gets through?
phrase-check_second_gauge = Fit a gauge you trust beside the first. Then run it with nobody near the shaft and read both.
phrase-asks_second_gauge = Do they differ by more than { $percent }?
phrase-check_pump_flow_low = Lead the pump's outlet into a drum and tie the hose, or let your dealer do it. Open the tank valve, run the pump at its speed with nobody near the shaft, and time 30 s.
phrase-asks_pump_flow_low = Does it give clearly less than its plate says?

## How likely, and where it ends

phrase-chance_sure = almost certainly
phrase-chance_likely = likely
phrase-chance_maybe = may be
phrase-chance_hardly = less likely
phrase-nothing_more = Nothing that can be done at the sprayer tells these apart any more: let a sprayer mechanic or your dealer look.

## What is told of a visit

symptom_open = Seen: { $seen }. Most likely: { $cause } ({ $chance }), or { $second } ({ $second_chance }).
    .do = { $check } { $asks }
symptom_settled = Seen: { $seen }. Most likely: { $cause } ({ $chance }).
    .do = { $remedy }
symptom_stop = Seen: { $seen }. Most likely: { $cause } ({ $chance }), or { $second } ({ $second_chance }).
    .do = { $no_more } { $remedy }

working-symptom = The chance of a cause
formula-chance_common_seen_checked_all_causes = chance = common × seen × checked ÷ all causes
figure-cause = cause
figure-common = common
figure-seen = seen
figure-checked = checked
figure-all_causes = all causes
source-bayes_rule_over_a_table_of_common_practice_from_memory = Bayes' rule over a table of common practice, from memory

## Mistakes

symptom_none = no symptom is given, so there is nothing to go by
    .do = give at least one symptom that is seen
symptom_two_answers = "{ $given }" is answered in two ways
    .do = answer it once
symptom_other_sprayer = "{ $given }" does not belong to this kind of sprayer
    .do = take it out, or put right what the sprayer is
