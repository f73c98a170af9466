### Los papeles que acompañan la guía: tarjeta, diario, ejercicios, carta.
### Aquí no se escribe ninguna fecha, hora, cifra, lado ni ángulo; llegan como variables.

sheet-caution = Esto no sustituye su guía completa ni lo que le digan su terapeuta o su cirujano. Si le dicen otra cosa, haga lo que le digan.

## Tarjeta

card-caution = Esta tarjeta va con su guía. Lo que le diga su terapeuta va primero.
card-title = Su férula
card-description = Cuándo llevar la férula, cómo ponérsela y cuándo llamar.
card-straps-on = Cierre en este orden: { $straps }.
card-straps-off = Abra en este orden: { $straps }.

## Diario

diary-title = Su diario
diary-description = Un diario para marcar hasta la próxima cita.
diary-week = Semana { $week }: { $from } a { $to }
diary-intro = Marque una casilla cuando haya hecho algo. Rodee un número para su peor dolor del día: { $least } es sin dolor, { $most } es el peor que pueda imaginar.
diary-wears = { $bouts ->
    [one] Una vez
   *[other] { $bouts } veces
}, { $each } cada vez. De noche, no.
diary-worn = Puesta
diary-hours = Horas puesta
diary-skin = Piel revisada
diary-exercises = Ejercicios
diary-pain = Dolor
diary-note = Nota
diary-stop = No espere a su cita si ve una señal de alto de su guía. Llame al { $number }.
diary-stop-no-number = No espere a su cita si ve una señal de alto de su guía. Llame a su clínica.
diary-visit = Traiga este diario a su cita del { $date }.
diary-visit-time = Traiga este diario a su cita del { $date }, { $time }.

## Ejercicios

exercises-title = Sus ejercicios
exercises-description = El programa para casa: cómo empezar, el movimiento, cuántas veces, cuándo parar.

## Carta

letter-title = { $to ->
    [teacher] Para el profesorado
    [employer] Para la empresa
   *[carer] Para quien ayuda
}
letter-description = Lo que puede y no puede hacer por ahora una mano con férula.
letter-intro = { $to ->
    [teacher] Una persona de su clase lleva una férula en la mano { $side ->
        [left] izquierda
       *[right] derecha
    }.
    [employer] Una persona que trabaja con ustedes lleva una férula en la mano { $side ->
        [left] izquierda
       *[right] derecha
    }.
   *[carer] La persona a la que usted ayuda lleva una férula en la mano { $side ->
        [left] izquierda
       *[right] derecha
    }.
} Esta carta dice qué puede hacer la mano hasta que la clínica vuelva a verla.
letter-from = Con férula desde
letter-until = Próxima cita en la clínica
letter-for = Para qué es
letter-told = Esto es lo que se le dijo sobre sus tareas diarias:
letter-never-off = Solo la clínica quita la férula. No la corte, no la doble y no la abra.
letter-leave-on = No quite ni cambie la férula si la persona no se lo pide.
letter-other-jobs = Si una tarea no está aquí, pregunte a la persona. Si no está segura, la tarea espera hasta que haya preguntado a la clínica.
letter-help-carer = Ayude en las tareas que necesitan las dos manos y no tire del brazo de la férula.
letter-help-teacher = Dé más tiempo para escribir. Nada de deporte ni juegos con golpes en la mano hasta que la clínica lo permita.
letter-help-employer = Dé tareas que dejen libre esta mano. La clínica decide cuándo puede volver al trabajo completo.
letter-urgent = Actúe enseguida si los dedos se ponen azules, blancos, dormidos o fríos, o si el dolor aumenta mucho. Ayude a la persona a llamar al { $number }.
letter-urgent-no-number = Actúe enseguida si los dedos se ponen azules, blancos, dormidos o fríos, o si el dolor aumenta mucho. Ayude a la persona a llamar a la clínica.
letter-hand = { $side ->
    [left] La férula está en la mano izquierda.
   *[right] La férula está en la mano derecha.
}
letter-about = Sobre { $name }. Mano { $side ->
    [left] izquierda
   *[right] derecha
}.
letter-about-nobody = Sobre una sola persona. Mano { $side ->
    [left] izquierda
   *[right] derecha
}.

# A diary ends after some weeks, however late the visit is.
diary-more = Esta es la última hoja de este diario. Pida más hojas en su clínica.

## Booklet: sheets bound into one

booklet-contents = Qué hay aquí
booklet-caution = Estas hojas no sustituyen lo que le digan su terapeuta o su cirujano. Si le dicen otra cosa, haga lo que le digan.
booklet-one-handed = Para ponérsela con una sola mano
