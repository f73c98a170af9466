### More exercises: name, starting position and one action for each step.
### The name is a short order and stands as a heading. Steps are numbered by the program.
### $hold is a finished length of time, such as the words for five seconds.
### “Otra mano” is the hand without the splint, “esta mano” the one that exercises.
### “Dedo tratado” is the finger that the splint is for.
### The joints of a finger are “nudillo grande”, “articulación central” and “punta”.
### “Dedos” includes the thumb in Spanish: where only the fingers move, the first step says “menos el pulgar”.

## Arm and wrist

exercise-shoulder-reach-name = Levante el brazo
exercise-shoulder-reach-start = Siéntese o póngase de pie, con el brazo junto al cuerpo.
exercise-shoulder-reach-step-1 = Levante el brazo por delante, hasta donde le resulte fácil.
exercise-shoulder-reach-step-2 = Manténgalo así { $hold }.
exercise-shoulder-reach-step-3 = Baje el brazo despacio.
exercise-shoulder-reach-step-4 = La próxima vez, levántelo hacia un lado, separándolo del cuerpo.

exercise-wrist-dart-name = Mueva la muñeca como para lanzar un dardo
exercise-wrist-dart-start = Apoye el antebrazo en una mesa sobre el lado del meñique. Deje la mano fuera del borde. Deje sueltos el pulgar y los demás dedos.
exercise-wrist-dart-step-1 = Incline la mano hacia atrás y hacia el pulgar.
exercise-wrist-dart-step-2 = Manténgala así { $hold }.
exercise-wrist-dart-step-3 = Incline la mano hacia delante y hacia el meñique.
exercise-wrist-dart-step-4 = Manténgala así { $hold }.

# Ordered by the clinician only.
exercise-wrist-swing-with-fingers-name = Mueva la muñeca y los dedos a la vez
exercise-wrist-swing-with-fingers-start = Apoye el codo en una mesa. Haga el movimiento solo hasta donde le mostró su terapeuta.
exercise-wrist-swing-with-fingers-step-1 = Deje caer la muñeca hacia delante, para que se abran los dedos.
exercise-wrist-swing-with-fingers-step-2 = Manténgala así { $hold }.
exercise-wrist-swing-with-fingers-step-3 = Levante la muñeca, para que los dedos se cierren en un puño suave.
exercise-wrist-swing-with-fingers-step-4 = Manténgala así { $hold }.

exercise-forearm-front-stretch-name = Estire el antebrazo por el lado de la palma
exercise-forearm-front-stretch-start = Extienda el brazo hacia delante, con la palma hacia arriba.
exercise-forearm-front-stretch-step-1 = Estire el codo.
exercise-forearm-front-stretch-step-2 = Con la otra mano, sujete la palma y los dedos de esta mano.
exercise-forearm-front-stretch-step-3 = Lleve la mano suavemente hacia abajo hasta sentir un estiramiento.
exercise-forearm-front-stretch-step-4 = Manténgala así { $hold }.
exercise-forearm-front-stretch-step-5 = Suelte despacio.

exercise-forearm-back-stretch-name = Estire el dorso del antebrazo
exercise-forearm-back-stretch-start = Extienda el brazo hacia delante, con la palma hacia abajo. Deje los dedos sueltos.
exercise-forearm-back-stretch-step-1 = Estire el codo.
exercise-forearm-back-stretch-step-2 = Ponga la otra mano sobre el dorso de esta mano.
exercise-forearm-back-stretch-step-3 = Presione la mano suavemente hacia abajo hasta sentir un estiramiento.
exercise-forearm-back-stretch-step-4 = Manténgala así { $hold }.
exercise-forearm-back-stretch-step-5 = Suelte despacio.

exercise-palms-together-stretch-name = Estire las muñecas con las palmas juntas
exercise-palms-together-stretch-start = Junte las palmas delante del pecho, con los dedos hacia arriba.
exercise-palms-together-stretch-step-1 = Baje las manos despacio. Mantenga juntas las palmas.
exercise-palms-together-stretch-step-2 = Pare cuando sienta un estiramiento suave.
exercise-palms-together-stretch-step-3 = Manténgalas así { $hold }.
exercise-palms-together-stretch-step-4 = Vuelva a subir las manos.

## Fingers

# A neighbour of the treated finger may be in the splint too.
# “Movimiento libre” is what the first page calls it.
exercise-free-finger-bend-name = Mueva los dedos libres
exercise-free-finger-bend-start = Levante la mano, con los dedos hacia arriba.
exercise-free-finger-bend-step-1 = Doble solo los dedos que tienen movimiento libre, menos el pulgar.
exercise-free-finger-bend-step-2 = Manténgalos así { $hold }.
exercise-free-finger-bend-step-3 = Estírelos despacio.

exercise-fingers-straight-name = Estire los dedos
exercise-fingers-straight-start = Levante la mano, con los dedos hacia arriba.
exercise-fingers-straight-step-1 = Estire todos los dedos, menos el pulgar, hasta donde le resulte fácil.
exercise-fingers-straight-step-2 = Manténgalos así { $hold }.
exercise-fingers-straight-step-3 = Deje que se relajen.

exercise-tabletop-name = Doble solo los nudillos grandes
exercise-tabletop-start = Levante la mano, con los dedos hacia arriba.
exercise-tabletop-step-1 = Doble los nudillos grandes, menos el del pulgar. Mantenga recto el resto de cada dedo.
exercise-tabletop-step-2 = Manténgalos así { $hold }.
exercise-tabletop-step-3 = Estire los nudillos grandes.

exercise-straight-fist-name = Haga un puño plano
exercise-straight-fist-start = Levante la mano, con los dedos hacia arriba.
exercise-straight-fist-step-1 = Doble los dedos, menos el pulgar, por el nudillo grande y la articulación central. Mantenga rectas las puntas.
exercise-straight-fist-step-2 = Apoye las puntas de esos dedos planas sobre la palma.
exercise-straight-fist-step-3 = Manténgalas así { $hold }.
exercise-straight-fist-step-4 = Estire esos dedos.

exercise-five-positions-name = Haga las formas de la mano, una tras otra
exercise-five-positions-start = Levante la mano, con los dedos hacia arriba.
exercise-five-positions-step-1 = Estire todos los dedos, menos el pulgar.
exercise-five-positions-step-2 = Haga un gancho con esos dedos. Mantenga rectos los nudillos grandes.
exercise-five-positions-step-3 = Forme con esos dedos un puño completo y suave.
exercise-five-positions-step-4 = Doble solo los nudillos grandes de esos dedos. Mantenga recto lo demás.
exercise-five-positions-step-5 = Apoye las puntas de esos dedos planas sobre la palma. Mantenga rectas las puntas.
exercise-five-positions-step-6 = Mantenga cada forma { $hold } antes de pasar a la siguiente.

exercise-block-tip-bend-name = Doble solo la punta del dedo
exercise-block-tip-bend-start = Apoye la mano en una mesa, con la palma hacia arriba. Con la otra mano, sujete el dedo tratado entre la articulación central y la articulación de la punta.
exercise-block-tip-bend-step-1 = Doble solo la punta.
exercise-block-tip-bend-step-2 = Manténgala así { $hold }.
exercise-block-tip-bend-step-3 = Estire la punta.

exercise-block-middle-bend-name = Doble solo la articulación central
exercise-block-middle-bend-start = Apoye la mano en una mesa, con la palma hacia arriba. Con la otra mano, sujete el dedo tratado entre el nudillo grande y la articulación central.
exercise-block-middle-bend-step-1 = Doble solo la articulación central.
exercise-block-middle-bend-step-2 = Manténgala así { $hold }.
exercise-block-middle-bend-step-3 = Estire la articulación central.

exercise-knuckle-bent-straighten-name = Estire la articulación central con el nudillo doblado
exercise-knuckle-bent-straighten-start = Doble el nudillo grande del dedo tratado. Manténgalo doblado con la otra mano.
exercise-knuckle-bent-straighten-step-1 = Estire la articulación central hasta donde le resulte fácil.
exercise-knuckle-bent-straighten-step-2 = Manténgala así { $hold }.
exercise-knuckle-bent-straighten-step-3 = Deje que la articulación central se relaje.

exercise-finger-lift-name = Levante los dedos uno por uno
exercise-finger-lift-start = Ponga la palma plana en una mesa.
exercise-finger-lift-step-1 = Levante de la mesa un dedo, no el pulgar. Deje los otros apoyados.
exercise-finger-lift-step-2 = Manténgalo así { $hold }.
exercise-finger-lift-step-3 = Déjelo bajar despacio.
exercise-finger-lift-step-4 = Haga lo mismo con cada uno de los otros dedos, menos con el pulgar.

exercise-tip-bend-middle-straight-name = Doble la punta con la articulación central recta
exercise-tip-bend-middle-straight-start = Apoye la mano en una mesa. No se quite la férula.
exercise-tip-bend-middle-straight-step-1 = Mantenga recta la articulación central del dedo tratado.
exercise-tip-bend-middle-straight-step-2 = Doble solo la punta.
exercise-tip-bend-middle-straight-step-3 = Manténgala así { $hold }.
exercise-tip-bend-middle-straight-step-4 = Estire la punta.

exercise-middle-bend-tip-held-name = Doble la articulación central del dedo
exercise-middle-bend-tip-held-start = Apoye el codo en una mesa, con los dedos hacia arriba. No se quite la férula.
exercise-middle-bend-tip-held-step-1 = Doble la articulación central del dedo tratado.
exercise-middle-bend-tip-held-step-2 = Manténgala así { $hold }.
exercise-middle-bend-tip-held-step-3 = Estírela despacio.

## After a tendon repair
## Ordered by the clinician only.

exercise-short-arc-middle-bend-name = Doble un poco la articulación central
exercise-short-arc-middle-bend-start = Use solo la pieza de medir que hizo su terapeuta. Mantenga recto el nudillo grande.
exercise-short-arc-middle-bend-step-1 = Ponga el dedo tratado a lo largo de la pieza de medir.
exercise-short-arc-middle-bend-step-2 = Doble la articulación central solo hasta que el dedo toque la pieza.
exercise-short-arc-middle-bend-step-3 = Manténgala así { $hold }.
exercise-short-arc-middle-bend-step-4 = Estire del todo la articulación central.
exercise-short-arc-middle-bend-step-5 = Cuando termine todas las repeticiones, vuelva a ponerse la férula.

exercise-helped-curl-in-splint-name = Doble los dedos con la otra mano
exercise-helped-curl-in-splint-start = No se quite la férula. Abra solo las correas que le mostró su terapeuta. Deje los dedos sueltos.
exercise-helped-curl-in-splint-step-1 = Con la otra mano, doble suavemente todo un dedo hacia la palma, no el pulgar.
exercise-helped-curl-in-splint-step-2 = Manténgalo así { $hold }.
exercise-helped-curl-in-splint-step-3 = Suelte el dedo despacio. No tire de él para estirarlo.
exercise-helped-curl-in-splint-step-4 = Haga lo mismo con cada dedo, menos con el pulgar.
exercise-helped-curl-in-splint-step-5 = Cuando termine todas las repeticiones, vuelva a cerrar las correas.

exercise-straighten-to-roof-name = Estire los dedos hasta la férula
exercise-straighten-to-roof-start = No se quite la férula. Abra solo las correas que le mostró su terapeuta. Mantenga los nudillos grandes contra la férula.
exercise-straighten-to-roof-step-1 = Estire los dedos, menos el pulgar, hasta que toquen la férula.
exercise-straighten-to-roof-step-2 = Manténgalos así { $hold }.
exercise-straighten-to-roof-step-3 = Deje que se relajen.
exercise-straighten-to-roof-step-4 = Cuando termine todas las repeticiones, vuelva a cerrar las correas.

exercise-half-fist-in-splint-name = Haga medio puño, sin apretar
exercise-half-fist-in-splint-start = No se quite la férula. Abra solo las correas que le mostró su terapeuta.
exercise-half-fist-in-splint-step-1 = Doble suavemente los dedos, menos el pulgar, hasta medio camino hacia la palma.
exercise-half-fist-in-splint-step-2 = Manténgalos así { $hold }. No apriete.
exercise-half-fist-in-splint-step-3 = Estire esos dedos hasta que toquen la férula.
exercise-half-fist-in-splint-step-4 = Cuando termine todas las repeticiones, vuelva a cerrar las correas.

exercise-place-and-hold-name = Coloque los dedos y manténgalos así
exercise-place-and-hold-start = Apoye el codo en una mesa. Haga el movimiento solo hasta donde le mostró su terapeuta.
exercise-place-and-hold-step-1 = Con la otra mano, doble suavemente todos los dedos, menos el pulgar.
exercise-place-and-hold-step-2 = Retire la otra mano.
exercise-place-and-hold-step-3 = Mantenga los dedos así, con suavidad, { $hold }. No apriete.
exercise-place-and-hold-step-4 = Deje que los dedos se relajen.

exercise-yoke-bend-name = Doble los dedos dentro de la férula
exercise-yoke-bend-start = Apoye el codo en una mesa, con los dedos hacia arriba. No se quite la férula. No deje caer la muñeca hacia delante.
exercise-yoke-bend-step-1 = Doble todos los dedos, menos el pulgar, hasta donde lo permita la férula.
exercise-yoke-bend-step-2 = Manténgalos así { $hold }.
exercise-yoke-bend-step-3 = Estire todos esos dedos.

## Stretches of a finger

exercise-helped-curl-stretch-name = Doble todo el dedo con ayuda
exercise-helped-curl-stretch-start = Apoye la mano en una mesa, con la palma hacia arriba.
exercise-helped-curl-stretch-step-1 = Con la otra mano, doble despacio todo el dedo tratado.
exercise-helped-curl-stretch-step-2 = Pare cuando sienta un estiramiento suave.
exercise-helped-curl-stretch-step-3 = Manténgalo así { $hold }.
exercise-helped-curl-stretch-step-4 = Suelte despacio.

exercise-helped-straighten-stretch-name = Estire el dedo con ayuda
exercise-helped-straighten-stretch-start = Ponga el dorso de la mano en una mesa. Con la otra mano, sujete el dedo tratado entre el nudillo grande y la articulación central.
exercise-helped-straighten-stretch-step-1 = Presione suavemente la articulación central para llevarla hacia la posición recta.
exercise-helped-straighten-stretch-step-2 = Pare cuando sienta un estiramiento suave.
exercise-helped-straighten-stretch-step-3 = Manténgala así { $hold }.
exercise-helped-straighten-stretch-step-4 = Suelte despacio.

exercise-intrinsic-stretch-name = Doble el dedo con el nudillo recto
exercise-intrinsic-stretch-start = Apoye el codo en una mesa, con los dedos hacia arriba.
exercise-intrinsic-stretch-step-1 = Mantenga recto el nudillo grande del dedo tratado.
exercise-intrinsic-stretch-step-2 = Con la otra mano, doble la articulación central y la punta de ese dedo.
exercise-intrinsic-stretch-step-3 = Pare cuando sienta un estiramiento suave.
exercise-intrinsic-stretch-step-4 = Manténgalo así { $hold }.
exercise-intrinsic-stretch-step-5 = Suelte despacio.

## Thumb

exercise-thumb-bend-across-name = Doble el pulgar sobre la palma
exercise-thumb-bend-across-start = Apoye la mano en una mesa, con la palma hacia arriba.
exercise-thumb-bend-across-step-1 = Doble el pulgar despacio, cruzando la palma.
exercise-thumb-bend-across-step-2 = Manténgalo así { $hold }.
exercise-thumb-bend-across-step-3 = Estire el pulgar.

exercise-thumb-web-release-name = Ablande la piel entre el pulgar y el índice
exercise-thumb-web-release-start = Apoye la mano en una mesa sobre el lado del meñique.
exercise-thumb-web-release-step-1 = Frote suavemente la piel entre el pulgar y el índice.
exercise-thumb-web-release-step-2 = Con la otra mano, sujete el pulgar entre el nudillo y la muñeca.
exercise-thumb-web-release-step-3 = Separe suavemente el pulgar de la palma.
exercise-thumb-web-release-step-4 = Manténgalo así { $hold }.
exercise-thumb-web-release-step-5 = Suelte despacio.

exercise-thumb-wrist-slow-lower-name = Baje la mano despacio, con el pulgar hacia arriba
exercise-thumb-wrist-slow-lower-start = Apoye el antebrazo en una mesa sobre el lado del meñique. Sostenga la pesa pequeña que eligió su terapeuta. Haga esto solo un día sí y otro no.
exercise-thumb-wrist-slow-lower-step-1 = Con la otra mano, levante esta mano hacia el lado del pulgar.
exercise-thumb-wrist-slow-lower-step-2 = Retire la otra mano.
exercise-thumb-wrist-slow-lower-step-3 = Deje bajar la mano despacio. Tarde { $hold } en bajarla.

## Nerves

exercise-thumb-side-nerve-slide-name = Deslice el nervio del lado del pulgar
exercise-thumb-side-nerve-slide-start = Siéntese con el codo doblado y la muñeca recta.
exercise-thumb-side-nerve-slide-step-1 = Haga un puño flojo.
exercise-thumb-side-nerve-slide-step-2 = Estire los dedos. Mantenga el pulgar junto a los demás dedos.
exercise-thumb-side-nerve-slide-step-3 = Doble la muñeca suavemente hacia atrás.
exercise-thumb-side-nerve-slide-step-4 = Mueva el pulgar hacia un lado, hacia afuera.
exercise-thumb-side-nerve-slide-step-5 = Gire la palma hacia arriba.
exercise-thumb-side-nerve-slide-step-6 = Mantenga cada posición { $hold } antes de pasar a la siguiente.

exercise-little-finger-nerve-slide-name = Deslice el nervio del lado del meñique
exercise-little-finger-nerve-slide-start = Extienda el brazo hacia un lado, con la palma hacia arriba.
exercise-little-finger-nerve-slide-step-1 = Doble el codo hasta la mitad mientras la muñeca se dobla hacia el lado de la palma.
exercise-little-finger-nerve-slide-step-2 = Manténgalos así { $hold }.
exercise-little-finger-nerve-slide-step-3 = Estire el codo mientras la muñeca se dobla suavemente hacia el dorso de la mano.
exercise-little-finger-nerve-slide-step-4 = Manténgalos así { $hold }.

## Strength

exercise-wrist-press-still-name = Empuje sin mover la muñeca
exercise-wrist-press-still-start = Apoye el antebrazo en una mesa, con la palma hacia abajo. Deje la mano fuera del borde.
exercise-wrist-press-still-step-1 = Ponga la otra mano sobre el dorso de esta mano.
exercise-wrist-press-still-step-2 = Empuje suavemente hacia arriba contra ella. No deje que se mueva la muñeca.
exercise-wrist-press-still-step-3 = Siga empujando así { $hold }.
exercise-wrist-press-still-step-4 = Relaje la mano.
exercise-wrist-press-still-step-5 = La próxima vez, ponga la otra mano bajo la palma y empuje con la palma hacia abajo.

exercise-putty-grip-name = Apriete masilla blanda
exercise-putty-grip-start = Ponga una bola de masilla blanda en la palma.
exercise-putty-grip-step-1 = Apriétela suavemente con el pulgar y los demás dedos.
exercise-putty-grip-step-2 = Manténgala así { $hold }.
exercise-putty-grip-step-3 = Suelte despacio.
exercise-putty-grip-step-4 = Vuelva a hacer una bola con la masilla.

exercise-three-point-pinch-name = Apriete masilla blanda con los dedos redondeados
exercise-three-point-pinch-start = Tome una bola pequeña de masilla blanda.
exercise-three-point-pinch-step-1 = Sujétela entre el pulgar, el dedo índice y el dedo medio.
exercise-three-point-pinch-step-2 = Mantenga todas las articulaciones un poco dobladas.
exercise-three-point-pinch-step-3 = Apriete la masilla suavemente.
exercise-three-point-pinch-step-4 = Manténgala así { $hold }.
exercise-three-point-pinch-step-5 = Suelte despacio.

exercise-key-pinch-putty-name = Apriete masilla blanda como si fuera una llave
exercise-key-pinch-putty-start = Tome una bola pequeña de masilla blanda.
exercise-key-pinch-putty-step-1 = Sujétela entre el pulgar y el lado del dedo índice.
exercise-key-pinch-putty-step-2 = Apriete la masilla suavemente.
exercise-key-pinch-putty-step-3 = Manténgala así { $hold }.
exercise-key-pinch-putty-step-4 = Suelte despacio.

exercise-wrist-slow-lower-name = Baje la mano despacio, con la palma hacia abajo
exercise-wrist-slow-lower-start = Apoye el antebrazo en una mesa, con la palma hacia abajo. Deje la mano fuera del borde. Sostenga la pesa pequeña que eligió su terapeuta.
exercise-wrist-slow-lower-step-1 = Levante la mano con ayuda de la otra mano.
exercise-wrist-slow-lower-step-2 = Retire la otra mano.
exercise-wrist-slow-lower-step-3 = Deje bajar la mano despacio. Tarde { $hold } en bajarla.

exercise-hand-lean-name = Apóyese en la mano
exercise-hand-lean-start = Póngase de pie frente a una pared. Use una mesa o el suelo solo cuando se lo diga su terapeuta.
exercise-hand-lean-step-1 = Ponga las dos palmas en la pared.
exercise-hand-lean-step-2 = Inclínese despacio hasta sentir peso en las manos.
exercise-hand-lean-step-3 = Quédese así { $hold }.
exercise-hand-lean-step-4 = Empújese despacio hacia atrás.

## Skin, scar, feeling and tightness

exercise-stroke-towards-heart-name = Acaricie el brazo hacia el corazón
exercise-stroke-towards-heart-start = Apoye el brazo en cojines, con la mano más alta que el codo.
exercise-stroke-towards-heart-step-1 = Ponga la otra mano sobre las puntas de los dedos.
exercise-stroke-towards-heart-step-2 = Acaricie suavemente desde las puntas de los dedos hasta el codo.
exercise-stroke-towards-heart-step-3 = No pase por la férula, ni por piel que duela o esté abierta.
exercise-stroke-towards-heart-step-4 = Siga durante { $hold }.

exercise-scar-massage-name = Mueva la cicatriz
exercise-scar-massage-start = Haga esto solo cuando la cicatriz esté cerrada y seca. Apoye la mano en una mesa.
exercise-scar-massage-step-1 = Ponga la punta de un dedo de la otra mano sobre la cicatriz.
exercise-scar-massage-step-2 = Presione con firmeza, pero sin que duela.
exercise-scar-massage-step-3 = Mueva la piel en círculos pequeños.
exercise-scar-massage-step-4 = Mueva la piel arriba y abajo, y luego de lado a lado.
exercise-scar-massage-step-5 = Siga a lo largo de la cicatriz durante { $hold }.

exercise-texture-rub-name = Acostumbre la piel a que la toquen
exercise-texture-rub-start = Haga esto solo sobre piel cerrada. Apoye la mano en una mesa.
exercise-texture-rub-step-1 = Frote suavemente la piel sensible con un paño suave.
exercise-texture-rub-step-2 = Siga durante { $hold }.
exercise-texture-rub-step-3 = Use un paño más áspero cuando el suave ya no le moleste.

exercise-touch-relearn-name = Aprenda a sentir de nuevo
exercise-touch-relearn-start = Apoye la mano en una mesa. No use nada caliente, nada frío ni nada que corte o pinche.
exercise-touch-relearn-step-1 = Tóquese la punta del dedo con un objeto pequeño y mire.
exercise-touch-relearn-step-2 = Cierre los ojos y toque el mismo lugar.
exercise-touch-relearn-step-3 = Fíjese en dónde lo siente y en cómo se siente.
exercise-touch-relearn-step-4 = Abra los ojos y compare.
exercise-touch-relearn-step-5 = Siga con otros lugares durante { $hold }.

exercise-scar-hold-stretch-name = Mantenga la cicatriz estirada
exercise-scar-hold-stretch-start = Haga esto solo cuando la cicatriz esté cerrada y seca.
exercise-scar-hold-stretch-step-1 = Mueva la mano despacio hasta sentir tirante la cicatriz.
exercise-scar-hold-stretch-step-2 = Manténgala así { $hold }.
exercise-scar-hold-stretch-step-3 = Deje que la mano vuelva despacio.

exercise-tight-hand-slow-open-name = Abra despacio la mano tensa
exercise-tight-hand-slow-open-start = Apoye el antebrazo en un cojín. Deje que la muñeca se doble hacia delante. Nunca tire rápido.
exercise-tight-hand-slow-open-step-1 = Sujete el pulgar por la base y llévelo despacio hacia afuera.
exercise-tight-hand-slow-open-step-2 = Con la otra mano, estire despacio los demás dedos.
exercise-tight-hand-slow-open-step-3 = Lleve la muñeca despacio hacia atrás. Mantenga rectos los dedos.
exercise-tight-hand-slow-open-step-4 = Pare en cuanto la mano empiece a resistirse.
exercise-tight-hand-slow-open-step-5 = Mantenga la mano así { $hold }.
exercise-tight-hand-slow-open-step-6 = Deje que la mano se cierre despacio.
