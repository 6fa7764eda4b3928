### Una visita completa: la revisión, el ajuste, lo hecho después, lo que echa un aguilón con boquillas tapadas, el archivo.

## The look: what is looked at, as a statement to tick

look-tips_alike = todas las boquillas iguales
look-all_spraying = todas las boquillas echan
look-fans_straight = abanicos derechos y sin chocar entre sí
look-no_leaks = sin fugas
look-no_drip_after_5_s = sin goteo a los cinco segundos de cerrar
look-gauge_back_to_zero = el manómetro vuelve a cero
look-strainers_clean = mallas puestas y limpias
look-boom_level = aguilón nivelado y a su altura

look_tips_differ = Las boquillas no son todas del mismo tipo, tamaño y ángulo.
    .do = Ponga un solo tipo, tamaño y ángulo en todo el aguilón antes de recoger; las que deben ser distintas van en un grupo aparte.
look_not_all_spraying = No todas las boquillas echan.
    .do = Quite la presión. Limpie esa boquilla y su malla con cepillo suave o aire, nunca con la boca; revise su válvula.
look_fans_crooked = Hay abanicos torcidos, rayados o que chocan entre sí.
    .do = Ponga derechas las boquillas en sus portaboquillas, giradas unos grados respecto al aguilón; limpie o cambie las que echan rayado.
look_leaks = Hay fugas.
    .do = Quite la presión y luego apriete o cambie la pieza antes de poner producto en el tanque.
look_drips = Hay boquillas que todavía gotean cinco segundos después de cerrar.
    .do = Limpie o cambie las válvulas antigoteo de esos portaboquillas.
look_gauge_off_zero = El manómetro no vuelve a cero.
    .do = Cambie el manómetro; las presiones leídas en él son dudosas.
look_strainers = Faltan mallas o están sucias.
    .do = Cierre la válvula del tanque y quite la presión; después abra, limpie o cambie las mallas. Use guantes y protección para los ojos.
look_boom_not_level = El aguilón no está nivelado o no está a su altura.
    .do = Nivélelo a la altura que piden las boquillas; que nadie esté donde se pliega el aguilón.

## The part of the visit an action belongs to

place-look = revisión
place-symptoms = señas
place-controller = controlador
place-spacing = separación
place-tips = boquillas
place-pattern = reparto a lo ancho del aguilón
place-drive = recorrido
place-setting = ajuste
place-rate = dosis de agua
place-change = cambio
place-tank = tanque
place-cost = costo
place-these_tips =
    { $tips-count ->
        [one] boquilla { $tips }
       *[other] boquillas { $tips }
    }

## The setting

# Where the pressure is read.
read_at-pump = en la bomba
read_at-manifold = en el múltiple
read_at-boom = en el aguilón
read_at-tip = en la boquilla
read_at-cab = en la cabina

# The few usual answers; where several things may be on, $of-code says which: agitation or controller.
setting-on =
    { $of-code ->
        [controller] encendido
       *[agitation] encendida
    }
setting-off =
    { $of-code ->
        [controller] apagado
       *[agitation] apagada
    }
setting-all = todas
setting-none = ninguna
setting-manual = manual
setting-in_manual = en manual
setting-auto = automático
setting-automatic = automático
setting-in_automatic = en automático
setting-full = lleno
setting-half_full = medio lleno
setting-a_quarter_full = a un cuarto
setting-empty = vacío

word-agitation_on = encendida
word-agitation_off = apagada
word-sections_on_all = todas
word-sections_on_none = ninguna
word-controller_on = encendido
word-controller_off = apagado
word-controller_manual = manual
word-controller_in_manual = en manual
word-controller_auto = automático
word-controller_automatic = automático
word-controller_in_automatic = en automático
word-water_full = lleno
word-water_half_full = medio lleno
word-water_quarter_full = a un cuarto
word-water_empty = vacío

settings_differ = El recorrido y la captura se hicieron con ajustes distintos: { $differences }.
    .do = Repita uno de los dos con el ajuste del otro.
phrase-pressure_differs = presión: { $drive } en el recorrido y { $catch } en la captura
phrase-engine_speed_differs = velocidad del motor: { $drive } en el recorrido y { $catch } en la captura
phrase-pto_speed_differs = velocidad de la toma de fuerza (PTO): { $drive } en el recorrido y { $catch } en la captura
phrase-agitation_differs = agitación: { $drive } en el recorrido y { $catch } en la captura
phrase-sections_on_differ = secciones abiertas: { $drive } en el recorrido y { $catch } en la captura

catch_in_automatic = El controlador estaba “{ $controller }” en la captura. Parado y en automático no mantiene ninguna dosis, así que los vasos quizá no digan nada.
    .do = Póngalo en manual a la presión del trabajo y recoja otra vez.

## Tips that were caught again

# What was done before a round of cups.
word-round_as_found = tal como estaba
word-round_after_cleaning = después de limpiar
word-round_new_tips = boquillas nuevas
word-round_pressure_changed = con otra presión
word-round_swapped = con boquillas intercambiadas

tip_still_off = Boquilla { $tip }, { $after }: { $now } en { $time }, todavía { $off } respecto al promedio de { $mean }. Antes echaba { $old }.
    .do = Cámbiela por una nueva del mismo tipo y tamaño, y recójala otra vez.
tip_caught_again = Boquilla { $tip }, { $after }: { $now } en { $time }. Antes echaba { $old }; el promedio era { $mean }.
tip_high-since = Cuando se recogió todo el aguilón, la boquilla { $tip } echaba { $off } más que el promedio de las boquillas (de { $low } a { $high } más).
tip_low-since = Cuando se recogió todo el aguilón, la boquilla { $tip } echaba { $off } menos que el promedio de las boquillas (de { $low } a { $high } menos).
tips_plugged-since =
    { $tips-count ->
        [one] Tapada cuando se recogió todo el aguilón y recogida otra vez después: { $tips }.
       *[other] Tapadas cuando se recogió todo el aguilón y recogidas otra vez después: { $tips }.
    }
tips_worn-since =
    { $tips-count ->
        [one] Gastada cuando se recogió todo el aguilón y recogida otra vez después: { $tips }.
       *[other] Gastadas cuando se recogió todo el aguilón y recogidas otra vez después: { $tips }.
    }
tips_cannot_tell-since =
    { $tips-count ->
        [one] En duda cuando se recogió todo el aguilón y recogida otra vez después: { $tips }.
       *[other] En duda cuando se recogió todo el aguilón y recogidas otra vez después: { $tips }.
    }

weighed_as_water = Los vasos pesados se toman como agua limpia. Si tenían otra cosa, dé weighed_density (la densidad).
spacing_other_count = La separación se midió para { $measured } boquillas, pero el aguilón tiene { $boom }.

## What the boom puts out

rate_with_plugged =
    { $tips-count ->
        [one] La dosis es tal como estaba, con la boquilla { $tips } tapada. Cuando eche como las demás, será de unos { $cleaned }.
       *[other] La dosis es tal como estaba, con las boquillas { $tips } tapadas. Cuando echen como las demás, será de unos { $cleaned }.
    }
rate_with_uncaught =
    { $tips-count ->
        [one] Para la dosis se supone que la boquilla { $tips } echa lo mismo que las demás.
       *[other] Para la dosis se supone que las boquillas no recogidas echan lo mismo que las demás.
    }
tank_with_plugged =
    { $tips-count ->
        [one] Lo que rinde y lo que lleva un tanque se calculó con la boquilla { $tips } tapada.
       *[other] Lo que rinde y lo que lleva un tanque se calculó con las boquillas { $tips } tapadas.
    }
    .do = Primero limpie; después recoja otra vez antes de preparar la mezcla.
rate_methods_disagree = La captura dice { $catch } y el relleno { $refill }; no coinciden.
    .do = Revise la velocidad, el ancho de trabajo y los galones con que rellenó; uno de ellos está mal. Recorra y rellene otra vez.
rate_on_bands = Esta es la dosis en las bandas, que son { $share } del terreno; en todo el campo es { $crop }. Los acres de un tanque son acres tratados.
rate_of_two_settings = Esta dosis junta un recorrido y una captura que se hicieron con ajustes distintos.
rate_before_repair = La dosis sale de la ronda “{ $round }”; después se recogieron otra vez algunas boquillas.
    .do = Recoja otra vez todo el aguilón para saber cuánto echa ahora.
rate_of_carrier = Con agua echa { $water }; de este líquido, { $density }, echará { $rate }.
product_mixed_for_other_rate = El tanque está preparado para { $mixed_for }, así que { $name } se echa a { $rate }; se quería { $meant }.

## What is told of the wanted rate and the label, with other things to do: tips are plugged, or the rate is from a refill

rate_outside-plugged = { rate_outside }
    .do = No prepare la mezcla para un aguilón con boquillas tapadas: límpielas primero y recoja otra vez.
rate_cannot_tell-plugged = { rate_cannot_tell }
    .do = No prepare la mezcla para un aguilón con boquillas tapadas: límpielas primero y recoja otra vez.
product_under_least-plugged = { product_under_least }
    .do = No prepare la mezcla para un aguilón con boquillas tapadas: límpielas primero y recoja otra vez.
product_may_be_under_least-plugged = { product_may_be_under_least }
    .do = No prepare la mezcla para un aguilón con boquillas tapadas: límpielas primero y recoja otra vez.
product_may_be_over_label-plugged = { product_may_be_over_label-by_ground }
    .do = No prepare la mezcla para un aguilón con boquillas tapadas: límpielas primero y recoja otra vez.
carrier_under_label-plugged = { carrier_under_label }
    .do = No prepare la mezcla para un aguilón con boquillas tapadas: límpielas primero y recoja otra vez.
carrier_may_be_under_label-plugged = { carrier_may_be_under_label }
    .do = No prepare la mezcla para un aguilón con boquillas tapadas: límpielas primero y recoja otra vez.

rate_cannot_tell-refilled = { rate_cannot_tell }
    .do = Prepare el tanque para { $rate }; gaste más antes de rellenar otra vez para saberlo mejor.
product_may_be_over_label-refilled = { product_may_be_over_label-by_ground }
    .do = Para estar seguro, calcule la carga para { $mix_for }; o gaste más antes de rellenar otra vez para saberlo mejor.
product_may_be_over_label-refilled_weaker = { product_may_be_over_label-by_ground }
    .do = Para estar seguro, hágala un poco más débil; o gaste más antes de rellenar otra vez para saberlo mejor.
product_may_be_under_least-refilled = { product_may_be_under_least }
    .do = Prepare el tanque para la dosis que realmente echa la aspersora; gaste más antes de rellenar otra vez para saberlo mejor.
carrier_may_be_under_label-refilled = { carrier_may_be_under_label }
    .do = Gaste más antes de rellenar otra vez para saber mejor la dosis, o eche un poco más.

## Facts that are needed and not there

catch_as_driven_without_drive = “as driven” (lo que dura el recorrido) necesita un recorrido con cronómetro
    .do = dé [drive] con sus pasadas (runs), o el tiempo de la captura (time)
catch_no_such_tip = no hay boquilla { $tip }; el aguilón tiene { $tips }
    .do = dé una lectura por cada boquilla del aguilón, "-" donde no se recogió
refill_without_swath = no se conoce el ancho de trabajo
    .do = dé [sprayer] con tips (boquillas) y spacing (separación), o el área en lugar de la distancia
spacing_without_boom = no se conoce la separación prevista
    .do = dé [sprayer] con tips (boquillas) y spacing (separación)

## Mistakes in a visit's file. Names of parts and fields are those of the file, in every language.

file_place = línea { $line }, columna { $column }
file_too_large = el archivo tiene más de { $largest } bytes, más de lo que necesita una visita
    .do = ¿es este el archivo correcto? `evenswath visit new` escribe uno para llenar
file_not_text = el archivo no es texto UTF-8
    .do = guárdelo como texto sin formato en UTF-8; un archivo de hoja de cálculo o de procesador de textos no sirve
file_not_toml = esto no se puede leer como TOML (detalle en inglés: { $detail })
    .do = una línea es nombre = "valor"; ponga las cantidades entre comillas, como spacing = "20 in"
file_not_toml-twice = este nombre está dos veces
    .do = escriba cada campo y cada [parte] una sola vez; las rondas y los productos empiezan con [[ ]]
file_unknown_field-part = no hay ninguna parte con este nombre
    .do = partes que sirven: { $known }
file_unknown_field-field = no hay ningún campo con este nombre
    .do = campos que sirven: { $known }
file_unknown_field-run = una pasada no tiene “{ $name }”
    .do = una pasada tiene time (tiempo) y way (sentido)
file_unknown_field-reading = una lectura no tiene “{ $name }”
    .do = tiene { $known }
file_wrong_kind-part = aquí va una parte propia, pero hay { $found }
    .do = empiécela con una línea { $header }
file_wrong_kind-parts = aquí va una lista de partes, pero hay { $found }
    .do = empiece cada una con una línea { $header }
file_wrong_kind-text = aquí va un texto entre comillas, pero hay { $found }
    .do = escríbalo como { $name } = "valor"
file_wrong_kind-list = aquí va una lista, pero hay { $found }
    .do = escríbala como { $name } = ["primero", "segundo"]
file_wrong_kind-run = cada pasada necesita un tiempo, pero aquí hay { $found }
    .do = escríbala como { "{" } time = "27.8 s", way = "there" { "}" }
file_wrong_kind-reading = aquí va una lectura, pero hay { $found }
    .do = escríbala como { "{" } reading = "30 fl oz", time = "60 s" { "}" }
word-found_text = un texto
word-found_number = un número
word-found_true_or_false = un true o false
word-found_day = un día o una hora
word-found_list = una lista
word-found_fields = un { "{" } { "}" } con campos propios
file_not_a_day = “{ $given }” no es un día
    .do = escríbalo como 2027-04-14 (año-mes-día)
file_not_positive = “{ $given }” debe ser más que cero
    .do = hace falta { $kind } mayor que cero
word-dimension_length = una longitud
word-dimension_area = un área
word-dimension_volume = un volumen
word-dimension_mass = un peso
word-dimension_time = un tiempo
word-dimension_speed = una velocidad
word-dimension_flow = un flujo
word-dimension_pressure = una presión
word-dimension_density = una densidad
word-dimension_volume_per_area = un volumen por área
word-dimension_mass_per_area = un peso por área
word-dimension_work_rate = un área por tiempo
word-dimension_angle = un ángulo
word-dimension_ratio = una proporción
file_not_a_count = “{ $given }” no es una cantidad de piezas
    .do = escriba un número entero desde 1
file_share = “{ $given }” debe ser más de 0 % y a lo sumo 100 %
    .do = escríbalo como "5 %"
file_word = “{ $given }” no es una de las palabras que van aquí
    .do = palabras que sirven: { $words }
file_word-way = esto no es un sentido de la pasada
    .do = escriba "there" (ida) o "back" (vuelta)
file_missing_field = falta este campo
    .do = { $wanted }
file_value-empty = está vacío
    .do = { $wanted }
phrase-wanted_round = las lecturas, debajo de una línea [[catch.round]]
phrase-wanted_closed_section = cuál sección, como section = 1
phrase-wanted_pressure_before = la presión con todas las secciones abiertas, como before = "40 psi"
phrase-wanted_pressure_closed = la presión con esa sección cerrada, como closed = "42 psi"
phrase-wanted_catch_time = cuánto tiempo se sostuvo cada vaso, como time = "30 s", o time = "as driven" (lo que dura el recorrido)
phrase-wanted_tip_pressure = en cuál boquilla y lo que se leyó ahí: tip = 5 y pressure = "38 psi"
phrase-wanted_readings = una lectura por cada boquilla, como readings = [14.5, 14, "-"]
phrase-wanted_marks = lo que marca la cinta en cada boquilla, como marks = ["0 in", "20 in"]
phrase-wanted_gaps = cada hueco entre boquillas, como gaps = ["20 in", "20 1/4 in"]
phrase-wanted_course = el tramo medido, como course = "204 ft"
phrase-wanted_runs = el tiempo de cada pasada, como runs = ["27.8 s", "28.3 s"]
phrase-wanted_used = lo que hizo falta para rellenar, como used = "6.5 gal"
phrase-wanted_used_over = en qué distancia o área, como distance = "660 ft" o area = "13.5 ac"
phrase-wanted_spacing = la separación entre boquillas, como spacing = "20 in"
phrase-wanted_row_spacing = la separación entre surcos, como row_spacing = "30 in"
phrase-wanted_tips = cuántas boquillas hay, como tips = 12, o sections = [4, 4, 4]
phrase-wanted_sections = cuántas boquillas tiene cada sección, como sections = [4, 4, 4]
phrase-wanted_band_width = el ancho de una banda, como band_width = "12 in"
phrase-wanted_tips_per_row = cuántas boquillas apuntan a un surco, como tips_per_row = 3
phrase-wanted_overlap = la parte del ancho mojado que cubre otra vez la pasada siguiente, como overlap = "15 %"
phrase-wanted_effective_swath = el ancho de una pasada a la siguiente, como effective_swath = "30 ft"; es menos que lo que se moja
phrase-wanted_target_rate = la dosis de agua que se quiere, como rate = "15 gal/ac"
phrase-wanted_product_name = cómo se llama, como name = "Producto A"
phrase-wanted_product_rate = su dosis, como rate = "2 pt/ac"
file_value-marks_and_gaps = se dieron marks y gaps a la vez
    .do = dé las marcas de una cinta estirada (marks) o los huecos (gaps)
file_value-distance_and_area = se dieron distance y area a la vez
    .do = dé solo uno de los dos
file_value-tip_size_and_rated = se dieron tip_size y rated a la vez
    .do = dé solo uno de los dos
file_value-tips_and_sections = { $tips } boquillas, pero las secciones suman { $total }
    .do = dé tips (boquillas) o sections (secciones), o haga que coincidan
file_value-too_many_rounds = { $rounds } rondas son más de las que caben en un día
    .do = a lo sumo { $most } rondas; una visita es una aspersora en un día
file_value-no_readings = no hay lecturas
    .do = dé una lectura por cada boquilla, "-" donde no se recogió
file_value-tips_and_readings = boquillas nombradas: { $named }; lecturas dadas: { $given }
    .do = dé una lectura por cada boquilla nombrada
file_value-swapped_tips = un intercambio tiene dos boquillas
    .do = ponga las dos boquillas que cambiaron de lugar: [7, 8]; una ronda por cada intercambio
file_value-tip_twice = la boquilla { $tip } está nombrada dos veces
    .do = nombre cada boquilla una sola vez; dé sus lecturas en una lista
file_other_kind = esto es de { $theirs }; { $this }
    .do = quítelo, o escriba kind = "{ $kind }"
phrase-of_kind = kind (tipo) { $kind }
phrase-of_kinds = kind (tipo) { $before } y { $last }
phrase-this_kind = esta aspersora es kind = "{ $kind }"
phrase-no_kind = sin kind (tipo), una aspersora es de aguilón

## Errores en el archivo de un aguilón

file_viscosity = "{ $given }" no es una viscosidad cinemática para la que valgan estas cuentas
    .do = escriba, por ejemplo, "1.3 cSt"; sirve de 0.1 a 100 cSt, y el agua tiene cerca de 1
file_minor_loss = "{ $given }" no es un coeficiente de pérdida K
    .do = escriba un número sin unidad, de 0 en adelante, como { $name } = 2
file_value-too_many_tips = { $tips } boquillas son más de las que tiene un aguilón
    .do = { $most } boquillas como máximo
file_value-bore = "{ $given }" no es el diámetro de una manguera
    .do = dé su diámetro interior, de 1 mm a 300 mm
file_value-height = ninguna parte de un aguilón está "{ $given }" arriba o abajo de su manómetro
    .do = diga cuánto más alta está, como "0.5 m", o más baja, como "-0.5 m"
file_value-supply_twice = el aguilón se alimenta de varias maneras: { $ways }
    .do = deje una sola
file_value-pump_rises = la presión de la bomba no baja cuando da más
    .do = la presión de curve_point debe quedar abajo de pressure_at_no_flow
file_value-pressure = ninguna aspersora llega a "{ $given }"
    .do = se acepta hasta 1000 psi (cerca de 69 bar)
file_value-fed_twice = están los dos: enters_between y feeds_at
    .do = deje uno solo
file_value-enters_between = la alimentación no puede entrar ahí: la última boquilla de la sección es la { $tips }
    .do = dé dos boquillas vecinas, como enters_between = [3, 4], o feeds_at = 1
file_value-feeds_at = no hay boquilla { $tip } en esta sección de { $tips }
    .do = dé una de sus boquillas, contada desde la izquierda de la sección
file_value-heights_twice = están los dos: { $first } y { $second }
    .do = deje uno solo
file_value-heights_and_tips = no hay tantas alturas ({ $heights }) como boquillas ({ $tips })
    .do = dé una altura por boquilla, o left_height y right_height
phrase-wanted_supply_part = lo que alimenta el aguilón, bajo una línea [supply]
phrase-wanted_section_part = las secciones del aguilón, cada una bajo una línea [[section]]
phrase-wanted_supply = lo que mantiene el flujo, como gauge_pressure = "40 psi", total_flow = "6 gal/min", o una parte [supply.pump]
phrase-wanted_hose_bore = el diámetro interior de la manguera, como hose_bore = "1 in"
phrase-wanted_at_no_flow = la presión de la bomba cuando nada sale, como pressure_at_no_flow = "100 psi"
phrase-wanted_curve_point = otro punto de la curva de la bomba, como curve_point = "15 gal/min @ 60 psi"
phrase-wanted_feed_bore = el diámetro interior de la manguera de alimentación, como feed_bore = "3/4 in"
phrase-wanted_feed_length = el largo de la manguera de alimentación, como feed_length = "10 ft"
phrase-wanted_boom_hose = el diámetro interior de la manguera del aguilón, como hose_bore = "3/4 in"
phrase-wanted_tip_spacing = la separación entre boquillas, como tip_spacing = "20 in"
phrase-wanted_enters = dónde entra la alimentación, como enters_between = [3, 4], o feeds_at = 1 en una boquilla
phrase-wanted_boom_tips = las boquillas de izquierda a derecha, como tips = ["0.30 gal/min @ 40 psi", "plugged"]
phrase-wanted_body_bore = el diámetro interior de la bajada y del portaboquilla, como body_bore = "5/16 in"
phrase-wanted_both_ends = la altura de la otra punta, como left_height = "0 ft", right_height = "2 ft"

## Remarks in the file to fill in. Names and values of the file stay as they are.

section-opening =
    Una visita: una aspersora en un día. Quite el # al principio de una línea y ponga su propio valor.
    Deje fuera lo que no se hizo. Las cantidades llevan su unidad y van entre comillas; los decimales, con punto.
    Los nombres y las palabras del archivo quedan en inglés; entre paréntesis, lo que quieren decir.
    Solo agua limpia. Freno puesto, sin marcha, nadie cerca de la toma de fuerza; nunca una boquilla a la boca.
section-visit = de quién es la aspersora, cuál es, cuándo
field-visit-sprayer = cómo se le llama a la aspersora
field-visit-farm = el rancho
field-visit-date = el día, como año-mes-día
field-visit-operator = quién la maneja
field-visit-with = quién ayudó
field-visit-notes = cualquier otra cosa
section-sprayer = qué máquina es
field-sprayer-kind = boom (aguilón, moja todo el ancho), band (en bandas), directed (varias boquillas por surco), boomless (sin aguilón), hand (a mano)
field-sprayer-tips = cuántas boquillas, o cuántas salidas si no tiene aguilón
field-sprayer-sections = boquillas de cada sección, desde la izquierda de quien maneja; o dé tips
field-sprayer-spacing = qué separación deben tener las boquillas
field-sprayer-mounting = dónde va el aguilón, rear (atrás) o front (delante); las boquillas se numeran desde la izquierda de quien maneja
field-sprayer-tip_size = el tamaño ISO impreso en la boquilla; o dé rated
field-sprayer-rated = el flujo con agua que da el fabricante
field-sprayer-fan_angle = para kind boom: qué tan anchos echan los abanicos a la presión del trabajo; baja con la presión
field-sprayer-tank = cuánto le cabe al tanque
field-sprayer-held_by = qué mantiene la presión: constant_pressure (presión fija), rate_controller (controlador de dosis), ground_driven_pump (bomba movida por la rueda); de eso depende lo que hace un cambio de velocidad
field-sprayer-band_width = para kind band: el ancho de una banda; spacing es entonces la separación entre surcos
field-sprayer-row_spacing = para kind directed: la separación entre surcos
field-sprayer-tips_per_row = para kind directed: boquillas por surco
field-sprayer-effective_swath = para kind boomless: de una pasada a la siguiente, menos que el ancho mojado
field-sprayer-wetted_width = para kind boomless, con overlap: lo que se moja
field-sprayer-overlap = la parte del ancho mojado que cubre otra vez la pasada siguiente
field-sprayer-spray_width = para kind hand: el ancho que se moja al caminar
section-sprayer_groups = boquillas que deben ser distintas, con el nombre que usted quiera: "extremos" = [1, 12]
section-setting = cómo estaba ajustada; esto es lo que hay que repetir
field-setting-gear = la marcha
field-setting-engine_speed = las revoluciones del motor; de ellas dependen la toma de fuerza (PTO) y la bomba
field-setting-pto_speed = las revoluciones de la toma de fuerza (PTO)
field-setting-pressure = la presión con todas las boquillas echando
field-setting-pressure_read_at = dónde se leyó la presión: pump (bomba), manifold (múltiple), boom (aguilón), tip (boquilla), cab (cabina)
field-setting-gauge_marks = cada cuánto tiene marcas el manómetro
field-setting-agitation = agitación: on (encendida) u off (apagada)
field-setting-sections_on = qué secciones estaban abiertas; all son todas
field-setting-controller = controlador de dosis: on (encendido) o manual; en la captura debe estar en manual
field-setting-water_in_tank = qué tan lleno estaba el tanque; half full es medio lleno
field-setting-boom_height = a qué altura van las boquillas sobre lo que se aplica
section-look = dos minutos alrededor de ella mientras echa agua limpia; yes es sí, no es no
field-look-tips_alike = todas las boquillas del mismo tipo, tamaño y ángulo
field-look-all_spraying = todas las boquillas echan
field-look-fans_straight = los abanicos, derechos y sin chocar entre sí
field-look-no_leaks = no hay fugas
field-look-no_drip_after_5_s = nada gotea cinco segundos después de cerrar
field-look-gauge_back_to_zero = el manómetro vuelve a cero
field-look-strainers_clean = las mallas están puestas y limpias; cierre la válvula del tanque antes de abrir una
field-look-boom_level = el aguilón está nivelado y a su altura
field-look-streaky_tips = boquillas con el abanico rayado o ladeado
field-look-dripping_tips = boquillas que siguen goteando cinco segundos después de cerrar
field-look-odd_tips = boquillas de otro tamaño, clase o color que las demás
field-look-foam = los vasos hacen espuma
field-look-gauge_rests_at = lo que marca el manómetro sin que corra nada
section-symptoms = lo que se ve fuera de lo medido, y cómo se contestaron las revisiones; evenswath symptom da las palabras
field-symptoms-seen = lo que se ve
field-symptoms-absent = lo que se buscó y no está
field-symptoms-drive = qué mueve la bomba: shaft (toma de fuerza, motor, banda) o 12_volt
field-symptoms-air_chamber = si la bomba tiene cámara de aire
field-symptoms-yes = revisiones contestadas con sí
field-symptoms-no = revisiones contestadas con no
field-symptoms-skipped = revisiones que se dejaron fuera
section-spacing = dónde van las boquillas; mejor las marcas de una sola cinta estirada que los huecos
field-spacing-marks = lo que marca la cinta en cada boquilla
field-spacing-gaps = o cada hueco medido por separado
field-spacing-tape_marks = hasta qué marca se leyó la cinta
field-spacing-cannot_move = boquillas que no se pueden mover
field-spacing-limit = cuánto puede variar un hueco, si no es 5 %
section-drive = el recorrido con cronómetro, con medio tanque, en terreno como el del trabajo, ya a su velocidad antes de la primera bandera
field-drive-course = el tramo medido
field-drive-runs = el tiempo de cada pasada, there (ida) y back (vuelta); quien maneja nunca lleva el cronómetro
field-drive-dash = lo que marcaba el tablero
section-drive_setting = lo que en el recorrido estaba ajustado distinto que arriba
section-catch = la prueba de captura, parado, con todas las boquillas echando
field-catch-time = cuánto tiempo se sostuvo cada vaso, o "as driven" (lo que dura el recorrido)
field-catch-cup_marks = cada cuánto tiene marcas el vaso; es la unidad de los números solos
field-catch-cup_holds = cuánto le cabe al vaso
field-catch-limit = cuánto puede variar una boquilla del promedio, o un límite con nombre como mean-5
field-catch-new_limit = cuánto puede echar una boquilla de más que una nueva
field-catch-timer = con qué precisión se arranca y se para el cronómetro, si no es a mano
field-catch-weighed_density = la densidad del líquido, si los vasos se pesaron
field-catch-new_tip = una boquilla nueva del mismo tamaño, puesta y recogida para comparar
field-catch-doubtful = lecturas que no pueden ser: refuse (rechazar) o keep (dejar)
section-catch_setting = lo que en la captura estaba ajustado distinto que arriba
section-catch_round = una vuelta a todo el aguilón; las rondas no se mezclan
field-catch_round-after = as found (tal como estaba), after cleaning (después de limpiar), new tips (boquillas nuevas), pressure changed (con otra presión), swapped (intercambiadas), o sus propias palabras
field-catch_round-readings = una por boquilla desde la izquierda; una lista donde se recogió otra vez; "-" donde no se recogió
field-catch_round-tips = de qué boquillas son las lecturas, si no se recogieron todas
field-catch_round-time = si es distinto del tiempo de arriba
field-catch_round-tip_set = donde los portaboquillas llevan varios juegos: el que está puesto; los juegos quedan aparte, cuenta el último
field-catch_round-pressure = con otra presión: lo que marcó el manómetro
field-catch_round-swapped = tras intercambiar: las dos boquillas que cambiaron de lugar; las lecturas van por lugar
section-catch_tip_pressure = la presión leída en una boquilla con un manómetro de confianza, mientras todas echan igual que para los vasos
field-catch_tip_pressure-tip = en cuál boquilla
field-catch_tip_pressure-pressure = lo que marcó ese manómetro
field-catch_tip_pressure-marks = cada cuánto tiene marcas
section-controller = un controlador de dosis: lo que marca y lo que tiene metido
field-controller-shown_flow = el flujo que marca al recoger los vasos, en manual, con todas las secciones abiertas
field-controller-shown_speed = la velocidad que marca en el recorrido con cronómetro
field-controller-shown_rate = la dosis que marca a esa velocidad
field-controller-widths = el ancho metido de cada sección, desde la izquierda
field-controller-valves_pulse = si pulsan las válvulas de las boquillas
field-controller-duty = la parte del tiempo que estaban abiertas al recoger los vasos; 100 % es siempre abiertas
section-controller_closed = una sección cerrada mientras las demás aplican, y abierta otra vez
field-controller_closed-section = cuál, desde la izquierda de quien maneja
field-controller_closed-before = la presión con todas las secciones abiertas
field-controller_closed-closed = la presión con ésta cerrada
field-controller_closed-after = la presión cuando está abierta otra vez
section-refill = lo que se gastó en una distancia medida o en un área conocida, para comprobar la dosis
field-refill-used = lo que hizo falta para rellenar, o el tanque entero
field-refill-distance = en qué distancia
field-refill-area = o en qué área
section-target = lo que se quiere
field-target-rate = la dosis de agua que se quiere
field-target-within = cuánto puede variar, si no es 5 %
field-target-mixed_for = si el tanque ya está preparado: para qué dosis de agua
field-target-carrier_density = si el líquido no es agua
section-product = lo que va en el tanque; la etiqueta es la ley
field-product-name = su nombre
field-product-rate = su dosis: 2 pt/ac, 2 lb/100 gal, 0.25 % v/v, 1.5 lb ai/ac at 4 lb ai/gal
field-product-label_least = lo mínimo que permite la etiqueta
field-product-label_most = lo máximo que permite la etiqueta
field-product-label_least_carrier = lo mínimo de agua que permite la etiqueta
field-product-price = su precio, para saber cuánto cuesta el error
section-job = el trabajo que sigue
field-job-area = el área que se va a tratar
field-job-area_a_year = el área que se trata en un año, para saber cuánto cuesta el error
