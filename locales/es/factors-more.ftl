### More advice for what is particular about one person.
### Each message is one or two short sentences that stand inside a section of the guide.
### $checks is a number of skin checks a day, $limit a finished length of time.

## Skin that feels little or nothing

factor-numb-skin-no-packs = No ponga bolsas calientes ni hielo sobre la piel dormida.

## Rash from natural rubber

factor-latex-allergy-itch = Llámenos si le pica la piel, aunque sea un poco.
factor-latex-allergy-gloves = No se ponga guantes de goma (látex) sobre la férula. Use guantes de otro material.
factor-latex-allergy-spare-parts = No añada bandas de goma ni correas elásticas. Pídanos unas que sean seguras.

## Rash from metal

factor-nickel-allergy-itch = Llámenos si le pica la piel, aunque sea un poco.
factor-nickel-allergy-bare-metal = No deje que el metal sin cubrir le toque la piel. Avísenos si lo que lo cubre se desgasta.

## Rash from tape and glue

factor-adhesive-allergy-itch = Llámenos si le pica la piel, aunque sea un poco.
factor-adhesive-allergy-no-tape = No se ponga en la piel cinta adhesiva ni tiritas (curitas). Pídanos correas.
factor-adhesive-allergy-linings = No pegue almohadillas ni forros dentro de la férula.

## Trouble remembering

factor-memory-difficulty-same-times = Siga las mismas horas todos los días. Ponga una alarma para esas horas.
factor-memory-difficulty-tick = Cuelgue esta guía en la pared. Anote una rayita después de cada revisión de la piel.
factor-memory-difficulty-in-sight = Deje la férula siempre en un mismo lugar, a la vista. Lea los pasos cada vez.
factor-memory-difficulty-after-meals = Una los movimientos a cosas que hace siempre, como las comidas.

## Somebody at home who helps

factor-helper-at-home-looks = Pida a quien le ayuda que también le mire la piel.
factor-helper-at-home-reads = Deje que quien le ayuda lea cada paso en voz alta. Deje que también cierre las correas.
factor-helper-at-home-heavy-jobs = Deje a quien le ayuda las tareas que esta guía le pide dejar.

## A child

# The reader may be the child or a grown-up reading aloud.
factor-child-grown-up-looks = Deje que una persona adulta le mire la piel cada vez. Si algo duele, dígalo enseguida.
factor-child-grown-up-helps = Tenga a una persona adulta a su lado cuando la férula se ponga o se quite.
factor-child-school = Lleve una copia de esta guía a la escuela.
factor-child-game = Convierta cada movimiento en un juego.
factor-child-small-parts = Mantenga las correas sueltas y las piezas pequeñas lejos de bebés y niños pequeños.

## Pregnancy

factor-pregnancy-swelling = Puede que algunos días se le hinche la mano. Cuando se siente en una silla, apóyela en un cojín.
factor-pregnancy-strap-room = Revise cada día que bajo cada correa quepa la punta de un dedo.
factor-pregnancy-grooves = Busque líneas profundas de las correas. Avísenos si no se van.

## Work in the heat

factor-heat-work-keep-away = Mantenga la férula lejos de hornos, placas calientes y motores. Pregúntenos antes de trabajar con calor.
factor-heat-work-dry-skin = Séquese el sudor enseguida. Busque piel blanca y blanda.
factor-heat-work-fresh-sleeve = Póngase una manga limpia y seca en cada turno. Si se humedece, cámbiela enseguida.

## Work with food

factor-food-work-ask = Pregunte en su trabajo si se permite una férula cerca de los alimentos. Pregunte cómo cubrirla.
factor-food-work-damp = Un guante sobre la férula guarda la humedad. Después del trabajo, busque piel blanca y blanda.
# “Tírela” could be read as throwing the splint away.
factor-food-work-clean = Limpie la férula después de cada turno. Tire a la basura solo lo que la cubre.

## Work in the wet

factor-wet-work-cover = Cubra la férula, o deje las tareas con agua a otra persona.
factor-wet-work-dry-breaks = Pare a menudo para secarse la piel. Busque piel blanca y blanda.
factor-wet-work-spare-sleeves = Tenga listas mangas de repuesto. Si una se humedece, cámbiela enseguida.

## Work with machines

factor-machinery-moving-parts = No trabaje con máquinas en movimiento con una férula puesta. Pueden enganchar una correa y arrastrar la mano hacia adentro.
factor-machinery-ask = Respete estas horas también en el trabajo. Antes de volver a una máquina, pregúntenos y pregunte en su empresa.

## Slow healing

factor-slow-healing-no-early-end = Su mano necesita todo el tiempo. No termine antes, aunque la sienta bien.
factor-slow-healing-any-break = Llámenos el mismo día si se le abre la piel, aunque sea un poco.
factor-slow-healing-smoke = Si fuma, pídanos ayuda para dejarlo, o pídala a su médico o médica. Con el humo se sana más despacio.

## An open wound, stitches or pins

factor-open-wound-look = Mire lo que se vea de la herida o de los clavos. Llámenos hoy mismo si algo suelta líquido, huele mal o se mueve.
factor-open-wound-dry = Mantenga la mano seca hasta que le digamos que la piel está cerrada.
factor-open-wound-no-rubbing = No frote ni apriete la herida. No toque los puntos ni los clavos.
factor-open-wound-dressing = Mantenga el vendaje limpio y seco. Pregúntenos quién lo cambia.

## Poor blood flow

factor-poor-circulation-colour = Compare las puntas de los dedos con las de la otra mano. Llámenos el mismo día si se le abre la piel.
factor-poor-circulation-strap-room = Meta la punta de un dedo bajo cada correa. Tiene que caber.
factor-poor-circulation-warm = Mantenga la mano caliente con ropa. No le ponga hielo ni bolsas calientes.

## Only one hand to use

factor-one-hand-only-table = Apoye el brazo en una mesa. Ayúdese con el borde de la mesa o con la pierna.
factor-one-hand-only-helper = Donde esta guía dice «otra mano», puede pedir ayuda a alguien.
factor-one-hand-only-mirror = Use un espejo para ver el lado de la mano que no alcanza a ver.

## Strong pain or worry

factor-high-pain-worry-small = Empiece con el movimiento más pequeño de esta lista. Poco y a menudo está bien.
factor-high-pain-worry-rest = Descanse antes de que la mano le duela mucho. Luego siga.
factor-high-pain-worry-call = Llámenos pronto si algo le preocupa. Ninguna pregunta es demasiado pequeña.
