# The demo's job gives on the document what `spotblue check` gives on the file.
ReadStep D $stage/models/out/ink-disc-plan-b.step
# The job has the names of the file's faces, which Open CASCADE's reader drops.
expect_words {sbcheck D $stage/models/ink-disc-plan-b.job.toml} "the model has no feature" "Bracket: stud bore"
sbtake D $stage/models/out/ink-disc-plan-b.step
set outcomes [sbcheck D $stage/models/ink-disc-plan-b.job.toml]
catch {exec $stage/spotblue/bin/spotblue check $stage/models/ink-disc-plan-b.job.toml --json --output file.json}
set text [contents file.json]
foreach outcome {conforming nonconforming undecided} {
  expect {[regexp "\"$outcome\": *(\[0-9\]+)" $text all count]}
  expect_equal [dict get $outcomes $outcome] $count
  expect_equal [llength [sbfindings D $outcome]] $count
}
expect {[dict get $outcomes nonconforming] > 0}
set fit [lindex [those [sbfindings D] kind "radial fit" about {{Bracket: shaft bore} {Cross shaft: journal}}] 0]
expect_equal [dict get $fit outcome] nonconforming
expect_equal [dict get $fit wanted fit] H8/f7
expect_words {sbfindings D doubtful} "'doubtful'" "undecided"
# A job by kinds and sizes needs no names.
ReadStep S $stage/models/out/ink-disc-plan-b.step
sbcheck S $stage/models/by-size.job.toml
set fit [lindex [those [sbfindings S] kind "radial fit" about {{Bracket: bore 7} {Cross shaft: outside 2}}] 0]
expect_equal [dict get $fit outcome] nonconforming
# Another document of the same name has not been checked.
Close D
ReadStep D $stage/models/out/hand-pump-crank.step
expect_words {sbfindings D} "not checked yet"
expect_words {sbcheck D $stage/models/ink-disc-plan-b.job.toml} "ink-disc-plan-b.job.toml"
