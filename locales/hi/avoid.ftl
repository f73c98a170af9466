### Movements to leave out for now. "दुखती उँगली" is the finger that is treated.

avoid-finger-dip-any = दुखती उँगली का सिरा न हिलाएँ।
avoid-finger-mcp-any = दुखती उँगली का हथेली के पास का जोड़ न हिलाएँ।
avoid-finger-mcp-flexion = दुखती उँगली का हथेली के पास का जोड़ उससे ज़्यादा न मोड़ें जितना स्प्लिंट मुड़ने दे।
avoid-finger-pip-any = दुखती उँगली का बीच का जोड़ न हिलाएँ।
avoid-finger-pip-flexion = दुखती उँगली का बीच का जोड़ न मोड़ें, जब तक यहाँ की कोई कसरत ऐसा न कहे।
avoid-finger-pip-extension = दुखती उँगली के बीच के जोड़ को दबाकर सीधा न करें, न पीछे धकेलें।
avoid-finger-pip-radial-deviation = दुखती उँगली को बग़ल में, अंगूठे की तरफ़ न धकेलें।
avoid-finger-pip-ulnar-deviation = दुखती उँगली को बग़ल में, छोटी उँगली की तरफ़ न धकेलें।
avoid-fingers-mcp-extension = उँगलियों को खींचकर सीधा न करें। इस हाथ से कुछ न पकड़ें, न उठाएँ।
