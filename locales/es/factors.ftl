### Advice for what is particular about one person.
### Each message is one or two short sentences that stand inside a section of the guide.
### $checks is a number of skin checks a day, $limit a finished length of time.

## Skin that feels little or nothing

factor-numb-skin-look = Confíe en sus ojos, no en lo que siente. Mírese la mano por todos los lados. Un espejo puede ayudar.
factor-numb-skin-strap-room = Meta la punta de un dedo de la otra mano bajo cada correa. Tiene que caber.
factor-numb-skin-hot-and-sharp = Pruebe las cosas calientes con la otra mano. Mantenga las cosas que cortan o pinchan lejos de la piel dormida.

## Thin or tender skin

factor-fragile-skin-no-tape = No se ponga cinta adhesiva ni parches que se pegan a la piel.
factor-fragile-skin-lift = Quítese la férula con suavidad. Que no roce la piel ni tire de ella.
factor-fragile-skin-sleeve = Póngase una manga de algodón lisa y seca debajo de la férula. Cámbiela cada día.

## Swelling

factor-swelling-raise = Cuando se siente en una silla, apoye la mano más alta que el corazón.
factor-swelling-loosen = Si una correa aprieta, aflójela un poco. Vuelva a cerrarla cuando baje la hinchazón.
factor-swelling-pump = Mueva a menudo los dedos libres. Eso ayuda a bajar la hinchazón.

## Diabetes

factor-diabetes-any-break = Llámenos el mismo día si se le abre la piel, aunque sea un poco.

## Easy bleeding

# For people who take something against clotting. No medicine is named, and none is to be stopped.
factor-blood-thinners-bruise = Llámenos hoy mismo si un moretón debajo de la férula crece.
factor-blood-thinners-no-rubbing = No se frote la mano con fuerza. Protéjala de los golpes.

## Low vision

factor-low-vision-check = Con la otra mano, busque zonas calientes, duras, mojadas o que duelan. Pida también a alguien que le mire la piel.
factor-low-vision-dots = Pídanos puntos en relieve para las correas. Así podrá distinguirlas.

## Living alone

factor-lives-alone-table = Apoye el brazo en una mesa. Deje que la mesa sostenga la férula mientras trabaja la otra mano.
factor-lives-alone-ready = Deje lista ropa suelta y comidas fáciles.
factor-lives-alone-phone = Tenga nuestro número de teléfono junto a la cama.

## Night work

factor-night-work-main-sleep = Cuando esta guía dice «noche», quiere decir su sueño principal.
factor-night-work-after-sleep = Haga los primeros ejercicios después de su sueño principal.

## Rash from foam rubber

# “Goma espuma” would be another material; what is meant is the stretchy rubber of soft splints.
factor-neoprene-allergy-itch = Llámenos si le pica la piel, aunque sea un poco.
factor-neoprene-allergy-spare-parts = No añada almohadillas, guantes ni vendas de goma elástica (neopreno).

## A new baby

factor-new-mother-flat-hands = Levante y alimente a su bebé con las manos planas. Mantenga los pulgares junto a los demás dedos.
factor-new-mother-strap-room = Puede que se le hinche la mano. Revise cada día que bajo cada correa quepa la punta de un dedo.
factor-new-mother-edges = Cubra los bordes duros con un paño limpio antes de tomar en brazos a su bebé.
