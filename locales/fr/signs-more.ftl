### More signs to watch for. Each is a clause or a short noun phrase without a full stop.
### Printed only where a condition names the sign.

## Emergencies

sign-finger-snap = Vous sentez un claquement, ou soudain vous ne pouvez plus plier ou tendre un doigt ou le pouce
sign-tooth-cut-over-knuckle = Une coupure faite par une dent sur une jointure devient rouge, gonflée ou douloureuse
sign-finger-white-when-straight = Un doigt devient blanc quand il est tendu
sign-graft-pale-or-tight = La nouvelle peau de la main devient pâle, ou semble tendue en profondeur

## Today

sign-tip-droops-again = Le bout du doigt retombe, ou il s’est plié sans soutien
sign-middle-joint-bends-alone = L’articulation du milieu du doigt retombe, ou elle s’est pliée sans soutien
sign-finger-cannot-straighten = Un doigt tombe et vous ne pouvez pas le tendre vous-même
sign-thumb-tip-will-not-lift = Vous ne pouvez plus lever le bout du pouce
sign-finger-turns-over-neighbour = Un doigt tourne ou passe par-dessus celui d’à côté
sign-finger-locks = Un doigt ou le pouce se bloque et ne se tend plus
sign-pin-loose = Une broche est lâche, tordue ou cassée, ou du liquide sort de son trou
sign-joint-slips = Une articulation sort de sa place ou semble lâche
sign-wrist-clunks = Le poignet claque, ou fait mal au fond du creux à côté du pouce
sign-night-numbness-grows = Les doigts s’engourdissent plus de nuits qu’avant, ou commencent à rester engourdis toute la journée
sign-thumb-muscle-thinner = Le muscle rond sous le pouce devient plus mince
sign-hand-muscle-thinner = La main devient plus mince entre le pouce et l’index
sign-little-finger-numb = Le petit doigt reste plus engourdi qu’avant
sign-elbow-band-tingles = La main ou l’avant-bras a des fourmillements quand la bande ou l’attelle est mise
sign-finger-stays-bent-more = Un doigt reste plus plié qu’avant
sign-tight-hand-tighter = La main devient plus serrée ou plus dure à ouvrir

## At the next visit

sign-clicks-under-load = Le poignet ou la main claque et fait mal quand vous vous appuyez ou soulevez
