### Recados falados sobre problemas. Rascunho feito por máquina; falta a revisão de um falante.
### reviewed: no

## Palavras para dizer.
say-remark = deixar um recado
say-remark-keep = guardar o recado
say-remark-again = gravar de novo

## Enquanto é gravado.
remark-speak-now = Fale agora: o que está errado?
remark-ends = Termina sozinho quando você se cala, ou depois de { $most }.
remark-done = pronto
remark-waits = vai gravar
remark-records = gravando
remark-level = nível
remark-ear-closed = Estou gravando, por isso nada do que você diz agora é um comando.

## Depois.
remark-keep = Guardar este recado de { $time }?
remark-full = { $most } é o máximo de um recado, por isso terminou aqui.
remark-no-speech = Não achei fala nele.
remark-empty = Nada foi gravado.
remark-microphone-gone = O microfone não dá mais som.
remark-kept = O seu recado de { $time } está guardado.
remark-not-kept = O seu recado não pôde ser guardado. { $why }

## Na revisão.
remark-left = Recado falado de { $who }, { $time }
remark-hash = SHA-256 do som: { $hash }
remark-erased-by = O som foi apagado em { $at }; { $by } pediu.
remark-erased-by-time = O som foi apagado em { $at }, pois os recados não são guardados aqui por mais tempo.
remark-play = ouvir um recado
remark-stop = parar de ouvir
remark-which = Qual recado?
remark-playing = Tocando o recado de { $who }, { $time }.
remark-cannot-play = Não pode ser tocado. { $why }
remark-is-missing = Não há som com este hash na pasta de dados deste quiosque.
remark-is-altered = O som na pasta de dados não é o que foi gravado: o hash é outro.
remark-is-unreadable = O som na pasta de dados não pode ser lido.
remark-no-player = Este quiosque não tem com que tocá-lo.

## kiosk people
remark-sounds-erased = O som de { $n ->
    [1] um recado falado
   *[other] { $n } recados falados
} também foi apagado; o diário mantém o hash.

## Relatórios.
report-spoken-remark = recado falado
report-spoken-told = { $who }, { $time }; SHA-256 do som { $hash }
report-spoken-erased-by = som apagado { $at }, a pedido de { $by }
report-spoken-erased-by-time = som apagado { $at }, pois os recados não são guardados por mais tempo

## A folha de parede.
quick-remark = Num problema: conte com as suas palavras. Um supervisor pode ouvir depois.
