### Gravar as instruções com a voz de alguém da equipe. Rascunho feito por máquina; falta a revisão de um falante.
### reviewed: no

recording-begin = { $count ->
    [one] Falta gravar uma frase.
   *[other] Faltam gravar { $count } frases.
} Leia cada uma em voz alta como está escrita, como diria a um colega. A gravação termina depois de dois segundos de silêncio. Todos os que trabalham neste idioma vão ouvir sua voz.
recording-ready = Enter: gravar. s: pular. q: parar.
recording-speak = Fale agora.
recording-level = { $decibels } dB abaixo do máximo, { $seconds } s
recording-flaw-silent = Nada foi ouvido. Veja se o microfone é o certo, se está ligado e com volume.
recording-flaw-quiet = Baixo demais. Chegue mais perto ou aumente o microfone.
recording-flaw-clipped = Alto demais: os sons mais fortes são cortados. Afaste-se ou abaixe o microfone.
recording-flaw-begins-cut = O começo está cortado. Espere “Fale agora” e depois comece.
recording-flaw-ends-cut = O fim está cortado. Fale sem pausas longas e depois fique em silêncio.
recording-flaw-noisy = Aqui há muito barulho. Um lugar mais calmo é melhor.
recording-flaw-short = É muito curto para esta frase. Era a frase inteira?
recording-flaw-long = É muito longo para esta frase. Era só esta frase?
recording-keep = Enter: guardar. a: de novo. s: pular. q: parar.
recording-not-kept = Assim não pode ser guardada. Enter: de novo. s: pular. q: parar.
recording-not-played = Aqui não é possível ouvir a gravação. { $why }
recording-no-sound = Não chega mais som. O microfone ainda está conectado?
recording-done = Guardadas: { $kept }. Ainda faltam: { $left }.
recording-all-there = Todas as frases estão gravadas. Para gravar de novo, acrescente --again.
recording-recorded = gravada
recording-missing = falta
recording-stale = não é mais dita
recording-standing = Gravadas: { $recorded }. Faltam: { $missing }. Não são mais ditas: { $stale }.
recording-erased = { $n ->
    [one] Uma frase gravada foi apagada.
   *[other] { $n } frases gravadas foram apagadas.
}
recording-folder = As gravações em { $folder } não podem ser guardadas, lidas ou apagadas ({ $reason }). Permita escrever nessa pasta e libere espaço.
