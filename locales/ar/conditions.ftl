### Conditions: the name, what is wrong, and what the splint does.
### Words for a reader of about twelve. The splint is never said to cure anything.

## Sore tendons on the thumb side of the wrist

condition-de-quervain-name = ألم أوتار الإبهام عند المعصم (دي كيرفان)
condition-de-quervain-what = وتران يصلان إلى إبهامك يحتكان داخل نفق ضيق عند المعصم. الوتران مؤلمان ومتورمان.
condition-de-quervain-aim = الجبيرة تثبت معصمك وإبهامك. وبذلك يرتاح الوتران المؤلمان.

## Torn band at the knuckle of the thumb, fresh

condition-thumb-ucl-acute-name = تمزق رباط مفصل الإبهام عند الكف
condition-thumb-ucl-acute-what = الرباط في الجهة الداخلية من مفصل إبهامك عند الكف ممزق. يجب أن يلتئم دون أي دفع إلى الجانب.
condition-thumb-ucl-acute-aim = الجبيرة تحمي الرباط أثناء التئامه. وهي تمنع دفع إبهامك إلى الجانب.

## Torn band at the knuckle of the thumb, old

condition-thumb-ucl-chronic-name = ارتخاء مفصل الإبهام عند الكف
condition-thumb-ucl-chronic-what = تمزق قديم ترك مفصل إبهامك عند الكف مرتخيا. لا يثبت المفصل عند الإمساك بأطراف الأصابع.
condition-thumb-ucl-chronic-aim = الجبيرة تثبت المفصل أثناء استعمال يدك.

## Worn joint at the base of the thumb

condition-thumb-cmc-osteoarthritis-name = تآكل المفصل في قاعدة الإبهام
condition-thumb-cmc-osteoarthritis-what = المفصل في قاعدة إبهامك عند المعصم متآكل. إنه ينزلق ويؤلم عند الإمساك بأطراف الأصابع.
condition-thumb-cmc-osteoarthritis-aim = الجبيرة تثبت قاعدة إبهامك. قد يجعل ذلك الأعمال أسهل وأقل ألما.
