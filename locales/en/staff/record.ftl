### The record of a case as a page for the chart. Only clinicians read it.

record-title = Record of what was given
record-about = What a person was given, from which content, and why.
record-caution = Not medical advice: the treating clinician decides, and local protocol wins. This page is for the chart and not for the person.
# $case is a short hash of the case's text.
record-line = For the chart. Case { $case }.

## The case

record-case = The case
record-person = Person
record-reference = Reference
record-clinic = Clinic
record-not-named = not named in the case
record-fitted = Fitted
record-review = Review
record-language = Language
# $tag is the tag of the language, $name its English name.
record-language-is = { $name } ({ $tag }); words: { $state ->
    [original] original, the first language of the words
    [signed-off] signed off by a qualified translator
    [outdated] outdated, the English was changed since
   *[drafted] drafted, not checked by a qualified translator
}
record-program = Program
record-content = Content, hash
record-fingerprint = Case, fingerprint

## What was given

record-given = What was given
record-sheet = Sheet
record-size = Size
record-hash = Hash of the file's bytes
record-ease = Readability
record-none-given = No sheet was made.
record-pages = { $pages ->
    [one] { $pages } page
   *[other] { $pages } pages
}
record-events = { $events ->
    [one] { $events } event
   *[other] { $events } events
}
record-no-ease = not measured

## A hand

record-hand = { $side ->
    [left] Left hand
   *[right] Right hand
}
record-finger = Finger
record-orthosis = Orthosis
record-systematic = Systematic name
record-condition = Condition
# $system is the name of the classification.
record-code = { $system } { $code }
record-protocol = Protocol: { $name }
record-evidence = Evidence: { $evidence }
record-confidence = Confidence: { $confidence }

## Overrides

record-overrides = Set by the therapist instead of the rule
record-no-overrides = Nothing: every value is the rule's own.
record-subject = Subject
record-set = Set to
record-instead = Instead of
record-because = Because
record-risk = Risk
record-risk-accepted = RISK ACCEPTED
record-risk-none = no rule of safety broken

## The verdict

record-verdict = Does the orthosis fit?
record-mark-met = as wanted
record-mark-remark = at a cost
record-mark-misfit = does not fit
record-mark-unsafe = unsafe
# $fit is a verdict such as fits.
record-phase-fit = { $condition }, phase { $phase }: { $fit }
record-joint = Joint
record-whole = whole orthosis
record-wanted = Wanted
record-offered = Offered
record-result = Result
record-why = Why
record-source = Source

## The plan

record-plan = The plan
record-phase = Phase
record-dates = Dates
record-wear = Wear
record-until-review = until the review
# $who decides when it begins.
record-later = when the { $who } says so
record-exercises = Exercises
record-exercise = { $id }, orthosis { $place }: { $repetitions } x, hold { $hold }, { $times } a day
record-exercise-up-to = { $exercise }, up to { $most } x
record-break-in = Breaking in
record-at-once = worn in full at once
record-skin = Skin
record-skin-is = a mark may stay { $limit }; checks a day: { $checks }
record-days = Hours, day by day
record-kind = Kind
record-hours = Worn or busy (what is not listed is off)
record-all-off = off
record-jobs = Jobs
record-job = Job
record-ways = ways: { $ways }
record-over = asks too much of: { $over }
record-heavy = too heavy
record-in-the-way = the orthosis is in the way
record-waits = waits: { $gate }
record-rules = Rules that shaped the plan
record-rule = Rule
record-value = Value

## What it rests on

record-open = Not confirmed by a clinician
record-all-confirmed = Everything that was used is confirmed.
record-memory = From memory, still to be confirmed
record-no-memory = Nothing.
record-sources = Sources

## Teach-back

record-teach = Teach-back
record-teach-say = Read the question out. Tick what is shown or said without help; explain again what is not, and ask again.
record-ask = Ask
record-tick = Tick what the person shows or says
record-teach-hands = Shows which splint goes on which hand
record-teach-emergency = Says which signs cannot wait
record-teach-keep-on = Says that it stays on
record-teach-support = Shows how the hand is held while it is off
record-teach-on = Shows how it goes on
record-teach-off = Shows how it comes off
record-teach-bans = Says which movement is not allowed
record-teach-skin = Says what skin signs mean stop
record-teach-stop = Says which other signs mean stop
record-teach-call = Says whom to call
record-teach-hours = Says when it is on and off, from today
record-teach-build = Says how the hours grow
record-teach-jobs = Says which jobs wait
record-teach-exercises = Shows each exercise
record-sign = Clinician
record-sign-date = Date

## Points of an answer

record-point-hand = { $side ->
    [left] Left hand
   *[right] Right hand
}: { $splint }
record-point-clinic = The clinic: { $number }
record-point-no-number = The clinic (its number is not in the case: has it written down)
record-point-emergency = In an emergency: { $number }
# $visit is a date, with or without a time.
record-point-visit = The next visit: { $visit }
record-point-today = Today: on from { $times }
record-point-not-today = Today: not yet
# $label is such as "Days 1 to 5".
record-point-row = { $label }: { $say }
record-point-day = { $date }: { $say }
record-point-full = In full from { $date }
# $place is "Splint on" or "Splint off".
record-point-exercise = { $name } ({ $place }), { $count ->
    [one] once
   *[other] { $count } times
} a day
