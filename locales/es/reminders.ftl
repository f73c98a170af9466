### Reminders for the calendar of a telephone. The first line of each shows on a locked screen, where others can read it:
### no splint, no part of the body that is treated, no condition and no name in it. “Póngasela” agrees with “la férula”,
### which is not named.
### $hand: only = only one hand is treated, do not say which; left, right and both, where both are.

reminder-change = { $hand ->
    [left] Izquierda: horario nuevo desde hoy.
    [right] Derecha: horario nuevo desde hoy.
    [both] Izquierda y derecha: horario nuevo desde hoy.
   *[only] Horario nuevo desde hoy.
}
reminder-visit = Su cita.
reminder-off = { $hand ->
    [left] Izquierda: hora de quitársela.
    [right] Derecha: hora de quitársela.
    [both] Hora de quitarse las dos.
   *[only] Hora de quitársela.
}
reminder-skin = { $hand ->
    [left] Izquierda: mírese la piel.
    [right] Derecha: mírese la piel.
    [both] Izquierda y derecha: mírese la piel.
   *[only] Mírese la piel.
}
reminder-on = { $hand ->
    [left] Izquierda: hora de ponérsela.
    [right] Derecha: hora de ponérsela.
    [both] Hora de ponerse las dos.
   *[only] Hora de ponérsela.
}
reminder-exercise = { $hand ->
    [left] Izquierda: hora de sus ejercicios.
    [right] Derecha: hora de sus ejercicios.
    [both] Izquierda y derecha: hora de sus ejercicios.
   *[only] Hora de sus ejercicios.
}

## The note of a reminder

reminder-change-sheet = Su guía muestra el horario nuevo.
# $checks is how many times a day.
reminder-checks = { $checks ->
    [one] Mírese la piel una vez al día.
   *[other] Mírese la piel { $checks } veces al día.
} Su guía muestra dónde mirar y qué no es normal.
reminder-skin-again = Si una marca tarda demasiado en irse, repita el plan de ese día, digan lo que digan los avisos siguientes.
# $length is a finished length of time.
reminder-wear = { $hand ->
    [left] Izquierda: llévela puesta { $length }.
    [right] Derecha: llévela puesta { $length }.
   *[only] Llévela puesta { $length }.
}
reminder-exercise-sheet = Su guía muestra cómo hacerlos.
reminder-back-on = { $hand ->
    [left] Izquierda: vuelva a ponérsela cuando termine.
    [right] Derecha: vuelva a ponérsela cuando termine.
    [both] Vuelva a ponerse las dos cuando termine.
   *[only] Vuelva a ponérsela cuando termine.
}
reminder-times = La hora es un ejemplo. Elija la que le convenga.
reminder-caution = Si su terapeuta, su cirujano o su cirujana le dicen otra cosa, haga lo que le digan.
reminder-call = Su consulta: { $telephone }
# $hours is when the telephone is answered.
reminder-call-hours = Su consulta: { $telephone } ({ $hours })

## Only where the therapist asks for detail

# $where is "Mano derecha", $orthosis the splint's name.
reminder-about = { $where }: { $orthosis }.
# $exercise is the exercise's name, $count how many times, $place "Férula puesta" or "Sin férula".
reminder-dose = { $exercise }: { $count ->
    [one] { $count } vez
   *[other] { $count } veces
}. { $place }.
# $name is the person's name.
reminder-person = Para { $name }.
