### Exercises: name, starting position and one action for each step.
### $hold is a finished length of time, accusative. “Другая рука” is the hand without the splint.

exercise-thumb-tip-bend-name = Согните кончик большого пальца
exercise-thumb-tip-bend-start = Сядьте, предплечье на столе. Шину не снимайте.
exercise-thumb-tip-bend-step-1 = Согните только кончик большого пальца.
exercise-thumb-tip-bend-step-2 = Держите { $hold }.
exercise-thumb-tip-bend-step-3 = Выпрямите кончик.

exercise-finger-fist-open-name = Сожмите и разожмите кулак
exercise-finger-fist-open-start = Поднимите кисть, пальцы вверх. Большим пальцем не двигайте.
exercise-finger-fist-open-step-1 = Медленно согните все пальцы в мягкий кулак.
exercise-finger-fist-open-step-2 = Держите { $hold }.
exercise-finger-fist-open-step-3 = Выпрямите все пальцы.

exercise-finger-hook-name = Сделайте пальцами крючок
exercise-finger-hook-start = Поднимите пальцы и выпрямите, насколько это легко. Большим пальцем не двигайте.
exercise-finger-hook-step-1 = Костяшки держите как есть.
exercise-finger-hook-step-2 = Согните остальные суставы пальцев крючком.
exercise-finger-hook-step-3 = Держите { $hold }.
exercise-finger-hook-step-4 = Выпрямите пальцы.

exercise-finger-spread-name = Разведите пальцы
exercise-finger-spread-start = Положите ладонь на стол, пальцы вместе. Большим пальцем не двигайте.
exercise-finger-spread-step-1 = Разведите пальцы в стороны.
exercise-finger-spread-step-2 = Держите { $hold }.
exercise-finger-spread-step-3 = Снова соедините их.

exercise-hand-raise-pump-name = Поднимите руку и качайте
exercise-hand-raise-pump-start = Сядьте и поднимите кисть выше сердца.
exercise-hand-raise-pump-step-1 = Мягко сожмите пальцы.
exercise-hand-raise-pump-step-2 = Держите { $hold }.
exercise-hand-raise-pump-step-3 = Раскройте пальцы.
exercise-hand-raise-pump-step-4 = Когда сделаете все повторы, опустите руку.

exercise-elbow-bend-name = Сгибайте и выпрямляйте локоть
exercise-elbow-bend-start = Сядьте или встаньте, рука вдоль тела.
exercise-elbow-bend-step-1 = Согните локоть, чтобы кисть подошла к плечу.
exercise-elbow-bend-step-2 = Держите { $hold }.
exercise-elbow-bend-step-3 = Медленно выпрямите локоть.

exercise-forearm-turn-name = Поворачивайте ладонь вверх и вниз
exercise-forearm-turn-start = Сядьте, локоть согнут и прижат к боку.
exercise-forearm-turn-step-1 = Поверните ладонь вверх.
exercise-forearm-turn-step-2 = Держите { $hold }.
exercise-forearm-turn-step-3 = Поверните ладонь вниз.
exercise-forearm-turn-step-4 = Держите { $hold }.

exercise-wrist-up-down-name = Двигайте запястье вверх и вниз
exercise-wrist-up-down-start = Положите предплечье на стол, кисть – за край. Большой палец расслаблен.
exercise-wrist-up-down-step-1 = Медленно поднимите кисть.
exercise-wrist-up-down-step-2 = Держите { $hold }.
exercise-wrist-up-down-step-3 = Медленно опустите кисть.
exercise-wrist-up-down-step-4 = Держите { $hold }.

exercise-wrist-side-to-side-name = Двигайте запястье из стороны в сторону
exercise-wrist-side-to-side-start = Положите предплечье и ладонь плоско на стол. Большой палец – рядом с другими.
exercise-wrist-side-to-side-step-1 = Скользите кистью в сторону большого пальца.
exercise-wrist-side-to-side-step-2 = Держите { $hold }.
exercise-wrist-side-to-side-step-3 = Скользите кистью в сторону мизинца.
exercise-wrist-side-to-side-step-4 = Держите { $hold }.

exercise-thumb-knuckle-bend-name = Согните костяшку большого пальца
exercise-thumb-knuckle-bend-start = Поставьте кисть ребром на стол, мизинцем вниз. Другой рукой держите большой палец между костяшкой и запястьем.
exercise-thumb-knuckle-bend-step-1 = Согните костяшку большого пальца прямо вперёд.
exercise-thumb-knuckle-bend-step-2 = Держите { $hold }.
exercise-thumb-knuckle-bend-step-3 = Выпрямите костяшку.
exercise-thumb-knuckle-bend-step-4 = Никогда не давайте большому пальцу уходить вбок.

exercise-thumb-to-fingertips-name = Коснитесь большим пальцем каждого кончика
exercise-thumb-to-fingertips-start = Поднимите кисть, пальцы вверх.
exercise-thumb-to-fingertips-step-1 = Большим пальцем легко коснитесь кончика указательного.
exercise-thumb-to-fingertips-step-2 = Держите { $hold }.
exercise-thumb-to-fingertips-step-3 = Широко раскройте кисть.
exercise-thumb-to-fingertips-step-4 = То же с каждым из остальных пальцев.

exercise-thumb-out-from-palm-name = Поднимите большой палец от ладони
exercise-thumb-out-from-palm-start = Положите кисть тыльной стороной на стол.
exercise-thumb-out-from-palm-step-1 = Поднимите большой палец прямо вверх, от ладони.
exercise-thumb-out-from-palm-step-2 = Держите { $hold }.
exercise-thumb-out-from-palm-step-3 = Медленно опустите его.

exercise-thumb-c-hold-name = Держите форму буквы «С»
exercise-thumb-c-hold-start = Сложите большой и указательный палец буквой «С».
exercise-thumb-c-hold-step-1 = Проверьте, что большой палец округлый и не выгибается назад.
exercise-thumb-c-hold-step-2 = Другой рукой держите большой палец снаружи.
exercise-thumb-c-hold-step-3 = Мягко давите большим пальцем наружу. Не давайте ему двигаться.
exercise-thumb-c-hold-step-4 = Держите { $hold }.
exercise-thumb-c-hold-step-5 = Расслабьте руку.

exercise-index-side-press-name = Давите указательным пальцем вбок
exercise-index-side-press-start = Положите кисть плоско на стол, ладонью вниз.
exercise-index-side-press-step-1 = Приложите другую руку к указательному пальцу со стороны большого.
exercise-index-side-press-step-2 = Мягко давите указательным пальцем в сторону большого. Не давайте ему двигаться.
exercise-index-side-press-step-3 = Держите { $hold }.
exercise-index-side-press-step-4 = Расслабьте руку.

exercise-soft-ball-squeeze-name = Сжимайте мягкий мяч
exercise-soft-ball-squeeze-start = Положите в ладонь мягкий мяч из губки. Большой палец его не касается.
exercise-soft-ball-squeeze-step-1 = Мягко сожмите мяч пальцами.
exercise-soft-ball-squeeze-step-2 = Держите { $hold }.
exercise-soft-ball-squeeze-step-3 = Медленно отпустите.
