### The guide: everything that is not about one condition, splint, activity or exercise.
### No date, hour, number, side or angle is typed here; they come in as variables.
### $side is left or right and only chooses between wordings.

## Title and furniture

# $orthosis is the splint's name, such as "long thumb splint".
guide-title = Your { $orthosis }
# $name is the person's name. Stands at the foot of every page.
guide-made-for = Made for { $name } only. { $side ->
    [left] Left
   *[right] Right
} hand{ $finger ->
    [index] , index finger
    [middle] , middle finger
    [ring] , ring finger
    [little] , little finger
   *[none] {""}
}.
guide-made-for-nobody = Made for one person only. { $side ->
    [left] Left
   *[right] Right
} hand{ $finger ->
    [index] , index finger
    [middle] , middle finger
    [ring] , ring finger
    [little] , little finger
   *[none] {""}
}.
guide-caution = This guide does not replace what your therapist or surgeon tells you. If they tell you something else, do what they say. Do not lend the splint to anyone.
# Printed on every sheet in a language that no qualified translator has signed off.
guide-drafted = This text has not been checked by a qualified translator.
guide-outdated = The English of this sheet was changed after it was translated. Ask your clinic before you use it.
guide-page = Page { $page } of { $pages }
# Where a section stands, in the line of contents.
contents-page = , p. { $page }

## Which hand

hand-left = Left hand
hand-right = Right hand
hand-alt = { $side ->
    [left] The splint is for your left hand.
   *[right] The splint is for your right hand.
}

## Section titles

glance-title = At a glance
dates-title = Day by day
on-off-title = On and off
on-off-intro = { $washing ->
    [never] Only your clinic does this.
   *[freely] Sit at a table. Use your other hand.
}
skin-title = Check your skin
skin-intro = { $checks ->
    [one] Take a good look once a day.
   *[other] Take a good look { $checks } times a day.
} Use good light. { $washing ->
    [supported] Look at these places each time you take the splint off to wash. In between, look at its edges and at your fingertips:
    [never] Do not take the splint off to look. Look at its edges and at your fingertips:
   *[freely] Look at these places:
}
move-title = Move your hand
move-intro = Go slowly. Never force a movement.
daily-title = In daily life
care-title = Look after the splint
note-title = From your therapist
call-title = When to call
call-intro = Keep this page where you can see it.

## Facts on the first page

fact-splint = Which splint
# $finger is index, middle, ring or little and only chooses between wordings.
finger-name = { $finger ->
    [index] Index finger, next to your thumb
    [middle] Middle finger
    [ring] Ring finger
   *[little] Little finger
}
fact-for = What it is for
fact-fitted = Fitted on
fact-full = Full wear starts
fact-full-more = Build up first. See the day-by-day table.
fact-review = Next visit
# $joints is a list such as "the tip of your thumb and your knuckles"; $count is how many.
fact-free = Free to move: { $joints }.

say-date = { $date }
say-date-time = { $date }, { $time }
say-short-date = { $date }
date-range = { $from } to { $to }
# $to is the date of the next visit.
date-until-visit = { $from } until your visit on { $to }
# From one clock time to another.
time-range = { $from } to { $to }

## Joints, as the person would say them

joint-elbow = your elbow
joint-forearm = turning your forearm
joint-wrist = your wrist
joint-thumb-cmc = the base of your thumb
joint-thumb-mcp = the knuckle of your thumb
joint-thumb-ip = the tip of your thumb
joint-fingers-mcp = your fingers
joint-fingers-pip = the middle joints of your fingers
joint-fingers-dip = the tips of your fingers
# The affected finger.
joint-finger-mcp = the knuckle of the sore finger
joint-finger-pip = the middle joint of the sore finger
joint-finger-dip = the tip of the sore finger
joint-other-fingers-mcp = your other fingers
joint-other-fingers-pip = the middle joints of your other fingers
joint-other-fingers-dip = the tips of your other fingers
joint-index-mcp = the knuckle of your index finger
joint-middle-mcp = the knuckle of your middle finger
joint-ring-mcp = the knuckle of your ring finger
joint-little-mcp = the knuckle of your little finger
joint-index-pip = the middle joint of your index finger
joint-middle-pip = the middle joint of your middle finger
joint-ring-pip = the middle joint of your ring finger
joint-little-pip = the middle joint of your little finger
joint-index-dip = the tip of your index finger
joint-middle-dip = the tip of your middle finger
joint-ring-dip = the tip of your ring finger
joint-little-dip = the tip of your little finger

## When to wear it

strip-days = Days { $from } to { $to }
strip-from-day = From day { $from }
strip-weeks = Weeks { $from } to { $to }
strip-build = Build up a little each day. Not at night yet.
strip-key-on = Splint on
strip-key-off = Splint off
strip-key-needed = On for hard tasks
# In phases that guard what heals.
strip-key-guard = On outdoors and in crowds
strip-key-rest = On while you rest
strip-key-part = On for part of the time
# $label is a row's label, $times a list of clock times.
strip-alt = { $label }: splint on from { $times }.
strip-alt-none = { $label }: no fixed hours with the splint on.
wear-never-remove = Day and night. Do not take it off.
# $times is how often it comes off in a day.
wear-off-to-wash = Day and night. Take it off only to wash{ $times ->
    [one] , once a day.
   *[other] , { $times } times a day.
}
wear-off-to-exercise = Day and night. Take it off only to wash and exercise{ $times ->
    [one] , once a day.
   *[other] , { $times } times a day.
}
wear-night-and-tasks = On all night. By day, on for hard tasks.
# In phases that guard what heals: hard tasks wait.
wear-night-and-tasks-guard = On all night. By day, on outdoors, in crowds and for all tasks you are allowed.
wear-night-and-rest = On all night. By day, on while you rest. Off when you use your hand.
# $bouts is how many times a day, $each a finished length of time.
wear-stretch = On { $bouts ->
    [one] once a day
   *[other] { $bouts } times a day
}, for { $each } each time. Off in between.
wear-day = On all day. Off at night.
wear-night = On all night. Off by day.
wear-tasks = On for hard tasks only. Off at night.
wear-tasks-guard = On outdoors, in crowds and for all tasks you are allowed. Off at night.
wear-off = Off.
# $length is how long it is worn while awake.
wear-wean-night = On for { $length } after you get up, and all night.
wear-wean-day = On for { $length } after you get up. Off at night.

## What comes after the next visit

later-label = When your therapist says so
later-label-surgeon = When your surgeon says so
later-label-next = Later, when we say so
# This splint does not suit that stage.
later-other = With another splint.
later-never-remove = Day and night, without a break.
later-off-to-wash = Day and night, off only to wash.
later-off-to-exercise = Day and night, off only to wash and exercise.
later-night-and-tasks = At night and for hard tasks.
later-night-and-tasks-guard = At night, outdoors and in crowds.
later-night-and-rest = At night and while you rest.
later-stretch = A few times a day, to stretch.
later-day = By day only.
later-night = At night only.
later-tasks = For hard tasks only.
later-tasks-guard = Outdoors and in crowds only.
later-off = Without the splint.
later-wean = Less and less, step by step.

## The stop box

warning-title-take-off = Take it off and call us if:
warning-title-supported = { $straps ->
    [without] Call us if:
   *[with] Loosen the straps and call us if:
}
warning-title-keep-on = { $straps ->
    [without] Keep it on and call us if:
   *[with] Loosen the straps, keep it on and call us if:
}
# Followed by the signs that cannot wait. $number is the emergency number.
warning-emergency = Emergency, call { $number } if:
warning-emergency-no-number = Emergency, get help at once if:
warning-act-take-off = Take it off. Then call.
warning-act-supported = { $straps ->
    [without] Keep the sore part supported. Then call.
   *[with] Loosen the straps. Keep the sore part supported. Then call.
}
warning-act-keep-on = { $straps ->
    [without] Do not take it off. Call us.
   *[with] Loosen the straps. Do not take it off. Then call.
}

## Day by day

axis-midnight = midnight
axis-noon = noon
schedule-day = Day
schedule-clock = Time of day
schedule-long = How long
schedule-note = These clock times are examples. Pick times that suit you. If a mark stays too long, do the same day again.
schedule-note-late = These clock times are examples. Pick times that suit you. A bar after midnight belongs to the day before. If a mark stays too long, do the same day again.
schedule-minutes = { $count ->
    [one] minute
   *[other] minutes
}
schedule-hours = { $count ->
    [one] hour
   *[other] hours
}
schedule-times = { $count ->
    [one] once
   *[other] { $count } times
}
schedule-not-yet = Not on this day

calendar-week = Week
calendar-what = What to do
calendar-build = Build up.
calendar-wean = Wear it less.
calendar-never-remove = Day and night, no break.
calendar-off-to-wash = Day and night.
calendar-off-to-exercise = Day and night.
calendar-night-and-tasks = Nights and hard tasks.
calendar-night-and-tasks-guard = Nights, outdoors, crowds.
calendar-night-and-rest = Nights and rest.
calendar-stretch = Stretch times.
calendar-day = By day.
calendar-night = Nights.
calendar-tasks = Hard tasks.
calendar-tasks-guard = Outdoors and crowds.
calendar-off = No splint.
calendar-review = Visit on { $date }.
calendar-key-review = Your visit
calendar-key-build = Build up
calendar-key-on = On
calendar-key-night = Nights
calendar-key-needed = Part of the day
calendar-key-off = Off
calendar-and-so-on = Go on like this each week.

## Putting on and taking off

steps-on = Put it on
steps-off = Take it off
# For a splint that only the clinic takes off.
steps-never = Do not take the splint off yourself. Your clinic takes it off and puts it on.
strap-next = next strap

## Skin

# Letters that mark the places, in the order of the alphabet.
spot-letters = A B C D E F G H
skin-fine = This is fine
skin-not = This is not fine
skin-fine-mark = A light mark that fades within { $limit }
skin-fine-lines = Faint lines from the straps
skin-fine-damp = Skin that is a little damp
skin-not-mark = A mark that stays longer than { $limit }
# Redness does not show on dark skin.
skin-not-dark = On dark skin: a patch that is darker, hotter or harder for longer than { $limit }
skin-not-blister = A blister, sore or broken skin
skin-not-rash = A rash, or an itch that does not go
skin-not-wet = Skin that is white, soft and wet
skin-act-take-off = Take the splint off and call us today.
skin-act-keep = { $straps ->
    [without] Call us today. Keep your hand supported.
   *[with] Loosen the straps and call us today. Keep your hand supported.
}

## Moving

move-splint-on = Splint on
move-splint-off = Splint off
move-stop = Stop if the pain gets worse. If it has not settled in a few hours, call us.
move-avoid = Not yet
dose-times = { $count ->
    [one] time
   *[other] times
}
dose-a-day = { $count ->
    [one] time a day
   *[other] times a day
}
# $count is a number of times, after the first week.
move-up-to = After a week, if it feels easy: up to { $count ->
    [one] { $count } time
   *[other] { $count } times
}.
moves-after-review = Your therapist gives you new movements after your visit.
# $date is when they begin, $exercises a list of names.
moves-later = From { $date }: { $exercises }.
avoid-wrist-ulnar-deviation = Do not tilt your wrist towards your little finger.
avoid-wrist-radial-deviation = Do not tilt your wrist towards your thumb.
avoid-thumb-cmc-any = Do not move the base of your thumb.
avoid-thumb-cmc-palmar-abduction = Do not stretch your thumb away from your palm.
avoid-thumb-cmc-radial-abduction = Do not stretch your thumb out to the side.
avoid-thumb-mcp-any = Do not bend the knuckle of your thumb.
avoid-thumb-mcp-flexion = Do not fold your thumb into your palm.
avoid-thumb-mcp-radial-deviation = Do not push your thumb away from your hand.
avoid-thumb-mcp-ulnar-deviation = Do not push your thumb across your hand.

## Daily life

daily-job = What you do
daily-what = For now
daily-how = How
daily-word-keep = Keep doing it
daily-word-change = Do it like this
daily-word-leave = Leave it for now
daily-keep = Do it as you always do.
daily-helper = Ask someone to help.
daily-other-hand = Use your other hand, or ask someone to help.
daily-ask = Ask your therapist when you can start again.
daily-pauses = Do a little at a time. Rest in between.
daily-keep-dry = Keep the splint dry, or dry it at once.
daily-driving = Before you drive, ask your therapist and your insurer. Follow the law where you live.
# $date is when a later phase begins.
daily-from-keep = From { $date }: as you always do.
daily-from-change = From { $date }: try it in an easier way.
why-risky = Too risky for this hand for now.
why-driving = You need full control to drive or ride.
why-swimming = Your hand, skin or splint is not ready for the water.
why-heavy = Too heavy for now.
why-in-the-way = The splint is in the way.
why-lateral-pinch = Pressing thumb against finger strains your hand.
why-tip-pinch = Pinching with the fingertips strains your hand.
why-power-grip = A tight grip strains your hand.
why-sustained-grip = Holding on for long strains your hand.
why-wrist-deviation = Tilting the wrist sideways strains it.
why-wrist-flexion = Bending the wrist strains it.
why-wrist-load = Leaning on a bent wrist strains your hand.
why-thumb-load = This task puts load on your thumb.
why-forearm-rotation = Twisting the arm strains your hand.
why-finger-flexion = Bending the fingers hard strains them.
why-elbow-flexion = A bent elbow strains your arm.
why-impact = Knocks can hurt your hand.
why-vibration = Shaking strains your hand.
why-wet = Your hand or splint gets wet.
why-heat = Heat spoils the splint or hurts your skin.
why-repetition = The same movement over and over strains your hand.

## Looking after the splint

# $celsius is a temperature in degrees.
care-wash-plastic = Wash it with soap and water no warmer than { $celsius } degrees.
care-dry-plastic = Dry it well before you put it on.
care-heat = No heat. No hot water, no heater, no sunny car. It melts out of shape.
care-wash-soft = Wash it by hand with mild soap. Rinse it well.
care-dry-soft = Let it dry flat in the shade. Never wear it damp.
care-machine = No washing machine, no dryer, no iron, no bleach.
care-metal = Wipe it dry. Look for rust or bends.
care-keep-dry = Keep it dry. Cover it when you wash.
care-straps = Pick fluff out of the straps. Close them before you wash the splint.
care-change = Do not cut, bend or glue it. We do that.
care-share = Do not lend it. It is made for you.
care-bring = Bring it to every visit.

## Calling

call-emergency = Emergency: get help now
call-today = Call us today
call-visit = Tell us at your visit
call-where = Where: { $address }
# Stands where no emergency number is known.
call-emergency-number = Your local emergency number
call-telephone = Telephone
note-from = Your therapist writes
# Followed by a line to write on.
initial-say = Checked with you
initial-date = Date
initial-name = Initials

## Lengths of time

length-minutes = { $count ->
    [one] { $count } minute
   *[other] { $count } minutes
}
length-hours = { $count ->
    [one] { $count } hour
   *[other] { $count } hours
}
length-hours-minutes = { $hours } { $minutes }
length-seconds = { $count ->
    [one] { $count } second
   *[other] { $count } seconds
}

# What a picture shows, for who cannot see it.
# $view: dorsal = the back of the hand; palmar = the palm; radial = thumb side; ulnar = little-finger side; turned = half way
# between back and thumb side; palmar-radial and palmar-ulnar = half way between the palm and a side; own = as the wearer sees it.
picture-seen = { $what ->
    [finger] { $finger ->
        [index] Index finger
        [middle] Middle finger
        [ring] Ring finger
        [little] Little finger
       *[none] Finger
    } of the { $side ->
        [left] left
       *[right] right
    } hand
    [thumb] { $side ->
        [left] Left thumb
       *[right] Right thumb
    }
   *[hand] { $side ->
        [left] Left hand
       *[right] Right hand
    }
}, { $view ->
    [palmar] seen from the palm side.
    [radial] seen from the thumb side.
    [ulnar] seen from the little-finger side.
    [turned] seen from the back and thumb side.
    [palmar-radial] seen from the palm and thumb side.
    [palmar-ulnar] seen from the palm and little-finger side.
    [own] as you see it yourself.
   *[dorsal] seen from the back.
}
picture-covers = { $splint }. { $from ->
    [arm] It reaches from the upper arm
    [forearm] It reaches from the forearm
    [hand] It reaches from the palm
   *[digit] It sits on the { $finger ->
        [index] index finger
        [middle] middle finger
        [ring] ring finger
        [little] little finger
       *[none] finger or thumb
    },
} { $to ->
    [fingertips] to the fingertips.
    [fingertip] to the fingertip.
    [fingers] to the fingers.
    [finger] to the finger.
    [thumb-tip] to the tip of the thumb.
    [thumb] to the thumb.
    [palm] to the palm.
   *[none] and no further.
}
picture-spots = Rings with letters show where to look.
# One of several pictures of a movement.
picture-part = Picture { $number } of { $count }.
picture-held = The position for: { $exercise }.
picture-moved = Dashed: the start. An arrow shows the movement: { $exercise }.
picture-inside = The bones, as if seen through the skin.
picture-structures = Marked: { $structures }.
picture-held-joints = A ring with lines across it marks what the splint holds or steadies: { $joints }.
# The same mark, in a label.
picture-held-mark = Held or steadied by the splint
# Rows of joints of all fingers, in the list above.
held-knuckles = your knuckles
held-middle-joints = the middle joints of your fingers
held-end-joints = the end joints of your fingers
# A pair of pictures: how a splint sits, and a way in which it does not.
picture-right = It sits well. A tick says so.
picture-wrong = It sits badly. A cross says so. { $fault }
