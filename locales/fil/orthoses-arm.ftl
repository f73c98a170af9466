### Splints of the thumb, the wrist and the arm, and of the whole hand: names, straps, places to check, and steps.
### What several splints share stands in orthoses.ftl. “Other hand” is the hand without the splint.

## Names of wrist splints
## The name stands inside sentences; the short form is a label in tables.

orthosis-wrist-neutral-name = tuwid na splint ng pulso
orthosis-wrist-neutral-short = Pulso, tuwid
orthosis-wrist-dorsal-shell-name = splint ng pulso sa likod ng kamay
orthosis-wrist-dorsal-shell-short = Pulso, likod ng kamay
orthosis-wrist-all-round-name = paikot na splint ng pulso
orthosis-wrist-all-round-short = Pulso, paikot
orthosis-wrist-soft-stay-name = malambot na splint ng pulso na may bara
orthosis-wrist-soft-stay-short = Malambot, pulso, may bara
orthosis-wrist-soft-wrap-name = malambot na balot ng pulso
orthosis-wrist-soft-wrap-short = Malambot, pulso

## Names of thumb splints

orthosis-forearm-thumb-spica-tip-name = mahabang splint ng hinlalaki na abot sa dulo
orthosis-forearm-thumb-spica-tip-short = Ibabang braso at buong hinlalaki
orthosis-thumb-knuckle-shell-name = splint ng buko ng hinlalaki
orthosis-thumb-knuckle-shell-short = Buko ng hinlalaki
orthosis-thumb-mcp-ring-name = singsing na splint ng hinlalaki
orthosis-thumb-mcp-ring-short = Singsing ng hinlalaki
orthosis-thumb-tip-cap-name = splint ng dulo ng hinlalaki
orthosis-thumb-tip-cap-short = Dulo ng hinlalaki
# It keeps the space between thumb and index finger open.
orthosis-thumb-web-spacer-name = splint ng puwang ng hinlalaki
orthosis-thumb-web-spacer-short = Puwang ng hinlalaki
# Its roof keeps the thumb from straightening too far.
orthosis-thumb-dorsal-block-name = pang-ingat na splint ng hinlalaki
orthosis-thumb-dorsal-block-short = Pang-ingat, hinlalaki
# It holds the thumb up, away from the palm.
orthosis-thumb-raised-long-name = splint ng nakaangat na hinlalaki
orthosis-thumb-raised-long-short = Nakaangat na hinlalaki

## Names of arm splints and bands

orthosis-long-arm-rotation-name = mahabang splint ng braso
orthosis-long-arm-rotation-short = Siko hanggang kamay
orthosis-elbow-night-shell-name = splint ng siko para sa gabi
orthosis-elbow-night-shell-short = Siko sa gabi
orthosis-counterforce-band-name = band ng ibabang braso
orthosis-counterforce-band-short = Band, ibabang braso
orthosis-distal-ulna-strap-name = matibay na band ng pulso
orthosis-distal-ulna-strap-short = Band ng pulso

## Names of splints for wrist and fingers

# Cords join wrist and fingers, so that each helps the other to move.
orthosis-tenodesis-assist-name = pantulong na splint ng pulso at mga daliri
orthosis-tenodesis-assist-short = Pantulong, pulso at daliri
# Elastic pulls lift the fingers at the big knuckles.
orthosis-dynamic-knuckle-extension-name = splint na nag-aangat ng mga daliri
orthosis-dynamic-knuckle-extension-short = Pang-angat ng daliri
orthosis-palm-shell-wrist-knuckles-name = splint ng pulso at malalaking buko
orthosis-palm-shell-wrist-knuckles-short = Pulso at malalaking buko
orthosis-resting-hand-name = splint na pampahinga ng kamay
orthosis-resting-hand-short = Pampahinga ng kamay
orthosis-intrinsic-plus-shell-name = splint ng kamay na nakabaluktot ang buko
orthosis-intrinsic-plus-shell-short = Kamay, baluktot ang buko
orthosis-palm-extension-pan-name = splint ng bukas na palad
orthosis-palm-extension-pan-short = Bukas na palad
orthosis-spread-hand-cushion-name = malambot na unan ng kamay
orthosis-spread-hand-cushion-short = Unan ng kamay

## Straps
## Each name is put into “Close the …” and “Undo the …”.

strap-near-elbow = strap malapit sa siko
strap-upper-arm = strap sa itaas na braso
strap-hand-back = strap sa likod ng kamay
strap-across-fingers = strap sa ibabaw ng mga daliri
strap-across-fingertips = strap malapit sa mga dulo ng daliri
# A band has one strap, which pulls it snug.
strap-band = strap ng band

## Places to look at in the skin check

spot-wrist-palm-side = pulso sa panig ng palad
spot-wrist-back = likod ng pulso
spot-forearm-thumb-side = ibabang braso sa panig ng hinlalaki, sa itaas lang ng pulso
spot-knuckle-backs = likod ng malalaking buko
spot-middle-joint-backs = likod ng mga gitnang kasukasuan ng mga daliri
spot-palm-below-knuckles = palad, sa ibaba lang ng mga daliri
spot-palm-middle = gitna ng palad
spot-splint-end-at-fingers = mga daliri, sa dulo ng splint
spot-between-fingers = balat sa pagitan ng mga daliri
spot-fingertips = mga dulo ng daliri
spot-hand-edge-little-finger = gilid ng kamay sa panig ng hinliliit
spot-loop-edges = balat sa ilalim ng mga loop ng daliri
spot-thumb-hole = balat sa palibot ng butas ng hinlalaki
spot-thumb-ball = makapal na bahagi ng palad sa ibaba ng hinlalaki
spot-thumb-pad = malambot na umbok sa dulo ng hinlalaki
spot-thumb-tip-joint-back = likod ng dulong kasukasuan ng hinlalaki
spot-thumbnail-edge = balat sa palibot ng kuko ng hinlalaki
spot-ring-crossing = balat kung saan nagkukrus ang singsing
spot-bar-end-in-palm = palad, sa dulo ng matigas na bara
spot-wrap-edge = balat sa mga gilid ng malambot na bahagi
spot-forearm-under-band = ibabang braso sa ilalim ng band
spot-band-pad = balat sa ilalim ng pad ng band
spot-elbow-point = tulis ng siko
spot-elbow-inner-groove = uka sa loobang gilid ng siko
spot-elbow-crease = tupi sa harap ng siko
spot-upper-arm-edge = itaas na braso, sa dulo ng splint

## Getting ready
## One action a step. The other hand does the work.

step-wash-other-hand = Hugasan ang kabilang kamay at patuyuing mabuti.
# For a splint that may only be changed by two people.
step-wait-for-helper = Huwag ninyong gawin ito nang mag-isa. Hintayin ang sinanay na tumutulong sa inyo.
step-ask-helper-if-possible = Magpatulong sa iba, kung puwede.
step-loop-straps-first = Ipasok ang bawat strap sa loop nito bago magsimula.
step-lay-open-on-table = Ilapag ang bukas na splint sa mesa.
step-hold-between-knees = Ipitin ang bukas na splint sa pagitan ng mga tuhod.
step-lay-opening-towards-you = Ilapag ang splint sa mesa, nakaharap sa inyo ang bukas nito.
step-palm-down-on-table = Ilapat ang palad sa mesa.
step-sit-at-table = Umupo sa tabi ng mesa.

## Wrist splints: putting them on and taking them off

step-lay-splint-on-back = Ilagay ang splint sa likod ng kamay at ibabang braso.
# With one hand: the splint lies on the table with its hollow side up.
step-lay-back-of-arm-in = Ilapat dito ang likod ng kamay at ibabang braso.
step-press-into-splint = Dahan-dahang idiin ang braso pababa sa splint.
step-pull-splint-open = Ibuka nang kaunti ang splint.
step-slip-wrist-in = Ipasok ang pulso mula sa gilid.
step-slip-wrist-out = Ilabas ang pulso. Huwag ninyong pilipitin.
# The bar is a flat stiff strip inside a soft splint.
step-bar-on-palm-side = Ipihit ang splint hanggang nakaharap sa palad ang bara nito.
step-slide-hand-in = Ipasok ang kamay sa splint.
step-thumb-through-hole = Ipasok ang hinlalaki sa butas nito.
step-slide-off-hand = Ipadulas paalis sa kamay ang splint. Huwag ninyong kaladkarin.
step-wrap-round-wrist = Ibalot sa pulso ang balot.
step-lay-wrist-on-wrap = Ipatong ang pulso sa gitna ng balot.
step-hold-wrap-on-table = Idiin ang kamay sa mesa para hindi gumalaw ang balot.
step-unwrap = Buksan ang balot. Huwag ninyong hilahin para matanggal.

## Thumb splints: putting them on and taking them off

step-push-on-with-table-edge = Dahan-dahang idiin ang splint sa gilid ng mesa hanggang lumapat.
step-keep-thumb-beside-index = Panatilihin ang hinlalaki sa tabi ng hintuturo.
step-slide-over-thumb = Isuot ang splint sa hinlalaki.
step-seat-at-thumb-knuckle = Idiin ang splint hanggang lumapat sa palibot ng buko ng hinlalaki.
step-check-thumb-tip-lies-in = Tiyaking nasa loob ng splint ang dulo ng hinlalaki.
step-bend-thumb-a-little = Ibaluktot nang kaunti ang hinlalaki.
step-slide-ring-on = Isuot ang singsing sa hinlalaki hanggang sa buko nito.
# The therapist puts a mark on the ring.
step-turn-ring-to-mark = Ipihit ang singsing hanggang nasa likod ng hinlalaki ang tanda nito.
step-check-thumb-stops = Ituwid ang hinlalaki. Dapat pigilan ng singsing ang pagbaluktot nito paatras.
step-slide-ring-off = Ipadulas paalis ang singsing. Makakatulong ang tubig na may sabon kung mahigpit.
step-rest-thumb-tip-flat = Ilapat sa mesa ang umbok sa dulo ng hinlalaki.
step-slide-on-from-tip = Isuot ang splint mula sa dulo. Panatilihing lapat ang dulo.
step-push-thumb-in-flat = Itulak ang hinlalaki papasok sa splint, nakalapat sa mesa.
step-check-thumb-tip-straight = Tiyaking tuwid ang dulo ng hinlalaki.
step-check-thumb-big-knuckle-bends = Tiyaking naibabaluktot ang malaking buko ng hinlalaki.
step-slide-off-tip-flat = Ipadulas paalis ang splint. Panatilihing lapat sa mesa ang dulo.
step-look-at-skin-tip-flat = Tingnan ang balat. Panatilihing lapat sa mesa ang dulo.
step-set-between-thumb-and-index = Ilagay ang splint sa pagitan ng hinlalaki at hintuturo.

## Splints that guard a mended thumb: the thumb never leaves its position

step-rest-hand-curled-on-towel = Ipatong ang kamay sa nirolyong tuwalya, nakabaluktot papunta sa palad ang pulso at nakakurba ang mga daliri.
step-keep-thumb-loosely-bent = Panatilihing maluwag na nakabaluktot ang hinlalaki sa buong oras.
# The roof is the part of the splint along the back of the thumb.
step-check-thumb-under-roof = Tiyaking nasa ilalim ng bubong ang buong hinlalaki.
step-rest-thumb-up-on-towel = Ipatong ang kamay sa tuwalya, nakataas ang hinlalaki.
step-keep-thumb-raised = Panatilihing nakataas ang hinlalaki sa buong oras.
step-lay-splint-along-thumb-side = Ilagay ang splint sa ibabang braso, sa panig ng hinlalaki.
step-check-thumb-straight-in-splint = Tiyaking tuwid sa splint ang buong hinlalaki.

## Arm splints and bands

step-turn-hand-as-splint = Ibaling ang kamay ayon sa hugis ng splint.
step-lay-whole-arm-in = Ilapat ang braso sa splint, nakabaluktot ang siko.
step-elbow-in-hollow = Ilagay ang tulis ng siko sa lubog nito.
step-keep-hand-turned = Panatilihin ang kamay sa parehong baling.
step-bend-elbow-as-splint = Ibaluktot ang siko gaya ng baluktot ng splint.
step-lay-splint-on-elbow-front = Ilagay ang splint sa harap ng siko.
step-check-elbow-point-free = Tiyaking walang dumidiin sa tulis ng siko.
step-slide-band-up = Isuot ang bukas na band pataas sa ibabang braso.
step-seat-band-below-elbow = Ilagay ang band sa pinakamakapal na bahagi ng ibabang braso, sa ibaba ng siko.
step-pad-on-sore-side = Ipihit ang pad sa masakit na panig ng braso.
step-check-no-tingling = Ikuyom ang kamao. Hindi dapat parang tinutusok-tusok ang kamay.
step-slide-band-over-hand = Isuot ang bukas na band sa kamay.
step-seat-band-at-wrist-bone = Ilagay ang band sa ibabaw ng bilog na buto ng pulso.
step-slide-band-off = Ipadulas paalis ang band. Huwag ninyong kaladkarin.

## Splints with loops for the fingers

step-fingers-through-loops = Ipasok ang bawat daliri sa loop nito.
step-loops-beside-knuckles = Itulak ang bawat loop malapit sa malaking buko.
step-fingers-out-of-loops = Ilabas ang bawat daliri sa loop nito.
step-check-fist-lifts-wrist = Ikuyom nang banayad ang kamao. Dapat umangat ang pulso.
# A pull is an elastic cord between a loop and the frame.
step-hook-on-pulls = Ikawit sa balangkas ang panghila ng bawat loop.
step-unhook-pulls = Alisin sa pagkakawit ang panghila ng bawat loop.
step-check-fingers-bend-against-pull = Tiyaking naibabaluktot ang mga daliri kahit may hila.

## Splints for the whole hand

step-keep-wrist-up-fingers-straight = Panatilihing nakaangat ang pulso at tuwid ang mga daliri.
step-hand-on-towel-fingers-straight = Ipatong ang kamay sa nirolyong tuwalya, tuwid ang mga daliri.
step-check-middle-joints-bend = Tiyaking naibabaluktot ang mga gitnang kasukasuan ng mga daliri.
step-lay-forearm-in = Ilapat ang ibabang braso sa splint.
step-thumb-on-its-rest = Ilagay ang hinlalaki sa sarili nitong puwesto.
step-fingers-on-rest = Ilapat ang mga daliri nang magkakatabi sa splint.
step-bend-big-knuckles = Ibaluktot ang malalaking buko. Hayaang tuwid ang mga daliri.
step-keep-big-knuckles-bent = Panatilihing nakabaluktot ang malalaking buko at tuwid ang mga daliri.
step-fingers-flat-on-splint = Ilapat ang bawat daliri sa splint.
step-check-middle-joints-straight = Tiyaking tuwid ang mga gitnang kasukasuan ng mga daliri.
step-spread-fingers-in-grooves = Ilagay nang tuwid ang bawat daliri sa sarili nitong uka.
step-let-hand-go-loose = Hayaang lumuwag ang kamay hangga't kaya.
step-open-hand-slowly = Dahan-dahang ibuka ang kamay. Huwag kailanman pilitin.
step-lay-hand-on-cushion = Ilapat ang palad at ibabang braso sa unan.
step-fingers-in-gaps = Ilagay ang bawat daliri sa sarili nitong puwang.
step-dry-palm-and-gaps = Patuyuin ang palad at ang balat sa pagitan ng mga daliri.
