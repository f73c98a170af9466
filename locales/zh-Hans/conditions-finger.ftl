### Conditions of the fingers: the name, what is wrong, and what the splint does.
### Words for a reader of about twelve. The splint is never said to cure anything.

## Finger that catches

condition-trigger-finger-name = 手指卡住（扳机指）
condition-trigger-finger-what = 弯手指的肌腱穿过手掌里的一个通道。它在那里太粗，会卡住或锁住。
condition-trigger-finger-aim = 支具让手指弯得少一些。这样肌腱在通道里摩擦少，可以休息。

## Fingertip that droops, torn cord

condition-mallet-tendon-name = 指尖下垂，肌腱断裂（锤状指）
condition-mallet-tendon-what = 抬起指尖的细肌腱断了。只有指尖从不垂下，断端才能长到一起。
condition-mallet-tendon-aim = 肌腱愈合时，支具让指尖保持伸直。

## Fingertip that droops, chip of bone

condition-mallet-bony-name = 指尖下垂，带碎骨片（锤状指）
condition-mallet-bony-what = 抬起指尖的肌腱扯下了一小片骨头。只有指尖保持不动，骨片才能长回去。
condition-mallet-bony-aim = 骨头愈合时，支具让指尖保持伸直。

## Torn strip over the middle joint, fresh

condition-boutonniere-acute-name = 中间关节背面的肌腱断裂
condition-boutonniere-acute-what = 伸直手指中间关节的肌腱断了。每弯一次，断端就被拉开一次。
condition-boutonniere-acute-aim = 支具让中间关节保持伸直。指尖可以活动，弯指尖对肌腱有好处。

## Middle joint fixed bent after a tear

condition-boutonniere-chronic-name = 旧伤后中间关节弯曲
condition-boutonniere-chronic-what = 过去的一次断裂让手指的中间关节一直弯着。它已经变僵硬。
condition-boutonniere-chronic-aim = 支具慢慢地、轻轻地帮关节伸直。以后再让它保持伸直。

## Middle joint that bends backwards

condition-swan-neck-name = 中间关节向后弯（鹅颈畸形）
condition-swan-neck-what = 手指的中间关节会向后弯，并卡在那里。这时很难握拳。
condition-swan-neck-aim = 支具不让关节向后弯。您仍然可以向前弯它。

## Jammed finger, front of the middle joint

condition-pip-volar-plate-name = 手指戳伤，中间关节手心侧
condition-pip-volar-plate-what = 中间关节手心侧的结实软板受了伤。向后弯会再次伤到它。
condition-pip-volar-plate-aim = 支具保护关节，不让它向后弯。平常的向前弯对它有好处。

## Sprained side of the middle joint

condition-pip-collateral-sprain-name = 中间关节侧面扭伤
condition-pip-collateral-sprain-what = 中间关节侧面的韧带被拉伤或部分撕裂。往侧面推会把它拉开。
condition-pip-collateral-sprain-aim = 韧带愈合时，支具保护关节不被往侧面推。

## Middle joint that does not straighten

condition-pip-flexion-contracture-name = 中间关节僵硬、弯曲
condition-pip-flexion-contracture-what = 中间关节手心侧的皮肤和韧带变短了。手指伸不直。
condition-pip-flexion-contracture-aim = 支具轻轻地把关节往伸直的方向拉。时间长而轻，比时间短而重效果好。

## Worn joint at the fingertip

condition-dip-osteoarthritis-name = 指尖关节磨损
condition-dip-osteoarthritis-what = 手指最末一个关节磨损了。它可能会疼，会长硬包。
condition-dip-osteoarthritis-aim = 支具让关节在晚上休息。这样可能没那么疼。

## Torn band over the knuckle

condition-sagittal-band-injury-name = 掌指关节上的韧带撕裂
condition-sagittal-band-injury-what = 一条小韧带让肌腱留在掌指关节背面正中。它撕裂了，握拳时肌腱会滑开。
condition-sagittal-band-injury-aim = 支具不让掌指关节弯得太多。韧带愈合时，肌腱留在正中。

## Broken bone below the little finger

condition-fifth-metacarpal-neck-fracture-name = 小指下方的骨头骨折
condition-fifth-metacarpal-neck-fracture-what = 手掌里小指下方的骨头，在靠近掌指关节处断了。它要重新长好。
condition-fifth-metacarpal-neck-fracture-aim = 骨头愈合时，支具保护它。支具也帮手指不扭转。

## Broken first bone of a finger

condition-proximal-phalanx-fracture-name = 手指靠近手掌的一节骨折
condition-proximal-phalanx-fracture-what = 掌指关节和中间关节之间的骨头断了。它要重新长好。
condition-proximal-phalanx-fracture-aim = 骨头愈合时，支具让它留在原位。支具固定关节的姿势，让关节不那么容易变僵硬。
