### Relatórios em papel. Rascunho feito por máquina; falta a revisão de um falante.
### reviewed: no

report-title-day = Relatório de um dia
report-title-month = Relatório de um mês
report-title-folder = Pasta do fiscal
report-practice = Treino: uma loja inventada ou um ensaio. Isto não é registro de trabalho de verdade.
report-drafted = As palavras deste relatório são um rascunho feito por máquina. Um falante ainda não as conferiu.

## O que se diz de uma sessão ou de alguns dias
report-session = Sessão
report-shop = Loja
report-machine = Máquina
report-procedure = Procedimento
report-text = Texto que foi percorrido
report-version = versão { $version }, digest { $digest }
report-workers = Trabalhadores
report-begun = Começo
report-last-event = Último evento
report-how-ended = Como terminou
report-ended = { $how ->
    [complete] completa
    [ended-early] encerrada antes do fim
    [out-of-service] encerrada, máquina fora de serviço
   *[open] não terminada
}
report-length = Duração
report-minutes = { $minutes } min
report-usual-length = Duração normal
report-usual = { $minutes } min: a do meio entre { $count } sessões anteriores
report-usual-none = nenhuma sessão anterior para comparar
report-confirmed-steps = Passos confirmados
report-signed = Assinada
report-signed-not = Não assinada por um supervisor.
report-signed-off = Assinada por { $person }, { $at }
report-signed-back = Devolvida por { $person }, { $at }
report-left-unsafe = No fim dela, a próxima pessoa tinha de ser avisada: { $what }.
report-text-unknown = O procedimento não tem mais o texto que foi percorrido. As frases, os tipos de passo e os tempos necessários não podem ser mostrados.
report-days = Dias de trabalho
report-days-mean = Sessões começadas
report-days-begun = de { $first } até { $until }; um dia de trabalho muda no meio entre o fechamento e a abertura
report-sessions = Sessões
report-sessions-complete = Sessões que chegaram ao fim
report-sessions-signed = Sessões assinadas
report-sessions-sent-back = Sessões devolvidas
report-due = O que era devido
report-due-in-time = Feito a tempo
report-due-missed = Não feito
report-readings = Leituras
report-readings-off = Leituras fora do limite
report-deviations = Desvios
report-steps = Passos
report-beside = Ao lado dos passos
report-signing = Assinatura
report-laboratory = Resultados de laboratório
report-parts = Peças
report-people = Pessoas
report-procedures = Procedimentos
report-figures = Figuras

## Colunas
report-column-rows = Linhas
report-column-time = Hora
report-column-day = Dia
report-column-step = Passo
report-column-answer = Resposta e limite
report-column-how = Como foi respondido
report-column-who = Quem
report-column-what = O quê
report-column-told = O que foi anotado
report-column-at-step = No passo
report-column-weight = Peso
report-column-deviation = Desvio
report-column-why-seen = Por que deve ser visto
report-column-source = Fonte da regra
report-column-session = Sessão
report-column-count = Número
report-column-machine = Máquina
report-column-measured = Medido
report-column-value = Valor
report-column-limit = Limite e fonte
report-column-kept = Cumprido
report-column-least = Menor
report-column-middle = Meio
report-column-most = Maior
report-column-off = Fora do limite
report-column-remark = Recado
report-column-barrel = Máquina e bico
report-column-product = Produto
report-column-analysis = Análise
report-column-result = Resultado
report-column-laboratory = Laboratório
report-column-because = Por quê
report-column-standing = Situação
report-column-trend = Tendência
report-column-due = Devido
report-column-its-time = O seu tempo
report-column-became = O que houve com ele
report-column-begun = Começo
report-column-work = Máquina e trabalho
report-column-length = Minutos (normal)
report-column-ended = Fim
report-column-deviations = Desvios
report-column-signed = Assinada
report-column-part = Peça
report-column-found = Achado
report-column-procedures = Procedimentos
report-column-procedure = Procedimento
report-column-version = Versão
report-column-known = O que se sabe
report-column-kind = Tipo de máquina
report-column-signs = O que fala contra ela
report-column-digest = Digest do texto (SHA-256)

## Tabelas
report-none = nenhum
report-steps-caption = Cada passagem por um passo, em ordem
report-steps-none = nenhum passo foi aberto
report-beside-caption = Interrupções, problemas, trocas de pessoa, passos para trás e contas feitas
report-signings-caption = O que os supervisores disseram sobre ela
report-deviations-caption = Desvios, os mais graves primeiro; nenhum foi deixado de fora
report-deviations-none = nenhum foi achado
report-rules-caption = Quantas vezes cada regra achou algo
report-readings-caption = O que foi medido
report-readings-none = nada foi medido
report-spread-caption = O que foi medido, por máquina
report-results-caption = Resultados de amostras tiradas nestes dias
report-results-none = nenhum foi registrado
report-struck-caption = Registros que foram riscados e não contam mais
report-standing-caption = Situação em { $day }
report-due-caption = Tudo o que era devido
report-due-caption-off = O que não foi feito no seu tempo
report-sessions-caption = Sessões, na ordem em que começaram
report-sessions-none = não houve sessão
report-parts-caption = Peças trocadas, gastas ou mal contadas
report-wear-caption = Peças de desgaste, como estão em { $day }
report-shelf-caption = Peças de reposição, como estão em { $day }
report-traces = O que pode ter levado aos maus resultados
report-traces-more = Só os últimos são seguidos; mais { $n } não são.
report-trace-caption = { $day }, { $what }: { $amount }. Olhado: de { $first } a { $last }. Os mais suspeitos primeiro
report-people-caption = Quem participou
report-procedures-caption = Textos que foram percorridos

## Respostas
report-on-list = lista de peças: { $expected }
report-remark-erased = o texto deste recado foi apagado
report-hold-confirmed = confirmada
report-done = feito
report-passes = { $number } passadas
report-waited = esperados { $waited }, necessários { $needed }
report-left = { $how ->
    [went-back] não respondido: voltou atrás
    [held] não respondido: retido
    [handed-over] não respondido: outra pessoa assumiu
    [session-ended] não respondido: sessão encerrada
   *[still-there] ainda não respondido
}
report-finding = { $finding ->
    [good] em bom estado
    [replaced] trocada
    [none-left] gasta, sem reposição
   *[other] { $other }
}
report-counted = { $counted } contadas, { $expected } na lista de peças
report-said = { $said ->
    [phrase] frase
    [read-back-agreed] releitura aceita
    [read-back-refused] releitura recusada
    [try-out-failed] teste falhou
    [number] número
    [out-of-limit] fora do limite
    [pass] passada feita
    [pass-judged] passada julgada
    [passes-ran-out] passadas esgotadas
    [tried-again] tentado de novo
    [time-up] tempo cumprido
   *[confirmed] confirmado
}
report-channel = { $channel ->
    [touch] toque
    [key] tecla
    [kiosk] pelo quiosque
   *[voice] voz
}
report-heard = voz “{ $heard }”, ouvido { $ear }
report-heard-sure = voz “{ $heard }” ({ $sure }), ouvido { $ear }
report-asked-again = perguntado de novo: { $count }
report-witnessed = testemunha: { $person }
report-limit-none = sem limite
report-kept-yes = cumprido
report-kept-no = NÃO CUMPRIDO
report-kept-unknown = não se pode dizer
report-kept-without = não julgado

## Ao lado dos passos
report-stood-still = Ficou parada
report-break = { $because ->
    [pause] pausa
    [problem] problema
    [restart] quiosque reiniciado
   *[no-way-in] nenhum caminho seguro
}, até { $until }
report-problem = Problema
report-no-reason = nenhum motivo dito
report-became = { $became ->
    [put-right] dito resolvido
    [ended-early] sessão encerrada
    [out-of-service] máquina tirada de serviço
   *[open] não resolvido
}
report-hand-over = Troca de pessoa
report-back = Passo para trás
report-worked-out = Conta feita
report-stand = { $stand ->
    [not-yet-due] ainda não devido
    [due] devido agora
    [done] feito a tempo
    [done-early] feito cedo demais
    [done-late] feito tarde
    [begun-not-finished] começado, não terminado
    [out-of-service] máquina fora de serviço
    [not-opened] a máquina não foi usada naquele dia
   *[missed] NÃO FEITO
}

## Laboratório
report-head = { $head ->
    [left] bico esquerdo
    [right] bico direito
    [twist] bico do meio
    [single] bico único
   *[other] bico { $head }
}
report-authority = Julgado por { $title }, { $law }. Fonte: { $source } ({ $tag }).
report-authority-none = Nenhuma autoridade foi dita para este relatório, por isso não se mostra limite nem situação.
report-state = { $state ->
    [clear] Sem aviso.
    [notice] AVISO.
    [action] MEDIDA.
    [unknown] Não se sabe: um resultado é só um limite inferior ou superior.
   *[no-results] Nenhum resultado.
}
report-over-of = Acima do limite: { $four } dos últimos { $of_four }, { $five } dos últimos { $of_five }.
report-resample = Amostra adicional: de { $first } a { $last }.
report-owed = Dias de amostra que ainda faltam em seis meses: { $days }.
report-average = Média logarítmica dos últimos quatro: { $low } ou mais.
report-left-out = Deixado de fora { $result }: { $why }.
report-trend-none = Nenhuma tendência pode ser dita.

## Assinaturas, e em que tudo isto se apoia
report-meaning = { $what ->
    [signed-off] visto, e aceito como está
   *[sent-back] devolvido, algo tem de ser feito
}
report-signature-means = O que significa uma assinatura. “Assinada”: o supervisor citado olhou o registro dessa sessão, nessa hora, e o aceita como está. “Devolvida”: o supervisor quer que se faça algo a respeito. Não significa que o supervisor viu o trabalho, nem que a máquina é segura. O nome, a hora e o significado estão ao lado de cada assinatura (as três partes de 21 CFR 11.50). Foi dada com o PIN dessa pessoa, onde o lugar tem PINs; não é uma assinatura eletrônica qualificada.
report-sign-name = Nome em letra de forma
report-sign-signature = Assinatura
report-sign-date = Data e hora
report-rests-on = Em que este relatório se apoia
report-limits-are = Os limites estão como valiam e foram escritos no diário na hora, cada um com a sua cláusula e a sua fonte. O manual da máquina, o rótulo do produto e as normas locais vêm primeiro onde diferirem.
report-deviations-are = Desvios são o que regras escritas acham no registro; a fonte de cada regra está ao lado. Onde se lê “common practice, no source” (prática comum, sem fonte), nenhuma fonte publicada é conhecida. Um desvio é um motivo para olhar, não uma prova de culpa.
report-rows-are = A coluna “{ $column }” cita linhas do diário do quiosque. Todo valor e toda contagem aqui foram feitos dessas linhas, e podem ser feitos delas de novo. De uma sessão inteira citam-se a primeira e a última linha.
report-verify = Como conferir o diário
report-kiosk = Quiosque
report-head-row = Última linha do diário
report-head-hash = Hash dessa linha (SHA-256)
report-head-time = Hora dessa linha (UTC)
report-made = Este relatório foi feito
report-verify-how = Peça uma cópia do arquivo journal.db. O hash de cada linha cobre a linha e o hash da linha anterior. Calcule os hashes desde a primeira linha até a linha citada acima; o último deve ser o hash impresso aqui. A página { $page } tem um programa curto para isso, que não precisa de nada nosso; “kiosk log verify” faz o mesmo.
report-verify-not = Hashes iguais mostram que as linhas são aquelas de que este relatório foi feito. Não mostram que era verdade o que um trabalhador disse ao quiosque.
report-caution = O quiosque guia e anota. Ele não substitui o bloqueio de energia, o manual da máquina, o rótulo do produto, as normas locais nem o pessoal autorizado.
report-hashes-agree = Os hashes das linhas { $first } a { $last } foram calculados de novo quando este relatório foi feito. Eles conferem.
report-hashes-differ = A LINHA { $row } FALTA OU FOI ALTERADA depois de escrita. Não confie neste relatório; confira o diário.
report-unread = Sessões que esta versão do quiosque não consegue ler, e que faltam aqui: { $sessions }.
