### Conditions of tendons after repair, of nerves, of the elbow, of sore joints and of burns.
### The name, what is wrong, and what the splint does. Words for a reader of about twelve; nothing is said to be cured.

## Repaired tendons

condition-flexor-zone-two-repair-name = Genähte Beugesehne am Finger
condition-flexor-zone-two-repair-what = Die Sehnen, die Ihren Finger beugen, waren durchtrennt und wurden genäht. Greifen oder Ziehen am Finger, um ihn zu strecken, kann die Naht zerreißen.
condition-flexor-zone-two-repair-aim = Die Schiene schützt die Naht, während sie heilt. Sie verhindert, dass Ihre Finger zu gerade werden.
condition-extensor-zone-three-repair-name = Genähte Sehne über dem Mittelgelenk
condition-extensor-zone-three-repair-what = Die Sehne, die Ihr Mittelgelenk streckt, war durchtrennt und wurde genäht. Ein einziges Beugen kann die Naht aufziehen.
condition-extensor-zone-three-repair-aim = Die Schiene hält das Mittelgelenk gerade, während die Sehne heilt.
condition-extensor-zone-five-six-repair-name = Genähte Sehne am Handrücken
condition-extensor-zone-five-six-repair-what = Die Sehne, die Ihren Finger hebt, war durchtrennt und wurde genäht. Eine volle Faust kann die Naht aufziehen.
condition-extensor-zone-five-six-repair-aim = Die Schiene hält den großen Knöchel Ihres Fingers oben. Das nimmt den Zug von der Naht.

## Nerves

condition-carpal-tunnel-name = Eingeengter Nerv am Handgelenk (Karpaltunnel)
condition-carpal-tunnel-what = Ein Nerv läuft durch einen engen Tunnel am Handgelenk. Ein gebeugtes Handgelenk drückt ihn, am meisten im Schlaf.
condition-carpal-tunnel-aim = Die Schiene hält das Handgelenk gerade. Das gibt dem Nerv mehr Platz.
condition-carpal-tunnel-release-name = Nach der Operation für einen eingeengten Nerv am Handgelenk
condition-carpal-tunnel-release-what = Das Dach des Tunnels am Handgelenk wurde geöffnet. Die Wunde muss heilen, und Ihre Finger müssen sich bewegen.
condition-carpal-tunnel-release-aim = Die Schiene lässt das Handgelenk in den ersten Tagen ausruhen. Ihre Finger bleiben frei beweglich.
condition-cubital-tunnel-name = Eingeengter Nerv am Ellenbogen
condition-cubital-tunnel-what = Ein Nerv läuft um die Innenseite des Ellenbogens. Den Ellenbogen stark zu beugen oder sich darauf zu stützen belastet diesen Nerv.
condition-cubital-tunnel-aim = Die Schiene verhindert, dass sich der Ellenbogen nachts weit beugt. Stützen Sie sich am Tag nicht auf den Ellenbogen.
condition-radial-nerve-palsy-name = Fallhand
condition-radial-nerve-palsy-what = Der Nerv, der Handgelenk und Finger hebt, arbeitet jetzt nicht. Ihre Hand hängt herab.
condition-radial-nerve-palsy-aim = Die Schiene hilft dem Handgelenk, oben zu bleiben. Dann können die Finger besser greifen.
condition-median-nerve-palsy-low-name = Daumen lässt sich nicht von der Handfläche heben
condition-median-nerve-palsy-low-what = Der Nerv für den Muskelballen unter dem Daumen arbeitet jetzt nicht. Teile Ihrer Hand können taub sein.
condition-median-nerve-palsy-low-aim = Die Schiene hält den Raum neben dem Daumen offen. Der Daumen bleibt dort, wo Sie ihn benutzen können.
condition-ulnar-nerve-palsy-name = Krallenstellung von Ringfinger und kleinem Finger
condition-ulnar-nerve-palsy-what = Der Nerv für kleine Muskeln Ihrer Hand arbeitet jetzt nicht. Ringfinger und kleiner Finger krümmen sich wie eine Kralle.
condition-ulnar-nerve-palsy-aim = Die Schiene verhindert, dass sich die großen Knöchel nach hinten biegen. Dann können Sie diese Finger besser strecken.

## The elbow

condition-lateral-elbow-name = Gereizte Sehnen an der Außenseite des Ellenbogens
condition-lateral-elbow-what = Die Muskeln, die das Handgelenk heben, beginnen am Ellenbogen. Dort sind ihre Sehnen gereizt, am meisten beim Greifen und Heben.
condition-lateral-elbow-aim = Die Schiene nimmt bei der Arbeit einen Teil des Zugs von den gereizten Sehnen.

## The hand

condition-dupuytren-release-name = Nach der Operation eines krummen Fingers (Dupuytren)
condition-dupuytren-release-what = Feste Stränge in der Handfläche wurden durchtrennt, damit sich der Finger öffnen kann. Die Narbe kann ihn wieder einziehen.
condition-dupuytren-release-aim = Die Schiene hält den Finger nachts so, wie er locker liegt. Sie hilft, den Finger offen zu halten.
condition-rheumatoid-knuckle-drift-name = Finger, die zur Seite weichen (Rheuma)
condition-rheumatoid-knuckle-drift-what = Die Bänder neben den großen Knöcheln sind locker. Die Finger neigen sich zur Seite des kleinen Fingers.
condition-rheumatoid-knuckle-drift-aim = Die Schiene richtet die Finger aus, während Sie die Hand benutzen. Sie hält das Abweichen nicht auf.
condition-rheumatoid-wrist-name = Schmerzendes Handgelenk (Rheuma)
condition-rheumatoid-wrist-what = Ihr Handgelenk tut durch das Rheuma weh und ist geschwollen.
condition-rheumatoid-wrist-aim = Die Schiene stützt das Handgelenk. Das kann den Schmerz in Ruhe und bei Arbeiten lindern.
condition-stroke-tight-hand-name = Verkrampfte Hand nach einem Schlaganfall
condition-stroke-tight-hand-what = Nach dem Schlaganfall ziehen die Muskeln, die Ihre Hand schließen, zu stark. Die Hand lässt sich schwer öffnen.
condition-stroke-tight-hand-aim = Die Schiene lagert die Hand halb offen. Das kann angenehm sein und helfen, die Haut der Handfläche sauber zu halten.

## Burns

condition-dorsal-hand-burn-name = Verbrennung am Handrücken
condition-dorsal-hand-burn-what = Die Haut am Handrücken ist verbrannt. Haut wird beim Heilen kürzer und kann die Hand verziehen.
condition-dorsal-hand-burn-aim = Die Schiene hält die großen Knöchel gebeugt und die Finger gerade. So bleibt die neue Haut lang.
condition-palmar-hand-burn-name = Verbrennung in der Handfläche
condition-palmar-hand-burn-what = Die Haut der Handfläche ist verbrannt. Haut wird beim Heilen kürzer und kann die Hand zuziehen.
condition-palmar-hand-burn-aim = Die Schiene hält Handfläche und Finger offen. So bleibt die neue Haut lang.

## Movements to leave out
## The joints of a finger are the big knuckle, the middle joint and the tip.

avoid-wrist-extension = Beugen Sie das Handgelenk nicht nach hinten.
avoid-wrist-flexion = Beugen Sie das Handgelenk nicht nach vorn.
avoid-fingers-mcp-flexion = Beugen Sie die großen Knöchel nicht.
avoid-fingers-mcp-ulnar-deviation = Drücken Sie die Finger nicht zur Seite des kleinen Fingers hin.
avoid-fingers-pip-flexion = Beugen Sie die Mittelgelenke der Finger nicht.
