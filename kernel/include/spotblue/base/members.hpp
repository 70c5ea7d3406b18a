#pragma once
/// @file
/// Going through a described value (describe.hpp) member by member: for who writes, reads or
/// searches values of all kinds. A struct with a member that its description leaves out does not
/// compile here.

#include <cstddef>
#include <type_traits>
#include <utility>

#include "spotblue/base/describe.hpp"

namespace spotblue {

/// Fields that hand each member's pointer to `take`, with std::true_type where it is for C++ alone.
template <class Take>
class MemberFields {
 public:
  constexpr explicit MemberFields(Take& take) : take_(take) {}

  constexpr MemberFields& value(const char* /*name*/, const char* /*document*/) { return *this; }
  template <class M>
  constexpr MemberFields& member(const char* /*name*/, M member, const char* /*document*/) {
    take_(member, std::false_type());
    return *this;
  }
  template <class M>
  constexpr MemberFields& degrees(const char* name, M member, const char* document) {
    return this->member(name, member, document);
  }
  template <class M>
  constexpr MemberFields& pair(const char* name, M member, const char* document) {
    return this->member(name, member, document);
  }
  template <class M>
  constexpr MemberFields& or_0(const char* name, M member, const char* document) {
    return this->member(name, member, document);
  }
  template <class M>
  constexpr MemberFields& held(M member) {
    take_(member, std::true_type());
    return *this;
  }
  constexpr MemberFields& range(const NumberRange& /*numbers*/) { return *this; }
  template <class Get>
  constexpr MemberFields& derived(const char* /*name*/, Get /*get*/, const char* /*document*/) {
    return *this;
  }

 private:
  Take& take_;
};

/// What any member can be made of, for counting only.
class AnyMember {
 public:
  template <class M>
  operator M() const;  // NOLINT(google-explicit-constructor): made of nothing
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

/// How often a description names one member.
template <class T, class M>
constexpr std::size_t times_described(M T::*member) {
  std::size_t times = 0;
  auto take = [&](auto other, auto /*held*/) {
    if constexpr (std::is_same_v<decltype(other), M T::*>) {
      times += other == member ? 1U : 0U;
    }
  };
  MemberFields fields(take);
  describe_value<T>(fields);
  return times;
}

/// Whether a description names every member, and none of them twice.
template <class T>
constexpr bool wholly_described() {
  std::size_t count = 0;
  bool once = true;
  auto take = [&](auto member, auto /*held*/) {
    ++count;
    once = once && times_described(member) == 1;
  };
  MemberFields fields(take);
  describe_value<T>(fields);
  return once && count == member_count<T>();
}

/// A struct that has a description.
template <class T>
concept Described = requires(MemberFields<void (*)(...)>& fields, const T* value) {
  describe(fields, value);
};

/// Calls `take` with each member that is not for C++ alone, in the order of the description.
template <class T, class Take>
constexpr void each_member(T& value, Take&& take) {
  using Value = std::remove_const_t<T>;
  static_assert(wholly_described<Value>(), "a member of this value has no description");
  auto taken = [&](auto member, auto held) {
    if constexpr (!held) {
      take(value.*member);
    }
  };
  MemberFields fields(taken);
  describe_value<Value>(fields);
}

}  // namespace spotblue
