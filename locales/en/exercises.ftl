### Exercises: name, starting position and one action for each step.
### The name is a short order and stands as a heading. Steps are numbered by the program.
### $hold is a finished length of time, such as the words for five seconds.
### “Other hand” is the hand without the splint.

## Bend the tip of your thumb

exercise-thumb-tip-bend-name = Bend the tip of your thumb
exercise-thumb-tip-bend-start = Sit with your forearm on a table. Keep the splint on.
exercise-thumb-tip-bend-step-1 = Bend only the tip of your thumb.
exercise-thumb-tip-bend-step-2 = Hold for { $hold }.
exercise-thumb-tip-bend-step-3 = Straighten the tip.

## Make a fist and open it

exercise-finger-fist-open-name = Make a fist and open it
exercise-finger-fist-open-start = Hold your hand up with your fingers pointing up. Keep your thumb still.
exercise-finger-fist-open-step-1 = Bend all your fingers slowly into a soft fist.
exercise-finger-fist-open-step-2 = Hold for { $hold }.
exercise-finger-fist-open-step-3 = Straighten all your fingers.

## Make a hook with your fingers

exercise-finger-hook-name = Make a hook with your fingers
exercise-finger-hook-start = Hold your fingers up, as straight as is easy. Keep your thumb still.
exercise-finger-hook-step-1 = Keep your big knuckles as they are.
exercise-finger-hook-step-2 = Bend the other finger joints like a hook.
exercise-finger-hook-step-3 = Hold for { $hold }.
exercise-finger-hook-step-4 = Straighten your fingers.

## Spread your fingers

exercise-finger-spread-name = Spread your fingers
exercise-finger-spread-start = Lay your palm on a table with your fingers together. Keep your thumb still.
exercise-finger-spread-step-1 = Spread your fingers apart.
exercise-finger-spread-step-2 = Hold for { $hold }.
exercise-finger-spread-step-3 = Bring them together again.

## Raise your hand and pump

exercise-hand-raise-pump-name = Raise your hand and pump
exercise-hand-raise-pump-start = Sit and lift your hand above your heart.
exercise-hand-raise-pump-step-1 = Close your fingers softly.
exercise-hand-raise-pump-step-2 = Hold for { $hold }.
exercise-hand-raise-pump-step-3 = Open your fingers.
exercise-hand-raise-pump-step-4 = Lower your arm when you have done them all.

## Bend and straighten your elbow

exercise-elbow-bend-name = Bend and straighten your elbow
exercise-elbow-bend-start = Sit or stand with your arm by your side.
exercise-elbow-bend-step-1 = Bend your elbow until your hand comes near your shoulder.
exercise-elbow-bend-step-2 = Hold for { $hold }.
exercise-elbow-bend-step-3 = Straighten your elbow slowly.

## Turn your palm up and down

exercise-forearm-turn-name = Turn your palm up and down
exercise-forearm-turn-start = Sit with your elbow bent and close to your side.
exercise-forearm-turn-step-1 = Turn your palm up.
exercise-forearm-turn-step-2 = Hold for { $hold }.
exercise-forearm-turn-step-3 = Turn your palm down.
exercise-forearm-turn-step-4 = Hold for { $hold }.

## Move your wrist up and down

exercise-wrist-up-down-name = Move your wrist up and down
exercise-wrist-up-down-start = Rest your forearm on a table with your hand over the edge. Keep your thumb loose.
exercise-wrist-up-down-step-1 = Lift your hand slowly.
exercise-wrist-up-down-step-2 = Hold for { $hold }.
exercise-wrist-up-down-step-3 = Let your hand sink slowly.
exercise-wrist-up-down-step-4 = Hold for { $hold }.

## Move your wrist from side to side

exercise-wrist-side-to-side-name = Move your wrist from side to side
exercise-wrist-side-to-side-start = Lay your forearm and palm flat on a table. Keep your thumb beside your fingers.
exercise-wrist-side-to-side-step-1 = Slide your hand towards your thumb.
exercise-wrist-side-to-side-step-2 = Hold for { $hold }.
exercise-wrist-side-to-side-step-3 = Slide your hand towards your little finger.
exercise-wrist-side-to-side-step-4 = Hold for { $hold }.

## Bend the knuckle of your thumb

exercise-thumb-knuckle-bend-name = Bend the knuckle of your thumb
exercise-thumb-knuckle-bend-start = Rest your hand on a table on its little-finger side. With your other hand, hold your thumb between its knuckle and your wrist.
exercise-thumb-knuckle-bend-step-1 = Bend the knuckle of your thumb straight forwards.
exercise-thumb-knuckle-bend-step-2 = Hold for { $hold }.
exercise-thumb-knuckle-bend-step-3 = Straighten the knuckle.
exercise-thumb-knuckle-bend-step-4 = Never let the thumb move out to the side.

## Touch each fingertip with your thumb

exercise-thumb-to-fingertips-name = Touch each fingertip with your thumb
exercise-thumb-to-fingertips-start = Hold your hand up with your fingers pointing up.
exercise-thumb-to-fingertips-step-1 = Touch the tip of your index finger lightly with your thumb.
exercise-thumb-to-fingertips-step-2 = Hold for { $hold }.
exercise-thumb-to-fingertips-step-3 = Open your hand wide.
exercise-thumb-to-fingertips-step-4 = Do the same with each of the other fingers.

## Lift your thumb away from your palm

exercise-thumb-out-from-palm-name = Lift your thumb away from your palm
exercise-thumb-out-from-palm-start = Lay the back of your hand on a table.
exercise-thumb-out-from-palm-step-1 = Lift your thumb straight up, away from your palm.
exercise-thumb-out-from-palm-step-2 = Hold for { $hold }.
exercise-thumb-out-from-palm-step-3 = Let it sink back slowly.

## Hold the shape of a C

exercise-thumb-c-hold-name = Hold the shape of a C
exercise-thumb-c-hold-start = Shape your thumb and index finger like the letter C.
exercise-thumb-c-hold-step-1 = Check that your thumb is round and does not bend back.
exercise-thumb-c-hold-step-2 = Hold your thumb from outside with your other hand.
exercise-thumb-c-hold-step-3 = Press gently outwards with your thumb. Do not let it move.
exercise-thumb-c-hold-step-4 = Hold for { $hold }.
exercise-thumb-c-hold-step-5 = Relax your hand.

## Press your index finger to the side

exercise-index-side-press-name = Press your index finger to the side
exercise-index-side-press-start = Lay your hand flat on a table, palm down.
exercise-index-side-press-step-1 = Put your other hand against the thumb side of your index finger.
exercise-index-side-press-step-2 = Press your index finger gently towards your thumb. Do not let it move.
exercise-index-side-press-step-3 = Hold for { $hold }.
exercise-index-side-press-step-4 = Relax your hand.

## Squeeze a soft ball

exercise-soft-ball-squeeze-name = Squeeze a soft ball
exercise-soft-ball-squeeze-start = Lay a soft sponge ball in your palm. Keep your thumb off it.
exercise-soft-ball-squeeze-step-1 = Squeeze the ball softly with your fingers.
exercise-soft-ball-squeeze-step-2 = Hold for { $hold }.
exercise-soft-ball-squeeze-step-3 = Let go slowly.
