### More exercises: name, starting position and one action for each step.
### The name is a short order and stands as a heading; here it is a verbal noun. Steps are numbered by the program.
### $hold is a finished length of time, such as the words for five seconds.
### “Other hand” is the hand without the splint. “Treated finger” is the finger that the splint is for.
### The joints of a finger are the big knuckle, the middle joint and the tip.
### Here the treated finger is the “affected finger”; the big knuckle is “the joint at the palm”, as in exercises.ftl.

## Arm and wrist

exercise-shoulder-reach-name = مد الذراع إلى أعلى
exercise-shoulder-reach-start = اجلس أو قف وذراعك بجانب جسمك.
exercise-shoulder-reach-step-1 = ارفع ذراعك أمامك إلى أعلى بقدر ما يسهل عليك.
exercise-shoulder-reach-step-2 = اثبت هكذا لمدة { $hold }.
exercise-shoulder-reach-step-3 = أنزل ذراعك ببطء.
exercise-shoulder-reach-step-4 = في المرة التالية، ارفعها إلى الجانب.

exercise-wrist-dart-name = تحريك المعصم كما في رمي السهم
exercise-wrist-dart-start = أرح ساعدك على طاولة على جهة الخنصر ويدك خارج الحافة. اترك أصابعك وإبهامك مرتخية.
exercise-wrist-dart-step-1 = أمل يدك إلى الخلف ونحو جهة الإبهام.
exercise-wrist-dart-step-2 = اثبت هكذا لمدة { $hold }.
exercise-wrist-dart-step-3 = أمل يدك إلى الأمام ونحو جهة الخنصر.
exercise-wrist-dart-step-4 = اثبت هكذا لمدة { $hold }.

# Ordered by the clinician only.
exercise-wrist-swing-with-fingers-name = تحريك المعصم والأصابع معا
exercise-wrist-swing-with-fingers-start = أسند مرفقك إلى طاولة. تحرك فقط إلى الحد الذي أراك إياه معالجك.
exercise-wrist-swing-with-fingers-step-1 = دع معصمك ينزل إلى الأمام حتى تنفتح أصابعك.
exercise-wrist-swing-with-fingers-step-2 = اثبت هكذا لمدة { $hold }.
exercise-wrist-swing-with-fingers-step-3 = ارفع معصمك حتى تنثني أصابعك في قبضة لينة.
exercise-wrist-swing-with-fingers-step-4 = اثبت هكذا لمدة { $hold }.

exercise-forearm-front-stretch-name = تمديد الساعد من جهة راحة اليد
exercise-forearm-front-stretch-start = مد ذراعك أمامك، وراحة يدك إلى أعلى.
exercise-forearm-front-stretch-step-1 = افرد مرفقك.
exercise-forearm-front-stretch-step-2 = أمسك راحة يدك وأصابعك بيدك الأخرى.
exercise-forearm-front-stretch-step-3 = اسحب يدك برفق إلى أسفل حتى تشعر بشد.
exercise-forearm-front-stretch-step-4 = اثبت هكذا لمدة { $hold }.
exercise-forearm-front-stretch-step-5 = أرخ الشد ببطء.

exercise-forearm-back-stretch-name = تمديد الساعد من جهة ظهر اليد
exercise-forearm-back-stretch-start = مد ذراعك أمامك، وراحة يدك إلى أسفل. اترك أصابعك مرتخية.
exercise-forearm-back-stretch-step-1 = افرد مرفقك.
exercise-forearm-back-stretch-step-2 = ضع يدك الأخرى على ظهر يدك.
exercise-forearm-back-stretch-step-3 = اضغط يدك برفق إلى أسفل حتى تشعر بشد.
exercise-forearm-back-stretch-step-4 = اثبت هكذا لمدة { $hold }.
exercise-forearm-back-stretch-step-5 = أرخ الشد ببطء.

exercise-palms-together-stretch-name = تمديد المعصمين والراحتان متلاصقتان
exercise-palms-together-stretch-start = ضع راحتي يديك متلاصقتين أمام صدرك، وأصابعك إلى أعلى.
exercise-palms-together-stretch-step-1 = أنزل يديك ببطء. أبق راحتي يديك متلاصقتين.
exercise-palms-together-stretch-step-2 = توقف عندما تشعر بشد خفيف.
exercise-palms-together-stretch-step-3 = اثبت هكذا لمدة { $hold }.
exercise-palms-together-stretch-step-4 = ارفع يديك من جديد.

## Fingers

# A neighbour of the treated finger may be in the splint too.
exercise-free-finger-bend-name = تحريك الأصابع الحرة
exercise-free-finger-bend-start = ارفع يدك وأصابعك إلى أعلى.
exercise-free-finger-bend-step-1 = اثن فقط الأصابع المسموح لها بالحركة الحرة.
exercise-free-finger-bend-step-2 = اثبت هكذا لمدة { $hold }.
exercise-free-finger-bend-step-3 = افردها ببطء.

exercise-fingers-straight-name = فرد الأصابع
exercise-fingers-straight-start = ارفع يدك وأصابعك إلى أعلى.
exercise-fingers-straight-step-1 = افرد كل أصابعك بقدر ما يسهل عليك.
exercise-fingers-straight-step-2 = اثبت هكذا لمدة { $hold }.
exercise-fingers-straight-step-3 = أرخ أصابعك.

exercise-tabletop-name = ثني مفاصل الأصابع عند الكف فقط
exercise-tabletop-start = ارفع يدك وأصابعك إلى أعلى.
exercise-tabletop-step-1 = اثن مفاصل أصابعك عند الكف. أبق المفاصل الأخرى في أصابعك مفرودة.
exercise-tabletop-step-2 = اثبت هكذا لمدة { $hold }.
exercise-tabletop-step-3 = افرد مفاصل أصابعك عند الكف.

exercise-straight-fist-name = إغلاق اليد في قبضة مسطحة
exercise-straight-fist-start = ارفع يدك وأصابعك إلى أعلى.
exercise-straight-fist-step-1 = اثن مفاصل أصابعك عند الكف ومفاصلها الوسطى. أبق أطراف أصابعك مفرودة.
exercise-straight-fist-step-2 = ضع أطراف أصابعك مبسوطة على راحة يدك.
exercise-straight-fist-step-3 = اثبت هكذا لمدة { $hold }.
exercise-straight-fist-step-4 = افرد أصابعك.

exercise-five-positions-name = المرور بأشكال اليد
exercise-five-positions-start = ارفع يدك وأصابعك إلى أعلى.
exercise-five-positions-step-1 = افرد كل أصابعك.
exercise-five-positions-step-2 = اثن أصابعك كالخطاف. أبق مفاصل أصابعك عند الكف مفرودة.
exercise-five-positions-step-3 = أغلق يدك كلها في قبضة لينة.
exercise-five-positions-step-4 = اثن مفاصل أصابعك عند الكف فقط. أبق المفاصل الأخرى مفرودة.
exercise-five-positions-step-5 = ضع أطراف أصابعك مبسوطة على راحة يدك. أبق أطراف أصابعك مفرودة.
exercise-five-positions-step-6 = اثبت على كل شكل لمدة { $hold } قبل الشكل التالي.

exercise-block-tip-bend-name = ثني طرف الإصبع فقط
exercise-block-tip-bend-start = أرح يدك على طاولة، وراحتها إلى أعلى. أمسك الإصبع المصابة بيدك الأخرى بين مفصلها الأوسط والمفصل الأخير.
exercise-block-tip-bend-step-1 = اثن طرف الإصبع فقط.
exercise-block-tip-bend-step-2 = اثبت هكذا لمدة { $hold }.
exercise-block-tip-bend-step-3 = افرد طرف الإصبع.

exercise-block-middle-bend-name = ثني المفصل الأوسط فقط
exercise-block-middle-bend-start = أرح يدك على طاولة، وراحتها إلى أعلى. أمسك الإصبع المصابة بيدك الأخرى بين مفصلها عند الكف ومفصلها الأوسط.
exercise-block-middle-bend-step-1 = اثن المفصل الأوسط فقط.
exercise-block-middle-bend-step-2 = اثبت هكذا لمدة { $hold }.
exercise-block-middle-bend-step-3 = افرد المفصل الأوسط.

exercise-knuckle-bent-straighten-name = فرد المفصل الأوسط والمفصل عند الكف مثني
exercise-knuckle-bent-straighten-start = اثن مفصل الإصبع المصابة عند الكف. أبق هذا المفصل مثنيا بيدك الأخرى.
exercise-knuckle-bent-straighten-step-1 = افرد المفصل الأوسط بقدر ما يسهل عليك.
exercise-knuckle-bent-straighten-step-2 = اثبت هكذا لمدة { $hold }.
exercise-knuckle-bent-straighten-step-3 = أرخ المفصل الأوسط.

exercise-finger-lift-name = رفع الأصابع واحدة بعد أخرى
exercise-finger-lift-start = ضع راحة يدك مبسوطة على طاولة.
exercise-finger-lift-step-1 = ارفع إصبعا عن الطاولة. أبق الأصابع الأخرى عليها.
exercise-finger-lift-step-2 = اثبت هكذا لمدة { $hold }.
exercise-finger-lift-step-3 = أنزل الإصبع ببطء.
exercise-finger-lift-step-4 = افعل الشيء نفسه مع كل إصبع من الأصابع الأخرى، ما عدا الإبهام.

exercise-tip-bend-middle-straight-name = ثني طرف الإصبع والمفصل الأوسط مفرود
exercise-tip-bend-middle-straight-start = أرح يدك على طاولة. أبق الجبيرة على يدك.
exercise-tip-bend-middle-straight-step-1 = أبق المفصل الأوسط للإصبع المصابة مفرودا.
exercise-tip-bend-middle-straight-step-2 = اثن طرف الإصبع فقط.
exercise-tip-bend-middle-straight-step-3 = اثبت هكذا لمدة { $hold }.
exercise-tip-bend-middle-straight-step-4 = افرد طرف الإصبع.

exercise-middle-bend-tip-held-name = ثني المفصل الأوسط للإصبع
exercise-middle-bend-tip-held-start = أسند مرفقك إلى طاولة وأصابعك إلى أعلى. أبق الجبيرة على يدك.
exercise-middle-bend-tip-held-step-1 = اثن المفصل الأوسط للإصبع المصابة.
exercise-middle-bend-tip-held-step-2 = اثبت هكذا لمدة { $hold }.
exercise-middle-bend-tip-held-step-3 = افرد هذا المفصل ببطء.

## After a tendon repair
## Ordered by the clinician only.

exercise-short-arc-middle-bend-name = ثني المفصل الأوسط قليلا
exercise-short-arc-middle-bend-start = استعمل فقط قطعة القياس التي صنعها معالجك. أبق مفصل الإصبع عند الكف مفرودا.
exercise-short-arc-middle-bend-step-1 = ضع الإصبع المصابة على طول قطعة القياس.
exercise-short-arc-middle-bend-step-2 = اثن المفصل الأوسط إلى أن تلمس الإصبع القطعة، لا أكثر.
exercise-short-arc-middle-bend-step-3 = اثبت هكذا لمدة { $hold }.
exercise-short-arc-middle-bend-step-4 = افرد المفصل الأوسط تماما.
exercise-short-arc-middle-bend-step-5 = البس الجبيرة من جديد بعد أن تنهي كل المرات.

exercise-helped-curl-in-splint-name = ثني الأصابع باليد الأخرى
exercise-helped-curl-in-splint-start = أبق الجبيرة على يدك. افتح فقط الأشرطة التي أراك إياها معالجك. اترك أصابعك مرتخية.
exercise-helped-curl-in-splint-step-1 = استعمل يدك الأخرى لتثني إصبعا برفق نحو راحة يدك.
exercise-helped-curl-in-splint-step-2 = اثبت هكذا لمدة { $hold }.
exercise-helped-curl-in-splint-step-3 = اترك الإصبع ببطء. لا تسحبها لتفردها.
exercise-helped-curl-in-splint-step-4 = افعل الشيء نفسه مع كل إصبع، ما عدا الإبهام.
exercise-helped-curl-in-splint-step-5 = أغلق الأشرطة من جديد بعد أن تنهي كل المرات.

exercise-straighten-to-roof-name = فرد الأصابع حتى تلمس الجبيرة
exercise-straighten-to-roof-start = أبق الجبيرة على يدك. افتح فقط الأشرطة التي أراك إياها معالجك. أبق مفاصل أصابعك عند الكف ملامسة للجبيرة.
exercise-straighten-to-roof-step-1 = افرد أصابعك حتى تلمس الجبيرة.
exercise-straighten-to-roof-step-2 = اثبت هكذا لمدة { $hold }.
exercise-straighten-to-roof-step-3 = أرخ أصابعك.
exercise-straighten-to-roof-step-4 = أغلق الأشرطة من جديد بعد أن تنهي كل المرات.

exercise-half-fist-in-splint-name = إغلاق اليد في نصف قبضة مرتخية
exercise-half-fist-in-splint-start = أبق الجبيرة على يدك. افتح فقط الأشرطة التي أراك إياها معالجك.
exercise-half-fist-in-splint-step-1 = اثن أصابعك برفق إلى منتصف المسافة نحو راحة يدك.
exercise-half-fist-in-splint-step-2 = اثبت هكذا لمدة { $hold }. لا تشد قبضتك.
exercise-half-fist-in-splint-step-3 = افرد أصابعك حتى تلمس الجبيرة.
exercise-half-fist-in-splint-step-4 = أغلق الأشرطة من جديد بعد أن تنهي كل المرات.

exercise-place-and-hold-name = وضع الأصابع في مكانها وتثبيتها
exercise-place-and-hold-start = أسند مرفقك إلى طاولة. تحرك فقط إلى الحد الذي أراك إياه معالجك.
exercise-place-and-hold-step-1 = استعمل يدك الأخرى لتثني أصابعك برفق.
exercise-place-and-hold-step-2 = أبعد يدك الأخرى.
exercise-place-and-hold-step-3 = أبق أصابعك هكذا برفق لمدة { $hold }. لا تشد قبضتك.
exercise-place-and-hold-step-4 = أرخ أصابعك.

exercise-yoke-bend-name = ثني الأصابع في الجبيرة
exercise-yoke-bend-start = أسند مرفقك إلى طاولة وأصابعك إلى أعلى. أبق الجبيرة على يدك. لا تدع معصمك ينزل إلى الأمام.
exercise-yoke-bend-step-1 = اثن كل أصابعك بقدر ما تسمح الجبيرة.
exercise-yoke-bend-step-2 = اثبت هكذا لمدة { $hold }.
exercise-yoke-bend-step-3 = افرد كل أصابعك.

## Stretches of a finger

exercise-helped-curl-stretch-name = ثني الإصبع بمساعدة اليد الأخرى
exercise-helped-curl-stretch-start = أرح يدك على طاولة، وراحتها إلى أعلى.
exercise-helped-curl-stretch-step-1 = استعمل يدك الأخرى لتثني الإصبع المصابة ببطء.
exercise-helped-curl-stretch-step-2 = توقف عندما تشعر بشد خفيف.
exercise-helped-curl-stretch-step-3 = اثبت هكذا لمدة { $hold }.
exercise-helped-curl-stretch-step-4 = أرخ الشد ببطء.

exercise-helped-straighten-stretch-name = فرد الإصبع بمساعدة اليد الأخرى
exercise-helped-straighten-stretch-start = ضع ظهر يدك على طاولة. أمسك الإصبع المصابة بيدك الأخرى بين مفصلها عند الكف ومفصلها الأوسط.
exercise-helped-straighten-stretch-step-1 = اضغط المفصل الأوسط برفق في اتجاه الفرد.
exercise-helped-straighten-stretch-step-2 = توقف عندما تشعر بشد خفيف.
exercise-helped-straighten-stretch-step-3 = اثبت هكذا لمدة { $hold }.
exercise-helped-straighten-stretch-step-4 = أرخ الشد ببطء.

exercise-intrinsic-stretch-name = ثني الإصبع والمفصل عند الكف مفرود
exercise-intrinsic-stretch-start = أسند مرفقك إلى طاولة وأصابعك إلى أعلى.
exercise-intrinsic-stretch-step-1 = أبق مفصل الإصبع المصابة عند الكف مفرودا.
exercise-intrinsic-stretch-step-2 = استعمل يدك الأخرى لتثني مفصلها الأوسط وطرفها.
exercise-intrinsic-stretch-step-3 = توقف عندما تشعر بشد خفيف.
exercise-intrinsic-stretch-step-4 = اثبت هكذا لمدة { $hold }.
exercise-intrinsic-stretch-step-5 = أرخ الشد ببطء.

## Thumb

exercise-thumb-bend-across-name = ثني الإبهام عبر راحة اليد
exercise-thumb-bend-across-start = أرح يدك على طاولة، وراحتها إلى أعلى.
exercise-thumb-bend-across-step-1 = اثن إبهامك ببطء عبر راحة يدك.
exercise-thumb-bend-across-step-2 = اثبت هكذا لمدة { $hold }.
exercise-thumb-bend-across-step-3 = افرد إبهامك.

exercise-thumb-web-release-name = تليين الجلد بين الإبهام والسبابة
exercise-thumb-web-release-start = أرح يدك على طاولة على جهة الخنصر.
exercise-thumb-web-release-step-1 = افرك الجلد بين الإبهام والسبابة برفق.
exercise-thumb-web-release-step-2 = أمسك إبهامك بيدك الأخرى بين مفصله عند الكف والمعصم.
exercise-thumb-web-release-step-3 = اسحب إبهامك برفق بعيدا عن راحة يدك.
exercise-thumb-web-release-step-4 = اثبت هكذا لمدة { $hold }.
exercise-thumb-web-release-step-5 = أرخ الشد ببطء.

exercise-thumb-wrist-slow-lower-name = إنزال اليد ببطء والإبهام إلى أعلى
exercise-thumb-wrist-slow-lower-start = أرح ساعدك على طاولة على جهة الخنصر. أمسك الوزن الصغير الذي اختاره معالجك. قم بهذا التمرين يوما ثم استرح يوما، لا كل يوم.
exercise-thumb-wrist-slow-lower-step-1 = ارفع يدك نحو جهة الإبهام بمساعدة يدك الأخرى.
exercise-thumb-wrist-slow-lower-step-2 = أبعد يدك الأخرى.
exercise-thumb-wrist-slow-lower-step-3 = دع يدك تنزل ببطء. اجعل النزول يستمر لمدة { $hold }.

## Nerves

exercise-thumb-side-nerve-slide-name = انزلاق عصب جهة الإبهام
exercise-thumb-side-nerve-slide-start = اجلس ومرفقك مثني ومعصمك مستقيم.
exercise-thumb-side-nerve-slide-step-1 = أغلق أصابعك في قبضة مرتخية.
exercise-thumb-side-nerve-slide-step-2 = افرد أصابعك. أبق إبهامك بجانبها.
exercise-thumb-side-nerve-slide-step-3 = اثن معصمك برفق إلى الخلف.
exercise-thumb-side-nerve-slide-step-4 = مد إبهامك إلى الجانب.
exercise-thumb-side-nerve-slide-step-5 = أدر راحة يدك إلى أعلى.
exercise-thumb-side-nerve-slide-step-6 = اثبت في كل وضع لمدة { $hold } قبل الوضع التالي.

exercise-little-finger-nerve-slide-name = انزلاق عصب جهة الخنصر
exercise-little-finger-nerve-slide-start = مد ذراعك إلى الجانب، وراحة يدك إلى أعلى.
exercise-little-finger-nerve-slide-step-1 = اثن مرفقك إلى منتصف المسافة، ومعصمك ينثني نحو جهة راحة اليد في الوقت نفسه.
exercise-little-finger-nerve-slide-step-2 = اثبت هكذا لمدة { $hold }.
exercise-little-finger-nerve-slide-step-3 = افرد مرفقك، ومعصمك ينثني برفق نحو جهة ظهر اليد في الوقت نفسه.
exercise-little-finger-nerve-slide-step-4 = اثبت هكذا لمدة { $hold }.

## Strength

exercise-wrist-press-still-name = الدفع دون تحريك المعصم
exercise-wrist-press-still-start = أرح ساعدك على طاولة، وراحة يدك إلى أسفل، ويدك خارج الحافة.
exercise-wrist-press-still-step-1 = ضع يدك الأخرى على ظهر يدك.
exercise-wrist-press-still-step-2 = ادفع برفق إلى أعلى ضد يدك الأخرى. لا تدع معصمك يتحرك.
exercise-wrist-press-still-step-3 = اثبت هكذا لمدة { $hold }.
exercise-wrist-press-still-step-4 = أرخ يدك.
exercise-wrist-press-still-step-5 = في المرة التالية، ضع يدك الأخرى تحت راحة يدك وادفع براحة يدك إلى أسفل.

exercise-putty-grip-name = عصر معجون لين
exercise-putty-grip-start = ضع قطعة من معجون لين في راحة يدك.
exercise-putty-grip-step-1 = اعصرها برفق بأصابعك وإبهامك.
exercise-putty-grip-step-2 = اثبت هكذا لمدة { $hold }.
exercise-putty-grip-step-3 = أرخ أصابعك ببطء.
exercise-putty-grip-step-4 = كور المعجون من جديد.

exercise-three-point-pinch-name = الضغط على معجون لين والأصابع مقوسة
exercise-three-point-pinch-start = خذ قطعة صغيرة من معجون لين.
exercise-three-point-pinch-step-1 = أمسكها بين إبهامك وسبابتك وإصبعك الوسطى.
exercise-three-point-pinch-step-2 = أبق كل المفاصل مثنية قليلا.
exercise-three-point-pinch-step-3 = اضغط على المعجون برفق.
exercise-three-point-pinch-step-4 = اثبت هكذا لمدة { $hold }.
exercise-three-point-pinch-step-5 = أرخ أصابعك ببطء.

exercise-key-pinch-putty-name = الضغط على معجون لين كالإمساك بمفتاح
exercise-key-pinch-putty-start = خذ قطعة صغيرة من معجون لين.
exercise-key-pinch-putty-step-1 = أمسكها بين إبهامك وجانب سبابتك.
exercise-key-pinch-putty-step-2 = اضغط على المعجون برفق.
exercise-key-pinch-putty-step-3 = اثبت هكذا لمدة { $hold }.
exercise-key-pinch-putty-step-4 = أرخ أصابعك ببطء.

exercise-wrist-slow-lower-name = إنزال اليد ببطء والراحة إلى أسفل
exercise-wrist-slow-lower-start = أرح ساعدك على طاولة، وراحة يدك إلى أسفل، ويدك خارج الحافة. أمسك الوزن الصغير الذي اختاره معالجك.
exercise-wrist-slow-lower-step-1 = ارفع يدك بمساعدة يدك الأخرى.
exercise-wrist-slow-lower-step-2 = أبعد يدك الأخرى.
exercise-wrist-slow-lower-step-3 = دع يدك تنزل ببطء. اجعل النزول يستمر لمدة { $hold }.

exercise-hand-lean-name = الاتكاء على اليد
exercise-hand-lean-start = قف أمام حائط. لا تستعمل طاولة أو الأرض إلا عندما يقول لك معالجك ذلك.
exercise-hand-lean-step-1 = ضع راحتي يديك على الحائط.
exercise-hand-lean-step-2 = اتكئ ببطء حتى تشعر بوزن على يديك.
exercise-hand-lean-step-3 = اثبت هكذا لمدة { $hold }.
exercise-hand-lean-step-4 = ادفع جسمك ببطء إلى الخلف.

## Skin, scar, feeling and tightness

exercise-stroke-towards-heart-name = مسح الذراع باليد نحو القلب
exercise-stroke-towards-heart-start = أرح ذراعك على وسائد، ويدك أعلى من مرفقك.
exercise-stroke-towards-heart-step-1 = ضع يدك الأخرى على أطراف أصابعك.
exercise-stroke-towards-heart-step-2 = امسح بخفة من أطراف أصابعك إلى مرفقك.
exercise-stroke-towards-heart-step-3 = لا تمسح فوق الجبيرة، ولا فوق جلد مؤلم أو مفتوح.
exercise-stroke-towards-heart-step-4 = استمر لمدة { $hold }.

exercise-scar-massage-name = تحريك الندبة
exercise-scar-massage-start = افعل هذا فقط عندما تكون الندبة مغلقة وجافة. أرح يدك على طاولة.
exercise-scar-massage-step-1 = ضع طرف إصبع من يدك الأخرى على الندبة.
exercise-scar-massage-step-2 = اضغط بثبات، لكن دون ألم.
exercise-scar-massage-step-3 = حرك الجلد في دوائر صغيرة.
exercise-scar-massage-step-4 = حرك الجلد إلى أعلى وإلى أسفل، ثم من جانب إلى جانب.
exercise-scar-massage-step-5 = استمر على طول الندبة لمدة { $hold }.

exercise-texture-rub-name = تعويد الجلد على اللمس
exercise-texture-rub-start = افعل هذا فقط على جلد لا جرح مفتوح فيه. أرح يدك على طاولة.
exercise-texture-rub-step-1 = افرك الجلد الحساس بخفة بقماش لين.
exercise-texture-rub-step-2 = استمر لمدة { $hold }.
exercise-texture-rub-step-3 = استعمل قماشا أخشن عندما لا يعود القماش اللين يزعجك.

exercise-touch-relearn-name = تعلم الإحساس من جديد
exercise-touch-relearn-start = أرح يدك على طاولة. لا تستعمل شيئا ساخنا أو باردا أو حادا.
exercise-touch-relearn-step-1 = المس طرف إصبعك بشيء صغير وانظر إليه.
exercise-touch-relearn-step-2 = أغمض عينيك والمس الموضع نفسه.
exercise-touch-relearn-step-3 = انتبه: أين تشعر باللمسة؟ وكيف هو هذا الإحساس؟
exercise-touch-relearn-step-4 = افتح عينيك وقارن.
exercise-touch-relearn-step-5 = استمر في مواضع أخرى لمدة { $hold }.

exercise-scar-hold-stretch-name = إبقاء الندبة مشدودة
exercise-scar-hold-stretch-start = افعل هذا فقط عندما تكون الندبة مغلقة وجافة.
exercise-scar-hold-stretch-step-1 = حرك يدك ببطء حتى تشعر بشد في الندبة.
exercise-scar-hold-stretch-step-2 = اثبت هكذا لمدة { $hold }.
exercise-scar-hold-stretch-step-3 = دع يدك تعود ببطء.

exercise-tight-hand-slow-open-name = فتح اليد المشدودة ببطء
exercise-tight-hand-slow-open-start = أرح ساعدك على وسادة. دع معصمك ينثني إلى الأمام. لا تسحب بسرعة أبدا.
exercise-tight-hand-slow-open-step-1 = أمسك إبهامك من قاعدته واسحبه ببطء إلى الخارج.
exercise-tight-hand-slow-open-step-2 = افرد أصابعك ببطء بيدك الأخرى.
exercise-tight-hand-slow-open-step-3 = حرك معصمك ببطء إلى الخلف. أبق أصابعك مفرودة.
exercise-tight-hand-slow-open-step-4 = توقف عندما تبدأ يدك في المقاومة.
exercise-tight-hand-slow-open-step-5 = اثبت هكذا لمدة { $hold }.
exercise-tight-hand-slow-open-step-6 = دع يدك تنغلق ببطء.
