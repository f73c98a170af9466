### The guide: everything that is not about one condition, splint, activity or exercise.
### Spanish as it is understood in Spain and in Latin America. The reader is “usted” throughout, never “tú” or “vos”:
### patients are adults of all ages. Nothing said to the reader may depend on being a man or a woman.
### “Dedos” includes the thumb in Spanish: where English says fingers and leaves out the thumb, write “los demás dedos”.
### “Dedo tratado” is the finger that the splint is for, “los otros dedos” are the rest of that hand’s fingers.
### Every splint is named “férula …”, so that “puesta”, “póngasela” and “quítesela” agree with it.
### No date, hour, number, side or angle is typed here; they come in as variables.
### $side is left or right and only chooses between wordings.

## Title and furniture

# $orthosis is the splint's name, such as "férula larga de pulgar".
guide-title = Su { $orthosis }
# $name is the person's name. Stands at the foot of every page.
guide-made-for = Hecha solo para { $name }. Mano { $side ->
    [left] izquierda
   *[right] derecha
}{ $finger ->
    [index] , dedo índice
    [middle] , dedo medio
    [ring] , dedo anular
    [little] , dedo meñique
   *[none] {""}
}.
guide-made-for-nobody = Hecha para una sola persona. Mano { $side ->
    [left] izquierda
   *[right] derecha
}{ $finger ->
    [index] , dedo índice
    [middle] , dedo medio
    [ring] , dedo anular
    [little] , dedo meñique
   *[none] {""}
}.
guide-caution = Esta guía no reemplaza lo que le digan su terapeuta, su cirujano o su cirujana. Si le dicen otra cosa, haga lo que le digan. No le preste la férula a nadie.
# Printed on every sheet in a language that no qualified translator has signed off.
guide-drafted = Ningún traductor profesional ha revisado este texto.
guide-outdated = El texto en inglés de esta hoja cambió después de traducirse. Pregunte en su clínica antes de usarla.
guide-page = Página { $page } de { $pages }
contents-page = , pág. { $page }

## Which hand

hand-left = Mano izquierda
hand-right = Mano derecha
hand-alt = { $side ->
    [left] La férula es para la mano izquierda.
   *[right] La férula es para la mano derecha.
}

## Section titles

glance-title = De un vistazo
dates-title = Día a día
on-off-title = Poner y quitar
on-off-intro = { $washing ->
    [never] Esto lo hacemos solo en la consulta.
   *[freely] Siéntese a una mesa. Use la otra mano.
}
skin-title = Revise su piel
skin-intro = { $checks ->
    [one] Mírese bien la piel una vez al día.
   *[other] Mírese bien la piel { $checks } veces al día.
} Hágalo con buena luz. { $washing ->
    [supported] Mire estos lugares cada vez que se quite la férula para lavarse. Entre tanto, mire los bordes de la férula y las puntas de los dedos:
    [never] No se quite la férula para mirar. Mire los bordes de la férula y las puntas de los dedos:
   *[freely] Mire estos lugares:
}
move-title = Mueva la mano
move-intro = Vaya despacio. No fuerce nunca un movimiento.
daily-title = En la vida diaria
care-title = Cuide la férula
note-title = De su terapeuta
call-title = Cuándo llamar
call-intro = Tenga esta página siempre a la vista.

## Facts on the first page

fact-splint = Qué férula
# $finger is index, middle, ring or little and only chooses between wordings.
finger-name = { $finger ->
    [index] Dedo índice, junto al pulgar
    [middle] Dedo medio
    [ring] Dedo anular
   *[little] Dedo meñique
}
fact-for = Para qué es
fact-fitted = Colocada el
fact-full = Uso completo desde el
fact-full-more = Antes, aumente poco a poco. Vea la tabla «Día a día».
fact-review = Próxima cita
# $joints is a list such as "la punta del pulgar y los demás dedos"; the wording fits one joint as well as several.
fact-free = Movimiento libre: { $joints }.

say-date = { $date }
say-date-time = { $date }, { $time }
say-short-date = { $date }
date-range = Del { $from } al { $to }
# $to is the date of the next visit.
date-until-visit = Desde el { $from } hasta su cita, el { $to }
# From one clock time to another.
time-range = de { $from } a { $to }

## Joints, as the person would say them

joint-elbow = el codo
joint-forearm = el giro del antebrazo
joint-wrist = la muñeca
joint-thumb-cmc = la base del pulgar
joint-thumb-mcp = el nudillo del pulgar
joint-thumb-ip = la punta del pulgar
joint-fingers-mcp = los demás dedos
joint-fingers-pip = las articulaciones centrales de los demás dedos
joint-fingers-dip = las puntas de los demás dedos
# The affected finger.
joint-finger-mcp = el nudillo del dedo tratado
joint-finger-pip = la articulación central del dedo tratado
joint-finger-dip = la punta del dedo tratado
joint-other-fingers-mcp = los otros dedos
joint-other-fingers-pip = las articulaciones centrales de los otros dedos
joint-other-fingers-dip = las puntas de los otros dedos
joint-index-mcp = el nudillo del dedo índice
joint-middle-mcp = el nudillo del dedo medio
joint-ring-mcp = el nudillo del dedo anular
joint-little-mcp = el nudillo del dedo meñique
joint-index-pip = la articulación central del dedo índice
joint-middle-pip = la articulación central del dedo medio
joint-ring-pip = la articulación central del dedo anular
joint-little-pip = la articulación central del dedo meñique
joint-index-dip = la punta del dedo índice
joint-middle-dip = la punta del dedo medio
joint-ring-dip = la punta del dedo anular
joint-little-dip = la punta del dedo meñique

## When to wear it

strip-days = Días { $from } a { $to }
strip-from-day = Desde el día { $from }
strip-weeks = Semanas { $from } a { $to }
strip-build = Úsela un poco más cada día. De noche, todavía no.
strip-key-on = Férula puesta
strip-key-off = Sin férula
strip-key-needed = Puesta para tareas de esfuerzo
# In phases that guard what heals.
strip-key-guard = Puesta al aire libre y entre mucha gente
strip-key-rest = Puesta mientras descansa
strip-key-part = Puesta parte del tiempo
# $label is a row's label, $times a list of finished ranges, each beginning with “de”.
strip-alt = { $label }: férula puesta { $times }.
strip-alt-none = { $label }: sin horas fijas con la férula puesta.
wear-never-remove = Día y noche. No se la quite.
# $times is how often it comes off in a day.
wear-off-to-wash = Día y noche. Quítesela solo para lavarse{ $times ->
    [one] , una vez al día.
   *[other] , { $times } veces al día.
}
wear-off-to-exercise = Día y noche. Quítesela solo para lavarse y hacer los ejercicios{ $times ->
    [one] , una vez al día.
   *[other] , { $times } veces al día.
}
wear-night-and-tasks = Puesta toda la noche. De día, puesta para las tareas de esfuerzo.
# In phases that guard what heals: hard tasks wait.
wear-night-and-tasks-guard = Puesta toda la noche. De día, puesta al aire libre, entre mucha gente y para todas las tareas permitidas.
wear-night-and-rest = Puesta toda la noche. De día, puesta mientras descansa. Sin férula cuando use la mano.
# $bouts is how many times a day, $each a finished length of time.
wear-stretch = Puesta { $bouts ->
    [one] una vez al día
   *[other] { $bouts } veces al día
}, { $each } cada vez. El resto del tiempo, sin férula.
wear-day = Puesta todo el día. De noche, sin férula.
wear-night = Puesta toda la noche. De día, sin férula.
wear-tasks = Puesta solo para las tareas de esfuerzo. De noche, sin férula.
wear-tasks-guard = Puesta al aire libre, entre mucha gente y para todas las tareas permitidas. De noche, sin férula.
wear-off = Sin férula.
# $length is how long it is worn while awake.
wear-wean-night = Póngasela al levantarse y úsela { $length }. Úsela también toda la noche.
wear-wean-day = Póngasela al levantarse y úsela { $length }. De noche, sin férula.

## What comes after the next visit

later-label = Cuando lo indique su terapeuta
later-label-surgeon = Cuando lo indique su cirujano o cirujana
later-label-next = Más tarde, cuando se lo indiquemos
# This splint does not suit that stage.
later-other = Con otra férula.
later-never-remove = Día y noche, sin pausa.
later-off-to-wash = Día y noche; quítesela solo para lavarse.
later-off-to-exercise = Día y noche; quítesela solo para lavarse y hacer los ejercicios.
later-night-and-tasks = De noche y para las tareas de esfuerzo.
later-night-and-tasks-guard = De noche; de día, al aire libre y entre mucha gente.
later-night-and-rest = De noche y mientras descansa.
later-stretch = Unas pocas veces al día, para estirar.
later-day = Solo de día.
later-night = Solo de noche.
later-tasks = Solo para las tareas de esfuerzo.
later-tasks-guard = Solo al aire libre y entre mucha gente.
later-off = Sin férula.
later-wean = Cada vez menos, paso a paso.

## The stop box

warning-title-take-off = Quítese la férula y llámenos si:
warning-title-supported = { $straps ->
    [without] Llámenos si:
   *[with] Afloje las correas y llámenos si:
}
warning-title-keep-on = { $straps ->
    [without] No se quite la férula y llámenos si:
   *[with] Afloje las correas, no se quite la férula y llámenos si:
}
# Followed by the signs that cannot wait. $number is the emergency number.
warning-emergency = Emergencia: llame al { $number } si:
warning-emergency-no-number = Emergencia: pida ayuda de inmediato si:
warning-act-take-off = Quítese la férula. Después, llame.
warning-act-supported = { $straps ->
    [without] Mantenga apoyada la parte tratada. Después, llame.
   *[with] Afloje las correas. Mantenga apoyada la parte tratada. Después, llame.
}
warning-act-keep-on = { $straps ->
    [without] No se quite la férula. Llame.
   *[with] Afloje las correas. No se quite la férula. Después, llame.
}

## Day by day

axis-midnight = medianoche
axis-noon = mediodía
schedule-day = Día
schedule-clock = Hora del día
schedule-long = Cuánto tiempo
schedule-note = Estas horas son ejemplos. Elija las que le convengan. Si una marca tarda demasiado en irse, repita el plan de ese día.
schedule-note-late = Estas horas son ejemplos. Elija las que le convengan. Una barra después de medianoche pertenece al día anterior. Si una marca dura demasiado, repita el plan de ese día.
schedule-minutes = { $count ->
    [one] minuto
   *[other] minutos
}
schedule-hours = { $count ->
    [one] hora
   *[other] horas
}
schedule-times = { $count ->
    [one] una vez
   *[other] { $count } veces
}
schedule-not-yet = Este día no la use

calendar-week = Semana
calendar-what = Qué hacer
calendar-build = Úsela un poco más cada día.
calendar-wean = Úsela menos.
calendar-never-remove = Día y noche, sin pausa.
calendar-off-to-wash = Día y noche.
calendar-off-to-exercise = Día y noche.
calendar-night-and-tasks = De noche y para tareas de esfuerzo.
calendar-night-and-tasks-guard = De noche; de día, al aire libre y entre mucha gente.
calendar-night-and-rest = De noche y al descansar.
calendar-stretch = Ratos para estirar.
calendar-day = De día.
calendar-night = De noche.
calendar-tasks = Para tareas de esfuerzo.
calendar-tasks-guard = Al aire libre y entre mucha gente.
calendar-off = Sin férula.
calendar-review = Cita el { $date }.
calendar-key-review = Su cita
calendar-key-build = Un poco más cada día
calendar-key-on = Puesta
calendar-key-night = De noche
calendar-key-needed = Parte del día
calendar-key-off = Sin férula
calendar-and-so-on = Siga así cada semana.

## Putting on and taking off

steps-on = Para ponérsela
steps-off = Para quitársela
# For a splint that only the clinic takes off.
steps-never = No se quite la férula por su cuenta. En la consulta se la quitan y se la ponen.
strap-next = la correa siguiente

## Skin

# Letters that mark the places, in the order of the alphabet.
spot-letters = A B C D E F G H
skin-fine = Esto está bien
skin-not = Esto no está bien
skin-fine-mark = Una marca suave que se va en { $limit } o menos
skin-fine-lines = Líneas leves de las correas
skin-fine-damp = Piel un poco húmeda
skin-not-mark = Una marca que dura más de { $limit }
# Redness does not show on dark skin.
skin-not-dark = En piel oscura: una zona más oscura, más caliente o más dura durante más de { $limit }
skin-not-blister = Una ampolla, una llaga o piel abierta
skin-not-rash = Un sarpullido, o una picazón que no se va
skin-not-wet = Piel blanca, blanda y mojada
skin-act-take-off = Quítese la férula y llámenos hoy mismo.
skin-act-keep = { $straps ->
    [without] Llámenos hoy mismo. Mantenga la mano apoyada.
   *[with] Afloje las correas y llámenos hoy mismo. Mantenga la mano apoyada.
}

## Moving

move-splint-on = Férula puesta
move-splint-off = Sin férula
move-stop = Pare si el dolor aumenta. Si no se calma en unas horas, llámenos.
move-avoid = Todavía no
dose-times = { $count ->
    [one] vez
   *[other] veces
}
dose-a-day = { $count ->
    [one] vez al día
   *[other] veces al día
}
# $count is a number of times, after the first week.
move-up-to = Después de una semana, si le resulta fácil: hasta { $count ->
    [one] { $count } vez
   *[other] { $count } veces
}.
moves-after-review = Su terapeuta le dará movimientos nuevos después de su cita.
# $date is when they begin, $exercises a list of names.
moves-later = Desde el { $date }: { $exercises }.
avoid-wrist-ulnar-deviation = No incline la muñeca hacia el meñique.
avoid-wrist-radial-deviation = No incline la muñeca hacia el pulgar.
avoid-thumb-cmc-any = No mueva la base del pulgar.
avoid-thumb-cmc-palmar-abduction = No estire el pulgar para separarlo de la palma.
avoid-thumb-cmc-radial-abduction = No estire el pulgar hacia afuera, a un lado.
avoid-thumb-mcp-any = No doble el nudillo del pulgar.
avoid-thumb-mcp-flexion = No doble el pulgar hacia dentro de la palma.
avoid-thumb-mcp-radial-deviation = No empuje el pulgar hacia un lado, lejos de la mano.
avoid-thumb-mcp-ulnar-deviation = No empuje el pulgar de lado hacia el meñique, cruzando la mano.

## Daily life

daily-job = Actividad
daily-what = Por ahora
daily-how = Cómo
daily-word-keep = Siga haciéndolo
daily-word-change = Hágalo así
daily-word-leave = Déjelo por ahora
daily-keep = Hágalo como siempre.
daily-helper = Pida ayuda a alguien.
daily-other-hand = Use la otra mano o pida ayuda a alguien.
daily-ask = Pregunte a su terapeuta cuándo puede volver a hacerlo.
daily-pauses = Haga un poco cada vez. Descanse entre una vez y otra.
daily-keep-dry = Mantenga la férula seca, o séquela enseguida.
daily-driving = Antes de conducir, pregunte a su terapeuta y a su compañía de seguros. Cumpla la ley del lugar donde vive.
# $date is when a later phase begins.
daily-from-keep = Desde el { $date }: como siempre.
daily-from-change = Desde el { $date }: pruebe a hacerlo de un modo más fácil.
why-risky = Demasiado riesgo para esta mano por ahora.
why-driving = Para conducir o montar en bicicleta necesita un control total.
why-swimming = La mano, la piel o la férula no están listas para el agua.
why-heavy = Demasiado peso por ahora.
why-in-the-way = La férula estorba.
why-lateral-pinch = Apretar el pulgar contra un dedo sobrecarga la mano.
why-tip-pinch = Apretar con las puntas de los dedos sobrecarga la mano.
why-power-grip = Agarrar con fuerza sobrecarga la mano.
why-sustained-grip = Agarrar durante mucho tiempo sobrecarga la mano.
why-wrist-deviation = Inclinar la muñeca hacia los lados la sobrecarga.
why-wrist-flexion = Doblar la muñeca la sobrecarga.
why-wrist-load = Apoyarse en la muñeca doblada sobrecarga la mano.
why-thumb-load = Esta tarea carga el pulgar.
why-forearm-rotation = Girar el brazo sobrecarga la mano.
why-finger-flexion = Doblar los dedos con fuerza los sobrecarga.
why-elbow-flexion = Tener el codo doblado sobrecarga el brazo.
why-impact = Los golpes pueden dañar la mano.
why-vibration = Las vibraciones sobrecargan la mano.
why-wet = La mano o la férula se mojan.
why-heat = El calor estropea la férula o daña la piel.
why-repetition = Repetir mucho el mismo movimiento sobrecarga la mano.

## Looking after the splint

# $celsius is a temperature in degrees.
care-wash-plastic = Lávela con jabón y con agua a no más de { $celsius } grados.
care-dry-plastic = Séquela bien antes de ponérsela.
care-heat = Nada de calor: ni agua caliente, ni calefactor, ni auto al sol. Se ablanda y pierde la forma.
care-wash-soft = Lávela a mano con un jabón suave. Enjuáguela bien.
care-dry-soft = Déjela secar extendida y a la sombra. Nunca la use húmeda.
care-machine = Nada de lavadora, secadora ni plancha. Nada de lejía ni cloro.
care-metal = Séquela con un paño. Mire si está oxidada o doblada.
care-keep-dry = Manténgala seca. Cúbrala cuando se lave.
care-straps = Quite la pelusa de las correas. Ciérrelas antes de lavar la férula.
care-change = No la corte, no la doble y no la pegue. De eso nos encargamos en la consulta.
care-share = No la preste. Está hecha para usted.
care-bring = Tráigala a todas las citas.

## Calling

call-emergency = Emergencia: pida ayuda ya
call-today = Llámenos hoy mismo
call-visit = Díganoslo en su cita
call-where = Dónde: { $address }
# Stands where no emergency number is known.
call-emergency-number = Su número local de emergencias
call-telephone = Teléfono
note-from = Su terapeuta le escribe
# Followed by a line to write on.
initial-say = Revisado con usted
initial-date = Fecha
initial-name = Iniciales

## Lengths of time

length-minutes = { $count ->
    [one] { $count } minuto
   *[other] { $count } minutos
}
length-hours = { $count ->
    [one] { $count } hora
   *[other] { $count } horas
}
length-hours-minutes = { $hours } y { $minutes }
length-seconds = { $count ->
    [one] { $count } segundo
   *[other] { $count } segundos
}

# Lo que muestra un dibujo, para quien no puede verlo.
picture-seen = { $what ->
    [finger] { $finger ->
        [index] Dedo índice
        [middle] Dedo medio
        [ring] Dedo anular
        [little] Dedo meñique
       *[none] Dedo
    } de la mano { $side ->
        [left] izquierda
       *[right] derecha
    }
    [thumb] { $side ->
        [left] Pulgar izquierdo
       *[right] Pulgar derecho
    }
   *[hand] { $side ->
        [left] Mano izquierda
       *[right] Mano derecha
    }
}, { $view ->
    [palmar] desde el lado de la palma.
    [radial] desde el lado del pulgar.
    [ulnar] desde el lado del meñique.
    [turned] desde el dorso y el lado del pulgar.
    [palmar-radial] desde la palma y el lado del pulgar.
    [palmar-ulnar] desde la palma y el lado del meñique.
    [own] desde donde usted mira.
   *[dorsal] desde el dorso.
}
picture-covers = { $splint }. { $from ->
    [arm] Va desde el brazo
    [forearm] Va desde el antebrazo
    [hand] Va desde la palma
   *[digit] Va en el { $finger ->
        [index] dedo índice
        [middle] dedo medio
        [ring] dedo anular
        [little] dedo meñique
       *[none] dedo o el pulgar
    },
} { $to ->
    [fingertips] hasta las puntas de los dedos.
    [fingertip] hasta la punta del dedo.
    [fingers] hasta los dedos.
    [finger] hasta el dedo.
    [thumb-tip] hasta la punta del pulgar.
    [thumb] hasta el pulgar.
    [palm] hasta la palma.
   *[none] y no más allá.
}
picture-spots = Los círculos con letras muestran dónde mirar.
picture-part = Dibujo { $number } de { $count }.
picture-held = La posición de: { $exercise }.
picture-moved = Con rayas: el comienzo. La flecha muestra el movimiento: { $exercise }.
picture-inside = Los huesos, como si se vieran a través de la piel.
picture-structures = Señalado: { $structures }.
picture-held-joints = Un anillo con rayas señala lo que sujeta o apoya la férula: { $joints }.
picture-held-mark = Lo sujeta o apoya la férula
held-knuckles = los nudillos grandes
held-middle-joints = las articulaciones centrales de los dedos
held-end-joints = las articulaciones de la punta de los dedos
picture-right = Está bien puesta. Lo indica una marca de visto.
picture-wrong = Está mal puesta. Lo indica una cruz. { $fault }
