### How to hold the part while the splint is off to wash.
### The splint is off and nothing guards what heals, so each message says how to rest it and what not to do.

support-thumb-beside-index = Khi tháo nẹp, đặt bàn tay lên mặt bàn. Giữ ngón cái cạnh ngón trỏ. Không dùng bàn tay này.
support-tip-flat-on-table = Khi tháo nẹp, đặt ngón tay nằm phẳng trên mặt bàn. Giữ đầu ngón nằm phẳng. Không bao giờ để đầu ngón gập, dù chỉ một lần.
support-finger-flat-on-table = Khi tháo nẹp, đặt ngón tay nằm phẳng trên mặt bàn. Giữ thẳng khớp giữa. Không bao giờ để khớp này gập.
support-finger-bent-over-towel = Khi tháo nẹp, đặt ngón tay vắt trên khăn cuộn. Giữ khớp giữa hơi gập. Không bao giờ để khớp ưỡn ngược ra sau.
support-finger-flat-guarded = Khi tháo nẹp, đặt ngón tay nằm phẳng trên mặt bàn. Không để vật gì đẩy ngón sang bên. Không dùng bàn tay này.
support-wrist-on-towel-fingers-straight = Khi tháo nẹp, đặt cẳng tay lên mặt bàn. Đặt lòng bàn tay và các ngón thẳng lên khăn cuộn. Không để chỗ nào rũ xuống.
support-thumb-up-on-towel = Khi tháo nẹp, đặt cẳng tay lên mặt bàn. Đặt lòng bàn tay và ngón cái thẳng lên khăn cuộn. Không để chỗ nào rũ xuống.
support-forearm-flat = Khi tháo nẹp, đặt cẳng tay và bàn tay nằm phẳng trên mặt bàn. Không xoay cánh tay. Không dùng bàn tay này.
support-knuckles-bent-on-towel = Khi tháo nẹp, đặt các ngón vắt trên khăn cuộn. Giữ các khớp bàn ngón gập. Không dùng bàn tay này.
