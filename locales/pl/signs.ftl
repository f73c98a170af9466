### Signs to watch for. Each is a clause or a short noun phrase without a full stop.
### It stands in a list under a heading such as “Call us today if:”.
### $limit is how long a mark may stay, $loosen how long loosening may take to help; both are finished texts (accusative).

## On the first page of every guide

sign-numb-or-tingling = Palce lub kciuk są stale bardziej zdrętwiałe lub mrowią bardziej niż przedtem
# Loosening the straps comes first; this is what is left when it does not help.
sign-fingers-blue-white-cold = { $straps ->
        [without] Palce lub kciuk są stale sine, białe lub zimne
       *[with] Palce lub kciuk są nadal sine, białe lub zimne, choć paski są luźne już { $loosen }
    }
sign-more-swelling-or-pain = Obrzęk lub ból jest większy
sign-mark-or-sore-stays = Czerwony ślad lub bolesne miejsce zostaje dłużej niż { $limit }

## Emergencies

sign-severe-pain-hard-arm = Silny ból wciąż rośnie w spoczynku albo przedramię jest napięte i twarde
sign-redness-with-fever = Zaczerwienienie się szerzy i jest gorączka lub złe samopoczucie
sign-finger-swollen-bent = Cały palec lub kciuk puchnie, jest stale zgięty i boli przy prostowaniu
sign-new-injury = Po upadku lub uderzeniu ręka wygląda krzywo albo wciąż krwawi
sign-face-swells-breathing = Puchnie twarz lub usta albo trudno oddychać

## Today

sign-redness-spreads = Zaczerwienienie lub ciepło szerzy się na ręce
sign-blister-or-open-skin = Jest pęcherz lub otwarta skóra
# Redness does not show on dark skin; these are the other signs of pressure.
sign-skin-patch-changed = Kawałek skóry jest ciemniejszy, błyszczący, twardy lub cieplejszy niż reszta
sign-rash-or-itch = Pod ortezą pojawia się wysypka lub świąd
sign-skin-wet-and-white = Skóra pod ortezą jest biała, miękka i mokra
sign-splint-broken-or-loose = Orteza jest pęknięta, wygięta, zgubiona lub za luźna
sign-hand-burning-shiny-stiff = Cała ręka piecze, błyszczy i sztywnieje

## At the next visit

sign-edge-or-strap-worn = Brzeg jest ostry albo pasek już nie trzyma
sign-plan-does-not-fit-day = Plan nie pasuje do rozkładu dnia

## For some thumbs

sign-thumb-gives-way = Kciuk ślizga się lub ucieka w bok
sign-thumb-snap = Czuć trzask w kciuku
sign-thumb-lump = Obok knykcia kciuka pojawia się nowy guzek
sign-wound-opens = Rana się otwiera, cieknie lub brzydko pachnie
sign-thumb-back-tingles = Grzbiet kciuka mrowi lub drętwieje
sign-thumb-catches = Kciuk zacina się lub przeskakuje przy ruchu
sign-thumb-weaker-in-pinch = Ściskanie kciukiem i palcem jest coraz słabsze
sign-no-easier-with-splint = Z ortezą zadania bolą tak samo jak bez niej
