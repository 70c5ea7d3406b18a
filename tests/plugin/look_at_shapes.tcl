# A hub on a shaft, by hand: bore 40, shaft 39.98; a pin of 10 driven through both is a foul.
pcylinder outside 30 25
pcylinder hole 20 27
ttranslate hole 0 0 -1
bcut hub outside hole
pcylinder shaft 19.99 80
ttranslate shaft 0 0 -30
set found [sblook hub shaft]
expect_equal [dict get $found parts] 2
expect_equal [dict get $found fouls] 0
expect_equal [dict get $found not_looked_at] {}
set seats [those [sbseats {hub shaft}] kind radial]
expect_equal [llength $seats] 1

# Within no time and no memory nothing is found, and that is told.
foreach bound {-seconds -memory} {
  set hurried [sblook hub shaft $bound 1e-6]
  expect_equal [dict get $hurried radial] 0
  expect_equal [expr {[llength [dict get $hurried not_looked_at]] > 0}] 1
}
expect_equal [dict get [sblook hub shaft -seconds 100 -memory 2000] not_looked_at] {}
set seat [lindex $seats 0]
expect_equal [dict get $seat hole feature] "hub: bore"
expect_equal [dict get $seat shaft feature] "shaft: outside"
expect_near [dict get $seat clearance_mm] 0.02
expect_near [dict get $seat least_gap_mm] 0.01
expect_near [dict get $seat engaged_mm] 25

# Moved aside by 0.015 the shaft fouls its hole: 0.01 - 0.015.
ttranslate shaft 0.015 0 0
sblook hub shaft
expect_near [dict get [lindex [those [sbseats {hub shaft}] kind radial] 0] least_gap_mm] -0.005
expect_equal [llength [sbfouls {hub shaft}]] 1

# A box pushed into the hub: 5 x 10 x 10 of it are inside, less nothing.
box block 25 -5 5 10 10 10
expect_equal [dict get [sblook hub block] fouls] 1

# One shape in two places is one part.
tcopy hub other
tmove other 0 0 100
sblook hub shaft other
expect {[string match "*hub*" [sblook hub shaft -text]]}
