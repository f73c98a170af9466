### Conditions of the thumb and of the tendons and bones at the wrist: the name, what is wrong, and what the splint does.
### Words for a reader of about twelve. The splint is never said to cure anything.

## Sore tendons on the thumb side of the wrist, in pregnancy or with a small baby

condition-wrist-thumb-around-birth-name = Gereizte Daumensehnen rund um eine Geburt
condition-wrist-thumb-around-birth-what = Zwei Sehnen zu Ihrem Daumen reiben am Handgelenk. Das Heben und Füttern eines Babys kann sie reizen.
condition-wrist-thumb-around-birth-aim = Die Schiene lässt Handgelenk und Daumen nachts und beim Heben ausruhen. So kann die Pflege Ihres Babys weniger weh tun.

## Tendons that rub where they cross above the wrist

condition-intersection-syndrome-name = Reibende Sehnen oberhalb des Handgelenks
condition-intersection-syndrome-what = Sehnen zu Handgelenk und Daumen kreuzen sich oberhalb des Handgelenks. Dort reiben sie und sind gereizt.
condition-intersection-syndrome-aim = Die Schiene hält das Handgelenk ruhig. So können die gereizten Sehnen ausruhen.

## Torn band on the outer side of the thumb's knuckle

condition-thumb-rcl-injury-name = Gerissenes äußeres Band am Knöchel des Daumens
condition-thumb-rcl-injury-what = Das Band an der Außenseite Ihres Daumenknöchels ist gerissen. Es muss ohne Druck zu den Fingern hin heilen.
condition-thumb-rcl-injury-aim = Die Schiene schützt das Band, während es heilt. Sie verhindert, dass Ihr Daumen zu den Fingern hin gedrückt wird.

## After an operation at the base of the thumb

condition-thumb-cmc-arthroplasty-name = Nach einer Operation am Ansatz des Daumens
condition-thumb-cmc-arthroplasty-what = Sie wurden am Gelenk am Ansatz Ihres Daumens operiert. Das neue Gelenk ist weich und heilt noch.
condition-thumb-cmc-arthroplasty-aim = Die Schiene hält den Daumen von der Handfläche weg. Das schützt das neue Gelenk, während es heilt.

## A knuckle of the thumb that bends too far back

condition-hypermobile-thumb-name = Zu beweglicher Daumen
condition-hypermobile-thumb-what = Der Knöchel Ihres Daumens biegt sich zu weit nach hinten, wenn Sie drücken oder mit Daumen und Finger greifen. Dann tut er weh und wird müde.
condition-hypermobile-thumb-aim = Die Schiene verhindert bei schweren Arbeiten, dass sich der Knöchel nach hinten biegt. Sie hilft Ihren Muskeln, aber ersetzt sie nicht.

## Catching thumb

condition-trigger-thumb-name = Schnappender Daumen (Schnappdaumen)
condition-trigger-thumb-what = Die Sehne, die Ihren Daumen beugt, ist dick und hakt in ihrem Tunnel. Ihr Daumen klickt oder klemmt.
condition-trigger-thumb-aim = Die Schiene hält ein Gelenk Ihres Daumens gerade. Die Sehne gleitet weniger, und die schmerzende Stelle kann ausruhen.

## Sewn tendon that lifts the thumb

condition-epl-repair-name = Genähte Sehne, die den Daumen hebt
condition-epl-repair-what = Die Sehne, die Ihren Daumen hebt, wurde genäht. Sie ist schwach, bis sie geheilt ist.
condition-epl-repair-aim = Die Schiene hält den Daumen oben und das Handgelenk nach hinten gebeugt. Das nimmt den Zug von der genähten Sehne.

## Sewn tendon that bends the thumb

condition-fpl-repair-name = Genähte Sehne, die den Daumen beugt
condition-fpl-repair-what = Die Sehne, die Ihren Daumen beugt, wurde genäht. Sie ist schwach, bis sie geheilt ist.
condition-fpl-repair-aim = Die Schiene verhindert, dass sich Ihr Daumen zu weit streckt. Das nimmt den Zug von der genähten Sehne.

## Sore tendon on the little-finger side of the wrist

condition-ecu-tendinopathy-name = Gereizte Sehne am Handgelenk, Seite des kleinen Fingers
condition-ecu-tendinopathy-what = Eine Sehne am Handgelenk ist auf der Seite des kleinen Fingers gereizt. Kippen und Drehen der Hand machen es schlimmer.
condition-ecu-tendinopathy-aim = Die Schiene verhindert, dass das Handgelenk kippt. So kann die gereizte Sehne ausruhen.

## Sprained wrist

condition-wrist-sprain-name = Verstauchtes Handgelenk
condition-wrist-sprain-what = Die Bänder, die Ihr Handgelenk zusammenhalten, wurden überdehnt. Die Knochen stehen, wo sie hingehören.
condition-wrist-sprain-aim = Die Schiene hält das Handgelenk ruhig, während Sie die Hand benutzen. So können sich die Bänder beruhigen.

## Torn cushion on the little-finger side of the wrist

condition-tfcc-injury-name = Gerissenes Polster im Handgelenk
condition-tfcc-injury-what = Ein kleines Polster im Handgelenk ist auf der Seite des kleinen Fingers gerissen. Das Drehen des Unterarms reibt daran.
condition-tfcc-injury-aim = Die Schiene verhindert, dass sich der Unterarm dreht und das Handgelenk kippt. So kann das Polster ausruhen.

## Broken scaphoid, after the cast

condition-scaphoid-after-cast-name = Gebrochener Knochen am Handgelenk, Daumenseite, nach dem Gips
condition-scaphoid-after-cast-what = Ein kleiner Knochen in Ihrem Handgelenk war gebrochen. Er ist zusammengewachsen, aber noch nicht stark.
condition-scaphoid-after-cast-aim = Die Schiene schützt den Knochen nachts, draußen und im Gedränge.

## Broken radius at the wrist, after the cast

condition-distal-radius-after-cast-name = Gebrochenes Handgelenk, nach dem Gips
condition-distal-radius-after-cast-what = Der große Knochen Ihres Unterarms war am Handgelenk gebrochen. Er ist zusammengewachsen, aber noch nicht stark.
condition-distal-radius-after-cast-aim = Die Schiene schützt Ihr Handgelenk nachts, draußen und beim Heben. Sie nehmen sie ab, um das Handgelenk zu bewegen.

## Movements to leave out, beside those that other conditions have

avoid-thumb-ip-flexion = Beugen Sie die Spitze des Daumens nicht.
avoid-thumb-ip-extension = Strecken Sie die Spitze des Daumens nicht.
avoid-thumb-cmc-flexion = Bewegen Sie den Daumen nicht quer über die Handfläche.
avoid-forearm-any = Drehen Sie die Handfläche weder nach oben noch nach unten.

## How to hold an arm that may not turn while the splint is off to wash

support-forearm-thumb-up = Ist sie ab, legen Sie den Unterarm auf den Tisch. Lassen Sie den Daumen nach oben zeigen. Drehen Sie den Unterarm nicht. Benutzen Sie die Hand nicht.
