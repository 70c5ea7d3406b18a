# Names that mean something to Tcl, and names in other letters, are only names.
set names [list "A part" "B\u00fcchse \u00d840" "{braced" "[string cat {[} exit {]}]" "\$env(HOME)" "back\\slash" "semi;colon" "quo\"te" "colon: inside" "-text"]
XNewDoc D
set at 0
foreach name $names {
  pcylinder shape [expr {10 + $at}] 20
  box cutter -1 -1 -1 1 1 1
  XAddShape D shape 0
  incr at
  SetName D 0:1:1:$at $name
}
sblook D
set features [those [sbfeatures D] kind shaft]
expect_equal [llength $features] [llength $names]
foreach one $features name $names {
  set id [dict get $one id]
  expect_equal [string range $id 0 [string length $name]-1] $name
  set set [sbclass D $id h7]
  expect_equal [dict get $set feature] $id
  expect_equal [dict get [sbclass D $id] class] h7
  expect_equal [llength [sbfeatures D -- $name]] 4
}
sbcheck D
set sizes [lsearch -all [lmap one [sbfindings D conforming] {dict get $one kind}] size]
expect_equal [llength $sizes] [llength $names]
set findings [lsort [lmap one [sbfindings D] {dict get $one id}]]
sbmark D
sbkeep D
SaveAs D odd.xbf
set before [sbclasses D]
Close D
Open odd.xbf E
expect_equal [sbclasses E] $before
expect_equal [lsort [lmap one [sbkept E] {dict get $one id}]] $findings
set file "out \u00fc \[x\] {y} \$z.step"
sbsave E $file
expect {[file exists $file]}
ReadStep F $file
expect_equal [lsort [lmap one [sbclasses F] {dict get $one feature}]] [lsort [lmap one $before {dict get $one feature}]]
expect_equal [sbtake F $file] [list taken [llength $names] names 0 left {}]
