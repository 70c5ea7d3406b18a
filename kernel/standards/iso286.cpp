#include "spotblue/standards/iso286.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <iterator>
#include <optional>
#include <span>
#include <vector>

#include "base/require.hpp"
#include "spotblue/base/ascii.hpp"
#include "spotblue/base/error.hpp"
#include "spotblue/base/unit.hpp"
#include "standards/iso286_deviations.hpp"
#include "standards/iso286_grades.hpp"
#include "standards/tolerance_class.hpp"

namespace spotblue {
namespace {

namespace iso286_rows = iso286_tables;

constexpr double kLargest_mm = 3150.0;
constexpr const char* kClassArgument = "tolerance_class";
constexpr std::size_t kStepsTo500 = 25;
constexpr double kStepSlack_mm = 1e-9;  // a nominal that came through inches still ends its step

struct Range_um {
  double lower;
  double upper;
};

std::string size_text(Length nominal) { return format_size(nominal, LengthUnit::mm) + " mm"; }

void check_nominal(Length nominal) {
  require_positive(nominal.in_mm(), "nominal_mm", "mm");
  if (nominal.in_mm() > kLargest_mm + kStepSlack_mm) {
    throw Error(ErrorCode::not_in_standard, {"", "nominal_mm"},
                fmt::format("ISO 286 ends at 3150 mm, got {}", size_text(nominal)),
                "give plain limits instead of a class");
  }
}

std::size_t step_of(Length nominal, std::span<const double> up_to) {
  const auto step = std::lower_bound(up_to.begin(), up_to.end(), nominal.in_mm() - kStepSlack_mm);
  return static_cast<std::size_t>(step - up_to.begin());
}

bool over(Length nominal, double size_mm) { return nominal.in_mm() > size_mm + kStepSlack_mm; }

std::optional<double> grade_um(Length nominal, int grade) {
  const double width = iso286_rows::kIt[step_of(nominal, iso286_rows::kItStepUpTo)]
                                       [static_cast<std::size_t>(grade - kGrade01)];
  // Note to ISO 286-1 table 1: IT14 to IT18 not up to 1 mm.
  if (width == iso286_rows::kNoGrade || (grade >= 14 && !over(nominal, 1.0))) {
    return std::nullopt;
  }
  return width;
}

std::optional<double> found(int um) {
  return um == iso286_rows::kNone ? std::nullopt : std::optional<double>(um);
}

// Fundamental deviation of a shaft letter other than j and js: es for a to h, ei for k to zc.
std::optional<double> shaft_deviation_um(Length nominal, const ToleranceClass& cls) {
  const std::size_t step = step_of(nominal, iso286_rows::kStepUpTo);
  const auto same_letters = [&cls](const auto& row) { return row.letters == cls.letters; };
  if (step >= kStepsTo500) {
    const auto row = std::find_if(iso286_rows::kShaftAbove500.begin(),
                                  iso286_rows::kShaftAbove500.end(), same_letters);
    const bool usual_grade = cls.grade >= 6 && cls.grade <= 16;
    if (row == iso286_rows::kShaftAbove500.end() || (!usual_grade && cls.letters != "h")) {
      return std::nullopt;
    }
    return row->um[step - kStepsTo500];
  }
  if ((cls.letters == "a" || cls.letters == "b") && !over(nominal, 1.0)) {
    return std::nullopt;  // note to ISO 286-1 iso286_rows 2 and 4
  }
  const auto row =
      std::find_if(iso286_rows::kShaft.begin(), iso286_rows::kShaft.end(), same_letters);
  return row == iso286_rows::kShaft.end() ? std::nullopt : found(row->um[step]);
}

std::optional<Range_um> shaft_j_um(Length nominal, int grade, double width) {
  const std::size_t step = step_of(nominal, iso286_rows::kStepUpTo);
  std::optional<double> lower;
  if (step < kStepsTo500 && (grade == 5 || grade == 6)) {
    lower = iso286_rows::kShaftJ5J6[step];
  } else if (step < kStepsTo500 && grade == 7) {
    lower = iso286_rows::kShaftJ7[step];
  } else if (step == 0 && grade == 8) {
    lower = iso286_rows::kShaftJ8UpTo3;
  }
  return lower ? std::optional<Range_um>({*lower, *lower + width}) : std::nullopt;
}

std::optional<Range_um> hole_j_um(Length nominal, int grade, double width) {
  const std::size_t step = step_of(nominal, iso286_rows::kStepUpTo);
  if (step >= kStepsTo500 || grade < 6 || grade > 8) {
    return std::nullopt;
  }
  const double upper = iso286_rows::kHoleJ6J7J8[static_cast<std::size_t>(grade - 6)][step];
  return Range_um{upper - width, upper};
}

std::optional<Range_um> shaft_um(Length nominal, const ToleranceClass& cls, double width) {
  const auto deviation = shaft_deviation_um(nominal, cls);
  if (!deviation) {
    return std::nullopt;
  }
  if (cls.letters.front() <= 'h') {
    return Range_um{*deviation - width, *deviation};
  }
  // ISO 286-1 table 5: k is zero outside grades 4 to 7.
  const bool zero = cls.letters == "k" && (cls.grade < 4 || cls.grade > 7);
  const double lower = zero ? 0.0 : *deviation;
  return Range_um{lower, lower + width};
}

// ES of K to ZC up to 500 mm from the shaft deviation of the same letter, ISO 286-1 table 3.
std::optional<double> small_hole_upper_um(Length nominal, const ToleranceClass& cls,
                                          double shaft_deviation) {
  const bool centred = cls.letters == "k" || cls.letters == "m" || cls.letters == "n";
  if (cls.grade < 3 || (cls.letters == "k" && cls.grade > 8 && over(nominal, 3.0))) {
    return std::nullopt;
  }
  if (cls.letters == "m" && cls.grade == 6 && over(nominal, 250.0) && !over(nominal, 315.0)) {
    return iso286_rows::kHoleM6Over250UpTo315;
  }
  if (cls.grade <= (centred ? 8 : 7)) {
    const std::size_t step = step_of(nominal, iso286_rows::kItStepUpTo);
    return -shaft_deviation + iso286_rows::kDelta[step][static_cast<std::size_t>(cls.grade - 3)];
  }
  if (cls.letters == "n" && !over(nominal, 1.0)) {
    return std::nullopt;  // note to ISO 286-1 table 3: N above grade 8 not up to 1 mm
  }
  if (cls.letters == "n" && over(nominal, 3.0)) {
    return 0.0;
  }
  return -shaft_deviation;
}

std::optional<Range_um> hole_um(Length nominal, const ToleranceClass& cls, double width) {
  const auto deviation = shaft_deviation_um(nominal, cls);
  if (!deviation) {
    return std::nullopt;
  }
  if (cls.letters.front() <= 'h') {
    return Range_um{-*deviation, -*deviation + width};
  }
  const auto upper = over(nominal, 500.0) ? std::optional<double>(-*deviation)
                                          : small_hole_upper_um(nominal, cls, *deviation);
  return upper ? std::optional<Range_um>({*upper - width, *upper}) : std::nullopt;
}

std::optional<Range_um> deviations_um(Length nominal, const ToleranceClass& cls) {
  const auto width = grade_um(nominal, cls.grade);
  if (!width) {
    return std::nullopt;
  }
  if (cls.letters == "js") {
    return Range_um{-*width / 2.0, *width / 2.0};
  }
  const bool hole = cls.kind == SizeKind::hole;
  if (cls.letters == "j") {
    return hole ? hole_j_um(nominal, cls.grade, *width) : shaft_j_um(nominal, cls.grade, *width);
  }
  return hole ? hole_um(nominal, cls, *width) : shaft_um(nominal, cls, *width);
}

bool defined(Length nominal, const ToleranceClass& cls) {
  return deviations_um(nominal, cls).has_value();
}

// The nearest grade of the same letters, and the nearest letters either way of the same grade.
std::string nearest_defined(Length nominal, const ToleranceClass& cls) {
  std::vector<std::string> names;
  for (int distance = 1; distance <= kGradeLast - kGrade01 && names.empty(); ++distance) {
    for (const int grade : {cls.grade - distance, cls.grade + distance}) {
      const ToleranceClass other{cls.kind, cls.letters, grade};
      if (grade >= kGrade01 && grade <= kGradeLast && defined(nominal, other)) {
        names.push_back(other.text());
      }
    }
  }
  const auto here = std::find(kDeviationLetters.begin(), kDeviationLetters.end(), cls.letters);
  const auto exists = [&](std::string_view letters) {
    return defined(nominal, {cls.kind, std::string(letters), cls.grade});
  };
  const auto looser =
      std::find_if(std::make_reverse_iterator(here), kDeviationLetters.rend(), exists);
  const auto tighter = std::find_if(here, kDeviationLetters.end(), exists);
  if (looser != kDeviationLetters.rend()) {
    names.push_back(ToleranceClass{cls.kind, std::string(*looser), cls.grade}.text());
  }
  if (tighter != kDeviationLetters.end()) {
    names.push_back(ToleranceClass{cls.kind, std::string(*tighter), cls.grade}.text());
  }
  return fmt::format("{}", fmt::join(names, ", "));
}

Range_um checked_um(Length nominal, const ToleranceClass& cls, const std::string& argument) {
  check_nominal(nominal);
  const auto range = deviations_um(nominal, cls);
  if (!range) {
    throw Error(ErrorCode::not_in_standard, {"", argument},
                fmt::format("ISO 286 defines no class {} at {}", cls.text(), size_text(nominal)),
                fmt::format("nearest it defines there: {}", nearest_defined(nominal, cls)));
  }
  return *range;
}

Limits around(Length nominal, Range_um range) {
  return {nominal + Length::um(range.lower), nominal + Length::um(range.upper)};
}

}  // namespace

Length it_value(Length nominal, std::string_view grade) {
  check_nominal(nominal);
  const auto number = parse_grade(grade.starts_with("IT") ? grade.substr(2) : grade);
  if (!number) {
    throw Error(ErrorCode::bad_input, {"", "grade"},
                fmt::format("\"{}\" is not a tolerance grade", grade),
                "use IT01, IT0, IT1 to IT18");
  }
  const auto width = grade_um(nominal, *number);
  if (!width) {
    throw Error(
        ErrorCode::not_in_standard, {"", "grade"},
        fmt::format("ISO 286 has no grade {} at {}", grade, size_text(nominal)),
        *number >= 14 ? "IT13 is the coarsest up to 1 mm" : "IT1 is the finest over 500 mm");
  }
  return Length::um(*width);
}

SizeKind size_kind(std::string_view tolerance_class) {
  return parse_class(tolerance_class, kClassArgument).kind;
}

Deviations deviations(Length nominal, std::string_view tolerance_class) {
  const Range_um range =
      checked_um(nominal, parse_class(tolerance_class, kClassArgument), kClassArgument);
  return {Length::um(range.lower), Length::um(range.upper)};
}

Limits limits(Length nominal, std::string_view tolerance_class) {
  return around(nominal,
                checked_um(nominal, parse_class(tolerance_class, kClassArgument), kClassArgument));
}

Fit fit(Length nominal, std::string_view text) {
  const std::size_t stroke = text.find('/');
  if (stroke == std::string_view::npos) {
    throw Error(ErrorCode::bad_input, {"", "text"}, fmt::format("\"{}\" is not a fit", text),
                "write hole class, stroke, shaft class, like H7/s6");
  }
  const ToleranceClass hole = parse_class(trimmed(text.substr(0, stroke)), "text");
  const ToleranceClass shaft = parse_class(trimmed(text.substr(stroke + 1)), "text");
  if (hole.kind != SizeKind::hole || shaft.kind != SizeKind::shaft) {
    throw Error(ErrorCode::bad_input, {"", "text"},
                fmt::format("\"{}\" is not a hole class and then a shaft class", text),
                "write the hole in capitals first, like H7/s6");
  }
  const Range_um bore = checked_um(nominal, hole, "text");
  const Range_um pin = checked_um(nominal, shaft, "text");
  const Length least = Length::um(bore.lower - pin.upper);
  const Length greatest = Length::um(bore.upper - pin.lower);
  return {around(nominal, bore), around(nominal, pin), least, greatest, fit_kind(least, greatest)};
}

}  // namespace spotblue
