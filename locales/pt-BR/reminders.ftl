### Reminders for a telephone: no splint, no part of the body, no condition and no name in the first line.
reminder-change = { $hand ->
    [left] Esquerda: novos horários a partir de hoje.
    [right] Direita: novos horários a partir de hoje.
    [both] Esquerda e direita: novos horários a partir de hoje.
   *[only] Novos horários a partir de hoje.
}
reminder-visit = Sua consulta.
reminder-off = { $hand ->
    [left] Esquerda: hora de tirar.
    [right] Direita: hora de tirar.
    [both] Hora de tirar as duas.
   *[only] Hora de tirar.
}
reminder-skin = { $hand ->
    [left] Esquerda: olhe a sua pele.
    [right] Direita: olhe a sua pele.
    [both] Esquerda e direita: olhe a sua pele.
   *[only] Olhe a sua pele.
}
reminder-on = { $hand ->
    [left] Esquerda: hora de colocar.
    [right] Direita: hora de colocar.
    [both] Hora de colocar as duas.
   *[only] Hora de colocar.
}
reminder-exercise = { $hand ->
    [left] Esquerda: hora dos exercícios.
    [right] Direita: hora dos exercícios.
    [both] Esquerda e direita: hora dos exercícios.
   *[only] Hora dos exercícios.
}
reminder-change-sheet = Sua folha mostra os novos horários.
reminder-checks = { $checks ->
    [one] Olhe a pele uma vez por dia.
    [many] Olhe a pele { $checks } vezes por dia.
   *[other] Olhe a pele { $checks } vezes por dia.
} Sua folha mostra onde olhar, e o que não está bem.
reminder-skin-again = Se uma marca demorar demais a sumir, repita o mesmo dia, mesmo que os próximos lembretes digam outra coisa.
reminder-wear = { $hand ->
    [left] Esquerda: use por { $length }.
    [right] Direita: use por { $length }.
   *[only] Use por { $length }.
}
reminder-exercise-sheet = Sua folha mostra como.
reminder-back-on = { $hand ->
    [left] Esquerda: coloque de novo quando terminar.
    [right] Direita: coloque de novo quando terminar.
    [both] Coloque as duas de novo quando terminar.
   *[only] Coloque de novo quando terminar.
}
reminder-times = O horário é um exemplo. Escolha um que sirva para você.
reminder-caution = Se seu terapeuta ou cirurgião disser outra coisa, faça o que disser.
reminder-call = Sua clínica: { $telephone }
reminder-call-hours = Sua clínica: { $telephone } ({ $hours })
reminder-about = { $where }: { $orthosis }.
reminder-dose = { $exercise }: { $count ->
    [one] { $count } vez
    [many] { $count } vezes
   *[other] { $count } vezes
}. { $place }.
reminder-person = Para { $name }.
