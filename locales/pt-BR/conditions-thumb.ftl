### Brazilian Portuguese, a draft. Ids and variables are explained in the English file of the same name.
condition-wrist-thumb-around-birth-name = Tendões do polegar doloridos perto do parto
condition-wrist-thumb-around-birth-what = Dois tendões do polegar raspam no punho. Levantar e alimentar um bebê pode deixá-los doloridos.
condition-wrist-thumb-around-birth-aim = A tala descansa o punho e o polegar à noite e quando você levanta peso. Isso pode deixar menos dolorido cuidar do bebê.

condition-intersection-syndrome-name = Tendões que raspam acima do punho
condition-intersection-syndrome-what = Tendões do punho e do polegar se cruzam acima do punho. Ali raspam e estão doloridos.
condition-intersection-syndrome-aim = A tala mantém o punho parado. Assim os tendões doloridos descansam.

condition-thumb-rcl-injury-name = Ligamento de fora do nó do polegar rompido
condition-thumb-rcl-injury-what = O ligamento do lado de fora do nó do polegar está rompido. Ele precisa cicatrizar sem empurrão em direção aos dedos.
condition-thumb-rcl-injury-aim = A tala protege o ligamento enquanto ele cicatriza. Ela não deixa o polegar ser empurrado em direção aos dedos.

condition-thumb-cmc-arthroplasty-name = Depois da cirurgia na base do polegar
condition-thumb-cmc-arthroplasty-what = Você fez uma cirurgia na junta da base do polegar. A junta nova é mole e ainda está cicatrizando.
condition-thumb-cmc-arthroplasty-aim = A tala mantém o polegar longe da palma. Isso protege a junta nova enquanto ela cicatriza.

condition-hypermobile-thumb-name = Polegar que dobra demais
condition-hypermobile-thumb-what = O nó do polegar dobra demais para trás quando você aperta ou faz pinça. Por isso fica dolorido e cansado.
condition-hypermobile-thumb-aim = A tala não deixa o nó dobrar para trás em tarefas pesadas. Ela ajuda os músculos, mas não os substitui.

condition-trigger-thumb-name = Polegar que trava (polegar em gatilho)
condition-trigger-thumb-what = O tendão que dobra o polegar está grosso e prende no túnel. O polegar estala ou trava.
condition-trigger-thumb-aim = A tala mantém uma junta do polegar reta. O tendão desliza menos, e o lugar dolorido pode descansar.

condition-epl-repair-name = Tendão que levanta o polegar, reparado
condition-epl-repair-what = O tendão que levanta o polegar foi reparado. Ele está fraco até cicatrizar.
condition-epl-repair-aim = A tala mantém o polegar para cima e o punho dobrado para trás. Isso tira a tração do tendão reparado.

condition-fpl-repair-name = Tendão que dobra o polegar, reparado
condition-fpl-repair-what = O tendão que dobra o polegar foi reparado. Ele está fraco até cicatrizar.
condition-fpl-repair-aim = A tala não deixa o polegar esticar demais. Isso tira a tração do tendão reparado.

condition-ecu-tendinopathy-name = Tendão dolorido do punho, do lado do dedo mínimo
condition-ecu-tendinopathy-what = Um tendão do punho, do lado do dedo mínimo, está dolorido. Inclinar e torcer a mão faz piorar.
condition-ecu-tendinopathy-aim = A tala não deixa o punho inclinar. Assim o tendão dolorido descansa.

condition-wrist-sprain-name = Entorse do punho
condition-wrist-sprain-what = Os ligamentos que seguram o punho foram esticados. Os ossos estão no lugar certo.
condition-wrist-sprain-aim = A tala mantém o punho parado enquanto você usa a mão. Assim os ligamentos se acalmam.

condition-tfcc-injury-name = Almofada rompida no punho
condition-tfcc-injury-what = Uma pequena almofada do punho, do lado do dedo mínimo, está rompida. Torcer o antebraço raspa nela.
condition-tfcc-injury-aim = A tala não deixa o antebraço torcer nem o punho inclinar. Assim a almofada descansa.

condition-scaphoid-after-cast-name = Osso do punho quebrado, do lado do polegar, depois do gesso
condition-scaphoid-after-cast-what = Um osso pequeno do punho quebrou. Ele se uniu, mas ainda não está forte.
condition-scaphoid-after-cast-aim = A tala protege o osso à noite, fora de casa e no meio de muita gente.

condition-distal-radius-after-cast-name = Punho quebrado, depois do gesso
condition-distal-radius-after-cast-what = Você quebrou o osso grande do antebraço, no punho. Ele se uniu, mas ainda não está forte.
condition-distal-radius-after-cast-aim = A tala protege o punho à noite, fora de casa e quando você levanta peso. Você a tira para mexer o punho.

avoid-thumb-ip-flexion = Não dobre a ponta do polegar.
avoid-thumb-ip-extension = Não estique a ponta do polegar.
avoid-thumb-cmc-flexion = Não leve o polegar por cima da palma.
avoid-forearm-any = Não vire a palma para cima nem para baixo.
support-forearm-thumb-up = Sem a tala, apoie o antebraço na mesa. Deixe o polegar apontando para cima. Não gire o antebraço. Não use a mão.
