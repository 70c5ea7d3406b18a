#include "geometry/part21/step_letters.hpp"

#include <gtest/gtest.h>

#include <filesystem>
#include <string>

#include "geometry/read/written_step.hpp"
#include "spotblue/geometry/mockup.hpp"
#include "spotblue/geometry/mockup_write.hpp"
#include "spotblue/geometry/read.hpp"

namespace spotblue::step_letters_test {

TEST(StepLetters, AreCodedAsTheStandardSays) {
  // ISO 10303-21:2016, 6.4.3, from memory; code points by the Unicode Standard, from memory too.
  EXPECT_EQ(with_coded_letters("#1=A('\xE8\xBB\x8A\xE8\xBB\xB8 \xC3\xBC!');"),
            "#1=A('\\X2\\8ECA8EF8\\X0\\ \\X2\\00FC\\X0\\!');");
  EXPECT_EQ(with_coded_letters("'\xF0\x9F\x94\xA7'"), "'\\X4\\0001F527\\X0\\'");
}

TEST(StepLetters, ABreakInsideALetterIsMended) {
  EXPECT_EQ(with_coded_letters("A('\xE8\xBB\n\x8A');\nB('it''s\r\n');\n"),
            "A('\\X2\\8ECA\\X0\\');\nB('it''s');\n");
}

TEST(StepLetters, WhatIsNoUtf8AndWhatIsNoStringStay) {
  const std::string step = "/* \n */ #1=A('Welle \xFC',$);\n#2=B('open";
  EXPECT_EQ(with_coded_letters(step), step);
}

TEST(StepLetters, EveryCodeIsDecoded) {
  EXPECT_EQ(decoded_letters("\\X2\\8ECAD83DDD27\\X0\\ a\\X\\FCb \\S\\| \\\\ \\X4\\0001F527\\X0\\"),
            "\xE8\xBB\x8A\xF0\x9F\x94\xA7 a\xC3\xBC"
            "b \xC3\xBC \\ \xF0\x9F\x94\xA7");
}

TEST(StepLetters, WhatIsNoCodeStays) {
  for (const std::string text : {"\\X2\\8EC\\X0\\", "\\X2\\D83D\\X0\\", "\\X2\\8ECA", "\\X\\G0",
                                 "C:\\parts\\N", "\\X4\\00110000\\X0\\"}) {
    EXPECT_EQ(decoded_letters(text), text);
  }
}

TEST(StepLetters, ALongNameComesBackWholeFromAMockup) {
  std::string name;  // 60 letters of 3 bytes: longer than a line of the writer's
  for (int i = 0; i < 60; ++i) {
    name += "\xE8\xBB\x8A";
  }
  TurnedPart pin;
  Step journal;
  journal.length = 30;
  journal.diameter = journal.end_diameter = 20;
  pin.outside = {journal};
  Mockup mockup;
  mockup.parts = {{name, pin}};
  const test::Folder folder;
  const std::filesystem::path file = folder.path() / "pin.step";
  write_mockup(mockup, file);
  EXPECT_EQ(read_step(file, {}, Completeness::all_or_error).products.at(0).name, name);
}

TEST(StepLetters, BareLatin1InANameIsRead) {
  std::string step = test::stand_step("MM", "AP214IS");
  for (std::size_t at = step.find("'Frame'"); at != std::string::npos; at = step.find("'Frame'")) {
    step.replace(at, 7, "'Geh\xE4use'");
  }
  const test::Folder folder;
  const Model model = read_step(folder.write("stand.step", step), {}, Completeness::all_or_error);
  EXPECT_EQ(std::count_if(model.products.begin(), model.products.end(),
                          [](const Product& one) { return one.name == "Geh\xC3\xA4use"; }),
            1);
  ASSERT_EQ(model.notes.size(), 1U);
  EXPECT_NE(model.notes[0].text.find("Latin-1"), std::string::npos);
}

}  // namespace spotblue::step_letters_test
