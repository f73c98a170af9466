### Exercises: name, starting position and one action for each step.
### The name is a short order and stands as a heading. Steps are numbered by the program.
### $hold is a finished length of time, such as the words for five seconds.
### “Other hand” is the hand without the splint.

## Bend the tip of your thumb

exercise-thumb-tip-bend-name = Ibaluktot ang dulo ng hinlalaki
exercise-thumb-tip-bend-start = Umupo nang nakapatong ang ibabang braso sa mesa. Panatilihing suot ang splint.
exercise-thumb-tip-bend-step-1 = Ibaluktot lang ang dulo ng hinlalaki.
exercise-thumb-tip-bend-step-2 = Manatili nang { $hold }.
exercise-thumb-tip-bend-step-3 = Ituwid ang dulo.

## Make a fist and open it

exercise-finger-fist-open-name = Ikuyom ang kamao at ibuka
exercise-finger-fist-open-start = Itaas ang kamay, nakaturo pataas ang mga daliri. Huwag ninyong igalaw ang hinlalaki.
exercise-finger-fist-open-step-1 = Dahan-dahang ibaluktot ang lahat ng daliri sa maluwag na kamao.
exercise-finger-fist-open-step-2 = Manatili nang { $hold }.
exercise-finger-fist-open-step-3 = Ituwid ang lahat ng daliri.

## Make a hook with your fingers

exercise-finger-hook-name = Gawing kawit ang mga daliri
exercise-finger-hook-start = Itaas ang mga daliri, tuwid hanggang sa kaya nang hindi pilit. Huwag ninyong igalaw ang hinlalaki.
exercise-finger-hook-step-1 = Panatilihin ang malalaking buko sa kanilang ayos.
exercise-finger-hook-step-2 = Ibaluktot na parang kawit ang ibang kasukasuan ng mga daliri.
exercise-finger-hook-step-3 = Manatili nang { $hold }.
exercise-finger-hook-step-4 = Ituwid ang mga daliri.

## Spread your fingers

exercise-finger-spread-name = Paghiwalayin ang mga daliri
exercise-finger-spread-start = Ilapat ang palad sa mesa, magkakadikit ang mga daliri. Huwag ninyong igalaw ang hinlalaki.
exercise-finger-spread-step-1 = Paghiwalayin ang mga daliri.
exercise-finger-spread-step-2 = Manatili nang { $hold }.
exercise-finger-spread-step-3 = Pagdikitin ulit ang mga ito.

## Raise your hand and pump

exercise-hand-raise-pump-name = Itaas ang kamay at ibuka-isara
exercise-hand-raise-pump-start = Umupo at itaas ang kamay nang mas mataas sa puso.
exercise-hand-raise-pump-step-1 = Banayad na isara ang mga daliri.
exercise-hand-raise-pump-step-2 = Manatili nang { $hold }.
exercise-hand-raise-pump-step-3 = Ibuka ang mga daliri.
exercise-hand-raise-pump-step-4 = Ibaba ang braso kapag natapos na ang lahat.

## Bend and straighten your elbow

exercise-elbow-bend-name = Ibaluktot at ituwid ang siko
exercise-elbow-bend-start = Umupo o tumayo, nasa tagiliran ang braso.
exercise-elbow-bend-step-1 = Ibaluktot ang siko hanggang mapalapit ang kamay sa balikat.
exercise-elbow-bend-step-2 = Manatili nang { $hold }.
exercise-elbow-bend-step-3 = Dahan-dahang ituwid ang siko.

## Turn your palm up and down

exercise-forearm-turn-name = Ibaling ang palad pataas at pababa
exercise-forearm-turn-start = Umupo nang nakabaluktot ang siko at malapit sa tagiliran.
exercise-forearm-turn-step-1 = Ibaling ang palad pataas.
exercise-forearm-turn-step-2 = Manatili nang { $hold }.
exercise-forearm-turn-step-3 = Ibaling ang palad pababa.
exercise-forearm-turn-step-4 = Manatili nang { $hold }.

## Move your wrist up and down

exercise-wrist-up-down-name = Igalaw ang pulso pataas at pababa
exercise-wrist-up-down-start = Ipatong ang ibabang braso sa mesa, lampas sa gilid ang kamay. Hayaang maluwag ang hinlalaki.
exercise-wrist-up-down-step-1 = Dahan-dahang iangat ang kamay.
exercise-wrist-up-down-step-2 = Manatili nang { $hold }.
exercise-wrist-up-down-step-3 = Dahan-dahang hayaang bumaba ang kamay.
exercise-wrist-up-down-step-4 = Manatili nang { $hold }.

## Move your wrist from side to side

exercise-wrist-side-to-side-name = Igalaw ang pulso sa magkabilang panig
exercise-wrist-side-to-side-start = Ilapat ang ibabang braso at palad sa mesa. Panatilihin ang hinlalaki sa tabi ng mga daliri.
exercise-wrist-side-to-side-step-1 = Ipadulas ang kamay papunta sa panig ng hinlalaki.
exercise-wrist-side-to-side-step-2 = Manatili nang { $hold }.
exercise-wrist-side-to-side-step-3 = Ipadulas ang kamay papunta sa panig ng hinliliit.
exercise-wrist-side-to-side-step-4 = Manatili nang { $hold }.

## Bend the knuckle of your thumb

exercise-thumb-knuckle-bend-name = Ibaluktot ang buko ng hinlalaki
exercise-thumb-knuckle-bend-start = Ipatong nang patagilid ang kamay sa mesa, nasa ibaba ang panig ng hinliliit. Gamit ang kabilang kamay, hawakan ang hinlalaki sa pagitan ng buko nito at ng pulso.
exercise-thumb-knuckle-bend-step-1 = Ibaluktot ang buko ng hinlalaki nang diretso paharap.
exercise-thumb-knuckle-bend-step-2 = Manatili nang { $hold }.
exercise-thumb-knuckle-bend-step-3 = Ituwid ang buko.
exercise-thumb-knuckle-bend-step-4 = Huwag kailanman hayaang lumabas patagilid ang hinlalaki.

## Touch each fingertip with your thumb

exercise-thumb-to-fingertips-name = Idampi ang hinlalaki sa bawat dulo ng daliri
exercise-thumb-to-fingertips-start = Itaas ang kamay, nakaturo pataas ang mga daliri.
exercise-thumb-to-fingertips-step-1 = Banayad na idampi ang hinlalaki sa dulo ng hintuturo.
exercise-thumb-to-fingertips-step-2 = Manatili nang { $hold }.
exercise-thumb-to-fingertips-step-3 = Ibuka nang malaki ang kamay.
exercise-thumb-to-fingertips-step-4 = Gawin din ito sa bawat isa sa ibang daliri.

## Lift your thumb away from your palm

exercise-thumb-out-from-palm-name = Iangat ang hinlalaki palayo sa palad
exercise-thumb-out-from-palm-start = Ilapat sa mesa ang likod ng kamay.
exercise-thumb-out-from-palm-step-1 = Iangat ang hinlalaki nang diretso pataas, palayo sa palad.
exercise-thumb-out-from-palm-step-2 = Manatili nang { $hold }.
exercise-thumb-out-from-palm-step-3 = Dahan-dahang hayaang bumalik.

## Hold the shape of a C

exercise-thumb-c-hold-name = Panatilihin ang hugis na C
exercise-thumb-c-hold-start = Ihugis na parang letrang C ang hinlalaki at hintuturo.
exercise-thumb-c-hold-step-1 = Tiyaking pakurba ang hinlalaki at hindi bumabaluktot paatras.
exercise-thumb-c-hold-step-2 = Hawakan ang hinlalaki mula sa labas gamit ang kabilang kamay.
exercise-thumb-c-hold-step-3 = Gamit ang hinlalaki, dumiin nang banayad palabas. Huwag ninyo itong hayaang gumalaw.
exercise-thumb-c-hold-step-4 = Manatili nang { $hold }.
exercise-thumb-c-hold-step-5 = Irelaks ang kamay.

## Press your index finger to the side

exercise-index-side-press-name = Dumiin patagilid gamit ang hintuturo
exercise-index-side-press-start = Ilapat ang kamay sa mesa, nakaharap pababa ang palad.
exercise-index-side-press-step-1 = Idikit ang kabilang kamay sa gilid ng hintuturo, sa panig ng hinlalaki.
exercise-index-side-press-step-2 = Gamit ang hintuturo, dumiin nang banayad papunta sa hinlalaki. Huwag ninyo itong hayaang gumalaw.
exercise-index-side-press-step-3 = Manatili nang { $hold }.
exercise-index-side-press-step-4 = Irelaks ang kamay.

## Squeeze a soft ball

exercise-soft-ball-squeeze-name = Pisilin ang malambot na bola
exercise-soft-ball-squeeze-start = Ilagay ang malambot na bolang espongha sa palad. Huwag ninyong idikit dito ang hinlalaki.
exercise-soft-ball-squeeze-step-1 = Banayad na pisilin ang bola gamit ang mga daliri.
exercise-soft-ball-squeeze-step-2 = Manatili nang { $hold }.
exercise-soft-ball-squeeze-step-3 = Dahan-dahang bitawan.
