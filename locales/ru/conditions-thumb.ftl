### Conditions of the thumb and of the tendons and bones at the wrist: the name, what is wrong, and what the splint does.

condition-wrist-thumb-around-birth-name = Боль в сухожилиях большого пальца до и после родов
condition-wrist-thumb-around-birth-what = Два сухожилия большого пальца трутся у запястья. Они могут заболеть, когда вы поднимаете и кормите малыша.
condition-wrist-thumb-around-birth-aim = Шина даёт отдых запястью и большому пальцу ночью и когда вы что-то поднимаете. Это может уменьшить боль при уходе за малышом.

condition-intersection-syndrome-name = Сухожилия трутся выше запястья
condition-intersection-syndrome-what = Сухожилия запястья и большого пальца пересекаются выше запястья. Там они трутся и болят.
condition-intersection-syndrome-aim = Шина держит запястье неподвижно. Так сухожилия отдыхают.

condition-thumb-rcl-injury-name = Разрыв наружной связки у костяшки большого пальца
condition-thumb-rcl-injury-what = Связка на наружной стороне костяшки большого пальца порвана. Она должна зажить без толчков в сторону других пальцев.
condition-thumb-rcl-injury-aim = Шина бережёт связку, пока она заживает. Она не даёт толкнуть большой палец к другим пальцам.

condition-thumb-cmc-arthroplasty-name = После операции у основания большого пальца
condition-thumb-cmc-arthroplasty-what = Вам сделали операцию на суставе у основания большого пальца. Новый сустав мягкий и ещё заживает.
condition-thumb-cmc-arthroplasty-aim = Шина держит большой палец в стороне от ладони. Это бережёт новый сустав, пока он заживает.

condition-hypermobile-thumb-name = Слишком гибкий большой палец
condition-hypermobile-thumb-what = Костяшка большого пальца слишком выгибается назад, когда вы давите или сжимаете пальцами. Поэтому она болит и устаёт.
condition-hypermobile-thumb-aim = Шина не даёт костяшке выгибаться назад при тяжёлых делах. Она помогает мышцам, но не заменяет их.

condition-trigger-thumb-name = Цепляющийся большой палец (щёлкающий большой палец)
condition-trigger-thumb-what = Сухожилие, которое сгибает большой палец, толстое и цепляется в своём канале. Палец щёлкает или застревает.
condition-trigger-thumb-aim = Шина держит один сустав большого пальца прямо. Сухожилие скользит меньше, и место, где болит, отдыхает.

condition-epl-repair-name = Сшитое сухожилие, которое поднимает большой палец
condition-epl-repair-what = Сухожилие, которое поднимает большой палец, сшили. Пока не заживёт, оно слабое.
condition-epl-repair-aim = Шина держит большой палец поднятым, а запястье – отогнутым назад. Так сшитое сухожилие не тянется.

condition-fpl-repair-name = Сшитое сухожилие, которое сгибает большой палец
condition-fpl-repair-what = Сухожилие, которое сгибает большой палец, сшили. Пока не заживёт, оно слабое.
condition-fpl-repair-aim = Шина не даёт большому пальцу слишком выпрямиться. Так сшитое сухожилие не тянется.

condition-ecu-tendinopathy-name = Больное сухожилие на стороне мизинца у запястья
condition-ecu-tendinopathy-what = Сухожилие на стороне мизинца у запястья болит. Хуже, когда вы наклоняете и крутите кисть.
condition-ecu-tendinopathy-aim = Шина не даёт запястью наклоняться. Больное сухожилие отдыхает.

condition-wrist-sprain-name = Растяжение запястья
condition-wrist-sprain-what = Связки, которые держат запястье, растянуты. Кости стоят на месте.
condition-wrist-sprain-aim = Шина держит запястье неподвижно, пока вы работаете рукой. Связки успокаиваются.

condition-tfcc-injury-name = Разрыв подушечки в запястье
condition-tfcc-injury-what = Маленькая подушечка на стороне мизинца в запястье порвана. Когда крутите рукой, её трёт.
condition-tfcc-injury-aim = Шина не даёт предплечью крутиться, а запястью – наклоняться. Подушечка отдыхает.

condition-scaphoid-after-cast-name = Перелом кости запястья на стороне большого пальца, после гипса
condition-scaphoid-after-cast-what = Маленькая кость в запястье была сломана. Она срослась, но ещё не крепкая.
condition-scaphoid-after-cast-aim = Шина бережёт кость ночью, на улице и в толпе.

condition-distal-radius-after-cast-name = Перелом запястья, после гипса
condition-distal-radius-after-cast-what = Большая кость предплечья была сломана у запястья. Она срослась, но ещё не крепкая.
condition-distal-radius-after-cast-aim = Шина бережёт запястье ночью, на улице и когда вы что-то поднимаете. Вы снимаете её, чтобы двигать запястьем.

avoid-thumb-ip-flexion = Не сгибайте кончик большого пальца.
avoid-thumb-ip-extension = Не выпрямляйте кончик большого пальца.
avoid-thumb-cmc-flexion = Не ведите большой палец поперёк ладони.
avoid-forearm-any = Не поворачивайте ладонь ни вверх, ни вниз.

support-forearm-thumb-up = Когда шина снята, положите предплечье на стол. Большой палец пусть смотрит вверх. Не поворачивайте предплечье. Не работайте этой рукой.
