### More conditions.

condition-flexor-zone-two-repair-name = उँगली मोड़ने वाली जोड़ी गई डोरी
condition-flexor-zone-two-repair-what = उँगली मोड़ने वाली डोरियाँ कट गई थीं और सिली गई हैं। पकड़ने से, या उँगली खींचकर सीधी करने से टाँके टूट सकते हैं।
condition-flexor-zone-two-repair-aim = टाँकों के ठीक होने तक स्प्लिंट उन्हें बचाता है। यह उँगलियों को बहुत सीधा होने से रोकता है।
condition-extensor-zone-three-repair-name = उँगली के बीच के जोड़ के ऊपर जोड़ी गई डोरी
condition-extensor-zone-three-repair-what = बीच का जोड़ सीधा करने वाली डोरी कट गई थी और सिली गई है। एक बार मुड़ने से भी टाँके खुल सकते हैं।
condition-extensor-zone-three-repair-aim = डोरी के ठीक होने तक स्प्लिंट बीच का जोड़ सीधा रखता है।
condition-extensor-zone-five-six-repair-name = हाथ की पीठ पर जोड़ी गई डोरी
condition-extensor-zone-five-six-repair-what = उँगली उठाने वाली डोरी कट गई थी और सिली गई है। पूरी मुट्ठी से टाँके खुल सकते हैं।
condition-extensor-zone-five-six-repair-aim = स्प्लिंट उँगली का हथेली के पास का जोड़ ऊपर रखता है। इससे टाँकों पर खिंचाव नहीं पड़ता।

condition-carpal-tunnel-name = कलाई पर दबी तंत्रिका (carpal tunnel)
condition-carpal-tunnel-what = कलाई की तंग नली से एक तंत्रिका गुज़रती है। मुड़ी कलाई उसे दबाती है, सबसे ज़्यादा नींद में।
condition-carpal-tunnel-aim = स्प्लिंट कलाई सीधी रखता है। इससे तंत्रिका को ज़्यादा जगह मिलती है।
condition-carpal-tunnel-release-name = कलाई की दबी तंत्रिका के ऑपरेशन के बाद
condition-carpal-tunnel-release-what = कलाई की नली की छत खोली गई है। घाव को भरना है, और उँगलियों को हिलना है।
condition-carpal-tunnel-release-aim = स्प्लिंट पहले कुछ दिन कलाई को आराम देता है। उँगलियाँ हिल सकती हैं।
condition-cubital-tunnel-name = कोहनी पर दबी तंत्रिका
condition-cubital-tunnel-what = एक तंत्रिका कोहनी की अंदर की तरफ़ से गुज़रती है। कोहनी ज़्यादा मोड़ने या उस पर टेक लगाने से तंत्रिका पर ज़ोर पड़ता है।
condition-cubital-tunnel-aim = स्प्लिंट रात में कोहनी को ज़्यादा मुड़ने से रोकता है। दिन में कोहनी पर टेक न लगाएँ।
condition-radial-nerve-palsy-name = लटकी कलाई
condition-radial-nerve-palsy-what = कलाई और उँगलियाँ उठाने वाली तंत्रिका अभी काम नहीं कर रही। हाथ नीचे लटकता है।
condition-radial-nerve-palsy-aim = स्प्लिंट कलाई को ऊपर रहने में मदद करता है। तब उँगलियाँ बेहतर पकड़ सकती हैं।
condition-median-nerve-palsy-low-name = अंगूठा जो हथेली से दूर नहीं उठता
condition-median-nerve-palsy-low-what = अंगूठे के नीचे की माँसपेशी की तंत्रिका अभी काम नहीं कर रही। हाथ के कुछ हिस्से सुन्न लग सकते हैं।
condition-median-nerve-palsy-low-aim = स्प्लिंट अंगूठे के पास की जगह खुली रखता है। अंगूठा ऐसी जगह रहता है जहाँ वह काम आ सके।
condition-ulnar-nerve-palsy-name = पंजे जैसी मुड़ी अनामिका और छोटी उँगली
condition-ulnar-nerve-palsy-what = हाथ की छोटी माँसपेशियों की तंत्रिका अभी काम नहीं कर रही। अनामिका और छोटी उँगली पंजे की तरह मुड़ती हैं।
condition-ulnar-nerve-palsy-aim = स्प्लिंट हथेली के पास के जोड़ों को पीछे मुड़ने से रोकता है। तब ये उँगलियाँ बेहतर सीधी हो सकती हैं।

condition-lateral-elbow-name = कोहनी की बाहर की तरफ़ की दुखती डोरियाँ
condition-lateral-elbow-what = कलाई उठाने वाली माँसपेशियाँ कोहनी से शुरू होती हैं। वहाँ उनकी डोरियाँ दुखती हैं, सबसे ज़्यादा पकड़ने और उठाने पर।
condition-lateral-elbow-aim = काम करते समय स्प्लिंट दुखती डोरियों का कुछ खिंचाव कम करता है।

condition-dupuytren-release-name = मुड़ी उँगली के ऑपरेशन के बाद (Dupuytren)
condition-dupuytren-release-what = हथेली की तनी पट्टियाँ काटी गई हैं, ताकि उँगली खुल सके। घाव का निशान उसे फिर अंदर खींच सकता है।
condition-dupuytren-release-aim = स्प्लिंट रात में उँगली को वहाँ थामता है जहाँ उसे आराम है। यह उँगली खुली रखने में मदद करता है।
condition-rheumatoid-knuckle-drift-name = बग़ल में झुकती उँगलियाँ (rheumatoid)
condition-rheumatoid-knuckle-drift-what = हथेली के पास के जोड़ों की बग़ल के बंध ढीले हैं। उँगलियाँ छोटी उँगली की तरफ़ झुकती हैं।
condition-rheumatoid-knuckle-drift-aim = हाथ से काम करते समय स्प्लिंट उँगलियों को सीध में रखता है। यह झुकाव को नहीं रोकता।
condition-rheumatoid-wrist-name = कलाई का दुखता जोड़ (rheumatoid)
condition-rheumatoid-wrist-what = गठिया की बीमारी (rheumatoid) से कलाई का जोड़ दुखता और सूजा है।
condition-rheumatoid-wrist-aim = स्प्लिंट कलाई को थामे रखता है। इससे आराम में और काम में दर्द कम हो सकता है।
condition-stroke-tight-hand-name = स्ट्रोक के बाद जकड़ा हाथ
condition-stroke-tight-hand-what = स्ट्रोक के बाद हाथ बंद करने वाली माँसपेशियाँ बहुत खींचती हैं। हाथ खोलना मुश्किल है।
condition-stroke-tight-hand-aim = स्प्लिंट हाथ को आधा खुला रखकर आराम देता है। इससे आराम मिल सकता है और हथेली की त्वचा साफ़ रखने में मदद हो सकती है।

condition-dorsal-hand-burn-name = हाथ की पीठ का जलना
condition-dorsal-hand-burn-what = हाथ की पीठ की त्वचा जल गई है। भरते समय त्वचा छोटी होती है और हाथ को खींचकर टेढ़ा कर सकती है।
condition-dorsal-hand-burn-aim = स्प्लिंट हथेली के पास के जोड़ मुड़े और उँगलियाँ सीधी रखता है। इस आकार में नई त्वचा लंबी रहती है।
condition-palmar-hand-burn-name = हथेली का जलना
condition-palmar-hand-burn-what = हथेली की त्वचा जल गई है। भरते समय त्वचा छोटी होती है और हाथ को खींचकर बंद कर सकती है।
condition-palmar-hand-burn-aim = स्प्लिंट हथेली और उँगलियाँ खुली रखता है। इस आकार में नई त्वचा लंबी रहती है।

avoid-wrist-extension = कलाई पीछे न मोड़ें।
avoid-wrist-flexion = कलाई आगे न मोड़ें।
avoid-fingers-mcp-flexion = हथेली के पास के जोड़ न मोड़ें।
avoid-fingers-mcp-ulnar-deviation = उँगलियों को छोटी उँगली की तरफ़ न धकेलें।
avoid-fingers-pip-flexion = उँगलियों के बीच के जोड़ न मोड़ें।
