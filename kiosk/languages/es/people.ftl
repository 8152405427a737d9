### Quién puede hacer qué, y las claves. Borrador hecho a máquina.
### reviewed: no

say-witness = llegó la segunda persona

pin-ask = { $who }, escribe tu clave.
pin-invented = (tienda inventada: clave { $pin })
pin-new = { $who }, escribe una clave nueva: de 4 a 12 cifras.
pin-again = Escribe otra vez las mismas cifras.
pin-is-set = { $who } tiene una clave nueva.
pin-for-begin = para empezar
pin-for-take-over = para seguir el trabajo
pin-for-witness = como segunda persona
pin-for-stand-by = para acompañar a un aprendiz
pin-for-sign = para firmar
pin-for-review = para ver los registros
pin-for-set-pin = para poner una clave
which-supervisor = ¿Qué supervisor?
no-supervisor = En la lista de este sitio no hay ningún supervisor que pueda hacerlo.
who-witnesses = ¿Quién es la segunda persona?
whose-pin = ¿La clave de quién?
who-vouches = ¿Quién responde por ello?
pin-by-old-one = con la clave anterior
pin-by-supervisor = responde un supervisor

to-practise = practicar
to-set-pin = poner una clave
practise-or-pin = ¿Qué quieres hacer?
practice-is = marcado como práctica, aparte del trabajo real
practice-board = Práctica: aquí no queda anotado ningún trabajo real.
back-to-work = volver al trabajo
with-a-supervisor = con un supervisor al lado

refused-pin-first = Primero hace falta tu clave.
refused-supervisor-first = Un supervisor debe acompañar y dar antes su clave.
refused-not-on-list = No está en la lista de este sitio.
refused-not-your-walk = No es uno de los procedimientos de esta persona.
refused-trainee-no-witness = Un aprendiz no puede ser la segunda persona.
refused-own-work = Nadie firma su propio trabajo. Debe verlo otro supervisor.
refused-supervisors-only = Solo un supervisor puede hacer eso.
refused-pin-wrong = Esa no es la clave. Prueba otra vez.
refused-pin-wait = Demasiados intentos. Faltan { $time } para el siguiente.
refused-pin-closed = La clave está cerrada tras demasiados intentos. Un supervisor debe poner una nueva.
refused-no-pin-set = { $person } todavía no tiene clave. Un supervisor puede ponerla en la pantalla de máquinas, o con 'kiosk people pin { $person }'.
refused-pins-unreadable = Ahora no se pueden comprobar las claves. { $reason }
refused-pin-not-written = No se pudo anotar, así que no se hizo nada. { $reason }
refused-pin-length = Una clave tiene de { $least } a { $most } cifras.
refused-pin-easy = Esa clave es muy fácil de adivinar. Elige otras cifras.
refused-pin-differs = Las dos entradas son distintas. Escribe otra vez una clave nueva.

people-nobody = { $person } no está en la lista de este sitio. Están: { $known }.
people-ask-pin = Clave nueva de { $who } ({ $person }), no se muestra:
people-ask-again = Otra vez:
people-pin-set = { $who } ({ $person }) tiene una clave nueva.
people-pin-yes = tiene clave
people-pin-no = no tiene clave
people-role-worker = trabajador
people-role-trainee = aprendiz
people-role-supervisor = supervisor
people-walks-all = puede hacer todos los procedimientos
people-walks = puede hacer { $procedures }
people-erased = Se borró de { $person }: nombre, clave, palabras propias y el texto de { $n ->
    [one] un comentario
   *[other] { $n } comentarios
}. El registro conserva la identificación y lo dice.
people-kept-over = Borrado por haberse guardado lo suficiente: { $names ->
    [one] un nombre
   *[other] { $names } nombres
}, { $remarks ->
    [one] un comentario
   *[other] { $remarks } comentarios
}.
people-nothing-over = Nada se ha guardado más tiempo del que dice el sitio.
