### Signs to watch for. Each is a clause or a short noun phrase without a full stop.
### It stands in a list under a heading such as “Call us today if:”.
### $limit is how long a mark may stay, $loosen how long loosening may take to help; both are finished texts.

## On the first page of every guide

sign-numb-or-tingling = Nananatiling mas manhid o mas parang tinutusok-tusok kaysa dati ang mga daliri o hinlalaki
# Loosening the straps comes first; this is what is left when it does not help.
sign-fingers-blue-white-cold = { $straps ->
    [without] Nananatiling asul, maputi o malamig ang mga daliri o hinlalaki
   *[with] Asul, maputi o malamig pa rin ang mga daliri o hinlalaki { $loosen } matapos luwagan ang mga strap
}
sign-more-swelling-or-pain = Lumalala ang pamamaga o ang sakit
sign-mark-or-sore-stays = Nananatili nang higit sa { $limit } ang pulang marka o masakit na bahagi

## Emergencies

sign-severe-pain-hard-arm = Lumalakas ang matinding sakit kahit nagpapahinga, o banat at matigas ang ibabang braso
sign-redness-with-fever = Kumakalat ang pamumula at nilalagnat kayo o masama ang pakiramdam
sign-finger-swollen-bent = Namamaga ang buong daliri o hinlalaki, nananatiling nakabaluktot at masakit kapag itinutuwid
sign-new-injury = Matapos mahulog, madapa o mabangga, mukhang baluktot ang kamay o patuloy ang pagdurugo
sign-face-swells-breathing = Namamaga ang mukha o labi, o hirap huminga

## Today

sign-redness-spreads = Kumakalat ang pamumula o init sa kamay
sign-blister-or-open-skin = May paltos o bukas na balat
# Redness does not show on dark skin; these are the other signs of pressure.
sign-skin-patch-changed = May bahagi ng balat na mas maitim, makintab, matigas o mas mainit kaysa iba
sign-rash-or-itch = May pantal o kati sa ilalim ng splint
sign-skin-wet-and-white = Maputi, malambot at basa ang balat sa ilalim ng splint
sign-splint-broken-or-loose = May lamat, baluktot, nawawala o masyadong maluwag ang splint
sign-hand-burning-shiny-stiff = Mahapdi at mainit ang buong kamay, makintab at naninigas

## At the next visit

sign-edge-or-strap-worn = Matalas ang gilid, o hindi na dumidikit ang strap
sign-plan-does-not-fit-day = Hindi bagay ang plano sa araw-araw ninyo

## For some thumbs

sign-thumb-gives-way = Dumudulas o bumibigay patagilid ang hinlalaki
sign-thumb-snap = May naramdaman kayong lagutok sa hinlalaki
sign-thumb-lump = May bagong bukol sa tabi ng buko ng hinlalaki
sign-wound-opens = Bumubuka, tumatagas o mabaho ang sugat
sign-thumb-back-tingles = Parang tinutusok-tusok o namamanhid ang likod ng hinlalaki
sign-thumb-catches = Sumasabit o lumalagutok ang hinlalaki kapag iginagalaw
sign-thumb-weaker-in-pinch = Humihina ang ipit ng hinlalaki at daliri
sign-no-easier-with-splint = Pareho ang sakit sa gawain, may splint man o wala
