### Splints: names, straps, places to check, and the steps of putting on and taking off.
### “Hand that wears the splint” and “other hand” are used; left and right are never typed.

## Names
## The name stands inside sentences; the short form is a label in tables. Polish: always in the nominative, after a colon.

orthosis-forearm-thumb-spica-name = długa orteza kciuka
orthosis-forearm-thumb-spica-short = Przedramię i kciuk
orthosis-hand-thumb-spica-name = krótka orteza kciuka
orthosis-hand-thumb-spica-short = Ręka i kciuk
orthosis-short-cmc-name = orteza nasady kciuka
orthosis-short-cmc-short = Nasada kciuka
orthosis-short-cmc-mcp-block-name = orteza nasady kciuka z blokadą knykcia
orthosis-short-cmc-mcp-block-short = Nasada i knykieć kciuka
orthosis-soft-wrist-thumb-wrap-name = miękka orteza nadgarstka i kciuka
orthosis-soft-wrist-thumb-wrap-short = Miękka, nadgarstek i kciuk
orthosis-soft-thumb-wrap-name = miękka orteza kciuka
orthosis-soft-thumb-wrap-short = Miękka, kciuk
orthosis-wrist-only-name = orteza nadgarstka
orthosis-wrist-only-short = Nadgarstek

## Straps
## Each name is put into “Close the …” and “Undo the …”. Polish: accusative = nominative (masculine things or plurals only).

strap-wrist = pasek na nadgarstku
strap-forearm = pasek na przedramieniu
strap-palm = pasek we wnętrzu dłoni
strap-thumb = pasek na kciuku
# A short splint ends at the wrist; this strap runs along that end.
strap-wrist-edge = pasek obok nadgarstka

## Places to look at in the skin check

spot-wrist-bone-thumb-side = kość nadgarstka po stronie kciuka
spot-wrist-bone-little-finger-side = kość nadgarstka po stronie małego palca
spot-thumb-web = skóra między kciukiem a palcem wskazującym
spot-thumb-knuckle = tył i boki knykcia kciuka
spot-thumb-base = kość u nasady kciuka
spot-palm-crease = wnętrze dłoni, tam gdzie kończy się orteza
spot-forearm-edge = przedramię, tam gdzie kończy się orteza

## Putting it on
## One action a step. The other hand does the work.

step-wash-dry-hands = Proszę umyć i dobrze osuszyć ręce.
step-check-lining = Proszę sprawdzić, czy orteza w środku jest czysta, sucha i gładka.
step-open-straps = Proszę odpiąć wszystkie paski.
step-rest-arm-on-table = Proszę oprzeć przedramię na stole.
step-slide-thumb-in = Proszę delikatnie wsunąć kciuk.
step-lay-hand-in = Proszę położyć wnętrze dłoni w ortezie, z kciukiem na zewnątrz.
step-seat-at-wrist = Proszę docisnąć ortezę tak, żeby jej zgięcie było przy nadgarstku.
step-seat-at-thumb-base = Proszę docisnąć ortezę wokół nasady kciuka.
step-smooth-the-wrap = Proszę wygładzić ortezę, żeby nie miała fałd.
# $strap is a strap's name, such as “wrist strap”.
step-close-strap = Proszę zapiąć { $strap }.
step-check-strap-room = Proszę sprawdzić, czy czubek palca drugiej ręki mieści się pod każdym paskiem.
step-check-wrist-bends = Proszę sprawdzić, czy nadgarstek może się zginać.
step-check-thumb-knuckle-bends = Proszę sprawdzić, czy knykieć i czubek kciuka mogą się zginać.
step-check-thumb-tip-bends = Proszę sprawdzić, czy czubek kciuka może się zginać.
step-check-fist = Proszę sprawdzić, czy można zacisnąć pięść i ruszać kciukiem.
step-look-at-fingers = Proszę obejrzeć palce i kciuk. Muszą być ciepłe i mieć zwykły kolor.

## Taking it off

# $strap is a strap's name, such as “wrist strap”.
step-undo-strap = Proszę odpiąć { $strap }.
step-lift-off = Proszę unieść i odsunąć ortezę. Nie ciągnąć jej po skórze.
step-lift-off-thumb-side = Proszę zdjąć ortezę od strony kciuka. Nie ciągnąć jej po skórze.
step-lift-off-elbow-front = Proszę zdjąć ortezę z przodu łokcia. Nie ciągnąć jej po skórze.
step-lift-out-of-thumb-web = Proszę wyjąć ortezę spomiędzy kciuka a palca wskazującego.
step-lift-off-little-side = Proszę zdjąć ortezę od strony małego palca. Nie ciągnąć jej po skórze.
step-slide-off-thumb = Proszę zsunąć ortezę z kciuka. Nie skręcać jej.
step-look-at-skin = Proszę obejrzeć skórę z każdej strony.
