### reviewed: no
# O que diz a linha sob as telas enquanto uma noite inventada passa sozinha.
crew-evening = Uma noite inventada, que passa sozinha: { $who } fecha uma máquina que não existe. Ctrl+Q termina.
crew-says = { $who } diz: “{ $phrase }”
crew-presses = { $who } toca: “{ $phrase }”
crew-next-passes-no-hold = Isto é uma parada de segurança. { $who }, com cansaço, diz a palavra de sempre: aqui não vale.
crew-short-press-passes-no-hold = Um toque curto também não passa uma parada de segurança.
crew-read-back = O quiosque diz o que entendeu e espera um sim.
crew-power-cut = Falta energia no quiosque, no meio de um passo.
crew-cut-is-over = O quiosque liga de novo. O quadro mostra o que não terminou; o registro não perdeu nada.
crew-problem = Algo parece errado: { $who } avisa um problema e tudo para.
crew-holds-again = Antes de continuar, o quiosque pergunta de novo o que pode ter mudado.
crew-one-is-missing = { $who } conta um anel a menos. Sem contar, ele estaria na máquina ou numa casquinha.
crew-other-language = Outra pessoa termina, em outra língua. O que é seguro é perguntado de novo a quem está ali agora.
crew-time-passes = O tempo passa, mais rápido que o normal.
crew-written = Cada resposta está no registro, com a hora e como foi dada.
crew-evening-over = Assim foi a noite. De manhã o supervisor a revisa.
