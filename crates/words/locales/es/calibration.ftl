### Tramos, el recorrido con cronómetro, la dosis por cada método y qué tan lejos puede estar un número.

## Courses: what to do with the cup

course_one_tip = Recorra { $length }. Recoja una boquilla el mismo tiempo: sus onzas líquidas son los galones por acre.
course_whole_boom = Recorra { $length }. Recoja cada boquilla el mismo tiempo: la suma de todas las onzas líquidas da los galones por acre.
course_boomless = Recorra { $length }. Recoja todo lo que echan las boquillas sin aguilón el mismo tiempo: la décima parte de las onzas líquidas da los galones por acre.
course_pints = Recorra { $length }. Recoja el mismo tiempo todo lo que va en este ancho: sus pintas son los galones por acre.
course_metric = Recorra { $length }. Recoja el mismo tiempo: los mililitros por { $factor } son los litros por hectárea.

course_short-tenths = Un tramo de { $length } se acaba antes de poder medir bien el tiempo.
    .do = Recorra { $instead } y divida las onzas líquidas entre diez.
course_short-pints = Un tramo de { $length } se acaba antes de poder medir bien el tiempo.
    .do = Recorra { $instead } y lea pintas: son los galones por acre.
course_short-by_clock = Un tramo de { $length } se acaba antes de poder medir bien el tiempo.
    .do = Recoja 30 s con cronómetro y calcule la dosis con el flujo, la velocidad y el ancho.
course_long = Un tramo de { $length } no cabe en la mayoría de los patios.
    .do = Recorra { $instead } y multiplique lo recogido por { $times }.

course_width = el ancho debe ser de { $least } a { $most }; se dio { $given }
    .do = dé el ancho que corresponde a lo recogido: la separación para una boquilla, por ejemplo 20 in; el ancho de trabajo para todas

## The timed drive

drive_course_short-several = { $course } se acaban en { $time }: con el tiempo tomado a mano, una pasada puede estar { $either_way } arriba o abajo.
    .do = Recorra { $courses } tramos de corrido, { $length }, y divida lo recogido entre { $courses }; o recoja 30 s con cronómetro y calcule la dosis con el flujo, la velocidad y el ancho.
drive_course_short-longer = { $course } se acaban en { $time }: con el tiempo tomado a mano, una pasada puede estar { $either_way } arriba o abajo.
    .do = Mida un tramo más largo; o recoja 30 s con cronómetro y calcule la dosis con el flujo, la velocidad y el ancho.

drive_dash_doubtful = El tablero marcaba { $shown }, pero la velocidad era { $driven }. ¿Se leyó en la unidad correcta?
drive_dash_high = El tablero marcaba { $shown }, pero la velocidad era solo { $driven }: marca { $percent } de más.
    .do = Mande ajustarlo; mientras tanto, multiplique lo que marca por { $correction }.
drive_dash_low = El tablero marcaba { $shown }, pero la velocidad era { $driven }: marca { $percent } de menos.
    .do = Mande ajustarlo; mientras tanto, multiplique lo que marca por { $correction }.
drive_dash_open = El tablero marca { $error } respecto a la velocidad verdadera; con estas pasadas no se sabe si es demasiado.
    .do = Recorra un tramo más largo, o más pasadas, para saberlo.
drive_dash_right = El tablero marca { $error } respecto a la velocidad verdadera; está bien.

drive_runs_disagree = Entre las pasadas { $runs } hay { $percent } de diferencia.
    .do = Recorra otra vez, de ida y de vuelta, en la misma marcha y a la misma velocidad del motor.
drive_outlier = La pasada { $run } tardó { $time }; las demás, unos { $others }. Sin ella, la velocidad es { $without }.
    .do = Repita esa pasada.
drive_one_run = Una sola pasada no basta para confiar.
    .do = Recorra el tramo otra vez, en sentido contrario.
drive_one_direction = Todas las pasadas fueron en el mismo sentido, así que la velocidad incluye la pendiente y el viento.
    .do = Recorra también en sentido contrario.
drive_directions_differ = De ida la velocidad era { $there } y de vuelta { $back }: pendiente o viento.
    .do = Esta velocidad vale para aplicar de ida y de vuelta por igual; la dosis es mayor donde la aspersora va más despacio.

speed_doubtful_fast = { $speed } es más rápido de lo que va cualquier aspersora. ¿Están bien el largo, el tiempo y sus unidades?
speed_doubtful_slow = { $speed } es más despacio de lo que nadie aplica. ¿Están bien el largo, el tiempo y sus unidades?
speed_doubt_large = La velocidad puede estar { $either_way } arriba o abajo, sobre todo por { $cause }: así casi no dice nada.
    .do = Para afinarla: { $smaller }.

drive_course = el tramo debe medir más que cero; se dio { $given }
    .do = mida el tramo con cinta, por ejemplo 204 ft (pies) o 100 m
drive_no_runs = no se cronometró ninguna pasada; hace falta por lo menos 1
    .do = dé el tiempo de cada pasada por el tramo, por ejemplo 45 s
drive_too_many_runs = { $runs } pasadas son más de las que nadie recorre (como máximo { $most })
    .do = dé las pasadas de un solo recorrido
drive_run_time = la pasada { $run } debe tardar más que cero; se dio { $given }
    .do = quite la pasada que no se cronometró
drive_dash = la velocidad del tablero debe ser mayor que cero; se dio { $given }
    .do = deje fuera el tablero si no se leyó
drive_speed = la velocidad debe ser mayor que cero; se dio { $given }
    .do = dé una velocidad, por ejemplo 5 mph u 8 km/h
drive_timer = un tiempo puede estar { $either_way } arriba o abajo, pero las pasadas solo tardan { $runs }
    .do = arranque y pare el cronómetro con más precisión, por ejemplo 0.2 s, o recorra un tramo más largo
drive_doubt = la duda ({ $of }) debe ser un número de cero en adelante; se dio { $given }
    .do = déjela fuera para usar la acostumbrada

## The rate

rate_doubtful_high = { $rate } es más de lo que se aplica en cualquier campo. ¿Corresponde la cantidad a ese ancho?
rate_doubtful_low = { $rate } es menos de lo que se aplica en cualquier campo. ¿Corresponde la cantidad a ese ancho?
rate_width_doubtful-narrow = Casi ninguna boquilla cubre solo { $width }. ¿Está bien la unidad?
rate_width_doubtful-wide = Casi ningún aguilón tiene { $width } de ancho. ¿Está bien la unidad?
rate_spacing_like_swath = Casi nunca hay { $width } de boquilla a boquilla. ¿No es el ancho de trabajo? Lo de una boquilla va con la separación entre boquillas.
rate_swath_like_spacing = Casi ningún aguilón tiene solo { $width } de ancho. ¿No es la separación entre boquillas? Lo de todo el aguilón va con el número de boquillas por la separación.
rate_boom_length_for_swath = { $given } es el aguilón de la primera boquilla a la última. El ancho de trabajo es { $tips } boquillas por { $spacing }: { $swath }.
    .do = Calcule con { $swath }.
rate_swath_not_tips_times_spacing =
    { $tips ->
        [one] { $given } no es { $tips } boquilla por { $spacing }, que da { $swath }.
       *[other] { $given } no es { $tips } boquillas por { $spacing }, que da { $swath }.
    }
    .do = Cuente las boquillas que echan y mida su separación.
rate_band_wider_than_rows = Bandas de { $band } se traslapan con surcos a { $rows }. ¿No están cambiadas las dos medidas?
rate_overlap_large = Con { $overlap } de traslape, parte del terreno se moja tres veces. ¿De veras es la franja que comparte una sola pasada vecina?
rate_overlap_none = Sin traslape, las orillas de una pasada sin aguilón reciben muy poco.
    .do = Aplique agua en suelo seco y vea desde qué distancia de la orilla se moja tan bien como en el centro.
rate_effective_swath = De { $wetted } mojados, cada pasada se corre { $swath }.
rate_doubt_large = La dosis puede estar { $either_way } arriba o abajo, sobre todo por { $cause }: así casi no dice nada.
    .do = Para afinarla: { $smaller }.

rate_not_positive = { $input } debe ser mayor que cero; se dio { $given }
    .do = mida ese dato, o use un método que no lo necesite
rate_width = { $input } debe ser de 1/4 in (pulg) a 500 ft (pies); se dio { $given }
    .do = revise el número y su unidad, por ejemplo 20 in para una boquilla o 60 ft para todo el aguilón
rate_doubt = la duda ({ $of }) debe ser un número de cero en adelante; se dio { $given }
    .do = déjela fuera para usar la acostumbrada
rate_tips = el número de boquillas debe ser de 1 a 1000; se dio { $given }
    .do = cuente las boquillas que echan
rate_overlap = el traslape debe ser desde 0 % hasta menos de 100 % del ancho mojado; se dio { $given }
    .do = dé la franja que la pasada siguiente moja otra vez como parte de lo que moja una pasada: 5 pies de 30 pies son 17 %
rate_nothing_used = lo que quedó en el tanque debe ser menos que el tanque, { $tank }; se dio { $left }
    .do = dé lo que tenía el tanque al empezar y lo que quedó al final

# What was given, in "the speed must be more than nothing".
word-input_flow = el flujo
word-input_speed = la velocidad
word-input_tip_spacing = la separación entre boquillas
word-input_swath = el ancho de trabajo
word-input_width = el ancho
word-input_catch = la captura
word-input_course = el tramo
word-input_catch_time = el tiempo de la captura
word-input_used = el volumen gastado
word-input_distance = la distancia recorrida
word-input_area = la superficie
word-input_tank = el contenido del tanque
word-input_left = lo que quedó en el tanque
word-input_wetted = el ancho mojado
word-input_overlap = el traslape
word-input_band = la banda
word-input_rows = la separación entre surcos
word-input_plot = la parcela
word-input_rate = la dosis
word-input_volume = el volumen

# Which width a rate was worked with, and why that one.
word-width_tip_spacing = la separación entre boquillas: se recogió una boquilla, y cubre el terreno hasta la mitad del camino a sus vecinas
word-width_swath = el número de boquillas por la separación: se recogió todo el aguilón, y las boquillas de las puntas cubren media separación más allá
word-width_as_given = el ancho que cubre una boquilla (la separación) o todo el aguilón (boquillas × separación), como se dio
word-width_effective_swath = el ancho de trabajo efectivo: lo mojado menos lo que moja otra vez la pasada siguiente
word-width_band = la banda: solo ese terreno se trata
word-width_rows = la separación entre surcos: se recogió todo lo que va a un surco, y cubre el terreno de surco a surco
word-width_band_share = la banda dividida entre sus boquillas: se recogió una boquilla, y hace su parte de la banda
word-width_row_share = la separación entre surcos dividida entre las boquillas de un surco: se recogió una boquilla, y hace su parte
word-width_hand_width = el ancho que se cubre a mano en una pasada
word-width_ground = ninguno: se conoce el terreno mismo que se aplicó

## How far off a figure may be

doubt_mostly_from = Este número puede estar { $either_way } arriba o abajo, sobre todo por { $cause }.
    .do = Para afinarlo: { $smaller }.

# The causes, in "mostly through cup marks".
word-doubt_timing_the_drive = el tiempo del recorrido, tomado a mano
word-doubt_timing_the_catch = el tiempo de la captura, tomado a mano
word-doubt_runs_differ = pasadas que difieren
word-doubt_watch = el cronómetro
word-doubt_cup_marks = las marcas del vaso
word-doubt_cup_scale = la escala del vaso
word-doubt_handling = la espuma y la inclinación del vaso
word-doubt_course = la cinta sobre el tramo
word-doubt_spacing = la separación entre boquillas
word-doubt_swath = el ancho de trabajo
word-doubt_swath_by_sight = el ancho de trabajo, estimado a ojo
word-doubt_band = el ancho de la banda
word-doubt_rows = la separación entre surcos
word-doubt_flow_as_given = el flujo que se dio
word-doubt_speed_as_given = la velocidad que se dio
word-doubt_refill = lo que se rellenó
word-doubt_tank = las marcas del tanque
word-doubt_field_area = la superficie del campo
word-doubt_plot_area = la superficie de la parcela
word-doubt_gauge_marks = las marcas del manómetro
word-doubt_tips_not_caught = las boquillas que no se recogieron
word-doubt_given = la duda que se dio

# What makes each smaller, in "To narrow it: catch for longer."
word-smaller_timing_the_drive = recorra un tramo más largo, o recórralo más veces
word-smaller_timing_the_catch = recoja por más tiempo
word-smaller_runs_differ = recorra otra vez en la misma marcha y a la misma velocidad del motor
word-smaller_watch = compare el cronómetro con otro durante diez minutos
word-smaller_cup_marks = lea marcas más finas (el lado de los mililitros), o recoja por más tiempo
word-smaller_cup_scale = revise el vaso con una báscula de cocina: una pinta de agua pesa 1.04 libras; un litro, 1 kg
word-smaller_handling = deje bajar la espuma y lea el vaso en un lugar nivelado
word-smaller_course = mida el tramo otra vez con cinta, sobre el suelo
word-smaller_spacing = mida varios huecos de una vez y divida
word-smaller_swath = cuente las boquillas y mida su separación
word-smaller_swath_by_sight = aplique agua en suelo seco o papel y mida con cinta lo mojado
word-smaller_band = aplique agua en suelo seco y mida la banda con cinta
word-smaller_rows = mida varios surcos de una vez y divida
word-smaller_flow_as_given = recójalo, con cronómetro, en un vaso de marcas finas
word-smaller_speed_as_given = cronometre un recorrido por un tramo medido con cinta, de ida y de vuelta
word-smaller_refill = gaste más antes de rellenar, en el mismo lugar nivelado
word-smaller_tank = llene con medidor
word-smaller_field_area = mida el terreno que de veras se aplicó
word-smaller_plot_area = use una parcela más grande
word-smaller_gauge_marks = lea en las boquillas un manómetro de marcas más finas
word-smaller_tips_not_caught = recoja las boquillas que faltan
word-smaller_given = mida ese dato con más precisión

## Workings

working-course = El tramo
working-speed_over_course = La velocidad en el tramo
working-flow_speed_width = La dosis por flujo, velocidad y ancho
working-catch_over_course = La dosis por una captura sobre un tramo
working-distance_refill = La dosis por lo que se rellenó
working-known_area = La dosis por lo gastado en una superficie
working-whole_tank = La dosis por un tanque entero
working-boomless = La dosis de las boquillas sin aguilón
working-band = La dosis de las bandas
working-directed = La dosis de las boquillas dirigidas al surco
working-hand_plot = La dosis en una parcela, a mano
working-hand_walking = La dosis al caminar, a mano
working-hand_timed = La dosis por el tiempo que toma una parcela, a mano
working-effective_swath = El ancho de trabajo efectivo
working-doubt = Qué tan lejos puede estar

formula-length_area_width = largo = superficie ÷ ancho
formula-speed_course_mean_time_of_the_runs = velocidad = tramo ÷ tiempo promedio de las pasadas
formula-rate_flow_speed_width = dosis = flujo ÷ (velocidad × ancho)
formula-rate_catch_course_width = dosis = captura ÷ (tramo × ancho)
formula-rate_used_distance_width = dosis = gastado ÷ (distancia × ancho)
formula-rate_used_area = dosis = gastado ÷ superficie
formula-rate_used_plot = dosis = gastado ÷ parcela
formula-rate_catch_plot = dosis = captura ÷ parcela
formula-rate_tank_left_area = dosis = (tanque − lo que quedó) ÷ superficie
formula-effective_swath_wetted_width_1_part_of_it_that_the_next_pass = ancho efectivo = ancho mojado × (1 − parte que moja otra vez la pasada siguiente)
formula-how_far_off_95_1_96_sum_of_the_squares_of_what_each_doubt_ad = qué tan lejos, 95 % = 1.96 × √(suma de los cuadrados de lo que agrega cada duda)

figure-area = superficie
figure-width = ancho
figure-course = tramo
figure-runs = pasadas
figure-mean_time_of_the_runs = tiempo promedio de las pasadas
figure-flow = flujo
figure-catch = captura
figure-used = gastado
figure-distance = distancia
figure-plot = parcela
figure-left = lo que quedó
figure-band = banda
figure-which_width = cuál ancho
figure-wetted_width = ancho mojado
figure-part_of_it_that_the_next_pass_wets_again = parte que moja otra vez la pasada siguiente
figure-most_of_it_comes_from = la mayor parte viene de
figure-its_part = su parte
figure-to_make_it_smaller = para reducirla

# The causes of doubt as the names of what each adds.
figure-timing_the_drive_by_hand = { word-doubt_timing_the_drive }
figure-timing_the_catch_by_hand = { word-doubt_timing_the_catch }
figure-runs_that_differ = { word-doubt_runs_differ }
figure-the_watch = { word-doubt_watch }
figure-cup_marks = { word-doubt_cup_marks }
figure-the_cup_s_scale = { word-doubt_cup_scale }
figure-foam_and_tilt_of_the_cup = { word-doubt_handling }
figure-the_tape_over_the_course = { word-doubt_course }
figure-tip_spacing = { word-doubt_spacing }
figure-swath = { word-doubt_swath }
figure-swath_judged_by_eye = { word-doubt_swath_by_sight }
figure-band_width = { word-doubt_band }
figure-row_spacing = { word-doubt_rows }
figure-the_flow_as_given = { word-doubt_flow_as_given }
figure-the_speed_as_given = { word-doubt_speed_as_given }
figure-what_was_filled_up = { word-doubt_refill }
figure-tank_marks = { word-doubt_tank }
figure-the_field_s_area = { word-doubt_field_area }
figure-the_plot_s_area = { word-doubt_plot_area }
figure-gauge_marks = { word-doubt_gauge_marks }
figure-tips_not_caught = { word-doubt_tips_not_caught }
figure-the_doubt_given = { word-doubt_given }

source-the_definition_of_the_rate = la definición de la dosis
source-the_definition_of_the_rate_the_area_is_our_choice = la definición de la dosis; la superficie la elegimos nosotros
source-the_definition_of_the_rate_univ_of_missouri_extension_g1272 = la definición de la dosis; Univ. of Missouri Extension, G1272
source-the_definition_of_speed_ground_covered_and_time_spent_add_up = la definición de la velocidad; el terreno recorrido y el tiempo se suman de pasada en pasada
source-by_geometry = por geometría
source-cornell_univ_boom_sprayer_calibration_the_definition_of_the = Cornell Univ., Boom Sprayer Calibration: la definición de la dosis
source-univ_of_missouri_extension_g1270a_ndsu_extension_ae_1042_tre = Univ. of Missouri Extension, G1270a; NDSU Extension, AE-1042: acre tratado y acre de cultivo
source-lsu_agcenter_calibrating_a_cluster_nozzle_boomless_sprayer_t = LSU AgCenter, Calibrating a cluster nozzle/Boomless sprayer (allí redondeado a 3,400 pies²)
source-french_order_of_18_dec_2008_nor_agrp0828914a_annex_iv_b_5_5 = Orden francesa del 18 de diciembre de 2008 (NOR AGRP0828914A), anexo IV B, 5.5.1.2: más de 5 % respecto a la velocidad verdadera
