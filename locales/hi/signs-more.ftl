### More signs to watch for. Clauses without a full stop.

sign-finger-snap = कुछ टूटने जैसा झटका लगे, या अचानक उँगली या अंगूठा मोड़ा या सीधा न किया जा सके
sign-tooth-cut-over-knuckle = हथेली के पास के जोड़ पर दाँत से लगा घाव लाल हो, सूजे या दुखे
sign-finger-white-when-straight = उँगली सीधी होने पर सफ़ेद पड़ जाए
sign-graft-pale-or-tight = हाथ पर लगी नई त्वचा फीकी पड़ जाए, या अंदर गहरी जकड़न लगे

sign-tip-droops-again = उँगली का सिरा फिर झुक जाए, या बिना सहारे मुड़ गया हो
sign-middle-joint-bends-alone = उँगली का बीच का जोड़ झुक जाए, या बिना सहारे मुड़ गया हो
sign-finger-cannot-straighten = कोई उँगली झुक जाए और ख़ुद सीधी न हो सके
sign-thumb-tip-will-not-lift = अंगूठे का सिरा अब ऊपर न उठे
sign-finger-turns-over-neighbour = कोई उँगली घूमे या पास वाली उँगली पर चढ़े
sign-finger-locks = उँगली या अंगूठा अटक जाए और सीधा न हो
sign-pin-loose = पिन ढीली, मुड़ी या टूटी हो, या उसका छेद रिसे
sign-joint-slips = कोई जोड़ अपनी जगह से खिसके या ढीला लगे
sign-wrist-clunks = कलाई में खटका हो, या अंगूठे के पास के गड्ढे में गहरा दर्द हो
sign-night-numbness-grows = उँगलियाँ या अंगूठा पहले से ज़्यादा रातों में सुन्न हो, या सारा दिन सुन्न रहने लगे
sign-thumb-muscle-thinner = अंगूठे के नीचे की माँसपेशी की गद्दी पतली होती जाए
sign-hand-muscle-thinner = अंगूठे और तर्जनी के बीच हाथ पतला होता जाए
sign-little-finger-numb = छोटी उँगली पहले से ज़्यादा सुन्न रहे
sign-elbow-band-tingles = पट्टा या स्प्लिंट पहने हुए हाथ या निचली बाँह झनझनाए
sign-finger-stays-bent-more = कोई उँगली पहले से ज़्यादा मुड़ी रहे
sign-tight-hand-tighter = हाथ ज़्यादा जकड़ने लगे या खोलना ज़्यादा मुश्किल हो

sign-clicks-under-load = टेक लगाने या उठाने पर कलाई या हाथ में कट-कट हो और दुखे
