### The guide: everything that is not about one condition, splint, activity or exercise.
### No date, hour, number, side or angle is typed here; they come in as variables.
### $side is left or right and only chooses between wordings.
### Every splint name is feminine (die Schiene) so that "Ihre { $orthosis }" agrees.

## Title and furniture

# $orthosis is the splint's name, such as "lange Daumenschiene".
guide-title = Ihre { $orthosis }
# $name is the person's name. Stands at the foot of every page.
guide-made-for = Nur für { $name }. { $side ->
    [left] Linke
   *[right] Rechte
} Hand{ $finger ->
    [index] , Zeigefinger
    [middle] , Mittelfinger
    [ring] , Ringfinger
    [little] , kleiner Finger
   *[none] {""}
}.
guide-made-for-nobody = Nur für eine Person gemacht. { $side ->
    [left] Linke
   *[right] Rechte
} Hand{ $finger ->
    [index] , Zeigefinger
    [middle] , Mittelfinger
    [ring] , Ringfinger
    [little] , kleiner Finger
   *[none] {""}
}.
guide-caution = Dieses Blatt ersetzt nicht, was Ihr Therapeut oder Chirurg Ihnen sagt. Sagen sie Ihnen etwas anderes, dann tun Sie das. Verleihen Sie die Schiene nicht.
# Printed on every sheet in a language that no qualified translator has signed off.
guide-drafted = Kein ausgebildeter Übersetzer hat diesen Text geprüft.
guide-outdated = Der englische Text wurde nach der Übersetzung geändert. Fragen Sie Ihre Klinik, bevor Sie dieses Blatt nutzen.
guide-page = Seite { $page } von { $pages }
# Where a section stands, in the line of contents.
contents-page = , S. { $page }

## Which hand

hand-left = Linke Hand
hand-right = Rechte Hand
hand-alt = { $side ->
    [left] Die Schiene ist für Ihre linke Hand.
   *[right] Die Schiene ist für Ihre rechte Hand.
}

## Section titles

glance-title = Auf einen Blick
dates-title = Tag für Tag
on-off-title = Anlegen und abnehmen
on-off-intro = { $washing ->
    [never] Das macht nur Ihre Klinik.
   *[freely] Setzen Sie sich an einen Tisch. Nehmen Sie die andere Hand.
}
skin-title = Haut prüfen
skin-intro = { $checks ->
    [one] Schauen Sie einmal am Tag genau hin.
   *[other] Schauen Sie { $checks } Mal am Tag genau hin.
} Sorgen Sie für gutes Licht. { $washing ->
    [supported] Prüfen Sie diese Stellen jedes Mal, wenn Sie die Schiene zum Waschen abnehmen. Dazwischen prüfen Sie die Ränder und Ihre Fingerspitzen:
    [never] Nehmen Sie die Schiene zum Prüfen nicht ab. Prüfen Sie die Ränder und Ihre Fingerspitzen:
   *[freely] Prüfen Sie diese Stellen:
}
move-title = Hand bewegen
move-intro = Gehen Sie langsam vor. Erzwingen Sie keine Bewegung.
daily-title = Im Alltag
care-title = Pflege der Schiene
note-title = Von Ihrem Therapeuten
call-title = Wann Sie anrufen
call-intro = Legen Sie diese Seite so hin, dass Sie sie sehen.

## Facts on the first page

fact-splint = Welche Schiene
# $finger is index, middle, ring or little and only chooses between wordings.
finger-name = { $finger ->
    [index] Zeigefinger, neben dem Daumen
    [middle] Mittelfinger
    [ring] Ringfinger
   *[little] Kleiner Finger
}
fact-for = Wofür sie ist
fact-fitted = Angepasst am
fact-full = Volle Tragezeit ab
fact-full-more = Erst langsam steigern. Siehe Tabelle Tag für Tag.
fact-review = Nächster Termin
# $joints is a list such as "the tip of your thumb and your knuckles"; $count is how many.
fact-free = Frei beweglich: { $joints }.

say-date = { $date }
say-date-time = { $date }, { $time }
say-short-date = { $date }
date-range = { $from } bis { $to }
# $to is the date of the next visit.
date-until-visit = { $from } bis zu Ihrem Termin: { $to }
# From one clock time to another.
time-range = { $from } bis { $to }

## Joints, as the person would say them (always nominative: they stand in lists after a colon)

joint-elbow = Ihr Ellenbogen
joint-forearm = das Drehen Ihres Unterarms
joint-wrist = Ihr Handgelenk
joint-thumb-cmc = der Ansatz Ihres Daumens
joint-thumb-mcp = der Knöchel Ihres Daumens
joint-thumb-ip = die Spitze Ihres Daumens
joint-fingers-mcp = Ihre Finger
joint-fingers-pip = die Mittelgelenke Ihrer Finger
joint-fingers-dip = die Spitzen Ihrer Finger
# The affected finger.
joint-finger-mcp = der Knöchel des kranken Fingers
joint-finger-pip = das Mittelgelenk des kranken Fingers
joint-finger-dip = die Spitze des kranken Fingers
joint-other-fingers-mcp = Ihre anderen Finger
joint-other-fingers-pip = die Mittelgelenke Ihrer anderen Finger
joint-other-fingers-dip = die Spitzen Ihrer anderen Finger
joint-index-mcp = der Knöchel Ihres Zeigefingers
joint-middle-mcp = der Knöchel Ihres Mittelfingers
joint-ring-mcp = der Knöchel Ihres Ringfingers
joint-little-mcp = der Knöchel Ihres kleinen Fingers
joint-index-pip = das Mittelgelenk Ihres Zeigefingers
joint-middle-pip = das Mittelgelenk Ihres Mittelfingers
joint-ring-pip = das Mittelgelenk Ihres Ringfingers
joint-little-pip = das Mittelgelenk Ihres kleinen Fingers
joint-index-dip = die Spitze Ihres Zeigefingers
joint-middle-dip = die Spitze Ihres Mittelfingers
joint-ring-dip = die Spitze Ihres Ringfingers
joint-little-dip = die Spitze Ihres kleinen Fingers

## When to wear it

strip-days = Tage { $from } bis { $to }
strip-from-day = Ab Tag { $from }
strip-weeks = Wochen { $from } bis { $to }
strip-build = Jeden Tag etwas mehr. Noch nicht nachts.
strip-key-on = Schiene an
strip-key-off = Schiene ab
strip-key-needed = An: bei schweren Arbeiten
# In phases that guard what heals.
strip-key-guard = An: draußen und im Gedränge
strip-key-rest = An: beim Ausruhen
strip-key-part = Einen Teil der Zeit an
# $label is a row's label, $times a list of clock times.
strip-alt = { $label }: Schiene an von { $times }.
strip-alt-none = { $label }: keine festen Zeiten mit Schiene.
wear-never-remove = Tag und Nacht. Nehmen Sie sie nicht ab.
# $times is how often it comes off in a day.
wear-off-to-wash = Tag und Nacht. Nehmen Sie sie nur zum Waschen ab{ $times ->
    [one] , einmal am Tag.
   *[other] , { $times } Mal am Tag.
}
wear-off-to-exercise = Tag und Nacht. Nehmen Sie sie nur zum Waschen und Üben ab{ $times ->
    [one] , einmal am Tag.
   *[other] , { $times } Mal am Tag.
}
wear-night-and-tasks = Die ganze Nacht an. Am Tag an bei schweren Arbeiten.
# In phases that guard what heals: hard tasks wait.
wear-night-and-tasks-guard = Die ganze Nacht an. Am Tag an: draußen, im Gedränge und bei allen Arbeiten, die Ihnen erlaubt sind.
wear-night-and-rest = Die ganze Nacht an. Am Tag an, wenn Sie ausruhen. Ab, wenn Sie die Hand benutzen.
# $bouts is how many times a day, $each a finished length of time.
wear-stretch = { $bouts ->
    [one] Einmal am Tag an
   *[other] { $bouts } Mal am Tag an
}, jedes Mal { $each }. Dazwischen ab.
wear-day = Den ganzen Tag an. Nachts ab.
wear-night = Die ganze Nacht an. Am Tag ab.
wear-tasks = Nur bei schweren Arbeiten an. Nachts ab.
wear-tasks-guard = An: draußen, im Gedränge und bei allen Arbeiten, die Ihnen erlaubt sind. Nachts ab.
wear-off = Ab.
# $length is how long it is worn while awake.
wear-wean-night = Nach dem Aufstehen { $length } an, und die ganze Nacht.
wear-wean-day = Nach dem Aufstehen { $length } an. Nachts ab.

## What comes after the next visit

later-label = Wenn Ihr Therapeut es sagt
later-label-surgeon = Wenn Ihr Chirurg es sagt
later-label-next = Später, wenn wir es sagen
# This splint does not suit that stage.
later-other = Mit einer anderen Schiene.
later-never-remove = Tag und Nacht, ohne Pause.
later-off-to-wash = Tag und Nacht, nur zum Waschen ab.
later-off-to-exercise = Tag und Nacht, nur zum Waschen und Üben ab.
later-night-and-tasks = Nachts und bei schweren Arbeiten.
later-night-and-tasks-guard = Nachts, draußen und im Gedränge.
later-night-and-rest = Nachts und beim Ausruhen.
later-stretch = Einige Male am Tag, zum Dehnen.
later-day = Nur am Tag.
later-night = Nur nachts.
later-tasks = Nur bei schweren Arbeiten.
later-tasks-guard = Nur draußen und im Gedränge.
later-off = Ohne die Schiene.
later-wean = Immer weniger, Schritt für Schritt.

## The stop box

warning-title-take-off = Nehmen Sie die Schiene ab und rufen Sie uns an, wenn:
warning-title-supported = { $straps ->
    [without] Rufen Sie uns an, wenn:
   *[with] Lockern Sie die Gurte und rufen Sie uns an, wenn:
}
warning-title-keep-on = { $straps ->
        [without] Lassen Sie die Schiene an und rufen Sie uns an, wenn:
       *[with] Lockern Sie die Gurte, lassen Sie die Schiene an und rufen Sie uns an, wenn:
    }
# Followed by the signs that cannot wait. $number is the emergency number.
warning-emergency = Notfall: { $number } anrufen, wenn:
warning-emergency-no-number = Notfall: sofort Hilfe holen, wenn:
warning-act-take-off = Nehmen Sie sie ab. Dann rufen Sie an.
warning-act-supported = { $straps ->
    [without] Stützen Sie die kranke Stelle weiter. Dann rufen Sie an.
   *[with] Lockern Sie die Gurte. Stützen Sie die kranke Stelle weiter. Dann rufen Sie an.
}
warning-act-keep-on = { $straps ->
    [without] Nehmen Sie sie nicht ab. Rufen Sie uns an.
   *[with] Lockern Sie die Gurte. Nehmen Sie die Schiene nicht ab. Dann rufen Sie an.
}

## Day by day

axis-midnight = Mitternacht
axis-noon = Mittag
schedule-day = Tag
schedule-clock = Uhrzeit
schedule-long = Wie lange
schedule-note = Diese Uhrzeiten sind Beispiele. Wählen Sie, was für Sie passt. Bleibt ein Abdruck zu lange, wiederholen Sie denselben Tag.
schedule-note-late = Diese Uhrzeiten sind Beispiele. Wählen Sie, was für Sie passt. Ein Balken nach Mitternacht gehört zum Tag davor. Bleibt ein Abdruck zu lange, wiederholen Sie denselben Tag.
schedule-minutes = { $count ->
    [one] Minute
   *[other] Minuten
}
schedule-hours = { $count ->
    [one] Stunde
   *[other] Stunden
}
schedule-times = { $count ->
    [one] einmal
   *[other] { $count } Mal
}
schedule-not-yet = Nicht an diesem Tag

calendar-week = Woche
calendar-what = Was zu tun ist
calendar-build = Steigern.
calendar-wean = Weniger tragen.
calendar-never-remove = Tag und Nacht, ohne Pause.
calendar-off-to-wash = Tag und Nacht.
calendar-off-to-exercise = Tag und Nacht.
calendar-night-and-tasks = Nachts, schwere Arbeiten.
calendar-night-and-tasks-guard = Nachts, draußen, Gedränge.
calendar-night-and-rest = Nachts und in Ruhe.
calendar-stretch = Zeiten zum Dehnen.
calendar-day = Am Tag.
calendar-night = Nachts.
calendar-tasks = Schwere Arbeiten.
calendar-tasks-guard = Draußen und Gedränge.
calendar-off = Keine Schiene.
calendar-review = Termin: { $date }.
calendar-key-review = Ihr Termin
calendar-key-build = Steigern
calendar-key-on = An
calendar-key-night = Nachts
calendar-key-needed = Einen Teil des Tages
calendar-key-off = Ab
calendar-and-so-on = So weiter, jede Woche.

## Putting on and taking off

steps-on = Anlegen
steps-off = Abnehmen
# For a splint that only the clinic takes off.
steps-never = Nehmen Sie die Schiene nicht selbst ab. Ihre Klinik nimmt sie ab und legt sie an.
# Stands after "Schließen Sie den" or "Öffnen Sie den".
strap-next = nächsten Gurt

## Skin

# Letters that mark the places, in the order of the alphabet.
spot-letters = A B C D E F G H
skin-fine = Das ist in Ordnung
skin-not = Das ist nicht in Ordnung
skin-fine-mark = Ein leichter Abdruck, der innerhalb von { $limit } verblasst
skin-fine-lines = Schwache Linien von den Gurten
skin-fine-damp = Haut, die ein wenig feucht ist
skin-not-mark = Ein Abdruck, der länger bleibt als { $limit }
# Redness does not show on dark skin.
skin-not-dark = Auf dunkler Haut: eine Stelle, die länger als { $limit } dunkler, heißer oder härter ist
skin-not-blister = Eine Blase, eine wunde Stelle oder offene Haut
skin-not-rash = Ein Ausschlag oder Juckreiz, der nicht weggeht
skin-not-wet = Haut, die weiß, weich und nass ist
skin-act-take-off = Nehmen Sie die Schiene ab und rufen Sie uns heute an.
skin-act-keep = { $straps ->
    [without] Rufen Sie uns heute an. Stützen Sie Ihre Hand weiter.
   *[with] Lockern Sie die Gurte und rufen Sie uns heute an. Stützen Sie Ihre Hand weiter.
}

## Moving

move-splint-on = Schiene an
move-splint-off = Schiene ab
move-stop = Hören Sie auf, wenn der Schmerz stärker wird. Hat er sich nach ein paar Stunden nicht beruhigt, rufen Sie uns an.
move-avoid = Noch nicht
dose-times = { $count ->
    [one] Mal
   *[other] Mal
}
dose-a-day = { $count ->
    [one] Mal am Tag
   *[other] Mal am Tag
}
# $count is a number of times, after the first week.
move-up-to = Nach einer Woche, wenn es leicht geht: bis zu { $count ->
    [one] { $count } Mal
   *[other] { $count } Mal
}.
moves-after-review = Nach Ihrem Termin gibt Ihnen Ihr Therapeut neue Bewegungen.
# $date is when they begin, $exercises a list of names.
moves-later = Ab { $date }: { $exercises }.
avoid-wrist-ulnar-deviation = Kippen Sie das Handgelenk nicht zum kleinen Finger hin.
avoid-wrist-radial-deviation = Kippen Sie das Handgelenk nicht zum Daumen hin.
avoid-thumb-cmc-any = Bewegen Sie den Ansatz des Daumens nicht.
avoid-thumb-cmc-palmar-abduction = Spreizen Sie den Daumen nicht von der Handfläche ab.
avoid-thumb-cmc-radial-abduction = Spreizen Sie den Daumen nicht zur Seite ab.
avoid-thumb-mcp-any = Beugen Sie den Knöchel des Daumens nicht.
avoid-thumb-mcp-flexion = Legen Sie den Daumen nicht in die Handfläche.
avoid-thumb-mcp-radial-deviation = Drücken Sie den Daumen nicht von der Hand weg.
avoid-thumb-mcp-ulnar-deviation = Drücken Sie den Daumen nicht quer über die Hand.

## Daily life

daily-job = Was Sie tun
daily-what = Vorerst
daily-how = Wie
daily-word-keep = Weitermachen
daily-word-change = So machen
daily-word-leave = Vorerst lassen
daily-keep = Tun Sie es wie immer.
daily-helper = Bitten Sie jemanden um Hilfe.
daily-other-hand = Nehmen Sie die andere Hand oder bitten Sie jemanden um Hilfe.
daily-ask = Fragen Sie Ihren Therapeuten, wann Sie wieder anfangen können.
daily-pauses = Tun Sie immer nur ein wenig. Ruhen Sie dazwischen aus.
daily-keep-dry = Halten Sie die Schiene trocken oder trocknen Sie sie sofort.
daily-driving = Bevor Sie fahren, fragen Sie Ihren Therapeuten und Ihre Versicherung. Halten Sie sich an das Gesetz an Ihrem Wohnort.
# $date is when a later phase begins.
daily-from-keep = Ab { $date }: wie immer.
daily-from-change = Ab { $date }: Versuchen Sie es auf leichtere Art.
why-risky = Vorerst zu gefährlich für diese Hand.
why-driving = Zum Fahren brauchen Sie volle Kontrolle.
why-swimming = Ihre Hand, Haut oder Schiene ist noch nicht bereit für das Wasser.
why-heavy = Vorerst zu schwer.
why-in-the-way = Die Schiene ist im Weg.
why-lateral-pinch = Den Daumen gegen den Finger zu drücken belastet Ihre Hand.
why-tip-pinch = Das Greifen mit den Fingerspitzen belastet Ihre Hand.
why-power-grip = Festes Greifen belastet Ihre Hand.
why-sustained-grip = Langes Festhalten belastet Ihre Hand.
why-wrist-deviation = Das Handgelenk seitlich zu kippen belastet es.
why-wrist-flexion = Das Handgelenk zu beugen belastet es.
why-wrist-load = Das Stützen auf ein gebeugtes Handgelenk belastet Ihre Hand.
why-thumb-load = Diese Arbeit belastet Ihren Daumen.
why-forearm-rotation = Das Drehen des Unterarms belastet Ihre Hand.
why-finger-flexion = Die Finger stark zu beugen belastet sie.
why-elbow-flexion = Ein gebeugter Ellenbogen belastet Ihren Arm.
why-impact = Stöße können Ihre Hand verletzen.
why-vibration = Rütteln belastet Ihre Hand.
why-wet = Ihre Hand oder Schiene wird nass.
why-heat = Hitze schadet der Schiene oder Ihrer Haut.
why-repetition = Immer wieder dieselbe Bewegung belastet Ihre Hand.

## Looking after the splint

# $celsius is a temperature in degrees.
care-wash-plastic = Waschen Sie sie mit Seife und Wasser, nicht wärmer als { $celsius } Grad.
care-dry-plastic = Trocknen Sie sie gut, bevor Sie sie anlegen.
care-heat = Keine Hitze. Kein heißes Wasser, keine Heizung, kein Auto in der Sonne. Die Schiene schmilzt und verliert die Form.
care-wash-soft = Waschen Sie sie von Hand mit milder Seife. Spülen Sie sie gut aus.
care-dry-soft = Lassen Sie sie flach im Schatten trocknen. Tragen Sie sie nie feucht.
care-machine = Keine Waschmaschine, kein Trockner, kein Bügeleisen, keine Bleiche.
care-metal = Wischen Sie sie trocken. Achten Sie auf Rost und Knicke.
care-keep-dry = Halten Sie sie trocken. Decken Sie sie beim Waschen ab.
care-straps = Zupfen Sie Fussel aus den Gurten. Schließen Sie die Gurte, bevor Sie die Schiene waschen.
care-change = Schneiden, biegen oder kleben Sie nicht daran. Das machen wir.
care-share = Verleihen Sie sie nicht. Sie ist für Sie gemacht.
care-bring = Bringen Sie sie zu jedem Termin mit.

## Calling

call-emergency = Notfall: sofort Hilfe holen
call-today = Heute anrufen
call-visit = Beim Termin sagen
call-where = Wo: { $address }
# Stands where no emergency number is known.
call-emergency-number = Die Notrufnummer an Ihrem Ort
call-telephone = Telefon
note-from = Ihr Therapeut schreibt
# Followed by a line to write on.
initial-say = Mit Ihnen geprüft
initial-date = Datum
initial-name = Kürzel

## Lengths of time

length-minutes = { $count ->
    [one] { $count } Minute
   *[other] { $count } Minuten
}
length-hours = { $count ->
    [one] { $count } Stunde
   *[other] { $count } Stunden
}
length-hours-minutes = { $hours } { $minutes }
length-seconds = { $count ->
    [one] { $count } Sekunde
   *[other] { $count } Sekunden
}

# What a picture shows, for who cannot see it.
# $view: dorsal = the back of the hand; palmar = the palm; radial = thumb side; ulnar = little-finger side; turned = half way
# between back and thumb side; own = as the wearer sees it.
picture-seen = { $what ->
    [finger] { $finger ->
        [index] Zeigefinger
        [middle] Mittelfinger
        [ring] Ringfinger
        [little] Kleiner Finger
       *[none] Finger
    } der { $side ->
        [left] linken
       *[right] rechten
    } Hand
    [thumb] { $side ->
        [left] Linker Daumen
       *[right] Rechter Daumen
    }
   *[hand] { $side ->
        [left] Linke Hand
       *[right] Rechte Hand
    }
}, { $view ->
    [palmar] von der Handfläche gesehen.
    [radial] von der Daumenseite gesehen.
    [ulnar] von der Seite des kleinen Fingers gesehen.
    [turned] vom Handrücken und von der Daumenseite gesehen.
    [palmar-radial] von der Handfläche und von der Daumenseite gesehen.
    [palmar-ulnar] von der Handfläche und von der Seite des kleinen Fingers gesehen.
    [own] wie Sie sie selbst sehen.
   *[dorsal] vom Handrücken gesehen.
}
picture-covers = { $splint }. { $from ->
    [arm] Sie reicht vom Oberarm
    [forearm] Sie reicht vom Unterarm
    [hand] Sie reicht von der Handfläche
   *[digit] Sie sitzt { $finger ->
        [index] am Zeigefinger
        [middle] am Mittelfinger
        [ring] am Ringfinger
        [little] am kleinen Finger
       *[none] am Finger oder Daumen
    },
} { $to ->
    [fingertips] bis zu den Fingerspitzen.
    [fingertip] bis zur Fingerspitze.
    [fingers] bis zu den Fingern.
    [finger] bis zum Finger.
    [thumb-tip] bis zur Daumenspitze.
    [thumb] bis zum Daumen.
    [palm] bis zur Handfläche.
   *[none] und nicht weiter.
}
picture-spots = Ringe mit Buchstaben zeigen, wo Sie prüfen.
# One of several pictures of a movement.
picture-part = Bild { $number } von { $count }.
picture-held = Die Haltung für: { $exercise }.
picture-moved = Gestrichelt: der Anfang. Ein Pfeil zeigt die Bewegung: { $exercise }.
picture-inside = Die Knochen, wie durch die Haut gesehen.
picture-structures = Markiert: { $structures }.
picture-held-joints = Ein Ring mit Querlinien zeigt, was die Schiene hält oder stützt: { $joints }.
# The same mark, in a label.
picture-held-mark = Von der Schiene gehalten oder gestützt
# Rows of joints of all fingers, in the list above.
held-knuckles = Ihre Knöchel
held-middle-joints = die Mittelgelenke Ihrer Finger
held-end-joints = die Endgelenke Ihrer Finger
# A pair of pictures: how a splint sits, and a way in which it does not.
picture-right = Sie sitzt gut. Ein Haken zeigt das.
picture-wrong = Sie sitzt schlecht. Ein Kreuz zeigt das. { $fault }
