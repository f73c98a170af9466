### Movements to leave out for now, one for each movement that some phase bans: joint, then direction.
### “Sore finger” is the finger that is treated.

avoid-finger-dip-any = Huwag ninyong igalaw ang dulo ng masakit na daliri.
avoid-finger-mcp-any = Huwag ninyong igalaw ang malaking buko ng masakit na daliri.
# A splint may let the knuckle bend a little.
avoid-finger-mcp-flexion = Huwag ninyong ibaluktot ang malaking buko ng masakit na daliri nang higit sa pinapayagan ng splint.
avoid-finger-pip-any = Huwag ninyong igalaw ang gitnang kasukasuan ng masakit na daliri.
avoid-finger-pip-flexion = Huwag ninyong ibaluktot ang gitnang kasukasuan ng masakit na daliri, maliban kung sinabi ng ehersisyo rito.
# Straightening with help, or past straight.
avoid-finger-pip-extension = Huwag ninyong idiin patuwid o paatras ang gitnang kasukasuan ng masakit na daliri.
avoid-finger-pip-radial-deviation = Huwag ninyong itulak patagilid ang masakit na daliri papunta sa panig ng hinlalaki.
avoid-finger-pip-ulnar-deviation = Huwag ninyong itulak patagilid ang masakit na daliri papunta sa panig ng hinliliit.
# After a repair of the bending tendons, which a grip tears as well.
avoid-fingers-mcp-extension = Huwag ninyong hilahin patuwid ang mga daliri. Huwag kayong kumapit o magbuhat ng kahit ano gamit ang kamay na ito.
