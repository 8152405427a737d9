### Las palabras del quiosco en español. Borrador hecho a máquina; falta la revisión de un hablante.
### reviewed: no

language-name = Español

## Unidades, escritas en palabras para que se lean y se digan igual.
unit-litres = { $n ->
    [one] { $n } litro
   *[other] { $n } litros
}
unit-millilitres = { $n ->
    [one] { $n } mililitro
   *[other] { $n } mililitros
}
unit-gallons = { $n ->
    [one] { $n } galón
   *[other] { $n } galones
}
unit-quarts = { $n ->
    [one] { $n } cuarto de galón
   *[other] { $n } cuartos de galón
}
unit-fluid-ounces = { $n ->
    [one] { $n } onza líquida
   *[other] { $n } onzas líquidas
}
unit-grams = { $n ->
    [one] { $n } gramo
   *[other] { $n } gramos
}
unit-seconds = { $n ->
    [one] { $n } segundo
   *[other] { $n } segundos
}
unit-minutes = { $n ->
    [one] { $n } minuto
   *[other] { $n } minutos
}
unit-hours = { $n ->
    [one] { $n } hora
   *[other] { $n } horas
}
unit-celsius = { $n ->
    [one] { $n } grado Celsius
   *[other] { $n } grados Celsius
}
unit-fahrenheit = { $n ->
    [one] { $n } grado Fahrenheit
   *[other] { $n } grados Fahrenheit
}
unit-milligrams-per-litre = { $n } partes por millón
unit-ph = pH { $n }
unit-none = { $n }

## Palabras para decir. Las maneras de decir lo mismo se separan con una barra; se muestra la primera.
say-next = siguiente / paso terminado
say-yes = sí
say-no = no
say-repeat = repite por favor / otra vez
say-back = paso anterior
say-problem = hay un problema / problema
say-pause = pausa / un descanso
say-continue = continuar
say-hand-over = cambio de turno
say-out-of-service = fuera de servicio
say-end = terminar sesión
say-good = está bien / pieza buena
say-replaced = pieza cambiada
say-none-left = no hay repuesto
say-language = otro idioma
say-never-mind = olvídalo
say-number = número { $number }

## Palabras de advertencia.
signal-danger = Peligro
signal-warning = Advertencia
signal-caution = Precaución
signal-notice = Aviso

## Preguntas.
first-again = Primero, confirma esto otra vez.
say-phrase = Cuando sea así, di: { $phrase }.
heard-phrase = Oí: { $phrase }. ¿Sí o no?
heard-number = Oí { $number }. ¿Sí o no?
is-that-so = ¿Es así? ¿Sí o no?
good-or-replaced = ¿Está bien, o lo has cambiado?
try-again = Corrígelo y di siguiente para intentarlo otra vez.
time-up = Se cumplió el tiempo. Di siguiente para seguir.
witness-needed = Una segunda persona debe confirmarlo con su clave.
count-off = Contaste { $number }. La lista de piezas dice { $expected }. Busca la pieza que falta.
reading-off-least = { $number } es muy poco. Debe ser { $least } o más.
reading-off-most = { $number } es demasiado. Debe ser { $most } o menos.
reading-off-least-most = { $number } está fuera del límite. Debe estar entre { $least } y { $most }.
passes-ran-out = Fue la pasada número { $number } y todavía no está bien.
what-is-wrong = ¿Qué pasa?
then-continue = Cuando esté hecho, di continuar.
stop-here = La máquina no puede seguir. Ponla fuera de servicio, o cambia de persona.
held-pause = La sesión está en pausa. Di continuar para seguir. Se preguntará otra vez lo que pudo cambiar.
held-restart = El quiosco se reinició. Di continuar. Se preguntará otra vez lo que pudo cambiar.
held-no-way-in = Este procedimiento no puede seguir de forma segura. Termina la sesión y avisa a tu supervisor.
end-asked = ¿Terminar la sesión ahora? No está completa. ¿Sí o no?
complete = El procedimiento está completo. Gracias.
aborted = La sesión terminó antes de su final. Avisa a la siguiente persona:
out-of-service = La máquina está fuera de servicio. Avisa a la siguiente persona:
who-takes-over = ¿Quién sigue?
which-language = ¿Qué idioma?
press-instead = No estoy seguro de lo que ha dicho. Púlselo en la pantalla.

## Por qué algo no se hizo.
refused-not-now = Eso no se puede hacer ahora.
refused-hold-first = Es una parada de seguridad. Di la frase entera, o pulsa su botón y mantenlo pulsado.
refused-time-left = Todavía no. Faltan { $time }.
refused-number-first = Primero di el número.
refused-absurd = Ese número no puede ser. Debe estar entre { $least } y { $most }.
refused-whole-number = Di un número entero.
refused-look-first = Mira primero la pieza. Di: está bien, pieza cambiada, o no hay repuesto.
refused-reason-first = Di primero qué pasa.
refused-no-such-reason = Ese motivo no se conoce aquí.
refused-must-stop = La máquina no puede seguir. Ponla fuera de servicio.
refused-no-way-in = No hay manera segura de seguir desde aquí. Termina la sesión.
refused-confirm-this-first = Confirma esto primero.
refused-first-step = Este es el primer paso.
refused-same-person = Debe ser otra persona.

## Wall sheet
sheet-kind = Hoja de pared, para cuando no se puede usar el quiosco
sheet-text = versión { $version }, texto { $digest }
sheet-practice = Práctica: una tienda inventada. No trabaje con esta hoja.
sheet-drafted = Este texto es un borrador hecho a máquina. Falta la revisión de un hablante.
sheet-no-lockout = Esta hoja no sustituye el bloqueo de energía. No puede parar la máquina ni pararle a usted.
sheet-in-order = Haga todos los pasos en este orden. Márquelos al terminarlos.
sheet-stop-at-holds = En una parada de seguridad, deténgase. Siga solo cuando esté confirmada y probada.
sheet-after-break = Después de una pausa o un cambio de persona, confirme otra vez cada parada de seguridad que deba seguir siendo cierta. Lávese otra vez las manos.
sheet-machine = Máquina
sheet-name = Nombre
sheet-date = Fecha
sheet-begun = Comienzo
sheet-ended = Fin
sheet-signature = Firma
sheet-supervisor = Supervisor
sheet-second-person = Segunda persona
sheet-done = Hecho
sheet-step = Paso
sheet-write-down = Anote
safety-hold = PARADA DE SEGURIDAD
sheet-say-aloud = Cuando sea así, diga en voz alta: { $phrase }.
sheet-try-out = Compruébelo
sheet-it-is-so = Es así
sheet-least = Debe ser { $least } o más.
sheet-most = Debe ser { $most } o menos.
sheet-least-most = Debe estar entre { $least } y { $most }.
sheet-no-limit = Sin límite; anótelo.
sheet-limit-source = Límite: { $source }
sheet-if-off = Si no está bien
sheet-wait = Tiempo: { $time } o más.
sheet-passes = Pasadas: por lo menos { $least }, a lo más { $most }.
sheet-pass = Pasada
sheet-parts-list = Lista de piezas: { $part }, { $expected }.
sheet-counted = Contadas
sheet-look-at = Revise: { $part }
sheet-good = está bien
sheet-replaced = cambiado
sheet-none-left = no queda repuesto
sheet-problems = Cuando algo está mal
sheet-stops-service = Ponga la máquina fuera de servicio.
sheet-end-of-work = Fin del trabajo
sheet-left-at = ¿Sin terminar? Quedó en el paso
sheet-told-to = Se avisó a

picture-established = entra en vigor
picture-relied-on = se cuenta con ella
picture-ended = termina
picture-by-hold = confirmada en una parada de seguridad
picture-danger = peligro mientras dura
picture-other = otra condición
picture-not-in-force = se cuenta con ella, pero no está en vigor
picture-page = página { $page } de { $pages }

## Screens
standing-in-service = en servicio
standing-being-taken-apart = desarmándose
standing-apart-and-drying = desarmada y secándose
standing-being-put-together = armándose
standing-held = detenida, algo está mal
standing-left-unfinished = quedó sin terminar
standing-out-of-service = fuera de servicio

which-machine = ¿Qué máquina?
which-procedure = ¿Qué quiere hacer?
who-walks = ¿Quién lo hace?
due = Toca: { $procedure }
nothing-due = No toca nada.
not-due = no es lo que sigue normalmente
unfinished = Sin terminar, oprima para seguir: { $procedure }, { $worker }
no-procedure = No hay procedimiento que se pueda hacer en ella.
some-faulty = No todo se puede hacer en ella.
day-or-night = claro u oscuro
what-is-faulty = qué está mal
faults-found = { $n ->
    [one] Una cosa impide hacer un procedimiento.
   *[other] { $n } cosas impiden hacer procedimientos.
}
all-machines = todas las máquinas
more = más
practice = práctica
place = paso { $place } de { $last }
time-left = faltan unos { $n } min
time-left-spread = faltan unos { $n } min (de { $least } a { $most })
held = Detenido
drafted = texto traducido por máquina, aún sin revisar por un hablante

keep-pressed = manténgalo oprimido
kept-too-short = muy corto: manténgalo oprimido, u oprímalo otra vez
kept-enough = ahora suelte
type-number = escribir el número
enter-number = listo
rub-out = borrar
number-missing = Escriba primero el número.
try-to-begin = intentar otra vez

ear-hears = Estoy escuchando
ear-deaf = Estoy hablando, por eso no escucho
ear-off = No puedo oír: { $why }
ear-opening = se está preparando el oído
ear-none = este quiosco no tiene oído
voice-on = voz encendida
voice-off = No puedo hablar: { $why }
voice-opening = se está preparando la voz
voice-none = este quiosco no tiene voz
heard = oí «{ $text }»
heard-nothing = no fue una palabra que conozca
heard-not-allowed = «{ $text }» no es una palabra para este momento
heard-too-short = fue demasiado corto
heard-doubtful = ¿«{ $text }»? No estoy seguro, dígalo otra vez

text-changed = El texto de este procedimiento cambió desde que empezó la sesión. No se puede seguir. Termine la sesión y empiece otra vez.
cannot-take-up = No se puede seguir con esta sesión. { $why }

recorded = Lo que se anotó
took = Tomó { $time }.
confirmed-by-voice = { $n ->
    [one] { $n } confirmación por voz
   *[other] { $n } confirmaciones por voz
}
confirmed-by-touch = { $n ->
    [one] { $n } confirmación por toque
   *[other] { $n } confirmaciones por toque
}
confirmed-by-key = { $n ->
    [one] { $n } confirmación por tecla
   *[other] { $n } confirmaciones por tecla
}
readings = Lecturas
reading-taken = { $what }: { $number }
limit-least = límite: { $least } o más
limit-most = límite: { $most } o menos
limit-least-most = límite: de { $least } a { $most }
limit-none = sin límite
deviations = Desviaciones
no-deviations = Sin desviaciones.
deviation-reading = { $what }: { $number } estuvo fuera de su límite.
deviation-count = { $what }: { $number } contadas, { $expected } en la lista de piezas.
deviation-passes = No quedó bien después de { $number } pasadas: { $what }
deviation-verify = La prueba falló: { $what }
deviation-none-left = No quedan repuestos: { $what }
deviation-problem = Problema: { $what }
left-unsafe = Avise a la siguiente persona
journal-head = Registro { $hash }

## Calcular algo junto al paso.
say-reckon = calcular algo
say-ask-again = repetir la última respuesta
say-back-to-the-step = volver al paso
which-reckoning = ¿Qué quiere calcular?
reckoned = Todo está calculado.
not-one-of = { $given } no es una de las respuestas.
not-a-number = { $given } no es un número. Escriba cifras, como 12,5.
not-believable = No puede ser: debe estar entre { $least } y { $most }.
not-whole = { $given } debe ser un número entero.
cannot-work-out = Esto no se puede calcular.
say-other-reckonings = alguna otra cosa
say-hours = { $n ->
    [one] { $number } hora
   *[other] { $number } horas
}
say-minutes = { $n ->
    [one] { $number } minuto
   *[other] { $number } minutos
}
say-days = { $n ->
    [one] { $number } día
   *[other] { $number } días
}
say-gallons = { $n ->
    [one] { $number } galón
   *[other] { $number } galones
}
say-quarts = { $n ->
    [one] { $number } cuarto
   *[other] { $number } cuartos
}
say-tubes = { $n ->
    [one] { $number } tubo
   *[other] { $number } tubos
}
say-colonies = { $n ->
    [one] { $number } colonia
   *[other] { $number } colonias
}
say-results = { $n ->
    [one] { $number } resultado
   *[other] { $number } resultados
}
say-ph = { $n ->
   *[other] pe hache { $number }
}
# Un día como se dice: día de la semana, día, mes, año.
day-said = { $weekday ->
    [mon] lunes
    [tue] martes
    [wed] miércoles
    [thu] jueves
    [fri] viernes
    [sat] sábado
   *[sun] domingo
} { $day } de { $month ->
    [jan] enero
    [feb] febrero
    [mar] marzo
    [apr] abril
    [may] mayo
    [jun] junio
    [jul] julio
    [aug] agosto
    [sep] septiembre
    [oct] octubre
    [nov] noviembre
   *[dec] diciembre
} de { $year }

# Por qué no se puede calcular.
cannot-label-bad-percent = { $percent } por ciento no puede ser; escriba el porcentaje de la etiqueta, más de 0 y hasta 100.
cannot-label-share-not-percent = { $percent } por ciento es muy poco para un producto sólido; si la parte en la etiqueta es { $percent }, escriba { $mend } por ciento.
cannot-label-bad-gravity = Una densidad relativa de { $gravity } no puede ser; escriba la de la etiqueta, como 1,08.
cannot-label-too-strong = Ninguna solución de cloro tiene { $percent } por ciento comercial; escriba los gramos de cloro disponible por litro, divididos entre 10.
cannot-label-bad-dilution = La dilución de una etiqueta necesita más que cero de producto y de concentración.
cannot-label-bad-packet = Los gramos de un sobre deben ser más que cero.
cannot-dose-bad-strength = Una concentración de { $wanted } no se puede hacer; pida más que cero.
cannot-dose-bad-water = { $water } de agua no se pueden echar; escriba más que cero.
cannot-dose-bad-count = { $count } medidas no se pueden medir; escriba más que cero.
cannot-dose-wanted-over-cap = { $wanted } pasa del tope de { $cap }; pida { $cap } o menos.
cannot-dose-over-cap = { $count } medidas en { $water } dan { $strength }, más del tope de { $cap }; use al menos { $least_water } de agua, una medida más pequeña o sobres más pequeños.
cannot-dose-too-weak = El producto mismo tiene { $strongest } y no puede dar { $wanted }; use un producto más fuerte.
cannot-dose-wrong-measure = Este producto no se puede medir así; use otra medida.
cannot-dose-over-full = { $count } medidas son más que { $water }; use una medida más pequeña.
cannot-solution-bad-strength = Una concentración de { $strength } no puede ser; lea la tira otra vez.
cannot-solution-bad-ph = Un pH de { $ph } no puede ser; está entre 0 y 14, lea la tira otra vez.
cannot-solution-bad-hardness = Una dureza de { $hardness } no puede ser; analice el agua otra vez.
cannot-solution-bad-temperature = { $temperature } no puede ser la temperatura de una solución; dela en Celsius o Fahrenheit y léala otra vez.
cannot-solution-other-label = La etiqueta es de otro desinfectante que la solución; use la etiqueta correcta.
cannot-share-bad-ph = Un pH de { $ph } no puede ser; está entre 0 y 14, lea la tira otra vez.
cannot-share-no-number = { $temperature } no puede ser una temperatura; léala otra vez.
cannot-share-too-cold = { $temperature } está por debajo de { $least } grados Celsius, donde no se sabe nada del equilibrio.
cannot-share-too-warm = { $temperature } está por encima de { $most } grados Celsius, donde no se sabe nada del equilibrio; déjela enfriar.
cannot-growth-outside-range = El modelo vale de { $least } a { $most } grados Celsius, no a { $celsius }; no use ningún modelo.
cannot-growth-not-finite = Un valor de { $value } no es un número; dé uno medido.
cannot-growth-negative = Un valor de { $value } es menos que cero; dé cero o más.
cannot-growth-not-positive = Un valor de { $value } debe ser más que cero.
cannot-growth-no-room = El máximo de gérmenes, 10^{ $most }, debe ser más que al principio, 10^{ $start }.
cannot-growth-absurd-count = 10^{ $value } gérmenes no se pueden contar; el exponente está entre -3 y 12.
cannot-growth-no-growth-there = El modelo no tiene crecimiento a { $celsius }; convierta solo desde una prueba más cálida.
cannot-growth-gap = No se leyó nada durante { $hours }; una suma por encima no dice nada, así que déjelo fuera.
cannot-growth-too-few = Una velocidad necesita recuentos en dos momentos o más; cuente otra vez más tarde.
cannot-log-no-readings = El registro no tiene ninguna lectura; tome una y anótela.
cannot-log-bad-instant = El momento { $at } no es un número de segundos; anote cuándo se leyó.
cannot-log-bad-unit = «{ $unit }» no es una unidad de temperatura; use °C o °F.
cannot-log-absurd = { $temperature } no puede ser la temperatura de la mezcla; revise la sonda y lea otra vez.
cannot-log-bad-gap = El intervalo más largo entre lecturas, { $gap }, debe ser más que cero.
cannot-log-ends-first = El tiempo mirado termina ({ $until }) antes de empezar ({ $since }); cambie los dos.
cannot-log-before-start = El tiempo mirado ({ $now }) está antes de { $start }; revise el reloj.
cannot-log-no-points = No se nombró ningún punto de medida; nombre cada uno que deba estar caliente.
cannot-log-empty-point = Un punto de medida no tiene lectura; léalo o repare su sonda.
cannot-log-bad-time = Un tiempo de { $seconds } no se puede mantener; dé cero o más.
cannot-log-bad-fat = { $percent } por ciento de grasa no puede ser; dé un número de 0 a 100.
cannot-log-bad-z = Una z de { $z } desde { $reference } no tiene sentido; z está entre 1 y 50, la referencia entre -50 y 150.
cannot-log-bad-pairs = Hacen falta dos pares con tiempos distintos de más que cero.
cannot-log-gap = No se leyó nada durante { $seconds }, y no pueden pasar más de { $gap } sin lectura; dé una parte del registro sin ese hueco.
cannot-date-unknown-zone = «{ $zone }» no es una zona horaria conocida aquí; use un nombre como Europe/Berlin, y vea que los datos de zonas horarias (tzdata) estén instalados.
cannot-date-has-zone = { $local } ya lleva una zona horaria; dé la hora como la mostró el reloj de pared.
cannot-date-twice = { $local } ocurrió dos veces esa noche en { $zone }: { $first } y { $second }; diga cuál.
cannot-date-skipped = { $local } nunca llegó en { $zone }: los relojes se adelantaron; se quiere decir { $first } o { $second }, así que diga cuál.
cannot-date-ends-first = { $end } está antes de { $begin }; cambie los dos o corrija el equivocado.
cannot-date-bad-freeze = La congelación del { $frozen } no sigue a { $before }; corrija las fechas.
cannot-date-still-frozen = Se congeló otra vez el { $frozen } sin descongelarse; anote cuándo.
cannot-date-frozen-unopened = Tiene tiempos en el congelador pero ningún día de apertura; anótelo.
cannot-date-absurd-year = El { $day } no puede ser un día en que se usa la mezcla; corrija el año.
cannot-date-no-packages = No hay mezcla en el registro; anote lo que hay en el refrigerador.
cannot-date-bad-instant = { $at } no es un momento; dé los segundos desde 1970.
cannot-plate-bad-dilution = Dilución { $dilution }: escriba 1:100 como 0,01 y sin diluir como 1.
cannot-plate-bad-volume = Volumen { $volume }: escriba los mililitros puestos en la placa, más de 0.
cannot-plate-bad-spread = Extensión { $spread }: escriba la parte de la placa, como 0,25.
cannot-plate-bad-colonies = { $colonies } colonias: escriba 0 o más.
cannot-plate-no-area = Una placa con más de 100 colonias por centímetro cuadrado necesita su área en centímetros cuadrados.
cannot-plate-no-plate = Ninguna placa: dé al menos una.
cannot-plate-no-count = Una placa marcada no tiene recuento.
cannot-tubes-bad-amount = { $amount } en un tubo: escriba los gramos de muestra, más de 0.
cannot-tubes-bad-tubes = { $tubes } tubos: escriba cuántos tubos recibieron esta cantidad, 1 o más.
cannot-tubes-bad-positive = { $positive } de { $tubes } tubos positivos: escriba de 0 a { $tubes }.
cannot-tubes-no-tubes = Ningún tubo: dé al menos una dilución.
cannot-tubes-one-tube = Un solo tubo no da un número: dé al menos dos tubos.
cannot-plan-no-sample = n = { $n }: un plan necesita al menos una muestra.
cannot-plan-bad-c = c = { $c }: escriba de 0 a n, aquí { $n }.
cannot-plan-bad-m = m = { $m }: escriba 0 o más.
cannot-plan-bad-top = M = { $top }: M debe estar por encima de m = { $m }; dos clases no tienen M.
cannot-plan-other-number = { $given } muestras para un plan de { $n }: dé { $n } resultados de un lote.
cannot-result-number-missing = Un resultado de esta clase debe tener un número.
cannot-result-number-too-many = Un resultado de esta clase no debe tener un número.
cannot-result-bad-number = { $value } no es un recuento; escriba 0 o más.
cannot-result-no-result = «{ $text }» no es un resultado; escríbalo como 1200, < 10, > 1100 o spreaders.
cannot-limit-several-limits = { $title } tiene { $count } límites para { $test } en { $product }: deje uno.
cannot-limit-no-limit = { $title } no tiene límite para { $test } en { $product }.
cannot-limit-other-unit = { $title } fija su límite por { $limit_per }, y este resultado es por { $per }.
cannot-limit-no-authority = Ninguna autoridad se llama «{ $called }»; se conocen { $known }.
cannot-limit-no-plan = Ningún plan de muestreo se llama «{ $called }»; se conocen { $known }.

reckon-dose = Desinfectante: cuánto poner
call-dose = cuánto poner
ask-dose-unit = ¿Dará el agua en litros, en galones o en cuartos?
ask-dose-water = ¿Cuánta agua es?
ask-dose-wanted = ¿Qué concentración debe tener, en partes por millón?
pick-in-litres = en litros
pick-in-gallons = en galones
pick-in-quarts = usar cuartos
dose-put = Ponga { $count } sobres en { $water } de agua. Eso da { $strength }.
dose-put-one = Ponga un sobre en { $water } de agua. Eso da { $strength }.
dose-rounded = Lo exacto serían { $exact } sobres. Los sobres enteros añaden { $gained }.
dose-exact = Es exacto, no se redondeó nada.
dose-grams = Por peso, la dosis exacta es { $grams }.
dose-in-range = Está entre { $least } y { $most }. Compruébelo con una tira.
dose-below-range = Es muy débil: debe estar entre { $least } y { $most }.
dose-above-range = Es muy fuerte: debe estar entre { $least } y { $most }.
dose-no-range = Los límites de este lugar no tienen un rango para esto. Siga la etiqueta.
dose-wanted-over-cap = { $wanted } pasa de lo máximo permitido sin enjuagar, { $cap }. Pida eso o menos.
dose-over-cap = Sobres enteros necesarios: { $count }. En { $water } dan { $strength }, más de lo máximo permitido, { $cap }. Use { $needed } de agua o más.

reckon-strength = Desinfectante: ¿es bastante fuerte?
call-strength = bastante fuerte
ask-strength-strip = ¿Qué marca la tira, en partes por millón?
ask-strength-acidity = ¿Qué pH tiene la solución?
ask-strength-temperature = ¿A qué temperatura está la solución?
strength-passes = Es bastante fuerte. Déjela actuar { $time } o más.
strength-passes-at-once = Es bastante fuerte. No hay un tiempo fijado.
strength-label-first = Si la etiqueta del producto pide más, haga lo que dice la etiqueta.
strength-any-ph = El pH no se midió: solo contó lo que el código incluye para todo pH hasta { $most }.
pick-not-measured = nadie lo midió
strength-no-row = No pasa: el código no incluye una solución así.
strength-over-cap = Es demasiado fuerte para usarla sin enjuagar.
strength-off-label = No pasa: la etiqueta del producto no lo permite.
strength-no-contact-time = No pasa: nada dice cuánto tiempo debe actuar.
strength-no-table = Los límites de este lugar, { $profile }, no incluyen soluciones desinfectantes, así que nada puede pasar. Pregunte a su supervisor.
strength-to-mend = Para corregirla:
strength-or = O bien:
strength-test-again = Después mídala otra vez.
strength-ask = Pregunte a su supervisor.
need-stronger = Llévela a { $value } o más.
need-weaker = Agregue agua hasta { $value } o menos.
need-warmer = Caliéntela a { $value } o más.
need-lower-ph = Baje su pH a { $value } o menos.
need-softer-water = Use agua con { $value } de dureza o menos.
need-measure-strength = Mida la concentración.
need-measure-ph = Mida el pH.
need-measure-ph-up-to = Mida el pH. Debe ser { $value } o menos.
need-measure-temperature = Mida la temperatura.
need-measure-hardness = Mida la dureza del agua.
need-read-label = Anote lo que dice la etiqueta del producto.

reckon-free-chlorine = Desinfectante: por qué importa el pH
call-free-chlorine = cloro y acidez
ask-free-chlorine-kind = ¿Es cloro líquido, o polvo o pastillas?
ask-free-chlorine-strip = ¿Qué marca la tira, en partes por millón?
ask-free-chlorine-acidity = ¿Qué pH tiene la solución?
ask-free-chlorine-temperature = ¿A qué temperatura está la solución?
pick-bleach = cloro líquido
pick-powder = polvo o pastillas
free-chlorine-share = Con pH { $ph }, el { $percent } por ciento del cloro libre está en la forma que mata rápido: { $acid } de { $free }.
free-chlorine-at-most = Los polvos retienen parte de su cloro, así que es menos que eso.
free-chlorine-extrapolated = El agua está más caliente que los datos de la fórmula.
free-chlorine-explains = Esto solo explica por qué se mide el pH. Nada pasa ni falla por esto.

reckon-cold = Mezcla: ¿estuvo siempre fría?
call-cold = siguió fría
ask-cold-hours = ¿Hace cuántas horas se midió la mezcla por última vez y estaba fría? Si nadie lo sabe, conteste 72 horas.
ask-cold-now = ¿A qué temperatura está la mezcla ahora?
ask-cold-power = ¿Se fue la luz desde entonces?
ask-cold-plan = ¿Hay un procedimiento escrito para tener mezcla sin frío, y lleva el envase su hora de desecho?
ask-cold-watched = ¿Se midió cada hora desde entonces, y nunca pasó de 70 grados Fahrenheit, 21 Celsius?
pick-stayed-on = siempre hubo luz
pick-was-out = se cortó
pick-not-known = nadie lo sabe
pick-plan-there = tenemos ambas cosas
pick-plan-missing = falta algo
pick-watched = cada hora
pick-not-watched = no tan seguido
cold-kept = La mezcla estaba fría en las dos lecturas, ahora { $now }, y no se fue la luz. Se puede servir.
cold-unwatched = La mezcla está fría ahora: { $now }. Pero nadie la midió durante { $time }: ese tiempo no se conoce; no cuenta como frío.
cold-watch-it = No la sirva antes de que decida el supervisor. Desde ahora mida cada cuatro horas.
cold-left = Se puede servir todavía { $left }. Después tírela.
cold-clock-runs = El tiempo sigue corriendo aunque la mezcla se enfríe otra vez.
cold-throw-away = No sirva esta mezcla. Tírela.
cold-unknown-is-warm = El tiempo que nadie vigiló cuenta como caliente.
cold-ground-no-procedure = No hay un procedimiento escrito a mano.
cold-ground-start-not-cold = Nada demuestra que estaba fría al principio.
cold-ground-unmarked = Su envase no lleva hora de desecho.
cold-ground-marked-too-late = Su hora de desecho es más tarde de lo que permite la regla.
cold-ground-time-is-up = Su tiempo sin frío se acabó.
cold-ground-too-warm = Estuvo más caliente de lo que permite la regla.
cold-ground-not-watched = Faltan lecturas, así que nadie sabe cuánto se calentó.

reckon-growth = Mezcla: cómo crecen los gérmenes
call-growth = crecen gérmenes
ask-growth-temperature = ¿A qué temperatura está la mezcla?
ask-growth-hours = ¿Durante cuántas horas?
growth-listeria = A { $temperature } durante { $time }, la listeria puede multiplicarse por { $times }. En escala logarítmica es { $log }.
growth-spoilers = Los gérmenes que dañan la leche pueden multiplicarse por { $times }. En escala logarítmica es { $log }.
growth-explains = Esto solo explica por qué las reglas son estrictas. La mezcla pasa o falla por las reglas, nunca por esto.

reckon-use-by = Mezcla: su último día
call-use-by = último día
ask-use-by-state = ¿La bolsa está abierta, o sigue cerrada?
ask-use-by-opened = ¿Hace cuántos días se abrió? Hoy es cero.
ask-use-by-frozen = ¿Cuántos días enteros estuvo en el congelador desde entonces? Los días en que entró y salió no cuentan.
ask-use-by-printed = ¿Tiene impresa una fecha de caducidad del fabricante?
ask-use-by-when = ¿Esa fecha está por venir, o ya pasó? Hoy está por venir.
ask-use-by-date = ¿A cuántos días está esa fecha? Hoy es cero.
pick-opened = está abierta
pick-sealed = sigue cerrada
pick-nobody-wrote = abierta y nadie anotó
pick-date-printed = hay una fecha
pick-no-date = sin nada impreso
pick-still-to-come = está por venir
pick-already-over = ya pasó
use-by-last-day = El último día es el { $day }. Días que quedan, con hoy: { $left }.
use-by-then-away = Tírela cuando termine ese día.
use-by-kept-cold = Esto vale solo para mezcla guardada a { $most } o menos.
use-by-throw-away = No use esta bolsa. Tírela.
use-by-frozen-too-long = No pudo estar congelada { $frozen } días enteros si se abrió hace { $opened } días. Dé los días otra vez.
bar-too-warm = Se guardó demasiado caliente, o nadie sabe a cuánto.
bar-undated = Nadie anotó cuándo se abrió, o hasta cuándo dura.
bar-wrongly-dated = Sus fechas no pueden ser correctas.
bar-frozen = Está congelada. Descongélela primero.
bar-days-are-up = Ya estuvo abierta todos sus días.
bar-makers-date-passed = Ya pasó la fecha del fabricante.
bar-mark-passed = Ya pasó el último día de su etiqueta.

reckon-pour-next = Mezcla: qué bolsa sigue
call-pour-next = qué bolsa
ask-pour-next-state = Bolsa { $place }: ¿está abierta, o sigue cerrada?
ask-pour-next-opened = Bolsa { $place }: ¿hace cuántos días se abrió? Hoy es cero.
ask-pour-next-printed = Bolsa { $place }: ¿tiene impresa una fecha de caducidad del fabricante?
ask-pour-next-when = Bolsa { $place }: ¿esa fecha está por venir, o ya pasó? Hoy está por venir.
ask-pour-next-date = Bolsa { $place }: ¿a cuántos días está esa fecha? Hoy es cero.
ask-pour-next-another = La bolsa { $place } está anotada. ¿Hay otra bolsa?
pick-another = una más
pick-no-more = eso es todo
pour-first = Vierta ahora la bolsa { $bag }. Su último día es el { $day }.
pour-then = Después la bolsa { $bag }. Su último día es el { $day }.
pour-not = No use la bolsa { $bag }.
pour-none = Ninguna de estas bolsas se puede verter.

reckon-heat-treatment = Tratamiento térmico: ¿puede servir?
call-heat-treatment = tratamiento de calor
ask-heat-treatment-coldest = ¿Cuál fue el punto más frío de la mezcla mientras se mantuvo caliente?
ask-heat-treatment-minutes = ¿Cuántos minutos se mantuvo así?
ask-heat-treatment-ended = ¿Hace cuántas horas terminó?
ask-heat-treatment-strip = ¿Hace cuántos días se desarmó, lavó y desinfectó la máquina por última vez?
heat-allowed = La máquina puede servir. Se bloquea en { $left } si no se hace nada más.
heat-locked = El servicio está bloqueado.
heat-only-this-pair = Solo vale el par de la regla: { $hot } en cada punto durante { $time } sin interrupción.
heat-lapse-no-heat = No hay registro de un ciclo de calor.
heat-lapse-heat-failed = El ciclo de calor falló: { $coldest } durante { $minutes } en el punto más frío.
heat-lapse-heat-overdue = El último ciclo de calor terminó hace más de un día. Haga uno ahora.
heat-lapse-no-strip = No hay registro de un desarme completo.
heat-lapse-strip-overdue = La máquina lleva más de { $days } días sin desarmarse. Desármela, lávela y desinféctela.

reckon-plate-count = Laboratorio: recuento en placa
call-plate-count = contar placas
ask-plate-count-rule = ¿Con qué regla: FDA o ISO?
ask-plate-count-exponent = Placa { $place }: ¿qué dilución decimal lleva? Uno en cien es número dos, sin diluir es número cero.
ask-plate-count-kind = Placa { $place }: ¿se pudo contar?
ask-plate-count-colonies = Placa { $place }: ¿cuántas colonias tiene?
ask-plate-count-more = La placa { $place } está anotada. ¿Hay otra placa?
pick-fda-rule = regla americana
pick-iso-rule = norma internacional
pick-counted = la conté
pick-too-full = demasiado llena
pick-overgrown = crecimiento extendido
pick-spoiled-plate = accidente de laboratorio
pick-another-plate = otra placa más
plate-exact = { $amount } unidades formadoras de colonias por gramo.
plate-estimated = { $amount } unidades formadoras de colonias por gramo, estimado.
plate-less-than = Menos de { $amount } unidades formadoras de colonias por gramo.
plate-more-than = Más de { $amount } unidades formadoras de colonias por gramo.
plate-spreaders = No hay recuento: el crecimiento extendido cubre demasiado en cada placa. Siembre la muestra otra vez.
plate-laboratory-accident = No hay recuento: ninguna placa sirvió. Siembre la muestra otra vez.
plate-why-out-of-range = Se dejaron fuera las placas que no tienen de { $least } a { $most } colonias.
plate-why-other-dilution = Se dejaron fuera las placas que no son de las dos primeras diluciones seguidas.
plate-why-spreader = Se dejaron fuera las placas con crecimiento extendido en más de un cuarto.
plate-why-accident = Se dejaron fuera las placas perdidas por accidente.
plate-why-all-low = Todas las placas tienen menos de { $least } colonias.
plate-why-no-colonies = Ninguna placa tiene colonias.
plate-why-all-high = Todas las placas tienen más de { $most } colonias.
plate-why-none-in-range = Ninguna placa tiene de { $least } a { $most } colonias.
plate-why-no-number = La placa más llena no se pudo contar.
plate-why-present = Hay colonias, pero muy pocas para estimar.

reckon-mpn = Laboratorio: número más probable
call-mpn = tres tubos
ask-mpn-tenth = De tres tubos con una décima de gramo, ¿cuántos son positivos?
ask-mpn-hundredth = De tres tubos con una centésima de gramo, ¿cuántos son positivos?
ask-mpn-thousandth = De tres tubos con una milésima de gramo, ¿cuántos son positivos?
mpn-exact = El número más probable es { $amount } por gramo.
mpn-less-than = El número más probable es menos de { $amount } por gramo.
mpn-more-than = El número más probable es más de { $amount } por gramo.
mpn-limits = Con 95 por ciento de confianza está entre { $low } y { $high }.
mpn-limit-below = Con 95 por ciento de confianza es { $low } o más.
mpn-improbable = Estos tubos son muy improbables. Sospeche un error y repita el análisis.

reckon-lot = Laboratorio: muestras de un lote
call-lot = muestras del lote
ask-lot-plan = ¿Qué plan de muestreo?
ask-lot-count = Muestra { $place }: ¿cuántas unidades formadoras de colonias por gramo?
ask-lot-found = Muestra { $place }: ¿se encontró?
pick-eu-ice-cream-enterobacteriaceae = gérmenes intestinales
pick-eu-listeria-shelf-life = listeria en la tienda
pick-eu-listeria-at-producer = listeria antes de la venta
pick-eu-ice-cream-salmonella = salmonela en helado
pick-found = se encontró
pick-not-found = no hay ninguna
lot-satisfactory = El lote es satisfactorio.
lot-acceptable = El lote es aceptable. Revise la higiene.
lot-unsatisfactory = El lote no es satisfactorio. Llame a su supervisor.
lot-unknown = Las muestras no lo deciden. Analícelas otra vez.
lot-above = Muestras por encima de { $limit }: { $above } de { $of }. Como máximo pueden ser { $may }.
lot-above-top = Muestras por encima de { $limit }: { $above }. No puede haber ninguna.
lot-presence = Se encontró en { $found } de { $of } muestras. No puede estar en ninguna.
ask-lot-bound = Muestra { $place }: ¿el informe dice menos de cuántas?

reckon-authority = Laboratorio: qué hace la autoridad
call-authority = la autoridad
ask-authority-who = ¿Los límites de quién?
ask-authority-test = ¿Qué análisis?
ask-authority-product = ¿De qué era la muestra?
ask-authority-results = ¿Cuántos últimos resultados hay, en días distintos? Cinco como máximo.
ask-authority-result = Resultado { $place }, primero el más antiguo: ¿cuántas unidades formadoras de colonias?
pick-usda = departamento de agricultura
pick-iowa = iowa
pick-maryland = maryland
pick-north-carolina = carolina del norte
pick-kansas = kansas
pick-connecticut = connecticut
pick-houston = houston
pick-california-frozen-yogurt = california
pick-grade-a-milk = la ordenanza de leche
pick-total-count = recuento total
pick-coliform = coliformes
pick-enterobacteriaceae = gérmenes intestinales
pick-listeria-monocytogenes = listeria
pick-salmonella = salmonela
pick-yeast = levadura
pick-mold = hongos
pick-plain = helado simple
pick-bulky = fruta, nueces o chocolate
pick-sherbet = sorbete
pick-frozen-yogurt = yogur congelado
pick-mix = mezcla sin congelar
pick-milk = leche
authority-clear = Sin aviso: { $over } de los últimos { $of } resultados pasan del límite.
authority-notice = Aviso: { $over } de los últimos { $of } resultados pasan del límite. Tome otra muestra entre 3 y 21 días después del aviso.
authority-action = Medida: { $over } de los últimos { $of } resultados pasan del límite. La autoridad puede parar la venta.
authority-each-clear = El último resultado está dentro del límite.
authority-each-action = Medida: el último resultado pasa del límite, y ninguno puede pasar.
authority-average-kept = El promedio logarítmico de los últimos cuatro resultados está dentro del límite.
authority-average-over = Medida: el promedio logarítmico de los últimos cuatro resultados pasa del límite.
authority-limit-g = El límite es { $limit } por gramo.
authority-limit-ml = El límite es { $limit } por mililitro.
authority-cleared-by = Días de muestra seguidos dentro del límite que lo levantan: { $days }.
authority-rule-not-stated = Esta autoridad no da una regla para resultados seguidos. Se juzgó por dos de los últimos cuatro y tres de los últimos cinco.
ask-authority-bound = Resultado { $place }: ¿el informe dice menos de cuántas?
authority-unknown = No se sabe: { $over } de los últimos { $of } resultados pasan seguro del límite, y otros pueden pasar.
authority-each-unknown = No se sabe: el último resultado puede pasar del límite.
authority-average-unknown = No se sabe: el promedio logarítmico de los últimos cuatro resultados puede pasar del límite.
authority-may-be-action = Puede que ya toque la medida.

reckon-trend = Laboratorio: aviso temprano
call-trend = aviso temprano
ask-trend-test = ¿Qué análisis?
ask-trend-limit = ¿Cuál es el límite, en unidades formadoras de colonias por gramo?
ask-trend-results = ¿Cuántos resultados hay? Ocho como mínimo.
ask-trend-result = Resultado { $place }, primero el más antiguo: ¿cuántas unidades formadoras de colonias?
trend-too-few-results = Hay muy pocos resultados para una tendencia.
trend-steady = Los resultados son estables.
trend-shift = El promedio móvil pasó su límite de control.
trend-rise = Los resultados suben con el tiempo.
trend-early = Ningún resultado pasa todavía de { $limit }: revise ahora la limpieza de este barril.
trend-over = Un resultado ya pasa de { $limit }.
trend-no-chart = Muy pocos recuentos distintos para una gráfica de control.
trend-even-days = Los resultados se tomaron como separados por tiempos iguales.
trend-needs-scipy = Una tendencia necesita la biblioteca scipy, que aquí no está instalada. Instálela con: pip install "brushdown[laboratory]".
ask-trend-bound = Resultado { $place }: ¿el informe dice menos de cuántas?
pick-below-detection = por debajo de lo detectable
results-left-open = Resultados que pueden pasar de { $limit }, porque el informe solo dice menos de un número mayor: { $count }. Pida que los analicen con menos dilución.

## Numbers of the job
typed-nothing = No se ha escrito nada. Escriba un número.
typed-no-number = «{ $text }» no es un número. Escríbalo con cifras, como 38,5.
typed-fraction = «{ $text }» tiene una fracción o una cifra elevada. Escriba un número decimal, como 0,5.
typed-two-readings = «{ $text }» puede leerse como { $first } o como { $second }. Escriba { $first } o { $second }.
typed-mixed = «{ $text }» tiene más de un número. Calcule un solo número con una sola unidad.
typed-no-unit = «{ $text }» no tiene unidad. Añada una de estas: { $units }.
typed-unknown-unit = «{ $unit }» no es una unidad conocida aquí. Use una de estas: { $units }.
typed-ounce = «{ $unit }» es un peso, y se pide un volumen. Escriba fl oz para onzas líquidas.
typed-negative = { $number } es menos que cero. Escriba un número de { $least } a { $most }.
typed-out-of-range = { $number } no puede ser. Tiene que estar entre { $least } y { $most }.
typed-no-time = «{ $text }» no es una hora del día. Escríbala como 21:30.
typed-no-such-time = No existe la hora «{ $text }». La última es 23:59; con am o pm, 12:59.
typed-twelve = «{ $text }» puede ser medianoche o mediodía. Escriba { $first } o { $second }.
typed-half-of-day = «{ $text }» puede ser de la mañana o de la tarde. Escriba { $first } o { $second }.

## Push-to-talk
ear-press-to-talk = No escucho: pulsa { $key } y luego habla
ear-pressed = Estoy escuchando; pulsa { $key } para terminar

refused-press-for-hold = Tus palabras propias no responden a una parada de seguridad. Púlsalo en la pantalla.

## Voice test
voice-test-begin = Dura unos dos minutos. Ponte lo que llevas en el trabajo, colócate donde trabajas y deja las máquinas en marcha.
voice-test-speak = 1. Habla { $seconds } segundos como le hablarías al quiosco. Empieza ahora.
voice-test-level = Tu voz: { $rms } dB, pico { $peak } dB bajo el máximo.
voice-test-silent = 2. Guarda silencio { $seconds } segundos. Empieza ahora.
voice-test-noise = { $n ->
    [0] La sala: { $rms } dB. El ruido no se tomó por voz.
    [one] La sala: { $rms } dB. El ruido se tomó por voz una vez.
   *[other] La sala: { $rms } dB. El ruido se tomó por voz { $n } veces.
}
voice-test-say = 3. Di cada una de estas palabras cuando aparezca.
voice-test-right = entendido
voice-test-wrong = se tomó por «{ $text }»
voice-test-rejected = no se entendió
voice-test-nothing = no se oyó nada
voice-test-count = De { $said }, se entendieron { $right }, no se entendieron { $rejected } y se confundieron { $wrong }.
voice-test-above = Tu voz sonó { $decibels } dB más fuerte que la sala.
voice-test-no-ear = { $why }
voice-test-good = Este lugar sirve para trabajar por voz.
voice-test-bad = Este lugar no sirve para trabajar por voz.

spot-nothing-heard = No se oyó ninguna voz. Comprueba que el micrófono sea el correcto, que esté encendido y con volumen.
spot-no-ear = El quiosco no tiene oído para este idioma. Trabaja con la pantalla, añade un modelo de voz o enséñale tus palabras: kiosk voice teach.
spot-too-loud = El micrófono está demasiado alto: los sonidos fuertes se cortan. Bájalo.
spot-too-faint = Tu voz llega demasiado débil. Acerca el auricular a la boca o sube el micrófono.
spot-nearer = Acerca el micrófono a la boca: lo mejor es a dos dedos, al lado.
spot-other-place = Aquí hay mucho ruido. Prueba otro lugar, o apaga máquinas y música mientras trabajas.
spot-push-to-talk = Si el ruido sigue, usa el pulsador para hablar: en site.toml, bajo [hearing], push_to_talk = true.
spot-wrong-heard = Una palabra se tomó por otra. Lee en la pantalla lo que se oyó antes de decir sí.
spot-own-words = No es el ruido. Habla con tu voz normal, no más despacio; o enséñale tus palabras: kiosk voice teach.
spot-touch = Hasta entonces, trabaja con la pantalla: todos los pasos se pueden hacer en ella.

## Own words
teach-begin = Enséñale al quiosco tus palabras, en un lugar tranquilo. Cada palabra se dice tres veces. Se guarda cómo suena, en números, y ninguna grabación.
teach-word = Tu palabra para «{ $word }»:
teach-too-short = Fue demasiado corto. Dilo otra vez.
teach-too-long = Fue demasiado largo. Di una palabra corta.
teach-too-loud = Fue demasiado fuerte y se cortó. Aleja el micrófono.
teach-too-faint = Fue demasiado débil. Acerca el micrófono.
teach-too-noisy = Aquí hay demasiado ruido. Enseña en un lugar tranquilo.
teach-unlike = Sonó distinto que antes. Dilo igual cada vez.
teach-like-another = Suena como otra de tus palabras. Elige otra palabra.
teach-nothing-heard = No se oyó nada.
teach-given-up = «{ $word }» no se pudo enseñar, así que no se guardó nada. Elige una palabra más larga o un lugar más tranquilo y empieza de nuevo.
teach-tried = De tus { $said } muestras, { $right } se habrían entendido por las demás.
teach-kept = Tus palabras están en { $file }. Son datos de una persona: bórralas con --forget cuando ya no hagan falta.
teach-holds = Con ellas no se responde a una parada de seguridad: allí se dice la frase entera o se pulsa.
teach-forgotten = Las palabras propias de { $worker } se han borrado.
teach-nothing-kept = No había palabras propias de { $worker }.

## Deviations
found-problem-open = { $named ->
    [yes] Problema, sin resolver desde hace { $time }: { $reason }. En: { $what }
   *[other] Problema sin motivo indicado, sin resolver desde hace { $time }. En: { $what }
}
found-problem = { $became ->
    [put-right] { $named ->
        [yes] Problema: { $reason }. El trabajador dijo que estaba resuelto y siguió. En: { $what }
       *[other] Problema sin motivo indicado. El trabajador siguió. En: { $what }
    }
    [out-of-service] { $named ->
        [yes] Problema: { $reason }. La máquina se puso fuera de servicio. En: { $what }
       *[other] Problema sin motivo indicado. La máquina se puso fuera de servicio. En: { $what }
    }
   *[other] { $named ->
        [yes] Problema: { $reason }. La sesión se terminó. En: { $what }
       *[other] Problema sin motivo indicado. La sesión se terminó. En: { $what }
    }
}
found-out-of-service = La máquina se puso fuera de servicio. En: { $what }
found-ended-early = La sesión se terminó antes del final. En: { $what }
found-unfinished = No ha pasado nada desde hace { $time } y la sesión no ha terminado. En: { $what }
found-no-way-in = No había un camino seguro para seguir. En: { $what }
found-hold-touched-after-doubt = El punto de seguridad se pulsó tras palabras dudosas (“{ $heard }”): { $what }
found-hold-read-back-refused = “{ $heard }” se tomó por la frase y el trabajador dijo que no: { $what }
found-try-out-failed = La prueba mostró que no era así: { $what }
found-wait-short = { $clock ->
    [wall] Según el reloj de pared solo pasaron { $waited } de { $needed }. ¿Se cambió la hora? { $what }
   *[other] Solo pasaron { $waited } de { $needed }: { $what }
}
found-wait-cut = Interrumpido tras { $waited } de { $needed }: { $what }
found-reading-off = { $told ->
    [yes] { $what }: { $number } estaba fuera de su límite ({ $limit }). Qué hacer: { $corrective } Después marcó { $then }.
   *[other] { $what }: { $number } estaba fuera de su límite ({ $limit }). No hay acción correctiva indicada. Después marcó { $then }.
}
found-reading-left-off = { $told ->
    [yes] { $what }: { $number } estaba fuera de su límite ({ $limit }) y ninguna lectura posterior lo cumplió. Qué hacer: { $corrective }
   *[other] { $what }: { $number } estaba fuera de su límite ({ $limit }) y ninguna lectura posterior lo cumplió. No hay acción correctiva indicada.
}
found-count-off = { $told ->
    [yes] { $what }: se contaron { $number } ({ $limit }). Qué hacer: { $corrective } Después se contaron { $then }.
   *[other] { $what }: se contaron { $number } ({ $limit }). Después se contaron { $then }.
}
found-count-left-off = { $told ->
    [yes] { $what }: se contaron { $number } ({ $limit }) y no se corrigió. Qué hacer: { $corrective }
   *[other] { $what }: se contaron { $number } ({ $limit }) y no se corrigió.
}
found-passes-ran-out = Todavía no estaba bien tras la pasada { $number }: { $what }
found-too-fast = Confirmado a los { $time }, y se tarda { $least } o más: { $what }
found-none-in-stock = Sin repuesto: { $what }
found-shorter-than-usual = La sesión tardó { $time }. El valor central de { $number } anteriores es { $usual }.
found-longer-than-usual = La sesión tardó { $time }. El valor central de { $number } anteriores es { $usual }.
found-restarted = { $power ->
    [cut] El ordenador arrancó de nuevo; la sesión estuvo parada { $time }. En: { $what }
   *[other] El quiosco arrancó de nuevo; la sesión estuvo parada { $time }. En: { $what }
}
found-back-step = Volvió de “{ $what }” a “{ $to }”.
found-touch-only = Los { $number } pasos se confirmaron con toques, aunque el oído funciona en esta máquina.
found-text-unknown = El texto de { $procedure }, versión { $version } ({ $digest }), ya no está aquí. No se pudo juzgar toda la rapidez, los tiempos y las piezas.
found-session-early = { $machine }, { $day }: { $duty ->
    [close] el trabajo de la noche
    [open] el trabajo de la mañana
   *[other] { $title }
} terminó a las { $at }, mucho antes de su tiempo ({ $begins } a { $until }).
found-session-late = { $machine }, { $day }: { $duty ->
    [close] el trabajo de la noche
    [open] el trabajo de la mañana
    [check] el control del día
   *[other] { $title }
} terminó a las { $at }. Su tiempo era de { $begins } a { $until }.
found-session-not-finished = { $machine }, { $day }: { $duty ->
    [close] el trabajo de la noche
    [open] el trabajo de la mañana
    [check] el control del día
   *[other] { $title }
} se empezó y no se terminó; última actividad { $at }. Su tiempo era de { $begins } a { $until }.
found-session-never-started = { $machine }, { $day }: { $duty ->
    [close] el trabajo de la noche
    [open] el trabajo de la mañana
    [check] el control del día
   *[other] { $title }
} no se empezó. Su tiempo era de { $begins } a { $until }.
found-overdue = { $machine }: { $duty ->
    [sample] una muestra de laboratorio
   *[other] { $title }
}, vencía el { $day } y no está en el registro.
due-close = Trabajo de la noche: { $machine }
due-open = Trabajo de la mañana: { $machine }
due-check = Control del día: { $machine }
due-sample = Muestra de laboratorio: { $machine }
due-other = { $title }: { $machine }
