### More exercises: name, starting position and one action for each step.
### The name is a short order and stands as a heading. Steps are numbered by the program.
### $hold is a finished length of time, such as the words for five seconds.
### “Other hand” is the hand without the splint. “Treated finger” is the finger that the splint is for.
### The joints of a finger are the big knuckle, the middle joint and the tip.

## Arm and wrist

exercise-shoulder-reach-name = Den Arm nach oben strecken
exercise-shoulder-reach-start = Sitzen oder stehen Sie, der Arm hängt an der Seite.
exercise-shoulder-reach-step-1 = Heben Sie den Arm nach vorn, so hoch, wie es leicht geht.
exercise-shoulder-reach-step-2 = Halten Sie { $hold }.
exercise-shoulder-reach-step-3 = Senken Sie den Arm langsam.
exercise-shoulder-reach-step-4 = Beim nächsten Mal heben Sie ihn zur Seite.

exercise-wrist-dart-name = Das Handgelenk wie beim Pfeilwerfen bewegen
exercise-wrist-dart-start = Legen Sie den Unterarm mit der Seite des kleinen Fingers auf einen Tisch, die Hand über den Rand. Halten Sie Finger und Daumen locker.
exercise-wrist-dart-step-1 = Kippen Sie die Hand nach hinten und zum Daumen hin.
exercise-wrist-dart-step-2 = Halten Sie { $hold }.
exercise-wrist-dart-step-3 = Kippen Sie die Hand nach vorn und zum kleinen Finger hin.
exercise-wrist-dart-step-4 = Halten Sie { $hold }.

# Ordered by the clinician only.
exercise-wrist-swing-with-fingers-name = Handgelenk und Finger zusammen schwingen
exercise-wrist-swing-with-fingers-start = Stützen Sie den Ellenbogen auf einen Tisch. Bewegen Sie nur so weit, wie Ihr Therapeut es gezeigt hat.
exercise-wrist-swing-with-fingers-step-1 = Lassen Sie das Handgelenk nach vorn sinken, sodass sich die Finger öffnen.
exercise-wrist-swing-with-fingers-step-2 = Halten Sie { $hold }.
exercise-wrist-swing-with-fingers-step-3 = Heben Sie das Handgelenk, sodass sich die Finger zu einer lockeren Faust krümmen.
exercise-wrist-swing-with-fingers-step-4 = Halten Sie { $hold }.

exercise-forearm-front-stretch-name = Die Handflächenseite des Unterarms dehnen
exercise-forearm-front-stretch-start = Strecken Sie den Arm nach vorn, die Handfläche nach oben.
exercise-forearm-front-stretch-step-1 = Strecken Sie den Ellenbogen.
exercise-forearm-front-stretch-step-2 = Fassen Sie Handfläche und Finger mit der anderen Hand.
exercise-forearm-front-stretch-step-3 = Ziehen Sie die Hand sanft nach unten, bis Sie einen Zug spüren.
exercise-forearm-front-stretch-step-4 = Halten Sie { $hold }.
exercise-forearm-front-stretch-step-5 = Lassen Sie langsam los.

exercise-forearm-back-stretch-name = Die Rückseite des Unterarms dehnen
exercise-forearm-back-stretch-start = Strecken Sie den Arm nach vorn, die Handfläche nach unten. Halten Sie die Finger locker.
exercise-forearm-back-stretch-step-1 = Strecken Sie den Ellenbogen.
exercise-forearm-back-stretch-step-2 = Legen Sie die andere Hand auf den Handrücken.
exercise-forearm-back-stretch-step-3 = Drücken Sie die Hand sanft nach unten, bis Sie einen Zug spüren.
exercise-forearm-back-stretch-step-4 = Halten Sie { $hold }.
exercise-forearm-back-stretch-step-5 = Lassen Sie langsam los.

exercise-palms-together-stretch-name = Die Handgelenke dehnen, Handflächen aneinander
exercise-palms-together-stretch-start = Legen Sie die Handflächen vor der Brust aneinander, die Finger nach oben.
exercise-palms-together-stretch-step-1 = Senken Sie langsam die Hände. Lassen Sie die Handflächen aneinander.
exercise-palms-together-stretch-step-2 = Halten Sie an, wenn Sie einen sanften Zug spüren.
exercise-palms-together-stretch-step-3 = Halten Sie { $hold }.
exercise-palms-together-stretch-step-4 = Heben Sie die Hände wieder.

## Fingers

# A neighbour of the treated finger may be in the splint too.
exercise-free-finger-bend-name = Die freien Finger bewegen
exercise-free-finger-bend-start = Halten Sie die Hand hoch, die Finger zeigen nach oben.
exercise-free-finger-bend-step-1 = Beugen Sie nur die Finger, die sich frei bewegen dürfen.
exercise-free-finger-bend-step-2 = Halten Sie { $hold }.
exercise-free-finger-bend-step-3 = Strecken Sie sie langsam.

exercise-fingers-straight-name = Die Finger strecken
exercise-fingers-straight-start = Halten Sie die Hand hoch, die Finger zeigen nach oben.
exercise-fingers-straight-step-1 = Strecken Sie alle Finger, so weit es leicht geht.
exercise-fingers-straight-step-2 = Halten Sie { $hold }.
exercise-fingers-straight-step-3 = Lassen Sie die Finger locker.

exercise-tabletop-name = Nur die großen Knöchel beugen
exercise-tabletop-start = Halten Sie die Hand hoch, die Finger zeigen nach oben.
exercise-tabletop-step-1 = Beugen Sie die großen Knöchel. Halten Sie den Rest der Finger gerade.
exercise-tabletop-step-2 = Halten Sie { $hold }.
exercise-tabletop-step-3 = Strecken Sie die großen Knöchel.

exercise-straight-fist-name = Eine flache Faust machen
exercise-straight-fist-start = Halten Sie die Hand hoch, die Finger zeigen nach oben.
exercise-straight-fist-step-1 = Beugen Sie die großen Knöchel und die Mittelgelenke. Halten Sie die Spitzen gerade.
exercise-straight-fist-step-2 = Legen Sie die Fingerspitzen flach auf die Handfläche.
exercise-straight-fist-step-3 = Halten Sie { $hold }.
exercise-straight-fist-step-4 = Strecken Sie die Finger.

exercise-five-positions-name = Alle Handformen der Reihe nach machen
exercise-five-positions-start = Halten Sie die Hand hoch, die Finger zeigen nach oben.
exercise-five-positions-step-1 = Strecken Sie alle Finger.
exercise-five-positions-step-2 = Machen Sie einen Haken. Halten Sie die großen Knöchel gerade.
exercise-five-positions-step-3 = Machen Sie eine lockere, volle Faust.
exercise-five-positions-step-4 = Beugen Sie nur die großen Knöchel. Halten Sie den Rest gerade.
exercise-five-positions-step-5 = Legen Sie die Fingerspitzen flach auf die Handfläche. Halten Sie die Spitzen gerade.
exercise-five-positions-step-6 = Halten Sie jede Form { $hold }. Dann kommt die nächste.

exercise-block-tip-bend-name = Nur die Spitze des Fingers beugen
exercise-block-tip-bend-start = Legen Sie die Hand auf einen Tisch, die Handfläche nach oben. Halten Sie den behandelten Finger mit der anderen Hand zwischen Mittelgelenk und Endgelenk.
exercise-block-tip-bend-step-1 = Beugen Sie nur die Spitze.
exercise-block-tip-bend-step-2 = Halten Sie { $hold }.
exercise-block-tip-bend-step-3 = Strecken Sie die Spitze.

exercise-block-middle-bend-name = Nur das Mittelgelenk beugen
exercise-block-middle-bend-start = Legen Sie die Hand auf einen Tisch, die Handfläche nach oben. Halten Sie den behandelten Finger mit der anderen Hand zwischen dem großen Knöchel und dem Mittelgelenk.
exercise-block-middle-bend-step-1 = Beugen Sie nur das Mittelgelenk.
exercise-block-middle-bend-step-2 = Halten Sie { $hold }.
exercise-block-middle-bend-step-3 = Strecken Sie das Mittelgelenk.

exercise-knuckle-bent-straighten-name = Das Mittelgelenk strecken, Knöchel gebeugt
exercise-knuckle-bent-straighten-start = Beugen Sie den großen Knöchel des behandelten Fingers. Halten Sie ihn mit der anderen Hand gebeugt.
exercise-knuckle-bent-straighten-step-1 = Strecken Sie das Mittelgelenk, so weit es leicht geht.
exercise-knuckle-bent-straighten-step-2 = Halten Sie { $hold }.
exercise-knuckle-bent-straighten-step-3 = Lassen Sie das Mittelgelenk locker.

exercise-finger-lift-name = Die Finger nacheinander heben
exercise-finger-lift-start = Legen Sie die Handfläche flach auf einen Tisch.
exercise-finger-lift-step-1 = Heben Sie einen Finger vom Tisch. Lassen Sie die anderen liegen.
exercise-finger-lift-step-2 = Halten Sie { $hold }.
exercise-finger-lift-step-3 = Senken Sie ihn langsam.
exercise-finger-lift-step-4 = Tun Sie dasselbe mit jedem anderen Finger.

exercise-tip-bend-middle-straight-name = Die Spitze beugen, Mittelgelenk gerade
exercise-tip-bend-middle-straight-start = Legen Sie die Hand auf einen Tisch. Lassen Sie die Schiene an.
exercise-tip-bend-middle-straight-step-1 = Halten Sie das Mittelgelenk des behandelten Fingers gerade.
exercise-tip-bend-middle-straight-step-2 = Beugen Sie nur die Spitze.
exercise-tip-bend-middle-straight-step-3 = Halten Sie { $hold }.
exercise-tip-bend-middle-straight-step-4 = Strecken Sie die Spitze.

exercise-middle-bend-tip-held-name = Das Mittelgelenk des Fingers beugen
exercise-middle-bend-tip-held-start = Stützen Sie den Ellenbogen auf einen Tisch, die Finger nach oben. Lassen Sie die Schiene an.
exercise-middle-bend-tip-held-step-1 = Beugen Sie das Mittelgelenk des behandelten Fingers.
exercise-middle-bend-tip-held-step-2 = Halten Sie { $hold }.
exercise-middle-bend-tip-held-step-3 = Strecken Sie es langsam.

## After a tendon repair
## Ordered by the clinician only.

exercise-short-arc-middle-bend-name = Das Mittelgelenk ein wenig beugen
exercise-short-arc-middle-bend-start = Nehmen Sie nur das Maßstück, das Ihr Therapeut gemacht hat. Halten Sie den großen Knöchel gerade.
exercise-short-arc-middle-bend-step-1 = Legen Sie den behandelten Finger an das Maßstück.
exercise-short-arc-middle-bend-step-2 = Beugen Sie das Mittelgelenk nur, bis der Finger das Maßstück berührt.
exercise-short-arc-middle-bend-step-3 = Halten Sie { $hold }.
exercise-short-arc-middle-bend-step-4 = Strecken Sie das Mittelgelenk ganz.
exercise-short-arc-middle-bend-step-5 = Legen Sie die Schiene wieder an, wenn Sie alle Wiederholungen gemacht haben.

exercise-helped-curl-in-splint-name = Die Finger mit der anderen Hand krümmen
exercise-helped-curl-in-splint-start = Lassen Sie die Schiene an. Öffnen Sie nur die Gurte, die Ihr Therapeut gezeigt hat. Halten Sie die Finger locker.
exercise-helped-curl-in-splint-step-1 = Krümmen Sie mit der anderen Hand einen Finger sanft zur Handfläche hin.
exercise-helped-curl-in-splint-step-2 = Halten Sie { $hold }.
exercise-helped-curl-in-splint-step-3 = Lassen Sie den Finger langsam los. Ziehen Sie nicht daran, um ihn zu strecken.
exercise-helped-curl-in-splint-step-4 = Tun Sie dasselbe mit jedem Finger.
exercise-helped-curl-in-splint-step-5 = Schließen Sie die Gurte wieder, wenn Sie alle gemacht haben.

exercise-straighten-to-roof-name = Die Finger bis zur Schiene strecken
exercise-straighten-to-roof-start = Lassen Sie die Schiene an. Öffnen Sie nur die Gurte, die Ihr Therapeut gezeigt hat. Lassen Sie die großen Knöchel an der Schiene.
exercise-straighten-to-roof-step-1 = Strecken Sie die Finger, bis sie die Schiene berühren.
exercise-straighten-to-roof-step-2 = Halten Sie { $hold }.
exercise-straighten-to-roof-step-3 = Lassen Sie die Finger locker.
exercise-straighten-to-roof-step-4 = Schließen Sie die Gurte wieder, wenn Sie alle gemacht haben.

exercise-half-fist-in-splint-name = Eine lockere halbe Faust machen
exercise-half-fist-in-splint-start = Lassen Sie die Schiene an. Öffnen Sie nur die Gurte, die Ihr Therapeut gezeigt hat.
exercise-half-fist-in-splint-step-1 = Beugen Sie die Finger locker, halb zur Handfläche hin.
exercise-half-fist-in-splint-step-2 = Halten Sie { $hold }. Drücken Sie nicht zu.
exercise-half-fist-in-splint-step-3 = Strecken Sie die Finger, bis sie die Schiene berühren.
exercise-half-fist-in-splint-step-4 = Schließen Sie die Gurte wieder, wenn Sie alle gemacht haben.

exercise-place-and-hold-name = Die Finger hinlegen und halten
exercise-place-and-hold-start = Stützen Sie den Ellenbogen auf einen Tisch. Bewegen Sie nur so weit, wie Ihr Therapeut es gezeigt hat.
exercise-place-and-hold-step-1 = Krümmen Sie die Finger locker mit der anderen Hand.
exercise-place-and-hold-step-2 = Nehmen Sie die andere Hand weg.
exercise-place-and-hold-step-3 = Halten Sie die Finger dort locker, { $hold } lang. Drücken Sie nicht zu.
exercise-place-and-hold-step-4 = Lassen Sie die Finger locker.

exercise-yoke-bend-name = Die Finger in der Schiene beugen
exercise-yoke-bend-start = Stützen Sie den Ellenbogen auf einen Tisch, die Finger nach oben. Lassen Sie die Schiene an. Lassen Sie das Handgelenk nicht nach vorn sinken.
exercise-yoke-bend-step-1 = Beugen Sie alle Finger, so weit die Schiene es zulässt.
exercise-yoke-bend-step-2 = Halten Sie { $hold }.
exercise-yoke-bend-step-3 = Strecken Sie alle Finger.

## Stretches of a finger

exercise-helped-curl-stretch-name = Den Finger mit Hilfe krümmen
exercise-helped-curl-stretch-start = Legen Sie die Hand auf einen Tisch, die Handfläche nach oben.
exercise-helped-curl-stretch-step-1 = Krümmen Sie den behandelten Finger langsam mit der anderen Hand.
exercise-helped-curl-stretch-step-2 = Halten Sie an, wenn Sie einen sanften Zug spüren.
exercise-helped-curl-stretch-step-3 = Halten Sie { $hold }.
exercise-helped-curl-stretch-step-4 = Lassen Sie langsam los.

exercise-helped-straighten-stretch-name = Den Finger mit Hilfe strecken
exercise-helped-straighten-stretch-start = Legen Sie den Handrücken auf einen Tisch. Halten Sie den behandelten Finger mit der anderen Hand zwischen dem großen Knöchel und dem Mittelgelenk.
exercise-helped-straighten-stretch-step-1 = Drücken Sie das Mittelgelenk sanft in Richtung gerade.
exercise-helped-straighten-stretch-step-2 = Halten Sie an, wenn Sie einen sanften Zug spüren.
exercise-helped-straighten-stretch-step-3 = Halten Sie { $hold }.
exercise-helped-straighten-stretch-step-4 = Lassen Sie langsam los.

exercise-intrinsic-stretch-name = Den Finger krümmen, Knöchel gerade
exercise-intrinsic-stretch-start = Stützen Sie den Ellenbogen auf einen Tisch, die Finger nach oben.
exercise-intrinsic-stretch-step-1 = Halten Sie den großen Knöchel des behandelten Fingers gerade.
exercise-intrinsic-stretch-step-2 = Beugen Sie mit der anderen Hand sein Mittelgelenk und seine Spitze.
exercise-intrinsic-stretch-step-3 = Halten Sie an, wenn Sie einen sanften Zug spüren.
exercise-intrinsic-stretch-step-4 = Halten Sie { $hold }.
exercise-intrinsic-stretch-step-5 = Lassen Sie langsam los.

## Thumb

exercise-thumb-bend-across-name = Den Daumen quer über die Handfläche beugen
exercise-thumb-bend-across-start = Legen Sie die Hand auf einen Tisch, die Handfläche nach oben.
exercise-thumb-bend-across-step-1 = Beugen Sie den Daumen langsam quer über die Handfläche.
exercise-thumb-bend-across-step-2 = Halten Sie { $hold }.
exercise-thumb-bend-across-step-3 = Strecken Sie den Daumen.

exercise-thumb-web-release-name = Die Haut neben dem Daumen lockern
exercise-thumb-web-release-start = Legen Sie die Hand mit der Seite des kleinen Fingers auf einen Tisch.
exercise-thumb-web-release-step-1 = Reiben Sie sanft die Haut zwischen Daumen und Zeigefinger.
exercise-thumb-web-release-step-2 = Halten Sie den Daumen mit der anderen Hand zwischen seinem Knöchel und dem Handgelenk.
exercise-thumb-web-release-step-3 = Ziehen Sie den Daumen sanft von der Handfläche weg.
exercise-thumb-web-release-step-4 = Halten Sie { $hold }.
exercise-thumb-web-release-step-5 = Lassen Sie langsam los.

exercise-thumb-wrist-slow-lower-name = Die Hand langsam senken, Daumen oben
exercise-thumb-wrist-slow-lower-start = Legen Sie den Unterarm mit der Seite des kleinen Fingers auf einen Tisch. Halten Sie das kleine Gewicht, das Ihr Therapeut gewählt hat. Machen Sie das nur jeden zweiten Tag.
exercise-thumb-wrist-slow-lower-step-1 = Heben Sie die Hand mit der anderen Hand zur Daumenseite hin.
exercise-thumb-wrist-slow-lower-step-2 = Nehmen Sie die andere Hand weg.
exercise-thumb-wrist-slow-lower-step-3 = Lassen Sie die Hand langsam sinken. Nehmen Sie sich dafür { $hold } Zeit.

## Nerves

exercise-thumb-side-nerve-slide-name = Den Nerv an der Daumenseite gleiten lassen
exercise-thumb-side-nerve-slide-start = Setzen Sie sich, der Ellenbogen ist gebeugt, das Handgelenk gerade.
exercise-thumb-side-nerve-slide-step-1 = Machen Sie eine lockere Faust.
exercise-thumb-side-nerve-slide-step-2 = Strecken Sie die Finger. Lassen Sie den Daumen neben ihnen.
exercise-thumb-side-nerve-slide-step-3 = Beugen Sie das Handgelenk sanft nach hinten.
exercise-thumb-side-nerve-slide-step-4 = Bewegen Sie den Daumen zur Seite hinaus.
exercise-thumb-side-nerve-slide-step-5 = Drehen Sie die Handfläche nach oben.
exercise-thumb-side-nerve-slide-step-6 = Halten Sie jede Stellung { $hold }. Dann kommt die nächste.

exercise-little-finger-nerve-slide-name = Den Nerv am kleinen Finger gleiten lassen
exercise-little-finger-nerve-slide-start = Strecken Sie den Arm zur Seite, die Handfläche nach oben.
exercise-little-finger-nerve-slide-step-1 = Beugen Sie den Ellenbogen halb. Beugen Sie dabei das Handgelenk zur Handfläche hin.
exercise-little-finger-nerve-slide-step-2 = Halten Sie { $hold }.
exercise-little-finger-nerve-slide-step-3 = Strecken Sie den Ellenbogen. Beugen Sie dabei das Handgelenk sanft zum Handrücken hin.
exercise-little-finger-nerve-slide-step-4 = Halten Sie { $hold }.

## Strength

exercise-wrist-press-still-name = Drücken, ohne das Handgelenk zu bewegen
exercise-wrist-press-still-start = Legen Sie den Unterarm auf einen Tisch, die Handfläche nach unten, die Hand über den Rand.
exercise-wrist-press-still-step-1 = Legen Sie die andere Hand auf den Handrücken.
exercise-wrist-press-still-step-2 = Drücken Sie sanft nach oben dagegen. Das Handgelenk darf sich nicht bewegen.
exercise-wrist-press-still-step-3 = Halten Sie { $hold }.
exercise-wrist-press-still-step-4 = Entspannen Sie die Hand.
exercise-wrist-press-still-step-5 = Beim nächsten Mal legen Sie die andere Hand unter die Handfläche und drücken nach unten darauf.

exercise-putty-grip-name = Weiche Knete drücken
exercise-putty-grip-start = Legen Sie ein Stück weiche Knete in die Handfläche.
exercise-putty-grip-step-1 = Drücken Sie sie sanft mit Fingern und Daumen.
exercise-putty-grip-step-2 = Halten Sie { $hold }.
exercise-putty-grip-step-3 = Lassen Sie langsam los.
exercise-putty-grip-step-4 = Rollen Sie die Knete wieder zu einem Klumpen.

exercise-three-point-pinch-name = Weiche Knete greifen, runde Form
exercise-three-point-pinch-start = Nehmen Sie ein kleines Stück weiche Knete.
exercise-three-point-pinch-step-1 = Halten Sie es zwischen Daumen, Zeigefinger und Mittelfinger.
exercise-three-point-pinch-step-2 = Halten Sie jedes Gelenk ein wenig gebeugt.
exercise-three-point-pinch-step-3 = Drücken Sie die Knete sanft zusammen.
exercise-three-point-pinch-step-4 = Halten Sie { $hold }.
exercise-three-point-pinch-step-5 = Lassen Sie langsam los.

exercise-key-pinch-putty-name = Weiche Knete greifen wie einen Schlüssel
exercise-key-pinch-putty-start = Nehmen Sie ein kleines Stück weiche Knete.
exercise-key-pinch-putty-step-1 = Halten Sie es zwischen Daumen und Seite des Zeigefingers.
exercise-key-pinch-putty-step-2 = Drücken Sie die Knete sanft zusammen.
exercise-key-pinch-putty-step-3 = Halten Sie { $hold }.
exercise-key-pinch-putty-step-4 = Lassen Sie langsam los.

exercise-wrist-slow-lower-name = Die Hand langsam senken, Handfläche unten
exercise-wrist-slow-lower-start = Legen Sie den Unterarm auf einen Tisch, die Handfläche nach unten, die Hand über den Rand. Halten Sie das kleine Gewicht, das Ihr Therapeut gewählt hat.
exercise-wrist-slow-lower-step-1 = Heben Sie die Hand mit Hilfe der anderen Hand.
exercise-wrist-slow-lower-step-2 = Nehmen Sie die andere Hand weg.
exercise-wrist-slow-lower-step-3 = Lassen Sie die Hand langsam sinken. Nehmen Sie sich dafür { $hold } Zeit.

exercise-hand-lean-name = Sich auf die Hand stützen
exercise-hand-lean-start = Stellen Sie sich vor eine Wand. Nehmen Sie einen Tisch oder den Boden nur, wenn Ihr Therapeut es sagt.
exercise-hand-lean-step-1 = Legen Sie beide Handflächen an die Wand.
exercise-hand-lean-step-2 = Lehnen Sie sich langsam vor, bis Sie Gewicht auf den Händen spüren.
exercise-hand-lean-step-3 = Halten Sie { $hold }.
exercise-hand-lean-step-4 = Drücken Sie sich langsam zurück.

## Skin, scar, feeling and tightness

exercise-stroke-towards-heart-name = Den Arm zum Herzen hin streichen
exercise-stroke-towards-heart-start = Legen Sie den Arm auf Kissen, die Hand höher als der Ellenbogen.
exercise-stroke-towards-heart-step-1 = Legen Sie die andere Hand auf die Fingerspitzen.
exercise-stroke-towards-heart-step-2 = Streichen Sie leicht von den Fingerspitzen bis zum Ellenbogen.
exercise-stroke-towards-heart-step-3 = Lassen Sie die Schiene und wunde oder offene Haut aus.
exercise-stroke-towards-heart-step-4 = Machen Sie das { $hold } lang.

exercise-scar-massage-name = Die Narbe bewegen
exercise-scar-massage-start = Machen Sie das nur, wenn die Narbe geschlossen und trocken ist. Legen Sie die Hand auf einen Tisch.
exercise-scar-massage-step-1 = Legen Sie eine Fingerspitze der anderen Hand auf die Narbe.
exercise-scar-massage-step-2 = Drücken Sie fest, aber nicht so, dass es weh tut.
exercise-scar-massage-step-3 = Bewegen Sie die Haut in kleinen Kreisen.
exercise-scar-massage-step-4 = Bewegen Sie die Haut auf und ab, dann hin und her.
exercise-scar-massage-step-5 = Gehen Sie so die Narbe entlang, { $hold } lang.

exercise-texture-rub-name = Die Haut an Berührung gewöhnen
exercise-texture-rub-start = Machen Sie das nur auf geschlossener Haut. Legen Sie die Hand auf einen Tisch.
exercise-texture-rub-step-1 = Reiben Sie die empfindliche Haut leicht mit einem weichen Tuch.
exercise-texture-rub-step-2 = Machen Sie das { $hold } lang.
exercise-texture-rub-step-3 = Nehmen Sie ein raueres Tuch, wenn das weiche Sie nicht mehr stört.

exercise-touch-relearn-name = Wieder fühlen lernen
exercise-touch-relearn-start = Legen Sie die Hand auf einen Tisch. Nehmen Sie nichts Heißes, Kaltes oder Scharfes.
exercise-touch-relearn-step-1 = Berühren Sie die Fingerspitze mit einem kleinen Gegenstand und schauen Sie zu.
exercise-touch-relearn-step-2 = Schließen Sie die Augen und berühren Sie dieselbe Stelle.
exercise-touch-relearn-step-3 = Achten Sie darauf, wo Sie es fühlen und wie es sich anfühlt.
exercise-touch-relearn-step-4 = Öffnen Sie die Augen und vergleichen Sie.
exercise-touch-relearn-step-5 = Machen Sie an anderen Stellen weiter, { $hold } lang.

exercise-scar-hold-stretch-name = Die Narbe gedehnt halten
exercise-scar-hold-stretch-start = Machen Sie das nur, wenn die Narbe geschlossen und trocken ist.
exercise-scar-hold-stretch-step-1 = Bewegen Sie die Hand langsam, bis die Narbe spannt.
exercise-scar-hold-stretch-step-2 = Halten Sie { $hold }.
exercise-scar-hold-stretch-step-3 = Lassen Sie die Hand langsam zurückkommen.

exercise-tight-hand-slow-open-name = Die verkrampfte Hand langsam öffnen
exercise-tight-hand-slow-open-start = Legen Sie den Unterarm auf ein Kissen. Das Handgelenk darf sich nach vorn beugen. Ziehen Sie nie schnell.
exercise-tight-hand-slow-open-step-1 = Fassen Sie den Daumen an seinem Ansatz und ziehen Sie ihn langsam heraus.
exercise-tight-hand-slow-open-step-2 = Strecken Sie die Finger langsam mit der anderen Hand.
exercise-tight-hand-slow-open-step-3 = Bringen Sie das Handgelenk langsam nach hinten. Halten Sie die Finger gerade.
exercise-tight-hand-slow-open-step-4 = Hören Sie auf, sobald die Hand dagegen zu ziehen beginnt.
exercise-tight-hand-slow-open-step-5 = Halten Sie { $hold }.
exercise-tight-hand-slow-open-step-6 = Lassen Sie die Hand sich langsam schließen.
