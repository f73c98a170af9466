### Movements to leave out for now, one for each movement that some phase bans: joint, then direction.
### “Doigt traité” is the finger that is treated.

avoid-finger-dip-any = Ne bougez pas le bout du doigt traité.
avoid-finger-mcp-any = Ne bougez pas la jointure de base du doigt traité.
# A splint may let the knuckle bend a little.
avoid-finger-mcp-flexion = Ne pliez pas la jointure de base du doigt traité plus que l’attelle ne le permet.
avoid-finger-pip-any = Ne bougez pas l’articulation du milieu du doigt traité.
avoid-finger-pip-flexion = Ne pliez pas l’articulation du milieu du doigt traité, sauf si un exercice de ce guide vous le demande.
# Straightening with help, or past straight.
avoid-finger-pip-extension = N’appuyez pas sur l’articulation du milieu du doigt traité, ni pour la tendre, ni pour la plier en arrière.
avoid-finger-pip-radial-deviation = Ne poussez pas le doigt traité de côté, vers le pouce.
avoid-finger-pip-ulnar-deviation = Ne poussez pas le doigt traité de côté, vers le petit doigt.
# After a repair of the bending tendons, which a grip tears as well.
avoid-fingers-mcp-extension = Ne tirez pas sur les doigts pour les tendre. Ne serrez et ne soulevez rien avec cette main.
