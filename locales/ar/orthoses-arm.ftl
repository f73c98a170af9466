### Splints of the thumb, the wrist and the arm, and of the whole hand: names, straps, places to check, and steps.
### What several splints share stands in orthoses.ftl. “Other hand” is the hand without the splint.

## Names of wrist splints
## The name stands inside sentences; the short form is a label in tables.

orthosis-wrist-neutral-name = جبيرة المعصم المستقيمة
orthosis-wrist-neutral-short = للمعصم، مستقيمة
orthosis-wrist-dorsal-shell-name = جبيرة المعصم على ظهر اليد
orthosis-wrist-dorsal-shell-short = للمعصم، على ظهر اليد
orthosis-wrist-all-round-name = جبيرة المعصم المحيطة
orthosis-wrist-all-round-short = للمعصم من كل الجهات
orthosis-wrist-soft-stay-name = جبيرة المعصم اللينة مع دعامة
orthosis-wrist-soft-stay-short = لينة للمعصم مع دعامة
orthosis-wrist-soft-wrap-name = جبيرة المعصم اللينة
orthosis-wrist-soft-wrap-short = لينة للمعصم

## Names of thumb splints

orthosis-forearm-thumb-spica-tip-name = جبيرة الإبهام الطويلة حتى طرفه
orthosis-forearm-thumb-spica-tip-short = للساعد والإبهام كله
orthosis-thumb-knuckle-shell-name = جبيرة مفصل الإبهام عند الكف
orthosis-thumb-knuckle-shell-short = لمفصل الإبهام عند الكف
orthosis-thumb-mcp-ring-name = جبيرة الإبهام الحلقية
orthosis-thumb-mcp-ring-short = حلقة للإبهام
orthosis-thumb-tip-cap-name = جبيرة طرف الإبهام
orthosis-thumb-tip-cap-short = لطرف الإبهام
# It keeps the space between thumb and index finger open.
orthosis-thumb-web-spacer-name = جبيرة المسافة بين الإبهام والسبابة
orthosis-thumb-web-spacer-short = لما بين الإبهام والسبابة
# Its roof keeps the thumb from straightening too far.
orthosis-thumb-dorsal-block-name = جبيرة حماية الإبهام
orthosis-thumb-dorsal-block-short = لحماية الإبهام
# It holds the thumb up, away from the palm.
orthosis-thumb-raised-long-name = جبيرة الإبهام المرفوع
orthosis-thumb-raised-long-short = للإبهام المرفوع

## Names of arm splints and bands

orthosis-long-arm-rotation-name = جبيرة الذراع الطويلة
orthosis-long-arm-rotation-short = من المرفق إلى اليد
orthosis-elbow-night-shell-name = جبيرة المرفق الليلية
orthosis-elbow-night-shell-short = للمرفق في الليل
orthosis-counterforce-band-name = حزام الساعد
orthosis-counterforce-band-short = حزام للساعد
orthosis-distal-ulna-strap-name = حزام المعصم المتين
orthosis-distal-ulna-strap-short = حزام للمعصم

## Names of splints for wrist and fingers

# Cords join wrist and fingers, so that each helps the other to move.
orthosis-tenodesis-assist-name = جبيرة مساعدة المعصم والأصابع
orthosis-tenodesis-assist-short = لمساعدة المعصم والأصابع
# Elastic pulls lift the fingers at the big knuckles.
orthosis-dynamic-knuckle-extension-name = جبيرة رفع الأصابع
orthosis-dynamic-knuckle-extension-short = لرفع الأصابع
orthosis-palm-shell-wrist-knuckles-name = جبيرة المعصم ومفاصل الأصابع عند الكف
orthosis-palm-shell-wrist-knuckles-short = للمعصم ومفاصل الأصابع عند الكف
orthosis-resting-hand-name = جبيرة إراحة اليد
orthosis-resting-hand-short = لإراحة اليد
orthosis-intrinsic-plus-shell-name = جبيرة اليد مع ثني المفاصل عند الكف
orthosis-intrinsic-plus-shell-short = لليد، والمفاصل عند الكف مثنية
orthosis-palm-extension-pan-name = جبيرة راحة اليد المفتوحة
orthosis-palm-extension-pan-short = لراحة اليد المفتوحة
orthosis-spread-hand-cushion-name = وسادة اليد اللينة
orthosis-spread-hand-cushion-short = وسادة لليد

## Straps
## Each name is put into “Close the …” and “Undo the …”.

strap-near-elbow = الشريط القريب من المرفق
strap-upper-arm = شريط العضد
strap-hand-back = شريط ظهر اليد
strap-across-fingers = شريط الأصابع
strap-across-fingertips = الشريط القريب من أطراف الأصابع
# A band has one strap, which pulls it snug.
strap-band = شريط الحزام

## Places to look at in the skin check

spot-wrist-palm-side = المعصم من جهة راحة اليد
spot-wrist-back = ظهر المعصم
spot-forearm-thumb-side = الساعد من جهة الإبهام، فوق المعصم مباشرة
spot-knuckle-backs = ظهر مفاصل الأصابع عند الكف
spot-middle-joint-backs = ظهر المفاصل الوسطى للأصابع
spot-palm-below-knuckles = راحة اليد، تحت الأصابع مباشرة
spot-palm-middle = وسط راحة اليد
spot-splint-end-at-fingers = الأصابع، حيث تنتهي الجبيرة
spot-between-fingers = الجلد بين الأصابع
spot-fingertips = أطراف الأصابع
spot-hand-edge-little-finger = حافة اليد من جهة الخنصر
spot-loop-edges = الجلد تحت حلقات الأصابع
spot-thumb-hole = الجلد حول فتحة الإبهام
spot-thumb-ball = الجزء السميك من راحة اليد تحت الإبهام
spot-thumb-pad = باطن طرف الإبهام
spot-thumb-tip-joint-back = ظهر المفصل الأخير في الإبهام
spot-thumbnail-edge = الجلد حول ظفر الإبهام
spot-ring-crossing = الجلد حيث تتقاطع الحلقة مع نفسها
spot-bar-end-in-palm = راحة اليد، حيث تنتهي الدعامة الصلبة
spot-wrap-edge = الجلد عند حواف الجزء اللين
spot-forearm-under-band = الساعد تحت الحزام
spot-band-pad = الجلد تحت حشوة الحزام
spot-elbow-point = رأس المرفق
spot-elbow-inner-groove = التجويف الضيق في الجهة الداخلية من المرفق
spot-elbow-crease = ثنية الجلد في مقدمة المرفق
spot-upper-arm-edge = العضد، حيث تنتهي الجبيرة

## Getting ready
## One action a step. The other hand does the work.

step-wash-other-hand = اغسل يدك الأخرى وجففها جيدا.
# For a splint that may only be changed by two people.
step-wait-for-helper = لا تفعل هذا وحدك. انتظر مساعدك المدرب.
step-ask-helper-if-possible = اطلب من أحد أن يساعدك، إن أمكن.
step-loop-straps-first = مرر كل شريط في حلقته قبل أن تبدأ.
step-lay-open-on-table = ضع الجبيرة مفتوحة على طاولة.
step-hold-between-knees = أمسك الجبيرة مفتوحة بين ركبتيك.
step-lay-opening-towards-you = ضع الجبيرة على طاولة وفتحتها نحوك.
step-palm-down-on-table = ضع راحة يدك على طاولة.
step-sit-at-table = اجلس إلى طاولة.

## Wrist splints: putting them on and taking them off

step-lay-splint-on-back = ضع الجبيرة على ظهر يدك وظهر ساعدك.
# With one hand: the splint lies on the table with its hollow side up.
step-lay-back-of-arm-in = ضع ظهر يدك وظهر ساعدك في الجبيرة.
step-press-into-splint = اضغط ذراعك برفق إلى أسفل داخل الجبيرة.
step-pull-splint-open = باعد بين حافتي الجبيرة قليلا.
step-slip-wrist-in = أدخل معصمك من الجانب.
step-slip-wrist-out = أخرج معصمك. لا تلفه.
# The bar is a flat stiff strip inside a soft splint.
step-bar-on-palm-side = أدر الجبيرة حتى تصبح دعامتها من جهة راحة يدك.
step-slide-hand-in = أدخل يدك في الجبيرة.
step-thumb-through-hole = أدخل إبهامك في فتحته.
step-slide-off-hand = اسحب الجبيرة برفق عن يدك. لا تجرها على الجلد.
step-wrap-round-wrist = لف الجبيرة اللينة حول معصمك.
step-lay-wrist-on-wrap = ضع معصمك على وسط الجبيرة اللينة.
step-hold-wrap-on-table = اضغط يدك على طاولة حتى لا تتحرك الجبيرة اللينة.
step-unwrap = افتح الجبيرة اللينة. لا تنزعها بالشد.

## Thumb splints: putting them on and taking them off

step-push-on-with-table-edge = ادفع الجبيرة برفق في حافة طاولة حتى تستقر في مكانها.
step-keep-thumb-beside-index = أبق إبهامك بجانب سبابتك.
step-slide-over-thumb = مرر الجبيرة على إبهامك.
step-seat-at-thumb-knuckle = اضغط الجبيرة في مكانها حول مفصل إبهامك عند الكف.
step-check-thumb-tip-lies-in = تأكد من أن طرف إبهامك داخل الجبيرة.
step-bend-thumb-a-little = اثن إبهامك قليلا.
step-slide-ring-on = مرر الحلقة على إبهامك حتى مفصله عند الكف.
# The therapist puts a mark on the ring.
step-turn-ring-to-mark = أدر الحلقة حتى تصبح علامتها على ظهر إبهامك.
step-check-thumb-stops = افرد إبهامك. يجب أن تمنعه الحلقة من الانثناء إلى الخلف.
step-slide-ring-off = اسحب الحلقة عن إبهامك. إذا علقت، يساعدك الماء والصابون.
step-rest-thumb-tip-flat = أرح باطن طرف إبهامك مبسوطا على طاولة.
step-slide-on-from-tip = أدخل الجبيرة من طرف إبهامك. أبق الطرف مبسوطا.
step-push-thumb-in-flat = ادفع إبهامك مبسوطا على الطاولة حتى يدخل في الجبيرة.
step-check-thumb-tip-straight = تأكد من أن طرف إبهامك مفرود.
step-check-thumb-big-knuckle-bends = تأكد من أن مفصل إبهامك عند الكف يستطيع الانثناء.
step-slide-off-tip-flat = اسحب الجبيرة عن إبهامك. أبق الطرف مبسوطا على الطاولة.
step-look-at-skin-tip-flat = انظر إلى جلدك. أبق طرف إبهامك مبسوطا على الطاولة.
step-set-between-thumb-and-index = ضع الجبيرة بين إبهامك وسبابتك.

## Splints that guard a mended thumb: the thumb never leaves its position

step-rest-hand-curled-on-towel = أرح يدك على منشفة ملفوفة، ومعصمك وأصابعك مثنية.
step-keep-thumb-loosely-bent = أبق إبهامك مثنيا ومرتخيا طوال الوقت.
# The roof is the part of the splint along the back of the thumb.
step-check-thumb-under-roof = تأكد من أن إبهامك كله تحت سقف الجبيرة.
step-rest-thumb-up-on-towel = أرح يدك على منشفة وإبهامك مرفوع.
step-keep-thumb-raised = أبق إبهامك مرفوعا طوال الوقت.
step-lay-splint-along-thumb-side = ضع الجبيرة على طول ساعدك من جهة الإبهام.
step-check-thumb-straight-in-splint = تأكد من أن إبهامك كله مفرود داخل الجبيرة.

## Arm splints and bands

step-turn-hand-as-splint = أدر يدك في الاتجاه الذي يناسب شكل الجبيرة.
step-lay-whole-arm-in = ضع ذراعك في الجبيرة ومرفقك مثني.
step-elbow-in-hollow = دع رأس مرفقك يستقر في التجويف المخصص له.
step-keep-hand-turned = أبق يدك في الاتجاه نفسه.
step-bend-elbow-as-splint = اثن مرفقك بقدر انثناء الجبيرة.
step-lay-splint-on-elbow-front = ضع الجبيرة على طول مقدمة مرفقك.
step-check-elbow-point-free = تأكد من أنه لا شيء يضغط على رأس مرفقك.
step-slide-band-up = مرر الحزام مفتوحا على ساعدك نحو المرفق.
step-seat-band-below-elbow = ضع الحزام تحت المرفق، حيث يكون ساعدك أسمك.
step-pad-on-sore-side = أدر الحشوة إلى الجهة المؤلمة من ذراعك.
step-check-no-tingling = أغلق قبضتك. يجب ألا تشعر بتنميل في يدك.
step-slide-band-over-hand = مرر الحزام مفتوحا على يدك.
step-seat-band-at-wrist-bone = ضع الحزام على العظم المستدير في معصمك.
step-slide-band-off = انزع الحزام برفق. لا تجره على الجلد.

## Splints with loops for the fingers

step-fingers-through-loops = أدخل كل إصبع في حلقتها.
step-loops-beside-knuckles = حرك كل حلقة حتى تقترب من مفصل الإصبع عند الكف.
step-fingers-out-of-loops = أخرج كل إصبع من حلقتها.
step-check-fist-lifts-wrist = أغلق أصابعك في قبضة لينة. يجب أن يرتفع معصمك.
# A pull is an elastic cord between a loop and the frame.
step-hook-on-pulls = علق الخيط المرن لكل حلقة بإطار الجبيرة.
step-unhook-pulls = فك الخيط المرن لكل حلقة عن إطار الجبيرة.
step-check-fingers-bend-against-pull = تأكد من أنك تستطيع ثني أصابعك عكس شد الخيوط.

## Splints for the whole hand

step-keep-wrist-up-fingers-straight = أبق معصمك مرفوعا وأصابعك مفرودة.
step-hand-on-towel-fingers-straight = أرح يدك على منشفة ملفوفة، وأصابعك مفرودة.
step-check-middle-joints-bend = تأكد من أن المفاصل الوسطى لأصابعك تستطيع الانثناء.
step-lay-forearm-in = ضع ساعدك في الجبيرة.
step-thumb-on-its-rest = ضع إبهامك في المكان المخصص له.
step-fingers-on-rest = ضع أصابعك على الجبيرة، بعضها بجانب بعض.
step-bend-big-knuckles = اثن مفاصل أصابعك عند الكف. اترك أصابعك مفرودة.
step-keep-big-knuckles-bent = أبق مفاصل أصابعك عند الكف مثنية، وأصابعك مفرودة.
step-fingers-flat-on-splint = ضع كل إصبع مبسوطة على الجبيرة.
step-check-middle-joints-straight = تأكد من أن المفاصل الوسطى لأصابعك مفرودة.
step-spread-fingers-in-grooves = ضع كل إصبع مفرودة في المجرى المخصص لها.
step-let-hand-go-loose = أرخ يدك قدر ما تستطيع.
step-open-hand-slowly = افتح يدك ببطء. لا تفتحها بالقوة أبدا.
step-lay-hand-on-cushion = ضع راحة يدك وساعدك على الوسادة.
step-fingers-in-gaps = ضع كل إصبع في الفراغ المخصص لها.
step-dry-palm-and-gaps = جفف راحة يدك والجلد بين أصابعك.
