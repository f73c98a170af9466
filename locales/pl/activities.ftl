### Activities: what people do with their hands, and easier ways to do it.
### The name stands as a short heading in a table, such as “Open a jar”.
### Every other message is one or two short sentences of advice beside that name.

## Open a jar

activity-open-jar-name = Otwieranie słoika
activity-open-jar-jar-opener = Proszę użyć otwieracza przymocowanego do ściany lub stołu.
activity-open-jar-break-seal = Najpierw proszę podważyć wieczko trzonkiem łyżki. Potem łatwiej je odkręcić.
activity-open-jar-flat-palm = Proszę postawić słoik w szufladzie. Nacisnąć wieczko płaską dłonią i obrócić całe ciało.
activity-open-jar-helper = Proszę poprosić kogoś o otwarcie.

## Turn a key

activity-turn-key-name = Przekręcanie klucza
activity-turn-key-key-turner = Proszę założyć na klucz szeroki uchwyt. Trzymać go całą ręką.
activity-turn-key-other-hand = Proszę przekręcać klucz drugą ręką.
activity-turn-key-oil-lock = Proszę naoliwić zamek, żeby łatwo się obracał.

## Lift a baby

activity-lift-baby-name = Podnoszenie dziecka
activity-lift-baby-scoop = Proszę podnosić od spodu: wnętrze dłoni w górę, kciuki obok palców. Jedno przedramię pod pupą, drugie za plecami.
activity-lift-baby-chest-first = Przed wstaniem proszę przytulić dziecko do piersi.
activity-lift-baby-raise-changing-place = Proszę podwyższyć miejsce do przewijania. Wtedy podnosi się mniej wysoko.
activity-lift-baby-helper = Proszę poprosić kogoś o podanie dziecka.

## Lift a full pan

activity-lift-pan-name = Podnoszenie pełnego garnka
activity-lift-pan-half-full = Proszę napełniać garnek tylko do połowy.
activity-lift-pan-slide = Proszę przesuwać garnek po kuchence. Nie podnosić go.
activity-lift-pan-two-handles = Proszę użyć lekkiego garnka z dwoma uchwytami. Większość ciężaru ma trzymać druga ręka.
activity-lift-pan-helper = Proszę poprosić kogoś o podniesienie garnka.

## Pour from a kettle

activity-pour-kettle-name = Nalewanie z czajnika
activity-pour-kettle-one-cup = Proszę gotować wodę tylko na jedną filiżankę.
activity-pour-kettle-tipper = Proszę użyć stojaka, który sam przechyla czajnik.
activity-pour-kettle-other-hand = Proszę nalewać drugą ręką. Rękę w ortezie trzymać z dala od pary.

## Carry shopping

activity-carry-shopping-name = Noszenie zakupów
activity-carry-shopping-backpack = Proszę użyć plecaka lub wózka.
activity-carry-shopping-split-load = Proszę podzielić zakupy na małe torby. Iść dwa razy.
activity-carry-shopping-over-forearm = Lekką torbę proszę zawiesić na przedramieniu, nigdy na palcach.
activity-carry-shopping-helper = Proszę poprosić kogoś o niesienie toreb albo zamówić dostawę.

## Text with your thumbs

activity-text-with-thumbs-name = Pisanie kciukami na telefonie
activity-text-with-thumbs-speak-text = Proszę dyktować wiadomość. Telefon ją zapisze.
activity-text-with-thumbs-phone-on-table = Proszę położyć telefon na stole. Stukać palcem wskazującym.
activity-text-with-thumbs-short-texts = Proszę pisać krótkie wiadomości. Między nimi ręka ma odpoczywać.

## Hold a tablet or a book

activity-hold-tablet-name = Trzymanie tabletu lub książki
activity-hold-tablet-stand = Proszę ustawić to na stojaku.
activity-hold-tablet-on-lap = Proszę oprzeć to na poduszce na kolanach.
activity-hold-tablet-swap-hands = Proszę często zmieniać rękę.

## Write by hand

activity-write-by-hand-name = Pisanie ręczne
activity-write-by-hand-fat-pen = Proszę użyć grubego, miękkiego długopisu, który pisze lekko.
activity-write-by-hand-dictate = Proszę dyktować tekst albo pisać na klawiaturze.
activity-write-by-hand-pauses = Proszę napisać kilka linijek. Potem odłożyć długopis i odpocząć.
activity-write-by-hand-helper = Proszę poprosić kogoś o pisanie.

## Type on a keyboard

activity-type-on-keyboard-name = Pisanie na klawiaturze
activity-type-on-keyboard-fingers-for-space = Klawisz odstępu proszę naciskać palcem drugiej ręki.
activity-type-on-keyboard-low-keyboard = Proszę użyć płaskiej klawiatury. Przedramiona mają być podparte.
activity-type-on-keyboard-pauses = Proszę często robić przerwy i zostawiać ręce bez ruchu.

## Use a computer mouse

activity-use-mouse-name = Używanie myszki komputera
activity-use-mouse-other-hand = Proszę ruszać myszką drugą ręką.
activity-use-mouse-upright-mouse = Proszę spróbować myszki pionowej. Trzyma się ją jak przy podaniu ręki.
activity-use-mouse-touch-pad = Proszę użyć płytki dotykowej i jednego palca.

## Do up buttons

activity-do-up-buttons-name = Zapinanie guzików
activity-do-up-buttons-button-hook = Proszę użyć haczyka do guzików.
activity-do-up-buttons-pull-on-clothes = Proszę nosić ubrania wciągane, bez guzików.
activity-do-up-buttons-other-hand = Guziki ma zapinać druga ręka. Ta ręka tylko trzyma materiał płasko.

## Peel vegetables

activity-peel-vegetables-name = Obieranie warzyw
activity-peel-vegetables-fat-peeler = Proszę użyć obieraczki z grubym uchwytem i szerokim ostrzem.
activity-peel-vegetables-leave-skins = Proszę zostawić skórki albo kupić warzywa gotowe do gotowania.
activity-peel-vegetables-short-bouts = Proszę obrać kilka. Potem ręka ma odpocząć.
activity-peel-vegetables-helper = Proszę poprosić kogoś o obranie.

## Wring out a cloth

activity-wring-cloth-name = Wyżymanie ścierki
activity-wring-cloth-press-flat = Proszę przycisnąć ścierkę płasko do ścianki zlewu.
activity-wring-cloth-sponge = Proszę użyć gąbki. Ściskać ją lekko.
activity-wring-cloth-other-hand = Proszę owinąć ścierkę wokół kranu. Skręcać ją drugą ręką.

## Prune plants

activity-prune-plants-name = Przycinanie roślin
activity-prune-plants-ratchet = Proszę użyć sekatora, który tnie małymi krokami.
activity-prune-plants-thin-stems = Proszę ciąć tylko cienkie łodygi. Przerwać, zanim kciuk zacznie boleć.
activity-prune-plants-helper = Proszę poprosić kogoś o cięcie i tylko wskazywać gałęzie.

## Cut with scissors

activity-use-scissors-name = Cięcie nożyczkami
activity-use-scissors-spring-scissors = Proszę użyć nożyczek, które same się otwierają.
activity-use-scissors-roller-cutter = Proszę użyć noża krążkowego na desce.
activity-use-scissors-short-bouts = Proszę ciąć po trochu.
activity-use-scissors-helper = Proszę poprosić kogoś o cięcie.

## Wash your hands

activity-wash-hands-name = Mycie rąk
activity-wash-hands-pump-soap = Proszę użyć mydła z pompką i kranu z dźwignią.
activity-wash-hands-wipe-down = Proszę umyć palce, które widać. Resztę wytrzeć wilgotną ściereczką.
activity-wash-hands-take-off = Proszę zdjąć ortezę. Umyć rękę, dobrze osuszyć i znowu założyć ortezę.

## Drive a car

activity-drive-car-name = Jazda samochodem
activity-drive-car-wheel-cover = Proszę założyć na kierownicę gruby, miękki pokrowiec.
activity-drive-car-short-trips = Proszę jeździć krótko. Zatrzymać się i dać ręce odpocząć.
activity-drive-car-helper = Niech prowadzi ktoś inny.

## Knit or crochet

activity-knit-name = Robótki na drutach lub szydełku
activity-knit-fat-needles = Proszę używać lekkich, grubych drutów i miękkiej włóczki.
activity-knit-work-on-lap = Proszę oprzeć robótkę na kolanach. Pod łokcie włożyć poduszkę.
activity-knit-short-bouts = Proszę zrobić jeden rząd. Potem ręka ma odpocząć.

## Play a racket sport

activity-racket-sport-name = Gra rakietą
activity-racket-sport-soft-strings = Proszę użyć grubszego uchwytu i miększego naciągu.
activity-racket-sport-two-hands = Proszę uderzać dwiema rękami.
activity-racket-sport-half-time = Proszę grać o połowę krócej.

## Brush your teeth

activity-brush-teeth-name = Mycie zębów
activity-brush-teeth-fat-handle = Proszę użyć szczoteczki z grubym uchwytem lub z silniczkiem.
activity-brush-teeth-other-hand = Proszę myć zęby drugą ręką.

## Pull up a zip

activity-fasten-zip-name = Zapinanie zamka
activity-fasten-zip-zip-ring = Proszę przyczepić do zamka kółko. Ciągnąć palcem zgiętym jak haczyk.
activity-fasten-zip-other-hand = Proszę ciągnąć zamek drugą ręką.
