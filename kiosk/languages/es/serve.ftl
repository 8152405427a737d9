### El quiosco en una tableta: emparejar una pantalla, mirar, tomar el mando. Borrador hecho a máquina.
### reviewed: no

pairing-code = Para emparejar otra pantalla: código { $code }.
pairing-closed = Demasiados códigos equivocados: no se puede emparejar ninguna pantalla hasta que se vuelva a iniciar el quiosco.
pairing-ask = Escribe el código que está en el tablero del quiosco.
pairing-wrong = Ese no es el código del tablero. Míralo otra vez: puede que ahora sea otro.
pairing-wait = Demasiados códigos equivocados. Espera { $seconds } segundos y escribe el código que está en el tablero.
pairing-give = Emparejar
pairing-rub-out = Borrar
screen-lost = No hay conexión con el quiosco. Lo confirmado está guardado. Intentando de nuevo.
screen-watches = Estás mirando. Otra pantalla maneja el quiosco.
screen-hidden = Alguien escribe su clave, o mira algo que una clave protege. Solo se muestra en la otra pantalla.
screen-take-over = Tomar el mando
screen-keyboard = Teclado
screen-not-taken = La pantalla no pudo tomar el mando: { $why }
