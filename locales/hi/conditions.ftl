### Conditions: the name, what is wrong, and what the splint does.

condition-de-quervain-name = कलाई पर अंगूठे की दुखती डोरियाँ (de Quervain)
condition-de-quervain-what = आपके अंगूठे की दो डोरियाँ कलाई की तंग नली में रगड़ खाती हैं। वे दुखती और सूजी हैं।
condition-de-quervain-aim = स्प्लिंट कलाई और अंगूठे को हिलने से रोकता है। इससे दुखती डोरियों को आराम मिलता है।

condition-thumb-ucl-acute-name = अंगूठे के हथेली के पास के जोड़ का फटा बंध
condition-thumb-ucl-acute-what = अंगूठे के हथेली के पास के जोड़ की अंदर की तरफ़ का बंध फट गया है। उसे बग़ल के धक्के के बिना ठीक होना है।
condition-thumb-ucl-acute-aim = बंध के ठीक होने तक स्प्लिंट उसे बचाता है। यह अंगूठे को बाहर की तरफ़ धकेले जाने से रोकता है।

condition-thumb-ucl-chronic-name = अंगूठे के हथेली के पास के जोड़ का ढीलापन
condition-thumb-ucl-chronic-what = बंध पहले कभी फटा था, इसलिए अंगूठे का हथेली के पास का जोड़ ढीला है। चुटकी लेने पर वह खिसकता है।
condition-thumb-ucl-chronic-aim = हाथ से काम करते समय स्प्लिंट अंगूठे के हथेली के पास के जोड़ को थामे रखता है।

condition-thumb-cmc-osteoarthritis-name = अंगूठे की जड़ का घिसा जोड़
condition-thumb-cmc-osteoarthritis-what = अंगूठे की जड़ का जोड़ घिस गया है। चुटकी लेने पर वह खिसकता और दुखता है।
condition-thumb-cmc-osteoarthritis-aim = स्प्लिंट अंगूठे की जड़ को थामे रखता है। इससे काम आसान हो सकते हैं और दर्द कम हो सकता है।
