# Marks are colours in the document: read by the harness's own command, kept, and taken away again.
ReadStep D $stage/models/out/ink-disc-plan-b.step
sbtake D $stage/models/out/ink-disc-plan-b.step
set bore [dict get [lindex [those [sbmark D] about "Wheel: bore"] 0] labels]
expect {[llength $bore] > 0}
set label [lindex $bore 0]
set seat [XGetShapeColor D $label surface]
sbcheck D $stage/models/ink-disc-plan-b.job.toml
set marks [sbmark D]
set worst [lindex [those $marks about "Bracket: shaft bore"] 0]
expect_equal [dict get $worst mark] nonconforming
set colour [XGetShapeColor D [lindex [dict get $worst labels] 0] surface]
expect {$colour ne $seat}
SaveAs D marked.xbf
Close D
Open marked.xbf E
expect_equal [XGetShapeColor E [lindex [dict get $worst labels] 0] surface] $colour
sbsave E marked.step
# Where the faces are in the new document says one that is marked; the colour, one that is not.
ReadStep Places marked.step
set again [lindex [those [sbmark Places] about "Bracket: bore 7"] 0]
ReadStep F marked.step
expect_equal [llength [dict get $again labels]] [llength [dict get $worst labels]]
foreach one [dict get $again labels] { expect_equal [XGetShapeColor F $one surface] $colour }

# A colour that was there before comes back.
ReadStep G $stage/models/out/ink-disc-plan-b.step
set label [lindex [dict get [lindex [those [sbmark G] about "Wheel: bore"] 0] labels] 0]
expect_equal [dict keys [sbmark G -off]] cleared
expect_equal [XGetShapeColor G $label surface] {}
XSetColor G $label 0.25 0.5 0.75 s
set own [XGetShapeColor G $label surface]
sbmark G
expect {[XGetShapeColor G $label surface] ne $own}
sbmark G -off
expect_equal [XGetShapeColor G $label surface] $own
