### Splints of the fingers and the hand: names, straps, places to check, and the steps of putting on and taking off.
### “El dedo” is the finger that the splint is for; where several fingers are in it, that one is “el dedo tratado”.
### The joints of a finger are “el nudillo grande”, “la articulación central” and “la punta”.
### Left and right are never typed.

## Names
## The name stands inside sentences, as after “Su …”; the short form is a label in tables.
## Every name begins with “férula”: other messages agree with it.

orthosis-tip-shell-custom-name = férula para la punta del dedo
orthosis-tip-shell-custom-short = Punta del dedo
orthosis-tip-shell-ready-name = férula ya hecha para la punta del dedo
orthosis-tip-shell-ready-short = Punta del dedo, ya hecha
orthosis-tip-cast-name = férula de yeso para la punta del dedo
orthosis-tip-cast-short = Yeso, punta del dedo
orthosis-finger-gutter-middle-joint-name = férula para la articulación central del dedo
orthosis-finger-gutter-middle-joint-short = Articulación central
orthosis-finger-gutter-long-name = férula para todo el dedo
orthosis-finger-gutter-long-short = Todo el dedo
orthosis-ring-stops-bending-back-name = férula de anillo que no deja doblar el dedo hacia atrás
orthosis-ring-stops-bending-back-short = Anillo, sin doblar hacia atrás
orthosis-ring-keeps-straight-name = férula de anillo que mantiene recto el dedo
orthosis-ring-keeps-straight-short = Anillo, dedo recto
orthosis-serial-finger-cast-name = férula de yeso para estirar el dedo
orthosis-serial-finger-cast-short = Yeso para estirar el dedo
orthosis-spring-finger-extension-name = férula de dedo con resorte
orthosis-spring-finger-extension-short = Dedo, resorte
orthosis-finger-wedge-stepped-name = férula de dedo con cuña
orthosis-finger-wedge-stepped-short = Dedo, cuña
orthosis-finger-extension-block-name = férula de dedo con techo
orthosis-finger-extension-block-short = Dedo, techo
orthosis-buddy-straps-name = férula de correas para dedos vecinos
orthosis-buddy-straps-short = Correas, dedos vecinos
orthosis-knuckle-block-name = férula para el nudillo de un dedo
orthosis-knuckle-block-short = Nudillo de un dedo
orthosis-trigger-ring-name = férula de anillo para la articulación central
orthosis-trigger-ring-short = Anillo, articulación central
orthosis-relative-extension-yoke-name = férula de barra que levanta un dedo
orthosis-relative-extension-yoke-short = Barra, dedo levantado
orthosis-relative-flexion-yoke-name = férula de barra que baja un dedo
orthosis-relative-flexion-yoke-short = Barra, dedo bajado
orthosis-dorsal-block-long-name = férula larga para el dorso de la mano
orthosis-dorsal-block-long-short = Dorso de la mano, larga
orthosis-dorsal-block-short-name = férula corta para el dorso de la mano
orthosis-dorsal-block-short-short = Dorso de la mano, corta
orthosis-ulnar-gutter-name = férula larga para el anular y el meñique
orthosis-ulnar-gutter-short = Anular, meñique y muñeca
orthosis-knuckle-shell-ring-little-name = férula para los nudillos del anular y del meñique
orthosis-knuckle-shell-ring-little-short = Nudillos, anular y meñique
orthosis-metacarpal-sleeve-name = férula en forma de funda para los huesos de la mano
orthosis-metacarpal-sleeve-short = Funda, huesos de la mano
orthosis-phalanx-gutter-pair-name = férula para un par de dedos
orthosis-phalanx-gutter-pair-short = Par de dedos
orthosis-night-finger-extension-name = férula de dedo para la noche
orthosis-night-finger-extension-short = Dedo, de noche
orthosis-drift-strap-name = férula de correas blandas para los nudillos
orthosis-drift-strap-short = Correas blandas, nudillos
orthosis-knuckle-extension-block-name = férula para los nudillos con barra
orthosis-knuckle-extension-block-short = Nudillos, barra

## Straps
## Each name has its article and is put into “Cierre …” and “Abra …”.

strap-finger-tape = la correa de cinta adhesiva
strap-finger-base = la correa de la base del dedo
strap-finger-past-middle-joint = la correa que queda justo pasada la articulación central, hacia la punta
strap-finger-end = la correa que queda cerca de la punta del dedo
# Buddy straps hold a finger to its neighbour.
strap-finger-pair-base = la correa de la base de los dos dedos
strap-finger-pair-end = la correa que queda pasadas las articulaciones centrales de los dos dedos
# In a shell that holds a finger and its neighbour.
strap-finger-pair = la correa que rodea los dos dedos
# Across all four fingers, under a roof on the back of the hand.
strap-finger-row = la correa que cruza los dedos
strap-finger-loops = los lazos de los dedos

## Places to look at in the skin check

spot-finger-end-joint-back = dorso de la articulación más cercana a la punta del dedo
spot-finger-nail-skin = piel alrededor de la uña
spot-finger-pad-sides = lados de la yema del dedo
spot-finger-sides = los dos lados del dedo
spot-finger-sides-near-base = los dos lados del dedo, cerca de la base
spot-finger-middle-joint-back = dorso de la articulación central
spot-finger-middle-joint-backs = dorso de las articulaciones centrales
spot-ring-little-middle-joint-backs = dorso de las articulaciones centrales
spot-finger-joint-creases = pliegues del dedo, del lado de la palma
spot-finger-web = piel donde los dedos se unen a la palma
spot-finger-between = piel entre los dedos
spot-finger-under-ring = piel debajo del anillo
spot-finger-cast-edges = piel a lo largo de los dos bordes del yeso
spot-finger-tip-cast-edges = piel a lo largo de los dos bordes del yeso
spot-finger-base-front = dedo, del lado de la palma, cerca de la base
spot-finger-first-bone-back = dorso del dedo, junto al nudillo grande
spot-finger-knuckle-backs = dorso de los nudillos grandes
spot-ring-little-knuckle-backs = dorso de los nudillos grandes
spot-finger-hand-edge = borde de la mano, del lado del meñique
spot-finger-wrist-back-edge = dorso de la muñeca, donde termina la férula
spot-finger-over-break = piel encima del hueso roto
spot-finger-wound-line = herida o cicatriz

## Fingertip splints
## The tip must not bend while it heals: it lies on the table from before the strap opens until it is closed again.

step-finger-tip-on-table = Ponga el dedo plano en una mesa, con la punta recta.
step-finger-dry-on-table = Séquese el dedo con una toalla. Mantenga la punta plana.
step-finger-slide-on-from-tip = Deslice la férula por el dedo, empezando por la punta. Mantenga el dedo recto.
step-finger-lift-when-closed = Levante el dedo solo cuando la férula esté cerrada.
step-finger-check-tip-straight = Revise que la punta quede recta y firme en la férula.
step-finger-lay-out-towel = Ponga una toalla en la mesa antes de abrir nada.
step-finger-slide-off-forwards = Deslice la férula recta hasta sacarla por la punta. No la incline.
step-finger-tip-if-healing = Si la punta está sanando, manténgala plana en la mesa.
step-finger-look-on-table = Mírese la piel sin levantar el dedo de la mesa.

## Splints along a finger

step-finger-straight-on-table = Apoye el dedo en una mesa, tan recto como llegue.
step-finger-push-to-base = Empuje la férula hasta que llegue a la base del dedo.
step-finger-slide-on = Deslice la férula por el dedo con suavidad, empezando por la punta.
step-finger-straps-off-joints = Revise que ninguna correa quede sobre una articulación.
step-finger-check-tip-bends = Revise que pueda doblar la punta del dedo.
step-finger-check-middle-joint-bends = Revise que pueda doblar la articulación central del dedo.
step-finger-check-knuckle-bends = Revise que pueda doblar el nudillo grande del dedo.
step-finger-middle-if-healing = Si la articulación central está sanando, manténgala plana en la mesa.
step-finger-straight-if-healing = Si el dedo está sanando, manténgalo recto en la mesa.

## A roof that stops a finger from straightening

step-finger-bend-slightly = Doble un poco la articulación central del dedo.
step-finger-roof-on-finger = Ponga la férula a lo largo del dorso del dedo.
step-finger-check-stops-short = Revise que el techo no deje que el dedo se estire demasiado.
step-finger-bent-if-healing = Si la articulación central está sanando, manténgala un poco doblada.

## Springs and wedges
## The pull comes last when it goes on and first when it comes off.

step-finger-joint-at-spring = Ponga la articulación central justo donde se dobla el resorte.
step-finger-spring-last = Deje que el resorte tire despacio.
step-finger-hold-spring = Sujete el resorte para que no vuelva de golpe.
step-finger-wedge-back = Deslice la cuña hacia atrás todo lo que se pueda.
step-finger-wedge-in = Deslice la cuña hacia dentro hasta la marca que le indicaron en la consulta.
step-finger-check-mild-pull = Revise que el tirón sea suave y no duela.

## Rings

step-finger-check-ring = Revise que el anillo esté limpio, seco y sin doblar.
step-finger-keep-straight = Mantenga el dedo recto.
step-finger-slide-ring-on = Deslice el anillo por el dedo, empezando por la punta.
step-finger-ring-cross-front = Gire el anillo. El cruce debe quedar bajo la articulación central, del lado de la palma.
step-finger-ring-cross-back = Gire el anillo. El cruce debe quedar en el dorso de la articulación central.
step-finger-ring-over-joint = Empuje el anillo hasta que cubra la articulación central.
step-finger-check-full-bend = Revise que pueda doblar el dedo del todo.
step-finger-check-not-back = Revise que la articulación central no pueda doblarse hacia atrás.
step-finger-check-middle-joint-straight = Revise que la articulación central siga recta.
step-finger-slide-ring-off = Deslice el anillo hasta sacarlo por la punta.
step-finger-ring-stuck = Si el anillo se atasca, use un poco de agua con jabón.

## Casts
## Only the clinic puts a cast on and takes it off.

step-finger-cast-by-clinic = Deje que le pongan el yeso solo en la consulta.
step-finger-cast-cover = Antes de lavarse, cubra el yeso con una bolsa bien cerrada.
step-finger-cast-look-at-edges = Mírese la piel a lo largo de los dos bordes del yeso.
step-finger-cast-off-by-clinic = Deje que le quiten el yeso solo en la consulta.
step-finger-cast-no-cutting = No corte el yeso, no tire de él y no meta nada debajo.
step-finger-cast-slips = Si el yeso se desliza o se rompe, mantenga el dedo recto y llámenos.

## Buddy straps

step-finger-dry-between = Séquese bien la piel, también entre los dedos.
step-finger-beside-neighbour = Ponga el dedo junto al dedo vecino que le indicaron en la consulta.
step-finger-check-both-bend = Revise que los dos dedos se doblen juntos.
step-finger-look-between = Mírese la piel por todos los lados, también entre los dedos.

## Knuckle splints for one finger

step-finger-push-into-ring = Meta el dedo en el anillo.
step-finger-palm-piece-flat = Ponga la pieza de la palma plana contra la palma.

## Bar splints
## One finger lies higher or lower than its neighbours. In the first kind wrist and fingers must not drop.

step-finger-towel-roll = Ponga una toalla enrollada en la mesa.
step-finger-wrist-back-on-towel = Apoye la mano en la toalla, con la muñeca doblada hacia atrás.
step-finger-fingers-straight = Mantenga los dedos rectos.
step-finger-yoke-on-top = Ponga el dedo tratado encima de la barra.
step-finger-yoke-others-under = Pase los dedos de al lado por debajo de la barra.
step-finger-yoke-below = Pase el dedo tratado por debajo de la barra.
step-finger-yoke-others-over = Ponga los dedos de al lado encima de la barra.
step-finger-yoke-to-base = Empuje la barra hasta la base de los dedos.
step-finger-check-higher = Revise que el dedo tratado quede más alto que los de al lado.
step-finger-check-lower = Revise que el dedo tratado quede más bajo que los de al lado.
step-finger-check-joints-beyond-bend = Revise que pueda doblar las articulaciones centrales y las puntas de los dedos.
step-finger-slide-off-fingers = Deslice la férula hacia delante hasta sacarla de los dedos.
step-finger-tendon-if-healing = Si un tendón está sanando, no deje caer la muñeca ni los dedos.

## Splints on the back of the hand
## For sewn bending tendons: wrist and fingers stay bent, and nobody straightens them.

step-finger-only-when-allowed = Siga estos pasos solo si se lo permitieron en la consulta.
step-finger-curl-over-towel = Apoye la mano sobre la toalla, con la muñeca doblada y los dedos curvados.
step-finger-roof-over-hand = Baje la férula sobre el dorso de la mano.
step-finger-check-under-roof = Mírese las puntas de los dedos. Menos la del pulgar, todas deben quedar bajo el techo.
step-finger-stay-curled = Deje los dedos curvados. No los estire.
step-finger-look-while-curled = Mírese la piel. Mantenga los dedos curvados.

## Splints for broken bones

step-finger-pad-between = Ponga la tira blanda entre los dos dedos.
step-finger-little-side-in = Ponga la mano en la férula, sobre el lado del meñique.
step-finger-knuckles-in-bend = Revise que los nudillos grandes queden en la curva de la férula.
step-finger-knuckles-bent-fingers-straight = Doble los nudillos grandes. Mantenga los dedos rectos.
step-finger-check-not-crossed = Revise que ningún dedo se cruce con el de al lado.
step-finger-knuckles-if-healing = Si un hueso está sanando, mantenga doblados los nudillos grandes.
step-finger-sleeve-over-hand = Deslice la funda sobre la mano hasta el hueso que duele.
step-finger-sleeve-behind-knuckles = Mantenga el borde delantero de la funda detrás de los nudillos grandes.
step-finger-slide-off-hand = Deslice la férula hacia delante hasta sacarla de la mano.

## Night splints, finger loops, knuckle bars

step-finger-rest-easy = Ponga el dedo en la férula, recto solo hasta donde resulte fácil.
step-finger-check-no-pull = Revise que nada tire de la piel.
step-finger-loops-on = Meta cada dedo en su lazo.
step-finger-easy-pull = Tire de los lazos solo hasta donde resulte fácil.
step-finger-check-in-line = Revise que los dedos apunten recto hacia delante.
step-finger-bend-knuckles-little = Doble un poco los nudillos grandes.
step-finger-under-bar = Meta los dedos anular y meñique debajo de la barra.
step-finger-check-straighten = Revise que pueda estirar las articulaciones centrales.

## Putting it on with one hand
## There is no other hand: table, towel, book, thigh and the thumb of the same hand do the work.

step-finger-against-book = Ponga la férula abierta en una mesa, contra un libro pesado.
step-finger-slide-along-table = Deslice el dedo plano por la mesa hasta meterlo en la férula.
step-finger-slide-in-easy = Deslice el dedo por la mesa hasta meterlo en la férula.
step-finger-push-under-roof = Deslice bajo el techo cada dedo que va en la férula.
step-finger-push-hand-in = Meta la mano en la funda.
step-finger-own-thumb = Use el pulgar de la misma mano para las correas.
step-finger-upright-in-towel = Ponga la férula de pie y apriétela contra una toalla enrollada.
step-finger-thumb-turns-ring = Mueva el anillo con el pulgar de la misma mano.
step-finger-wrist-stays-back = Mantenga la muñeca doblada hacia atrás.
step-finger-straps-as-loops = Empiece con cada correa cerrada como un lazo flojo.
step-finger-through-loops = Pase los dos dedos por los lazos.
step-finger-trap-strap-end = Sujete el extremo de cada correa bajo el muslo y tire con suavidad.
step-finger-cast-cover-with-knees = Sujete la bolsa entre las rodillas y meta la mano.
step-finger-trained-helper = Deje que lo haga la persona que aprendió en la consulta. Nunca lo haga sin ayuda.
