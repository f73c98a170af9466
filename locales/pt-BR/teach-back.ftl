### Questions that the therapist reads out; the therapist is tested, not the person.
teach-intro = Quero ter certeza de que expliquei bem. Por favor, me mostre, ou diga com as suas palavras.
teach-hands = Qual tala vai em qual mão? Por favor, me mostre.
teach-emergency = Quando você precisa buscar socorro já, de dia ou de noite?
teach-keep-on = Você pode tirar a tala em casa, para se lavar ou dormir?
teach-support = Você tirou a tala para se lavar. Por favor, me mostre como você segura a mão.
teach-on = Por favor, coloque a tala. Diga o que você faz.
teach-off = Por favor, tire a tala. Diga o que você faz.
teach-bans = O que esta mão ainda não pode fazer?
teach-skin = Você olha a sua pele. O que não está bem? O que você faz então?
teach-stop = O que mais quer dizer parar? O que você faz então?
teach-call = Algo está errado com a tala ou a mão. Para quem você liga?
teach-hours = Quando você usa a tala, e quando fica sem ela? Comece por hoje.
teach-build = Quanto tempo você usa a tala amanhã? A partir de que dia usa o tempo todo previsto?
teach-jobs = Quais das suas tarefas do dia a dia precisam esperar?
teach-exercises = Por favor, me mostre cada exercício uma vez. Quantas vezes por dia você faz?
