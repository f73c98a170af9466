### Conditions: the name, what is wrong, and what the splint does.
### Words for a reader of about twelve. The splint is never said to cure anything.

## Sore tendons on the thumb side of the wrist

condition-de-quervain-name = Sore thumb tendons at the wrist (de Quervain)
condition-de-quervain-what = Two cords to your thumb rub in a tight tunnel at the wrist. They are sore and swollen.
condition-de-quervain-aim = The splint keeps your wrist and thumb still. This lets the sore cords rest.

## Torn band at the knuckle of the thumb, fresh

condition-thumb-ucl-acute-name = Torn band at the thumb knuckle
condition-thumb-ucl-acute-what = The band on the inner side of your thumb knuckle is torn. It has to heal without a sideways push.
condition-thumb-ucl-acute-aim = The splint guards the band while it heals. It stops your thumb from being pushed out to the side.

## Torn band at the knuckle of the thumb, old

condition-thumb-ucl-chronic-name = Loose thumb knuckle
condition-thumb-ucl-chronic-what = An old tear left your thumb knuckle loose. It gives way when you pinch.
condition-thumb-ucl-chronic-aim = The splint steadies the knuckle while you use your hand.

## Worn joint at the base of the thumb

condition-thumb-cmc-osteoarthritis-name = Worn joint at the base of your thumb
condition-thumb-cmc-osteoarthritis-what = The joint at the base of your thumb is worn. It slides and hurts when you pinch.
condition-thumb-cmc-osteoarthritis-aim = The splint steadies the base of your thumb. This can make tasks easier and less sore.
