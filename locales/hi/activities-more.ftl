### More activities. Names are infinitives, as in activities.ftl.
### "A square corner" is said as "the corner of a book".

## More ways for jobs named elsewhere

activity-text-with-thumbs-open-elbow = बाँह टिकाएँ। कोहनी किताब के कोने से ज़्यादा खुली रखें।
activity-hold-tablet-open-elbow = उसे और दूर रखें। कोहनी किताब के कोने से ज़्यादा खुली रखें।
activity-drive-car-open-elbow = सीट ऐसे लगाएँ कि कोहनी किताब के कोने से ज़्यादा खुले।
activity-brush-teeth-lean-forward = सिंक पर झुकें। सिर को ब्रश के पास लाएँ।

activity-wash-hair-shower-name = नहाना और बाल धोना
activity-wash-hair-shower-arm-bag = हाथ और स्प्लिंट पर पानी रोकने वाली थैली चढ़ाएँ। उसे ऊपर से अच्छी तरह बंद करें।
activity-wash-hair-shower-pump-bottle = पंप वाली बोतल और लंबे हत्थे वाला स्पंज काम में लें।
activity-wash-hair-shower-bend-head = सिर नीचे झुकाएँ। कोहनी किताब के कोने से ज़्यादा खुली रखें।
activity-wash-hair-shower-other-hand = दूसरे हाथ से धोएँ, या किसी से बाल धुलवाएँ।

activity-pull-up-clothes-name = पैंट या मोज़े ऊपर चढ़ाना
activity-pull-up-clothes-loose-waist = नरम कमर वाले ढीले कपड़े पहनें।
activity-pull-up-clothes-loops = कपड़े के अंदर फंदे सिलवाएँ। उनमें निचली बाँह डालकर खींचें।
activity-pull-up-clothes-flat-palms = बैठ जाएँ। कपड़े को सपाट हथेलियों से ऊपर धकेलें।
activity-pull-up-clothes-other-hand = दूसरे हाथ से खींचें, या किसी से मदद माँगें।

activity-fasten-back-strap-name = पीठ के पीछे हुक लगाना
activity-fasten-back-strap-pull-over = ऐसा नरम कपड़ा लें जो सिर के ऊपर से पहना जाए।
activity-fasten-back-strap-turn-round = हुक आगे लगाएँ। फिर उसे घुमाकर पीछे करें।
activity-fasten-back-strap-front-closing = चौड़े हुक वाला ऐसा कपड़ा चुनें जो आगे से बंद हो।
activity-fasten-back-strap-helper = किसी से हुक लगवाएँ।

activity-toilet-wipe-name = शौच के बाद सफ़ाई करना
activity-toilet-wipe-cover-splint = स्प्लिंट पर पतली थैली चढ़ाएँ। बाद में थैली फेंक दें।
activity-toilet-wipe-long-wiper = लंबे हत्थे वाला पोंछने का साधन लें, या ख़ुद धोने वाली सीट।
activity-toilet-wipe-other-hand = दूसरे हाथ से सफ़ाई करें।
activity-toilet-wipe-helper = किसी भरोसे के व्यक्ति से मदद माँगें।

activity-cut-nails-name = नाख़ून काटना
activity-cut-nails-fixed-clipper = तख़्ते पर लगा नेल कटर लें। उसे हथेली से दबाएँ।
activity-cut-nails-file = नाख़ून चौड़ी रेती से घिसें। रेती ढीली पकड़ें।
activity-cut-nails-few-at-once = रोज़ कुछ ही नाख़ून काटें।
activity-cut-nails-helper = किसी से नाख़ून कटवाएँ।

activity-tie-laces-name = जूते के फ़ीते बाँधना
activity-tie-laces-slip-on = बिना फ़ीते के जूते पहनें। लंबा शू हॉर्न काम में लें।
activity-tie-laces-stretch-laces = खिंचने वाले फ़ीते लगाएँ जो बँधे रहें।
activity-tie-laces-helper = किसी से फ़ीते बँधवाएँ।

activity-ring-pull-cap-name = छल्ले वाला डिब्बा या बोतल का ढक्कन खोलना
activity-ring-pull-cap-lever-opener = छल्ला उठाने वाला औज़ार काम में लें।
activity-ring-pull-cap-cap-grip = ढक्कन पर रबर की चटाई रखें। सपाट हथेली से घुमाएँ।
activity-ring-pull-cap-easy-packs = ऐसे पैकेट ख़रीदें जो बिना ज़ोर के खुलें।
activity-ring-pull-cap-helper = किसी से खुलवाएँ।

activity-chop-vegetables-name = सब्ज़ी काटना
activity-chop-vegetables-upright-knife = झूलकर काटने वाला या खड़े हत्थे वाला चाकू लें।
activity-chop-vegetables-cook-first = सब्ज़ी पहले पकाएँ। नरम चीज़ में कम ज़ोर लगता है।
activity-chop-vegetables-ready-cut = कटी हुई सब्ज़ी ख़रीदें।
activity-chop-vegetables-helper = किसी से कटवाएँ।

activity-wash-dishes-name = बरतन धोना
activity-wash-dishes-long-brush = ठंडा पानी और लंबे हत्थे वाला ब्रश काम में लें।
activity-wash-dishes-soak-first = पहले बरतन भिगोएँ। फिर हल्के से पोंछें।
activity-wash-dishes-dishwasher = बरतन धोने की मशीन काम में लें। हल्के बरतन एक-एक करके रखें।
activity-wash-dishes-helper = किसी से बरतन धुलवाएँ।

activity-knead-dough-name = आटा गूँधना या गाढ़ा घोल चलाना
activity-knead-dough-upright-spoon = बरतन गीले कपड़े पर रखें। खड़ी कलछी को कंधे के ज़ोर से चलाएँ।
activity-knead-dough-thin-mix = घोल पतला करें, और कम बनाएँ।
activity-knead-dough-mixer = मशीन से गूँधें।
activity-knead-dough-helper = किसी से गुँधवाएँ।

activity-carry-plates-name = थाली या ट्रे ले जाना
activity-carry-plates-flat-palms = दोनों सपाट हथेलियाँ नीचे सरकाएँ। उसे शरीर से सटाकर पकड़ें।
activity-carry-plates-trolley = पहियों वाली मेज़ पर रखकर धकेलें।
activity-carry-plates-one-by-one = एक बार में एक थाली ले जाएँ। गर्म थाली पहले ठंडी होने दें।
activity-carry-plates-helper = किसी और से ले जाने को कहें।

activity-eat-with-cutlery-name = छुरी-काँटे से खाना
activity-eat-with-cutlery-fat-handles = लंबे, मोटे हत्थे वाले छुरी-काँटे लें।
activity-eat-with-cutlery-rocking-knife = झूलकर काटने वाली छुरी से काटें।
activity-eat-with-cutlery-soft-food = नरम खाना चुनें जिसे काटना न पड़े।
activity-eat-with-cutlery-other-hand = दूसरे हाथ से खाएँ। खाना किसी से कटवाएँ।

activity-turn-door-knob-name = दरवाज़े की मूठ या नल घुमाना
activity-turn-door-knob-lever-handle = उस पर लंबा हत्था लगाएँ। हत्थे को निचली बाँह से दबाएँ।
activity-turn-door-knob-leave-open = अंदर के दरवाज़े थोड़े खुले रखें। उन्हें कूल्हे से धकेलें।
activity-turn-door-knob-other-hand = दूसरे हाथ से घुमाएँ।
activity-turn-door-knob-helper = किसी से घुमवाएँ।

activity-vacuum-name = वैक्यूम क्लीनर चलाना
activity-vacuum-walk-along = कोहनी शरीर से सटी रखें। मशीन के साथ-साथ चलें।
activity-vacuum-light-cleaner = हल्की मशीन लें, या ऐसी जो ख़ुद चले।
activity-vacuum-one-room = एक कमरा करें। फिर हाथ को आराम दें।
activity-vacuum-helper = किसी से कराएँ।

activity-hang-washing-name = कपड़े सुखाने डालना
activity-hang-washing-hangers = कपड़े हैंगर पर टाँगें या स्टैंड पर फैलाएँ।
activity-hang-washing-soft-pegs = आसानी से खुलने वाली चिमटियाँ लें।
activity-hang-washing-small-loads = थोड़े-थोड़े कपड़े धोएँ। मशीन में अच्छी तरह पानी निकालें।
activity-hang-washing-helper = किसी से डलवाएँ।

activity-scrub-bath-name = ग़ुसलख़ाना रगड़कर साफ़ करना
activity-scrub-bath-long-handle = लंबे, मोटे हत्थे वाला स्पंज काम में लें।
activity-scrub-bath-let-soak = साबुन छिड़कें, रुकें और पानी डालें। रगड़ें नहीं।
activity-scrub-bath-short-bouts = रोज़ थोड़ा हिस्सा साफ़ करें।
activity-scrub-bath-helper = किसी से साफ़ कराएँ।

activity-rise-from-chair-name = टेक लगाकर कुर्सी से उठना
activity-rise-from-chair-high-seat = ऊँची और पक्की सीट पर बैठें। तब टाँगें आसानी से उठाती हैं।
activity-rise-from-chair-legs-first = आगे सरकें और आगे झुकें। टाँगों के ज़ोर से उठें।
activity-rise-from-chair-forearm-rest = कुर्सी के हत्थे को निचली बाँह से दबाएँ, हाथ से नहीं।
activity-rise-from-chair-other-hand = दूसरे हाथ से टेक लगाएँ, या उठने में किसी से मदद माँगें।

activity-iron-clothes-name = इस्तरी करना
activity-iron-clothes-light-iron = छोटी, हल्की इस्तरी लें।
activity-iron-clothes-hang-smooth = गीले कपड़े सीधे करके टाँगें। कई कपड़ों को इस्तरी नहीं चाहिए।
activity-iron-clothes-few-pieces = कुछ कपड़े करें। फिर हाथ को आराम दें।
activity-iron-clothes-other-hand = दूसरे हाथ से इस्तरी करें, या किसी से कराएँ।

activity-make-bed-name = बिस्तर लगाना
activity-make-bed-light-covers = एक हल्की चादर ओढ़ने को और ढीली चादर बिछाने को लें।
activity-make-bed-flat-hands = चादरों को सपाट हाथों और निचली बाँहों से धकेलकर जमाएँ।
activity-make-bed-few-corners = गद्दा न उठाएँ। कोने ढीले छोड़ें।
activity-make-bed-helper = किसी से लगवाएँ।

activity-lean-on-stick-name = छड़ी या वॉकर का सहारा लेना
activity-lean-on-stick-wide-grip = हमसे उसकी ऊँचाई जँचवाएँ। चौड़ा, नरम हत्था मदद करता है।
activity-lean-on-stick-forearm-rest = हमसे ऐसा सहारा माँगें जिस पर निचली बाँह टिके। बिना सहारे न चलें।
activity-lean-on-stick-other-hand = हमसे पूछें कि क्या उसे दूसरे हाथ में पकड़ सकते हैं। बिना सहारे न चलें।

activity-hold-dog-lead-name = कुत्ते की डोर पकड़ना
activity-hold-dog-lead-waist-lead = कमर पर बँधने वाली डोर लें।
activity-hold-dog-lead-calm-walks = थोड़ी दूर, आराम से घुमाएँ। ऐसा साज लगाएँ जो कुत्ते को खींचने से रोके।
activity-hold-dog-lead-helper = डोर किसी और को पकड़ाएँ। उसे उँगलियों पर कभी न लपेटें।

activity-use-screwdriver-name = पेचकस चलाना
activity-use-screwdriver-powered-driver = मोटर वाला हल्का पेचकस लें।
activity-use-screwdriver-fat-handle = मोटा हत्था लें जो थोड़ा-थोड़ा करके घूमे।
activity-use-screwdriver-elbow-in = कोहनी शरीर से सटी रखें। ज़ोर शरीर से लगाएँ।
activity-use-screwdriver-helper = किसी से पेच कसवाएँ।

activity-hammer-name = हथौड़ा चलाना
activity-hammer-light-hammer = नरम, मोटे हत्थे वाला हल्का हथौड़ा लें।
activity-hammer-few-nails = कुछ कीलें ठोकें। फिर हाथ को आराम दें।
activity-hammer-helper = किसी से ठुकवाएँ।

activity-power-drill-name = ड्रिल मशीन चलाना
activity-power-drill-light-drill = बग़ल में हत्थे वाली हल्की ड्रिल लें।
activity-power-drill-two-hands = उसे दोनों हाथों से पकड़ें, कोहनियाँ शरीर से सटी रहें।
activity-power-drill-short-bouts = एक छेद करें। फिर हाथ को आराम दें।
activity-power-drill-helper = किसी से छेद कराएँ।

activity-lift-boxes-name = डिब्बे उठाना
activity-lift-boxes-palms-under = हथेलियाँ ऊपर करें। निचली बाँहें नीचे सरकाएँ और डिब्बे से सटे रहें।
activity-lift-boxes-half-load = डिब्बे आधे ही भरें।
activity-lift-boxes-trolley = उन्हें ट्रॉली पर धकेलें। ज़मीन से न उठाएँ।
activity-lift-boxes-helper = किसी से उठवाएँ।

activity-handle-small-parts-name = छोटी चीज़ें या सिक्के उठाना
activity-handle-small-parts-soft-tray = उन्हें नरम चटाई पर रखें। किनारे से सरकाकर उठाएँ।
activity-handle-small-parts-wide-tweezers = चौड़ी, नरम पकड़ वाली चिमटी या चुंबक लें।
activity-handle-small-parts-pauses = थोड़ा करें। फिर हाथ को आराम दें।
activity-handle-small-parts-other-hand = उन्हें दूसरे हाथ से उठाएँ।

activity-feed-baby-name = दूध पिलाते समय बच्चे को पकड़ना
activity-feed-baby-firm-pillow = बच्चे को कड़े तकिए पर लिटाएँ। भार तकिए पर रहे।
activity-feed-baby-straight-wrist = बच्चे का सिर कोहनी के मोड़ में टिकाएँ। कलाई सीधी रखें।
activity-feed-baby-change-sides = बार-बार तरफ़ बदलें। बीच में बाँह सीधी करें।
activity-feed-baby-helper = किसी से कहें कि बच्चे को ठीक जगह लिटाए और पास रहे।

activity-change-nappy-name = डायपर बदलना
activity-change-nappy-easy-tabs = चौड़ी पट्टियों वाले डायपर चुनें जो आसानी से खुलें।
activity-change-nappy-roll-baby = बच्चे को करवट दिलाएँ। दोनों पैर पकड़कर न उठाएँ।
activity-change-nappy-wipes-ready = शुरू करने से पहले सब चीज़ें खोलकर तैयार रखें।
activity-change-nappy-other-hand = पट्टियाँ दूसरे हाथ से लगाएँ, या किसी से डायपर बदलवाएँ।

activity-buckle-child-seat-name = बच्चे की सीट का बकल लगाना
activity-buckle-child-seat-buckle-key = बकल दबाने वाला औज़ार काम में लें।
activity-buckle-child-seat-knuckle = बटन को मुड़ी उँगली के जोड़ से दबाएँ।
activity-buckle-child-seat-helper = दूसरे हाथ से करें, या किसी से कराएँ। देखें कि बकल बंद हो गया।

activity-push-pram-name = बच्चा-गाड़ी धकेलना
activity-push-pram-open-palms = खुली हथेलियों से धकेलें।
activity-push-pram-high-bar = डंडा ऊँचा करें और उस पर गद्दी लगाएँ। निचली बाँहें उस पर टिकाएँ।
activity-push-pram-helper = दूसरे हाथ से धकेलें, या किसी से धकेलने को कहें।

activity-dig-name = खुदाई करना
activity-dig-small-spade = लंबे हत्थे वाला छोटा, हल्का फावड़ा लें।
activity-dig-foot-pushes = फावड़े को पैर से दबाएँ।
activity-dig-short-bouts = हर बार आधा फावड़ा ही भरें। कुछ बार करके रुकें।
activity-dig-helper = किसी से खुदवाएँ। जगह आप बताएँ।

activity-pull-weeds-name = खर-पतवार निकालना
activity-pull-weeds-long-weeder = लंबे, मोटे हत्थे वाली कुदाल या खुरपी लें।
activity-pull-weeds-after-rain = बारिश के बाद निकालें, जब जड़ें आसानी से निकलती हैं।
activity-pull-weeds-short-bouts = थोड़ी जगह करें। फिर हाथ को आराम दें।
activity-pull-weeds-helper = किसी से निकलवाएँ। जगह आप बताएँ।

activity-water-plants-name = पौधों को पानी देना
activity-water-plants-two-hands = फव्वारे को दोनों हाथों से, शरीर से सटाकर पकड़ें।
activity-water-plants-little-water = फव्वारे में थोड़ा ही पानी भरें।
activity-water-plants-hose = ऐसा पाइप लें जिसका हत्था दबाने पर दबा रहे।
activity-water-plants-helper = दूसरे हाथ से पानी दें, या किसी से कहें।

activity-fasten-seat-belt-name = सीट बेल्ट लगाना
activity-fasten-seat-belt-belt-handle = बेल्ट पर ऐसा हत्था लगाएँ जहाँ हाथ आसानी से पहुँचे।
activity-fasten-seat-belt-knuckle = खटके को मुड़ी उँगली के जोड़ से दबाएँ।
activity-fasten-seat-belt-other-hand = बेल्ट दूसरे हाथ से खींचें। किसी से बंद कराएँ।

activity-cycle-name = साइकिल चलाना
activity-cycle-high-bar = हैंडल ऊँचा करें। उस पर नरम, मोटी मूठ लगाएँ।
activity-cycle-short-rides = सपाट रास्ते पर थोड़ी दूर चलाएँ।
activity-cycle-indoor-bike = कसरत वाली साइकिल लें। सीधे बैठें और हाथों को आराम दें।

activity-lift-weights-name = वज़न उठाना
activity-lift-weights-half-weight = आधा वज़न लें। कम बार करें।
activity-lift-weights-forearm-cuff = निचली बाँह पर बँधे पट्टे से खींचें। डंडा न पकड़ें।
activity-lift-weights-legs-only = टाँगों, पेट और कमर की कसरत करें। हाथ में कुछ न पकड़ें।

activity-press-ups-yoga-name = दंड या योग करना
activity-press-ups-yoga-legs-only = ऐसे आसन चुनें जो खड़े होकर, पीठ पर या करवट पर हों।
activity-press-ups-yoga-straight-wrist = जमे हुए हत्थे पकड़ें, ताकि कलाई सीधी रहे।
activity-press-ups-yoga-fewer = दीवार पर टेक लगाएँ, ज़मीन पर नहीं।

activity-swim-name = तैरना
activity-swim-float = निचली बाँहें तैरने वाले तख़्ते पर टिकाएँ। टाँगों से तैरें।
activity-swim-dry-at-once = बाहर आते ही त्वचा और स्प्लिंट सुखाएँ।
activity-swim-short-swim = थोड़ी देर तैरें।

activity-play-guitar-name = गिटार बजाना
activity-play-guitar-light-strings = पतले तार लगाएँ जिन्हें कम दबाना पड़े।
activity-play-guitar-neck-higher = गिटार की गर्दन पट्टे से ऊँची रखें। कलाई सीधी रखें।
activity-play-guitar-short-bouts = एक गाना बजाएँ। फिर हाथ को आराम दें।

activity-sleep-position-name = सोना
activity-sleep-position-splint-on = जब यह गाइड कहे, तब रात में स्प्लिंट पहनें।
activity-sleep-position-arm-on-pillow = बाँह को बग़ल में तकिए पर रखें, उतनी ही सीधी जितनी आसान हो।
activity-sleep-position-soft-towel = कोहनी पर नरम तौलिया ढीला लपेटें, ताकि वह कम मुड़े।

activity-hold-phone-to-ear-name = फ़ोन कान से लगाना
activity-hold-phone-to-ear-loudspeaker = स्पीकर या हेडसेट काम में लें। फ़ोन नीचे रखें।
activity-hold-phone-to-ear-short-calls = कम देर बात करें। बीच में बाँह सीधी करें।
activity-hold-phone-to-ear-other-hand = फ़ोन दूसरे हाथ में पकड़ें।
