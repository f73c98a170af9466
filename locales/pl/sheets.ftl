### The papers beside the guide: card, diary, exercises, letter.
### No date, hour, number, side or angle is typed here; they come in as variables.

# Stands at the end of each of these papers.
sheet-caution = Ta kartka nie zastępuje pełnego poradnika ani tego, co mówi terapeuta lub chirurg. Jeśli mówią coś innego, proszę robić to, co mówią.

## The card

card-caution = Ta karta należy do poradnika. Najważniejsze jest to, co mówi terapeuta.
card-title = Orteza
card-description = Kiedy nosić ortezę, jak ją założyć, kiedy dzwonić.
# $straps is a list of names, in the order in which they are closed.
card-straps-on = Zapinać w tej kolejności: { $straps }.
card-straps-off = Odpinać w tej kolejności: { $straps }.

## The diary

diary-title = Dzienniczek
diary-description = Dzienniczek do zaznaczania, do następnej wizyty.
diary-week = Tydzień { $week }: od { $from } do { $to }
# $least is no pain, $most the worst.
diary-intro = Proszę zaznaczyć kratkę, gdy coś jest zrobione. Proszę zakreślić liczbę dla najsilniejszego bólu w tym dniu: { $least } oznacza dzień bez bólu, { $most } to najgorszy ból, jaki można sobie wyobrazić.
# $bouts is how many times, $each how long.
diary-wears = { $bouts ->
    [one] Raz
    [few] { $bouts } razy
    [many] { $bouts } razy
   *[other] { $bouts } raza
}, za każdym razem przez { $each }. Nie w nocy.
diary-worn = Noszona
diary-hours = Noszona, h
diary-skin = Skóra obejrzana
diary-exercises = Ćwiczenia
diary-pain = Ból
diary-note = Notatka
# $number is the clinic's telephone.
diary-stop = Jeśli wystąpi znak „stop” z poradnika, proszę nie czekać do wizyty. Proszę zadzwonić pod numer { $number }.
diary-stop-no-number = Jeśli wystąpi znak „stop” z poradnika, proszę nie czekać do wizyty. Proszę zadzwonić do poradni.
diary-visit = Proszę przynieść ten dzienniczek na wizytę: { $date }.
diary-visit-time = Proszę przynieść ten dzienniczek na wizytę: { $date }, { $time }.

## The exercises

exercises-title = Ćwiczenia
exercises-description = Program na dom: od czego zacząć, jaki ruch, jak często, kiedy przerwać.

## The letter

letter-title = { $to ->
    [teacher] Dla nauczycielki lub nauczyciela
    [employer] Dla pracodawcy
   *[carer] Dla osoby, która pomaga
}
letter-description = Co wolno na razie ręce w ortezie, a czego nie.
# $fitted and $review are dates.
letter-intro = { $to ->
    [teacher] Osoba ucząca się u Państwa ma ortezę na { $side ->
        [left] lewej
       *[right] prawej
    } ręce.
    [employer] Osoba zatrudniona u Państwa ma ortezę na { $side ->
        [left] lewej
       *[right] prawej
    } ręce.
   *[carer] Osoba, której Państwo pomagają, ma ortezę na { $side ->
        [left] lewej
       *[right] prawej
    } ręce.
} Ten list mówi, co wolno tej ręce, aż poradnia obejrzy ją znowu.
letter-from = Data założenia ortezy
letter-until = Następna wizyta w poradni
letter-for = Po co jest
letter-told = Oto, co powiedziano tej osobie o jej codziennych zadaniach:
letter-never-off = Ortezę zdejmuje tylko poradnia. Proszę jej nie ciąć, nie giąć i nie otwierać.
letter-leave-on = Proszę nie zdejmować ani nie zmieniać ortezy, chyba że ta osoba o to poprosi.
letter-other-jobs = O zadanie, którego tu nie ma, proszę zapytać tę osobę. Jeśli nie ma pewności, zadanie czeka, aż zapyta ona w poradni.
letter-help-carer = Proszę pomagać w zadaniach dla obu rąk i nie ciągnąć za rękę w ortezie.
letter-help-teacher = Proszę dać więcej czasu na pisanie. Bez sportu i zabaw, w których można uderzyć rękę, aż poradnia pozwoli.
letter-help-employer = Proszę dawać zadania, które nie wymagają tej ręki. Poradnia decyduje, kiedy można wrócić do pełnej pracy.
# $number is the clinic's telephone.
letter-urgent = Proszę działać natychmiast, jeśli palce lub kciuk sinieją, bieleją, drętwieją lub są zimne, albo ból bardzo się nasila. Proszę pomóc tej osobie zadzwonić pod numer { $number }.
letter-urgent-no-number = Proszę działać natychmiast, jeśli palce lub kciuk sinieją, bieleją, drętwieją lub są zimne, albo ból bardzo się nasila. Proszę pomóc tej osobie zadzwonić do poradni.
# Stands in the place of a picture.
letter-hand = { $side ->
    [left] Orteza jest na lewej ręce.
   *[right] Orteza jest na prawej ręce.
}
# At the foot of the page. $name is the person's name.
letter-about = Dotyczy: { $name }. { $side ->
    [left] Lewa
   *[right] Prawa
} ręka.
letter-about-nobody = Dotyczy jednej osoby. { $side ->
    [left] Lewa
   *[right] Prawa
} ręka.

# A diary ends after some weeks, however late the visit is.
diary-more = To ostatnia strona tego dzienniczka. O dalsze strony proszę poprosić w poradni.

## Booklet: sheets bound into one

booklet-contents = Co jest w środku
booklet-caution = Te strony nie zastępują tego, co mówi terapeuta lub chirurg. Jeśli mówią coś innego, proszę robić to, co mówią.
booklet-one-handed = Zakładanie jedną ręką
