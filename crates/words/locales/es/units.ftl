### Units that people say otherwise than their symbol. A unit that is not here shows its symbol.

unit-fl_oz = oz líq
unit-imp_fl_oz = oz líq imp
unit-oz_wt = oz peso
unit-ft = pies
unit-in = pulg
unit-yd = yd
unit-mi = mi
unit-sq_ft = pies²
unit-sq_yd = yd²
unit-pt-one = pinta
unit-qt-one = cuarto
unit-ft-one = pie
unit-pt = pintas
unit-qt = cuartos
unit-imp_gal = gal imp
unit-imp_qt = cuartos imp
unit-imp_pt = pintas imp
unit-sq_m = m²
unit-deg = grados

## What is wrong with a written quantity, and what would do

quantity_empty = no se dio nada; hace falta { $wanted }
    .do = unidades que sirven: { $would_do }
quantity_not_a_number = “{ $given }” no empieza con un número
    .do = un número puede ser 14, 14.5, 14 1/2 o 1/2
quantity_missing_unit = “{ $given }” no tiene unidad; hace falta { $wanted }
    .do = unidades que sirven: { $would_do }
quantity_unknown_unit = “{ $unit }” en “{ $given }” no es una unidad que se conozca aquí; hace falta { $wanted }
    .do = unidades que sirven: { $would_do }
quantity_wrong_unit = “{ $given }” es { $found }, pero hace falta { $wanted }
    .do = unidades que sirven: { $would_do }
quantity_weight_ounce-cup = “oz” en “{ $given }” es una onza de peso, pero hace falta { $wanted }
    .do = escriba fl oz para una onza líquida; si pesó el vaso, use el modo de báscula
quantity_weight_ounce-other = “oz” en “{ $given }” es una onza de peso, pero hace falta { $wanted }
    .do = escriba fl oz para una onza líquida; unidades que sirven: { $would_do }
quantity_which_ounce = “oz” en “{ $given }” puede ser onza líquida u onza de peso
    .do = escriba fl oz si es líquida u oz wt si es de peso
quantity_comma-left_out = la coma en “{ $given }” se puede leer de dos maneras
    .do = quite la coma y escriba { $as_decimal }
quantity_comma-two_ways = la coma en “{ $given }” se puede leer de dos maneras
    .do = escriba { $as_thousands } o { $as_decimal }; los decimales van con punto
quantity_negative = “{ $given }” es menos que cero; { $wanted } no puede serlo
    .do = unidades que sirven: { $would_do }
quantity_too_large = “{ $start }” es un número demasiado grande
    .do = revise las cifras y la unidad; se aceptan como máximo quince cifras antes del punto
quantity_too_long = un texto de { $length } letras es demasiado largo para una cantidad (como máximo { $most })
    .do = escriba un número y su unidad, por ejemplo 16 ft 8 in (16 pies 8 pulgadas)
quantity_parts_out_of_order = las partes de “{ $given }” no van de la unidad mayor a la menor
    .do = escriba primero la parte mayor, por ejemplo 16 ft 8 in (16 pies 8 pulgadas)
quantity_zero_under_line = la fracción en “{ $given }” divide entre cero
    .do = escriba una fracción como 1/2 o 14 1/2
quantity_past_sixty = “{ $given }” tiene más de 59 después de los dos puntos
    .do = 1:05 es un minuto y cinco segundos; escriba 75 s para 75 segundos
quantity_no_pressure = “{ $given }” no dice a qué presión
    .do = escríbalo así: 0.30 gal/min @ 40 psi
quantity_no_flow = “{ $given }” no dice qué flujo
    .do = escríbalo así: 0.30 gal/min @ 40 psi
quantity_doubt_over_value = la duda en “{ $given }” es mayor que el valor mismo
    .do = escriba cuánto puede estar arriba o abajo, por ejemplo 5.0 mph ± 0.1 mph o 5.0 mph ± 2 %
quantity_not_a_span = “{ $given }” no va de un valor menor a uno mayor
    .do = escríbalo así: 4 mph..7 mph

reading_no_step = marcas de “{ $given }” no tienen ninguna distancia entre sí
    .do = dé lo que hay entre dos marcas del vaso, por ejemplo 1 fl oz (onza líquida) o 10 mL
reading_other_marks = “{ $reading }” no se puede leer en marcas de “{ $marks }”
    .do = dé lo que hay entre dos marcas del vaso, por ejemplo 1 fl oz (onza líquida) o 10 mL

# The units that would do, as they must be written.
word-would_do_length = ft (pies), in (pulgadas), yd (yardas), m o cm
word-would_do_area = ac (acres), sq ft (pies²), ha o sq m (m²)
word-would_do_volume = gal, qt (cuartos), pt (pintas), fl oz (onzas líquidas), mL o L
word-would_do_mass = lb (libras), oz wt (onzas de peso), g o kg
word-would_do_time = s, min o h, o 1:05 para un minuto y cinco segundos
word-would_do_speed = mph, km/h, ft/s (pies por segundo) o m/s
word-would_do_flow = gal/min, fl oz/min (onzas líquidas por minuto), L/min o mL/min
word-would_do_pressure = psi, bar o kPa
word-would_do_density = lb/gal, kg/L o g/L
word-would_do_volume_per_area = gal/ac, pt/ac (pintas), fl oz/ac (onzas líquidas), gal/1000 sq ft (pies²) o L/ha
word-would_do_mass_per_area = lb/ac, oz wt/ac (onzas de peso) o kg/ha
word-would_do_work_rate = ac/h o ha/h
word-would_do_angle = deg (grados)
word-would_do_ratio = %
