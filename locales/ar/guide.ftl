### The guide: everything that is not about one condition, splint, activity or exercise.
### No date, hour, number, side or angle is typed here; they come in as variables.
### $side is left or right and only chooses between wordings.
### Address: orders stand in the masculine singular, the conventional generic form, because verbal nouns read stiffly and
### blur warnings. Everything else is worded so that it fits any reader: “your” is unmarked in print, and titles, names of
### activities and exercises and signs are noun phrases. The splint is feminine, the thumb masculine, fingers feminine.
### Plurals: the nouns used (minute, hour, second, time) have one form for zero, many and other, so these share a variant.
### Lengths of time always follow a preposition, so their dual is in the oblique form.

## Title and furniture

# $orthosis is the splint's name, such as "long thumb splint".
guide-title = دليلك: { $orthosis }
# $name is the person's name. Stands at the foot of every page.
guide-made-for = هذا الدليل مخصص لاستعمال { $name } فقط. اليد { $side ->
    [left] اليسرى
   *[right] اليمنى
}{ $finger ->
    [index] ، السبابة
    [middle] ، الإصبع الوسطى
    [ring] ، البنصر
    [little] ، الخنصر
   *[none] {""}
}.
guide-made-for-nobody = هذا الدليل مخصص لاستعمال شخص واحد فقط. اليد { $side ->
    [left] اليسرى
   *[right] اليمنى
}{ $finger ->
    [index] ، السبابة
    [middle] ، الإصبع الوسطى
    [ring] ، البنصر
    [little] ، الخنصر
   *[none] {""}
}.
guide-caution = هذا الدليل لا يغني عما يقوله لك معالجك أو طبيبك الجراح. إذا قال لك أي منهما شيئا مختلفا، فاعمل بما يقول. لا تعط الجبيرة لأي شخص آخر.
# Printed on every sheet in a language that no qualified translator has signed off.
guide-drafted = لم يراجع مترجم مؤهل هذا النص.
guide-outdated = تغير النص الإنجليزي لهذه الورقة بعد ترجمتها. اسأل عيادتك قبل أن تستعملها.
guide-page = صفحة { $page } من { $pages }
contents-page = ، ص { $page }

## Which hand

hand-left = اليد اليسرى
hand-right = اليد اليمنى
hand-alt = { $side ->
    [left] الجبيرة ليدك اليسرى.
   *[right] الجبيرة ليدك اليمنى.
}

## Section titles

glance-title = نظرة سريعة
dates-title = الخطة يوما بيوم
on-off-title = ارتداء الجبيرة وخلعها
on-off-intro = { $washing ->
    [never] العيادة وحدها تفعل ذلك.
   *[freely] اجلس إلى طاولة. استعمل يدك الأخرى.
}
skin-title = فحص الجلد
skin-intro = { $checks ->
    [zero] انظر إلى جلدك جيدا { $checks } مرة في اليوم.
    [one] انظر إلى جلدك جيدا مرة واحدة في اليوم.
    [two] انظر إلى جلدك جيدا مرتين في اليوم.
    [few] انظر إلى جلدك جيدا { $checks } مرات في اليوم.
   *[other] انظر إلى جلدك جيدا { $checks } مرة في اليوم.
} افعل ذلك في ضوء جيد. { $washing ->
    [supported] افحص هذه المواضع كلما خلعت الجبيرة للاغتسال. وبين ذلك انظر إلى حواف الجبيرة وأطراف أصابعك:
    [never] لا تخلع الجبيرة لتنظر. انظر إلى حواف الجبيرة وأطراف أصابعك:
   *[freely] افحص هذه المواضع:
}
move-title = تحريك اليد
move-intro = تحرك ببطء. لا تجبر يدك على أي حركة.
daily-title = في الحياة اليومية
care-title = العناية بالجبيرة
note-title = من معالجك
call-title = متى يجب الاتصال بنا
call-intro = ضع هذه الصفحة في مكان تراه دائما.

## Facts on the first page

fact-splint = نوع الجبيرة
# $finger is index, middle, ring or little and only chooses between wordings.
# The ring and the little finger are often mixed up by name, so each says which it is.
finger-name = { $finger ->
    [index] السبابة، بجانب الإبهام
    [middle] الإصبع الوسطى
    [ring] البنصر، بجانب الخنصر
   *[little] الخنصر، الإصبع الصغيرة
}
fact-for = سبب ارتدائها
fact-fitted = تاريخ تركيبها
fact-full = بدء الارتداء الكامل
fact-full-more = زد مدة الارتداء تدريجيا أولا. انظر جدول الخطة يوما بيوم.
fact-review = الزيارة القادمة
# $joints is a list such as "the tip of your thumb and your knuckles"; $count is how many.
fact-free = أجزاء حرة الحركة: { $joints }.

say-date = { $date }
say-date-time = { $date }، الساعة { $time }
say-short-date = { $date }
date-range = من { $from } إلى { $to }
# $to is the date of the next visit.
date-until-visit = من { $from } حتى زيارتك في { $to }
# From one clock time to another.
time-range = من { $from } إلى { $to }

## Joints, as the person would say them

joint-elbow = مرفقك
joint-forearm = دوران ساعدك
joint-wrist = معصمك
joint-thumb-cmc = قاعدة إبهامك عند المعصم
joint-thumb-mcp = مفصل إبهامك عند الكف
joint-thumb-ip = طرف إبهامك
joint-fingers-mcp = أصابعك ما عدا الإبهام
joint-fingers-pip = المفاصل الوسطى لأصابعك
joint-fingers-dip = أطراف أصابعك ما عدا الإبهام
# The affected finger.
joint-finger-mcp = مفصل الإصبع المصابة عند الكف
joint-finger-pip = المفصل الأوسط للإصبع المصابة
joint-finger-dip = طرف الإصبع المصابة
joint-other-fingers-mcp = أصابعك الأخرى
joint-other-fingers-pip = المفاصل الوسطى لأصابعك الأخرى
joint-other-fingers-dip = أطراف أصابعك الأخرى
joint-index-mcp = مفصل سبابتك عند الكف
joint-middle-mcp = مفصل إصبعك الوسطى عند الكف
joint-ring-mcp = مفصل بنصرك عند الكف
joint-little-mcp = مفصل خنصرك عند الكف
joint-index-pip = المفصل الأوسط لسبابتك
joint-middle-pip = المفصل الأوسط لإصبعك الوسطى
joint-ring-pip = المفصل الأوسط لبنصرك
joint-little-pip = المفصل الأوسط لخنصرك
joint-index-dip = طرف سبابتك
joint-middle-dip = طرف إصبعك الوسطى
joint-ring-dip = طرف بنصرك
joint-little-dip = طرف خنصرك

## When to wear it

strip-days = الأيام من { $from } إلى { $to }
strip-from-day = من اليوم رقم { $from }
strip-weeks = الأسابيع من { $from } إلى { $to }
strip-build = زد مدة الارتداء قليلا كل يوم. لا تلبسها في الليل في هذه المرحلة.
strip-key-on = الجبيرة على اليد
strip-key-off = بلا جبيرة
strip-key-needed = الجبيرة للأعمال المجهدة
# In phases that guard what heals.
strip-key-guard = الجبيرة خارج البيت وفي الزحام
strip-key-rest = الجبيرة أثناء الراحة
strip-key-part = الجبيرة لبعض الوقت
# $label is a row's label, $times a list of clock times.
strip-alt = { $label }: الجبيرة على اليد { $times }.
strip-alt-none = { $label }: لا ساعات محددة لارتداء الجبيرة.
wear-never-remove = ليلا ونهارا. لا تخلعها.
# $times is how often it comes off in a day.
wear-off-to-wash = ليلا ونهارا. اخلعها للاغتسال فقط{ $times ->
    [zero] ، { $times } مرة في اليوم.
    [one] ، مرة واحدة في اليوم.
    [two] ، مرتين في اليوم.
    [few] ، { $times } مرات في اليوم.
   *[other] ، { $times } مرة في اليوم.
}
wear-off-to-exercise = ليلا ونهارا. اخلعها للاغتسال والتمارين فقط{ $times ->
    [zero] ، { $times } مرة في اليوم.
    [one] ، مرة واحدة في اليوم.
    [two] ، مرتين في اليوم.
    [few] ، { $times } مرات في اليوم.
   *[other] ، { $times } مرة في اليوم.
}
wear-night-and-tasks = الجبيرة على اليد طوال الليل. وفي النهار للأعمال المجهدة.
# In phases that guard what heals: hard tasks wait.
wear-night-and-tasks-guard = الجبيرة على اليد طوال الليل. وفي النهار خارج البيت وفي الزحام ولكل عمل مسموح لك به.
wear-night-and-rest = الجبيرة على اليد طوال الليل. وفي النهار أثناء الراحة. بلا جبيرة عند استعمال اليد.
# $bouts is how many times a day, $each a finished length of time.
wear-stretch = الجبيرة على اليد { $bouts ->
    [zero] { $bouts } مرة في اليوم
    [one] مرة واحدة في اليوم
    [two] مرتين في اليوم
    [few] { $bouts } مرات في اليوم
   *[other] { $bouts } مرة في اليوم
}، لمدة { $each } في كل مرة. بلا جبيرة بين المرات.
wear-day = الجبيرة على اليد طوال النهار. بلا جبيرة في الليل.
wear-night = الجبيرة على اليد طوال الليل. بلا جبيرة في النهار.
wear-tasks = الجبيرة للأعمال المجهدة فقط. بلا جبيرة في الليل.
wear-tasks-guard = الجبيرة خارج البيت وفي الزحام ولكل عمل مسموح لك به. بلا جبيرة في الليل.
wear-off = بلا جبيرة.
# $length is how long it is worn while awake.
wear-wean-night = الجبيرة على اليد لمدة { $length } بعد الاستيقاظ، وطوال الليل أيضا.
wear-wean-day = الجبيرة على اليد لمدة { $length } بعد الاستيقاظ. بلا جبيرة في الليل.

## What comes after the next visit

later-label = عندما يقرر ذلك معالجك
later-label-surgeon = عندما يقرر ذلك طبيبك الجراح
later-label-next = لاحقا، عندما نخبرك
# This splint does not suit that stage.
later-other = بجبيرة أخرى.
later-never-remove = ليلا ونهارا، بلا انقطاع.
later-off-to-wash = ليلا ونهارا، مع خلعها للاغتسال فقط.
later-off-to-exercise = ليلا ونهارا، وتخلع فقط للاغتسال والتمارين.
later-night-and-tasks = في الليل وللأعمال المجهدة.
later-night-and-tasks-guard = في الليل، وخارج البيت، وفي الزحام.
later-night-and-rest = في الليل وأثناء الراحة.
later-stretch = بضع مرات في اليوم للتمديد.
later-day = في النهار فقط.
later-night = في الليل فقط.
later-tasks = للأعمال المجهدة فقط.
later-tasks-guard = خارج البيت وفي الزحام فقط.
later-off = بلا جبيرة.
later-wean = تقل مدة الارتداء خطوة بعد خطوة.

## The stop box

warning-title-take-off = اخلع الجبيرة واتصل بنا إذا حدث أي مما يلي:
warning-title-supported = { $straps ->
    [without] اتصل بنا إذا حدث أي مما يلي:
   *[with] أرخ الأشرطة واتصل بنا إذا حدث أي مما يلي:
}
warning-title-keep-on = { $straps ->
    [without] أبق الجبيرة على يدك واتصل بنا إذا حدث أي مما يلي:
   *[with] أرخ الأشرطة، وأبق الجبيرة على يدك، واتصل بنا إذا حدث أي مما يلي:
}
# Followed by the signs that cannot wait. $number is the emergency number.
warning-emergency = حالة طوارئ! اتصل بالرقم { $number } إذا حدث أي مما يلي:
warning-emergency-no-number = حالة طوارئ! اطلب المساعدة فورا إذا حدث أي مما يلي:
warning-act-take-off = اخلع الجبيرة. ثم اتصل.
warning-act-supported = { $straps ->
    [without] أبق الجزء المصاب مسنودا. ثم اتصل.
   *[with] أرخ الأشرطة. أبق الجزء المصاب مسنودا. ثم اتصل.
}
warning-act-keep-on = { $straps ->
    [without] لا تخلع الجبيرة. اتصل بنا.
   *[with] أرخ الأشرطة. لا تخلع الجبيرة. ثم اتصل.
}

## Day by day

axis-midnight = منتصف الليل
axis-noon = الظهر
schedule-day = اليوم
schedule-clock = الوقت
schedule-long = المدة
schedule-note = هذه الأوقات أمثلة. اختر أوقاتا تناسبك. إذا بقيت علامة على الجلد أطول مما يجب، فكرر برنامج اليوم نفسه.
schedule-note-late = هذه الأوقات أمثلة. اختر أوقاتا تناسبك. الشريط بعد منتصف الليل يتبع اليوم السابق. إذا بقيت علامة على الجلد أطول مما يجب، فكرر برنامج اليوم نفسه.
# The figure is printed before the word; after a figure, one and two take the singular.
schedule-minutes = { $count ->
    [zero] دقيقة
    [one] دقيقة
    [two] دقيقة
    [few] دقائق
   *[other] دقيقة
}
schedule-hours = { $count ->
    [zero] ساعة
    [one] ساعة
    [two] ساعة
    [few] ساعات
   *[other] ساعة
}
schedule-times = { $count ->
    [zero] { $count } مرة
    [one] مرة واحدة
    [two] مرتين
    [few] { $count } مرات
   *[other] { $count } مرة
}
schedule-not-yet = ليس في هذا اليوم

calendar-week = الأسبوع
calendar-what = ما يجب فعله
calendar-build = زيادة مدة الارتداء.
calendar-wean = تقليل مدة الارتداء.
calendar-never-remove = ليلا ونهارا، بلا انقطاع.
calendar-off-to-wash = ليلا ونهارا.
calendar-off-to-exercise = ليلا ونهارا.
calendar-night-and-tasks = في الليل وللأعمال المجهدة.
calendar-night-and-tasks-guard = في الليل، خارج البيت، في الزحام.
calendar-night-and-rest = في الليل وأثناء الراحة.
calendar-stretch = أوقات التمديد.
calendar-day = في النهار.
calendar-night = في الليل.
calendar-tasks = للأعمال المجهدة.
calendar-tasks-guard = خارج البيت وفي الزحام.
calendar-off = بلا جبيرة.
calendar-review = زيارة يوم { $date }.
calendar-key-review = زيارتك
calendar-key-build = زيادة مدة الارتداء
calendar-key-on = الجبيرة على اليد
calendar-key-night = في الليل
calendar-key-needed = جزء من اليوم
calendar-key-off = بلا جبيرة
calendar-and-so-on = استمر هكذا كل أسبوع.

## Putting on and taking off

steps-on = ارتداء الجبيرة
steps-off = خلع الجبيرة
# For a splint that only the clinic takes off.
steps-never = لا تخلع الجبيرة بنفسك. العيادة تخلعها وتلبسك إياها.
strap-next = الشريط التالي

## Skin

# Letters that mark the places, in the order of the alphabet.
spot-letters = أ ب ج د ه و ز ح
skin-fine = هذا طبيعي
skin-not = هذا غير طبيعي
skin-fine-mark = علامة خفيفة تزول خلال { $limit }
skin-fine-lines = خطوط خفيفة من الأشرطة
skin-fine-damp = جلد رطب قليلا
skin-not-mark = علامة تبقى أكثر من { $limit }
# Redness does not show on dark skin.
skin-not-dark = على البشرة الداكنة: بقعة تبقى أغمق أو أسخن أو أقسى لأكثر من { $limit }
skin-not-blister = فقاعة أو قرحة أو جلد مجروح
skin-not-rash = طفح جلدي، أو حكة لا تزول
skin-not-wet = جلد أبيض ولين ومبتل
skin-act-take-off = اخلع الجبيرة واتصل بنا اليوم.
skin-act-keep = { $straps ->
    [without] اتصل بنا اليوم. أبق يدك مسنودة.
   *[with] أرخ الأشرطة واتصل بنا اليوم. أبق يدك مسنودة.
}

## Moving

move-splint-on = الجبيرة على اليد
move-splint-off = بلا جبيرة
move-stop = توقف إذا ازداد الألم. إذا لم يهدأ خلال بضع ساعات، فاتصل بنا.
move-avoid = ليس بعد
# The figure is printed before the word; after a figure, one and two take the singular.
dose-times = { $count ->
    [zero] مرة
    [one] مرة
    [two] مرة
    [few] مرات
   *[other] مرة
}
dose-a-day = { $count ->
    [zero] مرة في اليوم
    [one] مرة في اليوم
    [two] مرة في اليوم
    [few] مرات في اليوم
   *[other] مرة في اليوم
}
# $count is a number of times, after the first week.
move-up-to = بعد أسبوع، إذا صار ذلك سهلا: حتى { $count ->
    [zero] { $count } مرة
    [one] مرة واحدة
    [two] مرتين
    [few] { $count } مرات
   *[other] { $count } مرة
}.
moves-after-review = يعطيك معالجك حركات جديدة بعد زيارتك.
# $date is when they begin, $exercises a list of names.
moves-later = ابتداء من { $date }: { $exercises }.
avoid-wrist-ulnar-deviation = لا تحرك معصمك جانبا نحو الخنصر.
avoid-wrist-radial-deviation = لا تحرك معصمك جانبا نحو الإبهام.
avoid-thumb-cmc-any = لا تحرك قاعدة إبهامك عند المعصم.
avoid-thumb-cmc-palmar-abduction = لا تبعد إبهامك عن راحة يدك.
avoid-thumb-cmc-radial-abduction = لا تمد إبهامك إلى الجانب.
avoid-thumb-mcp-any = لا تثن مفصل إبهامك عند الكف.
avoid-thumb-mcp-flexion = لا تضم إبهامك إلى داخل راحة يدك.
avoid-thumb-mcp-radial-deviation = لا تدفع إبهامك بعيدا عن يدك.
avoid-thumb-mcp-ulnar-deviation = لا تدفع إبهامك جانبا عبر راحة يدك.

## Daily life

daily-job = النشاط
daily-what = في الوقت الحالي
daily-how = الطريقة
daily-word-keep = استمر فيه
daily-word-change = افعله هكذا
daily-word-leave = اتركه الآن
daily-keep = افعله كالمعتاد.
daily-helper = اطلب المساعدة من أحد.
daily-other-hand = استعمل يدك الأخرى، أو اطلب المساعدة من أحد.
daily-ask = اسأل معالجك متى يمكنك البدء به من جديد.
daily-pauses = افعل القليل في كل مرة. استرح بين المرات.
daily-keep-dry = حافظ على الجبيرة جافة، أو جففها فورا.
daily-driving = قبل قيادة السيارة، اسأل معالجك وشركة التأمين. التزم بقانون بلدك.
# $date is when a later phase begins.
daily-from-keep = من { $date }: كالمعتاد.
daily-from-change = من { $date }: جربه بطريقة أسهل.
why-risky = هذا خطر على يدك في الوقت الحالي.
why-driving = القيادة وركوب الدراجة يحتاجان إلى تحكم كامل.
why-swimming = يدك أو جلدك أو جبيرتك ليست جاهزة للماء.
why-heavy = ثقيل جدا في الوقت الحالي.
why-in-the-way = الجبيرة تعيق هذا العمل.
why-lateral-pinch = الضغط بالإبهام على الإصبع يجهد يدك.
why-tip-pinch = الإمساك بأطراف الأصابع يجهد يدك.
why-power-grip = القبضة الشديدة تجهد يدك.
why-sustained-grip = الإمساك لوقت طويل يجهد يدك.
why-wrist-deviation = إمالة المعصم جانبا تجهده.
why-wrist-flexion = ثني المعصم يجهده.
why-wrist-load = الاتكاء على معصم مثني يجهد يدك.
why-thumb-load = هذا يضع حملا على إبهامك.
why-forearm-rotation = لف الذراع يجهد يدك.
why-finger-flexion = ثني الأصابع بقوة يجهدها.
why-elbow-flexion = المرفق المثني يجهد ذراعك.
why-impact = الصدمات قد تؤذي يدك.
why-vibration = الاهتزاز يجهد يدك.
why-wet = يدك أو الجبيرة تبتل.
why-heat = الحرارة تفسد الجبيرة أو تؤذي جلدك.
why-repetition = تكرار الحركة نفسها كثيرا يجهد يدك.

## Looking after the splint

# $celsius is a temperature in degrees.
care-wash-plastic = اغسلها بالماء والصابون. يجب ألا تزيد حرارة الماء على { $celsius } درجة مئوية.
care-dry-plastic = جففها جيدا قبل أن تلبسها.
care-heat = لا تعرضها للحرارة. لا تضعها في ماء ساخن ولا قرب مدفأة. لا تتركها في سيارة تحت الشمس. الحرارة تذيبها فيتغير شكلها.
care-wash-soft = اغسلها باليد بصابون لطيف. اشطفها جيدا.
care-dry-soft = افردها في الظل حتى تجف. لا تلبسها رطبة أبدا.
care-machine = لا غسالة ولا مجفف ولا مكواة ولا مبيض ملابس.
care-metal = امسحها حتى تجف. ابحث عن صدأ أو انثناء.
care-keep-dry = حافظ عليها جافة. غطها عند الاغتسال.
care-straps = أزل الوبر من الأشرطة. أغلقها قبل غسل الجبيرة.
care-change = لا تقصها، ولا تثنها، ولا تلصقها. نحن نفعل ذلك.
care-share = لا تعطها لأحد. إنها مصنوعة لك.
care-bring = أحضرها معك إلى كل زيارة.

## Calling

call-emergency = حالة طوارئ: اطلب المساعدة الآن
call-today = اتصل بنا اليوم
call-visit = أخبرنا في زيارتك
call-where = المكان: { $address }
# Stands where no emergency number is known.
call-emergency-number = رقم الطوارئ في منطقتك
call-telephone = الهاتف
note-from = كتب لك معالجك
# Followed by a line to write on.
initial-say = تمت المراجعة معك
initial-date = التاريخ
initial-name = التوقيع

## Lengths of time

length-minutes = { $count ->
    [zero] { $count } دقيقة
    [one] دقيقة واحدة
    [two] دقيقتين
    [few] { $count } دقائق
   *[other] { $count } دقيقة
}
length-hours = { $count ->
    [zero] { $count } ساعة
    [one] ساعة واحدة
    [two] ساعتين
    [few] { $count } ساعات
   *[other] { $count } ساعة
}
length-hours-minutes = { $hours } و{ $minutes }
length-seconds = { $count ->
    [zero] { $count } ثانية
    [one] ثانية واحدة
    [two] ثانيتين
    [few] { $count } ثوان
   *[other] { $count } ثانية
}

# ما تبينه الصورة لمن لا يراها.
picture-seen = { $what ->
    [finger] { $finger ->
        [index] السبابة
        [middle] الإصبع الوسطى
        [ring] البنصر
        [little] الخنصر
       *[none] إصبع
    } من اليد { $side ->
        [left] اليسرى
       *[right] اليمنى
    }
    [thumb] { $side ->
        [left] الإبهام الأيسر
       *[right] الإبهام الأيمن
    }
   *[hand] { $side ->
        [left] اليد اليسرى
       *[right] اليد اليمنى
    }
}، { $view ->
    [palmar] من جهة راحة اليد.
    [radial] من جهة الإبهام.
    [ulnar] من جهة الخنصر.
    [turned] من جهة ظهر اليد والإبهام.
    [palmar-radial] من جهة راحة اليد والإبهام.
    [palmar-ulnar] من جهة راحة اليد والخنصر.
    [own] كما تراها أنت.
   *[dorsal] من جهة ظهر اليد.
}
picture-covers = { $splint }. { $from ->
    [arm] تمتد من العضد
    [forearm] تمتد من الساعد
    [hand] تمتد من راحة اليد
   *[digit] توضع على { $finger ->
        [index] السبابة
        [middle] الإصبع الوسطى
        [ring] البنصر
        [little] الخنصر
       *[none] الإصبع أو الإبهام
    }،
} { $to ->
    [fingertips] إلى أطراف الأصابع.
    [fingertip] إلى طرف الإصبع.
    [fingers] إلى الأصابع.
    [finger] إلى الإصبع.
    [thumb-tip] إلى طرف الإبهام.
    [thumb] إلى الإبهام.
    [palm] إلى راحة اليد.
   *[none] ولا تمتد أبعد من ذلك.
}
picture-spots = الدوائر ذات الحروف تبين أين تنظر.
picture-part = الصورة { $number } من { $count }.
picture-held = وضعية التمرين: { $exercise }.
picture-moved = الخط المتقطع: البداية. السهم يبين الحركة: { $exercise }.
picture-inside = العظام كما لو كانت ترى من خلال الجلد.
picture-structures = المبين: { $structures }.
picture-held-joints = حلقة فيها خطوط تبين ما تثبته الجبيرة أو تسنده: { $joints }.
picture-held-mark = تثبته الجبيرة أو تسنده
held-knuckles = مفاصل أصابعك عند الكف
held-middle-joints = المفاصل الوسطى في أصابعك
held-end-joints = المفاصل الأخيرة في أصابعك
picture-right = الجبيرة في مكانها الصحيح. علامة صح تبين ذلك.
picture-wrong = الجبيرة ليست في مكانها. علامة خطأ تبين ذلك. { $fault }
