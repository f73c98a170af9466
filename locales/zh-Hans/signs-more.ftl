### More signs to watch for. Each is a clause or a short noun phrase without a full stop.
### It stands in a list under a heading such as “Call us today if:”.
### Printed only where a condition names the sign.

## Emergencies

sign-finger-snap = 觉得里面“啪”地断开一下，或手指、拇指突然弯不了或伸不直
sign-tooth-cut-over-knuckle = 掌指关节上被牙齿划破的伤口发红、肿胀或疼痛
sign-finger-white-when-straight = 手指伸直时发白
sign-graft-pale-or-tight = 手上新植的皮肤变白，或深处发紧

## Today

sign-tip-droops-again = 指尖又垂下来，或没托住时弯了一下
sign-middle-joint-bends-alone = 手指的中间关节垂下来，或没托住时弯了一下
sign-finger-cannot-straighten = 一个手指垂下来，自己伸不直
sign-thumb-tip-will-not-lift = 拇指指尖再也抬不起来
sign-finger-turns-over-neighbour = 一个手指扭转，或压到旁边的手指上
sign-finger-locks = 手指或拇指卡住，伸不直
sign-pin-loose = 钢针松了、弯了或断了，或针眼流出液体
sign-joint-slips = 关节滑出原位，或感觉松动
sign-wrist-clunks = 手腕发出闷响，或拇指旁边的凹窝深处疼
sign-night-numbness-grows = 手指或拇指晚上麻木的次数变多，或白天也开始一直麻木
sign-thumb-muscle-thinner = 拇指下面鼓起的肌肉变薄
sign-hand-muscle-thinner = 拇指和食指之间（虎口）的手变薄
sign-little-finger-numb = 小指一直比以前更麻木
sign-elbow-band-tingles = 戴着护带或支具时，手或前臂刺麻
sign-finger-stays-bent-more = 一个手指比以前弯得更多
sign-tight-hand-tighter = 手变得更紧，或更难张开

## At the next visit

sign-clicks-under-load = 手撑住或提东西时，手腕或手弹响并且疼
