### Reminders for the calendar of a telephone. The first line of each shows on a locked screen, where others can read it:
### no splint, no part of the body that is treated, no condition and no name in it.
### $hand: only = only one hand is treated, do not say which; left, right and both, where both are.

reminder-change = { $hand ->
    [left] Kaliwa: bagong mga oras mula ngayong araw.
    [right] Kanan: bagong mga oras mula ngayong araw.
    [both] Kaliwa at kanan: bagong mga oras mula ngayong araw.
   *[only] Bagong mga oras mula ngayong araw.
}
reminder-visit = Check-up ninyo.
reminder-off = { $hand ->
    [left] Kaliwa: oras na para tanggalin.
    [right] Kanan: oras na para tanggalin.
    [both] Oras na para tanggalin ang dalawa.
   *[only] Oras na para tanggalin ito.
}
reminder-skin = { $hand ->
    [left] Kaliwa: tingnan ang balat.
    [right] Kanan: tingnan ang balat.
    [both] Kaliwa at kanan: tingnan ang balat.
   *[only] Tingnan ang balat.
}
reminder-on = { $hand ->
    [left] Kaliwa: oras na para isuot.
    [right] Kanan: oras na para isuot.
    [both] Oras na para isuot ang dalawa.
   *[only] Oras na para isuot ito.
}
reminder-exercise = { $hand ->
    [left] Kaliwa: oras ng ehersisyo.
    [right] Kanan: oras ng ehersisyo.
    [both] Kaliwa at kanan: oras ng ehersisyo.
   *[only] Oras ng ehersisyo.
}

## The note of a reminder

reminder-change-sheet = Nasa papel ninyo ang bagong mga oras.
# $checks is how many times a day.
reminder-checks = { $checks ->
    [one] Tingnan ang balat { $checks } beses bawat araw.
   *[other] Tingnan ang balat { $checks } na beses bawat araw.
} Nasa papel ninyo kung saan titingin, at kung ano ang hindi ayos.
reminder-skin-again = Kung masyadong matagal mawala ang marka, ulitin ang parehong araw ng plano, anuman ang sabi ng mga susunod na paalala.
# $length is a finished length of time.
reminder-wear = { $hand ->
    [left] Kaliwa: isuot nang { $length }.
    [right] Kanan: isuot nang { $length }.
   *[only] Isuot ito nang { $length }.
}
reminder-exercise-sheet = Nasa papel ninyo kung paano.
reminder-back-on = { $hand ->
    [left] Kaliwa: isuot ulit kapag tapos na.
    [right] Kanan: isuot ulit kapag tapos na.
    [both] Isuot ulit ang dalawa kapag tapos na.
   *[only] Isuot ulit ito kapag tapos na.
}
reminder-times = Halimbawa lang ang oras. Pumili ng oras na bagay sa inyo.
reminder-caution = Kung iba ang sabi ng inyong therapist o surgeon, sila ang sundin ninyo.
reminder-call = Ang inyong klinika: { $telephone }
# $hours is when the telephone is answered.
reminder-call-hours = Ang inyong klinika: { $telephone } ({ $hours })

## Only where the therapist asks for detail

# $where is "Right hand", $orthosis the splint's name.
reminder-about = { $where }: { $orthosis }.
# $exercise is the exercise's name, $count how many times, $place "Splint on" or "Splint off".
reminder-dose = { $exercise }: { $count ->
    [one] { $count } beses
   *[other] { $count } na beses
}. { $place }.
# $name is the person's name.
reminder-person = Para kay { $name }.
