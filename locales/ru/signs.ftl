### Signs to watch for. Each is a clause or a short noun phrase without a full stop.
### $limit, $loosen are finished texts in the accusative ("за минуту", "через минуту").

sign-numb-or-tingling = Любой палец немеет, или в нём покалывает сильнее, чем раньше, и это не проходит
sign-fingers-blue-white-cold = { $straps ->
        [without] Любой палец остаётся синим, белым или холодным
       *[with] Любой палец остаётся синим, белым или холодным через { $loosen } после ослабления ремешков
    }
sign-more-swelling-or-pain = Отёк или боль стали сильнее
sign-mark-or-sore-stays = Красный след или больное место не проходит за { $limit }

sign-severe-pain-hard-arm = Сильная боль в покое всё растёт, или предплечье тугое и твёрдое
sign-redness-with-fever = Краснота расходится, и у вас жар или вам плохо
sign-finger-swollen-bent = Весь палец (или большой палец) отёк, не разгибается и болит, когда его выпрямляют
sign-new-injury = После падения или удара рука выглядит кривой или кровь не останавливается
sign-face-swells-breathing = Отекает лицо или губы, или трудно дышать

sign-redness-spreads = Краснота или тепло расходится по руке
sign-blister-or-open-skin = Появился пузырь или открытая ранка на коже
sign-skin-patch-changed = Участок кожи темнее, блестит, твёрже или теплее остальной
sign-rash-or-itch = Под шиной сыпь или зуд
sign-skin-wet-and-white = Кожа под шиной белая, мягкая и мокрая
sign-splint-broken-or-loose = Шина треснула, погнулась, потерялась или слишком свободна
sign-hand-burning-shiny-stiff = Вся кисть горит, блестит и плохо гнётся

sign-edge-or-strap-worn = Край острый, или ремешок больше не держит
sign-plan-does-not-fit-day = План не подходит к вашему дню

sign-thumb-gives-way = Большой палец соскальзывает или уходит вбок
sign-thumb-snap = В большом пальце что-то щёлкнуло, будто лопнуло
sign-thumb-lump = Рядом с костяшкой большого пальца новая шишка
sign-wound-opens = Рана открылась, мокнет или плохо пахнет
sign-thumb-back-tingles = Тыльную сторону большого пальца покалывает, или она немеет
sign-thumb-catches = Большой палец цепляется или щёлкает при движении
sign-thumb-weaker-in-pinch = Сжимать пальцами стало труднее
sign-no-easier-with-splint = В шине дела вызывают такую же боль, как без неё
