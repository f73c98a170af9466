### Advice for what is particular about one person.
### Each message is one or two short sentences that stand inside a section of the guide.
### $checks is a number of skin checks a day, $limit a finished length of time.

## Skin that feels little or nothing

factor-numb-skin-look = Fiez-vous à vos yeux, pas à ce que vous sentez. Regardez tous les côtés de la main. Un miroir peut aider.
factor-numb-skin-strap-room = Glissez un bout de doigt de l’autre main sous chaque sangle. Il doit passer.
factor-numb-skin-hot-and-sharp = Testez ce qui est chaud avec l’autre main. Gardez ce qui coupe loin de la peau engourdie.

## Thin or tender skin

factor-fragile-skin-no-tape = Ne mettez ni ruban adhésif ni coussinets collants sur la peau.
factor-fragile-skin-lift = Enlevez l’attelle doucement. Elle ne doit ni frotter ni tirer sur la peau.
factor-fragile-skin-sleeve = Portez un manchon de coton lisse et sec sous l’attelle. Changez-le chaque jour.

## Swelling

factor-swelling-raise = En position assise, posez la main plus haut que le cœur.
factor-swelling-loosen = Si une sangle devient trop serrée, desserrez-la un peu. Resserrez-la quand le gonflement diminue.
factor-swelling-pump = Bougez souvent les doigts libres. Cela aide à chasser le gonflement.

## Diabetes

factor-diabetes-any-break = Appelez-nous le jour même si votre peau s’ouvre, même un peu.

## Easy bleeding

# For people who take something against clotting. No medicine is named, and none is to be stopped.
factor-blood-thinners-bruise = Appelez-nous aujourd’hui si un bleu sous l’attelle s’étend.
factor-blood-thinners-no-rubbing = Ne frottez pas fort la main. Protégez-la des coups.

## Low vision

factor-low-vision-check = Avec l’autre main, cherchez les endroits chauds, durs, mouillés ou douloureux. Demandez aussi à quelqu’un de regarder votre peau.
factor-low-vision-dots = Demandez-nous des points en relief sur les sangles. Ils aident à les reconnaître.

## Living alone

factor-lives-alone-table = Posez le bras sur une table. Laissez la table tenir l’attelle pendant que l’autre main travaille.
factor-lives-alone-ready = Ayez sous la main des vêtements amples et des repas faciles.
factor-lives-alone-phone = Gardez notre numéro de téléphone près du lit.

## Night work

factor-night-work-main-sleep = Quand ce guide dit la nuit, il parle de votre sommeil principal.
factor-night-work-after-sleep = Faites vos premiers exercices après votre sommeil principal.

## Rash from foam rubber

factor-neoprene-allergy-itch = Appelez-nous si la peau vous démange, même un peu.
factor-neoprene-allergy-spare-parts = N’ajoutez pas de coussinets, de gants ou de bandes en caoutchouc mousse.

## A new baby

factor-new-mother-flat-hands = Soulevez et nourrissez votre bébé avec les mains à plat. Gardez les pouces à côté des autres doigts.
factor-new-mother-strap-room = Votre main peut gonfler. Vérifiez chaque jour qu’un bout de doigt passe sous chaque sangle.
factor-new-mother-edges = Couvrez les bords durs d’un linge propre avant de prendre votre bébé.
