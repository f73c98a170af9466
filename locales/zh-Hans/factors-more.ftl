### More advice for what is particular about one person.
### Each message is one or two short sentences that stand inside a section of the guide.
### $checks is a number of skin checks a day, $limit a finished length of time.

## Skin that feels little or nothing

factor-numb-skin-no-packs = 麻木的皮肤上不要热敷，也不要冰敷。

## Rash from natural rubber

factor-latex-allergy-itch = 皮肤发痒，哪怕一点点，也给我们打电话。
factor-latex-allergy-gloves = 不要在支具外面戴橡胶手套。用别的材料的手套。
factor-latex-allergy-spare-parts = 不要加橡皮筋或有弹性的绑带。请向我们要安全的。

## Rash from metal

factor-nickel-allergy-itch = 皮肤发痒，哪怕一点点，也给我们打电话。
factor-nickel-allergy-bare-metal = 不要让裸露的金属碰到皮肤。包层磨破了，告诉我们。

## Rash from tape and glue

factor-adhesive-allergy-itch = 皮肤发痒，哪怕一点点，也给我们打电话。
factor-adhesive-allergy-no-tape = 不要在皮肤上贴胶带，也不要贴创可贴。请向我们要绑带。
factor-adhesive-allergy-linings = 不要在支具里粘垫子或衬里。

## Trouble remembering

factor-memory-difficulty-same-times = 每天都在同样的钟点做。给这些时间设闹钟。
factor-memory-difficulty-tick = 把这份指南挂在墙上。每检查一次皮肤，打一个勾。
factor-memory-difficulty-in-sight = 把支具放在一个看得见的固定地方。每次都读一遍步骤。
factor-memory-difficulty-after-meals = 把动作和平时要做的事放在一起做，比如吃饭。

## Somebody at home who helps

factor-helper-at-home-looks = 也请帮忙的人看看您的皮肤。
factor-helper-at-home-reads = 请帮忙的人大声读每一步，并系好绑带。
factor-helper-at-home-heavy-jobs = 指南里让您先别做的事，请帮忙的人做。

## A child

# The reader may be the child or a grown-up reading aloud.
factor-child-grown-up-looks = 每次都让大人看看皮肤。哪里疼，马上说。
factor-child-grown-up-helps = 每次戴上或取下支具，都要有大人在旁边。
factor-child-school = 带一份这个指南到学校。
factor-child-game = 把每个动作变成游戏。
factor-child-small-parts = 松的绑带和小零件不要让婴儿和小孩拿到。

## Pregnancy

factor-pregnancy-swelling = 有些日子手可能会肿。坐着时把手放在垫子上。
factor-pregnancy-strap-room = 每天检查每条绑带下面能伸进一个指尖。
factor-pregnancy-grooves = 看看有没有绑带压出的深印。如果一直不退，告诉我们。

## Work in the heat

factor-heat-work-keep-away = 支具不要靠近烤箱、灶具和发动机。在高温处干活前先问我们。
factor-heat-work-dry-skin = 出汗马上擦干。看看皮肤有没有发软发白。
factor-heat-work-fresh-sleeve = 每个班次都戴上干净、干燥的衬套。潮了马上换。

## Work with food

factor-food-work-ask = 问单位，接触食物时能不能戴支具。问怎样包住它。
factor-food-work-damp = 支具外面套手套会闷住湿气。下班后看看皮肤有没有发软发白。
factor-food-work-clean = 每个班次后清洁支具。用过的套子扔掉。

## Work in the wet

factor-wet-work-cover = 把支具包住，或让别人做沾水的活。
factor-wet-work-dry-breaks = 经常停下，把皮肤擦干。看看皮肤有没有发软发白。
factor-wet-work-spare-sleeves = 备好替换的衬套。潮了马上换。

## Work with machines

factor-machinery-moving-parts = 戴着支具时，不要在转动的机器旁干活。机器会缠住绑带，把手拉进去。
factor-machinery-ask = 上班时也要照这些时间戴。重新操作机器前，先问我们和您的雇主。

## Slow healing

factor-slow-healing-no-early-end = 您的手需要全部的时间。不要提前停，哪怕感觉好了。
factor-slow-healing-any-break = 皮肤破了，哪怕一点点，当天就给我们打电话。
factor-slow-healing-smoke = 如果您抽烟，请我们或您的医生帮您戒烟。抽烟让愈合变慢。

## An open wound, stitches or pins

factor-open-wound-look = 看伤口或钢针露在外面的部分。如果流出液体、有异味或移动了，今天就给我们打电话。
factor-open-wound-dry = 手要保持干燥，直到我们告诉您皮肤已经长好。
factor-open-wound-no-rubbing = 不要揉或按伤口。不要碰缝线或钢针。
factor-open-wound-dressing = 纱布要保持干净、干燥。问我们由谁来换。

## Poor blood flow

factor-poor-circulation-colour = 把指尖（包括拇指）和另一只手比一比。皮肤破了，当天就给我们打电话。
factor-poor-circulation-strap-room = 把一个指尖伸到每条绑带下面。必须伸得进去。
factor-poor-circulation-warm = 用衣物给手保暖。不要冰敷，也不要热敷。

## Only one hand to use

factor-one-hand-only-table = 把胳膊放在桌上。用桌边或腿帮忙。
factor-one-hand-only-helper = 指南里说“另一只手”的地方，您可以请别人帮忙。
factor-one-hand-only-mirror = 用镜子看手的另一面。

## Strong pain or worry

factor-high-pain-worry-small = 从这里最小的动作开始。动得小、做得勤就好。
factor-high-pain-worry-rest = 手很疼之前就休息。然后再继续。
factor-high-pain-worry-call = 有什么担心，早点给我们打电话。没有小到不能问的问题。
