### How to hold the part while the splint is off to wash.
### The splint is off and nothing guards what heals, so each message says how to rest it and what not to do.

support-thumb-beside-index = Gdy orteza jest zdjęta, proszę oprzeć rękę na stole. Kciuk ma być obok palca wskazującego. Proszę nie używać tej ręki.
support-tip-flat-on-table = Gdy orteza jest zdjęta, proszę położyć palec płasko na stole. Czubek ma leżeć płasko. Nigdy nie może się zgiąć, ani razu.
support-finger-flat-on-table = Gdy orteza jest zdjęta, proszę położyć palec płasko na stole. Środkowy staw ma być prosty. Nigdy nie może się zgiąć.
support-finger-bent-over-towel = Gdy orteza jest zdjęta, proszę oprzeć palec na zwiniętym ręczniku. Środkowy staw ma być trochę zgięty. Nigdy nie może pójść do tyłu.
support-finger-flat-guarded = Gdy orteza jest zdjęta, proszę położyć palec płasko na stole. Nic nie może pchać go w bok. Proszę nie używać tej ręki.
support-wrist-on-towel-fingers-straight = Gdy orteza jest zdjęta, proszę położyć przedramię na stole. Wnętrze dłoni i proste palce oprzeć na zwiniętym ręczniku. Nic nie może opaść.
support-thumb-up-on-towel = Gdy orteza jest zdjęta, proszę położyć przedramię na stole. Wnętrze dłoni i prosty kciuk oprzeć na zwiniętym ręczniku. Nic nie może opaść.
support-forearm-flat = Gdy orteza jest zdjęta, proszę położyć przedramię i rękę płasko na stole. Proszę nie obracać przedramienia. Proszę nie używać tej ręki.
support-knuckles-bent-on-towel = Gdy orteza jest zdjęta, proszę oprzeć palce na zwiniętym ręczniku. Knykcie mają być zgięte. Proszę nie używać tej ręki.
