### Sheets to hand over: the visit, the cab card, the paper to fill in, the card before the day, tags.

## The visit's sheet.

sheet-visit_title = Lo que echa esta aspersora
sheet-found_title = Lo que se encontró en esta aspersora
sheet-working_title = Cómo se calculó
sheet-boom = { $tips ->
        [one] una boquilla
       *[other] { $tips } boquillas a { $spacing }
    }
sheet-boom_bands = { $boom }, bandas de { $band }
sheet-boom_directed = { $tips } boquillas, { $row } por surco
sheet-boomless = { $outlets ->
        [one] sin aguilón, una salida
       *[other] sin aguilón, { $outlets } salidas
    }
sheet-hand = aspersora de mano
sheet-driven_by = maneja { $name }
sheet-checked_with = revisada con { $name }
sheet-foot_of_visit = { $program } { $version } · agua limpia, lecturas tal como se escribieron; cómo se calculó cada número está atrás de la primera hoja
sheet-foot = { $program } { $version } · la etiqueta es la ley
sheet-care_lead = Tenga cuidado.
sheet-care = La etiqueta es la ley: pone lo más de producto por acre, lo menos de agua, el viento, los guantes y la protección de los ojos. Para revisar, solo agua limpia; trate el agua de una aspersora usada como producto y no la deje llegar a pozos ni desagües. Freno puesto, nadie cerca de la flecha. Nunca ponga una boquilla en la boca. Donde esta hoja y la etiqueta o una regla local no digan lo mismo, deciden ellas y las personas con licencia.

sheet-puts_out = echa
sheet-most_likely = lo más probable: { $range }
sheet-wanted = { $side ->
        [none] se quieren { $wanted }: eso es
        [under] se quieren { $wanted }; echa { $off } de menos: { $verdict ->
            [within] está bien
            [outside] es demasiado
           *[cannot_tell] quizá es demasiado
        }
       *[over] se quieren { $wanted }; echa { $off } de más: { $verdict ->
            [within] está bien
            [outside] es demasiado
           *[cannot_tell] quizá es demasiado
        }
    }
sheet-with_plugged = { $tips-count ->
        [one] tal como estaba, con la boquilla { $tips } tapada
       *[other] tal como estaba, con las boquillas { $tips } tapadas
    }
sheet-two_settings = el recorrido y la captura se hicieron con ajustes distintos
sheet-full_tank_does = un tanque lleno de { $tank } alcanza para
sheet-acres = acres
sheet-treated_acres = acres tratados
sheet-treated_hectares = ha tratadas
sheet-product_in_tank = { $name } en un tanque lleno, a { $rate }
sheet-rounded_down = { $exact } según la cuenta, redondeado hacia abajo a lo que marca una jarra
sheet-too_little_to_measure = muy poco para medirlo
sheet-the_cups = los vasos
sheet-nothing_comes = No sale nada
sheet-drives = avanza a
sheet-needs_cups = Para saber cuánto echa faltan los vasos.
sheet-of_tips_in_order = { $within } de { $all } bien
sheet-needs_drive = Para saber cuánto echa falta el recorrido con cronómetro.
sheet-the_spacing = la separación de las boquillas
sheet-gaps = { $verdict ->
        [within] { $all ->
            [one] El hueco está bien
           *[other] Los { $all } huecos están bien
        }
        [outside] { $off } de { $all } huecos mal
       *[cannot_tell] No se sabe todavía
    }
sheet-needs_drive_and_cups = Para saber cuánto echa faltan el recorrido con cronómetro y los vasos.
sheet-so_far = hasta ahora
sheet-nothing_measured = Todavía no se ha medido nada
sheet-measure_next = Sigue, en cualquier orden: la separación, un recorrido con cronómetro, los vasos. El recorrido y los vasos juntos dicen cuánto echa.
sheet-fill_in = Anote lo que se midió: la separación, un recorrido con cronómetro, los vasos. Cada parte dice algo por sí sola.

sheet-what_to_do = Qué hacer
sheet-what_to_do_on = Qué hacer (sigue)
sheet-more_steps = { $more ->
        [one] Hay uno más en la hoja siguiente.
       *[other] Hay { $more } más en la hoja siguiente.
    }
sheet-tips_high = Las boquillas { $tips } echan { $off } más que el promedio de las boquillas.
sheet-tips_high_do = Cámbielas por otras del mismo tipo y tamaño, y recoja otra vez.
sheet-tips_low = Las boquillas { $tips } echan { $off } menos que el promedio de las boquillas.
sheet-tips_low_do = Límpielas con sus mallas, con cepillo suave o aire, nunca con la boca, y recoja otra vez; cambie las que sigan echando de menos.
sheet-nothing_to_do = Nada. Lo que se midió está bien.

sheet-same_again = Para que salga igual otra vez
sheet-gear_engine = marcha, motor
sheet-pto = (toma de fuerza { $speed })
sheet-pressure = presión
sheet-speed = velocidad
sheet-speed_over = { $runs ->
        [one] { $speed } ({ $time } en el tramo, una pasada)
       *[other] { $speed } ({ $time } en el tramo, { $runs } pasadas)
    }
sheet-tips = boquillas
sheet-tip_size = tamaño { $size } ({ $colour }), ISO 10625
sheet-tip_rated = { $flow } a { $pressure }
sheet-boom_height = altura de las boquillas
sheet-agitation = agitación
sheet-sections_on = secciones abiertas
sheet-controller = controlador
sheet-tank = tanque
sheet-catch_again = recoja otra vez
sheet-catch_again_when = cuando cambien boquillas, velocidad, presión o producto, y la próxima primavera

sheet-good_to_know = Es bueno saber
sheet-how_reached = Las cuentas
sheet-how_sure = "Lo más probable" es el margen donde está el valor verdadero 95 veces de 100, según las marcas del vaso, la mano en el cronómetro, la cinta y el aguilón.
sheet-cups_of = Los vasos, { $round }: { $time }, { $unit }
sheet-tip = boq.
sheet-cup = vaso
sheet-off_the_mean = qué tan lejos, %
sheet-off_with_range = { $off } ({ $low } a { $high })
sheet-verdict = resultado
sheet-mean_of = { $several ->
        [yes] Boquillas { $tips }: promedio { $mean }{ $spread ->
            [none] .
           *[other] , dispersión (CV) { $spread } %.
        }
       *[no] Promedio { $mean }{ $spread ->
            [none] .
           *[other] , dispersión (CV) { $spread } %.
        }
    }
sheet-in_the_tank = En el tanque
sheet-product = producto
sheet-label_rate = a
sheet-full_load = tanque lleno: { $volume }, { $area }
sheet-last_load = última carga: { $volume }, { $area }
sheet-job_loads = { $full ->
        [one] El trabajo de { $area }: una carga llena{ $last ->
            [0] .
           *[other] {" "}y la última.
        }
       *[other] El trabajo de { $area }: { $full } cargas llenas{ $last ->
            [0] .
           *[other] {" "}y la última.
        }
    }

tip_is-in_order = bien
tip_is-high = de más
tip_is-low = de menos
tip_is-worn = gastada
tip_is-plugged = tapada
tip_is-not_caught = sin recoger
tip_is-cannot_tell = no se sabe

tip_colour-pink = rosa
tip_colour-light_green = verde claro
tip_colour-orange = anaranjado
tip_colour-green = verde
tip_colour-yellow = amarillo
tip_colour-lilac = lila
tip_colour-violet = violeta
tip_colour-blue = azul
tip_colour-dark_red = rojo oscuro
tip_colour-red = rojo
tip_colour-brown = café
tip_colour-grey = gris
tip_colour-gray = gris
tip_colour-white = blanco
tip_colour-light_blue = azul claro
tip_colour-black = negro

## The row of cups and the other drawings.

cups-title = La fila de vasos
cups-caption = Los vasos { $round }: { $time }, { $unit }. { $mean }
cups-mean = Promedio { $mean }.
cups-left = izquierda de quien maneja
cups-right = derecha de quien maneja
cups-limit = límite
cups-tip_says = { $reading ->
        [none] Boquilla { $tip }: { $word }
       *[other] Boquilla { $tip }: { $reading }, { $word }
    }
cups-describe = { $all ->
        [one] Una boquilla.
       *[other] { $all } boquillas desde la izquierda de quien maneja.
    } { $outside ->
        [0] Ninguna está fuera del límite.
        [one] Una está fuera del límite.
       *[other] { $outside } están fuera del límite.
    }{ $open ->
        [0] {""}
        [one] {" "}De una no se sabe con este vaso.
       *[other] {" "}De { $open } no se sabe con este vaso.
    }
cups-sign_high = de más
cups-sign_low = de menos
cups-sign_plugged = tapada
cups-sign_cannot_tell = no se sabe con este vaso
cups-sign_not_caught = sin recoger
cups-key = ▲ de más · ▼ de menos · × tapada · ? no se sabe con este vaso · – sin recoger
cups-stand_behind = La fila de vasos está atrás de esta hoja.
cups-since = Desde entonces: { $found }
drive-title = El recorrido con cronómetro
drive-describe = { $runs ->
        [one] Una pasada sobre { $course }: { $speed }.
       *[other] { $runs } pasadas sobre { $course }: { $speed }.
    }
drive-there = ida
drive-back = vuelta
drive-run = pasada { $number }
drive-mean = juntas: { $time } por pasada
rate-title = Lo que echa contra lo que se quiere
rate-describe = Echa { $rate }{ $wanted ->
        [none] .
       *[other] ; se quieren { $wanted }.
    }
rate-puts_out = echa { $rate }
rate-wanted = se quieren { $rate }
rate-within = dentro de { $percent } %
rate-label_least = lo menos de la etiqueta { $rate }
spacing-title = Las boquillas sobre la cinta
spacing-describe = { $off ->
        [0] Los { $all } huecos están bien.
        [one] Uno de { $all } huecos está mal.
       *[other] { $off } de { $all } huecos están mal.
    }
spacing-move = mover { $distance }
spacing-heading = Las boquillas sobre la cinta: deben estar a { $spacing }

## The card for the cab.

cab-title = Para la cabina
cab-cut = corte aquí: una para la cabina, otra para el taller
cab-puts_out = echa
cab-acres_a_tank = un tanque lleno alcanza para
cab-product_a_tank = en un tanque lleno: { $name }
cab-nothing = Todavía no hay nada que repetir: anote marcha, motor, presión y dónde se leyó.
cab-until = Vale hasta que cambien boquillas, velocidad, presión o producto; entonces recoja otra vez, y la próxima primavera. La etiqueta es la ley.

## The sheet to fill in by hand.

paper-title = Hoja de calibración
paper-sprayer = aspersora
paper-farm = rancho
paper-date = fecha
paper-driver = maneja
paper-with = con
paper-tank = el tanque lleva
paper-safe_lead = Primero:
paper-safe = enjuagada y con medio tanque de agua limpia. Freno puesto, sin velocidad, calzas, toma de fuerza con guarda, nadie cerca de la flecha ni donde se dobla el aguilón. Mire si hay cables de luz arriba. Guantes y protección de los ojos. Señas acordadas; quien maneja nunca lleva el cronómetro. No deje llegar el agua a pozos ni desagües.
paper-look = Mire (marque lo que está bien)
paper-setting = Ajústela como cuando trabaja
paper-gear = marcha
paper-engine = motor
paper-pto = toma de fuerza
paper-pressure = presión
paper-read_at = leída en
paper-tip = boquillas puestas
paper-drive = Recórralo con cronómetro, a velocidad de trabajo
paper-spacing = entre boquillas
paper-course = tramo
paper-there = ida
paper-back = vuelta
paper-dash = el tablero marca
paper-catch = Separación y vasos, boquilla por boquilla
paper-catch_time = recogido por
paper-cup_marks = el vaso marca cada
paper-catch_how = Numere las boquillas desde la izquierda de quien maneja. Tienda una cinta a lo largo del aguilón y anote dónde está cada una. Recoja todas tal como están, antes de limpiar nada. Anote lo que lee, hasta media marca; una raya donde no puso vaso.
paper-tip_number = boquilla
paper-tip_of_section = { $tip } (sección { $section })
paper-on_tape = en la cinta
paper-as_found = tal como estaba
paper-again = otra vez
paper-after = después
paper-sums = Las cuentas a mano
paper-sums_under = El ejemplo es una aspersora inventada de doce boquillas. Redondee al final, no en el camino.
paper-sum = la cuenta
paper-example = ejemplo
paper-yours = la suya
paper-what_to_change = Qué cambiar
paper-change_low = Una boquilla echa de menos: quite la presión, limpie la boquilla y su malla con cepillo suave o aire, nunca con la boca; recoja otra vez; cámbiela si sigue echando de menos.
paper-change_high = Una boquilla echa de más: cámbiela por una del mismo tipo y tamaño, y recoja otra vez.
paper-change_all = Muchas boquillas echan más que una nueva a esta presión: están gastadas; cambie el juego completo.
paper-change_rate = La dosis no es la que se quiere: un poco con la presión (cuatro veces la presión echa el doble), más con la velocidad, mucho con otro tamaño de boquilla. O déjela y prepare el tanque para lo que de veras echa, dentro de la etiqueta.

sum-total = Sume todos los vasos.
sum-total_example = { $total } { $cup }
sum-mean = Suma ÷ vasos = promedio
sum-mean_example = { $total } ÷ { $tips } = { $mean } { $cup }
sum-limits = Promedio × 0.9 y promedio × 1.1. Marque cada vaso que esté fuera.
sum-limits_example = { $low } y { $high } { $cup }
sum-speed_us = Tramo en pies × 0.682 ÷ tiempo promedio en segundos = mph
sum-speed_us_example = { $course } × 0.682 ÷ { $time } = { $speed } mph
sum-speed_metric = Tramo en metros × 3.6 ÷ tiempo promedio en segundos = km/h
sum-speed_metric_example = { $course } × 3.6 ÷ { $time } = { $speed } km/h
sum-course_us = Si el tramo fue 4084 ÷ separación en pulgadas (pies), y cada vaso se puso lo que duró el recorrido: promedio en onzas líquidas = gal/ac
sum-course_us_example = 4084 ÷ { $spacing } = { $course } pies; { $mean } oz líq: { $rate } gal/ac
sum-course_metric = Si el tramo fue 5000 ÷ separación en cm (metros), y cada vaso se puso lo que duró el recorrido: promedio en mL × 0.2 = L/ha
sum-course_metric_example = 5000 ÷ { $spacing } = { $course } m; { $mean } × 0.2 = { $rate } L/ha
sum-rate_us = Si no: promedio en onzas líquidas × 0.469 ÷ segundos recogidos = gal/min; luego gal/min × 5940 ÷ mph ÷ separación en pulgadas = gal/ac
sum-rate_us_example = { $mean } × 0.469 ÷ { $time } = { $flow }; { $flow } × 5940 ÷ { $speed } ÷ { $spacing } = { $rate }
sum-rate_metric = Si no: promedio en mL × 0.06 ÷ segundos recogidos = L/min; luego L/min × 60000 ÷ km/h ÷ separación en cm = L/ha
sum-rate_metric_example = { $mean } × 0.06 ÷ { $time } = { $flow }; { $flow } × 60000 ÷ { $speed } ÷ { $spacing } = { $rate }
sum-tank = Tanque ÷ dosis = para cuánto alcanza un tanque lleno
sum-tank_example = { $tank } ÷ { $rate } = { $area } { $area_unit }
sum-product = Eso × la dosis de la etiqueta = producto en un tanque lleno. Redondee hacia abajo, nunca más que la etiqueta.
sum-product_example = { $area } × { $on_area } = { $amount }: { $measure }

## The card before the day, and the kit list.

before-title = Antes del día de calibración
before-why = Una hora con su aspersora y agua limpia: cuánto echa de veras, qué arreglar, qué lleva el tanque.
before-day = día
before-hour = hora
before-place = lugar
before-call = llame a
before-the_sprayer = Traiga la aspersora así
before-rinsed = Enjuagada: tanque, bomba, mangueras y aguilón, que solo salga agua limpia. Enjuáguela donde la etiqueta lo permita.
before-half_full = Con medio tanque de agua limpia.
before-own_tractor = En su propio tractor, el que usa para aplicar; su marcha y sus revoluciones son la mitad de la calibración.
before-strainers = Las mallas sacadas, limpias y puestas otra vez, con la válvula del tanque cerrada.
before-spray_at_home = Probada un minuto en casa: sin fugas, que todas las boquillas echen, que el manómetro se mueva.
before-lights = Lista para el camino: luces, triángulo de vehículo lento, aguilón amarrado, perno del enganche con seguro.
before-bring = Traiga también
before-bring_label = La etiqueta (label) de lo que va a aplicar.
before-bring_rate = Los galones por acre que quiere, y los acres.
before-bring_tips = Boquillas de repuesto del mismo tipo y tamaño: tres o más; un juego nuevo si las suyas son viejas.
before-bring_parts = Mallas, empaques y válvulas antigoteo de repuesto; una llave para ellos.
before-bring_last = La hoja de la vez pasada, si la hay.
before-bring_field = La velocidad de trabajo: marcha y rpm que de veras usa, en un suelo como el suyo.
before-bring_gloves = Guantes que no dejen pasar agua y protección de los ojos. Botas.
before-bring_driver = La persona que la maneja.
before-takes_heading = Cuánto tarda
before-takes = Como un minuto por boquilla entre dos, y veinte minutos para mirar, el recorrido y las cuentas. Se va con una hoja de lo que echa y una tarjeta para la cabina.
before-care = No traiga una aspersora con producto. La etiqueta es la ley, también para el agua del enjuague. Nadie junto a una flecha que gira ni bajo un aguilón que se dobla; niños y perros se quedan en casa.

kit-title = Lo que trae quien revisa
kit-under = Para diez aspersoras al día y dos ayudantes.
kit-measure = Para medir
kit-cups = 24 vasos iguales, con marcas cada media onza o más finas, y mililitros del otro lado
kit-jug = una jarra para comprobar los vasos, y un embudo
kit-watches = 3 cronómetros o teléfonos en bolsas
kit-tape = una cinta de 300 pies y una de 30 pies
kit-flags = 6 banderas o conos
kit-gauge = un manómetro que se sepa que está bien, con una pieza para ponerlo en lugar de una boquilla
kit-scale = una báscula de cocina, para vasos con marcas dudosas
kit-mend = Para arreglar
kit-tips = boquillas nuevas de los tamaños usuales, una de cada uno para recoger junto a las viejas
kit-brushes = cepillos suaves y una lata o pera de aire; nada de alambre ni navajas
kit-valves = válvulas antigoteo, empaques, mallas
kit-wrenches = llaves, pinzas, cinta para rosca
kit-ties = cinchos y alambre
kit-bucket = una cubeta para piezas sucias, y trapos
kit-safe = Para cuidarse
kit-chocks = calzas
kit-gloves = guantes para todos, de tres tallas
kit-eyes = protección de los ojos para todos
kit-water = agua limpia para lavarse, jabón, y aparte agua para tomar
kit-first_aid = botiquín y lavaojos
kit-shade = sombra, protector solar
kit-spill = una lona o charola bajo las boquillas donde el suelo debe quedar seco; absorbente
kit-write = Para escribir
kit-sheets = hojas de calibración, una por aspersora y diez más
kit-pencils = lápices y tablas; la tinta se corre
kit-tags = etiquetas para amarrar y cordón
kit-phone = teléfono o computadora, con carga y batería de repuesto
kit-labels = etiquetas (labels) de los productos usuales, para consultar

## Tags.

tags-title = Etiquetas para boquillas
tags-side = { $all ->
        [0] desde la izquierda de quien maneja
       *[other] de { $all }, desde la izquierda de quien maneja
    }
tags-out_of_place = Fuera de lugar
tags-catch_again = Recoger otra vez
tags-read = { $reading } { $unit } en { $time }
tags-none = En este aguilón no hay nada que arreglar ni que recoger otra vez, así que no hay etiquetas.

## A picture for the head.

picture-told = El logotipo de quien entrega esta hoja
picture_not_a_picture = esto no es una imagen que se pueda imprimir: no es PNG ni JPEG
    .do = guarde el logotipo como PNG o JPEG y dé ese archivo
picture_not_whole = esta imagen no está completa: empieza como { $format } y se corta
    .do = copie o guarde la imagen otra vez
picture_too_large = esta imagen tiene { $bytes } bytes, más de los { $most } que acepta una hoja
    .do = guárdela más chica: con 600 por 200 puntos basta para el encabezado
picture_size = esta imagen mide { $wide } por { $high } puntos; una hoja acepta de 1 a { $most } por lado
    .do = guárdela más chica: con 600 por 200 puntos basta para el encabezado

## Printing from the command line.

print-written = Escrito: { $file }
print_ending = { $file } no dice qué escribir
    .do = dé un nombre que termine en .html o en .pdf
print_no_cups = en esta visita no se recogió ningún vaso, así que no hay fila de vasos
    .do = recoja los vasos y anótelos bajo [[catch.round]]
print_sections = se dieron { $tips } boquillas, pero las secciones juntas tienen { $sections }
    .do = dé --tips o --sections de modo que coincidan; con uno basta
print_too_many_tips = { $tips } boquillas son más de las { $most } para las que se hace una hoja
    .do = imprima una hoja por cada parte del aguilón
cannot_read-not_written = no se puede escribir { $file }: { $detail }
    .do = vea si la carpeta existe y se puede escribir en ella; no quedó nada a medias
pdf_not_built = este programa se construyó sin la parte que hace archivos PDF
    .do = constrúyalo con `cargo xtask dist`, o haga la página HTML e imprímala
pdf_failed = no se pudo hacer el PDF de la hoja: { $why }
    .do = haga la página HTML e imprímala

## Help of what is printed.

help-visit_check-sheet = Escribir también la hoja de la visita: una página (.html) o un PDF (.pdf)
help-visit_check-beside = Un segundo idioma junto al primero en la hoja
help-visit_check-beside-en = inglés
help-visit_check-beside-es = español
help-visit_check-picture = Un logotipo para el encabezado de la hoja, PNG o JPEG
help-print = Hojas para entregar: vasos, tarjeta de la cabina, etiquetas, hoja para llenar, tarjeta para antes del día
help-print-after =
    Ejemplos:
      evenswath print cab my-visit.toml --to cab.html
      evenswath print paper --tips 20 --sections 7,6,7 --to sheet.html
      evenswath print before --lang es --beside en > before.html
help-print_cups = La fila de vasos, en grande
help-print_cups-file = El archivo de la visita; - para la entrada estándar
help-print_cups-to = El archivo que se escribe, que termine en .html o .pdf; si no se da, la página sale por la salida estándar
help-print_cups-beside = Un segundo idioma junto al primero
help-print_cups-beside-en = inglés
help-print_cups-beside-es = español
help-print_cups-picture = Un logotipo para el encabezado de la hoja, PNG o JPEG
help-print_cab = La tarjeta de la cabina: el ajuste que se repite, dos veces en una hoja
help-print_cab-file = El archivo de la visita; - para la entrada estándar
help-print_cab-to = El archivo que se escribe, que termine en .html o .pdf; si no se da, la página sale por la salida estándar
help-print_cab-beside = Un segundo idioma junto al primero
help-print_cab-beside-en = inglés
help-print_cab-beside-es = español
help-print_cab-picture = Un logotipo para el encabezado de la hoja, PNG o JPEG
help-print_tags = Etiquetas para amarrar a las boquillas que hay que arreglar, mover o recoger otra vez
help-print_tags-file = El archivo de la visita; - para la entrada estándar
help-print_tags-to = El archivo que se escribe, que termine en .html o .pdf; si no se da, la página sale por la salida estándar
help-print_tags-beside = Un segundo idioma junto al primero
help-print_tags-beside-en = inglés
help-print_tags-beside-es = español
help-print_tags-picture = Un logotipo para el encabezado de la hoja, PNG o JPEG
help-print_paper = La hoja para llenar a mano, con las cuentas
help-print_paper-file = Un archivo de visita que dice cuántas boquillas hay; - para la entrada estándar
help-print_paper-tips = Cuántas boquillas hay, de 1 a 1000 [12 si nada más lo dice]
help-print_paper-sections = Boquillas de cada sección desde la izquierda: 7,6,7
help-print_paper-to = El archivo que se escribe, que termine en .html o .pdf; si no se da, la página sale por la salida estándar
help-print_paper-beside = Un segundo idioma junto al primero
help-print_paper-beside-en = inglés
help-print_paper-beside-es = español
help-print_paper-picture = Un logotipo para el encabezado de la hoja, PNG o JPEG
help-print_before = La tarjeta para mandar antes del día, y la lista de lo que se lleva
help-print_before-to = El archivo que se escribe, que termine en .html o .pdf; si no se da, la página sale por la salida estándar
help-print_before-beside = Un segundo idioma junto al primero
help-print_before-beside-en = inglés
help-print_before-beside-es = español
help-print_before-picture = Un logotipo para el encabezado de la hoja, PNG o JPEG
help-print_cups-after =
    Ejemplo:
      evenswath print cups my-visit.toml --to cups.html
help-print_cab-after =
    Ejemplo:
      evenswath print cab my-visit.toml --to cab.html
help-print_tags-after =
    Ejemplo:
      evenswath print tags my-visit.toml --beside es --to tags.html
help-print_paper-after =
    Ejemplo:
      evenswath print paper --tips 20 --sections 7,6,7 --to sheet.html
help-print_before-after =
    Ejemplo:
      evenswath print before --lang es --beside en > before.html
value-NUMBER = CANTIDAD
value-LIST = LISTA
