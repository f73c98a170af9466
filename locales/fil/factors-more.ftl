### More advice for what is particular about one person.
### Each message is one or two short sentences that stand inside a section of the guide.
### $checks is a number of skin checks a day, $limit a finished length of time.

## Skin that feels little or nothing

factor-numb-skin-no-packs = Huwag ninyong lagyan ng hot pack o yelo ang manhid na balat.

## Rash from natural rubber

factor-latex-allergy-itch = Tawagan kami kung nangangati ang balat, kahit kaunti.
factor-latex-allergy-gloves = Huwag ninyong isuot ang gomang guwantes sa ibabaw ng splint. Gumamit ng ibang uri ng guwantes.
factor-latex-allergy-spare-parts = Huwag ninyong dagdagan ng goma o nababanat na strap. Humingi sa amin ng ligtas.

## Rash from metal

factor-nickel-allergy-itch = Tawagan kami kung nangangati ang balat, kahit kaunti.
factor-nickel-allergy-bare-metal = Huwag ninyong hayaang dumikit sa balat ang metal na walang takip. Sabihin sa amin kung napudpod ang takip.

## Rash from tape and glue

factor-adhesive-allergy-itch = Tawagan kami kung nangangati ang balat, kahit kaunti.
factor-adhesive-allergy-no-tape = Huwag ninyong lagyan ng tape o plaster ang balat. Humingi sa amin ng mga strap.
factor-adhesive-allergy-linings = Huwag kayong magdikit ng pad o sapin sa loob ng splint.

## Trouble remembering

factor-memory-difficulty-same-times = Gawin sa parehong mga oras araw-araw. Maglagay ng alarm para sa mga ito.
factor-memory-difficulty-tick = Isabit ang gabay na ito sa dingding. Lagyan ng tsek pagkatapos ng bawat tingin sa balat.
factor-memory-difficulty-in-sight = Ilagay ang splint sa iisang lugar na nakikita ninyo. Basahin ang mga hakbang sa bawat pagkakataon.
factor-memory-difficulty-after-meals = Isabay ang mga galaw sa mga bagay na lagi ninyong ginagawa, gaya ng pagkain.

## Somebody at home who helps

factor-helper-at-home-looks = Ipatingin din ang balat sa tumutulong sa inyo.
factor-helper-at-home-reads = Ipabasa nang malakas ang bawat hakbang sa tumutulong, at ipasara ang mga strap.
factor-helper-at-home-heavy-jobs = Ipagawa sa tumutulong ang sinasabi ng gabay na huwag munang gawin.

## A child

# The reader may be the child or a grown-up reading aloud.
factor-child-grown-up-looks = Ipatingin ang balat sa nakatatanda sa bawat pagkakataon. Sabihin agad kung may masakit.
factor-child-grown-up-helps = Dapat may kasamang nakatatanda tuwing isinusuot o tinatanggal ang splint.
factor-child-school = Magdala ng kopya ng gabay na ito sa paaralan.
factor-child-game = Gawing laro ang bawat galaw.
factor-child-small-parts = Ilayo ang mga nakakalas na strap at maliliit na piyesa sa mga sanggol at maliliit na bata.

## Pregnancy

factor-pregnancy-swelling = May mga araw na puwedeng mamaga ang kamay. Ipatong ito sa unan kapag nakaupo.
factor-pregnancy-strap-room = Tiyakin araw-araw na kasya ang dulo ng daliri sa ilalim ng bawat strap.
factor-pregnancy-grooves = Tingnan kung may malalalim na guhit mula sa mga strap. Sabihin sa amin kung hindi nawawala.

## Work in the heat

factor-heat-work-keep-away = Ilayo ang splint sa oven, kalan at makina. Magtanong sa amin bago magtrabaho sa init.
factor-heat-work-dry-skin = Punasan agad ang pawis. Tingnan kung may malambot at maputing balat.
factor-heat-work-fresh-sleeve = Magsuot ng bago at tuyong manggas sa bawat shift. Palitan agad kung basa-basa.

## Work with food

factor-food-work-ask = Itanong sa trabaho kung puwede ang splint malapit sa pagkain. Itanong kung paano ito tatakpan.
factor-food-work-damp = Nakukulong ang pamamasa kapag may guwantes sa ibabaw ng splint. Tingnan kung may malambot at maputing balat pagkatapos ng trabaho.
factor-food-work-clean = Linisin ang splint pagkatapos ng bawat shift. Itapon ang takip.

## Work in the wet

factor-wet-work-cover = Takpan ang splint, o ipagawa sa iba ang mga gawaing basa.
factor-wet-work-dry-breaks = Tumigil nang madalas para patuyuin ang balat. Tingnan kung may malambot at maputing balat.
factor-wet-work-spare-sleeves = Maghanda ng ekstrang manggas. Palitan agad kung basa-basa.

## Work with machines

factor-machinery-moving-parts = Huwag kayong magtrabaho sa gumagalaw na makina nang may splint. Puwede nitong mahagip ang strap at mahila papasok ang kamay.
factor-machinery-ask = Sundin din sa trabaho ang mga oras na ito. Magtanong sa amin at sa employer bago bumalik sa makina.

## Slow healing

factor-slow-healing-no-early-end = Kailangan ng kamay ang buong panahon. Huwag kayong tumigil nang maaga, kahit maayos na ang pakiramdam.
factor-slow-healing-any-break = Tawagan kami sa araw ding iyon kung may bukas na balat, kahit kaunti.
factor-slow-healing-smoke = Kung naninigarilyo kayo, magpatulong sa amin o sa doktor para tumigil. Pinababagal ng sigarilyo ang paggaling.

## An open wound, stitches or pins

factor-open-wound-look = Tingnan ang nakikitang bahagi ng sugat o ng mga pin. Tawagan kami ngayong araw kung may tumatagas, nangangamoy o gumagalaw.
factor-open-wound-dry = Panatilihing tuyo ang kamay hanggang sabihin naming sarado na ang balat.
factor-open-wound-no-rubbing = Huwag ninyong kuskusin o diinan ang sugat. Huwag ninyong hawakan ang mga tahi o pin.
factor-open-wound-dressing = Panatilihing malinis at tuyo ang benda. Itanong sa amin kung sino ang magpapalit nito.

## Poor blood flow

factor-poor-circulation-colour = Ihambing ang mga dulo ng daliri at hinlalaki sa kabilang kamay. Tawagan kami sa araw ding iyon kung may bukas na balat.
factor-poor-circulation-strap-room = Isuksok ang dulo ng daliri sa ilalim ng bawat strap. Dapat itong magkasya.
factor-poor-circulation-warm = Painitin ang kamay gamit ang damit. Huwag ninyong lagyan ng yelo o hot pack.

## Only one hand to use

factor-one-hand-only-table = Ipatong ang braso sa mesa. Gamitin ang gilid ng mesa o ang hita ninyo bilang tulong.
factor-one-hand-only-helper = Kung sinasabi ng gabay na kabilang kamay, puwede kayong magpatulong sa iba.
factor-one-hand-only-mirror = Gumamit ng salamin para makita ang kabilang panig ng kamay.

## Strong pain or worry

factor-high-pain-worry-small = Magsimula sa pinakamaliit na galaw sa listahang ito. Ayos lang ang kaunti pero madalas.
factor-high-pain-worry-rest = Magpahinga bago sumakit nang husto ang kamay. Saka magpatuloy.
factor-high-pain-worry-call = Tumawag agad sa amin kung may inaalala kayo. Walang tanong na masyadong maliit.
