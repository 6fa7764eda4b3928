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
