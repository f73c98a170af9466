### Splints: names, straps, places to check, and the steps of putting on and taking off.
### Names are nominative, feminine ("шина …"). Straps are masculine inanimate or plural: accusative = nominative.

orthosis-forearm-thumb-spica-name = длинная шина для большого пальца
orthosis-forearm-thumb-spica-short = Предплечье и большой палец
orthosis-hand-thumb-spica-name = короткая шина для большого пальца
orthosis-hand-thumb-spica-short = Кисть и большой палец
orthosis-short-cmc-name = шина для основания большого пальца
orthosis-short-cmc-short = Основание большого пальца
orthosis-short-cmc-mcp-block-name = шина для основания большого пальца с упором у костяшки
orthosis-short-cmc-mcp-block-short = Основание и костяшка большого пальца
orthosis-soft-wrist-thumb-wrap-name = мягкая шина-обёртка для запястья и большого пальца
orthosis-soft-wrist-thumb-wrap-short = Мягкая: запястье и большой палец
orthosis-soft-thumb-wrap-name = мягкая шина-обёртка для большого пальца
orthosis-soft-thumb-wrap-short = Мягкая: большой палец
orthosis-wrist-only-name = шина для запястья
orthosis-wrist-only-short = Запястье

strap-wrist = ремешок на запястье
strap-forearm = ремешок на предплечье
strap-palm = ремешок на ладони
strap-thumb = ремешок на большом пальце
strap-wrist-edge = ремешок рядом с запястьем

spot-wrist-bone-thumb-side = косточка запястья со стороны большого пальца
spot-wrist-bone-little-finger-side = косточка запястья со стороны мизинца
spot-thumb-web = кожа между большим и указательным пальцем
spot-thumb-knuckle = тыльная сторона и бока костяшки большого пальца
spot-thumb-base = кость у основания большого пальца
spot-palm-crease = ладонь, где кончается шина
spot-forearm-edge = предплечье, где кончается шина

step-wash-dry-hands = Вымойте руки и хорошо вытрите.
step-check-lining = Проверьте, что шина чистая, сухая и гладкая внутри.
step-open-straps = Расстегните все ремешки.
step-rest-arm-on-table = Положите предплечье на стол.
step-slide-thumb-in = Мягко вставьте большой палец.
step-lay-hand-in = Положите ладонь в шину, большой палец – снаружи.
step-seat-at-wrist = Прижмите шину до места, чтобы её изгиб лёг на запястье.
step-seat-at-thumb-base = Прижмите шину до места вокруг основания большого пальца.
step-smooth-the-wrap = Разгладьте обёртку, чтобы не было складок.
step-close-strap = Застегните { $strap }.
step-check-strap-room = Проверьте, что под каждый ремешок входит кончик пальца другой руки.
step-check-wrist-bends = Проверьте, что запястье сгибается.
step-check-thumb-knuckle-bends = Проверьте, что костяшка и кончик большого пальца сгибаются.
step-check-thumb-tip-bends = Проверьте, что кончик большого пальца сгибается.
step-check-fist = Проверьте, что вы можете сжать кулак и двигать большим пальцем.
step-look-at-fingers = Посмотрите на пальцы, и на большой тоже. Они должны быть тёплыми и обычного цвета.

step-undo-strap = Расстегните { $strap }.
step-lift-off = Поднимите шину с руки. Не тащите её.
step-lift-off-thumb-side = Снимите шину в сторону большого пальца. Не тащите её.
step-lift-off-elbow-front = Снимите шину с передней стороны локтя. Не тащите её.
step-lift-out-of-thumb-web = Выньте шину из складки между большим и указательным пальцем.
step-lift-off-little-side = Снимите шину в сторону мизинца. Не тащите её.
step-slide-off-thumb = Снимите шину с большого пальца, сдвигая её. Не крутите её.
step-look-at-skin = Осмотрите кожу со всех сторон.
