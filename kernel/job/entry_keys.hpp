#pragma once
// Small readings that several lists of the job file share.

#include <array>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <utility>

#include "job/toml_table.hpp"
#include "spotblue/base/interval.hpp"
#include "spotblue/base/length.hpp"
#include "spotblue/base/unit.hpp"

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
/// Heights of roughness, Rz, um.
inline constexpr Interval kHeights_um{0.0, 500.0};
/// A number within the range.
[[nodiscard]] double read_number(const TomlTable& entry, std::string_view key, Interval range);
[[nodiscard]] std::optional<double> find_number(const TomlTable& entry, std::string_view key,
                                                Interval range);
/// A feature's name, "Wheel: bore", or with the size it has in the model, "Wheel: bore 44".
[[nodiscard]] std::string read_feature(const TomlTable& entry, std::string_view key);
/// Two features' names.
[[nodiscard]] std::pair<std::string, std::string> read_features(const TomlTable& entry,
                                                                std::string_view key);
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

/// How a key ends and what 0 and 1 of its unit are in the first one's.
struct UnitKey {
  std::string_view ending;
  double of_one = 1.0;
  double of_none = 0.0;
};

// By the definitions of the units: 1 in is 25.4 mm, 1 lb 0.45359237 kg, standard gravity 9.80665
// m/s2, 0 deg C 32 deg F.
inline constexpr double kNewtonOfLbf = 4.4482216152605;
inline constexpr double kMpaOfPsi = 0.00689475729316836;
inline constexpr std::array<UnitKey, 2> kForces{{{"_n"}, {"_lbf", kNewtonOfLbf}}};
inline constexpr std::array<UnitKey, 3> kTorques{
    {{"_nm"}, {"_lb_ft", kNewtonOfLbf * 0.3048}, {"_lb_in", kNewtonOfLbf * 0.0254}}};
inline constexpr std::array<UnitKey, 2> kTemperatures{{{"_c"}, {"_f", 1.0 / 1.8, -32.0 / 1.8}}};
inline constexpr std::array<UnitKey, 2> kRoughnesses{{{"_um"}, {"_uin", 0.0254}}};
inline constexpr std::array<UnitKey, 2> kStrengths{{{"_mpa"}, {"_psi", kMpaOfPsi}}};
inline constexpr std::array<UnitKey, 2> kModuli{{{"_gpa"}, {"_psi", kMpaOfPsi / 1000.0}}};
inline constexpr std::array<UnitKey, 2> kExpansions{{{"_um_per_m_k"}, {"_uin_per_in_f", 1.8}}};

/// In the first unit; nothing where no key is there.
/// @param range  in the first unit; an error tells it in that of the key.
/// @throws Error bad_input for a number out of range, and for two keys for one number.
[[nodiscard]] std::optional<double> find_in_units(const TomlTable& entry, std::string_view name,
                                                  std::span<const UnitKey> units, Interval range);
/// @throws Error bad_input as find_in_units, and where no key is there.
[[nodiscard]] double read_in_units(const TomlTable& entry, std::string_view name,
                                   std::span<const UnitKey> units, Interval range);

}  // namespace spotblue
