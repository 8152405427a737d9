### Textos feitos por máquina, e quem os conferiu. Rascunho feito por máquina; falta a revisão de um falante.
### reviewed: no

texts-drafted = { $language }: { $n } textos feitos por máquina, não assinados: { $left }
texts-signed-by = assinado por { $who }, { $at }: { $n } textos
texts-left = não assinado como está agora: { $where }
texts-nothing-left = Não resta nada para assinar.
texts-signed = { $who } assinou { $n } textos. Não assinados: { $left }. Quando não restar nenhum, “{ $mark }” some das telas no próximo início.
texts-withdrawn = Assinaturas retiradas: { $n }.
