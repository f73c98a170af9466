### Advice for what is particular about one person.
### Each message is one or two short sentences that stand inside a section of the guide.
### $checks is a number of skin checks a day, $limit a finished length of time.

## Skin that feels little or nothing

factor-numb-skin-look = اپنی آنکھوں پر بھروسا کریں، احساس پر نہیں۔ ہاتھ ہر طرف سے دیکھیں۔ آئینہ مدد دے سکتا ہے۔
factor-numb-skin-strap-room = دوسرے ہاتھ کی انگلی کا سرا ہر پٹے کے نیچے سرکائیں۔ اس کا آ جانا ضروری ہے۔
factor-numb-skin-hot-and-sharp = گرم چیزیں دوسرے ہاتھ سے جانچیں۔ تیز چیزیں سن جلد سے دور رکھیں۔

## Thin or tender skin

factor-fragile-skin-no-tape = جلد پر ٹیپ یا چپکنے والی گدی نہ لگائیں۔
factor-fragile-skin-lift = سپلنٹ نرمی سے اتاریں۔ اسے جلد پر رگڑنے یا گھسٹنے نہ دیں۔
factor-fragile-skin-sleeve = سپلنٹ کے نیچے سوتی، ہموار اور خشک آستین پہنیں۔ اسے ہر روز بدلیں۔

## Swelling

factor-swelling-raise = بیٹھتے وقت ہاتھ دل سے اونچا رکھیں۔
factor-swelling-loosen = کوئی پٹا تنگ ہو تو اسے ذرا ڈھیلا کریں۔ سوجن کم ہو تو اسے پھر بند کریں۔
factor-swelling-pump = آزاد انگلیاں اکثر ہلائیں۔ اس سے سوجن کم ہونے میں مدد ملتی ہے۔

## Diabetes

factor-diabetes-any-break = جلد ذرا سی بھی پھٹے تو اسی دن ہمیں فون کریں۔

## Easy bleeding

# For people who take something against clotting. No medicine is named, and none is to be stopped.
factor-blood-thinners-bruise = سپلنٹ کے نیچے کا نیل بڑھے تو آج ہی ہمیں فون کریں۔
factor-blood-thinners-no-rubbing = ہاتھ زور سے نہ ملیں۔ اسے چوٹ سے بچائیں۔

## Low vision

factor-low-vision-check = گرم، سخت، گیلی یا درد والی جگہیں دوسرے ہاتھ سے ٹٹولیں۔ کسی سے کہیں کہ وہ بھی جلد دیکھے۔
factor-low-vision-dots = ہم سے پٹوں پر ابھرے نقطے لگوائیں۔ ان سے پٹوں کی پہچان ہوتی ہے۔

## Living alone

factor-lives-alone-table = بازو میز پر رکھیں۔ سپلنٹ میز پر ٹکا رہے اور دوسرا ہاتھ کام کرے۔
factor-lives-alone-ready = ڈھیلے کپڑے اور آسان کھانا تیار رکھیں۔
factor-lives-alone-phone = ہمارا فون نمبر بستر کے پاس رکھیں۔

## Night work

factor-night-work-main-sleep = جہاں یہ ہدایت نامہ رات کہے، وہاں آپ کی اصل نیند مراد ہے۔
factor-night-work-after-sleep = پہلی ورزشیں اپنی اصل نیند کے بعد کریں۔

## Rash from foam rubber

factor-neoprene-allergy-itch = جلد پر ذرا سی بھی خارش ہو تو ہمیں فون کریں۔
factor-neoprene-allergy-spare-parts = فوم ربڑ کی گدی، دستانہ یا لپیٹ نہ لگائیں۔

## A new baby

factor-new-mother-flat-hands = بچے کو ہاتھوں کی کھلی ہتھیلیوں سے اٹھائیں اور دودھ پلائیں۔ انگوٹھے انگلیوں کے ساتھ رکھیں۔
factor-new-mother-strap-room = ہاتھ سوج سکتا ہے۔ ہر روز دیکھیں کہ ہر پٹے کے نیچے انگلی کا سرا آ جاتا ہے۔
factor-new-mother-edges = بچے کو پکڑنے سے پہلے سخت کناروں پر صاف کپڑا لگائیں۔
