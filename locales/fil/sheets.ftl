### The papers beside the guide: card, diary, exercises, letter.
### No date, hour, number, side or angle is typed here; they come in as variables.

# Stands at the end of each of these papers.
sheet-caution = Hindi ito pamalit sa buong gabay ninyo, o sa sinasabi ng inyong therapist o surgeon. Kung iba ang sabi nila, sila ang sundin ninyo.

## The card

card-caution = Kasama ng gabay ninyo ang card na ito. Ang sinasabi ng inyong therapist ang masusunod.
card-title = Ang inyong splint
card-description = Kailan isusuot ang splint, paano ito isusuot, kailan tatawag.
# $straps is a list of names, in the order in which they are closed.
card-straps-on = Isara ayon sa pagkakasunod na ito: { $straps }.
card-straps-off = Buksan ayon sa pagkakasunod na ito: { $straps }.

## The diary

diary-title = Ang inyong talaan
diary-description = Talaang lalagyan ng tsek hanggang sa susunod na check-up.
diary-week = Linggo { $week }: { $from } hanggang { $to }
# $least is no pain, $most the worst.
diary-intro = Lagyan ng tsek ang kahon kapag tapos na. Bilugan ang numero ng pinakamatinding sakit sa araw na iyon: { $least } kung walang sakit, { $most } kung pinakamatindi na maiisip ninyo.
# $bouts is how many times, $each how long.
diary-wears = { $bouts ->
    [one] { $bouts } beses
   *[other] { $bouts } na beses
}, { $each } bawat beses. Huwag sa gabi.
diary-worn = Isinuot
diary-hours = Oras na suot
diary-skin = Tingin sa balat
diary-exercises = Ehersisyo
diary-pain = Sakit
diary-note = Tala
# $number is the clinic's telephone.
diary-stop = Huwag ninyong hintayin ang check-up kung may nakita kayong senyales ng pagtigil na nasa gabay. Tumawag sa { $number }.
diary-stop-no-number = Huwag ninyong hintayin ang check-up kung may nakita kayong senyales ng pagtigil na nasa gabay. Tawagan ang inyong klinika.
diary-visit = Dalhin ang talaang ito sa check-up ninyo: { $date }.
diary-visit-time = Dalhin ang talaang ito sa check-up ninyo: { $date }, { $time }.

## The exercises

exercises-title = Ang inyong mga ehersisyo
exercises-description = Ang programa sa bahay: saan magsisimula, ang galaw, gaano kadalas, kailan titigil.

## The letter

letter-title = { $to ->
    [teacher] Para sa guro
    [employer] Para sa employer
   *[carer] Para sa taong tumutulong
}
letter-description = Ano ang puwede at hindi puwedeng gawin ng kamay na may splint sa ngayon.
# $fitted and $review are dates.
letter-intro = { $to ->
    [teacher] May splint ang estudyante ninyo sa { $side ->
        [left] kaliwang kamay.
       *[right] kanang kamay.
    }
    [employer] May splint ang isang nagtatrabaho sa inyo sa { $side ->
        [left] kaliwang kamay.
       *[right] kanang kamay.
    }
   *[carer] May splint ang taong tinutulungan ninyo sa { $side ->
        [left] kaliwang kamay.
       *[right] kanang kamay.
    }
} Sinasabi ng sulat na ito kung ano ang puwedeng gawin ng kamay hanggang tingnan ulit ito ng klinika.
letter-from = May splint mula
letter-until = Susunod na check-up sa klinika
letter-for = Para saan ito
letter-told = Ito ang sinabi sa tao tungkol sa mga gawain niya araw-araw:
letter-never-off = Ang klinika lang ang nagtatanggal ng splint. Huwag ninyo itong gupitin, baluktutin o buksan.
letter-leave-on = Huwag ninyong tanggalin o baguhin ang splint, maliban kung hiniling niya ito.
letter-other-jobs = Kung wala rito ang gawain, tanungin siya. Kung hindi siya sigurado, huwag munang gawin hanggang makapagtanong siya sa klinika.
letter-help-carer = Tumulong sa mga gawaing kailangan ng dalawang kamay. Huwag ninyong hilahin ang brasong may splint.
letter-help-teacher = Pakibigyan siya ng mas mahabang oras sa pagsusulat. Huwag muna siyang isali sa sports o larong puwedeng mabangga ang kamay, hanggang payagan ng klinika.
letter-help-employer = Pakibigyan siya ng gawaing hindi gagamit ng kamay na ito. Ang klinika ang magpapasya kung kailan puwede ulit ang buong trabaho.
# $number is the clinic's telephone.
letter-urgent = Kumilos agad kung mangasul, mamuti, mamanhid o manlamig ang mga daliri o hinlalaki, o kung lumala nang husto ang sakit. Tulungan siyang tumawag sa { $number }.
letter-urgent-no-number = Kumilos agad kung mangasul, mamuti, mamanhid o manlamig ang mga daliri o hinlalaki, o kung lumala nang husto ang sakit. Tulungan siyang tumawag sa klinika.
# Stands in the place of a picture.
letter-hand = { $side ->
    [left] Nasa kaliwang kamay ang splint.
   *[right] Nasa kanang kamay ang splint.
}
# At the foot of the page. $name is the person's name.
letter-about = Tungkol kay { $name }. { $side ->
    [left] Kaliwang kamay.
   *[right] Kanang kamay.
}
letter-about-nobody = Tungkol sa isang tao. { $side ->
    [left] Kaliwang kamay.
   *[right] Kanang kamay.
}

# A diary ends after some weeks, however late the visit is.
diary-more = Ito na ang huling pahina ng talaang ito. Humingi sa inyong klinika ng dagdag na pahina.

## Booklet: sheets bound into one

booklet-contents = Ano ang nasa loob
booklet-caution = Hindi pamalit ang mga pahinang ito sa sinasabi ng therapist o surgeon. Kung iba ang sabi nila, sila ang sundin ninyo.
booklet-one-handed = Isuot gamit ang isang kamay
