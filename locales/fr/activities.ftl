### Activities: what people do with their hands, and easier ways to do it.
### The name stands as a short order in a table, in the infinitive, such as “Ouvrir un bocal”.
### Every other message is one or two short sentences of advice beside that name.

## Open a jar

activity-open-jar-name = Ouvrir un bocal
activity-open-jar-jar-opener = Prenez un ouvre-bocal fixé au mur ou à la table.
activity-open-jar-break-seal = Faites d’abord entrer l’air avec le manche d’une cuillère. Le couvercle tourne alors avec moins de force.
activity-open-jar-flat-palm = Posez le bocal debout dans un tiroir. Appuyez la paume à plat sur le couvercle et tournez le corps.
activity-open-jar-helper = Demandez à quelqu’un de l’ouvrir.

## Turn a key

activity-turn-key-name = Tourner une clé
activity-turn-key-key-turner = Mettez une poignée large sur la clé. Tenez-la avec toute la main.
activity-turn-key-other-hand = Tournez la clé avec l’autre main.
activity-turn-key-oil-lock = Huilez la serrure pour qu’elle tourne facilement.

## Lift a baby

activity-lift-baby-name = Soulever un bébé
activity-lift-baby-scoop = Prenez-le paumes vers le haut, les pouces à côté des autres doigts. Glissez un bras sous les fesses, l’autre derrière le dos.
activity-lift-baby-chest-first = Rapprochez le bébé de votre poitrine avant de vous lever.
activity-lift-baby-raise-changing-place = Rehaussez la table à langer pour soulever moins haut.
activity-lift-baby-helper = Demandez à quelqu’un de vous donner le bébé.

## Lift a full pan

activity-lift-pan-name = Soulever une casserole pleine
activity-lift-pan-half-full = Remplissez la casserole seulement à moitié.
activity-lift-pan-slide = Faites glisser la casserole sur le plan de travail. Ne la soulevez pas.
activity-lift-pan-two-handles = Prenez une casserole légère à deux anses. Laissez l’autre main porter presque tout le poids.
activity-lift-pan-helper = Demandez à quelqu’un de soulever la casserole.

## Pour from a kettle

activity-pour-kettle-name = Verser avec une bouilloire
activity-pour-kettle-one-cup = Faites bouillir seulement une tasse d’eau.
activity-pour-kettle-tipper = Prenez un support qui penche la bouilloire pour vous.
activity-pour-kettle-other-hand = Versez avec l’autre main. Gardez la main qui porte l’attelle loin de la vapeur.

## Carry shopping

activity-carry-shopping-name = Porter les courses
activity-carry-shopping-backpack = Prenez un sac à dos ou un chariot.
activity-carry-shopping-split-load = Répartissez la charge dans de petits sacs. Faites deux voyages.
activity-carry-shopping-over-forearm = Pendez un sac léger à l’avant-bras, jamais aux doigts.
activity-carry-shopping-helper = Demandez à quelqu’un de porter les sacs, ou faites-vous livrer.

## Text with your thumbs

activity-text-with-thumbs-name = Écrire des messages avec les pouces
activity-text-with-thumbs-speak-text = Parlez et laissez le téléphone écrire le message.
activity-text-with-thumbs-phone-on-table = Posez le téléphone sur une table. Tapez avec l’index.
activity-text-with-thumbs-short-texts = Faites des messages courts. Reposez la main entre deux.

## Hold a tablet or a book

activity-hold-tablet-name = Tenir une tablette ou un livre
activity-hold-tablet-stand = Mettez-le sur un support.
activity-hold-tablet-on-lap = Posez-le sur un coussin sur vos genoux.
activity-hold-tablet-swap-hands = Changez souvent de main.

## Write by hand

activity-write-by-hand-name = Écrire à la main
activity-write-by-hand-fat-pen = Prenez un gros stylo souple qui glisse sans appuyer beaucoup.
activity-write-by-hand-dictate = Dictez ou tapez votre texte.
activity-write-by-hand-pauses = Écrivez quelques lignes. Puis posez le stylo et reposez-vous.
activity-write-by-hand-helper = Demandez à quelqu’un d’écrire pour vous.

## Type on a keyboard

activity-type-on-keyboard-name = Taper sur un clavier
activity-type-on-keyboard-fingers-for-space = Appuyez sur la barre d’espace avec un doigt de l’autre main.
activity-type-on-keyboard-low-keyboard = Prenez un clavier plat. Laissez reposer les avant-bras.
activity-type-on-keyboard-pauses = Arrêtez souvent et laissez les mains au repos.

## Use a computer mouse

activity-use-mouse-name = Utiliser une souris d’ordinateur
activity-use-mouse-other-hand = Bougez la souris avec l’autre main.
activity-use-mouse-upright-mouse = Essayez une souris qui se tient debout, comme une poignée de main.
activity-use-mouse-touch-pad = Utilisez un pavé tactile avec un seul doigt.

## Do up buttons

activity-do-up-buttons-name = Fermer des boutons
activity-do-up-buttons-button-hook = Prenez un crochet à boutons.
activity-do-up-buttons-pull-on-clothes = Portez des vêtements qui s’enfilent.
activity-do-up-buttons-other-hand = Laissez l’autre main fermer les boutons. Tenez seulement le tissu à plat.

## Peel vegetables

activity-peel-vegetables-name = Éplucher des légumes
activity-peel-vegetables-fat-peeler = Prenez un éplucheur à gros manche et à lame large.
activity-peel-vegetables-leave-skins = Laissez la peau des légumes, ou achetez-les prêts à cuire.
activity-peel-vegetables-short-bouts = Épluchez-en quelques-uns. Puis reposez la main.
activity-peel-vegetables-helper = Demandez à quelqu’un d’éplucher.

## Wring out a cloth

activity-wring-cloth-name = Essorer un chiffon
activity-wring-cloth-press-flat = Appuyez le chiffon à plat sur le côté de l’évier.
activity-wring-cloth-sponge = Prenez une éponge. Pressez-la doucement.
activity-wring-cloth-other-hand = Passez le chiffon autour du robinet. Tordez-le avec l’autre main.

## Prune plants

activity-prune-plants-name = Tailler des plantes
activity-prune-plants-ratchet = Prenez un sécateur qui coupe par petits crans.
activity-prune-plants-thin-stems = Coupez seulement les tiges fines. Arrêtez avant que le pouce fasse mal.
activity-prune-plants-helper = Demandez à quelqu’un de couper. Vous choisissez les branches.

## Cut with scissors

activity-use-scissors-name = Couper avec des ciseaux
activity-use-scissors-spring-scissors = Prenez des ciseaux à ressort qui s’ouvrent seuls.
activity-use-scissors-roller-cutter = Prenez un coupoir à roulette sur une planche.
activity-use-scissors-short-bouts = Coupez un peu à la fois.
activity-use-scissors-helper = Demandez à quelqu’un de couper pour vous.

## Wash your hands

activity-wash-hands-name = Se laver les mains
activity-wash-hands-pump-soap = Prenez un savon à pompe et un robinet à levier.
activity-wash-hands-wipe-down = Lavez les doigts qui dépassent. Essuyez le reste avec un linge humide.
activity-wash-hands-take-off = Enlevez l’attelle. Lavez-vous les mains, séchez-les bien, puis remettez l’attelle.

## Drive a car

activity-drive-car-name = Conduire une voiture
activity-drive-car-wheel-cover = Mettez une housse épaisse et souple sur le volant.
activity-drive-car-short-trips = Faites des trajets courts. Arrêtez-vous et reposez la main.
activity-drive-car-helper = Laissez quelqu’un d’autre conduire.

## Knit or crochet

activity-knit-name = Tricoter ou faire du crochet
activity-knit-fat-needles = Prenez de grosses aiguilles légères et un fil souple.
activity-knit-work-on-lap = Posez l’ouvrage sur vos genoux. Mettez un coussin sous les coudes.
activity-knit-short-bouts = Faites un rang. Puis reposez la main.

## Play a racket sport

activity-racket-sport-name = Jouer avec une raquette
activity-racket-sport-soft-strings = Prenez un manche plus gros et des cordes plus souples.
activity-racket-sport-two-hands = Frappez à deux mains.
activity-racket-sport-half-time = Jouez moitié moins longtemps.

## Brush your teeth

activity-brush-teeth-name = Se brosser les dents
activity-brush-teeth-fat-handle = Prenez une brosse à gros manche ou électrique.
activity-brush-teeth-other-hand = Brossez avec l’autre main.

## Pull up a zip

activity-fasten-zip-name = Fermer une fermeture éclair
activity-fasten-zip-zip-ring = Mettez un anneau sur la fermeture. Tirez-le avec un doigt en crochet.
activity-fasten-zip-other-hand = Tirez la fermeture avec l’autre main.
