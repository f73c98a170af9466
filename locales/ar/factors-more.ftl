### More advice for what is particular about one person.
### Each message is one or two short sentences that stand inside a section of the guide.
### $checks is a number of skin checks a day, $limit a finished length of time.

## Skin that feels little or nothing

factor-numb-skin-no-packs = لا تضع كمادات ساخنة ولا ثلجا على الجلد المخدر.

## Rash from natural rubber

factor-latex-allergy-itch = اتصل بنا إذا شعرت بحكة في جلدك، ولو قليلا.
factor-latex-allergy-gloves = لا تلبس قفازات مطاطية فوق الجبيرة. استعمل قفازات من نوع آخر.
factor-latex-allergy-spare-parts = لا تضف أربطة مطاطية ولا أشرطة تتمدد. اطلب منا أنواعا آمنة.

## Rash from metal

factor-nickel-allergy-itch = اتصل بنا إذا شعرت بحكة في جلدك، ولو قليلا.
factor-nickel-allergy-bare-metal = لا تدع معدنا مكشوفا يلمس جلدك. أخبرنا إذا تآكل غطاء المعدن.

## Rash from tape and glue

factor-adhesive-allergy-itch = اتصل بنا إذا شعرت بحكة في جلدك، ولو قليلا.
factor-adhesive-allergy-no-tape = لا تضع على جلدك شريطا لاصقا ولا لصقات جروح. اطلب منا أشرطة للجبيرة.
factor-adhesive-allergy-linings = لا تلصق حشوات أو بطانات داخل الجبيرة.

## Trouble remembering

factor-memory-difficulty-same-times = التزم بالساعات نفسها كل يوم. اضبط منبها لها.
factor-memory-difficulty-tick = علق هذا الدليل على الحائط. ضع علامة عليه بعد كل فحص للجلد.
factor-memory-difficulty-in-sight = ضع الجبيرة دائما في مكان واحد تراه. اقرأ الخطوات في كل مرة.
factor-memory-difficulty-after-meals = اربط حركاتك بأشياء تفعلها كل يوم، مثل الوجبات.

## Somebody at home who helps

factor-helper-at-home-looks = اطلب أيضا ممن يساعدك أن ينظر إلى جلدك.
factor-helper-at-home-reads = دع من يساعدك يقرأ كل خطوة بصوت مسموع ويغلق الأشرطة.
factor-helper-at-home-heavy-jobs = دع من يساعدك يقوم بما يطلب منك هذا الدليل تركه.

## A child

# The reader may be the child or a grown-up reading aloud.
factor-child-grown-up-looks = دع شخصا كبيرا ينظر إلى جلدك في كل مرة. قل فورا إذا آلمك شيء.
factor-child-grown-up-helps = ليكن شخص كبير بجانبك عند وضع الجبيرة وعند خلعها.
factor-child-school = خذ نسخة من هذا الدليل إلى المدرسة.
factor-child-game = اجعل من كل حركة لعبة.
factor-child-small-parts = أبعد الأشرطة المنفصلة والقطع الصغيرة عن الرضع والأطفال الصغار.

## Pregnancy

# Worded without orders, as for a new mother: an order here would be in the masculine.
factor-pregnancy-swelling = قد تتورم يدك في بعض الأيام. عند الجلوس، يجب إراحة يدك على وسادة.
factor-pregnancy-strap-room = يجب التأكد كل يوم من أن طرف إصبع يدخل تحت كل شريط.
factor-pregnancy-grooves = يجب البحث عن خطوط عميقة من الأشرطة. ويجب إخبارنا إذا بقيت هذه الخطوط.

## Work in the heat

factor-heat-work-keep-away = أبعد الجبيرة عن الأفران والمواقد الساخنة والمحركات. اسألنا قبل العمل في مكان حار.
factor-heat-work-dry-skin = جفف العرق فورا. ابحث عن جلد لين وأبيض.
factor-heat-work-fresh-sleeve = لكل نوبة عمل، البس تحت الجبيرة كما قماشيا نظيفا وجافا. بدل الكم الرطب فورا.

## Work with food

factor-food-work-ask = اسأل في عملك هل يسمح بجبيرة قرب الطعام. اسأل كيف تغطيها.
factor-food-work-damp = القفاز فوق الجبيرة يحبس الرطوبة. بعد العمل، ابحث عن جلد لين وأبيض.
factor-food-work-clean = نظف الجبيرة بعد كل نوبة عمل. ارم الغطاء.

## Work in the wet

factor-wet-work-cover = غط الجبيرة، أو دع شخصا آخر يقوم بالأعمال التي فيها ماء.
factor-wet-work-dry-breaks = توقف كثيرا لتجفف جلدك. ابحث عن جلد لين وأبيض.
factor-wet-work-spare-sleeves = جهز أكماما قماشية إضافية لتحت الجبيرة. بدل الكم الرطب فورا.

## Work with machines

factor-machinery-moving-parts = لا تعمل على آلات متحركة والجبيرة على يدك. قد تمسك الآلة بشريط وتسحب يدك إلى داخلها.
factor-machinery-ask = التزم بهذه الأوقات في العمل أيضا. اسألنا واسأل صاحب العمل قبل العودة إلى أي آلة.

## Slow healing

factor-slow-healing-no-early-end = يدك تحتاج إلى المدة كاملة. لا تتوقف قبل نهايتها، حتى إذا شعرت بأن يدك بخير.
factor-slow-healing-any-break = اتصل بنا في اليوم نفسه إذا انجرح جلدك، ولو قليلا.
factor-slow-healing-smoke = إذا كنت تدخن، فاطلب المساعدة على التوقف منا أو من طبيبك. التدخين يبطئ الالتئام.

## An open wound, stitches or pins

factor-open-wound-look = انظر إلى ما تراه من الجرح أو الأسياخ المعدنية. اتصل بنا اليوم إذا خرج سائل أو رائحة أو تحرك شيء.
factor-open-wound-dry = أبق يدك جافة حتى نقول لك إن الجلد مغلق.
factor-open-wound-no-rubbing = لا تفرك الجرح ولا تضغط عليه. لا تلمس الغرز أو الأسياخ المعدنية.
factor-open-wound-dressing = أبق ضماد الجرح نظيفا وجافا. اسألنا من يغيره.

## Poor blood flow

factor-poor-circulation-colour = قارن أطراف أصابعك بأصابع يدك الأخرى. اتصل بنا في اليوم نفسه إذا انجرح جلدك.
factor-poor-circulation-strap-room = أدخل طرف إصبع تحت كل شريط. يجب أن يدخل.
factor-poor-circulation-warm = أبق يدك دافئة بالملابس. لا تضع عليها ثلجا ولا كمادات ساخنة.

## Only one hand to use

factor-one-hand-only-table = أرح ذراعك على طاولة. استعن بحافة الطاولة أو بساقك.
factor-one-hand-only-helper = حيث يذكر هذا الدليل اليد الأخرى، يمكنك طلب المساعدة من أحد.
factor-one-hand-only-mirror = استعمل مرآة لترى الجهة البعيدة من يدك.

## Strong pain or worry

factor-high-pain-worry-small = ابدأ بأصغر حركة في هذه القائمة. لا بأس بحركات صغيرة ومتكررة.
factor-high-pain-worry-rest = استرح قبل أن تؤلمك يدك كثيرا. ثم استمر.
factor-high-pain-worry-call = اتصل بنا مبكرا إذا أقلقك شيء. لا تتردد في أي سؤال، مهما كان صغيرا.
