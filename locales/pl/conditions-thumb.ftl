### Conditions of the thumb and of the tendons and bones at the wrist: the name, what is wrong, and what the splint does.
### Words for a reader of about twelve. The splint is never said to cure anything.

## Sore tendons on the thumb side of the wrist, in pregnancy or with a small baby

condition-wrist-thumb-around-birth-name = Bolesne ścięgna kciuka w czasie ciąży i po porodzie
condition-wrist-thumb-around-birth-what = Dwa ścięgna kciuka ocierają się przy nadgarstku. Mogą boleć od podnoszenia i karmienia dziecka.
condition-wrist-thumb-around-birth-aim = Orteza daje nadgarstkowi i kciukowi odpocząć w nocy i przy podnoszeniu. Opieka nad dzieckiem może wtedy mniej boleć.

## Tendons that rub where they cross above the wrist

condition-intersection-syndrome-name = Ocierające się ścięgna nad nadgarstkiem
condition-intersection-syndrome-what = Ścięgna nadgarstka i kciuka krzyżują się nad nadgarstkiem. Ocierają się tam i bolą.
condition-intersection-syndrome-aim = Orteza trzyma nadgarstek bez ruchu. Dzięki temu bolesne ścięgna odpoczywają.

## Torn band on the outer side of the thumb's knuckle

condition-thumb-rcl-injury-name = Zerwane zewnętrzne więzadło knykcia kciuka
condition-thumb-rcl-injury-what = Więzadło po zewnętrznej stronie knykcia kciuka jest zerwane. Musi się zagoić bez nacisku w stronę palców.
condition-thumb-rcl-injury-aim = Orteza chroni więzadło, gdy się goi. Nie pozwala dopchnąć kciuka do palców.

## After an operation at the base of the thumb

condition-thumb-cmc-arthroplasty-name = Po operacji u nasady kciuka
condition-thumb-cmc-arthroplasty-what = Staw u nasady kciuka był operowany. Nowy staw jest miękki i jeszcze się goi.
condition-thumb-cmc-arthroplasty-aim = Orteza trzyma kciuk z dala od wnętrza dłoni. Chroni to nowy staw, gdy się goi.

## A knuckle of the thumb that bends too far back

condition-hypermobile-thumb-name = Zbyt giętki kciuk
condition-hypermobile-thumb-what = Knykieć kciuka wygina się za mocno do tyłu przy nacisku lub ściskaniu kciukiem i palcem. Kciuk od tego boli i się męczy.
condition-hypermobile-thumb-aim = Orteza nie pozwala knykciowi wygiąć się do tyłu przy trudnych zadaniach. Pomaga mięśniom, ale ich nie zastępuje.

## Catching thumb

condition-trigger-thumb-name = Zacinający się kciuk (kciuk trzaskający)
condition-trigger-thumb-what = Ścięgno, które zgina kciuk, jest grube i zacina się w tunelu. Kciuk strzela lub się blokuje.
condition-trigger-thumb-aim = Orteza trzyma jeden staw kciuka prosto. Ścięgno mniej się przesuwa i bolesne miejsce może odpocząć.

## Sewn tendon that lifts the thumb

condition-epl-repair-name = Zszyte ścięgno, które unosi kciuk
condition-epl-repair-what = Ścięgno, które unosi kciuk, zostało naprawione. Jest słabe, aż się zagoi.
condition-epl-repair-aim = Orteza trzyma kciuk w górze, a nadgarstek zgięty do tyłu. Naprawione ścięgno jest wtedy mniej napięte.

## Sewn tendon that bends the thumb

condition-fpl-repair-name = Zszyte ścięgno, które zgina kciuk
condition-fpl-repair-what = Ścięgno, które zgina kciuk, zostało naprawione. Jest słabe, aż się zagoi.
condition-fpl-repair-aim = Orteza nie pozwala kciukowi wyprostować się za mocno. Naprawione ścięgno jest wtedy mniej napięte.

## Sore tendon on the little-finger side of the wrist

condition-ecu-tendinopathy-name = Bolesne ścięgno nadgarstka po stronie małego palca
condition-ecu-tendinopathy-what = Ścięgno nadgarstka po stronie małego palca boli. Przechylanie i skręcanie ręki nasila ból.
condition-ecu-tendinopathy-aim = Orteza nie pozwala przechylać nadgarstka. Dzięki temu bolesne ścięgno odpoczywa.

## Sprained wrist

condition-wrist-sprain-name = Skręcony nadgarstek
condition-wrist-sprain-what = Więzadła, które trzymają nadgarstek, zostały naciągnięte. Kości są na swoim miejscu.
condition-wrist-sprain-aim = Orteza trzyma nadgarstek bez ruchu, gdy ręka pracuje. Dzięki temu więzadła się uspokajają.

## Torn cushion on the little-finger side of the wrist

condition-tfcc-injury-name = Rozdarta poduszeczka w nadgarstku
condition-tfcc-injury-what = Mała poduszeczka w nadgarstku, po stronie małego palca, jest rozdarta. Skręcanie przedramienia ją ściera.
condition-tfcc-injury-aim = Orteza nie pozwala skręcać przedramienia ani przechylać nadgarstka. Dzięki temu poduszeczka odpoczywa.

## Broken scaphoid, after the cast

condition-scaphoid-after-cast-name = Złamana kość nadgarstka po stronie kciuka, po gipsie
condition-scaphoid-after-cast-what = Mała kość w nadgarstku była złamana. Zrosła się, ale nie jest jeszcze mocna.
condition-scaphoid-after-cast-aim = Orteza chroni kość w nocy, na dworze i w tłumie.

## Broken radius at the wrist, after the cast

condition-distal-radius-after-cast-name = Złamany nadgarstek, po gipsie
condition-distal-radius-after-cast-what = Duża kość przedramienia była złamana przy nadgarstku. Zrosła się, ale nie jest jeszcze mocna.
condition-distal-radius-after-cast-aim = Orteza chroni nadgarstek w nocy, na dworze i przy podnoszeniu. Zdejmuje się ją, żeby ruszać nadgarstkiem.

## Movements to leave out, beside those that other conditions have

avoid-thumb-ip-flexion = Proszę nie zginać czubka kciuka.
avoid-thumb-ip-extension = Proszę nie prostować czubka kciuka.
avoid-thumb-cmc-flexion = Proszę nie przesuwać kciuka w poprzek dłoni.
avoid-forearm-any = Proszę nie obracać dłoni ani w górę, ani w dół.

## How to hold an arm that may not turn while the splint is off to wash

support-forearm-thumb-up = Gdy orteza jest zdjęta, proszę oprzeć przedramię na stole. Kciuk ma być skierowany w górę. Proszę nie obracać przedramienia. Proszę nie używać tej ręki.
