### Questions that ask the person to show or say back what they were told. The therapist reads them out.
### No date, hour, number, side or angle is typed here; they come in as variables.

# Said first: it is the therapist who is tested, not the person.
teach-intro = 我想确认我给您讲清楚了。请做给我看，或用您自己的话说一遍。
teach-hands = 哪个支具戴在哪只手上？请指给我看。
teach-emergency = 什么情况下，不管白天晚上，都必须马上求救？
teach-keep-on = 在家里，洗手或睡觉时可以取下支具吗？
teach-support = 支具取下来洗手。请做给我看，手要怎么放。
teach-on = 请戴上支具。说说您在做什么。
teach-off = 请取下支具。说说您在做什么。
teach-bans = 这只手现在还不可以做什么？
teach-skin = 您检查皮肤。什么样子不正常？那时怎么办？
teach-stop = 还有什么情况要停下？那时怎么办？
teach-call = 支具或手出了问题。您给谁打电话？
teach-hours = 什么时候戴支具，什么时候不戴？请从今天说起。
teach-build = 明天戴多久？从哪天起戴足时间？
teach-jobs = 日常的事里，哪些要先等一等？
teach-exercises = 请把每个练习做一遍给我看。每天做几次？
