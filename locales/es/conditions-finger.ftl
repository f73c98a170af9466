### Conditions of the fingers: the name, what is wrong, and what the splint does.
### Words for a reader of about twelve. The splint is never said to cure anything.
### The joints of a finger are “nudillo grande”, “articulación central” and “punta”.
### The front of a joint is the side that faces the palm: “del lado de la palma”.

## Finger that catches

condition-trigger-finger-name = Dedo que se traba (dedo en gatillo)
condition-trigger-finger-what = El tendón que dobla el dedo pasa por un túnel de la palma. Allí está demasiado grueso y se engancha o se traba.
condition-trigger-finger-aim = La férula hace que el dedo se doble menos. Así el tendón roza menos en el túnel y puede descansar.

## Fingertip that droops, torn cord

condition-mallet-tendon-name = Punta del dedo caída, tendón roto (dedo en martillo)
condition-mallet-tendon-what = El tendón fino que levanta la punta del dedo está roto. Sus extremos se unen solo si la punta nunca queda caída.
condition-mallet-tendon-aim = La férula mantiene recta la punta del dedo mientras sana el tendón.

## Fingertip that droops, chip of bone

condition-mallet-bony-name = Punta del dedo caída, trocito de hueso arrancado (dedo en martillo)
condition-mallet-bony-what = El tendón que levanta la punta del dedo arrancó un trocito de hueso. El trocito vuelve a unirse solo si la punta queda quieta.
condition-mallet-bony-aim = La férula mantiene recta la punta del dedo mientras sana el hueso.

## Torn strip over the middle joint, fresh

condition-boutonniere-acute-name = Tendón roto sobre la articulación central
condition-boutonniere-acute-what = El tendón que estira la articulación central del dedo está roto. Cada vez que la dobla, los extremos del tendón se separan.
condition-boutonniere-acute-aim = La férula mantiene recta la articulación central. La punta del dedo queda libre, y doblarla ayuda al tendón.

## Middle joint fixed bent after a tear

condition-boutonniere-chronic-name = Articulación central doblada después de una rotura antigua
condition-boutonniere-chronic-what = Una rotura antigua dejó doblada la articulación central del dedo. Ahora está rígida.
condition-boutonniere-chronic-aim = La férula ayuda a poner recta la articulación, despacio y con suavidad. Después la mantiene así.

## Middle joint that bends backwards

condition-swan-neck-name = Articulación central que se dobla hacia atrás (cuello de cisne)
condition-swan-neck-what = La articulación central del dedo se va hacia atrás y se queda trabada allí. Entonces cuesta cerrar el puño.
condition-swan-neck-aim = La férula evita que la articulación se vaya hacia atrás. Usted todavía puede doblarla.

## Jammed finger, front of the middle joint

condition-pip-volar-plate-name = Dedo golpeado: articulación central, del lado de la palma
condition-pip-volar-plate-what = La placa firme de la articulación central, del lado de la palma, está dañada. Si el dedo se dobla hacia atrás, la placa vuelve a dañarse.
condition-pip-volar-plate-aim = La férula protege la articulación para que no se vaya hacia atrás. Doblarla en el sentido normal le hace bien.

## Sprained side of the middle joint

condition-pip-collateral-sprain-name = Esguince en un lado de la articulación central
condition-pip-collateral-sprain-what = El ligamento del lado de la articulación central está estirado o roto en parte. Si algo empuja el dedo hacia un lado, lo abre.
condition-pip-collateral-sprain-aim = La férula protege la articulación de empujones hacia los lados mientras sana el ligamento.

## Middle joint that does not straighten

condition-pip-flexion-contracture-name = Articulación central rígida y doblada
condition-pip-flexion-contracture-what = La articulación central tiene la piel y los ligamentos acortados, del lado de la palma. El dedo no se pone recto.
condition-pip-flexion-contracture-aim = La férula sujeta la articulación con suavidad hacia la posición recta. Mucho tiempo y con suavidad funciona mejor que poco tiempo y con fuerza.

## Worn joint at the fingertip

condition-dip-osteoarthritis-name = Articulación desgastada en la punta del dedo
condition-dip-osteoarthritis-what = La última articulación del dedo está desgastada. Puede doler y tener bultos.
condition-dip-osteoarthritis-aim = La férula deja descansar la articulación de noche. Así puede doler menos.

## Torn strap over the knuckle
## “Correa” is only ever a strap of the splint.

condition-sagittal-band-injury-name = Banda rota sobre el nudillo
condition-sagittal-band-injury-what = Una banda pequeña mantiene el tendón encima del nudillo grande. Está rota, y el tendón se sale al cerrar el puño.
condition-sagittal-band-injury-aim = La férula evita que el nudillo se doble mucho. El tendón se queda encima mientras sana la banda.

## Broken bone below the little finger

condition-fifth-metacarpal-neck-fracture-name = Hueso roto debajo del meñique
condition-fifth-metacarpal-neck-fracture-what = El hueso de la palma que está debajo del meñique se rompió cerca del nudillo. Tiene que volver a unirse.
condition-fifth-metacarpal-neck-fracture-aim = La férula protege el hueso mientras sana. También ayuda a que el dedo no se gire.

## Broken first bone of a finger

condition-proximal-phalanx-fracture-name = Rotura del primer hueso de un dedo
condition-proximal-phalanx-fracture-what = El hueso entre el nudillo grande y la articulación central está roto. Tiene que volver a unirse.
condition-proximal-phalanx-fracture-aim = La férula mantiene el hueso en su lugar mientras sana. Sujeta las articulaciones de modo que se pongan menos rígidas.
