### Conditions: the name, what is wrong, and what the splint does.
### Words for a reader of about twelve. The splint is never said to cure anything.

## Sore tendons on the thumb side of the wrist

condition-de-quervain-name = Tendons douloureux du pouce au poignet (de Quervain)
condition-de-quervain-what = Deux tendons du pouce frottent dans un tunnel étroit au poignet. Ils font mal et sont gonflés.
condition-de-quervain-aim = L’attelle empêche le poignet et le pouce de bouger. Ainsi les tendons douloureux se reposent.

## Torn band at the knuckle of the thumb, fresh

condition-thumb-ucl-acute-name = Ligament déchiré à la jointure du pouce
condition-thumb-ucl-acute-what = Le ligament du côté intérieur de la jointure du pouce est déchiré. Il doit guérir sans poussée de côté.
condition-thumb-ucl-acute-aim = L’attelle protège le ligament pendant qu’il guérit. Elle empêche le pouce d’être poussé vers l’extérieur.

## Torn band at the knuckle of the thumb, old

condition-thumb-ucl-chronic-name = Jointure du pouce trop lâche
condition-thumb-ucl-chronic-what = Une vieille déchirure a laissé la jointure du pouce lâche. Elle cède quand vous pincez.
condition-thumb-ucl-chronic-aim = L’attelle tient la jointure pendant que vous vous servez de la main.

## Worn joint at the base of the thumb

condition-thumb-cmc-osteoarthritis-name = Articulation usée à la base du pouce
condition-thumb-cmc-osteoarthritis-what = L’articulation à la base du pouce est usée. Elle glisse et fait mal quand vous pincez.
condition-thumb-cmc-osteoarthritis-aim = L’attelle tient la base du pouce. Cela peut rendre les tâches plus faciles et moins douloureuses.
