### Movements to leave out for now, one for each movement that some phase bans: joint, then direction.
### “Sore finger” is the finger that is treated.

avoid-finger-dip-any = Bewegen Sie die Spitze des kranken Fingers nicht.
avoid-finger-mcp-any = Bewegen Sie den großen Knöchel des kranken Fingers nicht.
# A splint may let the knuckle bend a little.
avoid-finger-mcp-flexion = Beugen Sie den großen Knöchel des kranken Fingers nicht weiter, als die Schiene es zulässt.
avoid-finger-pip-any = Bewegen Sie das Mittelgelenk des kranken Fingers nicht.
avoid-finger-pip-flexion = Beugen Sie das Mittelgelenk des kranken Fingers nicht, außer eine Übung hier sagt es Ihnen.
# Straightening with help, or past straight.
avoid-finger-pip-extension = Drücken Sie das Mittelgelenk des kranken Fingers nicht in die Streckung und nicht nach hinten.
avoid-finger-pip-radial-deviation = Drücken Sie den kranken Finger nicht seitlich zum Daumen hin.
avoid-finger-pip-ulnar-deviation = Drücken Sie den kranken Finger nicht seitlich zur Seite des kleinen Fingers hin.
# After a repair of the bending tendons, which a grip tears as well.
avoid-fingers-mcp-extension = Ziehen Sie nicht an den Fingern, um sie zu strecken. Greifen und heben Sie nichts mit dieser Hand.
