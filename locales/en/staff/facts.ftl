### The fact sheet of a condition, for students: the words between what the content says.

students-title = { $condition }: for students
# $text is a text of the content, as it stands there.
students-text = { $text }
students-list = { $items }

## What it is

# $system is the name of the code system.
students-code = Diagnosis code ({ $system }), no side
students-code-shown = As shown: { $code }
students-structures = Structures
students-aim = Aim of the orthosis
students-aim-is = { $aim ->
    [heal] Hold what heals
    [protect] Protect what heals
    [rest] Rest
    [position] Position
    [function] Function
    [prevent] Prevent
   *[ease] Ease
}

## Joints

# $phase is the name of the phase in the content.
students-joints-title = Joints in phase { $number }: { $phase }
students-because = { $text } ({ $source })
students-when = Only when found: { $finding }.
students-moved = Moved in exercise, with the orthosis off: { $directions }.
students-one-of = One of these ways
students-ways = { $count ->
    [one] one way
   *[other] one of { $count } ways
}
students-way = Way { $number }: { $joint }
students-no-joint = pressed upon, with no joint held

## Positions

students-never-title = Positions to make impossible
# $position is joints with ranges, $why a finished sentence.
students-never = { $position }. { $why }

## Orthoses

students-fit-title = Orthoses that fit, in order
students-fit-intro = First phase; nothing particular found in the person. Order: safety, fit by joint, bulk.
# $number is the place in the order.
students-place = { $number }. { $name }
students-set = Set: { $angles }.
students-better = Better: { $better }.
students-more = { $count ->
    [one] { $count } more fits and is not shown.
   *[other] { $count } more fit and are not shown.
}
# $lacks is what is wanted and what is offered, joint by joint.
students-lacks = The next best, { $name }, { $fit }: { $lacks }.

## Course

students-course-title = Course and what decides
# $phase is the name of the phase, $length a finished length of time.
students-step-label = Phase { $number }, { $phase }, { $length }:
# $load is the heaviest class of exercise.
students-step = { $wear }{ $weans ->
    [yes] {" "}Weaned step by step.
   *[no] {""}
} { $washing ->
    [never] It stays on to wash.
    [supported] Off to wash only with the part supported.
   *[freely] Off to wash freely.
} { $guards ->
    [yes] It guards healing tissue.
   *[no] {""}
} { $begins ->
    [after-review] It begins when a review allows it.
   *[by-date] It begins by date.
} { $decider ->
    [time] Time decides that it is over.
    [person] The person decides that it is over.
    [surgeon] The surgeon decides that it is over.
   *[therapist] The therapist decides that it is over.
} Exercise up to: { $load }. ({ $source })

## Exercises

students-exercises-title = What exercises may not do
students-phase = Phase { $number }:
students-bans = { $bans }. ({ $source })

# $length is such as "four to six weeks".
students-length-protocol = { $length }, set by the protocol

## What varies

students-varies-title = What varies between protocols
# $within is one or several ranges.
students-protocol-angle = The protocol sets { $joint }, usually within { $within }.

## Evidence

students-evidence-title = Evidence and sources
# $work is a citation.
students-cited = { $work } { $read ->
    [read] Read for this content.
   *[recalled] Figures recalled, not read again.
}
students-bases = Where no source is named: “common practice” is widely taught, and no single source is relied on; “from memory” is still to be confirmed.

## Joints by their learned names

students-joint-elbow = Elbow
students-joint-forearm = Forearm rotation
students-joint-wrist = Wrist
students-joint-thumb-cmc = Thumb CMC
students-joint-thumb-mcp = Thumb MCP
students-joint-thumb-ip = Thumb IP
students-joint-fingers-mcp = MCP, all fingers
students-joint-fingers-pip = PIP, all fingers
students-joint-fingers-dip = DIP, all fingers
students-joint-finger-mcp = MCP, affected finger
students-joint-finger-pip = PIP, affected finger
students-joint-finger-dip = DIP, affected finger
students-joint-other-fingers-mcp = MCP, other fingers
students-joint-other-fingers-pip = PIP, other fingers
students-joint-other-fingers-dip = DIP, other fingers
students-joint-index-mcp = MCP, index finger
students-joint-index-pip = PIP, index finger
students-joint-index-dip = DIP, index finger
students-joint-middle-mcp = MCP, middle finger
students-joint-middle-pip = PIP, middle finger
students-joint-middle-dip = DIP, middle finger
students-joint-ring-mcp = MCP, ring finger
students-joint-ring-pip = PIP, ring finger
students-joint-ring-dip = DIP, ring finger
students-joint-little-mcp = MCP, little finger
students-joint-little-pip = PIP, little finger
students-joint-little-dip = DIP, little finger
