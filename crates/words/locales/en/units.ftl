### Units that people say otherwise than their symbol. A unit that is not here shows its symbol.

unit-fl_oz = fl oz
unit-imp_fl_oz = imp fl oz
unit-oz_wt = oz wt
unit-ft = ft
unit-in = in
unit-yd = yd
unit-mi = mi
unit-sq_ft = sq ft
unit-sq_yd = sq yd
unit-pt-one = pt
unit-qt-one = qt
unit-ft-one = ft
unit-pt = pt
unit-qt = qt
unit-imp_gal = imp gal
unit-imp_qt = imp qt
unit-imp_pt = imp pt
unit-sq_m = sq m
unit-deg = deg

## What is wrong with a written quantity, and what would do

quantity_empty = nothing was given; { $wanted } is needed
    .do = units that would do: { $would_do }
quantity_not_a_number = "{ $given }" does not start with a number
    .do = a number may be 14, 14.5, 14 1/2 or 1/2
quantity_missing_unit = "{ $given }" has no unit; { $wanted } is needed
    .do = units that would do: { $would_do }
quantity_unknown_unit = "{ $unit }" in "{ $given }" is not a unit known here; { $wanted } is needed
    .do = units that would do: { $would_do }
quantity_wrong_unit = "{ $given }" is { $found }, but { $wanted } is needed
    .do = units that would do: { $would_do }
quantity_weight_ounce-cup = "oz" in "{ $given }" is an ounce of weight, but { $wanted } is needed
    .do = write fl oz for an ounce of liquid; a cup on a scale needs the scale mode
quantity_weight_ounce-other = "oz" in "{ $given }" is an ounce of weight, but { $wanted } is needed
    .do = write fl oz for an ounce of liquid; units that would do: { $would_do }
quantity_which_ounce = "oz" in "{ $given }" can be an ounce of liquid or of weight
    .do = write fl oz for liquid or oz wt for weight
quantity_comma-left_out = the comma in "{ $given }" can be read two ways
    .do = leave the comma out and write { $as_decimal }
quantity_comma-two_ways = the comma in "{ $given }" can be read two ways
    .do = write { $as_thousands } or { $as_decimal }; the decimal mark is a point
quantity_negative = "{ $given }" is less than nothing; { $wanted } cannot be
    .do = units that would do: { $would_do }
quantity_too_large = "{ $start }" is too large a number
    .do = look at the digits and the unit; at most fifteen digits before the point are taken
quantity_too_long = a text of { $length } letters is too long for a quantity (at most { $most })
    .do = write a number and its unit, as 16 ft 8 in
quantity_parts_out_of_order = the parts of "{ $given }" do not go from the larger unit to the smaller
    .do = write the larger part first, as 16 ft 8 in
quantity_zero_under_line = the fraction in "{ $given }" divides by nothing
    .do = write a fraction as 1/2 or 14 1/2
quantity_past_sixty = "{ $given }" has more than 59 behind the colon
    .do = 1:05 is a minute and five seconds; write 75 s for 75 seconds
quantity_no_pressure = "{ $given }" does not say at which pressure
    .do = write it as 0.30 gal/min @ 40 psi
quantity_no_flow = "{ $given }" does not say which flow
    .do = write it as 0.30 gal/min @ 40 psi
quantity_doubt_over_value = the doubt in "{ $given }" is larger than the value itself
    .do = write how far it may be off either way, as 5.0 mph ± 0.1 mph or 5.0 mph ± 2 %
quantity_not_a_span = "{ $given }" is not a span from a smaller to a larger value
    .do = write it as 4 mph..7 mph

reading_no_step = marks of "{ $given }" are no distance apart
    .do = give the distance between two marks of the cup, as 1 fl oz or 10 mL
reading_other_marks = "{ $reading }" cannot be read on marks of "{ $marks }"
    .do = give the distance between two marks of the cup, as 1 fl oz or 10 mL

# The units that would do, as they must be written.
word-would_do_length = ft, in, yd, m or cm
word-would_do_area = ac, sq ft, ha or sq m
word-would_do_volume = gal, qt, pt, fl oz, mL or L
word-would_do_mass = lb, oz wt, g or kg
word-would_do_time = s, min or h, or 1:05 for a minute and five seconds
word-would_do_speed = mph, km/h, ft/s or m/s
word-would_do_flow = gal/min, fl oz/min, L/min or mL/min
word-would_do_pressure = psi, bar or kPa
word-would_do_density = lb/gal, kg/L or g/L
word-would_do_volume_per_area = gal/ac, pt/ac, fl oz/ac, gal/1000 sq ft or L/ha
word-would_do_mass_per_area = lb/ac, oz wt/ac or kg/ha
word-would_do_work_rate = ac/h or ha/h
word-would_do_angle = deg
word-would_do_ratio = %
