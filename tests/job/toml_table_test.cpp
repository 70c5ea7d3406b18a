#include "job/toml_table.hpp"

#include <gmock/gmock.h>

#include "support/thrown.hpp"

namespace spotblue::toml_table_test {

using ::testing::HasSubstr;

TomlTable sample(std::string_view text) { return TomlTable::read_text(text, "sample.toml"); }

TEST(TomlTable, AMissingFileIsNamed) {
  const Error problem = test::error_of([] { (void)TomlTable::read_file("/nowhere/none.toml"); });
  EXPECT_EQ(problem.code(), ErrorCode::file_access);
  EXPECT_EQ(problem.file(), "/nowhere/none.toml");
}

TEST(TomlTable, AFolderIsNotTakenForAnEmptyFile) {
  const Error problem = test::error_of([] { (void)TomlTable::read_file("/tmp"); });
  EXPECT_EQ(problem.file(), "/tmp");
}

TEST(TomlTable, TextThatIsNoTomlIsRefusedWithItsLine) {
  const Error problem = test::error_of([] { (void)sample("a = 1\nb = [1\n\n"); });
  EXPECT_EQ(problem.file(), "sample.toml");
  EXPECT_THAT(problem.place(), HasSubstr("line "));
}

TEST(TomlTable, LengthsAreNumbersOrFractionsInTheGivenUnit) {
  const TomlTable table = sample("a = 2\nb = \"1 5/16\"\nc = \"12 mm\"\nd = [1.5, \"1/2\"]");
  EXPECT_DOUBLE_EQ(table.length("a", LengthUnit::inch).in_mm(), 50.8);
  EXPECT_DOUBLE_EQ(table.length("b", LengthUnit::inch).in_mm(), 33.3375);
  EXPECT_DOUBLE_EQ(table.length("c", LengthUnit::inch).in_mm(), 12.0);
  EXPECT_EQ(table.lengths("d", LengthUnit::mm),
            (std::vector<Length>{Length::mm(1.5), Length::mm(0.5)}));
}

TEST(TomlTable, ALengthThatIsInfiniteInMillimetresIsNone) {
  const TomlTable table = sample("a = 1e308\nb = [1, 1e308]\n");
  EXPECT_EQ(test::error_of([&] { (void)table.length("a", LengthUnit::inch); }).place(),
            "line 1, a");
  EXPECT_EQ(test::error_of([&] { (void)table.lengths("b", LengthUnit::inch); }).place(),
            "line 2, b");
}

TEST(TomlTable, ABadLengthNamesLineAndKey) {
  const TomlTable table = sample("a = 1\nb = \"wide\"\n");
  const Error problem = test::error_of([&] { (void)table.length("b", LengthUnit::mm); });
  EXPECT_EQ(problem.place(), "line 2, b");
  EXPECT_THAT(problem.rule(), HasSubstr("wide"));
  EXPECT_FALSE(problem.cure().empty());
}

TEST(TomlTable, ANumberInQuotesIsNotANumber) {
  const TomlTable table = sample("teeth = \"24\"\n");
  EXPECT_THAT(test::error_of([&] { (void)table.number("teeth"); }).rule(), HasSubstr("a text"));
}

TEST(TomlTable, ANumberOfMoreDigitsThanCanBeKeptIsToldAsThat) {
  const TomlTable table = sample("a = 9223372036854775807\nb = 1e12");
  EXPECT_THAT(test::error_of([&] { (void)table.find_whole("a"); }).rule(),
              HasSubstr("more digits than can be kept"));
  const Error large = test::error_of([&] { (void)table.find_whole("b"); });
  EXPECT_THAT(large.rule(), HasSubstr("is too large a number"));
  EXPECT_THAT(large.cure(), HasSubstr("at most 2147483647"));
}

TEST(TomlTable, NotANumberIsRefused) {
  const TomlTable table = sample("a = nan\nb = inf\n");
  EXPECT_THAT(test::error_of([&] { (void)table.number("a"); }).rule(), HasSubstr("finite"));
  EXPECT_THAT(test::error_of([&] { (void)table.length("b", LengthUnit::mm); }).rule(),
              HasSubstr("finite"));
}

TEST(TomlTable, AMissingKeyIsNamedWithItsTable) {
  const TomlTable table = sample("\n[[part]]\nname = \"x\"\n");
  const TomlTable part = table.tables("part").at(0);
  EXPECT_EQ(test::error_of([&] { (void)part.number("diameter"); }).place(),
            "line 2, part 1, diameter");
}

TEST(TomlTable, AMissingKeyPointsAtTheOneThatWasMistyped) {
  const TomlTable table = sample("diametre = 12\n");
  EXPECT_EQ(test::error_of([&] { (void)table.number("diameter"); }).cure(),
            "add diameter = ..., or correct \"diametre\"");
}

TEST(TomlTable, AnUnknownKeyIsRefusedWithTheNearestKnown) {
  const TomlTable table = sample("diameter = 1\nlenght = 2\n");
  (void)table.number("diameter");
  (void)table.find_number("length");
  const Error problem = test::error_of([&] { table.refuse_unknown(); });
  EXPECT_EQ(problem.place(), "line 2, lenght");
  EXPECT_EQ(problem.cure(), "did you mean \"length\"?");
}

TEST(TomlTable, AskedKeysAreNotRefused) {
  const TomlTable table = sample("a = 1\nb = true\n");
  EXPECT_EQ(table.find_flag("b"), true);
  EXPECT_TRUE(table.has("a"));
  EXPECT_NO_THROW(table.refuse_unknown());
}

TEST(TomlTable, NamedTablesComeInFileOrder) {
  const TomlTable table = sample("[Wheel]\na = 1\n[Bracket]\na = 2\n[Axle]\na = 3\n");
  std::vector<std::string> names;
  for (const auto& [name, entry] : table.named_tables()) {
    names.push_back(name);
  }
  EXPECT_EQ(names, (std::vector<std::string>{"Wheel", "Bracket", "Axle"}));
}

}  // namespace spotblue::toml_table_test
