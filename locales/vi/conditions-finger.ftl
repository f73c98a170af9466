### Conditions of the fingers: the name, what is wrong, and what the splint does.
### Words for a reader of about twelve. The splint is never said to cure anything.

## Finger that catches

condition-trigger-finger-name = Ngón tay bị kẹt (ngón tay lò xo)
condition-trigger-finger-what = Gân gập ngón tay chạy qua một đường hầm trong lòng bàn tay. Gân ở đó quá dày nên bị vướng hoặc khóa lại.
condition-trigger-finger-aim = Nẹp làm ngón tay gập ít hơn. Gân bớt cọ trong đường hầm và được nghỉ.

## Fingertip that droops, torn cord

condition-mallet-tendon-name = Đầu ngón tay rũ, đứt gân (ngón tay hình búa)
condition-mallet-tendon-what = Gân mỏng nâng đầu ngón tay bị đứt. Hai đầu gân chỉ liền lại nếu đầu ngón không bao giờ rũ xuống.
condition-mallet-tendon-aim = Nẹp giữ thẳng đầu ngón tay trong lúc gân lành.

## Fingertip that droops, chip of bone

condition-mallet-bony-name = Đầu ngón tay rũ, mẻ xương (ngón tay hình búa)
condition-mallet-bony-what = Gân nâng đầu ngón tay đã kéo bong một mảnh xương. Mảnh xương chỉ liền lại nếu đầu ngón được giữ yên.
condition-mallet-bony-aim = Nẹp giữ thẳng đầu ngón tay trong lúc xương lành.

## Torn strip over the middle joint, fresh

condition-boutonniere-acute-name = Đứt gân trên khớp giữa
condition-boutonniere-acute-what = Gân duỗi thẳng khớp giữa của ngón tay bị đứt. Mỗi lần gập kéo hai đầu gân xa nhau.
condition-boutonniere-acute-aim = Nẹp giữ thẳng khớp giữa. Đầu ngón tay vẫn tự do, và gập đầu ngón giúp ích cho gân.

## Middle joint fixed bent after a tear

condition-boutonniere-chronic-name = Khớp giữa bị gập sau khi đứt gân cũ
condition-boutonniere-chronic-what = Gân đứt từ trước làm khớp giữa của ngón tay cứ gập. Khớp đã bị cứng.
condition-boutonniere-chronic-aim = Nẹp giúp đưa khớp về thẳng, chậm và nhẹ. Sau đó nẹp giữ khớp ở đó.

## Middle joint that bends backwards

condition-swan-neck-name = Khớp giữa bị ưỡn ngược (cổ thiên nga)
condition-swan-neck-what = Khớp giữa của ngón tay trượt ngược ra sau và kẹt lại. Khi đó khó nắm tay.
condition-swan-neck-aim = Nẹp không cho khớp ưỡn ngược ra sau. Quý vị vẫn gập khớp được.

## Jammed finger, front of the middle joint

condition-pip-volar-plate-name = Trẹo ngón tay, khớp giữa phía lòng bàn tay
condition-pip-volar-plate-what = Tấm đệm chắc ở khớp giữa, phía lòng bàn tay, bị thương. Ưỡn ngược ra sau làm nó bị thương lại.
condition-pip-volar-plate-aim = Nẹp không để khớp ưỡn ngược ra sau. Gập theo chiều bình thường thì tốt cho khớp.

## Sprained side of the middle joint

condition-pip-collateral-sprain-name = Bong gân bên cạnh khớp giữa
condition-pip-collateral-sprain-what = Dây chằng bên cạnh khớp giữa bị giãn hoặc rách một phần. Đẩy sang bên làm chỗ rách mở ra.
condition-pip-collateral-sprain-aim = Nẹp che chở khớp khỏi bị đẩy sang bên trong lúc dây chằng lành.

## Middle joint that does not straighten

condition-pip-flexion-contracture-name = Khớp giữa bị cứng và gập
condition-pip-flexion-contracture-what = Da và dây chằng ở khớp giữa, phía lòng bàn tay, đã co ngắn. Ngón tay không duỗi thẳng được.
condition-pip-flexion-contracture-aim = Nẹp giữ khớp nhẹ nhàng về phía thẳng. Lâu và nhẹ tốt hơn ngắn và mạnh.

## Worn joint at the fingertip

condition-dip-osteoarthritis-name = Mòn khớp ở đầu ngón tay
condition-dip-osteoarthritis-what = Khớp cuối của ngón tay bị mòn. Khớp có thể đau và nổi cục.
condition-dip-osteoarthritis-aim = Nẹp cho khớp nghỉ ban đêm. Khớp có thể đỡ đau hơn.

## Torn band over the knuckle

condition-sagittal-band-injury-name = Rách dải giữ gân trên khớp bàn ngón
condition-sagittal-band-injury-what = Một dải nhỏ giữ gân nằm trên khớp bàn ngón. Dải này bị rách, nên gân trượt ra khi nắm tay.
condition-sagittal-band-injury-aim = Nẹp không cho khớp bàn ngón gập nhiều. Gân nằm yên ở trên trong lúc dải lành.

## Broken bone below the little finger

condition-fifth-metacarpal-neck-fracture-name = Gãy xương bàn tay dưới ngón út
condition-fifth-metacarpal-neck-fracture-what = Xương trong lòng bàn tay, dưới ngón út, bị gãy gần khớp bàn ngón. Xương cần liền lại.
condition-fifth-metacarpal-neck-fracture-aim = Nẹp che chở xương trong lúc lành. Nẹp cũng giúp ngón tay không bị xoay.

## Broken first bone of a finger

condition-proximal-phalanx-fracture-name = Gãy đốt xương ngón tay gần bàn tay nhất
condition-proximal-phalanx-fracture-what = Xương giữa khớp bàn ngón và khớp giữa bị gãy. Xương cần liền lại.
condition-proximal-phalanx-fracture-aim = Nẹp giữ xương đúng chỗ trong lúc lành. Nẹp giữ các khớp sao cho ít bị cứng hơn.
