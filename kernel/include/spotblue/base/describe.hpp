#pragma once
/// @file
/// The one description of a public value: `describe(fields, pointer to T)` beside the struct, from
/// which come its Python class and that class's stub.
///
/// A description calls on `fields`, in the order in which the value is shown:
///   value(name, document)             once and first: its name outside C++
///   member(name, &T::m, document)     a member; a name that ends in _mm is of a length in mm
///   degrees(name, &T::m, document)    an angle held in rad and shown in degrees
///   pair(name, &T::m, document)       Limits shown as (lower, upper) in mm
///   or_0(name, &T::m, document)       a number that may be missing, which Python sees as 0 then
///   held(&T::m)                       a member for C++ alone
///   derived(name, get, document)      what a function of the value works out
///   range(numbers)                    those that the member before it may be, in the unit shown
/// each of which hands `fields` back. A document says of what and in which range, and the unit
/// where the name does not; the name and document of a member are those of its key in JSON and of
/// the schema too. The pointer is never read. Nothing is compiled of a description until someone
/// brings fields.

#include <limits>

namespace spotblue {

/// The numbers that a member may be; one that may be any has none.
struct NumberRange {
  double least = 0.0;
  double greatest = std::numeric_limits<double>::infinity();
  bool least_too = true;  ///< whether it may be the least itself
};
inline constexpr NumberRange kFrom0{};
inline constexpr NumberRange kOver0{.least_too = false};
/// Degrees C that something can have: over absolute zero, and no hotter than any material bears
/// (choice of this program, no source).
inline constexpr NumberRange kTemperature_c{-273.15, 1e4, false};

/// Goes through the description of a value.
template <class T, class Fields>
constexpr void describe_value(Fields& fields) {
  describe(fields, static_cast<const T*>(nullptr));
}

}  // namespace spotblue
