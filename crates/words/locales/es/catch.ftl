### The cups and the spacing: what they tell, what cannot be, how it was reached; and the machine they are about.

## What was done before a round of cups

round-as_found = tal como estaba
round-after_cleaning = después de limpiar
round-new_tips = boquillas nuevas
round-pressure_changed = con otra presión
round-swapped = intercambiadas

## What a round of cups tells

tip_high = La boquilla { $tip } echa { $off } más que el promedio de las boquillas (de { $low } a { $high } más).
    .do = Cambie la boquilla { $tip } por una del mismo tipo y tamaño, y recójala otra vez.
tip_low = La boquilla { $tip } echa { $off } menos que el promedio de las boquillas (de { $low } a { $high } menos).
    .do = Limpie la boquilla { $tip } y su malla con cepillo suave o aire, nunca con la boca, y recójala otra vez; cámbiela si sigue echando de menos.
tips_plugged = { $tips-count ->
        [one] La boquilla { $tips } está tapada. No cuenta en el promedio.
       *[other] Las boquillas { $tips } están tapadas. No cuentan en el promedio.
    }
    .do = { $tips-count ->
        [one] Quite la presión. Limpie la boquilla y su malla con cepillo suave o aire, nunca con la boca, y recójala otra vez.
       *[other] Quite la presión. Limpie cada una y su malla con cepillo suave o aire, nunca con la boca, y recójalas otra vez.
    }
tips_cannot_tell-longer = { $tips-count ->
        [one] De la boquilla { $tips } no se sabe todavía: lo más probable es que esté a { $off } del promedio, pero puede estar entre { $low } y { $high }.
       *[other] De las boquillas { $tips } no se sabe todavía: las marcas del vaso están muy separadas para ellas, o el tiempo es muy corto.
    }
    .do = { $again-count ->
        [one] Recójala otra vez durante { $time }; toma unos { $spent }.
       *[other] Recoja otra vez las boquillas { $again } durante { $time }; toma unos { $spent }.
    }
tips_cannot_tell-finer = { $tips-count ->
        [one] De la boquilla { $tips } no se sabe todavía: lo más probable es que esté a { $off } del promedio, pero puede estar entre { $low } y { $high }.
       *[other] De las boquillas { $tips } no se sabe todavía: las marcas del vaso están muy separadas para ellas, o el tiempo es muy corto.
    }
    .do = { $again-count ->
        [one] Recójala otra vez durante { $time } y léala de { $step } en { $step }, por el lado del vaso con marcas más finas; toma unos { $spent }.
       *[other] Recoja otra vez las boquillas { $again } durante { $time } y léalas de { $step } en { $step }, por el lado del vaso con marcas más finas; toma unos { $spent }.
    }
tips_cannot_tell-enough = { $tips-count ->
        [one] De la boquilla { $tips } no se sabe todavía: lo más probable es que esté a { $off } del promedio, pero puede estar entre { $low } y { $high }.
       *[other] De las boquillas { $tips } no se sabe todavía: las marcas del vaso están muy separadas para ellas, o el tiempo es muy corto.
    }
    .do = Un vaso más cuesta más tiempo que lo que aclara. Si hay duda, cambie la boquilla.
tips_cannot_tell-some_enough = { $tips-count ->
        [one] De la boquilla { $tips } no se sabe todavía: lo más probable es que esté a { $off } del promedio, pero puede estar entre { $low } y { $high }.
       *[other] De las boquillas { $tips } no se sabe todavía: las marcas del vaso están muy separadas para ellas, o el tiempo es muy corto.
    }
    .do = Para las que no se nombran abajo, un vaso más cuesta más tiempo que lo que aclara.
tips_cannot_tell-named_below = { $tips-count ->
        [one] De la boquilla { $tips } no se sabe todavía: lo más probable es que esté a { $off } del promedio, pero puede estar entre { $low } y { $high }.
       *[other] De las boquillas { $tips } no se sabe todavía: las marcas del vaso están muy separadas para ellas, o el tiempo es muy corto.
    }
tips_catch_next-longer = { $again-count ->
        [one] Recoja la boquilla { $again } durante { $time }.
       *[other] Recoja las boquillas { $again } durante { $time }.
    }
    .do = Toma unos { $spent }.
tips_catch_next-finer = { $again-count ->
        [one] Recoja la boquilla { $again } durante { $time } y léala de { $step } en { $step }, por el lado del vaso con marcas más finas.
       *[other] Recoja las boquillas { $again } durante { $time } y léalas de { $step } en { $step }, por el lado del vaso con marcas más finas.
    }
    .do = Toma unos { $spent }.
tips_not_caught = { $tips-count ->
        [one] La boquilla { $tips } no se recogió; no se sabe si va con las demás.
       *[other] Se recogieron { $caught } de { $all } boquillas; no se sabe si las otras ({ $tips }) van con ellas.
    }
tips_agree_without = { $still-count ->
        [0] Sin la boquilla { $tip }, las demás van parejas: promedio { $without } en lugar de { $with }.
        [one] La boquilla { $tip } mueve el promedio de { $without } a { $with }; sin ella, la boquilla { $still } sigue fuera.
       *[other] La boquilla { $tip } mueve el promedio de { $without } a { $with }; sin ella, las boquillas { $still } siguen fuera.
    }
tips_within-all = { $count ->
        [2] Las dos boquillas están dentro del límite: no es probable que ninguna esté a más de { $most } del promedio.
       *[other] Las { $count } boquillas están dentro del límite: no es probable que ninguna esté a más de { $most } del promedio.
    }
tips_within-all_likely = { $count ->
        [2] Lo más probable es que las dos boquillas estén dentro del límite.
       *[other] Lo más probable es que las { $count } boquillas estén dentro del límite.
    }
tips_within-some = { $count } boquillas están dentro del límite: no es probable que ninguna de ellas esté a más de { $most } del promedio.
tips_within-some_likely = Lo más probable es que { $count } boquillas estén dentro del límite.
tips_within-one = Una boquilla está dentro del límite.

## Against new tips

tips_replace_set-worn = { $good-count ->
        [0] { $off } de { $of } boquillas pasan del límite sobre una nueva. El juego está gastado.
        [one] { $off } de { $of } boquillas pasan del límite sobre una nueva; la boquilla { $good }, no. El juego está gastado.
       *[other] { $off } de { $of } boquillas pasan del límite sobre una nueva; las boquillas { $good }, no. El juego está gastado.
    }
    .do = Cambie el juego completo, no una por una, y recoja otra vez: también las nuevas pueden venir mal.
tips_replace_set-off = { $good-count ->
        [0] { $off } de { $of } boquillas están fuera.
        [one] { $off } de { $of } boquillas están fuera; la boquilla { $good } está bien.
       *[other] { $off } de { $of } boquillas están fuera; las boquillas { $good } están bien.
    }
    .do = Cambie el juego completo, no una por una, y recoja otra vez: también las nuevas pueden venir mal.
tips_worn = { $tips-count ->
        [one] La boquilla { $tips } va pareja con las demás, pero echa { $most } comparada con una nueva.
       *[other] Las boquillas { $tips } van parejas con las demás, pero echan hasta { $most } comparadas con una nueva.
    }
    .do = { $tips-count ->
        [one] Está gastada: cámbiela por una del mismo tipo y tamaño.
       *[other] Están gastadas: cámbielas por otras del mismo tipo y tamaño.
    }
boom_under_new-tip = La boquilla echa { $under } menos que nueva. Una boquilla gastada echa más, no menos: el tamaño de la boquilla, la presión que le llega o el manómetro no van con el flujo del fabricante.
    .do = Vea el tamaño impreso en las boquillas, lea la presión en una boquilla y pruebe otro manómetro; limpie las mallas.
boom_under_new-boom = Todo el aguilón echa { $under } menos que lo que echarían boquillas nuevas. Una boquilla gastada echa más, no menos: el tamaño de las boquillas, la presión que les llega o el manómetro no van con el flujo del fabricante.
    .do = Vea el tamaño impreso en las boquillas, lea la presión en una boquilla y pruebe otro manómetro; limpie las mallas.
tips_under_new = { $tips-count ->
        [one] La boquilla { $tips } va pareja con las demás, pero echa { $under } menos que una nueva: medio tapada, o de otro tamaño.
       *[other] Las boquillas { $tips } van parejas con las demás, pero echan hasta { $under } menos que las nuevas: medio tapadas, o de otro tamaño.
    }
    .do = Limpie boquilla y malla con cepillo suave o aire, nunca con la boca; vea el tamaño que trae impreso.

## What to do with a tip, in a word or two

change-unplug = destaparla
change-replace = cambiarla
change-clean = limpiarla
change-worn = gastada, cambiarla
change-catch_again = recogerla otra vez
change-catch = recogerla

## Readings that cannot be

catch_doubtful_kept = Boquilla { $tip }: se dejó { $reading }, aunque { $why }.
catch_marks_coarser = Boquilla { $tip }: { $reading } se leyó con marcas cada { $step }, que es más que lo recogido.
    .do = Use un vaso con marcas más finas, o recoja más tiempo.
phrase-absurd_runs_over = al vaso le caben { $holds } y se habría derramado
phrase-absurd_times_new = eso es { $flow }, { $times } veces lo que da una boquilla nueva ({ $new })
phrase-absurd_more_than_any = eso es { $flow }, más que lo que da { $outlet }
word-outlet_boom_tip = cualquier boquilla de aguilón
word-outlet_cluster = cualquier salida o boquilla sin aguilón
word-outlet_hand_gun = cualquier pistola de mano

## What is wrong with the cups

catch_no_time = no se puede recoger durante { $given }; el tiempo debe ser más que cero
    .do = escriba cuánto tiempo se sostuvo cada vaso bajo su boquilla, como 30 s
catch_nothing = no se recogió ninguna boquilla
    .do = escriba una lectura por cada boquilla, 0 para la que no echa nada
catch_too_many_tips = { $tips } boquillas son más de las que tiene cualquier aguilón (a lo sumo 1000)
    .do = dé las boquillas de un solo aguilón
catch_absurd = boquilla { $tip }: { $reading } en { $time } no puede ser: { $why }
    .do = revise la lectura, su unidad y el tiempo; si está bien, diga que las lecturas dudosas se dejen
catch_share-limit = un límite de { $given } no puede ser
    .do = más de 0 % y a lo sumo 100 %, como 10 %
catch_share-risk = un riesgo de { $given } no puede ser
    .do = más de 0 y menos de 0.5, como 0.05
limit_unknown = "{ $given }" no es un límite conocido aquí
    .do = dé un porcentaje como 10 %, o uno de estos: { $known }

## The limits

limit-mean-10 = ninguna boquilla a más de 10 % del promedio de las boquillas
limit-mean-5 = todas las boquillas a 5 % o menos del promedio de las boquillas
limit-new-10 = la boquilla que echa 10 % o más sobre una nueva está gastada
limit-new-over-10 = la boquilla que echa más de 10 % sobre una nueva está gastada
limit-inspection-10-15 = a 15 % o menos del flujo nominal, 10 % en boquillas de menos de 1 L/min; del promedio si no se conoce el nominal

source-the_user_s_own_limit = el límite del propio usuario
source-ohio_state_univ_extension_output_errors_of_more_than_10_coun = Ohio State Univ. Extension: cuentan los errores de más de 10 %
source-alberta_agriculture_agdex_606_1_p_11_within_5_of_the_boom_s = Alberta Agriculture, Agdex 606-1, p. 11: a 5 % o menos del promedio del aguilón
source-univ_of_wyoming_extension_2021_10_percent_or_more_over_a_new = Univ. of Wyoming Extension, 2021: 10 por ciento o más sobre una boquilla nueva
source-usga_2016_differs_by_more_than_10_from_a_new_tip = USGA, 2016: difiere en más de 10 % de una boquilla nueva
source-uses_limits_from_the_french_order_of_18_dec_2008_nor_agrp082 = usa límites de la orden francesa del 18 de diciembre de 2008 (NOR AGRP0828914A), anexo IV B, 9.2.2
source-french_order_of_18_dec_2008_nor_agrp0828914a_annex_iv_b_9_2 = orden francesa del 18 de diciembre de 2008 (NOR AGRP0828914A), anexo IV B, 9.2.2: más de 33 % de las boquillas
source-french_order_of_18_dec_2008_nor_agrp0828914a_annex_iv_b_8_3 = orden francesa del 18 de diciembre de 2008 (NOR AGRP0828914A), anexo IV B, 8.3.1.2: más de 5 %
source-jcgm_100_2008_gum_4_3_7_5_1_2_f_2_2_1_marks_hand_and_handlin = JCGM 100:2008 (GUM) 4.3.7, 5.1.2, F.2.2.1; marcas, mano y manejo, cada uno como parte de la captura
source-jcgm_106_2012_the_chance_takes_each_reading_as_an_interval_a = JCGM 106:2012; la probabilidad toma cada lectura como un intervalo y cuenta qué tan parejas son las demás boquillas

# The same, where a limit's source stands among the figures of a working.
word-source_own_limit = { source-the_user_s_own_limit }
word-source_mean_10 = { source-ohio_state_univ_extension_output_errors_of_more_than_10_coun }
word-source_mean_5 = { source-alberta_agriculture_agdex_606_1_p_11_within_5_of_the_boom_s }
word-source_new_10 = { source-univ_of_wyoming_extension_2021_10_percent_or_more_over_a_new }
word-source_new_over_10 = { source-usga_2016_differs_by_more_than_10_from_a_new_tip }
word-source_inspection_10_15 = { source-uses_limits_from_the_french_order_of_18_dec_2008_nor_agrp082 }

## How the numbers of the cups were reached

working-catch_mean = El promedio de las boquillas
formula-mean_what_the_tips_that_run_gave_how_many_they_are = promedio = lo que dieron las boquillas que echan ÷ cuántas son
figure-tips_that_run = boquillas que echan
figure-plugged_left_out = tapadas, no cuentan
figure-not_caught = sin recoger
working-catch_deviation = Qué tan lejos está una boquilla
formula-off_catch_mean_1_give_or_take_1_96_marks_12_2_hand_on_the_wa = desviación = captura ÷ promedio − 1, más o menos 1.96 × √((marcas ÷ √12)² + (√2 × mano en el cronómetro)² + manejo²)
figure-tip = boquilla
figure-hand_on_the_watch = mano en el cronómetro
figure-handling = manejo del vaso
figure-lowest = lo más bajo
figure-highest = lo más alto
word-no_catch = ninguna
working-catch_verdict = Dentro o fuera del límite
formula-within_where_the_chance_of_being_within_the_limit_is_at_leas = dentro si la probabilidad de estar dentro del límite es al menos 1 − riesgo, fuera si es a lo sumo el riesgo
figure-limit = límite
figure-who_sets_it = quién lo pone
figure-risk = riesgo
word-verdict_open = no se sabe

## What the spacing tells

spacing_gap_outside = El hueco { $gaps } mide { $size } en lugar de { $intended }, más de { $limit } de diferencia.
spacing_gap_outside-left = El hueco { $gaps } mide { $size } en lugar de { $intended }, más de { $limit } de diferencia.
    .do = Mueva la boquilla { $tips } a la izquierda { $distance }, según va sentado.
spacing_gap_outside-right = El hueco { $gaps } mide { $size } en lugar de { $intended }, más de { $limit } de diferencia.
    .do = Mueva la boquilla { $tips } a la derecha { $distance }, según va sentado.
spacing_gaps_outside = Los huecos { $gaps } difieren más de { $limit } de { $intended }. El peor es el hueco { $worst }: { $size }.
spacing_gaps_outside-left = Los huecos { $gaps } difieren más de { $limit } de { $intended }. El peor es el hueco { $worst }: { $size }.
    .do = Mueva la boquilla { $tips } a la izquierda { $distance }, según va sentado.
spacing_gaps_outside-right = Los huecos { $gaps } difieren más de { $limit } de { $intended }. El peor es el hueco { $worst }: { $size }.
    .do = Mueva la boquilla { $tips } a la derecha { $distance }, según va sentado.
spacing_move_left = Mueva la boquilla { $tip } a la izquierda { $distance }.
spacing_move_right = Mueva la boquilla { $tip } a la derecha { $distance }.
spacing_unmendable = Mover boquillas no arregla el hueco { $gap }: las boquillas { $left } y { $right } no se pueden mover, así que se queda en { $size }.
    .do = Vea si de todos modos se puede mover la boquilla { $left } o la { $right }.
spacing_step_too_coarse = Las marcas cada { $step } están muy separadas para juzgar una separación de { $intended } con límite de { $limit }.
    .do = Lea otra vez la cinta, de { $finer } en { $finer } o más fino.
spacing_gap_open = El hueco { $first } está tan cerca del límite que con marcas cada { $step } no se sabe todavía.
    .do = Lea otra vez la cinta, de { $finer } en { $finer } o más fino.
spacing_gaps_open = Los huecos { $gaps } están tan cerca del límite que con marcas cada { $step } no se sabe todavía.
    .do = Lea otra vez la cinta, de { $finer } en { $finer } o más fino.
spacing_intended_doubtful = Casi todos los huecos están más cerca de { $middle } que de { $intended }. ¿Es correcto { $intended }?
    .do = Si el aguilón debe tener { $middle }, dé esa separación antes de mover nada.
spacing_move_too_small = Al pie de la letra habría que mover también estas boquillas, pero menos de { $smallest }; déjelas: { $tips }.
spacing_even-as_meant = Todos los huecos miden { $size }.
spacing_even-alike = Todos los huecos miden { $size }, a { $limit } o menos de { $intended }.
spacing_even-within = Todos los huecos están a { $limit } o menos de { $intended }; el peor, el hueco { $worst }, mide { $size }.
spacing_gaps_add_up = Los errores pequeños de huecos medidos uno por uno se suman a lo largo del aguilón.
    .do = La próxima vez estire una sola cinta a lo largo del aguilón y lea la marca de cada boquilla.

## What is wrong with the spacing

spacing_intended = la separación prevista debe ser más que cero; se dio { $given }
    .do = dé la separación que debe tener el aguilón, como 20 in o 50 cm
spacing_too_few_tips = { $tips ->
        [one] una boquilla no tiene huecos; hacen falta al menos 2 boquillas
       *[other] { $tips } boquillas no tienen huecos; hacen falta al menos 2 boquillas
    }
    .do = dé la marca de cada boquilla en una sola cinta estirada, o cada hueco
spacing_too_many_tips = { $tips } boquillas son más de las que tiene cualquier aguilón (a lo sumo 1000)
    .do = dé las boquillas de un solo aguilón
spacing_gap = el hueco { $number } debe ser más que cero; se dio { $given }
    .do = mida del centro de una boquilla al centro de la siguiente, como 19 3/4 in
spacing_mark_order = la marca de la boquilla { $tip }, { $given }, no va más allá de la marca anterior, { $before }
    .do = enganche la cinta en la primera boquilla de la izquierda, según va sentado el operador, y lea todas hacia la derecha
spacing_step = la distancia entre marcas de la cinta debe ser más que cero; se dio { $given }
    .do = dé la distancia entre dos marcas de la cinta, como 1/8 in
spacing_limit = el límite debe ser más de 0 % y menos de 50 % de la separación; se dio { $given }
    .do = 5 % es el límite de costumbre
spacing_no_such_tip = la boquilla { $tip } no puede ser una fija; el aguilón tiene boquillas de la 1 a la { $tips }
    .do = numere las boquillas desde la izquierda según va sentado el operador, comenzando por 1

## How the spacing was reached

working-spacing_of_gaps = Qué tan lejos están los huecos
formula-error_gap_intended = error = hueco − previsto
working-spacing_of_marks = Qué tan lejos están los huecos, con una sola cinta
formula-error_mark_mark_before_it_intended_marks_off_one_tape_do_not = error = marca − marca anterior − previsto; con marcas de una sola cinta los errores no se suman
figure-intended = previsto
figure-limit_as_a_length = límite como longitud
figure-the_marks_leave_open_either_way = lo que las marcas dejan abierto, para un lado u otro
figure-the_worst_gap = el peor hueco
figure-its_size = cuánto mide

## The machine

# The tips of a boom that are in no group of their own.
group-boom = aguilón
mounting-rear = detrás del operador
mounting-front = delante del operador

fan_no_length = una altura o separación de { $length } no puede ser; debe ser más que cero
fan_angle = ningún abanico tiene { $angle } de ancho; sirve de 10 a 170 grados
fan_overlap = un traslape de { $overlap } no puede ser; sirve de 0 a 300 % de la separación
boom_empty_section = un aguilón necesita al menos una boquilla en cada sección
boom_no_spacing = una separación de { $spacing } no puede ser; debe ser más que cero
boom_too_many_tips = { $tips } boquillas son más de las que tiene cualquier aguilón (a lo sumo 1000)
boom_no_such_tip = no hay boquilla { $number }; el aguilón tiene { $tips }, numeradas desde la izquierda a partir de 1
flow_none = un flujo de { $flow } no puede ser; debe ser más que cero
    .do = la tabla de la boquilla da un flujo a una presión, como 0.30 gal/min @ 40 psi
flow_no_pressure = una presión de { $pressure } no puede ser; debe ser más que cero
    .do = lea el manómetro mientras todas las boquillas echan
carrier_density = ningún líquido para aplicar pesa { $density }; sirve de 4.2 a 21 lb/gal (0.5 a 2.5 kg/L)
    .do = el vendedor del fertilizante o la etiqueta dan el peso de un galón; el agua pesa 8.34 lb/gal
tip_size_unknown = "{ $given }" no es un tamaño de boquilla de ISO 10625
    .do = tamaños que sirven: { $known }; o dé el flujo, como 0.30 gal/min @ 40 psi
