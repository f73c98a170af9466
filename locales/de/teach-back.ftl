### Questions that ask the person to show or say back what they were told. The therapist reads them out.
### No date, hour, number, side or angle is typed here; they come in as variables.

# Said first: it is the therapist who is tested, not the person.
teach-intro = Ich möchte sicher sein, dass ich es gut erklärt habe. Bitte zeigen Sie es mir oder sagen Sie es mit Ihren Worten.
teach-hands = Welche Schiene gehört an welche Hand? Bitte zeigen Sie es mir.
teach-emergency = Wann müssen Sie sofort Hilfe holen, bei Tag und bei Nacht?
teach-keep-on = Dürfen Sie die Schiene zu Hause abnehmen, zum Waschen oder zum Schlafen?
teach-support = Die Schiene ist zum Waschen ab. Bitte zeigen Sie mir, wie Sie Ihre Hand halten.
teach-on = Bitte legen Sie die Schiene an. Sagen Sie mir, was Sie tun.
teach-off = Bitte nehmen Sie die Schiene ab. Sagen Sie mir, was Sie tun.
teach-bans = Was darf diese Hand noch nicht tun?
teach-skin = Sie prüfen Ihre Haut. Was ist nicht in Ordnung? Was tun Sie dann?
teach-stop = Was heißt sonst noch Stopp? Was tun Sie dann?
teach-call = Mit Ihrer Schiene oder Ihrer Hand stimmt etwas nicht. Wen rufen Sie an?
teach-hours = Wann ist die Schiene an, und wann ist sie ab? Bitte beginnen Sie mit heute.
teach-build = Wie lange tragen Sie sie morgen? Ab welchem Tag tragen Sie sie die volle Zeit?
teach-jobs = Welche Ihrer täglichen Arbeiten müssen warten?
teach-exercises = Bitte zeigen Sie mir jede Übung einmal. Wie oft am Tag machen Sie sie?
