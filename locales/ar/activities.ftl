### Activities: what people do with their hands, and easier ways to do it.
### The name stands as a short order in a table, such as “Open a jar”; here it is a verbal noun.
### Every other message is one or two short sentences of advice beside that name.

## Open a jar

activity-open-jar-name = فتح غطاء وعاء زجاجي
activity-open-jar-jar-opener = استعمل فتاحة أغطية مثبتة على الحائط أو الطاولة.
activity-open-jar-break-seal = ارفع حافة الغطاء أولا بمقبض ملعقة حتى يدخل الهواء. عندها يدور الغطاء بقوة أقل.
activity-open-jar-flat-palm = ضع الوعاء في درج. اضغط على الغطاء براحة يدك المبسوطة ولف جسمك.
activity-open-jar-helper = اطلب من أحد أن يفتحه لك.

## Turn a key

activity-turn-key-name = تدوير مفتاح
activity-turn-key-key-turner = ركب مقبضا عريضا على المفتاح. أمسكه بيدك كلها.
activity-turn-key-other-hand = أدر المفتاح بيدك الأخرى.
activity-turn-key-oil-lock = ضع زيتا في القفل حتى يدور بسهولة.

## Lift a baby

activity-lift-baby-name = رفع طفل رضيع
activity-lift-baby-scoop = ارفعه من أسفل، وراحتا يديك إلى أعلى وإبهاماك بجانب أصابعك. أدخل ذراعا تحت مؤخرته وذراعا خلف ظهره.
activity-lift-baby-chest-first = قرب الطفل من صدرك قبل الوقوف.
activity-lift-baby-raise-changing-place = اجعل مكان تغيير الحفاض أعلى حتى ترفع الطفل مسافة أقصر.
activity-lift-baby-helper = اطلب من أحد أن يناولك الطفل.

## Lift a full pan

activity-lift-pan-name = رفع قدر ممتلئة
activity-lift-pan-half-full = املأ القدر إلى نصفها فقط.
activity-lift-pan-slide = اسحب القدر على السطح. لا ترفعها.
activity-lift-pan-two-handles = استعمل قدرا خفيفة بمقبضين. دع يدك الأخرى تحمل معظم الوزن.
activity-lift-pan-helper = اطلب من أحد أن يرفع القدر.

## Pour from a kettle

activity-pour-kettle-name = صب الماء من الغلاية
activity-pour-kettle-one-cup = اغل ماء يكفي لكوب واحد فقط.
activity-pour-kettle-tipper = استعمل حاملا يميل بالغلاية بدلا منك.
activity-pour-kettle-other-hand = صب بيدك الأخرى. أبعد اليد التي عليها الجبيرة عن البخار.

## Carry shopping

activity-carry-shopping-name = حمل المشتريات
activity-carry-shopping-backpack = استعمل حقيبة ظهر أو عربة تسوق.
activity-carry-shopping-split-load = وزع الحمل على أكياس صغيرة. انقلها على مرتين.
activity-carry-shopping-over-forearm = علق كيسا خفيفا على ساعدك. لا تعلقه على أصابعك أبدا.
activity-carry-shopping-helper = اطلب من أحد أن يحمل الأكياس، أو اطلب توصيلها.

## Text with your thumbs

activity-text-with-thumbs-name = كتابة الرسائل بالإبهامين
activity-text-with-thumbs-speak-text = قل رسالتك بصوتك ودع الهاتف يكتبها.
activity-text-with-thumbs-phone-on-table = ضع الهاتف على طاولة. انقر بسبابتك.
activity-text-with-thumbs-short-texts = اجعل رسائلك قصيرة. أرح يدك بين الرسائل.

## Hold a tablet or a book

activity-hold-tablet-name = حمل جهاز لوحي أو كتاب
activity-hold-tablet-stand = ضعه على حامل.
activity-hold-tablet-on-lap = أسنده إلى وسادة على حجرك.
activity-hold-tablet-swap-hands = بدل بين يديك كثيرا.

## Write by hand

activity-write-by-hand-name = الكتابة باليد
activity-write-by-hand-fat-pen = استعمل قلما سميكا ولينا يكتب بضغط قليل.
activity-write-by-hand-dictate = قل النص بصوتك أو اكتبه على لوحة المفاتيح.
activity-write-by-hand-pauses = اكتب بضعة أسطر. ثم ضع القلم واسترح.
activity-write-by-hand-helper = اطلب من أحد أن يكتب بدلا منك.

## Type on a keyboard

activity-type-on-keyboard-name = الكتابة على لوحة المفاتيح
activity-type-on-keyboard-fingers-for-space = اضغط مفتاح المسافة بإصبع من يدك الأخرى.
activity-type-on-keyboard-low-keyboard = استعمل لوحة مفاتيح مسطحة. أرح ساعديك.
activity-type-on-keyboard-pauses = توقف كثيرا ودع يديك ساكنتين.

## Use a computer mouse

activity-use-mouse-name = استعمال فأرة الحاسوب
activity-use-mouse-other-hand = حرك الفأرة بيدك الأخرى.
activity-use-mouse-upright-mouse = جرب فأرة عمودية تمسكها كما في المصافحة.
activity-use-mouse-touch-pad = استعمل لوحة اللمس بإصبع واحدة.

## Do up buttons

activity-do-up-buttons-name = إغلاق الأزرار
activity-do-up-buttons-button-hook = استعمل خطافا للأزرار.
activity-do-up-buttons-pull-on-clothes = البس ملابس بلا أزرار.
activity-do-up-buttons-other-hand = دع يدك الأخرى تغلق الأزرار. ثبت القماش مبسوطا فقط.

## Peel vegetables

activity-peel-vegetables-name = تقشير الخضار
activity-peel-vegetables-fat-peeler = استعمل قشارة بمقبض سميك وشفرة عريضة.
activity-peel-vegetables-leave-skins = اترك القشر، أو اشتر خضارا جاهزة للطبخ.
activity-peel-vegetables-short-bouts = قشر القليل. ثم أرح يدك.
activity-peel-vegetables-helper = اطلب من أحد أن يقشر.

## Wring out a cloth

activity-wring-cloth-name = عصر قطعة قماش
activity-wring-cloth-press-flat = اضغط القماش مبسوطا على جانب الحوض.
activity-wring-cloth-sponge = استعمل إسفنجة. اعصرها برفق.
activity-wring-cloth-other-hand = لف القماش حول الصنبور. اعصره بيدك الأخرى.

## Prune plants

activity-prune-plants-name = تقليم النباتات
activity-prune-plants-ratchet = استعمل مقصا يقطع على مراحل صغيرة.
activity-prune-plants-thin-stems = اقطع السيقان الرفيعة فقط. توقف قبل أن يؤلمك إبهامك.
activity-prune-plants-helper = اطلب من أحد أن يقطع. دورك أن تختار الأغصان.

## Cut with scissors

activity-use-scissors-name = القص بالمقص
activity-use-scissors-spring-scissors = استعمل مقصا ينفتح وحده بنابض.
activity-use-scissors-roller-cutter = استعمل قاطعا دوارا على لوح.
activity-use-scissors-short-bouts = قص القليل في كل مرة.
activity-use-scissors-helper = اطلب من أحد أن يقص لك.

## Wash your hands

activity-wash-hands-name = غسل اليدين
activity-wash-hands-pump-soap = استعمل صابونا بمضخة وصنبورا بذراع.
activity-wash-hands-wipe-down = اغسل الأصابع الظاهرة. امسح الباقي بقماش رطب.
activity-wash-hands-take-off = اخلع الجبيرة. اغسل يديك وجففهما جيدا، ثم البسها من جديد.

## Drive a car

activity-drive-car-name = قيادة السيارة
activity-drive-car-wheel-cover = ضع غطاء سميكا ولينا على عجلة القيادة.
activity-drive-car-short-trips = اجعل الرحلات قصيرة. توقف وأرح يدك.
activity-drive-car-helper = دع شخصا آخر يقود.

## Knit or crochet

activity-knit-name = الحياكة أو الكروشيه
activity-knit-fat-needles = استعمل إبرا خفيفة وسميكة وخيطا لينا.
activity-knit-work-on-lap = ضع قطعة الحياكة على حجرك، وضع وسادة تحت مرفقيك.
activity-knit-short-bouts = انسج صفا واحدا. ثم أرح يدك.

## Play a racket sport

activity-racket-sport-name = لعب رياضة بالمضرب
activity-racket-sport-soft-strings = استعمل مقبضا أسمك وأوتارا ألين.
activity-racket-sport-two-hands = اضرب بيديك الاثنتين.
activity-racket-sport-half-time = العب نصف الوقت المعتاد.

## Brush your teeth

activity-brush-teeth-name = تنظيف الأسنان
activity-brush-teeth-fat-handle = استعمل فرشاة بمقبض سميك أو فرشاة كهربائية.
activity-brush-teeth-other-hand = نظف أسنانك بيدك الأخرى.

## Pull up a zip

activity-fasten-zip-name = إغلاق السحاب
activity-fasten-zip-zip-ring = ركب حلقة في السحاب. اسحبها بإصبع معقوفة.
activity-fasten-zip-other-hand = اسحب السحاب بيدك الأخرى.
