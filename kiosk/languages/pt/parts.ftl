### Peças de desgaste e peças de reposição. Rascunho feito por máquina; falta a revisão de um falante.
### reviewed: no

parts-worn = Gasta desde { $day }, não havia reposição.
parts-due = Trocar até { $day }.
parts-overdue = Atrasada: era para trocar até { $day }.
parts-replaced = { $days ->
    [0] Trocada hoje, { $day }, por { $by }.
    [one] Trocada em { $day } por { $by }, há { $days } dia.
   *[other] Trocada em { $day } por { $by }, há { $days } dias.
}
parts-replacements = { $n ->
    [1] Uma troca no registro.
   *[other] { $n } trocas no registro.
}
parts-never-replaced = Nenhuma troca no registro; olhada pela primeira vez em { $day }.
parts-likely = Próxima troca provável de { $low } a { $high } (8 em 10); o meio é { $middle }.
parts-likely-open = Próxima troca provável a partir de { $low } (9 em 10); o meio é { $middle }.
parts-likely-hardly = Próxima troca provável a partir de { $low } (9 em 10); dificilmente dentro de dez anos.
parts-likely-later = Nenhuma troca é de se esperar dentro de dez anos.
parts-too-little = Há trocas de menos no registro para dizer o que se espera.
parts-none-found = Em { $day } um trabalhador não achou nenhuma ali.
parts-short = { $n ->
    [1] Foi usada uma peça a mais do que havia ali. Conte de novo.
   *[other] Foram usadas { $n } peças a mais do que havia ali. Conte de novo.
}
parts-shelf-unknown = A prateleira nunca foi contada.
parts-shelf = { $pieces ->
    [one] Na prateleira: { $pieces } peça
   *[other] Na prateleira: { $pieces } peças
}; uma troca leva { $takes }. Dá para { $n ->
    [0] nenhuma
    [one] { $n } troca
   *[other] { $n } trocas
}.
parts-counted-on = Última contagem { $day }; desde então como foi anotado.
parts-never-counted = Nunca contada: só o que foi recebido.
parts-runs-out = Uma troca não achará as suas peças de { $low } a { $high } (8 em 10); o meio é { $middle }.
parts-runs-out-open = Uma troca não achará as suas peças a partir de { $low } (9 em 10); o meio é { $middle }.
parts-runs-out-hardly = Uma troca não achará as suas peças a partir de { $low } (9 em 10); dificilmente dentro de dez anos.
parts-runs-out-later = Dá para dez anos.
parts-how-foretold = O que se espera vem do que os trabalhadores trocaram até agora, em todas as máquinas de um tipo juntas. Não é um limite: o calendário e o manual da máquina vêm primeiro.
parts-on-machines = Nas máquinas
parts-on-shelf = Na prateleira
parts-none-seen = Nenhuma peça de desgaste foi olhada ainda.
parts-received = { $count ->
    [one] Recebida: { $count } peça, { $part }.
   *[other] Recebidas: { $count } peças, { $part }.
}
parts-counted = { $count ->
    [one] Contada: { $count } peça, { $part }.
   *[other] Contadas: { $count } peças, { $part }.
}
