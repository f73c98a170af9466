### The fact sheet of a condition, for patients. It is about nobody in particular: no hour, no date.
### No number, side or duration is typed here; they come in as variables.

facts-caution = Dieses Blatt erklärt ein Problem der Hand. Es ersetzt nicht, was Ihr Therapeut oder Chirurg Ihnen sagt. Sagen sie Ihnen etwas anderes, dann tun Sie das.
# At the foot of each page.
facts-line = Die Bilder zeigen die { $side ->
    [left] linke
   *[right] rechte
} Hand{ $finger ->
    [index] , Zeigefinger
    [middle] , Mittelfinger
    [ring] , Ringfinger
    [little] , kleiner Finger
   *[none] {""}
}.

## What it is

facts-what-title = Was es ist
# $what is one or two finished sentences.
facts-what = { $what }

## What the splint is for

facts-aim-title = Was die Schiene tut
# $aim is one or two finished sentences.
facts-aim = { $aim }
# $joints is a list of joints, such as "your wrist and the base of your thumb".
facts-joints = { $joints }
facts-joint-still = Ruhig gestellt
facts-joint-steady = Gestützt
facts-joint-stopped = Beweglich bis zu einem Anschlag
facts-joint-relative = Bewegt sich weniger als die Finger daneben
facts-joint-coupled = Bewegt sich mit dem Finger daneben
facts-joint-mobilised = Sanft gezogen
# Some splints hold these joints and others do not.
facts-joint-varies = Gehalten oder frei: je nach Schiene
facts-joint-free = Frei beweglich

## Types of splint

facts-types-title = Passende Schienen
facts-types-intro = Diese Arten passen am Anfang. Ihr Therapeut wählt die für Ihre Hand aus.

## The usual course

facts-course-title = Wie es meist verläuft
# $length is a finished length of time, such as "about six weeks".
facts-step-label = Schritt { $number }, { $length }:
# $wear and $ends are finished sentences.
facts-step = { $wear } { $ends }
# $length is such as "four to six weeks".
facts-length-usual = etwa { $length }
facts-length-protocol = { $length }, wie Ihr Chirurg es sagt
facts-length-open = keine feste Zeit
facts-weeks = { $count ->
    [one] { $count } Woche
   *[other] { $count } Wochen
}
# $from and $to are numbers of weeks.
facts-weeks-range = { $from } bis { $to ->
    [one] { $to } Woche
   *[other] { $to } Wochen
}
facts-days = { $count ->
    [one] { $count } Tag
   *[other] { $count } Tage
}
facts-days-range = { $from } bis { $to ->
    [one] { $to } Tag
   *[other] { $to } Tage
}
facts-ends-therapist = Dieser Schritt hat kein festes Ende. Ihr Therapeut entscheidet, wann er vorbei ist.
facts-ends-surgeon = Dieser Schritt hat kein festes Ende. Ihr Chirurg entscheidet, wann er vorbei ist.
facts-ends-person = Sie entscheiden, wann Sie sie nicht mehr brauchen.
facts-ends-time = Dann beginnt der nächste Schritt.
facts-own-guide = Dieses Blatt ist nicht Ihr Plan. Ihr eigenes Merkblatt sagt, wann Sie Ihre Schiene tragen. Tun Sie, was dort steht.
facts-clinics-differ = Kliniken arbeiten verschieden. Ihre Schiene, Ihre Schritte und Ihre Zeiten sind vielleicht nicht dieselben wie hier.
facts-surgeon-sets = Nach einer Operation oder einem Bruch bestimmt Ihr Chirurg die Zeiten und wie Ihre Hand gehalten wird.

## When to get help

facts-help-title = Wann Sie Hilfe holen
# $sign is a sign, such as "Your pinch gets weaker".
facts-visit = { $sign }: Sagen Sie es Ihrem Therapeuten beim nächsten Termin.
