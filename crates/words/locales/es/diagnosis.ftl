### Qué está mal con más probabilidad, y qué revisar después.

## Qué puede explicar los vasos de una boquilla

word-cause_worn = una boquilla gastada
word-cause_partly_plugged = una boquilla medio tapada
word-cause_plugged = una boquilla tapada
word-cause_smaller_tip = que se puso una boquilla más chica
word-cause_larger_tip = que se puso una boquilla más grande
word-cause_misread = un vaso mal leído o mal cronometrado
word-cause_chance = una boquilla buena, fuera por casualidad

## Qué se dice

boom_is_off = No sale nada en ninguna parte: lo más probable es que la bomba o la válvula del aguilón esté cerrada ({ $chance }).
    .do = Revise la bomba, la llave del tanque y la válvula del aguilón, y recoja otra vez.
section_shut = No sale nada de la sección { $section } (boquillas { $tips }): lo más probable es que su válvula esté cerrada o su malla tapada ({ $chance }).
    .do = Sin presión, con la llave del tanque cerrada y con guantes: abra el filtro de la sección y limpie la malla con cepillo suave o aire, nunca con la boca. Revise también su válvula y su manguera.
section_restricted = La sección { $section } (boquillas { $tips }) echa con más probabilidad { $loss } menos que la sección mejor alimentada ({ $low } a { $high }). Probabilidad de que algo le quite flujo: { $chance }.
    .do = Sin presión, con la llave del tanque cerrada y con guantes: abra el filtro de la sección y limpie la malla con cepillo suave o aire, nunca con la boca. Revise también su válvula y su manguera.
boom_all_high = Todas las boquillas echan más que nuevas a esta presión, { $off } ({ $low } a { $high }): el manómetro marca de menos, el juego está gastado parejo, o son boquillas más grandes. Los vasos solos no dicen cuál.
    .do = Lea la presión en una boquilla con un manómetro de confianza, y vea el tamaño impreso en las boquillas.
boom_all_low = Todas las boquillas echan menos que nuevas a esta presión, { $off } ({ $low } a { $high }): el manómetro marca de más, se pierde presión antes del aguilón, o son boquillas más chicas. Los vasos solos no dicen cuál.
    .do = Lea la presión en una boquilla con un manómetro de confianza, y vea el tamaño impreso en las boquillas.
boom_one_side-left = La mitad izquierda echa { $by } menos que la derecha.
    .do = Busque de ese lado una manguera doblada, una válvula a medio abrir y una malla sucia; lea la presión en una boquilla de cada lado.
boom_one_side-right = La mitad derecha echa { $by } menos que la izquierda.
    .do = Busque de ese lado una manguera doblada, una válvula a medio abrir y una malla sucia; lea la presión en una boquilla de cada lado.
boom_tapers = Las dos puntas del aguilón echan menos que el centro, { $by }.
    .do = La manguera del aguilón es delgada para este flujo, o se le soltó el forro por dentro: lea la presión en una boquilla de la punta y en una del centro.
flow_drifts-fell = Lo más probable es que el flujo haya bajado { $by } del primer vaso al último: según el orden de los vasos, no a lo largo del aguilón.
    .do = Revise lo que sostiene la presión: una batería que se descarga, un interruptor de presión que prende y apaga, un regulador que no se queda quieto, una malla que se va tapando. Luego recoja otra vez las primeras boquillas.
flow_drifts-rose = Lo más probable es que el flujo haya subido { $by } del primer vaso al último: según el orden de los vasos, no a lo largo del aguilón.
    .do = Deje correr hasta que la presión se quede quieta; revise el regulador y las revoluciones del motor. Luego recoja otra vez las primeras boquillas.
cups_all_alike = Los { $count } vasos dicen exactamente lo mismo. Casi nunca salen tan iguales las boquillas.
    .do = Recoja otra vez dos o tres y léalas una por una.
nothing_found = Estos vasos no muestran nada malo: cada boquilla está buena con una probabilidad de al menos { $chance }.
tip_most_likely-nothing = La boquilla { $tip } casi no echa nada: lo más probable es { $first } ({ $first_chance }), o { $second } ({ $second_chance }).
    .do = Sin presión. Limpie la boquilla y su malla con cepillo suave o aire, con guantes, nunca con la boca, y recójala otra vez.
tip_most_likely-nothing_sure = La boquilla { $tip } casi no echa nada: lo más probable es { $first } ({ $first_chance }).
    .do = Sin presión. Limpie la boquilla y su malla con cepillo suave o aire, con guantes, nunca con la boca, y recójala otra vez.
tip_most_likely-low = La boquilla { $tip } echa de menos: lo más probable es { $first } ({ $first_chance }), o { $second } ({ $second_chance }).
    .do = Intercambie las boquillas { $tip } y { $other } y recoja las dos: si lo bajo se va con la boquilla, es la boquilla.
tip_most_likely-low_sure = La boquilla { $tip } echa de menos: lo más probable es { $first } ({ $first_chance }).
    .do = Intercambie las boquillas { $tip } y { $other } y recoja las dos: si lo bajo se va con la boquilla, es la boquilla.
tip_most_likely-low_alone = La boquilla { $tip } echa de menos: lo más probable es { $first } ({ $first_chance }), o { $second } ({ $second_chance }).
    .do = Recójala otra vez, y luego límpiela.
tip_most_likely-low_alone_sure = La boquilla { $tip } echa de menos: lo más probable es { $first } ({ $first_chance }).
    .do = Recójala otra vez, y luego límpiela.
tip_most_likely-high = La boquilla { $tip } echa de más: lo más probable es { $first } ({ $first_chance }), o { $second } ({ $second_chance }).
    .do = Vea el tamaño y el color de la boquilla, y recójala otra vez.
tip_most_likely-high_sure = La boquilla { $tip } echa de más: lo más probable es { $first } ({ $first_chance }).
    .do = Vea el tamaño y el color de la boquilla, y recójala otra vez.
tip_most_likely-low_once = La boquilla { $tip } echa de menos: lo más probable es { $first } ({ $first_chance }), o { $second } ({ $second_chance }).
    .do = Recójala otra vez.
tip_most_likely-low_once_sure = La boquilla { $tip } echa de menos: lo más probable es { $first } ({ $first_chance }).
    .do = Recójala otra vez.
tip_most_likely-high_once = La boquilla { $tip } echa de más: lo más probable es { $first } ({ $first_chance }), o { $second } ({ $second_chance }).
    .do = Recójala otra vez.
tip_most_likely-high_once_sure = La boquilla { $tip } echa de más: lo más probable es { $first } ({ $first_chance }).
    .do = Recójala otra vez.
cup_misread = Lo más probable es que un vaso de la boquilla { $tip } se leyó o cronometró mal ({ $chance }). Por sus otros vasos la boquilla está bien; el vaso raro casi no cuenta.
tip_most_likely-odd = La boquilla { $tip } sale rara: lo más probable es { $first } ({ $first_chance }), o { $second } ({ $second_chance }).
    .do = Recójala otra vez.
tip_most_likely-odd_sure = La boquilla { $tip } sale rara: lo más probable es { $first } ({ $first_chance }).
    .do = Recójala otra vez.

## Lo que se leyó además de los vasos

tips_get_pressure-less = Lo más probable es que a las boquillas les llegue { $off } menos presión de la que se leyó ({ $low } a { $high }): el manómetro marca de más, o se pierde presión en el camino.
    .do = Compare el manómetro con uno de confianza; revise mallas, válvulas y mangueras entre el manómetro y el aguilón.
tips_get_pressure-more = Lo más probable es que a las boquillas les llegue { $off } más presión de la que se leyó ({ $low } a { $high }): el manómetro marca de menos.
    .do = Compare el manómetro con uno de confianza, y cámbielo si está mal.
pressure_zero-lost = Unos { $lost } de lo que marca el manómetro no llegan a las boquillas a ninguna presión ({ $low } a { $high }): el manómetro empieza alto, o se los llevan las válvulas antigoteo y las mallas.
pressure_zero-shown = A cualquier presión les llegan a las boquillas unos { $lost } más de lo que marca el manómetro ({ $low } a { $high }): empieza bajo.
set_is_off-high = A la presión que les llega, lo más probable es que las boquillas echen { $off } más que nuevas ({ $low } a { $high }): el juego está gastado parejo, o son boquillas más grandes.
    .do = Vea el tamaño impreso en las boquillas. Si es el correcto, cambie el juego completo.
set_is_off-low = A la presión que les llega, lo más probable es que las boquillas echen { $off } menos que nuevas ({ $low } a { $high }): son boquillas más chicas, o todas tienen sarro o costra.
    .do = Vea el tamaño impreso en las boquillas. Si es el correcto, límpielas todas con cepillo suave, con guantes, nunca con la boca, y recoja otra vez.
boom_parts_in_order = Además de los vasos: el juego de boquillas echa lo que echarían nuevas, y el manómetro marca lo que les llega, hasta donde esto alcanza a decir.
stop_boom_off = Nada hasta que esté prendido: entonces recoja los vasos otra vez.
stop_settled = Nada: estos vasos no dejan nada abierto que valga un minuto.
stop_costs_more = Nada: revisar algo más tomaría más tiempo de lo que vale lo que aclara. Lo que está abierto queda abierto.
check_valves_leak = Las válvulas antigoteo no cierran: hay boquillas que gotean a los cinco segundos de cerrar. Al asperjar eso no cambia nada, por eso los vasos no lo muestran.
    .do = Sin presión y con guantes: limpie la válvula antigoteo de cada uno con cepillo suave o aire, nunca con la boca; cambie lo gastado.
check_valves_leak-tip = Una válvula antigoteo no cierra: la boquilla { $tips } gotea a los cinco segundos de cerrar. Al asperjar eso no cambia nada, por eso los vasos no lo muestran.
    .do = Sin presión y con guantes: limpie la válvula antigoteo de cada uno con cepillo suave o aire, nunca con la boca; cambie lo gastado.
check_valves_leak-tips = Las válvulas antigoteo no cierran: las boquillas { $tips } gotean a los cinco segundos de cerrar. Al asperjar eso no cambia nada, por eso los vasos no lo muestran.
    .do = Sin presión y con guantes: limpie la válvula antigoteo de cada uno con cepillo suave o aire, nunca con la boca; cambie lo gastado.
cups_foam = Los vasos hacen espuma: se toman como leídos con menos seguridad.
    .do = Deje bajar la espuma y lea la línea del agua, o pese los vasos.
tip_swapped-stayed = El lugar { $tip } sigue bajo con otra boquilla puesta: lo más probable es el portaboquilla, su manguera o su válvula antigoteo ({ $chance }).
    .do = Sin presión, con la llave del tanque cerrada y con guantes: abra ese portaboquilla; limpie su malla, su válvula antigoteo y su manguera con cepillo suave o aire, nunca con la boca. Recójala otra vez.
tip_swapped-moved = Lo bajo se fue con la boquilla { $tip }: lo más probable es que sea la boquilla ({ $chance }).
    .do = Sin presión y con guantes: limpie la boquilla y su malla con cepillo suave o aire, nunca con la boca. Si sigue baja, cámbiela.
few_tips = Se recogieron tan pocas boquillas que la falla de una sola parece de todo el aguilón.
    .do = Recoja al menos tres boquillas, mejor todas.
pressure_far_from_rated = La presión, { $pressure }, está lejos de { $rated }, la nominal de la boquilla: lo que se dice de todo el aguilón depende de ella.
    .do = Revise otra vez la presión y su unidad.
second_pressure_near = La segunda presión ({ $second }) está junto a la primera ({ $first }): no dice nada del manómetro ni del desgaste.
    .do = Recoja otra vez unas cuantas boquillas a cerca del doble de la presión, o la mitad, dentro de lo que permiten las boquillas.
pressures_without_rated = Se leyeron presiones, pero no se sabe cuánto echa una boquilla nueva; así no dicen nada aquí.
    .do = Ponga el tamaño de las boquillas, o su flujo nominal, y la presión de la captura.
tip_pressure_no_such_tip = Se leyó la presión en la boquilla { $tip }, pero no se recogió ninguna boquilla con ese número.

## En la línea de comandos

line-most_likely_wrong = Lo más probable
line-look_next = Qué revisar después
check-catch_again = { $tips-count ->
        [one] Recoja una vez más la boquilla { $tips }.
       *[other] Recoja una vez más las boquillas { $tips }.
    }
check-look_at_tip = { $tips-count ->
        [one] Vea el tamaño y el color de la boquilla { $tips }.
       *[other] Vea el tamaño y el color de las boquillas { $tips }.
    }
check-read_pressure = { $section ->
        [0] Lea la presión en una boquilla con un manómetro de confianza.
       *[other] Lea la presión en una boquilla de la sección { $section } y en una de la sección mejor alimentada.
    }
check-open_strainer = Abra el filtro de la sección { $section }: sin presión, con la llave del tanque cerrada y con guantes; cepillo suave o aire, nunca la boca.
check-swap_tips = Intercambie las boquillas { $tips } (sin presión, con guantes) y recoja las dos: si lo bajo se va con la boquilla, es la boquilla; si se queda, es el portaboquilla, su manguera o su válvula antigoteo.
check-second_pressure = Recoja las boquillas { $tips } a otra presión, cerca de la mitad o del doble de esta y dentro de lo que permiten las boquillas, sin cambiar nada más. Dice si es el manómetro o presión perdida lo que tiene fuera a todo el aguilón.
check-new_tip = Ponga una boquilla nueva de la misma clase y tamaño (sin presión, con guantes) y recójala aquí: si está tan fuera como las demás, es la presión; si no, el juego está gastado.
check-worth = { $much ->
        [much] Toma unos { $minutes } min y aclara bastante.
        [some] Toma unos { $minutes } min y puede aclararlo.
       *[little] Toma unos { $minutes } min y aclara poco.
    }

## Errores

no_sections = sections: hace falta una lista de listas
    .do = escriba "sections": [["19 fl oz", "18 fl oz"], ["15 fl oz", null]]
wrong_kind-sections = { $given } no sirve
    .do = escriba las lecturas de cada sección en su propia lista, como [["19 fl oz"], ["15 fl oz"]]
needs_rated = { $field } necesita el flujo nominal de una boquilla nueva
    .do = dé "rated": "0.30 gal/min @ 40 psi", y "pressure" si fue otra
second_other_tips = la segunda presión trae { $given } lecturas, el aguilón { $tips } boquillas
    .do = dé otra vez las mismas secciones, null donde no se recogió a esa presión
wrong_kind-second = { $given } no sirve
    .do = escriba así: { "{" } "pressure": "20 psi", "sections": [["13 fl oz", null]] { "}" }
wrong_kind-tip_pressure = { $given } no sirve
    .do = escriba así: [{ "{" } "tip": 5, "pressure": "38 psi", "marks": "1 psi" { "}" }]
wrong_kind-tip_of_boom = { $given } no es una boquilla de este aguilón
    .do = dé el número de una boquilla, contando desde 1 por la izquierda de quien maneja
wrong_kind-groups = { $given } no sirve
    .do = escriba las boquillas que deben ser distintas como listas de números: [[1, 12]]
wrong_kind-run = { $given } no sirve
    .do = dé el mismo número entero a todos los vasos de un mismo tiempo, por ejemplo 1
wrong_kind-swapped = { $given } no sirve
    .do = escriba así: { "{" } "tips": [7, 8], "readings": ["19 fl oz", "10 fl oz"] { "}" }: dos boquillas, y lo que se recogió después en el lugar de cada una
wrong_kind-seen = { $given } no sirve
    .do = escriba así: { "{" } "tip": 4, "what": "streaky_fan" { "}" }; también even_fan, right_size, wrong_size, drips
wrong_kind-looked = { $given } no sirve
    .do = conteste yes (sí) o no, por ejemplo { "{" } "strainers_clean": "no", "foam": "yes" { "}" }
wrong_kind-counts = { $given } no sirve
    .do = cuente con números enteros: [tips] y debajo sound = 220 y worn = 9
no_cups = no se recogió ningún vaso, así que no hay de qué partir
    .do = agregue [catch] con sus lecturas

## Ayuda

help-diagnose = Qué está mal con más probabilidad, y qué revisar después
help-diagnose-after =
    Ejemplos:
      evenswath diagnose mi-visita.toml
      evenswath diagnose --batch aspersoras.jsonl --json
    El archivo es un archivo de visita, o una sola prueba. Una línea de un archivo de pruebas:
    { "  {" }"rated": "0.30 gal/min @ 40 psi", "pressure": "40 psi", "time": "30 s", "step": "1 fl oz",
       "sections": [["19 fl oz", "18 fl oz"], ["15 fl oz", null]]{ "}" }
    Las secciones van desde la izquierda según va sentado el operador; null donde una boquilla no se
    recogió, una lista donde se recogió otra vez. Una sola prueba en su archivo lleva los mismos
    campos en TOML.
    Además de los vasos una línea puede traer:
      "second": { "{" }"pressure": "80 psi", "sections": [["27 fl oz", null], [null, null]]{ "}" }
      "tip_pressure": [{ "{" }"tip": 2, "pressure": "36 psi", "marks": "1 psi"{ "}" }], "gauge_marks": "2 psi",
      "gauge_rests_at": "3 psi", "new_tip": ["19 fl oz"], "groups": [[1, 12]],
      "swapped": [{ "{" }"tips": [2, 3], "readings": ["19 fl oz", "15 fl oz"]{ "}" }],
      "seen": [{ "{" }"tip": 2, "what": "streaky_fan"{ "}" }], "looked": { "{" }"strainers_clean": "no", "foam": "yes"{ "}" }
    Los vasos de un mismo tiempo llevan su número: { "{" }"reading": "19 fl oz", "run": 1{ "}" }.
    Un archivo de registros cuenta lo que es seguro, de una aspersora todas las boquillas o ninguna:
    { "  [" }tips]      sound (buenas) = 220, worn (gastadas) = 9, partly_plugged (medio tapadas) = 6,
                  plugged (tapadas) = 2, wrong_tip (de otro tamaño) = 3, una por línea
    { "  [" }cups]      right (bien leídos) = 236, misread (mal leídos) = 4
    { "  [" }sections]  free (libres) = 28, restricted (con menos flujo) = 2, shut (cerradas) = 0
    { "  [" }swaps]     tip (era la boquilla) = 6, place (era el lugar) = 1
help-diagnose-file = El archivo de la visita, o un archivo con una sola prueba; - para la entrada estándar
help-diagnose-batch = Un archivo con líneas de JSON, una prueba en cada una; - para la entrada estándar
help-diagnose-records = Lo que resultó antes, sumado a lo que se cree: un archivo de cuentas, o el de una visita con lo que se hizo después; puede ponerse varias veces
