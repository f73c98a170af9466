### Conditions: the name, what is wrong, and what the splint does.
### Words for a reader of about twelve. The splint is never said to cure anything.

## Sore tendons on the thumb side of the wrist

condition-de-quervain-name = کلائی پر انگوٹھے کی درد والی ڈوریاں (ڈی کوروین)
condition-de-quervain-what = انگوٹھے کی دو ڈوریاں کلائی پر ایک تنگ نالی میں رگڑ کھاتی ہیں۔ ان میں درد اور سوجن ہے۔
condition-de-quervain-aim = سپلنٹ آپ کی کلائی اور انگوٹھے کو ہلنے سے روکتا ہے۔ اس سے درد والی ڈوریوں کو آرام ملتا ہے۔

## Torn band at the knuckle of the thumb, fresh

condition-thumb-ucl-acute-name = انگوٹھے کے ہتھیلی والے جوڑ کا پھٹا بندھن
condition-thumb-ucl-acute-what = انگوٹھے کے ہتھیلی والے جوڑ کا اندرونی طرف کا بندھن پھٹ گیا ہے۔ اسے ایک طرف کے دھکے کے بغیر جڑنا ہے۔
condition-thumb-ucl-acute-aim = بندھن کے جڑنے تک سپلنٹ اسے بچاتا ہے۔ یہ انگوٹھے کو باہر ایک طرف دھکیلے جانے سے روکتا ہے۔

## Torn band at the knuckle of the thumb, old

condition-thumb-ucl-chronic-name = انگوٹھے کا ڈھیلا ہتھیلی والا جوڑ
condition-thumb-ucl-chronic-what = بندھن پھٹنے کی پرانی چوٹ سے انگوٹھے کا ہتھیلی والا جوڑ ڈھیلا رہ گیا۔ چٹکی لینے پر یہ جواب دے جاتا ہے۔
condition-thumb-ucl-chronic-aim = ہاتھ سے کام کرتے وقت سپلنٹ انگوٹھے کے ہتھیلی والے جوڑ کو سہارا دیتا ہے۔

## Worn joint at the base of the thumb

condition-thumb-cmc-osteoarthritis-name = انگوٹھے کی جڑ کا گھسا ہوا جوڑ
condition-thumb-cmc-osteoarthritis-what = انگوٹھے کی جڑ کا جوڑ گھس گیا ہے۔ چٹکی لینے پر یہ سرکتا اور درد کرتا ہے۔
condition-thumb-cmc-osteoarthritis-aim = سپلنٹ انگوٹھے کی جڑ کو سہارا دیتا ہے۔ اس سے کام آسان اور درد کم ہو سکتا ہے۔
