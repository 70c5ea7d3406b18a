#include "report/text_table.hpp"

#include <algorithm>
#include <sstream>
#include <string_view>
#include <utility>

#include "report/fitted_text.hpp"
#include "report/text_words.hpp"
#include "spotblue/base/shown_name.hpp"

namespace spotblue {
namespace {

constexpr std::size_t kBetween = 2;  // blanks between columns
// A name without end would make every row as long.
constexpr std::size_t kMostCell = 1000;

void append_cell(std::string& line, const std::string& cell, std::size_t width, Align align) {
  const std::size_t gap = width - shown_width(cell);
  line.append(align == Align::right ? gap : 0, ' ');
  line += cell;
  line.append(align == Align::left ? gap : 0, ' ');
  line.append(kBetween, ' ');
}

void end_line(std::string& text, std::string line) {
  line.erase(line.find_last_not_of(' ') + 1);
  text += line + '\n';
}

}  // namespace

void TextTable::add(const std::vector<std::string>& cells, const std::vector<std::string>& alike) {
  std::string key;
  for (const std::string& cell : alike) {
    key += cell + '\0';
  }
  const auto [place, fresh] = row_of_.try_emplace(key, rows_.size());
  if (fresh) {
    Row row{cells, 1};
    for (std::string& cell : row.cells) {
      cell = shortened(cell, kMostCell);
    }
    rows_.push_back(std::move(row));
  } else {
    ++rows_[place->second].count;
  }
}

std::string TextTable::aligned(std::size_t indent) const {
  std::vector<std::size_t> widths(columns_.size(), 0);
  for (const Row& row : rows_) {
    for (std::size_t i = 0; i < columns_.size(); ++i) {
      widths[i] = std::max(widths[i], shown_width(row.cells[i]));
    }
  }
  std::string text;
  std::string heading(indent, ' ');
  for (std::size_t i = 0; i < columns_.size(); ++i) {
    if (widths[i] > 0) {
      widths[i] = std::max(widths[i], shown_width(columns_[i].heading));
      append_cell(heading, columns_[i].heading, widths[i], columns_[i].align);
    }
  }
  end_line(text, heading);
  for (const Row& row : rows_) {
    std::string line(indent, ' ');
    for (std::size_t i = 0; i < columns_.size(); ++i) {
      if (widths[i] > 0) {
        append_cell(line, row.cells[i], widths[i], columns_[i].align);
      }
    }
    line += row.count > 1 ? "x " + count_text(row.count) : "";
    end_line(text, line);
  }
  return text;
}

std::string TextTable::row_by_row(std::size_t indent, std::size_t width) const {
  std::string text;
  for (const Row& row : rows_) {
    std::string line(indent, ' ');
    bool begun = false;
    const auto add = [&](const std::string& piece) {
      if (begun && shown_width(line) + kBetween + shown_width(piece) > width) {
        end_line(text, line);
        line.assign(indent + kBetween, ' ');
        begun = false;
      }
      line += (begun ? std::string(kBetween, ' ') : "") + piece;
      begun = true;
    };
    for (std::size_t i = 0; i < columns_.size(); ++i) {
      if (!row.cells[i].empty()) {
        add(columns_[i].heading.empty() ? row.cells[i] : columns_[i].heading + ' ' + row.cells[i]);
      }
    }
    if (row.count > 1) {
      add("x " + count_text(row.count));
    }
    end_line(text, line);
  }
  return text;
}

std::string TextTable::text(std::size_t indent, std::size_t width) const {
  if (rows_.empty()) {
    return "";
  }
  std::string whole = aligned(indent);
  std::istringstream lines(whole);
  for (std::string line; width > 0 && std::getline(lines, line);) {
    if (shown_width(line) > width) {
      return row_by_row(indent, width);
    }
  }
  return whole;
}

}  // namespace spotblue
