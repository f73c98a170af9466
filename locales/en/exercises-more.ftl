### More exercises: name, starting position and one action for each step.
### The name is a short order and stands as a heading. Steps are numbered by the program.
### $hold is a finished length of time, such as the words for five seconds.
### “Other hand” is the hand without the splint. “Treated finger” is the finger that the splint is for.
### The joints of a finger are the big knuckle, the middle joint and the tip.

## Arm and wrist

exercise-shoulder-reach-name = Reach up with your arm
exercise-shoulder-reach-start = Sit or stand with your arm by your side.
exercise-shoulder-reach-step-1 = Lift your arm in front of you, as high as is easy.
exercise-shoulder-reach-step-2 = Hold for { $hold }.
exercise-shoulder-reach-step-3 = Lower your arm slowly.
exercise-shoulder-reach-step-4 = Next time, lift it out to the side.

exercise-wrist-dart-name = Move your wrist as if throwing a dart
exercise-wrist-dart-start = Rest your forearm on a table on its little-finger side, with your hand over the edge. Keep your fingers and thumb loose.
exercise-wrist-dart-step-1 = Tilt your hand back and towards your thumb.
exercise-wrist-dart-step-2 = Hold for { $hold }.
exercise-wrist-dart-step-3 = Tilt your hand forwards and towards your little finger.
exercise-wrist-dart-step-4 = Hold for { $hold }.

# Ordered by the clinician only.
exercise-wrist-swing-with-fingers-name = Swing your wrist and fingers together
exercise-wrist-swing-with-fingers-start = Rest your elbow on a table. Move only as far as your therapist showed you.
exercise-wrist-swing-with-fingers-step-1 = Let your wrist drop forwards, so that your fingers open.
exercise-wrist-swing-with-fingers-step-2 = Hold for { $hold }.
exercise-wrist-swing-with-fingers-step-3 = Lift your wrist, so that your fingers curl into a soft fist.
exercise-wrist-swing-with-fingers-step-4 = Hold for { $hold }.

exercise-forearm-front-stretch-name = Stretch the palm side of your forearm
exercise-forearm-front-stretch-start = Hold your arm out in front of you, palm up.
exercise-forearm-front-stretch-step-1 = Straighten your elbow.
exercise-forearm-front-stretch-step-2 = Take your palm and fingers in your other hand.
exercise-forearm-front-stretch-step-3 = Draw your hand gently down until you feel a pull.
exercise-forearm-front-stretch-step-4 = Hold for { $hold }.
exercise-forearm-front-stretch-step-5 = Let go slowly.

exercise-forearm-back-stretch-name = Stretch the back of your forearm
exercise-forearm-back-stretch-start = Hold your arm out in front of you, palm down. Keep your fingers loose.
exercise-forearm-back-stretch-step-1 = Straighten your elbow.
exercise-forearm-back-stretch-step-2 = Lay your other hand on the back of your hand.
exercise-forearm-back-stretch-step-3 = Press your hand gently down until you feel a pull.
exercise-forearm-back-stretch-step-4 = Hold for { $hold }.
exercise-forearm-back-stretch-step-5 = Let go slowly.

exercise-palms-together-stretch-name = Stretch your wrists with palms together
exercise-palms-together-stretch-start = Put your palms together in front of your chest, fingers up.
exercise-palms-together-stretch-step-1 = Lower your hands slowly. Keep your palms together.
exercise-palms-together-stretch-step-2 = Stop when you feel a gentle pull.
exercise-palms-together-stretch-step-3 = Hold for { $hold }.
exercise-palms-together-stretch-step-4 = Raise your hands again.

## Fingers

# A neighbour of the treated finger may be in the splint too.
exercise-free-finger-bend-name = Move your free fingers
exercise-free-finger-bend-start = Hold your hand up with your fingers pointing up.
exercise-free-finger-bend-step-1 = Bend only the fingers that may move freely.
exercise-free-finger-bend-step-2 = Hold for { $hold }.
exercise-free-finger-bend-step-3 = Straighten them slowly.

exercise-fingers-straight-name = Straighten your fingers
exercise-fingers-straight-start = Hold your hand up with your fingers pointing up.
exercise-fingers-straight-step-1 = Straighten all your fingers as far as is easy.
exercise-fingers-straight-step-2 = Hold for { $hold }.
exercise-fingers-straight-step-3 = Let them relax.

exercise-tabletop-name = Bend only your big knuckles
exercise-tabletop-start = Hold your hand up with your fingers pointing up.
exercise-tabletop-step-1 = Bend your big knuckles. Keep the rest of your fingers straight.
exercise-tabletop-step-2 = Hold for { $hold }.
exercise-tabletop-step-3 = Straighten your big knuckles.

exercise-straight-fist-name = Make a flat fist
exercise-straight-fist-start = Hold your hand up with your fingers pointing up.
exercise-straight-fist-step-1 = Bend your big knuckles and middle joints. Keep the tips straight.
exercise-straight-fist-step-2 = Lay your fingertips flat on your palm.
exercise-straight-fist-step-3 = Hold for { $hold }.
exercise-straight-fist-step-4 = Straighten your fingers.

exercise-five-positions-name = Go through the hand shapes
exercise-five-positions-start = Hold your hand up with your fingers pointing up.
exercise-five-positions-step-1 = Straighten all your fingers.
exercise-five-positions-step-2 = Make a hook. Keep your big knuckles straight.
exercise-five-positions-step-3 = Make a soft full fist.
exercise-five-positions-step-4 = Bend only your big knuckles. Keep the rest straight.
exercise-five-positions-step-5 = Lay your fingertips flat on your palm. Keep the tips straight.
exercise-five-positions-step-6 = Hold each shape for { $hold } before the next.

exercise-block-tip-bend-name = Bend only the tip of your finger
exercise-block-tip-bend-start = Rest your hand on a table, palm up. With your other hand, hold the treated finger between its middle joint and its end joint.
exercise-block-tip-bend-step-1 = Bend only the tip.
exercise-block-tip-bend-step-2 = Hold for { $hold }.
exercise-block-tip-bend-step-3 = Straighten the tip.

exercise-block-middle-bend-name = Bend only the middle joint
exercise-block-middle-bend-start = Rest your hand on a table, palm up. With your other hand, hold the treated finger between its big knuckle and its middle joint.
exercise-block-middle-bend-step-1 = Bend only the middle joint.
exercise-block-middle-bend-step-2 = Hold for { $hold }.
exercise-block-middle-bend-step-3 = Straighten the middle joint.

exercise-knuckle-bent-straighten-name = Straighten the middle joint, knuckle bent
exercise-knuckle-bent-straighten-start = Bend the big knuckle of the treated finger. Hold it bent with your other hand.
exercise-knuckle-bent-straighten-step-1 = Straighten the middle joint as far as is easy.
exercise-knuckle-bent-straighten-step-2 = Hold for { $hold }.
exercise-knuckle-bent-straighten-step-3 = Let the middle joint relax.

exercise-finger-lift-name = Lift your fingers in turn
exercise-finger-lift-start = Lay your palm flat on a table.
exercise-finger-lift-step-1 = Lift a finger off the table. Keep the others down.
exercise-finger-lift-step-2 = Hold for { $hold }.
exercise-finger-lift-step-3 = Lower it slowly.
exercise-finger-lift-step-4 = Do the same with each of the other fingers.

exercise-tip-bend-middle-straight-name = Bend the tip, middle joint straight
exercise-tip-bend-middle-straight-start = Rest your hand on a table. Keep the splint on.
exercise-tip-bend-middle-straight-step-1 = Keep the middle joint of the treated finger straight.
exercise-tip-bend-middle-straight-step-2 = Bend only the tip.
exercise-tip-bend-middle-straight-step-3 = Hold for { $hold }.
exercise-tip-bend-middle-straight-step-4 = Straighten the tip.

exercise-middle-bend-tip-held-name = Bend the middle joint of your finger
exercise-middle-bend-tip-held-start = Rest your elbow on a table with your fingers up. Keep the splint on.
exercise-middle-bend-tip-held-step-1 = Bend the middle joint of the treated finger.
exercise-middle-bend-tip-held-step-2 = Hold for { $hold }.
exercise-middle-bend-tip-held-step-3 = Straighten it slowly.

## After a tendon repair
## Ordered by the clinician only.

exercise-short-arc-middle-bend-name = Bend the middle joint a little
exercise-short-arc-middle-bend-start = Use only the measuring piece your therapist made. Keep the big knuckle straight.
exercise-short-arc-middle-bend-step-1 = Lay the treated finger along the measuring piece.
exercise-short-arc-middle-bend-step-2 = Bend the middle joint only until the finger touches the piece.
exercise-short-arc-middle-bend-step-3 = Hold for { $hold }.
exercise-short-arc-middle-bend-step-4 = Straighten the middle joint fully.
exercise-short-arc-middle-bend-step-5 = Put the splint on again when you have done them all.

exercise-helped-curl-in-splint-name = Curl your fingers with your other hand
exercise-helped-curl-in-splint-start = Keep the splint on. Undo only the straps your therapist showed you. Keep your fingers loose.
exercise-helped-curl-in-splint-step-1 = Use your other hand to curl a finger gently towards your palm.
exercise-helped-curl-in-splint-step-2 = Hold for { $hold }.
exercise-helped-curl-in-splint-step-3 = Let the finger go slowly. Do not pull it straight.
exercise-helped-curl-in-splint-step-4 = Do the same with each finger.
exercise-helped-curl-in-splint-step-5 = Close the straps again when you have done them all.

exercise-straighten-to-roof-name = Straighten your fingers to the splint
exercise-straighten-to-roof-start = Keep the splint on. Undo only the straps your therapist showed you. Keep your big knuckles against the splint.
exercise-straighten-to-roof-step-1 = Straighten your fingers until they touch the splint.
exercise-straighten-to-roof-step-2 = Hold for { $hold }.
exercise-straighten-to-roof-step-3 = Let them relax.
exercise-straighten-to-roof-step-4 = Close the straps again when you have done them all.

exercise-half-fist-in-splint-name = Make a loose half fist
exercise-half-fist-in-splint-start = Keep the splint on. Undo only the straps your therapist showed you.
exercise-half-fist-in-splint-step-1 = Bend your fingers softly, half way to your palm.
exercise-half-fist-in-splint-step-2 = Hold for { $hold }. Do not squeeze.
exercise-half-fist-in-splint-step-3 = Straighten your fingers until they touch the splint.
exercise-half-fist-in-splint-step-4 = Close the straps again when you have done them all.

exercise-place-and-hold-name = Place your fingers and hold them
exercise-place-and-hold-start = Rest your elbow on a table. Move only as far as your therapist showed you.
exercise-place-and-hold-step-1 = Use your other hand to curl your fingers softly.
exercise-place-and-hold-step-2 = Take your other hand away.
exercise-place-and-hold-step-3 = Keep your fingers there softly for { $hold }. Do not squeeze.
exercise-place-and-hold-step-4 = Let your fingers relax.

exercise-yoke-bend-name = Bend your fingers in the splint
exercise-yoke-bend-start = Rest your elbow on a table with your fingers up. Keep the splint on. Do not let your wrist drop forwards.
exercise-yoke-bend-step-1 = Bend all your fingers as far as the splint lets you.
exercise-yoke-bend-step-2 = Hold for { $hold }.
exercise-yoke-bend-step-3 = Straighten all your fingers.

## Stretches of a finger

exercise-helped-curl-stretch-name = Curl your finger with help
exercise-helped-curl-stretch-start = Rest your hand on a table, palm up.
exercise-helped-curl-stretch-step-1 = Use your other hand to curl the treated finger slowly.
exercise-helped-curl-stretch-step-2 = Stop when you feel a gentle pull.
exercise-helped-curl-stretch-step-3 = Hold for { $hold }.
exercise-helped-curl-stretch-step-4 = Let go slowly.

exercise-helped-straighten-stretch-name = Straighten your finger with help
exercise-helped-straighten-stretch-start = Lay the back of your hand on a table. With your other hand, hold the treated finger between its big knuckle and its middle joint.
exercise-helped-straighten-stretch-step-1 = Press the middle joint gently towards straight.
exercise-helped-straighten-stretch-step-2 = Stop when you feel a gentle pull.
exercise-helped-straighten-stretch-step-3 = Hold for { $hold }.
exercise-helped-straighten-stretch-step-4 = Let go slowly.

exercise-intrinsic-stretch-name = Curl your finger, knuckle straight
exercise-intrinsic-stretch-start = Rest your elbow on a table with your fingers up.
exercise-intrinsic-stretch-step-1 = Keep the big knuckle of the treated finger straight.
exercise-intrinsic-stretch-step-2 = Use your other hand to bend its middle joint and tip.
exercise-intrinsic-stretch-step-3 = Stop when you feel a gentle pull.
exercise-intrinsic-stretch-step-4 = Hold for { $hold }.
exercise-intrinsic-stretch-step-5 = Let go slowly.

## Thumb

exercise-thumb-bend-across-name = Bend your thumb across your palm
exercise-thumb-bend-across-start = Rest your hand on a table, palm up.
exercise-thumb-bend-across-step-1 = Bend your thumb slowly across your palm.
exercise-thumb-bend-across-step-2 = Hold for { $hold }.
exercise-thumb-bend-across-step-3 = Straighten your thumb.

exercise-thumb-web-release-name = Soften the web beside your thumb
exercise-thumb-web-release-start = Rest your hand on a table on its little-finger side.
exercise-thumb-web-release-step-1 = Rub the skin between thumb and index finger gently.
exercise-thumb-web-release-step-2 = With your other hand, hold your thumb between its knuckle and your wrist.
exercise-thumb-web-release-step-3 = Draw your thumb gently away from your palm.
exercise-thumb-web-release-step-4 = Hold for { $hold }.
exercise-thumb-web-release-step-5 = Let go slowly.

exercise-thumb-wrist-slow-lower-name = Lower your hand slowly, thumb up
exercise-thumb-wrist-slow-lower-start = Rest your forearm on a table on its little-finger side. Hold the small weight your therapist chose. Do this only every other day.
exercise-thumb-wrist-slow-lower-step-1 = Lift your hand towards your thumb with your other hand.
exercise-thumb-wrist-slow-lower-step-2 = Take your other hand away.
exercise-thumb-wrist-slow-lower-step-3 = Let your hand sink slowly. Take { $hold } for it.

## Nerves

exercise-thumb-side-nerve-slide-name = Let the thumb-side nerve slide
exercise-thumb-side-nerve-slide-start = Sit with your elbow bent and your wrist straight.
exercise-thumb-side-nerve-slide-step-1 = Make a loose fist.
exercise-thumb-side-nerve-slide-step-2 = Straighten your fingers. Keep your thumb beside them.
exercise-thumb-side-nerve-slide-step-3 = Bend your wrist gently back.
exercise-thumb-side-nerve-slide-step-4 = Move your thumb out to the side.
exercise-thumb-side-nerve-slide-step-5 = Turn your palm up.
exercise-thumb-side-nerve-slide-step-6 = Hold each position for { $hold } before the next.

exercise-little-finger-nerve-slide-name = Let the little-finger nerve slide
exercise-little-finger-nerve-slide-start = Hold your arm out to the side, palm up.
exercise-little-finger-nerve-slide-step-1 = Bend your elbow half way while your wrist bends to the palm side.
exercise-little-finger-nerve-slide-step-2 = Hold for { $hold }.
exercise-little-finger-nerve-slide-step-3 = Straighten your elbow while your wrist bends gently to the back of the hand.
exercise-little-finger-nerve-slide-step-4 = Hold for { $hold }.

## Strength

exercise-wrist-press-still-name = Press without moving your wrist
exercise-wrist-press-still-start = Rest your forearm on a table, palm down, with your hand over the edge.
exercise-wrist-press-still-step-1 = Lay your other hand on the back of your hand.
exercise-wrist-press-still-step-2 = Press gently up against it. Do not let your wrist move.
exercise-wrist-press-still-step-3 = Hold for { $hold }.
exercise-wrist-press-still-step-4 = Relax your hand.
exercise-wrist-press-still-step-5 = Next time, put your other hand under your palm and press down on it.

exercise-putty-grip-name = Squeeze soft putty
exercise-putty-grip-start = Lay a lump of soft putty in your palm.
exercise-putty-grip-step-1 = Squeeze it gently with your fingers and thumb.
exercise-putty-grip-step-2 = Hold for { $hold }.
exercise-putty-grip-step-3 = Let go slowly.
exercise-putty-grip-step-4 = Roll the putty into a lump again.

exercise-three-point-pinch-name = Pinch soft putty, round shape
exercise-three-point-pinch-start = Take a small lump of soft putty.
exercise-three-point-pinch-step-1 = Hold it between your thumb, index and middle fingers.
exercise-three-point-pinch-step-2 = Keep every joint a little bent.
exercise-three-point-pinch-step-3 = Pinch the putty gently.
exercise-three-point-pinch-step-4 = Hold for { $hold }.
exercise-three-point-pinch-step-5 = Let go slowly.

exercise-key-pinch-putty-name = Pinch soft putty like a key
exercise-key-pinch-putty-start = Take a small lump of soft putty.
exercise-key-pinch-putty-step-1 = Hold it between your thumb and the side of your index finger.
exercise-key-pinch-putty-step-2 = Pinch the putty gently.
exercise-key-pinch-putty-step-3 = Hold for { $hold }.
exercise-key-pinch-putty-step-4 = Let go slowly.

exercise-wrist-slow-lower-name = Lower your hand slowly, palm down
exercise-wrist-slow-lower-start = Rest your forearm on a table, palm down, with your hand over the edge. Hold the small weight your therapist chose.
exercise-wrist-slow-lower-step-1 = Lift your hand with the help of your other hand.
exercise-wrist-slow-lower-step-2 = Take your other hand away.
exercise-wrist-slow-lower-step-3 = Let your hand sink slowly. Take { $hold } for it.

exercise-hand-lean-name = Lean on your hand
exercise-hand-lean-start = Stand in front of a wall. Use a table or the floor only when your therapist tells you.
exercise-hand-lean-step-1 = Lay both palms on the wall.
exercise-hand-lean-step-2 = Lean slowly until you feel weight on your hands.
exercise-hand-lean-step-3 = Hold for { $hold }.
exercise-hand-lean-step-4 = Push yourself back slowly.

## Skin, scar, feeling and tightness

exercise-stroke-towards-heart-name = Stroke your arm towards your heart
exercise-stroke-towards-heart-start = Rest your arm on cushions, with your hand higher than your elbow.
exercise-stroke-towards-heart-step-1 = Lay your other hand on your fingertips.
exercise-stroke-towards-heart-step-2 = Stroke lightly from your fingertips to your elbow.
exercise-stroke-towards-heart-step-3 = Leave out the splint, and skin that is sore or open.
exercise-stroke-towards-heart-step-4 = Go on for { $hold }.

exercise-scar-massage-name = Move your scar
exercise-scar-massage-start = Do this only when the scar is closed and dry. Rest your hand on a table.
exercise-scar-massage-step-1 = Put a fingertip of your other hand on the scar.
exercise-scar-massage-step-2 = Press firmly, but not so that it hurts.
exercise-scar-massage-step-3 = Move the skin in small circles.
exercise-scar-massage-step-4 = Move the skin up and down, then from side to side.
exercise-scar-massage-step-5 = Go on along the scar for { $hold }.

exercise-texture-rub-name = Get your skin used to touch
exercise-texture-rub-start = Do this only on closed skin. Rest your hand on a table.
exercise-texture-rub-step-1 = Rub the tender skin lightly with a soft cloth.
exercise-texture-rub-step-2 = Go on for { $hold }.
exercise-texture-rub-step-3 = Use a rougher cloth when the soft one no longer bothers you.

exercise-touch-relearn-name = Learn to feel again
exercise-touch-relearn-start = Rest your hand on a table. Use nothing hot, cold or sharp.
exercise-touch-relearn-step-1 = Touch your fingertip with a small object and watch.
exercise-touch-relearn-step-2 = Close your eyes and touch the same place.
exercise-touch-relearn-step-3 = Notice where you feel it and what it feels like.
exercise-touch-relearn-step-4 = Open your eyes and compare.
exercise-touch-relearn-step-5 = Go on with other places for { $hold }.

exercise-scar-hold-stretch-name = Hold your scar stretched
exercise-scar-hold-stretch-start = Do this only when the scar is closed and dry.
exercise-scar-hold-stretch-step-1 = Move your hand slowly until the scar feels tight.
exercise-scar-hold-stretch-step-2 = Hold for { $hold }.
exercise-scar-hold-stretch-step-3 = Let your hand come back slowly.

exercise-tight-hand-slow-open-name = Open your tight hand slowly
exercise-tight-hand-slow-open-start = Rest your forearm on a cushion. Let your wrist bend forwards. Never pull fast.
exercise-tight-hand-slow-open-step-1 = Take your thumb at its base and draw it out slowly.
exercise-tight-hand-slow-open-step-2 = Straighten your fingers slowly with your other hand.
exercise-tight-hand-slow-open-step-3 = Bring your wrist slowly back. Keep your fingers straight.
exercise-tight-hand-slow-open-step-4 = Stop as soon as your hand begins to pull against you.
exercise-tight-hand-slow-open-step-5 = Hold for { $hold }.
exercise-tight-hand-slow-open-step-6 = Let your hand close slowly.
