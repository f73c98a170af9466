### A pair of pictures shows a splint as it should sit and as it should not: what is wrong, and what to do.

fault-slid-past-palm-crease = Die Schiene ist zu den Fingern gerutscht. Die Finger können sich nicht beugen. Schieben Sie die Schiene zurück, bis ihr Rand unterhalb der Falte der Handfläche liegt.
fault-palm-strap-on-knuckles = Der Gurt liegt über den Knöcheln. Legen Sie ihn zurück auf die Hand, damit sich die Knöchel beugen können.
fault-slid-over-knuckles = Die Schiene ist zu den Fingern gerutscht und drückt auf die Knöchel. Schieben Sie sie zurück, bis die Knöchel frei sind.
fault-slid-over-thumb-tip-joint = Die Schiene ist zur Daumenspitze gerutscht. Schieben Sie sie zurück, bis sich die Spitze des Daumens beugen kann.
fault-thumb-out = Der Daumen ist nicht in seiner Hülse. Nehmen Sie die Schiene ab und stecken Sie zuerst den Daumen hinein.
fault-slid-off-thumb-base = Die Schiene ist vom Ansatz des Daumens gerutscht. Schieben Sie sie zum Handgelenk zurück, bis sie den Ansatz des Daumens hält.
fault-fingertips-over-edge = Die Schiene ist zum Ellenbogen gerutscht. Die Finger hängen über ihr Ende. Schieben Sie sie vor, bis die Fingerspitzen darauf liegen.
fault-finger-strap-on-middle-joints = Der Gurt liegt über den Mittelgelenken der Finger. Legen Sie ihn zurück, neben die Knöchel.
fault-finger-piece-slid = Die Schiene ist zur Fingerspitze gerutscht. Schieben Sie sie zum Ansatz des Fingers zurück, bis sich die Spitze beugen kann.
fault-strap-on-middle-joint = Der Gurt liegt über dem Mittelgelenk und drückt. Legen Sie ihn vom Gelenk weg, zur Fingerspitze hin.
fault-tip-droops = Die Schiene ist vom Endgelenk gerutscht, und die Fingerspitze hängt herab. Legen Sie den Finger flach auf einen Tisch. Schieben Sie die Schiene wieder über das Gelenk. Sagen Sie uns, dass die Spitze herabhing.
