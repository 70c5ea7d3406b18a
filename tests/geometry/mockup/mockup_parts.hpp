#pragma once
// Parts for mock-up tests, and what Open CASCADE reads back of a file that was written.

#include <string>
#include <vector>

#include "spotblue/geometry/mockup.hpp"

namespace spotblue::test {

inline Step plain_step(double start, double length, double diameter) {
  return {"", start, length, diameter, diameter, {}, {}};
}

/// A turned part from (diameter, length) pairs.
inline TurnedPart turned(std::vector<std::pair<double, double>> outside) {
  TurnedPart part;
  double reached = 0.0;
  for (const auto& [diameter, length] : outside) {
    part.outside.push_back(plain_step(reached, length, diameter));
    reached += length;
  }
  return part;
}

template <typename Shape>
Mockup lone(const Shape& shape) {
  Mockup mockup;
  mockup.title = "test";
  mockup.parts = {{"Part", shape}};
  return mockup;
}

inline Placement placed(const std::string& part, double at) {
  Placement placement;
  placement.name = placement.part = part;
  placement.at = at;
  return placement;
}

/// One part of a file as Open CASCADE reads it back: where it is and how much there is of it.
struct ReadPart {
  std::string name;
  int solids = 0;
  int faces = 0;
  double volume = 0.0;  ///< mm3
  Box box;              ///< as placed, exact for the faces of turned parts square to the axes
  std::size_t product = 0;
};

/// Writes the mock-up to a temporary file and reads it with Open CASCADE's own reader.
std::vector<ReadPart> write_and_read(const Mockup& mockup);

}  // namespace spotblue::test
