### Signs to watch for. Each is a clause or a short noun phrase without a full stop.
### It stands in a list under a heading such as “Gọi chúng tôi ngay hôm nay nếu:”.
### $limit is how long a mark may stay, $loosen how long loosening may take to help; both are finished texts.

## On the first page of every guide

sign-numb-or-tingling = Ngón tay hoặc ngón cái tê hoặc châm chích hơn trước, mãi không hết
# Loosening the straps comes first; this is what is left when it does not help.
sign-fingers-blue-white-cold = { $straps ->
    [without] Ngón tay hoặc ngón cái vẫn tím tái, trắng bệch hoặc lạnh
   *[with] Nới dây đai { $loosen } rồi mà ngón tay hoặc ngón cái vẫn tím tái, trắng bệch hoặc lạnh
}
sign-more-swelling-or-pain = Tay sưng hơn hoặc đau hơn
sign-mark-or-sore-stays = Vết hằn đỏ hoặc chỗ đau còn lâu hơn { $limit }

## Emergencies

sign-severe-pain-hard-arm = Đau dữ dội, càng lúc càng tăng cả khi nghỉ, hoặc cẳng tay căng và cứng
sign-redness-with-fever = Vết đỏ lan rộng và quý vị bị sốt hoặc thấy người không khỏe
sign-finger-swollen-bent = Cả ngón tay hoặc ngón cái sưng, cứ gập và đau khi duỗi thẳng
sign-new-injury = Sau khi ngã hoặc va đập, bàn tay trông bị lệch hoặc chảy máu không ngừng
sign-face-swells-breathing = Mặt hoặc môi sưng, hoặc khó thở

## Today

sign-redness-spreads = Bàn tay có chỗ đỏ hoặc nóng lan rộng
sign-blister-or-open-skin = Có vết phồng rộp hoặc da bị hở
# Redness does not show on dark skin; these are the other signs of pressure.
sign-skin-patch-changed = Một mảng da sẫm hơn, bóng, cứng hoặc nóng hơn chỗ khác
sign-rash-or-itch = Nổi mẩn hoặc ngứa dưới nẹp
sign-skin-wet-and-white = Da dưới nẹp trắng, mềm và ướt
sign-splint-broken-or-loose = Nẹp bị nứt, cong, mất hoặc quá lỏng
sign-hand-burning-shiny-stiff = Cả bàn tay nóng rát, trông bóng và cứng lại

## At the next visit

sign-edge-or-strap-worn = Mép nẹp bị sắc, hoặc dây đai không còn dính
sign-plan-does-not-fit-day = Kế hoạch không hợp với sinh hoạt trong ngày

## For some thumbs

sign-thumb-gives-way = Ngón cái bị trượt hoặc khuỵu sang bên
sign-thumb-snap = Cảm thấy một cái “phựt” ở ngón cái
sign-thumb-lump = Có cục mới nổi bên cạnh khớp bàn ngón cái
sign-wound-opens = Vết thương hở ra, rỉ dịch hoặc có mùi hôi
sign-thumb-back-tingles = Mặt lưng ngón cái châm chích hoặc bị tê
sign-thumb-catches = Ngón cái bị kẹt hoặc bật khi cử động
sign-thumb-weaker-in-pinch = Sức kẹp yếu đi
sign-no-easier-with-splint = Làm việc khi đeo nẹp vẫn đau như khi không đeo
