### More activities: what people do with their hands, and easier ways to do it.
### The name stands as a short phrase in a table, such as “Lavar los platos”.
### Every other message is one or two short sentences of advice beside that name.

## More ways for jobs named elsewhere

activity-text-with-thumbs-open-elbow = Apoye el brazo. Mantenga el codo más abierto que la esquina de un cuadrado.
activity-hold-tablet-open-elbow = Sosténgalo más lejos. Mantenga el codo más abierto que la esquina de un cuadrado.
activity-drive-car-open-elbow = Ajuste el asiento. El codo debe abrirse más que la esquina de un cuadrado.
activity-brush-teeth-lean-forward = Inclínese sobre el lavabo. Acerque la cabeza al cepillo.

## Shower and wash your hair

activity-wash-hair-shower-name = Ducharse y lavarse el pelo
activity-wash-hair-shower-arm-bag = Meta la mano con la férula en una bolsa impermeable. Ciérrela bien por arriba.
activity-wash-hair-shower-pump-bottle = Use un frasco con dosificador y una esponja de mango largo.
activity-wash-hair-shower-bend-head = Agache la cabeza. Mantenga el codo más abierto que la esquina de un cuadrado.
activity-wash-hair-shower-other-hand = Lávese con la otra mano, o pida a alguien que le lave el pelo.

## Pull up trousers or socks

activity-pull-up-clothes-name = Subirse el pantalón o los calcetines (medias)
activity-pull-up-clothes-loose-waist = Use ropa holgada, con la cintura blanda.
activity-pull-up-clothes-loops = Cosa lazos por dentro. Pase el antebrazo por ellos y tire.
activity-pull-up-clothes-flat-palms = Siéntese. Empuje la tela hacia arriba con las palmas planas.
activity-pull-up-clothes-other-hand = Tire con la otra mano, o pida ayuda a alguien.

## Fasten a strap behind your back

activity-fasten-back-strap-name = Abrocharse una prenda por la espalda
activity-fasten-back-strap-pull-over = Use una blanda que se ponga por la cabeza.
activity-fasten-back-strap-turn-round = Abróchela por delante. Luego gírela.
activity-fasten-back-strap-front-closing = Elija una que se abroche por delante, con ganchos anchos.
activity-fasten-back-strap-helper = Pida a alguien que la abroche.

## Wipe after the toilet

activity-toilet-wipe-name = Limpiarse después de ir al baño
# “Tírela” could be read as throwing the splint away.
activity-toilet-wipe-cover-splint = Cubra la férula con una bolsa fina. Después, tire la bolsa a la basura.
activity-toilet-wipe-long-wiper = Use un limpiador de mango largo, o un asiento que lave con agua.
activity-toilet-wipe-other-hand = Límpiese con la otra mano.
activity-toilet-wipe-helper = Pida ayuda a alguien de confianza.

## Cut your nails

activity-cut-nails-name = Cortarse las uñas
activity-cut-nails-fixed-clipper = Use un cortaúñas fijo a una tabla. Presiónelo con la palma.
activity-cut-nails-file = Límese las uñas con una lima ancha. Sujétela sin apretar.
activity-cut-nails-few-at-once = Córtese unas pocas uñas cada día.
activity-cut-nails-helper = Pida a alguien que se las corte.

## Tie shoe laces

activity-tie-laces-name = Atarse los cordones
activity-tie-laces-slip-on = Use zapatos que se pongan sin atar. Use un calzador largo.
activity-tie-laces-stretch-laces = Use cordones elásticos que queden siempre atados.
activity-tie-laces-helper = Pida a alguien que se los ate.

## Open a ring-pull can or a bottle cap

activity-ring-pull-cap-name = Abrir una lata con anilla o el tapón de una botella
activity-ring-pull-cap-lever-opener = Use una palanca que levante la anilla por usted.
activity-ring-pull-cap-cap-grip = Ponga una lámina de goma sobre el tapón. Gírelo con la palma plana.
activity-ring-pull-cap-easy-packs = Compre envases que se abran sin fuerza.
activity-ring-pull-cap-helper = Pida a alguien que se lo abra.

## Chop vegetables

activity-chop-vegetables-name = Cortar verduras
activity-chop-vegetables-upright-knife = Use un cuchillo que corte meciéndolo, o uno de mango vertical.
activity-chop-vegetables-cook-first = Primero cocínelas. La comida blanda necesita menos fuerza.
activity-chop-vegetables-ready-cut = Compre verduras ya cortadas.
activity-chop-vegetables-helper = Pida a alguien que las corte.

## Wash the dishes

activity-wash-dishes-name = Lavar los platos
activity-wash-dishes-long-brush = Use agua fresca y un cepillo de mango largo.
activity-wash-dishes-soak-first = Primero deje los platos en remojo. Luego límpielos con suavidad.
activity-wash-dishes-dishwasher = Use un lavavajillas. Meta cosas ligeras, una por una.
activity-wash-dishes-helper = Pida a alguien que los lave.

## Knead dough or stir a thick mix

activity-knead-dough-name = Amasar o revolver una mezcla espesa
activity-knead-dough-upright-spoon = Ponga el tazón sobre un paño mojado. Revuelva desde el hombro, con la cuchara vertical.
activity-knead-dough-thin-mix = Haga la mezcla menos espesa, y haga menos cantidad.
activity-knead-dough-mixer = Deje que la mezcle una máquina.
activity-knead-dough-helper = Pida a alguien que amase.

## Carry plates or a tray

activity-carry-plates-name = Llevar platos o una bandeja
activity-carry-plates-flat-palms = Meta las dos palmas planas por debajo. Llévelo cerca del cuerpo.
activity-carry-plates-trolley = Empújelos en un carrito.
activity-carry-plates-one-by-one = Lleve los platos de uno en uno. Deje que antes se enfríen los calientes.
activity-carry-plates-helper = Pida a alguien que los lleve.

## Eat with knife and fork

activity-eat-with-cutlery-name = Comer con cuchillo y tenedor
activity-eat-with-cutlery-fat-handles = Use cubiertos de mango largo y grueso.
activity-eat-with-cutlery-rocking-knife = Use un cuchillo que corte meciéndolo.
activity-eat-with-cutlery-soft-food = Elija comida blanda que no necesite cuchillo.
activity-eat-with-cutlery-other-hand = Coma con la otra mano. Pida a alguien que le corte la comida.

## Turn a door knob or a tap

activity-turn-door-knob-name = Girar un pomo (perilla) o un grifo
activity-turn-door-knob-lever-handle = Póngale encima una palanca. Presione la palanca con el antebrazo.
activity-turn-door-knob-leave-open = Deje un poco abiertas las puertas de dentro de casa. Empújelas con la cadera.
activity-turn-door-knob-other-hand = Gírelo con la otra mano.
activity-turn-door-knob-helper = Pida a alguien que lo gire.

## Vacuum the floor

activity-vacuum-name = Pasar la aspiradora
activity-vacuum-walk-along = Mantenga el codo junto al cuerpo. Camine con la aspiradora.
activity-vacuum-light-cleaner = Use una aspiradora ligera, o una que se mueva sola.
activity-vacuum-one-room = Pásela en una habitación. Luego descanse la mano.
activity-vacuum-helper = Pida a alguien que la pase.

## Hang up the washing

activity-hang-washing-name = Tender la ropa
activity-hang-washing-hangers = Cuelgue la ropa en perchas, o póngala sobre un tendedero.
activity-hang-washing-soft-pegs = Use pinzas que se abran con facilidad.
activity-hang-washing-small-loads = Lave poca ropa cada vez. Centrifúguela bien.
activity-hang-washing-helper = Pida a alguien que la tienda.

## Scrub the bath

activity-scrub-bath-name = Fregar la bañera (tina)
activity-scrub-bath-long-handle = Use una esponja con un mango largo y grueso.
activity-scrub-bath-let-soak = Rocíe, espere y enjuague. No frote.
activity-scrub-bath-short-bouts = Limpie una parte pequeña cada día.
activity-scrub-bath-helper = Pida a alguien que la limpie.

## Push up from a chair

activity-rise-from-chair-name = Levantarse de una silla con las manos
activity-rise-from-chair-high-seat = Siéntese en un asiento más alto y firme. Así es más fácil levantarse con las piernas.
activity-rise-from-chair-legs-first = Deslícese hacia delante e inclínese hacia delante. Empuje con las piernas.
activity-rise-from-chair-forearm-rest = Empuje con el antebrazo sobre el brazo de la silla, no con la mano.
activity-rise-from-chair-other-hand = Empuje con la otra mano, o pida a alguien que le ayude a levantarse.

## Iron clothes

activity-iron-clothes-name = Planchar la ropa
activity-iron-clothes-light-iron = Use una plancha pequeña y ligera.
activity-iron-clothes-hang-smooth = Cuelgue la ropa húmeda y bien lisa. Muchas prendas no necesitan plancha.
activity-iron-clothes-few-pieces = Planche unas pocas prendas. Luego descanse la mano.
activity-iron-clothes-other-hand = Planche con la otra mano, o pida a alguien que planche.

## Make the bed

activity-make-bed-name = Hacer la cama
activity-make-bed-light-covers = Use una sola manta ligera y sábanas sueltas.
activity-make-bed-flat-hands = Coloque las sábanas empujando con las manos planas y los antebrazos.
activity-make-bed-few-corners = No levante el colchón. Deje sueltas las esquinas.
activity-make-bed-helper = Pida a alguien que la haga.

## Lean on a walking stick or frame

activity-lean-on-stick-name = Apoyarse en un bastón o un andador
activity-lean-on-stick-wide-grip = Pídanos que revisemos la altura. Un mango ancho y blando ayuda.
activity-lean-on-stick-forearm-rest = Pídanos uno en el que se apoye el antebrazo. No camine sin apoyo.
activity-lean-on-stick-other-hand = Pregúntenos si puede sujetarlo con la otra mano. No camine sin apoyo.

## Hold a dog lead

activity-hold-dog-lead-name = Sujetar la correa de un perro
activity-hold-dog-lead-waist-lead = Use una correa que se ponga alrededor de la cintura.
activity-hold-dog-lead-calm-walks = Dé paseos cortos y tranquilos, con un arnés que evite los tirones.
activity-hold-dog-lead-helper = Pida a alguien que sujete la correa. Nunca se la enrolle en los dedos.

## Use a screwdriver

activity-use-screwdriver-name = Usar un destornillador
activity-use-screwdriver-powered-driver = Use un destornillador ligero con motor.
activity-use-screwdriver-fat-handle = Use un mango grueso que gire por pasos pequeños.
activity-use-screwdriver-elbow-in = Mantenga el codo junto al cuerpo. Empuje con el peso del cuerpo.
activity-use-screwdriver-helper = Pida a alguien que ponga los tornillos.

## Use a hammer

activity-hammer-name = Usar un martillo
activity-hammer-light-hammer = Use un martillo ligero, de mango blando y grueso.
activity-hammer-few-nails = Clave unos pocos clavos. Luego descanse la mano.
activity-hammer-helper = Pida a alguien que use el martillo.

## Use a power drill

activity-power-drill-name = Usar un taladro eléctrico
activity-power-drill-light-drill = Use un taladro ligero con un mango lateral.
activity-power-drill-two-hands = Sujételo con las dos manos, con los codos junto al cuerpo.
activity-power-drill-short-bouts = Haga un agujero. Luego descanse la mano.
activity-power-drill-helper = Pida a alguien que taladre.

## Lift boxes

activity-lift-boxes-name = Levantar cajas
activity-lift-boxes-palms-under = Ponga las palmas hacia arriba. Meta los antebrazos por debajo y quédese cerca.
activity-lift-boxes-half-load = Llene las cajas solo hasta la mitad.
activity-lift-boxes-trolley = Empújelas en un carrito. No las levante del suelo.
activity-lift-boxes-helper = Pida a alguien que las levante.

## Pick up small parts or coins

activity-handle-small-parts-name = Recoger piezas pequeñas o monedas
activity-handle-small-parts-soft-tray = Póngalas sobre un tapete blando. Deslícelas hasta que salgan por el borde.
activity-handle-small-parts-wide-tweezers = Use pinzas de agarre ancho y blando, o un imán.
activity-handle-small-parts-pauses = Recoja unas pocas. Luego descanse la mano.
activity-handle-small-parts-other-hand = Recójalas con la otra mano.

## Hold a baby to feed

activity-feed-baby-name = Sostener a un bebé para alimentarlo
activity-feed-baby-firm-pillow = Acueste al bebé en una almohada firme. Deje que la almohada sostenga el peso.
activity-feed-baby-straight-wrist = Apoye la cabeza del bebé en el hueco del codo. Mantenga la muñeca recta.
activity-feed-baby-change-sides = Cambie de lado a menudo. Estire el brazo entre un lado y otro.
activity-feed-baby-helper = Pida a alguien que coloque al bebé y se quede cerca.

## Change a nappy

activity-change-nappy-name = Cambiar un pañal
activity-change-nappy-easy-tabs = Elija pañales con tiras anchas que se abran con facilidad.
activity-change-nappy-roll-baby = Gire al bebé hacia un lado. No le levante los dos pies.
activity-change-nappy-wipes-ready = Deje todo a mano, abierto y listo, antes de empezar.
activity-change-nappy-other-hand = Use la otra mano para las tiras, o pida a alguien que lo cambie.

## Buckle a child seat

activity-buckle-child-seat-name = Abrochar la silla infantil del auto
activity-buckle-child-seat-buckle-key = Use una palanca hecha para presionar hebillas.
activity-buckle-child-seat-knuckle = Presione el botón con un nudillo doblado.
activity-buckle-child-seat-helper = Use la otra mano, o pida ayuda a alguien. Revise que la hebilla esté cerrada.

## Push a pram

activity-push-pram-name = Empujar un cochecito de bebé
activity-push-pram-open-palms = Empuje con las palmas abiertas.
activity-push-pram-high-bar = Ponga la barra alta y acolchada. Apoye en ella los antebrazos.
activity-push-pram-helper = Empuje con la otra mano, o pida a alguien que empuje.

## Dig

activity-dig-name = Cavar
activity-dig-small-spade = Use una pala pequeña y ligera, de mango largo.
activity-dig-foot-pushes = Deje que el pie empuje la pala.
activity-dig-short-bouts = Tome media palada cada vez. Pare después de unas pocas.
activity-dig-helper = Pida a alguien que cave. Usted indica dónde.

## Pull weeds

activity-pull-weeds-name = Arrancar malas hierbas
activity-pull-weeds-long-weeder = Use una azada o un desyerbador de mango largo y grueso.
activity-pull-weeds-after-rain = Arránquelas después de la lluvia, cuando las raíces salen con facilidad.
activity-pull-weeds-short-bouts = Limpie un trozo pequeño. Luego descanse la mano.
activity-pull-weeds-helper = Pida a alguien que las arranque. Usted indica dónde.

## Water plants

activity-water-plants-name = Regar las plantas
activity-water-plants-two-hands = Sujete la regadera con las dos manos, cerca del cuerpo.
activity-water-plants-little-water = Llene la regadera solo un poco.
activity-water-plants-hose = Use una manguera con una palanca que se quede abierta.
activity-water-plants-helper = Riegue con la otra mano, o pida ayuda a alguien.

## Fasten a seat belt

activity-fasten-seat-belt-name = Abrocharse el cinturón de seguridad
activity-fasten-seat-belt-belt-handle = Ponga en el cinturón un asa fácil de alcanzar.
activity-fasten-seat-belt-knuckle = Presione el cierre con un nudillo doblado.
activity-fasten-seat-belt-other-hand = Cruce el cinturón con la otra mano. Pida a alguien que lo cierre.

## Ride a bicycle

activity-cycle-name = Montar en bicicleta
activity-cycle-high-bar = Suba el manillar (manubrio). Use mangos blandos y gruesos.
activity-cycle-short-rides = Haga un recorrido corto por caminos lisos.
activity-cycle-indoor-bike = Use una bicicleta fija. Siéntese con la espalda recta y deje descansar las manos.

## Lift weights

activity-lift-weights-name = Levantar pesas
activity-lift-weights-half-weight = Use la mitad del peso. Haga menos repeticiones.
activity-lift-weights-forearm-cuff = Tire con un brazalete puesto en el antebrazo. No agarre una barra.
activity-lift-weights-legs-only = Entrene las piernas y el tronco. No sujete nada.

## Do press-ups or yoga

activity-press-ups-yoga-name = Hacer flexiones de brazos o yoga
activity-press-ups-yoga-legs-only = Elija posturas sobre las piernas, la espalda o el costado.
activity-press-ups-yoga-straight-wrist = Sujete asas fijas, para que la muñeca quede recta.
activity-press-ups-yoga-fewer = Apóyese en una pared, no en el suelo.

## Swim

activity-swim-name = Nadar
activity-swim-float = Apoye los antebrazos en un flotador. Nade con las piernas.
activity-swim-dry-at-once = Séquese la piel y seque la férula en cuanto salga del agua.
activity-swim-short-swim = Nade poco tiempo.

## Play the guitar

activity-play-guitar-name = Tocar la guitarra
activity-play-guitar-light-strings = Use cuerdas ligeras que necesiten poca presión.
activity-play-guitar-neck-higher = Use una correa para llevar el mástil más alto. Mantenga la muñeca recta.
activity-play-guitar-short-bouts = Toque una canción. Luego descanse la mano.

## Sleep

activity-sleep-position-name = Dormir
activity-sleep-position-splint-on = Use la férula de noche cuando lo diga esta guía.
activity-sleep-position-arm-on-pillow = Ponga el brazo sobre una almohada a su lado, tan recto como le resulte fácil.
activity-sleep-position-soft-towel = Envuelva el codo con una toalla blanda, sin apretar. Así se dobla menos.

## Hold a phone to your ear

activity-hold-phone-to-ear-name = Sostener el teléfono junto a la oreja
activity-hold-phone-to-ear-loudspeaker = Use el altavoz o unos auriculares. Deje el teléfono apoyado en la mesa.
activity-hold-phone-to-ear-short-calls = Haga llamadas cortas. Estire el brazo entre una y otra.
activity-hold-phone-to-ear-other-hand = Sostenga el teléfono con la otra mano.
