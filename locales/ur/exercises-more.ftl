### More exercises: name, starting position and one action for each step.
### The name is a short order and stands as a heading. Steps are numbered by the program.
### $hold is a finished length of time, such as the words for five seconds.
### “Other hand” is the hand without the splint. “Treated finger” is the finger that the splint is for.
### The joints of a finger are the big knuckle, the middle joint and the tip.

## Arm and wrist

exercise-shoulder-reach-name = بازو اوپر اٹھائیں
exercise-shoulder-reach-start = بیٹھیں یا کھڑے ہوں، بازو پہلو میں ہو۔
exercise-shoulder-reach-step-1 = بازو سامنے سے اٹھائیں، جتنا آسانی سے اٹھے۔
exercise-shoulder-reach-step-2 = { $hold } اسی طرح رکھیں۔
exercise-shoulder-reach-step-3 = بازو آہستہ نیچے کریں۔
exercise-shoulder-reach-step-4 = اگلی بار اسے باہر ایک طرف اٹھائیں۔

exercise-wrist-dart-name = کلائی ایسے ہلائیں جیسے ڈارٹ پھینکنا ہو
exercise-wrist-dart-start = نچلا بازو چھوٹی انگلی کی طرف سے میز پر رکھیں، ہاتھ کنارے سے باہر ہو۔ انگلیاں اور انگوٹھا ڈھیلے رکھیں۔
exercise-wrist-dart-step-1 = ہاتھ پیچھے اور انگوٹھے کی طرف جھکائیں۔
exercise-wrist-dart-step-2 = { $hold } اسی طرح رکھیں۔
exercise-wrist-dart-step-3 = ہاتھ آگے اور چھوٹی انگلی کی طرف جھکائیں۔
exercise-wrist-dart-step-4 = { $hold } اسی طرح رکھیں۔

# Ordered by the clinician only.
exercise-wrist-swing-with-fingers-name = کلائی اور انگلیاں ساتھ ساتھ ہلائیں
exercise-wrist-swing-with-fingers-start = کہنی میز پر رکھیں۔ صرف اتنا ہلائیں جتنا آپ کے تھراپسٹ نے دکھایا۔
exercise-wrist-swing-with-fingers-step-1 = کلائی آگے گرنے دیں تاکہ انگلیاں کھلیں۔
exercise-wrist-swing-with-fingers-step-2 = { $hold } اسی طرح رکھیں۔
exercise-wrist-swing-with-fingers-step-3 = کلائی اٹھائیں تاکہ انگلیاں مڑ کر نرم مٹھی بنیں۔
exercise-wrist-swing-with-fingers-step-4 = { $hold } اسی طرح رکھیں۔

exercise-forearm-front-stretch-name = نچلے بازو کی ہتھیلی والی طرف کو کھنچاؤ دیں
exercise-forearm-front-stretch-start = بازو سامنے پھیلائیں، ہتھیلی اوپر ہو۔
exercise-forearm-front-stretch-step-1 = کہنی سیدھی کریں۔
exercise-forearm-front-stretch-step-2 = ہتھیلی اور انگلیاں دوسرے ہاتھ سے پکڑیں۔
exercise-forearm-front-stretch-step-3 = ہاتھ نرمی سے نیچے کھینچیں، یہاں تک کہ کھنچاؤ محسوس ہو۔
exercise-forearm-front-stretch-step-4 = { $hold } اسی طرح رکھیں۔
exercise-forearm-front-stretch-step-5 = آہستہ چھوڑیں۔

exercise-forearm-back-stretch-name = نچلے بازو کی پشت کو کھنچاؤ دیں
exercise-forearm-back-stretch-start = بازو سامنے پھیلائیں، ہتھیلی نیچے ہو۔ انگلیاں ڈھیلی رکھیں۔
exercise-forearm-back-stretch-step-1 = کہنی سیدھی کریں۔
exercise-forearm-back-stretch-step-2 = دوسرا ہاتھ اس ہاتھ کی پشت پر رکھیں۔
exercise-forearm-back-stretch-step-3 = ہاتھ نرمی سے نیچے دبائیں، یہاں تک کہ کھنچاؤ محسوس ہو۔
exercise-forearm-back-stretch-step-4 = { $hold } اسی طرح رکھیں۔
exercise-forearm-back-stretch-step-5 = آہستہ چھوڑیں۔

exercise-palms-together-stretch-name = ہتھیلیاں ملا کر کلائیوں کو کھنچاؤ دیں
exercise-palms-together-stretch-start = سینے کے سامنے ہتھیلیاں ملائیں، انگلیاں اوپر ہوں۔
exercise-palms-together-stretch-step-1 = ہاتھ آہستہ نیچے لائیں۔ ہتھیلیاں ملی رکھیں۔
exercise-palms-together-stretch-step-2 = ہلکا کھنچاؤ محسوس ہو تو رک جائیں۔
exercise-palms-together-stretch-step-3 = { $hold } اسی طرح رکھیں۔
exercise-palms-together-stretch-step-4 = ہاتھ پھر اوپر لائیں۔

## Fingers

# A neighbour of the treated finger may be in the splint too.
exercise-free-finger-bend-name = آزاد انگلیاں ہلائیں
exercise-free-finger-bend-start = ہاتھ اٹھائیں، انگلیاں اوپر کی طرف ہوں۔
exercise-free-finger-bend-step-1 = صرف وہ انگلیاں موڑیں جنہیں ہلنے کی اجازت ہے۔
exercise-free-finger-bend-step-2 = { $hold } اسی طرح رکھیں۔
exercise-free-finger-bend-step-3 = انہیں آہستہ سیدھا کریں۔

exercise-fingers-straight-name = انگلیاں سیدھی کریں
exercise-fingers-straight-start = ہاتھ اٹھائیں، انگلیاں اوپر کی طرف ہوں۔
exercise-fingers-straight-step-1 = سب انگلیاں سیدھی کریں، جتنی آسانی سے ہوں۔
exercise-fingers-straight-step-2 = { $hold } اسی طرح رکھیں۔
exercise-fingers-straight-step-3 = انہیں ڈھیلا چھوڑیں۔

exercise-tabletop-name = صرف ہتھیلی والے جوڑ موڑیں
exercise-tabletop-start = ہاتھ اٹھائیں، انگلیاں اوپر کی طرف ہوں۔
exercise-tabletop-step-1 = ہتھیلی والے جوڑ موڑیں۔ انگلیوں کا باقی حصہ سیدھا رکھیں۔
exercise-tabletop-step-2 = { $hold } اسی طرح رکھیں۔
exercise-tabletop-step-3 = ہتھیلی والے جوڑ سیدھے کریں۔

exercise-straight-fist-name = چپٹی مٹھی بنائیں
exercise-straight-fist-start = ہاتھ اٹھائیں، انگلیاں اوپر کی طرف ہوں۔
exercise-straight-fist-step-1 = ہتھیلی والے جوڑ اور درمیانی جوڑ موڑیں۔ سرے سیدھے رکھیں۔
exercise-straight-fist-step-2 = انگلیوں کے سرے ہتھیلی پر سیدھے ٹکائیں۔
exercise-straight-fist-step-3 = { $hold } اسی طرح رکھیں۔
exercise-straight-fist-step-4 = انگلیاں سیدھی کریں۔

exercise-five-positions-name = ہاتھ کی شکلیں باری باری بنائیں
exercise-five-positions-start = ہاتھ اٹھائیں، انگلیاں اوپر کی طرف ہوں۔
exercise-five-positions-step-1 = سب انگلیاں سیدھی کریں۔
exercise-five-positions-step-2 = ہک بنائیں۔ ہتھیلی والے جوڑ سیدھے رکھیں۔
exercise-five-positions-step-3 = نرم پوری مٹھی بنائیں۔
exercise-five-positions-step-4 = صرف ہتھیلی والے جوڑ موڑیں۔ باقی سیدھا رکھیں۔
exercise-five-positions-step-5 = انگلیوں کے سرے ہتھیلی پر ٹکائیں۔ سرے سیدھے رکھیں۔
exercise-five-positions-step-6 = اگلی شکل سے پہلے ہر شکل { $hold } بنائے رکھیں۔

exercise-block-tip-bend-name = صرف انگلی کا سرا موڑیں
exercise-block-tip-bend-start = ہاتھ میز پر رکھیں، ہتھیلی اوپر ہو۔ دوسرے ہاتھ سے متاثرہ انگلی کو درمیانی جوڑ اور آخری جوڑ کے بیچ سے پکڑیں۔
exercise-block-tip-bend-step-1 = صرف سرا موڑیں۔
exercise-block-tip-bend-step-2 = { $hold } اسی طرح رکھیں۔
exercise-block-tip-bend-step-3 = سرا سیدھا کریں۔

exercise-block-middle-bend-name = صرف درمیانی جوڑ موڑیں
exercise-block-middle-bend-start = ہاتھ میز پر رکھیں، ہتھیلی اوپر ہو۔ دوسرے ہاتھ سے متاثرہ انگلی کو ہتھیلی والے جوڑ اور درمیانی جوڑ کے بیچ سے پکڑیں۔
exercise-block-middle-bend-step-1 = صرف درمیانی جوڑ موڑیں۔
exercise-block-middle-bend-step-2 = { $hold } اسی طرح رکھیں۔
exercise-block-middle-bend-step-3 = درمیانی جوڑ سیدھا کریں۔

exercise-knuckle-bent-straighten-name = درمیانی جوڑ سیدھا کریں، ہتھیلی والا جوڑ مڑا رہے
exercise-knuckle-bent-straighten-start = متاثرہ انگلی کا ہتھیلی والا جوڑ موڑیں۔ اسے دوسرے ہاتھ سے مڑا رکھیں۔
exercise-knuckle-bent-straighten-step-1 = درمیانی جوڑ سیدھا کریں، جتنا آسانی سے ہو۔
exercise-knuckle-bent-straighten-step-2 = { $hold } اسی طرح رکھیں۔
exercise-knuckle-bent-straighten-step-3 = درمیانی جوڑ ڈھیلا چھوڑیں۔

exercise-finger-lift-name = انگلیاں باری باری اٹھائیں
exercise-finger-lift-start = ہتھیلی میز پر سیدھی رکھیں۔
exercise-finger-lift-step-1 = ایک انگلی میز سے اٹھائیں۔ باقی انگلیاں نیچے رکھیں۔
exercise-finger-lift-step-2 = { $hold } اسی طرح رکھیں۔
exercise-finger-lift-step-3 = اسے آہستہ نیچے کریں۔
exercise-finger-lift-step-4 = باقی ہر انگلی کے ساتھ بھی یہی کریں۔

exercise-tip-bend-middle-straight-name = سرا موڑیں، درمیانی جوڑ سیدھا رہے
exercise-tip-bend-middle-straight-start = ہاتھ میز پر رکھیں۔ سپلنٹ پہنے رکھیں۔
exercise-tip-bend-middle-straight-step-1 = متاثرہ انگلی کا درمیانی جوڑ سیدھا رکھیں۔
exercise-tip-bend-middle-straight-step-2 = صرف سرا موڑیں۔
exercise-tip-bend-middle-straight-step-3 = { $hold } اسی طرح رکھیں۔
exercise-tip-bend-middle-straight-step-4 = سرا سیدھا کریں۔

exercise-middle-bend-tip-held-name = انگلی کا درمیانی جوڑ موڑیں
exercise-middle-bend-tip-held-start = کہنی میز پر رکھیں، انگلیاں اوپر ہوں۔ سپلنٹ پہنے رکھیں۔
exercise-middle-bend-tip-held-step-1 = متاثرہ انگلی کا درمیانی جوڑ موڑیں۔
exercise-middle-bend-tip-held-step-2 = { $hold } اسی طرح رکھیں۔
exercise-middle-bend-tip-held-step-3 = اسے آہستہ سیدھا کریں۔

## After a tendon repair
## Ordered by the clinician only.

exercise-short-arc-middle-bend-name = درمیانی جوڑ تھوڑا سا موڑیں
exercise-short-arc-middle-bend-start = صرف وہ ناپنے والا ٹکڑا استعمال کریں جو آپ کے تھراپسٹ نے بنایا۔ ہتھیلی والا جوڑ سیدھا رکھیں۔
exercise-short-arc-middle-bend-step-1 = متاثرہ انگلی ناپنے والے ٹکڑے کے ساتھ رکھیں۔
exercise-short-arc-middle-bend-step-2 = درمیانی جوڑ صرف اتنا موڑیں کہ انگلی ٹکڑے کو چھو لے۔
exercise-short-arc-middle-bend-step-3 = { $hold } اسی طرح رکھیں۔
exercise-short-arc-middle-bend-step-4 = درمیانی جوڑ پورا سیدھا کریں۔
exercise-short-arc-middle-bend-step-5 = گنتی پوری ہونے پر سپلنٹ پھر پہنیں۔

exercise-helped-curl-in-splint-name = دوسرے ہاتھ سے انگلیاں موڑیں
exercise-helped-curl-in-splint-start = سپلنٹ پہنے رکھیں۔ صرف وہ پٹے کھولیں جو آپ کے تھراپسٹ نے دکھائے۔ انگلیاں ڈھیلی رکھیں۔
exercise-helped-curl-in-splint-step-1 = دوسرے ہاتھ سے ایک انگلی نرمی سے ہتھیلی کی طرف موڑیں۔
exercise-helped-curl-in-splint-step-2 = { $hold } اسی طرح رکھیں۔
exercise-helped-curl-in-splint-step-3 = انگلی آہستہ چھوڑیں۔ اسے کھینچ کر سیدھا نہ کریں۔
exercise-helped-curl-in-splint-step-4 = ہر انگلی کے ساتھ یہی کریں۔
exercise-helped-curl-in-splint-step-5 = گنتی پوری ہونے پر پٹے پھر بند کریں۔

exercise-straighten-to-roof-name = انگلیاں سپلنٹ تک سیدھی کریں
exercise-straighten-to-roof-start = سپلنٹ پہنے رکھیں۔ صرف وہ پٹے کھولیں جو آپ کے تھراپسٹ نے دکھائے۔ ہتھیلی والے جوڑ سپلنٹ سے لگے رکھیں۔
exercise-straighten-to-roof-step-1 = انگلیاں اتنی سیدھی کریں کہ سپلنٹ کو چھو لیں۔
exercise-straighten-to-roof-step-2 = { $hold } اسی طرح رکھیں۔
exercise-straighten-to-roof-step-3 = انہیں ڈھیلا چھوڑیں۔
exercise-straighten-to-roof-step-4 = گنتی پوری ہونے پر پٹے پھر بند کریں۔

exercise-half-fist-in-splint-name = ڈھیلی آدھی مٹھی بنائیں
exercise-half-fist-in-splint-start = سپلنٹ پہنے رکھیں۔ صرف وہ پٹے کھولیں جو آپ کے تھراپسٹ نے دکھائے۔
exercise-half-fist-in-splint-step-1 = انگلیاں نرمی سے ہتھیلی کی طرف آدھے راستے تک موڑیں۔
exercise-half-fist-in-splint-step-2 = { $hold } اسی طرح رکھیں۔ زور سے نہ دبائیں۔
exercise-half-fist-in-splint-step-3 = انگلیاں اتنی سیدھی کریں کہ سپلنٹ کو چھو لیں۔
exercise-half-fist-in-splint-step-4 = گنتی پوری ہونے پر پٹے پھر بند کریں۔

exercise-place-and-hold-name = انگلیاں موڑ کر وہیں رکھیں
exercise-place-and-hold-start = کہنی میز پر رکھیں۔ صرف اتنا ہلائیں جتنا آپ کے تھراپسٹ نے دکھایا۔
exercise-place-and-hold-step-1 = دوسرے ہاتھ سے انگلیاں نرمی سے موڑیں۔
exercise-place-and-hold-step-2 = دوسرا ہاتھ ہٹا لیں۔
exercise-place-and-hold-step-3 = انگلیاں نرمی سے { $hold } وہیں رکھیں۔ زور سے نہ دبائیں۔
exercise-place-and-hold-step-4 = انگلیاں ڈھیلی چھوڑیں۔

exercise-yoke-bend-name = سپلنٹ میں انگلیاں موڑیں
exercise-yoke-bend-start = کہنی میز پر رکھیں، انگلیاں اوپر ہوں۔ سپلنٹ پہنے رکھیں۔ کلائی آگے نہ گرنے دیں۔
exercise-yoke-bend-step-1 = سب انگلیاں اتنی موڑیں جتنا سپلنٹ موڑنے دے۔
exercise-yoke-bend-step-2 = { $hold } اسی طرح رکھیں۔
exercise-yoke-bend-step-3 = سب انگلیاں سیدھی کریں۔

## Stretches of a finger

exercise-helped-curl-stretch-name = مدد سے انگلی موڑیں
exercise-helped-curl-stretch-start = ہاتھ میز پر رکھیں، ہتھیلی اوپر ہو۔
exercise-helped-curl-stretch-step-1 = دوسرے ہاتھ سے متاثرہ انگلی آہستہ موڑیں۔
exercise-helped-curl-stretch-step-2 = ہلکا کھنچاؤ محسوس ہو تو رک جائیں۔
exercise-helped-curl-stretch-step-3 = { $hold } اسی طرح رکھیں۔
exercise-helped-curl-stretch-step-4 = آہستہ چھوڑیں۔

exercise-helped-straighten-stretch-name = مدد سے انگلی سیدھی کریں
exercise-helped-straighten-stretch-start = ہاتھ کی پشت میز پر رکھیں۔ دوسرے ہاتھ سے متاثرہ انگلی کو ہتھیلی والے جوڑ اور درمیانی جوڑ کے بیچ سے پکڑیں۔
exercise-helped-straighten-stretch-step-1 = درمیانی جوڑ کو نرمی سے سیدھے کی طرف دبائیں۔
exercise-helped-straighten-stretch-step-2 = ہلکا کھنچاؤ محسوس ہو تو رک جائیں۔
exercise-helped-straighten-stretch-step-3 = { $hold } اسی طرح رکھیں۔
exercise-helped-straighten-stretch-step-4 = آہستہ چھوڑیں۔

exercise-intrinsic-stretch-name = انگلی موڑیں، ہتھیلی والا جوڑ سیدھا رہے
exercise-intrinsic-stretch-start = کہنی میز پر رکھیں، انگلیاں اوپر ہوں۔
exercise-intrinsic-stretch-step-1 = متاثرہ انگلی کا ہتھیلی والا جوڑ سیدھا رکھیں۔
exercise-intrinsic-stretch-step-2 = دوسرے ہاتھ سے اس کا درمیانی جوڑ اور سرا موڑیں۔
exercise-intrinsic-stretch-step-3 = ہلکا کھنچاؤ محسوس ہو تو رک جائیں۔
exercise-intrinsic-stretch-step-4 = { $hold } اسی طرح رکھیں۔
exercise-intrinsic-stretch-step-5 = آہستہ چھوڑیں۔

## Thumb

exercise-thumb-bend-across-name = انگوٹھا ہتھیلی کے اوپر موڑیں
exercise-thumb-bend-across-start = ہاتھ میز پر رکھیں، ہتھیلی اوپر ہو۔
exercise-thumb-bend-across-step-1 = انگوٹھا آہستہ ہتھیلی کے اوپر سے چھوٹی انگلی کی طرف موڑیں۔
exercise-thumb-bend-across-step-2 = { $hold } اسی طرح رکھیں۔
exercise-thumb-bend-across-step-3 = انگوٹھا سیدھا کریں۔

exercise-thumb-web-release-name = انگوٹھے کے پاس کی جلد نرم کریں
exercise-thumb-web-release-start = ہاتھ کو چھوٹی انگلی کی طرف سے میز پر رکھیں۔
exercise-thumb-web-release-step-1 = انگوٹھے اور شہادت کی انگلی کے بیچ کی جلد نرمی سے ملیں۔
exercise-thumb-web-release-step-2 = دوسرے ہاتھ سے انگوٹھے کو ہتھیلی والے جوڑ اور کلائی کے بیچ سے پکڑیں۔
exercise-thumb-web-release-step-3 = انگوٹھا نرمی سے ہتھیلی سے دور کھینچیں۔
exercise-thumb-web-release-step-4 = { $hold } اسی طرح رکھیں۔
exercise-thumb-web-release-step-5 = آہستہ چھوڑیں۔

exercise-thumb-wrist-slow-lower-name = ہاتھ آہستہ نیچے کریں، انگوٹھا اوپر
exercise-thumb-wrist-slow-lower-start = نچلا بازو چھوٹی انگلی کی طرف سے میز پر رکھیں۔ وہ چھوٹا وزن پکڑیں جو آپ کے تھراپسٹ نے چنا۔ یہ صرف ایک دن چھوڑ کر کریں۔
exercise-thumb-wrist-slow-lower-step-1 = دوسرے ہاتھ سے ہاتھ کو انگوٹھے کی طرف اٹھائیں۔
exercise-thumb-wrist-slow-lower-step-2 = دوسرا ہاتھ ہٹا لیں۔
exercise-thumb-wrist-slow-lower-step-3 = ہاتھ آہستہ نیچے آنے دیں۔ اس میں { $hold } لگائیں۔

## Nerves

exercise-thumb-side-nerve-slide-name = انگوٹھے کی طرف کی نس کو سرکنے دیں
exercise-thumb-side-nerve-slide-start = کہنی موڑ کر اور کلائی سیدھی رکھ کر بیٹھیں۔
exercise-thumb-side-nerve-slide-step-1 = ڈھیلی مٹھی بنائیں۔
exercise-thumb-side-nerve-slide-step-2 = انگلیاں سیدھی کریں۔ انگوٹھا ان کے ساتھ رکھیں۔
exercise-thumb-side-nerve-slide-step-3 = کلائی نرمی سے پیچھے موڑیں۔
exercise-thumb-side-nerve-slide-step-4 = انگوٹھا باہر ایک طرف لے جائیں۔
exercise-thumb-side-nerve-slide-step-5 = ہتھیلی اوپر گھمائیں۔
exercise-thumb-side-nerve-slide-step-6 = اگلی حالت سے پہلے ہر حالت { $hold } رکھیں۔

exercise-little-finger-nerve-slide-name = چھوٹی انگلی کی نس کو سرکنے دیں
exercise-little-finger-nerve-slide-start = بازو باہر ایک طرف پھیلائیں، ہتھیلی اوپر ہو۔
exercise-little-finger-nerve-slide-step-1 = کہنی آدھی موڑیں اور ساتھ ہی کلائی ہتھیلی کی طرف موڑیں۔
exercise-little-finger-nerve-slide-step-2 = { $hold } اسی طرح رکھیں۔
exercise-little-finger-nerve-slide-step-3 = کہنی سیدھی کریں اور ساتھ ہی کلائی نرمی سے ہاتھ کی پشت کی طرف موڑیں۔
exercise-little-finger-nerve-slide-step-4 = { $hold } اسی طرح رکھیں۔

## Strength

exercise-wrist-press-still-name = کلائی ہلائے بغیر زور لگائیں
exercise-wrist-press-still-start = نچلا بازو میز پر رکھیں، ہتھیلی نیچے اور ہاتھ کنارے سے باہر ہو۔
exercise-wrist-press-still-step-1 = دوسرا ہاتھ اس ہاتھ کی پشت پر رکھیں۔
exercise-wrist-press-still-step-2 = ہاتھ سے اس کے خلاف نرمی سے اوپر کی طرف زور لگائیں۔ کلائی ہلنے نہ دیں۔
exercise-wrist-press-still-step-3 = { $hold } اسی طرح رکھیں۔
exercise-wrist-press-still-step-4 = ہاتھ ڈھیلا چھوڑیں۔
exercise-wrist-press-still-step-5 = اگلی بار دوسرا ہاتھ ہتھیلی کے نیچے رکھیں اور اس پر نیچے کی طرف زور لگائیں۔

exercise-putty-grip-name = ورزش کی نرم مٹی دبائیں
exercise-putty-grip-start = ورزش کی نرم مٹی کا گولا ہتھیلی میں رکھیں۔
exercise-putty-grip-step-1 = اسے انگلیوں اور انگوٹھے سے نرمی سے دبائیں۔
exercise-putty-grip-step-2 = { $hold } اسی طرح رکھیں۔
exercise-putty-grip-step-3 = آہستہ چھوڑیں۔
exercise-putty-grip-step-4 = نرم مٹی کو پھر گولا بنائیں۔

exercise-three-point-pinch-name = ورزش کی نرم مٹی کو گول شکل میں چٹکی سے دبائیں
exercise-three-point-pinch-start = ورزش کی نرم مٹی کا چھوٹا گولا لیں۔
exercise-three-point-pinch-step-1 = اسے انگوٹھے، شہادت کی انگلی اور درمیانی انگلی کے بیچ پکڑیں۔
exercise-three-point-pinch-step-2 = ہر جوڑ ذرا سا مڑا رکھیں۔
exercise-three-point-pinch-step-3 = نرم مٹی کو نرمی سے چٹکی سے دبائیں۔
exercise-three-point-pinch-step-4 = { $hold } اسی طرح رکھیں۔
exercise-three-point-pinch-step-5 = آہستہ چھوڑیں۔

exercise-key-pinch-putty-name = ورزش کی نرم مٹی کو چابی کی طرح چٹکی سے دبائیں
exercise-key-pinch-putty-start = ورزش کی نرم مٹی کا چھوٹا گولا لیں۔
exercise-key-pinch-putty-step-1 = اسے انگوٹھے اور شہادت کی انگلی کے پہلو کے بیچ پکڑیں۔
exercise-key-pinch-putty-step-2 = نرم مٹی کو نرمی سے چٹکی سے دبائیں۔
exercise-key-pinch-putty-step-3 = { $hold } اسی طرح رکھیں۔
exercise-key-pinch-putty-step-4 = آہستہ چھوڑیں۔

exercise-wrist-slow-lower-name = ہاتھ آہستہ نیچے کریں، ہتھیلی نیچے
exercise-wrist-slow-lower-start = نچلا بازو میز پر رکھیں، ہتھیلی نیچے اور ہاتھ کنارے سے باہر ہو۔ وہ چھوٹا وزن پکڑیں جو آپ کے تھراپسٹ نے چنا۔
exercise-wrist-slow-lower-step-1 = دوسرے ہاتھ کی مدد سے ہاتھ اٹھائیں۔
exercise-wrist-slow-lower-step-2 = دوسرا ہاتھ ہٹا لیں۔
exercise-wrist-slow-lower-step-3 = ہاتھ آہستہ نیچے آنے دیں۔ اس میں { $hold } لگائیں۔

exercise-hand-lean-name = ہاتھ پر وزن ڈالیں
exercise-hand-lean-start = دیوار کے سامنے کھڑے ہوں۔ میز یا فرش صرف تب استعمال کریں جب آپ کے تھراپسٹ کہیں۔
exercise-hand-lean-step-1 = دونوں ہتھیلیاں دیوار پر رکھیں۔
exercise-hand-lean-step-2 = آہستہ آگے جھکیں، یہاں تک کہ ہاتھوں پر وزن محسوس ہو۔
exercise-hand-lean-step-3 = { $hold } اسی طرح رکھیں۔
exercise-hand-lean-step-4 = آہستہ دھکیل کر واپس آئیں۔

## Skin, scar, feeling and tightness

exercise-stroke-towards-heart-name = بازو کو دل کی طرف سہلائیں
exercise-stroke-towards-heart-start = بازو گدیوں پر رکھیں، ہاتھ کہنی سے اونچا ہو۔
exercise-stroke-towards-heart-step-1 = دوسرا ہاتھ انگلیوں کے سروں پر رکھیں۔
exercise-stroke-towards-heart-step-2 = انگلیوں کے سروں سے کہنی تک ہلکے سے سہلائیں۔
exercise-stroke-towards-heart-step-3 = سپلنٹ اور درد والی یا کھلی جلد کو چھوڑ دیں۔
exercise-stroke-towards-heart-step-4 = { $hold } جاری رکھیں۔

exercise-scar-massage-name = زخم کا نشان ہلائیں
exercise-scar-massage-start = یہ صرف تب کریں جب زخم کا نشان بند اور خشک ہو۔ ہاتھ میز پر رکھیں۔
exercise-scar-massage-step-1 = دوسرے ہاتھ کی انگلی کا سرا زخم کے نشان پر رکھیں۔
exercise-scar-massage-step-2 = جما کر دبائیں، مگر اتنا نہیں کہ درد ہو۔
exercise-scar-massage-step-3 = جلد کو چھوٹے دائروں میں ہلائیں۔
exercise-scar-massage-step-4 = جلد کو اوپر نیچے، پھر ایک طرف سے دوسری طرف ہلائیں۔
exercise-scar-massage-step-5 = زخم کے نشان کے ساتھ ساتھ { $hold } جاری رکھیں۔

exercise-texture-rub-name = جلد کو چھونے کی عادت ڈالیں
exercise-texture-rub-start = یہ صرف بند جلد پر کریں۔ ہاتھ میز پر رکھیں۔
exercise-texture-rub-step-1 = نازک جلد کو نرم کپڑے سے ہلکے سے ملیں۔
exercise-texture-rub-step-2 = { $hold } جاری رکھیں۔
exercise-texture-rub-step-3 = جب نرم کپڑا تنگ نہ کرے تو کھردرا کپڑا استعمال کریں۔

exercise-touch-relearn-name = پھر سے محسوس کرنا سیکھیں
exercise-touch-relearn-start = ہاتھ میز پر رکھیں۔ کوئی گرم، ٹھنڈی یا تیز چیز استعمال نہ کریں۔
exercise-touch-relearn-step-1 = چھوٹی چیز سے انگلی کا سرا چھوئیں اور دیکھتے رہیں۔
exercise-touch-relearn-step-2 = آنکھیں بند کریں اور وہی جگہ چھوئیں۔
exercise-touch-relearn-step-3 = دھیان دیں کہ کہاں محسوس ہوتا ہے اور کیسا لگتا ہے۔
exercise-touch-relearn-step-4 = آنکھیں کھولیں اور موازنہ کریں۔
exercise-touch-relearn-step-5 = دوسری جگہوں پر { $hold } جاری رکھیں۔

exercise-scar-hold-stretch-name = زخم کے نشان کو کھنچاؤ دیں
exercise-scar-hold-stretch-start = یہ صرف تب کریں جب زخم کا نشان بند اور خشک ہو۔
exercise-scar-hold-stretch-step-1 = ہاتھ آہستہ ہلائیں، یہاں تک کہ زخم کا نشان تنا ہوا لگے۔
exercise-scar-hold-stretch-step-2 = { $hold } اسی طرح رکھیں۔
exercise-scar-hold-stretch-step-3 = ہاتھ آہستہ واپس آنے دیں۔

exercise-tight-hand-slow-open-name = تنا ہوا ہاتھ آہستہ کھولیں
exercise-tight-hand-slow-open-start = نچلا بازو گدی پر رکھیں۔ کلائی آگے مڑنے دیں۔ کبھی تیزی سے نہ کھینچیں۔
exercise-tight-hand-slow-open-step-1 = انگوٹھا جڑ سے پکڑیں اور آہستہ باہر لائیں۔
exercise-tight-hand-slow-open-step-2 = دوسرے ہاتھ سے انگلیاں آہستہ سیدھی کریں۔
exercise-tight-hand-slow-open-step-3 = کلائی آہستہ پیچھے لائیں۔ انگلیاں سیدھی رکھیں۔
exercise-tight-hand-slow-open-step-4 = جیسے ہی ہاتھ آپ کے خلاف کھنچنے لگے، رک جائیں۔
exercise-tight-hand-slow-open-step-5 = { $hold } اسی طرح رکھیں۔
exercise-tight-hand-slow-open-step-6 = ہاتھ آہستہ بند ہونے دیں۔
