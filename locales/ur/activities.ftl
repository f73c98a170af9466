### Activities: what people do with their hands, and easier ways to do it.
### The name stands as a short noun phrase in a table, such as “Opening a jar”.
### Every other message is one or two short sentences of advice beside that name.

## Open a jar

activity-open-jar-name = مرتبان کھولنا
activity-open-jar-jar-opener = دیوار یا میز پر لگا ڈھکن کھولنے کا آلہ استعمال کریں۔
activity-open-jar-break-seal = پہلے چمچ کے دستے سے سیل توڑیں۔ پھر ڈھکن کم زور سے گھومتا ہے۔
activity-open-jar-flat-palm = مرتبان دراز میں کھڑا کریں۔ کھلی ہتھیلی ڈھکن پر دبائیں اور اپنا جسم گھمائیں۔
activity-open-jar-helper = کسی سے کھلوائیں۔

## Turn a key

activity-turn-key-name = چابی گھمانا
activity-turn-key-key-turner = چابی پر چوڑا دستہ لگائیں۔ اسے پورے ہاتھ سے پکڑیں۔
activity-turn-key-other-hand = چابی دوسرے ہاتھ سے گھمائیں۔
activity-turn-key-oil-lock = تالے میں تیل ڈالیں تاکہ آسانی سے گھومے۔

## Lift a baby

activity-lift-baby-name = بچے کو اٹھانا
activity-lift-baby-scoop = ہتھیلیاں اوپر اور انگوٹھے انگلیوں کے ساتھ رکھ کر اٹھائیں۔ ایک بازو کولہوں کے نیچے، ایک کمر کے پیچھے سرکائیں۔
activity-lift-baby-chest-first = کھڑے ہونے سے پہلے بچے کو سینے کے قریب لائیں۔
activity-lift-baby-raise-changing-place = ڈائپر بدلنے کی جگہ اونچی کریں تاکہ کم اٹھانا پڑے۔
activity-lift-baby-helper = کسی سے کہیں کہ بچہ آپ کو پکڑا دے۔

## Lift a full pan

activity-lift-pan-name = بھرا برتن اٹھانا
activity-lift-pan-half-full = برتن صرف آدھا بھریں۔
activity-lift-pan-slide = برتن چولہے کی سطح پر سرکائیں۔ اسے نہ اٹھائیں۔
activity-lift-pan-two-handles = دو دستوں والا ہلکا برتن استعمال کریں۔ زیادہ وزن دوسرے ہاتھ پر ہو۔
activity-lift-pan-helper = کسی سے برتن اٹھوائیں۔

## Pour from a kettle

activity-pour-kettle-name = کیتلی سے انڈیلنا
activity-pour-kettle-one-cup = صرف ایک پیالی پانی ابالیں۔
activity-pour-kettle-tipper = ایسا سٹینڈ استعمال کریں جو کیتلی خود جھکائے۔
activity-pour-kettle-other-hand = دوسرے ہاتھ سے انڈیلیں۔ سپلنٹ والا ہاتھ بھاپ سے دور رکھیں۔

## Carry shopping

activity-carry-shopping-name = سودا اٹھانا
activity-carry-shopping-backpack = کمر کا بیگ یا ٹرالی استعمال کریں۔
activity-carry-shopping-split-load = وزن چھوٹے تھیلوں میں بانٹیں۔ دو چکر لگائیں۔
activity-carry-shopping-over-forearm = ہلکا تھیلا نچلے بازو پر لٹکائیں، انگلیوں پر کبھی نہیں۔
activity-carry-shopping-helper = تھیلے کسی سے اٹھوائیں، یا گھر منگوائیں۔

## Text with your thumbs

activity-text-with-thumbs-name = انگوٹھوں سے پیغام لکھنا
activity-text-with-thumbs-speak-text = پیغام بولیں اور فون کو لکھنے دیں۔
activity-text-with-thumbs-phone-on-table = فون میز پر رکھیں۔ شہادت کی انگلی سے چھوئیں۔
activity-text-with-thumbs-short-texts = پیغام چھوٹے رکھیں۔ بیچ میں ہاتھ کو آرام دیں۔

## Hold a tablet or a book

activity-hold-tablet-name = ٹیبلٹ یا کتاب پکڑنا
activity-hold-tablet-stand = اسے سٹینڈ پر رکھیں۔
activity-hold-tablet-on-lap = اسے گود میں گدی پر رکھیں۔
activity-hold-tablet-swap-hands = ہاتھ اکثر بدلیں۔

## Write by hand

activity-write-by-hand-name = ہاتھ سے لکھنا
activity-write-by-hand-fat-pen = موٹا، نرم قلم استعمال کریں جو کم دباؤ سے چلے۔
activity-write-by-hand-dictate = متن بولیں یا ٹائپ کریں۔
activity-write-by-hand-pauses = چند سطریں لکھیں۔ پھر قلم رکھ کر آرام کریں۔
activity-write-by-hand-helper = کسی سے لکھوائیں۔

## Type on a keyboard

activity-type-on-keyboard-name = کی بورڈ پر ٹائپ کرنا
activity-type-on-keyboard-fingers-for-space = خالی جگہ کا بٹن دوسرے ہاتھ کی انگلی سے دبائیں۔
activity-type-on-keyboard-low-keyboard = پتلا کی بورڈ استعمال کریں۔ نچلے بازو ٹکے رہیں۔
activity-type-on-keyboard-pauses = اکثر رکیں اور ہاتھ آرام سے رکھیں۔

## Use a computer mouse

activity-use-mouse-name = کمپیوٹر کا ماؤس چلانا
activity-use-mouse-other-hand = ماؤس دوسرے ہاتھ سے چلائیں۔
activity-use-mouse-upright-mouse = کھڑا پکڑنے والا ماؤس آزمائیں، جیسے ہاتھ ملاتے وقت۔
activity-use-mouse-touch-pad = ٹچ پیڈ ایک انگلی سے استعمال کریں۔

## Do up buttons

activity-do-up-buttons-name = بٹن بند کرنا
activity-do-up-buttons-button-hook = بٹن بند کرنے کا ہک استعمال کریں۔
activity-do-up-buttons-pull-on-clothes = ایسے کپڑے پہنیں جو کھینچ کر پہنے جائیں۔
activity-do-up-buttons-other-hand = بٹن دوسرے ہاتھ سے بند کریں۔ اس ہاتھ سے بس کپڑا سیدھا رکھیں۔

## Peel vegetables

activity-peel-vegetables-name = سبزی چھیلنا
activity-peel-vegetables-fat-peeler = موٹے دستے اور چوڑے پھل والا چھیلنے کا آلہ استعمال کریں۔
activity-peel-vegetables-leave-skins = چھلکے رہنے دیں، یا پکانے کو تیار سبزی لیں۔
activity-peel-vegetables-short-bouts = چند چھیلیں۔ پھر ہاتھ کو آرام دیں۔
activity-peel-vegetables-helper = کسی سے چھلوائیں۔

## Wring out a cloth

activity-wring-cloth-name = کپڑا نچوڑنا
activity-wring-cloth-press-flat = کپڑا سنک کی دیوار پر سیدھا دبائیں۔
activity-wring-cloth-sponge = سپنج استعمال کریں۔ اسے نرمی سے دبائیں۔
activity-wring-cloth-other-hand = کپڑا نل کے گرد ڈالیں۔ دوسرے ہاتھ سے مروڑیں۔

## Prune plants

activity-prune-plants-name = پودے تراشنا
activity-prune-plants-ratchet = ایسی قینچی استعمال کریں جو تھوڑا تھوڑا کاٹے۔
activity-prune-plants-thin-stems = صرف پتلی ٹہنیاں کاٹیں۔ انگوٹھے میں درد ہونے سے پہلے رکیں۔
activity-prune-plants-helper = کسی سے کٹوائیں۔ شاخیں آپ چنیں۔

## Cut with scissors

activity-use-scissors-name = قینچی سے کاٹنا
activity-use-scissors-spring-scissors = خود کھلنے والی سپرنگ کی قینچی استعمال کریں۔
activity-use-scissors-roller-cutter = تختے پر گول کٹر استعمال کریں۔
activity-use-scissors-short-bouts = تھوڑا تھوڑا کاٹیں۔
activity-use-scissors-helper = کسی سے کٹوائیں۔

## Wash your hands

activity-wash-hands-name = ہاتھ دھونا
activity-wash-hands-pump-soap = پمپ والا صابن اور لیور والا نل استعمال کریں۔
activity-wash-hands-wipe-down = جو انگلیاں نظر آئیں وہ دھوئیں۔ باقی نم کپڑے سے پونچھیں۔
activity-wash-hands-take-off = سپلنٹ اتاریں۔ دھوئیں، اچھی طرح سکھائیں، پھر اسے دوبارہ پہنیں۔

## Drive a car

activity-drive-car-name = گاڑی چلانا
activity-drive-car-wheel-cover = سٹیئرنگ پر موٹا، نرم کور چڑھائیں۔
activity-drive-car-short-trips = سفر چھوٹا رکھیں۔ رک کر ہاتھ کو آرام دیں۔
activity-drive-car-helper = گاڑی کوئی اور چلائے۔

## Knit or crochet

activity-knit-name = بنائی یا کروشیا
activity-knit-fat-needles = ہلکی، موٹی سلائیاں اور نرم اون استعمال کریں۔
activity-knit-work-on-lap = کام گود میں رکھیں۔ کہنیوں کے نیچے گدی رکھیں۔
activity-knit-short-bouts = ایک قطار بنیں۔ پھر ہاتھ کو آرام دیں۔

## Play a racket sport

activity-racket-sport-name = ریکٹ والا کھیل
activity-racket-sport-soft-strings = موٹا دستہ اور نرم تار استعمال کریں۔
activity-racket-sport-two-hands = دونوں ہاتھوں سے ماریں۔
activity-racket-sport-half-time = آدھا وقت کھیلیں۔

## Brush your teeth

activity-brush-teeth-name = دانت برش کرنا
activity-brush-teeth-fat-handle = موٹے دستے یا موٹر والا برش استعمال کریں۔
activity-brush-teeth-other-hand = دوسرے ہاتھ سے برش کریں۔

## Pull up a zip

activity-fasten-zip-name = زپ بند کرنا
activity-fasten-zip-zip-ring = زپ میں چھلا لگائیں۔ مڑی انگلی سے کھینچیں۔
activity-fasten-zip-other-hand = زپ دوسرے ہاتھ سے کھینچیں۔
