# Bore 40 and shaft 39.96 by hand: 40 H7 is 40 to 40.025, 40 f7 is 39.950 to 39.975.
pcylinder outside 30 25
pcylinder hole 20 27
ttranslate hole 0 0 -1
bcut hub outside hole
pcylinder shaft 19.98 80
ttranslate shaft 0 0 -30
XNewDoc D
XAddShape D hub 0
XAddShape D shaft 0
SetName D 0:1:1:1 Hub
SetName D 0:1:1:2 Shaft
sblook D
expect_words {sbcheck D} "no tolerance class" "sbclass"
sbclass D "Hub: bore" "40 H7"
sbclass D "Shaft: outside" "40 f7"
sbcheck D
set fit [lindex [those [sbfindings D] kind "radial fit"] 0]
expect_equal [dict get $fit outcome] conforming
expect_equal [dict get $fit wanted fit] H7/f7
sbclass D "Shaft: outside" "40 h6"
sbcheck D
set fit [lindex [those [sbfindings D nonconforming] kind "radial fit"] 0]
expect_equal [dict get $fit wanted fit] H7/h6
# A class on one alone is judged as a size.
sbclass D "Hub: bore" -remove
sbcheck D
expect_equal [llength [those [sbfindings D nonconforming] kind "size"]] 1
