### Splints: names, straps, places to check, and the steps of putting on and taking off.
### “Hand that wears the splint” and “other hand” are used; left and right are never typed.
### Soft wraps are 软支具, so that 支具 in the steps fits every name. Straps: 系好, 解开.

## Names
## The name stands inside sentences; the short form is a label in tables.

orthosis-forearm-thumb-spica-name = 长款拇指支具
orthosis-forearm-thumb-spica-short = 前臂和拇指
orthosis-hand-thumb-spica-name = 短款拇指支具
orthosis-hand-thumb-spica-short = 手和拇指
orthosis-short-cmc-name = 拇指根部支具
orthosis-short-cmc-short = 拇指根部
orthosis-short-cmc-mcp-block-name = 带掌指关节挡板的拇指根部支具
orthosis-short-cmc-mcp-block-short = 拇指根部和掌指关节
orthosis-soft-wrist-thumb-wrap-name = 手腕和拇指软支具
orthosis-soft-wrist-thumb-wrap-short = 手腕和拇指，软
orthosis-soft-thumb-wrap-name = 拇指软支具
orthosis-soft-thumb-wrap-short = 拇指，软
orthosis-wrist-only-name = 手腕支具
orthosis-wrist-only-short = 手腕

## Straps
## Each name is put into “Close the …” and “Undo the …”.

strap-wrist = 手腕绑带
strap-forearm = 前臂绑带
strap-palm = 手掌绑带
strap-thumb = 拇指绑带
# A short splint ends at the wrist; this strap runs along that end.
strap-wrist-edge = 手腕旁边的绑带

## Places to look at in the skin check

spot-wrist-bone-thumb-side = 手腕拇指侧的骨头
spot-wrist-bone-little-finger-side = 手腕小指侧的骨头
spot-thumb-web = 拇指和食指之间（虎口）的皮肤
spot-thumb-knuckle = 拇指掌指关节的背面和两侧
spot-thumb-base = 拇指根部的骨头
spot-palm-crease = 手掌，支具的边缘处
spot-forearm-edge = 前臂，支具的边缘处

## Putting it on
## One action a step. The other hand does the work.

step-wash-dry-hands = 洗手，完全擦干。
step-check-lining = 确认支具里面干净、干燥、光滑。
step-open-straps = 解开所有绑带。
step-rest-arm-on-table = 把前臂放在桌上。
step-slide-thumb-in = 轻轻把拇指滑进去。
step-lay-hand-in = 把手掌放进支具，拇指留在外面。
step-seat-at-wrist = 把支具压到位，让它的弯折处正对手腕。
step-seat-at-thumb-base = 把支具压到位，让它包住拇指根部。
step-smooth-the-wrap = 把软支具抚平，不要有皱褶。
# $strap is a strap's name, such as 手腕绑带.
step-close-strap = 系好{ $strap }。
step-check-strap-room = 确认每条绑带下面能伸进另一只手的一个指尖。
step-check-wrist-bends = 确认手腕能弯。
step-check-thumb-knuckle-bends = 确认拇指的掌指关节和指尖能弯。
step-check-thumb-tip-bends = 确认拇指指尖能弯。
step-check-fist = 确认能握拳，拇指能动。
step-look-at-fingers = 看看手指和拇指。必须一直暖和，颜色和平时一样。

## Taking it off

# $strap is a strap's name, such as 手腕绑带.
step-undo-strap = 解开{ $strap }。
step-lift-off = 把支具拿开。不要拖拉。
step-lift-off-thumb-side = 从拇指一侧把支具拿开。不要拖拉。
step-lift-off-elbow-front = 从手肘前面把支具拿开。不要拖拉。
step-lift-out-of-thumb-web = 从拇指和食指之间把支具拿出来。
step-lift-off-little-side = 从小指一侧把支具拿开。不要拖拉。
step-slide-off-thumb = 把支具从拇指上滑下来。不要扭。
step-look-at-skin = 把皮肤的每一面都看一遍。
