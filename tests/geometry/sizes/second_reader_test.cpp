// What we write, read by a general reader of ISO 10303-21 text that nobody of this project wrote
// (npm package @ifc-lite/parser, see second_reader.mjs): every class on the face it is for.

#include <gtest/gtest.h>

#include <array>
#include <cstdio>
#include <memory>
#include <nlohmann/json.hpp>

#include "geometry/sizes/semantic_files.hpp"

namespace spotblue::second_reader_test {

std::string output_of(const std::string& command) {
  std::string output;
  const auto close = [](std::FILE* pipe) { pclose(pipe); };
  const std::unique_ptr<std::FILE, decltype(close)> pipe(popen(command.c_str(), "r"), close);
  std::array<char, 4096> piece{};
  while (std::fgets(piece.data(), piece.size(), pipe.get()) != nullptr) {
    output += piece.data();
  }
  return output;
}

TEST(SecondReader, FindsEveryClassOnItsFace) {
  const std::string reader = SPOTBLUE_SECOND_READER;
  if (reader.empty()) {
    GTEST_SKIP() << "no second reader here: npm install -g --ignore-scripts @ifc-lite/parser";
  }
  const test::Folder folder;
  std::vector<double> diameters;
  std::vector<SizeToWrite> sizes;
  for (int grade = 1; grade <= 18; ++grade) {
    diameters.push_back(20.0 + grade);
    sizes.push_back({"Plate",
                     "bore " + std::to_string(20 + grade),
                     20.0 + grade,
                     "H" + std::to_string(grade),
                     {}});
  }
  const auto file = test::write_parts(folder, {test::plate("Plate", diameters)}, LengthUnit::mm,
                                      StepProtocol::ap214);
  const auto out = folder.path() / "out.step";
  (void)write_semantic_sizes(file, out, sizes, LengthUnit::mm, {});
  const auto found = nlohmann::json::parse(output_of(reader + " " + out.string()));
  ASSERT_EQ(found.size(), sizes.size());
  for (std::size_t i = 0; i < sizes.size(); ++i) {
    EXPECT_EQ(found[i]["name"], sizes[i].feature);
    EXPECT_EQ(found[i]["fit"][0], "H");
    EXPECT_EQ(found[i]["fit"][1], "hole");
    EXPECT_EQ(found[i]["fit"][2], sizes[i].tolerance_class.substr(1));
    ASSERT_EQ(found[i]["radii"].size(), 1U);
    EXPECT_NEAR(found[i]["radii"][0], 0.5 * diameters[i], 1e-9);
  }
}

}  // namespace spotblue::second_reader_test
