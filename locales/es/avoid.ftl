### Movements to leave out for now, one for each movement that some phase bans: joint, then direction.
### “Dedo tratado” is the finger that is treated; it may be the little finger itself.

avoid-finger-dip-any = No mueva la punta del dedo tratado.
avoid-finger-mcp-any = No mueva el nudillo grande del dedo tratado.
# A splint may let the knuckle bend a little.
avoid-finger-mcp-flexion = No doble el nudillo grande del dedo tratado más de lo que permite la férula.
avoid-finger-pip-any = No mueva la articulación central del dedo tratado.
avoid-finger-pip-flexion = No doble la articulación central del dedo tratado, salvo que un ejercicio de esta guía se lo pida.
# Straightening with help, or past straight.
avoid-finger-pip-extension = No presione la articulación central del dedo tratado para ponerla recta ni doblarla hacia atrás.
avoid-finger-pip-radial-deviation = No empuje el dedo tratado de lado, hacia el lado del pulgar.
avoid-finger-pip-ulnar-deviation = No empuje el dedo tratado de lado, hacia el lado del meñique.
# After a repair of the bending tendons, which a grip tears as well.
avoid-fingers-mcp-extension = No tire de los dedos para estirarlos. No agarre ni levante nada con esta mano.
