### A pair of pictures shows a splint as it should sit and as it should not: what is wrong, and what to do.

fault-slid-past-palm-crease = Nẹp đã trượt về phía các ngón. Các ngón không gập được. Đẩy nẹp lui lại cho đến khi mép nẹp nằm sau nếp gấp lòng bàn tay, về phía cổ tay.
fault-palm-strap-on-knuckles = Dây đai nằm đè lên các khớp bàn ngón. Dời dây lui về bàn tay, để các khớp này gập được.
fault-slid-over-knuckles = Nẹp đã trượt về phía các ngón và ép lên các khớp bàn ngón. Đẩy nẹp lui lại cho đến khi các khớp này tự do.
fault-slid-over-thumb-tip-joint = Nẹp đã trượt về phía đầu ngón cái. Đẩy nẹp lui lại cho đến khi đầu ngón cái gập được.
fault-thumb-out = Ngón cái nằm ngoài ống của nó. Tháo nẹp ra, rồi luồn ngón cái vào trước.
fault-slid-off-thumb-base = Nẹp đã tuột khỏi gốc ngón cái. Đẩy nẹp lui về phía cổ tay cho đến khi nẹp giữ gốc ngón cái.
fault-fingertips-over-edge = Nẹp đã trượt về phía khuỷu tay. Các ngón thò ra ngoài đầu nẹp. Đẩy nẹp ra trước cho đến khi đầu các ngón nằm trên nẹp.
fault-finger-strap-on-middle-joints = Dây đai nằm đè lên các khớp giữa của ngón tay. Dời dây lui về sát các khớp bàn ngón.
fault-finger-piece-slid = Nẹp đã trượt về phía đầu ngón. Đẩy nẹp lui về gốc ngón tay, cho đến khi đầu ngón gập được.
fault-strap-on-middle-joint = Dây đai nằm đè lên khớp giữa và ép khớp. Dời dây ra khỏi khớp, về phía đầu ngón.
fault-tip-droops = Nẹp đã tuột khỏi khớp đầu ngón, và đầu ngón rũ xuống. Đặt ngón tay nằm phẳng trên mặt bàn. Đẩy nẹp trở lại trên khớp. Báo cho chúng tôi biết đầu ngón đã rũ.
