### The fact sheet of a condition, for patients. It is about nobody in particular: no hour, no date.
### No number, side or duration is typed here; they come in as variables.

facts-caution = Tờ này nói về một vấn đề của bàn tay. Tờ này không thay cho lời dặn của chuyên viên trị liệu hoặc bác sĩ phẫu thuật. Nếu họ dặn khác, hãy làm theo lời họ.
# At the foot of each page.
facts-line = Các hình vẽ bàn tay { $side ->
    [left] trái
   *[right] phải
}{ $finger ->
    [index] , ngón trỏ
    [middle] , ngón giữa
    [ring] , ngón áp út
    [little] , ngón út
   *[none] {""}
}.

## What it is

facts-what-title = Đây là gì
# $what is one or two finished sentences.
facts-what = { $what }

## What the splint is for

facts-aim-title = Nẹp giúp gì
# $aim is one or two finished sentences.
facts-aim = { $aim }
# $joints is a list of joints, such as "your wrist and the base of your thumb".
facts-joints = { $joints }
facts-joint-still = Được giữ yên
facts-joint-steady = Được giữ vững
facts-joint-stopped = Cử động được, đến mức chặn
facts-joint-relative = Cử động ít hơn các ngón bên cạnh
facts-joint-coupled = Cử động cùng ngón tay bên cạnh
facts-joint-mobilised = Được kéo nhẹ
# Some splints hold these joints and others do not.
facts-joint-varies = Bị giữ hoặc tự do: tùy theo nẹp
facts-joint-free = Cử động tự do

## Types of splint

facts-types-title = Những nẹp phù hợp
facts-types-intro = Các loại này hợp với lúc đầu. Chuyên viên trị liệu chọn loại hợp với bàn tay của quý vị.

## The usual course

facts-course-title = Thường diễn ra thế nào
# $length is a finished length of time, such as "about six weeks".
facts-step-label = Bước { $number }, { $length }:
# $wear and $ends are finished sentences.
facts-step = { $wear } { $ends }
# $length is such as "four to six weeks".
facts-length-usual = khoảng { $length }
facts-length-protocol = { $length }, theo lời bác sĩ phẫu thuật
facts-length-open = không có hạn cố định
facts-weeks = { $count } tuần
# $from and $to are numbers of weeks.
facts-weeks-range = { $from } đến { $to } tuần
facts-days = { $count } ngày
facts-days-range = { $from } đến { $to } ngày
facts-ends-therapist = Bước này không có hạn cố định. Chuyên viên trị liệu quyết định khi nào xong.
facts-ends-surgeon = Bước này không có hạn cố định. Bác sĩ phẫu thuật quyết định khi nào xong.
facts-ends-person = Quý vị tự quyết định khi nào không cần nữa.
facts-ends-time = Sau đó đến bước tiếp theo.
facts-own-guide = Tờ này không phải là kế hoạch riêng của quý vị. Bản hướng dẫn riêng cho biết khi nào đeo nẹp. Hãy làm theo bản đó.
facts-clinics-differ = Mỗi phòng khám một khác. Nẹp, các bước và thời gian của quý vị có thể không giống ở đây.
facts-surgeon-sets = Sau khi mổ hoặc gãy xương, bác sĩ phẫu thuật định thời gian và cách giữ bàn tay.

## When to get help

facts-help-title = Khi nào cần giúp
# $sign is a sign, such as "Your pinch gets weaker".
facts-visit = { $sign }: hãy nói với chuyên viên trị liệu ở buổi khám tới.
