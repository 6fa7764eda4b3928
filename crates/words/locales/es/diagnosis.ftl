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
    .do = Mantenga pareja la presión, deje correr un rato y recoja otra vez las primeras boquillas.
flow_drifts-rose = Lo más probable es que el flujo haya subido { $by } del primer vaso al último: según el orden de los vasos, no a lo largo del aguilón.
    .do = Mantenga pareja la presión, deje correr un rato y recoja otra vez las primeras boquillas.
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
tip_most_likely-odd = La boquilla { $tip } sale rara: lo más probable es { $first } ({ $first_chance }), o { $second } ({ $second_chance }).
    .do = Recójala otra vez.
tip_most_likely-odd_sure = La boquilla { $tip } sale rara: lo más probable es { $first } ({ $first_chance }).
    .do = Recójala otra vez.

## En la línea de comandos

line-most_likely_wrong = Lo más probable
line-look_next = Qué revisar después
line-nothing_worth_looking_at = Nada: revisar algo más tomaría más tiempo de lo que vale lo que aclara.
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
check-worth = Toma unos { $minutes } min; aclara { $settles } de una respuesta en promedio.

## Errores

no_sections = sections: hace falta una lista de listas
    .do = escriba "sections": [["19 fl oz", "18 fl oz"], ["15 fl oz", null]]
wrong_kind-sections = { $given } no sirve
    .do = escriba las lecturas de cada sección en su propia lista, como [["19 fl oz"], ["15 fl oz"]]
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
help-diagnose-file = El archivo de la visita, o un archivo con una sola prueba; - para la entrada estándar
help-diagnose-batch = Un archivo con líneas de JSON, una prueba en cada una; - para la entrada estándar
