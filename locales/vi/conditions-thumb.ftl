### Conditions of the thumb and of the tendons and bones at the wrist: the name, what is wrong, and what the splint does.
### Words for a reader of about twelve. The splint is never said to cure anything.

## Sore tendons on the thumb side of the wrist, in pregnancy or with a small baby

condition-wrist-thumb-around-birth-name = Đau gân ngón cái quanh lúc sinh con
condition-wrist-thumb-around-birth-what = Hai gân đi đến ngón cái bị cọ ở cổ tay. Bế và cho con bú có thể làm các gân này đau.
condition-wrist-thumb-around-birth-aim = Nẹp cho cổ tay và ngón cái nghỉ ban đêm và khi quý vị bế. Chăm con có thể đỡ đau hơn.

## Tendons that rub where they cross above the wrist

condition-intersection-syndrome-name = Gân cọ nhau phía trên cổ tay
condition-intersection-syndrome-what = Các gân đến cổ tay và ngón cái bắt chéo nhau phía trên cổ tay. Chúng cọ vào nhau ở đó và bị đau.
condition-intersection-syndrome-aim = Nẹp giữ yên cổ tay. Nhờ vậy các gân đau được nghỉ.

## Torn band on the outer side of the thumb's knuckle

condition-thumb-rcl-injury-name = Rách dây chằng ngoài ở khớp bàn ngón cái
condition-thumb-rcl-injury-what = Dây chằng ở mặt ngoài khớp bàn ngón cái bị rách. Cần để dây chằng lành mà không bị đẩy về phía các ngón khác.
condition-thumb-rcl-injury-aim = Nẹp che chở dây chằng trong lúc lành. Nẹp không cho ngón cái bị đẩy vào phía các ngón khác.

## After an operation at the base of the thumb

condition-thumb-cmc-arthroplasty-name = Sau khi mổ ở gốc ngón cái
condition-thumb-cmc-arthroplasty-what = Quý vị đã được mổ khớp ở gốc ngón cái. Khớp mới còn mềm và đang lành.
condition-thumb-cmc-arthroplasty-aim = Nẹp giữ ngón cái xa lòng bàn tay. Như vậy khớp mới được che chở trong lúc lành.

## A knuckle of the thumb that bends too far back

condition-hypermobile-thumb-name = Ngón cái quá dẻo
condition-hypermobile-thumb-what = Khớp bàn ngón cái ưỡn ngược quá nhiều khi ấn hoặc kẹp. Vì vậy khớp đau và mỏi.
condition-hypermobile-thumb-aim = Nẹp không cho khớp bàn ngón cái ưỡn ngược khi làm việc nặng. Nẹp giúp các cơ nhưng không thay cho cơ.

## Catching thumb

condition-trigger-thumb-name = Ngón cái bị kẹt (ngón cái lò xo)
condition-trigger-thumb-what = Gân gập ngón cái bị dày và vướng trong đường hầm của nó. Ngón cái kêu lách cách hoặc bị kẹt.
condition-trigger-thumb-aim = Nẹp giữ thẳng một khớp của ngón cái. Gân trượt ít hơn, nên chỗ đau được nghỉ.

## Sewn tendon that lifts the thumb

condition-epl-repair-name = Gân nâng ngón cái đã khâu nối
condition-epl-repair-what = Gân nâng ngón cái đã được khâu nối. Gân còn yếu cho đến khi lành.
condition-epl-repair-aim = Nẹp giữ ngón cái hướng lên và cổ tay ngả về phía mu bàn tay. Như vậy gân đã nối không bị kéo.

## Sewn tendon that bends the thumb

condition-fpl-repair-name = Gân gập ngón cái đã khâu nối
condition-fpl-repair-what = Gân gập ngón cái đã được khâu nối. Gân còn yếu cho đến khi lành.
condition-fpl-repair-aim = Nẹp không cho ngón cái duỗi quá thẳng. Như vậy gân đã nối không bị kéo.

## Sore tendon on the little-finger side of the wrist

condition-ecu-tendinopathy-name = Đau gân cổ tay phía ngón út
condition-ecu-tendinopathy-what = Một gân ở cổ tay phía ngón út bị đau. Nghiêng và vặn bàn tay làm đau hơn.
condition-ecu-tendinopathy-aim = Nẹp không cho cổ tay nghiêng. Nhờ vậy gân đau được nghỉ.

## Sprained wrist

condition-wrist-sprain-name = Bong gân cổ tay
condition-wrist-sprain-what = Các dây chằng giữ cổ tay bị kéo giãn. Các xương vẫn nằm đúng chỗ.
condition-wrist-sprain-aim = Nẹp giữ yên cổ tay khi quý vị dùng bàn tay. Nhờ vậy các dây chằng dịu lại.

## Torn cushion on the little-finger side of the wrist

condition-tfcc-injury-name = Rách miếng đệm trong cổ tay
condition-tfcc-injury-what = Một miếng đệm nhỏ ở cổ tay phía ngón út bị rách. Vặn cánh tay làm miếng đệm bị nghiến.
condition-tfcc-injury-aim = Nẹp không cho cánh tay vặn và không cho cổ tay nghiêng. Nhờ vậy miếng đệm được nghỉ.

## Broken scaphoid, after the cast

condition-scaphoid-after-cast-name = Gãy xương cổ tay phía ngón cái, sau khi tháo bột
condition-scaphoid-after-cast-what = Một xương nhỏ ở cổ tay đã bị gãy. Xương đã liền nhưng chưa chắc.
condition-scaphoid-after-cast-aim = Nẹp che chở xương ban đêm, khi ra ngoài và ở chỗ đông người.

## Broken radius at the wrist, after the cast

condition-distal-radius-after-cast-name = Gãy cổ tay, sau khi tháo bột
condition-distal-radius-after-cast-what = Quý vị bị gãy xương lớn của cẳng tay ở chỗ cổ tay. Xương đã liền nhưng chưa chắc.
condition-distal-radius-after-cast-aim = Nẹp che chở cổ tay ban đêm, khi ra ngoài và khi nâng đồ. Quý vị tháo nẹp ra để cử động cổ tay.

## Movements to leave out, beside those that other conditions have

avoid-thumb-ip-flexion = Không gập đầu ngón cái.
avoid-thumb-ip-extension = Không duỗi thẳng đầu ngón cái.
avoid-thumb-cmc-flexion = Không đưa ngón cái ngang qua lòng bàn tay.
avoid-forearm-any = Không xoay lòng bàn tay ngửa lên hoặc úp xuống.

## How to hold an arm that may not turn while the splint is off to wash

support-forearm-thumb-up = Khi tháo nẹp, đặt cẳng tay lên mặt bàn. Giữ ngón cái chỉ lên trời. Không xoay cánh tay. Không dùng bàn tay này.
