### Exercises: name, starting position and one action for each step.
### The name is a short heading. Steps are numbered by the program.
### $hold is a finished length of time, such as the words for five seconds (accusative).
### “Other hand” is the hand without the splint.

## Bend the tip of your thumb

exercise-thumb-tip-bend-name = Zginanie czubka kciuka
exercise-thumb-tip-bend-start = Proszę usiąść z przedramieniem na stole. Nie zdejmować ortezy.
exercise-thumb-tip-bend-step-1 = Proszę zgiąć tylko czubek kciuka.
exercise-thumb-tip-bend-step-2 = Proszę wytrzymać { $hold }.
exercise-thumb-tip-bend-step-3 = Proszę wyprostować czubek.

## Make a fist and open it

exercise-finger-fist-open-name = Zaciskanie i otwieranie pięści
exercise-finger-fist-open-start = Proszę unieść rękę, palcami do góry. Kciuk ma być bez ruchu.
exercise-finger-fist-open-step-1 = Proszę powoli zgiąć wszystkie palce w lekką pięść.
exercise-finger-fist-open-step-2 = Proszę wytrzymać { $hold }.
exercise-finger-fist-open-step-3 = Proszę wyprostować wszystkie palce.

## Make a hook with your fingers

exercise-finger-hook-name = Haczyk z palców
exercise-finger-hook-start = Proszę skierować palce do góry, na tyle prosto, na ile to łatwe. Kciuk ma być bez ruchu.
exercise-finger-hook-step-1 = Knykcie mają zostać tak, jak są.
exercise-finger-hook-step-2 = Proszę zgiąć pozostałe stawy palców jak haczyk.
exercise-finger-hook-step-3 = Proszę wytrzymać { $hold }.
exercise-finger-hook-step-4 = Proszę wyprostować palce.

## Spread your fingers

exercise-finger-spread-name = Rozsuwanie palców
exercise-finger-spread-start = Proszę położyć wnętrze dłoni na stole, palce razem. Kciuk ma być bez ruchu.
exercise-finger-spread-step-1 = Proszę rozsunąć palce.
exercise-finger-spread-step-2 = Proszę wytrzymać { $hold }.
exercise-finger-spread-step-3 = Proszę znowu złączyć palce.

## Raise your hand and pump

exercise-hand-raise-pump-name = Unoszenie ręki i pompowanie
exercise-hand-raise-pump-start = Proszę usiąść i unieść rękę powyżej serca.
exercise-hand-raise-pump-step-1 = Proszę lekko zamknąć palce.
exercise-hand-raise-pump-step-2 = Proszę wytrzymać { $hold }.
exercise-hand-raise-pump-step-3 = Proszę otworzyć palce.
exercise-hand-raise-pump-step-4 = Po wszystkich powtórzeniach proszę opuścić rękę.

## Bend and straighten your elbow

exercise-elbow-bend-name = Zginanie i prostowanie łokcia
exercise-elbow-bend-start = Proszę usiąść lub stanąć, z ręką wzdłuż ciała.
exercise-elbow-bend-step-1 = Proszę zgiąć łokieć, aż ręka będzie blisko barku.
exercise-elbow-bend-step-2 = Proszę wytrzymać { $hold }.
exercise-elbow-bend-step-3 = Proszę powoli wyprostować łokieć.

## Turn your palm up and down

exercise-forearm-turn-name = Obracanie dłoni w górę i w dół
exercise-forearm-turn-start = Proszę usiąść, z łokciem zgiętym i blisko boku.
exercise-forearm-turn-step-1 = Proszę obrócić wnętrze dłoni w górę.
exercise-forearm-turn-step-2 = Proszę wytrzymać { $hold }.
exercise-forearm-turn-step-3 = Proszę obrócić wnętrze dłoni w dół.
exercise-forearm-turn-step-4 = Proszę wytrzymać { $hold }.

## Move your wrist up and down

exercise-wrist-up-down-name = Ruch nadgarstka w górę i w dół
exercise-wrist-up-down-start = Proszę oprzeć przedramię na stole, z ręką poza brzegiem. Kciuk ma być luźny.
exercise-wrist-up-down-step-1 = Proszę powoli unieść rękę.
exercise-wrist-up-down-step-2 = Proszę wytrzymać { $hold }.
exercise-wrist-up-down-step-3 = Proszę powoli opuścić rękę.
exercise-wrist-up-down-step-4 = Proszę wytrzymać { $hold }.

## Move your wrist from side to side

exercise-wrist-side-to-side-name = Ruch nadgarstka na boki
exercise-wrist-side-to-side-start = Proszę położyć przedramię i wnętrze dłoni płasko na stole. Kciuk ma być obok palców.
exercise-wrist-side-to-side-step-1 = Proszę przesunąć rękę w stronę kciuka.
exercise-wrist-side-to-side-step-2 = Proszę wytrzymać { $hold }.
exercise-wrist-side-to-side-step-3 = Proszę przesunąć rękę w stronę małego palca.
exercise-wrist-side-to-side-step-4 = Proszę wytrzymać { $hold }.

## Bend the knuckle of your thumb

exercise-thumb-knuckle-bend-name = Zginanie knykcia kciuka
exercise-thumb-knuckle-bend-start = Proszę oprzeć rękę na stole, na stronie małego palca. Drugą ręką przytrzymać kciuk między jego knykciem a nadgarstkiem.
exercise-thumb-knuckle-bend-step-1 = Proszę zgiąć knykieć kciuka prosto do przodu.
exercise-thumb-knuckle-bend-step-2 = Proszę wytrzymać { $hold }.
exercise-thumb-knuckle-bend-step-3 = Proszę wyprostować knykieć.
exercise-thumb-knuckle-bend-step-4 = Kciuk nigdy nie może odchylić się w bok.

## Touch each fingertip with your thumb

exercise-thumb-to-fingertips-name = Dotykanie kciukiem czubków palców
exercise-thumb-to-fingertips-start = Proszę unieść rękę, palcami do góry.
exercise-thumb-to-fingertips-step-1 = Proszę lekko dotknąć kciukiem czubka palca wskazującego.
exercise-thumb-to-fingertips-step-2 = Proszę wytrzymać { $hold }.
exercise-thumb-to-fingertips-step-3 = Proszę szeroko otworzyć rękę.
exercise-thumb-to-fingertips-step-4 = Proszę zrobić to samo z każdym z pozostałych palców.

## Lift your thumb away from your palm

exercise-thumb-out-from-palm-name = Unoszenie kciuka od wnętrza dłoni
exercise-thumb-out-from-palm-start = Proszę położyć grzbiet ręki na stole.
exercise-thumb-out-from-palm-step-1 = Proszę unieść kciuk prosto w górę, od wnętrza dłoni.
exercise-thumb-out-from-palm-step-2 = Proszę wytrzymać { $hold }.
exercise-thumb-out-from-palm-step-3 = Proszę powoli opuścić kciuk.

## Hold the shape of a C

exercise-thumb-c-hold-name = Trzymanie kształtu litery C
exercise-thumb-c-hold-start = Proszę ułożyć kciuk i palec wskazujący jak literę C.
exercise-thumb-c-hold-step-1 = Proszę sprawdzić, czy kciuk jest zaokrąglony i nie wygina się do tyłu.
exercise-thumb-c-hold-step-2 = Proszę przytrzymać kciuk od zewnątrz drugą ręką.
exercise-thumb-c-hold-step-3 = Proszę lekko naciskać kciukiem na zewnątrz. Kciuk nie może się ruszyć.
exercise-thumb-c-hold-step-4 = Proszę wytrzymać { $hold }.
exercise-thumb-c-hold-step-5 = Proszę rozluźnić rękę.

## Press your index finger to the side

exercise-index-side-press-name = Nacisk palcem wskazującym w bok
exercise-index-side-press-start = Proszę położyć rękę płasko na stole, wnętrzem dłoni w dół.
exercise-index-side-press-step-1 = Proszę przyłożyć drugą rękę do palca wskazującego od strony kciuka.
exercise-index-side-press-step-2 = Proszę lekko naciskać palcem wskazującym w stronę kciuka. Palec nie może się ruszyć.
exercise-index-side-press-step-3 = Proszę wytrzymać { $hold }.
exercise-index-side-press-step-4 = Proszę rozluźnić rękę.

## Squeeze a soft ball

exercise-soft-ball-squeeze-name = Ściskanie miękkiej piłki
exercise-soft-ball-squeeze-start = Proszę położyć miękką piłkę z gąbki we wnętrzu dłoni. Kciuk ma jej nie dotykać.
exercise-soft-ball-squeeze-step-1 = Proszę lekko ścisnąć piłkę palcami.
exercise-soft-ball-squeeze-step-2 = Proszę wytrzymać { $hold }.
exercise-soft-ball-squeeze-step-3 = Proszę powoli puścić.
