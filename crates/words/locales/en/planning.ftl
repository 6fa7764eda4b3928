### What goes in the tank, the label and the target, what to change, what an error costs.

## Loads

load_too_little_to_measure = A load of { $load } takes only { $amount } of { $name }. A jug or farm scale cannot measure that.
    .do = Use a syringe or a fine scale for { $fine }, or mix a larger load.
load_measure_too_coarse = { $measure } of { $name } is { $short } less than the { $amount } that a load of { $load } takes.
    .do = Measure it finer if you can: { $fine }.
load_product_twice = { $name } is listed twice.
    .do = Take one out, or give them different names if both are meant.
load_last_small = The last load is only { $last } in a { $tank } tank. A little mix is hard to measure and to stir.
    .do = Make the last two loads alike: { $each } each, for { $area } each.
load_label_decides = The label is the law: read its rate, its water and what to wear before you open the jug.
load_labels_decide_mix = The labels are the law: they say whether these products may go together and which goes in first. This sheet does not.
    .do = Read every label. If they leave it open, ask your dealer or county agent, or try a jar first.
tank_at_measured_rate = At { $rate }, which is what your sprayer puts out, a tank of { $tank } covers { $area }.
    .do = You need not change the sprayer for this: mix each tank for { $area }.

load_no_area = an area of { $area } cannot be sprayed; it must be more than 0
    .do = give the ground this job covers, as 25 ac or 10 ha
load_no_rate = a rate of { $rate } cannot be sprayed; it must be more than 0
    .do = give what the sprayer puts out, as 20 gal/ac or 190 L/ha
load_range_of_rate = the range of the rate, { $low } to { $high }, must lie above nothing and hold { $rate }
    .do = give the rate with the range it lies in, low end first
load_no_tank = a tank of { $tank } holds no load; it must hold more than 0
    .do = give what the tank holds, as 500 gal or 2000 L
load_too_many = { $area } at { $rate } would take { $loads } loads of { $tank }; at most { $most } are worked out
    .do = check the units of area, rate and tank
load_more_product_than_mix = { $name } at "{ $rate }" alone comes to { $product } in { $mix } of mix; at most all of the mix can be product
    .do = check the product's rate and the gallons per acre

## The target: over the label first, in words of its own

# By the ground: another rate to mix for puts it right. By the mix: only a weaker mix does.
product_over_label-by_ground = Stop: { $name } goes on at { $rate }. The label allows { $most } at most; the label is the law.
    .do = Do not spray this mix. Put in less: work the load out for { $mix_for }, and it keeps to the label for sure.
product_over_label-by_mix = { product_over_label-by_ground }
    .do = Do not spray this mix. Make it weaker, or put out less of it.
product_most_likely_over_label-by_ground = Stop: { $name } most likely goes on at { $rate }. The label allows { $most } at most; the label is the law.
    .do = { product_over_label-by_ground.do }
product_most_likely_over_label-by_mix = { product_most_likely_over_label-by_ground }
    .do = { product_over_label-by_mix.do }
product_may_be_over_label-by_ground = { $name } goes on at { $rate }, so near the label's most of { $most } that it may be over. The label is the law.
    .do = To be sure, work the load out for { $mix_for }; or catch longer to know better what the sprayer puts out.
product_may_be_over_label-by_mix = { product_may_be_over_label-by_ground }
    .do = To be sure, make it a little weaker; or catch longer to know better what the sprayer puts out.
product_planned_over_label = Stop: { $name } is mixed for { $planned }. The label allows { $most } at most; the label is the law.
    .do = Do not mix it so. Put in no more than the label allows.
product_under_least = { $name } goes on at { $rate }, under the label's least of { $least }. It may not do its work.
    .do = Mix the tank for the rate the sprayer really puts out.
product_may_be_under_least = { $name } goes on at { $rate }, so near the label's least of { $least } that it may be under.
    .do = Mix the tank for the rate the sprayer really puts out, or catch longer to know the rate better.
mix_over_label = Stop: the mix holds { $strength } of { $name }. The label allows { $most } at most; the label is the law.
    .do = Do not spray this mix. Make it weaker.
mix_under_least = The mix holds { $strength } of { $name }, under the label's least of { $least }. It may not do its work.
    .do = Put more of it in each tank, or use less water if the label lets you.
carrier_under_label = Stop: the sprayer puts out { $rate }. The label asks for at least { $least }; the label is the law.
    .do = Do not spray so. Drive slower at the same pressure, or fit larger tips, and catch again.
carrier_may_be_under_label = The sprayer puts out { $rate }, so near the label's least of { $least } that it may be under.
    .do = Catch longer to know the rate better, or put out a little more.
rate_within = The sprayer puts out { $rate }: { $deviation } from the { $intended } you want, within { $limit }.
rate_outside = The sprayer puts out { $rate }: { $deviation } from the { $intended } you want, more than { $limit } off.
    .do = Mix the tank for { $rate }, or change the sprayer and catch again.
rate_cannot_tell = The sprayer puts out { $rate }: { $deviation } from the { $intended } you want. That may be more than { $limit } off, or not.
    .do = Mix the tank for { $rate }; catch longer and time the drive again to know better.

target_no_rate = a rate of { $rate } cannot be; it must be more than 0
    .do = give a rate as 20 gal/ac or 190 L/ha
target_range_of_rate = { load_range_of_rate }
    .do = { load_range_of_rate.do }
target_limit = a limit of { $percent } is not one; more than 0 and less than 100 % would do
    .do = write 5 % for five gallons over or under in a hundred
target_other_kind = { $name } at "{ $rate }" and its limit "{ $limit }" are not both liquid or both dry
    .do = write the limit the way the rate is written; the label says both
target_least_over_most = { $name }: the least, "{ $least }", is more than the most, "{ $most }"
    .do = look at the label again; the two may be swapped
target_mixed_for_needed = { $name } at "{ $rate }" goes by the ground, but the rate that the tank is mixed for is not given
    .do = say for how many gal/ac the tank is mixed

## What to change

change_ground_driven = The pump is driven from the ground, so going faster or slower does not change the rate.
    .do = Set the pump for { $wanted }: it must give { $times } times what it gives now. Then catch again.
change_controller = The controller holds the rate, so going faster or slower does not change it. If it was set to { $wanted } and puts out { $rate }, its own figures are off.
    .do = Check width, speed and flow meter in the controller against tape, timed drive and catch. Then set { $wanted }.
change_ask_control = What holds the pressure? With a plain regulator, { $speed } instead of { $speed_now } at the same pressure gives { $wanted }. With a pump driven from the ground, or a rate controller, speed changes nothing.
    .do = Say which it is: regulator, ground-driven pump or rate controller.
change_ask_control_and_speed = What holds the pressure, and how fast did you drive? With a plain regulator, driving at { $inverse } times the speed gives { $wanted }. With a pump driven from the ground, or a rate controller, speed changes nothing.
    .do = { change_ask_control.do }
change_speed = Drive { $speed } instead of { $speed_now } at the same pressure, and it puts out { $wanted }.
    .do = Time the drive again at the new speed, in the gear you will spray in.
change_speed_by_times = Drive at { $inverse } times the speed at the same pressure, and it puts out { $wanted }.
    .do = { change_speed.do }
change_controller_pressure = At { $wanted } and the same speed the controller will run near { $new } instead of { $now }.
change_pressure = Or set { $new } instead of { $now } at the same speed, and it puts out { $wanted }.
    .do = Catch a few tips again at the new pressure.
change_pressure_too_low = For { $wanted } at the same speed it would take { $new }. That is under the { $low } to { $high } these tips are meant for: the fans fold in and leave strips.
    .do = Leave the pressure in that range and fit smaller tips.
change_pressure_too_high = For { $wanted } at the same speed it would take { $new }. That is over the { $low } to { $high } these tips are meant for: the drops get fine and drift.
    .do = Leave the pressure in that range and fit larger tips.
change_pressure_small_only = Pressure is for small corrections: twice the flow takes four times the pressure. High pressure drifts, low pressure leaves strips.
    .do = For { $change } of flow change the tips, or the speed.
change_tip = For { $wanted } at the speed you drive, a tip must give { $water_flow } at { $pressure }.
change_tip_any_pressure = For { $wanted } at the speed you drive, a tip must give { $water_flow } at the pressure you run.
change_tip_other_carrier = For { $wanted } at the speed you drive, a tip must give { $flow } of your liquid at { $pressure }. In the tip's table, which is for water, look for { $water_flow }.
change_tip_other_carrier_any_pressure = For { $wanted } at the speed you drive, a tip must give { $flow } of your liquid at the pressure you run. In the tip's table, which is for water, look for { $water_flow }.
rate_held_by_pump = The ground-driven pump keeps the rate at { $speed }; the pressure changes with the speed.
    .do = Look at the gauge at that speed: the pressure must be one the tips are made for.
rate_held_by_controller = The controller keeps the rate at { $speed } by changing the pressure, as far as the tips allow.
    .do = { rate_held_by_pump.do }
carrier_heavier_than_water = Your liquid at { $density } is heavier than water, so the same tips put out { $less } less of it.
    .do = With water in the tank, aim for { $factor } times the rate you want of the liquid.
carrier_lighter_than_water = Your liquid at { $density } is lighter than water, so the same tips put out { $more } more of it.
    .do = { carrier_heavier_than_water.do }

word-constant_pressure = constant pressure
word-ground_driven_pump = ground-driven pump
word-rate_controller = rate controller

change_no_rate = { target_no_rate }
    .do = { target_no_rate.do }
change_no_speed = a speed of { $speed } cannot be; it must be more than 0
    .do = give the speed of a timed drive, as 4 mph or 6.5 km/h
change_no_pressure = a pressure of { $pressure } cannot be; it must be more than 0
    .do = read the gauge while all tips spray, as 40 psi or 2.8 bar
change_no_width = a width of { $width } for a tip cannot be; it must be more than 0
    .do = give the distance from tip to tip, as 20 in or 50 cm
change_tip_range = a tip's range of { $low } to { $high } is not one
    .do = give the smaller pressure first, as the tip's table has it
change_speed_error = a speed that is { $percent } off cannot be; more than −100 % would do
    .do = 10 % slow is written as -10

## What an error costs

cost_over = { $share } of the product goes on over what you meant: { $money } on { $area }.
cost_missing = { $share } of the product, { $money } worth on { $area }, is missing where you meant it to be. That is no saving: it may not do its work there.
cost_gone_when_mixed_right = Mix the tank for what the sprayer really puts out, and this cost is gone.
cost_left_when_mixed_right = Mix the tank for what the sprayer really puts out, and { $over } over and { $missing } missing are left. That part comes from tips that differ.

cost_other_measure = the price "{ $price }" does not go with how the product is measured
    .do = give a price by the gallon or litre for a liquid, by the pound or kilogram for a dry product
cost_price_by_area = the price "{ $price }" is for ground, not for an amount of product
    .do = give a price as 18.50 $/gal or 4 $/lb
cost_no_area = an area of { $area } costs nothing; it must be more than 0
    .do = give the ground as 25 ac or 10 ha
cost_no_rate = a rate of { $rate } cannot be; it must be more than 0 and lie in its own range
    .do = give a rate as 20 gal/ac or 190 L/ha
cost_tip = a tip that is { $percent } off cannot be; −100 % (plugged) and up would do
    .do = give how far each tip is from the mean, in percent
cost_overlap = an overlap of { $percent } cannot be; 0 and up would do
    .do = give the overlap in percent of the ground

money_empty = no money was given
    .do = money is written as $25, 25 $ or 18.50 EUR
money_too_long = a text of { $length } letters is too long for money (at most 60)
    .do = { price_no_goods.do }
money_no_symbol = "{ $given }" does not say in which money
    .do = write ${ $given } or { $given } EUR, with the sign of your money
money_not_money = "{ $given }" is not money
    .do = { money_empty.do }
money_negative = "{ $given }" is less than nothing, which a price cannot be
    .do = { money_empty.do }
price_no_goods = "{ $given }" does not say for how much ground, liquid or weight
    .do = a price is written as $25/ac, 18.50 $/gal, $300/2.5 gal or 4 $/lb
price_which_ounce = "oz" in "{ $given }" can be an ounce of liquid or of weight
    .do = write fl oz for liquid or oz wt for weight
price_not_by_area = "{ $given }" is not a cost on an area
    .do = write the cost as $25/ac or €60/ha
money_other_symbol = "{ $one }" and "{ $other }" are different moneys
    .do = give all prices in one money

## Products and their rates as written

product_empty = no product was given
    .do = a product is written as NAME: 3 pt/ac
product_no_colon = "{ $given }" has no colon between the product's name and its rate
    .do = { product_empty.do }
product_no_name = the rate "{ $given }" has no product's name in front of it
    .do = { product_empty.do }
product_name_too_long = a name of { $length } letters is too long (at most 120)
    .do = { product_empty.do }
product_control_sign = the name "{ $given }" has signs in it that cannot be shown
    .do = { product_empty.do }

rate_empty = no rate was given
    .do = a rate is written as 3 pt/ac, 2 lb/ac, 2 pt/100 gal, 0.25 % v/v, 2 fl oz/1000 sq ft, 1.5 L/ha or 1.5 lb ai/ac at 4 lb ai/gal
rate_too_long = a text of { $length } letters is too long for a rate (at most 120)
    .do = { rate_empty.do }
rate_no_unit = "{ $given }" has no unit
    .do = { rate_empty.do }
rate_no_basis = "{ $given }" does not say on how much ground or in how much mix
    .do = write { $given }/ac or { $given }/100 gal, as the label has it
rate_not_a_rate = "{ $given }" is not a product's rate
    .do = { rate_empty.do }
rate_which_ounce = "oz" in "{ $given }" can be an ounce of liquid ({ $liquid }) or of weight ({ $weight })
    .do = write { $liquid } or { $weight }, as the label means it
rate_bare_percent = "{ $given }" does not say whether it goes by volume or by weight
    .do = write { $given } v/v if the label goes by volume; if it goes by weight, write the pounds in 100 gal
rate_percent_by_weight = "{ $given }" goes by weight, which a jug cannot measure
    .do = write the weight in a volume of mix, as 8 lb/100 gal
rate_weight_in_weight = "{ $given }" is weight in weight, which is no rate
    .do = { rate_empty.do }
rate_nothing = "{ $given }" is a rate of nothing; it must be more than 0
    .do = look at the label again
rate_over_whole = "{ $given }" is more product than mix; at most 100 % of the mix can be product
    .do = { rate_nothing.do }
rate_strength_needed = "{ $given }" counts { $mark }, but does not say how strong the product is
    .do =
        { $mark-code ->
            [ae] add what the label says the product holds, as "at 3.8 lb ae/gal"
           *[ai] add what the label says the product holds, as "at 4 lb ai/gal" or, if it is dry, "at 80 %"
        }
rate_strength_without_mark = "{ $given }" has a strength, but its rate does not say ai
    .do = write 1.5 lb ai/ac at 4 lb ai/gal if the rate is of active ingredient; leave the strength out if it is of product
rate_mixed_marks = "{ $given }" counts ai on one side and ae on the other
    .do = the label gives both; take ai on both sides or ae on both sides
rate_not_a_strength = "{ $given }" is not the strength of a product
    .do = a strength is written as 4 lb ai/gal, 480 g ai/L or, for a dry product, 80 %
rate_strength_over_whole = a strength of "{ $given }" is more than the whole; at most 100 % would do
    .do = { rate_not_a_strength.do }
rate_ingredient = "{ $given }" is not a weight of { $mark } on an area or in the mix
    .do = active ingredient is written as 1.5 lb ai/ac or 720 g ai/ha

word-ai = ai
word-ae = ae

# A number in a rate that cannot be read: the number's own sentence, and what would do for a rate.
quantity_not_a_number-in_rate = "{ $given }" does not start with a number
    .do = { rate_empty.do }
quantity_negative-in_rate = "{ $given }" is less than nothing; a rate cannot be
    .do = { rate_empty.do }
quantity_too_large-in_rate = "{ $given }" is too large a number
    .do = { rate_empty.do }

# The same with the product's name in front.
rate_empty-named = rate of "{ $name }": { rate_empty }
    .do = { rate_empty.do }
rate_too_long-named = rate of "{ $name }": { rate_too_long }
    .do = { rate_too_long.do }
rate_no_unit-named = rate of "{ $name }": { rate_no_unit }
    .do = { rate_no_unit.do }
rate_no_basis-named = rate of "{ $name }": { rate_no_basis }
    .do = { rate_no_basis.do }
rate_not_a_rate-named = rate of "{ $name }": { rate_not_a_rate }
    .do = { rate_not_a_rate.do }
rate_which_ounce-named = rate of "{ $name }": { rate_which_ounce }
    .do = { rate_which_ounce.do }
rate_bare_percent-named = rate of "{ $name }": { rate_bare_percent }
    .do = { rate_bare_percent.do }
rate_percent_by_weight-named = rate of "{ $name }": { rate_percent_by_weight }
    .do = { rate_percent_by_weight.do }
rate_weight_in_weight-named = rate of "{ $name }": { rate_weight_in_weight }
    .do = { rate_weight_in_weight.do }
rate_nothing-named = rate of "{ $name }": { rate_nothing }
    .do = { rate_nothing.do }
rate_over_whole-named = rate of "{ $name }": { rate_over_whole }
    .do = { rate_over_whole.do }
rate_strength_needed-named = rate of "{ $name }": { rate_strength_needed }
    .do = { rate_strength_needed.do }
rate_strength_without_mark-named = rate of "{ $name }": { rate_strength_without_mark }
    .do = { rate_strength_without_mark.do }
rate_mixed_marks-named = rate of "{ $name }": { rate_mixed_marks }
    .do = { rate_mixed_marks.do }
rate_not_a_strength-named = rate of "{ $name }": { rate_not_a_strength }
    .do = { rate_not_a_strength.do }
rate_strength_over_whole-named = rate of "{ $name }": { rate_strength_over_whole }
    .do = { rate_strength_over_whole.do }
rate_ingredient-named = rate of "{ $name }": { rate_ingredient }
    .do = { rate_ingredient.do }
quantity_not_a_number-named = rate of "{ $name }": { quantity_not_a_number-in_rate }
    .do = { rate_empty.do }
quantity_negative-named = rate of "{ $name }": { quantity_negative-in_rate }
    .do = { rate_empty.do }
quantity_too_large-named = rate of "{ $name }": { quantity_too_large-in_rate }
    .do = { rate_empty.do }
quantity_comma-named = rate of "{ $name }": the comma in "{ $given }" can be read two ways
    .do = write { $as_thousands } or { $as_decimal }; the decimal mark is a point
quantity_comma-named_one_reading = { quantity_comma-named }
    .do = leave the comma out and write { $as_decimal }
quantity_zero_under_line-named = rate of "{ $name }": the fraction in "{ $given }" divides by nothing
    .do = write a fraction as 1/2 or 14 1/2

## Water tests, fertilizer, small ground

ams_for_hard_water = By this water test, { $ams } of ammonium sulfate ties up what makes the water hard. North Dakota State holds { $low } to { $high } to be enough for most waters; many labels ask for { $label_low } to { $label_high }. The label decides.
    .do = Put in what the product's label asks for. Some products must not be mixed with it: the label says so.
water_test_parts = "{ $given }" is not a part of water; 0 to 1000000 ppm would do
    .do = write each metal as the laboratory gives it, as 150 ppm or 150 mg/L; hardness in grains is another thing

nutrient_no_density = a density of { $density } cannot be; it must be more than 0
    .do = the dealer or the label gives the weight of a gallon, as 10.65 lb/gal
nutrient_share = a nutrient share of { $percent } cannot be; more than 0 and at most 100 % would do
    .do = the first figure of 28-0-0 is 28 % nitrogen
nutrient_none = a nutrient rate of { $nutrient } cannot be; it must be more than 0
    .do = give the nutrient wanted, as 75 lb/ac
nutrient_no_rate = { target_no_rate }
    .do = give the rate of fertilizer, as 25 gal/ac

small_area_no_area = an area of { $area } cannot be; it must be more than 0
    .do = give the ground as 9000 sq ft or 850 sq m
small_area_no_amount = an amount of nothing cannot be scaled; it must be more than 0
    .do = give the label's amount as 50 lb or 3 fl oz
small_area_no_volume = a mix of { $volume } cannot be; it must be more than 0
    .do = give the mix as 3 gal or 12 L
small_area_share = a solution of { $percent } cannot be; more than 0 and at most 100 % would do
    .do = a solution is written as 3 %
small_area_no_density = { nutrient_no_density }
    .do = water weighs 8.34 lb/gal

## Workings

working-area_per_tank = Area per tank
working-product_put_down = Product put down
working-product_put_down_by_mix = Product put down, by the mix
working-rate_deviation = How far the rate is off
working-density_factor = Factor for the liquid's weight
working-rate_at_speed = The rate at another speed
working-cost_of_error = What the error costs
working-ams_for_hard_water = Ammonium sulfate for hard water
working-product_from_active_ingredient = Product from active ingredient

formula-area_per_tank_tank_rate = area per tank = tank ÷ rate
formula-product_put_down_product_mixed_measured_rate_rate_mixed_for = product put down = product mixed × measured rate ÷ rate mixed for
formula-product_put_down_product_in_the_mix_measured_rate = product put down = product in the mix × measured rate
formula-deviation_measured_rate_intended_rate_1 = deviation = measured rate ÷ intended rate − 1
formula-factor_density_of_the_liquid_density_of_water = factor = √(density of the liquid ÷ density of water)
formula-new_rate_rate_speed_new_speed = new rate = rate × speed ÷ new speed
formula-new_rate_rate_the_pump_s_flow_goes_with_the_speed = new rate = rate: the pump's flow goes with the speed
formula-new_rate_rate_the_controller_changes_the_pressure_to_hold_it = new rate = rate: the controller changes the pressure to hold it
formula-money_share_cost_on_the_area = money = share × cost on the area
formula-ams_lb_100_gal_0_002_k_0_005_na_0_009_ca_0_014_mg_0_042_fe_p = AMS (lb/100 gal) = 0.002 K + 0.005 Na + 0.009 Ca + 0.014 Mg + 0.042 Fe (ppm)
formula-product_active_ingredient_strength = product = active ingredient ÷ strength

figure-tank = tank
figure-rate = rate
figure-product_mixed = product mixed
figure-measured_rate = measured rate
figure-rate_mixed_for = rate mixed for
figure-product_in_the_mix = product in the mix
figure-intended_rate = intended rate
figure-density_of_the_liquid = density of the liquid
figure-speed = speed
figure-new_speed = new speed
figure-what_holds_the_pressure = what holds the pressure
figure-share = share
figure-cost_on_the_area = cost on the area
figure-k = K
figure-na = Na
figure-ca = Ca
figure-mg = Mg
figure-fe = Fe
figure-active_ingredient = active ingredient
figure-strength = strength

# Our own words about who says so. Publications keep their names.
source-common_practice = common practice
source-common_practice_with_ground_driven_pumps = common practice with ground-driven pumps
source-definition_the_limit_see_who_sets_it = definition; the limit: see who sets it
source-univ_of_missouri_extension_mu_guide_g1272_turned_round = Univ. of Missouri Extension, MU Guide G1272, turned round
source-the_product_s_label_as_given_7_u_s_c_136j_a_2_g = the product's label, as given; 7 U.S.C. 136j(a)(2)(G)
source-ohio_state_univ_extension_fabe_520_2016_which_attributes_5_t = Ohio State Univ. Extension, FABE-520 (2016), which attributes ±5 % to USDA and EPA
source-the_tip_s_table_as_given = the tip's table, as given
source-common_practice_for_plain_flat_fans_from_memory_the_tip_s_ow = common practice for plain flat fans, from memory; the tip's own table decides
source-iowa_state_univ_extension_and_oklahoma_state_univ_extension = Iowa State Univ. Extension and Oklahoma State Univ. Extension; the 10 % is our own
source-astm_e549_87_reapproved_2022_section_4_2_more_than_5 = ASTM E549-87 (reapproved 2022), section 4.2: more than 5 %
