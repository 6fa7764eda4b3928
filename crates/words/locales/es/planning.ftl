### Lo que va en el tanque, la etiqueta y lo que se quiere, qué cambiar, cuánto cuesta un error.

## Loads

load_too_little_to_measure = Una carga de { $load } lleva solo { $amount } de { $name }. Ni una jarra ni una báscula de rancho miden tan poco.
    .do = Use una jeringa o una báscula fina para { $fine }, o prepare una carga mayor.
load_measure_too_coarse = { $measure } de { $name } queda { $short } por debajo de { $amount }, que es lo que lleva una carga de { $load }.
    .do = Mida más fino si puede: { $fine }.
load_product_twice = { $name } está dos veces en la lista.
    .do = Quite uno, o póngales nombres distintos si van los dos.
load_last_small = La última carga es de solo { $last } en un tanque de { $tank }. Poca mezcla es difícil de medir y de agitar.
    .do = Haga iguales las dos últimas cargas: { $each } cada una, para { $area } cada una.
load_label_decides = La etiqueta es la ley: antes de abrir el envase lea la dosis, el agua y qué ponerse.
load_labels_decide_mix = Las etiquetas son la ley: dicen si estos productos pueden ir juntos y cuál va primero. Esta hoja no lo dice.
    .do = Lea todas las etiquetas. Si no lo aclaran, pregunte a su distribuidor o al agente del condado, o haga antes la prueba en un frasco.
tank_at_measured_rate = A { $rate }, que es lo que echa su aspersora, un tanque de { $tank } alcanza para { $area }.
    .do = Para esto no hace falta cambiar la aspersora: prepare cada tanque para { $area }.

load_no_area = una superficie de { $area } no se puede aplicar; debe ser más de 0
    .do = dé la superficie de este trabajo, como 25 ac o 10 ha
load_no_rate = una dosis de { $rate } no se puede aplicar; debe ser más de 0
    .do = dé lo que echa la aspersora, como 20 gal/ac o 190 L/ha
load_range_of_rate = el rango de la dosis, de { $low } a { $high }, debe ser más de 0 e incluir { $rate }
    .do = dé la dosis con el rango en que está, primero el valor bajo
load_no_tank = en un tanque de { $tank } no cabe ninguna carga; debe caber más de 0
    .do = dé lo que cabe en el tanque, como 500 gal o 2000 L
load_too_many = { $area } a { $rate } llevarían { $loads } cargas de { $tank }; se calculan { $most } como máximo
    .do = revise las unidades de la superficie, la dosis y el tanque
load_more_product_than_mix = { $name } a “{ $rate }” da por sí solo { $product } en { $mix } de mezcla; como máximo toda la mezcla puede ser producto
    .do = revise la dosis del producto y los galones por acre

## The target: over the label first, in words of its own

# By the ground: another rate to mix for puts it right. By the mix: only a weaker mix does.
product_over_label-by_ground = Alto: { $name } se echa a { $rate }. La etiqueta permite { $most } como máximo; la etiqueta es la ley.
    .do = No aplique esta mezcla. Ponga menos: calcule la carga para { $mix_for }, y con seguridad cumple con la etiqueta.
product_over_label-by_mix = { product_over_label-by_ground }
    .do = No aplique esta mezcla. Hágala más débil o eche menos.
product_most_likely_over_label-by_ground = Alto: lo más probable es que { $name } se eche a { $rate }. La etiqueta permite { $most } como máximo; la etiqueta es la ley.
    .do = { product_over_label-by_ground.do }
product_most_likely_over_label-by_mix = { product_most_likely_over_label-by_ground }
    .do = { product_over_label-by_mix.do }
product_may_be_over_label-by_ground = { $name } se echa a { $rate }, tan cerca del máximo de la etiqueta, { $most }, que puede pasarse. La etiqueta es la ley.
    .do = Para estar seguro, calcule la carga para { $mix_for }; o recoja más tiempo para saber mejor lo que echa la aspersora.
product_may_be_over_label-by_mix = { product_may_be_over_label-by_ground }
    .do = Para estar seguro, hágala un poco más débil; o recoja más tiempo para saber mejor lo que echa la aspersora.
product_planned_over_label = Alto: { $name } se preparó para { $planned }. La etiqueta permite { $most } como máximo; la etiqueta es la ley.
    .do = No prepare así la mezcla. No ponga más de lo que permite la etiqueta.
product_under_least = { $name } se echa a { $rate }, menos que el mínimo de la etiqueta, { $least }. Quizá no haga su trabajo.
    .do = Prepare el tanque para la dosis que realmente echa la aspersora.
product_may_be_under_least = { $name } se echa a { $rate }, tan cerca del mínimo de la etiqueta, { $least }, que puede quedarse corto.
    .do = Prepare el tanque para la dosis que realmente echa la aspersora, o recoja más tiempo para conocerla mejor.
mix_over_label = Alto: la mezcla lleva { $strength } de { $name }. La etiqueta permite { $most } como máximo; la etiqueta es la ley.
    .do = No aplique esta mezcla. Hágala más débil.
mix_under_least = La mezcla lleva { $strength } de { $name }, menos que el mínimo de la etiqueta, { $least }. Quizá no haga su trabajo.
    .do = Ponga más en cada tanque, o use menos agua si la etiqueta lo permite.
carrier_under_label = Alto: la aspersora echa { $rate }. La etiqueta pide al menos { $least }; la etiqueta es la ley.
    .do = No aplique así. Maneje más despacio a la misma presión, o ponga boquillas más grandes, y recoja otra vez.
carrier_may_be_under_label = La aspersora echa { $rate }, tan cerca del mínimo de la etiqueta, { $least }, que puede quedarse corta.
    .do = Recoja más tiempo para conocer mejor la dosis, o eche un poco más.
rate_within = La aspersora echa { $rate }: { $deviation } respecto a los { $intended } que usted quiere, dentro de { $limit }.
rate_outside = La aspersora echa { $rate }: { $deviation } respecto a los { $intended } que usted quiere, más de { $limit } de diferencia.
    .do = Prepare el tanque para { $rate }, o cambie la aspersora y recoja otra vez.
rate_cannot_tell = La aspersora echa { $rate }: { $deviation } respecto a los { $intended } que usted quiere. Puede que la diferencia pase de { $limit }, o no.
    .do = Prepare el tanque para { $rate }; recoja más tiempo y repita el recorrido con cronómetro para saberlo mejor.

target_no_rate = una dosis de { $rate } no puede ser; debe ser más de 0
    .do = dé una dosis como 20 gal/ac o 190 L/ha
target_range_of_rate = { load_range_of_rate }
    .do = { load_range_of_rate.do }
target_limit = un límite de { $percent } no sirve; debe ser más de 0 y menos de 100 %
    .do = escriba 5 % para cinco galones de más o de menos en cien
target_other_kind = { $name } a “{ $rate }” y su límite “{ $limit }” no son los dos líquidos ni los dos secos
    .do = escriba el límite igual que la dosis; la etiqueta trae los dos
target_least_over_most = { $name }: el mínimo, “{ $least }”, es más que el máximo, “{ $most }”
    .do = vea otra vez la etiqueta; quizá están cambiados
target_mixed_for_needed = { $name } a “{ $rate }” va por superficie, pero no se dio la dosis de agua para la que se prepara el tanque
    .do = diga para cuántos gal/ac se prepara el tanque

## What to change

change_ground_driven = A la bomba la mueve la rueda, así que ir más rápido o más despacio no cambia la dosis.
    .do = Ajuste la bomba para { $wanted }: debe dar { $times } veces lo que da ahora. Luego recoja otra vez.
change_controller = El controlador mantiene la dosis, así que ir más rápido o más despacio no la cambia. Si estaba puesto en { $wanted } y echa { $rate }, sus propios datos están mal.
    .do = Compare el ancho, la velocidad y el medidor de flujo del controlador con la cinta, el recorrido con cronómetro y la captura. Luego ponga { $wanted }.
change_ask_control = ¿Qué mantiene la presión? Con un regulador sencillo, { $speed } en vez de { $speed_now } a la misma presión da { $wanted }. Con una bomba movida por la rueda o un controlador de dosis, la velocidad no cambia nada.
    .do = Diga cuál es: regulador, bomba movida por la rueda o controlador de dosis.
change_ask_control_and_speed = ¿Qué mantiene la presión y a qué velocidad manejó? Con un regulador sencillo, manejar a { $inverse } veces la velocidad da { $wanted }. Con una bomba movida por la rueda o un controlador de dosis, la velocidad no cambia nada.
    .do = { change_ask_control.do }
change_speed = Maneje a { $speed } en vez de { $speed_now } a la misma presión, y echará { $wanted }.
    .do = Repita el recorrido con cronómetro a la nueva velocidad, en la marcha en que va a aplicar.
change_speed_by_times = Maneje a { $inverse } veces la velocidad a la misma presión, y echará { $wanted }.
    .do = { change_speed.do }
change_controller_pressure = A { $wanted } y a la misma velocidad el controlador trabajará cerca de { $new } en vez de { $now }.
change_pressure = O ponga { $new } en vez de { $now } a la misma velocidad, y echará { $wanted }.
    .do = Recoja otra vez unas boquillas a la nueva presión.
change_pressure_too_low = Para { $wanted } a la misma velocidad harían falta { $new }. Queda debajo del rango de { $low } a { $high } para el que son estas boquillas: los abanicos se cierran y dejan franjas.
    .do = Deje la presión en ese rango y ponga boquillas más chicas.
change_pressure_too_high = Para { $wanted } a la misma velocidad harían falta { $new }. Queda arriba del rango de { $low } a { $high } para el que son estas boquillas: las gotas salen finas y se las lleva el viento.
    .do = Deje la presión en ese rango y ponga boquillas más grandes.
change_pressure_small_only = La presión es para correcciones chicas: el doble de flujo pide cuatro veces la presión. Con mucha presión el viento se lleva las gotas; con poca quedan franjas.
    .do = Para { $change } de flujo cambie las boquillas o la velocidad.
change_tip = Para { $wanted } a la velocidad que usted maneja, una boquilla debe dar { $water_flow } a { $pressure }.
change_tip_any_pressure = Para { $wanted } a la velocidad que usted maneja, una boquilla debe dar { $water_flow } a la presión que usted usa.
change_tip_other_carrier = Para { $wanted } a la velocidad que usted maneja, una boquilla debe dar { $flow } de su líquido a { $pressure }. En la tabla de la boquilla, que es para agua, busque { $water_flow }.
change_tip_other_carrier_any_pressure = Para { $wanted } a la velocidad que usted maneja, una boquilla debe dar { $flow } de su líquido a la presión que usted usa. En la tabla de la boquilla, que es para agua, busque { $water_flow }.
rate_held_by_pump = La bomba movida por la rueda mantiene la dosis a { $speed }; la presión cambia con la velocidad.
    .do = Vea el manómetro a esa velocidad: la presión debe ser una para la que están hechas las boquillas.
rate_held_by_controller = El controlador mantiene la dosis a { $speed } cambiando la presión, hasta donde dan las boquillas.
    .do = { rate_held_by_pump.do }
carrier_heavier_than_water = Su líquido, de { $density }, pesa más que el agua, así que las mismas boquillas echan { $less } menos.
    .do = Con agua en el tanque, busque { $factor } veces la dosis que quiere del líquido.
carrier_lighter_than_water = Su líquido, de { $density }, pesa menos que el agua, así que las mismas boquillas echan { $more } más.
    .do = { carrier_heavier_than_water.do }

word-constant_pressure = presión constante
word-ground_driven_pump = bomba movida por la rueda
word-rate_controller = controlador de dosis

change_no_rate = { target_no_rate }
    .do = { target_no_rate.do }
change_no_speed = una velocidad de { $speed } no puede ser; debe ser más de 0
    .do = dé la velocidad de un recorrido con cronómetro, como 4 mph o 6.5 km/h
change_no_pressure = una presión de { $pressure } no puede ser; debe ser más de 0
    .do = lea el manómetro con todas las boquillas echando, como 40 psi o 2.8 bar
change_no_width = un ancho de { $width } para una boquilla no puede ser; debe ser más de 0
    .do = dé la distancia de boquilla a boquilla, como 20 in o 50 cm
change_tip_range = de { $low } a { $high } no es el rango de una boquilla
    .do = dé primero la presión menor, como está en la tabla de la boquilla
change_speed_error = una velocidad con { $percent } de error no puede ser; debe ser más de −100 %
    .do = 10 % más despacio se escribe -10

## What an error costs

cost_over = { $share } del producto se echa de más: { $money } en { $area }.
cost_missing = Falta { $share } del producto donde usted lo quería: { $money } en { $area }. No es un ahorro: ahí quizá no haga su trabajo.
cost_gone_when_mixed_right = Prepare el tanque para lo que realmente echa la aspersora, y este costo desaparece.
cost_left_when_mixed_right = Prepare el tanque para lo que realmente echa la aspersora, y quedan { $over } de más y { $missing } de menos. Esa parte viene de boquillas que no son iguales.

cost_other_measure = el precio “{ $price }” no va con la forma en que se mide el producto
    .do = dé un precio por galón o litro para un líquido, por libra o kilogramo para un producto seco
cost_price_by_area = el precio “{ $price }” es por superficie, no por cantidad de producto
    .do = dé un precio como 18.50 $/gal o 4 $/lb
cost_no_area = una superficie de { $area } no cuesta nada; debe ser más de 0
    .do = dé la superficie como 25 ac o 10 ha
cost_no_rate = una dosis de { $rate } no puede ser; debe ser más de 0 y estar en su propio rango
    .do = dé una dosis como 20 gal/ac o 190 L/ha
cost_tip = una boquilla con { $percent } de diferencia no puede ser; desde −100 % (tapada) para arriba
    .do = dé qué tan lejos está cada boquilla del promedio, en porcentaje
cost_overlap = un traslape de { $percent } no puede ser; desde 0 para arriba
    .do = dé el traslape en porcentaje de la superficie

money_empty = no se dio ninguna cantidad de dinero
    .do = el dinero se escribe $25, 25 $ o 18.50 EUR
money_too_long = un texto de { $length } letras es demasiado largo para dinero (60 como máximo)
    .do = { price_no_goods.do }
money_no_symbol = “{ $given }” no dice en qué moneda
    .do = escriba ${ $given } o { $given } EUR, con el signo de su moneda
money_not_money = “{ $given }” no es dinero
    .do = { money_empty.do }
money_negative = “{ $given }” es menos de 0, y un precio no puede serlo
    .do = { money_empty.do }
price_no_goods = “{ $given }” no dice para cuánta superficie, líquido o peso
    .do = un precio se escribe $25/ac, 18.50 $/gal, $300/2.5 gal o 4 $/lb
price_which_ounce = “oz” en “{ $given }” puede ser onza líquida u onza de peso
    .do = escriba fl oz para líquido u oz wt para peso
price_not_by_area = “{ $given }” no es un costo por superficie
    .do = escriba el costo como $25/ac o €60/ha
money_other_symbol = “{ $one }” y “{ $other }” son monedas distintas
    .do = dé todos los precios en una sola moneda

## Products and their rates as written

product_empty = no se dio ningún producto
    .do = un producto se escribe NOMBRE: 3 pt/ac
product_no_colon = “{ $given }” no tiene dos puntos entre el nombre del producto y su dosis
    .do = { product_empty.do }
product_no_name = la dosis “{ $given }” no lleva delante el nombre del producto
    .do = { product_empty.do }
product_name_too_long = un nombre de { $length } letras es demasiado largo (120 como máximo)
    .do = { product_empty.do }
product_control_sign = el nombre “{ $given }” lleva signos que no se pueden mostrar
    .do = { product_empty.do }

rate_empty = no se dio ninguna dosis
    .do = una dosis se escribe 3 pt/ac, 2 lb/ac, 2 pt/100 gal, 0.25 % v/v, 2 fl oz/1000 sq ft, 1.5 L/ha o 1.5 lb ai/ac at 4 lb ai/gal
rate_too_long = un texto de { $length } letras es demasiado largo para una dosis (120 como máximo)
    .do = { rate_empty.do }
rate_no_unit = “{ $given }” no tiene unidad
    .do = { rate_empty.do }
rate_no_basis = “{ $given }” no dice en cuánta superficie ni en cuánta mezcla
    .do = escriba { $given }/ac o { $given }/100 gal, como está en la etiqueta
rate_not_a_rate = “{ $given }” no es la dosis de un producto
    .do = { rate_empty.do }
rate_which_ounce = “oz” en “{ $given }” puede ser onza líquida ({ $liquid }) u onza de peso ({ $weight })
    .do = escriba { $liquid } o { $weight }, según lo que quiere decir la etiqueta
rate_bare_percent = “{ $given }” no dice si va por volumen o por peso
    .do = escriba { $given } v/v si la etiqueta va por volumen; si va por peso, escriba las libras en 100 gal
rate_percent_by_weight = “{ $given }” va por peso, y una jarra no mide peso
    .do = escriba el peso en un volumen de mezcla, como 8 lb/100 gal
rate_weight_in_weight = “{ $given }” es peso en peso, y eso no es una dosis
    .do = { rate_empty.do }
rate_nothing = “{ $given }” es una dosis de nada; debe ser más de 0
    .do = vea otra vez la etiqueta
rate_over_whole = “{ $given }” es más producto que mezcla; como máximo 100 % de la mezcla puede ser producto
    .do = { rate_nothing.do }
rate_strength_needed = “{ $given }” cuenta { $mark }, pero no dice qué tan fuerte es el producto
    .do =
        { $mark-code ->
            [ae] agregue lo que trae el producto según la etiqueta, como “at 3.8 lb ae/gal”
           *[ai] agregue lo que trae el producto según la etiqueta, como “at 4 lb ai/gal” o, si es seco, “at 80 %”
        }
rate_strength_without_mark = “{ $given }” trae la concentración, pero su dosis no dice ai
    .do = escriba 1.5 lb ai/ac at 4 lb ai/gal si la dosis es de ingrediente activo; quite la concentración si es de producto
rate_mixed_marks = “{ $given }” cuenta ai de un lado y ae del otro
    .do = la etiqueta trae los dos; use ai en los dos lados o ae en los dos lados
rate_not_a_strength = “{ $given }” no es la concentración de un producto
    .do = una concentración se escribe 4 lb ai/gal, 480 g ai/L o, para un producto seco, 80 %
rate_strength_over_whole = una concentración de “{ $given }” es más que el total; 100 % como máximo
    .do = { rate_not_a_strength.do }
rate_ingredient = “{ $given }” no es un peso de { $mark } por superficie ni en la mezcla
    .do = el ingrediente activo se escribe 1.5 lb ai/ac o 720 g ai/ha

word-ai = ingrediente activo (ai)
word-ae = equivalente ácido (ae)

# A number in a rate that cannot be read: the number's own sentence, and what would do for a rate.
quantity_not_a_number-in_rate = “{ $given }” no empieza con un número
    .do = { rate_empty.do }
quantity_negative-in_rate = “{ $given }” es menos de 0; una dosis no puede serlo
    .do = { rate_empty.do }
quantity_too_large-in_rate = “{ $given }” es un número demasiado grande
    .do = { rate_empty.do }

# The same with the product's name in front.
rate_empty-named = dosis de “{ $name }”: { rate_empty }
    .do = { rate_empty.do }
rate_too_long-named = dosis de “{ $name }”: { rate_too_long }
    .do = { rate_too_long.do }
rate_no_unit-named = dosis de “{ $name }”: { rate_no_unit }
    .do = { rate_no_unit.do }
rate_no_basis-named = dosis de “{ $name }”: { rate_no_basis }
    .do = { rate_no_basis.do }
rate_not_a_rate-named = dosis de “{ $name }”: { rate_not_a_rate }
    .do = { rate_not_a_rate.do }
rate_which_ounce-named = dosis de “{ $name }”: { rate_which_ounce }
    .do = { rate_which_ounce.do }
rate_bare_percent-named = dosis de “{ $name }”: { rate_bare_percent }
    .do = { rate_bare_percent.do }
rate_percent_by_weight-named = dosis de “{ $name }”: { rate_percent_by_weight }
    .do = { rate_percent_by_weight.do }
rate_weight_in_weight-named = dosis de “{ $name }”: { rate_weight_in_weight }
    .do = { rate_weight_in_weight.do }
rate_nothing-named = dosis de “{ $name }”: { rate_nothing }
    .do = { rate_nothing.do }
rate_over_whole-named = dosis de “{ $name }”: { rate_over_whole }
    .do = { rate_over_whole.do }
rate_strength_needed-named = dosis de “{ $name }”: { rate_strength_needed }
    .do = { rate_strength_needed.do }
rate_strength_without_mark-named = dosis de “{ $name }”: { rate_strength_without_mark }
    .do = { rate_strength_without_mark.do }
rate_mixed_marks-named = dosis de “{ $name }”: { rate_mixed_marks }
    .do = { rate_mixed_marks.do }
rate_not_a_strength-named = dosis de “{ $name }”: { rate_not_a_strength }
    .do = { rate_not_a_strength.do }
rate_strength_over_whole-named = dosis de “{ $name }”: { rate_strength_over_whole }
    .do = { rate_strength_over_whole.do }
rate_ingredient-named = dosis de “{ $name }”: { rate_ingredient }
    .do = { rate_ingredient.do }
quantity_not_a_number-named = dosis de “{ $name }”: { quantity_not_a_number-in_rate }
    .do = { rate_empty.do }
quantity_negative-named = dosis de “{ $name }”: { quantity_negative-in_rate }
    .do = { rate_empty.do }
quantity_too_large-named = dosis de “{ $name }”: { quantity_too_large-in_rate }
    .do = { rate_empty.do }
quantity_comma-named = dosis de “{ $name }”: la coma en “{ $given }” se puede leer de dos maneras
    .do = escriba { $as_thousands } o { $as_decimal }; los decimales llevan punto
quantity_comma-named_one_reading = { quantity_comma-named }
    .do = quite la coma y escriba { $as_decimal }
quantity_zero_under_line-named = dosis de “{ $name }”: la fracción en “{ $given }” divide entre nada
    .do = escriba una fracción como 1/2 o 14 1/2

## Water tests, fertilizer, small ground

ams_for_hard_water = Según este análisis de agua, { $ams } de sulfato de amonio neutraliza lo que hace dura al agua. La universidad North Dakota State considera que de { $low } a { $high } bastan para la mayoría de las aguas; muchas etiquetas piden de { $label_low } a { $label_high }. La etiqueta decide.
    .do = Ponga lo que pide la etiqueta del producto. Algunos productos no se deben mezclar con él: la etiqueta lo dice.
water_test_parts = “{ $given }” no es una parte del agua; de 0 a 1000000 ppm
    .do = escriba cada metal como lo da el laboratorio, como 150 ppm o 150 mg/L; la dureza en granos es otra cosa

nutrient_no_density = una densidad de { $density } no puede ser; debe ser más de 0
    .do = el distribuidor o la etiqueta da el peso de un galón, como 10.65 lb/gal
nutrient_share = { $percent } de nutriente no puede ser; debe ser más de 0 y 100 % como máximo
    .do = el primer número de 28-0-0 es 28 % de nitrógeno
nutrient_none = una dosis de nutriente de { $nutrient } no puede ser; debe ser más de 0
    .do = dé el nutriente que quiere, como 75 lb/ac
nutrient_no_rate = { target_no_rate }
    .do = dé la dosis de fertilizante, como 25 gal/ac

small_area_no_area = una superficie de { $area } no puede ser; debe ser más de 0
    .do = dé la superficie como 9000 sq ft o 850 sq m
small_area_no_amount = de una cantidad de nada no se calcula otra; debe ser más de 0
    .do = dé la cantidad de la etiqueta como 50 lb o 3 fl oz
small_area_no_volume = una mezcla de { $volume } no puede ser; debe ser más de 0
    .do = dé la mezcla como 3 gal o 12 L
small_area_share = una solución de { $percent } no puede ser; debe ser más de 0 y 100 % como máximo
    .do = una solución se escribe 3 %
small_area_no_density = { nutrient_no_density }
    .do = el agua pesa 8.34 lb/gal

## Workings

working-area_per_tank = Superficie por tanque
working-product_put_down = Producto que se echa
working-product_put_down_by_mix = Producto que se echa, según la mezcla
working-rate_deviation = Qué tan lejos está la dosis
working-density_factor = Factor por el peso del líquido
working-rate_at_speed = La dosis a otra velocidad
working-cost_of_error = Lo que cuesta el error
working-ams_for_hard_water = Sulfato de amonio para agua dura
working-product_from_active_ingredient = Producto según el ingrediente activo

formula-area_per_tank_tank_rate = superficie por tanque = tanque ÷ dosis de agua
formula-product_put_down_product_mixed_measured_rate_rate_mixed_for = producto que se echa = producto preparado × dosis medida ÷ dosis para la que se preparó
formula-product_put_down_product_in_the_mix_measured_rate = producto que se echa = producto en la mezcla × dosis medida
formula-deviation_measured_rate_intended_rate_1 = diferencia = dosis medida ÷ dosis que se quiere − 1
formula-factor_density_of_the_liquid_density_of_water = factor = √(densidad del líquido ÷ densidad del agua)
formula-new_rate_rate_speed_new_speed = dosis nueva = dosis de agua × velocidad ÷ velocidad nueva
formula-new_rate_rate_the_pump_s_flow_goes_with_the_speed = dosis nueva = dosis de agua: el flujo de la bomba sigue a la velocidad
formula-new_rate_rate_the_controller_changes_the_pressure_to_hold_it = dosis nueva = dosis de agua: el controlador cambia la presión para mantenerla
formula-money_share_cost_on_the_area = dinero = parte × costo en la superficie
formula-ams_lb_100_gal_0_002_k_0_005_na_0_009_ca_0_014_mg_0_042_fe_p = sulfato de amonio (lb/100 gal) = 0.002 K + 0.005 Na + 0.009 Ca + 0.014 Mg + 0.042 Fe (ppm)
formula-product_active_ingredient_strength = producto = ingrediente activo ÷ concentración

figure-tank = tanque
figure-rate = dosis de agua
figure-product_mixed = producto preparado
figure-measured_rate = dosis medida
figure-rate_mixed_for = dosis para la que se preparó
figure-product_in_the_mix = producto en la mezcla
figure-intended_rate = dosis que se quiere
figure-density_of_the_liquid = densidad del líquido
figure-speed = velocidad
figure-new_speed = velocidad nueva
figure-what_holds_the_pressure = lo que mantiene la presión
figure-share = parte
figure-cost_on_the_area = costo en la superficie
figure-k = K
figure-na = Na
figure-ca = Ca
figure-mg = Mg
figure-fe = Fe
figure-active_ingredient = ingrediente activo
figure-strength = concentración

# Our own words about who says so. Publications keep their names.
source-common_practice = práctica común
source-common_practice_with_ground_driven_pumps = práctica común con bombas movidas por la rueda
source-definition_the_limit_see_who_sets_it = definición; el límite: vea quién lo pone
source-univ_of_missouri_extension_mu_guide_g1272_turned_round = Univ. of Missouri Extension, MU Guide G1272, despejado
source-the_product_s_label_as_given_7_u_s_c_136j_a_2_g = la etiqueta del producto, según se dio; 7 U.S.C. 136j(a)(2)(G)
source-ohio_state_univ_extension_fabe_520_2016_which_attributes_5_t = Ohio State Univ. Extension, FABE-520 (2016), que atribuye el ±5 % al USDA y a la EPA
source-the_tip_s_table_as_given = la tabla de la boquilla, según se dio
source-common_practice_for_plain_flat_fans_from_memory_the_tip_s_ow = práctica común para abanicos planos sencillos, de memoria; decide la tabla de la boquilla
source-iowa_state_univ_extension_and_oklahoma_state_univ_extension = Iowa State Univ. Extension y Oklahoma State Univ. Extension; el 10 % es nuestro
source-astm_e549_87_reapproved_2022_section_4_2_more_than_5 = ASTM E549-87 (reaprobada en 2022), sección 4.2: más de 5 %
