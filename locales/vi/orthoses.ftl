### Splints: names, straps, places to check, and the steps of putting on and taking off.
### “Bàn tay đeo nẹp” and “tay kia” are used; left and right are never typed.
### “Kiểm tra: …” is followed by what has to be true.

## Names
## The name stands inside sentences; the short form is a label in tables.

orthosis-forearm-thumb-spica-name = nẹp ngón cái dài
orthosis-forearm-thumb-spica-short = Cẳng tay và ngón cái
orthosis-hand-thumb-spica-name = nẹp ngón cái ngắn
orthosis-hand-thumb-spica-short = Bàn tay và ngón cái
orthosis-short-cmc-name = nẹp gốc ngón cái
orthosis-short-cmc-short = Gốc ngón cái
orthosis-short-cmc-mcp-block-name = nẹp gốc ngón cái có chặn khớp bàn ngón cái
orthosis-short-cmc-mcp-block-short = Gốc ngón cái và khớp bàn ngón
orthosis-soft-wrist-thumb-wrap-name = nẹp quấn mềm cổ tay và ngón cái
orthosis-soft-wrist-thumb-wrap-short = Cổ tay và ngón cái, mềm
orthosis-soft-thumb-wrap-name = nẹp quấn mềm ngón cái
orthosis-soft-thumb-wrap-short = Ngón cái, mềm
orthosis-wrist-only-name = nẹp cổ tay
orthosis-wrist-only-short = Cổ tay

## Straps
## Each name is put into “Cài …” and “Mở …”.

strap-wrist = dây đai cổ tay
strap-forearm = dây đai cẳng tay
strap-palm = dây đai lòng bàn tay
strap-thumb = dây đai ngón cái
# A short splint ends at the wrist; this strap runs along that end.
strap-wrist-edge = dây đai cạnh cổ tay

## Places to look at in the skin check

spot-wrist-bone-thumb-side = xương cổ tay phía ngón cái
spot-wrist-bone-little-finger-side = xương cổ tay phía ngón út
spot-thumb-web = da giữa ngón cái và ngón trỏ
spot-thumb-knuckle = mặt lưng và hai bên khớp bàn ngón cái
spot-thumb-base = xương ở gốc ngón cái
spot-palm-crease = lòng bàn tay, chỗ mép nẹp
spot-forearm-edge = cẳng tay, chỗ mép nẹp

## Putting it on
## One action a step. The other hand does the work.

step-wash-dry-hands = Rửa tay và lau thật khô.
step-check-lining = Kiểm tra: nẹp sạch, khô và bên trong nhẵn.
step-open-straps = Mở hết các dây đai.
step-rest-arm-on-table = Đặt cẳng tay lên mặt bàn.
step-slide-thumb-in = Luồn ngón cái vào nhẹ nhàng.
step-lay-hand-in = Đặt lòng bàn tay vào nẹp, để ngón cái ở ngoài.
step-seat-at-wrist = Ấn nẹp vào sát, cho chỗ cong của nẹp nằm đúng cổ tay.
step-seat-at-thumb-base = Ấn nẹp vào sát quanh gốc ngón cái.
step-smooth-the-wrap = Vuốt phẳng miếng quấn cho không có nếp gấp.
# $strap is a strap's name, such as “dây đai cổ tay”.
step-close-strap = Cài { $strap }.
step-check-strap-room = Kiểm tra: đầu một ngón của tay kia lọt được dưới mỗi dây đai.
step-check-wrist-bends = Kiểm tra: cổ tay gập được.
step-check-thumb-knuckle-bends = Kiểm tra: khớp bàn ngón cái và đầu ngón cái gập được.
step-check-thumb-tip-bends = Kiểm tra: đầu ngón cái gập được.
step-check-fist = Kiểm tra: nắm tay được và cử động ngón cái được.
step-look-at-fingers = Nhìn các ngón tay và ngón cái. Lúc nào cũng phải ấm và có màu như thường.

## Taking it off

# $strap is a strap's name, such as “dây đai cổ tay”.
step-undo-strap = Mở { $strap }.
step-lift-off = Nhấc nẹp ra. Không kéo lê nẹp.
step-lift-off-thumb-side = Nhấc nẹp ra về phía ngón cái. Không kéo lê nẹp.
step-lift-off-elbow-front = Nhấc nẹp khỏi mặt trước khuỷu tay. Không kéo lê nẹp.
step-lift-out-of-thumb-web = Nhấc nẹp ra khỏi chỗ giữa ngón cái và ngón trỏ.
step-lift-off-little-side = Nhấc nẹp ra về phía ngón út. Không kéo lê nẹp.
step-slide-off-thumb = Trượt nẹp ra khỏi ngón cái. Không vặn nẹp.
step-look-at-skin = Xem da ở mọi phía.
