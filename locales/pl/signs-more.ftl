### More signs to watch for. Each is a clause or a short noun phrase without a full stop.
### It stands in a list under a heading such as “Call us today if:”.
### Printed only where a condition names the sign.

## Emergencies

sign-finger-snap = Czuć trzask albo nagle nie da się zgiąć lub wyprostować palca lub kciuka
sign-tooth-cut-over-knuckle = Skaleczenie od zęba nad knykciem czerwienieje, puchnie lub boli
sign-finger-white-when-straight = Palec bieleje, gdy jest prosty
sign-graft-pale-or-tight = Nowa skóra na ręce blednie albo czuć napięcie głęboko w środku

## Today

sign-tip-droops-again = Czubek palca znowu opada albo zgiął się bez podparcia
sign-middle-joint-bends-alone = Środkowy staw palca opada albo zgiął się bez podparcia
sign-finger-cannot-straighten = Palec opada i nie da się go samodzielnie wyprostować
sign-thumb-tip-will-not-lift = Nie da się już unieść czubka kciuka
sign-finger-turns-over-neighbour = Palec skręca się lub krzyżuje z palcem obok
sign-finger-locks = Palec lub kciuk blokuje się i nie chce się wyprostować
sign-pin-loose = Drut jest luźny, zgięty lub złamany albo cieknie z jego otworu
sign-joint-slips = Staw wyskakuje z miejsca lub wydaje się luźny
sign-wrist-clunks = Nadgarstek przeskakuje albo boli głęboko w dołku obok kciuka
sign-night-numbness-grows = Palce drętwieją przez coraz więcej nocy albo zaczynają być zdrętwiałe cały dzień
sign-thumb-muscle-thinner = Poduszka mięśni pod kciukiem robi się cieńsza
sign-hand-muscle-thinner = Ręka chudnie między kciukiem a palcem wskazującym
sign-little-finger-numb = Mały palec jest stale bardziej zdrętwiały niż przedtem
sign-elbow-band-tingles = Ręka lub przedramię mrowi, gdy opaska lub orteza jest założona
sign-finger-stays-bent-more = Palec zostaje bardziej zgięty niż przedtem
sign-tight-hand-tighter = Ręka jest bardziej napięta lub trudniej ją otworzyć

## At the next visit

sign-clicks-under-load = Nadgarstek lub ręka strzela i boli przy opieraniu się lub dźwiganiu
