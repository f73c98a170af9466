### The fact sheet of a condition, for patients. It is about nobody in particular: no hour, no date.
### No number, side or duration is typed here; they come in as variables.

facts-caution = Tungkol sa isang problema ng kamay ang papel na ito. Hindi ito pamalit sa sinasabi ng inyong therapist o surgeon. Kung iba ang sabi nila, sila ang sundin ninyo.
# At the foot of each page.
facts-line = Ipinapakita ng mga larawan ang { $side ->
    [left] kaliwang kamay
   *[right] kanang kamay
}{ $finger ->
    [index] , hintuturo
    [middle] , hinlalato
    [ring] , palasingsingan
    [little] , hinliliit
   *[none] {""}
}.

## What it is

facts-what-title = Ano ito
# $what is one or two finished sentences.
facts-what = { $what }

## What the splint is for

facts-aim-title = Ano ang ginagawa ng splint
# $aim is one or two finished sentences.
facts-aim = { $aim }
# $joints is a list of joints, such as "your wrist and the base of your thumb".
facts-joints = { $joints }
facts-joint-still = Hindi pinapagalaw
facts-joint-steady = Pinatatatag
facts-joint-stopped = Gumagalaw, hanggang sa hangganan
facts-joint-relative = Mas kaunti ang galaw kaysa katabing mga daliri
facts-joint-coupled = Sumasabay sa galaw ng katabing daliri
facts-joint-mobilised = Banayad na hinihila
# Some splints hold these joints and others do not.
facts-joint-varies = Hawak o malaya: depende sa splint ninyo
facts-joint-free = Malayang igalaw

## Types of splint

facts-types-title = Mga angkop na splint
facts-types-intro = Angkop ang mga uring ito sa simula. Ang therapist ninyo ang pipili ng para sa inyong kamay.

## The usual course

facts-course-title = Ano ang karaniwang takbo
# $length is a finished length of time, such as "about six weeks".
facts-step-label = Hakbang { $number }, { $length }:
# $wear and $ends are finished sentences.
facts-step = { $wear } { $ends }
# $length is such as "four to six weeks".
facts-length-usual = mga { $length }
facts-length-protocol = { $length }, ayon sa inyong surgeon
facts-length-open = walang takdang tagal
facts-weeks = { $count ->
    [one] { $count } linggo
   *[other] { $count } na linggo
}
# $from and $to are numbers of weeks.
facts-weeks-range = { $from } hanggang { $to ->
    [one] { $to } linggo
   *[other] { $to } na linggo
}
facts-days = { $count ->
    [one] { $count } araw
   *[other] { $count } na araw
}
facts-days-range = { $from } hanggang { $to ->
    [one] { $to } araw
   *[other] { $to } na araw
}
facts-ends-therapist = Walang takdang katapusan ang hakbang na ito. Ang therapist ninyo ang magpapasya kung kailan ito tapos.
facts-ends-surgeon = Walang takdang katapusan ang hakbang na ito. Ang surgeon ninyo ang magpapasya kung kailan ito tapos.
facts-ends-person = Kayo ang magpapasya kung kailan hindi na ninyo ito kailangan.
facts-ends-time = Saka magsisimula ang susunod na hakbang.
facts-own-guide = Hindi ito ang plano ninyo. Ang sarili ninyong gabay ang nagsasabi kung kailan isusuot ang splint. Sundin ang gabay ninyo.
facts-clinics-differ = Magkakaiba ang mga klinika. Puwedeng hindi kapareho ng narito ang splint, mga hakbang at mga oras ninyo.
facts-surgeon-sets = Pagkatapos ng operasyon o bali, ang surgeon ninyo ang nagtatakda ng mga oras at ng posisyon ng kamay.

## When to get help

facts-help-title = Kailan hihingi ng tulong
# $sign is a sign, such as "Your pinch gets weaker".
facts-visit = { $sign }: sabihin sa therapist sa susunod na check-up.
