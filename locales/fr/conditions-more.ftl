### Conditions of tendons after repair, of nerves, of the elbow, of sore joints and of burns.
### The name, what is wrong, and what the splint does. Words for a reader of about twelve; nothing is said to be cured.

## Repaired tendons

condition-flexor-zone-two-repair-name = Tendon recousu qui plie le doigt
condition-flexor-zone-two-repair-what = Les tendons qui plient le doigt ont été coupés et recousus. Serrer, ou tirer le doigt pour le tendre, peut déchirer les points.
condition-flexor-zone-two-repair-aim = L’attelle protège les points pendant la guérison. Elle empêche les doigts de trop se tendre.
condition-extensor-zone-three-repair-name = Tendon recousu sur l’articulation du milieu du doigt
condition-extensor-zone-three-repair-what = Le tendon qui tend l’articulation du milieu a été coupé et recousu. Plier une seule fois peut écarter les points.
condition-extensor-zone-three-repair-aim = L’attelle garde l’articulation du milieu tendue pendant que le tendon guérit.
condition-extensor-zone-five-six-repair-name = Tendon recousu sur le dos de la main
condition-extensor-zone-five-six-repair-what = Le tendon qui lève le doigt a été coupé et recousu. Fermer tout le poing peut écarter les points.
condition-extensor-zone-five-six-repair-aim = L’attelle garde la jointure de base du doigt relevée. Cela évite de tirer sur les points.

## Nerves

condition-carpal-tunnel-name = Nerf comprimé au poignet (canal carpien)
condition-carpal-tunnel-what = Un nerf passe dans un tunnel étroit au poignet. Un poignet plié l’écrase, surtout pendant le sommeil.
condition-carpal-tunnel-aim = L’attelle garde le poignet dans l’axe, sans le plier. Le nerf a ainsi plus de place.
condition-carpal-tunnel-release-name = Après l’opération d’un nerf serré au poignet
condition-carpal-tunnel-release-what = Le toit du tunnel au poignet a été ouvert. La plaie doit guérir, et les doigts doivent bouger.
condition-carpal-tunnel-release-aim = L’attelle repose le poignet les premiers jours. Les doigts restent libres de bouger.
condition-cubital-tunnel-name = Nerf comprimé au coude
condition-cubital-tunnel-what = Un nerf passe autour du côté intérieur du coude. Plier beaucoup le coude ou s’appuyer dessus fatigue ce nerf.
condition-cubital-tunnel-aim = L’attelle empêche le coude de se plier beaucoup la nuit. Le jour, ne vous appuyez pas sur le coude.
condition-radial-nerve-palsy-name = Poignet qui tombe
condition-radial-nerve-palsy-what = Le nerf qui lève le poignet et les doigts ne marche pas en ce moment. La main pend.
condition-radial-nerve-palsy-aim = L’attelle aide le poignet à rester relevé. Les doigts peuvent alors mieux serrer.
condition-median-nerve-palsy-low-name = Pouce qui ne peut pas s’écarter de la paume
condition-median-nerve-palsy-low-what = Le nerf du muscle rond sous le pouce ne marche pas en ce moment. Des parties de la main peuvent être engourdies.
condition-median-nerve-palsy-low-aim = L’attelle garde ouvert l’espace à côté du pouce. Le pouce reste là où vous pouvez vous en servir.
condition-ulnar-nerve-palsy-name = Annulaire et petit doigt en griffe
condition-ulnar-nerve-palsy-what = Le nerf de petits muscles de la main ne marche pas en ce moment. L’annulaire et le petit doigt se replient comme une griffe.
condition-ulnar-nerve-palsy-aim = L’attelle empêche les jointures de base de partir en arrière. Vous pouvez alors mieux tendre ces doigts.

## The elbow

condition-lateral-elbow-name = Tendons douloureux du côté extérieur du coude
condition-lateral-elbow-what = Les muscles qui lèvent le poignet commencent au coude. Leurs tendons y font mal, surtout quand vous serrez et soulevez.
condition-lateral-elbow-aim = L’attelle fait moins tirer les tendons douloureux pendant que vous travaillez.

## The hand

condition-dupuytren-release-name = Après l’opération d’un doigt plié (Dupuytren)
condition-dupuytren-release-what = Des brides serrées de la paume ont été coupées pour que le doigt s’ouvre. La cicatrice peut le replier.
condition-dupuytren-release-aim = L’attelle tient le doigt la nuit là où il est à l’aise. Elle aide à garder le doigt ouvert.
condition-rheumatoid-knuckle-drift-name = Doigts qui partent de côté (polyarthrite rhumatoïde)
condition-rheumatoid-knuckle-drift-what = Les ligaments à côté des jointures de base sont lâches. Les doigts penchent du côté du petit doigt.
condition-rheumatoid-knuckle-drift-aim = L’attelle aligne les doigts pendant que vous vous servez de la main. Elle n’empêche pas les doigts de dévier avec le temps.
condition-rheumatoid-wrist-name = Articulation du poignet douloureuse (polyarthrite rhumatoïde)
condition-rheumatoid-wrist-what = L’articulation du poignet est douloureuse et gonflée à cause de la polyarthrite rhumatoïde.
condition-rheumatoid-wrist-aim = L’attelle tient bien le poignet. Cela peut calmer la douleur au repos et dans les tâches.
condition-stroke-tight-hand-name = Main serrée après un AVC
condition-stroke-tight-hand-what = Depuis l’AVC, les muscles qui ferment la main tirent trop. La main est difficile à ouvrir.
condition-stroke-tight-hand-aim = L’attelle repose la main à moitié ouverte. Cela peut aider au confort et à garder propre la peau de la paume.

## Burns

condition-dorsal-hand-burn-name = Brûlure sur le dos de la main
condition-dorsal-hand-burn-what = La peau du dos de la main est brûlée. En guérissant, la peau raccourcit et peut déformer la main.
condition-dorsal-hand-burn-aim = L’attelle tient les jointures de base pliées et les doigts tendus. Dans cette position, la nouvelle peau reste longue.
condition-palmar-hand-burn-name = Brûlure dans la paume de la main
condition-palmar-hand-burn-what = La peau de la paume est brûlée. En guérissant, la peau raccourcit et peut refermer la main.
condition-palmar-hand-burn-aim = L’attelle tient la paume et les doigts ouverts. Dans cette position, la nouvelle peau reste longue.

## Movements to leave out
## The joints of a finger are the big knuckle, the middle joint and the tip.

avoid-wrist-extension = Ne pliez pas le poignet en arrière.
avoid-wrist-flexion = Ne pliez pas le poignet en avant.
avoid-fingers-mcp-flexion = Ne pliez pas les jointures de base.
avoid-fingers-mcp-ulnar-deviation = Ne poussez pas les doigts du côté du petit doigt.
avoid-fingers-pip-flexion = Ne pliez pas les articulations du milieu des doigts.
