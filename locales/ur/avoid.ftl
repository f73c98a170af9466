### Movements to leave out for now, one for each movement that some phase bans: joint, then direction.
### “Sore finger” is the finger that is treated.

avoid-finger-dip-any = متاثرہ انگلی کا سرا نہ ہلائیں۔
avoid-finger-mcp-any = متاثرہ انگلی کا ہتھیلی والا جوڑ نہ ہلائیں۔
# A splint may let the knuckle bend a little.
avoid-finger-mcp-flexion = متاثرہ انگلی کا ہتھیلی والا جوڑ اس سے زیادہ نہ موڑیں جتنا سپلنٹ مڑنے دے۔
avoid-finger-pip-any = متاثرہ انگلی کا درمیانی جوڑ نہ ہلائیں۔
avoid-finger-pip-flexion = متاثرہ انگلی کا درمیانی جوڑ نہ موڑیں، سوائے اس کے کہ یہاں کی کوئی ورزش ایسا کہے۔
# Straightening with help, or past straight.
avoid-finger-pip-extension = متاثرہ انگلی کا درمیانی جوڑ دبا کر سیدھا نہ کریں، نہ پیچھے موڑیں۔
avoid-finger-pip-radial-deviation = متاثرہ انگلی کو انگوٹھے کی طرف نہ دھکیلیں۔
avoid-finger-pip-ulnar-deviation = متاثرہ انگلی کو چھوٹی انگلی کی طرف نہ دھکیلیں۔
# After a repair of the bending tendons, which a grip tears as well.
avoid-fingers-mcp-extension = انگلیاں کھینچ کر سیدھی نہ کریں۔ اس ہاتھ سے کچھ نہ پکڑیں، نہ اٹھائیں۔
