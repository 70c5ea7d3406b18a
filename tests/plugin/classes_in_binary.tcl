# Set, saved as Open CASCADE's binary document, opened again: class, size and faces.
ReadStep D $stage/models/out/ink-disc-plan-b.step
set set [sbclass D "Wheel: bore" "38 H7"]
# ISO 286-2: 38 H7 is 0 to +25 um, 29 f7 is -41 to -20 um (over 24 to 30), 38 s6 +43 to +59.
expect_near [dict get $set lower_mm] 38
expect_near [dict get $set upper_mm] 38.025
set shaft [sbclass D "Stud: outside 3" "29 f7"]
expect_near [dict get $shaft lower_mm] 28.959
expect_near [dict get $shaft upper_mm] 28.98
sbclass D "Flanged bush: outside 2" "38 s6"
# Setting it again replaces it.
sbclass D "Wheel: bore" "38 H8"
sbclass D "Wheel: bore" "38 H7"
expect_equal [llength [sbclasses D]] 3
set before [sbclasses D]
SaveAs D classes.xbf
Close D
Open classes.xbf E
expect_equal [sbclasses E] $before
expect_equal [dict get [sbclass E "Stud: outside 3"] class] f7
