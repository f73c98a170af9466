### The guide: everything that is not about one condition, splint, activity or exercise.
### Mainland Simplified Chinese; the reader is 您 throughout. Splint is 支具: 戴, 戴上, 取下.
### 掌指关节 is the (big) knuckle; 拇指根部 is only the base joint near the wrist, never the knuckle.
### “Fingers” without the thumb is 食指到小指; 患指 is the treated finger.
### No date, hour, number, side or angle is typed here; they come in as variables.
### $side is left or right and only chooses between wordings.

## Title and furniture

# $orthosis is the splint's name, such as 长款拇指支具.
guide-title = 您的{ $orthosis }
# $name is the person's name. Stands at the foot of every page.
guide-made-for = 只供{ $name }本人使用。{ $side ->
    [left] 左
   *[right] 右
}手{ $finger ->
    [index] ，食指
    [middle] ，中指
    [ring] ，无名指
    [little] ，小指
   *[none] {""}
}。
guide-made-for-nobody = 只供一个人使用。{ $side ->
    [left] 左
   *[right] 右
}手{ $finger ->
    [index] ，食指
    [middle] ，中指
    [ring] ，无名指
    [little] ，小指
   *[none] {""}
}。
guide-caution = 这份指南不能代替治疗师或手术医生对您说的话。如果他们说的不一样，请照他们说的做。不要把支具借给任何人。
# Printed on every sheet in a language that no qualified translator has signed off.
guide-drafted = 这份中文没有经过合格的翻译人员检查。
guide-outdated = 翻译之后，这一页的英文有改动。使用前请先问您的诊所。
guide-page = 第{ $page }页，共{ $pages }页
# Where a section stands, in the line of contents.
contents-page = ，第{ $page }页

## Which hand

hand-left = 左手
hand-right = 右手
hand-alt = { $side ->
    [left] 这个支具戴在您的左手上。
   *[right] 这个支具戴在您的右手上。
}

## Section titles

glance-title = 一眼看懂
dates-title = 每天的安排
on-off-title = 戴上和取下
on-off-intro = { $washing ->
    [never] 这件事只能由诊所来做。
   *[freely] 坐在桌边。用另一只手来做。
}
skin-title = 检查皮肤
skin-intro = { $checks ->
   *[other] 每天仔细看{ $checks }次。
}光线要亮。{ $washing ->
    [supported] 每次取下支具洗手时，看这些地方。其他时候，看支具边缘和指尖（包括拇指）：
    [never] 不要为了查看而取下支具。看支具边缘和指尖（包括拇指）：
   *[freely] 看这些地方：
}
move-title = 活动您的手
move-intro = 慢慢来。任何动作都不要硬来。
daily-title = 日常生活
care-title = 爱护支具
note-title = 治疗师的话
call-title = 什么时候打电话
call-intro = 把这一页放在看得见的地方。

## Facts on the first page

fact-splint = 哪种支具
# $finger is index, middle, ring or little and only chooses between wordings.
finger-name = { $finger ->
    [index] 食指，紧挨着拇指
    [middle] 中指
    [ring] 无名指
   *[little] 小指
}
fact-for = 有什么用
fact-fitted = 配戴日期
fact-full = 开始戴足时间
fact-full-more = 先逐天加长。请看“每天的安排”表。
fact-review = 下次复诊
# $joints is a list such as 拇指指尖和掌指关节.
fact-free = 可以自由活动：{ $joints }。

say-date = { $date }
say-date-time = { $date }，{ $time }
say-short-date = { $date }
date-range = { $from }至{ $to }
# $to is the date of the next visit.
date-until-visit = { $from }至复诊那天：{ $to }
# From one clock time to another.
time-range = { $from }至{ $to }

## Joints, as the person would say them

joint-elbow = 手肘
joint-forearm = 前臂的转动
joint-wrist = 手腕
joint-thumb-cmc = 拇指根部
joint-thumb-mcp = 拇指的掌指关节
joint-thumb-ip = 拇指指尖
# 食指到小指: the fingers without the thumb.
joint-fingers-mcp = 食指到小指
joint-fingers-pip = 食指到小指的中间关节
joint-fingers-dip = 食指到小指的指尖
# The affected finger.
joint-finger-mcp = 患指的掌指关节
joint-finger-pip = 患指的中间关节
joint-finger-dip = 患指的指尖
joint-other-fingers-mcp = 其他手指
joint-other-fingers-pip = 其他手指的中间关节
joint-other-fingers-dip = 其他手指的指尖
joint-index-mcp = 食指的掌指关节
joint-middle-mcp = 中指的掌指关节
joint-ring-mcp = 无名指的掌指关节
joint-little-mcp = 小指的掌指关节
joint-index-pip = 食指的中间关节
joint-middle-pip = 中指的中间关节
joint-ring-pip = 无名指的中间关节
joint-little-pip = 小指的中间关节
joint-index-dip = 食指的指尖
joint-middle-dip = 中指的指尖
joint-ring-dip = 无名指的指尖
joint-little-dip = 小指的指尖

## When to wear it

strip-days = 第{ $from }至{ $to }天
strip-from-day = 从第{ $from }天起
strip-weeks = 第{ $from }至{ $to }周
strip-build = 每天多戴一点。晚上先不戴。
strip-key-on = 戴支具
strip-key-off = 不戴支具
strip-key-needed = 做费力的事时戴
# In phases that guard what heals.
strip-key-guard = 出门和人多时戴
strip-key-rest = 休息时戴
strip-key-part = 部分时间戴
# $label is a row's label, $times a list of clock times.
strip-alt = { $label }：戴支具的时间是{ $times }。
strip-alt-none = { $label }：没有固定的戴支具时间。
wear-never-remove = 白天晚上都戴。不要取下。
# $times is how often it comes off in a day.
wear-off-to-wash = 白天晚上都戴。只在洗手时取下{ $times ->
   *[other] ，每天{ $times }次。
}
wear-off-to-exercise = 白天晚上都戴。只在洗手和练习时取下{ $times ->
   *[other] ，每天{ $times }次。
}
wear-night-and-tasks = 整夜都戴。白天做费力的事时戴。
# In phases that guard what heals: hard tasks wait.
wear-night-and-tasks-guard = 整夜都戴。白天出门、人多时，以及做任何允许您做的事时都戴。
wear-night-and-rest = 整夜都戴。白天休息时戴。用手时取下。
# $bouts is how many times a day, $each a finished length of time.
wear-stretch = { $bouts ->
   *[other] 每天戴{ $bouts }次
}，每次{ $each }。其他时间不戴。
wear-day = 白天一直戴。晚上不戴。
wear-night = 整夜都戴。白天不戴。
wear-tasks = 只在做费力的事时戴。晚上不戴。
wear-tasks-guard = 出门、人多时，以及做任何允许您做的事时都戴。晚上不戴。
wear-off = 不戴。
# $length is how long it is worn while awake.
wear-wean-night = 起床后戴{ $length }，另外整夜都戴。
wear-wean-day = 起床后戴{ $length }。晚上不戴。

## What comes after the next visit

later-label = 等治疗师通知
later-label-surgeon = 等手术医生通知
later-label-next = 以后，等我们通知
# This splint does not suit that stage.
later-other = 换另一种支具。
later-never-remove = 白天晚上都戴，不间断。
later-off-to-wash = 白天晚上都戴，只在洗手时取下。
later-off-to-exercise = 白天晚上都戴，只在洗手和练习时取下。
later-night-and-tasks = 晚上戴，做费力的事时戴。
later-night-and-tasks-guard = 晚上戴，出门和人多时戴。
later-night-and-rest = 晚上戴，休息时戴。
later-stretch = 每天戴几次，用来拉伸。
later-day = 只在白天戴。
later-night = 只在晚上戴。
later-tasks = 只在做费力的事时戴。
later-tasks-guard = 只在出门和人多时戴。
later-off = 不戴支具。
later-wean = 一步一步，越戴越少。

## The stop box

warning-title-take-off = 有以下情况，取下支具，给我们打电话：
warning-title-supported = { $straps ->
    [without] 有以下情况，给我们打电话：
   *[with] 有以下情况，放松绑带，给我们打电话：
}
warning-title-keep-on = { $straps ->
    [without] 有以下情况，不要取下支具，给我们打电话：
   *[with] 有以下情况，放松绑带，不要取下支具，给我们打电话：
}
# Followed by the signs that cannot wait. $number is the emergency number.
warning-emergency = 紧急！有以下情况，打{ $number }：
warning-emergency-no-number = 紧急！有以下情况，马上求救：
warning-act-take-off = 取下支具。然后打电话。
warning-act-supported = { $straps ->
    [without] 一直托住疼的地方。然后打电话。
   *[with] 放松绑带。一直托住疼的地方。然后打电话。
}
warning-act-keep-on = { $straps ->
    [without] 不要取下支具。给我们打电话。
   *[with] 放松绑带。不要取下支具。然后打电话。
}

## Day by day

axis-midnight = 午夜
axis-noon = 中午
schedule-day = 天
schedule-clock = 钟点
schedule-long = 戴多久
schedule-note = 这些钟点只是举例。请选适合您的时间。如果压痕很久不退，就把这一天的安排再做一遍。
schedule-note-late = 这些钟点只是举例。请选适合您的时间。午夜以后的横条属于前一天。如果压痕很久不退，就把这一天的安排再做一遍。
schedule-minutes = { $count ->
   *[other] 分钟
}
schedule-hours = { $count ->
   *[other] 小时
}
schedule-times = { $count ->
   *[other] { $count }次
}
schedule-not-yet = 这天不戴

calendar-week = 周
calendar-what = 怎么做
calendar-build = 逐天加长。
calendar-wean = 越戴越少。
calendar-never-remove = 白天晚上都戴，不间断。
calendar-off-to-wash = 白天晚上都戴。
calendar-off-to-exercise = 白天晚上都戴。
calendar-night-and-tasks = 晚上和做费力的事时戴。
calendar-night-and-tasks-guard = 晚上、出门、人多时戴。
calendar-night-and-rest = 晚上和休息时戴。
calendar-stretch = 拉伸时戴。
calendar-day = 白天戴。
calendar-night = 晚上戴。
calendar-tasks = 做费力的事时戴。
calendar-tasks-guard = 出门和人多时戴。
calendar-off = 不戴支具。
calendar-review = 复诊：{ $date }。
calendar-key-review = 您的复诊
calendar-key-build = 逐天加长
calendar-key-on = 戴
calendar-key-night = 晚上戴
calendar-key-needed = 白天戴一部分时间
calendar-key-off = 不戴
calendar-and-so-on = 以后每周都照这样做。

## Putting on and taking off

steps-on = 戴上
steps-off = 取下
# For a splint that only the clinic takes off.
steps-never = 不要自己取下支具。由诊所给您取下和戴上。
strap-next = 下一条绑带

## Skin

# Letters that mark the places, in the order of the alphabet.
spot-letters = A B C D E F G H
skin-fine = 这些正常
skin-not = 这些不正常
skin-fine-mark = 浅浅的压痕，{ $limit }以内消退
skin-fine-lines = 绑带留下的浅印
skin-fine-damp = 皮肤有一点潮
skin-not-mark = 压痕超过{ $limit }还不退
# Redness does not show on dark skin.
skin-not-dark = 深色皮肤：有一块皮肤颜色更深、更热或更硬，超过{ $limit }
skin-not-blister = 有水泡、疮口或皮肤破了
skin-not-rash = 起皮疹，或发痒一直不退
skin-not-wet = 皮肤发白、发软、湿湿的
skin-act-take-off = 取下支具，今天就给我们打电话。
skin-act-keep = { $straps ->
    [without] 今天就给我们打电话。一直托住手。
   *[with] 放松绑带，今天就给我们打电话。一直托住手。
}

## Moving

move-splint-on = 戴着支具
move-splint-off = 取下支具
move-stop = 如果疼得更厉害，就停下。几小时后还没好转，就给我们打电话。
move-avoid = 现在还不能做
dose-times = { $count ->
   *[other] 次
}
dose-a-day = { $count ->
   *[other] 次/天
}
# $count is a number of times, after the first week.
move-up-to = 一周后，如果觉得轻松：最多{ $count ->
   *[other] { $count }次
}。
moves-after-review = 复诊以后，治疗师会教您新的动作。
# $date is when they begin, $exercises a list of names.
moves-later = { $date }起：{ $exercises }。
avoid-wrist-ulnar-deviation = 手腕不要向小指一侧歪。
avoid-wrist-radial-deviation = 手腕不要向拇指一侧歪。
avoid-thumb-cmc-any = 拇指根部不要动。
avoid-thumb-cmc-palmar-abduction = 拇指不要向手心前方张开。
avoid-thumb-cmc-radial-abduction = 拇指不要向外侧张开。
avoid-thumb-mcp-any = 拇指的掌指关节不要弯。
avoid-thumb-mcp-flexion = 拇指不要弯进手心。
avoid-thumb-mcp-radial-deviation = 不要把拇指往外推，推离这只手。
avoid-thumb-mcp-ulnar-deviation = 不要把拇指往手掌对面推。

## Daily life

daily-job = 做什么事
daily-what = 目前
daily-how = 怎么做
daily-word-keep = 照常做
daily-word-change = 这样做
daily-word-leave = 先别做
daily-keep = 和平时一样做。
daily-helper = 请别人帮忙。
daily-other-hand = 用另一只手，或请别人帮忙。
daily-ask = 问治疗师什么时候可以再开始。
daily-pauses = 每次做一点。中间休息。
daily-keep-dry = 支具要保持干燥，湿了马上擦干。
daily-driving = 开车前，先问治疗师和保险公司。遵守当地的法律。
# $date is when a later phase begins.
daily-from-keep = { $date }起：和平时一样做。
daily-from-change = { $date }起：试着用更省力的办法做。
why-risky = 目前对这只手太危险。
why-driving = 开车或骑车时，手必须完全听使唤。
why-swimming = 您的手、皮肤或支具还不能下水。
why-heavy = 目前太重。
why-in-the-way = 支具会碍事。
why-lateral-pinch = 拇指用力压住别的手指会加重手的负担。
why-tip-pinch = 用指尖捏东西会加重手的负担。
why-power-grip = 用力抓握会加重手的负担。
why-sustained-grip = 抓着不放太久会加重手的负担。
why-wrist-deviation = 手腕向侧面歪会加重手腕的负担。
why-wrist-flexion = 弯手腕会加重手腕的负担。
why-wrist-load = 用弯着的手腕撑会加重手的负担。
why-thumb-load = 这件事会让拇指受力。
why-forearm-rotation = 扭转胳膊会加重手的负担。
why-finger-flexion = 手指用力弯曲会加重手指的负担。
why-elbow-flexion = 手肘弯着会加重胳膊的负担。
why-impact = 磕碰会伤到手。
why-vibration = 震动会加重手的负担。
why-wet = 手或支具会弄湿。
why-heat = 受热会弄坏支具，或伤到皮肤。
why-repetition = 同一个动作反复做会加重手的负担。

## Looking after the splint

# $celsius is a temperature in degrees.
care-wash-plastic = 用肥皂和水洗，水温不超过{ $celsius }度。
care-dry-plastic = 完全干了再戴。
care-heat = 不能受热。不用热水，不放在暖气旁，不放在晒热的车里。受热会变软变形。
care-wash-soft = 用温和的肥皂手洗。冲洗干净。
care-dry-soft = 在阴凉处平放晾干。潮的时候绝不能戴。
care-machine = 不能机洗，不能烘干，不能熨，不能漂白。
care-metal = 用布擦干。看看有没有生锈或变弯。
care-keep-dry = 保持干燥。洗手洗澡时包好。
care-straps = 清掉绑带上的毛絮。洗支具前先把绑带粘好。
care-change = 不要自己剪、弯或粘支具。这由我们来做。
care-share = 不要借给别人。这是为您做的。
care-bring = 每次复诊都带来。

## Calling

call-emergency = 紧急：马上求救
call-today = 今天就打电话给我们
call-visit = 复诊时告诉我们
call-where = 地点：{ $address }
# Stands where no emergency number is known.
call-emergency-number = 当地的紧急求助电话
call-telephone = 电话
note-from = 治疗师写给您的话
# Followed by a line to write on.
initial-say = 已和您核对
initial-date = 日期
initial-name = 签名

## Lengths of time

length-minutes = { $count ->
   *[other] { $count }分钟
}
length-hours = { $count ->
   *[other] { $count }小时
}
length-hours-minutes = { $hours }{ $minutes }
length-seconds = { $count ->
   *[other] { $count }秒
}

# What a picture shows, for who cannot see it.
# $view: dorsal = the back of the hand; palmar = the palm; radial = thumb side; ulnar = little-finger side; turned = half way
# between back and thumb side; own = as the wearer sees it.
picture-seen = { $what ->
    [finger] { $side ->
        [left] 左手
       *[right] 右手
    }{ $finger ->
        [index] 食指
        [middle] 中指
        [ring] 无名指
        [little] 小指
       *[none] 的一个手指
    }
    [thumb] { $side ->
        [left] 左手拇指
       *[right] 右手拇指
    }
   *[hand] { $side ->
        [left] 左手
       *[right] 右手
    }
}，{ $view ->
    [palmar] 从手心一侧看。
    [radial] 从拇指一侧看。
    [ulnar] 从小指一侧看。
    [turned] 从手背和拇指之间看。
    [palmar-radial] 从手心和拇指之间看。
    [palmar-ulnar] 从手心和小指之间看。
    [own] 您自己看到的样子。
   *[dorsal] 从手背看。
}
picture-covers = { $splint }。{ $from ->
    [arm] 从上臂开始，
    [forearm] 从前臂开始，
    [hand] 从手掌开始，
   *[digit] 戴在{ $finger ->
        [index] 食指
        [middle] 中指
        [ring] 无名指
        [little] 小指
       *[none] 手指或拇指
    }上，
}{ $to ->
    [fingertips] 到各个指尖为止。
    [fingertip] 到指尖为止。
    [fingers] 到手指为止。
    [finger] 到这个手指为止。
    [thumb-tip] 到拇指指尖为止。
    [thumb] 到拇指为止。
    [palm] 到手掌为止。
   *[none] 不再往前。
}
picture-spots = 带字母的圆圈指出要看的地方。
# One of several pictures of a movement.
picture-part = 图{ $number }，共{ $count }张。
picture-held = 这个练习的姿势：{ $exercise }。
picture-moved = 虚线：开始的样子。箭头表示动作：{ $exercise }。
picture-inside = 骨头，像透过皮肤看到的那样。
picture-structures = 标出的是：{ $structures }。
picture-held-joints = 带横线的圆圈标出支具固定或稳住的地方：{ $joints }。
# The same mark, in a label.
picture-held-mark = 由支具固定或稳住
# Rows of joints of all fingers, in the list above.
held-knuckles = 各掌指关节
held-middle-joints = 各手指的中间关节
held-end-joints = 各手指的指尖关节
# A pair of pictures: how a splint sits, and a way in which it does not.
picture-right = 位置正确。用对勾表示。
picture-wrong = 位置不对。用叉号表示。{ $fault }
