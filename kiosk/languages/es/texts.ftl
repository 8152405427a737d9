### Textos hechos a máquina, y quién los ha revisado. Borrador hecho a máquina.
### reviewed: no

texts-drafted = { $language }: { $n } textos hechos a máquina, sin firmar: { $left }
texts-signed-by = firmado por { $who }, { $at }: { $n } textos
texts-left = sin firmar tal como está ahora: { $where }
texts-nothing-left = No queda nada por firmar.
texts-signed = { $who } firmó { $n } textos. Sin firmar: { $left }. Cuando no quede nada, «{ $mark }» desaparece de las pantallas al próximo arranque.
texts-withdrawn = Firmas retiradas: { $n }.
