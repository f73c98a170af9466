### Conditions of the thumb and wrist.

condition-wrist-thumb-around-birth-name = बच्चे के जन्म के आसपास अंगूठे की दुखती डोरियाँ
condition-wrist-thumb-around-birth-what = आपके अंगूठे की दो डोरियाँ कलाई पर रगड़ खाती हैं। बच्चे को उठाने और दूध पिलाने से वे दुख सकती हैं।
condition-wrist-thumb-around-birth-aim = स्प्लिंट रात में और उठाते समय कलाई और अंगूठे को आराम देता है। इससे बच्चे की देखभाल में दर्द कम हो सकता है।

condition-intersection-syndrome-name = कलाई के ऊपर रगड़ खाती डोरियाँ
condition-intersection-syndrome-what = कलाई और अंगूठे की डोरियाँ कलाई के ऊपर एक-दूसरी को पार करती हैं। वे वहाँ रगड़ खाती और दुखती हैं।
condition-intersection-syndrome-aim = स्प्लिंट कलाई को हिलने से रोकता है। इससे दुखती डोरियों को आराम मिलता है।

condition-thumb-rcl-injury-name = अंगूठे के हथेली के पास के जोड़ का बाहर की तरफ़ का फटा बंध
condition-thumb-rcl-injury-what = अंगूठे के हथेली के पास के जोड़ की बाहर की तरफ़ का बंध फट गया है। उसे उँगलियों की तरफ़ के धक्के के बिना ठीक होना है।
condition-thumb-rcl-injury-aim = बंध के ठीक होने तक स्प्लिंट उसे बचाता है। यह अंगूठे को अंदर, उँगलियों की तरफ़ धकेले जाने से रोकता है।

condition-thumb-cmc-arthroplasty-name = अंगूठे की जड़ के ऑपरेशन के बाद
condition-thumb-cmc-arthroplasty-what = आपके अंगूठे की जड़ के जोड़ का ऑपरेशन हुआ है। नया जोड़ नरम है और अभी ठीक हो रहा है।
condition-thumb-cmc-arthroplasty-aim = स्प्लिंट अंगूठे को हथेली से दूर रखता है। इससे ठीक होते समय नया जोड़ बचा रहता है।

condition-hypermobile-thumb-name = ज़्यादा मुड़ने वाला अंगूठा
condition-hypermobile-thumb-what = दबाने या चुटकी लेने पर अंगूठे का हथेली के पास का जोड़ बहुत पीछे मुड़ता है। इससे वह दुखता और थकता है।
condition-hypermobile-thumb-aim = मेहनत के कामों में स्प्लिंट अंगूठे के हथेली के पास के जोड़ को पीछे मुड़ने से रोकता है। यह माँसपेशियों की मदद करता है, पर उनकी जगह नहीं लेता।

condition-trigger-thumb-name = अटकने वाला अंगूठा (trigger thumb)
condition-trigger-thumb-what = अंगूठे को मोड़ने वाली डोरी मोटी है और अपनी नली में अटकती है। अंगूठा खट से चलता है या अटक जाता है।
condition-trigger-thumb-aim = स्प्लिंट अंगूठे का एक जोड़ सीधा रखता है। डोरी कम सरकती है, तो दुखती जगह को आराम मिल सकता है।

condition-epl-repair-name = अंगूठा उठाने वाली जोड़ी गई डोरी
condition-epl-repair-what = आपका अंगूठा उठाने वाली डोरी जोड़ी गई है। पूरी तरह ठीक होने तक वह कमज़ोर है।
condition-epl-repair-aim = स्प्लिंट अंगूठे को ऊपर और कलाई को पीछे मुड़ा रखता है। इससे जोड़ी गई डोरी पर खिंचाव नहीं पड़ता।

condition-fpl-repair-name = अंगूठा मोड़ने वाली जोड़ी गई डोरी
condition-fpl-repair-what = आपका अंगूठा मोड़ने वाली डोरी जोड़ी गई है। पूरी तरह ठीक होने तक वह कमज़ोर है।
condition-fpl-repair-aim = स्प्लिंट अंगूठे को बहुत सीधा होने से रोकता है। इससे जोड़ी गई डोरी पर खिंचाव नहीं पड़ता।

condition-ecu-tendinopathy-name = कलाई पर छोटी उँगली की तरफ़ की दुखती डोरी
condition-ecu-tendinopathy-what = कलाई पर छोटी उँगली की तरफ़ की एक डोरी दुखती है। हाथ झुकाने और घुमाने से दर्द बढ़ता है।
condition-ecu-tendinopathy-aim = स्प्लिंट कलाई को झुकने से रोकता है। इससे दुखती डोरी को आराम मिलता है।

condition-wrist-sprain-name = कलाई की मोच
condition-wrist-sprain-what = कलाई को थामने वाले बंध खिंच गए हैं। हड्डियाँ अपनी जगह पर हैं।
condition-wrist-sprain-aim = हाथ से काम करते समय स्प्लिंट कलाई को हिलने से रोकता है। इससे बंध ठीक हो पाते हैं।

condition-tfcc-injury-name = कलाई की फटी गद्दी
condition-tfcc-injury-what = कलाई में छोटी उँगली की तरफ़ की एक छोटी गद्दी फट गई है। बाँह घुमाने से वह रगड़ खाती है।
condition-tfcc-injury-aim = स्प्लिंट बाँह को घूमने और कलाई को झुकने से रोकता है। इससे गद्दी को आराम मिलता है।

condition-scaphoid-after-cast-name = अंगूठे की तरफ़ की कलाई की टूटी हड्डी, प्लास्टर के बाद
condition-scaphoid-after-cast-what = आपकी कलाई की एक छोटी हड्डी टूटी थी। वह जुड़ गई है, पर अभी मज़बूत नहीं है।
condition-scaphoid-after-cast-aim = स्प्लिंट रात में, बाहर और भीड़ में हड्डी को बचाता है।

condition-distal-radius-after-cast-name = टूटी कलाई, प्लास्टर के बाद
condition-distal-radius-after-cast-what = कलाई के पास आपकी बाँह की बड़ी हड्डी टूटी थी। वह जुड़ गई है, पर अभी मज़बूत नहीं है।
condition-distal-radius-after-cast-aim = स्प्लिंट रात में, बाहर और उठाते समय कलाई को बचाता है। कलाई हिलाने के लिए उसे उतारा जाता है।

avoid-thumb-ip-flexion = अंगूठे का सिरा न मोड़ें।
avoid-thumb-ip-extension = अंगूठे का सिरा सीधा न करें।
avoid-thumb-cmc-flexion = अंगूठे को हथेली के ऊपर से छोटी उँगली की ओर न ले जाएँ।
avoid-forearm-any = हथेली को न ऊपर घुमाएँ, न नीचे।

support-forearm-thumb-up = स्प्लिंट उतरा हो, तब निचली बाँह मेज़ पर टिकाएँ। अंगूठा ऊपर की ओर रखें। बाँह न घुमाएँ। इस हाथ से काम न लें।
