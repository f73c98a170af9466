### More activities: what people do with their hands, and easier ways to do it.
### The name stands as a short order in a table, such as “Wash the dishes”.
### Every other message is one or two short sentences of advice beside that name.

## More ways for jobs named elsewhere
## “Wider open than a square corner”: more than a right angle, so that the elbow bends little.

activity-text-with-thumbs-open-elbow = Ipahinga ang braso. Panatilihing mas bukas ang siko kaysa kanto ng kahon.
activity-hold-tablet-open-elbow = Ilayo ito nang kaunti. Panatilihing mas bukas ang siko kaysa kanto ng kahon.
activity-drive-car-open-elbow = Iayos ang upuan para mas bukas ang siko kaysa kanto ng kahon.
activity-brush-teeth-lean-forward = Yumuko sa lababo. Ilapit ang ulo sa sipilyo.

## Shower and wash your hair

activity-wash-hair-shower-name = Maligo at maghugas ng buhok
activity-wash-hair-shower-arm-bag = Isuot ang plastik na hindi tinatagusan ng tubig sa kamay at splint. Isara nang mabuti sa itaas.
activity-wash-hair-shower-pump-bottle = Gumamit ng boteng may pump at esponghang may mahabang hawakan.
activity-wash-hair-shower-bend-head = Iyuko ang ulo. Panatilihing mas bukas ang siko kaysa kanto ng kahon.
activity-wash-hair-shower-other-hand = Maghugas gamit ang kabilang kamay, o ipahugas sa iba ang buhok.

## Pull up trousers or socks

activity-pull-up-clothes-name = Magsuot ng pantalon o medyas
activity-pull-up-clothes-loose-waist = Magsuot ng maluwag na damit na malambot ang baywang.
activity-pull-up-clothes-loops = Magtahi ng mga loop sa loob. Ipasok doon ang ibabang braso at hilahin.
activity-pull-up-clothes-flat-palms = Umupo. Itulak pataas ang tela gamit ang lapat na palad.
activity-pull-up-clothes-other-hand = Hilahin gamit ang kabilang kamay, o magpatulong.

## Fasten a strap behind your back

activity-fasten-back-strap-name = Magsara ng bra o strap sa likod
activity-fasten-back-strap-pull-over = Magsuot ng malambot na isinusuot mula sa ulo.
activity-fasten-back-strap-turn-round = Isara ito sa harap. Saka ipihit papunta sa likod.
activity-fasten-back-strap-front-closing = Pumili ng sa harap ang sara na may malapad na kawit.
activity-fasten-back-strap-helper = Ipasara ito sa iba.

## Wipe after the toilet

activity-toilet-wipe-name = Magpunas pagkatapos gumamit ng inodoro
activity-toilet-wipe-cover-splint = Balutin ng manipis na plastik ang splint. Itapon ito pagkatapos.
activity-toilet-wipe-long-wiper = Gumamit ng pamunas na may mahabang hawakan, o inodorong may panghugas.
activity-toilet-wipe-other-hand = Magpunas gamit ang kabilang kamay.
activity-toilet-wipe-helper = Magpatulong sa taong pinagkakatiwalaan ninyo.

## Cut your nails

activity-cut-nails-name = Maggupit ng kuko
activity-cut-nails-fixed-clipper = Gumamit ng panggupit na nakakabit sa tabla. Idiin ito ng palad.
activity-cut-nails-file = Kikilin ang kuko gamit ang malapad na pangkikil. Hawakan nang maluwag.
activity-cut-nails-few-at-once = Maggupit ng ilang kuko bawat araw.
activity-cut-nails-helper = Ipagupit ang mga ito sa iba.

## Tie shoe laces

activity-tie-laces-name = Magtali ng sapatos
activity-tie-laces-slip-on = Magsuot ng sapatos na walang sintas. Gumamit ng mahabang pangsuot ng sapatos.
activity-tie-laces-stretch-laces = Gumamit ng nababanat na sintas na laging nakatali.
activity-tie-laces-helper = Ipatali ang mga ito sa iba.

## Open a ring-pull can or a bottle cap

activity-ring-pull-cap-name = Magbukas ng lata o takip ng bote
activity-ring-pull-cap-lever-opener = Gumamit ng pambukas na mag-aangat ng singsing para sa inyo.
activity-ring-pull-cap-cap-grip = Patungan ng banig na goma ang takip. Ipihit ito gamit ang lapat na palad.
activity-ring-pull-cap-easy-packs = Bumili ng paketeng nabubuksan nang walang puwersa.
activity-ring-pull-cap-helper = Ipabukas ito sa iba.

## Chop vegetables

activity-chop-vegetables-name = Maghiwa ng gulay
activity-chop-vegetables-upright-knife = Gumamit ng kutsilyong umuugoy o may patayong hawakan.
activity-chop-vegetables-cook-first = Lutuin muna. Mas madaling hiwain ang malambot na pagkain.
activity-chop-vegetables-ready-cut = Bumili ng gulay na hiwa na.
activity-chop-vegetables-helper = Ipahiwa sa iba.

## Wash the dishes

activity-wash-dishes-name = Maghugas ng pinggan
activity-wash-dishes-long-brush = Gumamit ng malamig na tubig at brush na may mahabang hawakan.
activity-wash-dishes-soak-first = Ibabad muna ang mga pinggan. Saka punasan nang magaan.
activity-wash-dishes-dishwasher = Gumamit ng dishwasher. Isa-isang ilagay ang magagaan.
activity-wash-dishes-helper = Ipahugas ang mga ito sa iba.

## Knead dough or stir a thick mix

activity-knead-dough-name = Magmasa o maghalo ng malapot
activity-knead-dough-upright-spoon = Ipatong ang mangkok sa basang tela. Maghalo gamit ang patayong kutsara, mula sa balikat.
activity-knead-dough-thin-mix = Gawing mas malabnaw ang halo, at kaunti lang ang gawin.
activity-knead-dough-mixer = Makina ang paghaluin.
activity-knead-dough-helper = Ipamasa sa iba.

## Carry plates or a tray

activity-carry-plates-name = Magdala ng plato o tray
activity-carry-plates-flat-palms = Ipasok sa ilalim ang dalawang lapat na palad. Ilapit sa katawan.
activity-carry-plates-trolley = Itulak ang mga ito sa trolley.
activity-carry-plates-one-by-one = Isang plato lang sa bawat dala. Palamigin muna ang maiinit.
activity-carry-plates-helper = Ipadala ang mga ito sa iba.

## Eat with knife and fork

activity-eat-with-cutlery-name = Kumain gamit ang kubyertos
activity-eat-with-cutlery-fat-handles = Gumamit ng kubyertos na may mahaba at matabang hawakan.
activity-eat-with-cutlery-rocking-knife = Humiwa gamit ang kutsilyong umuugoy.
activity-eat-with-cutlery-soft-food = Piliin ang malambot na pagkaing hindi kailangan ng kutsilyo.
activity-eat-with-cutlery-other-hand = Kumain gamit ang kabilang kamay. Ipahiwa sa iba ang pagkain.

## Turn a door knob or a tap

activity-turn-door-knob-name = Magpihit ng doorknob o gripo
activity-turn-door-knob-lever-handle = Kabitan ito ng mahabang hawakan. Idiin ito gamit ang ibabang braso.
activity-turn-door-knob-leave-open = Iwang medyo bukas ang mga pinto sa loob. Itulak gamit ang balakang.
activity-turn-door-knob-other-hand = Ipihit ito gamit ang kabilang kamay.
activity-turn-door-knob-helper = Ipapihit ito sa iba.

## Vacuum the floor

activity-vacuum-name = Mag-vacuum ng sahig
activity-vacuum-walk-along = Panatilihin ang siko sa tagiliran. Lumakad kasabay nito.
activity-vacuum-light-cleaner = Gumamit ng magaan na vacuum, o ng kusang umaandar.
activity-vacuum-one-room = Isang kuwarto lang. Saka ipahinga ang kamay.
activity-vacuum-helper = Ipagawa ito sa iba.

## Hang up the washing

activity-hang-washing-name = Magsampay ng labada
activity-hang-washing-hangers = I-hanger ang mga damit o ipatong sa sampayan.
activity-hang-washing-soft-pegs = Gumamit ng sipit na madaling buksan.
activity-hang-washing-small-loads = Maglaba nang kaunti lang. Pigaing mabuti sa spin dryer.
activity-hang-washing-helper = Ipasampay ito sa iba.

## Scrub the bath

activity-scrub-bath-name = Magkuskos ng banyo
activity-scrub-bath-long-handle = Gumamit ng esponghang may mahaba at matabang hawakan.
activity-scrub-bath-let-soak = Mag-spray, maghintay, at magbanlaw. Huwag ninyong kuskusin.
activity-scrub-bath-short-bouts = Maglinis ng maliit na bahagi bawat araw.
activity-scrub-bath-helper = Ipalinis ito sa iba.

## Push up from a chair

activity-rise-from-chair-name = Tumayo mula sa upuan
activity-rise-from-chair-high-seat = Umupo sa mas mataas at matigas na upuan. Mas madali kayong maitatayo ng mga binti.
activity-rise-from-chair-legs-first = Umusog paharap at yumuko paharap. Tumayo gamit ang mga binti.
activity-rise-from-chair-forearm-rest = Idiin ang ibabang braso sa patungan ng upuan, hindi ang kamay.
activity-rise-from-chair-other-hand = Tumukod gamit ang kabilang kamay, o magpatulong sa pagtayo.

## Iron clothes

activity-iron-clothes-name = Magplantsa
activity-iron-clothes-light-iron = Gumamit ng maliit at magaan na plantsa.
activity-iron-clothes-hang-smooth = Isampay ang damit nang basa-basa at banat. Marami ang hindi na kailangang plantsahin.
activity-iron-clothes-few-pieces = Magplantsa ng ilang piraso. Saka ipahinga ang kamay.
activity-iron-clothes-other-hand = Magplantsa gamit ang kabilang kamay, o ipaplantsa sa iba.

## Make the bed

activity-make-bed-name = Mag-ayos ng kama
activity-make-bed-light-covers = Gumamit ng isang magaan na kumot at maluwag na sapin.
activity-make-bed-flat-hands = Itulak sa ayos ang sapin gamit ang lapat na kamay at ibabang braso.
activity-make-bed-few-corners = Huwag ninyong buhatin ang kutson. Hayaang maluwag ang mga kanto.
activity-make-bed-helper = Ipaayos ito sa iba.

## Lean on a walking stick or frame

activity-lean-on-stick-name = Tumukod sa baston o walker
activity-lean-on-stick-wide-grip = Ipasuri sa amin ang taas. Makakatulong ang malapad at malambot na hawakan.
activity-lean-on-stick-forearm-rest = Humingi sa amin ng napapatungan ng ibabang braso. Huwag kayong lumakad nang walang suporta.
activity-lean-on-stick-other-hand = Itanong sa amin kung puwedeng kabilang kamay ang humawak. Huwag kayong lumakad nang walang suporta.

## Hold a dog lead

activity-hold-dog-lead-name = Humawak ng tali ng aso
activity-hold-dog-lead-waist-lead = Gumamit ng taling ikinakabit sa baywang.
activity-hold-dog-lead-calm-walks = Maikli at kalmadong lakad lang, gamit ang harness na pumipigil sa paghila.
activity-hold-dog-lead-helper = Ipahawak sa iba ang tali. Huwag kailanman ipulupot sa mga daliri.

## Use a screwdriver

activity-use-screwdriver-name = Gumamit ng screwdriver
activity-use-screwdriver-powered-driver = Gumamit ng magaan na de-motor na screwdriver.
activity-use-screwdriver-fat-handle = Gumamit ng matabang hawakan na paunti-unti ang pihit.
activity-use-screwdriver-elbow-in = Panatilihin ang siko sa tagiliran. Isandig dito ang bigat ng katawan.
activity-use-screwdriver-helper = Ipaikot sa iba ang mga turnilyo.

## Use a hammer

activity-hammer-name = Gumamit ng martilyo
activity-hammer-light-hammer = Gumamit ng magaan na martilyo na may malambot at matabang hawakan.
activity-hammer-few-nails = Magpako ng ilan. Saka ipahinga ang kamay.
activity-hammer-helper = Ipamartilyo sa iba.

## Use a power drill

activity-power-drill-name = Gumamit ng drill na de-kuryente
activity-power-drill-light-drill = Gumamit ng magaan na drill na may hawakan sa gilid.
activity-power-drill-two-hands = Hawakan ng dalawang kamay, nasa tagiliran ang mga siko.
activity-power-drill-short-bouts = Magbutas ng isa. Saka ipahinga ang kamay.
activity-power-drill-helper = Ipa-drill sa iba.

## Lift boxes

activity-lift-boxes-name = Bumuhat ng kahon
activity-lift-boxes-palms-under = Iharap pataas ang mga palad. Ipasok ang mga ibabang braso sa ilalim at lumapit.
activity-lift-boxes-half-load = Punuin lang ang mga kahon hanggang kalahati.
activity-lift-boxes-trolley = Itulak ang mga ito sa trolley. Huwag kayong magbuhat mula sa sahig.
activity-lift-boxes-helper = Ipabuhat ang mga ito sa iba.

## Pick up small parts or coins

activity-handle-small-parts-name = Dumampot ng barya o maliliit na piyesa
activity-handle-small-parts-soft-tray = Ilagay sa malambot na sapin. Itulak palabas sa gilid.
activity-handle-small-parts-wide-tweezers = Gumamit ng tiyaning may malapad at malambot na hawakan, o magnet.
activity-handle-small-parts-pauses = Gumawa ng ilan. Saka ipahinga ang kamay.
activity-handle-small-parts-other-hand = Damputin gamit ang kabilang kamay.

## Hold a baby to feed

activity-feed-baby-name = Humawak ng sanggol habang pinapakain
activity-feed-baby-firm-pillow = Ihiga ang sanggol sa matigas na unan. Hayaang unan ang magdala ng bigat.
activity-feed-baby-straight-wrist = Ipatong ang ulo sa loob ng siko. Panatilihing tuwid ang pulso.
activity-feed-baby-change-sides = Magpalit ng panig nang madalas. Ituwid ang braso sa pagitan.
activity-feed-baby-helper = Ipahiga sa iba ang sanggol sa puwesto at pakiusapang manatili sa malapit.

## Change a nappy

activity-change-nappy-name = Magpalit ng lampin o diaper
activity-change-nappy-easy-tabs = Pumili ng diaper na may malapad na tab na madaling buksan.
activity-change-nappy-roll-baby = Pagulungin ang sanggol patagilid. Huwag ninyong itaas ang dalawang paa.
activity-change-nappy-wipes-ready = Ilabas at buksan ang lahat ng kailangan bago magsimula.
activity-change-nappy-other-hand = Kabilang kamay ang gamitin sa mga tab, o ipapalit sa iba.

## Buckle a child seat

activity-buckle-child-seat-name = Magkabit ng buckle ng upuang pambata
activity-buckle-child-seat-buckle-key = Gumamit ng pandiin na gawa para sa mga buckle.
activity-buckle-child-seat-knuckle = Idiin ang pindutan gamit ang nakabaluktot na buko ng daliri.
activity-buckle-child-seat-helper = Gamitin ang kabilang kamay, o magpatulong. Tiyaking sarado ito.

## Push a pram

activity-push-pram-name = Magtulak ng stroller
activity-push-pram-open-palms = Itulak gamit ang bukas na mga palad.
activity-push-pram-high-bar = Itaas ang hawakan at balutin ng malambot. Ipatong dito ang mga ibabang braso.
activity-push-pram-helper = Itulak gamit ang kabilang kamay, o ipatulak sa iba.

## Dig

activity-dig-name = Maghukay
activity-dig-small-spade = Gumamit ng maliit at magaan na pala na may mahabang hawakan.
activity-dig-foot-pushes = Paa ang gamiting pantulak ng pala.
activity-dig-short-bouts = Kalahating pala lang sa bawat hukay. Tumigil pagkatapos ng ilan.
activity-dig-helper = Ipahukay sa iba. Kayo ang magturo kung saan.

## Pull weeds

activity-pull-weeds-name = Magbunot ng damo
activity-pull-weeds-long-weeder = Gumamit ng asarol o pambunot na may mahaba at matabang hawakan.
activity-pull-weeds-after-rain = Magbunot pagkatapos ng ulan, kapag madaling mabunot ang ugat.
activity-pull-weeds-short-bouts = Isang maliit na bahagi lang. Saka ipahinga ang kamay.
activity-pull-weeds-helper = Ipabunot sa iba. Kayo ang magturo kung saan.

## Water plants

activity-water-plants-name = Magdilig ng halaman
activity-water-plants-two-hands = Hawakan ng dalawang kamay ang regadera, malapit sa katawan.
activity-water-plants-little-water = Lagyan lang ng kaunting tubig ang regadera.
activity-water-plants-hose = Gumamit ng hose na may gatilyong nananatiling bukas.
activity-water-plants-helper = Magdilig gamit ang kabilang kamay, o magpatulong.

## Fasten a seat belt

activity-fasten-seat-belt-name = Magkabit ng seat belt
activity-fasten-seat-belt-belt-handle = Lagyan ang belt ng hawakang madaling abutin.
activity-fasten-seat-belt-knuckle = Idiin ang pangkabit gamit ang nakabaluktot na buko ng daliri.
activity-fasten-seat-belt-other-hand = Hilahin ang belt patawid gamit ang kabilang kamay. Ipasara ito sa iba.

## Ride a bicycle

activity-cycle-name = Magbisikleta
activity-cycle-high-bar = Itaas ang manibela. Gumamit ng malambot at matabang hawakan.
activity-cycle-short-rides = Maikling sakay lang sa patag na daan.
activity-cycle-indoor-bike = Gumamit ng bisikletang pang-ehersisyo. Umupo nang tuwid at ipahinga ang mga kamay.

## Lift weights

activity-lift-weights-name = Magbuhat ng weights
activity-lift-weights-half-weight = Kalahati lang ng bigat. Bawasan ang bilang.
activity-lift-weights-forearm-cuff = Humila gamit ang cuff sa ibabang braso. Huwag kayong kumapit sa bar.
activity-lift-weights-legs-only = Sanayin ang mga binti at baywang. Huwag kayong humawak ng kahit ano.

## Do press-ups or yoga

activity-press-ups-yoga-name = Mag-push-up o mag-yoga
activity-press-ups-yoga-legs-only = Pumili ng mga posisyon sa binti, likod o tagiliran.
activity-press-ups-yoga-straight-wrist = Humawak sa nakapirming hawakan para manatiling tuwid ang pulso.
activity-press-ups-yoga-fewer = Tumukod sa dingding, hindi sa sahig.

## Swim

activity-swim-name = Lumangoy
activity-swim-float = Ipatong ang mga ibabang braso sa salbabida. Lumangoy gamit ang mga binti.
activity-swim-dry-at-once = Patuyuin ang balat at ang splint pagkaahon.
activity-swim-short-swim = Sandali lang lumangoy.

## Play the guitar

activity-play-guitar-name = Maggitara
activity-play-guitar-light-strings = Gumamit ng manipis na kuwerdas na kaunting diin lang ang kailangan.
activity-play-guitar-neck-higher = Itaas ang leeg ng gitara gamit ang strap nito. Panatilihing tuwid ang pulso.
activity-play-guitar-short-bouts = Tumugtog ng isang kanta. Saka ipahinga ang kamay.

## Sleep

activity-sleep-position-name = Matulog
activity-sleep-position-splint-on = Isuot ang splint sa gabi kapag sinabi ng gabay na ito.
activity-sleep-position-arm-on-pillow = Ipatong ang braso sa unan sa tabi ninyo, tuwid hanggang sa kaya nang hindi pilit.
activity-sleep-position-soft-towel = Balutin nang maluwag ng malambot na tuwalya ang siko, para mas kaunti ang baluktot.

## Hold a phone to your ear

activity-hold-phone-to-ear-name = Itapat ang telepono sa tainga
activity-hold-phone-to-ear-loudspeaker = Gumamit ng loudspeaker o headset. Ilapag ang telepono.
activity-hold-phone-to-ear-short-calls = Ikliin ang mga tawag. Ituwid ang braso sa pagitan.
activity-hold-phone-to-ear-other-hand = Hawakan ang telepono gamit ang kabilang kamay.
