### Conditions: the name, what is wrong, and what the splint does.
### Words for a reader of about twelve. The splint is never said to cure anything.

## Sore tendons on the thumb side of the wrist

condition-de-quervain-name = 手腕处的拇指肌腱疼（桡骨茎突腱鞘炎）
condition-de-quervain-what = 通向拇指的两条肌腱在手腕处一个窄通道里摩擦。它们又疼又肿。
condition-de-quervain-aim = 支具让手腕和拇指保持不动。这样，疼的肌腱可以休息。

## Torn band at the knuckle of the thumb, fresh

condition-thumb-ucl-acute-name = 拇指掌指关节韧带撕裂
condition-thumb-ucl-acute-what = 拇指掌指关节内侧的韧带撕裂了。愈合期间不能受到侧面的推力。
condition-thumb-ucl-acute-aim = 韧带愈合时，支具保护它。支具不让拇指被推向外侧。

## Torn band at the knuckle of the thumb, old

condition-thumb-ucl-chronic-name = 拇指掌指关节松动
condition-thumb-ucl-chronic-what = 过去的一次撕裂让拇指掌指关节变松。捏东西时它撑不住。
condition-thumb-ucl-chronic-aim = 用手时，支具让掌指关节保持稳定。

## Worn joint at the base of the thumb

condition-thumb-cmc-osteoarthritis-name = 拇指根部关节磨损
condition-thumb-cmc-osteoarthritis-what = 拇指根部的关节磨损了。捏东西时它会滑动，会疼。
condition-thumb-cmc-osteoarthritis-aim = 支具让拇指根部保持稳定。这样做事可能轻松些，也没那么疼。
