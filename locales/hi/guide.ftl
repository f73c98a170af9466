### The guide. Reader is "आप" throughout, orders in -एँ. "स्प्लिंट" is masculine. "उँगली" leaves out the thumb.
### No date, hour, number, side or angle is typed here; they come in as variables.

guide-title = आपका { $orthosis }
# $name is the person's name. Stands at the foot of every page.
guide-made-for = सिर्फ़ { $name } के लिए। { $side ->
    [left] बायाँ हाथ
   *[right] दायाँ हाथ
}{ $finger ->
    [index] , तर्जनी
    [middle] , बीच की उँगली
    [ring] , अनामिका
    [little] , छोटी उँगली
   *[none] {""}
}।
guide-made-for-nobody = सिर्फ़ एक व्यक्ति के लिए। { $side ->
    [left] बायाँ हाथ
   *[right] दायाँ हाथ
}{ $finger ->
    [index] , तर्जनी
    [middle] , बीच की उँगली
    [ring] , अनामिका
    [little] , छोटी उँगली
   *[none] {""}
}।
guide-caution = यह गाइड आपके थेरेपिस्ट या सर्जन की सलाह की जगह नहीं लेती। वे कुछ और कहें, तो वही करें। स्प्लिंट किसी और को न दें।
guide-drafted = इस अनुवाद को किसी योग्य अनुवादक ने नहीं जाँचा है।
guide-outdated = अनुवाद के बाद इस पन्ने की अंग्रेज़ी बदली गई है। इसे काम में लेने से पहले अपने क्लिनिक से पूछें।
guide-page = पेज { $page } / { $pages }
contents-page = , पेज { $page }

hand-left = बायाँ हाथ
hand-right = दायाँ हाथ
hand-alt = { $side ->
    [left] यह स्प्लिंट आपके बाएँ हाथ के लिए है।
   *[right] यह स्प्लिंट आपके दाएँ हाथ के लिए है।
}

glance-title = एक नज़र में
dates-title = दिन-ब-दिन
on-off-title = पहनना और उतारना
on-off-intro = { $washing ->
    [never] यह सिर्फ़ आपका क्लिनिक करता है।
   *[freely] मेज़ के पास बैठें। दूसरे हाथ से काम लें।
}
skin-title = अपनी त्वचा देखें
skin-intro = { $checks ->
    [one] दिन में एक बार ध्यान से देखें।
   *[other] दिन में { $checks } बार ध्यान से देखें।
} अच्छी रोशनी में देखें। { $washing ->
    [supported] जब भी नहाने-धोने के लिए स्प्लिंट उतारें, ये जगहें देखें। बाक़ी समय स्प्लिंट के किनारे, और उँगलियों और अंगूठे के सिरे देखें:
    [never] देखने के लिए स्प्लिंट न उतारें। स्प्लिंट के किनारे, और उँगलियों और अंगूठे के सिरे देखें:
   *[freely] ये जगहें देखें:
}
move-title = अपना हाथ हिलाएँ
move-intro = धीरे-धीरे करें। कभी ज़ोर न लगाएँ।
daily-title = रोज़ के कामों में
care-title = स्प्लिंट की देखभाल
note-title = आपके थेरेपिस्ट की ओर से
call-title = कब फ़ोन करें
call-intro = यह पन्ना ऐसी जगह रखें जहाँ दिखता रहे।

fact-splint = कौन-सा स्प्लिंट
finger-name = { $finger ->
    [index] तर्जनी, अंगूठे के पास
    [middle] बीच की उँगली
    [ring] अनामिका, छोटी उँगली के पास
   *[little] छोटी उँगली
}
fact-for = किस लिए
fact-fitted = कब लगा
fact-full = पूरे समय पहनना शुरू
fact-full-more = पहले थोड़ा-थोड़ा बढ़ाएँ। दिन-ब-दिन वाली तालिका देखें।
fact-review = अगली मुलाक़ात
fact-free = ये हिल सकते हैं: { $joints }।

say-date = { $date }
say-date-time = { $date }, { $time }
say-short-date = { $date }
date-range = { $from } से { $to } तक
date-until-visit = { $from } से, { $to } की मुलाक़ात तक
time-range = { $from } से { $to }

joint-elbow = आपकी कोहनी
joint-forearm = निचली बाँह का घूमना
joint-wrist = आपकी कलाई
joint-thumb-cmc = अंगूठे की जड़
joint-thumb-mcp = अंगूठे का हथेली के पास का जोड़
joint-thumb-ip = अंगूठे का सिरा
joint-fingers-mcp = आपकी उँगलियाँ
joint-fingers-pip = उँगलियों के बीच के जोड़
joint-fingers-dip = उँगलियों के सिरे
joint-finger-mcp = दुखती उँगली का हथेली के पास का जोड़
joint-finger-pip = दुखती उँगली का बीच का जोड़
joint-finger-dip = दुखती उँगली का सिरा
joint-other-fingers-mcp = बाक़ी उँगलियाँ
joint-other-fingers-pip = बाक़ी उँगलियों के बीच के जोड़
joint-other-fingers-dip = बाक़ी उँगलियों के सिरे
joint-index-mcp = तर्जनी का हथेली के पास का जोड़
joint-middle-mcp = बीच की उँगली का हथेली के पास का जोड़
joint-ring-mcp = अनामिका का हथेली के पास का जोड़
joint-little-mcp = छोटी उँगली का हथेली के पास का जोड़
joint-index-pip = तर्जनी का बीच का जोड़
joint-middle-pip = बीच की उँगली का बीच का जोड़
joint-ring-pip = अनामिका का बीच का जोड़
joint-little-pip = छोटी उँगली का बीच का जोड़
joint-index-dip = तर्जनी का सिरा
joint-middle-dip = बीच की उँगली का सिरा
joint-ring-dip = अनामिका का सिरा
joint-little-dip = छोटी उँगली का सिरा

strip-days = दिन { $from } से { $to }
strip-from-day = दिन { $from } से
strip-weeks = हफ़्ते { $from } से { $to }
strip-build = हर दिन थोड़ा बढ़ाएँ। रात में अभी नहीं।
strip-key-on = स्प्लिंट पहना हुआ
strip-key-off = स्प्लिंट उतरा हुआ
strip-key-needed = मेहनत के कामों में पहनें
strip-key-guard = बाहर और भीड़ में पहनें
strip-key-rest = आराम करते समय पहनें
strip-key-part = कुछ समय पहनें
strip-alt = { $label }: स्प्लिंट पहनने का समय { $times }।
strip-alt-none = { $label }: स्प्लिंट पहनने का कोई तय समय नहीं।
wear-never-remove = दिन-रात पहनें। इसे न उतारें।
wear-off-to-wash = दिन-रात पहनें। सिर्फ़ नहाने-धोने के लिए उतारें{ $times ->
    [one] , दिन में एक बार।
   *[other] , दिन में { $times } बार।
}
wear-off-to-exercise = दिन-रात पहनें। सिर्फ़ नहाने-धोने और कसरत के लिए उतारें{ $times ->
    [one] , दिन में एक बार।
   *[other] , दिन में { $times } बार।
}
wear-night-and-tasks = सारी रात पहनें। दिन में मेहनत के कामों के लिए पहनें।
wear-night-and-tasks-guard = सारी रात पहनें। दिन में बाहर, भीड़ में और जिन कामों की इजाज़त है, उन सब में पहनें।
wear-night-and-rest = सारी रात पहनें। दिन में आराम करते समय पहनें। हाथ से काम करते समय उतारें।
wear-stretch = { $bouts ->
    [one] दिन में एक बार
   *[other] दिन में { $bouts } बार
} पहनें, हर बार { $each }। बीच में उतारें।
wear-day = सारा दिन पहनें। रात में उतारें।
wear-night = सारी रात पहनें। दिन में उतारें।
wear-tasks = सिर्फ़ मेहनत के कामों के लिए पहनें। रात में उतारें।
wear-tasks-guard = बाहर, भीड़ में और जिन कामों की इजाज़त है, उन सब में पहनें। रात में उतारें।
wear-off = न पहनें।
wear-wean-night = उठने के बाद { $length } और सारी रात पहनें।
wear-wean-day = उठने के बाद { $length } पहनें। रात में उतारें।

later-label = जब आपके थेरेपिस्ट कहें
later-label-surgeon = जब आपके सर्जन कहें
later-label-next = बाद में, जब हम कहें
later-other = दूसरे स्प्लिंट के साथ।
later-never-remove = दिन-रात, बिना रुके।
later-off-to-wash = दिन-रात, सिर्फ़ नहाने-धोने के लिए उतारें।
later-off-to-exercise = दिन-रात, सिर्फ़ नहाने-धोने और कसरत के लिए उतारें।
later-night-and-tasks = रात में और मेहनत के कामों में।
later-night-and-tasks-guard = रात में, बाहर और भीड़ में।
later-night-and-rest = रात में और आराम करते समय।
later-stretch = दिन में कुछ बार, खिंचाव के लिए।
later-day = सिर्फ़ दिन में।
later-night = सिर्फ़ रात में।
later-tasks = सिर्फ़ मेहनत के कामों में।
later-tasks-guard = सिर्फ़ बाहर और भीड़ में।
later-off = स्प्लिंट के बिना।
later-wean = धीरे-धीरे कम, एक-एक क़दम।

warning-title-take-off = इसे उतारें और हमें फ़ोन करें, अगर:
warning-title-supported = { $straps ->
    [without] हमें फ़ोन करें, अगर:
   *[with] फ़ीते ढीले करें और हमें फ़ोन करें, अगर:
}
warning-title-keep-on = { $straps ->
    [without] इसे पहने रहें और हमें फ़ोन करें, अगर:
   *[with] फ़ीते ढीले करें, इसे पहने रहें और हमें फ़ोन करें, अगर:
}
warning-emergency = इमरजेंसी, { $number } पर फ़ोन करें, अगर:
warning-emergency-no-number = इमरजेंसी, तुरंत मदद लें, अगर:
warning-act-take-off = इसे उतारें। फिर फ़ोन करें।
warning-act-supported = { $straps ->
    [without] दुखते हिस्से को सहारा दिए रखें। फिर फ़ोन करें।
   *[with] फ़ीते ढीले करें। दुखते हिस्से को सहारा दिए रखें। फिर फ़ोन करें।
}
warning-act-keep-on = { $straps ->
    [without] इसे न उतारें। हमें फ़ोन करें।
   *[with] फ़ीते ढीले करें। इसे न उतारें। फिर फ़ोन करें।
}

axis-midnight = आधी रात
axis-noon = दोपहर
schedule-day = दिन
schedule-clock = समय
schedule-long = कितनी देर
schedule-note = ये समय सिर्फ़ मिसाल हैं। अपनी सुविधा के समय चुनें। कोई दाग ज़्यादा देर रहे, तो वही दिन दोहराएँ।
schedule-note-late = ये समय सिर्फ़ मिसाल हैं। अपनी सुविधा के समय चुनें। आधी रात के बाद की पट्टी पिछले दिन की है। कोई दाग ज़्यादा देर रहे, तो वही दिन दोहराएँ।
schedule-minutes = { $count ->
    [one] मिनट
   *[other] मिनट
}
schedule-hours = { $count ->
    [one] घंटा
   *[other] घंटे
}
schedule-times = { $count ->
    [one] एक बार
   *[other] { $count } बार
}
schedule-not-yet = इस दिन नहीं

calendar-week = हफ़्ता
calendar-what = क्या करें
calendar-build = धीरे-धीरे बढ़ाएँ।
calendar-wean = कम पहनें।
calendar-never-remove = दिन-रात, बिना रुके।
calendar-off-to-wash = दिन-रात।
calendar-off-to-exercise = दिन-रात।
calendar-night-and-tasks = रात और मेहनत के काम।
calendar-night-and-tasks-guard = रात, बाहर, भीड़।
calendar-night-and-rest = रात और आराम।
calendar-stretch = खिंचाव के समय।
calendar-day = दिन में।
calendar-night = रात में।
calendar-tasks = मेहनत के काम।
calendar-tasks-guard = बाहर और भीड़।
calendar-off = स्प्लिंट नहीं।
calendar-review = { $date } को मुलाक़ात।
calendar-key-review = मुलाक़ात
calendar-key-build = बढ़ाएँ
calendar-key-on = पहनें
calendar-key-night = रात
calendar-key-needed = दिन में कुछ समय
calendar-key-off = न पहनें
calendar-and-so-on = हर हफ़्ते ऐसे ही चलाएँ।

steps-on = पहनें
steps-off = उतारें
steps-never = स्प्लिंट ख़ुद न उतारें। इसे आपका क्लिनिक उतारता और पहनाता है।
strap-next = अगला फ़ीता

spot-letters = क ख ग घ च छ ज झ
skin-fine = यह ठीक है
skin-not = यह ठीक नहीं है
skin-fine-mark = हल्का दाग जो { $limit } बीतने से पहले मिट जाए
skin-fine-lines = फ़ीतों की हल्की लकीरें
skin-fine-damp = त्वचा पर थोड़ी नमी
skin-not-mark = दाग जो { $limit } बीतने पर भी रहे
skin-not-dark = गहरे रंग की त्वचा पर: कोई जगह जो { $limit } बीतने पर भी ज़्यादा गहरी, गर्म या सख़्त रहे
skin-not-blister = छाला, घाव या कटी त्वचा
skin-not-rash = चकत्ते, या खुजली जो न जाए
skin-not-wet = त्वचा जो सफ़ेद, नरम और गीली हो
skin-act-take-off = स्प्लिंट उतारें और आज ही हमें फ़ोन करें।
skin-act-keep = { $straps ->
    [without] आज ही हमें फ़ोन करें। हाथ को सहारा दिए रखें।
   *[with] फ़ीते ढीले करें और आज ही हमें फ़ोन करें। हाथ को सहारा दिए रखें।
}

move-splint-on = स्प्लिंट पहनकर
move-splint-off = स्प्लिंट उतारकर
move-stop = दर्द बढ़े तो रुक जाएँ। कुछ घंटों में कम न हो, तो हमें फ़ोन करें।
move-avoid = अभी नहीं
dose-times = { $count ->
    [one] बार
   *[other] बार
}
dose-a-day = { $count ->
    [one] बार रोज़
   *[other] बार रोज़
}
move-up-to = एक हफ़्ते बाद, आसान लगे तो: ज़्यादा से ज़्यादा { $count ->
    [one] { $count } बार
   *[other] { $count } बार
}।
moves-after-review = मुलाक़ात के बाद आपके थेरेपिस्ट नई कसरतें देंगे।
moves-later = { $date } से: { $exercises }।
avoid-wrist-ulnar-deviation = कलाई को छोटी उँगली की तरफ़ न झुकाएँ।
avoid-wrist-radial-deviation = कलाई को अंगूठे की तरफ़ न झुकाएँ।
avoid-thumb-cmc-any = अंगूठे की जड़ को न हिलाएँ।
avoid-thumb-cmc-palmar-abduction = अंगूठे को हथेली के सामने दूर न तानें।
avoid-thumb-cmc-radial-abduction = अंगूठे को बाहर, बग़ल की तरफ़ न तानें।
avoid-thumb-mcp-any = अंगूठे के हथेली के पास के जोड़ को न मोड़ें।
avoid-thumb-mcp-flexion = अंगूठे को हथेली में न मोड़ें।
avoid-thumb-mcp-radial-deviation = अंगूठे को हाथ से दूर न धकेलें।
avoid-thumb-mcp-ulnar-deviation = अंगूठे को हाथ के ऊपर से छोटी उँगली की ओर न धकेलें।

daily-job = काम
daily-what = अभी
daily-how = कैसे
daily-word-keep = करते रहें
daily-word-change = ऐसे करें
daily-word-leave = अभी न करें
daily-keep = हमेशा की तरह करें।
daily-helper = किसी से मदद माँगें।
daily-other-hand = दूसरे हाथ से करें, या किसी से मदद माँगें।
daily-ask = थेरेपिस्ट से पूछें कि फिर कब शुरू कर सकते हैं।
daily-pauses = एक बार में थोड़ा करें। बीच में आराम करें।
daily-keep-dry = स्प्लिंट सूखा रखें, या तुरंत सुखाएँ।
daily-driving = गाड़ी चलाने से पहले थेरेपिस्ट और बीमा कंपनी से पूछें। अपने यहाँ का क़ानून मानें।
daily-from-keep = { $date } से: हमेशा की तरह।
daily-from-change = { $date } से: आसान तरीक़े से करके देखें।
why-risky = इस हाथ के लिए अभी बहुत ख़तरा है।
why-driving = गाड़ी या सवारी चलाने में पूरा क़ाबू चाहिए।
why-swimming = आपका हाथ, त्वचा या स्प्लिंट अभी पानी के लिए तैयार नहीं।
why-heavy = अभी बहुत भारी है।
why-in-the-way = स्प्लिंट बीच में आता है।
why-lateral-pinch = अंगूठे को उँगली पर दबाने से हाथ पर ज़ोर पड़ता है।
why-tip-pinch = उँगलियों के सिरों की चुटकी से हाथ पर ज़ोर पड़ता है।
why-power-grip = कसकर पकड़ने से हाथ पर ज़ोर पड़ता है।
why-sustained-grip = देर तक पकड़े रहने से हाथ पर ज़ोर पड़ता है।
why-wrist-deviation = कलाई को बग़ल में झुकाने से उस पर ज़ोर पड़ता है।
why-wrist-flexion = कलाई मोड़ने से उस पर ज़ोर पड़ता है।
why-wrist-load = मुड़ी कलाई पर भार देने से हाथ पर ज़ोर पड़ता है।
why-thumb-load = इस काम से अंगूठे पर भार पड़ता है।
why-forearm-rotation = बाँह घुमाने से हाथ पर ज़ोर पड़ता है।
why-finger-flexion = उँगलियाँ ज़ोर से मोड़ने से उन पर ज़ोर पड़ता है।
why-elbow-flexion = मुड़ी कोहनी से बाँह पर ज़ोर पड़ता है।
why-impact = झटके या टक्कर से हाथ को चोट लग सकती है।
why-vibration = कंपन से हाथ पर ज़ोर पड़ता है।
why-wet = आपका हाथ या स्प्लिंट भीग जाता है।
why-heat = गर्मी स्प्लिंट बिगाड़ती है या त्वचा को नुक़सान करती है।
why-repetition = बार-बार वही हरकत करने से हाथ पर ज़ोर पड़ता है।

care-wash-plastic = इसे साबुन और पानी से धोएँ। पानी { $celsius } डिग्री से ज़्यादा गर्म न हो।
care-dry-plastic = पहनने से पहले अच्छी तरह सुखाएँ।
care-heat = गर्मी से बचाएँ। गर्म पानी नहीं, हीटर नहीं, धूप में खड़ी गाड़ी नहीं। यह पिघलकर टेढ़ा हो जाता है।
care-wash-soft = इसे हल्के साबुन से हाथ से धोएँ। अच्छी तरह खँगालें।
care-dry-soft = छाया में फैलाकर सुखाएँ। गीला कभी न पहनें।
care-machine = वॉशिंग मशीन नहीं, ड्रायर नहीं, इस्तरी नहीं, ब्लीच नहीं।
care-metal = पोंछकर सुखाएँ। देखें कि ज़ंग या मोड़ तो नहीं।
care-keep-dry = इसे सूखा रखें। नहाते-धोते समय इसे ढकें।
care-straps = फ़ीतों से रोएँ निकालें। स्प्लिंट धोने से पहले फ़ीते बंद करें।
care-change = इसे न काटें, न मोड़ें, न चिपकाएँ। यह हम करते हैं।
care-share = इसे किसी को न दें। यह आपके लिए बना है।
care-bring = हर मुलाक़ात में इसे साथ लाएँ।

call-emergency = इमरजेंसी: अभी मदद लें
call-today = आज ही हमें फ़ोन करें
call-visit = मुलाक़ात में हमें बताएँ
call-where = कहाँ: { $address }
call-emergency-number = आपके यहाँ का इमरजेंसी नंबर
call-telephone = फ़ोन
note-from = आपके थेरेपिस्ट लिखते हैं
initial-say = आपके साथ जाँचा गया
initial-date = तारीख़
initial-name = छोटे दस्तख़त

length-minutes = { $count ->
    [one] { $count } मिनट
   *[other] { $count } मिनट
}
length-hours = { $count ->
    [one] { $count } घंटा
   *[other] { $count } घंटे
}
length-hours-minutes = { $hours } { $minutes }
length-seconds = { $count ->
    [one] { $count } सेकंड
   *[other] { $count } सेकंड
}

picture-seen = { $what ->
    [finger] { $side ->
        [left] बाएँ हाथ की
       *[right] दाएँ हाथ की
    } { $finger ->
        [index] तर्जनी
        [middle] बीच की उँगली
        [ring] अनामिका
        [little] छोटी उँगली
       *[none] उँगली
    }
    [thumb] { $side ->
        [left] बायाँ अंगूठा
       *[right] दायाँ अंगूठा
    }
   *[hand] { $side ->
        [left] बायाँ हाथ
       *[right] दायाँ हाथ
    }
}, { $view ->
    [palmar] हथेली की तरफ़ से।
    [radial] अंगूठे की तरफ़ से।
    [ulnar] छोटी उँगली की तरफ़ से।
    [turned] हाथ की पीठ और अंगूठे की तरफ़ से।
    [palmar-radial] हथेली और अंगूठे की तरफ़ से।
    [palmar-ulnar] हथेली और छोटी उँगली की तरफ़ से।
    [own] जैसे वह आपको ख़ुद दिखता है।
   *[dorsal] हाथ की पीठ की तरफ़ से।
}
picture-covers = { $splint }। { $from ->
    [arm] यह ऊपरी बाँह से शुरू होता है और
    [forearm] यह निचली बाँह से शुरू होता है और
    [hand] यह हथेली से शुरू होता है और
   *[digit] यह { $finger ->
        [index] तर्जनी
        [middle] बीच की उँगली
        [ring] अनामिका
        [little] छोटी उँगली
       *[none] उँगली या अंगूठे
    } पर बैठता है और
} { $to ->
    [fingertips] उँगलियों के सिरों तक जाता है।
    [fingertip] उँगली के सिरे तक जाता है।
    [fingers] उँगलियों तक जाता है।
    [finger] उँगली तक जाता है।
    [thumb-tip] अंगूठे के सिरे तक जाता है।
    [thumb] अंगूठे तक जाता है।
    [palm] हथेली तक जाता है।
   *[none] आगे नहीं जाता।
}
picture-spots = अक्षर वाले गोले बताते हैं कि कहाँ देखें।
picture-part = तस्वीर { $number } / { $count }।
picture-held = इस कसरत की स्थिति: { $exercise }।
picture-moved = टूटी रेखा: शुरुआत। तीर हरकत दिखाता है: { $exercise }।
picture-inside = हड्डियाँ, जैसे त्वचा के आर-पार दिखें।
picture-structures = निशान लगे हैं: { $structures }।
picture-held-joints = लकीरों वाला गोला बताता है कि स्प्लिंट क्या रोकता या थामता है: { $joints }।
picture-held-mark = स्प्लिंट ने रोका या थामा है
held-knuckles = हथेली के पास के जोड़
held-middle-joints = उँगलियों के बीच के जोड़
held-end-joints = उँगलियों के सिरे के जोड़
picture-right = यह ठीक बैठा है। सही का निशान यही बताता है।
picture-wrong = यह ठीक नहीं बैठा है। काटे का निशान यही बताता है। { $fault }
