#pragma once
/// @file
/// Lengths, diameters and radii as types, so that a radius is never taken for a diameter and a bare
/// number never for a length. Held in millimetres.

#include <compare>

namespace spotblue {

/// A signed length; built and read only by a named unit.
class Length {
 public:
  constexpr Length() = default;
  [[nodiscard]] static constexpr Length mm(double value) { return Length(value); }
  [[nodiscard]] static constexpr Length um(double value) { return Length(value / 1000.0); }
  [[nodiscard]] static constexpr Length inch(double value) { return Length(value * 25.4); }

  [[nodiscard]] constexpr double in_mm() const { return mm_; }
  [[nodiscard]] constexpr double in_um() const { return mm_ * 1000.0; }
  [[nodiscard]] constexpr double in_inch() const { return mm_ / 25.4; }

  constexpr auto operator<=>(const Length&) const = default;

  constexpr Length operator-() const { return Length(-mm_); }
  friend constexpr Length operator+(Length a, Length b) { return Length(a.mm_ + b.mm_); }
  friend constexpr Length operator-(Length a, Length b) { return Length(a.mm_ - b.mm_); }
  friend constexpr Length operator*(Length a, double k) { return Length(a.mm_ * k); }
  friend constexpr Length operator*(double k, Length a) { return Length(a.mm_ * k); }
  friend constexpr Length operator/(Length a, double k) { return Length(a.mm_ / k); }
  /// Ratio of two lengths, a plain number.
  friend constexpr double operator/(Length a, Length b) { return a.mm_ / b.mm_; }

 private:
  explicit constexpr Length(double value_mm) : mm_(value_mm) {}
  double mm_ = 0.0;
};

/// A size across; made of a length by name alone, so that no radius passes for it.
class Diameter {
 public:
  constexpr Diameter() = default;
  constexpr explicit Diameter(Length across) : across_(across) {}
  [[nodiscard]] constexpr Length length() const { return across_; }
  [[nodiscard]] constexpr double in_mm() const { return across_.in_mm(); }
  constexpr auto operator<=>(const Diameter&) const = default;

 private:
  Length across_;
};

/// A size from the middle; as Diameter.
class Radius {
 public:
  constexpr Radius() = default;
  constexpr explicit Radius(Length from_middle) : from_middle_(from_middle) {}
  [[nodiscard]] constexpr Length length() const { return from_middle_; }
  [[nodiscard]] constexpr double in_mm() const { return from_middle_.in_mm(); }
  constexpr auto operator<=>(const Radius&) const = default;

 private:
  Length from_middle_;
};

[[nodiscard]] constexpr Diameter diameter_of(Radius radius) {
  return Diameter(2.0 * radius.length());
}
[[nodiscard]] constexpr Radius radius_of(Diameter diameter) {
  return Radius(0.5 * diameter.length());
}

inline namespace literals {
constexpr Length operator""_mm(long double v) { return Length::mm(static_cast<double>(v)); }
constexpr Length operator""_mm(unsigned long long v) { return Length::mm(static_cast<double>(v)); }
constexpr Length operator""_um(long double v) { return Length::um(static_cast<double>(v)); }
constexpr Length operator""_um(unsigned long long v) { return Length::um(static_cast<double>(v)); }
constexpr Length operator""_inch(long double v) { return Length::inch(static_cast<double>(v)); }
}  // namespace literals

/// Lower and upper limit of a size, both included; lower <= upper is the caller's promise and is
/// checked where limits enter the library.
struct Limits {
  Length lower;
  Length upper;
  [[nodiscard]] constexpr Length width() const { return upper - lower; }
  constexpr bool operator==(const Limits&) const = default;
};

}  // namespace spotblue
