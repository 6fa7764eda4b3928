### How evenly the ground gets it across the boom: what cannot be, what is told, what stands on the drawing.

## What cannot be

pattern_tips = { $tips } tips make no pattern across a boom; 2 to 1000 would do
pattern_spacing = a spacing of { $spacing } cannot be; it must be more than nothing
pattern_no_height = a height of { $height } over what is sprayed cannot be; more than nothing and at most 5 m would do
pattern_angle = tip { $tip }: no fan is { $angle } wide; 10 to 170 deg would do
pattern_flow = tip { $tip } cannot give { $flow } times a sound tip's flow; 0 or more would do
pattern_into_the_air = tip { $tip }: a fan of { $angle } that leans by { $tilt } sprays into the air
pattern_twist = tip { $tip }: a fan turned by { $twist } cannot be; up to 60 deg would do
pattern_order = tip { $tip } is at { $place }, but the tip before it is at { $before }; give places from left to right
pattern_all_plugged = every tip is plugged, so nothing comes down
pattern_groove = grooves of { $groove } cannot be; 50 or 100 mm would do
pattern_groove_wider_than_boom = a groove of { $groove } is wider than the boom, { $boom }; 50 or 100 mm would do
pattern_no_overlap = with { $tips } tips no part of the boom has all fans over it that overlap there; more tips, or a lower boom, would do
pattern_nothing_collected = { $grooves } grooves that collected nothing are no pattern of a tip; 1 to 1000 grooves, some of them wet, would do
pattern_collected = groove { $groove } cannot have collected { $amount }; 0 or more would do

## What is told

pattern_across-within = At { $height } and { $angle } the ground gets it evenly, { $which }: strips of { $groove } differ by { $spread } (limit { $limit }). The thinnest gets { $thin } less than the mean, { $thin_at }; the thickest { $thick } more, { $thick_at }.
pattern_across-outside = At { $height } and { $angle } the ground gets it unevenly, { $which }: strips of { $groove } differ by { $spread } (limit { $limit }, no strip more than { $each } off). The thinnest gets { $thin } less than the mean, { $thin_at }; the thickest { $thick } more, { $thick_at }.
    .do = { $help }
pattern_across-open = At { $height } and { $angle } it hangs on the shape of the fans whether the ground gets it evenly: strips of { $groove } differ by { $spread } (limit { $limit }, no strip more than { $each } off). The thinnest gets { $thin } less than the mean, { $thin_at }; the thickest { $thick } more, { $thick_at }.
    .do = { $help }
phrase-pattern_span = { $low } to { $high }
phrase-pattern_one = { $low }
phrase-pattern_any_shape = whichever shape the fans have
phrase-pattern_this_fan = with this fan
phrase-pattern_under = under tip { $tip }
phrase-pattern_between = between tips { $left } and { $right }
phrase-pattern_in_many_places = in many places
phrase-pattern_help_look = No one thing would help much. Look at the fans while they spray: crooked, leaning and streaky ones show in no cup.
phrase-pattern_help_clean = Most would be won by cleaning what is plugged (tip { $tips }): strips would then differ by { $spread }.
phrase-pattern_help_change = Most would be won by changing tip { $tip }: strips would then differ by { $spread }.
phrase-pattern_help_aim = Most would be won by setting tips upright (tip { $tips }): strips would then differ by { $spread }.
phrase-pattern_help_move = Most would be won by setting the tips at their spacing: strips would then differ by { $spread }.
phrase-pattern_help_height = Most would be won by carrying the tips { $height } over what is sprayed: strips would then differ by { $spread }.
pattern_seldom-angle = Hardly any boom has fans of { $angle }. Is that right?
pattern_seldom-height = Hardly any boom is carried { $height } over what it sprays. Is that right?
pattern_height-suits = Each fan is { $wide } wide: an overlap of { $overlap } (100 % is twice as wide as the spacing, every place under two fans; that comes at { $whole_at }). Tips in order lie evenly at { $suits }, { $which }; the lower lose less to the wind.
pattern_height-none = Each fan is { $wide } wide: an overlap of { $overlap } (100 % is twice as wide as the spacing, every place under two fans; that comes at { $whole_at }). Tips in order lie evenly at no height from { $from } to { $to }, { $which }.
pattern_height-apart = The fans do not meet: each is { $wide } wide, and the tips are { $spacing } apart. An overlap of 100 % (each fan twice as wide as the spacing, every place under two) comes at { $whole_at }. Tips in order lie evenly at { $suits }, { $which }.
phrase-pattern_from_to = { $from } to { $to }
phrase-pattern_from_up = { $from } and higher
phrase-pattern_nowhere = no height that was tried
pattern_rests_on-assumed = This was worked out, not measured on the ground: for shapes that fans may have, the angle as given (it falls with the pressure) and a boom that stands still. Its swinging in the field adds some { $low } to { $high } that this cannot see.
pattern_rests_on-measured = This was worked out, not measured on the ground: for the fan that was caught and a boom that stands still. Its swinging in the field adds some { $low } to { $high } that this cannot see.
pattern_beside_cups = Cups and ground show different faults: a worn tip hardly shows on the ground, because its neighbors spray there too; height, aim and a plugged tip do. Neither test replaces the other.
pattern_too_short = How evenly the ground gets it cannot be told: with { $tips } tips, or as they run, nowhere do all the fans overlap that would on a longer boom.
pattern_without_crooked = The crooked or streaky fans that were seen are not in what the ground gets here: it will be less even.

## On the drawing

ground-title = What the ground gets across the boom
ground-heading = What the ground gets, at { $height } and { $angle }
ground-mean = mean
ground-doubt = Strips of ground under the boom, each filled to its dose; the shaded edge hangs on the shape of the fans. The band is 20 % either way of the mean, for each strip (uses limits from ISO 16122-2, from memory).

## How it was reached

working-pattern_across = How evenly the ground gets it across the boom
formula-groove_sum_of_each_tip_s_flow_the_share_of_its_fan_between_t = groove = sum of each tip's flow × the share of its fan between the groove's edges; spread = standard deviation (n − 1) ÷ mean
figure-tips_on_the_boom = tips on the boom
figure-spacing = spacing
figure-height_over_what_is_sprayed = height over what is sprayed
figure-fan_angle = fan angle
figure-groove = groove
figure-grooves_that_are_judged = grooves that are judged
figure-spread_of_triangles = spread of triangles
figure-spread_of_parabolas = spread of parabolas
figure-spread_of_raised_cosines = spread of raised cosines
figure-spread_of_betas = spread of betas
figure-spread_of_cut_off_normals = spread of cut-off normals
figure-spread_of_even_fans = spread of even fans
figure-spread_of_the_measured_fan = spread of the measured fan
source-plane_geometry_the_shapes_of_the_fans_are_our_assumption_tri = plane geometry; the shapes of the fans are our assumption: triangle, parabola, raised cosine, beta, cut-off normal
source-plane_geometry_the_fan_as_measured = plane geometry; the fan as measured
source-uses_limits_from_iso_16122_2_and_en_13790_1_10_spread_each_g = uses limits from ISO 16122-2 and EN 13790-1 (10 % spread, each groove within 20 %), from memory
