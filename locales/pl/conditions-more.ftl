### Conditions of tendons after repair, of nerves, of the elbow, of sore joints and of burns.
### The name, what is wrong, and what the splint does. Words for a reader of about twelve; nothing is said to be cured.

## Repaired tendons

condition-flexor-zone-two-repair-name = Zszyte ścięgno, które zgina palec
condition-flexor-zone-two-repair-what = Ścięgna, które zginają palec, były przecięte i zostały zszyte. Chwytanie lub odciąganie palca do wyprostu może zerwać szwy.
condition-flexor-zone-two-repair-aim = Orteza chroni szwy, gdy się goją. Nie pozwala palcom wyprostować się za mocno.
condition-extensor-zone-three-repair-name = Zszyte ścięgno nad środkowym stawem palca
condition-extensor-zone-three-repair-what = Ścięgno, które prostuje środkowy staw, było przecięte i zostało zszyte. Jedno zgięcie może rozerwać szwy.
condition-extensor-zone-three-repair-aim = Orteza trzyma środkowy staw prosto, gdy ścięgno się goi.
condition-extensor-zone-five-six-repair-name = Zszyte ścięgno na grzbiecie ręki
condition-extensor-zone-five-six-repair-what = Ścięgno, które unosi palec, było przecięte i zostało zszyte. Pełna pięść może rozerwać szwy.
condition-extensor-zone-five-six-repair-aim = Orteza trzyma knykieć palca w górze. Szwy są wtedy mniej napięte.

## Nerves

condition-carpal-tunnel-name = Uciśnięty nerw przy nadgarstku (cieśń nadgarstka)
condition-carpal-tunnel-what = Nerw biegnie przez ciasny tunel przy nadgarstku. Zgięty nadgarstek ściska go, najbardziej podczas snu.
condition-carpal-tunnel-aim = Orteza trzyma nadgarstek prosto. Nerw ma wtedy więcej miejsca.
condition-carpal-tunnel-release-name = Po operacji uciśniętego nerwu przy nadgarstku
condition-carpal-tunnel-release-what = Otwarto dach tunelu przy nadgarstku. Rana musi się zagoić, a palce muszą się ruszać.
condition-carpal-tunnel-release-aim = Orteza daje nadgarstkowi odpocząć w pierwszych dniach. Palce mogą się swobodnie ruszać.
condition-cubital-tunnel-name = Uciśnięty nerw przy łokciu
condition-cubital-tunnel-what = Nerw biegnie wokół wewnętrznej strony łokcia. Mocne zginanie łokcia lub opieranie się na nim obciąża ten nerw.
condition-cubital-tunnel-aim = Orteza nie pozwala mocno zgiąć łokcia w nocy. W dzień proszę nie opierać się na łokciu.
condition-radial-nerve-palsy-name = Opadający nadgarstek
condition-radial-nerve-palsy-what = Nerw, który unosi nadgarstek i palce, teraz nie działa. Ręka zwisa.
condition-radial-nerve-palsy-aim = Orteza pomaga trzymać nadgarstek w górze. Palce mogą wtedy lepiej chwytać.
condition-median-nerve-palsy-low-name = Kciuk, którego nie da się unieść z dłoni
condition-median-nerve-palsy-low-what = Nerw do poduszki mięśni pod kciukiem teraz nie działa. Części ręki mogą być zdrętwiałe.
condition-median-nerve-palsy-low-aim = Orteza utrzymuje wolne miejsce obok kciuka. Kciuk zostaje tam, gdzie można go używać.
condition-ulnar-nerve-palsy-name = Palec serdeczny i mały zgięte jak szpony
condition-ulnar-nerve-palsy-what = Nerw do małych mięśni ręki teraz nie działa. Palec serdeczny i mały zwijają się jak szpony.
condition-ulnar-nerve-palsy-aim = Orteza nie pozwala knykciom wygiąć się do tyłu. Wtedy łatwiej wyprostować te palce.

## The elbow

condition-lateral-elbow-name = Bolesne ścięgna po zewnętrznej stronie łokcia
condition-lateral-elbow-what = Mięśnie, które unoszą nadgarstek, zaczynają się przy łokciu. Ich ścięgna tam bolą, najbardziej przy chwytaniu i podnoszeniu.
condition-lateral-elbow-aim = Orteza trochę odciąża bolesne ścięgna podczas pracy.

## The hand

condition-dupuytren-release-name = Po operacji zgiętego palca (Dupuytren)
condition-dupuytren-release-what = Napięte pasma w dłoni przecięto, żeby palec mógł się otworzyć. Blizna może go znowu ściągać.
condition-dupuytren-release-aim = Orteza trzyma palec w nocy tak, jak leży swobodnie. Pomaga utrzymać go otwartym.
condition-rheumatoid-knuckle-drift-name = Palce uciekające w bok (reumatoidalne)
condition-rheumatoid-knuckle-drift-what = Więzadła obok knykci są luźne. Palce odchylają się w stronę małego palca.
condition-rheumatoid-knuckle-drift-aim = Orteza ustawia palce prosto, gdy ręka pracuje. Nie zatrzymuje odchylania.
condition-rheumatoid-wrist-name = Bolesny nadgarstek (reumatoidalny)
condition-rheumatoid-wrist-what = Staw nadgarstka boli i jest spuchnięty z powodu choroby reumatoidalnej.
condition-rheumatoid-wrist-aim = Orteza stabilizuje nadgarstek. Może to zmniejszyć ból w spoczynku i przy zadaniach.
condition-stroke-tight-hand-name = Napięta ręka po udarze
condition-stroke-tight-hand-what = Po udarze mięśnie, które zamykają rękę, ciągną za mocno. Trudno otworzyć rękę.
condition-stroke-tight-hand-aim = W ortezie ręka odpoczywa na wpół otwarta. Może to dać wygodę i pomóc w czystości skóry we wnętrzu dłoni.

## Burns

condition-dorsal-hand-burn-name = Oparzenie grzbietu ręki
condition-dorsal-hand-burn-what = Skóra na grzbiecie ręki jest oparzona. Gdy się goi, skraca się i może zniekształcić rękę.
condition-dorsal-hand-burn-aim = Orteza trzyma knykcie zgięte, a palce proste. W tym ułożeniu nowa skóra zostaje długa.
condition-palmar-hand-burn-name = Oparzenie wnętrza dłoni
condition-palmar-hand-burn-what = Skóra wnętrza dłoni jest oparzona. Gdy się goi, skraca się i może zamykać rękę.
condition-palmar-hand-burn-aim = Orteza trzyma dłoń i palce otwarte. W tym ułożeniu nowa skóra zostaje długa.

## Movements to leave out
## The joints of a finger are the big knuckle, the middle joint and the tip.

avoid-wrist-extension = Proszę nie zginać nadgarstka do tyłu.
avoid-wrist-flexion = Proszę nie zginać nadgarstka do przodu.
avoid-fingers-mcp-flexion = Proszę nie zginać knykci.
avoid-fingers-mcp-ulnar-deviation = Proszę nie pchać palców w stronę małego palca.
avoid-fingers-pip-flexion = Proszę nie zginać środkowych stawów palców.
