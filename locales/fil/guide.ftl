### The guide: everything that is not about one condition, splint, activity or exercise.
### No date, hour, number, side or angle is typed here; they come in as variables.
### $side is left or right and only chooses between wordings.
### Filipino plurals by CLDR: [one] is 1, 2, 3, 5, 7, 8, 10 …; *[other] is what ends in 4, 6 or 9 and takes “na”.
### So the number itself stands in every branch, also in [one].

## Title and furniture

# $orthosis is the splint's name, such as "long thumb splint".
guide-title = Ang inyong { $orthosis }
# $name is the person's name. Stands at the foot of every page.
guide-made-for = Para kay { $name } lang. { $side ->
    [left] Kaliwang kamay
   *[right] Kanang kamay
}{ $finger ->
    [index] , hintuturo
    [middle] , hinlalato
    [ring] , palasingsingan
    [little] , hinliliit
   *[none] {""}
}.
guide-made-for-nobody = Para sa isang tao lang. { $side ->
    [left] Kaliwang kamay
   *[right] Kanang kamay
}{ $finger ->
    [index] , hintuturo
    [middle] , hinlalato
    [ring] , palasingsingan
    [little] , hinliliit
   *[none] {""}
}.
guide-caution = Hindi pamalit ang gabay na ito sa sinasabi ng inyong therapist o surgeon. Kung iba ang sabi nila, sila ang sundin ninyo. Huwag ninyong ipahiram ang splint kaninuman.
# Printed on every sheet in a language that no qualified translator has signed off.
guide-drafted = Hindi pa ito nasuri ng kuwalipikadong tagasalin.
guide-outdated = Binago ang Ingles ng papel na ito matapos itong isalin. Magtanong sa inyong klinika bago ito gamitin.
guide-page = Pahina { $page } ng { $pages }
# Where a section stands, in the line of contents.
contents-page = , p. { $page }

## Which hand

hand-left = Kaliwang kamay
hand-right = Kanang kamay
hand-alt = { $side ->
    [left] Ang splint ay para sa inyong kaliwang kamay.
   *[right] Ang splint ay para sa inyong kanang kamay.
}

## Section titles

glance-title = Sa isang tingin
dates-title = Plano bawat araw
on-off-title = Pagsusuot at pagtatanggal
on-off-intro = { $washing ->
    [never] Ang klinika lang ninyo ang gagawa nito.
   *[freely] Umupo sa tabi ng mesa. Gamitin ang kabilang kamay.
}
skin-title = Tingnan ang balat
skin-intro = { $checks ->
    [one] Tumingin nang mabuti { $checks } beses bawat araw.
   *[other] Tumingin nang mabuti { $checks } na beses bawat araw.
} Gumamit ng maliwanag na ilaw. { $washing ->
    [supported] Tingnan ang mga lugar na ito tuwing tinatanggal ninyo ang splint para hugasan ang kamay. Sa ibang oras, tingnan ang mga gilid nito at ang mga dulo ng inyong mga daliri at hinlalaki:
    [never] Huwag ninyong tanggalin ang splint para tumingin. Tingnan ang mga gilid nito at ang mga dulo ng inyong mga daliri at hinlalaki:
   *[freely] Tingnan ang mga lugar na ito:
}
move-title = Igalaw ang kamay
move-intro = Dahan-dahan lang. Huwag kailanman pilitin ang galaw.
daily-title = Sa araw-araw na buhay
care-title = Alagaan ang splint
note-title = Mula sa inyong therapist
call-title = Kailan tatawag
call-intro = Ilagay ang pahinang ito kung saan ninyo ito nakikita.

## Facts on the first page

fact-splint = Aling splint
# $finger is index, middle, ring or little and only chooses between wordings.
finger-name = { $finger ->
    [index] Hintuturo, daliring katabi ng hinlalaki
    [middle] Hinlalato
    [ring] Palasingsingan
   *[little] Hinliliit
}
fact-for = Para saan ito
fact-fitted = Petsa ng pagkabit
fact-full = Buong suot mula
fact-full-more = Unti-unti muna. Tingnan ang plano bawat araw.
fact-review = Sunod na check-up
# $joints is a list such as "the tip of your thumb and your knuckles"; $count is how many.
fact-free = Malayang igalaw: { $joints }.

say-date = { $date }
say-date-time = { $date }, { $time }
say-short-date = { $date }
date-range = { $from } hanggang { $to }
# $to is the date of the next visit.
date-until-visit = { $from } hanggang sa check-up ninyo: { $to }
# From one clock time to another.
time-range = { $from } hanggang { $to }

## Joints, as the person would say them

joint-elbow = ang inyong siko
joint-forearm = ang pag-ikot ng ibabang braso
joint-wrist = ang inyong pulso
joint-thumb-cmc = ang puno ng hinlalaki
joint-thumb-mcp = ang buko ng hinlalaki
joint-thumb-ip = ang dulo ng hinlalaki
joint-fingers-mcp = ang inyong mga daliri
joint-fingers-pip = ang mga gitnang kasukasuan ng mga daliri
joint-fingers-dip = ang mga dulo ng mga daliri
# The affected finger.
joint-finger-mcp = ang malaking buko ng masakit na daliri
joint-finger-pip = ang gitnang kasukasuan ng masakit na daliri
joint-finger-dip = ang dulo ng masakit na daliri
joint-other-fingers-mcp = ang iba pang mga daliri
joint-other-fingers-pip = ang mga gitnang kasukasuan ng iba pang mga daliri
joint-other-fingers-dip = ang mga dulo ng iba pang mga daliri
joint-index-mcp = ang malaking buko ng hintuturo
joint-middle-mcp = ang malaking buko ng hinlalato
joint-ring-mcp = ang malaking buko ng palasingsingan
joint-little-mcp = ang malaking buko ng hinliliit
joint-index-pip = ang gitnang kasukasuan ng hintuturo
joint-middle-pip = ang gitnang kasukasuan ng hinlalato
joint-ring-pip = ang gitnang kasukasuan ng palasingsingan
joint-little-pip = ang gitnang kasukasuan ng hinliliit
joint-index-dip = ang dulo ng hintuturo
joint-middle-dip = ang dulo ng hinlalato
joint-ring-dip = ang dulo ng palasingsingan
joint-little-dip = ang dulo ng hinliliit

## When to wear it

strip-days = Araw { $from } hanggang { $to }
strip-from-day = Mula araw { $from }
strip-weeks = Linggo { $from } hanggang { $to }
strip-build = Dagdagan nang kaunti araw-araw. Huwag muna sa gabi.
strip-key-on = Suot ang splint
strip-key-off = Tanggal ang splint
strip-key-needed = Suot sa mabibigat na gawain
# In phases that guard what heals.
strip-key-guard = Suot sa labas at sa matataong lugar
strip-key-rest = Suot habang nagpapahinga
strip-key-part = Suot sa ilang oras lang
# $label is a row's label, $times a list of clock times.
strip-alt = { $label }: suot ang splint mula { $times }.
strip-alt-none = { $label }: walang takdang oras na suot ang splint.
wear-never-remove = Araw at gabi. Huwag ninyong tanggalin.
# $times is how often it comes off in a day.
wear-off-to-wash = Araw at gabi. Tanggalin lang para hugasan ang kamay{ $times ->
    [one] , { $times } beses bawat araw.
   *[other] , { $times } na beses bawat araw.
}
wear-off-to-exercise = Araw at gabi. Tanggalin lang para hugasan ang kamay at mag-ehersisyo{ $times ->
    [one] , { $times } beses bawat araw.
   *[other] , { $times } na beses bawat araw.
}
wear-night-and-tasks = Suot magdamag. Sa maghapon, suot sa mabibigat na gawain.
# In phases that guard what heals: hard tasks wait.
wear-night-and-tasks-guard = Suot magdamag. Sa maghapon, suot sa labas, sa matataong lugar at sa lahat ng gawaing pinapayagan sa inyo.
wear-night-and-rest = Suot magdamag. Sa maghapon, suot habang nagpapahinga. Tanggal kapag ginagamit ang kamay.
# $bouts is how many times a day, $each a finished length of time.
wear-stretch = Suot { $bouts ->
    [one] { $bouts } beses bawat araw
   *[other] { $bouts } na beses bawat araw
}, nang { $each } bawat beses. Tanggal sa pagitan.
wear-day = Suot maghapon. Tanggal sa gabi.
wear-night = Suot magdamag. Tanggal sa maghapon.
wear-tasks = Suot lang sa mabibigat na gawain. Tanggal sa gabi.
wear-tasks-guard = Suot sa labas, sa matataong lugar at sa lahat ng gawaing pinapayagan sa inyo. Tanggal sa gabi.
wear-off = Tanggal.
# $length is how long it is worn while awake.
wear-wean-night = Suot nang { $length } pagkabangon, at magdamag.
wear-wean-day = Suot nang { $length } pagkabangon. Tanggal sa gabi.

## What comes after the next visit

later-label = Kapag sinabi ng inyong therapist
later-label-surgeon = Kapag sinabi ng inyong surgeon
later-label-next = Sa susunod, kapag sinabi namin
# This splint does not suit that stage.
later-other = Ibang splint na.
later-never-remove = Araw at gabi, walang patid.
later-off-to-wash = Araw at gabi, tanggal lang para hugasan ang kamay.
later-off-to-exercise = Araw at gabi, tanggal lang para hugasan ang kamay at mag-ehersisyo.
later-night-and-tasks = Sa gabi at sa mabibigat na gawain.
later-night-and-tasks-guard = Sa gabi, sa labas at sa matataong lugar.
later-night-and-rest = Sa gabi at habang nagpapahinga.
later-stretch = Ilang beses bawat araw, para banatin.
later-day = Sa maghapon lang.
later-night = Sa gabi lang.
later-tasks = Sa mabibigat na gawain lang.
later-tasks-guard = Sa labas at sa matataong lugar lang.
later-off = Wala nang splint.
later-wean = Pakaunti nang pakaunti ang oras.

## The stop box

warning-title-take-off = Tanggalin ito at tawagan kami kung:
warning-title-supported = { $straps ->
    [without] Tawagan kami kung:
   *[with] Luwagan ang mga strap at tawagan kami kung:
}
warning-title-keep-on = { $straps ->
    [without] Panatilihin itong suot at tawagan kami kung:
   *[with] Luwagan ang mga strap, panatilihing suot ang splint at tawagan kami kung:
}
# Followed by the signs that cannot wait. $number is the emergency number.
warning-emergency = Emergency, tumawag sa { $number } kung:
warning-emergency-no-number = Emergency, humingi agad ng tulong kung:
warning-act-take-off = Tanggalin ito. Saka tumawag.
warning-act-supported = { $straps ->
    [without] Panatilihing may suporta ang masakit na bahagi. Saka tumawag.
   *[with] Luwagan ang mga strap. Panatilihing may suporta ang masakit na bahagi. Saka tumawag.
}
warning-act-keep-on = { $straps ->
    [without] Huwag ninyo itong tanggalin. Tawagan kami.
   *[with] Luwagan ang mga strap. Huwag ninyo itong tanggalin. Saka tumawag.
}

## Day by day

axis-midnight = hatinggabi
axis-noon = tanghali
schedule-day = Araw
schedule-clock = Oras
schedule-long = Gaano katagal
schedule-note = Halimbawa lang ang mga oras na ito. Pumili ng oras na bagay sa inyo. Kung masyadong matagal mawala ang marka, ulitin ang parehong araw ng plano.
schedule-note-late = Halimbawa lang ang mga oras na ito. Pumili ng oras na bagay sa inyo. Ang guhit na lampas hatinggabi ay sakop ng nakaraang araw. Kung masyadong matagal mawala ang marka, ulitin ang parehong araw ng plano.
schedule-minutes = { $count ->
    [one] minuto
   *[other] minuto
}
schedule-hours = { $count ->
    [one] oras
   *[other] oras
}
schedule-times = { $count ->
    [one] { $count } beses
   *[other] { $count } na beses
}
schedule-not-yet = Hindi muna sa araw na ito

calendar-week = Linggo
calendar-what = Ano ang gagawin
calendar-build = Unti-unting dagdagan.
calendar-wean = Bawasan ang pagsuot.
calendar-never-remove = Araw at gabi, walang patid.
calendar-off-to-wash = Araw at gabi.
calendar-off-to-exercise = Araw at gabi.
calendar-night-and-tasks = Gabi at mabibigat na gawain.
calendar-night-and-tasks-guard = Gabi, labas, matataong lugar.
calendar-night-and-rest = Gabi at pahinga.
calendar-stretch = Mga oras ng banat.
calendar-day = Maghapon.
calendar-night = Gabi.
calendar-tasks = Mabibigat na gawain.
calendar-tasks-guard = Labas at matataong lugar.
calendar-off = Walang splint.
calendar-review = Check-up: { $date }.
calendar-key-review = Check-up ninyo
calendar-key-build = Unti-unting dagdag
calendar-key-on = Suot
calendar-key-night = Gabi
calendar-key-needed = Bahagi ng araw
calendar-key-off = Tanggal
calendar-and-so-on = Ganito rin ang gawin linggo-linggo.

## Putting on and taking off

steps-on = Pagsusuot
steps-off = Pagtatanggal
# For a splint that only the clinic takes off.
steps-never = Huwag kayo mismo ang magtanggal ng splint. Ang klinika ninyo ang nagtatanggal at nagsusuot nito.
strap-next = susunod na strap

## Skin

# Letters that mark the places, in the order of the alphabet.
spot-letters = A B C D E F G H
skin-fine = Ayos ito
skin-not = Hindi ito ayos
skin-fine-mark = Bahagyang marka na nawawala sa loob ng { $limit }
skin-fine-lines = Bahagyang guhit mula sa mga strap
skin-fine-damp = Balat na medyo mamasa-masa
skin-not-mark = Markang nananatili nang higit sa { $limit }
# Redness does not show on dark skin.
skin-not-dark = Sa maitim o kayumangging balat: bahaging mas maitim, mas mainit o mas matigas nang higit sa { $limit }
skin-not-blister = Paltos, sugat o bukas na balat
skin-not-rash = Pantal, o kating hindi nawawala
skin-not-wet = Balat na maputi, malambot at basa
skin-act-take-off = Tanggalin ang splint at tawagan kami ngayong araw.
skin-act-keep = { $straps ->
    [without] Tawagan kami ngayong araw. Panatilihing may suporta ang kamay.
   *[with] Luwagan ang mga strap at tawagan kami ngayong araw. Panatilihing may suporta ang kamay.
}

## Moving

move-splint-on = Suot ang splint
move-splint-off = Tanggal ang splint
move-stop = Tumigil kung lumalala ang sakit. Kung hindi ito humupa sa loob ng ilang oras, tawagan kami.
move-avoid = Huwag muna
dose-times = { $count ->
    [one] beses
   *[other] beses
}
dose-a-day = { $count ->
    [one] beses bawat araw
   *[other] beses bawat araw
}
# $count is a number of times, after the first week.
move-up-to = Makalipas ang isang linggo, kung madali na: hanggang { $count ->
    [one] { $count } beses
   *[other] { $count } na beses
}.
moves-after-review = Bibigyan kayo ng therapist ng bagong mga galaw pagkatapos ng check-up ninyo.
# $date is when they begin, $exercises a list of names.
moves-later = Mula { $date }: { $exercises }.
avoid-wrist-ulnar-deviation = Huwag ninyong ikiling ang pulso papunta sa hinliliit.
avoid-wrist-radial-deviation = Huwag ninyong ikiling ang pulso papunta sa hinlalaki.
avoid-thumb-cmc-any = Huwag ninyong igalaw ang puno ng hinlalaki.
avoid-thumb-cmc-palmar-abduction = Huwag ninyong ibanat ang hinlalaki palayo sa palad.
avoid-thumb-cmc-radial-abduction = Huwag ninyong ibanat ang hinlalaki patagilid.
avoid-thumb-mcp-any = Huwag ninyong ibaluktot ang buko ng hinlalaki.
avoid-thumb-mcp-flexion = Huwag ninyong itiklop ang hinlalaki sa palad.
avoid-thumb-mcp-radial-deviation = Huwag ninyong itulak ang hinlalaki palayo sa kamay.
avoid-thumb-mcp-ulnar-deviation = Huwag ninyong itulak ang hinlalaki patawid sa kamay.

## Daily life

daily-job = Ginagawa ninyo
daily-what = Sa ngayon
daily-how = Paano
daily-word-keep = Ituloy lang
daily-word-change = Gawin nang ganito
daily-word-leave = Huwag muna
daily-keep = Gawin gaya ng dati.
daily-helper = Magpatulong sa iba.
daily-other-hand = Gamitin ang kabilang kamay, o magpatulong.
daily-ask = Itanong sa therapist kung kailan puwede ulit.
daily-pauses = Paunti-unti lang ang gawin. Magpahinga sa pagitan.
daily-keep-dry = Panatilihing tuyo ang splint, o patuyuin agad.
daily-driving = Bago magmaneho, magtanong sa therapist at sa insurance ninyo. Sundin ang batas sa lugar ninyo.
# $date is when a later phase begins.
daily-from-keep = Mula { $date }: gaya ng dati.
daily-from-change = Mula { $date }: subukan sa mas madaling paraan.
why-risky = Masyado pang delikado sa kamay na ito.
why-driving = Kailangan ng buong kontrol sa pagmamaneho o pagbibisikleta.
why-swimming = Hindi pa handa sa tubig ang kamay, balat o splint.
why-heavy = Masyadong mabigat sa ngayon.
why-in-the-way = Nakakasagabal ang splint.
why-lateral-pinch = Napupuwersa ang kamay kapag idinidiin ang hinlalaki sa daliri.
why-tip-pinch = Napupuwersa ang kamay sa pag-ipit gamit ang dulo ng mga daliri.
why-power-grip = Napupuwersa ang kamay sa mahigpit na kapit.
why-sustained-grip = Napupuwersa ang kamay sa matagal na kapit.
why-wrist-deviation = Napupuwersa ang pulso kapag ikinikiling patagilid.
why-wrist-flexion = Napupuwersa ang pulso kapag ibinabaluktot.
why-wrist-load = Napupuwersa ang kamay kapag itinukod ang nakabaluktot na pulso.
why-thumb-load = Nabibigatan ang hinlalaki sa gawaing ito.
why-forearm-rotation = Napupuwersa ang kamay kapag iniikot ang braso.
why-finger-flexion = Napupuwersa ang mga daliri kapag ibinabaluktot nang madiin.
why-elbow-flexion = Napupuwersa ang braso kapag nakabaluktot ang siko.
why-impact = Puwedeng masaktan ang kamay sa bangga.
why-vibration = Napupuwersa ang kamay sa vibration.
why-wet = Nababasa ang kamay o ang splint.
why-heat = Sinisira ng init ang splint o pinipinsala ang balat.
why-repetition = Napupuwersa ang kamay sa paulit-ulit na galaw.

## Looking after the splint

# $celsius is a temperature in degrees.
care-wash-plastic = Hugasan ito ng sabon at tubig na hindi iinit nang higit sa { $celsius } degrees Celsius.
care-dry-plastic = Patuyuing mabuti bago isuot.
care-heat = Huwag ninyong ilapit sa init: mainit na tubig, heater, kotseng nakabilad. Lalambot ito at masisira ang hugis.
care-wash-soft = Labhan sa kamay gamit ang banayad na sabon. Banlawang mabuti.
care-dry-soft = Patuyuin nang nakalapag sa lilim. Huwag kailanman isuot nang basa-basa.
care-machine = Huwag kayong gumamit ng washing machine, dryer, plantsa o bleach.
care-metal = Punasan hanggang matuyo. Tingnan kung may kalawang o baluktot.
care-keep-dry = Panatilihing tuyo. Takpan kapag naghuhugas o naliligo.
care-straps = Alisin ang himulmol sa mga strap. Isara ang mga ito bago hugasan ang splint.
care-change = Huwag ninyong gupitin, baluktutin o lagyan ng pandikit. Kami ang gagawa niyan.
care-share = Huwag ninyong ipahiram. Ginawa ito para sa inyo.
care-bring = Dalhin ito sa bawat check-up.

## Calling

call-emergency = Emergency: humingi agad ng tulong
call-today = Tawagan kami ngayong araw
call-visit = Sabihin sa check-up ninyo
call-where = Saan: { $address }
# Stands where no emergency number is known.
call-emergency-number = Ang emergency number sa lugar ninyo
call-telephone = Telepono
note-from = Sulat ng inyong therapist
# Followed by a line to write on.
initial-say = Sinuri kasama ninyo
initial-date = Petsa
initial-name = Inisyal

## Lengths of time

length-minutes = { $count ->
    [one] { $count } minuto
   *[other] { $count } na minuto
}
length-hours = { $count ->
    [one] { $count } oras
   *[other] { $count } na oras
}
length-hours-minutes = { $hours } at { $minutes }
length-seconds = { $count ->
    [one] { $count } segundo
   *[other] { $count } na segundo
}

# What a picture shows, for who cannot see it.
# $view: dorsal = the back of the hand; palmar = the palm; radial = thumb side; ulnar = little-finger side; turned = half way
# between back and thumb side; own = as the wearer sees it.
picture-seen = { $what ->
    [finger] { $finger ->
        [index] Hintuturo
        [middle] Hinlalato
        [ring] Palasingsingan
        [little] Hinliliit
       *[none] Daliri
    } ng { $side ->
        [left] kaliwang kamay
       *[right] kanang kamay
    }
    [thumb] { $side ->
        [left] Kaliwang hinlalaki
       *[right] Kanang hinlalaki
    }
   *[hand] { $side ->
        [left] Kaliwang kamay
       *[right] Kanang kamay
    }
}, { $view ->
    [palmar] tanaw mula sa palad.
    [radial] tanaw mula sa panig ng hinlalaki.
    [ulnar] tanaw mula sa panig ng hinliliit.
    [turned] tanaw mula sa likod at sa panig ng hinlalaki.
    [palmar-radial] tanaw mula sa palad at sa panig ng hinlalaki.
    [palmar-ulnar] tanaw mula sa palad at sa panig ng hinliliit.
    [own] gaya ng nakikita ninyo mismo.
   *[dorsal] tanaw mula sa likod.
}
picture-covers = { $splint }. { $from ->
    [arm] Abot ito mula sa itaas na braso
    [forearm] Abot ito mula sa ibabang braso
    [hand] Abot ito mula sa palad
   *[digit] Nakalagay ito sa { $finger ->
        [index] hintuturo
        [middle] hinlalato
        [ring] palasingsingan
        [little] hinliliit
       *[none] daliri o hinlalaki
    },
} { $to ->
    [fingertips] hanggang sa mga dulo ng daliri.
    [fingertip] hanggang sa dulo ng daliri.
    [fingers] hanggang sa mga daliri.
    [finger] hanggang sa daliri.
    [thumb-tip] hanggang sa dulo ng hinlalaki.
    [thumb] hanggang sa hinlalaki.
    [palm] hanggang sa palad.
   *[none] at hindi na lalampas doon.
}
picture-spots = Ipinapakita ng mga bilog na may letra kung saan titingin.
# One of several pictures of a movement.
picture-part = Larawan { $number } ng { $count }.
picture-held = Ang posisyon para sa: { $exercise }.
picture-moved = Putol-putol na guhit: ang simula. Ipinapakita ng arrow ang galaw: { $exercise }.
picture-inside = Ang mga buto, na parang nakikita sa loob ng balat.
picture-structures = May marka: { $structures }.
picture-held-joints = Ang bilog na may mga guhit sa gitna ang marka ng hawak o pinatatatag ng splint: { $joints }.
# The same mark, in a label.
picture-held-mark = Hawak o pinatatatag ng splint
# Rows of joints of all fingers, in the list above.
held-knuckles = ang malalaking buko
held-middle-joints = ang mga gitnang kasukasuan ng mga daliri
held-end-joints = ang mga dulong kasukasuan ng mga daliri
# A pair of pictures: how a splint sits, and a way in which it does not.
picture-right = Maayos ang lapat. May tsek.
picture-wrong = Hindi maayos ang lapat. May ekis. { $fault }
