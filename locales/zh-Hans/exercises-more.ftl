### More exercises: name, starting position and one action for each step.
### The name is a short order and stands as a heading. Steps are numbered by the program.
### $hold is a finished length of time, such as the words for five seconds.
### “Other hand” is the hand without the splint. 患指 is the finger that the splint is for.
### The joints of a finger are the big knuckle, the middle joint and the tip.

## Arm and wrist

exercise-shoulder-reach-name = 举起胳膊
exercise-shoulder-reach-start = 坐着或站着，胳膊放在身体旁边。
exercise-shoulder-reach-step-1 = 从身体前面抬起胳膊，抬到觉得轻松的高度。
exercise-shoulder-reach-step-2 = 保持{ $hold }。
exercise-shoulder-reach-step-3 = 慢慢放下胳膊。
exercise-shoulder-reach-step-4 = 下一次，从侧面抬起。

exercise-wrist-dart-name = 手腕像投飞镖一样动
exercise-wrist-dart-start = 前臂立放在桌上，小指一侧朝下，手伸出桌边。手指和拇指放松。
exercise-wrist-dart-step-1 = 手向手背、同时向拇指一侧歪。
exercise-wrist-dart-step-2 = 保持{ $hold }。
exercise-wrist-dart-step-3 = 手向手心、同时向小指一侧歪。
exercise-wrist-dart-step-4 = 保持{ $hold }。

# Ordered by the clinician only.
exercise-wrist-swing-with-fingers-name = 手腕和手指一起摆动
exercise-wrist-swing-with-fingers-start = 手肘放在桌上。动的幅度不超过治疗师教您的范围。
exercise-wrist-swing-with-fingers-step-1 = 让手腕向手心垂下，手指随着张开。
exercise-wrist-swing-with-fingers-step-2 = 保持{ $hold }。
exercise-wrist-swing-with-fingers-step-3 = 抬起手腕，手指随着弯成松松的拳头。
exercise-wrist-swing-with-fingers-step-4 = 保持{ $hold }。

exercise-forearm-front-stretch-name = 拉伸前臂手心侧
exercise-forearm-front-stretch-start = 胳膊伸到身体前面，手心朝上。
exercise-forearm-front-stretch-step-1 = 伸直手肘。
exercise-forearm-front-stretch-step-2 = 用另一只手握住手掌和手指。
exercise-forearm-front-stretch-step-3 = 轻轻把手往下拉，直到有牵拉的感觉。
exercise-forearm-front-stretch-step-4 = 保持{ $hold }。
exercise-forearm-front-stretch-step-5 = 慢慢松开。

exercise-forearm-back-stretch-name = 拉伸前臂背面
exercise-forearm-back-stretch-start = 胳膊伸到身体前面，手心朝下。手指放松。
exercise-forearm-back-stretch-step-1 = 伸直手肘。
exercise-forearm-back-stretch-step-2 = 把另一只手放在手背上。
exercise-forearm-back-stretch-step-3 = 轻轻把手往下压，直到有牵拉的感觉。
exercise-forearm-back-stretch-step-4 = 保持{ $hold }。
exercise-forearm-back-stretch-step-5 = 慢慢松开。

exercise-palms-together-stretch-name = 合掌拉伸手腕
exercise-palms-together-stretch-start = 两手在胸前合掌，手指朝上。
exercise-palms-together-stretch-step-1 = 双手慢慢下降。手掌一直合着。
exercise-palms-together-stretch-step-2 = 有轻轻的牵拉感时停下。
exercise-palms-together-stretch-step-3 = 保持{ $hold }。
exercise-palms-together-stretch-step-4 = 双手再抬起来。

## Fingers

# A neighbour of the treated finger may be in the splint too.
exercise-free-finger-bend-name = 活动没被固定的手指
exercise-free-finger-bend-start = 举起手，手指朝上。
exercise-free-finger-bend-step-1 = 只弯可以自由活动的手指。
exercise-free-finger-bend-step-2 = 保持{ $hold }。
exercise-free-finger-bend-step-3 = 慢慢伸直这些手指。

exercise-fingers-straight-name = 伸直手指
exercise-fingers-straight-start = 举起手，手指朝上。
exercise-fingers-straight-step-1 = 把所有手指伸直到觉得轻松的程度。
exercise-fingers-straight-step-2 = 保持{ $hold }。
exercise-fingers-straight-step-3 = 让手指放松。

exercise-tabletop-name = 只弯掌指关节
exercise-tabletop-start = 举起手，手指朝上。
exercise-tabletop-step-1 = 弯掌指关节。手指的其他关节保持伸直。
exercise-tabletop-step-2 = 保持{ $hold }。
exercise-tabletop-step-3 = 伸直掌指关节。

exercise-straight-fist-name = 握平拳
exercise-straight-fist-start = 举起手，手指朝上。
exercise-straight-fist-step-1 = 弯掌指关节和中间关节。指尖保持伸直。
exercise-straight-fist-step-2 = 把指尖平贴在手掌上。
exercise-straight-fist-step-3 = 保持{ $hold }。
exercise-straight-fist-step-4 = 伸直手指。

exercise-five-positions-name = 依次做各种手形
exercise-five-positions-start = 举起手，手指朝上。
exercise-five-positions-step-1 = 伸直所有手指。
exercise-five-positions-step-2 = 手指弯成钩。掌指关节保持伸直。
exercise-five-positions-step-3 = 轻轻握成完整的拳头。
exercise-five-positions-step-4 = 只弯掌指关节。其他关节保持伸直。
exercise-five-positions-step-5 = 把指尖平贴在手掌上。指尖保持伸直。
exercise-five-positions-step-6 = 每个手形保持{ $hold }，再做下一个。

exercise-block-tip-bend-name = 只弯手指的指尖
exercise-block-tip-bend-start = 手放在桌上，手心朝上。用另一只手捏住患指，捏在中间关节和指尖关节之间。
exercise-block-tip-bend-step-1 = 只弯指尖。
exercise-block-tip-bend-step-2 = 保持{ $hold }。
exercise-block-tip-bend-step-3 = 伸直指尖。

exercise-block-middle-bend-name = 只弯中间关节
exercise-block-middle-bend-start = 手放在桌上，手心朝上。用另一只手捏住患指，捏在掌指关节和中间关节之间。
exercise-block-middle-bend-step-1 = 只弯中间关节。
exercise-block-middle-bend-step-2 = 保持{ $hold }。
exercise-block-middle-bend-step-3 = 伸直中间关节。

exercise-knuckle-bent-straighten-name = 弯着掌指关节，伸直中间关节
exercise-knuckle-bent-straighten-start = 弯曲患指的掌指关节。用另一只手让它一直弯着。
exercise-knuckle-bent-straighten-step-1 = 把中间关节伸直到觉得轻松的程度。
exercise-knuckle-bent-straighten-step-2 = 保持{ $hold }。
exercise-knuckle-bent-straighten-step-3 = 让中间关节放松。

exercise-finger-lift-name = 轮流抬手指
exercise-finger-lift-start = 手心朝下平放在桌上。
exercise-finger-lift-step-1 = 把一个手指抬离桌面。其他手指不抬。
exercise-finger-lift-step-2 = 保持{ $hold }。
exercise-finger-lift-step-3 = 慢慢放下。
exercise-finger-lift-step-4 = 其他每个手指也这样做。

exercise-tip-bend-middle-straight-name = 伸直中间关节，弯指尖
exercise-tip-bend-middle-straight-start = 手放在桌上。一直戴着支具。
exercise-tip-bend-middle-straight-step-1 = 患指的中间关节保持伸直。
exercise-tip-bend-middle-straight-step-2 = 只弯指尖。
exercise-tip-bend-middle-straight-step-3 = 保持{ $hold }。
exercise-tip-bend-middle-straight-step-4 = 伸直指尖。

exercise-middle-bend-tip-held-name = 弯手指的中间关节
exercise-middle-bend-tip-held-start = 手肘放在桌上，手指朝上。一直戴着支具。
exercise-middle-bend-tip-held-step-1 = 弯患指的中间关节。
exercise-middle-bend-tip-held-step-2 = 保持{ $hold }。
exercise-middle-bend-tip-held-step-3 = 慢慢伸直。

## After a tendon repair
## Ordered by the clinician only.

exercise-short-arc-middle-bend-name = 稍微弯中间关节
exercise-short-arc-middle-bend-start = 只能用治疗师做的量度片。掌指关节保持伸直。
exercise-short-arc-middle-bend-step-1 = 把患指贴着量度片放好。
exercise-short-arc-middle-bend-step-2 = 中间关节只弯到手指碰到量度片为止。
exercise-short-arc-middle-bend-step-3 = 保持{ $hold }。
exercise-short-arc-middle-bend-step-4 = 完全伸直中间关节。
exercise-short-arc-middle-bend-step-5 = 全部做完后，再戴上支具。

exercise-helped-curl-in-splint-name = 用另一只手弯手指
exercise-helped-curl-in-splint-start = 一直戴着支具。只解开治疗师指给您的绑带。手指放松。
exercise-helped-curl-in-splint-step-1 = 用另一只手把一个手指轻轻弯向手心。
exercise-helped-curl-in-splint-step-2 = 保持{ $hold }。
exercise-helped-curl-in-splint-step-3 = 慢慢松开手指。不要把它拉直。
exercise-helped-curl-in-splint-step-4 = 每个手指都这样做。
exercise-helped-curl-in-splint-step-5 = 全部做完后，再系好绑带。

exercise-straighten-to-roof-name = 伸直手指，碰到支具
exercise-straighten-to-roof-start = 一直戴着支具。只解开治疗师指给您的绑带。掌指关节一直贴着支具。
exercise-straighten-to-roof-step-1 = 伸直手指，直到碰到支具。
exercise-straighten-to-roof-step-2 = 保持{ $hold }。
exercise-straighten-to-roof-step-3 = 让手指放松。
exercise-straighten-to-roof-step-4 = 全部做完后，再系好绑带。

exercise-half-fist-in-splint-name = 松松地握半拳
exercise-half-fist-in-splint-start = 一直戴着支具。只解开治疗师指给您的绑带。
exercise-half-fist-in-splint-step-1 = 轻轻弯手指，只弯到离手心还有一半的地方。
exercise-half-fist-in-splint-step-2 = 保持{ $hold }。不要用力握。
exercise-half-fist-in-splint-step-3 = 伸直手指，直到碰到支具。
exercise-half-fist-in-splint-step-4 = 全部做完后，再系好绑带。

exercise-place-and-hold-name = 把手指摆好，再保持住
exercise-place-and-hold-start = 手肘放在桌上。动的幅度不超过治疗师教您的范围。
exercise-place-and-hold-step-1 = 用另一只手把手指轻轻弯起来。
exercise-place-and-hold-step-2 = 把另一只手拿开。
exercise-place-and-hold-step-3 = 手指轻轻停在那里{ $hold }。不要用力握。
exercise-place-and-hold-step-4 = 让手指放松。

exercise-yoke-bend-name = 在支具里弯手指
exercise-yoke-bend-start = 手肘放在桌上，手指朝上。一直戴着支具。不要让手腕向手心垂下。
exercise-yoke-bend-step-1 = 弯所有手指，弯到支具允许的程度。
exercise-yoke-bend-step-2 = 保持{ $hold }。
exercise-yoke-bend-step-3 = 伸直所有手指。

## Stretches of a finger

exercise-helped-curl-stretch-name = 借力弯手指
exercise-helped-curl-stretch-start = 手放在桌上，手心朝上。
exercise-helped-curl-stretch-step-1 = 用另一只手慢慢把患指弯起来。
exercise-helped-curl-stretch-step-2 = 有轻轻的牵拉感时停下。
exercise-helped-curl-stretch-step-3 = 保持{ $hold }。
exercise-helped-curl-stretch-step-4 = 慢慢松开。

exercise-helped-straighten-stretch-name = 借力伸直手指
exercise-helped-straighten-stretch-start = 手背朝下放在桌上。用另一只手捏住患指，捏在掌指关节和中间关节之间。
exercise-helped-straighten-stretch-step-1 = 轻轻地把中间关节往伸直的方向压。
exercise-helped-straighten-stretch-step-2 = 有轻轻的牵拉感时停下。
exercise-helped-straighten-stretch-step-3 = 保持{ $hold }。
exercise-helped-straighten-stretch-step-4 = 慢慢松开。

exercise-intrinsic-stretch-name = 伸直掌指关节，弯手指
exercise-intrinsic-stretch-start = 手肘放在桌上，手指朝上。
exercise-intrinsic-stretch-step-1 = 患指的掌指关节保持伸直。
exercise-intrinsic-stretch-step-2 = 用另一只手弯它的中间关节和指尖。
exercise-intrinsic-stretch-step-3 = 有轻轻的牵拉感时停下。
exercise-intrinsic-stretch-step-4 = 保持{ $hold }。
exercise-intrinsic-stretch-step-5 = 慢慢松开。

## Thumb

exercise-thumb-bend-across-name = 拇指弯过手掌
exercise-thumb-bend-across-start = 手放在桌上，手心朝上。
exercise-thumb-bend-across-step-1 = 慢慢把拇指弯过手掌。
exercise-thumb-bend-across-step-2 = 保持{ $hold }。
exercise-thumb-bend-across-step-3 = 伸直拇指。

exercise-thumb-web-release-name = 放松拇指旁的虎口
exercise-thumb-web-release-start = 手立在桌上，小指一侧朝下。
exercise-thumb-web-release-step-1 = 轻轻揉拇指和食指之间（虎口）的皮肤。
exercise-thumb-web-release-step-2 = 用另一只手捏住拇指，捏在拇指掌指关节和手腕之间。
exercise-thumb-web-release-step-3 = 轻轻把拇指拉离手掌。
exercise-thumb-web-release-step-4 = 保持{ $hold }。
exercise-thumb-web-release-step-5 = 慢慢松开。

exercise-thumb-wrist-slow-lower-name = 拇指朝上，慢慢放下手
exercise-thumb-wrist-slow-lower-start = 前臂立放在桌上，小指一侧朝下。拿着治疗师选的小重物。只能隔天做一次。
exercise-thumb-wrist-slow-lower-step-1 = 用另一只手把手抬向拇指一侧。
exercise-thumb-wrist-slow-lower-step-2 = 把另一只手拿开。
exercise-thumb-wrist-slow-lower-step-3 = 让手慢慢垂下。用{ $hold }做完。

## Nerves

exercise-thumb-side-nerve-slide-name = 让拇指侧的神经滑动
exercise-thumb-side-nerve-slide-start = 坐下，手肘弯着，手腕伸直。
exercise-thumb-side-nerve-slide-step-1 = 松松地握拳。
exercise-thumb-side-nerve-slide-step-2 = 伸直手指。拇指靠在食指旁边。
exercise-thumb-side-nerve-slide-step-3 = 手腕轻轻向手背弯。
exercise-thumb-side-nerve-slide-step-4 = 拇指向外侧张开。
exercise-thumb-side-nerve-slide-step-5 = 把手心翻向上。
exercise-thumb-side-nerve-slide-step-6 = 每个姿势保持{ $hold }，再做下一个。

exercise-little-finger-nerve-slide-name = 让小指侧的神经滑动
exercise-little-finger-nerve-slide-start = 胳膊向侧面伸出，手心朝上。
exercise-little-finger-nerve-slide-step-1 = 手肘弯一半，同时手腕向手心弯。
exercise-little-finger-nerve-slide-step-2 = 保持{ $hold }。
exercise-little-finger-nerve-slide-step-3 = 伸直手肘，同时手腕轻轻向手背弯。
exercise-little-finger-nerve-slide-step-4 = 保持{ $hold }。

## Strength

exercise-wrist-press-still-name = 手腕不动，用力顶
exercise-wrist-press-still-start = 前臂放在桌上，手心朝下，手伸出桌边。
exercise-wrist-press-still-step-1 = 把另一只手放在手背上。
exercise-wrist-press-still-step-2 = 这只手轻轻向上顶另一只手。不要让手腕动。
exercise-wrist-press-still-step-3 = 保持{ $hold }。
exercise-wrist-press-still-step-4 = 把手放松。
exercise-wrist-press-still-step-5 = 下一次，把另一只手放在手心下面，这只手向下压它。

exercise-putty-grip-name = 握软胶泥
exercise-putty-grip-start = 手心里放一团软胶泥。
exercise-putty-grip-step-1 = 用手指和拇指轻轻握它。
exercise-putty-grip-step-2 = 保持{ $hold }。
exercise-putty-grip-step-3 = 慢慢松开。
exercise-putty-grip-step-4 = 再把胶泥揉成一团。

exercise-three-point-pinch-name = 手指成圆形，捏软胶泥
exercise-three-point-pinch-start = 拿一小团软胶泥。
exercise-three-point-pinch-step-1 = 用拇指、食指和中指夹住它。
exercise-three-point-pinch-step-2 = 每个关节都稍微弯着。
exercise-three-point-pinch-step-3 = 轻轻捏胶泥。
exercise-three-point-pinch-step-4 = 保持{ $hold }。
exercise-three-point-pinch-step-5 = 慢慢松开。

exercise-key-pinch-putty-name = 像拿钥匙一样捏软胶泥
exercise-key-pinch-putty-start = 拿一小团软胶泥。
exercise-key-pinch-putty-step-1 = 用拇指和食指侧面夹住它。
exercise-key-pinch-putty-step-2 = 轻轻捏胶泥。
exercise-key-pinch-putty-step-3 = 保持{ $hold }。
exercise-key-pinch-putty-step-4 = 慢慢松开。

exercise-wrist-slow-lower-name = 手心朝下，慢慢放下手
exercise-wrist-slow-lower-start = 前臂放在桌上，手心朝下，手伸出桌边。拿着治疗师选的小重物。
exercise-wrist-slow-lower-step-1 = 用另一只手帮忙，把手抬起来。
exercise-wrist-slow-lower-step-2 = 把另一只手拿开。
exercise-wrist-slow-lower-step-3 = 让手慢慢垂下。用{ $hold }做完。

exercise-hand-lean-name = 用手撑
exercise-hand-lean-start = 站在墙前。只有治疗师告诉您时，才用桌子或地面。
exercise-hand-lean-step-1 = 两个手掌放在墙上。
exercise-hand-lean-step-2 = 慢慢靠过去，直到觉得手上有重量。
exercise-hand-lean-step-3 = 保持{ $hold }。
exercise-hand-lean-step-4 = 慢慢把自己推回来。

## Skin, scar, feeling and tightness

exercise-stroke-towards-heart-name = 向心脏方向轻抚胳膊
exercise-stroke-towards-heart-start = 胳膊放在垫子上，手比手肘高。
exercise-stroke-towards-heart-step-1 = 把另一只手放在指尖上。
exercise-stroke-towards-heart-step-2 = 从指尖轻轻抚到手肘。
exercise-stroke-towards-heart-step-3 = 避开支具，也避开疼的或破的皮肤。
exercise-stroke-towards-heart-step-4 = 一直做{ $hold }。

exercise-scar-massage-name = 活动疤痕
exercise-scar-massage-start = 只有疤痕完全闭合、干燥时才能做。手放在桌上。
exercise-scar-massage-step-1 = 把另一只手的一个指尖放在疤痕上。
exercise-scar-massage-step-2 = 用力按，但不要按疼。
exercise-scar-massage-step-3 = 推着皮肤画小圈。
exercise-scar-massage-step-4 = 上下推皮肤，再左右推皮肤。
exercise-scar-massage-step-5 = 沿着疤痕一直做{ $hold }。

exercise-texture-rub-name = 让皮肤习惯触碰
exercise-texture-rub-start = 只能在没有破的皮肤上做。手放在桌上。
exercise-texture-rub-step-1 = 用软布轻轻擦敏感的皮肤。
exercise-texture-rub-step-2 = 一直做{ $hold }。
exercise-texture-rub-step-3 = 软布不再让您难受时，换粗一点的布。

exercise-touch-relearn-name = 重新学会感觉
exercise-touch-relearn-start = 手放在桌上。不要用热的、冷的或尖锐的东西。
exercise-touch-relearn-step-1 = 用一个小东西碰指尖，眼睛看着。
exercise-touch-relearn-step-2 = 闭上眼睛，碰同一个地方。
exercise-touch-relearn-step-3 = 留意感觉在哪里，是什么感觉。
exercise-touch-relearn-step-4 = 睁开眼睛，比一比。
exercise-touch-relearn-step-5 = 换别的地方继续做{ $hold }。

exercise-scar-hold-stretch-name = 拉住疤痕
exercise-scar-hold-stretch-start = 只有疤痕完全闭合、干燥时才能做。
exercise-scar-hold-stretch-step-1 = 慢慢动手，直到觉得疤痕发紧。
exercise-scar-hold-stretch-step-2 = 保持{ $hold }。
exercise-scar-hold-stretch-step-3 = 让手慢慢回来。

exercise-tight-hand-slow-open-name = 慢慢张开发紧的手
exercise-tight-hand-slow-open-start = 前臂放在垫子上。让手腕向手心弯。绝不要快拉。
exercise-tight-hand-slow-open-step-1 = 握住拇指根部，慢慢把拇指拉开。
exercise-tight-hand-slow-open-step-2 = 用另一只手慢慢把手指伸直。
exercise-tight-hand-slow-open-step-3 = 慢慢把手腕扳向手背。手指一直伸直。
exercise-tight-hand-slow-open-step-4 = 手一开始往回拉，就停下。
exercise-tight-hand-slow-open-step-5 = 保持{ $hold }。
exercise-tight-hand-slow-open-step-6 = 让手慢慢合上。
