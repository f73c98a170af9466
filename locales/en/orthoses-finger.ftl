### Splints of the fingers and the hand: names, straps, places to check, and the steps of putting on and taking off.
### “Your finger” is the finger that the splint is for; where several fingers are in it, that one is “the treated finger”.
### The joints of a finger are the big knuckle, the middle joint and the tip. Left and right are never typed.

## Names
## The name stands inside sentences; the short form is a label in tables.

orthosis-tip-shell-custom-name = fingertip splint
orthosis-tip-shell-custom-short = Fingertip
orthosis-tip-shell-ready-name = ready-made fingertip splint
orthosis-tip-shell-ready-short = Fingertip, ready-made
orthosis-tip-cast-name = fingertip cast
orthosis-tip-cast-short = Fingertip cast
orthosis-finger-gutter-middle-joint-name = middle joint finger splint
orthosis-finger-gutter-middle-joint-short = Middle joint
orthosis-finger-gutter-long-name = full finger splint
orthosis-finger-gutter-long-short = Full finger
orthosis-ring-stops-bending-back-name = ring splint that stops bending back
orthosis-ring-stops-bending-back-short = Ring, no bending back
orthosis-ring-keeps-straight-name = ring splint that keeps a finger straight
orthosis-ring-keeps-straight-short = Ring, keeps straight
orthosis-serial-finger-cast-name = finger straightening cast
orthosis-serial-finger-cast-short = Finger straightening cast
orthosis-spring-finger-extension-name = finger splint with a spring
orthosis-spring-finger-extension-short = Finger spring
orthosis-finger-wedge-stepped-name = finger splint with a wedge
orthosis-finger-wedge-stepped-short = Finger wedge
orthosis-finger-extension-block-name = finger splint with a roof
orthosis-finger-extension-block-short = Finger roof
orthosis-buddy-straps-name = buddy straps
orthosis-buddy-straps-short = Buddy straps
orthosis-knuckle-block-name = knuckle splint for one finger
orthosis-knuckle-block-short = Finger knuckle
orthosis-trigger-ring-name = middle joint ring splint
orthosis-trigger-ring-short = Middle joint ring
orthosis-relative-extension-yoke-name = bar splint that lifts one finger
orthosis-relative-extension-yoke-short = Bar, finger lifted
orthosis-relative-flexion-yoke-name = bar splint that lowers one finger
orthosis-relative-flexion-yoke-short = Bar, finger lowered
orthosis-dorsal-block-long-name = long splint for the back of the hand
orthosis-dorsal-block-long-short = Back of hand, long
orthosis-dorsal-block-short-name = short splint for the back of the hand
orthosis-dorsal-block-short-short = Back of hand, short
orthosis-ulnar-gutter-name = long splint for the ring and little fingers
orthosis-ulnar-gutter-short = Ring, little and wrist
orthosis-knuckle-shell-ring-little-name = knuckle splint for the ring and little fingers
orthosis-knuckle-shell-ring-little-short = Ring and little knuckles
orthosis-metacarpal-sleeve-name = hand bone sleeve
orthosis-metacarpal-sleeve-short = Hand bone sleeve
orthosis-phalanx-gutter-pair-name = splint for a pair of fingers
orthosis-phalanx-gutter-pair-short = Pair of fingers
orthosis-night-finger-extension-name = night finger splint
orthosis-night-finger-extension-short = Finger, night
orthosis-drift-strap-name = soft strap splint for the knuckles
orthosis-drift-strap-short = Soft knuckle straps
orthosis-knuckle-extension-block-name = knuckle splint with a bar
orthosis-knuckle-extension-block-short = Knuckle bar

## Straps
## Each name is put into “Close the …” and “Undo the …”.

strap-finger-tape = tape strap
strap-finger-base = strap at the base of the finger
strap-finger-past-middle-joint = strap just past the middle joint
strap-finger-end = strap near the fingertip
# Buddy straps hold a finger to its neighbour.
strap-finger-pair-base = strap at the base of both fingers
strap-finger-pair-end = strap past the middle joints of both fingers
# In a shell that holds a finger and its neighbour.
strap-finger-pair = strap round both fingers
# Across all four fingers, under a roof on the back of the hand.
strap-finger-row = strap across the fingers
strap-finger-loops = finger loops

## Places to look at in the skin check

spot-finger-end-joint-back = back of the joint nearest the fingertip
spot-finger-nail-skin = skin round the nail
spot-finger-pad-sides = sides of the fingertip pad
spot-finger-sides = both sides of the finger
spot-finger-sides-near-base = both sides of the finger, near its base
spot-finger-middle-joint-back = back of the middle joint
spot-finger-middle-joint-backs = backs of the middle joints
spot-ring-little-middle-joint-backs = backs of the middle joints
spot-finger-joint-creases = creases on the palm side of the finger
spot-finger-web = skin where the fingers meet the palm
spot-finger-between = skin between the fingers
spot-finger-under-ring = skin under the ring
spot-finger-cast-edges = skin along both edges of the cast
spot-finger-tip-cast-edges = skin along both edges of the cast
spot-finger-base-front = palm side of the finger, near its base
spot-finger-first-bone-back = back of the finger, next to the big knuckle
spot-finger-knuckle-backs = backs of the big knuckles
spot-ring-little-knuckle-backs = backs of the big knuckles
spot-finger-hand-edge = little-finger edge of the hand
spot-finger-wrist-back-edge = back of the wrist, where the splint ends
spot-finger-over-break = skin over the broken bone
spot-finger-wound-line = wound or scar

## Fingertip splints
## The tip must not bend while it heals: it lies on the table from before the strap opens until it is closed again.

step-finger-tip-on-table = Lay your finger flat on a table with its tip straight.
step-finger-dry-on-table = Dry the finger with a towel. Keep the tip flat.
step-finger-slide-on-from-tip = Slide the splint on from the tip. Keep the finger straight.
step-finger-lift-when-closed = Lift the finger only when the splint is closed.
step-finger-check-tip-straight = Check that the tip lies straight and firm in the splint.
step-finger-lay-out-towel = Lay a towel on the table before you open anything.
step-finger-slide-off-forwards = Slide the splint straight off over the tip. Do not tilt it.
step-finger-tip-if-healing = If the tip is healing, keep it flat on the table.
step-finger-look-on-table = Look at your skin while the finger stays on the table.

## Splints along a finger

step-finger-straight-on-table = Rest your finger on a table, as straight as it goes.
step-finger-push-to-base = Push the splint on until it reaches the finger's base.
step-finger-slide-on = Slide the splint on gently from the tip.
step-finger-straps-off-joints = Check that no strap lies over a joint.
step-finger-check-tip-bends = Check that the tip of your finger can bend.
step-finger-check-middle-joint-bends = Check that the middle joint of your finger can bend.
step-finger-check-knuckle-bends = Check that the big knuckle of your finger can bend.
step-finger-middle-if-healing = If the middle joint is healing, keep it flat on the table.
step-finger-straight-if-healing = If your finger is healing, keep it straight on the table.

## A roof that stops a finger from straightening

step-finger-bend-slightly = Bend the middle joint of your finger a little.
step-finger-roof-on-finger = Lay the splint along the back of your finger.
step-finger-check-stops-short = Check that the roof stops your finger from straightening too far.
step-finger-bent-if-healing = If the middle joint is healing, keep it a little bent.

## Springs and wedges
## The pull comes last when it goes on and first when it comes off.

step-finger-joint-at-spring = Line up your middle joint with the bend of the spring.
step-finger-spring-last = Let the spring pull slowly.
step-finger-hold-spring = Hold the spring so that it cannot snap back.
step-finger-wedge-back = Slide the wedge all the way back.
step-finger-wedge-in = Slide the wedge in to the mark your clinic set.
step-finger-check-mild-pull = Check that the pull feels mild and does not hurt.

## Rings

step-finger-check-ring = Check that the ring is clean, dry and not bent.
step-finger-keep-straight = Keep your finger straight.
step-finger-slide-ring-on = Slide the ring on from the tip.
step-finger-ring-cross-front = Turn the ring until its cross lies under the middle joint.
step-finger-ring-cross-back = Turn the ring until its cross lies on the middle joint's back.
step-finger-ring-over-joint = Push the ring on until it covers the middle joint.
step-finger-check-full-bend = Check that your finger can bend all the way.
step-finger-check-not-back = Check that the middle joint cannot bend backwards.
step-finger-check-middle-joint-straight = Check that the middle joint stays straight.
step-finger-slide-ring-off = Slide the ring off over the tip.
step-finger-ring-stuck = If the ring sticks, use a little soapy water.

## Casts
## Only the clinic puts a cast on and takes it off.

step-finger-cast-by-clinic = Let only your clinic put the cast on.
step-finger-cast-cover = Seal a bag over the cast before you wash yourself.
step-finger-cast-look-at-edges = Look at the skin along both edges of the cast.
step-finger-cast-off-by-clinic = Let only your clinic take the cast off.
step-finger-cast-no-cutting = Do not cut the cast, pull it or poke under it.
step-finger-cast-slips = If it slips or breaks, keep your finger straight and call us.

## Buddy straps

step-finger-dry-between = Dry your skin well, also between the fingers.
step-finger-beside-neighbour = Lay your finger beside the neighbour that your clinic chose.
step-finger-check-both-bend = Check that both fingers bend together.
step-finger-look-between = Look at your skin on all sides, also between the fingers.

## Knuckle splints for one finger

step-finger-push-into-ring = Push your finger into the ring.
step-finger-palm-piece-flat = Lay the palm piece flat in your palm.

## Bar splints
## One finger lies higher or lower than its neighbours. In the first kind wrist and fingers must not drop.

step-finger-towel-roll = Put a rolled towel on the table.
step-finger-wrist-back-on-towel = Rest your hand on the towel with your wrist bent back.
step-finger-fingers-straight = Keep your fingers straight.
step-finger-yoke-on-top = Lay the treated finger on top of the bar.
step-finger-yoke-others-under = Slide the fingers beside it under the bar.
step-finger-yoke-below = Slide the treated finger under the bar.
step-finger-yoke-others-over = Lay the fingers beside it on top of the bar.
step-finger-yoke-to-base = Push the bar to the base of your fingers.
step-finger-check-higher = Check that the treated finger lies higher than its neighbours.
step-finger-check-lower = Check that the treated finger lies lower than its neighbours.
step-finger-check-joints-beyond-bend = Check that the middle joints and tips can bend.
step-finger-slide-off-fingers = Slide the splint forwards off your fingers.
step-finger-tendon-if-healing = If a tendon is healing, let neither wrist nor fingers drop.

## Splints on the back of the hand
## For sewn bending tendons: wrist and fingers stay bent, and nobody straightens them.

step-finger-only-when-allowed = Follow these steps only if your clinic said you may.
step-finger-curl-over-towel = Rest your hand over the towel, wrist bent and fingers curled.
step-finger-roof-over-hand = Lower the splint onto the back of your hand.
step-finger-check-under-roof = Check that every fingertip lies under the roof.
step-finger-stay-curled = Leave your fingers curled. Do not straighten them.
step-finger-look-while-curled = Look at your skin while your fingers stay curled.

## Splints for broken bones

step-finger-pad-between = Lay the soft strip between both fingers.
step-finger-little-side-in = Lay the little-finger side of your hand in the splint.
step-finger-knuckles-in-bend = Check that your big knuckles sit in the splint's bend.
step-finger-knuckles-bent-fingers-straight = Bend your big knuckles. Keep your fingers straight.
step-finger-check-not-crossed = Check that no finger crosses its neighbour.
step-finger-knuckles-if-healing = If a bone is healing, keep your big knuckles bent.
step-finger-sleeve-over-hand = Slide the sleeve over your hand to the sore bone.
step-finger-sleeve-behind-knuckles = Keep the sleeve's front edge behind your big knuckles.
step-finger-slide-off-hand = Slide the splint forwards off your hand.

## Night splints, finger loops, knuckle bars

step-finger-rest-easy = Lay your finger in, only as straight as is easy.
step-finger-check-no-pull = Check that nothing pulls on your skin.
step-finger-loops-on = Slide each finger into its loop.
step-finger-easy-pull = Pull the loops only as far as feels easy.
step-finger-check-in-line = Check that your fingers point straight ahead.
step-finger-bend-knuckles-little = Bend your big knuckles a little.
step-finger-under-bar = Slide your ring and little fingers under the bar.
step-finger-check-straighten = Check that your middle joints can straighten.

## Putting it on with one hand
## There is no other hand: table, towel, book, thigh and the thumb of the same hand do the work.

step-finger-against-book = Lay the open splint on a table against a heavy book.
step-finger-slide-along-table = Slide your finger flat along the table into the splint.
step-finger-slide-in-easy = Slide your finger along the table into the splint.
step-finger-push-under-roof = Slide each finger that is in the splint under its roof.
step-finger-push-hand-in = Push your hand into the sleeve.
step-finger-own-thumb = Use the thumb of the same hand for the straps.
step-finger-upright-in-towel = Press the splint upright into a rolled towel.
step-finger-thumb-turns-ring = Use the thumb of the same hand on the ring.
step-finger-wrist-stays-back = Keep your wrist bent back.
step-finger-straps-as-loops = Start with each strap closed as a loose loop.
step-finger-through-loops = Push both fingers through the loops.
step-finger-trap-strap-end = Trap each strap's end under your thigh and pull gently.
step-finger-cast-cover-with-knees = Hold the bag between your knees and push your hand in.
step-finger-trained-helper = Let the helper your clinic taught do this. Never do it alone.
