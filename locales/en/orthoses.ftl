### Splints: names, straps, places to check, and the steps of putting on and taking off.
### “Hand that wears the splint” and “other hand” are used; left and right are never typed.

## Names
## The name stands inside sentences; the short form is a label in tables.

orthosis-forearm-thumb-spica-name = long thumb splint
orthosis-forearm-thumb-spica-short = Forearm and thumb
orthosis-hand-thumb-spica-name = short thumb splint
orthosis-hand-thumb-spica-short = Hand and thumb
orthosis-short-cmc-name = thumb base splint
orthosis-short-cmc-short = Thumb base
orthosis-short-cmc-mcp-block-name = thumb base splint with knuckle block
orthosis-short-cmc-mcp-block-short = Thumb base and knuckle
orthosis-soft-wrist-thumb-wrap-name = soft wrist and thumb wrap
orthosis-soft-wrist-thumb-wrap-short = Soft wrist and thumb
orthosis-soft-thumb-wrap-name = soft thumb wrap
orthosis-soft-thumb-wrap-short = Soft thumb
orthosis-wrist-only-name = wrist splint
orthosis-wrist-only-short = Wrist

## Straps
## Each name is put into “Close the …” and “Undo the …”.

strap-wrist = wrist strap
strap-forearm = forearm strap
strap-palm = palm strap
strap-thumb = thumb strap
# A short splint ends at the wrist; this strap runs along that end.
strap-wrist-edge = strap beside the wrist

## Places to look at in the skin check

spot-wrist-bone-thumb-side = wrist bone on the thumb side
spot-wrist-bone-little-finger-side = wrist bone on the little-finger side
spot-thumb-web = skin between thumb and index finger
spot-thumb-knuckle = back and sides of the thumb knuckle
spot-thumb-base = bone at the base of the thumb
spot-palm-crease = palm, where the splint ends
spot-forearm-edge = forearm, where the splint ends

## Putting it on
## One action a step. The other hand does the work.

step-wash-dry-hands = Wash your hands and dry them well.
step-check-lining = Check that the splint is clean, dry and smooth inside.
step-open-straps = Open all the straps.
step-rest-arm-on-table = Rest your forearm on a table.
step-slide-thumb-in = Slide your thumb in gently.
step-lay-hand-in = Lay your palm in the splint, with your thumb outside.
step-seat-at-wrist = Press the splint home so that its bend sits at your wrist.
step-seat-at-thumb-base = Press the splint home round the base of your thumb.
step-smooth-the-wrap = Smooth the wrap so that it has no folds.
# $strap is a strap's name, such as “wrist strap”.
step-close-strap = Close the { $strap }.
step-check-strap-room = Check that a fingertip of your other hand fits under each strap.
step-check-wrist-bends = Check that your wrist can bend.
step-check-thumb-knuckle-bends = Check that the knuckle and tip of your thumb can bend.
step-check-thumb-tip-bends = Check that the tip of your thumb can bend.
step-check-fist = Check that you can make a fist and move your thumb.
step-look-at-fingers = Look at your fingers. They must stay warm and their usual colour.

## Taking it off

# $strap is a strap's name, such as “wrist strap”.
step-undo-strap = Undo the { $strap }.
step-lift-off = Lift the splint away. Do not drag it.
step-lift-off-thumb-side = Lift the splint off on the thumb side. Do not drag it.
step-lift-off-elbow-front = Lift the splint off the front of your elbow. Do not drag it.
step-lift-out-of-thumb-web = Lift the splint out from between your thumb and index finger.
step-lift-off-little-side = Lift the splint off on the little-finger side. Do not drag it.
step-slide-off-thumb = Slide the splint off your thumb. Do not twist it.
step-look-at-skin = Look at your skin on all sides.
