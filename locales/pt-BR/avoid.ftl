### Movements to leave out for now.
avoid-finger-dip-any = Não mexa a ponta do dedo tratado.
avoid-finger-mcp-any = Não mexa o nó do dedo tratado.
avoid-finger-mcp-flexion = Não dobre o nó do dedo tratado mais do que a tala deixa.
avoid-finger-pip-any = Não mexa a junta do meio do dedo tratado.
avoid-finger-pip-flexion = Não dobre a junta do meio do dedo tratado, a não ser que um exercício daqui mande.
avoid-finger-pip-extension = Não force a junta do meio do dedo tratado a esticar nem a ir para trás.
avoid-finger-pip-radial-deviation = Não empurre o dedo tratado para o lado do polegar.
avoid-finger-pip-ulnar-deviation = Não empurre o dedo tratado para o lado do dedo mínimo.
avoid-fingers-mcp-extension = Não puxe os dedos para esticar. Não aperte nem levante nada com esta mão.
