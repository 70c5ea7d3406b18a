#pragma once
/// @file
/// A result as a tree of values in place of text.

#include "report/json_writer.hpp"
#include "spotblue/report/values.hpp"

namespace spotblue {

class ValueTree final : public JsonWriter {
 public:
  [[nodiscard]] std::string quoting(std::string_view text) const override;
  void quoted(std::string_view value) override { add(std::string(value)); }
  void whole(std::int64_t value) override { add(value); }
  void truth(bool value) override { add(value); }

  /// What was written; one value in all.
  [[nodiscard]] Value take() { return std::move(root_); }

 private:
  void put_key(std::string_view name) override { key_ = name; }
  void put_number(double value) override;
  void open(char bracket, Layout layout) override;
  void close(char bracket) override;
  Value& add(decltype(Value::held) held);

  Value root_;
  std::string key_;
  std::vector<Value*> open_;  // each in the one before, which grows only once it is closed
};

}  // namespace spotblue
