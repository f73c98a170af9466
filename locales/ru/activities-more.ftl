### More activities: what people do with their hands, and easier ways to do it.
### The name is an infinitive in a table; the rest is advice beside that name.

## More ways for jobs named elsewhere

activity-text-with-thumbs-open-elbow = Положите руку на опору. Локоть держите раскрытым шире прямого угла.
activity-hold-tablet-open-elbow = Отодвиньте дальше. Локоть держите раскрытым шире прямого угла.
activity-drive-car-open-elbow = Поставьте сиденье так, чтобы локоть раскрывался шире прямого угла.
activity-brush-teeth-lean-forward = Наклонитесь над раковиной. Подведите голову к щётке.

## Shower and wash your hair

activity-wash-hair-shower-name = Принять душ и вымыть голову
activity-wash-hair-shower-arm-bag = Наденьте на кисть и шину непромокаемый пакет. Плотно закройте его сверху.
activity-wash-hair-shower-pump-bottle = Возьмите флакон с насосом и губку на длинной ручке.
activity-wash-hair-shower-bend-head = Наклоните голову. Локоть держите раскрытым шире прямого угла.
activity-wash-hair-shower-other-hand = Мойтесь другой рукой или попросите вымыть вам голову.

## Pull up trousers or socks

activity-pull-up-clothes-name = Натянуть брюки или носки
activity-pull-up-clothes-loose-waist = Носите свободную одежду с мягким поясом.
activity-pull-up-clothes-loops = Пришейте внутри петли. Проденьте в них предплечье и тяните.
activity-pull-up-clothes-flat-palms = Сядьте. Двигайте ткань вверх плоскими ладонями.
activity-pull-up-clothes-other-hand = Тяните другой рукой или попросите помочь.

## Fasten a strap behind your back

activity-fasten-back-strap-name = Застегнуть лямку на спине
activity-fasten-back-strap-pull-over = Носите мягкое бельё, которое надевают через голову.
activity-fasten-back-strap-turn-round = Застегните спереди. Потом поверните.
activity-fasten-back-strap-front-closing = Выберите бельё с широкими крючками спереди.
activity-fasten-back-strap-helper = Попросите кого-нибудь застегнуть.

## Wipe after the toilet

activity-toilet-wipe-name = Подтереться после туалета
activity-toilet-wipe-cover-splint = Наденьте на шину тонкий пакет. Потом выбросьте его.
activity-toilet-wipe-long-wiper = Возьмите держатель на длинной ручке или сиденье, которое моет само.
activity-toilet-wipe-other-hand = Вытирайтесь другой рукой.
activity-toilet-wipe-helper = Попросите о помощи того, кому доверяете.

## Cut your nails

activity-cut-nails-name = Стричь ногти
activity-cut-nails-fixed-clipper = Возьмите кусачки, закреплённые на доске. Нажимайте ладонью.
activity-cut-nails-file = Подпиливайте ногти широкой пилкой. Держите её свободно.
activity-cut-nails-few-at-once = Стригите по нескольку ногтей в день.
activity-cut-nails-helper = Попросите кого-нибудь постричь.

## Tie shoe laces

activity-tie-laces-name = Завязать шнурки
activity-tie-laces-slip-on = Носите обувь без шнурков. Возьмите длинный рожок.
activity-tie-laces-stretch-laces = Возьмите эластичные шнурки, которые не надо развязывать.
activity-tie-laces-helper = Попросите кого-нибудь завязать.

## Open a ring-pull can or a bottle cap

activity-ring-pull-cap-name = Открыть банку с кольцом или крышку бутылки
activity-ring-pull-cap-lever-opener = Возьмите рычаг, который поднимает кольцо за вас.
activity-ring-pull-cap-cap-grip = Положите на крышку резиновый коврик. Поверните плоской ладонью.
activity-ring-pull-cap-easy-packs = Покупайте упаковки, которые открываются без усилия.
activity-ring-pull-cap-helper = Попросите кого-нибудь открыть.

## Chop vegetables

activity-chop-vegetables-name = Резать овощи
activity-chop-vegetables-upright-knife = Возьмите нож-качалку или нож с вертикальной ручкой.
activity-chop-vegetables-cook-first = Сначала сварите. Мягкое режется легче.
activity-chop-vegetables-ready-cut = Покупайте уже нарезанные овощи.
activity-chop-vegetables-helper = Попросите кого-нибудь нарезать.

## Wash the dishes

activity-wash-dishes-name = Мыть посуду
activity-wash-dishes-long-brush = Возьмите прохладную воду и щётку на длинной ручке.
activity-wash-dishes-soak-first = Сначала замочите посуду. Потом легко протрите.
activity-wash-dishes-dishwasher = Мойте в посудомойке. Ставьте лёгкое, по одной вещи.
activity-wash-dishes-helper = Попросите кого-нибудь вымыть.

## Knead dough or stir a thick mix

activity-knead-dough-name = Месить тесто или мешать густое
activity-knead-dough-upright-spoon = Поставьте миску на мокрую тряпку. Мешайте стоячей ложкой, двигая плечом.
activity-knead-dough-thin-mix = Делайте смесь жиже и меньше.
activity-knead-dough-mixer = Пусть мешает машина.
activity-knead-dough-helper = Попросите кого-нибудь замесить.

## Carry plates or a tray

activity-carry-plates-name = Нести тарелки или поднос
activity-carry-plates-flat-palms = Подведите снизу обе плоские ладони. Держите близко к телу.
activity-carry-plates-trolley = Везите на столике с колёсами.
activity-carry-plates-one-by-one = Носите по одной тарелке. Горячие сначала остудите.
activity-carry-plates-helper = Попросите кого-нибудь отнести.

## Eat with knife and fork

activity-eat-with-cutlery-name = Есть ножом и вилкой
activity-eat-with-cutlery-fat-handles = Возьмите приборы с длинной толстой ручкой.
activity-eat-with-cutlery-rocking-knife = Режьте ножом-качалкой.
activity-eat-with-cutlery-soft-food = Выбирайте мягкую еду, для которой нож не нужен.
activity-eat-with-cutlery-other-hand = Ешьте другой рукой. Попросите кого-нибудь порезать еду.

## Turn a door knob or a tap

activity-turn-door-knob-name = Повернуть круглую ручку двери или кран
activity-turn-door-knob-lever-handle = Наденьте сверху рычаг. Давите на него предплечьем.
activity-turn-door-knob-leave-open = Оставляйте двери в доме приоткрытыми. Толкайте их бедром.
activity-turn-door-knob-other-hand = Поверните другой рукой.
activity-turn-door-knob-helper = Попросите кого-нибудь повернуть.

## Vacuum the floor

activity-vacuum-name = Пылесосить пол
activity-vacuum-walk-along = Держите локоть у бока. Идите вместе с пылесосом.
activity-vacuum-light-cleaner = Возьмите лёгкий пылесос или такой, что ездит сам.
activity-vacuum-one-room = Пропылесосьте одну комнату. Потом дайте руке отдохнуть.
activity-vacuum-helper = Попросите кого-нибудь пропылесосить.

## Hang up the washing

activity-hang-washing-name = Развесить бельё
activity-hang-washing-hangers = Вешайте на плечики или кладите на сушилку.
activity-hang-washing-soft-pegs = Возьмите прищепки, которые легко открываются.
activity-hang-washing-small-loads = Стирайте понемногу. Хорошо отжимайте в машине.
activity-hang-washing-helper = Попросите кого-нибудь развесить.

## Scrub the bath

activity-scrub-bath-name = Чистить ванну
activity-scrub-bath-long-handle = Возьмите губку на длинной толстой ручке.
activity-scrub-bath-let-soak = Побрызгайте, подождите и смойте. Не трите.
activity-scrub-bath-short-bouts = Чистите понемногу каждый день.
activity-scrub-bath-helper = Попросите кого-нибудь почистить.

## Push up from a chair

activity-rise-from-chair-name = Встать со стула с опорой на руки
activity-rise-from-chair-high-seat = Садитесь на сиденье выше и твёрже. Тогда ноги легче поднимают вас.
activity-rise-from-chair-legs-first = Сдвиньтесь вперёд и наклонитесь вперёд. Вставайте силой ног.
activity-rise-from-chair-forearm-rest = Опирайтесь на подлокотник предплечьем, а не кистью.
activity-rise-from-chair-other-hand = Опирайтесь другой рукой или попросите помочь встать.

## Iron clothes

activity-iron-clothes-name = Гладить бельё
activity-iron-clothes-light-iron = Возьмите маленький лёгкий утюг.
activity-iron-clothes-hang-smooth = Вешайте вещи влажными и ровно. Многие можно не гладить.
activity-iron-clothes-few-pieces = Погладьте несколько вещей. Потом дайте руке отдохнуть.
activity-iron-clothes-other-hand = Гладьте другой рукой или попросите погладить.

## Make the bed

activity-make-bed-name = Застелить кровать
activity-make-bed-light-covers = Возьмите одно лёгкое одеяло и свободные простыни.
activity-make-bed-flat-hands = Расправляйте простыни плоскими ладонями и предплечьями.
activity-make-bed-few-corners = Не поднимайте матрас. Углы не заправляйте.
activity-make-bed-helper = Попросите кого-нибудь застелить.

## Lean on a walking stick or frame

activity-lean-on-stick-name = Опираться на трость или ходунки
activity-lean-on-stick-wide-grip = Попросите нас проверить высоту. Поможет широкая мягкая ручка.
activity-lean-on-stick-forearm-rest = Спросите у нас трость или ходунки с опорой для предплечья. Не ходите без опоры.
activity-lean-on-stick-other-hand = Спросите нас, можно ли держать другой рукой. Не ходите без опоры.

## Hold a dog lead

activity-hold-dog-lead-name = Держать собаку на поводке
activity-hold-dog-lead-waist-lead = Возьмите поводок, который крепится на поясе.
activity-hold-dog-lead-calm-walks = Гуляйте недолго и спокойно, со шлейкой, которая не даёт тянуть.
activity-hold-dog-lead-helper = Попросите кого-нибудь держать поводок. Никогда не наматывайте его на пальцы.

## Use a screwdriver

activity-use-screwdriver-name = Работать отвёрткой
activity-use-screwdriver-powered-driver = Возьмите лёгкую отвёртку с мотором.
activity-use-screwdriver-fat-handle = Возьмите толстую ручку, которая крутит малыми шагами.
activity-use-screwdriver-elbow-in = Держите локоть у бока. Давите всем телом.
activity-use-screwdriver-helper = Попросите кого-нибудь завернуть винты.

## Use a hammer

activity-hammer-name = Работать молотком
activity-hammer-light-hammer = Возьмите лёгкий молоток с мягкой толстой ручкой.
activity-hammer-few-nails = Забейте несколько гвоздей. Потом дайте руке отдохнуть.
activity-hammer-helper = Попросите кого-нибудь забить.

## Use a power drill

activity-power-drill-name = Сверлить дрелью
activity-power-drill-light-drill = Возьмите лёгкую дрель с боковой ручкой.
activity-power-drill-two-hands = Держите её двумя руками, локти у боков.
activity-power-drill-short-bouts = Просверлите одно отверстие. Потом дайте руке отдохнуть.
activity-power-drill-helper = Попросите кого-нибудь просверлить.

## Lift boxes

activity-lift-boxes-name = Поднимать коробки
activity-lift-boxes-palms-under = Поверните ладони вверх. Подведите предплечья снизу и стойте близко к коробке.
activity-lift-boxes-half-load = Заполняйте коробки только наполовину.
activity-lift-boxes-trolley = Везите на тележке. Не поднимайте с пола.
activity-lift-boxes-helper = Попросите кого-нибудь поднять.

## Pick up small parts or coins

activity-handle-small-parts-name = Брать мелкие детали или монеты
activity-handle-small-parts-soft-tray = Положите их на мягкий коврик. Сдвигайте их с края.
activity-handle-small-parts-wide-tweezers = Возьмите пинцет с широкой мягкой ручкой или магнит.
activity-handle-small-parts-pauses = Возьмите несколько. Потом дайте руке отдохнуть.
activity-handle-small-parts-other-hand = Берите их другой рукой.

## Hold a baby to feed

activity-feed-baby-name = Держать малыша при кормлении
activity-feed-baby-firm-pillow = Положите малыша на твёрдую подушку. Вес пусть держит подушка.
activity-feed-baby-straight-wrist = Положите голову малыша на сгиб локтя. Запястье держите прямо.
activity-feed-baby-change-sides = Часто меняйте сторону. В промежутках выпрямляйте руку.
activity-feed-baby-helper = Попросите кого-нибудь положить малыша и побыть рядом.

## Change a nappy

activity-change-nappy-name = Сменить подгузник
activity-change-nappy-easy-tabs = Выбирайте подгузники с широкими липучками, которые легко открыть.
activity-change-nappy-roll-baby = Поверните малыша на бок. Не держите обе ножки на весу.
activity-change-nappy-wipes-ready = Прежде чем начать, всё откройте и положите рядом.
activity-change-nappy-other-hand = Липучки – другой рукой, или попросите сменить подгузник.

## Buckle a child seat

activity-buckle-child-seat-name = Застегнуть детское кресло
activity-buckle-child-seat-buckle-key = Возьмите рычаг, которым нажимают на пряжки.
activity-buckle-child-seat-knuckle = Нажимайте на кнопку костяшкой согнутого пальца.
activity-buckle-child-seat-helper = Делайте другой рукой или попросите. Проверьте, что застёгнуто.

## Push a pram

activity-push-pram-name = Толкать коляску
activity-push-pram-open-palms = Толкайте раскрытыми ладонями.
activity-push-pram-high-bar = Поднимите ручку выше и оберните мягким. Опирайтесь на неё предплечьями.
activity-push-pram-helper = Толкайте другой рукой или попросите толкать.

## Dig

activity-dig-name = Копать
activity-dig-small-spade = Возьмите маленькую лёгкую лопату на длинной ручке.
activity-dig-foot-pushes = Давите на лопату ногой.
activity-dig-short-bouts = Берите по пол-лопаты. Сделайте несколько раз и остановитесь.
activity-dig-helper = Попросите кого-нибудь копать. Вы показываете где.

## Pull weeds

activity-pull-weeds-name = Полоть сорняки
activity-pull-weeds-long-weeder = Возьмите тяпку или полольник на длинной толстой ручке.
activity-pull-weeds-after-rain = Полите после дождя, когда корни выходят легко.
activity-pull-weeds-short-bouts = Прополите маленький участок. Потом дайте руке отдохнуть.
activity-pull-weeds-helper = Попросите кого-нибудь полоть. Вы показываете где.

## Water plants

activity-water-plants-name = Поливать растения
activity-water-plants-two-hands = Держите лейку двумя руками, близко к телу.
activity-water-plants-little-water = Наливайте в лейку совсем немного.
activity-water-plants-hose = Возьмите шланг с рычагом, который остаётся включённым.
activity-water-plants-helper = Поливайте другой рукой или попросите полить.

## Fasten a seat belt

activity-fasten-seat-belt-name = Пристегнуть ремень в машине
activity-fasten-seat-belt-belt-handle = Закрепите на ремне ручку, до которой легко достать.
activity-fasten-seat-belt-knuckle = Нажимайте на кнопку замка костяшкой согнутого пальца.
activity-fasten-seat-belt-other-hand = Тяните ремень другой рукой. Попросите кого-нибудь застегнуть его.

## Ride a bicycle

activity-cycle-name = Ездить на велосипеде
activity-cycle-high-bar = Поднимите руль. Поставьте мягкие толстые ручки.
activity-cycle-short-rides = Ездите недалеко и по ровным дорогам.
activity-cycle-indoor-bike = Возьмите велотренажёр. Сидите прямо, руки пусть отдыхают.

## Lift weights

activity-lift-weights-name = Поднимать гири и штангу
activity-lift-weights-half-weight = Берите половину веса. Делайте меньше раз.
activity-lift-weights-forearm-cuff = Тяните за манжету на предплечье. Не сжимайте штангу.
activity-lift-weights-legs-only = Тренируйте ноги и туловище. Ничего не держите в руке.

## Do press-ups or yoga

activity-press-ups-yoga-name = Делать отжимания или йогу
activity-press-ups-yoga-legs-only = Выбирайте позы на ногах, на спине или на боку.
activity-press-ups-yoga-straight-wrist = Держитесь за неподвижные ручки, чтобы запястье оставалось прямым.
activity-press-ups-yoga-fewer = Опирайтесь на стену, а не на пол.

## Swim

activity-swim-name = Плавать
activity-swim-float = Положите предплечья на доску для плавания. Плывите ногами.
activity-swim-dry-at-once = Вытрите кожу и шину, как только выйдете из воды.
activity-swim-short-swim = Плавайте недолго.

## Play the guitar

activity-play-guitar-name = Играть на гитаре
activity-play-guitar-light-strings = Поставьте лёгкие струны, на них меньше давить.
activity-play-guitar-neck-higher = Держите гриф выше, на ремне. Запястье держите прямо.
activity-play-guitar-short-bouts = Сыграйте одну песню. Потом дайте руке отдохнуть.

## Sleep

activity-sleep-position-name = Спать
activity-sleep-position-splint-on = Спите в шине, если так сказано в этой памятке.
activity-sleep-position-arm-on-pillow = Положите руку рядом на подушку и выпрямите, насколько это легко.
activity-sleep-position-soft-towel = Свободно оберните локоть мягким полотенцем, чтобы он меньше сгибался.

## Hold a phone to your ear

activity-hold-phone-to-ear-name = Держать телефон у уха
activity-hold-phone-to-ear-loudspeaker = Включите громкую связь или возьмите наушники. Положите телефон.
activity-hold-phone-to-ear-short-calls = Говорите недолго. В промежутках выпрямляйте руку.
activity-hold-phone-to-ear-other-hand = Держите телефон другой рукой.
