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
place-spacing = spacing
place-tips = tips
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

rate_outside-plugged = The sprayer puts out { $rate }: { $deviation } from the { $intended } you want, more than { $limit } off.
    .do = Do not mix for a boom with plugged tips: clean them first, then catch again.
rate_cannot_tell-plugged = The sprayer puts out { $rate }: { $deviation } from the { $intended } you want. That may be more than { $limit } off, or not.
    .do = Do not mix for a boom with plugged tips: clean them first, then catch again.
product_under_least-plugged = { $name } goes on at { $rate }, under the label's least of { $least }. It may not do its work.
    .do = Do not mix for a boom with plugged tips: clean them first, then catch again.
product_may_be_under_least-plugged = { $name } goes on at { $rate }, so near the label's least of { $least } that it may be under.
    .do = Do not mix for a boom with plugged tips: clean them first, then catch again.
product_may_be_over_label-plugged = { $name } goes on at { $rate }, so near the label's most of { $most } that it may be over. The label is the law.
    .do = Do not mix for a boom with plugged tips: clean them first, then catch again.
carrier_under_label-plugged = Stop: the sprayer puts out { $rate }. The label asks for at least { $least }; the label is the law.
    .do = Do not mix for a boom with plugged tips: clean them first, then catch again.
carrier_may_be_under_label-plugged = The sprayer puts out { $rate }, so near the label's least of { $least } that it may be under.
    .do = Do not mix for a boom with plugged tips: clean them first, then catch again.

rate_cannot_tell-refilled = The sprayer puts out { $rate }: { $deviation } from the { $intended } you want. That may be more than { $limit } off, or not.
    .do = Mix the tank for { $rate }; use up more before filling again to know better.
product_may_be_over_label-refilled = { $name } goes on at { $rate }, so near the label's most of { $most } that it may be over. The label is the law.
    .do = To be sure, work the load out for { $mix_for }; or use up more before filling again to know better.
product_may_be_over_label-refilled_weaker = { $name } goes on at { $rate }, so near the label's most of { $most } that it may be over. The label is the law.
    .do = To be sure, make it a little weaker; or use up more before filling again to know better.
product_may_be_under_least-refilled = { $name } goes on at { $rate }, so near the label's least of { $least } that it may be under.
    .do = Mix the tank for the rate the sprayer really puts out; use up more before filling again to know better.
carrier_may_be_under_label-refilled = The sprayer puts out { $rate }, so near the label's least of { $least } that it may be under.
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

