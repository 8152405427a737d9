### El tablero: quién está ahí, y qué toca y hasta cuándo. Borrador hecho a máquina.
### reviewed: no

board-greeting = { $part ->
    [morning] Buenos días, { $who }
    [day] Buenas tardes, { $who }
   *[evening] Buenas noches, { $who }
}
sign-in = presentarse
sign-in-who = ¿Quién está aquí?
sign-out = me voy
sign-out-or-other = salir o cambiar
board-due-from = { $what }: desde { $at }
board-due-by = { $what }: hasta { $at }
board-in = en { $time }
board-left = aún hay { $time }
board-overdue = ! Vencido desde { $at }: { $what }
board-never = { $what }: ninguna conocida en medio año
help-board-more = Preséntese, y lo que oprima empieza con usted y en su idioma; la clave se pide igual donde este lugar la pide. Tras diez minutos sin tocar la pantalla ya no hay nadie presentado. En cada máquina está desde cuándo, o hasta cuándo, toca algo.
