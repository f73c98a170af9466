### The fact sheet of a condition, for patients. It is about nobody in particular: no hour, no date.
### Lengths of time are accusative in form.

facts-caution = Этот лист рассказывает о болезни руки. Он не заменяет слов реабилитолога или хирурга. Если они говорят иначе, делайте, как говорят они.
facts-line = На рисунках { $side ->
    [left] левая
   *[right] правая
} рука{ $finger ->
    [index] , указательный палец
    [middle] , средний палец
    [ring] , безымянный палец
    [little] , мизинец
   *[none] {""}
}.

facts-what-title = Что это
# $what is one or two finished sentences.
facts-what = { $what }

facts-aim-title = Что делает шина
# $aim is one or two finished sentences.
facts-aim = { $aim }
# $joints is a list of joints.
facts-joints = { $joints }
facts-joint-still = Не двигается
facts-joint-steady = Удерживается
facts-joint-stopped = Двигается до ограничителя
facts-joint-relative = Двигается меньше соседних пальцев
facts-joint-coupled = Двигается вместе с соседним пальцем
facts-joint-mobilised = Мягко тянется
facts-joint-varies = Держит шина или нет: зависит от шины
facts-joint-free = Двигается свободно

facts-types-title = Подходящие шины
facts-types-intro = Эти виды подходят в начале. Реабилитолог выбирает шину для вашей руки.

facts-course-title = Как это обычно идёт
# $length is a finished length of time.
facts-step-label = Шаг { $number }, { $length }:
# $wear and $ends are finished sentences.
facts-step = { $wear } { $ends }
facts-length-usual = примерно { $length }
facts-length-protocol = { $length }, как скажет хирург
facts-length-open = без точного срока
facts-weeks =
    { $count ->
        [one] { $count } неделя
        [few] { $count } недели
        [many] { $count } недель
       *[other] { $count } недели
    }
facts-weeks-range =
    { $from }–{ $to ->
        [one] { $to } неделя
        [few] { $to } недели
        [many] { $to } недель
       *[other] { $to } недели
    }
facts-days = { $count ->
    [one] { $count } день
    [few] { $count } дня
    [many] { $count } дней
   *[other] { $count } дня
}
facts-days-range = { $from }–{ $to ->
    [one] { $to } день
    [few] { $to } дня
    [many] { $to } дней
   *[other] { $to } дня
}
facts-ends-therapist = У этого шага нет точного конца. Когда он закончен, решает реабилитолог.
facts-ends-surgeon = У этого шага нет точного конца. Когда он закончен, решает хирург.
facts-ends-person = Вы решаете, когда шина больше не нужна.
facts-ends-time = Потом начинается следующий шаг.
facts-own-guide = Этот лист – не ваш план. Когда носить шину, говорит ваша памятка. Делайте, как в ней сказано.
facts-clinics-differ = Клиники работают по-разному. Ваша шина, шаги и сроки могут быть не такими, как здесь.
facts-surgeon-sets = После операции или перелома сроки и положение руки задаёт хирург.

facts-help-title = Когда искать помощь
# $sign is a sign.
facts-visit = { $sign }: скажите реабилитологу на следующем приёме.
