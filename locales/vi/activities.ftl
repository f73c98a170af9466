### Activities: what people do with their hands, and easier ways to do it.
### The name stands as a short order in a table, such as “Mở hũ”.
### Every other message is one or two short sentences of advice beside that name.

## Open a jar

activity-open-jar-name = Mở nắp hũ
activity-open-jar-jar-opener = Dùng đồ mở hũ gắn chặt vào tường hoặc bàn.
activity-open-jar-break-seal = Trước hết nạy nắp cho hở bằng cán muỗng. Sau đó xoay nắp đỡ tốn sức.
activity-open-jar-flat-palm = Đặt hũ trong ngăn kéo. Ấn lòng bàn tay phẳng lên nắp và xoay cả người.
activity-open-jar-helper = Nhờ người khác mở giúp.

## Turn a key

activity-turn-key-name = Xoay chìa khóa
activity-turn-key-key-turner = Gắn tay cầm to vào chìa khóa. Cầm bằng cả bàn tay.
activity-turn-key-other-hand = Xoay chìa khóa bằng tay kia.
activity-turn-key-oil-lock = Tra dầu ổ khóa cho dễ xoay.

## Lift a baby

activity-lift-baby-name = Bế em bé
activity-lift-baby-scoop = Xúc bé lên, lòng bàn tay ngửa, ngón cái sát các ngón khác. Luồn một tay dưới mông, một tay sau lưng bé.
activity-lift-baby-chest-first = Đưa bé sát ngực trước rồi mới đứng lên.
activity-lift-baby-raise-changing-place = Nâng cao chỗ thay tã để đỡ phải bế lên nhiều.
activity-lift-baby-helper = Nhờ người khác trao bé cho quý vị.

## Lift a full pan

activity-lift-pan-name = Nhấc nồi đầy
activity-lift-pan-half-full = Chỉ đổ đầy nửa nồi.
activity-lift-pan-slide = Đẩy nồi trượt trên mặt bếp. Không nhấc lên.
activity-lift-pan-two-handles = Dùng nồi nhẹ có hai quai. Để tay kia đỡ phần lớn sức nặng.
activity-lift-pan-helper = Nhờ người khác nhấc nồi.

## Pour from a kettle

activity-pour-kettle-name = Rót nước từ ấm
activity-pour-kettle-one-cup = Chỉ đun một cốc nước.
activity-pour-kettle-tipper = Dùng giá giúp nghiêng ấm.
activity-pour-kettle-other-hand = Rót bằng tay kia. Để bàn tay đeo nẹp tránh xa hơi nước.

## Carry shopping

activity-carry-shopping-name = Xách đồ đi chợ
activity-carry-shopping-backpack = Dùng ba lô hoặc xe kéo.
activity-carry-shopping-split-load = Chia đồ ra các túi nhỏ. Đi hai chuyến.
activity-carry-shopping-over-forearm = Treo túi nhẹ trên cẳng tay, không bao giờ treo trên ngón tay.
activity-carry-shopping-helper = Nhờ người xách giúp, hoặc cho giao tận nhà.

## Text with your thumbs

activity-text-with-thumbs-name = Nhắn tin bằng ngón cái
activity-text-with-thumbs-speak-text = Nói tin nhắn và để điện thoại viết.
activity-text-with-thumbs-phone-on-table = Đặt điện thoại lên mặt bàn. Gõ bằng ngón trỏ.
activity-text-with-thumbs-short-texts = Nhắn tin ngắn. Giữa các tin, cho bàn tay nghỉ.

## Hold a tablet or a book

activity-hold-tablet-name = Cầm máy tính bảng hoặc sách
activity-hold-tablet-stand = Đặt lên giá đỡ.
activity-hold-tablet-on-lap = Đặt lên gối kê trên đùi.
activity-hold-tablet-swap-hands = Đổi tay thường xuyên.

## Write by hand

activity-write-by-hand-name = Viết tay
activity-write-by-hand-fat-pen = Dùng bút to, mềm, viết trơn mà ít phải ấn.
activity-write-by-hand-dictate = Nói hoặc gõ máy thay vì viết.
activity-write-by-hand-pauses = Viết vài dòng. Rồi đặt bút xuống và nghỉ.
activity-write-by-hand-helper = Nhờ người khác viết giúp.

## Type on a keyboard

activity-type-on-keyboard-name = Gõ bàn phím
activity-type-on-keyboard-fingers-for-space = Bấm phím cách bằng một ngón tay của tay kia.
activity-type-on-keyboard-low-keyboard = Dùng bàn phím thấp. Để hai cẳng tay được tựa.
activity-type-on-keyboard-pauses = Ngừng thường xuyên và để yên hai bàn tay.

## Use a computer mouse

activity-use-mouse-name = Dùng chuột máy tính
activity-use-mouse-other-hand = Điều khiển chuột bằng tay kia.
activity-use-mouse-upright-mouse = Thử loại chuột đứng, cầm như khi bắt tay.
activity-use-mouse-touch-pad = Dùng bàn cảm ứng với một ngón tay.

## Do up buttons

activity-do-up-buttons-name = Cài nút áo
activity-do-up-buttons-button-hook = Dùng móc cài nút.
activity-do-up-buttons-pull-on-clothes = Mặc quần áo chui đầu hoặc kéo lên, không nút.
activity-do-up-buttons-other-hand = Để tay kia cài nút. Tay này chỉ giữ vải cho phẳng.

## Peel vegetables

activity-peel-vegetables-name = Gọt rau củ
activity-peel-vegetables-fat-peeler = Dùng dao gọt có cán to và lưỡi rộng.
activity-peel-vegetables-leave-skins = Để nguyên vỏ, hoặc mua rau củ làm sẵn.
activity-peel-vegetables-short-bouts = Gọt vài củ. Rồi cho bàn tay nghỉ.
activity-peel-vegetables-helper = Nhờ người khác gọt.

## Wring out a cloth

activity-wring-cloth-name = Vắt khăn
activity-wring-cloth-press-flat = Ép phẳng khăn vào thành bồn rửa.
activity-wring-cloth-sponge = Dùng miếng bọt biển. Bóp nhẹ.
activity-wring-cloth-other-hand = Vòng khăn qua vòi nước. Xoắn bằng tay kia.

## Prune plants

activity-prune-plants-name = Tỉa cây
activity-prune-plants-ratchet = Dùng kéo cắt được từng nấc nhỏ.
activity-prune-plants-thin-stems = Chỉ cắt cành mảnh. Ngừng trước khi ngón cái đau.
activity-prune-plants-helper = Nhờ người khác cắt. Quý vị chọn cành.

## Cut with scissors

activity-use-scissors-name = Cắt bằng kéo
activity-use-scissors-spring-scissors = Dùng kéo có lò xo tự mở.
activity-use-scissors-roller-cutter = Dùng dao lăn trên tấm lót.
activity-use-scissors-short-bouts = Mỗi lần cắt một ít.
activity-use-scissors-helper = Nhờ người khác cắt giúp.

## Wash your hands

activity-wash-hands-name = Rửa tay
activity-wash-hands-pump-soap = Dùng chai xà phòng nhấn và vòi nước có cần gạt.
activity-wash-hands-wipe-down = Rửa những ngón tay để lộ ra. Phần còn lại lau bằng khăn ẩm.
activity-wash-hands-take-off = Tháo nẹp. Rửa, lau thật khô, rồi đeo nẹp lại.

## Drive a car

activity-drive-car-name = Lái xe hơi
activity-drive-car-wheel-cover = Bọc tay lái bằng lớp dày, mềm.
activity-drive-car-short-trips = Đi chặng ngắn. Dừng xe và cho bàn tay nghỉ.
activity-drive-car-helper = Để người khác lái.

## Knit or crochet

activity-knit-name = Đan hoặc móc len
activity-knit-fat-needles = Dùng que nhẹ, to và len mềm.
activity-knit-work-on-lap = Đặt đồ đan trên đùi. Kê gối dưới hai khuỷu tay.
activity-knit-short-bouts = Đan một hàng. Rồi cho bàn tay nghỉ.

## Play a racket sport

activity-racket-sport-name = Chơi môn dùng vợt
activity-racket-sport-soft-strings = Dùng cán dày hơn và dây vợt mềm hơn.
activity-racket-sport-two-hands = Đánh bằng hai tay.
activity-racket-sport-half-time = Chỉ chơi nửa thời gian.

## Brush your teeth

activity-brush-teeth-name = Đánh răng
activity-brush-teeth-fat-handle = Dùng bàn chải cán to hoặc bàn chải điện.
activity-brush-teeth-other-hand = Đánh răng bằng tay kia.

## Pull up a zip

activity-fasten-zip-name = Kéo khóa áo quần
activity-fasten-zip-zip-ring = Gắn một vòng vào khóa kéo. Kéo bằng ngón tay móc lại.
activity-fasten-zip-other-hand = Kéo khóa bằng tay kia.
