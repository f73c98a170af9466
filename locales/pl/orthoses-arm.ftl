### Splints of the thumb, the wrist and the arm, and of the whole hand: names, straps, places to check, and steps.
### What several splints share stands in orthoses.ftl. “Other hand” is the hand without the splint.

## Names of wrist splints
## The name stands inside sentences; the short form is a label in tables.

orthosis-wrist-neutral-name = prosta orteza nadgarstka
orthosis-wrist-neutral-short = Nadgarstek, prosto
orthosis-wrist-dorsal-shell-name = orteza nadgarstka na grzbiet ręki
orthosis-wrist-dorsal-shell-short = Nadgarstek, grzbiet ręki
orthosis-wrist-all-round-name = orteza wokół całego nadgarstka
orthosis-wrist-all-round-short = Nadgarstek, dookoła
orthosis-wrist-soft-stay-name = miękka orteza nadgarstka ze sztabką
orthosis-wrist-soft-stay-short = Miękka, nadgarstek, sztabka
orthosis-wrist-soft-wrap-name = miękka owijka nadgarstka
orthosis-wrist-soft-wrap-short = Miękka, nadgarstek

## Names of thumb splints

orthosis-forearm-thumb-spica-tip-name = długa orteza kciuka z czubkiem
orthosis-forearm-thumb-spica-tip-short = Przedramię i cały kciuk
orthosis-thumb-knuckle-shell-name = orteza knykcia kciuka
orthosis-thumb-knuckle-shell-short = Knykieć kciuka
orthosis-thumb-mcp-ring-name = pierścieniowa orteza kciuka
orthosis-thumb-mcp-ring-short = Pierścień na kciuk
orthosis-thumb-tip-cap-name = orteza czubka kciuka
orthosis-thumb-tip-cap-short = Czubek kciuka
# It keeps the space between thumb and index finger open.
orthosis-thumb-web-spacer-name = orteza rozpierająca kciuk
orthosis-thumb-web-spacer-short = Odstęp kciuka
# Its roof keeps the thumb from straightening too far.
orthosis-thumb-dorsal-block-name = orteza osłaniająca kciuk
orthosis-thumb-dorsal-block-short = Osłona kciuka
# It holds the thumb up, away from the palm.
orthosis-thumb-raised-long-name = orteza uniesionego kciuka
orthosis-thumb-raised-long-short = Kciuk uniesiony

## Names of arm splints and bands

orthosis-long-arm-rotation-name = długa orteza od łokcia do ręki
orthosis-long-arm-rotation-short = Od łokcia do ręki
orthosis-elbow-night-shell-name = orteza łokcia na noc
orthosis-elbow-night-shell-short = Łokieć w nocy
orthosis-counterforce-band-name = opaska na przedramię
orthosis-counterforce-band-short = Opaska, przedramię
orthosis-distal-ulna-strap-name = mocna opaska na nadgarstek
orthosis-distal-ulna-strap-short = Opaska, nadgarstek

## Names of splints for wrist and fingers

# Cords join wrist and fingers, so that each helps the other to move.
orthosis-tenodesis-assist-name = orteza wspomagająca nadgarstek i palce
orthosis-tenodesis-assist-short = Pomoc, nadgarstek i palce
# Elastic pulls lift the fingers at the big knuckles.
orthosis-dynamic-knuckle-extension-name = orteza unosząca palce
orthosis-dynamic-knuckle-extension-short = Unosi palce
orthosis-palm-shell-wrist-knuckles-name = orteza nadgarstka i knykci
orthosis-palm-shell-wrist-knuckles-short = Nadgarstek i knykcie
orthosis-resting-hand-name = spoczynkowa orteza ręki
orthosis-resting-hand-short = Ręka w spoczynku
orthosis-intrinsic-plus-shell-name = orteza ręki ze zgiętymi knykciami
orthosis-intrinsic-plus-shell-short = Ręka, knykcie zgięte
orthosis-palm-extension-pan-name = orteza otwartej dłoni
orthosis-palm-extension-pan-short = Otwarta dłoń
orthosis-spread-hand-cushion-name = miękka poduszka pod rękę
orthosis-spread-hand-cushion-short = Poduszka pod rękę

## Straps
## Each name is put into “Close the …” and “Undo the …”. Polish: accusative = nominative.

strap-near-elbow = pasek blisko łokcia
strap-upper-arm = pasek na ramieniu
strap-hand-back = pasek przez grzbiet ręki
strap-across-fingers = pasek przez palce
strap-across-fingertips = pasek blisko czubków palców
# A band has one strap, which pulls it snug.
strap-band = pasek opaski

## Places to look at in the skin check

spot-wrist-palm-side = nadgarstek od strony wnętrza dłoni
spot-wrist-back = grzbiet nadgarstka
spot-forearm-thumb-side = przedramię po stronie kciuka, tuż nad nadgarstkiem
spot-knuckle-backs = wierzch knykci
spot-middle-joint-backs = wierzch środkowych stawów palców
spot-palm-below-knuckles = wnętrze dłoni, tuż poniżej palców
spot-palm-middle = środek wnętrza dłoni
spot-splint-end-at-fingers = palce, tam gdzie kończy się orteza
spot-between-fingers = skóra między palcami
spot-fingertips = czubki palców
spot-hand-edge-little-finger = brzeg ręki po stronie małego palca
spot-loop-edges = skóra pod pętlami na palce
spot-thumb-hole = skóra wokół otworu na kciuk
spot-thumb-ball = gruba część dłoni pod kciukiem
spot-thumb-pad = miękka poduszeczka kciuka
spot-thumb-tip-joint-back = wierzch końcowego stawu kciuka
spot-thumbnail-edge = skóra wokół paznokcia kciuka
spot-ring-crossing = skóra, tam gdzie pierścień się krzyżuje
spot-bar-end-in-palm = wnętrze dłoni, tam gdzie kończy się sztabka
spot-wrap-edge = skóra wzdłuż brzegów miękkiej części
spot-forearm-under-band = przedramię pod opaską
spot-band-pad = skóra pod poduszeczką opaski
spot-elbow-point = czubek łokcia
spot-elbow-inner-groove = rowek po wewnętrznej stronie łokcia
spot-elbow-crease = zgięcie z przodu łokcia
spot-upper-arm-edge = ramię, tam gdzie kończy się orteza

## Getting ready
## One action a step. The other hand does the work.

step-wash-other-hand = Proszę umyć i dobrze osuszyć drugą rękę.
# For a splint that may only be changed by two people.
step-wait-for-helper = Proszę nie robić tego bez pomocy. Proszę zaczekać na przeszkoloną osobę.
step-ask-helper-if-possible = Jeśli można, proszę poprosić kogoś o pomoc.
step-loop-straps-first = Przed zakładaniem proszę przełożyć każdy pasek przez jego szlufkę.
step-lay-open-on-table = Proszę położyć otwartą ortezę na stole.
step-hold-between-knees = Proszę trzymać otwartą ortezę między kolanami.
step-lay-opening-towards-you = Proszę położyć ortezę na stole, otworem do siebie.
step-palm-down-on-table = Proszę położyć wnętrze dłoni na stole.
step-sit-at-table = Proszę usiąść przy stole.

## Wrist splints: putting them on and taking them off

step-lay-splint-on-back = Proszę położyć ortezę na grzbiecie ręki i przedramienia.
# With one hand: the splint lies on the table with its hollow side up.
step-lay-back-of-arm-in = Proszę położyć w niej grzbiet ręki i przedramienia.
step-press-into-splint = Proszę delikatnie wcisnąć przedramię w ortezę.
step-pull-splint-open = Proszę trochę rozchylić ortezę.
step-slip-wrist-in = Proszę wsunąć nadgarstek z boku.
step-slip-wrist-out = Proszę wysunąć nadgarstek. Nie skręcać go.
# The bar is a flat stiff strip inside a soft splint.
step-bar-on-palm-side = Proszę obrócić ortezę tak, żeby sztabka była po stronie wnętrza dłoni.
step-slide-hand-in = Proszę wsunąć rękę do ortezy.
step-thumb-through-hole = Proszę przełożyć kciuk przez jego otwór.
step-slide-off-hand = Proszę zsunąć ortezę z ręki. Nie ciągnąć jej po skórze.
step-wrap-round-wrist = Proszę owinąć nadgarstek owijką.
step-lay-wrist-on-wrap = Proszę położyć nadgarstek na środku owijki.
step-hold-wrap-on-table = Proszę docisnąć rękę do stołu, żeby przytrzymać owijkę.
step-unwrap = Proszę rozwinąć owijkę. Nie ściągać jej.

## Thumb splints: putting them on and taking them off

step-push-on-with-table-edge = Proszę delikatnie docisnąć ortezę o brzeg stołu.
step-keep-thumb-beside-index = Kciuk ma być obok palca wskazującego.
step-slide-over-thumb = Proszę nasunąć ortezę na kciuk.
step-seat-at-thumb-knuckle = Proszę docisnąć ortezę wokół knykcia kciuka.
step-check-thumb-tip-lies-in = Proszę sprawdzić, czy czubek kciuka leży w ortezie.
step-bend-thumb-a-little = Proszę trochę zgiąć kciuk.
step-slide-ring-on = Proszę nasunąć pierścień na kciuk aż do knykcia.
# The therapist puts a mark on the ring.
step-turn-ring-to-mark = Proszę obracać pierścień, aż jego znak będzie na grzbiecie kciuka.
step-check-thumb-stops = Proszę wyprostować kciuk. Pierścień musi zatrzymać go przed wygięciem do tyłu.
step-slide-ring-off = Proszę zsunąć pierścień. Jeśli się klinuje, pomaga woda z mydłem.
step-rest-thumb-tip-flat = Proszę położyć poduszeczkę kciuka płasko na stole.
step-slide-on-from-tip = Proszę nasuwać ortezę od czubka. Czubek ma leżeć płasko.
step-push-thumb-in-flat = Proszę wsunąć kciuk do ortezy, płasko po stole.
step-check-thumb-tip-straight = Proszę sprawdzić, czy czubek kciuka leży prosto.
step-check-thumb-big-knuckle-bends = Proszę sprawdzić, czy knykieć kciuka może się zginać.
step-slide-off-tip-flat = Proszę zsunąć ortezę. Czubek ma leżeć płasko na stole.
step-look-at-skin-tip-flat = Proszę obejrzeć skórę. Czubek ma leżeć płasko na stole.
step-set-between-thumb-and-index = Proszę umieścić ortezę między kciukiem a palcem wskazującym.

## Splints that guard a mended thumb: the thumb never leaves its position

step-rest-hand-curled-on-towel = Proszę oprzeć rękę na zwiniętym ręczniku. Nadgarstek i palce mają być zgięte.
step-keep-thumb-loosely-bent = Kciuk ma być cały czas luźno zgięty.
# The roof is the part of the splint along the back of the thumb.
step-check-thumb-under-roof = Proszę sprawdzić, czy cały kciuk leży pod daszkiem.
step-rest-thumb-up-on-towel = Proszę oprzeć rękę na ręczniku, kciukiem do góry.
step-keep-thumb-raised = Kciuk ma być cały czas uniesiony.
step-lay-splint-along-thumb-side = Proszę położyć ortezę wzdłuż przedramienia, po stronie kciuka.
step-check-thumb-straight-in-splint = Proszę sprawdzić, czy cały kciuk leży w ortezie prosto.

## Arm splints and bands

step-turn-hand-as-splint = Proszę obrócić rękę tak, jak ukształtowana jest orteza.
step-lay-whole-arm-in = Proszę położyć w ortezie przedramię i rękę, ze zgiętym łokciem.
step-elbow-in-hollow = Czubek łokcia ma leżeć w swoim wgłębieniu.
step-keep-hand-turned = Ręka ma być cały czas tak samo obrócona.
step-bend-elbow-as-splint = Proszę zgiąć łokieć tak mocno, jak zgięta jest orteza.
step-lay-splint-on-elbow-front = Proszę położyć ortezę wzdłuż przodu łokcia.
step-check-elbow-point-free = Proszę sprawdzić, czy nic nie naciska na czubek łokcia.
step-slide-band-up = Proszę nasunąć otwartą opaskę na przedramię.
step-seat-band-below-elbow = Proszę umieścić opaskę tam, gdzie przedramię jest najgrubsze, poniżej łokcia.
step-pad-on-sore-side = Proszę obrócić poduszeczkę na bolesną stronę przedramienia.
step-check-no-tingling = Proszę zacisnąć pięść. Ręka nie może mrowić.
step-slide-band-over-hand = Proszę nasunąć otwartą opaskę przez rękę.
step-seat-band-at-wrist-bone = Proszę umieścić opaskę nad okrągłą kością nadgarstka.
step-slide-band-off = Proszę zsunąć opaskę. Nie ciągnąć jej po skórze.

## Splints with loops for the fingers

step-fingers-through-loops = Proszę przełożyć każdy palec przez jego pętlę.
step-loops-beside-knuckles = Proszę przesunąć każdą pętlę blisko knykcia.
step-fingers-out-of-loops = Proszę wyjąć każdy palec z jego pętli.
step-check-fist-lifts-wrist = Proszę lekko zacisnąć pięść. Nadgarstek musi się unieść.
# A pull is an elastic cord between a loop and the frame.
step-hook-on-pulls = Proszę zaczepić gumkę każdej pętli o ramę.
step-unhook-pulls = Proszę odczepić gumkę każdej pętli.
step-check-fingers-bend-against-pull = Proszę sprawdzić, czy palce mogą się zginać mimo ciągnięcia gumek.

## Splints for the whole hand

step-keep-wrist-up-fingers-straight = Nadgarstek ma być w górze, a palce proste.
step-hand-on-towel-fingers-straight = Proszę oprzeć rękę na zwiniętym ręczniku, z prostymi palcami.
step-check-middle-joints-bend = Proszę sprawdzić, czy środkowe stawy palców mogą się zginać.
step-lay-forearm-in = Proszę położyć przedramię w ortezie.
step-thumb-on-its-rest = Proszę położyć kciuk na jego miejscu.
step-fingers-on-rest = Proszę położyć palce na ortezie, jeden obok drugiego.
step-bend-big-knuckles = Proszę zgiąć knykcie. Palce zostawić proste.
step-keep-big-knuckles-bent = Knykcie mają być zgięte, a palce proste.
step-fingers-flat-on-splint = Proszę położyć każdy palec płasko na ortezie.
step-check-middle-joints-straight = Proszę sprawdzić, czy środkowe stawy palców są proste.
step-spread-fingers-in-grooves = Proszę położyć każdy palec prosto w jego rowku.
step-let-hand-go-loose = Proszę rozluźnić rękę, jak tylko się da.
step-open-hand-slowly = Proszę otwierać rękę powoli. Nigdy na siłę.
step-lay-hand-on-cushion = Proszę położyć wnętrze dłoni i przedramię na poduszce.
step-fingers-in-gaps = Proszę położyć każdy palec w jego przerwie.
step-dry-palm-and-gaps = Proszę osuszyć wnętrze dłoni i skórę między palcami.
