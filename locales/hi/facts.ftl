### The fact sheet of a condition, for patients. It is about nobody in particular: no hour, no date.

facts-caution = यह पन्ना हाथ की एक तकलीफ़ के बारे में बताता है। यह आपके थेरेपिस्ट या सर्जन की सलाह की जगह नहीं लेता। वे कुछ और कहें, तो वही करें।
facts-line = तस्वीरों में है: { $side ->
    [left] बायाँ हाथ
   *[right] दायाँ हाथ
}{ $finger ->
    [index] , तर्जनी
    [middle] , बीच की उँगली
    [ring] , अनामिका
    [little] , छोटी उँगली
   *[none] {""}
}।

facts-what-title = यह क्या है
facts-what = { $what }

facts-aim-title = स्प्लिंट क्या करता है
facts-aim = { $aim }
facts-joints = { $joints }
facts-joint-still = हिलने नहीं दिया जाता
facts-joint-steady = थामे रखा जाता है
facts-joint-stopped = हिलता है, एक रोक तक
facts-joint-relative = पास की उँगलियों से कम हिलता है
facts-joint-coupled = पास की उँगली के साथ हिलता है
facts-joint-mobilised = धीरे से खींचा जाता है
facts-joint-varies = थमा हुआ या खुला: यह आपके स्प्लिंट पर निर्भर है
facts-joint-free = हिल सकता है

facts-types-title = कौन-से स्प्लिंट ठीक हैं
facts-types-intro = शुरू में इस तरह के स्प्लिंट ठीक हैं। आपके हाथ के लिए थेरेपिस्ट चुनते हैं।

facts-course-title = आम तौर पर कैसे चलता है
facts-step-label = क़दम { $number }, { $length }:
facts-step = { $wear } { $ends }
facts-length-usual = लगभग { $length }
facts-length-protocol = { $length }, जैसा आपके सर्जन कहें
facts-length-open = कोई तय समय नहीं
facts-weeks = { $count ->
    [one] { $count } हफ़्ता
   *[other] { $count } हफ़्ते
}
facts-weeks-range = { $from } से { $to ->
    [one] { $to } हफ़्ता
   *[other] { $to } हफ़्ते
}
facts-days = { $count ->
    [one] { $count } दिन
   *[other] { $count } दिन
}
facts-days-range = { $from } से { $to ->
    [one] { $to } दिन
   *[other] { $to } दिन
}
facts-ends-therapist = इस क़दम का अंत तय नहीं है। यह कब पूरा हुआ, यह थेरेपिस्ट तय करते हैं।
facts-ends-surgeon = इस क़दम का अंत तय नहीं है। यह कब पूरा हुआ, यह सर्जन तय करते हैं।
facts-ends-person = इसकी ज़रूरत कब नहीं रही, यह आप तय करते हैं।
facts-ends-time = फिर अगला क़दम शुरू होता है।
facts-own-guide = यह पन्ना आपकी योजना नहीं है। स्प्लिंट कब पहनना है, यह आपकी अपनी गाइड बताती है। गाइड जो कहे, वही करें।
facts-clinics-differ = हर क्लिनिक अलग है। हो सकता है कि आपका स्प्लिंट, क़दम और समय यहाँ जैसे न हों।
facts-surgeon-sets = ऑपरेशन या हड्डी टूटने के बाद, समय और हाथ की स्थिति सर्जन तय करते हैं।

facts-help-title = मदद कब लें
facts-visit = { $sign }: अगली मुलाक़ात में थेरेपिस्ट को बताएँ।
