### Figuras: títulos, eixos e legendas. Rascunho feito por máquina; falta a revisão de um falante.
### reviewed: no

plot-number = { $n }
plot-month = { $month ->
    [1] jan
    [2] fev
    [3] mar
    [4] abr
    [5] mai
    [6] jun
    [7] jul
    [8] ago
    [9] set
    [10] out
    [11] nov
   *[12] dez
}
plot-month-day = { $day } { $month ->
    [1] jan
    [2] fev
    [3] mar
    [4] abr
    [5] mai
    [6] jun
    [7] jul
    [8] ago
    [9] set
    [10] out
    [11] nov
   *[12] dez
}
plot-today = hoje
plot-reach = { $days ->
    [1] do menor ao maior de cada dia
   *[other] do menor ao maior de { $days } dias
}
plot-middle = o do meio entre eles

## Sessões
plot-length = Quanto o trabalho levou: { $what }
plot-length-told = { $n ->
    [one] { $n } sessão
   *[other] { $n } sessões
} de { $first } a { $last }. A duração do meio é { $middle }, a menor { $least }, a maior { $most }.
plot-axis-minutes = minutos
plot-session-complete = completa
plot-session-open = ainda não terminada
plot-session-ended = encerrada antes do fim
plot-session-told = { $moment }: { $time }, { $worker }
plot-usual = normal: a do meio entre as anteriores
plot-deviations = Desvios: { $what }
plot-deviations-told = { $found } desvios em { $n ->
    [one] { $n } sessão
   *[other] { $n } sessões
} de { $first } a { $last }.
plot-found-in = { $found } em { $sessions ->
    [one] { $sessions } sessão
   *[other] { $sessions } sessões
}
plot-axis-per-session = desvios por sessão
plot-deviations-bar = { $days ->
    [1] média de cada dia
   *[other] média de { $days } dias
}

## Leituras
plot-readings = { $quantity }: { $what }
plot-quantity = { $quantity ->
    [mix-temperature] temperatura da mistura
    [sanitizer-strength] concentração do desinfetante
    [sanitizer-temperature] temperatura do desinfetante
    [wash-temperature] temperatura da lavagem
    [discarded-product] produto jogado fora
   *[other] { $other }
}
plot-readings-told = { $n ->
    [one] { $n } leitura
   *[other] { $n } leituras
} de { $first } a { $last }, de { $least } a { $most }. Fora do limite: { $off }.
plot-other-unit = Leituras em outra unidade, não desenhadas: { $n }.
plot-kept = dentro do limite
plot-without-limit = leitura
plot-off = fora do limite
plot-should-lie = onde deve ficar

## Resultados de laboratório
plot-results = Laboratório, { $analysis }: { $what }
plot-head = { $head ->
    [left] bico esquerdo
    [right] bico direito
    [twist] bico do meio
    [single] bico único
   *[other] bico { $head }
}
plot-axis-count = { $per ->
    [mL] unidades formadoras de colônias por mililitro; cada linha é dez vezes a de baixo
   *[g] unidades formadoras de colônias por grama; cada linha é dez vezes a de baixo
}
plot-result-counted = contado
plot-result-estimated = estimado
plot-result-less = menos de
plot-result-more = mais de
plot-result-over = acima do limite
plot-result-limit = limite: { $n } por { $per } ({ $products })
plot-average = média móvel
plot-control = o seu limite de controle
plot-results-told = { $n ->
    [one] { $n } resultado
   *[other] { $n } resultados
} de { $first } a { $last }. Acima do limite: { $over }.
plot-results-without = Resultados sem número, não desenhados: { $n }.

## Quem fechou quando
plot-closings = Quem fechou quando
plot-closings-told = { $n ->
    [one] { $n } noite de uma máquina
   *[other] { $n } noites de máquinas
} de { $first } a { $last }. Terminadas tarde: { $late }. Nunca terminadas: { $missed }.
plot-late = tarde
plot-nobody = ninguém
plot-closed = fechou: quantas vezes, mais escuro é mais
plot-closed-late = uma ou mais tarde, ou não feitas

## Peças
plot-parts = Peças de desgaste
plot-parts-told = { $n ->
    [one] { $n } peça
   *[other] { $n } peças
} desde { $first }. Trocas: { $replaced }. Atrasadas: { $overdue }. Gastas e sem reposição: { $worn }.
plot-part-in-use = em uso, uma depois da outra
plot-part-likely = próxima troca esperada (8 em 10)
plot-part-replaced = trocada
plot-part-worn = gasta, sem reposição
plot-part-due = prazo do calendário
