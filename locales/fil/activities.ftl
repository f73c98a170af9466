### Activities: what people do with their hands, and easier ways to do it.
### The name stands as a short order in a table, such as “Open a jar”.
### Every other message is one or two short sentences of advice beside that name.

## Open a jar

activity-open-jar-name = Magbukas ng garapon
activity-open-jar-jar-opener = Gumamit ng pambukas ng garapon na nakakabit sa dingding o mesa.
activity-open-jar-break-seal = Sungkitin muna ang selyo gamit ang hawakan ng kutsara. Mas madali nang iikot ang takip.
activity-open-jar-flat-palm = Itayo ang garapon sa drawer. Idiin ang lapat na palad sa takip at ipihit ang katawan.
activity-open-jar-helper = Ipabukas ito sa iba.

## Turn a key

activity-turn-key-name = Magpihit ng susi
activity-turn-key-key-turner = Lagyan ng malapad na hawakan ang susi. Hawakan ito ng buong kamay.
activity-turn-key-other-hand = Ipihit ang susi gamit ang kabilang kamay.
activity-turn-key-oil-lock = Langisan ang kandado para madaling umikot.

## Lift a baby

activity-lift-baby-name = Bumuhat ng sanggol
activity-lift-baby-scoop = Bumuhat na parang sumasalok, nakaharap pataas ang mga palad at nasa tabi ng mga daliri ang mga hinlalaki. Ipasok ang isang braso sa ilalim ng puwit, ang isa sa likod.
activity-lift-baby-chest-first = Ilapit ang sanggol sa dibdib bago tumayo.
activity-lift-baby-raise-changing-place = Itaas ang lugar na palitan ng lampin para mas maikli ang buhat.
activity-lift-baby-helper = Magpatulong sa iba na iabot sa inyo ang sanggol.

## Lift a full pan

activity-lift-pan-name = Bumuhat ng punong kaldero
activity-lift-pan-half-full = Punuin lang ang kaldero hanggang kalahati.
activity-lift-pan-slide = Itulak ang kaldero sa ibabaw ng mesa o kalan. Huwag ninyong buhatin.
activity-lift-pan-two-handles = Gumamit ng magaan na kaldero na may dalawang hawakan. Hayaang ang kabilang kamay ang magbuhat ng halos buong bigat.
activity-lift-pan-helper = Ipabuhat sa iba ang kaldero.

## Pour from a kettle

activity-pour-kettle-name = Magbuhos mula sa takure
activity-pour-kettle-one-cup = Magpakulo lang ng isang tasang tubig.
activity-pour-kettle-tipper = Gumamit ng patungang nagtatagilid ng takure para sa inyo.
activity-pour-kettle-other-hand = Magbuhos gamit ang kabilang kamay. Ilayo sa singaw ang kamay na may splint.

## Carry shopping

activity-carry-shopping-name = Magdala ng pinamili
activity-carry-shopping-backpack = Gumamit ng backpack o trolley.
activity-carry-shopping-split-load = Hatiin ang dala sa maliliit na supot. Bumalik nang dalawang beses.
activity-carry-shopping-over-forearm = Isabit ang magaan na supot sa ibabang braso, huwag kailanman sa mga daliri.
activity-carry-shopping-helper = Ipadala sa iba ang mga supot, o magpa-deliver.

## Text with your thumbs

activity-text-with-thumbs-name = Mag-text gamit ang mga hinlalaki
activity-text-with-thumbs-speak-text = Sabihin ang mensahe at hayaang isulat ng telepono.
activity-text-with-thumbs-phone-on-table = Ilapag ang telepono sa mesa. Pumindot gamit ang hintuturo.
activity-text-with-thumbs-short-texts = Ikliin ang mga mensahe. Ipahinga ang kamay sa pagitan.

## Hold a tablet or a book

activity-hold-tablet-name = Humawak ng tablet o libro
activity-hold-tablet-stand = Ilagay ito sa patungan.
activity-hold-tablet-on-lap = Ipatong ito sa unan sa kandungan.
activity-hold-tablet-swap-hands = Magpalit ng kamay nang madalas.

## Write by hand

activity-write-by-hand-name = Magsulat sa kamay
activity-write-by-hand-fat-pen = Gumamit ng mataba at malambot na bolpen na madulas kahit magaan ang diin.
activity-write-by-hand-dictate = Sabihin o i-type ang teksto.
activity-write-by-hand-pauses = Magsulat ng ilang linya. Saka ibaba ang bolpen at magpahinga.
activity-write-by-hand-helper = Magpasulat sa iba.

## Type on a keyboard

activity-type-on-keyboard-name = Mag-type sa keyboard
activity-type-on-keyboard-fingers-for-space = Pindutin ang space bar gamit ang daliri ng kabilang kamay.
activity-type-on-keyboard-low-keyboard = Gumamit ng manipis na keyboard. Ipahinga ang mga ibabang braso.
activity-type-on-keyboard-pauses = Tumigil nang madalas at ipahinga ang mga kamay.

## Use a computer mouse

activity-use-mouse-name = Gumamit ng mouse
activity-use-mouse-other-hand = Igalaw ang mouse gamit ang kabilang kamay.
activity-use-mouse-upright-mouse = Subukan ang mouse na hinahawakan nang patayo, parang nakikipagkamay.
activity-use-mouse-touch-pad = Gumamit ng touch pad gamit ang isang daliri.

## Do up buttons

activity-do-up-buttons-name = Magbutones
activity-do-up-buttons-button-hook = Gumamit ng pangkawit ng butones.
activity-do-up-buttons-pull-on-clothes = Magsuot ng damit na walang butones.
activity-do-up-buttons-other-hand = Kabilang kamay ang magbutones. Hawakan lang nang lapat ang tela.

## Peel vegetables

activity-peel-vegetables-name = Magbalat ng gulay
activity-peel-vegetables-fat-peeler = Gumamit ng pambalat na may matabang hawakan at malapad na talim.
activity-peel-vegetables-leave-skins = Huwag nang balatan, o bumili ng gulay na handa nang lutuin.
activity-peel-vegetables-short-bouts = Magbalat ng ilan. Saka ipahinga ang kamay.
activity-peel-vegetables-helper = Ipabalat sa iba.

## Wring out a cloth

activity-wring-cloth-name = Magpiga ng basahan
activity-wring-cloth-press-flat = Idiin nang lapat ang basahan sa gilid ng lababo.
activity-wring-cloth-sponge = Gumamit ng espongha. Pigain nang banayad.
activity-wring-cloth-other-hand = Ipulupot ang basahan sa gripo. Pilipitin gamit ang kabilang kamay.

## Prune plants

activity-prune-plants-name = Magputol ng sanga ng halaman
activity-prune-plants-ratchet = Gumamit ng gunting panghalaman na paunti-unti ang putol.
activity-prune-plants-thin-stems = Maninipis na tangkay lang ang putulin. Tumigil bago sumakit ang hinlalaki.
activity-prune-plants-helper = Ipaputol sa iba. Kayo ang pumili ng mga sanga.

## Cut with scissors

activity-use-scissors-name = Maggunting
activity-use-scissors-spring-scissors = Gumamit ng gunting na kusang bumubuka.
activity-use-scissors-roller-cutter = Gumamit ng gumugulong na pamutol sa tabla.
activity-use-scissors-short-bouts = Paunti-unti lang ang gupit.
activity-use-scissors-helper = Ipagupit ito sa iba.

## Wash your hands

activity-wash-hands-name = Maghugas ng kamay
activity-wash-hands-pump-soap = Gumamit ng sabon na may pump at gripong may mahabang hawakan.
activity-wash-hands-wipe-down = Hugasan ang mga daliring nakalabas. Punasan ang iba ng basa-basang tela.
activity-wash-hands-take-off = Tanggalin ang splint. Maghugas, patuyuing mabuti, saka isuot ulit.

## Drive a car

activity-drive-car-name = Magmaneho ng kotse
activity-drive-car-wheel-cover = Lagyan ng makapal at malambot na takip ang manibela.
activity-drive-car-short-trips = Maikling biyahe lang. Huminto at ipahinga ang kamay.
activity-drive-car-helper = Iba ang pagmanehuhin.

## Knit or crochet

activity-knit-name = Maggantsilyo o mag-knit
activity-knit-fat-needles = Gumamit ng magaan at matabang karayom at malambot na sinulid.
activity-knit-work-on-lap = Ipatong ang ginagawa sa kandungan. Maglagay ng unan sa ilalim ng mga siko.
activity-knit-short-bouts = Gumawa ng isang hilera. Saka ipahinga ang kamay.

## Play a racket sport

activity-racket-sport-name = Maglaro gamit ang raketa
activity-racket-sport-soft-strings = Gumamit ng mas makapal na hawakan at mas malambot na kuwerdas.
activity-racket-sport-two-hands = Pumalo gamit ang dalawang kamay.
activity-racket-sport-half-time = Maglaro sa kalahati lang ng oras.

## Brush your teeth

activity-brush-teeth-name = Magsipilyo
activity-brush-teeth-fat-handle = Gumamit ng sipilyong may matabang hawakan o de-motor.
activity-brush-teeth-other-hand = Magsipilyo gamit ang kabilang kamay.

## Pull up a zip

activity-fasten-zip-name = Magsara ng zipper
activity-fasten-zip-zip-ring = Lagyan ng singsing ang zipper. Hilahin gamit ang nakakawit na daliri.
activity-fasten-zip-other-hand = Hilahin ang zipper gamit ang kabilang kamay.
