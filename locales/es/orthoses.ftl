### Splints: names, straps, places to check, and the steps of putting on and taking off.
### “Hand that wears the splint” and “other hand” are used; left and right are never typed.

## Names
## The name stands inside sentences, as after “Su …”; the short form is a label in tables.
## Every name begins with “férula”: other messages agree with it.

orthosis-forearm-thumb-spica-name = férula larga de pulgar
orthosis-forearm-thumb-spica-short = Antebrazo y pulgar
orthosis-hand-thumb-spica-name = férula corta de pulgar
orthosis-hand-thumb-spica-short = Mano y pulgar
orthosis-short-cmc-name = férula para la base del pulgar
orthosis-short-cmc-short = Base del pulgar
orthosis-short-cmc-mcp-block-name = férula para la base del pulgar con tope en el nudillo
orthosis-short-cmc-mcp-block-short = Base y nudillo del pulgar
orthosis-soft-wrist-thumb-wrap-name = férula blanda de muñeca y pulgar
orthosis-soft-wrist-thumb-wrap-short = Blanda, muñeca y pulgar
orthosis-soft-thumb-wrap-name = férula blanda de pulgar
orthosis-soft-thumb-wrap-short = Blanda, pulgar
orthosis-wrist-only-name = férula de muñeca
orthosis-wrist-only-short = Muñeca

## Straps
## Each name has its article and is put into “Cierre …” and “Abra …”.

strap-wrist = la correa de la muñeca
strap-forearm = la correa del antebrazo
strap-palm = la correa de la palma
strap-thumb = la correa del pulgar
# A short splint ends at the wrist; this strap runs along that end.
strap-wrist-edge = la correa que queda junto a la muñeca

## Places to look at in the skin check

spot-wrist-bone-thumb-side = hueso de la muñeca, del lado del pulgar
spot-wrist-bone-little-finger-side = hueso de la muñeca, del lado del meñique
spot-thumb-web = piel entre el pulgar y el índice
spot-thumb-knuckle = dorso y lados del nudillo del pulgar
spot-thumb-base = hueso de la base del pulgar
spot-palm-crease = palma, donde termina la férula
spot-forearm-edge = antebrazo, donde termina la férula

## Putting it on
## One action a step. The other hand does the work.

step-wash-dry-hands = Lávese las manos y séquelas bien.
step-check-lining = Revise que la férula esté limpia, seca y lisa por dentro.
step-open-straps = Abra todas las correas.
step-rest-arm-on-table = Apoye el antebrazo en una mesa.
step-slide-thumb-in = Meta el pulgar en la férula con suavidad.
step-lay-hand-in = Ponga la palma en la férula, con el pulgar por fuera.
step-seat-at-wrist = Presione la férula hasta que su curva encaje en la muñeca.
step-seat-at-thumb-base = Presione la férula hasta que encaje alrededor de la base del pulgar.
step-smooth-the-wrap = Alise la férula blanda para que no haga arrugas.
# $strap is a strap's name with its article, such as “la correa de la muñeca”.
step-close-strap = Cierre { $strap }.
step-check-strap-room = Revise que bajo cada correa quepa la punta de un dedo de la otra mano.
step-check-wrist-bends = Revise que pueda doblar la muñeca.
step-check-thumb-knuckle-bends = Revise que pueda doblar el nudillo y la punta del pulgar.
step-check-thumb-tip-bends = Revise que pueda doblar la punta del pulgar.
step-check-fist = Revise que pueda cerrar el puño y mover el pulgar.
step-look-at-fingers = Mírese los dedos. Deben seguir calientes y con su color de siempre.

## Taking it off

# $strap is a strap's name with its article, such as “la correa de la muñeca”.
step-undo-strap = Abra { $strap }.
step-lift-off = Levante la férula para separarla de la piel. No la arrastre.
step-lift-off-thumb-side = Separe la férula por el lado del pulgar. No la arrastre.
step-lift-off-elbow-front = Separe la férula de la parte delantera del codo. No la arrastre.
step-lift-out-of-thumb-web = Saque la férula de entre el pulgar y el dedo índice.
step-lift-off-little-side = Separe la férula por el lado del meñique. No la arrastre.
step-slide-off-thumb = Deslice la férula hasta sacarla del pulgar. No la gire.
step-look-at-skin = Mírese la piel por todos los lados.
