### Brazilian Portuguese, a draft. Ids and variables are explained in the English file of the same name.
factor-numb-skin-look = Confie nos olhos, não no tato. Olhe a mão de todos os lados. Um espelho pode ajudar.
factor-numb-skin-strap-room = Passe a ponta de um dedo da outra mão debaixo de cada tira. Tem de caber.
factor-numb-skin-hot-and-sharp = Teste coisas quentes com a outra mão. Deixe coisas afiadas longe da pele dormente.

factor-fragile-skin-no-tape = Não ponha esparadrapo nem adesivos na pele.
factor-fragile-skin-lift = Tire a tala com cuidado. Não deixe raspar nem arrastar na pele.
factor-fragile-skin-sleeve = Use uma malha de algodão lisa e seca debaixo da tala. Troque todo dia.

factor-swelling-raise = Quando se sentar, descanse a mão acima do coração.
factor-swelling-loosen = Se uma tira ficar apertada, afrouxe um pouco. Feche de novo quando o inchaço baixar.
factor-swelling-pump = Mexa muitas vezes os dedos livres. Isso ajuda a baixar o inchaço.

factor-diabetes-any-break = Ligue para nós no mesmo dia se a pele abrir, mesmo que pouco.

factor-blood-thinners-bruise = Ligue para nós hoje se uma mancha roxa debaixo da tala crescer.
factor-blood-thinners-no-rubbing = Não esfregue a mão com força. Proteja a mão de batidas.

factor-low-vision-check = Sinta com a outra mão se há pontos quentes, duros, molhados ou doloridos. Peça a alguém para olhar a pele também.
factor-low-vision-dots = Peça pontos em relevo nas tiras. Eles mostram qual tira é qual.

factor-lives-alone-table = Apoie o braço na mesa. Deixe a mesa segurar a tala enquanto a outra mão trabalha.
factor-lives-alone-ready = Tenha à mão roupas largas e refeições fáceis.
factor-lives-alone-phone = Deixe nosso telefone ao lado da cama.

factor-night-work-main-sleep = Quando este guia diz noite, é o seu sono principal.
factor-night-work-after-sleep = Faça os primeiros exercícios depois do sono principal.

factor-neoprene-allergy-itch = Ligue para nós se a pele coçar, mesmo que pouco.
factor-neoprene-allergy-spare-parts = Não ponha almofadas, luvas nem faixas de espuma de borracha.

factor-new-mother-flat-hands = Levante e alimente o bebê com as mãos retas. Deixe os polegares ao lado dos dedos.
factor-new-mother-strap-room = A mão pode inchar. Veja todo dia se a ponta de um dedo cabe debaixo de cada tira.
factor-new-mother-edges = Cubra as bordas duras com um pano limpo antes de segurar o bebê.
