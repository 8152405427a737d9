### Piezas de desgaste y repuestos.
### reviewed: no

parts-worn = Gastada desde { $day }, no había repuesto.
parts-due = Vence el { $day }.
parts-overdue = Vencida: vencía el { $day }.
parts-replaced = { $days ->
    [0] Cambiada hoy, { $day }, por { $by }.
    [one] Cambiada el { $day } por { $by }, hace { $days } día.
   *[other] Cambiada el { $day } por { $by }, hace { $days } días.
}
parts-replacements = { $n ->
    [one] Un cambio registrado.
   *[other] { $n } cambios registrados.
}
parts-never-replaced = Ningún cambio registrado; vista por primera vez el { $day }.
parts-likely = Próximo cambio del { $low } al { $high } (8 de 10); en medio, { $middle }.
parts-likely-open = Próximo cambio desde el { $low } (9 de 10); en medio, { $middle }.
parts-likely-hardly = Próximo cambio desde el { $low } (9 de 10); difícilmente en diez años.
parts-likely-later = No se espera ningún cambio en diez años.
parts-too-little = Muy pocos cambios registrados para decir qué se espera.
parts-none-found = El { $day } alguien no encontró ninguna.
parts-short = { $n ->
    [one] Se usó una pieza más de las que había. Cuente otra vez.
   *[other] Se usaron { $n } piezas más de las que había. Cuente otra vez.
}
parts-shelf-unknown = El estante nunca se ha contado.
parts-shelf = { $pieces ->
    [one] En el estante: { $pieces } pieza
   *[other] En el estante: { $pieces } piezas
}; un cambio usa { $takes }. Alcanza para { $n ->
    [0] ninguno
    [one] { $n } cambio
   *[other] { $n } cambios
}.
parts-counted-on = Contado el { $day }; desde entonces según lo anotado.
parts-never-counted = Nunca contado: solo lo recibido.
parts-runs-out = Faltarán piezas para un cambio del { $low } al { $high } (8 de 10); en medio, { $middle }.
parts-runs-out-open = Faltarán piezas para un cambio desde el { $low } (9 de 10); en medio, { $middle }.
parts-runs-out-hardly = Faltarán piezas para un cambio desde el { $low } (9 de 10); difícilmente en diez años.
parts-runs-out-later = Alcanza para diez años.
parts-how-foretold = Lo esperado se calcula con lo que se ha cambiado hasta ahora, en todas las máquinas del mismo tipo. No es un límite: primero valen el calendario y el manual de la máquina.
parts-on-machines = En las máquinas
parts-on-shelf = En el estante
parts-none-seen = Aún no se ha mirado ninguna pieza de desgaste.
parts-received = { $count ->
    [one] Recibida: { $count } pieza, { $part }.
   *[other] Recibidas: { $count } piezas, { $part }.
}
parts-counted = { $count ->
    [one] Contada: { $count } pieza, { $part }.
   *[other] Contadas: { $count } piezas, { $part }.
}
