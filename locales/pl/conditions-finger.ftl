### Conditions of the fingers: the name, what is wrong, and what the splint does.
### Words for a reader of about twelve. The splint is never said to cure anything.

## Finger that catches

condition-trigger-finger-name = Zacinający się palec (palec trzaskający)
condition-trigger-finger-what = Ścięgno, które zgina palec, biegnie w tunelu w dłoni. Jest tam za grube i zacina się lub blokuje.
condition-trigger-finger-aim = Z ortezą palec zgina się mniej. Ścięgno mniej ociera się w tunelu i może odpocząć.

## Fingertip that droops, torn cord

condition-mallet-tendon-name = Opadający czubek palca, zerwane ścięgno (palec młotkowaty)
condition-mallet-tendon-what = Cienkie ścięgno, które unosi czubek palca, jest zerwane. Końce zrosną się tylko wtedy, gdy czubek nigdy nie opadnie.
condition-mallet-tendon-aim = Orteza trzyma czubek palca prosto, gdy ścięgno się goi.

## Fingertip that droops, chip of bone

condition-mallet-bony-name = Opadający czubek palca, odłamek kości (palec młotkowaty)
condition-mallet-bony-what = Ścięgno, które unosi czubek palca, oderwało odłamek kości. Zrośnie się on tylko wtedy, gdy czubek jest bez ruchu.
condition-mallet-bony-aim = Orteza trzyma czubek palca prosto, gdy kość się goi.

## Torn strip over the middle joint, fresh

condition-boutonniere-acute-name = Zerwane ścięgno nad środkowym stawem
condition-boutonniere-acute-what = Ścięgno, które prostuje środkowy staw palca, jest zerwane. Każde zgięcie rozciąga jego końce.
condition-boutonniere-acute-aim = Orteza trzyma środkowy staw prosto. Czubek palca jest wolny, a jego zginanie pomaga ścięgnu.

## Middle joint fixed bent after a tear

condition-boutonniere-chronic-name = Środkowy staw zgięty po dawnym zerwaniu
condition-boutonniere-chronic-what = Po dawnym zerwaniu środkowy staw palca pozostał zgięty. Jest teraz sztywny.
condition-boutonniere-chronic-aim = Orteza powoli i delikatnie prostuje staw. Później utrzymuje go prosto.

## Middle joint that bends backwards

condition-swan-neck-name = Środkowy staw, który wygina się do tyłu (łabędzia szyjka)
condition-swan-neck-what = Środkowy staw palca ucieka do tyłu i tam się blokuje. Wtedy trudno zacisnąć pięść.
condition-swan-neck-aim = Orteza nie pozwala stawowi wygiąć się do tyłu. Można go nadal zginać.

## Jammed finger, front of the middle joint

condition-pip-volar-plate-name = Wybity palec, przód środkowego stawu
condition-pip-volar-plate-what = Mocna płytka z przodu środkowego stawu jest uszkodzona. Wyginanie do tyłu szkodzi jej znowu.
condition-pip-volar-plate-aim = Orteza chroni staw przed wygięciem do tyłu. Zwykłe zginanie jest dla niego dobre.

## Sprained side of the middle joint

condition-pip-collateral-sprain-name = Skręcony bok środkowego stawu
condition-pip-collateral-sprain-what = Więzadło z boku środkowego stawu jest naciągnięte lub częściowo zerwane. Nacisk w bok rozrywa je dalej.
condition-pip-collateral-sprain-aim = Orteza chroni staw przed naciskiem w bok, gdy więzadło się goi.

## Middle joint that does not straighten

condition-pip-flexion-contracture-name = Środkowy staw sztywny i zgięty
condition-pip-flexion-contracture-what = Skóra i więzadła z przodu środkowego stawu się skróciły. Palec się nie prostuje.
condition-pip-flexion-contracture-aim = Orteza delikatnie trzyma staw w stronę wyprostu. Długo i delikatnie działa lepiej niż krótko i mocno.

## Worn joint at the fingertip

condition-dip-osteoarthritis-name = Zużyty staw przy czubku palca
condition-dip-osteoarthritis-what = Ostatni staw palca jest zużyty. Może boleć i mieć guzki.
condition-dip-osteoarthritis-aim = Orteza pozwala stawowi odpocząć w nocy. Może wtedy mniej boleć.

## Torn band over the knuckle

condition-sagittal-band-injury-name = Zerwane więzadło nad knykciem
condition-sagittal-band-injury-what = Małe więzadło trzyma ścięgno na wierzchu knykcia. Jest zerwane i przy zaciskaniu pięści ścięgno się zsuwa.
condition-sagittal-band-injury-aim = Orteza nie pozwala mocno zgiąć knykcia. Ścięgno zostaje na wierzchu, gdy więzadło się goi.

## Broken bone below the little finger

condition-fifth-metacarpal-neck-fracture-name = Złamana kość poniżej małego palca
condition-fifth-metacarpal-neck-fracture-what = Kość dłoni poniżej małego palca jest złamana blisko knykcia. Musi się zrosnąć.
condition-fifth-metacarpal-neck-fracture-aim = Orteza chroni kość, gdy się goi. Pomaga też, żeby palec się nie skręcił.

## Broken first bone of a finger

condition-proximal-phalanx-fracture-name = Złamana pierwsza kość palca
condition-proximal-phalanx-fracture-what = Kość między knykciem a środkowym stawem jest złamana. Musi się zrosnąć.
condition-proximal-phalanx-fracture-aim = Orteza trzyma kość na miejscu, gdy się goi. Układa stawy tak, żeby mniej sztywniały.
