# The commands stay as they are, and what they know stays with them.
box solid 10 20 30
sblook solid
set before [sbfeatures solid]
source $stage/spotblue/share/spotblue/plugin.tcl
pload MODELING OCAF XDE
source $stage/spotblue/share/spotblue/plugin.tcl
expect_equal [sbfeatures solid] $before
expect {[dict get [sblook solid] parts] == 1}
expect {[package present spotblue] ne ""}
