### La línea de órdenes: sus respuestas, la página de una visita, qué está mal en lo escrito, y su ayuda.

## What stands before a line

line-error = error:
line-note = nota:
line-of_batch = línea { $number }: { $message }
line-quoted = “{ $text }”
at-tip = boquilla { $number }
at-gap = hueco { $number }
at-mark = marca { $number }
at-standard_input = entrada estándar
at-line_and_column = línea { $line }, columna { $column }
word-standard_input = la entrada estándar

## The answers of single steps

line-amount_and_range = { $amount }, lo más probable: { $range }
line-course = { $length } para { $width }
line-takes = se recorren en { $time } a { $speed }
line-runs_apart = { $runs } pasadas, con { $apart } de diferencia entre ellas
line-gallon_covers = { $rate }; un galón alcanza para { $area }
line-litre_covers = { $rate }; un litro alcanza para { $area }
line-width = ancho: { $why }
line-most_of_doubt = de donde viene más duda: { $of } (± { $doubt }); para reducirla, { $smaller }
line-flow = { $flow } a { $pressure }
line-of_this_carrier = de este líquido; de agua serían { $water } (factor { $factor })
line-differs_from_water = El flujo es más de 5 % distinto del de agua: una calibración con agua se tiene que corregir por eso (ASTM E549-87, 4.2).
line-gaps_within =
    { $gaps ->
        [one] el hueco está dentro del límite
       *[other] los { $gaps } huecos están dentro del límite
    }
line-gaps_off =
    { $off ->
        [one] 1 de { $gaps } huecos está mal
       *[other] { $off } de { $gaps } huecos están mal
    }
line-gaps_open = con las marcas de la cinta no se sabe
line-gap = hueco { $gap } (boquillas { $gap } y { $next }): { $size }, { $off }: { $verdict }
line-loads = { $loads }; un tanque lleno alcanza para { $area }
line-no_load = ninguna carga
line-one_load = 1 carga de { $last }
line-full_loads =
    { $full ->
        [one] 1 carga llena
       *[other] { $full } cargas llenas
    }
line-full_loads_and_last =
    { $full ->
        [one] 1 carga llena y una última de { $last }
       *[other] { $full } cargas llenas y una última de { $last }
    }
line-the_load = la carga: { $volume } de mezcla para { $area }
line-the_full_load = la carga llena: { $volume } de mezcla para { $area }
line-each_full_load = cada carga llena: { $volume } de mezcla para { $area }
line-last_load = la última carga: { $volume } de mezcla para { $area }
line-measured = { $measure } ({ $sum } según la cuenta)
line-too_little = { $amount }, muy poco para medirlo
line-mean = promedio { $mean } en { $time }
line-mean_spread = promedio { $mean } en { $time }, dispersión { $spread }
line-no_tip_runs = no echa ninguna boquilla
line-tip = boq.
line-off_the_mean = del promedio
line-most_likely = lo más probable
line-verdict = resultado
line-plugged = tapada
line-not_caught = sin recoger
why-makes_surer =
    { $tips ->
        [one] da más seguridad sobre 1 boquilla en unos { $minutes } min
       *[other] da más seguridad sobre { $tips } boquillas en unos { $minutes } min
    }
why-settles_open_tips =
    { $tips ->
        [one] { $open } de 1 boquilla en duda; es lo más que se aclara en unos { $minutes } min
       *[other] { $open } de { $tips } boquillas en duda; es lo más que se aclara en unos { $minutes } min
    }
pressure_doubtful-low = A { $pressure } casi ninguna boquilla forma un abanico completo. ¿Están bien los números y sus unidades?
pressure_doubtful-high = Casi ningún aguilón trabaja a { $pressure }. ¿Están bien los números y sus unidades?
working-flow_at_pressure = Flujo a una presión
formula-flow_rated_flow_pressure_rated_pressure_density_factor = flujo = flujo nominal × √(presión ÷ presión nominal) ÷ factor de densidad
figure-rated_flow = flujo nominal
figure-rated_pressure = presión nominal
figure-pressure = presión
figure-density_factor = factor de densidad
source-orifice_equation_density_factor_density_water_s_univ_of_nebr = ecuación del orificio; factor de densidad √(densidad ÷ la del agua), Univ. of Nebraska-Lincoln CropWatch, 2016

## Los flujos de un aguilón

line-boom_total = { $flow } en total, con { $gauge } en el manómetro
line-boom_pump = { $flow } en total por las boquillas; la bomba da { $pump } a { $gauge }
line-boom_bypass = regresa al tanque por el retorno: { $flow }
line-boom_agitation = a la agitación: { $flow }
line-boom_to_manifold = { $manifold } en el múltiple; en el camino se pierden { $lost }
line-boom_section = Sección { $number }: { $flow }, { $entry } donde la alimentación entra a la manguera
line-boom_flow = flujo
line-boom_pressure = presión
line-boom_shut = la válvula antigoteo no abre
line-boom_lost = lo que se pierde del múltiple a la boquilla { $tip }, la que menos recibe: { $parts }
line-boom_lost_feed = { $lost } en la alimentación con válvula y malla
line-boom_lost_hose = { $lost } en la manguera del aguilón
line-boom_lost_body = { $lost } en la bajada y el portaboquilla
line-boom_lost_check_valve = { $lost } en la válvula antigoteo
line-boom_lost_height = { $lost } por la altura
line-boom_gained_height = se ganan { $lost } de bajada
working-boom_flows = Presión en la boquilla que menos recibe
formula-pressure_at_a_tip_pressure_at_the_manifold_lost_in_feed_hose = presión en una boquilla = presión en el múltiple − lo que se pierde en alimentación, manguera, portaboquilla, válvula antigoteo y altura
figure-pressure_at_the_manifold = presión en el múltiple
figure-lost_in_the_feed = se pierde en la alimentación
figure-lost_in_the_hose = se pierde en la manguera
figure-lost_in_the_body = se pierde en el portaboquilla
figure-lost_on_the_check_valve = se pierde en la válvula antigoteo
figure-lost_to_height = se pierde por la altura

## The page of a visit

page-driven_by_with = maneja { $operator }, con { $with }
page-driven_by = maneja { $operator }
page-with = con { $with }
page-nothing_yet = Todavía no hay nada en esta visita.
page-nothing_yet_do = Escriba lo que se midió: el recorrido, los vasos, la separación. Cada parte dice algo por sí sola. `evenswath visit new` escribe un archivo con todos los campos y una palabra sobre cada uno.
page-sprayer_known = Se conoce la aspersora; todavía no se midió nada.
page-next_by_hand = Lo que sigue, en cualquier orden: tome el tiempo del recorrido en un tramo medido ([drive]) y recoja lo que sale ([catch]). Los dos juntos dicen cuánto echa.
page-next_with_boom = Lo que sigue, en cualquier orden: mida la separación ([spacing]), tome el tiempo del recorrido en un tramo medido ([drive]), recoja debajo de cada boquilla ([catch]). El recorrido y los vasos juntos dicen cuánto echa.
page-puts_out = Echa { $rate }
page-most_likely = lo más probable: { $range }
page-as_found =
    { $tips-count ->
        [one] tal como estaba, con la boquilla { $tips } tapada; unos { $rate } cuando eche como las demás
       *[other] tal como estaba, con las boquillas { $tips } tapadas; unos { $rate } cuando echen como las demás
    }
page-two_settings = sale de un recorrido y una captura con ajustes distintos
page-wanted = se quieren { $wanted }; echa { $off }: { $close } (el límite es { $limit })
page-just_that = justo eso
page-under = { $off } de menos
page-over = { $off } de más
page-close_enough = está bien
page-too_far_off = es demasiada diferencia
page-perhaps_close_enough = todavía no se sabe si eso está bien
page-nothing_comes =
    { $tips ->
        [one] No sale nada de la boquilla
       *[other] No sale nada de ninguna boquilla recogida
    }
page-drives = Avanza a { $speed }
page-needs_cups = para saber cuánto echa faltan los vasos
page-needs_drive = Los vasos están recogidos; para saber cuánto echa falta un recorrido con cronómetro.
page-gaps_within =
    { $gaps ->
        [one] El hueco está bien
       *[other] Los { $gaps } huecos están bien
    }
page-gaps_off =
    { $off ->
        [one] Uno de { $gaps } huecos está mal
       *[other] { $off } de { $gaps } huecos están mal
    }
page-gaps_open = Todavía no se sabe si todos los huecos están bien
page-full_tank = Un tanque lleno de { $volume } alcanza para { $area }
page-full_tank_range = Un tanque lleno de { $volume } alcanza para { $area } (lo más probable: { $range })
page-treated_acres = { $number } acres tratados
page-treated_hectares = { $number } hectáreas tratadas
page-in_it = lleva: { $amount } de { $product }
page-in_it_too_little = lleva: { $amount } de { $product }, muy poco para medirlo
page-job_ahead = el trabajo que sigue: { $loads }
page-last_with = { $volume } con { $products }
page-product = { $measure } de { $product }
page-product_too_little = muy poco de { $product } para medirlo
page-what_to_do = Qué hacer
page-the_cups = Los vasos
page-from_the_left = desde la izquierda según va sentado
page-tip = boq.
page-cup = vaso
page-signs = ^ de más   v de menos   x tapada   ? no se sabe con este vaso   - sin recoger
page-of_tips = boquillas { $tips }
page-mean = promedio { $mean }
page-mean_spread = promedio { $mean }, dispersión { $spread }
page-same_again = Para que salga igual otra vez
page-gear = marcha { $as }
page-engine = motor { $as }
page-pto = toma de fuerza (PTO) { $as }
page-boom_height = boquillas a { $as } sobre lo que se aplica
page-agitation = agitación { $as }
page-sections_on = secciones abiertas: { $as }
page-controller = controlador { $as }
page-tank = tanque { $as }
page-speed =
    { $runs ->
        [one] { $speed } ({ $time } en el tramo, 1 pasada)
       *[other] { $speed } ({ $time } en el tramo, { $runs } pasadas)
    }
page-catch_again = Recoja otra vez cuando cambien boquillas, velocidad, presión o producto, y la próxima primavera.
page-good_to_know = Es bueno saber
page-take_care = Tenga cuidado: la etiqueta es la ley. Para revisar, solo agua limpia; guantes y protección para los ojos; freno puesto, nadie cerca de la toma de fuerza; nunca una boquilla a la boca. Deciden las reglas locales y las personas con licencia.

## What is wrong with an input

not_positive = “{ $given }” debe ser más que cero
    .do = hace falta { $kind } mayor que cero: { $would_do }
no_runs = falta el tiempo de alguna pasada
    .do = dé --time "27.8 s" por cada pasada, o --there (ida) y --back (vuelta)
no_pressure = falta la presión
    .do = dé --pressure (presión) o --flow (flujo)
no_tip = falta la boquilla
    .do = dé --rated (flujo nominal) o --size (tamaño)
pressure_beyond-flow = “{ $given }” necesita { $takes } con esta boquilla; puede ser { $most } a lo sumo
    .do = revise el número y su unidad; 0.30 gal/min y 40 psi es lo usual en una boquilla
pressure_beyond-pressure = “{ $given }” es más de lo que tiene cualquier aspersora; puede ser { $most } a lo sumo
    .do = revise el número y su unidad; 0.30 gal/min y 40 psi es lo usual en una boquilla
boom_nothing_flows = ninguna boquilla de este aguilón trabaja: cada una está tapada o su válvula antigoteo no abre
    .do = dé su flujo al menos a una boquilla, como "0.30 gal/min @ 40 psi", y una presión que abra su válvula
boom_impossible = las mangueras, boquillas y alimentación de este aguilón no pueden ir juntas
    .do = revise largos, diámetros y flujos; uno está muy lejos de lo que tiene un aguilón
boom_no_rest = las presiones de este aguilón no llegaron a un equilibrio
    .do = mándenos el archivo, por favor; esto no debe pasar
hand_needs_flow = la dosis de una aspersora de mano necesita --flow (flujo) y --speed (velocidad)
    .do = o dé --used (lo gastado) y --area para una parcela
two_widths-width = --width (ancho) no se usa para esta clase de dosis
    .do = dé solo --row: las boquillas de un surco sirven el ancho entre surcos
two_widths-row = --row (surcos) no se usa para esta clase de dosis
    .do = para una banda agregue --kind band; para varias boquillas por surco, quite --width
used_over_what = --used (lo gastado) necesita el terreno donde se gastó
    .do = dé --area, o --distance (distancia) con --swath (ancho de trabajo)
missing_option = falta { $option }
    .do = vea con evenswath rate --help --lang es lo que va junto
order_count = la boquilla { $tip } está nombrada { $named } veces, pero se recogió { $caught } veces
    .do = nombre cada boquilla una vez por cada lectura suya, en el orden en que se recogieron, como 1,2,3,1
order_no_such_tip = no hay boquilla { $tip }; hay { $tips }
    .do = las boquillas se numeran desde la izquierda, desde 1
doubt_too_large = “{ $given }” es más de lo que aguanta una lectura
    .do = dé una incertidumbre típica menor que 50 %, como 1 %
step_of_scale = “{ $given }” no se puede leer con marcas de “{ $marks }”
    .do = dé de cuánto en cuánto marca la báscula, como 2 g
keep_doubtful-option = revise la lectura, su unidad y el tiempo; si está bien, agregue --keep-doubtful
keep_doubtful-field = revise la lectura, su unidad y el tiempo; si está bien, escriba doubtful = "keep" debajo de [catch]
not_json = esta línea no es JSON (detalle en inglés: { $detail })
    .do = escriba un objeto en cada línea
not_an_object = esta línea no es un objeto
    .do = escriba un objeto en cada línea
unknown_field = no hay ningún campo “{ $field }”
    .do = campos que sirven: { $known }
no_readings = readings: hace falta una lista de lecturas
    .do = escriba "readings": ["14 fl oz", null]
missing_field = falta { $field }
    .do = escriba "{ $field }": "{ $example }"
wrong_kind-risk = { $given } no sirve
    .do = hace falta un número, como 0.05
wrong_kind-reading_field = { $given } no sirve
    .do = una lectura tiene reading (lectura), time (tiempo) y step (marcas)
wrong_kind-reading = { $given } no sirve
    .do = escriba una lectura como "14 fl oz", o null donde no se recogió
wrong_kind-text = { $given } no sirve
    .do = escríbalo entre comillas con su unidad
wrong_kind-order = { $given } no sirve
    .do = escriba las boquillas en el orden en que se recogieron, como [1, 2, 3, 1]
more_mistakes = y { $more } más
cannot_read-missing = { $file } no se puede leer (detalle del sistema: { $detail })
    .do = no hay tal archivo; revise el nombre y la carpeta
cannot_read-forbidden = { $file } no se puede leer (detalle del sistema: { $detail })
    .do = usted no tiene permiso para leer este archivo
cannot_read-other = { $file } no se puede leer (detalle del sistema: { $detail })
    .do = ¿es un archivo que se puede leer?
cannot_read-first_line = la línea { $line } de { $file } no se puede leer (detalle del sistema: { $detail })
    .do = ¿es un archivo que se puede leer?
cannot_read-line = la línea { $line } de { $file } no se puede leer (detalle del sistema: { $detail })
    .do = las líneas de antes sí se contestaron
cannot_read-unwritten = la respuesta no se puede escribir (detalle del sistema: { $detail })
    .do = ¿hay lugar donde va?
schema = el esquema no es JSON (detalle en inglés: { $detail })
fault_of_ours = esto es una falla nuestra: { $what }
fault_of_ours_do = no se calculó nada; por favor avísenos con lo que escribió

## What was typed and cannot be read

mistyped-unknown_option = aquí no existe la opción { $option }
mistyped-no_value = a { $option } le falta un valor
mistyped-value = “{ $value }” no sirve para { $option }
mistyped-missing = falta: { $option }
mistyped-no_command = falta una orden
mistyped-unknown_command = no existe la orden “{ $command }”
mistyped-twice = { $option } se puede dar una sola vez
mistyped-not_together = { $option } no va junto con { $before }
mistyped-too_few = a { $option } le faltan valores
mistyped-takes_no_value = { $option } no lleva valor
mistyped-other = no se entiende lo que se escribió
mistyped-would_do = palabras que sirven: { $text }
mistyped-meant = quizá quiso decir: { $text }
mistyped-more = Para saber más, agregue --help.
mistyped_value-risk = hace falta más de 0 y menos de 0.5, como 0.05
mistyped_value-tips_per_row = hace falta un número entero de 1 a 1000
mistyped_value-fixed = hacen falta números de boquilla, como 1,12
mistyped_value-order = hacen falta números de boquilla, como 1,2,3,1

## The frame of help

frame-usage = Uso:
frame-options_heading = Opciones:
frame-commands_heading = Órdenes:
frame-arguments_heading = Argumentos:
frame-options = [OPCIONES]
frame-command_or_none = [ORDEN]
frame-command = <ORDEN>
frame-values = Valores que sirven:
frame-values_in_line = [valores que sirven:
frame-default = [si no se da:
frame-print_short = Mostrar la ayuda (resumen con '-h')
frame-print_long = Mostrar la ayuda (más con '--help')
frame-print_help = Mostrar la ayuda
frame-print_version = Mostrar la versión
frame-help_on_help = Mostrar esta ayuda o la de una orden

## What each command and option is

help-evenswath = Calibra una aspersora de aguilón: entran lecturas, sale cuánto echa, qué arreglar y qué va en el tanque
help-evenswath-after =
    Ejemplos:
      evenswath course --width "20 in" --lang es
      evenswath rate --catch "15 fl oz" --course "204 ft" --width "20 in" --lang es
      evenswath visit new --lang es > mi-visita.toml
      evenswath visit check mi-visita.toml --lang es

    Las cantidades llevan su unidad: "20 in", "50.8 cm", "16 ft 8 in", "0.30 gal/min @ 40 psi", "14 fl oz",
    "1:05". gal, qt, pt y fl oz son de EE. UU.; las imperiales son "imp gal". El decimal se escribe con punto.

    Estado de salida: 0 calculado, 1 con --strict cuando algo queda fuera, 2 lo escrito está mal,
    3 algo no se pudo leer o guardar, 70 una falla nuestra.

    La etiqueta es la ley. Donde esto y la etiqueta o una regla local no digan lo mismo, deciden ellas.
help-evenswath-json = Escribir un objeto JSON (uno por línea con --batch) y nada más en la salida estándar
help-for_every_command = Para todas las órdenes
help-evenswath-units = Unidades de la respuesta; lo que se escribe puede ir en cualquier unidad y debe llevarla
help-evenswath-units-us = gal/ac, mph, psi
help-evenswath-units-metric = L/ha, km/h, bar
value-UNITS = UNIDADES
help-evenswath-lang = Idioma de las palabras; nombres, códigos y claves de JSON son iguales en todos
help-evenswath-lang-en = inglés
help-evenswath-lang-es = español
value-LANG = IDIOMA
help-evenswath-numbers = Cómo se escriben los decimales para la gente; lo que se teclea, y JSON, lleva punto
help-evenswath-numbers-point = 14.6
help-evenswath-numbers-comma = 14,6
value-NUMBERS = DECIMALES
help-evenswath-paper = Papel de las hojas para imprimir
help-evenswath-paper-letter = 8.5 por 11 pulgadas (carta)
help-evenswath-paper-a4 = 210 por 297 mm
value-PAPER = PAPEL
help-evenswath-strict = Salir con estado 1 cuando algo queda fuera
help-evenswath-why = Mostrar cómo se calculó cada número: la fórmula, las cifras que entran, la fuente
help-course = El tramo que hay que recorrer para que un vaso muestre la dosis
help-course-after =
    Ejemplos:
      evenswath course --width "20 in"                    204 ft: fl oz de una boquilla = gal/ac
      evenswath course --width "50 cm" --units metric     100 m: mL de una boquilla / 5 = L/ha
      evenswath course --width "30 ft" --boomless         para lo que sale de un grupo entero
help-course-width = Ancho que representa una captura: separación de boquillas o de surcos, banda, o todo el ancho de trabajo
value-LENGTH = LONGITUD
help-course-boomless = Una boquilla o un grupo sin aguilón, recogido entero sobre su ancho de trabajo
help-course-speed = Velocidad a la que se va a ir, para ver cuánto se tarda en el tramo
value-SPEED = VELOCIDAD
help-speed = La velocidad, con el tiempo de pasadas por un tramo medido
help-speed-after =
    Ejemplos:
      evenswath speed --distance "204 ft" --time "27.8 s" --time "28.3 s" --dash "5.2 mph"
      evenswath speed --distance "204 ft" --there "27.8 s" --back "28.9 s"
help-speed-distance = Largo del tramo medido
help-speed-time = Tiempo de una pasada; dé uno por cada pasada
value-TIME = TIEMPO
help-speed-there = Tiempo de una pasada de ida
help-speed-back = Tiempo de una pasada de vuelta
help-speed-dash = Lo que marcó el tablero
help-speed-timer = Con qué precisión se arranca el cronómetro, y se para otra vez
help-rate = La dosis de agua, con lo que se midió
help-rate-after =
    Ejemplos:
      evenswath rate --flow "0.30 gal/min" --speed "5 mph" --width "20 in"
      evenswath rate --flow "0.30 gal/min +- 2 %" --speed "5 mph +- 0.1 mph" --width "20 in"
      evenswath rate --catch "15 fl oz" --course "204 ft" --width "20 in"
      evenswath rate --used "6.5 gal" --distance "660 ft" --swath "21 ft 8 in"
      evenswath rate --used "200 gal" --area "13.5 ac"
      evenswath rate --flow "0.9 gal/min" --speed "4 mph" --row "30 in" --tips-per-row 3
      evenswath rate --kind band --flow "0.30 gal/min" --speed "5 mph" --width "10 in" --row "30 in"
help-rate-flow = Flujo de una boquilla, de las boquillas de un surco, de un grupo o de todo el aguilón
value-FLOW = FLUJO
help-rate-speed = Velocidad sobre el terreno
help-rate-width = Ancho que representa el flujo o la captura
help-rate-kind = Qué es ese ancho
help-rate-kind-broadcast = El flujo de una boquilla sobre la separación, o el de todo el aguilón sobre su ancho de trabajo
help-rate-kind-band = El flujo de una boquilla sobre el ancho de su banda
help-rate-kind-directed = Varias boquillas por surco: el flujo del surco sobre la separación entre surcos
help-rate-kind-boomless = El flujo de todo el grupo sobre su ancho de trabajo
help-rate-kind-hand = Una lanza de mano o mochila: su flujo sobre el ancho que se moja al caminar
value-KIND = CLASE
help-rate-row = Separación entre surcos, para boquillas dirigidas
help-rate-tips_per_row = Boquillas dirigidas a un surco, cuando el flujo es el de una
value-COUNT = CUÁNTAS
help-rate-catch = Lo que echó una boquilla mientras se recorría el tramo
value-VOLUME = VOLUMEN
help-rate-course = Largo del tramo
help-rate-used = Lo que hizo falta para rellenar
help-rate-distance = Distancia en la que se gastó
help-rate-swath = Ancho de trabajo: boquillas por separación, no el largo del aguilón
help-rate-area = Área en la que se gastó
value-AREA = ÁREA
help-flow = El flujo de una boquilla a una presión, con agua o con un líquido más pesado
help-flow-after =
    Ejemplos:
      evenswath flow --size 03 --pressure "30 psi"
      evenswath flow --rated "0.30 gal/min @ 40 psi" --pressure "30 psi" --density "10.65 lb/gal"
      evenswath flow --size 03 --flow "0.26 gal/min"       la presión que da un flujo
help-flow-rated = Flujo nominal de agua a una presión
value-FLOW_PRESSURE = FLUJO @ PRESIÓN
help-flow-size = Tamaño ISO 10625 impreso en la boquilla
value-SIZE = TAMAÑO
help-flow-pressure = Presión en la boquilla
value-PRESSURE = PRESIÓN
help-flow-flow = Un flujo del líquido, para saber qué presión lo da
help-flow-density = Densidad del líquido, si no es agua
value-DENSITY = DENSIDAD
help-spacing = Si las boquillas están parejas, y las menos que hay que mover
help-spacing-after =
    Ejemplos:
      evenswath spacing --intended "20 in" --marks "0 in" "20 in" "41.5 in" "60 in" "80 in"
      evenswath spacing --intended "20 in" "20 in" "21.5 in" "18.5 in"
    Las marcas de una sola cinta estirada son mejores que los huecos: sus errores no se suman.
help-spacing-intended = Qué separación deben tener las boquillas
help-spacing-gaps = Huecos entre boquillas vecinas, desde la izquierda según va sentado el operador
value-GAP = HUECO
help-spacing-marks = Lo que marca una cinta estirada en cada boquilla, desde la izquierda
value-MARK = MARCA
help-spacing-step = Cada cuánto tiene marcas la cinta
help-spacing-limit = Cuánto puede variar un hueco
value-PERCENT = PORCENTAJE
help-spacing-fixed = Boquillas que no se pueden mover, como 1,12
value-TIPS = BOQUILLAS
help-catch = Prueba de captura: qué tan parejo echan las boquillas, y cuáles arreglar
help-catch-after =
    Ejemplos:
      evenswath catch --time "30 s" --step "1 fl oz" 14 14.5 15 13 14.5 - 17
      evenswath catch --time "30 s" --step "10 mL" --limit mean-5 \
          --rated "0.30 gal/min @ 40 psi" --pressure "30 psi" 490 500 480
      evenswath catch --batch lecturas.jsonl --json
    Las lecturas van desde la izquierda según va sentado el operador: 14+14.5 donde se recogió otra vez,
    - donde no se recogió. Una línea de un archivo de pruebas:
    { "  {" }"time": "30 s", "step": "1 fl oz", "limit": "10 %", "readings": ["14 fl oz", null]{ "}" }
help-catch-readings = Lecturas, una por boquilla desde la izquierda; un número solo toma la unidad de --step
value-READING = LECTURA
help-catch-time = Cuánto tiempo se sostuvo cada vaso
help-catch-step = Cada cuánto tiene marcas el vaso
help-catch-limit = Cuánto puede variar una boquilla: un porcentaje del promedio, o un límite con nombre (mean-5, mean-10, new-10, new-over-10, inspection-10-15); 10 % si no se da
value-LIMIT = LÍMITE
help-catch-rated = Flujo de una boquilla nueva a una presión, para comparar cada boquilla
help-catch-pressure = Presión en las boquillas, si no es la nominal
help-catch-cup_holds = Cuánto le cabe al vaso
help-catch-timer = Con qué precisión se arranca el cronómetro, y se para otra vez (incertidumbre típica); 0.2 s si no se da
help-catch-cup_scale = Qué tan bien se conoce la escala del vaso (incertidumbre típica); 1 % si no se da
help-catch-watch = Qué tan bien anda el cronómetro (incertidumbre típica); 0.1 % si no se da
help-catch-handling = Qué tan bien se maneja un vaso: espuma, inclinado, mojado (incertidumbre típica); 0.5 % si no se da
help-catch-risk = Riesgo que se acepta de un resultado equivocado; 0.05 si no se da
value-RISK = RIESGO
help-catch-order = Boquillas en el orden en que se recogieron, como 1,2,3,1 si la 1 se recogió otra vez al final; muestra si algo va cambiando
help-catch-density = Densidad del líquido si los vasos se pesaron; agua si no se da
help-catch-keep_doubtful = Dejar lecturas que no pueden ser, con una palabra sobre cada una
help-catch-batch = Un archivo con líneas de JSON, una prueba de captura en cada una; - para la entrada estándar
value-FILE = ARCHIVO
help-load = Cargas y producto para un área
help-load-after =
    Ejemplos:
      evenswath load --area "25 ac" --rate "20 gal/ac" --tank "500 gal" --product "Producto A: 3 pt/ac"
      evenswath load --area "40 ac" --rate "14.6 gal/ac" --tank "200 gal" \
          --product "Producto A: 2 pt/ac" --product "Coadyuvante: 0.25 % v/v"
    Use la dosis que se le midió a la aspersora: mezcle para lo que echa de verdad.
help-load-area = Área que se va a tratar
help-load-rate = Dosis de agua
value-RATE = DOSIS
help-load-tank = Cuánto le cabe al tanque
help-load-product = NOMBRE: DOSIS, como "Producto A: 3 pt/ac", "2 pt/100 gal", "0.25 % v/v", "1.5 lb ai/ac at 4 lb ai/gal"
value-NAME_RATE = NOMBRE: DOSIS
help-boom = Presión y flujo en cada boquilla, según mangueras, válvulas y portaboquillas
help-boom-after =
    Ejemplos:
      evenswath boom my-boom.toml
      evenswath boom my-boom.toml --json --units metric
help-boom-file = El archivo de las mangueras, portaboquillas y boquillas del aguilón; - para la entrada estándar
help-visit = Una visita completa, de un archivo
help-visit-after =
    Ejemplos:
      evenswath visit new --lang es > mi-visita.toml
      evenswath visit check mi-visita.toml --lang es
help-visit_check = Calcular todo lo que permiten las lecturas del archivo
help-visit_check-after =
    Ejemplos:
      evenswath visit check mi-visita.toml --lang es
      evenswath visit check mi-visita.toml --json --units metric
      evenswath visit check mi-visita.toml --sheet mi-visita.html
help-visit_check-file = El archivo de la visita; - para la entrada estándar
help-visit_new = Escribir un archivo de visita para llenar, con explicaciones
help-visit_new-after =
    Ejemplo:
      evenswath visit new --lang es > mi-visita.toml
help-visit_schema = Escribir el JSON Schema del archivo de visita
help-visit_schema-after =
    Ejemplo:
      evenswath visit schema > visit.schema.json
help-completions = Escribir lo que un intérprete de órdenes (shell) necesita para completar
help-completions-after =
    Ejemplo:
      evenswath completions bash > evenswath.bash
help-completions-shell = El intérprete de órdenes (shell)
value-SHELL = SHELL

## Señas

line-symptoms = Lo que se ve
line-symptoms_how = Dé las palabras de lo que se ve, como en `evenswath symptom needle_jumps foam`. Con --json, toda la tabla: causas, revisiones y de dónde sale cada renglón.
line-symptoms_seen = Se ve: { $seen }.
line-symptom_cause = { $cause }: { $how } ({ $chance })
line-symptom_next = Revise ahora ({ $minutes } min)
line-symptom_answer = Conteste agregando `--yes { $check }` o `--no { $check }`; `--skip { $check }` la deja fuera.
line-symptom_remedy = Qué lo arregla
line-symptom_stop = Hasta aquí
symptom_word = "{ $given }" no es una de las palabras de aquí
    .do = palabras que sirven: { $words }
help-symptom = Lo que se ve fuera de lo medido: qué lo causa, y la revisión que sigue
help-symptom-after =
    Ejemplos:
      evenswath symptom                                        lo que puede verse, con sus palabras
      evenswath symptom needle_jumps foam --drive shaft        causas, primero la más probable, y la revisión que sigue
      evenswath symptom needle_jumps foam --drive shaft --no tank_low --yes milky_water
      evenswath symptom --json                                 toda la tabla como datos
help-symptom-seen = Lo que se ve, por su palabra; sin ninguna, las enlista
value-SYMPTOM = SEÑA
help-symptom-absent = Una seña que se buscó y no está; una vez por cada una
help-symptom-drive = Qué mueve la bomba: shaft (toma de fuerza, motor, banda) o 12_volt
value-DRIVE = MANDO
help-symptom-control = Qué sostiene la presión: by_hand (un regulador) o controller (controlador)
value-CONTROL = CONTROL
help-symptom-air_chamber = Si la bomba tiene cámara de aire: yes (sí) o no
value-YES_NO = SÍ_NO
help-symptom-pressure = La presión con que se aplica, que decide cuánto puede moverse la aguja
help-symptom-yes = Una revisión cuya pregunta se contesta con sí; una vez por cada una
value-CHECK = REVISIÓN
help-symptom-no = Una revisión cuya pregunta se contesta con no
help-symptom-skip = Una revisión que no se quiere
