# Marks are colours in the document: read by the harness's own command, kept, and taken away again.
ReadStep D $stage/models/out/ink-disc-plan-b.step
set bore [dict get [lindex [those [sbmark D] about "Wheel: bore 38.012"] 0] labels]
expect {[llength $bore] > 0}
set label [lindex $bore 0]
set seat [XGetColor D $label s]
sbcheck D $stage/models/ink-disc-plan-b.job.toml
set marks [sbmark D]
set worst [lindex [those $marks about "Bracket: bore 25.19"] 0]
expect_equal [dict get $worst mark] nonconforming
set colour [XGetColor D [lindex [dict get $worst labels] 0] s]
expect {$colour ne $seat}
SaveAs D marked.xbf
Open marked.xbf E
expect_equal [XGetColor E [lindex [dict get $worst labels] 0] s] $colour
sbsave D marked.step
ReadStep F marked.step
set again [lindex [those [sbmark F] about "Bracket: bore 25.19"] 0]
expect {[llength [dict get $again labels]] == [llength [dict get $worst labels]]}

# A colour that was there before comes back.
ReadStep G $stage/models/out/ink-disc-plan-b.step
XSetColor G $label 0.25 0.5 0.75 s
set own [XGetColor G $label s]
sbmark G
expect {[XGetColor G $label s] ne $own}
sbmark G -off
expect_equal [XGetColor G $label s] $own
