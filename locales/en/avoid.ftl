### Movements to leave out for now, one for each movement that some phase bans: joint, then direction.
### “Sore finger” is the finger that is treated.

avoid-finger-dip-any = Do not move the tip of the sore finger.
avoid-finger-mcp-any = Do not move the big knuckle of the sore finger.
# A splint may let the knuckle bend a little.
avoid-finger-mcp-flexion = Do not bend the big knuckle of the sore finger further than the splint lets it.
avoid-finger-pip-any = Do not move the middle joint of the sore finger.
avoid-finger-pip-flexion = Do not bend the middle joint of the sore finger, unless an exercise here tells you to.
# Straightening with help, or past straight.
avoid-finger-pip-extension = Do not press the middle joint of the sore finger straight or backwards.
avoid-finger-pip-radial-deviation = Do not push the sore finger sideways to the thumb side.
avoid-finger-pip-ulnar-deviation = Do not push the sore finger sideways to the little-finger side.
# After a repair of the bending tendons, which a grip tears as well.
avoid-fingers-mcp-extension = Do not pull your fingers straight. Do not grip or lift anything with this hand.
