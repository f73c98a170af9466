### Conditions: the name, what is wrong, and what the splint does.
### Words for a reader of about twelve. The splint is never said to cure anything.

## Sore tendons on the thumb side of the wrist

condition-de-quervain-name = Gereizte Daumensehnen am Handgelenk (de Quervain)
condition-de-quervain-what = Zwei Sehnen zu Ihrem Daumen reiben in einem engen Tunnel am Handgelenk. Sie sind gereizt und geschwollen.
condition-de-quervain-aim = Die Schiene hält Handgelenk und Daumen ruhig. So können die gereizten Sehnen ausruhen.

## Torn band at the knuckle of the thumb, fresh

condition-thumb-ucl-acute-name = Gerissenes Band am Knöchel des Daumens
condition-thumb-ucl-acute-what = Das Band an der Innenseite Ihres Daumenknöchels ist gerissen. Es muss ohne Druck zur Seite heilen.
condition-thumb-ucl-acute-aim = Die Schiene schützt das Band, während es heilt. Sie verhindert, dass Ihr Daumen zur Seite gedrückt wird.

## Torn band at the knuckle of the thumb, old

condition-thumb-ucl-chronic-name = Lockerer Knöchel des Daumens
condition-thumb-ucl-chronic-what = Durch einen alten Riss ist Ihr Daumenknöchel locker. Er gibt nach, wenn Sie mit Daumen und Finger greifen.
condition-thumb-ucl-chronic-aim = Die Schiene stützt den Knöchel, während Sie die Hand benutzen.

## Worn joint at the base of the thumb

condition-thumb-cmc-osteoarthritis-name = Abgenutztes Gelenk am Ansatz des Daumens
condition-thumb-cmc-osteoarthritis-what = Das Gelenk am Ansatz Ihres Daumens ist abgenutzt. Es rutscht und tut weh, wenn Sie mit Daumen und Finger greifen.
condition-thumb-cmc-osteoarthritis-aim = Die Schiene stützt den Ansatz Ihres Daumens. Das kann Arbeiten leichter und weniger schmerzhaft machen.
