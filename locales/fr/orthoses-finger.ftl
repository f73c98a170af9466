### Splints of the fingers and the hand: names, straps, places to check, and the steps of putting on and taking off.
### “Le doigt” is the finger that the splint is for; where several fingers are in it, that one is “le doigt traité”.
### The joints of a finger are “jointure de base”, “articulation du milieu” and “bout”. Left and right are never typed.

## Names
## The name stands inside sentences and always begins with “attelle”; the short form is a label in tables.

orthosis-tip-shell-custom-name = attelle du bout du doigt
orthosis-tip-shell-custom-short = Bout du doigt
orthosis-tip-shell-ready-name = attelle du bout du doigt toute faite
orthosis-tip-shell-ready-short = Bout du doigt, toute faite
orthosis-tip-cast-name = attelle en plâtre du bout du doigt
orthosis-tip-cast-short = Plâtre du bout du doigt
orthosis-finger-gutter-middle-joint-name = attelle de l’articulation du milieu du doigt
orthosis-finger-gutter-middle-joint-short = Articulation du milieu
orthosis-finger-gutter-long-name = attelle de tout le doigt
orthosis-finger-gutter-long-short = Tout le doigt
orthosis-ring-stops-bending-back-name = attelle en anneau qui empêche le doigt d’aller en arrière
orthosis-ring-stops-bending-back-short = Anneau, pas en arrière
orthosis-ring-keeps-straight-name = attelle en anneau qui garde un doigt tendu
orthosis-ring-keeps-straight-short = Anneau, doigt tendu
orthosis-serial-finger-cast-name = attelle en plâtre qui tend le doigt
orthosis-serial-finger-cast-short = Plâtre qui tend le doigt
orthosis-spring-finger-extension-name = attelle du doigt à ressort
orthosis-spring-finger-extension-short = Ressort du doigt
orthosis-finger-wedge-stepped-name = attelle du doigt avec une cale
orthosis-finger-wedge-stepped-short = Cale du doigt
orthosis-finger-extension-block-name = attelle du doigt avec un toit
orthosis-finger-extension-block-short = Toit du doigt
orthosis-buddy-straps-name = attelle en sangles pour doigts voisins
orthosis-buddy-straps-short = Sangles, doigts voisins
orthosis-knuckle-block-name = attelle de la jointure pour un doigt
orthosis-knuckle-block-short = Jointure du doigt
orthosis-trigger-ring-name = attelle en anneau de l’articulation du milieu
orthosis-trigger-ring-short = Anneau, articulation du milieu
orthosis-relative-extension-yoke-name = attelle à barre qui lève un doigt
orthosis-relative-extension-yoke-short = Barre, doigt levé
orthosis-relative-flexion-yoke-name = attelle à barre qui abaisse un doigt
orthosis-relative-flexion-yoke-short = Barre, doigt abaissé
orthosis-dorsal-block-long-name = attelle longue du dos de la main
orthosis-dorsal-block-long-short = Dos de la main, longue
orthosis-dorsal-block-short-name = attelle courte du dos de la main
orthosis-dorsal-block-short-short = Dos de la main, courte
orthosis-ulnar-gutter-name = attelle longue de l’annulaire et du petit doigt
orthosis-ulnar-gutter-short = Annulaire, petit doigt et poignet
orthosis-knuckle-shell-ring-little-name = attelle des jointures de l’annulaire et du petit doigt
orthosis-knuckle-shell-ring-little-short = Jointures, annulaire et petit doigt
orthosis-metacarpal-sleeve-name = attelle en manchon pour les os de la main
orthosis-metacarpal-sleeve-short = Manchon, os de la main
orthosis-phalanx-gutter-pair-name = attelle pour une paire de doigts
orthosis-phalanx-gutter-pair-short = Paire de doigts
orthosis-night-finger-extension-name = attelle de nuit du doigt
orthosis-night-finger-extension-short = Doigt, la nuit
orthosis-drift-strap-name = attelle à sangles souples pour les jointures
orthosis-drift-strap-short = Sangles souples, jointures
orthosis-knuckle-extension-block-name = attelle des jointures avec une barre
orthosis-knuckle-extension-block-short = Barre des jointures

## Straps
## Each name is put into “Fermez …” and “Ouvrez …” and carries its article.

strap-finger-tape = la sangle adhésive
strap-finger-base = la sangle de la base du doigt
strap-finger-past-middle-joint = la sangle juste après l’articulation du milieu, vers le bout
strap-finger-end = la sangle près du bout du doigt
# Buddy straps hold a finger to its neighbour.
strap-finger-pair-base = la sangle de la base des deux doigts
strap-finger-pair-end = la sangle après les articulations du milieu des deux doigts
# In a shell that holds a finger and its neighbour.
strap-finger-pair = la sangle autour des deux doigts
# Across all four fingers, under a roof on the back of the hand.
strap-finger-row = la sangle en travers des doigts
strap-finger-loops = les boucles des doigts

## Places to look at in the skin check

spot-finger-end-joint-back = dos de l’articulation près du bout du doigt
spot-finger-nail-skin = peau autour de l’ongle
spot-finger-pad-sides = côtés du coussinet du bout du doigt
spot-finger-sides = les deux côtés du doigt
spot-finger-sides-near-base = les deux côtés du doigt, près de sa base
spot-finger-middle-joint-back = dos de l’articulation du milieu
spot-finger-middle-joint-backs = dos des articulations du milieu
spot-ring-little-middle-joint-backs = dos des articulations du milieu
spot-finger-joint-creases = plis du doigt, côté paume
spot-finger-web = peau là où les doigts rejoignent la paume
spot-finger-between = peau entre les doigts
spot-finger-under-ring = peau sous l’anneau
spot-finger-cast-edges = peau le long des deux bords du plâtre
spot-finger-tip-cast-edges = peau le long des deux bords du plâtre
spot-finger-base-front = doigt côté paume, près de sa base
spot-finger-first-bone-back = dos du doigt, à côté de la jointure de base
spot-finger-knuckle-backs = dos des jointures de base
spot-ring-little-knuckle-backs = dos des jointures de base
spot-finger-hand-edge = bord de la main, côté petit doigt
spot-finger-wrist-back-edge = dos du poignet, là où l’attelle finit
spot-finger-over-break = peau sur l’os cassé
spot-finger-wound-line = plaie ou cicatrice

## Fingertip splints
## The tip must not bend while it heals: it lies on the table from before the strap opens until it is closed again.

step-finger-tip-on-table = Posez le doigt à plat sur une table, le bout tendu.
step-finger-dry-on-table = Séchez le doigt avec une serviette. Gardez le bout à plat.
step-finger-slide-on-from-tip = Enfilez l’attelle par le bout. Gardez le doigt tendu.
step-finger-lift-when-closed = Levez le doigt seulement quand l’attelle est fermée.
step-finger-check-tip-straight = Vérifiez que le bout est tendu et bien tenu dans l’attelle.
step-finger-lay-out-towel = Étalez une serviette sur la table avant d’ouvrir quoi que ce soit.
step-finger-slide-off-forwards = Faites glisser l’attelle tout droit par le bout pour l’enlever. Ne la penchez pas.
step-finger-tip-if-healing = Si le bout est en train de guérir, gardez-le à plat sur la table.
step-finger-look-on-table = Regardez la peau pendant que le doigt reste sur la table.

## Splints along a finger

step-finger-straight-on-table = Posez le doigt sur une table, tendu autant qu’il le peut sans forcer.
step-finger-push-to-base = Poussez l’attelle jusqu’à la base du doigt.
step-finger-slide-on = Enfilez doucement l’attelle par le bout.
step-finger-straps-off-joints = Vérifiez qu’aucune sangle n’est sur une articulation.
step-finger-check-tip-bends = Vérifiez que le bout du doigt peut se plier.
step-finger-check-middle-joint-bends = Vérifiez que l’articulation du milieu du doigt peut se plier.
step-finger-check-knuckle-bends = Vérifiez que la jointure de base du doigt peut se plier.
step-finger-middle-if-healing = Si l’articulation du milieu est en train de guérir, gardez-la à plat sur la table.
step-finger-straight-if-healing = Si le doigt est en train de guérir, gardez-le tendu sur la table.

## A roof that stops a finger from straightening

step-finger-bend-slightly = Pliez un peu l’articulation du milieu du doigt.
step-finger-roof-on-finger = Posez l’attelle le long du dos du doigt.
step-finger-check-stops-short = Vérifiez que le toit empêche le doigt de trop se tendre.
step-finger-bent-if-healing = Si l’articulation du milieu est en train de guérir, gardez-la un peu pliée.

## Springs and wedges
## The pull comes last when it goes on and first when it comes off.

step-finger-joint-at-spring = Placez l’articulation du milieu en face du pli du ressort.
step-finger-spring-last = Laissez le ressort tirer lentement.
step-finger-hold-spring = Tenez le ressort pour qu’il ne revienne pas d’un coup.
step-finger-wedge-back = Glissez la cale en arrière jusqu’au fond.
step-finger-wedge-in = Glissez la cale jusqu’au repère fixé par votre centre de soins.
step-finger-check-mild-pull = Vérifiez que l’attelle tire doucement et ne fait pas mal.

## Rings

step-finger-check-ring = Vérifiez que l’anneau est propre, sec et pas tordu.
step-finger-keep-straight = Gardez le doigt tendu.
step-finger-slide-ring-on = Enfilez l’anneau par le bout.
step-finger-ring-cross-front = Tournez l’anneau jusqu’à ce que sa croix soit sous l’articulation du milieu, côté paume.
step-finger-ring-cross-back = Tournez l’anneau jusqu’à ce que sa croix soit sur le dos de l’articulation du milieu.
step-finger-ring-over-joint = Poussez l’anneau jusqu’à ce qu’il couvre l’articulation du milieu.
step-finger-check-full-bend = Vérifiez que le doigt peut se plier jusqu’au bout.
step-finger-check-not-back = Vérifiez que l’articulation du milieu ne peut pas partir en arrière.
step-finger-check-middle-joint-straight = Vérifiez que l’articulation du milieu reste tendue.
step-finger-slide-ring-off = Faites glisser l’anneau par le bout pour l’enlever.
step-finger-ring-stuck = Si l’anneau coince, mettez un peu d’eau savonneuse.

## Casts
## Only the clinic puts a cast on and takes it off.

step-finger-cast-by-clinic = Seul votre centre de soins met le plâtre.
step-finger-cast-cover = Fermez bien un sac sur le plâtre avant de vous laver.
step-finger-cast-look-at-edges = Regardez la peau le long des deux bords du plâtre.
step-finger-cast-off-by-clinic = Seul votre centre de soins enlève le plâtre.
step-finger-cast-no-cutting = Ne coupez pas le plâtre, ne tirez pas dessus, ne glissez rien dessous.
step-finger-cast-slips = Si le plâtre glisse ou se casse, gardez le doigt tendu et appelez-nous.

## Buddy straps

step-finger-dry-between = Séchez bien la peau, aussi entre les doigts.
step-finger-beside-neighbour = Posez le doigt à côté du voisin choisi par votre centre de soins.
step-finger-check-both-bend = Vérifiez que les deux doigts se plient ensemble.
step-finger-look-between = Regardez la peau de tous les côtés, aussi entre les doigts.

## Knuckle splints for one finger

step-finger-push-into-ring = Poussez le doigt dans l’anneau.
step-finger-palm-piece-flat = Posez la partie pour la paume à plat dans la paume.

## Bar splints
## One finger lies higher or lower than its neighbours. In the first kind wrist and fingers must not drop.

step-finger-towel-roll = Mettez une serviette roulée sur la table.
step-finger-wrist-back-on-towel = Posez la main sur la serviette, le poignet plié en arrière.
step-finger-fingers-straight = Gardez les doigts tendus.
step-finger-yoke-on-top = Posez le doigt traité au-dessus de la barre.
step-finger-yoke-others-under = Glissez les doigts d’à côté sous la barre.
step-finger-yoke-below = Glissez le doigt traité sous la barre.
step-finger-yoke-others-over = Posez les doigts d’à côté au-dessus de la barre.
step-finger-yoke-to-base = Poussez la barre jusqu’à la base des doigts.
step-finger-check-higher = Vérifiez que le doigt traité est plus haut que ses voisins.
step-finger-check-lower = Vérifiez que le doigt traité est plus bas que ses voisins.
step-finger-check-joints-beyond-bend = Vérifiez que les articulations du milieu et le bout des doigts peuvent se plier.
step-finger-slide-off-fingers = Faites glisser l’attelle en avant, hors des doigts.
step-finger-tendon-if-healing = Si un tendon est en train de guérir, ne laissez retomber ni le poignet ni les doigts.

## Splints on the back of the hand
## For sewn bending tendons: wrist and fingers stay bent, and nobody straightens them.

step-finger-only-when-allowed = Suivez ces étapes seulement si votre centre de soins vous l’a permis.
step-finger-curl-over-towel = Posez la main sur la serviette, poignet plié et doigts repliés.
step-finger-roof-over-hand = Descendez l’attelle sur le dos de la main.
step-finger-check-under-roof = Vérifiez que le bout de chaque doigt, sauf le pouce, est sous le toit.
step-finger-stay-curled = Laissez les doigts repliés. Ne les tendez pas.
step-finger-look-while-curled = Regardez la peau pendant que les doigts restent repliés.

## Splints for broken bones

step-finger-pad-between = Placez la bande souple entre les deux doigts.
step-finger-little-side-in = Posez le bord de la main, côté petit doigt, dans l’attelle.
step-finger-knuckles-in-bend = Vérifiez que les jointures de base sont dans le pli de l’attelle.
step-finger-knuckles-bent-fingers-straight = Pliez les jointures de base. Gardez les doigts tendus.
step-finger-check-not-crossed = Vérifiez qu’aucun doigt ne croise son voisin.
step-finger-knuckles-if-healing = Si un os est en train de guérir, gardez les jointures de base pliées.
step-finger-sleeve-over-hand = Glissez le manchon sur la main jusqu’à l’os douloureux.
step-finger-sleeve-behind-knuckles = Gardez le bord avant du manchon derrière les jointures de base.
step-finger-slide-off-hand = Faites glisser l’attelle en avant, hors de la main.

## Night splints, finger loops, knuckle bars

step-finger-rest-easy = Posez le doigt dedans, tendu seulement autant que c’est facile.
step-finger-check-no-pull = Vérifiez que rien ne tire sur la peau.
step-finger-loops-on = Glissez chaque doigt dans sa boucle.
step-finger-easy-pull = Tirez les boucles seulement autant que c’est facile.
step-finger-check-in-line = Vérifiez que les doigts pointent tout droit.
step-finger-bend-knuckles-little = Pliez un peu les jointures de base.
step-finger-under-bar = Glissez l’annulaire et le petit doigt sous la barre.
step-finger-check-straighten = Vérifiez que les articulations du milieu peuvent se tendre.

## Putting it on with one hand
## There is no other hand: table, towel, book, thigh and the thumb of the same hand do the work.

step-finger-against-book = Posez l’attelle ouverte sur une table, contre un gros livre.
step-finger-slide-along-table = Glissez le doigt à plat le long de la table, dans l’attelle.
step-finger-slide-in-easy = Glissez le doigt le long de la table, dans l’attelle.
step-finger-push-under-roof = Glissez sous le toit chaque doigt qui est dans l’attelle.
step-finger-push-hand-in = Poussez la main dans le manchon.
step-finger-own-thumb = Servez-vous du pouce de la même main pour les sangles.
step-finger-upright-in-towel = Enfoncez l’attelle debout dans une serviette roulée.
step-finger-thumb-turns-ring = Servez-vous du pouce de la même main pour l’anneau.
step-finger-wrist-stays-back = Gardez le poignet plié en arrière.
step-finger-straps-as-loops = Au début, fermez chaque sangle en une boucle lâche.
step-finger-through-loops = Poussez les deux doigts dans les boucles.
step-finger-trap-strap-end = Coincez le bout de chaque sangle sous la cuisse et tirez doucement.
step-finger-cast-cover-with-knees = Tenez le sac entre vos genoux et poussez la main dedans.
step-finger-trained-helper = Laissez faire la personne formée par votre centre de soins. Ne le faites jamais sans aide.
