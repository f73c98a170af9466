### Advice for what is particular about one person.
### Each message is one or two short sentences that stand inside a section of the guide.
### $checks is a number of skin checks a day, $limit a finished length of time.

## Skin that feels little or nothing

factor-numb-skin-look = اعتمد على عينيك لا على إحساسك. انظر إلى يدك من كل الجهات. قد تساعدك مرآة.
factor-numb-skin-strap-room = أدخل طرف إصبع من يدك الأخرى تحت كل شريط. يجب أن يدخل.
factor-numb-skin-hot-and-sharp = اختبر الأشياء الساخنة بيدك الأخرى. أبعد الأشياء الحادة عن الجلد المخدر.

## Thin or tender skin

factor-fragile-skin-no-tape = لا تضع على جلدك شريطا لاصقا ولا حشوات لاصقة.
factor-fragile-skin-lift = اخلع الجبيرة برفق. لا تدعها تحتك بجلدك أو تشده.
factor-fragile-skin-sleeve = البس كما قطنيا أملس وجافا تحت الجبيرة. بدله كل يوم.

## Swelling

factor-swelling-raise = عند الجلوس، أرح يدك فوق مستوى قلبك.
factor-swelling-loosen = إذا صار شريط ضيقا، فأرخه قليلا. أعد إغلاقه عندما يخف التورم.
factor-swelling-pump = حرك أصابعك الحرة كثيرا. هذا يساعد على تخفيف التورم.

## Diabetes

factor-diabetes-any-break = اتصل بنا في اليوم نفسه إذا انجرح جلدك، ولو قليلا.

## Easy bleeding

# For people who take something against clotting. No medicine is named, and none is to be stopped.
factor-blood-thinners-bruise = اتصل بنا اليوم إذا كبرت كدمة تحت الجبيرة.
factor-blood-thinners-no-rubbing = لا تفرك يدك بقوة. احمها من الصدمات.

## Low vision

factor-low-vision-check = تحسس بيدك الأخرى أي موضع ساخن أو قاس أو مبتل أو مؤلم. واطلب أيضا من أحد أن ينظر إلى جلدك.
factor-low-vision-dots = اطلب منا نقاطا بارزة على الأشرطة. تساعدك النقاط على تمييز كل شريط.

## Living alone

factor-lives-alone-table = أرح ذراعك على طاولة. دع الطاولة تحمل الجبيرة بينما تعمل يدك الأخرى.
factor-lives-alone-ready = جهز ملابس واسعة ووجبات سهلة.
factor-lives-alone-phone = ضع رقم هاتفنا بجانب سريرك.

## Night work

factor-night-work-main-sleep = الليل في هذا الدليل يعني فترة نومك الرئيسية.
factor-night-work-after-sleep = قم بتمارينك الأولى بعد فترة نومك الرئيسية.

## Rash from foam rubber

factor-neoprene-allergy-itch = اتصل بنا إذا شعرت بحكة في جلدك، ولو قليلا.
factor-neoprene-allergy-spare-parts = لا تضف حشوات أو قفازات أو لفافات من المطاط الإسفنجي.

## A new baby

factor-new-mother-flat-hands = عند حمل طفلك وإرضاعه، يجب أن تبقى يداك مبسوطتين. ويجب أن يبقى إبهاماك بجانب أصابعك.
factor-new-mother-strap-room = قد تتورم يدك. يجب التأكد كل يوم من أن طرف إصبع يدخل تحت كل شريط.
factor-new-mother-edges = قبل حمل طفلك، يجب تغطية الحواف القاسية بقماش نظيف.
