### Brazilian Portuguese, a draft. Ids and variables are explained in the English file of the same name.
activity-open-jar-name = Abrir um pote
activity-open-jar-jar-opener = Use um abridor de potes preso à parede ou à mesa.
activity-open-jar-break-seal = Solte primeiro a tampa com o cabo de uma colher. Assim ela gira com menos força.
activity-open-jar-flat-palm = Ponha o pote em uma gaveta. Aperte a palma reta na tampa e gire o corpo.
activity-open-jar-helper = Peça a alguém para abrir.

activity-turn-key-name = Virar uma chave
activity-turn-key-key-turner = Ponha um cabo largo na chave. Segure com a mão toda.
activity-turn-key-other-hand = Vire a chave com a outra mão.
activity-turn-key-oil-lock = Passe óleo na fechadura para girar fácil.

activity-lift-baby-name = Levantar um bebê
activity-lift-baby-scoop = Pegue com as palmas para cima e os polegares ao lado dos dedos. Passe um braço debaixo do bumbum, um atrás das costas.
activity-lift-baby-chest-first = Traga o bebê para perto do peito antes de se levantar.
activity-lift-baby-raise-changing-place = Use um trocador mais alto para levantar menos.
activity-lift-baby-helper = Peça a alguém para lhe passar o bebê.

activity-lift-pan-name = Levantar uma panela cheia
activity-lift-pan-half-full = Encha a panela só pela metade.
activity-lift-pan-slide = Deslize a panela pelo fogão. Não levante.
activity-lift-pan-two-handles = Use uma panela leve com duas alças. Deixe a outra mão levar a maior parte do peso.
activity-lift-pan-helper = Peça a alguém para levantar a panela.

activity-pour-kettle-name = Servir água da chaleira
activity-pour-kettle-one-cup = Ferva só uma xícara de água.
activity-pour-kettle-tipper = Use um suporte que inclina a chaleira para você.
activity-pour-kettle-other-hand = Sirva com a outra mão. Deixe a mão com a tala longe do vapor.

activity-carry-shopping-name = Carregar compras
activity-carry-shopping-backpack = Use uma mochila ou um carrinho.
activity-carry-shopping-split-load = Divida a carga em sacolas pequenas. Vá duas vezes.
activity-carry-shopping-over-forearm = Pendure uma sacola leve no antebraço, nunca nos dedos.
activity-carry-shopping-helper = Peça a alguém para levar as sacolas, ou mande entregar.

activity-text-with-thumbs-name = Digitar com os polegares
activity-text-with-thumbs-speak-text = Fale a mensagem e deixe o celular escrever.
activity-text-with-thumbs-phone-on-table = Deite o celular na mesa. Toque com o indicador.
activity-text-with-thumbs-short-texts = Escreva mensagens curtas. Descanse a mão entre elas.

activity-hold-tablet-name = Segurar um tablet ou livro
activity-hold-tablet-stand = Ponha em um suporte.
activity-hold-tablet-on-lap = Apoie em uma almofada no colo.
activity-hold-tablet-swap-hands = Troque de mão muitas vezes.

activity-write-by-hand-name = Escrever à mão
activity-write-by-hand-fat-pen = Use uma caneta grossa e macia que desliza com pouca força.
activity-write-by-hand-dictate = Fale ou digite o texto.
activity-write-by-hand-pauses = Escreva algumas linhas. Depois solte a caneta e descanse.
activity-write-by-hand-helper = Peça a alguém para escrever por você.

activity-type-on-keyboard-name = Digitar no teclado
activity-type-on-keyboard-fingers-for-space = Aperte a barra de espaço com um dedo da outra mão.
activity-type-on-keyboard-low-keyboard = Use um teclado baixo. Deixe os antebraços descansar.
activity-type-on-keyboard-pauses = Pare muitas vezes e deixe as mãos paradas.

activity-use-mouse-name = Usar o mouse
activity-use-mouse-other-hand = Mexa o mouse com a outra mão.
activity-use-mouse-upright-mouse = Tente um mouse que se segura em pé, como um aperto de mão.
activity-use-mouse-touch-pad = Use um painel de toque com um dedo.

activity-do-up-buttons-name = Fechar botões
activity-do-up-buttons-button-hook = Use um gancho para botões.
activity-do-up-buttons-pull-on-clothes = Use roupas sem botões, de vestir pela cabeça ou puxar.
activity-do-up-buttons-other-hand = Deixe a outra mão fechar os botões. Só segure o tecido liso.

activity-peel-vegetables-name = Descascar legumes
activity-peel-vegetables-fat-peeler = Use um descascador de cabo grosso e lâmina larga.
activity-peel-vegetables-leave-skins = Deixe as cascas, ou compre legumes prontos para cozinhar.
activity-peel-vegetables-short-bouts = Descasque alguns. Depois descanse a mão.
activity-peel-vegetables-helper = Peça a alguém para descascar.

activity-wring-cloth-name = Torcer um pano
activity-wring-cloth-press-flat = Aperte o pano reto na lateral da pia.
activity-wring-cloth-sponge = Use uma esponja. Aperte de leve.
activity-wring-cloth-other-hand = Passe o pano em volta da torneira. Torça com a outra mão.

activity-prune-plants-name = Podar plantas
activity-prune-plants-ratchet = Use uma tesoura que corta em passos pequenos.
activity-prune-plants-thin-stems = Corte só galhos finos. Pare antes de o polegar doer.
activity-prune-plants-helper = Peça a alguém para cortar. Você escolhe os galhos.

activity-use-scissors-name = Cortar com tesoura
activity-use-scissors-spring-scissors = Use uma tesoura com mola, que abre sozinha.
activity-use-scissors-roller-cutter = Use um cortador de rolo sobre uma tábua.
activity-use-scissors-short-bouts = Corte um pouco de cada vez.
activity-use-scissors-helper = Peça a alguém para cortar.

activity-wash-hands-name = Lavar as mãos
activity-wash-hands-pump-soap = Use sabonete de bomba e torneira de alavanca.
activity-wash-hands-wipe-down = Lave os dedos que aparecem. Limpe o resto com um pano úmido.
activity-wash-hands-take-off = Tire a tala. Lave a mão, seque bem, e coloque de novo.

activity-drive-car-name = Dirigir um carro
activity-drive-car-wheel-cover = Ponha uma capa grossa e macia no volante.
activity-drive-car-short-trips = Faça viagens curtas. Pare e descanse a mão.
activity-drive-car-helper = Deixe outra pessoa dirigir.

activity-knit-name = Fazer tricô ou crochê
activity-knit-fat-needles = Use agulhas leves e grossas e fio macio.
activity-knit-work-on-lap = Apoie o trabalho no colo. Ponha uma almofada debaixo dos cotovelos.
activity-knit-short-bouts = Faça uma carreira. Depois descanse a mão.

activity-racket-sport-name = Jogar com raquete
activity-racket-sport-soft-strings = Use um cabo mais grosso e cordas mais macias.
activity-racket-sport-two-hands = Bata com as duas mãos.
activity-racket-sport-half-time = Jogue metade do tempo.

activity-brush-teeth-name = Escovar os dentes
activity-brush-teeth-fat-handle = Use uma escova de cabo grosso ou com motor.
activity-brush-teeth-other-hand = Escove com a outra mão.

activity-fasten-zip-name = Fechar um zíper
activity-fasten-zip-zip-ring = Ponha uma argola no zíper. Puxe com o dedo em gancho.
activity-fasten-zip-other-hand = Puxe o zíper com a outra mão.
