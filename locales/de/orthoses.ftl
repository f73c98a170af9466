### Splints: names, straps, places to check, and the steps of putting on and taking off.
### “Hand that wears the splint” and “other hand” are used; left and right are never typed.

## Names
## The name stands inside sentences; the short form is a label in tables.

orthosis-forearm-thumb-spica-name = lange Daumenschiene
orthosis-forearm-thumb-spica-short = Unterarm und Daumen
orthosis-hand-thumb-spica-name = kurze Daumenschiene
orthosis-hand-thumb-spica-short = Hand und Daumen
orthosis-short-cmc-name = Schiene für den Daumenansatz
orthosis-short-cmc-short = Daumenansatz
orthosis-short-cmc-mcp-block-name = Schiene für Daumenansatz und Knöchel
orthosis-short-cmc-mcp-block-short = Daumenansatz und Knöchel
orthosis-soft-wrist-thumb-wrap-name = weiche Schiene für Handgelenk und Daumen
orthosis-soft-wrist-thumb-wrap-short = Weich, Handgelenk und Daumen
orthosis-soft-thumb-wrap-name = weiche Daumenschiene
orthosis-soft-thumb-wrap-short = Weich, Daumen
orthosis-wrist-only-name = Schiene für das Handgelenk
orthosis-wrist-only-short = Handgelenk

## Straps
## Each name is put into “Close the …” and “Undo the …”.

strap-wrist = Gurt am Handgelenk
strap-forearm = Gurt am Unterarm
strap-palm = Gurt an der Handfläche
strap-thumb = Gurt am Daumen
# A short splint ends at the wrist; this strap runs along that end.
strap-wrist-edge = Gurt neben dem Handgelenk

## Places to look at in the skin check

spot-wrist-bone-thumb-side = Knochen am Handgelenk, Daumenseite
spot-wrist-bone-little-finger-side = Knochen am Handgelenk, Seite des kleinen Fingers
spot-thumb-web = Haut zwischen Daumen und Zeigefinger
spot-thumb-knuckle = Rücken und Seiten des Daumenknöchels
spot-thumb-base = Knochen am Ansatz des Daumens
spot-palm-crease = Handfläche, wo die Schiene endet
spot-forearm-edge = Unterarm, wo die Schiene endet

## Putting it on
## One action a step. The other hand does the work.

step-wash-dry-hands = Waschen Sie die Hände und trocknen Sie sie gut.
step-check-lining = Prüfen Sie: Die Schiene ist innen sauber, trocken und glatt.
step-open-straps = Öffnen Sie alle Gurte.
step-rest-arm-on-table = Legen Sie den Unterarm auf einen Tisch.
step-slide-thumb-in = Schieben Sie den Daumen sanft hinein.
step-lay-hand-in = Legen Sie die Handfläche in die Schiene. Der Daumen bleibt draußen.
step-seat-at-wrist = Drücken Sie die Schiene an, bis ihr Knick am Handgelenk sitzt.
step-seat-at-thumb-base = Drücken Sie die Schiene rund um den Daumenansatz an, bis sie richtig sitzt.
step-smooth-the-wrap = Streichen Sie die Schiene glatt, sodass sie keine Falten hat.
# $strap is a strap's name, such as “wrist strap”.
step-close-strap = Schließen Sie den { $strap }.
step-check-strap-room = Prüfen Sie: Eine Fingerspitze der anderen Hand passt unter jeden Gurt.
step-check-wrist-bends = Prüfen Sie: Das Handgelenk kann sich beugen.
step-check-thumb-knuckle-bends = Prüfen Sie: Knöchel und Spitze des Daumens können sich beugen.
step-check-thumb-tip-bends = Prüfen Sie: Die Spitze des Daumens kann sich beugen.
step-check-fist = Prüfen Sie: Sie können eine Faust machen und den Daumen bewegen.
step-look-at-fingers = Schauen Sie Finger und Daumen an. Sie müssen warm bleiben und ihre übliche Farbe haben.

## Taking it off

# $strap is a strap's name, such as “wrist strap”.
step-undo-strap = Öffnen Sie den { $strap }.
step-lift-off = Heben Sie die Schiene ab. Zerren Sie nicht.
step-lift-off-thumb-side = Heben Sie die Schiene zur Daumenseite ab. Zerren Sie nicht.
step-lift-off-elbow-front = Heben Sie die Schiene vorn vom Ellenbogen ab. Zerren Sie nicht.
step-lift-out-of-thumb-web = Heben Sie die Schiene zwischen Daumen und Zeigefinger heraus.
step-lift-off-little-side = Heben Sie die Schiene zur Seite des kleinen Fingers ab. Zerren Sie nicht.
step-slide-off-thumb = Ziehen Sie die Schiene vom Daumen. Drehen Sie sie nicht.
step-look-at-skin = Schauen Sie Ihre Haut von allen Seiten an.
