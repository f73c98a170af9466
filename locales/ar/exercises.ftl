### Exercises: name, starting position and one action for each step.
### The name is a short order and stands as a heading; here it is a verbal noun. Steps are numbered by the program.
### $hold is a finished length of time, such as the words for five seconds.
### “Other hand” is the hand without the splint.

## Bend the tip of your thumb

exercise-thumb-tip-bend-name = ثني طرف الإبهام
exercise-thumb-tip-bend-start = اجلس وساعدك على طاولة. أبق الجبيرة على يدك.
exercise-thumb-tip-bend-step-1 = اثن طرف إبهامك فقط.
exercise-thumb-tip-bend-step-2 = اثبت هكذا لمدة { $hold }.
exercise-thumb-tip-bend-step-3 = افرد طرف إبهامك.

## Make a fist and open it

exercise-finger-fist-open-name = إغلاق القبضة وفتحها
exercise-finger-fist-open-start = ارفع يدك وأصابعك إلى أعلى. أبق إبهامك ساكنا.
exercise-finger-fist-open-step-1 = اثن كل أصابعك ببطء في قبضة لينة.
exercise-finger-fist-open-step-2 = اثبت هكذا لمدة { $hold }.
exercise-finger-fist-open-step-3 = افرد كل أصابعك.

## Make a hook with your fingers

exercise-finger-hook-name = ثني الأصابع كالخطاف
exercise-finger-hook-start = ارفع أصابعك وافردها بقدر ما يسهل عليك. أبق إبهامك ساكنا.
exercise-finger-hook-step-1 = أبق مفاصل أصابعك عند الكف كما هي.
exercise-finger-hook-step-2 = اثن المفاصل الأخرى في أصابعك كالخطاف.
exercise-finger-hook-step-3 = اثبت هكذا لمدة { $hold }.
exercise-finger-hook-step-4 = افرد أصابعك.

## Spread your fingers

exercise-finger-spread-name = المباعدة بين الأصابع
exercise-finger-spread-start = ضع راحة يدك على طاولة وأصابعك مضمومة. أبق إبهامك ساكنا.
exercise-finger-spread-step-1 = باعد بين أصابعك.
exercise-finger-spread-step-2 = اثبت هكذا لمدة { $hold }.
exercise-finger-spread-step-3 = ضم أصابعك من جديد.

## Raise your hand and pump

exercise-hand-raise-pump-name = رفع اليد وتحريك الأصابع كالمضخة
exercise-hand-raise-pump-start = اجلس وارفع يدك فوق مستوى قلبك.
exercise-hand-raise-pump-step-1 = أغلق أصابعك برفق.
exercise-hand-raise-pump-step-2 = اثبت هكذا لمدة { $hold }.
exercise-hand-raise-pump-step-3 = افتح أصابعك.
exercise-hand-raise-pump-step-4 = أنزل ذراعك بعد أن تنهي كل المرات.

## Bend and straighten your elbow

exercise-elbow-bend-name = ثني المرفق وفرده
exercise-elbow-bend-start = اجلس أو قف وذراعك بجانب جسمك.
exercise-elbow-bend-step-1 = اثن مرفقك حتى تقترب يدك من كتفك.
exercise-elbow-bend-step-2 = اثبت هكذا لمدة { $hold }.
exercise-elbow-bend-step-3 = افرد مرفقك ببطء.

## Turn your palm up and down

exercise-forearm-turn-name = تدوير راحة اليد إلى أعلى وإلى أسفل
exercise-forearm-turn-start = اجلس ومرفقك مثني وقريب من جنبك.
exercise-forearm-turn-step-1 = أدر راحة يدك إلى أعلى.
exercise-forearm-turn-step-2 = اثبت هكذا لمدة { $hold }.
exercise-forearm-turn-step-3 = أدر راحة يدك إلى أسفل.
exercise-forearm-turn-step-4 = اثبت هكذا لمدة { $hold }.

## Move your wrist up and down

exercise-wrist-up-down-name = تحريك المعصم إلى أعلى وإلى أسفل
exercise-wrist-up-down-start = أرح ساعدك على طاولة ويدك خارج الحافة. اترك إبهامك مرتخيا.
exercise-wrist-up-down-step-1 = ارفع يدك ببطء.
exercise-wrist-up-down-step-2 = اثبت هكذا لمدة { $hold }.
exercise-wrist-up-down-step-3 = دع يدك تنزل ببطء.
exercise-wrist-up-down-step-4 = اثبت هكذا لمدة { $hold }.

## Move your wrist from side to side

exercise-wrist-side-to-side-name = تحريك المعصم من جانب إلى جانب
exercise-wrist-side-to-side-start = ضع ساعدك وراحة يدك على طاولة. أبق إبهامك بجانب أصابعك.
exercise-wrist-side-to-side-step-1 = حرك يدك على الطاولة نحو جهة الإبهام.
exercise-wrist-side-to-side-step-2 = اثبت هكذا لمدة { $hold }.
exercise-wrist-side-to-side-step-3 = حرك يدك على الطاولة نحو جهة الخنصر.
exercise-wrist-side-to-side-step-4 = اثبت هكذا لمدة { $hold }.

## Bend the knuckle of your thumb

exercise-thumb-knuckle-bend-name = ثني مفصل الإبهام عند الكف
exercise-thumb-knuckle-bend-start = أرح يدك على طاولة على جهة الخنصر. أمسك إبهامك بيدك الأخرى بين مفصله عند الكف والمعصم.
exercise-thumb-knuckle-bend-step-1 = اثن مفصل إبهامك عند الكف إلى الأمام مباشرة.
exercise-thumb-knuckle-bend-step-2 = اثبت هكذا لمدة { $hold }.
exercise-thumb-knuckle-bend-step-3 = افرد المفصل.
exercise-thumb-knuckle-bend-step-4 = لا تدع إبهامك يتحرك إلى الجانب أبدا.

## Touch each fingertip with your thumb

exercise-thumb-to-fingertips-name = لمس أطراف الأصابع بالإبهام
exercise-thumb-to-fingertips-start = ارفع يدك وأصابعك إلى أعلى.
exercise-thumb-to-fingertips-step-1 = المس طرف سبابتك بإبهامك برفق.
exercise-thumb-to-fingertips-step-2 = اثبت هكذا لمدة { $hold }.
exercise-thumb-to-fingertips-step-3 = افتح يدك واسعا.
exercise-thumb-to-fingertips-step-4 = افعل الشيء نفسه مع كل إصبع من الأصابع الأخرى.

## Lift your thumb away from your palm

exercise-thumb-out-from-palm-name = رفع الإبهام بعيدا عن راحة اليد
exercise-thumb-out-from-palm-start = ضع ظهر يدك على طاولة.
exercise-thumb-out-from-palm-step-1 = ارفع إبهامك إلى أعلى مباشرة، بعيدا عن راحة يدك.
exercise-thumb-out-from-palm-step-2 = اثبت هكذا لمدة { $hold }.
exercise-thumb-out-from-palm-step-3 = دعه ينزل ببطء.

## Hold the shape of a C

exercise-thumb-c-hold-name = الثبات على شكل حرف C
exercise-thumb-c-hold-start = اجعل إبهامك وسبابتك على شكل حرف C.
exercise-thumb-c-hold-step-1 = تأكد من أن إبهامك مقوس ولا ينثني إلى الخلف.
exercise-thumb-c-hold-step-2 = أمسك إبهامك من الخارج بيدك الأخرى.
exercise-thumb-c-hold-step-3 = ادفع بإبهامك إلى الخارج برفق. لا تدعه يتحرك.
exercise-thumb-c-hold-step-4 = اثبت هكذا لمدة { $hold }.
exercise-thumb-c-hold-step-5 = أرخ يدك.

## Press your index finger to the side

exercise-index-side-press-name = دفع السبابة إلى الجانب
exercise-index-side-press-start = ضع يدك مبسوطة على طاولة، وراحتها إلى أسفل.
exercise-index-side-press-step-1 = ضع يدك الأخرى على جانب سبابتك من جهة الإبهام.
exercise-index-side-press-step-2 = ادفع سبابتك برفق نحو إبهامك. لا تدعها تتحرك.
exercise-index-side-press-step-3 = اثبت هكذا لمدة { $hold }.
exercise-index-side-press-step-4 = أرخ يدك.

## Squeeze a soft ball

exercise-soft-ball-squeeze-name = عصر كرة لينة
exercise-soft-ball-squeeze-start = ضع كرة إسفنج لينة في راحة يدك. أبعد إبهامك عنها.
exercise-soft-ball-squeeze-step-1 = اعصر الكرة بأصابعك برفق.
exercise-soft-ball-squeeze-step-2 = اثبت هكذا لمدة { $hold }.
exercise-soft-ball-squeeze-step-3 = أرخ أصابعك ببطء.
