### More exercises: name, starting position and one action for each step.
### The name is a short order and stands as a heading. Steps are numbered by the program.
### $hold is a finished length of time, accusative.
### “Other hand” is the hand without the splint. “Treated finger” is the finger that the splint is for:
### «палец, который лечат» (never «больной палец», which looks like «большой палец»).

## Arm and wrist

exercise-shoulder-reach-name = Поднимите руку вверх
exercise-shoulder-reach-start = Сядьте или встаньте, рука вдоль тела.
exercise-shoulder-reach-step-1 = Поднимите руку перед собой, насколько это легко.
exercise-shoulder-reach-step-2 = Держите { $hold }.
exercise-shoulder-reach-step-3 = Медленно опустите руку.
exercise-shoulder-reach-step-4 = В следующий раз поднимите её в сторону.

exercise-wrist-dart-name = Двигайте запястьем, как будто бросаете дротик
exercise-wrist-dart-start = Поставьте предплечье ребром на стол, мизинцем вниз, кисть – за край. Все пальцы, и большой тоже, расслаблены.
exercise-wrist-dart-step-1 = Наклоните кисть назад и в сторону большого пальца.
exercise-wrist-dart-step-2 = Держите { $hold }.
exercise-wrist-dart-step-3 = Наклоните кисть вперёд и в сторону мизинца.
exercise-wrist-dart-step-4 = Держите { $hold }.

# Ordered by the clinician only.
exercise-wrist-swing-with-fingers-name = Качайте запястье вместе с пальцами
exercise-wrist-swing-with-fingers-start = Поставьте локоть на стол. Двигайте только так далеко, как показал реабилитолог.
exercise-wrist-swing-with-fingers-step-1 = Дайте запястью опуститься вперёд, чтобы пальцы раскрылись.
exercise-wrist-swing-with-fingers-step-2 = Держите { $hold }.
exercise-wrist-swing-with-fingers-step-3 = Поднимите запястье, чтобы пальцы согнулись в мягкий кулак.
exercise-wrist-swing-with-fingers-step-4 = Держите { $hold }.

exercise-forearm-front-stretch-name = Растяжка предплечья со стороны ладони
exercise-forearm-front-stretch-start = Вытяните руку перед собой, ладонь вверх.
exercise-forearm-front-stretch-step-1 = Выпрямите локоть.
exercise-forearm-front-stretch-step-2 = Другой рукой возьмите ладонь и пальцы.
exercise-forearm-front-stretch-step-3 = Мягко тяните кисть вниз, пока не почувствуете, что тянет.
exercise-forearm-front-stretch-step-4 = Держите { $hold }.
exercise-forearm-front-stretch-step-5 = Медленно отпустите.

exercise-forearm-back-stretch-name = Растяжка предплечья с тыльной стороны
exercise-forearm-back-stretch-start = Вытяните руку перед собой, ладонь вниз. Пальцы расслаблены.
exercise-forearm-back-stretch-step-1 = Выпрямите локоть.
exercise-forearm-back-stretch-step-2 = Положите другую руку на тыльную сторону кисти.
exercise-forearm-back-stretch-step-3 = Мягко давите на кисть вниз, пока не почувствуете, что тянет.
exercise-forearm-back-stretch-step-4 = Держите { $hold }.
exercise-forearm-back-stretch-step-5 = Медленно отпустите.

exercise-palms-together-stretch-name = Растяжка запястий, ладони вместе
exercise-palms-together-stretch-start = Сложите ладони перед грудью, пальцы вверх.
exercise-palms-together-stretch-step-1 = Медленно опускайте руки. Ладони держите вместе.
exercise-palms-together-stretch-step-2 = Остановитесь, когда слегка тянет.
exercise-palms-together-stretch-step-3 = Держите { $hold }.
exercise-palms-together-stretch-step-4 = Снова поднимите руки.

## Fingers

# A neighbour of the treated finger may be in the splint too.
exercise-free-finger-bend-name = Двигайте свободными пальцами
exercise-free-finger-bend-start = Поднимите кисть, пальцы вверх.
exercise-free-finger-bend-step-1 = Согните только те пальцы, которыми можно двигать свободно.
exercise-free-finger-bend-step-2 = Держите { $hold }.
exercise-free-finger-bend-step-3 = Медленно выпрямите их.

exercise-fingers-straight-name = Выпрямите пальцы
exercise-fingers-straight-start = Поднимите кисть, пальцы вверх.
exercise-fingers-straight-step-1 = Выпрямите все пальцы, насколько это легко.
exercise-fingers-straight-step-2 = Держите { $hold }.
exercise-fingers-straight-step-3 = Расслабьте их.

exercise-tabletop-name = Согните только костяшки
exercise-tabletop-start = Поднимите кисть, пальцы вверх.
exercise-tabletop-step-1 = Согните костяшки. Остальную часть пальцев держите прямо.
exercise-tabletop-step-2 = Держите { $hold }.
exercise-tabletop-step-3 = Выпрямите костяшки.

exercise-straight-fist-name = Сожмите плоский кулак
exercise-straight-fist-start = Поднимите кисть, пальцы вверх.
exercise-straight-fist-step-1 = Согните костяшки и средние суставы. Кончики держите прямо.
exercise-straight-fist-step-2 = Положите кончики пальцев плоско на ладонь.
exercise-straight-fist-step-3 = Держите { $hold }.
exercise-straight-fist-step-4 = Выпрямите пальцы.

exercise-five-positions-name = Сделайте все положения кисти
exercise-five-positions-start = Поднимите кисть, пальцы вверх.
exercise-five-positions-step-1 = Выпрямите все пальцы.
exercise-five-positions-step-2 = Сделайте крючок. Костяшки держите прямо.
exercise-five-positions-step-3 = Сожмите мягкий полный кулак.
exercise-five-positions-step-4 = Согните только костяшки. Остальное держите прямо.
exercise-five-positions-step-5 = Положите кончики пальцев плоско на ладонь. Кончики держите прямо.
exercise-five-positions-step-6 = Держите каждое положение { $hold }, потом переходите к следующему.

exercise-block-tip-bend-name = Согните только кончик пальца
exercise-block-tip-bend-start = Положите кисть на стол, ладонь вверх. Другой рукой держите палец, который лечат, между средним и концевым суставом.
exercise-block-tip-bend-step-1 = Согните только кончик.
exercise-block-tip-bend-step-2 = Держите { $hold }.
exercise-block-tip-bend-step-3 = Выпрямите кончик.

exercise-block-middle-bend-name = Согните только средний сустав
exercise-block-middle-bend-start = Положите кисть на стол, ладонь вверх. Другой рукой держите палец, который лечат, между костяшкой и средним суставом.
exercise-block-middle-bend-step-1 = Согните только средний сустав.
exercise-block-middle-bend-step-2 = Держите { $hold }.
exercise-block-middle-bend-step-3 = Выпрямите средний сустав.

exercise-knuckle-bent-straighten-name = Выпрямите средний сустав, костяшка согнута
exercise-knuckle-bent-straighten-start = Согните костяшку пальца, который лечат. Держите её согнутой другой рукой.
exercise-knuckle-bent-straighten-step-1 = Выпрямите средний сустав, насколько это легко.
exercise-knuckle-bent-straighten-step-2 = Держите { $hold }.
exercise-knuckle-bent-straighten-step-3 = Расслабьте средний сустав.

exercise-finger-lift-name = Поднимайте пальцы по очереди
exercise-finger-lift-start = Положите ладонь плоско на стол.
exercise-finger-lift-step-1 = Поднимите один палец от стола. Остальные пусть лежат.
exercise-finger-lift-step-2 = Держите { $hold }.
exercise-finger-lift-step-3 = Медленно опустите его.
exercise-finger-lift-step-4 = То же с каждым из остальных пальцев.

exercise-tip-bend-middle-straight-name = Согните кончик, средний сустав прямой
exercise-tip-bend-middle-straight-start = Положите кисть на стол. Шину не снимайте.
exercise-tip-bend-middle-straight-step-1 = Держите прямо средний сустав пальца, который лечат.
exercise-tip-bend-middle-straight-step-2 = Согните только кончик.
exercise-tip-bend-middle-straight-step-3 = Держите { $hold }.
exercise-tip-bend-middle-straight-step-4 = Выпрямите кончик.

exercise-middle-bend-tip-held-name = Согните средний сустав пальца
exercise-middle-bend-tip-held-start = Поставьте локоть на стол, пальцы вверх. Шину не снимайте.
exercise-middle-bend-tip-held-step-1 = Согните средний сустав пальца, который лечат.
exercise-middle-bend-tip-held-step-2 = Держите { $hold }.
exercise-middle-bend-tip-held-step-3 = Медленно выпрямите его.

## After a tendon repair
## Ordered by the clinician only.

exercise-short-arc-middle-bend-name = Немного согните средний сустав
exercise-short-arc-middle-bend-start = Берите только ту мерку, которую сделал реабилитолог. Костяшку держите прямо.
exercise-short-arc-middle-bend-step-1 = Положите палец, который лечат, вдоль мерки.
exercise-short-arc-middle-bend-step-2 = Сгибайте средний сустав, только пока палец не коснётся мерки.
exercise-short-arc-middle-bend-step-3 = Держите { $hold }.
exercise-short-arc-middle-bend-step-4 = Полностью выпрямите средний сустав.
exercise-short-arc-middle-bend-step-5 = Когда сделаете все повторы, снова наденьте шину.

exercise-helped-curl-in-splint-name = Согните пальцы другой рукой
exercise-helped-curl-in-splint-start = Шину не снимайте. Расстегните только те ремешки, что показал реабилитолог. Пальцы расслаблены.
exercise-helped-curl-in-splint-step-1 = Другой рукой мягко согните палец в сторону ладони.
exercise-helped-curl-in-splint-step-2 = Держите { $hold }.
exercise-helped-curl-in-splint-step-3 = Медленно отпустите палец. Не тяните его, чтобы выпрямить.
exercise-helped-curl-in-splint-step-4 = То же с каждым пальцем.
exercise-helped-curl-in-splint-step-5 = Когда сделаете все повторы, снова застегните ремешки.

exercise-straighten-to-roof-name = Выпрямите пальцы до шины
exercise-straighten-to-roof-start = Шину не снимайте. Расстегните только те ремешки, что показал реабилитолог. Костяшки прижаты к шине.
exercise-straighten-to-roof-step-1 = Выпрямляйте пальцы, пока они не коснутся шины.
exercise-straighten-to-roof-step-2 = Держите { $hold }.
exercise-straighten-to-roof-step-3 = Расслабьте их.
exercise-straighten-to-roof-step-4 = Когда сделаете все повторы, снова застегните ремешки.

exercise-half-fist-in-splint-name = Слегка сожмите кулак наполовину
exercise-half-fist-in-splint-start = Шину не снимайте. Расстегните только те ремешки, что показал реабилитолог.
exercise-half-fist-in-splint-step-1 = Мягко согните пальцы, на полпути к ладони.
exercise-half-fist-in-splint-step-2 = Держите { $hold }. Не сжимайте.
exercise-half-fist-in-splint-step-3 = Выпрямляйте пальцы, пока они не коснутся шины.
exercise-half-fist-in-splint-step-4 = Когда сделаете все повторы, снова застегните ремешки.

exercise-place-and-hold-name = Поставьте пальцы и держите
exercise-place-and-hold-start = Поставьте локоть на стол. Двигайте только так далеко, как показал реабилитолог.
exercise-place-and-hold-step-1 = Другой рукой мягко согните пальцы.
exercise-place-and-hold-step-2 = Уберите другую руку.
exercise-place-and-hold-step-3 = Мягко держите так пальцы { $hold }. Не сжимайте.
exercise-place-and-hold-step-4 = Расслабьте пальцы.

exercise-yoke-bend-name = Сгибайте пальцы в шине
exercise-yoke-bend-start = Поставьте локоть на стол, пальцы вверх. Шину не снимайте. Не давайте запястью падать вперёд.
exercise-yoke-bend-step-1 = Согните все пальцы, насколько даёт шина.
exercise-yoke-bend-step-2 = Держите { $hold }.
exercise-yoke-bend-step-3 = Выпрямите все пальцы.

## Stretches of a finger

exercise-helped-curl-stretch-name = Согните палец с помощью другой руки
exercise-helped-curl-stretch-start = Положите кисть на стол, ладонь вверх.
exercise-helped-curl-stretch-step-1 = Другой рукой медленно согните палец, который лечат.
exercise-helped-curl-stretch-step-2 = Остановитесь, когда слегка тянет.
exercise-helped-curl-stretch-step-3 = Держите { $hold }.
exercise-helped-curl-stretch-step-4 = Медленно отпустите.

exercise-helped-straighten-stretch-name = Выпрямите палец с помощью другой руки
exercise-helped-straighten-stretch-start = Положите кисть тыльной стороной на стол. Другой рукой держите палец, который лечат, между костяшкой и средним суставом.
exercise-helped-straighten-stretch-step-1 = Мягко давите на средний сустав, чтобы он выпрямлялся.
exercise-helped-straighten-stretch-step-2 = Остановитесь, когда слегка тянет.
exercise-helped-straighten-stretch-step-3 = Держите { $hold }.
exercise-helped-straighten-stretch-step-4 = Медленно отпустите.

exercise-intrinsic-stretch-name = Согните палец, костяшка прямая
exercise-intrinsic-stretch-start = Поставьте локоть на стол, пальцы вверх.
exercise-intrinsic-stretch-step-1 = Держите прямо костяшку пальца, который лечат.
exercise-intrinsic-stretch-step-2 = Другой рукой согните его средний сустав и кончик.
exercise-intrinsic-stretch-step-3 = Остановитесь, когда слегка тянет.
exercise-intrinsic-stretch-step-4 = Держите { $hold }.
exercise-intrinsic-stretch-step-5 = Медленно отпустите.

## Thumb

exercise-thumb-bend-across-name = Согните большой палец поперёк ладони
exercise-thumb-bend-across-start = Положите кисть на стол, ладонь вверх.
exercise-thumb-bend-across-step-1 = Медленно согните большой палец поперёк ладони.
exercise-thumb-bend-across-step-2 = Держите { $hold }.
exercise-thumb-bend-across-step-3 = Выпрямите большой палец.

exercise-thumb-web-release-name = Размягчите складку у большого пальца
exercise-thumb-web-release-start = Поставьте кисть ребром на стол, мизинцем вниз.
exercise-thumb-web-release-step-1 = Мягко трите кожу между большим и указательным пальцем.
exercise-thumb-web-release-step-2 = Другой рукой держите большой палец между костяшкой и запястьем.
exercise-thumb-web-release-step-3 = Мягко тяните большой палец от ладони.
exercise-thumb-web-release-step-4 = Держите { $hold }.
exercise-thumb-web-release-step-5 = Медленно отпустите.

exercise-thumb-wrist-slow-lower-name = Медленно опускайте кисть, большой палец вверху
exercise-thumb-wrist-slow-lower-start = Поставьте предплечье ребром на стол, мизинцем вниз. Держите маленький груз, который выбрал реабилитолог. Делайте это только через день.
exercise-thumb-wrist-slow-lower-step-1 = Другой рукой поднимите кисть в сторону большого пальца.
exercise-thumb-wrist-slow-lower-step-2 = Уберите другую руку.
exercise-thumb-wrist-slow-lower-step-3 = Медленно опускайте кисть. Опускайте её { $hold }.

## Nerves

exercise-thumb-side-nerve-slide-name = Скольжение нерва на стороне большого пальца
exercise-thumb-side-nerve-slide-start = Сядьте, локоть согнут, запястье прямое.
exercise-thumb-side-nerve-slide-step-1 = Слегка сожмите кулак.
exercise-thumb-side-nerve-slide-step-2 = Выпрямите пальцы. Большой палец держите рядом с ними.
exercise-thumb-side-nerve-slide-step-3 = Мягко отогните запястье назад.
exercise-thumb-side-nerve-slide-step-4 = Отведите большой палец в сторону.
exercise-thumb-side-nerve-slide-step-5 = Поверните ладонь вверх.
exercise-thumb-side-nerve-slide-step-6 = Держите каждое положение { $hold }, потом переходите к следующему.

exercise-little-finger-nerve-slide-name = Скольжение нерва мизинца
exercise-little-finger-nerve-slide-start = Вытяните руку в сторону, ладонь вверх.
exercise-little-finger-nerve-slide-step-1 = Согните локоть наполовину, а запястье сгибайте в сторону ладони.
exercise-little-finger-nerve-slide-step-2 = Держите { $hold }.
exercise-little-finger-nerve-slide-step-3 = Выпрямите локоть, а запястье мягко отгибайте назад, к тыльной стороне кисти.
exercise-little-finger-nerve-slide-step-4 = Держите { $hold }.

## Strength

exercise-wrist-press-still-name = Давите, не двигая запястьем
exercise-wrist-press-still-start = Положите предплечье на стол, ладонь вниз, кисть – за край.
exercise-wrist-press-still-step-1 = Положите другую руку на тыльную сторону кисти.
exercise-wrist-press-still-step-2 = Мягко давите на неё вверх. Не давайте запястью двигаться.
exercise-wrist-press-still-step-3 = Держите { $hold }.
exercise-wrist-press-still-step-4 = Расслабьте руку.
exercise-wrist-press-still-step-5 = В следующий раз положите другую руку под ладонь и давите на неё вниз.

exercise-putty-grip-name = Сжимайте мягкую массу
exercise-putty-grip-start = Положите в ладонь комок мягкой массы для лепки.
exercise-putty-grip-step-1 = Мягко сожмите его всеми пальцами, и большим тоже.
exercise-putty-grip-step-2 = Держите { $hold }.
exercise-putty-grip-step-3 = Медленно отпустите.
exercise-putty-grip-step-4 = Снова скатайте массу в комок.

exercise-three-point-pinch-name = Сжимайте мягкую массу кончиками пальцев
exercise-three-point-pinch-start = Возьмите маленький комок мягкой массы.
exercise-three-point-pinch-step-1 = Держите его между большим, указательным и средним пальцем.
exercise-three-point-pinch-step-2 = Каждый сустав держите чуть согнутым.
exercise-three-point-pinch-step-3 = Мягко сожмите массу.
exercise-three-point-pinch-step-4 = Держите { $hold }.
exercise-three-point-pinch-step-5 = Медленно отпустите.

exercise-key-pinch-putty-name = Сжимайте мягкую массу, как ключ
exercise-key-pinch-putty-start = Возьмите маленький комок мягкой массы.
exercise-key-pinch-putty-step-1 = Держите его между большим пальцем и боком указательного.
exercise-key-pinch-putty-step-2 = Мягко сожмите массу.
exercise-key-pinch-putty-step-3 = Держите { $hold }.
exercise-key-pinch-putty-step-4 = Медленно отпустите.

exercise-wrist-slow-lower-name = Медленно опускайте кисть, ладонь вниз
exercise-wrist-slow-lower-start = Положите предплечье на стол, ладонь вниз, кисть – за край. Держите маленький груз, который выбрал реабилитолог.
exercise-wrist-slow-lower-step-1 = Поднимите кисть с помощью другой руки.
exercise-wrist-slow-lower-step-2 = Уберите другую руку.
exercise-wrist-slow-lower-step-3 = Медленно опускайте кисть. Опускайте её { $hold }.

exercise-hand-lean-name = Опирайтесь на руку
exercise-hand-lean-start = Встаньте перед стеной. Опирайтесь на стол или пол, только когда скажет реабилитолог.
exercise-hand-lean-step-1 = Положите обе ладони на стену.
exercise-hand-lean-step-2 = Медленно наклоняйтесь, пока не почувствуете вес на руках.
exercise-hand-lean-step-3 = Держите { $hold }.
exercise-hand-lean-step-4 = Медленно оттолкнитесь назад.

## Skin, scar, feeling and tightness

exercise-stroke-towards-heart-name = Гладьте руку в сторону сердца
exercise-stroke-towards-heart-start = Положите руку на подушки, кисть выше локтя.
exercise-stroke-towards-heart-step-1 = Положите другую руку на кончики пальцев.
exercise-stroke-towards-heart-step-2 = Легко гладьте от кончиков пальцев до локтя.
exercise-stroke-towards-heart-step-3 = Не гладьте шину, больную кожу и кожу с ранками.
exercise-stroke-towards-heart-step-4 = Продолжайте { $hold }.

exercise-scar-massage-name = Двигайте рубец
exercise-scar-massage-start = Делайте это, только когда рубец закрыт и сухой. Положите кисть на стол.
exercise-scar-massage-step-1 = Поставьте на рубец кончик пальца другой руки.
exercise-scar-massage-step-2 = Нажимайте плотно, но без боли.
exercise-scar-massage-step-3 = Двигайте кожу маленькими кругами.
exercise-scar-massage-step-4 = Двигайте кожу вверх и вниз, потом из стороны в сторону.
exercise-scar-massage-step-5 = Продолжайте вдоль рубца { $hold }.

exercise-texture-rub-name = Приучайте кожу к касанию
exercise-texture-rub-start = Делайте это только на коже без ранок. Положите кисть на стол.
exercise-texture-rub-step-1 = Легко трите чувствительную кожу мягкой тканью.
exercise-texture-rub-step-2 = Продолжайте { $hold }.
exercise-texture-rub-step-3 = Возьмите ткань грубее, когда мягкая больше не мешает.

exercise-touch-relearn-name = Учитесь снова чувствовать
exercise-touch-relearn-start = Положите кисть на стол. Не берите ничего горячего, холодного или острого.
exercise-touch-relearn-step-1 = Коснитесь кончика пальца маленьким предметом и смотрите.
exercise-touch-relearn-step-2 = Закройте глаза и коснитесь того же места.
exercise-touch-relearn-step-3 = Заметьте, где вы это чувствуете и как.
exercise-touch-relearn-step-4 = Откройте глаза и сравните.
exercise-touch-relearn-step-5 = Продолжайте на других местах { $hold }.

exercise-scar-hold-stretch-name = Держите рубец растянутым
exercise-scar-hold-stretch-start = Делайте это, только когда рубец закрыт и сухой.
exercise-scar-hold-stretch-step-1 = Медленно двигайте кистью, пока рубец не натянется.
exercise-scar-hold-stretch-step-2 = Держите { $hold }.
exercise-scar-hold-stretch-step-3 = Медленно верните кисть назад.

exercise-tight-hand-slow-open-name = Медленно раскройте тугую кисть
exercise-tight-hand-slow-open-start = Положите предплечье на подушку. Пусть запястье согнётся вперёд. Никогда не тяните быстро.
exercise-tight-hand-slow-open-step-1 = Возьмите большой палец у основания и медленно отведите его наружу.
exercise-tight-hand-slow-open-step-2 = Другой рукой медленно выпрямите пальцы.
exercise-tight-hand-slow-open-step-3 = Медленно отогните запястье назад. Пальцы держите прямо.
exercise-tight-hand-slow-open-step-4 = Остановитесь, как только кисть начнёт тянуть обратно.
exercise-tight-hand-slow-open-step-5 = Держите { $hold }.
exercise-tight-hand-slow-open-step-6 = Дайте кисти медленно закрыться.
