# Loads the plug-in as its users do, runs one script and leaves the verdict in verdict.txt.
set checks 0

# Fails unless the condition holds.
proc expect {condition} {
  incr ::checks
  if {![uplevel 1 [list expr $condition]]} {
    error "does not hold: $condition ([uplevel 1 [list subst -nocommands $condition]])"
  }
}

proc expect_equal {found wanted} {
  incr ::checks
  if {$found ne $wanted} { error "found:  $found\nwanted: $wanted" }
}

# Fails unless the two numbers are within 1e-9 of each other.
proc expect_near {found wanted} {
  incr ::checks
  if {abs($found - $wanted) > 1e-9} { error "found $found, wanted $wanted" }
}

# Fails unless the script ends in an error whose words hold each of these.
proc expect_words {script args} {
  incr ::checks
  if {![catch {uplevel 1 $script} words]} { error "'$script' was accepted: $words" }
  foreach word $args {
    if {[string first $word $words] < 0} { error "'$script' said: $words\nwanted: $word" }
  }
}

# The dicts of a list whose keys have these values.
proc those {dicts args} {
  set found {}
  foreach one $dicts {
    set fits 1
    foreach {key value} $args { if {[dict get $one $key] ne $value} { set fits 0 } }
    if {$fits} { lappend found $one }
  }
  return $found
}

proc contents {file} {
  set channel [open $file]
  set text [read $channel]
  close $channel
  return $text
}

set stage $env(SPOTBLUE_STAGE)
set trouble [catch {
  source $stage/spotblue/share/spotblue/plugin.tcl
  source $env(SPOTBLUE_SCRIPT)
} words]
set channel [open verdict.txt w]
puts $channel [expr {$trouble ? "failed after $checks checks: $words\n$errorInfo" : "passed $checks checks"}]
close $channel
