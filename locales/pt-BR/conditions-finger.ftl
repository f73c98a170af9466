### Brazilian Portuguese, a draft. Ids and variables are explained in the English file of the same name.
condition-trigger-finger-name = Dedo que trava (dedo em gatilho)
condition-trigger-finger-what = O tendão que dobra o dedo passa por um túnel na palma. Ali ele está grosso demais e prende ou trava.
condition-trigger-finger-aim = A tala deixa o dedo dobrar menos. Assim o tendão raspa menos no túnel e pode descansar.

condition-mallet-tendon-name = Ponta do dedo caída, tendão rompido (dedo em martelo)
condition-mallet-tendon-what = O tendão fino que levanta a ponta do dedo está rompido. As partes só se unem se a ponta nunca cair.
condition-mallet-tendon-aim = A tala mantém a ponta do dedo reta enquanto o tendão cicatriza.

condition-mallet-bony-name = Ponta do dedo caída, lasca de osso (dedo em martelo)
condition-mallet-bony-what = O tendão que levanta a ponta do dedo arrancou uma lasca de osso. A lasca só se une de novo se a ponta ficar parada.
condition-mallet-bony-aim = A tala mantém a ponta do dedo reta enquanto o osso cicatriza.

condition-boutonniere-acute-name = Tendão rompido sobre a junta do meio
condition-boutonniere-acute-what = O tendão que estica a junta do meio do dedo está rompido. Cada vez que dobra, as partes se afastam.
condition-boutonniere-acute-aim = A tala mantém a junta do meio reta. A ponta do dedo fica livre, e dobrar a ponta ajuda o tendão.

condition-boutonniere-chronic-name = Junta do meio dobrada após ruptura antiga
condition-boutonniere-chronic-what = Uma ruptura antiga deixou a junta do meio do dedo dobrada. Ela ficou dura.
condition-boutonniere-chronic-aim = A tala ajuda a esticar a junta, devagar e com cuidado. Depois ela mantém a junta assim.

condition-swan-neck-name = Junta do meio que dobra para trás (pescoço de cisne)
condition-swan-neck-what = A junta do meio do dedo escapa para trás e fica presa. Então é difícil fechar a mão.
condition-swan-neck-aim = A tala não deixa a junta ir para trás. Você ainda pode dobrar essa junta.

condition-pip-volar-plate-name = Batida na ponta do dedo, frente da junta do meio
condition-pip-volar-plate-what = A placa firme na frente da junta do meio está machucada. Dobrar para trás machuca de novo.
condition-pip-volar-plate-aim = A tala não deixa a junta ir para trás. Dobrar do jeito normal faz bem.

condition-pip-collateral-sprain-name = Entorse do lado da junta do meio
condition-pip-collateral-sprain-what = O ligamento do lado da junta do meio está esticado ou rompido em parte. Empurrões para o lado abrem o ligamento.
condition-pip-collateral-sprain-aim = A tala protege a junta de empurrões para o lado enquanto o ligamento cicatriza.

condition-pip-flexion-contracture-name = Junta do meio dura e dobrada
condition-pip-flexion-contracture-what = A pele e os ligamentos na frente da junta do meio encurtaram. O dedo não estica.
condition-pip-flexion-contracture-aim = A tala leva a junta de leve a esticar. Muito tempo e leve funciona melhor que pouco tempo e forte.

condition-dip-osteoarthritis-name = Junta gasta na ponta do dedo
condition-dip-osteoarthritis-what = A última junta do dedo está gasta. Pode ficar dolorida e com caroços.
condition-dip-osteoarthritis-aim = A tala deixa a junta descansar à noite. Isso pode deixar menos dolorido.

condition-sagittal-band-injury-name = Ligamento rompido sobre o nó do dedo
condition-sagittal-band-injury-what = Um pequeno ligamento mantém o tendão em cima do nó do dedo. Ele está rompido, e o tendão escapa com a mão fechada.
condition-sagittal-band-injury-aim = A tala não deixa o nó dobrar muito. O tendão fica em cima enquanto o ligamento cicatriza.

condition-fifth-metacarpal-neck-fracture-name = Osso quebrado abaixo do dedo mínimo
condition-fifth-metacarpal-neck-fracture-what = O osso da palma abaixo do dedo mínimo está quebrado perto do nó. Ele precisa se unir de novo.
condition-fifth-metacarpal-neck-fracture-aim = A tala protege o osso enquanto cicatriza. Também ajuda o dedo a não girar.

condition-proximal-phalanx-fracture-name = Primeiro osso do dedo quebrado
condition-proximal-phalanx-fracture-what = O osso entre o nó e a junta do meio está quebrado. Ele precisa se unir de novo.
condition-proximal-phalanx-fracture-aim = A tala mantém o osso no lugar enquanto cicatriza. Ela segura as juntas para endurecerem menos.
