#pragma once
// The [[part]] tables of a mock-up file.

#include <map>
#include <string>

#include "job/toml_table.hpp"
#include "spotblue/geometry/mockup_part.hpp"

namespace spotblue {

/// Where something begins.
struct FileLine {
  std::string file;
  int line = 0;
};
/// Where things begin, by their place in words, for errors found later.
using MockupLines = std::map<std::string, FileLine>;

/// One part and the lines of its steps, which are added to `lines`.
class MockupPartReader {
 public:
  MockupPartReader(LengthUnit unit, MockupLines& lines) : unit_(unit), lines_(lines) {}
  [[nodiscard]] MockupPart read(TomlTable table) const;

 private:
  [[nodiscard]] TurnedPart read_turned(const TomlTable& table) const;
  [[nodiscard]] BlockPart read_block(const TomlTable& table) const;
  [[nodiscard]] RingPart read_ring(const TomlTable& table) const;
  [[nodiscard]] KeyPart read_key(const TomlTable& table) const;
  [[nodiscard]] std::vector<Step> read_outside(const TomlTable& table) const;
  [[nodiscard]] std::vector<Step> read_inside(const TomlTable& table, double part_length) const;
  [[nodiscard]] std::vector<Bore> read_bores(const TomlTable& table, PartFace usual) const;
  void read_step(const TomlTable& table, Step& step) const;
  [[nodiscard]] double diameter_of(const TomlTable& table) const;
  [[nodiscard]] double mm(const TomlTable& table, std::string_view key) const;
  [[nodiscard]] double mm_or(const TomlTable& table, std::string_view key, double absent) const;
  [[nodiscard]] std::optional<double> find_mm(const TomlTable& table, std::string_view key) const;
  [[nodiscard]] Point point(const TomlTable& table, std::string_view key) const;
  [[nodiscard]] EdgeBreak read_break(const TomlTable& table, const char* end) const;

  /// Every table of a list through `read`, its line noted and unknown keys refused.
  template <typename Item, typename Read>
  std::vector<Item> list(const TomlTable& table, std::string_view key, Read read) const {
    std::vector<Item> items;
    for (const TomlTable& entry : table.tables(key)) {
      lines_[entry.place()] = {entry.file(), entry.line()};
      items.push_back(read(entry));
      entry.refuse_unknown();
    }
    return items;
  }

  LengthUnit unit_;
  MockupLines& lines_;
};

/// Degrees under `key` as rad; 0 when absent.
[[nodiscard]] double read_angle(const TomlTable& table, std::string_view key);

}  // namespace spotblue
