#pragma once
/// @file
/// The one description of a public enumeration: `describe(pointer to E)` beside it gives the words
/// of its values, by which jobs, findings, JSON and its schema, and Python say them. The pointer is
/// never read.

#include <array>
#include <cstddef>
#include <string_view>

namespace spotblue {

/// What an enumeration is about, in a sentence for Python, and its words in the order of its
/// values, which go from 0 without a gap.
template <std::size_t count>
struct Words {
  const char* document;
  std::array<std::string_view, count> all;
};

template <class... Word>
constexpr Words<sizeof...(Word)> words(const char* document, Word... all) {
  return {document, {all...}};
}

/// The words of an enumeration.
template <class E>
inline constexpr auto kWordsOf = describe(static_cast<const E*>(nullptr));

/// The word of a value of an enumeration.
template <class E>
[[nodiscard]] constexpr std::string_view word_of(E value) {
  return kWordsOf<E>.all[static_cast<std::size_t>(value)];
}

}  // namespace spotblue
