### La preparación: lo que se pregunta una vez a un sitio. Borrador hecho a máquina.
### reviewed: no

setup = Preparación
setup-place = { $n } de { $all }
setup-back = volver
setup-stop = parar, seguir luego
setup-done = listo
setup-take = tomarlo
setup-take-off = quitar
setup-go-on = seguir
setup-resumed = Sigue donde se dejó. No se perdió nada.
setup-left-aside = El archivo del sitio cambió desde entonces. Las respuestas aún sin escribir se dejan de lado.
setup-not-kept = La respuesta no se pudo anotar ({ $why }). Se guarda mientras esta pantalla siga abierta.
setup-not-answered = aún sin respuesta
setup-left = { $n ->
    [one] Falta una pregunta.
   *[other] Faltan { $n } preguntas.
}
setup-ask-overview = Estas son las respuestas. Pulse una para cambiarla.
setup-write = está bien, escribirlo
setup-written = El sitio está escrito.
setup-leave = a las máquinas
setup-wrong = { $n ->
    [one] Antes hay que arreglar una cosa. No se escribió nada.
   *[other] Antes hay que arreglar { $n } cosas. No se escribió nada.
}
setup-changed-meanwhile = Alguien cambió site.toml mientras tanto. No se escribió nada encima. Pare aquí y empiece otra vez desde ese archivo.
setup-checking = Se revisan los tipos de máquina propios de esta tienda. Tarda un momento.

setup-about-language = Idioma de la preparación
setup-about-practice = Real o práctica
setup-about-name = Nombre del local
setup-about-time-zone = Zona horaria
setup-about-opens = Abre
setup-about-closes = Cierra
setup-about-closed-days = Días cerrados
setup-about-limits = Límites
setup-about-machines = Máquinas
setup-about-thermometer = Termómetro
setup-about-sink = Fregadero
setup-about-product = Desinfectante
setup-about-chlorine = Cloro disponible
setup-about-packet = Sobre
setup-about-strength = Concentración
setup-about-rinse = Enjuague
setup-about-languages = Idiomas del equipo
setup-about-people = Personas
setup-about-pin = Clave
setup-about-sound = Sonido
setup-about-isolation = Corte de la corriente
setup-about-label-rinse = Enjuague

setup-ask-language = ¿En qué idioma quiere responder?
setup-note-language = La pantalla de máquinas también empieza en este idioma. Después cada persona tiene el suyo.
setup-ask-practice = ¿Es un local real, o es para practicar?
setup-real = un local real
setup-real-is = Lo que se confirma es el registro del trabajo real.
setup-practice-is = Cada sesión queda marcada como práctica. No es un registro de trabajo real.
setup-ask-name = ¿Cómo se llama el local?
setup-ask-time-zone = ¿En qué zona horaria está el local?
setup-note-time-zone = La correcta muestra la hora que es ahora.
setup-ask-city = ¿Qué ciudad tiene la misma hora?
setup-note-city = Tome la más cercana que muestre la hora que es ahora.
setup-ask-city-letter = ¿Con qué letra empieza la ciudad?
setup-zone-now = ahora { $time }
setup-zone-america = América
setup-zone-europe = Europa
setup-zone-asia = Asia
setup-zone-africa = África
setup-zone-australia = Australia
setup-zone-pacific = Pacífico
setup-zone-atlantic = Atlántico
setup-zone-indian = Océano Índico
setup-ask-opens = ¿A qué hora abre el local?
setup-note-opens = Cuatro cifras, como 0930 para las 9:30 de la mañana.
setup-ask-closes = ¿A qué hora cierra el local?
setup-note-closes = Cuatro cifras, como 2130 para las 9:30 de la noche.
setup-no-time = { $text } no es una hora. Escriba cuatro cifras, como 0930 o 2130.
setup-ask-closed-days = ¿Qué días no abre el local?
setup-note-closed-days = Pulse un día para cambiarlo. En un día cerrado no toca nada.
setup-is-closed = cerrado
setup-is-open = abierto
setup-add-day = una fecha de cada año
setup-no-day-closed = abre todos los días
setup-never-open = El local debe abrir al menos un día de la semana.
setup-ask-month = ¿En qué mes está el día cerrado?
setup-ask-day = ¿Qué día de { $month }?
setup-no-day = { $month } no tiene día { $text }.
setup-date = { $day } de { $month }
setup-weekday = { $day ->
    [monday] lunes
    [tuesday] martes
    [wednesday] miércoles
    [thursday] jueves
    [friday] viernes
    [saturday] sábado
   *[sunday] domingo
}
setup-month = { $month ->
    [m1] enero
    [m2] febrero
    [m3] marzo
    [m4] abril
    [m5] mayo
    [m6] junio
    [m7] julio
    [m8] agosto
    [m9] septiembre
    [m10] octubre
    [m11] noviembre
   *[m12] diciembre
}

setup-ask-limits = ¿Con qué límites se juzgan las lecturas?
setup-note-limits = Pregunte a la autoridad que inspecciona este local. La norma local va primero.
setup-limit-mix-temperature = temperatura de la mezcla
setup-limit-sanitizer-strength = concentración del desinfectante
setup-limit-sanitizer-temperature = temperatura del desinfectante
setup-limit-contact-time = tiempo de contacto
setup-limit-wash-temperature = agua de lavado
setup-limit-hand-wash-time = lavado de manos
setup-limit-line = { $what }: { $bounds }
setup-limit-silent = no dice nada de: { $names }
setup-limit-unwalkable = con ellos no se pueden hacer { $n } de { $all } procedimientos
setup-least = al menos { $least }
setup-most = como máximo { $most }
setup-bounds = de { $least } a { $most }

setup-ask-machines = ¿Qué máquinas hay?
setup-note-machines = Pulse una para cambiarla, o agregue otra.
setup-add-machine = agregar una máquina
setup-ask-kind = ¿Qué tipo de máquina es?
setup-note-kind = Mire cómo baja la mezcla de la tolva. Los tipos son inventados; el manual de la máquina va primero.
setup-kind-is = { $hoppers ->
    [one] una tolva
   *[other] { $hoppers } tolvas
}, { $parts } piezas
setup-kind-own = propio de esta tienda: { $kind }
setup-kind-spoilt = No se puede usar hasta corregirlo; kiosk check lo dice todo. { $why }
setup-kind-gone = { $who }: su tipo de máquina, { $kind }, no está aquí. Cambie el tipo o quite la máquina.
setup-ask-machine-name = ¿Cómo se llama la máquina en el local?
setup-note-machine-name = Que nadie la confunda con otra: por ejemplo, por el lugar donde está.
setup-ask-option = { $who }: { $option }
setup-ask-machine = { $who }: ¿qué se cambia?
setup-change-name = nombre
setup-change-kind = tipo de máquina
setup-change-language = idioma
setup-change-role = función
setup-take-off-machine = Sus sesiones quedan en el registro.
setup-amounts = cantidades y tiempos
setup-ask-amounts = { $who }: ¿están bien estas cantidades y tiempos?
setup-note-amounts = Son los de un tipo inventado. Compare cada uno con el manual de la máquina y las etiquetas, y pulse uno para cambiarlo.
setup-amounts-right = están bien
setup-ask-amount = { $what }: ¿cuánto?
setup-option-isolation-plug = enchufe
setup-option-isolation-plug-is = Tiene enchufe. Quien trabaja lo saca y lo tiene a la vista.
setup-option-isolation-lock = candado
setup-option-isolation-lock-is = Tiene conexión fija. Quien trabaja abre el interruptor y pone su propio candado.
setup-setting-hand-wash-time = lavarse las manos
setup-setting-flush-volume = agua para enjuagar
setup-setting-cleaner-volume = solución limpiadora
setup-setting-circulate-time = actúa la limpiadora
setup-setting-soak-volume = agua de remojo
setup-setting-soak-time = remojo de piezas
setup-setting-sanitizer-volume = solución desinfectante
setup-setting-contact-time = actúa el desinfectante
setup-setting-prime-volume = mezcla para cebar
setup-setting-freeze-down-time = congelar

setup-ask-thermometer = ¿En qué marca el termómetro?
setup-option-thermometer-celsius = Celsius
setup-option-thermometer-celsius-is = La mezcla fría está cerca de 4.
setup-option-thermometer-fahrenheit = Fahrenheit
setup-option-thermometer-fahrenheit-is = La mezcla fría está cerca de 40.
setup-ask-sink = ¿Cuántos compartimientos tiene el fregadero?
setup-option-sink-three = tres
setup-option-sink-three-is = Lavar, enjuagar y desinfectar tienen cada uno el suyo.
setup-option-sink-two = dos
setup-option-sink-two-is = Las piezas se enjuagan con agua corriente en el de lavado, ya vacío.

setup-ask-product = ¿Cómo se llama el desinfectante en su etiqueta?
setup-note-product = El quiosco calcula la dosis de un cloro en polvo o en pastillas, en sobres de un solo tamaño. Tome ahora el producto en la mano: las respuestas siguientes se leen en su etiqueta.
setup-ask-chlorine = ¿Cuánto cloro disponible, en por ciento?
setup-note-chlorine = Léalo en la etiqueta. Puede decir: cloro disponible. No adivine, ni use la cifra de otro producto.
setup-no-percent = { $text } no es un por ciento. Escriba lo que dice la etiqueta, más de 0 y hasta 100.
setup-ask-packet = ¿Cuántos gramos pesa un sobre?
setup-note-packet = Léalo en la etiqueta. Si son pastillas, es el peso de una.
setup-no-grams = { $text } gramos no puede ser. Escriba más de 0 y hasta 1000.
setup-ask-strength = ¿Qué concentración debe tener la solución?
setup-note-strength = En partes por millón. Léala en la etiqueta: la de superficies que tocan alimentos, sin enjuague.
setup-strength-off = Los límites elegidos piden { $bounds } ({ $clause }). Mire otra vez la etiqueta.
setup-ask-dose = Quien trabaja oirá esto. ¿Coincide con las instrucciones de la etiqueta?
setup-ask-no-dose = Con estas cifras no se puede calcular la dosis. Mire otra vez la etiqueta.
setup-dose-right = coincide con la etiqueta
setup-figures-again = escribir las cifras otra vez
setup-ask-rinse = ¿La etiqueta pide enjuagar después de desinfectar?
setup-note-rinse = Léalo en la etiqueta.
setup-option-label-rinse-no = sin enjuague
setup-option-label-rinse-no-is = Las piezas se escurren del desinfectante.
setup-option-label-rinse-yes = con enjuague
setup-option-label-rinse-yes-is = Las piezas se enjuagan con agua potable limpia.

setup-ask-languages = ¿Qué idiomas habla el equipo?
setup-note-languages = Pulse un idioma para ponerlo o quitarlo.
setup-texts-checked = revisado por un hablante
setup-texts-drafted = borrador hecho a máquina, aún sin revisar por un hablante
setup-by-voice = con voz y con toque
setup-by-touch = con toque: aquí no hay modelo de habla
setup-no-language = Elija al menos un idioma.
setup-language-spoken = Alguien de la lista lo habla. Cambie primero a esa persona.
setup-ask-people = ¿Quién trabaja en las máquinas?
setup-note-people = Pulse un nombre para cambiarlo, o agregue a alguien. Un supervisor mira los registros y acompaña a los aprendices.
setup-add-person = agregar a alguien
setup-ask-person-name = ¿Cómo se llama esta persona?
setup-note-person-name = Está en la pantalla y en los informes. El registro mismo no guarda nombres.
setup-ask-person-language = ¿Qué idioma habla { $who }?
setup-ask-person-role = ¿Qué puede hacer { $who }?
setup-ask-person = { $who }: ¿qué se cambia?
setup-role-worker = Hace solo todos los procedimientos.
setup-role-trainee = Las primeras veces trabaja con un supervisor al lado.
setup-role-supervisor = Trabaja, mira los registros, los firma y acompaña a los aprendices.
setup-take-off-person = Sus sesiones quedan. Lo guardado junto al registro se borra con: kiosk people erase { $person }
setup-no-supervisor = Nadie es supervisor: nadie puede mirar ni firmar los registros. Agregue uno, o pulse listo otra vez.
setup-trainee-alone = Hay un aprendiz y ningún supervisor que lo acompañe. Agregue uno, o dé a alguien esa función.

setup-note-keyboard = Escriba en un teclado, o pulse un grupo de letras y luego la letra. Otras escrituras necesitan un teclado.
setup-key-space = espacio
setup-key-capital = mayúscula
setup-key-small = minúscula
setup-key-others = otras letras
setup-to-the-keys = a las teclas
setup-nothing-typed = Aún no se escribió nada.

setup-ask-pin = { $who } necesita una clave para mirar los registros y acompañar a otros. ¿Está aquí ahora?
setup-pin-now = sí, ponerla ahora
setup-pin-later = luego
setup-pin-later-is = con: kiosk setup
setup-pin-is = poner la clave de alguien
setup-sound-is = probar altavoz y micrófono
setup-sound-begin = El quiosco dice una frase. Después escucha. Póngase donde trabaja y deje las máquinas en marcha.
setup-sound-start = probar
setup-sound-skip = dejarlo
setup-sound-on = seguir
setup-sound-again = probar otra vez
setup-sound-speaking = Escuche.
setup-sound-sentence = Soy el quiosco. Digo cada paso y espero.
setup-sound-spoken = ¿Oyó bien la frase?
setup-sound-yes = sí
setup-sound-no = no
setup-sound-voice-good = El altavoz suena bastante fuerte.
setup-sound-voice-bad = Suba el altavoz, o conecte otro. Todo lo que se dice está también en la pantalla.
setup-sound-no-voice = Aquí no se puede decir nada ({ $why }). Todo lo que se diría está en la pantalla.
setup-sound-listening = Se prueba el micrófono.
setup-sound-heard = Este es el resultado.
setup-sound-silent = Guarde silencio un momento.
setup-sound-say-yes = Ahora diga: { $phrase }
setup-sound-understood = Se entendió.
setup-sound-not-heard = No se entendió. Llegó esto: “{ $text }”.
setup-sound-nothing = No se oyó nada.
setup-sound-ended = El micrófono dejó de dar sonido. ¿Sigue conectado?
setup-sound-no-ear = El quiosco no tiene oído para este idioma ({ $text }).
setup-sound-no-microphone = Aquí no se puede oír nada ({ $why }). Se trabaja con toque y con teclas.
