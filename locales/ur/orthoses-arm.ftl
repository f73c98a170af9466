### Splints of the thumb, the wrist and the arm, and of the whole hand: names, straps, places to check, and steps.
### What several splints share stands in orthoses.ftl. “Other hand” is the hand without the splint.

## Names of wrist splints
## The name stands inside sentences; the short form is a label in tables.

orthosis-wrist-neutral-name = کلائی سیدھی رکھنے والا سپلنٹ
orthosis-wrist-neutral-short = کلائی، سیدھی
orthosis-wrist-dorsal-shell-name = ہاتھ کی پشت پر کلائی کا سپلنٹ
orthosis-wrist-dorsal-shell-short = کلائی، ہاتھ کی پشت
orthosis-wrist-all-round-name = کلائی کے چاروں طرف کا سپلنٹ
orthosis-wrist-all-round-short = کلائی، چاروں طرف
orthosis-wrist-soft-stay-name = سلاخ والا کلائی کا نرم سپلنٹ
orthosis-wrist-soft-stay-short = نرم، کلائی، سلاخ والا
orthosis-wrist-soft-wrap-name = کلائی کی نرم لپیٹ
orthosis-wrist-soft-wrap-short = نرم، کلائی

## Names of thumb splints

orthosis-forearm-thumb-spica-tip-name = انگوٹھے کا لمبا سپلنٹ، سرے سمیت
orthosis-forearm-thumb-spica-tip-short = نچلا بازو اور پورا انگوٹھا
orthosis-thumb-knuckle-shell-name = انگوٹھے کے ہتھیلی والے جوڑ کا سپلنٹ
orthosis-thumb-knuckle-shell-short = انگوٹھے کا ہتھیلی والا جوڑ
orthosis-thumb-mcp-ring-name = انگوٹھے کا چھلا سپلنٹ
orthosis-thumb-mcp-ring-short = انگوٹھے کا چھلا
orthosis-thumb-tip-cap-name = انگوٹھے کے سرے کا سپلنٹ
orthosis-thumb-tip-cap-short = انگوٹھے کا سرا
# It keeps the space between thumb and index finger open.
orthosis-thumb-web-spacer-name = انگوٹھے کے فاصلے کا سپلنٹ
orthosis-thumb-web-spacer-short = انگوٹھے کا فاصلہ
# Its roof keeps the thumb from straightening too far.
orthosis-thumb-dorsal-block-name = انگوٹھے کے بچاؤ کا سپلنٹ
orthosis-thumb-dorsal-block-short = انگوٹھے کا بچاؤ
# It holds the thumb up, away from the palm.
orthosis-thumb-raised-long-name = انگوٹھا اوپر رکھنے والا سپلنٹ
orthosis-thumb-raised-long-short = اٹھا ہوا انگوٹھا

## Names of arm splints and bands

orthosis-long-arm-rotation-name = بازو کا لمبا سپلنٹ
orthosis-long-arm-rotation-short = کہنی سے ہاتھ تک
orthosis-elbow-night-shell-name = کہنی کا رات کا سپلنٹ
orthosis-elbow-night-shell-short = کہنی، رات کو
orthosis-counterforce-band-name = نچلے بازو کا بینڈ
orthosis-counterforce-band-short = نچلے بازو کا بینڈ
orthosis-distal-ulna-strap-name = کلائی کا مضبوط بینڈ
orthosis-distal-ulna-strap-short = کلائی کا بینڈ

## Names of splints for wrist and fingers

# Cords join wrist and fingers, so that each helps the other to move.
orthosis-tenodesis-assist-name = کلائی اور انگلیوں کا مددگار سپلنٹ
orthosis-tenodesis-assist-short = کلائی اور انگلیوں کا مددگار
# Elastic pulls lift the fingers at the big knuckles.
orthosis-dynamic-knuckle-extension-name = انگلیاں اٹھانے والا سپلنٹ
orthosis-dynamic-knuckle-extension-short = انگلیاں اٹھانے والا
orthosis-palm-shell-wrist-knuckles-name = کلائی اور ہتھیلی والے جوڑوں کا سپلنٹ
orthosis-palm-shell-wrist-knuckles-short = کلائی اور ہتھیلی والے جوڑ
orthosis-resting-hand-name = ہاتھ کے آرام کا سپلنٹ
orthosis-resting-hand-short = ہاتھ کا آرام
orthosis-intrinsic-plus-shell-name = ہاتھ کا سپلنٹ، ہتھیلی والے جوڑ مڑے
orthosis-intrinsic-plus-shell-short = ہاتھ، ہتھیلی والے جوڑ مڑے
orthosis-palm-extension-pan-name = کھلی ہتھیلی کا سپلنٹ
orthosis-palm-extension-pan-short = کھلی ہتھیلی
orthosis-spread-hand-cushion-name = ہاتھ کی نرم گدی
orthosis-spread-hand-cushion-short = ہاتھ کی گدی

## Straps
## Each name is put into “Close the …” and “Undo the …”.

strap-near-elbow = کہنی کے پاس کا پٹا
strap-upper-arm = اوپری بازو کا پٹا
strap-hand-back = ہاتھ کی پشت کا پٹا
strap-across-fingers = انگلیوں کے اوپر کا پٹا
strap-across-fingertips = انگلیوں کے سروں کے پاس کا پٹا
# A band has one strap, which pulls it snug.
strap-band = بینڈ کا پٹا

## Places to look at in the skin check

spot-wrist-palm-side = کلائی، ہتھیلی کی طرف
spot-wrist-back = کلائی کی پشت
spot-forearm-thumb-side = نچلے بازو کی انگوٹھے والی طرف، کلائی سے ذرا اوپر
spot-knuckle-backs = ہتھیلی والے جوڑوں کی پشت
spot-middle-joint-backs = انگلیوں کے درمیانی جوڑوں کی پشت
spot-palm-below-knuckles = ہتھیلی، انگلیوں سے ذرا نیچے
spot-palm-middle = ہتھیلی کا بیچ
spot-splint-end-at-fingers = انگلیاں، جہاں سپلنٹ ختم ہوتا ہے
spot-between-fingers = انگلیوں کے بیچ کی جلد
spot-fingertips = انگلیوں کے سرے
spot-hand-edge-little-finger = چھوٹی انگلی کی طرف ہاتھ کا کنارہ
spot-loop-edges = انگلیوں کے حلقوں کے نیچے کی جلد
spot-thumb-hole = انگوٹھے کے سوراخ کے گرد کی جلد
spot-thumb-ball = انگوٹھے کے نیچے ہتھیلی کا موٹا حصہ
spot-thumb-pad = انگوٹھے کا نرم پوٹا
spot-thumb-tip-joint-back = انگوٹھے کے آخری جوڑ کی پشت
spot-thumbnail-edge = انگوٹھے کے ناخن کے گرد کی جلد
spot-ring-crossing = جلد، جہاں چھلا اپنے آپ کو پار کرتا ہے
spot-bar-end-in-palm = ہتھیلی، جہاں سخت سلاخ ختم ہوتی ہے
spot-wrap-edge = نرم حصے کے کناروں کے ساتھ کی جلد
spot-forearm-under-band = بینڈ کے نیچے نچلا بازو
spot-band-pad = بینڈ کی گدی کے نیچے کی جلد
spot-elbow-point = کہنی کی نوک
spot-elbow-inner-groove = کہنی کی اندرونی طرف کی نالی
spot-elbow-crease = کہنی کے سامنے کی شکن
spot-upper-arm-edge = اوپری بازو، جہاں سپلنٹ ختم ہوتا ہے

## Getting ready
## One action a step. The other hand does the work.

step-wash-other-hand = اپنا دوسرا ہاتھ دھوئیں اور اچھی طرح سکھائیں۔
# For a splint that may only be changed by two people.
step-wait-for-helper = یہ اکیلے نہ کریں۔ اپنے سکھائے گئے مددگار کا انتظار کریں۔
step-ask-helper-if-possible = ہو سکے تو کسی سے مدد لیں۔
step-loop-straps-first = شروع کرنے سے پہلے ہر پٹا اس کے حلقے میں ڈالیں۔
step-lay-open-on-table = کھلا سپلنٹ میز پر رکھیں۔
step-hold-between-knees = کھلا سپلنٹ گھٹنوں کے بیچ پکڑیں۔
step-lay-opening-towards-you = سپلنٹ میز پر رکھیں، اس کا کھلا حصہ آپ کی طرف ہو۔
step-palm-down-on-table = اپنی ہتھیلی میز پر رکھیں۔
step-sit-at-table = میز کے پاس بیٹھیں۔

## Wrist splints: putting them on and taking them off

step-lay-splint-on-back = سپلنٹ ہاتھ اور نچلے بازو کی پشت پر رکھیں۔
# With one hand: the splint lies on the table with its hollow side up.
step-lay-back-of-arm-in = ہاتھ اور نچلے بازو کی پشت اس میں رکھیں۔
step-press-into-splint = بازو کو نرمی سے نیچے سپلنٹ میں دبائیں۔
step-pull-splint-open = سپلنٹ کو کھینچ کر ذرا سا کھولیں۔
step-slip-wrist-in = کلائی ایک طرف سے اندر ڈالیں۔
step-slip-wrist-out = کلائی باہر نکالیں۔ اسے نہ گھمائیں۔
# The bar is a flat stiff strip inside a soft splint.
step-bar-on-palm-side = سپلنٹ گھمائیں تاکہ اس کی سلاخ ہتھیلی کی طرف ہو۔
step-slide-hand-in = اپنا ہاتھ سپلنٹ میں سرکائیں۔
step-thumb-through-hole = انگوٹھا اس کے سوراخ میں سے گزاریں۔
step-slide-off-hand = سپلنٹ ہاتھ سے سرکا کر اتاریں۔ اسے نہ گھسیٹیں۔
step-wrap-round-wrist = لپیٹ کو کلائی کے گرد رکھیں۔
step-lay-wrist-on-wrap = کلائی لپیٹ کے بیچ میں رکھیں۔
step-hold-wrap-on-table = لپیٹ کو روکنے کے لیے ہاتھ میز پر دبائیں۔
step-unwrap = لپیٹ کھولیں۔ اسے کھینچ کر نہ اتاریں۔

## Thumb splints: putting them on and taking them off

step-push-on-with-table-edge = سپلنٹ کو میز کے کنارے سے نرمی سے دبا کر پورا بٹھائیں۔
step-keep-thumb-beside-index = انگوٹھا شہادت کی انگلی کے ساتھ رکھیں۔
step-slide-over-thumb = سپلنٹ انگوٹھے پر سرکائیں۔
step-seat-at-thumb-knuckle = سپلنٹ کو دبا کر انگوٹھے کے ہتھیلی والے جوڑ کے گرد پورا بٹھائیں۔
step-check-thumb-tip-lies-in = دیکھیں کہ انگوٹھے کا سرا سپلنٹ کے اندر ہے۔
step-bend-thumb-a-little = انگوٹھا ذرا سا موڑیں۔
step-slide-ring-on = چھلا انگوٹھے پر اس کے ہتھیلی والے جوڑ تک سرکائیں۔
# The therapist puts a mark on the ring.
step-turn-ring-to-mark = چھلا اتنا گھمائیں کہ اس کا نشان انگوٹھے کی پشت پر آ جائے۔
step-check-thumb-stops = انگوٹھا سیدھا کریں۔ ضروری ہے کہ چھلا اسے پیچھے مڑنے سے روکے۔
step-slide-ring-off = چھلا سرکا کر اتاریں۔ اٹک جائے تو صابن والا پانی مدد دیتا ہے۔
step-rest-thumb-tip-flat = انگوٹھے کا پوٹا میز پر سیدھا ٹکائیں۔
step-slide-on-from-tip = سپلنٹ سرے کی طرف سے چڑھائیں۔ سرا سیدھا رکھیں۔
step-push-thumb-in-flat = انگوٹھا میز کے ساتھ سیدھا رکھ کر سپلنٹ میں دھکیلیں۔
step-check-thumb-tip-straight = دیکھیں کہ انگوٹھے کا سرا سیدھا ہے۔
step-check-thumb-big-knuckle-bends = دیکھیں کہ انگوٹھے کا ہتھیلی والا جوڑ مڑ سکتا ہے۔
step-slide-off-tip-flat = سپلنٹ سرکا کر اتاریں۔ سرا میز پر سیدھا ٹکا رہے۔
step-look-at-skin-tip-flat = اپنی جلد دیکھیں۔ سرا میز پر سیدھا ٹکا رہے۔
step-set-between-thumb-and-index = سپلنٹ انگوٹھے اور شہادت کی انگلی کے بیچ رکھیں۔

## Splints that guard a mended thumb: the thumb never leaves its position

step-rest-hand-curled-on-towel = ہاتھ لپٹے تولیے پر رکھیں، کلائی اور انگلیاں اندر مڑی ہوں۔
step-keep-thumb-loosely-bent = انگوٹھا سارا وقت ڈھیلا اور مڑا رکھیں۔
# The roof is the part of the splint along the back of the thumb.
step-check-thumb-under-roof = دیکھیں کہ پورا انگوٹھا چھت کے نیچے ہے۔
step-rest-thumb-up-on-towel = ہاتھ تولیے پر رکھیں، انگوٹھا اوپر ہو۔
step-keep-thumb-raised = انگوٹھا سارا وقت اوپر اٹھائے رکھیں۔
step-lay-splint-along-thumb-side = سپلنٹ نچلے بازو کی انگوٹھے والی طرف رکھیں۔
step-check-thumb-straight-in-splint = دیکھیں کہ پورا انگوٹھا سپلنٹ میں سیدھا ہے۔

## Arm splints and bands

step-turn-hand-as-splint = ہاتھ اس طرح گھمائیں جیسے سپلنٹ کی شکل ہے۔
step-lay-whole-arm-in = کہنی موڑ کر بازو سپلنٹ میں رکھیں۔
step-elbow-in-hollow = کہنی کی نوک اس کے گڑھے میں بیٹھنے دیں۔
step-keep-hand-turned = ہاتھ اسی طرح گھما ہوا رکھیں۔
step-bend-elbow-as-splint = کہنی اتنی موڑیں جتنا سپلنٹ مڑا ہے۔
step-lay-splint-on-elbow-front = سپلنٹ کہنی کے سامنے کی طرف رکھیں۔
step-check-elbow-point-free = دیکھیں کہ کہنی کی نوک پر کچھ نہیں دب رہا۔
step-slide-band-up = کھلا بینڈ نچلے بازو پر اوپر سرکائیں۔
step-seat-band-below-elbow = بینڈ کہنی سے نیچے رکھیں، جہاں نچلا بازو سب سے موٹا ہے۔
step-pad-on-sore-side = گدی بازو کی درد والی طرف گھمائیں۔
step-check-no-tingling = مٹھی بنائیں۔ ہاتھ میں سنسناہٹ بالکل نہ ہو۔
step-slide-band-over-hand = کھلا بینڈ ہاتھ پر سے سرکائیں۔
step-seat-band-at-wrist-bone = بینڈ کلائی کی گول ہڈی پر رکھیں۔
step-slide-band-off = بینڈ سرکا کر اتاریں۔ اسے نہ گھسیٹیں۔

## Splints with loops for the fingers

step-fingers-through-loops = ہر انگلی اس کے حلقے میں ڈالیں۔
step-loops-beside-knuckles = ہر حلقہ ہتھیلی والے جوڑ کے پاس سرکائیں۔
step-fingers-out-of-loops = ہر انگلی اس کے حلقے سے نکالیں۔
step-check-fist-lifts-wrist = نرم مٹھی بنائیں۔ ضروری ہے کہ کلائی اوپر اٹھے۔
# A pull is an elastic cord between a loop and the frame.
step-hook-on-pulls = ہر حلقے کی لچکدار رسی فریم میں اٹکائیں۔
step-unhook-pulls = ہر حلقے کی لچکدار رسی فریم سے نکالیں۔
step-check-fingers-bend-against-pull = دیکھیں کہ کھنچاؤ کے خلاف انگلیاں مڑ سکتی ہیں۔

## Splints for the whole hand

step-keep-wrist-up-fingers-straight = کلائی اوپر اور انگلیاں سیدھی رکھیں۔
step-hand-on-towel-fingers-straight = ہاتھ لپٹے تولیے پر رکھیں، انگلیاں سیدھی ہوں۔
step-check-middle-joints-bend = دیکھیں کہ انگلیوں کے درمیانی جوڑ مڑ سکتے ہیں۔
step-lay-forearm-in = نچلا بازو سپلنٹ میں رکھیں۔
step-thumb-on-its-rest = انگوٹھا اس کی اپنی جگہ پر رکھیں۔
step-fingers-on-rest = انگلیاں ساتھ ساتھ سپلنٹ پر رکھیں۔
step-bend-big-knuckles = ہتھیلی والے جوڑ موڑیں۔ انگلیاں سیدھی رہنے دیں۔
step-keep-big-knuckles-bent = ہتھیلی والے جوڑ مڑے اور انگلیاں سیدھی رکھیں۔
step-fingers-flat-on-splint = ہر انگلی سپلنٹ کے ساتھ سیدھی لگائیں۔
step-check-middle-joints-straight = دیکھیں کہ انگلیوں کے درمیانی جوڑ سیدھے ہیں۔
step-spread-fingers-in-grooves = ہر انگلی اس کی اپنی نالی میں سیدھی رکھیں۔
step-let-hand-go-loose = ہاتھ کو جتنا ہو سکے ڈھیلا چھوڑ دیں۔
step-open-hand-slowly = ہاتھ آہستہ کھولیں۔ کبھی زبردستی نہ کریں۔
step-lay-hand-on-cushion = ہتھیلی اور نچلا بازو گدی پر رکھیں۔
step-fingers-in-gaps = ہر انگلی اس کے اپنے خانے میں رکھیں۔
step-dry-palm-and-gaps = ہتھیلی اور انگلیوں کے بیچ کی جلد سکھائیں۔
