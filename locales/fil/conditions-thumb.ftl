### Conditions of the thumb and of the tendons and bones at the wrist: the name, what is wrong, and what the splint does.
### Words for a reader of about twelve. The splint is never said to cure anything.

## Sore tendons on the thumb side of the wrist, in pregnancy or with a small baby

condition-wrist-thumb-around-birth-name = Masakit na litid ng hinlalaki sa panahon ng panganganak
condition-wrist-thumb-around-birth-what = Dalawang litid papunta sa hinlalaki ang kumikiskis sa pulso. Puwede itong sumakit sa pagbuhat at pagpapakain ng sanggol.
condition-wrist-thumb-around-birth-aim = Pinagpapahinga ng splint ang pulso at hinlalaki sa gabi at habang nagbubuhat kayo. Puwedeng mas hindi masakit ang pag-aalaga sa sanggol.

## Tendons that rub where they cross above the wrist

condition-intersection-syndrome-name = Mga litid na kumikiskis sa itaas ng pulso
condition-intersection-syndrome-what = Nagkukrus sa itaas ng pulso ang mga litid papunta sa pulso at hinlalaki. Kumikiskis ang mga ito roon at masakit.
condition-intersection-syndrome-aim = Hindi pinapagalaw ng splint ang pulso. Nakakapagpahinga ang masakit na mga litid.

## Torn band on the outer side of the thumb's knuckle

condition-thumb-rcl-injury-name = Napunit na ligament sa labas ng buko ng hinlalaki
condition-thumb-rcl-injury-what = Napunit ang ligament sa labas na gilid ng buko ng hinlalaki. Kailangan nitong gumaling nang walang tulak papunta sa mga daliri.
condition-thumb-rcl-injury-aim = Iniingatan ng splint ang ligament habang gumagaling. Pinipigilan nitong matulak ang hinlalaki papunta sa mga daliri.

## After an operation at the base of the thumb

condition-thumb-cmc-arthroplasty-name = Pagkatapos ng operasyon sa puno ng hinlalaki
condition-thumb-cmc-arthroplasty-what = Inoperahan ang kasukasuan sa puno ng hinlalaki ninyo. Malambot pa at gumagaling pa ang bagong kasukasuan.
condition-thumb-cmc-arthroplasty-aim = Inilalayo ng splint ang hinlalaki sa palad. Naiingatan nito ang bagong kasukasuan habang gumagaling.

## A knuckle of the thumb that bends too far back

condition-hypermobile-thumb-name = Hinlalaking sobrang nababaluktot
condition-hypermobile-thumb-what = Sobra ang baluktot paatras ng buko ng hinlalaki kapag dumidiin o umiipit kayo. Kaya ito sumasakit at napapagod.
condition-hypermobile-thumb-aim = Pinipigilan ng splint na bumaluktot paatras ang buko sa mabibigat na gawain. Tinutulungan nito ang mga kalamnan pero hindi pinapalitan.

## Catching thumb

condition-trigger-thumb-name = Sumasabit na hinlalaki (trigger thumb)
condition-trigger-thumb-what = Makapal ang litid na nagbabaluktot sa hinlalaki at sumasabit sa tunnel nito. Lumalagutok o naiipit ang hinlalaki.
condition-trigger-thumb-aim = Pinananatiling tuwid ng splint ang isang kasukasuan ng hinlalaki. Mas kaunti ang dulas ng litid, kaya nakakapagpahinga ang masakit na bahagi.

## Sewn tendon that lifts the thumb

condition-epl-repair-name = Tinahing litid na nag-aangat sa hinlalaki
condition-epl-repair-what = Tinahi ang litid na nag-aangat sa hinlalaki. Mahina ito hangga't hindi pa gumagaling.
condition-epl-repair-aim = Pinananatili ng splint na nakaangat ang hinlalaki at nakabaluktot paatras ang pulso. Nababawasan ang hila sa tinahing litid.

## Sewn tendon that bends the thumb

condition-fpl-repair-name = Tinahing litid na nagbabaluktot sa hinlalaki
condition-fpl-repair-what = Tinahi ang litid na nagbabaluktot sa hinlalaki. Mahina ito hangga't hindi pa gumagaling.
condition-fpl-repair-aim = Pinipigilan ng splint na tumuwid nang sobra ang hinlalaki. Nababawasan ang hila sa tinahing litid.

## Sore tendon on the little-finger side of the wrist

condition-ecu-tendinopathy-name = Masakit na litid sa gilid ng pulso, sa panig ng hinliliit
condition-ecu-tendinopathy-what = Masakit ang litid sa gilid ng pulso, sa panig ng hinliliit. Lumalala ito kapag ikinikiling at iniikot ang kamay.
condition-ecu-tendinopathy-aim = Pinipigilan ng splint ang pagkiling ng pulso. Nakakapagpahinga ang masakit na litid.

## Sprained wrist

condition-wrist-sprain-name = Pilay sa pulso
condition-wrist-sprain-what = Nabanat ang mga ligament na humahawak sa pulso. Nasa tamang puwesto ang mga buto.
condition-wrist-sprain-aim = Hindi pinapagalaw ng splint ang pulso habang ginagamit ang kamay. Nakakabawi ang mga ligament.

## Torn cushion on the little-finger side of the wrist

condition-tfcc-injury-name = Napunit na sapin sa loob ng pulso
condition-tfcc-injury-what = Napunit ang maliit na sapin sa gilid ng pulso, sa panig ng hinliliit. Nakikiskis ito kapag iniikot ang braso.
condition-tfcc-injury-aim = Pinipigilan ng splint ang pag-ikot ng braso at pagkiling ng pulso. Nakakapagpahinga ang sapin.

## Broken scaphoid, after the cast

condition-scaphoid-after-cast-name = Baling buto ng pulso sa panig ng hinlalaki, matapos ang cast
condition-scaphoid-after-cast-what = Nabali ang isang maliit na buto sa pulso. Nagdugtong na ito, pero hindi pa matibay.
condition-scaphoid-after-cast-aim = Iniingatan ng splint ang buto sa gabi, sa labas at sa matataong lugar.

## Broken radius at the wrist, after the cast

condition-distal-radius-after-cast-name = Baling pulso, matapos ang cast
condition-distal-radius-after-cast-what = Nabali ang malaking buto ng braso sa may pulso. Nagdugtong na ito, pero hindi pa matibay.
condition-distal-radius-after-cast-aim = Iniingatan ng splint ang pulso sa gabi, sa labas at kapag nagbubuhat kayo. Tinatanggal ninyo ito para igalaw ang pulso.

## Movements to leave out, beside those that other conditions have

avoid-thumb-ip-flexion = Huwag ninyong ibaluktot ang dulo ng hinlalaki.
avoid-thumb-ip-extension = Huwag ninyong ituwid ang dulo ng hinlalaki.
avoid-thumb-cmc-flexion = Huwag ninyong igalaw ang hinlalaki patawid sa palad.
avoid-forearm-any = Huwag ninyong ibaling ang palad pataas o pababa.

## How to hold an arm that may not turn while the splint is off to wash

support-forearm-thumb-up = Kapag tanggal ito, ipatong ang ibabang braso sa mesa. Panatilihing nakaturo pataas ang hinlalaki. Huwag ninyong iikot ang braso. Huwag ninyong gamitin ang kamay.
