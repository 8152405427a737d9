### O que as telas dizem do ouvido. Rascunho feito por máquina; falta a revisão de um falante.
### reviewed: no

ear-no-sound = Não chega som do microfone. Ele está conectado e ligado?
