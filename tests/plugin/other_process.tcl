# Another process reads in the binary document what this one put there.
ReadStep D $stage/models/out/ink-disc-plan-b.step
foreach {feature size} {
  "Wheel: bore" "38 J7"
  "Flanged bush: outside 2" "38 +0.059/+0.043"
  "Eccentric: keyseat" "5.97 to 6.05"
  "Key: key" "6 h9"
} { sbclass D $feature $size }
sbcheck D
set outcomes [dict remove [sbcheck D] findings]
sbkeep D
SaveAs D kept.xbf
set script [open other.tcl w]
puts $script "source $stage/spotblue/share/spotblue/plugin.tcl
Open kept.xbf E
set channel \[open seen.txt w\]
puts \$channel \[list \[sbclasses E\] \[llength \[sbkept E\]\] \[dict remove \[sbcheck E\] findings\]\]
close \$channel"
close $script
exec $env(SPOTBLUE_HARNESS) -b -f other.tcl >other.log 2>@1
expect_equal [string trim [contents seen.txt]] [list [sbclasses D] [llength [sbkept D]] $outcomes]
