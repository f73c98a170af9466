### La hoja informativa de un problema de la mano, para pacientes. No es de nadie en particular: sin horas ni fechas.
### Aquí no se escribe ningún número, lado ni duración; entran como variables.

facts-caution = Esta hoja explica un problema de la mano. No sustituye lo que le digan su terapeuta o su cirujano. Si le dicen otra cosa, haga lo que le digan.
# Al pie de cada página.
facts-line = Los dibujos muestran la mano { $side ->
    [left] izquierda
   *[right] derecha
}{ $finger ->
    [index] , dedo índice
    [middle] , dedo medio
    [ring] , dedo anular
    [little] , dedo meñique
   *[none] {""}
}.

## Qué es

facts-what-title = Qué es
# $what es una o dos frases completas.
facts-what = { $what }

## Para qué sirve la férula

facts-aim-title = Qué hace la férula
# $aim es una o dos frases completas.
facts-aim = { $aim }
# $joints es una lista de articulaciones, como "la muñeca y la base del pulgar".
facts-joints = { $joints }
facts-joint-still = Sin moverse
facts-joint-steady = Con apoyo
facts-joint-stopped = Se mueve hasta un tope
facts-joint-relative = Se mueve menos que los dedos de al lado
facts-joint-coupled = Se mueve con el dedo de al lado
facts-joint-mobilised = Con un tirón suave
# Unas férulas sujetan estas articulaciones y otras no.
facts-joint-varies = Sujeta o libre: depende de su férula
facts-joint-free = Se mueve libre

## Tipos de férula

facts-types-title = Férulas que sirven
facts-types-intro = Estos tipos sirven al principio. Su terapeuta elige el adecuado para su mano.

## Cómo suele ir

facts-course-title = Cómo suele ir
# $length es una duración completa, como "unas seis semanas".
facts-step-label = Paso { $number }, { $length }:
# $wear y $ends son frases completas.
facts-step = { $wear } { $ends }
# $length es como "de cuatro a seis semanas".
facts-length-usual = más o menos { $length }
facts-length-protocol = { $length }, según diga su cirujano
facts-length-open = sin tiempo fijo
facts-weeks = { $count ->
    [one] { $count } semana
   *[other] { $count } semanas
}
# $from y $to son números de semanas.
facts-weeks-range = de { $from } a { $to ->
    [one] { $to } semana
   *[other] { $to } semanas
}
facts-days = { $count ->
    [one] { $count } día
   *[other] { $count } días
}
facts-days-range = de { $from } a { $to ->
    [one] { $to } día
   *[other] { $to } días
}
facts-ends-therapist = Este paso no tiene un final fijo. Su terapeuta decide cuándo termina.
facts-ends-surgeon = Este paso no tiene un final fijo. Su cirujano decide cuándo termina.
facts-ends-person = Usted decide cuándo ya no la necesita.
facts-ends-time = Después empieza el paso siguiente.
facts-own-guide = Esta hoja no es su plan. Su propia guía dice cuándo llevar la férula. Haga lo que dice su guía.
facts-clinics-differ = Cada clínica trabaja a su manera. Su férula, sus pasos y sus tiempos pueden no ser los mismos que aquí.
facts-surgeon-sets = Después de una operación o una fractura, su cirujano fija los tiempos y la posición de la mano.

## Cuándo pedir ayuda

facts-help-title = Cuándo pedir ayuda
# $sign es una señal, como "Pellizca con menos fuerza".
facts-visit = { $sign }: dígaselo a su terapeuta en la próxima cita.
