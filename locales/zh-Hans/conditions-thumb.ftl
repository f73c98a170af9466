### Conditions of the thumb and of the tendons and bones at the wrist: the name, what is wrong, and what the splint does.
### Words for a reader of about twelve. The splint is never said to cure anything.

## Sore tendons on the thumb side of the wrist, in pregnancy or with a small baby

condition-wrist-thumb-around-birth-name = 生孩子前后拇指肌腱疼
condition-wrist-thumb-around-birth-what = 通向拇指的两条肌腱在手腕处摩擦。抱孩子、喂孩子会让它们疼。
condition-wrist-thumb-around-birth-aim = 晚上和抱孩子时，支具让手腕和拇指休息。这样照顾孩子时可能没那么疼。

## Tendons that rub where they cross above the wrist

condition-intersection-syndrome-name = 手腕上方的肌腱摩擦
condition-intersection-syndrome-what = 通向手腕和拇指的肌腱在手腕上方交叉。它们在那里摩擦，会疼。
condition-intersection-syndrome-aim = 支具让手腕保持不动。这样，疼的肌腱可以休息。

## Torn band on the outer side of the thumb's knuckle

condition-thumb-rcl-injury-name = 拇指掌指关节外侧韧带撕裂
condition-thumb-rcl-injury-what = 拇指掌指关节外侧的韧带撕裂了。愈合期间，拇指不能被推向其他手指。
condition-thumb-rcl-injury-aim = 韧带愈合时，支具保护它。支具不让拇指被推向其他手指。

## After an operation at the base of the thumb

condition-thumb-cmc-arthroplasty-name = 拇指根部手术后
condition-thumb-cmc-arthroplasty-what = 您的拇指根部关节做了手术。新关节还软，还在愈合。
condition-thumb-cmc-arthroplasty-aim = 支具让拇指离开手掌。新关节愈合时，这样可以保护它。

## A knuckle of the thumb that bends too far back

condition-hypermobile-thumb-name = 拇指过度后弯
condition-hypermobile-thumb-what = 按或捏东西时，拇指掌指关节向后弯得太多。所以它会疼，会累。
condition-hypermobile-thumb-aim = 做费力的事时，支具不让拇指掌指关节向后弯。支具帮助肌肉，但不能代替肌肉。

## Catching thumb

condition-trigger-thumb-name = 拇指卡住（扳机拇指）
condition-trigger-thumb-what = 弯拇指的肌腱变粗，卡在通道里。拇指会弹响或卡住。
condition-trigger-thumb-aim = 支具让拇指的一个关节保持伸直。肌腱滑动少了，疼的地方可以休息。

## Sewn tendon that lifts the thumb

condition-epl-repair-name = 抬拇指的肌腱修复后
condition-epl-repair-what = 抬起拇指的肌腱已经修复。愈合之前它不结实。
condition-epl-repair-aim = 支具让拇指保持抬起，手腕保持向手背弯。这样修复的肌腱不受拉力。

## Sewn tendon that bends the thumb

condition-fpl-repair-name = 弯拇指的肌腱修复后
condition-fpl-repair-what = 弯拇指的肌腱已经修复。愈合之前它不结实。
condition-fpl-repair-aim = 支具不让拇指伸得太直。这样修复的肌腱不受拉力。

## Sore tendon on the little-finger side of the wrist

condition-ecu-tendinopathy-name = 手腕小指侧肌腱疼
condition-ecu-tendinopathy-what = 手腕小指一侧的一条肌腱疼。手歪向侧面或扭转，会更疼。
condition-ecu-tendinopathy-aim = 支具不让手腕歪向侧面。这样，疼的肌腱可以休息。

## Sprained wrist

condition-wrist-sprain-name = 手腕扭伤
condition-wrist-sprain-what = 连接手腕的韧带被拉伤了。骨头都在原来的位置。
condition-wrist-sprain-aim = 您用手时，支具让手腕保持不动。这样韧带可以慢慢恢复。

## Torn cushion on the little-finger side of the wrist

condition-tfcc-injury-name = 手腕软垫撕裂
condition-tfcc-injury-what = 手腕小指一侧的一块小软垫撕裂了。扭转胳膊会磨到它。
condition-tfcc-injury-aim = 支具不让胳膊扭转，也不让手腕歪向侧面。这样软垫可以休息。

## Broken scaphoid, after the cast

condition-scaphoid-after-cast-name = 手腕拇指侧小骨头骨折，拆石膏后
condition-scaphoid-after-cast-what = 手腕里的一块小骨头断过。它已经长上，但还不结实。
condition-scaphoid-after-cast-aim = 晚上、出门和人多时，支具保护这块骨头。

## Broken radius at the wrist, after the cast

condition-distal-radius-after-cast-name = 手腕骨折，拆石膏后
condition-distal-radius-after-cast-what = 您前臂的大骨头在手腕处断过。它已经长上，但还不结实。
condition-distal-radius-after-cast-aim = 晚上、出门和提东西时，支具保护手腕。活动手腕时，您要取下支具。

## Movements to leave out, beside those that other conditions have

avoid-thumb-ip-flexion = 拇指指尖不要弯。
avoid-thumb-ip-extension = 拇指指尖不要伸直。
avoid-thumb-cmc-flexion = 拇指不要横过手掌。
avoid-forearm-any = 手心不要向上翻，也不要向下翻。

## How to hold an arm that may not turn while the splint is off to wash

support-forearm-thumb-up = 取下后，把前臂放在桌上。拇指一直朝上。不要转动胳膊。不要用这只手。
