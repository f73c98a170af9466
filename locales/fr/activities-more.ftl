### More activities: what people do with their hands, and easier ways to do it.
### The name stands as a short order in a table, in the infinitive, such as “Laver la vaisselle”.
### Every other message is one or two short sentences of advice beside that name.

## More ways for jobs named elsewhere

activity-text-with-thumbs-open-elbow = Posez le bras. Gardez le coude plus ouvert qu’un angle droit.
activity-hold-tablet-open-elbow = Éloignez-le. Gardez le coude plus ouvert qu’un angle droit.
activity-drive-car-open-elbow = Réglez le siège pour que le coude soit plus ouvert qu’un angle droit.
activity-brush-teeth-lean-forward = Penchez-vous sur le lavabo. Amenez la tête vers la brosse.

## Shower and wash your hair

activity-wash-hair-shower-name = Se doucher et se laver les cheveux
activity-wash-hair-shower-arm-bag = Enfilez un sac étanche sur la main et l’attelle. Fermez-le bien en haut.
activity-wash-hair-shower-pump-bottle = Prenez un flacon à pompe et une éponge à long manche.
activity-wash-hair-shower-bend-head = Baissez la tête. Gardez le coude plus ouvert qu’un angle droit.
activity-wash-hair-shower-other-hand = Lavez-vous avec l’autre main, ou demandez à quelqu’un de vous laver les cheveux.

## Pull up trousers or socks

activity-pull-up-clothes-name = Enfiler un pantalon ou des chaussettes
activity-pull-up-clothes-loose-waist = Portez des vêtements amples, à taille souple.
activity-pull-up-clothes-loops = Cousez des boucles à l’intérieur. Passez-y l’avant-bras et tirez.
activity-pull-up-clothes-flat-palms = Asseyez-vous. Poussez le tissu vers le haut, paumes à plat.
activity-pull-up-clothes-other-hand = Tirez avec l’autre main, ou demandez de l’aide à quelqu’un.

## Fasten a strap behind your back

activity-fasten-back-strap-name = Attacher un vêtement dans le dos
activity-fasten-back-strap-pull-over = Portez un modèle souple qui s’enfile par la tête.
activity-fasten-back-strap-turn-round = Fermez devant. Puis faites tourner vers l’arrière.
activity-fasten-back-strap-front-closing = Choisissez un modèle qui ferme devant, à larges crochets.
activity-fasten-back-strap-helper = Demandez à quelqu’un de fermer.

## Wipe after the toilet

activity-toilet-wipe-name = S’essuyer aux toilettes
activity-toilet-wipe-cover-splint = Enfilez un sac fin sur l’attelle. Jetez-le après.
activity-toilet-wipe-long-wiper = Prenez une pince à long manche pour vous essuyer, ou un siège qui lave.
activity-toilet-wipe-other-hand = Essuyez-vous avec l’autre main.
activity-toilet-wipe-helper = Demandez de l’aide à quelqu’un en qui vous avez confiance.

## Cut your nails

activity-cut-nails-name = Se couper les ongles
activity-cut-nails-fixed-clipper = Prenez un coupe-ongles fixé à une planche. Appuyez avec la paume.
activity-cut-nails-file = Limez vos ongles avec une lime large. Tenez-la sans serrer.
activity-cut-nails-few-at-once = Coupez quelques ongles chaque jour.
activity-cut-nails-helper = Demandez à quelqu’un de les couper.

## Tie shoe laces

activity-tie-laces-name = Nouer ses lacets
activity-tie-laces-slip-on = Portez des chaussures sans lacets. Prenez un long chausse-pied.
activity-tie-laces-stretch-laces = Prenez des lacets élastiques qui restent noués.
activity-tie-laces-helper = Demandez à quelqu’un de les nouer.

## Open a ring-pull can or a bottle cap

activity-ring-pull-cap-name = Ouvrir une boîte à anneau ou un bouchon
activity-ring-pull-cap-lever-opener = Prenez un levier qui soulève l’anneau pour vous.
activity-ring-pull-cap-cap-grip = Posez un carré de caoutchouc sur le bouchon. Tournez-le avec la paume à plat.
activity-ring-pull-cap-easy-packs = Achetez des emballages qui s’ouvrent sans force.
activity-ring-pull-cap-helper = Demandez à quelqu’un de l’ouvrir.

## Chop vegetables

activity-chop-vegetables-name = Couper des légumes
activity-chop-vegetables-upright-knife = Prenez un couteau qui se balance ou à manche debout.
activity-chop-vegetables-cook-first = Cuisez-les d’abord. Ce qui est mou demande moins de force.
activity-chop-vegetables-ready-cut = Achetez des légumes déjà coupés.
activity-chop-vegetables-helper = Demandez à quelqu’un de couper.

## Wash the dishes

activity-wash-dishes-name = Laver la vaisselle
activity-wash-dishes-long-brush = Prenez de l’eau fraîche et une brosse à long manche.
activity-wash-dishes-soak-first = Laissez d’abord tremper la vaisselle. Puis essuyez-la légèrement.
activity-wash-dishes-dishwasher = Prenez un lave-vaisselle. Mettez-y des choses légères, une par une.
activity-wash-dishes-helper = Demandez à quelqu’un de la laver.

## Knead dough or stir a thick mix

activity-knead-dough-name = Pétrir ou remuer une pâte épaisse
activity-knead-dough-upright-spoon = Posez le bol sur un linge mouillé. Remuez avec une cuillère debout, à partir de l’épaule.
activity-knead-dough-thin-mix = Faites une pâte plus liquide, et moins de pâte.
activity-knead-dough-mixer = Laissez une machine mélanger.
activity-knead-dough-helper = Demandez à quelqu’un de pétrir.

## Carry plates or a tray

activity-carry-plates-name = Porter des assiettes ou un plateau
activity-carry-plates-flat-palms = Glissez les deux paumes à plat dessous. Tenez la charge près du corps.
activity-carry-plates-trolley = Poussez-les sur une desserte à roulettes.
activity-carry-plates-one-by-one = Portez une assiette à la fois. Laissez d’abord refroidir celles qui sont chaudes.
activity-carry-plates-helper = Demandez à quelqu’un de les porter.

## Eat with knife and fork

activity-eat-with-cutlery-name = Manger avec couteau et fourchette
activity-eat-with-cutlery-fat-handles = Prenez des couverts à manches longs et gros.
activity-eat-with-cutlery-rocking-knife = Coupez avec un couteau qui se balance.
activity-eat-with-cutlery-soft-food = Choisissez des aliments mous, qui n’ont pas besoin de couteau.
activity-eat-with-cutlery-other-hand = Mangez avec l’autre main. Demandez à quelqu’un de couper vos aliments.

## Turn a door knob or a tap

activity-turn-door-knob-name = Tourner un bouton de porte ou un robinet
activity-turn-door-knob-lever-handle = Posez un levier dessus. Appuyez sur le levier avec l’avant-bras.
activity-turn-door-knob-leave-open = Laissez les portes intérieures un peu ouvertes. Poussez-les avec la hanche.
activity-turn-door-knob-other-hand = Tournez avec l’autre main.
activity-turn-door-knob-helper = Demandez à quelqu’un de tourner pour vous.

## Vacuum the floor

activity-vacuum-name = Passer l’aspirateur
activity-vacuum-walk-along = Gardez le coude contre le corps. Marchez avec l’aspirateur.
activity-vacuum-light-cleaner = Prenez un aspirateur léger, ou un qui roule seul.
activity-vacuum-one-room = Faites une pièce. Puis reposez la main.
activity-vacuum-helper = Demandez à quelqu’un de le faire.

## Hang up the washing

activity-hang-washing-name = Étendre le linge
activity-hang-washing-hangers = Mettez le linge sur des cintres ou posez-le sur un séchoir.
activity-hang-washing-soft-pegs = Prenez des pinces à linge qui s’ouvrent facilement.
activity-hang-washing-small-loads = Lavez de petites quantités. Essorez-les bien en machine.
activity-hang-washing-helper = Demandez à quelqu’un de l’étendre.

## Scrub the bath

activity-scrub-bath-name = Frotter la baignoire
activity-scrub-bath-long-handle = Prenez une éponge à manche long et gros.
activity-scrub-bath-let-soak = Vaporisez, attendez et rincez. Ne frottez pas.
activity-scrub-bath-short-bouts = Nettoyez un petit bout chaque jour.
activity-scrub-bath-helper = Demandez à quelqu’un de la nettoyer.

## Push up from a chair

activity-rise-from-chair-name = Se lever d’une chaise en poussant sur les mains
activity-rise-from-chair-high-seat = Prenez un siège plus haut et ferme. Les jambes vous lèvent alors plus facilement.
activity-rise-from-chair-legs-first = Glissez vers l’avant et penchez-vous en avant. Poussez avec les jambes.
activity-rise-from-chair-forearm-rest = Appuyez l’avant-bras sur l’accoudoir, pas la main.
activity-rise-from-chair-other-hand = Poussez avec l’autre main, ou demandez à quelqu’un de vous aider.

## Iron clothes

activity-iron-clothes-name = Repasser
activity-iron-clothes-light-iron = Prenez un petit fer léger.
activity-iron-clothes-hang-smooth = Étendez le linge humide et lisse. Souvent, il n’a pas besoin du fer.
activity-iron-clothes-few-pieces = Repassez quelques pièces. Puis reposez la main.
activity-iron-clothes-other-hand = Repassez avec l’autre main, ou demandez à quelqu’un de repasser.

## Make the bed

activity-make-bed-name = Faire le lit
activity-make-bed-light-covers = Prenez une couverture légère et des draps non serrés.
activity-make-bed-flat-hands = Poussez les draps en place avec les mains à plat et les avant-bras.
activity-make-bed-few-corners = Ne soulevez pas le matelas. Laissez les coins libres.
activity-make-bed-helper = Demandez à quelqu’un de le faire.

## Lean on a walking stick or frame

activity-lean-on-stick-name = S’appuyer sur une canne ou un déambulateur
activity-lean-on-stick-wide-grip = Demandez-nous de vérifier la hauteur. Une poignée large et souple aide.
activity-lean-on-stick-forearm-rest = Demandez-nous un modèle où l’avant-bras se pose. Ne marchez pas sans appui.
activity-lean-on-stick-other-hand = Demandez-nous si l’autre main peut la tenir. Ne marchez pas sans appui.

## Hold a dog lead

activity-hold-dog-lead-name = Tenir la laisse d’un chien
activity-hold-dog-lead-waist-lead = Prenez une laisse qui fait le tour de la taille.
activity-hold-dog-lead-calm-walks = Faites des promenades courtes et calmes, avec un harnais qui empêche de tirer.
activity-hold-dog-lead-helper = Demandez à quelqu’un de tenir la laisse. Ne l’enroulez jamais autour des doigts.

## Use a screwdriver

activity-use-screwdriver-name = Utiliser un tournevis
activity-use-screwdriver-powered-driver = Prenez une visseuse légère à moteur.
activity-use-screwdriver-fat-handle = Prenez un gros manche qui tourne par petits crans.
activity-use-screwdriver-elbow-in = Gardez le coude contre le corps. Poussez avec le corps.
activity-use-screwdriver-helper = Demandez à quelqu’un de visser.

## Use a hammer

activity-hammer-name = Utiliser un marteau
activity-hammer-light-hammer = Prenez un marteau léger à gros manche souple.
activity-hammer-few-nails = Plantez quelques clous. Puis reposez la main.
activity-hammer-helper = Demandez à quelqu’un de taper.

## Use a power drill

activity-power-drill-name = Utiliser une perceuse
activity-power-drill-light-drill = Prenez une perceuse légère à poignée de côté.
activity-power-drill-two-hands = Tenez-la à deux mains, les coudes contre le corps.
activity-power-drill-short-bouts = Percez un trou. Puis reposez la main.
activity-power-drill-helper = Demandez à quelqu’un de percer.

## Lift boxes

activity-lift-boxes-name = Soulever des cartons
activity-lift-boxes-palms-under = Tournez les paumes vers le haut. Glissez les avant-bras dessous et restez tout près.
activity-lift-boxes-half-load = Remplissez les cartons seulement à moitié.
activity-lift-boxes-trolley = Poussez-les sur un chariot. Ne soulevez pas depuis le sol.
activity-lift-boxes-helper = Demandez à quelqu’un de les soulever.

## Pick up small parts or coins

activity-handle-small-parts-name = Ramasser de petites pièces ou de la monnaie
activity-handle-small-parts-soft-tray = Posez-les sur un tapis mou. Faites-les glisser hors du bord.
activity-handle-small-parts-wide-tweezers = Prenez une pince à poignée large et souple, ou un aimant.
activity-handle-small-parts-pauses = Ramassez-en quelques-unes. Puis reposez la main.
activity-handle-small-parts-other-hand = Ramassez-les avec l’autre main.

## Hold a baby to feed

activity-feed-baby-name = Tenir un bébé pour le nourrir
activity-feed-baby-firm-pillow = Posez le bébé sur un oreiller ferme. Laissez l’oreiller porter le poids.
activity-feed-baby-straight-wrist = Posez la tête dans le creux du bras. Ne pliez pas le poignet.
activity-feed-baby-change-sides = Changez souvent de côté. Tendez le bras entre deux.
activity-feed-baby-helper = Demandez à quelqu’un de mettre le bébé en place et de rester près de vous.

## Change a nappy

activity-change-nappy-name = Changer une couche
activity-change-nappy-easy-tabs = Choisissez des couches à attaches larges, faciles à ouvrir.
activity-change-nappy-roll-baby = Tournez le bébé sur le côté. Ne tenez pas les deux pieds en l’air.
activity-change-nappy-wipes-ready = Posez tout, ouvert et prêt, avant de commencer.
activity-change-nappy-other-hand = Ouvrez et fermez les attaches avec l’autre main, ou demandez à quelqu’un de changer la couche.

## Buckle a child seat

activity-buckle-child-seat-name = Attacher un siège enfant
activity-buckle-child-seat-buckle-key = Prenez un levier fait pour appuyer sur les boucles.
activity-buckle-child-seat-knuckle = Appuyez sur le bouton avec la jointure d’un doigt plié.
activity-buckle-child-seat-helper = Prenez l’autre main, ou demandez à quelqu’un. Vérifiez que c’est bien fermé.

## Push a pram

activity-push-pram-name = Pousser un landau
activity-push-pram-open-palms = Poussez avec les paumes ouvertes.
activity-push-pram-high-bar = Réglez la barre haut et rembourrez-la. Posez les avant-bras dessus.
activity-push-pram-helper = Poussez avec l’autre main, ou demandez à quelqu’un de pousser.

## Dig

activity-dig-name = Bêcher
activity-dig-small-spade = Prenez une petite bêche légère à long manche.
activity-dig-foot-pushes = Laissez le pied pousser la bêche.
activity-dig-short-bouts = Prenez une demi-bêche à la fois. Arrêtez après quelques-unes.
activity-dig-helper = Demandez à quelqu’un de bêcher. Vous montrez où.

## Pull weeds

activity-pull-weeds-name = Arracher les mauvaises herbes
activity-pull-weeds-long-weeder = Prenez une binette ou un désherbeur à manche long et gros.
activity-pull-weeds-after-rain = Désherbez après la pluie, quand les racines viennent facilement.
activity-pull-weeds-short-bouts = Faites un petit carré. Puis reposez la main.
activity-pull-weeds-helper = Demandez à quelqu’un de désherber. Vous montrez où.

## Water plants

activity-water-plants-name = Arroser les plantes
activity-water-plants-two-hands = Tenez l’arrosoir à deux mains, près du corps.
activity-water-plants-little-water = Remplissez l’arrosoir juste un peu.
activity-water-plants-hose = Prenez un tuyau avec une gâchette qui reste ouverte.
activity-water-plants-helper = Arrosez avec l’autre main, ou demandez à quelqu’un.

## Fasten a seat belt

activity-fasten-seat-belt-name = Attacher la ceinture
activity-fasten-seat-belt-belt-handle = Mettez sur la ceinture une poignée facile à atteindre.
activity-fasten-seat-belt-knuckle = Appuyez sur le bouton avec la jointure d’un doigt plié.
activity-fasten-seat-belt-other-hand = Tirez la ceinture devant vous avec l’autre main. Demandez à quelqu’un de la fermer.

## Ride a bicycle

activity-cycle-name = Faire du vélo
activity-cycle-high-bar = Relevez le guidon. Prenez de grosses poignées souples.
activity-cycle-short-rides = Roulez peu de temps, sur des chemins lisses.
activity-cycle-indoor-bike = Prenez un vélo d’appartement. Gardez le dos droit et laissez reposer les mains.

## Lift weights

activity-lift-weights-name = Soulever des poids
activity-lift-weights-half-weight = Prenez la moitié du poids. Faites-en moins.
activity-lift-weights-forearm-cuff = Tirez avec un bracelet sur l’avant-bras. Ne serrez pas de barre.
activity-lift-weights-legs-only = Travaillez les jambes et le tronc. Ne tenez rien.

## Do press-ups or yoga

activity-press-ups-yoga-name = Faire des pompes ou du yoga
activity-press-ups-yoga-legs-only = Choisissez des postures sur les jambes, le dos ou le côté.
activity-press-ups-yoga-straight-wrist = Tenez des poignées fixes pour que le poignet ne se plie pas.
activity-press-ups-yoga-fewer = Appuyez-vous contre un mur, pas au sol.

## Swim

activity-swim-name = Nager
activity-swim-float = Posez les avant-bras sur une planche. Nagez avec les jambes.
activity-swim-dry-at-once = Séchez la peau et l’attelle dès que vous sortez.
activity-swim-short-swim = Nagez peu de temps.

## Play the guitar

activity-play-guitar-name = Jouer de la guitare
activity-play-guitar-light-strings = Prenez des cordes fines, qui demandent peu de pression.
activity-play-guitar-neck-higher = Tenez le manche plus haut avec une courroie. Ne pliez pas le poignet.
activity-play-guitar-short-bouts = Jouez un morceau. Puis reposez la main.

## Sleep

activity-sleep-position-name = Dormir
activity-sleep-position-splint-on = Portez l’attelle la nuit quand ce guide le dit.
activity-sleep-position-arm-on-pillow = Posez le bras sur un oreiller à côté de vous, tendu autant que c’est facile.
activity-sleep-position-soft-towel = Enroulez une serviette souple autour du coude, sans serrer, pour qu’il se plie moins.

## Hold a phone to your ear

activity-hold-phone-to-ear-name = Tenir un téléphone à l’oreille
activity-hold-phone-to-ear-loudspeaker = Prenez le haut-parleur ou un casque. Posez le téléphone.
activity-hold-phone-to-ear-short-calls = Faites des appels courts. Tendez le bras entre deux.
activity-hold-phone-to-ear-other-hand = Tenez le téléphone avec l’autre main.
