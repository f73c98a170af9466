### The guide: everything that is not about one condition, splint, activity or exercise.
### Vietnamese. The reader is “quý vị” throughout; the pronoun is left out where Vietnamese leaves it out. We = “chúng tôi”.
### “Phải” means both “right” and “must”: never write “phải” (must) straight after tay, ngón, bên, mặt or khớp.
### “Ngón tay” includes the thumb: where the thumb is not meant, say “trừ ngón cái”.
### Every splint is named “nẹp …”; it is worn (đeo) and taken off (tháo).
### knuckle = khớp bàn ngón; base of the thumb = gốc ngón cái; never mix these two.
### No date, hour, number, side or angle is typed here; they come in as variables.
### $side is left or right and only chooses between wordings.

## Title and furniture

# $orthosis is the splint's name, such as "nẹp ngón cái dài".
guide-title = Dùng { $orthosis }
# $name is the person's name. Stands at the foot of every page.
guide-made-for = Chỉ dành cho { $name }. Bàn tay { $side ->
    [left] trái
   *[right] phải
}{ $finger ->
    [index] , ngón trỏ
    [middle] , ngón giữa
    [ring] , ngón áp út
    [little] , ngón út
   *[none] {""}
}.
guide-made-for-nobody = Chỉ dành cho một người. Bàn tay { $side ->
    [left] trái
   *[right] phải
}{ $finger ->
    [index] , ngón trỏ
    [middle] , ngón giữa
    [ring] , ngón áp út
    [little] , ngón út
   *[none] {""}
}.
guide-caution = Bản hướng dẫn này không thay cho lời dặn của chuyên viên trị liệu hoặc bác sĩ phẫu thuật. Nếu họ dặn khác, hãy làm theo lời họ. Không cho ai mượn nẹp.
# Printed on every sheet in a language that no qualified translator has signed off.
guide-drafted = Người dịch chuyên môn chưa kiểm tra bản này.
guide-outdated = Bản tiếng Anh của tờ này đã thay đổi sau khi dịch. Hãy hỏi phòng khám trước khi dùng.
guide-page = Trang { $page } / { $pages }
# Where a section stands, in the line of contents.
contents-page = , tr. { $page }

## Which hand

hand-left = Bàn tay trái
hand-right = Bàn tay phải
hand-alt = { $side ->
    [left] Nẹp này dành cho bàn tay trái của quý vị.
   *[right] Nẹp này dành cho bàn tay phải của quý vị.
}

## Section titles

glance-title = Tóm tắt
dates-title = Từng ngày
on-off-title = Đeo và tháo
on-off-intro = { $washing ->
    [never] Chỉ phòng khám làm việc này.
   *[freely] Ngồi vào bàn. Dùng tay kia để làm.
}
skin-title = Xem da
skin-intro = Xem kỹ mỗi ngày { $checks } lần. Xem ở chỗ sáng. { $washing ->
    [supported] Xem những chỗ này mỗi lần tháo nẹp để rửa. Giữa các lần đó, hãy xem mép nẹp và đầu các ngón:
    [never] Không tháo nẹp ra để xem. Xem mép nẹp và đầu các ngón:
   *[freely] Xem những chỗ này:
}
move-title = Cử động bàn tay
move-intro = Làm chậm. Không bao giờ cố ép một cử động.
daily-title = Việc hằng ngày
care-title = Giữ gìn nẹp
note-title = Lời chuyên viên trị liệu
call-title = Khi nào cần gọi
call-intro = Để trang này ở chỗ dễ thấy.

## Facts on the first page

fact-splint = Loại nẹp
# $finger is index, middle, ring or little and only chooses between wordings.
finger-name = { $finger ->
    [index] Ngón trỏ, cạnh ngón cái
    [middle] Ngón giữa
    [ring] Ngón áp út
   *[little] Ngón út
}
fact-for = Dùng để
fact-fitted = Ngày nhận nẹp
fact-full = Đeo đủ giờ từ
fact-full-more = Trước đó tăng dần. Xem bảng từng ngày.
fact-review = Buổi khám tới
# $joints is a list such as "the tip of your thumb and your knuckles"; $count is how many.
fact-free = Cử động tự do: { $joints }.

say-date = { $date }
say-date-time = { $date }, { $time }
say-short-date = { $date }
date-range = { $from } đến { $to }
# $to is the date of the next visit.
date-until-visit = { $from } đến buổi khám: { $to }
# From one clock time to another.
time-range = { $from } đến { $to }

## Joints, as the person would say them

joint-elbow = khuỷu tay
joint-forearm = xoay cẳng tay
joint-wrist = cổ tay
joint-thumb-cmc = gốc ngón cái
joint-thumb-mcp = khớp bàn ngón cái
joint-thumb-ip = đầu ngón cái
joint-fingers-mcp = các ngón tay (trừ ngón cái)
joint-fingers-pip = khớp giữa của các ngón tay
joint-fingers-dip = đầu các ngón tay (trừ ngón cái)
# The affected finger.
joint-finger-mcp = khớp bàn ngón của ngón đau
joint-finger-pip = khớp giữa của ngón đau
joint-finger-dip = đầu ngón đau
joint-other-fingers-mcp = các ngón khác
joint-other-fingers-pip = khớp giữa của các ngón khác
joint-other-fingers-dip = đầu các ngón khác
joint-index-mcp = khớp bàn ngón trỏ
joint-middle-mcp = khớp bàn ngón giữa
joint-ring-mcp = khớp bàn ngón áp út
joint-little-mcp = khớp bàn ngón út
joint-index-pip = khớp giữa của ngón trỏ
joint-middle-pip = khớp giữa của ngón giữa
joint-ring-pip = khớp giữa của ngón áp út
joint-little-pip = khớp giữa của ngón út
joint-index-dip = đầu ngón trỏ
joint-middle-dip = đầu ngón giữa
joint-ring-dip = đầu ngón áp út
joint-little-dip = đầu ngón út

## When to wear it
## “Ngày đeo số”: a bare “ngày” with a figure would read as a day of the month.

strip-days = Ngày đeo số { $from } đến { $to }
strip-from-day = Từ ngày đeo số { $from }
strip-weeks = Tuần { $from } đến { $to }
strip-build = Mỗi ngày đeo thêm một ít. Ban đêm chưa đeo.
strip-key-on = Đeo nẹp
strip-key-off = Không đeo nẹp
strip-key-needed = Đeo khi làm việc nặng
# In phases that guard what heals.
strip-key-guard = Đeo khi ra ngoài, chỗ đông
strip-key-rest = Đeo khi nghỉ
strip-key-part = Đeo một phần thời gian
# $label is a row's label, $times a list of clock times.
strip-alt = { $label }: đeo nẹp từ { $times }.
strip-alt-none = { $label }: không có giờ đeo nẹp cố định.
wear-never-remove = Đeo cả ngày lẫn đêm. Không tháo ra.
# $times is how often it comes off in a day.
wear-off-to-wash = Đeo cả ngày lẫn đêm. Chỉ tháo ra để rửa, mỗi ngày { $times } lần.
wear-off-to-exercise = Đeo cả ngày lẫn đêm. Chỉ tháo ra để rửa và tập, mỗi ngày { $times } lần.
wear-night-and-tasks = Đeo suốt đêm. Ban ngày, đeo khi làm việc nặng.
# In phases that guard what heals: hard tasks wait.
wear-night-and-tasks-guard = Đeo suốt đêm. Ban ngày, đeo khi ra ngoài, ở chỗ đông người và khi làm mọi việc được phép.
wear-night-and-rest = Đeo suốt đêm. Ban ngày, đeo khi nghỉ. Tháo ra khi dùng bàn tay.
# $bouts is how many times a day, $each a finished length of time.
wear-stretch = Đeo mỗi ngày { $bouts } lần, mỗi lần { $each }. Giữa các lần thì tháo ra.
wear-day = Đeo cả ngày. Ban đêm tháo ra.
wear-night = Đeo suốt đêm. Ban ngày tháo ra.
wear-tasks = Chỉ đeo khi làm việc nặng. Ban đêm tháo ra.
wear-tasks-guard = Đeo khi ra ngoài, ở chỗ đông người và khi làm mọi việc được phép. Ban đêm tháo ra.
wear-off = Không đeo.
# $length is how long it is worn while awake.
wear-wean-night = Sau khi thức dậy đeo { $length }, và đeo suốt đêm.
wear-wean-day = Sau khi thức dậy đeo { $length }. Ban đêm tháo ra.

## What comes after the next visit

later-label = Khi chuyên viên trị liệu dặn
later-label-surgeon = Khi bác sĩ phẫu thuật dặn
later-label-next = Về sau, khi chúng tôi dặn
# This splint does not suit that stage.
later-other = Với một nẹp khác.
later-never-remove = Cả ngày lẫn đêm, không nghỉ.
later-off-to-wash = Cả ngày lẫn đêm, chỉ tháo để rửa.
later-off-to-exercise = Cả ngày lẫn đêm, chỉ tháo để rửa và tập.
later-night-and-tasks = Ban đêm và khi làm việc nặng.
later-night-and-tasks-guard = Ban đêm, khi ra ngoài và ở chỗ đông người.
later-night-and-rest = Ban đêm và khi nghỉ.
later-stretch = Vài lần mỗi ngày, để kéo giãn.
later-day = Chỉ ban ngày.
later-night = Chỉ ban đêm.
later-tasks = Chỉ khi làm việc nặng.
later-tasks-guard = Chỉ khi ra ngoài và ở chỗ đông người.
later-off = Không đeo nẹp.
later-wean = Bớt dần, từng bước một.

## The stop box

warning-title-take-off = Tháo nẹp ra và gọi chúng tôi nếu:
warning-title-supported = { $straps ->
    [without] Gọi chúng tôi nếu:
   *[with] Nới dây đai và gọi chúng tôi nếu:
}
warning-title-keep-on = { $straps ->
    [without] Cứ đeo nẹp và gọi chúng tôi nếu:
   *[with] Nới dây đai, cứ đeo nẹp và gọi chúng tôi nếu:
}
# Followed by the signs that cannot wait. $number is the emergency number.
warning-emergency = Cấp cứu, gọi { $number } nếu:
warning-emergency-no-number = Cấp cứu, tìm người giúp ngay nếu:
warning-act-take-off = Tháo nẹp ra. Rồi gọi.
warning-act-supported = { $straps ->
    [without] Luôn đỡ chỗ đau. Rồi gọi.
   *[with] Nới dây đai. Luôn đỡ chỗ đau. Rồi gọi.
}
warning-act-keep-on = { $straps ->
    [without] Không tháo nẹp. Gọi chúng tôi.
   *[with] Nới dây đai. Không tháo nẹp. Rồi gọi.
}

## Day by day

axis-midnight = nửa đêm
axis-noon = trưa
schedule-day = Ngày
schedule-clock = Giờ trong ngày
schedule-long = Bao lâu
schedule-note = Giờ ghi ở đây là ví dụ. Hãy chọn giờ hợp với quý vị. Nếu vết hằn còn quá lâu, hôm sau làm lại y như ngày đó.
schedule-note-late = Giờ ghi ở đây là ví dụ. Hãy chọn giờ hợp với quý vị. Vạch sau nửa đêm thuộc về ngày hôm trước. Nếu vết hằn còn quá lâu, hôm sau làm lại y như ngày đó.
schedule-minutes = phút
schedule-hours = giờ
schedule-times = { $count } lần
schedule-not-yet = Ngày này không đeo

calendar-week = Tuần
calendar-what = Việc cần làm
calendar-build = Đeo tăng dần.
calendar-wean = Đeo bớt đi.
calendar-never-remove = Cả ngày lẫn đêm, không nghỉ.
calendar-off-to-wash = Cả ngày lẫn đêm.
calendar-off-to-exercise = Cả ngày lẫn đêm.
calendar-night-and-tasks = Ban đêm, việc nặng.
calendar-night-and-tasks-guard = Ban đêm, ra ngoài, chỗ đông.
calendar-night-and-rest = Ban đêm, khi nghỉ.
calendar-stretch = Lúc kéo giãn.
calendar-day = Ban ngày.
calendar-night = Ban đêm.
calendar-tasks = Việc nặng.
calendar-tasks-guard = Ra ngoài, chỗ đông.
calendar-off = Không đeo nẹp.
calendar-review = Buổi khám: { $date }.
calendar-key-review = Buổi khám
calendar-key-build = Tăng dần
calendar-key-on = Đeo
calendar-key-night = Ban đêm
calendar-key-needed = Một phần trong ngày
calendar-key-off = Không đeo
calendar-and-so-on = Mỗi tuần cứ làm tiếp như vậy.

## Putting on and taking off

steps-on = Đeo nẹp
steps-off = Tháo nẹp
# For a splint that only the clinic takes off.
steps-never = Không tự tháo nẹp. Phòng khám sẽ tháo và đeo cho quý vị.
strap-next = dây đai tiếp theo

## Skin

# Letters that mark the places, in the order of the alphabet.
spot-letters = A B C D E F G H
skin-fine = Thế này là bình thường
skin-not = Thế này là không ổn
skin-fine-mark = Vết hằn nhẹ, mờ đi trong vòng { $limit }
skin-fine-lines = Vệt mờ do dây đai
skin-fine-damp = Da hơi ẩm
skin-not-mark = Vết hằn còn lâu hơn { $limit }
# Redness does not show on dark skin.
skin-not-dark = Trên da sẫm màu: một mảng da sẫm hơn, nóng hơn hoặc cứng hơn, lâu hơn { $limit }
skin-not-blister = Vết phồng rộp, vết loét hoặc da bị rách
skin-not-rash = Nổi mẩn, hoặc ngứa mãi không hết
skin-not-wet = Da trắng, mềm và ướt
skin-act-take-off = Tháo nẹp ra và gọi chúng tôi ngay hôm nay.
skin-act-keep = { $straps ->
    [without] Gọi chúng tôi ngay hôm nay. Luôn đỡ bàn tay.
   *[with] Nới dây đai và gọi chúng tôi ngay hôm nay. Luôn đỡ bàn tay.
}

## Moving

move-splint-on = Đang đeo nẹp
move-splint-off = Đã tháo nẹp
move-stop = Ngừng lại nếu đau hơn. Nếu sau vài giờ chưa dịu, hãy gọi chúng tôi.
move-avoid = Chưa được làm
dose-times = lần
dose-a-day = lần mỗi ngày
# $count is a number of times, after the first week.
move-up-to = Sau một tuần, nếu thấy dễ: tối đa { $count } lần.
moves-after-review = Sau buổi khám, chuyên viên trị liệu sẽ cho quý vị bài tập mới.
# $date is when they begin, $exercises a list of names.
moves-later = Bắt đầu từ { $date }: { $exercises }.
avoid-wrist-ulnar-deviation = Không nghiêng cổ tay về phía ngón út.
avoid-wrist-radial-deviation = Không nghiêng cổ tay về phía ngón cái.
avoid-thumb-cmc-any = Không cử động gốc ngón cái.
avoid-thumb-cmc-palmar-abduction = Không đưa ngón cái ra xa lòng bàn tay.
avoid-thumb-cmc-radial-abduction = Không dang ngón cái sang bên.
avoid-thumb-mcp-any = Không gập khớp bàn ngón cái.
avoid-thumb-mcp-flexion = Không gập ngón cái vào lòng bàn tay.
avoid-thumb-mcp-radial-deviation = Không đẩy ngón cái ra xa bàn tay.
avoid-thumb-mcp-ulnar-deviation = Không đẩy ngón cái ngang qua bàn tay.

## Daily life

daily-job = Việc quý vị làm
daily-what = Hiện nay
daily-how = Cách làm
daily-word-keep = Cứ làm
daily-word-change = Làm cách này
daily-word-leave = Tạm chưa làm
daily-keep = Làm như mọi khi.
daily-helper = Nhờ người khác giúp.
daily-other-hand = Dùng tay kia, hoặc nhờ người giúp.
daily-ask = Hỏi chuyên viên trị liệu khi nào được làm lại.
daily-pauses = Mỗi lần làm một ít. Nghỉ giữa chừng.
daily-keep-dry = Giữ nẹp khô, hoặc lau khô ngay.
daily-driving = Trước khi lái xe, hãy hỏi chuyên viên trị liệu và hãng bảo hiểm. Làm theo luật nơi quý vị ở.
# $date is when a later phase begins.
daily-from-keep = Từ { $date }: làm như mọi khi.
daily-from-change = Từ { $date }: thử làm theo cách dễ hơn.
why-risky = Hiện còn quá nguy hiểm cho bàn tay này.
why-driving = Lái xe cần điều khiển được hoàn toàn.
why-swimming = Bàn tay, da hoặc nẹp chưa sẵn sàng xuống nước.
why-heavy = Hiện còn quá nặng.
why-in-the-way = Nẹp làm vướng.
why-lateral-pinch = Ép ngón cái vào ngón tay khác làm bàn tay bị căng.
why-tip-pinch = Kẹp bằng đầu ngón làm bàn tay bị căng.
why-power-grip = Nắm chặt làm bàn tay bị căng.
why-sustained-grip = Cầm lâu làm bàn tay bị căng.
why-wrist-deviation = Nghiêng cổ tay sang bên làm cổ tay bị căng.
why-wrist-flexion = Gập cổ tay làm cổ tay bị căng.
why-wrist-load = Chống lên cổ tay đang gập làm bàn tay bị căng.
why-thumb-load = Việc này dồn sức nặng lên ngón cái.
why-forearm-rotation = Vặn cánh tay làm bàn tay bị căng.
why-finger-flexion = Gập mạnh các ngón làm ngón bị căng.
why-elbow-flexion = Gập khuỷu tay làm cánh tay bị căng.
why-impact = Va đập có thể làm đau bàn tay.
why-vibration = Rung lắc làm bàn tay bị căng.
why-wet = Bàn tay hoặc nẹp bị ướt.
why-heat = Nóng làm hỏng nẹp hoặc hại da.
why-repetition = Lặp mãi một cử động làm bàn tay bị căng.

## Looking after the splint

# $celsius is a temperature in degrees.
care-wash-plastic = Rửa nẹp bằng xà phòng và nước không nóng quá { $celsius } độ C.
care-dry-plastic = Lau thật khô trước khi đeo.
care-heat = Tránh nóng. Không nước nóng, không lò sưởi, không để trong xe phơi nắng. Nẹp sẽ chảy và méo.
care-wash-soft = Giặt bằng tay với xà phòng nhẹ. Xả thật sạch.
care-dry-soft = Để phẳng cho khô trong bóng mát. Không bao giờ đeo khi còn ẩm.
care-machine = Không giặt máy, không sấy, không ủi, không dùng thuốc tẩy.
care-metal = Lau khô. Xem có rỉ sét hay bị cong không.
care-keep-dry = Giữ nẹp khô. Che nẹp khi quý vị tắm rửa.
care-straps = Gỡ bụi xơ khỏi dây đai. Cài dây đai lại trước khi rửa nẹp.
care-change = Không cắt, uốn hoặc dán nẹp. Chúng tôi sẽ làm.
care-share = Không cho mượn. Nẹp làm riêng cho quý vị.
care-bring = Mang nẹp theo đến mọi buổi khám.

## Calling

call-emergency = Cấp cứu: tìm người giúp ngay
call-today = Gọi chúng tôi hôm nay
call-visit = Nói với chúng tôi ở buổi khám
call-where = Địa chỉ: { $address }
# Stands where no emergency number is known.
call-emergency-number = Số cấp cứu nơi quý vị ở
call-telephone = Điện thoại
note-from = Chuyên viên trị liệu ghi
# Followed by a line to write on.
initial-say = Đã xem cùng quý vị
initial-date = Ngày
initial-name = Ký tắt

## Lengths of time

length-minutes = { $count } phút
length-hours = { $count } giờ
length-hours-minutes = { $hours } { $minutes }
length-seconds = { $count } giây

# What a picture shows, for who cannot see it.
# $view: dorsal = the back of the hand; palmar = the palm; radial = thumb side; ulnar = little-finger side; turned = half way
# between back and thumb side; own = as the wearer sees it.
picture-seen = { $what ->
    [finger] { $finger ->
        [index] Ngón trỏ
        [middle] Ngón giữa
        [ring] Ngón áp út
        [little] Ngón út
       *[none] Ngón tay
    } của { $side ->
        [left] bàn tay trái
       *[right] bàn tay phải
    }
    [thumb] { $side ->
        [left] Ngón cái của bàn tay trái
       *[right] Ngón cái của bàn tay phải
    }
   *[hand] { $side ->
        [left] Bàn tay trái
       *[right] Bàn tay phải
    }
}, { $view ->
    [palmar] nhìn từ phía lòng bàn tay.
    [radial] nhìn từ phía ngón cái.
    [ulnar] nhìn từ phía ngón út.
    [turned] nhìn từ phía mu bàn tay và ngón cái.
    [palmar-radial] nhìn từ phía lòng bàn tay và ngón cái.
    [palmar-ulnar] nhìn từ phía lòng bàn tay và ngón út.
    [own] như chính quý vị nhìn thấy.
   *[dorsal] nhìn từ phía mu bàn tay.
}
picture-covers = { $splint }. { $from ->
    [arm] Nẹp kéo dài từ bắp tay
    [forearm] Nẹp kéo dài từ cẳng tay
    [hand] Nẹp kéo dài từ lòng bàn tay
   *[digit] Nẹp nằm trên { $finger ->
        [index] ngón trỏ
        [middle] ngón giữa
        [ring] ngón áp út
        [little] ngón út
       *[none] ngón tay hoặc ngón cái
    },
} { $to ->
    [fingertips] đến đầu các ngón tay.
    [fingertip] đến đầu ngón tay.
    [fingers] đến các ngón tay.
    [finger] đến ngón tay.
    [thumb-tip] đến đầu ngón cái.
    [thumb] đến ngón cái.
    [palm] đến lòng bàn tay.
   *[none] và không đi xa hơn.
}
picture-spots = Vòng tròn có chữ cái chỉ chỗ cần xem.
# One of several pictures of a movement.
picture-part = Hình { $number } trong { $count } hình.
picture-held = Tư thế của bài: { $exercise }.
picture-moved = Nét đứt: lúc bắt đầu. Mũi tên chỉ cử động: { $exercise }.
picture-inside = Các xương, như nhìn xuyên qua da.
picture-structures = Được đánh dấu: { $structures }.
picture-held-joints = Vòng tròn có vạch ngang đánh dấu chỗ nẹp giữ yên hoặc giữ vững: { $joints }.
# The same mark, in a label.
picture-held-mark = Chỗ nẹp giữ yên hoặc giữ vững
# Rows of joints of all fingers, in the list above.
held-knuckles = các khớp bàn ngón
held-middle-joints = khớp giữa của các ngón tay
held-end-joints = khớp đầu ngón của các ngón tay
# A pair of pictures: how a splint sits, and a way in which it does not.
picture-right = Nẹp nằm đúng. Có dấu kiểm.
picture-wrong = Nẹp nằm sai. Có dấu chéo. { $fault }
