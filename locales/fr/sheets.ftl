### The papers beside the guide: card, diary, exercises, letter.
### No date, hour, number, side or angle is typed here; they come in as variables.

# Stands at the end of each of these papers.
sheet-caution = Cette feuille ne remplace pas votre guide complet, ni ce que vous dit votre thérapeute ou votre chirurgien. S’ils vous disent autre chose, faites ce qu’ils disent.

## The card

card-caution = Cette carte va avec votre guide. Ce que vous dit votre thérapeute passe avant tout.
card-title = Votre attelle
card-description = Quand porter l’attelle, comment la mettre, quand appeler.
# $straps is a list of names, in the order in which they are closed.
card-straps-on = Fermez dans cet ordre : { $straps }.
card-straps-off = Ouvrez dans cet ordre : { $straps }.

## The diary

diary-title = Votre journal
diary-description = Un journal à cocher jusqu’à la prochaine visite.
diary-week = Semaine { $week } : du { $from } au { $to }
# $least is no pain, $most the worst.
diary-intro = Cochez une case quand une chose est faite. Entourez un chiffre pour la pire douleur du jour : { $least } veut dire aucune douleur, { $most } la pire que vous pouvez imaginer.
# $bouts is how many times, $each how long.
diary-wears = { $bouts ->
    [one] Une fois
    [many] { $bouts } fois
   *[other] { $bouts } fois
}, { $each } chaque fois. Pas la nuit.
diary-worn = Portée
diary-hours = Heures de port
diary-skin = Peau vue
diary-exercises = Exercices
diary-pain = Douleur
diary-note = Note
# $number is the clinic's telephone.
diary-stop = N’attendez pas la visite si vous voyez un signe d’arrêt de votre guide. Appelez le { $number }.
diary-stop-no-number = N’attendez pas la visite si vous voyez un signe d’arrêt de votre guide. Appelez votre centre de soins.
diary-visit = Apportez ce journal à votre visite du { $date }.
diary-visit-time = Apportez ce journal à votre visite du { $date }, { $time }.

## The exercises

exercises-title = Vos exercices
exercises-description = Le programme à la maison : où commencer, le mouvement, combien de fois, quand arrêter.

## The letter

letter-title = { $to ->
    [teacher] Pour l’enseignant
    [employer] Pour l’employeur
   *[carer] Pour la personne qui aide
}
letter-description = Ce qu’une main dans une attelle peut et ne peut pas faire pour l’instant.
# $fitted and $review are dates.
letter-intro = { $to ->
    [teacher] Votre élève porte une attelle à la main { $side ->
        [left] gauche
       *[right] droite
    }.
    [employer] Une personne qui travaille pour vous porte une attelle à la main { $side ->
        [left] gauche
       *[right] droite
    }.
   *[carer] La personne que vous aidez porte une attelle à la main { $side ->
        [left] gauche
       *[right] droite
    }.
} Cette lettre dit ce que la main peut faire jusqu’au prochain contrôle au centre de soins.
letter-from = Attelle depuis le
letter-until = Prochaine visite au centre de soins
letter-for = À quoi elle sert
letter-told = Voici ce qui a été dit à la personne pour ses tâches de tous les jours :
letter-never-off = Seul le centre de soins enlève l’attelle. Ne la coupez pas, ne la pliez pas, ne l’ouvrez pas.
letter-leave-on = N’enlevez pas l’attelle et ne la changez pas, sauf si la personne vous le demande.
letter-other-jobs = Pour une tâche qui n’est pas écrite ici, demandez à la personne. Si elle n’est pas sûre, la tâche attend qu’elle ait demandé au centre de soins.
letter-help-carer = Aidez aux tâches qui demandent les deux mains, et ne tirez pas sur le bras qui porte l’attelle.
letter-help-teacher = Merci de donner plus de temps pour écrire. Pas de sport ni de jeu où la main peut prendre un coup, tant que le centre de soins ne le permet pas.
letter-help-employer = Merci de donner des tâches qui laissent cette main libre. Le centre de soins décide quand le travail complet peut reprendre.
# $number is the clinic's telephone.
letter-urgent = Agissez tout de suite si les doigts deviennent bleus, blancs, engourdis ou froids, ou si la douleur augmente beaucoup. Aidez la personne à appeler le { $number }.
letter-urgent-no-number = Agissez tout de suite si les doigts deviennent bleus, blancs, engourdis ou froids, ou si la douleur augmente beaucoup. Aidez la personne à appeler le centre de soins.
# Stands in the place of a picture.
letter-hand = { $side ->
    [left] L’attelle est à la main gauche.
   *[right] L’attelle est à la main droite.
}
# At the foot of the page. $name is the person's name.
letter-about = Au sujet de { $name }. { $side ->
    [left] Main gauche
   *[right] Main droite
}.
letter-about-nobody = Au sujet d’une personne. { $side ->
    [left] Main gauche
   *[right] Main droite
}.

# A diary ends after some weeks, however late the visit is.
diary-more = C’est la dernière page de ce journal. Demandez d’autres pages à votre centre de soins.

## Booklet: sheets bound into one

booklet-contents = Ce qu’il y a dedans
booklet-caution = Ces pages ne remplacent pas ce que vous dit un thérapeute ou un chirurgien. S’ils vous disent autre chose, faites ce qu’ils disent.
booklet-one-handed = La mettre d’une seule main
