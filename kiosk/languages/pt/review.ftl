### A revisão do supervisor. Rascunho feito por máquina; falta a revisão de um falante.
### reviewed: no
review = revisão
review-back = voltar
review-other-ways = outras páginas
review-where-to = Para onde?
review-place = { $first } a { $last }
review-nothing-here = Não há nada aqui.
review-reading = O diário está sendo lido.
review-reading-place = O diário está sendo lido: { $done } de { $of } sessões. A primeira vez demora; depois só se lê o que é novo.
review-cannot-read = A revisão não pode ser aberta. { $why }
review-cannot-look = Esta página não pode ser mostrada. { $why }
review-only = só algumas sessões
review-laboratory = laboratório
review-dates = datas
review-parts = peças
review-picture = gráfico
review-pictures = gráficos
review-people = pessoas
review-sessions = sessões
review-unsigned = não assinadas
review-which-sessions = Quais sessões?
review-eyes = { $n ->
    [0] Nada precisa dos seus olhos primeiro. Sessões, as mais novas primeiro:
    [1] Uma coisa precisa dos seus olhos primeiro.
   *[other] { $n } coisas precisam dos seus olhos primeiro.
}
review-newest-first = As sessões, as mais novas primeiro:

# Uma sessão numa linha.
review-deviations = { $n ->
    [0] nenhum desvio
    [one] { $n } desvio
   *[other] { $n } desvios
}
review-length = { $time }
review-length-usual = { $time }, normal { $usual } (meio de { $number })
review-is-not-signed = não assinada
review-is-signed-off = assinada
review-is-sent-back = devolvida
review-ended-open = não terminada
review-ended-complete = completa
review-ended-ended-early = encerrada antes do fim
review-ended-out-of-service = máquina tirada de serviço

# O relato e a linha do tempo de uma sessão.
review-from-to = De { $begun } a { $ended }
review-text-here = Procedimento versão { $version }, texto { $digest }
review-text-gone = Procedimento versão { $version }, texto { $digest }: este texto não está mais aqui, por isso faltam as frases.
review-was-signed-off = Assinada por { $by }, { $at }.
review-was-sent-back = Devolvida por { $by }, { $at }.
review-remark-erased = (O texto deste recado foi apagado.)
review-timeline = Linha do tempo
review-journal-rows = Linhas do diário { $first } a { $last }
review-asked-in = Perguntado em { $language }: “{ $text }”
review-waited = Esperou { $waited }, necessários { $needed }
review-witness = Testemunha: { $who }
review-asked-again = { $n ->
    [1] A pergunta foi repetida uma vez.
   *[other] A pergunta foi repetida { $n } vezes.
}
review-limit-parts = lista de peças: { $number }
review-passes = { $n ->
    [one] { $n } passada
   *[other] { $n } passadas
}
review-sure = { $percent } por cento de certeza
review-not-taken = depois que “{ $heard }” não foi aceito
review-ear = ouvido: { $ear }
review-after = depois de { $time }
review-by-voice = por voz
review-by-touch = por toque
review-by-key = por tecla
review-by-kiosk = pelo quiosque
review-said-phrase = frase dita
review-said-read-back-agreed = releitura aceita
review-said-read-back-refused = releitura recusada
review-said-try-out-failed = teste falhou
review-said-number = número dado
review-said-out-of-limit = não está certo
review-said-pass = passada feita
review-said-pass-judged = passada julgada
review-said-passes-ran-out = passadas esgotadas
review-said-tried-again = tentado de novo
review-said-time-up = tempo cumprido
review-said-confirmed = confirmado
review-clear-yes = está certo
review-clear-no = ainda não está certo
review-left-confirmed = Confirmado.
review-left-went-back = Voltou um passo.
review-left-held = A sessão foi retida aqui.
review-left-handed-over = Outra pessoa assumiu aqui.
review-left-session-ended = A sessão foi encerrada aqui.
review-left-still-there = A sessão ainda está aqui.
review-break-pause = Em pausa.
review-break-problem = Retida: um problema foi avisado.
review-break-restart = O quiosque voltou a funcionar.
review-break-no-way-in = Retida: não havia como seguir com segurança.
review-power-cut = O computador foi ligado de novo.
review-until = Até { $at }.
review-problem = Problema: { $what } ({ $became })
review-no-reason = nenhum motivo foi dito
review-became-open = não resolvido
review-became-put-right = resolvido, pela palavra do trabalhador
review-became-ended-early = a sessão foi encerrada
review-became-out-of-service = a máquina foi tirada de serviço
review-handed-over = Passado de { $before } para { $after }
review-worked-out = Conta feita: { $what }

# A palavra do supervisor.
review-sign-off = assinar
review-send-back = devolver
review-what-remark = Assinar. Com qual recado?
review-what-to-do = Devolver. O que tem de ser feito?
review-remark-right = visto, nada a fazer
review-remark-talked = falei com o trabalhador
review-remark-machine = olhei a máquina
review-back-again = limpe a máquina de novo
review-back-talk = trabalhador, venha falar comigo
review-back-sample = tire uma amostra
review-back-part = troque a peça
review-write = escrever
review-take-it = aceitar
review-nothing-written = Escreva algo primeiro.
review-not-ended = Esta sessão não terminou. Pode ser devolvida, mas não assinada.
review-not-written = Não foi possível escrever no diário, por isso nada foi anotado. { $why }

# Laboratório.
review-no-results = Ainda não há resultados de laboratório.
review-no-result-judged = Nenhum resultado pôde ser julgado.
review-results = Resultados, os mais novos primeiro
review-left-out = Não julgado, esta autoridade não tem limite para isso: { $result }
review-resample = Tire outra amostra de { $first } a { $last }.
review-samples-owed = { $n ->
    [1] Um dia de amostra ainda falta em seis meses.
   *[other] { $n } dias de amostra ainda faltam em seis meses.
}
review-over = acima do limite
review-may-be-over = pode estar acima do limite
review-per-g = por grama
review-per-ml = por mililitro
review-head-left = bico esquerdo
review-head-right = bico direito
review-head-twist = bico do meio
review-head-single = bico único
review-amount-exact = { $amount }
review-amount-estimated = cerca de { $amount }
review-amount-less-than = menos de { $amount }
review-amount-more-than = mais de { $amount }
review-amount-spreaders = crescimento espalhado
review-amount-laboratory-accident = acidente de laboratório
review-enter-result = registrar um resultado
review-other-authority = outra autoridade
review-trace = o que levou a isso
review-nothing-to-trace = Nenhum resultado deste cilindro está acima do limite.
review-trace-lead = Uma pista, não uma prova: a ordem vem de pesos sem fonte publicada. Olhe, pergunte, e tire outra amostra.
review-trace-looked = Olhado: de { $begun } a { $ended }.
review-no-session = nenhuma sessão
review-no-sign = Nada fala contra ela.
clue-short-contact = tempo de contato curto demais
clue-weak-sanitizer = desinfetante fraco
clue-warm-mix = mistura quente
clue-worn-part = peça gasta
clue-missed-close = trabalho da noite não feito
clue-late-close = trabalho da noite tarde
clue-ended-early = encerrada antes do fim
clue-new-worker = trabalhador novo
clue-doubtful-hold = retenção de segurança duvidosa

review-ask-machine = De qual máquina foi a amostra?
review-ask-barrel = De qual bico foi a amostra?
review-ask-day = Em que dia a amostra foi tirada? Escreva como 2026-11-25.
review-ask-product = De que era a amostra?
review-ask-analysis = Qual teste?
review-ask-amount = O que diz o laudo? Escreva como 1200, < 10, > 1100, est. 900 ou spreaders.
review-ask-per = Por grama, ou por mililitro?
review-ask-laboratory = Qual laboratório?
review-ask-sample = Que número o laboratório deu à amostra?
review-no-sample-number = sem número
review-wrong-day = Isso não é um dia até hoje. Escreva como 2026-11-25.
review-wrong-amount = Isso pode ser lido de duas maneiras, ou de nenhuma. Escreva sem sinais de milhar, como 1200.
review-wrong-laboratory = Esse nome é longo demais. Encurte.
review-wrong-sample = Esse número é longo demais. Encurte.
review-is-that-right = Está certo?
review-enter-it = sim, registrar
review-again = não, de novo
review-this-result = este resultado
review-entered = O resultado está no diário.
review-known-already = Este resultado já está no diário. Nada foi registrado.
review-known-otherwise = O diário tem outro número para esta amostra. Dê o número do próprio laboratório, ou risque o registro errado com: kiosk lab strike.

# Datas, peças e pessoas.
review-overdue = Atrasado
review-due = Para agora
review-to-come = Por vir
review-done = Feito nos últimos dias
review-by = até { $at }
review-sampled-session = tirada pela última vez em { $day } numa sessão; o resultado ainda não foi registrado
review-sampled-result = última amostra { $day }: conhecida pelo resultado registrado
review-sampled-both = tirada pela última vez em { $day } numa sessão; o resultado está registrado
review-sampled-never = nenhuma amostra ainda
review-stand-not-yet-due = ainda não é hora
review-stand-due = para agora
review-stand-done = feito
review-stand-done-early = feito muito cedo
review-stand-done-late = feito tarde
review-stand-begun-not-finished = começado, não terminado
review-stand-missed = não feito
review-stand-out-of-service = máquina fora de serviço
review-stand-not-opened = a máquina não foi usada naquele dia
review-check-rule = O controle do dia só conta como não feito se naquele dia se trabalhou com a máquina e ela não esteve fora de serviço.
review-role-worker = trabalhador
review-role-trainee = em treinamento
review-role-supervisor = supervisor
review-not-here-any-more = não está mais na lista
review-no-walk = ainda não fez nada
review-walked = { $n ->
    [1] { $title }: uma vez, { $last }
   *[other] { $title }: { $n } vezes, primeira { $first }, última { $last }
}
review-first-walks = primeiras vezes, com um supervisor

# Gráficos.
review-days = { $n ->
   *[other] últimos { $n } dias
}
review-other-days = outro período
