### Splints of the thumb, the wrist, the arm and the whole hand. Every name ends in the masculine "स्प्लिंट", bands and cushion too.
### "Big knuckle" of a finger is हथेली के पास का जोड़, "knuckle of the thumb" is अंगूठे का हथेली के पास का जोड़.

## Names of wrist splints
## The name stands inside sentences; the short form is a label in tables.

orthosis-wrist-neutral-name = सीधी कलाई का स्प्लिंट
orthosis-wrist-neutral-short = कलाई, सीधी
orthosis-wrist-dorsal-shell-name = हाथ की पीठ वाला कलाई स्प्लिंट
orthosis-wrist-dorsal-shell-short = कलाई, हाथ की पीठ
orthosis-wrist-all-round-name = चारों ओर का कलाई स्प्लिंट
orthosis-wrist-all-round-short = कलाई, चारों ओर
orthosis-wrist-soft-stay-name = सख़्त पट्टी वाला नरम कलाई स्प्लिंट
orthosis-wrist-soft-stay-short = नरम कलाई, सख़्त पट्टी
orthosis-wrist-soft-wrap-name = नरम कलाई स्प्लिंट
orthosis-wrist-soft-wrap-short = नरम, कलाई

## Names of thumb splints

orthosis-forearm-thumb-spica-tip-name = सिरे तक का लंबा अंगूठा स्प्लिंट
orthosis-forearm-thumb-spica-tip-short = निचली बाँह और पूरा अंगूठा
orthosis-thumb-knuckle-shell-name = अंगूठे के हथेली के पास के जोड़ का स्प्लिंट
orthosis-thumb-knuckle-shell-short = अंगूठे का हथेली के पास का जोड़
orthosis-thumb-mcp-ring-name = अंगूठे का छल्ला स्प्लिंट
orthosis-thumb-mcp-ring-short = अंगूठे का छल्ला
orthosis-thumb-tip-cap-name = अंगूठे के सिरे का स्प्लिंट
orthosis-thumb-tip-cap-short = अंगूठे का सिरा
# It keeps the space between thumb and index finger open.
orthosis-thumb-web-spacer-name = अंगूठे और तर्जनी के बीच का स्प्लिंट
orthosis-thumb-web-spacer-short = अंगूठे के पास की जगह
# Its roof keeps the thumb from straightening too far.
orthosis-thumb-dorsal-block-name = छत वाला अंगूठा स्प्लिंट
orthosis-thumb-dorsal-block-short = अंगूठा, छत
# It holds the thumb up, away from the palm.
orthosis-thumb-raised-long-name = अंगूठा उठाए रखने वाला स्प्लिंट
orthosis-thumb-raised-long-short = अंगूठा, उठा हुआ

## Names of arm splints and bands

orthosis-long-arm-rotation-name = लंबा बाँह स्प्लिंट
orthosis-long-arm-rotation-short = कोहनी से हाथ तक
orthosis-elbow-night-shell-name = रात का कोहनी स्प्लिंट
orthosis-elbow-night-shell-short = कोहनी, रात
orthosis-counterforce-band-name = निचली बाँह का पट्टा स्प्लिंट
orthosis-counterforce-band-short = निचली बाँह का पट्टा
orthosis-distal-ulna-strap-name = कलाई का मज़बूत पट्टा स्प्लिंट
orthosis-distal-ulna-strap-short = कलाई का पट्टा

## Names of splints for wrist and fingers

# Cords join wrist and fingers, so that each helps the other to move.
orthosis-tenodesis-assist-name = कलाई और उँगलियों की मदद करने वाला स्प्लिंट
orthosis-tenodesis-assist-short = कलाई-उँगली मददगार
# Elastic pulls lift the fingers at the big knuckles.
orthosis-dynamic-knuckle-extension-name = उँगलियाँ उठाने वाला स्प्लिंट
orthosis-dynamic-knuckle-extension-short = उँगलियाँ उठाए
orthosis-palm-shell-wrist-knuckles-name = कलाई और हथेली के पास के जोड़ों का स्प्लिंट
orthosis-palm-shell-wrist-knuckles-short = कलाई, हथेली के पास के जोड़
orthosis-resting-hand-name = हाथ को आराम देने वाला स्प्लिंट
orthosis-resting-hand-short = हाथ का आराम
orthosis-intrinsic-plus-shell-name = हथेली के पास के जोड़ मोड़े रखने वाला हाथ स्प्लिंट
orthosis-intrinsic-plus-shell-short = हाथ, हथेली के पास के जोड़ मुड़े
orthosis-palm-extension-pan-name = खुली हथेली का स्प्लिंट
orthosis-palm-extension-pan-short = खुली हथेली
orthosis-spread-hand-cushion-name = नरम गद्दी वाला हाथ स्प्लिंट
orthosis-spread-hand-cushion-short = हाथ की गद्दी

## Straps
## Each name is put into "… बंद करें" and "… खोलें", without a case ending.

strap-near-elbow = कोहनी के पास का फ़ीता
strap-upper-arm = ऊपरी बाँह का फ़ीता
strap-hand-back = हाथ की पीठ पर का फ़ीता
strap-across-fingers = उँगलियों पर का फ़ीता
strap-across-fingertips = उँगलियों के सिरों के पास का फ़ीता
# A band has one strap, which pulls it snug.
strap-band = पट्टे का फ़ीता

## Places to look at in the skin check

spot-wrist-palm-side = कलाई की हथेली वाली तरफ़
spot-wrist-back = कलाई की पीठ
spot-forearm-thumb-side = निचली बाँह की अंगूठे वाली तरफ़, कलाई से ज़रा कोहनी की ओर
spot-knuckle-backs = हथेली के पास के जोड़ों की पीठ
spot-middle-joint-backs = उँगलियों के बीच के जोड़ों की पीठ
spot-palm-below-knuckles = हथेली, उँगलियों से ठीक नीचे
spot-palm-middle = हथेली का बीच
spot-splint-end-at-fingers = उँगलियाँ, जहाँ स्प्लिंट ख़त्म होता है
spot-between-fingers = उँगलियों के बीच की त्वचा
spot-fingertips = उँगलियों के सिरे
spot-hand-edge-little-finger = हाथ का छोटी उँगली वाला किनारा
spot-loop-edges = उँगलियों के छल्लों के नीचे की त्वचा
spot-thumb-hole = अंगूठे के छेद के चारों ओर की त्वचा
spot-thumb-ball = हथेली का मोटा हिस्सा, अंगूठे के नीचे
spot-thumb-pad = अंगूठे के सिरे की नरम गद्दी
spot-thumb-tip-joint-back = अंगूठे के सिरे के जोड़ की पीठ
spot-thumbnail-edge = अंगूठे के नाख़ून के चारों ओर की त्वचा
spot-ring-crossing = त्वचा, जहाँ छल्ला ख़ुद को पार करता है
spot-bar-end-in-palm = हथेली, जहाँ सख़्त पट्टी ख़त्म होती है
spot-wrap-edge = नरम हिस्से के किनारों की त्वचा
spot-forearm-under-band = पट्टे के नीचे की निचली बाँह
spot-band-pad = पट्टे की गद्दी के नीचे की त्वचा
spot-elbow-point = कोहनी की नोक
spot-elbow-inner-groove = कोहनी की अंदर की तरफ़ का गड्ढा
spot-elbow-crease = कोहनी के सामने की लकीर
spot-upper-arm-edge = ऊपरी बाँह, जहाँ स्प्लिंट ख़त्म होता है

## Getting ready
## One action a step. The other hand does the work.

step-wash-other-hand = दूसरा हाथ धोएँ और अच्छी तरह सुखाएँ।
# For a splint that may only be changed by two people.
step-wait-for-helper = यह अकेले न करें। सिखाए गए मददगार के आने तक रुकें।
step-ask-helper-if-possible = हो सके, तो किसी से मदद माँगें।
step-loop-straps-first = शुरू करने से पहले हर फ़ीता उसके छल्ले में डालें।
step-lay-open-on-table = खुला स्प्लिंट मेज़ पर रखें।
step-hold-between-knees = खुला स्प्लिंट घुटनों के बीच पकड़ें।
step-lay-opening-towards-you = स्प्लिंट मेज़ पर रखें, उसका मुँह आपकी ओर रहे।
step-palm-down-on-table = हथेली मेज़ पर रखें।
step-sit-at-table = मेज़ के पास बैठें।

## Wrist splints: putting them on and taking them off

step-lay-splint-on-back = स्प्लिंट को हाथ और निचली बाँह की पीठ पर रखें।
# With one hand: the splint lies on the table with its hollow side up.
step-lay-back-of-arm-in = हाथ और निचली बाँह की पीठ उसमें रखें।
step-press-into-splint = बाँह को धीरे से स्प्लिंट में नीचे दबाएँ।
step-pull-splint-open = स्प्लिंट को थोड़ा खींचकर खोलें।
step-slip-wrist-in = कलाई बग़ल से अंदर सरकाएँ।
step-slip-wrist-out = कलाई बाहर सरकाएँ। उसे मरोड़ें नहीं।
# The bar is a flat stiff strip inside a soft splint.
step-bar-on-palm-side = स्प्लिंट को घुमाएँ, ताकि उसकी सख़्त पट्टी हथेली की तरफ़ रहे।
step-slide-hand-in = हाथ स्प्लिंट में सरकाएँ।
step-thumb-through-hole = अंगूठा उसके छेद में से निकालें।
step-slide-off-hand = स्प्लिंट को हाथ से सरकाकर निकालें। घसीटें नहीं।
step-wrap-round-wrist = स्प्लिंट को कलाई पर लपेटें।
step-lay-wrist-on-wrap = कलाई को स्प्लिंट के बीच में रखें।
step-hold-wrap-on-table = हाथ मेज़ पर दबाएँ, ताकि स्प्लिंट न हिले।
step-unwrap = स्प्लिंट खोलें। खींचकर न उतारें।

## Thumb splints: putting them on and taking them off

step-push-on-with-table-edge = स्प्लिंट को मेज़ के किनारे से धीरे से दबाकर बैठाएँ।
step-keep-thumb-beside-index = अंगूठा तर्जनी से सटाकर रखें।
step-slide-over-thumb = स्प्लिंट अंगूठे पर चढ़ाएँ।
step-seat-at-thumb-knuckle = स्प्लिंट को अंगूठे के हथेली के पास के जोड़ के चारों ओर दबाकर बैठाएँ।
step-check-thumb-tip-lies-in = देखें कि अंगूठे का सिरा स्प्लिंट में टिका है।
step-bend-thumb-a-little = अंगूठा थोड़ा मोड़ें।
step-slide-ring-on = छल्ला अंगूठे पर चढ़ाएँ, उसके हथेली के पास के जोड़ तक।
# The therapist puts a mark on the ring.
step-turn-ring-to-mark = छल्ला घुमाएँ, जब तक उसका निशान अंगूठे की पीठ पर न आए।
step-check-thumb-stops = अंगूठा सीधा करें। छल्ले को उसे पीछे मुड़ने से रोकना चाहिए।
step-slide-ring-off = छल्ला सरकाकर निकालें। अटके, तो साबुन का पानी मदद करता है।
step-rest-thumb-tip-flat = अंगूठे के सिरे की गद्दी मेज़ पर सपाट टिकाएँ।
step-slide-on-from-tip = स्प्लिंट सिरे की ओर से चढ़ाएँ। सिरा सपाट रखें।
step-push-thumb-in-flat = अंगूठे को मेज़ पर सपाट सरकाते हुए स्प्लिंट में धकेलें।
step-check-thumb-tip-straight = देखें कि अंगूठे का सिरा सीधा टिका है।
step-check-thumb-big-knuckle-bends = देखें कि अंगूठे का हथेली के पास का जोड़ मुड़ सकता है।
step-slide-off-tip-flat = स्प्लिंट सरकाकर निकालें। सिरा मेज़ पर सपाट रखें।
step-look-at-skin-tip-flat = त्वचा देखें। सिरा मेज़ पर सपाट रखें।
step-set-between-thumb-and-index = स्प्लिंट को अंगूठे और तर्जनी के बीच बैठाएँ।

## Splints that guard a mended thumb: the thumb never leaves its position

step-rest-hand-curled-on-towel = हाथ लिपटे तौलिए पर टिकाएँ, कलाई आगे झुकी और उँगलियाँ मुड़ी रहें।
step-keep-thumb-loosely-bent = अंगूठे को सारा समय ढीला मुड़ा रखें।
# The roof is the part of the splint along the back of the thumb.
step-check-thumb-under-roof = देखें कि पूरा अंगूठा छत के नीचे है।
step-rest-thumb-up-on-towel = हाथ तौलिए पर टिकाएँ, अंगूठा ऊपर रहे।
step-keep-thumb-raised = अंगूठे को सारा समय उठाए रखें।
step-lay-splint-along-thumb-side = स्प्लिंट को निचली बाँह की अंगूठे वाली तरफ़ रखें।
step-check-thumb-straight-in-splint = देखें कि पूरा अंगूठा स्प्लिंट में सीधा है।

## Arm splints and bands

step-turn-hand-as-splint = हाथ को वैसे घुमाएँ जैसा स्प्लिंट का आकार है।
step-lay-whole-arm-in = बाँह स्प्लिंट में रखें, कोहनी मुड़ी रहे।
step-elbow-in-hollow = कोहनी की नोक को उसके गड्ढे में टिकने दें।
step-keep-hand-turned = हाथ को वैसे ही घुमाए रखें।
step-bend-elbow-as-splint = कोहनी उतनी मोड़ें जितना स्प्लिंट मुड़ा है।
step-lay-splint-on-elbow-front = स्प्लिंट को कोहनी के सामने की तरफ़ रखें।
step-check-elbow-point-free = देखें कि कोहनी की नोक पर कुछ न दबे।
step-slide-band-up = खुला पट्टा निचली बाँह पर ऊपर सरकाएँ।
step-seat-band-below-elbow = पट्टे को कोहनी के नीचे वहाँ रखें, जहाँ निचली बाँह सबसे मोटी है।
step-pad-on-sore-side = पट्टे की गद्दी बाँह की दुखती तरफ़ घुमाएँ।
step-check-no-tingling = मुट्ठी बनाएँ। हाथ में झनझनाहट नहीं होनी चाहिए।
step-slide-band-over-hand = खुला पट्टा हाथ पर से चढ़ाएँ।
step-seat-band-at-wrist-bone = पट्टे को कलाई की गोल हड्डी के ऊपर रखें।
step-slide-band-off = पट्टा सरकाकर निकालें। घसीटें नहीं।

## Splints with loops for the fingers

step-fingers-through-loops = हर उँगली को उसके छल्ले में डालें।
step-loops-beside-knuckles = हर छल्ला हथेली के पास के जोड़ से सटाकर सरकाएँ।
step-fingers-out-of-loops = हर उँगली को उसके छल्ले से निकालें।
step-check-fist-lifts-wrist = हल्की मुट्ठी बनाएँ। कलाई ऊपर उठनी चाहिए।
# A pull is an elastic cord between a loop and the frame.
step-hook-on-pulls = हर छल्ले का इलास्टिक ढाँचे में अटकाएँ।
step-unhook-pulls = हर छल्ले का इलास्टिक ढाँचे से छुड़ाएँ।
step-check-fingers-bend-against-pull = देखें कि इलास्टिक के खिंचाव के साथ भी उँगलियाँ मुड़ सकती हैं।

## Splints for the whole hand

step-keep-wrist-up-fingers-straight = कलाई उठी और उँगलियाँ सीधी रखें।
step-hand-on-towel-fingers-straight = हाथ लिपटे तौलिए पर टिकाएँ, उँगलियाँ सीधी रहें।
step-check-middle-joints-bend = देखें कि उँगलियों के बीच के जोड़ मुड़ सकते हैं।
step-lay-forearm-in = निचली बाँह स्प्लिंट में रखें।
step-thumb-on-its-rest = अंगूठा उसकी जगह पर रखें।
step-fingers-on-rest = उँगलियाँ स्प्लिंट पर साथ-साथ रखें।
step-bend-big-knuckles = हथेली के पास के जोड़ मोड़ें। उँगलियाँ सीधी रहने दें।
step-keep-big-knuckles-bent = हथेली के पास के जोड़ मुड़े और उँगलियाँ सीधी रखें।
step-fingers-flat-on-splint = हर उँगली स्प्लिंट से सटाकर सपाट रखें।
step-check-middle-joints-straight = देखें कि उँगलियों के बीच के जोड़ सीधे हैं।
step-spread-fingers-in-grooves = हर उँगली उसकी अपनी नाली में सीधी रखें।
step-let-hand-go-loose = हाथ को जितना हो सके ढीला छोड़ें।
step-open-hand-slowly = हाथ धीरे-धीरे खोलें। कभी ज़ोर न लगाएँ।
step-lay-hand-on-cushion = हथेली और निचली बाँह गद्दी पर रखें।
step-fingers-in-gaps = हर उँगली उसकी अपनी ख़ाली जगह में रखें।
step-dry-palm-and-gaps = हथेली और उँगलियों के बीच की त्वचा सुखाएँ।
