# Parts, coloured faces and labels in the viewer; the picture changes with them and back again.
pload VISUALIZATION
vinit window -w 600 -h 500
vbackground -color WHITE
vaxo

# How many different colours a picture of the view has, that are neither white nor grey.
proc colours_seen {} {
  vfit
  set colours {}
  for {set x 10} {$x < 600} {incr x 25} {
    for {set y 10} {$y < 500} {incr y 25} {
      lassign [vreadpixel $x $y rgb] r g b
      if {max($r, $g, $b) - min($r, $g, $b) > 0.1} { dict incr colours [format %.1f,%.1f,%.1f $r $g $b] }
    }
  }
  return [dict size $colours]
}

pcylinder outside 30 25
pcylinder hole 20 27
ttranslate hole 0 0 -1
bcut hub outside hole
pcylinder shaft 19.99 80
ttranslate shaft 0 0 -30
sbshow {hub shaft}
vsetdispmode 1
set shown [sbshow {hub shaft}]
expect_equal $shown {parts 2 faces 2 labels 1}
expect {[colours_seen] > 0}
# What has no seat has no colour.
expect_equal [sbshow {hub shaft} -off] {parts 0 faces 0 labels 0}
expect {[colours_seen] == 0}
expect_equal [sbshow shaft] {parts 1 faces 0 labels 0}
expect {[colours_seen] == 0}

# Every seat, thread and foul has its label: those along the axis and of widths as well.
ReadStep D $stage/models/out/ink-disc-plan-b.step
set found [sblook D]
set wanted 0
foreach kind {radial axial taper width threads fouls} { incr wanted [dict get $found $kind] }
expect {[dict get $found axial] > 0 && [dict get $found width] > 0}
expect_equal [dict get [sbshow D] labels] $wanted
set labels [regexp -all {spotblue label \d+} [vdir]]
expect_equal $labels $wanted
sbshow D -off
