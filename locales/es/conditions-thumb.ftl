### Conditions of the thumb and of the tendons and bones at the wrist: the name, what is wrong, and what the splint does.
### Words for a reader of about twelve. The splint is never said to cure anything.
### English says “cord” and “band”; here they are “tendón” and “ligamento”. A cast is “yeso”.

## Sore tendons on the thumb side of the wrist, in pregnancy or with a small baby

condition-wrist-thumb-around-birth-name = Dolor en los tendones del pulgar, antes o después del nacimiento de un bebé
condition-wrist-thumb-around-birth-what = Dos tendones que van al pulgar rozan en la muñeca. Levantar y alimentar a un bebé puede hacer que duelan.
condition-wrist-thumb-around-birth-aim = La férula deja descansar la muñeca y el pulgar de noche y al levantar peso. Así, cuidar a su bebé puede doler menos.

## Tendons that rub where they cross above the wrist
## “Por encima” could be read as the back of the wrist.

condition-intersection-syndrome-name = Tendones que rozan más arriba de la muñeca
condition-intersection-syndrome-what = Más arriba de la muñeca se cruzan tendones de la muñeca y del pulgar. Allí rozan y duelen.
condition-intersection-syndrome-aim = La férula mantiene quieta la muñeca. Así descansan los tendones que duelen.

## Torn band on the outer side of the thumb's knuckle

condition-thumb-rcl-injury-name = Ligamento externo roto en el nudillo del pulgar
condition-thumb-rcl-injury-what = El ligamento del lado externo del nudillo del pulgar está roto. Tiene que sanar sin que nada empuje el pulgar hacia los demás dedos.
condition-thumb-rcl-injury-aim = La férula protege el ligamento mientras sana. Evita que algo empuje el pulgar hacia dentro, hacia los demás dedos.

## After an operation at the base of the thumb

condition-thumb-cmc-arthroplasty-name = Después de una operación en la base del pulgar
condition-thumb-cmc-arthroplasty-what = Le operaron la articulación de la base del pulgar. La articulación nueva está blanda y todavía está sanando.
condition-thumb-cmc-arthroplasty-aim = La férula mantiene el pulgar separado de la palma. Así protege la articulación nueva mientras sana.

## A knuckle of the thumb that bends too far back

condition-hypermobile-thumb-name = Pulgar demasiado flexible
condition-hypermobile-thumb-what = El nudillo del pulgar se dobla demasiado hacia atrás. Pasa al presionar o al apretar algo entre el pulgar y otro dedo. Por eso duele y se cansa.
condition-hypermobile-thumb-aim = La férula evita que el nudillo se doble hacia atrás en las tareas de esfuerzo. Ayuda a los músculos, pero no los reemplaza.

## Catching thumb

condition-trigger-thumb-name = Pulgar que se traba (pulgar en gatillo)
condition-trigger-thumb-what = El tendón que dobla el pulgar está grueso y se engancha en su túnel. El pulgar da chasquidos o se queda trabado.
condition-trigger-thumb-aim = La férula mantiene recta una articulación del pulgar. El tendón se desliza menos, y la zona que duele puede descansar.

## Sewn tendon that lifts the thumb

condition-epl-repair-name = Reparación del tendón que levanta el pulgar
condition-epl-repair-what = Le repararon el tendón que levanta el pulgar. Está débil hasta que sane.
condition-epl-repair-aim = La férula mantiene el pulgar levantado y la muñeca doblada hacia atrás. Así nada tira del tendón reparado.

## Sewn tendon that bends the thumb

condition-fpl-repair-name = Reparación del tendón que dobla el pulgar
condition-fpl-repair-what = Le repararon el tendón que dobla el pulgar. Está débil hasta que sane.
condition-fpl-repair-aim = La férula evita que el pulgar se estire demasiado. Así nada tira del tendón reparado.

## Sore tendon on the little-finger side of the wrist

condition-ecu-tendinopathy-name = Dolor en un tendón de la muñeca, del lado del meñique
condition-ecu-tendinopathy-what = Duele un tendón de la muñeca, del lado del meñique. Inclinar y girar la mano hace que duela más.
condition-ecu-tendinopathy-aim = La férula evita que la muñeca se incline. Así descansa el tendón que duele.

## Sprained wrist

condition-wrist-sprain-name = Esguince de muñeca (torcedura)
condition-wrist-sprain-what = Los ligamentos que unen los huesos de la muñeca se estiraron. Los huesos están en su lugar.
condition-wrist-sprain-aim = La férula mantiene quieta la muñeca mientras usa la mano. Así los ligamentos pueden calmarse.

## Torn cushion on the little-finger side of the wrist
## “Dentro de la muñeca” tells it from a pad of the splint.

condition-tfcc-injury-name = Almohadilla rota dentro de la muñeca
condition-tfcc-injury-what = Se rompió una almohadilla pequeña dentro de la muñeca, del lado del meñique. Girar el brazo la roza con fuerza.
condition-tfcc-injury-aim = La férula evita que el brazo gire y que la muñeca se incline. Así descansa la almohadilla.

## Broken scaphoid, after the cast

condition-scaphoid-after-cast-name = Hueso roto de la muñeca, del lado del pulgar, después del yeso
condition-scaphoid-after-cast-what = Se rompió un hueso pequeño de la muñeca. Ya está unido, pero todavía no está fuerte.
condition-scaphoid-after-cast-aim = La férula protege el hueso de noche, al aire libre y entre mucha gente.

## Broken radius at the wrist, after the cast

condition-distal-radius-after-cast-name = Muñeca rota, después del yeso
condition-distal-radius-after-cast-what = Se rompió el hueso grande del antebrazo, en la muñeca. Ya está unido, pero todavía no está fuerte.
condition-distal-radius-after-cast-aim = La férula protege la muñeca de noche, al aire libre y al levantar peso. Usted se la quita para mover la muñeca.

## Movements to leave out, beside those that other conditions have

avoid-thumb-ip-flexion = No doble la punta del pulgar.
avoid-thumb-ip-extension = No estire la punta del pulgar.
avoid-thumb-cmc-flexion = No cruce el pulgar sobre la palma.
avoid-forearm-any = No gire la palma hacia arriba ni hacia abajo.

## How to hold an arm that may not turn while the splint is off to wash

support-forearm-thumb-up = Cuando se la quite, apoye el antebrazo en la mesa. Mantenga el pulgar hacia arriba. No gire el brazo. No use la mano.
