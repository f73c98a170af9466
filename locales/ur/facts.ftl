### The fact sheet of a condition, for patients. It is about nobody in particular: no hour, no date.
### No number, side or duration is typed here; they come in as variables.

facts-caution = یہ ورق ہاتھ کے ایک مسئلے کے بارے میں ہے۔ یہ آپ کے تھراپسٹ یا سرجن کی بات کی جگہ نہیں لیتا۔ وہ کچھ اور کہیں تو ان کی بات مانیں۔
# At the foot of each page.
facts-line = تصویروں میں { $side ->
    [left] بایاں
   *[right] دایاں
} ہاتھ ہے{ $finger ->
    [index] ، شہادت کی انگلی
    [middle] ، درمیانی انگلی
    [ring] ، انگوٹھی والی انگلی
    [little] ، چھوٹی انگلی
   *[none] {""}
}۔

## What it is

facts-what-title = یہ کیا ہے
# $what is one or two finished sentences.
facts-what = { $what }

## What the splint is for

facts-aim-title = سپلنٹ کیا کرتا ہے
# $aim is one or two finished sentences.
facts-aim = { $aim }
# $joints is a list of joints, such as "your wrist and the base of your thumb".
facts-joints = { $joints }
facts-joint-still = بغیر حرکت کے
facts-joint-steady = سہارے سے قائم
facts-joint-stopped = ایک حد تک حرکت
facts-joint-relative = ساتھ والی انگلیوں سے کم حرکت
facts-joint-coupled = ساتھ والی انگلی کے ساتھ حرکت
facts-joint-mobilised = نرمی سے کھنچاؤ
# Some splints hold these joints and others do not.
facts-joint-varies = تھامے ہوئے یا آزاد: یہ آپ کے سپلنٹ پر ہے
facts-joint-free = حرکت کے لیے آزاد

## Types of splint

facts-types-title = مناسب سپلنٹ
facts-types-intro = شروع میں یہ قسمیں مناسب ہیں۔ آپ کے ہاتھ کے لیے سپلنٹ آپ کے تھراپسٹ چنتے ہیں۔

## The usual course

facts-course-title = عام طور پر کیا ہوتا ہے
# $length is a finished length of time, such as "about six weeks".
facts-step-label = مرحلہ { $number }، { $length }:
# $wear and $ends are finished sentences.
facts-step = { $wear } { $ends }
# $length is such as "four to six weeks".
facts-length-usual = لگ بھگ { $length }
facts-length-protocol = { $length }، جیسا آپ کے سرجن کہیں
facts-length-open = کوئی مقرر وقت نہیں
facts-weeks = { $count ->
    [one] { $count } ہفتہ
   *[other] { $count } ہفتے
}
# $from and $to are numbers of weeks.
facts-weeks-range = { $from } سے { $to ->
    [one] { $to } ہفتہ
   *[other] { $to } ہفتے
}
facts-days = { $count ->
    [one] { $count } دن
   *[other] { $count } دن
}
facts-days-range = { $from } سے { $to ->
    [one] { $to } دن
   *[other] { $to } دن
}
facts-ends-therapist = اس مرحلے کا آخر مقرر نہیں۔ یہ کب ختم ہو، آپ کے تھراپسٹ طے کرتے ہیں۔
facts-ends-surgeon = اس مرحلے کا آخر مقرر نہیں۔ یہ کب ختم ہو، آپ کے سرجن طے کرتے ہیں۔
facts-ends-person = آپ خود طے کریں کہ اس کی ضرورت کب نہیں رہی۔
facts-ends-time = پھر اگلا مرحلہ شروع ہوتا ہے۔
facts-own-guide = یہ ورق آپ کا منصوبہ نہیں۔ سپلنٹ کب پہننا ہے، یہ آپ کا اپنا ہدایت نامہ بتاتا ہے۔ اسی پر عمل کریں۔
facts-clinics-differ = ہر کلینک کا طریقہ الگ ہے۔ آپ کا سپلنٹ، مرحلے اور اوقات شاید یہاں جیسے نہ ہوں۔
facts-surgeon-sets = آپریشن یا ہڈی ٹوٹنے کے بعد اوقات اور ہاتھ رکھنے کی حالت آپ کے سرجن طے کرتے ہیں۔

## When to get help

facts-help-title = مدد کب لیں
# $sign is a sign, such as "Your pinch gets weaker".
facts-visit = { $sign }: اگلے معائنے پر اپنے تھراپسٹ کو بتائیں۔
