# Every class goes out on its faces and comes back on them, and the file says the true grade.
ReadStep D $stage/models/out/ink-disc-plan-b.step
sbclass D "Wheel: bore" "38 H7"
sbclass D "Flanged bush: outside 2" "38 s6"
sbclass D "Flanged bush: bore" "29 F8"
sbclass D "Stud: outside 3" "29 js9"
sbclass D "Bracket: bore 7" "25 H11"
sbclass D "Eccentric: keyseat" P9
sbclass D "Key: key" "6 h9"
set before [sbclasses D]
set saved [sbsave D classes.step]
expect_equal [dict get $saved classes] 7
expect_equal [dict get $saved lost] 0
# Read as text, by no CAD: the grades are not two too high.
set text [string map {"\n" "" " " ""} [contents classes.step]]
foreach fit {"'H','hole','7'" "'s','shaft','6'" "'F','hole','8'" "'js','shaft','9'" "'H','hole','11'" "'P','hole','9'" "'h','shaft','9'"} {
  expect {[string first "LIMITS_AND_FITS($fit" [string map {"JS" "js"} $text]] > 0}
}
expect {[string first "AP242" $text] > 0}
# Nobody shall take it for Open CASCADE's own work and put the grades right once more.
expect {[string first "OpenCASCADESTEPprocessor" $text] < 0}
ReadStep E classes.step
set after [sbclasses E]
foreach one $before {
  set same [those $after feature [dict get $one feature]]
  expect_equal [llength $same] 1
  foreach key {class nominal_mm lower_mm upper_mm faces} {
    expect_equal [dict get [lindex $same 0] $key] [dict get $one $key]
  }
}
expect_equal [llength $after] [llength $before]
# The parts are as they were.
expect_equal [lsort [lmap one [sbseats E] {dict get $one kind}]] [lsort [lmap one [sbseats D] {dict get $one kind}]]

# From a file in inches: the sizes stay in mm, whatever the harness would write in.
ReadStep I $stage/models/out/hand-pump-crank.step
set bush [sbclass I "Bush: bore" "31.75 F8"]
param write.step.unit INCH
sbsave I inches.step
expect {[string match "*INCH*" [param write.step.unit]]}
param write.step.unit MM
ReadStep J inches.step
expect_equal [sbclasses J] [list $bush]
