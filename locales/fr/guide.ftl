### The guide: everything that is not about one condition, splint, activity or exercise.
### French of France; the reader is “vous”. Draft: nobody qualified has checked it.
### Every splint is named “attelle …” (feminine): “mise”, “enlevée”, “mettez-la” agree with it.
### “Doigts” may include the thumb in French: where English leaves the thumb out, write “les doigts sauf le pouce”.
### “Jointure de base” is the big knuckle of a finger, “jointure du pouce” the knuckle of the thumb,
### “base du pouce” the joint nearest the wrist, “articulation du milieu” the middle joint.
### No date, hour, number, side or angle is typed here; they come in as variables.
### $side is left or right and only chooses between wordings.

## Title and furniture

# $orthosis is the splint's name, such as "attelle longue du pouce".
guide-title = Votre { $orthosis }
# $name is the person's name. Stands at the foot of every page.
guide-made-for = Réservé à { $name }. Main { $side ->
    [left] gauche
   *[right] droite
}{ $finger ->
    [index] , index
    [middle] , majeur
    [ring] , annulaire
    [little] , petit doigt
   *[none] {""}
}.
guide-made-for-nobody = Réservé à une personne. Main { $side ->
    [left] gauche
   *[right] droite
}{ $finger ->
    [index] , index
    [middle] , majeur
    [ring] , annulaire
    [little] , petit doigt
   *[none] {""}
}.
guide-caution = Ce guide ne remplace pas ce que vous dit votre thérapeute ou votre chirurgien. S’ils vous disent autre chose, faites ce qu’ils disent. Ne prêtez l’attelle à personne.
# Printed on every sheet in a language that no qualified translator has signed off.
guide-drafted = Ce texte n’a pas été vérifié par un traducteur qualifié.
guide-outdated = Le texte anglais de cette feuille a changé après la traduction. Demandez à votre centre de soins avant de l’utiliser.
guide-page = Page { $page } sur { $pages }
# Where a section stands, in the line of contents.
contents-page = , p. { $page }

## Which hand

hand-left = Main gauche
hand-right = Main droite
hand-alt = { $side ->
    [left] L’attelle est pour la main gauche.
   *[right] L’attelle est pour la main droite.
}

## Section titles

glance-title = En bref
dates-title = Jour après jour
on-off-title = Mettre et enlever
on-off-intro = { $washing ->
    [never] Seul votre centre de soins fait cela.
   *[freely] Asseyez-vous à une table. Servez-vous de l’autre main.
}
skin-title = Regardez votre peau
skin-intro = { $checks ->
    [one] Regardez-la bien une fois par jour.
    [many] Regardez-la bien { $checks } fois par jour.
   *[other] Regardez-la bien { $checks } fois par jour.
} Mettez-vous sous une bonne lumière. { $washing ->
    [supported] Regardez ces endroits chaque fois que vous enlevez l’attelle pour vous laver. Entre-temps, regardez les bords de l’attelle et le bout des doigts :
    [never] N’enlevez pas l’attelle pour regarder. Regardez les bords de l’attelle et le bout des doigts :
   *[freely] Regardez ces endroits :
}
move-title = Bougez la main
move-intro = Allez doucement. Ne forcez jamais un mouvement.
daily-title = Dans la vie de tous les jours
care-title = Entretenez l’attelle
note-title = De votre thérapeute
call-title = Quand appeler
call-intro = Gardez cette page sous les yeux.

## Facts on the first page

fact-splint = Attelle
# $finger is index, middle, ring or little and only chooses between wordings.
finger-name = { $finger ->
    [index] Index, à côté du pouce
    [middle] Majeur
    [ring] Annulaire
   *[little] Petit doigt
}
fact-for = À quoi elle sert
fact-fitted = Mise en place le
fact-full = Port complet dès le
fact-full-more = Avant, augmentez peu à peu. Voir le tableau « Jour après jour ».
fact-review = Prochaine visite
# $joints is a list such as "le bout du pouce et le coude"; the wording fits one joint as well as several.
fact-free = Mouvement libre : { $joints }.

say-date = { $date }
say-date-time = { $date }, { $time }
say-short-date = { $date }
date-range = Du { $from } au { $to }
# $to is the date of the next visit.
date-until-visit = Du { $from } jusqu’à votre visite du { $to }
# From one clock time to another.
time-range = de { $from } à { $to }

## Joints, as the person would say them

joint-elbow = le coude
joint-forearm = la rotation de l’avant-bras
joint-wrist = le poignet
joint-thumb-cmc = la base du pouce
joint-thumb-mcp = la jointure du pouce
joint-thumb-ip = le bout du pouce
joint-fingers-mcp = les doigts sauf le pouce
joint-fingers-pip = les articulations du milieu des doigts
joint-fingers-dip = le bout des doigts sauf le pouce
# The affected finger.
joint-finger-mcp = la jointure de base du doigt traité
joint-finger-pip = l’articulation du milieu du doigt traité
joint-finger-dip = le bout du doigt traité
joint-other-fingers-mcp = les autres doigts
joint-other-fingers-pip = les articulations du milieu des autres doigts
joint-other-fingers-dip = le bout des autres doigts
joint-index-mcp = la jointure de base de l’index
joint-middle-mcp = la jointure de base du majeur
joint-ring-mcp = la jointure de base de l’annulaire
joint-little-mcp = la jointure de base du petit doigt
joint-index-pip = l’articulation du milieu de l’index
joint-middle-pip = l’articulation du milieu du majeur
joint-ring-pip = l’articulation du milieu de l’annulaire
joint-little-pip = l’articulation du milieu du petit doigt
joint-index-dip = le bout de l’index
joint-middle-dip = le bout du majeur
joint-ring-dip = le bout de l’annulaire
joint-little-dip = le bout du petit doigt

## When to wear it

strip-days = Jours { $from } à { $to }
strip-from-day = À partir du jour { $from }
strip-weeks = Semaines { $from } à { $to }
strip-build = Portez-la un peu plus chaque jour. Pas encore la nuit.
strip-key-on = Attelle mise
strip-key-off = Sans attelle
strip-key-needed = Mise pour les tâches difficiles
# In phases that guard what heals.
strip-key-guard = Mise dehors et dans la foule
strip-key-rest = Mise pendant le repos
strip-key-part = Mise une partie du temps
# $label is a row's label, $times a list such as "de … à …".
strip-alt = { $label } : attelle mise { $times }.
strip-alt-none = { $label } : pas d’heures fixes avec l’attelle.
wear-never-remove = Jour et nuit. Ne l’enlevez pas.
# $times is how often it comes off in a day.
wear-off-to-wash = Jour et nuit. Enlevez-la seulement pour vous laver{ $times ->
    [one] , une fois par jour.
    [many] , { $times } fois par jour.
   *[other] , { $times } fois par jour.
}
wear-off-to-exercise = Jour et nuit. Enlevez-la seulement pour vous laver et faire les exercices{ $times ->
    [one] , une fois par jour.
    [many] , { $times } fois par jour.
   *[other] , { $times } fois par jour.
}
wear-night-and-tasks = Mise toute la nuit. Le jour, mise pour les tâches difficiles.
# In phases that guard what heals: hard tasks wait.
wear-night-and-tasks-guard = Mise toute la nuit. Le jour, mise dehors, dans la foule et pour toutes les tâches qui vous sont permises.
wear-night-and-rest = Mise toute la nuit. Le jour, mise pendant le repos. Enlevée quand vous vous servez de la main.
# $bouts is how many times a day, $each a finished length of time.
wear-stretch = Mise { $bouts ->
    [one] une fois par jour
    [many] { $bouts } fois par jour
   *[other] { $bouts } fois par jour
}, { $each } chaque fois. Enlevée entre-temps.
wear-day = Mise toute la journée. Enlevée la nuit.
wear-night = Mise toute la nuit. Enlevée le jour.
wear-tasks = Mise seulement pour les tâches difficiles. Enlevée la nuit.
wear-tasks-guard = Mise dehors, dans la foule et pour toutes les tâches qui vous sont permises. Enlevée la nuit.
wear-off = Sans attelle.
# $length is how long it is worn while awake.
wear-wean-night = Mise pendant { $length } après le lever, et toute la nuit.
wear-wean-day = Mise pendant { $length } après le lever. Enlevée la nuit.

## What comes after the next visit

later-label = Quand votre thérapeute le dira
later-label-surgeon = Quand votre chirurgien le dira
later-label-next = Plus tard, quand nous le dirons
# This splint does not suit that stage.
later-other = Avec une autre attelle.
later-never-remove = Jour et nuit, sans pause.
later-off-to-wash = Jour et nuit, enlevée seulement pour vous laver.
later-off-to-exercise = Jour et nuit, enlevée seulement pour vous laver et faire les exercices.
later-night-and-tasks = La nuit et pour les tâches difficiles.
later-night-and-tasks-guard = La nuit, dehors et dans la foule.
later-night-and-rest = La nuit et pendant le repos.
later-stretch = Quelques fois par jour, pour étirer.
later-day = Le jour seulement.
later-night = La nuit seulement.
later-tasks = Pour les tâches difficiles seulement.
later-tasks-guard = Dehors et dans la foule seulement.
later-off = Sans l’attelle.
later-wean = De moins en moins, pas à pas.

## The stop box

warning-title-take-off = Enlevez l’attelle et appelez-nous si :
warning-title-supported = { $straps ->
    [without] Appelez-nous si :
   *[with] Desserrez les sangles et appelez-nous si :
}
warning-title-keep-on = { $straps ->
    [without] Gardez l’attelle en place et appelez-nous si :
   *[with] Desserrez les sangles, gardez l’attelle en place et appelez-nous si :
}
# Followed by the signs that cannot wait. $number is the emergency number.
warning-emergency = Urgence, appelez le { $number } si :
warning-emergency-no-number = Urgence, demandez tout de suite de l’aide si :
warning-act-take-off = Enlevez l’attelle. Puis appelez.
warning-act-supported = { $straps ->
    [without] Gardez la partie traitée bien soutenue. Puis appelez.
   *[with] Desserrez les sangles. Gardez la partie traitée bien soutenue. Puis appelez.
}
warning-act-keep-on = { $straps ->
    [without] N’enlevez pas l’attelle. Appelez-nous.
   *[with] Desserrez les sangles. N’enlevez pas l’attelle. Puis appelez.
}

## Day by day

axis-midnight = minuit
axis-noon = midi
schedule-day = Jour
schedule-clock = Heure
schedule-long = Durée
schedule-note = Ces heures sont des exemples. Choisissez des heures qui vous vont. Si une marque reste trop longtemps, refaites le programme du même jour.
schedule-note-late = Ces heures sont des exemples. Choisissez des heures qui vous vont. Une barre après minuit compte pour le jour d’avant. Si une marque reste trop longtemps, refaites le programme du même jour.
schedule-minutes = { $count ->
    [one] minute
    [many] minutes
   *[other] minutes
}
schedule-hours = { $count ->
    [one] heure
    [many] heures
   *[other] heures
}
schedule-times = { $count ->
    [one] une fois
    [many] { $count } fois
   *[other] { $count } fois
}
schedule-not-yet = Pas ce jour-là

calendar-week = Semaine
calendar-what = Que faire
calendar-build = Augmentez peu à peu.
calendar-wean = Portez-la moins.
calendar-never-remove = Jour et nuit, sans pause.
calendar-off-to-wash = Jour et nuit.
calendar-off-to-exercise = Jour et nuit.
calendar-night-and-tasks = Nuits et tâches difficiles.
calendar-night-and-tasks-guard = Nuits, dehors, foule.
calendar-night-and-rest = Nuits et repos.
calendar-stretch = Heures d’étirement.
calendar-day = Le jour.
calendar-night = Les nuits.
calendar-tasks = Tâches difficiles.
calendar-tasks-guard = Dehors et dans la foule.
calendar-off = Sans attelle.
calendar-review = Visite du { $date }.
calendar-key-review = Votre visite
calendar-key-build = Un peu plus
calendar-key-on = Mise
calendar-key-night = Nuits
calendar-key-needed = Une partie du jour
calendar-key-off = Sans attelle
calendar-and-so-on = Continuez ainsi chaque semaine.

## Putting on and taking off

steps-on = Mettez-la
steps-off = Enlevez-la
# For a splint that only the clinic takes off.
steps-never = N’enlevez pas l’attelle vous-même. Votre centre de soins l’enlève et la remet.
strap-next = la sangle suivante

## Skin

# Letters that mark the places, in the order of the alphabet.
spot-letters = A B C D E F G H
skin-fine = C’est normal
skin-not = Ce n’est pas normal
skin-fine-mark = Une marque légère qui s’efface en moins de { $limit }
skin-fine-lines = Des traits légers laissés par les sangles
skin-fine-damp = Une peau un peu humide
skin-not-mark = Une marque qui reste plus de { $limit }
# Redness does not show on dark skin.
skin-not-dark = Sur peau foncée : un endroit plus foncé, plus chaud ou plus dur pendant plus de { $limit }
skin-not-blister = Une cloque, un endroit à vif ou une peau abîmée
skin-not-rash = Des boutons ou plaques, ou une démangeaison qui ne passe pas
skin-not-wet = Une peau blanche, molle et mouillée
skin-act-take-off = Enlevez l’attelle et appelez-nous aujourd’hui.
skin-act-keep = { $straps ->
    [without] Appelez-nous aujourd’hui. Gardez la main bien soutenue.
   *[with] Desserrez les sangles et appelez-nous aujourd’hui. Gardez la main bien soutenue.
}

## Moving

move-splint-on = Attelle mise
move-splint-off = Attelle enlevée
move-stop = Arrêtez si la douleur augmente. Si elle n’a pas diminué en quelques heures, appelez-nous.
move-avoid = Pas encore
dose-times = { $count ->
    [one] fois
    [many] fois
   *[other] fois
}
dose-a-day = { $count ->
    [one] fois par jour
    [many] fois par jour
   *[other] fois par jour
}
# $count is a number of times, after the first week.
move-up-to = Après une semaine, si c’est facile : jusqu’à { $count ->
    [one] { $count } fois
    [many] { $count } fois
   *[other] { $count } fois
}.
moves-after-review = Votre thérapeute vous donne de nouveaux mouvements après votre visite.
# $date is when they begin, $exercises a list of names.
moves-later = À partir du { $date } : { $exercises }.
avoid-wrist-ulnar-deviation = Ne penchez pas le poignet vers le petit doigt.
avoid-wrist-radial-deviation = Ne penchez pas le poignet vers le pouce.
avoid-thumb-cmc-any = Ne bougez pas la base du pouce.
avoid-thumb-cmc-palmar-abduction = N’écartez pas le pouce de la paume vers l’avant.
avoid-thumb-cmc-radial-abduction = N’écartez pas le pouce sur le côté.
avoid-thumb-mcp-any = Ne pliez pas la jointure du pouce.
avoid-thumb-mcp-flexion = Ne repliez pas le pouce dans la paume.
avoid-thumb-mcp-radial-deviation = Ne poussez pas le pouce vers l’extérieur, loin de la main.
avoid-thumb-mcp-ulnar-deviation = Ne poussez pas le pouce en travers de la main.

## Daily life

daily-job = Ce que vous faites
daily-what = Pour l’instant
daily-how = Comment
daily-word-keep = Continuez
daily-word-change = Faites ainsi
daily-word-leave = Pas pour l’instant
daily-keep = Faites comme d’habitude.
daily-helper = Demandez de l’aide à quelqu’un.
daily-other-hand = Servez-vous de l’autre main, ou demandez de l’aide à quelqu’un.
daily-ask = Demandez à votre thérapeute quand vous pouvez recommencer.
daily-pauses = Faites-en un peu à la fois. Reposez-vous entre deux.
daily-keep-dry = Gardez l’attelle sèche, ou séchez-la tout de suite.
daily-driving = Avant de conduire, demandez à votre thérapeute et à votre assurance. Respectez la loi là où vous vivez.
# $date is when a later phase begins.
daily-from-keep = À partir du { $date } : comme d’habitude.
daily-from-change = À partir du { $date } : essayez d’une façon plus facile.
why-risky = Trop risqué pour cette main pour l’instant.
why-driving = Il faut un contrôle total pour conduire ou rouler à vélo.
why-swimming = Votre main, votre peau ou votre attelle ne sont pas prêtes pour l’eau.
why-heavy = Trop lourd pour l’instant.
why-in-the-way = L’attelle gêne.
why-lateral-pinch = Serrer le pouce contre un doigt, c’est trop d’effort pour la main.
why-tip-pinch = Pincer du bout des doigts, c’est trop d’effort pour la main.
why-power-grip = Serrer fort, c’est trop d’effort pour la main.
why-sustained-grip = Tenir longtemps, c’est trop d’effort pour la main.
why-wrist-deviation = Pencher le poignet de côté, c’est trop d’effort pour lui.
why-wrist-flexion = Plier le poignet, c’est trop d’effort pour lui.
why-wrist-load = S’appuyer sur un poignet plié, c’est trop d’effort pour la main.
why-thumb-load = Cette tâche fait forcer le pouce.
why-forearm-rotation = Tourner l’avant-bras, c’est trop d’effort pour la main.
why-finger-flexion = Plier fort les doigts, c’est trop d’effort pour eux.
why-elbow-flexion = Garder le coude plié, c’est trop d’effort pour le bras.
why-impact = Les coups peuvent blesser la main.
why-vibration = Les secousses fatiguent trop la main.
why-wet = La main ou l’attelle se mouille.
why-heat = La chaleur abîme l’attelle ou blesse la peau.
why-repetition = Répéter le même geste, c’est trop d’effort pour la main.

## Looking after the splint

# $celsius is a temperature in degrees.
care-wash-plastic = Lavez-la au savon et à l’eau. L’eau ne doit pas dépasser { $celsius } degrés.
care-dry-plastic = Séchez-la bien avant de la mettre.
care-heat = Pas de chaleur. Pas d’eau chaude, pas de radiateur, pas de voiture au soleil. Elle fond et se déforme.
care-wash-soft = Lavez-la à la main avec un savon doux. Rincez-la bien.
care-dry-soft = Laissez-la sécher à plat, à l’ombre. Ne la portez jamais humide.
care-machine = Pas de lave-linge, pas de sèche-linge, pas de fer, pas d’eau de Javel.
care-metal = Essuyez-la. Cherchez la rouille et les parties tordues.
care-keep-dry = Gardez-la sèche. Couvrez-la quand vous vous lavez.
care-straps = Ôtez les peluches des sangles. Fermez-les avant de laver l’attelle.
care-change = Ne la coupez pas, ne la pliez pas, ne la collez pas. C’est à nous de le faire.
care-share = Ne la prêtez pas. Elle est faite pour vous.
care-bring = Apportez-la à chaque visite.

## Calling

call-emergency = Urgence : demandez de l’aide tout de suite
call-today = Appelez-nous aujourd’hui
call-visit = Dites-le-nous à la visite
call-where = Où : { $address }
# Stands where no emergency number is known.
call-emergency-number = Le numéro d’urgence local
call-telephone = Téléphone
note-from = Votre thérapeute écrit
# Followed by a line to write on.
initial-say = Vérifié avec vous
initial-date = Date
initial-name = Initiales

## Lengths of time

length-minutes = { $count ->
    [one] { $count } minute
    [many] { $count } minutes
   *[other] { $count } minutes
}
length-hours = { $count ->
    [one] { $count } heure
    [many] { $count } heures
   *[other] { $count } heures
}
length-hours-minutes = { $hours } { $minutes }
length-seconds = { $count ->
    [one] { $count } seconde
    [many] { $count } secondes
   *[other] { $count } secondes
}

# What a picture shows, for who cannot see it.
# $view: dorsal = the back of the hand; palmar = the palm; radial = thumb side; ulnar = little-finger side; turned = half way
# between back and thumb side; own = as the wearer sees it.
picture-seen = { $what ->
    [finger] { $finger ->
        [index] Index
        [middle] Majeur
        [ring] Annulaire
        [little] Petit doigt
       *[none] Doigt
    } de la main { $side ->
        [left] gauche
       *[right] droite
    }
    [thumb] { $side ->
        [left] Pouce gauche
       *[right] Pouce droit
    }
   *[hand] { $side ->
        [left] Main gauche
       *[right] Main droite
    }
}, { $view ->
    [palmar] vue du côté de la paume.
    [radial] vue du côté du pouce.
    [ulnar] vue du côté du petit doigt.
    [turned] vue entre le dos et le côté du pouce.
    [palmar-radial] vue entre la paume et le côté du pouce.
    [palmar-ulnar] vue entre la paume et le côté du petit doigt.
    [own] vue de vos propres yeux.
   *[dorsal] vue du côté du dos.
}
picture-covers = { $splint }. { $from ->
    [arm] Elle part du haut du bras
    [forearm] Elle part de l’avant-bras
    [hand] Elle part de la paume
   *[digit] Elle se place sur { $finger ->
        [index] l’index
        [middle] le majeur
        [ring] l’annulaire
        [little] le petit doigt
       *[none] le doigt ou le pouce
    }
} { $to ->
    [fingertips] et va jusqu’au bout des doigts.
    [fingertip] et va jusqu’au bout du doigt.
    [fingers] et va jusqu’aux doigts.
    [finger] et va jusqu’au doigt.
    [thumb-tip] et va jusqu’au bout du pouce.
    [thumb] et va jusqu’au pouce.
    [palm] et va jusqu’à la paume.
   *[none] et ne va pas plus loin.
}
picture-spots = Des ronds avec des lettres montrent où regarder.
# One of several pictures of a movement.
picture-part = Image { $number } sur { $count }.
picture-held = La position pour : { $exercise }.
picture-moved = En pointillé : le début. Une flèche montre le mouvement : { $exercise }.
picture-inside = Les os, comme vus à travers la peau.
picture-structures = Marqué : { $structures }.
picture-held-joints = Un rond barré de traits marque ce que l’attelle tient ou stabilise : { $joints }.
# The same mark, in a label.
picture-held-mark = Tenu ou stabilisé par l’attelle
# Rows of joints of all fingers, in the list above.
held-knuckles = les jointures de base
held-middle-joints = les articulations du milieu des doigts
held-end-joints = les articulations du bout des doigts
# A pair of pictures: how a splint sits, and a way in which it does not.
picture-right = Elle est bien en place. Une coche le montre.
picture-wrong = Elle est mal en place. Une croix le montre. { $fault }
