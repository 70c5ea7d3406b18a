#pragma once
/// @file
/// Rows of a comma-separated file of published values, by column name.

#include <cstddef>
#include <filesystem>
#include <fstream>
#include <map>
#include <stdexcept>
#include <string>
#include <vector>

namespace spotblue::test {

using CsvRow = std::map<std::string, std::string>;

/// Cells of one line; a cell in double quotes may hold commas.
inline std::vector<std::string> csv_cells(const std::string& line) {
  std::vector<std::string> cells(1);
  bool quoted = false;
  for (const char c : line) {
    if (c == '"') {
      quoted = !quoted;
    } else if (c == ',' && !quoted) {
      cells.emplace_back();
    } else if (c != '\r') {
      cells.back() += c;
    }
  }
  return cells;
}

/// All rows of the file. Throws when it is missing, empty or ragged, so that no table test can pass
/// on nothing.
inline std::vector<CsvRow> csv_rows(const std::string& name) {
  std::ifstream file(std::filesystem::path(SPOTBLUE_REFERENCE) / name);
  std::string line;
  if (!std::getline(file, line)) {
    throw std::runtime_error("cannot read tests/reference/" + name);
  }
  const std::vector<std::string> columns = csv_cells(line);
  std::vector<CsvRow> rows;
  while (std::getline(file, line)) {
    if (line.empty()) {
      continue;
    }
    const std::vector<std::string> cells = csv_cells(line);
    if (cells.size() != columns.size()) {
      throw std::runtime_error("tests/reference/" + name + ": ragged line: " + line);
    }
    CsvRow& row = rows.emplace_back();
    for (std::size_t i = 0; i < cells.size(); ++i) {
      row[columns[i]] = cells[i];
    }
  }
  if (rows.empty()) {
    throw std::runtime_error("tests/reference/" + name + " holds no rows");
  }
  return rows;
}

/// All rows of SPOTBLUE_REFERENCE/name, read once: tables are asked for a row at a time.
inline const std::vector<CsvRow>& read_reference(const std::string& name) {
  static std::map<std::string, std::vector<CsvRow>> files;
  const auto known = files.find(name);
  return known != files.end() ? known->second : files.emplace(name, csv_rows(name)).first->second;
}

/// A cell as a number; throws when it is none.
inline double number(const CsvRow& row, const std::string& column) {
  return std::stod(row.at(column));
}

/// The distinct values of a column, sorted.
inline std::vector<std::string> distinct(const std::vector<CsvRow>& rows,
                                         const std::string& column) {
  std::map<std::string, int> seen;
  for (const CsvRow& row : rows) {
    ++seen[row.at(column)];
  }
  std::vector<std::string> values;
  values.reserve(seen.size());
  for (const auto& [value, count] : seen) {
    values.push_back(value);
  }
  return values;
}

}  // namespace spotblue::test
