### A clinic's shelf of handouts: the catalogue, and the page of what changed. Only clinicians read them.

## The catalogue

shelf-search = Search
shelf-search-hint = A condition, an orthosis or a handout, in any language of the shelf.
shelf-filters = Show only
shelf-filter-condition = Condition
shelf-filter-language = Language
shelf-filter-words = State of the words
shelf-filter-print = Print size
shelf-filter-review = Review
shelf-any = All
# What a handout may be filtered by; $word is a state, a size or a review.
shelf-choice = { $word ->
    [original] Original
    [signed-off] Signed off by a translator
    [drafted] Drafted, not signed off
    [outdated] Outdated: the English changed
    [standard] Standard print
    [large] Large print
    [giant] Giant print
    [due] Due now
    [soon] Due within a month
   *[fine] Not due yet
}
shelf-state = { $state ->
    [original] Original
    [signed-off] Signed off
    [outdated] Outdated
   *[drafted] Drafted
}
shelf-clear = Clear all
# $items and $files are counts that the page puts in.
shelf-found = Items found: { $items }. Files: { $files }.
shelf-none = Nothing on this shelf is like that. Try a shorter word, or clear the choices.
shelf-more = Show more
shelf-list = Handouts
shelf-skip = To the handouts
shelf-kind = { $kind ->
    [conditions] Condition
    [orthoses] Orthosis
   *[cases] Case
}
shelf-sheet = { $sheet ->
    [facts] Fact sheet
    [pictures] Sheet of pictures
    [guide] Wear guide
    [phone] Page for a telephone
    [card] Card
    [diary] Diary
    [exercises] Exercises
   *[letter] Letter
}
shelf-print = { $print ->
    [standard] Standard
    [large] Large
   *[giant] Giant
}
# The link to what has no pages.
shelf-open = Open
shelf-reviewed = Reviewed { $date } by { $by }.
shelf-next = Next review { $date }.
shelf-never = No review written down.
shelf-overdue = Overdue
shelf-due-soon = Due soon
shelf-content = { $state ->
    [confirmed] Content confirmed by a clinician.
    [outdated] Content changed since a clinician confirmed it.
   *[drafted] Content not confirmed by a clinician.
}
shelf-still = The list works without scripts; search and choices need them.
shelf-caution = Not medical advice: the treating clinician decides, and local protocol wins.

## What changed

shelf-changes-title = What changed in the handouts
shelf-changes-line = { $shelf }: since the build before this one.
shelf-changes-caution = For the clinical lead. Read each line against the protocol of the clinic before the handouts are given.
shelf-changes-numbers = In numbers
shelf-changes-made = Files made anew
shelf-changes-gone = Files taken away
shelf-changes-items = Items on the shelf
shelf-changes-program = Program
shelf-changes-clinic = Look of the clinic
shelf-changes-clinic-new = The clinic’s file, its logo or its sections changed.
shelf-changes-facts = What a person is told to do
shelf-changes-what = What
shelf-changes-for = For
shelf-changes-before = Before
shelf-changes-now = Now
shelf-changes-languages = Languages
shelf-changes-words = Words
shelf-changes-messages = Messages
shelf-changes-count = Number
shelf-changes-none = Nothing that a person is told to do has changed.
shelf-changes-no-words = No words have changed.
shelf-changes-first = This is the first build: there is nothing to compare it with.
shelf-changes-added = New on the shelf
shelf-changes-removed = No longer on the shelf
shelf-changes-item = Item
shelf-changes-new = not said
shelf-changes-no-more = no longer said
shelf-changes-sign = Approved
shelf-changes-approve = I have read these changes. They agree with what this clinic does.
shelf-changes-name = Name
shelf-changes-role = Role
shelf-changes-date = Date
shelf-changes-signature = Signature
shelf-about = Handouts of the clinic with their languages, sizes and reviews.

shelf-fact = { $kind ->
    [condition] Condition
    [orthosis] Orthosis
    [fits] Orthoses that fit best
    [hand] Hand
    [wear] Wear
    [hours] Wear hours
    [clock] Times of wear
    [breaking-in] Hours of breaking in
    [weaning] Weaning
    [length] Length
    [days] Days from the fitting
    [begins] How it begins
    [ends] Who ends it
    [review] Next visit
    [washing] Washing
    [joint] Joint
    [never] Positions made impossible
    [steps-on] Steps of putting on
    [steps-off] Steps of taking off
    [straps] Straps
    [spots] Spots of the skin check
    [exercise] Exercise
    [most-load] Heaviest load
    [avoid] Movements to avoid
    [activity] Activity
    [stop-sign] Stop sign
    [skin-mark] How long a mark may stay
   *[skin-checks] Skin checks a day
}
# $of is such as a phase, a joint or an exercise.
shelf-fact-of = { $fact } ({ $of })
shelf-many = { $count ->
    [one] { $count } item
   *[other] { $count } items
}
shelf-languages = { $count ->
    [one] { $count } language
   *[other] { $count } languages
}
shelf-change = { $fact } for { $item }: { $old } to { $new }, in { $languages }
shelf-change-new = { $fact } for { $item }: new, { $new }, in { $languages }
shelf-change-gone = { $fact } for { $item }: no longer { $old }, in { $languages }
# $items is a count.
shelf-change-words = { $count ->
    [one] Words of { $count } message changed, in { $languages }
   *[other] Words of { $count } messages changed, in { $languages }
}
shelf-change-added = New on the shelf: { $item }, in { $languages }
shelf-change-removed = No longer on the shelf: { $item }
shelf-change-clinic = The look of the clinic changed
shelf-change-program = The program changed: { $old } to { $new }
