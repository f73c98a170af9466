### Conditions of tendons after repair, of nerves, of the elbow, of sore joints and of burns.
### The name, what is wrong, and what the splint does. Words for a reader of about twelve; nothing is said to be cured.

## Repaired tendons

condition-flexor-zone-two-repair-name = جوڑی گئی ڈوری (ٹینڈن) جو انگلی موڑتی ہے
condition-flexor-zone-two-repair-what = انگلی موڑنے والی ڈوریاں کٹ گئی تھیں اور سی دی گئیں۔ پکڑنے سے، یا انگلی کھینچ کر سیدھی کرنے سے ٹانکے ٹوٹ سکتے ہیں۔
condition-flexor-zone-two-repair-aim = ڈوریوں کے جڑنے تک سپلنٹ ٹانکوں کو بچاتا ہے۔ یہ انگلیوں کو زیادہ سیدھا ہونے سے روکتا ہے۔
condition-extensor-zone-three-repair-name = انگلی کے درمیانی جوڑ کے اوپر جوڑی گئی ڈوری (ٹینڈن)
condition-extensor-zone-three-repair-what = درمیانی جوڑ سیدھا کرنے والی ڈوری کٹ گئی تھی اور سی دی گئی۔ ایک بار مڑنے سے بھی ٹانکے کھل سکتے ہیں۔
condition-extensor-zone-three-repair-aim = ڈوری کے جڑنے تک سپلنٹ درمیانی جوڑ سیدھا رکھتا ہے۔
condition-extensor-zone-five-six-repair-name = ہاتھ کی پشت پر جوڑی گئی ڈوری (ٹینڈن)
condition-extensor-zone-five-six-repair-what = انگلی اٹھانے والی ڈوری کٹ گئی تھی اور سی دی گئی۔ پوری مٹھی بنانے سے ٹانکے کھل سکتے ہیں۔
condition-extensor-zone-five-six-repair-aim = سپلنٹ انگلی کا ہتھیلی والا جوڑ اوپر رکھتا ہے۔ اس سے ٹانکوں پر سے کھنچاؤ ہٹتا ہے۔

## Nerves

condition-carpal-tunnel-name = کلائی میں دبی نس (کارپل ٹنل)
condition-carpal-tunnel-what = کلائی میں ایک نس تنگ نالی سے گزرتی ہے۔ مڑی کلائی اسے دباتی ہے، سب سے زیادہ نیند میں۔
condition-carpal-tunnel-aim = سپلنٹ کلائی کو سیدھا رکھتا ہے۔ اس سے نس کو زیادہ جگہ ملتی ہے۔
condition-carpal-tunnel-release-name = کلائی میں دبی نس کے آپریشن کے بعد
condition-carpal-tunnel-release-what = کلائی میں نالی کی چھت کھولی گئی ہے۔ زخم کو بھرنا ہے، اور انگلیوں کو ہلنا ہے۔
condition-carpal-tunnel-release-aim = سپلنٹ پہلے دنوں میں کلائی کو آرام دیتا ہے۔ انگلیاں ہلنے کے لیے آزاد رہتی ہیں۔
condition-cubital-tunnel-name = کہنی پر دبی نس
condition-cubital-tunnel-what = ایک نس کہنی کی اندرونی طرف سے گھوم کر جاتی ہے۔ کہنی زیادہ موڑنے یا اس پر ٹیک لگانے سے اس نس پر زور پڑتا ہے۔
condition-cubital-tunnel-aim = سپلنٹ رات کو کہنی کو زیادہ مڑنے سے روکتا ہے۔ دن میں کہنی پر ٹیک نہ لگائیں۔
condition-radial-nerve-palsy-name = لٹکی ہوئی کلائی
condition-radial-nerve-palsy-what = کلائی اور انگلیاں اٹھانے والی نس ابھی کام نہیں کر رہی۔ ہاتھ نیچے لٹکتا ہے۔
condition-radial-nerve-palsy-aim = سپلنٹ کلائی کو اوپر رہنے میں مدد دیتا ہے۔ پھر انگلیاں بہتر پکڑ سکتی ہیں۔
condition-median-nerve-palsy-low-name = انگوٹھا جو ہتھیلی سے نہ اٹھ سکے
condition-median-nerve-palsy-low-what = انگوٹھے کے نیچے کے ابھرے پٹھے کی نس ابھی کام نہیں کر رہی۔ ہاتھ کے کچھ حصے سن لگ سکتے ہیں۔
condition-median-nerve-palsy-low-aim = سپلنٹ انگوٹھے کے پاس کی جگہ کھلی رکھتا ہے۔ انگوٹھا ایسی جگہ رہتا ہے جہاں سے وہ کام کر سکے۔
condition-ulnar-nerve-palsy-name = پنجے کی طرح مڑی انگوٹھی والی اور چھوٹی انگلی
condition-ulnar-nerve-palsy-what = ہاتھ کے چھوٹے پٹھوں کی نس ابھی کام نہیں کر رہی۔ انگوٹھی والی اور چھوٹی انگلی پنجے کی طرح مڑتی ہیں۔
condition-ulnar-nerve-palsy-aim = سپلنٹ ہتھیلی والے جوڑوں کو پیچھے مڑنے سے روکتا ہے۔ پھر یہ انگلیاں بہتر سیدھی ہو سکتی ہیں۔

## The elbow

condition-lateral-elbow-name = کہنی کی باہر کی طرف کی درد والی ڈوریاں
condition-lateral-elbow-what = کلائی اٹھانے والے پٹھے کہنی سے شروع ہوتے ہیں۔ وہاں ان کی ڈوریوں میں درد ہے، سب سے زیادہ پکڑنے اور اٹھانے پر۔
condition-lateral-elbow-aim = کام کرتے وقت سپلنٹ درد والی ڈوریوں پر کھنچاؤ کچھ کم کرتا ہے۔

## The hand

condition-dupuytren-release-name = مڑی انگلی کے آپریشن کے بعد (ڈوپوئٹرن)
condition-dupuytren-release-what = ہتھیلی کی تنگ پٹیاں کاٹی گئیں تاکہ انگلی کھل سکے۔ آپریشن کا نشان اسے پھر اندر کھینچ سکتا ہے۔
condition-dupuytren-release-aim = سپلنٹ رات کو انگلی کو اس کی آرام کی حالت میں تھامتا ہے۔ یہ انگلی کو کھلا رکھنے میں مدد دیتا ہے۔
condition-rheumatoid-knuckle-drift-name = ایک طرف جھکتی انگلیاں (ریوماٹائیڈ)
condition-rheumatoid-knuckle-drift-what = ہتھیلی والے جوڑوں کے پہلو کے بندھن ڈھیلے ہیں۔ انگلیاں چھوٹی انگلی کی طرف جھکتی ہیں۔
condition-rheumatoid-knuckle-drift-aim = ہاتھ سے کام کرتے وقت سپلنٹ انگلیوں کو سیدھ میں رکھتا ہے۔ یہ انگلیوں کا جھکنا نہیں روکتا۔
condition-rheumatoid-wrist-name = کلائی کا درد والا جوڑ (ریوماٹائیڈ)
condition-rheumatoid-wrist-what = ریوماٹائیڈ بیماری سے کلائی کے جوڑ میں درد اور سوجن ہے۔
condition-rheumatoid-wrist-aim = سپلنٹ کلائی کو سہارا دیتا ہے۔ اس سے آرام اور کام کے وقت درد کم ہو سکتا ہے۔
condition-stroke-tight-hand-name = فالج کے بعد تنا ہوا ہاتھ
condition-stroke-tight-hand-what = فالج کے بعد ہاتھ بند کرنے والے پٹھے زیادہ کھنچتے ہیں۔ ہاتھ کھولنا مشکل ہے۔
condition-stroke-tight-hand-aim = سپلنٹ ہاتھ کو آدھا کھلا آرام دیتا ہے۔ اس سے سکون مل سکتا ہے اور ہتھیلی کی جلد صاف رکھنے میں مدد ہو سکتی ہے۔

## Burns

condition-dorsal-hand-burn-name = ہاتھ کی پشت کا جلنا
condition-dorsal-hand-burn-what = ہاتھ کی پشت کی جلد جل گئی ہے۔ بھرتے وقت جلد چھوٹی ہوتی ہے اور ہاتھ کی شکل کھینچ کر بگاڑ سکتی ہے۔
condition-dorsal-hand-burn-aim = سپلنٹ ہتھیلی والے جوڑ مڑے اور انگلیاں سیدھی رکھتا ہے۔ اس شکل میں نئی جلد لمبی رہتی ہے۔
condition-palmar-hand-burn-name = ہاتھ کی ہتھیلی کا جلنا
condition-palmar-hand-burn-what = ہتھیلی کی جلد جل گئی ہے۔ بھرتے وقت جلد چھوٹی ہوتی ہے اور ہاتھ کو کھینچ کر بند کر سکتی ہے۔
condition-palmar-hand-burn-aim = سپلنٹ ہتھیلی اور انگلیاں کھلی رکھتا ہے۔ اس شکل میں نئی جلد لمبی رہتی ہے۔

## Movements to leave out
## The joints of a finger are the big knuckle, the middle joint and the tip.

avoid-wrist-extension = اپنی کلائی پیچھے نہ موڑیں۔
avoid-wrist-flexion = اپنی کلائی آگے، ہتھیلی کی طرف، نہ موڑیں۔
avoid-fingers-mcp-flexion = اپنی انگلیوں کے ہتھیلی والے جوڑ نہ موڑیں۔
avoid-fingers-mcp-ulnar-deviation = اپنی انگلیاں چھوٹی انگلی کی طرف نہ دھکیلیں۔
avoid-fingers-pip-flexion = اپنی انگلیوں کے درمیانی جوڑ نہ موڑیں۔
