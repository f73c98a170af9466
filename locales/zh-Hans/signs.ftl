### Signs to watch for. Each is a clause or a short noun phrase without a full stop.
### It stands in a list under a heading such as “Call us today if:”.
### $limit is how long a mark may stay, $loosen how long loosening may take to help; both are finished texts.

## On the first page of every guide

sign-numb-or-tingling = 手指或拇指一直比以前更麻木或更刺麻
# Loosening the straps comes first; this is what is left when it does not help.
sign-fingers-blue-white-cold = { $straps ->
    [without] 手指或拇指一直发青、发白或发凉
   *[with] 放松绑带{ $loosen }后，手指或拇指仍然发青、发白或发凉
}
sign-more-swelling-or-pain = 肿得更厉害或疼得更厉害
sign-mark-or-sore-stays = 红色压痕或疼的地方超过{ $limit }还没好

## Emergencies

sign-severe-pain-hard-arm = 不动时也很疼，而且越来越疼，或前臂发紧发硬
sign-redness-with-fever = 发红的范围变大，同时发烧或人不舒服
sign-finger-swollen-bent = 整个手指或拇指肿起来，一直弯着，伸直时疼
sign-new-injury = 摔倒或碰撞后，手看起来歪了，或血流不止
sign-face-swells-breathing = 脸或嘴唇肿，或呼吸困难

## Today

sign-redness-spreads = 手上发红或发热的范围变大
sign-blister-or-open-skin = 有水泡或皮肤破了
# Redness does not show on dark skin; these are the other signs of pressure.
sign-skin-patch-changed = 有一块皮肤比别处颜色更深、更亮、更硬或更热
sign-rash-or-itch = 支具下面起皮疹或发痒
sign-skin-wet-and-white = 支具下面的皮肤发白、发软、湿湿的
sign-splint-broken-or-loose = 支具裂了、弯了、丢了或太松
sign-hand-burning-shiny-stiff = 整只手像火烧，皮肤发亮，手变僵硬

## At the next visit

sign-edge-or-strap-worn = 支具边缘扎手，或绑带粘不住了
sign-plan-does-not-fit-day = 这个安排不适合您的日常生活

## For some thumbs

sign-thumb-gives-way = 拇指滑开，或撑不住向侧面歪
sign-thumb-snap = 觉得拇指里面突然“啪”地断开一下
sign-thumb-lump = 拇指掌指关节旁边长出一个新的包
sign-wound-opens = 伤口裂开、流出液体或有臭味
sign-thumb-back-tingles = 拇指背面刺麻或变麻木
sign-thumb-catches = 拇指活动时卡住或弹响
sign-thumb-weaker-in-pinch = 捏东西的力气变小
sign-no-easier-with-splint = 做事时戴不戴支具都一样疼
