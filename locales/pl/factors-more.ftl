### More advice for what is particular about one person.
### Each message is one or two short sentences that stand inside a section of the guide.
### $checks is a number of skin checks a day, $limit a finished length of time.

## Skin that feels little or nothing

factor-numb-skin-no-packs = Proszę nie kłaść na skórę bez czucia gorących okładów ani lodu.

## Rash from natural rubber

factor-latex-allergy-itch = Proszę zadzwonić do nas, jeśli skóra swędzi, nawet trochę.
factor-latex-allergy-gloves = Proszę nie zakładać na ortezę gumowych rękawic. Proszę używać rękawic innego rodzaju.
factor-latex-allergy-spare-parts = Proszę nie dodawać gumek ani rozciągliwych pasków. Proszę poprosić nas o bezpieczne.

## Rash from metal

factor-nickel-allergy-itch = Proszę zadzwonić do nas, jeśli skóra swędzi, nawet trochę.
factor-nickel-allergy-bare-metal = Goły metal nie może dotykać skóry. Proszę powiedzieć nam, jeśli osłona się przetrze.

## Rash from tape and glue

factor-adhesive-allergy-itch = Proszę zadzwonić do nas, jeśli skóra swędzi, nawet trochę.
factor-adhesive-allergy-no-tape = Proszę nie przyklejać do skóry taśm ani plastrów. Proszę poprosić nas o paski.
factor-adhesive-allergy-linings = Proszę nie wklejać do ortezy podkładek ani wyściółek.

## Trouble remembering

factor-memory-difficulty-same-times = Proszę codziennie trzymać się tych samych godzin i nastawić na nie budzik.
factor-memory-difficulty-tick = Proszę powiesić ten poradnik na ścianie. Po każdej kontroli skóry postawić znak.
factor-memory-difficulty-in-sight = Orteza ma leżeć w jednym miejscu, na widoku. Za każdym razem proszę czytać kroki.
factor-memory-difficulty-after-meals = Proszę łączyć ruchy z czymś codziennym, na przykład z posiłkami.

## Somebody at home who helps

factor-helper-at-home-looks = Proszę poprosić też osobę, która pomaga, o obejrzenie skóry.
factor-helper-at-home-reads = Osoba, która pomaga, może czytać na głos każdy krok i zapinać paski.
factor-helper-at-home-heavy-jobs = Osoba, która pomaga, może robić to, czego ten poradnik na razie zabrania.

## A child

# The reader may be the child or a grown-up reading aloud.
factor-child-grown-up-looks = Za każdym razem skórę ma obejrzeć ktoś dorosły. Jeśli coś boli, trzeba to od razu powiedzieć.
factor-child-grown-up-helps = Przy każdym zakładaniu i zdejmowaniu ortezy ma być ktoś dorosły.
factor-child-school = Proszę zabrać kopię tego poradnika do szkoły.
factor-child-game = Z każdego ruchu można zrobić zabawę.
factor-child-small-parts = Luźne paski i małe części proszę trzymać z dala od niemowląt i małych dzieci.

## Pregnancy

factor-pregnancy-swelling = W niektóre dni ręka może puchnąć. Podczas siedzenia proszę oprzeć ją na poduszce.
factor-pregnancy-strap-room = Proszę codziennie sprawdzać, czy czubek palca mieści się pod każdym paskiem.
factor-pregnancy-grooves = Proszę szukać głębokich linii od pasków. Jeśli nie znikają, proszę nam powiedzieć.

## Work in the heat

factor-heat-work-keep-away = Ortezę proszę trzymać z dala od pieców, płyt grzejnych i silników. Przed pracą w cieple proszę nas zapytać.
factor-heat-work-dry-skin = Pot proszę od razu osuszyć. Proszę szukać miękkiej, białej skóry.
factor-heat-work-fresh-sleeve = Na każdą zmianę proszę zakładać świeży, suchy rękaw. Wilgotny od razu zmienić.

## Work with food

factor-food-work-ask = Proszę zapytać w pracy, czy wolno nosić ortezę przy żywności. Proszę zapytać, jak ją osłonić.
factor-food-work-damp = Rękawica na ortezie zatrzymuje wilgoć. Po pracy proszę szukać miękkiej, białej skóry.
factor-food-work-clean = Po każdej zmianie proszę wyczyścić ortezę. Osłonę wyrzucić.

## Work in the wet

factor-wet-work-cover = Proszę osłonić ortezę albo zostawić mokre prace komuś innemu.
factor-wet-work-dry-breaks = Proszę często robić przerwy i osuszać skórę. Proszę szukać miękkiej, białej skóry.
factor-wet-work-spare-sleeves = Proszę mieć zapasowe rękawy. Wilgotny od razu zmienić.

## Work with machines

factor-machinery-moving-parts = Proszę nie pracować w ortezie przy maszynach w ruchu. Mogą złapać pasek i wciągnąć rękę.
factor-machinery-ask = Tych godzin proszę trzymać się także w pracy. Przed powrotem do maszyny proszę zapytać nas i pracodawcę.

## Slow healing

factor-slow-healing-no-early-end = Ręka potrzebuje pełnego czasu. Proszę nie kończyć wcześniej, nawet jeśli jest dobrze.
factor-slow-healing-any-break = Proszę zadzwonić do nas tego samego dnia, jeśli skóra pęknie, nawet trochę.
factor-slow-healing-smoke = Przy paleniu tytoniu proszę zapytać nas lub lekarza o pomoc w rzuceniu. Palenie spowalnia gojenie.

## An open wound, stitches or pins

factor-open-wound-look = Proszę oglądać to, co widać z rany lub drutów. Proszę zadzwonić do nas dzisiaj, jeśli coś cieknie, brzydko pachnie lub się rusza.
factor-open-wound-dry = Ręka ma być sucha, aż powiemy, że skóra jest zamknięta.
factor-open-wound-no-rubbing = Proszę nie trzeć rany i nie naciskać na nią. Nie dotykać szwów ani drutów.
factor-open-wound-dressing = Opatrunek ma być czysty i suchy. Proszę zapytać nas, kto go zmienia.

## Poor blood flow

factor-poor-circulation-colour = Proszę porównywać czubki palców z drugą ręką. Proszę zadzwonić do nas tego samego dnia, jeśli skóra pęknie.
factor-poor-circulation-strap-room = Proszę wsunąć czubek palca pod każdy pasek. Musi się zmieścić.
factor-poor-circulation-warm = Proszę ogrzewać rękę ubraniem. Nie kłaść na nią lodu ani gorących okładów.

## Only one hand to use

factor-one-hand-only-table = Proszę oprzeć przedramię na stole i pomagać sobie brzegiem stołu lub nogą.
factor-one-hand-only-helper = Gdzie ten poradnik mówi o drugiej ręce, można poprosić kogoś o pomoc.
factor-one-hand-only-mirror = Drugą stronę ręki proszę oglądać w lusterku.

## Strong pain or worry

factor-high-pain-worry-small = Proszę zacząć od najmniejszego ruchu z tej listy. Mało, ale często, wystarczy.
factor-high-pain-worry-rest = Proszę odpocząć, zanim ręka zacznie bardzo boleć. Potem ćwiczyć dalej.
factor-high-pain-worry-call = Proszę dzwonić wcześnie, jeśli coś niepokoi. Żadne pytanie nie jest za małe.
