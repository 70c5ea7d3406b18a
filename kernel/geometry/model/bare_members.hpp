#pragma once
// The members of a small struct that only the kernel sees and that therefore has no description.

#include "spotblue/base/members.hpp"

namespace spotblue {

// Calls `take` with each member, in their order.
template <class T, class Take>
void each_bare_member(T& value, Take&& take) {
  constexpr std::size_t count = member_count<std::remove_const_t<T>>();
  const auto all = [&take](auto&... members) { (take(members), ...); };
  if constexpr (count == 1) {
    auto& [a] = value;
    all(a);
  } else if constexpr (count == 3) {
    auto& [a, b, c] = value;
    all(a, b, c);
  } else if constexpr (count == 5) {
    auto& [a, b, c, d, e] = value;
    all(a, b, c, d, e);
  } else {
    static_assert(count == 7, "one more way to take a struct apart is needed");
    auto& [a, b, c, d, e, f, g] = value;
    all(a, b, c, d, e, f, g);
  }
}

}  // namespace spotblue
