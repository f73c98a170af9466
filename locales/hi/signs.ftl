### Signs to watch for. Each is a clause without a full stop, after a heading such as "आज ही हमें फ़ोन करें, अगर:".

sign-numb-or-tingling = उँगलियाँ या अंगूठा पहले से ज़्यादा सुन्न रहे या झनझनाता रहे
sign-fingers-blue-white-cold = { $straps ->
    [without] उँगलियाँ या अंगूठा नीला, सफ़ेद या ठंडा रहे
   *[with] फ़ीते ढीले करने के { $loosen } बाद भी उँगलियाँ या अंगूठा नीला, सफ़ेद या ठंडा रहे
}
sign-more-swelling-or-pain = सूजन बढ़े या दर्द बढ़े
sign-mark-or-sore-stays = लाल दाग या दुखती जगह { $limit } बीतने पर भी रहे

sign-severe-pain-hard-arm = आराम में भी तेज़ दर्द बढ़ता जाए, या निचली बाँह तनी और सख़्त लगे
sign-redness-with-fever = लाली फैले और बुख़ार हो या तबीयत ख़राब लगे
sign-finger-swollen-bent = पूरी उँगली या अंगूठा सूज जाए, मुड़ा रहे और सीधा करने पर दुखे
sign-new-injury = गिरने या टक्कर के बाद हाथ टेढ़ा दिखे या ख़ून न रुके
sign-face-swells-breathing = चेहरा या होंठ सूज जाएँ, या साँस लेना मुश्किल हो

sign-redness-spreads = हाथ पर लाली या गर्मी फैले
sign-blister-or-open-skin = छाला हो या त्वचा खुल जाए
sign-skin-patch-changed = त्वचा की कोई जगह बाक़ी से ज़्यादा गहरी, चमकीली, सख़्त या गर्म हो
sign-rash-or-itch = स्प्लिंट के नीचे चकत्ते या खुजली हो
sign-skin-wet-and-white = स्प्लिंट के नीचे त्वचा सफ़ेद, नरम और गीली हो
sign-splint-broken-or-loose = स्प्लिंट चटका, मुड़ा, खोया या बहुत ढीला हो
sign-hand-burning-shiny-stiff = पूरा हाथ जले, चमकीला दिखे और अकड़ने लगे

sign-edge-or-strap-worn = कोई किनारा चुभे, या कोई फ़ीता अब न चिपके
sign-plan-does-not-fit-day = यह योजना आपके दिन में न बैठे

sign-thumb-gives-way = अंगूठा फिसले या बग़ल में खिसके
sign-thumb-snap = अंगूठे में कुछ टूटने जैसा झटका लगे
sign-thumb-lump = अंगूठे के हथेली के पास के जोड़ की बग़ल में नई गाँठ दिखे
sign-wound-opens = घाव खुले, रिसे या उससे बदबू आए
sign-thumb-back-tingles = अंगूठे की पीठ झनझनाए या सुन्न हो
sign-thumb-catches = अंगूठा हिलाने पर अटके या झटका खाए
sign-thumb-weaker-in-pinch = चुटकी कमज़ोर होती जाए
sign-no-easier-with-splint = काम में स्प्लिंट के साथ भी उतना ही दर्द हो जितना बिना
