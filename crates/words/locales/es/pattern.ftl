### Qué tan parejo queda el suelo a lo ancho del aguilón: lo que no puede ser, lo que se dice, lo que va en el dibujo.

## Lo que no puede ser

pattern_tips = { $tips } boquillas no cubren el suelo como aguilón; sirve de 2 a 1000
pattern_spacing = una separación de { $spacing } no puede ser; debe ser más que cero
pattern_no_height = una altura de { $height } sobre lo que se aplica no puede ser; sirve más que cero y hasta 5 m
pattern_angle = boquilla { $tip }: ningún abanico tiene { $angle } de ancho; sirve de 10 a 170 grados
pattern_flow = la boquilla { $tip } no puede dar { $flow } veces el flujo de una buena; sirve 0 o más
pattern_into_the_air = boquilla { $tip }: un abanico de { $angle } inclinado { $tilt } echa al aire
pattern_twist = boquilla { $tip }: un abanico girado { $twist } no puede ser; sirve hasta 60 grados
pattern_order = la boquilla { $tip } está en { $place }, pero la anterior está en { $before }; dé los lugares de izquierda a derecha
pattern_all_plugged = todas las boquillas están tapadas, así que no cae nada
pattern_groove = canaletas de { $groove } no pueden ser; sirven de 50 o 100 mm
pattern_groove_wider_than_boom = una canaleta de { $groove } es más ancha que el aguilón, { $boom }; sirven de 50 o 100 mm
pattern_no_overlap = con { $tips } boquillas ninguna parte del aguilón tiene encima todos los abanicos que ahí se traslapan; sirven más boquillas o un aguilón más bajo
pattern_nothing_collected = { $grooves } canaletas que no recogieron nada no son el dibujo de una boquilla; sirven de 1 a 1000 canaletas, algunas mojadas
pattern_collected = la canaleta { $groove } no puede haber recogido { $amount }; sirve 0 o más

## Lo que se dice

pattern_across-within = A { $height } y { $angle } el suelo la recibe pareja, { $which }: las franjas de { $groove } varían { $spread } (límite { $limit }). La más delgada recibe { $thin } menos que el promedio, { $thin_at }; la más cargada { $thick } más, { $thick_at }.
pattern_across-outside = A { $height } y { $angle } el suelo la recibe dispareja, { $which }: las franjas de { $groove } varían { $spread } (límite { $limit }, ninguna franja a más de { $each }). La más delgada recibe { $thin } menos que el promedio, { $thin_at }; la más cargada { $thick } más, { $thick_at }.
    .do = { $help }
pattern_across-open = A { $height } y { $angle } depende de la forma de los abanicos si el suelo la recibe pareja: las franjas de { $groove } varían { $spread } (límite { $limit }, ninguna franja a más de { $each }). La más delgada recibe { $thin } menos que el promedio, { $thin_at }; la más cargada { $thick } más, { $thick_at }.
    .do = { $help }
phrase-pattern_span = de { $low } a { $high }
phrase-pattern_one = { $low }
phrase-pattern_any_shape = sea cual sea la forma de los abanicos
phrase-pattern_this_fan = con este abanico
phrase-pattern_under = bajo la boquilla { $tip }
phrase-pattern_between = entre las boquillas { $left } y { $right }
phrase-pattern_in_many_places = en muchos lugares
phrase-pattern_help_look = Ninguna cosa sola ayudaría mucho. Mire los abanicos mientras echan: los chuecos, inclinados o con rayas no se ven en ningún vaso.
phrase-pattern_help_clean = Lo que más ayudaría es limpiar lo que está tapado (boquilla { $tips }): las franjas variarían entonces { $spread }.
phrase-pattern_help_change = Lo que más ayudaría es cambiar la boquilla { $tip }: las franjas variarían entonces { $spread }.
phrase-pattern_help_aim = Lo que más ayudaría es enderezar boquillas (boquilla { $tips }): las franjas variarían entonces { $spread }.
phrase-pattern_help_move = Lo que más ayudaría es poner las boquillas a su separación: las franjas variarían entonces { $spread }.
phrase-pattern_help_height = Lo que más ayudaría es llevar las boquillas a { $height } sobre lo que se aplica: las franjas variarían entonces { $spread }.
pattern_seldom-angle = Casi ningún aguilón tiene abanicos de { $angle }. ¿Es correcto?
pattern_seldom-height = Casi ningún aguilón se lleva a { $height } sobre lo que se aplica. ¿Es correcto?
pattern_height-suits = Cada abanico mide { $wide } de ancho: un traslape de { $overlap } (100 % es el doble de la separación, todo lugar bajo dos abanicos; se da a { $whole_at }). Las boquillas en orden quedan parejas { $suits }, { $which }; más abajo se pierde menos con el viento.
pattern_height-none = Cada abanico mide { $wide } de ancho: un traslape de { $overlap } (100 % es el doble de la separación, todo lugar bajo dos abanicos; se da a { $whole_at }). Las boquillas en orden no quedan parejas a ninguna altura de { $from } a { $to }, { $which }.
pattern_height-apart = Los abanicos no se juntan: cada uno mide { $wide } de ancho y las boquillas están a { $spacing }. Un traslape de 100 % (cada abanico el doble de la separación, todo lugar bajo dos) se da a { $whole_at }. Las boquillas en orden quedan parejas { $suits }, { $which }.
phrase-pattern_from_to = de { $from } a { $to }
phrase-pattern_from_up = a { $from } y más alto
phrase-pattern_nowhere = a ninguna altura de las probadas
pattern_rests_on-assumed = Esto se calculó, no se midió en el suelo: para formas que pueden tener los abanicos, el ángulo que se dio (baja con la presión) y un aguilón quieto. Su vaivén en el campo agrega de { $low } a { $high } que esto no puede ver.
pattern_rests_on-measured = Esto se calculó, no se midió en el suelo: para el abanico que se recogió y un aguilón quieto. Su vaivén en el campo agrega de { $low } a { $high } que esto no puede ver.
pattern_beside_cups = Los vasos y el suelo muestran fallas distintas: una boquilla gastada casi no se nota en el suelo, porque sus vecinas echan ahí también; la altura, la puntería y una boquilla tapada sí. Ninguna prueba reemplaza a la otra.
pattern_too_short = No se puede decir qué tan pareja la recibe el suelo: con { $tips } boquillas, o como trabajan, en ningún lugar se traslapan todos los abanicos que lo harían en un aguilón más largo.
pattern_without_crooked = Los abanicos chuecos o con rayas que se vieron no están en lo que aquí recibe el suelo: quedará menos parejo.

## En el dibujo

ground-title = Lo que recibe el suelo a lo ancho del aguilón
ground-heading = Lo que recibe el suelo, a { $height } y { $angle }
ground-mean = promedio
ground-doubt = Franjas de suelo bajo el aguilón, cada una llena hasta su dosis; la orilla sombreada depende de la forma de los abanicos. La banda es 20 % arriba o abajo del promedio, para cada franja (usa límites de ISO 16122-2, de memoria).

## Cómo se calculó

working-pattern_across = Qué tan pareja la recibe el suelo a lo ancho del aguilón
formula-groove_sum_of_each_tip_s_flow_the_share_of_its_fan_between_t = franja = suma del flujo de cada boquilla × la parte de su abanico entre las orillas de la franja; variación = desviación estándar (n − 1) ÷ promedio
figure-tips_on_the_boom = boquillas en el aguilón
figure-spacing = separación
figure-height_over_what_is_sprayed = altura sobre lo que se aplica
figure-fan_angle = ángulo del abanico
figure-groove = ancho de la franja
figure-grooves_that_are_judged = franjas que se juzgan
figure-spread_of_triangles = variación con triángulos
figure-spread_of_parabolas = variación con parábolas
figure-spread_of_raised_cosines = variación con cosenos elevados
figure-spread_of_betas = variación con betas
figure-spread_of_cut_off_normals = variación con normales cortadas
figure-spread_of_even_fans = variación con abanicos parejos
figure-spread_of_the_measured_fan = variación con el abanico medido
source-plane_geometry_the_shapes_of_the_fans_are_our_assumption_tri = geometría plana; las formas de los abanicos son supuesto nuestro: triángulo, parábola, coseno elevado, beta, normal cortada
source-plane_geometry_the_fan_as_measured = geometría plana; el abanico como se midió
source-uses_limits_from_iso_16122_2_and_en_13790_1_10_spread_each_g = usa límites de ISO 16122-2 y EN 13790-1 (10 % de variación, cada franja dentro de 20 %), de memoria
