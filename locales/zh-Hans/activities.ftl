### Activities: what people do with their hands, and easier ways to do it.
### The name stands as a short order in a table, such as “Open a jar”.
### Every other message is one or two short sentences of advice beside that name.

## Open a jar

activity-open-jar-name = 拧开罐子
activity-open-jar-jar-opener = 用固定在墙上或桌上的开罐器。
activity-open-jar-break-seal = 先用勺柄撬开密封。这样转盖子不用那么大力。
activity-open-jar-flat-palm = 把罐子立在抽屉里。手掌平压盖子，转动身体。
activity-open-jar-helper = 请别人帮您打开。

## Turn a key

activity-turn-key-name = 转钥匙
activity-turn-key-key-turner = 给钥匙装宽手柄。用整只手握。
activity-turn-key-other-hand = 用另一只手转钥匙。
activity-turn-key-oil-lock = 给锁上油，让它好转。

## Lift a baby

activity-lift-baby-name = 抱起婴儿
activity-lift-baby-scoop = 手心朝上托，拇指靠在食指旁边。一只胳膊伸到屁股下，另一只伸到背后。
activity-lift-baby-chest-first = 先把婴儿抱近胸口，再站起来。
activity-lift-baby-raise-changing-place = 把换尿布的台子垫高，这样抱起的距离短。
activity-lift-baby-helper = 请别人把婴儿递给您。

## Lift a full pan

activity-lift-pan-name = 端满锅
activity-lift-pan-half-full = 锅里只装一半。
activity-lift-pan-slide = 在台面上推锅。不要端起来。
activity-lift-pan-two-handles = 用轻的双耳锅。让另一只手承担大部分重量。
activity-lift-pan-helper = 请别人端锅。

## Pour from a kettle

activity-pour-kettle-name = 用水壶倒水
activity-pour-kettle-one-cup = 只烧一杯水。
activity-pour-kettle-tipper = 用能让水壶倾斜的架子。
activity-pour-kettle-other-hand = 用另一只手倒。戴支具的手不要靠近蒸汽。

## Carry shopping

activity-carry-shopping-name = 提买的东西
activity-carry-shopping-backpack = 用双肩包或拉车。
activity-carry-shopping-split-load = 分成几个小袋。走两趟。
activity-carry-shopping-over-forearm = 轻的袋子挂在前臂上，绝不要挂在手指上。
activity-carry-shopping-helper = 请别人提，或让人送到家。

## Text with your thumbs

activity-text-with-thumbs-name = 用拇指打字发信息
activity-text-with-thumbs-speak-text = 说出要发的话，让手机写。
activity-text-with-thumbs-phone-on-table = 手机放在桌上。用食指点。
activity-text-with-thumbs-short-texts = 信息写短些。中间让手休息。

## Hold a tablet or a book

activity-hold-tablet-name = 拿平板电脑或书
activity-hold-tablet-stand = 放在支架上。
activity-hold-tablet-on-lap = 放在腿上的垫子上。
activity-hold-tablet-swap-hands = 经常换手。

## Write by hand

activity-write-by-hand-name = 用手写字
activity-write-by-hand-fat-pen = 用粗而软、写起来滑、不费力的笔。
activity-write-by-hand-dictate = 用说话或打字代替。
activity-write-by-hand-pauses = 写几行。然后放下笔休息。
activity-write-by-hand-helper = 请别人替您写。

## Type on a keyboard

activity-type-on-keyboard-name = 用键盘打字
activity-type-on-keyboard-fingers-for-space = 用另一只手的手指按空格键。
activity-type-on-keyboard-low-keyboard = 用薄键盘。让前臂有东西托着。
activity-type-on-keyboard-pauses = 经常停下，让手放着不动。

## Use a computer mouse

activity-use-mouse-name = 用电脑鼠标
activity-use-mouse-other-hand = 用另一只手移动鼠标。
activity-use-mouse-upright-mouse = 试试竖着握的鼠标，像握手那样。
activity-use-mouse-touch-pad = 用触摸板，一个手指点。

## Do up buttons

activity-do-up-buttons-name = 扣扣子
activity-do-up-buttons-button-hook = 用扣扣子的钩子。
activity-do-up-buttons-pull-on-clothes = 穿套头、套穿的衣服。
activity-do-up-buttons-other-hand = 让另一只手扣。这只手只把布按平。

## Peel vegetables

activity-peel-vegetables-name = 给蔬菜削皮
activity-peel-vegetables-fat-peeler = 用粗柄宽刃的削皮刀。
activity-peel-vegetables-leave-skins = 不削皮，或买处理好的菜。
activity-peel-vegetables-short-bouts = 削几个。然后让手休息。
activity-peel-vegetables-helper = 请别人削。

## Wring out a cloth

activity-wring-cloth-name = 拧抹布
activity-wring-cloth-press-flat = 把抹布平压在水槽边上挤水。
activity-wring-cloth-sponge = 用海绵。轻轻挤。
activity-wring-cloth-other-hand = 把抹布绕在水龙头上。用另一只手拧。

## Prune plants

activity-prune-plants-name = 修剪花木
activity-prune-plants-ratchet = 用分几下剪断的省力剪。
activity-prune-plants-thin-stems = 只剪细枝。拇指酸疼之前就停。
activity-prune-plants-helper = 请别人剪。您来选枝条。

## Cut with scissors

activity-use-scissors-name = 用剪刀
activity-use-scissors-spring-scissors = 用会自动弹开的剪刀。
activity-use-scissors-roller-cutter = 用滚轮刀在垫板上切。
activity-use-scissors-short-bouts = 每次剪一点。
activity-use-scissors-helper = 请别人帮您剪。

## Wash your hands

activity-wash-hands-name = 洗手
activity-wash-hands-pump-soap = 用按压式洗手液和扳把水龙头。
activity-wash-hands-wipe-down = 洗露在外面的手指。其他地方用湿布擦。
activity-wash-hands-take-off = 取下支具。洗手，完全擦干，再戴上。

## Drive a car

activity-drive-car-name = 开车
activity-drive-car-wheel-cover = 给方向盘套上厚软的套子。
activity-drive-car-short-trips = 路程短些。停下来让手休息。
activity-drive-car-helper = 让别人开车。

## Knit or crochet

activity-knit-name = 织毛线或钩针
activity-knit-fat-needles = 用轻的粗针和软毛线。
activity-knit-work-on-lap = 织物放在腿上。手肘下垫个垫子。
activity-knit-short-bouts = 织一行。然后让手休息。

## Play a racket sport

activity-racket-sport-name = 打球拍类运动
activity-racket-sport-soft-strings = 用粗一点的拍柄和软一点的拍线。
activity-racket-sport-two-hands = 用双手击球。
activity-racket-sport-half-time = 只打一半的时间。

## Brush your teeth

activity-brush-teeth-name = 刷牙
activity-brush-teeth-fat-handle = 用粗柄牙刷或电动牙刷。
activity-brush-teeth-other-hand = 用另一只手刷。

## Pull up a zip

activity-fasten-zip-name = 拉拉链
activity-fasten-zip-zip-ring = 给拉链装个环。用弯着的手指勾着拉。
activity-fasten-zip-other-hand = 用另一只手拉拉链。
