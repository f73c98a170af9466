### More advice for what is particular about one person.
### Each message is one or two short sentences that stand inside a section of the guide.
### $checks is a number of skin checks a day, $limit a finished length of time.

## Skin that feels little or nothing

factor-numb-skin-no-packs = Ne mettez ni poche chaude ni glace sur la peau engourdie.

## Rash from natural rubber

factor-latex-allergy-itch = Appelez-nous si la peau vous démange, même un peu.
factor-latex-allergy-gloves = Ne mettez pas de gants en caoutchouc sur l’attelle. Prenez des gants d’une autre matière.
factor-latex-allergy-spare-parts = N’ajoutez ni élastiques ni sangles élastiques. Demandez-nous ce qui est sans danger.

## Rash from metal

factor-nickel-allergy-itch = Appelez-nous si la peau vous démange, même un peu.
factor-nickel-allergy-bare-metal = Aucun métal nu ne doit toucher la peau. Dites-nous si une protection s’use.

## Rash from tape and glue

factor-adhesive-allergy-itch = Appelez-nous si la peau vous démange, même un peu.
factor-adhesive-allergy-no-tape = Ne mettez ni ruban adhésif ni pansement collant sur la peau. Demandez-nous des sangles.
factor-adhesive-allergy-linings = Ne collez ni coussinets ni doublure dans l’attelle.

## Trouble remembering

factor-memory-difficulty-same-times = Gardez les mêmes heures chaque jour. Mettez une alarme pour chacune.
factor-memory-difficulty-tick = Accrochez ce guide au mur. Cochez après chaque contrôle de la peau.
factor-memory-difficulty-in-sight = Gardez l’attelle à une place que vous voyez. Lisez les étapes chaque fois.
factor-memory-difficulty-after-meals = Liez vos mouvements à ce que vous faites de toute façon, comme les repas.

## Somebody at home who helps

factor-helper-at-home-looks = Demandez aussi à la personne qui vous aide de regarder votre peau.
factor-helper-at-home-reads = Laissez la personne qui vous aide lire chaque étape à voix haute et fermer les sangles.
factor-helper-at-home-heavy-jobs = Laissez la personne qui vous aide faire ce que ce guide dit de ne pas faire.

## A child

# The reader may be the child or a grown-up reading aloud.
factor-child-grown-up-looks = Laissez un adulte regarder la peau chaque fois. Dites tout de suite si quelque chose fait mal.
factor-child-grown-up-helps = Un adulte doit être là chaque fois que l’attelle est mise ou enlevée.
factor-child-school = Apportez une copie de ce guide à l’école.
factor-child-game = Faites un jeu de chaque mouvement.
factor-child-small-parts = Gardez les sangles détachées et les petites pièces loin des bébés et des jeunes enfants.

## Pregnancy

factor-pregnancy-swelling = Votre main peut gonfler certains jours. Posez-la sur un coussin en position assise.
factor-pregnancy-strap-room = Vérifiez chaque jour qu’un bout de doigt passe sous chaque sangle.
factor-pregnancy-grooves = Cherchez des traits profonds laissés par les sangles. Dites-nous s’ils restent.

## Work in the heat

factor-heat-work-keep-away = Gardez l’attelle loin des fours, des plaques chaudes et des moteurs. Demandez-nous avant de travailler dans la chaleur.
factor-heat-work-dry-skin = Séchez tout de suite la sueur. Regardez si la peau est molle et blanche.
factor-heat-work-fresh-sleeve = Mettez un manchon propre et sec pour chaque période de travail. Changez tout de suite un manchon humide.

## Work with food

factor-food-work-ask = Demandez au travail si une attelle est permise près des aliments. Demandez comment la couvrir.
factor-food-work-damp = Un gant sur l’attelle garde l’humidité dedans. Après le travail, regardez si la peau est molle et blanche.
factor-food-work-clean = Nettoyez l’attelle après chaque période de travail. Jetez seulement la protection.

## Work in the wet

factor-wet-work-cover = Couvrez l’attelle, ou laissez quelqu’un d’autre faire les tâches mouillées.
factor-wet-work-dry-breaks = Arrêtez souvent pour sécher la peau. Regardez si la peau est molle et blanche.
factor-wet-work-spare-sleeves = Ayez des manchons de rechange. Changez tout de suite un manchon humide.

## Work with machines

factor-machinery-moving-parts = Avec une attelle, ne travaillez pas sur des machines en mouvement. Elles peuvent happer une sangle et entraîner la main.
factor-machinery-ask = Gardez ces heures aussi au travail. Demandez-nous, et à votre employeur, avant de reprendre une machine.

## Slow healing

factor-slow-healing-no-early-end = Votre main a besoin de tout le temps prévu. N’arrêtez pas plus tôt, même si elle va bien.
factor-slow-healing-any-break = Appelez-nous le jour même si votre peau s’ouvre, même un peu.
factor-slow-healing-smoke = Si vous fumez, demandez-nous, ou à votre médecin, de l’aide pour arrêter. La fumée ralentit la guérison.

## An open wound, stitches or pins

factor-open-wound-look = Regardez ce que vous voyez de la plaie ou des broches. Appelez-nous aujourd’hui si quelque chose coule, sent mauvais ou bouge.
factor-open-wound-dry = Gardez la main sèche jusqu’à ce que nous vous disions que la peau est fermée.
factor-open-wound-no-rubbing = Ne frottez pas la plaie et n’appuyez pas dessus. Ne touchez ni les points ni les broches.
factor-open-wound-dressing = Gardez le pansement propre et sec. Demandez-nous qui le change.

## Poor blood flow

factor-poor-circulation-colour = Comparez le bout des doigts avec l’autre main. Appelez-nous le jour même si votre peau s’ouvre.
factor-poor-circulation-strap-room = Glissez un bout de doigt sous chaque sangle. Il doit passer.
factor-poor-circulation-warm = Gardez la main au chaud avec des vêtements. Ne mettez dessus ni glace ni poche chaude.

## Only one hand to use

factor-one-hand-only-table = Posez le bras sur une table. Aidez-vous du bord de la table ou de la jambe.
factor-one-hand-only-helper = Là où ce guide dit l’autre main, vous pouvez demander à quelqu’un de vous aider.
factor-one-hand-only-mirror = Prenez un miroir pour voir l’autre face de la main.

## Strong pain or worry

factor-high-pain-worry-small = Commencez par le plus petit mouvement de cette liste. Peu et souvent, c’est bien.
factor-high-pain-worry-rest = Reposez-vous avant que la main fasse très mal. Puis continuez.
factor-high-pain-worry-call = Appelez-nous tôt si quelque chose vous inquiète. Aucune question n’est trop petite.
