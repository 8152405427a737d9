### O quadro: quem está ali, e o que é devido até quando. Rascunho feito por máquina; falta a revisão de um falante.
### reviewed: no

board-greeting = { $part ->
    [morning] Bom dia, { $who }
    [day] Boa tarde, { $who }
   *[evening] Boa noite, { $who }
}
sign-in = apresentar-se
sign-in-who = Quem está aqui?
sign-out = vou embora
sign-out-or-other = sair ou trocar
board-due-from = { $what }: a partir de { $at }
board-due-by = { $what }: até { $at }
board-in = em { $time }
board-left = ainda há { $time }
board-overdue = ! Atrasado desde { $at }: { $what }
board-never = { $what }: nenhuma conhecida em meio ano
help-board-more = Apresente-se, e o que você apertar começa com você, no seu idioma; o PIN ainda é pedido onde este lugar o pede. Depois de dez minutos sem um toque, ninguém está mais apresentado. Em cada máquina está a partir de quando, ou até quando, algo é devido.
