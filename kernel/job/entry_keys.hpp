#pragma once
// Small readings that several lists of the job file share.

#include <span>
#include <string>
#include <string_view>
#include <utility>

#include "job/toml_table.hpp"
#include "spotblue/base/interval.hpp"
#include "spotblue/job/feature_name.hpp"

namespace spotblue {

/// Refuses an entry whose `text` stands already in `seen`, naming the earlier line.
class FirstUse {
 public:
  void note(const TomlTable& entry, std::string_view key, const std::string& text);

 private:
  std::vector<std::pair<std::string, int>> seen_;
};

/// Two lengths, the lesser first.
[[nodiscard]] Limits read_limits(const TomlTable& entry, std::string_view key, LengthUnit unit);
/// A length > 0.
[[nodiscard]] Length read_size(const TomlTable& entry, std::string_view key, LengthUnit unit);
[[nodiscard]] std::optional<Length> find_size(const TomlTable& entry, std::string_view key,
                                              LengthUnit unit);
/// A length >= 0.
[[nodiscard]] Length read_tolerance(const TomlTable& entry, std::string_view key, LengthUnit unit);
/// Temperatures that solid metal parts have in service, deg C.
inline constexpr Interval kTemperatures_c{-200.0, 600.0};
/// A number within the range.
[[nodiscard]] double read_number(const TomlTable& entry, std::string_view key, Interval range);
[[nodiscard]] std::optional<double> find_number(const TomlTable& entry, std::string_view key,
                                                Interval range);
/// A feature's name, whose word must be one of `words`.
[[nodiscard]] FeatureName read_feature(const TomlTable& entry, std::string_view key,
                                       LengthUnit unit, std::span<const FeatureWord> words);
/// Exactly two different texts.
[[nodiscard]] std::pair<std::string, std::string> read_pair(const TomlTable& entry,
                                                            std::string_view key);
/// The pair in one order, so that the other order is the same entry: `A" with "B`.
[[nodiscard]] std::string pair_text(std::string a, std::string b);
/// Exactly one of `keys` must be there; gives it.
[[nodiscard]] std::string_view only_one_of(const TomlTable& entry,
                                           std::span<const std::string_view> keys);
/// The position of the text among `known`; the nearest is named when it is none of them.
[[nodiscard]] std::size_t read_choice(const TomlTable& entry, std::string_view key,
                                      std::string_view text,
                                      std::span<const std::string_view> known);
/// The value of an enumeration whose word the text is.
template <class E>
[[nodiscard]] E read_word(const TomlTable& entry, std::string_view key, std::string_view text) {
  return static_cast<E>(read_choice(entry, key, text, kWordsOf<E>.all));
}

}  // namespace spotblue
