#pragma once
// The text of a limits-and-fits entity (ISO 10303-47) as a class of ISO 286-1, or why it is none.

#include <string>
#include <string_view>

namespace spotblue {

// As the file spells it: form variance "H", zone variance "hole", grade "7", and where the class is
// from. Any of them may be empty.
struct ClassText {
  std::string form, zone, grade, source;
};

// What wrote the file, by its header's preprocessor entry; Open CASCADE's own writer puts the grade
// two too high.
enum class Writer { other, open_cascade_with_known_fault, open_cascade_perhaps_at_fault };

[[nodiscard]] Writer writer_of(std::string_view preprocessor_version);

struct ClassReading {
  std::string tolerance_class;  // "H7"; empty where there is doubt
  std::string doubt;            // why it is no class
  std::string remark;           // how a class was made of it, where not as the standard has it
};

// An odd spelling that can mean but one class ('G6' without a grade, grade 'IT6') is read with a
// remark; whatever contradicts itself or the standard is doubted. A grade by Open CASCADE's writer
// is put right, unless the entity names a source: that writer names none, and our repairs do.
[[nodiscard]] ClassReading read_class(const ClassText& text, Writer writer);

// What our own writing and repairs put as the source of a class.
inline constexpr std::string_view kClassSource = "ISO 286-1";

}  // namespace spotblue
