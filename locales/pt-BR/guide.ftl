### Brazilian Portuguese. Address: você. The splint is “tala”, feminine. Knuckle = “nó”; joint = “junta”.
### “Dedos” may include the thumb: where English leaves the thumb out, write “os demais dedos”.
### No date, hour, number, side or angle is typed here; they come in as variables.

# $orthosis is the splint's name, such as “tala longa de polegar”.
guide-title = Sua { $orthosis }
guide-made-for = Feita só para { $name }. Mão { $side ->
    [left] esquerda
   *[right] direita
}{ $finger ->
    [index] , dedo indicador
    [middle] , dedo médio
    [ring] , dedo anelar
    [little] , dedo mínimo
   *[none] {""}
}.
guide-made-for-nobody = Feita só para uma pessoa. Mão { $side ->
    [left] esquerda
   *[right] direita
}{ $finger ->
    [index] , dedo indicador
    [middle] , dedo médio
    [ring] , dedo anelar
    [little] , dedo mínimo
   *[none] {""}
}.
guide-caution = Este guia não substitui o que seu terapeuta ou cirurgião diz. Se disserem outra coisa, faça o que disserem. Não empreste a tala a ninguém.
guide-drafted = Nenhum tradutor qualificado verificou este texto.
guide-outdated = O texto em inglês desta folha mudou depois da tradução. Pergunte à sua clínica antes de usar.
guide-page = Página { $page } de { $pages }
contents-page = , pág. { $page }

hand-left = Mão esquerda
hand-right = Mão direita
hand-alt = { $side ->
    [left] A tala é para a sua mão esquerda.
   *[right] A tala é para a sua mão direita.
}

glance-title = Em resumo
dates-title = Dia a dia
on-off-title = Colocar e tirar
on-off-intro = { $washing ->
    [never] Só a sua clínica faz isto.
   *[freely] Sente-se à mesa. Use a outra mão.
}
skin-title = Olhe a sua pele
skin-intro = { $checks ->
    [one] Olhe bem uma vez por dia.
    [many] Olhe bem { $checks } vezes por dia.
   *[other] Olhe bem { $checks } vezes por dia.
} Use boa luz. { $washing ->
    [supported] Olhe estes lugares cada vez que tirar a tala para se lavar. Nos intervalos, olhe as bordas da tala e as pontas dos dedos:
    [never] Não tire a tala para olhar. Olhe as bordas da tala e as pontas dos dedos:
   *[freely] Olhe estes lugares:
}
move-title = Mexa a mão
move-intro = Vá devagar. Nunca force um movimento.
daily-title = No dia a dia em casa
care-title = Cuide da tala
note-title = Do seu terapeuta
call-title = Quando ligar
call-intro = Deixe esta página onde você possa ver.

fact-splint = Qual tala
finger-name = { $finger ->
    [index] Dedo indicador, ao lado do polegar
    [middle] Dedo médio
    [ring] Dedo anelar
   *[little] Dedo mínimo
}
fact-for = Para que serve
fact-fitted = Colocada em
fact-full = Uso total começa
fact-full-more = Antes, aumente aos poucos. Veja a tabela do dia a dia.
fact-review = Próxima consulta
fact-free = Livre para mexer: { $joints }.

say-date = { $date }
say-date-time = { $date }, { $time }
say-short-date = { $date }
date-range = { $from } a { $to }
date-until-visit = De { $from } até a consulta: { $to }
time-range = { $from } a { $to }

joint-elbow = o cotovelo
joint-forearm = o giro do antebraço
joint-wrist = o punho
joint-thumb-cmc = a base do polegar
joint-thumb-mcp = o nó do polegar
joint-thumb-ip = a ponta do polegar
joint-fingers-mcp = os demais dedos
joint-fingers-pip = as juntas do meio dos demais dedos
joint-fingers-dip = as pontas dos demais dedos
joint-finger-mcp = o nó do dedo tratado
joint-finger-pip = a junta do meio do dedo tratado
joint-finger-dip = a ponta do dedo tratado
joint-other-fingers-mcp = os outros dedos
joint-other-fingers-pip = as juntas do meio dos outros dedos
joint-other-fingers-dip = as pontas dos outros dedos
joint-index-mcp = o nó do dedo indicador
joint-middle-mcp = o nó do dedo médio
joint-ring-mcp = o nó do dedo anelar
joint-little-mcp = o nó do dedo mínimo
joint-index-pip = a junta do meio do dedo indicador
joint-middle-pip = a junta do meio do dedo médio
joint-ring-pip = a junta do meio do dedo anelar
joint-little-pip = a junta do meio do dedo mínimo
joint-index-dip = a ponta do dedo indicador
joint-middle-dip = a ponta do dedo médio
joint-ring-dip = a ponta do dedo anelar
joint-little-dip = a ponta do dedo mínimo

strip-days = Dias { $from } a { $to }
strip-from-day = Do dia { $from } em diante
strip-weeks = Semanas { $from } a { $to }
strip-build = Aumente um pouco a cada dia. À noite, ainda não.
strip-key-on = Com a tala
strip-key-off = Sem a tala
strip-key-needed = Com a tala em tarefas pesadas
strip-key-guard = Com a tala fora de casa e no meio de muita gente
strip-key-rest = Com a tala no descanso
strip-key-part = Com a tala parte do tempo
strip-alt = { $label }: com a tala de { $times }.
strip-alt-none = { $label }: sem hora fixa com a tala.
wear-never-remove = Dia e noite. Não tire.
wear-off-to-wash = Dia e noite. Tire só para se lavar{ $times ->
    [one] , uma vez por dia.
    [many] , { $times } vezes por dia.
   *[other] , { $times } vezes por dia.
}
wear-off-to-exercise = Dia e noite. Tire só para se lavar e fazer os exercícios{ $times ->
    [one] , uma vez por dia.
    [many] , { $times } vezes por dia.
   *[other] , { $times } vezes por dia.
}
wear-night-and-tasks = Use a noite toda. De dia, use em tarefas pesadas.
wear-night-and-tasks-guard = Use a noite toda. De dia, use fora de casa, no meio de muita gente e em todas as tarefas permitidas.
wear-night-and-rest = Use a noite toda. De dia, use no descanso. Tire quando usar a mão.
wear-stretch = Use { $bouts ->
    [one] uma vez por dia
    [many] { $bouts } vezes por dia
   *[other] { $bouts } vezes por dia
}, por { $each } cada vez. Fique sem ela nos intervalos.
wear-day = Use o dia todo. Tire à noite.
wear-night = Use a noite toda. Tire de dia.
wear-tasks = Use só em tarefas pesadas. Tire à noite.
wear-tasks-guard = Use fora de casa, no meio de muita gente e em todas as tarefas permitidas. Tire à noite.
wear-off = Sem a tala.
wear-wean-night = Use por { $length } depois de se levantar, e a noite toda.
wear-wean-day = Use por { $length } depois de se levantar. Tire à noite.

later-label = Quando seu terapeuta disser
later-label-surgeon = Quando seu cirurgião disser
later-label-next = Mais tarde, quando dissermos
later-other = Com outra tala.
later-never-remove = Dia e noite, sem pausa.
later-off-to-wash = Dia e noite, tirando só para se lavar.
later-off-to-exercise = Dia e noite, tirando só para se lavar e fazer os exercícios.
later-night-and-tasks = À noite e em tarefas pesadas.
later-night-and-tasks-guard = À noite, fora de casa e no meio de muita gente.
later-night-and-rest = À noite e no descanso.
later-stretch = Algumas vezes por dia, para alongar.
later-day = Só de dia.
later-night = Só à noite.
later-tasks = Só em tarefas pesadas.
later-tasks-guard = Só fora de casa e no meio de muita gente.
later-off = Sem a tala.
later-wean = Cada vez menos, passo a passo.

warning-title-take-off = Tire a tala e ligue para nós se:
warning-title-supported = { $straps ->
    [without] Ligue para nós se:
   *[with] Afrouxe as tiras e ligue para nós se:
}
warning-title-keep-on = { $straps ->
    [without] Não tire a tala e ligue para nós se:
   *[with] Afrouxe as tiras, não tire a tala e ligue para nós se:
}
warning-emergency = Emergência, ligue { $number } se:
warning-emergency-no-number = Emergência, busque socorro já se:
warning-act-take-off = Tire a tala. Depois ligue.
warning-act-supported = { $straps ->
    [without] Mantenha a parte dolorida apoiada. Depois ligue.
   *[with] Afrouxe as tiras. Mantenha a parte dolorida apoiada. Depois ligue.
}
warning-act-keep-on = { $straps ->
    [without] Não tire a tala. Ligue para nós.
   *[with] Afrouxe as tiras. Não tire a tala. Depois ligue.
}

axis-midnight = meia-noite
axis-noon = meio-dia
schedule-day = Dia
schedule-clock = Horário
schedule-long = Quanto tempo
schedule-note = Estes horários são exemplos. Escolha os que servem para você. Se uma marca demorar demais a sumir, repita o mesmo dia.
schedule-note-late = Estes horários são exemplos. Escolha os que servem para você. Uma barra depois da meia-noite é do dia anterior. Se uma marca demorar demais a sumir, repita o mesmo dia.
schedule-minutes = { $count ->
    [one] minuto
    [many] minutos
   *[other] minutos
}
schedule-hours = { $count ->
    [one] hora
    [many] horas
   *[other] horas
}
schedule-times = { $count ->
    [one] uma vez
    [many] { $count } vezes
   *[other] { $count } vezes
}
schedule-not-yet = Neste dia, não

calendar-week = Semana
calendar-what = O que fazer
calendar-build = Aumente aos poucos.
calendar-wean = Use menos.
calendar-never-remove = Dia e noite, sem pausa.
calendar-off-to-wash = Dia e noite.
calendar-off-to-exercise = Dia e noite.
calendar-night-and-tasks = Noites e tarefas pesadas.
calendar-night-and-tasks-guard = Noites, rua, muita gente.
calendar-night-and-rest = Noites e descanso.
calendar-stretch = Horas de alongar.
calendar-day = De dia.
calendar-night = Noites.
calendar-tasks = Tarefas pesadas.
calendar-tasks-guard = Rua e muita gente.
calendar-off = Sem tala.
calendar-review = Consulta: { $date }.
calendar-key-review = Sua consulta
calendar-key-build = Aumentar aos poucos
calendar-key-on = Com tala
calendar-key-night = Noites
calendar-key-needed = Parte do dia
calendar-key-off = Sem tala
calendar-and-so-on = Siga assim toda semana.

steps-on = Colocar
steps-off = Tirar
steps-never = Não tire a tala por conta própria. Sua clínica tira e coloca.
strap-next = próxima tira

spot-letters = A B C D E F G H
skin-fine = Isto está bem
skin-not = Isto não está bem
skin-fine-mark = Uma marca leve que some em até { $limit }
skin-fine-lines = Linhas fracas das tiras
skin-fine-damp = Pele um pouco úmida
skin-not-mark = Uma marca que fica mais de { $limit }
skin-not-dark = Em pele escura: uma área mais escura, quente ou dura por mais de { $limit }
skin-not-blister = Uma bolha, ferida ou pele aberta
skin-not-rash = Manchas ou bolinhas, ou coceira que não passa
skin-not-wet = Pele branca, mole e molhada
skin-act-take-off = Tire a tala e ligue para nós hoje.
skin-act-keep = { $straps ->
    [without] Ligue para nós hoje. Mantenha a mão apoiada.
   *[with] Afrouxe as tiras e ligue para nós hoje. Mantenha a mão apoiada.
}

move-splint-on = Com a tala
move-splint-off = Sem a tala
move-stop = Pare se a dor piorar. Se não passar em algumas horas, ligue para nós.
move-avoid = Ainda não
dose-times = { $count ->
    [one] vez
    [many] vezes
   *[other] vezes
}
dose-a-day = { $count ->
    [one] vez por dia
    [many] vezes por dia
   *[other] vezes por dia
}
move-up-to = Depois de uma semana, se estiver fácil: até { $count ->
    [one] { $count } vez
    [many] { $count } vezes
   *[other] { $count } vezes
}.
moves-after-review = Seu terapeuta dá movimentos novos depois da consulta.
moves-later = A partir de { $date }: { $exercises }.
avoid-wrist-ulnar-deviation = Não incline o punho para o lado do dedo mínimo.
avoid-wrist-radial-deviation = Não incline o punho para o lado do polegar.
avoid-thumb-cmc-any = Não mexa a base do polegar.
avoid-thumb-cmc-palmar-abduction = Não estique o polegar para longe da palma.
avoid-thumb-cmc-radial-abduction = Não estique o polegar para o lado.
avoid-thumb-mcp-any = Não dobre o nó do polegar.
avoid-thumb-mcp-flexion = Não dobre o polegar para dentro da palma.
avoid-thumb-mcp-radial-deviation = Não empurre o polegar para longe da mão.
avoid-thumb-mcp-ulnar-deviation = Não empurre o polegar para dentro, por cima da mão.

daily-job = O que você faz
daily-what = Por enquanto
daily-how = Como
daily-word-keep = Continue
daily-word-change = Faça assim
daily-word-leave = Ainda não faça
daily-keep = Faça como sempre faz.
daily-helper = Peça ajuda a alguém.
daily-other-hand = Use a outra mão, ou peça ajuda a alguém.
daily-ask = Pergunte ao terapeuta quando pode recomeçar.
daily-pauses = Faça um pouco de cada vez. Descanse nos intervalos.
daily-keep-dry = Mantenha a tala seca, ou seque logo.
daily-driving = Antes de dirigir, pergunte ao terapeuta e à sua seguradora. Siga a lei do lugar onde você mora.
daily-from-keep = A partir de { $date }: como sempre faz.
daily-from-change = A partir de { $date }: tente de um jeito mais fácil.
why-risky = Arriscado demais para esta mão por enquanto.
why-driving = Para dirigir, de carro ou moto, ou pedalar, você precisa de controle total.
why-swimming = Sua mão, pele ou tala não está pronta para a água.
why-heavy = Pesado demais por enquanto.
why-in-the-way = A tala atrapalha.
why-lateral-pinch = Apertar o polegar contra o dedo força a mão.
why-tip-pinch = A pinça com as pontas dos dedos força a mão.
why-power-grip = Um aperto forte força a mão.
why-sustained-grip = Segurar por muito tempo força a mão.
why-wrist-deviation = Inclinar o punho para os lados força a mão.
why-wrist-flexion = Dobrar o punho força a mão.
why-wrist-load = Apoiar-se no punho dobrado força a mão.
why-thumb-load = Esta tarefa põe carga no polegar.
why-forearm-rotation = Torcer o antebraço força a mão.
why-finger-flexion = Dobrar os dedos com força faz mal aos dedos.
why-elbow-flexion = O cotovelo dobrado força o braço.
why-impact = Batidas podem machucar a mão.
why-vibration = A vibração força a mão.
why-wet = Sua mão ou tala fica molhada.
why-heat = O calor estraga a tala ou machuca a pele.
why-repetition = O mesmo movimento repetido força a mão.

care-wash-plastic = Lave com sabão e água que não passe de { $celsius } graus.
care-dry-plastic = Seque bem antes de colocar.
care-heat = Nada de calor. Nada de água quente, aquecedor ou carro no sol. Ela derrete e perde a forma.
care-wash-soft = Lave à mão com sabão suave. Enxágue bem.
care-dry-soft = Deixe secar aberta, na sombra. Nunca use úmida.
care-machine = Sem máquina de lavar, secadora, ferro ou água sanitária.
care-metal = Seque com um pano. Veja se há ferrugem ou partes tortas.
care-keep-dry = Mantenha seca. Cubra quando se lavar.
care-straps = Tire os fiapos das tiras. Feche as tiras antes de lavar a tala.
care-change = Não corte, não entorte nem cole. Nós fazemos isso.
care-share = Não empreste. Ela foi feita para você.
care-bring = Traga a tala a toda consulta.

call-emergency = Emergência: busque socorro já
call-today = Ligue para nós hoje
call-visit = Conte na sua consulta
call-where = Onde: { $address }
call-emergency-number = O número de emergência da sua região
call-telephone = Telefone
note-from = Seu terapeuta escreve
initial-say = Conferido com você
initial-date = Data
initial-name = Iniciais

length-minutes = { $count ->
    [one] { $count } minuto
    [many] { $count } minutos
   *[other] { $count } minutos
}
length-hours = { $count ->
    [one] { $count } hora
    [many] { $count } horas
   *[other] { $count } horas
}
length-hours-minutes = { $hours } e { $minutes }
length-seconds = { $count ->
    [one] { $count } segundo
    [many] { $count } segundos
   *[other] { $count } segundos
}

picture-seen = { $what ->
    [finger] { $finger ->
        [index] Dedo indicador
        [middle] Dedo médio
        [ring] Dedo anelar
        [little] Dedo mínimo
       *[none] Dedo
    } da mão { $side ->
        [left] esquerda
       *[right] direita
    }
    [thumb] Polegar { $side ->
        [left] esquerdo
       *[right] direito
    }
   *[hand] Mão { $side ->
        [left] esquerda
       *[right] direita
    }
}, { $view ->
    [palmar] vista do lado da palma.
    [radial] vista do lado do polegar.
    [ulnar] vista do lado do dedo mínimo.
    [turned] vista do dorso e do lado do polegar.
    [palmar-radial] vista da palma e do lado do polegar.
    [palmar-ulnar] vista da palma e do lado do dedo mínimo.
    [own] como você vê.
   *[dorsal] vista do dorso.
}
picture-covers = { $splint }. { $from ->
    [arm] Vai do braço, acima do cotovelo,
    [forearm] Vai do antebraço
    [hand] Vai da palma
   *[digit] Fica no { $finger ->
        [index] dedo indicador
        [middle] dedo médio
        [ring] dedo anelar
        [little] dedo mínimo
       *[none] dedo ou polegar
    },
} { $to ->
    [fingertips] até as pontas dos dedos.
    [fingertip] até a ponta do dedo.
    [fingers] até os dedos.
    [finger] até o dedo.
    [thumb-tip] até a ponta do polegar.
    [thumb] até o polegar.
    [palm] até a palma.
   *[none] e não passa daí.
}
picture-spots = Anéis com letras mostram onde olhar.
picture-part = Figura { $number } de { $count }.
picture-held = A posição para: { $exercise }.
picture-moved = Tracejado: o começo. Uma seta mostra o movimento: { $exercise }.
picture-inside = Os ossos, como se vistos através da pele.
picture-structures = Marcado: { $structures }.
picture-held-joints = Um anel com traços mostra o que a tala segura ou firma: { $joints }.
picture-held-mark = Preso ou firmado pela tala
held-knuckles = os nós dos dedos
held-middle-joints = as juntas do meio dos dedos
held-end-joints = as juntas da ponta dos dedos
picture-right = Está bem colocada. Um sinal de certo mostra isso.
picture-wrong = Está mal colocada. Um xis mostra isso. { $fault }
