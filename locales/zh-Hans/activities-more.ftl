### More activities: what people do with their hands, and easier ways to do it.
### The name stands as a short order in a table, such as “Wash the dishes”.
### Every other message is one or two short sentences of advice beside that name.

## More ways for jobs named elsewhere

activity-text-with-thumbs-open-elbow = 把胳膊放好。手肘要张得比直角大。
activity-hold-tablet-open-elbow = 放远一点。手肘要张得比直角大。
activity-drive-car-open-elbow = 调座椅，让手肘张得比直角大。
activity-brush-teeth-lean-forward = 身体俯向水槽。让头去靠近牙刷。

## Shower and wash your hair

activity-wash-hair-shower-name = 淋浴和洗头
activity-wash-hair-shower-arm-bag = 用防水袋套住手和支具。上口封紧。
activity-wash-hair-shower-pump-bottle = 用按压瓶和长柄海绵。
activity-wash-hair-shower-bend-head = 低下头。手肘要张得比直角大。
activity-wash-hair-shower-other-hand = 用另一只手洗，或请别人帮您洗头。

## Pull up trousers or socks

activity-pull-up-clothes-name = 提裤子或穿袜子
activity-pull-up-clothes-loose-waist = 穿软腰的宽松衣裤。
activity-pull-up-clothes-loops = 在里面缝上带圈。把前臂穿进去拉。
activity-pull-up-clothes-flat-palms = 坐下。用放平的手掌把布往上推。
activity-pull-up-clothes-other-hand = 用另一只手拉，或请别人帮忙。

## Fasten a strap behind your back

activity-fasten-back-strap-name = 在背后扣带子
activity-fasten-back-strap-pull-over = 穿从头上套的软内衣。
activity-fasten-back-strap-turn-round = 在前面扣好。再转到后面。
activity-fasten-back-strap-front-closing = 选前面扣、钩子宽的。
activity-fasten-back-strap-helper = 请别人帮您扣。

## Wipe after the toilet

activity-toilet-wipe-name = 上厕所后擦拭
activity-toilet-wipe-cover-splint = 在支具外套一个薄袋。用完扔掉。
activity-toilet-wipe-long-wiper = 用长柄擦拭器，或会冲洗的马桶盖。
activity-toilet-wipe-other-hand = 用另一只手擦。
activity-toilet-wipe-helper = 请您信得过的人帮忙。

## Cut your nails

activity-cut-nails-name = 剪指甲
activity-cut-nails-fixed-clipper = 用固定在板上的指甲刀。用手掌按。
activity-cut-nails-file = 用宽锉刀锉。松松地拿着。
activity-cut-nails-few-at-once = 每天剪几个指甲。
activity-cut-nails-helper = 请别人帮您剪。

## Tie shoe laces

activity-tie-laces-name = 系鞋带
activity-tie-laces-slip-on = 穿不用系带的鞋。用长鞋拔。
activity-tie-laces-stretch-laces = 用不用解的弹力鞋带。
activity-tie-laces-helper = 请别人帮您系。

## Open a ring-pull can or a bottle cap

activity-ring-pull-cap-name = 开易拉罐或瓶盖
activity-ring-pull-cap-lever-opener = 用能撬起拉环的杠杆。
activity-ring-pull-cap-cap-grip = 在瓶盖上垫橡胶垫。用放平的手掌转。
activity-ring-pull-cap-easy-packs = 买不费力就能打开的包装。
activity-ring-pull-cap-helper = 请别人帮您打开。

## Chop vegetables

activity-chop-vegetables-name = 切菜
activity-chop-vegetables-upright-knife = 用摇着切的刀或竖柄刀。
activity-chop-vegetables-cook-first = 先煮熟。软的食物切起来省力。
activity-chop-vegetables-ready-cut = 买切好的菜。
activity-chop-vegetables-helper = 请别人切。

## Wash the dishes

activity-wash-dishes-name = 洗碗
activity-wash-dishes-long-brush = 用凉水和长柄刷。
activity-wash-dishes-soak-first = 先把碗泡一泡。再轻轻擦。
activity-wash-dishes-dishwasher = 用洗碗机。轻的东西一件一件放。
activity-wash-dishes-helper = 请别人洗。

## Knead dough or stir a thick mix

activity-knead-dough-name = 揉面或搅稠东西
activity-knead-dough-upright-spoon = 盆放在湿布上。用竖柄勺搅，从肩膀用力。
activity-knead-dough-thin-mix = 调稀一点，也少做一点。
activity-knead-dough-mixer = 让机器搅。
activity-knead-dough-helper = 请别人揉。

## Carry plates or a tray

activity-carry-plates-name = 端盘子或托盘
activity-carry-plates-flat-palms = 两个手掌放平，伸到下面。端着贴近身体。
activity-carry-plates-trolley = 放在推车上推。
activity-carry-plates-one-by-one = 一次端一个盘子。烫的先放凉。
activity-carry-plates-helper = 请别人端。

## Eat with knife and fork

activity-eat-with-cutlery-name = 用刀叉吃饭
activity-eat-with-cutlery-fat-handles = 用又长又粗的柄的餐具。
activity-eat-with-cutlery-rocking-knife = 用摇着切的刀切。
activity-eat-with-cutlery-soft-food = 选不用刀切的软食物。
activity-eat-with-cutlery-other-hand = 用另一只手吃。请别人帮您切。

## Turn a door knob or a tap

activity-turn-door-knob-name = 转门把手或水龙头
activity-turn-door-knob-lever-handle = 在上面装个扳把。用前臂压扳把。
activity-turn-door-knob-leave-open = 屋里的门留条缝。用胯推开。
activity-turn-door-knob-other-hand = 用另一只手转。
activity-turn-door-knob-helper = 请别人帮您转。

## Vacuum the floor

activity-vacuum-name = 用吸尘器吸地
activity-vacuum-walk-along = 手肘贴近身体。跟着吸尘器走。
activity-vacuum-light-cleaner = 用轻的吸尘器，或自己会走的。
activity-vacuum-one-room = 吸一个房间。然后让手休息。
activity-vacuum-helper = 请别人吸。

## Hang up the washing

activity-hang-washing-name = 晾衣服
activity-hang-washing-hangers = 用衣架挂，或搭在晾衣架上。
activity-hang-washing-soft-pegs = 用容易捏开的夹子。
activity-hang-washing-small-loads = 每次少洗一点。充分甩干。
activity-hang-washing-helper = 请别人晾。

## Scrub the bath

activity-scrub-bath-name = 刷浴缸
activity-scrub-bath-long-handle = 用带粗长柄的海绵。
activity-scrub-bath-let-soak = 喷上清洁剂，等一等，再冲掉。不要擦。
activity-scrub-bath-short-bouts = 每天清洁一小块。
activity-scrub-bath-helper = 请别人清洁。

## Push up from a chair

activity-rise-from-chair-name = 从椅子上撑起来
activity-rise-from-chair-high-seat = 坐高一点、硬一点的座位。这样腿更容易撑起来。
activity-rise-from-chair-legs-first = 向前挪，身体前倾。用腿站起来。
activity-rise-from-chair-forearm-rest = 用前臂压扶手，不要用手压。
activity-rise-from-chair-other-hand = 用另一只手撑，或请别人扶您起来。

## Iron clothes

activity-iron-clothes-name = 熨衣服
activity-iron-clothes-light-iron = 用又小又轻的熨斗。
activity-iron-clothes-hang-smooth = 衣服潮着就挂平。很多不用熨。
activity-iron-clothes-few-pieces = 熨几件。然后让手休息。
activity-iron-clothes-other-hand = 用另一只手熨，或请别人熨。

## Make the bed

activity-make-bed-name = 铺床
activity-make-bed-light-covers = 用一条轻被子和宽松的床单。
activity-make-bed-flat-hands = 用放平的手和前臂把床单推好。
activity-make-bed-few-corners = 不要抬床垫。床单的角不用塞。
activity-make-bed-helper = 请别人铺。

## Lean on a walking stick or frame

activity-lean-on-stick-name = 用拐杖或助行架
activity-lean-on-stick-wide-grip = 请我们检查高度。宽而软的握把有帮助。
activity-lean-on-stick-forearm-rest = 向我们要可以托前臂的。没有支撑不要走路。
activity-lean-on-stick-other-hand = 问我们能不能用另一只手拿。没有支撑不要走路。

## Hold a dog lead

activity-hold-dog-lead-name = 牵狗绳
activity-hold-dog-lead-waist-lead = 用系在腰上的狗绳。
activity-hold-dog-lead-calm-walks = 遛短些、平稳些，用防拉扯的胸背带。
activity-hold-dog-lead-helper = 请别人牵。绝不要把绳子绕在手指上。

## Use a screwdriver

activity-use-screwdriver-name = 用螺丝刀
activity-use-screwdriver-powered-driver = 用轻的电动螺丝刀。
activity-use-screwdriver-fat-handle = 用粗柄、一小格一小格转的。
activity-use-screwdriver-elbow-in = 手肘贴近身体。用身体的力。
activity-use-screwdriver-helper = 请别人拧。

## Use a hammer

activity-hammer-name = 用锤子
activity-hammer-light-hammer = 用轻的、柄粗而软的锤子。
activity-hammer-few-nails = 钉几个钉子。然后让手休息。
activity-hammer-helper = 请别人钉。

## Use a power drill

activity-power-drill-name = 用电钻
activity-power-drill-light-drill = 用带侧把手的轻电钻。
activity-power-drill-two-hands = 双手握住，手肘贴近身体。
activity-power-drill-short-bouts = 钻一个孔。然后让手休息。
activity-power-drill-helper = 请别人钻。

## Lift boxes

activity-lift-boxes-name = 搬箱子
activity-lift-boxes-palms-under = 手心朝上。前臂伸到箱子下面，贴近身体。
activity-lift-boxes-half-load = 箱子只装一半。
activity-lift-boxes-trolley = 放在推车上推。不要从地上搬。
activity-lift-boxes-helper = 请别人搬。

## Pick up small parts or coins

activity-handle-small-parts-name = 捡小零件或硬币
activity-handle-small-parts-soft-tray = 放在软垫上。从边上滑下来。
activity-handle-small-parts-wide-tweezers = 用柄宽而软的镊子，或用磁铁。
activity-handle-small-parts-pauses = 捡几个。然后让手休息。
activity-handle-small-parts-other-hand = 用另一只手捡。

## Hold a baby to feed

activity-feed-baby-name = 抱着婴儿喂奶
activity-feed-baby-firm-pillow = 把婴儿放在结实的枕头上。让枕头承担重量。
activity-feed-baby-straight-wrist = 让婴儿的头枕在臂弯里。手腕保持伸直。
activity-feed-baby-change-sides = 经常换边。中间伸直胳膊。
activity-feed-baby-helper = 请别人把婴儿放好，并留在旁边。

## Change a nappy

activity-change-nappy-name = 换尿布
activity-change-nappy-easy-tabs = 选粘扣宽、容易打开的尿布。
activity-change-nappy-roll-baby = 让婴儿翻向一侧。不要提起双脚。
activity-change-nappy-wipes-ready = 开始前，把东西都打开摆好。
activity-change-nappy-other-hand = 用另一只手粘粘扣，或请别人换。

## Buckle a child seat

activity-buckle-child-seat-name = 扣儿童座椅
activity-buckle-child-seat-buckle-key = 用专门按扣子的杠杆。
activity-buckle-child-seat-knuckle = 用弯着的指节按按钮。
activity-buckle-child-seat-helper = 用另一只手，或请别人扣。检查是否扣紧。

## Push a pram

activity-push-pram-name = 推婴儿车
activity-push-pram-open-palms = 手掌张开推。
activity-push-pram-high-bar = 把推把调高，垫上软垫。前臂放在上面。
activity-push-pram-helper = 用另一只手推，或请别人推。

## Dig

activity-dig-name = 挖土
activity-dig-small-spade = 用又小又轻的长柄铲。
activity-dig-foot-pushes = 用脚踩铲子。
activity-dig-short-bouts = 每次挖半铲。挖几下就停。
activity-dig-helper = 请别人挖。您指地方。

## Pull weeds

activity-pull-weeds-name = 拔草
activity-pull-weeds-long-weeder = 用粗长柄的锄头或除草器。
activity-pull-weeds-after-rain = 下雨后再拔，根容易出来。
activity-pull-weeds-short-bouts = 拔一小块地。然后让手休息。
activity-pull-weeds-helper = 请别人拔。您指地方。

## Water plants

activity-water-plants-name = 浇花
activity-water-plants-two-hands = 双手拿水壶，贴近身体。
activity-water-plants-little-water = 水壶只装一点水。
activity-water-plants-hose = 用扳把能固定的水管。
activity-water-plants-helper = 用另一只手浇，或请别人浇。

## Fasten a seat belt

activity-fasten-seat-belt-name = 系安全带
activity-fasten-seat-belt-belt-handle = 在安全带上装个好够的拉手。
activity-fasten-seat-belt-knuckle = 用弯着的指节按扣子。
activity-fasten-seat-belt-other-hand = 用另一只手拉过来。请别人扣上。

## Ride a bicycle

activity-cycle-name = 骑自行车
activity-cycle-high-bar = 把车把调高。用粗而软的把套。
activity-cycle-short-rides = 在平路上骑一小段。
activity-cycle-indoor-bike = 用健身车。坐直，让手休息。

## Lift weights

activity-lift-weights-name = 举重锻炼
activity-lift-weights-half-weight = 重量减半。次数减少。
activity-lift-weights-forearm-cuff = 用套在前臂上的拉带。不要握杠。
activity-lift-weights-legs-only = 练腿和腰腹。手里不拿东西。

## Do press-ups or yoga

activity-press-ups-yoga-name = 做俯卧撑或瑜伽
activity-press-ups-yoga-legs-only = 选用腿支撑、仰卧或侧卧的姿势。
activity-press-ups-yoga-straight-wrist = 握固定把手，让手腕保持伸直。
activity-press-ups-yoga-fewer = 撑在墙上，不要撑在地上。

## Swim

activity-swim-name = 游泳
activity-swim-float = 前臂放在浮板上。用腿游。
activity-swim-dry-at-once = 一上来就擦干皮肤和支具。
activity-swim-short-swim = 只游一小会儿。

## Play the guitar

activity-play-guitar-name = 弹吉他
activity-play-guitar-light-strings = 用不费力的细弦。
activity-play-guitar-neck-higher = 用背带把琴颈抬高。手腕保持伸直。
activity-play-guitar-short-bouts = 弹一首。然后让手休息。

## Sleep

activity-sleep-position-name = 睡觉
activity-sleep-position-splint-on = 指南说晚上戴支具时，就戴着睡。
activity-sleep-position-arm-on-pillow = 把胳膊放在身旁的枕头上，伸直到觉得轻松的程度。
activity-sleep-position-soft-towel = 用软毛巾松松地裹住手肘，让它少弯一些。

## Hold a phone to your ear

activity-hold-phone-to-ear-name = 拿电话贴着耳朵
activity-hold-phone-to-ear-loudspeaker = 用免提或耳机。把电话放下。
activity-hold-phone-to-ear-short-calls = 电话打短些。中间伸直胳膊。
activity-hold-phone-to-ear-other-hand = 用另一只手拿电话。
