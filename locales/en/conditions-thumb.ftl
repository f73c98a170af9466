### Conditions of the thumb and of the tendons and bones at the wrist: the name, what is wrong, and what the splint does.
### Words for a reader of about twelve. The splint is never said to cure anything.

## Sore tendons on the thumb side of the wrist, in pregnancy or with a small baby

condition-wrist-thumb-around-birth-name = Sore thumb tendons around the birth of a baby
condition-wrist-thumb-around-birth-what = Two cords to your thumb rub at the wrist. Lifting and feeding a baby can make them sore.
condition-wrist-thumb-around-birth-aim = The splint rests your wrist and thumb at night and while you lift. This can make caring for your baby less sore.

## Tendons that rub where they cross above the wrist

condition-intersection-syndrome-name = Rubbing tendons above the wrist
condition-intersection-syndrome-what = Cords to your wrist and thumb cross above the wrist. They rub there and are sore.
condition-intersection-syndrome-aim = The splint keeps your wrist still. This lets the sore cords rest.

## Torn band on the outer side of the thumb's knuckle

condition-thumb-rcl-injury-name = Torn outer band at the thumb knuckle
condition-thumb-rcl-injury-what = The band on the outer side of your thumb knuckle is torn. It has to heal without a push towards your fingers.
condition-thumb-rcl-injury-aim = The splint guards the band while it heals. It stops your thumb from being pushed in towards your fingers.

## After an operation at the base of the thumb

condition-thumb-cmc-arthroplasty-name = After an operation at the base of your thumb
condition-thumb-cmc-arthroplasty-what = You had an operation on the joint at the base of your thumb. The new joint is soft and still healing.
condition-thumb-cmc-arthroplasty-aim = The splint keeps your thumb away from your palm. This guards the new joint while it heals.

## A knuckle of the thumb that bends too far back

condition-hypermobile-thumb-name = Over-bendy thumb
condition-hypermobile-thumb-what = The knuckle of your thumb bends too far back when you press or pinch. That makes it sore and tired.
condition-hypermobile-thumb-aim = The splint stops the knuckle from bending back in hard tasks. It helps your muscles but does not replace them.

## Catching thumb

condition-trigger-thumb-name = Catching thumb (trigger thumb)
condition-trigger-thumb-what = The cord that bends your thumb is thick and catches in its tunnel. Your thumb clicks or gets stuck.
condition-trigger-thumb-aim = The splint keeps one joint of your thumb straight. The cord slides less, so the sore place can rest.

## Sewn tendon that lifts the thumb

condition-epl-repair-name = Mended cord that lifts your thumb
condition-epl-repair-what = The cord that lifts your thumb was mended. It is weak until it has healed.
condition-epl-repair-aim = The splint keeps your thumb up and your wrist bent back. This takes the pull off the mended cord.

## Sewn tendon that bends the thumb

condition-fpl-repair-name = Mended cord that bends your thumb
condition-fpl-repair-what = The cord that bends your thumb was mended. It is weak until it has healed.
condition-fpl-repair-aim = The splint stops your thumb from straightening too far. This takes the pull off the mended cord.

## Sore tendon on the little-finger side of the wrist

condition-ecu-tendinopathy-name = Sore tendon on the little-finger side of your wrist
condition-ecu-tendinopathy-what = A cord on the little-finger side of your wrist is sore. Tilting and twisting your hand make it worse.
condition-ecu-tendinopathy-aim = The splint stops your wrist from tilting. This lets the sore cord rest.

## Sprained wrist

condition-wrist-sprain-name = Sprained wrist
condition-wrist-sprain-what = The bands that hold your wrist together were stretched. The bones stand where they belong.
condition-wrist-sprain-aim = The splint keeps your wrist still while you use your hand. This lets the bands settle.

## Torn cushion on the little-finger side of the wrist

condition-tfcc-injury-name = Torn cushion in your wrist
condition-tfcc-injury-what = A small cushion on the little-finger side of your wrist is torn. Twisting your arm grinds on it.
condition-tfcc-injury-aim = The splint keeps your arm from twisting and your wrist from tilting. This lets the cushion rest.

## Broken scaphoid, after the cast

condition-scaphoid-after-cast-name = Broken wrist bone on the thumb side, after the cast
condition-scaphoid-after-cast-what = A small bone in your wrist was broken. It has joined, but it is not strong yet.
condition-scaphoid-after-cast-aim = The splint guards the bone at night, outdoors and in crowds.

## Broken radius at the wrist, after the cast

condition-distal-radius-after-cast-name = Broken wrist, after the cast
condition-distal-radius-after-cast-what = You broke the big bone of your arm at the wrist. It has joined, but it is not strong yet.
condition-distal-radius-after-cast-aim = The splint guards your wrist at night, outside and when you lift. You take it off to move your wrist.

## Movements to leave out, beside those that other conditions have

avoid-thumb-ip-flexion = Do not bend the tip of your thumb.
avoid-thumb-ip-extension = Do not straighten the tip of your thumb.
avoid-thumb-cmc-flexion = Do not move your thumb across your palm.
avoid-forearm-any = Do not turn your palm up or down.

## How to hold an arm that may not turn while the splint is off to wash

support-forearm-thumb-up = When it is off, rest your forearm on the table. Keep your thumb pointing up. Do not turn your arm. Do not use your hand.
