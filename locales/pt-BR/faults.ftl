### What is wrong with how a splint sits, and what to do.
fault-slid-past-palm-crease = A tala escorregou para os dedos. Eles não dobram. Empurre a tala para trás até a borda ficar abaixo da dobra da palma.
fault-palm-strap-on-knuckles = A tira está sobre os nós dos dedos. Puxe para trás, sobre a mão, para os nós dobrarem.
fault-slid-over-knuckles = A tala escorregou para os dedos e aperta os nós dos dedos. Empurre a tala para trás até os nós dos dedos ficarem livres.
fault-slid-over-thumb-tip-joint = A tala escorregou para a ponta do polegar. Empurre a tala para trás até a ponta do polegar dobrar.
fault-thumb-out = O polegar está fora do tubo. Tire a tala, e coloque primeiro o polegar.
fault-slid-off-thumb-base = A tala saiu da base do polegar. Empurre a tala para o punho até segurar a base do polegar.
fault-fingertips-over-edge = A tala escorregou para o cotovelo. Os dedos passam do fim dela. Empurre a tala para a frente até as pontas dos dedos ficarem sobre ela.
fault-finger-strap-on-middle-joints = A tira está sobre as juntas do meio dos dedos. Puxe para trás, perto dos nós dos dedos.
fault-finger-piece-slid = A tala escorregou para a ponta do dedo. Empurre a tala até a base do dedo, até a ponta dobrar.
fault-strap-on-middle-joint = A tira está sobre a junta do meio e aperta. Tire a tira de cima da junta, para o lado da ponta do dedo.
fault-tip-droops = A tala saiu da junta da ponta, e a ponta do dedo cai. Deite o dedo reto na mesa. Empurre a tala de volta sobre a junta. Conte para nós que a ponta caiu.
