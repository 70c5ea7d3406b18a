#pragma once
// Values as the bytes that lie in memory, from a contained child to its parent: the same program on
// the same machine. Types of their own list their fields in a function `serialize`, as in
// model_fields.hpp.

#include <array>
#include <cstdint>
#include <cstring>
#include <optional>
#include <stdexcept>
#include <string>
#include <string_view>
#include <type_traits>
#include <utility>
#include <vector>

namespace spotblue {

class BytesOut {
 public:
  template <class... Values>
  void operator()(Values&... values) {
    (put(values), ...);
  }
  [[nodiscard]] std::string take() { return std::move(bytes_); }

 private:
  template <class Value>
  void put(Value& value) {
    if constexpr (std::is_arithmetic_v<Value> || std::is_enum_v<Value>) {
      put_raw(&value, sizeof value);
    } else {
      serialize(*this, value);
    }
  }
  void put(std::string& text) {
    put_count(text.size());
    put_raw(text.data(), text.size());
  }
  template <class Value>
  requires requires(Value& values) { values.emplace_back(); }
  void put(Value& values) {
    put_count(values.size());
    for (auto& value : values) {
      put(value);
    }
  }
  template <class Value>
  void put(std::optional<Value>& value) {
    bool there = value.has_value();
    put(there);
    if (there) {
      put(*value);
    }
  }
  template <class First, class Second>
  void put(std::pair<First, Second>& both) {
    (*this)(both.first, both.second);
  }
  template <class Value, std::size_t size>
  void put(std::array<Value, size>& values) {
    for (Value& value : values) {
      put(value);
    }
  }
  void put_count(std::size_t count) {
    auto number = static_cast<std::uint64_t>(count);
    put(number);
  }
  void put_raw(const void* from, std::size_t size) {
    bytes_.append(static_cast<const char*>(from), size);
  }

  std::string bytes_;
};

// Takes no more memory than the bytes can fill, whatever counts they give. Throws
// std::runtime_error where they end too soon or hold what no value is.
class BytesIn {
 public:
  explicit BytesIn(std::string_view bytes) : rest_(bytes) {}

  template <class... Values>
  void operator()(Values&... values) {
    (get(values), ...);
  }
  // Those behind what was read.
  [[nodiscard]] std::string_view rest() const { return rest_; }

 private:
  template <class Value>
  void get(Value& value) {
    if constexpr (std::is_arithmetic_v<Value> || std::is_enum_v<Value>) {
      std::memcpy(&value, next(sizeof value).data(), sizeof value);
    } else {
      serialize(*this, value);
    }
  }
  void get(bool& value) {
    const char byte = next(1).front();
    if (byte != 0 && byte != 1) {
      throw std::runtime_error("neither true nor false");
    }
    value = byte == 1;
  }
  void get(std::string& text) { text = next(count()); }
  template <class Value>
  requires requires(Value& values) { values.emplace_back(); }
  void get(Value& values) {
    values.clear();
    for (std::size_t left = count(); left > 0; --left) {
      get(values.emplace_back());
    }
  }
  template <class Value>
  void get(std::optional<Value>& value) {
    bool there = false;
    get(there);
    value.reset();
    if (there) {
      get(value.emplace());
    }
  }
  template <class First, class Second>
  void get(std::pair<First, Second>& both) {
    (*this)(both.first, both.second);
  }
  template <class Value, std::size_t size>
  void get(std::array<Value, size>& values) {
    for (Value& value : values) {
      get(value);
    }
  }
  // Nothing has fewer bytes than one.
  std::size_t count() {
    std::uint64_t number = 0;
    get(number);
    if (number > rest_.size()) {
      throw std::runtime_error("more than there are bytes");
    }
    return static_cast<std::size_t>(number);
  }
  std::string_view next(std::size_t size) {
    if (size > rest_.size()) {
      throw std::runtime_error("the bytes end");
    }
    const std::string_view found = rest_.substr(0, size);
    rest_.remove_prefix(size);
    return found;
  }

  std::string_view rest_;
};

}  // namespace spotblue
