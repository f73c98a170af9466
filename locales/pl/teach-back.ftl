### Questions that ask the person to show or say back what they were told. The therapist reads them out.
### No date, hour, number, side or angle is typed here; they come in as variables.

# Said first: it is the therapist who is tested, not the person.
teach-intro = Chcę mieć pewność, że moje wyjaśnienie jest jasne. Proszę pokazać albo powiedzieć to własnymi słowami.
teach-hands = Która orteza jest na którą rękę? Proszę pokazać.
teach-emergency = Kiedy trzeba natychmiast szukać pomocy, w dzień i w nocy?
teach-keep-on = Czy wolno zdjąć ortezę w domu, do mycia lub do snu?
teach-support = Orteza jest zdjęta do mycia. Proszę pokazać, jak wtedy trzymać rękę.
teach-on = Proszę założyć ortezę. Proszę mówić, co się dzieje po kolei.
teach-off = Proszę zdjąć ortezę. Proszę mówić, co się dzieje po kolei.
teach-bans = Czego tej ręce jeszcze nie wolno robić?
teach-skin = Podczas oglądania skóry: co nie jest w porządku? Co wtedy zrobić?
teach-stop = Co jeszcze oznacza „stop”? Co wtedy zrobić?
teach-call = Coś jest nie tak z ortezą lub ręką. Do kogo zadzwonić?
teach-hours = Kiedy orteza jest założona, a kiedy zdjęta? Proszę zacząć od dzisiaj.
teach-build = Jak długo nosić ortezę jutro? Od którego dnia nosić ją w pełni?
teach-jobs = Które codzienne zadania muszą poczekać?
teach-exercises = Proszę pokazać każde ćwiczenie raz. Ile razy dziennie je robić?
