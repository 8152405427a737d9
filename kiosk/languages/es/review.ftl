### reviewed: no
## The supervisor's review
review = revisión
review-back = volver
review-other-ways = otras páginas
review-where-to = ¿Adónde?
review-place = { $first } a { $last }
review-nothing-here = Aquí no hay nada.
review-reading = Se está leyendo el registro.
review-reading-place = Se está leyendo el registro: { $done } de { $of } sesiones. La primera vez tarda; después solo se lee lo nuevo.
review-cannot-read = No se puede abrir la revisión. { $why }
review-cannot-look = No se puede mostrar esta página. { $why }
review-only = solo algunas sesiones
review-laboratory = laboratorio
review-dates = fechas
review-parts = piezas
review-picture = gráfico
review-pictures = gráficos
review-people = personas
review-sessions = sesiones
review-unsigned = sin firmar
review-which-sessions = ¿Qué sesiones?
review-eyes = { $n ->
    [0] Nada requiere su atención. Sesiones, primero la última:
    [one] Una cosa necesita su atención primero.
   *[other] { $n } cosas necesitan su atención primero.
}
review-newest-first = Las sesiones, primero la más nueva:

# A session in a line.
review-deviations = { $n ->
    [0] sin desviaciones
    [one] { $n } desviación
   *[other] { $n } desviaciones
}
review-length = { $time }
review-length-usual = { $time }, lo usual { $usual } (mediana de { $number })
review-is-not-signed = sin firmar
review-is-signed-off = firmada
review-is-sent-back = devuelta
review-ended-open = sin terminar
review-ended-complete = completa
review-ended-ended-early = terminada antes de tiempo
review-ended-out-of-service = máquina puesta fuera de servicio

# A session's account and timeline.
review-from-to = De { $begun } a { $ended }
review-text-here = Procedimiento versión { $version }, texto { $digest }
review-text-gone = Procedimiento versión { $version }, texto { $digest }: este texto ya no está aquí, por eso faltan las frases.
review-was-signed-off = Firmada por { $by }, { $at }.
review-was-sent-back = Devuelta por { $by }, { $at }.
review-remark-erased = (El texto de esta nota se borró.)
review-timeline = Cronología
review-journal-rows = Filas del registro { $first } a { $last }
review-asked-in = Preguntado en { $language }: “{ $text }”
review-waited = Esperó { $waited }, se necesitaban { $needed }
review-witness = Testigo: { $who }
review-asked-again = { $n ->
    [one] La pregunta se repitió una vez.
   *[other] La pregunta se repitió { $n } veces.
}
review-limit-parts = lista de piezas: { $number }
review-passes = { $n ->
    [one] { $n } pasada
   *[other] { $n } pasadas
}
review-sure = { $percent } por ciento seguro
review-not-taken = después de que “{ $heard }” no se aceptara
review-ear = oído: { $ear }
review-after = tras { $time }
review-by-voice = por voz
review-by-touch = por toque
review-by-key = por tecla
review-by-kiosk = por el quiosco
review-said-phrase = frase dicha
review-said-read-back-agreed = lectura confirmada
review-said-read-back-refused = lectura rechazada
review-said-try-out-failed = la prueba falló
review-said-number = número dado
review-said-out-of-limit = no está bien
review-said-pass = pasada hecha
review-said-pass-judged = pasada evaluada
review-said-passes-ran-out = se acabaron las pasadas
review-said-tried-again = intentado otra vez
review-said-time-up = se cumplió el tiempo
review-said-confirmed = confirmado
review-clear-yes = está bien
review-clear-no = todavía no
review-left-confirmed = Confirmado.
review-left-went-back = Volvió un paso atrás.
review-left-held = La sesión quedó detenida aquí.
review-left-handed-over = Entregado aquí.
review-left-session-ended = La sesión se terminó aquí.
review-left-still-there = La sesión sigue aquí.
review-break-pause = En pausa.
review-break-problem = Detenida: se avisó de un problema.
review-break-restart = El quiosco arrancó de nuevo.
review-break-no-way-in = Detenida: no había manera segura de seguir.
review-power-cut = La computadora se encendió de nuevo.
review-until = Hasta { $at }.
review-problem = Problema: { $what } ({ $became })
review-no-reason = no se dijo el motivo
review-became-open = sin resolver
review-became-put-right = resuelto, según el trabajador
review-became-ended-early = la sesión se terminó
review-became-out-of-service = la máquina se puso fuera de servicio
review-handed-over = Entregado de { $before } a { $after }
review-worked-out = Calculado: { $what }

# The supervisor's word.
review-sign-off = firmar
review-send-back = devolver
review-what-remark = Firmar. ¿Con qué nota?
review-what-to-do = Devolver. ¿Qué hay que hacer?
review-remark-right = revisada, nada que hacer
review-remark-talked = hablado con el trabajador
review-remark-machine = revisada la máquina
review-back-again = limpiar otra vez la máquina
review-back-talk = trabajador, venga a verme
review-back-sample = tomar una muestra
review-back-part = cambiar la pieza
review-write = escribirlo
review-take-it = aceptar
review-nothing-written = Escriba algo primero.
review-not-ended = Esta sesión no ha terminado. Se puede devolver, pero no firmar.
review-not-written = No se pudo escribir el registro, así que no se anotó nada. { $why }

# Laboratory.
review-no-results = Todavía no hay resultados de laboratorio.
review-no-result-judged = No se pudo evaluar ningún resultado.
review-results = Resultados, primero el más nuevo
review-left-out = Sin evaluar, esta autoridad no tiene límite para ello: { $result }
review-resample = Tome otra muestra del { $first } al { $last }.
review-samples-owed = { $n ->
    [one] Falta un día de muestra en seis meses.
   *[other] Faltan { $n } días de muestra en seis meses.
}
review-over = sobre el límite
review-may-be-over = puede estar sobre el límite
review-per-g = por gramo
review-per-ml = por mililitro
review-head-left = salida izquierda
review-head-right = salida derecha
review-head-twist = salida mixta
review-head-single = salida única
review-amount-exact = { $amount }
review-amount-estimated = unos { $amount }
review-amount-less-than = menos de { $amount }
review-amount-more-than = más de { $amount }
review-amount-spreaders = crecimiento extendido
review-amount-laboratory-accident = accidente de laboratorio
review-enter-result = anotar un resultado
review-other-authority = otra autoridad
review-trace = qué lo causó
review-nothing-to-trace = Ningún resultado de este cilindro está sobre el límite.
review-trace-lead = Es una pista, no una prueba: el orden viene de pesos sin fuente publicada. Mire, pregunte y tome otra muestra.
review-trace-looked = Revisado: { $begun } a { $ended }.
review-no-session = ninguna sesión
review-no-sign = Nada habla en su contra.
clue-short-contact = contacto demasiado corto
clue-weak-sanitizer = desinfectante débil
clue-warm-mix = mezcla caliente
clue-worn-part = pieza gastada
clue-missed-close = trabajo de la noche sin hacer
clue-late-close = trabajo de la noche tarde
clue-ended-early = terminada antes de tiempo
clue-new-worker = trabajador nuevo
clue-doubtful-hold = punto de seguridad dudoso

review-ask-machine = ¿De qué máquina es la muestra?
review-ask-barrel = ¿De qué salida es la muestra?
review-ask-day = ¿Qué día se tomó? Escríbalo como 2026-11-25.
review-ask-product = ¿De qué era la muestra?
review-ask-analysis = ¿Qué prueba?
review-ask-amount = ¿Qué dice el informe? Escríbalo como 1200, < 10, > 1100, est. 900 o spreaders.
review-ask-per = ¿Por gramo o por mililitro?
review-ask-laboratory = ¿Qué laboratorio?
review-ask-sample = ¿Qué número dio el laboratorio a la muestra?
review-no-sample-number = sin número
review-wrong-day = No es un día hasta hoy. Escríbalo como 2026-11-25.
review-wrong-amount = Se puede leer de dos maneras, o de ninguna. Escríbalo sin signos de millar, como 1200.
review-wrong-laboratory = El nombre es demasiado largo. Acórtelo.
review-wrong-sample = El número es demasiado largo. Acórtelo.
review-is-that-right = ¿Está bien?
review-enter-it = sí, anotar
review-again = no, otra vez
review-this-result = este resultado
review-entered = El resultado está en el registro.
review-known-already = Este resultado ya está en el registro. No se anotó nada.
review-known-otherwise = El registro tiene otro número para esta muestra. Dé el número del laboratorio, o anule la anotación equivocada con: kiosk lab strike.

# Dates, parts and people.
review-overdue = Atrasado
review-due = Toca ahora
review-to-come = Por venir
review-done = Hecho en los últimos días
review-by = hasta { $at }
review-sampled-session = última toma el { $day } en una sesión; su resultado aún no se ingresó
review-sampled-result = última muestra el { $day }: se sabe por el resultado ingresado
review-sampled-both = última toma el { $day } en una sesión; su resultado está ingresado
review-sampled-never = nunca se tomó una muestra
review-stand-not-yet-due = aún no toca
review-stand-due = toca
review-stand-done = hecho
review-stand-done-early = hecho muy temprano
review-stand-done-late = hecho tarde
review-stand-begun-not-finished = empezado, sin terminar
review-stand-missed = no se hizo
review-stand-out-of-service = máquina fuera de servicio
review-stand-not-opened = la máquina no se usó ese día
review-check-rule = El control del día solo cuenta como no hecho si ese día se trabajó con la máquina y no estuvo fuera de servicio.
review-role-worker = trabajador
review-role-trainee = aprendiz
review-role-supervisor = supervisor
review-not-here-any-more = ya no está en la lista
review-no-walk = todavía no ha hecho nada
review-walked = { $n ->
    [one] { $title }: una vez, { $last }
   *[other] { $title }: { $n } veces, primera { $first }, última { $last }
}
review-first-walks = primeras veces, con un supervisor

# Pictures.
review-days = { $n ->
   *[other] últimos { $n } días
}
review-other-days = otro tiempo
