### Conditions of the fingers: the name, what is wrong, and what the splint does.
### Words for a reader of about twelve. The splint is never said to cure anything.

## Finger that catches

condition-trigger-finger-name = Doigt qui accroche (doigt à ressaut)
condition-trigger-finger-what = Le tendon qui plie le doigt passe dans un tunnel de la paume. Il y est trop épais et accroche ou se bloque.
condition-trigger-finger-aim = Avec l’attelle, le doigt se plie moins. Le tendon frotte alors moins dans le tunnel et peut se reposer.

## Fingertip that droops, torn cord

condition-mallet-tendon-name = Bout du doigt qui tombe, tendon déchiré (doigt en maillet)
condition-mallet-tendon-what = Le fin tendon qui lève le bout du doigt est déchiré. Pour qu’il se recolle, le bout ne doit jamais retomber.
condition-mallet-tendon-aim = L’attelle garde le bout du doigt tendu pendant que le tendon guérit.

## Fingertip that droops, chip of bone

condition-mallet-bony-name = Bout du doigt qui tombe, éclat d’os (doigt en maillet)
condition-mallet-bony-what = Le tendon qui lève le bout du doigt a arraché un éclat d’os. Pour que l’éclat se recolle, le bout ne doit pas bouger.
condition-mallet-bony-aim = L’attelle garde le bout du doigt tendu pendant que l’os guérit.

## Torn strip over the middle joint, fresh

condition-boutonniere-acute-name = Tendon déchiré sur l’articulation du milieu
condition-boutonniere-acute-what = Le tendon qui tend l’articulation du milieu du doigt est déchiré. Chaque fois que vous la pliez, ses bouts s’écartent.
condition-boutonniere-acute-aim = L’attelle garde l’articulation du milieu tendue. Le bout du doigt reste libre, et le plier aide le tendon.

## Middle joint fixed bent after a tear

condition-boutonniere-chronic-name = Articulation du milieu pliée après une vieille déchirure
condition-boutonniere-chronic-what = Après une vieille déchirure, l’articulation du milieu du doigt est restée pliée. Elle est devenue raide.
condition-boutonniere-chronic-aim = L’attelle aide à tendre l’articulation, lentement et doucement. Plus tard, elle la garde ainsi.

## Middle joint that bends backwards

condition-swan-neck-name = Articulation du milieu qui part en arrière (col de cygne)
condition-swan-neck-what = L’articulation du milieu du doigt part en arrière et s’y bloque. Il est alors difficile de fermer le poing.
condition-swan-neck-aim = L’attelle empêche l’articulation d’aller en arrière. Vous pouvez toujours la plier.

## Jammed finger, front of the middle joint

condition-pip-volar-plate-name = Entorse du doigt : articulation du milieu, côté paume
condition-pip-volar-plate-what = La plaque ferme de l’articulation du milieu, côté paume, est blessée. Plier en arrière la blesse encore.
condition-pip-volar-plate-aim = L’attelle empêche l’articulation d’aller en arrière. La plier dans le sens normal lui fait du bien.

## Sprained side of the middle joint

condition-pip-collateral-sprain-name = Entorse sur le côté de l’articulation du milieu
condition-pip-collateral-sprain-what = Le ligament sur le côté de l’articulation du milieu est étiré ou en partie déchiré. Les poussées de côté l’ouvrent.
condition-pip-collateral-sprain-aim = L’attelle protège l’articulation des poussées de côté pendant que le ligament guérit.

## Middle joint that does not straighten

condition-pip-flexion-contracture-name = Articulation du milieu raide et pliée
condition-pip-flexion-contracture-what = La peau et les ligaments de l’articulation du milieu, côté paume, sont devenus courts. Le doigt ne se tend pas.
condition-pip-flexion-contracture-aim = L’attelle tire doucement l’articulation vers la position tendue. Long et doux marche mieux que court et fort.

## Worn joint at the fingertip

condition-dip-osteoarthritis-name = Articulation usée au bout du doigt
condition-dip-osteoarthritis-what = La dernière articulation du doigt est usée. Elle peut faire mal et avoir des bosses.
condition-dip-osteoarthritis-aim = L’attelle laisse l’articulation se reposer la nuit. Cela peut la rendre moins douloureuse.

## Torn band over the knuckle

condition-sagittal-band-injury-name = Ligament déchiré sur la jointure de base
condition-sagittal-band-injury-what = Un petit ligament garde le tendon sur la jointure de base. Il est déchiré, et le tendon glisse quand vous fermez le poing.
condition-sagittal-band-injury-aim = L’attelle empêche la jointure de se plier beaucoup. Le tendon reste en place pendant que le ligament guérit.

## Broken bone below the little finger

condition-fifth-metacarpal-neck-fracture-name = Os cassé sous le petit doigt
condition-fifth-metacarpal-neck-fracture-what = L’os de la paume sous le petit doigt est cassé près de la jointure. Il doit se ressouder.
condition-fifth-metacarpal-neck-fracture-aim = L’attelle protège l’os pendant qu’il guérit. Elle aide aussi le doigt à ne pas tourner.

## Broken first bone of a finger

condition-proximal-phalanx-fracture-name = Premier os du doigt cassé
condition-proximal-phalanx-fracture-what = L’os entre la jointure de base et l’articulation du milieu est cassé. Il doit se ressouder.
condition-proximal-phalanx-fracture-aim = L’attelle garde l’os en place pendant qu’il guérit. Elle tient les articulations pour qu’elles deviennent moins raides.
