#pragma once
// A share of three times a solid's volume, and how far off it may be.

namespace spotblue {

struct Flux {
  double value = 0.0;  // mm3: the integral of (p - origin) . n over a face, n out of the material
  double error = 0.0;  // mm3, >= 0
};

inline Flux operator+(Flux a, Flux b) { return {a.value + b.value, a.error + b.error}; }

}  // namespace spotblue
