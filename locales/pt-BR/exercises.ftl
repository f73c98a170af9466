### Brazilian Portuguese, a draft. Ids and variables are explained in the English file of the same name.
exercise-thumb-tip-bend-name = Dobre a ponta do polegar
exercise-thumb-tip-bend-start = Sente-se com o antebraço na mesa. Fique com a tala.
exercise-thumb-tip-bend-step-1 = Dobre só a ponta do polegar.
exercise-thumb-tip-bend-step-2 = Mantenha por { $hold }.
exercise-thumb-tip-bend-step-3 = Estique a ponta.

exercise-finger-fist-open-name = Feche e abra a mão
exercise-finger-fist-open-start = Levante a mão com os dedos para cima. Mantenha o polegar parado.
exercise-finger-fist-open-step-1 = Dobre todos os dedos devagar, fechando a mão de leve.
exercise-finger-fist-open-step-2 = Mantenha por { $hold }.
exercise-finger-fist-open-step-3 = Estique todos os dedos.

exercise-finger-hook-name = Faça um gancho com os dedos
exercise-finger-hook-start = Levante os dedos, retos até onde for fácil. Mantenha o polegar parado.
exercise-finger-hook-step-1 = Deixe os nós dos dedos como estão.
exercise-finger-hook-step-2 = Dobre as outras juntas dos dedos como um gancho.
exercise-finger-hook-step-3 = Mantenha por { $hold }.
exercise-finger-hook-step-4 = Estique os dedos.

exercise-finger-spread-name = Abra os dedos para os lados
exercise-finger-spread-start = Deite a palma na mesa com os dedos juntos. Mantenha o polegar parado.
exercise-finger-spread-step-1 = Afaste os dedos.
exercise-finger-spread-step-2 = Mantenha por { $hold }.
exercise-finger-spread-step-3 = Junte os dedos de novo.

exercise-hand-raise-pump-name = Levante a mão e bombeie
exercise-hand-raise-pump-start = Sente-se e levante a mão acima do coração.
exercise-hand-raise-pump-step-1 = Feche os dedos de leve.
exercise-hand-raise-pump-step-2 = Mantenha por { $hold }.
exercise-hand-raise-pump-step-3 = Abra os dedos.
exercise-hand-raise-pump-step-4 = Abaixe o braço quando tiver feito todas as vezes.

exercise-elbow-bend-name = Dobre e estique o cotovelo
exercise-elbow-bend-start = Sente-se ou fique em pé com o braço ao lado do corpo.
exercise-elbow-bend-step-1 = Dobre o cotovelo até a mão chegar perto do ombro.
exercise-elbow-bend-step-2 = Mantenha por { $hold }.
exercise-elbow-bend-step-3 = Estique o cotovelo devagar.

exercise-forearm-turn-name = Vire a palma para cima e para baixo
exercise-forearm-turn-start = Sente-se com o cotovelo dobrado e junto ao corpo.
exercise-forearm-turn-step-1 = Vire a palma para cima.
exercise-forearm-turn-step-2 = Mantenha por { $hold }.
exercise-forearm-turn-step-3 = Vire a palma para baixo.
exercise-forearm-turn-step-4 = Mantenha por { $hold }.

exercise-wrist-up-down-name = Mexa o punho para cima e para baixo
exercise-wrist-up-down-start = Apoie o antebraço na mesa com a mão para fora da borda. Deixe o polegar solto.
exercise-wrist-up-down-step-1 = Levante a mão devagar.
exercise-wrist-up-down-step-2 = Mantenha por { $hold }.
exercise-wrist-up-down-step-3 = Deixe a mão descer devagar.
exercise-wrist-up-down-step-4 = Mantenha por { $hold }.

exercise-wrist-side-to-side-name = Mexa o punho de um lado para o outro
exercise-wrist-side-to-side-start = Deite o antebraço e a palma na mesa. Deixe o polegar ao lado dos dedos.
exercise-wrist-side-to-side-step-1 = Deslize a mão para o lado do polegar.
exercise-wrist-side-to-side-step-2 = Mantenha por { $hold }.
exercise-wrist-side-to-side-step-3 = Deslize a mão para o lado do dedo mínimo.
exercise-wrist-side-to-side-step-4 = Mantenha por { $hold }.

exercise-thumb-knuckle-bend-name = Dobre o nó do polegar
exercise-thumb-knuckle-bend-start = Apoie a mão na mesa, com o lado do dedo mínimo para baixo. Com a outra mão, segure o polegar entre o nó e o punho.
exercise-thumb-knuckle-bend-step-1 = Dobre o nó do polegar reto para a frente.
exercise-thumb-knuckle-bend-step-2 = Mantenha por { $hold }.
exercise-thumb-knuckle-bend-step-3 = Estique o nó.
exercise-thumb-knuckle-bend-step-4 = Nunca deixe o polegar ir para o lado de fora.

exercise-thumb-to-fingertips-name = Toque cada ponta de dedo com o polegar
exercise-thumb-to-fingertips-start = Levante a mão com os dedos para cima.
exercise-thumb-to-fingertips-step-1 = Toque de leve a ponta do indicador com o polegar.
exercise-thumb-to-fingertips-step-2 = Mantenha por { $hold }.
exercise-thumb-to-fingertips-step-3 = Abra bem a mão.
exercise-thumb-to-fingertips-step-4 = Faça o mesmo com cada um dos outros dedos.

exercise-thumb-out-from-palm-name = Levante o polegar para longe da palma
exercise-thumb-out-from-palm-start = Deite o dorso da mão na mesa.
exercise-thumb-out-from-palm-step-1 = Levante o polegar reto para cima, para longe da palma.
exercise-thumb-out-from-palm-step-2 = Mantenha por { $hold }.
exercise-thumb-out-from-palm-step-3 = Deixe voltar devagar.

exercise-thumb-c-hold-name = Segure a forma de um C
exercise-thumb-c-hold-start = Forme a letra C com o polegar e o indicador.
exercise-thumb-c-hold-step-1 = Veja se o polegar está redondo e não dobra para trás.
exercise-thumb-c-hold-step-2 = Segure o polegar por fora com a outra mão.
exercise-thumb-c-hold-step-3 = Empurre de leve para fora com o polegar. Não deixe que ele se mexa.
exercise-thumb-c-hold-step-4 = Mantenha por { $hold }.
exercise-thumb-c-hold-step-5 = Relaxe a mão.

exercise-index-side-press-name = Empurre o indicador para o lado
exercise-index-side-press-start = Deite a mão reta na mesa, palma para baixo.
exercise-index-side-press-step-1 = Ponha a outra mão contra o lado do polegar do dedo indicador.
exercise-index-side-press-step-2 = Empurre o indicador de leve para o lado do polegar. Não deixe que ele se mexa.
exercise-index-side-press-step-3 = Mantenha por { $hold }.
exercise-index-side-press-step-4 = Relaxe a mão.

exercise-soft-ball-squeeze-name = Aperte uma bola macia
exercise-soft-ball-squeeze-start = Ponha uma bola de espuma macia na palma. Deixe o polegar fora dela.
exercise-soft-ball-squeeze-step-1 = Aperte a bola de leve com os dedos.
exercise-soft-ball-squeeze-step-2 = Mantenha por { $hold }.
exercise-soft-ball-squeeze-step-3 = Solte devagar.
