### A pair of pictures shows a splint as it should sit and as it should not: what is wrong, and what to do.

fault-slid-past-palm-crease = Dumulas ang splint papunta sa mga daliri. Hindi maibaluktot ang mga ito. Itulak ito pabalik hanggang nasa ibaba ng guhit ng palad ang gilid nito.
fault-palm-strap-on-knuckles = Nasa ibabaw ng malalaking buko ang strap. Ibalik ito papunta sa kamay, para maibaluktot ang mga buko.
fault-slid-over-knuckles = Dumulas ang splint papunta sa mga daliri at dumidiin sa malalaking buko. Itulak ito pabalik hanggang malaya ang mga buko.
fault-slid-over-thumb-tip-joint = Dumulas ang splint papunta sa dulo ng hinlalaki. Itulak ito pabalik hanggang maibaluktot ang dulo ng hinlalaki.
fault-thumb-out = Nasa labas ng tubo nito ang hinlalaki. Tanggalin ang splint, at ipasok muna ang hinlalaki.
fault-slid-off-thumb-base = Dumulas ang splint palayo sa puno ng hinlalaki. Itulak ito pabalik papunta sa pulso hanggang hawak nito ang puno ng hinlalaki.
fault-fingertips-over-edge = Dumulas ang splint papunta sa siko. Nakalawit sa dulo nito ang mga daliri. Itulak ito paharap hanggang nakapatong dito ang mga dulo ng daliri.
fault-finger-strap-on-middle-joints = Nasa ibabaw ng mga gitnang kasukasuan ng mga daliri ang strap. Ibalik ito sa tabi ng malalaking buko.
fault-finger-piece-slid = Dumulas ang splint papunta sa dulo ng daliri. Itulak ito pabalik sa puno ng daliri, hanggang maibaluktot ang dulo.
fault-strap-on-middle-joint = Nasa ibabaw ng gitnang kasukasuan ang strap at dumidiin. Alisin ito sa kasukasuan, papunta sa dulo ng daliri.
fault-tip-droops = Dumulas ang splint palayo sa dulong kasukasuan, at nakalaylay ang dulo ng daliri. Ilapat ang daliri sa mesa. Itulak pabalik ang splint sa kasukasuan. Sabihin sa amin na lumaylay ang dulo.
