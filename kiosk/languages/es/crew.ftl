### reviewed: no
# Lo que dice la línea bajo las pantallas mientras una noche inventada pasa sola.
crew-evening = Una noche inventada, que pasa sola: { $who } cierra una máquina que no existe. Ctrl+Q la termina.
crew-says = { $who } dice: «{ $phrase }»
crew-presses = { $who } toca: «{ $phrase }»
crew-next-passes-no-hold = Esto es una parada de seguridad. { $who }, con cansancio, dice la palabra de siempre: aquí no cuenta.
crew-short-press-passes-no-hold = Un toque corto tampoco pasa una parada de seguridad.
crew-read-back = El quiosco dice lo que entendió y espera un sí.
crew-power-cut = Se corta la corriente del quiosco, en medio de un paso.
crew-cut-is-over = El quiosco enciende de nuevo. El tablero muestra lo que no se terminó; el registro no perdió nada.
crew-problem = Algo se ve mal: { $who } avisa de un problema y todo se detiene.
crew-holds-again = Antes de seguir, el quiosco pregunta otra vez lo que pudo cambiar entretanto.
crew-one-is-missing = { $who } cuenta un anillo de menos. Sin contar, estaría en la máquina o en un cono.
crew-other-language = Termina otra persona, en otro idioma. Lo que es seguro se pregunta otra vez a quien está ahora.
crew-time-passes = El tiempo pasa, más rápido de lo normal.
crew-written = Cada respuesta está en el registro, con su hora y cómo se dio.
crew-evening-over = Así fue la noche. Por la mañana la revisa el supervisor.
