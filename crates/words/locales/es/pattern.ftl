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
