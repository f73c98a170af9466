### Conditions: the name, what is wrong, and what the splint does.
condition-de-quervain-name = Tendões do polegar doloridos no punho (de Quervain)
condition-de-quervain-what = Dois tendões do polegar raspam em um túnel apertado no punho. Estão doloridos e inchados.
condition-de-quervain-aim = A tala mantém o punho e o polegar parados. Assim os tendões doloridos descansam.
condition-thumb-ucl-acute-name = Ligamento rompido no nó do polegar
condition-thumb-ucl-acute-what = O ligamento do lado de dentro do nó do polegar está rompido. Ele precisa cicatrizar sem empurrão para o lado.
condition-thumb-ucl-acute-aim = A tala protege o ligamento enquanto ele cicatriza. Ela não deixa o polegar ser empurrado para o lado de fora.
condition-thumb-ucl-chronic-name = Nó do polegar frouxo
condition-thumb-ucl-chronic-what = Uma ruptura antiga deixou o nó do polegar frouxo. Ele cede quando você faz pinça.
condition-thumb-ucl-chronic-aim = A tala firma o nó enquanto você usa a mão.
condition-thumb-cmc-osteoarthritis-name = Junta gasta na base do polegar
condition-thumb-cmc-osteoarthritis-what = A junta na base do polegar está gasta. Ela escorrega e dói quando você faz pinça.
condition-thumb-cmc-osteoarthritis-aim = A tala firma a base do polegar. Isso pode deixar as tarefas mais fáceis e menos doloridas.
