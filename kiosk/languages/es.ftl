### Las palabras del quiosco en español. Borrador hecho a máquina; falta la revisión de un hablante.

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
not-written = No se pudo escribir el registro: nada quedó anotado y nada avanzó. Libera espacio o llama a tu supervisor, y prueba otra vez.

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
