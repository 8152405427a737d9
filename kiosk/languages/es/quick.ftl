### reviewed: no
# The sheet of what can be said.
quick-title = Qué decirle al quiosco
quick-no-lockout = El quiosco guía y anota. No sustituye el bloqueo de energía; mandan el manual de la máquina y la etiqueta del producto.
quick-say-it = Dígalo o púlselo
quick-next = El paso está hecho; siga. Si un paso pide más, la pantalla muestra las palabras.
quick-repeat = Oír otra vez la pregunta.
quick-back = Un paso atrás.
quick-problem = Alto: diga qué pasa y oiga qué hacer.
quick-pause = Dejar el trabajo un rato. Después se piden otra vez las retenciones.
quick-continue = Seguir después de una pausa o un problema.
quick-hand-over = Sigue otra persona. Se piden otra vez las retenciones.
quick-reckon = Calcular una dosis, un tiempo, una fecha o un recuento.
quick-language = Seguir en otro idioma.
quick-help = Oír qué se puede decir en este paso.
quick-end = Terminar antes. El quiosco dice lo que debe saber la próxima persona.
quick-whole = Diga las palabras completas y espere a que el quiosco termine de hablar.
quick-hold = En una retención de seguridad: hágalo, diga sus palabras, responda la pregunta y compruébelo.
quick-number = Diga un número como en la pantalla y responda sí cuando se lo repita bien.
quick-loud = ¿Mucho ruido, o no le entiende dos veces? Pulse el botón. Todo se puede pulsar.
quick-touch = Guantes mojados: pulse una vez y levante. El botón de una retención se mantiene hasta que diga que basta.
