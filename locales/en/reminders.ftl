### Reminders for the calendar of a telephone. The first line of each shows on a locked screen, where others can read it:
### no splint, no part of the body that is treated, no condition and no name in it.
### $hand: only = only one hand is treated, do not say which; left, right and both, where both are.

reminder-change = { $hand ->
    [left] Left side: new hours from today.
    [right] Right side: new hours from today.
    [both] Left and right: new hours from today.
   *[only] New hours from today.
}
reminder-visit = Your visit.
reminder-off = { $hand ->
    [left] Left side: time to take it off.
    [right] Right side: time to take it off.
    [both] Time to take both off.
   *[only] Time to take it off.
}
reminder-skin = { $hand ->
    [left] Left side: look at your skin.
    [right] Right side: look at your skin.
    [both] Left and right: look at your skin.
   *[only] Look at your skin.
}
reminder-on = { $hand ->
    [left] Left side: time to put it on.
    [right] Right side: time to put it on.
    [both] Time to put both on.
   *[only] Time to put it on.
}
reminder-exercise = { $hand ->
    [left] Left side: time for your exercises.
    [right] Right side: time for your exercises.
    [both] Left and right: time for your exercises.
   *[only] Time for your exercises.
}

## The note of a reminder

reminder-change-sheet = Your sheet shows the new hours.
# $checks is how many times a day.
reminder-checks = { $checks ->
    [one] Look at your skin once a day.
   *[other] Look at your skin { $checks } times a day.
} Your sheet shows where to look, and what is not fine.
reminder-skin-again = If a mark stays too long, do the same day again, whatever the next reminders say.
# $length is a finished length of time.
reminder-wear = { $hand ->
    [left] Left side: wear it for { $length }.
    [right] Right side: wear it for { $length }.
   *[only] Wear it for { $length }.
}
reminder-exercise-sheet = Your sheet shows how.
reminder-back-on = { $hand ->
    [left] Left side: put it back on when you are done.
    [right] Right side: put it back on when you are done.
    [both] Put both back on when you are done.
   *[only] Put it back on when you are done.
}
reminder-times = The time is an example. Pick one that suits you.
reminder-caution = If your therapist or your surgeon tells you something else, do what they say.
reminder-call = Your clinic: { $telephone }
# $hours is when the telephone is answered.
reminder-call-hours = Your clinic: { $telephone } ({ $hours })

## Only where the therapist asks for detail

# $where is "Right hand", $orthosis the splint's name.
reminder-about = { $where }: { $orthosis }.
# $exercise is the exercise's name, $count how many times, $place "Splint on" or "Splint off".
reminder-dose = { $exercise }: { $count ->
    [one] { $count } time
   *[other] { $count } times
}. { $place }.
# $name is the person's name.
reminder-person = For { $name }.
