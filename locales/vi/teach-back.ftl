### Questions that ask the person to show or say back what they were told. The therapist reads them out.
### No date, hour, number, side or angle is typed here; they come in as variables.

# Said first: it is the therapist who is tested, not the person.
teach-intro = Tôi muốn biết chắc là tôi đã giải thích rõ. Xin quý vị làm cho tôi xem, hoặc nói lại bằng lời của mình.
teach-hands = Nẹp nào đeo vào tay nào? Xin chỉ cho tôi xem.
teach-emergency = Khi nào quý vị phải tìm người giúp ngay, dù ngày hay đêm?
teach-keep-on = Ở nhà, quý vị có được tháo nẹp để rửa hoặc để ngủ không?
teach-support = Nẹp đã tháo ra để rửa. Xin cho tôi xem quý vị giữ bàn tay thế nào.
teach-on = Xin quý vị đeo nẹp vào. Vừa làm vừa nói cho tôi nghe.
teach-off = Xin quý vị tháo nẹp ra. Vừa làm vừa nói cho tôi nghe.
teach-bans = Bàn tay này chưa được làm những gì?
teach-skin = Quý vị xem da. Thấy gì là không ổn? Khi đó quý vị làm gì?
teach-stop = Còn dấu hiệu nào có nghĩa là phải ngừng? Khi đó quý vị làm gì?
teach-call = Nẹp hoặc bàn tay có gì không ổn. Quý vị gọi ai?
teach-hours = Khi nào đeo nẹp và khi nào tháo? Xin bắt đầu từ hôm nay.
teach-build = Ngày mai quý vị đeo nẹp bao lâu? Từ ngày nào thì đeo đủ giờ?
teach-jobs = Việc hằng ngày nào của quý vị phải chờ?
teach-exercises = Xin quý vị làm mỗi bài tập một lần cho tôi xem. Mỗi ngày quý vị tập mấy lần?
