### How to hold the part while the splint is off to wash.
support-thumb-beside-index = Sem a tala, apoie a mão na mesa. Deixe o polegar ao lado do indicador. Não use a mão.
support-tip-flat-on-table = Sem a tala, apoie o dedo reto na mesa. Deixe a ponta reta. Nunca deixe dobrar, nem uma vez só.
support-finger-flat-on-table = Sem a tala, apoie o dedo reto na mesa. Deixe a junta do meio reta. Nunca deixe dobrar.
support-finger-bent-over-towel = Sem a tala, apoie o dedo sobre uma toalha enrolada. Deixe a junta do meio um pouco dobrada. Nunca deixe ir para trás.
support-finger-flat-guarded = Sem a tala, apoie o dedo reto na mesa. Não deixe nada empurrar o dedo para o lado. Não use a mão.
support-wrist-on-towel-fingers-straight = Sem a tala, deite o antebraço na mesa. Apoie a palma e os dedos retos em uma toalha enrolada. Não deixe o punho nem os dedos caírem.
support-thumb-up-on-towel = Sem a tala, deite o antebraço na mesa. Apoie a palma e o polegar reto em uma toalha enrolada. Não deixe o punho nem o polegar caírem.
support-forearm-flat = Sem a tala, apoie o antebraço e a mão retos na mesa. Não gire o antebraço. Não use a mão.
support-knuckles-bent-on-towel = Sem a tala, apoie os dedos sobre uma toalha enrolada. Deixe os nós dos dedos dobrados. Não use a mão.
