### The papers beside the guide: card, diary, exercises, letter.
### No date, hour, number, side or angle is typed here; they come in as variables.

# Stands at the end of each of these papers.
sheet-caution = Tờ này không thay cho bản hướng dẫn đầy đủ, hay lời dặn của chuyên viên trị liệu hoặc bác sĩ phẫu thuật. Nếu họ dặn khác, hãy làm theo lời họ.

## The card

card-caution = Thẻ này đi kèm bản hướng dẫn. Lời dặn của chuyên viên trị liệu là trước hết.
card-title = Nẹp của quý vị
card-description = Khi nào đeo nẹp, cách đeo, khi nào cần gọi.
# $straps is a list of names, in the order in which they are closed.
card-straps-on = Cài theo thứ tự này: { $straps }.
card-straps-off = Mở theo thứ tự này: { $straps }.

## The diary

diary-title = Nhật ký của quý vị
diary-description = Nhật ký để đánh dấu cho đến buổi khám tới.
diary-week = Tuần { $week }: { $from } đến { $to }
# $least is no pain, $most the worst.
diary-intro = Làm xong việc nào thì đánh dấu vào ô. Khoanh một số cho lúc đau nhất trong ngày: { $least } là không đau, { $most } là đau nhất mà quý vị có thể nghĩ tới.
# $bouts is how many times, $each how long.
diary-wears = { $bouts } lần, mỗi lần { $each }. Không đeo ban đêm.
diary-worn = Đã đeo
diary-hours = Số giờ đeo
diary-skin = Đã xem da
diary-exercises = Bài tập
diary-pain = Đau
diary-note = Ghi chú
# $number is the clinic's telephone.
diary-stop = Nếu thấy một dấu hiệu phải ngừng trong bản hướng dẫn, không chờ đến buổi khám. Hãy gọi { $number }.
diary-stop-no-number = Nếu thấy một dấu hiệu phải ngừng trong bản hướng dẫn, không chờ đến buổi khám. Hãy gọi phòng khám.
diary-visit = Mang nhật ký này đến buổi khám: { $date }.
diary-visit-time = Mang nhật ký này đến buổi khám: { $date }, { $time }.

## The exercises

exercises-title = Bài tập của quý vị
exercises-description = Bài tập ở nhà: bắt đầu ra sao, cử động thế nào, bao nhiêu lần, khi nào ngừng.

## The letter

letter-title = { $to ->
    [teacher] Gửi thầy cô giáo
    [employer] Gửi nơi làm việc
   *[carer] Gửi người chăm giúp
}
letter-description = Bàn tay đeo nẹp hiện nay được làm gì và không được làm gì.
# $fitted and $review are dates.
letter-intro = { $to ->
    [teacher] Học sinh của quý vị đang đeo nẹp ở { $side ->
        [left] bàn tay trái.
       *[right] bàn tay phải.
    }
    [employer] Một người làm việc cho quý vị đang đeo nẹp ở { $side ->
        [left] bàn tay trái.
       *[right] bàn tay phải.
    }
   *[carer] Người quý vị chăm giúp đang đeo nẹp ở { $side ->
        [left] bàn tay trái.
       *[right] bàn tay phải.
    }
} Thư này cho biết bàn tay đó được làm gì cho đến khi phòng khám xem lại.
letter-from = Đeo nẹp từ
letter-until = Buổi khám tới ở phòng khám
letter-for = Dùng để
letter-told = Người đeo nẹp đã được dặn về việc hằng ngày như sau:
letter-never-off = Chỉ phòng khám được tháo nẹp. Không cắt, uốn hoặc mở nẹp.
letter-leave-on = Không tháo hoặc chỉnh nẹp, trừ khi người đeo nhờ quý vị.
letter-other-jobs = Việc nào không ghi ở đây, hãy hỏi người đeo nẹp. Nếu họ không chắc, chưa làm việc đó cho đến khi họ hỏi phòng khám.
letter-help-carer = Xin giúp những việc cần cả hai tay, và không kéo cánh tay đeo nẹp.
letter-help-teacher = Xin cho thêm thời gian để viết. Không chơi thể thao hay trò chơi dễ va vào bàn tay, cho đến khi phòng khám cho phép.
letter-help-employer = Xin giao những việc không cần dùng bàn tay này. Phòng khám quyết định khi nào được làm việc đầy đủ trở lại.
# $number is the clinic's telephone.
letter-urgent = Hành động ngay nếu các ngón, kể cả ngón cái, tím tái, trắng bệch, tê hoặc lạnh, hoặc đau tăng nhiều. Giúp người đeo nẹp gọi { $number }.
letter-urgent-no-number = Hành động ngay nếu các ngón, kể cả ngón cái, tím tái, trắng bệch, tê hoặc lạnh, hoặc đau tăng nhiều. Giúp người đeo nẹp gọi phòng khám.
# Stands in the place of a picture.
letter-hand = { $side ->
    [left] Nẹp đeo ở bàn tay trái.
   *[right] Nẹp đeo ở bàn tay phải.
}
# At the foot of the page. $name is the person's name.
letter-about = Về { $name }. Bàn tay { $side ->
    [left] trái
   *[right] phải
}.
letter-about-nobody = Về một người. Bàn tay { $side ->
    [left] trái
   *[right] phải
}.

# A diary ends after some weeks, however late the visit is.
diary-more = Đây là trang cuối của nhật ký này. Hãy xin phòng khám thêm trang.

## Booklet: sheets bound into one

booklet-contents = Bên trong có
booklet-caution = Những trang này không thay cho lời dặn của chuyên viên trị liệu hoặc bác sĩ phẫu thuật. Nếu họ dặn khác, hãy làm theo lời họ.
booklet-one-handed = Đeo nẹp bằng một tay
