### More signs to watch for. Each is a clause or a short noun phrase without a full stop.
### It stands in a list under a heading such as “Call us today if:”.
### Printed only where a condition names the sign.

## Emergencies

sign-finger-snap = Sie spüren ein Reißen oder können plötzlich einen Finger oder Daumen nicht beugen oder nicht strecken
sign-tooth-cut-over-knuckle = Eine Wunde von einem Zahn über einem Knöchel wird rot, schwillt an oder tut weh
sign-finger-white-when-straight = Ein Finger wird weiß, wenn er gerade ist
sign-graft-pale-or-tight = Neue Haut an Ihrer Hand wird blass oder spannt tief innen

## Today

sign-tip-droops-again = Ihre Fingerspitze hängt wieder herab, oder sie hat sich ohne Stütze gebeugt
sign-middle-joint-bends-alone = Das Mittelgelenk Ihres Fingers hängt herab, oder es hat sich ohne Stütze gebeugt
sign-finger-cannot-straighten = Ein Finger fällt herab, und Sie können ihn nicht selbst strecken
sign-thumb-tip-will-not-lift = Sie können die Spitze Ihres Daumens nicht mehr heben
sign-finger-turns-over-neighbour = Ein Finger dreht sich oder legt sich über den daneben
sign-finger-locks = Ihr Finger oder Daumen klemmt fest und wird nicht gerade
sign-pin-loose = Ein Draht ist locker, verbogen oder gebrochen, oder sein Loch nässt
sign-joint-slips = Ein Gelenk springt heraus oder fühlt sich locker an
sign-wrist-clunks = Ihr Handgelenk knackt dumpf oder tut tief in der Mulde neben dem Daumen weh
sign-night-numbness-grows = Ihre Finger werden in mehr Nächten taub oder bleiben jetzt den ganzen Tag taub
sign-thumb-muscle-thinner = Der Muskelballen unter Ihrem Daumen wird dünner
sign-hand-muscle-thinner = Ihre Hand wird zwischen Daumen und Zeigefinger dünner
sign-little-finger-numb = Ihr kleiner Finger bleibt tauber als vorher
sign-elbow-band-tingles = Ihre Hand oder Ihr Unterarm kribbelt, während die Spange oder die Schiene an ist
sign-finger-stays-bent-more = Ein Finger bleibt stärker gebeugt als vorher
sign-tight-hand-tighter = Ihre Hand verkrampft stärker oder lässt sich schwerer öffnen

## At the next visit

sign-clicks-under-load = Ihr Handgelenk oder Ihre Hand knackt und tut weh, wenn Sie sich stützen oder heben
