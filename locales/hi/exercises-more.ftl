### More exercises. Names are infinitives, as in exercises.ftl.
### "Treated finger" is "इलाज वाली उँगली". The joints of a finger: हथेली के पास का जोड़ (big knuckle), बीच का जोड़, सिरा.

## Arm and wrist

exercise-shoulder-reach-name = बाँह ऊपर उठाना
exercise-shoulder-reach-start = बैठें या खड़े हों, बाँह बग़ल में रहे।
exercise-shoulder-reach-step-1 = बाँह सामने से उठाएँ, उतनी ऊँची जितनी आसान हो।
exercise-shoulder-reach-step-2 = { $hold } रोकें।
exercise-shoulder-reach-step-3 = बाँह धीरे-धीरे नीचे करें।
exercise-shoulder-reach-step-4 = अगली बार बाँह बग़ल से उठाएँ।

exercise-wrist-dart-name = तीर फेंकने की तरह कलाई चलाना
exercise-wrist-dart-start = निचली बाँह को छोटी उँगली की तरफ़ से मेज़ पर टिकाएँ, हाथ किनारे से बाहर रहे। उँगलियाँ और अंगूठा ढीले रखें।
exercise-wrist-dart-step-1 = हाथ को पीछे और अंगूठे की तरफ़ झुकाएँ।
exercise-wrist-dart-step-2 = { $hold } रोकें।
exercise-wrist-dart-step-3 = हाथ को आगे और छोटी उँगली की तरफ़ झुकाएँ।
exercise-wrist-dart-step-4 = { $hold } रोकें।

# Ordered by the clinician only.
exercise-wrist-swing-with-fingers-name = कलाई और उँगलियाँ साथ चलाना
exercise-wrist-swing-with-fingers-start = कोहनी मेज़ पर टिकाएँ। उतना ही हिलाएँ जितना थेरेपिस्ट ने दिखाया।
exercise-wrist-swing-with-fingers-step-1 = कलाई को आगे झुकने दें, ताकि उँगलियाँ खुलें।
exercise-wrist-swing-with-fingers-step-2 = { $hold } रोकें।
exercise-wrist-swing-with-fingers-step-3 = कलाई उठाएँ, ताकि उँगलियाँ मुड़कर हल्की मुट्ठी बनें।
exercise-wrist-swing-with-fingers-step-4 = { $hold } रोकें।

exercise-forearm-front-stretch-name = निचली बाँह की हथेली वाली तरफ़ तानना
exercise-forearm-front-stretch-start = बाँह सामने उठाएँ, हथेली ऊपर रहे।
exercise-forearm-front-stretch-step-1 = कोहनी सीधी करें।
exercise-forearm-front-stretch-step-2 = हथेली और उँगलियाँ दूसरे हाथ से पकड़ें।
exercise-forearm-front-stretch-step-3 = हाथ को धीरे से नीचे खींचें, जब तक खिंचाव न लगे।
exercise-forearm-front-stretch-step-4 = { $hold } रोकें।
exercise-forearm-front-stretch-step-5 = धीरे-धीरे छोड़ें।

exercise-forearm-back-stretch-name = निचली बाँह की पीठ तानना
exercise-forearm-back-stretch-start = बाँह सामने उठाएँ, हथेली नीचे रहे। उँगलियाँ ढीली रखें।
exercise-forearm-back-stretch-step-1 = कोहनी सीधी करें।
exercise-forearm-back-stretch-step-2 = दूसरा हाथ इस हाथ की पीठ पर रखें।
exercise-forearm-back-stretch-step-3 = हाथ को धीरे से नीचे दबाएँ, जब तक खिंचाव न लगे।
exercise-forearm-back-stretch-step-4 = { $hold } रोकें।
exercise-forearm-back-stretch-step-5 = धीरे-धीरे छोड़ें।

exercise-palms-together-stretch-name = हथेलियाँ जोड़कर कलाइयाँ तानना
exercise-palms-together-stretch-start = छाती के सामने हथेलियाँ जोड़ें, उँगलियाँ ऊपर रहें।
exercise-palms-together-stretch-step-1 = हाथ धीरे-धीरे नीचे लाएँ। हथेलियाँ जुड़ी रखें।
exercise-palms-together-stretch-step-2 = हल्का खिंचाव लगे, तो वहीं रुकें।
exercise-palms-together-stretch-step-3 = { $hold } रोकें।
exercise-palms-together-stretch-step-4 = हाथ फिर ऊपर लाएँ।

## Fingers

# A neighbour of the treated finger may be in the splint too.
exercise-free-finger-bend-name = खुली उँगलियाँ हिलाना
exercise-free-finger-bend-start = हाथ उठाएँ, उँगलियाँ ऊपर की ओर रहें।
exercise-free-finger-bend-step-1 = सिर्फ़ वे उँगलियाँ मोड़ें जिन्हें खुलकर हिलाने की इजाज़त है।
exercise-free-finger-bend-step-2 = { $hold } रोकें।
exercise-free-finger-bend-step-3 = उन्हें धीरे-धीरे सीधा करें।

exercise-fingers-straight-name = उँगलियाँ सीधी करना
exercise-fingers-straight-start = हाथ उठाएँ, उँगलियाँ ऊपर की ओर रहें।
exercise-fingers-straight-step-1 = सारी उँगलियाँ सीधी करें, जितनी आसानी से हों।
exercise-fingers-straight-step-2 = { $hold } रोकें।
exercise-fingers-straight-step-3 = उन्हें ढीला छोड़ें।

exercise-tabletop-name = सिर्फ़ हथेली के पास के जोड़ मोड़ना
exercise-tabletop-start = हाथ उठाएँ, उँगलियाँ ऊपर की ओर रहें।
exercise-tabletop-step-1 = हथेली के पास के जोड़ मोड़ें। उँगलियों के बाक़ी जोड़ सीधे रखें।
exercise-tabletop-step-2 = { $hold } रोकें।
exercise-tabletop-step-3 = हथेली के पास के जोड़ सीधे करें।

exercise-straight-fist-name = सपाट मुट्ठी बनाना
exercise-straight-fist-start = हाथ उठाएँ, उँगलियाँ ऊपर की ओर रहें।
exercise-straight-fist-step-1 = हथेली के पास के जोड़ और बीच के जोड़ मोड़ें। सिरे सीधे रखें।
exercise-straight-fist-step-2 = उँगलियों के सिरे हथेली पर सपाट रखें।
exercise-straight-fist-step-3 = { $hold } रोकें।
exercise-straight-fist-step-4 = उँगलियाँ सीधी करें।

exercise-five-positions-name = हाथ के सब आकार बनाना
exercise-five-positions-start = हाथ उठाएँ, उँगलियाँ ऊपर की ओर रहें।
exercise-five-positions-step-1 = सारी उँगलियाँ सीधी करें।
exercise-five-positions-step-2 = हुक बनाएँ। हथेली के पास के जोड़ सीधे रखें।
exercise-five-positions-step-3 = हल्की पूरी मुट्ठी बनाएँ।
exercise-five-positions-step-4 = सिर्फ़ हथेली के पास के जोड़ मोड़ें। बाक़ी जोड़ सीधे रखें।
exercise-five-positions-step-5 = उँगलियों के सिरे हथेली पर सपाट रखें। सिरे सीधे रखें।
exercise-five-positions-step-6 = अगला आकार बनाने से पहले हर आकार { $hold } रोकें।

exercise-block-tip-bend-name = सिर्फ़ उँगली का सिरा मोड़ना
exercise-block-tip-bend-start = हाथ मेज़ पर टिकाएँ, हथेली ऊपर रहे। दूसरे हाथ से इलाज वाली उँगली को बीच के जोड़ और सिरे के जोड़ के बीच से पकड़ें।
exercise-block-tip-bend-step-1 = सिर्फ़ सिरा मोड़ें।
exercise-block-tip-bend-step-2 = { $hold } रोकें।
exercise-block-tip-bend-step-3 = सिरा सीधा करें।

exercise-block-middle-bend-name = सिर्फ़ बीच का जोड़ मोड़ना
exercise-block-middle-bend-start = हाथ मेज़ पर टिकाएँ, हथेली ऊपर रहे। दूसरे हाथ से इलाज वाली उँगली को हथेली के पास के जोड़ और बीच के जोड़ के बीच से पकड़ें।
exercise-block-middle-bend-step-1 = सिर्फ़ बीच का जोड़ मोड़ें।
exercise-block-middle-bend-step-2 = { $hold } रोकें।
exercise-block-middle-bend-step-3 = बीच का जोड़ सीधा करें।

exercise-knuckle-bent-straighten-name = बीच का जोड़ सीधा करना, हथेली के पास का जोड़ मुड़ा
exercise-knuckle-bent-straighten-start = इलाज वाली उँगली का हथेली के पास का जोड़ मोड़ें। दूसरे हाथ से उसे मुड़ा थामे रखें।
exercise-knuckle-bent-straighten-step-1 = बीच का जोड़ सीधा करें, जितनी आसानी से हो।
exercise-knuckle-bent-straighten-step-2 = { $hold } रोकें।
exercise-knuckle-bent-straighten-step-3 = बीच का जोड़ ढीला छोड़ें।

exercise-finger-lift-name = उँगलियाँ बारी-बारी से उठाना
exercise-finger-lift-start = हथेली मेज़ पर सपाट रखें।
exercise-finger-lift-step-1 = एक उँगली मेज़ से उठाएँ। बाक़ी नीचे रखें।
exercise-finger-lift-step-2 = { $hold } रोकें।
exercise-finger-lift-step-3 = उसे धीरे-धीरे नीचे करें।
exercise-finger-lift-step-4 = बाक़ी हर उँगली के साथ भी ऐसा ही करें।

exercise-tip-bend-middle-straight-name = सिरा मोड़ना, बीच का जोड़ सीधा
exercise-tip-bend-middle-straight-start = हाथ मेज़ पर टिकाएँ। स्प्लिंट पहने रहें।
exercise-tip-bend-middle-straight-step-1 = इलाज वाली उँगली का बीच का जोड़ सीधा रखें।
exercise-tip-bend-middle-straight-step-2 = सिर्फ़ सिरा मोड़ें।
exercise-tip-bend-middle-straight-step-3 = { $hold } रोकें।
exercise-tip-bend-middle-straight-step-4 = सिरा सीधा करें।

exercise-middle-bend-tip-held-name = उँगली का बीच का जोड़ मोड़ना
exercise-middle-bend-tip-held-start = कोहनी मेज़ पर टिकाएँ, उँगलियाँ ऊपर रहें। स्प्लिंट पहने रहें।
exercise-middle-bend-tip-held-step-1 = इलाज वाली उँगली का बीच का जोड़ मोड़ें।
exercise-middle-bend-tip-held-step-2 = { $hold } रोकें।
exercise-middle-bend-tip-held-step-3 = उसे धीरे-धीरे सीधा करें।

## After a tendon repair
## Ordered by the clinician only.

exercise-short-arc-middle-bend-name = बीच का जोड़ थोड़ा मोड़ना
exercise-short-arc-middle-bend-start = सिर्फ़ थेरेपिस्ट का बनाया नाप का टुकड़ा काम में लें। हथेली के पास का जोड़ सीधा रखें।
exercise-short-arc-middle-bend-step-1 = इलाज वाली उँगली को नाप के टुकड़े पर रखें।
exercise-short-arc-middle-bend-step-2 = बीच का जोड़ सिर्फ़ तब तक मोड़ें, जब तक उँगली टुकड़े को न छू ले।
exercise-short-arc-middle-bend-step-3 = { $hold } रोकें।
exercise-short-arc-middle-bend-step-4 = बीच का जोड़ पूरा सीधा करें।
exercise-short-arc-middle-bend-step-5 = सब पूरा होने पर स्प्लिंट फिर पहनें।

exercise-helped-curl-in-splint-name = दूसरे हाथ से उँगलियाँ मोड़ना
exercise-helped-curl-in-splint-start = स्प्लिंट पहने रहें। सिर्फ़ वही फ़ीते खोलें जो थेरेपिस्ट ने दिखाए। उँगलियाँ ढीली रखें।
exercise-helped-curl-in-splint-step-1 = दूसरे हाथ से एक उँगली को धीरे से हथेली की ओर मोड़ें।
exercise-helped-curl-in-splint-step-2 = { $hold } रोकें।
exercise-helped-curl-in-splint-step-3 = उँगली को धीरे-धीरे छोड़ें। उसे खींचकर सीधा न करें।
exercise-helped-curl-in-splint-step-4 = हर उँगली के साथ ऐसा ही करें।
exercise-helped-curl-in-splint-step-5 = सब पूरा होने पर फ़ीते फिर बंद करें।

exercise-straighten-to-roof-name = उँगलियाँ स्प्लिंट तक सीधी करना
exercise-straighten-to-roof-start = स्प्लिंट पहने रहें। सिर्फ़ वही फ़ीते खोलें जो थेरेपिस्ट ने दिखाए। हथेली के पास के जोड़ स्प्लिंट से सटाए रखें।
exercise-straighten-to-roof-step-1 = उँगलियाँ सीधी करें, जब तक वे स्प्लिंट को न छू लें।
exercise-straighten-to-roof-step-2 = { $hold } रोकें।
exercise-straighten-to-roof-step-3 = उन्हें ढीला छोड़ें।
exercise-straighten-to-roof-step-4 = सब पूरा होने पर फ़ीते फिर बंद करें।

exercise-half-fist-in-splint-name = ढीली आधी मुट्ठी बनाना
exercise-half-fist-in-splint-start = स्प्लिंट पहने रहें। सिर्फ़ वही फ़ीते खोलें जो थेरेपिस्ट ने दिखाए।
exercise-half-fist-in-splint-step-1 = उँगलियाँ हल्के से मोड़ें, हथेली तक की आधी दूरी ही।
exercise-half-fist-in-splint-step-2 = { $hold } रोकें। न भींचें।
exercise-half-fist-in-splint-step-3 = उँगलियाँ सीधी करें, जब तक वे स्प्लिंट को न छू लें।
exercise-half-fist-in-splint-step-4 = सब पूरा होने पर फ़ीते फिर बंद करें।

exercise-place-and-hold-name = उँगलियाँ मोड़कर वहीं रोकना
exercise-place-and-hold-start = कोहनी मेज़ पर टिकाएँ। उतना ही हिलाएँ जितना थेरेपिस्ट ने दिखाया।
exercise-place-and-hold-step-1 = दूसरे हाथ से उँगलियाँ हल्के से मोड़ें।
exercise-place-and-hold-step-2 = दूसरा हाथ हटा लें।
exercise-place-and-hold-step-3 = उँगलियाँ वहीं हल्के से { $hold } रोकें। न भींचें।
exercise-place-and-hold-step-4 = उँगलियाँ ढीली छोड़ें।

exercise-yoke-bend-name = स्प्लिंट में उँगलियाँ मोड़ना
exercise-yoke-bend-start = कोहनी मेज़ पर टिकाएँ, उँगलियाँ ऊपर रहें। स्प्लिंट पहने रहें। कलाई को आगे न झुकने दें।
exercise-yoke-bend-step-1 = सारी उँगलियाँ उतनी मोड़ें जितनी स्प्लिंट मुड़ने दे।
exercise-yoke-bend-step-2 = { $hold } रोकें।
exercise-yoke-bend-step-3 = सारी उँगलियाँ सीधी करें।

## Stretches of a finger

exercise-helped-curl-stretch-name = दूसरे हाथ की मदद से उँगली मोड़ना
exercise-helped-curl-stretch-start = हाथ मेज़ पर टिकाएँ, हथेली ऊपर रहे।
exercise-helped-curl-stretch-step-1 = दूसरे हाथ से इलाज वाली उँगली धीरे-धीरे मोड़ें।
exercise-helped-curl-stretch-step-2 = हल्का खिंचाव लगे, तो वहीं रुकें।
exercise-helped-curl-stretch-step-3 = { $hold } रोकें।
exercise-helped-curl-stretch-step-4 = धीरे-धीरे छोड़ें।

exercise-helped-straighten-stretch-name = दूसरे हाथ की मदद से उँगली सीधी करना
exercise-helped-straighten-stretch-start = हाथ की पीठ मेज़ पर रखें। दूसरे हाथ से इलाज वाली उँगली को हथेली के पास के जोड़ और बीच के जोड़ के बीच से पकड़ें।
exercise-helped-straighten-stretch-step-1 = बीच के जोड़ को धीरे से सीधे की ओर दबाएँ।
exercise-helped-straighten-stretch-step-2 = हल्का खिंचाव लगे, तो वहीं रुकें।
exercise-helped-straighten-stretch-step-3 = { $hold } रोकें।
exercise-helped-straighten-stretch-step-4 = धीरे-धीरे छोड़ें।

exercise-intrinsic-stretch-name = उँगली मोड़ना, हथेली के पास का जोड़ सीधा
exercise-intrinsic-stretch-start = कोहनी मेज़ पर टिकाएँ, उँगलियाँ ऊपर रहें।
exercise-intrinsic-stretch-step-1 = इलाज वाली उँगली का हथेली के पास का जोड़ सीधा रखें।
exercise-intrinsic-stretch-step-2 = दूसरे हाथ से उसका बीच का जोड़ और सिरा मोड़ें।
exercise-intrinsic-stretch-step-3 = हल्का खिंचाव लगे, तो वहीं रुकें।
exercise-intrinsic-stretch-step-4 = { $hold } रोकें।
exercise-intrinsic-stretch-step-5 = धीरे-धीरे छोड़ें।

## Thumb

exercise-thumb-bend-across-name = अंगूठा हथेली के ऊपर मोड़ना
exercise-thumb-bend-across-start = हाथ मेज़ पर टिकाएँ, हथेली ऊपर रहे।
exercise-thumb-bend-across-step-1 = अंगूठा धीरे-धीरे हथेली के ऊपर से छोटी उँगली की ओर मोड़ें।
exercise-thumb-bend-across-step-2 = { $hold } रोकें।
exercise-thumb-bend-across-step-3 = अंगूठा सीधा करें।

exercise-thumb-web-release-name = अंगूठे और तर्जनी के बीच की जगह नरम करना
exercise-thumb-web-release-start = हाथ को छोटी उँगली की तरफ़ से मेज़ पर टिकाएँ।
exercise-thumb-web-release-step-1 = अंगूठे और तर्जनी के बीच की त्वचा धीरे से मलें।
exercise-thumb-web-release-step-2 = दूसरे हाथ से अंगूठे को उसके हथेली के पास के जोड़ और कलाई के बीच से पकड़ें।
exercise-thumb-web-release-step-3 = अंगूठे को धीरे से हथेली से दूर खींचें।
exercise-thumb-web-release-step-4 = { $hold } रोकें।
exercise-thumb-web-release-step-5 = धीरे-धीरे छोड़ें।

exercise-thumb-wrist-slow-lower-name = हाथ धीरे-धीरे नीचे करना, अंगूठा ऊपर
exercise-thumb-wrist-slow-lower-start = निचली बाँह को छोटी उँगली की तरफ़ से मेज़ पर टिकाएँ। थेरेपिस्ट का चुना छोटा वज़न पकड़ें। इसे सिर्फ़ हर दूसरे दिन करें।
exercise-thumb-wrist-slow-lower-step-1 = दूसरे हाथ से इस हाथ को अंगूठे की तरफ़ उठाएँ।
exercise-thumb-wrist-slow-lower-step-2 = दूसरा हाथ हटा लें।
exercise-thumb-wrist-slow-lower-step-3 = हाथ को धीरे-धीरे नीचे आने दें। इसमें { $hold } लगाएँ।

## Nerves

exercise-thumb-side-nerve-slide-name = अंगूठे की तरफ़ की तंत्रिका सरकाना
exercise-thumb-side-nerve-slide-start = बैठें, कोहनी मुड़ी और कलाई सीधी रहे।
exercise-thumb-side-nerve-slide-step-1 = ढीली मुट्ठी बनाएँ।
exercise-thumb-side-nerve-slide-step-2 = उँगलियाँ सीधी करें। अंगूठा उनसे सटाकर रखें।
exercise-thumb-side-nerve-slide-step-3 = कलाई धीरे से पीछे मोड़ें।
exercise-thumb-side-nerve-slide-step-4 = अंगूठा बाहर, बग़ल की तरफ़ ले जाएँ।
exercise-thumb-side-nerve-slide-step-5 = हथेली ऊपर की ओर घुमाएँ।
exercise-thumb-side-nerve-slide-step-6 = अगली स्थिति से पहले हर स्थिति { $hold } रोकें।

exercise-little-finger-nerve-slide-name = छोटी उँगली की तंत्रिका सरकाना
exercise-little-finger-nerve-slide-start = बाँह बग़ल की तरफ़ उठाएँ, हथेली ऊपर रहे।
exercise-little-finger-nerve-slide-step-1 = कोहनी आधी मोड़ें और साथ में कलाई हथेली की ओर मोड़ें।
exercise-little-finger-nerve-slide-step-2 = { $hold } रोकें।
exercise-little-finger-nerve-slide-step-3 = कोहनी सीधी करें और साथ में कलाई धीरे से हाथ की पीठ की ओर मोड़ें।
exercise-little-finger-nerve-slide-step-4 = { $hold } रोकें।

## Strength

exercise-wrist-press-still-name = कलाई हिलाए बिना दबाना
exercise-wrist-press-still-start = निचली बाँह मेज़ पर टिकाएँ, हथेली नीचे और हाथ किनारे से बाहर रहे।
exercise-wrist-press-still-step-1 = दूसरा हाथ इस हाथ की पीठ पर रखें।
exercise-wrist-press-still-step-2 = इस हाथ से उसे धीरे से ऊपर की ओर दबाएँ। कलाई को हिलने न दें।
exercise-wrist-press-still-step-3 = { $hold } रोकें।
exercise-wrist-press-still-step-4 = हाथ ढीला छोड़ें।
exercise-wrist-press-still-step-5 = अगली बार दूसरा हाथ हथेली के नीचे रखें और इस हाथ से उस पर नीचे की ओर दबाएँ।

exercise-putty-grip-name = नरम पुट्टी दबाना
exercise-putty-grip-start = नरम पुट्टी का गोला हथेली में रखें।
exercise-putty-grip-step-1 = उँगलियों और अंगूठे से उसे हल्के से दबाएँ।
exercise-putty-grip-step-2 = { $hold } रोकें।
exercise-putty-grip-step-3 = धीरे-धीरे छोड़ें।
exercise-putty-grip-step-4 = पुट्टी का फिर गोला बनाएँ।

exercise-three-point-pinch-name = नरम पुट्टी की गोल चुटकी
exercise-three-point-pinch-start = नरम पुट्टी का छोटा गोला लें।
exercise-three-point-pinch-step-1 = उसे अंगूठे, तर्जनी और बीच की उँगली के बीच पकड़ें।
exercise-three-point-pinch-step-2 = हर जोड़ थोड़ा मुड़ा रखें।
exercise-three-point-pinch-step-3 = पुट्टी को चुटकी में हल्के से दबाएँ।
exercise-three-point-pinch-step-4 = { $hold } रोकें।
exercise-three-point-pinch-step-5 = धीरे-धीरे छोड़ें।

exercise-key-pinch-putty-name = चाबी जैसी चुटकी में नरम पुट्टी दबाना
exercise-key-pinch-putty-start = नरम पुट्टी का छोटा गोला लें।
exercise-key-pinch-putty-step-1 = उसे अंगूठे और तर्जनी की बग़ल के बीच पकड़ें।
exercise-key-pinch-putty-step-2 = पुट्टी को चुटकी में हल्के से दबाएँ।
exercise-key-pinch-putty-step-3 = { $hold } रोकें।
exercise-key-pinch-putty-step-4 = धीरे-धीरे छोड़ें।

exercise-wrist-slow-lower-name = हाथ धीरे-धीरे नीचे करना, हथेली नीचे
exercise-wrist-slow-lower-start = निचली बाँह मेज़ पर टिकाएँ, हथेली नीचे और हाथ किनारे से बाहर रहे। थेरेपिस्ट का चुना छोटा वज़न पकड़ें।
exercise-wrist-slow-lower-step-1 = दूसरे हाथ की मदद से यह हाथ उठाएँ।
exercise-wrist-slow-lower-step-2 = दूसरा हाथ हटा लें।
exercise-wrist-slow-lower-step-3 = हाथ को धीरे-धीरे नीचे आने दें। इसमें { $hold } लगाएँ।

exercise-hand-lean-name = हाथ पर टेक लगाना
exercise-hand-lean-start = दीवार के सामने खड़े हों। मेज़ या ज़मीन तभी काम में लें जब थेरेपिस्ट कहें।
exercise-hand-lean-step-1 = दोनों हथेलियाँ दीवार पर रखें।
exercise-hand-lean-step-2 = धीरे-धीरे आगे झुकें, जब तक हाथों पर भार न लगे।
exercise-hand-lean-step-3 = { $hold } रोकें।
exercise-hand-lean-step-4 = धीरे-धीरे ख़ुद को वापस धकेलें।

## Skin, scar, feeling and tightness

exercise-stroke-towards-heart-name = बाँह को दिल की ओर सहलाना
exercise-stroke-towards-heart-start = बाँह तकियों पर टिकाएँ, हाथ कोहनी से ऊँचा रहे।
exercise-stroke-towards-heart-step-1 = दूसरा हाथ इस हाथ की उँगलियों के सिरों पर रखें।
exercise-stroke-towards-heart-step-2 = उँगलियों के सिरों से कोहनी तक हल्के से सहलाएँ।
exercise-stroke-towards-heart-step-3 = स्प्लिंट को, और दुखती या खुली त्वचा को छोड़ दें।
exercise-stroke-towards-heart-step-4 = { $hold } करते रहें।

exercise-scar-massage-name = घाव का निशान हिलाना
exercise-scar-massage-start = यह तभी करें जब घाव का निशान बंद और सूखा हो। हाथ मेज़ पर टिकाएँ।
exercise-scar-massage-step-1 = दूसरे हाथ की उँगली का सिरा घाव के निशान पर रखें।
exercise-scar-massage-step-2 = अच्छी तरह दबाएँ, पर इतना नहीं कि दुखे।
exercise-scar-massage-step-3 = त्वचा को छोटे-छोटे गोलों में हिलाएँ।
exercise-scar-massage-step-4 = त्वचा को ऊपर-नीचे, फिर एक बग़ल से दूसरी बग़ल हिलाएँ।
exercise-scar-massage-step-5 = पूरे घाव के निशान पर { $hold } करते रहें।

exercise-texture-rub-name = त्वचा को छूने की आदत डालना
exercise-texture-rub-start = यह सिर्फ़ बंद त्वचा पर करें। हाथ मेज़ पर टिकाएँ।
exercise-texture-rub-step-1 = छूने पर दुखने वाली त्वचा को नरम कपड़े से हल्के से मलें।
exercise-texture-rub-step-2 = { $hold } करते रहें।
exercise-texture-rub-step-3 = जब नरम कपड़े से परेशानी न रहे, तब खुरदुरा कपड़ा लें।

exercise-touch-relearn-name = फिर से महसूस करना सीखना
exercise-touch-relearn-start = हाथ मेज़ पर टिकाएँ। कोई गर्म, ठंडी या नुकीली चीज़ न लें।
exercise-touch-relearn-step-1 = उँगली के सिरे को छोटी चीज़ से छुएँ और देखते रहें।
exercise-touch-relearn-step-2 = आँखें बंद करें और वही जगह छुएँ।
exercise-touch-relearn-step-3 = ध्यान दें कि कहाँ और कैसा महसूस होता है।
exercise-touch-relearn-step-4 = आँखें खोलें और मिलाकर देखें।
exercise-touch-relearn-step-5 = दूसरी जगहों पर { $hold } करते रहें।

exercise-scar-hold-stretch-name = घाव का निशान तानकर रोकना
exercise-scar-hold-stretch-start = यह तभी करें जब घाव का निशान बंद और सूखा हो।
exercise-scar-hold-stretch-step-1 = हाथ को धीरे-धीरे हिलाएँ, जब तक घाव का निशान तना न लगे।
exercise-scar-hold-stretch-step-2 = { $hold } रोकें।
exercise-scar-hold-stretch-step-3 = हाथ को धीरे-धीरे वापस आने दें।

exercise-tight-hand-slow-open-name = जकड़ा हाथ धीरे-धीरे खोलना
exercise-tight-hand-slow-open-start = निचली बाँह तकिए पर टिकाएँ। कलाई को आगे झुकने दें। कभी झटके से न खींचें।
exercise-tight-hand-slow-open-step-1 = अंगूठे को जड़ से पकड़ें और धीरे-धीरे बाहर लाएँ।
exercise-tight-hand-slow-open-step-2 = दूसरे हाथ से उँगलियाँ धीरे-धीरे सीधी करें।
exercise-tight-hand-slow-open-step-3 = कलाई को धीरे-धीरे पीछे लाएँ। उँगलियाँ सीधी रखें।
exercise-tight-hand-slow-open-step-4 = जैसे ही हाथ उलटा खींचने लगे, रुक जाएँ।
exercise-tight-hand-slow-open-step-5 = { $hold } रोकें।
exercise-tight-hand-slow-open-step-6 = हाथ को धीरे-धीरे बंद होने दें।
