### Advice for what is particular about one person.
### Each message is one or two short sentences that stand inside a section of the guide.
### $checks is a number of skin checks a day, $limit a finished length of time.

## Skin that feels little or nothing

factor-numb-skin-look = Trauen Sie Ihren Augen, nicht Ihrem Gefühl. Schauen Sie die Hand von allen Seiten an. Ein Spiegel kann helfen.
factor-numb-skin-strap-room = Schieben Sie eine Fingerspitze der anderen Hand unter jeden Gurt. Sie muss passen.
factor-numb-skin-hot-and-sharp = Prüfen Sie Heißes mit der anderen Hand. Halten Sie Scharfes von tauber Haut fern.

## Thin or tender skin

factor-fragile-skin-no-tape = Kleben Sie kein Pflaster und keine Klebepolster auf die Haut.
factor-fragile-skin-lift = Nehmen Sie die Schiene sanft ab. Sie darf nicht an der Haut reiben oder zerren.
factor-fragile-skin-sleeve = Tragen Sie unter der Schiene einen glatten, trockenen Stoffschlauch aus Baumwolle. Wechseln Sie ihn jeden Tag.

## Swelling

factor-swelling-raise = Legen Sie die Hand beim Sitzen höher als Ihr Herz.
factor-swelling-loosen = Wird ein Gurt eng, lockern Sie ihn ein wenig. Schließen Sie ihn wieder, wenn die Schwellung zurückgeht.
factor-swelling-pump = Bewegen Sie die freien Finger oft. Das hilft, die Schwellung wegzupumpen.

## Diabetes

factor-diabetes-any-break = Rufen Sie uns am selben Tag an, wenn Ihre Haut aufgeht, auch nur ein wenig.

## Easy bleeding

# For people who take something against clotting. No medicine is named, and none is to be stopped.
factor-blood-thinners-bruise = Rufen Sie uns heute an, wenn ein blauer Fleck unter der Schiene wächst.
factor-blood-thinners-no-rubbing = Reiben Sie Ihre Hand nicht stark. Schützen Sie sie vor Stößen.

## Low vision

factor-low-vision-check = Fühlen Sie mit der anderen Hand nach warmen, harten, nassen oder schmerzenden Stellen. Bitten Sie auch jemanden, Ihre Haut anzusehen.
factor-low-vision-dots = Bitten Sie uns um fühlbare Punkte auf den Gurten. So unterscheiden Sie die Gurte.

## Living alone

factor-lives-alone-table = Legen Sie den Arm auf einen Tisch. Der Tisch hält die Schiene, während die andere Hand arbeitet.
factor-lives-alone-ready = Legen Sie weite Kleidung und einfache Mahlzeiten bereit.
factor-lives-alone-phone = Legen Sie unsere Telefonnummer neben Ihr Bett.

## Night work

factor-night-work-main-sleep = Wenn dieses Merkblatt Nacht sagt, meint es Ihren Hauptschlaf.
factor-night-work-after-sleep = Machen Sie die ersten Übungen nach Ihrem Hauptschlaf.

## Rash from foam rubber

factor-neoprene-allergy-itch = Rufen Sie uns an, wenn Ihre Haut juckt, auch nur ein wenig.
factor-neoprene-allergy-spare-parts = Fügen Sie keine Polster, Handschuhe oder Binden aus Schaumgummi hinzu.

## A new baby

factor-new-mother-flat-hands = Heben und füttern Sie Ihr Baby mit flachen Händen. Halten Sie die Daumen neben den Fingern.
factor-new-mother-strap-room = Ihre Hand kann anschwellen. Prüfen Sie jeden Tag, ob eine Fingerspitze unter jeden Gurt passt.
factor-new-mother-edges = Decken Sie harte Kanten mit einem sauberen Tuch ab, bevor Sie Ihr Baby halten.
