### More advice for what is particular about one person.
### Each message is one or two short sentences that stand inside a section of the guide.
### $checks is a number of skin checks a day, $limit a finished length of time.

## Skin that feels little or nothing

factor-numb-skin-no-packs = سن جلد پر نہ گرم پیک رکھیں، نہ برف۔

## Rash from natural rubber

factor-latex-allergy-itch = جلد پر ذرا سی بھی خارش ہو تو ہمیں فون کریں۔
factor-latex-allergy-gloves = سپلنٹ پر ربڑ کے دستانے نہ پہنیں۔ کسی اور قسم کے دستانے پہنیں۔
factor-latex-allergy-spare-parts = ربڑ بینڈ یا لچکدار پٹے نہ لگائیں۔ ہم سے محفوظ پٹے مانگیں۔

## Rash from metal

factor-nickel-allergy-itch = جلد پر ذرا سی بھی خارش ہو تو ہمیں فون کریں۔
factor-nickel-allergy-bare-metal = کھلی دھات جلد کو نہ چھونے دیں۔ اس کا غلاف گھس جائے تو ہمیں بتائیں۔

## Rash from tape and glue

factor-adhesive-allergy-itch = جلد پر ذرا سی بھی خارش ہو تو ہمیں فون کریں۔
factor-adhesive-allergy-no-tape = جلد پر نہ ٹیپ لگائیں، نہ چپکنے والی پٹی۔ ہم سے پٹے مانگیں۔
factor-adhesive-allergy-linings = سپلنٹ کے اندر گدی یا استر نہ چپکائیں۔

## Trouble remembering

factor-memory-difficulty-same-times = ہر روز وہی اوقات رکھیں۔ ان کے لیے الارم لگائیں۔
factor-memory-difficulty-tick = یہ ہدایت نامہ دیوار پر لگائیں۔ جلد دیکھنے کے بعد ہر بار ٹک لگائیں۔
factor-memory-difficulty-in-sight = سپلنٹ ایک ہی جگہ رکھیں جہاں یہ نظر آئے۔ ہر بار سب قدم پڑھیں۔
factor-memory-difficulty-after-meals = حرکتیں ان کاموں کے ساتھ کریں جو روز ویسے بھی ہوتے ہیں، جیسے کھانا۔

## Somebody at home who helps

factor-helper-at-home-looks = اپنے مددگار سے کہیں کہ وہ بھی جلد دیکھے۔
factor-helper-at-home-reads = مددگار ہر قدم اونچی آواز میں پڑھے اور پٹے بند کرے۔
factor-helper-at-home-heavy-jobs = جو کام یہ ہدایت نامہ چھوڑنے کو کہے، وہ مددگار کرے۔

## A child

# The reader may be the child or a grown-up reading aloud.
factor-child-grown-up-looks = ہر بار کوئی بڑا آپ کی جلد دیکھے۔ کچھ درد کرے تو اسی وقت بتائیں۔
factor-child-grown-up-helps = سپلنٹ پہنتے یا اتارتے وقت ہر بار کوئی بڑا آپ کے ساتھ ہو۔
factor-child-school = اس ہدایت نامے کی ایک نقل سکول لے جائیں۔
factor-child-game = ہر حرکت کو کھیل بنائیں۔
factor-child-small-parts = کھلے پٹے اور چھوٹے ٹکڑے ننھے بچوں اور چھوٹے بچوں سے دور رکھیں۔

## Pregnancy

factor-pregnancy-swelling = کچھ دن ہاتھ سوج سکتا ہے۔ بیٹھتے وقت اسے گدی پر رکھیں۔
factor-pregnancy-strap-room = ہر روز دیکھیں کہ ہر پٹے کے نیچے انگلی کا سرا آ جاتا ہے۔
factor-pregnancy-grooves = پٹوں کی گہری لکیریں دیکھیں۔ وہ باقی رہیں تو ہمیں بتائیں۔

## Work in the heat

factor-heat-work-keep-away = سپلنٹ کو تندور، گرم چولہے اور انجن سے دور رکھیں۔ گرمی میں کام کرنے سے پہلے ہم سے پوچھیں۔
factor-heat-work-dry-skin = پسینہ اسی وقت سکھائیں۔ نرم، سفید جلد پر نظر رکھیں۔
factor-heat-work-fresh-sleeve = ہر شفٹ میں نئی، خشک آستین پہنیں۔ نم ہو جائے تو اسی وقت بدلیں۔

## Work with food

factor-food-work-ask = کام پر پوچھیں کہ کیا کھانے کے پاس سپلنٹ کی اجازت ہے۔ پوچھیں کہ اسے کیسے ڈھانپنا ہے۔
factor-food-work-damp = سپلنٹ پر دستانہ نمی اندر رکھتا ہے۔ کام کے بعد نرم، سفید جلد پر نظر رکھیں۔
factor-food-work-clean = ہر شفٹ کے بعد سپلنٹ صاف کریں۔ اس کا غلاف پھینک دیں۔

## Work in the wet

factor-wet-work-cover = سپلنٹ ڈھانپیں، یا گیلے کام کوئی اور کرے۔
factor-wet-work-dry-breaks = اکثر رک کر جلد سکھائیں۔ نرم، سفید جلد پر نظر رکھیں۔
factor-wet-work-spare-sleeves = فالتو آستینیں تیار رکھیں۔ نم ہو جائے تو اسی وقت بدلیں۔

## Work with machines

factor-machinery-moving-parts = سپلنٹ پہن کر چلتی مشینوں پر کام نہ کریں۔ وہ پٹا پکڑ کر ہاتھ اندر کھینچ سکتی ہیں۔
factor-machinery-ask = کام پر بھی انہی اوقات پر رہیں۔ مشین پر واپس جانے سے پہلے ہم سے اور کام دینے والے سے پوچھیں۔

## Slow healing

factor-slow-healing-no-early-end = آپ کے ہاتھ کو پورا وقت چاہیے۔ جلدی نہ چھوڑیں، چاہے ہاتھ ٹھیک لگے۔
factor-slow-healing-any-break = جلد ذرا سی بھی پھٹے تو اسی دن ہمیں فون کریں۔
factor-slow-healing-smoke = اگر آپ کو سگریٹ کی عادت ہے تو چھوڑنے کے لیے ہم سے یا اپنے ڈاکٹر سے مدد لیں۔ سگریٹ سے ٹھیک ہونے میں دیر لگتی ہے۔

## An open wound, stitches or pins

factor-open-wound-look = زخم یا پنوں کا جو حصہ نظر آئے، وہ دیکھیں۔ کچھ رسے، بدبو دے یا ہلے تو آج ہی ہمیں فون کریں۔
factor-open-wound-dry = ہاتھ خشک رکھیں، یہاں تک کہ ہم کہیں کہ جلد بند ہو گئی ہے۔
factor-open-wound-no-rubbing = زخم کو نہ ملیں، نہ دبائیں۔ ٹانکے یا پن نہ چھوئیں۔
factor-open-wound-dressing = مرہم پٹی صاف اور خشک رکھیں۔ ہم سے پوچھیں کہ اسے کون بدلے گا۔

## Poor blood flow

factor-poor-circulation-colour = انگلیوں اور انگوٹھے کے سرے دوسرے ہاتھ سے ملا کر دیکھیں۔ جلد پھٹے تو اسی دن ہمیں فون کریں۔
factor-poor-circulation-strap-room = ہر پٹے کے نیچے انگلی کا سرا سرکائیں۔ اس کا آ جانا ضروری ہے۔
factor-poor-circulation-warm = ہاتھ کپڑوں سے گرم رکھیں۔ اس پر نہ برف رکھیں، نہ گرم پیک۔

## Only one hand to use

factor-one-hand-only-table = بازو میز پر رکھیں۔ میز کے کنارے یا ٹانگ سے مدد لیں۔
factor-one-hand-only-helper = جہاں یہ ہدایت نامہ دوسرا ہاتھ کہے، وہاں کسی سے مدد لی جا سکتی ہے۔
factor-one-hand-only-mirror = ہاتھ کی دوسری طرف دیکھنے کے لیے آئینہ استعمال کریں۔

## Strong pain or worry

factor-high-pain-worry-small = اس فہرست کی سب سے چھوٹی حرکت سے شروع کریں۔ تھوڑا اور بار بار ٹھیک ہے۔
factor-high-pain-worry-rest = ہاتھ میں بہت درد ہونے سے پہلے آرام کریں۔ پھر جاری رکھیں۔
factor-high-pain-worry-call = کوئی فکر ہو تو جلدی ہمیں فون کریں۔ کوئی سوال چھوٹا نہیں۔
