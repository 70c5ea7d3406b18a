// Models in Open CASCADE's own files against the STEP file they were made from.

#include <gmock/gmock.h>
#include <sys/stat.h>

#include <BRepPrimAPI_MakeCylinder.hxx>
#include <algorithm>
#include <array>
#include <cmath>
#include <fstream>
#include <iterator>
#include <random>

#include "geometry/truth/truth_match.hpp"
#include "spotblue/base/error.hpp"
#include "spotblue/geometry/read.hpp"
#include "spotblue/geometry/semantic_write.hpp"
#include "support/shape_out.hpp"
#include "support/thrown.hpp"

namespace spotblue::test::read_model_test {

namespace fs = std::filesystem;
using ::testing::AllOf;
using ::testing::HasSubstr;
using ::testing::Not;

constexpr double kSame = 1e-9;  // mm

class Place {
 public:
  Place() : path_(fs::path(testing::TempDir()) / ("spotblue-read-" + unique())) {
    fs::create_directories(path_);
  }
  ~Place() { fs::remove_all(path_); }
  Place(const Place&) = delete;
  Place& operator=(const Place&) = delete;
  Place(Place&&) = delete;
  Place& operator=(Place&&) = delete;
  [[nodiscard]] fs::path file(const std::string& name) const { return path_ / name; }
  [[nodiscard]] fs::path write(const std::string& name, const std::string& bytes) const {
    std::ofstream(file(name), std::ios::binary) << bytes;
    return file(name);
  }

 private:
  static std::string unique() {
    std::string name = testing::UnitTest::GetInstance()->current_test_info()->name();
    std::ranges::replace(name, '/', '-');
    return name;
  }
  fs::path path_;
};

std::string bytes_of(const fs::path& file) {
  std::ifstream in(file, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), {}};
}

// The values of each kind of find, in an order that names and numbers of parts do not change.
using Row = std::array<double, 4>;

std::vector<std::vector<Row>> measured(const Look& look) {
  std::vector<Row> radial;
  for (const RadialSeat& seat : look.seats.radial) {
    radial.push_back({seat.hole_diameter, seat.shaft_diameter, seat.engaged, seat.offset});
  }
  std::vector<Row> threads;
  for (const Thread& seat : look.seats.threads) {
    threads.push_back({seat.hole_diameter, seat.screw_diameter, seat.engaged, 0.0});
  }
  std::vector<std::vector<Row>> all{radial, threads};
  for (std::vector<Row>& rows : all) {
    for (Row& row : rows) {
      row[3] = std::abs(row[3]) < kSame ? 0.0 : row[3];
    }
    std::ranges::sort(rows, [](const Row& a, const Row& b) {
      for (std::size_t i = 0; i < a.size(); ++i) {
        if (std::abs(a[i] - b[i]) > 1e-7) {
          return a[i] < b[i];
        }
      }
      return false;
    });
  }
  return all;
}

void expect_same(const Look& seen, const Look& from_step) {
  const auto here = measured(seen);
  const auto there = measured(from_step);
  for (std::size_t kind = 0; kind < here.size(); ++kind) {
    ASSERT_EQ(here[kind].size(), there[kind].size());
    for (std::size_t i = 0; i < here[kind].size(); ++i) {
      for (std::size_t value = 0; value < 4; ++value) {
        EXPECT_NEAR(here[kind][i][value], there[kind][i][value], kSame);
      }
    }
  }
  EXPECT_EQ(seen.seats.axial.size(), from_step.seats.axial.size());
  EXPECT_EQ(seen.seats.taper.size(), from_step.seats.taper.size());
  EXPECT_EQ(seen.seats.width.size(), from_step.seats.width.size());
  EXPECT_EQ(seen.fouls.found.size(), from_step.fouls.found.size());
  EXPECT_EQ(seen.model.occurrences.size(), from_step.model.occurrences.size());
}

class SameModel : public testing::TestWithParam<std::uint64_t> {};

TEST_P(SameModel, IsSeenAlikeFromEveryFormat) {
  const Place place;
  const Wrapping wrapping = wrapping_of(GetParam());
  const Assembly assembly = generate_assembly(GetParam(), wrapping);
  SCOPED_TRACE(assembly.description());
  const fs::path step = place.file("model.step");
  write_step(assembly.nodes, wrapping.schema, wrapping.unit, step);
  const Look from_step = look(step, {});
  step_to_xbf(step, place.file("model.xbf"));
  const Look document = look(place.file("model.xbf"), {});
  EXPECT_EQ(document.model.file.protocol, "xbf");
  for (const std::string& line : disagreements(document, assembly, {})) {
    ADD_FAILURE() << line;
  }
  expect_same(document, from_step);
  for (const BrepKind kind : {BrepKind::text, BrepKind::binary}) {
    step_to_brep(step, place.file("model.brep"), kind);
    const Look shapes = look(place.file("model.brep"), {});
    EXPECT_EQ(shapes.model.file.protocol, "brep");
    expect_same(shapes, from_step);
  }
}

INSTANTIATE_TEST_SUITE_P(FromSeed, SameModel, testing::Range<std::uint64_t>(1, 21));

class OwnFile : public testing::Test {
 protected:
  OwnFile() {
    const Assembly assembly = generate_assembly(3, wrapping_of(3));
    write_step(assembly.nodes, Schema::ap214, FileUnit::mm, step_);
    step_to_xbf(step_, xbf_);
    step_to_brep(step_, brep_, BrepKind::text);
    step_to_brep(step_, binary_, BrepKind::binary);
  }

  static Error refusal_of(const fs::path& file) {
    const Error error =
        test::error_of([&] { return read_model(file, {}, Completeness::all_or_error); });
    EXPECT_THAT(error.what(), Not(HasSubstr("\n")));
    EXPECT_EQ(error.file(), file.string());
    EXPECT_NE(error.cure(), "");
    return error;
  }

  static std::vector<std::string> notes_of(const fs::path& file) {
    std::vector<std::string> notes;
    for (const Note& note : read_model(file, {}, Completeness::all_or_error).notes) {
      notes.push_back(note.about + ": " + note.text);
    }
    return notes;
  }

  Place place_;
  fs::path step_ = place_.file("good.step");
  fs::path xbf_ = place_.file("good.xbf");
  fs::path brep_ = place_.file("good.brep");
  fs::path binary_ = place_.file("binary.brep");
};

TEST_F(OwnFile, TheContentDecidesAndAWrongNameIsTold) {
  fs::copy(xbf_, place_.file("named.step"));
  EXPECT_THAT(notes_of(place_.file("named.step")),
              testing::Contains(HasSubstr("Open CASCADE document (.xbf): it is read as such")));
  EXPECT_TRUE(is_model_file(place_.file("named.step")));
  fs::copy(step_, place_.file("named.brep"));
  EXPECT_THAT(notes_of(place_.file("named.brep")),
              testing::Contains(HasSubstr("content is that of a STEP file")));
}

TEST_F(OwnFile, ABrepSaysThatItKnowsNoUnitAndNoParts) {
  const Model model = read_model(brep_, {}, Completeness::all_or_error);
  EXPECT_EQ(model.file.unit, "");
  EXPECT_EQ(model.products.front().name, "good 1");
  EXPECT_THAT(notes_of(brep_), AllOf(testing::Contains(HasSubstr("mm are taken for granted")),
                                     testing::Contains(HasSubstr("every solid of it"))));
}

TEST_F(OwnFile, LengthsInInchesBecomeMillimetres) {
  shape_to_xbf(BRepPrimAPI_MakeCylinder(0.5, 2.0).Shape(), "Pin", 0.0254, place_.file("inch.xbf"));
  const Model model = read_model(place_.file("inch.xbf"), {}, Completeness::all_or_error);
  EXPECT_EQ(model.file.unit, "inch");
  ASSERT_EQ(model.products.size(), 1U);
  EXPECT_EQ(model.products[0].name, "Pin");
  ASSERT_EQ(model.products[0].cylinders.size(), 1U);
  EXPECT_NEAR(model.products[0].cylinders[0].diameter, 25.4, kSame);
}

TEST_F(OwnFile, ANameWithTheWrongEndingIsToldInItsShownForm) {
  fs::copy(step_, place_.file("odd\n\xFF.XBF"));
  EXPECT_THAT(read_model(place_.file("odd\n\xFF.XBF"), {}, Completeness::all_or_error).file.name,
              AllOf(testing::EndsWith("odd\\x0A\\xFF.XBF"), Not(HasSubstr("\n"))));
  fs::copy(brep_, place_.file("odd\n\xFF.brep"));
  const Model shapes = read_model(place_.file("odd\n\xFF.brep"), {}, Completeness::all_or_error);
  EXPECT_EQ(shapes.products.front().name, "odd\\x0A\\xFF 1");
}

TEST_F(OwnFile, AByteOrderMarkIsNoPartOfTheFile) {
  for (const fs::path& file : {step_, brep_}) {
    const fs::path marked = place_.write("marked.txt", "\xEF\xBB\xBF" + bytes_of(file));
    EXPECT_TRUE(is_model_file(marked));
    EXPECT_EQ(read_model(marked, {}, Completeness::all_or_error).occurrences.size(),
              read_model(file, {}, Completeness::all_or_error).occurrences.size());
  }
}

TEST_F(OwnFile, SizesAreWrittenIntoStepOnly) {
  const Error error = test::error_of(
      [&] { return write_semantic_sizes(xbf_, place_.file("out.step"), {}, LengthUnit::mm, {}); });
  EXPECT_THAT(error.what(), HasSubstr("STEP file only"));
  EXPECT_FALSE(fs::exists(place_.file("out.step")));
}

TEST_F(OwnFile, EveryCutIsRefusedInOneLine) {
  for (const fs::path& file : {xbf_, brep_, binary_}) {
    const std::string whole = bytes_of(file);
    for (const double part : {0.02, 0.25, 0.5, 0.75, 0.95}) {
      SCOPED_TRACE(file.string() + " " + std::to_string(part));
      const auto length = static_cast<std::size_t>(part * static_cast<double>(whole.size()));
      EXPECT_THAT(
          refusal_of(place_.write("cut" + file.extension().string(), whole.substr(0, length)))
              .what(),
          Not(HasSubstr("took longer")));
    }
  }
}

TEST_F(OwnFile, WhatIsNoModelIsRefusedByWhatItIs) {
  for (const std::string ending : {".xbf", ".brep"}) {
    SCOPED_TRACE(ending);
    EXPECT_THAT(refusal_of(place_.write("empty" + ending, "")).what(), HasSubstr("empty"));
    EXPECT_THAT(refusal_of(place_.write("text" + ending, "a shopping list, of no use\n")).what(),
                HasSubstr("nor any other model"));
    EXPECT_TRUE(is_model_file(place_.file("text" + ending)));
    fs::create_directory(place_.file("folder" + ending));
    EXPECT_EQ(refusal_of(place_.file("folder" + ending)).code(), ErrorCode::file_access);
    ASSERT_EQ(mkfifo(place_.file("pipe" + ending).c_str(), 0600), 0);
    EXPECT_TRUE(is_model_file(place_.file("pipe" + ending)));
    EXPECT_EQ(refusal_of(place_.file("pipe" + ending)).code(), ErrorCode::file_access);
  }
}

TEST_F(OwnFile, OneThatIsTooLargeIsRefusedUnread) {
  fs::copy(xbf_, place_.file("huge.xbf"));
  fs::resize_file(place_.file("huge.xbf"), 2'000'000'000);  // a hole: it takes no room
  EXPECT_THAT(refusal_of(place_.file("huge.xbf")).what(), HasSubstr("more than the limit"));
}

TEST(IsModelFile, TheFirstLettersDecideWhateverTheName) {
  const Place place;
  EXPECT_TRUE(is_model_file(place.write("model.txt", "ISO-10303-21;\nHEADER;\n")));
  EXPECT_FALSE(is_model_file(place.write("job.step", "model = \"press.step\"\n")));
}

TEST(IsModelFile, TheEndingDecidesWhereThereIsNothingToRead) {
  for (const char* model : {"no/such/press.STP", "no/such/press.Brep", "no/such/press.xbf"}) {
    EXPECT_TRUE(is_model_file(model)) << model;
  }
  EXPECT_FALSE(is_model_file("no/such/press.job.toml"));
}

TEST(IsModelFile, APipeIsNotWaitedFor) {
  const Place place;
  ASSERT_EQ(mkfifo(place.file("pipe").c_str(), 0600), 0);
  EXPECT_FALSE(is_model_file(place.file("pipe")));
}

// Damage ends in one line, or in a model whose values are numbers; never in a crash or a hang.
TEST_F(OwnFile, AHundredFlippedBitsEndInAModelOrOneLine) {
  ReadLimits limits;
  limits.seconds = 20.0;
  limits.memory_mb = 2000.0;
  for (const fs::path& file : {xbf_, brep_, binary_}) {
    const std::string whole = bytes_of(file);
    int read = 0;
    for (unsigned i = 0; i < 100; ++i) {
      std::mt19937 random(i);
      std::string bytes = whole;
      const std::size_t at =
          std::uniform_int_distribution<std::size_t>(0, whole.size() - 1)(random);
      bytes[at] = static_cast<char>(static_cast<unsigned char>(bytes[at]) ^ (1U << (i % 8U)));
      const fs::path damaged = place_.write("flipped" + file.extension().string(), bytes);
      SCOPED_TRACE(file.string() + ", seed " + std::to_string(i));
      try {
        const Model model = read_model(damaged, limits, Completeness::all_or_error);
        ++read;
        for (const Product& product : model.products) {
          EXPECT_TRUE(std::isfinite(product.volume));
        }
      } catch (const Error& error) {
        EXPECT_THAT(error.what(), Not(HasSubstr("\n")));
        EXPECT_EQ(error.file(), damaged.string());
      }
    }
    RecordProperty("read" + file.filename().string(), read);
  }
}

}  // namespace spotblue::test::read_model_test
