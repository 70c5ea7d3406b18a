// Words that people write for lengths, sizes, features, classes and threads. The first letter,
// '0' to '4', says which reader the rest is for; lines part what a reader takes in several texts.

#include <algorithm>
#include <array>
#include <cmath>
#include <vector>

#include "fuzz/fuzzing.hpp"
#include "geometry/model/semantic_class.hpp"
#include "spotblue/geometry/size_words.hpp"
#include "spotblue/geometry/sizes.hpp"
#include "spotblue/job/feature_name.hpp"
#include "spotblue/standards/b4_1.hpp"
#include "spotblue/standards/general_tolerances.hpp"
#include "spotblue/standards/iso286.hpp"
#include "spotblue/standards/threads.hpp"

using namespace spotblue;
using spotblue::fuzz::demand;

namespace {

std::vector<std::string> lines_of(std::string_view text, std::size_t most) {
  std::vector<std::string> lines;
  while (lines.size() + 1 < most) {
    const auto end = std::min(text.find('\n'), text.size());
    lines.emplace_back(text.substr(0, end));
    text.remove_prefix(std::min(end + 1, text.size()));
  }
  lines.emplace_back(text);
  return lines;
}

void demand_finite(double number) { demand(std::isfinite(number), "a length is a finite number"); }

void length(std::string_view text) {
  for (const LengthUnit unit : {LengthUnit::mm, LengthUnit::inch}) {
    const double mm = parse_length(text, unit).in_mm();
    demand_finite(mm);
    if (std::abs(mm) < 1e9) {
      const std::string shown = format_size(Length::mm(mm), unit);
      const double again = parse_length(shown, unit).in_mm();
      demand(std::abs(again - mm) <= 1.3e-4, "a length that is shown is read as the same");
    }
  }
}

void feature(std::string_view text) {
  const auto name = parse_feature_name(text, LengthUnit::inch);
  if (!name) {
    return;
  }
  demand(!name->sizes.empty() && !name->part.empty(), "a feature has a part and a size");
  demand(!name->ordinal || *name->ordinal >= 1, "ordinals count from 1");
  for (const Length size : name->sizes) {
    demand_finite(size.in_mm());
  }
}

void size(std::string_view text) {
  const SemanticSize size = parse_size(text, LengthUnit::mm);
  for (const auto& limits : {size.limits, size.deviations}) {
    if (limits) {
      demand_finite(limits->lower_mm);
      demand_finite(limits->upper_mm);
      demand(limits->lower_mm <= limits->upper_mm, "limits are in order");
    }
  }
  demand_finite(size.nominal_mm.value_or(0.0));
  (void)semantic_size_text(size);
}

void class_of_entity(std::string_view text) {
  const auto lines = lines_of(text, 5);
  if (lines.size() < 5) {
    return;
  }
  const ClassReading reading =
      read_class({lines[0], lines[1], lines[2], lines[3]}, writer_of(lines[4]));
  if (reading.doubt.empty()) {
    (void)size_kind(reading.tolerance_class);
  }
}

void standard(std::string_view text) {
  constexpr std::array<double, 6> kNominals{0.4, 3.0, 20.0, 499.0, 3150.0, 4000.0};
  if (!text.empty()) {
    // One of them a run: what is asked back for a word that is none takes milliseconds.
    const Length nominal =
        Length::mm(kNominals[static_cast<unsigned char>(text.back()) % kNominals.size()]);
    const std::array<void (*)(Length, std::string_view), 5> readers{
        [](Length n, std::string_view t) { demand_finite(it_value(n, t).in_mm()); },
        [](Length n, std::string_view t) { demand_finite(limits(n, t).width().in_mm()); },
        [](Length n, std::string_view t) { (void)fit(n, t); },
        [](Length n, std::string_view t) { (void)b4_1_fit(n, t); },
        [](Length n, std::string_view t) {
          (void)general_deviation(n, parse_general_tolerance(t));
        }};
    for (const auto& reader : readers) {
      fuzz::only_clear_errors("", [&] { reader(nominal, text); });
    }
  }
  (void)find_thread(text);
}

}  // namespace

int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t length_of_data) {
  constexpr std::array<void (*)(std::string_view), 5> kReaders{length, feature, size,
                                                               class_of_entity, standard};
  if (length_of_data == 0) {
    return 0;
  }
  const std::string_view text = fuzz::text_of(data + 1, length_of_data - 1);
  constexpr std::size_t kZeroIsFirst = 2;  // '0' + 2 is a multiple of five
  fuzz::only_clear_errors("", [&] { kReaders[(data[0] + kZeroIsFirst) % kReaders.size()](text); });
  return 0;
}
