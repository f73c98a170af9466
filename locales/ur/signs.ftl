### Signs to watch for. Each is a clause or a short noun phrase without a full stop.
### It stands in a list under a heading such as “Call us today if:”.
### $limit is how long a mark may stay, $loosen how long loosening may take to help; both are finished texts.

## On the first page of every guide

sign-numb-or-tingling = آپ کی انگلیوں یا انگوٹھے میں پہلے سے زیادہ سن پن یا سنسناہٹ رہے
# Loosening the straps comes first; this is what is left when it does not help.
sign-fingers-blue-white-cold = { $straps ->
    [without] آپ کی انگلیاں یا انگوٹھا نیلا، سفید یا ٹھنڈا رہے
   *[with] پٹے ڈھیلے کرنے کے { $loosen } بعد بھی انگلیاں یا انگوٹھا نیلا، سفید یا ٹھنڈا رہے
}
sign-more-swelling-or-pain = سوجن یا درد پہلے سے بڑھ جائے
sign-mark-or-sore-stays = لال نشان یا درد والی جگہ { $limit } سے زیادہ رہے

## Emergencies

sign-severe-pain-hard-arm = تیز درد آرام میں بھی بڑھتا جائے، یا نچلا بازو تنا ہوا اور سخت لگے
sign-redness-with-fever = لالی پھیلے اور آپ کو بخار ہو یا طبیعت خراب لگے
sign-finger-swollen-bent = پوری انگلی یا انگوٹھا سوج جائے، مڑا رہے اور سیدھا کرنے پر درد کرے
sign-new-injury = گرنے یا چوٹ لگنے کے بعد ہاتھ ٹیڑھا لگے یا خون بہتا رہے
sign-face-swells-breathing = چہرہ یا ہونٹ سوج جائیں، یا سانس لینا مشکل ہو

## Today

sign-redness-spreads = ہاتھ پر لالی یا گرمی پھیلے
sign-blister-or-open-skin = چھالا پڑے یا جلد کھل جائے
# Redness does not show on dark skin; these are the other signs of pressure.
sign-skin-patch-changed = جلد کی کوئی جگہ باقی جلد سے زیادہ گہری، چمکدار، سخت یا گرم ہو
sign-rash-or-itch = سپلنٹ کے نیچے دانے نکلیں یا خارش ہو
sign-skin-wet-and-white = سپلنٹ کے نیچے جلد سفید، نرم اور گیلی ہو
sign-splint-broken-or-loose = سپلنٹ میں دراڑ آ جائے، وہ مڑ جائے، کھو جائے یا بہت ڈھیلا ہو
sign-hand-burning-shiny-stiff = پورے ہاتھ میں جلن ہو، وہ چمکدار لگے اور اکڑتا جائے

## At the next visit

sign-edge-or-strap-worn = کوئی کنارہ تیز لگے، یا کوئی پٹا اب نہ چپکے
sign-plan-does-not-fit-day = یہ منصوبہ آپ کے دن کے کاموں میں نہ بیٹھے

## For some thumbs

sign-thumb-gives-way = انگوٹھا ایک طرف پھسلے یا جواب دے جائے
sign-thumb-snap = انگوٹھے میں اچانک تڑخنے کا احساس ہو
sign-thumb-lump = انگوٹھے کے ہتھیلی والے جوڑ کے پاس نئی گلٹی نظر آئے
sign-wound-opens = زخم کھل جائے، رسے یا بدبو دے
sign-thumb-back-tingles = انگوٹھے کی پشت میں سنسناہٹ ہو یا وہ سن ہو جائے
sign-thumb-catches = ہلانے پر انگوٹھا اٹکے یا جھٹکے سے ہلے
sign-thumb-weaker-in-pinch = چٹکی کمزور ہوتی جائے
sign-no-easier-with-splint = سپلنٹ پہن کر بھی کاموں میں اتنا ہی درد ہو جتنا اس کے بغیر
