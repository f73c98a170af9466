### Splints of the fingers and the hand: names, straps, places to check, and the steps of putting on and taking off.
### “Ngón tay” is the finger that the splint is for; where several fingers are in it, that one is “ngón đang điều trị”.
### The joints of a finger are khớp bàn ngón, khớp giữa and đầu ngón. Left and right are never typed.

## Names
## The name stands inside sentences; the short form is a label in tables.

orthosis-tip-shell-custom-name = nẹp đầu ngón tay
orthosis-tip-shell-custom-short = Đầu ngón tay
orthosis-tip-shell-ready-name = nẹp đầu ngón tay làm sẵn
orthosis-tip-shell-ready-short = Đầu ngón, làm sẵn
orthosis-tip-cast-name = nẹp bột đầu ngón tay
orthosis-tip-cast-short = Bột đầu ngón tay
orthosis-finger-gutter-middle-joint-name = nẹp khớp giữa ngón tay
orthosis-finger-gutter-middle-joint-short = Khớp giữa
orthosis-finger-gutter-long-name = nẹp cả ngón tay
orthosis-finger-gutter-long-short = Cả ngón tay
orthosis-ring-stops-bending-back-name = nẹp nhẫn chặn ưỡn ngược
orthosis-ring-stops-bending-back-short = Nhẫn, không ưỡn ngược
orthosis-ring-keeps-straight-name = nẹp nhẫn giữ thẳng ngón tay
orthosis-ring-keeps-straight-short = Nhẫn, giữ thẳng
orthosis-serial-finger-cast-name = nẹp bột duỗi thẳng ngón tay
orthosis-serial-finger-cast-short = Bột duỗi thẳng ngón tay
orthosis-spring-finger-extension-name = nẹp ngón tay có lò xo
orthosis-spring-finger-extension-short = Ngón tay, lò xo
orthosis-finger-wedge-stepped-name = nẹp ngón tay có miếng nêm
orthosis-finger-wedge-stepped-short = Ngón tay, miếng nêm
orthosis-finger-extension-block-name = nẹp ngón tay có mái
orthosis-finger-extension-block-short = Ngón tay, có mái
orthosis-buddy-straps-name = nẹp dây buộc hai ngón
orthosis-buddy-straps-short = Dây buộc hai ngón
orthosis-knuckle-block-name = nẹp khớp bàn ngón cho một ngón tay
orthosis-knuckle-block-short = Khớp bàn ngón, một ngón tay
orthosis-trigger-ring-name = nẹp nhẫn khớp giữa
orthosis-trigger-ring-short = Nhẫn khớp giữa
orthosis-relative-extension-yoke-name = nẹp thanh nâng một ngón tay
orthosis-relative-extension-yoke-short = Thanh, nâng ngón tay
orthosis-relative-flexion-yoke-name = nẹp thanh hạ một ngón tay
orthosis-relative-flexion-yoke-short = Thanh, hạ ngón tay
orthosis-dorsal-block-long-name = nẹp dài mu bàn tay
orthosis-dorsal-block-long-short = Mu bàn tay, dài
orthosis-dorsal-block-short-name = nẹp ngắn mu bàn tay
orthosis-dorsal-block-short-short = Mu bàn tay, ngắn
orthosis-ulnar-gutter-name = nẹp dài ngón áp út và ngón út
orthosis-ulnar-gutter-short = Áp út, út và cổ tay
orthosis-knuckle-shell-ring-little-name = nẹp khớp bàn ngón áp út và ngón út
orthosis-knuckle-shell-ring-little-short = Khớp bàn ngón áp út, út
orthosis-metacarpal-sleeve-name = nẹp ống ôm xương bàn tay
orthosis-metacarpal-sleeve-short = Ống ôm xương bàn tay
orthosis-phalanx-gutter-pair-name = nẹp cho một cặp ngón tay
orthosis-phalanx-gutter-pair-short = Cặp ngón tay
orthosis-night-finger-extension-name = nẹp ngón tay ban đêm
orthosis-night-finger-extension-short = Ngón tay, ban đêm
orthosis-drift-strap-name = nẹp dây đai mềm khớp bàn ngón
orthosis-drift-strap-short = Dây đai mềm khớp bàn ngón
orthosis-knuckle-extension-block-name = nẹp khớp bàn ngón có thanh
orthosis-knuckle-extension-block-short = Thanh khớp bàn ngón

## Straps
## Each name is put into “Cài …” and “Mở …”.

strap-finger-tape = dây đai băng dính
strap-finger-base = dây đai ở gốc ngón tay
strap-finger-past-middle-joint = dây đai ngay sau khớp giữa, phía đầu ngón
strap-finger-end = dây đai gần đầu ngón
# Buddy straps hold a finger to its neighbour.
strap-finger-pair-base = dây đai ở gốc hai ngón tay
strap-finger-pair-end = dây đai sau khớp giữa của hai ngón tay, phía đầu ngón
# In a shell that holds a finger and its neighbour.
strap-finger-pair = dây đai quanh hai ngón tay
# Across all four fingers, under a roof on the back of the hand.
strap-finger-row = dây đai ngang các ngón
strap-finger-loops = các quai ngón tay

## Places to look at in the skin check

spot-finger-end-joint-back = mặt lưng khớp đầu ngón
spot-finger-nail-skin = da quanh móng
spot-finger-pad-sides = hai bên phần mềm đầu ngón
spot-finger-sides = hai bên ngón tay
spot-finger-sides-near-base = hai bên ngón tay, gần gốc
spot-finger-middle-joint-back = mặt lưng khớp giữa
spot-finger-middle-joint-backs = mặt lưng các khớp giữa
spot-ring-little-middle-joint-backs = mặt lưng các khớp giữa
spot-finger-joint-creases = các nếp gấp ở ngón tay, phía lòng bàn tay
spot-finger-web = da chỗ các ngón nối với lòng bàn tay
spot-finger-between = da giữa các ngón
spot-finger-under-ring = da dưới nhẫn
spot-finger-cast-edges = da dọc hai mép bột
spot-finger-tip-cast-edges = da dọc hai mép bột
spot-finger-base-front = ngón tay phía lòng bàn tay, gần gốc
spot-finger-first-bone-back = mặt lưng ngón tay, sát khớp bàn ngón
spot-finger-knuckle-backs = mặt lưng các khớp bàn ngón
spot-ring-little-knuckle-backs = mặt lưng các khớp bàn ngón
spot-finger-hand-edge = cạnh bàn tay phía ngón út
spot-finger-wrist-back-edge = mặt lưng cổ tay, chỗ mép nẹp
spot-finger-over-break = da trên chỗ xương gãy
spot-finger-wound-line = vết thương hoặc sẹo

## Fingertip splints
## The tip must not bend while it heals: it lies on the table from before the strap opens until it is closed again.

step-finger-tip-on-table = Đặt ngón tay nằm phẳng trên mặt bàn, đầu ngón thẳng.
step-finger-dry-on-table = Lau khô ngón tay bằng khăn. Giữ đầu ngón nằm phẳng.
step-finger-slide-on-from-tip = Luồn nẹp vào từ đầu ngón. Giữ ngón tay thẳng.
step-finger-lift-when-closed = Chỉ nhấc ngón tay lên khi nẹp đã cài xong.
step-finger-check-tip-straight = Kiểm tra: đầu ngón nằm thẳng và chắc trong nẹp.
step-finger-lay-out-towel = Trải khăn lên mặt bàn trước khi mở bất cứ thứ gì.
step-finger-slide-off-forwards = Trượt nẹp thẳng ra qua đầu ngón. Không để nẹp nghiêng.
step-finger-tip-if-healing = Nếu đầu ngón đang lành, giữ đầu ngón nằm phẳng trên mặt bàn.
step-finger-look-on-table = Xem da trong khi ngón tay vẫn nằm trên mặt bàn.

## Splints along a finger

step-finger-straight-on-table = Đặt ngón tay lên mặt bàn, thẳng hết mức có thể.
step-finger-push-to-base = Đẩy nẹp vào cho đến khi nẹp tới gốc ngón tay.
step-finger-slide-on = Luồn nẹp vào nhẹ nhàng từ đầu ngón.
step-finger-straps-off-joints = Kiểm tra: không có dây đai nào nằm trên khớp.
step-finger-check-tip-bends = Kiểm tra: đầu ngón tay gập được.
step-finger-check-middle-joint-bends = Kiểm tra: khớp giữa của ngón tay gập được.
step-finger-check-knuckle-bends = Kiểm tra: khớp bàn ngón của ngón tay gập được.
step-finger-middle-if-healing = Nếu khớp giữa đang lành, giữ khớp nằm phẳng trên mặt bàn.
step-finger-straight-if-healing = Nếu ngón tay đang lành, giữ ngón thẳng trên mặt bàn.

## A roof that stops a finger from straightening

step-finger-bend-slightly = Gập khớp giữa của ngón tay một chút.
step-finger-roof-on-finger = Đặt nẹp dọc mặt lưng ngón tay.
step-finger-check-stops-short = Kiểm tra: mái nẹp chặn không cho ngón tay duỗi quá thẳng.
step-finger-bent-if-healing = Nếu khớp giữa đang lành, giữ khớp hơi gập.

## Springs and wedges
## The pull comes last when it goes on and first when it comes off.

step-finger-joint-at-spring = Đặt khớp giữa thẳng hàng với chỗ cong của lò xo.
step-finger-spring-last = Để lò xo kéo từ từ.
step-finger-hold-spring = Giữ lò xo để nó không bật lại.
step-finger-wedge-back = Trượt miếng nêm lui hết về sau.
step-finger-wedge-in = Trượt miếng nêm vào đến dấu phòng khám đã đặt.
step-finger-check-mild-pull = Kiểm tra: sức kéo nhẹ và không đau.

## Rings

step-finger-check-ring = Kiểm tra: nhẫn sạch, khô và không bị cong.
step-finger-keep-straight = Giữ ngón tay thẳng.
step-finger-slide-ring-on = Luồn nhẫn vào từ đầu ngón.
step-finger-ring-cross-front = Xoay nhẫn cho chỗ bắt chéo nằm bên dưới khớp giữa, phía lòng bàn tay.
step-finger-ring-cross-back = Xoay nhẫn cho chỗ bắt chéo nằm trên mặt lưng khớp giữa.
step-finger-ring-over-joint = Đẩy nhẫn vào cho đến khi nhẫn che khớp giữa.
step-finger-check-full-bend = Kiểm tra: ngón tay gập được hết.
step-finger-check-not-back = Kiểm tra: khớp giữa không ưỡn ngược được.
step-finger-check-middle-joint-straight = Kiểm tra: khớp giữa luôn thẳng.
step-finger-slide-ring-off = Trượt nhẫn ra qua đầu ngón.
step-finger-ring-stuck = Nếu nhẫn bị kẹt, dùng một ít nước xà phòng.

## Casts
## Only the clinic puts a cast on and takes it off.

step-finger-cast-by-clinic = Chỉ để phòng khám bó bột.
step-finger-cast-cover = Bọc kín bột bằng túi trước khi tắm rửa.
step-finger-cast-look-at-edges = Xem da dọc hai mép bột.
step-finger-cast-off-by-clinic = Chỉ để phòng khám tháo bột.
step-finger-cast-no-cutting = Không cắt bột, không kéo bột, không chọc vật gì vào dưới bột.
step-finger-cast-slips = Nếu bột bị tuột hoặc vỡ, giữ ngón tay thẳng và gọi chúng tôi.

## Buddy straps

step-finger-dry-between = Lau da thật khô, cả giữa các ngón.
step-finger-beside-neighbour = Đặt ngón tay cạnh ngón kề bên mà phòng khám đã chọn.
step-finger-check-both-bend = Kiểm tra: hai ngón tay gập cùng nhau.
step-finger-look-between = Xem da ở mọi phía, cả giữa các ngón.

## Knuckle splints for one finger

step-finger-push-into-ring = Đẩy ngón tay vào nhẫn.
step-finger-palm-piece-flat = Đặt miếng lòng bàn tay nằm phẳng trong lòng bàn tay.

## Bar splints
## One finger lies higher or lower than its neighbours. In the first kind wrist and fingers must not drop.

step-finger-towel-roll = Đặt một khăn cuộn lên mặt bàn.
step-finger-wrist-back-on-towel = Đặt bàn tay lên khăn, cổ tay ngả về phía mu bàn tay.
step-finger-fingers-straight = Giữ các ngón thẳng.
step-finger-yoke-on-top = Đặt ngón đang điều trị lên trên thanh.
step-finger-yoke-others-under = Luồn các ngón bên cạnh xuống dưới thanh.
step-finger-yoke-below = Luồn ngón đang điều trị xuống dưới thanh.
step-finger-yoke-others-over = Đặt các ngón bên cạnh lên trên thanh.
step-finger-yoke-to-base = Đẩy thanh đến gốc các ngón.
step-finger-check-higher = Kiểm tra: ngón đang điều trị nằm cao hơn các ngón bên cạnh.
step-finger-check-lower = Kiểm tra: ngón đang điều trị nằm thấp hơn các ngón bên cạnh.
step-finger-check-joints-beyond-bend = Kiểm tra: các khớp giữa và đầu các ngón gập được.
step-finger-slide-off-fingers = Trượt nẹp ra phía trước, khỏi các ngón.
step-finger-tendon-if-healing = Nếu gân đang lành, không để cổ tay hay các ngón rũ xuống.

## Splints on the back of the hand
## For sewn bending tendons: wrist and fingers stay bent, and nobody straightens them.

step-finger-only-when-allowed = Chỉ làm các bước này nếu phòng khám đã cho phép.
step-finger-curl-over-towel = Đặt bàn tay vắt trên khăn, cổ tay gập về phía lòng bàn tay, các ngón cong vào.
step-finger-roof-over-hand = Hạ nẹp xuống mu bàn tay.
step-finger-check-under-roof = Kiểm tra: mọi đầu ngón nằm dưới mái nẹp.
step-finger-stay-curled = Để các ngón cong. Không duỗi thẳng ra.
step-finger-look-while-curled = Xem da trong khi các ngón vẫn cong.

## Splints for broken bones

step-finger-pad-between = Đặt miếng mềm vào giữa hai ngón tay.
step-finger-little-side-in = Đặt bàn tay phía ngón út vào nẹp.
step-finger-knuckles-in-bend = Kiểm tra: các khớp bàn ngón nằm đúng chỗ cong của nẹp.
step-finger-knuckles-bent-fingers-straight = Gập các khớp bàn ngón. Giữ các ngón thẳng.
step-finger-check-not-crossed = Kiểm tra: không ngón tay nào bắt chéo ngón bên cạnh.
step-finger-knuckles-if-healing = Nếu xương đang lành, giữ các khớp bàn ngón gập.
step-finger-sleeve-over-hand = Luồn ống qua bàn tay đến chỗ xương đau.
step-finger-sleeve-behind-knuckles = Giữ mép trước của ống ở phía sau các khớp bàn ngón.
step-finger-slide-off-hand = Trượt nẹp ra phía trước, khỏi bàn tay.

## Night splints, finger loops, knuckle bars

step-finger-rest-easy = Đặt ngón tay vào, chỉ thẳng đến mức dễ chịu.
step-finger-check-no-pull = Kiểm tra: không có gì kéo căng da.
step-finger-loops-on = Luồn mỗi ngón tay vào quai của nó.
step-finger-easy-pull = Chỉ kéo quai đến mức dễ chịu.
step-finger-check-in-line = Kiểm tra: các ngón chỉ thẳng về phía trước.
step-finger-bend-knuckles-little = Gập các khớp bàn ngón một chút.
step-finger-under-bar = Luồn ngón áp út và ngón út xuống dưới thanh.
step-finger-check-straighten = Kiểm tra: các khớp giữa duỗi thẳng được.

## Putting it on with one hand
## There is no other hand: table, towel, book, thigh and the thumb of the same hand do the work.

step-finger-against-book = Đặt nẹp đã mở lên mặt bàn, tựa vào quyển sách nặng.
step-finger-slide-along-table = Trượt ngón tay nằm phẳng dọc mặt bàn vào nẹp.
step-finger-slide-in-easy = Trượt ngón tay dọc mặt bàn vào nẹp.
step-finger-push-under-roof = Đẩy mỗi ngón tay nằm trong nẹp vào dưới mái nẹp.
step-finger-push-hand-in = Đẩy bàn tay vào ống.
step-finger-own-thumb = Dùng ngón cái của chính bàn tay đó để cài dây đai.
step-finger-upright-in-towel = Ấn nẹp đứng thẳng vào khăn cuộn.
step-finger-thumb-turns-ring = Dùng ngón cái của chính bàn tay đó để xoay nhẫn.
step-finger-wrist-stays-back = Giữ cổ tay ngả về phía mu bàn tay.
step-finger-straps-as-loops = Bắt đầu với mỗi dây đai đã cài thành vòng lỏng.
step-finger-through-loops = Đẩy cả hai ngón tay qua các vòng dây.
step-finger-trap-strap-end = Kẹp đầu mỗi dây đai dưới đùi và kéo nhẹ.
step-finger-cast-cover-with-knees = Kẹp túi giữa hai đầu gối và đẩy bàn tay vào.
step-finger-trained-helper = Để người giúp đã được phòng khám hướng dẫn làm việc này. Không bao giờ làm một mình.
