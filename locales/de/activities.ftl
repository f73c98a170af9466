### Activities: what people do with their hands, and easier ways to do it.
### The name stands as a short order in a table, such as “Open a jar”.
### Every other message is one or two short sentences of advice beside that name.

## Open a jar

activity-open-jar-name = Ein Glas öffnen
activity-open-jar-jar-opener = Nehmen Sie einen Glasöffner, der an Wand oder Tisch befestigt ist.
activity-open-jar-break-seal = Hebeln Sie den Deckel zuerst mit dem Stiel eines Löffels an. Dann dreht er sich mit weniger Kraft.
activity-open-jar-flat-palm = Stellen Sie das Glas in eine Schublade. Drücken Sie die flache Handfläche auf den Deckel und drehen Sie den Körper.
activity-open-jar-helper = Bitten Sie jemanden, es für Sie zu öffnen.

## Turn a key

activity-turn-key-name = Einen Schlüssel drehen
activity-turn-key-key-turner = Stecken Sie einen breiten Griff auf den Schlüssel. Halten Sie ihn mit der ganzen Hand.
activity-turn-key-other-hand = Drehen Sie den Schlüssel mit der anderen Hand.
activity-turn-key-oil-lock = Ölen Sie das Schloss, damit es leicht geht.

## Lift a baby

activity-lift-baby-name = Ein Baby heben
activity-lift-baby-scoop = Heben Sie mit den Handflächen nach oben, die Daumen neben den Fingern. Schieben Sie einen Arm unter den Po, einen hinter den Rücken.
activity-lift-baby-chest-first = Nehmen Sie das Baby nah an die Brust, bevor Sie aufstehen.
activity-lift-baby-raise-changing-place = Stellen Sie den Wickelplatz höher. Dann heben Sie weniger weit.
activity-lift-baby-helper = Bitten Sie jemanden, Ihnen das Baby zu geben.

## Lift a full pan

activity-lift-pan-name = Einen vollen Topf heben
activity-lift-pan-half-full = Füllen Sie den Topf nur halb.
activity-lift-pan-slide = Schieben Sie den Topf über die Fläche. Heben Sie ihn nicht.
activity-lift-pan-two-handles = Nehmen Sie einen leichten Topf mit zwei Griffen. Die andere Hand trägt den größten Teil.
activity-lift-pan-helper = Bitten Sie jemanden, den Topf zu heben.

## Pour from a kettle

activity-pour-kettle-name = Aus dem Wasserkocher gießen
activity-pour-kettle-one-cup = Kochen Sie nur eine Tasse Wasser.
activity-pour-kettle-tipper = Nehmen Sie ein Gestell, das den Wasserkocher für Sie kippt.
activity-pour-kettle-other-hand = Gießen Sie mit der anderen Hand. Halten Sie die Hand mit der Schiene vom Dampf fern.

## Carry shopping

activity-carry-shopping-name = Einkäufe tragen
activity-carry-shopping-backpack = Nehmen Sie einen Rucksack oder einen Einkaufsroller.
activity-carry-shopping-split-load = Verteilen Sie die Last auf kleine Taschen. Gehen Sie zweimal.
activity-carry-shopping-over-forearm = Hängen Sie eine leichte Tasche über den Unterarm, nie an die Finger.
activity-carry-shopping-helper = Bitten Sie jemanden, die Taschen zu tragen, oder lassen Sie liefern.

## Text with your thumbs

activity-text-with-thumbs-name = Mit den Daumen tippen
activity-text-with-thumbs-speak-text = Sprechen Sie die Nachricht. Lassen Sie das Telefon schreiben.
activity-text-with-thumbs-phone-on-table = Legen Sie das Telefon auf einen Tisch. Tippen Sie mit dem Zeigefinger.
activity-text-with-thumbs-short-texts = Schreiben Sie kurze Nachrichten. Ruhen Sie die Hand dazwischen aus.

## Hold a tablet or a book

activity-hold-tablet-name = Ein Tablet oder Buch halten
activity-hold-tablet-stand = Stellen Sie es auf einen Ständer.
activity-hold-tablet-on-lap = Legen Sie es auf ein Kissen auf dem Schoß.
activity-hold-tablet-swap-hands = Wechseln Sie oft die Hand.

## Write by hand

activity-write-by-hand-name = Mit der Hand schreiben
activity-write-by-hand-fat-pen = Nehmen Sie einen dicken, weichen Stift, der fast ohne Druck gleitet.
activity-write-by-hand-dictate = Sprechen oder tippen Sie den Text.
activity-write-by-hand-pauses = Schreiben Sie ein paar Zeilen. Dann legen Sie den Stift weg und ruhen aus.
activity-write-by-hand-helper = Bitten Sie jemanden, für Sie zu schreiben.

## Type on a keyboard

activity-type-on-keyboard-name = Auf der Tastatur tippen
activity-type-on-keyboard-fingers-for-space = Drücken Sie die Leertaste mit einem Finger der anderen Hand.
activity-type-on-keyboard-low-keyboard = Nehmen Sie eine flache Tastatur. Legen Sie die Unterarme auf.
activity-type-on-keyboard-pauses = Machen Sie oft Pause und lassen Sie die Hände ruhig liegen.

## Use a computer mouse

activity-use-mouse-name = Eine Computermaus benutzen
activity-use-mouse-other-hand = Bewegen Sie die Maus mit der anderen Hand.
activity-use-mouse-upright-mouse = Versuchen Sie eine Maus, die Sie aufrecht halten, wie beim Händedruck.
activity-use-mouse-touch-pad = Nehmen Sie ein Touchpad und einen Finger.

## Do up buttons

activity-do-up-buttons-name = Knöpfe schließen
activity-do-up-buttons-button-hook = Nehmen Sie einen Knopfhaken.
activity-do-up-buttons-pull-on-clothes = Tragen Sie Kleidung, die Sie nur überziehen.
activity-do-up-buttons-other-hand = Lassen Sie die andere Hand knöpfen. Halten Sie nur den Stoff flach.

## Peel vegetables

activity-peel-vegetables-name = Gemüse schälen
activity-peel-vegetables-fat-peeler = Nehmen Sie einen Schäler mit dickem Griff und breiter Klinge.
activity-peel-vegetables-leave-skins = Lassen Sie die Schale dran oder kaufen Sie fertig geputztes Gemüse.
activity-peel-vegetables-short-bouts = Schälen Sie ein paar Stücke. Dann ruhen Sie die Hand aus.
activity-peel-vegetables-helper = Bitten Sie jemanden zu schälen.

## Wring out a cloth

activity-wring-cloth-name = Einen Lappen auswringen
activity-wring-cloth-press-flat = Drücken Sie den Lappen flach gegen die Seite des Spülbeckens.
activity-wring-cloth-sponge = Nehmen Sie einen Schwamm. Drücken Sie ihn sanft aus.
activity-wring-cloth-other-hand = Legen Sie den Lappen um den Wasserhahn. Drehen Sie ihn mit der anderen Hand.

## Prune plants

activity-prune-plants-name = Pflanzen schneiden
activity-prune-plants-ratchet = Nehmen Sie eine Schere, die in kleinen Schritten schneidet.
activity-prune-plants-thin-stems = Schneiden Sie nur dünne Zweige. Hören Sie auf, bevor der Daumen weh tut.
activity-prune-plants-helper = Bitten Sie jemanden zu schneiden. Sie wählen die Zweige.

## Cut with scissors

activity-use-scissors-name = Mit der Schere schneiden
activity-use-scissors-spring-scissors = Nehmen Sie eine Schere, die von selbst aufspringt.
activity-use-scissors-roller-cutter = Nehmen Sie einen Rollschneider auf einem Brett.
activity-use-scissors-short-bouts = Schneiden Sie immer nur ein wenig.
activity-use-scissors-helper = Bitten Sie jemanden, es für Sie zu schneiden.

## Wash your hands

activity-wash-hands-name = Die Hände waschen
activity-wash-hands-pump-soap = Nehmen Sie einen Seifenspender und einen Hahn mit Hebel.
activity-wash-hands-wipe-down = Waschen Sie die Finger, die Sie sehen. Wischen Sie den Rest mit einem feuchten Tuch ab.
activity-wash-hands-take-off = Nehmen Sie die Schiene ab. Waschen Sie die Hand und trocknen Sie sie gut. Dann legen Sie die Schiene wieder an.

## Drive a car

activity-drive-car-name = Auto fahren
activity-drive-car-wheel-cover = Ziehen Sie einen dicken, weichen Bezug über das Lenkrad.
activity-drive-car-short-trips = Fahren Sie nur kurze Strecken. Halten Sie an und ruhen Sie die Hand aus.
activity-drive-car-helper = Lassen Sie jemand anderen fahren.

## Knit or crochet

activity-knit-name = Stricken oder häkeln
activity-knit-fat-needles = Nehmen Sie leichte, dicke Nadeln und weiches Garn.
activity-knit-work-on-lap = Legen Sie die Arbeit auf den Schoß. Legen Sie ein Kissen unter die Ellenbogen.
activity-knit-short-bouts = Machen Sie eine Reihe. Dann ruhen Sie die Hand aus.

## Play a racket sport

activity-racket-sport-name = Mit dem Schläger spielen
activity-racket-sport-soft-strings = Nehmen Sie einen dickeren Griff und weichere Saiten.
activity-racket-sport-two-hands = Schlagen Sie mit beiden Händen.
activity-racket-sport-half-time = Spielen Sie nur halb so lange.

## Brush your teeth

activity-brush-teeth-name = Die Zähne putzen
activity-brush-teeth-fat-handle = Nehmen Sie eine Bürste mit dickem Griff oder mit Motor.
activity-brush-teeth-other-hand = Putzen Sie mit der anderen Hand.

## Pull up a zip

activity-fasten-zip-name = Einen Reißverschluss schließen
activity-fasten-zip-zip-ring = Machen Sie einen Ring an den Reißverschluss. Ziehen Sie ihn mit gekrümmtem Finger.
activity-fasten-zip-other-hand = Ziehen Sie den Reißverschluss mit der anderen Hand.
