### Conditions of tendons after repair, of nerves, of the elbow, of sore joints and of burns.
### The name, what is wrong, and what the splint does. Words for a reader of about twelve; nothing is said to be cured.
### Bare passives such as “was cut” could be read as done by the person or as nouns; “was finished” verbs or a doer stand instead.

## Repaired tendons

condition-flexor-zone-two-repair-name = إصلاح الوتر الذي يثني الإصبع
condition-flexor-zone-two-repair-what = الأوتار التي تثني إصبعك انقطعت وتمت خياطتها. الإمساك بشيء أو شد الإصبع لفردها قد يمزق الغرز.
condition-flexor-zone-two-repair-aim = الجبيرة تحمي الغرز أثناء الالتئام. وهي تمنع فرد أصابعك أكثر مما يجب.
condition-extensor-zone-three-repair-name = إصلاح الوتر فوق المفصل الأوسط للإصبع
condition-extensor-zone-three-repair-what = الوتر الذي يفرد المفصل الأوسط لإصبعك انقطع وتمت خياطته. انثناء واحد قد يفك الغرز.
condition-extensor-zone-three-repair-aim = الجبيرة تبقي المفصل الأوسط مفرودا أثناء التئام الوتر.
condition-extensor-zone-five-six-repair-name = إصلاح وتر على ظهر اليد
condition-extensor-zone-five-six-repair-what = الوتر الذي يرفع إصبعك انقطع وتمت خياطته. إغلاق القبضة بالكامل قد يفك الغرز.
condition-extensor-zone-five-six-repair-aim = الجبيرة تبقي مفصل إصبعك عند الكف مرفوعا. وبذلك ترتاح الغرز من الشد.

## Nerves

condition-carpal-tunnel-name = عصب مضغوط عند المعصم (النفق الرسغي)
condition-carpal-tunnel-what = عصب يمر في نفق ضيق عند معصمك. المعصم المثني يضغط عليه، وخصوصا أثناء النوم.
condition-carpal-tunnel-aim = الجبيرة تبقي معصمك مستقيما. وبذلك يصبح مكان العصب أوسع.
condition-carpal-tunnel-release-name = بعد عملية العصب المضغوط عند المعصم
condition-carpal-tunnel-release-what = فتح الطبيب سقف النفق عند معصمك. يجب أن يلتئم الجرح، ويجب أن تتحرك أصابعك.
condition-carpal-tunnel-release-aim = الجبيرة تريح معصمك في الأيام الأولى. وتبقى أصابعك حرة الحركة.
condition-cubital-tunnel-name = عصب مضغوط عند المرفق
condition-cubital-tunnel-what = عصب يلتف حول الجهة الداخلية من مرفقك. ثني المرفق كثيرا أو الاتكاء عليه يجهد هذا العصب.
condition-cubital-tunnel-aim = الجبيرة تمنع مرفقك من الانثناء كثيرا في الليل. وفي النهار لا تتكئ على مرفقك.
condition-radial-nerve-palsy-name = تدلي المعصم
condition-radial-nerve-palsy-what = العصب الذي يرفع معصمك وأصابعك لا يعمل الآن. يدك تتدلى إلى أسفل.
condition-radial-nerve-palsy-aim = الجبيرة تساعد معصمك على البقاء مرفوعا. عندها تستطيع أصابعك الإمساك بالأشياء بشكل أفضل.
condition-median-nerve-palsy-low-name = إبهام لا يستطيع الارتفاع عن راحة اليد
condition-median-nerve-palsy-low-what = عصب العضلات السميكة تحت إبهامك لا يعمل الآن. قد تكون أجزاء من يدك مخدرة.
condition-median-nerve-palsy-low-aim = الجبيرة تبقي المسافة بجانب إبهامك مفتوحة. يبقى إبهامك في وضع يسمح باستعماله.
condition-ulnar-nerve-palsy-name = انثناء البنصر والخنصر كالمخلب
condition-ulnar-nerve-palsy-what = عصب عضلات صغيرة في يدك لا يعمل الآن. بنصرك وخنصرك ينثنيان كالمخلب.
condition-ulnar-nerve-palsy-aim = الجبيرة تمنع المفاصل عند الكف من الانثناء إلى الخلف. عندها يمكن فرد هاتين الإصبعين بشكل أفضل.

## The elbow

condition-lateral-elbow-name = ألم الأوتار في الجهة الخارجية من المرفق
condition-lateral-elbow-what = العضلات التي ترفع معصمك تبدأ عند مرفقك. أوتارها مؤلمة هناك، وخصوصا عند الإمساك بالأشياء ورفعها.
condition-lateral-elbow-aim = الجبيرة تخفف بعض الشد عن الأوتار المؤلمة أثناء العمل.

## The hand

condition-dupuytren-release-name = بعد عملية الإصبع المثنية (دوبويتران)
condition-dupuytren-release-what = قطع الطبيب أليافا مشدودة في راحة يدك حتى تنفتح إصبعك. قد تسحبها الندبة إلى الداخل من جديد.
condition-dupuytren-release-aim = الجبيرة تمسك إصبعك في الليل في وضع مريح لها. وهي تساعد على إبقاء الإصبع مفتوحة.
condition-rheumatoid-knuckle-drift-name = أصابع تميل إلى الجانب (الروماتويد)
condition-rheumatoid-knuckle-drift-what = الأربطة بجانب مفاصل أصابعك عند الكف مرتخية. أصابعك تميل نحو جهة الخنصر.
condition-rheumatoid-knuckle-drift-aim = الجبيرة توجه أصابعك إلى الأمام مباشرة أثناء استعمال يدك. إنها لا توقف ميل الأصابع.
condition-rheumatoid-wrist-name = ألم مفصل المعصم (الروماتويد)
condition-rheumatoid-wrist-what = مفصل معصمك مؤلم ومتورم بسبب مرض الروماتويد.
condition-rheumatoid-wrist-aim = الجبيرة تثبت معصمك. قد يخفف ذلك الألم أثناء الراحة وأثناء الأعمال.
condition-stroke-tight-hand-name = يد مشدودة بعد سكتة دماغية
condition-stroke-tight-hand-what = بعد السكتة الدماغية، العضلات التي تغلق يدك تشد أكثر مما يجب. فتح اليد صعب.
condition-stroke-tight-hand-aim = الجبيرة تريح يدك وهي نصف مفتوحة. قد يساعد ذلك على راحتك وعلى بقاء جلد راحة يدك نظيفا.

## Burns

condition-dorsal-hand-burn-name = حرق في ظهر اليد
condition-dorsal-hand-burn-what = الجلد على ظهر يدك محروق. الجلد يقصر أثناء التئامه، وقد يشد يدك فيتغير شكلها.
condition-dorsal-hand-burn-aim = الجبيرة تبقي مفاصل أصابعك عند الكف مثنية، وأصابعك مفرودة. في هذا الشكل يبقى الجلد الجديد طويلا.
condition-palmar-hand-burn-name = حرق في راحة اليد
condition-palmar-hand-burn-what = جلد راحة يدك محروق. الجلد يقصر أثناء التئامه، وقد يشد يدك فتنغلق.
condition-palmar-hand-burn-aim = الجبيرة تبقي راحة يدك وأصابعك مفتوحة. في هذا الشكل يبقى الجلد الجديد طويلا.

## Movements to leave out
## The joints of a finger are the big knuckle, the middle joint and the tip.

avoid-wrist-extension = لا تثن معصمك إلى الخلف.
avoid-wrist-flexion = لا تثن معصمك إلى الأمام.
avoid-fingers-mcp-flexion = لا تثن مفاصل أصابعك عند الكف.
avoid-fingers-mcp-ulnar-deviation = لا تدفع أصابعك نحو جهة الخنصر.
avoid-fingers-pip-flexion = لا تثن المفاصل الوسطى لأصابعك.
