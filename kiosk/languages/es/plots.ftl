### Figuras: títulos, ejes y claves.
### reviewed: no

plot-number = { $n }
plot-month = { $month ->
    [1] ene
    [2] feb
    [3] mar
    [4] abr
    [5] may
    [6] jun
    [7] jul
    [8] ago
    [9] sep
    [10] oct
    [11] nov
   *[12] dic
}
plot-month-day = { $day } { $month ->
    [1] ene
    [2] feb
    [3] mar
    [4] abr
    [5] may
    [6] jun
    [7] jul
    [8] ago
    [9] sep
    [10] oct
    [11] nov
   *[12] dic
}
plot-today = hoy
plot-reach = { $days ->
    [one] del más bajo al más alto de cada día
   *[other] del más bajo al más alto de { $days } días
}
plot-middle = el del medio

## Sesiones
plot-length = Cuánto duró el trabajo: { $what }
plot-length-told = { $n ->
    [one] { $n } sesión
   *[other] { $n } sesiones
} de { $first } a { $last }. La duración del medio es { $middle }, la más corta { $least }, la más larga { $most }.
plot-axis-minutes = minutos
plot-session-complete = completa
plot-session-open = aún sin terminar
plot-session-ended = terminada antes del final
plot-session-told = { $moment }: { $time }, { $worker }
plot-usual = lo habitual: la del medio de las anteriores
plot-deviations = Desviaciones: { $what }
plot-deviations-told = { $found } desviaciones en { $n ->
    [one] { $n } sesión
   *[other] { $n } sesiones
} de { $first } a { $last }.
plot-found-in = { $found } en { $sessions ->
    [one] { $sessions } sesión
   *[other] { $sessions } sesiones
}
plot-axis-per-session = desviaciones por sesión
plot-deviations-bar = { $days ->
    [one] media de cada día
   *[other] media de { $days } días
}

## Lecturas
plot-readings = { $quantity }: { $what }
plot-quantity = { $quantity ->
    [mix-temperature] temperatura de la mezcla
    [sanitizer-strength] concentración del desinfectante
    [sanitizer-temperature] temperatura del desinfectante
    [wash-temperature] temperatura del lavado
    [discarded-product] producto desechado
   *[other] { $other }
}
plot-readings-told = { $n ->
    [one] { $n } lectura
   *[other] { $n } lecturas
} de { $first } a { $last }, desde { $least } hasta { $most }. Fuera de su límite: { $off }.
plot-other-unit = Lecturas en otra unidad que no se dibujan: { $n }.
plot-kept = dentro de su límite
plot-without-limit = lectura
plot-off = fuera de su límite
plot-should-lie = donde debe estar

## Resultados de laboratorio
plot-results = Laboratorio, { $analysis }: { $what }
plot-head = { $head ->
    [left] cabezal izquierdo
    [right] cabezal derecho
    [twist] cabezal combinado
    [single] cabezal único
   *[other] cabezal { $head }
}
plot-axis-count = { $per ->
    [mL] unidades formadoras de colonias por mililitro; cada línea es diez veces la de abajo
   *[g] unidades formadoras de colonias por gramo; cada línea es diez veces la de abajo
}
plot-result-counted = contado
plot-result-estimated = estimado
plot-result-less = menos que
plot-result-more = más que
plot-result-over = por encima de su límite
plot-result-limit = límite: { $n } por { $per } ({ $products })
plot-average = media móvil
plot-control = su límite de control
plot-results-told = { $n ->
    [one] { $n } resultado
   *[other] { $n } resultados
} de { $first } a { $last }. Por encima del límite: { $over }.
plot-results-without = Resultados sin número que no se dibujan: { $n }.

## Quién cerró y cuándo
plot-closings = Quién cerró y cuándo
plot-closings-told = { $n ->
    [one] { $n } noche de una máquina
   *[other] { $n } noches de máquinas
} de { $first } a { $last }. Terminadas tarde: { $late }. Nunca terminadas: { $missed }.
plot-late = tarde
plot-nobody = nadie
plot-closed = cerró: cuántas, más oscuro es más
plot-closed-late = una o más tarde o sin hacer

## Piezas
plot-parts = Piezas de desgaste
plot-parts-told = { $n ->
    [one] { $n } pieza
   *[other] { $n } piezas
} desde { $first }. Cambios: { $replaced }. Vencidas: { $overdue }. Gastadas sin repuesto: { $worn }.
plot-part-in-use = en uso, una tras otra
plot-part-likely = próximo cambio esperado (8 de 10)
plot-part-replaced = cambiada
plot-part-worn = gastada, sin repuesto
plot-part-due = vence según el calendario
