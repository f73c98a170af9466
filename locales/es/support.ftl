### How to hold the part while the splint is off to wash.
### The splint is off and nothing guards what heals, so each message says how to rest it and what not to do.
### “Let nothing drop” means the wrist and the fingers or thumb, so Spanish names them.

support-thumb-beside-index = Cuando se la quite, apoye la mano en la mesa. Mantenga el pulgar junto al dedo índice. No use la mano.
support-tip-flat-on-table = Cuando se la quite, apoye el dedo plano en la mesa. Mantenga la punta plana. Nunca deje que se doble, ni una sola vez.
support-finger-flat-on-table = Cuando se la quite, apoye el dedo plano en la mesa. Mantenga recta la articulación central. Nunca deje que se doble.
support-finger-bent-over-towel = Cuando se la quite, apoye el dedo sobre una toalla enrollada. Mantenga la articulación central un poco doblada. Nunca deje que se vaya hacia atrás.
support-finger-flat-guarded = Cuando se la quite, apoye el dedo plano en la mesa. Que nada lo empuje hacia un lado. No use la mano.
support-wrist-on-towel-fingers-straight = Cuando se la quite, apoye el antebrazo en la mesa. Ponga la palma y los dedos rectos sobre una toalla enrollada. No deje caer la muñeca ni los dedos.
support-thumb-up-on-towel = Cuando se la quite, apoye el antebrazo en la mesa. Ponga la palma y el pulgar recto sobre una toalla enrollada. No deje caer la muñeca ni el pulgar.
support-forearm-flat = Cuando se la quite, apoye el antebrazo y la mano planos en la mesa. No gire el brazo. No use la mano.
support-knuckles-bent-on-towel = Cuando se la quite, apoye los dedos sobre una toalla enrollada. Mantenga los nudillos grandes doblados. No use la mano.
