### Activities: what people do with their hands, and easier ways to do it.
### The name stands as a short phrase in a table, such as “Abrir un frasco”.
### Every other message is one or two short sentences of advice beside that name.

## Open a jar

activity-open-jar-name = Abrir un frasco
activity-open-jar-jar-opener = Use un abridor de frascos fijo a la pared o a la mesa.
activity-open-jar-break-seal = Primero haga entrar aire bajo la tapa con el mango de una cuchara. Así la tapa gira con menos fuerza.
activity-open-jar-flat-palm = Ponga el frasco de pie en un cajón. Presione la tapa con la palma plana y gire el cuerpo.
activity-open-jar-helper = Pida a alguien que lo abra.

## Turn a key

activity-turn-key-name = Girar una llave
activity-turn-key-key-turner = Póngale a la llave un mango ancho. Sujétela con toda la mano.
activity-turn-key-other-hand = Gire la llave con la otra mano.
activity-turn-key-oil-lock = Engrase la cerradura para que gire con facilidad.

## Lift a baby

activity-lift-baby-name = Levantar a un bebé
activity-lift-baby-scoop = Ponga las palmas hacia arriba y los pulgares junto a los demás dedos. Pase un brazo bajo las nalgas y el otro por la espalda.
activity-lift-baby-chest-first = Acerque el bebé a su pecho antes de ponerse de pie.
activity-lift-baby-raise-changing-place = Ponga el cambiador más alto. Así levanta al bebé menos distancia.
activity-lift-baby-helper = Pida a alguien que le pase el bebé.

## Lift a full pan

activity-lift-pan-name = Levantar una olla llena
activity-lift-pan-half-full = Llene la olla solo hasta la mitad.
activity-lift-pan-slide = Deslice la olla sobre la superficie. No la levante.
activity-lift-pan-two-handles = Use una olla ligera con dos asas. Deje casi todo el peso a la otra mano.
activity-lift-pan-helper = Pida a alguien que levante la olla.

## Pour from a kettle

activity-pour-kettle-name = Servir agua del hervidor
activity-pour-kettle-one-cup = Hierva solo una taza de agua.
activity-pour-kettle-tipper = Use un soporte que incline el hervidor por usted.
activity-pour-kettle-other-hand = Sirva con la otra mano. Mantenga la mano de la férula lejos del vapor.

## Carry shopping

activity-carry-shopping-name = Llevar las compras
activity-carry-shopping-backpack = Use una mochila o un carrito.
activity-carry-shopping-split-load = Reparta la carga en bolsas pequeñas. Haga dos viajes.
activity-carry-shopping-over-forearm = Cuelgue una bolsa ligera del antebrazo, nunca de los dedos.
activity-carry-shopping-helper = Pida a alguien que lleve las bolsas, o que se las traigan a casa.

## Text with your thumbs

activity-text-with-thumbs-name = Escribir mensajes con los pulgares
activity-text-with-thumbs-speak-text = Dicte el mensaje y deje que el teléfono lo escriba.
activity-text-with-thumbs-phone-on-table = Ponga el teléfono en una mesa. Toque la pantalla con el dedo índice.
activity-text-with-thumbs-short-texts = Escriba mensajes cortos. Descanse la mano entre uno y otro.

## Hold a tablet or a book

activity-hold-tablet-name = Sostener una tableta o un libro
activity-hold-tablet-stand = Use un soporte.
activity-hold-tablet-on-lap = Use un cojín sobre las piernas como apoyo.
activity-hold-tablet-swap-hands = Cambie de mano a menudo.

## Write by hand

activity-write-by-hand-name = Escribir a mano
activity-write-by-hand-fat-pen = Use un bolígrafo grueso y blando que se deslice con poca presión.
activity-write-by-hand-dictate = Dicte o teclee el texto.
activity-write-by-hand-pauses = Escriba unas líneas. Luego suelte el bolígrafo y descanse.
activity-write-by-hand-helper = Pida a alguien que escriba por usted.

## Type on a keyboard

activity-type-on-keyboard-name = Escribir en un teclado
activity-type-on-keyboard-fingers-for-space = Pulse la barra espaciadora con un dedo de la otra mano.
activity-type-on-keyboard-low-keyboard = Use un teclado plano. Deje apoyados los antebrazos.
activity-type-on-keyboard-pauses = Pare a menudo y deje las manos quietas.

## Use a computer mouse

activity-use-mouse-name = Usar el ratón (mouse)
activity-use-mouse-other-hand = Mueva el ratón con la otra mano.
activity-use-mouse-upright-mouse = Pruebe un ratón vertical, que se sujeta como al dar la mano.
activity-use-mouse-touch-pad = Use un panel táctil con un solo dedo.

## Do up buttons

activity-do-up-buttons-name = Abrochar botones
activity-do-up-buttons-button-hook = Use un gancho para abrochar botones.
activity-do-up-buttons-pull-on-clothes = Use ropa que no haya que abrochar.
activity-do-up-buttons-other-hand = Deje que la otra mano abroche los botones. Solo mantenga la tela plana.

## Peel vegetables

activity-peel-vegetables-name = Pelar verduras
activity-peel-vegetables-fat-peeler = Use un pelador de mango grueso y hoja ancha.
activity-peel-vegetables-leave-skins = No pele las verduras, o cómprelas listas para cocinar.
activity-peel-vegetables-short-bouts = Pele unas pocas. Luego descanse la mano.
activity-peel-vegetables-helper = Pida a alguien que las pele.

## Wring out a cloth

activity-wring-cloth-name = Escurrir un trapo
activity-wring-cloth-press-flat = Aplaste el trapo contra el borde del fregadero.
activity-wring-cloth-sponge = Use una esponja. Apriétela con suavidad.
activity-wring-cloth-other-hand = Pase el trapo alrededor del grifo. Retuérzalo con la otra mano.

## Prune plants

activity-prune-plants-name = Podar plantas
activity-prune-plants-ratchet = Use tijeras que corten por pasos, poco a poco.
activity-prune-plants-thin-stems = Corte solo tallos finos. Pare antes de que le duela el pulgar.
activity-prune-plants-helper = Pida a alguien que corte. Usted elige las ramas.

## Cut with scissors

activity-use-scissors-name = Cortar con tijeras
activity-use-scissors-spring-scissors = Use tijeras con resorte, que se abren solas.
activity-use-scissors-roller-cutter = Use un cortador de rueda sobre una tabla.
activity-use-scissors-short-bouts = Corte un poco cada vez.
activity-use-scissors-helper = Pida a alguien que se lo corte.

## Wash your hands

activity-wash-hands-name = Lavarse las manos
activity-wash-hands-pump-soap = Use un dosificador de jabón y un grifo de palanca.
activity-wash-hands-wipe-down = Lávese los dedos que quedan a la vista. Limpie lo demás con un paño húmedo.
activity-wash-hands-take-off = Quítese la férula. Lávese, séquese bien y vuelva a ponérsela.

## Drive a car

activity-drive-car-name = Conducir un auto
activity-drive-car-wheel-cover = Ponga una funda gruesa y blanda en el volante.
activity-drive-car-short-trips = Haga viajes cortos. Pare y descanse la mano.
activity-drive-car-helper = Deje que conduzca otra persona.

## Knit or crochet

activity-knit-name = Tejer con agujas o ganchillo (crochet)
activity-knit-fat-needles = Use agujas ligeras y gruesas, y lana suave.
activity-knit-work-on-lap = Apoye la labor en el regazo. Ponga un cojín debajo de los codos.
activity-knit-short-bouts = Teja una vuelta. Luego descanse la mano.

## Play a racket sport

activity-racket-sport-name = Jugar a un deporte de raqueta
activity-racket-sport-soft-strings = Use un mango más grueso y cuerdas más blandas.
activity-racket-sport-two-hands = Golpee con las dos manos.
activity-racket-sport-half-time = Juegue la mitad del tiempo.

## Brush your teeth

activity-brush-teeth-name = Cepillarse los dientes
activity-brush-teeth-fat-handle = Use un cepillo de mango grueso o un cepillo eléctrico.
activity-brush-teeth-other-hand = Cepíllese con la otra mano.

## Pull up a zip

activity-fasten-zip-name = Subir una cremallera (cierre)
activity-fasten-zip-zip-ring = Ponga una anilla en la cremallera. Tire de ella con un dedo en forma de gancho.
activity-fasten-zip-other-hand = Tire de la cremallera con la otra mano.
