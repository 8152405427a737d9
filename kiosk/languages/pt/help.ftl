### O que se pode fazer aqui, para quem pergunta. Rascunho feito por máquina; falta a revisão de um falante.
### reviewed: no
help = ajuda
say-help = o que posso dizer / ajuda
help-say = Você pode dizer: { $list }.
help-number = Também pode dizer o número, ou apertá-lo.
help-hold = Uma retenção de segurança quer as suas próprias palavras, ditas inteiras, ou o botão dela apertado e seguro.
help-hurt = Alguém se feriu? Deixe a máquina, chame ajuda, e em caso de respingo siga o rótulo do produto.
help-board = Aperte uma máquina para fazer o que está na hora, ou um controle do dia. Um trabalho deixado pela metade espera com a sua própria marca. Depois aperte quem vai fazer. O quiosque guia e anota; ele não substitui o bloqueio de energia.
help-list = Aperte o que você quer, ou o número dele no teclado. Nada foi anotado ainda.
help-summary = Isto é o que entrou no diário. Leia e depois volte às máquinas.
or-say = Aperte, ou diga: { $phrase }.
