### Splints: names, straps, places to check, and the steps of putting on and taking off.
### “Main qui porte l'attelle” and “autre main” are used; left and right are never typed.

## Names
## The name stands inside sentences and always begins with “attelle”; the short form is a label in tables.

orthosis-forearm-thumb-spica-name = attelle longue du pouce
orthosis-forearm-thumb-spica-short = Avant-bras et pouce
orthosis-hand-thumb-spica-name = attelle courte du pouce
orthosis-hand-thumb-spica-short = Main et pouce
orthosis-short-cmc-name = attelle de la base du pouce
orthosis-short-cmc-short = Base du pouce
orthosis-short-cmc-mcp-block-name = attelle de la base du pouce avec arrêt à la jointure
orthosis-short-cmc-mcp-block-short = Base et jointure du pouce
orthosis-soft-wrist-thumb-wrap-name = attelle souple du poignet et du pouce
orthosis-soft-wrist-thumb-wrap-short = Poignet et pouce, souple
orthosis-soft-thumb-wrap-name = attelle souple du pouce
orthosis-soft-thumb-wrap-short = Pouce, souple
orthosis-wrist-only-name = attelle du poignet
orthosis-wrist-only-short = Poignet

## Straps
## Each name is put into “Fermez …” and “Ouvrez …” and carries its article.

strap-wrist = la sangle du poignet
strap-forearm = la sangle de l’avant-bras
strap-palm = la sangle de la paume
strap-thumb = la sangle du pouce
# A short splint ends at the wrist; this strap runs along that end.
strap-wrist-edge = la sangle à côté du poignet

## Places to look at in the skin check

spot-wrist-bone-thumb-side = os du poignet, côté pouce
spot-wrist-bone-little-finger-side = os du poignet, côté petit doigt
spot-thumb-web = peau entre le pouce et l’index
spot-thumb-knuckle = dos et côtés de la jointure du pouce
spot-thumb-base = os à la base du pouce
spot-palm-crease = paume, là où l’attelle finit
spot-forearm-edge = avant-bras, là où l’attelle finit

## Putting it on
## One action a step. The other hand does the work.

step-wash-dry-hands = Lavez-vous les mains et séchez-les bien.
step-check-lining = Vérifiez que l’attelle est propre, sèche et lisse à l’intérieur.
step-open-straps = Ouvrez toutes les sangles.
step-rest-arm-on-table = Posez l’avant-bras sur une table.
step-slide-thumb-in = Glissez doucement le pouce dedans.
step-lay-hand-in = Posez la paume dans l’attelle, le pouce dehors.
step-seat-at-wrist = Appuyez l’attelle en place pour que son pli soit au poignet.
step-seat-at-thumb-base = Appuyez l’attelle en place autour de la base du pouce.
step-smooth-the-wrap = Lissez l’attelle souple pour qu’elle n’ait pas de plis.
# $strap is a strap's name with its article, such as “la sangle du poignet”.
step-close-strap = Fermez { $strap }.
step-check-strap-room = Vérifiez qu’un bout de doigt de l’autre main passe sous chaque sangle.
step-check-wrist-bends = Vérifiez que le poignet peut se plier.
step-check-thumb-knuckle-bends = Vérifiez que la jointure et le bout du pouce peuvent se plier.
step-check-thumb-tip-bends = Vérifiez que le bout du pouce peut se plier.
step-check-fist = Vérifiez que vous pouvez fermer le poing et bouger le pouce.
step-look-at-fingers = Regardez vos doigts. Ils doivent rester chauds et de leur couleur habituelle.

## Taking it off

# $strap is a strap's name with its article, such as “la sangle du poignet”.
step-undo-strap = Ouvrez { $strap }.
step-lift-off = Soulevez l’attelle pour l’enlever. Ne la tirez pas sur la peau.
step-lift-off-thumb-side = Enlevez l’attelle du côté du pouce. Ne la tirez pas sur la peau.
step-lift-off-elbow-front = Enlevez l’attelle de l’avant du coude. Ne la tirez pas sur la peau.
step-lift-out-of-thumb-web = Soulevez l’attelle pour la sortir d’entre le pouce et l’index.
step-lift-off-little-side = Enlevez l’attelle du côté du petit doigt. Ne la tirez pas sur la peau.
step-slide-off-thumb = Faites glisser l’attelle hors du pouce. Ne la tournez pas.
step-look-at-skin = Regardez la peau de tous les côtés.
