#pragma once
/// @file
/// Whether a description (spotblue/base/describe.hpp) names every member that its struct has: a new
/// member without one does not compile.

#include <cstddef>

#include "spotblue/base/describe.hpp"

namespace spotblue::python {

/// Fields that count the members described.
class MemberCount {
 public:
  constexpr MemberCount& value(const char* /*name*/, const char* /*document*/) { return *this; }
  template <class M>
  constexpr MemberCount& member(const char* /*name*/, M /*member*/, const char* /*document*/) {
    ++count_;
    return *this;
  }
  template <class M>
  constexpr MemberCount& degrees(const char* name, M member, const char* document) {
    return this->member(name, member, document);
  }
  template <class M>
  constexpr MemberCount& pair(const char* name, M member, const char* document) {
    return this->member(name, member, document);
  }
  template <class Get>
  constexpr MemberCount& derived(const char* /*name*/, Get /*get*/, const char* /*document*/) {
    return *this;
  }
  [[nodiscard]] constexpr std::size_t count() const { return count_; }

 private:
  std::size_t count_ = 0;
};

/// What any member can be made of, for counting only.
struct AnyMember {
  template <class M>
  operator M() const;
};

/// Number of members of a struct without constructors, as many as braces take.
template <class T, class... Given>
constexpr std::size_t member_count() {
  if constexpr (requires { T{Given{}..., AnyMember{}}; }) {
    return member_count<T, Given..., AnyMember>();
  } else {
    return sizeof...(Given);
  }
}

/// Whether a description leaves no member out.
template <class T>
constexpr bool wholly_described() {
  MemberCount fields;
  describe_value<T>(fields);
  return fields.count() == member_count<T>();
}

}  // namespace spotblue::python
