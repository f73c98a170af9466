### The fact sheet of a condition, for patients. It is about nobody in particular: no hour, no date.
### No number, side or duration is typed here; they come in as variables.

facts-caution = Cette feuille parle d’un problème de la main. Elle ne remplace pas ce que vous dit votre thérapeute ou votre chirurgien. S’ils vous disent autre chose, faites ce qu’ils disent.
# At the foot of each page.
facts-line = Les images montrent la main { $side ->
    [left] gauche
   *[right] droite
}{ $finger ->
    [index] , index
    [middle] , majeur
    [ring] , annulaire
    [little] , petit doigt
   *[none] {""}
}.

## What it is

facts-what-title = Ce que c’est
# $what is one or two finished sentences.
facts-what = { $what }

## What the splint is for

facts-aim-title = Ce que fait l’attelle
# $aim is one or two finished sentences.
facts-aim = { $aim }
# $joints is a list of joints, such as "le poignet et la base du pouce".
facts-joints = { $joints }
facts-joint-still = Sans mouvement
facts-joint-steady = Maintien stable
facts-joint-stopped = Mouvement, jusqu’à un arrêt
facts-joint-relative = Mouvement plus petit que celui des doigts d’à côté
facts-joint-coupled = Mouvement avec le doigt d’à côté
facts-joint-mobilised = Étirement doux
# Some splints hold these joints and others do not.
facts-joint-varies = Maintien ou mouvement libre : cela dépend de votre attelle
facts-joint-free = Mouvement libre

## Types of splint

facts-types-title = Les attelles possibles
facts-types-intro = Ces modèles vont au début. Votre thérapeute choisit celui de votre main.

## The usual course

facts-course-title = Comment cela se passe
# $length is a finished length of time, such as "environ … semaines".
facts-step-label = Étape { $number }, { $length } :
# $wear and $ends are finished sentences.
facts-step = { $wear } { $ends }
# $length is such as "… à … semaines".
facts-length-usual = environ { $length }
facts-length-protocol = { $length }, comme le dit votre chirurgien
facts-length-open = sans durée fixe
facts-weeks = { $count ->
    [one] { $count } semaine
    [many] { $count } semaines
   *[other] { $count } semaines
}
# $from and $to are numbers of weeks.
facts-weeks-range = { $from } à { $to ->
    [one] { $to } semaine
    [many] { $to } semaines
   *[other] { $to } semaines
}
facts-days = { $count ->
    [one] { $count } jour
    [many] { $count } jours
   *[other] { $count } jours
}
facts-days-range = { $from } à { $to ->
    [one] { $to } jour
    [many] { $to } jours
   *[other] { $to } jours
}
facts-ends-therapist = Cette étape n’a pas de fin fixe. Votre thérapeute décide quand elle est finie.
facts-ends-surgeon = Cette étape n’a pas de fin fixe. Votre chirurgien décide quand elle est finie.
facts-ends-person = Vous décidez quand vous n’en avez plus besoin.
facts-ends-time = Puis l’étape suivante commence.
facts-own-guide = Cette feuille n’est pas votre programme. Votre propre guide dit quand porter votre attelle. Faites ce que dit votre guide.
facts-clinics-differ = Les centres de soins ne font pas tous pareil. Votre attelle, vos étapes et vos durées peuvent être différentes d’ici.
facts-surgeon-sets = Après une opération ou une fracture, votre chirurgien fixe les durées et la position de la main.

## When to get help

facts-help-title = Quand demander de l’aide
# $sign is a sign, such as "Vous pincez moins fort".
facts-visit = { $sign } : dites-le à votre thérapeute à la prochaine visite.
