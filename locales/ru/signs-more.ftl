### More signs to watch for. Each is a clause or a short noun phrase without a full stop.

sign-finger-snap = Вы чувствуете щелчок, или палец (или большой палец) вдруг не сгибается или не разгибается
sign-tooth-cut-over-knuckle = Рана от зуба над костяшкой краснеет, отекает или болит
sign-finger-white-when-straight = Палец белеет, когда он прямой
sign-graft-pale-or-tight = Новая кожа на руке бледнеет, или глубоко внутри тянет

sign-tip-droops-again = Кончик пальца снова повис, или он согнулся без опоры
sign-middle-joint-bends-alone = Средний сустав пальца повис, или он согнулся без опоры
sign-finger-cannot-straighten = Палец падает, и сами вы не можете его разогнуть
sign-thumb-tip-will-not-lift = Кончик большого пальца больше не поднимается
sign-finger-turns-over-neighbour = Палец поворачивается или заходит на соседний
sign-finger-locks = Палец (или большой палец) застревает и не разгибается
sign-pin-loose = Спица шатается, погнулась или сломалась, или вокруг неё течёт
sign-joint-slips = Сустав выскакивает или шатается
sign-wrist-clunks = Запястье глухо щёлкает, или болит глубоко в ямке у большого пальца
sign-night-numbness-grows = Пальцы чаще немеют ночью или начинают неметь на весь день
sign-thumb-muscle-thinner = Подушечка мышц под большим пальцем становится тоньше
sign-hand-muscle-thinner = Рука становится тоньше между большим и указательным пальцем
sign-little-finger-numb = Мизинец немеет сильнее, чем раньше
sign-elbow-band-tingles = В кисти или предплечье покалывает, когда надет бандаж или шина
sign-finger-stays-bent-more = Палец остаётся согнутым сильнее, чем раньше
sign-tight-hand-tighter = Рука становится туже или труднее раскрывается

sign-clicks-under-load = Запястье или рука щёлкает и болит, когда опираетесь или поднимаете
