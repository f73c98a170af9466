### Reminders for the calendar of a telephone. The first line of each shows on a locked screen, where others can read it:
### no splint, no part of the body that is treated, no condition and no name in it.
### $hand: only = only one hand is treated, do not say which; left, right and both, where both are.

reminder-change = { $hand ->
    [left] Po lewej: od dzisiaj nowe godziny.
    [right] Po prawej: od dzisiaj nowe godziny.
    [both] Po lewej i prawej: od dzisiaj nowe godziny.
   *[only] Od dzisiaj nowe godziny.
}
reminder-visit = Wizyta.
reminder-off = { $hand ->
    [left] Po lewej: pora zdjąć.
    [right] Po prawej: pora zdjąć.
    [both] Pora zdjąć po obu stronach.
   *[only] Pora zdjąć.
}
reminder-skin = { $hand ->
    [left] Po lewej: proszę obejrzeć skórę.
    [right] Po prawej: proszę obejrzeć skórę.
    [both] Po lewej i prawej: proszę obejrzeć skórę.
   *[only] Proszę obejrzeć skórę.
}
reminder-on = { $hand ->
    [left] Po lewej: pora założyć.
    [right] Po prawej: pora założyć.
    [both] Pora założyć po obu stronach.
   *[only] Pora założyć.
}
reminder-exercise = { $hand ->
    [left] Po lewej: pora na ćwiczenia.
    [right] Po prawej: pora na ćwiczenia.
    [both] Po lewej i prawej: pora na ćwiczenia.
   *[only] Pora na ćwiczenia.
}

## The note of a reminder

reminder-change-sheet = Nowe godziny są na kartce.
# $checks is how many times a day.
reminder-checks = { $checks ->
    [one] Proszę oglądać skórę raz dziennie.
    [few] Proszę oglądać skórę { $checks } razy dziennie.
    [many] Proszę oglądać skórę { $checks } razy dziennie.
   *[other] Proszę oglądać skórę { $checks } raza dziennie.
} Kartka pokazuje, gdzie patrzeć i co nie jest w porządku.
reminder-skin-again = Jeśli ślad zostaje za długo, proszę powtórzyć ten sam dzień, cokolwiek mówią następne przypomnienia.
# $length is a finished length of time.
reminder-wear = { $hand ->
    [left] Po lewej: nosić przez { $length }.
    [right] Po prawej: nosić przez { $length }.
   *[only] Nosić przez { $length }.
}
reminder-exercise-sheet = Kartka pokazuje jak.
reminder-back-on = { $hand ->
    [left] Po lewej: na koniec proszę znowu założyć.
    [right] Po prawej: na koniec proszę znowu założyć.
    [both] Na koniec proszę znowu założyć po obu stronach.
   *[only] Na koniec proszę znowu założyć.
}
reminder-times = Ta godzina to przykład. Proszę wybrać wygodną porę.
reminder-caution = Jeśli terapeuta lub chirurg mówi coś innego, proszę robić to, co mówi.
reminder-call = Poradnia: { $telephone }
# $hours is when the telephone is answered.
reminder-call-hours = Poradnia: { $telephone } ({ $hours })

## Only where the therapist asks for detail

# $where is "Right hand", $orthosis the splint's name.
reminder-about = { $where }: { $orthosis }.
# $exercise is the exercise's name, $count how many times, $place "Splint on" or "Splint off".
reminder-dose = { $exercise }: { $count ->
    [one] { $count } raz
    [few] { $count } razy
    [many] { $count } razy
   *[other] { $count } raza
}. { $place }.
# $name is the person's name.
reminder-person = Dla: { $name }.
