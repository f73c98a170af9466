### The guide: everything that is not about one condition, splint, activity or exercise.
### Reader is "вы". Lengths of time stand in the accusative ("на минуту", "за минуту"): build sentences for that case.
### Dates may carry a weekday: keep them out of "с … до …". "Пальцы" includes the thumb: say "кроме большого" where it is left out.

# $orthosis is the splint's name, nominative, feminine.
guide-title = Ваша { $orthosis }
# $name is the person's name.
guide-made-for = Только для: { $name }. { $side ->
    [left] Левая
   *[right] Правая
} рука{ $finger ->
    [index] , указательный палец
    [middle] , средний палец
    [ring] , безымянный палец
    [little] , мизинец
   *[none] {""}
}.
guide-made-for-nobody = Только для одного человека. { $side ->
    [left] Левая
   *[right] Правая
} рука{ $finger ->
    [index] , указательный палец
    [middle] , средний палец
    [ring] , безымянный палец
    [little] , мизинец
   *[none] {""}
}.
guide-caution = Эта памятка не заменяет слов реабилитолога или хирурга. Если они говорят иначе, делайте, как говорят они. Никому не давайте свою шину.
guide-drafted = Этот текст не проверен квалифицированным переводчиком.
guide-outdated = Английский текст изменён после перевода. Спросите в клинике, прежде чем пользоваться этим листом.
guide-page = Страница { $page } из { $pages }
contents-page = , с. { $page }

hand-left = Левая рука
hand-right = Правая рука
hand-alt = { $side ->
    [left] Шина для левой руки.
   *[right] Шина для правой руки.
}

glance-title = Коротко о главном
dates-title = День за днём
on-off-title = Как надеть и снять
on-off-intro = { $washing ->
    [never] Это делают только в клинике.
   *[freely] Сядьте за стол. Работайте другой рукой.
}
skin-title = Проверяйте кожу
skin-intro = { $checks ->
    [one] Внимательно смотрите на кожу один раз в день.
    [few] Внимательно смотрите на кожу { $checks } раза в день.
    [many] Внимательно смотрите на кожу { $checks } раз в день.
   *[other] Внимательно смотрите на кожу { $checks } раза в день.
} Нужен хороший свет. { $washing ->
    [supported] Смотрите на эти места каждый раз, когда снимаете шину для мытья. В остальное время смотрите на края шины и кончики пальцев:
    [never] Не снимайте шину, чтобы посмотреть. Смотрите на её края и на кончики пальцев:
   *[freely] Смотрите на эти места:
}
move-title = Двигайте рукой
move-intro = Двигайтесь медленно. Ничего не делайте через силу.
daily-title = Повседневные дела
care-title = Уход за шиной
note-title = От реабилитолога
call-title = Когда звонить
call-intro = Держите эту страницу на виду.

fact-splint = Какая шина
finger-name = { $finger ->
    [index] Указательный палец, рядом с большим
    [middle] Средний палец
    [ring] Безымянный палец
   *[little] Мизинец
}
fact-for = Для чего она
fact-fitted = Шину надели
fact-full = Начало полного ношения
fact-full-more = Сначала привыкайте по таблице «День за днём».
fact-review = Следующий приём
fact-free = Двигаются свободно: { $joints }.

say-date = { $date }
say-date-time = { $date }, { $time }
say-short-date = { $date }
date-range = { $from } – { $to }
date-until-visit = { $from } – до приёма ({ $to })
time-range = с { $from } до { $to }

joint-elbow = локоть
joint-forearm = поворот предплечья
joint-wrist = запястье
joint-thumb-cmc = основание большого пальца
joint-thumb-mcp = костяшка большого пальца
joint-thumb-ip = кончик большого пальца
joint-fingers-mcp = пальцы (кроме большого)
joint-fingers-pip = средние суставы пальцев
joint-fingers-dip = кончики пальцев (кроме большого)
joint-finger-mcp = костяшка этого пальца
joint-finger-pip = средний сустав этого пальца
joint-finger-dip = кончик этого пальца
joint-other-fingers-mcp = остальные пальцы
joint-other-fingers-pip = средние суставы остальных пальцев
joint-other-fingers-dip = кончики остальных пальцев
joint-index-mcp = костяшка указательного пальца
joint-middle-mcp = костяшка среднего пальца
joint-ring-mcp = костяшка безымянного пальца
joint-little-mcp = костяшка мизинца
joint-index-pip = средний сустав указательного пальца
joint-middle-pip = средний сустав среднего пальца
joint-ring-pip = средний сустав безымянного пальца
joint-little-pip = средний сустав мизинца
joint-index-dip = кончик указательного пальца
joint-middle-dip = кончик среднего пальца
joint-ring-dip = кончик безымянного пальца
joint-little-dip = кончик мизинца

strip-days = Дни { $from }–{ $to }
strip-from-day = С дня { $from }
strip-weeks = Недели { $from }–{ $to }
strip-build = Каждый день носите чуть дольше. Ночью пока не носите.
strip-key-on = В шине
strip-key-off = Без шины
strip-key-needed = В шине при тяжёлых делах
strip-key-guard = В шине на улице и в толпе
strip-key-rest = В шине при отдыхе
strip-key-part = В шине часть времени
strip-alt = { $label }: в шине { $times }.
strip-alt-none = { $label }: нет точных часов ношения шины.
wear-never-remove = Днём и ночью. Не снимайте.
wear-off-to-wash = Днём и ночью. Снимайте только для мытья{ $times ->
    [one] , один раз в день.
    [few] , { $times } раза в день.
    [many] , { $times } раз в день.
   *[other] , { $times } раза в день.
}
wear-off-to-exercise = Днём и ночью. Снимайте только для мытья и упражнений{ $times ->
    [one] , один раз в день.
    [few] , { $times } раза в день.
    [many] , { $times } раз в день.
   *[other] , { $times } раза в день.
}
wear-night-and-tasks = В шине всю ночь. Днём – в шине при тяжёлых делах.
wear-night-and-tasks-guard = В шине всю ночь. Днём – в шине на улице, в толпе и при всех разрешённых делах.
wear-night-and-rest = В шине всю ночь. Днём – в шине, когда отдыхаете. Без шины, когда работаете рукой.
wear-stretch = Надевайте { $bouts ->
    [one] один раз в день
    [few] { $bouts } раза в день
    [many] { $bouts } раз в день
   *[other] { $bouts } раза в день
}, каждый раз на { $each }. В промежутках – без шины.
wear-day = В шине весь день. Ночью без шины.
wear-night = В шине всю ночь. Днём без шины.
wear-tasks = В шине только при тяжёлых делах. Ночью без шины.
wear-tasks-guard = В шине на улице, в толпе и при всех разрешённых делах. Ночью без шины.
wear-off = Без шины.
wear-wean-night = После подъёма – в шине { $length }, и ещё всю ночь.
wear-wean-day = После подъёма – в шине { $length }. Ночью без шины.

later-label = Когда скажет реабилитолог
later-label-surgeon = Когда скажет хирург
later-label-next = Позже, когда мы скажем
later-other = С другой шиной.
later-never-remove = Днём и ночью, без перерыва.
later-off-to-wash = Днём и ночью, снимать только для мытья.
later-off-to-exercise = Днём и ночью, снимать только для мытья и упражнений.
later-night-and-tasks = Ночью и при тяжёлых делах.
later-night-and-tasks-guard = Ночью, на улице и в толпе.
later-night-and-rest = Ночью и во время отдыха.
later-stretch = Несколько раз в день, для растяжки.
later-day = Только днём.
later-night = Только ночью.
later-tasks = Только при тяжёлых делах.
later-tasks-guard = Только на улице и в толпе.
later-off = Без шины.
later-wean = Всё меньше, шаг за шагом.

warning-title-take-off = Снимите шину и позвоните нам, если:
warning-title-supported = { $straps ->
    [without] Позвоните нам, если:
   *[with] Ослабьте ремешки и позвоните нам, если:
}
warning-title-keep-on = { $straps ->
    [without] Не снимайте шину и позвоните нам, если:
   *[with] Ослабьте ремешки, не снимайте шину и позвоните нам, если:
}
warning-emergency = Срочно звоните { $number }, если:
warning-emergency-no-number = Срочно! Сразу обратитесь за помощью, если:
warning-act-take-off = Снимите шину. Потом звоните.
warning-act-supported = { $straps ->
    [without] Поддерживайте больное место. Потом звоните.
   *[with] Ослабьте ремешки. Поддерживайте больное место. Потом звоните.
}
warning-act-keep-on = { $straps ->
    [without] Не снимайте шину. Звоните нам.
   *[with] Ослабьте ремешки. Не снимайте шину. Потом звоните.
}

axis-midnight = полночь
axis-noon = полдень
schedule-day = День
schedule-clock = Время суток
schedule-long = Сколько
schedule-note = Эти часы – пример. Выберите удобное вам время. Если след долго не проходит, повторите тот же день.
schedule-note-late = Эти часы – пример. Выберите удобное вам время. Полоса после полуночи относится к прошлому дню. Если след долго не проходит, повторите тот же день.
schedule-minutes = { $count ->
    [one] минута
    [few] минуты
    [many] минут
   *[other] минуты
}
schedule-hours = { $count ->
    [one] час
    [few] часа
    [many] часов
   *[other] часа
}
schedule-times = { $count ->
    [one] { $count } раз
    [few] { $count } раза
    [many] { $count } раз
   *[other] { $count } раза
}
schedule-not-yet = Не в этот день

calendar-week = Неделя
calendar-what = Что делать
calendar-build = Привыкать.
calendar-wean = Носить меньше.
calendar-never-remove = День и ночь, не снимать.
calendar-off-to-wash = День и ночь.
calendar-off-to-exercise = День и ночь.
calendar-night-and-tasks = Ночь и тяжёлые дела.
calendar-night-and-tasks-guard = Ночь, улица, толпа.
calendar-night-and-rest = Ночь и отдых.
calendar-stretch = Время растяжки.
calendar-day = Днём.
calendar-night = Ночью.
calendar-tasks = Тяжёлые дела.
calendar-tasks-guard = Улица и толпа.
calendar-off = Без шины.
calendar-review = Приём: { $date }
calendar-key-review = Ваш приём
calendar-key-build = Привыкать
calendar-key-on = В шине
calendar-key-night = Ночью
calendar-key-needed = Часть дня
calendar-key-off = Без шины
calendar-and-so-on = Дальше так же каждую неделю.

steps-on = Как надеть
steps-off = Как снять
steps-never = Не снимайте шину сами. Её снимают и надевают в клинике.
strap-next = следующий ремешок

spot-letters = А Б В Г Д Е Ж З
skin-fine = Это нормально
skin-not = Так быть не должно
skin-fine-mark = Лёгкий след, который проходит за { $limit }
skin-fine-lines = Слабые полоски от ремешков
skin-fine-damp = Кожа чуть влажная
skin-not-mark = След, который не проходит за { $limit }
skin-not-dark = На тёмной коже: место темнее, горячее или твёрже, и это не проходит за { $limit }
skin-not-blister = Пузырь, ранка или повреждённая кожа
skin-not-rash = Сыпь или зуд, который не проходит
skin-not-wet = Кожа белая, мягкая и мокрая
skin-act-take-off = Снимите шину и позвоните нам сегодня.
skin-act-keep = { $straps ->
    [without] Позвоните нам сегодня. Поддерживайте руку.
   *[with] Ослабьте ремешки и позвоните нам сегодня. Поддерживайте руку.
}

move-splint-on = В шине
move-splint-off = Без шины
move-stop = Прекратите, если боль растёт. Если она не утихла за несколько часов, позвоните нам.
move-avoid = Пока нельзя
dose-times = { $count ->
    [one] раз
    [few] раза
    [many] раз
   *[other] раза
}
dose-a-day = { $count ->
    [one] раз в день
    [few] раза в день
    [many] раз в день
   *[other] раза в день
}
move-up-to = Через неделю, если легко: не больше { $count ->
    [one] { $count } раза
    [few] { $count } раз
    [many] { $count } раз
   *[other] { $count } раза
}.
moves-after-review = Новые движения реабилитолог даст после приёма.
moves-later = Начало – { $date }: { $exercises }.
avoid-wrist-ulnar-deviation = Не наклоняйте запястье в сторону мизинца.
avoid-wrist-radial-deviation = Не наклоняйте запястье в сторону большого пальца.
avoid-thumb-cmc-any = Не двигайте основанием большого пальца.
avoid-thumb-cmc-palmar-abduction = Не отводите большой палец вперёд от ладони.
avoid-thumb-cmc-radial-abduction = Не отводите большой палец в сторону.
avoid-thumb-mcp-any = Не сгибайте костяшку большого пальца.
avoid-thumb-mcp-flexion = Не прижимайте согнутый большой палец к ладони.
avoid-thumb-mcp-radial-deviation = Не толкайте большой палец прочь от руки.
avoid-thumb-mcp-ulnar-deviation = Не толкайте большой палец поперёк ладони.

daily-job = Дело
daily-what = Пока
daily-how = Как
daily-word-keep = Делайте
daily-word-change = Делайте так
daily-word-leave = Пока нельзя
daily-keep = Делайте как обычно.
daily-helper = Попросите кого-нибудь помочь.
daily-other-hand = Делайте другой рукой или попросите помочь.
daily-ask = Спросите реабилитолога, когда можно начать снова.
daily-pauses = Делайте понемногу. В перерывах отдыхайте.
daily-keep-dry = Не мочите шину или сразу сушите её.
daily-driving = Прежде чем водить, спросите реабилитолога и страховую компанию. Соблюдайте закон вашей страны.
daily-from-keep = Начало – { $date }: как обычно.
daily-from-change = Начало – { $date }: попробуйте делать легче.
why-risky = Пока слишком опасно для этой руки.
why-driving = Чтобы водить машину или ехать на велосипеде, нужно полностью владеть рукой.
why-swimming = Рука, кожа или шина не готовы к воде.
why-heavy = Пока слишком тяжело.
why-in-the-way = Шина мешает.
why-lateral-pinch = Прижимать большой палец к другому вредно для руки.
why-tip-pinch = Сжимать кончиками пальцев вредно для руки.
why-power-grip = Крепко сжимать вредно для руки.
why-sustained-grip = Долго держать вредно для руки.
why-wrist-deviation = Вредно наклонять запястье вбок.
why-wrist-flexion = Вредно сгибать запястье.
why-wrist-load = Опираться на согнутое запястье вредно для руки.
why-thumb-load = Это дело нагружает большой палец.
why-forearm-rotation = Крутить предплечьем вредно для руки.
why-finger-flexion = Вредно сильно сгибать пальцы.
why-elbow-flexion = Держать локоть согнутым вредно для руки.
why-impact = Удары могут повредить руку.
why-vibration = Тряска вредит руке.
why-wet = Рука или шина намокнет.
why-heat = Жар портит шину или вредит коже.
why-repetition = Много раз повторять одно движение вредно для руки.

care-wash-plastic = Мойте с мылом. Вода – не теплее { $celsius } градусов.
care-dry-plastic = Хорошо высушите, прежде чем надеть.
care-heat = Никакого жара: ни горячей воды, ни батареи, ни машины на солнце. Шина расплавится и потеряет форму.
care-wash-soft = Стирайте руками с мягким мылом. Хорошо полощите.
care-dry-soft = Сушите на ровном месте, в тени. Никогда не надевайте сырую.
care-machine = Нельзя: стиральная машина, сушилка, утюг, отбеливатель.
care-metal = Вытирайте насухо. Проверяйте, нет ли ржавчины и изгибов.
care-keep-dry = Не мочите. Накрывайте, когда моетесь.
care-straps = Убирайте ворс с ремешков. Застегните их, прежде чем мыть шину.
care-change = Не режьте, не гните и не клейте. Это делаем мы.
care-share = Никому не давайте. Шина сделана для вас.
care-bring = Берите её на каждый приём.

call-emergency = Срочно вызывайте помощь
call-today = Звоните нам сегодня
call-visit = Скажите нам на приёме
call-where = Где: { $address }
call-emergency-number = Местный номер экстренной помощи
call-telephone = Телефон
note-from = Пишет реабилитолог
initial-say = Проверено вместе с вами
initial-date = Дата
initial-name = Инициалы

length-minutes = { $count ->
    [one] { $count } минуту
    [few] { $count } минуты
    [many] { $count } минут
   *[other] { $count } минуты
}
length-hours = { $count ->
    [one] { $count } час
    [few] { $count } часа
    [many] { $count } часов
   *[other] { $count } часа
}
length-hours-minutes = { $hours } { $minutes }
length-seconds = { $count ->
    [one] { $count } секунду
    [few] { $count } секунды
    [many] { $count } секунд
   *[other] { $count } секунды
}

picture-seen = { $what ->
    [finger] { $finger ->
        [index] Указательный палец
        [middle] Средний палец
        [ring] Безымянный палец
        [little] Мизинец
       *[none] Палец
    } { $side ->
        [left] левой
       *[right] правой
    } руки
    [thumb] { $side ->
        [left] Большой палец левой руки
       *[right] Большой палец правой руки
    }
   *[hand] { $side ->
        [left] Левая рука
       *[right] Правая рука
    }
}, { $view ->
    [palmar] вид со стороны ладони.
    [radial] вид со стороны большого пальца.
    [ulnar] вид со стороны мизинца.
    [turned] вид с тыльной стороны и со стороны большого пальца.
    [palmar-radial] вид со стороны ладони и большого пальца.
    [palmar-ulnar] вид со стороны ладони и мизинца.
    [own] как видите вы сами.
   *[dorsal] вид с тыльной стороны.
}
picture-covers = { $splint }. { $from ->
    [arm] Идёт от плеча (выше локтя)
    [forearm] Идёт от предплечья
    [hand] Идёт от ладони
   *[digit] Сидит на { $finger ->
        [index] указательном пальце
        [middle] среднем пальце
        [ring] безымянном пальце
        [little] мизинце
       *[none] пальце
    },
} { $to ->
    [fingertips] до кончиков пальцев.
    [fingertip] до кончика пальца.
    [fingers] до пальцев.
    [finger] до пальца.
    [thumb-tip] до кончика большого пальца.
    [thumb] до большого пальца.
    [palm] до ладони.
   *[none] и не дальше.
}
picture-spots = Кружки с буквами показывают, куда смотреть.
picture-part = Рисунок { $number } из { $count }.
picture-held = Положение для упражнения: { $exercise }.
picture-moved = Пунктир – начало. Стрелка показывает движение: { $exercise }.
picture-inside = Кости, как будто видно сквозь кожу.
picture-structures = Отмечено: { $structures }.
picture-held-joints = Кружок с чёрточками отмечает, что удерживает или поддерживает шина: { $joints }.
picture-held-mark = Удерживает или поддерживает шина
held-knuckles = костяшки
held-middle-joints = средние суставы пальцев
held-end-joints = концевые суставы пальцев
picture-right = Сидит хорошо. Стоит галочка.
picture-wrong = Сидит плохо. Стоит крестик. { $fault }
