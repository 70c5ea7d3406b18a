#pragma once
/// @file
/// Takes a result value by value and makes JSON of it, straight into a string: a tree of values for
/// 45,000 occurrences costs more than a second to build, this a tenth of it. value_tree.hpp makes
/// the tree.

#include <array>
#include <cstdint>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace spotblue {

/// The text as a JSON string, quotes included; bytes that are no UTF-8 become U+FFFD.
[[nodiscard]] std::string json_quoted(std::string_view text);

/// Shortest digits that read back to the same finite double.
class NumberText {
 public:
  explicit NumberText(double value);
  [[nodiscard]] std::string_view view() const { return {digits_.data(), size_}; }

 private:
  std::array<char, 32> digits_{};
  std::size_t size_ = 0;
};

/// What a result is written into; keys are plain ASCII without quotes or backslashes.
class JsonWriter {
 public:
  enum class Layout { one_line, line_each };

  JsonWriter() = default;
  JsonWriter(const JsonWriter&) = delete;
  JsonWriter& operator=(const JsonWriter&) = delete;
  virtual ~JsonWriter() = default;

  void open_object(Layout layout = Layout::one_line) { open('{', layout); }
  void close_object() { close('}'); }
  void open_array(Layout layout = Layout::one_line) { open('[', layout); }
  void close_array() { close(']'); }
  void key(std::string_view name);

  /// As NumberText; -0 becomes 0.
  /// @throws Error bad_input, naming the key before it, when the value is not finite.
  void number(double value);
  virtual void whole(std::int64_t value) = 0;
  virtual void truth(bool value) = 0;
  void text(std::string_view value) { quoted(quoting(value)); }
  /// How a text is written: what is written often is made once.
  [[nodiscard]] virtual std::string quoting(std::string_view text) const = 0;
  /// What quoting has made before.
  virtual void quoted(std::string_view value) = 0;

 private:
  virtual void put_key(std::string_view name) = 0;
  virtual void put_number(double value) = 0;
  virtual void open(char bracket, Layout layout) = 0;
  virtual void close(char bracket) = 0;

  std::string last_key_;
};

/// Keeps commas, brackets and lines right.
class JsonText final : public JsonWriter {
 public:
  void whole(std::int64_t value) override;
  void truth(bool value) override;
  [[nodiscard]] std::string quoting(std::string_view text) const override {
    return json_quoted(text);
  }
  void quoted(std::string_view value) override;

  [[nodiscard]] std::string take() { return std::move(out_); }

 private:
  struct Level {
    Layout layout = Layout::one_line;
    bool empty = true;
  };

  void put_key(std::string_view name) override;
  void put_number(double value) override;
  void open(char bracket, Layout layout) override;
  void close(char bracket) override;
  void before_value();
  void next_in_level();

  std::string out_;
  std::vector<Level> levels_;
  bool after_key_ = false;
};

}  // namespace spotblue
