### Conditions: the name, what is wrong, and what the splint does.
### Words for a reader of about twelve. The splint is never said to cure anything.

## Sore tendons on the thumb side of the wrist

condition-de-quervain-name = Dolor en los tendones del pulgar, en la muñeca (de Quervain)
condition-de-quervain-what = Dos tendones que van al pulgar rozan en un túnel estrecho de la muñeca. Duelen y están hinchados.
condition-de-quervain-aim = La férula mantiene quietos la muñeca y el pulgar. Así descansan los tendones que duelen.

## Torn band at the knuckle of the thumb, fresh

condition-thumb-ucl-acute-name = Ligamento roto en el nudillo del pulgar
condition-thumb-ucl-acute-what = El ligamento del lado interno del nudillo del pulgar está roto. Tiene que sanar sin que nada empuje el pulgar hacia un lado.
condition-thumb-ucl-acute-aim = La férula protege el ligamento mientras sana. Evita que algo empuje el pulgar hacia un lado, hacia afuera.

## Torn band at the knuckle of the thumb, old

condition-thumb-ucl-chronic-name = Nudillo flojo en el pulgar
condition-thumb-ucl-chronic-what = Una rotura antigua le dejó flojo el nudillo del pulgar. Cede al apretar algo entre el pulgar y otro dedo.
condition-thumb-ucl-chronic-aim = La férula da firmeza al nudillo mientras usa la mano.

## Worn joint at the base of the thumb

condition-thumb-cmc-osteoarthritis-name = Articulación desgastada en la base del pulgar
condition-thumb-cmc-osteoarthritis-what = La articulación de la base del pulgar está desgastada. Se desliza y duele al apretar algo entre el pulgar y otro dedo.
condition-thumb-cmc-osteoarthritis-aim = La férula da firmeza a la base del pulgar. Así las tareas pueden ser más fáciles y doler menos.
