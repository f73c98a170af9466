### Reminders for the calendar of a telephone. The first line of each shows on a locked screen, where others can read it:
### no splint, no part of the body that is treated, no condition and no name in it.
### $hand: only = only one hand is treated, do not say which; left, right and both, where both are.

reminder-change = { $hand ->
    [left] 左：今天起换新时间。
    [right] 右：今天起换新时间。
    [both] 左和右：今天起换新时间。
   *[only] 今天起换新时间。
}
reminder-visit = 您的复诊。
reminder-off = { $hand ->
    [left] 左：该取下了。
    [right] 右：该取下了。
    [both] 左右都该取下了。
   *[only] 该取下了。
}
reminder-skin = { $hand ->
    [left] 左：看看皮肤。
    [right] 右：看看皮肤。
    [both] 左和右：看看皮肤。
   *[only] 看看皮肤。
}
reminder-on = { $hand ->
    [left] 左：该戴上了。
    [right] 右：该戴上了。
    [both] 左右都该戴上了。
   *[only] 该戴上了。
}
reminder-exercise = { $hand ->
    [left] 左：该练习了。
    [right] 右：该练习了。
    [both] 左和右：该练习了。
   *[only] 该练习了。
}

## The note of a reminder

reminder-change-sheet = 新时间写在您的指南上。
# $checks is how many times a day.
reminder-checks = { $checks ->
   *[other] 每天看皮肤{ $checks }次。
}指南上写着看哪里，什么样子不正常。
reminder-skin-again = 如果压痕很久不退，不管后面的提醒怎么说，都把这一天的安排再做一遍。
# $length is a finished length of time.
reminder-wear = { $hand ->
    [left] 左：戴{ $length }。
    [right] 右：戴{ $length }。
   *[only] 戴{ $length }。
}
reminder-exercise-sheet = 指南上写着怎么做。
reminder-back-on = { $hand ->
    [left] 左：做完后再戴上。
    [right] 右：做完后再戴上。
    [both] 做完后左右都再戴上。
   *[only] 做完后再戴上。
}
reminder-times = 这个时间只是举例。请选适合您的时间。
reminder-caution = 如果治疗师或手术医生说的不一样，请照他们说的做。
reminder-call = 您的诊所：{ $telephone }
# $hours is when the telephone is answered.
reminder-call-hours = 您的诊所：{ $telephone }（{ $hours }）

## Only where the therapist asks for detail

# $where is "Right hand", $orthosis the splint's name.
reminder-about = { $where }：{ $orthosis }。
# $exercise is the exercise's name, $count how many times, $place "Splint on" or "Splint off".
reminder-dose = { $exercise }：{ $count ->
   *[other] { $count }次
}。{ $place }。
# $name is the person's name.
reminder-person = 给{ $name }。
