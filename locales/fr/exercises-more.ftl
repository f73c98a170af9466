### More exercises: name, starting position and one action for each step.
### The name is a short order and stands as a heading. Steps are numbered by the program.
### $hold is a finished length of time, such as the words for five seconds.
### “Autre main” is the hand without the splint. “Doigt traité” is the finger that the splint is for.
### The joints of a finger are “jointure de base”, “articulation du milieu” and “bout”.

## Arm and wrist

exercise-shoulder-reach-name = Levez le bras
exercise-shoulder-reach-start = En position assise ou debout, laissez le bras le long du corps.
exercise-shoulder-reach-step-1 = Levez le bras devant vous, aussi haut que c’est facile.
exercise-shoulder-reach-step-2 = Tenez { $hold }.
exercise-shoulder-reach-step-3 = Baissez lentement le bras.
exercise-shoulder-reach-step-4 = La fois suivante, levez-le sur le côté.

exercise-wrist-dart-name = Bougez le poignet comme pour lancer une fléchette
exercise-wrist-dart-start = Posez l’avant-bras sur une table, sur le côté du petit doigt, la main au-delà du bord. Gardez les doigts et le pouce souples.
exercise-wrist-dart-step-1 = Penchez la main en arrière et vers le pouce.
exercise-wrist-dart-step-2 = Tenez { $hold }.
exercise-wrist-dart-step-3 = Penchez la main en avant et vers le petit doigt.
exercise-wrist-dart-step-4 = Tenez { $hold }.

# Ordered by the clinician only.
exercise-wrist-swing-with-fingers-name = Balancez ensemble le poignet et les doigts
exercise-wrist-swing-with-fingers-start = Posez le coude sur une table. N’allez pas plus loin que ce que votre thérapeute vous a montré.
exercise-wrist-swing-with-fingers-step-1 = Laissez tomber le poignet en avant, pour que les doigts s’ouvrent.
exercise-wrist-swing-with-fingers-step-2 = Tenez { $hold }.
exercise-wrist-swing-with-fingers-step-3 = Levez le poignet, pour que les doigts se replient en un poing souple.
exercise-wrist-swing-with-fingers-step-4 = Tenez { $hold }.

exercise-forearm-front-stretch-name = Étirez l’avant-bras côté paume
exercise-forearm-front-stretch-start = Tenez le bras devant vous, paume vers le haut.
exercise-forearm-front-stretch-step-1 = Tendez le coude.
exercise-forearm-front-stretch-step-2 = Prenez la paume et les doigts dans l’autre main.
exercise-forearm-front-stretch-step-3 = Tirez doucement la main vers le bas jusqu’à ce que vous sentiez que ça tire.
exercise-forearm-front-stretch-step-4 = Tenez { $hold }.
exercise-forearm-front-stretch-step-5 = Relâchez lentement.

exercise-forearm-back-stretch-name = Étirez le dos de l’avant-bras
exercise-forearm-back-stretch-start = Tenez le bras devant vous, paume vers le bas. Gardez les doigts souples.
exercise-forearm-back-stretch-step-1 = Tendez le coude.
exercise-forearm-back-stretch-step-2 = Posez l’autre main sur le dos de la main.
exercise-forearm-back-stretch-step-3 = Poussez doucement la main vers le bas jusqu’à ce que vous sentiez que ça tire.
exercise-forearm-back-stretch-step-4 = Tenez { $hold }.
exercise-forearm-back-stretch-step-5 = Relâchez lentement.

exercise-palms-together-stretch-name = Étirez les poignets, paumes jointes
exercise-palms-together-stretch-start = Joignez les paumes devant la poitrine, doigts vers le haut.
exercise-palms-together-stretch-step-1 = Baissez lentement les mains. Gardez les paumes jointes.
exercise-palms-together-stretch-step-2 = Arrêtez quand vous sentez que ça tire doucement.
exercise-palms-together-stretch-step-3 = Tenez { $hold }.
exercise-palms-together-stretch-step-4 = Remontez les mains.

## Fingers

# A neighbour of the treated finger may be in the splint too.
exercise-free-finger-bend-name = Bougez les doigts libres
exercise-free-finger-bend-start = Levez la main, les doigts vers le haut.
exercise-free-finger-bend-step-1 = Pliez seulement les doigts qui peuvent bouger librement.
exercise-free-finger-bend-step-2 = Tenez { $hold }.
exercise-free-finger-bend-step-3 = Tendez-les lentement.

exercise-fingers-straight-name = Tendez les doigts
exercise-fingers-straight-start = Levez la main, les doigts vers le haut.
exercise-fingers-straight-step-1 = Tendez tous les doigts, sauf le pouce, autant que c’est facile.
exercise-fingers-straight-step-2 = Tenez { $hold }.
exercise-fingers-straight-step-3 = Relâchez-les.

exercise-tabletop-name = Pliez seulement les jointures de base
exercise-tabletop-start = Levez la main, les doigts vers le haut.
exercise-tabletop-step-1 = Pliez les jointures de base. Gardez le reste des doigts tendu.
exercise-tabletop-step-2 = Tenez { $hold }.
exercise-tabletop-step-3 = Tendez les jointures de base.

exercise-straight-fist-name = Faites un poing plat
exercise-straight-fist-start = Levez la main, les doigts vers le haut.
exercise-straight-fist-step-1 = Pliez les jointures de base et les articulations du milieu. Gardez le bout des doigts tendu.
exercise-straight-fist-step-2 = Posez le bout des doigts à plat sur la paume.
exercise-straight-fist-step-3 = Tenez { $hold }.
exercise-straight-fist-step-4 = Tendez les doigts.

exercise-five-positions-name = Passez par toutes les formes de la main
exercise-five-positions-start = Levez la main, les doigts vers le haut.
exercise-five-positions-step-1 = Tendez tous les doigts, sauf le pouce.
exercise-five-positions-step-2 = Faites un crochet. Gardez les jointures de base tendues.
exercise-five-positions-step-3 = Fermez tout le poing, en souplesse.
exercise-five-positions-step-4 = Pliez seulement les jointures de base. Gardez le reste tendu.
exercise-five-positions-step-5 = Posez le bout des doigts à plat sur la paume. Gardez le bout des doigts tendu.
exercise-five-positions-step-6 = Tenez chaque forme { $hold } avant la suivante.

exercise-block-tip-bend-name = Pliez seulement le bout du doigt
exercise-block-tip-bend-start = Posez la main sur une table, paume vers le haut. Avec l’autre main, tenez le doigt traité entre son articulation du milieu et sa dernière articulation.
exercise-block-tip-bend-step-1 = Pliez seulement le bout.
exercise-block-tip-bend-step-2 = Tenez { $hold }.
exercise-block-tip-bend-step-3 = Tendez le bout.

exercise-block-middle-bend-name = Pliez seulement l’articulation du milieu
exercise-block-middle-bend-start = Posez la main sur une table, paume vers le haut. Avec l’autre main, tenez le doigt traité entre sa jointure de base et son articulation du milieu.
exercise-block-middle-bend-step-1 = Pliez seulement l’articulation du milieu.
exercise-block-middle-bend-step-2 = Tenez { $hold }.
exercise-block-middle-bend-step-3 = Tendez l’articulation du milieu.

exercise-knuckle-bent-straighten-name = Tendez l’articulation du milieu, jointure pliée
exercise-knuckle-bent-straighten-start = Pliez la jointure de base du doigt traité. Tenez-la pliée avec l’autre main.
exercise-knuckle-bent-straighten-step-1 = Tendez l’articulation du milieu autant que c’est facile.
exercise-knuckle-bent-straighten-step-2 = Tenez { $hold }.
exercise-knuckle-bent-straighten-step-3 = Relâchez l’articulation du milieu.

exercise-finger-lift-name = Levez les doigts l’un après l’autre
exercise-finger-lift-start = Posez la paume à plat sur une table.
exercise-finger-lift-step-1 = Levez un doigt de la table, pas le pouce. Gardez les autres posés.
exercise-finger-lift-step-2 = Tenez { $hold }.
exercise-finger-lift-step-3 = Baissez-le lentement.
exercise-finger-lift-step-4 = Faites de même avec chacun des autres doigts, sauf le pouce.

exercise-tip-bend-middle-straight-name = Pliez le bout, articulation du milieu tendue
exercise-tip-bend-middle-straight-start = Posez la main sur une table. N’enlevez pas l’attelle.
exercise-tip-bend-middle-straight-step-1 = Gardez tendue l’articulation du milieu du doigt traité.
exercise-tip-bend-middle-straight-step-2 = Pliez seulement le bout.
exercise-tip-bend-middle-straight-step-3 = Tenez { $hold }.
exercise-tip-bend-middle-straight-step-4 = Tendez le bout.

exercise-middle-bend-tip-held-name = Pliez l’articulation du milieu du doigt
exercise-middle-bend-tip-held-start = Posez le coude sur une table, les doigts vers le haut. N’enlevez pas l’attelle.
exercise-middle-bend-tip-held-step-1 = Pliez l’articulation du milieu du doigt traité.
exercise-middle-bend-tip-held-step-2 = Tenez { $hold }.
exercise-middle-bend-tip-held-step-3 = Tendez-la lentement.

## After a tendon repair
## Ordered by the clinician only.

exercise-short-arc-middle-bend-name = Pliez un peu l’articulation du milieu
exercise-short-arc-middle-bend-start = Servez-vous seulement du gabarit fait par votre thérapeute. Gardez la jointure de base tendue.
exercise-short-arc-middle-bend-step-1 = Posez le doigt traité le long du gabarit.
exercise-short-arc-middle-bend-step-2 = Pliez l’articulation du milieu seulement jusqu’à ce que le doigt touche le gabarit.
exercise-short-arc-middle-bend-step-3 = Tenez { $hold }.
exercise-short-arc-middle-bend-step-4 = Tendez complètement l’articulation du milieu.
exercise-short-arc-middle-bend-step-5 = Remettez l’attelle quand vous avez tout fait.

exercise-helped-curl-in-splint-name = Repliez les doigts avec l’autre main
exercise-helped-curl-in-splint-start = N’enlevez pas l’attelle. Ouvrez seulement les sangles que votre thérapeute vous a montrées. Gardez les doigts souples.
exercise-helped-curl-in-splint-step-1 = Avec l’autre main, repliez doucement un doigt vers la paume, pas le pouce.
exercise-helped-curl-in-splint-step-2 = Tenez { $hold }.
exercise-helped-curl-in-splint-step-3 = Relâchez lentement le doigt. Ne tirez pas dessus pour le tendre.
exercise-helped-curl-in-splint-step-4 = Faites de même avec chaque doigt, sauf le pouce.
exercise-helped-curl-in-splint-step-5 = Refermez les sangles quand vous avez tout fait.

exercise-straighten-to-roof-name = Tendez les doigts jusqu’à l’attelle
exercise-straighten-to-roof-start = N’enlevez pas l’attelle. Ouvrez seulement les sangles que votre thérapeute vous a montrées. Gardez les jointures de base contre l’attelle.
exercise-straighten-to-roof-step-1 = Tendez les doigts jusqu’à ce qu’ils touchent l’attelle.
exercise-straighten-to-roof-step-2 = Tenez { $hold }.
exercise-straighten-to-roof-step-3 = Relâchez-les.
exercise-straighten-to-roof-step-4 = Refermez les sangles quand vous avez tout fait.

exercise-half-fist-in-splint-name = Faites un demi-poing souple
exercise-half-fist-in-splint-start = N’enlevez pas l’attelle. Ouvrez seulement les sangles que votre thérapeute vous a montrées.
exercise-half-fist-in-splint-step-1 = Pliez doucement les doigts, à mi-chemin de la paume.
exercise-half-fist-in-splint-step-2 = Tenez { $hold }. Ne serrez pas.
exercise-half-fist-in-splint-step-3 = Tendez les doigts jusqu’à ce qu’ils touchent l’attelle.
exercise-half-fist-in-splint-step-4 = Refermez les sangles quand vous avez tout fait.

exercise-place-and-hold-name = Placez les doigts et tenez-les
exercise-place-and-hold-start = Posez le coude sur une table. N’allez pas plus loin que ce que votre thérapeute vous a montré.
exercise-place-and-hold-step-1 = Avec l’autre main, repliez doucement les doigts.
exercise-place-and-hold-step-2 = Ôtez l’autre main.
exercise-place-and-hold-step-3 = Gardez doucement les doigts ainsi pendant { $hold }. Ne serrez pas.
exercise-place-and-hold-step-4 = Relâchez les doigts.

exercise-yoke-bend-name = Pliez les doigts dans l’attelle
exercise-yoke-bend-start = Posez le coude sur une table, les doigts vers le haut. N’enlevez pas l’attelle. Ne laissez pas le poignet tomber en avant.
exercise-yoke-bend-step-1 = Pliez tous les doigts, sauf le pouce, autant que l’attelle le permet.
exercise-yoke-bend-step-2 = Tenez { $hold }.
exercise-yoke-bend-step-3 = Tendez tous ces doigts.

## Stretches of a finger

exercise-helped-curl-stretch-name = Repliez le doigt avec de l’aide
exercise-helped-curl-stretch-start = Posez la main sur une table, paume vers le haut.
exercise-helped-curl-stretch-step-1 = Avec l’autre main, repliez lentement le doigt traité.
exercise-helped-curl-stretch-step-2 = Arrêtez quand vous sentez que ça tire doucement.
exercise-helped-curl-stretch-step-3 = Tenez { $hold }.
exercise-helped-curl-stretch-step-4 = Relâchez lentement.

exercise-helped-straighten-stretch-name = Tendez le doigt avec de l’aide
exercise-helped-straighten-stretch-start = Posez le dos de la main sur une table. Avec l’autre main, tenez le doigt traité entre sa jointure de base et son articulation du milieu.
exercise-helped-straighten-stretch-step-1 = Poussez doucement l’articulation du milieu pour la tendre.
exercise-helped-straighten-stretch-step-2 = Arrêtez quand vous sentez que ça tire doucement.
exercise-helped-straighten-stretch-step-3 = Tenez { $hold }.
exercise-helped-straighten-stretch-step-4 = Relâchez lentement.

exercise-intrinsic-stretch-name = Repliez le doigt, jointure tendue
exercise-intrinsic-stretch-start = Posez le coude sur une table, les doigts vers le haut.
exercise-intrinsic-stretch-step-1 = Gardez tendue la jointure de base du doigt traité.
exercise-intrinsic-stretch-step-2 = Avec l’autre main, pliez son articulation du milieu et son bout.
exercise-intrinsic-stretch-step-3 = Arrêtez quand vous sentez que ça tire doucement.
exercise-intrinsic-stretch-step-4 = Tenez { $hold }.
exercise-intrinsic-stretch-step-5 = Relâchez lentement.

## Thumb

exercise-thumb-bend-across-name = Pliez le pouce en travers de la paume
exercise-thumb-bend-across-start = Posez la main sur une table, paume vers le haut.
exercise-thumb-bend-across-step-1 = Pliez lentement le pouce en travers de la paume.
exercise-thumb-bend-across-step-2 = Tenez { $hold }.
exercise-thumb-bend-across-step-3 = Tendez le pouce.

exercise-thumb-web-release-name = Assouplissez la peau entre le pouce et l’index
exercise-thumb-web-release-start = Posez la main sur une table, sur le côté du petit doigt.
exercise-thumb-web-release-step-1 = Frottez doucement la peau entre le pouce et l’index.
exercise-thumb-web-release-step-2 = Avec l’autre main, tenez le pouce entre sa jointure et le poignet.
exercise-thumb-web-release-step-3 = Tirez doucement le pouce loin de la paume.
exercise-thumb-web-release-step-4 = Tenez { $hold }.
exercise-thumb-web-release-step-5 = Relâchez lentement.

exercise-thumb-wrist-slow-lower-name = Baissez lentement la main, pouce en haut
exercise-thumb-wrist-slow-lower-start = Posez l’avant-bras sur une table, sur le côté du petit doigt. Tenez le petit poids choisi par votre thérapeute. Faites cela seulement un jour sur deux.
exercise-thumb-wrist-slow-lower-step-1 = Avec l’autre main, levez la main du côté du pouce.
exercise-thumb-wrist-slow-lower-step-2 = Ôtez l’autre main.
exercise-thumb-wrist-slow-lower-step-3 = Laissez lentement descendre la main. Prenez { $hold } pour cela.

## Nerves

exercise-thumb-side-nerve-slide-name = Faites glisser le nerf côté pouce
exercise-thumb-side-nerve-slide-start = Asseyez-vous, le coude plié et le poignet dans l’axe, sans le plier.
exercise-thumb-side-nerve-slide-step-1 = Fermez le poing sans serrer.
exercise-thumb-side-nerve-slide-step-2 = Tendez les doigts. Gardez le pouce à côté d’eux.
exercise-thumb-side-nerve-slide-step-3 = Pliez doucement le poignet en arrière.
exercise-thumb-side-nerve-slide-step-4 = Écartez le pouce sur le côté.
exercise-thumb-side-nerve-slide-step-5 = Tournez la paume vers le haut.
exercise-thumb-side-nerve-slide-step-6 = Tenez chaque position { $hold } avant la suivante.

exercise-little-finger-nerve-slide-name = Faites glisser le nerf côté petit doigt
exercise-little-finger-nerve-slide-start = Tenez le bras sur le côté, paume vers le haut.
exercise-little-finger-nerve-slide-step-1 = Pliez le coude à moitié pendant que le poignet se plie du côté de la paume.
exercise-little-finger-nerve-slide-step-2 = Tenez { $hold }.
exercise-little-finger-nerve-slide-step-3 = Tendez le coude pendant que le poignet se plie doucement du côté du dos de la main.
exercise-little-finger-nerve-slide-step-4 = Tenez { $hold }.

## Strength

exercise-wrist-press-still-name = Poussez sans bouger le poignet
exercise-wrist-press-still-start = Posez l’avant-bras sur une table, paume vers le bas, la main au-delà du bord.
exercise-wrist-press-still-step-1 = Posez l’autre main sur le dos de la main.
exercise-wrist-press-still-step-2 = Poussez doucement vers le haut contre elle. Ne laissez pas le poignet bouger.
exercise-wrist-press-still-step-3 = Tenez { $hold }.
exercise-wrist-press-still-step-4 = Relâchez la main.
exercise-wrist-press-still-step-5 = La fois suivante, mettez l’autre main sous la paume et poussez la paume vers le bas.

exercise-putty-grip-name = Serrez de la pâte molle
exercise-putty-grip-start = Posez une boule de pâte molle dans la paume.
exercise-putty-grip-step-1 = Serrez-la doucement avec les doigts et le pouce.
exercise-putty-grip-step-2 = Tenez { $hold }.
exercise-putty-grip-step-3 = Relâchez lentement.
exercise-putty-grip-step-4 = Roulez de nouveau la pâte en boule.

exercise-three-point-pinch-name = Pincez de la pâte molle, doigts arrondis
exercise-three-point-pinch-start = Prenez une petite boule de pâte molle.
exercise-three-point-pinch-step-1 = Tenez-la entre le pouce, l’index et le majeur.
exercise-three-point-pinch-step-2 = Gardez chaque articulation un peu pliée.
exercise-three-point-pinch-step-3 = Pincez doucement la pâte.
exercise-three-point-pinch-step-4 = Tenez { $hold }.
exercise-three-point-pinch-step-5 = Relâchez lentement.

exercise-key-pinch-putty-name = Pincez de la pâte molle comme une clé
exercise-key-pinch-putty-start = Prenez une petite boule de pâte molle.
exercise-key-pinch-putty-step-1 = Tenez-la entre le pouce et le côté de l’index.
exercise-key-pinch-putty-step-2 = Pincez doucement la pâte.
exercise-key-pinch-putty-step-3 = Tenez { $hold }.
exercise-key-pinch-putty-step-4 = Relâchez lentement.

exercise-wrist-slow-lower-name = Baissez lentement la main, paume vers le bas
exercise-wrist-slow-lower-start = Posez l’avant-bras sur une table, paume vers le bas, la main au-delà du bord. Tenez le petit poids choisi par votre thérapeute.
exercise-wrist-slow-lower-step-1 = Levez la main avec l’aide de l’autre main.
exercise-wrist-slow-lower-step-2 = Ôtez l’autre main.
exercise-wrist-slow-lower-step-3 = Laissez lentement descendre la main. Prenez { $hold } pour cela.

exercise-hand-lean-name = Appuyez-vous sur la main
exercise-hand-lean-start = Mettez-vous debout devant un mur. Servez-vous d’une table ou du sol seulement quand votre thérapeute vous le dit.
exercise-hand-lean-step-1 = Posez les deux paumes sur le mur.
exercise-hand-lean-step-2 = Penchez-vous lentement jusqu’à sentir du poids sur les mains.
exercise-hand-lean-step-3 = Tenez { $hold }.
exercise-hand-lean-step-4 = Repoussez-vous lentement en arrière.

## Skin, scar, feeling and tightness

exercise-stroke-towards-heart-name = Caressez le bras vers le cœur
exercise-stroke-towards-heart-start = Posez le bras sur des coussins, la main plus haut que le coude.
exercise-stroke-towards-heart-step-1 = Posez l’autre main sur le bout des doigts.
exercise-stroke-towards-heart-step-2 = Caressez légèrement du bout des doigts jusqu’au coude.
exercise-stroke-towards-heart-step-3 = Ne passez pas sur l’attelle, ni sur une peau douloureuse ou ouverte.
exercise-stroke-towards-heart-step-4 = Continuez pendant { $hold }.

exercise-scar-massage-name = Bougez la cicatrice
exercise-scar-massage-start = Faites cela seulement quand la cicatrice est fermée et sèche. Posez la main sur une table.
exercise-scar-massage-step-1 = Mettez un bout de doigt de l’autre main sur la cicatrice.
exercise-scar-massage-step-2 = Appuyez bien, mais sans que cela fasse mal.
exercise-scar-massage-step-3 = Bougez la peau en petits ronds.
exercise-scar-massage-step-4 = Bougez la peau de haut en bas, puis d’un côté à l’autre.
exercise-scar-massage-step-5 = Continuez le long de la cicatrice pendant { $hold }.

exercise-texture-rub-name = Habituez la peau au toucher
exercise-texture-rub-start = Faites cela seulement sur une peau fermée. Posez la main sur une table.
exercise-texture-rub-step-1 = Frottez légèrement la peau sensible avec un tissu doux.
exercise-texture-rub-step-2 = Continuez pendant { $hold }.
exercise-texture-rub-step-3 = Prenez un tissu plus rugueux quand le doux ne vous gêne plus.

exercise-touch-relearn-name = Réapprenez à sentir
exercise-touch-relearn-start = Posez la main sur une table. N’utilisez rien de chaud, de froid ou de coupant.
exercise-touch-relearn-step-1 = Touchez le bout du doigt avec un petit objet et regardez.
exercise-touch-relearn-step-2 = Fermez les yeux et touchez le même endroit.
exercise-touch-relearn-step-3 = Remarquez où vous le sentez et ce que vous sentez.
exercise-touch-relearn-step-4 = Ouvrez les yeux et comparez.
exercise-touch-relearn-step-5 = Continuez à d’autres endroits pendant { $hold }.

exercise-scar-hold-stretch-name = Tenez la cicatrice étirée
exercise-scar-hold-stretch-start = Faites cela seulement quand la cicatrice est fermée et sèche.
exercise-scar-hold-stretch-step-1 = Bougez lentement la main jusqu’à ce que la cicatrice tire.
exercise-scar-hold-stretch-step-2 = Tenez { $hold }.
exercise-scar-hold-stretch-step-3 = Laissez lentement revenir la main.

exercise-tight-hand-slow-open-name = Ouvrez lentement la main serrée
exercise-tight-hand-slow-open-start = Posez l’avant-bras sur un coussin. Laissez le poignet se plier en avant. Ne tirez jamais vite.
exercise-tight-hand-slow-open-step-1 = Prenez le pouce à sa base et écartez-le lentement.
exercise-tight-hand-slow-open-step-2 = Tendez lentement les doigts avec l’autre main.
exercise-tight-hand-slow-open-step-3 = Ramenez lentement le poignet en arrière. Gardez les doigts tendus.
exercise-tight-hand-slow-open-step-4 = Arrêtez dès que la main commence à tirer contre vous.
exercise-tight-hand-slow-open-step-5 = Tenez { $hold }.
exercise-tight-hand-slow-open-step-6 = Laissez lentement la main se fermer.
