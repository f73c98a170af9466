### Signs to watch for. Each is a clause or a short noun phrase without a full stop.
### It stands in a list under a heading such as “Appelez-nous aujourd'hui”.
### $limit is how long a mark may stay, $loosen how long loosening may take to help; both are finished texts.

## On the first page of every guide

sign-numb-or-tingling = Les doigts ou le pouce restent plus engourdis, ou ont plus de fourmillements, qu’avant
# Loosening the straps comes first; this is what is left when it does not help.
sign-fingers-blue-white-cold = { $straps ->
    [without] Vos doigts restent bleus, blancs ou froids
   *[with] Vos doigts restent bleus, blancs ou froids { $loosen } après avoir desserré les sangles
}
sign-more-swelling-or-pain = Vous avez plus de gonflement ou plus de douleur
sign-mark-or-sore-stays = Une marque rouge ou un endroit douloureux reste plus de { $limit }

## Emergencies

sign-severe-pain-hard-arm = Une forte douleur augmente sans cesse au repos, ou l’avant-bras semble tendu et dur
sign-redness-with-fever = La rougeur s’étend et vous avez de la fièvre ou vous vous sentez mal
sign-finger-swollen-bent = Un doigt entier ou le pouce gonfle, reste plié et fait mal quand on le tend
sign-new-injury = Après une chute ou un coup, la main semble tordue ou saigne sans s’arrêter
sign-face-swells-breathing = Votre visage ou vos lèvres gonflent, ou vous respirez mal

## Today

sign-redness-spreads = Une rougeur ou une chaleur s’étend sur la main
sign-blister-or-open-skin = Vous avez une cloque ou la peau ouverte
# Redness does not show on dark skin; these are the other signs of pressure.
sign-skin-patch-changed = Un endroit de la peau est plus foncé, brillant, dur ou plus chaud que le reste
sign-rash-or-itch = Des boutons ou plaques, ou une démangeaison, viennent sous l’attelle
sign-skin-wet-and-white = Sous l’attelle, la peau est blanche, molle et mouillée
sign-splint-broken-or-loose = Votre attelle est fendue, tordue, perdue ou trop lâche
sign-hand-burning-shiny-stiff = Toute la main brûle, brille et devient raide

## At the next visit

sign-edge-or-strap-worn = Un bord est coupant, ou une sangle ne colle plus
sign-plan-does-not-fit-day = Le programme ne va pas avec votre journée

## For some thumbs

sign-thumb-gives-way = Le pouce glisse ou lâche sur le côté
sign-thumb-snap = Vous sentez un claquement dans le pouce
sign-thumb-lump = Une nouvelle bosse apparaît à côté de la jointure du pouce
sign-wound-opens = La plaie s’ouvre, coule ou sent mauvais
sign-thumb-back-tingles = Le dos du pouce a des fourmillements ou s’engourdit
sign-thumb-catches = Le pouce accroche ou claque quand vous le bougez
sign-thumb-weaker-in-pinch = Vous pincez moins fort
sign-no-easier-with-splint = Les tâches font aussi mal avec l’attelle que sans elle
