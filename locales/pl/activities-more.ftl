### More activities: what people do with their hands, and easier ways to do it.
### The name stands as a short heading in a table, such as “Wash the dishes”.
### Every other message is one or two short sentences of advice beside that name.

## More ways for jobs named elsewhere

activity-text-with-thumbs-open-elbow = Ręka ma być oparta. Łokieć ma być otwarty szerzej niż kąt prosty.
activity-hold-tablet-open-elbow = Proszę odsunąć to dalej. Łokieć ma być otwarty szerzej niż kąt prosty.
activity-drive-car-open-elbow = Proszę tak ustawić fotel, żeby łokieć był otwarty szerzej niż kąt prosty.
activity-brush-teeth-lean-forward = Proszę pochylić się nad umywalką. Zbliżyć głowę do szczoteczki.

## Shower and wash your hair

activity-wash-hair-shower-name = Prysznic i mycie włosów
activity-wash-hair-shower-arm-bag = Proszę naciągnąć na rękę i ortezę nieprzemakalną torbę. U góry dobrze ją zamknąć.
activity-wash-hair-shower-pump-bottle = Proszę użyć butelki z pompką i gąbki na długim uchwycie.
activity-wash-hair-shower-bend-head = Proszę schylić głowę. Łokieć ma być otwarty szerzej niż kąt prosty.
activity-wash-hair-shower-other-hand = Proszę myć się drugą ręką albo poprosić kogoś o umycie włosów.

## Pull up trousers or socks

activity-pull-up-clothes-name = Wciąganie spodni lub skarpet
activity-pull-up-clothes-loose-waist = Proszę nosić luźne ubrania z miękkim pasem.
activity-pull-up-clothes-loops = Proszę wszyć w środku pętle. Przełożyć przez nie przedramię i ciągnąć.
activity-pull-up-clothes-flat-palms = Proszę usiąść. Popychać materiał w górę płaskimi dłońmi.
activity-pull-up-clothes-other-hand = Proszę ciągnąć drugą ręką albo poprosić kogoś o pomoc.

## Fasten a strap behind your back

activity-fasten-back-strap-name = Zapinanie biustonosza na plecach
activity-fasten-back-strap-pull-over = Proszę nosić miękki, wkładany przez głowę.
activity-fasten-back-strap-turn-round = Proszę zapiąć go z przodu. Potem obrócić.
activity-fasten-back-strap-front-closing = Proszę wybrać taki, który zapina się z przodu na szerokie haczyki.
activity-fasten-back-strap-helper = Proszę poprosić kogoś o zapięcie.

## Wipe after the toilet

activity-toilet-wipe-name = Podcieranie się w toalecie
activity-toilet-wipe-cover-splint = Proszę naciągnąć na ortezę cienką torebkę. Potem ją wyrzucić.
activity-toilet-wipe-long-wiper = Proszę użyć przyrządu na długim uchwycie albo deski, która myje.
activity-toilet-wipe-other-hand = Proszę podcierać się drugą ręką.
activity-toilet-wipe-helper = Proszę poprosić o pomoc kogoś zaufanego.

## Cut your nails

activity-cut-nails-name = Obcinanie paznokci
activity-cut-nails-fixed-clipper = Proszę użyć obcinacza przymocowanego do deski. Naciskać go dłonią.
activity-cut-nails-file = Proszę piłować paznokcie szerokim pilnikiem. Trzymać go luźno.
activity-cut-nails-few-at-once = Proszę obcinać kilka paznokci dziennie.
activity-cut-nails-helper = Proszę poprosić kogoś o obcięcie.

## Tie shoe laces

activity-tie-laces-name = Wiązanie butów
activity-tie-laces-slip-on = Proszę nosić wsuwane buty. Używać długiej łyżki do butów.
activity-tie-laces-stretch-laces = Proszę użyć rozciągliwych sznurowadeł, które zostają zawiązane.
activity-tie-laces-helper = Proszę poprosić kogoś o zawiązanie.

## Open a ring-pull can or a bottle cap

activity-ring-pull-cap-name = Otwieranie puszki z kółkiem lub butelki
activity-ring-pull-cap-lever-opener = Proszę użyć dźwigni, która podnosi kółko.
activity-ring-pull-cap-cap-grip = Proszę położyć na nakrętce gumową podkładkę. Kręcić płaską dłonią.
activity-ring-pull-cap-easy-packs = Proszę kupować opakowania, które otwiera się bez siły.
activity-ring-pull-cap-helper = Proszę poprosić kogoś o otwarcie.

## Chop vegetables

activity-chop-vegetables-name = Krojenie warzyw
activity-chop-vegetables-upright-knife = Proszę użyć noża kołyskowego lub noża z pionowym uchwytem.
activity-chop-vegetables-cook-first = Proszę najpierw je ugotować. Miękkie kroi się lżej.
activity-chop-vegetables-ready-cut = Proszę kupować warzywa już pokrojone.
activity-chop-vegetables-helper = Proszę poprosić kogoś o pokrojenie.

## Wash the dishes

activity-wash-dishes-name = Mycie naczyń
activity-wash-dishes-long-brush = Proszę użyć chłodnej wody i szczotki na długim uchwycie.
activity-wash-dishes-soak-first = Proszę najpierw namoczyć naczynia. Potem lekko wytrzeć.
activity-wash-dishes-dishwasher = Proszę użyć zmywarki. Wkładać lekkie rzeczy, jedną po drugiej.
activity-wash-dishes-helper = Proszę poprosić kogoś o umycie.

## Knead dough or stir a thick mix

activity-knead-dough-name = Wyrabianie ciasta lub mieszanie gęstej masy
activity-knead-dough-upright-spoon = Proszę postawić miskę na mokrej ścierce. Mieszać łyżką trzymaną pionowo, ruchem z barku.
activity-knead-dough-thin-mix = Proszę zrobić rzadszą masę i zrobić jej mniej.
activity-knead-dough-mixer = Niech miesza maszyna.
activity-knead-dough-helper = Proszę poprosić kogoś o wyrobienie.

## Carry plates or a tray

activity-carry-plates-name = Noszenie talerzy lub tacy
activity-carry-plates-flat-palms = Proszę wsunąć pod spód obie płaskie dłonie. Trzymać blisko ciała.
activity-carry-plates-trolley = Proszę wozić je na wózku.
activity-carry-plates-one-by-one = Proszę nosić jeden talerz naraz. Gorące najpierw mają ostygnąć.
activity-carry-plates-helper = Proszę poprosić kogoś o zaniesienie.

## Eat with knife and fork

activity-eat-with-cutlery-name = Jedzenie nożem i widelcem
activity-eat-with-cutlery-fat-handles = Proszę użyć sztućców z długimi, grubymi uchwytami.
activity-eat-with-cutlery-rocking-knife = Proszę kroić nożem kołyskowym.
activity-eat-with-cutlery-soft-food = Proszę wybierać miękkie jedzenie, do którego nie trzeba noża.
activity-eat-with-cutlery-other-hand = Proszę jeść drugą ręką. Poprosić kogoś o pokrojenie jedzenia.

## Turn a door knob or a tap

activity-turn-door-knob-name = Przekręcanie gałki drzwi lub kranu
activity-turn-door-knob-lever-handle = Proszę założyć na nią dźwignię. Naciskać ją przedramieniem.
activity-turn-door-knob-leave-open = Drzwi w domu proszę zostawiać uchylone. Popychać je biodrem.
activity-turn-door-knob-other-hand = Proszę przekręcać drugą ręką.
activity-turn-door-knob-helper = Proszę poprosić kogoś o przekręcenie.

## Vacuum the floor

activity-vacuum-name = Odkurzanie podłogi
activity-vacuum-walk-along = Łokieć ma być przy boku. Proszę iść razem z odkurzaczem.
activity-vacuum-light-cleaner = Proszę użyć lekkiego odkurzacza albo takiego, który jeździ sam.
activity-vacuum-one-room = Proszę odkurzyć jeden pokój. Potem ręka ma odpocząć.
activity-vacuum-helper = Proszę poprosić kogoś o odkurzenie.

## Hang up the washing

activity-hang-washing-name = Wieszanie prania
activity-hang-washing-hangers = Proszę wieszać ubrania na wieszakach albo kłaść na suszarce.
activity-hang-washing-soft-pegs = Proszę użyć klamerek, które łatwo się otwierają.
activity-hang-washing-small-loads = Proszę prać mało naraz i dobrze odwirować.
activity-hang-washing-helper = Proszę poprosić kogoś o powieszenie.

## Scrub the bath

activity-scrub-bath-name = Szorowanie wanny
activity-scrub-bath-long-handle = Proszę użyć gąbki na długim, grubym uchwycie.
activity-scrub-bath-let-soak = Proszę spryskać, poczekać i spłukać. Nie szorować.
activity-scrub-bath-short-bouts = Proszę codziennie myć mały kawałek.
activity-scrub-bath-helper = Proszę poprosić kogoś o umycie.

## Push up from a chair

activity-rise-from-chair-name = Wstawanie z krzesła z odpychaniem
activity-rise-from-chair-high-seat = Proszę siadać na wyższym, twardym krześle. Wtedy nogi łatwiej podnoszą ciało.
activity-rise-from-chair-legs-first = Proszę przesunąć się i pochylić do przodu. Wstać siłą nóg.
activity-rise-from-chair-forearm-rest = Proszę naciskać na poręcz przedramieniem, nie ręką.
activity-rise-from-chair-other-hand = Proszę odpychać się drugą ręką albo poprosić kogoś o pomoc.

## Iron clothes

activity-iron-clothes-name = Prasowanie
activity-iron-clothes-light-iron = Proszę użyć małego, lekkiego żelazka.
activity-iron-clothes-hang-smooth = Proszę wieszać ubrania wilgotne i gładkie. Wielu nie trzeba prasować.
activity-iron-clothes-few-pieces = Proszę wyprasować kilka sztuk. Potem ręka ma odpocząć.
activity-iron-clothes-other-hand = Proszę prasować drugą ręką albo poprosić kogoś o prasowanie.

## Make the bed

activity-make-bed-name = Ścielenie łóżka
activity-make-bed-light-covers = Proszę używać jednej lekkiej kołdry i luźnych prześcieradeł.
activity-make-bed-flat-hands = Proszę wsuwać prześcieradło płaskimi rękami i przedramionami.
activity-make-bed-few-corners = Proszę nie podnosić materaca. Rogi zostawić luźne.
activity-make-bed-helper = Proszę poprosić kogoś o pościelenie.

## Lean on a walking stick or frame

activity-lean-on-stick-name = Chodzenie z laską lub balkonikiem
activity-lean-on-stick-wide-grip = Proszę poprosić nas o sprawdzenie wysokości. Pomaga szeroki, miękki uchwyt.
activity-lean-on-stick-forearm-rest = Proszę poprosić nas o taki sprzęt, na którym opiera się przedramię. Proszę nie chodzić bez podparcia.
activity-lean-on-stick-other-hand = Proszę zapytać nas, czy laskę lub balkonik może trzymać druga ręka. Proszę nie chodzić bez podparcia.

## Hold a dog lead

activity-hold-dog-lead-name = Trzymanie smyczy psa
activity-hold-dog-lead-waist-lead = Proszę użyć smyczy zapinanej w pasie.
activity-hold-dog-lead-calm-walks = Proszę chodzić na krótkie, spokojne spacery. Pies w szelkach, które hamują ciągnięcie.
activity-hold-dog-lead-helper = Proszę poprosić kogoś o trzymanie smyczy. Nigdy nie owijać jej wokół palców.

## Use a screwdriver

activity-use-screwdriver-name = Używanie śrubokręta
activity-use-screwdriver-powered-driver = Proszę użyć lekkiego śrubokręta z silnikiem.
activity-use-screwdriver-fat-handle = Proszę użyć grubego uchwytu, który obraca się małymi krokami.
activity-use-screwdriver-elbow-in = Łokieć ma być przy boku. Proszę naciskać całym ciałem.
activity-use-screwdriver-helper = Proszę poprosić kogoś o wkręcenie wkrętów.

## Use a hammer

activity-hammer-name = Używanie młotka
activity-hammer-light-hammer = Proszę użyć lekkiego młotka z miękkim, grubym uchwytem.
activity-hammer-few-nails = Proszę wbić kilka gwoździ. Potem ręka ma odpocząć.
activity-hammer-helper = Proszę poprosić kogoś o wbicie.

## Use a power drill

activity-power-drill-name = Używanie wiertarki
activity-power-drill-light-drill = Proszę użyć lekkiej wiertarki z bocznym uchwytem.
activity-power-drill-two-hands = Proszę trzymać ją obiema rękami, z łokciami przy bokach.
activity-power-drill-short-bouts = Proszę wywiercić jeden otwór. Potem ręka ma odpocząć.
activity-power-drill-helper = Proszę poprosić kogoś o wiercenie.

## Lift boxes

activity-lift-boxes-name = Podnoszenie pudeł
activity-lift-boxes-palms-under = Proszę obrócić wnętrze dłoni w górę. Wsunąć pod spód przedramiona i stać blisko.
activity-lift-boxes-half-load = Proszę napełniać pudła tylko do połowy.
activity-lift-boxes-trolley = Proszę wozić je na wózku. Nie podnosić z podłogi.
activity-lift-boxes-helper = Proszę poprosić kogoś o podniesienie.

## Pick up small parts or coins

activity-handle-small-parts-name = Zbieranie drobiazgów lub monet
activity-handle-small-parts-soft-tray = Proszę położyć je na miękkiej podkładce. Zsuwać przez brzeg.
activity-handle-small-parts-wide-tweezers = Proszę użyć pęsety z szerokim, miękkim uchwytem albo magnesu.
activity-handle-small-parts-pauses = Proszę zebrać kilka. Potem ręka ma odpocząć.
activity-handle-small-parts-other-hand = Proszę zbierać je drugą ręką.

## Hold a baby to feed

activity-feed-baby-name = Trzymanie dziecka do karmienia
activity-feed-baby-firm-pillow = Proszę położyć dziecko na twardej poduszce. Ciężar ma trzymać poduszka.
activity-feed-baby-straight-wrist = Proszę oprzeć główkę w zgięciu łokcia. Nadgarstek ma być prosty.
activity-feed-baby-change-sides = Proszę często zmieniać stronę. W przerwach prostować całą rękę.
activity-feed-baby-helper = Proszę poprosić kogoś o ułożenie dziecka i pozostanie blisko.

## Change a nappy

activity-change-nappy-name = Zmiana pieluchy
activity-change-nappy-easy-tabs = Proszę wybierać pieluchy z szerokimi rzepami, które łatwo się otwierają.
activity-change-nappy-roll-baby = Proszę obrócić dziecko na bok. Nie trzymać obu nóżek w górze.
activity-change-nappy-wipes-ready = Przed zmianą proszę wszystko otworzyć i rozłożyć.
activity-change-nappy-other-hand = Rzepy ma zapinać druga ręka. Można też poprosić kogoś o zmianę pieluchy.

## Buckle a child seat

activity-buckle-child-seat-name = Zapinanie fotelika dziecka
activity-buckle-child-seat-buckle-key = Proszę użyć dźwigni do naciskania klamer.
activity-buckle-child-seat-knuckle = Proszę nacisnąć przycisk zgiętym knykciem.
activity-buckle-child-seat-helper = Proszę użyć drugiej ręki albo poprosić kogoś. Sprawdzić, czy klamra jest zapięta.

## Push a pram

activity-push-pram-name = Pchanie wózka dziecięcego
activity-push-pram-open-palms = Proszę pchać otwartymi dłońmi.
activity-push-pram-high-bar = Proszę ustawić rączkę wysoko i owinąć ją czymś miękkim. Oprzeć na niej przedramiona.
activity-push-pram-helper = Proszę pchać drugą ręką albo poprosić kogoś o pchanie.

## Dig

activity-dig-name = Kopanie
activity-dig-small-spade = Proszę użyć małej, lekkiej łopaty z długim trzonkiem.
activity-dig-foot-pushes = Łopatę ma wbijać stopa.
activity-dig-short-bouts = Proszę nabierać po pół łopaty. Przerwać po kilku.
activity-dig-helper = Proszę poprosić kogoś o kopanie i tylko wskazywać miejsce.

## Pull weeds

activity-pull-weeds-name = Wyrywanie chwastów
activity-pull-weeds-long-weeder = Proszę użyć motyki lub wyrywacza z długim, grubym uchwytem.
activity-pull-weeds-after-rain = Proszę pielić po deszczu, gdy korzenie łatwo wychodzą.
activity-pull-weeds-short-bouts = Proszę wypielić mały kawałek. Potem ręka ma odpocząć.
activity-pull-weeds-helper = Proszę poprosić kogoś o pielenie i tylko wskazywać miejsce.

## Water plants

activity-water-plants-name = Podlewanie roślin
activity-water-plants-two-hands = Proszę trzymać konewkę obiema rękami, blisko ciała.
activity-water-plants-little-water = Proszę nalewać do konewki tylko trochę.
activity-water-plants-hose = Proszę użyć węża z dźwignią, którą można zablokować.
activity-water-plants-helper = Proszę podlewać drugą ręką albo poprosić kogoś.

## Fasten a seat belt

activity-fasten-seat-belt-name = Zapinanie pasów w aucie
activity-fasten-seat-belt-belt-handle = Proszę założyć na pas uchwyt, po który łatwo sięgnąć.
activity-fasten-seat-belt-knuckle = Proszę nacisnąć zatrzask zgiętym knykciem.
activity-fasten-seat-belt-other-hand = Proszę przeciągnąć pas drugą ręką. Poprosić kogoś o zapięcie.

## Ride a bicycle

activity-cycle-name = Jazda na rowerze
activity-cycle-high-bar = Proszę podnieść kierownicę. Używać miękkich, grubych rączek.
activity-cycle-short-rides = Proszę jeździć krótko po gładkich drogach.
activity-cycle-indoor-bike = Proszę użyć roweru do ćwiczeń. Siedzieć prosto, ręce mają odpoczywać.

## Lift weights

activity-lift-weights-name = Podnoszenie ciężarów
activity-lift-weights-half-weight = Proszę brać połowę ciężaru. Mniej powtórzeń.
activity-lift-weights-forearm-cuff = Proszę ciągnąć opaską na przedramieniu. Nie chwytać drążka.
activity-lift-weights-legs-only = Proszę ćwiczyć nogi i tułów. Nic nie trzymać.

## Do press-ups or yoga

activity-press-ups-yoga-name = Pompki lub joga
activity-press-ups-yoga-legs-only = Proszę wybierać pozycje na nogach, plecach lub boku.
activity-press-ups-yoga-straight-wrist = Proszę trzymać stałe uchwyty, tak żeby nadgarstek był prosty.
activity-press-ups-yoga-fewer = Proszę opierać się o ścianę, nie o podłogę.

## Swim

activity-swim-name = Pływanie
activity-swim-float = Proszę oprzeć przedramiona na desce do pływania. Pływać siłą nóg.
activity-swim-dry-at-once = Zaraz po wyjściu proszę osuszyć skórę i ortezę.
activity-swim-short-swim = Proszę pływać krótko.

## Play the guitar

activity-play-guitar-name = Gra na gitarze
activity-play-guitar-light-strings = Proszę używać lekkich strun, które wymagają małego nacisku.
activity-play-guitar-neck-higher = Proszę trzymać gryf wyżej, na pasie. Nadgarstek ma być prosty.
activity-play-guitar-short-bouts = Proszę zagrać jedną piosenkę. Potem ręka ma odpocząć.

## Sleep

activity-sleep-position-name = Spanie
activity-sleep-position-splint-on = Proszę nosić ortezę w nocy, gdy tak mówi ten poradnik.
activity-sleep-position-arm-on-pillow = Proszę położyć całą rękę na poduszce obok, na tyle prosto, na ile to łatwe.
activity-sleep-position-soft-towel = Proszę luźno owinąć łokieć miękkim ręcznikiem. Wtedy zgina się mniej.

## Hold a phone to your ear

activity-hold-phone-to-ear-name = Trzymanie telefonu przy uchu
activity-hold-phone-to-ear-loudspeaker = Proszę użyć głośnika lub słuchawek. Odłożyć telefon.
activity-hold-phone-to-ear-short-calls = Proszę rozmawiać krótko. W przerwach prostować całą rękę.
activity-hold-phone-to-ear-other-hand = Proszę trzymać telefon w drugiej ręce.
