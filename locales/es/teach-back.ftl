### Preguntas que piden a la persona que muestre o repita lo que se le ha dicho. El terapeuta las lee en voz alta.

teach-intro = Quiero saber si se lo he explicado bien. Por favor, muéstremelo o dígamelo con sus palabras.
teach-hands = ¿Qué férula va en cada mano? Muéstremelo, por favor.
teach-emergency = ¿Cuándo tiene que buscar ayuda de inmediato, de día o de noche?
teach-keep-on = ¿Puede quitarse la férula en casa, para lavarse o para dormir?
teach-support = La férula está fuera para lavarse. Muéstreme cómo sostiene la mano, por favor.
teach-on = Póngase la férula, por favor. Dígame lo que hace.
teach-off = Quítese la férula, por favor. Dígame lo que hace.
teach-bans = ¿Qué no puede hacer todavía esta mano?
teach-skin = Usted se mira la piel. ¿Qué no está bien? ¿Qué hace entonces?
teach-stop = ¿Qué más quiere decir que hay que parar? ¿Qué hace entonces?
teach-call = Algo va mal con la férula o con la mano. ¿A quién llama?
teach-hours = ¿Cuándo lleva puesta la férula y cuándo no? Empiece por hoy, por favor.
teach-build = ¿Cuánto tiempo la lleva mañana? ¿Desde qué día la lleva todo el tiempo indicado?
teach-jobs = ¿Qué tareas de cada día tienen que esperar?
teach-exercises = Muéstreme cada ejercicio una vez, por favor. ¿Cuántas veces al día lo hace?
