### Exercises: name, starting position and one action for each step.
### The name is a short order and stands as a heading. Steps are numbered by the program.
### $hold is a finished length of time, such as the words for five seconds.
### “Other hand” is the hand without the splint.

## Bend the tip of your thumb

exercise-thumb-tip-bend-name = Die Spitze des Daumens beugen
exercise-thumb-tip-bend-start = Setzen Sie sich, der Unterarm liegt auf einem Tisch. Lassen Sie die Schiene an.
exercise-thumb-tip-bend-step-1 = Beugen Sie nur die Spitze des Daumens.
exercise-thumb-tip-bend-step-2 = Halten Sie { $hold }.
exercise-thumb-tip-bend-step-3 = Strecken Sie die Spitze.

## Make a fist and open it

exercise-finger-fist-open-name = Faust machen und öffnen
exercise-finger-fist-open-start = Halten Sie die Hand hoch, die Finger zeigen nach oben. Halten Sie den Daumen still.
exercise-finger-fist-open-step-1 = Beugen Sie alle Finger langsam zu einer lockeren Faust.
exercise-finger-fist-open-step-2 = Halten Sie { $hold }.
exercise-finger-fist-open-step-3 = Strecken Sie alle Finger.

## Make a hook with your fingers

exercise-finger-hook-name = Einen Haken mit den Fingern machen
exercise-finger-hook-start = Halten Sie die Finger hoch, so gerade, wie es leicht geht. Halten Sie den Daumen still.
exercise-finger-hook-step-1 = Lassen Sie die großen Knöchel, wie sie sind.
exercise-finger-hook-step-2 = Beugen Sie die anderen Fingergelenke wie einen Haken.
exercise-finger-hook-step-3 = Halten Sie { $hold }.
exercise-finger-hook-step-4 = Strecken Sie die Finger.

## Spread your fingers

exercise-finger-spread-name = Die Finger spreizen
exercise-finger-spread-start = Legen Sie die Handfläche auf einen Tisch, die Finger zusammen. Halten Sie den Daumen still.
exercise-finger-spread-step-1 = Spreizen Sie die Finger.
exercise-finger-spread-step-2 = Halten Sie { $hold }.
exercise-finger-spread-step-3 = Schließen Sie sie wieder.

## Raise your hand and pump

exercise-hand-raise-pump-name = Hand heben und pumpen
exercise-hand-raise-pump-start = Setzen Sie sich und heben Sie die Hand höher als Ihr Herz.
exercise-hand-raise-pump-step-1 = Schließen Sie die Finger locker.
exercise-hand-raise-pump-step-2 = Halten Sie { $hold }.
exercise-hand-raise-pump-step-3 = Öffnen Sie die Finger.
exercise-hand-raise-pump-step-4 = Senken Sie den Arm, wenn Sie alle gemacht haben.

## Bend and straighten your elbow

exercise-elbow-bend-name = Den Ellenbogen beugen und strecken
exercise-elbow-bend-start = Sitzen oder stehen Sie, der Arm hängt an der Seite.
exercise-elbow-bend-step-1 = Beugen Sie den Ellenbogen, bis die Hand nahe an die Schulter kommt.
exercise-elbow-bend-step-2 = Halten Sie { $hold }.
exercise-elbow-bend-step-3 = Strecken Sie den Ellenbogen langsam.

## Turn your palm up and down

exercise-forearm-turn-name = Handfläche nach oben und unten drehen
exercise-forearm-turn-start = Setzen Sie sich, der Ellenbogen ist gebeugt und nah am Körper.
exercise-forearm-turn-step-1 = Drehen Sie die Handfläche nach oben.
exercise-forearm-turn-step-2 = Halten Sie { $hold }.
exercise-forearm-turn-step-3 = Drehen Sie die Handfläche nach unten.
exercise-forearm-turn-step-4 = Halten Sie { $hold }.

## Move your wrist up and down

exercise-wrist-up-down-name = Das Handgelenk auf und ab bewegen
exercise-wrist-up-down-start = Legen Sie den Unterarm auf einen Tisch, die Hand über den Rand. Halten Sie den Daumen locker.
exercise-wrist-up-down-step-1 = Heben Sie die Hand langsam.
exercise-wrist-up-down-step-2 = Halten Sie { $hold }.
exercise-wrist-up-down-step-3 = Lassen Sie die Hand langsam sinken.
exercise-wrist-up-down-step-4 = Halten Sie { $hold }.

## Move your wrist from side to side

exercise-wrist-side-to-side-name = Das Handgelenk hin und her bewegen
exercise-wrist-side-to-side-start = Legen Sie Unterarm und Handfläche flach auf einen Tisch. Lassen Sie den Daumen neben den Fingern.
exercise-wrist-side-to-side-step-1 = Schieben Sie die Hand zum Daumen hin.
exercise-wrist-side-to-side-step-2 = Halten Sie { $hold }.
exercise-wrist-side-to-side-step-3 = Schieben Sie die Hand zum kleinen Finger hin.
exercise-wrist-side-to-side-step-4 = Halten Sie { $hold }.

## Bend the knuckle of your thumb

exercise-thumb-knuckle-bend-name = Den Knöchel des Daumens beugen
exercise-thumb-knuckle-bend-start = Legen Sie die Hand mit der Seite des kleinen Fingers auf einen Tisch. Halten Sie den Daumen mit der anderen Hand zwischen seinem Knöchel und dem Handgelenk.
exercise-thumb-knuckle-bend-step-1 = Beugen Sie den Knöchel des Daumens gerade nach vorn.
exercise-thumb-knuckle-bend-step-2 = Halten Sie { $hold }.
exercise-thumb-knuckle-bend-step-3 = Strecken Sie den Knöchel.
exercise-thumb-knuckle-bend-step-4 = Der Daumen darf nie zur Seite gehen.

## Touch each fingertip with your thumb

exercise-thumb-to-fingertips-name = Jede Fingerspitze mit dem Daumen berühren
exercise-thumb-to-fingertips-start = Halten Sie die Hand hoch, die Finger zeigen nach oben.
exercise-thumb-to-fingertips-step-1 = Berühren Sie die Spitze des Zeigefingers leicht mit dem Daumen.
exercise-thumb-to-fingertips-step-2 = Halten Sie { $hold }.
exercise-thumb-to-fingertips-step-3 = Öffnen Sie die Hand weit.
exercise-thumb-to-fingertips-step-4 = Tun Sie dasselbe mit jedem anderen Finger.

## Lift your thumb away from your palm

exercise-thumb-out-from-palm-name = Den Daumen von der Handfläche abheben
exercise-thumb-out-from-palm-start = Legen Sie den Handrücken auf einen Tisch.
exercise-thumb-out-from-palm-step-1 = Heben Sie den Daumen gerade nach oben, von der Handfläche weg.
exercise-thumb-out-from-palm-step-2 = Halten Sie { $hold }.
exercise-thumb-out-from-palm-step-3 = Lassen Sie ihn langsam zurücksinken.

## Hold the shape of a C

exercise-thumb-c-hold-name = Die Form eines C halten
exercise-thumb-c-hold-start = Formen Sie Daumen und Zeigefinger wie den Buchstaben C.
exercise-thumb-c-hold-step-1 = Prüfen Sie: Der Daumen ist rund und biegt sich nicht nach hinten.
exercise-thumb-c-hold-step-2 = Halten Sie den Daumen mit der anderen Hand von außen.
exercise-thumb-c-hold-step-3 = Drücken Sie mit dem Daumen sanft nach außen. Er darf sich nicht bewegen.
exercise-thumb-c-hold-step-4 = Halten Sie { $hold }.
exercise-thumb-c-hold-step-5 = Entspannen Sie die Hand.

## Press your index finger to the side

exercise-index-side-press-name = Den Zeigefinger zur Seite drücken
exercise-index-side-press-start = Legen Sie die Hand flach auf einen Tisch, die Handfläche nach unten.
exercise-index-side-press-step-1 = Legen Sie die andere Hand an die Daumenseite des Zeigefingers.
exercise-index-side-press-step-2 = Drücken Sie den Zeigefinger sanft zum Daumen hin. Er darf sich nicht bewegen.
exercise-index-side-press-step-3 = Halten Sie { $hold }.
exercise-index-side-press-step-4 = Entspannen Sie die Hand.

## Squeeze a soft ball

exercise-soft-ball-squeeze-name = Einen weichen Ball drücken
exercise-soft-ball-squeeze-start = Legen Sie einen weichen Schaumball in die Handfläche. Lassen Sie den Daumen weg davon.
exercise-soft-ball-squeeze-step-1 = Drücken Sie den Ball sanft mit den Fingern.
exercise-soft-ball-squeeze-step-2 = Halten Sie { $hold }.
exercise-soft-ball-squeeze-step-3 = Lassen Sie langsam los.
