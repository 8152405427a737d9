### Grabar las indicaciones con la voz de alguien del equipo. Borrador hecho a máquina; falta la revisión de un hablante.
### reviewed: no

recording-begin = { $count ->
    [one] Hay que grabar una frase.
   *[other] Hay que grabar { $count } frases.
} Lea cada una en voz alta tal como está escrita, como se la diría a un compañero. La toma termina tras dos segundos de silencio. Todos los que trabajan en este idioma oirán su voz.
recording-ready = Intro: grabar. s: saltar. q: terminar.
recording-speak = Hable ahora.
recording-level = { $decibels } dB por debajo del máximo, { $seconds } s
recording-flaw-silent = No se oyó nada. Vea si el micrófono es el correcto, si está encendido y con volumen.
recording-flaw-quiet = Muy bajo. Acérquese o suba el micrófono.
recording-flaw-clipped = Muy fuerte: los sonidos más fuertes se cortan. Aléjese o baje el micrófono.
recording-flaw-begins-cut = El principio está cortado. Espere a “Hable ahora” y luego empiece.
recording-flaw-ends-cut = El final está cortado. Hable sin pausas largas y después guarde silencio.
recording-flaw-noisy = Aquí hay mucho ruido. Es mejor un lugar más tranquilo.
recording-flaw-short = Es muy corto para esta frase. ¿Era la frase entera?
recording-flaw-long = Es muy largo para esta frase. ¿Era solo esta frase?
recording-keep = Intro: guardar. a: otra vez. s: saltar. q: terminar.
recording-not-kept = Así no se puede guardar. Intro: otra vez. s: saltar. q: terminar.
recording-not-played = Aquí no se puede reproducir. { $why }
recording-no-sound = Ya no llega sonido. ¿Sigue conectado el micrófono?
recording-done = Guardadas: { $kept }. Faltan por grabar: { $left }.
recording-all-there = Todas las frases están grabadas. Para grabarlas de nuevo, añada --again.
recording-recorded = grabada
recording-missing = falta
recording-stale = ya no se dice
recording-standing = Grabadas: { $recorded }. Faltan: { $missing }. Ya no se dicen: { $stale }.
recording-erased = { $n ->
    [one] Se borró una frase grabada.
   *[other] Se borraron { $n } frases grabadas.
}
recording-folder = Las grabaciones en { $folder } no se pueden guardar, leer o borrar ({ $reason }). Permita escribir en esa carpeta y libere espacio.
