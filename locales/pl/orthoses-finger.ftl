### Splints of the fingers and the hand: names, straps, places to check, and the steps of putting on and taking off.
### “Your finger” is the finger that the splint is for; where several fingers are in it, that one is “the treated finger”.
### The joints of a finger are the big knuckle, the middle joint and the tip. Left and right are never typed.

## Names
## The name stands inside sentences; the short form is a label in tables.

orthosis-tip-shell-custom-name = orteza czubka palca
orthosis-tip-shell-custom-short = Czubek palca
orthosis-tip-shell-ready-name = gotowa orteza czubka palca
orthosis-tip-shell-ready-short = Czubek palca, gotowa
orthosis-tip-cast-name = gips na czubek palca
orthosis-tip-cast-short = Gips, czubek palca
orthosis-finger-gutter-middle-joint-name = orteza środkowego stawu palca
orthosis-finger-gutter-middle-joint-short = Środkowy staw
orthosis-finger-gutter-long-name = orteza całego palca
orthosis-finger-gutter-long-short = Cały palec
orthosis-ring-stops-bending-back-name = pierścieniowa orteza przeciw wyginaniu palca do tyłu
orthosis-ring-stops-bending-back-short = Pierścień, nie do tyłu
orthosis-ring-keeps-straight-name = pierścieniowa orteza trzymająca palec prosto
orthosis-ring-keeps-straight-short = Pierścień, trzyma prosto
orthosis-serial-finger-cast-name = gips prostujący palec
orthosis-serial-finger-cast-short = Gips prostujący palec
orthosis-spring-finger-extension-name = orteza palca ze sprężyną
orthosis-spring-finger-extension-short = Palec, sprężyna
orthosis-finger-wedge-stepped-name = orteza palca z klinem
orthosis-finger-wedge-stepped-short = Palec, klin
orthosis-finger-extension-block-name = orteza palca z daszkiem
orthosis-finger-extension-block-short = Palec, daszek
orthosis-buddy-straps-name = paski łączące dwa palce
orthosis-buddy-straps-short = Paski na dwa palce
orthosis-knuckle-block-name = orteza knykcia jednego palca
orthosis-knuckle-block-short = Knykieć palca
orthosis-trigger-ring-name = pierścieniowa orteza środkowego stawu
orthosis-trigger-ring-short = Pierścień, środkowy staw
orthosis-relative-extension-yoke-name = orteza z belką unoszącą jeden palec
orthosis-relative-extension-yoke-short = Belka, palec wyżej
orthosis-relative-flexion-yoke-name = orteza z belką opuszczającą jeden palec
orthosis-relative-flexion-yoke-short = Belka, palec niżej
orthosis-dorsal-block-long-name = długa orteza na grzbiet ręki
orthosis-dorsal-block-long-short = Grzbiet ręki, długa
orthosis-dorsal-block-short-name = krótka orteza na grzbiet ręki
orthosis-dorsal-block-short-short = Grzbiet ręki, krótka
orthosis-ulnar-gutter-name = długa orteza palca serdecznego i małego
orthosis-ulnar-gutter-short = Serdeczny, mały, nadgarstek
orthosis-knuckle-shell-ring-little-name = orteza knykci palca serdecznego i małego
orthosis-knuckle-shell-ring-little-short = Knykcie, serdeczny i mały
orthosis-metacarpal-sleeve-name = rękaw na kość śródręcza
orthosis-metacarpal-sleeve-short = Rękaw, kość śródręcza
orthosis-phalanx-gutter-pair-name = orteza dwóch palców
orthosis-phalanx-gutter-pair-short = Dwa palce
orthosis-night-finger-extension-name = nocna orteza palca
orthosis-night-finger-extension-short = Palec, noc
orthosis-drift-strap-name = miękka orteza z paskami na knykcie
orthosis-drift-strap-short = Miękkie paski, knykcie
orthosis-knuckle-extension-block-name = orteza knykci z belką
orthosis-knuckle-extension-block-short = Belka, knykcie

## Straps
## Each name is put into “Close the …” and “Undo the …”. Polish: accusative = nominative.

strap-finger-tape = pasek z taśmy
strap-finger-base = pasek u nasady palca
strap-finger-past-middle-joint = pasek tuż za środkowym stawem
strap-finger-end = pasek blisko czubka palca
# Buddy straps hold a finger to its neighbour.
strap-finger-pair-base = pasek u nasady obu palców
strap-finger-pair-end = pasek za środkowymi stawami obu palców
# In a shell that holds a finger and its neighbour.
strap-finger-pair = pasek wokół obu palców
# Across all four fingers, under a roof on the back of the hand.
strap-finger-row = pasek przez palce
strap-finger-loops = pętle na palce

## Places to look at in the skin check

spot-finger-end-joint-back = wierzch stawu najbliżej czubka palca
spot-finger-nail-skin = skóra wokół paznokcia
spot-finger-pad-sides = boki poduszeczki na czubku palca
spot-finger-sides = oba boki palca
spot-finger-sides-near-base = oba boki palca, blisko jego nasady
spot-finger-middle-joint-back = wierzch środkowego stawu
spot-finger-middle-joint-backs = wierzch środkowych stawów
spot-ring-little-middle-joint-backs = wierzch środkowych stawów
spot-finger-joint-creases = fałdki palca od strony wnętrza dłoni
spot-finger-web = skóra, tam gdzie palce łączą się z dłonią
spot-finger-between = skóra między palcami
spot-finger-under-ring = skóra pod pierścieniem
spot-finger-cast-edges = skóra wzdłuż obu brzegów gipsu
spot-finger-tip-cast-edges = skóra wzdłuż obu brzegów gipsu
spot-finger-base-front = palec od strony wnętrza dłoni, blisko nasady
spot-finger-first-bone-back = grzbiet palca, obok knykcia
spot-finger-knuckle-backs = wierzch knykci
spot-ring-little-knuckle-backs = wierzch knykci
spot-finger-hand-edge = brzeg ręki po stronie małego palca
spot-finger-wrist-back-edge = grzbiet nadgarstka, tam gdzie kończy się orteza
spot-finger-over-break = skóra nad złamaną kością
spot-finger-wound-line = rana lub blizna

## Fingertip splints
## The tip must not bend while it heals: it lies on the table from before the strap opens until it is closed again.

step-finger-tip-on-table = Proszę położyć palec płasko na stole, z prostym czubkiem.
step-finger-dry-on-table = Proszę osuszyć palec ręcznikiem. Czubek ma leżeć płasko.
step-finger-slide-on-from-tip = Proszę nasuwać ortezę od czubka. Palec ma być prosty.
step-finger-lift-when-closed = Palec wolno unieść dopiero wtedy, gdy orteza jest zapięta.
step-finger-check-tip-straight = Proszę sprawdzić, czy czubek leży w ortezie prosto i pewnie.
step-finger-lay-out-towel = Przed odpięciem czegokolwiek proszę położyć na stole ręcznik.
step-finger-slide-off-forwards = Proszę zsunąć ortezę prosto przez czubek. Nie przechylać jej.
step-finger-tip-if-healing = Jeśli czubek się goi, musi leżeć płasko na stole.
step-finger-look-on-table = Proszę obejrzeć skórę. Palec ma zostać na stole.

## Splints along a finger

step-finger-straight-on-table = Proszę położyć palec na stole, tak prosto, jak się da.
step-finger-push-to-base = Proszę nasunąć ortezę aż do nasady palca.
step-finger-slide-on = Proszę delikatnie nasunąć ortezę od czubka.
step-finger-straps-off-joints = Proszę sprawdzić, czy żaden pasek nie leży na stawie.
step-finger-check-tip-bends = Proszę sprawdzić, czy czubek palca może się zginać.
step-finger-check-middle-joint-bends = Proszę sprawdzić, czy środkowy staw palca może się zginać.
step-finger-check-knuckle-bends = Proszę sprawdzić, czy knykieć palca może się zginać.
step-finger-middle-if-healing = Jeśli środkowy staw się goi, musi leżeć płasko na stole.
step-finger-straight-if-healing = Jeśli palec się goi, musi leżeć prosto na stole.

## A roof that stops a finger from straightening

step-finger-bend-slightly = Proszę trochę zgiąć środkowy staw palca.
step-finger-roof-on-finger = Proszę położyć ortezę wzdłuż grzbietu palca.
step-finger-check-stops-short = Proszę sprawdzić, czy daszek zatrzymuje palec przed zbyt mocnym wyprostem.
step-finger-bent-if-healing = Jeśli środkowy staw się goi, musi być trochę zgięty.

## Springs and wedges
## The pull comes last when it goes on and first when it comes off.

step-finger-joint-at-spring = Środkowy staw ma leżeć przy zgięciu sprężyny.
step-finger-spring-last = Proszę pozwolić sprężynie ciągnąć powoli.
step-finger-hold-spring = Proszę przytrzymać sprężynę, żeby nie odskoczyła.
step-finger-wedge-back = Proszę cofnąć klin do końca.
step-finger-wedge-in = Proszę wsunąć klin do znaku ustawionego w poradni.
step-finger-check-mild-pull = Proszę sprawdzić, czy orteza ciągnie lekko i nie boli.

## Rings

step-finger-check-ring = Proszę sprawdzić, czy pierścień jest czysty, suchy i nie jest wygięty.
step-finger-keep-straight = Palec ma być prosty.
step-finger-slide-ring-on = Proszę nasunąć pierścień od czubka.
step-finger-ring-cross-front = Proszę obracać pierścień, aż jego krzyż będzie pod środkowym stawem.
step-finger-ring-cross-back = Proszę obracać pierścień, aż jego krzyż będzie na wierzchu środkowego stawu.
step-finger-ring-over-joint = Proszę nasuwać pierścień, aż zakryje środkowy staw.
step-finger-check-full-bend = Proszę sprawdzić, czy palec może się zgiąć do końca.
step-finger-check-not-back = Środkowy staw nie może wygiąć się do tyłu. Proszę to sprawdzić.
step-finger-check-middle-joint-straight = Proszę sprawdzić, czy środkowy staw jest stale prosty.
step-finger-slide-ring-off = Proszę zsunąć pierścień przez czubek.
step-finger-ring-stuck = Jeśli pierścień się klinuje, proszę użyć trochę wody z mydłem.

## Casts
## Only the clinic puts a cast on and takes it off.

step-finger-cast-by-clinic = Gips może założyć tylko poradnia.
step-finger-cast-cover = Przed kąpielą lub myciem się proszę szczelnie osłonić gips torebką.
step-finger-cast-look-at-edges = Proszę obejrzeć skórę wzdłuż obu brzegów gipsu.
step-finger-cast-off-by-clinic = Gips może zdjąć tylko poradnia.
step-finger-cast-no-cutting = Proszę nie ciąć gipsu, nie ciągnąć go i nic pod niego nie wkładać.
step-finger-cast-slips = Jeśli się zsuwa lub pęka, palec musi być prosty. Proszę zadzwonić do nas.

## Buddy straps

step-finger-dry-between = Proszę dobrze osuszyć skórę, także między palcami.
step-finger-beside-neighbour = Proszę położyć palec obok sąsiedniego palca, który wybrała poradnia.
step-finger-check-both-bend = Proszę sprawdzić, czy oba palce zginają się razem.
step-finger-look-between = Proszę obejrzeć skórę z każdej strony, także między palcami.

## Knuckle splints for one finger

step-finger-push-into-ring = Proszę wsunąć palec do pierścienia.
step-finger-palm-piece-flat = Proszę położyć część dłoniową płasko we wnętrzu dłoni.

## Bar splints
## One finger lies higher or lower than its neighbours. In the first kind wrist and fingers must not drop.

step-finger-towel-roll = Proszę położyć na stole zwinięty ręcznik.
step-finger-wrist-back-on-towel = Proszę oprzeć rękę na ręczniku, z nadgarstkiem zgiętym do tyłu.
step-finger-fingers-straight = Palce mają być proste.
step-finger-yoke-on-top = Proszę położyć leczony palec na belce.
step-finger-yoke-others-under = Proszę wsunąć palce obok niego pod belkę.
step-finger-yoke-below = Proszę wsunąć leczony palec pod belkę.
step-finger-yoke-others-over = Proszę położyć palce obok niego na belce.
step-finger-yoke-to-base = Proszę przesunąć belkę do nasady palców.
step-finger-check-higher = Proszę sprawdzić, czy leczony palec leży wyżej niż palce obok.
step-finger-check-lower = Proszę sprawdzić, czy leczony palec leży niżej niż palce obok.
step-finger-check-joints-beyond-bend = Proszę sprawdzić, czy środkowe stawy i czubki mogą się zginać.
step-finger-slide-off-fingers = Proszę zsunąć ortezę do przodu z palców.
step-finger-tendon-if-healing = Jeśli goi się ścięgno, nie może opaść ani nadgarstek, ani palce.

## Splints on the back of the hand
## For sewn bending tendons: wrist and fingers stay bent, and nobody straightens them.

step-finger-only-when-allowed = Te kroki wolno robić tylko za zgodą poradni.
step-finger-curl-over-towel = Proszę oprzeć rękę na ręczniku, ze zgiętym nadgarstkiem i zwiniętymi palcami.
step-finger-roof-over-hand = Proszę opuścić ortezę na grzbiet ręki.
step-finger-check-under-roof = Proszę sprawdzić, czy każdy czubek palca leży pod daszkiem.
step-finger-stay-curled = Palce mają zostać zwinięte. Proszę ich nie prostować.
step-finger-look-while-curled = Proszę obejrzeć skórę. Palce mają zostać zwinięte.

## Splints for broken bones

step-finger-pad-between = Proszę położyć miękki pasek materiału między obu palcami.
step-finger-little-side-in = Proszę położyć w ortezie rękę stroną małego palca.
step-finger-knuckles-in-bend = Proszę sprawdzić, czy knykcie leżą w zgięciu ortezy.
step-finger-knuckles-bent-fingers-straight = Proszę zgiąć knykcie. Palce mają być proste.
step-finger-check-not-crossed = Proszę sprawdzić, czy żaden palec nie krzyżuje się z palcem obok.
step-finger-knuckles-if-healing = Jeśli goi się kość, knykcie muszą być zgięte.
step-finger-sleeve-over-hand = Proszę nasunąć rękaw przez rękę do bolesnej kości.
step-finger-sleeve-behind-knuckles = Przedni brzeg rękawa ma być za knykciami.
step-finger-slide-off-hand = Proszę zsunąć ortezę do przodu z ręki.

## Night splints, finger loops, knuckle bars

step-finger-rest-easy = Proszę położyć palec w ortezie tylko na tyle prosto, na ile to łatwe.
step-finger-check-no-pull = Proszę sprawdzić, czy nic nie ciągnie skóry.
step-finger-loops-on = Proszę wsunąć każdy palec do jego pętli.
step-finger-easy-pull = Proszę dociągnąć pętle tylko tak, jak jest wygodnie.
step-finger-check-in-line = Proszę sprawdzić, czy palce są skierowane prosto przed siebie.
step-finger-bend-knuckles-little = Proszę trochę zgiąć knykcie.
step-finger-under-bar = Proszę wsunąć palec serdeczny i mały pod belkę.
step-finger-check-straighten = Proszę sprawdzić, czy środkowe stawy mogą się wyprostować.

## Putting it on with one hand
## There is no other hand: table, towel, book, thigh and the thumb of the same hand do the work.

step-finger-against-book = Proszę położyć otwartą ortezę na stole i oprzeć ją o ciężką książkę.
step-finger-slide-along-table = Proszę wsunąć palec do ortezy, płasko po stole.
step-finger-slide-in-easy = Proszę wsunąć palec po stole do ortezy.
step-finger-push-under-roof = Proszę wsunąć każdy palec, który jest w ortezie, pod jej daszek.
step-finger-push-hand-in = Proszę wsunąć rękę do rękawa.
step-finger-own-thumb = Do pasków proszę użyć kciuka tej samej ręki.
step-finger-upright-in-towel = Proszę wcisnąć ortezę pionowo w zwinięty ręcznik.
step-finger-thumb-turns-ring = Do pierścienia proszę użyć kciuka tej samej ręki.
step-finger-wrist-stays-back = Nadgarstek ma być stale zgięty do tyłu.
step-finger-straps-as-loops = Na początku każdy pasek ma być zapięty w luźną pętlę.
step-finger-through-loops = Proszę wsunąć oba palce przez pętle.
step-finger-trap-strap-end = Proszę przytrzymać koniec każdego paska pod udem i lekko ciągnąć.
step-finger-cast-cover-with-knees = Proszę trzymać torebkę między kolanami i wsunąć do niej rękę.
step-finger-trained-helper = To robi osoba przeszkolona w poradni. Nigdy bez niej.
