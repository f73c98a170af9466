### More activities: what people do with their hands, and easier ways to do it.
### The name stands as a short order in a table, such as “Rửa bát”.
### Every other message is one or two short sentences of advice beside that name.
### “Mở rộng hơn góc vuông” = wider open than a square corner.

## More ways for jobs named elsewhere

activity-text-with-thumbs-open-elbow = Để cánh tay được tựa. Giữ khuỷu tay mở rộng hơn góc vuông.
activity-hold-tablet-open-elbow = Để ra xa hơn. Giữ khuỷu tay mở rộng hơn góc vuông.
activity-drive-car-open-elbow = Chỉnh ghế sao cho khuỷu tay mở rộng hơn góc vuông.
activity-brush-teeth-lean-forward = Cúi người trên bồn rửa. Đưa đầu đến bàn chải.

## Shower and wash your hair

activity-wash-hair-shower-name = Tắm và gội đầu
activity-wash-hair-shower-arm-bag = Trùm túi không thấm nước lên bàn tay và nẹp. Buộc kín phía trên.
activity-wash-hair-shower-pump-bottle = Dùng chai nhấn và bọt biển cán dài.
activity-wash-hair-shower-bend-head = Cúi đầu xuống. Giữ khuỷu tay mở rộng hơn góc vuông.
activity-wash-hair-shower-other-hand = Tắm gội bằng tay kia, hoặc nhờ người gội đầu giúp.

## Pull up trousers or socks

activity-pull-up-clothes-name = Kéo quần hoặc tất lên
activity-pull-up-clothes-loose-waist = Mặc quần áo rộng, lưng quần mềm.
activity-pull-up-clothes-loops = May quai bên trong. Luồn cẳng tay qua quai và kéo.
activity-pull-up-clothes-flat-palms = Ngồi xuống. Đẩy vải lên bằng lòng bàn tay phẳng.
activity-pull-up-clothes-other-hand = Kéo bằng tay kia, hoặc nhờ người giúp.

## Fasten a strap behind your back

activity-fasten-back-strap-name = Cài dây áo sau lưng
activity-fasten-back-strap-pull-over = Mặc loại mềm, chui qua đầu.
activity-fasten-back-strap-turn-round = Cài ở phía trước. Rồi xoay ra sau.
activity-fasten-back-strap-front-closing = Chọn loại cài phía trước, có móc to.
activity-fasten-back-strap-helper = Nhờ người khác cài.

## Wipe after the toilet

activity-toilet-wipe-name = Lau chùi sau khi đi vệ sinh
activity-toilet-wipe-cover-splint = Trùm túi mỏng lên nẹp. Xong thì vứt túi đi.
activity-toilet-wipe-long-wiper = Dùng đồ lau cán dài, hoặc bồn cầu có vòi rửa.
activity-toilet-wipe-other-hand = Lau bằng tay kia.
activity-toilet-wipe-helper = Nhờ người mà quý vị tin cậy giúp.

## Cut your nails

activity-cut-nails-name = Cắt móng tay
activity-cut-nails-fixed-clipper = Dùng bấm móng gắn trên tấm ván. Ấn bằng lòng bàn tay.
activity-cut-nails-file = Giũa móng bằng giũa to bản. Cầm lỏng tay.
activity-cut-nails-few-at-once = Mỗi ngày cắt vài móng.
activity-cut-nails-helper = Nhờ người khác cắt.

## Tie shoe laces

activity-tie-laces-name = Buộc dây giày
activity-tie-laces-slip-on = Mang giày không dây. Dùng cây xỏ giày dài.
activity-tie-laces-stretch-laces = Dùng dây giày co giãn, buộc sẵn.
activity-tie-laces-helper = Nhờ người khác buộc.

## Open a ring-pull can or a bottle cap

activity-ring-pull-cap-name = Mở lon có khoen hoặc nắp chai
activity-ring-pull-cap-lever-opener = Dùng đồ bẩy để nâng khoen lên.
activity-ring-pull-cap-cap-grip = Đặt miếng cao su lên nắp. Xoay bằng lòng bàn tay phẳng.
activity-ring-pull-cap-easy-packs = Mua loại bao bì mở không cần sức.
activity-ring-pull-cap-helper = Nhờ người khác mở giúp.

## Chop vegetables

activity-chop-vegetables-name = Thái rau củ
activity-chop-vegetables-upright-knife = Dùng dao bập bênh hoặc dao có cán đứng.
activity-chop-vegetables-cook-first = Nấu chín trước. Đồ mềm thái đỡ tốn sức.
activity-chop-vegetables-ready-cut = Mua rau củ thái sẵn.
activity-chop-vegetables-helper = Nhờ người khác thái.

## Wash the dishes

activity-wash-dishes-name = Rửa bát đĩa
activity-wash-dishes-long-brush = Dùng nước mát và bàn chải cán dài.
activity-wash-dishes-soak-first = Ngâm bát đĩa trước. Rồi lau nhẹ.
activity-wash-dishes-dishwasher = Dùng máy rửa bát. Xếp đồ nhẹ, từng cái một.
activity-wash-dishes-helper = Nhờ người khác rửa.

## Knead dough or stir a thick mix

activity-knead-dough-name = Nhào bột hoặc khuấy bột đặc
activity-knead-dough-upright-spoon = Đặt tô lên khăn ướt. Cầm muỗng thẳng đứng, khuấy bằng sức từ vai.
activity-knead-dough-thin-mix = Pha loãng hơn, và làm ít hơn.
activity-knead-dough-mixer = Để máy trộn.
activity-knead-dough-helper = Nhờ người khác nhào.

## Carry plates or a tray

activity-carry-plates-name = Bưng đĩa hoặc khay
activity-carry-plates-flat-palms = Luồn hai lòng bàn tay phẳng xuống dưới. Giữ sát người.
activity-carry-plates-trolley = Đẩy trên xe đẩy.
activity-carry-plates-one-by-one = Mỗi lần bưng một đĩa. Đĩa nóng thì chờ nguội.
activity-carry-plates-helper = Nhờ người khác bưng.

## Eat with knife and fork

activity-eat-with-cutlery-name = Ăn bằng dao và nĩa
activity-eat-with-cutlery-fat-handles = Dùng dao nĩa có cán dài và to.
activity-eat-with-cutlery-rocking-knife = Cắt bằng dao bập bênh.
activity-eat-with-cutlery-soft-food = Chọn món mềm, không cần dao.
activity-eat-with-cutlery-other-hand = Ăn bằng tay kia. Nhờ người cắt đồ ăn.

## Turn a door knob or a tap

activity-turn-door-knob-name = Xoay nắm cửa hoặc vòi nước
activity-turn-door-knob-lever-handle = Gắn thêm cần gạt. Ấn cần bằng cẳng tay.
activity-turn-door-knob-leave-open = Để cửa trong nhà hé mở. Đẩy cửa bằng hông.
activity-turn-door-knob-other-hand = Xoay bằng tay kia.
activity-turn-door-knob-helper = Nhờ người khác xoay giúp.

## Vacuum the floor

activity-vacuum-name = Hút bụi sàn nhà
activity-vacuum-walk-along = Giữ khuỷu tay sát bên người. Đi theo máy.
activity-vacuum-light-cleaner = Dùng máy nhẹ, hoặc máy tự chạy.
activity-vacuum-one-room = Hút một phòng. Rồi cho bàn tay nghỉ.
activity-vacuum-helper = Nhờ người khác làm.

## Hang up the washing

activity-hang-washing-name = Phơi quần áo
activity-hang-washing-hangers = Treo quần áo lên móc hoặc vắt lên giá.
activity-hang-washing-soft-pegs = Dùng kẹp dễ mở.
activity-hang-washing-small-loads = Mỗi lần giặt ít thôi. Vắt máy thật kỹ.
activity-hang-washing-helper = Nhờ người khác phơi.

## Scrub the bath

activity-scrub-bath-name = Cọ bồn tắm
activity-scrub-bath-long-handle = Dùng bọt biển có cán dài và to.
activity-scrub-bath-let-soak = Xịt, chờ, rồi xả nước. Không chà.
activity-scrub-bath-short-bouts = Mỗi ngày cọ một phần nhỏ.
activity-scrub-bath-helper = Nhờ người khác cọ.

## Push up from a chair

activity-rise-from-chair-name = Chống tay đứng lên khỏi ghế
activity-rise-from-chair-high-seat = Ngồi ghế cao và chắc hơn. Khi đó chân nâng người dễ hơn.
activity-rise-from-chair-legs-first = Nhích ra trước và cúi người ra trước. Đứng lên bằng sức chân.
activity-rise-from-chair-forearm-rest = Tì cẳng tay lên tay ghế, không tì bàn tay.
activity-rise-from-chair-other-hand = Chống bằng tay kia, hoặc nhờ người đỡ đứng lên.

## Iron clothes

activity-iron-clothes-name = Ủi quần áo
activity-iron-clothes-light-iron = Dùng bàn ủi nhỏ, nhẹ.
activity-iron-clothes-hang-smooth = Treo quần áo lúc còn ẩm và vuốt phẳng. Nhiều đồ không cần ủi.
activity-iron-clothes-few-pieces = Ủi vài cái. Rồi cho bàn tay nghỉ.
activity-iron-clothes-other-hand = Ủi bằng tay kia, hoặc nhờ người ủi.

## Make the bed

activity-make-bed-name = Dọn giường
activity-make-bed-light-covers = Dùng một chăn nhẹ và ga rộng.
activity-make-bed-flat-hands = Đẩy ga vào chỗ bằng bàn tay phẳng và cẳng tay.
activity-make-bed-few-corners = Không nhấc nệm. Để lỏng các góc ga.
activity-make-bed-helper = Nhờ người khác dọn.

## Lean on a walking stick or frame

activity-lean-on-stick-name = Chống gậy hoặc khung tập đi
activity-lean-on-stick-wide-grip = Nhờ chúng tôi kiểm tra chiều cao. Tay cầm to, mềm sẽ dễ hơn.
activity-lean-on-stick-forearm-rest = Hỏi chúng tôi về loại có chỗ tựa cẳng tay. Không đi khi không có gì đỡ.
activity-lean-on-stick-other-hand = Hỏi chúng tôi xem tay kia có được cầm không. Không đi khi không có gì đỡ.

## Hold a dog lead

activity-hold-dog-lead-name = Cầm dây dắt chó
activity-hold-dog-lead-waist-lead = Dùng dây dắt đeo quanh eo.
activity-hold-dog-lead-calm-walks = Đi dạo ngắn, nhẹ nhàng. Dùng đai ngực chống kéo cho chó.
activity-hold-dog-lead-helper = Nhờ người khác cầm dây. Không bao giờ quấn dây quanh ngón tay.

## Use a screwdriver

activity-use-screwdriver-name = Dùng tua vít
activity-use-screwdriver-powered-driver = Dùng máy vặn vít nhẹ.
activity-use-screwdriver-fat-handle = Dùng cán to, xoay từng nấc nhỏ.
activity-use-screwdriver-elbow-in = Giữ khuỷu tay sát bên người. Dùng sức của cả người.
activity-use-screwdriver-helper = Nhờ người khác vặn vít.

## Use a hammer

activity-hammer-name = Dùng búa
activity-hammer-light-hammer = Dùng búa nhẹ có cán mềm, to.
activity-hammer-few-nails = Đóng vài cái đinh. Rồi cho bàn tay nghỉ.
activity-hammer-helper = Nhờ người khác đóng.

## Use a power drill

activity-power-drill-name = Dùng máy khoan
activity-power-drill-light-drill = Dùng máy khoan nhẹ có tay cầm phụ.
activity-power-drill-two-hands = Cầm bằng cả hai tay, khuỷu tay sát bên người.
activity-power-drill-short-bouts = Khoan một lỗ. Rồi cho bàn tay nghỉ.
activity-power-drill-helper = Nhờ người khác khoan.

## Lift boxes

activity-lift-boxes-name = Nâng thùng
activity-lift-boxes-palms-under = Ngửa lòng bàn tay. Luồn cẳng tay xuống dưới và giữ sát người.
activity-lift-boxes-half-load = Chỉ xếp nửa thùng.
activity-lift-boxes-trolley = Đẩy trên xe đẩy. Không nâng từ sàn.
activity-lift-boxes-helper = Nhờ người khác nâng.

## Pick up small parts or coins

activity-handle-small-parts-name = Nhặt đồ nhỏ hoặc đồng xu
activity-handle-small-parts-soft-tray = Để đồ trên tấm mềm. Đẩy trượt ra mép.
activity-handle-small-parts-wide-tweezers = Dùng nhíp có cán to, mềm, hoặc nam châm.
activity-handle-small-parts-pauses = Nhặt vài cái. Rồi cho bàn tay nghỉ.
activity-handle-small-parts-other-hand = Nhặt bằng tay kia.

## Hold a baby to feed

activity-feed-baby-name = Bế em bé cho bú
activity-feed-baby-firm-pillow = Đặt bé lên gối chắc. Để gối đỡ sức nặng.
activity-feed-baby-straight-wrist = Gối đầu bé vào khuỷu tay. Giữ cổ tay thẳng.
activity-feed-baby-change-sides = Đổi bên thường xuyên. Giữa chừng duỗi thẳng cánh tay.
activity-feed-baby-helper = Nhờ người đặt bé vào chỗ và ở gần bên.

## Change a nappy

activity-change-nappy-name = Thay tã
activity-change-nappy-easy-tabs = Chọn tã có miếng dán to, dễ mở.
activity-change-nappy-roll-baby = Lăn bé sang bên. Không giơ cả hai chân bé lên.
activity-change-nappy-wipes-ready = Bày sẵn và mở sẵn mọi thứ trước khi bắt đầu.
activity-change-nappy-other-hand = Dán tã bằng tay kia, hoặc nhờ người thay.

## Buckle a child seat

activity-buckle-child-seat-name = Cài dây ghế trẻ em
activity-buckle-child-seat-buckle-key = Dùng cần bấm khóa dây.
activity-buckle-child-seat-knuckle = Bấm nút bằng khớp ngón tay gập.
activity-buckle-child-seat-helper = Dùng tay kia, hoặc nhờ người. Kiểm tra xem khóa đã cài chặt.

## Push a pram

activity-push-pram-name = Đẩy xe nôi
activity-push-pram-open-palms = Đẩy bằng lòng bàn tay mở.
activity-push-pram-high-bar = Nâng cao tay đẩy và bọc mềm. Tựa cẳng tay lên đó.
activity-push-pram-helper = Đẩy bằng tay kia, hoặc nhờ người đẩy.

## Dig

activity-dig-name = Đào đất
activity-dig-small-spade = Dùng xẻng nhỏ, nhẹ, cán dài.
activity-dig-foot-pushes = Dùng chân đạp xẻng xuống.
activity-dig-short-bouts = Mỗi lần xúc nửa xẻng. Vài lần thì ngừng.
activity-dig-helper = Nhờ người khác đào. Quý vị chỉ chỗ.

## Pull weeds

activity-pull-weeds-name = Nhổ cỏ
activity-pull-weeds-long-weeder = Dùng cuốc hoặc đồ nhổ cỏ có cán dài, to.
activity-pull-weeds-after-rain = Nhổ cỏ sau mưa, khi rễ dễ bật lên.
activity-pull-weeds-short-bouts = Làm một khoảnh nhỏ. Rồi cho bàn tay nghỉ.
activity-pull-weeds-helper = Nhờ người khác nhổ. Quý vị chỉ chỗ.

## Water plants

activity-water-plants-name = Tưới cây
activity-water-plants-two-hands = Cầm bình bằng cả hai tay, sát người.
activity-water-plants-little-water = Chỉ đổ một ít nước vào bình.
activity-water-plants-hose = Dùng vòi có cần giữ nước chảy.
activity-water-plants-helper = Tưới bằng tay kia, hoặc nhờ người.

## Fasten a seat belt

activity-fasten-seat-belt-name = Cài dây an toàn
activity-fasten-seat-belt-belt-handle = Gắn quai vào dây cho dễ với.
activity-fasten-seat-belt-knuckle = Bấm khóa bằng khớp ngón tay gập.
activity-fasten-seat-belt-other-hand = Kéo dây qua người bằng tay kia. Nhờ người cài khóa.

## Ride a bicycle

activity-cycle-name = Đi xe đạp
activity-cycle-high-bar = Nâng cao ghi đông. Dùng tay nắm mềm, to.
activity-cycle-short-rides = Đi quãng ngắn trên đường phẳng.
activity-cycle-indoor-bike = Dùng xe đạp tập tại chỗ. Ngồi thẳng và cho bàn tay nghỉ.

## Lift weights

activity-lift-weights-name = Nâng tạ
activity-lift-weights-half-weight = Dùng nửa số tạ. Làm ít lần hơn.
activity-lift-weights-forearm-cuff = Kéo bằng đai quanh cẳng tay. Không nắm thanh tạ.
activity-lift-weights-legs-only = Tập chân và thân người. Không cầm gì.

## Do press-ups or yoga

activity-press-ups-yoga-name = Hít đất hoặc yoga
activity-press-ups-yoga-legs-only = Chọn tư thế đứng, nằm ngửa hoặc nằm nghiêng.
activity-press-ups-yoga-straight-wrist = Nắm tay cầm cố định để cổ tay luôn thẳng.
activity-press-ups-yoga-fewer = Chống vào tường, không chống xuống sàn.

## Swim

activity-swim-name = Bơi
activity-swim-float = Tựa cẳng tay lên phao. Bơi bằng chân.
activity-swim-dry-at-once = Lau khô da và nẹp ngay khi lên bờ.
activity-swim-short-swim = Bơi trong thời gian ngắn.

## Play the guitar

activity-play-guitar-name = Chơi đàn ghi-ta
activity-play-guitar-light-strings = Dùng dây nhẹ, ít phải bấm mạnh.
activity-play-guitar-neck-higher = Dùng dây đeo để nâng cần đàn cao hơn. Giữ cổ tay thẳng.
activity-play-guitar-short-bouts = Chơi một bài. Rồi cho bàn tay nghỉ.

## Sleep

activity-sleep-position-name = Ngủ
activity-sleep-position-splint-on = Ban đêm đeo nẹp khi bản hướng dẫn này dặn.
activity-sleep-position-arm-on-pillow = Đặt cánh tay lên gối kê bên cạnh, thẳng đến mức dễ chịu.
activity-sleep-position-soft-towel = Quấn lỏng khăn mềm quanh khuỷu tay để khuỷu ít gập hơn.

## Hold a phone to your ear

activity-hold-phone-to-ear-name = Áp điện thoại vào tai
activity-hold-phone-to-ear-loudspeaker = Dùng loa ngoài hoặc tai nghe. Đặt điện thoại xuống.
activity-hold-phone-to-ear-short-calls = Gọi ngắn thôi. Giữa các cuộc gọi, duỗi thẳng cánh tay.
activity-hold-phone-to-ear-other-hand = Cầm điện thoại bằng tay kia.
