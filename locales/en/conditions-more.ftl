### Conditions of tendons after repair, of nerves, of the elbow, of sore joints and of burns.
### The name, what is wrong, and what the splint does. Words for a reader of about twelve; nothing is said to be cured.

## Repaired tendons

condition-flexor-zone-two-repair-name = Mended bending tendon of your finger
condition-flexor-zone-two-repair-what = The cords that bend your finger were cut and sewn. Gripping, or pulling it straight, can tear the stitches.
condition-flexor-zone-two-repair-aim = The splint guards the stitches while they heal. It stops your fingers from going too straight.
condition-extensor-zone-three-repair-name = Mended tendon over the middle joint of your finger
condition-extensor-zone-three-repair-what = The cord that straightens your middle joint was cut and sewn. One bend can pull the stitches apart.
condition-extensor-zone-three-repair-aim = The splint keeps the middle joint straight while the cord heals.
condition-extensor-zone-five-six-repair-name = Mended tendon on the back of your hand
condition-extensor-zone-five-six-repair-what = The cord that lifts your finger was cut and sewn. A full fist can pull the stitches apart.
condition-extensor-zone-five-six-repair-aim = The splint keeps the big knuckle of your finger up. This takes the pull off the stitches.

## Nerves

condition-carpal-tunnel-name = Pressed nerve at your wrist (carpal tunnel)
condition-carpal-tunnel-what = A nerve passes through a tight tunnel at your wrist. A bent wrist squeezes it, most of all in sleep.
condition-carpal-tunnel-aim = The splint keeps your wrist straight. This gives the nerve more room.
condition-carpal-tunnel-release-name = After the operation for a pressed nerve at your wrist
condition-carpal-tunnel-release-what = The roof of the tunnel at your wrist was opened. The wound has to heal, and your fingers have to move.
condition-carpal-tunnel-release-aim = The splint rests your wrist for the first days. Your fingers stay free to move.
condition-cubital-tunnel-name = Pressed nerve at your elbow
condition-cubital-tunnel-what = A nerve runs round the inner side of your elbow. Bending the elbow far or leaning on it strains this nerve.
condition-cubital-tunnel-aim = The splint stops your elbow from bending far at night. By day, do not lean on your elbow.
condition-radial-nerve-palsy-name = Dropped wrist
condition-radial-nerve-palsy-what = The nerve that lifts your wrist and fingers is not working now. Your hand hangs down.
condition-radial-nerve-palsy-aim = The splint helps your wrist stay up. Then your fingers can grip better.
condition-median-nerve-palsy-low-name = Thumb that cannot lift off the palm
condition-median-nerve-palsy-low-what = The nerve for the pad of muscle below your thumb is not working now. Parts of your hand may feel numb.
condition-median-nerve-palsy-low-aim = The splint keeps the space beside your thumb open. Your thumb stays in a place where you can use it.
condition-ulnar-nerve-palsy-name = Clawing ring and little fingers
condition-ulnar-nerve-palsy-what = The nerve for small muscles of your hand is not working now. Your ring and little fingers curl like a claw.
condition-ulnar-nerve-palsy-aim = The splint stops the big knuckles from bending back. Then you can straighten these fingers better.

## The elbow

condition-lateral-elbow-name = Sore tendons at the outer side of your elbow
condition-lateral-elbow-what = The muscles that lift your wrist begin at your elbow. Their cords are sore there, most of all when you grip and lift.
condition-lateral-elbow-aim = The splint takes some of the pull off the sore cords while you work.

## The hand

condition-dupuytren-release-name = After the operation for a bent finger (Dupuytren)
condition-dupuytren-release-what = Tight bands in your palm were cut so your finger can open. The scar may pull it back in.
condition-dupuytren-release-aim = The splint holds your finger at night where it lies at ease. It helps to keep the finger open.
condition-rheumatoid-knuckle-drift-name = Fingers that drift to the side (rheumatoid)
condition-rheumatoid-knuckle-drift-what = The bands beside your big knuckles are loose. Your fingers lean towards the little-finger side.
condition-rheumatoid-knuckle-drift-aim = The splint lines your fingers up while you use your hand. It does not stop the drift.
condition-rheumatoid-wrist-name = Sore wrist joint (rheumatoid)
condition-rheumatoid-wrist-what = Your wrist joint is sore and swollen from the rheumatoid illness.
condition-rheumatoid-wrist-aim = The splint keeps your wrist steady. This can ease the pain at rest and in tasks.
condition-stroke-tight-hand-name = Tight hand after a stroke
condition-stroke-tight-hand-what = After your stroke the muscles that close your hand pull too much. The hand is hard to open.
condition-stroke-tight-hand-aim = The splint rests your hand half open. This can help comfort and keep the skin of your palm clean.

## Burns

condition-dorsal-hand-burn-name = Burn on the back of your hand
condition-dorsal-hand-burn-what = The skin on the back of your hand is burnt. Skin gets shorter as it heals and can pull your hand out of shape.
condition-dorsal-hand-burn-aim = The splint holds your big knuckles bent and your fingers straight. In this shape the new skin stays long.
condition-palmar-hand-burn-name = Burn in the palm of your hand
condition-palmar-hand-burn-what = The skin of your palm is burnt. Skin gets shorter as it heals and can pull your hand closed.
condition-palmar-hand-burn-aim = The splint holds your palm and fingers open. In this shape the new skin stays long.

## Movements to leave out
## The joints of a finger are the big knuckle, the middle joint and the tip.

avoid-wrist-extension = Do not bend your wrist back.
avoid-wrist-flexion = Do not bend your wrist forward.
avoid-fingers-mcp-flexion = Do not bend your big knuckles.
avoid-fingers-mcp-ulnar-deviation = Do not push your fingers towards the little-finger side.
avoid-fingers-pip-flexion = Do not bend the middle joints of your fingers.
