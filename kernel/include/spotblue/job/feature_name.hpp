#pragma once
/// @file
/// The name of a feature as a person writes it by its size, taken apart: "Wheel: bore 44 @ 12".

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "spotblue/base/export.hpp"
#include "spotblue/base/length.hpp"
#include "spotblue/base/unit.hpp"
#include "spotblue/base/words.hpp"

namespace spotblue {

/// What a feature's name begins with.
enum class FeatureWord { bore, outside, taper_bore, taper, face, slot, width };
constexpr auto describe(const FeatureWord*) {
  return words("What a feature's name begins with.", "bore", "outside", "taper bore", "taper",
               "face", "slot", "width");
}

[[nodiscard]] SPOTBLUE_EXPORT std::string_view feature_word_name(FeatureWord word);

struct FeatureName {
  std::string part;
  FeatureWord word = FeatureWord::bore;
  std::vector<Length> sizes;
  std::optional<Length> position;
  std::optional<int> ordinal;
};
constexpr void describe(auto& fields, const FeatureName*) {
  fields.value("FeatureName", "A feature's name, taken apart.")
      .member("part", &FeatureName::part, "before the last \": \"")
      .member("word", &FeatureName::word, "\"bore\", \"outside\", \"face\", ...")
      .member("sizes_mm", &FeatureName::sizes,
              "one, or two for tapers (\"20/24\") and faces (\"80x45\")")
      .member("position_mm", &FeatureName::position, "after \" @ \", or None")
      .member("ordinal", &FeatureName::ordinal, "after \" #\", from 1, or None");
}

/// Takes a name apart; bare numbers are in `unit`, others bring their own ("bore 1 3/4 in").
/// Nothing when the text is no feature name.
[[nodiscard]] SPOTBLUE_EXPORT std::optional<FeatureName> parse_feature_name(std::string_view text,
                                                                            LengthUnit unit);

/// The size in a feature's sized name, in the unit, as it is shown beside the name: "44", "20/24",
/// of a face "60x45 at 12". Empty when the text is no such name.
/// @param sized_name  as a model has it, in mm: "bore 44", "face 60x45 @ 12".
[[nodiscard]] SPOTBLUE_EXPORT std::string feature_size_text(std::string_view sized_name,
                                                            LengthUnit unit);

/// The part of "Wheel: bore" before its last ": "; empty without one.
[[nodiscard]] SPOTBLUE_EXPORT std::string part_of_feature(std::string_view name);

struct PartialFeatureName {
  std::string part;
  std::optional<FeatureWord> word;
  std::vector<Length> sizes;
  std::optional<Length> position;
  std::optional<int> ordinal;
};
constexpr void describe(auto& fields, const PartialFeatureName*) {
  fields
      .value("PartialFeatureName",
             "A feature's name of which a person said only so much; what was not said is empty.")
      .member("part", &PartialFeatureName::part, "empty when none is said")
      .member("word", &PartialFeatureName::word,
              "\"bore\", ...; None for \"length\", the distance of two faces")
      .member("sizes_mm", &PartialFeatureName::sizes, "none, one, or two for tapers and faces")
      .member("position_mm", &PartialFeatureName::position, "or None")
      .member("ordinal", &PartialFeatureName::ordinal, "from 1, or None");
}

/// Takes apart what begins with a part or with the word, whatever blanks stand between: "bore",
/// "Wheel: bore 44", "outside 30@12 #2", "length 80". Sizes as parse_feature_name; the position is
/// in mm, as the names of a model have it.
/// Nothing when the text begins so with no word.
/// @throws Error bad_input when what stands for a size is no length.
[[nodiscard]] SPOTBLUE_EXPORT std::optional<PartialFeatureName> parse_partial_feature_name(
    std::string_view text, LengthUnit unit);

}  // namespace spotblue
