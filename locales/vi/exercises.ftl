### Exercises: name, starting position and one action for each step.
### The name is a short order and stands as a heading. Steps are numbered by the program.
### $hold is a finished length of time, such as the words for five seconds.
### “Tay kia” is the hand without the splint. “Các ngón còn lại” are the fingers without the thumb.

## Bend the tip of your thumb

exercise-thumb-tip-bend-name = Gập đầu ngón cái
exercise-thumb-tip-bend-start = Ngồi, đặt cẳng tay lên mặt bàn. Vẫn đeo nẹp.
exercise-thumb-tip-bend-step-1 = Chỉ gập đầu ngón cái.
exercise-thumb-tip-bend-step-2 = Giữ yên { $hold }.
exercise-thumb-tip-bend-step-3 = Duỗi thẳng đầu ngón.

## Make a fist and open it

exercise-finger-fist-open-name = Nắm tay rồi mở ra
exercise-finger-fist-open-start = Giơ bàn tay lên, các ngón chỉ lên trời. Giữ yên ngón cái.
exercise-finger-fist-open-step-1 = Gập từ từ tất cả các ngón còn lại thành nắm tay nhẹ.
exercise-finger-fist-open-step-2 = Giữ yên { $hold }.
exercise-finger-fist-open-step-3 = Duỗi thẳng tất cả các ngón.

## Make a hook with your fingers

exercise-finger-hook-name = Gập các ngón như móc câu
exercise-finger-hook-start = Giơ các ngón lên, thẳng đến mức dễ chịu. Giữ yên ngón cái.
exercise-finger-hook-step-1 = Giữ nguyên các khớp bàn ngón.
exercise-finger-hook-step-2 = Gập các khớp khác của ngón tay như móc câu.
exercise-finger-hook-step-3 = Giữ yên { $hold }.
exercise-finger-hook-step-4 = Duỗi thẳng các ngón.

## Spread your fingers

exercise-finger-spread-name = Xòe các ngón tay
exercise-finger-spread-start = Úp lòng bàn tay lên mặt bàn, các ngón khép lại. Giữ yên ngón cái.
exercise-finger-spread-step-1 = Xòe các ngón còn lại ra xa nhau.
exercise-finger-spread-step-2 = Giữ yên { $hold }.
exercise-finger-spread-step-3 = Khép các ngón lại.

## Raise your hand and pump

exercise-hand-raise-pump-name = Giơ tay lên và nắm mở
exercise-hand-raise-pump-start = Ngồi và giơ bàn tay lên cao hơn tim.
exercise-hand-raise-pump-step-1 = Khép nhẹ các ngón vào.
exercise-hand-raise-pump-step-2 = Giữ yên { $hold }.
exercise-hand-raise-pump-step-3 = Mở các ngón ra.
exercise-hand-raise-pump-step-4 = Làm đủ số lần rồi thì hạ tay xuống.

## Bend and straighten your elbow

exercise-elbow-bend-name = Gập và duỗi khuỷu tay
exercise-elbow-bend-start = Ngồi hoặc đứng, tay buông bên người.
exercise-elbow-bend-step-1 = Gập khuỷu tay cho đến khi bàn tay gần vai.
exercise-elbow-bend-step-2 = Giữ yên { $hold }.
exercise-elbow-bend-step-3 = Duỗi thẳng khuỷu tay từ từ.

## Turn your palm up and down

exercise-forearm-turn-name = Xoay lòng bàn tay ngửa và úp
exercise-forearm-turn-start = Ngồi, khuỷu tay gập và sát bên người.
exercise-forearm-turn-step-1 = Xoay lòng bàn tay ngửa lên.
exercise-forearm-turn-step-2 = Giữ yên { $hold }.
exercise-forearm-turn-step-3 = Xoay lòng bàn tay úp xuống.
exercise-forearm-turn-step-4 = Giữ yên { $hold }.

## Move your wrist up and down

exercise-wrist-up-down-name = Cử động cổ tay lên và xuống
exercise-wrist-up-down-start = Đặt cẳng tay lên mặt bàn, bàn tay đưa ra ngoài mép bàn. Thả lỏng ngón cái.
exercise-wrist-up-down-step-1 = Nhấc bàn tay lên từ từ.
exercise-wrist-up-down-step-2 = Giữ yên { $hold }.
exercise-wrist-up-down-step-3 = Để bàn tay hạ xuống từ từ.
exercise-wrist-up-down-step-4 = Giữ yên { $hold }.

## Move your wrist from side to side

exercise-wrist-side-to-side-name = Cử động cổ tay sang hai bên
exercise-wrist-side-to-side-start = Đặt cẳng tay và lòng bàn tay nằm phẳng trên mặt bàn. Giữ ngón cái sát các ngón khác.
exercise-wrist-side-to-side-step-1 = Trượt bàn tay về phía ngón cái.
exercise-wrist-side-to-side-step-2 = Giữ yên { $hold }.
exercise-wrist-side-to-side-step-3 = Trượt bàn tay về phía ngón út.
exercise-wrist-side-to-side-step-4 = Giữ yên { $hold }.

## Bend the knuckle of your thumb

exercise-thumb-knuckle-bend-name = Gập khớp bàn ngón cái
exercise-thumb-knuckle-bend-start = Đặt cạnh bàn tay phía ngón út lên mặt bàn. Tay kia giữ ngón cái ở đoạn từ khớp bàn ngón cái đến cổ tay.
exercise-thumb-knuckle-bend-step-1 = Gập khớp bàn ngón cái thẳng ra trước.
exercise-thumb-knuckle-bend-step-2 = Giữ yên { $hold }.
exercise-thumb-knuckle-bend-step-3 = Duỗi thẳng khớp bàn ngón cái.
exercise-thumb-knuckle-bend-step-4 = Không bao giờ để ngón cái đi sang bên.

## Touch each fingertip with your thumb

exercise-thumb-to-fingertips-name = Chạm ngón cái vào từng đầu ngón
exercise-thumb-to-fingertips-start = Giơ bàn tay lên, các ngón chỉ lên trời.
exercise-thumb-to-fingertips-step-1 = Chạm nhẹ ngón cái vào đầu ngón trỏ.
exercise-thumb-to-fingertips-step-2 = Giữ yên { $hold }.
exercise-thumb-to-fingertips-step-3 = Mở rộng bàn tay.
exercise-thumb-to-fingertips-step-4 = Làm như vậy với từng ngón tay còn lại.

## Lift your thumb away from your palm

exercise-thumb-out-from-palm-name = Nâng ngón cái xa lòng bàn tay
exercise-thumb-out-from-palm-start = Đặt mu bàn tay lên mặt bàn.
exercise-thumb-out-from-palm-step-1 = Nâng ngón cái thẳng lên, xa lòng bàn tay.
exercise-thumb-out-from-palm-step-2 = Giữ yên { $hold }.
exercise-thumb-out-from-palm-step-3 = Để ngón cái hạ xuống từ từ.

## Hold the shape of a C

exercise-thumb-c-hold-name = Giữ tay hình chữ C
exercise-thumb-c-hold-start = Để ngón cái và ngón trỏ cong như chữ C.
exercise-thumb-c-hold-step-1 = Kiểm tra: ngón cái cong tròn và không ưỡn ngược.
exercise-thumb-c-hold-step-2 = Tay kia giữ ngón cái từ phía ngoài.
exercise-thumb-c-hold-step-3 = Đẩy nhẹ ngón cái ra ngoài. Không để ngón cái di chuyển.
exercise-thumb-c-hold-step-4 = Giữ yên { $hold }.
exercise-thumb-c-hold-step-5 = Thả lỏng bàn tay.

## Press your index finger to the side

exercise-index-side-press-name = Đẩy ngón trỏ sang bên
exercise-index-side-press-start = Đặt bàn tay nằm phẳng trên mặt bàn, lòng bàn tay úp.
exercise-index-side-press-step-1 = Đặt tay kia vào cạnh ngón trỏ, phía ngón cái.
exercise-index-side-press-step-2 = Đẩy nhẹ ngón trỏ về phía ngón cái. Không để ngón trỏ di chuyển.
exercise-index-side-press-step-3 = Giữ yên { $hold }.
exercise-index-side-press-step-4 = Thả lỏng bàn tay.

## Squeeze a soft ball

exercise-soft-ball-squeeze-name = Bóp quả bóng mềm
exercise-soft-ball-squeeze-start = Đặt quả bóng xốp mềm vào lòng bàn tay. Không để ngón cái chạm bóng.
exercise-soft-ball-squeeze-step-1 = Bóp nhẹ bóng bằng các ngón còn lại.
exercise-soft-ball-squeeze-step-2 = Giữ yên { $hold }.
exercise-soft-ball-squeeze-step-3 = Thả ra từ từ.
