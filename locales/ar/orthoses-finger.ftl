### Splints of the fingers and the hand: names, straps, places to check, and the steps of putting on and taking off.
### “Your finger” is the finger that the splint is for; where several fingers are in it,
### that one is “the affected finger”, which cannot be read as the one that treats.
### The joints of a finger are the big knuckle, the middle joint and the tip. Left and right are never typed.

## Names
## The name stands inside sentences; the short form is a label in tables.

orthosis-tip-shell-custom-name = جبيرة طرف الإصبع
orthosis-tip-shell-custom-short = لطرف الإصبع
orthosis-tip-shell-ready-name = جبيرة طرف الإصبع الجاهزة
orthosis-tip-shell-ready-short = لطرف الإصبع، جاهزة
orthosis-tip-cast-name = جبس طرف الإصبع
orthosis-tip-cast-short = جبس لطرف الإصبع
orthosis-finger-gutter-middle-joint-name = جبيرة المفصل الأوسط للإصبع
orthosis-finger-gutter-middle-joint-short = للمفصل الأوسط
orthosis-finger-gutter-long-name = جبيرة الإصبع الكاملة
orthosis-finger-gutter-long-short = للإصبع كلها
orthosis-ring-stops-bending-back-name = الجبيرة الحلقية التي تمنع الانثناء إلى الخلف
orthosis-ring-stops-bending-back-short = حلقة تمنع الانثناء إلى الخلف
orthosis-ring-keeps-straight-name = الجبيرة الحلقية التي تبقي الإصبع مفرودة
orthosis-ring-keeps-straight-short = حلقة تبقي الإصبع مفرودة
orthosis-serial-finger-cast-name = جبس فرد الإصبع
orthosis-serial-finger-cast-short = جبس لفرد الإصبع
orthosis-spring-finger-extension-name = جبيرة الإصبع مع نابض
orthosis-spring-finger-extension-short = نابض للإصبع
orthosis-finger-wedge-stepped-name = جبيرة الإصبع مع إسفين
orthosis-finger-wedge-stepped-short = إسفين للإصبع
orthosis-finger-extension-block-name = جبيرة الإصبع مع سقف
orthosis-finger-extension-block-short = سقف فوق الإصبع
orthosis-buddy-straps-name = أشرطة ربط الإصبعين
orthosis-buddy-straps-short = أشرطة لربط الإصبعين
orthosis-knuckle-block-name = جبيرة مفصل إصبع واحدة عند الكف
orthosis-knuckle-block-short = لمفصل إصبع عند الكف
orthosis-trigger-ring-name = الجبيرة الحلقية للمفصل الأوسط
orthosis-trigger-ring-short = حلقة للمفصل الأوسط
orthosis-relative-extension-yoke-name = جبيرة العارضة التي ترفع إصبعا واحدة
orthosis-relative-extension-yoke-short = عارضة ترفع إصبعا
orthosis-relative-flexion-yoke-name = جبيرة العارضة التي تخفض إصبعا واحدة
orthosis-relative-flexion-yoke-short = عارضة تخفض إصبعا
orthosis-dorsal-block-long-name = جبيرة ظهر اليد الطويلة
orthosis-dorsal-block-long-short = لظهر اليد، طويلة
orthosis-dorsal-block-short-name = جبيرة ظهر اليد القصيرة
orthosis-dorsal-block-short-short = لظهر اليد، قصيرة
orthosis-ulnar-gutter-name = جبيرة البنصر والخنصر الطويلة
orthosis-ulnar-gutter-short = للبنصر والخنصر والمعصم
orthosis-knuckle-shell-ring-little-name = جبيرة مفصلي البنصر والخنصر عند الكف
orthosis-knuckle-shell-ring-little-short = لمفصلي البنصر والخنصر عند الكف
orthosis-metacarpal-sleeve-name = طوق عظم اليد
orthosis-metacarpal-sleeve-short = طوق لعظم اليد
orthosis-phalanx-gutter-pair-name = جبيرة إصبعين متجاورتين
orthosis-phalanx-gutter-pair-short = لإصبعين متجاورتين
orthosis-night-finger-extension-name = جبيرة الإصبع الليلية
orthosis-night-finger-extension-short = للإصبع في الليل
orthosis-drift-strap-name = جبيرة الأشرطة اللينة لمفاصل الأصابع عند الكف
orthosis-drift-strap-short = أشرطة لينة لمفاصل الأصابع عند الكف
orthosis-knuckle-extension-block-name = جبيرة مفاصل الأصابع عند الكف مع عارضة
orthosis-knuckle-extension-block-short = عارضة لمفاصل الأصابع عند الكف

## Straps
## Each name is put into “Close the …” and “Undo the …”.

strap-finger-tape = الشريط اللاصق
strap-finger-base = الشريط عند قاعدة الإصبع
strap-finger-past-middle-joint = الشريط الذي يلي المفصل الأوسط مباشرة
strap-finger-end = الشريط القريب من طرف الإصبع
# Buddy straps hold a finger to its neighbour.
strap-finger-pair-base = الشريط عند قاعدة الإصبعين
strap-finger-pair-end = الشريط الذي يلي المفصل الأوسط للإصبعين
# In a shell that holds a finger and its neighbour.
strap-finger-pair = الشريط حول الإصبعين
# Across all four fingers, under a roof on the back of the hand.
strap-finger-row = شريط الأصابع
strap-finger-loops = حلقات الأصابع

## Places to look at in the skin check

spot-finger-end-joint-back = ظهر المفصل الأقرب إلى طرف الإصبع
spot-finger-nail-skin = الجلد حول الظفر
spot-finger-pad-sides = جانبا باطن طرف الإصبع
spot-finger-sides = جانبا الإصبع
spot-finger-sides-near-base = جانبا الإصبع، قرب قاعدتها
spot-finger-middle-joint-back = ظهر المفصل الأوسط
spot-finger-middle-joint-backs = ظهر المفاصل الوسطى
spot-ring-little-middle-joint-backs = ظهر المفاصل الوسطى
spot-finger-joint-creases = ثنيات الجلد على الإصبع من جهة راحة اليد
spot-finger-web = الجلد حيث تلتقي الأصابع براحة اليد
spot-finger-between = الجلد بين الأصابع
spot-finger-under-ring = الجلد تحت الحلقة
spot-finger-cast-edges = الجلد عند حافتي الجبس
spot-finger-tip-cast-edges = الجلد عند حافتي الجبس
spot-finger-base-front = الإصبع من جهة راحة اليد، قرب قاعدتها
spot-finger-first-bone-back = ظهر الإصبع، بجانب مفصلها عند الكف
spot-finger-knuckle-backs = ظهر مفاصل الأصابع عند الكف
spot-ring-little-knuckle-backs = ظهر مفاصل الأصابع عند الكف
spot-finger-hand-edge = حافة اليد من جهة الخنصر
spot-finger-wrist-back-edge = ظهر المعصم، حيث تنتهي الجبيرة
spot-finger-over-break = الجلد فوق العظم المكسور
spot-finger-wound-line = الجرح أو الندبة

## Fingertip splints
## The tip must not bend while it heals: it lies on the table from before the strap opens until it is closed again.

step-finger-tip-on-table = ضع إصبعك مبسوطة على طاولة، وطرفها مفرود.
step-finger-dry-on-table = جفف الإصبع بمنشفة. أبق طرفها مبسوطا.
step-finger-slide-on-from-tip = أدخل الجبيرة من طرف الإصبع. أبق الإصبع مفرودة.
step-finger-lift-when-closed = لا ترفع الإصبع إلا بعد إغلاق الجبيرة.
step-finger-check-tip-straight = تأكد من أن طرف الإصبع مفرود وثابت في الجبيرة.
step-finger-lay-out-towel = ضع منشفة على الطاولة قبل أن تفتح أي شيء.
step-finger-slide-off-forwards = اسحب الجبيرة إلى الأمام مباشرة عن طرف الإصبع. لا تجعل الجبيرة تميل.
step-finger-tip-if-healing = إذا كان طرف الإصبع ما زال يلتئم، فأبقه مبسوطا على الطاولة.
step-finger-look-on-table = انظر إلى جلدك بينما تبقى الإصبع على الطاولة.

## Splints along a finger

step-finger-straight-on-table = أرح إصبعك على طاولة، مفرودة بقدر ما تنفرد.
step-finger-push-to-base = ادفع الجبيرة حتى تصل إلى قاعدة الإصبع.
step-finger-slide-on = أدخل الجبيرة برفق من طرف الإصبع.
step-finger-straps-off-joints = تأكد من أنه لا يوجد شريط فوق مفصل.
step-finger-check-tip-bends = تأكد من أن طرف إصبعك يستطيع الانثناء.
step-finger-check-middle-joint-bends = تأكد من أن المفصل الأوسط لإصبعك يستطيع الانثناء.
step-finger-check-knuckle-bends = تأكد من أن مفصل إصبعك عند الكف يستطيع الانثناء.
step-finger-middle-if-healing = إذا كان المفصل الأوسط ما زال يلتئم، فأبقه مبسوطا على الطاولة.
step-finger-straight-if-healing = إذا كانت إصبعك ما زالت تلتئم، فأبقها مفرودة على الطاولة.

## A roof that stops a finger from straightening

step-finger-bend-slightly = اثن المفصل الأوسط لإصبعك قليلا.
step-finger-roof-on-finger = ضع الجبيرة على طول ظهر إصبعك.
step-finger-check-stops-short = تأكد من أن سقف الجبيرة يمنع فرد إصبعك أكثر مما يجب.
step-finger-bent-if-healing = إذا كان المفصل الأوسط ما زال يلتئم، فأبقه مثنيا قليلا.

## Springs and wedges
## The pull comes last when it goes on and first when it comes off.

step-finger-joint-at-spring = ضع مفصلك الأوسط عند ثنية النابض تماما.
step-finger-spring-last = دع النابض يشد ببطء.
step-finger-hold-spring = أمسك النابض حتى لا يرتد فجأة.
step-finger-wedge-back = أرجع الإسفين إلى الخلف حتى آخره.
step-finger-wedge-in = أدخل الإسفين حتى العلامة التي حددتها العيادة.
step-finger-check-mild-pull = تأكد من أن الشد خفيف ولا يؤلم.

## Rings

step-finger-check-ring = تأكد من أن الحلقة نظيفة وجافة وغير مثنية.
step-finger-keep-straight = أبق إصبعك مفرودة.
step-finger-slide-ring-on = أدخل الحلقة من طرف الإصبع.
step-finger-ring-cross-front = أدر الحلقة حتى يصبح تقاطعها تحت المفصل الأوسط، من جهة راحة اليد.
step-finger-ring-cross-back = أدر الحلقة حتى يصبح تقاطعها على ظهر المفصل الأوسط.
step-finger-ring-over-joint = ادفع الحلقة حتى تغطي المفصل الأوسط.
step-finger-check-full-bend = تأكد من أن إصبعك تستطيع الانثناء بالكامل.
step-finger-check-not-back = تأكد من أن المفصل الأوسط لا يستطيع الانثناء إلى الخلف.
step-finger-check-middle-joint-straight = تأكد من أن المفصل الأوسط يبقى مفرودا.
step-finger-slide-ring-off = اسحب الحلقة عن الإصبع من جهة طرفها.
step-finger-ring-stuck = إذا علقت الحلقة، فاستعمل قليلا من الماء والصابون.

## Casts
## Only the clinic puts a cast on and takes it off.

step-finger-cast-by-clinic = اترك وضع الجبس للعيادة وحدها.
step-finger-cast-cover = قبل الاغتسال، غط الجبس بكيس وأغلقه حتى لا يدخل الماء.
step-finger-cast-look-at-edges = انظر إلى الجلد عند حافتي الجبس.
step-finger-cast-off-by-clinic = اترك نزع الجبس للعيادة وحدها.
step-finger-cast-no-cutting = لا تقص الجبس، ولا تشده، ولا تدخل شيئا تحته.
step-finger-cast-slips = إذا انزلق الجبس أو انكسر، فأبق إصبعك مفرودة واتصل بنا.

## Buddy straps

step-finger-dry-between = جفف جلدك جيدا، وبين الأصابع أيضا.
step-finger-beside-neighbour = ضع إصبعك بجانب الإصبع المجاورة التي اختارتها العيادة.
step-finger-check-both-bend = تأكد من أن الإصبعين تنثنيان معا.
step-finger-look-between = انظر إلى جلدك من كل الجهات، وبين الأصابع أيضا.

## Knuckle splints for one finger

step-finger-push-into-ring = ادفع إصبعك إلى داخل الحلقة.
step-finger-palm-piece-flat = ضع القطعة المخصصة للكف مبسوطة في راحة يدك.

## Bar splints
## One finger lies higher or lower than its neighbours. In the first kind wrist and fingers must not drop.

step-finger-towel-roll = ضع منشفة ملفوفة على الطاولة.
step-finger-wrist-back-on-towel = أرح يدك على المنشفة ومعصمك مثني إلى الخلف.
step-finger-fingers-straight = أبق أصابعك مفرودة.
step-finger-yoke-on-top = ضع الإصبع المصابة فوق العارضة.
step-finger-yoke-others-under = أدخل الأصابع المجاورة للإصبع المصابة تحت العارضة.
step-finger-yoke-below = أدخل الإصبع المصابة تحت العارضة.
step-finger-yoke-others-over = ضع الأصابع المجاورة للإصبع المصابة فوق العارضة.
step-finger-yoke-to-base = ادفع العارضة حتى قاعدة أصابعك.
step-finger-check-higher = تأكد من أن الإصبع المصابة أعلى من الأصابع المجاورة لها.
step-finger-check-lower = تأكد من أن الإصبع المصابة أخفض من الأصابع المجاورة لها.
step-finger-check-joints-beyond-bend = تأكد من أن المفاصل الوسطى وأطراف الأصابع تستطيع الانثناء.
step-finger-slide-off-fingers = اسحب الجبيرة إلى الأمام عن أصابعك.
step-finger-tendon-if-healing = إذا كان وتر ما زال يلتئم، فلا تدع معصمك ولا أصابعك تهبط.

## Splints on the back of the hand
## For sewn bending tendons: wrist and fingers stay bent, and nobody straightens them.

step-finger-only-when-allowed = لا تتبع هذه الخطوات إلا إذا سمحت لك العيادة بذلك.
step-finger-curl-over-towel = أرح يدك فوق المنشفة، ومعصمك وأصابعك مثنية.
step-finger-roof-over-hand = أنزل الجبيرة على ظهر يدك.
step-finger-check-under-roof = تأكد من أن طرف كل إصبع، ما عدا الإبهام، تحت سقف الجبيرة.
step-finger-stay-curled = اترك أصابعك مثنية. لا تفردها.
step-finger-look-while-curled = انظر إلى جلدك بينما تبقى أصابعك مثنية.

## Splints for broken bones

step-finger-pad-between = ضع الحشوة اللينة بين الإصبعين.
step-finger-little-side-in = ضع جانب يدك من جهة الخنصر في الجبيرة.
step-finger-knuckles-in-bend = تأكد من أن مفاصل أصابعك عند الكف مستقرة في ثنية الجبيرة.
step-finger-knuckles-bent-fingers-straight = اثن مفاصل أصابعك عند الكف. أبق أصابعك مفرودة.
step-finger-check-not-crossed = تأكد من أن أصابعك لا يتقاطع بعضها مع بعض.
step-finger-knuckles-if-healing = إذا كان عظم ما زال يلتئم، فأبق مفاصل أصابعك عند الكف مثنية.
step-finger-sleeve-over-hand = مرر الطوق على يدك حتى العظم المؤلم.
step-finger-sleeve-behind-knuckles = أبق حافة الطوق الأمامية خلف مفاصل أصابعك عند الكف.
step-finger-slide-off-hand = اسحب الجبيرة إلى الأمام عن يدك.

## Night splints, finger loops, knuckle bars

step-finger-rest-easy = ضع إصبعك في الجبيرة. افرد إصبعك بقدر ما يسهل عليك فقط.
step-finger-check-no-pull = تأكد من أنه لا شيء يشد جلدك.
step-finger-loops-on = أدخل كل إصبع في حلقتها.
step-finger-easy-pull = لا تشد الحلقات أكثر مما هو مريح.
step-finger-check-in-line = تأكد من أن أصابعك تتجه إلى الأمام مباشرة.
step-finger-bend-knuckles-little = اثن مفاصل أصابعك عند الكف قليلا.
step-finger-under-bar = أدخل بنصرك وخنصرك تحت العارضة.
step-finger-check-straighten = تأكد من أنك تستطيع فرد المفاصل الوسطى لأصابعك.

## Putting it on with one hand
## There is no other hand: table, towel, book, thigh and the thumb of the same hand do the work.

step-finger-against-book = ضع الجبيرة مفتوحة على طاولة، وأسندها إلى كتاب ثقيل.
step-finger-slide-along-table = مرر إصبعك مبسوطة على الطاولة حتى تدخل في الجبيرة.
step-finger-slide-in-easy = مرر إصبعك على الطاولة حتى تدخل في الجبيرة.
step-finger-push-under-roof = مرر كل إصبع في الجبيرة تحت سقفها.
step-finger-push-hand-in = ادفع يدك إلى داخل الطوق.
step-finger-own-thumb = استعمل إبهام اليد نفسها لإغلاق الأشرطة.
step-finger-upright-in-towel = اضغط الجبيرة وهي قائمة في منشفة ملفوفة حتى تثبت.
step-finger-thumb-turns-ring = استعمل إبهام اليد نفسها لتدوير الحلقة.
step-finger-wrist-stays-back = أبق معصمك مثنيا إلى الخلف.
step-finger-straps-as-loops = ابدأ وكل شريط مغلق كحلقة واسعة.
step-finger-through-loops = ادفع الإصبعين معا في الحلقات.
step-finger-trap-strap-end = ثبت طرف كل شريط تحت فخذك واسحب برفق.
step-finger-cast-cover-with-knees = أمسك الكيس بين ركبتيك وأدخل يدك فيه.
step-finger-trained-helper = دع المساعد الذي دربته العيادة يفعل هذا. لا تفعله وحدك أبدا.
