### Reminders for the calendar of a telephone. The first line of each shows on a locked screen, where others can read it:
### no splint, no part of the body that is treated, no condition and no name in it.
### $hand: only = only one hand is treated, do not say which; left, right and both, where both are.

reminder-change = { $hand ->
    [left] Links: ab heute neue Zeiten.
    [right] Rechts: ab heute neue Zeiten.
    [both] Links und rechts: ab heute neue Zeiten.
   *[only] Ab heute neue Zeiten.
}
reminder-visit = Ihr Termin.
reminder-off = { $hand ->
    [left] Links: Zeit zum Abnehmen.
    [right] Rechts: Zeit zum Abnehmen.
    [both] Zeit, beide abzunehmen.
   *[only] Zeit zum Abnehmen.
}
reminder-skin = { $hand ->
    [left] Links: Prüfen Sie Ihre Haut.
    [right] Rechts: Prüfen Sie Ihre Haut.
    [both] Links und rechts: Prüfen Sie Ihre Haut.
   *[only] Prüfen Sie Ihre Haut.
}
reminder-on = { $hand ->
    [left] Links: Zeit zum Anlegen.
    [right] Rechts: Zeit zum Anlegen.
    [both] Zeit, beide anzulegen.
   *[only] Zeit zum Anlegen.
}
reminder-exercise = { $hand ->
    [left] Links: Zeit für Ihre Übungen.
    [right] Rechts: Zeit für Ihre Übungen.
    [both] Links und rechts: Zeit für Ihre Übungen.
   *[only] Zeit für Ihre Übungen.
}

## The note of a reminder

reminder-change-sheet = Ihr Blatt zeigt die neuen Zeiten.
# $checks is how many times a day.
reminder-checks = { $checks ->
    [one] Prüfen Sie Ihre Haut einmal am Tag.
   *[other] Prüfen Sie Ihre Haut { $checks } Mal am Tag.
} Ihr Blatt zeigt, wo Sie prüfen und was nicht in Ordnung ist.
reminder-skin-again = Bleibt ein Abdruck zu lange, wiederholen Sie denselben Tag, auch wenn die nächsten Erinnerungen etwas anderes sagen.
# $length is a finished length of time.
reminder-wear = { $hand ->
    [left] Links: { $length } tragen.
    [right] Rechts: { $length } tragen.
   *[only] { $length } tragen.
}
reminder-exercise-sheet = Ihr Blatt zeigt, wie es geht.
reminder-back-on = { $hand ->
    [left] Links: Legen Sie sie wieder an, wenn Sie fertig sind.
    [right] Rechts: Legen Sie sie wieder an, wenn Sie fertig sind.
    [both] Legen Sie beide wieder an, wenn Sie fertig sind.
   *[only] Legen Sie sie wieder an, wenn Sie fertig sind.
}
reminder-times = Die Uhrzeit ist ein Beispiel. Wählen Sie eine, die für Sie passt.
reminder-caution = Sagt Ihr Therapeut oder Ihr Chirurg Ihnen etwas anderes, dann tun Sie das.
reminder-call = Ihre Klinik: { $telephone }
# $hours is when the telephone is answered.
reminder-call-hours = Ihre Klinik: { $telephone } ({ $hours })

## Only where the therapist asks for detail

# $where is "Right hand", $orthosis the splint's name.
reminder-about = { $where }: { $orthosis }.
# $exercise is the exercise's name, $count how many times, $place "Splint on" or "Splint off".
reminder-dose = { $exercise }: { $count ->
    [one] { $count } Mal
   *[other] { $count } Mal
}. { $place }.
# $name is the person's name.
reminder-person = Für { $name }.
