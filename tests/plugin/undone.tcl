# What the commands put in a document follows its transactions; saving leaves no trace in it.
ReadStep D $stage/models/out/ink-disc-plan-b.step
UndoLimit D 20
NewCommand D
set first [sbclass D "Wheel: bore" "38 H7"]
CommitCommand D
NewCommand D
sbclass D "Wheel: bore" "38 H8"
sbclass D "Flanged bush: outside 2" "38 +0.06/+0.04"
CommitCommand D
set both [sbclasses D]
expect_equal [llength $both] 2
sbsave D both.step
expect_equal [sbclasses D] $both
Undo D
expect_equal [sbclasses D] [list $first]
sbcheck D
Undo D
expect_equal [sbclasses D] {}
expect_words {sbfindings D} "not checked yet"
Redo D
expect_equal [sbclasses D] [list $first]
Redo D
expect_equal [sbclasses D] $both

# Given up in the middle: as if it had never been.
NewCommand D
sbclass D "Wheel: bore" -remove
sbclass D "Stud: outside 3" "29 f7"
catch {sbclass D "Stud: outside 3" "40 f7"}
sbsave D middle.step
expect_equal [llength [sbclasses D]] 2
AbortCommand D
expect_equal [sbclasses D] $both

# Marks and findings as well.
NewCommand D
sbcheck D
sbmark D
sbkeep D
CommitCommand D
set label [dict get [lindex [those [sbmark D] about "Wheel: bore"] 0] labels]
sbmark D -off
expect {[llength [sbkept D]] > 0}
Undo D
expect_equal [sbkept D] {}
expect_equal [XGetShapeColor D [lindex $label 0] surface] {}
Redo D
expect {[llength [sbkept D]] > 0}

# Asking changes nothing: a document that was never given a size has no room for any.
ReadStep Q $stage/models/out/hand-pump-crank.step
SaveAs Q before.xbf
sblook Q
sbfeatures Q
sbclasses Q
sbkept Q
sbclass Q "Bush: bore"
SaveAs Q after.xbf
expect_equal [file size before.xbf] [file size after.xbf]
