### O que falha na voz, no ouvido e no diário, e o que fala contra uma sessão. Rascunho feito por máquina.
### reviewed: no

## O alto-falante e a voz.
sound-no-library = não há biblioteca de som: instale libasound2 ou libpulse0
speaker-none = não há dispositivo de som ({ $reason })
speaker-not-started = o dispositivo de som não iniciou ({ $reason })
speaker-takes-nothing = o dispositivo de som não aceitou som em { $seconds } s
speaker-no-way = não há como tocar som: instale alsa-utils, que traz 'aplay'
speaker-no-player = não foi possível iniciar 'aplay': { $reason }
speaker-failed = o dispositivo de som falhou ({ $reason })
speaker-stopped = o alto-falante parou de aceitar som
prompt-unreadable = não é possível ler a frase gravada em { $file }: { $reason }
prompts-not-kept = não é possível usar a pasta de frases { $folder } ({ $reason }); permita escrever nela
prompt-not-kept = não é possível guardar a frase em { $folder }: { $reason }; libere espaço
speech-no-voice = não há voz para o idioma '{ $language }'; há vozes para { $known }
speech-no-letter = o texto { $text } está vazio: não tem letra nem algarismo para dizer
speech-too-long = o texto { $text }... tem { $length } caracteres; divida-o, { $most } é o máximo que se diz de uma vez
speech-ended-twice = o processo da voz terminou duas vezes neste texto: { $reason }
speech-no-answer = o processo da voz não respondeu em { $seconds } s; foi encerrado
speech-not-started = não foi possível iniciar o processo da voz: { $reason }
speech-install-again = { $reason }; instale o pacote de novo
speech-failed = o processo da voz falhou: { $reason }

## O microfone e o ouvido.
microphone-no-library = a biblioteca de som miniaudio não está instalada aqui
microphone-none = não há microfone ({ $reason })
microphone-no-answer = o sistema de som não respondeu em { $seconds } segundos
microphone-ended = o som acabou: o microfone ainda está conectado?
ear-stopped = o ouvido parou: { $reason }
ear-failed-once = o ouvido { $ear } falhou no que foi dito: { $reason }
ear-not-whole = { $more ->
    [0] { $model } em { $place } não está inteiro: falta { $missing }. Para consertar: { $mend }
   *[other] { $model } em { $place } não está inteiro: falta { $missing } e mais { $more }. Para consertar: { $mend }
}
ear-mend-remove = remova essa pasta e depois { $mend }
ear-needs-package = { $model } precisa de um pacote que não está aqui ({ $package }). Para consertar: { $mend }
ear-not-loaded = não é possível carregar { $model } ({ $reason }). Para consertar: { $mend }
ear-none-listed = não há modelo de fala para '{ $language }' em models.toml
ear-none-installed = não há modelo de fala instalado para '{ $language }'. Para consertar: { $mend }
ear-mend-or = { $one } ou { $other }
notice-and = { $one }; { $other }
own-words-unreadable = não é possível ler as palavras próprias em { $file } ({ $reason }); ensine de novo com '{ $command }'

## O diário.
not-recorded = Não foi possível escrever o diário, então nada foi anotado e nada avançou.
see-the-screen = A tela diz o que fazer.
journal-full = O disco está cheio: { $file }. Libere espaço e tente de novo.
journal-two-kiosks = Dois quiosques trabalham em { $folder }. Feche um deles e tente de novo.
journal-moved = { $file } ou { $log } foi tirado do lugar enquanto estava aberto. Ponha de volta e tente de novo.
journal-swallowed = { $file }: o que foi escrito não está lá. Chame o supervisor: é preciso seguir com uma cópia de segurança.
journal-read-only = Não é permitido escrever em { $file }: { $reason }. Chame o supervisor: é preciso permitir.
journal-busy = Outro programa mantém { $file } ocupado. Feche-o e tente de novo.
journal-damaged = { $file } está danificado: { $reason }. Chame o supervisor: é preciso seguir com uma cópia de segurança.
journal-failed = { $file }: { $reason }. Chame o supervisor e tente de novo.
row-unknown = não é possível ler uma linha do tipo '{ $kind }': { $reason }
session-without-beginning = a sessão { $session } não tem começo no diário
result-unreadable = não é possível ler o resultado { $result }: { $reason }
file-failed = { $file }: { $reason }

## As senhas.
pins-unusable = não é possível usar { $file }: { $why }. Para consertar: permita a leitura, ou tire-o dali e defina as senhas de novo com 'kiosk people pin ID'.
pins-damaged = a entrada de '{ $person }' está danificada
pins-no-list = não é uma lista de resumos
pins-not-written = não é possível escrever { $file }: { $reason }

## O que fala contra uma sessão.
sign-waited = esperou { $waited } de { $needed }
sign-filled = o contato começou { $after } depois da leitura da fita: cedo demais para ter enchido e molhado tudo ({ $least })
sign-weak = a fita marcou { $value }, e o mínimo é { $least }
sign-weak-mended = a fita marcou { $value }, e o mínimo é { $least }; { $after } depois, { $then }
sign-weak-too-soon = a fita marcou { $value }, e o mínimo é { $least }; { $after } depois, { $then }: cedo demais para ter misturado de novo ({ $needed })
sign-warm = a mistura estava a { $value }
sign-warm-cooled = a mistura estava a { $value }, e { $after } depois a { $then }
sign-warm-too-soon = a mistura estava a { $value }, e { $after } depois a { $then }: nenhum funil esfria tão rápido ({ $needed })
sign-worn = { $part }: desgaste visto { $days ->
    [one] { $days } dia
   *[other] { $days } dias
} antes, sem peça no estoque, não trocado desde então
sign-new = sessão { $nth } de um trabalhador novo ({ $who })
sign-late = o trabalho da noite começou { $hours } depois do fechamento
sign-early = { $ended ->
    [ended-early] foi encerrada antes do fim
    [out-of-service] a máquina saiu de serviço
   *[open] não terminou
}; último passo: { $step }
sign-doubts = retenções de segurança respondidas com dúvida: { $holds }
sign-missed = nesta noite não há trabalho da noite anotado nesta máquina, embora estivesse pronta para servir (ou o quiosque não foi usado)
