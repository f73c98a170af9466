### Splints: names, straps, places to check, and the steps of putting on and taking off.
### “Hand that wears the splint” and “other hand” are used; left and right are never typed.

## Names
## The name stands inside sentences; the short form is a label in tables.

orthosis-forearm-thumb-spica-name = انگوٹھے کا لمبا سپلنٹ
orthosis-forearm-thumb-spica-short = نچلا بازو اور انگوٹھا
orthosis-hand-thumb-spica-name = انگوٹھے کا چھوٹا سپلنٹ
orthosis-hand-thumb-spica-short = ہاتھ اور انگوٹھا
orthosis-short-cmc-name = انگوٹھے کی جڑ کا سپلنٹ
orthosis-short-cmc-short = انگوٹھے کی جڑ
orthosis-short-cmc-mcp-block-name = انگوٹھے کی جڑ کا سپلنٹ، ہتھیلی والے جوڑ کی روک کے ساتھ
orthosis-short-cmc-mcp-block-short = انگوٹھے کی جڑ اور ہتھیلی والا جوڑ
orthosis-soft-wrist-thumb-wrap-name = کلائی اور انگوٹھے کی نرم لپیٹ
orthosis-soft-wrist-thumb-wrap-short = نرم، کلائی اور انگوٹھا
orthosis-soft-thumb-wrap-name = انگوٹھے کی نرم لپیٹ
orthosis-soft-thumb-wrap-short = نرم، انگوٹھا
orthosis-wrist-only-name = کلائی کا سپلنٹ
orthosis-wrist-only-short = کلائی

## Straps
## Each name is put into “Close the …” and “Undo the …”.

strap-wrist = کلائی کا پٹا
strap-forearm = نچلے بازو کا پٹا
strap-palm = ہتھیلی کا پٹا
strap-thumb = انگوٹھے کا پٹا
# A short splint ends at the wrist; this strap runs along that end.
strap-wrist-edge = کلائی کے پاس کا پٹا

## Places to look at in the skin check

spot-wrist-bone-thumb-side = کلائی کی ہڈی، انگوٹھے کی طرف
spot-wrist-bone-little-finger-side = کلائی کی ہڈی، چھوٹی انگلی کی طرف
spot-thumb-web = انگوٹھے اور شہادت کی انگلی کے بیچ کی جلد
spot-thumb-knuckle = انگوٹھے کے ہتھیلی والے جوڑ کی پشت اور پہلو
spot-thumb-base = انگوٹھے کی جڑ کی ہڈی
spot-palm-crease = ہتھیلی، جہاں سپلنٹ ختم ہوتا ہے
spot-forearm-edge = نچلا بازو، جہاں سپلنٹ ختم ہوتا ہے

## Putting it on
## One action a step. The other hand does the work.

step-wash-dry-hands = اپنے ہاتھ دھوئیں اور اچھی طرح سکھائیں۔
step-check-lining = دیکھیں کہ سپلنٹ اندر سے صاف، خشک اور ہموار ہے۔
step-open-straps = سب پٹے کھولیں۔
step-rest-arm-on-table = اپنا نچلا بازو میز پر رکھیں۔
step-slide-thumb-in = اپنا انگوٹھا نرمی سے اندر سرکائیں۔
step-lay-hand-in = اپنی ہتھیلی سپلنٹ میں رکھیں، انگوٹھا باہر رہے۔
step-seat-at-wrist = سپلنٹ کو دبا کر پورا بٹھائیں تاکہ اس کا موڑ کلائی پر آئے۔
step-seat-at-thumb-base = سپلنٹ کو دبا کر انگوٹھے کی جڑ کے گرد پورا بٹھائیں۔
step-smooth-the-wrap = لپیٹ کو ہموار کریں تاکہ اس میں شکن نہ رہے۔
# $strap is a strap's name, such as “wrist strap”.
step-close-strap = { $strap } بند کریں۔
step-check-strap-room = دیکھیں کہ ہر پٹے کے نیچے دوسرے ہاتھ کی انگلی کا سرا آ جاتا ہے۔
step-check-wrist-bends = دیکھیں کہ کلائی مڑ سکتی ہے۔
step-check-thumb-knuckle-bends = دیکھیں کہ انگوٹھے کا ہتھیلی والا جوڑ اور سرا مڑ سکتے ہیں۔
step-check-thumb-tip-bends = دیکھیں کہ انگوٹھے کا سرا مڑ سکتا ہے۔
step-check-fist = دیکھیں کہ مٹھی بن سکتی ہے اور انگوٹھا ہل سکتا ہے۔
step-look-at-fingers = اپنی انگلیاں اور انگوٹھا دیکھیں۔ ضروری ہے کہ یہ گرم رہیں اور ان کا رنگ عام رہے۔

## Taking it off

# $strap is a strap's name, such as “wrist strap”.
step-undo-strap = { $strap } کھولیں۔
step-lift-off = سپلنٹ اٹھا کر ہٹائیں۔ اسے نہ گھسیٹیں۔
step-lift-off-thumb-side = سپلنٹ انگوٹھے کی طرف سے اٹھا کر اتاریں۔ اسے نہ گھسیٹیں۔
step-lift-off-elbow-front = سپلنٹ کہنی کے سامنے سے اٹھا کر اتاریں۔ اسے نہ گھسیٹیں۔
step-lift-out-of-thumb-web = سپلنٹ انگوٹھے اور شہادت کی انگلی کے بیچ سے اٹھا کر نکالیں۔
step-lift-off-little-side = سپلنٹ چھوٹی انگلی کی طرف سے اٹھا کر اتاریں۔ اسے نہ گھسیٹیں۔
step-slide-off-thumb = سپلنٹ انگوٹھے سے سرکا کر اتاریں۔ اسے نہ گھمائیں۔
step-look-at-skin = اپنی جلد ہر طرف سے دیکھیں۔
