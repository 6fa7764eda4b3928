### El controlador revisado: lo que marca contra vasos, recorrido y aguilón.

controller_flow_doubtful = El controlador marca { $shown }, pero las boquillas juntas dan { $real }. ¿Se leyó en la unidad correcta, con todas abiertas?
controller_flow_right = El controlador marca { $shown }, las boquillas juntas dan { $real }: { $error }, bastante cerca.
controller_flow_off = El controlador marca { $shown }, pero las boquillas juntas dan { $real }: { $error }.
    .do = Multiplique el número de su medidor de flujo (cuentas por volumen) por { $factor }: 100 se vuelven { $hundred }. Después revise otra vez; limpie antes el medidor si nunca se hizo.
controller_flow_open = El controlador marca { $shown }, las boquillas juntas dan { $real }: { $error } (de { $low } a { $high }). Estos vasos no dicen si es demasiado.
    .do = Recoja más boquillas, por más tiempo, en un vaso más fino, y lea entretanto otra vez el controlador.
controller_flow_scaled = { $uncaught } de { $tips } boquillas no se recogieron. Se toma que dan lo que las demás, así que la suma junto al controlador es menos segura.
controller_speed_doubtful = El controlador marca { $shown }, pero se manejó a { $real }. ¿Se leyó en la unidad correcta?
controller_speed_right = El controlador marca { $shown }, se manejó a { $real }: { $error }, bastante cerca.
controller_speed_off = El controlador marca { $shown }, pero se manejó a { $real }: { $error }.
    .do = Multiplique el número de su sensor de velocidad (cuentas por distancia) por { $factor }: 100 se vuelven { $hundred }. Después maneje otra vez.
controller_speed_open = El controlador marca { $shown }, se manejó a { $real }: { $error } (de { $low } a { $high }). Estas pasadas no dicen si es demasiado.
    .do = Maneje un tramo más largo, o más pasadas.
controller_rate = El controlador marca { $shown }; medido son { $real }: { $error }.
controller_widths_count = Hay { $entered } anchos metidos, pero el aguilón tiene { $sections } secciones.
controller_widths_right = Los anchos de sección metidos en el controlador van con boquillas por separación.
controller_width_off = La sección { $section } está metida con { $entered }, pero sus boquillas cubren { $real }: recibe { $error } contra lo que debe.
    .do = Meta { $real }: boquillas por separación.
controller_swath_off = Todos los anchos metidos suman { $entered }, pero el aguilón cubre { $real }: toda la dosis y los acres contados salen { $error }.
    .do = Corrija los anchos y revise otra vez la dosis.
controller_closing_right = Al cerrar las secciones una por una, la presión de las demás sube cuando mucho { $limit }, como se permite.
controller_closing_high = Con la sección { $section } cerrada la presión va de { $before } a { $now }: { $rise }, más de { $limit }.
    .do = Mande ajustar el retorno de la válvula de esa sección, o el regulador, para que las demás guarden su presión.
controller_closing_open = Con la sección { $section } cerrada la presión va de { $before } a { $now }: { $rise }. Este manómetro no dice si es más de { $limit }.
    .do = Léala en un manómetro de marcas más finas.
controller_closing_nothing = Cerrar la sección { $section } no cambia nada en el manómetro: puede estar bien ajustada, o su válvula no cierra.
    .do = Mire desde fuera del rocío si sus boquillas paran en cinco segundos.
controller_closing_stays = Con la sección { $section } abierta otra vez la presión es { $now } en lugar de { $before }: { $rise }, más de { $limit }.
    .do = Revise el regulador y su válvula: se pegan, o el controlador no regresa.
controller_pulsing = Las válvulas pulsaban al { $duty } al recoger los vasos: un vaso guarda entonces solo parte del tiempo, así que de estos vasos no se calcula ninguna dosis.
    .do = Ponga las válvulas siempre abiertas (100 %) y recoja otra vez.
controller_pulsing_unknown = Las válvulas de las boquillas pulsan y nadie anotó cómo estaban al recoger los vasos: de estos vasos no se calcula ninguna dosis.
    .do = Ponga las válvulas siempre abiertas (100 %) y recoja otra vez.
controller_hold = Una aspersora parada no tiene velocidad: un controlador en automático cierra su válvula o sube y baja, y los vasos no dicen nada.
    .do = Póngalo en manual, abra el aguilón y todas las secciones, ponga con su interruptor la presión del campo y no lo toque hasta el último vaso. Si parada no aplica, su manual dice cómo darle una velocidad fija; quítela después.
tip_set_apart = El juego de boquillas { $set } queda aparte: { $mean } por boquilla en promedio, de { $tips } boquillas. Todo lo demás es del juego { $used }.
word-tip_set_unnamed = sin nombre

working-shown_flow = El flujo que marca
working-shown_speed = La velocidad que marca
working-section_closed = Una sección cerrada
formula-error_100_shown_flow_flow_of_all_tips_1 = error = 100 × (flujo que marca ÷ flujo de todas las boquillas − 1)
formula-error_100_shown_speed_speed_driven_1 = error = 100 × (velocidad que marca ÷ velocidad manejada − 1)
formula-rise_100_pressure_then_pressure_before_1 = alza = 100 × (presión entonces ÷ presión antes − 1)
figure-shown_flow = flujo que marca
figure-flow_of_all_tips = flujo de todas las boquillas
figure-shown_speed = velocidad que marca
figure-speed_driven = velocidad manejada
figure-pressure_before = presión antes
figure-pressure_then = presión entonces
source-our_own_limit_widths_are_counted_not_measured = límite nuestro: los anchos se cuentan, no se miden
