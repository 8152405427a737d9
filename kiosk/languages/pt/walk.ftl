### As palavras do quiosque em português do Brasil. Rascunho feito por máquina; falta a revisão de um falante.
### reviewed: no

language-name = Português

## Unidades, escritas por extenso para que se leiam e se digam igual.
unit-litres = { $n ->
    [one] { $n } litro
   *[other] { $n } litros
}
unit-millilitres = { $n ->
    [one] { $n } mililitro
   *[other] { $n } mililitros
}
unit-gallons = { $n ->
    [one] { $n } galão
   *[other] { $n } galões
}
unit-quarts = { $n ->
    [one] { $n } quarto de galão
   *[other] { $n } quartos de galão
}
unit-fluid-ounces = { $n ->
    [one] { $n } onça líquida
   *[other] { $n } onças líquidas
}
unit-grams = { $n ->
    [one] { $n } grama
   *[other] { $n } gramas
}
unit-seconds = { $n ->
    [one] { $n } segundo
   *[other] { $n } segundos
}
unit-minutes = { $n ->
    [one] { $n } minuto
   *[other] { $n } minutos
}
unit-hours = { $n ->
    [one] { $n } hora
   *[other] { $n } horas
}
unit-celsius = { $n ->
    [one] { $n } grau Celsius
   *[other] { $n } graus Celsius
}
unit-fahrenheit = { $n ->
    [one] { $n } grau Fahrenheit
   *[other] { $n } graus Fahrenheit
}
unit-milligrams-per-litre = { $n ->
    [one] { $n } parte por milhão
   *[other] { $n } partes por milhão
}
unit-ph = pH { $n }
unit-none = { $n }

## Palavras para dizer. As maneiras de dizer o mesmo são separadas por uma barra; mostra-se a primeira.
say-next = próximo / passo concluído
say-yes = sim / isso mesmo
say-no = não
say-repeat = repita por favor / repetir
say-back = passo anterior
say-problem = tem algo errado / problema
say-pause = fazer uma pausa / um descanso
say-continue = continuar
say-hand-over = troca de turno / trocar de pessoa
say-out-of-service = fora de serviço
say-end = encerrar a sessão / parar aqui
say-good = peça em bom estado / peça boa
say-replaced = troquei a peça / peça trocada
say-none-left = não tem reposição / acabou a reposição
say-language = outro idioma
say-never-mind = deixa para lá
say-number = número { $number }

## Palavras de advertência.
signal-danger = Perigo
signal-warning = Advertência
signal-caution = Cuidado
signal-notice = Aviso

## Perguntas.
first-again = Primeiro, confirme isto de novo.
say-phrase = Quando for assim, diga: { $phrase }.
heard-phrase = Ouvi: { $phrase }. Sim ou não?
heard-number = Ouvi { $number }. Sim ou não?
is-that-so = É assim? Sim ou não?
good-or-replaced = Está em bom estado, ou você trocou?
try-again = Corrija e diga próximo para tentar de novo.
time-up = O tempo acabou. Diga próximo para seguir.
witness-needed = Uma segunda pessoa precisa confirmar isto com o PIN dela.
count-off = Você contou { $number }. A lista de peças diz { $expected }. Procure a peça que falta.
reading-off-least = { $number } é pouco. Deve ser { $least } ou mais.
reading-off-most = { $number } é demais. Deve ser { $most } ou menos.
reading-off-least-most = { $number } está fora do limite. Deve ficar entre { $least } e { $most }.
passes-ran-out = Foi a passada número { $number }, e ainda não está certo.
what-is-wrong = O que está errado?
then-continue = Quando estiver feito, diga continuar.
stop-here = A máquina não pode seguir. Tire-a de serviço, ou passe o trabalho a outra pessoa.
held-pause = A sessão está em pausa. Diga continuar para seguir. O que pode ter mudado será perguntado de novo.
held-restart = O quiosque reiniciou. Diga continuar. O que pode ter mudado será perguntado de novo.
held-no-way-in = Este procedimento não pode seguir com segurança daqui. Encerre a sessão e avise o supervisor.
end-asked = Encerrar a sessão agora? Ela não está completa. Sim ou não?
complete = O procedimento está completo. Obrigado.
aborted = A sessão foi encerrada antes do fim. Avise a próxima pessoa:
out-of-service = A máquina está fora de serviço. Avise a próxima pessoa:

who-takes-over = Quem assume?
which-language = Qual idioma?
press-instead = Não tenho certeza do que você disse. Aperte na tela.

## Por que algo não foi feito.
refused-not-now = Isso não pode ser feito agora.
refused-hold-first = Isto é uma retenção de segurança. Diga a frase inteira, ou aperte o botão dela e segure.
refused-time-left = Ainda não. Faltam { $time }.
refused-number-first = Primeiro diga o número.
refused-absurd = Esse número não pode estar certo. Deve ficar entre { $least } e { $most }.
refused-whole-number = Diga um número inteiro.
refused-look-first = Olhe primeiro a peça. Diga: peça em bom estado, troquei a peça, ou não tem reposição.
refused-reason-first = Diga primeiro o que está errado.
refused-no-such-reason = Esse motivo não é conhecido aqui.
refused-must-stop = A máquina não pode seguir. Tire-a de serviço.
refused-no-way-in = Não há como seguir daqui com segurança. Encerre a sessão.
refused-confirm-this-first = Confirme isto primeiro.
refused-first-step = Este é o primeiro passo.
refused-same-person = Tem de ser outra pessoa.

## Telas
standing-in-service = em serviço
standing-being-taken-apart = sendo desmontada
standing-apart-and-drying = desmontada e secando
standing-being-put-together = sendo montada
standing-held = retida, algo está errado
standing-left-unfinished = deixada pela metade
standing-out-of-service = fora de serviço

which-machine = Qual máquina?
which-procedure = O que você quer fazer?
who-walks = Quem vai fazer?
due = A fazer: { $procedure }
nothing-due = Nada a fazer.
not-due = não é o que vem normalmente
unfinished = Pela metade, aperte para seguir: { $procedure }, { $worker }
no-procedure = Nenhum procedimento pode ser feito nela.
some-faulty = Nem tudo pode ser feito nela.
day-or-night = claro ou escuro
what-is-faulty = o que está com defeito
faults-found = { $n ->
    [1] Uma coisa impede um procedimento.
   *[other] { $n } coisas impedem procedimentos.
}
all-machines = todas as máquinas
more = mais
practice = treino
place = passo { $place } de { $last }
time-left = faltam uns { $n } min
time-left-spread = faltam uns { $n } min (de { $least } a { $most })
held = Retido
drafted = texto traduzido por máquina, ainda não conferido por um falante

keep-pressed = aperte e segure
kept-too-short = curto demais: aperte e segure, ou aperte mais uma vez
kept-enough = agora solte
type-number = digitar o número
enter-number = pronto
rub-out = apagar
number-missing = Digite primeiro o número e depois aperte pronto.
try-to-begin = tentar de novo

ear-hears = Estou ouvindo
ear-deaf = Estou falando, por isso não ouço
ear-off = Não consigo ouvir: { $why }
ear-opening = o ouvido está sendo preparado
ear-none = este quiosque não tem ouvido
voice-on = voz ligada
voice-off = Não consigo falar: { $why }
voice-opening = a voz está sendo preparada
voice-none = este quiosque não tem voz
heard = ouvi “{ $text }”
heard-nothing = não foi uma palavra que eu conheça
heard-not-allowed = “{ $text }” não é uma das palavras deste momento
heard-too-short = foi curto demais
heard-doubtful = “{ $text }”? Não tenho certeza, diga de novo

text-changed = O texto deste procedimento mudou desde o começo da sessão. Não é possível continuar com ele. Encerre a sessão e comece de novo.
cannot-take-up = Não é possível continuar esta sessão. { $why }

recorded = O que foi anotado
took = Levou { $time }.
confirmed-by-voice = { $n ->
    [one] { $n } confirmação por voz
   *[other] { $n } confirmações por voz
}
confirmed-by-touch = { $n ->
    [one] { $n } confirmação por toque
   *[other] { $n } confirmações por toque
}
confirmed-by-key = { $n ->
    [one] { $n } confirmação por tecla
   *[other] { $n } confirmações por tecla
}
readings = Leituras
reading-taken = { $what }: { $number }
limit-least = limite: { $least } ou mais
limit-most = limite: { $most } ou menos
limit-least-most = limite: de { $least } a { $most }
limit-none = sem limite
deviations = Desvios
no-deviations = Nenhum desvio.
deviation-reading = { $what }: { $number } ficou fora do limite.
deviation-count = { $what }: { $number } contadas, { $expected } na lista de peças.
deviation-passes = Não ficou certo depois de { $number } passadas: { $what }
deviation-verify = O teste falhou: { $what }
deviation-none-left = Sem peça de reposição: { $what }
deviation-problem = Problema: { $what }
left-unsafe = Avise a próxima pessoa
journal-head = Diário { $hash }

## Folha de parede
sheet-kind = Folha de parede, para quando o quiosque não pode ser usado
sheet-text = versão { $version }, texto { $digest }
sheet-practice = Treino: uma loja inventada. Não trabalhe com esta folha.
sheet-drafted = Este texto é um rascunho feito por máquina. Falta a revisão de um falante.
sheet-no-lockout = Esta folha não substitui o bloqueio de energia. Ela não pode parar a máquina nem parar você.
sheet-in-order = Faça todos os passos nesta ordem. Marque cada um quando estiver feito.
sheet-stop-at-holds = Numa retenção de segurança, pare. Siga só quando ela estiver confirmada e testada.
sheet-after-break = Depois de uma pausa ou de uma troca de pessoa, confirme de novo cada retenção de segurança que ainda deve valer. Lave as mãos de novo.
sheet-machine = Máquina
sheet-name = Nome
sheet-date = Data
sheet-begun = Começo
sheet-ended = Fim
sheet-signature = Assinatura
sheet-supervisor = Supervisor
sheet-second-person = Segunda pessoa
sheet-done = Feito
sheet-step = Passo
sheet-write-down = Anote
safety-hold = RETENÇÃO DE SEGURANÇA
sheet-say-aloud = Quando for assim, diga em voz alta: { $phrase }.
sheet-try-out = Teste
sheet-it-is-so = É assim
sheet-least = Deve ser { $least } ou mais.
sheet-most = Deve ser { $most } ou menos.
sheet-least-most = Deve ficar entre { $least } e { $most }.
sheet-no-limit = Sem limite; anote.
sheet-limit-source = Limite: { $source }
sheet-if-off = Se não estiver certo
sheet-wait = Tempo: { $time } ou mais.
sheet-passes = Passadas: pelo menos { $least }, no máximo { $most }.
sheet-pass = Passada
sheet-parts-list = Lista de peças: { $part }, { $expected }.
sheet-counted = Contadas
sheet-look-at = Olhe: { $part }
sheet-good = em bom estado
sheet-replaced = trocada
sheet-none-left = sem reposição
sheet-problems = Quando algo está errado
sheet-stops-service = Tire a máquina de serviço.
sheet-end-of-work = Fim do trabalho
sheet-left-at = Não terminou? Parou no passo
sheet-told-to = Próxima pessoa avisada

picture-established = passa a valer
picture-relied-on = conta-se com ela
picture-ended = deixa de valer
picture-by-hold = confirmada numa retenção de segurança
picture-danger = perigo enquanto dura
picture-other = outra condição
picture-not-in-force = conta-se com ela, mas não está valendo
picture-page = página { $page } de { $pages }

## Fazer uma conta ao lado do passo.
say-reckon = fazer uma conta
say-ask-again = última resposta de novo
say-back-to-the-step = voltar ao passo
which-reckoning = Que conta você quer fazer?
reckoned = As contas estão feitas.
not-one-of = { $given } não é uma das respostas.
not-a-number = { $given } não é um número. Escreva algarismos, como 12,5.
not-believable = Não pode ser: deve ficar entre { $least } e { $most }.
not-whole = { $given } deve ser um número inteiro.
cannot-work-out = Esta conta não pode ser feita.
say-other-reckonings = outra conta
say-hours = { $n ->
    [1] uma hora
    [2] duas horas
    [21] vinte e uma horas
    [22] vinte e duas horas
   *[other] { $number } horas
}
say-minutes = { $n ->
    [one] { $number } minuto
   *[other] { $number } minutos
}
say-days = { $n ->
    [one] { $number } dia
   *[other] { $number } dias
}
say-gallons = { $n ->
    [one] { $number } galão
   *[other] { $number } galões
}
say-quarts = { $n ->
    [one] { $number } quarto
   *[other] { $number } quartos
}
say-tubes = { $n ->
    [one] { $number } tubo
   *[other] { $number } tubos
}
say-colonies = { $n ->
    [1] uma colônia
    [2] duas colônias
   *[other] { $number } colônias
}
say-results = { $n ->
    [one] { $number } resultado
   *[other] { $number } resultados
}
say-ph = { $n ->
   *[other] pê agá { $number }
}
# Um dia como se diz: dia da semana, dia, mês, ano.
day-said = { $weekday ->
    [mon] segunda-feira
    [tue] terça-feira
    [wed] quarta-feira
    [thu] quinta-feira
    [fri] sexta-feira
    [sat] sábado
   *[sun] domingo
}, { $day } de { $month ->
    [jan] janeiro
    [feb] fevereiro
    [mar] março
    [apr] abril
    [may] maio
    [jun] junho
    [jul] julho
    [aug] agosto
    [sep] setembro
    [oct] outubro
    [nov] novembro
   *[dec] dezembro
} de { $year }

# Por que a conta não pode ser feita.
cannot-label-bad-percent = { $percent } por cento não pode ser; escreva a porcentagem do rótulo, acima de 0 e até 100.
cannot-label-share-not-percent = { $percent } por cento é pouco demais para um produto sólido; se a parte no rótulo é { $percent }, escreva { $mend } por cento.
cannot-label-bad-gravity = Uma densidade relativa de { $gravity } não pode ser; escreva a do rótulo, como 1,08.
cannot-label-too-strong = Nenhuma solução de cloro tem { $percent } por cento comercial; escreva os gramas de cloro disponível por litro, divididos por 10.
cannot-label-bad-dilution = A diluição de um rótulo precisa de mais que zero de produto e de concentração.
cannot-label-bad-packet = Os gramas de um pacote devem ser mais que zero.
cannot-dose-bad-strength = Uma concentração de { $wanted } não pode ser feita; peça mais que zero.
cannot-dose-bad-water = { $water } de água não dá para encher; escreva mais que zero.
cannot-dose-bad-count = { $count } medidas não dá para medir; escreva mais que zero.
cannot-dose-wanted-over-cap = { $wanted } passa do máximo de { $cap }; peça { $cap } ou menos.
cannot-dose-over-cap = { $count } medidas em { $water } dão { $strength }, acima do máximo de { $cap }; use pelo menos { $least_water } de água, uma medida menor ou pacotes menores.
cannot-dose-too-weak = O próprio produto tem { $strongest } e não consegue dar { $wanted }; use um produto mais forte.
cannot-dose-wrong-measure = Este produto não pode ser medido assim; use outra medida.
cannot-dose-over-full = { $count } medidas são mais que { $water }; use uma medida menor.
cannot-solution-bad-strength = Uma concentração de { $strength } não pode ser; leia a fita de novo.
cannot-solution-bad-ph = Um pH de { $ph } não pode ser; fica entre 0 e 14, leia a fita de novo.
cannot-solution-bad-hardness = Uma dureza de { $hardness } não pode ser; teste a água de novo.
cannot-solution-bad-temperature = { $temperature } não pode ser a temperatura de uma solução; diga em Celsius ou Fahrenheit e leia de novo.
cannot-solution-other-label = O rótulo é de outro desinfetante, não o da solução; use o rótulo certo.
cannot-share-bad-ph = Um pH de { $ph } não pode ser; fica entre 0 e 14, leia a fita de novo.
cannot-share-no-number = { $temperature } não pode ser uma temperatura; leia de novo.
cannot-share-too-cold = { $temperature } está abaixo de { $least } graus Celsius, onde nada se sabe do equilíbrio.
cannot-share-too-warm = { $temperature } está acima de { $most } graus Celsius, onde nada se sabe do equilíbrio; deixe esfriar.
cannot-growth-outside-range = O modelo vale de { $least } a { $most } graus Celsius, não a { $celsius }; não use nenhum modelo.
cannot-growth-not-finite = Um valor de { $value } não é um número; dê um valor medido.
cannot-growth-negative = Um valor de { $value } é menos que zero; dê zero ou mais.
cannot-growth-not-positive = Um valor de { $value } deve ser mais que zero.
cannot-growth-no-room = O máximo de germes, 10^{ $most }, deve ser mais que no começo, 10^{ $start }.
cannot-growth-absurd-count = 10^{ $value } germes não podem ser contados; o expoente fica entre -3 e 12.
cannot-growth-no-growth-there = O modelo não tem crescimento a { $celsius }; converta só a partir de um teste mais quente.
cannot-growth-gap = Nada foi lido durante { $hours }; uma soma por cima disso não diz nada, por isso deixe de fora.
cannot-growth-too-few = Uma velocidade precisa de contagens em dois momentos ou mais; conte de novo mais tarde.
cannot-log-no-readings = O registro não tem nenhuma leitura; tire uma e anote.
cannot-log-bad-instant = O momento { $at } não é um número de segundos; anote quando foi lido.
cannot-log-bad-unit = “{ $unit }” não é uma unidade de temperatura; use °C ou °F.
cannot-log-absurd = { $temperature } não pode ser a temperatura da mistura; confira a sonda e leia de novo.
cannot-log-bad-gap = O maior intervalo entre leituras, { $gap }, deve ser mais que zero.
cannot-log-ends-first = O tempo olhado termina ({ $until }) antes de começar ({ $since }); troque os dois.
cannot-log-before-start = O tempo olhado ({ $now }) fica antes de { $start }; confira o relógio.
cannot-log-no-points = Nenhum ponto de medida foi citado; cite cada um que deve estar quente.
cannot-log-empty-point = Um ponto de medida não tem leitura; leia-o ou conserte a sonda.
cannot-log-bad-time = Um tempo de { $seconds } não pode ser mantido; dê zero ou mais.
cannot-log-bad-fat = { $percent } por cento de gordura não pode ser; dê um número de 0 a 100.
cannot-log-bad-z = Um z de { $z } a partir de { $reference } não faz sentido; z fica entre 1 e 50, a referência entre -50 e 150.
cannot-log-bad-pairs = São precisos dois pares com tempos diferentes, maiores que zero.
cannot-log-gap = Nada foi lido durante { $seconds }, e não podem passar mais de { $gap } sem leitura; dê uma parte do registro sem essa falha.
cannot-date-unknown-zone = “{ $zone }” não é um fuso horário conhecido aqui; use um nome como Europe/Berlin, e veja se os dados de fusos horários (tzdata) estão instalados.
cannot-date-has-zone = { $local } já traz um fuso horário; dê a hora como o relógio de parede a mostrou.
cannot-date-twice = { $local } veio duas vezes naquela noite em { $zone }: { $first } e { $second }; diga qual.
cannot-date-skipped = { $local } nunca veio em { $zone }: os relógios foram adiantados; quer dizer { $first } ou { $second }, por isso diga qual.
cannot-date-ends-first = { $end } fica antes de { $begin }; troque os dois, ou corrija o errado.
cannot-date-bad-freeze = Congelada em { $frozen } não pode vir depois de { $before }; corrija as datas.
cannot-date-still-frozen = Foi congelada de novo em { $frozen } sem ter sido descongelada; anote quando.
cannot-date-frozen-unopened = Tem tempos no congelador, mas nenhum dia de abertura; anote-o.
cannot-date-absurd-year = { $day } não pode ser um dia em que se usa a mistura; corrija o ano.
cannot-date-no-packages = Nenhuma mistura está no registro; anote o que há na geladeira.
cannot-date-bad-instant = { $at } não é um momento; dê os segundos desde 1970.
cannot-plate-bad-dilution = Diluição { $dilution }: escreva 1:100 como 0,01 e sem diluir como 1.
cannot-plate-bad-volume = Volume { $volume }: escreva os mililitros postos na placa, acima de 0.
cannot-plate-bad-spread = Espalhamento { $spread }: escreva a parte da placa, como 0,25.
cannot-plate-bad-colonies = { $colonies } colônias: escreva 0 ou mais.
cannot-plate-no-area = Uma placa com mais de 100 colônias por centímetro quadrado precisa da sua área em centímetros quadrados.
cannot-plate-no-plate = Nenhuma placa: dê pelo menos uma.
cannot-plate-no-count = Uma placa marcada não tem contagem.
cannot-tubes-bad-amount = { $amount } num tubo: escreva os gramas de amostra, acima de 0.
cannot-tubes-bad-tubes = { $tubes } tubos: escreva quantos tubos receberam esta quantidade, 1 ou mais.
cannot-tubes-bad-positive = { $positive } de { $tubes } tubos positivos: escreva de 0 a { $tubes }.
cannot-tubes-no-tubes = Nenhum tubo: dê pelo menos uma diluição.
cannot-tubes-one-tube = Um tubo só não dá número: dê pelo menos dois tubos.
cannot-plan-no-sample = n = { $n }: um plano precisa de pelo menos uma amostra.
cannot-plan-bad-c = c = { $c }: escreva de 0 a n, aqui { $n }.
cannot-plan-bad-m = m = { $m }: escreva 0 ou mais.
cannot-plan-bad-top = M = { $top }: M deve ficar acima de m = { $m }; duas classes não têm M.
cannot-plan-other-number = { $given } amostras para um plano de { $n }: dê { $n } resultados de um lote.
cannot-result-number-missing = Um resultado deste tipo deve ter um número.
cannot-result-number-too-many = Um resultado deste tipo não deve ter número.
cannot-result-bad-number = { $value } não é uma contagem; escreva 0 ou mais.
cannot-result-no-result = “{ $text }” não é um resultado; escreva como 1200, < 10, > 1100 ou spreaders.
cannot-limit-several-limits = { $title } tem { $count } limites para { $test } em { $product }: deixe um.
cannot-limit-no-limit = { $title } não tem limite para { $test } em { $product }.
cannot-limit-other-unit = { $title } dá o limite por { $limit_per }, e este resultado é por { $per }.
cannot-limit-no-authority = Nenhuma autoridade se chama “{ $called }”; conhecidas são { $known }.
cannot-limit-no-plan = Nenhum plano de amostragem se chama “{ $called }”; conhecidos são { $known }.

reckon-dose = Desinfetante: quanto pôr
call-dose = quanto pôr
ask-dose-unit = Você vai dar a água em litros, galões ou quartos?
ask-dose-water = Quanta água é?
ask-dose-wanted = Que concentração deve ter, em partes por milhão?
pick-in-litres = em litros
pick-in-gallons = em galões
pick-in-quarts = contar em quartos
dose-put = Ponha { $count } pacotes em { $water } de água. Isso dá { $strength }.
dose-put-one = Ponha um pacote em { $water } de água. Isso dá { $strength }.
dose-rounded = O exato seriam { $exact } pacotes. Pacotes inteiros deixam a solução { $gained } mais forte.
dose-exact = É exato, nada foi arredondado.
dose-grams = Por peso, a dose exata é { $grams }.
dose-in-range = Está entre { $least } e { $most }. Teste com uma fita.
dose-below-range = É fraca demais: deve ficar entre { $least } e { $most }.
dose-above-range = É forte demais: deve ficar entre { $least } e { $most }.
dose-no-range = Os limites deste lugar não têm uma faixa para isto. Siga o rótulo.
dose-wanted-over-cap = { $wanted } passa do máximo permitido sem enxágue, { $cap }. Peça isso ou menos.
dose-over-cap = Pacotes inteiros necessários: { $count }. Em { $water } dão { $strength }, acima do máximo permitido, { $cap }. Use { $needed } de água ou mais.

reckon-strength = Desinfetante: está forte o bastante?
call-strength = forte o bastante
ask-strength-strip = Quanto marca a fita, em partes por milhão?
ask-strength-acidity = Qual é o pH da solução?
ask-strength-temperature = Qual é a temperatura da solução?
strength-passes = Está forte o bastante. Deixe agir { $time } ou mais.
strength-passes-at-once = Está forte o bastante. Não há tempo fixado.
strength-label-first = Onde o rótulo do produto pedir mais, faça como o rótulo diz.
strength-any-ph = O pH não foi medido: só contou o que o código lista para todo pH até { $most }.
pick-not-measured = ninguém mediu
strength-no-row = Não passa: o código não lista uma solução assim.
strength-over-cap = Está forte demais para usar sem enxágue.
strength-off-label = Não passa: o rótulo do produto não permite.
strength-no-contact-time = Não passa: nada diz quanto tempo deve agir.
strength-no-table = Os limites deste lugar, { $profile }, não listam soluções desinfetantes, por isso nada pode passar. Pergunte ao supervisor.
strength-to-mend = Para corrigir:
strength-or = Ou:
strength-test-again = Depois teste de novo.
strength-ask = Pergunte ao supervisor.
need-stronger = Deixe-a em { $value } ou mais.
need-weaker = Ponha água até ficar em { $value } ou menos.
need-warmer = Aqueça até { $value } ou mais.
need-lower-ph = Baixe o pH até { $value } ou menos.
need-softer-water = Use água com { $value } de dureza ou menos.
need-measure-strength = Meça a concentração.
need-measure-ph = Meça o pH.
need-measure-ph-up-to = Meça o pH. Deve ser { $value } ou menos.
need-measure-temperature = Meça a temperatura.
need-measure-hardness = Meça a dureza da água.
need-read-label = Anote o que diz o rótulo do produto.

reckon-free-chlorine = Desinfetante: por que o pH importa
call-free-chlorine = cloro e acidez
ask-free-chlorine-kind = É água sanitária, ou pó ou pastilhas?
ask-free-chlorine-strip = Quanto marca a fita, em partes por milhão?
ask-free-chlorine-acidity = Qual é o pH da solução?
ask-free-chlorine-temperature = Qual é a temperatura da solução?
pick-bleach = água sanitária
pick-powder = pó ou pastilhas
free-chlorine-share = Com pH { $ph }, { $percent } por cento do cloro livre está na forma que mata depressa: { $acid } de { $free }.
free-chlorine-at-most = Os pós prendem parte do seu cloro, por isso é menos que isso.
free-chlorine-extrapolated = A água está mais quente do que os dados da fórmula.
free-chlorine-explains = Isto só explica por que se mede o pH. Nada passa nem falha por isto.

reckon-cold = Mistura: esteve fria o tempo todo?
call-cold = ficou fria
ask-cold-hours = Há quantas horas a mistura foi medida pela última vez e estava fria? Se ninguém souber, responda 72 horas.
ask-cold-now = Qual é a temperatura da mistura agora?
ask-cold-power = Faltou energia desde então?
ask-cold-plan = Há um procedimento escrito para manter mistura sem refrigeração, e o recipiente traz a hora de descarte?
ask-cold-watched = Foi medida a cada hora desde então, e nunca passou de 70 graus Fahrenheit, 21 Celsius?
pick-stayed-on = a energia não faltou
pick-was-out = faltou energia
pick-not-known = ninguém sabe dizer
pick-plan-there = temos as duas coisas
pick-plan-missing = falta alguma coisa
pick-watched = a cada hora
pick-not-watched = menos vezes que isso
cold-kept = A mistura estava fria nas duas leituras, agora { $now }, e a energia não faltou. Pode ser servida.
cold-unwatched = A mistura está fria agora: { $now }. Mas ninguém a mediu durante { $time }: esse tempo é desconhecido, não frio.
cold-watch-it = Não a sirva antes de o supervisor decidir. A partir de agora, meça a cada quatro horas.
cold-left = Ainda pode ser servida por { $left }. Depois jogue fora.
cold-clock-runs = O tempo continua correndo, mesmo que a mistura esfrie de novo.
cold-throw-away = Não sirva esta mistura. Jogue fora.
cold-unknown-is-warm = O tempo que ninguém vigiou conta como quente.
cold-ground-no-procedure = Não há procedimento escrito disponível.
cold-ground-start-not-cold = Nada mostra que estava fria no começo.
cold-ground-unmarked = O recipiente não traz a hora de descarte.
cold-ground-marked-too-late = A hora de descarte é mais tarde do que a regra permite.
cold-ground-time-is-up = O tempo sem refrigeração acabou.
cold-ground-too-warm = Esteve mais quente do que a regra permite em qualquer momento.
cold-ground-not-watched = Faltam leituras, por isso ninguém sabe o quanto esquentou.

reckon-growth = Mistura: como os germes crescem
call-growth = germes crescendo
ask-growth-temperature = Qual é a temperatura da mistura?
ask-growth-hours = Por quantas horas?
growth-listeria = A { $temperature } por { $time }, a listeria pode ficar { $times } vezes maior em número. Na escala logarítmica é { $log }.
growth-spoilers = Os germes que estragam o leite podem ficar { $times } vezes maiores em número. Na escala logarítmica é { $log }.
growth-explains = Isto só explica por que as regras são rígidas. A mistura passa ou falha pelas regras, nunca por isto.

reckon-use-by = Mistura: o último dia
call-use-by = último dia
ask-use-by-state = A bolsa está aberta, ou ainda fechada?
ask-use-by-opened = Há quantos dias foi aberta? Hoje é zero.
ask-use-by-frozen = Quantos dias inteiros ficou no congelador desde então? Os dias em que entrou e saiu não contam.
ask-use-by-printed = Há nela uma data de validade impressa pelo fabricante?
ask-use-by-when = Essa data ainda vem, ou já passou? Hoje ainda vem.
ask-use-by-date = Faltam quantos dias para essa data, ou há quantos passou? Hoje é zero.
pick-opened = está aberta
pick-sealed = ainda fechada
pick-nobody-wrote = aberta e sem data
pick-date-printed = tem uma data
pick-no-date = nada impresso
pick-still-to-come = ainda está por vir
pick-already-over = já passou
use-by-last-day = O último dia é { $day }. Dias que restam, com hoje: { $left }.
use-by-then-away = Jogue fora quando esse dia terminar.
use-by-kept-cold = Isto vale só para mistura guardada a { $most } ou menos.
use-by-throw-away = Não use esta bolsa. Jogue fora.
use-by-frozen-too-long = Não pode ter ficado congelada { $frozen } dias inteiros se foi aberta há { $opened } dias. Diga os dias de novo.
bar-too-warm = Foi guardada quente demais, ou ninguém sabe a que temperatura.
bar-undated = Ninguém anotou quando foi aberta, ou até quando dura.
bar-wrongly-dated = As datas não podem estar certas.
bar-frozen = Está congelada. Descongele primeiro.
bar-days-are-up = Já esteve aberta todos os seus dias.
bar-makers-date-passed = A validade do fabricante já passou.
bar-mark-passed = O último dia da etiqueta já passou.

reckon-pour-next = Mistura: qual bolsa usar agora
call-pour-next = qual bolsa
ask-pour-next-state = Bolsa { $place }: está aberta, ou ainda fechada?
ask-pour-next-opened = Bolsa { $place }: há quantos dias foi aberta? Hoje é zero.
ask-pour-next-printed = Bolsa { $place }: há nela uma data de validade impressa pelo fabricante?
ask-pour-next-when = Bolsa { $place }: essa data ainda vem, ou já passou? Hoje ainda vem.
ask-pour-next-date = Bolsa { $place }: faltam quantos dias para essa data, ou há quantos passou? Hoje é zero.
ask-pour-next-another = A bolsa { $place } está anotada. Há outra bolsa?
pick-another = tem mais uma
pick-no-more = era só isso
pour-first = Despeje agora a bolsa { $bag }. O último dia dela é { $day }.
pour-then = Depois a bolsa { $bag }. O último dia dela é { $day }.
pour-not = Não use a bolsa { $bag }.
pour-none = Nenhuma destas bolsas pode ser usada.

reckon-heat-treatment = Tratamento térmico: a máquina pode servir?
call-heat-treatment = tratamento térmico
ask-heat-treatment-coldest = Qual foi o ponto mais frio da mistura enquanto foi mantida quente?
ask-heat-treatment-minutes = Quantos minutos foi mantida assim?
ask-heat-treatment-ended = Há quantas horas isso terminou?
ask-heat-treatment-strip = Há quantos dias a máquina foi desmontada, limpa e desinfetada pela última vez?
heat-allowed = A máquina pode servir. Ela se bloqueia em { $left } se nada mais for feito.
heat-locked = O servir está bloqueado.
heat-only-this-pair = Só vale o par da lista: { $hot } em todo ponto por { $time } sem interrupção.
heat-lapse-no-heat = Nenhum ciclo de calor está no registro.
heat-lapse-heat-failed = O ciclo de calor falhou: { $coldest } por { $minutes } no ponto mais frio.
heat-lapse-heat-overdue = O último ciclo de calor terminou há mais de um dia. Faça um agora.
heat-lapse-no-strip = Nenhuma desmontagem completa está no registro.
heat-lapse-strip-overdue = A máquina está há mais de { $days } dias sem ser desmontada. Desmonte, limpe e desinfete.

reckon-plate-count = Laboratório: contagem em placa
call-plate-count = contar placas
ask-plate-count-rule = Por qual regra: FDA ou ISO?
ask-plate-count-exponent = Placa { $place }: qual diluição decimal está nela? Um em cem é número dois, sem diluir é número zero.
ask-plate-count-kind = Placa { $place }: deu para contar?
ask-plate-count-colonies = Placa { $place }: quantas colônias há nela?
ask-plate-count-more = A placa { $place } está anotada. Há outra placa?
pick-fda-rule = regra americana
pick-iso-rule = norma internacional
pick-counted = eu contei
pick-too-full = cheia demais para contar
pick-overgrown = crescimento espalhado
pick-spoiled-plate = acidente de laboratório
pick-another-plate = tem outra placa
plate-exact = { $amount } unidades formadoras de colônias por grama.
plate-estimated = { $amount } unidades formadoras de colônias por grama, estimado.
plate-less-than = Menos de { $amount } unidades formadoras de colônias por grama.
plate-more-than = Mais de { $amount } unidades formadoras de colônias por grama.
plate-spreaders = Não há contagem: o crescimento espalhado cobre demais todas as placas. Semeie a amostra de novo.
plate-laboratory-accident = Não há contagem: nenhuma placa pôde ser usada. Semeie a amostra de novo.
plate-why-out-of-range = Placas fora de { $least } a { $most } colônias foram deixadas de fora.
plate-why-other-dilution = Placas além das duas primeiras diluições seguidas foram deixadas de fora.
plate-why-spreader = Placas com crescimento espalhado em mais de um quarto foram deixadas de fora.
plate-why-accident = Placas perdidas por acidente foram deixadas de fora.
plate-why-all-low = Todas as placas têm menos de { $least } colônias.
plate-why-no-colonies = Nenhuma placa tem colônias.
plate-why-all-high = Todas as placas têm mais de { $most } colônias.
plate-why-none-in-range = Nenhuma placa tem de { $least } a { $most } colônias.
plate-why-no-number = A placa mais cheia não pôde ser contada.
plate-why-present = Há colônias, mas poucas demais para estimar.

reckon-mpn = Laboratório: número mais provável
call-mpn = três tubos
ask-mpn-tenth = De três tubos com um décimo de grama, quantos são positivos?
ask-mpn-hundredth = De três tubos com um centésimo de grama, quantos são positivos?
ask-mpn-thousandth = De três tubos com um milésimo de grama, quantos são positivos?
mpn-exact = O número mais provável é { $amount } por grama.
mpn-less-than = O número mais provável é menos de { $amount } por grama.
mpn-more-than = O número mais provável é mais de { $amount } por grama.
mpn-limits = Com 95 por cento de confiança, fica entre { $low } e { $high }.
mpn-limit-below = Com 95 por cento de confiança, é { $low } ou mais.
mpn-improbable = Estes tubos são muito improváveis. Suspeite de um erro e teste de novo.

reckon-lot = Laboratório: amostras de um lote
call-lot = amostras do lote
ask-lot-plan = Qual plano de amostragem?
ask-lot-count = Amostra { $place }: quantas unidades formadoras de colônias por grama?
ask-lot-found = Amostra { $place }: foi encontrada?
pick-eu-ice-cream-enterobacteriaceae = germes intestinais
pick-eu-listeria-shelf-life = listeria na loja
pick-eu-listeria-at-producer = listeria antes da venda
pick-eu-ice-cream-salmonella = salmonela em sorvete
pick-found = foi encontrada
pick-not-found = não havia nenhuma
lot-satisfactory = O lote é satisfatório.
lot-acceptable = O lote é aceitável. Olhe a higiene.
lot-unsatisfactory = O lote não é satisfatório. Chame o supervisor.
lot-unknown = As amostras deixam isso em aberto. Teste-as de novo.
lot-above = Amostras acima de { $limit }: { $above } de { $of }. No máximo podem ser { $may }.
lot-above-top = Amostras acima de { $limit }: { $above }. Nenhuma pode estar.
lot-presence = Encontrada em { $found } de { $of } amostras. Não pode estar em nenhuma.
ask-lot-bound = Amostra { $place }: o laudo diz menos de quantas?

reckon-authority = Laboratório: o que a autoridade faz
call-authority = a autoridade
ask-authority-who = Os limites de quem?
ask-authority-test = Qual teste?
ask-authority-product = De que era a amostra?
ask-authority-results = Quantos últimos resultados há, em dias separados? No máximo cinco.
ask-authority-result = Resultado { $place }, o mais antigo primeiro: quantas unidades formadoras de colônias?
pick-usda = departamento de agricultura
pick-iowa = iowa
pick-maryland = maryland
pick-north-carolina = carolina do norte
pick-kansas = kansas
pick-connecticut = connecticut
pick-houston = houston
pick-california-frozen-yogurt = califórnia
pick-grade-a-milk = a norma do leite
pick-total-count = contagem total
pick-coliform = coliformes
pick-enterobacteriaceae = germes intestinais
pick-listeria-monocytogenes = listeria
pick-salmonella = salmonela
pick-yeast = levedura
pick-mold = mofo
pick-plain = sorvete simples
pick-bulky = fruta, nozes ou chocolate
pick-sherbet = sorvete de frutas com leite
pick-frozen-yogurt = iogurte congelado
pick-mix = mistura antes de congelar
pick-milk = leite
authority-clear = Sem aviso: { $over } dos últimos { $of } resultados passam do limite.
authority-notice = Aviso: { $over } dos últimos { $of } resultados passam do limite. Tire outra amostra entre 3 e 21 dias depois do aviso.
authority-action = Medida: { $over } dos últimos { $of } resultados passam do limite. A autoridade pode parar a venda.
authority-each-clear = O último resultado está dentro do limite.
authority-each-action = Medida: o último resultado passa do limite, e nenhum pode passar.
authority-average-kept = A média logarítmica dos últimos quatro resultados está dentro do limite.
authority-average-over = Medida: a média logarítmica dos últimos quatro resultados passa do limite.
authority-limit-g = O limite é { $limit } por grama.
authority-limit-ml = O limite é { $limit } por mililitro.
authority-cleared-by = Dias de amostra seguidos dentro do limite que encerram isso: { $days }.
authority-rule-not-stated = Esta autoridade não dá regra para resultados seguidos. Julgou-se por dois dos últimos quatro e três dos últimos cinco.
ask-authority-bound = Resultado { $place }: o laudo diz menos de quantas?
authority-unknown = Não se sabe: { $over } dos últimos { $of } resultados com certeza passam do limite, e outros podem passar.
authority-each-unknown = Não se sabe: o último resultado pode passar do limite.
authority-average-unknown = Não se sabe: a média logarítmica dos últimos quatro resultados pode passar do limite.
authority-may-be-action = Talvez já seja o caso de uma medida.

reckon-trend = Laboratório: alerta antecipado
call-trend = alerta antecipado
ask-trend-test = Qual teste?
ask-trend-limit = Qual é o limite, em unidades formadoras de colônias por grama?
ask-trend-results = Quantos resultados há? Pelo menos oito.
ask-trend-result = Resultado { $place }, o mais antigo primeiro: quantas unidades formadoras de colônias?
trend-too-few-results = Há resultados de menos para uma tendência.
trend-steady = Os resultados são estáveis.
trend-shift = A média móvel passou do seu limite de controle.
trend-rise = Os resultados sobem com o tempo.
trend-early = Nenhum resultado passa ainda de { $limit }: olhe agora a limpeza deste cilindro.
trend-over = Um resultado já passa de { $limit }.
trend-no-chart = Contagens diferentes de menos para um gráfico de controle.
trend-even-days = Os resultados foram tomados como igualmente espaçados no tempo.
trend-needs-scipy = Uma tendência precisa da biblioteca scipy, que não está instalada aqui. Instale com: pip install "brushdown[laboratory]".
ask-trend-bound = Resultado { $place }: o laudo diz menos de quantas?
pick-below-detection = abaixo do detectável
results-left-open = Resultados que podem passar de { $limit }, pois o laudo só diz menos de um número maior: { $count }. Peça que sejam testados com menos diluição.

## Números do trabalho
typed-nothing = Nada foi digitado. Digite um número.
typed-no-number = “{ $text }” não é um número. Digite em algarismos, como 38,5.
typed-fraction = “{ $text }” tem uma fração ou um algarismo elevado. Digite um número decimal, como 0,5.
typed-two-readings = “{ $text }” pode ser lido como { $first } ou como { $second }. Digite { $first } ou { $second }.
typed-mixed = “{ $text }” tem mais de um número. Faça dele um só número com uma só unidade.
typed-no-unit = “{ $text }” não tem unidade. Acrescente uma destas: { $units }.
typed-unknown-unit = “{ $unit }” não é uma unidade conhecida aqui. Use uma destas: { $units }.
typed-ounce = “{ $unit }” é um peso, e aqui se pede um volume. Digite fl oz para onças líquidas.
typed-negative = { $number } é menos que zero. Digite um número de { $least } a { $most }.
typed-out-of-range = { $number } não pode estar certo. Deve ficar entre { $least } e { $most }.
typed-no-time = “{ $text }” não é uma hora do dia. Digite como 21:30.
typed-no-such-time = Não existe a hora “{ $text }”. A última é 23:59; com am ou pm, 12:59.
typed-twelve = “{ $text }” pode ser meia-noite ou meio-dia. Digite { $first } ou { $second }.
typed-half-of-day = “{ $text }” pode ser de manhã ou à noite. Digite { $first } ou { $second }.

## Apertar para falar
ear-press-to-talk = Não ouço: aperte { $key } e depois fale
ear-pressed = Estou ouvindo; aperte { $key } para parar

refused-press-for-hold = As suas próprias palavras não respondem a uma retenção de segurança. Aperte na tela.

## Teste de voz
voice-test-begin = Isto leva uns dois minutos. Vista o que você usa no trabalho, fique onde trabalha e deixe as máquinas ligadas.
voice-test-speak = 1. Fale { $seconds } segundos como falaria com o quiosque. Comece agora.
voice-test-level = A sua voz: { $rms } dB, pico { $peak } dB abaixo do máximo.
voice-test-silent = 2. Fique em silêncio { $seconds } segundos. Comece agora.
voice-test-noise = { $n ->
    [0] O lugar: { $rms } dB. O ruído não foi tomado por fala.
    [1] O lugar: { $rms } dB. O ruído foi tomado por fala uma vez.
   *[other] O lugar: { $rms } dB. O ruído foi tomado por fala { $n } vezes.
}
voice-test-say = 3. Diga cada uma destas quando aparecer.
voice-test-right = entendida
voice-test-wrong = tomada por “{ $text }”
voice-test-rejected = não entendida
voice-test-nothing = nada foi ouvido
voice-test-count = De { $said }, { $right } foram entendidas, { $rejected } não foram, e { $wrong } foram tomadas por outra coisa.
voice-test-above = A sua voz ficou { $decibels } dB mais alta que o lugar.
voice-test-no-ear = { $why }
voice-test-good = Este lugar serve para trabalhar por voz.
voice-test-bad = Este lugar não serve para trabalhar por voz.

spot-nothing-heard = Nenhuma fala foi ouvida. Veja se o microfone é o certo, se está ligado e com volume.
spot-no-ear = O quiosque não tem ouvido para este idioma. Trabalhe por toque, acrescente um modelo de fala, ou ensine as suas palavras a ele: kiosk voice teach.
spot-too-loud = O microfone está alto demais: os sons mais fortes são cortados. Abaixe-o.
spot-too-faint = A sua voz chega fraca demais. Aproxime o microfone da boca, ou aumente o volume dele.
spot-nearer = Aproxime o microfone da boca: dois dedos ao lado é o melhor.
spot-other-place = Aqui há muito barulho. Tente outro lugar, ou desligue máquinas e música enquanto trabalha.
spot-push-to-talk = Se o barulho continuar, use apertar para falar: em site.toml, sob [hearing], push_to_talk = true.
spot-wrong-heard = Uma palavra foi tomada por outra. Leia na tela o que foi ouvido antes de dizer sim.
spot-own-words = Não é o barulho. Fale com a sua voz normal, não mais devagar; ou ensine as suas palavras ao quiosque: kiosk voice teach.
spot-touch = Até lá, trabalhe por toque: todo passo pode ser feito na tela.

## Palavras próprias
teach-begin = Ensine as suas palavras ao quiosque, num lugar quieto. Cada palavra é dita três vezes. O que se guarda é como ela soa, em números, e nenhuma gravação.
teach-word = A sua palavra para “{ $word }”:
teach-too-short = Foi curta demais. Diga mais uma vez.
teach-too-long = Foi longa demais. Diga uma palavra curta.
teach-too-loud = Foi alta demais e saiu cortada. Afaste o microfone.
teach-too-faint = Foi fraca demais. Aproxime o microfone.
teach-too-noisy = Aqui há barulho demais. Ensine num lugar quieto.
teach-unlike = Soou diferente de antes. Diga do mesmo jeito cada vez.
teach-like-another = Soa como outra das suas palavras. Escolha outra palavra.
teach-nothing-heard = Nada foi ouvido.
teach-given-up = “{ $word }” não pôde ser ensinada, por isso nada foi guardado. Escolha uma palavra mais longa, ou um lugar mais quieto, e comece de novo.
teach-tried = Das suas { $said } amostras, { $right } teriam sido entendidas pelas outras.
teach-kept = As suas palavras estão guardadas em { $file }. São dados de uma pessoa: apague com --forget quando não forem mais necessárias.
teach-holds = Com elas não se responde a uma retenção de segurança: ali você diz a frase inteira, ou aperta.
teach-forgotten = As palavras próprias de { $worker } foram apagadas.
teach-nothing-kept = Nenhuma palavra própria de { $worker } estava guardada.

## Desvios
found-problem-open = { $named ->
    [yes] Problema não resolvido há { $time }: { $reason }. Em: { $what }
   *[other] Problema sem motivo dado, não resolvido há { $time }. Em: { $what }
}
found-problem = { $became ->
    [put-right] { $named ->
        [yes] Problema: { $reason }. O trabalhador disse que foi resolvido e seguiu. Em: { $what }
       *[other] Problema sem motivo dado. O trabalhador seguiu. Em: { $what }
    }
    [out-of-service] { $named ->
        [yes] Problema: { $reason }. A máquina foi tirada de serviço. Em: { $what }
       *[other] Problema sem motivo dado. A máquina foi tirada de serviço. Em: { $what }
    }
   *[other] { $named ->
        [yes] Problema: { $reason }. A sessão foi encerrada. Em: { $what }
       *[other] Problema sem motivo dado. A sessão foi encerrada. Em: { $what }
    }
}
found-out-of-service = A máquina foi tirada de serviço. Em: { $what }
found-ended-early = A sessão foi encerrada antes do fim. Em: { $what }
found-unfinished = Nada aconteceu há { $time }, e a sessão não terminou. Em: { $what }
found-no-way-in = Não havia como seguir com segurança. Em: { $what }
found-hold-touched-after-doubt = A retenção de segurança foi apertada depois de palavras duvidosas (“{ $heard }”): { $what }
found-hold-read-back-refused = “{ $heard }” foi tomado pela frase, e o trabalhador disse não: { $what }
found-try-out-failed = O teste mostrou que não era assim: { $what }
found-wait-short = { $clock ->
    [wall] Pelo relógio de parede passaram só { $waited } de { $needed }. O relógio foi acertado? { $what }
   *[other] Passaram só { $waited } de { $needed }: { $what }
}
found-wait-cut = Interrompido depois de { $waited } de { $needed }: { $what }
found-reading-off = { $told ->
    [yes] { $what }: { $number } ficou fora do limite ({ $limit }). O que fazer: { $corrective } Depois marcou { $then }.
   *[other] { $what }: { $number } ficou fora do limite ({ $limit }). Nenhuma ação corretiva é dada. Depois marcou { $then }.
}
found-reading-left-off = { $told ->
    [yes] { $what }: { $number } ficou fora do limite ({ $limit }), e nenhuma leitura posterior o cumpriu. O que fazer: { $corrective }
   *[other] { $what }: { $number } ficou fora do limite ({ $limit }), e nenhuma leitura posterior o cumpriu. Nenhuma ação corretiva é dada.
}
found-count-off = { $told ->
    [yes] { $what }: { $number } contadas ({ $limit }). O que fazer: { $corrective } Depois foram contadas { $then }.
   *[other] { $what }: { $number } contadas ({ $limit }). Depois foram contadas { $then }.
}
found-count-left-off = { $told ->
    [yes] { $what }: { $number } contadas ({ $limit }), e não foi corrigido. O que fazer: { $corrective }
   *[other] { $what }: { $number } contadas ({ $limit }), e não foi corrigido.
}
found-passes-ran-out = Ainda não estava certo depois da passada { $number }: { $what }
found-too-fast = Confirmado depois de { $time }, e leva { $least } ou mais: { $what }
found-none-in-stock = Sem peça de reposição: { $what }
found-shorter-than-usual = A sessão levou { $time }. O meio de { $number } anteriores é { $usual }.
found-longer-than-usual = A sessão levou { $time }. O meio de { $number } anteriores é { $usual }.
found-restarted = { $power ->
    [cut] O computador foi ligado de novo; a sessão ficou parada { $time }. Em: { $what }
   *[other] O quiosque foi iniciado de novo; a sessão ficou parada { $time }. Em: { $what }
}
found-back-step = Voltou de “{ $what }” para “{ $to }”.
found-touch-only = Todos os { $number } passos foram confirmados por toque, embora o ouvido funcione nesta máquina.
found-text-unknown = O texto de { $procedure }, versão { $version } ({ $digest }), não está mais aqui. Rapidez, tempos e peças não puderam ser todos julgados.
found-session-early = { $machine }, { $day }: { $duty ->
    [close] o trabalho da noite
    [open] o trabalho da manhã
   *[other] { $title }
} terminou às { $at }, muito antes do seu tempo ({ $begins } a { $until }).
found-session-late = { $machine }, { $day }: { $duty ->
    [close] o trabalho da noite
    [open] o trabalho da manhã
    [check] o controle do dia
   *[other] { $title }
} terminou às { $at }. O seu tempo era de { $begins } a { $until }.
found-session-not-finished = { $machine }, { $day }: { $duty ->
    [close] o trabalho da noite
    [open] o trabalho da manhã
    [check] o controle do dia
   *[other] { $title }
} começou e não terminou; última atividade { $at }. O seu tempo era de { $begins } a { $until }.
found-session-never-started = { $machine }, { $day }: { $duty ->
    [close] o trabalho da noite
    [open] o trabalho da manhã
    [check] o controle do dia
   *[other] { $title }
} não começou. O seu tempo era de { $begins } a { $until }.
found-overdue = { $machine }: { $duty ->
    [sample] uma amostra de laboratório
   *[other] { $title }
} era para até { $day } e não está no registro.
due-close = Trabalho da noite: { $machine }
due-open = Trabalho da manhã: { $machine }
due-check = Controle do dia: { $machine }
due-sample = Amostra de laboratório: { $machine }
due-other = { $title }: { $machine }
