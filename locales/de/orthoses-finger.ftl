### Splints of the fingers and the hand: names, straps, places to check, and the steps of putting on and taking off.
### “Your finger” is the finger that the splint is for; where several fingers are in it, that one is “the treated finger”.
### The joints of a finger are the big knuckle, the middle joint and the tip. Left and right are never typed.

## Names
## The name stands inside sentences; the short form is a label in tables.

orthosis-tip-shell-custom-name = Schiene für die Fingerspitze
orthosis-tip-shell-custom-short = Fingerspitze
orthosis-tip-shell-ready-name = fertig gekaufte Schiene für die Fingerspitze
orthosis-tip-shell-ready-short = Fingerspitze, fertig
orthosis-tip-cast-name = Gipsschiene für die Fingerspitze
orthosis-tip-cast-short = Gips, Fingerspitze
orthosis-finger-gutter-middle-joint-name = Fingerschiene für das Mittelgelenk
orthosis-finger-gutter-middle-joint-short = Mittelgelenk
orthosis-finger-gutter-long-name = Schiene für den ganzen Finger
orthosis-finger-gutter-long-short = Ganzer Finger
orthosis-ring-stops-bending-back-name = Ringschiene gegen das Biegen nach hinten
orthosis-ring-stops-bending-back-short = Ring, nicht nach hinten
orthosis-ring-keeps-straight-name = Ringschiene, die den Finger gerade hält
orthosis-ring-keeps-straight-short = Ring, hält gerade
orthosis-serial-finger-cast-name = Gipsschiene, die den Finger streckt
orthosis-serial-finger-cast-short = Gips, streckt den Finger
orthosis-spring-finger-extension-name = Fingerschiene mit Feder
orthosis-spring-finger-extension-short = Finger, Feder
orthosis-finger-wedge-stepped-name = Fingerschiene mit Keil
orthosis-finger-wedge-stepped-short = Finger, Keil
orthosis-finger-extension-block-name = Fingerschiene mit Dach
orthosis-finger-extension-block-short = Finger, Dach
orthosis-buddy-straps-name = Zwei-Finger-Schiene aus Gurten
orthosis-buddy-straps-short = Zwei-Finger-Gurte
orthosis-knuckle-block-name = Knöchelschiene für einen Finger
orthosis-knuckle-block-short = Knöchel, ein Finger
orthosis-trigger-ring-name = Ringschiene für das Mittelgelenk
orthosis-trigger-ring-short = Ring, Mittelgelenk
orthosis-relative-extension-yoke-name = Stegschiene, die einen Finger hebt
orthosis-relative-extension-yoke-short = Steg, Finger höher
orthosis-relative-flexion-yoke-name = Stegschiene, die einen Finger senkt
orthosis-relative-flexion-yoke-short = Steg, Finger tiefer
orthosis-dorsal-block-long-name = lange Schiene für den Handrücken
orthosis-dorsal-block-long-short = Handrücken, lang
orthosis-dorsal-block-short-name = kurze Schiene für den Handrücken
orthosis-dorsal-block-short-short = Handrücken, kurz
orthosis-ulnar-gutter-name = lange Schiene für Ringfinger und kleinen Finger
orthosis-ulnar-gutter-short = Ring-, kleiner Finger, Handgelenk
orthosis-knuckle-shell-ring-little-name = Knöchelschiene für Ringfinger und kleinen Finger
orthosis-knuckle-shell-ring-little-short = Knöchel, Ring- und kleiner Finger
orthosis-metacarpal-sleeve-name = Hülsenschiene für die Mittelhand
orthosis-metacarpal-sleeve-short = Hülse, Mittelhand
orthosis-phalanx-gutter-pair-name = Schiene für zwei Finger
orthosis-phalanx-gutter-pair-short = Zwei Finger
orthosis-night-finger-extension-name = Fingerschiene für die Nacht
orthosis-night-finger-extension-short = Finger, Nacht
orthosis-drift-strap-name = weiche Gurtschiene für die Knöchel
orthosis-drift-strap-short = Weiche Knöchelgurte
orthosis-knuckle-extension-block-name = Knöchelschiene mit Steg
orthosis-knuckle-extension-block-short = Knöchel, Steg

## Straps
## Each name is put into “Close the …” and “Undo the …”.

strap-finger-tape = Gurt aus Klebeband
strap-finger-base = Gurt am Ansatz des Fingers
strap-finger-past-middle-joint = Gurt gleich hinter dem Mittelgelenk, zur Fingerspitze hin
strap-finger-end = Gurt nahe der Fingerspitze
# Buddy straps hold a finger to its neighbour.
strap-finger-pair-base = Gurt am Ansatz beider Finger
strap-finger-pair-end = Gurt hinter den Mittelgelenken beider Finger, zur Fingerspitze hin
# In a shell that holds a finger and its neighbour.
strap-finger-pair = Gurt um beide Finger
# Across all four fingers, under a roof on the back of the hand.
strap-finger-row = Gurt quer über die Finger
strap-finger-loops = Gurt mit Fingerschlaufen

## Places to look at in the skin check

spot-finger-end-joint-back = Rücken des Gelenks nahe der Fingerspitze
spot-finger-nail-skin = Haut um den Nagel
spot-finger-pad-sides = Seiten der Fingerkuppe
spot-finger-sides = beide Seiten des Fingers
spot-finger-sides-near-base = beide Seiten des Fingers, nahe am Ansatz
spot-finger-middle-joint-back = Rücken des Mittelgelenks
spot-finger-middle-joint-backs = Rücken der Mittelgelenke
spot-ring-little-middle-joint-backs = Rücken der Mittelgelenke
spot-finger-joint-creases = Falten auf der Handflächenseite des Fingers
spot-finger-web = Haut, wo die Finger an die Handfläche grenzen
spot-finger-between = Haut zwischen den Fingern
spot-finger-under-ring = Haut unter dem Ring
spot-finger-cast-edges = Haut an beiden Rändern des Gipses
spot-finger-tip-cast-edges = Haut an beiden Rändern des Gipses
spot-finger-base-front = Handflächenseite des Fingers, nahe am Ansatz
spot-finger-first-bone-back = Rücken des Fingers, neben dem großen Knöchel
spot-finger-knuckle-backs = Rücken der großen Knöchel
spot-ring-little-knuckle-backs = Rücken der großen Knöchel
spot-finger-hand-edge = Rand der Hand an der Seite des kleinen Fingers
spot-finger-wrist-back-edge = Rücken des Handgelenks, wo die Schiene endet
spot-finger-over-break = Haut über dem gebrochenen Knochen
spot-finger-wound-line = Wunde oder Narbe

## Fingertip splints
## The tip must not bend while it heals: it lies on the table from before the strap opens until it is closed again.

step-finger-tip-on-table = Legen Sie den Finger flach auf einen Tisch, die Spitze gerade.
step-finger-dry-on-table = Trocknen Sie den Finger mit einem Handtuch. Halten Sie die Spitze flach.
step-finger-slide-on-from-tip = Schieben Sie die Schiene von der Spitze her auf. Halten Sie den Finger gerade.
step-finger-lift-when-closed = Heben Sie den Finger erst, wenn die Schiene geschlossen ist.
step-finger-check-tip-straight = Prüfen Sie: Die Spitze liegt gerade und fest in der Schiene.
step-finger-lay-out-towel = Legen Sie ein Handtuch auf den Tisch, bevor Sie etwas öffnen.
step-finger-slide-off-forwards = Ziehen Sie die Schiene gerade über die Spitze ab. Kippen Sie sie nicht.
step-finger-tip-if-healing = Heilt die Spitze noch, lassen Sie sie flach auf dem Tisch.
step-finger-look-on-table = Schauen Sie die Haut an, während der Finger auf dem Tisch bleibt.

## Splints along a finger

step-finger-straight-on-table = Legen Sie den Finger auf einen Tisch, so gerade es geht.
step-finger-push-to-base = Schieben Sie die Schiene auf, bis sie den Ansatz des Fingers erreicht.
step-finger-slide-on = Schieben Sie die Schiene sanft von der Spitze her auf.
step-finger-straps-off-joints = Prüfen Sie: Kein Gurt liegt über einem Gelenk.
step-finger-check-tip-bends = Prüfen Sie: Die Spitze des Fingers kann sich beugen.
step-finger-check-middle-joint-bends = Prüfen Sie: Das Mittelgelenk des Fingers kann sich beugen.
step-finger-check-knuckle-bends = Prüfen Sie: Der große Knöchel des Fingers kann sich beugen.
step-finger-middle-if-healing = Heilt das Mittelgelenk noch, lassen Sie es flach auf dem Tisch.
step-finger-straight-if-healing = Heilt der Finger noch, lassen Sie ihn gerade auf dem Tisch.

## A roof that stops a finger from straightening

step-finger-bend-slightly = Beugen Sie das Mittelgelenk des Fingers ein wenig.
step-finger-roof-on-finger = Legen Sie die Schiene auf den Rücken des Fingers.
step-finger-check-stops-short = Prüfen Sie: Das Dach verhindert, dass sich der Finger zu weit streckt.
step-finger-bent-if-healing = Heilt das Mittelgelenk noch, halten Sie es ein wenig gebeugt.

## Springs and wedges
## The pull comes last when it goes on and first when it comes off.

step-finger-joint-at-spring = Legen Sie das Mittelgelenk an den Knick der Feder.
step-finger-spring-last = Lassen Sie die Feder langsam ziehen.
step-finger-hold-spring = Halten Sie die Feder, damit sie nicht zurückschnellt.
step-finger-wedge-back = Schieben Sie den Keil ganz zurück.
step-finger-wedge-in = Schieben Sie den Keil bis zu der Marke hinein, die Ihre Klinik gesetzt hat.
step-finger-check-mild-pull = Prüfen Sie: Der Zug ist leicht und tut nicht weh.

## Rings

step-finger-check-ring = Prüfen Sie: Der Ring ist sauber, trocken und nicht verbogen.
step-finger-keep-straight = Halten Sie den Finger gerade.
step-finger-slide-ring-on = Schieben Sie den Ring von der Spitze her auf.
step-finger-ring-cross-front = Drehen Sie den Ring, bis sein Kreuz unter dem Mittelgelenk liegt.
step-finger-ring-cross-back = Drehen Sie den Ring, bis sein Kreuz auf dem Rücken des Mittelgelenks liegt.
step-finger-ring-over-joint = Schieben Sie den Ring auf, bis er das Mittelgelenk bedeckt.
step-finger-check-full-bend = Prüfen Sie: Der Finger kann sich ganz beugen.
step-finger-check-not-back = Prüfen Sie: Das Mittelgelenk kann sich nicht nach hinten biegen.
step-finger-check-middle-joint-straight = Prüfen Sie: Das Mittelgelenk bleibt gerade.
step-finger-slide-ring-off = Ziehen Sie den Ring über die Spitze ab.
step-finger-ring-stuck = Klemmt der Ring, nehmen Sie etwas Seifenwasser.

## Casts
## Only the clinic puts a cast on and takes it off.

step-finger-cast-by-clinic = Lassen Sie den Gips nur von Ihrer Klinik anlegen.
step-finger-cast-cover = Decken Sie den Gips dicht mit einem Beutel ab, bevor Sie sich waschen.
step-finger-cast-look-at-edges = Schauen Sie die Haut an beiden Rändern des Gipses an.
step-finger-cast-off-by-clinic = Lassen Sie den Gips nur von Ihrer Klinik abnehmen.
step-finger-cast-no-cutting = Schneiden Sie den Gips nicht, ziehen Sie nicht daran und stochern Sie nicht darunter.
step-finger-cast-slips = Rutscht oder bricht er, halten Sie den Finger gerade und rufen Sie uns an.

## Buddy straps

step-finger-dry-between = Trocknen Sie die Haut gut, auch zwischen den Fingern.
step-finger-beside-neighbour = Legen Sie den Finger neben den Nachbarn, den Ihre Klinik gewählt hat.
step-finger-check-both-bend = Prüfen Sie: Beide Finger beugen sich zusammen.
step-finger-look-between = Schauen Sie die Haut von allen Seiten an, auch zwischen den Fingern.

## Knuckle splints for one finger

step-finger-push-into-ring = Schieben Sie den Finger in den Ring.
step-finger-palm-piece-flat = Legen Sie das Handstück flach in die Handfläche.

## Bar splints
## One finger lies higher or lower than its neighbours. In the first kind wrist and fingers must not drop.

step-finger-towel-roll = Legen Sie ein gerolltes Handtuch auf den Tisch.
step-finger-wrist-back-on-towel = Legen Sie die Hand auf das Handtuch, das Handgelenk nach hinten gebeugt.
step-finger-fingers-straight = Halten Sie die Finger gerade.
step-finger-yoke-on-top = Legen Sie den behandelten Finger oben auf den Steg.
step-finger-yoke-others-under = Schieben Sie die Finger daneben unter den Steg.
step-finger-yoke-below = Schieben Sie den behandelten Finger unter den Steg.
step-finger-yoke-others-over = Legen Sie die Finger daneben oben auf den Steg.
step-finger-yoke-to-base = Schieben Sie den Steg bis zum Ansatz der Finger.
step-finger-check-higher = Prüfen Sie: Der behandelte Finger liegt höher als seine Nachbarn.
step-finger-check-lower = Prüfen Sie: Der behandelte Finger liegt tiefer als seine Nachbarn.
step-finger-check-joints-beyond-bend = Prüfen Sie: Mittelgelenke und Spitzen können sich beugen.
step-finger-slide-off-fingers = Ziehen Sie die Schiene nach vorn von den Fingern.
step-finger-tendon-if-healing = Heilt eine Sehne noch, lassen Sie weder Handgelenk noch Finger herabhängen.

## Splints on the back of the hand
## For sewn bending tendons: wrist and fingers stay bent, and nobody straightens them.

step-finger-only-when-allowed = Folgen Sie diesen Schritten nur, wenn Ihre Klinik es erlaubt hat.
step-finger-curl-over-towel = Legen Sie die Hand über das Handtuch, Handgelenk gebeugt und Finger gekrümmt.
step-finger-roof-over-hand = Senken Sie die Schiene auf den Handrücken.
step-finger-check-under-roof = Prüfen Sie: Jede Fingerspitze liegt unter dem Dach.
step-finger-stay-curled = Lassen Sie die Finger gekrümmt. Strecken Sie sie nicht.
step-finger-look-while-curled = Schauen Sie die Haut an, während die Finger gekrümmt bleiben.

## Splints for broken bones

step-finger-pad-between = Legen Sie den weichen Streifen zwischen beide Finger.
step-finger-little-side-in = Legen Sie die Hand mit der Seite des kleinen Fingers in die Schiene.
step-finger-knuckles-in-bend = Prüfen Sie: Die großen Knöchel sitzen im Knick der Schiene.
step-finger-knuckles-bent-fingers-straight = Beugen Sie die großen Knöchel. Halten Sie die Finger gerade.
step-finger-check-not-crossed = Prüfen Sie: Kein Finger kreuzt seinen Nachbarn.
step-finger-knuckles-if-healing = Heilt ein Knochen noch, halten Sie die großen Knöchel gebeugt.
step-finger-sleeve-over-hand = Schieben Sie die Hülse über die Hand bis zum kranken Knochen.
step-finger-sleeve-behind-knuckles = Der vordere Rand der Hülse bleibt hinter den großen Knöcheln.
step-finger-slide-off-hand = Ziehen Sie die Schiene nach vorn von der Hand.

## Night splints, finger loops, knuckle bars

step-finger-rest-easy = Legen Sie den Finger hinein, nur so gerade, wie es leicht geht.
step-finger-check-no-pull = Prüfen Sie: Nichts zieht an der Haut.
step-finger-loops-on = Schieben Sie jeden Finger in seine Schlaufe.
step-finger-easy-pull = Ziehen Sie die Schlaufen nur so weit, wie es sich leicht anfühlt.
step-finger-check-in-line = Prüfen Sie: Die Finger zeigen gerade nach vorn.
step-finger-bend-knuckles-little = Beugen Sie die großen Knöchel ein wenig.
step-finger-under-bar = Schieben Sie Ringfinger und kleinen Finger unter den Steg.
step-finger-check-straighten = Prüfen Sie: Die Mittelgelenke können sich strecken.

## Putting it on with one hand
## There is no other hand: table, towel, book, thigh and the thumb of the same hand do the work.

step-finger-against-book = Legen Sie die offene Schiene auf einem Tisch an ein schweres Buch.
step-finger-slide-along-table = Schieben Sie den Finger flach auf dem Tisch in die Schiene.
step-finger-slide-in-easy = Schieben Sie den Finger auf dem Tisch in die Schiene.
step-finger-push-under-roof = Schieben Sie jeden Finger, der in der Schiene ist, unter ihr Dach.
step-finger-push-hand-in = Schieben Sie die Hand in die Hülse.
step-finger-own-thumb = Nehmen Sie für die Gurte den Daumen derselben Hand.
step-finger-upright-in-towel = Drücken Sie die Schiene aufrecht in ein gerolltes Handtuch.
step-finger-thumb-turns-ring = Nehmen Sie für den Ring den Daumen derselben Hand.
step-finger-wrist-stays-back = Halten Sie das Handgelenk nach hinten gebeugt.
step-finger-straps-as-loops = Schließen Sie zuerst jeden Gurt zu einer lockeren Schlaufe.
step-finger-through-loops = Schieben Sie beide Finger durch die Schlaufen.
step-finger-trap-strap-end = Klemmen Sie das Ende jedes Gurts unter den Oberschenkel und ziehen Sie sanft.
step-finger-cast-cover-with-knees = Halten Sie den Beutel zwischen den Knien und schieben Sie die Hand hinein.
step-finger-trained-helper = Das macht die Person, der Ihre Klinik es gezeigt hat. Tun Sie es nie allein.
