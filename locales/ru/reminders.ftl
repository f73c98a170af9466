### Reminders for the calendar of a telephone. The first line of each shows on a locked screen:
### no splint, no part of the body that is treated, no condition and no name in it.
### $hand: only = only one hand is treated, do not say which; left, right and both, where both are.

reminder-change = { $hand ->
    [left] Слева: с сегодняшнего дня новые часы.
    [right] Справа: с сегодняшнего дня новые часы.
    [both] Слева и справа: с сегодняшнего дня новые часы.
   *[only] С сегодняшнего дня новые часы.
}
reminder-visit = Ваш приём.
reminder-off = { $hand ->
    [left] Слева: пора снять.
    [right] Справа: пора снять.
    [both] Пора снять обе.
   *[only] Пора снять.
}
reminder-skin = { $hand ->
    [left] Слева: осмотрите кожу.
    [right] Справа: осмотрите кожу.
    [both] Слева и справа: осмотрите кожу.
   *[only] Осмотрите кожу.
}
reminder-on = { $hand ->
    [left] Слева: пора надеть.
    [right] Справа: пора надеть.
    [both] Пора надеть обе.
   *[only] Пора надеть.
}
reminder-exercise = { $hand ->
    [left] Слева: пора делать упражнения.
    [right] Справа: пора делать упражнения.
    [both] Слева и справа: пора делать упражнения.
   *[only] Пора делать упражнения.
}

reminder-change-sheet = Новые часы – в вашем листе.
reminder-checks =
    { $checks ->
        [one] Осматривайте кожу один раз в день.
        [few] Осматривайте кожу { $checks } раза в день.
        [many] Осматривайте кожу { $checks } раз в день.
       *[other] Осматривайте кожу { $checks } раза в день.
    } Куда смотреть и чего быть не должно – в вашем листе.
reminder-skin-again = Если след долго не проходит, повторите тот же день, что бы ни говорили следующие напоминания.
reminder-wear = { $hand ->
    [left] Слева: носите { $length }.
    [right] Справа: носите { $length }.
   *[only] Носите { $length }.
}
reminder-exercise-sheet = Как делать – в вашем листе.
reminder-back-on = { $hand ->
    [left] Слева: когда закончите, снова наденьте.
    [right] Справа: когда закончите, снова наденьте.
    [both] Когда закончите, снова наденьте обе.
   *[only] Когда закончите, снова наденьте.
}
reminder-times = Время – пример. Выберите удобное вам.
reminder-caution = Если реабилитолог или хирург говорят иначе, делайте, как говорят они.
reminder-call = Ваша клиника: { $telephone }
reminder-call-hours = Ваша клиника: { $telephone } ({ $hours })

reminder-about = { $where }: { $orthosis }.
reminder-dose = { $exercise }: { $count ->
    [one] { $count } раз
    [few] { $count } раза
    [many] { $count } раз
   *[other] { $count } раза
}. { $place }.
reminder-person = Для кого: { $name }.
