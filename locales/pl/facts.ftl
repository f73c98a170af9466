### The fact sheet of a condition, for patients. It is about nobody in particular: no hour, no date.
### No number, side or duration is typed here; they come in as variables.

facts-caution = Ta kartka mówi o chorobie ręki. Nie zastępuje tego, co mówi terapeuta lub chirurg. Jeśli mówią coś innego, proszę robić to, co mówią.
# At the foot of each page.
facts-line = Rysunki pokazują { $side ->
    [left] lewą
   *[right] prawą
} rękę{ $finger ->
    [index] , palec wskazujący
    [middle] , palec środkowy
    [ring] , palec serdeczny
    [little] , mały palec
   *[none] {""}
}.

## What it is

facts-what-title = Co to jest
# $what is one or two finished sentences.
facts-what = { $what }

## What the splint is for

facts-aim-title = Co robi orteza
# $aim is one or two finished sentences.
facts-aim = { $aim }
# $joints is a list of joints, such as "your wrist and the base of your thumb".
facts-joints = { $joints }
facts-joint-still = Bez ruchu
facts-joint-steady = Ustabilizowane
facts-joint-stopped = Ruch tylko do blokady
facts-joint-relative = Ruch mniejszy niż w palcach obok
facts-joint-coupled = Ruch razem z palcem obok
facts-joint-mobilised = Delikatne ciągnięcie
# Some splints hold these joints and others do not.
facts-joint-varies = Trzymane lub wolne: zależy od ortezy
facts-joint-free = Wolny ruch

## Types of splint

facts-types-title = Jakie ortezy pasują
facts-types-intro = Te rodzaje pasują na początku. Terapeuta wybiera właściwą dla danej ręki.

## The usual course

facts-course-title = Jak to zwykle przebiega
# $length is a finished length of time, such as "about six weeks".
facts-step-label = Etap { $number }, { $length }:
# $wear and $ends are finished sentences.
facts-step = { $wear } { $ends }
# $length is such as "four to six weeks".
facts-length-usual = mniej więcej { $length }
facts-length-protocol = { $length }, jak mówi chirurg
facts-length-open = bez stałego czasu
facts-weeks = { $count ->
    [one] { $count } tydzień
    [few] { $count } tygodnie
    [many] { $count } tygodni
   *[other] { $count } tygodnia
}
# $from and $to are numbers of weeks.
facts-weeks-range = od { $from } do { $to ->
    [one] { $to } tygodnia
    [few] { $to } tygodni
    [many] { $to } tygodni
   *[other] { $to } tygodnia
}
facts-days = { $count ->
    [one] { $count } dzień
    [few] { $count } dni
    [many] { $count } dni
   *[other] { $count } dnia
}
facts-days-range = od { $from } do { $to ->
    [one] { $to } dnia
    [few] { $to } dni
    [many] { $to } dni
   *[other] { $to } dnia
}
facts-ends-therapist = Ten etap nie ma stałego końca. O końcu decyduje terapeuta.
facts-ends-surgeon = Ten etap nie ma stałego końca. O końcu decyduje chirurg.
facts-ends-person = O tym, kiedy orteza nie jest już potrzebna, decyduje osoba, która ją nosi.
facts-ends-time = Potem zaczyna się następny etap.
facts-own-guide = Ta kartka nie jest osobistym planem. Kiedy nosić ortezę, mówi własny poradnik. Proszę robić to, co mówi poradnik.
facts-clinics-differ = Poradnie się różnią. Orteza, etapy i czasy nie muszą być takie same jak tutaj.
facts-surgeon-sets = Po operacji lub złamaniu chirurg ustala czasy i ułożenie ręki.

## When to get help

facts-help-title = Kiedy szukać pomocy
# $sign is a sign, such as "Your pinch gets weaker".
facts-visit = { $sign }: proszę powiedzieć terapeucie na następnej wizycie.
