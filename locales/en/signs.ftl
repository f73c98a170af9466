### Signs to watch for. Each is a clause or a short noun phrase without a full stop.
### It stands in a list under a heading such as “Call us today if:”.
### $limit is how long a mark may stay, $loosen how long loosening may take to help; both are finished texts.

## On the first page of every guide

sign-numb-or-tingling = Your fingers or thumb stay more numb or tingly than before
# Loosening the straps comes first; this is what is left when it does not help.
sign-fingers-blue-white-cold = { $straps ->
    [without] Your fingers stay blue, white or cold
   *[with] Your fingers stay blue, white or cold { $loosen } after loosening the straps
}
sign-more-swelling-or-pain = You have more swelling or more pain
sign-mark-or-sore-stays = A red mark or sore spot stays longer than { $limit }

## Emergencies

sign-severe-pain-hard-arm = Strong pain keeps growing at rest, or your forearm feels tight and hard
sign-redness-with-fever = Redness spreads and you have a fever or feel ill
sign-finger-swollen-bent = A whole finger or thumb swells, stays bent and hurts when straightened
sign-new-injury = After a fall or knock, your hand looks crooked or keeps bleeding
sign-face-swells-breathing = Your face or lips swell, or it is hard to breathe

## Today

sign-redness-spreads = Redness or warmth spreads on your hand
sign-blister-or-open-skin = You have a blister or open skin
# Redness does not show on dark skin; these are the other signs of pressure.
sign-skin-patch-changed = A patch of skin is darker, shiny, hard or warmer than the rest
sign-rash-or-itch = You get a rash or itch under the splint
sign-skin-wet-and-white = Your skin under the splint is white, soft and wet
sign-splint-broken-or-loose = Your splint is cracked, bent, lost or too loose
sign-hand-burning-shiny-stiff = Your whole hand burns, looks shiny and gets stiff

## At the next visit

sign-edge-or-strap-worn = An edge feels sharp, or a strap no longer sticks
sign-plan-does-not-fit-day = The plan does not fit into your day

## For some thumbs

sign-thumb-gives-way = Your thumb slips or gives way to the side
sign-thumb-snap = You feel a snap in your thumb
sign-thumb-lump = A new lump shows beside the knuckle of your thumb
sign-wound-opens = Your wound opens, leaks or smells bad
sign-thumb-back-tingles = The back of your thumb tingles or goes numb
sign-thumb-catches = Your thumb catches or snaps when you move it
sign-thumb-weaker-in-pinch = Your pinch gets weaker
sign-no-easier-with-splint = Tasks hurt as much with the splint as without it
