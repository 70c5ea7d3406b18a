# A class that the standard, the feature or the document can not have is refused and nothing set.
ReadStep D $stage/models/out/ink-disc-plan-b.step
expect_words {sbclass D "Wheel: bore 39" H7} "'Wheel: bore 39'" "did you mean 'Wheel: bore'?"
expect_words {sbclass D "Wheel: bore" h7} "hole"
expect_words {sbclass D "Stud: outside 3" H7} "shaft"
expect_words {sbclass D "Wheel: bore" H77} "H77"
expect_words {sbclass D "Wheel: bore" tight} "tight"
expect_words {sbclass D "Wheel: bore" "many H7"} "many"
expect_words {sbclass D "Wheel: bore" "5000 H7"} "5000"
set plane [lindex [those [sbfeatures D Wheel] kind plane] 0]
expect_words {sbclass D [dict get $plane id] H7} "no size"
expect_equal [sbclasses D] {}
expect_equal [sbclass D "Wheel: bore"] {}
expect_words {sbclass D "Wheel: bore" "38 0.1/0.2"} "0.1/0.2" "38 +0.025/0"
expect_words {sbclass D "Wheel: bore" "38.1 to 37.9"} "reversed"
expect_words {sbclass D "Wheel: bore" "19 +-0.1 radius"} "radius" "diameter"
expect_words {sbclass D "Wheel: bore" "48 H7"} "where the model has 38.012 mm"
expect_equal [sbclasses D] {}
# What is refused leaves what was there.
set there [sbclass D "Wheel: bore" "38 J7"]
expect_words {sbclass D "Wheel: bore" "48 H7"} "38.012"
expect_equal [sbclasses D] [list $there]
expect_equal [sbclass D "Wheel: bore" -remove] {removed 1}
expect_equal [sbclasses D] {}
expect_words {sbsave D no/such/folder/out.step} "no/such/folder/out.step"
