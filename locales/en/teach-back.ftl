### Questions that ask the person to show or say back what they were told. The therapist reads them out.
### No date, hour, number, side or angle is typed here; they come in as variables.

# Said first: it is the therapist who is tested, not the person.
teach-intro = I want to be sure that I told you this well. Please show me, or say it in your own words.
teach-hands = Which splint goes on which hand? Please show me.
teach-emergency = When must you get help at once, day or night?
teach-keep-on = May you take the splint off at home, to wash or to sleep?
teach-support = The splint is off to wash. Please show me how you hold your hand.
teach-on = Please put the splint on. Tell me what you do.
teach-off = Please take the splint off. Tell me what you do.
teach-bans = What may this hand not do yet?
teach-skin = You look at your skin. What is not fine? What do you do then?
teach-stop = What else means stop? What do you do then?
teach-call = Something is wrong with your splint or your hand. Whom do you call?
teach-hours = When is the splint on, and when is it off? Please begin with today.
teach-build = How long do you wear it tomorrow? From which day on do you wear it in full?
teach-jobs = Which of your daily jobs must wait?
teach-exercises = Please show me each exercise once. How often a day do you do it?
