#pragma once
/// @file
/// A table with aligned columns that shows rows which read alike once.

#include <cstddef>
#include <map>
#include <string>
#include <vector>

namespace spotblue {

/// Blanks before a table that stands under a heading.
inline constexpr std::size_t kTableIndent = 2;

enum class Align { left, right };

struct Column {
  std::string heading;
  Align align = Align::left;
};

class TextTable {
 public:
  explicit TextTable(std::vector<Column> columns) : columns_(std::move(columns)) {}

  /// One cell a column, of 1000 bytes at most; empty cells are allowed. A row that reads as one
  /// before is counted there.
  void add(const std::vector<std::string>& cells) { add(cells, cells); }
  /// The same, where `alike` decides which rows are one and the first one's cells are shown.
  void add(const std::vector<std::string>& cells, const std::vector<std::string>& alike);

  /// Heading and rows, each behind `indent` blanks; nothing when there are no rows. Columns whose
  /// cells are all empty are left out.
  /// Where that is wider than `width` (0: never), each row stands by itself, its cells behind their
  /// headings.
  [[nodiscard]] std::string text(std::size_t indent, std::size_t width = 0) const;

 private:
  struct Row {
    std::vector<std::string> cells;
    std::size_t count = 1;
  };

  [[nodiscard]] std::string aligned(std::size_t indent) const;
  [[nodiscard]] std::string row_by_row(std::size_t indent, std::size_t width) const;

  std::vector<Column> columns_;
  std::vector<Row> rows_;
  std::map<std::string, std::size_t> row_of_;
};

}  // namespace spotblue
