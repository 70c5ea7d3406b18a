#pragma once
// Values as the bytes that lie in memory, from a contained child to its parent: the same program on
// the same machine. A struct is its members in the order of its description, or of its own where it
// has none; what a description holds back for C++ does not go.

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

#include "geometry/model/bare_members.hpp"
#include "spotblue/geometry/ids.hpp"
#include "spotblue/geometry/vector.hpp"

namespace spotblue {

class BytesOut {
 public:
  template <class Value>
  void operator()(const Value& value) {
    put(value);
  }
  [[nodiscard]] std::string take() { return std::move(bytes_); }

 private:
  template <class Value>
  void put(const Value& value) {
    if constexpr (std::is_arithmetic_v<Value> || std::is_enum_v<Value>) {
      put_raw(&value, sizeof value);
    } else if constexpr (Described<Value>) {
      each_member(value, [this](const auto& each) { this->put(each); });
    } else {
      each_bare_member(value, [this](const auto& each) { this->put(each); });
    }
  }
  template <class Of>
  void put(const Id<Of>& id) {
    put(std::size_t{id});
  }
  void put(const Direction& direction) { put(Point(direction)); }
  void put(const std::string& text) {
    put_count(text.size());
    put_raw(text.data(), text.size());
  }
  template <class Value>
  requires requires(Value& values) { values.emplace_back(); }
  void put(const Value& values) {
    put_count(values.size());
    for (const auto& value : values) {
      put(value);
    }
  }
  template <class Value>
  void put(const std::optional<Value>& value) {
    put(value.has_value());
    if (value) {
      put(*value);
    }
  }
  template <class First, class Second>
  void put(const std::pair<First, Second>& both) {
    put(both.first);
    put(both.second);
  }
  template <class Value, std::size_t size>
  void put(const std::array<Value, size>& values) {
    for (const Value& value : values) {
      put(value);
    }
  }
  void put_count(std::size_t count) { put(static_cast<std::uint64_t>(count)); }
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

  template <class Value>
  void operator()(Value& value) {
    get(value);
  }
  // Those behind what was read.
  [[nodiscard]] std::string_view rest() const { return rest_; }

 private:
  template <class Value>
  void get(Value& value) {
    if constexpr (std::is_arithmetic_v<Value> || std::is_enum_v<Value>) {
      std::memcpy(&value, next(sizeof value).data(), sizeof value);
    } else if constexpr (Described<Value>) {
      each_member(value, [this](auto& each) { this->get(each); });
    } else {
      each_bare_member(value, [this](auto& each) { this->get(each); });
    }
  }
  template <class Of>
  void get(Id<Of>& id) {
    std::size_t index = 0;
    get(index);
    id = Id<Of>(index);
  }
  void get(bool& value) {
    const char byte = next(1).front();
    if (byte != 0 && byte != 1) {
      throw std::runtime_error("neither true nor false");
    }
    value = byte == 1;
  }
  void get(Direction& direction) {
    Point ends;
    get(ends);
    direction = Direction(ends);
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
    get(both.first);
    get(both.second);
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
