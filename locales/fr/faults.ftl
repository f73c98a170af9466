### A pair of pictures shows a splint as it should sit and as it should not: what is wrong, and what to do.

fault-slid-past-palm-crease = L’attelle a glissé vers les doigts. Ils ne peuvent pas se plier. Repoussez-la jusqu’à ce que son bord soit sous le pli de la paume.
fault-palm-strap-on-knuckles = La sangle est sur les jointures de base. Ramenez-la sur la main, pour que ces jointures puissent se plier.
fault-slid-over-knuckles = L’attelle a glissé vers les doigts et appuie sur les jointures de base. Repoussez-la jusqu’à ce que ces jointures soient libres.
fault-slid-over-thumb-tip-joint = L’attelle a glissé vers le bout du pouce. Repoussez-la jusqu’à ce que le bout du pouce puisse se plier.
fault-thumb-out = Le pouce est hors de son tube. Enlevez l’attelle, et mettez d’abord le pouce dedans.
fault-slid-off-thumb-base = L’attelle a glissé hors de la base du pouce. Repoussez-la vers le poignet jusqu’à ce qu’elle tienne la base du pouce.
fault-fingertips-over-edge = L’attelle a glissé vers le coude. Les doigts dépassent du bout. Poussez-la en avant jusqu’à ce que le bout des doigts repose dessus.
fault-finger-strap-on-middle-joints = La sangle est sur les articulations du milieu des doigts. Ramenez-la à côté des jointures de base.
fault-finger-piece-slid = L’attelle a glissé vers le bout du doigt. Repoussez-la vers la base du doigt, jusqu’à ce que le bout puisse se plier.
fault-strap-on-middle-joint = La sangle est sur l’articulation du milieu et appuie. Écartez-la de l’articulation, vers le bout du doigt.
fault-tip-droops = L’attelle a glissé de la dernière articulation, et le bout du doigt retombe. Posez le doigt à plat sur une table. Repoussez l’attelle sur l’articulation. Dites-nous que le bout est retombé.
