### Splints of the fingers and the hand: names, straps, places to check, and the steps of putting on and taking off.
### “Your finger” is the finger that the splint is for; where several fingers are in it, that one is “the treated finger”.
### The joints of a finger are the big knuckle, the middle joint and the tip. Left and right are never typed.

## Names
## The name stands inside sentences; the short form is a label in tables.

orthosis-tip-shell-custom-name = انگلی کے سرے کا سپلنٹ
orthosis-tip-shell-custom-short = انگلی کا سرا
orthosis-tip-shell-ready-name = انگلی کے سرے کا بنا بنایا سپلنٹ
orthosis-tip-shell-ready-short = انگلی کا سرا، بنا بنایا
orthosis-tip-cast-name = انگلی کے سرے کا پلستر
orthosis-tip-cast-short = سرے کا پلستر
orthosis-finger-gutter-middle-joint-name = انگلی کے درمیانی جوڑ کا سپلنٹ
orthosis-finger-gutter-middle-joint-short = درمیانی جوڑ
orthosis-finger-gutter-long-name = پوری انگلی کا سپلنٹ
orthosis-finger-gutter-long-short = پوری انگلی
orthosis-ring-stops-bending-back-name = پیچھے مڑنے سے روکنے والا چھلا سپلنٹ
orthosis-ring-stops-bending-back-short = چھلا، پیچھے نہ مڑنے دے
orthosis-ring-keeps-straight-name = انگلی سیدھی رکھنے والا چھلا سپلنٹ
orthosis-ring-keeps-straight-short = چھلا، سیدھی رکھے
orthosis-serial-finger-cast-name = انگلی سیدھی کرنے والا پلستر
orthosis-serial-finger-cast-short = انگلی سیدھی کرنے کا پلستر
orthosis-spring-finger-extension-name = سپرنگ والا انگلی کا سپلنٹ
orthosis-spring-finger-extension-short = انگلی کا سپرنگ
orthosis-finger-wedge-stepped-name = پچر والا انگلی کا سپلنٹ
orthosis-finger-wedge-stepped-short = انگلی کی پچر
orthosis-finger-extension-block-name = چھت والا انگلی کا سپلنٹ
orthosis-finger-extension-block-short = انگلی کی چھت
orthosis-buddy-straps-name = ساتھی انگلی کے پٹے
orthosis-buddy-straps-short = ساتھی انگلی کے پٹے
orthosis-knuckle-block-name = ایک انگلی کے ہتھیلی والے جوڑ کا سپلنٹ
orthosis-knuckle-block-short = انگلی کا ہتھیلی والا جوڑ
orthosis-trigger-ring-name = درمیانی جوڑ کا چھلا سپلنٹ
orthosis-trigger-ring-short = درمیانی جوڑ کا چھلا
orthosis-relative-extension-yoke-name = ایک انگلی اونچی رکھنے والا سلاخ کا سپلنٹ
orthosis-relative-extension-yoke-short = سلاخ، انگلی اونچی
orthosis-relative-flexion-yoke-name = ایک انگلی نیچی رکھنے والا سلاخ کا سپلنٹ
orthosis-relative-flexion-yoke-short = سلاخ، انگلی نیچی
orthosis-dorsal-block-long-name = ہاتھ کی پشت کا لمبا سپلنٹ
orthosis-dorsal-block-long-short = ہاتھ کی پشت، لمبا
orthosis-dorsal-block-short-name = ہاتھ کی پشت کا چھوٹا سپلنٹ
orthosis-dorsal-block-short-short = ہاتھ کی پشت، چھوٹا
orthosis-ulnar-gutter-name = انگوٹھی والی اور چھوٹی انگلی کا لمبا سپلنٹ
orthosis-ulnar-gutter-short = انگوٹھی والی، چھوٹی انگلی اور کلائی
orthosis-knuckle-shell-ring-little-name = انگوٹھی والی اور چھوٹی انگلی کے ہتھیلی والے جوڑوں کا سپلنٹ
orthosis-knuckle-shell-ring-little-short = انگوٹھی والی، چھوٹی: ہتھیلی والے جوڑ
orthosis-metacarpal-sleeve-name = ہاتھ کی ہڈی کا غلاف
orthosis-metacarpal-sleeve-short = ہاتھ کی ہڈی کا غلاف
orthosis-phalanx-gutter-pair-name = ساتھ کی دو انگلیوں کا سپلنٹ
orthosis-phalanx-gutter-pair-short = ساتھ کی دو انگلیاں
orthosis-night-finger-extension-name = انگلی کا رات کا سپلنٹ
orthosis-night-finger-extension-short = انگلی، رات
orthosis-drift-strap-name = ہتھیلی والے جوڑوں کا نرم پٹوں والا سپلنٹ
orthosis-drift-strap-short = ہتھیلی والے جوڑ، نرم پٹے
orthosis-knuckle-extension-block-name = سلاخ والا ہتھیلی والے جوڑوں کا سپلنٹ
orthosis-knuckle-extension-block-short = ہتھیلی والے جوڑوں کی سلاخ

## Straps
## Each name is put into “Close the …” and “Undo the …”.

strap-finger-tape = ٹیپ کا پٹا
strap-finger-base = انگلی کی جڑ کا پٹا
strap-finger-past-middle-joint = درمیانی جوڑ سے ذرا آگے کا پٹا
strap-finger-end = انگلی کے سرے کے پاس کا پٹا
# Buddy straps hold a finger to its neighbour.
strap-finger-pair-base = دونوں انگلیوں کی جڑ کا پٹا
strap-finger-pair-end = دونوں انگلیوں کے درمیانی جوڑوں سے آگے کا پٹا
# In a shell that holds a finger and its neighbour.
strap-finger-pair = دونوں انگلیوں کے گرد کا پٹا
# Across all four fingers, under a roof on the back of the hand.
strap-finger-row = انگلیوں کے اوپر کا پٹا
strap-finger-loops = انگلیوں کے حلقے

## Places to look at in the skin check

spot-finger-end-joint-back = انگلی کے سرے کے پاس والے جوڑ کی پشت
spot-finger-nail-skin = ناخن کے گرد کی جلد
spot-finger-pad-sides = انگلی کے سرے کے پوٹے کے پہلو
spot-finger-sides = انگلی کے دونوں پہلو
spot-finger-sides-near-base = انگلی کے دونوں پہلو، جڑ کے پاس
spot-finger-middle-joint-back = درمیانی جوڑ کی پشت
spot-finger-middle-joint-backs = درمیانی جوڑوں کی پشت
spot-ring-little-middle-joint-backs = درمیانی جوڑوں کی پشت
spot-finger-joint-creases = انگلی کی ہتھیلی والی طرف کی لکیریں
spot-finger-web = جلد، جہاں انگلیاں ہتھیلی سے ملتی ہیں
spot-finger-between = انگلیوں کے بیچ کی جلد
spot-finger-under-ring = چھلے کے نیچے کی جلد
spot-finger-cast-edges = پلستر کے دونوں کناروں کے ساتھ کی جلد
spot-finger-tip-cast-edges = پلستر کے دونوں کناروں کے ساتھ کی جلد
spot-finger-base-front = انگلی کی ہتھیلی والی طرف، جڑ کے پاس
spot-finger-first-bone-back = انگلی کی پشت، ہتھیلی والے جوڑ کے پاس
spot-finger-knuckle-backs = ہتھیلی والے جوڑوں کی پشت
spot-ring-little-knuckle-backs = ہتھیلی والے جوڑوں کی پشت
spot-finger-hand-edge = چھوٹی انگلی کی طرف ہاتھ کا کنارہ
spot-finger-wrist-back-edge = کلائی کی پشت، جہاں سپلنٹ ختم ہوتا ہے
spot-finger-over-break = ٹوٹی ہڈی کے اوپر کی جلد
spot-finger-wound-line = زخم یا زخم کا نشان

## Fingertip splints
## The tip must not bend while it heals: it lies on the table from before the strap opens until it is closed again.

step-finger-tip-on-table = انگلی میز پر سیدھی رکھیں، سرا بھی سیدھا ہو۔
step-finger-dry-on-table = انگلی تولیے سے سکھائیں۔ سرا سیدھا ٹکا رہے۔
step-finger-slide-on-from-tip = سپلنٹ سرے کی طرف سے چڑھائیں۔ انگلی سیدھی رکھیں۔
step-finger-lift-when-closed = انگلی صرف تب اٹھائیں جب سپلنٹ بند ہو جائے۔
step-finger-check-tip-straight = دیکھیں کہ سرا سپلنٹ میں سیدھا اور جما ہوا ہے۔
step-finger-lay-out-towel = کچھ کھولنے سے پہلے میز پر تولیہ بچھائیں۔
step-finger-slide-off-forwards = سپلنٹ سرے پر سے سیدھا آگے سرکا کر اتاریں۔ اسے نہ جھکائیں۔
step-finger-tip-if-healing = اگر سرا ابھی ٹھیک ہو رہا ہو تو اسے میز پر سیدھا ٹکائے رکھیں۔
step-finger-look-on-table = انگلی میز پر رکھے رکھے اپنی جلد دیکھیں۔

## Splints along a finger

step-finger-straight-on-table = انگلی میز پر رکھیں، جتنی سیدھی ہو سکے۔
step-finger-push-to-base = سپلنٹ کو انگلی کی جڑ تک دھکیلیں۔
step-finger-slide-on = سپلنٹ نرمی سے سرے کی طرف سے چڑھائیں۔
step-finger-straps-off-joints = دیکھیں کہ کوئی پٹا جوڑ کے اوپر نہیں ہے۔
step-finger-check-tip-bends = دیکھیں کہ انگلی کا سرا مڑ سکتا ہے۔
step-finger-check-middle-joint-bends = دیکھیں کہ انگلی کا درمیانی جوڑ مڑ سکتا ہے۔
step-finger-check-knuckle-bends = دیکھیں کہ انگلی کا ہتھیلی والا جوڑ مڑ سکتا ہے۔
step-finger-middle-if-healing = اگر درمیانی جوڑ ابھی ٹھیک ہو رہا ہو تو اسے میز پر سیدھا ٹکائے رکھیں۔
step-finger-straight-if-healing = اگر انگلی ابھی ٹھیک ہو رہی ہو تو اسے میز پر سیدھی رکھیں۔

## A roof that stops a finger from straightening

step-finger-bend-slightly = انگلی کا درمیانی جوڑ ذرا سا موڑیں۔
step-finger-roof-on-finger = سپلنٹ انگلی کی پشت پر رکھیں۔
step-finger-check-stops-short = دیکھیں کہ چھت انگلی کو زیادہ سیدھا ہونے سے روکتی ہے۔
step-finger-bent-if-healing = اگر درمیانی جوڑ ابھی ٹھیک ہو رہا ہو تو اسے ذرا مڑا رکھیں۔

## Springs and wedges
## The pull comes last when it goes on and first when it comes off.

step-finger-joint-at-spring = درمیانی جوڑ کو سپرنگ کے موڑ کی سیدھ میں لائیں۔
step-finger-spring-last = سپرنگ کو آہستہ کھینچنے دیں۔
step-finger-hold-spring = سپرنگ کو پکڑے رکھیں تاکہ وہ جھٹکے سے واپس نہ آئے۔
step-finger-wedge-back = پچر کو پورا پیچھے سرکائیں۔
step-finger-wedge-in = پچر کو کلینک کے لگائے نشان تک اندر سرکائیں۔
step-finger-check-mild-pull = دیکھیں کہ کھنچاؤ ہلکا ہے اور درد نہیں کرتا۔

## Rings

step-finger-check-ring = دیکھیں کہ چھلا صاف اور خشک ہے اور مڑا ہوا نہیں ہے۔
step-finger-keep-straight = انگلی سیدھی رکھیں۔
step-finger-slide-ring-on = چھلا سرے کی طرف سے چڑھائیں۔
step-finger-ring-cross-front = چھلا اتنا گھمائیں کہ اس کا کراس درمیانی جوڑ کے نیچے آ جائے۔
step-finger-ring-cross-back = چھلا اتنا گھمائیں کہ اس کا کراس درمیانی جوڑ کی پشت پر آ جائے۔
step-finger-ring-over-joint = چھلا اتنا دھکیلیں کہ وہ درمیانی جوڑ کو ڈھانپ لے۔
step-finger-check-full-bend = دیکھیں کہ انگلی پوری مڑ سکتی ہے۔
step-finger-check-not-back = دیکھیں کہ درمیانی جوڑ پیچھے نہیں مڑ سکتا۔
step-finger-check-middle-joint-straight = دیکھیں کہ درمیانی جوڑ سیدھا رہتا ہے۔
step-finger-slide-ring-off = چھلا سرے پر سے سرکا کر اتاریں۔
step-finger-ring-stuck = چھلا اٹک جائے تو تھوڑا صابن والا پانی لگائیں۔

## Casts
## Only the clinic puts a cast on and takes it off.

step-finger-cast-by-clinic = پلستر صرف اپنے کلینک سے لگوائیں۔
step-finger-cast-cover = نہانے یا ہاتھ دھونے سے پہلے پلستر پر تھیلی چڑھا کر اچھی طرح بند کریں۔
step-finger-cast-look-at-edges = پلستر کے دونوں کناروں کے ساتھ کی جلد دیکھیں۔
step-finger-cast-off-by-clinic = پلستر صرف اپنے کلینک سے اتروائیں۔
step-finger-cast-no-cutting = پلستر کو نہ کاٹیں، نہ کھینچیں، نہ اس کے نیچے کچھ ڈالیں۔
step-finger-cast-slips = یہ سرک جائے یا ٹوٹ جائے تو انگلی سیدھی رکھیں اور ہمیں فون کریں۔

## Buddy straps

step-finger-dry-between = جلد اچھی طرح سکھائیں، انگلیوں کے بیچ بھی۔
step-finger-beside-neighbour = انگلی اس ساتھ والی انگلی سے ملا کر رکھیں جو آپ کے کلینک نے چنی۔
step-finger-check-both-bend = دیکھیں کہ دونوں انگلیاں ساتھ مڑتی ہیں۔
step-finger-look-between = جلد ہر طرف سے دیکھیں، انگلیوں کے بیچ بھی۔

## Knuckle splints for one finger

step-finger-push-into-ring = انگلی چھلے میں دھکیلیں۔
step-finger-palm-piece-flat = ہتھیلی والا ٹکڑا ہتھیلی پر سیدھا رکھیں۔

## Bar splints
## One finger lies higher or lower than its neighbours. In the first kind wrist and fingers must not drop.

step-finger-towel-roll = میز پر لپٹا تولیہ رکھیں۔
step-finger-wrist-back-on-towel = کلائی پیچھے موڑ کر ہاتھ تولیے پر رکھیں۔
step-finger-fingers-straight = انگلیاں سیدھی رکھیں۔
step-finger-yoke-on-top = متاثرہ انگلی سلاخ کے اوپر رکھیں۔
step-finger-yoke-others-under = اس کے ساتھ والی انگلیاں سلاخ کے نیچے سرکائیں۔
step-finger-yoke-below = متاثرہ انگلی سلاخ کے نیچے سرکائیں۔
step-finger-yoke-others-over = اس کے ساتھ والی انگلیاں سلاخ کے اوپر رکھیں۔
step-finger-yoke-to-base = سلاخ کو انگلیوں کی جڑ تک دھکیلیں۔
step-finger-check-higher = دیکھیں کہ متاثرہ انگلی ساتھ والی انگلیوں سے اونچی ہے۔
step-finger-check-lower = دیکھیں کہ متاثرہ انگلی ساتھ والی انگلیوں سے نیچی ہے۔
step-finger-check-joints-beyond-bend = دیکھیں کہ درمیانی جوڑ اور سرے مڑ سکتے ہیں۔
step-finger-slide-off-fingers = سپلنٹ انگلیوں سے آگے سرکا کر اتاریں۔
step-finger-tendon-if-healing = اگر ڈوری (ٹینڈن) جڑ رہی ہو تو نہ کلائی گرنے دیں، نہ انگلیاں۔

## Splints on the back of the hand
## For sewn bending tendons: wrist and fingers stay bent, and nobody straightens them.

step-finger-only-when-allowed = یہ قدم صرف تب کریں جب آپ کے کلینک نے اجازت دی ہو۔
step-finger-curl-over-towel = ہاتھ تولیے پر رکھیں، کلائی ہتھیلی کی طرف اور انگلیاں اندر مڑی ہوں۔
step-finger-roof-over-hand = سپلنٹ کو ہاتھ کی پشت پر نیچے لائیں۔
step-finger-check-under-roof = دیکھیں کہ ہر انگلی کا سرا چھت کے نیچے ہے۔
step-finger-stay-curled = انگلیاں اندر مڑی رہنے دیں۔ انہیں سیدھا نہ کریں۔
step-finger-look-while-curled = انگلیاں اندر مڑی رہیں، اسی حالت میں جلد دیکھیں۔

## Splints for broken bones

step-finger-pad-between = دونوں انگلیوں کے بیچ نرم پٹی رکھیں۔
step-finger-little-side-in = ہاتھ کی چھوٹی انگلی والی طرف سپلنٹ میں رکھیں۔
step-finger-knuckles-in-bend = دیکھیں کہ ہتھیلی والے جوڑ سپلنٹ کے موڑ میں بیٹھے ہیں۔
step-finger-knuckles-bent-fingers-straight = ہتھیلی والے جوڑ موڑیں۔ انگلیاں سیدھی رکھیں۔
step-finger-check-not-crossed = دیکھیں کہ کوئی انگلی ساتھ والی پر نہیں چڑھی۔
step-finger-knuckles-if-healing = اگر ہڈی جڑ رہی ہو تو ہتھیلی والے جوڑ مڑے رکھیں۔
step-finger-sleeve-over-hand = غلاف ہاتھ پر سے درد والی ہڈی تک سرکائیں۔
step-finger-sleeve-behind-knuckles = غلاف کا اگلا کنارہ ہتھیلی والے جوڑوں سے پیچھے رکھیں۔
step-finger-slide-off-hand = سپلنٹ ہاتھ سے آگے سرکا کر اتاریں۔

## Night splints, finger loops, knuckle bars

step-finger-rest-easy = انگلی اندر رکھیں، صرف اتنی سیدھی جتنی آسانی سے ہو۔
step-finger-check-no-pull = دیکھیں کہ کوئی چیز جلد کو نہیں کھینچتی۔
step-finger-loops-on = ہر انگلی اس کے حلقے میں سرکائیں۔
step-finger-easy-pull = حلقے صرف اتنے کھینچیں جتنا آسان لگے۔
step-finger-check-in-line = دیکھیں کہ انگلیاں سیدھی سامنے ہیں۔
step-finger-bend-knuckles-little = ہتھیلی والے جوڑ ذرا سے موڑیں۔
step-finger-under-bar = انگوٹھی والی اور چھوٹی انگلی سلاخ کے نیچے سرکائیں۔
step-finger-check-straighten = دیکھیں کہ درمیانی جوڑ سیدھے ہو سکتے ہیں۔

## Putting it on with one hand
## There is no other hand: table, towel, book, thigh and the thumb of the same hand do the work.

step-finger-against-book = کھلا سپلنٹ میز پر بھاری کتاب سے لگا کر رکھیں۔
step-finger-slide-along-table = انگلی میز پر سیدھی رکھ کر سپلنٹ میں سرکائیں۔
step-finger-slide-in-easy = انگلی میز پر سرکا کر سپلنٹ میں لائیں۔
step-finger-push-under-roof = جو انگلیاں سپلنٹ میں ہیں، ہر ایک کو سرکا کر اس کی چھت کے نیچے لائیں۔
step-finger-push-hand-in = ہاتھ غلاف میں دھکیلیں۔
step-finger-own-thumb = پٹوں کے لیے اسی ہاتھ کا انگوٹھا استعمال کریں۔
step-finger-upright-in-towel = سپلنٹ لپٹے تولیے میں کھڑا کر کے دبائیں۔
step-finger-thumb-turns-ring = چھلے کے لیے اسی ہاتھ کا انگوٹھا استعمال کریں۔
step-finger-wrist-stays-back = کلائی پیچھے مڑی رکھیں۔
step-finger-straps-as-loops = شروع میں ہر پٹا ڈھیلے حلقے کی طرح بند ہو۔
step-finger-through-loops = دونوں انگلیاں حلقوں میں سے گزاریں۔
step-finger-trap-strap-end = ہر پٹے کا سرا ران کے نیچے دبائیں اور نرمی سے کھینچیں۔
step-finger-cast-cover-with-knees = تھیلی گھٹنوں کے بیچ پکڑیں اور ہاتھ اندر ڈالیں۔
step-finger-trained-helper = یہ اس مددگار سے کروائیں جسے آپ کے کلینک نے سکھایا۔ اکیلے کبھی نہ کریں۔
