### Conditions: the name, what is wrong, and what the splint does.
### Words for a reader of about twelve. The splint is never said to cure anything.

## Sore tendons on the thumb side of the wrist

condition-de-quervain-name = Masakit na litid ng hinlalaki sa pulso (de Quervain)
condition-de-quervain-what = Dalawang litid papunta sa hinlalaki ang kumikiskis sa masikip na daanan sa pulso. Masakit at namamaga ang mga ito.
condition-de-quervain-aim = Hindi pinapagalaw ng splint ang pulso at hinlalaki. Nakakapagpahinga ang masakit na mga litid.

## Torn band at the knuckle of the thumb, fresh

condition-thumb-ucl-acute-name = Napunit na ligament sa buko ng hinlalaki
condition-thumb-ucl-acute-what = Napunit ang ligament sa loobang gilid ng buko ng hinlalaki. Kailangan nitong gumaling nang walang tulak patagilid.
condition-thumb-ucl-acute-aim = Iniingatan ng splint ang ligament habang gumagaling. Pinipigilan nitong matulak ang hinlalaki palabas.

## Torn band at the knuckle of the thumb, old

condition-thumb-ucl-chronic-name = Maluwag na buko ng hinlalaki
condition-thumb-ucl-chronic-what = Dahil sa lumang punit, maluwag ang buko ng hinlalaki. Bumibigay ito kapag umiipit kayo.
condition-thumb-ucl-chronic-aim = Pinatatatag ng splint ang buko habang ginagamit ninyo ang kamay.

## Worn joint at the base of the thumb

condition-thumb-cmc-osteoarthritis-name = Pudpod na kasukasuan sa puno ng hinlalaki
condition-thumb-cmc-osteoarthritis-what = Pudpod na ang kasukasuan sa puno ng hinlalaki. Dumudulas ito at sumasakit kapag umiipit kayo.
condition-thumb-cmc-osteoarthritis-aim = Pinatatatag ng splint ang puno ng hinlalaki. Puwedeng mas madali at mas hindi masakit ang mga gawain dahil dito.
