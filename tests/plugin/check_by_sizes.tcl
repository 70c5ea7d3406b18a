# Deviations and limits that the harness's own commands put in a document drive its check as
# classes do, and as `spotblue check FILE.step` does with what is written of it.
pcylinder outside 30 25
pcylinder hole 20 27
ttranslate hole 0 0 -1
bcut hub outside hole
pcylinder shaft 19.98 80
XNewDoc D
XAddShape D hub 0
XAddShape D shaft 0
SetName D 0:1:1:1 Hub
SetName D 0:1:1:2 Shaft
explode hub f
explode shaft f
# The harness keeps its names at the top level.
proc dumpface {face} { uplevel #0 [list mksurface sbtest $face]; uplevel #0 {dump sbtest} }
foreach face [lsort [directory hub_*]] { if {[string match "*Radius :20*" [dumpface $face]]} { set bore $face } }
foreach face [lsort [directory shaft_*]] { if {[string match "*Radius :19.98*" [dumpface $face]]} { set journal $face } }
set bore_label [XAddSubShape D $bore 0:1:1:1]
set shaft_label [XAddSubShape D $journal 0:1:1:2]
XAddDimension D $bore_label
XSetDimensionType D 0:1:4:1 15
XSetDimensionValue D 0:1:4:1 40
XSetDimensionPlusMinusTol D 0:1:4:1 -0.01 0.025
XAddDimension D $shaft_label
XSetDimensionType D 0:1:4:2 15
XSetDimensionRange D 0:1:4:2 39.95 39.97

proc outcome {} { uplevel #0 {dict get [lindex [those [sbfindings D] kind "radial fit"] 0] outcome} }
sbcheck D
expect_equal [outcome] conforming
# The model's shaft is 39.96; what it may be at most is now below.
XSetDimensionRange D 0:1:4:2 39.93 39.95
expect_words {sbfindings D} "not checked yet"
set outcomes [sbcheck D]
expect_equal [outcome] nonconforming
sbsave D sizes.step
catch {exec $stage/spotblue/bin/spotblue check sizes.step --json --output file.json}
foreach outcome {conforming nonconforming undecided} {
  expect {[regexp "\"$outcome\": *(\[0-9\]+)" [contents file.json] all count]}
  expect_equal [dict get $outcomes $outcome] $count
}
ReadStep S sizes.step
expect_equal [lsort [lmap one [sbclasses S] {dict get $one size}]] {{39.93 to 39.95} {40 +0.025/-0.01}}
expect {[string first doubt [sbclasses S]] < 0}
# Of a positive lower deviation Open CASCADE does not tell whether it lies below.
XSetDimensionPlusMinusTol D 0:1:4:1 0.01 0.025
set bore [lindex [those [sbclasses D] feature "Hub: bore"] 0]
expect {[string match "*can not be told*" [dict get $bore doubt]]}
sbcheck D
expect_equal [dict get [lindex [those [sbfindings D] kind size about {{Hub: bore}}] 0] outcome] undecided
sbclass D "Hub: bore" "40 +0.025/+0.01"
expect {![dict exists [sbclass D "Hub: bore"] doubt]}
# Someone changes the values and leaves our words: neither is believed.

XSetDimensionValue D 0:1:4:3 40.5
XSetDimensionPlusMinusTol D 0:1:4:3 0.01 0.025
expect {[string match "*another size*" [dict get [lindex [those [sbclasses D] feature "Hub: bore"] 0] doubt]]}
# A job file has the last word.
set channel [open job.toml w]
puts $channel "schema = 1\nunit = \"mm\"\nmodel = \"none.step\"\n\[\[fits\]\]\nhole = \"Hub: bore\"\nshaft = \"Shaft: outside\"\nclass = \"H7/f7\""
close $channel
sbcheck D job.toml
expect_equal [dict get [lindex [those [sbfindings D] kind "radial fit"] 0] wanted fit] H7/f7
