### Advice for what is particular about one person.
### Each message is one or two short sentences that stand inside a section of the guide.
### $checks is a number of skin checks a day, $limit a finished length of time.

## Skin that feels little or nothing

factor-numb-skin-look = Hãy tin mắt, không tin cảm giác. Xem mọi phía của bàn tay. Có thể dùng gương.
factor-numb-skin-strap-room = Luồn đầu một ngón của tay kia dưới mỗi dây đai. Nhất định phải lọt được.
factor-numb-skin-hot-and-sharp = Thử đồ nóng bằng tay kia. Để vật sắc nhọn xa chỗ da bị tê.

## Thin or tender skin

factor-fragile-skin-no-tape = Không dán băng dính hoặc miếng dính lên da.
factor-fragile-skin-lift = Tháo nẹp nhẹ nhàng. Không để nẹp cọ hoặc kéo lê trên da.
factor-fragile-skin-sleeve = Mang ống lót vải bông trơn, khô dưới nẹp. Thay mỗi ngày.

## Swelling

factor-swelling-raise = Khi ngồi, kê bàn tay cao hơn tim.
factor-swelling-loosen = Nếu dây đai bị chặt, nới ra một chút. Cài lại khi bớt sưng.
factor-swelling-pump = Cử động các ngón tự do thường xuyên. Như vậy giúp bớt sưng.

## Diabetes

factor-diabetes-any-break = Nếu da bị rách, dù chỉ một chút, hãy gọi chúng tôi ngay trong ngày.

## Easy bleeding

# For people who take something against clotting. No medicine is named, and none is to be stopped.
factor-blood-thinners-bruise = Nếu vết bầm dưới nẹp lan rộng, hãy gọi chúng tôi ngay hôm nay.
factor-blood-thinners-no-rubbing = Không chà mạnh bàn tay. Giữ cho bàn tay không bị va đập.

## Low vision

factor-low-vision-check = Dùng tay kia sờ tìm chỗ nóng, cứng, ướt hoặc đau. Cũng nhờ người khác xem da.
factor-low-vision-dots = Xin chúng tôi gắn chấm nổi lên dây đai. Nhờ đó phân biệt được các dây.

## Living alone

factor-lives-alone-table = Đặt cánh tay lên mặt bàn. Để mặt bàn đỡ nẹp trong khi tay kia làm.
factor-lives-alone-ready = Chuẩn bị sẵn quần áo rộng và bữa ăn dễ làm.
factor-lives-alone-phone = Để số điện thoại của chúng tôi cạnh giường.

## Night work

factor-night-work-main-sleep = Khi bản hướng dẫn này nói ban đêm, đó là giấc ngủ chính của quý vị.
factor-night-work-after-sleep = Tập lần đầu sau giấc ngủ chính.

## Rash from foam rubber

factor-neoprene-allergy-itch = Nếu da ngứa, dù chỉ một chút, hãy gọi chúng tôi.
factor-neoprene-allergy-spare-parts = Không thêm miếng đệm, găng hoặc miếng quấn bằng cao su xốp.

## A new baby

factor-new-mother-flat-hands = Bế và cho con bú với bàn tay phẳng. Giữ ngón cái sát các ngón khác.
factor-new-mother-strap-room = Bàn tay có thể sưng. Mỗi ngày kiểm tra xem đầu một ngón có lọt dưới mỗi dây đai không.
factor-new-mother-edges = Bọc các mép cứng bằng vải sạch trước khi bế con.
