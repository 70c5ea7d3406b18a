# Two documents and two shapes do not get in each other's way, and what has changed is seen.
ReadStep A $stage/models/out/ink-disc-plan-b.step
ReadStep B $stage/models/out/hand-pump-crank.step
sbtake A $stage/models/out/ink-disc-plan-b.step
sbclass A "Wheel: bore" "38 H7"
sbclass B "Bush: bore" "31.75 F8"
sbcheck A $stage/models/ink-disc-plan-b.job.toml
sbcheck B
expect_equal [lmap one [sbclasses A] {dict get $one class}] H7
expect_equal [lmap one [sbclasses B] {dict get $one class}] F8
expect {[llength [sbfindings A]] > [llength [sbfindings B]]}
sbkeep A
expect_equal [sbkept B] {}
# One name for two things, one after the other.
Close A
XNewDoc A
expect_words {sblook A} "there is no solid"
expect_words {sbclasses A} "there is no solid"
box solid 10 20 30
XAddShape A solid 0
SetName A 0:1:1:1 Solid
expect_equal [dict get [sblook A] parts] 1
sbclass A "Solid: width 30" "30 h9"
expect {[llength [sbclasses B]] == 1}
# A part more, a part moved: the document is looked at again without being asked.
pcylinder rod 5 40
XAddShape A rod 0
SetName A 0:1:1:2 Rod
expect_equal [llength [those [sbfeatures A] id "Rod: outside"]] 1
sbcheck A
SetName A 0:1:1:2 Bar
expect_words {sbfindings A} "not checked yet"
expect_equal [llength [those [sbfeatures A] id "Bar: outside"]] 1

pcylinder hub 30 25
pcylinder hole 20 27
ttranslate hole 0 0 -1
bcut hub hub hole
pcylinder shaft 19.98 80
expect_equal [llength [those [sbseats {hub shaft}] kind radial]] 1
ttranslate shaft 100 0 0
expect_equal [sbseats {hub shaft}] {}
