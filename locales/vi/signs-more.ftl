### More signs to watch for. Each is a clause or a short noun phrase without a full stop.
### It stands in a list under a heading such as “Gọi chúng tôi ngay hôm nay nếu:”.
### Printed only where a condition names the sign.

## Emergencies

sign-finger-snap = Cảm thấy một cái “phựt”, hoặc bỗng nhiên không gập hay duỗi được ngón tay hoặc ngón cái
sign-tooth-cut-over-knuckle = Vết răng làm rách da trên khớp bàn ngón bị đỏ, sưng hoặc đau
sign-finger-white-when-straight = Ngón tay trắng bệch khi duỗi thẳng
sign-graft-pale-or-tight = Da mới trên bàn tay tái đi, hoặc bên trong thấy căng

## Today

sign-tip-droops-again = Đầu ngón tay lại rũ xuống, hoặc đã gập khi không được đỡ
sign-middle-joint-bends-alone = Khớp giữa của ngón tay rũ xuống, hoặc đã gập khi không được đỡ
sign-finger-cannot-straighten = Một ngón tay rũ xuống và quý vị không tự duỗi thẳng được
sign-thumb-tip-will-not-lift = Không còn nhấc được đầu ngón cái lên
sign-finger-turns-over-neighbour = Một ngón tay bị xoay hoặc bắt chéo lên ngón bên cạnh
sign-finger-locks = Ngón tay hoặc ngón cái bị khóa, không duỗi thẳng được
sign-pin-loose = Đinh bị lỏng, cong hoặc gãy, hoặc lỗ đinh rỉ dịch
sign-joint-slips = Một khớp bị trượt ra hoặc thấy lỏng
sign-wrist-clunks = Cổ tay kêu “cục”, hoặc đau sâu ở chỗ lõm cạnh ngón cái
sign-night-numbness-grows = Các ngón bị tê nhiều đêm hơn, hoặc bắt đầu tê cả ngày
sign-thumb-muscle-thinner = Phần thịt dày dưới ngón cái mỏng đi
sign-hand-muscle-thinner = Bàn tay mỏng đi ở chỗ giữa ngón cái và ngón trỏ
sign-little-finger-numb = Ngón út tê hơn trước, mãi không hết
sign-elbow-band-tingles = Bàn tay hoặc cẳng tay châm chích khi đang đeo vòng hoặc nẹp
sign-finger-stays-bent-more = Một ngón tay bị gập nhiều hơn trước
sign-tight-hand-tighter = Bàn tay co cứng hơn hoặc khó mở hơn

## At the next visit

sign-clicks-under-load = Cổ tay hoặc bàn tay kêu lách cách và đau khi chống hoặc nâng
