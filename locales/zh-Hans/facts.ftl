### The fact sheet of a condition, for patients. It is about nobody in particular: no hour, no date.
### No number, side or duration is typed here; they come in as variables.

facts-caution = 这一页介绍一种手部问题。它不能代替治疗师或手术医生对您说的话。如果他们说的不一样，请照他们说的做。
# At the foot of each page.
facts-line = 图中是{ $side ->
    [left] 左手
   *[right] 右手
}{ $finger ->
    [index] ，食指
    [middle] ，中指
    [ring] ，无名指
    [little] ，小指
   *[none] {""}
}。

## What it is

facts-what-title = 这是什么问题
# $what is one or two finished sentences.
facts-what = { $what }

## What the splint is for

facts-aim-title = 支具有什么用
# $aim is one or two finished sentences.
facts-aim = { $aim }
# $joints is a list of joints, such as "your wrist and the base of your thumb".
facts-joints = { $joints }
facts-joint-still = 保持不动
facts-joint-steady = 保持稳定
facts-joint-stopped = 能动，到一定位置就挡住
facts-joint-relative = 比旁边的手指动得少
facts-joint-coupled = 和旁边的手指一起动
facts-joint-mobilised = 轻轻牵拉
# Some splints hold these joints and others do not.
facts-joint-varies = 固定或不固定：看您戴哪种支具
facts-joint-free = 可以自由活动

## Types of splint

facts-types-title = 适合的支具
facts-types-intro = 这些种类适合刚开始时用。治疗师会选适合您的手的一种。

## The usual course

facts-course-title = 通常的过程
# $length is a finished length of time, such as "about six weeks".
facts-step-label = 第{ $number }步，{ $length }：
# $wear and $ends are finished sentences.
facts-step = { $wear }{ $ends }
# $length is such as "four to six weeks".
facts-length-usual = 大约{ $length }
facts-length-protocol = { $length }，按手术医生说的
facts-length-open = 没有固定时间
facts-weeks = { $count ->
   *[other] { $count }周
}
# $from and $to are numbers of weeks.
facts-weeks-range = { $from }至{ $to ->
   *[other] { $to }周
}
facts-days = { $count ->
   *[other] { $count }天
}
facts-days-range = { $from }至{ $to ->
   *[other] { $to }天
}
facts-ends-therapist = 这一步没有固定的结束时间。什么时候结束，由治疗师决定。
facts-ends-surgeon = 这一步没有固定的结束时间。什么时候结束，由手术医生决定。
facts-ends-person = 什么时候不再需要，由您决定。
facts-ends-time = 然后开始下一步。
facts-own-guide = 这一页不是您的个人安排。什么时候戴支具，看您自己的指南。请照您的指南做。
facts-clinics-differ = 各家诊所不一样。您的支具、步骤和时间可能和这里不同。
facts-surgeon-sets = 手术或骨折以后，时间长短和手的固定姿势由手术医生决定。

## When to get help

facts-help-title = 什么时候求助
# $sign is a sign, such as "Your pinch gets weaker".
facts-visit = { $sign }：下次复诊时告诉治疗师。
