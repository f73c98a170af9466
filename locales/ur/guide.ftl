### The guide: everything that is not about one condition, splint, activity or exercise.
### No date, hour, number, side or angle is typed here; they come in as variables.
### $side is left or right and only chooses between wordings.
### Address: آپ with the polite imperative; sentences are worded so that the reader's gender does not show.
### The splint is masculine. Lengths of time stand in the dictionary form, without a change of case.

## Title and furniture

# $orthosis is the splint's name, such as "long thumb splint".
guide-title = ہدایات: { $orthosis }
# $name is the person's name. Stands at the foot of every page.
guide-made-for = صرف { $name } کے لیے۔ { $side ->
    [left] بایاں
   *[right] دایاں
} ہاتھ{ $finger ->
    [index] ، شہادت کی انگلی
    [middle] ، درمیانی انگلی
    [ring] ، انگوٹھی والی انگلی
    [little] ، چھوٹی انگلی
   *[none] {""}
}۔
guide-made-for-nobody = صرف ایک شخص کے لیے۔ { $side ->
    [left] بایاں
   *[right] دایاں
} ہاتھ{ $finger ->
    [index] ، شہادت کی انگلی
    [middle] ، درمیانی انگلی
    [ring] ، انگوٹھی والی انگلی
    [little] ، چھوٹی انگلی
   *[none] {""}
}۔
guide-caution = یہ ہدایت نامہ آپ کے تھراپسٹ یا سرجن کی بات کی جگہ نہیں لیتا۔ وہ کچھ اور کہیں تو ان کی بات مانیں۔ سپلنٹ کسی اور کو نہ دیں۔
# Printed on every sheet in a language that no qualified translator has signed off.
guide-drafted = یہ ترجمہ کسی مستند مترجم نے نہیں جانچا۔
guide-outdated = ترجمے کے بعد اس ورق کا انگریزی متن بدل گیا ہے۔ اسے استعمال کرنے سے پہلے اپنے کلینک سے پوچھیں۔
guide-page = صفحہ { $page }، کل { $pages }
# Where a section stands, in the line of contents.
contents-page = ، ص { $page }

## Which hand

hand-left = بایاں ہاتھ
hand-right = دایاں ہاتھ
hand-alt = { $side ->
    [left] یہ سپلنٹ آپ کے بائیں ہاتھ کے لیے ہے۔
   *[right] یہ سپلنٹ آپ کے دائیں ہاتھ کے لیے ہے۔
}

## Section titles

glance-title = ایک نظر میں
dates-title = دن بہ دن
on-off-title = پہننا اور اتارنا
on-off-intro = { $washing ->
    [never] یہ صرف آپ کا کلینک کرتا ہے۔
   *[freely] میز کے پاس بیٹھیں۔ دوسرے ہاتھ سے کام لیں۔
}
skin-title = اپنی جلد دیکھیں
skin-intro = { $checks ->
    [one] دن میں ایک بار غور سے دیکھیں۔
   *[other] دن میں { $checks } بار غور سے دیکھیں۔
} اچھی روشنی میں دیکھیں۔ { $washing ->
    [supported] جب بھی ہاتھ دھونے کے لیے سپلنٹ اتاریں، یہ جگہیں دیکھیں۔ باقی وقت سپلنٹ کے کنارے اور اپنی انگلیوں اور انگوٹھے کے سرے دیکھیں:
    [never] دیکھنے کے لیے سپلنٹ نہ اتاریں۔ سپلنٹ کے کنارے اور اپنی انگلیوں اور انگوٹھے کے سرے دیکھیں:
   *[freely] یہ جگہیں دیکھیں:
}
move-title = اپنا ہاتھ ہلائیں
move-intro = آہستہ ہلائیں۔ کسی حرکت میں کبھی زبردستی نہ کریں۔
daily-title = روز کے کام
care-title = سپلنٹ کی دیکھ بھال
note-title = آپ کے تھراپسٹ کی طرف سے
call-title = فون کب کریں
call-intro = یہ صفحہ ایسی جگہ رکھیں جہاں یہ نظر آئے۔

## Facts on the first page

fact-splint = کون سا سپلنٹ
# $finger is index, middle, ring or little and only chooses between wordings.
finger-name = { $finger ->
    [index] شہادت کی انگلی، انگوٹھے کے پاس
    [middle] درمیانی انگلی
    [ring] انگوٹھی والی انگلی
   *[little] چھوٹی انگلی
}
fact-for = کس لیے ہے
fact-fitted = لگانے کی تاریخ
fact-full = پورا وقت: کب سے
fact-full-more = پہلے وقت تھوڑا تھوڑا بڑھائیں۔ دن بہ دن کا جدول دیکھیں۔
fact-review = اگلا معائنہ
# $joints is a list such as "the tip of your thumb and your knuckles"; $count is how many.
fact-free = حرکت کے لیے آزاد: { $joints }۔

say-date = { $date }
say-date-time = { $date }، { $time }
say-short-date = { $date }
date-range = { $from } سے { $to } تک
# $to is the date of the next visit.
date-until-visit = { $from } سے { $to } کے معائنے تک
# From one clock time to another.
time-range = { $from } سے { $to } تک

## Joints, as the person would say them

joint-elbow = آپ کی کہنی
joint-forearm = نچلے بازو کا گھومنا
joint-wrist = آپ کی کلائی
joint-thumb-cmc = آپ کے انگوٹھے کی جڑ
joint-thumb-mcp = آپ کے انگوٹھے کا ہتھیلی والا جوڑ
joint-thumb-ip = آپ کے انگوٹھے کا سرا
joint-fingers-mcp = آپ کی انگلیاں
joint-fingers-pip = آپ کی انگلیوں کے درمیانی جوڑ
joint-fingers-dip = آپ کی انگلیوں کے سرے
# The affected finger.
joint-finger-mcp = متاثرہ انگلی کا ہتھیلی والا جوڑ
joint-finger-pip = متاثرہ انگلی کا درمیانی جوڑ
joint-finger-dip = متاثرہ انگلی کا سرا
joint-other-fingers-mcp = آپ کی باقی انگلیاں
joint-other-fingers-pip = آپ کی باقی انگلیوں کے درمیانی جوڑ
joint-other-fingers-dip = آپ کی باقی انگلیوں کے سرے
joint-index-mcp = شہادت کی انگلی کا ہتھیلی والا جوڑ
joint-middle-mcp = درمیانی انگلی کا ہتھیلی والا جوڑ
joint-ring-mcp = انگوٹھی والی انگلی کا ہتھیلی والا جوڑ
joint-little-mcp = چھوٹی انگلی کا ہتھیلی والا جوڑ
joint-index-pip = شہادت کی انگلی کا درمیانی جوڑ
joint-middle-pip = درمیانی انگلی کا درمیانی جوڑ
joint-ring-pip = انگوٹھی والی انگلی کا درمیانی جوڑ
joint-little-pip = چھوٹی انگلی کا درمیانی جوڑ
joint-index-dip = شہادت کی انگلی کا سرا
joint-middle-dip = درمیانی انگلی کا سرا
joint-ring-dip = انگوٹھی والی انگلی کا سرا
joint-little-dip = چھوٹی انگلی کا سرا

## When to wear it

strip-days = دن { $from } سے { $to } تک
strip-from-day = دن { $from } سے
strip-weeks = ہفتہ { $from } سے { $to } تک
strip-build = ہر روز تھوڑا سا وقت بڑھائیں۔ ابھی رات کو نہ پہنیں۔
strip-key-on = سپلنٹ پہنا ہوا
strip-key-off = سپلنٹ اترا ہوا
strip-key-needed = زور والے کاموں کے لیے پہنیں
# In phases that guard what heals.
strip-key-guard = گھر سے باہر اور بھیڑ میں پہنیں
strip-key-rest = آرام کے وقت پہنیں
strip-key-part = کچھ وقت پہنیں
# $label is a row's label, $times a list of clock times.
strip-alt = { $label }: سپلنٹ پہننے کا وقت: { $times }۔
strip-alt-none = { $label }: سپلنٹ پہننے کا کوئی مقرر وقت نہیں۔
wear-never-remove = دن رات پہنیں۔ اسے نہ اتاریں۔
# $times is how often it comes off in a day.
wear-off-to-wash = دن رات پہنیں۔ صرف ہاتھ دھونے کے لیے اتاریں{ $times ->
    [one] ، دن میں ایک بار۔
   *[other] ، دن میں { $times } بار۔
}
wear-off-to-exercise = دن رات پہنیں۔ صرف ہاتھ دھونے اور ورزش کے لیے اتاریں{ $times ->
    [one] ، دن میں ایک بار۔
   *[other] ، دن میں { $times } بار۔
}
wear-night-and-tasks = رات بھر پہنیں۔ دن میں زور والے کاموں کے لیے پہنیں۔
# In phases that guard what heals: hard tasks wait.
wear-night-and-tasks-guard = رات بھر پہنیں۔ دن میں گھر سے باہر، بھیڑ میں اور ہر اس کام میں پہنیں جس کی آپ کو اجازت ہے۔
wear-night-and-rest = رات بھر پہنیں۔ دن میں آرام کے وقت پہنیں۔ ہاتھ سے کام لیتے وقت اتار دیں۔
# $bouts is how many times a day, $each a finished length of time.
wear-stretch = { $bouts ->
    [one] دن میں ایک بار پہنیں
   *[other] دن میں { $bouts } بار پہنیں
}، ہر بار { $each }۔ بیچ میں اتار دیں۔
wear-day = سارا دن پہنیں۔ رات کو اتار دیں۔
wear-night = رات بھر پہنیں۔ دن میں اتار دیں۔
wear-tasks = صرف زور والے کاموں کے لیے پہنیں۔ رات کو اتار دیں۔
wear-tasks-guard = گھر سے باہر، بھیڑ میں اور ہر اس کام میں پہنیں جس کی آپ کو اجازت ہے۔ رات کو اتار دیں۔
wear-off = نہ پہنیں۔
# $length is how long it is worn while awake.
wear-wean-night = سو کر اٹھنے کے بعد { $length } پہنیں، اور رات بھر پہنیں۔
wear-wean-day = سو کر اٹھنے کے بعد { $length } پہنیں۔ رات کو اتار دیں۔

## What comes after the next visit

later-label = جب آپ کے تھراپسٹ کہیں
later-label-surgeon = جب آپ کے سرجن کہیں
later-label-next = بعد میں، جب ہم کہیں
# This splint does not suit that stage.
later-other = دوسرے سپلنٹ کے ساتھ۔
later-never-remove = دن رات، بغیر وقفے کے۔
later-off-to-wash = دن رات، صرف ہاتھ دھونے کے لیے اتاریں۔
later-off-to-exercise = دن رات، صرف ہاتھ دھونے اور ورزش کے لیے اتاریں۔
later-night-and-tasks = رات کو، اور زور والے کاموں کے لیے۔
later-night-and-tasks-guard = رات کو، اور گھر سے باہر، اور بھیڑ میں۔
later-night-and-rest = رات کو، اور آرام کے وقت۔
later-stretch = دن میں چند بار، کھنچاؤ کے لیے۔
later-day = صرف دن میں۔
later-night = صرف رات کو۔
later-tasks = صرف زور والے کاموں کے لیے۔
later-tasks-guard = صرف گھر سے باہر اور بھیڑ میں۔
later-off = سپلنٹ کے بغیر۔
later-wean = قدم بہ قدم، ہر بار پہلے سے کم۔

## The stop box

warning-title-take-off = اسے اتاریں اور ہمیں فون کریں اگر:
warning-title-supported = { $straps ->
    [without] ہمیں فون کریں اگر:
   *[with] پٹے ڈھیلے کر کے ہمیں فون کریں اگر:
}
warning-title-keep-on = { $straps ->
    [without] اسے پہنے رکھیں اور ہمیں فون کریں اگر:
   *[with] پٹے ڈھیلے کریں، اسے پہنے رکھیں اور ہمیں فون کریں اگر:
}
# Followed by the signs that cannot wait. $number is the emergency number.
warning-emergency = ایمرجنسی، { $number } پر فون کریں اگر:
warning-emergency-no-number = ایمرجنسی، اسی وقت مدد لیں اگر:
warning-act-take-off = اسے اتاریں۔ پھر فون کریں۔
warning-act-supported = { $straps ->
    [without] متاثرہ حصے کو سہارا دیے رکھیں۔ پھر فون کریں۔
   *[with] پٹے ڈھیلے کریں۔ متاثرہ حصے کو سہارا دیے رکھیں۔ پھر فون کریں۔
}
warning-act-keep-on = { $straps ->
    [without] اسے نہ اتاریں۔ ہمیں فون کریں۔
   *[with] پٹے ڈھیلے کریں۔ اسے نہ اتاریں۔ پھر فون کریں۔
}

## Day by day

axis-midnight = آدھی رات
axis-noon = دوپہر
schedule-day = دن
schedule-clock = کس وقت
schedule-long = کتنی دیر
schedule-note = یہ اوقات مثال ہیں۔ اپنی سہولت کا وقت چنیں۔ اگر نشان زیادہ دیر رہے تو وہی دن دوبارہ کریں۔
schedule-note-late = یہ اوقات مثال ہیں۔ اپنی سہولت کا وقت چنیں۔ آدھی رات کے بعد کی رنگین پٹی پچھلے دن کا حصہ ہے۔ اگر نشان زیادہ دیر رہے تو وہی دن دوبارہ کریں۔
schedule-minutes = { $count ->
    [one] منٹ
   *[other] منٹ
}
schedule-hours = { $count ->
    [one] گھنٹہ
   *[other] گھنٹے
}
schedule-times = { $count ->
    [one] ایک بار
   *[other] { $count } بار
}
schedule-not-yet = اس دن نہیں

calendar-week = ہفتہ
calendar-what = کیا کریں
calendar-build = وقت بڑھائیں۔
calendar-wean = وقت گھٹائیں۔
calendar-never-remove = دن رات، بغیر وقفے کے۔
calendar-off-to-wash = دن رات۔
calendar-off-to-exercise = دن رات۔
calendar-night-and-tasks = راتیں اور زور والے کام۔
calendar-night-and-tasks-guard = راتیں، گھر سے باہر، بھیڑ۔
calendar-night-and-rest = راتیں اور آرام۔
calendar-stretch = کھنچاؤ کے وقت۔
calendar-day = دن میں۔
calendar-night = راتیں۔
calendar-tasks = زور والے کام۔
calendar-tasks-guard = گھر سے باہر اور بھیڑ۔
calendar-off = سپلنٹ نہیں۔
calendar-review = معائنہ: { $date }۔
calendar-key-review = آپ کا معائنہ
calendar-key-build = وقت بڑھائیں
calendar-key-on = پہنیں
calendar-key-night = راتیں
calendar-key-needed = دن کا کچھ حصہ
calendar-key-off = نہ پہنیں
calendar-and-so-on = ہر ہفتے اسی طرح جاری رکھیں۔

## Putting on and taking off

steps-on = پہنیں
steps-off = اتاریں
# For a splint that only the clinic takes off.
steps-never = سپلنٹ خود نہ اتاریں۔ اسے آپ کا کلینک اتارتا اور پہناتا ہے۔
strap-next = اگلا پٹا

## Skin

# Letters that mark the places: the usual Urdu list order (abjad), whose shapes differ clearly.
spot-letters = ا ب ج د ہ و ز ح
skin-fine = یہ ٹھیک ہے
skin-not = یہ ٹھیک نہیں
skin-fine-mark = ہلکا نشان جو { $limit } کے اندر مٹ جائے
skin-fine-lines = پٹوں کی ہلکی لکیریں
skin-fine-damp = جلد جو ذرا سی نم ہو
skin-not-mark = نشان جو { $limit } سے زیادہ رہے
# Redness does not show on dark skin.
skin-not-dark = گہری رنگت والی جلد پر: جگہ جو باقی جلد سے گہری، گرم یا سخت ہو، اور { $limit } سے زیادہ رہے
skin-not-blister = چھالا، زخم یا پھٹی جلد
skin-not-rash = دانے، یا خارش جو نہ جائے
skin-not-wet = سفید، نرم اور گیلی جلد
skin-act-take-off = سپلنٹ اتاریں اور آج ہی ہمیں فون کریں۔
skin-act-keep = { $straps ->
    [without] آج ہی ہمیں فون کریں۔ اپنے ہاتھ کو سہارا دیے رکھیں۔
   *[with] پٹے ڈھیلے کریں اور آج ہی ہمیں فون کریں۔ اپنے ہاتھ کو سہارا دیے رکھیں۔
}

## Moving

move-splint-on = سپلنٹ پہن کر
move-splint-off = سپلنٹ اتار کر
move-stop = درد بڑھے تو رک جائیں۔ اگر چند گھنٹوں میں کم نہ ہو تو ہمیں فون کریں۔
move-avoid = ابھی نہیں
dose-times = { $count ->
    [one] بار
   *[other] بار
}
dose-a-day = { $count ->
    [one] بار روزانہ
   *[other] بار روزانہ
}
# $count is a number of times, after the first week.
move-up-to = ایک ہفتے بعد، اگر آسان لگے: { $count ->
    [one] زیادہ سے زیادہ { $count } بار
   *[other] زیادہ سے زیادہ { $count } بار
}۔
moves-after-review = معائنے کے بعد آپ کے تھراپسٹ آپ کو نئی حرکتیں بتائیں گے۔
# $date is when they begin, $exercises a list of names.
moves-later = { $date } سے: { $exercises }۔
avoid-wrist-ulnar-deviation = اپنی کلائی چھوٹی انگلی کی طرف نہ جھکائیں۔
avoid-wrist-radial-deviation = اپنی کلائی انگوٹھے کی طرف نہ جھکائیں۔
avoid-thumb-cmc-any = اپنے انگوٹھے کی جڑ نہ ہلائیں۔
avoid-thumb-cmc-palmar-abduction = اپنے انگوٹھے کو ہتھیلی سے دور نہ پھیلائیں۔
avoid-thumb-cmc-radial-abduction = اپنے انگوٹھے کو باہر ایک طرف نہ پھیلائیں۔
avoid-thumb-mcp-any = اپنے انگوٹھے کا ہتھیلی والا جوڑ نہ موڑیں۔
avoid-thumb-mcp-flexion = اپنے انگوٹھے کو ہتھیلی میں نہ موڑیں۔
avoid-thumb-mcp-radial-deviation = اپنے انگوٹھے کو ہاتھ سے دور نہ دھکیلیں۔
avoid-thumb-mcp-ulnar-deviation = اپنے انگوٹھے کو ہاتھ کے اوپر سے انگلیوں کی طرف نہ دھکیلیں۔

## Daily life

daily-job = آپ کا کام
daily-what = ابھی کے لیے
daily-how = کیسے
daily-word-keep = کرتے رہیں
daily-word-change = اس طرح کریں
daily-word-leave = ابھی نہ کریں
daily-keep = ہمیشہ کی طرح کریں۔
daily-helper = کسی سے مدد لیں۔
daily-other-hand = دوسرے ہاتھ سے کریں، یا کسی سے مدد لیں۔
daily-ask = اپنے تھراپسٹ سے پوچھیں کہ دوبارہ کب شروع کریں۔
daily-pauses = تھوڑا تھوڑا کریں۔ بیچ میں آرام کریں۔
daily-keep-dry = سپلنٹ کو خشک رکھیں، یا اسی وقت سکھا لیں۔
daily-driving = گاڑی چلانے سے پہلے اپنے تھراپسٹ اور انشورنس کمپنی سے پوچھیں۔ اپنی جگہ کے قانون پر چلیں۔
# $date is when a later phase begins.
daily-from-keep = { $date } سے: ہمیشہ کی طرح کریں۔
daily-from-change = { $date } سے: آسان طریقے سے کر کے دیکھیں۔
why-risky = ابھی اس ہاتھ کے لیے خطرہ بہت زیادہ ہے۔
why-driving = گاڑی یا سائیکل چلانے کے لیے پورا قابو چاہیے۔
why-swimming = آپ کا ہاتھ، جلد یا سپلنٹ ابھی پانی کے لیے تیار نہیں۔
why-heavy = ابھی بہت بھاری ہے۔
why-in-the-way = سپلنٹ رکاوٹ بنتا ہے۔
why-lateral-pinch = انگوٹھا انگلی پر دبانے سے ہاتھ پر زور پڑتا ہے۔
why-tip-pinch = انگلیوں کے سروں سے چٹکی لینے سے ہاتھ پر زور پڑتا ہے۔
why-power-grip = سخت پکڑ سے ہاتھ پر زور پڑتا ہے۔
why-sustained-grip = دیر تک پکڑے رکھنے سے ہاتھ پر زور پڑتا ہے۔
why-wrist-deviation = کلائی ایک طرف جھکانے سے اس پر زور پڑتا ہے۔
why-wrist-flexion = کلائی موڑنے سے اس پر زور پڑتا ہے۔
why-wrist-load = مڑی کلائی پر وزن ڈالنے سے ہاتھ پر زور پڑتا ہے۔
why-thumb-load = اس کام سے انگوٹھے پر بوجھ پڑتا ہے۔
why-forearm-rotation = بازو گھمانے سے ہاتھ پر زور پڑتا ہے۔
why-finger-flexion = انگلیاں زور سے موڑنے سے ان پر زور پڑتا ہے۔
why-elbow-flexion = کہنی مڑی رہنے سے بازو پر زور پڑتا ہے۔
why-impact = چوٹ یا دھکے سے ہاتھ کو نقصان ہو سکتا ہے۔
why-vibration = تھرتھراہٹ سے ہاتھ پر زور پڑتا ہے۔
why-wet = آپ کا ہاتھ یا سپلنٹ گیلا ہوتا ہے۔
why-heat = گرمی سپلنٹ خراب کرتی ہے یا آپ کی جلد کو نقصان دیتی ہے۔
why-repetition = ایک ہی حرکت بار بار کرنے سے ہاتھ پر زور پڑتا ہے۔

## Looking after the splint

# $celsius is a temperature in degrees.
care-wash-plastic = اسے صابن اور پانی سے دھوئیں۔ پانی { $celsius } ڈگری سے زیادہ گرم نہ ہو۔
care-dry-plastic = پہننے سے پہلے اسے اچھی طرح سکھائیں۔
care-heat = گرمی نہ دیں۔ نہ گرم پانی، نہ ہیٹر، نہ دھوپ میں کھڑی گاڑی۔ یہ پگھل کر شکل بدل لیتا ہے۔
care-wash-soft = اسے ہلکے صابن سے ہاتھ سے دھوئیں۔ اچھی طرح کھنگالیں۔
care-dry-soft = اسے سائے میں بچھا کر سکھائیں۔ نم حالت میں کبھی نہ پہنیں۔
care-machine = واشنگ مشین، ڈرائر، استری یا بلیچ استعمال نہ کریں۔
care-metal = پونچھ کر خشک کریں۔ زنگ یا ٹیڑھا پن دیکھیں۔
care-keep-dry = اسے خشک رکھیں۔ نہاتے دھوتے وقت اسے ڈھانپیں۔
care-straps = پٹوں سے روئیں صاف کریں۔ سپلنٹ دھونے سے پہلے پٹے بند کر دیں۔
care-change = اسے نہ کاٹیں، نہ موڑیں، نہ گوند لگائیں۔ یہ ہم کرتے ہیں۔
care-share = یہ کسی کو نہ دیں۔ یہ آپ کے لیے بنا ہے۔
care-bring = ہر معائنے پر اسے ساتھ لائیں۔

## Calling

call-emergency = ایمرجنسی: ابھی مدد لیں
call-today = آج ہی ہمیں فون کریں
call-visit = معائنے پر ہمیں بتائیں
call-where = پتا: { $address }
# Stands where no emergency number is known.
call-emergency-number = آپ کے علاقے کا ایمرجنسی نمبر
call-telephone = فون
note-from = آپ کے تھراپسٹ لکھتے ہیں
# Followed by a line to write on.
initial-say = آپ کے ساتھ مل کر دیکھا گیا
initial-date = تاریخ
initial-name = مختصر دستخط

## Lengths of time

length-minutes = { $count ->
    [one] { $count } منٹ
   *[other] { $count } منٹ
}
length-hours = { $count ->
    [one] { $count } گھنٹہ
   *[other] { $count } گھنٹے
}
length-hours-minutes = { $hours } { $minutes }
length-seconds = { $count ->
    [one] { $count } سیکنڈ
   *[other] { $count } سیکنڈ
}

# What a picture shows, for who cannot see it.
# $view: dorsal = the back of the hand; palmar = the palm; radial = thumb side; ulnar = little-finger side; turned = half way
# between back and thumb side; own = as the wearer sees it.
picture-seen = { $what ->
    [finger] { $side ->
        [left] بائیں
       *[right] دائیں
    } ہاتھ کی { $finger ->
        [index] شہادت کی انگلی
        [middle] درمیانی انگلی
        [ring] انگوٹھی والی انگلی
        [little] چھوٹی انگلی
       *[none] انگلی
    }
    [thumb] { $side ->
        [left] بایاں انگوٹھا
       *[right] دایاں انگوٹھا
    }
   *[hand] { $side ->
        [left] بایاں ہاتھ
       *[right] دایاں ہاتھ
    }
}، { $view ->
    [palmar] ہتھیلی کی طرف سے۔
    [radial] انگوٹھے کی طرف سے۔
    [ulnar] چھوٹی انگلی کی طرف سے۔
    [turned] پشت اور انگوٹھے کی طرف سے۔
    [palmar-radial] ہتھیلی اور انگوٹھے کی طرف سے۔
    [palmar-ulnar] ہتھیلی اور چھوٹی انگلی کی طرف سے۔
    [own] جیسے یہ آپ کو خود نظر آتا ہے۔
   *[dorsal] پشت کی طرف سے۔
}
picture-covers = { $splint }۔ { $from ->
    [arm] پہنچ: اوپری بازو سے
    [forearm] پہنچ: نچلے بازو سے
    [hand] پہنچ: ہتھیلی سے
   *[digit] جگہ: { $finger ->
        [index] شہادت کی انگلی
        [middle] درمیانی انگلی
        [ring] انگوٹھی والی انگلی
        [little] چھوٹی انگلی
       *[none] انگلی یا انگوٹھا
    }،
} { $to ->
    [fingertips] انگلیوں کے سروں تک۔
    [fingertip] انگلی کے سرے تک۔
    [fingers] انگلیوں تک۔
    [finger] انگلی تک۔
    [thumb-tip] انگوٹھے کے سرے تک۔
    [thumb] انگوٹھے تک۔
    [palm] ہتھیلی تک۔
   *[none] اس سے آگے نہیں۔
}
picture-spots = حروف والے دائرے دکھاتے ہیں کہ کہاں دیکھنا ہے۔
# One of several pictures of a movement.
picture-part = تصویر { $number }، کل { $count }۔
picture-held = اس ورزش کی حالت: { $exercise }۔
picture-moved = ٹوٹی لکیر: شروع۔ تیر حرکت دکھاتا ہے: { $exercise }۔
picture-inside = ہڈیاں، جیسے جلد کے پار نظر آئیں۔
picture-structures = نشان لگے ہیں: { $structures }۔
picture-held-joints = لکیروں والا دائرہ دکھاتا ہے کہ سپلنٹ کسے تھامتا یا سہارا دیتا ہے: { $joints }۔
# The same mark, in a label.
picture-held-mark = سپلنٹ کا تھاما یا سہارا دیا ہوا
# Rows of joints of all fingers, in the list above.
held-knuckles = آپ کی انگلیوں کے ہتھیلی والے جوڑ
held-middle-joints = آپ کی انگلیوں کے درمیانی جوڑ
held-end-joints = آپ کی انگلیوں کے آخری جوڑ
# A pair of pictures: how a splint sits, and a way in which it does not.
picture-right = یہ ٹھیک بیٹھا ہے۔ ٹک کا نشان یہی بتاتا ہے۔
picture-wrong = یہ غلط بیٹھا ہے۔ کاٹے کا نشان یہی بتاتا ہے۔ { $fault }
