### How to hold the part while the splint is off to wash.
### The splint is off and nothing guards what heals, so each message says how to rest it and what not to do.

support-thumb-beside-index = When it is off, rest your hand on the table. Keep your thumb beside your index finger. Do not use your hand.
support-tip-flat-on-table = When it is off, rest your finger flat on the table. Keep the tip flat. Never let it bend, not even once.
support-finger-flat-on-table = When it is off, rest your finger flat on the table. Keep its middle joint straight. Never let it bend.
support-finger-bent-over-towel = When it is off, rest your finger over a rolled towel. Keep its middle joint a little bent. Never let it go backwards.
support-finger-flat-guarded = When it is off, rest your finger flat on the table. Let nothing push it to the side. Do not use your hand.
support-wrist-on-towel-fingers-straight = When it is off, lay your forearm on the table. Rest your palm and straight fingers on a rolled towel. Let nothing drop.
support-thumb-up-on-towel = When it is off, lay your forearm on the table. Rest your palm and straight thumb on a rolled towel. Let nothing drop.
support-forearm-flat = When it is off, rest your forearm and hand flat on the table. Do not turn your arm. Do not use your hand.
support-knuckles-bent-on-towel = When it is off, rest your fingers over a rolled towel. Keep your big knuckles bent. Do not use your hand.
