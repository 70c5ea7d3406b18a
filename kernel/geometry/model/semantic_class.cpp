#include "geometry/model/semantic_class.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <optional>

#include "spotblue/base/ascii.hpp"
#include "spotblue/base/error.hpp"
#include "spotblue/standards/iso286.hpp"

namespace spotblue {
namespace {

// ISO 286-1:2010, table 1.
constexpr std::array<std::string_view, 20> kGrades{"01", "0",  "1",  "2",  "3",  "4",  "5",
                                                   "6",  "7",  "8",  "9",  "10", "11", "12",
                                                   "13", "14", "15", "16", "17", "18"};

// Versions of Open CASCADE whose writer writes H7 with grade 9: so say its sources of 7.5.0
// to 8.0.1, and files written by 7.6.3.
constexpr std::array<std::string_view, 6> kKnownFaulty{"7.5", "7.6", "7.7", "7.8", "7.9", "8.0"};

std::string without_blanks(std::string_view text) {
  const auto first = text.find_first_not_of(" \t");
  const auto last = text.find_last_not_of(" \t");
  return first == std::string_view::npos ? std::string()
                                         : std::string(text.substr(first, last - first + 1));
}

std::string as_written(const ClassText& text) {
  return fmt::format("'{}', '{}', '{}'", text.form, text.zone, text.grade);
}

ClassReading doubted(const ClassText& text, const std::string& why) {
  return {"", fmt::format("its class is written {}: {}", as_written(text), why), ""};
}

std::optional<std::size_t> grade_place(std::string_view grade) {
  const auto found = std::find(kGrades.begin(), kGrades.end(), grade);
  return found == kGrades.end() ? std::nullopt
                                : std::optional(static_cast<std::size_t>(found - kGrades.begin()));
}

struct Spelt {
  std::string letters, grade;
  bool odd = false;
};

// Letters and grade wherever the file has put them; nothing when both places give a grade.
std::optional<Spelt> taken_apart(const ClassText& text) {
  Spelt spelt;
  const std::string form = without_blanks(text.form);
  const auto digit = std::find_if(form.begin(), form.end(), is_ascii_digit);
  spelt.letters.assign(form.begin(), digit);
  spelt.grade = without_blanks(text.grade);
  if (digit != form.end()) {
    if (!spelt.grade.empty()) {
      return std::nullopt;
    }
    spelt.grade.assign(digit, form.end());
    spelt.odd = true;
  } else if (ascii_lower(spelt.grade).starts_with("it")) {
    spelt.grade.erase(0, 2);
    spelt.odd = true;
  }
  return spelt;
}

// Empty when the letters' case and the zone's word agree.
std::string zone_contradiction(const std::string& tolerance_class, const std::string& zone) {
  const std::string word = ascii_lower(without_blanks(zone));
  if (word.empty()) {
    return "";
  }
  if (word != "hole" && word != "shaft") {
    return fmt::format("'{}' is neither hole nor shaft", zone);
  }
  const bool hole = size_kind(tolerance_class) == SizeKind::hole;
  return hole == (word == "hole")
             ? ""
             : fmt::format("{} is a class of {}", tolerance_class, hole ? "holes" : "shafts");
}

ClassReading put_right(const ClassText& text, const Spelt& spelt, Writer writer) {
  if (writer == Writer::open_cascade_perhaps_at_fault) {
    return doubted(text,
                   "some versions of the program that wrote the file write grades two too high, "
                   "and which this is cannot be told");
  }
  const auto written = std::find(kGrades.begin(), kGrades.end(), spelt.grade);
  const bool beyond = spelt.grade == "19" || spelt.grade == "20";
  if ((written == kGrades.end() && !beyond) || spelt.grade == "0" || spelt.grade == "1") {
    return doubted(text, "the program that wrote the file never writes that grade by itself");
  }
  const std::string grade = std::to_string(std::stoi(spelt.grade) - 2);
  return {spelt.letters + grade, "",
          fmt::format("grade {} is read as {}: Open CASCADE's writer, which wrote this file, "
                      "writes every grade two too high",
                      spelt.grade, grade)};
}

}  // namespace

Writer writer_of(std::string_view preprocessor_version) {
  constexpr std::string_view kOpenCascade = "Open CASCADE STEP processor ";
  if (!preprocessor_version.starts_with(kOpenCascade)) {
    return Writer::other;
  }
  // "7.6" of "7.6.3" and of "7.6": the maintenance release is no part of what is known.
  const std::string_view version = preprocessor_version.substr(kOpenCascade.size());
  const auto end = version.find_first_not_of("0123456789", version.find('.') + 1);
  const bool known = std::ranges::find(kKnownFaulty, version.substr(0, end)) != kKnownFaulty.end();
  return known ? Writer::open_cascade_with_known_fault : Writer::open_cascade_perhaps_at_fault;
}

ClassReading read_class(const ClassText& text, Writer writer) {
  const auto spelt = taken_apart(text);
  if (!spelt) {
    return doubted(text, "it gives two grades");
  }
  ClassReading reading;
  // That writer puts 01 right and never spells a class in any odd way.
  const bool suspect =
      writer != Writer::other && text.source.empty() && !spelt->odd && spelt->grade != "01";
  if (suspect) {
    reading = put_right(text, *spelt, writer);
  } else {
    reading.tolerance_class = spelt->letters + spelt->grade;
    if (spelt->odd) {
      reading.remark = fmt::format(
          "its class is written {}, not as the standard has it; it can "
          "only mean {}",
          as_written(text), reading.tolerance_class);
    }
  }
  if (!reading.doubt.empty()) {
    return reading;
  }
  const bool lettered = !spelt->letters.empty();
  if (!lettered || !grade_place(reading.tolerance_class.substr(spelt->letters.size()))) {
    return doubted(text, lettered ? "that is no grade" : "it has no letter");
  }
  try {
    const std::string against = zone_contradiction(reading.tolerance_class, text.zone);
    return against.empty() ? reading : doubted(text, against);
  } catch (const Error& problem) {
    return doubted(text, problem.rule());
  }
}

}  // namespace spotblue
