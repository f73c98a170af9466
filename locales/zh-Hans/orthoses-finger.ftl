### Splints of the fingers and the hand: names, straps, places to check, and the steps of putting on and taking off.
### 患指 is the finger that the splint is for.
### The joints of a finger are the big knuckle (掌指关节), the middle joint (中间关节) and the tip (指尖).
### Left and right are never typed. The roof of a splint is 挡板, a finger loop is 套圈.

## Names
## The name stands inside sentences; the short form is a label in tables.

orthosis-tip-shell-custom-name = 指尖支具
orthosis-tip-shell-custom-short = 指尖
orthosis-tip-shell-ready-name = 成品指尖支具
orthosis-tip-shell-ready-short = 指尖，成品
orthosis-tip-cast-name = 指尖石膏
orthosis-tip-cast-short = 指尖石膏
orthosis-finger-gutter-middle-joint-name = 手指中间关节支具
orthosis-finger-gutter-middle-joint-short = 中间关节
orthosis-finger-gutter-long-name = 全手指支具
orthosis-finger-gutter-long-short = 全手指
orthosis-ring-stops-bending-back-name = 防后弯环形支具
orthosis-ring-stops-bending-back-short = 环，不让后弯
orthosis-ring-keeps-straight-name = 手指伸直环形支具
orthosis-ring-keeps-straight-short = 环，保持伸直
orthosis-serial-finger-cast-name = 手指拉直石膏
orthosis-serial-finger-cast-short = 手指拉直石膏
orthosis-spring-finger-extension-name = 带弹簧的手指支具
orthosis-spring-finger-extension-short = 手指弹簧
orthosis-finger-wedge-stepped-name = 带楔块的手指支具
orthosis-finger-wedge-stepped-short = 手指楔块
orthosis-finger-extension-block-name = 带挡板的手指支具
orthosis-finger-extension-block-short = 手指挡板
orthosis-buddy-straps-name = 并指绑带
orthosis-buddy-straps-short = 并指绑带
orthosis-knuckle-block-name = 单指掌指关节支具
orthosis-knuckle-block-short = 单指掌指关节
orthosis-trigger-ring-name = 中间关节环形支具
orthosis-trigger-ring-short = 中间关节环
orthosis-relative-extension-yoke-name = 抬高一指的横条支具
orthosis-relative-extension-yoke-short = 横条，抬高一指
orthosis-relative-flexion-yoke-name = 压低一指的横条支具
orthosis-relative-flexion-yoke-short = 横条，压低一指
orthosis-dorsal-block-long-name = 手背侧长款支具
orthosis-dorsal-block-long-short = 手背，长款
orthosis-dorsal-block-short-name = 手背侧短款支具
orthosis-dorsal-block-short-short = 手背，短款
orthosis-ulnar-gutter-name = 无名指和小指长款支具
orthosis-ulnar-gutter-short = 无名指、小指和手腕
orthosis-knuckle-shell-ring-little-name = 无名指和小指掌指关节支具
orthosis-knuckle-shell-ring-little-short = 无名指和小指掌指关节
orthosis-metacarpal-sleeve-name = 手掌骨护套支具
orthosis-metacarpal-sleeve-short = 手掌骨护套
orthosis-phalanx-gutter-pair-name = 双指支具
orthosis-phalanx-gutter-pair-short = 双指
orthosis-night-finger-extension-name = 手指夜用支具
orthosis-night-finger-extension-short = 手指，夜用
orthosis-drift-strap-name = 掌指关节软绑带支具
orthosis-drift-strap-short = 掌指关节软绑带
orthosis-knuckle-extension-block-name = 带横条的掌指关节支具
orthosis-knuckle-extension-block-short = 掌指关节横条

## Straps
## Each name is put into “Close the …” and “Undo the …”.

strap-finger-tape = 胶带绑带
strap-finger-base = 手指根部的绑带
strap-finger-past-middle-joint = 刚过中间关节的绑带
strap-finger-end = 靠近指尖的绑带
# Buddy straps hold a finger to its neighbour.
strap-finger-pair-base = 两个手指根部的绑带
strap-finger-pair-end = 两个手指过了中间关节处的绑带
# In a shell that holds a finger and its neighbour.
strap-finger-pair = 围住两个手指的绑带
# Across all four fingers, under a roof on the back of the hand.
strap-finger-row = 横过手指的绑带
strap-finger-loops = 手指套圈

## Places to look at in the skin check

spot-finger-end-joint-back = 指尖关节的背面
spot-finger-nail-skin = 指甲周围的皮肤
spot-finger-pad-sides = 指尖指肚的两侧
spot-finger-sides = 手指的两侧
spot-finger-sides-near-base = 手指的两侧，靠近根部
spot-finger-middle-joint-back = 中间关节的背面
spot-finger-middle-joint-backs = 各中间关节的背面
spot-ring-little-middle-joint-backs = 各中间关节的背面
spot-finger-joint-creases = 手指手心侧的横纹
spot-finger-web = 手指和手掌相连处的皮肤
spot-finger-between = 手指之间的皮肤
spot-finger-under-ring = 环下面的皮肤
spot-finger-cast-edges = 石膏两头边缘的皮肤
spot-finger-tip-cast-edges = 石膏两头边缘的皮肤
spot-finger-base-front = 手指的手心侧，靠近根部
spot-finger-first-bone-back = 手指的背面，挨着掌指关节
spot-finger-knuckle-backs = 各掌指关节的背面
spot-ring-little-knuckle-backs = 各掌指关节的背面
spot-finger-hand-edge = 手的小指侧边缘
spot-finger-wrist-back-edge = 手腕背面，支具的边缘处
spot-finger-over-break = 断骨处的皮肤
spot-finger-wound-line = 伤口或疤痕

## Fingertip splints
## The tip must not bend while it heals: it lies on the table from before the strap opens until it is closed again.

step-finger-tip-on-table = 把患指平放在桌上，指尖伸直。
step-finger-dry-on-table = 用毛巾擦干患指。指尖一直放平。
step-finger-slide-on-from-tip = 从指尖套上支具。患指一直伸直。
step-finger-lift-when-closed = 支具系好后，才能抬起患指。
step-finger-check-tip-straight = 确认指尖在支具里又直又稳。
step-finger-lay-out-towel = 打开任何地方之前，先在桌上铺一条毛巾。
step-finger-slide-off-forwards = 把支具从指尖笔直滑下来。不要歪斜。
step-finger-tip-if-healing = 如果指尖还在愈合，让它一直平放在桌上。
step-finger-look-on-table = 看皮肤，患指一直放在桌上。

## Splints along a finger

step-finger-straight-on-table = 把患指放在桌上，尽量伸直。
step-finger-push-to-base = 把支具推进去，直到手指根部。
step-finger-slide-on = 从指尖轻轻套上支具。
step-finger-straps-off-joints = 确认没有绑带压在关节上。
step-finger-check-tip-bends = 确认患指的指尖能弯。
step-finger-check-middle-joint-bends = 确认患指的中间关节能弯。
step-finger-check-knuckle-bends = 确认患指的掌指关节能弯。
step-finger-middle-if-healing = 如果中间关节还在愈合，让它一直平放在桌上。
step-finger-straight-if-healing = 如果患指还在愈合，让它一直直直地放在桌上。

## A roof that stops a finger from straightening

step-finger-bend-slightly = 稍微弯曲患指的中间关节。
step-finger-roof-on-finger = 把支具放在患指的背面。
step-finger-check-stops-short = 确认挡板能挡住患指，不让它伸得太直。
step-finger-bent-if-healing = 如果中间关节还在愈合，让它一直稍微弯着。

## Springs and wedges
## The pull comes last when it goes on and first when it comes off.

step-finger-joint-at-spring = 让中间关节对准弹簧的弯折处。
step-finger-spring-last = 让弹簧慢慢拉起来。
step-finger-hold-spring = 抓住弹簧，不让它弹回来。
step-finger-wedge-back = 把楔块一直退到底。
step-finger-wedge-in = 把楔块推进去，推到诊所做的记号处。
step-finger-check-mild-pull = 确认拉力很轻，不疼。

## Rings

step-finger-check-ring = 确认环干净、干燥、没有变弯。
step-finger-keep-straight = 患指一直伸直。
step-finger-slide-ring-on = 从指尖套上环。
step-finger-ring-cross-front = 转动环，让交叉处到中间关节的手心侧。
step-finger-ring-cross-back = 转动环，让交叉处到中间关节的背面。
step-finger-ring-over-joint = 把环推进去，直到套住中间关节。
step-finger-check-full-bend = 确认患指能完全弯曲。
step-finger-check-not-back = 确认中间关节不能向后弯。
step-finger-check-middle-joint-straight = 确认中间关节一直是直的。
step-finger-slide-ring-off = 把环从指尖滑下来。
step-finger-ring-stuck = 如果环卡住，抹点肥皂水。

## Casts
## Only the clinic puts a cast on and takes it off.

step-finger-cast-by-clinic = 石膏只能由诊所来打。
step-finger-cast-cover = 洗手洗澡前，用袋子把石膏套住封好。
step-finger-cast-look-at-edges = 看石膏两头边缘的皮肤。
step-finger-cast-off-by-clinic = 石膏只能由诊所来拆。
step-finger-cast-no-cutting = 不要剪石膏，不要拉石膏，不要往里面捅。
step-finger-cast-slips = 如果石膏滑动或破裂，让患指一直伸直，给我们打电话。

## Buddy straps

step-finger-dry-between = 把皮肤完全擦干，手指之间也要擦。
step-finger-beside-neighbour = 把患指靠在诊所选定的旁边手指上。
step-finger-check-both-bend = 确认两个手指一起弯。
step-finger-look-between = 把皮肤的每一面都看一遍，手指之间也要看。

## Knuckle splints for one finger

step-finger-push-into-ring = 把患指推进环里。
step-finger-palm-piece-flat = 把手掌片平放在手心里。

## Bar splints
## One finger lies higher or lower than its neighbours. In the first kind wrist and fingers must not drop.

step-finger-towel-roll = 把毛巾卷放在桌上。
step-finger-wrist-back-on-towel = 把手放在毛巾上，手腕向手背弯。
step-finger-fingers-straight = 手指一直伸直。
step-finger-yoke-on-top = 把患指放在横条上面。
step-finger-yoke-others-under = 把旁边的手指滑到横条下面。
step-finger-yoke-below = 把患指滑到横条下面。
step-finger-yoke-others-over = 把旁边的手指放在横条上面。
step-finger-yoke-to-base = 把横条推到手指根部。
step-finger-check-higher = 确认患指比旁边的手指高。
step-finger-check-lower = 确认患指比旁边的手指低。
step-finger-check-joints-beyond-bend = 确认中间关节和指尖能弯。
step-finger-slide-off-fingers = 把支具向前从手指上滑下来。
step-finger-tendon-if-healing = 如果肌腱还在愈合，手腕和手指都不能垂下来。

## Splints on the back of the hand
## For sewn bending tendons: wrist and fingers stay bent, and nobody straightens them.

step-finger-only-when-allowed = 只有诊所说可以，才能照这些步骤做。
step-finger-curl-over-towel = 把手搭在毛巾上，手腕向手心弯，手指弯着。
step-finger-roof-over-hand = 把支具放到手背上。
step-finger-check-under-roof = 确认每个指尖都在挡板下面。
step-finger-stay-curled = 让手指一直弯着。不要伸直。
step-finger-look-while-curled = 看皮肤，手指一直弯着。

## Splints for broken bones

step-finger-pad-between = 把软条放在两个手指之间。
step-finger-little-side-in = 把手的小指一侧放进支具。
step-finger-knuckles-in-bend = 确认掌指关节落在支具的弯折处。
step-finger-knuckles-bent-fingers-straight = 弯曲掌指关节。手指一直伸直。
step-finger-check-not-crossed = 确认没有手指压到旁边的手指上。
step-finger-knuckles-if-healing = 如果骨头还在愈合，掌指关节要一直弯着。
step-finger-sleeve-over-hand = 把护套套过手，到疼的骨头处。
step-finger-sleeve-behind-knuckles = 护套的前边缘不要盖住掌指关节，要留在靠手腕的一侧。
step-finger-slide-off-hand = 把支具向前从手上滑下来。

## Night splints, finger loops, knuckle bars

step-finger-rest-easy = 把患指放进去，只伸直到觉得轻松的程度。
step-finger-check-no-pull = 确认没有东西拉扯皮肤。
step-finger-loops-on = 把每个手指滑进它的套圈。
step-finger-easy-pull = 拉紧套圈，只拉到觉得轻松的程度。
step-finger-check-in-line = 确认手指都笔直朝前。
step-finger-bend-knuckles-little = 稍微弯曲掌指关节。
step-finger-under-bar = 把无名指和小指滑到横条下面。
step-finger-check-straighten = 确认中间关节能伸直。

## Putting it on with one hand
## There is no other hand: table, towel, book, thigh and the thumb of the same hand do the work.

step-finger-against-book = 把打开的支具放在桌上，顶住一本重书。
step-finger-slide-along-table = 患指平贴桌面滑进支具。
step-finger-slide-in-easy = 患指沿着桌面滑进支具。
step-finger-push-under-roof = 把要戴支具的每个手指滑到挡板下面。
step-finger-push-hand-in = 把手推进护套。
step-finger-own-thumb = 用同一只手的拇指来系绑带。
step-finger-upright-in-towel = 把支具竖着压进毛巾卷里。
step-finger-thumb-turns-ring = 用同一只手的拇指来转环。
step-finger-wrist-stays-back = 手腕一直向手背弯。
step-finger-straps-as-loops = 先把每条绑带系成松松的圈。
step-finger-through-loops = 把两个手指推进这些圈里。
step-finger-trap-strap-end = 把每条绑带的一头压在大腿下，轻轻拉。
step-finger-cast-cover-with-knees = 用两个膝盖夹住袋子，把手推进去。
step-finger-trained-helper = 让诊所教过的帮手来做。绝不要一个人做。
