### Conditions of tendons after repair, of nerves, of the elbow, of sore joints and of burns.
### The name, what is wrong, and what the splint does. Words for a reader of about twelve; nothing is said to be cured.

## Repaired tendons

condition-flexor-zone-two-repair-name = Gân gập ngón tay đã khâu nối
condition-flexor-zone-two-repair-what = Các gân gập ngón tay bị đứt và đã được khâu. Nắm, hoặc kéo thẳng ngón tay, có thể làm đứt mũi khâu.
condition-flexor-zone-two-repair-aim = Nẹp che chở mũi khâu trong lúc lành. Nẹp không cho các ngón duỗi quá thẳng.
condition-extensor-zone-three-repair-name = Gân trên khớp giữa của ngón tay đã khâu nối
condition-extensor-zone-three-repair-what = Gân duỗi thẳng khớp giữa bị đứt và đã được khâu. Chỉ một lần gập cũng có thể kéo bung mũi khâu.
condition-extensor-zone-three-repair-aim = Nẹp giữ thẳng khớp giữa trong lúc gân lành.
condition-extensor-zone-five-six-repair-name = Gân ở mu bàn tay đã khâu nối
condition-extensor-zone-five-six-repair-what = Gân nâng ngón tay bị đứt và đã được khâu. Nắm tay trọn vẹn có thể kéo bung mũi khâu.
condition-extensor-zone-five-six-repair-aim = Nẹp giữ khớp bàn ngón của ngón tay hướng lên. Như vậy mũi khâu không bị kéo.

## Nerves

condition-carpal-tunnel-name = Dây thần kinh bị ép ở cổ tay (hội chứng ống cổ tay)
condition-carpal-tunnel-what = Một dây thần kinh đi qua đường hầm hẹp ở cổ tay. Cổ tay gập ép dây thần kinh này, nhất là khi ngủ.
condition-carpal-tunnel-aim = Nẹp giữ thẳng cổ tay. Nhờ vậy dây thần kinh có thêm chỗ.
condition-carpal-tunnel-release-name = Sau khi mổ dây thần kinh bị ép ở cổ tay
condition-carpal-tunnel-release-what = Mái của đường hầm ở cổ tay đã được mở. Cần chờ vết mổ lành, và cần cử động các ngón.
condition-carpal-tunnel-release-aim = Nẹp cho cổ tay nghỉ trong những ngày đầu. Các ngón vẫn cử động tự do.
condition-cubital-tunnel-name = Dây thần kinh bị ép ở khuỷu tay
condition-cubital-tunnel-what = Một dây thần kinh vòng qua mặt trong khuỷu tay. Gập khuỷu nhiều hoặc tì khuỷu làm dây thần kinh này căng.
condition-cubital-tunnel-aim = Nẹp không cho khuỷu tay gập nhiều ban đêm. Ban ngày, không tì lên khuỷu tay.
condition-radial-nerve-palsy-name = Cổ tay rũ
condition-radial-nerve-palsy-what = Dây thần kinh nâng cổ tay và các ngón hiện không làm việc. Bàn tay rũ xuống.
condition-radial-nerve-palsy-aim = Nẹp giúp cổ tay nâng lên. Khi đó các ngón nắm tốt hơn.
condition-median-nerve-palsy-low-name = Ngón cái không nhấc khỏi lòng bàn tay được
condition-median-nerve-palsy-low-what = Dây thần kinh cho phần thịt dày dưới ngón cái hiện không làm việc. Vài chỗ trên bàn tay có thể bị tê.
condition-median-nerve-palsy-low-aim = Nẹp giữ khoảng trống cạnh ngón cái luôn mở. Ngón cái ở vị trí mà quý vị dùng được.
condition-ulnar-nerve-palsy-name = Ngón áp út và ngón út co như móng vuốt
condition-ulnar-nerve-palsy-what = Dây thần kinh cho các cơ nhỏ của bàn tay hiện không làm việc. Ngón áp út và ngón út co lại như móng vuốt.
condition-ulnar-nerve-palsy-aim = Nẹp không cho các khớp bàn ngón ưỡn ngược. Khi đó quý vị duỗi thẳng hai ngón tay này tốt hơn.

## The elbow

condition-lateral-elbow-name = Đau gân ở mặt ngoài khuỷu tay
condition-lateral-elbow-what = Các cơ nâng cổ tay bắt đầu từ khuỷu tay. Gân của chúng bị đau ở đó, nhất là khi nắm và nâng.
condition-lateral-elbow-aim = Nẹp giảm bớt sức kéo lên các gân đau khi quý vị làm việc.

## The hand

condition-dupuytren-release-name = Sau khi mổ ngón tay bị gập (Dupuytren)
condition-dupuytren-release-what = Các dải căng trong lòng bàn tay đã được cắt để ngón tay mở ra. Sẹo có thể kéo ngón gập lại.
condition-dupuytren-release-aim = Ban đêm, nẹp giữ ngón tay ở chỗ thoải mái. Nẹp giúp ngón tay luôn mở.
condition-rheumatoid-knuckle-drift-name = Các ngón lệch sang bên (viêm khớp dạng thấp)
condition-rheumatoid-knuckle-drift-what = Các dây chằng cạnh khớp bàn ngón bị lỏng. Các ngón nghiêng về phía ngón út.
condition-rheumatoid-knuckle-drift-aim = Nẹp giữ các ngón thẳng hàng khi quý vị dùng bàn tay. Nẹp không ngăn được sự lệch.
condition-rheumatoid-wrist-name = Đau khớp cổ tay (viêm khớp dạng thấp)
condition-rheumatoid-wrist-what = Khớp cổ tay đau và sưng do bệnh viêm khớp dạng thấp.
condition-rheumatoid-wrist-aim = Nẹp giữ vững cổ tay. Nẹp có thể giúp đỡ đau khi nghỉ và khi làm việc.
condition-stroke-tight-hand-name = Bàn tay co cứng sau đột quỵ (tai biến)
condition-stroke-tight-hand-what = Sau đột quỵ, các cơ khép bàn tay kéo quá mạnh. Bàn tay khó mở.
condition-stroke-tight-hand-aim = Nẹp cho bàn tay nghỉ ở thế mở một nửa. Nẹp có thể giúp dễ chịu và giữ sạch da lòng bàn tay.

## Burns

condition-dorsal-hand-burn-name = Bỏng ở mu bàn tay
condition-dorsal-hand-burn-what = Da mu bàn tay bị bỏng. Da co ngắn lại khi lành và có thể kéo bàn tay méo đi.
condition-dorsal-hand-burn-aim = Nẹp giữ các khớp bàn ngón gập và các ngón thẳng. Ở dáng này da mới không bị ngắn lại.
condition-palmar-hand-burn-name = Bỏng ở lòng bàn tay
condition-palmar-hand-burn-what = Da lòng bàn tay bị bỏng. Da co ngắn lại khi lành và có thể kéo bàn tay khép lại.
condition-palmar-hand-burn-aim = Nẹp giữ lòng bàn tay và các ngón luôn mở. Ở dáng này da mới không bị ngắn lại.

## Movements to leave out
## The joints of a finger are the big knuckle, the middle joint and the tip.

avoid-wrist-extension = Không ngả cổ tay về phía mu bàn tay.
avoid-wrist-flexion = Không gập cổ tay về phía lòng bàn tay.
avoid-fingers-mcp-flexion = Không gập các khớp bàn ngón.
avoid-fingers-mcp-ulnar-deviation = Không đẩy các ngón về phía ngón út.
avoid-fingers-pip-flexion = Không gập khớp giữa của các ngón tay.
