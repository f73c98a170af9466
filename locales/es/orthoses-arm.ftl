### Splints of the thumb, the wrist and the arm, and of the whole hand: names, straps, places to check, and steps.
### What several splints share stands in orthoses.ftl. “Otra mano” is the hand without the splint.
### “Lazo” is a loop round a finger, “anilla” the loop that a strap runs through, “techo” a roof, “banda” a band.

## Names of wrist splints
## The name stands inside sentences, as after “Su …”; the short form is a label in tables.
## Every name begins with “férula”: other messages agree with it.

orthosis-wrist-neutral-name = férula recta de muñeca
orthosis-wrist-neutral-short = Muñeca, recta
orthosis-wrist-dorsal-shell-name = férula de muñeca por el dorso de la mano
orthosis-wrist-dorsal-shell-short = Muñeca, dorso de la mano
orthosis-wrist-all-round-name = férula envolvente de muñeca
orthosis-wrist-all-round-short = Muñeca, envolvente
orthosis-wrist-soft-stay-name = férula blanda de muñeca con barra
orthosis-wrist-soft-stay-short = Blanda, muñeca con barra
orthosis-wrist-soft-wrap-name = férula blanda de muñeca
orthosis-wrist-soft-wrap-short = Blanda, muñeca

## Names of thumb splints

orthosis-forearm-thumb-spica-tip-name = férula larga de pulgar hasta la punta
orthosis-forearm-thumb-spica-tip-short = Antebrazo y todo el pulgar
orthosis-thumb-knuckle-shell-name = férula para el nudillo del pulgar
orthosis-thumb-knuckle-shell-short = Nudillo del pulgar
orthosis-thumb-mcp-ring-name = férula de anillo para el pulgar
orthosis-thumb-mcp-ring-short = Anillo, pulgar
orthosis-thumb-tip-cap-name = férula para la punta del pulgar
orthosis-thumb-tip-cap-short = Punta del pulgar
# It keeps the space between thumb and index finger open.
orthosis-thumb-web-spacer-name = férula que separa el pulgar del índice
orthosis-thumb-web-spacer-short = Entre pulgar e índice
# Its roof keeps the thumb from straightening too far.
orthosis-thumb-dorsal-block-name = férula protectora de pulgar
orthosis-thumb-dorsal-block-short = Protección del pulgar
# It holds the thumb up, away from the palm.
orthosis-thumb-raised-long-name = férula de pulgar levantado
orthosis-thumb-raised-long-short = Pulgar levantado

## Names of arm splints and bands

orthosis-long-arm-rotation-name = férula larga de brazo
orthosis-long-arm-rotation-short = Del codo a la mano
orthosis-elbow-night-shell-name = férula de codo para la noche
orthosis-elbow-night-shell-short = Codo, de noche
orthosis-counterforce-band-name = férula de banda para el antebrazo
orthosis-counterforce-band-short = Banda, antebrazo
orthosis-distal-ulna-strap-name = férula de banda firme para la muñeca
orthosis-distal-ulna-strap-short = Banda, muñeca

## Names of splints for wrist and fingers

# Cords join wrist and fingers, so that each helps the other to move.
orthosis-tenodesis-assist-name = férula de ayuda para la muñeca y los dedos
orthosis-tenodesis-assist-short = Ayuda, muñeca y dedos
# Elastic pulls lift the fingers at the big knuckles.
orthosis-dynamic-knuckle-extension-name = férula que levanta los dedos
orthosis-dynamic-knuckle-extension-short = Levanta los dedos
orthosis-palm-shell-wrist-knuckles-name = férula de muñeca y nudillos
orthosis-palm-shell-wrist-knuckles-short = Muñeca y nudillos
orthosis-resting-hand-name = férula de reposo para la mano
orthosis-resting-hand-short = Mano en reposo
orthosis-intrinsic-plus-shell-name = férula de mano con los nudillos doblados
orthosis-intrinsic-plus-shell-short = Mano, nudillos doblados
orthosis-palm-extension-pan-name = férula de palma abierta
orthosis-palm-extension-pan-short = Palma abierta
orthosis-spread-hand-cushion-name = férula de cojín blando para la mano
orthosis-spread-hand-cushion-short = Cojín para la mano

## Straps
## Each name has its article and is put into “Cierre …” and “Abra …”.

strap-near-elbow = la correa que queda cerca del codo
strap-upper-arm = la correa de la parte alta del brazo
strap-hand-back = la correa del dorso de la mano
strap-across-fingers = la correa que cruza los dedos
strap-across-fingertips = la correa que queda cerca de las puntas de los dedos
# A band has one strap, which pulls it snug.
strap-band = la correa de la banda

## Places to look at in the skin check

spot-wrist-palm-side = muñeca, del lado de la palma
spot-wrist-back = dorso de la muñeca
spot-forearm-thumb-side = antebrazo, del lado del pulgar, junto a la muñeca
spot-knuckle-backs = dorso de los nudillos grandes
spot-middle-joint-backs = dorso de las articulaciones centrales de los dedos
spot-palm-below-knuckles = palma, justo debajo de los dedos
spot-palm-middle = centro de la palma
spot-splint-end-at-fingers = dedos, donde termina la férula
spot-between-fingers = piel entre los dedos
spot-fingertips = puntas de los dedos
spot-hand-edge-little-finger = borde de la mano, del lado del meñique
spot-loop-edges = piel debajo de los lazos de los dedos
spot-thumb-hole = piel alrededor del agujero del pulgar
spot-thumb-ball = parte gruesa de la palma, debajo del pulgar
spot-thumb-pad = yema del pulgar
spot-thumb-tip-joint-back = dorso de la articulación de la punta del pulgar
spot-thumbnail-edge = piel alrededor de la uña del pulgar
spot-ring-crossing = piel donde el anillo se cruza
spot-bar-end-in-palm = palma, donde termina la barra rígida
spot-wrap-edge = piel a lo largo de los bordes de la parte blanda
spot-forearm-under-band = antebrazo, debajo de la banda
spot-band-pad = piel debajo de la almohadilla de la banda
spot-elbow-point = punta del codo
spot-elbow-inner-groove = surco del lado interno del codo
spot-elbow-crease = pliegue de la parte delantera del codo
spot-upper-arm-edge = parte alta del brazo, donde termina la férula

## Getting ready
## One action a step. The other hand does the work.

step-wash-other-hand = Lávese la otra mano y séquela bien.
# For a splint that may only be changed by two people.
step-wait-for-helper = No haga esto sin ayuda. Espere a la persona que aprendió a ayudarle.
step-ask-helper-if-possible = Si puede, pida ayuda a alguien.
step-loop-straps-first = Antes de empezar, pase cada correa por su anilla.
step-lay-open-on-table = Ponga la férula abierta en una mesa.
step-hold-between-knees = Sujete la férula abierta entre las rodillas.
step-lay-opening-towards-you = Ponga la férula en una mesa, con la abertura hacia usted.
step-palm-down-on-table = Ponga la palma en una mesa.
step-sit-at-table = Siéntese a una mesa.

## Wrist splints: putting them on and taking them off

step-lay-splint-on-back = Ponga la férula sobre el dorso de la mano y del antebrazo.
# With one hand: the splint lies on the table with its hollow side up.
step-lay-back-of-arm-in = Ponga en ella el dorso de la mano y del antebrazo.
step-press-into-splint = Presione el brazo con suavidad hacia abajo, dentro de la férula.
step-pull-splint-open = Tire de la férula para abrirla un poco.
step-slip-wrist-in = Meta la muñeca por el lado abierto.
step-slip-wrist-out = Saque la muñeca. No la gire.
# The bar is a flat stiff strip inside a soft splint.
step-bar-on-palm-side = Gire la férula para que la barra quede del lado de la palma.
step-slide-hand-in = Meta la mano en la férula.
step-thumb-through-hole = Pase el pulgar por su agujero.
step-slide-off-hand = Deslice la férula hasta sacarla de la mano. No la arrastre.
step-wrap-round-wrist = Ponga la férula blanda alrededor de la muñeca.
step-lay-wrist-on-wrap = Ponga la muñeca en el centro de la férula blanda.
step-hold-wrap-on-table = Presione la mano contra una mesa para que la férula blanda no se mueva.
step-unwrap = Abra la férula blanda. No tire de ella para sacarla.

## Thumb splints: putting them on and taking them off

step-push-on-with-table-edge = Empuje la férula con suavidad contra el borde de una mesa, hasta que encaje.
step-keep-thumb-beside-index = Mantenga el pulgar junto al dedo índice.
step-slide-over-thumb = Deslice la férula sobre el pulgar.
step-seat-at-thumb-knuckle = Presione la férula hasta que encaje alrededor del nudillo del pulgar.
step-check-thumb-tip-lies-in = Revise que la punta del pulgar quede dentro de la férula.
step-bend-thumb-a-little = Doble un poco el pulgar.
step-slide-ring-on = Deslice el anillo por el pulgar hasta el nudillo.
# The therapist puts a mark on the ring.
step-turn-ring-to-mark = Gire el anillo hasta que su marca quede en el dorso del pulgar.
step-check-thumb-stops = Estire el pulgar. El anillo no debe dejar que se doble hacia atrás.
step-slide-ring-off = Deslice el anillo hasta sacarlo. Si se atasca, el agua con jabón ayuda.
step-rest-thumb-tip-flat = Apoye la yema del pulgar plana en una mesa.
step-slide-on-from-tip = Deslice la férula por el pulgar, empezando por la punta. Mantenga la punta plana.
step-push-thumb-in-flat = Meta el pulgar en la férula, deslizándolo plano por la mesa.
step-check-thumb-tip-straight = Revise que la punta del pulgar quede recta.
step-check-thumb-big-knuckle-bends = Revise que pueda doblar el nudillo grande del pulgar.
step-slide-off-tip-flat = Deslice la férula hasta sacarla. Mantenga la punta plana en la mesa.
step-look-at-skin-tip-flat = Mírese la piel. Mantenga la punta plana en la mesa.
step-set-between-thumb-and-index = Ponga la férula entre el pulgar y el dedo índice.

## Splints that guard a mended thumb: the thumb never leaves its position

step-rest-hand-curled-on-towel = Apoye la mano en una toalla enrollada, con la muñeca y los dedos curvados.
step-keep-thumb-loosely-bent = Mantenga el pulgar doblado y suelto todo el tiempo.
# The roof is the part of the splint along the back of the thumb.
step-check-thumb-under-roof = Revise que todo el pulgar quede debajo del techo de la férula.
step-rest-thumb-up-on-towel = Apoye la mano en una toalla, con el pulgar hacia arriba.
step-keep-thumb-raised = Mantenga el pulgar levantado todo el tiempo.
step-lay-splint-along-thumb-side = Ponga la férula a lo largo del antebrazo, del lado del pulgar.
step-check-thumb-straight-in-splint = Revise que todo el pulgar quede recto en la férula.

## Arm splints and bands

step-turn-hand-as-splint = Gire la mano según la forma de la férula.
step-lay-whole-arm-in = Ponga el brazo en la férula, con el codo doblado.
step-elbow-in-hollow = Deje que la punta del codo descanse en su hueco.
step-keep-hand-turned = Mantenga la mano girada de la misma manera.
step-bend-elbow-as-splint = Doble el codo tanto como está doblada la férula.
step-lay-splint-on-elbow-front = Ponga la férula a lo largo de la parte delantera del codo.
step-check-elbow-point-free = Revise que nada presione la punta del codo.
step-slide-band-up = Suba la banda abierta por el antebrazo, hacia el codo.
step-seat-band-below-elbow = Ponga la banda debajo del codo, donde el antebrazo es más grueso.
step-pad-on-sore-side = Gire la almohadilla hacia el lado del brazo que duele.
step-check-no-tingling = Cierre el puño. No debe sentir hormigueo en la mano.
step-slide-band-over-hand = Deslice la banda abierta sobre la mano.
step-seat-band-at-wrist-bone = Ponga la banda sobre el hueso redondo de la muñeca.
step-slide-band-off = Deslice la banda hasta sacarla. No la arrastre.

## Splints with loops for the fingers

step-fingers-through-loops = Meta cada dedo en su lazo.
step-loops-beside-knuckles = Deslice cada lazo hasta que quede cerca del nudillo grande.
step-fingers-out-of-loops = Saque cada dedo de su lazo.
step-check-fist-lifts-wrist = Forme un puño suave. La muñeca debe levantarse.
# A pull is an elastic cord between a loop and the frame.
step-hook-on-pulls = Enganche el elástico de cada lazo en el armazón.
step-unhook-pulls = Desenganche el elástico de cada lazo.
step-check-fingers-bend-against-pull = Revise que pueda doblar los dedos aunque los elásticos tiren.

## Splints for the whole hand

step-keep-wrist-up-fingers-straight = Mantenga la muñeca levantada y los dedos rectos.
step-hand-on-towel-fingers-straight = Apoye la mano en una toalla enrollada, con los dedos rectos.
step-check-middle-joints-bend = Revise que pueda doblar las articulaciones centrales de los dedos.
step-lay-forearm-in = Ponga el antebrazo en la férula.
step-thumb-on-its-rest = Ponga el pulgar en su propio lugar.
step-fingers-on-rest = Ponga los demás dedos en la férula, uno al lado del otro.
step-bend-big-knuckles = Doble los nudillos grandes. Deje los dedos rectos.
step-keep-big-knuckles-bent = Mantenga los nudillos grandes doblados y los dedos rectos.
step-fingers-flat-on-splint = Ponga cada dedo plano contra la férula.
step-check-middle-joints-straight = Revise que las articulaciones centrales de los dedos queden rectas.
step-spread-fingers-in-grooves = Ponga cada dedo recto en su propio surco.
step-let-hand-go-loose = Deje la mano tan suelta como pueda.
step-open-hand-slowly = Abra la mano despacio. Nunca la fuerce.
step-lay-hand-on-cushion = Ponga la palma y el antebrazo sobre el cojín.
step-fingers-in-gaps = Ponga cada dedo en su propio hueco.
step-dry-palm-and-gaps = Séquese la palma y la piel entre los dedos.
