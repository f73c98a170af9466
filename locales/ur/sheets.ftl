### The papers beside the guide: card, diary, exercises, letter.
### No date, hour, number, side or angle is typed here; they come in as variables.

# Stands at the end of each of these papers.
sheet-caution = یہ ورق آپ کے پورے ہدایت نامے کی جگہ نہیں لیتا، نہ آپ کے تھراپسٹ یا سرجن کی بات کی۔ وہ کچھ اور کہیں تو ان کی بات مانیں۔

## The card

card-caution = یہ کارڈ ہدایت نامے کے ساتھ ہے۔ تھراپسٹ کی بات پہلے ہے۔
card-title = آپ کا سپلنٹ
card-description = سپلنٹ کب پہنیں، کیسے پہنیں، فون کب کریں۔
# $straps is a list of names, in the order in which they are closed.
card-straps-on = اس ترتیب سے بند کریں: { $straps }۔
card-straps-off = اس ترتیب سے کھولیں: { $straps }۔

## The diary

diary-title = آپ کی ڈائری
diary-description = اگلے معائنے تک ٹک لگانے کی ڈائری۔
diary-week = ہفتہ { $week }: { $from } سے { $to } تک
# $least is no pain, $most the worst.
diary-intro = کام ہو جائے تو خانے میں ٹک لگائیں۔ اس دن کے سب سے زیادہ درد کے عدد پر دائرہ لگائیں: { $least } یعنی کوئی درد نہیں، { $most } یعنی سوچ میں آنے والا سب سے برا درد۔
# $bouts is how many times, $each how long.
diary-wears = { $bouts ->
    [one] ایک بار
   *[other] { $bouts } بار
}، ہر بار { $each }۔ رات کو نہیں۔
diary-worn = پہنا
diary-hours = کتنے گھنٹے پہنا
diary-skin = جلد دیکھی
diary-exercises = ورزشیں
diary-pain = درد
diary-note = نوٹ
# $number is the clinic's telephone.
diary-stop = ہدایت نامے میں لکھی رکنے کی کوئی علامت ہو تو معائنے کا انتظار نہ کریں۔ { $number } پر فون کریں۔
diary-stop-no-number = ہدایت نامے میں لکھی رکنے کی کوئی علامت ہو تو معائنے کا انتظار نہ کریں۔ اپنے کلینک کو فون کریں۔
diary-visit = یہ ڈائری معائنے پر ساتھ لائیں: { $date }۔
diary-visit-time = یہ ڈائری معائنے پر ساتھ لائیں: { $date }، { $time }۔

## The exercises

exercises-title = آپ کی ورزشیں
exercises-description = گھر کی ورزشیں: کہاں سے شروع کریں، کیا حرکت، کتنی بار، کب رکیں۔

## The letter

letter-title = { $to ->
    [teacher] استاد کے لیے
    [employer] کام دینے والے کے لیے
   *[carer] مدد کرنے والے کے لیے
}
letter-description = سپلنٹ والے ہاتھ کو ابھی کس کام کی اجازت ہے اور کس کی نہیں۔
# $fitted and $review are dates.
letter-intro = { $to ->
    [teacher] آپ کے شاگرد کے { $side ->
        [left] بائیں
       *[right] دائیں
    } ہاتھ پر سپلنٹ ہے۔
    [employer] آپ کے ہاں کام کرنے والے ایک شخص کے { $side ->
        [left] بائیں
       *[right] دائیں
    } ہاتھ پر سپلنٹ ہے۔
   *[carer] آپ سے مدد لینے والے شخص کے { $side ->
        [left] بائیں
       *[right] دائیں
    } ہاتھ پر سپلنٹ ہے۔
} یہ خط بتاتا ہے کہ کلینک کے اگلے معائنے تک ہاتھ کو کن کاموں کی اجازت ہے۔
letter-from = سپلنٹ کب سے
letter-until = کلینک میں اگلا معائنہ
letter-for = کس لیے ہے
letter-told = اس شخص کو روز کے کاموں کے بارے میں یہ بتایا گیا:
letter-never-off = سپلنٹ صرف کلینک اتارتا ہے۔ اسے نہ کاٹیں، نہ موڑیں، نہ کھولیں۔
letter-leave-on = سپلنٹ نہ اتاریں اور نہ بدلیں، جب تک وہ شخص خود نہ کہے۔
letter-other-jobs = جو کام یہاں نہیں لکھا، اس کے بارے میں اس شخص سے پوچھیں۔ اگر انہیں یقین نہ ہو تو کلینک سے پوچھنے تک وہ کام رکا رہے۔
letter-help-carer = جن کاموں میں دونوں ہاتھ چاہییں ان میں مدد کریں، اور سپلنٹ والے بازو کو نہ کھینچیں۔
letter-help-teacher = براہ کرم لکھنے کے لیے زیادہ وقت دیں۔ جب تک کلینک اجازت نہ دے، ایسا کھیل نہ ہو جس میں ہاتھ کو چوٹ لگ سکے۔
letter-help-employer = براہ کرم ایسے کام دیں جن میں یہ ہاتھ آزاد رہے۔ پورا کام دوبارہ کب شروع ہو، یہ کلینک طے کرتا ہے۔
# $number is the clinic's telephone.
letter-urgent = اگر انگلیاں یا انگوٹھا نیلا، سفید، سن یا ٹھنڈا ہو جائے، یا درد بہت بڑھ جائے تو اسی وقت مدد کریں۔ اس شخص کی { $number } پر فون کرنے میں مدد کریں۔
letter-urgent-no-number = اگر انگلیاں یا انگوٹھا نیلا، سفید، سن یا ٹھنڈا ہو جائے، یا درد بہت بڑھ جائے تو اسی وقت مدد کریں۔ اس شخص کی کلینک کو فون کرنے میں مدد کریں۔
# Stands in the place of a picture.
letter-hand = { $side ->
    [left] سپلنٹ بائیں ہاتھ پر ہے۔
   *[right] سپلنٹ دائیں ہاتھ پر ہے۔
}
# At the foot of the page. $name is the person's name.
letter-about = { $name } کے بارے میں۔ { $side ->
    [left] بایاں
   *[right] دایاں
} ہاتھ۔
letter-about-nobody = ایک شخص کے بارے میں۔ { $side ->
    [left] بایاں
   *[right] دایاں
} ہاتھ۔

# A diary ends after some weeks, however late the visit is.
diary-more = یہ اس ڈائری کا آخری صفحہ ہے۔ مزید صفحے اپنے کلینک سے مانگیں۔

## Booklet: sheets bound into one

booklet-contents = اندر کیا ہے
booklet-caution = یہ صفحے تھراپسٹ یا سرجن کی بات کی جگہ نہیں لیتے۔ وہ کچھ اور کہیں تو ان کی بات مانیں۔
booklet-one-handed = ایک ہاتھ سے پہننا
