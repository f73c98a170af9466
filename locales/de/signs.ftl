### Signs to watch for. Each is a clause or a short noun phrase without a full stop.
### It stands in a list under a heading such as “Call us today if:”.
### $limit is how long a mark may stay, $loosen how long loosening may take to help; both are finished texts.

## On the first page of every guide

sign-numb-or-tingling = Ihre Finger oder Ihr Daumen bleiben tauber als vorher oder kribbeln mehr
# Loosening the straps comes first; this is what is left when it does not help.
sign-fingers-blue-white-cold = { $straps ->
    [without] Ihre Finger oder Ihr Daumen bleiben blau, weiß oder kalt
   *[with] Ihre Finger oder Ihr Daumen sind { $loosen } nach dem Lockern der Gurte noch blau, weiß oder kalt
}
sign-more-swelling-or-pain = Sie haben mehr Schwellung oder mehr Schmerzen
sign-mark-or-sore-stays = Ein roter Abdruck oder eine wunde Stelle bleibt länger als { $limit }

## Emergencies

sign-severe-pain-hard-arm = Starker Schmerz nimmt in Ruhe immer mehr zu, oder Ihr Unterarm fühlt sich gespannt und hart an
sign-redness-with-fever = Eine Rötung breitet sich aus, und Sie haben Fieber oder fühlen sich krank
sign-finger-swollen-bent = Ein ganzer Finger oder Daumen schwillt an, bleibt gebeugt und tut beim Strecken weh
sign-new-injury = Nach einem Sturz oder Stoß sieht Ihre Hand krumm aus oder blutet weiter
sign-face-swells-breathing = Ihr Gesicht oder Ihre Lippen schwellen an, oder Sie bekommen schwer Luft

## Today

sign-redness-spreads = Rötung oder Wärme breitet sich auf Ihrer Hand aus
sign-blister-or-open-skin = Sie haben eine Blase oder offene Haut
# Redness does not show on dark skin; these are the other signs of pressure.
sign-skin-patch-changed = Eine Hautstelle ist dunkler, glänzend, hart oder wärmer als der Rest
sign-rash-or-itch = Sie bekommen Ausschlag oder Juckreiz unter der Schiene
sign-skin-wet-and-white = Ihre Haut unter der Schiene ist weiß, weich und nass
sign-splint-broken-or-loose = Ihre Schiene ist gerissen, verbogen, verloren oder zu locker
sign-hand-burning-shiny-stiff = Ihre ganze Hand brennt, glänzt und wird steif

## At the next visit

sign-edge-or-strap-worn = Eine Kante fühlt sich scharf an, oder ein Gurt klebt nicht mehr
sign-plan-does-not-fit-day = Der Plan passt nicht in Ihren Tag

## For some thumbs

sign-thumb-gives-way = Ihr Daumen rutscht oder gibt zur Seite nach
sign-thumb-snap = Sie spüren ein Reißen in Ihrem Daumen
sign-thumb-lump = Neben dem Knöchel Ihres Daumens ist eine neue Beule
sign-wound-opens = Ihre Wunde geht auf, nässt oder riecht schlecht
sign-thumb-back-tingles = Der Rücken Ihres Daumens kribbelt oder wird taub
sign-thumb-catches = Ihr Daumen hakt oder schnappt, wenn Sie ihn bewegen
sign-thumb-weaker-in-pinch = Ihr Griff mit Daumen und Finger wird schwächer
sign-no-easier-with-splint = Arbeiten tun mit der Schiene so weh wie ohne sie
