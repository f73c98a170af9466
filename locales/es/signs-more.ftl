### More signs to watch for. Each is a clause or a short noun phrase without a full stop.
### It stands in a list under a heading such as “Llámenos hoy mismo si:”.
### Printed only where a condition names the sign.

## Emergencies

sign-finger-snap = Siente un chasquido, o de pronto no puede doblar o estirar un dedo o pulgar
sign-tooth-cut-over-knuckle = Una herida hecha por un diente en un nudillo se enrojece, se hincha o duele
sign-finger-white-when-straight = Un dedo se pone blanco cuando está recto
sign-graft-pale-or-tight = La piel nueva de la mano se pone pálida, o la siente tirante muy adentro

## Today

sign-tip-droops-again = La punta del dedo vuelve a quedar caída, o se dobló sin apoyo
sign-middle-joint-bends-alone = La articulación central del dedo queda caída, o se dobló sin apoyo
sign-finger-cannot-straighten = Un dedo queda caído y usted no puede estirarlo sin ayuda
sign-thumb-tip-will-not-lift = Ya no puede levantar la punta del pulgar
sign-finger-turns-over-neighbour = Un dedo se gira o se cruza sobre el de al lado
sign-finger-locks = El dedo o el pulgar se traba y no se estira
sign-pin-loose = Un clavo está flojo, doblado o roto, o sale líquido por su agujero
sign-joint-slips = Una articulación se sale de su lugar o se siente floja
sign-wrist-clunks = La muñeca salta por dentro, o duele hondo en el hueco junto al pulgar
sign-night-numbness-grows = Se le duermen los dedos más noches que antes, o empiezan a seguir dormidos todo el día
sign-thumb-muscle-thinner = El músculo abultado de debajo del pulgar se pone más delgado
sign-hand-muscle-thinner = La mano se pone más delgada entre el pulgar y el índice
sign-little-finger-numb = El meñique sigue más dormido que antes
sign-elbow-band-tingles = Siente hormigueo en la mano o en el antebrazo con la banda o la férula puesta
sign-finger-stays-bent-more = Un dedo se queda más doblado que antes
sign-tight-hand-tighter = La mano está más tensa o cuesta más abrirla

## At the next visit

sign-clicks-under-load = La muñeca o la mano da un chasquido y duele al apoyarse o levantar algo
