### The fact sheet of a condition, for patients. It is about nobody in particular: no hour, no date.
### No number, side or duration is typed here; they come in as variables.

facts-caution = This sheet tells you about a problem of the hand. It does not replace what your therapist or surgeon tells you. If they tell you something else, do what they say.
# At the foot of each page.
facts-line = The pictures show the { $side ->
    [left] left
   *[right] right
} hand{ $finger ->
    [index] , index finger
    [middle] , middle finger
    [ring] , ring finger
    [little] , little finger
   *[none] {""}
}.

## What it is

facts-what-title = What it is
# $what is one or two finished sentences.
facts-what = { $what }

## What the splint is for

facts-aim-title = What the splint does
# $aim is one or two finished sentences.
facts-aim = { $aim }
# $joints is a list of joints, such as "your wrist and the base of your thumb".
facts-joints = { $joints }
facts-joint-still = Kept still
facts-joint-steady = Kept steady
facts-joint-stopped = Moves, up to a stop
facts-joint-relative = Moves less than the fingers beside it
facts-joint-coupled = Moves with the finger beside it
facts-joint-mobilised = Pulled gently
# Some splints hold these joints and others do not.
facts-joint-varies = Held or free: it depends on your splint
facts-joint-free = Free to move

## Types of splint

facts-types-title = Splints that fit
facts-types-intro = These types fit at the start. Your therapist picks the one for your hand.

## The usual course

facts-course-title = How it usually goes
# $length is a finished length of time, such as "about six weeks".
facts-step-label = Step { $number }, { $length }:
# $wear and $ends are finished sentences.
facts-step = { $wear } { $ends }
# $length is such as "four to six weeks".
facts-length-usual = about { $length }
facts-length-protocol = { $length }, as your surgeon says
facts-length-open = no fixed time
facts-weeks = { $count ->
    [one] { $count } week
   *[other] { $count } weeks
}
# $from and $to are numbers of weeks.
facts-weeks-range = { $from } to { $to ->
    [one] { $to } week
   *[other] { $to } weeks
}
facts-days = { $count ->
    [one] { $count } day
   *[other] { $count } days
}
facts-days-range = { $from } to { $to ->
    [one] { $to } day
   *[other] { $to } days
}
facts-ends-therapist = This step has no fixed end. Your therapist decides when it is over.
facts-ends-surgeon = This step has no fixed end. Your surgeon decides when it is over.
facts-ends-person = You decide when you no longer need it.
facts-ends-time = Then the next step begins.
facts-own-guide = This sheet is not your plan. Your own guide says when to wear your splint. Do what your guide says.
facts-clinics-differ = Clinics differ. Your splint, your steps and your times may not be the same as here.
facts-surgeon-sets = After an operation or a break, your surgeon sets the times and how your hand is held.

## When to get help

facts-help-title = When to get help
# $sign is a sign, such as "Your pinch gets weaker".
facts-visit = { $sign }: tell your therapist at your next visit.
