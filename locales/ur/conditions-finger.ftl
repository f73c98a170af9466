### Conditions of the fingers: the name, what is wrong, and what the splint does.
### Words for a reader of about twelve. The splint is never said to cure anything.

## Finger that catches

condition-trigger-finger-name = اٹکنے والی انگلی (ٹرگر فنگر)
condition-trigger-finger-what = انگلی موڑنے والی ڈوری ہتھیلی میں ایک نالی سے گزرتی ہے۔ وہاں یہ زیادہ موٹی ہے اور اٹکتی یا پھنستی ہے۔
condition-trigger-finger-aim = سپلنٹ انگلی کو کم مڑنے دیتا ہے۔ پھر ڈوری نالی میں کم رگڑ کھاتی ہے اور اسے آرام ملتا ہے۔

## Fingertip that droops, torn cord

condition-mallet-tendon-name = انگلی کا لٹکا سرا، پھٹی ڈوری (میلٹ فنگر)
condition-mallet-tendon-what = انگلی کا سرا اٹھانے والی پتلی ڈوری پھٹ گئی ہے۔ یہ صرف تب جڑتی ہے جب سرا کبھی نہ لٹکے۔
condition-mallet-tendon-aim = ڈوری کے جڑنے تک سپلنٹ انگلی کا سرا سیدھا رکھتا ہے۔

## Fingertip that droops, chip of bone

condition-mallet-bony-name = انگلی کا لٹکا سرا، ہڈی کا ٹکڑا (میلٹ فنگر)
condition-mallet-bony-what = انگلی کا سرا اٹھانے والی ڈوری نے ہڈی کا چھوٹا ٹکڑا اکھاڑ دیا۔ یہ ٹکڑا صرف تب جڑتا ہے جب سرا نہ ہلے۔
condition-mallet-bony-aim = ہڈی کے جڑنے تک سپلنٹ انگلی کا سرا سیدھا رکھتا ہے۔

## Torn strip over the middle joint, fresh

condition-boutonniere-acute-name = درمیانی جوڑ کے اوپر کی پھٹی ڈوری
condition-boutonniere-acute-what = انگلی کا درمیانی جوڑ سیدھا کرنے والی ڈوری پھٹ گئی ہے۔ ہر بار مڑنے سے ڈوری کے ٹکڑے ایک دوسرے سے دور ہوتے ہیں۔
condition-boutonniere-acute-aim = سپلنٹ درمیانی جوڑ سیدھا رکھتا ہے۔ انگلی کا سرا آزاد رہتا ہے، اور اسے موڑنا ڈوری کے لیے اچھا ہے۔

## Middle joint fixed bent after a tear

condition-boutonniere-chronic-name = پرانی چوٹ کے بعد مڑا ہوا درمیانی جوڑ
condition-boutonniere-chronic-what = ڈوری پھٹنے کی پرانی چوٹ سے انگلی کا درمیانی جوڑ مڑا رہ گیا۔ یہ اکڑ گیا ہے۔
condition-boutonniere-chronic-aim = سپلنٹ جوڑ کو آہستہ اور نرمی سے سیدھا کرنے کا کام کرتا ہے۔ بعد میں یہ اسے سیدھا رکھتا ہے۔

## Middle joint that bends backwards

condition-swan-neck-name = پیچھے مڑنے والا درمیانی جوڑ (سوان نیک)
condition-swan-neck-what = انگلی کا درمیانی جوڑ پیچھے پھسل کر وہیں پھنس جاتا ہے۔ پھر مٹھی بنانا مشکل ہوتا ہے۔
condition-swan-neck-aim = سپلنٹ جوڑ کو پیچھے جانے سے روکتا ہے۔ جوڑ آگے پھر بھی مڑ سکتا ہے۔

## Jammed finger, front of the middle joint

condition-pip-volar-plate-name = چوٹ کھائی انگلی، درمیانی جوڑ کا سامنے کا حصہ
condition-pip-volar-plate-what = درمیانی جوڑ کے سامنے کی مضبوط تہ کو چوٹ لگی ہے۔ پیچھے مڑنے سے اسے پھر چوٹ لگتی ہے۔
condition-pip-volar-plate-aim = سپلنٹ جوڑ کو پیچھے جانے سے بچاتا ہے۔ اسے عام طریقے سے موڑنا اس کے لیے اچھا ہے۔

## Sprained side of the middle joint

condition-pip-collateral-sprain-name = درمیانی جوڑ کے پہلو کی موچ
condition-pip-collateral-sprain-what = درمیانی جوڑ کے پہلو کا بندھن کھنچ گیا یا کچھ پھٹ گیا ہے۔ ایک طرف کا دھکا اسے اور کھول دیتا ہے۔
condition-pip-collateral-sprain-aim = بندھن کے جڑنے تک سپلنٹ جوڑ کو ایک طرف کے دھکوں سے بچاتا ہے۔

## Middle joint that does not straighten

condition-pip-flexion-contracture-name = اکڑا اور مڑا ہوا درمیانی جوڑ
condition-pip-flexion-contracture-what = درمیانی جوڑ کے سامنے کی جلد اور بندھن چھوٹے ہو گئے ہیں۔ انگلی سیدھی نہیں ہوتی۔
condition-pip-flexion-contracture-aim = سپلنٹ جوڑ کو نرمی سے سیدھے کی طرف تھامتا ہے۔ دیر تک نرمی، تھوڑی دیر کے زور سے بہتر ہے۔

## Worn joint at the fingertip

condition-dip-osteoarthritis-name = انگلی کے سرے کا گھسا ہوا جوڑ
condition-dip-osteoarthritis-what = انگلی کا آخری جوڑ گھس گیا ہے۔ اس میں درد اور گلٹیاں ہو سکتی ہیں۔
condition-dip-osteoarthritis-aim = سپلنٹ رات کو جوڑ کو آرام دیتا ہے۔ اس سے درد کم ہو سکتا ہے۔

## Torn band over the knuckle

condition-sagittal-band-injury-name = انگلی کے ہتھیلی والے جوڑ کے اوپر کا پھٹا بندھن
condition-sagittal-band-injury-what = ایک چھوٹا بندھن ڈوری کو ہتھیلی والے جوڑ کے اوپر رکھتا ہے۔ یہ پھٹ گیا ہے، اور مٹھی بنانے پر ڈوری پھسل جاتی ہے۔
condition-sagittal-band-injury-aim = سپلنٹ ہتھیلی والے جوڑ کو زیادہ مڑنے سے روکتا ہے۔ بندھن کے جڑنے تک ڈوری اوپر رہتی ہے۔

## Broken bone below the little finger

condition-fifth-metacarpal-neck-fracture-name = چھوٹی انگلی کے نیچے کی ٹوٹی ہڈی
condition-fifth-metacarpal-neck-fracture-what = ہتھیلی میں چھوٹی انگلی کے نیچے کی ہڈی اس کے ہتھیلی والے جوڑ کے پاس ٹوٹی ہے۔ اسے دوبارہ جڑنا ہے۔
condition-fifth-metacarpal-neck-fracture-aim = ہڈی کے جڑنے تک سپلنٹ اسے بچاتا ہے۔ یہ مدد بھی دیتا ہے کہ انگلی نہ گھومے۔

## Broken first bone of a finger

condition-proximal-phalanx-fracture-name = انگلی کی ٹوٹی ہوئی پہلی ہڈی
condition-proximal-phalanx-fracture-what = ہتھیلی والے جوڑ اور درمیانی جوڑ کے بیچ کی ہڈی ٹوٹ گئی ہے۔ اسے دوبارہ جڑنا ہے۔
condition-proximal-phalanx-fracture-aim = ہڈی کے جڑنے تک سپلنٹ اسے اپنی جگہ رکھتا ہے۔ یہ جوڑوں کو ایسے تھامتا ہے کہ وہ کم اکڑیں۔
