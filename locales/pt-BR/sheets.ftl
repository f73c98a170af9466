### The papers beside the guide: card, diary, exercises, letter.
sheet-caution = Isto não substitui o guia completo, nem o que seu terapeuta ou cirurgião diz. Se disserem outra coisa, faça o que disserem.
card-caution = Este cartão acompanha o seu guia. O que seu terapeuta diz vem primeiro.
card-title = Sua tala
card-description = Quando usar a tala, como colocar, quando ligar.
card-straps-on = Feche nesta ordem: { $straps }.
card-straps-off = Abra nesta ordem: { $straps }.
diary-title = Seu diário
diary-description = Um diário para marcar até a próxima consulta.
diary-week = Semana { $week }: { $from } a { $to }
diary-intro = Marque o quadrado quando fizer. Circule o número da sua pior dor do dia: { $least } é sem dor, { $most } é a pior que você imagina.
diary-wears = { $bouts ->
    [one] Uma vez
    [many] { $bouts } vezes
   *[other] { $bouts } vezes
}, { $each } cada vez. À noite, não.
diary-worn = Usei a tala
diary-hours = Horas de uso
diary-skin = Olhei a pele
diary-exercises = Exercícios
diary-pain = Dor
diary-note = Nota
diary-stop = Não espere a consulta se vir um sinal de parar do seu guia. Ligue para { $number }.
diary-stop-no-number = Não espere a consulta se vir um sinal de parar do seu guia. Ligue para a clínica.
diary-visit = Traga este diário à consulta: { $date }.
diary-visit-time = Traga este diário à consulta: { $date }, { $time }.
exercises-title = Seus exercícios
exercises-description = Os exercícios em casa: como começar, o movimento, quantas vezes, quando parar.
letter-title = { $to ->
    [teacher] Para quem ensina
    [employer] Para quem emprega
   *[carer] Para quem ajuda
}
letter-description = O que a mão com tala pode e não pode fazer por enquanto.
letter-intro = { $to ->
    [teacher] Uma pessoa da sua turma tem uma tala na mão { $side ->
        [left] esquerda
       *[right] direita
    }.
    [employer] Uma pessoa que trabalha para você tem uma tala na mão { $side ->
        [left] esquerda
       *[right] direita
    }.
   *[carer] A pessoa que você ajuda tem uma tala na mão { $side ->
        [left] esquerda
       *[right] direita
    }.
} Esta carta diz o que a mão pode fazer até a clínica olhar de novo.
letter-from = Tala desde
letter-until = Próxima consulta na clínica
letter-for = Para que serve
letter-told = A pessoa recebeu esta orientação sobre as tarefas do dia a dia:
letter-never-off = Só a clínica tira a tala. Não corte, não dobre nem abra.
letter-leave-on = Não tire nem mude a tala, a não ser que a pessoa peça.
letter-other-jobs = Se uma tarefa não está aqui, pergunte à pessoa. Se ela não tiver certeza, a tarefa espera até ela perguntar à clínica.
letter-help-carer = Ajude nas tarefas que pedem as duas mãos, e não puxe o braço com a tala.
letter-help-teacher = Por favor, dê mais tempo para escrever. Nada de esporte ou brincadeira em que a mão possa levar batida, até a clínica permitir.
letter-help-employer = Por favor, dê tarefas que deixem esta mão livre. A clínica decide quando o trabalho completo pode recomeçar.
letter-urgent = Aja já se os dedos ou o polegar ficarem azuis, brancos, dormentes ou frios, ou se a dor piorar muito. Ajude a pessoa a ligar para { $number }.
letter-urgent-no-number = Aja já se os dedos ou o polegar ficarem azuis, brancos, dormentes ou frios, ou se a dor piorar muito. Ajude a pessoa a ligar para a clínica.
letter-hand = { $side ->
    [left] A tala está na mão esquerda.
   *[right] A tala está na mão direita.
}
letter-about = Sobre { $name }. Mão { $side ->
    [left] esquerda
   *[right] direita
}.
letter-about-nobody = Sobre uma pessoa. Mão { $side ->
    [left] esquerda
   *[right] direita
}.
diary-more = Esta é a última página deste diário. Peça mais páginas à clínica.
booklet-contents = O que há aqui
booklet-caution = Estas páginas não substituem o que um terapeuta ou cirurgião diz. Se disserem outra coisa, faça o que disserem.
booklet-one-handed = Colocar com uma só mão
