### Quem pode fazer o quê, e os PINs. Rascunho feito por máquina; falta a revisão de um falante.
### reviewed: no

## Palavras para dizer.
say-witness = a segunda pessoa está aqui

## As telas de PIN.
pin-ask = { $who }, digite o seu PIN.
pin-invented = (loja inventada: PIN { $pin })
pin-new = { $who }, digite um PIN novo: de 4 a 12 algarismos.
pin-again = Digite os mesmos algarismos outra vez.
pin-is-set = { $who } tem um PIN novo.
pin-for-begin = para começar
pin-for-take-over = para assumir
pin-for-witness = como segunda pessoa
pin-for-stand-by = para ficar ao lado de quem está em treinamento
pin-for-sign = para assinar
pin-for-review = para ver os registros
pin-for-set-pin = para criar um PIN
which-supervisor = Qual supervisor?
no-supervisor = Nenhum supervisor da lista deste lugar poderia fazer isso.
who-witnesses = Quem é a segunda pessoa?
whose-pin = O PIN de quem?
who-vouches = Quem responde por isso?
pin-by-old-one = com o PIN antigo
pin-by-supervisor = um supervisor responde por isso

## O quadro.
to-practise = treinar
to-set-pin = criar um PIN
practise-or-pin = O que você quer fazer?
practice-is = marcado como treino, separado do trabalho de verdade
practice-board = Treino: o trabalho feito de verdade não é anotado aqui.
back-to-work = voltar ao trabalho
with-a-supervisor = com um supervisor ao lado

## Por que algo não foi feito.
refused-pin-first = Primeiro é preciso o seu PIN.
refused-supervisor-first = Um supervisor precisa ficar ao lado e dar o PIN primeiro.
refused-not-on-list = Não está na lista deste lugar.
refused-not-your-walk = Não é um dos procedimentos que esta pessoa faz.
refused-trainee-no-witness = Quem está em treinamento não pode ser a segunda pessoa.
refused-own-work = Ninguém assina o próprio trabalho. Outro supervisor precisa olhar.
refused-supervisors-only = Só um supervisor pode fazer isso.
refused-pin-wrong = Esse não é o PIN certo. Tente de novo.
refused-pin-wait = Tentativas erradas demais. Faltam { $time } para a próxima.
refused-pin-closed = Este PIN foi fechado depois de tentativas erradas demais. Um supervisor precisa criar um novo.
refused-no-pin-set = { $person } ainda não tem PIN. Um supervisor pode criar um no quadro, ou com 'kiosk people pin { $person }'.
refused-pins-unreadable = Os PINs não podem ser conferidos agora. { $reason }
refused-pin-not-written = Não foi possível anotar, por isso nada foi feito. { $reason }
refused-pin-length = Um PIN tem de { $least } a { $most } algarismos.
refused-pin-easy = Esse PIN é fácil demais de adivinhar. Escolha outros algarismos.
refused-pin-differs = As duas vezes não foram iguais. Digite um PIN novo mais uma vez.

## kiosk people
people-nobody = { $person } não está na lista deste lugar. Há: { $known }.
people-ask-pin = PIN novo de { $who } ({ $person }), não aparece:
people-ask-again = De novo:
people-pin-set = { $who } ({ $person }) tem um PIN novo.
people-pin-yes = tem PIN
people-pin-no = não tem PIN
people-role-worker = trabalhador
people-role-trainee = em treinamento
people-role-supervisor = supervisor
people-walks-all = faz tudo
people-walks = faz { $procedures }
people-erased = Apagado de { $person }: nome, PIN, palavras próprias, e o texto de { $n ->
    [1] um recado
   *[other] { $n } recados
}. O diário mantém o id, e diz isso.
people-kept-over = Apagado, pois já foi guardado tempo bastante: { $names ->
    [1] um nome
   *[other] { $names } nomes
}, { $remarks ->
    [1] um recado
   *[other] { $remarks } recados
}.
people-nothing-over = Nada foi guardado por mais tempo do que o lugar diz.
