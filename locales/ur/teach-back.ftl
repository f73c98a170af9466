### Questions that ask the person to show or say back what they were told. The therapist reads them out.
### No date, hour, number, side or angle is typed here; they come in as variables.

# Said first: it is the therapist who is tested, not the person. Worded so that the therapist's gender does not show.
teach-intro = مجھے یقین کرنا ہے کہ میں نے یہ بات آپ کو ٹھیک سے بتائی ہے۔ براہ کرم کر کے دکھائیں، یا اپنے لفظوں میں بتائیں۔
teach-hands = کون سا سپلنٹ کس ہاتھ پر پہننا ہے؟ براہ کرم دکھائیں۔
teach-emergency = دن ہو یا رات، کب اسی وقت مدد لینا ضروری ہے؟
teach-keep-on = کیا گھر میں ہاتھ دھونے یا سونے کے لیے سپلنٹ اتارنے کی اجازت ہے؟
teach-support = ہاتھ دھونے کے لیے سپلنٹ اترا ہوا ہے۔ براہ کرم دکھائیں کہ ہاتھ کیسے رکھنا ہے۔
teach-on = براہ کرم سپلنٹ پہنیں۔ بتاتے جائیں کہ کیا کرنا ہے۔
teach-off = براہ کرم سپلنٹ اتاریں۔ بتاتے جائیں کہ کیا کرنا ہے۔
teach-bans = یہ ہاتھ ابھی کیا نہ کرے؟
teach-skin = آپ اپنی جلد دیکھیں۔ کیا ٹھیک نہیں؟ پھر کیا کرنا ہے؟
teach-stop = اور کس بات پر رکنا ہے؟ پھر کیا کرنا ہے؟
teach-call = سپلنٹ یا ہاتھ میں کوئی خرابی ہو۔ کسے فون کرنا ہے؟
teach-hours = سپلنٹ کب پہننا ہے اور کب اتارنا ہے؟ براہ کرم آج سے شروع کریں۔
teach-build = کل اسے کتنی دیر پہننا ہے؟ پورا وقت پہننا کس دن سے ہے؟
teach-jobs = روز کے کون سے کام ابھی روکنے ہیں؟
teach-exercises = براہ کرم ہر ورزش ایک بار دکھائیں۔ یہ دن میں کتنی بار کرنی ہے؟
