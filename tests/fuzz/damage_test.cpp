#include <gtest/gtest.h>

#include <chrono>
#include <random>
#include <sstream>

#include "geometry/read/written_step.hpp"
#include "spotblue/base/error.hpp"
#include "spotblue/geometry/read.hpp"

namespace spotblue::damage_test {

using Random = std::mt19937;

std::size_t below(Random& random, std::size_t end) {
  return std::uniform_int_distribution<std::size_t>(0, end - 1)(random);
}

// A place behind the header, so that the damage hits what is read.
std::size_t somewhere(Random& random, const std::string& text) {
  const std::size_t data = text.find("DATA;") + 5;
  return data + below(random, text.size() - data - 1);
}

std::string flip_a_byte(Random& random, std::string text) {
  text[somewhere(random, text)] =
      static_cast<char>(below(random, 2) == 0 ? 32 + below(random, 95) : below(random, 256));
  return text;
}

std::string delete_a_span(Random& random, std::string text) {
  return text.erase(somewhere(random, text), 1 + below(random, 40));
}

std::string drop_a_line(Random& random, std::string text) {
  const std::size_t from = text.rfind('\n', somewhere(random, text)) + 1;
  return text.erase(from, text.find('\n', from) + 1 - from);
}

// Gives a reference the number of another.
std::string swap_references(Random& random, std::string text) {
  const auto reference_at = [&](std::size_t start) {
    const std::size_t from = text.find('#', start);
    return from == std::string::npos
               ? std::pair(text.rfind('#'), text.size())
               : std::pair(from, text.find_first_not_of("0123456789", from + 1));
  };
  const auto [a, a_end] = reference_at(somewhere(random, text));
  const auto [b, b_end] = reference_at(somewhere(random, text));
  return text.replace(a, a_end - a, text.substr(b, b_end - b));
}

std::string damaged(Random& random, const std::string& good, int kind) {
  switch (kind % 4) {
    case 0:
      return flip_a_byte(random, good);
    case 1:
      return delete_a_span(random, good);
    case 2:
      return drop_a_line(random, good);
    default:
      return swap_references(random, good);
  }
}

// The entities that decide what must arrive, in one text: where they are as they were, as much as
// ever must arrive. Counted here by the entities' names alone, apart from the reader's own scan.
std::string structure(const std::string& text) {
  std::string kept;
  std::istringstream records(text);
  for (std::string record; std::getline(records, record, ';');) {
    for (const char* name : {"PRODUCT", "SHAPE_REPRESENTATION", "ASSEMBLY_USAGE", "SOLID_BREP",
                             "CLOSED_SHELL", "ADVANCED_FACE", "FACE_BOUND"}) {
      if (record.find(name) != std::string::npos) {
        kept += record;
        break;
      }
    }
  }
  return kept;
}

struct Counts {
  std::size_t products = 0, occurrences = 0;
  int solids = 0, faces = 0;
  bool operator==(const Counts&) const = default;
};

std::ostream& operator<<(std::ostream& out, const Counts& c) {
  return out << c.products << " products, " << c.occurrences << " occurrences, " << c.solids
             << " solids, " << c.faces << " faces";
}

Counts counts_of(const Model& model) {
  Counts counts{model.products.size(), model.occurrences.size(), 0, 0};
  for (const Product& product : model.products) {
    counts.solids += product.solids;
    counts.faces += product.faces;
  }
  return counts;
}

constexpr Counts kGood{4, 7, 4, 15};

ReadLimits short_limits() {
  ReadLimits limits;
  limits.seconds = 20.0;
  limits.memory_mb = 2000.0;
  return limits;
}

TEST(Damage, TheGoodFileArrivesWhole) {
  const test::Folder folder;
  const auto file = folder.write("good.step", test::stand_step("MM", "AP214IS"));
  EXPECT_EQ(counts_of(read_step(file, short_limits(), Completeness::all_or_error)), kGood);
}

// Each either arrives as its text declares or is refused in one line, within its time.
TEST(Damage, TwoHundredRandomDamagesEndInATrueResultOrOneClearLine) {
  const std::string good = test::stand_step("MM", "AP214IS");
  const std::string whole = structure(good);
  const test::Folder folder;
  int refused = 0;
  int read = 0;
  for (int i = 0; i < 200; ++i) {
    SCOPED_TRACE(i);
    Random random(20260000U + static_cast<unsigned>(i));
    const std::string text = damaged(random, good, i);
    const auto file = folder.write("damaged.step", text);
    const auto start = std::chrono::steady_clock::now();
    try {
      const Model model = read_step(file, short_limits(), Completeness::all_or_error);
      ++read;
      if (structure(text) == whole) {
        EXPECT_EQ(counts_of(model), kGood) << "lost in silence";
      }
    } catch (const Error& problem) {
      ++refused;
      EXPECT_EQ(std::string(problem.what()).find('\n'), std::string::npos);
      EXPECT_EQ(problem.file(), file.string());
    }
    const std::chrono::duration<double> seconds = std::chrono::steady_clock::now() - start;
    EXPECT_LT(seconds.count(), 25.0);
  }
  EXPECT_EQ(read + refused, 200);
  RecordProperty("read", read);
  RecordProperty("refused", refused);
}

}  // namespace spotblue::damage_test
