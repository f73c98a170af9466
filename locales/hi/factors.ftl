### What is special about a person.

factor-numb-skin-look = आँखों पर भरोसा करें, महसूस होने पर नहीं। हाथ चारों तरफ़ से देखें। शीशा काम आ सकता है।
factor-numb-skin-strap-room = हर फ़ीते के नीचे दूसरे हाथ की उँगली का सिरा सरकाएँ। वह अंदर आना चाहिए।
factor-numb-skin-hot-and-sharp = गर्म चीज़ें दूसरे हाथ से जाँचें। सुन्न त्वचा को नुकीली चीज़ों से दूर रखें।

factor-fragile-skin-no-tape = त्वचा पर न टेप लगाएँ, न चिपकने वाली गद्दी।
factor-fragile-skin-lift = स्प्लिंट धीरे से उतारें। उसे त्वचा पर न रगड़ खाने दें, न घिसटने दें।
factor-fragile-skin-sleeve = स्प्लिंट के नीचे चिकनी, सूखी सूती आस्तीन पहनें। उसे रोज़ बदलें।

factor-swelling-raise = बैठते समय हाथ दिल से ऊँचा टिकाएँ।
factor-swelling-loosen = फ़ीता कसने लगे, तो थोड़ा ढीला करें। सूजन उतरे, तो फिर बंद करें।
factor-swelling-pump = जो उँगलियाँ खुली हैं, उन्हें बार-बार हिलाएँ। इससे सूजन उतरने में मदद मिलती है।

factor-diabetes-any-break = त्वचा ज़रा भी खुले या कटे, तो उसी दिन हमें फ़ोन करें।

# For people who take something against clotting. No medicine is named, and none is to be stopped.
factor-blood-thinners-bruise = स्प्लिंट के नीचे का नील बढ़े, तो आज ही हमें फ़ोन करें।
factor-blood-thinners-no-rubbing = हाथ को ज़ोर से न रगड़ें। उसे टक्कर से बचाएँ।

factor-low-vision-check = दूसरे हाथ से टटोलें कि कोई जगह गर्म, सख़्त, गीली या दुखती तो नहीं। किसी और से भी त्वचा दिखवाएँ।
factor-low-vision-dots = हमसे फ़ीतों पर उभरे बिंदु लगवाएँ। उनसे फ़ीते पहचाने जाते हैं।

factor-lives-alone-table = बाँह मेज़ पर टिकाएँ। दूसरा हाथ काम करे, तब मेज़ स्प्लिंट को थामे।
factor-lives-alone-ready = ढीले कपड़े और आसान खाना तैयार रखें।
factor-lives-alone-phone = हमारा फ़ोन नंबर बिस्तर के पास रखें।

factor-night-work-main-sleep = इस गाइड में रात का मतलब है आपकी मुख्य नींद।
factor-night-work-after-sleep = पहली कसरतें अपनी मुख्य नींद के बाद करें।

factor-neoprene-allergy-itch = त्वचा में ज़रा भी खुजली हो, तो हमें फ़ोन करें।
factor-neoprene-allergy-spare-parts = फ़ोम रबर का और कुछ न लगाएँ: न गद्दी, न दस्ताना, न पट्टा।

factor-new-mother-flat-hands = बच्चे को सपाट हाथों से उठाएँ और दूध पिलाएँ। अंगूठे उँगलियों से सटाकर रखें।
factor-new-mother-strap-room = हाथ सूज सकता है। रोज़ देखें कि हर फ़ीते के नीचे उँगली का सिरा आ जाए।
factor-new-mother-edges = बच्चे को पकड़ने से पहले सख़्त किनारे साफ़ कपड़े से ढकें।
