#include "geometry/part21/step_scanner.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <cstdint>
#include <limits>
#include <utility>

#include "geometry/part21/step_token.hpp"
#include "spotblue/base/error.hpp"
#include "spotblue/base/stop.hpp"

namespace spotblue {
namespace {

// Open CASCADE's time grows with the square of a list's length: 40,000 references take it 10 s.
constexpr int kMostItems = 50'000;

constexpr std::string_view kExportAgain = "export the file again";

constexpr bool is_step_character(char c) {
  constexpr std::string_view kOthers = "#=(),;*$+.'\"!&@/<>:";
  return is_word(c) || is_blank(c) || kOthers.find(c) != std::string_view::npos;
}

class Scanner {
 public:
  Scanner(std::string_view text, const std::string& file, const ReadLimits& limits)
      : text_(text), file_(file), limits_(limits) {}

  ScannedText scan() {
    check_start();
    read_header();
    while (is_word_here("DATA")) {
      read_data();
    }
    if (!is_word_here("END-ISO-10303-21")) {
      throw is_word_here("SIGNATURE") || is_word_here("ANCHOR") || is_word_here("REFERENCE")
          ? refused(at_, "a section of this kind is not understood", "export without it")
          : refused(at_, "the file is truncated: END-ISO-10303-21 is missing",
                    "get it again whole");
    }
    if (text_.find("ISO-10303-21;", text_.find(';', at_)) != std::string_view::npos) {
      throw refused(at_, "a second STEP file follows in the same file", "split it in two");
    }
    sort_entities();
    check_references();
    return std::move(scanned_);
  }

 private:
  [[nodiscard]] Error refused(std::size_t at, const std::string& what,
                              std::string_view cure) const {
    return {ErrorCode::unreadable,
            {file_, fmt::format("line {}", line_at(text_, std::min(at, text_.size())))},
            what,
            std::string(cure)};
  }

  [[nodiscard]] bool is_word_here(std::string_view word) const {
    return text_.substr(at_, word.size()) == word &&
           (at_ + word.size() >= text_.size() || !is_word(text_[at_ + word.size()]));
  }

  [[nodiscard]] bool at_end() const { return at_ >= text_.size(); }

  void check_start() {
    if (text_.starts_with("\xEF\xBB\xBF")) {
      at_ = 3;
    }
    at_ = skip_blank(text_, at_);
    if (is_word_here("ISO-10303-21")) {
      if (text_.rfind("END-ISO-10303-21") == std::string_view::npos) {
        throw refused(text_.size(), "the file is truncated: END-ISO-10303-21 is missing",
                      "get it again whole");
      }
      return;
    }
    const std::string_view first = text_.substr(0, 4096);
    if (first.starts_with("PK\x03\x04") || first.starts_with("\x1F\x8B")) {
      throw refused(0, "this is a compressed archive", "unpack it first");
    }
    if (first.find('\0') != std::string_view::npos) {
      throw refused(0, "this is a binary file, not STEP text", "export the model as STEP");
    }
    throw refused(0, "this is no STEP file: ISO-10303-21 does not stand at its start",
                  "export the model as STEP");
  }

  // One token further, with all that a token must keep to.
  void advance() {
    const std::size_t from = at_;
    if (!is_step_character(text_[from])) {
      throw refused(from,
                    fmt::format("the byte 0x{:02X} can not stand here",
                                static_cast<unsigned>(static_cast<std::uint8_t>(text_[from]))),
                    kExportAgain);
    }
    const std::size_t past = past_token(text_, from);
    if (past - from > static_cast<std::size_t>(limits_.token_kb) * 1024U) {
      throw refused(from, fmt::format("a name or number is longer than {} KB", limits_.token_kb),
                    "shorten it where the file was made");
    }
    const char first = text_[from];
    if (past >= text_.size() && (first == '\'' || first == '"')) {
      throw refused(from, "the file is truncated: a text is not closed", "get it again whole");
    }
    at_ = skip_blank(text_, past);
  }

  void expect(char c, std::string_view where) {
    if (at_end()) {
      throw refused(at_, "the file is truncated: it ends within an entity", "get it again whole");
    }
    if (text_[at_] != c) {
      throw refused(at_, fmt::format("'{}' is missing {}", c, where), kExportAgain);
    }
    advance();
  }

  void read_header() {
    advance();
    expect(';', "behind ISO-10303-21");
    const std::size_t from = at_;
    while (!at_end() && !is_word_here("ENDSEC")) {
      advance();
    }
    scanned_.header = text_.substr(from, at_ - from);
    end_section();
  }

  void end_section() {
    if (at_end()) {
      throw refused(at_, "the file is truncated: ENDSEC is missing", "get it again whole");
    }
    advance();
    expect(';', "behind ENDSEC");
  }

  void read_data() {
    advance();
    while (!at_end() && text_[at_] != ';') {
      advance();
    }
    expect(';', "behind DATA");
    while (!at_end() && !is_word_here("ENDSEC")) {
      read_entity();
    }
    scanned_.data_end = at_;
    end_section();
  }

  void read_entity() {
    constexpr std::size_t kBetweenLooks = 4096;
    if (scanned_.entities.size() % kBetweenLooks == 0) {
      stop_if_asked();
    }
    const std::size_t start = at_;
    const int id = read_number();
    expect('=', fmt::format("behind #{}", id));
    if (!at_end() && text_[at_] == '&') {
      throw refused(at_, fmt::format("#{} opens a &SCOPE, which is not understood", id),
                    "export without scopes");
    }
    scanned_.entities.push_back({at_, id});
    complex_ = !at_end() && text_[at_] == '(';
    point_ = is_word_here("CARTESIAN_POINT");
    if (!at_end() && !complex_) {
      if (!is_word(text_[at_]) && text_[at_] != '!') {
        throw refused(start, fmt::format("#{} has no entity name", id), kExportAgain);
      }
      advance();
    }
    read_brackets(id);
    expect(';', fmt::format("behind #{}", id));
  }

  int read_number() {
    const std::size_t past = past_token(text_, at_);
    int id = 0;
    const char* const end = text_.data() + past;
    const auto [stop, trouble] = std::from_chars(text_.data() + at_ + 1, end, id);
    if (text_[at_] != '#' || trouble != std::errc{} || stop != end || id <= 0) {
      throw refused(at_, "no entity begins here: '#' and a number are missing", kExportAgain);
    }
    advance();
    return id;
  }

  // The balanced brackets at `at_` and all that is in them.
  void read_brackets(int id) {
    if (at_end() || text_[at_] != '(') {
      expect('(', fmt::format("in #{}", id));
    }
    items_.clear();
    behind_value_ = false;
    before_ = '\0';
    do {
      if (at_end()) {
        throw refused(at_, "the file is truncated: it ends within an entity", "get it again whole");
      }
      read_inner(id);
      advance();
    } while (!items_.empty());
  }

  void read_inner(int id) {
    const char first = text_[at_];
    const bool is_part = complex_ && items_.size() == 1 && is_word(first);
    if (behind_value_ && first != ',' && first != ')' && first != ';' && first != '=' && !is_part) {
      throw refused(at_, fmt::format("in #{}, a comma is missing before '{}'", id, token_here()),
                    kExportAgain);
    }
    const bool lacks_one =
        first == ',' ? before_ == ',' || before_ == '(' : first == ')' && before_ == ',';
    if (lacks_one) {
      throw refused(at_, fmt::format("in #{}, a value is missing before '{}'", id, first),
                    kExportAgain);
    }
    before_ = first;
    read_one(id);
    behind_value_ = first != ',' && first != '(' && !is_name(first);
  }

  [[nodiscard]] static bool is_name(char first) {
    return first == '!' || (is_word(first) && first != '-' && (first < '0' || first > '9'));
  }

  // For messages: not the whole of a long one.
  [[nodiscard]] std::string_view token_here() const {
    constexpr std::size_t kShown = 40;
    return text_.substr(at_, std::min(past_token(text_, at_) - at_, kShown));
  }

  void read_one(int id) {
    switch (text_[at_]) {
      case '(':
        items_.push_back(1);
        if (items_.size() > static_cast<std::size_t>(limits_.nesting_depth)) {
          throw refused(at_,
                        fmt::format("#{} nests brackets deeper than {}", id, limits_.nesting_depth),
                        kExportAgain);
        }
        break;
      case ')':
        if (point_ && items_.size() == 2 && items_.back() > 3) {  // Open CASCADE drops the fourth
          throw refused(at_, fmt::format("#{} is a point of {} numbers", id, items_.back()),
                        kExportAgain);
        }
        items_.pop_back();
        break;
      case ',':
        if (++items_.back() > kMostItems) {
          throw refused(at_, fmt::format("#{} has a list of more than {} items", id, kMostItems),
                        "split the part or export it less finely");
        }
        break;
      case ';':
      case '=':
        throw refused(at_, fmt::format("')' is missing in #{}", id), kExportAgain);
      case '#':
        references_.push_back(number_here());
        break;
      default:
        read_value(id);
    }
  }

  // A number, a choice, a text or a keyword.
  void read_value(int id) {
    const std::string_view token = text_.substr(at_, past_token(text_, at_) - at_);
    const std::size_t behind = skip_blank(text_, at_ + token.size());
    const bool opens = behind < text_.size() && text_[behind] == '(';
    if (const char* fault = token_fault(token, opens)) {
      throw refused(at_, fmt::format("in #{}, '{}' {}", id, token_here(), fault), kExportAgain);
    }
  }

  int number_here() {
    const std::size_t past = past_token(text_, at_);
    int id = 0;
    const char* const end = text_.data() + past;
    const auto [stop, trouble] = std::from_chars(text_.data() + at_ + 1, end, id);
    if (trouble != std::errc{} || stop != end) {
      throw refused(at_, "a reference has no number", kExportAgain);
    }
    return id;
  }

  void sort_entities() {
    auto& entities = scanned_.entities;
    const auto by_id = [](const StepText::Entity& a, const StepText::Entity& b) {
      return a.id < b.id;
    };
    if (!std::is_sorted(entities.begin(), entities.end(), by_id)) {
      std::stable_sort(entities.begin(), entities.end(), by_id);
    }
    const auto twice = std::adjacent_find(
        entities.begin(), entities.end(),
        [](const StepText::Entity& a, const StepText::Entity& b) { return a.id == b.id; });
    if (twice != entities.end()) {
      throw refused(std::next(twice)->begin, fmt::format("#{} is given twice", twice->id),
                    kExportAgain);
    }
  }

  [[nodiscard]] bool is_defined(int id) const {
    const auto& entities = scanned_.entities;
    const auto at =
        std::lower_bound(entities.begin(), entities.end(), id,
                         [](const StepText::Entity& e, int wanted) { return e.id < wanted; });
    return at != entities.end() && at->id == id;
  }

  void check_references() {
    if (scanned_.entities.empty()) {
      throw refused(0, "the file holds no entity", kExportAgain);
    }
    const auto most = static_cast<std::size_t>(scanned_.entities.back().id);
    const bool dense = most < 64 * scanned_.entities.size() + 1'000'000;
    std::vector<bool> defined(dense ? most + 1 : 0);
    for (const StepText::Entity& entity : scanned_.entities) {
      if (dense) {
        defined[static_cast<std::size_t>(entity.id)] = true;
      }
    }
    for (const int id : references_) {
      const bool found =
          !dense    ? is_defined(id)
          : id >= 0 ? static_cast<std::size_t>(id) <= most && defined[static_cast<std::size_t>(id)]
                    : false;
      if (!found) {
        throw missing(id);
      }
    }
  }

  [[nodiscard]] Error missing(int id) const {
    for (const StepText::Entity& entity : scanned_.entities) {
      std::size_t at = entity.begin;
      while (at < text_.size() && text_[at] != ';') {
        if (text_[at] == '#' && reference(text_.substr(at, past_token(text_, at) - at)) == id) {
          return refused(at,
                         fmt::format("#{} refers to #{}, which is not in the file", entity.id, id),
                         kExportAgain);
        }
        at = next_token(text_, at);
      }
    }
    return refused(0, fmt::format("#{} is not in the file", id), kExportAgain);
  }

  std::string_view text_;
  const std::string& file_;
  const ReadLimits& limits_;
  std::size_t at_ = 0;
  std::vector<int> items_;  // of each open bracket, outermost first
  std::vector<int> references_;
  bool point_ = false;
  bool complex_ = false;       // the entity is of several kinds: ( ONE(...) OTHER(...) )
  bool behind_value_ = false;  // a comma or a bracket must come
  char before_ = '\0';         // how the token before this one begins
  ScannedText scanned_;
};

}  // namespace

ScannedText scan_step(std::string_view text, const std::string& file, const ReadLimits& limits) {
  return Scanner(text, file, limits).scan();
}

}  // namespace spotblue
