### More activities: what people do with their hands, and easier ways to do it.
### The name stands as a short order in a table, such as “Wash the dishes”.
### Every other message is one or two short sentences of advice beside that name.

## More ways for jobs named elsewhere

activity-text-with-thumbs-open-elbow = Legen Sie den Arm auf. Halten Sie den Ellenbogen weiter offen als im rechten Winkel.
activity-hold-tablet-open-elbow = Rücken Sie es weiter weg. Halten Sie den Ellenbogen weiter offen als im rechten Winkel.
activity-drive-car-open-elbow = Stellen Sie den Sitz so ein, dass der Ellenbogen weiter offen ist als im rechten Winkel.
activity-brush-teeth-lean-forward = Beugen Sie sich über das Waschbecken. Bringen Sie den Kopf zur Bürste.

## Shower and wash your hair

activity-wash-hair-shower-name = Duschen und Haare waschen
activity-wash-hair-shower-arm-bag = Ziehen Sie einen wasserdichten Beutel über Hand und Schiene. Schließen Sie ihn oben gut.
activity-wash-hair-shower-pump-bottle = Nehmen Sie eine Pumpflasche und einen Schwamm mit langem Griff.
activity-wash-hair-shower-bend-head = Senken Sie den Kopf. Halten Sie den Ellenbogen weiter offen als im rechten Winkel.
activity-wash-hair-shower-other-hand = Waschen Sie sich mit der anderen Hand oder bitten Sie jemanden, Ihre Haare zu waschen.

## Pull up trousers or socks

activity-pull-up-clothes-name = Hose oder Socken hochziehen
activity-pull-up-clothes-loose-waist = Tragen Sie weite Kleidung mit weichem Bund.
activity-pull-up-clothes-loops = Nähen Sie innen Schlaufen an. Stecken Sie den Unterarm hindurch und ziehen Sie.
activity-pull-up-clothes-flat-palms = Setzen Sie sich. Schieben Sie den Stoff mit flachen Handflächen hoch.
activity-pull-up-clothes-other-hand = Ziehen Sie mit der anderen Hand oder bitten Sie jemanden um Hilfe.

## Fasten a strap behind your back

activity-fasten-back-strap-name = Einen Verschluss am Rücken schließen
activity-fasten-back-strap-pull-over = Tragen Sie etwas Weiches, das Sie über den Kopf ziehen.
activity-fasten-back-strap-turn-round = Schließen Sie ihn vorn. Dann drehen Sie ihn nach hinten.
activity-fasten-back-strap-front-closing = Wählen Sie etwas, das vorn mit breiten Haken schließt.
activity-fasten-back-strap-helper = Bitten Sie jemanden, ihn zu schließen.

## Wipe after the toilet

activity-toilet-wipe-name = Sich nach der Toilette abwischen
activity-toilet-wipe-cover-splint = Ziehen Sie einen dünnen Beutel über die Schiene. Werfen Sie ihn danach weg.
activity-toilet-wipe-long-wiper = Nehmen Sie eine Wischhilfe mit langem Griff oder einen Toilettensitz, der Sie wäscht.
activity-toilet-wipe-other-hand = Wischen Sie mit der anderen Hand.
activity-toilet-wipe-helper = Bitten Sie jemanden, dem Sie vertrauen, um Hilfe.

## Cut your nails

activity-cut-nails-name = Die Nägel schneiden
activity-cut-nails-fixed-clipper = Nehmen Sie einen Nagelknipser auf einem Brett. Drücken Sie ihn mit der Handfläche.
activity-cut-nails-file = Feilen Sie die Nägel mit einer breiten Feile. Halten Sie sie locker.
activity-cut-nails-few-at-once = Schneiden Sie jeden Tag ein paar Nägel.
activity-cut-nails-helper = Bitten Sie jemanden, sie zu schneiden.

## Tie shoe laces

activity-tie-laces-name = Schuhe binden
activity-tie-laces-slip-on = Tragen Sie Schuhe zum Hineinschlüpfen. Nehmen Sie einen langen Schuhlöffel.
activity-tie-laces-stretch-laces = Nehmen Sie dehnbare Schnürsenkel, die gebunden bleiben.
activity-tie-laces-helper = Bitten Sie jemanden, sie zu binden.

## Open a ring-pull can or a bottle cap

activity-ring-pull-cap-name = Dose mit Ring oder Flasche öffnen
activity-ring-pull-cap-lever-opener = Nehmen Sie einen Hebel, der den Ring für Sie anhebt.
activity-ring-pull-cap-cap-grip = Legen Sie eine Gummimatte auf den Verschluss. Drehen Sie ihn mit der flachen Handfläche.
activity-ring-pull-cap-easy-packs = Kaufen Sie Packungen, die ohne Kraft aufgehen.
activity-ring-pull-cap-helper = Bitten Sie jemanden, sie für Sie zu öffnen.

## Chop vegetables

activity-chop-vegetables-name = Gemüse klein schneiden
activity-chop-vegetables-upright-knife = Nehmen Sie ein Wiegemesser oder ein Messer mit aufrechtem Griff.
activity-chop-vegetables-cook-first = Kochen Sie es zuerst. Weiches Essen braucht weniger Kraft.
activity-chop-vegetables-ready-cut = Kaufen Sie Gemüse, das schon geschnitten ist.
activity-chop-vegetables-helper = Bitten Sie jemanden zu schneiden.

## Wash the dishes

activity-wash-dishes-name = Geschirr spülen
activity-wash-dishes-long-brush = Nehmen Sie kühles Wasser und eine Bürste mit langem Griff.
activity-wash-dishes-soak-first = Weichen Sie das Geschirr zuerst ein. Dann wischen Sie es leicht ab.
activity-wash-dishes-dishwasher = Nehmen Sie eine Spülmaschine. Räumen Sie leichte Dinge ein, eins nach dem anderen.
activity-wash-dishes-helper = Bitten Sie jemanden, es zu spülen.

## Knead dough or stir a thick mix

activity-knead-dough-name = Teig kneten oder rühren
activity-knead-dough-upright-spoon = Stellen Sie die Schüssel auf ein nasses Tuch. Rühren Sie mit aufrechtem Löffel, aus der Schulter.
activity-knead-dough-thin-mix = Machen Sie den Teig dünner, und machen Sie weniger davon.
activity-knead-dough-mixer = Lassen Sie eine Maschine rühren.
activity-knead-dough-helper = Bitten Sie jemanden zu kneten.

## Carry plates or a tray

activity-carry-plates-name = Teller oder Tablett tragen
activity-carry-plates-flat-palms = Schieben Sie beide flachen Handflächen darunter. Halten Sie es nah am Körper.
activity-carry-plates-trolley = Schieben Sie sie auf einem Wagen.
activity-carry-plates-one-by-one = Tragen Sie immer nur einen Teller. Lassen Sie heiße zuerst abkühlen.
activity-carry-plates-helper = Bitten Sie jemanden, sie zu tragen.

## Eat with knife and fork

activity-eat-with-cutlery-name = Mit Messer und Gabel essen
activity-eat-with-cutlery-fat-handles = Nehmen Sie Besteck mit langen, dicken Griffen.
activity-eat-with-cutlery-rocking-knife = Schneiden Sie mit einem Wiegemesser.
activity-eat-with-cutlery-soft-food = Wählen Sie weiches Essen, das kein Messer braucht.
activity-eat-with-cutlery-other-hand = Essen Sie mit der anderen Hand. Bitten Sie jemanden, Ihr Essen zu schneiden.

## Turn a door knob or a tap

activity-turn-door-knob-name = Türknauf oder Wasserhahn drehen
activity-turn-door-knob-lever-handle = Setzen Sie einen Hebel darauf. Drücken Sie den Hebel mit dem Unterarm.
activity-turn-door-knob-leave-open = Lassen Sie Türen im Haus ein wenig offen. Drücken Sie sie mit der Hüfte auf.
activity-turn-door-knob-other-hand = Drehen Sie mit der anderen Hand.
activity-turn-door-knob-helper = Bitten Sie jemanden, für Sie zu drehen.

## Vacuum the floor

activity-vacuum-name = Staub saugen
activity-vacuum-walk-along = Halten Sie den Ellenbogen am Körper. Gehen Sie mit dem Gerät mit.
activity-vacuum-light-cleaner = Nehmen Sie ein leichtes Gerät oder eines, das selbst fährt.
activity-vacuum-one-room = Saugen Sie einen Raum. Dann ruhen Sie die Hand aus.
activity-vacuum-helper = Bitten Sie jemanden, es zu tun.

## Hang up the washing

activity-hang-washing-name = Wäsche aufhängen
activity-hang-washing-hangers = Hängen Sie Kleidung auf Bügel oder legen Sie sie über einen Ständer.
activity-hang-washing-soft-pegs = Nehmen Sie Klammern, die leicht aufgehen.
activity-hang-washing-small-loads = Waschen Sie wenig auf einmal. Schleudern Sie gut.
activity-hang-washing-helper = Bitten Sie jemanden, sie aufzuhängen.

## Scrub the bath

activity-scrub-bath-name = Die Badewanne putzen
activity-scrub-bath-long-handle = Nehmen Sie einen Schwamm an einem langen, dicken Griff.
activity-scrub-bath-let-soak = Sprühen Sie, warten Sie und spülen Sie ab. Reiben Sie nicht.
activity-scrub-bath-short-bouts = Putzen Sie jeden Tag einen kleinen Teil.
activity-scrub-bath-helper = Bitten Sie jemanden, sie zu putzen.

## Push up from a chair

activity-rise-from-chair-name = Vom Stuhl aufstehen
activity-rise-from-chair-high-seat = Sitzen Sie auf einem höheren, festen Sitz. Dann heben die Beine Sie leichter.
activity-rise-from-chair-legs-first = Rutschen Sie nach vorn und beugen Sie sich vor. Stehen Sie mit der Kraft der Beine auf.
activity-rise-from-chair-forearm-rest = Stützen Sie sich mit dem Unterarm auf die Armlehne, nicht mit der Hand.
activity-rise-from-chair-other-hand = Stützen Sie sich mit der anderen Hand oder bitten Sie jemanden, Ihnen aufzuhelfen.

## Iron clothes

activity-iron-clothes-name = Bügeln
activity-iron-clothes-light-iron = Nehmen Sie ein kleines, leichtes Bügeleisen.
activity-iron-clothes-hang-smooth = Hängen Sie Kleidung feucht und glatt auf. Vieles muss man dann nicht bügeln.
activity-iron-clothes-few-pieces = Bügeln Sie ein paar Stücke. Dann ruhen Sie die Hand aus.
activity-iron-clothes-other-hand = Bügeln Sie mit der anderen Hand oder bitten Sie jemanden zu bügeln.

## Make the bed

activity-make-bed-name = Das Bett machen
activity-make-bed-light-covers = Nehmen Sie eine leichte Decke und lockere Laken.
activity-make-bed-flat-hands = Schieben Sie die Laken mit flachen Händen und Unterarmen zurecht.
activity-make-bed-few-corners = Heben Sie die Matratze nicht. Lassen Sie die Ecken lose.
activity-make-bed-helper = Bitten Sie jemanden, es zu machen.

## Lean on a walking stick or frame

activity-lean-on-stick-name = Sich auf Gehstock oder Gehgestell stützen
activity-lean-on-stick-wide-grip = Bitten Sie uns, die Höhe zu prüfen. Ein breiter, weicher Griff hilft.
activity-lean-on-stick-forearm-rest = Fragen Sie uns nach einem Modell, auf dem der Unterarm liegt. Gehen Sie nicht ohne Stütze.
activity-lean-on-stick-other-hand = Fragen Sie uns, ob Sie die andere Hand dafür nehmen dürfen. Gehen Sie nicht ohne Stütze.

## Hold a dog lead

activity-hold-dog-lead-name = Eine Hundeleine halten
activity-hold-dog-lead-waist-lead = Nehmen Sie eine Leine, die um Ihre Taille geht.
activity-hold-dog-lead-calm-walks = Gehen Sie kurz und ruhig. Nehmen Sie ein Geschirr, das das Ziehen stoppt.
activity-hold-dog-lead-helper = Bitten Sie jemanden, die Leine zu halten. Wickeln Sie sie nie um die Finger.

## Use a screwdriver

activity-use-screwdriver-name = Einen Schraubendreher benutzen
activity-use-screwdriver-powered-driver = Nehmen Sie einen leichten Schrauber mit Motor.
activity-use-screwdriver-fat-handle = Nehmen Sie einen dicken Griff, der sich in kleinen Schritten dreht.
activity-use-screwdriver-elbow-in = Halten Sie den Ellenbogen am Körper. Drücken Sie mit dem ganzen Körper.
activity-use-screwdriver-helper = Bitten Sie jemanden, die Schrauben einzudrehen.

## Use a hammer

activity-hammer-name = Mit dem Hammer arbeiten
activity-hammer-light-hammer = Nehmen Sie einen leichten Hammer mit weichem, dickem Griff.
activity-hammer-few-nails = Schlagen Sie ein paar Nägel ein. Dann ruhen Sie die Hand aus.
activity-hammer-helper = Bitten Sie jemanden zu hämmern.

## Use a power drill

activity-power-drill-name = Eine Bohrmaschine benutzen
activity-power-drill-light-drill = Nehmen Sie eine leichte Bohrmaschine mit seitlichem Griff.
activity-power-drill-two-hands = Halten Sie sie mit beiden Händen, die Ellenbogen am Körper.
activity-power-drill-short-bouts = Bohren Sie ein Loch. Dann ruhen Sie die Hand aus.
activity-power-drill-helper = Bitten Sie jemanden zu bohren.

## Lift boxes

activity-lift-boxes-name = Kisten heben
activity-lift-boxes-palms-under = Drehen Sie die Handflächen nach oben. Schieben Sie die Unterarme darunter und bleiben Sie nah dran.
activity-lift-boxes-half-load = Füllen Sie Kisten nur halb.
activity-lift-boxes-trolley = Schieben Sie sie auf einem Wagen. Heben Sie nichts vom Boden.
activity-lift-boxes-helper = Bitten Sie jemanden, sie zu heben.

## Pick up small parts or coins

activity-handle-small-parts-name = Kleine Teile oder Münzen aufheben
activity-handle-small-parts-soft-tray = Legen Sie sie auf eine weiche Matte. Schieben Sie sie über den Rand.
activity-handle-small-parts-wide-tweezers = Nehmen Sie eine Pinzette mit breitem, weichem Griff oder einen Magneten.
activity-handle-small-parts-pauses = Nehmen Sie ein paar. Dann ruhen Sie die Hand aus.
activity-handle-small-parts-other-hand = Heben Sie sie mit der anderen Hand auf.

## Hold a baby to feed

activity-feed-baby-name = Ein Baby beim Stillen oder Füttern halten
activity-feed-baby-firm-pillow = Legen Sie Ihr Baby auf ein festes Kissen. Lassen Sie das Kissen das Gewicht tragen.
activity-feed-baby-straight-wrist = Legen Sie den Kopf in Ihre Armbeuge. Halten Sie das Handgelenk gerade.
activity-feed-baby-change-sides = Wechseln Sie oft die Seite. Strecken Sie dazwischen den Arm.
activity-feed-baby-helper = Bitten Sie jemanden, das Baby zurechtzulegen und in der Nähe zu bleiben.

## Change a nappy

activity-change-nappy-name = Eine Windel wechseln
activity-change-nappy-easy-tabs = Wählen Sie Windeln mit breiten Laschen, die leicht aufgehen.
activity-change-nappy-roll-baby = Rollen Sie Ihr Baby zur Seite. Halten Sie nicht beide Füße hoch.
activity-change-nappy-wipes-ready = Legen Sie alles offen bereit, bevor Sie anfangen.
activity-change-nappy-other-hand = Lassen Sie die andere Hand die Laschen öffnen und schließen, oder bitten Sie jemanden zu wickeln.

## Buckle a child seat

activity-buckle-child-seat-name = Einen Kindersitz schließen
activity-buckle-child-seat-buckle-key = Nehmen Sie einen Hebel, mit dem man Gurtschlösser drückt.
activity-buckle-child-seat-knuckle = Drücken Sie den Knopf mit einem gebeugten Knöchel.
activity-buckle-child-seat-helper = Nehmen Sie die andere Hand oder bitten Sie jemanden. Prüfen Sie, ob er zu ist.

## Push a pram

activity-push-pram-name = Einen Kinderwagen schieben
activity-push-pram-open-palms = Schieben Sie mit offenen Handflächen.
activity-push-pram-high-bar = Stellen Sie den Griff hoch und polstern Sie ihn. Legen Sie die Unterarme darauf.
activity-push-pram-helper = Schieben Sie mit der anderen Hand oder bitten Sie jemanden zu schieben.

## Dig

activity-dig-name = Graben
activity-dig-small-spade = Nehmen Sie einen kleinen, leichten Spaten mit langem Stiel.
activity-dig-foot-pushes = Lassen Sie den Fuß den Spaten drücken.
activity-dig-short-bouts = Nehmen Sie immer nur einen halben Spaten voll. Hören Sie nach ein paar Mal auf.
activity-dig-helper = Bitten Sie jemanden zu graben. Sie zeigen, wo.

## Pull weeds

activity-pull-weeds-name = Unkraut jäten
activity-pull-weeds-long-weeder = Nehmen Sie eine Hacke oder einen Jäter mit langem, dickem Stiel.
activity-pull-weeds-after-rain = Jäten Sie nach dem Regen. Dann gehen die Wurzeln leicht heraus.
activity-pull-weeds-short-bouts = Jäten Sie ein kleines Stück. Dann ruhen Sie die Hand aus.
activity-pull-weeds-helper = Bitten Sie jemanden zu jäten. Sie zeigen, wo.

## Water plants

activity-water-plants-name = Pflanzen gießen
activity-water-plants-two-hands = Halten Sie die Kanne mit beiden Händen, nah am Körper.
activity-water-plants-little-water = Füllen Sie die Kanne nur ein wenig.
activity-water-plants-hose = Nehmen Sie einen Schlauch mit einem Hebel, der offen bleibt.
activity-water-plants-helper = Gießen Sie mit der anderen Hand oder bitten Sie jemanden.

## Fasten a seat belt

activity-fasten-seat-belt-name = Sich im Auto anschnallen
activity-fasten-seat-belt-belt-handle = Machen Sie an den Autogurt einen Griff, den Sie leicht erreichen.
activity-fasten-seat-belt-knuckle = Drücken Sie das Schloss mit einem gebeugten Knöchel.
activity-fasten-seat-belt-other-hand = Ziehen Sie den Autogurt mit der anderen Hand herüber. Bitten Sie jemanden, ihn zu schließen.

## Ride a bicycle

activity-cycle-name = Fahrrad fahren
activity-cycle-high-bar = Stellen Sie den Lenker höher. Nehmen Sie weiche, dicke Griffe.
activity-cycle-short-rides = Fahren Sie eine kurze Strecke auf glatten Wegen.
activity-cycle-indoor-bike = Nehmen Sie ein Zimmerrad. Sitzen Sie aufrecht und lassen Sie die Hände ruhen.

## Lift weights

activity-lift-weights-name = Gewichte heben
activity-lift-weights-half-weight = Nehmen Sie das halbe Gewicht. Machen Sie weniger.
activity-lift-weights-forearm-cuff = Ziehen Sie mit einer Manschette am Unterarm. Greifen Sie keine Stange.
activity-lift-weights-legs-only = Trainieren Sie Beine und Rumpf. Halten Sie nichts fest.

## Do press-ups or yoga

activity-press-ups-yoga-name = Liegestütze oder Yoga
activity-press-ups-yoga-legs-only = Wählen Sie Haltungen auf den Beinen, dem Rücken oder der Seite.
activity-press-ups-yoga-straight-wrist = Halten Sie sich an festen Griffen, damit das Handgelenk gerade bleibt.
activity-press-ups-yoga-fewer = Stützen Sie sich an einer Wand ab, nicht auf dem Boden.

## Swim

activity-swim-name = Schwimmen
activity-swim-float = Legen Sie die Unterarme auf ein Schwimmbrett. Schwimmen Sie mit den Beinen.
activity-swim-dry-at-once = Trocknen Sie Haut und Schiene ab, sobald Sie herauskommen.
activity-swim-short-swim = Schwimmen Sie nur kurz.

## Play the guitar

activity-play-guitar-name = Gitarre spielen
activity-play-guitar-light-strings = Nehmen Sie leichte Saiten, die wenig Druck brauchen.
activity-play-guitar-neck-higher = Halten Sie den Gitarrenhals mit einem Gurt höher. Halten Sie das Handgelenk gerade.
activity-play-guitar-short-bouts = Spielen Sie ein Lied. Dann ruhen Sie die Hand aus.

## Sleep

activity-sleep-position-name = Schlafen
activity-sleep-position-splint-on = Tragen Sie die Schiene nachts, wenn dieses Merkblatt es sagt.
activity-sleep-position-arm-on-pillow = Legen Sie den Arm auf ein Kissen neben sich, so gerade, wie es leicht geht.
activity-sleep-position-soft-towel = Wickeln Sie ein weiches Handtuch locker um den Ellenbogen. So beugt er sich weniger.

## Hold a phone to your ear

activity-hold-phone-to-ear-name = Ein Telefon ans Ohr halten
activity-hold-phone-to-ear-loudspeaker = Nehmen Sie den Lautsprecher oder ein Headset. Legen Sie das Telefon hin.
activity-hold-phone-to-ear-short-calls = Telefonieren Sie kurz. Strecken Sie dazwischen den Arm.
activity-hold-phone-to-ear-other-hand = Halten Sie das Telefon in der anderen Hand.
