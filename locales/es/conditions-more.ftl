### Conditions of tendons after repair, of nerves, of the elbow, of sore joints and of burns.
### The name, what is wrong, and what the splint does. Words for a reader of about twelve; nothing is said to be cured.
### “Dedos” includes the thumb in Spanish: where the splint leaves it out, the text says “menos el pulgar”.

## Repaired tendons

condition-flexor-zone-two-repair-name = Reparación del tendón que dobla el dedo
condition-flexor-zone-two-repair-what = Se cortaron los tendones que doblan el dedo, y se los cosieron. Agarrar algo o estirar el dedo puede romper los puntos.
condition-flexor-zone-two-repair-aim = La férula protege los puntos mientras sana el dedo. Evita que los dedos, menos el pulgar, se estiren demasiado.
condition-extensor-zone-three-repair-name = Reparación del tendón sobre la articulación central del dedo
condition-extensor-zone-three-repair-what = Se cortó el tendón que estira la articulación central, y se lo cosieron. Doblarla una sola vez puede soltar los puntos.
condition-extensor-zone-three-repair-aim = La férula mantiene recta la articulación central mientras sana el tendón.
condition-extensor-zone-five-six-repair-name = Reparación del tendón del dorso de la mano
condition-extensor-zone-five-six-repair-what = Se cortó el tendón que levanta el dedo, y se lo cosieron. Un puño completo puede soltar los puntos.
condition-extensor-zone-five-six-repair-aim = La férula mantiene levantado el nudillo grande del dedo. Así nada tira de los puntos.

## Nerves

condition-carpal-tunnel-name = Nervio apretado en la muñeca (túnel carpiano)
condition-carpal-tunnel-what = Un nervio pasa por un túnel estrecho de la muñeca. La muñeca doblada lo aprieta, sobre todo al dormir.
condition-carpal-tunnel-aim = La férula mantiene recta la muñeca. Así el nervio tiene más espacio.
condition-carpal-tunnel-release-name = Después de la operación de un nervio apretado en la muñeca
condition-carpal-tunnel-release-what = Le abrieron el techo del túnel de la muñeca. La herida tiene que sanar, y los dedos tienen que moverse.
condition-carpal-tunnel-release-aim = La férula deja descansar la muñeca los primeros días. Los dedos quedan libres para moverse.
condition-cubital-tunnel-name = Nervio apretado en el codo
condition-cubital-tunnel-what = Un nervio rodea el lado interno del codo. Doblar mucho el codo o apoyarse en él irrita este nervio.
condition-cubital-tunnel-aim = La férula evita que el codo se doble mucho de noche. De día, no se apoye en el codo.
condition-radial-nerve-palsy-name = Muñeca caída
condition-radial-nerve-palsy-what = El nervio que levanta la muñeca y los dedos ahora no funciona. La mano cuelga.
condition-radial-nerve-palsy-aim = La férula ayuda a mantener levantada la muñeca. Así los dedos pueden agarrar mejor.
condition-median-nerve-palsy-low-name = Pulgar que no puede levantarse de la palma
condition-median-nerve-palsy-low-what = El nervio del músculo abultado de debajo del pulgar ahora no funciona. Puede sentir dormidas algunas partes de la mano.
condition-median-nerve-palsy-low-aim = La férula mantiene abierto el espacio junto al pulgar. El pulgar queda en un lugar donde puede usarlo.
condition-ulnar-nerve-palsy-name = Dedos anular y meñique en garra
condition-ulnar-nerve-palsy-what = El nervio de los músculos pequeños de la mano ahora no funciona. Los dedos anular y meñique se doblan como una garra.
condition-ulnar-nerve-palsy-aim = La férula evita que los nudillos grandes se doblen hacia atrás. Así puede estirar mejor estos dedos.

## The elbow

condition-lateral-elbow-name = Dolor en los tendones del lado externo del codo
condition-lateral-elbow-what = Los músculos que levantan la muñeca empiezan en el codo. Sus tendones duelen allí, sobre todo al agarrar y levantar cosas.
condition-lateral-elbow-aim = Mientras trabaja, la férula quita parte del tirón a los tendones que duelen.

## The hand

condition-dupuytren-release-name = Después de la operación de un dedo doblado (Dupuytren)
condition-dupuytren-release-what = Le cortaron unas bandas tirantes de la palma para que el dedo pueda abrirse. La cicatriz puede volver a doblarlo.
condition-dupuytren-release-aim = De noche, la férula sujeta el dedo en una posición que le resulta fácil. Ayuda a mantener abierto el dedo.
condition-rheumatoid-knuckle-drift-name = Dedos que se desvían hacia un lado (artritis reumatoide)
condition-rheumatoid-knuckle-drift-what = Los ligamentos junto a los nudillos grandes están flojos. Los dedos, menos el pulgar, se inclinan hacia el lado del meñique.
condition-rheumatoid-knuckle-drift-aim = La férula alinea los dedos, menos el pulgar, mientras usa la mano. No detiene el desvío.
condition-rheumatoid-wrist-name = Dolor en la articulación de la muñeca (artritis reumatoide)
condition-rheumatoid-wrist-what = La articulación de la muñeca duele y está hinchada por la artritis reumatoide.
condition-rheumatoid-wrist-aim = La férula da firmeza a la muñeca. Así puede aliviar el dolor en reposo y en las tareas.
condition-stroke-tight-hand-name = Mano tensa después de un derrame cerebral (ictus)
condition-stroke-tight-hand-what = Después del derrame cerebral, los músculos que cierran la mano tiran demasiado. Cuesta abrir la mano.
condition-stroke-tight-hand-aim = La férula deja descansar la mano medio abierta. Eso puede dar comodidad y ayudar a mantener limpia la piel de la palma.

## Burns

condition-dorsal-hand-burn-name = Quemadura en el dorso de la mano
condition-dorsal-hand-burn-what = La piel del dorso de la mano está quemada. Al sanar, la piel se acorta y puede deformar la mano.
condition-dorsal-hand-burn-aim = La férula mantiene doblados los nudillos grandes y rectos los dedos. En esta posición, la piel nueva se mantiene larga.
condition-palmar-hand-burn-name = Quemadura en la palma de la mano
condition-palmar-hand-burn-what = La piel de la palma está quemada. Al sanar, la piel se acorta y puede ir cerrando la mano.
condition-palmar-hand-burn-aim = La férula mantiene abiertos la palma y los dedos. En esta posición, la piel nueva se mantiene larga.

## Movements to leave out
## The joints of a finger are “nudillo grande”, “articulación central” and “punta”.

avoid-wrist-extension = No doble la muñeca hacia atrás.
avoid-wrist-flexion = No doble la muñeca hacia delante.
avoid-fingers-mcp-flexion = No doble los nudillos grandes.
avoid-fingers-mcp-ulnar-deviation = No empuje los dedos hacia el lado del meñique.
avoid-fingers-pip-flexion = No doble las articulaciones centrales de los dedos.
