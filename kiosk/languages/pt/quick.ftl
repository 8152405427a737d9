### A folha do que se pode dizer. Rascunho feito por máquina; falta a revisão de um falante.
### reviewed: no
quick-title = O que dizer ao quiosque
quick-no-lockout = O quiosque guia e anota. Ele não substitui o bloqueio de energia; o manual da máquina e o rótulo do produto vêm primeiro.
quick-say-it = Diga, ou aperte
quick-next = O passo está feito; siga. Num passo que precisa de mais, a tela mostra as palavras.
quick-repeat = Ouvir a pergunta de novo.
quick-back = Um passo para trás.
quick-problem = Parar: dizer o que está errado, e ouvir o que fazer.
quick-pause = Deixar o trabalho por um tempo. Depois as retenções são perguntadas de novo.
quick-continue = Seguir depois de uma pausa ou de um problema.
quick-hand-over = Outra pessoa segue. As retenções são perguntadas de novo.
quick-reckon = Pedir a conta de uma dose, um tempo, uma data ou uma contagem.
quick-language = Seguir em outro idioma.
quick-help = Ouvir o que se pode dizer neste passo.
quick-end = Encerrar o trabalho antes do fim. O quiosque diz o que a próxima pessoa precisa saber.
quick-whole = Diga as palavras inteiras, e espere o quiosque terminar de falar.
quick-hold = Numa retenção de segurança: faça, diga as palavras dela, responda à pergunta que volta, e teste.
quick-number = Diga um número como está na tela, e responda sim quando ele for lido certo.
quick-loud = Barulho demais, ou duas vezes não entendido? Aperte o botão. Tudo pode ser apertado.
quick-touch = Luvas molhadas: aperte uma vez e solte. O botão de uma retenção fica apertado até dizer que basta.
