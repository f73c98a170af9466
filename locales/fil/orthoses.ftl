### Splints: names, straps, places to check, and the steps of putting on and taking off.
### “Hand that wears the splint” and “other hand” are used; left and right are never typed.

## Names
## The name stands inside sentences; the short form is a label in tables.

orthosis-forearm-thumb-spica-name = mahabang splint ng hinlalaki
orthosis-forearm-thumb-spica-short = Ibabang braso at hinlalaki
orthosis-hand-thumb-spica-name = maikling splint ng hinlalaki
orthosis-hand-thumb-spica-short = Kamay at hinlalaki
orthosis-short-cmc-name = splint ng puno ng hinlalaki
orthosis-short-cmc-short = Puno ng hinlalaki
orthosis-short-cmc-mcp-block-name = splint ng puno ng hinlalaki na may harang sa buko
orthosis-short-cmc-mcp-block-short = Puno ng hinlalaki at buko
orthosis-soft-wrist-thumb-wrap-name = malambot na balot ng pulso at hinlalaki
orthosis-soft-wrist-thumb-wrap-short = Malambot, pulso at hinlalaki
orthosis-soft-thumb-wrap-name = malambot na balot ng hinlalaki
orthosis-soft-thumb-wrap-short = Malambot, hinlalaki
orthosis-wrist-only-name = splint ng pulso
orthosis-wrist-only-short = Pulso

## Straps
## Each name is put into “Close the …” and “Undo the …”.

strap-wrist = strap sa pulso
strap-forearm = strap sa ibabang braso
strap-palm = strap sa palad
strap-thumb = strap sa hinlalaki
# A short splint ends at the wrist; this strap runs along that end.
strap-wrist-edge = strap sa tabi ng pulso

## Places to look at in the skin check

spot-wrist-bone-thumb-side = buto ng pulso sa panig ng hinlalaki
spot-wrist-bone-little-finger-side = buto ng pulso sa panig ng hinliliit
spot-thumb-web = balat sa pagitan ng hinlalaki at hintuturo
spot-thumb-knuckle = likod at mga gilid ng buko ng hinlalaki
spot-thumb-base = buto sa puno ng hinlalaki
spot-palm-crease = palad, sa dulo ng splint
spot-forearm-edge = ibabang braso, sa dulo ng splint

## Putting it on
## One action a step. The other hand does the work.

step-wash-dry-hands = Maghugas ng mga kamay at patuyuing mabuti.
step-check-lining = Tiyaking malinis, tuyo at makinis ang loob ng splint.
step-open-straps = Buksan ang lahat ng strap.
step-rest-arm-on-table = Ipatong ang ibabang braso sa mesa.
step-slide-thumb-in = Dahan-dahang ipasok ang hinlalaki.
step-lay-hand-in = Ilapat ang palad sa splint, nasa labas ang hinlalaki.
step-seat-at-wrist = Idiin ang splint hanggang lumapat at nasa pulso ang liko nito.
step-seat-at-thumb-base = Idiin ang splint hanggang lumapat sa palibot ng puno ng hinlalaki.
step-smooth-the-wrap = Patagin ang balot hanggang walang tupi.
# $strap is a strap's name, such as “wrist strap”.
step-close-strap = Isara ang { $strap }.
step-check-strap-room = Tiyaking kasya ang dulo ng daliri ng kabilang kamay sa ilalim ng bawat strap.
step-check-wrist-bends = Tiyaking naibabaluktot ang pulso.
step-check-thumb-knuckle-bends = Tiyaking naibabaluktot ang buko at dulo ng hinlalaki.
step-check-thumb-tip-bends = Tiyaking naibabaluktot ang dulo ng hinlalaki.
step-check-fist = Tiyaking naikukuyom ang kamao at naigagalaw ang hinlalaki.
step-look-at-fingers = Tingnan ang mga daliri at hinlalaki. Dapat manatiling mainit-init ang mga ito at karaniwan ang kulay.

## Taking it off

# $strap is a strap's name, such as “wrist strap”.
step-undo-strap = Buksan ang { $strap }.
step-lift-off = Iangat paalis ang splint. Huwag ninyong kaladkarin.
step-lift-off-thumb-side = Iangat paalis ang splint sa panig ng hinlalaki. Huwag ninyong kaladkarin.
step-lift-off-elbow-front = Iangat paalis ang splint mula sa harap ng siko. Huwag ninyong kaladkarin.
step-lift-out-of-thumb-web = Iangat ang splint mula sa pagitan ng hinlalaki at hintuturo.
step-lift-off-little-side = Iangat paalis ang splint sa panig ng hinliliit. Huwag ninyong kaladkarin.
step-slide-off-thumb = Ipadulas paalis sa hinlalaki ang splint. Huwag ninyong pilipitin.
step-look-at-skin = Tingnan ang balat sa lahat ng panig.
