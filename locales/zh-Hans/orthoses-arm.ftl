### Splints of the thumb, the wrist and the arm, and of the whole hand: names, straps, places to check, and steps.
### What several splints share stands in orthoses.ftl. “Other hand” is the hand without the splint.

## Names of wrist splints
## The name stands inside sentences; the short form is a label in tables.

orthosis-wrist-neutral-name = 手腕伸直支具
orthosis-wrist-neutral-short = 手腕，伸直
orthosis-wrist-dorsal-shell-name = 手背侧手腕支具
orthosis-wrist-dorsal-shell-short = 手腕，手背侧
orthosis-wrist-all-round-name = 环绕式手腕支具
orthosis-wrist-all-round-short = 手腕，环绕
orthosis-wrist-soft-stay-name = 带支撑条的手腕软支具
orthosis-wrist-soft-stay-short = 手腕，软，带条
orthosis-wrist-soft-wrap-name = 手腕软支具
orthosis-wrist-soft-wrap-short = 手腕，软

## Names of thumb splints

orthosis-forearm-thumb-spica-tip-name = 包指尖的长款拇指支具
orthosis-forearm-thumb-spica-tip-short = 前臂和整个拇指
orthosis-thumb-knuckle-shell-name = 拇指掌指关节支具
orthosis-thumb-knuckle-shell-short = 拇指掌指关节
orthosis-thumb-mcp-ring-name = 拇指环形支具
orthosis-thumb-mcp-ring-short = 拇指环
orthosis-thumb-tip-cap-name = 拇指指尖支具
orthosis-thumb-tip-cap-short = 拇指指尖
# It keeps the space between thumb and index finger open.
orthosis-thumb-web-spacer-name = 拇指虎口撑开支具
orthosis-thumb-web-spacer-short = 拇指虎口撑开
# Its roof keeps the thumb from straightening too far.
orthosis-thumb-dorsal-block-name = 拇指背侧挡板支具
orthosis-thumb-dorsal-block-short = 拇指挡板
# It holds the thumb up, away from the palm.
orthosis-thumb-raised-long-name = 拇指抬起支具
orthosis-thumb-raised-long-short = 拇指抬起

## Names of arm splints and bands

orthosis-long-arm-rotation-name = 长臂支具
orthosis-long-arm-rotation-short = 手肘到手
orthosis-elbow-night-shell-name = 手肘夜用支具
orthosis-elbow-night-shell-short = 手肘，夜用
orthosis-counterforce-band-name = 前臂护带
orthosis-counterforce-band-short = 前臂护带
orthosis-distal-ulna-strap-name = 加固型手腕护带
orthosis-distal-ulna-strap-short = 手腕护带

## Names of splints for wrist and fingers

# Cords join wrist and fingers, so that each helps the other to move.
orthosis-tenodesis-assist-name = 手腕手指联动支具
orthosis-tenodesis-assist-short = 手腕手指联动
# Elastic pulls lift the fingers at the big knuckles.
orthosis-dynamic-knuckle-extension-name = 抬手指支具
orthosis-dynamic-knuckle-extension-short = 抬手指
orthosis-palm-shell-wrist-knuckles-name = 手腕和掌指关节支具
orthosis-palm-shell-wrist-knuckles-short = 手腕和掌指关节
orthosis-resting-hand-name = 手部休息支具
orthosis-resting-hand-short = 手部休息
orthosis-intrinsic-plus-shell-name = 掌指关节弯曲位手支具
orthosis-intrinsic-plus-shell-short = 手，掌指关节弯
orthosis-palm-extension-pan-name = 手掌张开支具
orthosis-palm-extension-pan-short = 手掌张开
orthosis-spread-hand-cushion-name = 手部软垫支具
orthosis-spread-hand-cushion-short = 手部软垫

## Straps
## Each name is put into “Close the …” and “Undo the …”.

strap-near-elbow = 靠近手肘的绑带
strap-upper-arm = 上臂绑带
strap-hand-back = 横过手背的绑带
strap-across-fingers = 横过手指的绑带
strap-across-fingertips = 靠近指尖的绑带
# A band has one strap, which pulls it snug.
strap-band = 护带的绑带

## Places to look at in the skin check

spot-wrist-palm-side = 手腕的手心侧
spot-wrist-back = 手腕的背面
spot-forearm-thumb-side = 前臂的拇指侧，手腕上方一点
spot-knuckle-backs = 掌指关节的背面
spot-middle-joint-backs = 手指中间关节的背面
spot-palm-below-knuckles = 手掌，紧挨手指根部
spot-palm-middle = 手掌正中
spot-splint-end-at-fingers = 手指，支具的边缘处
spot-between-fingers = 手指之间的皮肤
spot-fingertips = 指尖
spot-hand-edge-little-finger = 手的小指侧边缘
spot-loop-edges = 手指套圈下面的皮肤
spot-thumb-hole = 拇指孔周围的皮肤
spot-thumb-ball = 手掌在拇指下面的厚肉
spot-thumb-pad = 拇指指肚
spot-thumb-tip-joint-back = 拇指指尖关节的背面
spot-thumbnail-edge = 拇指指甲周围的皮肤
spot-ring-crossing = 环交叉处的皮肤
spot-bar-end-in-palm = 手掌，支撑条的末端处
spot-wrap-edge = 软的部分边缘的皮肤
spot-forearm-under-band = 前臂，护带下面
spot-band-pad = 护带的垫子下面的皮肤
spot-elbow-point = 手肘尖
spot-elbow-inner-groove = 手肘内侧的沟
spot-elbow-crease = 手肘前面的横纹
spot-upper-arm-edge = 上臂，支具的边缘处

## Getting ready
## One action a step. The other hand does the work.

step-wash-other-hand = 洗另一只手，完全擦干。
# For a splint that may only be changed by two people.
step-wait-for-helper = 不要一个人做。等学过的帮手来。
step-ask-helper-if-possible = 可以的话，请别人帮忙。
step-loop-straps-first = 开始前，先把每条绑带穿过它的扣环。
step-lay-open-on-table = 把打开的支具放在桌上。
step-hold-between-knees = 用两个膝盖夹住打开的支具。
step-lay-opening-towards-you = 把支具放在桌上，开口朝向自己。
step-palm-down-on-table = 手心朝下放在桌上。
step-sit-at-table = 在桌边坐下。

## Wrist splints: putting them on and taking them off

step-lay-splint-on-back = 把支具放在手背和前臂背面上。
# With one hand: the splint lies on the table with its hollow side up.
step-lay-back-of-arm-in = 把手背和前臂背面放进支具。
step-press-into-splint = 轻轻把胳膊压进支具。
step-pull-splint-open = 把支具拉开一点。
step-slip-wrist-in = 从侧面把手腕滑进去。
step-slip-wrist-out = 把手腕滑出来。不要扭。
# The bar is a flat stiff strip inside a soft splint.
step-bar-on-palm-side = 转动支具，让支撑条对着手心。
step-slide-hand-in = 把手滑进支具。
step-thumb-through-hole = 把拇指穿过拇指孔。
step-slide-off-hand = 把支具从手上滑下来。不要拖拉。
step-wrap-round-wrist = 把软支具绕在手腕上。
step-lay-wrist-on-wrap = 把手腕放在软支具中间。
step-hold-wrap-on-table = 把手压在桌上，压住软支具不让它动。
step-unwrap = 打开软支具。不要硬拉下来。

## Thumb splints: putting them on and taking them off

step-push-on-with-table-edge = 用桌边顶住，轻轻把支具推到位。
step-keep-thumb-beside-index = 拇指一直靠在食指旁边。
step-slide-over-thumb = 把支具套在拇指上。
step-seat-at-thumb-knuckle = 把支具压到位，让它包住拇指的掌指关节。
step-check-thumb-tip-lies-in = 确认拇指指尖在支具里。
step-bend-thumb-a-little = 稍微弯一下拇指。
step-slide-ring-on = 把环套在拇指上，推到掌指关节。
# The therapist puts a mark on the ring.
step-turn-ring-to-mark = 转动环，让记号到拇指背面。
step-check-thumb-stops = 伸直拇指。环必须挡住它，不让它向后弯。
step-slide-ring-off = 把环滑下来。卡住时，抹点肥皂水。
step-rest-thumb-tip-flat = 把拇指指肚平放在桌上。
step-slide-on-from-tip = 从指尖套上支具。指尖一直放平。
step-push-thumb-in-flat = 拇指贴着桌面，平着推进支具。
step-check-thumb-tip-straight = 确认拇指指尖是直的。
step-check-thumb-big-knuckle-bends = 确认拇指的掌指关节能弯。
step-slide-off-tip-flat = 把支具滑下来。指尖一直平放在桌上。
step-look-at-skin-tip-flat = 看皮肤。指尖一直平放在桌上。
step-set-between-thumb-and-index = 把支具放在拇指和食指之间。

## Splints that guard a mended thumb: the thumb never leaves its position

step-rest-hand-curled-on-towel = 把手放在毛巾卷上，手腕向手心弯，手指弯着。
step-keep-thumb-loosely-bent = 拇指自始至终松松地弯着。
# The roof is the part of the splint along the back of the thumb.
step-check-thumb-under-roof = 确认整个拇指都在挡板下面。
step-rest-thumb-up-on-towel = 把手放在毛巾上，拇指朝上。
step-keep-thumb-raised = 拇指自始至终抬着。
step-lay-splint-along-thumb-side = 把支具放在前臂的拇指一侧。
step-check-thumb-straight-in-splint = 确认整个拇指直直地在支具里。

## Arm splints and bands

step-turn-hand-as-splint = 按支具的形状转好手。
step-lay-whole-arm-in = 手肘弯着，把胳膊放进支具。
step-elbow-in-hollow = 让手肘尖落在凹窝里。
step-keep-hand-turned = 手一直保持这个转向。
step-bend-elbow-as-splint = 手肘弯到和支具一样的程度。
step-lay-splint-on-elbow-front = 把支具放在手肘前面。
step-check-elbow-point-free = 确认没有东西压着手肘尖。
step-slide-band-up = 把打开的护带沿前臂往上套。
step-seat-band-below-elbow = 把护带放在手肘下面，前臂最粗的地方。
step-pad-on-sore-side = 把垫子转到胳膊疼的一侧。
step-check-no-tingling = 握拳。手不能有刺麻感。
step-slide-band-over-hand = 把打开的护带套过手。
step-seat-band-at-wrist-bone = 把护带放在手腕的圆骨头上。
step-slide-band-off = 把护带滑下来。不要拖拉。

## Splints with loops for the fingers

step-fingers-through-loops = 把每个手指穿过它的套圈。
step-loops-beside-knuckles = 把每个套圈推到靠近掌指关节。
step-fingers-out-of-loops = 把每个手指从套圈里拿出来。
step-check-fist-lifts-wrist = 松松地握拳。手腕必须抬起来。
# A pull is an elastic cord between a loop and the frame.
step-hook-on-pulls = 把每个套圈的弹力绳挂到支架上。
step-unhook-pulls = 取下每个套圈的弹力绳。
step-check-fingers-bend-against-pull = 确认手指能顶着弹力绳的拉力弯曲。

## Splints for the whole hand

step-keep-wrist-up-fingers-straight = 手腕一直抬着，手指一直伸直。
step-hand-on-towel-fingers-straight = 把手放在毛巾卷上，手指伸直。
step-check-middle-joints-bend = 确认手指的中间关节能弯。
step-lay-forearm-in = 把前臂放进支具。
step-thumb-on-its-rest = 把拇指放在它的位置上。
step-fingers-on-rest = 把手指并排放在支具上。
step-bend-big-knuckles = 弯曲掌指关节。手指保持伸直。
step-keep-big-knuckles-bent = 掌指关节一直弯着，手指一直伸直。
step-fingers-flat-on-splint = 把每个手指平贴在支具上。
step-check-middle-joints-straight = 确认手指的中间关节是直的。
step-spread-fingers-in-grooves = 把每个手指直直地放进它的槽里。
step-let-hand-go-loose = 让手尽量放松。
step-open-hand-slowly = 慢慢张开手。绝不要硬来。
step-lay-hand-on-cushion = 把手掌和前臂放在软垫上。
step-fingers-in-gaps = 把每个手指放进它的空位里。
step-dry-palm-and-gaps = 擦干手掌和手指之间的皮肤。
