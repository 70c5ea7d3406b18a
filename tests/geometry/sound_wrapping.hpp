#pragma once
/// @file
/// Wrappings of assemblies that the program is known to be right on.

#include <cstdint>

#include "support/assembly_generator.hpp"

namespace spotblue::test {

/// Any wrapping but that with parts drawn a kilometre from their own origin: there areas of faces
/// and the kernel's booleans go wrong (a test of its own says when they no longer do).
inline Wrapping sound_wrapping_of(std::uint64_t seed) {
  Wrapping wrapping = any_wrapping_of(seed);
  wrapping.far = wrapping.far == Far::drawn ? Far::no : wrapping.far;
  return wrapping;
}

}  // namespace spotblue::test
