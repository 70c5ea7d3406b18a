# Every command says what is wrong, and the harness lives.
foreach command {sblook sbfeatures sbseats sbfouls sbcheck sbfindings sbclass sbclasses sbmark sbshow sbkeep sbkept sbsave} {
  expect_words {$command} "$command: too few arguments" "write: $command"
  expect_words {$command nothing_there -wrong} "there is no option -wrong"
}
foreach command {sblook sbfeatures sbseats sbfouls sbshow} {
  expect_words {$command nothing_there} "'nothing_there'" "neither an XDE document nor a shape"
}
foreach command {sbclasses sbmark sbkeep sbkept} {
  expect_words {$command nothing_there} "'nothing_there'" "no XDE document" "ReadStep"
  expect_words {$command one two three} "too many arguments"
}
expect_words {sblook {}} "no solid"
expect_words [list sblook "un\{balanced"] "neither an XDE document nor a shape"
expect_words {sblook a -unit} "nothing stands behind -unit"
expect_words {sblook a -seconds soon} "'soon' behind -seconds is no number"
expect_words {sblook a -memory 0} "memory: need more than 0"
expect_words {sblook a -txet} "did you mean -text?"
expect_words {sblook -- -txet} "'-txet'" "neither an XDE document nor a shape"

box solid 10 10 10
explode solid f
expect_words {sblook solid_1} "'solid_1'" "holds no solid"
expect_words {sbclasses solid} "'solid'" "no XDE document"
expect_words {sblook solid -unit furlong -text} "furlong"
expect_words {sbfeatures solid nobody} "'nobody'" "no part"
expect_words {sbcheck solid no-such.job.toml} "no-such.job.toml"
expect_words {sbcheck solid} "no XDE document"
expect_words {sbfindings solid} "not checked yet" "sbcheck solid"
expect_words {sbshow solid} "no viewer is open" "vinit"
expect_words {sbsave solid out.step} "no XDE document"

XNewDoc Empty
expect_words {sblook Empty} "there is no solid"
expect_equal [sbkept Empty] {}
