#pragma once
// Names as a file gives them, made fit to be shown and to identify.

#include <string>
#include <string_view>
#include <unordered_map>
#include <unordered_set>

namespace spotblue {

// One line of valid UTF-8 without blanks at its ends; bytes that are none are taken for Latin-1.
[[nodiscard]] std::string clean_name(std::string_view raw);

// The name of a component in its assembly: its own where the file gives it one, else its
// product's. Numbers and the labels that writers put for want of a name are no names.
[[nodiscard]] std::string component_name(const std::string& own, const std::string& product,
                                         const std::string& otherwise);

// Hands out each name once: "Wheel", then "Wheel (2)", "Wheel (3)".
class UniqueNames {
 public:
  [[nodiscard]] std::string take(const std::string& name);

 private:
  std::unordered_set<std::string> taken_;
  std::unordered_map<std::string, int> last_;
};

}  // namespace spotblue
