### Movements to leave out for now, one for each movement that some phase bans: joint, then direction.
### “Affected finger” is the finger that is treated; it may be the little finger itself, so the sides are “thumb side” and
### “little-finger side”.

avoid-finger-dip-any = لا تحرك طرف الإصبع المصابة.
avoid-finger-mcp-any = لا تحرك مفصل الإصبع المصابة عند الكف.
# A splint may let the knuckle bend a little.
avoid-finger-mcp-flexion = لا تثن مفصل الإصبع المصابة عند الكف أكثر مما تسمح به الجبيرة.
avoid-finger-pip-any = لا تحرك المفصل الأوسط للإصبع المصابة.
avoid-finger-pip-flexion = لا تثن المفصل الأوسط للإصبع المصابة، إلا إذا طلب منك ذلك تمرين في هذا الدليل.
# Straightening with help, or past straight.
avoid-finger-pip-extension = لا تضغط المفصل الأوسط للإصبع المصابة في اتجاه الفرد ولا إلى الخلف.
avoid-finger-pip-radial-deviation = لا تدفع الإصبع المصابة جانبا نحو جهة الإبهام.
avoid-finger-pip-ulnar-deviation = لا تدفع الإصبع المصابة جانبا نحو جهة الخنصر.
# After a repair of the bending tendons, which a grip tears as well.
avoid-fingers-mcp-extension = لا تشد أصابعك لفردها. لا تمسك ولا ترفع شيئا بهذه اليد.
