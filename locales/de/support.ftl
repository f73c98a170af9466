### How to hold the part while the splint is off to wash.
### The splint is off and nothing guards what heals, so each message says how to rest it and what not to do.

support-thumb-beside-index = Ist sie ab, legen Sie die Hand auf den Tisch. Lassen Sie den Daumen neben dem Zeigefinger. Benutzen Sie die Hand nicht.
support-tip-flat-on-table = Ist sie ab, legen Sie den Finger flach auf den Tisch. Halten Sie die Spitze flach. Sie darf sich nie beugen, auch nicht ein einziges Mal.
support-finger-flat-on-table = Ist sie ab, legen Sie den Finger flach auf den Tisch. Halten Sie sein Mittelgelenk gerade. Es darf sich nie beugen.
support-finger-bent-over-towel = Ist sie ab, legen Sie den Finger über ein gerolltes Handtuch. Halten Sie sein Mittelgelenk ein wenig gebeugt. Es darf nie nach hinten gehen.
support-finger-flat-guarded = Ist sie ab, legen Sie den Finger flach auf den Tisch. Nichts darf ihn zur Seite drücken. Benutzen Sie die Hand nicht.
support-wrist-on-towel-fingers-straight = Ist sie ab, legen Sie den Unterarm auf den Tisch. Legen Sie Handfläche und gerade Finger auf ein gerolltes Handtuch. Nichts darf herabhängen.
support-thumb-up-on-towel = Ist sie ab, legen Sie den Unterarm auf den Tisch. Legen Sie Handfläche und geraden Daumen auf ein gerolltes Handtuch. Nichts darf herabhängen.
support-forearm-flat = Ist sie ab, legen Sie Unterarm und Hand flach auf den Tisch. Drehen Sie den Unterarm nicht. Benutzen Sie die Hand nicht.
support-knuckles-bent-on-towel = Ist sie ab, legen Sie die Finger über ein gerolltes Handtuch. Halten Sie die großen Knöchel gebeugt. Benutzen Sie die Hand nicht.
