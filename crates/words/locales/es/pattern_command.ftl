### La orden `evenswath pattern`.

## Ayuda

help-pattern = Qué tan parejo queda el suelo a lo ancho del aguilón, según altura, ángulo y boquillas
help-pattern-after =
    Ejemplos:
      evenswath pattern --angle 110 --height "20 in" --spacing "20 in" --tips 13
      evenswath pattern --angle 80 --height "14 in" --spacing "20 in" --tips 13 --plugged 4
      evenswath pattern --angle 110 --height "50 cm" --spacing "50 cm" --tips 13 --flow "7=115 %" \
          --tilt "5=10 deg" --units metric
      evenswath pattern --spacing "50 cm" --tips 13 --height "50 cm" --angle 110 \
          --caught 0 2 9 19 28 33 35 35 33 28 19 9 2 0 --caught-groove "10 cm" --caught-height "50 cm"
      evenswath pattern my-visit.toml --json
    Lo que recibe el suelo se calcula para cinco formas que puede tener un abanico, y se dice de la
    menor a la mayor: nadie sabe la forma de un abanico que no se recogió en canaletas. El ángulo
    baja con la presión; dé el de la presión del trabajo. El límite es 10 % de variación y 20 % para
    cada canaleta (ISO 16122-2 y EN 13790-1, de memoria); aquí nada se midió sobre una mesa, así que
    nada cumple con una norma. Un traslape de 100 % quiere decir que cada abanico mide el doble de la
    separación: todo lugar queda bajo dos. En el campo el aguilón se mueve; eso agrega de 3.5 a 5.2 %
    que esto no puede ver (Ooms y otros, 2003). La prueba de captura y el reparto muestran fallas
    distintas; ninguno reemplaza al otro.
help-pattern-file = El archivo de una visita con fan_angle y boom_height; - para la entrada estándar
help-pattern-angle = Qué tan anchos echan los abanicos a la presión del trabajo; un número solo son grados
value-ANGLE = ÁNGULO
help-pattern-height = A qué altura van las boquillas sobre lo que se aplica
help-pattern-spacing = A qué separación deben estar las boquillas
help-pattern-tips = Cuántas boquillas hay
help-pattern-marks = Lo que marca una sola cinta en cada boquilla, desde la izquierda, si no están parejas
help-pattern-plugged = Boquillas tapadas, como 1,12
help-pattern-flow = El flujo de una boquilla sobre el de una buena, como "7=115 %"
value-TIP_PERCENT = BOQUILLA=PORCENTAJE
help-pattern-tilt = Qué tanto se inclina una boquilla a la derecha, como "5=10 deg"; a la izquierda con menos
value-TIP_ANGLE = BOQUILLA=ÁNGULO
help-pattern-offset = Qué tanto se corre el abanico de una boquilla a la derecha, como "5=2 in"; a la izquierda con menos
value-TIP_LENGTH = BOQUILLA=LONGITUD
help-pattern-hangs = Una boquilla que va a otra altura, como "12=16 in"
help-pattern-twist = Qué tanto se giran los abanicos respecto al aguilón para que no choquen
help-pattern-groove = Ancho de una canaleta: 100 mm para aspersoras, 50 mm para ver más de cerca
help-pattern-shape = Una forma en vez de cinco: triangle, parabola, raised-cosine, beta, truncated-normal, even
value-SHAPE = FORMA
help-pattern-caught = Lo que dio una boquilla en cada canaleta desde la izquierda, en vez de formas
value-AMOUNT = CANTIDAD
help-pattern-caught_groove = Ancho de esas canaletas
help-pattern-caught_height = Altura a la que se recogió
help-pattern-overlap = Traslape que se quiere de los abanicos, para saber su altura

## La respuesta

line-pattern = { $fans ->
        [one] De franja a franja varía { $high }: { $verdict }
       *[other] De franja a franja varía de { $low } a { $high }: { $verdict }
    }
line-pattern_fan = { $spread }, la más delgada { $thin }, la más cargada { $thick }
line-pattern_overlap = Un traslape de { $overlap } se da a { $height }.
fan-triangle = triángulo
fan-parabola = parábola
fan-raised-cosine = coseno elevado
fan-beta = forma beta
fan-truncated-normal = normal cortada
fan-even = abanico parejo
fan-measured = como se recogió

## Errores

no_pattern = esta visita no tiene reparto a lo ancho que calcular
    .do = dé fan_angle en [sprayer] y boom_height en [setting], para un aguilón que moja todo el ancho
pattern_shape = { $given } no es una forma conocida aquí
    .do = formas que sirven: { $known }
pattern_of_tip = "{ $given }" no dice de qué boquilla
    .do = escriba el número de la boquilla, = y el valor, como "5=10 deg"
pattern_no_such_tip = no hay boquilla { $number }; el aguilón tiene { $tips }, contadas desde la izquierda desde 1
