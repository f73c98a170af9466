### More activities: what people do with their hands, and easier ways to do it.
### The name stands as a short order in a table, such as “Wash the dishes”; here it is a verbal noun.
### Every other message is one or two short sentences of advice beside that name.

## More ways for jobs named elsewhere

activity-text-with-thumbs-open-elbow = أرح ذراعك. أبق مرفقك مفتوحا أكثر من زاوية قائمة.
activity-hold-tablet-open-elbow = أبعده عنك أكثر. أبق مرفقك مفتوحا أكثر من زاوية قائمة.
activity-drive-car-open-elbow = اضبط المقعد حتى ينفتح مرفقك أكثر من زاوية قائمة.
activity-brush-teeth-lean-forward = انحن فوق الحوض. قرب رأسك من الفرشاة.

## Shower and wash your hair

activity-wash-hair-shower-name = الاستحمام وغسل الشعر
activity-wash-hair-shower-arm-bag = البس فوق يدك والجبيرة كيسا لا يدخله الماء. أغلقه جيدا من أعلى.
activity-wash-hair-shower-pump-bottle = استعمل عبوة بمضخة وإسفنجة بمقبض طويل.
activity-wash-hair-shower-bend-head = أنزل رأسك. أبق مرفقك مفتوحا أكثر من زاوية قائمة.
activity-wash-hair-shower-other-hand = اغسل بيدك الأخرى، أو اطلب من أحد أن يغسل شعرك.

## Pull up trousers or socks

activity-pull-up-clothes-name = رفع البنطلون أو الجوارب
activity-pull-up-clothes-loose-waist = البس ملابس واسعة بخصر لين.
activity-pull-up-clothes-loops = ثبت حلقات قماش داخل الملابس بالخياطة. أدخل ساعدك فيها واسحب.
activity-pull-up-clothes-flat-palms = اجلس. ادفع القماش إلى أعلى براحتي يديك المبسوطتين.
activity-pull-up-clothes-other-hand = اسحب بيدك الأخرى، أو اطلب المساعدة من أحد.

## Fasten a strap behind your back

activity-fasten-back-strap-name = إغلاق مشبك الملابس خلف الظهر
activity-fasten-back-strap-pull-over = البس قطعة لينة تدخلها من فوق رأسك.
activity-fasten-back-strap-turn-round = أغلق المشبك من الأمام. ثم أدر القطعة إلى الخلف.
activity-fasten-back-strap-front-closing = اختر قطعة تغلق من الأمام بمشابك عريضة.
activity-fasten-back-strap-helper = اطلب من أحد أن يغلقه لك.

## Wipe after the toilet

activity-toilet-wipe-name = التنظيف بعد استعمال المرحاض
activity-toilet-wipe-cover-splint = البس كيسا رقيقا فوق الجبيرة. ارمه بعد ذلك.
activity-toilet-wipe-long-wiper = استعمل أداة مسح بمقبض طويل، أو مقعد مرحاض يغسلك بالماء.
activity-toilet-wipe-other-hand = نظف بيدك الأخرى.
activity-toilet-wipe-helper = اطلب المساعدة من شخص تثق به.

## Cut your nails

activity-cut-nails-name = قص الأظافر
activity-cut-nails-fixed-clipper = استعمل قصاصة أظافر مثبتة على لوح. اضغطها براحة يدك.
activity-cut-nails-file = ابرد أظافرك بمبرد عريض. أمسكه دون شد.
activity-cut-nails-few-at-once = قص بضعة أظافر كل يوم.
activity-cut-nails-helper = اطلب من أحد أن يقصها لك.

## Tie shoe laces

activity-tie-laces-name = ربط رباط الحذاء
activity-tie-laces-slip-on = البس حذاء تدخل فيه قدمك بلا ربط. استعمل لباسة حذاء طويلة.
activity-tie-laces-stretch-laces = استعمل أربطة مطاطة تبقى مربوطة.
activity-tie-laces-helper = اطلب من أحد أن يربطه لك.

## Open a ring-pull can or a bottle cap

activity-ring-pull-cap-name = فتح علبة بحلقة أو غطاء زجاجة
activity-ring-pull-cap-lever-opener = استعمل رافعة صغيرة ترفع الحلقة بدلا منك.
activity-ring-pull-cap-cap-grip = ضع قطعة مطاط على الغطاء. أدره براحة يدك المبسوطة.
activity-ring-pull-cap-easy-packs = اشتر عبوات تفتح بلا قوة.
activity-ring-pull-cap-helper = اطلب من أحد أن يفتحها لك.

## Chop vegetables

activity-chop-vegetables-name = تقطيع الخضار
activity-chop-vegetables-upright-knife = استعمل سكينا تتأرجح أو سكينا بمقبض قائم.
activity-chop-vegetables-cook-first = اطبخها أولا. الطعام اللين يحتاج إلى قوة أقل.
activity-chop-vegetables-ready-cut = اشتر خضارا مقطعة جاهزة.
activity-chop-vegetables-helper = اطلب من أحد أن يقطعها.

## Wash the dishes

activity-wash-dishes-name = غسل الصحون
activity-wash-dishes-long-brush = استعمل ماء مائلا إلى البرودة وفرشاة بمقبض طويل.
activity-wash-dishes-soak-first = انقع الصحون أولا. ثم امسحها بخفة.
activity-wash-dishes-dishwasher = استعمل غسالة صحون. ضع فيها الأشياء الخفيفة، واحدا بعد آخر.
activity-wash-dishes-helper = اطلب من أحد أن يغسلها.

## Knead dough or stir a thick mix

activity-knead-dough-name = عجن العجين أو تحريك خليط ثخين
activity-knead-dough-upright-spoon = ضع الوعاء على قماش مبتل. حرك بملعقة قائمة، وحرك من كتفك.
activity-knead-dough-thin-mix = اجعل الخليط أقل ثخانة، وحضر منه كمية أقل.
activity-knead-dough-mixer = دع آلة تخلطه.
activity-knead-dough-helper = اطلب من أحد أن يعجن.

## Carry plates or a tray

activity-carry-plates-name = حمل الصحون أو صينية
activity-carry-plates-flat-palms = أدخل راحتي يديك المبسوطتين تحت ما تحمله. أبقه قريبا من جسمك.
activity-carry-plates-trolley = ادفعها على عربة.
activity-carry-plates-one-by-one = احمل صحنا واحدا في كل مرة. اترك الصحون الساخنة تبرد أولا.
activity-carry-plates-helper = اطلب من أحد أن يحملها.

## Eat with knife and fork

activity-eat-with-cutlery-name = الأكل بالسكين والشوكة
activity-eat-with-cutlery-fat-handles = استعمل أدوات طعام بمقابض طويلة وسميكة.
activity-eat-with-cutlery-rocking-knife = اقطع بسكين تتأرجح.
activity-eat-with-cutlery-soft-food = اختر طعاما لينا لا يحتاج إلى سكين.
activity-eat-with-cutlery-other-hand = تناول الطعام بيدك الأخرى. اطلب من أحد أن يقطعه لك.

## Turn a door knob or a tap

activity-turn-door-knob-name = تدوير مقبض باب أو صنبور
activity-turn-door-knob-lever-handle = ركب عليه مقبضا كالذراع. اضغط عليه بساعدك.
activity-turn-door-knob-leave-open = اترك الأبواب الداخلية مفتوحة قليلا. ادفعها بوركك.
activity-turn-door-knob-other-hand = أدره بيدك الأخرى.
activity-turn-door-knob-helper = اطلب من أحد أن يديره لك.

## Vacuum the floor

activity-vacuum-name = تنظيف الأرض بالمكنسة الكهربائية
activity-vacuum-walk-along = أبق مرفقك بجانب جسمك. امش مع المكنسة.
activity-vacuum-light-cleaner = استعمل مكنسة خفيفة، أو مكنسة تتحرك وحدها.
activity-vacuum-one-room = نظف غرفة واحدة. ثم أرح يدك.
activity-vacuum-helper = اطلب من أحد أن يفعل ذلك.

## Hang up the washing

activity-hang-washing-name = نشر الغسيل
activity-hang-washing-hangers = علق الملابس على شماعات أو افردها على منشر.
activity-hang-washing-soft-pegs = استعمل مشابك تفتح بسهولة.
activity-hang-washing-small-loads = اغسل كميات صغيرة. دع الغسالة تعصرها جيدا.
activity-hang-washing-helper = اطلب من أحد أن ينشره.

## Scrub the bath

activity-scrub-bath-name = فرك حوض الاستحمام
activity-scrub-bath-long-handle = استعمل إسفنجة بمقبض طويل وسميك.
activity-scrub-bath-let-soak = رش المنظف، وانتظر، ثم اشطف. لا تفرك.
activity-scrub-bath-short-bouts = نظف جزءا صغيرا كل يوم.
activity-scrub-bath-helper = اطلب من أحد أن ينظفه.

## Push up from a chair

activity-rise-from-chair-name = النهوض عن الكرسي بدفع اليدين
activity-rise-from-chair-high-seat = اجلس على مقعد أعلى وصلب. عندها ترفعك ساقاك بسهولة أكبر.
activity-rise-from-chair-legs-first = تقدم إلى حافة المقعد ومل إلى الأمام. ارفع جسمك بقوة ساقيك.
activity-rise-from-chair-forearm-rest = اضغط بساعدك على ذراع الكرسي، لا بيدك.
activity-rise-from-chair-other-hand = ادفع بيدك الأخرى، أو اطلب من أحد أن يساعدك على النهوض.

## Iron clothes

activity-iron-clothes-name = كي الملابس
activity-iron-clothes-light-iron = استعمل مكواة صغيرة وخفيفة.
activity-iron-clothes-hang-smooth = علق الملابس رطبة ومفرودة. كثير منها لا يحتاج إلى كي.
activity-iron-clothes-few-pieces = اكو بضع قطع. ثم أرح يدك.
activity-iron-clothes-other-hand = حرك المكواة بيدك الأخرى، أو اطلب من أحد أن يكوي.

## Make the bed

activity-make-bed-name = ترتيب السرير
activity-make-bed-light-covers = استعمل غطاء واحدا خفيفا وملاءات واسعة.
activity-make-bed-flat-hands = ادفع الملاءات إلى مكانها بيديك المبسوطتين وساعديك.
activity-make-bed-few-corners = لا ترفع الفراش. اترك زوايا الملاءة مرتخية.
activity-make-bed-helper = اطلب من أحد أن يرتبه.

## Lean on a walking stick or frame

activity-lean-on-stick-name = الاتكاء على عصا أو مشاية
activity-lean-on-stick-wide-grip = اطلب منا فحص الارتفاع. يساعدك مقبض عريض ولين.
activity-lean-on-stick-forearm-rest = اطلب منا نوعا يستند إليه ساعدك. لا تمش بلا سند.
activity-lean-on-stick-other-hand = اسألنا هل يجوز أن تمسكها بيدك الأخرى. لا تمش بلا سند.

## Hold a dog lead

activity-hold-dog-lead-name = إمساك حبل الكلب
activity-hold-dog-lead-waist-lead = استعمل حبلا يلتف حول خصرك.
activity-hold-dog-lead-calm-walks = امش مسافات قصيرة وهادئة. استعمل للكلب حزام صدر يمنعه من الشد.
activity-hold-dog-lead-helper = اطلب من أحد أن يمسك الحبل. لا تلفه حول أصابعك أبدا.

## Use a screwdriver

activity-use-screwdriver-name = استعمال مفك البراغي
activity-use-screwdriver-powered-driver = استعمل مفكا خفيفا بمحرك.
activity-use-screwdriver-fat-handle = استعمل مقبضا سميكا يدور على مراحل صغيرة.
activity-use-screwdriver-elbow-in = أبق مرفقك بجانب جسمك. ادفع بوزن جسمك.
activity-use-screwdriver-helper = اطلب من أحد أن يثبت البراغي.

## Use a hammer

activity-hammer-name = استعمال المطرقة
activity-hammer-light-hammer = استعمل مطرقة خفيفة بمقبض لين وسميك.
activity-hammer-few-nails = دق بضعة مسامير. ثم أرح يدك.
activity-hammer-helper = اطلب من أحد أن يدق.

## Use a power drill

activity-power-drill-name = استعمال مثقاب كهربائي
activity-power-drill-light-drill = استعمل مثقابا خفيفا بمقبض جانبي.
activity-power-drill-two-hands = أمسكه بيديك الاثنتين، ومرفقاك بجانب جسمك.
activity-power-drill-short-bouts = اثقب ثقبا واحدا. ثم أرح يدك.
activity-power-drill-helper = اطلب من أحد أن يثقب.

## Lift boxes

activity-lift-boxes-name = رفع الصناديق
activity-lift-boxes-palms-under = أدر راحتي يديك إلى أعلى. أدخل ساعديك تحت الصندوق وأبقه قريبا منك.
activity-lift-boxes-half-load = املأ الصناديق إلى نصفها فقط.
activity-lift-boxes-trolley = ادفعها على عربة. لا ترفعها عن الأرض.
activity-lift-boxes-helper = اطلب من أحد أن يرفعها.

## Pick up small parts or coins

activity-handle-small-parts-name = التقاط قطع صغيرة أو نقود معدنية
activity-handle-small-parts-soft-tray = ضعها على مفرش لين. اسحبها حتى تتجاوز الحافة.
activity-handle-small-parts-wide-tweezers = استعمل ملقطا بمقبض عريض ولين، أو مغناطيسا.
activity-handle-small-parts-pauses = التقط القليل. ثم أرح يدك.
activity-handle-small-parts-other-hand = التقطها بيدك الأخرى.

## Hold a baby to feed

activity-feed-baby-name = حمل طفل رضيع لإرضاعه
activity-feed-baby-firm-pillow = ضع طفلك على وسادة متماسكة. دع الوسادة تحمل الوزن.
activity-feed-baby-straight-wrist = أسند رأس الطفل إلى ثنية مرفقك. أبق معصمك مستقيما.
activity-feed-baby-change-sides = بدل الجهة كثيرا. افرد ذراعك بين مرة وأخرى.
activity-feed-baby-helper = اطلب من أحد أن يضع طفلك في مكانه وأن يبقى قريبا.

## Change a nappy

activity-change-nappy-name = تغيير الحفاض
activity-change-nappy-easy-tabs = اختر حفاضات بأشرطة لاصقة عريضة تفتح بسهولة.
activity-change-nappy-roll-baby = أدر طفلك على جنبه. لا ترفع قدميه معا.
activity-change-nappy-wipes-ready = جهز كل شيء مفتوحا أمامك قبل أن تبدأ.
activity-change-nappy-other-hand = افتح الأشرطة اللاصقة وأغلقها بيدك الأخرى، أو اطلب من أحد أن يغير الحفاض.

## Buckle a child seat

activity-buckle-child-seat-name = إغلاق مشبك مقعد الطفل
activity-buckle-child-seat-buckle-key = استعمل رافعة صغيرة مصنوعة للضغط على المشابك.
activity-buckle-child-seat-knuckle = اضغط على الزر بمفصل إصبع مثنية.
activity-buckle-child-seat-helper = استعمل يدك الأخرى، أو اطلب المساعدة من أحد. تأكد من أن المشبك مغلق.

## Push a pram

activity-push-pram-name = دفع عربة الطفل
activity-push-pram-open-palms = ادفع براحتي يديك المفتوحتين.
activity-push-pram-high-bar = اجعل المقبض عاليا وغطه بحشوة. أرح ساعديك عليه.
activity-push-pram-helper = ادفع بيدك الأخرى، أو اطلب من أحد أن يدفع.

## Dig

activity-dig-name = الحفر
activity-dig-small-spade = استعمل مجرفة صغيرة وخفيفة بمقبض طويل.
activity-dig-foot-pushes = دع قدمك تدفع المجرفة.
activity-dig-short-bouts = املأ المجرفة إلى نصفها في كل مرة. توقف بعد بضع مرات.
activity-dig-helper = اطلب من أحد أن يحفر. دورك أن تحدد المكان.

## Pull weeds

activity-pull-weeds-name = إزالة الأعشاب
activity-pull-weeds-long-weeder = استعمل معزقة أو أداة لإزالة الأعشاب بمقبض طويل وسميك.
activity-pull-weeds-after-rain = أزل الأعشاب بعد المطر، حين تخرج الجذور بسهولة.
activity-pull-weeds-short-bouts = نظف بقعة صغيرة واحدة. ثم أرح يدك.
activity-pull-weeds-helper = اطلب من أحد أن يزيلها. دورك أن تحدد المكان.

## Water plants

activity-water-plants-name = سقي النباتات
activity-water-plants-two-hands = أمسك المرشة بيديك الاثنتين، وأبقها قريبة من جسمك.
activity-water-plants-little-water = ضع في المرشة القليل من الماء فقط.
activity-water-plants-hose = استعمل خرطوما بذراع تبقى مفتوحة وحدها.
activity-water-plants-helper = اسق بيدك الأخرى، أو اطلب المساعدة من أحد.

## Fasten a seat belt

activity-fasten-seat-belt-name = إغلاق حزام الأمان
activity-fasten-seat-belt-belt-handle = ركب على الحزام مقبضا يسهل الوصول إليه.
activity-fasten-seat-belt-knuckle = اضغط على القفل بمفصل إصبع مثنية.
activity-fasten-seat-belt-other-hand = اسحب الحزام أمام جسمك بيدك الأخرى. اطلب من أحد أن يغلقه.

## Ride a bicycle

activity-cycle-name = ركوب الدراجة
activity-cycle-high-bar = ارفع المقود. استعمل مقابض لينة وسميكة.
activity-cycle-short-rides = اركب مسافة قصيرة على طرق ملساء.
activity-cycle-indoor-bike = استعمل دراجة رياضية ثابتة. اجلس وظهرك مستقيم وأرح يديك.

## Lift weights

activity-lift-weights-name = رفع الأثقال
activity-lift-weights-half-weight = استعمل نصف الوزن. قلل عدد المرات.
activity-lift-weights-forearm-cuff = اسحب بحزام على ساعدك. لا تقبض على قضيب.
activity-lift-weights-legs-only = درب ساقيك ووسط جسمك. لا تمسك شيئا.

## Do press-ups or yoga

activity-press-ups-yoga-name = تمارين الضغط أو اليوغا
activity-press-ups-yoga-legs-only = اختر أوضاعا على ساقيك أو ظهرك أو جنبك.
activity-press-ups-yoga-straight-wrist = أمسك مقابض ثابتة حتى يبقى معصمك مستقيما.
activity-press-ups-yoga-fewer = اتكئ على حائط، لا على الأرض.

## Swim

activity-swim-name = السباحة
activity-swim-float = أرح ساعديك على لوح يطفو. اسبح بساقيك.
activity-swim-dry-at-once = جفف جلدك والجبيرة فور خروجك من الماء.
activity-swim-short-swim = اسبح لوقت قصير.

## Play the guitar

activity-play-guitar-name = العزف على الغيتار
activity-play-guitar-light-strings = استعمل أوتارا خفيفة تحتاج إلى ضغط قليل.
activity-play-guitar-neck-higher = ارفع عنق الغيتار بحزام كتف. أبق معصمك مستقيما.
activity-play-guitar-short-bouts = اعزف أغنية واحدة. ثم أرح يدك.

## Sleep

activity-sleep-position-name = النوم
activity-sleep-position-splint-on = البس الجبيرة في الليل عندما يقول هذا الدليل ذلك.
activity-sleep-position-arm-on-pillow = ضع ذراعك على وسادة بجانبك، مفرودة بقدر ما يسهل عليك.
activity-sleep-position-soft-towel = لف منشفة لينة حول مرفقك دون شد، حتى ينثني أقل.

## Hold a phone to your ear

activity-hold-phone-to-ear-name = إمساك الهاتف على الأذن
activity-hold-phone-to-ear-loudspeaker = استعمل مكبر الصوت أو سماعة رأس. ضع الهاتف من يدك.
activity-hold-phone-to-ear-short-calls = اجعل المكالمات قصيرة. افرد ذراعك بين المكالمات.
activity-hold-phone-to-ear-other-hand = أمسك الهاتف بيدك الأخرى.
