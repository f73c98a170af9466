### The guide: everything that is not about one condition, splint, activity or exercise.
### No date, hour, number, side or angle is typed here; they come in as variables.
### $side is left or right and only chooses between wordings.
### Polish: lengths of time ($length, $each, $limit, $hold, $loosen) stand in the accusative; sentences are built for that.

## Title and furniture

# $orthosis is the splint's name, such as "long thumb splint" (nominative).
guide-title = Poradnik: { $orthosis }
# $name is the person's name. Stands at the foot of every page.
guide-made-for = Tylko dla: { $name }. { $side ->
    [left] Lewa
   *[right] Prawa
} ręka{ $finger ->
    [index] , palec wskazujący
    [middle] , palec środkowy
    [ring] , palec serdeczny
    [little] , mały palec
   *[none] {""}
}.
guide-made-for-nobody = Tylko dla jednej osoby. { $side ->
    [left] Lewa
   *[right] Prawa
} ręka{ $finger ->
    [index] , palec wskazujący
    [middle] , palec środkowy
    [ring] , palec serdeczny
    [little] , mały palec
   *[none] {""}
}.
guide-caution = Ten poradnik nie zastępuje tego, co mówi terapeuta lub chirurg. Jeśli mówią coś innego, proszę robić to, co mówią. Proszę nikomu nie pożyczać ortezy.
# Printed on every sheet in a language that no qualified translator has signed off.
guide-drafted = Tego tekstu nie sprawdził wykwalifikowany tłumacz.
guide-outdated = Angielski tekst tej kartki zmieniono po tłumaczeniu. Przed użyciem proszę zapytać w poradni.
guide-page = Strona { $page } z { $pages }
# Where a section stands, in the line of contents.
contents-page = , s. { $page }

## Which hand

hand-left = Lewa ręka
hand-right = Prawa ręka
hand-alt = { $side ->
    [left] Orteza jest na lewą rękę.
   *[right] Orteza jest na prawą rękę.
}

## Section titles

glance-title = W skrócie
dates-title = Dzień po dniu
on-off-title = Zakładanie i zdejmowanie
on-off-intro = { $washing ->
    [never] Robi to tylko poradnia.
   *[freely] Proszę usiąść przy stole i użyć drugiej ręki.
}
skin-title = Kontrola skóry
skin-intro = { $checks ->
    [one] Proszę dokładnie oglądać skórę raz dziennie.
    [few] Proszę dokładnie oglądać skórę { $checks } razy dziennie.
    [many] Proszę dokładnie oglądać skórę { $checks } razy dziennie.
   *[other] Proszę dokładnie oglądać skórę { $checks } raza dziennie.
} Potrzebne jest dobre światło. { $washing ->
    [supported] Te miejsca proszę oglądać po każdym zdjęciu ortezy do mycia. Poza tym proszę oglądać jej brzegi i czubki palców:
    [never] Proszę nie zdejmować ortezy, żeby obejrzeć skórę. Proszę oglądać jej brzegi i czubki palców:
   *[freely] Proszę oglądać te miejsca:
}
move-title = Ruch ręki
move-intro = Proszę ćwiczyć powoli. Nigdy nie ruszać na siłę.
daily-title = Na co dzień
care-title = Dbanie o ortezę
note-title = Od terapeuty
call-title = Kiedy dzwonić
call-intro = Tę stronę proszę trzymać na widoku.

## Facts on the first page

fact-splint = Jaka orteza
# $finger is index, middle, ring or little and only chooses between wordings.
finger-name = { $finger ->
    [index] Palec wskazujący, obok kciuka
    [middle] Palec środkowy
    [ring] Palec serdeczny
   *[little] Mały palec
}
fact-for = Po co jest
fact-fitted = Data założenia
fact-full = Początek pełnego noszenia
fact-full-more = Najpierw coraz dłużej. Patrz tabela „Dzień po dniu”.
fact-review = Następna wizyta
# $joints is a list such as "the tip of your thumb and your knuckles"; $count is how many.
fact-free = Wolny ruch: { $joints }.

say-date = { $date }
say-date-time = { $date }, { $time }
say-short-date = { $date }
date-range = od { $from } do { $to }
# $to is the date of the next visit.
date-until-visit = od { $from } do wizyty { $to }
# From one clock time to another.
time-range = od { $from } do { $to }

## Joints, as the person would say them

joint-elbow = łokieć
joint-forearm = obracanie przedramienia
joint-wrist = nadgarstek
joint-thumb-cmc = nasada kciuka
joint-thumb-mcp = knykieć kciuka
joint-thumb-ip = czubek kciuka
joint-fingers-mcp = palce
joint-fingers-pip = środkowe stawy palców
joint-fingers-dip = czubki palców
# The affected finger.
joint-finger-mcp = knykieć chorego palca
joint-finger-pip = środkowy staw chorego palca
joint-finger-dip = czubek chorego palca
joint-other-fingers-mcp = pozostałe palce
joint-other-fingers-pip = środkowe stawy pozostałych palców
joint-other-fingers-dip = czubki pozostałych palców
joint-index-mcp = knykieć palca wskazującego
joint-middle-mcp = knykieć palca środkowego
joint-ring-mcp = knykieć palca serdecznego
joint-little-mcp = knykieć małego palca
joint-index-pip = środkowy staw palca wskazującego
joint-middle-pip = środkowy staw palca środkowego
joint-ring-pip = środkowy staw palca serdecznego
joint-little-pip = środkowy staw małego palca
joint-index-dip = czubek palca wskazującego
joint-middle-dip = czubek palca środkowego
joint-ring-dip = czubek palca serdecznego
joint-little-dip = czubek małego palca

## When to wear it

strip-days = Dni od { $from } do { $to }
strip-from-day = Od dnia { $from }
strip-weeks = Tygodnie od { $from } do { $to }
strip-build = Co dzień trochę dłużej. W nocy jeszcze nie.
strip-key-on = Z ortezą
strip-key-off = Bez ortezy
strip-key-needed = Z ortezą przy trudnych zadaniach
# In phases that guard what heals.
strip-key-guard = Z ortezą na dworze i w tłumie
strip-key-rest = Z ortezą w czasie odpoczynku
strip-key-part = Z ortezą przez część czasu
# $label is a row's label, $times a list of clock times.
strip-alt = { $label }: orteza założona { $times }.
strip-alt-none = { $label }: nie ma stałych godzin z ortezą.
wear-never-remove = Dzień i noc. Proszę nie zdejmować.
# $times is how often it comes off in a day.
wear-off-to-wash = Dzień i noc. Proszę zdejmować tylko do mycia{ $times ->
    [one] , raz dziennie.
    [few] , { $times } razy dziennie.
    [many] , { $times } razy dziennie.
   *[other] , { $times } raza dziennie.
}
wear-off-to-exercise = Dzień i noc. Proszę zdejmować tylko do mycia i ćwiczeń{ $times ->
    [one] , raz dziennie.
    [few] , { $times } razy dziennie.
    [many] , { $times } razy dziennie.
   *[other] , { $times } raza dziennie.
}
wear-night-and-tasks = Zakładać na całą noc. W dzień zakładać do trudnych zadań.
# In phases that guard what heals: hard tasks wait.
wear-night-and-tasks-guard = Zakładać na całą noc. W dzień zakładać na dworze, w tłumie i do wszystkich dozwolonych zadań.
wear-night-and-rest = Zakładać na całą noc. W dzień zakładać do odpoczynku. Zdejmować, gdy ręka pracuje.
# $bouts is how many times a day, $each a finished length of time.
wear-stretch = Zakładać { $bouts ->
    [one] raz dziennie
    [few] { $bouts } razy dziennie
    [many] { $bouts } razy dziennie
   *[other] { $bouts } raza dziennie
}, za każdym razem na { $each }. W przerwach zdejmować.
wear-day = Nosić cały dzień. Na noc zdejmować.
wear-night = Nosić całą noc. W dzień zdejmować.
wear-tasks = Zakładać tylko do trudnych zadań. Na noc zdejmować.
wear-tasks-guard = Zakładać na dworze, w tłumie i do wszystkich dozwolonych zadań. Na noc zdejmować.
wear-off = Bez ortezy.
# $length is how long it is worn while awake.
wear-wean-night = Po wstaniu nosić przez { $length }. Nosić też całą noc.
wear-wean-day = Po wstaniu nosić przez { $length }. Na noc zdejmować.

## What comes after the next visit

later-label = Gdy terapeuta tak powie
later-label-surgeon = Gdy chirurg tak powie
later-label-next = Później, gdy tak powiemy
# This splint does not suit that stage.
later-other = Z inną ortezą.
later-never-remove = Dzień i noc, bez przerwy.
later-off-to-wash = Dzień i noc, zdejmować tylko do mycia.
later-off-to-exercise = Dzień i noc, zdejmować tylko do mycia i ćwiczeń.
later-night-and-tasks = W nocy i do trudnych zadań.
later-night-and-tasks-guard = W nocy, na dworze i w tłumie.
later-night-and-rest = W nocy i w czasie odpoczynku.
later-stretch = Kilka razy dziennie, do rozciągania.
later-day = Tylko w dzień.
later-night = Tylko w nocy.
later-tasks = Tylko do trudnych zadań.
later-tasks-guard = Tylko na dworze i w tłumie.
later-off = Bez ortezy.
later-wean = Coraz krócej, krok po kroku.

## The stop box

warning-title-take-off = Proszę zdjąć ortezę i zadzwonić do nas, jeśli:
warning-title-supported = { $straps ->
    [without] Proszę zadzwonić do nas, jeśli:
   *[with] Proszę poluzować paski i zadzwonić do nas, jeśli:
}
warning-title-keep-on = { $straps ->
        [without] Proszę zostawić ortezę założoną i zadzwonić do nas, jeśli:
       *[with] Proszę poluzować paski, zostawić ortezę założoną i zadzwonić do nas, jeśli:
    }
# Followed by the signs that cannot wait. $number is the emergency number.
warning-emergency = Nagły wypadek, proszę dzwonić pod numer { $number }, jeśli:
warning-emergency-no-number = Nagły wypadek, proszę natychmiast wezwać pomoc, jeśli:
warning-act-take-off = Proszę zdjąć ortezę. Potem zadzwonić.
warning-act-supported = { $straps ->
    [without] Chore miejsce musi być podparte. Potem proszę zadzwonić.
   *[with] Proszę poluzować paski. Chore miejsce musi być podparte. Potem proszę zadzwonić.
}
warning-act-keep-on = { $straps ->
    [without] Proszę nie zdejmować ortezy. Proszę zadzwonić do nas.
   *[with] Proszę poluzować paski. Nie zdejmować ortezy. Potem proszę zadzwonić.
}

## Day by day

axis-midnight = północ
axis-noon = południe
schedule-day = Dzień
schedule-clock = Pora dnia
schedule-long = Jak długo
schedule-note = Te godziny to przykłady. Proszę wybrać wygodne pory. Jeśli ślad zostaje za długo, proszę powtórzyć ten sam dzień.
schedule-note-late = Te godziny to przykłady. Proszę wybrać wygodne pory. Kreska po północy należy do poprzedniego dnia. Jeśli ślad zostaje za długo, proszę powtórzyć ten sam dzień.
schedule-minutes = { $count ->
    [one] minutę
    [few] minuty
    [many] minut
   *[other] minuty
}
schedule-hours = { $count ->
    [one] godzinę
    [few] godziny
    [many] godzin
   *[other] godziny
}
schedule-times = { $count ->
    [one] raz
    [few] { $count } razy
    [many] { $count } razy
   *[other] { $count } raza
}
schedule-not-yet = Nie w tym dniu

calendar-week = Tydzień
calendar-what = Co robić
calendar-build = Coraz dłużej.
calendar-wean = Coraz krócej.
calendar-never-remove = Dzień i noc, bez przerwy.
calendar-off-to-wash = Dzień i noc.
calendar-off-to-exercise = Dzień i noc.
calendar-night-and-tasks = Noce i trudne zadania.
calendar-night-and-tasks-guard = W nocy, na dworze, w tłumie.
calendar-night-and-rest = Noce i odpoczynek.
calendar-stretch = Pory rozciągania.
calendar-day = W dzień.
calendar-night = Noce.
calendar-tasks = Trudne zadania.
calendar-tasks-guard = Na dworze i w tłumie.
calendar-off = Bez ortezy.
calendar-review = Wizyta: { $date }.
calendar-key-review = Wizyta
calendar-key-build = Coraz dłużej
calendar-key-on = Z ortezą
calendar-key-night = Noce
calendar-key-needed = Część dnia
calendar-key-off = Bez ortezy
calendar-and-so-on = I tak dalej co tydzień.

## Putting on and taking off

steps-on = Zakładanie
steps-off = Zdejmowanie
# For a splint that only the clinic takes off.
steps-never = Proszę nie zdejmować ortezy we własnym zakresie. Zdejmuje ją i zakłada poradnia.
strap-next = następny pasek

## Skin

# Letters that mark the places, in the order of the alphabet.
spot-letters = A B C D E F G H
skin-fine = To jest w porządku
skin-not = To nie jest w porządku
skin-fine-mark = Lekki ślad, który znika w { $limit }
skin-fine-lines = Słabe linie od pasków
skin-fine-damp = Skóra trochę wilgotna
skin-not-mark = Ślad, który zostaje dłużej niż { $limit }
# Redness does not show on dark skin.
skin-not-dark = Na ciemnej skórze: miejsce ciemniejsze, cieplejsze lub twardsze dłużej niż { $limit }
skin-not-blister = Pęcherz, ranka lub pęknięta skóra
skin-not-rash = Wysypka lub świąd, który nie mija
skin-not-wet = Skóra biała, miękka i mokra
skin-act-take-off = Proszę zdjąć ortezę i zadzwonić do nas dzisiaj.
skin-act-keep = { $straps ->
    [without] Proszę zadzwonić do nas dzisiaj. Ręka musi być podparta.
   *[with] Proszę poluzować paski i zadzwonić do nas dzisiaj. Ręka musi być podparta.
}

## Moving

move-splint-on = Z ortezą
move-splint-off = Bez ortezy
move-stop = Proszę przerwać, jeśli ból się nasila. Jeśli po kilku godzinach nie ustąpi, proszę zadzwonić do nas.
move-avoid = Jeszcze nie
dose-times = { $count ->
    [one] raz
    [few] razy
    [many] razy
   *[other] raza
}
dose-a-day = { $count ->
    [one] raz dziennie
    [few] razy dziennie
    [many] razy dziennie
   *[other] raza dziennie
}
# $count is a number of times, after the first week.
move-up-to = Po tygodniu, jeśli jest łatwo: najwyżej { $count ->
    [one] { $count } raz
    [few] { $count } razy
    [many] { $count } razy
   *[other] { $count } raza
}.
moves-after-review = Po wizycie terapeuta poda nowe ruchy.
# $date is when they begin, $exercises a list of names.
moves-later = { $date } – od tego dnia: { $exercises }.
avoid-wrist-ulnar-deviation = Proszę nie przechylać nadgarstka w stronę małego palca.
avoid-wrist-radial-deviation = Proszę nie przechylać nadgarstka w stronę kciuka.
avoid-thumb-cmc-any = Proszę nie poruszać nasadą kciuka.
avoid-thumb-cmc-palmar-abduction = Proszę nie odciągać kciuka od wnętrza dłoni.
avoid-thumb-cmc-radial-abduction = Proszę nie odciągać kciuka w bok.
avoid-thumb-mcp-any = Proszę nie zginać knykcia kciuka.
avoid-thumb-mcp-flexion = Proszę nie składać kciuka do wnętrza dłoni.
avoid-thumb-mcp-radial-deviation = Proszę nie odpychać kciuka od ręki.
avoid-thumb-mcp-ulnar-deviation = Proszę nie pchać kciuka w poprzek ręki.

## Daily life

daily-job = Czynność
daily-what = Na razie
daily-how = Jak
daily-word-keep = Robić dalej
daily-word-change = Robić tak
daily-word-leave = Na razie nie
daily-keep = Proszę robić to jak zawsze.
daily-helper = Proszę poprosić kogoś o pomoc.
daily-other-hand = Proszę użyć drugiej ręki albo poprosić kogoś o pomoc.
daily-ask = Proszę zapytać terapeutę, kiedy można zacząć znowu.
daily-pauses = Proszę robić to po trochu. W przerwach odpoczywać.
daily-keep-dry = Orteza ma być sucha. Mokrą proszę zaraz osuszyć.
daily-driving = Przed jazdą proszę zapytać terapeutę i ubezpieczyciela. Proszę przestrzegać miejscowego prawa.
# $date is when a later phase begins.
daily-from-keep = Od { $date }: jak zawsze.
daily-from-change = Od { $date }: proszę spróbować w łatwiejszy sposób.
why-risky = Na razie zbyt ryzykowne dla tej ręki.
why-driving = Do jazdy potrzebna jest pełna kontrola.
why-swimming = Ręka, skóra lub orteza nie są gotowe na wodę.
why-heavy = Na razie za ciężkie.
why-in-the-way = Orteza przeszkadza.
why-lateral-pinch = Przyciskanie kciuka do palca obciąża rękę.
why-tip-pinch = Ściskanie czubkami palców obciąża rękę.
why-power-grip = Mocny chwyt obciąża rękę.
why-sustained-grip = Długie trzymanie obciąża rękę.
why-wrist-deviation = Przechylanie na boki obciąża nadgarstek.
why-wrist-flexion = Zginanie obciąża nadgarstek.
why-wrist-load = Opieranie się na zgiętym nadgarstku obciąża rękę.
why-thumb-load = To zadanie obciąża kciuk.
why-forearm-rotation = Skręcanie przedramienia obciąża rękę.
why-finger-flexion = Mocne zginanie obciąża palce.
why-elbow-flexion = Zgięty łokieć obciąża całą rękę.
why-impact = Uderzenia mogą zaszkodzić ręce.
why-vibration = Drgania obciążają rękę.
why-wet = Ręka lub orteza będzie mokra.
why-heat = Ciepło niszczy ortezę lub szkodzi skórze.
why-repetition = Ciągle ten sam ruch obciąża rękę.

## Looking after the splint

# $celsius is a temperature in degrees.
care-wash-plastic = Proszę myć ortezę mydłem i wodą. Woda nie może być cieplejsza niż { $celsius } stopni.
care-dry-plastic = Przed założeniem proszę ją dobrze wysuszyć.
care-heat = Żadnego gorąca. Ani gorącej wody, ani grzejnika, ani auta w słońcu. Orteza zmięknie i straci kształt.
care-wash-soft = Proszę prać ręcznie w łagodnym mydle. Dobrze wypłukać.
care-dry-soft = Proszę suszyć na płasko w cieniu. Nigdy nie zakładać wilgotnej.
care-machine = Bez pralki, suszarki, żelazka i wybielacza.
care-metal = Proszę wytrzeć do sucha. Sprawdzić, czy nie ma rdzy lub wygięć.
care-keep-dry = Orteza ma być sucha. Do mycia proszę ją osłonić.
care-straps = Proszę usuwać kłaczki z pasków. Przed myciem ortezy zapiąć paski.
care-change = Proszę nie ciąć, nie giąć i nie kleić. Robimy to my.
care-share = Proszę nie pożyczać. Jest zrobiona dla jednej osoby.
care-bring = Proszę przynosić ją na każdą wizytę.

## Calling

call-emergency = Nagły wypadek: natychmiast szukać pomocy
call-today = Dzwonić do nas dzisiaj
call-visit = Powiedzieć na wizycie
call-where = Gdzie: { $address }
# Stands where no emergency number is known.
call-emergency-number = Miejscowy numer alarmowy
call-telephone = Telefon
note-from = Pisze terapeuta
# Followed by a line to write on.
initial-say = Omówiono razem
initial-date = Data
initial-name = Inicjały

## Lengths of time

length-minutes = { $count ->
    [one] { $count } minutę
    [few] { $count } minuty
    [many] { $count } minut
   *[other] { $count } minuty
}
length-hours = { $count ->
    [one] { $count } godzinę
    [few] { $count } godziny
    [many] { $count } godzin
   *[other] { $count } godziny
}
length-hours-minutes = { $hours } { $minutes }
length-seconds = { $count ->
    [one] { $count } sekundę
    [few] { $count } sekundy
    [many] { $count } sekund
   *[other] { $count } sekundy
}

# What a picture shows, for who cannot see it.
# $view: dorsal = the back of the hand; palmar = the palm; radial = thumb side; ulnar = little-finger side; turned = half way
# between back and thumb side; own = as the wearer sees it.
picture-seen = { $what ->
    [finger] { $finger ->
        [index] Palec wskazujący
        [middle] Palec środkowy
        [ring] Palec serdeczny
        [little] Mały palec
       *[none] Palec
    } { $side ->
        [left] lewej
       *[right] prawej
    } ręki
    [thumb] { $side ->
        [left] Lewy kciuk
       *[right] Prawy kciuk
    }
   *[hand] { $side ->
        [left] Lewa ręka
       *[right] Prawa ręka
    }
}, { $view ->
    [palmar] widok od wnętrza dłoni.
    [radial] widok od strony kciuka.
    [ulnar] widok od strony małego palca.
    [turned] widok od strony grzbietu i kciuka.
    [palmar-radial] widok od strony wnętrza dłoni i kciuka.
    [palmar-ulnar] widok od strony wnętrza dłoni i małego palca.
    [own] tak, jak widać własną rękę.
   *[dorsal] widok od grzbietu.
}
picture-covers = { $splint }. { $from ->
    [arm] Sięga od ramienia
    [forearm] Sięga od przedramienia
    [hand] Sięga od wnętrza dłoni
   *[digit] Miejsce: { $finger ->
        [index] palec wskazujący
        [middle] palec środkowy
        [ring] palec serdeczny
        [little] mały palec
       *[none] palec lub kciuk
    },
} { $to ->
    [fingertips] do czubków palców.
    [fingertip] do czubka palca.
    [fingers] do palców.
    [finger] do palca.
    [thumb-tip] do czubka kciuka.
    [thumb] do kciuka.
    [palm] do wnętrza dłoni.
   *[none] i nie dalej.
}
picture-spots = Kółka z literami pokazują, gdzie patrzeć.
# One of several pictures of a movement.
picture-part = Rysunek { $number } z { $count }.
picture-held = Pozycja do ćwiczenia: { $exercise }.
picture-moved = Linia przerywana: początek. Strzałka pokazuje ruch: { $exercise }.
picture-inside = Kości, jakby widziane przez skórę.
picture-structures = Zaznaczono: { $structures }.
picture-held-joints = Kółko z kreskami w poprzek pokazuje, co trzyma lub stabilizuje orteza: { $joints }.
# The same mark, in a label.
picture-held-mark = Trzyma lub stabilizuje orteza
# Rows of joints of all fingers, in the list above.
held-knuckles = knykcie
held-middle-joints = środkowe stawy palców
held-end-joints = końcowe stawy palców
# A pair of pictures: how a splint sits, and a way in which it does not.
picture-right = Leży dobrze. Pokazuje to ptaszek.
picture-wrong = Leży źle. Pokazuje to krzyżyk. { $fault }
