# Sizes of every form on cylinders and widths go out to AP242 and come back on their features: by the
# Open CASCADE's own reader, and by `spotblue look`, whatever the unit of the file the parts came from.
proc slotted {} {
  uplevel #0 {
    box block 60 40 20
    pcylinder bore 6 22
    ttranslate bore 15 20 -1
    bcut block block bore
    box slot 36 -1 15 8 42 6
    bcut block block slot
    box key 36 50 0 8 20 7
    pcylinder pin 6 30
    pcylinder sleeve 9 40
    XNewDoc P
    XSetLengthUnit P MM
    foreach {shape label name} {block 0:1:1:1 Block key 0:1:1:2 Key pin 0:1:1:3 Pin sleeve 0:1:1:4 Sleeve} {
      XAddShape P $shape 0
      SetName P $label $name
    }
  }
}

# The sizes that `spotblue look` reads in the file: feature, size, limits.
proc sizes_by_look {file} {
  set python {import json, sys
for size in json.load(open(sys.argv[1]))["semantic_sizes"]:
    print(size["features"][0], "|", size.get("tolerance_class", ""), "|", "%.6f" % size["limit_min_mm"], "|", "%.6f" % size["limit_max_mm"], "|", size.get("doubt", ""))}
  exec $::stage/spotblue/bin/spotblue look $file --json --output look.json
  return [lsort [split [exec $::env(SPOTBLUE_TEST_PYTHON) -c $python look.json] \n]]
}

proc sizes_by_document {sizes} {
  return [lsort [lmap one $sizes {
    format "%s | %s | %.6f | %.6f | " [dict get $one feature] [dict get $one class] [dict get $one lower_mm] [dict get $one upper_mm]
  }]]
}

slotted
set forms {
  {12 H7} {8 P9} {8 h9} {12 f7} {18 s6}
  {12 J7} {8 JS9} {8 js9} {12 j6} {18 k6}
  {12 +0.059/+0.043} {8 +0.059/-0.043} {8 -0.009/-0.025} {12 -0.009/-0.025} {18 +-0.1}
  {12 +0.01/-0.02} {8 0/-0.03} {8 +-0.05} {12 +0.02/0} {18 +0.02/-0.05}
  {11.98 to 12.01} {7.9 to 8.1} {7.95 to 8} {12 to 12.01} {17.99 to 18.03}
}
foreach unit {MM INCH M} {
  param write.step.unit $unit
  WriteStep P $unit.step
  param write.step.unit MM
  ReadStep D $unit.step
  foreach {bore slot key pin sleeve} $forms {
    foreach {feature size} [list "Block: bore" $bore "Block: slot" $slot "Key: width 8" $key "Pin: outside" $pin "Sleeve: outside" $sleeve] {
      sbclass D $feature $size
    }
    set before [sbclasses D]
    expect_equal [llength $before] 5
    set saved [sbsave D out.step]
    expect_equal [dict get $saved sizes] 5
    expect_equal [dict get $saved lost] 0
    expect_equal [dict get $saved doubtful] 0
    expect_equal [sbclasses D] $before
    expect_equal [sizes_by_look out.step] [sizes_by_document $before]
    ReadStep E out.step
    set after [sbclasses E]
    expect_equal [sizes_by_document $after] [sizes_by_document $before]
    expect_equal [lsort [lmap one $after {dict get $one size}]] [lsort [lmap one $before {dict get $one size}]]
    expect_equal [lsort [lmap one $after {list [dict get $one feature] [dict get $one faces]}]] [lsort [lmap one $before {list [dict get $one feature] [dict get $one faces]}]]
    Close E
  }
  Close D
}
# Another program of Open CASCADE's makes at least its limits of a J class: 12 J7 is +10/-8 um.
ReadStep D MM.step
sbclass D "Block: bore" "12 J7"
sbsave D j.step
ReadStep E j.step
expect_equal [XGetDimensionRange E 0:1:4:1] "lower 11.992000000000001 upper 12.01"
