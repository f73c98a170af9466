### Conditions of the thumb and of the tendons and bones at the wrist: the name, what is wrong, and what the splint does.
### Words for a reader of about twelve. The splint is never said to cure anything.

## Sore tendons on the thumb side of the wrist, in pregnancy or with a small baby

condition-wrist-thumb-around-birth-name = بچے کی پیدائش کے آس پاس انگوٹھے کی درد والی ڈوریاں
condition-wrist-thumb-around-birth-what = انگوٹھے کی دو ڈوریاں کلائی پر رگڑ کھاتی ہیں۔ بچے کو اٹھانے اور دودھ پلانے سے ان میں درد ہو سکتا ہے۔
condition-wrist-thumb-around-birth-aim = سپلنٹ رات کو اور اٹھاتے وقت کلائی اور انگوٹھے کو آرام دیتا ہے۔ اس سے بچے کی دیکھ بھال میں درد کم ہو سکتا ہے۔

## Tendons that rub where they cross above the wrist

condition-intersection-syndrome-name = کلائی سے اوپر رگڑ کھانے والی ڈوریاں
condition-intersection-syndrome-what = کلائی اور انگوٹھے کی ڈوریاں کلائی سے اوپر ایک دوسری کو پار کرتی ہیں۔ وہاں وہ رگڑ کھاتی ہیں اور ان میں درد ہے۔
condition-intersection-syndrome-aim = سپلنٹ کلائی کو ہلنے سے روکتا ہے۔ اس سے درد والی ڈوریوں کو آرام ملتا ہے۔

## Torn band on the outer side of the thumb's knuckle

condition-thumb-rcl-injury-name = انگوٹھے کے ہتھیلی والے جوڑ کا پھٹا بیرونی بندھن
condition-thumb-rcl-injury-what = انگوٹھے کے ہتھیلی والے جوڑ کا باہر کی طرف کا بندھن پھٹ گیا ہے۔ اسے انگلیوں کی طرف دھکے کے بغیر جڑنا ہے۔
condition-thumb-rcl-injury-aim = بندھن کے جڑنے تک سپلنٹ اسے بچاتا ہے۔ یہ انگوٹھے کو انگلیوں کی طرف دھکیلے جانے سے روکتا ہے۔

## After an operation at the base of the thumb

condition-thumb-cmc-arthroplasty-name = انگوٹھے کی جڑ کے آپریشن کے بعد
condition-thumb-cmc-arthroplasty-what = آپ کے انگوٹھے کی جڑ کے جوڑ کا آپریشن ہوا ہے۔ نیا جوڑ نرم ہے اور ابھی ٹھیک ہو رہا ہے۔
condition-thumb-cmc-arthroplasty-aim = سپلنٹ انگوٹھے کو ہتھیلی سے دور رکھتا ہے۔ نیا جوڑ ٹھیک ہونے تک اس سے محفوظ رہتا ہے۔

## A knuckle of the thumb that bends too far back

condition-hypermobile-thumb-name = حد سے زیادہ مڑنے والا انگوٹھا
condition-hypermobile-thumb-what = دبانے یا چٹکی لینے پر انگوٹھے کا ہتھیلی والا جوڑ بہت پیچھے مڑتا ہے۔ اس سے اس میں درد اور تھکن ہوتی ہے۔
condition-hypermobile-thumb-aim = زور والے کاموں میں سپلنٹ انگوٹھے کے ہتھیلی والے جوڑ کو پیچھے مڑنے سے روکتا ہے۔ یہ پٹھوں کی مدد کرتا ہے، ان کی جگہ نہیں لیتا۔

## Catching thumb

condition-trigger-thumb-name = اٹکنے والا انگوٹھا (ٹرگر تھمب)
condition-trigger-thumb-what = انگوٹھا موڑنے والی ڈوری موٹی ہے اور اپنی نالی میں اٹکتی ہے۔ انگوٹھا چٹختا یا پھنس جاتا ہے۔
condition-trigger-thumb-aim = سپلنٹ انگوٹھے کا ایک جوڑ سیدھا رکھتا ہے۔ ڈوری کم سرکتی ہے، تو درد والی جگہ کو آرام ملتا ہے۔

## Sewn tendon that lifts the thumb

condition-epl-repair-name = جوڑی گئی ڈوری جو انگوٹھا اٹھاتی ہے
condition-epl-repair-what = انگوٹھا اٹھانے والی ڈوری جوڑی گئی ہے۔ پوری طرح جڑنے تک یہ کمزور ہے۔
condition-epl-repair-aim = سپلنٹ انگوٹھے کو اوپر اور کلائی کو پیچھے مڑا رکھتا ہے۔ اس سے جوڑی گئی ڈوری پر سے کھنچاؤ ہٹتا ہے۔

## Sewn tendon that bends the thumb

condition-fpl-repair-name = جوڑی گئی ڈوری جو انگوٹھا موڑتی ہے
condition-fpl-repair-what = انگوٹھا موڑنے والی ڈوری جوڑی گئی ہے۔ پوری طرح جڑنے تک یہ کمزور ہے۔
condition-fpl-repair-aim = سپلنٹ انگوٹھے کو زیادہ سیدھا ہونے سے روکتا ہے۔ اس سے جوڑی گئی ڈوری پر سے کھنچاؤ ہٹتا ہے۔

## Sore tendon on the little-finger side of the wrist

condition-ecu-tendinopathy-name = کلائی پر چھوٹی انگلی کی طرف کی درد والی ڈوری
condition-ecu-tendinopathy-what = کلائی پر چھوٹی انگلی کی طرف کی ایک ڈوری میں درد ہے۔ ہاتھ جھکانے اور گھمانے سے یہ بڑھتا ہے۔
condition-ecu-tendinopathy-aim = سپلنٹ کلائی کو ایک طرف جھکنے سے روکتا ہے۔ اس سے درد والی ڈوری کو آرام ملتا ہے۔

## Sprained wrist

condition-wrist-sprain-name = کلائی کی موچ
condition-wrist-sprain-what = کلائی کو جوڑے رکھنے والے بندھن کھنچ گئے۔ ہڈیاں اپنی جگہ پر ہیں۔
condition-wrist-sprain-aim = ہاتھ سے کام کرتے وقت سپلنٹ کلائی کو ہلنے سے روکتا ہے۔ اس سے بندھنوں کو سنبھلنے کا موقع ملتا ہے۔

## Torn cushion on the little-finger side of the wrist

condition-tfcc-injury-name = کلائی کی پھٹی گدی
condition-tfcc-injury-what = کلائی پر چھوٹی انگلی کی طرف کی ایک چھوٹی گدی پھٹ گئی ہے۔ بازو گھمانے سے اس پر رگڑ پڑتی ہے۔
condition-tfcc-injury-aim = سپلنٹ بازو کو گھومنے اور کلائی کو ایک طرف جھکنے سے روکتا ہے۔ اس سے گدی کو آرام ملتا ہے۔

## Broken scaphoid, after the cast

condition-scaphoid-after-cast-name = کلائی کی انگوٹھے والی طرف کی ٹوٹی ہڈی، پلستر کے بعد
condition-scaphoid-after-cast-what = کلائی کی ایک چھوٹی ہڈی ٹوٹی تھی۔ یہ جڑ گئی ہے، مگر ابھی مضبوط نہیں۔
condition-scaphoid-after-cast-aim = سپلنٹ رات کو، اور گھر سے باہر، اور بھیڑ میں ہڈی کو بچاتا ہے۔

## Broken radius at the wrist, after the cast

condition-distal-radius-after-cast-name = ٹوٹی کلائی، پلستر کے بعد
condition-distal-radius-after-cast-what = آپ کے بازو کی بڑی ہڈی کلائی کے پاس ٹوٹی تھی۔ یہ جڑ گئی ہے، مگر ابھی مضبوط نہیں۔
condition-distal-radius-after-cast-aim = سپلنٹ رات کو، اور گھر سے باہر، اور وزن اٹھاتے وقت کلائی کو بچاتا ہے۔ کلائی ہلانے کے لیے اسے اتارنا ہے۔

## Movements to leave out, beside those that other conditions have

avoid-thumb-ip-flexion = اپنے انگوٹھے کا سرا نہ موڑیں۔
avoid-thumb-ip-extension = اپنے انگوٹھے کا سرا سیدھا نہ کریں۔
avoid-thumb-cmc-flexion = اپنے انگوٹھے کو ہتھیلی کے اوپر سے چھوٹی انگلی کی طرف نہ لے جائیں۔
avoid-forearm-any = اپنی ہتھیلی اوپر یا نیچے نہ گھمائیں۔

## How to hold an arm that may not turn while the splint is off to wash

support-forearm-thumb-up = جب سپلنٹ اترا ہو، نچلا بازو میز پر رکھیں۔ انگوٹھا اوپر کی طرف رکھیں۔ بازو نہ گھمائیں۔ ہاتھ سے کام نہ لیں۔
