### Qué falla en la voz, el oído y el registro, y qué habla en contra de una sesión. Borrador hecho a máquina.
### reviewed: no

## El altavoz y la voz.
sound-no-library = no hay biblioteca de sonido: instala libasound2 o libpulse0
speaker-none = no hay dispositivo de sonido ({ $reason })
speaker-not-started = el dispositivo de sonido no arrancó ({ $reason })
speaker-takes-nothing = el dispositivo de sonido no aceptó sonido en { $seconds } s
speaker-no-way = no hay cómo reproducir sonido: instala alsa-utils, que trae 'aplay'
speaker-no-player = no se pudo iniciar 'aplay': { $reason }
speaker-failed = falló el dispositivo de sonido ({ $reason })
speaker-stopped = el altavoz dejó de aceptar sonido
prompt-unreadable = no se puede leer la frase grabada en { $file }: { $reason }
prompts-not-kept = no se puede usar la carpeta de frases { $folder } ({ $reason }); permite escribir en ella
prompt-not-kept = no se puede guardar la frase en { $folder }: { $reason }; libera espacio
speech-no-voice = no hay voz para el idioma '{ $language }'; hay voces para { $known }
speech-no-letter = el texto { $text } está vacío: no tiene letras ni cifras que decir
speech-too-long = el texto { $text }... tiene { $length } caracteres; divídelo, { $most } es lo más que se dice de una vez
speech-ended-twice = el proceso de la voz terminó dos veces con este texto: { $reason }
speech-no-answer = el proceso de la voz no respondió en { $seconds } s; se terminó
speech-not-started = no se pudo iniciar el proceso de la voz: { $reason }
speech-install-again = { $reason }; instala el paquete otra vez
speech-failed = falló el proceso de la voz: { $reason }

## El micrófono y el oído.
microphone-no-library = aquí no está instalada la biblioteca de sonido miniaudio
microphone-none = no hay micrófono ({ $reason })
microphone-no-answer = el sistema de sonido no respondió en { $seconds } segundos
microphone-ended = se acabó el sonido: ¿sigue conectado el micrófono?
ear-stopped = el oído se detuvo: { $reason }
ear-failed-once = el oído { $ear } falló con lo que se dijo: { $reason }
ear-not-whole = { $more ->
    [0] { $model } en { $place } no está entero: falta { $missing }. Para arreglarlo: { $mend }
   *[other] { $model } en { $place } no está entero: falta { $missing } y { $more } más. Para arreglarlo: { $mend }
}
ear-mend-remove = quita esa carpeta y luego { $mend }
ear-needs-package = { $model } necesita un paquete que no está ({ $package }). Para arreglarlo: { $mend }
ear-not-loaded = no se puede cargar { $model } ({ $reason }). Para arreglarlo: { $mend }
ear-none-listed = no hay modelo de habla para '{ $language }' en models.toml
ear-none-installed = no hay modelo de habla instalado para '{ $language }'. Para arreglarlo: { $mend }
ear-mend-or = { $one } o { $other }
notice-and = { $one }; { $other }
own-words-unreadable = no se pueden leer las palabras propias en { $file } ({ $reason }); enséñalas otra vez con '{ $command }'

## El registro.
not-recorded = No se pudo escribir el registro, así que no se anotó nada y nada avanzó.
see-the-screen = La pantalla dice qué hacer.
journal-full = El disco está lleno: { $file }. Libera espacio y prueba otra vez.
journal-two-kiosks = Dos quioscos trabajan en { $folder }. Cierra uno y prueba otra vez.
journal-moved = Alguien movió { $file } o { $log } mientras estaba abierto. Ponlo donde estaba y prueba otra vez.
journal-swallowed = { $file }: lo que se escribió no está. Llama a tu supervisor: hay que seguir con una copia de seguridad.
journal-read-only = No se permite escribir en { $file }: { $reason }. Llama a tu supervisor: hay que permitirlo.
journal-busy = Otro programa tiene ocupado { $file }. Ciérralo y prueba otra vez.
journal-damaged = { $file } está dañado: { $reason }. Llama a tu supervisor: hay que seguir con una copia de seguridad.
journal-failed = { $file }: { $reason }. Llama a tu supervisor y prueba otra vez.
row-unknown = no se puede leer una fila del tipo '{ $kind }': { $reason }
session-without-beginning = la sesión { $session } no tiene comienzo en el registro
result-unreadable = no se puede leer el resultado { $result }: { $reason }
file-failed = { $file }: { $reason }

## Las claves.
pins-unusable = no se puede usar { $file }: { $why }. Para arreglarlo: permite leerlo, o quítalo de ahí y pon las claves de nuevo con 'kiosk people pin ID'.
pins-damaged = la entrada de '{ $person }' está dañada
pins-no-list = no es una lista de resúmenes
pins-not-written = no se puede escribir { $file }: { $reason }

## Lo que habla en contra de una sesión.
sign-waited = se esperó { $waited } de { $needed }
sign-filled = el contacto empezó { $after } después de leer la tira: muy pronto para haber llenado y mojado todo ({ $least })
sign-weak = la tira marcó { $value }, y lo mínimo es { $least }
sign-weak-mended = la tira marcó { $value }, y lo mínimo es { $least }; { $after } después, { $then }
sign-weak-too-soon = la tira marcó { $value }, y lo mínimo es { $least }; { $after } después, { $then }: muy pronto para haber mezclado de nuevo ({ $needed })
sign-warm = la mezcla estaba a { $value }
sign-warm-cooled = la mezcla estaba a { $value }, y { $after } después a { $then }
sign-warm-too-soon = la mezcla estaba a { $value }, y { $after } después a { $then }: ninguna tolva enfría tan rápido ({ $needed })
sign-worn = { $part }: se halló gastado { $days ->
    [one] { $days } día
   *[other] { $days } días
} antes, sin repuesto, y no se cambió desde entonces
sign-new = sesión { $nth } de un trabajador nuevo ({ $who })
sign-late = el trabajo de la noche empezó { $hours } después del cierre
sign-early = { $ended ->
    [ended-early] se terminó antes de tiempo
    [out-of-service] la máquina quedó fuera de servicio
   *[open] no ha terminado
}; último paso: { $step }
sign-doubts = paradas de seguridad con respuestas dudosas: { $holds }
sign-missed = esa noche no hay trabajo de cierre anotado en esta máquina, aunque quedó lista para servir (o no se usó el quiosco)
