### Activities: what people do with their hands, and easier ways to do it.
### The name is an infinitive in a table; the rest is advice beside that name.

activity-open-jar-name = Открыть банку
activity-open-jar-jar-opener = Возьмите открывалку, закреплённую на стене или столе.
activity-open-jar-break-seal = Сначала поддейте крышку ручкой ложки. Тогда она открутится легче.
activity-open-jar-flat-palm = Поставьте банку в ящик стола. Прижмите крышку плоской ладонью и повернитесь телом.
activity-open-jar-helper = Попросите кого-нибудь открыть.

activity-turn-key-name = Повернуть ключ
activity-turn-key-key-turner = Наденьте на ключ широкую ручку. Держите её всей рукой.
activity-turn-key-other-hand = Поверните ключ другой рукой.
activity-turn-key-oil-lock = Смажьте замок, чтобы он легко открывался.

activity-lift-baby-name = Поднять малыша
activity-lift-baby-scoop = Подхватите ладонями вверх, большие пальцы рядом с другими. Одну руку – под попу, другую – за спину.
activity-lift-baby-chest-first = Прижмите малыша к груди, прежде чем встать.
activity-lift-baby-raise-changing-place = Сделайте пеленальное место выше, чтобы меньше поднимать.
activity-lift-baby-helper = Попросите кого-нибудь подать вам малыша.

activity-lift-pan-name = Поднять полную кастрюлю
activity-lift-pan-half-full = Наполняйте кастрюлю только до половины.
activity-lift-pan-slide = Двигайте кастрюлю по плите. Не поднимайте её.
activity-lift-pan-two-handles = Возьмите лёгкую кастрюлю с двумя ручками. Основной вес держит другая рука.
activity-lift-pan-helper = Попросите кого-нибудь поднять кастрюлю.

activity-pour-kettle-name = Налить из чайника
activity-pour-kettle-one-cup = Кипятите только одну чашку воды.
activity-pour-kettle-tipper = Возьмите подставку, которая наклоняет чайник.
activity-pour-kettle-other-hand = Наливайте другой рукой. Держите руку в шине подальше от пара.

activity-carry-shopping-name = Нести покупки
activity-carry-shopping-backpack = Возьмите рюкзак или тележку.
activity-carry-shopping-split-load = Разложите груз в маленькие сумки. Сходите дважды.
activity-carry-shopping-over-forearm = Лёгкую сумку вешайте на предплечье, никогда на пальцы.
activity-carry-shopping-helper = Попросите кого-нибудь нести сумки или закажите доставку.

activity-text-with-thumbs-name = Писать в телефоне большими пальцами
activity-text-with-thumbs-speak-text = Говорите, а телефон пусть пишет.
activity-text-with-thumbs-phone-on-table = Положите телефон на стол. Нажимайте указательным пальцем.
activity-text-with-thumbs-short-texts = Пишите коротко. Между сообщениями дайте руке отдохнуть.

activity-hold-tablet-name = Держать планшет или книгу
activity-hold-tablet-stand = Поставьте на подставку.
activity-hold-tablet-on-lap = Положите на подушку на коленях.
activity-hold-tablet-swap-hands = Часто меняйте руки.

activity-write-by-hand-name = Писать от руки
activity-write-by-hand-fat-pen = Возьмите толстую мягкую ручку, которая пишет без нажима.
activity-write-by-hand-dictate = Диктуйте или печатайте.
activity-write-by-hand-pauses = Напишите несколько строк. Потом положите ручку и отдохните.
activity-write-by-hand-helper = Попросите кого-нибудь написать за вас.

activity-type-on-keyboard-name = Печатать на клавиатуре
activity-type-on-keyboard-fingers-for-space = Пробел нажимайте пальцем другой руки.
activity-type-on-keyboard-low-keyboard = Возьмите плоскую клавиатуру. Предплечья пусть лежат.
activity-type-on-keyboard-pauses = Часто останавливайтесь, руки пусть лежат спокойно.

activity-use-mouse-name = Работать мышью
activity-use-mouse-other-hand = Двигайте мышь другой рукой.
activity-use-mouse-upright-mouse = Попробуйте вертикальную мышь. Её держат, как при рукопожатии.
activity-use-mouse-touch-pad = Возьмите сенсорную панель, работайте одним пальцем.

activity-do-up-buttons-name = Застегнуть пуговицы
activity-do-up-buttons-button-hook = Возьмите крючок для пуговиц.
activity-do-up-buttons-pull-on-clothes = Носите одежду, которую натягивают, без застёжек.
activity-do-up-buttons-other-hand = Пуговицы застёгивает другая рука. Этой только держите ткань.

activity-peel-vegetables-name = Чистить овощи
activity-peel-vegetables-fat-peeler = Возьмите овощечистку с толстой ручкой и широким лезвием.
activity-peel-vegetables-leave-skins = Оставляйте кожуру или купите готовые овощи.
activity-peel-vegetables-short-bouts = Почистите немного. Потом дайте руке отдохнуть.
activity-peel-vegetables-helper = Попросите кого-нибудь почистить.

activity-wring-cloth-name = Выжать тряпку
activity-wring-cloth-press-flat = Прижмите тряпку плоско к стенке раковины.
activity-wring-cloth-sponge = Возьмите губку. Сжимайте её мягко.
activity-wring-cloth-other-hand = Накиньте тряпку на кран. Крутите другой рукой.

activity-prune-plants-name = Подрезать растения
activity-prune-plants-ratchet = Возьмите секатор, который режет малыми шагами.
activity-prune-plants-thin-stems = Режьте только тонкие стебли. Прекратите, прежде чем заболит большой палец.
activity-prune-plants-helper = Попросите кого-нибудь срезать. Ветки выбираете вы.

activity-use-scissors-name = Резать ножницами
activity-use-scissors-spring-scissors = Возьмите ножницы, которые сами раскрываются.
activity-use-scissors-roller-cutter = Возьмите роликовый нож и доску.
activity-use-scissors-short-bouts = Режьте понемногу.
activity-use-scissors-helper = Попросите кого-нибудь отрезать за вас.

activity-wash-hands-name = Мыть руки
activity-wash-hands-pump-soap = Возьмите мыло с насосом и кран с рычагом.
activity-wash-hands-wipe-down = Мойте видимые пальцы. Остальное протрите влажной тканью.
activity-wash-hands-take-off = Снимите шину. Вымойте руку, хорошо вытрите и снова наденьте шину.

activity-drive-car-name = Водить машину
activity-drive-car-wheel-cover = Наденьте на руль толстый мягкий чехол.
activity-drive-car-short-trips = Ездите недалеко. Останавливайтесь, чтобы рука отдохнула.
activity-drive-car-helper = Пусть ведёт кто-то другой.

activity-knit-name = Вязать
activity-knit-fat-needles = Возьмите лёгкие толстые спицы и мягкую пряжу.
activity-knit-work-on-lap = Положите вязание на колени. Под локти – подушку.
activity-knit-short-bouts = Провяжите один ряд. Потом дайте руке отдохнуть.

activity-racket-sport-name = Играть с ракеткой
activity-racket-sport-soft-strings = Возьмите ручку толще и струны мягче.
activity-racket-sport-two-hands = Бейте двумя руками.
activity-racket-sport-half-time = Играйте вдвое меньше времени.

activity-brush-teeth-name = Чистить зубы
activity-brush-teeth-fat-handle = Возьмите щётку с толстой ручкой или с мотором.
activity-brush-teeth-other-hand = Чистите другой рукой.

activity-fasten-zip-name = Застегнуть молнию
activity-fasten-zip-zip-ring = Наденьте на молнию кольцо. Тяните согнутым пальцем.
activity-fasten-zip-other-hand = Тяните молнию другой рукой.
