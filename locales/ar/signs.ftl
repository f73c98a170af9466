### Signs to watch for. Each is a clause or a short noun phrase without a full stop; here they are all noun phrases.
### It stands in a list under a heading such as “Call us today if:”.
### $limit is how long a mark may stay, $loosen how long loosening may take to help; both are finished texts.

## On the first page of every guide

sign-numb-or-tingling = خدر أو تنميل في أصابعك أو إبهامك أشد من قبل ولا يزول
# Loosening the straps comes first; this is what is left when it does not help.
sign-fingers-blue-white-cold = { $straps ->
    [without] بقاء أصابعك زرقاء أو بيضاء أو باردة
   *[with] بقاء أصابعك زرقاء أو بيضاء أو باردة بعد { $loosen } من إرخاء الأشرطة
}
sign-more-swelling-or-pain = ازدياد التورم أو ازدياد الألم
sign-mark-or-sore-stays = بقاء علامة حمراء أو موضع مؤلم أكثر من { $limit }

## Emergencies

sign-severe-pain-hard-arm = ألم شديد يزداد حتى أثناء الراحة، أو ساعد مشدود ومتصلب
sign-redness-with-fever = احمرار ينتشر مع حمى أو شعور بالمرض
sign-finger-swollen-bent = إصبع أو إبهام متورم كله، يبقى مثنيا ويؤلم عند فرده
sign-new-injury = يد معوجة الشكل أو نزيف لا يتوقف، بعد سقوط أو ضربة
sign-face-swells-breathing = تورم الوجه أو الشفتين، أو صعوبة في التنفس

## Today

sign-redness-spreads = احمرار أو سخونة تنتشر في يدك
sign-blister-or-open-skin = فقاعة أو جرح مفتوح في الجلد
# Redness does not show on dark skin; these are the other signs of pressure.
sign-skin-patch-changed = بقعة من الجلد أغمق أو لامعة أو قاسية أو أسخن من بقية الجلد
sign-rash-or-itch = طفح جلدي أو حكة تحت الجبيرة
sign-skin-wet-and-white = جلد أبيض ولين ومبتل تحت الجبيرة
sign-splint-broken-or-loose = تشقق الجبيرة أو انثناؤها أو ضياعها أو اتساعها كثيرا
sign-hand-burning-shiny-stiff = حرقة في اليد كلها، مع لمعان وتيبس

## At the next visit

sign-edge-or-strap-worn = حافة حادة في الجبيرة، أو شريط لم يعد يلتصق
sign-plan-does-not-fit-day = خطة لا تناسب يومك

## For some thumbs

sign-thumb-gives-way = انزلاق إبهامك أو عدم ثباته وميله إلى الجانب
sign-thumb-snap = إحساس بطقة في إبهامك
sign-thumb-lump = كتلة جديدة بجانب مفصل إبهامك عند الكف
sign-wound-opens = انفتاح الجرح أو خروج سائل منه أو رائحة كريهة
sign-thumb-back-tingles = تنميل أو خدر في ظهر إبهامك
sign-thumb-catches = تعلق إبهامك أو طقطقته عند تحريكه
sign-thumb-weaker-in-pinch = ضعف متزايد في الإمساك بأطراف الأصابع
sign-no-easier-with-splint = ألم أثناء الأعمال لا يقل مع الجبيرة عنه من دونها
