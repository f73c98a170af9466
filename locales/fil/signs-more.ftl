### More signs to watch for. Each is a clause or a short noun phrase without a full stop.
### It stands in a list under a heading such as “Call us today if:”.
### Printed only where a condition names the sign.

## Emergencies

sign-finger-snap = May naramdaman kayong lagutok, o biglang hindi na maibaluktot o maituwid ang daliri o hinlalaki
sign-tooth-cut-over-knuckle = Namumula, namamaga o sumasakit ang sugat mula sa ngipin sa ibabaw ng buko
sign-finger-white-when-straight = Namumuti ang daliri kapag nakatuwid
sign-graft-pale-or-tight = Namumutla ang bagong balat ng kamay, o parang banat sa kaloob-looban

## Today

sign-tip-droops-again = Lumaylay ulit ang dulo ng daliri, o bumaluktot ito nang walang suporta
sign-middle-joint-bends-alone = Lumaylay ang gitnang kasukasuan ng daliri, o bumaluktot ito nang walang suporta
sign-finger-cannot-straighten = Bumabagsak ang daliri at hindi ninyo ito maituwid nang walang tulong
sign-thumb-tip-will-not-lift = Hindi na ninyo maiangat ang dulo ng hinlalaki
sign-finger-turns-over-neighbour = Pumipihit o pumapatong ang daliri sa katabi nito
sign-finger-locks = Nagla-lock ang daliri o hinlalaki at hindi maituwid
sign-pin-loose = Maluwag, baluktot o bali ang pin, o may tumatagas sa butas nito
sign-joint-slips = Dumudulas palabas o parang maluwag ang kasukasuan
sign-wrist-clunks = Kumakalog ang pulso, o masakit sa loob ng lubog sa tabi ng hinlalaki
sign-night-numbness-grows = Mas maraming gabi nang namamanhid ang mga daliri o hinlalaki, o manhid na ang mga ito buong araw
sign-thumb-muscle-thinner = Numinipis ang umbok ng kalamnan sa ibaba ng hinlalaki
sign-hand-muscle-thinner = Numinipis ang kamay sa pagitan ng hinlalaki at hintuturo
sign-little-finger-numb = Nananatiling mas manhid kaysa dati ang hinliliit
sign-elbow-band-tingles = Parang tinutusok-tusok ang kamay o ibabang braso habang suot ang band o splint
sign-finger-stays-bent-more = Nananatiling mas nakabaluktot kaysa dati ang daliri
sign-tight-hand-tighter = Lalong naninigas ang kamay o lalong mahirap ibuka

## At the next visit

sign-clicks-under-load = Lumalagutok at sumasakit ang pulso o kamay kapag itinutukod o nagbubuhat
