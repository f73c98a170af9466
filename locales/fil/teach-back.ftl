### Questions that ask the person to show or say back what they were told. The therapist reads them out.
### No date, hour, number, side or angle is typed here; they come in as variables.

# Said first: it is the therapist who is tested, not the person.
teach-intro = Gusto kong matiyak na malinaw ang paliwanag ko sa inyo. Pakipakita sa akin, o sabihin sa sarili ninyong salita.
teach-hands = Aling splint ang para sa aling kamay? Pakipakita sa akin.
teach-emergency = Kailan kayo dapat humingi agad ng tulong, araw man o gabi?
teach-keep-on = Puwede ba ninyong tanggalin ang splint sa bahay, para maghugas ng kamay o matulog?
teach-support = Tanggal ang splint para hugasan ang kamay. Pakipakita kung ano ang posisyon ng kamay ninyo.
teach-on = Pakisuot ang splint. Sabihin kung ano ang ginagawa ninyo.
teach-off = Pakitanggal ang splint. Sabihin kung ano ang ginagawa ninyo.
teach-bans = Ano ang hindi pa puwedeng gawin ng kamay na ito?
teach-skin = Tinitingnan ninyo ang balat. Ano ang hindi ayos? Ano ang gagawin ninyo kung ganoon?
teach-stop = Ano pa ang senyales na dapat tumigil? Ano ang gagawin ninyo kung ganoon?
teach-call = May problema sa splint o kamay ninyo. Sino ang tatawagan ninyo?
teach-hours = Kailan suot ang splint, at kailan tanggal? Magsimula tayo sa ngayong araw.
teach-build = Gaano katagal ninyo itong isusuot bukas? Mula anong araw ninyo ito isusuot nang buo?
teach-jobs = Alin sa mga gawain ninyo araw-araw ang dapat munang ipagpaliban?
teach-exercises = Pakipakita ang bawat ehersisyo nang isang beses. Ilang beses bawat araw ninyo ito ginagawa?
