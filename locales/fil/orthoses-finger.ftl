### Splints of the fingers and the hand: names, straps, places to check, and the steps of putting on and taking off.
### “Your finger” is the finger that the splint is for; where several fingers are in it, that one is “the treated finger”.
### The joints of a finger are the big knuckle, the middle joint and the tip. Left and right are never typed.

## Names
## The name stands inside sentences; the short form is a label in tables.

orthosis-tip-shell-custom-name = splint ng dulo ng daliri
orthosis-tip-shell-custom-short = Dulo ng daliri
orthosis-tip-shell-ready-name = yari nang splint ng dulo ng daliri
orthosis-tip-shell-ready-short = Dulo ng daliri, yari na
orthosis-tip-cast-name = cast ng dulo ng daliri
orthosis-tip-cast-short = Cast ng dulo ng daliri
orthosis-finger-gutter-middle-joint-name = splint ng gitnang kasukasuan ng daliri
orthosis-finger-gutter-middle-joint-short = Gitnang kasukasuan
orthosis-finger-gutter-long-name = splint ng buong daliri
orthosis-finger-gutter-long-short = Buong daliri
orthosis-ring-stops-bending-back-name = singsing na splint, pangontra sa baluktot paatras
orthosis-ring-stops-bending-back-short = Singsing, hindi paatras
orthosis-ring-keeps-straight-name = singsing na splint na nagpapanatiling tuwid sa daliri
orthosis-ring-keeps-straight-short = Singsing, laging tuwid
orthosis-serial-finger-cast-name = cast na pantuwid ng daliri
orthosis-serial-finger-cast-short = Cast na pantuwid ng daliri
orthosis-spring-finger-extension-name = splint ng daliri na may spring
orthosis-spring-finger-extension-short = Spring ng daliri
orthosis-finger-wedge-stepped-name = splint ng daliri na may kalso
orthosis-finger-wedge-stepped-short = Kalso ng daliri
orthosis-finger-extension-block-name = splint ng daliri na may bubong
orthosis-finger-extension-block-short = Bubong ng daliri
orthosis-buddy-straps-name = buddy strap
orthosis-buddy-straps-short = Buddy strap
orthosis-knuckle-block-name = splint ng malaking buko ng isang daliri
orthosis-knuckle-block-short = Buko ng daliri
orthosis-trigger-ring-name = singsing na splint ng gitnang kasukasuan
orthosis-trigger-ring-short = Singsing, gitnang kasukasuan
orthosis-relative-extension-yoke-name = splint na may bara na nag-aangat ng isang daliri
orthosis-relative-extension-yoke-short = Bara, nakaangat ang daliri
orthosis-relative-flexion-yoke-name = splint na may bara na nagbababa ng isang daliri
orthosis-relative-flexion-yoke-short = Bara, nakababa ang daliri
orthosis-dorsal-block-long-name = mahabang splint sa likod ng kamay
orthosis-dorsal-block-long-short = Likod ng kamay, mahaba
orthosis-dorsal-block-short-name = maikling splint sa likod ng kamay
orthosis-dorsal-block-short-short = Likod ng kamay, maikli
orthosis-ulnar-gutter-name = mahabang splint ng palasingsingan at hinliliit
orthosis-ulnar-gutter-short = Palasingsingan, hinliliit, pulso
orthosis-knuckle-shell-ring-little-name = splint ng malaking buko ng palasingsingan at hinliliit
orthosis-knuckle-shell-ring-little-short = Buko: palasingsingan, hinliliit
orthosis-metacarpal-sleeve-name = manggas ng buto ng kamay
orthosis-metacarpal-sleeve-short = Manggas ng buto ng kamay
orthosis-phalanx-gutter-pair-name = splint ng magkatabing daliri
orthosis-phalanx-gutter-pair-short = Magkatabing daliri
orthosis-night-finger-extension-name = splint ng daliri para sa gabi
orthosis-night-finger-extension-short = Daliri, gabi
orthosis-drift-strap-name = splint na may malambot na strap para sa malalaking buko
orthosis-drift-strap-short = Malambot na strap, buko
orthosis-knuckle-extension-block-name = splint ng malalaking buko na may bara
orthosis-knuckle-extension-block-short = Bara ng buko

## Straps
## Each name is put into “Close the …” and “Undo the …”.

strap-finger-tape = strap na tape
strap-finger-base = strap sa puno ng daliri
strap-finger-past-middle-joint = strap na lampas lang sa gitnang kasukasuan
strap-finger-end = strap malapit sa dulo ng daliri
# Buddy straps hold a finger to its neighbour.
strap-finger-pair-base = strap sa puno ng dalawang daliri
strap-finger-pair-end = strap na lampas sa gitnang kasukasuan ng dalawang daliri
# In a shell that holds a finger and its neighbour.
strap-finger-pair = strap sa palibot ng dalawang daliri
# Across all four fingers, under a roof on the back of the hand.
strap-finger-row = strap na patawid sa mga daliri
strap-finger-loops = mga loop ng daliri

## Places to look at in the skin check

spot-finger-end-joint-back = likod ng kasukasuang pinakamalapit sa dulo ng daliri
spot-finger-nail-skin = balat sa palibot ng kuko
spot-finger-pad-sides = mga gilid ng umbok sa dulo ng daliri
spot-finger-sides = dalawang gilid ng daliri
spot-finger-sides-near-base = dalawang gilid ng daliri, malapit sa puno nito
spot-finger-middle-joint-back = likod ng gitnang kasukasuan
spot-finger-middle-joint-backs = likod ng mga gitnang kasukasuan
spot-ring-little-middle-joint-backs = likod ng mga gitnang kasukasuan
spot-finger-joint-creases = mga guhit ng daliri sa panig ng palad
spot-finger-web = balat kung saan nagdurugtong ang mga daliri at palad
spot-finger-between = balat sa pagitan ng mga daliri
spot-finger-under-ring = balat sa ilalim ng singsing
spot-finger-cast-edges = balat sa dalawang gilid ng cast
spot-finger-tip-cast-edges = balat sa dalawang gilid ng cast
spot-finger-base-front = daliri sa panig ng palad, malapit sa puno nito
spot-finger-first-bone-back = likod ng daliri, katabi ng malaking buko
spot-finger-knuckle-backs = likod ng malalaking buko
spot-ring-little-knuckle-backs = likod ng malalaking buko
spot-finger-hand-edge = gilid ng kamay sa panig ng hinliliit
spot-finger-wrist-back-edge = likod ng pulso, sa dulo ng splint
spot-finger-over-break = balat sa ibabaw ng baling buto
spot-finger-wound-line = sugat o peklat

## Fingertip splints
## The tip must not bend while it heals: it lies on the table from before the strap opens until it is closed again.

step-finger-tip-on-table = Ilapat ang daliri sa mesa, tuwid ang dulo.
step-finger-dry-on-table = Patuyuin ang daliri ng tuwalya. Panatilihing lapat ang dulo.
step-finger-slide-on-from-tip = Isuot ang splint mula sa dulo. Panatilihing tuwid ang daliri.
step-finger-lift-when-closed = Iangat lang ang daliri kapag sarado na ang splint.
step-finger-check-tip-straight = Tiyaking tuwid at matatag ang dulo sa loob ng splint.
step-finger-lay-out-towel = Maglatag ng tuwalya sa mesa bago magbukas ng kahit ano.
step-finger-slide-off-forwards = Ipadulas paalis ang splint nang diretso sa dulo. Huwag ninyong ikiling.
step-finger-tip-if-healing = Kung gumagaling pa ang dulo, panatilihin itong lapat sa mesa.
step-finger-look-on-table = Tingnan ang balat habang nananatili sa mesa ang daliri.

## Splints along a finger

step-finger-straight-on-table = Ipatong ang daliri sa mesa, tuwid hanggang sa kaya nito.
step-finger-push-to-base = Itulak ang splint hanggang umabot sa puno ng daliri.
step-finger-slide-on = Dahan-dahang isuot ang splint mula sa dulo.
step-finger-straps-off-joints = Tiyaking walang strap na nasa ibabaw ng kasukasuan.
step-finger-check-tip-bends = Tiyaking naibabaluktot ang dulo ng daliri.
step-finger-check-middle-joint-bends = Tiyaking naibabaluktot ang gitnang kasukasuan ng daliri.
step-finger-check-knuckle-bends = Tiyaking naibabaluktot ang malaking buko ng daliri.
step-finger-middle-if-healing = Kung gumagaling pa ang gitnang kasukasuan, panatilihin itong lapat sa mesa.
step-finger-straight-if-healing = Kung gumagaling pa ang daliri, panatilihin itong tuwid sa mesa.

## A roof that stops a finger from straightening

step-finger-bend-slightly = Ibaluktot nang kaunti ang gitnang kasukasuan ng daliri.
step-finger-roof-on-finger = Ilagay ang splint sa likod ng daliri.
step-finger-check-stops-short = Tiyaking pinipigilan ng bubong na tumuwid nang sobra ang daliri.
step-finger-bent-if-healing = Kung gumagaling pa ang gitnang kasukasuan, panatilihin itong medyo nakabaluktot.

## Springs and wedges
## The pull comes last when it goes on and first when it comes off.

step-finger-joint-at-spring = Itapat ang gitnang kasukasuan sa liko ng spring.
step-finger-spring-last = Hayaang dahan-dahang humila ang spring.
step-finger-hold-spring = Hawakan ang spring para hindi ito pumitik pabalik.
step-finger-wedge-back = Iurong ang kalso hanggang sa likuran.
step-finger-wedge-in = Ipasok ang kalso hanggang sa tandang inilagay ng klinika.
step-finger-check-mild-pull = Tiyaking banayad ang hila at hindi masakit.

## Rings

step-finger-check-ring = Tiyaking malinis, tuyo at hindi baluktot ang singsing.
step-finger-keep-straight = Panatilihing tuwid ang daliri.
step-finger-slide-ring-on = Isuot ang singsing mula sa dulo.
step-finger-ring-cross-front = Ipihit ang singsing hanggang nasa ilalim ng gitnang kasukasuan ang krus nito.
step-finger-ring-cross-back = Ipihit ang singsing hanggang nasa likod ng gitnang kasukasuan ang krus nito.
step-finger-ring-over-joint = Itulak ang singsing hanggang matakpan nito ang gitnang kasukasuan.
step-finger-check-full-bend = Tiyaking naibabaluktot nang buo ang daliri.
step-finger-check-not-back = Tiyaking hindi bumabaluktot paatras ang gitnang kasukasuan.
step-finger-check-middle-joint-straight = Tiyaking nananatiling tuwid ang gitnang kasukasuan.
step-finger-slide-ring-off = Ipadulas ang singsing paalis sa dulo.
step-finger-ring-stuck = Kung ayaw matanggal ang singsing, gumamit ng kaunting tubig na may sabon.

## Casts
## Only the clinic puts a cast on and takes it off.

step-finger-cast-by-clinic = Ang klinika lang ninyo ang dapat maglagay ng cast.
step-finger-cast-cover = Balutin ng plastik ang cast at isara nang mabuti bago maghugas ng kamay o maligo.
step-finger-cast-look-at-edges = Tingnan ang balat sa dalawang gilid ng cast.
step-finger-cast-off-by-clinic = Ang klinika lang ninyo ang dapat magtanggal ng cast.
step-finger-cast-no-cutting = Huwag ninyong gupitin o hilahin ang cast, o sundutin ang ilalim nito.
step-finger-cast-slips = Kung dumulas o masira ito, panatilihing tuwid ang daliri at tawagan kami.

## Buddy straps

step-finger-dry-between = Patuyuing mabuti ang balat, pati sa pagitan ng mga daliri.
step-finger-beside-neighbour = Itabi ang daliri sa katabing daliri na pinili ng klinika.
step-finger-check-both-bend = Tiyaking sabay na naibabaluktot ang dalawang daliri.
step-finger-look-between = Tingnan ang balat sa lahat ng panig, pati sa pagitan ng mga daliri.

## Knuckle splints for one finger

step-finger-push-into-ring = Itulak ang daliri papasok sa singsing.
step-finger-palm-piece-flat = Ilapat sa palad ang pampalad na bahagi.

## Bar splints
## One finger lies higher or lower than its neighbours. In the first kind wrist and fingers must not drop.

step-finger-towel-roll = Maglagay ng nirolyong tuwalya sa mesa.
step-finger-wrist-back-on-towel = Ipatong ang kamay sa tuwalya, nakabaluktot paatras ang pulso.
step-finger-fingers-straight = Panatilihing tuwid ang mga daliri.
step-finger-yoke-on-top = Ipatong ang ginagamot na daliri sa ibabaw ng bara.
step-finger-yoke-others-under = Ipasok ang mga katabing daliri sa ilalim ng bara.
step-finger-yoke-below = Ipasok ang ginagamot na daliri sa ilalim ng bara.
step-finger-yoke-others-over = Ipatong ang mga katabing daliri sa ibabaw ng bara.
step-finger-yoke-to-base = Itulak ang bara hanggang sa puno ng mga daliri.
step-finger-check-higher = Tiyaking mas mataas ang ginagamot na daliri kaysa mga katabi nito.
step-finger-check-lower = Tiyaking mas mababa ang ginagamot na daliri kaysa mga katabi nito.
step-finger-check-joints-beyond-bend = Tiyaking naibabaluktot ang mga gitnang kasukasuan at mga dulo.
step-finger-slide-off-fingers = Ipadulas ang splint paharap, paalis sa mga daliri.
step-finger-tendon-if-healing = Kung gumagaling pa ang litid, huwag ninyong hayaang lumaylay ang pulso o ang mga daliri.

## Splints on the back of the hand
## For sewn bending tendons: wrist and fingers stay bent, and nobody straightens them.

step-finger-only-when-allowed = Sundin lang ang mga hakbang na ito kung pinayagan kayo ng klinika.
step-finger-curl-over-towel = Ipatong ang kamay sa tuwalya, nakabaluktot papunta sa palad ang pulso at nakakurba ang mga daliri.
step-finger-roof-over-hand = Ibaba ang splint sa likod ng kamay.
step-finger-check-under-roof = Tiyaking nasa ilalim ng bubong ang bawat dulo ng daliri.
step-finger-stay-curled = Hayaang nakakurba ang mga daliri. Huwag ninyong ituwid.
step-finger-look-while-curled = Tingnan ang balat habang nakakurba ang mga daliri.

## Splints for broken bones

step-finger-pad-between = Ilagay ang malambot na piraso sa pagitan ng dalawang daliri.
step-finger-little-side-in = Ilapat sa splint ang panig ng hinliliit ng kamay.
step-finger-knuckles-in-bend = Tiyaking nasa liko ng splint ang malalaking buko.
step-finger-knuckles-bent-fingers-straight = Ibaluktot ang malalaking buko. Panatilihing tuwid ang mga daliri.
step-finger-check-not-crossed = Tiyaking walang daliring nakapatong sa katabi nito.
step-finger-knuckles-if-healing = Kung gumagaling pa ang buto, panatilihing nakabaluktot ang malalaking buko.
step-finger-sleeve-over-hand = Isuot ang manggas sa kamay hanggang sa masakit na buto.
step-finger-sleeve-behind-knuckles = Panatilihing hindi umaabot sa malalaking buko ang harap na gilid ng manggas. Sa panig ng pulso lang ito.
step-finger-slide-off-hand = Ipadulas ang splint paharap, paalis sa kamay.

## Night splints, finger loops, knuckle bars

step-finger-rest-easy = Ilapat ang daliri sa loob, tuwid lang hanggang sa kaya nang hindi pilit.
step-finger-check-no-pull = Tiyaking walang humihila sa balat.
step-finger-loops-on = Ipasok ang bawat daliri sa loop nito.
step-finger-easy-pull = Hilahin lang ang mga loop hanggang sa maginhawa.
step-finger-check-in-line = Tiyaking diretso ang turo ng mga daliri.
step-finger-bend-knuckles-little = Ibaluktot nang kaunti ang malalaking buko.
step-finger-under-bar = Ipasok ang palasingsingan at hinliliit sa ilalim ng bara.
step-finger-check-straighten = Tiyaking naitutuwid ang mga gitnang kasukasuan.

## Putting it on with one hand
## There is no other hand: table, towel, book, thigh and the thumb of the same hand do the work.

step-finger-against-book = Ilapag ang bukas na splint sa mesa, nakasandal sa mabigat na libro.
step-finger-slide-along-table = Ipadulas ang daliri nang lapat sa mesa papasok sa splint.
step-finger-slide-in-easy = Ipadulas ang daliri sa mesa papasok sa splint.
step-finger-push-under-roof = Ipasok sa ilalim ng bubong ng splint ang bawat daliring nasa splint.
step-finger-push-hand-in = Ipasok ang kamay sa manggas.
step-finger-own-thumb = Gamitin ang hinlalaki ng kamay ring ito sa mga strap.
step-finger-upright-in-towel = Idiin nang patayo ang splint sa nirolyong tuwalya.
step-finger-thumb-turns-ring = Gamitin ang hinlalaki ng kamay ring ito sa singsing.
step-finger-wrist-stays-back = Panatilihing nakabaluktot paatras ang pulso.
step-finger-straps-as-loops = Magsimula nang nakasara ang bawat strap bilang maluwag na loop.
step-finger-through-loops = Ipasok ang dalawang daliri sa mga loop.
step-finger-trap-strap-end = Ipitin ang dulo ng bawat strap sa ilalim ng hita at dahan-dahang hilahin.
step-finger-cast-cover-with-knees = Ipitin ang plastik sa pagitan ng mga tuhod at ipasok ang kamay.
step-finger-trained-helper = Ipagawa ito sa tumutulong na tinuruan ng klinika. Huwag kailanman gawin nang mag-isa.
