### Conditions of the fingers: the name, what is wrong, and what the splint does.
### Words for a reader of about twelve. The splint is never said to cure anything.

## Finger that catches

condition-trigger-finger-name = Sumasabit na daliri (trigger finger)
condition-trigger-finger-what = Dumadaan sa tunnel sa palad ang litid na nagbabaluktot sa daliri. Masyado itong makapal doon kaya sumasabit o nagla-lock.
condition-trigger-finger-aim = Dahil sa splint, mas kaunti ang baluktot ng daliri. Mas kaunti ang kiskis ng litid sa tunnel at nakakapagpahinga ito.

## Fingertip that droops, torn cord

condition-mallet-tendon-name = Laylay na dulo ng daliri, napunit na litid (mallet finger)
condition-mallet-tendon-what = Napunit ang manipis na litid na nag-aangat sa dulo ng daliri. Magdurugtong lang ang mga putol kung hindi kailanman lalaylay ang dulo.
condition-mallet-tendon-aim = Pinananatiling tuwid ng splint ang dulo ng daliri habang gumagaling ang litid.

## Fingertip that droops, chip of bone

condition-mallet-bony-name = Laylay na dulo ng daliri, tapyas sa buto (mallet finger)
condition-mallet-bony-what = May natapyas na buto dahil sa hila ng litid na nag-aangat sa dulo ng daliri. Magdurugtong lang ang tapyas kung hindi gagalaw ang dulo.
condition-mallet-bony-aim = Pinananatiling tuwid ng splint ang dulo ng daliri habang gumagaling ang buto.

## Torn strip over the middle joint, fresh

condition-boutonniere-acute-name = Napunit na litid sa ibabaw ng gitnang kasukasuan
condition-boutonniere-acute-what = Napunit ang litid na nagtutuwid sa gitnang kasukasuan ng daliri. Bawat baluktot ay naglalayo sa mga putol nito.
condition-boutonniere-acute-aim = Pinananatiling tuwid ng splint ang gitnang kasukasuan. Malaya ang dulo ng daliri, at nakakatulong sa litid ang pagbaluktot nito.

## Middle joint fixed bent after a tear

condition-boutonniere-chronic-name = Nakabaluktot na gitnang kasukasuan dahil sa lumang punit
condition-boutonniere-chronic-what = Dahil sa lumang punit, nanatiling nakabaluktot ang gitnang kasukasuan ng daliri. Nanigas na ito.
condition-boutonniere-chronic-aim = Dahan-dahan at banayad na itinutuwid ng splint ang kasukasuan. Pagkatapos, pinananatili itong tuwid.

## Middle joint that bends backwards

condition-swan-neck-name = Gitnang kasukasuan na bumabaluktot paatras (swan neck)
condition-swan-neck-what = Dumudulas paatras ang gitnang kasukasuan ng daliri at naiipit doon. Mahirap nang ikuyom ang kamao.
condition-swan-neck-aim = Pinipigilan ng splint ang kasukasuan na pumunta paatras. Maibabaluktot pa rin ninyo ito.

## Jammed finger, front of the middle joint

condition-pip-volar-plate-name = Natukod na daliri, harap ng gitnang kasukasuan
condition-pip-volar-plate-what = Napinsala ang matibay na sapin sa harap ng gitnang kasukasuan. Napipinsala ulit ito kapag bumaluktot paatras.
condition-pip-volar-plate-aim = Iniingatan ng splint ang kasukasuan para hindi pumunta paatras. Nakabubuti rito ang karaniwang pagbaluktot.

## Sprained side of the middle joint

condition-pip-collateral-sprain-name = Pilay sa gilid ng gitnang kasukasuan
condition-pip-collateral-sprain-what = Nabanat o bahagyang napunit ang ligament sa gilid ng gitnang kasukasuan. Bumubuka ito kapag natulak patagilid.
condition-pip-collateral-sprain-aim = Iniingatan ng splint ang kasukasuan sa tulak patagilid habang gumagaling ang ligament.

## Middle joint that does not straighten

condition-pip-flexion-contracture-name = Matigas at nakabaluktot na gitnang kasukasuan
condition-pip-flexion-contracture-what = Umikli ang balat at mga ligament sa harap ng gitnang kasukasuan. Hindi maituwid ang daliri.
condition-pip-flexion-contracture-aim = Banayad na hinahawakan ng splint ang kasukasuan papuntang tuwid. Mas mabisa ang matagal at banayad kaysa sandali at madiin.

## Worn joint at the fingertip

condition-dip-osteoarthritis-name = Pudpod na kasukasuan sa dulo ng daliri
condition-dip-osteoarthritis-what = Pudpod na ang huling kasukasuan ng daliri. Puwede itong sumakit at magkaroon ng mga bukol.
condition-dip-osteoarthritis-aim = Pinagpapahinga ng splint ang kasukasuan sa gabi. Puwedeng mabawasan ang sakit dahil dito.

## Torn band over the knuckle

condition-sagittal-band-injury-name = Napunit na ligament sa ibabaw ng malaking buko
condition-sagittal-band-injury-what = May maliit na ligament na humahawak sa litid sa ibabaw ng malaking buko. Napunit ito, kaya dumudulas ang litid kapag nakakuyom ang kamao.
condition-sagittal-band-injury-aim = Pinipigilan ng splint ang sobrang pagbaluktot ng buko. Nananatili sa ibabaw ang litid habang gumagaling ang ligament.

## Broken bone below the little finger

condition-fifth-metacarpal-neck-fracture-name = Baling buto sa ibaba ng hinliliit
condition-fifth-metacarpal-neck-fracture-what = Bali ang buto ng palad sa ibaba ng hinliliit, malapit sa malaking buko. Kailangan nitong magdugtong ulit.
condition-fifth-metacarpal-neck-fracture-aim = Iniingatan ng splint ang buto habang gumagaling. Tumutulong din ito para hindi pumihit ang daliri.

## Broken first bone of a finger

condition-proximal-phalanx-fracture-name = Baling unang buto ng daliri
condition-proximal-phalanx-fracture-what = Bali ang buto sa pagitan ng malaking buko at ng gitnang kasukasuan. Kailangan nitong magdugtong ulit.
condition-proximal-phalanx-fracture-aim = Pinananatili ng splint sa puwesto ang buto habang gumagaling. Hinahawakan nito ang mga kasukasuan para hindi masyadong manigas.
