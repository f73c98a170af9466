### Exercises: name, start and steps.

exercise-thumb-tip-bend-name = अंगूठे का सिरा मोड़ना
exercise-thumb-tip-bend-start = बैठें, निचली बाँह मेज़ पर रखें। स्प्लिंट पहने रहें।
exercise-thumb-tip-bend-step-1 = सिर्फ़ अंगूठे का सिरा मोड़ें।
exercise-thumb-tip-bend-step-2 = { $hold } रोकें।
exercise-thumb-tip-bend-step-3 = सिरा सीधा करें।

exercise-finger-fist-open-name = मुट्ठी बनाना और खोलना
exercise-finger-fist-open-start = हाथ उठाएँ, उँगलियाँ ऊपर की ओर रहें। अंगूठा न हिलाएँ।
exercise-finger-fist-open-step-1 = सारी उँगलियाँ धीरे-धीरे मोड़कर हल्की मुट्ठी बनाएँ।
exercise-finger-fist-open-step-2 = { $hold } रोकें।
exercise-finger-fist-open-step-3 = सारी उँगलियाँ सीधी करें।

exercise-finger-hook-name = उँगलियों का हुक बनाना
exercise-finger-hook-start = उँगलियाँ ऊपर रखें, जितनी आसानी से सीधी हों। अंगूठा न हिलाएँ।
exercise-finger-hook-step-1 = हथेली के पास के जोड़ जैसे हैं वैसे ही रखें।
exercise-finger-hook-step-2 = उँगलियों के बाक़ी जोड़ हुक की तरह मोड़ें।
exercise-finger-hook-step-3 = { $hold } रोकें।
exercise-finger-hook-step-4 = उँगलियाँ सीधी करें।

exercise-finger-spread-name = उँगलियाँ फैलाना
exercise-finger-spread-start = हथेली मेज़ पर रखें, उँगलियाँ जुड़ी रहें। अंगूठा न हिलाएँ।
exercise-finger-spread-step-1 = उँगलियाँ एक-दूसरी से दूर फैलाएँ।
exercise-finger-spread-step-2 = { $hold } रोकें।
exercise-finger-spread-step-3 = उन्हें फिर जोड़ें।

exercise-hand-raise-pump-name = हाथ उठाकर पंप करना
exercise-hand-raise-pump-start = बैठें और हाथ दिल से ऊँचा उठाएँ।
exercise-hand-raise-pump-step-1 = उँगलियाँ हल्के से बंद करें।
exercise-hand-raise-pump-step-2 = { $hold } रोकें।
exercise-hand-raise-pump-step-3 = उँगलियाँ खोलें।
exercise-hand-raise-pump-step-4 = सब पूरा होने पर बाँह नीचे करें।

exercise-elbow-bend-name = कोहनी मोड़ना और सीधी करना
exercise-elbow-bend-start = बैठें या खड़े हों, बाँह बग़ल में रहे।
exercise-elbow-bend-step-1 = कोहनी मोड़ें, जब तक हाथ कंधे के पास न आ जाए।
exercise-elbow-bend-step-2 = { $hold } रोकें।
exercise-elbow-bend-step-3 = कोहनी धीरे-धीरे सीधी करें।

exercise-forearm-turn-name = हथेली ऊपर और नीचे घुमाना
exercise-forearm-turn-start = बैठें, कोहनी मुड़ी और शरीर से सटी रहे।
exercise-forearm-turn-step-1 = हथेली ऊपर की ओर घुमाएँ।
exercise-forearm-turn-step-2 = { $hold } रोकें।
exercise-forearm-turn-step-3 = हथेली नीचे की ओर घुमाएँ।
exercise-forearm-turn-step-4 = { $hold } रोकें।

exercise-wrist-up-down-name = कलाई ऊपर और नीचे करना
exercise-wrist-up-down-start = निचली बाँह मेज़ पर टिकाएँ, हाथ किनारे से बाहर रहे। अंगूठा ढीला रखें।
exercise-wrist-up-down-step-1 = हाथ धीरे-धीरे उठाएँ।
exercise-wrist-up-down-step-2 = { $hold } रोकें।
exercise-wrist-up-down-step-3 = हाथ धीरे-धीरे नीचे आने दें।
exercise-wrist-up-down-step-4 = { $hold } रोकें।

exercise-wrist-side-to-side-name = कलाई एक बग़ल से दूसरी बग़ल करना
exercise-wrist-side-to-side-start = निचली बाँह और हथेली मेज़ पर सपाट रखें। अंगूठा उँगलियों से सटाकर रखें।
exercise-wrist-side-to-side-step-1 = हाथ अंगूठे की तरफ़ सरकाएँ।
exercise-wrist-side-to-side-step-2 = { $hold } रोकें।
exercise-wrist-side-to-side-step-3 = हाथ छोटी उँगली की तरफ़ सरकाएँ।
exercise-wrist-side-to-side-step-4 = { $hold } रोकें।

exercise-thumb-knuckle-bend-name = अंगूठे का हथेली के पास का जोड़ मोड़ना
exercise-thumb-knuckle-bend-start = हाथ को छोटी उँगली की तरफ़ से मेज़ पर टिकाएँ। दूसरे हाथ से अंगूठे को उसके हथेली के पास के जोड़ और कलाई के बीच से पकड़ें।
exercise-thumb-knuckle-bend-step-1 = अंगूठे का हथेली के पास का जोड़ सीधा आगे की ओर मोड़ें।
exercise-thumb-knuckle-bend-step-2 = { $hold } रोकें।
exercise-thumb-knuckle-bend-step-3 = अंगूठे का हथेली के पास का जोड़ सीधा करें।
exercise-thumb-knuckle-bend-step-4 = अंगूठे को कभी बाहर, बग़ल की तरफ़ न जाने दें।

exercise-thumb-to-fingertips-name = अंगूठे से हर उँगली का सिरा छूना
exercise-thumb-to-fingertips-start = हाथ उठाएँ, उँगलियाँ ऊपर की ओर रहें।
exercise-thumb-to-fingertips-step-1 = अंगूठे से तर्जनी का सिरा हल्के से छुएँ।
exercise-thumb-to-fingertips-step-2 = { $hold } रोकें।
exercise-thumb-to-fingertips-step-3 = हाथ पूरा खोलें।
exercise-thumb-to-fingertips-step-4 = बाक़ी हर उँगली के साथ भी ऐसा ही करें।

exercise-thumb-out-from-palm-name = अंगूठा हथेली से दूर उठाना
exercise-thumb-out-from-palm-start = हाथ की पीठ मेज़ पर रखें।
exercise-thumb-out-from-palm-step-1 = अंगूठा सीधा ऊपर उठाएँ, हथेली से दूर।
exercise-thumb-out-from-palm-step-2 = { $hold } रोकें।
exercise-thumb-out-from-palm-step-3 = उसे धीरे-धीरे वापस नीचे आने दें।

exercise-thumb-c-hold-name = अधूरे गोले का आकार बनाए रखना
exercise-thumb-c-hold-start = अंगूठे और तर्जनी से एक तरफ़ खुला गोला बनाएँ।
exercise-thumb-c-hold-step-1 = देखें कि अंगूठा गोल रहे और पीछे न मुड़े।
exercise-thumb-c-hold-step-2 = दूसरे हाथ से अंगूठे को बाहर से थामें।
exercise-thumb-c-hold-step-3 = अंगूठे को धीरे से बाहर की ओर दबाएँ। उसे हिलने न दें।
exercise-thumb-c-hold-step-4 = { $hold } रोकें।
exercise-thumb-c-hold-step-5 = हाथ ढीला छोड़ें।

exercise-index-side-press-name = तर्जनी को बग़ल में दबाना
exercise-index-side-press-start = हाथ मेज़ पर सपाट रखें, हथेली नीचे रहे।
exercise-index-side-press-step-1 = दूसरा हाथ तर्जनी पर अंगूठे की तरफ़ से लगाएँ।
exercise-index-side-press-step-2 = तर्जनी को धीरे से अंगूठे की ओर दबाएँ। उसे हिलने न दें।
exercise-index-side-press-step-3 = { $hold } रोकें।
exercise-index-side-press-step-4 = हाथ ढीला छोड़ें।

exercise-soft-ball-squeeze-name = नरम गेंद दबाना
exercise-soft-ball-squeeze-start = नरम स्पंज की गेंद हथेली में रखें। अंगूठा उस पर न रखें।
exercise-soft-ball-squeeze-step-1 = उँगलियों से गेंद हल्के से दबाएँ।
exercise-soft-ball-squeeze-step-2 = { $hold } रोकें।
exercise-soft-ball-squeeze-step-3 = धीरे-धीरे छोड़ें।
