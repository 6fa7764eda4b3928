### Señas fuera de lo medido: qué se ve, qué lo causa, y la revisión que distingue las causas.

## Lo que se ve

phrase-symptom_no_pressure = no levanta presión
phrase-symptom_needle_jumps = la aguja del manómetro brinca
phrase-symptom_foam = espuma o agua lechosa en el tanque
phrase-symptom_section_weak = una sección débil, toda ella
phrase-symptom_drips = las boquillas gotean todavía { $seconds } s después de cerrar
phrase-symptom_falls_warm = la presión baja al calentarse: más de { $percent } en { $minutes } min
phrase-symptom_falls_fast = la presión baja cuando la bomba gira más rápido
phrase-symptom_too_high = no se puede bajar la presión
phrase-symptom_knocks = la bomba golpea o las mangueras tiemblan
phrase-symptom_weak_engine_off = la bomba de 12 V, débil con el motor apagado

## Lo que pasa, y qué lo arregla

phrase-trouble_suction_air = entra aire por el lado de succión
phrase-remedy_suction_air = Sin presión y con la válvula del tanque cerrada: apriete las abrazaderas del tanque a la bomba, limpie y engrase el empaque de la tapa del filtro, cambie la manguera agrietada.
phrase-trouble_low_water = tan poca agua que la bomba jala aire
phrase-remedy_low_water = Llene el tanque por lo menos a la mitad con agua limpia y pruebe otra vez.
phrase-trouble_suction_strainer = malla de succión tapada, o válvula del tanque a medio cerrar
phrase-remedy_suction_strainer = Motor apagado, sin presión, válvula del tanque cerrada y con guantes: limpie la malla con cepillo suave o aire, nunca con la boca. Después abra toda la válvula del tanque.
phrase-trouble_suction_hose = manguera de succión doblada, blanda o con el forro suelto
phrase-remedy_suction_hose = Motor apagado, sin presión y con la válvula del tanque cerrada: ponga manguera de succión nueva que no se aplaste, tan ancha como la entrada de la bomba y sin dobleces.
phrase-trouble_tank_vent = respiradero de la tapa del tanque tapado
phrase-remedy_tank_vent = Motor apagado y con guantes: quite la tapa y limpie su respiradero. No aplique con la tapa floja.
phrase-trouble_agitation = la agitación se lleva demasiado flujo
phrase-remedy_agitation = Cierre la válvula de agitación hasta que la superficie apenas se mueva, o ponga un chorro de agitación más chico. Algunos productos piden mucha agitación: lo dice la etiqueta.
phrase-trouble_worn_pump = bomba gastada
phrase-remedy_worn_pump = Mande reparar o cambie la bomba; mientras, cierre la agitación hasta donde lo permita la etiqueta y aplique una dosis más baja.
phrase-trouble_pump_valves = válvula o diafragma de la bomba roto o pegado
phrase-remedy_pump_valves = No use más la bomba; que la abra alguien que sepa de bombas y cambie válvulas y diafragmas.
phrase-trouble_slow_pump = la bomba gira muy despacio, o patina su banda
phrase-remedy_slow_pump = Trabaje con la flecha a la velocidad para la que está hecha la bomba, nunca más rápido. Motor apagado y sin llave antes de apretar una banda.
phrase-trouble_regulator_open = regulador o válvula de alivio que se queda abierta
phrase-remedy_regulator_open = Motor apagado, sin presión y con la válvula del tanque cerrada: limpie el asiento de la válvula, revise resorte y empaque, cambie lo gastado.
phrase-trouble_regulator_shut = regulador pegado cerrado, o demasiado apretado
phrase-remedy_regulator_shut = Aflójelo. Si la presión no baja: apague el motor, quite la presión, y después suelte y limpie la válvula.
phrase-trouble_return_line = retorno del regulador doblado o tapado
phrase-remedy_return_line = Motor apagado y sin presión: destape el retorno, tiéndalo sin dobleces y nunca le ponga una válvula.
phrase-trouble_controller = el controlador sube y baja solo
phrase-remedy_controller = Busque en su manual qué tan rápido mueve la válvula y hágalo más lento; revise conectores, medidor de flujo y sensor de velocidad.
phrase-trouble_air_chamber = la cámara de aire perdió su carga, o tiene demasiada
phrase-remedy_air_chamber = Motor apagado y sin presión: cárguela de aire entre { $low } y { $high } de la presión con que aplica. Si no la guarda, su diafragma está roto.
phrase-trouble_gauge = falla el manómetro, o su línea
phrase-remedy_gauge = Sin presión: limpie la línea del manómetro, o ponga un manómetro nuevo.
phrase-trouble_pressure_strainer = malla del lado de presión tapada
phrase-remedy_pressure_strainer = Motor apagado, sin presión, válvula del tanque cerrada y con guantes: límpiela con cepillo suave o aire, nunca con la boca.
phrase-trouble_large_tips = las boquillas piden más de lo que da la bomba: gastadas o muy grandes
phrase-remedy_large_tips = Ponga boquillas nuevas de un tamaño que la bomba pueda alimentar.
phrase-trouble_section_valve = la válvula de sección no abre o no cierra del todo
phrase-remedy_section_valve = Motor apagado, sin presión y con guantes: revise su conector, limpie o cambie la válvula.
phrase-trouble_section_strainer = malla o manguera de la sección tapada o doblada
phrase-remedy_section_strainer = Motor apagado, sin presión, válvula del tanque cerrada y con guantes: limpie la malla con cepillo suave o aire, nunca con la boca; enderece la manguera.
phrase-trouble_check_valves = válvulas antigoteo sucias o gastadas
phrase-remedy_check_valves = Sin presión y con guantes: limpie o cambie las válvulas antigoteo de los portaboquillas que gotean.
phrase-trouble_boom_air = aire atrapado en las puntas del aguilón
phrase-remedy_boom_air = Sin presión y con guantes: abra las puntas del aguilón hasta que salga agua sin aire; acorte las puntas o póngales purga.
phrase-trouble_splashing = el retorno o la agitación cae desde arriba
phrase-remedy_splashing = Motor apagado: lleve la línea hasta el fondo del tanque, con un agujero chico arriba del agua para que no pueda vaciar el tanque.
phrase-trouble_foaming = hace espuma lo que hay en el tanque
phrase-remedy_foaming = Menos agitación y el retorno bajo el agua; antiespumante solo si lo permite la etiqueta. Calibre con agua limpia.
phrase-trouble_voltage = le llega poco voltaje a la bomba
phrase-remedy_voltage = Primero desconecte la batería: limpie bornes, tierra y conectores, ponga cable más grueso; después cargue o cambie la batería.
phrase-trouble_pressure_switch = el interruptor de presión de la bomba corta y arranca
phrase-remedy_pressure_switch = Deje regresar algo de flujo al tanque, o ponga más boquillas o más grandes, para que la bomba no pare; mande ajustar o cambiar el interruptor.
phrase-trouble_hot_motor = el motor de la bomba se calienta y corta
phrase-remedy_hot_motor = Déjelo enfriar, apagado. Menos presión, menos boquillas o más chicas, sombra y aire alrededor del motor.
phrase-trouble_other = otra cosa, o más de una
phrase-remedy_other = Que lo revise un mecánico de aspersoras o su distribuidor.

## Antes de cada revisión

phrase-before_running = Estacionada, freno puesto, fuera de marcha, solo agua limpia; nadie cerca de una flecha que gira.
phrase-before_engine_off = Motor y bomba apagados, sin llave.
phrase-before_pressure_off = Quite la presión hasta que el manómetro marque cero.
phrase-before_tank_valve_shut = Cierre la válvula del tanque.
phrase-before_gloves = Póngase guantes y protección para los ojos.

## Las revisiones: qué se hace, qué se pregunta

phrase-check_tank_low = Mire el tanque desde un lado.
phrase-asks_tank_low = ¿Tiene menos de un cuarto?
phrase-check_line_above_water = Mire por la tapa; no meta la mano.
phrase-asks_line_above_water = ¿Termina arriba del agua alguna línea de retorno o de agitación?
phrase-check_not_water = Piense qué hubo en el tanque, y mire.
phrase-asks_not_water = ¿Hay algo que no sea agua limpia: producto, jabón, limpiador de tanque?
phrase-check_milky_water = Mire el tanque desde un lado mientras trabaja; después pare y espere dos minutos.
phrase-asks_milky_water = ¿Se pone lechosa el agua mientras trabaja, y se aclara parada?
phrase-check_shaft_slow = Lea la velocidad de la toma de fuerza o del motor desde el asiento.
phrase-asks_shaft_slow = ¿Es más lenta que la que pide la bomba?
phrase-check_agitation_shut = Cierre la agitación.
phrase-asks_agitation_shut = ¿Mejora claramente en seguida?
phrase-check_controller_manual = Ponga el controlador en manual.
phrase-asks_controller_manual = ¿Mejora claramente, con la aguja quieta?
phrase-check_turned_faster = Desde el asiento, haga girar la bomba un poco más rápido, nunca más de lo que permite.
phrase-asks_turned_faster = ¿Baja la presión, o deja de subir?
phrase-check_hose_flat = Mientras aplica, mire la manguera de succión desde donde quede lejos de la flecha.
phrase-asks_hose_flat = ¿Está aplastada o doblada?
phrase-check_sections_shut = Cierre todas las secciones desde el asiento, solo un momento.
phrase-asks_sections_shut = ¿Sube bien la presión?
phrase-check_return_flow = Mientras aplica, mire desde un lado el retorno del regulador donde cae al tanque.
phrase-asks_return_flow = ¿Regresa mucha agua por ahí?
phrase-check_in_time = Mire la aguja mientras echan todas las boquillas. Más de { $swing } de vaivén es una falla.
phrase-asks_in_time = ¿Brinca rápido y parejo, al ritmo de la bomba?
phrase-check_engine_on = Arranque el motor, con el freno puesto, y déjelo un minuto.
phrase-asks_engine_on = ¿Se recupera la bomba?
phrase-check_starts_and_stops = Escuche la bomba un minuto mientras aplica.
phrase-asks_starts_and_stops = ¿Arranca y para sola, una y otra vez?
phrase-check_single_tips_drip = Cierre el aguilón y camine por detrás a los { $seconds } s.
phrase-asks_single_tips_drip = ¿Gotean solo unas boquillas, y las de al lado no?
phrase-check_drip_stops = Cierre el aguilón y espere un minuto.
phrase-asks_drip_stops = ¿Deja de gotear solo?
phrase-check_tips_over_new = Recoja tres boquillas por 30 s a la presión que haya.
phrase-asks_tips_over_new = ¿Echan más de { $percent } sobre una nueva a esa presión?
phrase-check_not_to_zero = Abra una sección para que se vaya toda la presión, y mire el manómetro.
phrase-asks_not_to_zero = ¿Se queda la aguja arriba de cero?
phrase-check_lid_loose = Afloje la tapa del tanque. Después póngala a trabajar así, solo con agua limpia y sin nadie cerca de la flecha, y mire la presión desde el asiento.
phrase-asks_lid_loose = ¿Regresa la presión?
phrase-check_motor_cooled = No toque el motor caliente. Espere 20 min y arránquela otra vez.
phrase-asks_motor_cooled = ¿Trabaja como antes?
phrase-check_pump_weeps = Mire toda la bomba por fuera, y su aceite donde tenga mirilla.
phrase-asks_pump_weeps = ¿Gotea o suda, o está lechoso el aceite?
phrase-check_return_kinked = Recorra con la mano el retorno del regulador hasta su punta.
phrase-asks_return_kinked = ¿Está doblado, aplastado o tapado?
phrase-check_valve_sticks = Abra y cierre la sección desde el asiento; un ayudante mira su válvula fuera del rocío.
phrase-asks_valve_sticks = ¿Se queda a medias la válvula, o no se mueve?
phrase-check_volts_low = Con un voltímetro en el conector de la bomba mientras aplica; que las puntas no se toquen, y sin anillos ni herramienta sobre la batería.
phrase-asks_volts_low = ¿Marca menos de { $volts } V?
phrase-check_chamber_charge = Mida la carga de la cámara de aire con un medidor de llantas. Debe estar entre { $low } y { $high } de la presión con que aplica.
phrase-asks_chamber_charge = ¿Está fuera de eso?
phrase-check_suction_strainer_dirty = Abra el filtro de succión; recoja lo que salga.
phrase-asks_suction_strainer_dirty = ¿Está tan sucia la malla que casi no pasa agua?
phrase-check_suction_tightened = Apriete todas las abrazaderas del tanque a la bomba, limpie y engrase el empaque de la tapa del filtro. Abra otra vez la válvula del tanque y póngala a trabajar sin nadie cerca de la flecha.
phrase-asks_suction_tightened = ¿Trabaja claramente más pareja?
phrase-check_section_strainer_dirty = Abra el filtro de la sección y siga su manguera.
phrase-asks_section_strainer_dirty = ¿Está sucia la malla, o doblada la manguera?
phrase-check_check_valve_swapped = Cambie la válvula antigoteo de un portaboquilla que gotea por la de uno que no; después aplique y cierre otra vez.
phrase-asks_check_valve_swapped = ¿Se va el goteo con ella?
phrase-check_pressure_strainer_dirty = Abra el filtro entre la bomba y el aguilón.
phrase-asks_pressure_strainer_dirty = ¿Está tan sucia la malla que casi no pasa agua?
phrase-check_second_gauge = Ponga un manómetro confiable junto al primero. Después póngala a trabajar sin nadie cerca de la flecha y lea los dos.
phrase-asks_second_gauge = ¿Hay más de { $percent } entre los dos?
phrase-check_pump_flow_low = Lleve la salida de la bomba a un tambo y amarre la manguera, o que lo haga su distribuidor. Abra la válvula del tanque, trabaje la bomba a su velocidad sin nadie cerca de la flecha y cuente 30 s.
phrase-asks_pump_flow_low = ¿Da claramente menos de lo que dice su placa?

## Qué tan probable, y dónde termina

phrase-chance_sure = casi seguro
phrase-chance_likely = probable
phrase-chance_maybe = puede ser
phrase-chance_hardly = menos probable
phrase-nothing_more = Nada que se pueda hacer junto a la aspersora las distingue ya: que la revise un mecánico de aspersoras o su distribuidor.

## Lo que se dice de una visita

symptom_open = Se ve: { $seen }. Lo más probable: { $cause } ({ $chance }), o { $second } ({ $second_chance }).
    .do = { $check } { $asks }
symptom_settled = Se ve: { $seen }. Lo más probable: { $cause } ({ $chance }).
    .do = { $remedy }
symptom_stop = Se ve: { $seen }. Lo más probable: { $cause } ({ $chance }), o { $second } ({ $second_chance }).
    .do = { $no_more } { $remedy }

working-symptom = La probabilidad de una causa
formula-chance_common_seen_checked_all_causes = probabilidad = común × visto × revisado ÷ todas las causas
figure-cause = causa
figure-common = común
figure-seen = visto
figure-checked = revisado
figure-all_causes = todas las causas
source-bayes_rule_over_a_table_of_common_practice_from_memory = regla de Bayes sobre una tabla de práctica común, de memoria

## Errores

symptom_none = no se dio ninguna seña, así que no hay de dónde partir
    .do = dé por lo menos una seña que se vea
symptom_two_answers = "{ $given }" está contestada de dos maneras
    .do = contéstela una sola vez
symptom_other_sprayer = "{ $given }" no va con esta clase de aspersora
    .do = quítela, o corrija qué clase de aspersora es
