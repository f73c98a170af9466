### More advice for what is particular about one person.
### Each message is one or two short sentences that stand inside a section of the guide.
### $checks is a number of skin checks a day, $limit a finished length of time.

## Skin that feels little or nothing

factor-numb-skin-no-packs = Put no hot packs and no ice on numb skin.

## Rash from natural rubber

factor-latex-allergy-itch = Call us if your skin itches, even a little.
factor-latex-allergy-gloves = Do not put rubber gloves on over the splint. Use gloves of another kind.
factor-latex-allergy-spare-parts = Do not add rubber bands or stretchy straps. Ask us for safe ones.

## Rash from metal

factor-nickel-allergy-itch = Call us if your skin itches, even a little.
factor-nickel-allergy-bare-metal = Let no bare metal touch your skin. Tell us if a covering wears through.

## Rash from tape and glue

factor-adhesive-allergy-itch = Call us if your skin itches, even a little.
factor-adhesive-allergy-no-tape = Put no tape and no plasters on your skin. Ask us for straps.
factor-adhesive-allergy-linings = Do not stick pads or linings into the splint.

## Trouble remembering

factor-memory-difficulty-same-times = Keep the same clock times every day. Set an alarm for them.
factor-memory-difficulty-tick = Hang this guide on the wall. Make a tick after each skin check.
factor-memory-difficulty-in-sight = Keep the splint in one place that you can see. Read the steps each time.
factor-memory-difficulty-after-meals = Tie your movements to things you do anyway, such as meals.

## Somebody at home who helps

factor-helper-at-home-looks = Ask your helper to look at your skin, too.
factor-helper-at-home-reads = Let your helper read each step aloud and close the straps.
factor-helper-at-home-heavy-jobs = Let your helper do what this guide says to leave.

## A child

# The reader may be the child or a grown-up reading aloud.
factor-child-grown-up-looks = Let a grown-up look at your skin each time. Say at once if something hurts.
factor-child-grown-up-helps = Have a grown-up with you whenever the splint goes on or comes off.
factor-child-school = Take a copy of this guide to school.
factor-child-game = Make a game of each movement.
factor-child-small-parts = Keep loose straps and small parts away from babies and small children.

## Pregnancy

factor-pregnancy-swelling = Your hand may swell on some days. Rest it on a cushion when you sit.
factor-pregnancy-strap-room = Check each day that a fingertip fits under every strap.
factor-pregnancy-grooves = Look for deep lines from the straps. Tell us if they stay.

## Work in the heat

factor-heat-work-keep-away = Keep the splint away from ovens, hot plates and engines. Ask us before you work in heat.
factor-heat-work-dry-skin = Dry sweat at once. Look for soft, white skin.
factor-heat-work-fresh-sleeve = Put on a fresh, dry sleeve for each shift. Change a damp one at once.

## Work with food

factor-food-work-ask = Ask at work if a splint is allowed near food. Ask how to cover it.
factor-food-work-damp = A glove over the splint keeps damp in. Look for soft, white skin after work.
factor-food-work-clean = Clean the splint after each shift. Throw the cover away.

## Work in the wet

factor-wet-work-cover = Cover the splint, or let someone else do the wet jobs.
factor-wet-work-dry-breaks = Stop often to dry your skin. Look for soft, white skin.
factor-wet-work-spare-sleeves = Keep spare sleeves ready. Change a damp one at once.

## Work with machines

factor-machinery-moving-parts = Do not work at moving machines with a splint on. They can catch a strap and pull your hand in.
factor-machinery-ask = Keep to these times at work, too. Ask us and your employer before you go back to a machine.

## Slow healing

factor-slow-healing-no-early-end = Your hand needs the full time. Do not stop early, even if it feels well.
factor-slow-healing-any-break = Call us the same day if your skin breaks, even a little.
factor-slow-healing-smoke = If you smoke, ask us or your doctor for help to stop. Smoke slows healing.

## An open wound, stitches or pins

factor-open-wound-look = Look at what you can see of the wound or pins. Call us today if something leaks, smells or moves.
factor-open-wound-dry = Keep your hand dry until we tell you that the skin is closed.
factor-open-wound-no-rubbing = Do not rub or press on the wound. Do not touch stitches or pins.
factor-open-wound-dressing = Keep the dressing clean and dry. Ask us who changes it.

## Poor blood flow

factor-poor-circulation-colour = Compare your fingertips with your other hand. Call us the same day if your skin breaks.
factor-poor-circulation-strap-room = Slide a fingertip under each strap. It must fit.
factor-poor-circulation-warm = Keep your hand warm with clothes. Put no ice and no hot packs on it.

## Only one hand to use

factor-one-hand-only-table = Rest your arm on a table. Use the table edge or your leg to help.
factor-one-hand-only-helper = Where this guide says other hand, you can ask someone to help.
factor-one-hand-only-mirror = Use a mirror to see the far side of your hand.

## Strong pain or worry

factor-high-pain-worry-small = Start with the smallest movement in this list. Small and often is fine.
factor-high-pain-worry-rest = Rest before your hand gets very sore. Then go on.
factor-high-pain-worry-call = Call us early if something worries you. No question is too small.
