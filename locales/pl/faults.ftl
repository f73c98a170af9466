### A pair of pictures shows a splint as it should sit and as it should not: what is wrong, and what to do.

fault-slid-past-palm-crease = Orteza zsunęła się w stronę palców. Nie mogą się zginać. Proszę cofnąć ją, aż jej brzeg będzie poniżej fałdu dłoni.
fault-palm-strap-on-knuckles = Pasek leży na knykciach. Proszę cofnąć go na rękę, żeby knykcie mogły się zginać.
fault-slid-over-knuckles = Orteza zsunęła się w stronę palców i naciska na knykcie. Proszę cofnąć ją, aż knykcie będą wolne.
fault-slid-over-thumb-tip-joint = Orteza zsunęła się w stronę czubka kciuka. Proszę cofnąć ją, aż czubek kciuka będzie mógł się zginać.
fault-thumb-out = Kciuk jest poza swoją tulejką. Proszę zdjąć ortezę i najpierw włożyć kciuk.
fault-slid-off-thumb-base = Orteza zsunęła się z nasady kciuka. Proszę cofnąć ją w stronę nadgarstka, aż obejmie nasadę kciuka.
fault-fingertips-over-edge = Orteza zsunęła się w stronę łokcia. Palce zwisają poza jej koniec. Proszę przesunąć ją do przodu, aż czubki palców będą na niej leżeć.
fault-finger-strap-on-middle-joints = Pasek leży na środkowych stawach palców. Proszę cofnąć go obok knykci.
fault-finger-piece-slid = Orteza zsunęła się w stronę czubka palca. Proszę cofnąć ją do nasady palca, aż czubek będzie mógł się zginać.
fault-strap-on-middle-joint = Pasek leży na środkowym stawie i uciska. Proszę zsunąć go ze stawu, w stronę czubka palca.
fault-tip-droops = Orteza zsunęła się z końcowego stawu i czubek palca opada. Proszę położyć palec płasko na stole. Proszę wsunąć ortezę z powrotem na staw. Proszę powiedzieć nam, że czubek opadł.
