### Conditions of tendons after repair, of nerves, of the elbow, of sore joints and of burns.
### The name, what is wrong, and what the splint does. Words for a reader of about twelve; nothing is said to be cured.

## Repaired tendons

condition-flexor-zone-two-repair-name = 弯手指的肌腱缝合后
condition-flexor-zone-two-repair-what = 弯手指的肌腱断了，已经缝上。用手抓握，或把手指拉直，都可能扯断缝线。
condition-flexor-zone-two-repair-aim = 愈合时，支具保护缝线。支具不让手指伸得太直。
condition-extensor-zone-three-repair-name = 手指中间关节背面的肌腱缝合后
condition-extensor-zone-three-repair-what = 伸直中间关节的肌腱断了，已经缝上。弯一次就可能把缝线拉开。
condition-extensor-zone-three-repair-aim = 肌腱愈合时，支具让中间关节保持伸直。
condition-extensor-zone-five-six-repair-name = 手背的肌腱缝合后
condition-extensor-zone-five-six-repair-what = 抬起手指的肌腱断了，已经缝上。完全握拳可能把缝线拉开。
condition-extensor-zone-five-six-repair-aim = 支具让这个手指的掌指关节保持抬起。这样缝线不受拉力。

## Nerves

condition-carpal-tunnel-name = 手腕处神经受压（腕管综合征）
condition-carpal-tunnel-what = 一条神经穿过手腕处的窄通道。手腕弯着会压住神经，睡觉时最明显。
condition-carpal-tunnel-aim = 支具让手腕保持伸直。这样神经的空间大一些。
condition-carpal-tunnel-release-name = 手腕处神经受压，手术后
condition-carpal-tunnel-release-what = 手腕通道的顶已经打开。伤口要愈合，手指要活动。
condition-carpal-tunnel-release-aim = 最初几天，支具让手腕休息。手指可以自由活动。
condition-cubital-tunnel-name = 手肘处神经受压
condition-cubital-tunnel-what = 一条神经绕过手肘内侧。手肘弯得太多或压在手肘上，会加重这条神经的负担。
condition-cubital-tunnel-aim = 晚上，支具不让手肘弯得太多。白天，不要用手肘撑着。
condition-radial-nerve-palsy-name = 手腕下垂
condition-radial-nerve-palsy-what = 抬起手腕和手指的神经现在不工作。手垂了下来。
condition-radial-nerve-palsy-aim = 支具帮手腕保持抬起。这样手指更容易抓握。
condition-median-nerve-palsy-low-name = 拇指抬不离手掌
condition-median-nerve-palsy-low-what = 管拇指下面肌肉的神经现在不工作。手的一些地方可能麻木。
condition-median-nerve-palsy-low-aim = 支具让虎口保持张开。拇指停在用得上的位置。
condition-ulnar-nerve-palsy-name = 无名指和小指像爪子
condition-ulnar-nerve-palsy-what = 管手上小肌肉的神经现在不工作。无名指和小指弯得像爪子。
condition-ulnar-nerve-palsy-aim = 支具不让掌指关节向后弯。这样您更容易伸直这些手指。

## The elbow

condition-lateral-elbow-name = 手肘外侧肌腱疼
condition-lateral-elbow-what = 抬手腕的肌肉从手肘开始。它们的肌腱在那里疼，抓握和提东西时最疼。
condition-lateral-elbow-aim = 您做事时，支具替疼的肌腱分担一部分拉力。

## The hand

condition-dupuytren-release-name = 手指弯曲，手术后（掌腱膜挛缩）
condition-dupuytren-release-what = 手掌里的紧带已经切开，手指可以张开。疤痕可能又把手指拉弯。
condition-dupuytren-release-aim = 晚上，支具把手指固定在它觉得轻松的位置。这有助于手指保持张开。
condition-rheumatoid-knuckle-drift-name = 手指向一侧偏斜（类风湿）
condition-rheumatoid-knuckle-drift-what = 掌指关节旁边的韧带松了。手指向小指一侧歪。
condition-rheumatoid-knuckle-drift-aim = 您用手时，支具让手指排正。支具不能阻止手指偏斜。
condition-rheumatoid-wrist-name = 手腕关节疼（类风湿）
condition-rheumatoid-wrist-what = 因为类风湿病，手腕关节又疼又肿。
condition-rheumatoid-wrist-aim = 支具让手腕保持稳定。这样休息和做事时可能没那么疼。
condition-stroke-tight-hand-name = 中风后手发紧
condition-stroke-tight-hand-what = 中风以后，合拢手的肌肉拉得太紧。手很难张开。
condition-stroke-tight-hand-aim = 支具让手半张着休息。这可能让手舒服些，也有助于手掌皮肤保持干净。

## Burns

condition-dorsal-hand-burn-name = 手背烧伤
condition-dorsal-hand-burn-what = 手背的皮肤烧伤了。皮肤愈合时会变短，可能把手拉变形。
condition-dorsal-hand-burn-aim = 支具让掌指关节保持弯曲，手指保持伸直。这个姿势让新皮肤不变短。
condition-palmar-hand-burn-name = 手掌烧伤
condition-palmar-hand-burn-what = 手掌的皮肤烧伤了。皮肤愈合时会变短，可能把手拉得合拢。
condition-palmar-hand-burn-aim = 支具让手掌和手指保持张开。这个姿势让新皮肤不变短。

## Movements to leave out
## The joints of a finger are the big knuckle, the middle joint and the tip.

avoid-wrist-extension = 手腕不要向手背弯。
avoid-wrist-flexion = 手腕不要向手心弯。
avoid-fingers-mcp-flexion = 掌指关节不要弯。
avoid-fingers-mcp-ulnar-deviation = 不要把手指向小指一侧推。
avoid-fingers-pip-flexion = 手指的中间关节不要弯。
