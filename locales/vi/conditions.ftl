### Conditions: the name, what is wrong, and what the splint does.
### Words for a reader of about twelve. The splint is never said to cure anything.

## Sore tendons on the thumb side of the wrist

condition-de-quervain-name = Đau gân ngón cái ở cổ tay (de Quervain)
condition-de-quervain-what = Hai gân đi đến ngón cái bị cọ trong một đường hầm hẹp ở cổ tay. Các gân này đau và sưng.
condition-de-quervain-aim = Nẹp giữ yên cổ tay và ngón cái. Nhờ vậy các gân đau được nghỉ.

## Torn band at the knuckle of the thumb, fresh

condition-thumb-ucl-acute-name = Rách dây chằng ở khớp bàn ngón cái
condition-thumb-ucl-acute-what = Dây chằng ở mặt trong khớp bàn ngón cái bị rách. Cần để dây chằng lành mà không bị đẩy sang bên.
condition-thumb-ucl-acute-aim = Nẹp che chở dây chằng trong lúc lành. Nẹp không cho ngón cái bị đẩy ra ngoài.

## Torn band at the knuckle of the thumb, old

condition-thumb-ucl-chronic-name = Lỏng khớp bàn ngón cái
condition-thumb-ucl-chronic-what = Một vết rách cũ làm khớp bàn ngón cái bị lỏng. Khớp khuỵu đi khi quý vị kẹp.
condition-thumb-ucl-chronic-aim = Nẹp giữ vững khớp bàn ngón cái khi quý vị dùng bàn tay.

## Worn joint at the base of the thumb

condition-thumb-cmc-osteoarthritis-name = Mòn khớp ở gốc ngón cái
condition-thumb-cmc-osteoarthritis-what = Khớp ở gốc ngón cái bị mòn. Khớp trượt và đau khi quý vị kẹp.
condition-thumb-cmc-osteoarthritis-aim = Nẹp giữ vững gốc ngón cái. Việc làm có thể dễ hơn và đỡ đau hơn.
