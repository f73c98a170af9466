### Exercises: name, starting position and one action for each step.
### The name is a short order and stands as a heading. Steps are numbered by the program.
### $hold is a finished length of time, such as the words for five seconds.
### “Autre main” is the hand without the splint.
### Where the thumb stays still, write “les doigts sauf le pouce” if “tous les doigts” could include it.

## Bend the tip of your thumb

exercise-thumb-tip-bend-name = Pliez le bout du pouce
exercise-thumb-tip-bend-start = Asseyez-vous, l’avant-bras sur une table. N’enlevez pas l’attelle.
exercise-thumb-tip-bend-step-1 = Pliez seulement le bout du pouce.
exercise-thumb-tip-bend-step-2 = Tenez { $hold }.
exercise-thumb-tip-bend-step-3 = Tendez le bout.

## Make a fist and open it

exercise-finger-fist-open-name = Fermez le poing et ouvrez-le
exercise-finger-fist-open-start = Levez la main, les doigts vers le haut. Ne bougez pas le pouce.
exercise-finger-fist-open-step-1 = Pliez lentement tous les doigts, sauf le pouce, en un poing souple.
exercise-finger-fist-open-step-2 = Tenez { $hold }.
exercise-finger-fist-open-step-3 = Tendez tous les doigts, sauf le pouce.

## Make a hook with your fingers

exercise-finger-hook-name = Faites un crochet avec les doigts
exercise-finger-hook-start = Levez les doigts, tendus autant que c’est facile. Ne bougez pas le pouce.
exercise-finger-hook-step-1 = Gardez les jointures de base comme elles sont.
exercise-finger-hook-step-2 = Pliez les autres articulations des doigts, comme un crochet.
exercise-finger-hook-step-3 = Tenez { $hold }.
exercise-finger-hook-step-4 = Tendez les doigts.

## Spread your fingers

exercise-finger-spread-name = Écartez les doigts
exercise-finger-spread-start = Posez la paume sur une table, les doigts joints. Ne bougez pas le pouce.
exercise-finger-spread-step-1 = Écartez les doigts, sauf le pouce.
exercise-finger-spread-step-2 = Tenez { $hold }.
exercise-finger-spread-step-3 = Rapprochez-les de nouveau.

## Raise your hand and pump

exercise-hand-raise-pump-name = Levez la main, fermez et ouvrez les doigts
exercise-hand-raise-pump-start = Asseyez-vous et levez la main plus haut que le cœur.
exercise-hand-raise-pump-step-1 = Fermez doucement les doigts.
exercise-hand-raise-pump-step-2 = Tenez { $hold }.
exercise-hand-raise-pump-step-3 = Ouvrez les doigts.
exercise-hand-raise-pump-step-4 = Baissez le bras quand vous avez tout fait.

## Bend and straighten your elbow

exercise-elbow-bend-name = Pliez et tendez le coude
exercise-elbow-bend-start = En position assise ou debout, laissez le bras le long du corps.
exercise-elbow-bend-step-1 = Pliez le coude jusqu’à ce que la main arrive près de l’épaule.
exercise-elbow-bend-step-2 = Tenez { $hold }.
exercise-elbow-bend-step-3 = Tendez lentement le coude.

## Turn your palm up and down

exercise-forearm-turn-name = Tournez la paume vers le haut et vers le bas
exercise-forearm-turn-start = Asseyez-vous, le coude plié et contre le corps.
exercise-forearm-turn-step-1 = Tournez la paume vers le haut.
exercise-forearm-turn-step-2 = Tenez { $hold }.
exercise-forearm-turn-step-3 = Tournez la paume vers le bas.
exercise-forearm-turn-step-4 = Tenez { $hold }.

## Move your wrist up and down

exercise-wrist-up-down-name = Bougez le poignet vers le haut et vers le bas
exercise-wrist-up-down-start = Posez l’avant-bras sur une table, la main au-delà du bord. Gardez le pouce souple.
exercise-wrist-up-down-step-1 = Levez lentement la main.
exercise-wrist-up-down-step-2 = Tenez { $hold }.
exercise-wrist-up-down-step-3 = Laissez lentement descendre la main.
exercise-wrist-up-down-step-4 = Tenez { $hold }.

## Move your wrist from side to side

exercise-wrist-side-to-side-name = Bougez le poignet d’un côté à l’autre
exercise-wrist-side-to-side-start = Posez l’avant-bras et la paume à plat sur une table. Gardez le pouce à côté des autres doigts.
exercise-wrist-side-to-side-step-1 = Glissez la main du côté du pouce.
exercise-wrist-side-to-side-step-2 = Tenez { $hold }.
exercise-wrist-side-to-side-step-3 = Glissez la main du côté du petit doigt.
exercise-wrist-side-to-side-step-4 = Tenez { $hold }.

## Bend the knuckle of your thumb

exercise-thumb-knuckle-bend-name = Pliez la jointure du pouce
exercise-thumb-knuckle-bend-start = Posez la main sur une table, sur le côté du petit doigt. Avec l’autre main, tenez le pouce entre sa jointure et le poignet.
exercise-thumb-knuckle-bend-step-1 = Pliez la jointure du pouce tout droit vers l’avant.
exercise-thumb-knuckle-bend-step-2 = Tenez { $hold }.
exercise-thumb-knuckle-bend-step-3 = Tendez la jointure.
exercise-thumb-knuckle-bend-step-4 = Ne laissez jamais le pouce partir sur le côté.

## Touch each fingertip with your thumb

exercise-thumb-to-fingertips-name = Touchez le bout de chaque doigt avec le pouce
exercise-thumb-to-fingertips-start = Levez la main, les doigts vers le haut.
exercise-thumb-to-fingertips-step-1 = Touchez légèrement le bout de l’index avec le pouce.
exercise-thumb-to-fingertips-step-2 = Tenez { $hold }.
exercise-thumb-to-fingertips-step-3 = Ouvrez grand la main.
exercise-thumb-to-fingertips-step-4 = Faites de même avec chacun des autres doigts.

## Lift your thumb away from your palm

exercise-thumb-out-from-palm-name = Levez le pouce, loin de la paume
exercise-thumb-out-from-palm-start = Posez le dos de la main sur une table.
exercise-thumb-out-from-palm-step-1 = Levez le pouce tout droit vers le haut, loin de la paume.
exercise-thumb-out-from-palm-step-2 = Tenez { $hold }.
exercise-thumb-out-from-palm-step-3 = Laissez-le redescendre lentement.

## Hold the shape of a C

exercise-thumb-c-hold-name = Tenez la forme d’un C
exercise-thumb-c-hold-start = Formez la lettre C avec le pouce et l’index.
exercise-thumb-c-hold-step-1 = Vérifiez que le pouce est arrondi et ne part pas en arrière.
exercise-thumb-c-hold-step-2 = Tenez le pouce par l’extérieur avec l’autre main.
exercise-thumb-c-hold-step-3 = Poussez doucement le pouce vers l’extérieur. Ne le laissez pas bouger.
exercise-thumb-c-hold-step-4 = Tenez { $hold }.
exercise-thumb-c-hold-step-5 = Relâchez la main.

## Press your index finger to the side

exercise-index-side-press-name = Poussez l’index de côté
exercise-index-side-press-start = Posez la main à plat sur une table, paume vers le bas.
exercise-index-side-press-step-1 = Mettez l’autre main contre l’index, du côté du pouce.
exercise-index-side-press-step-2 = Poussez doucement l’index vers le pouce. Ne le laissez pas bouger.
exercise-index-side-press-step-3 = Tenez { $hold }.
exercise-index-side-press-step-4 = Relâchez la main.

## Squeeze a soft ball

exercise-soft-ball-squeeze-name = Serrez une balle molle
exercise-soft-ball-squeeze-start = Posez une balle en mousse molle dans la paume. Gardez le pouce loin d’elle.
exercise-soft-ball-squeeze-step-1 = Serrez doucement la balle avec les doigts, sans le pouce.
exercise-soft-ball-squeeze-step-2 = Tenez { $hold }.
exercise-soft-ball-squeeze-step-3 = Relâchez lentement.
