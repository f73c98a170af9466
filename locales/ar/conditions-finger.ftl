### Conditions of the fingers: the name, what is wrong, and what the splint does.
### Words for a reader of about twelve. The splint is never said to cure anything.
### The front of a joint is “towards the palm”. A band of the body is “رباط”; “شريط” is only a splint's strap.

## Finger that catches

condition-trigger-finger-name = إصبع تعلق (إصبع الزناد)
condition-trigger-finger-what = الوتر الذي يثني إصبعك يمر في نفق داخل راحة اليد. الوتر سميك أكثر مما يجب هناك، فيتعثر أو يعلق.
condition-trigger-finger-aim = الجبيرة تقلل انثناء إصبعك. وبذلك يقل احتكاك الوتر في النفق ويستطيع أن يرتاح.

## Fingertip that droops, torn cord

condition-mallet-tendon-name = تدلي طرف الإصبع مع تمزق الوتر (الإصبع المطرقية)
condition-mallet-tendon-what = الوتر الرفيع الذي يرفع طرف إصبعك ممزق. لا يلتحم جزآه إلا إذا لم يتدل طرف الإصبع أبدا.
condition-mallet-tendon-aim = الجبيرة تبقي طرف إصبعك مفرودا أثناء التئام الوتر.

## Fingertip that droops, chip of bone

condition-mallet-bony-name = تدلي طرف الإصبع مع انفصال قطعة عظم صغيرة (الإصبع المطرقية)
condition-mallet-bony-what = الوتر الذي يرفع طرف إصبعك نزع قطعة عظم صغيرة. لا تلتحم القطعة من جديد إلا إذا بقي طرف الإصبع ساكنا.
condition-mallet-bony-aim = الجبيرة تبقي طرف إصبعك مفرودا أثناء التئام العظم.

## Torn strip over the middle joint, fresh

condition-boutonniere-acute-name = تمزق الوتر فوق المفصل الأوسط للإصبع
condition-boutonniere-acute-what = الوتر الذي يفرد المفصل الأوسط لإصبعك ممزق. كل انثناء يباعد بين جزأيه.
condition-boutonniere-acute-aim = الجبيرة تبقي المفصل الأوسط مفرودا. يبقى طرف إصبعك حرا، وثنيه يساعد الوتر.

## Middle joint fixed bent after a tear

condition-boutonniere-chronic-name = انثناء المفصل الأوسط للإصبع بعد تمزق قديم
condition-boutonniere-chronic-what = تمزق قديم ترك المفصل الأوسط لإصبعك مثنيا. لقد أصبح المفصل متيبسا.
condition-boutonniere-chronic-aim = الجبيرة تعمل على فرد المفصل ببطء وبرفق. وبعد ذلك تبقيه مفرودا.

## Middle joint that bends backwards

condition-swan-neck-name = مفصل أوسط ينثني إلى الخلف (عنق البجعة)
condition-swan-neck-what = المفصل الأوسط لإصبعك ينزلق إلى الخلف ويعلق هناك. عندها يصعب إغلاق القبضة.
condition-swan-neck-aim = الجبيرة تمنع المفصل من الانثناء إلى الخلف. ويبقى ثنيه إلى الأمام ممكنا.

## Jammed finger, front of the middle joint

condition-pip-volar-plate-name = إصبع مصدومة، إصابة المفصل الأوسط من جهة راحة اليد
condition-pip-volar-plate-what = الصفيحة المتينة في المفصل الأوسط من جهة راحة اليد مصابة. الانثناء إلى الخلف يؤذيها من جديد.
condition-pip-volar-plate-aim = الجبيرة تحمي المفصل من الانثناء إلى الخلف. ثنيه في الاتجاه المعتاد مفيد له.

## Sprained side of the middle joint

condition-pip-collateral-sprain-name = التواء جانب المفصل الأوسط للإصبع
condition-pip-collateral-sprain-what = الرباط في جانب المفصل الأوسط متمدد أو ممزق جزئيا. أي دفع إلى الجانب يشده ويفتحه.
condition-pip-collateral-sprain-aim = الجبيرة تحمي المفصل من الدفع إلى الجانب أثناء التئام الرباط.

## Middle joint that does not straighten

condition-pip-flexion-contracture-name = مفصل أوسط متيبس ومثني
condition-pip-flexion-contracture-what = الجلد والأربطة في المفصل الأوسط من جهة راحة اليد أصبحت قصيرة. إصبعك لا تنفرد بالكامل.
condition-pip-flexion-contracture-aim = الجبيرة تمسك المفصل برفق في اتجاه الفرد. الشد الطويل الخفيف أفضل من الشد القصير القوي.

## Worn joint at the fingertip

condition-dip-osteoarthritis-name = تآكل المفصل عند طرف الإصبع
condition-dip-osteoarthritis-what = المفصل الأخير في إصبعك متآكل. قد يكون مؤلما وتظهر عليه كتل صغيرة.
condition-dip-osteoarthritis-aim = الجبيرة تريح المفصل في الليل. قد يجعله ذلك أقل ألما.

## Torn strap over the knuckle

condition-sagittal-band-injury-name = تمزق الرباط فوق مفصل الإصبع عند الكف
condition-sagittal-band-injury-what = رباط صغير يبقي الوتر فوق مفصل إصبعك عند الكف. الرباط ممزق، والوتر ينزلق عن المفصل عند إغلاق القبضة.
condition-sagittal-band-injury-aim = الجبيرة تمنع مفصل إصبعك عند الكف من الانثناء كثيرا. يبقى الوتر فوق المفصل أثناء التئام الرباط.

## Broken bone below the little finger

condition-fifth-metacarpal-neck-fracture-name = كسر العظم تحت الخنصر
condition-fifth-metacarpal-neck-fracture-what = العظم في راحة يدك تحت الخنصر مكسور قرب مفصل الخنصر عند الكف. يجب أن يلتحم من جديد.
condition-fifth-metacarpal-neck-fracture-aim = الجبيرة تحمي العظم أثناء التئامه. وهي تساعد أيضا على ألا تدور الإصبع.

## Broken first bone of a finger

condition-proximal-phalanx-fracture-name = كسر العظم الأول في الإصبع
condition-proximal-phalanx-fracture-what = العظم بين مفصل إصبعك عند الكف ومفصلها الأوسط مكسور. يجب أن يلتحم من جديد.
condition-proximal-phalanx-fracture-aim = الجبيرة تبقي العظم في مكانه أثناء التئامه. وهي تمسك المفاصل في وضع يقلل تيبسها.
