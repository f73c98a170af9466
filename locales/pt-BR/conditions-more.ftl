### Brazilian Portuguese, a draft. Ids and variables are explained in the English file of the same name.
condition-flexor-zone-two-repair-name = Tendão que dobra o dedo, reparado
condition-flexor-zone-two-repair-what = Os tendões que dobram o dedo foram cortados e costurados. Apertar, ou puxar o dedo para esticar, pode romper os pontos.
condition-flexor-zone-two-repair-aim = A tala protege os pontos enquanto cicatrizam. Ela não deixa os dedos esticarem demais.

condition-extensor-zone-three-repair-name = Tendão reparado sobre a junta do meio do dedo
condition-extensor-zone-three-repair-what = O tendão que estica a junta do meio foi cortado e costurado. Dobrar uma só vez pode abrir os pontos.
condition-extensor-zone-three-repair-aim = A tala mantém a junta do meio reta enquanto o tendão cicatriza.

condition-extensor-zone-five-six-repair-name = Tendão reparado no dorso da mão
condition-extensor-zone-five-six-repair-what = O tendão que levanta o dedo foi cortado e costurado. Fechar a mão toda pode abrir os pontos.
condition-extensor-zone-five-six-repair-aim = A tala mantém o nó do dedo para cima. Isso tira a tração dos pontos.

condition-carpal-tunnel-name = Nervo apertado no punho (túnel do carpo)
condition-carpal-tunnel-what = Um nervo passa por um túnel apertado no punho. O punho dobrado aperta o nervo, principalmente no sono.
condition-carpal-tunnel-aim = A tala mantém o punho reto. Isso dá mais espaço ao nervo.

condition-carpal-tunnel-release-name = Depois da cirurgia de nervo apertado no punho
condition-carpal-tunnel-release-what = O teto do túnel do punho foi aberto. A ferida precisa cicatrizar, e os dedos precisam se mexer.
condition-carpal-tunnel-release-aim = A tala descansa o punho nos primeiros dias. Os dedos ficam livres para mexer.

condition-cubital-tunnel-name = Nervo apertado no cotovelo
condition-cubital-tunnel-what = Um nervo passa pelo lado de dentro do cotovelo. Dobrar muito o cotovelo ou se apoiar nele força esse nervo.
condition-cubital-tunnel-aim = A tala não deixa o cotovelo dobrar muito à noite. De dia, não se apoie no cotovelo.

condition-radial-nerve-palsy-name = Punho caído
condition-radial-nerve-palsy-what = O nervo que levanta o punho e os dedos não funciona agora. A mão fica pendurada.
condition-radial-nerve-palsy-aim = A tala ajuda o punho a ficar para cima. Assim os dedos seguram melhor.

condition-median-nerve-palsy-low-name = Polegar que não se afasta da palma
condition-median-nerve-palsy-low-what = O nervo do músculo abaixo do polegar não funciona agora. Partes da mão podem ficar dormentes.
condition-median-nerve-palsy-low-aim = A tala mantém aberto o espaço ao lado do polegar. O polegar fica em um lugar em que você pode usá-lo.

condition-ulnar-nerve-palsy-name = Dedos anelar e mínimo em garra
condition-ulnar-nerve-palsy-what = O nervo de músculos pequenos da mão não funciona agora. Os dedos anelar e mínimo se curvam como garra.
condition-ulnar-nerve-palsy-aim = A tala não deixa os nós dos dedos dobrarem para trás. Assim você estica melhor esses dedos.

condition-lateral-elbow-name = Tendões doloridos do lado de fora do cotovelo
condition-lateral-elbow-what = Os músculos que levantam o punho começam no cotovelo. Ali os tendões estão doloridos, principalmente quando você aperta e levanta.
condition-lateral-elbow-aim = A tala tira parte da tração dos tendões doloridos enquanto você trabalha.

condition-dupuytren-release-name = Depois da cirurgia de dedo dobrado (Dupuytren)
condition-dupuytren-release-what = Faixas apertadas na palma foram cortadas para o dedo abrir. A cicatriz pode puxar o dedo de volta.
condition-dupuytren-release-aim = A tala segura o dedo à noite onde ele fica à vontade. Ela ajuda a manter o dedo aberto.

condition-rheumatoid-knuckle-drift-name = Dedos que se desviam para o lado (artrite reumatoide)
condition-rheumatoid-knuckle-drift-what = Os ligamentos ao lado dos nós dos dedos estão frouxos. Os dedos se inclinam para o lado do dedo mínimo.
condition-rheumatoid-knuckle-drift-aim = A tala alinha os dedos enquanto você usa a mão. Ela não impede o desvio.

condition-rheumatoid-wrist-name = Junta do punho dolorida (artrite reumatoide)
condition-rheumatoid-wrist-what = A junta do punho está dolorida e inchada por causa da artrite reumatoide.
condition-rheumatoid-wrist-aim = A tala mantém o punho firme. Isso pode aliviar a dor no descanso e nas tarefas.

condition-stroke-tight-hand-name = Mão contraída depois de um AVC
condition-stroke-tight-hand-what = Depois do AVC, os músculos que fecham a mão puxam demais. É difícil abrir a mão.
condition-stroke-tight-hand-aim = A tala descansa a mão meio aberta. Isso pode dar conforto e ajudar a manter limpa a pele da palma.

condition-dorsal-hand-burn-name = Queimadura no dorso da mão
condition-dorsal-hand-burn-what = A pele do dorso da mão está queimada. A pele encurta quando cicatriza e pode entortar a mão.
condition-dorsal-hand-burn-aim = A tala segura os nós dos dedos dobrados e os dedos retos. Nessa forma, a pele nova fica comprida.

condition-palmar-hand-burn-name = Queimadura na palma da mão
condition-palmar-hand-burn-what = A pele da palma está queimada. A pele encurta quando cicatriza e pode fechar a mão.
condition-palmar-hand-burn-aim = A tala segura a palma e os dedos abertos. Nessa forma, a pele nova fica comprida.

avoid-wrist-extension = Não dobre o punho para trás.
avoid-wrist-flexion = Não dobre o punho para a frente.
avoid-fingers-mcp-flexion = Não dobre os nós dos dedos.
avoid-fingers-mcp-ulnar-deviation = Não empurre os dedos para o lado do dedo mínimo.
avoid-fingers-pip-flexion = Não dobre as juntas do meio dos dedos.
