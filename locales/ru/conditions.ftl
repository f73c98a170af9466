### Conditions: the name, what is wrong, and what the splint does. The splint is never said to cure anything.

condition-de-quervain-name = Боль в сухожилиях большого пальца у запястья (болезнь де Кервена)
condition-de-quervain-what = Два сухожилия большого пальца трутся в тесном канале у запястья. Они болят и отекли.
condition-de-quervain-aim = Шина держит запястье и большой палец неподвижно. Так сухожилия отдыхают.

condition-thumb-ucl-acute-name = Разрыв связки у костяшки большого пальца
condition-thumb-ucl-acute-what = Связка на внутренней стороне костяшки большого пальца порвана. Она должна зажить без толчков вбок.
condition-thumb-ucl-acute-aim = Шина бережёт связку, пока она заживает. Она не даёт толкнуть большой палец наружу, вбок.

condition-thumb-ucl-chronic-name = Нестойкая костяшка большого пальца
condition-thumb-ucl-chronic-what = После старого разрыва костяшка большого пальца нестойкая. Она уходит вбок, когда вы сжимаете пальцами.
condition-thumb-ucl-chronic-aim = Шина удерживает костяшку, когда вы работаете рукой.

condition-thumb-cmc-osteoarthritis-name = Износ сустава у основания большого пальца
condition-thumb-cmc-osteoarthritis-what = Сустав у основания большого пальца изношен. Он скользит и болит, когда вы сжимаете пальцами.
condition-thumb-cmc-osteoarthritis-aim = Шина удерживает основание большого пальца. Это может облегчить дела и уменьшить боль.
