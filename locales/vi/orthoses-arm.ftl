### Splints of the thumb, the wrist and the arm, and of the whole hand: names, straps, places to check, and steps.
### What several splints share stands in orthoses.ftl. “Tay kia” is the hand without the splint.
### band = vòng; loop = quai; ring = nhẫn; wrap = miếng quấn; pull = dây kéo; cushion = gối.

## Names of wrist splints
## The name stands inside sentences; the short form is a label in tables.

orthosis-wrist-neutral-name = nẹp cổ tay thẳng
orthosis-wrist-neutral-short = Cổ tay, thẳng
orthosis-wrist-dorsal-shell-name = nẹp cổ tay phía mu bàn tay
orthosis-wrist-dorsal-shell-short = Cổ tay, mu bàn tay
orthosis-wrist-all-round-name = nẹp cổ tay bọc quanh
orthosis-wrist-all-round-short = Cổ tay, bọc quanh
orthosis-wrist-soft-stay-name = nẹp cổ tay mềm có thanh đỡ
orthosis-wrist-soft-stay-short = Cổ tay mềm, có thanh
orthosis-wrist-soft-wrap-name = nẹp quấn mềm cổ tay
orthosis-wrist-soft-wrap-short = Cổ tay, mềm

## Names of thumb splints

orthosis-forearm-thumb-spica-tip-name = nẹp ngón cái dài đến đầu ngón
orthosis-forearm-thumb-spica-tip-short = Cẳng tay và cả ngón cái
orthosis-thumb-knuckle-shell-name = nẹp khớp bàn ngón cái
orthosis-thumb-knuckle-shell-short = Khớp bàn ngón cái
orthosis-thumb-mcp-ring-name = nẹp nhẫn ngón cái
orthosis-thumb-mcp-ring-short = Nhẫn ngón cái
orthosis-thumb-tip-cap-name = nẹp đầu ngón cái
orthosis-thumb-tip-cap-short = Đầu ngón cái
# It keeps the space between thumb and index finger open.
orthosis-thumb-web-spacer-name = nẹp mở kẽ ngón cái
orthosis-thumb-web-spacer-short = Kẽ ngón cái
# Its roof keeps the thumb from straightening too far.
orthosis-thumb-dorsal-block-name = nẹp chặn ngón cái
orthosis-thumb-dorsal-block-short = Chặn ngón cái
# It holds the thumb up, away from the palm.
orthosis-thumb-raised-long-name = nẹp nâng ngón cái
orthosis-thumb-raised-long-short = Nâng ngón cái

## Names of arm splints and bands

orthosis-long-arm-rotation-name = nẹp cánh tay dài
orthosis-long-arm-rotation-short = Từ khuỷu tay đến bàn tay
orthosis-elbow-night-shell-name = nẹp khuỷu tay ban đêm
orthosis-elbow-night-shell-short = Khuỷu tay, ban đêm
orthosis-counterforce-band-name = nẹp vòng cẳng tay
orthosis-counterforce-band-short = Vòng cẳng tay
orthosis-distal-ulna-strap-name = nẹp vòng chắc cổ tay
orthosis-distal-ulna-strap-short = Vòng cổ tay

## Names of splints for wrist and fingers

# Cords join wrist and fingers, so that each helps the other to move.
orthosis-tenodesis-assist-name = nẹp trợ giúp cổ tay và ngón tay
orthosis-tenodesis-assist-short = Trợ giúp cổ tay, ngón tay
# Elastic pulls lift the fingers at the big knuckles.
orthosis-dynamic-knuckle-extension-name = nẹp nâng ngón tay
orthosis-dynamic-knuckle-extension-short = Nâng ngón tay
orthosis-palm-shell-wrist-knuckles-name = nẹp cổ tay và khớp bàn ngón
orthosis-palm-shell-wrist-knuckles-short = Cổ tay và khớp bàn ngón
orthosis-resting-hand-name = nẹp nghỉ bàn tay
orthosis-resting-hand-short = Nghỉ bàn tay
orthosis-intrinsic-plus-shell-name = nẹp bàn tay gập khớp bàn ngón
orthosis-intrinsic-plus-shell-short = Bàn tay, gập khớp bàn ngón
orthosis-palm-extension-pan-name = nẹp mở lòng bàn tay
orthosis-palm-extension-pan-short = Mở lòng bàn tay
orthosis-spread-hand-cushion-name = nẹp gối mềm bàn tay
orthosis-spread-hand-cushion-short = Gối bàn tay

## Straps
## Each name is put into “Cài …” and “Mở …”.

strap-near-elbow = dây đai gần khuỷu tay
strap-upper-arm = dây đai bắp tay
strap-hand-back = dây đai ngang mu bàn tay
strap-across-fingers = dây đai ngang các ngón
strap-across-fingertips = dây đai gần đầu các ngón
# A band has one strap, which pulls it snug.
strap-band = dây đai của vòng

## Places to look at in the skin check

spot-wrist-palm-side = cổ tay, phía lòng bàn tay
spot-wrist-back = cổ tay, phía mu bàn tay
spot-forearm-thumb-side = cẳng tay phía ngón cái, ngay trên cổ tay
spot-knuckle-backs = mặt lưng các khớp bàn ngón
spot-middle-joint-backs = mặt lưng các khớp giữa của ngón tay
spot-palm-below-knuckles = lòng bàn tay, ngay dưới các ngón
spot-palm-middle = giữa lòng bàn tay
spot-splint-end-at-fingers = các ngón, chỗ mép nẹp
spot-between-fingers = da giữa các ngón
spot-fingertips = đầu các ngón
spot-hand-edge-little-finger = cạnh bàn tay phía ngón út
spot-loop-edges = da dưới các quai ngón tay
spot-thumb-hole = da quanh lỗ ngón cái
spot-thumb-ball = phần thịt dày của lòng bàn tay dưới ngón cái
spot-thumb-pad = phần mềm ở mặt trong đầu ngón cái
spot-thumb-tip-joint-back = mặt lưng khớp đầu ngón cái
spot-thumbnail-edge = da quanh móng ngón cái
spot-ring-crossing = da ở chỗ nhẫn bắt chéo
spot-bar-end-in-palm = lòng bàn tay, chỗ hết thanh cứng
spot-wrap-edge = da dọc mép phần mềm
spot-forearm-under-band = cẳng tay dưới vòng
spot-band-pad = da dưới miếng đệm của vòng
spot-elbow-point = mỏm khuỷu tay
spot-elbow-inner-groove = rãnh ở mặt trong khuỷu tay
spot-elbow-crease = nếp gấp trước khuỷu tay
spot-upper-arm-edge = bắp tay, chỗ mép nẹp

## Getting ready
## One action a step. The other hand does the work.

step-wash-other-hand = Rửa tay kia và lau thật khô.
# For a splint that may only be changed by two people.
step-wait-for-helper = Không làm một mình. Chờ người giúp đã được hướng dẫn.
step-ask-helper-if-possible = Nếu được, nhờ người khác giúp.
step-loop-straps-first = Trước khi bắt đầu, luồn mỗi dây đai qua khoen của nó.
step-lay-open-on-table = Đặt nẹp đã mở lên mặt bàn.
step-hold-between-knees = Kẹp nẹp đã mở giữa hai đầu gối.
step-lay-opening-towards-you = Đặt nẹp lên mặt bàn, chỗ hở quay về phía quý vị.
step-palm-down-on-table = Úp lòng bàn tay lên mặt bàn.
step-sit-at-table = Ngồi xuống cạnh bàn.

## Wrist splints: putting them on and taking them off

step-lay-splint-on-back = Đặt nẹp lên mu bàn tay và mặt lưng cẳng tay.
# With one hand: the splint lies on the table with its hollow side up.
step-lay-back-of-arm-in = Đặt mu bàn tay và mặt lưng cẳng tay vào trong nẹp.
step-press-into-splint = Ấn nhẹ cánh tay xuống nẹp.
step-pull-splint-open = Kéo nẹp mở ra một chút.
step-slip-wrist-in = Luồn cổ tay vào từ bên cạnh.
step-slip-wrist-out = Luồn cổ tay ra. Không vặn cổ tay.
# The bar is a flat stiff strip inside a soft splint.
step-bar-on-palm-side = Xoay nẹp cho thanh đỡ nằm phía lòng bàn tay.
step-slide-hand-in = Luồn bàn tay vào nẹp.
step-thumb-through-hole = Luồn ngón cái qua lỗ của nó.
step-slide-off-hand = Trượt nẹp ra khỏi bàn tay. Không kéo lê nẹp.
step-wrap-round-wrist = Đặt miếng quấn quanh cổ tay.
step-lay-wrist-on-wrap = Đặt cổ tay lên giữa miếng quấn.
step-hold-wrap-on-table = Ấn bàn tay lên mặt bàn để giữ yên miếng quấn.
step-unwrap = Mở miếng quấn ra. Không kéo tuột.

## Thumb splints: putting them on and taking them off

step-push-on-with-table-edge = Đẩy nhẹ nẹp vào sát nhờ cạnh bàn.
step-keep-thumb-beside-index = Giữ ngón cái cạnh ngón trỏ.
step-slide-over-thumb = Luồn nẹp vào ngón cái.
step-seat-at-thumb-knuckle = Ấn nẹp vào sát quanh khớp bàn ngón cái.
step-check-thumb-tip-lies-in = Kiểm tra: đầu ngón cái nằm trong nẹp.
step-bend-thumb-a-little = Gập ngón cái một chút.
step-slide-ring-on = Luồn nhẫn vào ngón cái đến khớp bàn ngón cái.
# The therapist puts a mark on the ring.
step-turn-ring-to-mark = Xoay nhẫn cho dấu của nó nằm ở mặt lưng ngón cái.
step-check-thumb-stops = Duỗi thẳng ngón cái. Lúc đó nhẫn cần chặn được ngón cái, không cho ưỡn ngược.
step-slide-ring-off = Trượt nhẫn ra. Nếu kẹt, dùng nước xà phòng.
step-rest-thumb-tip-flat = Đặt mặt trong đầu ngón cái nằm phẳng trên mặt bàn.
step-slide-on-from-tip = Luồn nẹp vào từ đầu ngón. Giữ đầu ngón nằm phẳng.
step-push-thumb-in-flat = Đẩy ngón cái vào nẹp, nằm phẳng dọc mặt bàn.
step-check-thumb-tip-straight = Kiểm tra: đầu ngón cái nằm thẳng.
step-check-thumb-big-knuckle-bends = Kiểm tra: khớp bàn ngón cái gập được.
step-slide-off-tip-flat = Trượt nẹp ra. Giữ đầu ngón nằm phẳng trên mặt bàn.
step-look-at-skin-tip-flat = Xem da. Giữ đầu ngón nằm phẳng trên mặt bàn.
step-set-between-thumb-and-index = Đặt nẹp vào giữa ngón cái và ngón trỏ.

## Splints that guard a mended thumb: the thumb never leaves its position

step-rest-hand-curled-on-towel = Đặt bàn tay lên khăn cuộn, cổ tay gập về phía lòng bàn tay, các ngón cong vào.
step-keep-thumb-loosely-bent = Suốt lúc làm, giữ ngón cái gập lỏng.
# The roof is the part of the splint along the back of the thumb.
step-check-thumb-under-roof = Kiểm tra: cả ngón cái nằm dưới mái nẹp.
step-rest-thumb-up-on-towel = Đặt bàn tay lên khăn, ngón cái hướng lên.
step-keep-thumb-raised = Suốt lúc làm, giữ ngón cái nâng lên.
step-lay-splint-along-thumb-side = Đặt nẹp dọc cẳng tay phía ngón cái.
step-check-thumb-straight-in-splint = Kiểm tra: cả ngón cái nằm thẳng trong nẹp.

## Arm splints and bands

step-turn-hand-as-splint = Xoay bàn tay theo dáng của nẹp.
step-lay-whole-arm-in = Đặt cánh tay vào nẹp, khuỷu tay gập.
step-elbow-in-hollow = Để mỏm khuỷu tay nằm trong chỗ lõm của nó.
step-keep-hand-turned = Giữ bàn tay xoay như cũ.
step-bend-elbow-as-splint = Gập khuỷu tay đúng bằng độ gập của nẹp.
step-lay-splint-on-elbow-front = Đặt nẹp dọc mặt trước khuỷu tay.
step-check-elbow-point-free = Kiểm tra: không có gì ép lên mỏm khuỷu tay.
step-slide-band-up = Luồn vòng đã mở lên cẳng tay.
step-seat-band-below-elbow = Đặt vòng ở chỗ cẳng tay to nhất, dưới khuỷu tay.
step-pad-on-sore-side = Xoay miếng đệm về phía đau của cánh tay.
step-check-no-tingling = Nắm tay lại. Bàn tay không được châm chích.
step-slide-band-over-hand = Luồn vòng đã mở qua bàn tay.
step-seat-band-at-wrist-bone = Đặt vòng lên xương tròn ở cổ tay.
step-slide-band-off = Trượt vòng ra. Không kéo lê vòng.

## Splints with loops for the fingers

step-fingers-through-loops = Luồn mỗi ngón tay qua quai của nó.
step-loops-beside-knuckles = Đẩy mỗi quai đến sát khớp bàn ngón.
step-fingers-out-of-loops = Rút mỗi ngón tay ra khỏi quai của nó.
step-check-fist-lifts-wrist = Nắm tay nhẹ. Khi đó cổ tay cần nâng lên.
# A pull is an elastic cord between a loop and the frame.
step-hook-on-pulls = Móc dây kéo của mỗi quai vào khung.
step-unhook-pulls = Tháo móc dây kéo của mỗi quai.
step-check-fingers-bend-against-pull = Kiểm tra: các ngón gập được ngược với sức kéo.

## Splints for the whole hand

step-keep-wrist-up-fingers-straight = Giữ cổ tay nâng lên và các ngón thẳng.
step-hand-on-towel-fingers-straight = Đặt bàn tay lên khăn cuộn, các ngón thẳng.
step-check-middle-joints-bend = Kiểm tra: các khớp giữa của ngón tay gập được.
step-lay-forearm-in = Đặt cẳng tay vào nẹp.
step-thumb-on-its-rest = Đặt ngón cái vào chỗ riêng của nó.
step-fingers-on-rest = Đặt các ngón cạnh nhau lên nẹp.
step-bend-big-knuckles = Gập các khớp bàn ngón. Để các ngón thẳng.
step-keep-big-knuckles-bent = Giữ các khớp bàn ngón gập và các ngón thẳng.
step-fingers-flat-on-splint = Đặt mỗi ngón tay áp phẳng vào nẹp.
step-check-middle-joints-straight = Kiểm tra: các khớp giữa của ngón tay thẳng.
step-spread-fingers-in-grooves = Đặt mỗi ngón tay thẳng trong rãnh riêng.
step-let-hand-go-loose = Thả lỏng bàn tay hết mức.
step-open-hand-slowly = Mở bàn tay từ từ. Không bao giờ ép mạnh.
step-lay-hand-on-cushion = Đặt lòng bàn tay và cẳng tay lên chiếc gối mềm của nẹp.
step-fingers-in-gaps = Đặt mỗi ngón tay vào khe riêng.
step-dry-palm-and-gaps = Lau khô lòng bàn tay và da giữa các ngón.
