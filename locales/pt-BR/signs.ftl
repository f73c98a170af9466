### Signs to watch for. Each is a clause or a short noun phrase without a full stop, in a list under “Ligue para nós hoje” or “… se:”.
sign-numb-or-tingling = Seus dedos ou polegar continuam mais dormentes ou formigando mais do que antes
sign-fingers-blue-white-cold =
    { $straps ->
        [without] Seus dedos ou polegar continuam azuis, brancos ou frios
       *[with] Seus dedos ou polegar continuam azuis, brancos ou frios { $loosen } depois de afrouxar as tiras
    }
sign-more-swelling-or-pain = Você tem mais inchaço ou mais dor
sign-mark-or-sore-stays = Uma marca vermelha ou um ponto dolorido fica mais de { $limit }
sign-severe-pain-hard-arm = Uma dor forte só aumenta em repouso, ou o antebraço fica apertado e duro
sign-redness-with-fever = A vermelhidão se espalha e você tem febre ou passa mal
sign-finger-swollen-bent = Um dedo ou polegar incha todo, fica dobrado e dói quando é esticado
sign-new-injury = Depois de uma queda ou batida, a mão parece torta ou não para de sangrar
sign-face-swells-breathing = Seu rosto ou lábios incham, ou está difícil respirar
sign-redness-spreads = Vermelhidão ou calor se espalha na mão
sign-blister-or-open-skin = Você tem uma bolha ou a pele aberta
sign-skin-patch-changed = Uma área da pele está mais escura, brilhante, dura ou quente do que o resto
sign-rash-or-itch = Aparecem manchas ou bolinhas, ou dá coceira, debaixo da tala
sign-skin-wet-and-white = A pele debaixo da tala está branca, mole e molhada
sign-splint-broken-or-loose = Sua tala está rachada, torta, perdida ou solta demais
sign-hand-burning-shiny-stiff = A mão toda arde, fica brilhante e dura de mexer
sign-edge-or-strap-worn = Uma borda está afiada, ou uma tira não gruda mais
sign-plan-does-not-fit-day = O plano não cabe no seu dia
sign-thumb-gives-way = Seu polegar escapa ou cede para o lado
sign-thumb-snap = Você sente um estalo no polegar
sign-thumb-lump = Um caroço novo aparece ao lado do nó do polegar
sign-wound-opens = Sua ferida abre, vaza ou cheira mal
sign-thumb-back-tingles = O dorso do polegar formiga ou fica dormente
sign-thumb-catches = Seu polegar trava ou estala quando você o mexe
sign-thumb-weaker-in-pinch = Sua pinça fica mais fraca
sign-no-easier-with-splint = As tarefas doem tanto com a tala quanto sem ela
