### More activities: what people do with their hands, and easier ways to do it.
### The name stands as a short noun phrase in a table, such as “Washing the dishes”.
### Every other message is one or two short sentences of advice beside that name.

## More ways for jobs named elsewhere

activity-text-with-thumbs-open-elbow = بازو ٹکائیں۔ کہنی کو چوکور کونے سے زیادہ کھلا رکھیں۔
activity-hold-tablet-open-elbow = اسے دور کریں۔ کہنی کو چوکور کونے سے زیادہ کھلا رکھیں۔
activity-drive-car-open-elbow = سیٹ ایسے لگائیں کہ کہنی چوکور کونے سے زیادہ کھلے۔
activity-brush-teeth-lean-forward = سنک پر جھکیں۔ سر کو برش کی طرف لائیں۔

## Shower and wash your hair

activity-wash-hair-shower-name = نہانا اور بال دھونا
activity-wash-hair-shower-arm-bag = ہاتھ اور سپلنٹ پر پانی روکنے والی تھیلی چڑھائیں۔ اسے اوپر سے اچھی طرح بند کریں۔
activity-wash-hair-shower-pump-bottle = پمپ والی بوتل اور لمبے دستے والا سپنج استعمال کریں۔
activity-wash-hair-shower-bend-head = سر نیچے جھکائیں۔ کہنی کو چوکور کونے سے زیادہ کھلا رکھیں۔
activity-wash-hair-shower-other-hand = دوسرے ہاتھ سے دھوئیں، یا کسی سے بال دھلوائیں۔

## Pull up trousers or socks

activity-pull-up-clothes-name = شلوار، پتلون یا موزے چڑھانا
activity-pull-up-clothes-loose-waist = نرم کمر والے ڈھیلے کپڑے پہنیں۔
activity-pull-up-clothes-loops = اندر حلقے سی لیں۔ نچلا بازو ان میں ڈال کر کھینچیں۔
activity-pull-up-clothes-flat-palms = بیٹھ جائیں۔ کھلی ہتھیلیوں سے کپڑا اوپر دھکیلیں۔
activity-pull-up-clothes-other-hand = دوسرے ہاتھ سے کھینچیں، یا کسی سے مدد لیں۔

## Fasten a strap behind your back

activity-fasten-back-strap-name = پیٹھ کے پیچھے فیتہ بند کرنا
activity-fasten-back-strap-pull-over = نرم چیز پہنیں جو سر پر سے پہنی جائے۔
activity-fasten-back-strap-turn-round = سامنے بند کریں۔ پھر گھما کر پیچھے کریں۔
activity-fasten-back-strap-front-closing = ایسی چنیں جو سامنے سے چوڑے ہکوں سے بند ہو۔
activity-fasten-back-strap-helper = کسی سے بند کروائیں۔

## Wipe after the toilet

activity-toilet-wipe-name = بیت الخلا کے بعد صفائی
activity-toilet-wipe-cover-splint = سپلنٹ پر پتلی تھیلی چڑھائیں۔ بعد میں اسے پھینک دیں۔
activity-toilet-wipe-long-wiper = لمبے دستے والا صفائی کا آلہ، یا خود دھونے والی سیٹ استعمال کریں۔
activity-toilet-wipe-other-hand = دوسرے ہاتھ سے صاف کریں۔
activity-toilet-wipe-helper = کسی بھروسے کے شخص سے مدد لیں۔

## Cut your nails

activity-cut-nails-name = ناخن کاٹنا
activity-cut-nails-fixed-clipper = تختے پر لگا ناخن تراش استعمال کریں۔ اسے ہتھیلی سے دبائیں۔
activity-cut-nails-file = ناخن چوڑی ریتی سے گھسیں۔ اسے ڈھیلا پکڑیں۔
activity-cut-nails-few-at-once = ہر روز چند ناخن کاٹیں۔
activity-cut-nails-helper = کسی سے کٹوائیں۔

## Tie shoe laces

activity-tie-laces-name = جوتے کے تسمے باندھنا
activity-tie-laces-slip-on = بغیر تسمے کے جوتے پہنیں۔ لمبا شو ہارن استعمال کریں۔
activity-tie-laces-stretch-laces = لچکدار تسمے استعمال کریں جو بندھے رہیں۔
activity-tie-laces-helper = کسی سے بندھوائیں۔

## Open a ring-pull can or a bottle cap

activity-ring-pull-cap-name = کھینچنے والا ڈبہ یا بوتل کا ڈھکن کھولنا
activity-ring-pull-cap-lever-opener = ایسا لیور استعمال کریں جو چھلا آپ کے لیے اٹھائے۔
activity-ring-pull-cap-cap-grip = ڈھکن پر ربڑ کی چٹائی رکھیں۔ کھلی ہتھیلی سے گھمائیں۔
activity-ring-pull-cap-easy-packs = ایسے پیکٹ لیں جو بغیر زور کے کھلیں۔
activity-ring-pull-cap-helper = کسی سے کھلوائیں۔

## Chop vegetables

activity-chop-vegetables-name = سبزی کاٹنا
activity-chop-vegetables-upright-knife = جھولنے والی یا کھڑے دستے والی چھری استعمال کریں۔
activity-chop-vegetables-cook-first = پہلے پکا لیں۔ نرم چیز میں کم زور لگتا ہے۔
activity-chop-vegetables-ready-cut = پہلے سے کٹی سبزی لیں۔
activity-chop-vegetables-helper = کسی سے کٹوائیں۔

## Wash the dishes

activity-wash-dishes-name = برتن دھونا
activity-wash-dishes-long-brush = ٹھنڈا پانی اور لمبے دستے والا برش استعمال کریں۔
activity-wash-dishes-soak-first = پہلے برتن بھگو دیں۔ پھر ہلکے سے پونچھیں۔
activity-wash-dishes-dishwasher = برتن دھونے کی مشین استعمال کریں۔ ہلکی چیزیں ایک ایک کر کے رکھیں۔
activity-wash-dishes-helper = کسی سے دھلوائیں۔

## Knead dough or stir a thick mix

activity-knead-dough-name = آٹا گوندھنا یا گاڑھا آمیزہ چلانا
activity-knead-dough-upright-spoon = پیالہ گیلے کپڑے پر رکھیں۔ کھڑے چمچ سے، کندھے کے زور سے چلائیں۔
activity-knead-dough-thin-mix = آمیزہ پتلا اور تھوڑا بنائیں۔
activity-knead-dough-mixer = مشین سے گوندھیں۔
activity-knead-dough-helper = کسی سے گندھوائیں۔

## Carry plates or a tray

activity-carry-plates-name = پلیٹیں یا ٹرے اٹھانا
activity-carry-plates-flat-palms = دونوں کھلی ہتھیلیاں اس کے نیچے سرکائیں۔ اسے جسم کے قریب رکھیں۔
activity-carry-plates-trolley = ٹرالی پر رکھ کر دھکیلیں۔
activity-carry-plates-one-by-one = ایک وقت میں ایک پلیٹ اٹھائیں۔ گرم پلیٹیں پہلے ٹھنڈی ہونے دیں۔
activity-carry-plates-helper = کسی سے اٹھوائیں۔

## Eat with knife and fork

activity-eat-with-cutlery-name = چھری کانٹے سے کھانا
activity-eat-with-cutlery-fat-handles = لمبے، موٹے دستوں والے چمچ، کانٹے استعمال کریں۔
activity-eat-with-cutlery-rocking-knife = جھولنے والی چھری سے کاٹیں۔
activity-eat-with-cutlery-soft-food = نرم کھانا چنیں جس میں چھری نہ لگے۔
activity-eat-with-cutlery-other-hand = دوسرے ہاتھ سے کھائیں۔ کھانا کسی سے کٹوائیں۔

## Turn a door knob or a tap

activity-turn-door-knob-name = دروازے کا گول دستہ یا نل گھمانا
activity-turn-door-knob-lever-handle = اس پر لیور لگائیں۔ لیور نچلے بازو سے دبائیں۔
activity-turn-door-knob-leave-open = اندر کے دروازے ذرا کھلے رکھیں۔ انہیں کولہے سے دھکیلیں۔
activity-turn-door-knob-other-hand = دوسرے ہاتھ سے گھمائیں۔
activity-turn-door-knob-helper = کسی سے کھلوائیں۔

## Vacuum the floor

activity-vacuum-name = ویکیوم سے فرش صاف کرنا
activity-vacuum-walk-along = کہنی پہلو سے لگا کر رکھیں۔ اس کے ساتھ ساتھ چلیں۔
activity-vacuum-light-cleaner = ہلکا، یا خود چلنے والا ویکیوم استعمال کریں۔
activity-vacuum-one-room = ایک کمرہ کریں۔ پھر ہاتھ کو آرام دیں۔
activity-vacuum-helper = کسی سے کروائیں۔

## Hang up the washing

activity-hang-washing-name = دھلے کپڑے پھیلانا
activity-hang-washing-hangers = کپڑے ہینگر پر لٹکائیں یا سٹینڈ پر ڈالیں۔
activity-hang-washing-soft-pegs = آسانی سے کھلنے والے کلپ استعمال کریں۔
activity-hang-washing-small-loads = تھوڑے کپڑے دھوئیں۔ مشین میں اچھی طرح نچوڑیں۔
activity-hang-washing-helper = کسی سے پھیلوائیں۔

## Scrub the bath

activity-scrub-bath-name = غسل خانہ رگڑنا
activity-scrub-bath-long-handle = لمبے، موٹے دستے والا سپنج استعمال کریں۔
activity-scrub-bath-let-soak = سپرے کریں، انتظار کریں، اور پانی بہائیں۔ نہ رگڑیں۔
activity-scrub-bath-short-bouts = ہر روز تھوڑا سا حصہ صاف کریں۔
activity-scrub-bath-helper = کسی سے صاف کروائیں۔

## Push up from a chair

activity-rise-from-chair-name = کرسی سے زور لگا کر اٹھنا
activity-rise-from-chair-high-seat = اونچی، سخت سیٹ پر بیٹھیں۔ پھر ٹانگیں آسانی سے اٹھاتی ہیں۔
activity-rise-from-chair-legs-first = آگے سرکیں اور آگے جھکیں۔ ٹانگوں کے زور سے اٹھیں۔
activity-rise-from-chair-forearm-rest = کرسی کے بازو پر نچلے بازو سے دبائیں، ہاتھ سے نہیں۔
activity-rise-from-chair-other-hand = دوسرے ہاتھ سے زور لگائیں، یا کسی سے اٹھنے میں مدد لیں۔

## Iron clothes

activity-iron-clothes-name = کپڑے استری کرنا
activity-iron-clothes-light-iron = چھوٹی، ہلکی استری استعمال کریں۔
activity-iron-clothes-hang-smooth = کپڑے نم اور سیدھے لٹکائیں۔ بہت سے کپڑوں کو استری نہیں چاہیے۔
activity-iron-clothes-few-pieces = چند کپڑے استری کریں۔ پھر ہاتھ کو آرام دیں۔
activity-iron-clothes-other-hand = دوسرے ہاتھ سے استری کریں، یا کسی سے کروائیں۔

## Make the bed

activity-make-bed-name = بستر لگانا
activity-make-bed-light-covers = ایک ہلکی رضائی اور ڈھیلی چادریں استعمال کریں۔
activity-make-bed-flat-hands = چادریں ہاتھوں کی کھلی ہتھیلیوں اور نچلے بازوؤں سے جگہ پر دھکیلیں۔
activity-make-bed-few-corners = گدا نہ اٹھائیں۔ کونے ڈھیلے چھوڑیں۔
activity-make-bed-helper = کسی سے لگوائیں۔

## Lean on a walking stick or frame

activity-lean-on-stick-name = چھڑی یا واکر پر ٹیک لگانا
activity-lean-on-stick-wide-grip = ہم سے اونچائی دکھوا لیں۔ چوڑا، نرم دستہ مدد دیتا ہے۔
activity-lean-on-stick-forearm-rest = ہم سے ایسی چھڑی مانگیں جس پر نچلا بازو ٹکے۔ سہارے کے بغیر نہ چلیں۔
activity-lean-on-stick-other-hand = ہم سے پوچھیں کہ کیا اسے دوسرے ہاتھ سے پکڑنے کی اجازت ہے۔ سہارے کے بغیر نہ چلیں۔

## Hold a dog lead

activity-hold-dog-lead-name = کتے کی رسی پکڑنا
activity-hold-dog-lead-waist-lead = کمر کے گرد باندھنے والا پٹا استعمال کریں۔
activity-hold-dog-lead-calm-walks = تھوڑی دیر، آرام سے چلیں۔ کتے کو کھنچاؤ روکنے والا ساز پہنائیں۔
activity-hold-dog-lead-helper = کسی سے پکڑوائیں۔ اسے انگلیوں کے گرد کبھی نہ لپیٹیں۔

## Use a screwdriver

activity-use-screwdriver-name = پیچ کس چلانا
activity-use-screwdriver-powered-driver = موٹر والا ہلکا پیچ کس استعمال کریں۔
activity-use-screwdriver-fat-handle = موٹا دستہ استعمال کریں جو تھوڑا تھوڑا گھومے۔
activity-use-screwdriver-elbow-in = کہنی پہلو سے لگا کر رکھیں۔ جسم کا زور لگائیں۔
activity-use-screwdriver-helper = کسی سے پیچ لگوائیں۔

## Use a hammer

activity-hammer-name = ہتھوڑی چلانا
activity-hammer-light-hammer = نرم، موٹے دستے والی ہلکی ہتھوڑی استعمال کریں۔
activity-hammer-few-nails = چند کیلیں ٹھونکیں۔ پھر ہاتھ کو آرام دیں۔
activity-hammer-helper = کسی سے ٹھکوائیں۔

## Use a power drill

activity-power-drill-name = ڈرل مشین چلانا
activity-power-drill-light-drill = پہلو میں دستے والی ہلکی ڈرل استعمال کریں۔
activity-power-drill-two-hands = دونوں ہاتھوں سے پکڑیں، کہنیاں پہلو سے لگی ہوں۔
activity-power-drill-short-bouts = ایک سوراخ کریں۔ پھر ہاتھ کو آرام دیں۔
activity-power-drill-helper = کسی سے سوراخ کروائیں۔

## Lift boxes

activity-lift-boxes-name = ڈبے اٹھانا
activity-lift-boxes-palms-under = ہتھیلیاں اوپر کریں۔ نچلے بازو نیچے سرکائیں اور قریب رہیں۔
activity-lift-boxes-half-load = ڈبے صرف آدھے بھریں۔
activity-lift-boxes-trolley = ٹرالی پر دھکیلیں۔ فرش سے نہ اٹھائیں۔
activity-lift-boxes-helper = کسی سے اٹھوائیں۔

## Pick up small parts or coins

activity-handle-small-parts-name = چھوٹی چیزیں یا سکے اٹھانا
activity-handle-small-parts-soft-tray = انہیں نرم چٹائی پر رکھیں۔ کنارے سے سرکا کر اٹھائیں۔
activity-handle-small-parts-wide-tweezers = چوڑی، نرم پکڑ والی چمٹی یا مقناطیس استعمال کریں۔
activity-handle-small-parts-pauses = چند اٹھائیں۔ پھر ہاتھ کو آرام دیں۔
activity-handle-small-parts-other-hand = انہیں دوسرے ہاتھ سے اٹھائیں۔

## Hold a baby to feed

activity-feed-baby-name = دودھ پلانے کے لیے بچے کو پکڑنا
activity-feed-baby-firm-pillow = بچے کو سخت تکیے پر لٹائیں۔ وزن تکیہ اٹھائے۔
activity-feed-baby-straight-wrist = سر کو کہنی کے موڑ میں رکھیں۔ کلائی سیدھی رکھیں۔
activity-feed-baby-change-sides = طرف اکثر بدلیں۔ بیچ میں بازو سیدھا کریں۔
activity-feed-baby-helper = کسی سے کہیں کہ بچے کو جگہ پر لٹائے اور پاس رہے۔

## Change a nappy

activity-change-nappy-name = بچے کا ڈائپر بدلنا
activity-change-nappy-easy-tabs = آسانی سے کھلنے والی چوڑی پٹیوں کے ڈائپر چنیں۔
activity-change-nappy-roll-baby = بچے کو کروٹ پر لٹائیں۔ دونوں پاؤں اوپر نہ پکڑیں۔
activity-change-nappy-wipes-ready = شروع کرنے سے پہلے سب کچھ کھول کر تیار رکھیں۔
activity-change-nappy-other-hand = پٹیاں دوسرے ہاتھ سے لگائیں، یا کسی سے بدلوائیں۔

## Buckle a child seat

activity-buckle-child-seat-name = بچے کی سیٹ کا بکل لگانا
activity-buckle-child-seat-buckle-key = بکل دبانے کے لیے بنا لیور استعمال کریں۔
activity-buckle-child-seat-knuckle = بٹن مڑی انگلی کے جوڑ سے دبائیں۔
activity-buckle-child-seat-helper = دوسرا ہاتھ استعمال کریں، یا کسی سے کہیں۔ دیکھیں کہ وہ بند ہے۔

## Push a pram

activity-push-pram-name = بچہ گاڑی دھکیلنا
activity-push-pram-open-palms = کھلی ہتھیلیوں سے دھکیلیں۔
activity-push-pram-high-bar = ڈنڈا اونچا کریں اور اس پر گدی لگائیں۔ نچلے بازو اس پر ٹکائیں۔
activity-push-pram-helper = دوسرے ہاتھ سے دھکیلیں، یا کسی سے کہیں۔

## Dig

activity-dig-name = کھدائی
activity-dig-small-spade = لمبے دستے والا چھوٹا، ہلکا بیلچہ استعمال کریں۔
activity-dig-foot-pushes = بیلچہ پاؤں سے دبائیں۔
activity-dig-short-bouts = ایک بار میں آدھا بیلچہ لیں۔ چند بار کے بعد رکیں۔
activity-dig-helper = کسی سے کھدوائیں۔ جگہ آپ دکھائیں۔

## Pull weeds

activity-pull-weeds-name = جڑی بوٹیاں نکالنا
activity-pull-weeds-long-weeder = لمبے، موٹے دستے والی کھرپی یا کدال استعمال کریں۔
activity-pull-weeds-after-rain = بارش کے بعد نکالیں، جب جڑیں آسانی سے نکلتی ہیں۔
activity-pull-weeds-short-bouts = تھوڑی سی جگہ کریں۔ پھر ہاتھ کو آرام دیں۔
activity-pull-weeds-helper = کسی سے نکلوائیں۔ جگہ آپ دکھائیں۔

## Water plants

activity-water-plants-name = پودوں کو پانی دینا
activity-water-plants-two-hands = فوارہ دونوں ہاتھوں سے، جسم کے قریب پکڑیں۔
activity-water-plants-little-water = فوارے میں تھوڑا سا پانی بھریں۔
activity-water-plants-hose = ایسا پائپ استعمال کریں جس کا لیور کھلا رہے۔
activity-water-plants-helper = دوسرے ہاتھ سے پانی دیں، یا کسی سے کہیں۔

## Fasten a seat belt

activity-fasten-seat-belt-name = سیٹ بیلٹ لگانا
activity-fasten-seat-belt-belt-handle = بیلٹ پر ایسا دستہ لگائیں جہاں ہاتھ آسانی سے پہنچے۔
activity-fasten-seat-belt-knuckle = بٹن مڑی انگلی کے جوڑ سے دبائیں۔
activity-fasten-seat-belt-other-hand = بیلٹ دوسرے ہاتھ سے کھینچ کر لائیں۔ کسی سے بند کروائیں۔

## Ride a bicycle

activity-cycle-name = سائیکل چلانا
activity-cycle-high-bar = ہینڈل اونچا کریں۔ نرم، موٹے دستے لگائیں۔
activity-cycle-short-rides = ہموار راستے پر تھوڑا سا چلائیں۔
activity-cycle-indoor-bike = ورزش کی سائیکل استعمال کریں۔ سیدھے بیٹھیں اور ہاتھوں کو آرام دیں۔

## Lift weights

activity-lift-weights-name = وزن اٹھانا
activity-lift-weights-half-weight = آدھا وزن لیں۔ کم بار کریں۔
activity-lift-weights-forearm-cuff = نچلے بازو پر پٹا باندھ کر کھینچیں۔ ڈنڈا نہ پکڑیں۔
activity-lift-weights-legs-only = ٹانگوں، پیٹ اور کمر کی ورزش کریں۔ کچھ نہ پکڑیں۔

## Do press-ups or yoga

activity-press-ups-yoga-name = ڈنڈ یا یوگا
activity-press-ups-yoga-legs-only = ٹانگوں، کمر یا پہلو کے بل والے آسن چنیں۔
activity-press-ups-yoga-straight-wrist = جمے ہوئے دستے پکڑیں تاکہ کلائی سیدھی رہے۔
activity-press-ups-yoga-fewer = ہاتھ دیوار پر ٹکائیں، فرش پر نہیں۔

## Swim

activity-swim-name = تیرنا
activity-swim-float = نچلے بازو تیرنے کے تختے پر رکھیں۔ ٹانگوں سے تیریں۔
activity-swim-dry-at-once = باہر آتے ہی جلد اور سپلنٹ سکھائیں۔
activity-swim-short-swim = تھوڑی دیر تیریں۔

## Play the guitar

activity-play-guitar-name = گٹار بجانا
activity-play-guitar-light-strings = ہلکے تار استعمال کریں جو کم دباؤ مانگیں۔
activity-play-guitar-neck-higher = پٹے سے گٹار کی گردن اونچی رکھیں۔ کلائی سیدھی رکھیں۔
activity-play-guitar-short-bouts = ایک گانا بجائیں۔ پھر ہاتھ کو آرام دیں۔

## Sleep

activity-sleep-position-name = سونا
activity-sleep-position-splint-on = جب یہ ہدایت نامہ کہے، رات کو سپلنٹ پہنیں۔
activity-sleep-position-arm-on-pillow = بازو اپنے پاس تکیے پر رکھیں، جتنا آسانی سے سیدھا ہو۔
activity-sleep-position-soft-towel = کہنی کے گرد نرم تولیہ ڈھیلا لپیٹیں تاکہ وہ کم مڑے۔

## Hold a phone to your ear

activity-hold-phone-to-ear-name = فون کان سے لگانا
activity-hold-phone-to-ear-loudspeaker = سپیکر یا ہیڈ سیٹ استعمال کریں۔ فون رکھ دیں۔
activity-hold-phone-to-ear-short-calls = بات چھوٹی رکھیں۔ بیچ میں بازو سیدھا کریں۔
activity-hold-phone-to-ear-other-hand = فون دوسرے ہاتھ میں پکڑیں۔
