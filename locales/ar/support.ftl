### How to hold the part while the splint is off to wash.
### The splint is off and nothing guards what heals, so each message says how to rest it and what not to do.

support-thumb-beside-index = بعد خلع الجبيرة، أرح يدك على الطاولة. أبق إبهامك بجانب سبابتك. لا تستعمل يدك.
support-tip-flat-on-table = بعد خلع الجبيرة، أرح إصبعك مبسوطة على الطاولة. أبق طرفها مبسوطا. لا تدعه ينثني أبدا، ولا مرة واحدة.
support-finger-flat-on-table = بعد خلع الجبيرة، أرح إصبعك مبسوطة على الطاولة. أبق مفصلها الأوسط مفرودا. لا تدعه ينثني أبدا.
support-finger-bent-over-towel = بعد خلع الجبيرة، أرح إصبعك فوق منشفة ملفوفة. أبق مفصلها الأوسط مثنيا قليلا. لا تدعه ينثني إلى الخلف أبدا.
support-finger-flat-guarded = بعد خلع الجبيرة، أرح إصبعك مبسوطة على الطاولة. لا تدع شيئا يدفعها إلى الجانب. لا تستعمل يدك.
support-wrist-on-towel-fingers-straight = بعد خلع الجبيرة، ضع ساعدك على الطاولة. ضع راحة يدك وأصابعك مفرودة على منشفة ملفوفة. لا تدع معصمك ولا أي جزء من يدك يهبط.
support-thumb-up-on-towel = بعد خلع الجبيرة، ضع ساعدك على الطاولة. ضع راحة يدك وإبهامك مفرودا على منشفة ملفوفة. لا تدع معصمك ولا أي جزء من يدك يهبط.
support-forearm-flat = بعد خلع الجبيرة، أرح ساعدك ويدك مبسوطين على الطاولة. لا تدر ذراعك. لا تستعمل يدك.
support-knuckles-bent-on-towel = بعد خلع الجبيرة، أرح أصابعك فوق منشفة ملفوفة. أبق مفاصل أصابعك عند الكف مثنية. لا تستعمل يدك.
