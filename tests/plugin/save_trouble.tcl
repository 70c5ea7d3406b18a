# A file that can not be written: said in words, nothing half written, and what was there stays.
ReadStep D $stage/models/out/hand-pump-crank.step
sbclass D "Bush: bore" "31.75 F8"
set before [sbclasses D]
expect_words {sbsave D no/such/folder/out.step} "no/such/folder/out.step" "cannot be written"
expect_words {sbsave D /dev/full} "/dev/full" "No space left"
expect {[file type /dev/full] eq "characterSpecial"}
file mkdir folder.step
expect_words {sbsave D folder.step} "folder.step"
expect_words {sbsave D {}} "sbsave"
sbsave D out.step
set whole [contents out.step]
# No room: a file of that length may not be, as on a disk that is full.
set script [open small.tcl w]
puts $script "source $stage/spotblue/share/spotblue/plugin.tcl
ReadStep D $stage/models/out/hand-pump-crank.step
sbclass D {Bush: bore} {31.75 H7}
catch {sbsave D out.step} words
set channel \[open said.txt w\]
puts \$channel \$words
close \$channel"
close $script
exec sh -c "trap '' XFSZ; ulimit -f 100; exec $env(SPOTBLUE_HARNESS) -b -f small.tcl" >small.log 2>@1
expect {[string match "*out.step*cannot be written*" [contents said.txt]]}
expect_equal [contents out.step] $whole
expect_equal [glob -nocomplain .spotblue-*] {}
expect_equal [sbclasses D] $before
# Never onto the job file it was checked by, by whatever link.
set channel [open job.toml w]
puts $channel "schema = 1\nunit = \"mm\"\nmodel = \"../none.step\""
close $channel
file link -hard job.step job.toml
sbcheck D job.toml
set job [contents job.toml]
expect_words {sbsave D job.step} "job.step" "would be overwritten"
expect_equal [contents job.toml] $job
# Onto the file it was read from, twice.
sbsave D out.step
sbsave D out.step
expect_equal [dict get [sbsave D out.step] lost] 0
