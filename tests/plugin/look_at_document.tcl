# The same parts, places and seats as `spotblue look` finds in the file, in mm and inch files.
foreach model {ink-disc-plan-b hand-pump-crank} {
  set file $stage/models/out/$model.step
  ReadStep D $file
  sbtake D $file
  set channel [open document.json w]
  fconfigure $channel -encoding utf-8
  puts $channel [sblook D -json]
  close $channel
  exec $stage/spotblue/bin/spotblue look $file --json --output file.json
  set same [exec $env(SPOTBLUE_TEST_PYTHON) $env(SPOTBLUE_TESTS)/same_look.py document.json file.json]
  expect {[string match "same: *" $same]}
  Close D
}
