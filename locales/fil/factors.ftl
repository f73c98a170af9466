### Advice for what is particular about one person.
### Each message is one or two short sentences that stand inside a section of the guide.
### $checks is a number of skin checks a day, $limit a finished length of time.

## Skin that feels little or nothing

factor-numb-skin-look = Magtiwala sa mata, hindi sa pakiramdam. Tingnan ang lahat ng panig ng kamay. Makakatulong ang salamin.
factor-numb-skin-strap-room = Isuksok ang dulo ng daliri ng kabilang kamay sa ilalim ng bawat strap. Dapat itong magkasya.
factor-numb-skin-hot-and-sharp = Subukan ang maiinit na bagay gamit ang kabilang kamay. Ilayo ang matatalas na bagay sa manhid na balat.

## Thin or tender skin

factor-fragile-skin-no-tape = Huwag ninyong lagyan ng tape o malagkit na pad ang balat.
factor-fragile-skin-lift = Dahan-dahang tanggalin ang splint. Huwag ninyong hayaang kumiskis o kumaladkad ito sa balat.
factor-fragile-skin-sleeve = Magsuot ng makinis at tuyong manggas na cotton sa ilalim ng splint. Palitan ito araw-araw.

## Swelling

factor-swelling-raise = Ipatong ang kamay nang mas mataas sa puso kapag nakaupo.
factor-swelling-loosen = Kung sumikip ang strap, luwagan nang kaunti. Isara ulit gaya ng dati kapag humupa ang pamamaga.
factor-swelling-pump = Igalaw nang madalas ang mga malayang daliri. Nakakatulong ito para humupa ang pamamaga.

## Diabetes

factor-diabetes-any-break = Tawagan kami sa araw ding iyon kung may bukas na balat, kahit kaunti.

## Easy bleeding

# For people who take something against clotting. No medicine is named, and none is to be stopped.
factor-blood-thinners-bruise = Tawagan kami ngayong araw kung lumalaki ang pasa sa ilalim ng splint.
factor-blood-thinners-no-rubbing = Huwag ninyong kuskusin nang madiin ang kamay. Ingatan ito sa bangga.

## Low vision

factor-low-vision-check = Kapain ng kabilang kamay kung may mainit, matigas, basa o masakit na bahagi. Magpatingin din ng balat sa iba.
factor-low-vision-dots = Humingi sa amin ng mga nakaumbok na tuldok sa mga strap. Makikilala ninyo ang bawat strap dahil dito.

## Living alone

factor-lives-alone-table = Ipatong ang braso sa mesa. Hayaang hawakan ng mesa ang splint habang gumagawa ang kabilang kamay.
factor-lives-alone-ready = Maghanda ng maluluwag na damit at madaling kaining pagkain.
factor-lives-alone-phone = Ilagay ang numero ng telepono namin sa tabi ng kama.

## Night work

factor-night-work-main-sleep = Kapag sinabi ng gabay na ito na gabi o magdamag, ang pangunahing tulog ninyo ang ibig sabihin.
factor-night-work-after-sleep = Gawin ang unang ehersisyo pagkatapos ng pangunahing tulog.

## Rash from foam rubber

factor-neoprene-allergy-itch = Tawagan kami kung nangangati ang balat, kahit kaunti.
factor-neoprene-allergy-spare-parts = Huwag ninyong dagdagan ng pad, guwantes o balot na goma o foam.

## A new baby

factor-new-mother-flat-hands = Buhatin at pakainin ang sanggol nang lapat ang mga kamay. Panatilihin ang mga hinlalaki sa tabi ng mga daliri.
factor-new-mother-strap-room = Puwedeng mamaga ang kamay. Tiyakin araw-araw na kasya ang dulo ng daliri sa ilalim ng bawat strap.
factor-new-mother-edges = Takpan ng malinis na tela ang matitigas na gilid bago hawakan ang sanggol.
