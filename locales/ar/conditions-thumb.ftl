### Conditions of the thumb and of the tendons and bones at the wrist: the name, what is wrong, and what the splint does.
### Words for a reader of about twelve. The splint is never said to cure anything.
### What is wrong is worded without verbs for “you”, which would be in the masculine.

## Sore tendons on the thumb side of the wrist, in pregnancy or with a small baby

condition-wrist-thumb-around-birth-name = ألم أوتار الإبهام قبل ولادة طفل أو بعدها
condition-wrist-thumb-around-birth-what = وتران يصلان إلى إبهامك يحتكان عند المعصم. رفع طفل رضيع وإرضاعه قد يجعلان الوترين مؤلمين.
condition-wrist-thumb-around-birth-aim = الجبيرة تريح معصمك وإبهامك في الليل وعند رفع أي وزن. قد يجعل ذلك العناية بطفلك أقل ألما.

## Tendons that rub where they cross above the wrist
## “Above” could be read as the back of the wrist; it is the forearm, close to the wrist.

condition-intersection-syndrome-name = احتكاك الأوتار في الساعد قرب المعصم
condition-intersection-syndrome-what = أوتار تصل إلى معصمك وإبهامك تتقاطع في الساعد قرب المعصم. الأوتار تحتك هناك وتؤلم.
condition-intersection-syndrome-aim = الجبيرة تثبت معصمك. وبذلك ترتاح الأوتار المؤلمة.

## Torn band on the outer side of the thumb's knuckle

condition-thumb-rcl-injury-name = تمزق الرباط الخارجي لمفصل الإبهام عند الكف
condition-thumb-rcl-injury-what = الرباط في الجهة الخارجية من مفصل إبهامك عند الكف ممزق. يجب أن يلتئم دون أي دفع نحو أصابعك.
condition-thumb-rcl-injury-aim = الجبيرة تحمي الرباط أثناء التئامه. وهي تمنع دفع إبهامك إلى الداخل نحو أصابعك.

## After an operation at the base of the thumb

condition-thumb-cmc-arthroplasty-name = بعد عملية في قاعدة الإبهام
condition-thumb-cmc-arthroplasty-what = أجريت لك عملية في المفصل في قاعدة إبهامك عند المعصم. المفصل الجديد لين وما زال يلتئم.
condition-thumb-cmc-arthroplasty-aim = الجبيرة تبقي إبهامك بعيدا عن راحة يدك. وبذلك تحمي المفصل الجديد أثناء التئامه.

## A knuckle of the thumb that bends too far back

condition-hypermobile-thumb-name = إبهام ينثني إلى الخلف أكثر مما يجب
condition-hypermobile-thumb-what = مفصل إبهامك عند الكف ينثني إلى الخلف أكثر مما يجب. يحدث ذلك عند الضغط أو الإمساك بأطراف الأصابع. وهذا يسبب له الألم والتعب.
condition-hypermobile-thumb-aim = الجبيرة تمنع هذا المفصل من الانثناء إلى الخلف في الأعمال المجهدة. إنها تساعد عضلاتك، لكنها لا تحل محلها.

## Catching thumb

condition-trigger-thumb-name = إبهام يعلق (إبهام الزناد)
condition-trigger-thumb-what = الوتر الذي يثني إبهامك سميك ويتعثر في نفقه. إبهامك يطقطق أو يعلق.
condition-trigger-thumb-aim = الجبيرة تبقي أحد مفاصل إبهامك مفرودا. وبذلك يقل انزلاق الوتر، ويستطيع الموضع المؤلم أن يرتاح.

## Sewn tendon that lifts the thumb
## “Mended” stays apart from “sewn”; both are said in a way that cannot be read as done by the person.

condition-epl-repair-name = إصلاح الوتر الذي يرفع الإبهام
condition-epl-repair-what = تم إصلاح الوتر الذي يرفع إبهامك. يبقى الوتر ضعيفا حتى يلتئم.
condition-epl-repair-aim = الجبيرة تبقي إبهامك مرفوعا ومعصمك مثنيا إلى الخلف. وبذلك يرتاح الوتر الذي تم إصلاحه من الشد.

## Sewn tendon that bends the thumb

condition-fpl-repair-name = إصلاح الوتر الذي يثني الإبهام
condition-fpl-repair-what = تم إصلاح الوتر الذي يثني إبهامك. يبقى الوتر ضعيفا حتى يلتئم.
condition-fpl-repair-aim = الجبيرة تمنع فرد إبهامك أكثر مما يجب. وبذلك يرتاح الوتر الذي تم إصلاحه من الشد.

## Sore tendon on the little-finger side of the wrist

condition-ecu-tendinopathy-name = ألم وتر المعصم من جهة الخنصر
condition-ecu-tendinopathy-what = وتر في معصمك من جهة الخنصر مؤلم. إمالة اليد جانبا ولفها يزيدان الألم.
condition-ecu-tendinopathy-aim = الجبيرة تمنع معصمك من الميل إلى الجانب. وبذلك يرتاح الوتر المؤلم.

## Sprained wrist

condition-wrist-sprain-name = التواء المعصم
condition-wrist-sprain-what = الأربطة التي تمسك عظام معصمك معا تمددت. العظام في مكانها الصحيح.
condition-wrist-sprain-aim = الجبيرة تثبت معصمك أثناء استعمال يدك. وبذلك تهدأ الأربطة.

## Torn cushion on the little-finger side of the wrist

condition-tfcc-injury-name = تمزق الوسادة الصغيرة داخل المعصم
condition-tfcc-injury-what = وسادة صغيرة داخل معصمك من جهة الخنصر ممزقة. دوران الذراع يضغط عليها ويحكها.
condition-tfcc-injury-aim = الجبيرة تمنع ذراعك من الدوران ومعصمك من الميل إلى الجانب. وبذلك ترتاح هذه الوسادة.

## Broken scaphoid, after the cast

condition-scaphoid-after-cast-name = كسر عظم المعصم من جهة الإبهام، بعد الجبس
condition-scaphoid-after-cast-what = عظم صغير في معصمك كان مكسورا. التحم العظم، لكنه لم يصبح قويا بعد.
condition-scaphoid-after-cast-aim = الجبيرة تحمي العظم في الليل وخارج البيت وفي الزحام.

## Broken radius at the wrist, after the cast

condition-distal-radius-after-cast-name = كسر المعصم، بعد الجبس
condition-distal-radius-after-cast-what = انكسر العظم الكبير في ذراعك عند المعصم. التحم العظم، لكنه لم يصبح قويا بعد.
condition-distal-radius-after-cast-aim = الجبيرة تحمي معصمك في الليل وخارج البيت وعند رفع الأشياء. وتخلع لتحريك معصمك.

## Movements to leave out, beside those that other conditions have

avoid-thumb-ip-flexion = لا تثن طرف إبهامك.
avoid-thumb-ip-extension = لا تفرد طرف إبهامك.
avoid-thumb-cmc-flexion = لا تحرك إبهامك عبر راحة يدك.
avoid-forearm-any = لا تدر راحة يدك إلى أعلى ولا إلى أسفل.

## How to hold an arm that may not turn while the splint is off to wash

support-forearm-thumb-up = بعد خلع الجبيرة، أرح ساعدك على الطاولة. أبق إبهامك متجها إلى أعلى. لا تدر ذراعك. لا تستعمل يدك.
