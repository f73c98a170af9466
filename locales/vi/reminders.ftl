### Reminders for the calendar of a telephone. The first line of each shows on a locked screen, where others can read it:
### no splint, no part of the body that is treated, no condition and no name in it.
### $hand: only = only one hand is treated, do not say which; left, right and both, where both are.
### “Phải” alone also means “must”, so “Bên trái” and “Bên phải” are written in full.

reminder-change = { $hand ->
    [left] Bên trái: giờ mới từ hôm nay.
    [right] Bên phải: giờ mới từ hôm nay.
    [both] Bên trái và bên phải: giờ mới từ hôm nay.
   *[only] Giờ mới từ hôm nay.
}
reminder-visit = Buổi khám của quý vị.
reminder-off = { $hand ->
    [left] Bên trái: đến giờ tháo.
    [right] Bên phải: đến giờ tháo.
    [both] Đến giờ tháo cả hai bên.
   *[only] Đến giờ tháo.
}
reminder-skin = { $hand ->
    [left] Bên trái: xem da.
    [right] Bên phải: xem da.
    [both] Bên trái và bên phải: xem da.
   *[only] Xem da.
}
reminder-on = { $hand ->
    [left] Bên trái: đến giờ đeo.
    [right] Bên phải: đến giờ đeo.
    [both] Đến giờ đeo cả hai bên.
   *[only] Đến giờ đeo.
}
reminder-exercise = { $hand ->
    [left] Bên trái: đến giờ tập.
    [right] Bên phải: đến giờ tập.
    [both] Bên trái và bên phải: đến giờ tập.
   *[only] Đến giờ tập.
}

## The note of a reminder

reminder-change-sheet = Tờ của quý vị có ghi giờ mới.
# $checks is how many times a day.
reminder-checks = Xem da mỗi ngày { $checks } lần. Tờ của quý vị chỉ rõ cần xem chỗ nào, và thế nào là không ổn.
reminder-skin-again = Nếu vết hằn còn quá lâu, hôm sau làm lại y như ngày đó, dù các lời nhắc tiếp theo ghi gì.
# $length is a finished length of time.
reminder-wear = { $hand ->
    [left] Bên trái: đeo trong { $length }.
    [right] Bên phải: đeo trong { $length }.
   *[only] Đeo trong { $length }.
}
reminder-exercise-sheet = Tờ của quý vị chỉ cách làm.
reminder-back-on = { $hand ->
    [left] Bên trái: xong thì đeo lại.
    [right] Bên phải: xong thì đeo lại.
    [both] Xong thì đeo lại cả hai bên.
   *[only] Xong thì đeo lại.
}
reminder-times = Giờ này là ví dụ. Hãy chọn giờ hợp với quý vị.
reminder-caution = Nếu chuyên viên trị liệu hoặc bác sĩ phẫu thuật dặn khác, hãy làm theo lời họ.
reminder-call = Phòng khám: { $telephone }
# $hours is when the telephone is answered.
reminder-call-hours = Phòng khám: { $telephone } ({ $hours })

## Only where the therapist asks for detail

# $where is "Right hand", $orthosis the splint's name.
reminder-about = { $where }: { $orthosis }.
# $exercise is the exercise's name, $count how many times, $place "Splint on" or "Splint off".
reminder-dose = { $exercise }: { $count } lần. { $place }.
# $name is the person's name.
reminder-person = Cho { $name }.
