### More signs to watch for. Each is a clause or a short noun phrase without a full stop.
### It stands in a list under a heading such as “Call us today if:”.
### Printed only where a condition names the sign.

## Emergencies

sign-finger-snap = You feel a snap, or suddenly cannot bend or straighten a finger or thumb
sign-tooth-cut-over-knuckle = A tooth cut over a knuckle turns red, swollen or sore
sign-finger-white-when-straight = A finger turns white when it is straight
sign-graft-pale-or-tight = New skin on your hand turns pale, or feels tight deep inside

## Today

sign-tip-droops-again = The tip of your finger droops again, or it bent without support
sign-middle-joint-bends-alone = The middle joint of your finger droops, or it bent without support
sign-finger-cannot-straighten = A finger drops and you cannot straighten it yourself
sign-thumb-tip-will-not-lift = You can no longer lift the tip of your thumb
sign-finger-turns-over-neighbour = A finger turns or crosses over the one beside it
sign-finger-locks = Your finger or thumb locks and will not go straight
sign-pin-loose = A pin is loose, bent or broken, or its hole leaks
sign-joint-slips = A joint slips out of place or feels loose
sign-wrist-clunks = Your wrist clunks, or hurts deep in the hollow beside your thumb
sign-night-numbness-grows = Your fingers go numb on more nights, or start to stay numb all day
sign-thumb-muscle-thinner = The pad of muscle below your thumb gets thinner
sign-hand-muscle-thinner = Your hand gets thinner between thumb and index finger
sign-little-finger-numb = Your little finger stays more numb than before
sign-elbow-band-tingles = Your hand or forearm tingles while the band or splint is on
sign-finger-stays-bent-more = A finger stays more bent than before
sign-tight-hand-tighter = Your hand gets tighter or harder to open

## At the next visit

sign-clicks-under-load = Your wrist or hand clicks and hurts when you lean or lift
