### The papers beside the guide: card, diary, exercises, letter.
### No date, hour, number, side or angle is typed here; they come in as variables.

# Stands at the end of each of these papers.
sheet-caution = 这一页不能代替完整的指南，也不能代替治疗师或手术医生对您说的话。如果他们说的不一样，请照他们说的做。

## The card

card-caution = 这张卡片要和指南一起用。治疗师的话最重要。
card-title = 您的支具
card-description = 什么时候戴支具，怎么戴上，什么时候打电话。
# $straps is a list of names, in the order in which they are closed.
card-straps-on = 按这个顺序系好：{ $straps }。
card-straps-off = 按这个顺序解开：{ $straps }。

## The diary

diary-title = 您的日记
diary-description = 一份日记，每天打勾，一直记到下次复诊。
diary-week = 第{ $week }周：{ $from }至{ $to }
# $least is no pain, $most the worst.
diary-intro = 做完一件事，就在格子里打勾。圈出一个数字，表示当天最疼的时候：{ $least }是不疼，{ $most }是您能想到的最疼。
# $bouts is how many times, $each how long.
diary-wears = { $bouts ->
   *[other] { $bouts }次
}，每次{ $each }。晚上不戴。
diary-worn = 戴了
diary-hours = 戴了几小时
diary-skin = 看了皮肤
diary-exercises = 练习
diary-pain = 疼痛
diary-note = 备注
# $number is the clinic's telephone.
diary-stop = 如果出现指南里的停止信号，不要等到复诊。请打{ $number }。
diary-stop-no-number = 如果出现指南里的停止信号，不要等到复诊。请给诊所打电话。
diary-visit = 复诊时带上这份日记：{ $date }。
diary-visit-time = 复诊时带上这份日记：{ $date }，{ $time }。

## The exercises

exercises-title = 您的练习
exercises-description = 在家做的练习：开始的姿势、动作、次数、什么时候停。

## The letter

letter-title = { $to ->
    [teacher] 写给老师
    [employer] 写给雇主
   *[carer] 写给帮忙的人
}
letter-description = 戴支具的手目前可以做什么，不可以做什么。
# $fitted and $review are dates.
letter-intro = { $to ->
    [teacher] 您的学生{ $side ->
        [left] 左手
       *[right] 右手
    }戴着支具。
    [employer] 您的员工{ $side ->
        [left] 左手
       *[right] 右手
    }戴着支具。
   *[carer] 您帮助的人{ $side ->
        [left] 左手
       *[right] 右手
    }戴着支具。
}这封信说明在诊所下次检查之前，这只手可以做什么。
letter-from = 开始戴支具
letter-until = 下次到诊所复诊
letter-for = 有什么用
letter-told = 关于日常的事，我们对本人是这样说的：
letter-never-off = 只有诊所可以取下支具。不要剪、弯或打开支具。
letter-leave-on = 除非本人请您帮忙，不要取下或改动支具。
letter-other-jobs = 这里没写到的事，请问本人。如果本人也不确定，先不做，等问过诊所再说。
letter-help-carer = 要用两只手的事，请帮忙做。不要拉戴支具的那条胳膊。
letter-help-teacher = 写字时请多给些时间。诊所同意之前，不做手可能被碰撞的运动或游戏。
letter-help-employer = 请安排不用这只手的工作。什么时候可以恢复全部工作，由诊所决定。
# $number is the clinic's telephone.
letter-urgent = 如果手指或拇指发青、发白、麻木或发凉，或疼痛明显加重，请马上行动。帮本人拨打{ $number }。
letter-urgent-no-number = 如果手指或拇指发青、发白、麻木或发凉，或疼痛明显加重，请马上行动。帮本人给诊所打电话。
# Stands in the place of a picture.
letter-hand = { $side ->
    [left] 支具戴在左手上。
   *[right] 支具戴在右手上。
}
# At the foot of the page. $name is the person's name.
letter-about = 关于{ $name }。{ $side ->
    [left] 左
   *[right] 右
}手。
letter-about-nobody = 关于一个人。{ $side ->
    [left] 左
   *[right] 右
}手。

# A diary ends after some weeks, however late the visit is.
diary-more = 这是日记的最后一页。还需要的话，请向诊所要。

## Booklet: sheets bound into one

booklet-contents = 目录
booklet-caution = 这些页面不能代替治疗师或手术医生对您说的话。如果他们说的不一样，请照他们说的做。
booklet-one-handed = 用一只手戴上
