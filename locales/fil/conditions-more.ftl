### Conditions of tendons after repair, of nerves, of the elbow, of sore joints and of burns.
### The name, what is wrong, and what the splint does. Words for a reader of about twelve; nothing is said to be cured.

## Repaired tendons

condition-flexor-zone-two-repair-name = Tinahing litid na nagbabaluktot sa daliri
condition-flexor-zone-two-repair-what = Naputol at tinahi ang mga litid na nagbabaluktot sa daliri. Puwedeng mapunit ang tahi kapag kumapit kayo o hinila ito patuwid.
condition-flexor-zone-two-repair-aim = Iniingatan ng splint ang tahi habang gumagaling. Pinipigilan nitong tumuwid nang sobra ang mga daliri.
condition-extensor-zone-three-repair-name = Tinahing litid sa ibabaw ng gitnang kasukasuan ng daliri
condition-extensor-zone-three-repair-what = Naputol at tinahi ang litid na nagtutuwid sa gitnang kasukasuan. Isang baluktot lang ay puwedeng makapunit sa tahi.
condition-extensor-zone-three-repair-aim = Pinananatiling tuwid ng splint ang gitnang kasukasuan habang gumagaling ang litid.
condition-extensor-zone-five-six-repair-name = Tinahing litid sa likod ng kamay
condition-extensor-zone-five-six-repair-what = Naputol at tinahi ang litid na nag-aangat sa daliri. Puwedeng mapunit ang tahi kapag buong nakakuyom ang kamao.
condition-extensor-zone-five-six-repair-aim = Pinananatiling nakaangat ng splint ang malaking buko ng daliri. Nababawasan ang hila sa tahi.

## Nerves

condition-carpal-tunnel-name = Naipit na nerve sa pulso (carpal tunnel)
condition-carpal-tunnel-what = May nerve na dumadaan sa masikip na tunnel sa pulso. Naiipit ito kapag nakabaluktot ang pulso, lalo na sa pagtulog.
condition-carpal-tunnel-aim = Pinananatiling tuwid ng splint ang pulso. Mas maluwag ang puwang para sa nerve.
condition-carpal-tunnel-release-name = Pagkatapos ng operasyon sa naipit na nerve sa pulso
condition-carpal-tunnel-release-what = Binuksan ang bubong ng tunnel sa pulso. Kailangang gumaling ang sugat, at kailangang gumalaw ang mga daliri.
condition-carpal-tunnel-release-aim = Pinagpapahinga ng splint ang pulso sa mga unang araw. Malayang gumalaw ang mga daliri.
condition-cubital-tunnel-name = Naipit na nerve sa siko
condition-cubital-tunnel-what = May nerve na dumadaan sa loobang gilid ng siko. Napupuwersa ang nerve na ito kapag baluktot na baluktot ang siko o itinutukod ito.
condition-cubital-tunnel-aim = Pinipigilan ng splint ang sobrang pagbaluktot ng siko sa gabi. Sa maghapon, huwag ninyong itukod ang siko.
condition-radial-nerve-palsy-name = Laylay na pulso
condition-radial-nerve-palsy-what = Hindi gumagana ngayon ang nerve na nag-aangat sa pulso at mga daliri. Nakalaylay ang kamay.
condition-radial-nerve-palsy-aim = Tinutulungan ng splint na manatiling nakaangat ang pulso. Mas mahusay nang makakakapit ang mga daliri.
condition-median-nerve-palsy-low-name = Hinlalaking hindi maiangat mula sa palad
condition-median-nerve-palsy-low-what = Hindi gumagana ngayon ang nerve ng umbok ng kalamnan sa ibaba ng hinlalaki. Puwedeng manhid ang ilang bahagi ng kamay.
condition-median-nerve-palsy-low-aim = Pinananatiling bukas ng splint ang puwang sa tabi ng hinlalaki. Nasa posisyon ang hinlalaki kung saan magagamit ninyo ito.
condition-ulnar-nerve-palsy-name = Palasingsingan at hinliliit na baluktot na parang kuko ng ibon
condition-ulnar-nerve-palsy-what = Hindi gumagana ngayon ang nerve ng maliliit na kalamnan ng kamay. Bumabaluktot na parang kuko ng ibon ang palasingsingan at hinliliit.
condition-ulnar-nerve-palsy-aim = Pinipigilan ng splint ang malalaking buko na bumaluktot paatras. Mas maitutuwid ninyo ang mga daliring ito.

## The elbow

condition-lateral-elbow-name = Masakit na litid sa labas na gilid ng siko
condition-lateral-elbow-what = Nagsisimula sa siko ang mga kalamnan na nag-aangat sa pulso. Masakit ang mga litid doon, lalo na kapag kumakapit at nagbubuhat.
condition-lateral-elbow-aim = Binabawasan ng splint ang hila sa masakit na mga litid habang nagtatrabaho kayo.

## The hand

condition-dupuytren-release-name = Pagkatapos ng operasyon sa baluktot na daliri (Dupuytren)
condition-dupuytren-release-what = Hiniwa ang masisikip na bigkis sa palad para maibuka ang daliri. Puwede itong hilahin ulit ng peklat papasok.
condition-dupuytren-release-aim = Hinahawakan ng splint ang daliri sa gabi sa posisyong maginhawa. Tumutulong ito na manatiling bukas ang daliri.
condition-rheumatoid-knuckle-drift-name = Mga daliring kumikiling patagilid (rheumatoid)
condition-rheumatoid-knuckle-drift-what = Maluwag ang mga ligament sa tabi ng malalaking buko. Kumikiling ang mga daliri papunta sa panig ng hinliliit.
condition-rheumatoid-knuckle-drift-aim = Inihahanay ng splint ang mga daliri habang ginagamit ang kamay. Hindi nito napipigilan ang pagkiling.
condition-rheumatoid-wrist-name = Masakit na kasukasuan ng pulso (rheumatoid)
condition-rheumatoid-wrist-what = Masakit at namamaga ang kasukasuan ng pulso dahil sa sakit na rheumatoid.
condition-rheumatoid-wrist-aim = Pinatatatag ng splint ang pulso. Puwede nitong bawasan ang sakit sa pahinga at sa gawain.
condition-stroke-tight-hand-name = Naninigas na kamay matapos ma-stroke
condition-stroke-tight-hand-what = Matapos ang stroke, sobra ang hila ng mga kalamnan na nagsasara sa kamay. Mahirap ibuka ang kamay.
condition-stroke-tight-hand-aim = Pinagpapahinga ng splint ang kamay nang kalahating bukas. Puwede itong magpaginhawa at tumulong na malinis ang balat ng palad.

## Burns

condition-dorsal-hand-burn-name = Paso sa likod ng kamay
condition-dorsal-hand-burn-what = Napaso ang balat sa likod ng kamay. Umiikli ang balat habang gumagaling at puwedeng masira ang hugis ng kamay.
condition-dorsal-hand-burn-aim = Hinahawakan ng splint na nakabaluktot ang malalaking buko at tuwid ang mga daliri. Sa hugis na ito, nananatiling mahaba ang bagong balat.
condition-palmar-hand-burn-name = Paso sa palad ng kamay
condition-palmar-hand-burn-what = Napaso ang balat ng palad. Umiikli ang balat habang gumagaling at puwedeng maisara ang kamay.
condition-palmar-hand-burn-aim = Hinahawakan ng splint na bukas ang palad at mga daliri. Sa hugis na ito, nananatiling mahaba ang bagong balat.

## Movements to leave out
## The joints of a finger are the big knuckle, the middle joint and the tip.

avoid-wrist-extension = Huwag ninyong ibaluktot ang pulso paatras.
avoid-wrist-flexion = Huwag ninyong ibaluktot ang pulso paharap, papunta sa palad.
avoid-fingers-mcp-flexion = Huwag ninyong ibaluktot ang malalaking buko.
avoid-fingers-mcp-ulnar-deviation = Huwag ninyong itulak ang mga daliri papunta sa panig ng hinliliit.
avoid-fingers-pip-flexion = Huwag ninyong ibaluktot ang mga gitnang kasukasuan ng mga daliri.
