### Signs to watch for. Each is a clause or a short noun phrase without a full stop.
### It stands in a list under a heading such as “Llámenos si:”.
### $limit is how long a mark may stay, $loosen how long loosening may take to help; both are finished texts.

## On the first page of every guide

sign-numb-or-tingling = Los dedos o el pulgar siguen más dormidos o con más hormigueo que antes
# Loosening the straps comes first; this is what is left when it does not help.
sign-fingers-blue-white-cold = { $straps ->
    [without] Los dedos siguen azules, blancos o fríos
   *[with] Los dedos siguen azules, blancos o fríos { $loosen } después de aflojar las correas
}
sign-more-swelling-or-pain = Tiene más hinchazón o más dolor
sign-mark-or-sore-stays = Una marca roja o un punto que duele dura más de { $limit }

## Emergencies

sign-severe-pain-hard-arm = Un dolor fuerte sigue aumentando en reposo, o siente el antebrazo tenso y duro
sign-redness-with-fever = El enrojecimiento se extiende y usted tiene fiebre o se siente mal
sign-finger-swollen-bent = Todo un dedo o todo el pulgar se hincha, se queda doblado y duele al estirarlo
sign-new-injury = Después de una caída o un golpe, la mano se ve torcida o no deja de sangrar
sign-face-swells-breathing = Se le hinchan la cara o los labios, o le cuesta respirar

## Today

sign-redness-spreads = El enrojecimiento o el calor se extiende por la mano
sign-blister-or-open-skin = Tiene una ampolla o la piel abierta
# Redness does not show on dark skin; these are the other signs of pressure.
sign-skin-patch-changed = Una zona de la piel está más oscura, brillante, dura o más caliente que el resto
sign-rash-or-itch = Le sale un sarpullido o le pica la piel debajo de la férula
sign-skin-wet-and-white = La piel debajo de la férula está blanca, blanda y mojada
sign-splint-broken-or-loose = La férula está agrietada, doblada o demasiado floja, o la ha perdido
sign-hand-burning-shiny-stiff = Le arde toda la mano, se ve brillante y se pone rígida

## At the next visit

sign-edge-or-strap-worn = Un borde corta o pincha, o una correa ya no pega
sign-plan-does-not-fit-day = El plan no encaja en su día

## For some thumbs

sign-thumb-gives-way = El pulgar resbala o cede hacia un lado
sign-thumb-snap = Siente un chasquido en el pulgar
sign-thumb-lump = Aparece un bulto nuevo junto al nudillo del pulgar
sign-wound-opens = La herida se abre, suelta líquido o huele mal
sign-thumb-back-tingles = Siente hormigueo en el dorso del pulgar o se le duerme
sign-thumb-catches = El pulgar se traba o salta al moverlo
sign-thumb-weaker-in-pinch = Pierde fuerza al apretar algo entre el pulgar y otro dedo
sign-no-easier-with-splint = Las tareas duelen igual con la férula que sin ella
