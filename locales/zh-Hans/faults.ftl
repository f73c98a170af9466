### A pair of pictures shows a splint as it should sit and as it should not: what is wrong, and what to do.

fault-slid-past-palm-crease = 支具向手指方向滑了。手指弯不了。把它推回去，直到边缘退到手掌横纹靠手腕的一侧。
fault-palm-strap-on-knuckles = 绑带压在掌指关节上了。把它移回手掌上，让掌指关节能弯。
fault-slid-over-knuckles = 支具向手指方向滑了，压住了掌指关节。把它推回去，直到掌指关节露出来。
fault-slid-over-thumb-tip-joint = 支具向拇指指尖滑了。把它推回去，直到拇指指尖能弯。
fault-thumb-out = 拇指没在拇指套里。取下支具，先把拇指放进去。
fault-slid-off-thumb-base = 支具从拇指根部滑开了。把它推回手腕方向，直到它托住拇指根部。
fault-fingertips-over-edge = 支具向手肘方向滑了。手指伸出了支具的一头。把它向前推，直到指尖都放在支具上。
fault-finger-strap-on-middle-joints = 绑带压在手指的中间关节上了。把它向后移，靠近掌指关节。
fault-finger-piece-slid = 支具向指尖滑了。把它推回手指根部，直到指尖能弯。
fault-strap-on-middle-joint = 绑带压在中间关节上了。把它向指尖方向移，离开关节。
fault-tip-droops = 支具从指尖关节滑开了，指尖垂了下来。把手指平放在桌上。把支具推回关节上。告诉我们指尖垂过。
