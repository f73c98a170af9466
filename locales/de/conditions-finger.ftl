### Conditions of the fingers: the name, what is wrong, and what the splint does.
### Words for a reader of about twelve. The splint is never said to cure anything.

## Finger that catches

condition-trigger-finger-name = Schnappender Finger (Schnappfinger)
condition-trigger-finger-what = Die Sehne, die Ihren Finger beugt, läuft in der Handfläche durch einen Tunnel. Dort ist sie zu dick und hakt oder klemmt.
condition-trigger-finger-aim = Mit der Schiene beugt sich Ihr Finger weniger. Die Sehne reibt dann weniger im Tunnel und kann ausruhen.

## Fingertip that droops, torn cord

condition-mallet-tendon-name = Hängende Fingerspitze, gerissene Sehne (Hammerfinger)
condition-mallet-tendon-what = Die dünne Sehne, die Ihre Fingerspitze hebt, ist gerissen. Ihre Enden wachsen nur zusammen, wenn die Spitze nie herabhängt.
condition-mallet-tendon-aim = Die Schiene hält die Fingerspitze gerade, während die Sehne heilt.

## Fingertip that droops, chip of bone

condition-mallet-bony-name = Hängende Fingerspitze, Knochenstück abgerissen (Hammerfinger)
condition-mallet-bony-what = Die Sehne, die Ihre Fingerspitze hebt, hat ein Stück Knochen abgerissen. Es wächst nur an, wenn die Spitze ruhig bleibt.
condition-mallet-bony-aim = Die Schiene hält die Fingerspitze gerade, während der Knochen heilt.

## Torn strip over the middle joint, fresh

condition-boutonniere-acute-name = Gerissene Sehne über dem Mittelgelenk
condition-boutonniere-acute-what = Die Sehne, die das Mittelgelenk Ihres Fingers streckt, ist gerissen. Jedes Beugen zieht ihre Enden auseinander.
condition-boutonniere-acute-aim = Die Schiene hält das Mittelgelenk gerade. Ihre Fingerspitze bleibt frei, und sie zu beugen hilft der Sehne.

## Middle joint fixed bent after a tear

condition-boutonniere-chronic-name = Gebeugtes Mittelgelenk nach altem Riss
condition-boutonniere-chronic-what = Durch einen alten Riss blieb das Mittelgelenk Ihres Fingers gebeugt. Es ist steif geworden.
condition-boutonniere-chronic-aim = Die Schiene soll das Gelenk gerade bringen, langsam und sanft. Später hält sie es so.

## Middle joint that bends backwards

condition-swan-neck-name = Mittelgelenk biegt sich nach hinten (Schwanenhals)
condition-swan-neck-what = Das Mittelgelenk Ihres Fingers rutscht nach hinten und klemmt dort. Dann ist es schwer, eine Faust zu machen.
condition-swan-neck-aim = Die Schiene verhindert, dass das Gelenk nach hinten geht. Sie können es weiter beugen.

## Jammed finger, front of the middle joint

condition-pip-volar-plate-name = Gestauchter Finger, Vorderseite des Mittelgelenks
condition-pip-volar-plate-what = Die feste Platte vorn am Mittelgelenk ist verletzt. Biegen nach hinten verletzt sie wieder.
condition-pip-volar-plate-aim = Die Schiene schützt das Gelenk davor, nach hinten zu gehen. Das übliche Beugen tut ihm gut.

## Sprained side of the middle joint

condition-pip-collateral-sprain-name = Verstauchtes Mittelgelenk, an der Seite
condition-pip-collateral-sprain-what = Das Band an der Seite des Mittelgelenks ist überdehnt oder teilweise gerissen. Druck zur Seite zieht es auf.
condition-pip-collateral-sprain-aim = Die Schiene schützt das Gelenk vor Druck zur Seite, während das Band heilt.

## Middle joint that does not straighten

condition-pip-flexion-contracture-name = Steifes, gebeugtes Mittelgelenk
condition-pip-flexion-contracture-what = Haut und Bänder vorn am Mittelgelenk sind kurz geworden. Ihr Finger wird nicht gerade.
condition-pip-flexion-contracture-aim = Die Schiene hält das Gelenk sanft in Richtung gerade. Lang und sanft wirkt besser als kurz und stark.

## Worn joint at the fingertip

condition-dip-osteoarthritis-name = Abgenutztes Gelenk an der Fingerspitze
condition-dip-osteoarthritis-what = Das letzte Gelenk Ihres Fingers ist abgenutzt. Es kann weh tun und knotig sein.
condition-dip-osteoarthritis-aim = Die Schiene lässt das Gelenk nachts ausruhen. So kann es weniger weh tun.

## Torn band over the knuckle

condition-sagittal-band-injury-name = Gerissenes Band über dem Knöchel
condition-sagittal-band-injury-what = Ein kleines Band hält die Sehne oben auf dem großen Knöchel. Es ist gerissen, und bei einer Faust rutscht die Sehne ab.
condition-sagittal-band-injury-aim = Die Schiene verhindert, dass sich der Knöchel weit beugt. Die Sehne bleibt oben, während das Band heilt.

## Broken bone below the little finger

condition-fifth-metacarpal-neck-fracture-name = Gebrochener Knochen unterhalb des kleinen Fingers
condition-fifth-metacarpal-neck-fracture-what = Der Knochen in der Handfläche unterhalb des kleinen Fingers ist nahe am Knöchel gebrochen. Er muss wieder zusammenwachsen.
condition-fifth-metacarpal-neck-fracture-aim = Die Schiene schützt den Knochen, während er heilt. Sie hilft auch, dass sich der Finger nicht dreht.

## Broken first bone of a finger

condition-proximal-phalanx-fracture-name = Gebrochener erster Knochen eines Fingers
condition-proximal-phalanx-fracture-what = Der Knochen zwischen dem großen Knöchel und dem Mittelgelenk ist gebrochen. Er muss wieder zusammenwachsen.
condition-proximal-phalanx-fracture-aim = Die Schiene hält den Knochen an seinem Platz, während er heilt. Sie hält die Gelenke so, dass sie weniger steif werden.
