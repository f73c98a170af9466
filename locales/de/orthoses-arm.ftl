### Splints of the thumb, the wrist and the arm, and of the whole hand: names, straps, places to check, and steps.
### What several splints share stands in orthoses.ftl. “Other hand” is the hand without the splint.
### Every name is feminine (die Schiene, die Spange). “Spange” is a band round the arm; “Band” is only a band in the body.

## Names of wrist splints
## The name stands inside sentences; the short form is a label in tables.

orthosis-wrist-neutral-name = gerade Schiene für das Handgelenk
orthosis-wrist-neutral-short = Handgelenk, gerade
orthosis-wrist-dorsal-shell-name = Handrücken-Schiene für das Handgelenk
orthosis-wrist-dorsal-shell-short = Handgelenk, Handrücken
orthosis-wrist-all-round-name = rundum feste Schiene für das Handgelenk
orthosis-wrist-all-round-short = Handgelenk, rundum
orthosis-wrist-soft-stay-name = weiche Schiene mit Stab für das Handgelenk
orthosis-wrist-soft-stay-short = Weich, Handgelenk, mit Stab
orthosis-wrist-soft-wrap-name = weiche Schiene für das Handgelenk
orthosis-wrist-soft-wrap-short = Weich, Handgelenk

## Names of thumb splints

orthosis-forearm-thumb-spica-tip-name = lange Daumenschiene bis zur Spitze
orthosis-forearm-thumb-spica-tip-short = Unterarm und ganzer Daumen
orthosis-thumb-knuckle-shell-name = Schiene für den Knöchel des Daumens
orthosis-thumb-knuckle-shell-short = Daumenknöchel
orthosis-thumb-mcp-ring-name = Ringschiene für den Daumen
orthosis-thumb-mcp-ring-short = Daumenring
orthosis-thumb-tip-cap-name = Schiene für die Daumenspitze
orthosis-thumb-tip-cap-short = Daumenspitze
# It keeps the space between thumb and index finger open.
orthosis-thumb-web-spacer-name = Schiene für den Raum neben dem Daumen
orthosis-thumb-web-spacer-short = Raum neben dem Daumen
# Its roof keeps the thumb from straightening too far.
orthosis-thumb-dorsal-block-name = Schutzschiene für den Daumen
orthosis-thumb-dorsal-block-short = Daumenschutz
# It holds the thumb up, away from the palm.
orthosis-thumb-raised-long-name = Schiene, die den Daumen oben hält
orthosis-thumb-raised-long-short = Daumen oben

## Names of arm splints and bands

orthosis-long-arm-rotation-name = lange Armschiene
orthosis-long-arm-rotation-short = Ellenbogen bis Hand
orthosis-elbow-night-shell-name = Ellenbogenschiene für die Nacht
orthosis-elbow-night-shell-short = Ellenbogen, Nacht
orthosis-counterforce-band-name = Spange für den Unterarm
orthosis-counterforce-band-short = Unterarm, Spange
orthosis-distal-ulna-strap-name = feste Spange für das Handgelenk
orthosis-distal-ulna-strap-short = Handgelenk, Spange

## Names of splints for wrist and fingers

# Cords join wrist and fingers, so that each helps the other to move.
orthosis-tenodesis-assist-name = Hilfsschiene für Handgelenk und Finger
orthosis-tenodesis-assist-short = Hilfe, Handgelenk und Finger
# Elastic pulls lift the fingers at the big knuckles.
orthosis-dynamic-knuckle-extension-name = Schiene, die die Finger hebt
orthosis-dynamic-knuckle-extension-short = Hebt die Finger
orthosis-palm-shell-wrist-knuckles-name = Schiene für Handgelenk und Knöchel
orthosis-palm-shell-wrist-knuckles-short = Handgelenk und Knöchel
orthosis-resting-hand-name = Ruheschiene für die Hand
orthosis-resting-hand-short = Hand, in Ruhe
orthosis-intrinsic-plus-shell-name = Handschiene mit gebeugten Knöcheln
orthosis-intrinsic-plus-shell-short = Hand, Knöchel gebeugt
orthosis-palm-extension-pan-name = Schiene für die offene Handfläche
orthosis-palm-extension-pan-short = Offene Handfläche
orthosis-spread-hand-cushion-name = weiche Kissenschiene für die Hand
orthosis-spread-hand-cushion-short = Handkissen

## Straps
## Each name is put into “Close the …” and “Undo the …”.

strap-near-elbow = Gurt nahe am Ellenbogen
strap-upper-arm = Gurt am Oberarm
strap-hand-back = Gurt quer über den Handrücken
strap-across-fingers = Gurt quer über die Finger
strap-across-fingertips = Gurt nahe an den Fingerspitzen
# A band has one strap, which pulls it snug.
strap-band = Gurt der Spange

## Places to look at in the skin check

spot-wrist-palm-side = Handgelenk, auf der Seite der Handfläche
spot-wrist-back = Rücken des Handgelenks
spot-forearm-thumb-side = Daumenseite des Unterarms, gleich oberhalb des Handgelenks
spot-knuckle-backs = Rücken der großen Knöchel
spot-middle-joint-backs = Rücken der Mittelgelenke der Finger
spot-palm-below-knuckles = Handfläche, gleich unterhalb der Finger
spot-palm-middle = Mitte der Handfläche
spot-splint-end-at-fingers = Finger, wo die Schiene endet
spot-between-fingers = Haut zwischen den Fingern
spot-fingertips = Fingerspitzen
spot-hand-edge-little-finger = Rand der Hand an der Seite des kleinen Fingers
spot-loop-edges = Haut unter den Fingerschlaufen
spot-thumb-hole = Haut um das Daumenloch
spot-thumb-ball = dicker Teil der Handfläche unter dem Daumen
spot-thumb-pad = weiche Kuppe des Daumens
spot-thumb-tip-joint-back = Rücken des Endgelenks am Daumen
spot-thumbnail-edge = Haut um den Daumennagel
spot-ring-crossing = Haut, wo sich der Ring kreuzt
spot-bar-end-in-palm = Handfläche, wo der steife Stab endet
spot-wrap-edge = Haut an den Rändern des weichen Teils
spot-forearm-under-band = Unterarm unter der Spange
spot-band-pad = Haut unter dem Polster der Spange
spot-elbow-point = Spitze des Ellenbogens
spot-elbow-inner-groove = Rinne an der Innenseite des Ellenbogens
spot-elbow-crease = Falte vorn am Ellenbogen
spot-upper-arm-edge = Oberarm, wo die Schiene endet

## Getting ready
## One action a step. The other hand does the work.

step-wash-other-hand = Waschen Sie die andere Hand und trocknen Sie sie gut.
# For a splint that may only be changed by two people.
step-wait-for-helper = Tun Sie das nicht allein. Warten Sie auf Ihre geschulte Hilfe.
step-ask-helper-if-possible = Bitten Sie jemanden um Hilfe, wenn Sie können.
step-loop-straps-first = Stecken Sie jeden Gurt durch seine Schlaufe, bevor Sie anfangen.
step-lay-open-on-table = Legen Sie die offene Schiene auf einen Tisch.
step-hold-between-knees = Halten Sie die offene Schiene zwischen den Knien.
step-lay-opening-towards-you = Legen Sie die Schiene auf einen Tisch, die Öffnung zu Ihnen hin.
step-palm-down-on-table = Legen Sie die Handfläche auf einen Tisch.
step-sit-at-table = Setzen Sie sich an einen Tisch.

## Wrist splints: putting them on and taking them off

step-lay-splint-on-back = Legen Sie die Schiene auf den Handrücken und die Rückseite des Unterarms.
# With one hand: the splint lies on the table with its hollow side up.
step-lay-back-of-arm-in = Legen Sie den Handrücken und die Rückseite des Unterarms hinein.
step-press-into-splint = Drücken Sie den Arm sanft nach unten in die Schiene.
step-pull-splint-open = Ziehen Sie die Schiene ein wenig auf.
step-slip-wrist-in = Schieben Sie das Handgelenk von der Seite hinein.
step-slip-wrist-out = Ziehen Sie das Handgelenk heraus. Verdrehen Sie es nicht.
# The bar is a flat stiff strip inside a soft splint.
step-bar-on-palm-side = Drehen Sie die Schiene so, dass ihr Stab zur Handfläche zeigt.
step-slide-hand-in = Schieben Sie die Hand in die Schiene.
step-thumb-through-hole = Stecken Sie den Daumen durch sein Loch.
step-slide-off-hand = Ziehen Sie die Schiene von der Hand. Zerren Sie nicht.
step-wrap-round-wrist = Legen Sie die Schiene um das Handgelenk.
step-lay-wrist-on-wrap = Legen Sie das Handgelenk auf die Mitte der Schiene.
step-hold-wrap-on-table = Drücken Sie die Hand auf einen Tisch, damit die Schiene nicht rutscht.
step-unwrap = Öffnen Sie die Schiene. Ziehen Sie sie nicht herunter.

## Thumb splints: putting them on and taking them off

step-push-on-with-table-edge = Drücken Sie die Schiene sanft gegen eine Tischkante, bis sie richtig sitzt.
step-keep-thumb-beside-index = Lassen Sie den Daumen neben dem Zeigefinger.
step-slide-over-thumb = Schieben Sie die Schiene über den Daumen.
step-seat-at-thumb-knuckle = Drücken Sie die Schiene rund um den Knöchel des Daumens an, bis sie richtig sitzt.
step-check-thumb-tip-lies-in = Prüfen Sie: Die Spitze des Daumens liegt in der Schiene.
step-bend-thumb-a-little = Beugen Sie den Daumen ein wenig.
step-slide-ring-on = Schieben Sie den Ring über den Daumen bis zu seinem Knöchel.
# The therapist puts a mark on the ring.
step-turn-ring-to-mark = Drehen Sie den Ring, bis seine Marke auf dem Rücken des Daumens liegt.
step-check-thumb-stops = Strecken Sie den Daumen. Der Ring muss verhindern, dass er sich nach hinten biegt.
step-slide-ring-off = Ziehen Sie den Ring ab. Klemmt er, hilft Seifenwasser.
step-rest-thumb-tip-flat = Legen Sie die Kuppe des Daumens flach auf einen Tisch.
step-slide-on-from-tip = Schieben Sie die Schiene von der Spitze her auf. Halten Sie die Spitze flach.
step-push-thumb-in-flat = Schieben Sie den Daumen flach auf dem Tisch in die Schiene.
step-check-thumb-tip-straight = Prüfen Sie: Die Spitze des Daumens liegt gerade.
step-check-thumb-big-knuckle-bends = Prüfen Sie: Der große Knöchel des Daumens kann sich beugen.
step-slide-off-tip-flat = Ziehen Sie die Schiene ab. Halten Sie die Spitze flach auf dem Tisch.
step-look-at-skin-tip-flat = Schauen Sie Ihre Haut an. Halten Sie die Spitze flach auf dem Tisch.
step-set-between-thumb-and-index = Setzen Sie die Schiene zwischen Daumen und Zeigefinger.

## Splints that guard a mended thumb: the thumb never leaves its position

step-rest-hand-curled-on-towel = Legen Sie die Hand auf ein gerolltes Handtuch, Handgelenk gebeugt und Finger gekrümmt.
step-keep-thumb-loosely-bent = Halten Sie den Daumen die ganze Zeit locker gebeugt.
# The roof is the part of the splint along the back of the thumb.
step-check-thumb-under-roof = Prüfen Sie: Der ganze Daumen liegt unter dem Dach.
step-rest-thumb-up-on-towel = Legen Sie die Hand auf ein Handtuch, der Daumen oben.
step-keep-thumb-raised = Halten Sie den Daumen die ganze Zeit oben.
step-lay-splint-along-thumb-side = Legen Sie die Schiene an die Daumenseite des Unterarms.
step-check-thumb-straight-in-splint = Prüfen Sie: Der ganze Daumen liegt gerade in der Schiene.

## Arm splints and bands

step-turn-hand-as-splint = Drehen Sie die Hand so, wie die Schiene geformt ist.
step-lay-whole-arm-in = Legen Sie den Arm in die Schiene, der Ellenbogen ist gebeugt.
step-elbow-in-hollow = Die Spitze des Ellenbogens soll in ihrer Mulde liegen.
step-keep-hand-turned = Halten Sie die Hand weiter so gedreht.
step-bend-elbow-as-splint = Beugen Sie den Ellenbogen so weit, wie die Schiene gebogen ist.
step-lay-splint-on-elbow-front = Legen Sie die Schiene vorn an den Ellenbogen.
step-check-elbow-point-free = Prüfen Sie: Nichts drückt auf die Spitze des Ellenbogens.
step-slide-band-up = Schieben Sie die offene Spange den Unterarm hinauf.
step-seat-band-below-elbow = Legen Sie die Spange unterhalb des Ellenbogens an, wo der Unterarm am dicksten ist.
step-pad-on-sore-side = Drehen Sie das Polster zur schmerzenden Seite des Arms.
step-check-no-tingling = Machen Sie eine Faust. Die Hand darf nicht kribbeln.
step-slide-band-over-hand = Schieben Sie die offene Spange über die Hand.
step-seat-band-at-wrist-bone = Legen Sie die Spange über den runden Knochen am Handgelenk.
step-slide-band-off = Ziehen Sie die Spange ab. Zerren Sie nicht.

## Splints with loops for the fingers

step-fingers-through-loops = Stecken Sie jeden Finger durch seine Schlaufe.
step-loops-beside-knuckles = Schieben Sie jede Schlaufe nah an den großen Knöchel.
step-fingers-out-of-loops = Nehmen Sie jeden Finger aus seiner Schlaufe.
step-check-fist-lifts-wrist = Machen Sie eine lockere Faust. Das Handgelenk muss sich heben.
# A pull is an elastic cord between a loop and the frame.
step-hook-on-pulls = Haken Sie den Gummizug jeder Schlaufe am Rahmen ein.
step-unhook-pulls = Haken Sie den Gummizug jeder Schlaufe aus.
step-check-fingers-bend-against-pull = Prüfen Sie: Die Finger können sich gegen den Zug beugen.

## Splints for the whole hand

step-keep-wrist-up-fingers-straight = Halten Sie das Handgelenk oben und die Finger gerade.
step-hand-on-towel-fingers-straight = Legen Sie die Hand auf ein gerolltes Handtuch, die Finger gerade.
step-check-middle-joints-bend = Prüfen Sie: Die Mittelgelenke der Finger können sich beugen.
step-lay-forearm-in = Legen Sie den Unterarm in die Schiene.
step-thumb-on-its-rest = Legen Sie den Daumen an seinen eigenen Platz.
step-fingers-on-rest = Legen Sie die Finger nebeneinander auf die Schiene.
step-bend-big-knuckles = Beugen Sie die großen Knöchel. Lassen Sie die Finger gerade.
step-keep-big-knuckles-bent = Halten Sie die großen Knöchel gebeugt und die Finger gerade.
step-fingers-flat-on-splint = Legen Sie jeden Finger flach an die Schiene.
step-check-middle-joints-straight = Prüfen Sie: Die Mittelgelenke der Finger sind gerade.
step-spread-fingers-in-grooves = Legen Sie jeden Finger gerade in seine eigene Rinne.
step-let-hand-go-loose = Lassen Sie die Hand so locker, wie es geht.
step-open-hand-slowly = Öffnen Sie die Hand langsam. Erzwingen Sie nichts.
step-lay-hand-on-cushion = Legen Sie Handfläche und Unterarm auf das Kissen.
step-fingers-in-gaps = Legen Sie jeden Finger in seine eigene Lücke.
step-dry-palm-and-gaps = Trocknen Sie die Handfläche und die Haut zwischen den Fingern.
