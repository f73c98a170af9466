### Advice for what is particular about one person.
### Each message is one or two short sentences that stand inside a section of the guide.
### $checks is a number of skin checks a day, $limit a finished length of time.

## Skin that feels little or nothing

factor-numb-skin-look = 相信眼睛，不要相信感觉。手的每一面都要看。可以用镜子帮忙。
factor-numb-skin-strap-room = 把另一只手的指尖伸到每条绑带下面。必须伸得进去。
factor-numb-skin-hot-and-sharp = 热的东西先用另一只手试。不要让尖锐的东西碰到麻木的皮肤。

## Thin or tender skin

factor-fragile-skin-no-tape = 不要在皮肤上贴胶带或粘垫。
factor-fragile-skin-lift = 轻轻取下支具。不要让它摩擦或拖拉皮肤。
factor-fragile-skin-sleeve = 支具里面戴一个光滑、干燥的棉套。每天换。

## Swelling

factor-swelling-raise = 坐着时，把手放得比心脏高。
factor-swelling-loosen = 如果绑带变紧，放松一点。消肿后再系好。
factor-swelling-pump = 经常活动没被固定的手指。这有助于消肿。

## Diabetes

factor-diabetes-any-break = 皮肤破了，哪怕一点点，当天就给我们打电话。

## Easy bleeding

# For people who take something against clotting. No medicine is named, and none is to be stopped.
factor-blood-thinners-bruise = 如果支具下面的瘀青变大，今天就给我们打电话。
factor-blood-thinners-no-rubbing = 不要用力揉手。小心磕碰。

## Low vision

factor-low-vision-check = 用另一只手摸，找发热、发硬、潮湿或疼的地方。也请别人看看皮肤。
factor-low-vision-dots = 请我们在绑带上贴凸点。这样能分清每条绑带。

## Living alone

factor-lives-alone-table = 把胳膊放在桌上。让桌子托住支具，用另一只手来系。
factor-lives-alone-ready = 准备好宽松的衣服和方便的饭菜。
factor-lives-alone-phone = 把我们的电话号码放在床边。

## Night work

factor-night-work-main-sleep = 这份指南里说的晚上，是指您主要的睡觉时间。
factor-night-work-after-sleep = 主要的一觉睡醒后，做第一次练习。

## Rash from foam rubber

factor-neoprene-allergy-itch = 皮肤发痒，哪怕一点点，也给我们打电话。
factor-neoprene-allergy-spare-parts = 不要加泡沫橡胶做的垫子、手套或包布。

## A new baby

factor-new-mother-flat-hands = 抱孩子、喂孩子时，手要放平。拇指靠在食指旁边。
factor-new-mother-strap-room = 手可能会肿。每天检查每条绑带下面能伸进一个指尖。
factor-new-mother-edges = 抱孩子前，用干净的布包住硬边。
