### More advice for what is particular about one person.
### Each message is one or two short sentences that stand inside a section of the guide.
### $checks is a number of skin checks a day, $limit a finished length of time.

## Skin that feels little or nothing

factor-numb-skin-no-packs = Legen Sie keine heißen Packungen und kein Eis auf taube Haut.

## Rash from natural rubber

factor-latex-allergy-itch = Rufen Sie uns an, wenn Ihre Haut juckt, auch nur ein wenig.
factor-latex-allergy-gloves = Ziehen Sie keine Gummihandschuhe über die Schiene. Nehmen Sie andere Handschuhe.
factor-latex-allergy-spare-parts = Fügen Sie keine Gummibänder und keine dehnbaren Gurte hinzu. Bitten Sie uns um sichere.

## Rash from metal

factor-nickel-allergy-itch = Rufen Sie uns an, wenn Ihre Haut juckt, auch nur ein wenig.
factor-nickel-allergy-bare-metal = Kein blankes Metall darf Ihre Haut berühren. Sagen Sie uns, wenn ein Überzug durchgescheuert ist.

## Rash from tape and glue

factor-adhesive-allergy-itch = Rufen Sie uns an, wenn Ihre Haut juckt, auch nur ein wenig.
factor-adhesive-allergy-no-tape = Kleben Sie kein Klebeband und kein Pflaster auf die Haut. Bitten Sie uns um Gurte.
factor-adhesive-allergy-linings = Kleben Sie keine Polster in die Schiene.

## Trouble remembering

factor-memory-difficulty-same-times = Halten Sie jeden Tag dieselben Uhrzeiten ein. Stellen Sie einen Wecker dafür.
factor-memory-difficulty-tick = Hängen Sie dieses Merkblatt an die Wand. Machen Sie nach jeder Hautprüfung einen Haken.
factor-memory-difficulty-in-sight = Legen Sie die Schiene immer an denselben Ort, wo Sie sie sehen. Lesen Sie jedes Mal die Schritte.
factor-memory-difficulty-after-meals = Verbinden Sie die Bewegungen mit Dingen, die Sie sowieso tun, wie Mahlzeiten.

## Somebody at home who helps

factor-helper-at-home-looks = Bitten Sie Ihre Hilfe, auch Ihre Haut anzusehen.
factor-helper-at-home-reads = Ihre Hilfe soll jeden Schritt vorlesen und die Gurte schließen.
factor-helper-at-home-heavy-jobs = Lassen Sie Ihre Hilfe tun, was Sie nach diesem Merkblatt lassen sollen.

## A child

# The reader may be the child or a grown-up reading aloud.
factor-child-grown-up-looks = Lassen Sie jedes Mal einen Erwachsenen Ihre Haut ansehen. Sagen Sie sofort, wenn etwas weh tut.
factor-child-grown-up-helps = Ein Erwachsener soll immer dabei sein, wenn die Schiene angelegt oder abgenommen wird.
factor-child-school = Nehmen Sie eine Kopie dieses Merkblatts mit in die Schule.
factor-child-game = Machen Sie aus jeder Bewegung ein Spiel.
factor-child-small-parts = Halten Sie lose Gurte und kleine Teile von Babys und kleinen Kindern fern.

## Pregnancy

factor-pregnancy-swelling = Ihre Hand kann an manchen Tagen anschwellen. Legen Sie sie beim Sitzen auf ein Kissen.
factor-pregnancy-strap-room = Prüfen Sie jeden Tag, ob eine Fingerspitze unter jeden Gurt passt.
factor-pregnancy-grooves = Achten Sie auf tiefe Linien von den Gurten. Sagen Sie uns, wenn sie bleiben.

## Work in the heat

factor-heat-work-keep-away = Halten Sie die Schiene von Öfen, Herdplatten und Motoren fern. Fragen Sie uns, bevor Sie in Hitze arbeiten.
factor-heat-work-dry-skin = Trocknen Sie Schweiß sofort. Achten Sie auf weiche, weiße Haut.
factor-heat-work-fresh-sleeve = Ziehen Sie für jede Schicht einen frischen, trockenen Stoffschlauch an. Wechseln Sie einen feuchten sofort.

## Work with food

factor-food-work-ask = Fragen Sie bei der Arbeit, ob eine Schiene nahe an Lebensmitteln erlaubt ist. Fragen Sie, wie Sie sie abdecken.
factor-food-work-damp = Ein Handschuh über der Schiene hält Feuchtigkeit darin. Achten Sie nach der Arbeit auf weiche, weiße Haut.
factor-food-work-clean = Reinigen Sie die Schiene nach jeder Schicht. Werfen Sie die Abdeckung weg.

## Work in the wet

factor-wet-work-cover = Decken Sie die Schiene ab oder lassen Sie andere die nassen Arbeiten tun.
factor-wet-work-dry-breaks = Machen Sie oft Pause, um die Haut zu trocknen. Achten Sie auf weiche, weiße Haut.
factor-wet-work-spare-sleeves = Halten Sie Stoffschläuche zum Wechseln bereit. Wechseln Sie einen feuchten sofort.

## Work with machines

factor-machinery-moving-parts = Arbeiten Sie mit Schiene nicht an laufenden Maschinen. Sie können einen Gurt fassen und Ihre Hand hineinziehen.
factor-machinery-ask = Halten Sie diese Zeiten auch bei der Arbeit ein. Fragen Sie uns und Ihren Arbeitgeber, bevor Sie wieder an eine Maschine gehen.

## Slow healing

factor-slow-healing-no-early-end = Ihre Hand braucht die volle Zeit. Hören Sie nicht früher auf, auch wenn es sich gut anfühlt.
factor-slow-healing-any-break = Rufen Sie uns am selben Tag an, wenn Ihre Haut aufgeht, auch nur ein wenig.
factor-slow-healing-smoke = Wenn Sie rauchen, bitten Sie uns oder Ihren Arzt um Hilfe beim Aufhören. Rauch bremst die Heilung.

## An open wound, stitches or pins

factor-open-wound-look = Schauen Sie an, was Sie von Wunde oder Drähten sehen. Rufen Sie uns heute an, wenn etwas nässt, schlecht riecht oder sich bewegt.
factor-open-wound-dry = Halten Sie die Hand trocken, bis wir Ihnen sagen, dass die Haut geschlossen ist.
factor-open-wound-no-rubbing = Reiben und drücken Sie nicht auf der Wunde. Berühren Sie keine Fäden und keine Drähte.
factor-open-wound-dressing = Halten Sie den Verband sauber und trocken. Fragen Sie uns, wer ihn wechselt.

## Poor blood flow

factor-poor-circulation-colour = Vergleichen Sie die Fingerspitzen mit der anderen Hand. Rufen Sie uns am selben Tag an, wenn Ihre Haut aufgeht.
factor-poor-circulation-strap-room = Schieben Sie eine Fingerspitze unter jeden Gurt. Sie muss passen.
factor-poor-circulation-warm = Halten Sie die Hand mit Kleidung warm. Legen Sie kein Eis und keine heißen Packungen darauf.

## Only one hand to use

factor-one-hand-only-table = Legen Sie den Arm auf einen Tisch. Nehmen Sie die Tischkante oder Ihr Bein zu Hilfe.
factor-one-hand-only-helper = Wo dieses Merkblatt von der anderen Hand spricht, können Sie jemanden um Hilfe bitten.
factor-one-hand-only-mirror = Nehmen Sie einen Spiegel, um die abgewandte Seite der Hand zu sehen.

## Strong pain or worry

factor-high-pain-worry-small = Beginnen Sie mit der kleinsten Bewegung dieser Liste. Wenig und oft ist gut.
factor-high-pain-worry-rest = Ruhen Sie aus, bevor die Hand sehr weh tut. Dann machen Sie weiter.
factor-high-pain-worry-call = Rufen Sie uns früh an, wenn Sie etwas beunruhigt. Keine Frage ist zu klein.
