### Conditions of the fingers: the name, what is wrong, and what the splint does.
### Words for a reader of about twelve. The splint is never said to cure anything.

## Finger that catches

condition-trigger-finger-name = Catching finger (trigger finger)
condition-trigger-finger-what = The cord that bends your finger runs through a tunnel in the palm. It is too thick there and catches or locks.
condition-trigger-finger-aim = The splint lets your finger bend less. The cord then rubs less in the tunnel and can rest.

## Fingertip that droops, torn cord

condition-mallet-tendon-name = Drooping fingertip, torn cord (mallet finger)
condition-mallet-tendon-what = The thin cord that lifts your fingertip is torn. Its ends join only if the tip never droops.
condition-mallet-tendon-aim = The splint keeps your fingertip straight while the cord heals.

## Fingertip that droops, chip of bone

condition-mallet-bony-name = Drooping fingertip, chip of bone (mallet finger)
condition-mallet-bony-what = The cord that lifts your fingertip pulled off a chip of bone. The chip joins again only if the tip stays still.
condition-mallet-bony-aim = The splint keeps your fingertip straight while the bone heals.

## Torn strip over the middle joint, fresh

condition-boutonniere-acute-name = Torn cord over the middle joint
condition-boutonniere-acute-what = The cord that straightens the middle joint of your finger is torn. Each bend pulls its ends apart.
condition-boutonniere-acute-aim = The splint keeps the middle joint straight. Your fingertip stays free, and bending it helps the cord.

## Middle joint fixed bent after a tear

condition-boutonniere-chronic-name = Middle joint bent after an old tear
condition-boutonniere-chronic-what = An old tear let the middle joint of your finger stay bent. It has become stiff.
condition-boutonniere-chronic-aim = The splint works to bring the joint straight, slowly and gently. Later it keeps it there.

## Middle joint that bends backwards

condition-swan-neck-name = Middle joint that bends backwards (swan neck)
condition-swan-neck-what = The middle joint of your finger slips backwards and gets stuck there. Then it is hard to make a fist.
condition-swan-neck-aim = The splint stops the joint from going backwards. You can still bend it.

## Jammed finger, front of the middle joint

condition-pip-volar-plate-name = Jammed finger, front of the middle joint
condition-pip-volar-plate-what = The firm plate at the front of the middle joint is hurt. Bending backwards hurts it again.
condition-pip-volar-plate-aim = The splint guards the joint from going backwards. Bending it the usual way is good for it.

## Sprained side of the middle joint

condition-pip-collateral-sprain-name = Sprained side of the middle joint
condition-pip-collateral-sprain-what = The band at the side of the middle joint is stretched or partly torn. Pushes to the side pull it open.
condition-pip-collateral-sprain-aim = The splint guards the joint from pushes to the side while the band heals.

## Middle joint that does not straighten

condition-pip-flexion-contracture-name = Middle joint that is stiff and bent
condition-pip-flexion-contracture-what = The skin and bands at the front of the middle joint have become short. Your finger does not go straight.
condition-pip-flexion-contracture-aim = The splint holds the joint gently towards straight. Long and gentle works better than short and hard.

## Worn joint at the fingertip

condition-dip-osteoarthritis-name = Worn joint at the fingertip
condition-dip-osteoarthritis-what = The last joint of your finger is worn. It can be sore and lumpy.
condition-dip-osteoarthritis-aim = The splint lets the joint rest at night. This can make it less sore.

## Torn band over the knuckle

condition-sagittal-band-injury-name = Torn band over the knuckle
condition-sagittal-band-injury-what = A small band keeps the cord on top of your big knuckle. It is torn, and the cord slips off in a fist.
condition-sagittal-band-injury-aim = The splint keeps the knuckle from bending far. The cord stays on top while the band heals.

## Broken bone below the little finger

condition-fifth-metacarpal-neck-fracture-name = Broken bone below the little finger
condition-fifth-metacarpal-neck-fracture-what = The bone in your palm below the little finger is broken near the knuckle. It has to join again.
condition-fifth-metacarpal-neck-fracture-aim = The splint guards the bone while it heals. It also helps the finger not to turn.

## Broken first bone of a finger

condition-proximal-phalanx-fracture-name = Broken first bone of a finger
condition-proximal-phalanx-fracture-what = The bone between the big knuckle and the middle joint is broken. It has to join again.
condition-proximal-phalanx-fracture-aim = The splint keeps the bone in place while it heals. It holds the joints so that they stiffen less.
