### How to hold the part while the splint is off to wash.
### The splint is off and nothing guards what heals, so each message says how to rest it and what not to do.

support-thumb-beside-index = Kapag tanggal ito, ipatong ang kamay sa mesa. Panatilihin ang hinlalaki sa tabi ng hintuturo. Huwag ninyong gamitin ang kamay.
support-tip-flat-on-table = Kapag tanggal ito, ilapat ang daliri sa mesa. Panatilihing lapat ang dulo. Huwag kailanman hayaang bumaluktot, kahit minsan.
support-finger-flat-on-table = Kapag tanggal ito, ilapat ang daliri sa mesa. Panatilihing tuwid ang gitnang kasukasuan nito. Huwag kailanman hayaang bumaluktot.
support-finger-bent-over-towel = Kapag tanggal ito, ipatong ang daliri sa nirolyong tuwalya. Panatilihing medyo nakabaluktot ang gitnang kasukasuan nito. Huwag kailanman hayaang pumunta paatras.
support-finger-flat-guarded = Kapag tanggal ito, ilapat ang daliri sa mesa. Huwag ninyong hayaang may tumulak dito patagilid. Huwag ninyong gamitin ang kamay.
support-wrist-on-towel-fingers-straight = Kapag tanggal ito, ipatong ang ibabang braso sa mesa. Ipatong ang palad at mga tuwid na daliri sa nirolyong tuwalya. Huwag ninyong hayaang may lumaylay.
support-thumb-up-on-towel = Kapag tanggal ito, ipatong ang ibabang braso sa mesa. Ipatong ang palad at tuwid na hinlalaki sa nirolyong tuwalya. Huwag ninyong hayaang may lumaylay.
support-forearm-flat = Kapag tanggal ito, ilapat ang ibabang braso at kamay sa mesa. Huwag ninyong iikot ang braso. Huwag ninyong gamitin ang kamay.
support-knuckles-bent-on-towel = Kapag tanggal ito, ipatong ang mga daliri sa nirolyong tuwalya. Panatilihing nakabaluktot ang malalaking buko. Huwag ninyong gamitin ang kamay.
