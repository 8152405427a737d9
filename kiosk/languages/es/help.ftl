### reviewed: no
# What can be done here, for whoever asks.
help = ayuda
say-help = qué puedo decir / ayuda
help-say = Puede decir: { $list }.
help-number = También puede decir el número, o pulsarlo.
help-hold = Una retención de seguridad pide sus propias palabras, completas, o su botón mantenido.
help-hurt = ¿Alguien está herido? Deje la máquina, pida ayuda y, si hubo salpicadura, siga la etiqueta del producto.
help-board = Pulse una máquina para recorrer lo que toca en ella, o un control del día. Un recorrido que quedó a medias espera con su propia marca. Después pulse quién lo hace. El quiosco guía y anota; no sustituye el bloqueo de energía.
help-list = Pulse lo que corresponde, o su número en el teclado. Todavía no se ha anotado nada.
help-summary = Esto es lo que quedó en el registro. Léalo y vuelva a las máquinas.
or-say = Púlselo, o diga: { $phrase }.
