### Dos dibujos muestran cómo debe ir la férula y cómo no: qué está mal y qué hacer.

fault-slid-past-palm-crease = La férula se ha corrido hacia los dedos. No se pueden doblar. Empújela hacia atrás hasta que el borde quede por debajo del pliegue de la palma.
fault-palm-strap-on-knuckles = La correa está sobre los nudillos grandes. Llévela hacia atrás, al dorso de la mano, para que los nudillos puedan doblarse.
fault-slid-over-knuckles = La férula se ha corrido hacia los dedos y aprieta los nudillos grandes. Empújela hacia atrás hasta que los nudillos queden libres.
fault-slid-over-thumb-tip-joint = La férula se ha corrido hacia la punta del pulgar. Empújela hacia atrás hasta que pueda doblar la punta del pulgar.
fault-thumb-out = El pulgar está fuera de su tubo. Quítese la férula y meta primero el pulgar.
fault-slid-off-thumb-base = La férula se ha salido de la base del pulgar. Empújela hacia la muñeca hasta que sujete la base del pulgar.
fault-fingertips-over-edge = La férula se ha corrido hacia el codo. Los dedos cuelgan del borde. Empújela hacia adelante hasta que las puntas de los dedos descansen en ella.
fault-finger-strap-on-middle-joints = La correa está sobre las articulaciones centrales de los dedos. Llévela hacia atrás, junto a los nudillos grandes.
fault-finger-piece-slid = La férula se ha corrido hacia la punta del dedo. Empújela hacia la base del dedo, hasta que la punta pueda doblarse.
fault-strap-on-middle-joint = La correa está sobre la articulación central y aprieta. Sáquela de la articulación, hacia la punta del dedo.
fault-tip-droops = La férula se ha salido de la articulación de la punta y la punta del dedo cae. Apoye el dedo plano en una mesa. Empuje la férula hasta cubrir la articulación. Avísenos de que la punta se cayó.
