### A pair of pictures shows a splint as it should sit and as it should not: what is wrong, and what to do.

fault-slid-past-palm-crease = The splint has slid towards the fingers. They cannot bend. Push it back until its edge is below the crease of your palm.
fault-palm-strap-on-knuckles = The strap lies over the knuckles. Move it back on to the hand, so that the knuckles can bend.
fault-slid-over-knuckles = The splint has slid towards the fingers and presses on the knuckles. Push it back until the knuckles are free.
fault-slid-over-thumb-tip-joint = The splint has slid towards the tip of the thumb. Push it back until the tip of your thumb can bend.
fault-thumb-out = The thumb is outside its tube. Take the splint off, and put the thumb in first.
fault-slid-off-thumb-base = The splint has slid off the base of the thumb. Push it back towards the wrist until it holds the base of your thumb.
fault-fingertips-over-edge = The splint has slid towards the elbow. The fingers hang over its end. Push it forward until your fingertips lie on it.
fault-finger-strap-on-middle-joints = The strap lies over the middle joints of the fingers. Move it back, next to the knuckles.
fault-finger-piece-slid = The splint has slid towards the fingertip. Push it back to the base of the finger, until the tip can bend.
fault-strap-on-middle-joint = The strap lies over the middle joint and presses. Move it off the joint, towards the fingertip.
fault-tip-droops = The splint has slid off the end joint, and the fingertip droops. Lay the finger flat on a table. Push the splint back over the joint. Tell us that the tip drooped.
