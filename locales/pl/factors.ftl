### Advice for what is particular about one person.
### Each message is one or two short sentences that stand inside a section of the guide.
### $checks is a number of skin checks a day, $limit a finished length of time.

## Skin that feels little or nothing

factor-numb-skin-look = Proszę ufać oczom, a nie czuciu. Proszę obejrzeć rękę z każdej strony. Może pomóc lusterko.
factor-numb-skin-strap-room = Proszę wsunąć czubek palca drugiej ręki pod każdy pasek. Musi się zmieścić.
factor-numb-skin-hot-and-sharp = Gorące rzeczy proszę sprawdzać drugą ręką. Ostre rzeczy trzymać z dala od skóry bez czucia.

## Thin or tender skin

factor-fragile-skin-no-tape = Proszę nie przyklejać do skóry taśm ani lepkich podkładek.
factor-fragile-skin-lift = Proszę zdejmować ortezę delikatnie. Nie może trzeć ani ciągnąć skóry.
factor-fragile-skin-sleeve = Pod ortezę proszę zakładać gładki, suchy rękaw z bawełny. Zmieniać go codziennie.

## Swelling

factor-swelling-raise = Podczas siedzenia proszę trzymać rękę opartą powyżej serca.
factor-swelling-loosen = Jeśli pasek robi się ciasny, proszę go trochę poluzować. Gdy obrzęk zmaleje, proszę go znowu zapiąć.
factor-swelling-pump = Proszę często ruszać wolnymi palcami. To pomaga odpompować obrzęk.

## Diabetes

factor-diabetes-any-break = Proszę zadzwonić do nas tego samego dnia, jeśli skóra pęknie, nawet trochę.

## Easy bleeding

# For people who take something against clotting. No medicine is named, and none is to be stopped.
factor-blood-thinners-bruise = Proszę zadzwonić do nas dzisiaj, jeśli siniak pod ortezą rośnie.
factor-blood-thinners-no-rubbing = Proszę nie trzeć ręki mocno. Chronić ją przed uderzeniami.

## Low vision

factor-low-vision-check = Drugą ręką proszę szukać miejsc ciepłych, twardych, mokrych lub bolesnych. Proszę też poprosić kogoś o obejrzenie skóry.
factor-low-vision-dots = Proszę poprosić nas o wypukłe kropki na paskach. Dzięki nim można odróżnić paski.

## Living alone

factor-lives-alone-table = Proszę oprzeć przedramię na stole. Stół trzyma ortezę, a druga ręka pracuje.
factor-lives-alone-ready = Proszę przygotować luźne ubrania i łatwe posiłki.
factor-lives-alone-phone = Nasz numer telefonu proszę mieć obok łóżka.

## Night work

factor-night-work-main-sleep = Gdy ten poradnik mówi „noc”, chodzi o główny sen.
factor-night-work-after-sleep = Pierwsze ćwiczenia proszę robić po głównym śnie.

## Rash from foam rubber

factor-neoprene-allergy-itch = Proszę zadzwonić do nas, jeśli skóra swędzi, nawet trochę.
factor-neoprene-allergy-spare-parts = Proszę nie dodawać podkładek, rękawic ani owijek z gumy piankowej.

## A new baby

factor-new-mother-flat-hands = Proszę podnosić i karmić dziecko płaskimi rękami. Kciuki mają być obok palców.
factor-new-mother-strap-room = Ręka może puchnąć. Proszę codziennie sprawdzać, czy czubek palca mieści się pod każdym paskiem.
factor-new-mother-edges = Zanim weźmie się dziecko na ręce, proszę przykryć twarde brzegi czystą tkaniną.
