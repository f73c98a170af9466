### Comparison charts, study cards and questions on cases, for students of the trade. English only.
### $wanted, $offered, $because, $range and the like come from the checks and the content, as they stand there.

study-caution = For teaching. Not medical advice: the treating clinician decides, and local protocol wins. No clinician has confirmed this content.

## Joints

study-joint-elbow = Elbow
study-joint-forearm = Forearm rotation
study-joint-wrist = Wrist
study-joint-thumb-cmc = Thumb CMC
study-joint-thumb-mcp = Thumb MCP
study-joint-thumb-ip = Thumb IP
study-joint-index-mcp = Index MCP
study-joint-middle-mcp = Middle MCP
study-joint-ring-mcp = Ring MCP
study-joint-little-mcp = Little MCP
study-joint-index-pip = Index PIP
study-joint-middle-pip = Middle PIP
study-joint-ring-pip = Ring PIP
study-joint-little-pip = Little PIP
study-joint-index-dip = Index DIP
study-joint-middle-dip = Middle DIP
study-joint-ring-dip = Ring DIP
study-joint-little-dip = Little DIP
study-joint-fingers-mcp = Finger MCPs
study-joint-fingers-pip = Finger PIPs
study-joint-fingers-dip = Finger DIPs
study-joint-finger-mcp = MCP of the affected finger
study-joint-finger-pip = PIP of the affected finger
study-joint-finger-dip = DIP of the affected finger
study-joint-other-fingers-mcp = MCPs of the other fingers
study-joint-other-fingers-pip = PIPs of the other fingers
study-joint-other-fingers-dip = DIPs of the other fingers

study-place-elbow = Elbow
study-place-forearm = Forearm rotation
study-place-wrist = Wrist
study-place-thumb-cmc = Thumb CMC
study-place-thumb-mcp = Thumb MCP
study-place-thumb-ip = Thumb IP
study-place-mcp = Finger MCPs
study-place-pip = Finger PIPs
study-place-dip = Finger DIPs
study-place-whole = Orthosis as a whole
study-place-need = Need

## Verdicts

study-grade-met = as wanted
study-grade-remark = at a cost
study-grade-misfit = does not fit
study-grade-unsafe = unsafe
study-fit-fits = fits
study-fit-fits-with-remarks = fits, at a cost
study-fit-does-not-fit = does not fit
study-fit-unsafe = unsafe

## Comparison charts

study-chart-title-elbow = Conditions of the elbow and their orthoses
study-chart-title-wrist = Conditions of the wrist and their orthoses
study-chart-title-thumb = Conditions of the thumb and their orthoses
study-chart-title-finger = Conditions of the fingers and their orthoses
study-chart-title-condition = { $condition }: which orthosis, joint by joint
study-chart-about-group = Each condition as it begins. Each orthosis set as well as it can be for it. What concerns one finger is shown on one finger.
study-chart-about-condition = Each orthosis set as well as it can be for this phase, the best first.
study-chart-none = { $count ->
    [one] One orthosis fits none of these conditions and is left out.
   *[other] { $count } orthoses fit none of these conditions and are left out.
}
study-chart-phase = Phase: { $phase }
study-chart-protocol = The surgeon’s protocol rules here. { $because }
study-chart-part = Columns { $from } to { $to } of { $all }
study-chart-key = Key
study-chart-condition = Condition
study-chart-orthosis = Orthosis
study-chart-rest = Besides
study-chart-rest-what = Joints held without need; the orthosis as a whole
study-chart-need-must = Hold: { $letters }
study-chart-need-should = Better held: { $letters }
study-chart-need-may = May be held: { $letters }
study-chart-need-should-be-free = Better free: { $letters }
study-chart-need-must-be-free = Keep free: { $letters }
study-chart-need-ways = One of several ways at: { $letters }
study-chart-need-never = A position is forbidden at: { $letters }

## Study cards

study-cards-title = Study cards
study-cards-print = Fronts. Print on both sides at { $percent }, { $flip }. Cut at the marks.
study-cards-flip-long = flip on the long edge
study-cards-flip-short = flip on the short edge
study-cards-back = Backs of the cards before.
study-cards-alt = The picture that the question is about
study-cards-source = Source:
study-topic-hold = Condition: joints to hold
study-topic-forbidden = Condition: forbidden position
study-topic-joints = Orthosis: joints
study-topic-name = Orthosis: name
study-topic-structure = Structure
study-topic-sign = Sign: what to do
study-ask-hold = { $condition }, phase “{ $phase }”: which joints must be held, and why?
study-ask-forbidden = { $condition }, phase “{ $phase }”: which position must never be possible, and why?
study-ask-joints = Which joints does the { $orthosis } hold, and which does it leave free?
study-ask-name = Which orthosis is this?
study-ask-structure = Which structure is marked, and what loads it?
study-ask-sign = A patient says: “{ $sign }.” What has to happen?
study-card-hold-line = { $joint }: { $wanted }. { $because }
study-card-ways = One of these ways. { $because }
study-card-way = • { $parts }
study-card-way-joint = { $joint } { $wanted }
study-card-way-presses = a piece that presses on the { $segment } and holds no joint
study-card-free = Free: { $joints }.
study-card-never = Never { $positions }. { $because }
study-card-position = { $joint } in { $range }
study-card-holds = { $joint }: { $offered }.
study-card-presses = Acts on the { $segment } and holds no joint.
study-card-name = Plain name: { $name }.
study-card-systematic = Systematic name: { $name }.
study-card-structure = { $term }. In plain words: { $plain }.
study-card-loaded = Loaded by: { $joint }, { $directions }.
study-card-loaded-none = No single movement is listed that always loads it.
study-card-concerns = Matters in: { $conditions }.
study-card-emergency = Emergency: call the emergency number now.
study-card-today = Call the clinic today.
study-card-visit = Tell it at the next visit.
study-card-always = Watched for with every orthosis.
study-card-watched = Watched for in: { $conditions }.

## Questions on cases
## People are invented; none is anybody.

study-quiz-title = Which orthosis?
study-quiz-key-title = Which orthosis? Key
study-quiz-about = Each case is invented. Each orthosis is set as well as it can be for the case. Exactly one is the best: first safety, then fit joint by joint, then the person’s needs, then the least bulk.
study-quiz-key-about = The order: first safety, then fit joint by joint, then the person’s needs, then the least bulk. The best is first, with every joint; of the others, what decides against them.
study-quiz-seed = { $group ->
    [elbow] Elbow. Seed { $seed }.
    [wrist] Wrist. Seed { $seed }.
    [thumb] Thumb. Seed { $seed }.
    [finger] Fingers. Seed { $seed }.
   *[all] All conditions. Seed { $seed }.
}
study-quiz-answer = Best:
study-quiz-bulk = Bulk { $bulk }
study-scene-who = { $finger ->
    [none] { $person }, { $hand ->
        [left] left hand
       *[right] right hand
    }. { $condition }, phase “{ $phase }”.
   *[other] { $person }, { $hand ->
        [left] left hand
       *[right] right hand
    }, { $finger ->
        [index] index
        [middle] middle
        [ring] ring
       *[little] little
    } finger. { $condition }, phase “{ $phase }”.
}
study-scene-found = Found: { $found }.
study-scene-need = { $need }
study-scene-needs = What matters to this person: { $needs }.
study-person-a = A school cook
study-person-b = A gardener
study-person-c = A violin teacher
study-person-d = A bus driver
study-person-e = A baker
study-person-f = A librarian
study-person-g = A nurse
study-person-h = A carpenter
study-person-i = A hairdresser
study-person-j = A shop assistant
study-person-k = A postal worker
study-person-l = A potter
study-choice-traits = { $material }, { $made }; bulk { $bulk } (the most is { $most }); { $straps ->
    [one] one strap
   *[other] { $straps } straps
}; may get wet: { $water }; in a work glove: { $glove }; contains: { $contains }.
study-standing-best = the best of the four
study-standing-remarks = fits, but more joints come out at a cost
study-standing-against = fits, but goes against a need
study-standing-unmet = fits, but does less for the needs
study-standing-bulkier = fits, but is bulkier
study-need-against = goes against it
study-need-met = met
study-need-kept = not gone against
study-need-unmet = nothing for it
