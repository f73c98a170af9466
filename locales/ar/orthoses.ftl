### Splints: names, straps, places to check, and the steps of putting on and taking off.
### “Hand that wears the splint” and “other hand” are used; left and right are never typed.

## Names
## The name stands inside sentences; the short form is a label in tables.

orthosis-forearm-thumb-spica-name = جبيرة الإبهام الطويلة
orthosis-forearm-thumb-spica-short = للساعد والإبهام
orthosis-hand-thumb-spica-name = جبيرة الإبهام القصيرة
orthosis-hand-thumb-spica-short = لليد والإبهام
orthosis-short-cmc-name = جبيرة قاعدة الإبهام
orthosis-short-cmc-short = لقاعدة الإبهام
orthosis-short-cmc-mcp-block-name = جبيرة قاعدة الإبهام مع حاجز للمفصل
orthosis-short-cmc-mcp-block-short = لقاعدة الإبهام ومفصله عند الكف
orthosis-soft-wrist-thumb-wrap-name = جبيرة المعصم والإبهام اللينة
orthosis-soft-wrist-thumb-wrap-short = لينة للمعصم والإبهام
orthosis-soft-thumb-wrap-name = جبيرة الإبهام اللينة
orthosis-soft-thumb-wrap-short = لينة للإبهام
orthosis-wrist-only-name = جبيرة المعصم
orthosis-wrist-only-short = للمعصم

## Straps
## Each name is put into “Close the …” and “Undo the …”.

strap-wrist = شريط المعصم
strap-forearm = شريط الساعد
strap-palm = شريط راحة اليد
strap-thumb = شريط الإبهام
# A short splint ends at the wrist; this strap runs along that end.
strap-wrist-edge = الشريط المجاور للمعصم

## Places to look at in the skin check

spot-wrist-bone-thumb-side = عظم المعصم من جهة الإبهام
spot-wrist-bone-little-finger-side = عظم المعصم من جهة الخنصر
spot-thumb-web = الجلد بين الإبهام والسبابة
spot-thumb-knuckle = ظهر مفصل الإبهام عند الكف وجانباه
spot-thumb-base = العظم في قاعدة الإبهام عند المعصم
spot-palm-crease = راحة اليد، حيث تنتهي الجبيرة
spot-forearm-edge = الساعد، حيث تنتهي الجبيرة

## Putting it on
## One action a step. The other hand does the work.

step-wash-dry-hands = اغسل يديك وجففهما جيدا.
step-check-lining = تأكد من أن الجبيرة نظيفة وجافة وملساء من الداخل.
step-open-straps = افتح كل الأشرطة.
step-rest-arm-on-table = أرح ساعدك على طاولة.
step-slide-thumb-in = أدخل إبهامك في الجبيرة برفق.
step-lay-hand-in = ضع راحة يدك في الجبيرة، وإبهامك خارجها.
step-seat-at-wrist = اضغط الجبيرة في مكانها حتى تستقر ثنيتها عند معصمك.
step-seat-at-thumb-base = اضغط الجبيرة في مكانها حول قاعدة إبهامك.
step-smooth-the-wrap = افرد الجبيرة اللينة على يدك حتى لا تبقى فيها ثنيات.
# $strap is a strap's name, such as “wrist strap”.
step-close-strap = أغلق { $strap }.
step-check-strap-room = تأكد من أن طرف إصبع من يدك الأخرى يدخل تحت كل شريط.
step-check-wrist-bends = تأكد من أن معصمك يستطيع الانثناء.
step-check-thumb-knuckle-bends = تأكد من أن مفصل إبهامك عند الكف وطرف إبهامك يستطيعان الانثناء.
step-check-thumb-tip-bends = تأكد من أن طرف إبهامك يستطيع الانثناء.
step-check-fist = تأكد من أنك تستطيع إغلاق قبضتك وتحريك إبهامك.
step-look-at-fingers = انظر إلى أصابعك. يجب أن تبقى دافئة وبلونها المعتاد.

## Taking it off

# $strap is a strap's name, such as “wrist strap”.
step-undo-strap = افتح { $strap }.
step-lift-off = ارفع الجبيرة عن يدك. لا تجرها على الجلد.
step-lift-off-thumb-side = أبعد الجبيرة من جهة الإبهام. لا تجرها على الجلد.
step-lift-off-elbow-front = ارفع الجبيرة عن مقدمة مرفقك. لا تجرها على الجلد.
step-lift-out-of-thumb-web = أخرج الجبيرة من بين إبهامك وسبابتك.
step-lift-off-little-side = أبعد الجبيرة من جهة الخنصر. لا تجرها على الجلد.
step-slide-off-thumb = اسحب الجبيرة برفق عن إبهامك. لا تلفها حوله.
step-look-at-skin = انظر إلى جلدك من كل الجهات.
