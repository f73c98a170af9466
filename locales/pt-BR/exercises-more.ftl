### Brazilian Portuguese, a draft. Ids and variables are explained in the English file of the same name.
exercise-shoulder-reach-name = Levante o braço
exercise-shoulder-reach-start = Sente-se ou fique em pé com o braço ao lado do corpo.
exercise-shoulder-reach-step-1 = Levante o braço para a frente, até onde for fácil.
exercise-shoulder-reach-step-2 = Mantenha por { $hold }.
exercise-shoulder-reach-step-3 = Abaixe o braço devagar.
exercise-shoulder-reach-step-4 = Na próxima vez, levante para o lado.

exercise-wrist-dart-name = Mexa o punho como quem lança um dardo
exercise-wrist-dart-start = Apoie o antebraço na mesa, com o lado do dedo mínimo para baixo e a mão para fora da borda. Deixe os dedos e o polegar soltos.
exercise-wrist-dart-step-1 = Incline a mão para trás e para o lado do polegar.
exercise-wrist-dart-step-2 = Mantenha por { $hold }.
exercise-wrist-dart-step-3 = Incline a mão para a frente e para o lado do dedo mínimo.
exercise-wrist-dart-step-4 = Mantenha por { $hold }.

exercise-wrist-swing-with-fingers-name = Balance o punho e os dedos juntos
exercise-wrist-swing-with-fingers-start = Apoie o cotovelo na mesa. Mexa só até onde o terapeuta mostrou.
exercise-wrist-swing-with-fingers-step-1 = Deixe o punho cair para a frente, para os dedos abrirem.
exercise-wrist-swing-with-fingers-step-2 = Mantenha por { $hold }.
exercise-wrist-swing-with-fingers-step-3 = Levante o punho, para os dedos se fecharem de leve.
exercise-wrist-swing-with-fingers-step-4 = Mantenha por { $hold }.

exercise-forearm-front-stretch-name = Alongue o antebraço do lado da palma
exercise-forearm-front-stretch-start = Estenda o braço à frente, palma para cima.
exercise-forearm-front-stretch-step-1 = Estique o cotovelo.
exercise-forearm-front-stretch-step-2 = Pegue a palma e os dedos com a outra mão.
exercise-forearm-front-stretch-step-3 = Puxe a mão de leve para baixo até sentir que estica.
exercise-forearm-front-stretch-step-4 = Mantenha por { $hold }.
exercise-forearm-front-stretch-step-5 = Solte devagar.

exercise-forearm-back-stretch-name = Alongue o dorso do antebraço
exercise-forearm-back-stretch-start = Estenda o braço à frente, palma para baixo. Deixe os dedos soltos.
exercise-forearm-back-stretch-step-1 = Estique o cotovelo.
exercise-forearm-back-stretch-step-2 = Ponha a outra mão no dorso da mão.
exercise-forearm-back-stretch-step-3 = Empurre a mão de leve para baixo até sentir que estica.
exercise-forearm-back-stretch-step-4 = Mantenha por { $hold }.
exercise-forearm-back-stretch-step-5 = Solte devagar.

exercise-palms-together-stretch-name = Alongue os punhos com as palmas juntas
exercise-palms-together-stretch-start = Junte as palmas na frente do peito, dedos para cima.
exercise-palms-together-stretch-step-1 = Abaixe as mãos devagar. Mantenha as palmas juntas.
exercise-palms-together-stretch-step-2 = Pare quando sentir que estica de leve.
exercise-palms-together-stretch-step-3 = Mantenha por { $hold }.
exercise-palms-together-stretch-step-4 = Levante as mãos de novo.

exercise-free-finger-bend-name = Mexa os dedos livres
exercise-free-finger-bend-start = Levante a mão com os dedos para cima.
exercise-free-finger-bend-step-1 = Dobre só os dedos que podem se mexer livres.
exercise-free-finger-bend-step-2 = Mantenha por { $hold }.
exercise-free-finger-bend-step-3 = Estique-os devagar.

exercise-fingers-straight-name = Estique os dedos
exercise-fingers-straight-start = Levante a mão com os dedos para cima.
exercise-fingers-straight-step-1 = Estique todos os dedos até onde for fácil.
exercise-fingers-straight-step-2 = Mantenha por { $hold }.
exercise-fingers-straight-step-3 = Deixe-os relaxar.

exercise-tabletop-name = Dobre só os nós dos dedos
exercise-tabletop-start = Levante a mão com os dedos para cima.
exercise-tabletop-step-1 = Dobre os nós dos dedos. Mantenha o resto dos dedos reto.
exercise-tabletop-step-2 = Mantenha por { $hold }.
exercise-tabletop-step-3 = Estique os nós dos dedos.

exercise-straight-fist-name = Feche a mão com as pontas retas
exercise-straight-fist-start = Levante a mão com os dedos para cima.
exercise-straight-fist-step-1 = Dobre os nós dos dedos e as juntas do meio. Mantenha as pontas retas.
exercise-straight-fist-step-2 = Deite as pontas dos dedos na palma.
exercise-straight-fist-step-3 = Mantenha por { $hold }.
exercise-straight-fist-step-4 = Estique os dedos.

exercise-five-positions-name = Passe pelas formas da mão
exercise-five-positions-start = Levante a mão com os dedos para cima.
exercise-five-positions-step-1 = Estique todos os dedos.
exercise-five-positions-step-2 = Faça um gancho. Mantenha os nós dos dedos retos.
exercise-five-positions-step-3 = Feche a mão toda de leve.
exercise-five-positions-step-4 = Dobre só os nós dos dedos. Mantenha o resto reto.
exercise-five-positions-step-5 = Deite as pontas dos dedos na palma. Mantenha as pontas retas.
exercise-five-positions-step-6 = Mantenha cada forma por { $hold } antes da próxima.

exercise-block-tip-bend-name = Dobre só a ponta do dedo
exercise-block-tip-bend-start = Apoie a mão na mesa, palma para cima. Com a outra mão, segure o dedo tratado entre a junta do meio e a junta da ponta.
exercise-block-tip-bend-step-1 = Dobre só a ponta.
exercise-block-tip-bend-step-2 = Mantenha por { $hold }.
exercise-block-tip-bend-step-3 = Estique a ponta.

exercise-block-middle-bend-name = Dobre só a junta do meio
exercise-block-middle-bend-start = Apoie a mão na mesa, palma para cima. Com a outra mão, segure o dedo tratado entre o nó e a junta do meio.
exercise-block-middle-bend-step-1 = Dobre só a junta do meio.
exercise-block-middle-bend-step-2 = Mantenha por { $hold }.
exercise-block-middle-bend-step-3 = Estique a junta do meio.

exercise-knuckle-bent-straighten-name = Estique a junta do meio, nó dobrado
exercise-knuckle-bent-straighten-start = Dobre o nó do dedo tratado. Segure-o dobrado com a outra mão.
exercise-knuckle-bent-straighten-step-1 = Estique a junta do meio até onde for fácil.
exercise-knuckle-bent-straighten-step-2 = Mantenha por { $hold }.
exercise-knuckle-bent-straighten-step-3 = Deixe a junta do meio relaxar.

exercise-finger-lift-name = Levante um dedo de cada vez
exercise-finger-lift-start = Deite a palma na mesa.
exercise-finger-lift-step-1 = Levante um dedo da mesa. Deixe os outros embaixo.
exercise-finger-lift-step-2 = Mantenha por { $hold }.
exercise-finger-lift-step-3 = Abaixe-o devagar.
exercise-finger-lift-step-4 = Faça o mesmo com cada um dos outros dedos.

exercise-tip-bend-middle-straight-name = Dobre a ponta, junta do meio reta
exercise-tip-bend-middle-straight-start = Apoie a mão na mesa. Fique com a tala.
exercise-tip-bend-middle-straight-step-1 = Mantenha reta a junta do meio do dedo tratado.
exercise-tip-bend-middle-straight-step-2 = Dobre só a ponta.
exercise-tip-bend-middle-straight-step-3 = Mantenha por { $hold }.
exercise-tip-bend-middle-straight-step-4 = Estique a ponta.

exercise-middle-bend-tip-held-name = Dobre a junta do meio do dedo
exercise-middle-bend-tip-held-start = Apoie o cotovelo na mesa com os dedos para cima. Fique com a tala.
exercise-middle-bend-tip-held-step-1 = Dobre a junta do meio do dedo tratado.
exercise-middle-bend-tip-held-step-2 = Mantenha por { $hold }.
exercise-middle-bend-tip-held-step-3 = Estique-a devagar.

exercise-short-arc-middle-bend-name = Dobre um pouco a junta do meio
exercise-short-arc-middle-bend-start = Use só a peça de medida que o terapeuta fez. Mantenha o nó reto.
exercise-short-arc-middle-bend-step-1 = Deite o dedo tratado ao longo da peça.
exercise-short-arc-middle-bend-step-2 = Dobre a junta do meio só até o dedo tocar a peça.
exercise-short-arc-middle-bend-step-3 = Mantenha por { $hold }.
exercise-short-arc-middle-bend-step-4 = Estique a junta do meio por completo.
exercise-short-arc-middle-bend-step-5 = Coloque a tala de novo quando tiver feito todas as vezes.

exercise-helped-curl-in-splint-name = Curve os dedos com a outra mão
exercise-helped-curl-in-splint-start = Fique com a tala. Abra só as tiras que o terapeuta mostrou. Deixe os dedos soltos.
exercise-helped-curl-in-splint-step-1 = Com a outra mão, curve um dedo de leve em direção à palma.
exercise-helped-curl-in-splint-step-2 = Mantenha por { $hold }.
exercise-helped-curl-in-splint-step-3 = Solte o dedo devagar. Não puxe para esticar.
exercise-helped-curl-in-splint-step-4 = Faça o mesmo com cada dedo.
exercise-helped-curl-in-splint-step-5 = Feche as tiras de novo quando tiver feito todas as vezes.

exercise-straighten-to-roof-name = Estique os dedos até a tala
exercise-straighten-to-roof-start = Fique com a tala. Abra só as tiras que o terapeuta mostrou. Mantenha os nós dos dedos encostados na tala.
exercise-straighten-to-roof-step-1 = Estique os dedos até tocarem a tala.
exercise-straighten-to-roof-step-2 = Mantenha por { $hold }.
exercise-straighten-to-roof-step-3 = Deixe-os relaxar.
exercise-straighten-to-roof-step-4 = Feche as tiras de novo quando tiver feito todas as vezes.

exercise-half-fist-in-splint-name = Feche a mão pela metade, solta
exercise-half-fist-in-splint-start = Fique com a tala. Abra só as tiras que o terapeuta mostrou.
exercise-half-fist-in-splint-step-1 = Dobre os dedos de leve, a meio caminho da palma.
exercise-half-fist-in-splint-step-2 = Mantenha por { $hold }. Não aperte.
exercise-half-fist-in-splint-step-3 = Estique os dedos até tocarem a tala.
exercise-half-fist-in-splint-step-4 = Feche as tiras de novo quando tiver feito todas as vezes.

exercise-place-and-hold-name = Ponha os dedos no lugar e mantenha
exercise-place-and-hold-start = Apoie o cotovelo na mesa. Mexa só até onde o terapeuta mostrou.
exercise-place-and-hold-step-1 = Com a outra mão, curve os dedos de leve.
exercise-place-and-hold-step-2 = Tire a outra mão.
exercise-place-and-hold-step-3 = Mantenha os dedos ali de leve por { $hold }. Não aperte.
exercise-place-and-hold-step-4 = Deixe os dedos relaxar.

exercise-yoke-bend-name = Dobre os dedos na tala
exercise-yoke-bend-start = Apoie o cotovelo na mesa com os dedos para cima. Fique com a tala. Não deixe o punho cair para a frente.
exercise-yoke-bend-step-1 = Dobre todos os dedos até onde a tala deixa.
exercise-yoke-bend-step-2 = Mantenha por { $hold }.
exercise-yoke-bend-step-3 = Estique todos os dedos.

exercise-helped-curl-stretch-name = Curve o dedo com ajuda
exercise-helped-curl-stretch-start = Apoie a mão na mesa, palma para cima.
exercise-helped-curl-stretch-step-1 = Com a outra mão, curve o dedo tratado devagar.
exercise-helped-curl-stretch-step-2 = Pare quando sentir que estica de leve.
exercise-helped-curl-stretch-step-3 = Mantenha por { $hold }.
exercise-helped-curl-stretch-step-4 = Solte devagar.

exercise-helped-straighten-stretch-name = Estique o dedo com ajuda
exercise-helped-straighten-stretch-start = Deite o dorso da mão na mesa. Com a outra mão, segure o dedo tratado entre o nó e a junta do meio.
exercise-helped-straighten-stretch-step-1 = Empurre a junta do meio de leve para esticar.
exercise-helped-straighten-stretch-step-2 = Pare quando sentir que estica de leve.
exercise-helped-straighten-stretch-step-3 = Mantenha por { $hold }.
exercise-helped-straighten-stretch-step-4 = Solte devagar.

exercise-intrinsic-stretch-name = Curve o dedo, nó reto
exercise-intrinsic-stretch-start = Apoie o cotovelo na mesa com os dedos para cima.
exercise-intrinsic-stretch-step-1 = Mantenha reto o nó do dedo tratado.
exercise-intrinsic-stretch-step-2 = Com a outra mão, dobre a junta do meio e a ponta dele.
exercise-intrinsic-stretch-step-3 = Pare quando sentir que estica de leve.
exercise-intrinsic-stretch-step-4 = Mantenha por { $hold }.
exercise-intrinsic-stretch-step-5 = Solte devagar.

exercise-thumb-bend-across-name = Dobre o polegar por cima da palma
exercise-thumb-bend-across-start = Apoie a mão na mesa, palma para cima.
exercise-thumb-bend-across-step-1 = Dobre o polegar devagar por cima da palma.
exercise-thumb-bend-across-step-2 = Mantenha por { $hold }.
exercise-thumb-bend-across-step-3 = Estique o polegar.

exercise-thumb-web-release-name = Amacie a pele ao lado do polegar
exercise-thumb-web-release-start = Apoie a mão na mesa, com o lado do dedo mínimo para baixo.
exercise-thumb-web-release-step-1 = Esfregue de leve a pele entre o polegar e o indicador.
exercise-thumb-web-release-step-2 = Com a outra mão, segure o polegar entre o nó e o punho.
exercise-thumb-web-release-step-3 = Puxe o polegar de leve para longe da palma.
exercise-thumb-web-release-step-4 = Mantenha por { $hold }.
exercise-thumb-web-release-step-5 = Solte devagar.

exercise-thumb-wrist-slow-lower-name = Abaixe a mão devagar, polegar para cima
exercise-thumb-wrist-slow-lower-start = Apoie o antebraço na mesa, com o lado do dedo mínimo para baixo. Segure o peso pequeno que o terapeuta escolheu. Faça isto só dia sim, dia não.
exercise-thumb-wrist-slow-lower-step-1 = Levante a mão para o lado do polegar com a outra mão.
exercise-thumb-wrist-slow-lower-step-2 = Tire a outra mão.
exercise-thumb-wrist-slow-lower-step-3 = Deixe a mão descer devagar. Leve { $hold } para isso.

exercise-thumb-side-nerve-slide-name = Deixe deslizar o nervo do lado do polegar
exercise-thumb-side-nerve-slide-start = Sente-se com o cotovelo dobrado e o punho reto.
exercise-thumb-side-nerve-slide-step-1 = Feche a mão sem apertar.
exercise-thumb-side-nerve-slide-step-2 = Estique os dedos. Deixe o polegar ao lado deles.
exercise-thumb-side-nerve-slide-step-3 = Dobre o punho de leve para trás.
exercise-thumb-side-nerve-slide-step-4 = Leve o polegar para o lado de fora.
exercise-thumb-side-nerve-slide-step-5 = Vire a palma para cima.
exercise-thumb-side-nerve-slide-step-6 = Mantenha cada posição por { $hold } antes da próxima.

exercise-little-finger-nerve-slide-name = Deixe deslizar o nervo do dedo mínimo
exercise-little-finger-nerve-slide-start = Estenda o braço para o lado, palma para cima.
exercise-little-finger-nerve-slide-step-1 = Dobre o cotovelo pela metade enquanto o punho dobra para o lado da palma.
exercise-little-finger-nerve-slide-step-2 = Mantenha por { $hold }.
exercise-little-finger-nerve-slide-step-3 = Estique o cotovelo enquanto o punho dobra de leve para o lado do dorso da mão.
exercise-little-finger-nerve-slide-step-4 = Mantenha por { $hold }.

exercise-wrist-press-still-name = Empurre sem mexer o punho
exercise-wrist-press-still-start = Apoie o antebraço na mesa, palma para baixo, com a mão para fora da borda.
exercise-wrist-press-still-step-1 = Ponha a outra mão no dorso da mão.
exercise-wrist-press-still-step-2 = Empurre de leve para cima contra ela. Não deixe o punho se mexer.
exercise-wrist-press-still-step-3 = Mantenha por { $hold }.
exercise-wrist-press-still-step-4 = Relaxe a mão.
exercise-wrist-press-still-step-5 = Na próxima vez, ponha a outra mão debaixo da palma e empurre para baixo contra ela.

exercise-putty-grip-name = Aperte massa macia
exercise-putty-grip-start = Ponha um pedaço de massa macia na palma.
exercise-putty-grip-step-1 = Aperte de leve com os dedos e o polegar.
exercise-putty-grip-step-2 = Mantenha por { $hold }.
exercise-putty-grip-step-3 = Solte devagar.
exercise-putty-grip-step-4 = Faça de novo uma bola com a massa.

exercise-three-point-pinch-name = Pinça na massa macia, forma redonda
exercise-three-point-pinch-start = Pegue um pedaço pequeno de massa macia.
exercise-three-point-pinch-step-1 = Segure entre o polegar, o indicador e o dedo médio.
exercise-three-point-pinch-step-2 = Mantenha cada junta um pouco dobrada.
exercise-three-point-pinch-step-3 = Faça a pinça na massa, de leve.
exercise-three-point-pinch-step-4 = Mantenha por { $hold }.
exercise-three-point-pinch-step-5 = Solte devagar.

exercise-key-pinch-putty-name = Pinça na massa macia, como uma chave
exercise-key-pinch-putty-start = Pegue um pedaço pequeno de massa macia.
exercise-key-pinch-putty-step-1 = Segure entre o polegar e o lado do indicador.
exercise-key-pinch-putty-step-2 = Faça a pinça na massa, de leve.
exercise-key-pinch-putty-step-3 = Mantenha por { $hold }.
exercise-key-pinch-putty-step-4 = Solte devagar.

exercise-wrist-slow-lower-name = Abaixe a mão devagar, palma para baixo
exercise-wrist-slow-lower-start = Apoie o antebraço na mesa, palma para baixo, com a mão para fora da borda. Segure o peso pequeno que o terapeuta escolheu.
exercise-wrist-slow-lower-step-1 = Levante a mão com a ajuda da outra mão.
exercise-wrist-slow-lower-step-2 = Tire a outra mão.
exercise-wrist-slow-lower-step-3 = Deixe a mão descer devagar. Leve { $hold } para isso.

exercise-hand-lean-name = Apoie-se na mão
exercise-hand-lean-start = Fique em pé diante de uma parede. Use a mesa ou o chão só quando o terapeuta disser.
exercise-hand-lean-step-1 = Ponha as duas palmas na parede.
exercise-hand-lean-step-2 = Incline-se devagar até sentir peso nas mãos.
exercise-hand-lean-step-3 = Mantenha por { $hold }.
exercise-hand-lean-step-4 = Empurre o corpo de volta devagar.

exercise-stroke-towards-heart-name = Alise o braço em direção ao coração
exercise-stroke-towards-heart-start = Apoie o braço em almofadas, com a mão mais alta que o cotovelo.
exercise-stroke-towards-heart-step-1 = Ponha a outra mão nas pontas dos dedos.
exercise-stroke-towards-heart-step-2 = Alise de leve das pontas dos dedos até o cotovelo.
exercise-stroke-towards-heart-step-3 = Não passe sobre a tala, nem sobre pele dolorida ou aberta.
exercise-stroke-towards-heart-step-4 = Continue por { $hold }.

exercise-scar-massage-name = Mexa a cicatriz
exercise-scar-massage-start = Faça isto só com a cicatriz fechada e seca. Apoie a mão na mesa.
exercise-scar-massage-step-1 = Ponha a ponta de um dedo da outra mão na cicatriz.
exercise-scar-massage-step-2 = Aperte firme, mas sem doer.
exercise-scar-massage-step-3 = Mexa a pele em círculos pequenos.
exercise-scar-massage-step-4 = Mexa a pele para cima e para baixo, depois para os lados.
exercise-scar-massage-step-5 = Continue ao longo da cicatriz por { $hold }.

exercise-texture-rub-name = Acostume a pele ao toque
exercise-texture-rub-start = Faça isto só em pele fechada. Apoie a mão na mesa.
exercise-texture-rub-step-1 = Esfregue de leve a pele sensível com um pano macio.
exercise-texture-rub-step-2 = Continue por { $hold }.
exercise-texture-rub-step-3 = Use um pano mais áspero quando o macio não incomodar mais.

exercise-touch-relearn-name = Aprenda a sentir de novo
exercise-touch-relearn-start = Apoie a mão na mesa. Não use nada quente, frio ou afiado.
exercise-touch-relearn-step-1 = Toque a ponta do dedo com um objeto pequeno e olhe.
exercise-touch-relearn-step-2 = Feche os olhos e toque o mesmo lugar.
exercise-touch-relearn-step-3 = Note onde você sente e como é.
exercise-touch-relearn-step-4 = Abra os olhos e compare.
exercise-touch-relearn-step-5 = Continue em outros lugares por { $hold }.

exercise-scar-hold-stretch-name = Mantenha a cicatriz esticada
exercise-scar-hold-stretch-start = Faça isto só com a cicatriz fechada e seca.
exercise-scar-hold-stretch-step-1 = Mexa a mão devagar até a cicatriz ficar apertada.
exercise-scar-hold-stretch-step-2 = Mantenha por { $hold }.
exercise-scar-hold-stretch-step-3 = Deixe a mão voltar devagar.

exercise-tight-hand-slow-open-name = Abra devagar a mão contraída
exercise-tight-hand-slow-open-start = Apoie o antebraço em uma almofada. Deixe o punho dobrar para a frente. Nunca puxe rápido.
exercise-tight-hand-slow-open-step-1 = Pegue o polegar pela base e puxe para fora devagar.
exercise-tight-hand-slow-open-step-2 = Estique os dedos devagar com a outra mão.
exercise-tight-hand-slow-open-step-3 = Leve o punho devagar para trás. Mantenha os dedos retos.
exercise-tight-hand-slow-open-step-4 = Pare assim que a mão começar a puxar contra você.
exercise-tight-hand-slow-open-step-5 = Mantenha por { $hold }.
exercise-tight-hand-slow-open-step-6 = Deixe a mão fechar devagar.
