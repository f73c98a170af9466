### More exercises: name, starting position and one action for each step.
### The name is a short heading. Steps are numbered by the program.
### $hold is a finished length of time, such as the words for five seconds (accusative).
### “Other hand” is the hand without the splint. “Treated finger” is the finger that the splint is for.
### The joints of a finger are the big knuckle, the middle joint and the tip.

## Arm and wrist

exercise-shoulder-reach-name = Sięganie całą ręką w górę
exercise-shoulder-reach-start = Proszę usiąść lub stanąć, z ręką wzdłuż ciała.
exercise-shoulder-reach-step-1 = Proszę unieść całą rękę przed siebie, na tyle wysoko, na ile to łatwe.
exercise-shoulder-reach-step-2 = Proszę wytrzymać { $hold }.
exercise-shoulder-reach-step-3 = Proszę powoli opuścić całą rękę.
exercise-shoulder-reach-step-4 = Następnym razem proszę unieść ją w bok.

exercise-wrist-dart-name = Ruch nadgarstka jak przy rzucaniu lotką
exercise-wrist-dart-start = Proszę oprzeć przedramię na stole, na stronie małego palca, z ręką poza brzegiem. Palce i kciuk mają być luźne.
exercise-wrist-dart-step-1 = Proszę przechylić rękę do tyłu i w stronę kciuka.
exercise-wrist-dart-step-2 = Proszę wytrzymać { $hold }.
exercise-wrist-dart-step-3 = Proszę przechylić rękę do przodu i w stronę małego palca.
exercise-wrist-dart-step-4 = Proszę wytrzymać { $hold }.

# Ordered by the clinician only.
exercise-wrist-swing-with-fingers-name = Wspólny ruch nadgarstka i palców
exercise-wrist-swing-with-fingers-start = Proszę oprzeć łokieć na stole. Ruszać tylko tak daleko, jak pokazał terapeuta.
exercise-wrist-swing-with-fingers-step-1 = Nadgarstek ma opaść do przodu, tak żeby palce się otworzyły.
exercise-wrist-swing-with-fingers-step-2 = Proszę wytrzymać { $hold }.
exercise-wrist-swing-with-fingers-step-3 = Proszę unieść nadgarstek, tak żeby palce zwinęły się w lekką pięść.
exercise-wrist-swing-with-fingers-step-4 = Proszę wytrzymać { $hold }.

exercise-forearm-front-stretch-name = Rozciąganie przedramienia od strony wnętrza dłoni
exercise-forearm-front-stretch-start = Proszę wyciągnąć całą rękę przed siebie, wnętrzem dłoni w górę.
exercise-forearm-front-stretch-step-1 = Proszę wyprostować łokieć.
exercise-forearm-front-stretch-step-2 = Proszę chwycić wnętrze dłoni i palce drugą ręką.
exercise-forearm-front-stretch-step-3 = Proszę delikatnie ciągnąć rękę w dół, aż będzie czuć napięcie.
exercise-forearm-front-stretch-step-4 = Proszę wytrzymać { $hold }.
exercise-forearm-front-stretch-step-5 = Proszę powoli puścić.

exercise-forearm-back-stretch-name = Rozciąganie grzbietu przedramienia
exercise-forearm-back-stretch-start = Proszę wyciągnąć całą rękę przed siebie, wnętrzem dłoni w dół. Palce mają być luźne.
exercise-forearm-back-stretch-step-1 = Proszę wyprostować łokieć.
exercise-forearm-back-stretch-step-2 = Proszę położyć drugą rękę na grzbiecie ręki.
exercise-forearm-back-stretch-step-3 = Proszę delikatnie naciskać rękę w dół, aż będzie czuć napięcie.
exercise-forearm-back-stretch-step-4 = Proszę wytrzymać { $hold }.
exercise-forearm-back-stretch-step-5 = Proszę powoli puścić.

exercise-palms-together-stretch-name = Rozciąganie nadgarstków ze złożonymi dłońmi
exercise-palms-together-stretch-start = Proszę złożyć dłonie przed klatką piersiową, palcami do góry.
exercise-palms-together-stretch-step-1 = Proszę powoli opuszczać ręce. Dłonie mają być złożone.
exercise-palms-together-stretch-step-2 = Proszę zatrzymać się, gdy czuć lekkie napięcie.
exercise-palms-together-stretch-step-3 = Proszę wytrzymać { $hold }.
exercise-palms-together-stretch-step-4 = Proszę znowu unieść ręce.

## Fingers

# A neighbour of the treated finger may be in the splint too.
exercise-free-finger-bend-name = Ruch wolnych palców
exercise-free-finger-bend-start = Proszę unieść rękę, palcami do góry.
exercise-free-finger-bend-step-1 = Proszę zgiąć tylko te palce, którymi wolno swobodnie ruszać.
exercise-free-finger-bend-step-2 = Proszę wytrzymać { $hold }.
exercise-free-finger-bend-step-3 = Proszę powoli je wyprostować.

exercise-fingers-straight-name = Prostowanie palców
exercise-fingers-straight-start = Proszę unieść rękę, palcami do góry.
exercise-fingers-straight-step-1 = Proszę wyprostować wszystkie palce na tyle, na ile to łatwe.
exercise-fingers-straight-step-2 = Proszę wytrzymać { $hold }.
exercise-fingers-straight-step-3 = Proszę je rozluźnić.

exercise-tabletop-name = Zginanie tylko knykci
exercise-tabletop-start = Proszę unieść rękę, palcami do góry.
exercise-tabletop-step-1 = Proszę zgiąć knykcie. Reszta palców ma być prosta.
exercise-tabletop-step-2 = Proszę wytrzymać { $hold }.
exercise-tabletop-step-3 = Proszę wyprostować knykcie.

exercise-straight-fist-name = Płaska pięść
exercise-straight-fist-start = Proszę unieść rękę, palcami do góry.
exercise-straight-fist-step-1 = Proszę zgiąć knykcie i środkowe stawy. Czubki mają być proste.
exercise-straight-fist-step-2 = Proszę położyć czubki palców płasko na wnętrzu dłoni.
exercise-straight-fist-step-3 = Proszę wytrzymać { $hold }.
exercise-straight-fist-step-4 = Proszę wyprostować palce.

exercise-five-positions-name = Kolejne kształty ręki
exercise-five-positions-start = Proszę unieść rękę, palcami do góry.
exercise-five-positions-step-1 = Proszę wyprostować wszystkie palce.
exercise-five-positions-step-2 = Proszę zrobić haczyk. Knykcie mają być proste.
exercise-five-positions-step-3 = Proszę zrobić lekką pełną pięść.
exercise-five-positions-step-4 = Proszę zgiąć tylko knykcie. Reszta ma być prosta.
exercise-five-positions-step-5 = Proszę położyć czubki palców płasko na wnętrzu dłoni. Czubki mają być proste.
exercise-five-positions-step-6 = Każdy kształt proszę trzymać { $hold } przed następnym.

exercise-block-tip-bend-name = Zginanie tylko czubka palca
exercise-block-tip-bend-start = Proszę oprzeć rękę na stole, wnętrzem dłoni w górę. Drugą ręką przytrzymać leczony palec między środkowym stawem a końcowym.
exercise-block-tip-bend-step-1 = Proszę zgiąć tylko czubek.
exercise-block-tip-bend-step-2 = Proszę wytrzymać { $hold }.
exercise-block-tip-bend-step-3 = Proszę wyprostować czubek.

exercise-block-middle-bend-name = Zginanie tylko środkowego stawu
exercise-block-middle-bend-start = Proszę oprzeć rękę na stole, wnętrzem dłoni w górę. Drugą ręką przytrzymać leczony palec między knykciem a środkowym stawem.
exercise-block-middle-bend-step-1 = Proszę zgiąć tylko środkowy staw.
exercise-block-middle-bend-step-2 = Proszę wytrzymać { $hold }.
exercise-block-middle-bend-step-3 = Proszę wyprostować środkowy staw.

exercise-knuckle-bent-straighten-name = Prostowanie środkowego stawu, knykieć zgięty
exercise-knuckle-bent-straighten-start = Proszę zgiąć knykieć leczonego palca. Trzymać go zgiętego drugą ręką.
exercise-knuckle-bent-straighten-step-1 = Proszę wyprostować środkowy staw na tyle, na ile to łatwe.
exercise-knuckle-bent-straighten-step-2 = Proszę wytrzymać { $hold }.
exercise-knuckle-bent-straighten-step-3 = Proszę rozluźnić środkowy staw.

exercise-finger-lift-name = Unoszenie palców po kolei
exercise-finger-lift-start = Proszę położyć wnętrze dłoni płasko na stole.
exercise-finger-lift-step-1 = Proszę unieść jeden palec ze stołu. Pozostałe mają leżeć.
exercise-finger-lift-step-2 = Proszę wytrzymać { $hold }.
exercise-finger-lift-step-3 = Proszę powoli go opuścić.
exercise-finger-lift-step-4 = Proszę zrobić to samo z każdym z pozostałych palców.

exercise-tip-bend-middle-straight-name = Zginanie czubka, środkowy staw prosty
exercise-tip-bend-middle-straight-start = Proszę oprzeć rękę na stole. Nie zdejmować ortezy.
exercise-tip-bend-middle-straight-step-1 = Środkowy staw leczonego palca ma być prosty.
exercise-tip-bend-middle-straight-step-2 = Proszę zgiąć tylko czubek.
exercise-tip-bend-middle-straight-step-3 = Proszę wytrzymać { $hold }.
exercise-tip-bend-middle-straight-step-4 = Proszę wyprostować czubek.

exercise-middle-bend-tip-held-name = Zginanie środkowego stawu palca
exercise-middle-bend-tip-held-start = Proszę oprzeć łokieć na stole, palcami do góry. Nie zdejmować ortezy.
exercise-middle-bend-tip-held-step-1 = Proszę zgiąć środkowy staw leczonego palca.
exercise-middle-bend-tip-held-step-2 = Proszę wytrzymać { $hold }.
exercise-middle-bend-tip-held-step-3 = Proszę powoli go wyprostować.

## After a tendon repair
## Ordered by the clinician only.

exercise-short-arc-middle-bend-name = Małe zginanie środkowego stawu
exercise-short-arc-middle-bend-start = Proszę używać tylko miarki, którą zrobił terapeuta. Knykieć ma być prosty.
exercise-short-arc-middle-bend-step-1 = Proszę położyć leczony palec wzdłuż miarki.
exercise-short-arc-middle-bend-step-2 = Proszę zgiąć środkowy staw tylko do chwili, gdy palec dotknie miarki.
exercise-short-arc-middle-bend-step-3 = Proszę wytrzymać { $hold }.
exercise-short-arc-middle-bend-step-4 = Proszę całkiem wyprostować środkowy staw.
exercise-short-arc-middle-bend-step-5 = Po wszystkich powtórzeniach proszę znowu założyć ortezę.

exercise-helped-curl-in-splint-name = Zwijanie palców drugą ręką
exercise-helped-curl-in-splint-start = Nie zdejmować ortezy. Proszę odpiąć tylko paski, które pokazał terapeuta. Palce mają być luźne.
exercise-helped-curl-in-splint-step-1 = Drugą ręką proszę delikatnie zwinąć palec w stronę wnętrza dłoni.
exercise-helped-curl-in-splint-step-2 = Proszę wytrzymać { $hold }.
exercise-helped-curl-in-splint-step-3 = Proszę powoli puścić palec. Nie odciągać go do wyprostu.
exercise-helped-curl-in-splint-step-4 = Proszę zrobić to samo z każdym palcem.
exercise-helped-curl-in-splint-step-5 = Po wszystkich powtórzeniach proszę znowu zapiąć paski.

exercise-straighten-to-roof-name = Prostowanie palców do ortezy
exercise-straighten-to-roof-start = Nie zdejmować ortezy. Proszę odpiąć tylko paski, które pokazał terapeuta. Knykcie mają przylegać do ortezy.
exercise-straighten-to-roof-step-1 = Proszę prostować palce, aż dotkną ortezy.
exercise-straighten-to-roof-step-2 = Proszę wytrzymać { $hold }.
exercise-straighten-to-roof-step-3 = Proszę je rozluźnić.
exercise-straighten-to-roof-step-4 = Po wszystkich powtórzeniach proszę znowu zapiąć paski.

exercise-half-fist-in-splint-name = Luźna półpięść
exercise-half-fist-in-splint-start = Nie zdejmować ortezy. Proszę odpiąć tylko paski, które pokazał terapeuta.
exercise-half-fist-in-splint-step-1 = Proszę lekko zgiąć palce, do połowy drogi do wnętrza dłoni.
exercise-half-fist-in-splint-step-2 = Proszę wytrzymać { $hold }. Nie ściskać.
exercise-half-fist-in-splint-step-3 = Proszę prostować palce, aż dotkną ortezy.
exercise-half-fist-in-splint-step-4 = Po wszystkich powtórzeniach proszę znowu zapiąć paski.

exercise-place-and-hold-name = Układanie i trzymanie palców
exercise-place-and-hold-start = Proszę oprzeć łokieć na stole. Ruszać tylko tak daleko, jak pokazał terapeuta.
exercise-place-and-hold-step-1 = Drugą ręką proszę lekko zwinąć palce.
exercise-place-and-hold-step-2 = Proszę zabrać drugą rękę.
exercise-place-and-hold-step-3 = Proszę lekko trzymać tak palce { $hold }. Nie ściskać.
exercise-place-and-hold-step-4 = Proszę rozluźnić palce.

exercise-yoke-bend-name = Zginanie palców w ortezie
exercise-yoke-bend-start = Proszę oprzeć łokieć na stole, palcami do góry. Nie zdejmować ortezy. Nadgarstek nie może opaść do przodu.
exercise-yoke-bend-step-1 = Proszę zgiąć wszystkie palce tak daleko, jak pozwala orteza.
exercise-yoke-bend-step-2 = Proszę wytrzymać { $hold }.
exercise-yoke-bend-step-3 = Proszę wyprostować wszystkie palce.

## Stretches of a finger

exercise-helped-curl-stretch-name = Zwijanie palca z pomocą
exercise-helped-curl-stretch-start = Proszę oprzeć rękę na stole, wnętrzem dłoni w górę.
exercise-helped-curl-stretch-step-1 = Drugą ręką proszę powoli zwinąć leczony palec.
exercise-helped-curl-stretch-step-2 = Proszę zatrzymać się, gdy czuć lekkie napięcie.
exercise-helped-curl-stretch-step-3 = Proszę wytrzymać { $hold }.
exercise-helped-curl-stretch-step-4 = Proszę powoli puścić.

exercise-helped-straighten-stretch-name = Prostowanie palca z pomocą
exercise-helped-straighten-stretch-start = Proszę położyć grzbiet ręki na stole. Drugą ręką przytrzymać leczony palec między knykciem a środkowym stawem.
exercise-helped-straighten-stretch-step-1 = Proszę delikatnie dociskać środkowy staw w stronę wyprostu.
exercise-helped-straighten-stretch-step-2 = Proszę zatrzymać się, gdy czuć lekkie napięcie.
exercise-helped-straighten-stretch-step-3 = Proszę wytrzymać { $hold }.
exercise-helped-straighten-stretch-step-4 = Proszę powoli puścić.

exercise-intrinsic-stretch-name = Zwijanie palca, knykieć prosty
exercise-intrinsic-stretch-start = Proszę oprzeć łokieć na stole, palcami do góry.
exercise-intrinsic-stretch-step-1 = Knykieć leczonego palca ma być prosty.
exercise-intrinsic-stretch-step-2 = Drugą ręką proszę zgiąć środkowy staw i czubek tego palca.
exercise-intrinsic-stretch-step-3 = Proszę zatrzymać się, gdy czuć lekkie napięcie.
exercise-intrinsic-stretch-step-4 = Proszę wytrzymać { $hold }.
exercise-intrinsic-stretch-step-5 = Proszę powoli puścić.

## Thumb

exercise-thumb-bend-across-name = Zginanie kciuka w poprzek dłoni
exercise-thumb-bend-across-start = Proszę oprzeć rękę na stole, wnętrzem dłoni w górę.
exercise-thumb-bend-across-step-1 = Proszę powoli zgiąć kciuk w poprzek wnętrza dłoni.
exercise-thumb-bend-across-step-2 = Proszę wytrzymać { $hold }.
exercise-thumb-bend-across-step-3 = Proszę wyprostować kciuk.

exercise-thumb-web-release-name = Zmiękczanie skóry między kciukiem a palcem wskazującym
exercise-thumb-web-release-start = Proszę oprzeć rękę na stole, na stronie małego palca.
exercise-thumb-web-release-step-1 = Proszę delikatnie masować skórę między kciukiem a palcem wskazującym.
exercise-thumb-web-release-step-2 = Drugą ręką proszę chwycić kciuk między jego knykciem a nadgarstkiem.
exercise-thumb-web-release-step-3 = Proszę delikatnie odciągnąć kciuk od wnętrza dłoni.
exercise-thumb-web-release-step-4 = Proszę wytrzymać { $hold }.
exercise-thumb-web-release-step-5 = Proszę powoli puścić.

exercise-thumb-wrist-slow-lower-name = Powolne opuszczanie ręki, kciuk do góry
exercise-thumb-wrist-slow-lower-start = Proszę oprzeć przedramię na stole, na stronie małego palca. Trzymać mały ciężarek, który wybrał terapeuta. Ćwiczyć tylko co drugi dzień.
exercise-thumb-wrist-slow-lower-step-1 = Drugą ręką proszę unieść rękę w stronę kciuka.
exercise-thumb-wrist-slow-lower-step-2 = Proszę zabrać drugą rękę.
exercise-thumb-wrist-slow-lower-step-3 = Proszę powoli opuszczać rękę. Ma to trwać { $hold }.

## Nerves

exercise-thumb-side-nerve-slide-name = Przesuwanie nerwu po stronie kciuka
exercise-thumb-side-nerve-slide-start = Proszę usiąść, z łokciem zgiętym i nadgarstkiem prostym.
exercise-thumb-side-nerve-slide-step-1 = Proszę zrobić luźną pięść.
exercise-thumb-side-nerve-slide-step-2 = Proszę wyprostować palce. Kciuk ma być obok nich.
exercise-thumb-side-nerve-slide-step-3 = Proszę delikatnie zgiąć nadgarstek do tyłu.
exercise-thumb-side-nerve-slide-step-4 = Proszę odsunąć kciuk w bok.
exercise-thumb-side-nerve-slide-step-5 = Proszę obrócić wnętrze dłoni w górę.
exercise-thumb-side-nerve-slide-step-6 = Każdą pozycję proszę trzymać { $hold } przed następną.

exercise-little-finger-nerve-slide-name = Przesuwanie nerwu po stronie małego palca
exercise-little-finger-nerve-slide-start = Proszę wyciągnąć całą rękę w bok, wnętrzem dłoni w górę.
exercise-little-finger-nerve-slide-step-1 = Proszę zgiąć łokieć do połowy, a nadgarstek jednocześnie w stronę wnętrza dłoni.
exercise-little-finger-nerve-slide-step-2 = Proszę wytrzymać { $hold }.
exercise-little-finger-nerve-slide-step-3 = Proszę wyprostować łokieć, a nadgarstek jednocześnie delikatnie zgiąć w stronę grzbietu ręki.
exercise-little-finger-nerve-slide-step-4 = Proszę wytrzymać { $hold }.

## Strength

exercise-wrist-press-still-name = Nacisk bez ruchu nadgarstka
exercise-wrist-press-still-start = Proszę oprzeć przedramię na stole, wnętrzem dłoni w dół, z ręką poza brzegiem.
exercise-wrist-press-still-step-1 = Proszę położyć drugą rękę na grzbiecie ręki.
exercise-wrist-press-still-step-2 = Proszę delikatnie naciskać na nią w górę. Nadgarstek nie może się ruszyć.
exercise-wrist-press-still-step-3 = Proszę wytrzymać { $hold }.
exercise-wrist-press-still-step-4 = Proszę rozluźnić rękę.
exercise-wrist-press-still-step-5 = Następnym razem proszę położyć drugą rękę pod wnętrzem dłoni i naciskać na nią w dół.

exercise-putty-grip-name = Ściskanie miękkiej masy
exercise-putty-grip-start = Proszę położyć kulkę miękkiej masy do ćwiczeń we wnętrzu dłoni.
exercise-putty-grip-step-1 = Proszę delikatnie ścisnąć ją palcami i kciukiem.
exercise-putty-grip-step-2 = Proszę wytrzymać { $hold }.
exercise-putty-grip-step-3 = Proszę powoli puścić.
exercise-putty-grip-step-4 = Proszę znowu zrobić z masy kulkę.

exercise-three-point-pinch-name = Ściskanie miękkiej masy trzema palcami
exercise-three-point-pinch-start = Proszę wziąć małą kulkę miękkiej masy do ćwiczeń.
exercise-three-point-pinch-step-1 = Proszę trzymać ją między kciukiem, palcem wskazującym i palcem środkowym.
exercise-three-point-pinch-step-2 = Każdy staw ma być trochę zgięty.
exercise-three-point-pinch-step-3 = Proszę delikatnie ścisnąć masę.
exercise-three-point-pinch-step-4 = Proszę wytrzymać { $hold }.
exercise-three-point-pinch-step-5 = Proszę powoli puścić.

exercise-key-pinch-putty-name = Ściskanie miękkiej masy jak klucza
exercise-key-pinch-putty-start = Proszę wziąć małą kulkę miękkiej masy do ćwiczeń.
exercise-key-pinch-putty-step-1 = Proszę trzymać ją między kciukiem a bokiem palca wskazującego.
exercise-key-pinch-putty-step-2 = Proszę delikatnie ścisnąć masę.
exercise-key-pinch-putty-step-3 = Proszę wytrzymać { $hold }.
exercise-key-pinch-putty-step-4 = Proszę powoli puścić.

exercise-wrist-slow-lower-name = Powolne opuszczanie ręki, wnętrze dłoni w dół
exercise-wrist-slow-lower-start = Proszę oprzeć przedramię na stole, wnętrzem dłoni w dół, z ręką poza brzegiem. Trzymać mały ciężarek, który wybrał terapeuta.
exercise-wrist-slow-lower-step-1 = Proszę unieść rękę z pomocą drugiej ręki.
exercise-wrist-slow-lower-step-2 = Proszę zabrać drugą rękę.
exercise-wrist-slow-lower-step-3 = Proszę powoli opuszczać rękę. Ma to trwać { $hold }.

exercise-hand-lean-name = Opieranie się na ręce
exercise-hand-lean-start = Proszę stanąć przed ścianą. Stołu lub podłogi proszę używać tylko wtedy, gdy powie tak terapeuta.
exercise-hand-lean-step-1 = Proszę położyć obie dłonie na ścianie.
exercise-hand-lean-step-2 = Proszę powoli się pochylać, aż będzie czuć ciężar na rękach.
exercise-hand-lean-step-3 = Proszę wytrzymać { $hold }.
exercise-hand-lean-step-4 = Proszę powoli się odepchnąć.

## Skin, scar, feeling and tightness

exercise-stroke-towards-heart-name = Głaskanie w stronę serca
exercise-stroke-towards-heart-start = Proszę oprzeć całą rękę na poduszkach, tak żeby nadgarstek i palce były wyżej niż łokieć.
exercise-stroke-towards-heart-step-1 = Proszę położyć drugą rękę na czubkach palców.
exercise-stroke-towards-heart-step-2 = Proszę lekko głaskać od czubków palców do łokcia.
exercise-stroke-towards-heart-step-3 = Proszę omijać ortezę oraz skórę bolesną lub otwartą.
exercise-stroke-towards-heart-step-4 = Proszę robić to przez { $hold }.

exercise-scar-massage-name = Przesuwanie blizny
exercise-scar-massage-start = Wolno to robić tylko wtedy, gdy blizna jest zamknięta i sucha. Proszę oprzeć rękę na stole.
exercise-scar-massage-step-1 = Proszę położyć czubek palca drugiej ręki na bliźnie.
exercise-scar-massage-step-2 = Proszę nacisnąć mocno, ale tak, żeby nie bolało.
exercise-scar-massage-step-3 = Proszę przesuwać skórę małymi kółkami.
exercise-scar-massage-step-4 = Proszę przesuwać skórę w górę i w dół, potem na boki.
exercise-scar-massage-step-5 = Proszę robić to wzdłuż blizny przez { $hold }.

exercise-texture-rub-name = Przyzwyczajanie skóry do dotyku
exercise-texture-rub-start = Wolno to robić tylko na zamkniętej skórze. Proszę oprzeć rękę na stole.
exercise-texture-rub-step-1 = Proszę lekko pocierać wrażliwą skórę miękką tkaniną.
exercise-texture-rub-step-2 = Proszę robić to przez { $hold }.
exercise-texture-rub-step-3 = Gdy miękka tkanina już nie przeszkadza, proszę użyć bardziej szorstkiej.

exercise-touch-relearn-name = Nauka czucia od nowa
exercise-touch-relearn-start = Proszę oprzeć rękę na stole. Nie używać niczego gorącego, zimnego ani ostrego.
exercise-touch-relearn-step-1 = Proszę dotknąć czubka palca małym przedmiotem i patrzeć.
exercise-touch-relearn-step-2 = Proszę zamknąć oczy i dotknąć tego samego miejsca.
exercise-touch-relearn-step-3 = Proszę zwrócić uwagę, gdzie czuć dotyk i jaki on jest.
exercise-touch-relearn-step-4 = Proszę otworzyć oczy i porównać.
exercise-touch-relearn-step-5 = Proszę robić to w innych miejscach przez { $hold }.

exercise-scar-hold-stretch-name = Trzymanie rozciągniętej blizny
exercise-scar-hold-stretch-start = Wolno to robić tylko wtedy, gdy blizna jest zamknięta i sucha.
exercise-scar-hold-stretch-step-1 = Proszę powoli ruszać ręką, aż blizna będzie napięta.
exercise-scar-hold-stretch-step-2 = Proszę wytrzymać { $hold }.
exercise-scar-hold-stretch-step-3 = Proszę powoli wrócić ręką.

exercise-tight-hand-slow-open-name = Powolne otwieranie napiętej ręki
exercise-tight-hand-slow-open-start = Proszę oprzeć przedramię na poduszce. Nadgarstek ma opaść do przodu. Nigdy nie ciągnąć szybko.
exercise-tight-hand-slow-open-step-1 = Proszę chwycić kciuk u nasady i powoli go odciągnąć.
exercise-tight-hand-slow-open-step-2 = Drugą ręką proszę powoli wyprostować palce.
exercise-tight-hand-slow-open-step-3 = Proszę powoli prowadzić nadgarstek do tyłu. Palce mają być proste.
exercise-tight-hand-slow-open-step-4 = Proszę zatrzymać się, gdy tylko ręka zaczyna stawiać opór.
exercise-tight-hand-slow-open-step-5 = Proszę wytrzymać { $hold }.
exercise-tight-hand-slow-open-step-6 = Proszę pozwolić ręce powoli się zamknąć.
