#include <gtest/gtest.h>
#include <unistd.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>
#include <sstream>

#include "report/described_schema.hpp"
#include "report/example_look.hpp"
#include "spotblue/report/json.hpp"

namespace spotblue::test::schema_test {

using nlohmann::json;

// Judge: Debian's python3-jsonschema, an implementation nobody here wrote.
bool is_valid(const std::string& text) {
  const std::filesystem::path file = std::filesystem::temp_directory_path() /
                                     ("spotblue-schema-" + std::to_string(::getpid()) + ".json");
  std::ofstream(file) << text;
  const std::string command =
      std::string(SPOTBLUE_VALIDATE) + " " + SPOTBLUE_REFERENCE "/schema-2.json " + file.string();
  const int status = std::system(command.c_str());
  std::filesystem::remove(file);
  if (status != 0 && WEXITSTATUS(status) != 3) {
    ADD_FAILURE() << "the validator itself failed: " << command;
  }
  return status == 0;
}

// The schema in the tree is a contract that is read without a build; its members are written here.
TEST(Schema, SaysOfEachMemberWhatItsValueSays) {
  std::stringstream schema;
  schema << std::ifstream(SPOTBLUE_REFERENCE "/schema-2.json").rdbuf();
  const std::string described = described_schema(schema.str());
  EXPECT_EQ(described, schema.str()) << "as described: " << std::filesystem::current_path()
                                     << "/schema-2.json; copy it to tests/reference";
  if (described != schema.str()) {
    std::ofstream("schema-2.json") << described;
  }
}

TEST(Schema, ExampleLookIsValid) { EXPECT_TRUE(is_valid(look_json(example_look()))); }

TEST(Schema, ExampleCheckIsValid) { EXPECT_TRUE(is_valid(check_json(example_check()))); }

TEST(Schema, NumberWithoutItsUnitInTheKeyIsInvalid) {
  CheckResult result = example_check();
  result.findings[0].found.push_back({"clearance", plain_number(-0.01)});
  EXPECT_FALSE(is_valid(check_json(result)));
}

TEST(Schema, LookOfNothingIsValid) {
  Look look;
  look.model.file.name = "nothing.step";
  EXPECT_TRUE(is_valid(look_json(look)));
}

struct Spoiling {
  const char* name;
  const char* pointer;
  json value;  // discarded: the key is removed
};

void PrintTo(const Spoiling& spoiling, std::ostream* out) { *out << spoiling.name; }

class SpoiltLook : public ::testing::TestWithParam<Spoiling> {};

TEST_P(SpoiltLook, IsInvalid) {
  json look = json::parse(look_json(example_look()));
  const json::json_pointer pointer(GetParam().pointer);
  if (GetParam().value.is_discarded()) {
    look[pointer.parent_pointer()].erase(pointer.back());
  } else {
    look[pointer] = GetParam().value;
  }
  EXPECT_FALSE(is_valid(look.dump()));
}

const json kRemoved(json::value_t::discarded);

INSTANTIATE_TEST_SUITE_P(
    Schema, SpoiltLook,
    ::testing::Values(Spoiling{"unknown_key", "/extra", 1},
                      Spoiling{"null_value", "/radial_seats/0/clearance_mm", nullptr},
                      Spoiling{"missing_list", "/threads", kRemoved},
                      Spoiling{"missing_number", "/radial_seats/0/least_gap_mm", kRemoved},
                      Spoiling{"kind_of_no_feature", "/products/0/features/0/kind", "gap"},
                      Spoiling{"short_frame", "/occurrences/0/frame/2", json::array({0, 0, 1})},
                      Spoiling{"centre_line_without_diameters", "/axial_seats/0/inner_mm",
                               kRemoved},
                      Spoiling{"other_schema", "/schema", 3},
                      Spoiling{"findings_without_job", "/findings", json::array()}),
    [](const auto& param) { return std::string(param.param.name); });

}  // namespace spotblue::test::schema_test
