### Exercises: name, starting position and one action for each step.
### The name is a short order and stands as a heading. Steps are numbered by the program.
### $hold is a finished length of time, such as the words for five seconds.
### “Otra mano” is the hand without the splint.

## Bend the tip of your thumb

exercise-thumb-tip-bend-name = Doble la punta del pulgar
exercise-thumb-tip-bend-start = Siéntese y apoye el antebrazo en una mesa. No se quite la férula.
exercise-thumb-tip-bend-step-1 = Doble solo la punta del pulgar.
exercise-thumb-tip-bend-step-2 = Manténgala así { $hold }.
exercise-thumb-tip-bend-step-3 = Estire la punta.

## Make a fist and open it

exercise-finger-fist-open-name = Cierre el puño y ábralo
exercise-finger-fist-open-start = Levante la mano, con los dedos hacia arriba. No mueva el pulgar.
exercise-finger-fist-open-step-1 = Doble despacio los demás dedos hasta formar un puño suave.
exercise-finger-fist-open-step-2 = Manténgalos así { $hold }.
exercise-finger-fist-open-step-3 = Estire esos dedos.

## Make a hook with your fingers

exercise-finger-hook-name = Haga un gancho con los dedos
exercise-finger-hook-start = Ponga los dedos hacia arriba, tan rectos como pueda sin esfuerzo. No mueva el pulgar.
exercise-finger-hook-step-1 = Mantenga los nudillos grandes como están.
exercise-finger-hook-step-2 = Doble las demás articulaciones de los dedos, como un gancho.
exercise-finger-hook-step-3 = Manténgalas así { $hold }.
exercise-finger-hook-step-4 = Estire los dedos.

## Spread your fingers

exercise-finger-spread-name = Separe los dedos
exercise-finger-spread-start = Ponga la palma en una mesa, con los dedos juntos. No mueva el pulgar.
exercise-finger-spread-step-1 = Separe los demás dedos entre sí.
exercise-finger-spread-step-2 = Manténgalos así { $hold }.
exercise-finger-spread-step-3 = Vuelva a juntarlos.

## Raise your hand and pump

exercise-hand-raise-pump-name = Levante la mano y abra y cierre los dedos
exercise-hand-raise-pump-start = Siéntese y levante la mano por encima del corazón.
exercise-hand-raise-pump-step-1 = Cierre los dedos con suavidad.
exercise-hand-raise-pump-step-2 = Manténgalos así { $hold }.
exercise-hand-raise-pump-step-3 = Abra los dedos.
exercise-hand-raise-pump-step-4 = Cuando termine todas las repeticiones, baje el brazo.

## Bend and straighten your elbow

exercise-elbow-bend-name = Doble y estire el codo
exercise-elbow-bend-start = Siéntese o póngase de pie, con el brazo junto al cuerpo.
exercise-elbow-bend-step-1 = Doble el codo hasta acercar la mano al hombro.
exercise-elbow-bend-step-2 = Manténgalo así { $hold }.
exercise-elbow-bend-step-3 = Estire el codo despacio.

## Turn your palm up and down

exercise-forearm-turn-name = Gire la palma hacia arriba y hacia abajo
exercise-forearm-turn-start = Siéntese con el codo doblado y pegado al cuerpo.
exercise-forearm-turn-step-1 = Gire la palma hacia arriba.
exercise-forearm-turn-step-2 = Manténgala así { $hold }.
exercise-forearm-turn-step-3 = Gire la palma hacia abajo.
exercise-forearm-turn-step-4 = Manténgala así { $hold }.

## Move your wrist up and down

exercise-wrist-up-down-name = Mueva la muñeca hacia arriba y hacia abajo
exercise-wrist-up-down-start = Apoye el antebrazo en una mesa, con la mano fuera del borde. Deje el pulgar suelto.
exercise-wrist-up-down-step-1 = Levante la mano despacio.
exercise-wrist-up-down-step-2 = Manténgala así { $hold }.
exercise-wrist-up-down-step-3 = Deje bajar la mano despacio.
exercise-wrist-up-down-step-4 = Manténgala así { $hold }.

## Move your wrist from side to side

exercise-wrist-side-to-side-name = Mueva la muñeca de lado a lado
exercise-wrist-side-to-side-start = Apoye el antebrazo y la palma planos en una mesa. Mantenga el pulgar junto a los demás dedos.
exercise-wrist-side-to-side-step-1 = Deslice la mano hacia el lado del pulgar.
exercise-wrist-side-to-side-step-2 = Manténgala así { $hold }.
exercise-wrist-side-to-side-step-3 = Deslice la mano hacia el lado del meñique.
exercise-wrist-side-to-side-step-4 = Manténgala así { $hold }.

## Bend the knuckle of your thumb

exercise-thumb-knuckle-bend-name = Doble el nudillo del pulgar
exercise-thumb-knuckle-bend-start = Apoye la mano en una mesa sobre el lado del meñique. Con la otra mano, sujete el pulgar entre el nudillo y la muñeca.
exercise-thumb-knuckle-bend-step-1 = Doble el nudillo del pulgar recto hacia delante.
exercise-thumb-knuckle-bend-step-2 = Manténgalo así { $hold }.
exercise-thumb-knuckle-bend-step-3 = Estire el nudillo.
exercise-thumb-knuckle-bend-step-4 = Nunca deje que el pulgar se vaya hacia un lado, hacia afuera.

## Touch each fingertip with your thumb

exercise-thumb-to-fingertips-name = Toque con el pulgar la punta de cada dedo
exercise-thumb-to-fingertips-start = Levante la mano, con los dedos hacia arriba.
exercise-thumb-to-fingertips-step-1 = Toque suavemente la punta del dedo índice con el pulgar.
exercise-thumb-to-fingertips-step-2 = Manténgalos así { $hold }.
exercise-thumb-to-fingertips-step-3 = Abra bien la mano.
exercise-thumb-to-fingertips-step-4 = Haga lo mismo con cada uno de los demás dedos.

## Lift your thumb away from your palm

exercise-thumb-out-from-palm-name = Levante el pulgar y sepárelo de la palma
exercise-thumb-out-from-palm-start = Ponga el dorso de la mano en una mesa.
exercise-thumb-out-from-palm-step-1 = Levante el pulgar recto hacia arriba, separándolo de la palma.
exercise-thumb-out-from-palm-step-2 = Manténgalo así { $hold }.
exercise-thumb-out-from-palm-step-3 = Déjelo bajar despacio.

## Hold the shape of a C

exercise-thumb-c-hold-name = Mantenga la forma de una C
exercise-thumb-c-hold-start = Forme la letra C con el pulgar y el índice.
exercise-thumb-c-hold-step-1 = Revise que el pulgar esté redondeado y no se doble hacia atrás.
exercise-thumb-c-hold-step-2 = Sujete el pulgar por fuera con la otra mano.
exercise-thumb-c-hold-step-3 = Empuje suavemente con el pulgar hacia afuera. No deje que se mueva.
exercise-thumb-c-hold-step-4 = Manténgalo así { $hold }.
exercise-thumb-c-hold-step-5 = Relaje la mano.

## Press your index finger to the side

exercise-index-side-press-name = Empuje el dedo índice hacia un lado
exercise-index-side-press-start = Apoye la mano plana en una mesa, con la palma hacia abajo.
exercise-index-side-press-step-1 = Ponga la otra mano contra el dedo índice, en el lado del pulgar.
exercise-index-side-press-step-2 = Empuje suavemente el índice hacia el pulgar. No deje que se mueva.
exercise-index-side-press-step-3 = Manténgalo así { $hold }.
exercise-index-side-press-step-4 = Relaje la mano.

## Squeeze a soft ball

exercise-soft-ball-squeeze-name = Apriete una pelota blanda
exercise-soft-ball-squeeze-start = Ponga una pelota blanda de esponja en la palma. No apoye el pulgar en ella.
exercise-soft-ball-squeeze-step-1 = Apriete la pelota suavemente con los demás dedos.
exercise-soft-ball-squeeze-step-2 = Manténgala así { $hold }.
exercise-soft-ball-squeeze-step-3 = Suelte despacio.
