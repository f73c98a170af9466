### Exercises: name, starting position and one action for each step.
### The name is a short order and stands as a heading. Steps are numbered by the program.
### $hold is a finished length of time, such as the words for five seconds.
### “Other hand” is the hand without the splint.

## Bend the tip of your thumb

exercise-thumb-tip-bend-name = 弯拇指指尖
exercise-thumb-tip-bend-start = 坐下，前臂放在桌上。一直戴着支具。
exercise-thumb-tip-bend-step-1 = 只弯拇指指尖。
exercise-thumb-tip-bend-step-2 = 保持{ $hold }。
exercise-thumb-tip-bend-step-3 = 伸直指尖。

## Make a fist and open it

exercise-finger-fist-open-name = 握拳再张开
exercise-finger-fist-open-start = 举起手，手指朝上。拇指不动。
exercise-finger-fist-open-step-1 = 慢慢弯曲食指到小指，轻轻握拳。
exercise-finger-fist-open-step-2 = 保持{ $hold }。
exercise-finger-fist-open-step-3 = 伸直食指到小指。

## Make a hook with your fingers

exercise-finger-hook-name = 手指弯成钩
exercise-finger-hook-start = 手指朝上，伸直到觉得轻松的程度。拇指不动。
exercise-finger-hook-step-1 = 掌指关节保持不动。
exercise-finger-hook-step-2 = 其他手指关节弯成钩子。
exercise-finger-hook-step-3 = 保持{ $hold }。
exercise-finger-hook-step-4 = 伸直手指。

## Spread your fingers

exercise-finger-spread-name = 手指张开
exercise-finger-spread-start = 手心朝下放在桌上，手指并拢。拇指不动。
exercise-finger-spread-step-1 = 把手指分开。
exercise-finger-spread-step-2 = 保持{ $hold }。
exercise-finger-spread-step-3 = 再把手指并拢。

## Raise your hand and pump

exercise-hand-raise-pump-name = 举手，一握一张
exercise-hand-raise-pump-start = 坐下，把手举得比心脏高。
exercise-hand-raise-pump-step-1 = 轻轻合拢手指。
exercise-hand-raise-pump-step-2 = 保持{ $hold }。
exercise-hand-raise-pump-step-3 = 张开手指。
exercise-hand-raise-pump-step-4 = 全部做完后，放下胳膊。

## Bend and straighten your elbow

exercise-elbow-bend-name = 手肘弯曲和伸直
exercise-elbow-bend-start = 坐着或站着，胳膊放在身体旁边。
exercise-elbow-bend-step-1 = 弯手肘，直到手靠近肩膀。
exercise-elbow-bend-step-2 = 保持{ $hold }。
exercise-elbow-bend-step-3 = 慢慢伸直手肘。

## Turn your palm up and down

exercise-forearm-turn-name = 手心向上、向下翻
exercise-forearm-turn-start = 坐下，手肘弯着，贴近身体。
exercise-forearm-turn-step-1 = 把手心翻向上。
exercise-forearm-turn-step-2 = 保持{ $hold }。
exercise-forearm-turn-step-3 = 把手心翻向下。
exercise-forearm-turn-step-4 = 保持{ $hold }。

## Move your wrist up and down

exercise-wrist-up-down-name = 手腕上下动
exercise-wrist-up-down-start = 前臂放在桌上，手伸出桌边。拇指放松。
exercise-wrist-up-down-step-1 = 慢慢抬起手。
exercise-wrist-up-down-step-2 = 保持{ $hold }。
exercise-wrist-up-down-step-3 = 让手慢慢垂下。
exercise-wrist-up-down-step-4 = 保持{ $hold }。

## Move your wrist from side to side

exercise-wrist-side-to-side-name = 手腕左右摆动
exercise-wrist-side-to-side-start = 前臂和手心平放在桌上。拇指靠在食指旁边。
exercise-wrist-side-to-side-step-1 = 手向拇指一侧滑。
exercise-wrist-side-to-side-step-2 = 保持{ $hold }。
exercise-wrist-side-to-side-step-3 = 手向小指一侧滑。
exercise-wrist-side-to-side-step-4 = 保持{ $hold }。

## Bend the knuckle of your thumb

exercise-thumb-knuckle-bend-name = 弯拇指的掌指关节
exercise-thumb-knuckle-bend-start = 手立在桌上，小指一侧朝下。用另一只手捏住拇指，捏在拇指掌指关节和手腕之间。
exercise-thumb-knuckle-bend-step-1 = 把拇指的掌指关节笔直向前弯。
exercise-thumb-knuckle-bend-step-2 = 保持{ $hold }。
exercise-thumb-knuckle-bend-step-3 = 伸直掌指关节。
exercise-thumb-knuckle-bend-step-4 = 绝不要让拇指向外侧歪。

## Touch each fingertip with your thumb

exercise-thumb-to-fingertips-name = 拇指碰每个指尖
exercise-thumb-to-fingertips-start = 举起手，手指朝上。
exercise-thumb-to-fingertips-step-1 = 用拇指轻轻碰食指指尖。
exercise-thumb-to-fingertips-step-2 = 保持{ $hold }。
exercise-thumb-to-fingertips-step-3 = 把手张大。
exercise-thumb-to-fingertips-step-4 = 其他每个手指也这样做。

## Lift your thumb away from your palm

exercise-thumb-out-from-palm-name = 拇指抬离手掌
exercise-thumb-out-from-palm-start = 手背朝下放在桌上。
exercise-thumb-out-from-palm-step-1 = 把拇指笔直向上抬，离开手掌。
exercise-thumb-out-from-palm-step-2 = 保持{ $hold }。
exercise-thumb-out-from-palm-step-3 = 让拇指慢慢落回。

## Hold the shape of a C

exercise-thumb-c-hold-name = 保持C字形
exercise-thumb-c-hold-start = 拇指和食指做出字母C的形状。
exercise-thumb-c-hold-step-1 = 确认拇指是圆弧形，没有向后弯。
exercise-thumb-c-hold-step-2 = 用另一只手从外侧握住拇指。
exercise-thumb-c-hold-step-3 = 拇指轻轻向外用力。不要让它动。
exercise-thumb-c-hold-step-4 = 保持{ $hold }。
exercise-thumb-c-hold-step-5 = 把手放松。

## Press your index finger to the side

exercise-index-side-press-name = 食指向侧面用力
exercise-index-side-press-start = 手平放在桌上，手心朝下。
exercise-index-side-press-step-1 = 用另一只手顶住食指的拇指侧。
exercise-index-side-press-step-2 = 食指轻轻向拇指方向用力。不要让它动。
exercise-index-side-press-step-3 = 保持{ $hold }。
exercise-index-side-press-step-4 = 把手放松。

## Squeeze a soft ball

exercise-soft-ball-squeeze-name = 捏软球
exercise-soft-ball-squeeze-start = 手心里放一个软海绵球。拇指不要碰球。
exercise-soft-ball-squeeze-step-1 = 用食指到小指轻轻捏球。
exercise-soft-ball-squeeze-step-2 = 保持{ $hold }。
exercise-soft-ball-squeeze-step-3 = 慢慢松开。
