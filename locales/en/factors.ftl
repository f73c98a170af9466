### Advice for what is particular about one person.
### Each message is one or two short sentences that stand inside a section of the guide.
### $checks is a number of skin checks a day, $limit a finished length of time.

## Skin that feels little or nothing

factor-numb-skin-look = Trust your eyes, not your feeling. Look at all sides of your hand. A mirror can help.
factor-numb-skin-strap-room = Slide a fingertip of your other hand under each strap. It must fit.
factor-numb-skin-hot-and-sharp = Test hot things with your other hand. Keep sharp things away from numb skin.

## Thin or tender skin

factor-fragile-skin-no-tape = Put no tape or sticky pads on your skin.
factor-fragile-skin-lift = Take the splint off gently. Do not let it rub or drag on your skin.
factor-fragile-skin-sleeve = Wear a smooth, dry cotton sleeve under the splint. Change it every day.

## Swelling

factor-swelling-raise = Rest your hand above your heart when you sit.
factor-swelling-loosen = If a strap gets tight, loosen it a little. Close it again when the swelling goes down.
factor-swelling-pump = Move your free fingers often. It helps to pump the swelling away.

## Diabetes

factor-diabetes-any-break = Call us the same day if your skin breaks, even a little.

## Easy bleeding

# For people who take something against clotting. No medicine is named, and none is to be stopped.
factor-blood-thinners-bruise = Call us today if a bruise under the splint grows.
factor-blood-thinners-no-rubbing = Do not rub your hand hard. Guard it from knocks.

## Low vision

factor-low-vision-check = Feel for warm, hard, wet or sore spots with your other hand. Ask someone to look at your skin, too.
factor-low-vision-dots = Ask us for raised dots on the straps. They tell the straps apart.

## Living alone

factor-lives-alone-table = Rest your arm on a table. Let the table hold the splint while your other hand works.
factor-lives-alone-ready = Keep loose clothes and easy meals ready.
factor-lives-alone-phone = Keep our phone number beside your bed.

## Night work

factor-night-work-main-sleep = When this guide says night, it means your main sleep.
factor-night-work-after-sleep = Do your first exercises after your main sleep.

## Rash from foam rubber

factor-neoprene-allergy-itch = Call us if your skin itches, even a little.
factor-neoprene-allergy-spare-parts = Do not add pads, gloves or wraps of foam rubber.

## A new baby

factor-new-mother-flat-hands = Lift and feed your baby with flat hands. Keep your thumbs beside your fingers.
factor-new-mother-strap-room = Your hand may swell. Check every day that a fingertip fits under each strap.
factor-new-mother-edges = Cover hard edges with a clean cloth before you hold your baby.
