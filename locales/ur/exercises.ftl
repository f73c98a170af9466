### Exercises: name, starting position and one action for each step.
### The name is a short order and stands as a heading. Steps are numbered by the program.
### $hold is a finished length of time, such as the words for five seconds.
### “Other hand” is the hand without the splint.

## Bend the tip of your thumb

exercise-thumb-tip-bend-name = انگوٹھے کا سرا موڑیں
exercise-thumb-tip-bend-start = نچلا بازو میز پر رکھ کر بیٹھیں۔ سپلنٹ پہنے رکھیں۔
exercise-thumb-tip-bend-step-1 = صرف انگوٹھے کا سرا موڑیں۔
exercise-thumb-tip-bend-step-2 = { $hold } اسی طرح رکھیں۔
exercise-thumb-tip-bend-step-3 = سرا سیدھا کریں۔

## Make a fist and open it

exercise-finger-fist-open-name = مٹھی بنائیں اور کھولیں
exercise-finger-fist-open-start = ہاتھ اٹھائیں، انگلیاں اوپر کی طرف ہوں۔ انگوٹھا نہ ہلائیں۔
exercise-finger-fist-open-step-1 = سب انگلیاں آہستہ موڑ کر نرم مٹھی بنائیں۔
exercise-finger-fist-open-step-2 = { $hold } اسی طرح رکھیں۔
exercise-finger-fist-open-step-3 = سب انگلیاں سیدھی کریں۔

## Make a hook with your fingers

exercise-finger-hook-name = انگلیوں سے ہک بنائیں
exercise-finger-hook-start = انگلیاں اوپر رکھیں، جتنی آسانی سے سیدھی ہوں۔ انگوٹھا نہ ہلائیں۔
exercise-finger-hook-step-1 = ہتھیلی والے جوڑ جیسے ہیں ویسے رکھیں۔
exercise-finger-hook-step-2 = انگلیوں کے باقی جوڑ ہک کی طرح موڑیں۔
exercise-finger-hook-step-3 = { $hold } اسی طرح رکھیں۔
exercise-finger-hook-step-4 = انگلیاں سیدھی کریں۔

## Spread your fingers

exercise-finger-spread-name = انگلیاں پھیلائیں
exercise-finger-spread-start = ہتھیلی میز پر رکھیں، انگلیاں ملی ہوں۔ انگوٹھا نہ ہلائیں۔
exercise-finger-spread-step-1 = انگلیاں ایک دوسری سے دور پھیلائیں۔
exercise-finger-spread-step-2 = { $hold } اسی طرح رکھیں۔
exercise-finger-spread-step-3 = انہیں پھر ملائیں۔

## Raise your hand and pump

exercise-hand-raise-pump-name = ہاتھ اونچا کر کے کھولیں اور بند کریں
exercise-hand-raise-pump-start = بیٹھیں اور ہاتھ دل سے اونچا اٹھائیں۔
exercise-hand-raise-pump-step-1 = انگلیاں نرمی سے بند کریں۔
exercise-hand-raise-pump-step-2 = { $hold } اسی طرح رکھیں۔
exercise-hand-raise-pump-step-3 = انگلیاں کھولیں۔
exercise-hand-raise-pump-step-4 = گنتی پوری ہونے پر بازو نیچے کریں۔

## Bend and straighten your elbow

exercise-elbow-bend-name = کہنی موڑیں اور سیدھی کریں
exercise-elbow-bend-start = بیٹھیں یا کھڑے ہوں، بازو پہلو میں ہو۔
exercise-elbow-bend-step-1 = کہنی موڑیں، یہاں تک کہ ہاتھ کندھے کے قریب آئے۔
exercise-elbow-bend-step-2 = { $hold } اسی طرح رکھیں۔
exercise-elbow-bend-step-3 = کہنی آہستہ سیدھی کریں۔

## Turn your palm up and down

exercise-forearm-turn-name = ہتھیلی اوپر اور نیچے گھمائیں
exercise-forearm-turn-start = کہنی موڑ کر اور پہلو سے لگا کر بیٹھیں۔
exercise-forearm-turn-step-1 = ہتھیلی اوپر گھمائیں۔
exercise-forearm-turn-step-2 = { $hold } اسی طرح رکھیں۔
exercise-forearm-turn-step-3 = ہتھیلی نیچے گھمائیں۔
exercise-forearm-turn-step-4 = { $hold } اسی طرح رکھیں۔

## Move your wrist up and down

exercise-wrist-up-down-name = کلائی اوپر اور نیچے ہلائیں
exercise-wrist-up-down-start = نچلا بازو میز پر رکھیں، ہاتھ کنارے سے باہر ہو۔ انگوٹھا ڈھیلا رکھیں۔
exercise-wrist-up-down-step-1 = ہاتھ آہستہ اٹھائیں۔
exercise-wrist-up-down-step-2 = { $hold } اسی طرح رکھیں۔
exercise-wrist-up-down-step-3 = ہاتھ آہستہ نیچے آنے دیں۔
exercise-wrist-up-down-step-4 = { $hold } اسی طرح رکھیں۔

## Move your wrist from side to side

exercise-wrist-side-to-side-name = کلائی ایک طرف سے دوسری طرف ہلائیں
exercise-wrist-side-to-side-start = نچلا بازو اور ہتھیلی میز پر ٹکا کر رکھیں۔ انگوٹھا انگلیوں کے ساتھ رکھیں۔
exercise-wrist-side-to-side-step-1 = ہاتھ کو انگوٹھے کی طرف سرکائیں۔
exercise-wrist-side-to-side-step-2 = { $hold } اسی طرح رکھیں۔
exercise-wrist-side-to-side-step-3 = ہاتھ کو چھوٹی انگلی کی طرف سرکائیں۔
exercise-wrist-side-to-side-step-4 = { $hold } اسی طرح رکھیں۔

## Bend the knuckle of your thumb

exercise-thumb-knuckle-bend-name = انگوٹھے کا ہتھیلی والا جوڑ موڑیں
exercise-thumb-knuckle-bend-start = ہاتھ کو چھوٹی انگلی کی طرف سے میز پر رکھیں۔ دوسرے ہاتھ سے انگوٹھے کو ہتھیلی والے جوڑ اور کلائی کے بیچ سے پکڑیں۔
exercise-thumb-knuckle-bend-step-1 = انگوٹھے کا ہتھیلی والا جوڑ سیدھا آگے موڑیں۔
exercise-thumb-knuckle-bend-step-2 = { $hold } اسی طرح رکھیں۔
exercise-thumb-knuckle-bend-step-3 = ہتھیلی والا جوڑ سیدھا کریں۔
exercise-thumb-knuckle-bend-step-4 = انگوٹھے کو کبھی باہر ایک طرف نہ جانے دیں۔

## Touch each fingertip with your thumb

exercise-thumb-to-fingertips-name = انگوٹھے سے ہر انگلی کا سرا چھوئیں
exercise-thumb-to-fingertips-start = ہاتھ اٹھائیں، انگلیاں اوپر کی طرف ہوں۔
exercise-thumb-to-fingertips-step-1 = انگوٹھے سے شہادت کی انگلی کا سرا ہلکے سے چھوئیں۔
exercise-thumb-to-fingertips-step-2 = { $hold } اسی طرح رکھیں۔
exercise-thumb-to-fingertips-step-3 = ہاتھ پورا کھولیں۔
exercise-thumb-to-fingertips-step-4 = باقی ہر انگلی کے ساتھ بھی یہی کریں۔

## Lift your thumb away from your palm

exercise-thumb-out-from-palm-name = انگوٹھا ہتھیلی سے دور اٹھائیں
exercise-thumb-out-from-palm-start = ہاتھ کی پشت میز پر رکھیں۔
exercise-thumb-out-from-palm-step-1 = انگوٹھا سیدھا اوپر اٹھائیں، ہتھیلی سے دور۔
exercise-thumb-out-from-palm-step-2 = { $hold } اسی طرح رکھیں۔
exercise-thumb-out-from-palm-step-3 = اسے آہستہ واپس نیچے آنے دیں۔

## Hold the shape of a C

exercise-thumb-c-hold-name = انگریزی حرف سی کی شکل بنائے رکھیں
exercise-thumb-c-hold-start = انگوٹھے اور شہادت کی انگلی سے انگریزی حرف سی کی شکل بنائیں۔
exercise-thumb-c-hold-step-1 = دیکھیں کہ انگوٹھا گول ہے اور پیچھے نہیں مڑتا۔
exercise-thumb-c-hold-step-2 = دوسرے ہاتھ سے انگوٹھے کو باہر کی طرف سے پکڑیں۔
exercise-thumb-c-hold-step-3 = انگوٹھے سے نرمی سے باہر کی طرف زور لگائیں۔ اسے ہلنے نہ دیں۔
exercise-thumb-c-hold-step-4 = { $hold } اسی طرح رکھیں۔
exercise-thumb-c-hold-step-5 = ہاتھ ڈھیلا چھوڑیں۔

## Press your index finger to the side

exercise-index-side-press-name = شہادت کی انگلی سے ایک طرف زور لگائیں
exercise-index-side-press-start = ہاتھ میز پر پھیلا کر رکھیں، ہتھیلی نیچے ہو۔
exercise-index-side-press-step-1 = دوسرا ہاتھ شہادت کی انگلی کی انگوٹھے والی طرف لگائیں۔
exercise-index-side-press-step-2 = شہادت کی انگلی سے نرمی سے انگوٹھے کی طرف زور لگائیں۔ اسے ہلنے نہ دیں۔
exercise-index-side-press-step-3 = { $hold } اسی طرح رکھیں۔
exercise-index-side-press-step-4 = ہاتھ ڈھیلا چھوڑیں۔

## Squeeze a soft ball

exercise-soft-ball-squeeze-name = نرم گیند دبائیں
exercise-soft-ball-squeeze-start = سپنج کی نرم گیند ہتھیلی میں رکھیں۔ انگوٹھا اس سے ہٹا کر رکھیں۔
exercise-soft-ball-squeeze-step-1 = انگلیوں سے گیند نرمی سے دبائیں۔
exercise-soft-ball-squeeze-step-2 = { $hold } اسی طرح رکھیں۔
exercise-soft-ball-squeeze-step-3 = آہستہ چھوڑیں۔
