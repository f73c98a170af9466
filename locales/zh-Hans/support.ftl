### How to hold the part while the splint is off to wash.
### The splint is off and nothing guards what heals, so each message says how to rest it and what not to do.

support-thumb-beside-index = 取下后，把手放在桌上。拇指一直靠在食指旁边。不要用这只手。
support-tip-flat-on-table = 取下后，把手指平放在桌上。指尖一直放平。绝不能让它弯，一次也不行。
support-finger-flat-on-table = 取下后，把手指平放在桌上。中间关节一直伸直。绝不能让它弯。
support-finger-bent-over-towel = 取下后，把手指搭在毛巾卷上。中间关节一直稍微弯着。绝不能让它向后弯。
support-finger-flat-guarded = 取下后，把手指平放在桌上。不要让任何东西把它往旁边推。不要用这只手。
support-wrist-on-towel-fingers-straight = 取下后，把前臂放在桌上。手掌和伸直的手指放在毛巾卷上。哪里都不能垂下来。
support-thumb-up-on-towel = 取下后，把前臂放在桌上。手掌和伸直的拇指放在毛巾卷上。哪里都不能垂下来。
support-forearm-flat = 取下后，把前臂和手平放在桌上。不要转动胳膊。不要用这只手。
support-knuckles-bent-on-towel = 取下后，把手指搭在毛巾卷上。掌指关节一直弯着。不要用这只手。
