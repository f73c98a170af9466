### Splints of the thumb, the wrist and the arm, and of the whole hand: names, straps, places to check, and steps.
### What several splints share stands in orthoses.ftl. “Other hand” is the hand without the splint.

## Names of wrist splints
## The name stands inside sentences; the short form is a label in tables.

orthosis-wrist-neutral-name = straight wrist splint
orthosis-wrist-neutral-short = Wrist, straight
orthosis-wrist-dorsal-shell-name = back-of-hand wrist splint
orthosis-wrist-dorsal-shell-short = Wrist, back of hand
orthosis-wrist-all-round-name = all-round wrist splint
orthosis-wrist-all-round-short = Wrist, all round
orthosis-wrist-soft-stay-name = soft wrist splint with a bar
orthosis-wrist-soft-stay-short = Soft wrist with bar
orthosis-wrist-soft-wrap-name = soft wrist wrap
orthosis-wrist-soft-wrap-short = Soft wrist

## Names of thumb splints

orthosis-forearm-thumb-spica-tip-name = long thumb splint with tip
orthosis-forearm-thumb-spica-tip-short = Forearm and whole thumb
orthosis-thumb-knuckle-shell-name = thumb knuckle splint
orthosis-thumb-knuckle-shell-short = Thumb knuckle
orthosis-thumb-mcp-ring-name = thumb ring splint
orthosis-thumb-mcp-ring-short = Thumb ring
orthosis-thumb-tip-cap-name = thumb tip splint
orthosis-thumb-tip-cap-short = Thumb tip
# It keeps the space between thumb and index finger open.
orthosis-thumb-web-spacer-name = thumb space splint
orthosis-thumb-web-spacer-short = Thumb space
# Its roof keeps the thumb from straightening too far.
orthosis-thumb-dorsal-block-name = thumb guard splint
orthosis-thumb-dorsal-block-short = Thumb guard
# It holds the thumb up, away from the palm.
orthosis-thumb-raised-long-name = raised thumb splint
orthosis-thumb-raised-long-short = Raised thumb

## Names of arm splints and bands

orthosis-long-arm-rotation-name = long arm splint
orthosis-long-arm-rotation-short = Elbow to hand
orthosis-elbow-night-shell-name = elbow splint for the night
orthosis-elbow-night-shell-short = Elbow at night
orthosis-counterforce-band-name = forearm band
orthosis-counterforce-band-short = Forearm band
orthosis-distal-ulna-strap-name = firm wrist band
orthosis-distal-ulna-strap-short = Wrist band

## Names of splints for wrist and fingers

# Cords join wrist and fingers, so that each helps the other to move.
orthosis-tenodesis-assist-name = wrist and finger helper splint
orthosis-tenodesis-assist-short = Wrist and finger helper
# Elastic pulls lift the fingers at the big knuckles.
orthosis-dynamic-knuckle-extension-name = finger lifting splint
orthosis-dynamic-knuckle-extension-short = Finger lifter
orthosis-palm-shell-wrist-knuckles-name = wrist and knuckle splint
orthosis-palm-shell-wrist-knuckles-short = Wrist and knuckles
orthosis-resting-hand-name = resting hand splint
orthosis-resting-hand-short = Resting hand
orthosis-intrinsic-plus-shell-name = bent-knuckle hand splint
orthosis-intrinsic-plus-shell-short = Hand, knuckles bent
orthosis-palm-extension-pan-name = open-palm splint
orthosis-palm-extension-pan-short = Open palm
orthosis-spread-hand-cushion-name = soft hand cushion
orthosis-spread-hand-cushion-short = Hand cushion

## Straps
## Each name is put into “Close the …” and “Undo the …”.

strap-near-elbow = strap near the elbow
strap-upper-arm = upper-arm strap
strap-hand-back = strap across the back of the hand
strap-across-fingers = strap across the fingers
strap-across-fingertips = strap near the fingertips
# A band has one strap, which pulls it snug.
strap-band = strap of the band

## Places to look at in the skin check

spot-wrist-palm-side = palm side of the wrist
spot-wrist-back = back of the wrist
spot-forearm-thumb-side = thumb side of the forearm, just above the wrist
spot-knuckle-backs = backs of the big knuckles
spot-middle-joint-backs = backs of the middle joints of the fingers
spot-palm-below-knuckles = palm, just below the fingers
spot-palm-middle = middle of the palm
spot-splint-end-at-fingers = fingers, where the splint ends
spot-between-fingers = skin between the fingers
spot-fingertips = fingertips
spot-hand-edge-little-finger = little-finger edge of the hand
spot-loop-edges = skin under the finger loops
spot-thumb-hole = skin round the thumb hole
spot-thumb-ball = thick part of the palm below the thumb
spot-thumb-pad = soft pad of the thumb
spot-thumb-tip-joint-back = back of the thumb's end joint
spot-thumbnail-edge = skin round the thumbnail
spot-ring-crossing = skin where the ring crosses itself
spot-bar-end-in-palm = palm, where the stiff bar ends
spot-wrap-edge = skin along the edges of the soft part
spot-forearm-under-band = forearm under the band
spot-band-pad = skin under the pad of the band
spot-elbow-point = point of the elbow
spot-elbow-inner-groove = groove on the inner side of the elbow
spot-elbow-crease = crease at the front of the elbow
spot-upper-arm-edge = upper arm, where the splint ends

## Getting ready
## One action a step. The other hand does the work.

step-wash-other-hand = Wash your other hand and dry it well.
# For a splint that may only be changed by two people.
step-wait-for-helper = Do not do this alone. Wait for your trained helper.
step-ask-helper-if-possible = Ask somebody to help you, if you can.
step-loop-straps-first = Put each strap through its loop before you start.
step-lay-open-on-table = Lay the open splint on a table.
step-hold-between-knees = Hold the open splint between your knees.
step-lay-opening-towards-you = Lay the splint on a table with its opening towards you.
step-palm-down-on-table = Lay your palm on a table.
step-sit-at-table = Sit down at a table.

## Wrist splints: putting them on and taking them off

step-lay-splint-on-back = Lay the splint on the back of your hand and forearm.
# With one hand: the splint lies on the table with its hollow side up.
step-lay-back-of-arm-in = Lay the back of your hand and forearm in it.
step-press-into-splint = Press your arm gently down into the splint.
step-pull-splint-open = Pull the splint open a little.
step-slip-wrist-in = Slip your wrist in from the side.
step-slip-wrist-out = Slip your wrist out. Do not twist it.
# The bar is a flat stiff strip inside a soft splint.
step-bar-on-palm-side = Turn the splint so that its bar faces your palm.
step-slide-hand-in = Slide your hand into the splint.
step-thumb-through-hole = Put your thumb through its hole.
step-slide-off-hand = Slide the splint off your hand. Do not drag it.
step-wrap-round-wrist = Lay the wrap round your wrist.
step-lay-wrist-on-wrap = Lay your wrist on the middle of the wrap.
step-hold-wrap-on-table = Press your hand on a table to hold the wrap still.
step-unwrap = Open the wrap. Do not pull it off.

## Thumb splints: putting them on and taking them off

step-push-on-with-table-edge = Push the splint home gently against the edge of a table.
step-keep-thumb-beside-index = Keep your thumb beside your index finger.
step-slide-over-thumb = Slide the splint over your thumb.
step-seat-at-thumb-knuckle = Press the splint home round the knuckle of your thumb.
step-check-thumb-tip-lies-in = Check that the tip of your thumb lies in the splint.
step-bend-thumb-a-little = Bend your thumb a little.
step-slide-ring-on = Slide the ring over your thumb to its knuckle.
# The therapist puts a mark on the ring.
step-turn-ring-to-mark = Turn the ring until its mark lies on the back of your thumb.
step-check-thumb-stops = Straighten your thumb. The ring must stop it bending back.
step-slide-ring-off = Slide the ring off. Soapy water helps if it sticks.
step-rest-thumb-tip-flat = Rest the pad of your thumb flat on a table.
step-slide-on-from-tip = Slide the splint on from the tip. Keep the tip flat.
step-push-thumb-in-flat = Push your thumb into the splint, flat along the table.
step-check-thumb-tip-straight = Check that the tip of your thumb lies straight.
step-check-thumb-big-knuckle-bends = Check that the big knuckle of your thumb can bend.
step-slide-off-tip-flat = Slide the splint off. Keep the tip flat on the table.
step-look-at-skin-tip-flat = Look at your skin. Keep the tip flat on the table.
step-set-between-thumb-and-index = Set the splint between your thumb and index finger.

## Splints that guard a mended thumb: the thumb never leaves its position

step-rest-hand-curled-on-towel = Rest your hand on a rolled towel, wrist and fingers curled.
step-keep-thumb-loosely-bent = Keep your thumb loosely bent the whole time.
# The roof is the part of the splint along the back of the thumb.
step-check-thumb-under-roof = Check that your whole thumb lies under the roof.
step-rest-thumb-up-on-towel = Rest your hand on a towel with your thumb up.
step-keep-thumb-raised = Keep your thumb raised the whole time.
step-lay-splint-along-thumb-side = Lay the splint along the thumb side of your forearm.
step-check-thumb-straight-in-splint = Check that your whole thumb lies straight in the splint.

## Arm splints and bands

step-turn-hand-as-splint = Turn your hand the way the splint is shaped.
step-lay-whole-arm-in = Lay your arm in the splint with your elbow bent.
step-elbow-in-hollow = Let the point of your elbow sit in its hollow.
step-keep-hand-turned = Keep your hand turned the same way.
step-bend-elbow-as-splint = Bend your elbow as far as the splint is bent.
step-lay-splint-on-elbow-front = Lay the splint along the front of your elbow.
step-check-elbow-point-free = Check that nothing presses on the point of your elbow.
step-slide-band-up = Slide the open band up your forearm.
step-seat-band-below-elbow = Place the band where your forearm is thickest, below the elbow.
step-pad-on-sore-side = Turn the pad to the sore side of your arm.
step-check-no-tingling = Make a fist. Your hand must not tingle.
step-slide-band-over-hand = Slide the open band over your hand.
step-seat-band-at-wrist-bone = Place the band over the round bone of your wrist.
step-slide-band-off = Slide the band off. Do not drag it.

## Splints with loops for the fingers

step-fingers-through-loops = Put each finger through its loop.
step-loops-beside-knuckles = Slide each loop close to the big knuckle.
step-fingers-out-of-loops = Take each finger out of its loop.
step-check-fist-lifts-wrist = Make a soft fist. Your wrist must lift.
# A pull is an elastic cord between a loop and the frame.
step-hook-on-pulls = Hook the pull of each loop to the frame.
step-unhook-pulls = Unhook the pull of each loop.
step-check-fingers-bend-against-pull = Check that you can bend your fingers against the pull.

## Splints for the whole hand

step-keep-wrist-up-fingers-straight = Keep your wrist up and your fingers straight.
step-hand-on-towel-fingers-straight = Rest your hand on a rolled towel, fingers straight.
step-check-middle-joints-bend = Check that the middle joints of your fingers can bend.
step-lay-forearm-in = Lay your forearm in the splint.
step-thumb-on-its-rest = Lay your thumb in its own place.
step-fingers-on-rest = Lay your fingers side by side on the splint.
step-bend-big-knuckles = Bend your big knuckles. Leave your fingers straight.
step-keep-big-knuckles-bent = Keep your big knuckles bent and your fingers straight.
step-fingers-flat-on-splint = Lay each finger flat against the splint.
step-check-middle-joints-straight = Check that the middle joints of your fingers are straight.
step-spread-fingers-in-grooves = Lay each finger straight in its own groove.
step-let-hand-go-loose = Let your hand go as loose as it can.
step-open-hand-slowly = Open your hand slowly. Never force it.
step-lay-hand-on-cushion = Lay your palm and forearm on the cushion.
step-fingers-in-gaps = Lay each finger in its own gap.
step-dry-palm-and-gaps = Dry your palm and the skin between your fingers.
