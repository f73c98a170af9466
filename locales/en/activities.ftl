### Activities: what people do with their hands, and easier ways to do it.
### The name stands as a short order in a table, such as “Open a jar”.
### Every other message is one or two short sentences of advice beside that name.

## Open a jar

activity-open-jar-name = Open a jar
activity-open-jar-jar-opener = Use a jar opener that is fixed to the wall or table.
activity-open-jar-break-seal = Break the seal with the handle of a spoon first. Then the lid turns with less force.
activity-open-jar-flat-palm = Stand the jar in a drawer. Press your flat palm on the lid and turn your body.
activity-open-jar-helper = Ask someone to open it for you.

## Turn a key

activity-turn-key-name = Turn a key
activity-turn-key-key-turner = Put a wide handle on the key. Hold it with your whole hand.
activity-turn-key-other-hand = Turn the key with your other hand.
activity-turn-key-oil-lock = Oil the lock so that it turns easily.

## Lift a baby

activity-lift-baby-name = Lift a baby
activity-lift-baby-scoop = Scoop with your palms up and your thumbs beside your fingers. Slide one arm under the bottom, one behind the back.
activity-lift-baby-chest-first = Bring the baby close to your chest before you stand up.
activity-lift-baby-raise-changing-place = Raise the changing place so that you lift less far.
activity-lift-baby-helper = Ask someone to hand you the baby.

## Lift a full pan

activity-lift-pan-name = Lift a full pan
activity-lift-pan-half-full = Fill the pan only half.
activity-lift-pan-slide = Slide the pan along the top. Do not lift it.
activity-lift-pan-two-handles = Use a light pan with two handles. Let the other hand take most of the weight.
activity-lift-pan-helper = Ask someone to lift the pan.

## Pour from a kettle

activity-pour-kettle-name = Pour from a kettle
activity-pour-kettle-one-cup = Boil only one cup of water.
activity-pour-kettle-tipper = Use a stand that tips the kettle for you.
activity-pour-kettle-other-hand = Pour with your other hand. Keep the hand that wears the splint away from steam.

## Carry shopping

activity-carry-shopping-name = Carry shopping
activity-carry-shopping-backpack = Use a backpack or a trolley.
activity-carry-shopping-split-load = Split the load into small bags. Walk twice.
activity-carry-shopping-over-forearm = Hang a light bag over your forearm, never on your fingers.
activity-carry-shopping-helper = Ask someone to carry the bags, or have them brought.

## Text with your thumbs

activity-text-with-thumbs-name = Text with your thumbs
activity-text-with-thumbs-speak-text = Speak your message and let the phone write it.
activity-text-with-thumbs-phone-on-table = Lay the phone on a table. Tap with your index finger.
activity-text-with-thumbs-short-texts = Keep messages short. Rest your hand between them.

## Hold a tablet or a book

activity-hold-tablet-name = Hold a tablet or a book
activity-hold-tablet-stand = Put it on a stand.
activity-hold-tablet-on-lap = Rest it on a cushion on your lap.
activity-hold-tablet-swap-hands = Change hands often.

## Write by hand

activity-write-by-hand-name = Write by hand
activity-write-by-hand-fat-pen = Use a fat, soft pen that glides with little pressure.
activity-write-by-hand-dictate = Speak or type your text.
activity-write-by-hand-pauses = Write a few lines. Then put the pen down and rest.
activity-write-by-hand-helper = Ask someone to write for you.

## Type on a keyboard

activity-type-on-keyboard-name = Type on a keyboard
activity-type-on-keyboard-fingers-for-space = Press the space bar with a finger of your other hand.
activity-type-on-keyboard-low-keyboard = Use a flat keyboard. Let your forearms rest.
activity-type-on-keyboard-pauses = Stop often and let your hands lie still.

## Use a computer mouse

activity-use-mouse-name = Use a computer mouse
activity-use-mouse-other-hand = Move the mouse with your other hand.
activity-use-mouse-upright-mouse = Try a mouse that you hold upright, like a handshake.
activity-use-mouse-touch-pad = Use a touch pad with one finger.

## Do up buttons

activity-do-up-buttons-name = Do up buttons
activity-do-up-buttons-button-hook = Use a button hook.
activity-do-up-buttons-pull-on-clothes = Wear clothes that you pull on.
activity-do-up-buttons-other-hand = Let your other hand do the buttons. Just hold the cloth flat.

## Peel vegetables

activity-peel-vegetables-name = Peel vegetables
activity-peel-vegetables-fat-peeler = Use a peeler with a fat handle and a wide blade.
activity-peel-vegetables-leave-skins = Leave the skins on, or buy vegetables ready to cook.
activity-peel-vegetables-short-bouts = Peel a few. Then rest your hand.
activity-peel-vegetables-helper = Ask someone to peel.

## Wring out a cloth

activity-wring-cloth-name = Wring out a cloth
activity-wring-cloth-press-flat = Press the cloth flat on the side of the sink.
activity-wring-cloth-sponge = Use a sponge. Squeeze it softly.
activity-wring-cloth-other-hand = Loop the cloth round the tap. Twist it with your other hand.

## Prune plants

activity-prune-plants-name = Prune plants
activity-prune-plants-ratchet = Use shears that cut in small steps.
activity-prune-plants-thin-stems = Cut thin stems only. Stop before your thumb aches.
activity-prune-plants-helper = Ask someone to cut. You choose the branches.

## Cut with scissors

activity-use-scissors-name = Cut with scissors
activity-use-scissors-spring-scissors = Use scissors that spring open.
activity-use-scissors-roller-cutter = Use a rolling cutter on a board.
activity-use-scissors-short-bouts = Cut a little at a time.
activity-use-scissors-helper = Ask someone to cut it for you.

## Wash your hands

activity-wash-hands-name = Wash your hands
activity-wash-hands-pump-soap = Use a soap pump and a tap with a lever.
activity-wash-hands-wipe-down = Wash the fingers that show. Wipe the rest with a damp cloth.
activity-wash-hands-take-off = Take the splint off. Wash, dry well, then put it back on.

## Drive a car

activity-drive-car-name = Drive a car
activity-drive-car-wheel-cover = Put a thick, soft cover on the wheel.
activity-drive-car-short-trips = Keep trips short. Stop and rest your hand.
activity-drive-car-helper = Let someone else drive.

## Knit or crochet

activity-knit-name = Knit or crochet
activity-knit-fat-needles = Use light, fat needles and soft yarn.
activity-knit-work-on-lap = Rest the work on your lap. Put a cushion under your elbows.
activity-knit-short-bouts = Do one row. Then rest your hand.

## Play a racket sport

activity-racket-sport-name = Play a racket sport
activity-racket-sport-soft-strings = Use a thicker grip and softer strings.
activity-racket-sport-two-hands = Hit with two hands.
activity-racket-sport-half-time = Play for half the time.

## Brush your teeth

activity-brush-teeth-name = Brush your teeth
activity-brush-teeth-fat-handle = Use a brush with a fat handle or a motor.
activity-brush-teeth-other-hand = Brush with your other hand.

## Pull up a zip

activity-fasten-zip-name = Pull up a zip
activity-fasten-zip-zip-ring = Put a ring on the zip. Pull it with a hooked finger.
activity-fasten-zip-other-hand = Pull the zip with your other hand.
