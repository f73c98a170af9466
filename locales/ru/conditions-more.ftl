### Conditions of tendons after repair, of nerves, of the elbow, of sore joints and of burns.

condition-flexor-zone-two-repair-name = Сшитое сгибающее сухожилие пальца
condition-flexor-zone-two-repair-what = Сухожилия, которые сгибают палец, были перерезаны. Их сшили. Если сжимать руку или тянуть палец, чтобы он выпрямился, швы могут порваться.
condition-flexor-zone-two-repair-aim = Шина бережёт швы, пока они заживают. Она не даёт пальцам слишком выпрямиться.
condition-extensor-zone-three-repair-name = Сшитое сухожилие над средним суставом пальца
condition-extensor-zone-three-repair-what = Сухожилие, которое выпрямляет средний сустав, было перерезано. Его сшили. Одно сгибание может порвать швы.
condition-extensor-zone-three-repair-aim = Шина держит средний сустав прямо, пока сухожилие заживает.
condition-extensor-zone-five-six-repair-name = Сшитое сухожилие на тыльной стороне кисти
condition-extensor-zone-five-six-repair-what = Сухожилие, которое поднимает палец, было перерезано. Его сшили. Полный кулак может порвать швы.
condition-extensor-zone-five-six-repair-aim = Шина держит костяшку пальца поднятой. Так швы не тянутся.

condition-carpal-tunnel-name = Сдавленный нерв в запястье (синдром карпального канала)
condition-carpal-tunnel-what = Нерв идёт через тесный канал в запястье. Согнутое запястье сдавливает его, больше всего во сне.
condition-carpal-tunnel-aim = Шина держит запястье прямо. Нерву больше места.
condition-carpal-tunnel-release-name = После операции из-за сдавленного нерва в запястье
condition-carpal-tunnel-release-what = Крышу канала в запястье раскрыли. Рана должна зажить, а пальцы – двигаться.
condition-carpal-tunnel-release-aim = Шина даёт запястью отдых в первые дни. Пальцы двигаются свободно.
condition-cubital-tunnel-name = Сдавленный нерв у локтя
condition-cubital-tunnel-what = Нерв огибает внутреннюю сторону локтя. Ему вредно, когда локоть сильно согнут или на него опираются.
condition-cubital-tunnel-aim = Шина не даёт локтю сильно сгибаться ночью. Днём не опирайтесь на локоть.
condition-radial-nerve-palsy-name = Повисшая кисть
condition-radial-nerve-palsy-what = Нерв, который поднимает запястье и пальцы, сейчас не работает. Кисть свисает.
condition-radial-nerve-palsy-aim = Шина помогает держать запястье поднятым. Тогда пальцы лучше сжимают.
condition-median-nerve-palsy-low-name = Большой палец не поднимается от ладони
condition-median-nerve-palsy-low-what = Нерв подушечки мышц под большим пальцем сейчас не работает. Части кисти могут неметь.
condition-median-nerve-palsy-low-aim = Шина держит открытым место рядом с большим пальцем. Палец остаётся там, где им можно работать.
condition-ulnar-nerve-palsy-name = Безымянный палец и мизинец скрючены, как коготь
condition-ulnar-nerve-palsy-what = Нерв мелких мышц кисти сейчас не работает. Безымянный палец и мизинец скрючиваются, как коготь.
condition-ulnar-nerve-palsy-aim = Шина не даёт костяшкам выгибаться назад. Тогда эти пальцы легче выпрямить.

condition-lateral-elbow-name = Больные сухожилия на наружной стороне локтя
condition-lateral-elbow-what = Мышцы, которые поднимают запястье, начинаются у локтя. Их сухожилия там болят, больше всего, когда вы что-то крепко сжимаете и поднимаете.
condition-lateral-elbow-aim = Шина немного разгружает больные сухожилия, пока вы работаете.

condition-dupuytren-release-name = После операции из-за согнутого пальца (контрактура Дюпюитрена)
condition-dupuytren-release-what = Тугие тяжи в ладони разрезали, чтобы палец раскрывался. Рубец может стянуть его обратно.
condition-dupuytren-release-aim = Ночью шина держит палец там, где ему легко. Это помогает пальцу оставаться раскрытым.
condition-rheumatoid-knuckle-drift-name = Пальцы уходят вбок (ревматоидный артрит)
condition-rheumatoid-knuckle-drift-what = Связки по бокам костяшек слабые. Пальцы наклоняются в сторону мизинца.
condition-rheumatoid-knuckle-drift-aim = Шина выравнивает пальцы, пока вы работаете рукой. Уход вбок она не останавливает.
condition-rheumatoid-wrist-name = Больной сустав запястья (ревматоидный артрит)
condition-rheumatoid-wrist-what = Сустав запястья болит и отёк из-за ревматоидной болезни.
condition-rheumatoid-wrist-aim = Шина удерживает запястье. Это может уменьшить боль в покое и в делах.
condition-stroke-tight-hand-name = Тугая кисть после инсульта
condition-stroke-tight-hand-what = После инсульта мышцы, которые сжимают кисть, тянут слишком сильно. Её трудно раскрыть.
condition-stroke-tight-hand-aim = Шина держит кисть в покое, полураскрытой. Так может быть удобнее, и легче держать кожу ладони чистой.

condition-dorsal-hand-burn-name = Ожог тыльной стороны кисти
condition-dorsal-hand-burn-what = Кожа на тыльной стороне кисти обожжена. Когда кожа заживает, она становится короче и может стянуть кисть.
condition-dorsal-hand-burn-aim = Шина держит костяшки согнутыми, а пальцы прямыми. Так новая кожа остаётся длинной.
condition-palmar-hand-burn-name = Ожог ладони
condition-palmar-hand-burn-what = Кожа ладони обожжена. Когда кожа заживает, она становится короче и может стянуть кисть внутрь.
condition-palmar-hand-burn-aim = Шина держит ладонь и пальцы раскрытыми. Так новая кожа остаётся длинной.

avoid-wrist-extension = Не отгибайте запястье назад.
avoid-wrist-flexion = Не сгибайте запястье вперёд.
avoid-fingers-mcp-flexion = Не сгибайте костяшки.
avoid-fingers-mcp-ulnar-deviation = Не толкайте пальцы в сторону мизинца.
avoid-fingers-pip-flexion = Не сгибайте средние суставы пальцев.
