### The papers beside the guide: card, diary, exercises, letter.
### No date, hour, number, side or angle is typed here; they come in as variables.

# Stands at the end of each of these papers.
sheet-caution = This does not replace your full guide, or what your therapist or surgeon tells you. If they tell you something else, do what they say.

## The card

card-caution = This card goes with your guide. What your therapist tells you comes first.
card-title = Your splint
card-description = When to wear the splint, how to put it on, when to call.
# $straps is a list of names, in the order in which they are closed.
card-straps-on = Close in this order: { $straps }.
card-straps-off = Undo in this order: { $straps }.

## The diary

diary-title = Your diary
diary-description = A diary to tick until the next visit.
diary-week = Week { $week }: { $from } to { $to }
# $least is no pain, $most the worst.
diary-intro = Tick a box when a thing is done. Ring a number for your worst pain that day: { $least } is no pain, { $most } is the worst you can think of.
# $bouts is how many times, $each how long.
diary-wears = { $bouts ->
    [one] Once
   *[other] { $bouts } times
}, { $each } each time. Not at night.
diary-worn = Worn
diary-hours = Hours worn
diary-skin = Skin looked at
diary-exercises = Exercises
diary-pain = Pain
diary-note = Note
# $number is the clinic's telephone.
diary-stop = Do not wait for your visit if you see a stop sign of your guide. Call { $number }.
diary-stop-no-number = Do not wait for your visit if you see a stop sign of your guide. Call your clinic.
diary-visit = Bring this diary to your visit on { $date }.
diary-visit-time = Bring this diary to your visit on { $date }, { $time }.

## The exercises

exercises-title = Your exercises
exercises-description = The home programme: where to start, the movement, how often, when to stop.

## The letter

letter-title = { $to ->
    [teacher] For the teacher
    [employer] For the employer
   *[carer] For the person who helps
}
letter-description = What a hand in a splint may and may not do for now.
# $fitted and $review are dates.
letter-intro = { $to ->
    [teacher] Your pupil has a splint on the { $side ->
        [left] left
       *[right] right
    } hand.
    [employer] A person who works for you has a splint on the { $side ->
        [left] left
       *[right] right
    } hand.
   *[carer] The person you help has a splint on the { $side ->
        [left] left
       *[right] right
    } hand.
} This letter says what the hand may do until the clinic looks at it again.
letter-from = Splint since
letter-until = Next visit to the clinic
letter-for = What it is for
letter-told = The person was told this about their daily tasks:
letter-never-off = Only the clinic takes the splint off. Do not cut, bend or open it.
letter-leave-on = Do not take the splint off or change it unless the person asks you to.
letter-other-jobs = For a task that does not stand here, ask the person. If they are not sure, the task waits until they have asked the clinic.
letter-help-carer = Help with tasks that need both hands, and do not pull on the arm in the splint.
letter-help-teacher = Please give more time for writing. No sport or play where the hand can be knocked, until the clinic allows it.
letter-help-employer = Please give tasks that leave this hand free. The clinic decides when full work can begin again.
# $number is the clinic's telephone.
letter-urgent = Act at once if the fingers turn blue, white, numb or cold, or the pain gets much worse. Help the person to call { $number }.
letter-urgent-no-number = Act at once if the fingers turn blue, white, numb or cold, or the pain gets much worse. Help the person to call the clinic.
# Stands in the place of a picture.
letter-hand = { $side ->
    [left] The splint is on the left hand.
   *[right] The splint is on the right hand.
}
# At the foot of the page. $name is the person's name.
letter-about = About { $name }. { $side ->
    [left] Left
   *[right] Right
} hand.
letter-about-nobody = About one person. { $side ->
    [left] Left
   *[right] Right
} hand.

# A diary ends after some weeks, however late the visit is.
diary-more = This is the last page of this diary. Ask your clinic for more pages.

## Booklet: sheets bound into one

booklet-contents = What is inside
booklet-caution = These pages do not replace what a therapist or a surgeon tells you. If they tell you something else, do what they say.
booklet-one-handed = Put it on with one hand
