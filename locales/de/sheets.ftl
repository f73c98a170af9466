### The papers beside the guide: card, diary, exercises, letter.
### No date, hour, number, side or angle is typed here; they come in as variables.

# Stands at the end of each of these papers.
sheet-caution = Das ersetzt nicht Ihr ganzes Merkblatt und nicht, was Ihr Therapeut oder Chirurg Ihnen sagt. Sagen sie Ihnen etwas anderes, dann tun Sie das.

## The card

card-caution = Diese Karte gehört zu Ihrem Merkblatt. Was Ihr Therapeut Ihnen sagt, geht vor.
card-title = Ihre Schiene
card-description = Wann Sie die Schiene tragen, wie Sie sie anlegen, wann Sie anrufen.
# $straps is a list of names, in the order in which they are closed.
card-straps-on = Schließen Sie der Reihe nach: { $straps }.
card-straps-off = Öffnen Sie der Reihe nach: { $straps }.

## The diary

diary-title = Ihr Tagebuch
diary-description = Ein Tagebuch zum Abhaken bis zum nächsten Termin.
diary-week = Woche { $week }: { $from } bis { $to }
# $least is no pain, $most the worst.
diary-intro = Haken Sie ab, was getan ist. Kreisen Sie eine Zahl für den stärksten Schmerz des Tages ein: { $least } ist kein Schmerz, { $most } ist der stärkste, den Sie sich denken können.
# $bouts is how many times, $each how long.
diary-wears = { $bouts ->
    [one] Einmal
   *[other] { $bouts } Mal
}, jedes Mal { $each }. Nicht nachts.
diary-worn = Getragen
diary-hours = Tragestunden
diary-skin = Haut geprüft
diary-exercises = Übungen
diary-pain = Schmerz
diary-note = Notiz
# $number is the clinic's telephone.
diary-stop = Warten Sie nicht auf Ihren Termin, wenn Sie ein Stoppzeichen aus Ihrem Merkblatt sehen. Rufen Sie { $number } an.
diary-stop-no-number = Warten Sie nicht auf Ihren Termin, wenn Sie ein Stoppzeichen aus Ihrem Merkblatt sehen. Rufen Sie Ihre Klinik an.
diary-visit = Bringen Sie dieses Tagebuch zu Ihrem Termin mit: { $date }.
diary-visit-time = Bringen Sie dieses Tagebuch zu Ihrem Termin mit: { $date }, { $time }.

## The exercises

exercises-title = Ihre Übungen
exercises-description = Die Übungen für zu Hause: der Anfang, die Bewegung, wie oft, wann Sie aufhören.

## The letter

letter-title = { $to ->
    [teacher] Für die Lehrkraft
    [employer] Für den Arbeitgeber
   *[carer] Für die helfende Person
}
letter-description = Was eine Hand in der Schiene vorerst darf und nicht darf.
# $fitted and $review are dates.
letter-intro = { $to ->
    [teacher] Ihr Schüler oder Ihre Schülerin hat eine Schiene an der { $side ->
        [left] linken
       *[right] rechten
    } Hand.
    [employer] Eine Person, die für Sie arbeitet, hat eine Schiene an der { $side ->
        [left] linken
       *[right] rechten
    } Hand.
   *[carer] Die Person, der Sie helfen, hat eine Schiene an der { $side ->
        [left] linken
       *[right] rechten
    } Hand.
} Dieser Brief sagt, was die Hand tun darf, bis die Klinik sie wieder ansieht.
letter-from = Schiene seit
letter-until = Nächster Termin in der Klinik
letter-for = Wofür sie ist
letter-told = Das wurde der Person zu ihrem Alltag gesagt:
letter-never-off = Nur die Klinik nimmt die Schiene ab. Schneiden, biegen oder öffnen Sie sie nicht.
letter-leave-on = Nehmen Sie die Schiene nicht ab und ändern Sie sie nicht, außer die Person bittet Sie darum.
letter-other-jobs = Steht eine Aufgabe nicht hier, fragen Sie die Person. Ist sie nicht sicher, wartet die Aufgabe, bis die Person die Klinik gefragt hat.
letter-help-carer = Helfen Sie bei allem, was zwei Hände braucht. Ziehen Sie nicht an dem Arm mit der Schiene.
letter-help-teacher = Bitte geben Sie mehr Zeit zum Schreiben. Kein Sport oder Spiel, bei dem die Hand gestoßen werden kann, bis die Klinik es erlaubt.
letter-help-employer = Bitte geben Sie Aufgaben, bei denen diese Hand frei bleibt. Die Klinik entscheidet, wann die volle Arbeit wieder beginnen kann.
# $number is the clinic's telephone.
letter-urgent = Handeln Sie sofort, wenn Finger oder Daumen blau, weiß, taub oder kalt werden oder der Schmerz viel stärker wird. Helfen Sie der Person, { $number } anzurufen.
letter-urgent-no-number = Handeln Sie sofort, wenn Finger oder Daumen blau, weiß, taub oder kalt werden oder der Schmerz viel stärker wird. Helfen Sie der Person, die Klinik anzurufen.
# Stands in the place of a picture.
letter-hand = { $side ->
    [left] Die Schiene ist an der linken Hand.
   *[right] Die Schiene ist an der rechten Hand.
}
# At the foot of the page. $name is the person's name.
letter-about = Über { $name }. { $side ->
    [left] Linke
   *[right] Rechte
} Hand.
letter-about-nobody = Über eine Person. { $side ->
    [left] Linke
   *[right] Rechte
} Hand.

# A diary ends after some weeks, however late the visit is.
diary-more = Das ist die letzte Seite dieses Tagebuchs. Bitten Sie Ihre Klinik um weitere Seiten.

## Booklet: sheets bound into one

booklet-contents = Was darin steht
booklet-caution = Diese Seiten ersetzen nicht, was ein Therapeut oder Chirurg Ihnen sagt. Sagen sie Ihnen etwas anderes, dann tun Sie das.
booklet-one-handed = Anlegen mit einer Hand
