### Conditions of the fingers.

condition-trigger-finger-name = अटकने वाली उँगली (trigger finger)
condition-trigger-finger-what = उँगली मोड़ने वाली डोरी हथेली में एक नली से गुज़रती है। वहाँ वह बहुत मोटी है और अटकती या फँसती है।
condition-trigger-finger-aim = स्प्लिंट उँगली को कम मुड़ने देता है। तब डोरी नली में कम रगड़ती है और आराम पा सकती है।

condition-mallet-tendon-name = उँगली का झुका सिरा, फटी डोरी (mallet finger)
condition-mallet-tendon-what = उँगली का सिरा उठाने वाली पतली डोरी फट गई है। उसके छोर तभी जुड़ते हैं जब सिरा कभी न झुके।
condition-mallet-tendon-aim = डोरी के ठीक होने तक स्प्लिंट उँगली का सिरा सीधा रखता है।

condition-mallet-bony-name = उँगली का झुका सिरा, हड्डी का टुकड़ा (mallet finger)
condition-mallet-bony-what = उँगली का सिरा उठाने वाली डोरी ने हड्डी का टुकड़ा उखाड़ दिया है। टुकड़ा तभी जुड़ता है जब सिरा न हिले।
condition-mallet-bony-aim = हड्डी के जुड़ने तक स्प्लिंट उँगली का सिरा सीधा रखता है।

condition-boutonniere-acute-name = बीच के जोड़ के ऊपर की फटी डोरी
condition-boutonniere-acute-what = उँगली का बीच का जोड़ सीधा करने वाली डोरी फट गई है। हर बार मुड़ने से उसके छोर दूर होते हैं।
condition-boutonniere-acute-aim = स्प्लिंट बीच का जोड़ सीधा रखता है। उँगली का सिरा खुला रहता है, और उसे मोड़ने से डोरी को फ़ायदा होता है।

condition-boutonniere-chronic-name = डोरी पहले फटने से मुड़ा बीच का जोड़
condition-boutonniere-chronic-what = डोरी पहले फटी थी, इसलिए उँगली का बीच का जोड़ मुड़ा रह गया। वह अकड़ गया है।
condition-boutonniere-chronic-aim = स्प्लिंट जोड़ को धीरे-धीरे और हल्के से सीधा करने का काम करता है। बाद में उसे वैसा ही रखता है।

condition-swan-neck-name = पीछे मुड़ने वाला बीच का जोड़ (swan neck)
condition-swan-neck-what = उँगली का बीच का जोड़ पीछे खिसककर वहीं अटक जाता है। तब मुट्ठी बनाना मुश्किल होता है।
condition-swan-neck-aim = स्प्लिंट जोड़ को पीछे जाने से रोकता है। उसे मोड़ा जा सकता है।

condition-pip-volar-plate-name = चोट लगी उँगली, बीच के जोड़ की हथेली वाली तरफ़
condition-pip-volar-plate-what = बीच के जोड़ में हथेली की तरफ़ की मज़बूत परत में चोट है। पीछे मुड़ने से उसे फिर चोट लगती है।
condition-pip-volar-plate-aim = स्प्लिंट जोड़ को पीछे जाने से बचाता है। उसे आम तरीक़े से मोड़ना फ़ायदेमंद है।

condition-pip-collateral-sprain-name = बीच के जोड़ की बग़ल की मोच
condition-pip-collateral-sprain-what = बीच के जोड़ की बग़ल का बंध खिंच गया है या थोड़ा फट गया है। बग़ल के धक्के उसे खोलते हैं।
condition-pip-collateral-sprain-aim = बंध के ठीक होने तक स्प्लिंट जोड़ को बग़ल के धक्कों से बचाता है।

condition-pip-flexion-contracture-name = अकड़ा और मुड़ा बीच का जोड़
condition-pip-flexion-contracture-what = बीच के जोड़ की हथेली वाली तरफ़ की त्वचा और बंध छोटे हो गए हैं। उँगली सीधी नहीं होती।
condition-pip-flexion-contracture-aim = स्प्लिंट जोड़ को हल्के से सीधे की ओर थामता है। देर तक हल्का खिंचाव थोड़ी देर के ज़ोर से बेहतर है।

condition-dip-osteoarthritis-name = उँगली के सिरे का घिसा जोड़
condition-dip-osteoarthritis-what = उँगली का आख़िरी जोड़ घिस गया है। वह दुख सकता है और उस पर गाँठें हो सकती हैं।
condition-dip-osteoarthritis-aim = स्प्लिंट रात में जोड़ को आराम देता है। इससे दर्द कम हो सकता है।

condition-sagittal-band-injury-name = हथेली के पास के जोड़ के ऊपर का फटा बंध
condition-sagittal-band-injury-what = एक छोटा बंध डोरी को हथेली के पास के जोड़ के ऊपर रखता है। वह फट गया है, और मुट्ठी में डोरी खिसक जाती है।
condition-sagittal-band-injury-aim = स्प्लिंट हथेली के पास के जोड़ को ज़्यादा मुड़ने से रोकता है। बंध के ठीक होने तक डोरी ऊपर रहती है।

condition-fifth-metacarpal-neck-fracture-name = छोटी उँगली के नीचे की टूटी हड्डी
condition-fifth-metacarpal-neck-fracture-what = छोटी उँगली के नीचे की, हथेली की हड्डी टूटी है। वह हथेली के पास के जोड़ के नज़दीक टूटी है। हड्डी को फिर जुड़ना है।
condition-fifth-metacarpal-neck-fracture-aim = हड्डी के जुड़ने तक स्प्लिंट उसे बचाता है। इससे यह मदद भी मिलती है कि उँगली न घूमे।

condition-proximal-phalanx-fracture-name = उँगली की हथेली के पास वाली टूटी हड्डी
condition-proximal-phalanx-fracture-what = हथेली के पास के जोड़ और बीच के जोड़ के बीच की हड्डी टूटी है। उसे फिर जुड़ना है।
condition-proximal-phalanx-fracture-aim = हड्डी के जुड़ने तक स्प्लिंट उसे जगह पर रखता है। यह जोड़ों को ऐसे थामता है कि वे कम अकड़ें।
