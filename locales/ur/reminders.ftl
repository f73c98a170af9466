### Reminders for the calendar of a telephone. The first line of each shows on a locked screen, where others can read it:
### no splint, no part of the body that is treated, no condition and no name in it.
### $hand: only = only one hand is treated, do not say which; left, right and both, where both are.

reminder-change = { $hand ->
    [left] بایاں: آج سے نئے اوقات۔
    [right] دایاں: آج سے نئے اوقات۔
    [both] بایاں اور دایاں: آج سے نئے اوقات۔
   *[only] آج سے نئے اوقات۔
}
reminder-visit = آپ کا معائنہ۔
reminder-off = { $hand ->
    [left] بایاں: اتارنے کا وقت ہے۔
    [right] دایاں: اتارنے کا وقت ہے۔
    [both] دونوں اتارنے کا وقت ہے۔
   *[only] اتارنے کا وقت ہے۔
}
reminder-skin = { $hand ->
    [left] بایاں: جلد دیکھیں۔
    [right] دایاں: جلد دیکھیں۔
    [both] بایاں اور دایاں: جلد دیکھیں۔
   *[only] جلد دیکھیں۔
}
reminder-on = { $hand ->
    [left] بایاں: پہننے کا وقت ہے۔
    [right] دایاں: پہننے کا وقت ہے۔
    [both] دونوں پہننے کا وقت ہے۔
   *[only] پہننے کا وقت ہے۔
}
reminder-exercise = { $hand ->
    [left] بایاں: ورزش کا وقت ہے۔
    [right] دایاں: ورزش کا وقت ہے۔
    [both] بایاں اور دایاں: ورزش کا وقت ہے۔
   *[only] ورزش کا وقت ہے۔
}

## The note of a reminder

reminder-change-sheet = نئے اوقات آپ کے ورق پر ہیں۔
# $checks is how many times a day.
reminder-checks = { $checks ->
    [one] دن میں ایک بار جلد دیکھیں۔
   *[other] دن میں { $checks } بار جلد دیکھیں۔
} آپ کا ورق دکھاتا ہے کہ کہاں دیکھنا ہے، اور کیا ٹھیک نہیں۔
reminder-skin-again = اگر نشان زیادہ دیر رہے تو وہی دن دوبارہ کریں، چاہے اگلی یاد دہانیاں کچھ بھی کہیں۔
# $length is a finished length of time.
reminder-wear = { $hand ->
    [left] بایاں: { $length } پہنیں۔
    [right] دایاں: { $length } پہنیں۔
   *[only] { $length } پہنیں۔
}
reminder-exercise-sheet = طریقہ آپ کے ورق پر ہے۔
reminder-back-on = { $hand ->
    [left] بایاں: ختم کر کے پھر پہنیں۔
    [right] دایاں: ختم کر کے پھر پہنیں۔
    [both] ختم کر کے دونوں پھر پہنیں۔
   *[only] ختم کر کے پھر پہنیں۔
}
reminder-times = یہ وقت مثال ہے۔ اپنی سہولت کا وقت چنیں۔
reminder-caution = اگر آپ کے تھراپسٹ یا سرجن کچھ اور کہیں تو ان کی بات مانیں۔
reminder-call = آپ کا کلینک: { $telephone }
# $hours is when the telephone is answered.
reminder-call-hours = آپ کا کلینک: { $telephone } ({ $hours })

## Only where the therapist asks for detail

# $where is "Right hand", $orthosis the splint's name.
reminder-about = { $where }: { $orthosis }۔
# $exercise is the exercise's name, $count how many times, $place "Splint on" or "Splint off".
reminder-dose = { $exercise }: { $count ->
    [one] { $count } بار
   *[other] { $count } بار
}۔ { $place }۔
# $name is the person's name.
reminder-person = { $name } کے لیے۔
