### O diário como prova. Rascunho feito por máquina; falta a revisão de um falante.
### reviewed: no
record-disagrees = O registro não combina com o que este quiosque tinha assinado. Avise o supervisor; não apague nada.
record-unsigned = O registro não pode ser assinado no momento. Mesmo assim tudo é anotado. Avise o supervisor.
record-second-place = O segundo lugar para as conferências do registro não está aí. Ponha o pendrive de volta. Mesmo assim tudo é anotado.
