### La aplicación: la primera pantalla, la hoja de una visita, lo que se pregunta, lo que se dice en voz alta, dónde se guarda.

## The steps of a visit, and what each is for

step-machine = La aspersora
step-machine-purpose = su nombre, sus boquillas, su tanque
step-safe = Seguridad primero
step-safe-purpose = antes de que algo gire
step-look = Revísela
step-look-purpose = dos minutos alrededor mientras echa agua limpia
step-spacing = Dónde están las boquillas
step-spacing-purpose = una cinta a lo largo del aguilón
step-drive = Recorrido con cronómetro
step-drive-purpose = un tramo medido, de ida y de vuelta
step-catch = Recoja los vasos
step-catch-purpose = como está, antes de limpiar nada
step-rate = Lo que echa
step-rate-purpose = y lo que usted quiere
step-tank = En el tanque
step-tank-purpose = cuánto terreno alcanza un tanque, cuánto producto
step-change = Qué hacer
step-change-purpose = qué arreglar o cambiar, en orden
step-repeat = Otra vez igual
step-repeat-purpose = marcha, motor, presión: cómo echar lo mismo otro día
step-hand_over = Para entregar
step-hand_over-purpose = hojas para imprimir, cuatro renglones para mandar

## What to see to before anything turns

safe-still = Toma de fuerza (PTO) con su guarda, freno puesto, fuera de marcha, ruedas calzadas.
safe-shaft = Nadie cerca de la flecha ni donde se pliega el aguilón.
safe-above = Miró hacia arriba: no hay cables de luz cerca del aguilón.
safe-water = Enjuagada y solo con agua limpia; que no llegue a pozos ni desagües.
safe-gloves = Guantes y protección para los ojos. Nunca una boquilla en la boca.
safe-signals = Quien maneja y quien ayuda acuerdan las señas; quien maneja nunca lleva el cronómetro.

## What is asked for

field-visit_sprayer = ¿Cómo le dicen?
field-visit_farm = rancho o finca
field-visit_date = día
field-visit_operator = quién la maneja
field-visit_with = quién ayuda
field-visit_notes = algo más
field-sprayer_kind = ¿De qué tipo es?
field-sprayer_tips = cuántas boquillas o salidas
field-sprayer_sections = boquillas en cada sección, desde la izquierda de quien maneja (como 4, 4, 4)
field-sprayer_spacing = separación entre boquillas
field-sprayer_mounting = ¿Dónde va el aguilón?
field-sprayer_tip_size = tamaño ISO que dice la boquilla (como 03)
field-sprayer_rated = flujo con agua según el fabricante, y a qué presión (como 0.30 gal/min @ 40 psi)
field-sprayer_fan_angle = ángulo de los abanicos, a la presión del trabajo
field-sprayer_tank = capacidad del tanque
field-sprayer_held_by = ¿Qué mantiene la presión?
field-sprayer_band_width = ancho de una banda
field-sprayer_row_spacing = separación entre surcos
field-sprayer_tips_per_row = boquillas por surco
field-sprayer_effective_swath = de pasada a pasada
field-sprayer_wetted_width = ancho que moja
field-sprayer_overlap = cuánto de eso cubre otra vez la pasada siguiente
field-sprayer_spray_width = ancho que echa al caminar
field-setting_gear = marcha
field-setting_engine_speed = velocidad del motor (como 1700 rpm)
field-setting_pto_speed = velocidad de la toma de fuerza, PTO (como 540 rpm)
field-setting_pressure = presión con todas las boquillas echando
field-setting_pressure_read_at = ¿Dónde se leyó?
field-setting_gauge_marks = el manómetro está marcado cada
field-setting_agitation = agitación
field-setting_sections_on = secciones abiertas
field-setting_controller = controlador de dosis
field-setting_water_in_tank = agua en el tanque
field-setting_boom_height = altura de las boquillas sobre lo que se aplica
field-look_tips_alike = ¿Son todas las boquillas del mismo tipo, tamaño y ángulo?
field-look_all_spraying = ¿Echan todas las boquillas?
field-look_fans_straight = ¿Los abanicos van derechos, sin chocar entre sí?
field-look_no_leaks = ¿Está sin fugas?
field-look_no_drip_after_5_s = ¿Ya no gotea nada a los cinco segundos de cerrar?
field-look_gauge_back_to_zero = ¿Vuelve a cero el manómetro?
field-look_strainers_clean = ¿Están las mallas puestas y limpias? Cierre la válvula del tanque antes de abrir una.
field-look_boom_level = ¿Está el aguilón nivelado y a su altura?
field-look_streaky_tips = boquillas con el abanico rayado
field-look_dripping_tips = boquillas que gotean después de cerrar
field-look_odd_tips = boquillas de otro tamaño o color
field-look_foam = ¿Hacen espuma los vasos?
field-look_gauge_rests_at = lo que marca el manómetro en reposo
field-controller_shown_flow = ¿Qué flujo marca el controlador?
field-controller_shown_speed = ¿Qué velocidad marca el controlador?
field-controller_shown_rate = ¿Qué dosis marca el controlador?
field-controller_widths = Anchos de sección metidos en el controlador
field-controller_valves_pulse = ¿Pulsan las válvulas de las boquillas?
field-controller_duty = ¿Qué parte del tiempo estaban abiertas? 100 % es siempre abiertas.
field-controller_closed_section = Sección cerrada
field-controller_closed_before = Presión con todas las secciones abiertas
field-controller_closed_closed = Presión con esta sección cerrada
field-controller_closed_after = Presión cuando está abierta otra vez
field-symptoms_seen = ¿Qué se ve?
field-symptoms_absent = ¿Qué no está?
field-symptoms_drive = ¿Qué mueve la bomba?
field-symptoms_air_chamber = ¿Tiene cámara de aire la bomba?
field-symptoms_yes = Revisiones contestadas con sí
field-symptoms_no = Revisiones contestadas con no
field-symptoms_skipped = Revisiones que se dejaron fuera
field-spacing_marks = lo que marca la cinta en cada boquilla, desde la izquierda de quien maneja (como 0, 20, 40 1/4)
field-spacing_gaps = cada hueco por separado
field-spacing_tape_marks = la cinta se lee de
field-spacing_cannot_move = boquillas que no se pueden mover (como 4, 5)
field-spacing_limit = cuánto puede fallar un hueco
field-drive_course = largo del tramo
field-drive_runs = una pasada con cronómetro
field-drive_dash = lo que marcó el tablero
field-catch_time = cuánto tiempo se pone cada vaso
field-catch_cup_marks = el vaso está marcado cada
field-catch_cup_holds = capacidad del vaso
field-catch_limit = cuánto puede alejarse una boquilla del promedio
field-catch_new_limit = cuánto puede echar de más que una nueva
field-catch_timer = con qué precisión se para el cronómetro
field-catch_weighed_density = cuánto pesa el líquido que se pesó
field-catch_new_tip = lo que dio una boquilla nueva
field-catch_doubtful = ¿Y las lecturas que casi no pueden ser?
field-catch_round_after = qué se hizo antes
field-catch_round_tip_set = juego de boquillas puesto
field-catch_round_readings = lo que se leyó en los vasos
field-catch_round_tips = qué boquillas se recogieron
field-catch_round_time = cuánto tiempo se pusieron los vasos de esta ronda
field-catch_round_pressure = lo que marcó el manómetro en esta ronda
field-catch_round_swapped = qué dos boquillas cambiaron de lugar
field-catch_tip_pressure_tip = la boquilla donde se leyó la presión
field-catch_tip_pressure_pressure = lo que marcó ese manómetro
field-catch_tip_pressure_marks = cada cuánto tiene marcas
field-refill_used = cuánto llevó volver a llenar
field-refill_distance = en qué distancia
field-refill_area = en qué superficie
field-target_rate = la dosis de agua que quiere
field-target_within = cuánto puede fallar
field-target_mixed_for = la dosis para la que ya está preparado el tanque
field-target_carrier_density = cuánto pesa el líquido, si no es agua
field-product_name = producto
field-product_rate = su dosis según la etiqueta (como 2 pt/ac)
field-product_label_least = lo menos que permite la etiqueta
field-product_label_most = lo más que permite la etiqueta
field-product_label_least_carrier = lo menos de agua que permite la etiqueta
field-product_price = su precio (como $40/gal)
field-job_area = terreno por aplicar
field-job_area_a_year = terreno aplicado en un año

choice-yes = sí
choice-no = no
choice-sprayer_kind-boom = aguilón
choice-sprayer_kind-band = en bandas
choice-sprayer_kind-directed = varias boquillas por surco
choice-sprayer_kind-boomless = sin aguilón
choice-sprayer_kind-hand = de mano o mochila
choice-sprayer_mounting-rear = atrás
choice-sprayer_mounting-front = adelante
choice-sprayer_held_by-constant_pressure = un regulador sencillo
choice-sprayer_held_by-rate_controller = un controlador de dosis
choice-sprayer_held_by-ground_driven_pump = una bomba movida por la rueda
choice-symptoms_drive-shaft = una flecha (PTO, motor)
choice-symptoms_drive-12_volt = un motor de 12 V
choice-setting_pressure_read_at-pump = en la bomba
choice-setting_pressure_read_at-manifold = en el múltiple
choice-setting_pressure_read_at-boom = en el aguilón
choice-setting_pressure_read_at-tip = en una boquilla
choice-setting_pressure_read_at-cab = en la cabina
choice-catch_doubtful-refuse = preguntar otra vez
choice-catch_doubtful-keep = dejarlas
choice-as_driven = lo que duró el recorrido

## What a step found, in a line

yard-puts_out = Echa { $rate } ({ $range }).
yard-puts_out_plain = Echa { $rate }.
yard-tank_does = Un tanque lleno de { $tank } alcanza para { $area }.
yard-in_the_tank = Lleva: { $products }.
yard-in_it = { $amount } de { $name }
yard-tips_count = { $count ->
        [one] una boquilla
       *[other] { $count } boquillas
    }
yard-tank_of = tanque de { $tank }
yard-seen_to = { $seen } de { $all } revisados
yard-look_in_order = todo en orden
yard-look_found = { $count ->
        [one] una cosa por arreglar
       *[other] { $count } cosas por arreglar
    }
yard-lower_by = { $by } más abajo
yard-higher_by = { $by } más arriba
yard-ground = a { $height } el suelo { $verdict-code ->
        [within] la recibe pareja
        [outside] la recibe dispareja
       *[cannot_tell] quizá la recibe pareja
    }
yard-spacing_in_order = todos los huecos en orden
yard-drove = { $runs ->
        [one] { $speed }, una pasada
       *[other] { $speed }, { $runs } pasadas
    }
yard-caught = { $caught ->
        [one] una boquilla recogida
       *[other] { $caught } boquillas recogidas
    }: { $within } en orden{ $off ->
        [0] {""}
       *[other] , { $off } fuera
    }{ $open ->
        [0] {""}
       *[other] , { $open } no se sabe todavía
    }
yard-nothing_to_do = Nada que hacer: lo que se midió está en orden.
yard-to_do = { $count ->
        [one] { $first }
       *[other] { $count } cosas. Primero: { $first }
    }
yard-two_settings = el recorrido y la captura se hicieron con ajustes distintos
yard-still_needed = todavía falta: { $what }

## How a step stands, and moving about

yard-mark_open = todavía no
yard-mark_begun = empezado
yard-mark_in_order = en orden
yard-mark_act = por arreglar
yard-mark_cannot_tell = no se sabe todavía
yard-with_more_time = con más tiempo
yard-back = regresar
yard-why = ¿por qué?
yard-why_rate = cómo se llegó a la dosis
yard-why_speed = cómo se llegó a la velocidad
yard-why_cups = los vasos, boquilla por boquilla
yard-why_tank = cómo se llegó a la carga
yard-next_step = sigue: { $step }
yard-steps = La visita, paso por paso
yard-answer = El resultado
yard-two_values = Dos dispositivos anotaron valores distintos. ¿Cuál vale?
yard-this_holds = vale { $value }
yard-unit_of = unidad
yard-at_hand = valores usuales

## The first screen

yard-how_much_today = ¿Cuántos minutos y cuántas personas?
yard-minutes = minutos
yard-minutes_10 = 10
yard-minutes_30 = 30
yard-minutes_60 = 60 o más
yard-people = personas
yard-people_1 = 1
yard-people_2 = 2
yard-people_3 = 3 o más
yard-plan_short = Diez minutos: el recorrido y una boquilla de cada sección. Con eso se sabe cuánto echa; no se revisa si las boquillas van parejas.
yard-plan_whole = Hay tiempo para todo: revisión, separación, recorrido, cada boquilla.
yard-plan_1 = Una persona: estacione, ponga el freno y deje que el teléfono diga las boquillas.
yard-plan_2 = Dos: una persona pone el vaso, la otra anota.
yard-plan_3 = Tres o más: varios vasos a la vez, una persona anota.
yard-begin = Empezar una visita
yard-new_sprayer = una aspersora nueva
yard-just_looking = solo mirar
yard-just_looking_keeps = no se guarda nada
yard-go_on = Seguir con una visita
yard-last_visit = última visita: { $date }
yard-no_name = Aspersora sin nombre
yard-lines = { $lines ->
        [one] una línea
       *[other] { $lines } líneas
    }
yard-settings = ajustes de pantalla
yard-keeping = dónde se guarda
yard-copy = hacer una copia
yard-opening = Se está abriendo el cuaderno.

## Where it is kept

yard-only_here = { $lines ->
        [0] Se guarda en este dispositivo, y nada está solo aquí.
        [one] Se guarda en este dispositivo. Una línea no está en ningún otro lado.
       *[other] Se guarda en este dispositivo. { $lines } líneas no están en ningún otro lado.
    }
yard-kept_empty = Se guarda en este dispositivo conforme usted escribe. Todavía no hay nada escrito.
yard-kept_nowhere = Este dispositivo no guarda nada. Lo que escriba se pierde al cerrar esta página: antes imprima la hoja o entregue el archivo de la visita.
yard-kept_nowhere_why = Dice: { $why }
yard-looking_head = Solo mirar: nada de esto se guarda.
yard-keeping_title = Dónde se guarda este cuaderno
yard-promise_unknown = Este navegador no ha dicho si conserva lo escrito.
yard-promise_may_clear = Este navegador puede borrar lo escrito cuando falte espacio.
yard-promise_keeps = Este navegador prometió no borrar lo escrito por su cuenta.
yard-ask_to_keep = pedirle que lo conserve
yard-clears_after_a_week = Este tipo de navegador borra lo que no se abrió en siete días. Ponga la aplicación en la pantalla de inicio, o haga una copia cada vez.
yard-installed = La aplicación está en la pantalla de inicio.
yard-opens_offline = La aplicación está en este aparato: aquí abre sin señal.
yard-opens_with_signal = Este navegador no guarda la aplicación: aquí abre solo con señal. Con HTTPS, fuera de ventanas privadas, sí se guarda.
yard-not_installed = La aplicación todavía no está en la pantalla de inicio.
yard-install = ponerla en la pantalla de inicio
yard-copy_title = Una copia en un archivo
yard-copy_how = Todo el cuaderno en un archivo. Mándeselo o guárdelo donde guarda sus papeles.
yard-last_copy = Última copia o intercambio: { $date }.
yard-no_copy = Todavía no se ha hecho ninguna copia.
yard-copy_file_choose = guardar una segunda copia en un archivo
yard-copy_file_how = Elija un archivo una sola vez, mejor donde por sí solo se lleve a otra parte. Desde entonces se vuelve a escribir cada vez que se guarda algo nuevo.
yard-copy_file_asks = Había una segunda copia en un archivo, y este navegador quiere que se le pida permiso otra vez antes de escribir ahí.
yard-copy_file_kept = Una segunda copia se guarda sola en el archivo que usted eligió.
yard-take_in_title = Meter un archivo
yard-take_in_how = Una copia de este cuaderno agrega lo que aquí falta; no se escribe encima de nada. Un archivo de visita se vuelve una visita.
yard-take_in = escoger un archivo
yard-server_title = El servidor de esta dirección
yard-server_none = Ahora no contesta ninguno. Todo funciona sin él.
yard-server_same = También guarda este cuaderno, hasta el último intercambio.
yard-server_other = Guarda otro cuaderno; con él no se intercambia nada.
yard-exchange = intercambiar ahora
yard-move_title = A otro teléfono u otra dirección
yard-move_how = Haga una copia aquí. Abra la aplicación allá y meta la copia antes de escribir nada. Desde entonces los dos son el mismo cuaderno, cada uno con sus líneas.

## Settings

yard-settings_title = Ajustes de pantalla
yard-settings_how = Cada uno se pone por separado; ninguno depende de otro.
yard-language = idioma
yard-numbers = números
yard-numbers_point = 14.6
yard-numbers_comma = 14,6
yard-paper = papel
yard-paper_letter = Carta
yard-paper_a4 = A4
yard-units = unidades
yard-units_us = galones, acres, pies
yard-units_metric = litros, hectáreas, metros

## What is said at the top

yard-seen = visto
yard-newer_version = Hay una versión nueva lista. Lo escrito se queda.
yard-take_newer = cambiar a ella
yard-copied_text = Copiado. Péguelo en un mensaje.
yard-text_as_file = Guardado en un archivo de texto.
yard-not_kept = Las últimas líneas todavía no se guardan. Siguen aquí y se intenta otra vez con la próxima.
yard-no_words = Las palabras de ese idioma todavía no están en este dispositivo. Llegan con la próxima señal; entonces elíjalo otra vez.
yard-withdrawn = La visita se retiró; sus lecturas se quitaron.
yard-file_taken_in = Lo que era nuevo en este archivo ya está aquí.
yard-file_taken_in_damaged = Este archivo está dañado. Todo lo que se pudo leer ya está aquí.
yard-file_moved_in = El cuaderno de este archivo se guarda aquí de ahora en adelante.
yard-file_moved_in_damaged = Este archivo está dañado. Todo lo que se pudo leer se guarda aquí de ahora en adelante.
yard-file_other_notebook = Este archivo es de otro cuaderno, así que no se metió nada. Ábralo en un dispositivo donde todavía no se haya escrito.
yard-file_visit_taken_in = Este archivo de visita ya es una visita aquí.
yard-file_is_none = Esto no es copia de un cuaderno ni archivo de visita. No se cambió nada.

## The drive and the cups on the sheet

yard-time_it = tomar el tiempo
yard-runs = Pasadas hasta ahora
yard-no_runs = Todavía ninguna. De ida y de vuelta, para que la pendiente o el viento se compensen.
yard-run = pasada { $number }, { $way ->
        [there] de ida
        [back] de vuelta
       *[none] en un sentido
    }: { $time }
yard-strike = tachar
yard-strike_what = tachar { $what }
yard-type_run = o escriba el tiempo de una pasada, en segundos
yard-add_run = agregar esta pasada
yard-run_nothing = Una pasada dura más que nada.
yard-catch_cups = recoger vasos
yard-catch_row = un renglón del papel
yard-catch_voice = con la voz
yard-catch_again = recoger otra vez { $count ->
        [one] la boquilla { $tips }
       *[other] las boquillas { $tips }
    }
yard-catch_again_for = recoger otra vez { $count ->
        [one] la boquilla { $tips }
       *[other] las boquillas { $tips }
    } por { $time }
yard-new_round = ¿Se hizo algo desde entonces? Empiece una ronda nueva; las rondas nunca se mezclan.

## The tank and what to hand over

yard-product = Producto { $number }
yard-add_product = agregar un producto
yard-label_is_law = La etiqueta es la ley.
yard-sheets = Hojas
yard-sheet_visit = la visita completa
yard-sheet_cab = tarjeta para la cabina
yard-sheet_cups = la fila de vasos, grande
yard-sheet_tags = tarjetas para las boquillas
yard-sheet_paper = hoja para llenar a mano
yard-sheet_before = qué traer, antes del día
yard-no_sheet = Todavía no hay nada que poner en esta hoja.
yard-print = imprimir
yard-share = entregar como archivo
yard-four_lines = Cuatro renglones para mandar
yard-send = mandar estos renglones
yard-visit_file = entregar el archivo de la visita
yard-visit_file_how = Cada lectura tal como se escribió. Lo leen la línea de comandos y otros teléfonos.
yard-withdraw = retirar esta visita
yard-withdraw_ask = ¿Retirar toda la visita? Sus lecturas se quitan para siempre. Se seguirá viendo que las hubo.
yard-withdraw_reason = por qué, si quiere decirlo
yard-withdraw_yes = retirarla para siempre
yard-withdraw_no = dejarla

## How a number came about

yard-why_title = Cómo se llegó a esto
yard-why_gone = Este número ya no está.

## Earlier visits

yard-last_time = visitas anteriores junto a esta
yard-last_time_title = Esta aspersora, visita por visita
yard-last_time_none = Esta es su primera visita aquí.
yard-last_rate = echa
yard-last_mean = una boquilla da, en promedio
yard-last_off = boquillas fuera
yard-last_wear = contra la primera visita
yard-last_pressure = presión
yard-last_today = { $date } (esta)
yard-last_more = { $percent } más
yard-last_less = { $percent } menos
yard-last_same = igual
yard-last_other_pressure = otra presión
yard-last_pressure_unsaid = presión sin anotar
yard-last_how = Lo que da todo el juego se compara con la primera visita solo si la presión fue la misma. Las boquillas que dan más que antes están gastadas.

## One cup at a time

yard-catch_title = Captura · { $round }
yard-place = { $place } de { $all }
yard-marks = marcas cada { $step }
yard-so_far_high = como { $off } más que las demás. Siga.
yard-so_far_low = como { $off } menos que las demás. Siga.
yard-so_far_alike = a { $off } de las demás.
yard-map = Los vasos hasta ahora, desde el asiento de quien maneja. Sigue la boquilla { $tip }.
yard-row_length = { $given ->
        [one] Hay una lectura
       *[other] Hay { $given } lecturas
    }, y { $tips ->
        [one] hay que recoger una boquilla
       *[other] hay que recoger { $tips } boquillas
    }. Escriba una por boquilla, un guion donde no se puso vaso.
yard-row_place = Lectura { $place }, boquilla { $tip }: { $what }

## What is spoken

yard-say_tip = { $count ->
        [one] Boquilla { $tips }. Listos.
       *[other] Boquillas { $tips }. Listos.
    }
yard-say_catch = Ponga el vaso.
yard-say_stop = Quítelo.
yard-say_ended_away = Se pasó de tiempo. Vacíelo y recoja otra vez.

## The cup's screens

yard-to_sheet = hoja
yard-go_to_tip = ir a una boquilla
yard-tip = boquilla
yard-high_so_far = alta, por ahora
yard-low_so_far = baja, por ahora
yard-alike_so_far = como las demás
yard-cup_before = aquí: { $read }
yard-one_more_cup = otro vaso más
yard-ask_head = ¿{ $read } en la boquilla { $tip }?
yard-keep_it = así es
yard-put_it_right = corregirla
yard-back_a_tip = atrás
yard-next_tip = sigue: boquilla { $tip }
yard-last_cup = guardar y terminar
yard-skip_tip = saltar
yard-rub_out = borrar
yard-other_side = el otro lado del vaso
yard-row_title = Un renglón del papel
yard-row_how = Una lectura por boquilla, en este orden: boquillas { $tips }. Un guion donde no se puso vaso. Los números solos son { $unit }.
yard-row_so_far = { $given } de { $tips }
yard-row_keep = guardar el renglón
yard-voice_title = Con la voz
yard-voice_tips = Llama las boquillas { $tips }, una tras otra, y cuenta por usted. Con sonido y la pantalla hacia usted.
yard-voice_held = cada vaso se pone
yard-voice_at_once = vasos a la vez
yard-voice_pause = pausa para leer y vaciar
yard-voice_enter = ¿Cuándo se anotan las lecturas?
yard-voice_enter_after = todas al final
yard-voice_enter_each = después de cada vaso
yard-voice_start = llamar la primera
yard-voice_ready = listos
yard-voice_catch = ponga el vaso
yard-voice_between = quítelo: lea y vacíe
yard-voice_stop = parar todo
yard-voice_ended_away = La pantalla se durmió y este vaso se pasó como { $over }. Vacíelo; se llama otra vez cuando usted diga.
yard-voice_again = llamarla otra vez
yard-voice_done = Ya están todas
yard-voice_once_more = otra vez desde la primera
yard-less = menos
yard-more = más
yard-watch_start = toque para empezar
yard-watch_stop = toque para parar
yard-watch_next = anotada; toque para la siguiente
yard-watch_how = en cualquier parte de la pantalla
yard-watch_no_good = esa pasada no sirve
yard-sensor_ask = velocidad por la posición del teléfono
yard-sensor_waits = esperando la posición
yard-sensor = { $speed } por la posición
yard-sensor_range = { $speed } por la posición ({ $range })

## Lo que se ve fuera de lo medido

yard-symptoms = Busque la causa
yard-symptoms_to = Algo anda mal: presión, espuma, goteo
yard-symptoms_gate = busque la causa; no hace falta recoger nada, nada se guarda
yard-symptoms_kept = Lo que toque se guarda con esta visita.
yard-symptoms_what = ¿Qué se ve?
yard-symptoms_done = Es todo lo que se ve
yard-symptoms_change = cambiar
yard-symptoms_rest = Estas probabilidades salen de una tabla de práctica común. Nadie las ha contado.
yard-symptom_next = Revise esto ahora
yard-symptom_takes = unos { $minutes } min
yard-symptom_end = Haga esto
yard-symptom_skip = No puedo revisarlo
yard-symptom_skipped = se dejó fuera
yard-symptom_causes = Lo más probable
yard-symptom_chance = { $how } ({ $chance })
yard-symptom_answered = Ya revisado
yard-symptom_take_back = quitar
yard-controller = El controlador revisado
yard-controller_closing = Cierre una sección a la vez desde el asiento, lea la presión y ábrala otra vez. Solo agua limpia; nadie en el rocío ni cerca de una flecha que gira.
yard-add_closed = otra sección cerrada
yard-section_closed = Sección { $number } cerrada
