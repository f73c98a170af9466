### Reminders for the calendar of a telephone. The first line of each shows on a locked screen, where others can read it:
### no splint, no part of the body that is treated, no condition and no name in it. The pronoun is feminine, for the
### splint, which is not named.
### $hand: only = only one hand is treated, do not say which; left, right and both, where both are.

reminder-change = { $hand ->
    [left] اليسرى: أوقات جديدة ابتداء من اليوم.
    [right] اليمنى: أوقات جديدة ابتداء من اليوم.
    [both] اليسرى واليمنى: أوقات جديدة ابتداء من اليوم.
   *[only] أوقات جديدة ابتداء من اليوم.
}
reminder-visit = زيارتك.
reminder-off = { $hand ->
    [left] اليسرى: حان وقت خلعها.
    [right] اليمنى: حان وقت خلعها.
    [both] حان وقت خلع الاثنتين.
   *[only] حان وقت خلعها.
}
reminder-skin = { $hand ->
    [left] اليسرى: انظر إلى جلدك.
    [right] اليمنى: انظر إلى جلدك.
    [both] اليسرى واليمنى: انظر إلى جلدك.
   *[only] انظر إلى جلدك.
}
reminder-on = { $hand ->
    [left] اليسرى: حان وقت ارتدائها.
    [right] اليمنى: حان وقت ارتدائها.
    [both] حان وقت ارتداء الاثنتين.
   *[only] حان وقت ارتدائها.
}
reminder-exercise = { $hand ->
    [left] اليسرى: حان وقت تمارينك.
    [right] اليمنى: حان وقت تمارينك.
    [both] اليسرى واليمنى: حان وقت تمارينك.
   *[only] حان وقت تمارينك.
}

## The note of a reminder

reminder-change-sheet = في دليلك الأوقات الجديدة.
# $checks is how many times a day.
reminder-checks = { $checks ->
    [zero] انظر إلى جلدك { $checks } مرة في اليوم.
    [one] انظر إلى جلدك مرة واحدة في اليوم.
    [two] انظر إلى جلدك مرتين في اليوم.
    [few] انظر إلى جلدك { $checks } مرات في اليوم.
   *[other] انظر إلى جلدك { $checks } مرة في اليوم.
} في دليلك المواضع التي تنظر إليها، وما ليس طبيعيا.
reminder-skin-again = إذا بقيت علامة على الجلد أطول مما يجب، فكرر برنامج اليوم نفسه، مهما قالت التذكيرات التالية.
# $length is a finished length of time.
reminder-wear = { $hand ->
    [left] اليسرى: ارتدها لمدة { $length }.
    [right] اليمنى: ارتدها لمدة { $length }.
   *[only] ارتدها لمدة { $length }.
}
reminder-exercise-sheet = في دليلك طريقة أدائها.
reminder-back-on = { $hand ->
    [left] اليسرى: ارتدها من جديد عندما تنتهي.
    [right] اليمنى: ارتدها من جديد عندما تنتهي.
    [both] ارتد الاثنتين من جديد عندما تنتهي.
   *[only] ارتدها من جديد عندما تنتهي.
}
reminder-times = هذا الوقت مثال. اختر وقتا يناسبك.
reminder-caution = إذا قال لك معالجك أو طبيبك الجراح شيئا مختلفا، فاعمل بما يقول.
reminder-call = عيادتك: { $telephone }
# $hours is when the telephone is answered.
reminder-call-hours = عيادتك: { $telephone } ({ $hours })

## Only where the therapist asks for detail

# $where is "اليد اليمنى", $orthosis the splint's name.
reminder-about = { $where }: { $orthosis }.
# $exercise is the exercise's name, $count how many times, $place "الجبيرة على اليد" or "بلا جبيرة".
reminder-dose = { $exercise }: { $count ->
    [zero] { $count } مرة
    [one] مرة واحدة
    [two] مرتان
    [few] { $count } مرات
   *[other] { $count } مرة
}. { $place }.
# $name is the person's name.
reminder-person = إلى { $name }.
