# What Open CASCADE's reader loses of a file's sizes is in doubt until it is taken from the file.
ReadStep D $stage/models/out/ink-disc-plan-b.step
foreach {feature size} {
  "Wheel: bore 38.012" "38 +0.059/+0.043"
  "Flanged bush: outside 38.05" "38 -0.009/-0.025"
  "Stud: outside 28.97" "29 f7"
  "Eccentric: slot 6" "6 +0.03/0"
  "Key: width 5.985" "6 j7"
} { sbclass D $feature $size }
set before [sbclasses D]
sbsave D ours.step
# As another program might have written it: without our words.
set text [contents ours.step]
regsub -all {DESCRIPTIVE_REPRESENTATION_ITEM\('size in mm'} $text {DESCRIPTIVE_REPRESENTATION_ITEM('text'} text
set channel [open other.step w]
puts -nonewline $channel $text
close $channel
ReadStep E other.step
set doubted [lmap one [sbclasses E] { if {![dict exists $one doubt]} continue; dict get $one feature }]
expect {"Wheel: bore 38.012" in $doubted}
expect {"Flanged bush: outside 38.05" in $doubted}
expect {"Eccentric: slot 6" in $doubted}
expect {"Stud: outside 28.97" ni $doubted}
set taken [sbtake E other.step]
expect_equal $taken {taken 5 left {}}
proc sorted {sizes} {
  lsort [lmap one $sizes {
    format "%s, %s: %.6f to %.6f" [dict get $one feature] [dict get $one size] [dict get $one lower_mm] [dict get $one upper_mm]
  }]
}
expect_equal [sorted [sbclasses E]] [sorted $before]
# Once more changes nothing.
sbtake E other.step
expect_equal [sorted [sbclasses E]] [sorted $before]
sbcheck E

# The file of other parts: nothing is taken.
ReadStep F $stage/models/out/hand-pump-crank.step
set taken [sbtake F other.step]
expect_equal [dict get $taken taken] 0
expect_equal [llength [dict get $taken left]] 5
expect {[string match "*no such feature*" $taken]}
expect_equal [sbclasses F] {}
expect_words {sbtake F no-such.step} "no-such.step"
expect_words {sbtake F $env(SPOTBLUE_SCRIPT)} "take_from_file.tcl"

# What the program writes by itself, in inches, needs no taking: it has the words.
catch {exec $stage/spotblue/bin/spotblue check $stage/models/hand-pump-crank.job.toml --with-sizes inch.step --output text}
expect {[file exists inch.step]}
ReadStep I inch.step
set ours [sbclasses I]
expect {[llength $ours] > 0}
foreach one $ours { expect {![dict exists $one doubt]} }
sbtake I inch.step
expect_equal [sorted [sbclasses I]] [sorted $ours]
