### Lo que más probablemente anda mal, junto al resultado: en la hoja de la aplicación y en papel.

## Lo más probable de una boquilla, en una o dos palabras bajo su vaso

tip_likely-sound = buena
tip_likely-worn = gastada
tip_likely-partly_plugged = medio tapada
tip_likely-plugged = tapada
tip_likely-other_size = otra medida
tip_likely-at_place = portaboquilla
tip_likely-doubtful_cup = vaso dudoso

## Encabezados

likely-head = Lo que más probablemente anda mal
likely-next = Lo que más conviene revisar ahora
likely-or = O si no
likely-stop = No vale la pena revisar más: la próxima revisión tardaría más de lo que vale lo que aclara.
likely-key = aros: cada boquilla vista desde abajo, lo más probable de ella
likely-next_line = Revise ahora: { $what } { $minutes }

## Secciones

likely-section = Sección { $section }
likely-section_shut = Sección { $section }: lo más probable es que esté cerrada
likely-section_loses = Sección { $section }: lo más probable, { $loss } menos
likely-with_chance = { $is }, lo más probable { $chance }

## Revisiones

likely-minutes = Unos { $minutes } min.
likely-how_catch_again = El mismo vaso, el mismo tiempo, la misma presión. Agua limpia; guantes y protección para los ojos puestos.
likely-how_look_at_tip = Primero pare la bomba y quite la presión; guantes puestos. Compare su número y su color con los de la vecina.
likely-how_read_pressure = Bomba parada y sin presión mientras se pone el manómetro, guantes puestos. Luego agua limpia, y nadie junto a la toma de fuerza.
likely-how_open_strainer = Lo que escurra, lejos de pozos y drenajes.
likely-how_swap_tips = Primero pare la bomba y quite la presión, guantes puestos; nunca una boquilla a la boca. El mismo vaso, el mismo tiempo, la misma presión.
likely-how_second_pressure = Agua limpia, guantes y protección para los ojos puestos; nadie junto a la toma de fuerza.
likely-how_new_tip = Primero pare la bomba y quite la presión, guantes puestos; nunca una boquilla a la boca. El mismo vaso, el mismo tiempo, la misma presión.

## Lo que se hizo, para compararlo con la lectura anterior

likely-cleaned = { $count ->
        [one] limpia: recoger otra vez la boquilla { $tips }
       *[other] limpias: recoger otra vez las boquillas { $tips }
    }
likely-new_tips = { $count ->
        [one] boquilla nueva puesta: recoger otra vez la { $tips }
       *[other] boquillas nuevas puestas: recoger otra vez las { $tips }
    }
likely-was = antes
likely-now = ahora { $reading }
likely-swapped = intercambiadas: recoger las boquillas { $tips }
likely-other_pressure = { $count ->
        [one] con otra presión: recoger la boquilla { $tips }
       *[other] con otra presión: recoger las boquillas { $tips }
    }
likely-pressure_at = anotar la presión en la boquilla { $tip }
likely-beside = Lo leído o visto además de los vasos
