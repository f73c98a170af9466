### Conditions: the name, what is wrong, and what the splint does.
### Words for a reader of about twelve. The splint is never said to cure anything.

## Sore tendons on the thumb side of the wrist

condition-de-quervain-name = Bolesne ścięgna kciuka przy nadgarstku (de Quervain)
condition-de-quervain-what = Dwa ścięgna kciuka ocierają się w ciasnym tunelu przy nadgarstku. Bolą i są spuchnięte.
condition-de-quervain-aim = Orteza trzyma nadgarstek i kciuk bez ruchu. Dzięki temu bolesne ścięgna odpoczywają.

## Torn band at the knuckle of the thumb, fresh

condition-thumb-ucl-acute-name = Zerwane więzadło przy knykciu kciuka
condition-thumb-ucl-acute-what = Więzadło po wewnętrznej stronie knykcia kciuka jest zerwane. Musi się zagoić bez nacisku w bok.
condition-thumb-ucl-acute-aim = Orteza chroni więzadło, gdy się goi. Nie pozwala odepchnąć kciuka w bok.

## Torn band at the knuckle of the thumb, old

condition-thumb-ucl-chronic-name = Luźny knykieć kciuka
condition-thumb-ucl-chronic-what = Po dawnym zerwaniu knykieć kciuka jest luźny. Ucieka przy ściskaniu kciukiem i palcem.
condition-thumb-ucl-chronic-aim = Orteza stabilizuje knykieć, gdy ręka pracuje.

## Worn joint at the base of the thumb

condition-thumb-cmc-osteoarthritis-name = Zużyty staw u nasady kciuka
condition-thumb-cmc-osteoarthritis-what = Staw u nasady kciuka jest zużyty. Przesuwa się i boli przy ściskaniu kciukiem i palcem.
condition-thumb-cmc-osteoarthritis-aim = Orteza stabilizuje nasadę kciuka. Zadania mogą być łatwiejsze i mniej boleć.
