### Informes en papel.
### reviewed: no

report-title-day = Informe de un día
report-title-month = Informe de un mes
report-title-folder = Carpeta para la inspección
report-practice = Práctica: un local inventado o un ensayo. No es registro de trabajo real.
report-drafted = Las palabras de este informe fueron redactadas por una máquina. Un hablante aún no las ha revisado.

## Lo que se dice de una sesión o de unos días
report-session = Sesión
report-shop = Local
report-machine = Máquina
report-procedure = Procedimiento
report-text = Texto que se siguió
report-version = versión { $version }, resumen { $digest }
report-workers = Trabajadores
report-begun = Comenzada
report-last-event = Último suceso
report-how-ended = Cómo terminó
report-ended = { $how ->
    [complete] completa
    [ended-early] terminada antes del final
    [out-of-service] terminada, máquina fuera de servicio
   *[open] sin terminar
}
report-length = Duración
report-minutes = { $minutes } min
report-usual-length = Duración usual
report-usual = { $minutes } min: la mediana de { $count } sesiones anteriores
report-usual-none = no hay sesión anterior con que comparar
report-confirmed-steps = Pasos confirmados
report-signed = Firmada
report-signed-not = Sin firma de un supervisor.
report-signed-off = Visto bueno de { $person }, { $at }
report-signed-back = Devuelta por { $person }, { $at }
report-left-unsafe = Al terminar había que decir a la siguiente persona: { $what }.
report-text-unknown = El procedimiento ya no tiene el texto que se siguió. No se pueden mostrar sus frases, tipos de paso ni tiempos necesarios.
report-days = Días de trabajo
report-days-mean = Sesiones comenzadas
report-days-begun = desde { $first } hasta { $until }; el día de trabajo cambia a la mitad entre el cierre y la apertura
report-sessions = Sesiones
report-sessions-complete = Sesiones que llegaron a su final
report-sessions-signed = Sesiones con visto bueno
report-sessions-sent-back = Sesiones devueltas
report-due = Lo que tocaba
report-due-in-time = Hecho a su tiempo
report-due-missed = No hecho
report-readings = Lecturas
report-readings-off = Lecturas fuera de su límite
report-deviations = Desviaciones
report-steps = Pasos
report-beside = Además de los pasos
report-signing = Firmas
report-laboratory = Resultados de laboratorio
report-parts = Piezas
report-people = Personas
report-procedures = Procedimientos
report-figures = Gráficos

## Columnas
report-column-rows = Filas
report-column-time = Hora
report-column-day = Día
report-column-step = Paso
report-column-answer = Respuesta y límite
report-column-how = Cómo se respondió
report-column-who = Quién
report-column-what = Qué
report-column-told = Lo registrado
report-column-at-step = En el paso
report-column-weight = Peso
report-column-deviation = Desviación
report-column-why-seen = Por qué debe verse
report-column-source = Fuente de la regla
report-column-session = Sesión
report-column-count = Cuántas
report-column-machine = Máquina
report-column-measured = Medido
report-column-value = Valor
report-column-limit = Límite y su fuente
report-column-kept = Cumplido
report-column-least = Mínimo
report-column-middle = Mediana
report-column-most = Máximo
report-column-off = Fuera de límite
report-column-remark = Observación
report-column-barrel = Máquina y salida
report-column-product = Producto
report-column-analysis = Análisis
report-column-result = Resultado
report-column-laboratory = Laboratorio
report-column-because = Por qué
report-column-standing = Situación
report-column-trend = Tendencia
report-column-due = Tocaba
report-column-its-time = Su tiempo
report-column-became = Qué pasó
report-column-begun = Comenzada
report-column-work = Máquina y trabajo
report-column-length = Minutos (usual)
report-column-ended = Final
report-column-deviations = Desviaciones
report-column-signed = Firmada
report-column-part = Pieza
report-column-found = Hallazgo
report-column-procedures = Procedimientos
report-column-procedure = Procedimiento
report-column-version = Versión
report-column-known = Lo que se sabe
report-column-kind = Tipo de máquina
report-column-signs = Lo que habla en contra
report-column-digest = Resumen del texto (SHA-256)

## Tablas
report-none = nada
report-steps-caption = Cada estancia en un paso, en orden
report-steps-none = no se entró en ningún paso
report-beside-caption = Interrupciones, problemas, relevos, pasos atrás y lo que se calculó
report-signings-caption = Lo que dijeron los supervisores
report-deviations-caption = Desviaciones, la más grave primero; no falta ninguna
report-deviations-none = no se halló ninguna
report-rules-caption = Cuántas veces halló algo cada regla
report-readings-caption = Lo que se midió
report-readings-none = no se midió nada
report-spread-caption = Lo que se midió, por máquina
report-results-caption = Resultados de muestras tomadas en estos días
report-results-none = no se ingresó ninguno
report-struck-caption = Entradas tachadas que ya no cuentan
report-standing-caption = Situación el { $day }
report-due-caption = Todo lo que tocaba
report-due-caption-off = Lo que no se hizo a su tiempo
report-sessions-caption = Sesiones, por orden de comienzo
report-sessions-none = no hubo ninguna sesión
report-parts-caption = Piezas cambiadas, gastadas o mal contadas
report-wear-caption = Piezas de desgaste al { $day }
report-shelf-caption = Piezas de repuesto al { $day }
report-traces = Lo que pudo llevar a los malos resultados
report-traces-more = Solo se rastrean los últimos; { $n } más no.
report-trace-caption = { $day }, { $what }: { $amount }. Se miró: de { $first } a { $last }. Lo más sospechoso primero
report-people-caption = Quién participó
report-procedures-caption = Textos que se siguieron

## Respuestas
report-on-list = lista de piezas: { $expected }
report-remark-erased = el texto de esta observación fue borrado
report-hold-confirmed = confirmado
report-done = hecho
report-passes = { $number } pasadas
report-waited = { $waited } esperados, { $needed } necesarios
report-left = { $how ->
    [went-back] sin respuesta: volvió atrás
    [held] sin respuesta: detenido
    [handed-over] sin respuesta: relevo
    [session-ended] sin respuesta: sesión terminada
   *[still-there] aún sin respuesta
}
report-finding = { $finding ->
    [good] bien
    [replaced] cambiada
    [none-left] gastada, sin repuesto
   *[other] { $other }
}
report-counted = { $counted } contadas, { $expected } en la lista de piezas
report-said = { $said ->
    [phrase] frase
    [read-back-agreed] lectura aceptada
    [read-back-refused] lectura rechazada
    [try-out-failed] la prueba falló
    [number] número
    [out-of-limit] fuera de límite
    [pass] pasada hecha
    [pass-judged] pasada juzgada
    [passes-ran-out] se acabaron las pasadas
    [tried-again] intentado de nuevo
    [time-up] tiempo cumplido
   *[confirmed] confirmado
}
report-channel = { $channel ->
    [touch] toque
    [key] tecla
    [kiosk] por el quiosco
   *[voice] voz
}
report-heard = voz “{ $heard }”, oído { $ear }
report-heard-sure = voz “{ $heard }” ({ $sure }), oído { $ear }
report-asked-again = repetido: { $count }
report-witnessed = testigo: { $person }
report-limit-none = sin límite
report-kept-yes = cumplido
report-kept-no = NO CUMPLIDO
report-kept-unknown = no se puede saber
report-kept-without = no juzgado

## Además de los pasos
report-stood-still = Detenida
report-break = { $because ->
    [pause] pausa
    [problem] problema
    [restart] el quiosco se reinició
   *[no-way-in] sin camino seguro
}, hasta { $until }
report-problem = Problema
report-no-reason = sin motivo dicho
report-became = { $became ->
    [put-right] se dijo que se corrigió
    [ended-early] sesión terminada
    [out-of-service] máquina fuera de servicio
   *[open] sin resolver
}
report-hand-over = Relevo
report-back = Paso atrás
report-worked-out = Calculado
report-stand = { $stand ->
    [not-yet-due] aún no toca
    [due] toca ahora
    [done] hecho a tiempo
    [done-early] hecho demasiado pronto
    [done-late] hecho tarde
    [begun-not-finished] comenzado, sin terminar
    [out-of-service] máquina fuera de servicio
    [not-opened] la máquina no se usó ese día
   *[missed] NO HECHO
}

## Laboratorio
report-head = { $head ->
    [left] salida izquierda
    [right] salida derecha
    [twist] salida mixta
    [single] salida única
   *[other] salida { $head }
}
report-authority = Juzgado según { $title }, { $law }. Fuente: { $source } ({ $tag }).
report-authority-none = No se nombró ninguna autoridad para este informe; por eso no se muestra límite ni situación.
report-state = { $state ->
    [clear] En regla.
    [notice] AVISO.
    [action] MEDIDA.
    [unknown] Desconocida: un resultado es solo una cota.
   *[no-results] Sin resultados.
}
report-over-of = Sobre el límite: { $four } de los últimos { $of_four }, { $five } de los últimos { $of_five }.
report-resample = Muestra adicional: del { $first } al { $last }.
report-owed = Días de muestra que faltan en seis meses: { $days }.
report-average = Media logarítmica de los últimos cuatro: { $low } o más.
report-left-out = Omitido { $result }: { $why }.
report-trend-none = No se puede indicar una tendencia.

## Firmas, y en qué se apoya todo esto
report-meaning = { $what ->
    [signed-off] mirada, y se deja como está
   *[sent-back] devuelta, hay algo que hacer
}
report-signature-means = Qué significa una firma. «Visto bueno»: el supervisor nombrado miró el registro de esa sesión a esa hora y lo deja como está. «Devuelta»: el supervisor quiere que se haga algo. No significa que viera el trabajo ni que la máquina sea segura. El nombre, la hora y el significado están junto a cada firma (las tres partes de 21 CFR 11.50). Se dio con el PIN de esa persona donde el local usa PIN; no es una firma electrónica cualificada.
report-sign-name = Nombre en mayúsculas
report-sign-signature = Firma
report-sign-date = Fecha y hora
report-rests-on = En qué se apoya este informe
report-limits-are = Los límites están como regían y se registraron en su momento, cada uno con su cláusula y su fuente. El manual de la máquina, la etiqueta del producto y la norma local mandan donde difieran.
report-deviations-are = Las desviaciones son lo que unas reglas escritas hallan en el registro; junto a cada una está la fuente de su regla. Donde dice «common practice, no source» no se conoce fuente publicada. Una desviación es un motivo para mirar, no la prueba de una falta.
report-rows-are = La columna «{ $column }» nombra filas del registro del quiosco. Cada valor y cada cuenta de aquí se hizo con esas filas y puede hacerse otra vez con ellas. De una sesión entera se nombran la primera y la última fila.
report-verify = Cómo comprobar el registro
report-kiosk = Quiosco
report-head-row = Última fila del registro
report-head-hash = Resumen de esa fila (SHA-256)
report-head-time = Hora de esa fila (UTC)
report-made = Este informe se hizo
report-verify-how = Pida una copia del archivo journal.db. El resumen de cada fila cubre la fila y el resumen de la anterior. Calcule los resúmenes desde la primera fila hasta la nombrada arriba; el último debe ser el impreso aquí. La página { $page } tiene un programa corto que no necesita nada nuestro; «kiosk log verify» hace lo mismo.
report-verify-not = Resúmenes iguales muestran que las filas son las que dieron este informe. No muestran que fuera verdad lo que un trabajador dijo al quiosco.
report-caution = El quiosco guía y registra. No sustituye al bloqueo de energía, al manual de la máquina, a la etiqueta del producto, a la norma local ni al oficio autorizado.
report-hashes-agree = Los resúmenes de las filas { $first } a { $last } se calcularon otra vez al hacer este informe. Coinciden.
report-hashes-differ = LA FILA { $row } FALTA O FUE ALTERADA después de escribirse. No confíe en este informe; verifique el registro.
report-unread = Sesiones que esta versión del quiosco no puede leer y que aquí faltan: { $sessions }.
