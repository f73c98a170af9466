### Reminders for the calendar of a telephone. The first line of each shows on a locked screen, where others can read it:
### no splint, no part of the body that is treated, no condition and no name in it.
### $hand: only = only one hand is treated, do not say which; left, right and both, where both are.

reminder-change = { $hand ->
    [left] À gauche : nouvelles heures dès aujourd’hui.
    [right] À droite : nouvelles heures dès aujourd’hui.
    [both] À gauche et à droite : nouvelles heures dès aujourd’hui.
   *[only] Nouvelles heures dès aujourd’hui.
}
reminder-visit = Votre visite.
reminder-off = { $hand ->
    [left] À gauche : il est l’heure de l’enlever.
    [right] À droite : il est l’heure de l’enlever.
    [both] Il est l’heure d’enlever les deux.
   *[only] Il est l’heure de l’enlever.
}
reminder-skin = { $hand ->
    [left] À gauche : regardez votre peau.
    [right] À droite : regardez votre peau.
    [both] À gauche et à droite : regardez votre peau.
   *[only] Regardez votre peau.
}
reminder-on = { $hand ->
    [left] À gauche : il est l’heure de la mettre.
    [right] À droite : il est l’heure de la mettre.
    [both] Il est l’heure de mettre les deux.
   *[only] Il est l’heure de la mettre.
}
reminder-exercise = { $hand ->
    [left] À gauche : il est l’heure de vos exercices.
    [right] À droite : il est l’heure de vos exercices.
    [both] À gauche et à droite : il est l’heure de vos exercices.
   *[only] Il est l’heure de vos exercices.
}

## The note of a reminder

reminder-change-sheet = Votre feuille montre les nouvelles heures.
# $checks is how many times a day.
reminder-checks = { $checks ->
    [one] Regardez votre peau une fois par jour.
    [many] Regardez votre peau { $checks } fois par jour.
   *[other] Regardez votre peau { $checks } fois par jour.
} Votre feuille montre où regarder, et ce qui n’est pas normal.
reminder-skin-again = Si une marque reste trop longtemps, refaites le programme du même jour, même si les rappels suivants disent autre chose.
# $length is a finished length of time.
reminder-wear = { $hand ->
    [left] À gauche : portez-la { $length }.
    [right] À droite : portez-la { $length }.
   *[only] Portez-la { $length }.
}
reminder-exercise-sheet = Votre feuille montre comment faire.
reminder-back-on = { $hand ->
    [left] À gauche : remettez-la quand vous avez fini.
    [right] À droite : remettez-la quand vous avez fini.
    [both] Remettez les deux quand vous avez fini.
   *[only] Remettez-la quand vous avez fini.
}
reminder-times = L’heure est un exemple. Choisissez celle qui vous va.
reminder-caution = Si votre thérapeute ou votre chirurgien vous dit autre chose, faites ce qu’ils disent.
reminder-call = Votre centre de soins : { $telephone }
# $hours is when the telephone is answered.
reminder-call-hours = Votre centre de soins : { $telephone } ({ $hours })

## Only where the therapist asks for detail

# $where is "Main droite", $orthosis the splint's name.
reminder-about = { $where } : { $orthosis }.
# $exercise is the exercise's name, $count how many times, $place "Attelle mise" or "Attelle enlevée".
reminder-dose = { $exercise } : { $count ->
    [one] { $count } fois
    [many] { $count } fois
   *[other] { $count } fois
}. { $place }.
# $name is the person's name.
reminder-person = Pour { $name }.
