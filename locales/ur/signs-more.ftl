### More signs to watch for. Each is a clause or a short noun phrase without a full stop.
### It stands in a list under a heading such as “Call us today if:”.
### Printed only where a condition names the sign.

## Emergencies

sign-finger-snap = تڑخنے کا احساس ہو، یا اچانک کوئی انگلی یا انگوٹھا مڑ نہ سکے یا سیدھا نہ ہو سکے
sign-tooth-cut-over-knuckle = انگلی کے ہتھیلی والے جوڑ پر دانت سے لگا زخم لال ہو، سوجے یا درد کرے
sign-finger-white-when-straight = کوئی انگلی سیدھی ہونے پر سفید ہو جائے
sign-graft-pale-or-tight = ہاتھ پر لگی نئی جلد پھیکی پڑ جائے، یا اندر گہرائی میں تناؤ لگے

## Today

sign-tip-droops-again = انگلی کا سرا پھر لٹک جائے، یا سہارے کے بغیر مڑ گیا ہو
sign-middle-joint-bends-alone = انگلی کا درمیانی جوڑ لٹک جائے، یا سہارے کے بغیر مڑ گیا ہو
sign-finger-cannot-straighten = کوئی انگلی گر جائے اور آپ سے خود سیدھی نہ ہو
sign-thumb-tip-will-not-lift = انگوٹھے کا سرا اب آپ سے نہ اٹھے
sign-finger-turns-over-neighbour = کوئی انگلی گھوم جائے یا ساتھ والی انگلی پر چڑھ جائے
sign-finger-locks = انگلی یا انگوٹھا پھنس جائے اور سیدھا نہ ہو
sign-pin-loose = کوئی پن ڈھیلی، مڑی یا ٹوٹی ہو، یا اس کا سوراخ رسے
sign-joint-slips = کوئی جوڑ اپنی جگہ سے نکل جائے یا ڈھیلا لگے
sign-wrist-clunks = کلائی میں کھٹ کھٹ ہو، یا انگوٹھے کے پاس والے گڑھے میں گہرا درد ہو
sign-night-numbness-grows = انگلیاں یا انگوٹھا زیادہ راتوں میں سن ہوں، یا سارا دن سن رہنے لگیں
sign-thumb-muscle-thinner = انگوٹھے کے نیچے کا ابھرا پٹھا پتلا ہوتا جائے
sign-hand-muscle-thinner = انگوٹھے اور شہادت کی انگلی کے بیچ ہاتھ پتلا ہوتا جائے
sign-little-finger-numb = چھوٹی انگلی پہلے سے زیادہ سن رہے
sign-elbow-band-tingles = بینڈ یا سپلنٹ پہنے ہوئے ہاتھ یا نچلے بازو میں سنسناہٹ ہو
sign-finger-stays-bent-more = کوئی انگلی پہلے سے زیادہ مڑی رہے
sign-tight-hand-tighter = ہاتھ زیادہ تن جائے یا اسے کھولنا زیادہ مشکل ہو جائے

## At the next visit

sign-clicks-under-load = وزن ڈالنے یا اٹھانے پر کلائی یا ہاتھ چٹخے اور درد کرے
