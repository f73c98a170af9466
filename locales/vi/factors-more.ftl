### More advice for what is particular about one person.
### Each message is one or two short sentences that stand inside a section of the guide.
### $checks is a number of skin checks a day, $limit a finished length of time.

## Skin that feels little or nothing

factor-numb-skin-no-packs = Không chườm nóng và không chườm đá lên chỗ da bị tê.

## Rash from natural rubber

factor-latex-allergy-itch = Nếu da ngứa, dù chỉ một chút, hãy gọi chúng tôi.
factor-latex-allergy-gloves = Không mang găng cao su bên ngoài nẹp. Dùng loại găng khác.
factor-latex-allergy-spare-parts = Không thêm dây thun hoặc dây đai co giãn. Hãy xin chúng tôi loại an toàn.

## Rash from metal

factor-nickel-allergy-itch = Nếu da ngứa, dù chỉ một chút, hãy gọi chúng tôi.
factor-nickel-allergy-bare-metal = Không để kim loại trần chạm da. Báo chúng tôi nếu lớp bọc bị mòn thủng.

## Rash from tape and glue

factor-adhesive-allergy-itch = Nếu da ngứa, dù chỉ một chút, hãy gọi chúng tôi.
factor-adhesive-allergy-no-tape = Không dán băng dính và không dán băng cá nhân lên da. Hãy xin chúng tôi dây đai.
factor-adhesive-allergy-linings = Không dán miếng đệm hoặc lớp lót vào trong nẹp.

## Trouble remembering

factor-memory-difficulty-same-times = Mỗi ngày giữ đúng giờ như nhau. Đặt chuông báo cho các giờ đó.
factor-memory-difficulty-tick = Treo bản hướng dẫn này lên tường. Đánh dấu sau mỗi lần xem da.
factor-memory-difficulty-in-sight = Để nẹp ở một chỗ dễ thấy. Mỗi lần làm đều đọc các bước.
factor-memory-difficulty-after-meals = Tập cùng lúc với việc thường làm, như bữa ăn.

## Somebody at home who helps

factor-helper-at-home-looks = Cũng nhờ người giúp xem da.
factor-helper-at-home-reads = Để người giúp đọc to từng bước và cài dây đai.
factor-helper-at-home-heavy-jobs = Để người giúp làm những việc mà bản hướng dẫn này dặn tạm chưa làm.

## A child

# The reader may be the child or a grown-up reading aloud.
factor-child-grown-up-looks = Mỗi lần đều để người lớn xem da. Đau chỗ nào thì nói ngay.
factor-child-grown-up-helps = Có người lớn ở bên mỗi khi đeo hoặc tháo nẹp.
factor-child-school = Mang một bản sao của bản hướng dẫn này đến trường.
factor-child-game = Biến mỗi cử động thành một trò chơi.
factor-child-small-parts = Để dây đai rời và đồ nhỏ xa tầm tay em bé và trẻ nhỏ.

## Pregnancy

factor-pregnancy-swelling = Có ngày bàn tay có thể sưng. Khi ngồi, đặt bàn tay lên gối kê.
factor-pregnancy-strap-room = Mỗi ngày kiểm tra xem đầu một ngón có lọt dưới mỗi dây đai không.
factor-pregnancy-grooves = Xem có vệt hằn sâu do dây đai không. Báo chúng tôi nếu vệt không hết.

## Work in the heat

factor-heat-work-keep-away = Để nẹp xa lò nướng, bếp nóng và động cơ. Hãy hỏi chúng tôi trước khi làm việc ở chỗ nóng.
factor-heat-work-dry-skin = Lau khô mồ hôi ngay. Xem có chỗ da mềm, trắng không.
factor-heat-work-fresh-sleeve = Mỗi ca làm mang ống lót mới, khô. Ống ẩm thì thay ngay.

## Work with food

factor-food-work-ask = Hỏi nơi làm việc xem có được đeo nẹp gần thức ăn không. Hỏi cách che nẹp.
factor-food-work-damp = Găng trùm ngoài nẹp giữ hơi ẩm bên trong. Sau giờ làm, xem có chỗ da mềm, trắng không.
factor-food-work-clean = Rửa sạch nẹp sau mỗi ca làm. Vứt miếng che đi.

## Work in the wet

factor-wet-work-cover = Che nẹp lại, hoặc để người khác làm việc ướt.
factor-wet-work-dry-breaks = Ngừng thường xuyên để lau khô da. Xem có chỗ da mềm, trắng không.
factor-wet-work-spare-sleeves = Để sẵn ống lót dự phòng. Ống ẩm thì thay ngay.

## Work with machines

factor-machinery-moving-parts = Không làm việc ở máy đang chạy khi đeo nẹp. Máy có thể cuốn dây đai và kéo bàn tay vào.
factor-machinery-ask = Ở nơi làm việc cũng giữ đúng các giờ này. Hãy hỏi chúng tôi và nơi làm việc trước khi trở lại làm với máy.

## Slow healing

factor-slow-healing-no-early-end = Bàn tay cần đủ thời gian. Không ngừng sớm, dù thấy đã khỏe.
factor-slow-healing-any-break = Nếu da bị rách, dù chỉ một chút, hãy gọi chúng tôi ngay trong ngày.
factor-slow-healing-smoke = Nếu quý vị hút thuốc, hãy nhờ chúng tôi hoặc bác sĩ giúp bỏ thuốc. Khói thuốc làm chậm lành.

## An open wound, stitches or pins

factor-open-wound-look = Xem phần nhìn thấy được của vết thương hoặc đinh. Nếu có gì rỉ dịch, có mùi hoặc xê dịch, hãy gọi chúng tôi ngay hôm nay.
factor-open-wound-dry = Giữ bàn tay khô cho đến khi chúng tôi báo là da đã kín.
factor-open-wound-no-rubbing = Không chà hoặc ấn lên vết thương. Không chạm vào mũi khâu hoặc đinh.
factor-open-wound-dressing = Giữ băng vết thương sạch và khô. Hỏi chúng tôi ai sẽ thay băng.

## Poor blood flow

factor-poor-circulation-colour = So đầu các ngón với tay kia. Nếu da bị rách, hãy gọi chúng tôi ngay trong ngày.
factor-poor-circulation-strap-room = Luồn đầu một ngón dưới mỗi dây đai. Nhất định phải lọt được.
factor-poor-circulation-warm = Giữ bàn tay ấm bằng quần áo. Không chườm đá và không chườm nóng.

## Only one hand to use

factor-one-hand-only-table = Đặt cánh tay lên mặt bàn. Dùng cạnh bàn hoặc chân để giúp.
factor-one-hand-only-helper = Chỗ nào bản hướng dẫn này ghi tay kia, quý vị có thể nhờ người giúp.
factor-one-hand-only-mirror = Dùng gương để xem phía khuất của bàn tay.

## Strong pain or worry

factor-high-pain-worry-small = Bắt đầu bằng cử động nhỏ nhất trong danh sách này. Làm ít mà thường xuyên cũng tốt.
factor-high-pain-worry-rest = Nghỉ trước khi bàn tay đau nhiều. Rồi làm tiếp.
factor-high-pain-worry-call = Có gì lo lắng thì gọi chúng tôi sớm. Không câu hỏi nào là quá nhỏ.
