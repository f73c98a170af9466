### The fact sheet of a condition, for patients. About nobody in particular.
facts-caution = Esta folha fala de um problema da mão. Ela não substitui o que seu terapeuta ou cirurgião diz. Se disserem outra coisa, faça o que disserem.
facts-line = As figuras mostram a mão { $side ->
    [left] esquerda
   *[right] direita
}{ $finger ->
    [index] , dedo indicador
    [middle] , dedo médio
    [ring] , dedo anelar
    [little] , dedo mínimo
   *[none] {""}
}.
facts-what-title = O que é
facts-what = { $what }
facts-aim-title = O que a tala faz
facts-aim = { $aim }
facts-joints = { $joints }
facts-joint-still = Fica parado
facts-joint-steady = Fica firme
facts-joint-stopped = Mexe até um limite
facts-joint-relative = Mexe menos que os dedos ao lado
facts-joint-coupled = Mexe junto com o dedo ao lado
facts-joint-mobilised = Puxado de leve
facts-joint-varies = Preso ou livre: depende da sua tala
facts-joint-free = Livre para mexer
facts-types-title = Talas que servem
facts-types-intro = Estes tipos servem no começo. Seu terapeuta escolhe a tala para a sua mão.
facts-course-title = Como costuma ser
facts-step-label = Etapa { $number }, { $length }:
facts-step = { $wear } { $ends }
facts-length-usual = cerca de { $length }
facts-length-protocol = { $length }, como seu cirurgião disser
facts-length-open = sem tempo fixo
facts-weeks = { $count ->
    [one] { $count } semana
    [many] { $count } semanas
   *[other] { $count } semanas
}
facts-weeks-range = { $from } a { $to ->
    [one] { $to } semana
    [many] { $to } semanas
   *[other] { $to } semanas
}
facts-days = { $count ->
    [one] { $count } dia
    [many] { $count } dias
   *[other] { $count } dias
}
facts-days-range = { $from } a { $to ->
    [one] { $to } dia
    [many] { $to } dias
   *[other] { $to } dias
}
facts-ends-therapist = Esta etapa não tem fim fixo. Seu terapeuta decide quando termina.
facts-ends-surgeon = Esta etapa não tem fim fixo. Seu cirurgião decide quando termina.
facts-ends-person = Você decide quando não precisa mais dela.
facts-ends-time = Depois começa a próxima etapa.
facts-own-guide = Esta folha não é o seu plano. O seu próprio guia diz quando usar a tala. Faça o que o seu guia diz.
facts-clinics-differ = Cada clínica tem seu jeito. Sua tala, suas etapas e seus tempos podem não ser iguais aos daqui.
facts-surgeon-sets = Depois de uma cirurgia ou osso quebrado, seu cirurgião decide os tempos e a posição da mão.
facts-help-title = Quando buscar ajuda
facts-visit = { $sign }: conte ao terapeuta na próxima consulta.
