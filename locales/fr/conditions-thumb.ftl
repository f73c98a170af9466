### Conditions of the thumb and of the tendons and bones at the wrist: the name, what is wrong, and what the splint does.
### Words for a reader of about twelve. The splint is never said to cure anything.

## Sore tendons on the thumb side of the wrist, in pregnancy or with a small baby

condition-wrist-thumb-around-birth-name = Tendons douloureux du pouce autour d’une naissance
condition-wrist-thumb-around-birth-what = Deux tendons du pouce frottent au poignet. Soulever et nourrir un bébé peut les rendre douloureux.
condition-wrist-thumb-around-birth-aim = L’attelle repose le poignet et le pouce la nuit et quand vous soulevez. S’occuper du bébé peut alors faire moins mal.

## Tendons that rub where they cross above the wrist

condition-intersection-syndrome-name = Tendons qui frottent sur l’avant-bras, près du poignet
condition-intersection-syndrome-what = Des tendons du poignet et du pouce se croisent sur l’avant-bras, près du poignet. Ils y frottent et font mal.
condition-intersection-syndrome-aim = L’attelle empêche le poignet de bouger. Ainsi les tendons douloureux se reposent.

## Torn band on the outer side of the thumb's knuckle

condition-thumb-rcl-injury-name = Ligament extérieur déchiré à la jointure du pouce
condition-thumb-rcl-injury-what = Le ligament du côté extérieur de la jointure du pouce est déchiré. Il doit guérir sans poussée vers les doigts.
condition-thumb-rcl-injury-aim = L’attelle protège le ligament pendant qu’il guérit. Elle empêche le pouce d’être poussé vers les autres doigts.

## After an operation at the base of the thumb

condition-thumb-cmc-arthroplasty-name = Après une opération à la base du pouce
condition-thumb-cmc-arthroplasty-what = L’articulation à la base du pouce a été opérée. La nouvelle articulation est fragile et guérit encore.
condition-thumb-cmc-arthroplasty-aim = L’attelle garde le pouce écarté de la paume. Elle protège ainsi la nouvelle articulation pendant qu’elle guérit.

## A knuckle of the thumb that bends too far back

condition-hypermobile-thumb-name = Pouce trop souple
condition-hypermobile-thumb-what = La jointure du pouce part trop en arrière quand vous appuyez ou pincez. Cela la rend douloureuse et fatiguée.
condition-hypermobile-thumb-aim = L’attelle empêche la jointure de partir en arrière dans les tâches difficiles. Elle aide les muscles, mais ne les remplace pas.

## Catching thumb

condition-trigger-thumb-name = Pouce qui accroche (pouce à ressaut)
condition-trigger-thumb-what = Le tendon qui plie le pouce est épais et accroche dans son tunnel. Le pouce claque ou se bloque.
condition-trigger-thumb-aim = L’attelle garde une articulation du pouce tendue. Le tendon glisse moins, et l’endroit douloureux peut se reposer.

## Sewn tendon that lifts the thumb

condition-epl-repair-name = Tendon réparé qui lève le pouce
condition-epl-repair-what = Le tendon qui lève le pouce a été réparé. Il est fragile jusqu’à la guérison.
condition-epl-repair-aim = L’attelle garde le pouce levé et le poignet plié en arrière. Cela évite de tirer sur le tendon réparé.

## Sewn tendon that bends the thumb

condition-fpl-repair-name = Tendon réparé qui plie le pouce
condition-fpl-repair-what = Le tendon qui plie le pouce a été réparé. Il est fragile jusqu’à la guérison.
condition-fpl-repair-aim = L’attelle empêche le pouce de trop se tendre. Cela évite de tirer sur le tendon réparé.

## Sore tendon on the little-finger side of the wrist

condition-ecu-tendinopathy-name = Tendon douloureux du poignet, côté petit doigt
condition-ecu-tendinopathy-what = Un tendon du poignet, du côté du petit doigt, fait mal. Pencher et tourner la main augmente la douleur.
condition-ecu-tendinopathy-aim = L’attelle empêche le poignet de pencher. Ainsi le tendon douloureux se repose.

## Sprained wrist

condition-wrist-sprain-name = Entorse du poignet
condition-wrist-sprain-what = Les ligaments qui tiennent le poignet ont été étirés. Les os sont à leur place.
condition-wrist-sprain-aim = L’attelle empêche le poignet de bouger pendant que vous vous servez de la main. Ainsi les ligaments se calment.

## Torn cushion on the little-finger side of the wrist

condition-tfcc-injury-name = Coussinet déchiré dans le poignet
condition-tfcc-injury-what = Un petit coussinet du poignet, du côté du petit doigt, est déchiré. Tourner l’avant-bras frotte dessus.
condition-tfcc-injury-aim = L’attelle empêche l’avant-bras de tourner et le poignet de pencher. Ainsi le coussinet se repose.

## Broken scaphoid, after the cast

condition-scaphoid-after-cast-name = Os du poignet cassé côté pouce, après le plâtre
condition-scaphoid-after-cast-what = Un petit os du poignet était cassé. Il s’est ressoudé, mais il n’est pas encore solide.
condition-scaphoid-after-cast-aim = L’attelle protège l’os la nuit, dehors et dans la foule.

## Broken radius at the wrist, after the cast

condition-distal-radius-after-cast-name = Poignet cassé, après le plâtre
condition-distal-radius-after-cast-what = Le gros os de l’avant-bras s’est cassé au poignet. Il s’est ressoudé, mais il n’est pas encore solide.
condition-distal-radius-after-cast-aim = L’attelle protège le poignet la nuit, dehors et quand vous soulevez. Vous l’enlevez pour bouger le poignet.

## Movements to leave out, beside those that other conditions have

avoid-thumb-ip-flexion = Ne pliez pas le bout du pouce.
avoid-thumb-ip-extension = Ne tendez pas le bout du pouce.
avoid-thumb-cmc-flexion = Ne bougez pas le pouce en travers de la paume.
avoid-forearm-any = Ne tournez pas la paume vers le haut ni vers le bas.

## How to hold an arm that may not turn while the splint is off to wash

support-forearm-thumb-up = Sans attelle, posez l’avant-bras sur la table. Gardez le pouce vers le haut. Ne tournez pas l’avant-bras. Ne vous servez pas de la main.
