### How to hold the part while the splint is off to wash.
### The splint is off and nothing guards what heals, so each message says how to rest it and what not to do.

support-thumb-beside-index = Sans attelle, posez la main sur la table. Gardez le pouce à côté de l’index. Ne vous servez pas de la main.
support-tip-flat-on-table = Sans attelle, posez le doigt à plat sur la table. Gardez le bout à plat. Ne le laissez jamais se plier, pas même une fois.
support-finger-flat-on-table = Sans attelle, posez le doigt à plat sur la table. Gardez l’articulation du milieu tendue. Ne la laissez jamais se plier.
support-finger-bent-over-towel = Sans attelle, posez le doigt sur une serviette roulée. Gardez l’articulation du milieu un peu pliée. Ne la laissez jamais aller en arrière.
support-finger-flat-guarded = Sans attelle, posez le doigt à plat sur la table. Rien ne doit le pousser de côté. Ne vous servez pas de la main.
support-wrist-on-towel-fingers-straight = Sans attelle, posez l’avant-bras sur la table. Posez la paume et les doigts tendus sur une serviette roulée. Rien ne doit retomber.
support-thumb-up-on-towel = Sans attelle, posez l’avant-bras sur la table. Posez la paume et le pouce tendu sur une serviette roulée. Rien ne doit retomber.
support-forearm-flat = Sans attelle, posez l’avant-bras et la main à plat sur la table. Ne tournez pas l’avant-bras. Ne vous servez pas de la main.
support-knuckles-bent-on-towel = Sans attelle, posez les doigts sur une serviette roulée. Gardez les jointures de base pliées. Ne vous servez pas de la main.
