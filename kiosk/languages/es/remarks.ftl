### Comentarios hablados sobre un problema. Borrador hecho a máquina.
### reviewed: no

say-remark = dejar un mensaje de voz
say-remark-keep = guárdalo
say-remark-again = grabar de nuevo

remark-speak-now = Habla ahora: ¿qué está mal?
remark-ends = Termina solo cuando callas, o después de { $most }.
remark-done = listo
remark-waits = a punto de grabar
remark-records = grabando
remark-level = nivel
remark-ear-closed = Estoy grabando: nada de lo que digas ahora es una orden.

remark-keep = ¿Guardo este comentario de { $time }?
remark-full = Lo máximo para un comentario es { $most }, así que terminó aquí.
remark-no-speech = No encontré voz en él.
remark-empty = No se grabó nada.
remark-microphone-gone = El micrófono ya no da sonido.
remark-kept = Tu comentario de { $time } está guardado.
remark-not-kept = No se pudo guardar tu comentario. { $why }

remark-left = Comentario hablado de { $who }, { $time }
remark-hash = SHA-256 de su sonido: { $hash }
remark-erased-by = Su sonido se borró el { $at }; lo pidió { $by }.
remark-erased-by-time = Su sonido se borró el { $at }, porque aquí los comentarios no se guardan más tiempo.
remark-play = oír un comentario
remark-stop = dejar de oír
remark-which = ¿Qué comentario?
remark-playing = Suena el comentario de { $who }, { $time }.
remark-cannot-play = No se puede oír. { $why }
remark-is-missing = En la carpeta de datos de este quiosco no hay ningún sonido con esta huella.
remark-is-altered = El sonido de la carpeta de datos no es el que se grabó: su huella es otra.
remark-is-unreadable = El sonido de la carpeta de datos no se puede leer.
remark-no-player = Este quiosco no tiene con qué hacerlo sonar.

remark-sounds-erased = También se borró el sonido de { $n ->
    [one] un comentario hablado
   *[other] { $n } comentarios hablados
}; el registro conserva la huella.

report-spoken-remark = comentario hablado
report-spoken-told = { $who }, { $time }; SHA-256 de su sonido { $hash }
report-spoken-erased-by = sonido borrado { $at }, lo pidió { $by }
report-spoken-erased-by-time = sonido borrado { $at }, los comentarios no se guardan más tiempo

quick-remark = Con un problema: cuéntalo con tus palabras. El supervisor puede oírlo después.
