# What Open CASCADE's reader loses of a file's sizes is in doubt until it is taken from the file.
ReadStep D $stage/models/out/ink-disc-plan-b.step
foreach {feature size} {
  "Wheel: bore" "38 +0.059/+0.043"
  "Flanged bush: outside 2" "38 -0.009/-0.025"
  "Stud: outside 3" "29 f7"
  "Eccentric: keyseat" "6 +0.03/0"
  "Key: key" "6 j7"
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
expect {"Wheel: bore" in $doubted}
expect {"Flanged bush: outside 2" in $doubted}
expect {"Eccentric: keyseat" in $doubted}
expect {"Stud: outside 3" ni $doubted}
set taken [sbtake E other.step]
expect_equal $taken {taken 5 names 0 left {}}
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

# What the file calls its faces comes to the features that they make up.
# The harness keeps its names at the top level.
proc ids {document} { lsort [lmap one [uplevel #0 [list sbfeatures $document]] {dict get $one id}] }
set file $stage/models/out/ink-disc-plan-b.step
ReadStep N $file
expect {"Stud: outside 3" in [ids N]}
expect {"Stud: journal" ni [ids N]}
set old [lindex [those [sbfeatures N] id "Stud: outside 3"] 0]
set taken [sbtake N $file]
expect {[dict get $taken names] > 50}
expect_equal [dict get $taken left] {}
foreach id {"Stud: journal" "Stud: journal end" "Cross shaft: bearing seat" "Bracket: shaft bore"} { expect {$id in [ids N]} }
expect {"Stud: outside 3" ni [ids N]}
expect_equal [dict remove [lindex [those [sbfeatures N] id "Stud: journal"] 0] id] [dict remove $old id]
sbclass N "Stud: journal" "29 f7"
expect_equal [dict get [lindex [sbclasses N] 0] feature] "Stud: journal"
# By its size it is known still, and by what a person calls a face of it.
expect_equal [dict get [sbclass N "Stud: outside 28.97"] feature] "Stud: journal"
# Once more takes the same, and the binary document keeps it.
set known [ids N]
expect_equal [sbtake N $file] $taken
expect_equal [ids N] $known
SaveAs N named.xbf
Close N
Open named.xbf B
expect_equal [ids B] $known
# A name that is put on a face afterwards is seen without being asked.
set face [lindex [dict get [lindex [those [sbmark B] about "Stud: journal"] 0] labels] 0]
SetName B $face spigot
expect {"Stud: spigot" in [ids B]}
# What is undone is gone.
ReadStep U $file
set before_names [ids U]
UndoLimit U 5
NewCommand U
sbtake U $file
CommitCommand U
expect_equal [ids U] $known
Undo U
expect_equal [ids U] $before_names

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
# Names come with it; the sizes stay as they are, on as many features.
proc limits_of {sizes} { lsort [lmap one $sizes {
  format "%s: %.6f to %.6f on %s faces" [dict get $one size] [dict get $one lower_mm] [dict get $one upper_mm] [dict get $one faces]
}] }
expect {[dict get [sbtake I inch.step] names] > 0}
expect_equal [limits_of [sbclasses I]] [limits_of $ours]
expect {"Crank shaft: arm seat" in [lmap one [sbclasses I] {dict get $one feature}]}
