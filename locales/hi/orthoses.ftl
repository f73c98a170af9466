### Splints. Every name ends in the masculine "स्प्लिंट"; strap names end in "फ़ीता" and carry no case ending.

orthosis-forearm-thumb-spica-name = लंबा अंगूठा स्प्लिंट
orthosis-forearm-thumb-spica-short = निचली बाँह और अंगूठा
orthosis-hand-thumb-spica-name = छोटा अंगूठा स्प्लिंट
orthosis-hand-thumb-spica-short = हाथ और अंगूठा
orthosis-short-cmc-name = अंगूठे की जड़ का स्प्लिंट
orthosis-short-cmc-short = अंगूठे की जड़
orthosis-short-cmc-mcp-block-name = हथेली के पास का जोड़ रोकने वाला अंगूठे की जड़ का स्प्लिंट
orthosis-short-cmc-mcp-block-short = अंगूठे की जड़ और हथेली के पास का जोड़
orthosis-soft-wrist-thumb-wrap-name = नरम कलाई-अंगूठा स्प्लिंट
orthosis-soft-wrist-thumb-wrap-short = नरम, कलाई और अंगूठा
orthosis-soft-thumb-wrap-name = नरम अंगूठा स्प्लिंट
orthosis-soft-thumb-wrap-short = नरम, अंगूठा
orthosis-wrist-only-name = कलाई का स्प्लिंट
orthosis-wrist-only-short = कलाई

strap-wrist = कलाई का फ़ीता
strap-forearm = निचली बाँह का फ़ीता
strap-palm = हथेली का फ़ीता
strap-thumb = अंगूठे का फ़ीता
strap-wrist-edge = कलाई के पास का फ़ीता

spot-wrist-bone-thumb-side = अंगूठे की तरफ़ की कलाई की हड्डी
spot-wrist-bone-little-finger-side = छोटी उँगली की तरफ़ की कलाई की हड्डी
spot-thumb-web = अंगूठे और तर्जनी के बीच की त्वचा
spot-thumb-knuckle = अंगूठे के हथेली के पास के जोड़ की पीठ और बग़लें
spot-thumb-base = अंगूठे की जड़ की हड्डी
spot-palm-crease = हथेली, जहाँ स्प्लिंट ख़त्म होता है
spot-forearm-edge = निचली बाँह, जहाँ स्प्लिंट ख़त्म होता है

step-wash-dry-hands = हाथ धोएँ और अच्छी तरह सुखाएँ।
step-check-lining = देखें कि स्प्लिंट अंदर से साफ़, सूखा और चिकना है।
step-open-straps = सारे फ़ीते खोलें।
step-rest-arm-on-table = निचली बाँह मेज़ पर टिकाएँ।
step-slide-thumb-in = अंगूठा धीरे से अंदर सरकाएँ।
step-lay-hand-in = हथेली स्प्लिंट में रखें, अंगूठा बाहर रहे।
step-seat-at-wrist = स्प्लिंट को दबाकर बैठाएँ, ताकि उसका मोड़ कलाई पर आए।
step-seat-at-thumb-base = स्प्लिंट को अंगूठे की जड़ के चारों ओर दबाकर बैठाएँ।
step-smooth-the-wrap = स्प्लिंट को हाथ से सीधा करें, कोई सिलवट न रहे।
step-close-strap = { $strap } बंद करें।
step-check-strap-room = देखें कि हर फ़ीते के नीचे दूसरे हाथ की उँगली का सिरा आ जाए।
step-check-wrist-bends = देखें कि कलाई मुड़ सकती है।
step-check-thumb-knuckle-bends = देखें कि अंगूठे का हथेली के पास का जोड़ और सिरा मुड़ सकते हैं।
step-check-thumb-tip-bends = देखें कि अंगूठे का सिरा मुड़ सकता है।
step-check-fist = देखें कि मुट्ठी बन सकती है और अंगूठा हिल सकता है।
step-look-at-fingers = उँगलियाँ और अंगूठा देखें। वे गर्म और अपने असली रंग के रहने चाहिए।

step-undo-strap = { $strap } खोलें।
step-lift-off = स्प्लिंट उठाकर हटाएँ। घसीटें नहीं।
step-lift-off-thumb-side = स्प्लिंट अंगूठे की तरफ़ से उठाकर हटाएँ। घसीटें नहीं।
step-lift-off-elbow-front = स्प्लिंट कोहनी के सामने से उठाकर हटाएँ। घसीटें नहीं।
step-lift-out-of-thumb-web = स्प्लिंट को अंगूठे और तर्जनी के बीच से उठाकर निकालें।
step-lift-off-little-side = स्प्लिंट छोटी उँगली की तरफ़ से उठाकर हटाएँ। घसीटें नहीं।
step-slide-off-thumb = स्प्लिंट अंगूठे से सरकाकर निकालें। मरोड़ें नहीं।
step-look-at-skin = अपनी त्वचा चारों तरफ़ से देखें।
