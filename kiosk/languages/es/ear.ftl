### Lo que dicen las pantallas del oído. Borrador hecho a máquina; falta la revisión de un hablante.
### reviewed: no

ear-no-sound = No llega sonido del micrófono. ¿Está conectado y encendido?
