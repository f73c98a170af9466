### More exercises: name, starting position and one action for each step.
### The name is a short order and stands as a heading. Steps are numbered by the program.
### $hold is a finished length of time, such as the words for five seconds.
### “Other hand” is the hand without the splint. “Treated finger” is the finger that the splint is for.
### The joints of a finger are the big knuckle, the middle joint and the tip.

## Arm and wrist

exercise-shoulder-reach-name = Iabot pataas ang braso
exercise-shoulder-reach-start = Umupo o tumayo, nasa tagiliran ang braso.
exercise-shoulder-reach-step-1 = Itaas ang braso sa harap, hanggang sa taas na kaya nang hindi pilit.
exercise-shoulder-reach-step-2 = Manatili nang { $hold }.
exercise-shoulder-reach-step-3 = Dahan-dahang ibaba ang braso.
exercise-shoulder-reach-step-4 = Sa susunod na ulit, itaas ito patagilid.

exercise-wrist-dart-name = Igalaw ang pulso na parang naghahagis ng dart
exercise-wrist-dart-start = Ipatong nang patagilid ang ibabang braso sa mesa, nasa ibaba ang panig ng hinliliit, lampas sa gilid ang kamay. Hayaang maluwag ang mga daliri at hinlalaki.
exercise-wrist-dart-step-1 = Ikiling ang kamay paatras at papunta sa hinlalaki.
exercise-wrist-dart-step-2 = Manatili nang { $hold }.
exercise-wrist-dart-step-3 = Ikiling ang kamay paharap at papunta sa hinliliit.
exercise-wrist-dart-step-4 = Manatili nang { $hold }.

# Ordered by the clinician only.
exercise-wrist-swing-with-fingers-name = Sabay na iugoy ang pulso at mga daliri
exercise-wrist-swing-with-fingers-start = Ipatong ang siko sa mesa. Gumalaw lang hanggang sa ipinakita ng therapist.
exercise-wrist-swing-with-fingers-step-1 = Hayaang lumaylay paharap ang pulso, para bumuka ang mga daliri.
exercise-wrist-swing-with-fingers-step-2 = Manatili nang { $hold }.
exercise-wrist-swing-with-fingers-step-3 = Iangat ang pulso, para kumurba ang mga daliri sa maluwag na kamao.
exercise-wrist-swing-with-fingers-step-4 = Manatili nang { $hold }.

exercise-forearm-front-stretch-name = Banatin ang ibabang braso, panig ng palad
exercise-forearm-front-stretch-start = Iunat ang braso sa harap, nakaharap pataas ang palad.
exercise-forearm-front-stretch-step-1 = Ituwid ang siko.
exercise-forearm-front-stretch-step-2 = Hawakan ng kabilang kamay ang palad at mga daliri.
exercise-forearm-front-stretch-step-3 = Banayad na hilahin ang kamay pababa hanggang may maramdamang hila.
exercise-forearm-front-stretch-step-4 = Manatili nang { $hold }.
exercise-forearm-front-stretch-step-5 = Dahan-dahang bitawan.

exercise-forearm-back-stretch-name = Banatin ang likod ng ibabang braso
exercise-forearm-back-stretch-start = Iunat ang braso sa harap, nakaharap pababa ang palad. Hayaang maluwag ang mga daliri.
exercise-forearm-back-stretch-step-1 = Ituwid ang siko.
exercise-forearm-back-stretch-step-2 = Ipatong ang kabilang kamay sa likod ng kamay na ito.
exercise-forearm-back-stretch-step-3 = Banayad na idiin ang kamay pababa hanggang may maramdamang hila.
exercise-forearm-back-stretch-step-4 = Manatili nang { $hold }.
exercise-forearm-back-stretch-step-5 = Dahan-dahang bitawan.

exercise-palms-together-stretch-name = Banatin ang mga pulso nang magkalapat ang palad
exercise-palms-together-stretch-start = Paglapatin ang mga palad sa harap ng dibdib, nakataas ang mga daliri.
exercise-palms-together-stretch-step-1 = Dahan-dahang ibaba ang mga kamay. Panatilihing magkalapat ang mga palad.
exercise-palms-together-stretch-step-2 = Tumigil kapag may banayad na hila.
exercise-palms-together-stretch-step-3 = Manatili nang { $hold }.
exercise-palms-together-stretch-step-4 = Itaas ulit ang mga kamay.

## Fingers

# A neighbour of the treated finger may be in the splint too.
exercise-free-finger-bend-name = Igalaw ang mga malayang daliri
exercise-free-finger-bend-start = Itaas ang kamay, nakaturo pataas ang mga daliri.
exercise-free-finger-bend-step-1 = Ibaluktot lang ang mga daliring puwedeng malayang igalaw.
exercise-free-finger-bend-step-2 = Manatili nang { $hold }.
exercise-free-finger-bend-step-3 = Dahan-dahang ituwid ang mga ito.

exercise-fingers-straight-name = Ituwid ang mga daliri
exercise-fingers-straight-start = Itaas ang kamay, nakaturo pataas ang mga daliri.
exercise-fingers-straight-step-1 = Ituwid ang lahat ng daliri hanggang sa kaya nang hindi pilit.
exercise-fingers-straight-step-2 = Manatili nang { $hold }.
exercise-fingers-straight-step-3 = Hayaang magrelaks ang mga ito.

exercise-tabletop-name = Ibaluktot lang ang malalaking buko
exercise-tabletop-start = Itaas ang kamay, nakaturo pataas ang mga daliri.
exercise-tabletop-step-1 = Ibaluktot ang malalaking buko. Panatilihing tuwid ang ibang bahagi ng mga daliri.
exercise-tabletop-step-2 = Manatili nang { $hold }.
exercise-tabletop-step-3 = Ituwid ang malalaking buko.

exercise-straight-fist-name = Gumawa ng lapat na kamao
exercise-straight-fist-start = Itaas ang kamay, nakaturo pataas ang mga daliri.
exercise-straight-fist-step-1 = Ibaluktot ang malalaking buko at mga gitnang kasukasuan. Panatilihing tuwid ang mga dulo.
exercise-straight-fist-step-2 = Ilapat sa palad ang mga dulo ng daliri.
exercise-straight-fist-step-3 = Manatili nang { $hold }.
exercise-straight-fist-step-4 = Ituwid ang mga daliri.

exercise-five-positions-name = Gawin ang mga hugis ng kamay
exercise-five-positions-start = Itaas ang kamay, nakaturo pataas ang mga daliri.
exercise-five-positions-step-1 = Ituwid ang lahat ng daliri.
exercise-five-positions-step-2 = Gumawa ng kawit. Panatilihing tuwid ang malalaking buko.
exercise-five-positions-step-3 = Gumawa ng buo at maluwag na kamao.
exercise-five-positions-step-4 = Ibaluktot lang ang malalaking buko. Panatilihing tuwid ang iba.
exercise-five-positions-step-5 = Ilapat sa palad ang mga dulo ng daliri. Panatilihing tuwid ang mga dulo.
exercise-five-positions-step-6 = Manatili sa bawat hugis nang { $hold } bago ang susunod.

exercise-block-tip-bend-name = Ibaluktot lang ang dulo ng daliri
exercise-block-tip-bend-start = Ipatong ang kamay sa mesa, nakaharap pataas ang palad. Gamit ang kabilang kamay, hawakan ang ginagamot na daliri sa pagitan ng gitnang kasukasuan at dulong kasukasuan.
exercise-block-tip-bend-step-1 = Ibaluktot lang ang dulo.
exercise-block-tip-bend-step-2 = Manatili nang { $hold }.
exercise-block-tip-bend-step-3 = Ituwid ang dulo.

exercise-block-middle-bend-name = Ibaluktot lang ang gitnang kasukasuan
exercise-block-middle-bend-start = Ipatong ang kamay sa mesa, nakaharap pataas ang palad. Gamit ang kabilang kamay, hawakan ang ginagamot na daliri sa pagitan ng malaking buko at gitnang kasukasuan.
exercise-block-middle-bend-step-1 = Ibaluktot lang ang gitnang kasukasuan.
exercise-block-middle-bend-step-2 = Manatili nang { $hold }.
exercise-block-middle-bend-step-3 = Ituwid ang gitnang kasukasuan.

exercise-knuckle-bent-straighten-name = Ituwid ang gitnang kasukasuan, nakabaluktot ang buko
exercise-knuckle-bent-straighten-start = Ibaluktot ang malaking buko ng ginagamot na daliri. Hawakan itong nakabaluktot gamit ang kabilang kamay.
exercise-knuckle-bent-straighten-step-1 = Ituwid ang gitnang kasukasuan hanggang sa kaya nang hindi pilit.
exercise-knuckle-bent-straighten-step-2 = Manatili nang { $hold }.
exercise-knuckle-bent-straighten-step-3 = Hayaang magrelaks ang gitnang kasukasuan.

exercise-finger-lift-name = Isa-isang iangat ang mga daliri
exercise-finger-lift-start = Ilapat ang palad sa mesa.
exercise-finger-lift-step-1 = Iangat ang isang daliri mula sa mesa. Panatilihing nakababa ang iba.
exercise-finger-lift-step-2 = Manatili nang { $hold }.
exercise-finger-lift-step-3 = Dahan-dahang ibaba.
exercise-finger-lift-step-4 = Gawin din ito sa bawat isa sa ibang daliri.

exercise-tip-bend-middle-straight-name = Ibaluktot ang dulo, tuwid ang gitnang kasukasuan
exercise-tip-bend-middle-straight-start = Ipatong ang kamay sa mesa. Panatilihing suot ang splint.
exercise-tip-bend-middle-straight-step-1 = Panatilihing tuwid ang gitnang kasukasuan ng ginagamot na daliri.
exercise-tip-bend-middle-straight-step-2 = Ibaluktot lang ang dulo.
exercise-tip-bend-middle-straight-step-3 = Manatili nang { $hold }.
exercise-tip-bend-middle-straight-step-4 = Ituwid ang dulo.

exercise-middle-bend-tip-held-name = Ibaluktot ang gitnang kasukasuan ng daliri
exercise-middle-bend-tip-held-start = Ipatong ang siko sa mesa, nakataas ang mga daliri. Panatilihing suot ang splint.
exercise-middle-bend-tip-held-step-1 = Ibaluktot ang gitnang kasukasuan ng ginagamot na daliri.
exercise-middle-bend-tip-held-step-2 = Manatili nang { $hold }.
exercise-middle-bend-tip-held-step-3 = Dahan-dahang ituwid.

## After a tendon repair
## Ordered by the clinician only.

exercise-short-arc-middle-bend-name = Ibaluktot nang kaunti ang gitnang kasukasuan
exercise-short-arc-middle-bend-start = Gamitin lang ang panukat na ginawa ng therapist. Panatilihing tuwid ang malaking buko.
exercise-short-arc-middle-bend-step-1 = Ilapat ang ginagamot na daliri sa panukat.
exercise-short-arc-middle-bend-step-2 = Ibaluktot ang gitnang kasukasuan hanggang dumampi lang ang daliri sa panukat.
exercise-short-arc-middle-bend-step-3 = Manatili nang { $hold }.
exercise-short-arc-middle-bend-step-4 = Ituwid nang buo ang gitnang kasukasuan.
exercise-short-arc-middle-bend-step-5 = Isuot ulit ang splint kapag natapos na ang lahat.

exercise-helped-curl-in-splint-name = Ikurba ang mga daliri gamit ang kabilang kamay
exercise-helped-curl-in-splint-start = Panatilihing suot ang splint. Buksan lang ang mga strap na ipinakita ng therapist. Hayaang maluwag ang mga daliri.
exercise-helped-curl-in-splint-step-1 = Gamit ang kabilang kamay, banayad na ikurba ang isang daliri papunta sa palad.
exercise-helped-curl-in-splint-step-2 = Manatili nang { $hold }.
exercise-helped-curl-in-splint-step-3 = Dahan-dahang bitawan ang daliri. Huwag ninyong hilahin patuwid.
exercise-helped-curl-in-splint-step-4 = Gawin din ito sa bawat daliri.
exercise-helped-curl-in-splint-step-5 = Isara ulit ang mga strap kapag natapos na ang lahat.

exercise-straighten-to-roof-name = Ituwid ang mga daliri hanggang sa splint
exercise-straighten-to-roof-start = Panatilihing suot ang splint. Buksan lang ang mga strap na ipinakita ng therapist. Panatilihing nakalapat sa splint ang malalaking buko.
exercise-straighten-to-roof-step-1 = Ituwid ang mga daliri hanggang dumampi sa splint.
exercise-straighten-to-roof-step-2 = Manatili nang { $hold }.
exercise-straighten-to-roof-step-3 = Hayaang magrelaks ang mga ito.
exercise-straighten-to-roof-step-4 = Isara ulit ang mga strap kapag natapos na ang lahat.

exercise-half-fist-in-splint-name = Gumawa ng maluwag na kalahating kamao
exercise-half-fist-in-splint-start = Panatilihing suot ang splint. Buksan lang ang mga strap na ipinakita ng therapist.
exercise-half-fist-in-splint-step-1 = Banayad na ibaluktot ang mga daliri, kalahati papunta sa palad.
exercise-half-fist-in-splint-step-2 = Manatili nang { $hold }. Huwag ninyong pisilin.
exercise-half-fist-in-splint-step-3 = Ituwid ang mga daliri hanggang dumampi sa splint.
exercise-half-fist-in-splint-step-4 = Isara ulit ang mga strap kapag natapos na ang lahat.

exercise-place-and-hold-name = Ilagay ang mga daliri at panatilihin
exercise-place-and-hold-start = Ipatong ang siko sa mesa. Gumalaw lang hanggang sa ipinakita ng therapist.
exercise-place-and-hold-step-1 = Gamit ang kabilang kamay, banayad na ikurba ang mga daliri.
exercise-place-and-hold-step-2 = Alisin ang kabilang kamay.
exercise-place-and-hold-step-3 = Banayad na panatilihin doon ang mga daliri nang { $hold }. Huwag ninyong pisilin.
exercise-place-and-hold-step-4 = Hayaang magrelaks ang mga daliri.

exercise-yoke-bend-name = Ibaluktot ang mga daliri sa splint
exercise-yoke-bend-start = Ipatong ang siko sa mesa, nakataas ang mga daliri. Panatilihing suot ang splint. Huwag ninyong hayaang lumaylay paharap ang pulso.
exercise-yoke-bend-step-1 = Ibaluktot ang lahat ng daliri hanggang sa pinapayagan ng splint.
exercise-yoke-bend-step-2 = Manatili nang { $hold }.
exercise-yoke-bend-step-3 = Ituwid ang lahat ng daliri.

## Stretches of a finger

exercise-helped-curl-stretch-name = Ikurba ang daliri nang may tulong
exercise-helped-curl-stretch-start = Ipatong ang kamay sa mesa, nakaharap pataas ang palad.
exercise-helped-curl-stretch-step-1 = Gamit ang kabilang kamay, dahan-dahang ikurba ang ginagamot na daliri.
exercise-helped-curl-stretch-step-2 = Tumigil kapag may banayad na hila.
exercise-helped-curl-stretch-step-3 = Manatili nang { $hold }.
exercise-helped-curl-stretch-step-4 = Dahan-dahang bitawan.

exercise-helped-straighten-stretch-name = Ituwid ang daliri nang may tulong
exercise-helped-straighten-stretch-start = Ilapat sa mesa ang likod ng kamay. Gamit ang kabilang kamay, hawakan ang ginagamot na daliri sa pagitan ng malaking buko at gitnang kasukasuan.
exercise-helped-straighten-stretch-step-1 = Banayad na idiin ang gitnang kasukasuan papuntang tuwid.
exercise-helped-straighten-stretch-step-2 = Tumigil kapag may banayad na hila.
exercise-helped-straighten-stretch-step-3 = Manatili nang { $hold }.
exercise-helped-straighten-stretch-step-4 = Dahan-dahang bitawan.

exercise-intrinsic-stretch-name = Ikurba ang daliri, tuwid ang malaking buko
exercise-intrinsic-stretch-start = Ipatong ang siko sa mesa, nakataas ang mga daliri.
exercise-intrinsic-stretch-step-1 = Panatilihing tuwid ang malaking buko ng ginagamot na daliri.
exercise-intrinsic-stretch-step-2 = Gamit ang kabilang kamay, ibaluktot ang gitnang kasukasuan at dulo nito.
exercise-intrinsic-stretch-step-3 = Tumigil kapag may banayad na hila.
exercise-intrinsic-stretch-step-4 = Manatili nang { $hold }.
exercise-intrinsic-stretch-step-5 = Dahan-dahang bitawan.

## Thumb

exercise-thumb-bend-across-name = Ibaluktot ang hinlalaki patawid sa palad
exercise-thumb-bend-across-start = Ipatong ang kamay sa mesa, nakaharap pataas ang palad.
exercise-thumb-bend-across-step-1 = Dahan-dahang ibaluktot ang hinlalaki patawid sa palad.
exercise-thumb-bend-across-step-2 = Manatili nang { $hold }.
exercise-thumb-bend-across-step-3 = Ituwid ang hinlalaki.

exercise-thumb-web-release-name = Palambutin ang balat sa pagitan ng hinlalaki at hintuturo
exercise-thumb-web-release-start = Ipatong nang patagilid ang kamay sa mesa, nasa ibaba ang panig ng hinliliit.
exercise-thumb-web-release-step-1 = Banayad na kuskusin ang balat sa pagitan ng hinlalaki at hintuturo.
exercise-thumb-web-release-step-2 = Gamit ang kabilang kamay, hawakan ang hinlalaki sa pagitan ng buko nito at ng pulso.
exercise-thumb-web-release-step-3 = Banayad na hilahin ang hinlalaki palayo sa palad.
exercise-thumb-web-release-step-4 = Manatili nang { $hold }.
exercise-thumb-web-release-step-5 = Dahan-dahang bitawan.

exercise-thumb-wrist-slow-lower-name = Dahan-dahang ibaba ang kamay, nakataas ang hinlalaki
exercise-thumb-wrist-slow-lower-start = Ipatong nang patagilid ang ibabang braso sa mesa, nasa ibaba ang panig ng hinliliit. Hawakan ang maliit na pabigat na pinili ng therapist. Gawin lang ito tuwing ikalawang araw, hindi araw-araw.
exercise-thumb-wrist-slow-lower-step-1 = Gamit ang kabilang kamay, iangat ang kamay papunta sa hinlalaki.
exercise-thumb-wrist-slow-lower-step-2 = Alisin ang kabilang kamay.
exercise-thumb-wrist-slow-lower-step-3 = Dahan-dahang hayaang bumaba ang kamay. Dapat itong tumagal nang { $hold }.

## Nerves

exercise-thumb-side-nerve-slide-name = Padulasin ang nerve sa panig ng hinlalaki
exercise-thumb-side-nerve-slide-start = Umupo nang nakabaluktot ang siko at tuwid ang pulso.
exercise-thumb-side-nerve-slide-step-1 = Gumawa ng maluwag na kamao.
exercise-thumb-side-nerve-slide-step-2 = Ituwid ang mga daliri. Panatilihin ang hinlalaki sa tabi nila.
exercise-thumb-side-nerve-slide-step-3 = Banayad na ibaluktot ang pulso paatras.
exercise-thumb-side-nerve-slide-step-4 = Igalaw ang hinlalaki palabas patagilid.
exercise-thumb-side-nerve-slide-step-5 = Ibaling ang palad pataas.
exercise-thumb-side-nerve-slide-step-6 = Manatili sa bawat posisyon nang { $hold } bago ang susunod.

exercise-little-finger-nerve-slide-name = Padulasin ang nerve ng hinliliit
exercise-little-finger-nerve-slide-start = Iunat ang braso patagilid, nakaharap pataas ang palad.
exercise-little-finger-nerve-slide-step-1 = Ibaluktot ang siko hanggang kalahati habang bumabaluktot ang pulso papunta sa palad.
exercise-little-finger-nerve-slide-step-2 = Manatili nang { $hold }.
exercise-little-finger-nerve-slide-step-3 = Ituwid ang siko habang banayad na bumabaluktot ang pulso papunta sa likod ng kamay.
exercise-little-finger-nerve-slide-step-4 = Manatili nang { $hold }.

## Strength

exercise-wrist-press-still-name = Dumiin nang hindi gumagalaw ang pulso
exercise-wrist-press-still-start = Ipatong ang ibabang braso sa mesa, nakaharap pababa ang palad, lampas sa gilid ang kamay.
exercise-wrist-press-still-step-1 = Ipatong ang kabilang kamay sa likod ng kamay na ito.
exercise-wrist-press-still-step-2 = Banayad na idiin pataas ang kamay laban dito. Huwag ninyong hayaang gumalaw ang pulso.
exercise-wrist-press-still-step-3 = Manatili nang { $hold }.
exercise-wrist-press-still-step-4 = Irelaks ang kamay.
exercise-wrist-press-still-step-5 = Sa susunod na ulit, ilagay ang kabilang kamay sa ilalim ng palad at dumiin dito pababa.

exercise-putty-grip-name = Pisilin ang malambot na putty
exercise-putty-grip-start = Ilagay ang isang bukol ng malambot na putty sa palad.
exercise-putty-grip-step-1 = Banayad itong pisilin gamit ang mga daliri at hinlalaki.
exercise-putty-grip-step-2 = Manatili nang { $hold }.
exercise-putty-grip-step-3 = Dahan-dahang bitawan.
exercise-putty-grip-step-4 = Bilugin ulit ang putty.

exercise-three-point-pinch-name = Ipitin ang malambot na putty, pabilog
exercise-three-point-pinch-start = Kumuha ng maliit na bukol ng malambot na putty.
exercise-three-point-pinch-step-1 = Hawakan ito sa pagitan ng hinlalaki, hintuturo at hinlalato.
exercise-three-point-pinch-step-2 = Panatilihing medyo nakabaluktot ang bawat kasukasuan.
exercise-three-point-pinch-step-3 = Banayad na ipitin ang putty.
exercise-three-point-pinch-step-4 = Manatili nang { $hold }.
exercise-three-point-pinch-step-5 = Dahan-dahang bitawan.

exercise-key-pinch-putty-name = Ipitin ang malambot na putty na parang susi
exercise-key-pinch-putty-start = Kumuha ng maliit na bukol ng malambot na putty.
exercise-key-pinch-putty-step-1 = Hawakan ito sa pagitan ng hinlalaki at gilid ng hintuturo.
exercise-key-pinch-putty-step-2 = Banayad na ipitin ang putty.
exercise-key-pinch-putty-step-3 = Manatili nang { $hold }.
exercise-key-pinch-putty-step-4 = Dahan-dahang bitawan.

exercise-wrist-slow-lower-name = Dahan-dahang ibaba ang kamay, pababa ang palad
exercise-wrist-slow-lower-start = Ipatong ang ibabang braso sa mesa, nakaharap pababa ang palad, lampas sa gilid ang kamay. Hawakan ang maliit na pabigat na pinili ng therapist.
exercise-wrist-slow-lower-step-1 = Iangat ang kamay sa tulong ng kabilang kamay.
exercise-wrist-slow-lower-step-2 = Alisin ang kabilang kamay.
exercise-wrist-slow-lower-step-3 = Dahan-dahang hayaang bumaba ang kamay. Dapat itong tumagal nang { $hold }.

exercise-hand-lean-name = Tumukod sa kamay
exercise-hand-lean-start = Tumayo sa harap ng dingding. Gamitin lang ang mesa o sahig kapag sinabi ng therapist.
exercise-hand-lean-step-1 = Ilapat ang dalawang palad sa dingding.
exercise-hand-lean-step-2 = Dahan-dahang sumandal paharap hanggang may maramdamang bigat sa mga kamay.
exercise-hand-lean-step-3 = Manatili nang { $hold }.
exercise-hand-lean-step-4 = Dahan-dahang itulak ang sarili pabalik.

## Skin, scar, feeling and tightness

exercise-stroke-towards-heart-name = Haplusin ang braso papunta sa puso
exercise-stroke-towards-heart-start = Ipatong ang braso sa mga unan, mas mataas ang kamay kaysa siko.
exercise-stroke-towards-heart-step-1 = Ipatong ang kabilang kamay sa mga dulo ng daliri.
exercise-stroke-towards-heart-step-2 = Banayad na haplusin mula sa mga dulo ng daliri hanggang sa siko.
exercise-stroke-towards-heart-step-3 = Laktawan ang splint, at ang balat na masakit o bukas.
exercise-stroke-towards-heart-step-4 = Ituloy nang { $hold }.

exercise-scar-massage-name = Igalaw ang peklat
exercise-scar-massage-start = Gawin lang ito kapag sarado at tuyo na ang peklat. Ipatong ang kamay sa mesa.
exercise-scar-massage-step-1 = Ilagay ang dulo ng isang daliri ng kabilang kamay sa peklat.
exercise-scar-massage-step-2 = Dumiin nang matatag, pero hindi hanggang sumakit.
exercise-scar-massage-step-3 = Igalaw ang balat nang paikot sa maliliit na bilog.
exercise-scar-massage-step-4 = Igalaw ang balat pataas at pababa, saka sa magkabilang panig.
exercise-scar-massage-step-5 = Ituloy sa kahabaan ng peklat nang { $hold }.

exercise-texture-rub-name = Sanayin ang balat sa haplos
exercise-texture-rub-start = Gawin lang ito sa saradong balat. Ipatong ang kamay sa mesa.
exercise-texture-rub-step-1 = Banayad na kuskusin ng malambot na tela ang sensitibong balat.
exercise-texture-rub-step-2 = Ituloy nang { $hold }.
exercise-texture-rub-step-3 = Gumamit ng mas magaspang na tela kapag hindi na kayo naaabala ng malambot.

exercise-touch-relearn-name = Matutong makaramdam ulit
exercise-touch-relearn-start = Ipatong ang kamay sa mesa. Huwag kayong gumamit ng mainit, malamig o matalas na bagay.
exercise-touch-relearn-step-1 = Idampi ang maliit na bagay sa dulo ng daliri habang tinitingnan.
exercise-touch-relearn-step-2 = Pumikit at idampi ito sa parehong lugar.
exercise-touch-relearn-step-3 = Pansinin kung saan ninyo ito nararamdaman at kung ano ang pakiramdam.
exercise-touch-relearn-step-4 = Dumilat at ihambing.
exercise-touch-relearn-step-5 = Ituloy sa ibang mga lugar nang { $hold }.

exercise-scar-hold-stretch-name = Panatilihing banat ang peklat
exercise-scar-hold-stretch-start = Gawin lang ito kapag sarado at tuyo na ang peklat.
exercise-scar-hold-stretch-step-1 = Dahan-dahang igalaw ang kamay hanggang maramdamang banat ang peklat.
exercise-scar-hold-stretch-step-2 = Manatili nang { $hold }.
exercise-scar-hold-stretch-step-3 = Dahan-dahang hayaang bumalik ang kamay.

exercise-tight-hand-slow-open-name = Dahan-dahang ibuka ang naninigas na kamay
exercise-tight-hand-slow-open-start = Ipatong ang ibabang braso sa unan. Hayaang bumaluktot paharap ang pulso. Huwag kailanman hilahin nang mabilis.
exercise-tight-hand-slow-open-step-1 = Hawakan ang hinlalaki sa puno nito at dahan-dahang hilahin palabas.
exercise-tight-hand-slow-open-step-2 = Dahan-dahang ituwid ang mga daliri gamit ang kabilang kamay.
exercise-tight-hand-slow-open-step-3 = Dahan-dahang ibalik paatras ang pulso. Panatilihing tuwid ang mga daliri.
exercise-tight-hand-slow-open-step-4 = Tumigil agad kapag nagsimulang humila ang kamay laban sa inyo.
exercise-tight-hand-slow-open-step-5 = Manatili nang { $hold }.
exercise-tight-hand-slow-open-step-6 = Dahan-dahang hayaang magsara ang kamay.
