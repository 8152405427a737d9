### A preparação: o que se pergunta uma vez a um local. Rascunho feito por máquina; falta a revisão de um falante.
### reviewed: no

setup = Preparação
setup-place = { $n } de { $all }
setup-back = voltar
setup-stop = parar, seguir depois
setup-done = pronto
setup-take = confirmar
setup-take-off = tirar
setup-go-on = seguir
setup-resumed = Você segue de onde parou. Nada se perdeu.
setup-left-aside = O arquivo do local mudou desde então. As respostas ainda não gravadas ficam de lado.
setup-not-kept = A resposta não pôde ser anotada ({ $why }). Fica guardada enquanto esta tela estiver aberta.
setup-not-answered = ainda sem resposta
setup-left = { $n ->
    [one] Falta uma pergunta.
   *[other] Faltam { $n } perguntas.
}
setup-ask-overview = Estas são as respostas. Aperte uma para mudá-la.
setup-write = está certo, gravar
setup-written = O local está gravado.
setup-leave = às máquinas
setup-wrong = { $n ->
    [one] Antes é preciso corrigir uma coisa. Nada foi gravado.
   *[other] Antes é preciso corrigir { $n } coisas. Nada foi gravado.
}
setup-changed-meanwhile = Alguém mudou site.toml enquanto isso. Nada foi gravado por cima. Pare aqui e comece de novo a partir desse arquivo.
setup-checking = Os tipos de máquina desta loja estão sendo verificados. Leva um momento.

setup-about-language = Idioma da preparação
setup-about-practice = Real ou prática
setup-about-name = Nome da loja
setup-about-time-zone = Fuso horário
setup-about-opens = Abre
setup-about-closes = Fecha
setup-about-closed-days = Dias fechados
setup-about-limits = Limites
setup-about-machines = Máquinas
setup-about-thermometer = Termômetro
setup-about-sink = Pia
setup-about-product = Desinfetante
setup-about-chlorine = Cloro disponível
setup-about-packet = Pacote
setup-about-strength = Concentração
setup-about-rinse = Enxágue
setup-about-languages = Idiomas da equipe
setup-about-people = Pessoas
setup-about-pin = Senha
setup-about-sound = Som
setup-about-isolation = Corte da energia
setup-about-label-rinse = Enxágue

setup-ask-language = Em que idioma você quer responder?
setup-note-language = A tela das máquinas também começa neste idioma. Depois cada pessoa tem o seu.
setup-ask-practice = É uma loja de verdade ou é para praticar?
setup-real = uma loja de verdade
setup-real-is = O que se confirma é o registro do trabalho real.
setup-practice-is = Cada sessão fica marcada como prática. Não é registro de trabalho real.
setup-ask-name = Como se chama a loja?
setup-ask-time-zone = Em que fuso horário fica a loja?
setup-note-time-zone = O certo mostra a hora que é agora.
setup-ask-city = Que cidade tem a mesma hora?
setup-note-city = Escolha a mais próxima que mostre a hora que é agora.
setup-ask-city-letter = Com que letra começa a cidade?
setup-zone-now = agora { $time }
setup-zone-america = América
setup-zone-europe = Europa
setup-zone-asia = Ásia
setup-zone-africa = África
setup-zone-australia = Austrália
setup-zone-pacific = Pacífico
setup-zone-atlantic = Atlântico
setup-zone-indian = Oceano Índico
setup-ask-opens = A que horas a loja abre?
setup-note-opens = Quatro algarismos, como 0930 para 9:30 da manhã.
setup-ask-closes = A que horas a loja fecha?
setup-note-closes = Quatro algarismos, como 2130 para 9:30 da noite.
setup-no-time = { $text } não é uma hora. Escreva quatro algarismos, como 0930 ou 2130.
setup-ask-closed-days = Em que dias a loja não abre?
setup-note-closed-days = Aperte um dia para mudá-lo. Em dia fechado não há nada a fazer.
setup-is-closed = fechado
setup-is-open = aberto
setup-add-day = uma data de cada ano
setup-no-day-closed = abre todos os dias
setup-never-open = A loja precisa abrir pelo menos um dia da semana.
setup-ask-month = Em que mês fica o dia fechado?
setup-ask-day = Que dia de { $month }?
setup-no-day = { $month } não tem dia { $text }.
setup-date = { $day } de { $month }
setup-weekday = { $day ->
    [monday] segunda-feira
    [tuesday] terça-feira
    [wednesday] quarta-feira
    [thursday] quinta-feira
    [friday] sexta-feira
    [saturday] sábado
   *[sunday] domingo
}
setup-month = { $month ->
    [m1] janeiro
    [m2] fevereiro
    [m3] março
    [m4] abril
    [m5] maio
    [m6] junho
    [m7] julho
    [m8] agosto
    [m9] setembro
    [m10] outubro
    [m11] novembro
   *[m12] dezembro
}

setup-ask-limits = Por quais limites se julgam as leituras?
setup-note-limits = Pergunte à autoridade que fiscaliza esta loja. A norma local vem primeiro.
setup-limit-mix-temperature = temperatura da mistura
setup-limit-sanitizer-strength = concentração do desinfetante
setup-limit-sanitizer-temperature = temperatura do desinfetante
setup-limit-contact-time = tempo de contato
setup-limit-wash-temperature = água de lavagem
setup-limit-hand-wash-time = lavagem das mãos
setup-limit-line = { $what }: { $bounds }
setup-limit-silent = não diz nada de: { $names }
setup-limit-unwalkable = com eles { $n } de { $all } procedimentos não podem ser feitos
setup-least = pelo menos { $least }
setup-most = no máximo { $most }
setup-bounds = de { $least } a { $most }

setup-ask-machines = Que máquinas há?
setup-note-machines = Aperte uma para mudá-la, ou acrescente outra.
setup-add-machine = acrescentar máquina
setup-ask-kind = Que tipo de máquina é?
setup-note-kind = Veja como a mistura desce da tremonha. Os tipos são inventados; o manual da máquina vem primeiro.
setup-kind-is = { $hoppers ->
    [one] uma tremonha
   *[other] { $hoppers } tremonhas
}, { $parts } peças
setup-kind-own = desta loja: { $kind }
setup-kind-spoilt = Não pode ser usado antes de ser corrigido; kiosk check diz tudo. { $why }
setup-kind-gone = { $who }: seu tipo de máquina, { $kind }, não está aqui. Mude o tipo ou retire a máquina.
setup-ask-machine-name = Como se chama a máquina na loja?
setup-note-machine-name = Para que ninguém a confunda com outra: por exemplo, pelo lugar onde fica.
setup-ask-option = { $who }: { $option }
setup-ask-machine = { $who }: o que mudar?
setup-change-name = nome
setup-change-kind = tipo de máquina
setup-change-language = idioma
setup-change-role = função
setup-take-off-machine = As sessões dela ficam no registro.
setup-amounts = quantidades e tempos
setup-ask-amounts = { $who }: estas quantidades e tempos estão certos?
setup-note-amounts = São os de um tipo inventado. Compare cada um com o manual da máquina e os rótulos, e aperte um para mudá-lo.
setup-amounts-right = estão certos
setup-ask-amount = { $what }: quanto?
setup-option-isolation-plug = plugue
setup-option-isolation-plug-is = Ela tem plugue. Quem trabalha o tira da tomada e o deixa à vista.
setup-option-isolation-lock = cadeado
setup-option-isolation-lock-is = Ela tem ligação fixa. Quem trabalha abre a chave e põe nela o próprio cadeado.
setup-setting-hand-wash-time = lavar as mãos
setup-setting-flush-volume = água de enxágue
setup-setting-cleaner-volume = solução de limpeza
setup-setting-circulate-time = age a limpeza
setup-setting-soak-volume = água de molho
setup-setting-soak-time = molho das peças
setup-setting-sanitizer-volume = solução desinfetante
setup-setting-contact-time = age o desinfetante
setup-setting-prime-volume = mistura de escorva
setup-setting-freeze-down-time = congelar

setup-ask-thermometer = Em que o termômetro marca?
setup-option-thermometer-celsius = Celsius
setup-option-thermometer-celsius-is = A mistura fria fica perto de 4.
setup-option-thermometer-fahrenheit = Fahrenheit
setup-option-thermometer-fahrenheit-is = A mistura fria fica perto de 40.
setup-ask-sink = Quantas cubas tem a pia?
setup-option-sink-three = três
setup-option-sink-three-is = Lavar, enxaguar e desinfetar têm cada um a sua.
setup-option-sink-two = duas
setup-option-sink-two-is = As peças se enxáguam em água corrente na cuba de lavagem, já vazia.

setup-ask-product = Como se chama o desinfetante no rótulo?
setup-note-product = O quiosque calcula a dose de um cloro em pó ou em pastilhas, em pacotes de um só tamanho. Pegue o produto na mão agora: as próximas respostas se leem no rótulo.
setup-ask-chlorine = Quanto cloro disponível, em por cento?
setup-note-chlorine = Leia no rótulo. Pode dizer: cloro disponível, ou cloro ativo. Não adivinhe, nem use o número de outro produto.
setup-no-percent = { $text } não é um por cento. Escreva o que diz o rótulo, acima de 0 e até 100.
setup-ask-packet = Quantos gramas pesa um pacote?
setup-note-packet = Leia no rótulo. Se são pastilhas, é o peso de uma.
setup-no-grams = { $text } gramas não pode ser. Escreva acima de 0 e até 1000.
setup-ask-strength = Que concentração a solução deve ter?
setup-note-strength = Em partes por milhão. Leia no rótulo: a de superfícies que tocam alimentos, sem enxágue.
setup-strength-off = Os limites escolhidos pedem { $bounds } ({ $clause }). Veja o rótulo outra vez.
setup-ask-dose = Quem trabalha vai ouvir isto. Confere com as instruções do rótulo?
setup-ask-no-dose = Com estes números não dá para calcular a dose. Veja o rótulo outra vez.
setup-dose-right = confere com o rótulo
setup-figures-again = digitar os números de novo
setup-ask-rinse = O rótulo pede enxágue depois de desinfetar?
setup-note-rinse = Leia no rótulo.
setup-option-label-rinse-no = sem enxágue
setup-option-label-rinse-no-is = As peças escorrem do desinfetante.
setup-option-label-rinse-yes = com enxágue
setup-option-label-rinse-yes-is = As peças se enxáguam com água potável limpa.

setup-ask-languages = Que idiomas a equipe fala?
setup-note-languages = Aperte um idioma para pôr ou tirar.
setup-texts-checked = revisado por um falante
setup-texts-drafted = rascunho feito por máquina, ainda sem revisão de um falante
setup-by-voice = por voz e por toque
setup-by-touch = por toque: aqui não há modelo de fala
setup-no-language = Escolha pelo menos um idioma.
setup-language-spoken = Alguém da lista o fala. Mude essa pessoa primeiro.
setup-ask-people = Quem trabalha nas máquinas?
setup-note-people = Aperte um nome para mudá-lo, ou acrescente alguém. Um supervisor vê os registros e acompanha quem está em treinamento.
setup-add-person = acrescentar alguém
setup-ask-person-name = Qual é o nome desta pessoa?
setup-note-person-name = Aparece na tela e nos relatórios. O registro em si não guarda nomes.
setup-ask-person-language = Que idioma { $who } fala?
setup-ask-person-role = O que { $who } pode fazer?
setup-ask-person = { $who }: o que mudar?
setup-role-worker = Faz todos os procedimentos sem acompanhante.
setup-role-trainee = Nas primeiras vezes trabalha com um supervisor ao lado.
setup-role-supervisor = Trabalha, vê os registros, assina e acompanha quem está em treinamento.
setup-take-off-person = As sessões ficam. O que se guarda ao lado do registro se apaga com: kiosk people erase { $person }
setup-no-supervisor = Ninguém é supervisor: ninguém pode ver nem assinar os registros. Acrescente um, ou aperte pronto de novo.
setup-trainee-alone = Há alguém em treinamento e nenhum supervisor para acompanhar. Acrescente um, ou dê a alguém essa função.

setup-note-keyboard = Escreva num teclado, ou aperte um grupo de letras e depois a letra. Outras escritas precisam de um teclado.
setup-key-space = espaço
setup-key-capital = maiúscula
setup-key-small = minúscula
setup-key-others = outras letras
setup-to-the-keys = às teclas
setup-nothing-typed = Nada foi digitado ainda.

setup-ask-pin = { $who } precisa de uma senha para ver os registros e acompanhar outros. Está aqui agora?
setup-pin-now = sim, pôr agora
setup-pin-later = depois
setup-pin-later-is = com: kiosk setup
setup-pin-is = pôr a senha de alguém
setup-sound-is = testar alto-falante e microfone
setup-sound-begin = O quiosque diz uma frase. Depois ele escuta. Fique onde você trabalha e deixe as máquinas ligadas.
setup-sound-start = testar
setup-sound-skip = deixar de lado
setup-sound-on = seguir
setup-sound-again = testar de novo
setup-sound-speaking = Escute.
setup-sound-sentence = Aqui é o quiosque. Digo cada passo e espero por você.
setup-sound-spoken = Você ouviu bem a frase?
setup-sound-yes = sim
setup-sound-no = não
setup-sound-voice-good = O alto-falante está alto o bastante.
setup-sound-voice-bad = Aumente o alto-falante, ou ligue outro. Tudo o que se diz também está na tela.
setup-sound-no-voice = Aqui não dá para dizer nada ({ $why }). Tudo o que seria dito está na tela.
setup-sound-listening = O microfone está em teste.
setup-sound-heard = Este é o resultado.
setup-sound-silent = Fique em silêncio um momento.
setup-sound-say-yes = Agora diga: { $phrase }
setup-sound-understood = Foi entendido.
setup-sound-not-heard = Não foi entendido. Chegou isto: “{ $text }”.
setup-sound-nothing = Nada foi ouvido.
setup-sound-ended = O microfone parou de dar som. Ainda está ligado?
setup-sound-no-ear = O quiosque não tem ouvido para este idioma ({ $text }).
setup-sound-no-microphone = Aqui não dá para ouvir nada ({ $why }). O trabalho segue por toque e por teclas.
