### Movements to leave out for now, one for each movement that some phase bans: joint, then direction.
### 患指 is the finger that is treated.

avoid-finger-dip-any = 患指的指尖不要动。
avoid-finger-mcp-any = 患指的掌指关节不要动。
# A splint may let the knuckle bend a little.
avoid-finger-mcp-flexion = 患指的掌指关节不要弯得超过支具允许的程度。
avoid-finger-pip-any = 患指的中间关节不要动。
avoid-finger-pip-flexion = 患指的中间关节不要弯，除非这里的练习要您弯。
# Straightening with help, or past straight.
avoid-finger-pip-extension = 患指的中间关节不要硬压直，也不要向后压。
avoid-finger-pip-radial-deviation = 不要把患指向拇指一侧推。
avoid-finger-pip-ulnar-deviation = 不要把患指向小指一侧推。
# After a repair of the bending tendons, which a grip tears as well.
avoid-fingers-mcp-extension = 不要把手指拉直。不要用这只手抓握或提任何东西。
