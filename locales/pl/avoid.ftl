### Movements to leave out for now, one for each movement that some phase bans: joint, then direction.
### “Sore finger” is the finger that is treated.

avoid-finger-dip-any = Proszę nie ruszać czubkiem chorego palca.
avoid-finger-mcp-any = Proszę nie ruszać knykciem chorego palca.
# A splint may let the knuckle bend a little.
avoid-finger-mcp-flexion = Proszę nie zginać knykcia chorego palca dalej, niż pozwala orteza.
avoid-finger-pip-any = Proszę nie ruszać środkowym stawem chorego palca.
avoid-finger-pip-flexion = Proszę nie zginać środkowego stawu chorego palca, chyba że każe to zrobić ćwiczenie z tego poradnika.
# Straightening with help, or past straight.
avoid-finger-pip-extension = Proszę nie dociskać środkowego stawu chorego palca do wyprostu ani do tyłu.
avoid-finger-pip-radial-deviation = Proszę nie pchać chorego palca w bok, w stronę kciuka.
avoid-finger-pip-ulnar-deviation = Proszę nie pchać chorego palca w bok, w stronę małego palca.
# After a repair of the bending tendons, which a grip tears as well.
avoid-fingers-mcp-extension = Proszę nie odciągać palców do wyprostu. Proszę nic tą ręką nie chwytać ani nie podnosić.
