### Brazilian Portuguese, a draft. Ids and variables are explained in the English file of the same name.
factor-numb-skin-no-packs = Não ponha bolsa quente nem gelo na pele dormente.

factor-latex-allergy-itch = Ligue para nós se a pele coçar, mesmo que pouco.
factor-latex-allergy-gloves = Não ponha luvas de borracha sobre a tala. Use luvas de outro tipo.
factor-latex-allergy-spare-parts = Não ponha elásticos nem tiras que esticam. Peça a nós as que são seguras.

factor-nickel-allergy-itch = Ligue para nós se a pele coçar, mesmo que pouco.
factor-nickel-allergy-bare-metal = Não deixe metal sem capa tocar a pele. Avise se uma capa se gastar.

factor-adhesive-allergy-itch = Ligue para nós se a pele coçar, mesmo que pouco.
factor-adhesive-allergy-no-tape = Não ponha esparadrapo nem curativo adesivo na pele. Peça tiras a nós.
factor-adhesive-allergy-linings = Não cole almofadas nem forros na tala.

factor-memory-difficulty-same-times = Use os mesmos horários todo dia. Ponha um alarme.
factor-memory-difficulty-tick = Pendure este guia na parede. Faça uma marca depois de cada olhada na pele.
factor-memory-difficulty-in-sight = Deixe a tala em um só lugar, onde você veja. Leia os passos toda vez.
factor-memory-difficulty-after-meals = Junte os movimentos a coisas que você já faz, como as refeições.

factor-helper-at-home-looks = Peça a quem ajuda para olhar a pele também.
factor-helper-at-home-reads = Deixe quem ajuda ler cada passo em voz alta e fechar as tiras.
factor-helper-at-home-heavy-jobs = Deixe quem ajuda fazer o que este guia diz para ainda não fazer.

factor-child-grown-up-looks = Deixe um adulto olhar a sua pele toda vez. Diga logo se algo dói.
factor-child-grown-up-helps = Tenha um adulto com você sempre que colocar ou tirar a tala.
factor-child-school = Leve uma cópia deste guia para a escola.
factor-child-game = Faça de cada movimento uma brincadeira.
factor-child-small-parts = Deixe tiras soltas e peças pequenas longe de bebês e crianças pequenas.

factor-pregnancy-swelling = A mão pode inchar em alguns dias. Descanse a mão em uma almofada quando se sentar.
factor-pregnancy-strap-room = Veja todo dia se a ponta de um dedo cabe debaixo de cada tira.
factor-pregnancy-grooves = Veja se há linhas fundas das tiras. Avise se elas não sumirem.

factor-heat-work-keep-away = Deixe a tala longe de fornos, chapas quentes e motores. Pergunte a nós antes de trabalhar no calor.
factor-heat-work-dry-skin = Seque o suor logo. Veja se há pele mole e branca.
factor-heat-work-fresh-sleeve = Ponha uma malha limpa e seca a cada turno. Troque logo a que ficar úmida.

factor-food-work-ask = Pergunte no trabalho se a tala é permitida perto de comida. Pergunte como cobrir.
factor-food-work-damp = Uma luva sobre a tala prende a umidade. Veja se há pele mole e branca depois do trabalho.
factor-food-work-clean = Limpe a tala depois de cada turno. Jogue fora a capa.

factor-wet-work-cover = Cubra a tala, ou deixe outra pessoa fazer o trabalho molhado.
factor-wet-work-dry-breaks = Pare muitas vezes para secar a pele. Veja se há pele mole e branca.
factor-wet-work-spare-sleeves = Tenha malhas de reserva. Troque logo a que ficar úmida.

factor-machinery-moving-parts = Não trabalhe em máquinas em movimento com a tala. Elas podem prender uma tira e puxar a mão.
factor-machinery-ask = Siga estes horários no trabalho também. Pergunte a nós e ao seu chefe antes de voltar a uma máquina.

factor-slow-healing-no-early-end = A mão precisa do tempo completo. Não pare antes, mesmo que ela pareça boa.
factor-slow-healing-any-break = Ligue para nós no mesmo dia se a pele abrir, mesmo que pouco.
factor-slow-healing-smoke = Se você fuma, peça ajuda a nós ou ao seu médico para parar. O fumo atrasa a cicatrização.

factor-open-wound-look = Olhe o que puder ver da ferida ou dos pinos. Ligue para nós hoje se algo vazar, cheirar mal ou se mexer.
factor-open-wound-dry = Mantenha a mão seca até dizermos que a pele está fechada.
factor-open-wound-no-rubbing = Não esfregue nem aperte a ferida. Não toque nos pontos nem nos pinos.
factor-open-wound-dressing = Mantenha o curativo limpo e seco. Pergunte a nós quem troca.

factor-poor-circulation-colour = Compare as pontas dos dedos com a outra mão. Ligue para nós no mesmo dia se a pele abrir.
factor-poor-circulation-strap-room = Passe a ponta de um dedo debaixo de cada tira. Tem de caber.
factor-poor-circulation-warm = Mantenha a mão quente com roupas. Não ponha gelo nem bolsa quente nela.

factor-one-hand-only-table = Apoie o braço na mesa. Use a borda da mesa ou a perna para ajudar.
factor-one-hand-only-helper = Onde este guia diz outra mão, você pode pedir ajuda a alguém.
factor-one-hand-only-mirror = Use um espelho para ver o outro lado da mão.

factor-high-pain-worry-small = Comece com o menor movimento desta lista. Pouco e muitas vezes está bem.
factor-high-pain-worry-rest = Descanse antes de a mão doer muito. Depois continue.
factor-high-pain-worry-call = Ligue logo se algo preocupar você. Nenhuma pergunta é pequena demais.
