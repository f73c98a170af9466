### Movements to leave out for now, one for each movement that some phase bans: joint, then direction.
### “Ngón đau” is the finger that is treated.

avoid-finger-dip-any = Không cử động đầu ngón đau.
avoid-finger-mcp-any = Không cử động khớp bàn ngón của ngón đau.
# A splint may let the knuckle bend a little.
avoid-finger-mcp-flexion = Không gập khớp bàn ngón của ngón đau quá mức nẹp cho phép.
avoid-finger-pip-any = Không cử động khớp giữa của ngón đau.
avoid-finger-pip-flexion = Không gập khớp giữa của ngón đau, trừ khi một bài tập ở đây dặn làm.
# Straightening with help, or past straight.
avoid-finger-pip-extension = Không ấn khớp giữa của ngón đau cho thẳng hoặc ưỡn ngược.
avoid-finger-pip-radial-deviation = Không đẩy ngón đau sang bên, về phía ngón cái.
avoid-finger-pip-ulnar-deviation = Không đẩy ngón đau sang bên, về phía ngón út.
# After a repair of the bending tendons, which a grip tears as well.
avoid-fingers-mcp-extension = Không kéo thẳng các ngón. Không nắm và không nâng bất cứ thứ gì bằng bàn tay này.
