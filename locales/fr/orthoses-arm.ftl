### Splints of the thumb, the wrist and the arm, and of the whole hand: names, straps, places to check, and steps.
### What several splints share stands in orthoses.ftl. “Autre main” is the hand without the splint.

## Names of wrist splints
## The name stands inside sentences and always begins with “attelle”; the short form is a label in tables.

orthosis-wrist-neutral-name = attelle du poignet dans l’axe
orthosis-wrist-neutral-short = Poignet, dans l’axe
orthosis-wrist-dorsal-shell-name = attelle du poignet côté dos de la main
orthosis-wrist-dorsal-shell-short = Poignet, dos de la main
orthosis-wrist-all-round-name = attelle du poignet tout autour
orthosis-wrist-all-round-short = Poignet, tout autour
orthosis-wrist-soft-stay-name = attelle souple du poignet avec une barre
orthosis-wrist-soft-stay-short = Poignet, souple avec barre
orthosis-wrist-soft-wrap-name = attelle souple du poignet
orthosis-wrist-soft-wrap-short = Poignet, souple

## Names of thumb splints

orthosis-forearm-thumb-spica-tip-name = attelle longue du pouce jusqu’au bout
orthosis-forearm-thumb-spica-tip-short = Avant-bras et pouce entier
orthosis-thumb-knuckle-shell-name = attelle de la jointure du pouce
orthosis-thumb-knuckle-shell-short = Jointure du pouce
orthosis-thumb-mcp-ring-name = attelle en anneau du pouce
orthosis-thumb-mcp-ring-short = Anneau du pouce
orthosis-thumb-tip-cap-name = attelle du bout du pouce
orthosis-thumb-tip-cap-short = Bout du pouce
# It keeps the space between thumb and index finger open.
orthosis-thumb-web-spacer-name = attelle d’écart du pouce
orthosis-thumb-web-spacer-short = Écart du pouce
# Its roof keeps the thumb from straightening too far.
orthosis-thumb-dorsal-block-name = attelle de protection du pouce
orthosis-thumb-dorsal-block-short = Protection du pouce
# It holds the thumb up, away from the palm.
orthosis-thumb-raised-long-name = attelle qui garde le pouce levé
orthosis-thumb-raised-long-short = Pouce levé

## Names of arm splints and bands

orthosis-long-arm-rotation-name = attelle longue du bras
orthosis-long-arm-rotation-short = Du coude à la main
orthosis-elbow-night-shell-name = attelle du coude pour la nuit
orthosis-elbow-night-shell-short = Coude, la nuit
orthosis-counterforce-band-name = attelle en bande de l’avant-bras
orthosis-counterforce-band-short = Bande de l’avant-bras
orthosis-distal-ulna-strap-name = attelle en bande ferme du poignet
orthosis-distal-ulna-strap-short = Bande du poignet

## Names of splints for wrist and fingers

# Cords join wrist and fingers, so that each helps the other to move.
orthosis-tenodesis-assist-name = attelle d’aide du poignet et des doigts
orthosis-tenodesis-assist-short = Aide poignet et doigts
# Elastic pulls lift the fingers at the big knuckles.
orthosis-dynamic-knuckle-extension-name = attelle qui lève les doigts
orthosis-dynamic-knuckle-extension-short = Doigts levés
orthosis-palm-shell-wrist-knuckles-name = attelle du poignet et des jointures
orthosis-palm-shell-wrist-knuckles-short = Poignet et jointures
orthosis-resting-hand-name = attelle de repos de la main
orthosis-resting-hand-short = Main au repos
orthosis-intrinsic-plus-shell-name = attelle de la main à jointures pliées
orthosis-intrinsic-plus-shell-short = Main, jointures pliées
orthosis-palm-extension-pan-name = attelle à paume ouverte
orthosis-palm-extension-pan-short = Paume ouverte
orthosis-spread-hand-cushion-name = attelle en coussin souple de la main
orthosis-spread-hand-cushion-short = Coussin de la main

## Straps
## Each name is put into “Fermez …” and “Ouvrez …” and carries its article.

strap-near-elbow = la sangle près du coude
strap-upper-arm = la sangle du haut du bras
strap-hand-back = la sangle du dos de la main
strap-across-fingers = la sangle en travers des doigts
strap-across-fingertips = la sangle près du bout des doigts
# A band has one strap, which pulls it snug.
strap-band = la sangle de la bande

## Places to look at in the skin check

spot-wrist-palm-side = poignet, côté paume
spot-wrist-back = dos du poignet
spot-forearm-thumb-side = avant-bras côté pouce, juste à côté du poignet
spot-knuckle-backs = dos des jointures de base
spot-middle-joint-backs = dos des articulations du milieu des doigts
spot-palm-below-knuckles = paume, juste sous les doigts
spot-palm-middle = milieu de la paume
spot-splint-end-at-fingers = doigts, là où l’attelle finit
spot-between-fingers = peau entre les doigts
spot-fingertips = bout des doigts
spot-hand-edge-little-finger = bord de la main, côté petit doigt
spot-loop-edges = peau sous les boucles des doigts
spot-thumb-hole = peau autour du trou du pouce
spot-thumb-ball = partie épaisse de la paume sous le pouce
spot-thumb-pad = coussinet du bout du pouce
spot-thumb-tip-joint-back = dos de la dernière articulation du pouce
spot-thumbnail-edge = peau autour de l’ongle du pouce
spot-ring-crossing = peau là où l’anneau se croise
spot-bar-end-in-palm = paume, là où la barre raide finit
spot-wrap-edge = peau le long des bords de la partie souple
spot-forearm-under-band = avant-bras sous la bande
spot-band-pad = peau sous le coussinet de la bande
spot-elbow-point = pointe du coude
spot-elbow-inner-groove = creux du côté intérieur du coude
spot-elbow-crease = pli à l’avant du coude
spot-upper-arm-edge = haut du bras, là où l’attelle finit

## Getting ready
## One action a step. The other hand does the work.

step-wash-other-hand = Lavez l’autre main et séchez-la bien.
# For a splint that may only be changed by two people.
step-wait-for-helper = Ne faites pas cela sans aide. Attendez la personne formée pour vous aider.
step-ask-helper-if-possible = Demandez à quelqu’un de vous aider, si vous le pouvez.
step-loop-straps-first = Passez chaque sangle dans sa boucle avant de commencer.
step-lay-open-on-table = Posez l’attelle ouverte sur une table.
step-hold-between-knees = Tenez l’attelle ouverte entre vos genoux.
step-lay-opening-towards-you = Posez l’attelle sur une table, l’ouverture vers vous.
step-palm-down-on-table = Posez la paume sur une table.
step-sit-at-table = Asseyez-vous à une table.

## Wrist splints: putting them on and taking them off

step-lay-splint-on-back = Posez l’attelle sur le dos de la main et de l’avant-bras.
# With one hand: the splint lies on the table with its hollow side up.
step-lay-back-of-arm-in = Posez le dos de la main et de l’avant-bras dedans.
step-press-into-splint = Appuyez doucement le bras dans l’attelle.
step-pull-splint-open = Écartez un peu l’attelle.
step-slip-wrist-in = Glissez le poignet dedans par le côté.
step-slip-wrist-out = Sortez le poignet. Ne le tordez pas.
# The bar is a flat stiff strip inside a soft splint.
step-bar-on-palm-side = Tournez l’attelle pour que sa barre soit côté paume.
step-slide-hand-in = Glissez la main dans l’attelle.
step-thumb-through-hole = Passez le pouce dans son trou.
step-slide-off-hand = Faites glisser l’attelle hors de la main. Ne la tirez pas sur la peau.
step-wrap-round-wrist = Passez l’attelle souple autour du poignet.
step-lay-wrist-on-wrap = Posez le poignet au milieu de l’attelle souple.
step-hold-wrap-on-table = Appuyez la main sur une table pour que l’attelle souple ne bouge pas.
step-unwrap = Ouvrez l’attelle souple. Ne tirez pas dessus pour l’enlever.

## Thumb splints: putting them on and taking them off

step-push-on-with-table-edge = Poussez doucement l’attelle en place contre le bord d’une table.
step-keep-thumb-beside-index = Gardez le pouce à côté de l’index.
step-slide-over-thumb = Glissez l’attelle sur le pouce.
step-seat-at-thumb-knuckle = Appuyez l’attelle en place autour de la jointure du pouce.
step-check-thumb-tip-lies-in = Vérifiez que le bout du pouce est dans l’attelle.
step-bend-thumb-a-little = Pliez un peu le pouce.
step-slide-ring-on = Glissez l’anneau sur le pouce jusqu’à sa jointure.
# The therapist puts a mark on the ring.
step-turn-ring-to-mark = Tournez l’anneau jusqu’à ce que son repère soit sur le dos du pouce.
step-check-thumb-stops = Tendez le pouce. L’anneau doit l’empêcher de partir en arrière.
step-slide-ring-off = Faites glisser l’anneau pour l’enlever. S’il coince, l’eau savonneuse aide.
step-rest-thumb-tip-flat = Posez le coussinet du pouce à plat sur une table.
step-slide-on-from-tip = Enfilez l’attelle par le bout. Gardez le bout à plat.
step-push-thumb-in-flat = Poussez le pouce dans l’attelle, à plat le long de la table.
step-check-thumb-tip-straight = Vérifiez que le bout du pouce est bien tendu.
step-check-thumb-big-knuckle-bends = Vérifiez que la grosse jointure du pouce peut se plier.
step-slide-off-tip-flat = Faites glisser l’attelle pour l’enlever. Gardez le bout à plat sur la table.
step-look-at-skin-tip-flat = Regardez la peau. Gardez le bout à plat sur la table.
step-set-between-thumb-and-index = Placez l’attelle entre le pouce et l’index.

## Splints that guard a mended thumb: the thumb never leaves its position

step-rest-hand-curled-on-towel = Posez la main sur une serviette roulée, poignet et doigts repliés.
step-keep-thumb-loosely-bent = Gardez le pouce souple et plié tout le temps.
# The roof is the part of the splint along the back of the thumb.
step-check-thumb-under-roof = Vérifiez que tout le pouce est sous le toit.
step-rest-thumb-up-on-towel = Posez la main sur une serviette, le pouce levé.
step-keep-thumb-raised = Gardez le pouce levé tout le temps.
step-lay-splint-along-thumb-side = Posez l’attelle le long de l’avant-bras, côté pouce.
step-check-thumb-straight-in-splint = Vérifiez que tout le pouce est tendu dans l’attelle.

## Arm splints and bands

step-turn-hand-as-splint = Tournez la main dans le sens de la forme de l’attelle.
step-lay-whole-arm-in = Posez le bras dans l’attelle, le coude plié.
step-elbow-in-hollow = Placez la pointe du coude dans le creux de l’attelle.
step-keep-hand-turned = Gardez la main tournée dans le même sens.
step-bend-elbow-as-splint = Pliez le coude autant que l’attelle.
step-lay-splint-on-elbow-front = Posez l’attelle le long de l’avant du coude.
step-check-elbow-point-free = Vérifiez que rien n’appuie sur la pointe du coude.
step-slide-band-up = Glissez la bande ouverte sur l’avant-bras, vers le coude.
step-seat-band-below-elbow = Placez la bande un peu plus bas que le coude, là où l’avant-bras est le plus épais.
step-pad-on-sore-side = Tournez le coussinet du côté douloureux du bras.
step-check-no-tingling = Fermez le poing. La main ne doit pas avoir de fourmillements.
step-slide-band-over-hand = Glissez la bande ouverte sur la main.
step-seat-band-at-wrist-bone = Placez la bande sur l’os rond du poignet.
step-slide-band-off = Faites glisser la bande pour l’enlever. Ne la tirez pas sur la peau.

## Splints with loops for the fingers

step-fingers-through-loops = Passez chaque doigt dans sa boucle.
step-loops-beside-knuckles = Glissez chaque boucle près de la jointure de base.
step-fingers-out-of-loops = Sortez chaque doigt de sa boucle.
step-check-fist-lifts-wrist = Fermez doucement le poing. Le poignet doit se lever.
# A pull is an elastic cord between a loop and the frame.
step-hook-on-pulls = Accrochez l’élastique de chaque boucle au cadre.
step-unhook-pulls = Décrochez l’élastique de chaque boucle.
step-check-fingers-bend-against-pull = Vérifiez que vous pouvez plier les doigts contre l’élastique.

## Splints for the whole hand

step-keep-wrist-up-fingers-straight = Gardez le poignet relevé et les doigts tendus.
step-hand-on-towel-fingers-straight = Posez la main sur une serviette roulée, doigts tendus.
step-check-middle-joints-bend = Vérifiez que les articulations du milieu des doigts peuvent se plier.
step-lay-forearm-in = Posez l’avant-bras dans l’attelle.
step-thumb-on-its-rest = Posez le pouce à sa place.
step-fingers-on-rest = Posez les doigts côte à côte sur l’attelle.
step-bend-big-knuckles = Pliez les jointures de base. Laissez les doigts tendus.
step-keep-big-knuckles-bent = Gardez les jointures de base pliées et les doigts tendus.
step-fingers-flat-on-splint = Posez chaque doigt à plat contre l’attelle.
step-check-middle-joints-straight = Vérifiez que les articulations du milieu des doigts sont tendues.
step-spread-fingers-in-grooves = Posez chaque doigt tendu dans sa rainure.
step-let-hand-go-loose = Relâchez la main autant que possible.
step-open-hand-slowly = Ouvrez la main lentement. Ne forcez jamais.
step-lay-hand-on-cushion = Posez la paume et l’avant-bras sur le coussin.
step-fingers-in-gaps = Posez chaque doigt dans son espace.
step-dry-palm-and-gaps = Séchez la paume et la peau entre les doigts.
