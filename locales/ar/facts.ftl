### ورقة معلومات عن حالة في اليد، للمرضى. لا تخص شخصا بعينه: لا ساعة فيها ولا تاريخ.
### لا يكتب هنا رقم ولا جهة ولا مدة؛ تأتي كلها متغيرات.

facts-caution = تشرح هذه الورقة حالة في اليد. وهي لا تحل محل ما يقوله لك المعالج أو الجراح. إذا قالا لك شيئا آخر فافعل ما يقولانه.
# في أسفل كل صفحة.
facts-line = تظهر في الصور اليد { $side ->
    [left] اليسرى
   *[right] اليمنى
}{ $finger ->
    [index] ، السبابة
    [middle] ، الإصبع الوسطى
    [ring] ، البنصر
    [little] ، الخنصر
   *[none] {""}
}.

## ما هي الحالة

facts-what-title = ما هي الحالة
# $what جملة كاملة أو جملتان.
facts-what = { $what }

## ماذا تفعل الجبيرة

facts-aim-title = ماذا تفعل الجبيرة
# $aim جملة كاملة أو جملتان.
facts-aim = { $aim }
# $joints قائمة مفاصل، مثل "الرسغ وقاعدة الإبهام".
facts-joints = { $joints }
facts-joint-still = ثابت لا يتحرك
facts-joint-steady = مسنود
facts-joint-stopped = يتحرك حتى حد معين
facts-joint-relative = يتحرك أقل من الأصابع المجاورة
facts-joint-coupled = يتحرك مع الإصبع المجاورة
facts-joint-mobilised = يشد برفق
# بعض الجبائر تمسك هذه المفاصل وبعضها لا.
facts-joint-varies = ممسوك أو حر: حسب جبيرتك
facts-joint-free = حر الحركة

## أنواع الجبائر

facts-types-title = جبائر مناسبة
facts-types-intro = هذه الأنواع تناسب البداية. ويختار معالجك ما يناسب يدك.

## كيف تسير الأمور عادة

facts-course-title = كيف تسير الأمور عادة
# $length مدة كاملة، مثل "حوالي ستة أسابيع".
facts-step-label = الخطوة { $number }، { $length }:
# $wear و $ends جملتان كاملتان.
facts-step = { $wear } { $ends }
# $length مثل "من أربعة إلى ستة أسابيع".
facts-length-usual = حوالي { $length }
facts-length-protocol = { $length } كما يقول جراحك
facts-length-open = بلا مدة محددة
facts-weeks = { $count ->
    [zero] { $count } أسبوع
    [one] أسبوع واحد
    [two] أسبوعين
    [few] { $count } أسابيع
    [many] { $count } أسبوعا
   *[other] { $count } أسبوع
}
# $from و $to أعداد أسابيع.
facts-weeks-range = من { $from } إلى { $to ->
    [zero] { $to } أسبوع
    [one] { $to } أسبوع
    [two] { $to } أسبوع
    [few] { $to } أسابيع
    [many] { $to } أسبوعا
   *[other] { $to } أسبوع
}
facts-days = { $count ->
    [zero] { $count } يوم
    [one] يوم واحد
    [two] يومين
    [few] { $count } أيام
    [many] { $count } يوما
   *[other] { $count } يوم
}
facts-days-range = من { $from } إلى { $to ->
    [zero] { $to } يوم
    [one] { $to } يوم
    [two] { $to } يوم
    [few] { $to } أيام
    [many] { $to } يوما
   *[other] { $to } يوم
}
facts-ends-therapist = لا نهاية محددة لهذه الخطوة. معالجك يقرر متى تنتهي.
facts-ends-surgeon = لا نهاية محددة لهذه الخطوة. جراحك يقرر متى تنتهي.
facts-ends-person = أنت تقرر متى لا تحتاج إليها.
facts-ends-time = ثم تبدأ الخطوة التالية.
facts-own-guide = هذه الورقة ليست خطتك. دليلك الخاص يقول متى تلبس جبيرتك. افعل ما يقوله دليلك.
facts-clinics-differ = تختلف العيادات. قد تكون جبيرتك وخطواتك ومدتك غير ما في هذه الورقة.
facts-surgeon-sets = بعد العملية أو الكسر يحدد جراحك المدة ووضعية يدك.

## متى تطلب المساعدة

facts-help-title = متى تطلب المساعدة
# $sign علامة، مثل "تصبح قبضتك أضعف".
facts-visit = { $sign }: أخبر معالجك في زيارتك القادمة.
