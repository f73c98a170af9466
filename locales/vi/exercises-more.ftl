### More exercises: name, starting position and one action for each step.
### The name is a short order and stands as a heading. Steps are numbered by the program.
### $hold is a finished length of time, such as the words for five seconds.
### “Tay kia” is the hand without the splint. “Ngón đang điều trị” is the finger that the splint is for.
### The joints of a finger are khớp bàn ngón, khớp giữa and đầu ngón.

## Arm and wrist

exercise-shoulder-reach-name = Vươn tay lên
exercise-shoulder-reach-start = Ngồi hoặc đứng, tay buông bên người.
exercise-shoulder-reach-step-1 = Giơ cánh tay ra trước, cao đến mức dễ chịu.
exercise-shoulder-reach-step-2 = Giữ yên { $hold }.
exercise-shoulder-reach-step-3 = Hạ cánh tay từ từ.
exercise-shoulder-reach-step-4 = Lần sau, giơ cánh tay sang bên.

exercise-wrist-dart-name = Cử động cổ tay như ném phi tiêu
exercise-wrist-dart-start = Đặt cạnh cẳng tay phía ngón út lên mặt bàn, bàn tay đưa ra ngoài mép bàn. Thả lỏng các ngón và ngón cái.
exercise-wrist-dart-step-1 = Nghiêng bàn tay ra sau, về phía mu bàn tay và ngón cái.
exercise-wrist-dart-step-2 = Giữ yên { $hold }.
exercise-wrist-dart-step-3 = Nghiêng bàn tay ra trước, về phía lòng bàn tay và ngón út.
exercise-wrist-dart-step-4 = Giữ yên { $hold }.

# Ordered by the clinician only.
exercise-wrist-swing-with-fingers-name = Đưa cổ tay và các ngón cùng lúc
exercise-wrist-swing-with-fingers-start = Chống khuỷu tay lên mặt bàn. Chỉ cử động đến mức chuyên viên trị liệu đã chỉ.
exercise-wrist-swing-with-fingers-step-1 = Để cổ tay rũ ra trước, cho các ngón mở ra.
exercise-wrist-swing-with-fingers-step-2 = Giữ yên { $hold }.
exercise-wrist-swing-with-fingers-step-3 = Nâng cổ tay lên, cho các ngón cong vào thành nắm tay nhẹ.
exercise-wrist-swing-with-fingers-step-4 = Giữ yên { $hold }.

exercise-forearm-front-stretch-name = Kéo giãn cẳng tay phía lòng bàn tay
exercise-forearm-front-stretch-start = Đưa cánh tay ra trước mặt, lòng bàn tay ngửa.
exercise-forearm-front-stretch-step-1 = Duỗi thẳng khuỷu tay.
exercise-forearm-front-stretch-step-2 = Tay kia nắm lòng bàn tay và các ngón.
exercise-forearm-front-stretch-step-3 = Kéo nhẹ bàn tay xuống cho đến khi thấy căng.
exercise-forearm-front-stretch-step-4 = Giữ yên { $hold }.
exercise-forearm-front-stretch-step-5 = Thả ra từ từ.

exercise-forearm-back-stretch-name = Kéo giãn mặt ngoài cẳng tay
exercise-forearm-back-stretch-start = Đưa cánh tay ra trước mặt, lòng bàn tay úp. Thả lỏng các ngón.
exercise-forearm-back-stretch-step-1 = Duỗi thẳng khuỷu tay.
exercise-forearm-back-stretch-step-2 = Đặt tay kia lên mu bàn tay.
exercise-forearm-back-stretch-step-3 = Ấn nhẹ bàn tay xuống cho đến khi thấy căng.
exercise-forearm-back-stretch-step-4 = Giữ yên { $hold }.
exercise-forearm-back-stretch-step-5 = Thả ra từ từ.

exercise-palms-together-stretch-name = Kéo giãn cổ tay, chắp hai lòng bàn tay
exercise-palms-together-stretch-start = Chắp hai lòng bàn tay trước ngực, các ngón chỉ lên trời.
exercise-palms-together-stretch-step-1 = Hạ hai bàn tay từ từ. Giữ hai lòng bàn tay áp vào nhau.
exercise-palms-together-stretch-step-2 = Ngừng khi thấy hơi căng.
exercise-palms-together-stretch-step-3 = Giữ yên { $hold }.
exercise-palms-together-stretch-step-4 = Nâng hai bàn tay lên lại.

## Fingers

# A neighbour of the treated finger may be in the splint too.
exercise-free-finger-bend-name = Cử động các ngón tự do
exercise-free-finger-bend-start = Giơ bàn tay lên, các ngón chỉ lên trời.
exercise-free-finger-bend-step-1 = Chỉ gập những ngón tay được phép cử động tự do.
exercise-free-finger-bend-step-2 = Giữ yên { $hold }.
exercise-free-finger-bend-step-3 = Duỗi thẳng các ngón đó từ từ.

exercise-fingers-straight-name = Duỗi thẳng các ngón
exercise-fingers-straight-start = Giơ bàn tay lên, các ngón chỉ lên trời.
exercise-fingers-straight-step-1 = Duỗi thẳng tất cả các ngón đến mức dễ chịu.
exercise-fingers-straight-step-2 = Giữ yên { $hold }.
exercise-fingers-straight-step-3 = Thả lỏng các ngón.

exercise-tabletop-name = Chỉ gập các khớp bàn ngón
exercise-tabletop-start = Giơ bàn tay lên, các ngón chỉ lên trời.
exercise-tabletop-step-1 = Gập các khớp bàn ngón. Giữ phần còn lại của các ngón thẳng.
exercise-tabletop-step-2 = Giữ yên { $hold }.
exercise-tabletop-step-3 = Duỗi thẳng các khớp bàn ngón.

exercise-straight-fist-name = Nắm tay phẳng
exercise-straight-fist-start = Giơ bàn tay lên, các ngón chỉ lên trời.
exercise-straight-fist-step-1 = Gập các khớp bàn ngón và khớp giữa. Giữ thẳng các đầu ngón.
exercise-straight-fist-step-2 = Đặt các đầu ngón áp phẳng vào lòng bàn tay.
exercise-straight-fist-step-3 = Giữ yên { $hold }.
exercise-straight-fist-step-4 = Duỗi thẳng các ngón.

exercise-five-positions-name = Làm lần lượt các dáng bàn tay
exercise-five-positions-start = Giơ bàn tay lên, các ngón chỉ lên trời.
exercise-five-positions-step-1 = Duỗi thẳng tất cả các ngón.
exercise-five-positions-step-2 = Gập các ngón như móc câu. Giữ thẳng các khớp bàn ngón.
exercise-five-positions-step-3 = Nắm tay trọn vẹn, nhẹ thôi.
exercise-five-positions-step-4 = Chỉ gập các khớp bàn ngón. Giữ phần còn lại thẳng.
exercise-five-positions-step-5 = Đặt các đầu ngón áp phẳng vào lòng bàn tay. Giữ thẳng các đầu ngón.
exercise-five-positions-step-6 = Giữ mỗi dáng { $hold } rồi mới sang dáng tiếp theo.

exercise-block-tip-bend-name = Chỉ gập đầu ngón tay
exercise-block-tip-bend-start = Đặt bàn tay lên mặt bàn, lòng bàn tay ngửa. Tay kia giữ ngón đang điều trị ở đoạn từ khớp giữa đến khớp đầu ngón.
exercise-block-tip-bend-step-1 = Chỉ gập đầu ngón.
exercise-block-tip-bend-step-2 = Giữ yên { $hold }.
exercise-block-tip-bend-step-3 = Duỗi thẳng đầu ngón.

exercise-block-middle-bend-name = Chỉ gập khớp giữa
exercise-block-middle-bend-start = Đặt bàn tay lên mặt bàn, lòng bàn tay ngửa. Tay kia giữ ngón đang điều trị ở đoạn từ khớp bàn ngón đến khớp giữa.
exercise-block-middle-bend-step-1 = Chỉ gập khớp giữa.
exercise-block-middle-bend-step-2 = Giữ yên { $hold }.
exercise-block-middle-bend-step-3 = Duỗi thẳng khớp giữa.

exercise-knuckle-bent-straighten-name = Duỗi khớp giữa, khớp bàn ngón gập
exercise-knuckle-bent-straighten-start = Gập khớp bàn ngón của ngón đang điều trị. Tay kia giữ khớp này gập.
exercise-knuckle-bent-straighten-step-1 = Duỗi thẳng khớp giữa đến mức dễ chịu.
exercise-knuckle-bent-straighten-step-2 = Giữ yên { $hold }.
exercise-knuckle-bent-straighten-step-3 = Thả lỏng khớp giữa.

exercise-finger-lift-name = Nhấc lần lượt từng ngón tay
exercise-finger-lift-start = Úp lòng bàn tay nằm phẳng trên mặt bàn.
exercise-finger-lift-step-1 = Nhấc một ngón khỏi mặt bàn. Các ngón khác vẫn nằm trên mặt bàn.
exercise-finger-lift-step-2 = Giữ yên { $hold }.
exercise-finger-lift-step-3 = Hạ ngón đó xuống từ từ.
exercise-finger-lift-step-4 = Làm như vậy với từng ngón tay còn lại.

exercise-tip-bend-middle-straight-name = Gập đầu ngón, khớp giữa thẳng
exercise-tip-bend-middle-straight-start = Đặt bàn tay lên mặt bàn. Vẫn đeo nẹp.
exercise-tip-bend-middle-straight-step-1 = Giữ thẳng khớp giữa của ngón đang điều trị.
exercise-tip-bend-middle-straight-step-2 = Chỉ gập đầu ngón.
exercise-tip-bend-middle-straight-step-3 = Giữ yên { $hold }.
exercise-tip-bend-middle-straight-step-4 = Duỗi thẳng đầu ngón.

exercise-middle-bend-tip-held-name = Gập khớp giữa của ngón tay
exercise-middle-bend-tip-held-start = Chống khuỷu tay lên mặt bàn, các ngón hướng lên. Vẫn đeo nẹp.
exercise-middle-bend-tip-held-step-1 = Gập khớp giữa của ngón đang điều trị.
exercise-middle-bend-tip-held-step-2 = Giữ yên { $hold }.
exercise-middle-bend-tip-held-step-3 = Duỗi thẳng khớp từ từ.

## After a tendon repair
## Ordered by the clinician only.

exercise-short-arc-middle-bend-name = Gập khớp giữa một chút
exercise-short-arc-middle-bend-start = Chỉ dùng miếng đo do chuyên viên trị liệu làm. Giữ thẳng khớp bàn ngón.
exercise-short-arc-middle-bend-step-1 = Đặt ngón đang điều trị dọc theo miếng đo.
exercise-short-arc-middle-bend-step-2 = Chỉ gập khớp giữa cho đến khi ngón tay chạm miếng đo.
exercise-short-arc-middle-bend-step-3 = Giữ yên { $hold }.
exercise-short-arc-middle-bend-step-4 = Duỗi khớp giữa thật thẳng.
exercise-short-arc-middle-bend-step-5 = Làm đủ số lần rồi thì đeo nẹp lại.

exercise-helped-curl-in-splint-name = Dùng tay kia gập các ngón
exercise-helped-curl-in-splint-start = Vẫn đeo nẹp. Chỉ mở những dây đai chuyên viên trị liệu đã chỉ. Thả lỏng các ngón.
exercise-helped-curl-in-splint-step-1 = Dùng tay kia gập nhẹ một ngón tay về phía lòng bàn tay.
exercise-helped-curl-in-splint-step-2 = Giữ yên { $hold }.
exercise-helped-curl-in-splint-step-3 = Thả ngón tay ra từ từ. Không kéo thẳng ngón tay.
exercise-helped-curl-in-splint-step-4 = Làm như vậy với từng ngón tay.
exercise-helped-curl-in-splint-step-5 = Làm đủ số lần rồi thì cài dây đai lại.

exercise-straighten-to-roof-name = Duỗi các ngón đến chạm nẹp
exercise-straighten-to-roof-start = Vẫn đeo nẹp. Chỉ mở những dây đai chuyên viên trị liệu đã chỉ. Giữ các khớp bàn ngón áp vào nẹp.
exercise-straighten-to-roof-step-1 = Duỗi thẳng các ngón cho đến khi chạm nẹp.
exercise-straighten-to-roof-step-2 = Giữ yên { $hold }.
exercise-straighten-to-roof-step-3 = Thả lỏng các ngón.
exercise-straighten-to-roof-step-4 = Làm đủ số lần rồi thì cài dây đai lại.

exercise-half-fist-in-splint-name = Nắm tay lỏng một nửa
exercise-half-fist-in-splint-start = Vẫn đeo nẹp. Chỉ mở những dây đai chuyên viên trị liệu đã chỉ.
exercise-half-fist-in-splint-step-1 = Gập nhẹ các ngón, đến nửa đường vào lòng bàn tay.
exercise-half-fist-in-splint-step-2 = Giữ yên { $hold }. Không bóp chặt.
exercise-half-fist-in-splint-step-3 = Duỗi thẳng các ngón cho đến khi chạm nẹp.
exercise-half-fist-in-splint-step-4 = Làm đủ số lần rồi thì cài dây đai lại.

exercise-place-and-hold-name = Đặt các ngón vào chỗ và giữ
exercise-place-and-hold-start = Chống khuỷu tay lên mặt bàn. Chỉ cử động đến mức chuyên viên trị liệu đã chỉ.
exercise-place-and-hold-step-1 = Dùng tay kia gập nhẹ các ngón.
exercise-place-and-hold-step-2 = Bỏ tay kia ra.
exercise-place-and-hold-step-3 = Giữ nhẹ các ngón ở đó { $hold }. Không bóp chặt.
exercise-place-and-hold-step-4 = Thả lỏng các ngón.

exercise-yoke-bend-name = Gập các ngón trong nẹp
exercise-yoke-bend-start = Chống khuỷu tay lên mặt bàn, các ngón hướng lên. Vẫn đeo nẹp. Không để cổ tay rũ ra trước.
exercise-yoke-bend-step-1 = Gập tất cả các ngón đến mức nẹp cho phép.
exercise-yoke-bend-step-2 = Giữ yên { $hold }.
exercise-yoke-bend-step-3 = Duỗi thẳng tất cả các ngón.

## Stretches of a finger

exercise-helped-curl-stretch-name = Gập ngón tay có trợ giúp
exercise-helped-curl-stretch-start = Đặt bàn tay lên mặt bàn, lòng bàn tay ngửa.
exercise-helped-curl-stretch-step-1 = Dùng tay kia gập từ từ ngón đang điều trị.
exercise-helped-curl-stretch-step-2 = Ngừng khi thấy hơi căng.
exercise-helped-curl-stretch-step-3 = Giữ yên { $hold }.
exercise-helped-curl-stretch-step-4 = Thả ra từ từ.

exercise-helped-straighten-stretch-name = Duỗi ngón tay có trợ giúp
exercise-helped-straighten-stretch-start = Đặt mu bàn tay lên mặt bàn. Tay kia giữ ngón đang điều trị ở đoạn từ khớp bàn ngón đến khớp giữa.
exercise-helped-straighten-stretch-step-1 = Ấn nhẹ khớp giữa về phía thẳng.
exercise-helped-straighten-stretch-step-2 = Ngừng khi thấy hơi căng.
exercise-helped-straighten-stretch-step-3 = Giữ yên { $hold }.
exercise-helped-straighten-stretch-step-4 = Thả ra từ từ.

exercise-intrinsic-stretch-name = Gập ngón tay, khớp bàn ngón thẳng
exercise-intrinsic-stretch-start = Chống khuỷu tay lên mặt bàn, các ngón hướng lên.
exercise-intrinsic-stretch-step-1 = Giữ thẳng khớp bàn ngón của ngón đang điều trị.
exercise-intrinsic-stretch-step-2 = Dùng tay kia gập khớp giữa và đầu ngón đó.
exercise-intrinsic-stretch-step-3 = Ngừng khi thấy hơi căng.
exercise-intrinsic-stretch-step-4 = Giữ yên { $hold }.
exercise-intrinsic-stretch-step-5 = Thả ra từ từ.

## Thumb

exercise-thumb-bend-across-name = Gập ngón cái ngang lòng bàn tay
exercise-thumb-bend-across-start = Đặt bàn tay lên mặt bàn, lòng bàn tay ngửa.
exercise-thumb-bend-across-step-1 = Gập ngón cái từ từ ngang qua lòng bàn tay.
exercise-thumb-bend-across-step-2 = Giữ yên { $hold }.
exercise-thumb-bend-across-step-3 = Duỗi thẳng ngón cái.

exercise-thumb-web-release-name = Làm mềm kẽ ngón cái
exercise-thumb-web-release-start = Đặt cạnh bàn tay phía ngón út lên mặt bàn.
exercise-thumb-web-release-step-1 = Xoa nhẹ da giữa ngón cái và ngón trỏ.
exercise-thumb-web-release-step-2 = Tay kia giữ ngón cái ở đoạn từ khớp bàn ngón cái đến cổ tay.
exercise-thumb-web-release-step-3 = Kéo nhẹ ngón cái ra xa lòng bàn tay.
exercise-thumb-web-release-step-4 = Giữ yên { $hold }.
exercise-thumb-web-release-step-5 = Thả ra từ từ.

exercise-thumb-wrist-slow-lower-name = Hạ bàn tay từ từ, ngón cái ở trên
exercise-thumb-wrist-slow-lower-start = Đặt cạnh cẳng tay phía ngón út lên mặt bàn. Cầm quả tạ nhỏ do chuyên viên trị liệu chọn. Chỉ tập cách ngày: một ngày tập, một ngày nghỉ.
exercise-thumb-wrist-slow-lower-step-1 = Dùng tay kia nâng bàn tay lên về phía ngón cái.
exercise-thumb-wrist-slow-lower-step-2 = Bỏ tay kia ra.
exercise-thumb-wrist-slow-lower-step-3 = Để bàn tay hạ xuống từ từ, trong { $hold }.

## Nerves

exercise-thumb-side-nerve-slide-name = Cho dây thần kinh phía ngón cái trượt
exercise-thumb-side-nerve-slide-start = Ngồi, khuỷu tay gập và cổ tay thẳng.
exercise-thumb-side-nerve-slide-step-1 = Nắm tay lỏng.
exercise-thumb-side-nerve-slide-step-2 = Duỗi thẳng các ngón. Giữ ngón cái sát bên.
exercise-thumb-side-nerve-slide-step-3 = Ngả nhẹ cổ tay về phía mu bàn tay.
exercise-thumb-side-nerve-slide-step-4 = Đưa ngón cái ra bên ngoài.
exercise-thumb-side-nerve-slide-step-5 = Xoay lòng bàn tay ngửa lên.
exercise-thumb-side-nerve-slide-step-6 = Giữ mỗi tư thế { $hold } rồi mới sang tư thế tiếp theo.

exercise-little-finger-nerve-slide-name = Cho dây thần kinh phía ngón út trượt
exercise-little-finger-nerve-slide-start = Đưa cánh tay ra bên cạnh, lòng bàn tay ngửa.
exercise-little-finger-nerve-slide-step-1 = Gập khuỷu tay một nửa, đồng thời gập cổ tay về phía lòng bàn tay.
exercise-little-finger-nerve-slide-step-2 = Giữ yên { $hold }.
exercise-little-finger-nerve-slide-step-3 = Duỗi thẳng khuỷu tay, đồng thời ngả nhẹ cổ tay về phía mu bàn tay.
exercise-little-finger-nerve-slide-step-4 = Giữ yên { $hold }.

## Strength

exercise-wrist-press-still-name = Đẩy mà cổ tay không cử động
exercise-wrist-press-still-start = Đặt cẳng tay lên mặt bàn, lòng bàn tay úp, bàn tay đưa ra ngoài mép bàn.
exercise-wrist-press-still-step-1 = Đặt tay kia lên mu bàn tay.
exercise-wrist-press-still-step-2 = Đẩy nhẹ lên, chống lại tay kia. Không để cổ tay cử động.
exercise-wrist-press-still-step-3 = Giữ yên { $hold }.
exercise-wrist-press-still-step-4 = Thả lỏng bàn tay.
exercise-wrist-press-still-step-5 = Lần sau, đặt tay kia dưới lòng bàn tay và ấn xuống tay kia.

exercise-putty-grip-name = Bóp bột dẻo mềm
exercise-putty-grip-start = Đặt một cục bột dẻo mềm vào lòng bàn tay.
exercise-putty-grip-step-1 = Bóp nhẹ bằng các ngón và ngón cái.
exercise-putty-grip-step-2 = Giữ yên { $hold }.
exercise-putty-grip-step-3 = Thả ra từ từ.
exercise-putty-grip-step-4 = Vo bột dẻo thành cục trở lại.

exercise-three-point-pinch-name = Kẹp bột dẻo mềm, ngón cong tròn
exercise-three-point-pinch-start = Lấy một cục nhỏ bột dẻo mềm.
exercise-three-point-pinch-step-1 = Giữ cục bột dẻo giữa ngón cái, ngón trỏ và ngón giữa.
exercise-three-point-pinch-step-2 = Giữ mọi khớp hơi gập.
exercise-three-point-pinch-step-3 = Kẹp nhẹ cục bột dẻo.
exercise-three-point-pinch-step-4 = Giữ yên { $hold }.
exercise-three-point-pinch-step-5 = Thả ra từ từ.

exercise-key-pinch-putty-name = Kẹp bột dẻo mềm như cầm chìa khóa
exercise-key-pinch-putty-start = Lấy một cục nhỏ bột dẻo mềm.
exercise-key-pinch-putty-step-1 = Giữ cục bột dẻo giữa ngón cái và cạnh ngón trỏ.
exercise-key-pinch-putty-step-2 = Kẹp nhẹ cục bột dẻo.
exercise-key-pinch-putty-step-3 = Giữ yên { $hold }.
exercise-key-pinch-putty-step-4 = Thả ra từ từ.

exercise-wrist-slow-lower-name = Hạ bàn tay từ từ, lòng bàn tay úp
exercise-wrist-slow-lower-start = Đặt cẳng tay lên mặt bàn, lòng bàn tay úp, bàn tay đưa ra ngoài mép bàn. Cầm quả tạ nhỏ do chuyên viên trị liệu chọn.
exercise-wrist-slow-lower-step-1 = Nâng bàn tay lên với sự giúp đỡ của tay kia.
exercise-wrist-slow-lower-step-2 = Bỏ tay kia ra.
exercise-wrist-slow-lower-step-3 = Để bàn tay hạ xuống từ từ, trong { $hold }.

exercise-hand-lean-name = Chống lên bàn tay
exercise-hand-lean-start = Đứng trước tường. Chỉ dùng bàn hoặc sàn nhà khi chuyên viên trị liệu dặn.
exercise-hand-lean-step-1 = Đặt hai lòng bàn tay lên tường.
exercise-hand-lean-step-2 = Ngả người từ từ về phía tường cho đến khi thấy sức nặng trên hai bàn tay.
exercise-hand-lean-step-3 = Giữ yên { $hold }.
exercise-hand-lean-step-4 = Đẩy người trở lại từ từ.

## Skin, scar, feeling and tightness

exercise-stroke-towards-heart-name = Vuốt cánh tay về phía tim
exercise-stroke-towards-heart-start = Gác cánh tay lên gối kê, bàn tay cao hơn khuỷu tay.
exercise-stroke-towards-heart-step-1 = Đặt tay kia lên các đầu ngón.
exercise-stroke-towards-heart-step-2 = Vuốt nhẹ từ các đầu ngón đến khuỷu tay.
exercise-stroke-towards-heart-step-3 = Chừa nẹp ra, và chừa chỗ da đau hoặc hở.
exercise-stroke-towards-heart-step-4 = Làm tiếp trong { $hold }.

exercise-scar-massage-name = Xoa sẹo
exercise-scar-massage-start = Chỉ làm khi sẹo đã kín và khô. Đặt bàn tay lên mặt bàn.
exercise-scar-massage-step-1 = Đặt đầu một ngón của tay kia lên sẹo.
exercise-scar-massage-step-2 = Ấn chắc, nhưng không đến mức đau.
exercise-scar-massage-step-3 = Đẩy da theo vòng tròn nhỏ.
exercise-scar-massage-step-4 = Đẩy da lên xuống, rồi sang hai bên.
exercise-scar-massage-step-5 = Làm tiếp dọc theo sẹo trong { $hold }.

exercise-texture-rub-name = Cho da quen với va chạm nhẹ
exercise-texture-rub-start = Chỉ làm trên da đã kín. Đặt bàn tay lên mặt bàn.
exercise-texture-rub-step-1 = Xoa nhẹ chỗ da nhạy bằng khăn mềm.
exercise-texture-rub-step-2 = Làm tiếp trong { $hold }.
exercise-texture-rub-step-3 = Khi khăn mềm không còn khó chịu nữa, dùng khăn thô hơn.

exercise-touch-relearn-name = Tập lại cảm giác
exercise-touch-relearn-start = Đặt bàn tay lên mặt bàn. Không dùng vật nóng, lạnh hoặc sắc nhọn.
exercise-touch-relearn-step-1 = Chạm một vật nhỏ vào đầu ngón và nhìn.
exercise-touch-relearn-step-2 = Nhắm mắt và chạm vào đúng chỗ đó.
exercise-touch-relearn-step-3 = Để ý xem thấy ở đâu và thấy thế nào.
exercise-touch-relearn-step-4 = Mở mắt và so sánh.
exercise-touch-relearn-step-5 = Làm tiếp với những chỗ khác trong { $hold }.

exercise-scar-hold-stretch-name = Giữ sẹo ở thế kéo giãn
exercise-scar-hold-stretch-start = Chỉ làm khi sẹo đã kín và khô.
exercise-scar-hold-stretch-step-1 = Cử động bàn tay từ từ cho đến khi thấy sẹo căng.
exercise-scar-hold-stretch-step-2 = Giữ yên { $hold }.
exercise-scar-hold-stretch-step-3 = Để bàn tay trở lại từ từ.

exercise-tight-hand-slow-open-name = Mở từ từ bàn tay co cứng
exercise-tight-hand-slow-open-start = Đặt cẳng tay lên gối kê. Để cổ tay gập về phía lòng bàn tay. Không bao giờ kéo nhanh.
exercise-tight-hand-slow-open-step-1 = Cầm ngón cái ở gốc và kéo ra từ từ.
exercise-tight-hand-slow-open-step-2 = Dùng tay kia duỗi thẳng các ngón từ từ.
exercise-tight-hand-slow-open-step-3 = Đưa cổ tay từ từ về phía mu bàn tay. Giữ các ngón thẳng.
exercise-tight-hand-slow-open-step-4 = Ngừng ngay khi bàn tay bắt đầu kéo ngược lại.
exercise-tight-hand-slow-open-step-5 = Giữ yên { $hold }.
exercise-tight-hand-slow-open-step-6 = Để bàn tay khép lại từ từ.
