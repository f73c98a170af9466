### More signs to watch for. Each is a clause or a short noun phrase without a full stop; here they are all noun phrases.
### It stands in a list under a heading such as “Call us today if:”.
### Printed only where a condition names the sign.

## Emergencies

sign-finger-snap = إحساس بطقة، أو عدم القدرة فجأة على ثني إصبع أو إبهام أو فرده
sign-tooth-cut-over-knuckle = جرح سببته سن فوق مفصل إصبع، صار أحمر أو متورما أو مؤلما
sign-finger-white-when-straight = إصبع تصبح بيضاء عندما تكون مفرودة
sign-graft-pale-or-tight = جلد جديد على يدك يصبح شاحبا، أو إحساس بشد عميق فيه

## Today

sign-tip-droops-again = تدلي طرف إصبعك من جديد، أو انثناؤه دون سند
sign-middle-joint-bends-alone = تدلي المفصل الأوسط لإصبعك، أو انثناؤه دون سند
sign-finger-cannot-straighten = إصبع تهبط ولا تستطيع فردها بنفسك
sign-thumb-tip-will-not-lift = لم تعد تستطيع رفع طرف إبهامك
sign-finger-turns-over-neighbour = إصبع تدور أو تعبر فوق الإصبع المجاورة لها
sign-finger-locks = إصبع أو إبهام يعلق ولا يمكن فرده
sign-pin-loose = تخلخل سيخ معدني أو انثناؤه أو انكساره، أو خروج سائل من فتحته
sign-joint-slips = انزلاق مفصل من مكانه، أو إحساس بأنه مرتخ
sign-wrist-clunks = طقة قوية في معصمك، أو ألم عميق في التجويف المجاور لإبهامك
sign-night-numbness-grows = خدر في أصابعك في ليال أكثر، أو خدر صار يبقى طوال النهار
sign-thumb-muscle-thinner = عضلة تحت إبهامك تصبح أنحف
sign-hand-muscle-thinner = يد تصبح أنحف بين الإبهام والسبابة
sign-little-finger-numb = خدر في خنصرك أشد من قبل ولا يزول
sign-elbow-band-tingles = تنميل في يدك أو في ساعدك عند لبس الحزام أو الجبيرة
sign-finger-stays-bent-more = بقاء إصبع مثنية أكثر من قبل
sign-tight-hand-tighter = ازدياد الشد في يدك أو صعوبة فتحها

## At the next visit

sign-clicks-under-load = طقطقة مؤلمة في معصمك أو يدك عند الاتكاء أو رفع شيء
