### O quiosque num tablet: parear uma tela, assistir, assumir. Rascunho feito por máquina; falta a revisão de um falante.
### reviewed: no

pairing-code = Para parear outra tela: código { $code }.
pairing-closed = Códigos errados demais: nenhuma tela pode ser pareada até o quiosque ser iniciado de novo.
pairing-ask = Digite o código que está no quadro do quiosque.
pairing-wrong = Esse não é o código do quadro. Olhe de novo: agora pode ser outro.
pairing-wait = Códigos errados demais. Espere { $seconds } segundos, e depois digite o código que está no quadro.
pairing-give = Parear
pairing-rub-out = Apagar
screen-lost = Sem conexão com o quiosque. O que foi confirmado está guardado. Tentando de novo.
screen-watches = Você está assistindo. Outra tela está com o quiosque.
screen-hidden = Um PIN está sendo digitado, ou alguém vê algo que um PIN protege. Isso só aparece na outra tela.
screen-take-over = Assumir
screen-keyboard = Teclado
screen-not-taken = A tela não pôde assumir: { $why }
