### More activities: what people do with their hands, and easier ways to do it.
### The name stands as a short order in a table, such as “Wash the dishes”.
### Every other message is one or two short sentences of advice beside that name.

## More ways for jobs named elsewhere

activity-text-with-thumbs-open-elbow = Rest your arm. Keep your elbow wider open than a square corner.
activity-hold-tablet-open-elbow = Move it further away. Keep your elbow wider open than a square corner.
activity-drive-car-open-elbow = Set the seat so that your elbow opens wider than a square corner.
activity-brush-teeth-lean-forward = Lean over the sink. Bring your head to the brush.

## Shower and wash your hair

activity-wash-hair-shower-name = Shower and wash your hair
activity-wash-hair-shower-arm-bag = Pull a waterproof bag over your hand and splint. Close it well at the top.
activity-wash-hair-shower-pump-bottle = Use a pump bottle and a sponge with a long handle.
activity-wash-hair-shower-bend-head = Bend your head down. Keep your elbow wider open than a square corner.
activity-wash-hair-shower-other-hand = Wash with your other hand, or ask someone to wash your hair.

## Pull up trousers or socks

activity-pull-up-clothes-name = Pull up trousers or socks
activity-pull-up-clothes-loose-waist = Wear loose clothes with a soft waist.
activity-pull-up-clothes-loops = Sew loops inside. Put your forearm through them and pull.
activity-pull-up-clothes-flat-palms = Sit down. Push the cloth up with flat palms.
activity-pull-up-clothes-other-hand = Pull with your other hand, or ask someone to help.

## Fasten a strap behind your back

activity-fasten-back-strap-name = Fasten a strap behind your back
activity-fasten-back-strap-pull-over = Wear a soft one that you pull over your head.
activity-fasten-back-strap-turn-round = Close it in front. Then turn it round.
activity-fasten-back-strap-front-closing = Choose one that closes in front with wide hooks.
activity-fasten-back-strap-helper = Ask someone to close it.

## Wipe after the toilet

activity-toilet-wipe-name = Wipe after the toilet
activity-toilet-wipe-cover-splint = Pull a thin bag over the splint. Throw it away afterwards.
activity-toilet-wipe-long-wiper = Use a wiper with a long handle, or a seat that washes you.
activity-toilet-wipe-other-hand = Wipe with your other hand.
activity-toilet-wipe-helper = Ask someone you trust to help you.

## Cut your nails

activity-cut-nails-name = Cut your nails
activity-cut-nails-fixed-clipper = Use a clipper fixed to a board. Press it with your palm.
activity-cut-nails-file = File your nails with a wide file. Hold it loosely.
activity-cut-nails-few-at-once = Cut a few nails each day.
activity-cut-nails-helper = Ask someone to cut them.

## Tie shoe laces

activity-tie-laces-name = Tie shoe laces
activity-tie-laces-slip-on = Wear shoes that slip on. Use a long shoe horn.
activity-tie-laces-stretch-laces = Use stretchy laces that stay tied.
activity-tie-laces-helper = Ask someone to tie them.

## Open a ring-pull can or a bottle cap

activity-ring-pull-cap-name = Open a ring-pull can or a bottle cap
activity-ring-pull-cap-lever-opener = Use a lever that lifts the ring for you.
activity-ring-pull-cap-cap-grip = Lay a rubber mat over the cap. Turn it with your flat palm.
activity-ring-pull-cap-easy-packs = Buy packs that open without force.
activity-ring-pull-cap-helper = Ask someone to open it for you.

## Chop vegetables

activity-chop-vegetables-name = Chop vegetables
activity-chop-vegetables-upright-knife = Use a knife that rocks or has an upright handle.
activity-chop-vegetables-cook-first = Cook them first. Soft food needs less force.
activity-chop-vegetables-ready-cut = Buy vegetables that are cut already.
activity-chop-vegetables-helper = Ask someone to chop.

## Wash the dishes

activity-wash-dishes-name = Wash the dishes
activity-wash-dishes-long-brush = Use cool water and a brush with a long handle.
activity-wash-dishes-soak-first = Let the dishes soak first. Then wipe them lightly.
activity-wash-dishes-dishwasher = Use a dishwasher. Put in light things, one by one.
activity-wash-dishes-helper = Ask someone to wash them.

## Knead dough or stir a thick mix

activity-knead-dough-name = Knead dough or stir a thick mix
activity-knead-dough-upright-spoon = Stand the bowl on a wet cloth. Stir with an upright spoon, from your shoulder.
activity-knead-dough-thin-mix = Make the mix thinner, and make less of it.
activity-knead-dough-mixer = Let a machine mix it.
activity-knead-dough-helper = Ask someone to knead.

## Carry plates or a tray

activity-carry-plates-name = Carry plates or a tray
activity-carry-plates-flat-palms = Slide both flat palms under it. Hold it close to your body.
activity-carry-plates-trolley = Push them on a trolley.
activity-carry-plates-one-by-one = Carry one plate at a time. Let hot ones cool first.
activity-carry-plates-helper = Ask someone to carry them.

## Eat with knife and fork

activity-eat-with-cutlery-name = Eat with knife and fork
activity-eat-with-cutlery-fat-handles = Use cutlery with long, fat handles.
activity-eat-with-cutlery-rocking-knife = Cut with a knife that rocks.
activity-eat-with-cutlery-soft-food = Choose soft food that needs no knife.
activity-eat-with-cutlery-other-hand = Eat with your other hand. Ask someone to cut your food.

## Turn a door knob or a tap

activity-turn-door-knob-name = Turn a door knob or a tap
activity-turn-door-knob-lever-handle = Fit a lever over it. Press the lever with your forearm.
activity-turn-door-knob-leave-open = Leave inside doors open a little. Push them with your hip.
activity-turn-door-knob-other-hand = Turn it with your other hand.
activity-turn-door-knob-helper = Ask someone to turn it for you.

## Vacuum the floor

activity-vacuum-name = Vacuum the floor
activity-vacuum-walk-along = Keep your elbow by your side. Walk along with it.
activity-vacuum-light-cleaner = Use a light cleaner, or one that drives itself.
activity-vacuum-one-room = Do one room. Then rest your hand.
activity-vacuum-helper = Ask someone to do it.

## Hang up the washing

activity-hang-washing-name = Hang up the washing
activity-hang-washing-hangers = Hang clothes on hangers or lay them over a rack.
activity-hang-washing-soft-pegs = Use pegs that open easily.
activity-hang-washing-small-loads = Wash small loads. Spin them well.
activity-hang-washing-helper = Ask someone to hang it up.

## Scrub the bath

activity-scrub-bath-name = Scrub the bath
activity-scrub-bath-long-handle = Use a sponge on a long, fat handle.
activity-scrub-bath-let-soak = Spray, wait, and rinse. Do not rub.
activity-scrub-bath-short-bouts = Clean a small part each day.
activity-scrub-bath-helper = Ask someone to clean it.

## Push up from a chair

activity-rise-from-chair-name = Push up from a chair
activity-rise-from-chair-high-seat = Sit on a higher, firm seat. Then your legs lift you more easily.
activity-rise-from-chair-legs-first = Slide forward and lean forward. Push up with your legs.
activity-rise-from-chair-forearm-rest = Press with your forearm on the chair arm, not with your hand.
activity-rise-from-chair-other-hand = Push with your other hand, or ask someone to help you up.

## Iron clothes

activity-iron-clothes-name = Iron clothes
activity-iron-clothes-light-iron = Use a small, light iron.
activity-iron-clothes-hang-smooth = Hang clothes up damp and smooth. Many need no iron.
activity-iron-clothes-few-pieces = Iron a few pieces. Then rest your hand.
activity-iron-clothes-other-hand = Iron with your other hand, or ask someone to iron.

## Make the bed

activity-make-bed-name = Make the bed
activity-make-bed-light-covers = Use one light cover and loose sheets.
activity-make-bed-flat-hands = Push the sheets in place with flat hands and forearms.
activity-make-bed-few-corners = Do not lift the mattress. Leave the corners loose.
activity-make-bed-helper = Ask someone to make it.

## Lean on a walking stick or frame

activity-lean-on-stick-name = Lean on a walking stick or frame
activity-lean-on-stick-wide-grip = Ask us to check the height. A wide, soft grip helps.
activity-lean-on-stick-forearm-rest = Ask us for one that your forearm rests on. Do not walk without support.
activity-lean-on-stick-other-hand = Ask us if your other hand may hold it. Do not walk without support.

## Hold a dog lead

activity-hold-dog-lead-name = Hold a dog lead
activity-hold-dog-lead-waist-lead = Use a lead that goes round your waist.
activity-hold-dog-lead-calm-walks = Take short, calm walks with a harness that stops pulling.
activity-hold-dog-lead-helper = Ask someone to hold the lead. Never wrap it round your fingers.

## Use a screwdriver

activity-use-screwdriver-name = Use a screwdriver
activity-use-screwdriver-powered-driver = Use a light driver with a motor.
activity-use-screwdriver-fat-handle = Use a fat handle that turns in small steps.
activity-use-screwdriver-elbow-in = Keep your elbow at your side. Put your body behind it.
activity-use-screwdriver-helper = Ask someone to drive the screws.

## Use a hammer

activity-hammer-name = Use a hammer
activity-hammer-light-hammer = Use a light hammer with a soft, fat handle.
activity-hammer-few-nails = Drive a few nails. Then rest your hand.
activity-hammer-helper = Ask someone to hammer.

## Use a power drill

activity-power-drill-name = Use a power drill
activity-power-drill-light-drill = Use a light drill with a side handle.
activity-power-drill-two-hands = Hold it with both hands, your elbows at your sides.
activity-power-drill-short-bouts = Drill one hole. Then rest your hand.
activity-power-drill-helper = Ask someone to drill.

## Lift boxes

activity-lift-boxes-name = Lift boxes
activity-lift-boxes-palms-under = Turn your palms up. Slide your forearms under and stay close.
activity-lift-boxes-half-load = Fill boxes only half.
activity-lift-boxes-trolley = Push them on a trolley. Do not lift from the floor.
activity-lift-boxes-helper = Ask someone to lift them.

## Pick up small parts or coins

activity-handle-small-parts-name = Pick up small parts or coins
activity-handle-small-parts-soft-tray = Lay them on a soft mat. Slide them off the edge.
activity-handle-small-parts-wide-tweezers = Use tweezers with a wide, soft grip, or a magnet.
activity-handle-small-parts-pauses = Do a few. Then rest your hand.
activity-handle-small-parts-other-hand = Pick them up with your other hand.

## Hold a baby to feed

activity-feed-baby-name = Hold a baby to feed
activity-feed-baby-firm-pillow = Lay your baby on a firm pillow. Let the pillow carry the weight.
activity-feed-baby-straight-wrist = Rest the head in the crook of your arm. Keep your wrist straight.
activity-feed-baby-change-sides = Change sides often. Straighten your arm in between.
activity-feed-baby-helper = Ask someone to lay your baby in place and stay near.

## Change a nappy

activity-change-nappy-name = Change a nappy
activity-change-nappy-easy-tabs = Choose nappies with wide tabs that open easily.
activity-change-nappy-roll-baby = Roll your baby to the side. Do not hold both feet up.
activity-change-nappy-wipes-ready = Lay everything out, open and ready, before you start.
activity-change-nappy-other-hand = Let your other hand do the tabs, or ask someone to change it.

## Buckle a child seat

activity-buckle-child-seat-name = Buckle a child seat
activity-buckle-child-seat-buckle-key = Use a lever made for pressing buckles.
activity-buckle-child-seat-knuckle = Press the button with a bent knuckle.
activity-buckle-child-seat-helper = Use your other hand, or ask someone. Check that it is shut.

## Push a pram

activity-push-pram-name = Push a pram
activity-push-pram-open-palms = Push with open palms.
activity-push-pram-high-bar = Set the bar high and pad it. Rest your forearms on it.
activity-push-pram-helper = Push with your other hand, or ask someone to push.

## Dig

activity-dig-name = Dig
activity-dig-small-spade = Use a small, light spade with a long handle.
activity-dig-foot-pushes = Let your foot push the spade.
activity-dig-short-bouts = Take half a spade at a time. Stop after a few.
activity-dig-helper = Ask someone to dig. You show where.

## Pull weeds

activity-pull-weeds-name = Pull weeds
activity-pull-weeds-long-weeder = Use a hoe or a weeder with a long, fat handle.
activity-pull-weeds-after-rain = Weed after rain, when roots come out easily.
activity-pull-weeds-short-bouts = Do one small patch. Then rest your hand.
activity-pull-weeds-helper = Ask someone to weed. You show where.

## Water plants

activity-water-plants-name = Water plants
activity-water-plants-two-hands = Hold the can with both hands, close to your body.
activity-water-plants-little-water = Fill the can only a little.
activity-water-plants-hose = Use a hose with a lever that stays on.
activity-water-plants-helper = Water with your other hand, or ask someone.

## Fasten a seat belt

activity-fasten-seat-belt-name = Fasten a seat belt
activity-fasten-seat-belt-belt-handle = Put a handle on the belt that is easy to reach.
activity-fasten-seat-belt-knuckle = Press the catch with a bent knuckle.
activity-fasten-seat-belt-other-hand = Pull the belt across with your other hand. Ask someone to close it.

## Ride a bicycle

activity-cycle-name = Ride a bicycle
activity-cycle-high-bar = Raise the handlebar. Use soft, fat grips.
activity-cycle-short-rides = Ride a short way on smooth paths.
activity-cycle-indoor-bike = Use an exercise bike. Sit upright and let your hands rest.

## Lift weights

activity-lift-weights-name = Lift weights
activity-lift-weights-half-weight = Use half the weight. Do fewer.
activity-lift-weights-forearm-cuff = Pull with a cuff on your forearm. Do not grip a bar.
activity-lift-weights-legs-only = Train your legs and middle. Hold nothing.

## Do press-ups or yoga

activity-press-ups-yoga-name = Do press-ups or yoga
activity-press-ups-yoga-legs-only = Choose poses on your legs, back or side.
activity-press-ups-yoga-straight-wrist = Hold fixed handles so that your wrist stays straight.
activity-press-ups-yoga-fewer = Lean on a wall, not on the floor.

## Swim

activity-swim-name = Swim
activity-swim-float = Rest your forearms on a float. Swim with your legs.
activity-swim-dry-at-once = Dry your skin and the splint as soon as you come out.
activity-swim-short-swim = Swim for a short time.

## Play the guitar

activity-play-guitar-name = Play the guitar
activity-play-guitar-light-strings = Use light strings that need little pressure.
activity-play-guitar-neck-higher = Hold the neck higher with a strap. Keep your wrist straight.
activity-play-guitar-short-bouts = Play one song. Then rest your hand.

## Sleep

activity-sleep-position-name = Sleep
activity-sleep-position-splint-on = Wear your splint at night when this guide says so.
activity-sleep-position-arm-on-pillow = Lay your arm on a pillow beside you, as straight as is easy.
activity-sleep-position-soft-towel = Wrap a soft towel loosely round your elbow, so that it bends less.

## Hold a phone to your ear

activity-hold-phone-to-ear-name = Hold a phone to your ear
activity-hold-phone-to-ear-loudspeaker = Use the loudspeaker or a headset. Lay the phone down.
activity-hold-phone-to-ear-short-calls = Keep calls short. Straighten your arm in between.
activity-hold-phone-to-ear-other-hand = Hold the phone in your other hand.
