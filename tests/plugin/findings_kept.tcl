# Findings go with the binary document as named data and as notes.
ReadStep D $stage/models/out/ink-disc-plan-b.step
sbtake D $stage/models/out/ink-disc-plan-b.step
expect_words {sbkeep D} "not checked yet"
sbcheck D $stage/models/ink-disc-plan-b.job.toml
set kept [sbkeep D]
set findings [sbfindings D]
expect_equal [dict get $kept findings] [llength $findings]
set open [expr {[llength [sbfindings D nonconforming]] + [llength [sbfindings D undecided]]}]
expect {[dict get $kept notes] > 0 && [dict get $kept notes] <= $open}
# Keeping twice keeps once.
expect_equal [sbkeep D] $kept
expect_equal [llength [XNoteNotes D]] [dict get $kept notes]
SaveAs D findings.xbf
Close D
Open findings.xbf E
set back [sbkept E]
expect_equal [llength $back] [llength $findings]
foreach one $findings {
  set same [lindex [those $back id [dict get $one id]] 0]
  foreach key {kind about outcome} { expect_equal [dict get $same $key] [dict get $one $key] }
  foreach part {wanted found margin} {
    if {[dict exists $one $part]} {
      dict for {key value} [dict get $one $part] { expect_equal [dict get $same $part $key] $value }
    }
  }
}
expect_equal [llength [XNoteNotes E]] [dict get $kept notes]
