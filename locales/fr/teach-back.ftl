### Questions that ask the person to show or say back what they were told. The therapist reads them out.
### No date, hour, number, side or angle is typed here; they come in as variables.

# Said first: it is the therapist who is tested, not the person.
teach-intro = Je veux vérifier que je vous ai bien expliqué. Montrez-moi, ou dites-le avec vos mots.
teach-hands = Quelle attelle va sur quelle main ? Montrez-moi, s’il vous plaît.
teach-emergency = Quand devez-vous demander de l’aide tout de suite, de jour comme de nuit ?
teach-keep-on = Avez-vous le droit d’enlever l’attelle chez vous, pour vous laver ou pour dormir ?
teach-support = L’attelle est enlevée pour vous laver. Montrez-moi comment vous tenez la main.
teach-on = Mettez l’attelle, s’il vous plaît. Dites-moi ce que vous faites.
teach-off = Enlevez l’attelle, s’il vous plaît. Dites-moi ce que vous faites.
teach-bans = Qu’est-ce que cette main n’a pas encore le droit de faire ?
teach-skin = Vous regardez votre peau. Qu’est-ce qui n’est pas normal ? Que faites-vous alors ?
teach-stop = Quoi d’autre veut dire « arrêt » ? Que faites-vous alors ?
teach-call = Quelque chose ne va pas avec l’attelle ou la main. Qui appelez-vous ?
teach-hours = Quand l’attelle est-elle mise, et quand est-elle enlevée ? Commencez par aujourd’hui.
teach-build = Combien de temps la portez-vous demain ? À partir de quel jour la portez-vous tout le temps prévu ?
teach-jobs = Lesquelles de vos tâches de tous les jours doivent attendre ?
teach-exercises = Montrez-moi chaque exercice une fois. Combien de fois par jour le faites-vous ?
