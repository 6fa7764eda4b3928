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
place-spacing = separación
place-tips = boquillas
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
read_at-manifold = en el distribuidor
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
    .do = Primero limpie; después recoja otra vez antes de mezclar.
rate_methods_disagree = La captura dice { $catch } y el relleno { $refill }; no coinciden.
    .do = Revise la velocidad, el ancho de trabajo y los galones con que rellenó; uno de ellos está mal. Recorra y rellene otra vez.
rate_on_bands = Esta es la dosis en las bandas, que son { $share } del terreno; en todo el campo es { $crop }. Los acres de un tanque son acres tratados.
rate_of_two_settings = Esta dosis junta un recorrido y una captura que se hicieron con ajustes distintos.
rate_before_repair = La dosis sale de la ronda “{ $round }”; después se recogieron otra vez algunas boquillas.
    .do = Recoja otra vez todo el aguilón para saber cuánto echa ahora.
rate_of_carrier = Con agua echa { $water }; de este líquido, { $density }, echará { $rate }.
product_mixed_for_other_rate = El tanque está mezclado para { $mixed_for }, así que { $name } queda a { $rate }; se quería { $meant }.

## What is told of the wanted rate and the label, with other things to do: tips are plugged, or the rate is from a refill

rate_outside-plugged = La aspersora echa { $rate }: { $deviation } respecto a los { $intended } que se quieren, más de { $limit } de diferencia.
    .do = No mezcle para un aguilón con boquillas tapadas: límpielas primero y recoja otra vez.
rate_cannot_tell-plugged = La aspersora echa { $rate }: { $deviation } respecto a los { $intended } que se quieren. Puede que sea más de { $limit } de diferencia, o puede que no.
    .do = No mezcle para un aguilón con boquillas tapadas: límpielas primero y recoja otra vez.
product_under_least-plugged = { $name } queda a { $rate }, por debajo del mínimo de la etiqueta, { $least }. Quizá no haga su trabajo.
    .do = No mezcle para un aguilón con boquillas tapadas: límpielas primero y recoja otra vez.
product_may_be_under_least-plugged = { $name } queda a { $rate }, tan cerca del mínimo de la etiqueta, { $least }, que puede estar por debajo.
    .do = No mezcle para un aguilón con boquillas tapadas: límpielas primero y recoja otra vez.
product_may_be_over_label-plugged = { $name } queda a { $rate }, tan cerca del máximo de la etiqueta, { $most }, que puede pasarse. La etiqueta es la ley.
    .do = No mezcle para un aguilón con boquillas tapadas: límpielas primero y recoja otra vez.
carrier_under_label-plugged = Alto: la aspersora echa { $rate }. La etiqueta pide por lo menos { $least }; la etiqueta es la ley.
    .do = No mezcle para un aguilón con boquillas tapadas: límpielas primero y recoja otra vez.
carrier_may_be_under_label-plugged = La aspersora echa { $rate }, tan cerca del mínimo de la etiqueta, { $least }, que puede estar por debajo.
    .do = No mezcle para un aguilón con boquillas tapadas: límpielas primero y recoja otra vez.

rate_cannot_tell-refilled = La aspersora echa { $rate }: { $deviation } respecto a los { $intended } que se quieren. Puede que sea más de { $limit } de diferencia, o puede que no.
    .do = Mezcle el tanque para { $rate }; gaste más antes de rellenar otra vez para saberlo mejor.
product_may_be_over_label-refilled = { $name } queda a { $rate }, tan cerca del máximo de la etiqueta, { $most }, que puede pasarse. La etiqueta es la ley.
    .do = Para estar seguro, calcule la carga para { $mix_for }; o gaste más antes de rellenar otra vez para saberlo mejor.
product_may_be_over_label-refilled_weaker = { $name } queda a { $rate }, tan cerca del máximo de la etiqueta, { $most }, que puede pasarse. La etiqueta es la ley.
    .do = Para estar seguro, hágalo un poco más débil; o gaste más antes de rellenar otra vez para saberlo mejor.
product_may_be_under_least-refilled = { $name } queda a { $rate }, tan cerca del mínimo de la etiqueta, { $least }, que puede estar por debajo.
    .do = Mezcle el tanque para la dosis que la aspersora echa de verdad; gaste más antes de rellenar otra vez para saberlo mejor.
carrier_may_be_under_label-refilled = La aspersora echa { $rate }, tan cerca del mínimo de la etiqueta, { $least }, que puede estar por debajo.
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

