### Conditions of the fingers: the name, what is wrong, and what the splint does.

condition-trigger-finger-name = Цепляющийся палец (щёлкающий палец)
condition-trigger-finger-what = Сухожилие, которое сгибает палец, идёт по каналу в ладони. Оно там слишком толстое и цепляется или застревает.
condition-trigger-finger-aim = Шина не даёт пальцу сильно сгибаться. Сухожилие меньше трётся в канале и отдыхает.

condition-mallet-tendon-name = Повисший кончик пальца, разрыв сухожилия (молоткообразный палец)
condition-mallet-tendon-what = Тонкое сухожилие, которое поднимает кончик пальца, порвано. Концы срастутся, только если кончик ни разу не повиснет.
condition-mallet-tendon-aim = Шина держит кончик пальца прямо, пока сухожилие заживает.

condition-mallet-bony-name = Повисший кончик пальца, отрыв кусочка кости (молоткообразный палец)
condition-mallet-bony-what = Сухожилие, которое поднимает кончик пальца, оторвало кусочек кости. Он прирастёт, только если кончик неподвижен.
condition-mallet-bony-aim = Шина держит кончик пальца прямо, пока кость заживает.

condition-boutonniere-acute-name = Разрыв сухожилия над средним суставом
condition-boutonniere-acute-what = Сухожилие, которое выпрямляет средний сустав пальца, порвано. Каждое сгибание растягивает его концы.
condition-boutonniere-acute-aim = Шина держит средний сустав прямо. Кончик пальца свободен, и сгибать его полезно для сухожилия.

condition-boutonniere-chronic-name = Средний сустав согнут после старого разрыва
condition-boutonniere-chronic-what = После старого разрыва средний сустав пальца остался согнутым. Он стал тугим.
condition-boutonniere-chronic-aim = Шина медленно и мягко выпрямляет сустав. Потом она удерживает его.

condition-swan-neck-name = Средний сустав выгибается назад (лебединая шея)
condition-swan-neck-what = Средний сустав пальца уходит назад и там застревает. Тогда трудно сжать кулак.
condition-swan-neck-aim = Шина не даёт суставу уходить назад. Сгибать его вы можете.

condition-pip-volar-plate-name = Ушиб пальца, передняя сторона среднего сустава
condition-pip-volar-plate-what = Плотная пластинка спереди среднего сустава повреждена. Если выгнуть палец назад, она повредится снова.
condition-pip-volar-plate-aim = Шина не даёт суставу уходить назад. Сгибать его как обычно полезно.

condition-pip-collateral-sprain-name = Растяжение сбоку среднего сустава
condition-pip-collateral-sprain-what = Связка сбоку среднего сустава растянута или частично порвана. Толчки вбок растягивают её.
condition-pip-collateral-sprain-aim = Шина бережёт сустав от толчков вбок, пока связка заживает.

condition-pip-flexion-contracture-name = Средний сустав тугой и согнутый
condition-pip-flexion-contracture-what = Кожа и связки спереди среднего сустава стали короче. Палец не выпрямляется.
condition-pip-flexion-contracture-aim = Шина мягко держит сустав ближе к прямому. Долго и мягко лучше, чем недолго и сильно.

condition-dip-osteoarthritis-name = Износ сустава у кончика пальца
condition-dip-osteoarthritis-what = Последний сустав пальца изношен. Он может болеть и быть бугристым.
condition-dip-osteoarthritis-aim = Шина даёт суставу отдых ночью. Это может уменьшить боль.

condition-sagittal-band-injury-name = Разрыв связки над костяшкой
condition-sagittal-band-injury-what = Маленькая связка держит сухожилие сверху на костяшке. Она порвана, и в кулаке сухожилие соскальзывает.
condition-sagittal-band-injury-aim = Шина не даёт костяшке сильно сгибаться. Сухожилие остаётся сверху, пока связка заживает.

condition-fifth-metacarpal-neck-fracture-name = Перелом кости под мизинцем
condition-fifth-metacarpal-neck-fracture-what = Кость ладони под мизинцем сломана рядом с костяшкой. Она должна срастись.
condition-fifth-metacarpal-neck-fracture-aim = Шина бережёт кость, пока она заживает. Ещё она помогает пальцу не поворачиваться.

condition-proximal-phalanx-fracture-name = Перелом первой кости пальца
condition-proximal-phalanx-fracture-what = Кость между костяшкой и средним суставом сломана. Она должна срастись.
condition-proximal-phalanx-fracture-aim = Шина держит кость на месте, пока она заживает. Она держит суставы так, чтобы они меньше теряли подвижность.
