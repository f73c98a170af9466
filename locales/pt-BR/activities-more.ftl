### Brazilian Portuguese, a draft. Ids and variables are explained in the English file of the same name.
activity-text-with-thumbs-open-elbow = Apoie o braço. Deixe o cotovelo mais aberto que o canto de uma folha.
activity-hold-tablet-open-elbow = Ponha mais longe. Deixe o cotovelo mais aberto que o canto de uma folha.
activity-drive-car-open-elbow = Ajuste o banco para o cotovelo abrir mais que o canto de uma folha.
activity-brush-teeth-lean-forward = Incline-se sobre a pia. Leve a cabeça até a escova.

activity-wash-hair-shower-name = Tomar banho e lavar o cabelo
activity-wash-hair-shower-arm-bag = Cubra a mão e a tala com um saco impermeável. Feche bem em cima.
activity-wash-hair-shower-pump-bottle = Use frasco de bomba e esponja de cabo longo.
activity-wash-hair-shower-bend-head = Abaixe a cabeça. Deixe o cotovelo mais aberto que o canto de uma folha.
activity-wash-hair-shower-other-hand = Lave com a outra mão, ou peça a alguém para lavar o cabelo.

activity-pull-up-clothes-name = Puxar calças ou meias
activity-pull-up-clothes-loose-waist = Use roupas largas de cintura macia.
activity-pull-up-clothes-loops = Costure alças por dentro. Passe o antebraço por elas e puxe.
activity-pull-up-clothes-flat-palms = Sente-se. Empurre o tecido para cima com as palmas retas.
activity-pull-up-clothes-other-hand = Puxe com a outra mão, ou peça ajuda a alguém.

activity-fasten-back-strap-name = Fechar uma alça nas costas
activity-fasten-back-strap-pull-over = Use uma peça macia que se veste pela cabeça.
activity-fasten-back-strap-turn-round = Feche na frente. Depois gire.
activity-fasten-back-strap-front-closing = Escolha uma que fecha na frente com ganchos largos.
activity-fasten-back-strap-helper = Peça a alguém para fechar.

activity-toilet-wipe-name = Limpar-se no banheiro
activity-toilet-wipe-cover-splint = Ponha um saco fino sobre a tala. Jogue fora depois.
activity-toilet-wipe-long-wiper = Use um limpador de cabo longo, ou um assento que lava.
activity-toilet-wipe-other-hand = Limpe com a outra mão.
activity-toilet-wipe-helper = Peça ajuda a alguém de confiança.

activity-cut-nails-name = Cortar as unhas
activity-cut-nails-fixed-clipper = Use um cortador preso a uma tábua. Aperte com a palma.
activity-cut-nails-file = Lixe as unhas com uma lixa larga. Segure de leve.
activity-cut-nails-few-at-once = Corte algumas unhas por dia.
activity-cut-nails-helper = Peça a alguém para cortar.

activity-tie-laces-name = Amarrar cadarços
activity-tie-laces-slip-on = Use sapatos de enfiar. Use uma calçadeira longa.
activity-tie-laces-stretch-laces = Use cadarços elásticos que ficam amarrados.
activity-tie-laces-helper = Peça a alguém para amarrar.

activity-ring-pull-cap-name = Abrir lata de argola ou tampa de garrafa
activity-ring-pull-cap-lever-opener = Use uma alavanca que levanta a argola para você.
activity-ring-pull-cap-cap-grip = Ponha um tapete de borracha sobre a tampa. Gire com a palma reta.
activity-ring-pull-cap-easy-packs = Compre pacotes que abrem sem força.
activity-ring-pull-cap-helper = Peça a alguém para abrir.

activity-chop-vegetables-name = Picar legumes
activity-chop-vegetables-upright-knife = Use uma faca que balança ou de cabo em pé.
activity-chop-vegetables-cook-first = Cozinhe primeiro. Comida mole pede menos força.
activity-chop-vegetables-ready-cut = Compre legumes já cortados.
activity-chop-vegetables-helper = Peça a alguém para picar.

activity-wash-dishes-name = Lavar a louça
activity-wash-dishes-long-brush = Use água fria e uma escova de cabo longo.
activity-wash-dishes-soak-first = Deixe a louça de molho primeiro. Depois limpe de leve.
activity-wash-dishes-dishwasher = Use lava-louças. Ponha coisas leves, uma a uma.
activity-wash-dishes-helper = Peça a alguém para lavar.

activity-knead-dough-name = Sovar massa ou mexer mistura grossa
activity-knead-dough-upright-spoon = Ponha a tigela sobre um pano molhado. Mexa com colher em pé, a partir do ombro.
activity-knead-dough-thin-mix = Faça a mistura mais fina, e faça menos.
activity-knead-dough-mixer = Deixe uma máquina misturar.
activity-knead-dough-helper = Peça a alguém para sovar.

activity-carry-plates-name = Carregar pratos ou bandeja
activity-carry-plates-flat-palms = Passe as duas palmas retas por baixo. Segure perto do corpo.
activity-carry-plates-trolley = Leve em um carrinho.
activity-carry-plates-one-by-one = Leve um prato por vez. Deixe os quentes esfriar primeiro.
activity-carry-plates-helper = Peça a alguém para levar.

activity-eat-with-cutlery-name = Comer com garfo e faca
activity-eat-with-cutlery-fat-handles = Use talheres de cabo longo e grosso.
activity-eat-with-cutlery-rocking-knife = Corte com uma faca que balança.
activity-eat-with-cutlery-soft-food = Escolha comida mole que não precisa de faca.
activity-eat-with-cutlery-other-hand = Coma com a outra mão. Peça a alguém para cortar a comida.

activity-turn-door-knob-name = Girar maçaneta ou torneira
activity-turn-door-knob-lever-handle = Ponha uma alavanca nela. Aperte a alavanca com o antebraço.
activity-turn-door-knob-leave-open = Deixe as portas de dentro um pouco abertas. Empurre com o quadril.
activity-turn-door-knob-other-hand = Gire com a outra mão.
activity-turn-door-knob-helper = Peça a alguém para girar.

activity-vacuum-name = Aspirar o chão
activity-vacuum-walk-along = Deixe o cotovelo junto ao corpo. Ande junto com o aspirador.
activity-vacuum-light-cleaner = Use um aspirador leve, ou um que anda sozinho.
activity-vacuum-one-room = Faça um cômodo. Depois descanse a mão.
activity-vacuum-helper = Peça a alguém para fazer.

activity-hang-washing-name = Pendurar a roupa
activity-hang-washing-hangers = Pendure em cabides ou ponha sobre um varal de chão.
activity-hang-washing-soft-pegs = Use prendedores que abrem fácil.
activity-hang-washing-small-loads = Lave pouca roupa por vez. Centrifugue bem.
activity-hang-washing-helper = Peça a alguém para pendurar.

activity-scrub-bath-name = Esfregar a banheira
activity-scrub-bath-long-handle = Use uma esponja de cabo longo e grosso.
activity-scrub-bath-let-soak = Borrife, espere e enxágue. Não esfregue.
activity-scrub-bath-short-bouts = Limpe uma parte pequena por dia.
activity-scrub-bath-helper = Peça a alguém para limpar.


activity-rise-from-chair-name = Levantar-se da cadeira com apoio
activity-rise-from-chair-high-seat = Sente-se em um assento mais alto e firme. Assim as pernas levantam você com menos esforço.
activity-rise-from-chair-legs-first = Deslize para a frente e incline o corpo. Levante-se com a força das pernas.
activity-rise-from-chair-forearm-rest = Apoie o antebraço no braço da cadeira, não a mão.
activity-rise-from-chair-other-hand = Empurre com a outra mão, ou peça a alguém para ajudar você a levantar.

activity-iron-clothes-name = Passar roupa
activity-iron-clothes-light-iron = Use um ferro pequeno e leve.
activity-iron-clothes-hang-smooth = Pendure a roupa úmida e bem esticada. Muitas peças nem precisam de ferro.
activity-iron-clothes-few-pieces = Passe poucas peças. Depois descanse a mão.
activity-iron-clothes-other-hand = Passe com a outra mão, ou peça a alguém para passar.

activity-make-bed-name = Arrumar a cama
activity-make-bed-light-covers = Use uma só coberta leve e lençóis soltos.
activity-make-bed-flat-hands = Empurre os lençóis para o lugar com as mãos retas e os antebraços.
activity-make-bed-few-corners = Não levante o colchão. Deixe os cantos soltos.
activity-make-bed-helper = Peça a alguém para arrumar.

activity-lean-on-stick-name = Apoiar-se em bengala ou andador
activity-lean-on-stick-wide-grip = Peça para conferirmos a altura. Um cabo largo e macio ajuda.
activity-lean-on-stick-forearm-rest = Peça a nós um modelo com apoio para o antebraço. Não ande sem apoio.
activity-lean-on-stick-other-hand = Pergunte a nós se pode segurar com a outra mão. Não ande sem apoio.

activity-hold-dog-lead-name = Segurar a guia do cachorro
activity-hold-dog-lead-waist-lead = Use uma guia de cachorro que se prende na cintura.
activity-hold-dog-lead-calm-walks = Faça passeios curtos e calmos, com um peitoral que evita puxões.
activity-hold-dog-lead-helper = Peça a alguém para segurar a guia. Nunca enrole a guia nos dedos.

activity-use-screwdriver-name = Usar chave de fenda
activity-use-screwdriver-powered-driver = Use uma parafusadeira leve, com motor.
activity-use-screwdriver-fat-handle = Use um cabo grosso que gira em passos pequenos.
activity-use-screwdriver-elbow-in = Deixe o cotovelo junto ao corpo. Faça força com o corpo.
activity-use-screwdriver-helper = Peça a alguém para pôr os parafusos.

activity-hammer-name = Usar martelo
activity-hammer-light-hammer = Use um martelo leve, de cabo macio e grosso.
activity-hammer-few-nails = Bata poucos pregos. Depois descanse a mão.
activity-hammer-helper = Peça a alguém para martelar.

activity-power-drill-name = Usar furadeira
activity-power-drill-light-drill = Use uma furadeira leve, com cabo lateral.
activity-power-drill-two-hands = Segure com as duas mãos, com os cotovelos junto ao corpo.
activity-power-drill-short-bouts = Faça um furo. Depois descanse a mão.
activity-power-drill-helper = Peça a alguém para furar.

activity-lift-boxes-name = Levantar caixas
activity-lift-boxes-palms-under = Vire as palmas para cima. Passe os antebraços por baixo e fique bem perto.
activity-lift-boxes-half-load = Encha as caixas só até a metade.
activity-lift-boxes-trolley = Empurre em um carrinho. Não levante do chão.
activity-lift-boxes-helper = Peça a alguém para levantar.

activity-handle-small-parts-name = Pegar peças pequenas ou moedas
activity-handle-small-parts-soft-tray = Ponha sobre um tapete macio. Deslize até a beirada para pegar.
activity-handle-small-parts-wide-tweezers = Use uma pinça de cabo largo e macio, ou um ímã.
activity-handle-small-parts-pauses = Pegue poucas. Depois descanse a mão.
activity-handle-small-parts-other-hand = Pegue com a outra mão.

activity-feed-baby-name = Segurar o bebê na hora de mamar
activity-feed-baby-firm-pillow = Deite o bebê em um travesseiro firme. O peso fica no travesseiro.
activity-feed-baby-straight-wrist = Apoie a cabeça do bebê na dobra do seu braço. Deixe o punho reto.
activity-feed-baby-change-sides = Troque de lado muitas vezes. Estique o braço nos intervalos.
activity-feed-baby-helper = Peça a alguém para pôr o bebê no lugar e ficar por perto.

activity-change-nappy-name = Trocar fralda
activity-change-nappy-easy-tabs = Escolha fraldas de fitas largas, que abrem fácil.
activity-change-nappy-roll-baby = Vire o bebê de lado. Não levante os dois pés dele.
activity-change-nappy-wipes-ready = Deixe tudo à mão, aberto e pronto, antes de começar.
activity-change-nappy-other-hand = Feche as fitas com a outra mão, ou peça a alguém para trocar.

activity-buckle-child-seat-name = Prender a cadeirinha da criança
activity-buckle-child-seat-buckle-key = Use uma alavanca própria para apertar fivelas.
activity-buckle-child-seat-knuckle = Aperte o botão com o nó de um dedo dobrado.
activity-buckle-child-seat-helper = Use a outra mão, ou peça a alguém. Confira se está fechado.

activity-push-pram-name = Empurrar carrinho de bebê
activity-push-pram-open-palms = Empurre com as palmas abertas.
activity-push-pram-high-bar = Ponha a barra mais alta e acolchoe. Apoie os antebraços nela.
activity-push-pram-helper = Empurre com a outra mão, ou peça a alguém para empurrar.

activity-dig-name = Cavar
activity-dig-small-spade = Use uma pá pequena e leve, de cabo longo.
activity-dig-foot-pushes = Empurre a pá com o pé.
activity-dig-short-bouts = Encha meia pá por vez. Pare depois de algumas.
activity-dig-helper = Peça a alguém para cavar. Você mostra onde.

activity-pull-weeds-name = Arrancar mato
activity-pull-weeds-long-weeder = Use uma enxada ou um arrancador de cabo longo e grosso.
activity-pull-weeds-after-rain = Arranque depois da chuva, quando as raízes saem fácil.
activity-pull-weeds-short-bouts = Faça um pedaço pequeno. Depois descanse a mão.
activity-pull-weeds-helper = Peça a alguém para arrancar. Você mostra onde.

activity-water-plants-name = Regar plantas
activity-water-plants-two-hands = Segure o regador com as duas mãos, perto do corpo.
activity-water-plants-little-water = Ponha só um pouco de água no regador.
activity-water-plants-hose = Use uma mangueira com alavanca que fica travada.
activity-water-plants-helper = Regue com a outra mão, ou peça a alguém.

activity-fasten-seat-belt-name = Colocar o cinto de segurança
activity-fasten-seat-belt-belt-handle = Ponha no cinto uma alça fácil de alcançar.
activity-fasten-seat-belt-knuckle = Aperte o botão do fecho com o nó de um dedo dobrado.
activity-fasten-seat-belt-other-hand = Puxe o cinto com a outra mão. Peça a alguém para fechar.

activity-cycle-name = Andar de bicicleta
activity-cycle-high-bar = Levante o guidão. Use manoplas macias e grossas.
activity-cycle-short-rides = Ande um trecho curto em caminhos lisos.
activity-cycle-indoor-bike = Use uma bicicleta parada. Sente-se com as costas retas e deixe as mãos descansarem.

activity-lift-weights-name = Levantar pesos
activity-lift-weights-half-weight = Use metade do peso. Faça menos vezes.
activity-lift-weights-forearm-cuff = Puxe com uma faixa presa no antebraço. Não aperte uma barra.
activity-lift-weights-legs-only = Treine as pernas e o tronco. Não segure nada.

activity-press-ups-yoga-name = Fazer flexões ou ioga
activity-press-ups-yoga-legs-only = Escolha posições apoiadas nas pernas, nas costas ou de lado.
activity-press-ups-yoga-straight-wrist = Segure em alças fixas, para o punho ficar reto.
activity-press-ups-yoga-fewer = Apoie-se na parede, não no chão.

activity-swim-name = Nadar
activity-swim-float = Apoie os antebraços em uma prancha. Nade com as pernas.
activity-swim-dry-at-once = Seque a pele e a tala assim que sair da água.
activity-swim-short-swim = Nade por pouco tempo.

activity-play-guitar-name = Tocar violão
activity-play-guitar-light-strings = Use cordas leves, que pedem pouca pressão.
activity-play-guitar-neck-higher = Segure o braço do violão mais alto, com uma correia. Deixe o punho reto.
activity-play-guitar-short-bouts = Toque uma música. Depois descanse a mão.

activity-sleep-position-name = Dormir
activity-sleep-position-splint-on = Use a tala à noite quando este guia disser.
activity-sleep-position-arm-on-pillow = Ponha o braço em um travesseiro ao seu lado, tão reto quanto for fácil.
activity-sleep-position-soft-towel = Enrole uma toalha macia, frouxa, em volta do cotovelo, para ele dobrar menos.

activity-hold-phone-to-ear-name = Segurar o telefone no ouvido
activity-hold-phone-to-ear-loudspeaker = Use o viva-voz ou fones. Deixe o telefone na mesa.
activity-hold-phone-to-ear-short-calls = Fale pouco tempo. Estique o braço nos intervalos.
activity-hold-phone-to-ear-other-hand = Segure o telefone com a outra mão.
